#!/bin/sh
# SPDX-License-Identifier: MIT
# installed.sh BUILD SOURCE: installs into a passing folder and looks at what a desktop will find there, with the
# general tools desktop-file-validate and appstreamcli; then starts what was installed.
set -eu
build=$1
source=$2
box=$(mktemp -d)
trap 'rm -rf "$box"' EXIT
id=org.matside.Matside

cmake --install "$build" --prefix "$box" >/dev/null
share=$box/share
desktop-file-validate "$share/applications/$id.desktop"
appstreamcli validate --no-net "$share/metainfo/$id.metainfo.xml"
for size in 16 24 32 48 64 128 256; do
    python3 - "$share/icons/hicolor/${size}x$size/apps/$id.png" "$size" <<'PY'
import sys
from PIL import Image
with Image.open(sys.argv[1]) as icon:
    assert icon.size == (int(sys.argv[2]),) * 2, (sys.argv[1], icon.size)
PY
done
python3 - "$share" "$id" <<'PY'
import pathlib
import sys
import xml.etree.ElementTree as xml
share, name = pathlib.Path(sys.argv[1]), sys.argv[2]
xml.parse(share / f"icons/hicolor/scalable/apps/{name}.svg")
space = "{http://www.freedesktop.org/standards/shared-mime-info}"
types = {one.get("type") for one in xml.parse(share / f"mime/packages/{name}.xml").iter(space + "mime-type")}
entry = dict(line.split("=", 1) for line in (share / f"applications/{name}.desktop").read_text().splitlines() if "=" in line)
assert types == set(entry["MimeType"].strip(";").split(";")), types
assert entry["Icon"] == name and entry["Exec"].split()[0] == "matside"
told = {one.text for one in xml.parse(share / f"metainfo/{name}.metainfo.xml").iter("mediatype")}
assert told == types, told
PY
[ -f "$share/doc/matside/copyright" ] && [ -f "$share/matside/schema/project.schema.json" ]

# It runs from where it was put, and what it leaves is in her own folder alone.
before=$(find "$box" -type f | sort)
"$box/bin/matside" --plan "$source/assets/demo-project.json" >/dev/null 2>&1
data=$(mktemp -d)
"$box/bin/matside" --pictures "$data/pictures" --only shelf --data "$data" >/dev/null
[ -f "$data/matside.sqlite" ] && rm -rf "$data"
[ "$before" = "$(find "$box" -type f | sort)" ]
echo "$(echo "$before" | wc -l) files installed and looked at"
