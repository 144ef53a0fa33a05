# SPDX-License-Identifier: MIT
"""Lists the compiled source files that lie in a folder: compiled.py compile_commands.json FOLDER"""
import json
import os
import sys


def main() -> int:
    database, folder = sys.argv[1], os.path.abspath(sys.argv[2]) + os.sep
    with open(database, encoding="utf-8") as opened:
        entries = json.load(opened)
    files = {os.path.abspath(os.path.join(e["directory"], e["file"])) for e in entries}
    for path in sorted(f for f in files if f.startswith(folder)):
        print(os.path.relpath(path))
    return 0


if __name__ == "__main__":
    sys.exit(main())
