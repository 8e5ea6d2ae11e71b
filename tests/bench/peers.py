#!/usr/bin/env python3
"""Times numpy/scipy/shapely on the work of three inner loops of a wooden-board program; one JSON line per peer.

What it times (wall time, best of N, one thread, imports and table building excluded unless noted)
    Drying: two years of a board's moisture on 20 nodes (vertex-centred, uniform), the model of drying.py case 1
    (L = 0.019 m, rho0 = 380 kg/m3, latex face 5 perm, bare open back, start 0.17 kg/kg on day 240).
      drying-bdf            solve_ivp BDF, rtol 1e-4, atol 1e-6, vectorized right side, tridiagonal jac_sparsity,
                            output each 6 h; air continuous in time. scipy's BDF takes no banded Jacobian.
      drying-lsoda          solve_ivp LSODA with banded Jacobian, otherwise the same.
      drying-euler          2920 backward-Euler steps of 6 h, scipy.linalg.solve_banded per step, D and the slope of
                            the isotherm lagged, air held per step at its mid-step value.
    The isotherm's inverse is a bilinear look-up table built beforehand for all three. "mean_end" and
    "worst_mean_difference" (kg/kg, against ../numbers/drying/drying.json) show what the time bought.
    The adaptive solvers choose their own steps, mostly far longer than 6 h: they are peers for the answer, not for
    the count of steps.

    Monte Carlo: 10 000 trials x 2 000 joints in vectorized numpy. Per trial six normals make a common shift c_t of
    the failure score and e_t of the log opening; per joint and trial one normal z. Joint j fails if
    b_j + c_t + sigma_j z > 0; failing length per trial is the sum of len_j over failing joints, the largest
    opening max exp(m_j + e_t + tau_j z) over failing joints. Counted: trials with failing length > limit or
    largest opening > eye limit.
      monte-carlo-f64       doubles; exp on every failing joint only through the largest exponent (exp is monotone)
      monte-carlo-f64-exp   doubles; exp taken for every joint and trial, the literal reading
      monte-carlo-f32       singles
    Normals come from SFC64, the fastest of numpy's generators here.
    Chunks of trials are timed from 50 to 500 and the best taken; memory stays below 0.2 GB.

    Layout: the surfaces of ../numbers/layout/oracle.py laid out by shapely as that script does it: regions, courses, joints and
    what each ends against, without printing.

How to run
    OMP_NUM_THREADS=1 python3 tests/bench/peers.py [--repeat 3] [--no-bench]
    Runs `cargo bench` first, takes the means of its benchmarks `drying` and `trials`, then times the peers and prints
    the ratios (peer / ours). --no-bench takes the figures of the last `cargo bench`. Ours runs on all cores, the peers
    on one.
"""
import argparse
import importlib.util
import json
import math
import os
import pathlib
import resource
import subprocess
import time

os.environ.setdefault("OMP_NUM_THREADS", "1")
import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.linalg import solve_banded
from scipy.sparse import diags

R_GAS, PERM, DAY, STEP, START = 8.314462618, 5.72135e-11, 86400.0, 21600.0, 240.0
L, RHO0, U0, NODES = 0.019, 380.0, 0.17, 20
KF, KB = 1.0 / (1.0 / 2.0e-8 + 1.0 / (5.0 * PERM)), 1.0e-8
DX = L / (NODES - 1)
CELL = np.full(NODES, DX)
CELL[0] = CELL[-1] = DX / 2
T_LO, T_STEP, U_LO, U_STEP = 17.0, 0.5, 0.0, 0.0005


def emc(t, h):
    w = 349.0 + 1.29 * t + 0.0135 * t * t
    k = 0.805 + 0.000736 * t - 0.00000273 * t * t
    k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
    k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
    kh = k * h
    one, two = k1 * kh, k1 * k2 * kh * kh
    return 1800.0 / w * (kh / (1.0 - kh) + (one + 2.0 * two) / (1.0 + one + two))


def psat(t):
    k = t + 273.15
    return math.exp(-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3 + 6.5459673 * math.log(k))


def table():
    h = np.linspace(0, 1, 4001)
    u = U_LO + U_STEP * np.arange(521)
    return [np.interp(u, emc(t, h) / 100, h).tolist() for t in T_LO + T_STEP * np.arange(13)]


TABLE = table()


