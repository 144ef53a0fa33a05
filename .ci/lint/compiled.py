# SPDX-License-Identifier: MIT
"""Lists what is compiled of a folder, the longest to read first: compiled.py compile_commands.json FOLDER

That is its sources, and for those compiled together the file that draws them in."""
import json
import os
import sys


def main() -> int:
    database, folder = sys.argv[1], os.path.abspath(sys.argv[2]) + os.sep
    with open(database, encoding="utf-8") as opened:
        entries = json.load(opened)
    files = {os.path.abspath(os.path.join(e["directory"], e["file"])) for e in entries}
    room = os.sep + os.path.basename(folder.rstrip(os.sep)) + os.sep
    together = sorted(f for f in files if os.sep + "Unity" + os.sep in f and room in f)
    alone = sorted(f for f in files if f.startswith(folder))
    for path in together + alone:
        print(os.path.relpath(path))
    return 0


if __name__ == "__main__":
    sys.exit(main())
