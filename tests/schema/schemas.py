#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Checks assets/schema with a general-purpose validator (Debian's python3-jsonschema, JSON Schema 2020-12)
against the program: what both take, what both refuse and where, and what only the program can see.

MATSIDE_SEED and MATSIDE_COUNT choose the projects made by chance."""
import argparse
import copy
import json
import os
import pathlib
import random
import subprocess
import sys

import jsonschema

import tables

failures = []


def check(good, what):
    if not good:
        failures.append(what)


def closed(schema):
    """The same schema, but refusing keys it does not describe: nothing we write may be missing in it."""
    if isinstance(schema, list):
        return [closed(one) for one in schema]
    if not isinstance(schema, dict):
        return schema
    told = {key: closed(value) for key, value in schema.items()}
    kind = schema.get("type")
    if "properties" in schema and (kind == "object" or kind == ["object", "null"]):
        told["additionalProperties"] = False
    return told


def validator(schema):
    jsonschema.Draft202012Validator.check_schema(schema)
    return jsonschema.Draft202012Validator(schema)


def pointer(error):
    return "".join("/" + str(step) for step in error.absolute_path)


def faults(checker, document):
    return [(pointer(error), error.message[:160]) for error in checker.iter_errors(document)]


class Program:
    """The program's own verdict on project files."""

    def __init__(self, told, matside):
        self.told, self.matside = told, matside

    def verdicts(self, documents):
        lines = "".join(json.dumps(one) + "\n" for one in documents)
        run = subprocess.run([self.told], input=lines.encode(), stdout=subprocess.PIPE, check=True)
        answers = [json.loads(line) for line in run.stdout.splitlines()]
        assert len(answers) == len(documents)
        return answers

    def made_by_chance(self, seed, count):
        run = subprocess.run([self.told, "--random", str(seed), str(count)], stdout=subprocess.PIPE, check=True)
        return [json.loads(line) for line in run.stdout.splitlines()]

    def plan(self, path):
        run = subprocess.run([self.matside, "--plan", str(path)], stdout=subprocess.PIPE, stderr=subprocess.DEVNULL)
        return run.returncode, json.loads(run.stdout)


def every_file(source, program, project, plan):
    """Each project file of the tree, and its plan, keep to the schemas, with no key they do not describe."""
    paths = [source / "assets/demo-project.json"]
    for path in sorted((source / "tests").rglob("*.json")):
        if json.loads(path.read_text()).get("format") == "matside-project":
            paths.append(path)
    check(len(paths) >= 2, "too few project files found")
    for path in paths:
        for at, message in faults(project, json.loads(path.read_text())):
            check(False, f"{path.name} {at}: {message}")
        code, written = program.plan(path)
        check(code in (0, 3), f"{path.name}: --plan answered {code}")
        for at, message in faults(plan, written):
            check(False, f"plan of {path.name} {at}: {message}")
    return len(paths)


def examples(project, plan):
    """Every example in a schema keeps to the place it stands at."""
    count = 0
    for checker in (project, plan):
        schema = checker.schema

        def walk(node):
            nonlocal count
            if isinstance(node, list):
                for one in node:
                    walk(one)
            if not isinstance(node, dict):
                return
            shown = node.get("examples")
            if isinstance(shown, list) and any(key in node for key in ("type", "$ref", "description", "title")):
                place = validator({**node, "$defs": schema["$defs"]})
                for example in shown:
                    count += 1
                    for at, message in faults(place, example):
                        check(False, f"example {json.dumps(example)} {at}: {message}")
            for key, value in node.items():
                if key != "examples":
                    walk(value)

        walk(schema)
    check(count > 20, "examples were not found")
    return count


def both_refuse(program, project):
    rows = [tables.small(more) for more in tables.broken]
    for row, document, verdict in zip(tables.broken, rows, program.verdicts(rows)):
        seen = [at for at, _ in faults(project, document)]
        problems = [problem["at"] for problem in verdict["problems"]]
        check(seen, f"the schema takes {row}")
        check(problems, f"the program takes {row}")
        near = any(a.startswith(b) or b.startswith(a) for a in seen for b in problems)
        check(near, f"{row}: the schema points to {seen}, the program to {problems}")
    return len(rows)


def both_take(program, project):
    rows = [tables.small(more) for more in tables.sound]
    for row, document, verdict in zip(tables.sound, rows, program.verdicts(rows)):
        check(not faults(project, document), f"the schema refuses {row}: {faults(project, document)}")
        check(not verdict["problems"], f"the program refuses {row}: {verdict['problems']}")
    return len(rows)


