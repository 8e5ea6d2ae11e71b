"""What comes of a repair: every joint that was sealed, week by week for three years, and when the owner calls again.

How far the joints move is what `callback.py` has of the boards and of the house. How far a bead is stretched by that is
`bead_strains.py`'s: scikit-fem, not the program's solver and not its table. All else is here:

  * A class says what a test bead took that was opened by so much of its width (ASTM C719; size from ASTM C1635-16, 5.3). A
    laid bead takes as much local stretch as that one had, times what its lot, its own bond and its years make of it. It
    tears where it is stretched most; where that is out of sight, the tear comes through, or the face holds until it is
    stretched as far itself.
  * Closed, a bead creases where it is squeezed as far as the test bead was, times the same, or to half of its width. A
    crease is seen from 1/64 in of closing on; a tear, and paint that cracked, from as much opening on.
  * A sealant that cures takes 10 to 15 % (Margeson, ASTM STP 1168, 1992): one that is stretched in its first three
    weeks like a test bead opened by 12.5 % keeps six tenths of what it takes; less, in proportion (assumption).
  * A bead on the tongue: within a quarter of a millimeter of the line where board and tongue meet, the opening starts
    from no width at all, so the sealant there takes all of it. Torn there, it goes on as a bead with two free faces.
  * Paint over a bead cracks where the face is stretched as far as the film takes.

Assumptions, ours, where nobody has measured: lots differ by 0.2 (standard deviation of the logarithm), the bond of
one joint by 0.2, the fill of the V by a fifth of itself, the film of one joint by 0.2; a house's sealant loses 0 to 6 % a
year. What is shared with the program as a declared rate stands in houses.py.

The rule is the job's: more than a tenth of the length that was worked on open by 1/64 in or more, or one joint by 1/16.
A joint past its tongue, 1/4 in, is open whatever is in it. Joints under 1/32 in get no bead: they are painted over.
One in a hundred of a year's strips, lines and cut reveals brings the crew back for what no movement tells of.
"""

import datetime
import json
import math
import re
from functools import cache
from pathlib import Path

import numpy as np

from callback import INCH, SEALED_BY, WEEK
from wood import ROOT

YEARS = 3
SEEN, WIDEST, TONGUE, NARROWEST = INCH / 64, INCH / 16, INCH / 4, INCH / 32
OPEN_SHARE = 0.1
V_LEG = INCH / 8
TONGUE_BELOW = 0.36
"""Share of the thickness above the tongue."""
REVEAL = INCH / 4
OVERLAP = 12.0
ROOT_REACH = 0.25
CURES_WEEKS, CURING_CLASS, CURING_KEEPS = 3, 12.5, 0.6
LAPSE = 0.01
COMES = WEEK
"""Lines and strips, and nothing, begin so many days after the visit: five workdays."""
SEALANTS = {"latex-no-class": 0.15, "acrylic-latex-12": 0.2, "siliconized-acrylic-25": 0.2, "elastomeric-acrylic-35": 0.15,
            "hybrid-50": 0.3}
FILLS = {35: 0.2, 50: 0.6, 70: 0.2}


@cache
def sealant(ident):
    """By how much the test bead was opened and closed, in percent, and the volume left of a bead in the end."""
    text = (ROOT / "assets" / "sealants.ron").read_text(encoding="utf8")
    line = next(line for line in text.splitlines() if f'(id: "{ident}"' in line)
    opened, closed, solids = (float(re.search(rf"\b{key}: ([\d.]+)", line).group(1))
                              for key in ("stretch", "squeeze", "solids"))
    lost = 1.0 - solids / 100.0
    # Where it sinks, a second bead fills up what the first lost, and loses as large a share of that.
    return opened, closed, 1.0 - (lost * lost if solids < 95.0 else lost)


