"""Works out the statics check values anew and compares them with the files beside it.

Reads nothing of the engine. Springs at points: every set of active springs is tried and the one that contradicts
nothing is taken. Rectangles: the pressed polygon is clipped and integrated by triangles, and the three equations are
solved by damped steps with numerical derivatives. Run: python3 derive.py (Python 3, standard library only).
"""
import glob
import itertools
import json
import math
import os


def solve3(m, r):
    m = [row[:] + [v] for row, v in zip(m, r)]
    for i in range(3):
        p = max(range(i, 3), key=lambda k: abs(m[k][i]))
        if abs(m[p][i]) < 1e-9 * max(1e-300, max(abs(v) for row in m for v in row[:3])):
            return None
        m[i], m[p] = m[p], m[i]
        for k in range(3):
            if k != i:
                f = m[k][i] / m[i][i]
                m[k] = [a - f * b for a, b in zip(m[k], m[i])]
    return [m[i][3] / m[i][i] for i in range(3)]


def by_enumeration(feet, anchors, load):
    springs = [(x, y, k, 1) for x, y, k in feet] + [(x, y, k, -1) for x, y, k in anchors]
    best = None
    for size in range(3, len(springs) + 1):
        for active in itertools.combinations(range(len(springs)), size):
            m = [[0.0] * 3 for _ in range(3)]
            for i in active:
                x, y, k, _ = springs[i]
                v = (1, x, y)
                for a in range(3):
                    for b in range(3):
                        m[a][b] += k * v[a] * v[b]
            z = solve3(m, load)
            if z is None:
                continue
            wrong = 0.0
            for i, (x, y, k, sign) in enumerate(springs):
                w = sign * k * (z[0] + z[1] * x + z[2] * y)
                wrong = max(wrong, -w if i in active else w)
            if best is None or wrong < best[0]:
                best = (wrong, z)
    wrong, z = best
    assert wrong < 1e-6 * (abs(load[0]) + 1), wrong
    return z


def clip(polygon, z):
    w = [z[0] + z[1] * x + z[2] * y for x, y in polygon]
    out = []
    for i, p in enumerate(polygon):
        j = (i + 1) % len(polygon)
        if w[i] >= 0:
            out.append(p)
        if (w[i] >= 0) != (w[j] >= 0):
            t = w[i] / (w[i] - w[j])
            out.append(tuple(a + t * (b - a) for a, b in zip(p, polygon[j])))
    return out


def pressed(rectangle, z):
    """Area and integrals of w (1, x, y) over the pressed part: a triangle's are exact at the middles of its sides."""
    polygon = clip(rectangle, z)
    total = [0.0] * 4
    for i in range(1, len(polygon) - 1):
        a, b, c = polygon[0], polygon[i], polygon[i + 1]
        area = abs((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])) / 2
        total[0] += area
        for p, q in ((a, b), (b, c), (c, a)):
            x, y = (p[0] + q[0]) / 2, (p[1] + q[1]) / 2
            w = z[0] + z[1] * x + z[2] * y
            total[1] += area / 3 * w
            total[2] += area / 3 * w * x
            total[3] += area / 3 * w * y
    return total


def by_clipping(feet, load):
    def answer(z):
        sums = [0.0] * 3
        for rectangle, per_area in feet:
            parts = pressed(rectangle, z)
            for i in range(3):
                sums[i] += per_area * parts[i + 1]
        return sums

    k = sum(per_area * pressed(rectangle, (1, 0, 0))[0] for rectangle, per_area in feet)
    z = [load[0] / k, 0.0, 0.0]
    size = abs(load[0])
    for _ in range(500):
        left = [f - s for f, s in zip(load, answer(z))]
        norm = max(map(abs, left))
        if norm < 1e-11 * size:
            return z
        columns = []
        for i in range(3):
            h = 1e-7 * max(map(abs, z))
            up, down = z[:], z[:]
            up[i] += h
            down[i] -= h
            columns.append([(a - b) / (2 * h) for a, b in zip(answer(up), answer(down))])
        step = solve3([[columns[j][i] for j in range(3)] for i in range(3)], left)
        t = 1.0
        while t > 1e-6:
            trial = [a + t * b for a, b in zip(z, step)]
            if max(abs(f - s) for f, s in zip(load, answer(trial))) < norm:
                break
            t /= 2
        z = trial
    return z


def load_of(case):
    """P, P ex, P ey in kN and kN m."""
    if "down_n" in case:
        mx, my = case["moment_nm"]
        return [case["down_n"] / 1e3, mx / 1e3, my / 1e3]
    p = case["down_kn"]
    x, y = case.get("at_mm", [0, 0])
    m = case.get("moment_knm", 0)
    d = math.radians(case.get("direction_deg", 0))
    return [p, p * x / 1e3 + m * math.cos(d), p * y / 1e3 + m * math.sin(d)]


