"""Check values of whole cabinets by hand arithmetic: sums of masses and moments, a block on its edge, a foot on concrete.

Prints project-derived.json. Plain Python, and nothing of the engine is read.
"""

import json
from math import sqrt


def box_inertia(mass, a, b):
    """A uniform box about the axis across its sides a and b."""
    return mass * (a * a + b * b) / 12


def feet(x, y, side):
    places = [("front left", -x, -y), ("front right", x, -y), ("rear right", x, y), ("rear left", -x, y)]
    return [{"name": name, "at_mm": [at_x, at_y], "size_mm": [side, side]} for name, at_x, at_y in places]


def direct(vertical, horizontal=0.3):
    return {"rule": "direct", "format": "strength", "horizontal_coefficient": horizontal, "vertical_coefficient": vertical,
            "gravity_heavy": 1.2, "gravity_light": 0.9}


def block(name, source, note, project, expect, **place):
    given = {"block": name, "source": source, "trust": "derived", "note": note, "runs": "project",
             "input": {"project": project, **place}, "expect": expect}
    return {key: value for key, value in given.items() if value != ""}


def value(at, number, digits, unit=""):
    given = {"at": at, "value": f"{number:.{digits}f}", "unit": unit}
    return {key: text for key, text in given.items() if text != ""}


# A frame of 450 kg, 1.2 m wide and 2.4 m high, and in it 3000 kg, 1.0 m by 1.6 m, whose middle is 0.1 m to the right
# of the frame's and 1.5 m above the floor.
FRAME, LOAD = 450.0, 3000.0
WIDTH, HEIGHT, LOAD_WIDTH, LOAD_HEIGHT = 1.2, 2.4, 1.0, 1.6
FRAME_AT, LOAD_AT = (0.0, 1.2), (0.1, 1.5)
HALF_BASE = 0.6

MASS = FRAME + LOAD
X = (FRAME * FRAME_AT[0] + LOAD * LOAD_AT[0]) / MASS
Z = (FRAME * FRAME_AT[1] + LOAD * LOAD_AT[1]) / MASS


def moved(mass, at):
    return mass * ((at[0] - X) ** 2 + (at[1] - Z) ** 2)


INERTIA = (box_inertia(FRAME, WIDTH, HEIGHT) + moved(FRAME, FRAME_AT)
           + box_inertia(LOAD, LOAD_WIDTH, LOAD_HEIGHT) + moved(LOAD, LOAD_AT))


def cabinet(vertical):
    return {
        "format": "steadfoot 1",
        "cabinet": {"width_mm": 1200, "depth_mm": 1000, "height_mm": 2400,
                    "frame": {"mass_kg": FRAME, "centre_mm": [0, 0, 1200]}, "feet": feet(550, 450, 100)},
        "contents": [{"name": "load", "mass_kg": LOAD, "bottom_mm": 700, "size_mm": [1000, 800, 1600],
                      "offset_mm": [100, 0]}],
        "site": direct(vertical),
    }


def standing(name, direction_deg, along, vertical):
    return block(
        name, "Our own example: a block on its edge, a = (1 - a_v) t / h", "",
        cabinet(vertical),
        [value("standing-free/tipping/t", along * 1000, 3, "mm"),
         value("standing-free/tipping/a_tip", (1 - vertical) * along / Z, 5, "g"),
         value("standing-free/sliding/a_slide", (1 - vertical) * 0.2, 5, "g")],
        direction_deg=direction_deg)


# A foot of 4 in. on 6 in. of concrete of 4000 psi, far from everything: the root of the areas would be 7 and stops at 2.
# The push is next to nothing, so that the force stands in the middle of the foot.
FOOT, THICKNESS, STRENGTH = 4.0, 6.0, 4.0
ROOT = sqrt((FOOT + 2 * 2 * THICKNESS) ** 2 / FOOT ** 2)
BEARING = 0.85 * STRENGTH * FOOT ** 2 * min(2.0, ROOT)
INCH = 25.4

FOOT_PROJECT = {
    "format": "steadfoot 1",
    "cabinet": {"width_mm": 1200, "depth_mm": 1200, "height_mm": 2000,
                "frame": {"mass_kg": 4000, "centre_mm": [0, 0, 900]}, "feet": feet(500, 500, FOOT * INCH)},
    "slab": {"strength_mpa": STRENGTH * 6.894757293168361, "thickness_mm": THICKNESS * INCH,
             "edges_mm": {"left": None, "right": None, "front": None, "rear": None}},
    "site": direct(0.0, horizontal=0.001),
}

BLOCKS = [
    block("composite cabinet", "Our own example: sums of masses and of first moments, parallel axes", "",
          cabinet(0.0),
          [value("load-out/m", MASS, 0, "kg"), value("load-out/x", X * 1000, 3, "mm"),
           value("load-out/z", Z * 1000, 3, "mm"), value("load-out/J_y", INERTIA, 3, "kg-m2")]),
    standing("standing free, to the right", 0, HALF_BASE - X, 0.0),
    standing("standing free, to the left", 180, HALF_BASE + X, 0.0),
    standing("standing free, to the right, unloaded by 0.2", 0, HALF_BASE - X, 0.2),
    block("foot on concrete", "Our own arithmetic by ACI 318-19 22.8.3.2", "", FOOT_PROJECT,
          [value("feet/foot-1/bearing/r_A", min(2.0, ROOT), 1), value("feet/foot-1/bearing/B_n", BEARING, 1, "kip")],
          case="heavy"),
]

lines = []
for one in BLOCKS:
    rows = [f"    {json.dumps(key)}: {json.dumps(value)}" for key, value in one.items() if key != "expect"]
    expect = ",\n      ".join(json.dumps(row) for row in one["expect"])
    rows.append(f'    "expect": [\n      {expect}\n    ]')
    lines.append("  {\n" + ",\n".join(rows) + "\n  }")
print("[\n" + ",\n".join(lines) + "\n]")