def only_the_program(program, project):
    """What a schema cannot say; DEVELOPERS.md lists it. Each has a code of its own."""
    rows = [tables.small(more) for more, _ in tables.beyond]
    for (row, code), document, verdict in zip(tables.beyond, rows, program.verdicts(rows)):
        check(not faults(project, document), f"the schema can say {row} after all")
        codes = [problem["code"] for problem in verdict["problems"]]
        check(codes == [code], f"{row}: {codes} instead of {code}")
    return len(rows)


def known(node):
    """A document without the keys that RandomProject puts in as a newer program's."""
    if isinstance(node, list):
        return [known(one) for one in node]
    if not isinstance(node, dict):
        return node
    return {key: known(value) for key, value in node.items() if key not in tables.newer}


def broken_plans(program, source, plan):
    """The plan's schema refuses a plan without one of its parts, or with a part of another kind."""
    _, whole = program.plan(source / "assets/demo-project.json")
    count = 0
    for key in whole:
        for other in ("gone", 7):
            broken = copy.deepcopy(whole)
            if other == "gone":
                del broken[key]
            else:
                broken[key] = other
            count += 1
            check(faults(plan, broken), f"the schema takes a plan with {key} {other}")
    for path, value in tables.broken_plans:
        broken = copy.deepcopy(whole)
        node = broken
        for step in path[:-1]:
            node = node[step]
        check(isinstance(node, list) or path[-1] in node, f"no {path} in the plan")
        node[path[-1]] = value
        count += 1
        check(faults(plan, broken), f"the schema takes a plan with {path} {value!r}")
    return count


def places(node, at=()):
    """Every place in a document below its root."""
    children = node.items() if isinstance(node, dict) else enumerate(node) if isinstance(node, list) else ()
    for key, value in children:
        yield at + (key,)
        yield from places(value, at + (key,))


def changed(document, chance):
    """One value put in another's place, or taken away."""
    document = copy.deepcopy(document)
    path = chance.choice(list(places(document)))
    node = document
    for key in path[:-1]:
        node = node[key]
    if isinstance(node, dict) and chance.random() < 0.1:
        del node[path[-1]]
    else:
        node[path[-1]] = copy.deepcopy(chance.choice(tables.values))
    return document, path


def by_chance(program, project, whole_project, plan, seed, count):
    """Projects made by chance keep to the schema, and so do their plans; of what is changed in them by
    chance, schema and program think alike, but for the codes a schema cannot say."""
    chance = random.Random(seed)
    made = program.made_by_chance(seed, count)
    for document, verdict in zip(made, program.verdicts(made)):
        for at, message in faults(project, document) + faults(whole_project, known(document)):
            check(False, f"seed {seed}: {at}: {message}")
        for at, message in faults(plan, verdict["plan"]):
            check(False, f"seed {seed}: plan {at}: {message}")
    rows = [changed(document, chance) for document in made for _ in range(4)]
    refused = 0
    for (document, path), verdict in zip(rows, program.verdicts([document for document, _ in rows])):
        seen = faults(project, document)
        problems = verdict["problems"]
        sayable = [one for one in problems if one["code"] not in tables.unsayable]
        refused += bool(problems)
        check(problems or not seen, f"seed {seed}, changed {path}: only the schema refuses, {seen}")
        check(seen or not sayable, f"seed {seed}, changed {path}: only the program refuses, {sayable}")
        for at, message in faults(plan, verdict["plan"]):
            check(False, f"seed {seed}, changed {path}: plan {at}: {message}")
    check(refused > len(rows) // 10, "hardly any change broke a project")
    return len(made) + len(rows)


def main():
    options = argparse.ArgumentParser()
    for name in ("source", "told", "matside"):
        options.add_argument("--" + name, required=True)
    told = options.parse_args()
    source = pathlib.Path(told.source)
    program = Program(told.told, told.matside)
    seed = int(os.environ.get("MATSIDE_SEED", "1"))
    count = int(os.environ.get("MATSIDE_COUNT", "40"))
    schemas = [json.loads((source / "assets/schema" / f"{name}.schema.json").read_text())
               for name in ("project", "plan")]
    project, plan = (validator(schema) for schema in schemas)
    whole_project, whole_plan = (validator(closed(schema)) for schema in schemas)
    print(every_file(source, program, whole_project, whole_plan), "project files and their plans")
    print(examples(project, plan), "examples in the schemas")
    print(both_refuse(program, project), "broken files refused by both")
    print(both_take(program, project), "sound files taken by both")
    print(only_the_program(program, project), "faults only the program can see")
    print(broken_plans(program, source, plan), "broken plans refused")
    print(by_chance(program, project, whole_project, whole_plan, seed, count), "projects by chance, seed", seed)
    for failure in failures:
        print("FAILED:", failure)
    return 1 if failures else 0


if __name__ == "__main__":
    sys.exit(main())
