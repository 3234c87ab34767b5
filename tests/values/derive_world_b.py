#!/usr/bin/env python3
"""Derives check values of the earlier American rules and those of Asia and South America, in plain Python.

Prints `world_b-derived.json`. It reads nothing of the engine. The vectors are our own: good against slips, never to be
called published.
"""

import json

WEIGHT_KN = 4000 * 9.80665 / 1000
OWN = "Our own vector, by hand arithmetic from the clauses, for a cabinet of 4000 kg"

blocks = []


def block(name, source, rule, fields, expect, note=""):
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


def line(x, rows):
    """Straight between the rows, level beyond."""
    if x <= rows[0][0]:
        return rows[0][1]
    for (x0, y0), (x1, y1) in zip(rows, rows[1:]):
        if x <= x1:
            return y0 + (y1 - y0) * (x - x0) / (x1 - x0)
    return rows[-1][1]


W = WEIGHT_KN


def down(name, factor, vertical):
    return (f"{name}/down", (factor + vertical) * W, "kN")


# ASCE 7-10: V1 to V3 once more, with its overstrength factor of 2.5.
def asce_7_10(name, s_ds, i_p, component, a_p, r_p, ratio):
    force = limited(0.4 * a_p * s_ds / (r_p / i_p) * (1 + 2 * ratio), 0.3 * s_ds * i_p, 1.6 * s_ds * i_p)
    block(name, "ASCE 7-10 13.3.1, 2.3.2, 12.4.3", "asce-7-10",
          {"s_ds": s_ds, "importance_factor": i_p, "component": component, **heights(ratio)},
          [("F_p", force * W, "kN"), ("E_v", 0.2 * s_ds * W, "kN"), ("F_m", 2.5 * force * W, "kN"),
           down("LRFD 5", 1.2, 0.2 * s_ds), down("LRFD 7m", 0.9, -0.2 * s_ds), ("LRFD 7m/push", 2.5 * force * W, "kN")])


asce_7_10("7-10 V1", 1.0, 1.0, "sheet-metal-cabinet", 2.5, 6.0, 0)
asce_7_10("7-10 V2", 1.0, 1.5, "sheet-metal-cabinet", 2.5, 6.0, 1)
asce_7_10("7-10 V3", 1.0, 1.0, "communication", 1.0, 2.5, 0.5)


# ASCE 7-05 and TI 809-04: anchors 1.3 times the force with a response factor of at most 1.5.
def earlier(rule, name, s_ds, i_p, component, a_p, r_p, ratio, anchors, r_pa, names, source):
    low, high = 0.3 * s_ds * i_p, 1.6 * s_ds * i_p
    force = limited(0.4 * a_p * s_ds / (r_p / i_p) * (1 + 2 * ratio), low, high)
    on_anchors = 1.3 * limited(0.4 * a_p * s_ds / (r_pa / i_p) * (1 + 2 * ratio), low, high)
    vertical = 0.2 * s_ds
    heavy, light = names
    block(name, source, rule,
          {"s_ds": s_ds, "importance_factor": i_p, "component": component, "anchor_type": anchors, **heights(ratio)},
          [("F_p", force * W, "kN"), ("E_v", vertical * W, "kN"), ("F_pa", on_anchors * W, "kN"),
           down(heavy, 1.2, vertical), down(light, 0.9, -vertical), down(heavy + "a", 1.2, 1.3 * vertical),
           down(light + "a", 0.9, -1.3 * vertical), (light + "/push", force * W, "kN"),
           (light + "a/push", on_anchors * W, "kN")])


for ratio in (0, 0.5, 1):
    for anchors, r_pa in (("qualified", 6.0), ("other", 1.5)):
        earlier("asce-7-05", f"7-05 {ratio} {anchors}", 1.0, 1.0, "sheet-metal-cabinet", 2.5, 6.0, ratio, anchors, r_pa,
                ("LRFD 5", "LRFD 7"), "ASCE 7-05 13.3.1, 13.4.2, 2.3.2")
    for anchors, r_pa in (("deep", 2.5), ("shallow", 1.5)):
        earlier("ti-809-04", f"TI {ratio} {anchors}", 0.8, 1.5, "electrical", 1.0, 2.5, ratio, anchors, r_pa,
                ("1.2", "0.9"), "TI 809-04 10-1 to 10-3, FEMA 302 6.1.6, 5.2.7")

