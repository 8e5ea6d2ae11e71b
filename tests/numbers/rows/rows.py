#!/usr/bin/env python3
"""Reference equilibria of a row of boards side by side, and of its tearing; writes rows.json.

What it checks
    A program's solver for a row of n boards on spring anchors, joined by bonds that pull and edges that can
    only push, and its event-driven tearing of the bonds as the boards narrow.

Model (per mm of board length; mm, N, so stiffnesses are N/mm per mm of length, contact forces N/mm)
    Board i narrows freely by s_i (negative: swells); share a_i shows at its left edge, b_i at its right edge
    (a_i + b_i = 1 here). Its anchor slips by d_i against the spring k_n[i].
    Opening of joint j, between boards j and j+1:
        delta_j = d_{j+1} - d_j + a_{j+1} s_{j+1} + b_j s_j.
    Contact: delta_j >= -c_j, c_j >= 0 the free gap at the start.
    A bonded joint has the spring k_s[j] on delta_j, both ways; a torn joint has none.
    Equilibrium: the minimum of sum k_n d^2/2 + sum_bonded k_s delta^2/2 subject to contact.
    contact[j] >= 0 is the multiplier of contact, the force with which the two edges push each other apart.

    Tearing: s(lambda) = lambda s, lambda from 0 to 1. A bonded joint tears for good as its delta_j reaches
    reach[j]. After a tear the row is solved again at the same lambda; if bonded joints are then over their
    limit, the one with the largest delta_j - reach[j] tears next, one at a time. Then lambda goes on.
    No row here cascades, and none can while reach > 0: the compliance of the openings, (W^-1 + K_s)^-1 with
    W = M K_n^-1 M' tridiagonal and an M-matrix, has no positive entry off its diagonal, so a tear lowers the
    opening of every other joint. A cascade in a program under test is therefore an error, ties aside.

Method
    The strictly convex quadratic programme is turned into a least-distance problem and solved with
    scipy.optimize.nnls (Lawson and Hanson), then polished by one dense linear solve on the active contacts.
    The conditions of optimality are checked (residual in "kkt_residual"), and the result is compared with
    scipy.optimize.minimize: SLSQP on each row ("slsqp_difference", largest difference in d, mm) and
    trust-constr on some ("trust_constr_difference").
    Tearing: lambda is scanned in 400 equal parts of what is left, then the first crossing is narrowed by
    bisection to 1e-13; no piecewise-linear shortcut is used. Rows are drawn again if the outcome hangs on a
    near tie: two joints reaching their limits within 1e-5 of lambda of each other, a cascade in which the
    joint most over its limit by difference is not the one most over by ratio, or in which the leader is less
    than 1e-4 mm ahead or over, or a bonded joint left within 1e-4 mm of its limit at lambda = 1.

How to run
    OMP_NUM_THREADS=1 python3 rows.py [output.json]      (seed fixed)
    The data were written with Python 3.11, numpy 2.4.6, scipy 1.17.1.

Output
    rows[]: n, s, a, b, k_n (per board), c, k_s, bonded (per joint) and d, delta, contact.
    tearing[]: the same inputs with reach (bonded = state at lambda 0), and events [{joint, lambda, cascade}] in
    order (cascade: tore at the lambda of the tear before it), final d, delta, contact, bonded.
"""
import json
import sys

import numpy as np
import scipy
from scipy.optimize import LinearConstraint, minimize, nnls


def parts(row, s, bonded):
    n = len(row["k_n"])
    m = np.zeros((n - 1, n))
    for j in range(n - 1):
        m[j, j], m[j, j + 1] = -1.0, 1.0
    g = row["a"][1:] * s[1:] + row["b"][:-1] * s[:-1]
    k = np.where(bonded, row["k_s"], 0.0)
    hess = np.diag(row["k_n"]) + m.T @ (k[:, None] * m)
    return m, g, k, hess, m.T @ (k * g)


