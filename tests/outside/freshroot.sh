#!/bin/sh
# SPDX-License-Identifier: MIT
# Installs the package in a fresh root of Debian 12 with nothing but what it depends on, starts what its desktop entry
# says as an ordinary user on a display outside that root, takes a picture of it, removes the package, and looks at
# what is left. Needs root, a network, and the packages debootstrap, xvfb, imagemagick and xdotool.
#   sh tests/outside/freshroot.sh PACKAGE.deb FOLDER [MIRROR]   (debootstrap's own mirror unless told)
# FOLDER takes the root (kept, and used again when it is there) and `launched.png`.
set -eu
[ $# -ge 2 ] || { echo "usage: freshroot.sh PACKAGE.deb FOLDER [MIRROR]" >&2; exit 2; }
package=$1
folder=$2
mirror=${3:-}
root=$folder/root
id=org.matside.Matside
display=:77
mkdir -p "$folder"
[ -f "$root/etc/debian_version" ] || debootstrap --variant=minbase bookworm "$root" ${mirror:+"$mirror"} >"$folder/root.log"

cleanup() {
    [ -n "${screen:-}" ] && kill "$screen" 2>/dev/null
    umount "$root/proc" 2>/dev/null || true
}
trap cleanup EXIT
mount --bind /proc "$root/proc"
cp "$package" "$root/srv/matside.deb"
inside() { chroot "$root" env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 "$@"; }

inside apt-get update -qq
inside apt-get install -y -qq --no-install-recommends /srv/matside.deb >"$folder/install.log" 2>&1
files=$(inside dpkg -L matside | while read -r file; do [ -f "$root$file" ] && echo "$file"; done)
echo "$(echo "$files" | wc -l) files installed"
inside id maker >/dev/null 2>&1 || inside useradd -m maker

# What a desktop does with the entry: its command, without a file.
command=$(sed -n 's/^Exec=//p' "$root/usr/share/applications/$id.desktop" | head -n 1 | sed 's/ *%[fFuU]//')
Xvfb "$display" -screen 0 1280x800x24 >/dev/null 2>&1 &
screen=$!
sleep 2
# Its socket has a name of its own beside the file system, so the root needs no way out.
inside su - maker -c "DISPLAY=$display timeout 45 $command" >"$folder/launch.log" 2>&1 &
started=$!
sleep "${WAIT:-25}"
DISPLAY=$display import -window root "$folder/launched.png"
[ "$(DISPLAY=$display xdotool search --onlyvisible --name . getwindowname)" = Matside ]
wait "$started" || [ $? -eq 124 ] # stopped by the clock, not by a fault
echo "started by \"$command\"; look at $folder/launched.png"
[ -f "$root/home/maker/.local/share/matside/matside.sqlite" ]

inside apt-get purge -y -qq matside >"$folder/remove.log" 2>&1
left=$(for file in $files; do [ -e "$root$file" ] && echo "$file"; done || true)
[ -z "$left" ] || { echo "left behind: $left" >&2; exit 1; }
[ -f "$root/home/maker/.local/share/matside/matside.sqlite" ]
echo "removed; her data is where it was"
