#!/usr/bin/env python3
"""Derives stress areas, bearing areas and steel strengths of bolts in plain Python.

Prints `bolts-derived.json`. It reads nothing of the engine. Our own arithmetic from threads and widths across flats; it
agrees with the three digits that AISC Design Guide 1 (2024) prints in its Tables 4-1 and 4-2.
"""

import json
from math import pi, sqrt

# Diameter in eighths or as printed, threads per inch, width across flats of the hexagon head.
INCH = [
    ("1/4 in", 1 / 4, 20, 7 / 16), ("5/16 in", 5 / 16, 18, 1 / 2), ("3/8 in", 3 / 8, 16, 9 / 16), ("7/16 in", 7 / 16, 14, 5 / 8),
    ("1/2 in", 1 / 2, 13, 3 / 4), ("5/8 in", 5 / 8, 11, 15 / 16), ("3/4 in", 3 / 4, 10, 9 / 8), ("7/8 in", 7 / 8, 9, 21 / 16),
    ("1 in", 1, 8, 3 / 2), ("1-1/8 in", 9 / 8, 7, 27 / 16), ("1-1/4 in", 5 / 4, 7, 15 / 8), ("1-3/8 in", 11 / 8, 6, 33 / 16),
    ("1-1/2 in", 3 / 2, 6, 9 / 4), ("1-3/4 in", 7 / 4, 5, 21 / 8), ("2 in", 2, 4.5, 3)]
METRIC = [("M8", 8, 1.25, 13), ("M10", 10, 1.5, 16), ("M12", 12, 1.75, 18), ("M14", 14, 2, 21), ("M16", 16, 2, 24),
          ("M18", 18, 2.5, 27), ("M20", 20, 2.5, 30), ("M22", 22, 2.5, 34), ("M24", 24, 3, 36), ("M27", 27, 3, 41),
          ("M30", 30, 3.5, 46), ("M33", 33, 3.5, 50), ("M36", 36, 4, 55)]

blocks = []


def hexagon(across, d):
    return sqrt(3) / 2 * across ** 2 - pi / 4 * d ** 2


def block(name, source, rule, bolt, expect):
    blocks.append({"block": name, "source": source, "trust": "derived", "runs": "bolts", "input": {"rule": rule, "bolt": bolt},
                   "expect": [{"at": at, "value": value, "unit": unit} for at, value, unit in expect]})


for bolt, d, per_inch, across in INCH:
    a_se = pi / 4 * (d - 0.9743 / per_inch) ** 2
    rows = [("A_se", f"{a_se:.4f}", "in2"), ("own/A_brg", f"{hexagon(across, d):.3f}", "in2")]
    rows += [(f"{steel}/N_sa", f"{a_se * f_u:.4g}", "kip")
             for steel, f_u in (("f1554-36", 58), ("f1554-55", 75), ("f1554-105", 125))]
    if d >= 0.5:
        rows.append(("heavy-hex/A_brg", f"{hexagon(1.5 * d + 1 / 8, d):.3f}", "in2"))
    block(f"thread {bolt}", "Our own arithmetic: ASME B1.1 thread, ACI 318-19 R17.6.1.2; widths of ASME B18.2.1", "aci-318-19", bolt, rows)

for bolt, d, pitch, across in METRIC:
    a_s = pi / 4 * (d - 0.9382 * pitch) ** 2
    rows = [("A_se", f"{a_s:.4g}", "mm2"), ("own/A_brg", f"{hexagon(across, d):.4g}", "mm2")]
    rows += [(f"{steel}/N_sa", f"{a_s * f_u / 1000:.4g}", "kN")
             for steel, f_u in (("iso-4.6", 400), ("iso-5.8", 500), ("iso-8.8", 800))]
    block(f"thread {bolt}", "Our own arithmetic: ISO 898-1 stress area; widths of ISO 4014", "aci-318-19-si", bolt, rows)

lines = []
for one in blocks:
    rows = [f"    {json.dumps(key)}: {json.dumps(value)}" for key, value in one.items() if key != "expect"]
    expect = ",\n      ".join(json.dumps(row) for row in one["expect"])
    rows.append(f'    "expect": [\n      {expect}\n    ]')
    lines.append("  {\n" + ",\n".join(rows) + "\n  }")
print("[\n" + ",\n".join(lines) + "\n]")
