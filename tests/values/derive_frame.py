"""Check values of the frame by hand arithmetic: portals by slope deflection, braces, a base that turns, Rayleigh, flats.

Prints frame-derived.json. Plain Python, and nothing of the engine is read.
"""

import json
from math import pi, sqrt

E = 200000.0
G = 9806.65
# A square hollow section of 60 mm by 3 mm: its bending stiffness in N mm2.
EI = 74.282e9


def project(mass, structure, height=2400, width=1200, feet=1e9, contents=(), site=None):
    corners = [("a", -1, -1), ("b", 1, -1), ("c", 1, 1), ("d", -1, 1)]
    made = {"format": "steadfoot 1",
            "cabinet": {"width_mm": width, "depth_mm": width, "height_mm": height,
                        "frame": {"mass_kg": mass, "centre_mm": [0, 0, height / 2]},
                        "feet": [{"name": name, "at_mm": [500 * x, 500 * y], "size_mm": [0, 0], "stiffness_n_per_mm": feet}
                                 for name, x, y in corners]},
            "contents": list(contents), "structure": structure, "site": site}
    return {key: value for key, value in made.items() if value}


def load(height, mass=4000, name="load"):
    return {"name": name, "mass_kg": mass, "bottom_mm": height - 0.5, "size_mm": [100, 100, 1], "offset_mm": [0, 0],
            "drawn_out_mm": 0}


def block(name, source, check, given, expect, state="empty"):
    return {"block": name, "source": source, "trust": "derived", "runs": "project",
            "input": {"project": given, "state": state, "checks": [check]}, "expect": expect}


def value(at, number, digits, unit=""):
    made = {"at": at, "value": f"{number:.{digits}f}", "unit": unit}
    return {key: text for key, text in made.items() if text != ""}


def portal(corners, **more):
    inertia = round(EI / E, 6)
    return {"sides_x": "portal", "sides_y": "portal", "posts": 2, "post_inertia_x_mm4": inertia, "post_inertia_y_mm4": inertia,
            "beam_inertia_x_mm4": inertia, "beam_inertia_y_mm4": inertia, **corners, **more}


def two_posts(height, span, corner, foot):
    """Two posts whose heads a beam in sway and a corner hold: the frame solved for its joint's turn and its sway."""
    head = 1 / (span / (6 * EI) + (1 / corner if corner else 0))
    # Unknown turns at head and foot; rows: moment at the head, moment at the foot, shear.
    a, b, c = 4 * EI / height, 2 * EI / height, 6 * EI / height ** 2
    if foot == "fixed":
        turn = c / (a + head)
        shear = 12 * EI / height ** 3 - c * turn
    else:
        det = (a + head) * a - b * b
        turn, low = c * (a - b) / det, c * (a + head - b) / det
        shear = 12 * EI / height ** 3 - c * (turn + low)
    return 2 * shear


BLOCKS = []
for foot in ("fixed", "pinned"):
    for corner in (None, 1e7, 3e7, 1e8):
        corners = {"corners": "given", "corner_stiffness_nmm": corner} if corner else {"corners": "rigid"}
        given = project(1000, portal(corners, base=foot))
        name = f"corners of {corner / 1000:g} N m" if corner else "rigid corners"
        BLOCKS.append(block(f"portal of two posts, {foot}, {name}", "Our own stiffness solution of the joints",
                            "frame.period", given, [value("frame/period/k_s", two_posts(2400, 1200, corner, foot), 5, "N/mm")]))

# Two storeys of 1200 mm: posts above and below a beam share its end.
half = 6 * EI / 1200 / 2
a, b, c = 4 * EI / 1200, 2 * EI / 1200, 6 * EI / 1200 ** 2
low = 2 * (12 * EI / 1200 ** 3 - c * c / (a + half))
both = 2 * (12 * EI / 1200 ** 3 - 2 * c * c / (a + b + half))
BLOCKS.append(block("portal of two posts and two storeys, fixed", "Our own stiffness solution of the joints", "frame.period",
                    project(1000, portal({"corners": "rigid"}, base="fixed", storeys=2)),
                    [value("frame/period/k_1", low, 4, "N/mm"), value("frame/period/n_j", 2, 0)]))
