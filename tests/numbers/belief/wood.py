"""The boards: how much water they hold, how fast it moves, how wide they are.

None of it is the program's own physics.

  * Sorption: the Guggenheim-Anderson-de Boer isotherm, fitted (least squares, 0 to 38 C, 10 to 90 %) to
    the Wood Handbook's table of equilibrium moisture contents (FPL-GTR-190, 2010, Table 4-2): root mean
    square 0.14 % MC off, at most 0.32. A lot holds 5 % more or less than that (assumption: about 0.5 % MC).
  * Diffusion: bound water in the cell wall, D = 7e-6 exp(-(38500 - 290 M) / RT) m2/s with M in percent,
    and the way across hollow cells, D / ((1 - a^2)(1 - a)) with a^2 the porosity (Siau, Transport
    Processes in Wood, 1984, from memory). A lot has 1.2 times that, lognormal 0.3 (assumption).
  * Width: C per percent of moisture content below fiber saturation at 28 %, fading out over 2 % around
    it; C from the Wood Handbook through assets/species.ron.
"""

import re
from functools import cache
from pathlib import Path

import numpy as np

from outdoors import saturation_pressure

ROOT = Path(__file__).resolve().parents[3]
GAB_M, GAB_C, GAB_K, GAB_T = 7.1758, 6.5691, 0.74370, 0.0026120
US_PERM = 5.72e-11
"""kg/(s m2 Pa)."""
SPECIES = ["pine-eastern-white", "pine-western-white", "pine-ponderosa", "douglas-fir-coast",
           "cedar-western-redcedar", "fir-white", "spruce-sitka", "yellow-poplar"]


@cache
def species(ident):
    """Radial and tangential C (fraction of width for 1 % MC) and specific gravity, by the program's id."""
    text = (ROOT / "assets" / "species.ron").read_text(encoding="utf8")
    line = next(line for line in text.splitlines() if f'(id: "{ident}"' in line)
    radial, tangential = re.search(r"coefficients: Some\(\(radial: ([\d.]+), tangential: ([\d.]+)", line).groups()
    gravity = re.search(r"specific_gravity: ([\d.]+)", line).group(1)
    return float(radial), float(tangential), float(gravity)


def equilibrium(humidity, celsius, holds=1.0):
    """Moisture content, %, that boards come to in this air; `holds` is the lot's factor."""
    x = GAB_K * humidity
    content = GAB_M * GAB_C * x / ((1.0 - x) * (1.0 - x + GAB_C * x))
    return content * (1.0 - GAB_T * (celsius - 21.0)) * holds


def equilibrium_humidity(content, celsius, holds=1.0):
    """The inverse of `equilibrium`. Content is taken as 0.1 % at least; no more than 0.999 comes out."""
    m = np.maximum(content, 0.1) / ((1.0 - GAB_T * (celsius - 21.0)) * holds)
    b = GAB_M * GAB_C - m * (GAB_C - 2.0)
    x = (-b + np.sqrt(b * b + 4.0 * m * m * (GAB_C - 1.0))) / (2.0 * m * (GAB_C - 1.0))
    return np.minimum(x / GAB_K, 0.999)


def diffusivity(content, celsius, gravity):
    """m2/s across the grain, at a moisture content in %."""
    wall = 7e-6 * np.exp(-(38500.0 - 290.0 * np.minimum(content, 28.0)) / (8.314 * (celsius + 273.15)))
    porosity = 1.0 - gravity * (0.667 + 0.01 * content)
    hollow = np.sqrt(porosity)
    return wall / ((1.0 - porosity) * (1.0 - hollow))


def width(content, coefficient):
    """Width as a multiple of that at 10 % MC."""
    fiber_saturation, fading = 28.0, 2.0
    above = fading * np.logaddexp(0.0, (content - fiber_saturation) / fading)
    return 1.0 + coefficient * (content - above - 10.0)