class Strains:
    """The table of bead_strains.py, between its points: strain goes with powers of opening and gap."""

    def __init__(self):
        table = json.loads((Path(__file__).resolve().parent / "bead_strains.json").read_text(encoding="utf8"))
        self.classes, self.squeezed = (np.array(table[key]).T for key in ("class", "class_closed"))
        self.opened = np.log(np.geomspace(0.03, 6.0, 40))
        self.reveal = self._both(table["reveal"], table["reveal_closed"])
        self.depths, self.fills, self.gaps = (sorted({bead[key] for bead in table["beads"]}) for key in ("depth", "fill", "gap"))
        closed = {(b["fill"], b["gap"]): b["closed"] for b in table["beads"] if b["depth"] == 0.0}
        self.beads = {(b["depth"], b["fill"], b["gap"]): self._both(b["path"], closed[b["fill"], b["gap"]]) for b in table["beads"]}

    def _both(self, opened, closed):
        """Logarithms of the strains at the movements of `self.opened`: opened at the places that are seen, at any
        place, and closed at the places that are seen."""
        move, seen, hidden = np.log(np.array(opened)).T
        back, creases, _ = np.log(np.abs(np.array(closed))).T
        each = ((move, seen), (move, np.maximum(seen, hidden)), (back, creases))
        return np.array([_beyond(self.opened, *curve) for curve in each])

    def of_class(self, percent, closed=False):
        """Largest local strain of the test bead opened, or closed, by so much."""
        return float(np.exp(_beyond(np.log([percent]), *np.log(self.squeezed if closed else self.classes))[0]))

    def across(self, gap, fill, depth):
        """The curves of a bead in a gap, mm, that fills a share of the V and reaches so deep into the slot."""
        depth = min(self.depths, key=lambda known: abs(known - depth))
        (f0, f1, fs), (g0, g1, gs) = _between(self.fills, fill), _between(self.gaps, gap, np.log)
        at = self.beads
        low = (1.0 - gs) * at[depth, f0, g0] + gs * at[depth, f0, g1]
        high = (1.0 - gs) * at[depth, f1, g0] + gs * at[depth, f1, g1]
        return (1.0 - fs) * low + fs * high

    def at(self, curve, moved):
        """Strain on a curve when moved so far, mm; none where the joint went the other way."""
        strain = np.exp(_beyond(np.log(np.maximum(moved, 1e-4)), self.opened, curve))
        return np.where(moved > 0.0, strain, 0.0)


@cache
def strains():
    return Strains()


def _beyond(x, known, values):
    """Straight lines between what is known; on with the last slope beyond it, and with slope 1 before it."""
    slope = (values[-1] - values[-2]) / (known[-1] - known[-2])
    inside = np.interp(x, known, values)
    return inside + np.minimum(x - known[0], 0.0) + slope * np.maximum(x - known[-1], 0.0)


def _between(known, value, scale=float):
    """The two that a value lies between, and how far it is from the first to the second."""
    value = min(max(value, known[0]), known[-1])
    after = next(at for at in range(1, len(known)) if known[at] >= value)
    low, high = known[after - 1], known[after]
    return low, high, float((scale(value) - scale(low)) / (scale(high) - scale(low)))


