#!/usr/bin/env python3
"""What follows from the readings of the three examples, by plain importance sampling; writes sampler.json.

    python3 tests/numbers/belief/sampler.py BINARY [--worlds 60000]

Needs Python 3.11 and numpy. BINARY is the program: it lists the joints of each example (`joints`), which is
geometry and not what is checked here.

The model is the one that src/belief documents, with the figures of assets/belief.ron, causes.ron, finishes.ron,
species.ron and stations.ron. Nothing of how the program does it is used:
  * worlds are drawn as expected, tens of thousands of them and once, and weighed; the program draws thousands,
    and more where the first ones fit;
  * boards dry by another scheme (`Slab` of wood.py), with 14 slices, steps of half a day where it shows, and a table of Wood
    Handbook eq. 4-5 that is looked up both ways; the program has 10 slices and steps of a day;
  * how much a lot shrinks is drawn for every world, several times; the meter's offset is summed over 61 steps, the
    program's over 17;
  * what joints differ by is averaged over 20 times 500 random sets at 120 openings; the program's 32 sets are
    evenly spread over 80.

Written for each example: effective sample (Kish), the meter's offset, moisture at install and on the visit, the odds
of the causes; each with its standard error, from the scatter of 20 parts.
"""

import argparse
import csv
import datetime
import json
import re
import subprocess
import sys
from pathlib import Path

import numpy as np

from wood import Slab

HERE = Path(__file__).resolve().parent
ROOT = HERE.parents[2]
EXAMPLES = ["tea_room", "stair_hall", "porch_room"]
MONTHS = np.array([31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31])
SPELL, PAST_SPELLS = 61, 6
US_PERM = 5.721_35e-11
LOTS = 6
"""Lots tried in each world."""
SETS, OPENINGS = 500, 120
PARTS = 20
"""Samples of their own, whose scatter is the error."""
PICK, SLIP = 0.3, 0.001
MOVED = (1.0, 20.0)
CAUSES = ["wet_at_install", "seasonal", "weak_sealant", "framing_moved", "wetted_and_dried", "bonded_groups"]


# ---- what is given ---------------------------------------------------------------------------------------------

def asset(name):
    return (ROOT / "assets" / name).read_text(encoding="utf8")


PRIORS = {name: (float(middle), float(sd)) for name, middle, sd in
          re.findall(r"(\w+): \(middle: ([\d.]+), sd: ([\d.]+)", asset("belief.ron"))}
RATES = {name: float(rate) for name, rate in re.findall(r"(\w+): ([\d.]+),", asset("causes.ron"))}


def inches(text):
    """Millimeters of '5-3/8 in' or '10 ft'."""
    number, unit = text.split()
    whole, _, part = number.rpartition("-")
    over, _, under = part.partition("/")
    value = float(whole or 0) + (float(over) / float(under) if under else float(over))
    return value * {"in": 25.4, "ft": 304.8}[unit]


