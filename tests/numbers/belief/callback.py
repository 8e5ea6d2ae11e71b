"""One callback: what truly happened in a room, and what the contractor finds and types.

`World` draws one and holds it; once its boards have been dried (houses.py does that for many worlds
at once) `joints` gives every gap on the days that count and `job` the file and the truth.

Shared with the program: the base rates of the causes, the meter's errors, the scatter between pieces
(declared base rates, see houses.py). All else is assumption, ours, and stands beside the line that
draws it.
"""

import datetime
import math

import numpy as np

import outdoors
import room
import wood

HORIZONS = [0, 60, 180, 360]
"""Days from the visit on which the truth is kept."""
WEEK = 7
SEALED_BY = 47 * WEEK
"""A repair is done this many days after the visit at most."""
LAST = SEALED_BY + 157 * WEEK
"""The last day from the visit that is followed: three years after the repair."""
KEPT = sorted({*HORIZONS, *range(0, LAST + 1, WEEK)})
"""Days from the visit on which gaps are known."""
LEVELS = np.array([-2.5, 0.0, 2.5])
"""Boards of a section are dried from its delivery's mean MC and from this much off it, %; the others
follow by a parabola through the three."""
INCH = 25.4
TEARS_MM = 15.0
"""A run of bonded boards that would open its joint further than this tears in two (assumption)."""
NAMES = ["Ceiling", "North slope", "South slope"]
CAUSES = ["wet_at_install", "seasonal", "weak_sealant", "framing_moved", "wetted_and_dried", "bonded_groups"]


def lognormal(rng, middle, sd):
    return float(np.exp(rng.normal(math.log(middle), sd)))


def draw_causes(rng):
    """The causes of a callback, at the rates of assets/causes.ron; of the three besides-causes one at most."""
    other = rng.random()
    return {
        "wet_at_install": bool(rng.random() < 0.5),
        "bonded_groups": bool(rng.random() < 0.25),
        "weak_sealant": bool(other < 0.15),
        "framing_moved": bool(0.15 <= other < 0.23),
        "wetted_and_dried": bool(0.23 <= other < 0.31),
    }


