#!/usr/bin/env python3
"""Worlds from outside the model: callbacks whose truth is known, by physics that is not the program's.

    python3 tests/numbers/belief/houses.py --jobs 2000 --seed 7 --out DIR   DIR/0000.json ..., DIR/truths.jsonl
    python3 tests/numbers/belief/houses.py --keep 200                       houses.jsonl and repairs.jsonl beside this script
    python3 tests/numbers/belief/score.py --help                            how the program does on them
    python3 tests/numbers/belief/check_houses.py                            whether the simulator is sound

Needs Python 3.11 and numpy. The same seed and number give the same jobs.
A line of houses.jsonl is {"job": ..., "truth": ...}: the job as the program reads it, with everything
left out that is at its default, and what nobody measured (`survey.py` lists it). The same line of repairs.jsonl is
{"plan": ..., "truth": ...}: a plan to put into that job, and what came of each repair in three years (`after.py`).

A program that is tested with its own model only learns that it agrees with itself. So nothing here is
taken from `src`: outdoor weather is drawn about monthly normals (`outdoors.py`), the room's air follows
from a moisture balance (`room.py`), boards have another isotherm, another diffusivity and another scheme
(`wood.py`), joints are opened and bonded in other ways (`callback.py`), contractors misread, round
and pick (`survey.py`), and repairs are laid unevenly, cure, age and tear joint by joint, week by week (`after.py`).
Each file names its sources and says what is assumption.

Shared with the program are the declared base rates, and nothing else:
  * assets/causes.ron: wet at install 0.5, bonded 0.25, and of the other three one at most: weak sealant
    0.15, framing moved 0.08, a wetted part 0.08. They are the rates among callbacks: a draw in which no
    joint opened 0.4 mm is drawn again with the same causes.
  * Meter: 0.7 % MC shared by all readings of one meter, and 0.7 for each.
  * Indoor over outdoor air: 1.9 +/- 1.3 g/m3 at 5 C or below, 0.5 +/- 0.7 at 15 C or above, none below zero;
    with air conditioning near 50 +/- 7 % RH instead.
  * Pieces of one lot move 15 % more or less (coefficient of variation).
  * What the catalog says of species and of sealants, and the monthly normals of places.
  * Of sealant and paint, which nobody has measured in such joints: half of the beads take 1.3 times their class when
    new, half of the paint 35 % of stretch (0.5 as a standard deviation of the logarithm); tears behind a bead come
    through in half of the houses.

Not modeled: hysteresis of sorption, crushing when joints close, boards that warp, winters without heat.
"""

import argparse
import json
import math
import sys
from pathlib import Path

import numpy as np

from after import repaired
from callback import KEPT, LAST, LEVELS, World, draw_causes
from survey import job_and_truth
from wood import Slab

HERE = Path(__file__).resolve().parent
SIDE_BY_SIDE = 100
"""Worlds whose boards dry at once."""
DAY = 86400.0
FRESH_DAYS = 30
"""Days from the install during which the boards are stepped four times a day."""
KEPT_SEED = 20_260_114
AFTER = 3
"""Marks the random numbers of what comes after."""


