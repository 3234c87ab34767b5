"""Check values of whole bolted cabinets: load, springs under the base, groups of bolts, every mode of ACI 318-19 chapter 17.

Prints anchored-derived.json. Plain Python, and nothing of the engine is read: another way through the whole check. Feet
are springs at points, every stiffness is given, and one direction of the push is looked at.
"""

import json
import math
from itertools import combinations

INCH = 25.4
LBF = 4.4482216152605
PSI = LBF / INCH**2
G = 9.80665
LIFTED = 1e-9


def solve(matrix, right):
    """Three equations by elimination."""
    rows = [row[:] + [value] for row, value in zip(matrix, right)]
    for i in range(3):
        pivot = max(range(i, 3), key=lambda k: abs(rows[k][i]))
        rows[i], rows[pivot] = rows[pivot], rows[i]
        for k in range(3):
            if k != i:
                factor = rows[k][i] / rows[i][i]
                rows[k] = [a - factor * b for a, b in zip(rows[k], rows[i])]
    return [rows[i][3] / rows[i][i] for i in range(3)]


def pulls(load, feet, bolts):
    """Tension of each bolt: of all sets of active springs, the one that contradicts itself least."""
    springs = [(x, y, k, 1) for x, y, k in feet] + [(x, y, k, -1) for x, y, k in bolts]
    best = None
    for bits in range(1, 1 << len(springs)):
        matrix = [[0.0] * 3 for _ in range(3)]
        for n, (x, y, k, _) in enumerate(springs):
            if bits >> n & 1:
                row = (1, x / 1000, y / 1000)
                for i in range(3):
                    for j in range(3):
                        matrix[i][j] += k * row[i] * row[j]
        try:
            a, b, c = solve(matrix, [load[0], load[1] / 1000, load[2] / 1000])
        except ZeroDivisionError:
            continue
        forces = [sign * k * (a + b * x / 1000 + c * y / 1000) for x, y, k, sign in springs]
        wrong = max(-force if bits >> n & 1 else force for n, force in enumerate(forces))
        if best is None or wrong < best[0]:
            best = (wrong, [max(0.0, force) if bits >> n & 1 else 0.0 for n, force in enumerate(forces)])
    return best[1][len(feet):]


def shears(push, at, bolts):
    """Shear of each bolt, all equally stiff, with the twist about their centroid."""
    n = len(bolts)
    middle = (sum(x for x, _ in bolts) / n, sum(y for _, y in bolts) / n)
    twist = (at[0] - middle[0]) * push[1] - (at[1] - middle[1]) * push[0]
    polar = sum((x - middle[0]) ** 2 + (y - middle[1]) ** 2 for x, y in bolts)
    return [(push[0] / n - twist * (y - middle[1]) / polar, push[1] / n + twist * (x - middle[0]) / polar) for x, y in bolts]


def united_area(boxes, outline):
    """Area of a union of boxes (left, right, front, rear) within an outline, strip by strip."""
    cut = [(max(a, outline[0]), min(b, outline[1]), max(c, outline[2]), min(d, outline[3])) for a, b, c, d in boxes]
    cut = [box for box in cut if box[0] < box[1] and box[2] < box[3]]
    ends = sorted({end for box in cut for end in box[:2]})
    total = 0.0
    for left, right in zip(ends, ends[1:]):
        reached = -math.inf
        for low, high in sorted(box[2:] for box in cut if box[0] <= left and right <= box[1]):
            total += max(0.0, high - max(low, reached)) * (right - left)
            reached = max(reached, high)
    return total


def connected(places, linked):
    """Connected sets, each begun by the first that is left."""
    left, found = list(places), []
    while left:
        group = [left.pop(0)]
        for one in group:
            near = [other for other in left if linked(one, other)]
            left = [other for other in left if other not in near]
            group += near
        found.append(sorted(group))
    return found


def widest_gap(points):
    """The largest spacing between neighbours: the longest link of the shortest tree."""
    inside, outside, longest = points[:1], points[1:], 0.0
    while outside:
        length, nearest = min((math.dist(a, b), n) for n, b in enumerate(outside) for a in inside)
        inside.append(outside.pop(nearest))
        longest = max(longest, length)
    return longest


