#!/usr/bin/env python3
"""Reference solutions for moisture moving through the thickness of a board; writes drying.json.

What it checks
    A program's drying step: one-dimensional nonlinear diffusion with vapour exchange at two faces, over two
    years of seasonal indoor air.

Model (SI units; u is moisture content in kg of water per kg of dry wood)
    du/dt = d/dx( D(u,T) du/dx ),  0 < x < L;  x = 0 is the room face, x = L the back.
    D(u,T) = 8e-11 exp(4u) exp( -(E/R) (1/T_K - 1/293.15) )  m2/s,
             E = 38500 - 29000 u  J/mol,  R = 8.314462618 J/(mol K),  T_K = T + 273.15.
    Flux out of a face, kg/(m2 s): K (h(u_s,T) psat(T) - rh psat(T)), equal to rho0 D times the gradient of u
        towards the inside; u_s is the value of u AT the face, rho0 the dry density.
    1/K = 1/beta + sum over paints 1/(perm * 5.72135e-11), kg/(s m2 Pa); beta = 2.0e-8 at the room face and
        1.0e-8 at the back; a tight back has K = 0.
    h(u,T): inverse in h of the Wood Handbook equilibrium equation 4-5 (Celsius coefficients), u = emc/100.
    psat(T): ASHRAE Fundamentals saturation pressure over water.
    Air, with d the days since 1 January:  T  = 20 + 2.5 sin(2 pi (d - 110)/365)  degrees C,
                                           rh = 0.42 + 0.14 sin(2 pi (d - 130)/365).
        Both are held over each 6 h step at their mid-step value. Start at d = 240; 730 days.

Method
    Delivered values: Chebyshev collocation on 33 points (the end points are the faces, so u_face and u_back are
    unknowns of the scheme), the vapour balance put in as the flux at the end points. In time:
    scipy.integrate.solve_ivp, LSODA, rtol 1e-9, atol 1e-11, exact Jacobian, started afresh at each 6 h step so that no step
    runs across a jump of the air. The mean is the Clenshaw-Curtis integral. The inverse isotherm is a bicubic
    spline in (u, T) through brentq roots (its largest error against brentq is in the output).
    Check on other ground: vertex-centred finite volumes, 241 nodes graded towards both faces, D of a link by
    Simpson's mean over u, LSODA with banded Jacobian at rtol 1e-7; conservative, of second order.

Error estimate (per case, in "error_estimate"; kg/kg, largest over the output days)
    points              33 against 25 collocation points
    time                rtol 1e-9 against rtol 1e-7
    volumes_241, _121   against the finite volumes on 241 and 121 nodes; their ratio shows the order
    volumes_richardson  against (4 v241 - v121)/3
    hold                air held over 6 h against the air continuous in time (33 points, BDF at rtol 1e-9). This
                        is a difference of models, not an error: it is above 1e-5 at bare faces, which is why
                        the delivered values hold the air.
    total               points + time + volumes_richardson: a cautious sum

How to run
    OMP_NUM_THREADS=1 python3 drying.py [output.json]
    The data were written with Python 3.11, numpy 2.4.6, scipy 1.17.1, in six minutes on one thread.

Output
    cases[i].out[k]: day after start, mean u, u_face (x = 0), u_back (x = L), and "profile": u at x/L = 0,
    0.05, ..., 1 (the collocation polynomial). All u in kg/kg.
"""
import json
import sys
import time

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.interpolate import BarycentricInterpolator, RectBivariateSpline
from scipy.optimize import brentq

R_GAS = 8.314462618
PERM = 5.72135e-11
BETA_FACE, BETA_BACK = 2.0e-8, 1.0e-8
DAY, START_DAY, DAYS, STEP = 86400.0, 240.0, 730, 21600.0
OUT_DAYS = [1, 3, 7, 14, 30, 60, 120, 240, 365, 540, 730]

CASES = [
    dict(name="latex face 5 perm, bare open back", L=0.019, rho0=380.0, face_perms=[5.0], back_perms=[], back_tight=False, u0=0.17),
    dict(name="latex face 5 perm, tight back", L=0.019, rho0=380.0, face_perms=[5.0], back_perms=[], back_tight=True, u0=0.17),
    dict(name="oil face 0.8 perm, tight back", L=0.019, rho0=380.0, face_perms=[0.8], back_perms=[], back_tight=True, u0=0.17),
    dict(name="latex face 5 perm, primed open back 8 perm", L=0.016, rho0=430.0, face_perms=[5.0], back_perms=[8.0], back_tight=False, u0=0.12),
    dict(name="bare both sides", L=0.019, rho0=380.0, face_perms=[], back_perms=[], back_tight=False, u0=0.25),
]


