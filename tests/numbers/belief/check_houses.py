#!/usr/bin/env python3
"""Whether the simulator of houses.py is sound: run it after any change there.

    python3 tests/numbers/belief/check_houses.py

Water is conserved in boards and rooms; shorter steps and more cells change little; drying meets Crank's series where they apply (The Mathematics of
Diffusion, 2nd ed., eq. 4.18 and 4.53; worked out here from the series); the isotherm and its inverse
agree; wood in 300 drawn rooms settles between 6 and 11 % on average, as is known of heated houses
(Wood Handbook ch. 13, from memory). Exits with a fault if any does not hold.
"""

import numpy as np

import outdoors
import room
import wood


def crank_step(time, terms=400):
    """Share of the change done in a sheet whose both faces are held: `time` is Dt/l2, l the half thickness."""
    n = (2 * np.arange(terms) + 1) ** 2 * np.pi**2
    return 1.0 - np.sum(8.0 / n * np.exp(-n * time / 4.0))


def crank_resistance(biot, time, terms=60):
    """The same with a resistance at both faces: the roots of b tan b = biot."""
    roots = []
    for k in range(terms):
        low, high = k * np.pi, k * np.pi + np.pi / 2 - 1e-12
        for _ in range(100):
            middle = (low + high) / 2
            low, high = (middle, high) if middle * np.tan(middle) < biot else (low, middle)
        roots.append(low)
    b2 = np.array(roots) ** 2
    return 1.0 - np.sum(2 * biot**2 * np.exp(-b2 * time) / (b2 * (b2 + biot**2 + biot)))


def constant_slab(conductance, d, thickness):
    """A slab of constant diffusivity whose surface pressure is 100 Pa for 1 % MC."""
    column = np.ones(1)
    return wood.Slab(thickness * column, 0.4 * column, column, column, conductance * column, conductance * column,
                     law=lambda content, celsius: np.full_like(content, d),
                     pressure=lambda content, celsius: 100.0 * content, settles=lambda pascal, celsius: pascal / 100.0)


def check_series():
    d, thickness = 1e-10, 0.018
    half, worst = thickness / 2.0, 0.0
    for biot in (0.1, 1.0, 10.0, np.inf):
        # Flux density/100 d / half * biot for 1 % MC; 1 % MC is 100 Pa.
        conductance = 1.0 if np.isinf(biot) else biot * d / half * 4.0 / 100.0
        slab = constant_slab(conductance, d, thickness)
        slab.start([20.0])
        for day in range(1, 61):
            for _ in range(4):
                slab.step(21600.0, 20.0, 1000.0, 1000.0)
            time = d * day * 86400.0 / half**2
            series = crank_step(time) if np.isinf(biot) else crank_resistance(biot, time)
            if day >= 7:
                worst = max(worst, abs((20.0 - slab.mean()[0]) / 10.0 - series))
    print(f"drying in steps of 6 hours against Crank's series, from day 7 on: at most {100 * worst:.2f} % of the change off")
    assert worst < 0.015


def check_water_in_boards():
    rng = np.random.default_rng(5)
    n = 40
    gravity, thickness = rng.uniform(0.33, 0.5, n), rng.uniform(0.012, 0.019, n)
    slab = wood.Slab(thickness, gravity, np.exp(rng.normal(0, 0.3, n)), rng.normal(1, 0.05, n),
                     10 ** rng.uniform(-11, -7.7, n), 10 ** rng.uniform(-12, -8, n))
    start = rng.uniform(6, 25, n)
    slab.start(start)
    for day in range(400):
        humidity = 0.4 + 0.2 * np.sin(day / 58.0) + rng.normal(0, 0.05)
        pa = humidity * outdoors.saturation_pressure(20.0)
        slab.step(86400.0, 20.0, pa, 0.9 * pa)
    lost = 1000.0 * gravity * thickness * (start - slab.mean()) / 100.0
    worst = np.max(np.abs(lost - slab.gone))
    print(f"water in boards: at most {worst:.1e} kg/m2 lost from the books")
    assert worst < 1e-10