def isotherm(u, t):
    """h and dh/du at one u and t, bilinear in the table."""
    a = (t - T_LO) / T_STEP
    i = int(a)
    a -= i
    b = min(max((u - U_LO) / U_STEP, 0.0), 519.999)
    j = int(b)
    b -= j
    p, q = TABLE[i], TABLE[i + 1]
    lo, hi = (1 - a) * p[j] + a * q[j], (1 - a) * p[j + 1] + a * q[j + 1]
    return lo + b * (hi - lo), (hi - lo) / U_STEP


def air(d):
    return 20.0 + 2.5 * math.sin(2 * math.pi * (d - 110.0) / 365.0), 0.42 + 0.14 * math.sin(2 * math.pi * (d - 130.0) / 365.0)


def diffusivity(u, t):
    z = (1.0 / (t + 273.15) - 1.0 / 293.15) / R_GAS
    return 8e-11 * np.exp((4.0 + 29000.0 * z) * u - 38500.0 * z)


def rate(s, u):
    """Right side for a vector of nodes, or a matrix with states in columns."""
    t, rh = air(START + s / DAY)
    d = diffusivity(u, t)
    q = 0.5 * (d[1:] + d[:-1]) * (u[1:] - u[:-1]) / DX
    p = psat(t) / RHO0
    out = np.empty_like(u)
    out[1:-1] = (q[1:] - q[:-1]) / DX
    if u.ndim == 1:
        hf, hb = isotherm(u[0], t)[0], isotherm(u[-1], t)[0]
    else:
        hf, hb = (np.array([isotherm(v, t)[0] for v in row]) for row in (u[0], u[-1]))
    out[0] = (q[0] - KF * p * (hf - rh)) / CELL[0]
    out[-1] = (-q[-1] - KB * p * (hb - rh)) / CELL[-1]
    return out


def adaptive(method):
    extra = dict(lband=1, uband=1) if method == "LSODA" else dict(vectorized=True, jac_sparsity=diags([1.0, 1.0, 1.0], [-1, 0, 1], shape=(NODES, NODES)))
    times = STEP * np.arange(0, 2921)
    sol = solve_ivp(rate, (0.0, 730 * DAY), np.full(NODES, U0), method=method, rtol=1e-4, atol=1e-6, t_eval=times, **extra)
    assert sol.success
    return CELL @ sol.y / L, dict(nfev=sol.nfev)


def euler():
    u = np.full(NODES, U0)
    band = np.zeros((3, NODES))
    means = np.empty(2921)
    means[0] = U0
    for k in range(2920):
        t, rh = air(START + (k + 0.5) * STEP / DAY)
        d = diffusivity(u, t)
        g = (0.5 * STEP / DX) * (d[1:] + d[:-1])
        band[0, 1:] = -g
        band[2, :-1] = -g
        band[1] = CELL
        band[1, :-1] += g
        band[1, 1:] += g
        right = CELL * u
        p = STEP * psat(t) / RHO0
        for node, k_face in ((0, KF), (-1, KB)):
            h, slope = isotherm(float(u[node]), t)
            band[1, node] += k_face * p * slope
            right[node] += k_face * p * (rh - h + slope * u[node])
        u = solve_banded((1, 1), band, right, overwrite_b=True, check_finite=False)
        means[k + 1] = CELL @ u / L
    return means, dict(steps=2920)


def monte_carlo(kind, chunk, trials=10_000, joints=2_000, seed=7):
    real = np.float32 if kind == "f32" else np.float64
    rng = np.random.Generator(np.random.SFC64(seed))
    fixed = np.random.default_rng(1)
    b = fixed.normal(-2.5, 0.5, joints).astype(real)
    sigma = fixed.uniform(0.5, 0.9, joints).astype(real)
    m = fixed.normal(-1.0, 0.2, joints).astype(real)
    tau = fixed.uniform(0.2, 0.4, joints).astype(real)
    length = fixed.uniform(0.5, 3.0, joints).astype(real)
    shift, stretch = np.array([0.3, 0.25, 0.2, 0.15, 0.1, 0.1]), np.array([0.05, 0.1, 0.15, 0.2, 0.1, 0.05])
    limit, eye, count = real(0.02 * length.sum()), 2.0, 0
    z = np.empty((chunk, joints), real)
    score = np.empty_like(z)
    for at in range(0, trials, chunk):
        n = min(chunk, trials - at)
        common = rng.standard_normal((n, 6))
        c, e = (common @ shift).astype(real)[:, None], (common @ stretch).astype(real)
        zz, sc = z[:n], score[:n]
        rng.standard_normal(out=zz, dtype=real)
        np.multiply(zz, sigma, out=sc)
        sc += b
        sc += c
        fails = sc > 0
        failing = fails @ length
        np.multiply(zz, tau, out=sc)
        sc += m
        if kind == "f64-exp":
            sc += e[:, None]
            np.exp(sc, out=sc)
            largest = np.max(sc, axis=1, where=fails, initial=0.0)
        else:
            largest = np.exp(np.max(sc, axis=1, where=fails, initial=-np.inf) + e)
        count += int(np.count_nonzero((failing > limit) | (largest > eye)))
    return count