class Work:
    """What is sealed with what, and how it turned out."""

    def __init__(self, world):
        rng = world.later
        self.sealed = WEEK * int(rng.integers(2, SEALED_BY // WEEK + 1))
        self.sealant = str(rng.choice(list(SEALANTS), p=list(SEALANTS.values())))
        self.fill = int(rng.choice(list(FILLS), p=list(FILLS.values())))
        self.every_joint = bool(rng.random() < 0.5)
        self.opened, self.closed, self.left = sealant(self.sealant)
        self.lot = 1.3 * math.exp(rng.normal(0.0, 0.2))
        self.yearly = 1.0 - rng.uniform(0.0, 0.06)
        self.come_through = bool(rng.random() < 0.5)
        self.paint = 0.35 * math.exp(rng.normal(0.0, 0.5))
        self.lapses = rng.random(YEARS) < LAPSE
        self.joints = [joint for section in world.sections for joint in self._joints(world, section, rng)]

    def _joints(self, world, section, rng):
        days = [self.sealed + WEEK * week for week in range(int(YEARS * 365 / WEEK) + 1)]
        gaps = np.array([section["gaps"][day] for day in days]).T
        soon = np.array([section["gaps"][COMES + day - self.sealed] for day in days]).T
        for own, then, now in zip(gaps, soon, section["gaps"][0], strict=True):
            bond, fill, film = rng.normal(0.0, 0.2), float(np.clip(rng.normal(1.0, 0.2), 0.5, 1.5)), rng.normal(0.0, 0.2)
            yield {"gaps": own, "soon": then, "bond": math.exp(bond), "film": math.exp(film),
                   "worked": self.every_joint or now >= SEEN, "fill": min(self.fill / 100.0 * fill, 1.0) * self.left,
                   "to_tongue": max(TONGUE_BELOW * world.thickness_mm - V_LEG, 0.5)}

    def takes(self, joint, hidden):
        """What a bead takes of its class in each week, given the stretch in its first."""
        weeks = np.arange(len(joint["gaps"]))
        curing = hidden[:CURES_WEEKS + 1].max() / strains().of_class(CURING_CLASS)
        kept = 1.0 - (1.0 - CURING_KEEPS) * min(curing, 1.0)
        return self.lot * joint["bond"] * kept * self.yearly ** (weeks * WEEK / 365.0)

    def shows(self, joint, curve, mean_width, root=False):
        """In which weeks it shows that a bead on these curves has failed, and that paint over it has cracked."""
        opening = joint["gaps"] - joint["gaps"][0]
        seen, hidden, closed = (strains().at(each, moved) for each, moved in zip(curve, (opening, opening, -opening), strict=True))
        takes = self.takes(joint, hidden)
        if root:
            hidden = np.maximum(hidden, opening / ROOT_REACH)
        limit = takes * strains().of_class(self.opened)
        torn = (hidden if self.come_through else seen) > limit
        creased = (closed > takes * strains().of_class(self.closed, True)) | (-opening > 0.5 * mean_width)
        cracked = seen > self.paint * joint["film"]
        return ((_from_then_on(torn) & (opening >= SEEN)) | (_from_then_on(creased) & (-opening >= SEEN)),
                _from_then_on(cracked) & (opening >= SEEN))

    def bead(self, joint, option):
        """The same of an option's bead in a joint; one too narrow for a bead shows as soon as it opens."""
        gap = joint["gaps"][0]
        width = max(gap, REVEAL) if option == "reveal" else gap
        if width < NARROWEST:
            return joint["gaps"] - gap >= SEEN, np.zeros(len(joint["gaps"]), bool)
        if option == "reveal":
            return self.shows(joint, strains().reveal, width)
        depth = joint["to_tongue"] if option == "reseal_on_tongue" else 0.0
        curve = strains().across(gap, joint["fill"], depth)
        return self.shows(joint, curve, gap + joint["fill"] * V_LEG, option == "reseal_on_tongue")

    def called(self, option):
        """The week of the callback, and of the one without paint that cracks over sound beads; None for none."""
        if option in ("reseal", "reseal_on_tongue", "reveal"):
            joints = [joint for joint in self.joints if joint["worked"]]
            weeks = self._called_for_beads(joints, option)
        else:
            joints = self.joints
            opening = np.array([joint["soon"] - (0.0 if option == "nothing" else joint["soon"][0]) for joint in joints])
            shows = {"shadow_line": WIDEST, "cover_strips": OVERLAP, "nothing": SEEN}[option]
            weeks = [_calls(opening, opening >= shows)] * 2
        return [self._or_lapse(week, option) for week in weeks]

    def _called_for_beads(self, joints, option):
        if not joints:
            return [None, None]
        failed, cracked = (np.array(each) for each in zip(*(self.bead(joint, option) for joint in joints), strict=True))
        gaps = np.array([joint["gaps"] for joint in joints])
        past = gaps >= TONGUE
        return [_calls(gaps - gaps[:, :1], each | past) for each in (failed | cracked, failed)]

    def _or_lapse(self, week, option):
        if option in ("reseal", "reseal_on_tongue", "nothing") or not self.lapses.any():
            return week
        lapse = int((np.argmax(self.lapses) + 0.5) * 365 / WEEK)
        return lapse if week is None else min(week, lapse)


def _from_then_on(each):
    return np.logical_or.accumulate(each)


def _calls(opening, shows):
    """The first week in which too much length is open, or one joint too wide."""
    calls = (shows.mean(axis=0) > OPEN_SHARE) | (shows & (opening > WIDEST)).any(axis=0)
    return int(np.argmax(calls)) if calls.any() else None


OPTIONS = ["reseal", "reseal_on_tongue", "reveal", "shadow_line", "cover_strips", "nothing"]


def repaired(world):
    """The plan that goes into the job, and what came of each option: weeks to the callback, with the paint and without."""
    work = Work(world)
    on = world.visit + datetime.timedelta(work.sealed)
    plan = {"sealant": work.sealant, "seal_on": on.isoformat(), "bead": {"v_filled": float(work.fill)}}
    if work.every_joint:
        plan["scope"] = "EveryBoardJoint"
    worked = [joint for joint in work.joints if joint["worked"]]
    truth = {"sealed_days": work.sealed, "come_through": work.come_through, "worked": len(worked),
             "sealed": int(sum(joint["gaps"][0] >= NARROWEST for joint in worked)),
             "opens_mm": round(float(np.mean([(j["gaps"] - j["gaps"][0]).max() for j in worked])) if worked else 0.0, 3),
             "weeks": {option: work.called(option) for option in OPTIONS}}
    return {"plan": plan, "truth": truth}
