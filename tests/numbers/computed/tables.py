#!/usr/bin/env python3
"""Tables worked out from published formulas; writes the *.csv beside this file.

What it makes
    Nobody printed these numbers: each is a published formula evaluated here, far more finely than the tests look.
    Numbers that somebody did print are in ../published.

    diffusion_step                Crank, The Mathematics of Diffusion (2nd ed., 1975), plane sheet whose surface is
                                  held at a new value: the series of eq. 4.18, and the centre from eq. 4.17.
    diffusion_surface_resistance  Crank, plane sheet with a surface resistance: the series of eq. 4.53.
    diffusion_periodic            Plane sheet in a medium that goes up and down as a sine (Crank, section 4.3.5), with
                                  a surface resistance: cosh(z x/l) / (cosh z + z sinh z / Bi), z = (1 + i) xi.
    psychrometrics                PsychroLib 2.5.0, a public-domain library of ASHRAE's relations.
    present_value_factors         1/(1 + i)^n and its sum over n years (ASTM E917).
    three_point                   PERT mean (a + 4m + b)/6 and deviation (b - a)/6; the exact deviation of the beta
                                  distribution with that mean, and a triangle's mean and deviation.
    sealant_coverage              length = contents/(width x depth); US fluid ounces of 231/128 cubic inches.

Method
    Series in 50 digits with mpmath, summed until a term is below 1e-30: at the earliest time of eq. 4.18 that takes
    some 80 terms. Rounded to the digits the files show.

How to run
    python3 tests/numbers/computed/tables.py [folder]      (a few seconds; `pip install psychrolib==2.5.0 mpmath`)
    The data were written with Python 3.11, mpmath 1.3.0, psychrolib 2.5.0.
"""
import csv
import functools
import pathlib
import sys

import mpmath as mp
import psychrolib

mp.mp.dps = 50
CRANK = "Crank, The Mathematics of Diffusion, 2nd ed., plane sheet, step change (eq. 4.18); computed from the series"
RESISTANCE = "Crank, 2nd ed., plane sheet with surface resistance (eq. 4.53); computed from the series"
PERIODIC = "Plane sheet under a sinusoidal surface condition; derived, Crank 2nd ed. section 4.3.5"
PRESENT = "Present-value factors, standard formulas (ASTM E917 / NIST Handbook 135); computed"
SEASON = "Season of sealing: W = M max(f,1-f)/S; computed"
COVERAGE = "linear length = volume / (width x depth), no waste; computed"


def fixed(value, digits):
    """So many digits after the point; nothing is written as minus nothing."""
    return f"{float(value) + 0.0:.{digits}f}" if abs(value) > 0.5 * 10.0**-digits else f"{0.0:.{digits}f}"


def short(value, digits):
    """As few digits as say the value to so many after the point."""
    return repr(round(float(value), digits))


def total(term):
    """The sum of term(0), term(1), ... until they vanish."""
    sum_, n = mp.mpf(0), 0
    while True:
        one = term(n)
        sum_ += one
        n += 1
        if abs(one) < mp.mpf(10) ** -30:
            return sum_


def diffusion_step():
    yield "Dt_over_l2_half_thickness,Mt_over_Minf,center_fraction_X0,source".split(",")
    for time in ["0.001", "0.005", "0.02", "0.04", "0.06", "0.1", "0.15", "0.25", "0.4", "0.6", "0.8", "1.2", "2.0"]:
        decay = lambda n: mp.exp(-((2 * n + 1) ** 2) * mp.pi**2 * mp.mpf(time) / 4)
        taken = 1 - total(lambda n: 8 / ((2 * n + 1) ** 2 * mp.pi**2) * decay(n))
        centre = 1 - 4 / mp.pi * total(lambda n: mp.mpf(-1) ** n / (2 * n + 1) * decay(n))
        yield [time, fixed(taken, 8), fixed(centre, 8), CRANK]


def diffusion_surface_resistance():
    yield "L_equals_l_alpha_over_D,Dt_over_l2,Mt_over_Minf,source".split(",")
    ends = lambda n: (n * mp.pi, n * mp.pi + mp.pi / 2)
    times = [["0.05", "0.2", "1.0", "5.0"], ["0.1", "0.5", "2.0"]]
    for index, text in enumerate(["0.1", "0.5", "1", "2", "5", "10", "20", "50", "100"]):
        number = mp.mpf(text)

        @functools.cache
        def root(n):
            """The n-th root of b tan b = L, which lies between n pi and n pi + pi/2."""
            return mp.findroot(lambda b: b * mp.sin(b) - number * mp.cos(b), ends(n), solver="anderson")

        for time in times[index % 2]:

            def term(n):
                b = root(n)
                return 2 * number**2 * mp.exp(-(b**2) * mp.mpf(time)) / (b**2 * (b**2 + number**2 + number))

            yield [text, time, fixed(1 - total(term), 8), RESISTANCE]