# The site coefficient that NEHRP had from 1997 to 2009, and two thirds or three quarters of the motion.
COLUMNS = (0.25, 0.5, 0.75, 1.0, 1.25)
F_A = {"A": (0.8,) * 5, "B": (1.0,) * 5, "C": (1.2, 1.2, 1.1, 1.0, 1.0), "D": (1.6, 1.4, 1.2, 1.1, 1.0),
       "E": (2.5, 1.7, 1.2, 0.9, 0.9)}
for letter, row in F_A.items():
    for s_s in (0.2, 0.4, 0.9, 1.6):
        f_a = line(s_s, list(zip(COLUMNS, row)))
        site = {"s_s": s_s, "site_class": letter, "importance_factor": 1.0, **heights(0)}
        block(f"F_a 7-10 {letter} {s_s}", "ASCE 7-10 Table 11.4-1", "asce-7-10", {**site, "component": "communication"},
              [("F_a", f_a, ""), ("S_DS", 2 / 3 * f_a * s_s, "g")])
        if letter != "E" or s_s <= 1.0:
            motion = "B" if s_s > 0.5 else "A"
            share = 3 / 4 if motion == "B" else 2 / 3
            block(f"F_a TI {letter} {s_s}", "FEMA 302 Table 4.1.2.4a, ground motions of TI 809-04", "ti-809-04",
                  {**site, "component": "electrical", "anchor_type": "deep", "ground_motion": motion},
                  [("F_a", f_a, ""), ("S_DS", share * f_a * s_s, "g")])

# UBC 1994: every zone, rigid and nonrigid, at grade and above.
for zone, z in (("1", 0.075), ("2A", 0.15), ("2B", 0.2), ("3", 0.3), ("4", 0.4)):
    for component, c in (("rigid", 0.75), ("nonrigid", 1.5)):
        for height, share in ((0, 2 / 3), (10, 1)):
            force = z * 1.5 * c * share
            block(f"UBC 1994 {zone} {component} {height}", "UBC 1994 30-1, Tables 16-I and 16-O, factor 1.4", "ubc-1994",
                  {"zone": zone, "importance_factor": 1.5, "component": component, "attachment_height_m": height},
                  [("F_p", force * W, "kN"), ("0.9/push", 1.4 * force * W, "kN"), down("1.4", 1.4, 0), down("0.9", 0.9, 0)])

# Japan: O-J1 to O-J5, the force only.
for name, seismic_class, storey, k_h in (("O-J1", "B", 1, 0.4), ("O-J2", "A", 1, 0.6), ("O-J3", "S", 1, 1.0), ("O-J5", "S", 5, 2.0)):
    block(f"{name}.demand", "Japanese practice for building equipment, K_H W and K_H W / 2", "japan-equipment",
          {"component": "equipment", "seismic_class": seismic_class, "storeys": 5, "storey": storey},
          [("F_H", k_h * W, "kN"), ("F_V", k_h * W / 2, "kN"), ("W + F_V/down", (1 + k_h / 2) * W, "kN"),
           ("W - F_V/down", (1 - k_h / 2) * W, "kN"), ("W - F_V/push", k_h * W, "kN")])
for region in (0.7, 0.8, 0.9, 1.0):
    block(f"Japan region {region}", "Japanese practice for building equipment, K_H = Z K_S", "japan-equipment",
          {"component": "isolated", "seismic_class": "A", "storeys": 12, "storey": 10, "region_factor": f"{region:.1f}"},
          [("K_H", region * 1.5, "g"), ("K_V", region * 0.75, "g")])

