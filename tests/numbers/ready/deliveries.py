#!/usr/bin/env python3
"""Deliveries from outside the model: boards, stacks, rooms and readings whose truth is known.

    python3 tests/numbers/ready/deliveries.py --keep 200              deliveries.jsonl beside this script
    python3 tests/numbers/ready/deliveries.py --jobs 2000 --seed 7 --out FILE.jsonl

Needs Python 3.11 and numpy. A line is {"job": ..., "truth": ...}: the job as the program reads it, and what
nobody measured.

Weather, house, room air, isotherm, diffusion and drying scheme are those of ../belief (outdoors.py, room.py,
wood.py), which take nothing from `src`. What is drawn here and is an assumption of ours stands beside its line.

Shared with the program are the declared base rates, and nothing else: the meter's errors (0.7 % MC shared by all
readings, 0.7 for each), indoor over outdoor air, how pieces and lots differ in shrinkage, and how fast published
stacks change: a solid pile under a roof 2 % a month in warm humid weather, a wrapped one 0.2 %, a stickered one in a yard 1-2 % a day.

Truth: for each day from the delivery on which the boards might be hung (`day`), what the worst joint opens by in
the three years that follow (`opens_mm`) and what the row swells by at each joint (`swells_mm`), from width alone: gap
and rule are for the reader to add. Boards buckle past `gives_mm` beyond the gap.
"""

import argparse
import datetime
import json
import math
import sys
from pathlib import Path

import numpy as np

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "belief"))
import outdoors  # noqa: E402
import room  # noqa: E402
import survey as survey_of  # noqa: E402
import wood  # noqa: E402

INCH, DAY = 25.4, 86400.0
WAIT, YEARS = 120, 3 * 365
HUNG_ON = list(range(0, WAIT + 1, 2))
KEPT_SEED = 20_261_127
VAPOR_GAS, ROOM_K = 461.5, 294.0


def lognormal(rng, middle, sd):
    return float(np.exp(rng.normal(math.log(middle), sd)))


class Delivery:
    """One delivery as it truly is."""

    def __init__(self, rng):
        self.rng = rng
        self.day = datetime.date(2024, 1, 1) + datetime.timedelta(int(rng.integers(0, 730)))
        self.group, self.place = outdoors.draw_place(rng)
        self.told = bool(rng.random() < 0.7)
        self.house = room.draw_house(rng, self.group, self.place, self.told)
        self._air()
        self._boards()
        self._stack()

    def _air(self):
        days, spin_up = WAIT + YEARS + 1, 30
        first = self.day - datetime.timedelta(spin_up)
        day_of_year = (first.timetuple().tm_yday + np.arange(days + spin_up)) % 365.25
        out_c, out_pa = outdoors.weather(self.rng, self.place, day_of_year)
        in_c, humidity = room.indoor_air(self.rng, self.house, out_c, out_pa)
        self.out_c, self.out_pa = out_c[spin_up:], out_pa[spin_up:]
        self.in_c, self.humidity = in_c[spin_up:], humidity[spin_up:]
        self.settles_at = float(wood.equilibrium(self.humidity, self.in_c).mean())

    def _boards(self):
        rng = self.rng
        self.species = str(rng.choice(wood.SPECIES))
        radial, tangential, gravity = wood.species(self.species)
        self.gravity = gravity * rng.normal(1.0, 0.07)
        self.thickness_mm = float(rng.choice([15.875, 19.05], p=[0.3, 0.7]))
        # Narrow boards are what careful crews use; wide ones what they regret.
        self.face_in = float(rng.choice([2.125, 3.125, 4.125, 5.125], p=[0.2, 0.35, 0.2, 0.25]))
        self.count = int(rng.integers(24, 61))
        self.rule_in = float(rng.choice([0.0625, 0.09375, 0.125], p=[0.2, 0.4, 0.4]))
        self.joints = str(rng.choice(["Open", "Sealed"], p=[0.7, 0.3]))
        self.ring = float(rng.choice([20.0, 25.0, 30.0, 45.0], p=[0.2, 0.5, 0.2, 0.1]))
        angle = np.radians(np.clip(self.ring + rng.normal(0.0, 12.0, self.count), 0.0, 90.0))
        pieces = np.exp(rng.normal(0.0, 0.127, self.count)) * lognormal(rng, 1.0, 0.08)
        self.coefficient = (tangential * np.cos(angle) ** 2 + radial * np.sin(angle) ** 2) * pieces
        self.holds, self.quick = rng.normal(1.0, 0.05), lognormal(rng, 1.2, 0.3)
        self.fixing = str(rng.choice(["Tongue", "Middle"], p=[0.7, 0.3]))
        self.finish = str(rng.choice(["LatexFace", "LatexBackPrimed", "OilFace"], p=[0.5, 0.35, 0.15]))
        perms = {"LatexFace": 6.0, "LatexBackPrimed": 6.0, "OilFace": 0.7}[self.finish]
        self.face = 1.0 / (1.0 / lognormal(rng, 2e-8, 0.2) + 1.0 / (lognormal(rng, perms, 0.5) * wood.US_PERM))
        # The back: open to a cavity or hardly open.
        air = lognormal(rng, 1e-8, 0.3) if rng.random() < 0.6 else 1e-8 * math.exp(rng.uniform(-3.9, -0.7))
        primer = lognormal(rng, 9.0, 0.4) * wood.US_PERM if self.finish == "LatexBackPrimed" else math.inf
        self.back = 1.0 / (1.0 / air + 1.0 / primer)
        # How far boards are squeezed before they crush: 0.4 % of the width, 3 MPa over 0.4 to 0.6 GPa less what
        # nails give (Wood Handbook, from memory).
        self.gives_mm = lognormal(rng, 0.004, 0.3) * self.face_in * INCH

    def _stack(self):
        rng = self.rng
        self.piling = str(rng.choice(["Stickered", "Solid", "Wrapped"], p=[0.6, 0.25, 0.15]))
        self.kept = str(rng.choice(["Room", "Garage"], p=[0.85, 0.15]))
        # Half come from a yard that dries for rooms, half from anywhere.
        if rng.random() < 0.5:
            self.mean = self.settles_at + rng.normal(0.5, 1.2)
        else:
            self.mean = float(rng.uniform(9.0, 19.0))
        self.mean = float(np.clip(self.mean, 5.0, 24.0))
        self.spread = lognormal(rng, 1.1, 0.4)
        self.core = abs(float(rng.normal(0.0, 1.2)))
        self.apart = rng.normal(0.0, self.spread, self.count)
        area = lognormal(rng, 2.4, 0.4)
        change = self.house.air_change if self.kept == "Room" else lognormal(rng, 1.5, 0.6)
        carried = change * area / 3600.0 / (VAPOR_GAS * ROOM_K) / 2.0
        own = {"Stickered": lognormal(rng, 1.2e-9, 0.7), "Solid": lognormal(rng, 2.6e-11, 0.5),
               "Wrapped": lognormal(rng, 1.3e-12, 0.5)}[self.piling]
        self.stack = 1.0 / (1.0 / own + 1.0 / carried) if self.piling == "Stickered" else own