class World:
    """A callback as it truly is. `causes` come from `draw_causes`: all else is drawn here. What comes later than
    the last of `HORIZONS` is drawn from `later`, so that a job and its truth stay the same however long its
    house is followed."""

    def __init__(self, rng, causes, later):
        self.rng, self.causes, self.later = rng, causes, later
        # Two weeks to ten years, log-uniform; the visit on any day of three years.
        self.age = int(round(math.exp(rng.uniform(math.log(14), math.log(3650)))))
        self.visit = datetime.date(2024, 1, 1) + datetime.timedelta(int(rng.integers(0, 1096)))
        self.installed = self.visit - datetime.timedelta(self.age)
        self.group, self.place = outdoors.draw_place(rng)
        self.told = bool(rng.random() < 0.3)
        self.house = room.draw_house(rng, self.group, self.place, self.told)
        self._air()
        self._boards()
        self.sections = [self._section(index) for index in range(int(rng.integers(1, 4)))]
        self._deliveries()
        self._wetting()

    def _air(self):
        """The room's air from 30 days before the install to the last day that counts."""
        days = self.age + HORIZONS[-1] + 1
        spin_up = 30
        first = self.installed - datetime.timedelta(spin_up)
        day_of_year = (first.timetuple().tm_yday + np.arange(days + spin_up)) % 365.25
        out_c, out_pa, off = outdoors.weather(self.rng, self.place, day_of_year)
        in_c, humidity = room.indoor_air(self.rng, self.house, out_c, out_pa)
        # The years after have weather of their own, in the same house at the same place.
        self.days = self.age + LAST + 1
        after = (first.timetuple().tm_yday + np.arange(days, self.days + spin_up)) % 365.25
        then_c, then_pa, _ = outdoors.weather(self.later, self.place, after, off)
        then_in, then_humid = room.indoor_air(self.later, self.house, then_c, then_pa)
        self.out_c, self.out_pa, self.in_c, self.humidity = (
            np.concatenate([before[spin_up:], then[spin_up:]])
            for before, then in ((out_c, then_c), (out_pa, then_pa), (in_c, then_in), (humidity, then_humid)))
        # Two other years of the same house, for what its air makes of wood in the long run.
        outdoors_then = outdoors.weather(self.rng, self.place, np.arange(730) % 365.25)
        celsius, humid = room.indoor_air(self.rng, self.house, *outdoors_then[:2])
        settled = wood.equilibrium(humid, celsius)
        months = np.convolve(settled[30:], np.ones(30) / 30.0, "valid")
        self.settles_at, self.wettest = float(settled.mean()), float(months.max())

    def _boards(self):
        """What all sections have in common."""
        rng = self.rng
        self.species = str(rng.choice(wood.SPECIES))
        self.radial, self.tangential, gravity = wood.species(self.species)
        self.gravity = gravity * rng.normal(1.0, 0.07)
        self.thickness_mm = float(rng.choice([12.7, 15.875, 19.05], p=[0.25, 0.2, 0.55]))
        self.face_mm = float(rng.choice([3.125, 5.125, 7.125], p=[0.3, 0.5, 0.2])) * INCH
        # Growth rings: a lot about some angle, each board off it by 12 degrees.
        self.ring = float(rng.choice([10.0, 20.0, 25.0, 30.0, 40.0, 60.0], p=[0.15, 0.2, 0.25, 0.2, 0.12, 0.08]))
        self.lot_shrinks = lognormal(rng, 1.0, 0.08)
        self.holds = rng.normal(1.0, 0.05)
        self.quick = lognormal(rng, 1.2, 0.3)
        self.fixing = str(rng.choice(["Tongue", "Middle"], p=[0.8, 0.2]))
        self.finish = str(rng.choice(["LatexFace", "LatexBackPrimed", "OilFace", "Bare"], p=[0.68, 0.12, 0.15, 0.05]))
        perms = {"LatexFace": 6.0, "LatexBackPrimed": 6.0, "OilFace": 0.7, "Bare": math.inf}[self.finish]
        coat = lognormal(rng, perms, 0.5) * wood.US_PERM if math.isfinite(perms) else math.inf
        self.face_conductance = 1.0 / (1.0 / lognormal(rng, 2e-8, 0.2) + 1.0 / coat)
        # The back: open to a cavity, hardly open, or tight; the job says what the program takes by default.
        kind = rng.choice(3, p=[0.45, 0.3, 0.25])
        air = [lognormal(rng, 1e-8, 0.3), 1e-8 * math.exp(rng.uniform(math.log(0.02), math.log(0.5))),
               lognormal(rng, 0.3, 0.7) * wood.US_PERM][kind]
        primer = lognormal(rng, 9.0, 0.4) * wood.US_PERM if self.finish == "LatexBackPrimed" else math.inf
        self.back_conductance = 1.0 / (1.0 / air + 1.0 / primer)
        self.back = ["open", "hardly open", "tight"][kind]
        # Half of the open backs see some air from outdoors.
        self.behind_outdoors = rng.uniform(0.0, 0.15) if kind == 0 and rng.random() < 0.5 else 0.0

    def _section(self, index):
        """A section of 10 to 40 joints, each its own surface."""
        rng = self.rng
        joints = int(rng.integers(10, 41))
        boards = joints + 1
        angle = np.radians(np.clip(self.ring + rng.normal(0.0, 12.0, boards), 0.0, 90.0))
        coefficient = self.tangential * np.cos(angle) ** 2 + self.radial * np.sin(angle) ** 2
        section = {
            "surface": NAMES[index], "section": "ABC"[index], "joints": joints,
            # A piece moves 15 % more or less than the next.
            "coefficient": coefficient * self.lot_shrinks * np.maximum(rng.normal(1.0, 0.15, boards), 0.3),
            # Boards of one lot went up 1 % MC apart; each comes to 0.3 off the others in the same air.
            "off_install": rng.normal(0.0, 1.0, boards), "off_air": rng.normal(0.0, 0.3, boards),
            # One side of a room is drier than another by 2 % RH.
            "humidity_off": rng.normal(0.0, 0.02),
            "laid": rng.exponential(0.15, joints),
            "opened": np.zeros(joints), "surplus": np.zeros(boards), "surplus_days": math.inf,
        }
        # What of a board's own movement shows at its groove side; nails and tongues see to the rest.
        middle = 0.93 if self.fixing == "Tongue" else 0.5
        section["share"] = np.clip(rng.normal(middle, 0.06, boards), 0.0, 1.0)
        section["runs"] = self._runs(joints) if self.causes["bonded_groups"] else [range(j, j + 1) for j in range(joints)]
        section["shows_at"] = [int(rng.choice(run)) for run in section["runs"]]
        return section

    def _runs(self, joints):
        """Joints in runs bonded together, whose sizes vary along the section: Poisson or geometric about a
        mean that is drawn for each section."""
        rng, runs, at = self.rng, [], 0
        mean = rng.uniform(2.0, 6.0)
        geometric = rng.random() < 0.5
        while at < joints:
            size = int(rng.geometric(1.0 / mean) if geometric else 1 + rng.poisson(mean - 1.0))
            runs.append(range(at, min(at + size, joints)))
            at += size
        return runs

    def _deliveries(self):
        """How wet each section's delivery went up: one delivery in four jobs of five."""
        rng = self.rng
        if self.causes["wet_at_install"]:
            low, high = self.wettest + 0.7, max(25.0, self.wettest + 2.0)
            drawn = low + (high - low) * rng.beta(1.2, 2.0)
        else:
            low, high = 4.5, self.wettest + 0.3
            drawn = self.settles_at + rng.normal(0.0, 1.4)
        first = float(np.clip(drawn, low, high))
        separate = rng.random() < 0.2
        for index, section in enumerate(self.sections):
            off = rng.normal(0.0, 1.5) if separate and index else 0.0
            section["install"] = float(np.clip(first + off, low, high))

    def _wetting(self):
        """A line that moved, or a part that was wetted."""
        rng = self.rng
        section = self.sections[rng.integers(len(self.sections))]
        joints = section["joints"]
        if self.causes["framing_moved"]:
            shows = section["shows_at"]
            section["opened"][shows[rng.integers(len(shows))]] = rng.uniform(1.5, 15.0)
        if self.causes["wetted_and_dried"]:
            share = 1.0 if rng.random() < 0.5 else rng.uniform(0.2, 0.7)
            count = max(3, round(share * joints))
            first = int(rng.integers(0, joints - count + 1))
            more = rng.uniform(0.5, 6.0)
            section["runs"], section["shows_at"] = _freed(section, first, first + count)
            section["opened"][first:first + count] = np.maximum(more * rng.normal(1.0, 0.35, count), 0.0)
            if rng.random() < 0.5:
                section["surplus"][first:first + count + 1] = rng.uniform(3.0, 15.0) * rng.uniform(0.7, 1.3, count + 1)
                # In half of these the leak was found and the boards dry from the visit on.
                section["surplus_days"] = lognormal(rng, 40.0, 0.5) if rng.random() < 0.5 else math.inf

    def columns(self):
        """What the slabs of houses.py need: for each section the three levels of its install moisture, with
        the humidity at the face and the vapor pressure behind for every day."""
        for section in self.sections:
            humidity = np.clip(self.humidity + section["humidity_off"], 0.03, 0.95)
            face = room.vapor_pressure(self.in_c, humidity)
            back = room.behind_pressure(self.behind_outdoors, self.in_c, humidity, self.out_c, self.out_pa)
            yield section, section["install"] + LEVELS, face, back

    def joints(self):
        """Gaps of all joints in mm and moisture of all boards in %, once `dried` is in every section: the
        means of the three levels on the days of `KEPT`. Kept in the sections by day."""
        for section in self.sections:
            section["gaps"], section["moisture"] = {}, {}
            off = section["off_install"]
            weights = np.array([[np.prod([(x - LEVELS[k]) / (LEVELS[j] - LEVELS[k]) for k in range(3) if k != j])
                                 for j in range(3)] for x in off])
            at_install = section["install"] + off
            for day, dried in zip(KEPT, section["dried"], strict=True):
                content = weights @ dried + section["off_air"]
                narrows = self.face_mm * (wood.width(at_install, section["coefficient"]) -
                                          wood.width(content, section["coefficient"]))
                # A wet part dries on: what it opened by was seen while it was wet.
                left = 1.0 if math.isinf(section["surplus_days"]) else math.exp(-day / section["surplus_days"])
                lost = section["surplus"] * (1.0 - left)
                narrows = narrows + self.face_mm * section["coefficient"] * lost
                section["moisture"][day] = content + section["surplus"] * left
                share = section["share"]
                moves = narrows[:-1] * share[:-1] + narrows[1:] * (1.0 - share[1:])
                if day == 0:
                    self._tear(section, moves)
                gaps = np.zeros(section["joints"])
                for run, shows in zip(section["runs"], section["shows_at"], strict=True):
                    gaps[shows] = max(0.0, section["laid"][shows] + np.sum((moves + section["opened"])[run.start:run.stop]))
                section["gaps"][day] = gaps

    def _tear(self, section, moves):
        """Splits runs that opened too far, until none has."""
        runs, shows = [], []
        waiting = list(zip(section["runs"], section["shows_at"], strict=True))
        while waiting:
            run, at = waiting.pop(0)
            if len(run) == 1 or np.sum(np.asarray(moves)[run.start:run.stop]) <= TEARS_MM:
                runs.append(run)
                shows.append(at)
                continue
            middle = (run.start + run.stop) // 2
            for part in (range(run.start, middle), range(middle, run.stop)):
                waiting.append((part, at if at in part else int(self.rng.choice(part))))
        section["runs"], section["shows_at"] = runs, shows

    def is_callback(self):
        """Somebody saw something: a gap of 1/64 in or more."""
        return any(section["gaps"][0].max() >= 0.4 for section in self.sections)


def _freed(section, first, last):
    """Runs and showing joints when every joint from `first` to before `last` is on its own: water undoes
    the bond there."""
    runs, shows = [range(j, j + 1) for j in range(first, last)], list(range(first, last))
    for run, at in zip(section["runs"], section["shows_at"], strict=True):
        for part in (range(run.start, min(run.stop, first)), range(max(run.start, last), run.stop)):
            if part:
                runs.append(part)
                shows.append(at if at in part else part[len(part) // 2])
    return runs, shows