# Japan: bolts of the box of O-J1 to O-J5, 1.2 m to its centre of gravity, bolts 1.0 m apart, on the floor and hung.
def japan_bolts(name, k_h, hung=False, h=1200.0, span=1000.0, off=0.0, note=""):
    push, lift = k_h * W, k_h / 2 * W
    row, all_bolts, area = 2, 4, 3.141592653589793 / 4 * (16 - 0.9382 * 2) ** 2
    # Pushed to the right it turns about the right row; a centre of gravity off to the right is nearer to it.
    from_pivot = span / 2 - off
    if hung:
        pull = (push * h + (W + lift) * (span - (span - from_pivot))) / (span * row)
    else:
        pull = (push * h - (W - lift) * from_pivot) / (span * row)
    shear = push / all_bolts
    tau, sigma = shear * 1000 / area, max(0, pull) * 1000 / area
    left = min(176, 1.4 * 176 - 1.6 * tau)
    fields = {"rule": "japan-bolts", "bolt": "M16", "steel": "ss400", "embedment_mm": 130,
              "slab": {"strength": "21 MPa", "thickness": "200 mm"},
              "anchors": [{"at": [x * span / 2, y * 400]} for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1))],
              "whole": {"weight": f"{W!r} kN", "upward": f"{(-lift if hung else lift)!r} kN", "push": f"{push!r} kN",
                        "at": [off, 0], "height": h, "direction_deg": 0}}
    if hung:
        fields.update({"mounting": "hung", "fixing_height_mm": 2 * h})
    expect = [("shear-steel/Q", shear, "kN"), ("shear-steel/tau", tau, "MPa")]
    if pull > 0:
        expect += [("tension-steel/R_b", pull, "kN"), ("tension-steel/sigma", sigma, "MPa"),
                   ("interaction-steel/f_ts", left, "MPa"), ("interaction-steel/u", max(sigma / 176, (sigma + 1.6 * tau) / (1.4 * 176)), "")]
    text = {"block": name, "source": f"{OWN}: Japanese practice for building equipment, pull and shear of bolts", "trust": "derived"}
    text["runs"] = "anchors"
    text["input"] = fields
    text["expect"] = [{"at": at, "value": f"{value:.9g}", **({"unit": unit} if unit else {})} for at, value, unit in expect]
    blocks.append(text)


for name, k_h in (("O-J1", 0.4), ("O-J2", 0.6), ("O-J3", 1.0)):
    japan_bolts(f"{name}.bolts", k_h)
    japan_bolts(f"{name}.hung", k_h, hung=True)
japan_bolts("O-J2.off centre", 0.6, off=200.0)
japan_bolts("O-J2.hung off centre", 0.6, hung=True, off=200.0)
japan_bolts("O-J no pull", 0.3)

# China: O-CN1, then every intensity and row.
ALPHA = {"6": 0.04, "7": 0.08, "7-0.15g": 0.12, "8": 0.16, "8-0.30g": 0.24, "9": 0.32}
ROWS = {"emergency-power": (1.0, (1.4, 1.4, 1.4)), "cabinet": (0.6, (1.4, 1.0, 0.6)), "tank": (1.2, (1.4, 1.0, 1.0))}


def china(name, intensity, component, building, ratio, factors=None):
    eta, gammas = ROWS[component]
    gamma = gammas["ABC".index(building)]
    coefficient = gamma * eta * 2 * (1 + ratio) * ALPHA[intensity]
    heavy, on_push, names = (1.3, 1.4, ("1.3", "1.0")) if factors is None else (1.2, 1.3, ("1.2", "1.0 old"))
    extra = {} if factors is None else {"load_factors": factors}
    block(name, "GB 50011-2010 13.2.3, Tables 5.1.4-1 and M.2.3, GB 55002-2021", "gb-50011",
          {"intensity": intensity, "component": component, "building_class": building, **heights(ratio), **extra},
          [("c_p", coefficient, "g"), ("F_p", coefficient * W, "kN"), (names[0] + "/push", on_push * coefficient * W, "kN"),
           down(names[0], heavy, 0), down(names[1], 1.0, 0)])


china("O-CN1", "8", "cabinet", "B", 1)
china("O-CN1 old factors", "8", "cabinet", "B", 1, "gb-50011")
for intensity in ALPHA:
    china(f"GB 50011 {intensity}", intensity, "cabinet", "A", 0.5)
for component in ROWS:
    for building in "ABC":
        china(f"GB 50011 {component} {building}", "7", component, building, 0)


# Taiwan: three regions, three kinds of anchors.
for region, divisor, share in (("general", 1.5, 1 / 2), ("near-fault", 1.5, 2 / 3), ("taipei-basin", 2, 1 / 2)):
    for anchors, r_a in (("deep", 3.0), ("shallow", 1.5), ("nonductile", 1.0)):
        for ratio in (0, 1):
            s_ds, i_p, a_p, r_p = 0.6, 1.5, 1.0, 3.0
            low, high = 0.3 * s_ds * i_p, 1.6 * s_ds * i_p

            def coefficient(r):
                return limited(0.4 * s_ds * i_p * a_p / (1 + (r - 1) / divisor) * (1 + 2 * ratio), low, high)

            force, on_anchors = coefficient(r_p), coefficient(r_a)
            block(f"Taiwan {region} {anchors} {ratio}", "Taiwan seismic code chapter 4", "taiwan",
                  {"s_ds": s_ds, "region": region, "importance_factor": i_p, "component_amplification": a_p,
                   "component_response": r_p, "anchor_type": anchors, **heights(ratio)},
                  [("F_ph", force * W, "kN"), ("F_pv", share * force * W, "kN"), ("F_pa", on_anchors * W, "kN"),
                   down("1.2", 1.2, share * force), down("0.9a", 0.9, -share * on_anchors),
                   ("0.9a/push", on_anchors * W, "kN")])