def columns(deliveries):
    def each(read):
        return np.array([read(one) for one in deliveries])
    return each(lambda d: d.thickness_mm / 1000.0), each(lambda d: d.gravity), each(lambda d: d.quick), each(lambda d: d.holds)


def dry_stacks(deliveries):
    """Mean and surface of each stack by day, %, from the delivery on."""
    thickness, gravity, quick, holds = columns(deliveries)
    own = np.array([d.stack for d in deliveries])
    slab = wood.Slab(thickness, gravity, quick, holds, own, own)
    slab.start(np.array([d.mean for d in deliveries]))
    place = (2 * np.arange(slab.cells) + 1) / slab.cells - 1.0
    shape = np.mean(place**2) - place**2
    slab.content = slab.content + shape[:, None] * np.array([d.core for d in deliveries])
    slab.surfaces = [slab.content[0].copy(), slab.content[-1].copy()]
    indoors = np.array([d.kept == "Room" for d in deliveries])
    means, pins = [slab.mean()], [at_pins(slab)]
    for day in range(WAIT):
        celsius = np.where(indoors, [d.in_c[day] for d in deliveries], [d.out_c[day] for d in deliveries])
        inside = np.array([room.vapor_pressure(d.in_c[day], d.humidity[day]) for d in deliveries])
        outside = np.array([min(d.out_pa[day], 0.95 * outdoors.saturation_pressure(d.out_c[day])) for d in deliveries])
        air = np.where(indoors, inside, outside)
        for _ in range(2):
            slab.step(DAY / 2, celsius, air, air)
        means.append(slab.mean())
        pins.append(at_pins(slab))
    return np.array(means), np.array(pins)


def at_pins(slab):
    """What bare pins find that reach a quarter of the thickness: the wettest they touch."""
    deep = slab.cells // 4
    tip = 0.5 * (slab.content[deep - 1] + slab.content[deep])
    return np.maximum(np.max(slab.content[:deep], axis=0), tip)


def hang(deliveries):
    """Mean moisture by day of boards that hang from the first day on, %."""
    thickness, gravity, quick, holds = columns(deliveries)
    slab = wood.Slab(thickness, gravity, quick, holds, np.array([d.face for d in deliveries]),
                     np.array([d.back for d in deliveries]))
    slab.start(np.array([d.settles_at for d in deliveries]))
    means = []
    for day in range(WAIT + YEARS):
        celsius = np.array([d.in_c[day] for d in deliveries])
        air = np.array([room.vapor_pressure(d.in_c[day], d.humidity[day]) for d in deliveries])
        slab.step(DAY, celsius, air, air)
        means.append(slab.mean())
    return np.array(means)