class Anchorage:
    """Cast-in headed bolts in the units of an edition: N, mm, MPa or lbf, in., psi."""

    def __init__(self, case):
        self.us = case["us"]
        length, self.force, stress = (1 / INCH, 1 / LBF, 1 / PSI) if self.us else (1, 1, 1)
        self.at = [(x * length, y * length) for x, y in case["bolts"]]
        left, right, front, rear = [math.inf if edge is None else edge * length for edge in case["edges"]]
        self.outline = (-left, right, -front, rear)
        self.h_a, self.h_ef, self.d = case["thickness"] * length, case["h_ef"] * length, case["d"] * length
        self.f_c = min(case["f_c"] * stress, 10_000 if self.us else 70)
        self.a_se, self.a_brg = case["a_se"] * length**2, case["a_brg"] * length**2
        self.f_uta = min(case["f_u"] * stress, 1.9 * case["f_y"] * stress, 125_000 if self.us else 860)
        self.ductile, self.lightweight = case["ductile"], case.get("lightweight", 1.0)
        self.grout, self.stud = case.get("grout", False), case.get("stud", False)
        self.bars = {"none": 1.0, "bar": 1.2, "bar-and-stirrups": 1.4}[case.get("edge_bars", "none")]
        self.phi_t, self.phi_v = case.get("phi_t", 0.70), case.get("phi_v", 0.70)
        self.deep = case.get("deep", False)
        self.root = self.lightweight * math.sqrt(self.f_c)

    def edges(self, i):
        (x, y), (left, right, front, rear) = self.at[i], self.outline
        return (x - left, right - x, y - front, rear - y)

    def linked(self, a, b):
        return all(abs(p - q) < 3 * self.h_ef - 1e-9 for p, q in zip(self.at[a], self.at[b]))

    def breakout(self, group):
        """N_cbg without eccentricity, and the embedment of its equations (17.6.2)."""
        edges = [min(self.edges(i)[k] for i in group) for k in range(4)]
        near = [edge for edge in edges if edge < 1.5 * self.h_ef - 1e-9]
        h = self.h_ef
        if len(near) >= 3:
            h = min(h, max(max(near) / 1.5, widest_gap([self.at[i] for i in group]) / 3))
        boxes = [(x - 1.5 * h, x + 1.5 * h, y - 1.5 * h, y + 1.5 * h) for x, y in (self.at[i] for i in group)]
        low, high = (11, 25) if self.us else (280, 635)
        if self.deep and low <= h <= high:
            n_b = (16 if self.us else 3.9) * self.root * h ** (5 / 3)
        else:
            n_b = (24 if self.us else 10) * self.root * h**1.5
        psi_ed = min(1.0, 0.7 + 0.3 * min(edges) / (1.5 * h))
        return united_area(boxes, self.outline) / (9 * h * h) * psi_ed * n_b, h

    def tension(self, pull):
        """Ratios of steel and pullout of each bolt, of breakout of each group, of blowout at each edge."""
        pulled = [i for i, force in enumerate(pull) if force > LIFTED * max(pull)]
        steel = [force / ((0.75 if self.ductile else 0.65) * self.a_se * self.f_uta) for force in pull]
        pullout = [force / (0.75 * 0.70 * 8 * self.a_brg * self.f_c) for force in pull]
        groups = []
        for group in connected(pulled, self.linked):
            strength, h = self.breakout(group)
            total = sum(pull[i] for i in group)
            for axis in (0, 1):
                resultant = sum(pull[i] * self.at[i][axis] for i in group) / total
                off = abs(resultant - sum(self.at[i][axis] for i in group) / len(group)) if len(group) > 1 else 0.0
                strength /= 1 + off / (1.5 * h)
            groups.append((group, total / (0.75 * self.phi_t * strength)))
        return steel, pullout, groups, self.blowouts(pulled, pull)

    def blowouts(self, pulled, pull):
        """17.6.4, rows at one distance from an edge."""
        found = []
        for side in range(4):
            axis = 1 if side < 2 else 0
            near = [i for i in pulled if self.h_ef > 2.5 * self.edges(i)[side] + 1e-9]
            reach = lambda a, b: 6 * min(self.edges(a)[side], self.edges(b)[side])
            for row in connected(near, lambda a, b: abs(self.at[a][axis] - self.at[b][axis]) < reach(a, b)):
                c_1 = min(self.edges(i)[side] for i in row)
                n_sb = (160 if self.us else 13) * c_1 * math.sqrt(self.a_brg) * self.root
                apart = max(self.at[i][axis] for i in row) - min(self.at[i][axis] for i in row)
                corner = [min(self.edges(i)[2:] if side < 2 else self.edges(i)[:2]) / c_1 for i in row]
                shares = [1.0 if c >= 3 else (1 + max(c, 1.0)) / 4 for c in corner]
                strength = sum(shares) if len(row) == 1 else min(sum(shares), 1 + apart / (6 * c_1))
                found.append((row, sum(pull[i] for i in row) / (0.75 * self.phi_t * strength * n_sb)))
        return found

    def shear(self, shear):
        """Ratios of steel of each bolt, of pryout of each group."""
        size = [math.hypot(*force) for force in shear]
        strength = (1.0 if self.stud else 0.6) * self.a_se * self.f_uta * (0.8 if self.grout else 1.0)
        steel = [force / ((0.65 if self.ductile else 0.60) * strength) for force in size]
        k_cp = 2 if self.h_ef >= (2.5 if self.us else 65) else 1
        groups = []
        for group in connected(range(len(self.at)), self.linked):
            n_cp, h = self.breakout(group)
            x, y = sum(shear[i][0] for i in group), sum(shear[i][1] for i in group)
            middle = [sum(self.at[i][axis] for i in group) / len(group) for axis in (0, 1)]
            twist = sum((self.at[i][0] - middle[0]) * shear[i][1] - (self.at[i][1] - middle[1]) * shear[i][0] for i in group)
            if len(group) > 1:
                n_cp /= (1 + abs(twist * y) / (x * x + y * y) / (1.5 * h)) * (1 + abs(twist * x) / (x * x + y * y) / (1.5 * h))
            groups.append((group, math.hypot(x, y) / (0.70 * k_cp * n_cp)))
        return steel, groups


