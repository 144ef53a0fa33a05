# SPDX-License-Identifier: MIT
"""One changed term at a time: run through sh tests/long/mutants, which says how."""
import argparse
import concurrent.futures
import glob
import hashlib
import json
import os
import re
import resource
import shlex
import shutil
import subprocess
import sys
import tempfile
import time

# The rooms without Qt, quick tests first, and what their tests are linked with besides.
ROOMS = {"length": [], "shade": [], "made": ["project", "length"], "plan": ["project", "length"],
         "project": ["length"], "cutting": ["length"],
         "bench": ["plan", "cutting", "made", "project", "length"]}
BESIDES = {"shade": ["-llcms2"]}
SAME = "tests/long/parts/mutants.same"
CHANGES = [  # (what stands there, what is put instead)
    (r" \+ ", " - "), (r" - ", " + "), (r" \+= ", " -= "), (r" -= ", " += "), (r" \* ", " + "), (r" / ", " * "),
    (r" < ", " <= "), (r" <= ", " < "), (r" > ", " >= "), (r" >= ", " > "), (r" == ", " != "),
    (r" != ", " == "), (r" && ", " || "), (r" \|\| ", " && "), (r"\bmin\(", "max("), (r"\bmax\(", "min("),
    (r"\bfloorDiv\(", "ceilDiv("), (r"\bceilDiv\(", "floorDiv("), (r"\bupTo\(", "downTo("),
    (r"(?<![\w.'])(\d+)(?![\w.'])", None),  # a whole constant grows by one
]
COMMENT = re.compile(r"//.*|\"(?:\\.|[^\"\\])*\"|'(?:\\.|[^'\\])*'(?=\W)")


def sites(room):
    """Every (file, line number, column, old, new, key) that can be changed."""
    for path in sorted(glob.glob(f"cpp/{room}/*.cpp")):
        seen = {}
        with open(path, encoding="utf-8") as file:
            lines = file.read().splitlines()
        for number, line in enumerate(lines, 1):
            if line.startswith(("#", "///", "template")) or "static_assert" in line:
                continue
            code = COMMENT.sub(lambda m: "\0" * len(m[0]), line)
            for pattern, new in CHANGES:
                for match in re.finditer(pattern, code):
                    to = new if new is not None else str(int(match[1]) + 1)
                    at = (line.strip(), match.start() - len(line) + len(line.lstrip()), to)
                    seen[at] = seen.get(at, 0) + 1
                    yield path, number, match.start(), match[0], to, f"{path}|{at}|{seen[at]}"


def limited():
    resource.setrlimit(resource.RLIMIT_AS, (6 << 30, 6 << 30))


class Room:
    """A room's tests, linked with the room as a library that can be exchanged."""

    def __init__(self, name, build, scratch):
        self.name, self.build, self.scratch = name, os.path.abspath(build), scratch
        self.here = os.getcwd()
        commands = json.load(open(f"{build}/compile_commands.json", encoding="utf-8"))
        self.command = {os.path.relpath(c["file"], self.here): c for c in commands
                        if f"/cpp/{name}/" in c["file"] and c["file"].endswith(".cpp")}
        self.objects = {path: os.path.join(c["directory"], re.search(r" -o (\S+)", c["command"])[1])
                        for path, c in self.command.items()}
        self.good = f"{scratch}/{name}"
        os.makedirs(self.good)
        if not self.command:
            self.apart(next(c for c in commands if f"/matside_{name}.dir/" in c["command"]))
        self.link(self.good, {})
        libraries = [f"{self.build}/cpp/{other}/libmatside_{other}.a" for other in ROOMS[name]]
        self.tests = []
        for folder in sorted(glob.glob(f"{self.build}/tests/{name}/CMakeFiles/tst_*.dir")):
            test = os.path.basename(folder)[:-4]
            objects = glob.glob(f"{folder}/**/*.o", recursive=True)
            if not objects:
                continue  # the folder of a helper target
            self.run("g++", "-rdynamic", "-o", f"{self.good}/{test}", *objects, f"-L{self.good}", "-lroom",
                     "-Wl,--whole-archive", *libraries, "-Wl,--no-whole-archive", "-lQt6Test", "-lQt6Core",
                     *BESIDES.get(name, []))
            self.tests.append(test)
        self.seconds = {}
        for test in self.tests:
            start = time.monotonic()
            if self.fails(self.good, test, 600):
                sys.exit(f"mutants: {test} fails before anything was changed")
            self.seconds[test] = time.monotonic() - start
        self.tests.sort(key=self.seconds.get)

    def apart(self, together):
        """A room that was compiled many files at a time is compiled again, each file by itself."""
        for path in sorted(glob.glob(f"cpp/{self.name}/*.cpp")):
            source, made = os.path.join(self.here, path), f"{self.good}/{os.path.basename(path)}.o"
            words = shlex.split(together["command"])
            words[words.index("-o") + 1], words[-1] = made, source
            self.command[path] = {**together, "command": shlex.join(words)}
            self.objects[path] = made
        with concurrent.futures.ThreadPoolExecutor(2) as pool:
            for done in pool.map(lambda c: subprocess.run(shlex.split(c["command"]), cwd=c["directory"]),
                                 self.command.values()):
                done.check_returncode()

    def run(self, *command):
        subprocess.run(command, check=True, stderr=subprocess.PIPE)

    def link(self, folder, changed):
        objects = [changed.get(path, was) for path, was in self.objects.items()]
        self.run("g++", "-shared", "-o", f"{folder}/libroom.so", *objects)

    def fails(self, folder, test, most):
        env = {**os.environ, "LD_LIBRARY_PATH": folder, "QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"}
        try:
            return subprocess.run([f"{self.good}/{test}", "-silent", "-maxwarnings", "1"], env=env,
                                  timeout=most, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                                  preexec_fn=limited).returncode != 0
        except subprocess.TimeoutExpired:
            return True

    def attempt(self, site):
        """(outcome, what noticed): 'noticed', 'survived' or 'no program'."""
        path, number, column, old, new, _ = site
        with tempfile.TemporaryDirectory(dir=self.scratch) as folder:
            with open(path, encoding="utf-8") as file:
                lines = file.read().split("\n")
            line = lines[number - 1]
            lines[number - 1] = line[:column] + new + line[column + len(old):]
            source, made = f"{folder}/{os.path.basename(path)}", f"{folder}/changed.o"
            with open(source, "w", encoding="utf-8") as file:
                file.write("\n".join(lines))
            command = shlex.split(self.command[path]["command"])
            command = [word for word in command if word not in ("-Werror", "ccache", "-g", "-O2")]
            command[command.index("-o") + 1] = made
            command[-1] = source
            command += ["-w", "-O1", f"-I{os.path.dirname(os.path.join(self.here, path))}"]
            built = subprocess.run(command, cwd=self.command[path]["directory"], capture_output=True)
            if built.returncode != 0:
                return site, "no program", ""
            self.link(folder, {path: made})
            for test in self.tests:
                if self.fails(folder, test, max(10, 8 * self.seconds[test])):
                    return site, "noticed", test
            return site, "survived", ""


