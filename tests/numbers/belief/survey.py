"""What the contractor finds on the visit, as a job file of the program, and the truth that it lacks.

Assumptions, ours where nothing else is said:
  * Gauge 0.2 mm (standard deviation), read to 1/64 in or 0.1 mm; a closed joint is seen to be closed.
  * In half of the jobs joints are picked at random, in the others the wide-looking ones first.
  * Meter: 0.7 % MC that all readings share and 0.7 for each (declared base rates); a pin meter reads 0.5 % MC
    lower for 10 F (Wood Handbook ch. 13) and shows anything from 5 to 7 where there is less than 7.
  * Hygrometer in half of the jobs: 3 % RH, 0.5 C.
  * How the bead failed is noted in three jobs of five. A weak sealant lets go at a fifth of the gap.
  * Seven contractors of ten leave the house as the program has it; what the others say is nearly right.
"""

import math

import numpy as np

from callback import CAUSES, HORIZONS, INCH

CELSIUS_FOR_ONE_PERCENT = 5.6 / 0.5
"""So much warmer wood reads 1 % MC higher."""


def house_entry(rng, world):
    """What the job says of the house: nothing, or the truth with error."""
    house = world.house
    if not world.told:
        return {}
    entry = {"heat_to": round(house.heat_to + rng.normal(0.0, 0.7))}
    if house.cool_to is None:
        entry |= {"cool_to": 30.0, "dehumidified_to": None}
    else:
        cap = round(20.0 * (house.humidity_cap + rng.normal(0.0, 0.04))) / 20.0
        cool_to = float(round(house.cool_to + rng.normal(0.0, 0.7)))
        entry |= {"cool_to": max(cool_to, entry["heat_to"] + 1.0), "dehumidified_to": round(cap, 2)}
    if rng.random() < 0.5:
        entry["moisture_load"] = max(0.0, round(2.0 * (house.winter_excess + rng.normal(0.0, 0.7))) / 2.0)
    said = house.humidified_to
    # One owner in ten who has a humidifier never runs it, and one in thirty who has none says so.
    if said is not None or rng.random() < 0.03:
        entry["humidified_to"] = round(20.0 * ((said or 0.35) + rng.normal(0.0, 0.04))) / 20.0
    return entry


def length_text(millimeters, inches):
    """A length as typed, and in mm: to the nearest 1/64 in or 0.1 mm."""
    if not inches:
        return f"{round(millimeters, 1):g} mm"
    parts = round(millimeters / INCH * 64.0)
    whole, parts = divmod(parts, 64)
    if parts == 0:
        return f"{whole} in"
    common = math.gcd(parts, 64)
    fraction = f"{parts // common}/{64 // common}"
    return f"{whole}-{fraction} in" if whole else f"{fraction} in"


def failure(rng, gap, weak, limit):
    """How the bead failed at a gap of this width; `limit` is what the bead takes, mm."""
    takes = limit * (0.2 if weak else 1.0) * math.exp(rng.normal(0.0, 0.2))
    if gap > takes:
        return str(rng.choice(["LetGoOneSide", "SplitInMiddle", "PaintTorn"], p=[0.55, 0.25, 0.2]))
    if gap > 0.15 and rng.random() < 0.5:
        return "PaintTorn"
    return "Whole"


def gap_entries(rng, world, inches, truth):
    """Three to fifteen gaps of the job's joints."""
    joints = [(section, joint) for section in world.sections for joint in range(section["joints"])]
    seen = np.array([section["gaps"][0][joint] for section, joint in joints])
    biased = bool(rng.random() < 0.5)
    weight = (seen + 0.3) ** 1.5 if biased else np.ones(len(joints))
    count = min(int(rng.integers(3, 16)), len(joints))
    picked = rng.choice(len(joints), count, replace=False, p=weight / weight.sum())
    limit, noted = rng.uniform(0.7, 2.5), rng.random() < 0.6
    truth |= {"picked_wide": biased, "failures_noted": bool(noted)}
    entries = []
    for index in sorted(picked):
        section, joint = joints[index]
        gap = seen[index]
        read = min(max(0.0, gap + rng.normal(0.0, 0.2)), 50.0) if gap > 0.0 else 0.0
        entry = {"surface": section["surface"], "joint": f"{section['section']} {joint + 1}",
                 "width": length_text(read, inches)}
        if noted and rng.random() < 0.85:
            entry["failed"] = failure(rng, gap, world.causes["weak_sealant"], limit)
        entries.append(entry)
    return entries