def inch_bolt(d, threads, head):
    """Stress area and bearing area of a heavy head in mm2 (ASME B1.1)."""
    flats = 1.5 * d + 1 / 8
    areas = (math.pi / 4 * (d - 0.9743 / threads) ** 2, math.sqrt(3) / 2 * flats**2 - math.pi / 4 * d * d)
    return {"bolt": head, "d": d * INCH, "a_se": areas[0] * INCH**2, "a_brg": areas[1] * INCH**2}


def metric_bolt(d, pitch, flats):
    areas = (math.pi / 4 * (d - 0.9382 * pitch) ** 2, math.sqrt(3) / 2 * flats**2 - math.pi / 4 * d * d)
    return {"bolt": f"M{d}", "d": d, "a_se": areas[0], "a_brg": areas[1]}


GRADE_36 = {"steel": "f1554-36", "f_u": 58_000 * PSI, "f_y": 36_000 * PSI, "ductile": True}
CLASS_8_8 = {"steel": "iso-8.8", "f_u": 800, "f_y": 640, "ductile": False}
FEET = [(-400, -500), (400, -500), (400, 500), (-400, 500)]
CORNERS = [(-450, -560), (450, -560), (450, 560), (-450, 560)]
PAIRS = [(-500, -560), (-350, -560), (500, 560), (350, 560), (500, -480), (-500, 500)]

CASES = [
    {"name": "corner bolts in lightweight concrete near two edges", "us": False, "bolts": CORNERS, "edges": (600, None, 720, None),
     "thickness": 220, "f_c": 30, "h_ef": 125, "lightweight": 0.85, "direction": 20, "push": 0.5, **metric_bolt(16, 2, 24), **GRADE_36,
     "asks": {"lightweight_factor": 0.85}},
    {"name": "pairs of brittle bolts on grout with eccentric pulls", "us": False, "bolts": PAIRS, "edges": (None, None, 700, 800),
     "thickness": 200, "f_c": 25, "h_ef": 110, "grout": True, "edge_bars": "bar", "phi_t": 0.75, "direction": 333, "push": 0.4,
     **metric_bolt(12, 1.75, 18), **CLASS_8_8, "asks": {"seat": "grout", "edge_bars": "bar", "supplementary_tension": "present"}},
    {"name": "a plinth with three edges near, in inches", "us": True, "bolts": [(-330, -420), (330, -420), (330, 200), (-330, 200)],
     "edges": (420, 420, 520, None), "thickness": 500, "f_c": 4000 * PSI, "h_ef": 254, "direction": 72, "push": 0.6,
     **inch_bolt(0.75, 10, "3/4 in"), **GRADE_36, "asks": {"head": "heavy-hex"}},
    {"name": "deep bolts in pairs that blow out a side face, in inches", "us": True,
     "bolts": [(-500, -560), (-500, -360), (500, -460), (450, 560), (-500, 540), (-500, 360)], "edges": (650, None, 720, None),
     "thickness": 800, "f_c": 4000 * PSI, "h_ef": 508, "deep": True, "direction": 20, "push": 0.5,
     **inch_bolt(0.625, 11, "5/8 in"), **GRADE_36, "asks": {"head": "heavy-hex", "breakout_form": "deep"}},
    {"name": "short bolts in strong concrete, one pulled", "us": False, "bolts": [(-400, -500), (400, -450), (100, 500)],
     "edges": (500, 480, None, 700), "thickness": 150, "f_c": 75, "h_ef": 60, "direction": 163, "push": 0.5,
     **metric_bolt(12, 1.75, 18), **GRADE_36, "asks": {}},
]
MASS, CENTRE, OVERSTRENGTH, DOWN = 1400, (40, -30, 1100), 2.0, 0.9 - 0.2
STIFFNESS = {"feet": [4e5, 1e5, 2e5, 3e5], "bolts": [3e4, 6e4, 1e5, 5e4, 4e4, 7e4]}


