#!/usr/bin/env python3
"""Derives check values of the demand rules of Europe, Italy, Romania, India, New Zealand, Australia and Canada.

Prints `world_a-derived.json`: hand arithmetic from the clauses, in plain Python. It reads nothing of the engine. The
vectors are our own: good against slips, never to be called published.
"""

import json
from math import sqrt

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


def heights(ratio, roof=20):
    return {"attachment_height_m": round(roof * ratio, 6), "roof_height_m": roof}


def limited(force, low, high):
    return max(low, min(high, force))


# EN 1998-1 4.24, 4.25 and the anchor side of EN 1992-4 annex C.
SOIL = {"1": dict(A=1.0, B=1.2, C=1.15, D=1.35, E=1.4), "2": dict(A=1.0, B=1.35, C=1.5, D=1.8, E=1.6)}
RATIO = {"1": 0.90, "2": 0.45}
BUILDING = {"I": 0.8, "II": 1.0, "III": 1.2, "IV": 1.4}


def en_1998(name, a_gr, spectrum, ground, ratio, periods, gamma_a=1.0, component="cabinet", q_a=2.0, a_table=1.5,
            building="II", design="not-stated", roof=20, by_table=False):
    alpha, soil = BUILDING[building] * a_gr, SOIL[spectrum][ground]
    if by_table:
        amplification, extra = a_table, {"amplification": "table"}
    elif periods is None:
        amplification, extra = 3.0, {}
    else:
        t_a, t_1 = periods
        amplification = 3 / (1 + (1 - t_a / t_1) ** 2)
        extra = {"amplification": "periods", "component_period_s": t_a, "building_period_s": t_1}
    raw = alpha * soil * ((1 + ratio) * amplification - 0.5)
    s_a = max(alpha * soil, raw)
    q_aa = {"not-stated": 1.0, "elastic": min(1.5, q_a), "capacity-or-ductile": q_a}[design]
    on_anchors = s_a * gamma_a / q_aa
    expect = [("alpha", alpha, "g"), ("S", soil, ""), ("A_a", amplification, ""), ("S_1", raw, "g"), ("S_a", s_a, "g"),
              ("F_a", s_a * gamma_a / q_a * WEIGHT_KN, "kN"), ("F_aa", on_anchors * WEIGHT_KN, "kN"),
              ("G+A/down", WEIGHT_KN, "kN"), ("G+A/push", s_a * gamma_a / q_a * WEIGHT_KN, "kN")]
    alpha_v = RATIO[spectrum] * alpha
    expect.append(("alpha_v", alpha_v, "g"))
    if alpha_v > 0.25:
        vertical = alpha_v * amplification * gamma_a / q_aa
        expect += [("F_va", vertical * WEIGHT_KN, "kN"),
                   ("G+A h-/down", (1 + 0.3 * vertical) * WEIGHT_KN, "kN"), ("G+A h+/down", (1 - 0.3 * vertical) * WEIGHT_KN, "kN"),
                   ("G+A h+/push", on_anchors * WEIGHT_KN, "kN"), ("G+A v-/down", (1 + vertical) * WEIGHT_KN, "kN"),
                   ("G+A v+/down", (1 - vertical) * WEIGHT_KN, "kN"), ("G+A v+/push", 0.3 * on_anchors * WEIGHT_KN, "kN")]
    else:
        expect += [("G+A a/down", WEIGHT_KN, "kN"), ("G+A a/push", on_anchors * WEIGHT_KN, "kN")]
    block(name, "EN 1998-1 4.3.5.2, EN 1992-4 annex C", "en-1998-1",
          {"reference_acceleration": a_gr, "building_class": building, "spectrum": spectrum, "ground_type": ground,
           "component_importance": gamma_a, "component": component, "anchor_design": design, **heights(ratio, roof), **extra}, expect)