# Philippines: O-PH, then the coefficients of every soil and distance.
def philippines(name, fields, c_a, ratio, anchors, r_pa, i_p=1.0):
    low, high = 0.7 * c_a * i_p, 4 * c_a * i_p
    force = limited(c_a * i_p / 3 * (1 + 3 * ratio), low, high)
    on_anchors = limited(c_a * i_p / r_pa * (1 + 3 * ratio), low, high)
    vertical = 0.5 * c_a * i_p
    block(name, "NSCP 2015 section 208, in the form of UBC 1997", "nscp-2015",
          {**fields, "importance_factor": i_p, "component": "equipment", "anchor_type": anchors, **heights(ratio)},
          [("C_a", c_a, "g"), ("c_min*W", low * W, "kN"), ("c_max*W", high * W, "kN"), ("F_p", force * W, "kN"),
           ("F_pa", on_anchors * W, "kN"), ("E_v", vertical * W, "kN"), down("1.2", 1.2, vertical),
           down("0.9a", 0.9, -vertical), ("0.9a/push", on_anchors * W, "kN")])


FAR = {"zone": "4", "seismic_source": "C"}
philippines("O-PH", {**FAR, "soil_profile": "SD"}, 0.44, 1, "deep", 3.0)
philippines("O-PH shallow", {**FAR, "soil_profile": "SD"}, 0.44, 1, "shallow", 1.5)
philippines("O-PH nonductile", {**FAR, "soil_profile": "SD"}, 0.44, 1, "nonductile", 1.0)
for soil, zone_2, zone_4 in (("SA", 0.16, 0.32), ("SB", 0.20, 0.40), ("SC", 0.24, 0.40), ("SD", 0.28, 0.44), ("SE", 0.34, 0.44)):
    philippines(f"NSCP zone 2 {soil}", {"zone": "2", "soil_profile": soil}, zone_2, 0, "deep", 3.0)
    philippines(f"NSCP zone 4 {soil}", {**FAR, "soil_profile": soil}, zone_4, 0.5, "shallow", 1.5, 1.5)
for source, rows in (("A", [(2, 1.5), (5, 1.2), (10, 1.0)]), ("B", [(2, 1.3), (5, 1.0), (10, 1.0)])):
    for km in (1, 3.5, 7.5, 15):
        philippines(f"NSCP source {source} {km}", {"zone": "4", "soil_profile": "SD", "seismic_source": source,
                                                   "source_distance_km": km}, 0.44 * line(km, rows), 0, "deep", 3.0)

# Indonesia: V1 to V3 once more, and the site coefficients.
for name, s_ds, i_p, component, a_p, r_p, ratio in (("SNI V1", 1.0, 1.0, "sheet-metal-cabinet", 2.5, 6.0, 0),
                                                    ("SNI V2", 1.0, 1.5, "sheet-metal-cabinet", 2.5, 6.0, 1),
                                                    ("SNI V3", 1.0, 1.0, "communication", 1.0, 2.5, 0.5)):
    force = limited(0.4 * a_p * s_ds / (r_p / i_p) * (1 + 2 * ratio), 0.3 * s_ds * i_p, 1.6 * s_ds * i_p)
    block(name, "SNI 1726:2019 chapter 9, in the form of ASCE 7-16", "sni-1726",
          {"s_ds": s_ds, "importance_factor": i_p, "component": component, **heights(ratio)},
          [("F_p", force * W, "kN"), ("E_v", 0.2 * s_ds * W, "kN"), ("F_m", 2 * force * W, "kN"),
           down("LRFD 6", 1.2, 0.2 * s_ds), down("LRFD 7m", 0.9, -0.2 * s_ds)])
COLUMNS = (0.25, 0.5, 0.75, 1.0, 1.25, 1.5)
F_A = {"SA": (0.8,) * 6, "SB": (0.9,) * 6, "SC": (1.3, 1.3, 1.2, 1.2, 1.2, 1.2), "SD": (1.6, 1.4, 1.2, 1.1, 1.0, 1.0),
       "SE": (2.4, 1.7, 1.3, 1.1, 0.9, 0.8)}
