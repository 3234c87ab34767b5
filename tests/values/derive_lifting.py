"""Check values of lifting by hand arithmetic: forces that meet in a hook, the bound for a stiff load on four legs, tables.

Prints lifting-derived.json. Plain Python, and nothing of the engine is read.
"""

import json
from math import atan2, degrees, hypot, pi, radians, sqrt, tan

G = 9.80665


def project(mass, centre, points, lifting):
    return {"format": "steadfoot 1",
            "cabinet": {"width_mm": 1200, "depth_mm": 1200, "height_mm": 2400, "frame": {"mass_kg": mass, "centre_mm": centre},
                        "lifting_points": [{"at_mm": point} for point in points]},
            "lifting": lifting}


def block(name, source, note, checks, given, expect):
    made = {"block": name, "source": source, "trust": "derived", "note": note, "runs": "project",
            "input": {"project": given, "state": "empty", "checks": checks}, "expect": expect}
    return {key: value for key, value in made.items() if value != ""}


def value(at, number, digits, unit=""):
    made = {"at": at, "value": f"{number:.{digits}f}", "unit": unit}
    return {key: text for key, text in made.items() if text != ""}


A, B, TOP = 500.0, 400.0, 2400.0
RECTANGLE = [[-A, -B, TOP], [A, -B, TOP], [A, B, TOP], [-A, B, TOP]]


def legs(mass, factor, x, y, height, shares):
    """Pulls for vertical shares of the weight, the hook above the centre."""
    weight = mass * G * factor
    return [weight * share * hypot(height, hypot(px - x, py - y)) / height
            for share, (px, py, _) in zip(shares, RECTANGLE)]


def stiff(x, y):
    """Any three legs may carry all: the published bound, in the order of the points, for x and y not below zero."""
    u, v = x / A, y / B
    return [(1 - max(u, v)) / 2, (1 - v) / 2, (1 + min(u, v)) / 2, (1 - u) / 2]


def even(x, y):
    """All legs share like springs, for upright legs: a plane over the plan."""
    u, v = x / A, y / B
    return [(1 - u - v) / 4, (1 + u - v) / 4, (1 + u + v) / 4, (1 - u + v) / 4]


BLOCKS = []
for x, y, height in [(0.0, 0.0, 1500.0), (100.0, 0.0, 1500.0), (100.0, 80.0, 1500.0), (50.0, 120.0, 900.0)]:
    pulls = legs(4000.0, 1.25, x, y, height, stiff(x, y))
    given = {"hook_above_mm": height, "leg_capacity_kg": 5000}
    flattest = max(atan2(hypot(px - x, py - y), height) for px, py, _ in RECTANGLE)
    BLOCKS.append(block(
        f"stiff load on four legs, centre at {x:g}, {y:g}, hook {height:g} above", "Our own statics: any three legs carry",
        "With u = x/a and v = y/b the nearest leg takes W/2 (1 + min(u, v)), its neighbours W/2 (1 - u) and W/2 (1 - v).",
        ["lift.leg", "lift.angle"], project(4000.0, [x, y, 1200.0], RECTANGLE, given),
        [value(f"lifting/leg/T_i/{place + 1}", pull, 2, "N") for place, pull in enumerate(pulls)]
        + [value("lifting/leg/T", max(pulls), 2, "N"), value("lifting/leg/u", max(pulls) / (5000 * G), 5),
           value("lifting/angle/beta", degrees(flattest), 4, "deg")]))

# A hook so high that the legs are as good as upright shares evenly; 30 m is the highest that may be given.
pulls = [4000.0 * G * share for share in even(100.0, 80.0)]
BLOCKS.append(block(
    "legs that share evenly, nearly upright", "Our own statics: a plane over the plan",
    "W/4 (1 + u + v) and so on hold for upright legs; at 30 m the legs lean by less than 1.4 degrees.",
    ["lift.leg"],
    project(4000.0, [100.0, 80.0, 1200.0], RECTANGLE,
            {"hook_above_mm": 30000, "leg_capacity_kg": 5000, "sharing": "equalised", "dynamic_factor": 1}),
    [{"at": f"lifting/leg/T_i/{place + 1}", "value": f"{pull:.0f}", "unit": "N", "tolerance": 0.001 * pull,
      "why": "the legs are not quite upright"} for place, pull in enumerate(pulls)]))

# The same on a stiff load: the bound of a body that any three of four supports carry, here 2200, 1800, 1600 and 1600 kg.
bound = (1600.0, 1800.0, 2200.0, 1600.0)
BLOCKS.append(block(
    "stiff load of 4000 kg on nearly upright legs, a fifth and a tenth off the middle", "Our own statics: any three legs carry",
    "The nearest takes W/2 (1 + min(u, v)), the far one W/2 (1 - max(u, v)), the others W/2 (1 - u) and W/2 (1 - v).", ["lift.leg"],
    project(4000.0, [0.2 * A, 0.1 * B, 1200.0], RECTANGLE, {"hook_above_mm": 30000, "leg_capacity_kg": 5000, "dynamic_factor": 1}),
    [{"at": f"lifting/leg/T_i/{place + 1}", "value": f"{kg * G:.0f}", "unit": "N", "tolerance": 0.001 * kg * G,
      "why": "the legs are not quite upright"} for place, kg in enumerate(bound)]))

