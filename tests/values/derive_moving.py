"""Check values of moving by hand arithmetic: sills, ramps, braking, forks, carriers, lifting by hand.

Prints moving-derived.json. Plain Python, and nothing of the engine is read.
"""

import json
from math import atan, cos, sin, sqrt

G = 9.80665
HALF_DEPTH, HEIGHT = 400.0, 1000.0


def project(mass, moving, x=0.0):
    corners = [("a", -1, -1), ("b", 1, -1), ("c", 1, 1), ("d", -1, 1)]
    return {"format": "steadfoot 1",
            "cabinet": {"width_mm": 1200, "depth_mm": 1000, "height_mm": 2400, "frame": {"mass_kg": mass, "centre_mm": [x, 0, HEIGHT]},
                        "feet": [{"name": name, "at_mm": [450 * a, HALF_DEPTH * b], "size_mm": [0, 0], "stiffness_n_per_mm": 10000}
                                 for name, a, b in corners]},
            "moving": moving}


def block(name, source, checks, given, expect):
    return {"block": name, "source": source, "trust": "derived", "runs": "project",
            "input": {"project": given, "state": "empty", "checks": checks}, "expect": expect}


def value(at, number, digits, unit=""):
    made = {"at": at, "value": f"{number:.{digits}f}", "unit": unit}
    return {key: text for key, text in made.items() if text != ""}


BLOCKS = []
# One of two axles carries 1 kN.
for radius, sill in ((62.5, 5), (62.5, 10), (100, 10), (100, 20)):
    pull = sqrt(2 * radius * sill - sill * sill) / (radius - sill)
    BLOCKS.append(block(f"caster of radius {radius:g} mm at a sill of {sill} mm", "Our own arithmetic of the textbook's formula",
                        ["move.sill"], project(round(2000 / G, 9), {"wheel_radius_mm": radius, "sill_mm": sill}),
                        [value("moving/sill/F", pull, 4, "kN"), value("moving/sill/W_a", 1, 3, "kN")]))
for slope, start in ((0.0, 0.0), (0.05, 0.0), (1 / 12, 0.0), (0.0, 0.2 / G)):
    angle = atan(slope)
    push = 4000 * G * (sin(angle) + 0.02 * cos(angle)) + 4000 * G * start
    BLOCKS.append(block(f"4000 kg on a slope of {slope:.4f}, set in motion at {start * G:.1f} m/s2", "Our own statics along the slope",
                        ["move.push"], project(4000, {"slope": round(slope, 12), "start_g": round(start, 12)}),
                        [value("moving/push/F", push, 2, "N")]))
for slope in (0.0, 1 / 12):
    angle = atan(slope)
    tips = (HALF_DEPTH * cos(angle) - HEIGHT * sin(angle)) / HEIGHT
    BLOCKS.append(block(f"braking on a slope of {slope:.4f}", "Our own statics: moments about the lower wheels", ["move.brake"],
                        project(1000, {"slope": round(slope, 12), "brake_g": 0.1}),
                        [value("moving/brake/t", HALF_DEPTH, 1, "mm"), value("moving/brake/a_tip", tips, 5, "g"),
                         value("moving/brake/u", 0.1 / tips, 4)]))
beside, spread = 50.0, 700.0
tips = (spread / 2 - beside) / HEIGHT
BLOCKS.append(block("forks spread over 700 mm, centre 50 mm beside their middle", "Our own statics: moments about the outer edge",
                    ["move.forks", "move.entry"],
                    project(1000, {"fork_spread_mm": spread, "fork_height_mm": 85, "entry_height_mm": 100}, beside),
                    [value("moving/forks/a_side", tips, 4, "g"), value("moving/forks/u", 0.1 / tips, 4),
                     value("moving/entry/u", 0.85, 4)]))

for slope in (0.0, 0.05):
    angle = atan(slope)
    push = 4000 * G * (sin(angle) + 0.02 * cos(angle))
    BLOCKS.append(block(f"4000 kg kept in motion on a slope of {slope:.4f}", "Our own statics along the slope; limits of HSE L23", ["move.keep"],
                        project(4000, {"slope": slope, "people": 1}),
                        [value("moving/keep/F", push, 2, "N"), value("moving/keep/F_1", 100, 0, "N"), value("moving/keep/u", push / 100, 4)]))
# Carried 200 mm up on wheels 1100 by 700 mm apart; feet 900 by 800 mm apart, centre 30 mm to the side and 1 m above them.
for along, slope, brake in (("front-to-rear", 0.0, 0.3), ("side-to-side", 0.0, 0.3), ("front-to-rear", 0.04, 0.1)):
    feet = {"front-to-rear": (HALF_DEPTH, 450 - 30.0), "side-to-side": (450 - 30.0, HALF_DEPTH)}[along]
    beside = {"front-to-rear": (0.0, 30.0), "side-to-side": (30.0, 0.0)}[along]
    run = sqrt(1 + slope ** 2)
    brakes = (min((550 - beside[0]) / 1200, feet[0] / 1000) - slope) / run
    turns = min((350 - beside[1]) / 1200, feet[1] / 1000)
    BLOCKS.append(block(f"guided vehicle that travels {along} on a slope of {slope}", "Our own statics: moments about the feet and about the wheels",
                        ["move.carrier", "move.deck"],
                        project(1000, {"carrier": "guided-vehicle", "carrier_travels": along, "carrier_length_mm": 1100, "carrier_width_mm": 700,
                                       "deck_height_mm": 200, "slope": slope, "brake_g": brake, "turn_g": 0.2}, 30.0),
                        [value("moving/carrier/a_1", brakes, 5, "g"), value("moving/carrier/a_2", turns, 5, "g"),
                         value("moving/carrier/u", max(brake / brakes, 0.2 / turns), 4),
                         value("moving/deck/a_s", (0.2 - slope) / run, 5, "g"), value("moving/deck/u", max(brake, 0.2) * run / (0.2 - slope), 4)]))
for reach, at, by, turn, grip in ((400, 500, 500, 0, 1), (200, 750, 0, 0, 1), (630, 1750, 1750, 135, 0.9)):
    hm, vm = min(1, 25 / (reach / 10)), 1 - 0.003 * abs(at / 10 - 75)
    dm, am = 0.82 + 4.5 / max(by / 10, 25), 1 - 0.0032 * turn
    rwl = 23 * hm * vm * dm * am * grip
    given = project(400, {"hand_reach_mm": reach, "hand_from_mm": at, "hand_by_mm": by, "hand_turn_deg": turn, "hand_grip_factor": grip})
    given["contents"] = [{"name": "tray", "mass_kg": 10, "bottom_mm": 300, "size_mm": [500, 500, 100]}]
    BLOCKS.append(block(f"a tray lifted by hand, {reach} mm away and {at} mm up",
                        "Our own arithmetic of the revised NIOSH equation, from memory: 23 kg with 25/H, 1 - 0.003 |V - 75|, 0.82 + 4.5/D, 1 - 0.0032 A in cm and degrees",
                        ["move.hand"], given, [value("moving/hand/RWL", rwl, 2, "kg"), value("moving/hand/u", 10 / rwl, 4)]))

print("[\n  " + ",\n  ".join(json.dumps(one) for one in BLOCKS) + "\n]")
