#!/usr/bin/env python3
"""The worlds' boards followed by scipy's LSODA, and the time both take, in one run.

    python3 tests/numbers/belief/lsoda.py [--release]

Needs Python 3.11, numpy and scipy, and Rust. The program prints 256 worlds of latex paint and 64 of each other finish: paint, back and
diffusivity of the board, its moisture at install, the vapor pressure in the room day by day, and what its own ten
slices in steps of a day come to after 182 days. Here the same boards are 31 points, closest at the faces, the air
goes in straight lines from noon to noon, and LSODA takes them through at a relative tolerance of 1e-6, sixteen
boards in one system to save time. So what is off is all that slices, steps and single precision do together.

Model, as src/wood/drying.rs documents it (SI units; u in kg of water per kg of dry wood):
    du/dt = d/dx( D(u, T) du/dx ),  D = 8e-11 exp(4 u) exp(-(38500 - 29000 u) / R * (1/T - 1/293.15)) m2/s
    times the lot's factor; out of a face K (h(u) psat - p), h the inverse of Wood Handbook eq. 4-5, psat by ASHRAE
    Fundamentals. Both are taken from `drying.py`, the other reference solution, and not from the program.

Time: 4,096 worlds of the program on the cores it takes, fastest of five, against LSODA on one core for one world,
times 4,096: 21 points and a relative tolerance of 1e-4, a board at a time, and also sixteen at a time.
"""

import json
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
from scipy.integrate import odeint

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "drying"))
from drying import R_GAS, emc, psat  # noqa: E402

TEST = "belief::peer::worlds_and_their_time_for_the_peer"
DAY = 86400.0
TOGETHER = 16


def ours():
    command = ["cargo", "test", "--locked", "--lib", *sys.argv[1:], TEST, "--", "--ignored", "--nocapture"]
    printed = subprocess.run(command, check=True, capture_output=True, text=True).stdout
    lines = printed.splitlines()
    return [[json.loads(line[line.index(mark) + len(mark):]) for line in lines if mark in line] for mark in ("WORLDS ", "TIME ")]


class Rooms:
    """The air of some worlds: straight lines from noon to noon, and held before the first and after the last."""

    def __init__(self, celsius, vapor):
        self.celsius, self.vapor = np.asarray(celsius), np.asarray(vapor)
        fine = np.linspace(10.0, 35.0, 2501)
        self.saturations = psat(fine)

    def at(self, seconds):
        day = min(max(seconds / DAY - 0.5, 0.0), len(self.celsius) - 1.0)
        before = min(int(day), len(self.celsius) - 2)
        share = day - before
        celsius = self.celsius[before] + share * (self.celsius[before + 1] - self.celsius[before])
        return celsius, self.vapor[before] + share * (self.vapor[before + 1] - self.vapor[before])

    def saturation(self, celsius):
        place = (celsius - 10.0) * 100.0
        below = int(place)
        return self.saturations[below] + (place - below) * (self.saturations[below + 1] - self.saturations[below])