def springs_of(block, case):
    feet = [(f["at_mm"][0] / 1e3, f["at_mm"][1] / 1e3, f["stiffness_n_per_mm"]) for f in block.get("feet", [])]
    anchors = []
    for a in block["anchors"]:
        k = feet[0][2] / case["kappa"] if "kappa" in case else a["stiffness_n_per_mm"]
        anchors.append((a["at_mm"][0] / 1e3, a["at_mm"][1] / 1e3, k))
    return feet, anchors


def forces(block, case, load):
    feet, anchors = springs_of(block, case)
    z = by_enumeration(feet, anchors, load)
    w = lambda s: s[2] * (z[0] + z[1] * s[0] + z[2] * s[1])
    return [max(0.0, w(f)) for f in feet], [max(0.0, -w(a)) for a in anchors]


def results(block, case):
    if "pivot_far_n" in case["expect"]:
        edge = case["plan_half_mm"] / 1e3
        levers = [edge - a["at_mm"][0] / 1e3 for a in block["anchors"]]
        excess = case["moment_nm"][0] - case["down_n"] * edge
        share = [lever * excess / sum(v * v for v in levers) for lever in levers]
        far = [lever for lever in levers if lever == max(levers)]
        return {"pivot_far_n": max(share), "pivot_near_n": min(share), "pivot_far_alone_n": excess / sum(far)}
    if "horizontal_n" in case:
        places = [[c / 1e3 for c in a["at_mm"]] for a in block["anchors"]]
        polar = sum(x * x + y * y for x, y in places)
        twist = case["horizontal_n"] * case["offset_mm"] / 1e3
        v = case["horizontal_n"] / len(places)
        # The force acts along y, beside the middle by its offset along x.
        sizes = [math.hypot(twist * y / polar, v + twist * x / polar) for x, y in places]
        worst, least = max(sizes), min(sizes)
        return {"shear_max_n": worst, "shear_max_kn": worst / 1e3, "shear_least_n": least, "twist_nm": twist, "polar_m2": polar}
    load = load_of(case)
    if any(f["half_mm"] != [0, 0] for f in block.get("feet", [])):
        rectangles = []
        for f in block["feet"]:
            (x, y), (a, b) = [c / 1e3 for c in f["at_mm"]], [c / 1e3 for c in f["half_mm"]]
            corners = [(x - a, y - b), (x + a, y - b), (x + a, y + b), (x - a, y + b)]
            rectangles.append((corners, f["stiffness_n_per_mm"] / (4 * a * b)))
        z = by_clipping(rectangles, load)
        parts = [pressed(r, z) for r, _ in rectangles]
        peak = max(k * (z[0] + z[1] * x + z[2] * y) for r, k in rectangles for x, y in r)
        return {
            "feet_kn": [k * p[1] for p, (_, k) in zip(parts, rectangles)],
            "contact_m2": [p[0] for p in parts],
            "peak_kpa": peak,
            "peak_kpa_over_1000": peak / 1000,
            "peak_ksf": peak / 47.880258980336,
        }
    if "swept_deg" in case:
        best, most, at = 0.0, 0.0, 0.0
        for i in range(int(45 / case["swept_deg"]) + 1):
            d = i * case["swept_deg"]
            feet, anchors = forces(block, case, load_of(dict(case, direction_deg=d)))
            if max(anchors) > best:
                best, at = max(anchors), d
            most = max(most, max(feet))
        return {"tension_max_kn": best, "tension_max_at_deg": at, "compression_max_kn": most}
    feet, anchors = forces(block, case, load)
    pulls = sorted(anchors, reverse=True) + [0.0, 0.0]
    out = {"feet_kn": feet, "anchors_kn": anchors, "tension_max_kn": pulls[0], "tension_second_kn": pulls[1]}
    out["compression_max_kn"] = max(feet, default=0.0)
    out["tension_max_kip"] = pulls[0] / 4.4482216152605
    out["tension_least_kip"] = min(anchors, default=0.0) / 4.4482216152605
    for name in ("tension_max", "tension_second"):
        out[name + "_n"] = 1e3 * out[name + "_kn"]
    return out


def main():
    compared = 0
    for path in sorted(glob.glob(os.path.join(os.path.dirname(os.path.abspath(__file__)), "*.json"))):
        with open(path) as file:
            block = json.load(file)
        for case in block["cases"]:
            found = results(block, case)
            for name, printed in case["expect"].items():
                pairs = zip(printed, found[name]) if isinstance(printed, list) else [(printed, found[name])]
                for text, value in pairs:
                    digits = len(text.partition(".")[2])
                    compared += 1
                    if not abs(value - float(text)) <= 0.5 * 10**-digits * (1 + 1e-6) + 1e-12:
                        print(f"{os.path.basename(path)}: {case['name']}: {name} {text}, worked out {value!r}")
    print(f"{compared} values compared")


main()