def diffusion_periodic():
    yield (
        "xi_equals_l_sqrt_omega_over_2D,Bi_equals_l_alpha_over_D,mean_amplitude_ratio,mean_phase_lag_deg,"
        "center_amplitude_ratio,center_phase_lag_deg,source"
    ).split(",")

    def lag(response, xi):
        """Degrees behind the medium; the angle is followed from slow waves, which lag by nothing, to this one."""
        behind, before = mp.mpf(0), mp.mpf(0)
        for part in range(1, 401):
            angle = -mp.arg(response(xi * part / 400))
            behind += (angle - before + mp.pi) % (2 * mp.pi) - mp.pi
            before = angle
        return mp.degrees(behind)

    for text in ["inf", "100", "10", "2", "1", "0.5", "0.1"]:
        resistance = mp.mpf(0) if text == "inf" else 1 / mp.mpf(text)
        below = lambda z: mp.cosh(z) + z * mp.sinh(z) * resistance
        mean = lambda xi: mp.sinh(mp.mpc(xi, xi)) / mp.mpc(xi, xi) / below(mp.mpc(xi, xi))
        centre = lambda xi: 1 / below(mp.mpc(xi, xi))
        for xi in ["0.1", "0.5", "1.0", "2.0", "4.0"]:
            x = mp.mpf(xi)
            values = [(abs(of(x)), lag(of, x)) for of in (mean, centre)]
            yield [xi, text, *(fixed(v, d) for pair in values for v, d in zip(pair, (6, 4))), PERIODIC]


def psychrometrics():
    psychrolib.SetUnitSystem(psychrolib.SI)
    yield "t_c,rh,saturation_pa,vapour_pa,dew_point_c,source".split(",")
    for t in [-20, -5, 0, 5, 15, 20, 25, 35, 50]:
        for rh in [0.1, 0.33, 0.6, 0.95]:
            values = [psychrolib.GetSatVapPres(t), psychrolib.GetVapPresFromRelHum(t, rh)]
            values.append(psychrolib.GetTDewPointFromRelHum(t, rh))
            yield [t, rh, *map(repr, values), "PsychroLib 2.5.0 (ASHRAE Fundamentals 2017 ch. 1)"]


def present_value_factors():
    yield ["i", "n", "SPV", "UPV", "source"]
    for i in ["0.03", "0.05", "0.07"]:
        for n in [1, 3, 7, 15, 25]:
            factor = (1 + mp.mpf(i)) ** -n
            yield [i, n, short(factor, 6), short((1 - factor) / mp.mpf(i), 6), PRESENT]


def three_point():
    yield "a,m,b,pert_mean,pert_sd_(b-a)/6,exact_sd_beta(lambda=4),triangular_mean,triangular_sd".split(",")
    for a, m, b in [(2, 4, 9), (10, 12, 20), (1, 2, 3), (3, 5, 13)]:
        width = mp.mpf(b - a)
        up, down = 1 + 4 * (m - a) / width, 1 + 4 * (b - m) / width
        exact = width * mp.sqrt(up * down / ((up + down) ** 2 * (up + down + 1)))
        triangle = mp.sqrt(mp.mpf(a * a + m * m + b * b - a * m - a * b - m * b) / 18)
        values = [mp.mpf(a + 4 * m + b) / 6, width / 6, exact, mp.mpf(a + m + b) / 3, triangle]
        yield [a, m, b, *(short(value, 6) for value in values)]


def sealant_coverage():
    yield ["package", "in3", "mL", "width_in", "depth_in", "linear_ft", "linear_m", "source"]
    ounce, inch = mp.mpf(231) / 128, mp.mpf("16.387064")
    packages = [("10.1 fl oz cartridge", "10.1"), ("10.3 fl oz", "10.3"), ("20 fl oz sausage", "20"), ("28 fl oz", "28")]
    contents = [(name, mp.mpf(ounces) * ounce) for name, ounces in packages + [("29 fl oz", "29")]]
    contents += [(f"{millilitres} mL", millilitres / inch) for millilitres in (300, 310, 600)]
    contents += [("US gallon", mp.mpf(231)), ("US quart", mp.mpf(231) / 4)]
    for name, cubic in contents:
        for width, depth in [("0.0625", "0.0625"), ("0.25", "0.125"), ("0.375", "0.375"), ("0.5", "0.5")]:
            feet = cubic / (mp.mpf(width) * mp.mpf(depth)) / 12
            size = [short(cubic, 4), short(cubic * inch, 2), width, depth]
            yield [name, *size, short(feet, 3), short(feet * mp.mpf("0.3048"), 4), COVERAGE]


TABLES = [
    diffusion_step,
    diffusion_surface_resistance,
    diffusion_periodic,
    psychrometrics,
    present_value_factors,
    three_point,
    sealant_coverage,
]

if __name__ == "__main__":
    folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else pathlib.Path(__file__).resolve().parent
    for table in TABLES:
        with open(folder / f"{table.__name__}.csv", "w", newline="") as file:
            csv.writer(file, lineterminator="\n").writerows(table())
