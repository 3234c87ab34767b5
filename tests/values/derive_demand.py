#!/usr/bin/env python3
"""Derives check values of the demand rules from the clauses, by hand arithmetic in plain Python.

Prints `demand-derived.json`. It reads nothing of the engine. The vectors are our own: good against slips, never to be
called published.
"""

import json
from math import sqrt

WEIGHT_KN = 4000 * 9.80665 / 1000
OWN = "Our own vector, by hand arithmetic from the clauses, for a cabinet of 4000 kg"

blocks = []


def block(name, source, note, rule, fields, expect):
    text = {"block": name, "source": f"{OWN}: {source}", "trust": "derived"}
    if note:
        text["note"] = note
    text["runs"] = "demand"
    text["input"] = {"rule": rule, "weight": f"{WEIGHT_KN!r} kN", **fields}
    text["expect"] = [
        {"at": at, "value": f"{value:.9g}", **({"unit": unit} if unit else {})} for at, value, unit in expect
    ]
    blocks.append(text)


def heights(ratio):
    return {"attachment_height_m": 20 * ratio, "roof_height_m": 20}


def limited(force, low, high):
    return max(low, min(high, force))


# ASCE 7-16: 13.3-1 to 13.3-3. Rows: sheet-metal cabinet 2.5 and 6, communication equipment 1 and 2.5.
def asce_7_16(name, s_ds, i_p, component, a_p, r_p, ratio):
    force = 0.4 * a_p * s_ds * WEIGHT_KN / (r_p / i_p) * (1 + 2 * ratio)
    low, high = 0.3 * s_ds * i_p * WEIGHT_KN, 1.6 * s_ds * i_p * WEIGHT_KN
    governing = limited(force, low, high)
    vertical = 0.2 * s_ds * WEIGHT_KN
    block(name, "ASCE 7-16 13.3.1, 2.3.6, 12.4.3", "", "asce-7-16",
          {"s_ds": s_ds, "importance_factor": i_p, "component": component, **heights(ratio)},
          [("c_1*W", force, "kN"), ("c_min*W", low, "kN"), ("c_max*W", high, "kN"), ("F_p", governing, "kN"),
           ("E_v", vertical, "kN"), ("F_m", 2 * governing, "kN"),
           ("LRFD 6/down", 1.2 * WEIGHT_KN + vertical, "kN"), ("LRFD 7/down", 0.9 * WEIGHT_KN - vertical, "kN"),
           ("LRFD 7m/down", 0.9 * WEIGHT_KN - vertical, "kN"), ("LRFD 7/push", governing, "kN"),
           ("LRFD 7m/push", 2 * governing, "kN")])


asce_7_16("V1", 1.0, 1.0, "sheet-metal-cabinet", 2.5, 6.0, 0)
asce_7_16("V2", 1.0, 1.5, "sheet-metal-cabinet", 2.5, 6.0, 1)
asce_7_16("V3", 1.0, 1.0, "communication", 1.0, 2.5, 0.5)


# ASCE 7-22: 13.3-1 to 13.3-6.
def h_f(ratio, period):
    if period is None:
        return 1 + 2.5 * ratio
    a_1 = min(1 / period, 2.5)
    a_2 = max(1 - (0.4 / period) ** 2, 0)
    return 1 + a_1 * ratio + a_2 * ratio ** 10


def asce_7_22(name, s_ds, i_p, component, c_ar, r_po, ratio, period, building, extra):
    at_grade = ratio == 0
    amplification = 1 if at_grade else h_f(ratio, period)
    if at_grade:
        r_mu = 1
    elif building is None:
        r_mu = 1.3
    else:
        r, omega, i_e = building
        r_mu = max(1.3, sqrt(1.1 * r / (i_e * omega)))
    force = 0.4 * s_ds * i_p * WEIGHT_KN * amplification / r_mu * c_ar / r_po
    low, high = 0.3 * s_ds * i_p * WEIGHT_KN, 1.6 * s_ds * i_p * WEIGHT_KN
    block(name, "ASCE 7-22 13.3.1", "", "asce-7-22",
          {"s_ds": s_ds, "importance_factor": i_p, "component": component, **heights(ratio), **extra},
          [("H_f", amplification, ""), ("R_mu", r_mu, ""), ("c_1*W", force, "kN"), ("F_p", limited(force, low, high), "kN")]
          + ([("R", r, ""), ("Omega_b", omega, "")] if building else []))