def emc(t, h):
    """Wood Handbook eq. 4-5, per cent, t in degrees C, h in 0..1."""
    w = 349.0 + 1.29 * t + 0.0135 * t * t
    k = 0.805 + 0.000736 * t - 0.00000273 * t * t
    k1 = 6.27 - 0.00938 * t - 0.000303 * t * t
    k2 = 1.91 + 0.0407 * t - 0.000293 * t * t
    kh = k * h
    one, two = k1 * kh, k1 * k2 * kh * kh
    return 1800.0 / w * (kh / (1.0 - kh) + (one + 2.0 * two) / (1.0 + one + two))


def psat(t):
    """ASHRAE saturation pressure over water, Pa, t in degrees C above 0.01."""
    k = t + 273.15
    return np.exp(-5.8002206e3 / k + 1.3914993 - 4.8640239e-2 * k + 4.1764768e-5 * k**2 - 1.4452093e-8 * k**3 + 6.5459673 * np.log(k))


def h_root(u, t):
    return brentq(lambda h: emc(t, h) - 100.0 * u, 0.0, 1.0, xtol=1e-14, rtol=1e-14)


def build_isotherm():
    us, ts = np.linspace(0.04, 0.26, 401), np.linspace(17.4, 22.6, 27)
    table = np.array([[h_root(u, t) for t in ts] for u in us])
    spline = RectBivariateSpline(us, ts, table, kx=3, ky=3, s=0)
    rng = np.random.default_rng(1)
    pu, pt = rng.uniform(0.045, 0.255, 400), rng.uniform(17.5, 22.5, 400)
    err = max(abs(spline.ev(u, t) - h_root(u, t)) for u, t in zip(pu, pt))
    return spline, float(err)


SPLINE, SPLINE_ERROR = build_isotherm()


def temperature(d):
    return 20.0 + 2.5 * np.sin(2 * np.pi * (d - 110.0) / 365.0)


def humidity(d):
    return 0.42 + 0.14 * np.sin(2 * np.pi * (d - 130.0) / 365.0)


def diffusivity(u, t):
    return 8e-11 * np.exp(4.0 * u - (38500.0 - 29000.0 * u) / R_GAS * (1.0 / (t + 273.15) - 1.0 / 293.15))


def conductances(case):
    face = 1.0 / (1.0 / BETA_FACE + sum(1.0 / (p * PERM) for p in case["face_perms"]))
    back = 0.0 if case["back_tight"] else 1.0 / (1.0 / BETA_BACK + sum(1.0 / (p * PERM) for p in case["back_perms"]))
    return face, back


class FiniteVolumes:
    def __init__(self, case, n):
        self.case, (self.kf, self.kb) = case, conductances(case)
        s = np.linspace(-1.0, 1.0, n)
        g = np.tanh(1.8 * s) / np.tanh(1.8)
        self.x = case["L"] * 0.5 * (1.0 + g)
        self.dx = np.diff(self.x)
        self.cell = np.empty(n)
        self.cell[0], self.cell[-1] = self.dx[0] / 2, self.dx[-1] / 2
        self.cell[1:-1] = (self.dx[:-1] + self.dx[1:]) / 2

    def rate(self, u, t, rh):
        d = diffusivity(u, t)
        link = (d[:-1] + d[1:] + 4.0 * diffusivity(0.5 * (u[:-1] + u[1:]), t)) / 6.0
        q = link * (u[1:] - u[:-1]) / self.dx
        p = psat(t) / self.case["rho0"]
        uc = np.clip(u[[0, -1]], 0.04, 0.26)
        h = SPLINE(uc[0], t)[0, 0], SPLINE(uc[1], t)[0, 0]
        out = np.empty_like(u)
        out[1:-1] = q[1:] - q[:-1]
        out[0] = q[0] - self.kf * p * (h[0] - rh)
        out[-1] = -q[-1] - self.kb * p * (h[1] - rh)
        return out / self.cell

    def mean(self, u):
        return float(self.cell @ u / self.case["L"])

    def row(self, day, u):
        return dict(day=day, mean=self.mean(u), u_face=float(u[0]), u_back=float(u[-1]))


class Collocation:
    def __init__(self, case, n):
        self.case, (self.kf, self.kb) = case, conductances(case)
        j = np.arange(n)
        self.c = -np.cos(np.pi * j / (n - 1))
        w = np.where((j == 0) | (j == n - 1), 2.0, 1.0) * (-1.0) ** j
        diff = np.outer(w, 1 / w) / (self.c[:, None] - self.c[None, :] + np.eye(n))
        diff -= np.diag(diff.sum(axis=1))
        self.diff = diff * 2.0 / case["L"]
        even = np.arange(0, n, 2)                    # Clenshaw-Curtis weights through the Chebyshev moments
        moments = np.zeros(n)
        moments[even] = 2.0 / (1.0 - even.astype(float) ** 2)
        self.weights = np.linalg.solve(np.cos(np.outer(j, np.arccos(np.clip(self.c, -1, 1)))), moments) / 2.0

    def rate(self, u, t, rh):
        q = diffusivity(u, t) * (self.diff @ u)
        p = psat(t) / self.case["rho0"]
        uc = np.clip(u[[0, -1]], 0.04, 0.26)
        q[0] = self.kf * p * (SPLINE(uc[0], t)[0, 0] - rh)
        q[-1] = -self.kb * p * (SPLINE(uc[1], t)[0, 0] - rh)
        return self.diff @ q

    def jacobian(self, u, t):
        d = diffusivity(u, t)
        slope = d * (4.0 + 29000.0 / R_GAS * (1.0 / (t + 273.15) - 1.0 / 293.15))
        m = d[:, None] * self.diff
        m.flat[:: len(u) + 1] += slope * (self.diff @ u)
        p = psat(t) / self.case["rho0"]
        m[0], m[-1] = 0.0, 0.0
        m[0, 0] = self.kf * p * SPLINE(u[0], t, dx=1)[0, 0]
        m[-1, -1] = -self.kb * p * SPLINE(u[-1], t, dx=1)[0, 0]
        return self.diff @ m

    def row(self, day, u):
        at = BarycentricInterpolator(self.c, u)
        return dict(day=day, mean=float(self.weights @ u), u_face=float(u[0]), u_back=float(u[-1]), profile=[float(at(v)) for v in np.linspace(-1, 1, 21)])


