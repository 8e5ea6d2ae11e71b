#!/usr/bin/env python3
"""Writes assets/licenses.csv: the libraries that the program is built from on Linux, with their licenses.

    python3 tests/structure/licenses.py

Run it after a dependency changed; `tests/structure/licenses.rs` says so if it was forgotten.
"""

import csv
import json
import pathlib
import subprocess

TOP = pathlib.Path(__file__).resolve().parent.parent.parent


def main():
    command = "cargo metadata --locked --filter-platform x86_64-unknown-linux-gnu --format-version 1".split()
    about = json.loads(subprocess.run(command, check=True, capture_output=True, cwd=TOP).stdout)
    packages = {package["id"]: package for package in about["packages"]}
    nodes = {node["id"]: node for node in about["resolve"]["nodes"]}
    # What only the tests or the build need is not in the program.
    wanted, found = [about["resolve"]["root"]], set()
    while wanted:
        node = nodes[wanted.pop()]
        for needed in node["deps"]:
            if needed["pkg"] not in found and any(kind["kind"] is None for kind in needed["dep_kinds"]):
                found.add(needed["pkg"])
                wanted.append(needed["pkg"])
    rows = sorted((packages[of]["name"], packages[of]["version"], packages[of]["license"] or "see its file") for of in found)
    with open(TOP / "assets" / "licenses.csv", "w", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(["library", "version", "license"])
        writer.writerows(rows)


if __name__ == "__main__":
    main()
