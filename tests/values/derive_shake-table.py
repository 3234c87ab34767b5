#!/usr/bin/env python3
"""Derives check values of required response spectra and of what a test rig must carry, in plain Python.

Prints `shake-table-derived.json`. It reads nothing of the engine. The vectors are our own: good against slips, never to be
called published.
"""

import json
from math import exp, log, pi, sqrt

G = 9.80665
OWN = "Our own vector, by hand arithmetic"

blocks = []


def block(name, source, fields, expect, note=""):
    text = {"block": name, "source": f"{OWN}: {source}", "trust": "derived"}
    if note:
        text["note"] = note
    text["runs"] = "shake-table"
    text["input"] = fields
    text["expect"] = [
        {"at": at, "value": f"{value:.9g}", **({"unit": unit} if unit else {})} for at, value, unit in expect
    ]
    blocks.append(text)


def straight(frequency, low, high):
    """A straight line on logarithmic axes, by logarithms of everything."""
    along = (log(frequency) - log(low[0])) / (log(high[0]) - log(low[0]))
    return exp(log(low[1]) + along * (log(high[1]) - log(low[1])))


def over(frequency, knots):
    for low, high in zip(knots, knots[1:]):
        if low[0] <= frequency <= high[0]:
            return straight(frequency, low, high)
    return knots[-1][1]


# AC156: levels and curve.
def ac156(name, form, s_ds, ratio, frequencies):
    if form == "ac156":
        height = 1 + 2 * ratio
    else:
        height = (1 + 2.5 * ratio) / 1.3 if ratio > 0 else 1
    flexible, rigid = min(1.6 * s_ds, s_ds * height), 0.4 * s_ds * height
    vertical = 0.67 * s_ds, 0.27 * s_ds
    given = {"spectrum": form, "s_ds": s_ds, "height_ratio": ratio}
    block(name, "levels of AC156", given,
          [("A_F", flexible, "g"), ("A_R", rigid, "g"), ("A_FV", vertical[0], "g"), ("A_RV", vertical[1], "g")])
    for axis, (top, end) in (("horizontal", (flexible, rigid)), ("vertical", vertical)):
        knots = [(0.1, 0.1 * top), (1.3, top), (8.3, top), (33.3, end), (100, end)]
        for frequency in frequencies:
            block(f"{name} {axis} {frequency} Hz", "straight lines of AC156 on logarithmic axes",
                  {**given, "axis": axis, "frequency_hz": frequency}, [("A_f", over(frequency, knots), "g")])


ac156("Y1", "ac156", 1.0, 0, [0.1, 0.3605551275463989, 1.3, 3.0, 8.3, 16.624981203, 33.3, 50.0])
ac156("Y2", "ac156", 1.5, 1, [0.1, 0.7, 1.3, 8.3, 12.0, 33.3])
ac156("Y3", "ac156-24", 1.0, 0, [0.5, 5.0, 20.0])
ac156("Y4", "ac156-24", 1.25, 0.5, [0.2, 1.3, 10.0, 33.2, 40.0])


# IEEE 693.
def ieee_693(name, word, zpa, damping, frequencies):
    beta = (3.21 - 0.68 * log(damping)) / 2.1156
    for frequency in frequencies:
        if frequency <= 1.1:
            over_quarter = 0.572 * beta * frequency
        elif frequency <= 8:
            over_quarter = 0.625 * beta
        elif frequency <= 33:
            over_quarter = (6.6 * beta - 2.64) / frequency - 0.2 * beta + 0.33
        else:
            over_quarter = 0.25
        acceleration = 4 * zpa * over_quarter
        given = {"spectrum": word, "damping_percent": damping, "frequency_hz": frequency}
        block(f"{name} {frequency} Hz", "expressions of IEEE 693", given, [("beta", beta, ""), ("A_f", acceleration, "g")])
        block(f"{name} {frequency} Hz vertical", "80 % of the horizontal spectrum of IEEE 693", {**given, "axis": "vertical"},
              [("A_V", 0.8 * acceleration, "g")])


