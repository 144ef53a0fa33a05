#!/usr/bin/python3
# SPDX-License-Identifier: MIT
"""Share files seen from outside, with general-purpose tools only: Python's zipfile and hashlib, and Debian's
python3-pil for what stands in a photograph's Exif block. Drives the program by its commands.

    outside.py --matside PROGRAM --holder PROGRAM

The holder is a program that makes a store with one project and the photographs it is given."""
import argparse
import hashlib
import io
import json
import pathlib
import stat
import subprocess
import sys
import tempfile
import zipfile

from PIL import ExifTags, Image

GPS = 0x8825  # CIPA DC-008, 4.6.3
failures = []

def check(good, what):
    if not good:
        failures.append(what)

def telephone(path):
    """A photograph as a telephone writes it: maker, model, time, and a place (51.4777, -0.0016)."""
    image = Image.effect_mandelbrot((400, 300), (-2, -1.2, 1, 1.2), 60).convert("RGB")
    exif = image.getexif()
    exif[ExifTags.Base.Make] = "Brightbox"
    exif[ExifTags.Base.Model] = "Pocket 7"
    exif[ExifTags.Base.DateTime] = "2026:02:03 04:05:06"
    exif[ExifTags.Base.Orientation] = 6
    exif[ExifTags.Base.Software] = "Brightbox 12"
    exif[GPS] = {1: "N", 2: (51.0, 28.0, 39.72), 3: "W", 4: (0.0, 0.0, 5.76)}
    image.save(path, exif=exif, quality=92)
    with Image.open(path) as written:
        check(written.getexif().get_ifd(GPS).get(1) == "N", "the photograph carries no place to begin with")
    return path

class Program:
    def __init__(self, path):
        self.path = path

    def run(self, *arguments):
        ran = subprocess.run([self.path, *map(str, arguments)], stdout=subprocess.PIPE, stderr=subprocess.PIPE)
        return ran.returncode, ran.stdout.decode(), ran.stderr.decode()

def whole(path):
    """The archive keeps to its own manifest, and says nothing of the machine it was made on."""
    with zipfile.ZipFile(path) as archive:
        check(archive.testzip() is None, "zipfile finds a fault")
        manifest = json.loads(archive.read("manifest.json"))
        check(manifest["format"] == "matside-share" and manifest["version"] == 1, "manifest")
        names = {one["name"] for one in manifest["files"]} | {"manifest.json"}
        check(names == set(archive.namelist()), "what is listed is not what is there")
        for one in manifest["files"]:
            held = archive.read(one["name"])
            check(len(held) == one["bytes"] and hashlib.sha256(held).hexdigest() == one["sha256"], one["name"])
        for info in archive.infolist():
            check(info.date_time == (1980, 1, 1, 0, 0, 0), f"{info.filename} tells when it was made")
            check(not info.comment and not info.extra, f"{info.filename} has more to tell")
        check(json.loads(archive.read("project.json"))["format"] == "matside-project", "project")
        return {name: archive.read(name) for name in archive.namelist()}

def bare(parts):
    """Of every photograph only which way up it is can be read."""
    pictures = [held for name, held in parts.items() if name.startswith("photographs/")]
    check(len(pictures) == 1, "one photograph")
    for held in pictures:
        with Image.open(io.BytesIO(held)) as image:
            tags = dict(image.getexif())
            check(tags == {ExifTags.Base.Orientation: 6}, f"tags left: {tags}")
            check(not image.getexif().get_ifd(GPS), "a place is left")
            told = {**image.info, "exif": None}
            # 72 is what Pillow puts where nothing is told.
            check(told == {"jfif": 257, "jfif_version": (1, 1), "jfif_unit": 0, "jfif_density": (1, 1), "exif": None,
                           "dpi": (72, 72)}, f"{told}")
        check(b"Brightbox" not in held and b"2026:" not in held, "words are left")

def same_pixels(parts, path):
    held = next(held for name, held in parts.items() if name.startswith("photographs/"))
    with Image.open(io.BytesIO(held)) as out, Image.open(path) as came:
        check(out.size == came.size and out.tobytes() == came.tobytes(), "the picture has changed")

def spoiled(parts, path, name, held=b"x", mode=None, twice=False):
    """The same archive with one thing in it that an honest program does not write, made by zipfile."""
    with zipfile.ZipFile(path, "w") as archive:
        for one, text in parts.items():
            archive.writestr(one, text)
        info = zipfile.ZipInfo(name)
        if mode is not None:
            info.external_attr = mode << 16
        archive.writestr(info, held)
        if twice:
            archive.writestr(info, held)

def folder_of(path):
    return sorted((str(one.relative_to(path)), one.stat().st_size) for one in pathlib.Path(path).rglob("*")
                  if not one.name.endswith(("-shm", ".lock")))

def refusals(program, parts, box):
    store = box / "other"
    check(program.run("--open-shared", box / "one.matside", "--data", store)[0] == 0, "bringing in")
    before = folder_of(box)
    tricks = [("../evil.txt", None, "outside-path"), ("/evil.txt", None, "outside-path"),
              ("a\\evil.txt", None, "outside-path"), ("photographs/link", stat.S_IFLNK | 0o777, "link"),
              ("evil.txt", None, "stray-file")]
    path = box / "bad.matside"
    for name, mode, code in tricks:
        spoiled(parts, path, name, mode=mode)
        answer, _, says = program.run("--open-shared", path, "--data", store)
        check(answer == 2 and f"({code})" in says, f"{name}: {answer} {says}")
        path.unlink()
        check(folder_of(box) == before, f"{name}: something was written")
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED) as archive:
        for name, held in parts.items():
            archive.writestr(name, held)
        archive.writestr("photographs/" + "a" * 64 + ".png", b"\0" * 50_000_000)
    answer, _, says = program.run("--look-inside", path)
    check(answer == 2 and "(too-tight)" in says, f"bomb: {answer} {says}")
    return len(tricks) + 1

def main():
    options = argparse.ArgumentParser()
    for name in ("matside", "holder"):
        options.add_argument("--" + name, required=True)
    told = options.parse_args()
    program = Program(told.matside)
    with tempfile.TemporaryDirectory() as passing:
        box = pathlib.Path(passing)
        picture = telephone(box / "telephone.jpeg")
        subprocess.run([told.holder, str(box / "data"), "Lane runner", str(picture)], check=True)
        one, two, kept = (box / name for name in ("one.matside", "two.matside", "kept.matside"))
        answer = program.run("--share", one, "--data", box / "data", "Lane runner")
        check(answer[0] == 0, f"sharing: {answer}")
        parts = whole(one)
        bare(parts)
        same_pixels(parts, picture)
        answer, says, _ = program.run("--look-inside", one)
        check(answer == 0 and "Lane runner" in says and "one photograph" in says, says)
        print(refusals(program, parts, box), "spoiled files refused")
        check(program.run("--share", two, "--data", box / "other", "Lane runner")[0] == 0, "sharing again")
        check(two.read_bytes() == one.read_bytes(), "out, in and out again is not the same")
        check(program.run("--share", two, "--data", box / "other", "Lane runner")[0] == 2, "a file was written over")
        check(program.run("--share", box / "x", "--data", box / "other", "Nothing")[0] == 1, "no such project")
        check(program.run("--share", kept, "--as-they-came", "--data", box / "data", "Lane runner")[0] == 0, "kept")
        check(b"Brightbox" in b"".join(whole(kept).values()), "she said so, and it was taken away")
    for failure in failures:
        print("FAILED:", failure)
    return 1 if failures else 0

if __name__ == "__main__":
    sys.exit(main())