def known():
    """Changes that make no difference, as 'file: line -> line | why'."""
    if not os.path.exists(SAME):
        return set()
    with open(SAME, encoding="utf-8") as file:
        return {line.split(" | ")[0].strip() for line in file if line.strip() and line[0] != "#"}


def told(site):
    path, number, column, old, new, _ = site
    with open(path, encoding="utf-8") as file:
        line = file.read().split("\n")[number - 1]
    return f"{path}: {line.strip()} -> {(line[:column] + new + line[column + len(old):]).strip()}", number


def main():
    parser = argparse.ArgumentParser(prog="mutants")
    parser.add_argument("build")
    parser.add_argument("jobs", type=int)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--count", type=int, default=400, help="changes in each room")
    parser.add_argument("--short", action="store_true")
    parser.add_argument("--room", choices=ROOMS, action="append")
    parser.add_argument("--file", default="", help="only files whose name holds this")
    asked = parser.parse_args()
    # The short form stays with the quick rooms: one run of cutting's tests takes as long as many of theirs.
    rooms = asked.room or (["length", "shade", "plan", "made"] if asked.short else list(ROOMS))
    count = 6 if asked.short else asked.count
    same, left = known(), []
    scratch = tempfile.mkdtemp(prefix="mutants-")
    try:
        for name in rooms:
            every = [s for s in sites(name) if asked.file in s[0]]
            every.sort(key=lambda s: hashlib.sha256(f"{asked.seed}|{s[5]}".encode()).digest())
            room = Room(name, asked.build, scratch)
            tally = {"noticed": 0, "survived": 0, "no program": 0}
            alike = 0
            with concurrent.futures.ThreadPoolExecutor(asked.jobs) as pool:
                # Changes that make no program are replaced by others, in the order of the seed.
                todo = iter(every)
                while (missing := count - tally["noticed"] - tally["survived"]) > 0:
                    batch = [site for _, site in zip(range(missing), todo)]
                    if not batch:
                        break
                    for site, outcome, _ in pool.map(room.attempt, batch):
                        tally[outcome] += 1
                        if outcome == "survived":
                            text, number = told(site)
                            alike += text in same
                            if text not in same:
                                left.append(f"{text}    (line {number})")
                                print(f"  survived: {left[-1]}", flush=True)
            print(f"{name}: {tally['noticed'] + tally['survived']} of {len(every)} changes tried, "
                  f"{tally['noticed']} noticed, {alike} make no difference, "
                  f"{tally['survived'] - alike} survived; {tally['no program']} made no program", flush=True)
    finally:
        shutil.rmtree(scratch)
    if left:
        print(f"mutants: {len(left)} survived; again with --seed {asked.seed} --count {count}")
    return 1 if left else 0


sys.exit(main())