# The hook 60 mm beside the centre, 2100 mm above it.
BLOCKS.append(block(
    "tilt under a hook that is not above the centre", "Our own statics: the centre comes to rest below the hook", "",
    ["lift.tilt"],
    project(1000.0, [0.0, 0.0, 1200.0], RECTANGLE, {"hook_above_mm": 900, "hook_at_mm": [60, 0]}),
    [value("lifting/tilt/e_H", 60.0, 1, "mm"), value("lifting/tilt/theta", degrees(atan2(60.0, 2100.0)), 4, "deg"),
     value("lifting/tilt/u", degrees(atan2(60.0, 2100.0)) / 5, 4)]))

# M24 x 3 in S235 (360 MPa), 40 mm engaged: the inner thread sheared along the basic profile.
d, p, engaged, tensile = 24.0, 3.0, 40.0, 360.0
d_2 = d - 0.649519 * p
area = pi * engaged / p * d * (p / 2 + 0.57735 * (d - d_2))
pull = 1000.0 * G * 1.25 / 2 * sqrt(1500.0 ** 2 + A ** 2 + B ** 2) / 1500.0
BLOCKS.append(block(
    "thread of an eyebolt M24", "Our own arithmetic on the basic profile of the thread", "",
    ["lift.thread", "lift.attachment"],
    project(1000.0, [0.0, 0.0, 1200.0], RECTANGLE,
            {"hook_above_mm": 1500, "eyebolt": "M24", "thread_engagement_mm": engaged, "base_tensile_mpa": tensile}),
    [value("lifting/thread/d_2", d_2, 3, "mm"), value("lifting/thread/A_s_n", area, 1, "mm2"),
     value("lifting/thread/F_s", 0.5 * tensile * area / 1000, 2, "kN"),
     value("lifting/thread/L_min", 36.0, 1, "mm"), value("lifting/thread/u_L", 0.9, 4),
     value("lifting/thread/u", max(pull / (0.5 * tensile * area / 6), 0.9), 4),
     value("lifting/attachment/m_1", 1290.0, 0, "kg"), value("lifting/attachment/T", pull, 2, "N"),
     value("lifting/attachment/u", pull / (1290.0 * G), 5)]))

# A shouldered eyebolt of 1550 lb, by the lower of the tables: 852.5 lb at 15 degrees and 387.5 lb beyond. A hook over four
# points has all legs at one angle; the rating is read, not the pull.
for angle, share in ((4.9, 1.0), (5.1, 0.55), (15.0, 0.55), (15.1, 0.25), (60.0, 0.25)):
    reach = sqrt(A ** 2 + B ** 2)
    height = round(reach / tan(radians(angle)), 6)
    BLOCKS.append(block(
        f"shouldered eyebolt of 1550 lb, pulled {angle:g} degrees from its axis", "ASME B30.26 by way of the lower table (from memory)", "",
        ["lift.attachment"],
        project(100.0, [0.0, 0.0, 1200.0], RECTANGLE, {"hook_above_mm": height, "shoulder_eyebolt_kg": round(1550 * 0.45359237, 9)}),
        [value("lifting/attachment/k_p", share, 2), value("lifting/attachment/m_1", 1550 * share, 1, "lb")]))
# A lug that yields at 60 kN and breaks at 80 kN: BTH-1 in three categories, and EN 13155.
for category, factors in (("a", (2.0, 2.4)), ("b", (3.0, 3.6)), ("c", (6.0, 7.2)), ("en-13155", (2.0, 3.0))):
    for yields, breaks in ((60.0, 80.0), (60.0, 66.0), (40.0, 80.0)):
        BLOCKS.append(block(
            f"lug that yields at {yields:g} and breaks at {breaks:g} kN, {category}",
            "ASME BTH-1 3-1.3 read in a note of ncsx.pppl.gov (category A) and from memory; EN 13155 5.1.1 from memory", "",
            ["lift.attachment", "lift.thread"],
            project(1000.0, [0.0, 0.0, 1200.0], RECTANGLE,
                    {"hook_above_mm": 1500, "lug_yield_n": yields * 1000, "lug_break_n": breaks * 1000, "lug_category": category}),
            [value("lifting/attachment/R", min(yields / factors[0], breaks / factors[1]), 4, "kN")]))

print("[\n  " + ",\n  ".join(json.dumps(one) for one in BLOCKS) + "\n]")
