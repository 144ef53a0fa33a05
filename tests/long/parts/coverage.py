# SPDX-License-Identifier: MIT
"""What the tests of the rooms reach: run through sh .ci/coverage, which says how."""
import argparse
import json
import subprocess
import sys

ROOMS = ["length", "project", "plan", "cutting", "made", "shade", "bench", "store", "share"]


def measured(build, rooms):
    """gcovr's own summary: every file of the rooms with its lines."""
    told = subprocess.run(
        ["gcovr", "--root", ".", "--object-directory", build, "--json", "--exclude-throw-branches",
         "--exclude-unreachable-branches", "--gcov-ignore-parse-errors",
         *(word for room in rooms for word in ("--filter", f"cpp/{room}/")),
         *(f"{build}/cpp/{room}" for room in rooms)],
        check=True, capture_output=True, text=True)
    return json.loads(told.stdout)["files"]


def ranges(numbers):
    """12, 14-16: line numbers in a row told together."""
    told, first = [], None
    for number in numbers + [None]:
        if first is not None and number != last + 1:
            told.append(str(first) if first == last else f"{first}-{last}")
            first = None
        if first is None:
            first = number
        last = number
    return ", ".join(told)


def main():
    parser = argparse.ArgumentParser(prog="coverage")
    parser.add_argument("build")
    parser.add_argument("rooms", nargs="*", default=ROOMS)
    asked = parser.parse_args()
    files = measured(asked.build, asked.rooms or ROOMS)
    missed, table = [], []
    for room in asked.rooms or ROOMS:
        lines = covered = 0
        for file in files:
            if not file["file"].startswith(f"cpp/{room}/"):
                continue
            counted = {}
            for line in file["lines"]:
                if not line.get("gcovr/noncode"):
                    number = line["line_number"]
                    counted[number] = counted.get(number, 0) + line["count"]
            lines += len(counted)
            covered += sum(count > 0 for count in counted.values())
            if bare := sorted(number for number, count in counted.items() if count == 0):
                missed.append(f"{file['file']}: {ranges(bare)}")
        table.append((room, lines, covered))
    print("\n".join(missed))
    print("\n| room | lines | reached | |\n|---|---:|---:|---:|")
    for room, lines, covered in table + [("all", sum(t[1] for t in table), sum(t[2] for t in table))]:
        print(f"| {room} | {lines} | {covered} | {100 * covered / max(lines, 1):.1f} % |")
    return 0 if all(lines for _, lines, _ in table) else 1


sys.exit(main())