def best_of(n, work):
    best, result = math.inf, None
    for _ in range(n):
        begun = time.perf_counter()
        result = work()
        best = min(best, time.perf_counter() - begun)
    return best, result


def our_seconds(run):
    """Means of our benchmarks in seconds, by the name that the peers start with."""
    if run:
        subprocess.run(["cargo", "bench", "--", "^(drying|trials|layout)$"], check=True)
    about = subprocess.run(["cargo", "metadata", "--no-deps", "--format-version", "1"], check=True, capture_output=True)
    criterion = pathlib.Path(json.loads(about.stdout)["target_directory"]) / "criterion"
    mean = lambda name: json.loads((criterion / name / "new" / "estimates.json").read_text())["mean"]["point_estimate"]
    return {"drying": 1e-9 * mean("drying"), "monte-carlo": 1e-9 * mean("trials"), "layout": 1e-9 * mean("layout")}


def layout_oracle():
    """The script beside the layout's tests, as a module."""
    path = pathlib.Path(__file__).resolve().parent.parent / "numbers" / "layout" / "oracle.py"
    spec = importlib.util.spec_from_file_location("layout_oracle", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def main():
    args = argparse.ArgumentParser(description="times numpy and scipy peers; see the docstring")
    args.add_argument("--no-bench", action="store_true", help="take the figures of the last cargo bench")
    args.add_argument("--repeat", type=int, default=3)
    args = args.parse_args()
    ours = our_seconds(run=not args.no_bench)
    beside, reference = pathlib.Path(__file__).resolve().parent.parent / "numbers" / "drying" / "drying.json", None
    if beside.exists():
        reference = json.loads(beside.read_text())["cases"][0]["out"]
    lines = []

    def report(name, seconds, **more):
        lines.append((name, seconds))
        print(json.dumps(dict(name=name, seconds=round(seconds, 6), repeat=args.repeat, **more, numpy=np.__version__, scipy=scipy.__version__)), flush=True)

    for name, work in (("drying-bdf", lambda: adaptive("BDF")), ("drying-lsoda", lambda: adaptive("LSODA")), ("drying-euler", euler)):
        seconds, (means, more) = best_of(args.repeat, work)
        if reference:
            more["worst_mean_difference"] = max(abs(r["mean"] - means[4 * r["day"]]) for r in reference)
        report(name, seconds, mean_end=float(means[-1]), **more)
    for kind in ("f64", "f64-exp", "f32"):
        tried = {chunk: best_of(args.repeat, lambda: monte_carlo(kind, chunk)) for chunk in (50, 100, 250, 500)}
        chunk = min(tried, key=lambda c: tried[c][0])
        report(f"monte-carlo-{kind}", tried[chunk][0], chunk=chunk, count=tried[chunk][1])
    oracle = layout_oracle()
    surfaces = oracle.surfaces()
    seconds, _ = best_of(args.repeat, lambda: [oracle.expected(surface) for surface in surfaces])
    report("layout-shapely", seconds, surfaces=len(surfaces))
    print(json.dumps(dict(peak_memory_mb=resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024)))
    if ours:
        print(f"{'peer':<22}{'peer, s':>10}{'ours, s':>12}{'peer/ours':>11}")
        for name, seconds in lines:
            for own, value in ours.items():
                if name == own or name.startswith(own + "-"):
                    print(f"{name:<22}{seconds:>10.4f}{value:>12.6f}{seconds / value:>11.1f}")


if __name__ == "__main__":
    main()