def dried_for_a_year(cells, steps, n=60):
    """Mean moisture of so many drawn boards on each day of a year; `steps` a day."""
    rng = np.random.default_rng(8)
    gravity, thickness = rng.uniform(0.33, 0.5, n), rng.uniform(0.012, 0.019, n)
    slab = wood.Slab(thickness, gravity, np.exp(rng.normal(0, 0.3, n)), rng.normal(1, 0.05, n),
                     10 ** rng.uniform(-10.5, -7.7, n), 10 ** rng.uniform(-12, -8, n), cells=cells)
    slab.start(rng.uniform(6, 25, n))
    humidity = 0.45 + 0.15 * np.sin(np.arange(366) / 58.0) + 0.06 * outdoors.autoregressive(rng, 366, 4.0)
    means = []
    for day in range(366):
        pa = humidity[day] * outdoors.saturation_pressure(20.0)
        for _ in range(steps if day >= 30 else max(4, steps)):
            slab.step(86400.0 / (steps if day >= 30 else max(4, steps)), 20.0, pa, 0.9 * pa)
        means.append(slab.mean())
    return np.array(means)


def check_steps():
    used, finer = dried_for_a_year(12, 1), dried_for_a_year(36, 8)
    off = np.abs(used - finer)[14:]
    print(f"steps and cells, from day 14 on: {off.max():.2f} % MC off at most, {np.sqrt(np.mean(off**2)):.3f} typically")
    assert off.max() < 0.25 and np.sqrt(np.mean(off**2)) < 0.05


def check_water_in_rooms():
    rng = np.random.default_rng(6)
    worst, now = 0.0, 0.4
    for _ in range(1000):
        storage, changes = rng.uniform(100, 2000), rng.uniform(4, 20)
        inflow, saturated = rng.uniform(3, 14), rng.uniform(15, 22)
        new = room.balance_step(now, storage, changes, inflow, saturated)
        worst = max(worst, abs(storage * (new - now) - changes * (inflow - new * saturated)))
        now = new
    steady = 0.4
    for _ in range(4000):
        steady = room.balance_step(steady, 500.0, 9.6, 5.0, 17.0)
    print(f"water in rooms: at most {worst:.1e} g/m3 off; steady air holds {steady * 17.0:.4f} of 5 g/m3")
    assert worst < 1e-9 and abs(steady * 17.0 - 5.0) < 1e-6


def check_isotherm():
    humidity = np.linspace(0.05, 0.95, 50)
    for celsius in (5.0, 21.0, 30.0):
        back = wood.equilibrium_humidity(wood.equilibrium(humidity, celsius, 1.04), celsius, 1.04)
        assert np.max(np.abs(back - humidity)) < 1e-9
    # Wood Handbook Table 4-2 at 70 F (from memory): 30 % 6.2, 50 % 9.2, 65 % 12.0, 80 % 16.0.
    off = wood.equilibrium(np.array([0.30, 0.50, 0.65, 0.80]), 21.1) - [6.2, 9.2, 12.0, 16.0]
    print(f"isotherm at 21 C against the handbook: {np.round(off, 2)} % MC")
    assert np.max(np.abs(off)) < 0.4


def check_rooms():
    means, swings, winters, excesses = [], [], [], []
    for seed in range(300):
        rng = np.random.default_rng([99, seed])
        group, place = outdoors.draw_place(rng)
        house = room.draw_house(rng, group, place, False)
        days = np.arange(760)
        out_c, out_pa, _ = outdoors.weather(rng, place, days % 365.25)
        in_c, humidity = room.indoor_air(rng, house, out_c, out_pa)
        wet = (outdoors.vapor_density(room.vapor_pressure(in_c, humidity), in_c) - outdoors.vapor_density(out_pa, out_c))
        freezes = room.running_mean(out_c, 30.0) < 3.0
        freezes[:60] = False
        if np.any(freezes):
            excesses.append(np.mean(wet[freezes]) - house.winter_excess)
            winters.append(np.mean(humidity[freezes]))
        content = wood.equilibrium(humidity[60:], in_c[60:])
        slow = np.convolve(content, np.ones(30) / 30.0, "valid")
        means.append(content.mean())
        swings.append(slow.max() - slow.min())
    low, middle, high = np.percentile(means, [5, 50, 95])
    print(f"wood settles at {low:.1f} / {middle:.1f} / {high:.1f} % MC (5th, 50th, 95th of 300 rooms), "
          f"swings {np.percentile(swings, 5):.1f} / {np.median(swings):.1f} / {np.percentile(swings, 95):.1f} a year")
    print(f"humidity in months under 3 C outdoors: {100 * np.mean(winters):.0f} %; "
          f"winter excess less that drawn: {np.mean(excesses):+.2f} g/m3")
    assert 6.0 < middle < 11.0 and np.mean([6.0 < mean < 11.0 for mean in means]) > 0.85
    assert abs(np.mean(excesses)) < 0.3


if __name__ == "__main__":
    check_series()
    check_water_in_boards()
    check_steps()
    check_water_in_rooms()
    check_isotherm()
    check_rooms()
    print("sound")