en_1998("O-E1", 0.25, "1", "C", 0, (0.1, 0.5))
en_1998("O-E2", 0.25, "1", "C", 0.5, (0.1, 0.5))
en_1998("O-E3", 0.25, "1", "C", 1, (0.1, 0.5))
en_1998("O-E5", 0.25, "1", "C", 1, (0.5, 0.5))
en_1998("O-E6", 0.16, "1", "D", 1, (0.06, 0.4), roof=12)
en_1998("O-E7", 0.25, "1", "C", 0, (2.0, 0.5))
en_1998("EN resonance type 2", 0.30, "2", "D", 1, None, building="IV", component="other", q_a=1.0)
en_1998("EN listed, elastic", 0.30, "1", "B", 0.5, None, by_table=True, design="elastic", building="III")
en_1998("EN listed rack, ductile", 0.30, "1", "E", 0.25, None, component="rack", a_table=3.0, by_table=True,
        design="capacity-or-ductile", gamma_a=1.5)
en_1998("EN rigid at the roof", 0.20, "2", "B", 1, (0.0, 0.5), component="hazardous", q_a=1.0, gamma_a=1.5)


# NTC 2018 7.2.1, C7.2.11.
def s_s(ground, x):
    low, line, slope, high = {"B": (1.0, 1.40, 0.40, 1.2), "C": (1.0, 1.70, 0.60, 1.5), "D": (0.9, 2.40, 1.50, 1.8),
                              "E": (1.0, 2.00, 1.10, 1.6)}[ground]
    return limited(line - slope * x, low, high)


def framed(alpha, s, ratio, t_a, t_1):
    a, b, a_p = (0.8, 1.4, 5.0) if t_1 < 0.5 else (0.3, 1.2, 4.0) if t_1 <= 1.0 else (0.3, 1.0, 2.5)
    k = alpha * s * (1 + ratio)
    if t_a is None or a * t_1 <= t_a < b * t_1:
        return k * a_p
    end = a if t_a < a * t_1 else b
    return k * a_p / (1 + (a_p - 1) * (1 - t_a / (end * t_1)) ** 2)


def ntc(name, alpha, s, ratio, t_a, t_1, soil, design="not-stated", building="framed", q_a=2.0):
    if building == "framed":
        raw = framed(alpha, s, ratio, t_a, t_1)
    else:
        amplification = 3.0 if t_a is None else 3 / (1 + (1 - t_a / t_1) ** 2)
        raw = alpha * s * ((1 + ratio) * amplification - 0.5)
    s_a = max(alpha * s, raw)
    q_aa = {"not-stated": 1.0, "elastic": min(1.5, q_a), "capacity-or-ductile": q_a}[design]
    periods = {key: value for key, value in (("component_period_s", t_a), ("building_period_s", t_1)) if value is not None}
    block(name, "NTC 2018 7.2.3, Circolare 2019 C7.2.11", "ntc-2018",
          {"ground_acceleration": alpha, "building": building, "component": "cabinet", "anchor_design": design,
           **periods, **soil, **heights(ratio)},
          [("S", s, ""), ("S_1", raw, "g"), ("S_a", s_a, "g"), ("F_a", s_a / q_a * WEIGHT_KN, "kN"),
           ("F_aa", s_a / q_aa * WEIGHT_KN, "kN"), ("G+E/push", s_a / q_a * WEIGHT_KN, "kN"), ("G+E/down", WEIGHT_KN, "kN")])


def given(s):
    return {"ground_type": "B", "topography": "T1", "soil_factor": s}


ntc("O-IT1", 0.25, 1.2, 1, 0.1, 0.4, given(1.2))
ntc("O-IT2", 0.25, 1.2, 1, 0.4, 0.4, given(1.2))
for ground in "BCDE":
    for alpha, f_o in [(0.05, 2.5), (0.25, 2.4), (0.6, 2.8)]:
        ntc(f"NTC soil {ground} at {alpha} g", alpha, s_s(ground, f_o * alpha) * 1.2, 0.5, 0.1, 0.6,
            {"ground_type": ground, "topography": "T2", "spectral_amplification": f_o})
for t_1, t_a in [(0.4, 0.05), (0.4, 1.0), (0.8, 0.1), (0.8, 0.5), (0.8, 2.0), (1.5, 0.1), (1.5, 1.0), (1.5, 3.0)]:
    ntc(f"NTC framed {t_1} s, element {t_a} s", 0.2, 1.0, 0.5, t_a, t_1, {"ground_type": "A", "topography": "T1"}, "elastic")