BLOCKS.append(block("portal of two posts and two storeys, pinned, the upper one", "Our own stiffness solution of the joints", "frame.period",
                    project(1000, portal({"corners": "rigid"}, base="pinned", storeys=2)),
                    [value("frame/period/k_1", 2 * (12 * EI / 1200 ** 3 - (c * c * (a - b) + c * c * (a + half - b)) / ((a + half) * a - b * b)), 4, "N/mm")]))

for faces, modulus in ((2, 200000.0), (1, 210000.0)):
    length = sqrt(1000.0 ** 2 + 2000.0 ** 2)
    stiffness = faces * modulus * 160 / length * (1000 / length) ** 2
    given = {"sides_x": "cross-brace", "sides_y": "cross-brace", "brace_area_mm2": 160, "post_area_mm2": 1e6,
             "modulus_mpa": modulus, "faces_x": faces, "faces_y": faces}
    BLOCKS.append(block(f"flats of 40 by 4 on {faces} faces, E {modulus / 1000:g} GPa", "Our own statics: E A / L cos^2 a face",
                        "frame.period", project(4000, given, height=2000, width=1000),
                        [value("frame/period/k_d", stiffness, 3, "N/mm")]))

braces = 2 * 210000 * 160 / sqrt(5e6) * 0.2
posts = 2 * 210000 * 1e6 * 1000 ** 2 / 2000 ** 3
BLOCKS.append(block("flats of 40 by 4 on 2 faces under 4000 kg at the top", "Our own: T = 2 pi sqrt(m / k), braces and posts in series", "frame.period",
                    project(0.001, {**given, "faces_x": 2, "faces_y": 2, "modulus_mpa": 210000}, height=2000, width=1000, contents=[load(2000)]),
                    [value("frame/period/k_d", braces, 3, "N/mm"), value("frame/period/T", 2 * pi * sqrt(4.0 * (1 / braces + 1 / posts)), 4, "s")], "full"))


def truss(storeys, storey, span, post, brace, loads):
    """Sideways movements of the levels of one braced face by the stiffness of its pinned bars: posts, one diagonal a storey,
    beams that neither give nor bend. Loads in N at the levels; areas times E in N."""
    node = {(side, level): 2 * (side * storeys + level - 1) for side in (0, 1) for level in range(1, storeys + 1)}
    size = 4 * storeys
    k = [[0.0] * size + [0.0] for _ in range(size)]

    def bar(one, other, stiffness):
        (x0, y0), (x1, y1) = ((side * span, level * storey) for side, level in (one, other))
        length = sqrt((x1 - x0) ** 2 + (y1 - y0) ** 2)
        way = ((x1 - x0) / length, (y1 - y0) / length)
        ends = [(end, sign) for end, sign in ((one, -1), (other, 1)) if end[1] > 0]
        for a, sign_a in ends:
            for b, sign_b in ends:
                for i in (0, 1):
                    for j in (0, 1):
                        k[node[a] + i][node[b] + j] += sign_a * sign_b * stiffness / length * way[i] * way[j]

    for level in range(1, storeys + 1):
        bar((0, level - 1), (0, level), post)
        bar((1, level - 1), (1, level), post)
        bar((0, level - 1), (1, level), brace)
        bar((0, level), (1, level), 1e6 * brace)
        k[node[(1, level)]][size] += loads[level - 1]
    for i in range(size):
        best = max(range(i, size), key=lambda row: abs(k[row][i]))
        k[i], k[best] = k[best], k[i]
        for row in range(size):
            if row != i:
                factor = k[row][i] / k[i][i]
                k[row] = [one - factor * other for one, other in zip(k[row], k[i])]
    return [k[node[(1, level)]][size] / k[node[(1, level)]][node[(1, level)]] for level in range(1, storeys + 1)]


for storeys, masses in ((2, (1200, 900)), (4, (900, 700, 800, 600))):
    storey = 2400 / storeys
    moved = truss(storeys, storey, 900, E * 300, E * 200, [mass * G / 1000 / 2 for mass in masses])
    period = 2 * pi * sqrt(sum(m * d * d for m, d in zip(masses, moved)) / sum(m * d for m, d in zip(masses, moved)) / G)
    BLOCKS.append(block(f"braced faces of {storeys} storeys whose posts lengthen", "Our own: a truss of pinned bars by its stiffness",
                        "frame.period",
                        project(0.001, {"storeys": storeys, "sides_x": "cross-brace", "sides_y": "cross-brace", "brace_area_mm2": 200,
                                        "post_area_mm2": 300}, width=900,
                                contents=[load(storey * (level + 1), mass, f"m{level}") for level, mass in enumerate(masses)]),
                        [value("frame/period/T", period, 5, "s")], "full"))
