#!/usr/bin/env python3
"""The table of speeds in DEVELOPERS.md, everything measured in one run, ours and peers side by side.

    python3 tests/bench/table.py            prints it
    python3 tests/bench/table.py --write    puts it into DEVELOPERS.md

Needs numpy, scipy, shapely and scikit-fem for the peers; Xvfb and xev for the time to a visible window. What is
not there is left out and said. Uses the development profile throughout, whose libraries a test build has already
compiled; our own code and every library are optimized in it.
"""

import argparse
import json
import os
import pathlib
import re
import shutil
import statistics
import subprocess
import sys
import tempfile
import time

HERE = pathlib.Path(__file__).resolve().parent
TOP = HERE.parent.parent
BEGIN, END = "<!-- written by tests/bench/table.py -->", "<!-- to here -->"
DISPLAY = ":97"


def cargo(*arguments, **more):
    return subprocess.run(["cargo", *arguments], check=True, cwd=TOP, **more)


def target():
    about = cargo("metadata", "--no-deps", "--format-version", "1", capture_output=True)
    return pathlib.Path(json.loads(about.stdout)["target_directory"])


def ours(folder):
    """Means of our benchmarks in ms, by name."""
    cargo("bench", "--profile", "dev", "--bench", "speed")
    means = {}
    for path in (folder / "criterion").rglob("new/estimates.json"):
        name = json.loads((path.parent / "benchmark.json").read_text())["full_id"]
        means[name] = 1e-6 * json.loads(path.read_text())["mean"]["point_estimate"]
    return means


def peers():
    """Seconds of the peers by name."""
    run = subprocess.run([sys.executable, HERE / "peers.py", "--no-bench"], cwd=TOP, capture_output=True, text=True)
    lines = (json.loads(line) for line in run.stdout.splitlines() if line.startswith("{"))
    return {line["name"]: line["seconds"] for line in lines if "name" in line}


def beads():
    """What the run of beads against scikit-fem prints."""
    run = subprocess.run([sys.executable, TOP / "tests/numbers/bead/speed.py"], cwd=TOP, capture_output=True, text=True)
    rows = re.findall(r"ours ([\d.]+) ms, scikit-fem ([\d.]+) ms", run.stdout)
    return [(float(own), float(peer)) for own, peer in rows]