def project(case):
    bolts = [{"at_mm": list(at), "stiffness_n_per_mm": k} for at, k in zip(case["bolts"], STIFFNESS["bolts"])]
    feet = [{"name": f"foot {n + 1}", "at_mm": list(at), "size_mm": [0, 0], "stiffness_n_per_mm": k}
            for n, (at, k) in enumerate(zip(FEET, STIFFNESS["feet"]))]
    left, right, front, rear = case["edges"]
    return {
        "format": "steadfoot 1",
        "cabinet": {"width_mm": 1100, "depth_mm": 1200, "height_mm": 2200, "frame": {"mass_kg": MASS, "centre_mm": list(CENTRE)},
                    "feet": feet, "anchors": bolts},
        "slab": {"strength_mpa": case["f_c"], "thickness_mm": case["thickness"],
                 "edges_mm": {"left": left, "right": right, "front": front, "rear": rear}},
        "site": {"rule": "direct", "format": "strength", "horizontal_coefficient": case["push"], "vertical_coefficient": 0.2,
                 "gravity_heavy": 1.2, "gravity_light": 0.9, "overstrength": OVERSTRENGTH},
        "anchorage": {"rule": "aci-318-19" if case["us"] else "aci-318-19-si", "bolt": case["bolt"], "steel": case["steel"],
                      "embedment_mm": case["h_ef"], **case["asks"]},
    }


def block(case):
    anchorage, weight, angle = Anchorage(case), MASS * G, math.radians(case["direction"])
    push = (case["push"] * OVERSTRENGTH * weight * math.cos(angle), case["push"] * OVERSTRENGTH * weight * math.sin(angle))
    down = DOWN * weight
    load = (down, down * CENTRE[0] + push[0] * CENTRE[2], down * CENTRE[1] + push[1] * CENTRE[2])
    feet = [(*at, k) for at, k in zip(FEET, STIFFNESS["feet"])]
    bolts = [(*at, k) for at, k in zip(case["bolts"], STIFFNESS["bolts"])]
    pull = pulls(load, feet, bolts)
    shear = shears(push, CENTRE, case["bolts"])
    steel, pullout, groups, faces = anchorage.tension([force * anchorage.force for force in pull])
    steel_v, pried = anchorage.shear([(x * anchorage.force, y * anchorage.force) for x, y in shear])
    expect = []

    def value(at, number):
        expect.append({"at": at, "value": f"{number:.5g}"})

    hottest, most = max(range(len(pull)), key=lambda i: steel[i]), max(range(len(pull)), key=lambda i: steel_v[i])
    value(f"anchors/anchor-{hottest + 1}/tension-steel/r_N", steel[hottest])
    value(f"anchors/anchor-{hottest + 1}/tension-pullout/r_N", pullout[hottest])
    value(f"anchors/anchor-{most + 1}/shear-steel/r_V", steel_v[most])
    for mode, symbol, found in [("tension-breakout", "r_N", groups), ("tension-blowout", "r_N", faces), ("shear-pryout", "r_V", pried)]:
        for number, (_, ratio) in enumerate(found):
            value(f"anchors/group-{number + 1}/{mode}/{symbol}", ratio)
    return {"block": f"bolted cabinet: {case['name']}", "source": "Our own chain of statics and ACI 318-19 chapter 17", "trust": "derived",
            "runs": "project", "input": {"project": project(case), "state": "full", "case": "light m", "direction_deg": case["direction"]},
            "expect": expect}


assert all(math.dist(a, b) > 60 for case in CASES for a, b in combinations(case["bolts"], 2))
print("[\n  " + ",\n  ".join(json.dumps(block(case)) for case in CASES) + "\n]")