four = 2 * two_posts(2400, 1200, None, "fixed")
rigid = portal({"corners": "rigid"}, base="fixed") | {"posts": 4}
BLOCKS.append(block("two fixed portals with 4000 kg at the top", "Our own: T = 2 pi sqrt(m / k)", "frame.period",
                    project(0.001, rigid, contents=[load(2400)]),
                    [value("frame/period/T", 2 * pi * sqrt(4.0 / four), 4, "s")], "full"))
DIRECT = {"rule": "direct", "format": "strength", "horizontal_coefficient": 0.3, "vertical_coefficient": 0.0,
          "gravity_heavy": 1.2, "gravity_light": 0.9}
BLOCKS.append(block("weight that leans on four posts", "Our own: W / (k h)", "frame.gap",
                    project(0.001, {**rigid, "gap_mm": 1000, "movement_factor": 1}, contents=[load(2400)], site=DIRECT),
                    [value("frame/gap/theta", 4 * G / (four * 2400), 4)], "full"))


def skin(stiffness, storey):
    return {"sides_x": "skin", "sides_y": "skin", "skin_mm": 1.0,
            "skin_share": round(stiffness / (2 * (E / 2.6) * 1200 / storey), 12)}


turning = 4 * 20000 * 500.0 ** 2
together = 1 / (1 / 4770 + 1300.0 ** 2 / turning)
BLOCKS.append(block("base that turns on four feet", "Our own: 1/k_e = 1/k_f + h^2/k_th", "frame.period",
                    project(0.001, skin(4770, 1300), height=1300, feet=20000, contents=[load(1300)]),
                    [value("frame/period/k_s", 4770, 1, "N/mm"), value("frame/period/k_th", turning / 1e6, 0, "kN-m"),
                     value("frame/period/T", 2 * pi * sqrt(4.0 / together), 4, "s")], "full"))
shape = (3.0, 5.0, 6.0)
omega = sqrt(1000 / 1.0 * sum(shape) / sum(d * d for d in shape))
BLOCKS.append(block("three masses on three springs", "Our own: Rayleigh's quotient with the shape 3, 5, 6", "frame.period",
                    project(0.001, {"storeys": 3, **skin(1000, 1000)}, height=3000,
                            contents=[load(1000 * level, 1000, f"m{level}") for level in (1, 2, 3)]),
                    [value("frame/period/T", 2 * pi / omega, 5, "s")], "full"))

SINGLE = {"sides_x": "single-brace", "sides_y": "single-brace", "post_area_mm2": 1000, "brace_area_mm2": 1000,
          "brace_net_area_mm2": 1e5, "tensile_mpa": 2500}
LENGTH = sqrt(2) * 1200
for strength, slenderness in ((345, 100), (250, 60), (250, 150)):
    elastic = pi ** 2 * E / slenderness ** 2
    critical = 0.658 ** (strength / elastic) * strength if strength <= 2.25 * elastic else 0.877 * elastic
    given = {**SINGLE, "yield_mpa": strength, "brace_radius_mm": round(LENGTH / slenderness, 9)}
    BLOCKS.append(block(f"critical stress, F_y {strength}, slenderness {slenderness}", "Our own arithmetic of AISC 360 E3",
                        "frame.brace", project(1000, given, height=1200, site=DIRECT),
                        [value("frame/brace/F_cr", critical, 3, "MPa")]))
for standard, demand, hole, gross, net in (("en-1993", "limit-states", 13, 1.0, 0.9 / 1.25), ("aisc-360", "strength", 15, 0.9, 0.75)):
    area = (40 - hole) * 4
    given = {"sides_x": "cross-brace", "sides_y": "cross-brace", "post_area_mm2": 1000, "brace_area_mm2": 160,
             "brace_net_area_mm2": area, "yield_mpa": 235, "tensile_mpa": 360, "standard": standard}
    BLOCKS.append(block(f"flat of 40 by 4 with one M12, {standard}", "Our own arithmetic", "frame.brace",
                        project(1000, given, site={**DIRECT, "format": demand}),
                        [value("frame/brace/R_y", gross * 235 * 160 / 1000, 2, "kN"),
                         value("frame/brace/R_u", net * 360 * area / 1000, 2, "kN")]))