class Slab:
    """Boards that dry side by side, each a column: finite volumes through the thickness, backward Euler.

    All arguments may be arrays with a value for each column: `thickness` (m), `gravity` (oven-dry mass by
    volume at 12 %), `quick` (the lot's factor on diffusivity), `holds` (on what it holds), `face` and
    `back` (conductance of coat and air film together, kg/(s m2 Pa)). `law(content, celsius)` gives the
    diffusivity, m2/s; `pressure(content, celsius)` the vapor pressure that the surface stands at, Pa;
    `settles(pascal, celsius)` is the inverse of that, %.
    """

    def __init__(self, thickness, gravity, quick, holds, face, back, law=None, pressure=None, settles=None, cells=12):
        self.cells, self.dx = cells, thickness / cells
        self.density = 1000.0 * gravity
        self.face, self.back = face, back
        self.law = law or (lambda content, celsius: quick * diffusivity(content, celsius, gravity))
        self.pressure = pressure or (
            lambda content, celsius: equilibrium_humidity(content, celsius, holds) * saturation_pressure(celsius))
        self.settles = settles or (
            lambda pascal, celsius: equilibrium(pascal / saturation_pressure(celsius), celsius, holds))

    def start(self, content):
        """Boards of the same moisture content, %, throughout."""
        self.content = np.tile(np.asarray(content, float), (self.cells, 1))
        self.surfaces = [self.content[0].copy(), self.content[-1].copy()]
        self.gone = np.zeros(self.content.shape[1])
        """Water that has left through both faces, kg/m2."""

    def _face_flux(self, which, conductance, air_pa, celsius, first_d):
        """Flux out through a face as slope and value, kg/(s m2): slope * (outermost cell) + value, the cell
        in %. The pressure over the surface is taken along the chord from where it would settle to the
        last estimate of it: that cannot overshoot, whatever the curve."""
        settled = self.settles(air_pa, celsius)
        away = self.surfaces[which] - settled
        away = np.where(np.abs(away) < 0.02, 0.02, away)
        slope = conductance * (self.pressure(settled + away, celsius) - air_pa) / away
        inside = 2.0 * self.density / 100.0 * first_d / self.dx
        joined = inside * slope / (inside + slope)
        return joined, -joined * settled, inside

    def step(self, seconds, celsius, face_pa, back_pa):
        """Moves on by this time, with this air at the face and at the back, this temperature all through."""
        d = self.law(self.content, celsius)
        between = self.density / 100.0 * (2.0 * d[1:] * d[:-1] / (d[1:] + d[:-1])) / self.dx
        store = self.density / 100.0 * self.dx / seconds
        for _ in range(2):
            face_slope, face_value, face_inside = self._face_flux(0, self.face, face_pa, celsius, d[0])
            back_slope, back_value, back_inside = self._face_flux(1, self.back, back_pa, celsius, d[-1])
            diagonal = np.tile(store, (self.cells, 1)) if np.ndim(store) else np.full_like(d, store)
            diagonal[:-1] += between
            diagonal[1:] += between
            diagonal[0] += face_slope
            diagonal[-1] += back_slope
            right = store * self.content
            right[0] -= face_value
            right[-1] -= back_value
            new = _tridiagonal(between, diagonal, right)
            out = (face_slope * new[0] + face_value, back_slope * new[-1] + back_value)
            self.surfaces = [new[0] - out[0] / face_inside, new[-1] - out[1] / back_inside]
        self.gone += seconds * (out[0] + out[1])
        self.content = new

    def mean(self):
        """Mean moisture content of each board, %."""
        return self.content.mean(axis=0)


def _tridiagonal(beside, diagonal, right):
    """Solves the symmetric system whose off-diagonal is `-beside`, for all columns at once."""
    count = len(diagonal)
    upper, value = np.empty_like(beside), np.empty_like(right)
    pivot = diagonal[0]
    value[0] = right[0] / pivot
    for row in range(1, count):
        upper[row - 1] = beside[row - 1] / pivot
        pivot = diagonal[row] - beside[row - 1] * upper[row - 1]
        value[row] = (right[row] + beside[row - 1] * value[row - 1]) / pivot
    for row in range(count - 2, -1, -1):
        value[row] += upper[row] * value[row + 1]
    return value