ieee_693("Y5", "ieee-693-high", 0.5, 2, [0.3, 1.1, 1.2, 4, 8, 20, 33, 34])
ieee_693("Y6", "ieee-693-moderate", 0.25, 5, [0.5, 2, 12])
ieee_693("Y7", "ieee-693-high-performance", 1.0, 10, [0.8, 6, 25])
ieee_693("Y8", "ieee-693-moderate-performance", 0.5, 3, [0.8, 6, 25])

# Telecommunications, zones.
ZONES = {
    "telecom-1-2": [(0.3, 0.2), (0.6, 2.0), (5.0, 2.0), (15.0, 0.6), (50.0, 0.6)],
    "telecom-3": [(0.3, 0.2), (0.6, 2.0), (1.0, 3.0), (5.0, 3.0), (15.0, 1.0), (50.0, 1.0)],
    "telecom-4": [(0.3, 0.2), (0.6, 2.0), (2.0, 5.0), (5.0, 5.0), (15.0, 1.6), (50.0, 1.6)],
}
for zone, knots in ZONES.items():
    middles = [sqrt(low[0] * high[0]) for low, high in zip(knots, knots[1:])]
    for frequency in middles:
        block(f"Y9 {zone} {frequency:.4g} Hz", "in the middle of a straight line on logarithmic axes, where the acceleration is the "
              "geometric mean of the knots'", {"spectrum": zone, "frequency_hz": frequency}, [("A_f", over(frequency, knots), "g")])


# What a rig must carry.
def rig(name, word, fields, rigid, rigid_v, answered, velocity_at, travel_at):
    mass, (x, y, z), height = 4000.0, (30.0, -50.0, 1200.0), 2300.0
    fixture, fixture_height = 1500.0, 400.0
    force = mass * G * answered
    moment = force * (fixture_height + z) + fixture * G * rigid * fixture_height / 2
    velocity = velocity_at[1] * G * 1000 / (2 * pi * velocity_at[0])
    travel = travel_at[1] * G * 1000 / (2 * pi * travel_at[0]) ** 2
    block(name, "equilibrium of rigid bodies and harmonic motion",
          {"spectrum": word, "fixture_mass_kg": fixture, "fixture_height_mm": fixture_height, "mass_kg": mass,
           "centre_mm": [x, y, z], "height_mm": height, **fields},
          [("m_p", mass + fixture, "kg"), ("F_c", force / 1000, "kN"), ("F_t", (force + fixture * G * rigid) / 1000, "kN"),
           ("M_o", moment / 1e6, "kN-m"), ("T_z", force * 50 / 1e6, "kN-m"), ("N_t", (mass + fixture) * G * (1 + rigid_v) / 1000, "kN"),
           ("P", force * z / height / 1000, "kN"), ("r_P", answered * z / height, "g"), ("v", velocity, "mm/s"), ("d", travel, "mm")])


# AC156, frequency not known: matched from 1.3 Hz, answered with the level.
rig("Y10", "ac156", {"s_ds": 1.0, "height_ratio": 1}, 1.2, 0.27, 1.6, (1.3, 1.6), (1.3, 1.6))
# Known at 12 Hz: the level has begun to fall; matched from 3.5 Hz.
rig("Y11", "ac156", {"s_ds": 1.0, "height_ratio": 1, "lowest_frequency_hz": 12}, 1.2, 0.27, straight(12, (8.3, 1.6), (33.3, 1.2)),
    (3.5, 1.6), (3.5, 1.6))
# Zone 4: matched from 1 Hz by practice. Velocity and travel are most where the line's slope is below 1 and 2: at 1 Hz.
at_1 = over(1.0, ZONES["telecom-4"])
rig("Y12", "telecom-4", {}, 1.6, 1.6, 5.0, (1.0, at_1), (1.0, at_1))
# The same agreed from 0.4 Hz: below 0.6 Hz the line is steeper than both, so the knot at 0.6 Hz asks for most.
rig("Y13", "telecom-4", {"matched_from_hz": 0.4}, 1.6, 1.6, 5.0, (0.6, 2.0), (0.6, 2.0))

print(json.dumps(blocks, indent=2))
