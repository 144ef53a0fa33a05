# SPDX-License-Identifier: MIT
"""Finds every Repeater that is a direct child of a layout: repeaters.py FOLDER

Qt 6.4.2 can read a deleted delegate when a layout is resized after its Repeater's model changed, so
lists go in a Row, Column, Flow, Grid or ListView instead. A file whose own root is a layout counts as
one wherever it is used."""
import os
import re
import sys

LAYOUTS = {"RowLayout", "ColumnLayout", "GridLayout"}
# Comments, strings and template strings are skipped; braces and the words before them are kept.
TOKEN = re.compile(
    r"""//[^\n]*|/\*.*?\*/|"(?:\\.|[^"\\\n])*"|'(?:\\.|[^'\\\n])*'|`(?:\\.|[^`\\])*`"""
    r"""|(?P<type>(?:[A-Za-z_]\w*\.)*[A-Z]\w*)\s*(?:on\s+[\w.]+\s*)?\{|(?P<open>\{)|(?P<close>\})""",
    re.S,
)


def objects(text):
    """Yields (line, type, type of the object it stands in); a block of script stands as None."""
    stack = []
    for match in TOKEN.finditer(text):
        if match["type"]:
            name = match["type"].rsplit(".", 1)[-1]
            yield text.count("\n", 0, match.start()) + 1, name, stack[-1] if stack else ""
            stack.append(name)
        elif match["open"]:
            stack.append(None)
        elif match["close"] and stack:
            stack.pop()


def main() -> int:
    found, repeaters, layouts = 0, 0, set(LAYOUTS)
    sources = {}
    for folder, _, names in os.walk(sys.argv[1]):
        for name in sorted(n for n in names if n.endswith(".qml")):
            path = os.path.join(folder, name)
            with open(path, encoding="utf-8") as opened:
                sources[path] = list(objects(opened.read()))
    for _ in sources:  # a layout made of a layout made of a layout …
        before = len(layouts)
        for path, seen in sources.items():
            if seen and seen[0][1] in layouts:
                layouts.add(os.path.splitext(os.path.basename(path))[0])
        if len(layouts) == before:
            break
    for path, seen in sources.items():
        for line, name, parent in seen:
            repeaters += name == "Repeater"
            if name == "Repeater" and parent in layouts:
                print(f"{path}:{line}: Repeater directly in a {parent}")
                found += 1
    print(f"{repeaters} Repeaters in {len(sources)} QML files looked at")
    return 1 if found or not sources else 0


if __name__ == "__main__":
    sys.exit(main())