def meter_entries(rng, world, truth):
    """None to six readings, all with one meter."""
    offset = rng.normal(0.0, 0.7)
    truth["meter_offset_pct"] = round(float(offset), 3)
    entries = []
    for _ in range(int(rng.integers(0, 7))):
        section = world.sections[rng.integers(len(world.sections))]
        held = section["moisture"][0][rng.integers(section["joints"] + 1)]
        wood_c = world.in_c[world.age] + rng.normal(0.0, 1.0)
        entry = {"surface": section["surface"], "section": section["section"]}
        if abs(wood_c - 20.0) >= 1.0:
            entry["wood"] = float(round(wood_c))
        shown = held + offset + rng.normal(0.0, 0.7) + (wood_c - 20.0) / CELSIUS_FOR_ONE_PERCENT
        if shown < 7.0:
            shown = rng.uniform(5.0, 7.0)
        entry["reading"] = round(2.0 * shown) / 2.0 if rng.random() < 0.5 else round(float(shown), 1)
        entries.append(entry)
    return entries


def job_and_truth(world):
    """The job as typed, defaults left out, and the truth."""
    rng = world.rng
    inches = bool(rng.random() < 0.5)
    truth = {"causes": [cause for cause in CAUSES if cause != "seasonal" and world.causes[cause]]}
    if not world.causes["wet_at_install"]:
        truth["causes"].append("seasonal")
    house = house_entry(rng, world)
    survey = {"gaps": gap_entries(rng, world, inches, truth)}
    readings = meter_entries(rng, world, truth)
    if readings:
        survey["moistures"] = readings
    truth["hygrometer"] = bool(rng.random() < 0.5)
    if truth["hygrometer"]:
        today = float(np.clip(world.humidity[world.age] + rng.normal(0.0, 0.03), 0.05, 0.95))
        survey["rooms"] = [{"temperature": round(float(world.in_c[world.age] + rng.normal(0.0, 0.5)), 1),
                            "humidity": round(today, 2)}]
    # The ring angle is as the program has it, or seen on a few ends.
    ring = 25.0 if rng.random() < 0.6 else float(5 * round(np.clip(world.ring + rng.normal(0.0, 5.0), 0, 90) / 5))
    face = world.face_mm / INCH
    fractions = {12.7: "1/2 in", 15.875: "5/8 in", 19.05: "3/4 in"}
    board = {"species": world.species}
    defaults = {"thickness": (fractions[world.thickness_mm], "3/4 in"), "ring_angle": (ring, 25.0),
                "face_width": (f"{int(face)}-1/8 in", "5-1/8 in"), "overall_width": (f"{int(face)}-3/8 in", "5-3/8 in"),
                "fixing": (world.fixing, "Tongue"), "finish": (world.finish, "LatexFace")}
    board |= {key: value for key, (value, default) in defaults.items() if value != default}
    surfaces = []
    for section in world.sections:
        high = f"{(section['joints'] + 1) * face:g} in"
        surface = {"name": section["surface"], "outline": [["0 in", "0 in"], ["12 ft", "0 in"], ["12 ft", high], ["0 in", high]],
                   "sections": [{"name": section["section"], "board": board}]}
        if section["surface"] != "Ceiling":
            surface["kind"] = "Slope"
        surfaces.append(surface)
    # Of an old install one in four knows no more than the month.
    month_only = world.age > 365 and rng.random() < 0.25
    place = world.place
    site = {"name": place["name"], "coordinates": {"latitude": place["latitude"], "longitude": place["longitude"]}}
    job = {"installed": world.installed.isoformat()[:7 if month_only else 10], "visited": world.visit.isoformat(),
           "surfaces": surfaces, "survey": survey, "air": {"FromPlace": {"site": site, "house": house}}}
    if not inches:
        job["units"] = "Millimetres"
    return job, truth | _physics_truth(world)


def _physics_truth(world):
    """What the program is to find out, for each section on the days of `HORIZONS`."""
    house = world.house
    sections = [{
        "surface": section["surface"], "section": section["section"], "joints": section["joints"],
        "install_pct": round(section["install"], 2),
        "moisture_pct": [round(float(section["moisture"][day].mean()), 2) for day in HORIZONS],
        "mean_gap_mm": [round(float(section["gaps"][day].mean()), 3) for day in HORIZONS],
        "still_wet": bool(section["surplus"].any()),
    } for section in world.sections]
    return {
        "horizons_days": HORIZONS, "age_days": world.age, "back": world.back,
        "settles_at_pct": round(world.settles_at, 2), "wettest_pct": round(world.wettest, 2),
        "winter_excess_g": round(house.winter_excess, 2), "summer_excess_g": round(house.summer_excess, 2),
        "cooled": house.cool_to is not None, "house_told": world.told, "sections": sections,
    }
