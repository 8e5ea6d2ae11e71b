"""The air outdoors: places, and one random course of weather at each.

The monthly normals of a place (mean temperature, vapor pressure, daily range, scatter from year to
year) are the program's own table, because a job must name a place that the program knows. All else is
drawn: the course of each year differs from the normals, and from year to year.

Assumptions, all ours:
  * A house stands off its station: 0.5 C and 4 % of vapor pressure (standard deviations).
  * Weather is the sum of two first-order autoregressive series. The fast one has a time constant of 2.5
    days and 4.5 C in midwinter, 2.5 C in midsummer. The slow one, of 25 days, makes up the rest of the
    scatter of monthly means that the table gives.
  * The logarithm of vapor pressure goes along with temperature (correlation 0.7).
"""

import math
import sys
from functools import cache
from pathlib import Path

import numpy as np

HERE = Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parent / "climate"))
import make  # noqa: E402  (reads assets/climate)

EUROPE = ["AT", "BE", "CH", "CZ", "DE", "DK", "EE", "ES", "FI", "FR", "GB", "IE", "IT", "LT", "LV", "NL",
          "NO", "PL", "PT", "SE", "SI", "SK"]
SHARES = {"US": 0.68, "CA": 0.12, "Europe": 0.20}
FAST_DAYS, SLOW_DAYS = 2.5, 25.0


def saturation_pressure(celsius):
    """Pa over water; Magnus formula with the coefficients of Alduchov and Eskridge (1996, from memory)."""
    return 610.94 * np.exp(17.625 * celsius / (243.04 + celsius))


def vapor_density(pascal, celsius):
    """Grams of water in a cubic meter of air."""
    return 1000.0 * pascal / (461.5 * (celsius + 273.15))


def density_to_pressure(grams, celsius):
    """The inverse of `vapor_density`, Pa."""
    return grams * 461.5 * (celsius + 273.15) / 1000.0


def _monthly(row, column, scale, otherwise):
    """Twelve values of a column of the table; blanks are filled with `otherwise`."""
    cells = [row[column.format(month)] for month in make.MONTHS]
    filled = [value * scale if value != "" else other for value, other in zip(cells, otherwise, strict=True)]
    return np.array(filled)


@cache
def places():
    """The table's stations where board ceilings may be expected, by group: where each is, and twelve
    months of temperature `t` (C), vapor pressure `e` (Pa), daily range `r`, and the standard deviations
    from year to year `st`, `se`."""
    groups = {"US": [], "CA": [], "Europe": []}
    head, rows = make.station_table()
    for row in (dict(zip(head, cells, strict=True)) for cells in rows):
        group = "Europe" if row["country"] in EUROPE else row["country"]
        latitude, longitude = float(row["lat"]), float(row["lon"])
        if group not in groups or latitude > 62 or latitude < 24 or longitude < -130 or row["elev_m"] > 2200:
            continue
        t = _monthly(row, "t{}_dC", 0.1, [0.0] * 12)
        e = _monthly(row, "e{}_Pa", 1.0, [0.0] * 12)
        if np.mean(t) < 1.0:
            continue
        groups[group].append({
            "name": f"{row['station']}, {row['region'] or row['country']}", "country": row["country"],
            "latitude": latitude, "longitude": longitude, "t": t, "e": e,
            "r": _monthly(row, "r{}_dC", 0.1, [10.0] * 12), "st": _monthly(row, "st{}_dC", 0.1, [1.8] * 12),
            "se": _monthly(row, "se{}_Pa", 1.0, list(0.12 * e)),
        })
    return groups


def draw_place(rng):
    """A group by its share, then any of its stations."""
    groups = places()
    names = list(SHARES)
    group = names[rng.choice(len(names), p=list(SHARES.values()))]
    return group, groups[group][rng.integers(len(groups[group]))]


def autoregressive(rng, days, time_constant):
    """A series of unit variance with this time constant, days."""
    keep = math.exp(-1.0 / time_constant)
    kicks = rng.normal(0.0, math.sqrt(1.0 - keep * keep), days)
    out = np.empty(days)
    value = rng.normal()
    for day in range(days):
        value = keep * value + kicks[day]
        out[day] = value
    return out


def through_the_year(monthly, day_of_year):
    """Mid-month values joined by straight lines around the year."""
    middle = (np.arange(12) + 0.5) * 365.25 / 12.0
    return np.interp(day_of_year, middle, monthly, period=365.25)


def _monthly_variance(time_constant):
    """Variance of a 30-day mean of a unit series."""
    n = 30.0
    return 2.0 * time_constant / n * (1.0 - time_constant / n * (1.0 - math.exp(-n / time_constant)))


def weather(rng, place, day_of_year, off=None):
    """Daily mean temperature (C) and vapor pressure (Pa) for a run of days, and how the house stands off its
    station: degrees, and a factor on vapor pressure. They are drawn unless `off` gives them."""
    days = len(day_of_year)
    winter = 0.5 + 0.5 * np.cos(2 * np.pi * (day_of_year - 20.0) / 365.25)
    fast_sd = 2.5 + 2.0 * winter

    def rest(total_sd, fast):
        left = np.maximum(total_sd**2 - fast**2 * _monthly_variance(FAST_DAYS), (0.3 * total_sd) ** 2)
        return np.sqrt(left / _monthly_variance(SLOW_DAYS))

    fast, slow = autoregressive(rng, days, FAST_DAYS), autoregressive(rng, days, SLOW_DAYS)
    own_fast, own_slow = autoregressive(rng, days, FAST_DAYS), autoregressive(rng, days, SLOW_DAYS)
    year_sd = through_the_year(place["st"], day_of_year)
    warmer, damper = off or (rng.normal(0.0, 0.5), 1.0 + rng.normal(0.0, 0.04))
    mean = through_the_year(place["t"], day_of_year) + warmer
    temperature = mean + fast_sd * fast + rest(year_sd, fast_sd) * slow

    vapor = through_the_year(place["e"], day_of_year) * damper
    year_cv = through_the_year(place["se"] / place["e"], day_of_year)
    fast_cv = 0.18 + 0.12 * winter
    with_t, alone = 0.7, math.sqrt(1.0 - 0.7**2)
    log = fast_cv * (with_t * fast + alone * own_fast) + rest(year_cv, fast_cv) * (with_t * slow + alone * own_slow)
    variance = fast_cv**2 + rest(year_cv, fast_cv) ** 2
    vapor = vapor * np.exp(log - variance / 2.0)
    half_range = through_the_year(place["r"], day_of_year) / 2.0
    # Over a day of this range the air holds no more than the mean of its saturation.
    most = (saturation_pressure(temperature - half_range) + saturation_pressure(temperature + half_range)) / 2.0
    return temperature, np.minimum(vapor, 0.97 * most), (warmer, damper)
