#!/usr/bin/env python3
"""Reference cutting lists; writes cutting.json.

What it checks
    A program's cutting list (one-dimensional cutting stock with several stock lengths, any number of each): its
    price against the exact optimum of small sets and against a lower bound of large ones.

Model (lengths in metres in the file, in whole units of 0.1 mm here, so that every comparison is exact)
    A piece is cut to the next whole millimetre, never shorter. A board of length L has the usable length
    L * (1 - defects) - end_trim. Pieces l1..ln fit it if l1 + .. + ln + (n - 1) * kerf <= usable: the last cut
    may fall on the end. Wanted: the boards of least total price that give every piece.

Method
    small: every maximal pattern of every stock length is enumerated, counts limited to what is wanted, and the
        integer programme min price x, A x >= wanted is solved to proven optimality (gap 0) by
        scipy.optimize.milp (HiGHS). The price is recomputed from the rounded solution, which is checked.
    large: column generation; scipy.optimize.linprog (HiGHS) solves the restricted problem, and dynamic
        programming over every 0.1 mm, counts limited to what is wanted, finds the pattern worth most of each
        stock length. The bound is wanted . duals / max(1, most worth / price), which holds for any duals >= 0.

How to run
    python3 cutting.py [output.json]       (seed fixed; about a minute)
    The data were written with Python 3.11, numpy 2.4.6, scipy 1.17.1.

Output
    small[], large[]: name, pieces [[m, count]], stock [[m, cents]], kerf, end_trim, defects; small with optimum
    (cents), large with bound (cents).
"""
import json
import math
import random
import sys
import time
from fractions import Fraction

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, linprog, milp

FOOT = Fraction(3048, 10000)


def units(metres):
    """A decimal of metres in units of 0.1 mm, exactly."""
    return Fraction(str(metres)) * 10000


def problem(case):
    """Widths (with kerf) and counts, longest first, and (room with kerf, price) of each stock length."""
    kerf = units(case["kerf"])
    assert kerf.denominator == 1
    wanted = {}
    for metres, count in case["pieces"]:
        width = math.ceil(units(metres) / 10) * 10 + int(kerf)
        wanted[width] = wanted.get(width, 0) + count
    usable = lambda metres: units(metres) * (1 - Fraction(str(case["defects"]))) - units(case["end_trim"])
    stock = [(math.floor(usable(metres)) + int(kerf), price) for metres, price in case["stock"]]
    widths = sorted(wanted, reverse=True)
    return widths, [wanted[w] for w in widths], stock


