#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Looks for a figure on paper that is not the plan's: the sheet's text as Poppler's pdftotext reads it, against the
plan file. Each length, count and price has to be one of the plan, one that was entered, or one that `sentences.py`
reckons anew from those; what is left is named. Twice: every length of the plan has to stand on the sheet.

MATSIDE_SEED and MATSIDE_COUNT choose the pieces made by chance."""
import argparse
import collections
import functools
import json
import os
import pathlib
import random
import re
import subprocess
import sys
import tempfile

import pieces
import sentences
from lengths import LENGTH, entered


class Sheet:
    """What the program prints and plans of one project file, in one form and language."""

    def __init__(self, matside, project, folder, paper="a4", language="en", form="long"):
        source = folder / "project.json"
        source.write_text(json.dumps(project), encoding="utf-8")
        pdf = folder / "sheet.pdf"
        pdf.unlink(missing_ok=True)
        told = subprocess.run([matside, "--sheet", pdf, "--paper", paper, "--form", form, "--language", language, source],
                              capture_output=True, text=True)
        self.made = told.returncode == 0 and pdf.exists()
        if not self.made:
            if told.returncode != 3:
                raise SystemExit(f"figures: {told.returncode} from --sheet: {told.stderr}")
            return
        self.project, self.matside, self.source = project, matside, source
        raw = subprocess.run(["pdftotext", "-raw", pdf, "-"], capture_output=True, text=True, check=True).stdout
        told = subprocess.run(["pdfinfo", pdf], capture_output=True, text=True, check=True).stdout
        self.pages = int(re.search(r"Pages:\s+(\d+)", told).group(1))
        self.text = re.sub(r"\s+", " ", raw.replace("\u00a0", " "))

    @functools.cached_property
    def plan(self):
        planned = subprocess.run([self.matside, "--plan", self.source], capture_output=True, text=True)
        return json.loads(planned.stdout)


def shows(part, found):
    """Every length of the plan file as it is told, with the path it stands at."""
    if isinstance(part, dict) and "shows" in part:
        found.add(part["shows"])
    elif isinstance(part, (dict, list)):
        for one in part.values() if isinstance(part, dict) else part:
            shows(one, found)
    return found


def counts(plan, project):
    """Every number of things: what the plan counts, and what was entered as a count."""
    found = {step["count"] for step in plan["steps"]} | {project.get("kits", 1)}
    blocks = project["blocks"]
    found |= {blocks["columns"], blocks["rows"], blocks["columns"] * blocks["rows"]}
    strip, sashing = plan["strip"], plan["sashing"]
    found |= {strip["perStrip"], strip["strips"]} | set(range(1, strip["perStrip"] + 1))
    found |= {sashing["shorts"]["count"], sashing["longs"]["count"]}
    found |= set(range(1, len(sashing.get("marks", [])) + 1))
    if plan.get("binding"):
        found |= {plan["binding"]["strips"]}
    found |= {patch["count"] for patch in plan["patches"]}
    kits = project.get("kits", 1)
    return found | {one // kits for one in found}  # of a class, what is in one kit


def unexplained(sheet):
    # Her own names hold no numbers here.
    text = re.sub(r"· page \d+ of \d+", " ", sheet.text)
    text, wrong = sentences.taken_out(text, sheet.plan, sheet.project)
    known = shows(sheet.plan, set()) | entered(sheet.project)
    known |= {length.lstrip("\u2212") for length in shows(sheet.plan.get("table", {}), set())}  # a drop
    numbers = counts(sheet.plan, sheet.project)

    def told(length):
        """A length; or the number of a place and the length beside it, which read as one: "1" "1/2 in"."""
        place, _, rest = length.partition(" ")
        first = length[0].lower() + length[1:]
        return first in known or (place.isdigit() and int(place) in numbers and rest in known)
    wrong += [f"length {one.group()!r}: …{text[max(0, one.start() - 60):one.end() + 40]}…"
              for one in LENGTH.finditer(text) if not told(one.group())]
    text = re.sub(r"\b[A-Z]+\d+\b", " ", LENGTH.sub(" ", text))  # A1, C6: the names of the blocks
    wrong += [f"number {one.group()!r}: …{text[max(0, one.start() - 60):one.end() + 40]}…"
              for one in re.finditer(r"\d+(?:[.,]\d+)*", text) if not one.group().isdigit() or int(one.group()) not in numbers]
    return wrong


def missing(sheet):
    """What the plan says of sashings that are not there is not printed; nor is nought, for a ruler laid with its edge
    itself has no line to name."""
    sashing = dict(sheet.plan["sashing"])
    without = [key for key in ("shorts", "longs") if sashing[key]["count"] == 0]
    for key in without + (["marks"] if "longs" in without else []):
        sashing.pop(key, None)
    should = shows({**sheet.plan, "sashing": sashing}, set()) - {"0 in", "0 mm"}
    printed = {one.group() for one in LENGTH.finditer(sheet.text)}
    return [f"not printed: {one!r}" for one in sorted(should - printed)]


def figures(text):
    """The figures of a text in any language: how often each stands there."""
    text = re.sub(r"· \S+ \d+ \S+ \d+", " ", text)
    return collections.Counter(re.findall(r"\d+(?:[.,/]\d+)?", text.replace(",", ".")))


def crowded(matside, project, folder):
    """The short form is one page, a kit of a class another, on either paper and in every language; German has the longest words."""
    for paper in ("a4", "letter"):
        for language in ("en", "de", "es", "fr"):
            short = Sheet(matside, project, folder, paper, language, "short")
            if short.pages != 1:
                yield f"{language} {paper}: the short form has {short.pages} pages"
        for language in ("en", "de"):
            alone, more = (Sheet(matside, {**project, "kits": kits}, folder, paper, language, "class").pages
                           for kits in (2, 3))
            if more != alone + 1:
                yield f"{language} {paper}: a kit takes {more - alone} pages"


def main():
    options = argparse.ArgumentParser(description=__doc__)
    options.add_argument("--matside", required=True)
    options.add_argument("--source", required=True, type=pathlib.Path)
    asked = options.parse_args()
    seed = int(os.environ.get("MATSIDE_SEED", "7"))
    count = int(os.environ.get("MATSIDE_COUNT", "8"))
    chance = random.Random(seed)
    demo = json.loads((asked.source / "assets/demo-project.json").read_text(encoding="utf-8"))
    tried, wrong, planned = 0, [], 0
    with tempfile.TemporaryDirectory() as name:
        folder = pathlib.Path(name)
        queue = [("demo", demo), ("demo in millimetres", pieces.metric(demo))]
        english = None
        while planned < count + 2:
            title, project = queue.pop(0) if queue else (f"by chance {tried}", pieces.by_chance(chance, demo))
            tried += 1
            if tried > 40 * (count + 2):
                raise SystemExit("figures: hardly any piece by chance can be made")
            sheet = Sheet(asked.matside, project, folder, chance.choice(("a4", "letter")))
            if not sheet.made:
                if not title.startswith("by chance"):
                    wrong.append(f"{title}: no sheet")
                    break
                continue
            planned += 1
            english = english or sheet
            found = unexplained(sheet) + missing(sheet)
            for form in ("short", "class"):
                found += [f"{form} form: {one}" for one in
                          unexplained(Sheet(asked.matside, project, folder, "a4", form=form))]
            wrong += [f"{title} (seed {seed}): {one}" for one in found]
            if found:
                print(json.dumps(project), file=sys.stderr)
        for language in ("de", "es", "fr"):
            other = Sheet(asked.matside, demo, folder, language=language)
            if figures(other.text) != figures(english.text):
                more, less = figures(other.text) - figures(english.text), figures(english.text) - figures(other.text)
                wrong.append(f"{language}: figures more {dict(more)}, less {dict(less)} than in English")
        wrong += crowded(asked.matside, demo, folder)
    print(f"{planned} sheets looked through, of {tried} pieces tried, seed {seed}")
    for one in wrong:
        print(one, file=sys.stderr)
    sys.exit(1 if wrong else 0)


main()
