#!/usr/bin/env python3
# SPDX-License-Identifier: MIT
"""The table of formulas: which test checks each, against what, and where that comes from.

The tests carry the marks. A mark stands on lines of its own directly above a test function (comments may
lie between, nothing else):

    // F9 | published figure | two guild hand-outs for 1/4 in seams: strips of 1 in and of
    //    | 1 1/8 in whose allowances meet
    void TestJoinTest::handOutsBracketTheBulk()

  python3 .ci/lint/truth.py           fails when a formula has no mark, a mark is faulty, or the table in
                                      DEVELOPERS.md is not the one the marks make
  python3 .ci/lint/truth.py --write   writes the table
"""
import re
import subprocess
import sys

FORMULAS = [
    "what is shown is rounded by kind", "strip width for a hoop", "does the block fit the hoop",
    "gap between outlines", "end margin and tails", "blocks on a strip and their places", "trimmed size",
    "sashing: condition and cut widths", "sashing: lengths and counts", "what a wrong seam does",
    "fold and catch of the back strip", "clean back: backing", "match marks", "finished sizes",
    "binding: strip width", "binding: length and strips", "bias and curves", "batting", "patches and web",
    "thread, bobbin, stitches", "time", "draw-up", "fit on the table", "squaring from six readings",
    "rows and tolerances", "accept, correct, remake", "the bend at the fold", "cost and price",
    "kits of a class", "lightness of a colour", "ten-step value of a colour",
    "cloth's colour in a photograph", "order of patches by contrast",
]
KINDS = ["published figure", "independent derivation", "general-purpose library", "hand-worked case only"]
BEGIN, END = "<!-- formulas: begin -->", "<!-- formulas: end -->"
MARK = re.compile(r"^// F(\d+) \| ([^|]+?) \| (\S.*)$")
MORE = re.compile(r"^//\s+\| (\S.*)$")
TEST = re.compile(r"^void (\w+)::(\w+)\(\)$")


def marks_of(path, faults):
    """(formula, kind, source, file, test) of every mark in one test file."""
    with open(path, encoding="utf-8") as file:
        text = file.read()
    found, open_marks = [], []
    for number, line in enumerate(text.splitlines(), 1):
        if mark := MARK.match(line):
            if int(mark[1]) >= len(FORMULAS):
                faults.append(f"{path}:{number}: there is no formula F{mark[1]}")
            elif mark[2] not in KINDS:
                faults.append(f"{path}:{number}: '{mark[2]}' is no kind; the kinds are {', '.join(KINDS)}")
            else:
                open_marks.append([int(mark[1]), mark[2], mark[3]])
        elif re.match(r"^\s*// F\d+ \|", line):
            faults.append(f"{path}:{number}: a mark reads '// F9 | kind | source' from the line's beginning")
        elif open_marks and (more := MORE.match(line)):
            open_marks[-1][2] += " " + more[1]
        elif test := TEST.match(line):
            slot = re.search(rf"^    void {test[2]}\(\);", text, re.MULTILINE)
            if open_marks and not slot:
                faults.append(f"{path}:{number}: {test[2]} is not among the test's slots")
            found += [(*mark, path, test[2]) for mark in open_marks]
            open_marks = []
        elif open_marks and not line.startswith("//"):
            faults.append(f"{path}:{number}: the mark of F{open_marks[-1][0]} stands above no test")
            open_marks = []
    return found


def table(marks):
    """The lines of the table, and one that counts the kinds."""
    lines = ["| formula | checked against | source | test |", "|---|---|---|---|"]
    for formula, kind, source, path, test in sorted(marks, key=lambda m: (m[0], KINDS.index(m[1]), m[3:])):
        name = f"F{formula} {FORMULAS[formula]}"
        lines.append(f"| {name} | {kind} | {source} | `{path.removeprefix('tests/')}` {test} |")
    best = {}
    for formula, kind, *_ in marks:
        best.setdefault(formula, set()).add(kind)
    counts = [f"{article} {kind}: {sum(kind in kinds for kinds in best.values())}"
              for article, kind in zip(("a", "an", "a"), KINDS)]
    alone = [f"F{formula}" for formula in sorted(best) if best[formula] == {KINDS[3]}]
    lines += ["", f"Checked against {', '.join(counts)}, of {len(FORMULAS)} formulas; {KINDS[3]}: {len(alone)}"
                  + (f" ({', '.join(alone)})." if alone else ".")]
    return lines


def main():
    files = subprocess.run(["git", "ls-files", "-co", "--exclude-standard", "tests/*.cpp"],
                           capture_output=True, text=True, check=True).stdout.split()
    faults = []
    marks = [mark for path in files for mark in marks_of(path, faults)]
    for formula, name in enumerate(FORMULAS):
        if not any(mark[0] == formula for mark in marks):
            faults.append(f"F{formula} ({name}) has no check: mark its test, or write one")
        elif len({mark[1] for mark in marks if mark[0] == formula} - {KINDS[3]}) == 0 and \
                sum(mark[0] == formula for mark in marks) > 1:
            faults.append(f"F{formula} ({name}): one hand-worked case is enough to say so")
    with open("DEVELOPERS.md", encoding="utf-8") as file:
        before, rest = file.read().split(BEGIN, 1)
        old, after = rest.split(END, 1)
    new = "\n" + "\n".join(table(marks)) + "\n"
    if "--write" in sys.argv[1:]:
        with open("DEVELOPERS.md", "w", encoding="utf-8") as file:
            file.write(before + BEGIN + new + END + after)
    elif old != new:
        faults.append("DEVELOPERS.md: the table of formulas is old; python3 .ci/lint/truth.py --write")
    print(f"{len(marks)} marks in {len(files)} test files")
    print("\n".join(faults + table(marks)[-1:]))
    return 1 if faults else 0


sys.exit(main())