def truth_of(one, stack, hung):
    """What joints and rows would do for each day of hanging."""
    rng, opens, swells = one.rng, [], []
    in_room = rng.normal(0.0, 0.4, one.count)
    by_hand = rng.normal(0.0, 0.1, one.count - 1)
    for day in HUNG_ON:
        left = np.clip(abs(stack[day] - one.settles_at) / max(abs(stack[0] - one.settles_at), 1.0), 0.4, 1.0)
        boards = stack[day] + one.apart * left
        # Boards that went up wet take some weeks: the driest comes later.
        dry, damp = hung[day + 14:day + YEARS].min(), hung[day + 14:day + YEARS].max()
        face = one.face_in * INCH
        narrows = face * one.coefficient * np.maximum(boards - (dry + in_room), 0.0)
        if one.fixing == "Tongue":
            joints = narrows[1:]
        else:
            joints = 0.5 * (narrows[1:] + narrows[:-1])
        joints = joints + by_hand
        opens.append(round(float(joints.max()), 3))
        swells.append(round(float(np.mean(face * one.coefficient * np.maximum(damp + in_room - boards, 0.0))), 3))
    return {"day": HUNG_ON, "opens_mm": opens, "swells_mm": swells, "gives_mm": round(one.gives_mm, 3),
            "moisture_pct": [round(float(stack[day]), 2) for day in HUNG_ON], "piling": one.piling, "kept": one.kept,
            "settles_at_pct": round(one.settles_at, 2), "driest_pct": round(float(hung[14:].min()), 2),
            "dampest_pct": round(float(hung[14:].max()), 2)}


def readings(one, pins, offset, day, boards):
    """Readings of so many boards on a day."""
    rng, found = one.rng, []
    wood_c = float(one.in_c[day] if one.kept == "Room" else one.out_c[day]) + rng.normal(0.0, 1.0)
    for index in rng.choice(one.count, boards, replace=False):
        held = pins[day] + one.apart[index]
        shown = held + offset + rng.normal(0.0, 0.7) + (wood_c - 21.1) * 0.5 / 5.6
        if shown < 7.0:
            shown = rng.uniform(5.0, 7.0)
        entry = {"reading": round(float(shown), 1), "wood": round(wood_c, 0), "pins": f"{one.thickness_mm / 4:.2f} mm"}
        if day > 0:
            entry["date"] = str(one.day + datetime.timedelta(day))
        found.append(entry)
    return found


def job_of(one, pins):
    rng = one.rng
    offset = rng.normal(0.0, 0.7)
    taken = readings(one, pins, offset, 0, 8)
    later = bool(rng.random() < 0.5)
    if later:
        taken += readings(one, pins, offset, 7, 5) + readings(one, pins, offset, 14, 5)
    house = {"heat_to": round(one.house.heat_to), "cool_to": round(one.house.cool_to) if one.house.cool_to else 35.0,
             "dehumidified_to": 0.54 if one.house.cool_to else None}
    # Owners tell of seven houses in ten what those of ../belief/survey.py tell, as wrongly.
    house |= survey_of.house_entry(rng, one)
    survey = {}
    if rng.random() < 0.6:
        humidity = float(np.clip(one.humidity[0] + rng.normal(0.0, 0.03), 0.05, 0.95))
        survey["rooms"] = [{"temperature": round(float(one.in_c[0]), 1), "humidity": round(humidity, 2)}]
    return {
        "version": 1, "visited": str(one.day), "survey": survey,
        "air": {"FromPlace": {"site": {"name": one.place["name"], "coordinates": {
            "latitude": one.place["latitude"], "longitude": one.place["longitude"]}}, "house": house}},
        "plan": {"callback": {"widest": f"{one.rule_in:g} in"}},
        "next_install": {
            "boards": {"species": one.species, "thickness": f"{one.thickness_mm:g} mm", "face_width": f"{one.face_in:g} in",
                       "overall_width": f"{one.face_in + 0.25:g} in", "ring_angle": one.ring, "fixing": one.fixing,
                       "finish": one.finish},
            "count": one.count, "joints": one.joints, "stack": {"piling": one.piling, "kept": one.kept},
            "readings": taken,
        },
    }, {"offset_pct": round(float(offset), 2), "later": later, "rule_mm": one.rule_in * INCH,
        "open": one.joints == "Open"}


def simulate(jobs, seed):
    deliveries = [Delivery(np.random.default_rng([seed, index])) for index in range(jobs)]
    stacks, pins = dry_stacks(deliveries)
    hung = hang(deliveries)
    for at, one in enumerate(deliveries):
        job, told = job_of(one, pins[:, at])
        yield {"job": job, "truth": truth_of(one, stacks[:, at], hung[:, at]) | told}


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("--jobs", type=int)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--out", type=Path)
    parser.add_argument("--keep", type=int, help="rewrite deliveries.jsonl with so many")
    arguments = parser.parse_args()
    wanted = []
    if arguments.keep:
        wanted.append((arguments.keep, KEPT_SEED, HERE / "deliveries.jsonl"))
    if arguments.jobs and arguments.out:
        wanted.append((arguments.jobs, arguments.seed, arguments.out))
    for jobs, seed, path in wanted:
        lines = [json.dumps(line, separators=(",", ":")) for line in simulate(jobs, seed)]
        path.write_text("\n".join(lines) + "\n", encoding="utf8")


if __name__ == "__main__":
    main()
