#!/usr/bin/env python3
"""Writes bead_strains.json: how far sealant is stretched in beads across and below a V, and in the test bead of its class.

    pip install scikit-fem
    python3 tests/numbers/belief/bead_strains.py > tests/numbers/belief/bead_strains.json

The solver is the oracle that the program's own is held against (`../bead/oracle.py`): scikit-fem, Taylor-Hood
triangles, another form of the material, a mesh of its own. Nothing is read from the program's table of beads.

For each section the largest mean stretch within 0.25 mm, less 1, by how far the joint is opened or closed (mm), at its
face's middle and edges, and at its back's and the slot's corners. Beads fill the V of 1/8 in by a share and reach so deep
into the slot below it; both faces are free. Closing is solved for beads across the V alone.
"""

import json
import sys
from pathlib import Path

import numpy as np

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "bead"))
from oracle import LEG, Strainer  # noqa: E402

GAPS = [0.5, 1.0, 2.0, 3.5, 6.0]
FILLS = [0.25, 0.5, 0.8]
# 0.36 of a board of 1/2, 5/8, 3/4 in lies above its tongue (assumption), an eighth of an inch of that is the V.
DEPTHS = [0.0, 1.4, 2.54, 3.68]
REVEAL = 6.35
OPENED = [0.05, 0.1, 0.2, 0.4, 0.8, 1.6, 2.4, 3.2]
CLOSED = [-0.05, -0.1, -0.2, -0.4, -0.8, -1.6, -2.4]
CLASSES = [7.5, 12.5, 25.0, 35.0, 50.0, 100.0]
SQUEEZED = [3.0, 7.5, 12.5, 18.0]
"""Squeezed further, the fold at the test bead's corners is finer than any mesh: strain goes on with the last power."""
MOST = 2.5
"""Nothing is strained further: no sealant's class comes to half of it."""


def path(section, opened, smallest):
    """Openings that could be solved, mm, with the stretches less 1 seen and hidden."""
    strainer = Strainer(section, smallest, 1.5)
    u, p = np.zeros(strainer.u.N), np.zeros(strainer.p.N)
    done, found = 0.0, []
    for target in (millimeters / section["gap"] for millimeters in opened):
        try:
            u, p = opened_to(strainer, u, p, done, target)
        except ArithmeticError:
            break
        done = target
        places = {name: strainer.local(u, at) - 1.0 for name, at in strainer.places().items()}
        seen = max(places.pop("face_middle"), places.pop("visible_edge"))
        found.append([round(done * section["gap"], 4), round(seen, 4), round(max(places.values()), 4)])
        if max(places.values()) > MOST:
            break
    return found


def opened_to(strainer, u, p, done, target):
    """Opens on from one share of the gap to another, in steps that the solver takes."""
    step = target - done
    while abs(target - done) > 1e-12:
        step = np.sign(step) * min(abs(step), abs(target - done))
        try:
            u, p = strainer.equilibrium(u, p, step)
            done += step
            step *= 1.4
        except ArithmeticError:
            step *= 0.4
            if abs(step) < 1e-3:
                raise
    return u, p


def section(gap, leg, fill, depth):
    return {"name": "", "gap": gap, "leg": leg, "fill": fill, "depth": depth, "sag": 0.0, "behind": "free"}


def main():
    test = path(section(12.7, 0.0, 0.0, 12.7), [0.127 * each for each in CLASSES], 0.06)
    reveal = path(section(REVEAL, 0.0, 0.0, 3.175), OPENED, 0.06)
    test_closed = path(section(12.7, 0.0, 0.0, 12.7), [-0.127 * each for each in SQUEEZED], 0.25)
    reveal_closed = path(section(REVEAL, 0.0, 0.0, 3.175), CLOSED, 0.06)
    beads = []
    for depth in DEPTHS:
        for fill in FILLS:
            for gap in GAPS:
                own = section(gap, LEG, fill, depth)
                beads.append({"depth": depth, "fill": fill, "gap": gap, "path": path(own, OPENED, 0.05)})
                if depth == 0.0:
                    # Boards that meet squeeze it no further.
                    beads[-1]["closed"] = path(own, [each for each in CLOSED if each > -0.7 * gap], 0.05)
                print(beads[-1], file=sys.stderr, flush=True)
    largest, squeezed = ([[name, max(seen, hidden)] for name, (_, seen, hidden) in zip(names, each, strict=True)]
                         for names, each in ((CLASSES, test), (SQUEEZED, test_closed)))
    json.dump({"class": largest, "class_closed": squeezed, "reveal": reveal, "reveal_closed": reveal_closed, "beads": beads},
              sys.stdout, separators=(",", ":"))
    print()


if __name__ == "__main__":
    main()