def example(name, binary):
    """One of the example jobs: sections with their joints' places, gaps, meter; the room."""
    path = ROOT / "examples" / f"{name}.ron"
    text = path.read_text(encoding="utf8")
    found = {"name": name}
    for key in ("installed", "visited"):
        found[key] = datetime.date.fromisoformat(re.search(rf'{key}: (?:Some\()?"([\d-]+)"', text).group(1))
    house = re.search(r"heat_to: ([\d.]+), cool_to: ([\d.]+), moisture_load: ([\d.]+), dehumidified_to: Some\(([\d.]+)\)", text)
    found |= dict(zip(("heat_to", "cool_to", "load", "limit"), map(float, house.groups()), strict=True))
    found["hygrometer"] = 100.0 * float(re.search(r"rooms: \[\(temperature: [\d.]+, humidity: ([\d.]+)\)\]", text).group(1))
    station = re.search(r'station: "([^"]+)"', text).group(1)
    months = re.search(rf'"{station}".*?months: \((.*?)\)\),', asset("stations.ron"), re.S).group(1)
    found["months"] = np.array([[float(a), float(b)] for a, b in re.findall(r"\(([-\d.]+), ([\d.]+)\)", months)])
    boards = re.findall(r'\(name: "(\w+)", (?:region: .*?\]\), )?board: \(species: "([^"]+)", thickness: "([^"]+)", .*?'
                        r'face_width: "([^"]+)", .*?ring_angle: ([\d.]+), fixing: \w+, finish: (\w+)', text)
    listed = subprocess.run([binary, "joints", path, "--csv"], check=True, capture_output=True, text=True).stdout
    edges = [row for row in csv.DictReader(listed.splitlines()) if row["kind"] == "board to board"]
    gaps = dict()
    for surface, joint, width, failed in re.findall(r'surface: "([^"]+)", joint: "([^"]+)", width: "([^"]+)", failed: (\w+)', text):
        gaps[surface, joint] = (inches(width), failed)
    meters = re.findall(r'surface: "([^"]+)", section: "(\w+)".*?reading: Some\(([\d.]+)\), wood: ([\d.]+)', text)
    found["sections"] = []
    for section, species, thickness, face, ring, finish in boards:
        own = [row for row in edges if row["section"] == section]
        read = [((at + 0.5) / len(own), *gaps[row["surface"], row["joint"]])
                for at, row in enumerate(own) if (row["surface"], row["joint"]) in gaps]
        found["sections"].append({
            "joints": len(own), "gaps": read, "species": species, "thickness": inches(thickness), "face": inches(face),
            "ring": float(ring), "finish": finish,
            # A pin meter reads true at 21.1 C, and half a percent low for every 5.6 C below (Wood Handbook ch. 13).
            "meter": [float(reading) + 0.5 * (21.1 - float(wood)) / 5.6 for _, name, reading, wood in meters if name == section],
        })
    return found


# ---- air and wood ----------------------------------------------------------------------------------------------

def saturation(celsius):
    """ASHRAE Fundamentals 2017, ch. 1, eqs. 5 and 6, Pa."""
    k = np.asarray(celsius) + 273.15
    ice = (-5.6745359e3 / k + 6.3925247 - 9.677843e-3 * k + 6.2215701e-7 * k**2 + 2.0747825e-9 * k**3
           - 9.484024e-13 * k**4 + 4.1635019 * np.log(k))
    water = (-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3
             + 6.5459673 * np.log(k))
    return np.exp(np.where(k < 273.16, ice, water))


def equilibrium(humidity, celsius):
    """Wood Handbook eq. 4-5, %."""
    t = celsius
    w = 349.0 + 1.29 * t + 0.0135 * t * t
    k = 0.805 + 0.000736 * t - 0.00000273 * t * t
    k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
    k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
    x = k * humidity
    return 1800.0 / w * (x / (1.0 - x) + (k1 * x + 2.0 * k1 * k2 * x * x) / (1.0 + k1 * x + k1 * k2 * x * x))


class Tables:
    """The isotherm of one day, looked up both ways."""

    humidity = np.linspace(0.0, 1.0, 1501)

    def on(self, celsius):
        self.celsius, self.full = celsius, float(saturation(celsius))
        self.content = equilibrium(self.humidity, celsius)

    def settles(self, pascal, _):
        return np.interp(pascal / self.full, self.humidity, self.content)

    def pressure(self, content, _):
        return np.interp(content, self.content, self.humidity) * self.full


def species_figures(ident):
    line = re.search(rf'id: "{ident}".*', asset("species.ron")).group(0)
    number = lambda key: float(re.search(rf"{key}: ([\d.]+)", line).group(1))
    return number("radial"), number("tangential"), number("specific_gravity")


def narrows(coefficient, before, after):
    """Share of its width that a board loses from one moisture to the other, %; the coefficient is of the width at 10 %."""
    return coefficient * (before - after) / (1.0 + coefficient * (before - 10.0))