# An angle of 50 by 50 by 5, 1600 mm long, bolted by one leg; its radii of gyration 9.73 mm and 15.1 mm.
ANGLE = {"sides_x": "single-brace", "sides_y": "single-brace", "post_area_mm2": 1000, "brace_area_mm2": 480, "yield_mpa": 235,
         "tensile_mpa": 360, "brace_radius_mm": 9.73, "brace_axis_radius_mm": 15.1, "brace_ends": "angle",
         "brace_thickness_mm": 5, "brace_hole_mm": 14, "brace_edge_mm": 25, "brace_pitch_mm": 40}
SIDE = round(1600 / sqrt(2), 9)
ANGLE_SOURCE = "Our own arithmetic, from memory of the clauses: "


def angle(height=SIDE, demand="limit-states", **more):
    standard = "en-1993" if demand == "limit-states" else "aisc-360"
    given = {**ANGLE, "standard": standard, "modulus_mpa": 210000 if standard == "en-1993" else 200000, "curve": "b", **more}
    return project(1000, given, height=height, width=SIDE, site={**DIRECT, "format": demand})


lambda_1 = pi * sqrt(210000 / 235)
weak, about = 1600 / 9.73 / lambda_1, 1600 / 15.1 / lambda_1
relative = max(0.35 + 0.7 * weak, 0.5 + 0.7 * about)
phi = 0.5 * (1 + 0.34 * (relative - 0.2) + relative ** 2)
chi = 1 / (phi + sqrt(phi ** 2 - relative ** 2))
BLOCKS.append(block("angle 50 by 50 by 5 of 1600 mm, two bolts, EN 1993-1-1 BB.1.2", ANGLE_SOURCE + "EN 1993-1-1 BB.1.2", "frame.brace",
                    angle(brace_bolts=2), [value("frame/brace/lambda_v", weak, 4), value("frame/brace/lambda_r", relative, 4),
                                           value("frame/brace/chi", chi, 5), value("frame/brace/R_c", chi * 235 * 480 / 1000, 2, "kN")]))
phi_0 = 0.5 * (1 + 0.34 * (weak - 0.2) + weak ** 2)
BLOCKS.append(block("angle 50 by 50 by 5 of 1600 mm, as if joined whole, EN 1993-1-1", ANGLE_SOURCE + "EN 1993-1-1 6.3.1", "frame.brace",
                    angle(brace_ends="whole", brace_net_area_mm2=410),
                    [value("frame/brace/R_c", 235 * 480 / 1000 / (phi_0 + sqrt(phi_0 ** 2 - weak ** 2)), 2, "kN")]))
for length in (1600.0, 1200.0):
    about = length / 15.1
    slender = 72 + 0.75 * about if about <= 80 else 32 + 1.25 * about
    elastic = pi ** 2 * 200000 / slender ** 2
    critical = 0.658 ** (235 / elastic) * 235 if 235 <= 2.25 * elastic else 0.877 * elastic
    height = round(sqrt(length ** 2 - SIDE ** 2), 9)
    for demand, factor in (("strength", 0.9), ("allowable-stress", 1 / 1.67)):
        BLOCKS.append(block(f"angle 50 by 50 by 5 of {length:.0f} mm, AISC 360 E5, {demand}", ANGLE_SOURCE + "AISC 360 E5", "frame.brace",
                            angle(height, demand, brace_bolts=3),
                            [value("frame/brace/lambda_a", about, 2), value("frame/brace/lambda", slender, 2), value("frame/brace/F_e", elastic, 2, "MPa"),
                             value("frame/brace/F_cr", critical, 2, "MPa"), value("frame/brace/R_c", factor * critical * 480 / 1000, 2, "kN")]))
# In tension.
for bolts, pitch in ((1, 40), (2, 40), (2, 35), (2, 70), (2, 90), (3, 40), (3, 70), (4, 20)):
    if bolts == 1:
        expect = [value("frame/brace/R_u", 2 * (25 - 7) * 5 * 360 / 1.25 / 1000, 2, "kN")]
    else:
        low = 0.4 if bolts == 2 else 0.5
        beta = min(0.7, max(low, low + (0.7 - low) * (pitch / 14 - 2.5) / 2.5))
        expect = [value("frame/brace/beta", beta, 5), value("frame/brace/A_net", 410, 1, "mm2"),
                  value("frame/brace/R_u", beta * 410 * 360 / 1.25 / 1000, 2, "kN")]
    BLOCKS.append(block(f"angle with {bolts} bolts, {pitch} mm apart, in tension", ANGLE_SOURCE + "EN 1993-1-8 3.10.3", "frame.brace",
                        angle(brace_bolts=bolts, brace_pitch_mm=pitch, sides_x="cross-brace", sides_y="cross-brace"), expect))