def maximal_patterns(widths, counts, room, most):
    """All count vectors to which no further piece can be added; stops beyond `most`."""
    found, counted = [], [0] * len(widths)

    def go(at, left):
        if len(found) > most:
            return
        if at == len(widths):
            if not any(counted[i] < counts[i] and widths[i] <= left for i in range(at)):
                found.append(tuple(counted))
            return
        for n in range(min(counts[at], left // widths[at]), -1, -1):
            counted[at] = n
            go(at + 1, left - n * widths[at])
        counted[at] = 0

    go(0, room)
    return found


def optimum(case, most=60000):
    """The exact optimum in cents, or None if there are too many patterns or branches."""
    widths, counts, stock = problem(case)
    cheapest = {}
    for room, price in stock:
        for pattern in maximal_patterns(widths, counts, room, most):
            if any(pattern):
                cheapest[pattern] = min(price, cheapest.get(pattern, price))
        if len(cheapest) > most:
            return None
    a = np.array(list(cheapest), dtype=float).T
    c = np.array(list(cheapest.values()), dtype=float)
    result = milp(c, constraints=LinearConstraint(a, np.array(counts, float), np.inf), integrality=np.ones(len(c)),
                  bounds=Bounds(0, np.inf), options=dict(mip_rel_gap=0.0, node_limit=5000))
    if result.status != 0:
        return None
    x = np.round(result.x)
    assert (a @ x >= np.array(counts)).all() and abs(c @ x - result.fun) < 1e-4 * result.fun
    assert result.mip_dual_bound > c @ x - 0.5
    return int(c @ x)


def best_patterns(widths, counts, duals, stock):
    """For each stock length the pattern worth most, by dynamic programming over every unit of width."""
    size = max(room for room, _ in stock) + 1
    value, parts = np.zeros(size), []
    for i, (w, n, u) in enumerate(zip(widths, counts, duals)):
        n = min(n, (size - 1) // w)
        part = 1
        while n > 0 and u > 0:                       # counts split into 1, 2, 4, .., rest
            part = min(part, n)
            n -= part
            step = part * w
            if step < size:
                better = np.zeros(size, dtype=bool)
                trial = value[:-step] + part * u
                better[step:] = trial > value[step:] + 1e-12
                value[step:] = np.where(better[step:], trial, value[step:])
                parts.append((i, part, better))
            part *= 2
    patterns = []
    for room, price in stock:
        counted, left = [0] * len(widths), room
        for i, part, better in reversed(parts):
            if better[left]:
                counted[i] += part
                left -= part * widths[i]
        patterns.append((value[room], price, counted))
    return patterns


def lower_bound(case):
    widths, counts, stock = problem(case)
    wanted = np.array(counts, float)
    columns, prices = [], []
    for i, w in enumerate(widths):
        price, n = min(((p, min(room // w, counts[i])) for room, p in stock if room >= w), key=lambda t: t[0] / t[1])
        columns.append([n if j == i else 0 for j in range(len(widths))])
        prices.append(price)
    while True:
        result = linprog(prices, A_ub=-np.array(columns, float).T, b_ub=-wanted, method="highs")
        assert result.status == 0
        duals = np.maximum(-result.ineqlin.marginals, 0.0)
        patterns = best_patterns(widths, counts, duals, stock)
        most = max(value / price for value, price, _ in patterns)
        if most <= 1.0 + 1e-7:
            return float(wanted @ duals / max(1.0, most))
        for value, price, counted in patterns:
            if value > price * (1.0 + 1e-7):
                columns.append(counted)
                prices.append(price)


def stock_of(rng, feet):
    """Boards priced about by the foot, the longer ones a little dearer by the foot or cheaper."""
    by_foot = rng.uniform(90, 320)
    tilt = rng.uniform(-0.02, 0.03)
    price = lambda f: round(f * by_foot * (1 + tilt * (f - 8) / 2 + rng.uniform(-0.02, 0.02)))
    return [[float(f * FOOT), price(f)] for f in feet]


def rules_of(rng):
    return dict(kerf=rng.choice([0.0, 0.0016, 0.0025, 0.0032]), end_trim=rng.choice([0.0, 0.01, 0.025]),
                defects=rng.choice([0.0, 0.0, 0.05, 0.08]))


def case_of(rng, name, pieces, kinds, least, longest, decimals):
    """Random lengths of three sorts: spread evenly, in a series as of a diagonal, and a few that repeat."""
    feet = rng.choice([[8, 10, 12, 14, 16], [8, 10, 12, 14, 16], [8, 12, 16], [10, 16], [12], [8, 10, 12]])
    rules = rules_of(rng)
    case = dict(name=name, pieces=[], stock=stock_of(rng, feet), **rules)
    usable = float(feet[-1] * FOOT) * (1 - rules["defects"]) - rules["end_trim"]
    top = min(longest, math.floor(usable * 1000) / 1000)
    sort = rng.choice(["even", "series", "few long"])
    if sort == "series":
        step = (top - least) / kinds
        lengths = [least + step * (i + rng.uniform(0.3, 0.7)) for i in range(kinds)]
    elif sort == "few long":
        lengths = [top * rng.uniform(0.7, 1.0) for _ in range(max(1, kinds // 4))]
        lengths += [rng.uniform(least, top * 0.6) for _ in range(kinds - len(lengths))]
    else:
        lengths = [rng.uniform(least, top) for _ in range(kinds)]
    lengths = [min(round(l, decimals), top) for l in lengths]
    counts = [1] * kinds
    for _ in range(pieces - kinds):
        counts[rng.randrange(kinds)] += 1
    case["pieces"] = [[l, n] for l, n in zip(lengths, counts)]
    return case


def main():
    rng = random.Random(1961)
    small, large = [], []
    while len(small) < 32:
        pieces = [6, 10, 14, 20, 28, 36, 50, 80][len(small) % 8]
        kinds = min(pieces, rng.choice([4, 6, 8, 10, 12]))
        case = case_of(rng, f"small {len(small) + 1}", pieces, kinds, rng.choice([0.3, 0.5, 0.8]),
                       rng.choice([5.0, 5.0, 2.4, 1.5]), rng.choice([2, 3, 4]))
        case["optimum"] = optimum(case)
        if case["optimum"] is not None:
            small.append(case)
            print(case["name"], pieces, kinds, len(case["stock"]), case["optimum"], flush=True)
    for pieces, kinds in [(100, 20), (200, 40), (200, 60), (300, 30), (400, 80), (600, 60), (800, 120), (1000, 100),
                          (1500, 150), (2000, 200), (2000, 25), (2000, 200)]:
        start = time.time()
        case = case_of(rng, f"large {len(large) + 1}", pieces, kinds, 0.3, rng.choice([5.0, 5.0, 2.4]), 3)
        case["bound"] = lower_bound(case)
        large.append(case)
        print(case["name"], pieces, kinds, len(case["stock"]), case["bound"], round(time.time() - start, 1), flush=True)
    with open(sys.argv[1] if len(sys.argv) > 1 else "cutting.json", "w") as file:
        lines = lambda cases: ",\n".join(json.dumps(case) for case in cases)
        file.write('{"small": [\n' + lines(small) + '\n],\n"large": [\n' + lines(large) + "\n]}\n")


if __name__ == "__main__":
    main()