ntc("NTC element of unknown period", 0.2, 1.0, 1, None, 0.8, {"ground_type": "A", "topography": "T1"}, "capacity-or-ductile")
ntc("NTC wall building", 0.2, 1.4, 1, 0.1, 0.4, {"ground_type": "A", "topography": "T4"}, building="other")
ntc("NTC wall building, periods unknown", 0.2, 1.0, 1, None, None, {"ground_type": "A", "topography": "T1"}, building="other")
ntc("NTC wall building, soft element at the base", 0.2, 1.0, 0, 4.0, 0.4, {"ground_type": "A", "topography": "T1"}, building="other")


# P100-1/2013 chapter 10.
def p100(name, a_g, gamma, flexibility, q, ratio, k_a):
    beta = {"rigid": 1.0, "flexible": 2.5}[flexibility]
    raw, low, high = gamma * a_g * beta * (1 + 2 * ratio) / q, 0.75 * gamma * a_g, 4 * gamma * a_g
    force = limited(raw, low, high)
    block(name, "P100-1/2013 10.3.1, recalled", "p100-1-2013",
          {"ground_acceleration": a_g, "component_importance": gamma, "flexibility": flexibility, "behaviour_factor": q,
           "anchor_factor": k_a, **heights(ratio)},
          [("c_1", raw, "g"), ("c_min*W", low * WEIGHT_KN, "kN"), ("c_max*W", high * WEIGHT_KN, "kN"),
           ("F_CNS", force * WEIGHT_KN, "kN"), ("F_a", k_a * force * WEIGHT_KN, "kN"), ("G+A a/push", k_a * force * WEIGHT_KN, "kN")])


p100("O-RO", 0.30, 1.0, "rigid", 1.5, 1, 1.0)
p100("P100 least", 0.30, 1.5, "rigid", 2.5, 0, 1.3)
p100("P100 largest", 0.20, 1.0, "flexible", 1.5, 1, 1.5)
p100("P100 between", 0.20, 1.5, "flexible", 2.5, 0.5, 1.0)


# India: IITK-GSDMA.
ZONES = {"II": 0.10, "III": 0.16, "IV": 0.24, "V": 0.36}


def india(name, zone, ratio, component, a_p, r_p, i_p, anchors="deep", basis="half-zone-factor", top="on-top", isolated=1):
    z = ZONES[zone]
    share = z / 2 if basis == "half-zone-factor" else z
    raw = share * (1 + ratio) * a_p / r_p * i_p
    force = isolated * max(0.10, raw)
    r_pa = r_p if anchors == "deep" else min(1.5, r_p)
    on_anchors = 2 * isolated * max(0.10, share * (1 + ratio) * a_p / r_pa * i_p)
    vertical = 2 / 3 * z / 2 * 2.5 if z >= 0.24 else 0.0
    factored = 1.5 * on_anchors if top == "on-top" else max(1.5 * force, on_anchors)
    expect = [("c_1", raw, "g"), ("F_p", force * WEIGHT_KN, "kN"), ("F_pa", on_anchors * WEIGHT_KN, "kN"), ("c_v", vertical, "g"),
              ("1.5(DL+EL)/down", (1.5 + 0.45 * vertical) * WEIGHT_KN, "kN"), ("1.5(DL+EL)/push", 1.5 * force * WEIGHT_KN, "kN"),
              ("0.9DL+1.5EL/down", (0.9 - 0.45 * vertical) * WEIGHT_KN, "kN"), ("0.9DL+1.5EL a/push", factored * WEIGHT_KN, "kN")]
    if vertical:
        expect += [("0.9DL+1.5EL z/down", (0.9 - 1.5 * vertical) * WEIGHT_KN, "kN"),
                   ("1.5(DL+EL) z/down", (1.5 + 1.5 * vertical) * WEIGHT_KN, "kN"),
                   ("0.9DL+1.5EL za/push", 0.3 * sqrt(2) * factored * WEIGHT_KN, "kN")]
    block(name, "IITK-GSDMA draft, IS 1893 (Part 1):2016 6.3, recalled", "is-1893",
          {"zone": zone, "basis": basis, "importance_factor": i_p, "component": component, "anchor_type": anchors,
           "anchor_load_factor": top, **heights(ratio)}, expect)