steel = {"period": "given", "building_period_s": 0.5, "building_system": "steel-moment-frame"}
asce_7_22("V4", 1.0, 1.0, "sheet-metal-cabinet", 1.4, 2.0, 0, None, None, {})
asce_7_22("W5", 1.0, 1.0, "sheet-metal-cabinet", 1.4, 2.0, 1, 0.5, (8, 3, 1.0), {**steel, "building_importance": 1.0})
asce_7_22("W6", 1.0, 1.5, "sheet-metal-cabinet", 1.4, 2.0, 1, 0.5, (8, 3, 1.5), {**steel, "building_importance": 1.5})
asce_7_22("W7", 1.0, 1.0, "communication", 1.0, 1.5, 1, None, None, {})
asce_7_22("W8.middle", 1.0, 1.0, "communication", 1.0, 1.5, 0.5, 0.5, None, {"period": "given", "building_period_s": 0.5})
asce_7_22("W8.roof", 1.0, 1.0, "communication", 1.0, 1.5, 1, 1.0, None, {"period": "given", "building_period_s": 1.0})

# R_mu of the building systems (R, overstrength), for the three importance factors, cabinet on the middle floor.
SYSTEMS = [
    ("steel-moment-frame", 8, 3), ("concrete-moment-frame", 8, 3), ("intermediate-concrete-moment-frame", 5, 3),
    ("ordinary-concrete-moment-frame", 3, 3), ("special-wall-bearing", 5, 2.5), ("special-wall-frame", 6, 2.5),
    ("ordinary-wall-bearing", 4, 2.5), ("special-braced-frame", 6, 2), ("ordinary-braced-frame", 3.25, 2),
    ("buckling-restrained-braced-frame", 8, 2.5), ("eccentrically-braced-frame", 8, 2), ("steel-not-detailed", 3, 3),
]
for system, r, omega in SYSTEMS:
    for i_e in (1.0, 1.25, 1.5):
        asce_7_22(f"R_mu {system} {i_e}", 1.0, 1.0, "sheet-metal-cabinet", 1.4, 2.0, 0.5, None, (r, omega, i_e),
                  {"building_system": system, "building_importance": i_e})

# Approximate periods of 12.8-8 for a roof at 20 m; an unknown system takes the row "all other".
for system, c_t, power in [("steel-moment-frame", 0.0724, 0.8), ("concrete-moment-frame", 0.0466, 0.9),
                           ("eccentrically-braced-frame", 0.0731, 0.75), ("special-wall-frame", 0.0488, 0.75),
                           ("unknown", 0.0488, 0.75)]:
    period = c_t * 20 ** power
    known = {} if system == "unknown" else {"building_importance": 1.0}
    block(f"T_a {system}", "ASCE 7-22 12.8-8, 13.3-4", "", "asce-7-22",
          {"s_ds": 1.0, "importance_factor": 1.0, "component": "communication", **heights(0.8), "period": "approximate",
           "building_system": system, **known},
          [("T_a", period, "s"), ("H_f", h_f(0.8, period), "")])


# UBC 1997: 32-1 to 32-3, C_a 0.44, row 2.5 and 3; anchors embedded deep, shallow, nonductile.
def ubc_1997(name, ratio, anchors, r_pa, component="equipment-flexible", a_p=2.5, r_p=3.0, isolated=1):
    c_a, i_p = 0.44, 1.0
    low, high = 0.7 * c_a * i_p * WEIGHT_KN, 4 * c_a * i_p * WEIGHT_KN
    force = limited(a_p * c_a * i_p / r_p * (1 + 3 * ratio) * WEIGHT_KN, low, high)
    on_anchors = isolated * limited(a_p * c_a * i_p / r_pa * (1 + 3 * ratio) * WEIGHT_KN, low, high)
    vertical = 0.5 * c_a * i_p * WEIGHT_KN
    block(name, "UBC 1997 1632.2, 1612.2.1", "", "ubc-1997",
          {"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": i_p, "component": component,
           "anchor_type": anchors, **heights(ratio)},
          [("c_min*W", low, "kN"), ("c_max*W", high, "kN"), ("F_p", force, "kN"), ("F_pa", on_anchors, "kN"),
           ("E_v", vertical, "kN"), ("12-5/down", 1.2 * WEIGHT_KN + vertical, "kN"),
           ("12-6/down", 0.9 * WEIGHT_KN - vertical, "kN"), ("12-6/push", force, "kN"),
           ("12-5c/down", 1.1 * (1.2 * WEIGHT_KN + vertical), "kN"), ("12-6c/push", 1.1 * force, "kN"),
           ("12-5a/down", 1.1 * (1.2 * WEIGHT_KN + vertical), "kN"),
           ("12-6a/down", 1.1 * (0.9 * WEIGHT_KN - vertical), "kN"), ("12-6a/push", 1.1 * on_anchors, "kN")])


for place, ratio in [("grade", 0), ("middle", 0.5), ("roof", 1)]:
    ubc_1997(f"UBC {place} deep", ratio, "deep", 3.0)
    ubc_1997(f"UBC {place} shallow", ratio, "shallow", 1.5)
    ubc_1997(f"UBC {place} nonductile", ratio, "nonductile", 1.0)
