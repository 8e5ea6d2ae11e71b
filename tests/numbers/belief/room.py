"""The air in the room: a daily moisture balance of a house that was drawn at random.

Shared with the program (declared base rates, see houses.py): how much wetter indoor air is than
outdoor air. What makes it so here is a balance of air change, moisture given off, and storage in
furniture and linings, day by day; the program knows nothing of it.

Assumptions, all ours:
  * Air change 0.4 an hour (lognormal, 0.4), twice that in mild weather without air conditioning.
    0.44 an hour in Canadian houses: Kent, Handegord, Robson, ASHRAE Trans. 72 (1966).
  * Moisture given off is what keeps the house at its excess in the long run: persistent, with a part
    that wanders over weeks (0.2) and over a season (0.15).
  * Storage 500 g a cubic meter of room for the whole range of humidity (lognormal, 0.6).
  * Air conditioning by place: nine in ten where the warmest month is above 24 C in the US, seven in ten
    above 20 C, three in ten else; half or a fifth in Canada; one in ten in Europe.
  * Of a house whose owner told of it (three in ten), one in eight has a humidifier.
"""

from dataclasses import dataclass

import numpy as np

from outdoors import autoregressive, density_to_pressure, saturation_pressure, vapor_density


@dataclass
class House:
    """One house, as it truly is."""

    heat_to: float
    """Heating set point, C."""
    cool_to: float | None
    """Cooling set point, C; None without air conditioning."""
    humidity_cap: float
    """What the air conditioning keeps humidity under, as a fraction."""
    winter_excess: float
    """Grams in a cubic meter above the air outdoors, when that is at 5 C or below."""
    summer_excess: float
    """The same at 15 C or above, without air conditioning."""
    humidified_to: float | None
    """What a humidifier holds humidity above in the heating season; None without one."""
    gains: float
    """By how much the house is warmer than outdoors without heating, C."""
    air_change: float
    """Air changes an hour."""
    storage: float
    """Grams in a cubic meter of room, for humidity from 0 to 1."""


def draw_house(rng, group, place, may_humidify):
    """A house at this place."""
    warmest = float(np.max(place["t"]))
    if group == "US":
        cooled = 0.9 if warmest > 24 else 0.7 if warmest > 20 else 0.3
    elif group == "CA":
        cooled = 0.5 if warmest > 20 else 0.2
    else:
        cooled = 0.1
    has_humidifier = may_humidify and rng.random() < 0.125 and float(np.min(place["t"])) < 5.0
    return House(
        heat_to=rng.normal(20.3, 1.2),
        cool_to=rng.normal(24.8, 1.0) if rng.random() < cooled else None,
        humidity_cap=float(np.clip(rng.normal(0.50, 0.07), 0.30, 0.75)),
        winter_excess=max(0.0, rng.normal(1.9, 1.3)),
        summer_excess=max(0.0, rng.normal(0.5, 0.7)),
        humidified_to=rng.uniform(0.30, 0.42) if has_humidifier else None,
        gains=rng.normal(3.0, 1.0),
        air_change=float(np.exp(rng.normal(np.log(0.4), 0.4))),
        storage=float(np.exp(rng.normal(np.log(500.0), 0.6))),
    )


def running_mean(values, days):
    """Exponential running mean with this time constant, started at the first value."""
    out = np.empty_like(values)
    keep = np.exp(-1.0 / days)
    now = values[0]
    for index, value in enumerate(values):
        now = keep * now + (1.0 - keep) * value
        out[index] = now
    return out


def balance_step(humidity, storage, air_change_a_day, inflow_g, saturated_g):
    """One day of the balance, solved at the day's end:

    storage * (new - humidity) = air_change_a_day * (inflow_g - new * saturated_g)

    `inflow_g`: grams in a cubic meter of the air that comes in, with the moisture given off spread
    over it; `saturated_g`: the same of saturated air at the room's temperature.
    """
    return (storage * humidity + air_change_a_day * inflow_g) / (storage + air_change_a_day * saturated_g)


def indoor_air(rng, house, outdoor_c, outdoor_pa):
    """Daily mean temperature (C) and relative humidity (fraction) of the room."""
    days = len(outdoor_c)
    smooth = running_mean(outdoor_c, 2.0)
    free = smooth + house.gains
    indoor = np.maximum(free, house.heat_to)
    cooling = np.zeros(days, bool)
    if house.cool_to is not None:
        cooling = free > house.cool_to - 1.0
        indoor = np.minimum(indoor, max(house.cool_to, house.heat_to + 1.0))
    indoor = indoor + rng.normal(0.0, 0.4, days)
    wander = 1.0 + 0.2 * autoregressive(rng, days, 7.0) + 0.15 * autoregressive(rng, days, 90.0)
    excess = np.interp(smooth, [5.0, 15.0], [house.winter_excess, house.summer_excess]) * np.maximum(wander, 0.0)
    excess[cooling] = 0.0
    inflow = vapor_density(outdoor_pa, outdoor_c) + excess
    saturated = vapor_density(saturation_pressure(indoor), indoor)
    changes = np.full(days, 24.0 * house.air_change)
    if house.cool_to is None:
        changes[smooth > 15.0] *= 2.0
    cap = house.humidity_cap + 0.025 * autoregressive(rng, days, 5.0)
    floor = np.zeros(days)
    if house.humidified_to is not None:
        heating = smooth < house.heat_to - 6.0
        floor[heating] = house.humidified_to + 0.02 * rng.normal(size=np.count_nonzero(heating))
    humidity = np.empty(days)
    now = min(inflow[0] / saturated[0], 0.8)
    for day in range(days):
        now = balance_step(now, house.storage, changes[day], inflow[day], saturated[day])
        most = cap[day] if cooling[day] else 0.92
        now = min(max(now, floor[day], 0.03), most)
        humidity[day] = now
    return indoor, humidity


def vapor_pressure(indoor_c, humidity):
    """Pa of the room's air."""
    return humidity * saturation_pressure(indoor_c)


def behind_pressure(share_outdoors, indoor_c, humidity, outdoor_c, outdoor_pa):
    """Pa of the air behind the boards, of which this share comes from outdoors and was warmed up to the
    boards' temperature; never above saturation."""
    outside = density_to_pressure(vapor_density(outdoor_pa, outdoor_c), indoor_c)
    mixed = (1.0 - share_outdoors) * vapor_pressure(indoor_c, humidity) + share_outdoors * outside
    return np.minimum(mixed, 0.97 * saturation_pressure(indoor_c))