india("O-I1", "V", 0, "storage", 1.0, 2.5, 1.5)
india("O-I2", "V", 1, "storage", 1.0, 2.5, 1.5)
india("India panel, shallow anchors", "IV", 0.5, "electrical", 1.0, 1.5, 1.0, "shallow")
india("India rack, shallow anchors, doubled force alone", "III", 1, "communication-flexible", 2.5, 2.5, 1.5, "shallow", top="alone")
india("India least force", "II", 0, "machinery", 1.0, 2.5, 1.0, top="alone")
india("India whole zone factor", "V", 1, "electrical", 1.0, 1.5, 1.5, "shallow", "whole-zone-factor")
india("India isolated", "IV", 1, "isolated", 2.5, 2.5, 1.0, isolated=2)


# NZS 1170.5 section 8.
C_H0 = {"A": 1.00, "B": 1.00, "C": 1.33, "D": 1.12, "E": 1.12}
RETURN = {"1/25": 0.25, "1/100": 0.5, "1/500": 1.0, "1/1000": 1.3, "1/2500": 1.8}
C_PH = [(1.0, 1.0), (1.25, 0.85), (1.5, 0.75), (1.75, 0.65), (2.0, 0.55), (3.0, 0.45)]


def c_ph(mu):
    for (x, y), (x_2, y_2) in zip(C_PH, C_PH[1:]):
        if mu <= x_2:
            return y + (y_2 - y) * (mu - x) / (x_2 - x)
    return C_PH[-1][1]


def nzs(name, soil, z, probability, h_i, h_n, t_p, mu, part, r_p, fixings="brittle", vertical=None):
    c_0 = C_H0[soil] * min(0.7, z * RETURN[probability])
    c_h = min(1 + h_i / 6, 1 + 10 * h_i / h_n, 3)
    c_i = 2.0 if t_p is None else limited(2 * (1.75 - t_p), 0.5, 2.0)
    mu_a = {"brittle": 1.0, "nominally-ductile": min(1.25, mu), "capacity-designed": mu}[fixings]
    raw = c_0 * c_h * c_i * c_ph(mu) * r_p
    on_anchors = min(3.6, c_0 * c_h * c_i * c_ph(mu_a) * r_p)
    extra = {}
    expect = [("C_0", c_0, "g"), ("C_Hi", c_h, ""), ("C_i", c_i, ""), ("C_ph", c_ph(mu), ""), ("c_1", raw, "g"),
              ("F_ph", min(3.6, raw) * WEIGHT_KN, "kN"), ("F_pa", on_anchors * WEIGHT_KN, "kN")]
    if vertical:
        c_v = min(2.5, 0.7 * vertical * c_ph(mu) * r_p)
        c_va = min(2.5, 0.7 * vertical * c_ph(mu_a) * r_p)
        extra["vertical_spectrum"] = vertical
        expect += [("F_pv", c_v * WEIGHT_KN, "kN"), ("F_pva", c_va * WEIGHT_KN, "kN"),
                   ("G+E down/down", (1 + c_v) * WEIGHT_KN, "kN"), ("G+E up a/down", (1 - c_va) * WEIGHT_KN, "kN")]
    else:
        expect += [("G+E/down", WEIGHT_KN, "kN"), ("G+E a/push", on_anchors * WEIGHT_KN, "kN")]
    if t_p is not None:
        extra["component_period_s"] = t_p
    block(name, "NZS 1170.5 8.2, 8.5, 8.7", "nzs-1170-5",
          {"hazard_factor": z, "annual_probability": probability, "soil_class": soil, "attachment_height_m": h_i,
           "roof_height_m": h_n, "component_ductility": mu, "part_class": part, "fixings": fixings, **extra}, expect)