class Room:
    """The air of all worlds, day by day."""

    def __init__(self, job, rng, worlds):
        middles = np.cumsum(MONTHS) - MONTHS / 2.0
        days = np.arange(365) + 0.5
        outside = np.interp(days, middles, job["months"][:, 0], period=365.0)
        months_pa = job["months"][:, 1] / 100.0 * saturation(job["months"][:, 0])
        self.outside_pa = np.interp(days, middles, months_pa, period=365.0)
        self.celsius = np.clip(outside, job["heat_to"], job["cool_to"])
        self.full = saturation(self.celsius)
        self.cold = np.clip((15.0 - outside) / 10.0, 0.0, 1.0)
        self.gram = 1e-3 * 461.5 * (self.celsius + 273.15)
        normal = lambda name: rng.normal(*PRIORS[name], worlds)
        # A moisture load of 3 and a limit of 60 % are what new jobs have: nobody said them.
        winter = normal("winter_excess") if job["load"] == 3.0 else rng.normal(job["load"], PRIORS["stated_excess"][1], worlds)
        self.winter, self.summer = np.maximum(winter, 0.0), np.maximum(normal("summer_excess"), 0.0)
        self.warmer = normal("room_temperature")
        limit = normal("cooled_humidity") if job["limit"] == 0.6 else rng.normal(100.0 * job["limit"], PRIORS["stated_humidity"][1], worlds)
        self.limit = np.clip(limit / 100.0, 0.3, 1.0)
        # Cooling keeps humidity down while it runs, from 4 C below its set point outdoors; a quarter of the way to
        # saturation is given up in milder weather.
        self.kept = np.where((job["cool_to"] < 32.0) & (outside < job["cool_to"] - 4.0), 0.75, 1.0)
        self.visit = job["visited"].timetuple().tm_yday - 1
        self.spells = rng.normal(size=(PAST_SPELLS + 2, worlds))
        people = PRIORS["spell_humidity"][1] / 100.0 * self.full
        self.by_spell = np.sqrt(1.5) * np.hypot(0.08 * self.outside_pa, people)

    def pascal(self, day, with_spell=True):
        """On a day counted from the visit."""
        at = (self.visit + day) % 365
        vapor = (self.outside_pa[at] * (1.0 - 0.061 * self.warmer)
                 + self.gram[at] * (self.cold[at] * self.winter + (1.0 - self.cold[at]) * self.summer))
        if with_spell:
            since = max(day + PAST_SPELLS * SPELL, 0)
            spell, into = since // SPELL, since % SPELL / SPELL
            vapor = vapor + self.by_spell[at] * ((1.0 - into) * self.spells[spell] + into * self.spells[spell + 1])
        most = (self.kept[at] * self.limit + 1.0 - self.kept[at]) * self.full[at]
        return np.maximum(np.minimum(vapor, most), 0.02 * self.full[at])

    def settled(self):
        """Mean and wettest that boards of a room come to in its usual year, %: they follow the air by 0.85."""
        months = [15 + month * 365 // 12 for month in range(12)]
        each = np.array([equilibrium(self.pascal(day - self.visit, False) / self.full[day], self.celsius[day]) for day in months])
        mean = each.mean(axis=0)
        return mean, mean + 0.85 * (each.max(axis=0) - mean)


def dry(job, room, rng, wet):
    """Moisture of the boards at install and on the visit in every world, %."""
    worlds, section = len(wet), job["sections"][0]
    mean, wettest = room.settled()
    least = wettest + 1.0
    came = np.where(wet, least + np.maximum(27.0 - least, 1.0) * rng.random(worlds) ** 1.5,
                    mean + PRIORS["right_install"][1] * rng.normal(size=worlds)).clip(3.0, 28.0)
    factor = lambda name: PRIORS[name][0] * np.exp(PRIORS[name][1] * rng.normal(size=worlds))
    line = re.search(rf"finish: {section['finish']},.*?face: (None|Some\([\d.]+\)), back: (None|Some\([\d.]+\))", asset("finishes.ron"))
    films = [float(re.search(rf"films: .*?{side}: ([\d.e-]+)", asset("finishes.ron")).group(1)) for side in ("face", "back")]
    paint = factor("permeance")
    over = [films[0], films[1] * factor("unknown_back")]
    for side, perms in enumerate(line.groups()):
        if perms != "None":
            over[side] = 1.0 / (1.0 / over[side] + 1.0 / (float(perms[5:-1]) * paint * US_PERM))
    quick = factor("diffusivity")
    _, _, gravity = species_figures(section["species"])
    tables = Tables()

    def law(content, celsius):
        kelvin = 1.0 / (celsius + 273.15) - 1.0 / 293.15
        u = content / 100.0
        return quick * 8e-11 * np.exp(4.0 * u - (38500.0 - 29000.0 * u) / 8.314462618 * kelvin)

    each = lambda value: np.broadcast_to(value, worlds)
    slab = Slab(section["thickness"] / 1000.0, each(gravity), None, None, each(over[0]), each(over[1]), law, tables.pressure, tables.settles, 14)
    slab.start(came)
    days = (job["visited"] - job["installed"]).days
    for day in range(-days, 0):
        air = room.pascal(day)
        tables.on(room.celsius[(room.visit + day) % 365])
        # Finer where it shows: after the install and before the visit.
        steps = 2 if day >= -90 or day < 40 - days else 1
        for _ in range(steps):
            slab.step(86400.0 / steps, tables.celsius, air, air)
    return came, slab.mean()


# ---- readings --------------------------------------------------------------------------------------------------

def below(z):
    """Standard normal distribution; series and continued fraction are left to a table."""
    return np.interp(z, GRID, BELOW)


GRID = np.linspace(-9.0, 9.0, 36001)
BELOW = np.concatenate([[0.0], np.cumsum(np.exp(-0.5 * ((GRID[:-1] + GRID[1:]) / 2.0) ** 2)) * (GRID[1] - GRID[0]) / np.sqrt(2.0 * np.pi)])


def normal(x, mean, sd):
    return np.exp(-0.5 * ((x - mean) / sd) ** 2) / (sd * np.sqrt(2.0 * np.pi))


def log_sum(logs, axis):
    most = np.max(logs, axis=axis, keepdims=True)
    return np.squeeze(most, axis) + np.log(np.sum(np.exp(logs - most), axis=axis))


class Sets:
    """Random sets of what joints of a section differ by."""

    def __init__(self, rng, all_measured):
        q = rng.random((9, SETS))
        self.relative, self.fixed = 0.08 + 0.3 * q[0], 0.05 + 0.4 * q[1] ** 2
        self.laid, self.group, self.alike = -0.15 * np.log(1.0 - q[2]), 1.8 + 6.2 * q[3] ** 2, q[4] < 0.5
        self.power = np.zeros(SETS) if all_measured else np.where(q[5] < 0.5, 0, np.where(q[5] < 0.875, 1, 2))
        half = np.where(q[7] < 0.5, 2.0, (q[7] - 0.5) / 1.5)
        self.begins, self.ends, self.more = q[6] - half, q[6] + half, 0.5 + 5.5 * q[8]
        self.wet_share = np.maximum(np.minimum(self.ends, 1.0) - np.maximum(self.begins, 0.0), 0.0)
        n = np.arange(1, 15)[:, None]
        shares = np.where(self.alike, np.exp(-0.5 * ((n - self.group) / 0.9) ** 2), (1.0 - 1.0 / self.group) ** (n - 1.0))
        shares = shares / shares.sum(axis=0)
        bonded = np.where(shares > 0.01, shares, 0.0)
        single = np.where(n == 1, 1.0, 0.0) * np.ones(SETS)
        # Of all joints: those that show of a group of n boards.
        self.shows = [shares / (n * shares).sum(axis=0) for shares in (single, bonded)]
        self.n = n

    def density(self, opening, bonded, gauge):
        """A function from a reading to its density among all joints, dry or wetted; mean and mean square of the gaps."""
        shows, n = self.shows[bonded], self.n
        parts = []
        for more in (np.zeros(SETS), self.more):
            middle = n * opening + self.laid + more
            sd = np.sqrt(n * (self.relative * opening) ** 2 + self.fixed**2 + (0.35 * more) ** 2)
            shut = below(-middle / sd)
            at_zero = normal(0.0, middle, sd)
            mean = middle * (1.0 - shut) + sd**2 * at_zero
            square = middle * mean + sd**2 * (1.0 - shut)
            parts.append((middle, sd, shut, (shows * mean).sum(axis=0), (shows * square).sum(axis=0)))

        def of(y, wetted):
            middle, sd, shut, _, _ = parts[wetted]
            both = np.hypot(sd, gauge)
            of_shut = normal(y, 0.0, gauge)
            above = below((middle * gauge**2 + y * sd**2) / (both * sd * gauge))
            each = shows * (normal(y, middle, both) * above + shut * of_shut)
            return each.sum(axis=0) + (1.0 - shows.sum(axis=0)) * of_shut

        return of, [part[3:] for part in parts]

    def picked(self, y, mean, square):
        """How much rather than others a joint that looks like this is measured."""
        all_joints = np.where(self.power == 0, 1.0, np.where(self.power == 1, mean + PICK, square + 2.0 * PICK * mean + PICK**2))
        return (y + PICK) ** self.power / all_joints


def gap_table(section, rng):
    """Log likelihood of a section's gaps by the opening of its boards, without and with bonded groups, by what happened
    on top: nothing, a line that moved, a wetting. Openings from -4 to 26 mm, closer about zero."""
    root = np.linspace(-2.0, np.sqrt(26.0), OPENINGS)
    openings, gauge = root * np.abs(root), PRIORS["gap_gauge"][1]
    if not section["gaps"]:
        return root, np.zeros((OPENINGS, 2, 3))
    count, joints = len(section["gaps"]), section["joints"]
    sets = Sets(rng, count >= joints)
    slip = lambda density: (1.0 - SLIP) * density + SLIP / 50.0
    found = np.empty((OPENINGS, 2, 3))
    for at, opening in enumerate(openings):
        for bonded in (0, 1):
            of, (dry_moments, wet_moments) = sets.density(opening, bonded, gauge)
            mixed = [a + sets.wet_share * (b - a) for a, b in zip(dry_moments, wet_moments, strict=True)]
            plain, wetted, moved = np.zeros(SETS), np.zeros(SETS), np.zeros(SETS)
            for place, y, _ in section["gaps"]:
                usual, picked = of(y, 0), sets.picked(y, *dry_moments)
                one = slip(usual * picked)
                plain += np.log(one)
                inside = (sets.begins <= place) & (place <= sets.ends)
                wetted += np.log(slip(np.where(inside, of(y, 1), usual) * sets.picked(y, *mixed)))
                if MOVED[0] < y - max(opening, 0.0) < MOVED[1]:
                    moved += picked / (MOVED[1] - MOVED[0]) / one
            unseen = 1.0 - count / joints
            rather = sets.picked(dry_moments[0] + (MOVED[0] + MOVED[1]) / 3.0, *dry_moments)
            stays = unseen * max(unseen, 1e-3) ** (rather - 1.0)
            line = plain + np.log(np.maximum(stays + (1.0 - unseen) * moved / count, 1e-12))
            found[at, bonded] = [log_sum(logs, 0) - np.log(SETS) for logs in (plain, line, wetted)]
    # A section's own opening: a normal about the build-up's, 6 % of it and 0.1 mm wide.
    z, share = np.polynomial.hermite_e.hermegauss(9)
    own = openings[:, None] + z * np.hypot(0.06 * openings, 0.1)[:, None]
    own_root = np.sign(own) * np.sqrt(np.abs(own))
    spread = np.empty_like(found)
    for bonded in (0, 1):
        for top in range(3):
            logs = np.interp(own_root, root, found[:, bonded, top]) + np.log(share / share.sum())
            spread[:, bonded, top] = log_sum(logs, 1)
    return root, spread


def failure_logs(job):
    """Log likelihood of how beads failed, of a sound sealant and of a weak one."""
    def past(width, limit, doubt):
        return 1.0 / (1.0 + np.exp((limit - width) / doubt))

    def one(width, failed, limit):
        gone, ajar = past(width, limit, 0.2 * limit + 0.05), past(width, 0.1, 0.05)
        chances = {"LetGoOneSide": (0.5, 0.01), "SplitInMiddle": (0.28, 0.01), "PaintTorn": (0.2, 0.1 + 0.4 * ajar),
                   "Whole": (0.02, 0.86 - 0.4 * ajar), "SqueezedOut": (0.01, 0.02), "NotNoted": (1.0, 1.0)}[failed]
        return gone * chances[0] + (1.0 - gone) * chances[1]

    logs = []
    for low, high in ((0.7, 2.5), (0.05, 0.5)):
        limits = low + (high - low) * (np.arange(400) + 0.5) / 400
        each = sum(np.log(one(width, failed, limits)) for section in job["sections"] for _, width, failed in section["gaps"])
        logs.append(float(log_sum(each, 0) - np.log(400)))
    return logs


def meter_logs(job, moisture):
    """Log likelihood of the meter's readings with nothing wet, then with each section wetted: by world and offset; the offsets
    with their shares."""
    sd_offset, sections = PRIORS["meter_offset"][1], job["sections"]
    offsets = sd_offset * np.linspace(-4.0, 4.0, 61)
    shares = np.exp(-0.5 * (offsets / sd_offset) ** 2)
    sd = np.hypot(PRIORS["meter_reading"][1], PRIORS["piece_moisture"][1])

    def shows(reading, wood):
        low = max(7.0 - reading, 0.0)
        inside = below((reading + 0.25 + low - wood) / sd) - below((reading - 0.25 - 4.0 * low - wood) / sd)
        return 0.995 * inside + 0.005 * 0.5 / 25.0

    logs = np.zeros((1 + len(sections), len(moisture), len(offsets)))
    for at, section in enumerate(sections):
        for reading in section["meter"]:
            reading = round(10.0 * reading) / 10.0
            wood = moisture[:, None] + offsets
            usual = shows(reading, wood)
            damp = np.mean([shows(reading, wood + more) for more in (3.0, 6.0, 9.0, 13.0)], axis=0)
            for account in range(1 + len(sections)):
                logs[account] += np.log(0.5 * usual + 0.5 * damp if account == at + 1 else usual)
    return logs + np.log(shares / shares.sum()), offsets


def weigh(job, rng, worlds):
    """Weights of all worlds, lots and accounts, with what is asked of them."""
    wet = np.arange(worlds) % 2 == 0
    room = Room(job, rng, worlds)
    came, moisture = dry(job, room, rng, wet)
    humidity = 100.0 * room.pascal(0) / room.full[room.visit % 365]
    sd = np.hypot(PRIORS["hygrometer"][1], PRIORS["day_humidity"][1])
    room_log = np.log(0.97 * normal(job["hygrometer"], humidity, sd) + 0.03 / 100.0)
    by_offset, offsets = meter_logs(job, moisture)
    meter = log_sum(by_offset, 2)
    sections = job["sections"]
    radial, tangential, _ = species_figures(sections[0]["species"])
    ring = np.cos(np.radians(sections[0]["ring"])) ** 2
    opened = sections[0]["face"] * narrows(tangential * ring + radial * (1.0 - ring), came, moisture)
    lot = np.exp(np.hypot(PRIORS["lot_shrinkage"][1], PRIORS["ring_shrinkage"][1]) * rng.normal(size=(LOTS, worlds)))
    tables = [gap_table(section, rng) for section in sections]
    beads = failure_logs(job)
    shares = np.log([section["joints"] / sum(s["joints"] for s in sections) for section in sections])
    nothing = 1.0 - RATES["weak_sealant"] - RATES["framing_moved"] - RATES["wetted_and_dried"]
    tops = [nothing, RATES["weak_sealant"], RATES["framing_moved"], RATES["wetted_and_dried"]]
    logs = np.empty((LOTS, 2, 4, worlds))
    at = np.sign(lot * opened) * np.sqrt(np.abs(lot * opened))
    for bonded in (0, 1):
        each = np.array([[np.interp(at, root, table[:, bonded, top]) for top in range(3)] for root, table in tables])
        plain = each[:, 0].sum(axis=0)
        instead = [each[:, top] - each[:, 0] + plain for top in (1, 2)]
        usual = plain + meter[0]
        line = log_sum(instead[0] + shares[:, None, None], 0) + meter[0]
        part = log_sum(instead[1] + shares[:, None, None] + meter[1:][:, None, :], 0)
        rate = RATES["bonded_groups"] if bonded else 1.0 - RATES["bonded_groups"]
        for top, (log, bead) in enumerate(zip((usual, usual, line, part), (beads[0], beads[1], beads[0], beads[0]), strict=True)):
            logs[:, bonded, top] = log + bead + np.log(rate * tops[top]) + room_log
    # As many worlds came wet as not.
    logs += np.log(np.where(wet, RATES["wet_at_install"], 1.0 - RATES["wet_at_install"]))
    given = np.exp(by_offset[0] - meter[0][:, None])
    return {"logs": logs, "wet": wet, "came": came, "moisture": moisture, "offset": given @ offsets, "offset_square": given @ offsets**2}


def told(part):
    """What a part of the sample says."""
    weights = np.exp(part["logs"] - np.max(part["logs"]))
    weights /= weights.sum()
    by_world = weights.sum(axis=(0, 1, 2))
    mean = lambda value: float(by_world @ value)
    of_top = weights.sum(axis=(0, 1, 3))
    wet = mean(part["wet"])
    offset = mean(part["offset"])
    came, moisture = mean(part["came"]), mean(part["moisture"])
    odds = [wet, 1.0 - wet, of_top[1], of_top[2], of_top[3], weights[:, 1].sum()]
    return {
        "meter_offset": offset, "meter_offset_sd": float(np.sqrt(mean(part["offset_square"]) - offset**2)),
        "installed": came, "installed_sd": float(np.sqrt(mean((part["came"] - came) ** 2))),
        "moisture_now": moisture, "moisture_now_sd": float(np.sqrt(mean((part["moisture"] - moisture) ** 2))),
    } | {cause: float(chance) for cause, chance in zip(CAUSES, odds, strict=True)}, by_world


def answer(job, worlds, seed):
    # Every part has sets of its own, so that its error holds theirs: odds of bonded boards rest on few of them.
    parts = [weigh(job, np.random.default_rng([seed, part]), worlds // PARTS) for part in range(PARTS)]
    sample = {key: np.concatenate([part[key] for part in parts], axis=-1) for key in parts[0]}
    middle, by_world = told(sample)
    each = [told(part)[0] for part in parts]
    errors = {key: float(np.std([part[key] for part in each], ddof=1) / np.sqrt(PARTS)) for key in middle}
    effective = float(1.0 / np.sum(by_world**2))
    print(f"{job['name']}: {effective:.0f} of {worlds} worlds count", file=sys.stderr, flush=True)
    return {"example": job["name"], "worlds": worlds, "effective": round(effective),
            "found": {key: [round(middle[key], 5), round(errors[key], 5)] for key in middle}}


def main():
    parser = argparse.ArgumentParser(description=__doc__, formatter_class=argparse.RawDescriptionHelpFormatter)
    parser.add_argument("binary", type=Path)
    parser.add_argument("--worlds", type=int, default=60_000)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--only", help="one of the examples; prints and writes nothing")
    arguments = parser.parse_args()
    names = [arguments.only] if arguments.only else EXAMPLES
    answers = [answer(example(name, arguments.binary.resolve()), arguments.worlds, arguments.seed) for name in names]
    text = "[\n" + ",\n".join(json.dumps(found) for found in answers) + "\n]\n"
    if arguments.only:
        print(text)
    else:
        (HERE / "sampler.json").write_text(text, encoding="utf8")


if __name__ == "__main__":
    main()
