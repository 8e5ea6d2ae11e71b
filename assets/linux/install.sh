#!/bin/sh
# Puts Gapwright into the menu of this user, with its icon and its file type. Run it after
# `cargo install --path .`. `install.sh --remove` takes all of it out again.
set -eu
here=$(CDPATH= cd -- "$(dirname -- "$0")" && pwd)
data=${XDG_DATA_HOME:-$HOME/.local/share}
entry=$data/applications/org.gapwright.Gapwright.desktop
icon=$data/icons/hicolor/scalable/apps/gapwright.svg
kind=$data/mime/packages/gapwright.xml
if [ "${1:-}" = --remove ]; then
    rm -f -- "$entry" "$icon" "$kind"
else
    mkdir -p -- "${entry%/*}" "${icon%/*}" "${kind%/*}"
    cp -- "$here/org.gapwright.Gapwright.desktop" "$entry"
    cp -- "$here/../icon.svg" "$icon"
    cp -- "$here/gapwright.xml" "$kind"
fi
# Menus that have no such program find the files by themselves.
if command -v update-desktop-database >/dev/null; then update-desktop-database "$data/applications"; fi
if command -v update-mime-database >/dev/null; then update-mime-database "$data/mime"; fi
if command -v gtk-update-icon-cache >/dev/null; then gtk-update-icon-cache -q -t "$data/icons/hicolor" || true; fi