nzs("O-N1", "C", 0.40, "1/500", 0, 20, 0.2, 1.25, "P2", 1.0)
nzs("O-N2", "C", 0.40, "1/500", 6, 20, 0.2, 1.25, "P2", 1.0)
nzs("O-N3", "C", 0.40, "1/500", 20, 20, 0.2, 1.25, "P2", 1.0)
nzs("O-N4", "C", 0.40, "1/2500", 20, 20, 0.2, 1.0, "P2", 1.0)
nzs("NZ low in a high building", "D", 0.13, "1/1000", 3, 40, 1.0, 2.0, "P3", 0.9, "nominally-ductile")
nzs("NZ low part of a high building", "A", 0.30, "1/500", 6, 100, 0.9, 1.6, "P3", 0.9, "capacity-designed")
nzs("NZ soft part", "E", 0.30, "1/100", 9, 30, 2.0, 3.0, "P6", 2.0, "nominally-ductile")
nzs("NZ period unknown, vertical", "B", 0.42, "1/2500", 4, 12, None, 1.25, "P4", 1.0, vertical=1.1)
nzs("NZ ductile cabinet, nominally ductile fixings, vertical", "C", 0.36, "1/500", 9, 24, 0.3, 3.0, "P3", 0.9, "nominally-ductile",
    vertical=1.0)


# AS 1170.4 section 8.
K_P = {"1/100": (0.5, 0), "1/500": (1.0, 0.08), "1/800": (1.25, 0.10), "1/1000": (1.3, 0.10), "1/1500": (1.5, 0.12), "1/2500": (1.8, 0.15)}
AS_C_H0 = {"Ae": 0.8, "Be": 1.0, "Ce": 1.3, "De": 1.1, "Ee": 1.1}
AS_ROWS = {"rigid-ductile": (1.0, 2.5), "rigid-nonductile": (1.0, 1.0), "flexible": (2.5, 2.5)}


def australia(name, z, probability, soil, h_x, h_n, i_c, component, design="elastic"):
    k_p, least = K_P[probability]
    k_z = max(least, k_p * z)
    a_x = 1 + (2 / h_n if h_n >= 12 else 0.17) * h_x
    a_c, r_c = AS_ROWS[component]
    r_ca = 1.0 if design == "elastic" else r_c
    raw = k_z * AS_C_H0[soil] * a_x * i_c * a_c / r_c
    on_anchors = max(0.05, k_z * AS_C_H0[soil] * a_x * i_c * a_c / r_ca)
    block(name, "AS 1170.4 8.3, recalled", "as-1170-4",
          {"hazard_factor": z, "annual_probability": probability, "soil_class": soil, "attachment_height_m": h_x,
           "roof_height_m": h_n, "component_importance": i_c, "component": component, "anchor_design": design},
          [("k_z", k_z, "g"), ("a_x", a_x, ""), ("c_1", raw, "g"), ("F_c", max(0.05, raw) * WEIGHT_KN, "kN"),
           ("F_ca", on_anchors * WEIGHT_KN, "kN"), ("G+E/push", max(0.05, raw) * WEIGHT_KN, "kN"), ("G+E a/down", WEIGHT_KN, "kN")])


australia("O-A1", 0.08, "1/500", "Ce", 10, 20, 1.0, "rigid-ductile")
australia("O-A3", 0.18, "1/500", "De", 20, 20, 1.5, "flexible", "ductile")
australia("O-A5", 0.08, "1/500", "Ce", 0, 20, 1.0, "rigid-ductile", "ductile")
australia("AS low building", 0.09, "1/1000", "Ee", 5, 8, 1.0, "flexible")
australia("AS least hazard", 0.03, "1/1500", "Be", 6, 12, 1.5, "rigid-nonductile")
australia("AS rare", 0.11, "1/2500", "Ae", 30, 45, 1.0, "flexible", "ductile")
australia("AS frequent", 0.10, "1/100", "De", 3, 11, 1.0, "rigid-nonductile")
for method, floor, limit, extra in [("floor acceleration", 0.25, 0.5, {}), ("floor acceleration, limited", 0.6, 0.5, {}),
                                    ("floor acceleration, limit given", 0.6, 2.0, {"force_limit": 2.0})]:
    raw = floor * 1.5 * 2.5 / 2.5
    block(f"AS {method}", "AS 1170.4 8.2, recalled", "as-1170-4",
          {"method": "floor-acceleration", "floor_acceleration": floor, "component_importance": 1.5, "component": "flexible",
           "attachment_height_m": 0, **extra},
          [("c_1", raw, "g"), ("F_c", min(limit, raw) * WEIGHT_KN, "kN"), ("F_ca", min(limit, 2.5 * raw) * WEIGHT_KN, "kN")])