def run_held(scheme, u0, n, rtol, **more):
    """Air held over each 6 h step; LSODA afresh per step."""
    u, rows = np.full(n, u0), []
    first = 1e-3
    for k in range(int(DAYS * DAY / STEP)):
        mid = START_DAY + (k + 0.5) * STEP / DAY
        t, rh = float(temperature(mid)), float(humidity(mid))
        if hasattr(scheme, "jacobian"):
            more["jac"] = lambda _, y: scheme.jacobian(y, t)
        sol = solve_ivp(lambda _, y: scheme.rate(y, t, rh), (0.0, STEP), u, method="LSODA", rtol=rtol, atol=rtol / 100,
                        first_step=first, t_eval=[STEP], **more)
        assert sol.success, sol.message
        u, first = sol.y[:, -1], 20.0
        if (k + 1) % 4 == 0 and (k + 1) // 4 in OUT_DAYS:
            rows.append(scheme.row((k + 1) // 4, u))
    return rows


def collocation(case, n, rtol=1e-9):
    return run_held(Collocation(case, n), case["u0"], n, rtol)


def volumes(case, n, rtol=1e-7):
    return run_held(FiniteVolumes(case, n), case["u0"], n, rtol, lband=1, uband=1)


def continuous(case, n, rtol=1e-9):
    """Air as the continuous function of time."""
    scheme = Collocation(case, n)
    air = lambda s: (float(temperature(START_DAY + s / DAY)), float(humidity(START_DAY + s / DAY)))
    sol = solve_ivp(lambda s, y: scheme.rate(y, *air(s)), (0.0, DAYS * DAY), np.full(n, case["u0"]), method="BDF", rtol=rtol, atol=rtol / 100,
                    jac=lambda s, y: scheme.jacobian(y, air(s)[0]), first_step=1e-3, max_step=5 * DAY, t_eval=[d * DAY for d in OUT_DAYS])
    assert sol.success, sol.message
    return [scheme.row(d, sol.y[:, i]) for i, d in enumerate(OUT_DAYS)]


KEYS = ("mean", "u_face", "u_back")


def gap(a, b):
    return {k: max(abs(x[k] - y[k]) for x, y in zip(a, b)) for k in KEYS}


def main():
    target = sys.argv[1] if len(sys.argv) > 1 else "drying.json"
    cases, begun = [], time.time()
    for i, case in enumerate(CASES):
        best = collocation(case, 33)
        fine, half = volumes(case, 241), volumes(case, 121)
        rich = [{k: (4 * x[k] - y[k]) / 3 for k in KEYS} for x, y in zip(fine, half)]
        error = dict(points=gap(best, collocation(case, 25)), time=gap(best, collocation(case, 33, 1e-7)), volumes_241=gap(best, fine),
                     volumes_121=gap(best, half), volumes_richardson=gap(best, rich), hold=gap(best, continuous(case, 33)))
        error["total"] = {k: error["points"][k] + error["time"][k] + error["volumes_richardson"][k] for k in KEYS}
        kf, kb = conductances(case)
        cases.append(dict(case, K_face=kf, K_back=kb, out=best, error_estimate=error))
        print(f"{i + 1} {case['name']}: {time.time() - begun:.0f} s", json.dumps(error), file=sys.stderr, flush=True)
    head = dict(about="moisture through a board, see drying.py", units=dict(u="kg/kg", L="m", rho0="kg/m3", K="kg/(s m2 Pa)", perm="US perm", day="days after the start"),
                written_with=dict(numpy=np.__version__, scipy=scipy.__version__), air=dict(start_day=START_DAY, step_s=STEP, hold="mid-step value"),
                isotherm_spline_error_in_h=SPLINE_ERROR, cases=cases)
    with open(target, "w") as f:
        json.dump(head, f, indent=1)
        f.write("\n")


if __name__ == "__main__":
    main()