def solve(row, s, bonded):
    """min d'Hd/2 + f'd subject to m d >= -c - g."""
    m, g, k, hess, f = parts(row, s, bonded)
    low = np.linalg.cholesky(hess)
    y0 = np.linalg.solve(low, f)                     # y = low' d + y0; minimise |y|
    gm = np.linalg.solve(low, m.T).T                 # gm (y - y0) >= -c - g
    h = -row["c"] - g + gm @ y0
    e = np.vstack([gm.T, h[None, :]])
    target = np.zeros(e.shape[0])
    target[-1] = 1.0
    z, _ = nnls(e, target, maxiter=1000)
    r = e @ z - target
    y = -r[:-1] / r[-1]
    d = np.linalg.solve(low.T, y - y0)
    active = z > 1e-12 * max(1.0, z.max(initial=0.0))
    for _ in range(50):                              # polish on the active contacts
        n, q = len(d), int(active.sum())
        ma = m[active]
        kkt = np.block([[hess, -ma.T], [ma, np.zeros((q, q))]])
        sol = np.linalg.solve(kkt, np.concatenate([-f, (-row["c"] - g)[active]]))
        d, contact = sol[:n], np.zeros(n - 1)
        contact[active] = sol[n:]
        slack = m @ d + g + row["c"]
        bad = (contact < -1e-11) | (slack < -1e-11)
        if not bad.any():
            break
        active = (active & ~(contact < -1e-11)) | (slack < -1e-11)
    else:
        raise RuntimeError("no active set")
    delta = m @ d + g
    kkt = max(np.abs(hess @ d + f - m.T @ contact).max(), max(0.0, -(delta + row["c"]).min()), max(0.0, -contact.min()),
              np.abs(contact * (delta + row["c"])).max())
    return d, delta, contact, float(kkt)


def cross_check(row, s, bonded, d, method):
    m, g, k, hess, f = parts(row, s, bonded)
    scale = 1.0 / np.diag(hess).max()
    fun, jac = lambda x: scale * (0.5 * x @ hess @ x + f @ x), lambda x: scale * (hess @ x + f)
    if method == "SLSQP":
        con = dict(type="ineq", fun=lambda x: m @ x + g + row["c"], jac=lambda x: m)
        x = np.zeros_like(d)
        for _ in range(4):
            x = minimize(fun, x, jac=jac, method="SLSQP", constraints=[con], options=dict(maxiter=2000, ftol=1e-18)).x
    else:
        con = LinearConstraint(m, -row["c"] - g, np.inf)
        x = minimize(fun, np.zeros_like(d), jac=jac, hess=lambda _: scale * hess, method="trust-constr", constraints=[con],
                     options=dict(maxiter=5000, gtol=1e-12, xtol=1e-12, barrier_tol=1e-12)).x
    return float(np.abs(x - d).max())


def draw(rng, n, kind):
    log = lambda lo, hi, size: np.round(np.exp(rng.uniform(np.log(lo), np.log(hi), size)), 4)
    a = np.round(rng.uniform(0.15, 0.85, n), 3)
    row = dict(a=a, b=1.0 - a)
    lo, hi = dict(mixed=(-1.0, 3.0), swell=(-1.0, 0.3), shrink=(0.0, 3.0), both=(-1.5, 2.0))[kind]
    row["s"] = np.round(rng.uniform(lo, hi, n), 3)
    row["k_n"] = log(0.05, 200, n) if rng.random() < 0.6 else np.full(n, float(log(0.05, 200, 1)[0]))
    row["k_s"] = log(0.05, 200, n - 1)
    row["c"] = np.where(rng.random(n - 1) < 0.35, 0.0, np.round(rng.uniform(0, 0.5, n - 1), 3))
    return row


def as_json(row):
    return {k: (v.tolist() if isinstance(v, np.ndarray) else v) for k, v in row.items()}


def equilibria(rng):
    out = []
    plan = [(n, kind, p) for n in range(2, 13) for kind, p in (("mixed", 0.5), ("swell", 0.5), ("shrink", 0.7))]
    plan += [(6, "mixed", 0.0), (8, "swell", 0.0), (12, "mixed", 1.0), (10, "swell", 1.0)]
    for i, (n, kind, p) in enumerate(plan):
        row = draw(rng, n, kind)
        bonded = rng.random(n - 1) < p
        d, delta, contact, kkt = solve(row, row["s"], bonded)
        extra = dict(trust_constr_difference=cross_check(row, row["s"], bonded, d, "trust-constr")) if i % 4 == 0 else {}
        out.append(dict(n=n, kind=kind, **as_json(row), bonded=bonded.tolist(), d=d.tolist(), delta=delta.tolist(), contact=contact.tolist(),
                        kkt_residual=kkt, slsqp_difference=cross_check(row, row["s"], bonded, d, "SLSQP"), **extra))
    return out


class NearTie(Exception):
    pass


def over_at(row, lam, bonded):
    d, delta, contact, kkt = solve(row, lam * row["s"], bonded)
    return np.where(bonded, delta - row["reach"], -np.inf)