ubc_1997("UBC isolated shallow", 1, "shallow", 1.5, "isolated", 2.5, 1.5, 2)
ubc_1997("UBC isolated deep", 1, "deep", 1.5, "isolated", 2.5, 1.5, 1)

# R9 once more with what its source leaves to the reader: 0.8 kip under isolators with shallow anchors.
R9 = {"zone": "4", "soil_profile": "SD", "seismic_source": "C", "importance_factor": 1.0, "component": "isolated",
      "anchor_type": "shallow", **heights(1)}
block("R9.anchors", "UBC 1997 32-3 and footnote 14 of Table 16-O", "Completes R9: the anchors' force and the uncapped one.", "ubc-1997", R9,
      [("c_2", 2.5 * 0.44 / 1.5 * 4, "g"), ("c_p", 1.76, "g"), ("c_pi", 3.52, "g")])

# W9: combinations by strength (ASCE 7-16) and by allowable stress, the second given directly.
force = 0.3 * WEIGHT_KN
vertical = 0.2 * WEIGHT_KN
block("W9.strength", "ASCE 7-16 2.3.6, 12.4.3", "The pulls of its rows of anchors are statics and are checked there.", "asce-7-16",
      {"s_ds": 1.0, "importance_factor": 1.0, "component": "communication", **heights(0)},
      [("LRFD 7/down", 0.9 * WEIGHT_KN - vertical, "kN"), ("LRFD 7/push", force, "kN"), ("LRFD 7m/push", 2 * force, "kN")])
block("W9.allowable", "ASCE 7-16 2.4.5", "", "direct",
      {"format": "allowable-stress", "horizontal_coefficient": 0.21, "vertical_coefficient": 0.14, "gravity_heavy": 1.0,
       "gravity_light": 0.6, "overstrength": 2.0},
      [("light/down", 0.6 * WEIGHT_KN - 0.7 * vertical, "kN"), ("light/push", 0.7 * force, "kN"),
       ("light m/push", 2 * 0.7 * force, "kN"), ("heavy/down", WEIGHT_KN + 0.7 * vertical, "kN")])

# Figures of an earlier hand calculation, kN but for the factors; this script has to meet them.
EARLIER = [
    ("V1", "c_1*W", 6.538), ("V1", "F_p", 11.768), ("V2", "F_p", 29.420), ("V2", "c_min*W", 17.652), ("V2", "c_max*W", 94.144),
    ("V3", "F_p", 12.553), ("V4", "c_1*W", 10.983), ("V4", "F_p", 11.768), ("W5", "H_f", 3.3600), ("W5", "R_mu", 1.71270),
    ("W5", "F_p", 21.548), ("W6", "F_p", 39.585), ("W7", "F_p", 28.163), ("W8.middle", "H_f", 2.00035), ("W8.roof", "H_f", 2.8400),
    ("UBC grade deep", "F_p", 14.383), ("UBC middle deep", "F_p", 35.958), ("UBC roof deep", "F_p", 57.532),
    ("UBC grade deep", "c_min*W", 12.082), ("UBC grade deep", "c_max*W", 69.039), ("W9.strength", "LRFD 7/down", 27.459),
    ("W9.strength", "LRFD 7m/push", 23.536), ("W9.allowable", "light/down", 18.044), ("W9.allowable", "light/push", 8.238),
    ("W9.allowable", "light m/push", 16.475), ("R_mu special-wall-frame 1.25", "R_mu", 1.453),
    ("R_mu eccentrically-braced-frame 1.0", "R_mu", 2.098), ("R_mu ordinary-braced-frame 1.0", "R_mu", 1.337),
    ("R_mu buckling-restrained-braced-frame 1.5", "R_mu", 1.532), ("R_mu ordinary-wall-bearing 1.25", "R_mu", 1.300),
    ("R_mu intermediate-concrete-moment-frame 1.0", "R_mu", 1.354), ("R_mu special-wall-bearing 1.0", "R_mu", 1.483),
]
found = {(one["block"], row["at"]): float(row["value"]) for one in blocks for row in one["expect"]}
for name, at, printed in EARLIER:
    assert abs(found[name, at] - printed) < 0.00051, (name, at, printed, found[name, at])

lines = []
for one in blocks:
    rows = [f"    {json.dumps(key)}: {json.dumps(value)}" for key, value in one.items() if key != "expect"]
    expect = ",\n      ".join(json.dumps(row) for row in one["expect"])
    rows.append(f'    "expect": [\n      {expect}\n    ]')
    lines.append("  {\n" + ",\n".join(rows) + "\n  }")
print("[\n" + ",\n".join(lines) + "\n]")