# NBC 4.1.8.18.
IMPORTANCE = {"low": 0.8, "normal": 1.0, "high": 1.3, "post-disaster": 1.5}
NBC_ROWS = {"equipment-rigid": (1.0, 1.0, 1.25), "equipment-flexible": (1.0, 2.5, 2.5), "hazardous-rigid": (1.5, 1.0, 1.25),
            "hazardous-flexible": (1.5, 2.5, 2.5), "rigid-ductile": (1.0, 1.0, 2.5), "rigid-nonductile": (1.0, 1.0, 1.0),
            "flexible-ductile": (1.0, 2.5, 2.5), "flexible-nonductile": (1.0, 2.5, 1.0)}


def nbc(name, rule, spectral, category, component, ratio, anchors="deep", r_p=None, site=None, f_a=1.0):
    c_p, a_r, of_row = NBC_ROWS[component]
    used = r_p or of_row
    a_x = 1 + 2 * ratio
    s_p = limited(c_p * a_r * a_x / used, 0.7, 4.0)
    r_pa = {"deep": used, "shallow": min(1.5, used), "nonductile": min(1.0, used)}[anchors]
    s_pa = limited(c_p * a_r * a_x / r_pa, 0.7, 4.0)
    scale = 0.3 * IMPORTANCE[category] * f_a * spectral * WEIGHT_KN
    fields = {"s_a_02": spectral, **(site or {"site_coefficient": f_a})} if rule == "nbc-2015" else {"s_02": spectral}
    block(name, "NBC 4.1.8.18.(1)", rule,
          {**fields, "importance_category": category, "component": component, "anchor_type": anchors,
           **({"component_response": r_p} if r_p else {}), **heights(ratio)},
          [("A_x", a_x, ""), ("S_p", s_p, ""), ("V_p", scale * s_p, "kN"), ("V_pa", scale * s_pa, "kN"), ("D+E/push", scale * s_p, "kN"),
           ("D+E a/down", WEIGHT_KN, "kN")])


nbc("O-C1", "nbc-2015", 0.848, "normal", "equipment-rigid", 0)
nbc("O-C3", "nbc-2015", 0.848, "post-disaster", "equipment-flexible", 1)
nbc("O-C4", "nbc-2015", 0.848, "post-disaster", "hazardous-flexible", 1, r_p=1.5)
nbc("NBC 2015 soft soil", "nbc-2015", 0.6, "high", "flexible-ductile", 0.5, "shallow",
    site={"site_class": "E", "pga_ref": 0.25}, f_a=(1.24 + 1.05) / 2)
nbc("NBC 2015 rock", "nbc-2015", 0.6, "low", "rigid-ductile", 0.25, "nonductile", site={"site_class": "A", "pga_ref": 0.25}, f_a=0.69)
nbc("NBC 2015 stiff soil, strong shaking", "nbc-2015", 1.2, "normal", "rigid-nonductile", 1, site={"site_class": "D", "pga_ref": 0.6}, f_a=0.90)
for component in NBC_ROWS:
    nbc(f"NBC 2020 {component}", "nbc-2020", 0.9, "normal", component, 0.5, "shallow")
nbc("NBC 2020 least", "nbc-2020", 0.9, "low", "rigid-ductile", 0)
nbc("NBC 2020 largest", "nbc-2020", 0.9, "high", "flexible-nonductile", 1, "nonductile")


def line(value):
    return json.dumps(value, ensure_ascii=False)


def printed(text):
    keys = [f"    {line(key)}: {line(value)}" for key, value in text.items() if key != "expect"]
    rows = ",\n".join(f"      {line(row)}" for row in text["expect"])
    return "  {\n" + ",\n".join(keys) + ",\n    \"expect\": [\n" + rows + "\n    ]\n  }"


print("[\n" + ",\n".join(printed(text) for text in blocks) + "\n]")