for bolts, lag in ((3, 0.6), (4, 0.8)):
    net = 480 - (14 + 2) * 5
    BLOCKS.append(block(f"angle with {bolts} bolts in tension, AISC 360", ANGLE_SOURCE + "AISC 360 D3", "frame.brace",
                        angle(demand="strength", brace_bolts=bolts, sides_x="cross-brace", sides_y="cross-brace"),
                        [value("frame/brace/A_n", net, 1, "mm2"), value("frame/brace/U", lag, 1), value("frame/brace/A_e", lag * net, 1, "mm2"),
                         value("frame/brace/R_u", 0.75 * 360 * lag * net / 1000, 2, "kN")]))

# Posts alone: a hollow section of 60 by 60 by 3 and 2.4 m, 5.2 kg/m. Its own mass counts 3 / 1.8751^4 exactly, 0.2427, where
# Rayleigh's static shape has 33/140 = 0.2357: 1.5 % in the frequency.
for top, frequency, why in ((100, sqrt(3 * EI / 2400.0 ** 3 * 1000 / (100 + 33 / 140 * 12.48)) / (2 * pi), None),
                            (0, 1.8751040687 ** 2 / (2 * pi) * sqrt(EI * 1000 / (12.48 * 2400.0 ** 3)), "33/140 stands for the exact 0.2427")):
    expect = {"at": "frequency", "value": f"{frequency:.4f}", "unit": "Hz"}
    if why:
        expect |= {"tolerance": 0.18, "why": why}
    BLOCKS.append({"block": f"post alone with {top} kg at its top", "trust": "derived", "runs": "motion",
                   "source": "Our own: 3 E I / L^3; the exact frequency of a uniform cantilever 1.8751^2 sqrt(E I / (m L^4))",
                   "input": {"ask": "posts alone", "posts": 1, "modulus": "200000 MPa", "inertia": "371410 mm4", "height": "2.4 m",
                             "top": f"{top} kg", "even": "12.48 kg"}, "expect": [expect]})

# Skins: 1.5 mm between edges 1000 and 2000 mm apart. A neighbour that moves 9 mm beside a top that moves 12 mm.
k_tau = 5.34 + 4 * 0.5 ** 2
NEIGHBOUR = {"sides_x": "skin", "sides_y": "skin", "skin_mm": 1.5, "skin_share": 0.01, "gap_mm": 40, "neighbour_movement_mm": 9,
             "modulus_mpa": 210000}
stiffness = 2 * 0.01 * 210000 / 2.6 * 1.5 * 1000 / 2000
period = 2 * pi * sqrt(1.0 / stiffness)
top = G / stiffness
elastic = 0.3 * top / (1 - top / 2000)
for other in (1.12, 1.10, 0.92, 0.88, None):
    given = {**NEIGHBOUR, "movement_factor": round(12 / elastic, 12)}
    if other:
        given["neighbour_period_s"] = round(period * other, 12)
    needed = sqrt(12 ** 2 + 9 ** 2) if other in (1.12, 0.88) else 12 + 9
    made = project(0.001, given, height=2000, width=1000, contents=[load(2000, 1000)], site=DIRECT)
    made["cabinet"]["anchors"] = [{"at_mm": [-400, -400]}, {"at_mm": [400, 400]}]
    BLOCKS.append(block(f"gap to a neighbour whose period is {other or 'not known'}" + (" times that of the cabinet" if other else ""),
                        "Our own: the root of the squares, or the sum of 12 and 9 mm", "frame.gap", made,
                        [value("frame/gap/k_tau", k_tau, 2), value("frame/gap/tau_cr", k_tau * pi ** 2 * 210000 / 10.92 * (1.5 / 1000) ** 2, 2, "MPa"),
                         value("frame/gap/u_r", 12, 3, "mm"), value("frame/gap/s_min", needed, 3, "mm")], "full"))

print("[\n  " + ",\n  ".join(json.dumps(one) for one in BLOCKS) + "\n]")