def whole(binary, *arguments, times=5):
    """Wall time in s and memory in MB of a process, the best of a few."""
    best = None
    for _ in range(times):
        begun = time.perf_counter()
        process = subprocess.Popen([binary, *arguments], stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        _, _, usage = os.wait4(process.pid, 0)
        took = time.perf_counter() - begun
        best = min(best or (took, usage.ru_maxrss / 1024), (took, usage.ru_maxrss / 1024))
    return best


def visible(binary, *arguments, times=7):
    """Median of ms from start to a visible window, and its memory in MB."""
    environment = os.environ | {"DISPLAY": DISPLAY, "LIBGL_ALWAYS_SOFTWARE": "1", "HOME": tempfile.mkdtemp()}
    environment.pop("WAYLAND_DISPLAY", None)
    took, memory = [], []
    for _ in range(times):
        # Tells of a window as it is mapped: a search for it would wait half a second between two looks.
        watch = subprocess.Popen(
            ["stdbuf", "-oL", "xev", "-root", "-event", "substructure"],
            env=environment, stdout=subprocess.PIPE, text=True,
        )
        time.sleep(0.3)
        begun = time.perf_counter()
        process = subprocess.Popen([binary, *arguments], env=environment, stderr=subprocess.DEVNULL)
        next(line for line in watch.stdout if line.startswith("MapNotify"))
        took.append(1e3 * (time.perf_counter() - begun))
        watch.kill()
        watch.wait()
        time.sleep(1.5)
        status = pathlib.Path(f"/proc/{process.pid}/status").read_text()
        memory.append(int(re.search(r"VmRSS:\s+(\d+)", status)[1]) / 1024)
        process.kill()
        process.wait()
    return statistics.median(took), statistics.median(memory)


def windows(folder):
    """Start of the program on the demo and of a bare window; None without a display to draw on."""
    if not (shutil.which("Xvfb") and shutil.which("xev")):
        return None
    cargo("build", "--profile", "dev", "--bench", "bare_window")
    bare = max((folder / "debug" / "deps").glob("bare_window-*"), key=lambda path: (path.suffix == "", path.stat().st_mtime))
    server = subprocess.Popen(["Xvfb", DISPLAY, "-screen", "0", "1366x768x24"], stderr=subprocess.DEVNULL)
    try:
        time.sleep(1)
        return visible(folder / "debug" / "gapwright", TOP / "examples" / "tea_room.ron"), visible(bare)
    finally:
        server.kill()


def time_of(ms):
    if ms < 10:
        return f"{ms:.2g} ms"
    return f"{ms:.0f} ms" if ms < 1000 else f"{ms / 1000:.2g} s"


def rows(folder):
    """Work, ours, peer, ratio."""
    own, other = ours(folder), peers()
    binary = folder / "debug" / "gapwright"

    def beside(name, *kinds):
        known = [(kind, 1e3 * other[key]) for kind, key in kinds if key in other]
        told = ", ".join(f"{kind} {time_of(ms)}" for kind, ms in known)
        return told, ", ".join(f"{ms / own[name]:.2g}" for _, ms in known)

    def plain(work, name):
        return work, time_of(own[name]), "", ""

    yield "drying, two years, steps of 6 h, 20 cells", time_of(own["drying"]), *beside(
        "drying",
        ("scipy: backward Euler with `solve_banded`", "drying-euler"),
        ("BDF", "drying-bdf"),
        ("LSODA", "drying-lsoda"),
    )
    yield "10,000 trials on 2,000 joints", time_of(own["trials"]), *beside(
        "trials", ("numpy", "monte-carlo-f64"), ("in single precision", "monte-carlo-f32")
    )
    yield "layout of the oracle's 24 surfaces", time_of(own["layout"]), *beside("layout", ("shapely", "layout-shapely"))
    solved = beads()
    if solved:
        low, high = min(solved), max(solved)
        ratios = sorted(peer / own for own, peer in solved)
        yield (
            "one bead opened by half, closed by a quarter, on the same meshes",
            f"{low[0]:.1f} to {high[0]:.1f} ms",
            f"scikit-fem {min(p for _, p in solved):.0f} to {max(p for _, p in solved):.0f} ms",
            f"{ratios[0]:.0f} to {ratios[-1]:.0f}",
        )
    yield plain("a row of 5,000 boards that tears", "row")
    yield plain("from an edited price to a new answer of the demo", "after a price")
    yield plain("from a typed reading to a new answer: all worlds weighed anew", "after a reading")
    for name in sorted(name for name in own if name.startswith("large/")):
        yield plain(f"{name.removeprefix('large/').replace('assess ', 'assessment of ')}, worlds remembered", name)
    seconds, memory = whole(binary, "assess", TOP / "examples" / "tea_room.ron")
    yield "`gapwright assess` on the tea room, the whole process", f"{seconds:.2f} s, {memory:.0f} MB", "", ""
    yield plain("a frame of the window with 5,753 joints, triangles included", "frame 5753 joints")
    yield plain("the letter typeset, from the finished assessment", "letter")
    yield plain("preview of the letter after an edited price, with the assessment", "preview of the letter after an edit")
    yield plain("all papers after an edited price, with the assessment", "all papers after an edit")
    opened = windows(folder)
    if opened is None:
        yield "from start to a visible window", "not measured: no Xvfb or xev", "", ""
    else:
        (took, memory), (bare, bare_memory) = opened
        yield (
            "from start to a visible window, software graphics",
            f"{took:.0f} ms, {memory:.0f} MB",
            f"bare eframe window {bare:.0f} ms, {bare_memory:.0f} MB",
            f"{took / bare:.1f} times as long",
        )


def main():
    arguments = argparse.ArgumentParser(description="the table of speeds; see the docstring")
    arguments.add_argument("--write", action="store_true", help="put it into DEVELOPERS.md")
    arguments = arguments.parse_args()
    cargo("test", "--no-run", "--quiet")
    lines = ["| work | ours | peer | ratio |", "|---|---|---|---|"]
    lines += [f"| {' | '.join(row)} |" for row in rows(target())]
    table = "\n".join(lines)
    print(table)
    if arguments.write:
        path = TOP / "DEVELOPERS.md"
        text = path.read_text()
        begin = text.index(BEGIN) + len(BEGIN)
        path.write_text(text[:begin] + "\n\n" + table + "\n\n" + text[text.index(END, begin) :])


if __name__ == "__main__":
    main()