def dry(worlds):
    """Dries the boards of all sections of all worlds from install to the last day that counts.

    Each section gets `dried`, for each of `KEPT` the mean moisture at the three levels, %.
    All worlds end on the same step, so one that is younger joins later."""
    longest = max(world.days for world in worlds)
    columns, starts, begins = [], [], []
    for world in worlds:
        for section, install, face, back in world.columns():
            section["dried"] = []
            columns.append((world, section, face, back))
            starts.append(install)
            begins.append(longest - world.days)
    worlds_of = [world for world, *_ in columns]

    def each(read):
        return np.repeat([read(world) for world in worlds_of], len(LEVELS))

    slab = Slab(each(lambda w: w.thickness_mm) / 1000.0, each(lambda w: w.gravity), each(lambda w: w.quick),
                each(lambda w: w.holds), each(lambda w: w.face_conductance), each(lambda w: w.back_conductance))
    starts, begins = np.concatenate(starts), np.repeat(begins, len(LEVELS))

    def padded(series):
        """Days by sections; before its install a section has the air of its first day."""
        return np.array([np.concatenate([np.full(longest - len(s), s[0]), s]) for s in series]).T

    face = padded([face for _, _, face, _ in columns])
    back = padded([back for _, _, _, back in columns])
    celsius = padded([world.in_c for world in worlds_of])
    kept = {longest - 1 - LAST + day for day in KEPT}
    slab.start(starts)
    for day in range(longest):
        waiting = begins >= day
        # Day `day` is the air between the last noon and this one; on the day of the install nothing dries.
        air = [np.repeat(values[day], len(LEVELS)) for values in (celsius, face, back)]
        steps = 4 if np.any((day - begins > 0) & (day - begins <= FRESH_DAYS)) else 1
        for _ in range(steps):
            slab.step(DAY / steps, *air)
        if np.any(waiting):
            slab.content[:, waiting] = starts[waiting]
            for surface in slab.surfaces:
                surface[waiting] = starts[waiting]
        if day in kept:
            means = slab.mean().reshape(-1, len(LEVELS))
            for (_, section, _, _), dried in zip(columns, means, strict=True):
                section["dried"].append(dried)


def simulate(jobs, seed):
    """So many triples: job, truth, and what came of repairs."""
    causes = [draw_causes(np.random.default_rng([seed, index])) for index in range(jobs)]
    done, waiting, attempt, drawn = {}, list(range(jobs)), 0, 0
    while waiting:
        again = []
        # Worlds of like age side by side: the oldest of them sets how many days are stepped.
        worlds = {index: World(np.random.default_rng([seed, index, 1 + attempt]), causes[index],
                               np.random.default_rng([seed, index, 1 + attempt, AFTER])) for index in waiting}
        by_age = sorted(waiting, key=lambda index: worlds[index].age)
        for at in range(0, len(by_age), SIDE_BY_SIDE):
            batch = by_age[at:at + SIDE_BY_SIDE]
            dry([worlds[index] for index in batch])
            for index in batch:
                world = worlds[index]
                world.joints()
                drawn += 1
                if world.is_callback():
                    job, truth = job_and_truth(world)
                    done[index] = (job, truth | {"drawn": attempt + 1}, repaired(world))
                else:
                    again.append(index)
            print(f"{drawn} drawn, {len(done)} of {jobs} are callbacks", file=sys.stderr)
        waiting, attempt = sorted(again), attempt + 1
    return [done[index] for index in range(jobs)]


def keep(name, lines):
    """Writes a file beside this script, a line of JSON each."""
    text = [json.dumps(line, separators=(",", ":"), ensure_ascii=False) for line in lines]
    (HERE / name).write_text("\n".join(text) + "\n", encoding="utf8")


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--jobs", type=int, help="how many to write to --out")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--out", type=Path, help="folder; made if it is not there")
    parser.add_argument("--keep", type=int, help="rewrite houses.jsonl and repairs.jsonl with so many")
    arguments = parser.parse_args()
    if arguments.keep:
        houses = simulate(arguments.keep, KEPT_SEED)
        keep("houses.jsonl", [{"job": job, "truth": truth} for job, truth, _ in houses])
        keep("repairs.jsonl", [repair for *_, repair in houses])
    if arguments.jobs:
        if arguments.out is None:
            parser.error("--jobs needs --out")
        arguments.out.mkdir(parents=True, exist_ok=True)
        width = max(4, 1 + int(math.log10(arguments.jobs)))
        with open(arguments.out / "truths.jsonl", "w", encoding="utf8") as truths:
            for index, (job, truth, repair) in enumerate(simulate(arguments.jobs, arguments.seed)):
                name = f"{index:0{width}}.json"
                (arguments.out / name).write_text(json.dumps(job, indent=1, ensure_ascii=False) + "\n", encoding="utf8")
                truths.write(json.dumps({"file": name} | truth | {"repair": repair}) + "\n")


if __name__ == "__main__":
    main()
