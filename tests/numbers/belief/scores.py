"""Scores and their doubt."""

from functools import cache
from math import erf, sqrt

import numpy as np

FIFTH, NINETY_FIFTH = 0.05, 0.95
NORMAL_95 = 1.6448536
"""The 95th percentile of a unit normal."""


def crps(truth, low, middle, high):
    """Continuous ranked probability score, mm, from 199 quantiles (twice the mean pinball loss)."""
    if low is None or high is None:
        return abs(truth - middle)
    at = np.arange(1, 200) / 200.0
    z = normal_quantiles()
    spread = np.where(z < 0, max(middle - low, 1e-6), max(high - middle, 1e-6)) / NORMAL_95
    quantiles = np.maximum(middle + z * spread, 0.0)
    off = truth - quantiles
    return float(2.0 * np.mean(np.where(off >= 0, at * off, (at - 1.0) * off)))


@cache
def normal_quantiles():
    """The 199 quantiles of a unit normal, by bisection of the error function."""
    out = []
    for at in np.arange(1, 200) / 200.0:
        low, high = -6.0, 6.0
        for _ in range(60):
            middle = (low + high) / 2.0
            low, high = (middle, high) if 0.5 * (1.0 + erf(middle / sqrt(2.0))) < at else (low, middle)
        out.append(low)
    return np.array(out)


def rms(values):
    return float(np.sqrt(np.mean(np.square(values)))) if len(values) else float("nan")


def bootstrap(jobs, statistic, times=1000):
    """Nine-in-ten interval of a statistic of record numbers, drawing whole jobs with replacement."""
    rng = np.random.default_rng(1)
    members = {}
    for at, job in enumerate(jobs):
        members.setdefault(job, []).append(at)
    groups = [np.array(group) for group in members.values()]
    if not groups:
        return float("nan"), float("nan")
    values = [statistic(np.concatenate([groups[k] for k in rng.integers(len(groups), size=len(groups))]))
              for _ in range(times)]
    return tuple(np.percentile(values, [100 * FIFTH, 100 * NINETY_FIFTH]))


def table(head, rows):
    print("| " + " | ".join(head) + " |\n|" + "---|" * len(head))
    for row in rows:
        print("| " + " | ".join(str(cell) for cell in row) + " |")
    print()


def less(jobs, mine, theirs, statistic):
    """How much smaller or larger a statistic of mine is, with its nine-in-ten interval, as text."""
    low, high = bootstrap(jobs, lambda at: statistic(mine[at]) - statistic(theirs[at]))
    return f"{statistic(mine) - statistic(theirs):+.3f} ({low:+.3f} to {high:+.3f})"


def share(jobs, hits):
    """A share of hits, with its nine-in-ten interval, as text."""
    hits = np.asarray(hits, float)
    low, high = bootstrap(jobs, lambda at: hits[at].mean())
    return f"{100 * hits.mean():.1f} % ({100 * low:.0f} to {100 * high:.0f})"