def tear(row):
    n = len(row["k_n"])
    bonded, lam, events = np.ones(n - 1, bool) & row["bonded0"], 0.0, []
    start = bonded.copy()
    while bonded.any():
        lo, hi = lam, None
        for x in np.linspace(lam, 1.0, 401)[1:]:
            if over_at(row, x, bonded).max() >= 0.0:
                hi = x
                break
            lo = x
        if hi is None:
            break
        while hi - lo > 1e-13:
            mid = 0.5 * (lo + hi)
            if mid in (lo, hi):
                break
            lo, hi = (lo, mid) if over_at(row, mid, bonded).max() >= 0.0 else (mid, hi)
        j, lam = int(np.argmax(over_at(row, hi, bonded))), hi
        if min(lam + 1e-5, 1.0) > lam:
            ahead = over_at(row, min(lam + 1e-5, 1.0), bonded)
            ahead[j] = -np.inf
            if ahead.max() >= 0.0:
                raise NearTie
        if events and lam - events[-1]["lambda"] < 1e-5:
            raise NearTie
        bonded[j] = False
        events.append(dict(joint=j, **{"lambda": lam}, cascade=False))
        while bonded.any():
            over = over_at(row, lam, bonded)
            if (np.abs(over[bonded]) < 1e-4).any():
                raise NearTie
            if over.max() < 0.0:
                break
            j = int(np.argmax(over))
            ratio = np.where(bonded, over / row["reach"], -np.inf)
            ranked = np.sort(over[bonded])
            if int(np.argmax(ratio)) != j or (len(ranked) > 1 and ranked[-1] - ranked[-2] < 1e-4):
                raise NearTie
            bonded[j] = False
            events.append(dict(joint=j, **{"lambda": lam}, cascade=True))
    d, delta, contact, kkt = solve(row, row["s"], bonded)
    if bonded.any() and (np.abs((delta - row["reach"])[bonded]) < 1e-4).any():
        raise NearTie
    return start, bonded, events, d, delta, contact, kkt


def tearing(rng):
    out, ties = [], 0
    for i, n in enumerate((4, 4, 5, 6, 6, 7, 8, 8, 9, 10, 11, 12, 12, 12, 5, 7, 9, 12)):
        while True:
            row = draw(rng, n, "both" if i >= 14 else "mixed" if i % 3 == 1 else "shrink")   # from 14 on: contact as well
            if i % 2 == 0:                            # anchors softer than bonds: tearing runs on
                row["k_n"] = np.round(row["k_n"] ** 0.5, 4)
                row["k_s"] = np.round(5 + row["k_s"], 4)
            row["reach"] = np.round(rng.uniform(0.1, 1.2, n - 1), 3)
            row["bonded0"] = rng.random(n - 1) < (0.8 if i % 4 == 3 else 1.0)
            try:
                start, bonded, events, d, delta, contact, kkt = tear(row)
            except NearTie:
                ties += 1
                continue
            if len(events) >= max(2, n // 3) and (i < 14 or (contact > 1e-3).any()):
                break
        row.pop("bonded0")
        out.append(dict(n=n, **as_json(row), bonded=start.tolist(), events=events, final=dict(bonded=bonded.tolist(), d=d.tolist(), delta=delta.tolist(),
                        contact=contact.tolist(), kkt_residual=kkt)))
    return out, ties


def main():
    target = sys.argv[1] if len(sys.argv) > 1 else "rows.json"
    rng = np.random.default_rng(20240611)
    rows = equilibria(rng)
    torn, ties = tearing(rng)
    head = dict(about="rows of boards, see rows.py", units=dict(length="mm", stiffness="N/mm per mm of length", force="N per mm of length"),
                written_with=dict(numpy=np.__version__, scipy=scipy.__version__), rows=rows, tearing=torn)
    with open(target, "w") as f:
        json.dump(head, f, indent=1)
        f.write("\n")
    print(f"{len(rows)} rows, {sum(any(c > 0 for c in r['contact']) for r in rows)} with contact; largest optimality residual "
          f"{max(r['kkt_residual'] for r in rows):.1e}, difference from SLSQP {max(r['slsqp_difference'] for r in rows):.1e}, "
          f"from trust-constr {max(r.get('trust_constr_difference', 0.0) for r in rows):.1e} mm")
    print(f"{len(torn)} tearing rows, {sum(len(r['events']) for r in torn)} tears, {sum(e['cascade'] for r in torn for e in r['events'])} in cascade, "
          f"{ties} draws with a near tie dropped, largest optimality residual {max(r['final']['kkt_residual'] for r in torn):.1e}")


if __name__ == "__main__":
    main()