for letter, row in F_A.items():
    for s_s in (0.1, 0.6, 1.1, 1.4, 2.0):
        f_a = line(s_s, list(zip(COLUMNS, row)))
        block(f"F_a SNI {letter} {s_s}", "SNI 1726:2019, table of F_a", "sni-1726",
              {"s_s": s_s, "site_class": letter, "importance_factor": 1.0, "component": "communication", **heights(0)},
              [("F_a", f_a, ""), ("S_DS", 2 / 3 * f_a * s_s, "g")])

# Peru: O-P1 at the base, then every zone and soil, and a floor whose acceleration is known.
Z = (0.10, 0.25, 0.35, 0.45)
S = ((0.8, 1.0, 1.6, 2.0), (0.8, 1.0, 1.2, 1.4), (0.8, 1.0, 1.15, 1.2), (0.8, 1.0, 1.05, 1.1))
U = {"A2": 1.5, "B": 1.3, "C": 1.0}


def peru(name, zone, soil, use, component, c_1, floor, height):
    least = 0.5 * Z[zone - 1] * U[use] * S[zone - 1][soil]
    force = max(least, floor * c_1) if height > 0 else least
    known = {"floor_acceleration": floor} if floor else {}
    block(name, "Peru, E.030 chapter VI, E.060 9.2", "peru-e-030",
          {"zone": str(zone), "soil_profile": f"S{soil}", "building_use": use, "component": component,
           "attachment_height_m": height, **known},
          [("c_p", force, "g"), ("F", force * W, "kN"), ("F_v", 2 / 3 * force * W, "kN"), down("1.25", 1.25, 2 / 3 * force),
           down("0.9", 0.9, -2 / 3 * force), ("0.9/push", force * W, "kN")])


peru("O-P1", 4, 2, "A2", "rigid", 1.5, None, 0)
for zone in (1, 2, 3, 4):
    for soil in (0, 1, 2, 3):
        peru(f"Peru {zone} S{soil}", zone, soil, "B", "rigid", 1.5, None, -3)
peru("Peru floor", 4, 1, "C", "rigid", 1.5, 0.4, 12)
peru("Peru floor, least force", 4, 3, "A2", "rigid", 1.5, 0.2, 12)
peru("Peru floor, outside", 2, 1, "C", "falls-outside", 3.0, 0.3, 12)


# Colombia: O-CO, then below and above the equivalent height.
def colombia(name, a_a, f_a, i, s_a, ratio, a_p, anchors, r_p, given=True):
    a_s = a_a * f_a * i
    share = ratio / 0.75
    a_x = a_s + (s_a - a_s) * share if share <= 1 else s_a * share
    force, least = a_x * a_p / r_p, a_a * i / 2
    known = {"building_acceleration": s_a} if given else {}
    block(name, "NSR-10 A.9.4.2, A.9.4.9, B.2.4", "nsr-10",
          {"peak_acceleration": a_a, "soil_coefficient": f_a, "building_importance": i, "component_amplification": a_p,
           "anchor_type": anchors, **heights(ratio), **known},
          [("a_x", a_x, "g"), ("c_min*W", least * W, "kN"), ("F_p", max(least, force) * W, "kN"), down("1.2", 1.2, 0),
           down("0.9", 0.9, 0)])


colombia("O-CO", 0.25, 1.3, 1.0, 0.8125, 1, 1.0, "nonductile", 1.5)
colombia("NSR-10 top of the spectrum", 0.25, 1.3, 1.0, 0.8125, 1, 1.0, "nonductile", 1.5, given=False)
for ratio in (0, 0.3, 0.75, 0.9):
    for anchors, r_p in (("special", 6.0), ("ductile", 3.0), ("nonductile", 1.5), ("wet", 0.5)):
        colombia(f"NSR-10 {ratio} {anchors}", 0.2, 1.4, 1.25, 0.7, ratio, 2.5, anchors, r_p)

print("[")
for place, text in enumerate(blocks):
    lines = ["  {"]
    lines += [f"    {json.dumps(key)}: {json.dumps(text[key])}," for key in text if key != "expect"]
    lines.append('    "expect": [')
    lines += [f"      {json.dumps(expect)}{',' if number + 1 < len(text['expect']) else ''}"
              for number, expect in enumerate(text["expect"])]
    lines += ["    ]", "  }" + ("," if place + 1 < len(blocks) else "")]
    print("\n".join(lines))
print("]")