class Boards:
    """Some worlds' boards side by side, each on `points` points."""

    def __init__(self, group, worlds, points):
        graded = np.tanh(1.8 * np.linspace(-1.0, 1.0, points)) / np.tanh(1.8)
        self.place, self.thickness = group["thickness_m"] * 0.5 * (1.0 + graded), group["thickness_m"]
        self.dx = np.diff(self.place)
        self.cell = np.empty(points)
        self.cell[0], self.cell[-1] = self.dx[0] / 2.0, self.dx[-1] / 2.0
        self.cell[1:-1] = (self.dx[:-1] + self.dx[1:]) / 2.0
        self.over = np.array([world["transfer"] for world in worlds]) / group["density"]
        self.quick = np.array([[8e-11 * world["diffusivity"]] for world in worlds])
        self.start = np.array([np.full(points, world["installed"]) for world in worlds])
        self.rooms = Rooms(group["celsius"], np.array([world["vapor_pa"] for world in worlds]).T)
        self.humidity = np.full_like(self.over, 0.5)

    def over_faces(self, u, celsius):
        """Relative humidity over wood of moisture `u` by Newton's method, from where it was last."""
        w = 349.0 + 1.29 * celsius + 0.0135 * celsius**2
        k = 0.805 + 0.000736 * celsius - 0.00000273 * celsius**2
        k1 = 6.27 - 0.00938 * celsius - 0.000303 * celsius**2
        k12 = k1 * (1.91 + 0.0407 * celsius - 0.000293 * celsius**2)
        wanted = u * w / 18.0
        x = self.humidity * k
        for _ in range(30):
            one, two = k1 * x, k12 * x * x
            below, above = 1.0 + one + two, one + 2.0 * two
            free = 1.0 / (1.0 - x)
            miss = x * free + above / below - wanted
            step = miss / (free * free + ((k1 + 4.0 * k12 * x) - above / below * (k1 + 2.0 * k12 * x)) / below)
            x = np.clip(x - step, 0.2 * x, 0.5 * (x + 1.0))
            if np.max(np.abs(step)) < 1e-11:
                break
        self.humidity = x / k
        return self.humidity

    def rate(self, flat, seconds):
        u = flat.reshape(self.start.shape)
        celsius, vapor = self.rooms.at(seconds)
        colder = (1.0 / (celsius + 273.15) - 1.0 / 293.15) / R_GAS
        d = self.quick * np.exp(-38500.0 * colder + (2.0 + 14500.0 * colder) * (u[:, :-1] + u[:, 1:]))
        flow = d * (u[:, 1:] - u[:, :-1]) / self.dx
        out = self.over * (self.over_faces(u[:, [0, -1]], celsius) * self.rooms.saturation(celsius) - vapor[:, None])
        rate = np.empty_like(u)
        rate[:, 1:-1] = flow[:, 1:] - flow[:, :-1]
        rate[:, 0], rate[:, -1] = flow[:, 0] - out[:, 0], -flow[:, -1] - out[:, 1]
        return (rate / self.cell).ravel()

    def follow(self, tolerance):
        days = len(self.rooms.celsius)
        found = odeint(self.rate, self.start.ravel(), [0.0, days * DAY], rtol=tolerance, atol=tolerance / 100.0,
                       ml=1, mu=1, mxstep=100_000)
        return found[-1].reshape(self.start.shape)

    def means(self, u):
        return u @ self.cell / self.thickness

    def slices(self, u, count):
        """Mean moisture of equal slices of one board, from straight lines between the points."""
        edges = np.linspace(0.0, self.thickness, count + 1)
        areas = np.concatenate([[0.0], np.cumsum(0.5 * (u[:-1] + u[1:]) * self.dx)])
        at = np.searchsorted(self.place, edges, side="right").clip(1, len(u) - 1) - 1
        into = edges - self.place[at]
        whole = areas[at] + into * (u[at] + 0.5 * into * (u[at + 1] - u[at]) / self.dx[at])
        return np.diff(whole) * count / self.thickness


def seconds_a_world(group, worlds):
    """How long LSODA takes for each of these worlds if it is as coarse as it may be."""
    boards = Boards(group, worlds, 21)
    begun = time.perf_counter()
    boards.follow(1e-4)
    return (time.perf_counter() - begun) / len(worlds)


def off(values):
    values = 100.0 * np.abs(np.asarray(values))
    return f"{np.sqrt(np.mean(values**2)):.3f} (95% under {np.quantile(values, 0.95):.3f}, most {values.max():.3f})"


def main():
    groups, times = ours()
    print("| finish | worlds | mean moisture off by, % rms | slices | faces | ours, 4,096 worlds | LSODA, a world | "
          "sixteen together, a world | ratio | together |")
    print("|---|---|---|---|---|---|---|---|---|---|")
    for group, took in zip(groups, times, strict=True):
        means, slices, faces = [], [], []
        for at in range(0, len(group["worlds"]), TOGETHER):
            worlds = group["worlds"][at:at + TOGETHER]
            boards = Boards(group, worlds, 31)
            each = boards.follow(1e-6)
            means.extend(np.array([world["mean"] for world in worlds]) - boards.means(each))
            for world, u in zip(worlds, each, strict=True):
                slices.extend(np.array(world["cells"]) - boards.slices(u, len(world["cells"])))
                # Humidity of air in balance with the faces, back to moisture; a face that lets nothing through has none.
                faces.extend(emc(group["celsius"][-1], h) / 100.0 - u[side]
                             for side, h in zip((0, -1), world["surface_humidity"], strict=True))
        alone = np.median([seconds_a_world(group, [world]) for world in group["worlds"][:24]])
        together = np.median([seconds_a_world(group, group["worlds"][at:at + TOGETHER]) for at in range(0, 64, TOGETHER)])
        ratios = [peer * took["worlds"] / took["seconds"] for peer in (alone, together)]
        print(f"| {group['coating']} | {len(means)} | {off(means)} | {off(slices)} | {off(faces)} | {1e3 * took['seconds']:.0f} ms "
              f"| {1e3 * alone:.1f} ms | {1e3 * together:.1f} ms | {ratios[0]:.0f} | {ratios[1]:.0f} |", flush=True)


if __name__ == "__main__":
    main()
