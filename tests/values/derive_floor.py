"""Check values of floors by plain arithmetic: statics, clipped polygons, power series in forty digits, closed forms.

Prints floor-derived.json. Plain Python, and nothing of the engine is read.
"""

import json
from decimal import Decimal, getcontext
from math import atan, cos, exp, hypot, log, pi, sin, sqrt

getcontext().prec = 60
G = 9.80665
BLOCKS = []


def block(name, source, given, expect, note=""):
    made = {"block": name, "source": source, "trust": "derived", "note": note, "runs": "floor", "input": given, "expect": expect}
    BLOCKS.append({key: value for key, value in made.items() if value != ""})


def value(at, number, digits, unit=""):
    made = {"at": at, "value": f"{number:.{digits}f}", "unit": unit}
    return {key: text for key, text in made.items() if text != ""}


# Kelvin's functions from their power series, in sixty digits.

EULER = Decimal("0.57721566490153286060651209008240243104215933593992")
PI_50 = Decimal("3.1415926535897932384626433832795028841971693993751")


def kelvin(x):
    x = Decimal(str(x))
    half = x / 2
    ber = bei = ber_h = bei_h = ber_s = bei_s = bei_h_s = Decimal(0)
    term, harmonic = Decimal(1), Decimal(0)
    for n in range(0, 200):
        if n:
            term *= half * half / (n * n)
            harmonic += Decimal(1) / n
        signed = term if n // 2 % 2 == 0 else -term
        slope = 2 * n * signed / x
        if n % 2 == 0:
            ber += signed
            ber_h += harmonic * signed
            ber_s += slope
        else:
            bei += signed
            bei_h += harmonic * signed
            bei_s += slope
            bei_h_s += harmonic * slope
    logarithm = half.ln() + EULER
    quarter = PI_50 / 4
    ker = -logarithm * ber + quarter * bei + ber_h
    kei = -logarithm * bei - quarter * ber + bei_h
    kei_slope = -bei / x - logarithm * bei_s - quarter * ber_s + bei_h_s
    return float(ker), float(kei), float(kei_slope)


for x in (0.01, 0.5, 1, 2, 2.9, 3, 3.1, 5, 8, 12):
    ker, kei, slope = kelvin(x)
    block(f"Kelvin functions at {x}", "Power series in sixty digits; at 1 they are the tabulated 0.286706, -0.494995, 0.352370",
          {"ask": "kelvin", "x": x}, [value("ker", ker, 10), value("kei", kei, 10), value("kei'", slope, 10)])

# The rigid rectangle by clipping the square and Newton's steps on the pressed part.


def pressed(corners, a, b, c):
    kept = []
    for (x0, y0), (x1, y1) in zip(corners, corners[1:] + corners[:1]):
        w0, w1 = a + b * x0 + c * y0, a + b * x1 + c * y1
        if w0 >= 0:
            kept.append((x0, y0))
        if (w0 > 0) != (w1 > 0) and w0 != w1:
            t = w0 / (w0 - w1)
            kept.append((x0 + t * (x1 - x0), y0 + t * (y1 - y0)))
    return kept


def moments(polygon):
    area = sx = sy = sxx = sxy = syy = 0.0
    for (x0, y0), (x1, y1) in zip(polygon, polygon[1:] + polygon[:1]):
        cross = x0 * y1 - x1 * y0
        area += cross / 2
        sx += cross * (x0 + x1) / 6
        sy += cross * (y0 + y1) / 6
        sxx += cross * (x0 * x0 + x0 * x1 + x1 * x1) / 12
        syy += cross * (y0 * y0 + y0 * y1 + y1 * y1) / 12
        sxy += cross * (x0 * y1 + 2 * x0 * y0 + 2 * x1 * y1 + x1 * y0) / 24
    return area, sx, sy, sxx, sxy, syy


def solve(m, r):
    rows = [list(row) + [right] for row, right in zip(m, r)]
    for i in range(3):
        top = max(range(i, 3), key=lambda j: abs(rows[j][i]))
        rows[i], rows[top] = rows[top], rows[i]
        for j in range(3):
            if j != i:
                factor = rows[j][i] / rows[i][i]
                rows[j] = [u - factor * v for u, v in zip(rows[j], rows[i])]
    return [rows[i][3] / rows[i][i] for i in range(3)]


def rectangle(ex, ey):
    """Highest pressure over the mean and pressed part of a unit square under a unit load."""
    square = [(-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5)]
    plane = [1.0, 12 * ex, 12 * ey]

    def left(plane):
        area, sx, sy, sxx, sxy, syy = moments(pressed(square, *plane))
        matrix = [[area, sx, sy], [sx, sxx, sxy], [sy, sxy, syy]]
        answer = [sum(u * v for u, v in zip(row, plane)) for row in matrix]
        return matrix, [1 - answer[0], ex - answer[1], ey - answer[2]]

    for _ in range(200):
        matrix, rest = left(plane)
        size = max(map(abs, rest))
        if size < 1e-14:
            break
        step, length = solve(matrix, rest), 1.0
        while length > 1e-6:
            tried = [u + length * v for u, v in zip(plane, step)]
            kept = pressed(square, *tried)
            if len(kept) > 2 and max(map(abs, left(tried)[1])) < size:
                break
            length /= 2
        plane = tried
    kept = pressed(square, *plane)
    peak = max(plane[0] + plane[1] * x + plane[2] * y for x, y in kept)
    return peak, moments(kept)[0]


PRINTED = [0.0, 0.05, 0.1, 0.15, 1 / 6, 0.2, 0.25, 0.3, 0.35, 0.4]
for i, x in enumerate(PRINTED):
    for y in PRINTED[i:]:
        peak, contact = rectangle(x, y)
        block(f"K at {x:.4f}, {y:.4f}", "Clipped square in equilibrium by Newton's steps; the first row is the classic one-way table",
              {"ask": "rectangle-solved", "x": y, "y": x}, [value("K", peak, 3), value("A_c", contact, 3)])
for x, y in ((0.05, 0.05), (0.0, 0.3), (0.1, 0.35), (0.25, 0.4), (0.3, 0.3)):
    peak, contact = rectangle(x, y)
    block(f"closed form at {x}, {y}", "Clipped square in equilibrium by Newton's steps, to set beside the closed form of its zone",
          {"ask": "rectangle", "x": x, "y": y}, [value("K", peak, 5)])
block("three corners pressed", "Between the kern and the trapezoid there is no short closed form", {"ask": "rectangle", "x": 0.15, "y": 0.15, "reason": "three corners"}, [value("reason", 0, 0)])
block("beside the base", "The load stands on the edge of the base", {"ask": "rectangle", "x": 0.5, "y": 0.1, "reason": "tips"}, [value("reason", 0, 0)])

# Four feet.

for ex, ey, name in ((0.1, 0.05, "four bear"), (0.2, 0.2, "four bear"), (0.25, 0.25, "the limit"), (0.4, 0.3, "three bear")):
    w = 40.0
    if ex + ey <= 0.5:
        forces = [w * (0.25 + ex / 2 + ey / 2), w * (0.25 + ex / 2 - ey / 2), w * (0.25 - ex / 2 + ey / 2)]
    else:
        forces = [w * (ex + ey), w * (0.5 - ey), w * (0.5 - ex)]
    block(f"EX-01 by closed form at {ex}, {ey}", f"Four equal feet 1 m apart under 40 kN, {name}",
          {"ask": "four-feet", "load": "40 kN", "xi": ex, "eta": ey},
          [value(at, force, 4, "kN") for at, force in zip(("N_pp", "N_pm", "N_mp"), forces)])
block("four feet, beside them", "The load stands beside the feet", {"ask": "four-feet", "load": "40 kN", "xi": 0.6, "eta": 0, "reason": "tips"}, [value("reason", 0, 0)])
W = 4000 * G
block("EX-07", "W / 4 less and more k delta / 4: 4000 kg on four feet of 5000 kN/m, a hollow of 2 mm under one",
      {"ask": "hollow", "load": f"{W} N", "stiffness": 5000.0, "hollow": 2.0},
      [value("N_less", (W / 4 - 2500) / 1e3, 4, "kN"), value("N_more", (W / 4 + 2500) / 1e3, 4, "kN"), value("delta_0", W / 5000, 3, "mm")])
block("EX-07, lifted", "A hollow of 10 mm: the foot hangs, the other diagonal carries all",
      {"ask": "hollow", "load": f"{W} N", "stiffness": 5000.0, "hollow": 10.0}, [value("N_half", W / 2e3, 4, "kN")])

# Base plates.


def triangular(p, m, fp, side, rods_to_edge):
    middle = rods_to_edge - side / 2
    aux = fp * side * rods_to_edge / 2
    root = aux ** 2 - 4 * (fp * side / 6) * (p * middle + m)
    if root < 0:
        return None
    a = (aux - sqrt(root)) / (fp * side / 3)
    return a, fp * a * side / 2 - p


for p, m, fp, side in ((376, 3600, 2.21, 20), (376, 3600, 2.21, 24), (376, 3600, 2.21, 26), (60, 480, 2.1, 14)):
    given = {"ask": "plate-triangular", "system": "us", "load": f"{p} kip", "moment": f"{m} kip-in", "length": f"{side} in", "width": f"{side} in",
             "pressure": f"{fp} ksi", "rods_to_edge": f"{side - 1.5} in", "rods_to_middle": f"{side / 2 - 1.5} in"}
    found = triangular(p, m, fp, side, side - 1.5)
    if found is None:
        block(f"EX-16b, side {side}", "Triangular block: the root is of a negative number", dict(given, reason="no real length"), [value("reason", 0, 0)])
    else:
        block(f"EX-16b, side {side}", "Triangular block, the quadratic solved", given, [value("A", found[0], 4, "in"), value("T", found[1], 3, "kip")])


def elastic(p, m, n_plate, b, f, n, a_s, wrong=False):
    e = m / p
    k1 = 3 * (e + n_plate / 2 if wrong else e - n_plate / 2)
    k2 = 6 * n * a_s * (f + e) / b
    k3 = -k2 * (n_plate / 2 + f)
    low, high = 0.0, 10 * n_plate
    for _ in range(300):
        y = (low + high) / 2
        low, high = (y, high) if y ** 3 + k1 * y * y + k2 * y + k3 < 0 else (low, y)
    t = -p * (n_plate / 2 - y / 3 - e) / (n_plate / 2 - y / 3 + f)
    fc = 2 * (p + t) / (y * b)
    return k1, k2, k3, y, t, fc, t / a_s, n * fc * (n_plate / 2 + f - y) / y


for name, p, m, side, f, n, a_s, units in (
    ("EX-16c, first", 376, 3600, 20, 8.5, 8, 2.82, "us"),
    ("EX-16c, second", 100, 1200, 20, 8.5, 8, 2.82, "us"),
    ("EX-16c, SI", 40, 30, 1.2, 0.5, 8, 314e-6, "si"),
):
    k1, k2, k3, y, t, fc, fs, strain = elastic(p, m, side, side, f, n, a_s)
    assert abs(fs / strain - 1) < 1e-9
    if units == "us":
        given = {"ask": "plate-elastic", "system": "us", "load": f"{p} kip", "moment": f"{m} kip-in", "length": f"{side} in", "width": f"{side} in",
                 "modular_ratio": n, "rod_area": f"{a_s} in2", "rods": f"{f} in"}
        expect = [value("K_1", k1, 4, "in"), value("K_2", k2, 3, "in2"), value("Y", y, 4, "in"), value("T", t, 3, "kip"),
                  value("f_c", fc, 4, "ksi"), value("f_s", fs, 3, "ksi"), value("f_e", fs, 3, "ksi")]
    else:
        given = {"ask": "plate-elastic", "load": f"{p} kN", "moment": f"{m} kN-m", "length": f"{side} m", "width": f"{side} m",
                 "modular_ratio": n, "rod_area": f"{a_s} m2", "rods": f"{f} m"}
        expect = [value("Y", y, 5, "m"), value("T", t, 4, "kN"), value("f_c", fc / 1e3, 5, "MPa")]
    block(name, "Cracked elastic section: the cubic solved by halving, held against plane strains", given, expect)

right, wrong = elastic(1075, 1096875, 300, 300, 86, 10, 390.78), elastic(1075, 1096875, 300, 300, 86, 10, 390.78, wrong=True)
assert abs(wrong[6] - 11.44) < 0.01 and abs(wrong[7] - 15.28) < 0.01 and abs(wrong[3] - 64.417) < 0.01, "the wrong sign gives what the sheet prints"
block("EX-16d, corrected", "The sheet of EX-16d with the sign of K_1 put right: strains fit, which the printed 64.417 mm and 4468.87 kg do not",
      {"ask": "plate-elastic", "load": "1075 kgf", "moment": "1096875 kgf-mm", "length": "300 mm", "width": "300 mm", "modular_ratio": 10,
       "rod_area": "390.78 mm2", "rods": "86 mm"},
      [value("K_1", right[0], 2, "mm"), value("Y", right[3], 3, "mm"), value("T", right[4], 1, "kgf"), value("f_s", right[6], 3, "kgf/mm2"),
       value("f_e", right[6], 3, "kgf/mm2"), value("f_c", right[5] * 100, 1, "kgf/cm2")])
block("one sixth", "Within a sixth of the plate no rod pulls",
      {"ask": "plate-elastic", "load": "100 kN", "moment": "10 kN-m", "length": "0.7 m", "width": "0.7 m", "modular_ratio": 8,
       "rod_area": "314 mm2", "rods": "0.3 m", "reason": "no rod pulls"}, [value("reason", 0, 0)])

# A plate with rods that pull, rectangular block.


def rectangular(p, m, side, fp, f):
    e, q = m / p, fp * side
    far = f + side / 2
    y = far - sqrt(far ** 2 - 2 * p * (e + f) / q)
    return y, q * y - p


y, t = rectangular(100, 1500, 19, 2.21, 8)
x = 8 - 12.7 / 2 + 0.9 / 2
m_out = (19 - 0.95 * 12.7) / 2
block("rectangular block with pull", "Design Guide 1, 2nd ed., 3.4, solved: 100 kip, 1500 kip-in on 19 in",
      {"ask": "plate-rectangular", "system": "us", "load": "100 kip", "moment": "1500 kip-in", "length": "19 in", "width": "19 in", "pressure": "2.21 ksi",
       "rods": "8 in", "column_depth": "12.7 in", "column_flange": "12.2 in", "yield": "36 ksi", "flange_to_rods": f"{x} in"},
      [value("Y", y, 3, "in"), value("T", t, 2, "kip"), value("t_t", 2.11 * sqrt(t * x / (19 * 36)), 3, "in"),
       value("t_m", 1.5 * m_out * sqrt(2.21 / 36) if y >= m_out else 2.11 * sqrt(2.21 * y * (m_out - y / 2) / 36), 3, "in")])
y, t = rectangular(30, 700, 19, 2.21, 8)
assert y < m_out
block("short rectangular block with pull", "Design Guide 1, 2nd ed., 3.4, solved: 30 kip, 700 kip-in on 19 in",
      {"ask": "plate-rectangular", "system": "us", "load": "30 kip", "moment": "700 kip-in", "length": "19 in", "width": "19 in", "pressure": "2.21 ksi",
       "rods": "8 in", "column_depth": "12.7 in", "column_flange": "12.2 in", "yield": "36 ksi", "flange_to_rods": f"{x} in"},
      [value("Y", y, 3, "in"), value("T", t, 2, "kip"), value("t_m", 2.11 * sqrt(2.21 * y * (m_out - y / 2) / 36), 3, "in")])
block("plate too small", "Design Guide 1, 2nd ed., 3.4: the root is of a negative number",
      {"ask": "plate-rectangular", "system": "us", "load": "376 kip", "moment": "9400 kip-in", "length": "19 in", "width": "19 in", "pressure": "2.21 ksi",
       "rods": "8 in", "reason": "too small"}, [value("reason", 0, 0)])
x_l = 4 * 12.7 * 12.2 / (12.7 + 12.2) ** 2 * 100 / (0.65 * 0.85 * 4 * 14 * 13)
lam = min(1, 2 * sqrt(x_l) / (1 + sqrt(1 - x_l)))
block("concentric, lines between the flanges", "Design Guide 1, 2nd ed., 3.1.2: a plate hardly wider than its column",
      {"ask": "plate-concentric", "system": "us", "load": "100 kip", "moment": "0 kip-in", "length": "14 in", "width": "13 in", "strength": "4000 psi",
       "column_depth": "12.7 in", "column_flange": "12.2 in", "yield": "36 ksi"},
      [value("X", x_l, 4), value("lambda", lam, 4), value("n_l", lam * sqrt(12.7 * 12.2) / 4, 4, "in"),
       value("t", max(lam * sqrt(12.7 * 12.2) / 4, (13 - 0.8 * 12.2) / 2) * sqrt(2 * 100 / (0.9 * 36 * 14 * 13)), 4, "in")])

# Bearing and foot plates.

block("EX-16e (a)", "ACI-like bearing of AISC J8: 4 in by 4 in, 4000 psi, 6 in; the root of 7 is cut at 2",
      {"ask": "bearing-aisc", "system": "us", "size": ["4 in", "4 in"], "beyond": [None, None], "thickness": "6 in", "strength": "4000 psi"},
      [value("s_r", 7, 0), value("P_p", 1.7 * 4 * 16, 1, "kip"), value("P_d", 0.65 * 1.7 * 4 * 16, 2, "kip"), value("P_a", 1.7 * 4 * 16 / 2.31, 3, "kip"),
       value("F_a", 0.7 * 4 * 16, 1, "kip")])
block("bearing near an edge", "AISC J8 with 1 in beside the foot: the root is (4 + 2) / 4",
      {"ask": "bearing-aisc", "system": "us", "size": ["4 in", "4 in"], "beyond": ["1 in", None], "thickness": "6 in", "strength": "4000 psi"},
      [value("s_r", 1.5, 1), value("P_p", 0.85 * 4 * 16 * 1.5, 1, "kip"), value("F_a", 0.35 * 4 * 16 * 1.5, 1, "kip")])
for alpha, force in ((1.0, 500), (0.85, 425)):
    block(f"EX-16e (b), alpha_cc {alpha}", "EN 1992-1-1 (6.63): 100 mm by 100 mm on 150 mm of C30; the spread is the thickness",
          {"ask": "bearing-en", "size": [100.0, 100.0], "beyond": [None, None], "thickness": 150.0, "strength": 30.0, "alpha": alpha},
          [value("f_cd", 20 * alpha, 1, "MPa"), value("r_s", 2.5, 1), value("F_Rdu", force, 0, "kN"), value("f_jd", force / 10 * 2 / 3, 2, "MPa")])
block("EN bearing on a thick slab", "EN 1992-1-1 6.7: the ratio of sides is cut at 3",
      {"ask": "bearing-en", "size": [100.0, 200.0], "beyond": [None, None], "thickness": 1000.0, "strength": 30.0, "alpha": 1.0},
      [value("r_x", 3, 0), value("r_y", 3, 0), value("F_Rdu", 1200, 0, "kN")])
block("EN bearing near an edge", "EN 1992-1-1 6.7: 30 mm beside the foot",
      {"ask": "bearing-en", "size": [100.0, 200.0], "beyond": [30.0, None], "thickness": 150.0, "strength": 30.0, "alpha": 1.0},
      [value("r_x", 1.6, 1), value("r_y", 1.75, 2), value("F_Rdu", 640, 0, "kN")])
for form, t in (("limit-states", 35 * sqrt(3 * 2 / 235)), ("strength", 35 * sqrt(2 * 2 / (0.9 * 235))), ("allowable-stress", 35 * sqrt(3.34 * 2 / 235))):
    block(f"EX-16e (c), {form}", "Cantilever of 35 mm under 2 MPa: a plate of 100 mm on a stem of 30 mm, 20 kN",
          {"ask": "foot-plate", "format": form, "side": 100.0, "stem": 30.0, "yield": 235.0, "pressure": 2.0},
          [value("c", 35, 0, "mm"), value("t", t, 2, "mm")])
side = 0.886 * 120
block("round foot on a swivel", "Square of equal area, line at 0.8 of the stem: common practice",
      {"ask": "foot-plate", "shape": "round", "held": "swivel", "side": 120.0, "stem": 24.0, "yield": 235.0, "pressure": 2.0},
      [value("B", side, 2, "mm"), value("c", (side - 19.2) / 2, 3, "mm"), value("t", (side - 19.2) / 2 * sqrt(4 / 211.5), 3, "mm")])
block("stem as wide as the plate", "Nothing overhangs", {"ask": "foot-plate", "side": 30.0, "stem": 30.0, "yield": 235.0, "pressure": 2.0, "reason": "nothing overhangs"},
      [value("reason", 0, 0)])
b_s = sqrt(40e3 / 0.5)
for form, factor in (("strength", 2 / 0.9), ("limit-states", 3.0), ("allowable-stress", 3.34)):
    block(f"spreader plate, {form}", "40 kN brought down to 0.5 MPa under a foot of 100 mm",
          {"ask": "spreader", "format": form, "load": "40 kN", "wanted": 0.5, "foot": 100.0, "yield": 235.0},
          [value("B_s", b_s, 2, "mm"), value("c", (b_s - 100) / 2, 2, "mm"), value("t_s", (b_s - 100) / 2 * sqrt(factor * 0.5 / 235), 3, "mm")])
block("no spreader plate needed", "The foot alone is wide enough", {"ask": "spreader", "load": "4 kN", "wanted": 0.5, "foot": 100.0, "yield": 235.0, "reason": "no spreader"},
      [value("reason", 0, 0)])

# Slab on the ground.


def radius(e, h, nu, k):
    return (e * h ** 3 / (12 * (1 - nu * nu) * k)) ** 0.25


def thick(a, h):
    return sqrt(1.6 * a * a + h * h) - 0.675 * h if a < 1.724 * h else a


GIVEN = {"modulus": 33000.0, "poisson": 0.2, "thickness": 200.0, "subgrade": 0.05}
l = radius(33000, 200, 0.2, 0.05)
a = sqrt(1e4 / pi)
P = 9806.65
legs = [[1100.0, 0.0], [0.0, 1100.0], [1100.0, 1100.0]]
mx = my = mxy = 0.0
for dx, dy in legs:
    r = hypot(dx, dy)
    z = r / l
    ker, kei, slope = kelvin(z)
    mr = P / (2 * pi) * (ker - 0.8 * slope / z)
    mt = P / (2 * pi) * (0.2 * ker + 0.8 * slope / z)
    c, s = dx / r, dy / r
    mx += mr * c * c + mt * s * s
    my += mr * s * s + mt * c * c
    mxy += (mr - mt) * c * s
m1 = (mx + my) / 2 + sqrt(((mx - my) / 2) ** 2 + mxy ** 2)
own = 3 * 1.2 * P / (2 * pi * 200 ** 2) * (log(l / thick(a, 200)) + 0.6159)
block("EX-25", "Westergaard interior, and three neighbours by Kelvin functions: 4 legs of 1000 kg, 1.1 m apart, on 200 mm",
      dict(GIVEN, ask="neighbours", area=1e4, load=P, away=legs),
      [value("l", l, 1, "mm"), value("sigma", own, 5, "MPa"), value("m_mean", (mx + my) / 2, 2, "N"), value("m_1", m1, 2, "N"), value("sigma_n", 6 * m1 / 4e4, 5, "MPa")])
assert abs(m1 - 350.61) < 0.01 and abs(own - 0.41864) < 1e-5
for z, printed in ((0.5, (0.85508, 0.05137, 0.11209)), (1.0, (0.63025, 0.00077, 0.05399)), (2.0, (0.25770, -0.02062, 0.01267)), (4.0, (-0.00280, -0.00652, -0.00039))):
    ker, kei, slope = kelvin(z)
    ratios = (-4 / pi * kei, (ker - 0.8 * slope / z) / (2 * pi), (0.2 * ker + 0.8 * slope / z) / (2 * pi))
    assert all(abs(u - v) < 6e-6 for u, v in zip(ratios, printed))
    block(f"plate on springs at {z}", "Settlement and moments of a plate on springs, Poisson's ratio 0.2, under 1 N",
          dict(GIVEN, ask="neighbours", area=1e4, load=1.0, away=[[z * l, 0.0]]),
          [value("w_j", ratios[0], 5), value("m_r", ratios[1], 5, "N"), value("m_t", ratios[2], 5, "N")])
# A free edge by finite strips: cosines along it, cubic beam elements across it, energy of the plate and its springs. The
# conditions at a free edge follow from the energy by themselves; nothing is known here of what an edge sends back.

GAUSS = [(-0.8611363115940526, 0.3478548451374538), (-0.3399810435848563, 0.6521451548625461),
         (0.3399810435848563, 0.6521451548625461), (0.8611363115940526, 0.3478548451374538)]


def strip_element(h, s, nu):
    made = [[0.0] * 4 for _ in range(4)]
    for at, weight in GAUSS:
        t, weight = (at + 1) / 2, weight * h / 2
        n0 = [1 - 3 * t * t + 2 * t ** 3, h * (t - 2 * t * t + t ** 3), 3 * t * t - 2 * t ** 3, h * (t ** 3 - t * t)]
        n1 = [(6 * t * t - 6 * t) / h, 1 - 4 * t + 3 * t * t, (6 * t - 6 * t * t) / h, 3 * t * t - 2 * t]
        n2 = [(12 * t - 6) / h ** 2, (6 * t - 4) / h, (6 - 12 * t) / h ** 2, (6 * t - 2) / h]
        for i in range(4):
            for j in range(4):
                bent = (n2[i] - s * s * n0[i]) * (n2[j] - s * s * n0[j])
                twisted = (1 - nu) * s * s * (n0[i] * n2[j] + n2[i] * n0[j] + 2 * n1[i] * n1[j])
                made[i][j] += weight * (bent + twisted + n0[i] * n0[j])
    return made


def strip(count, h, s, nu, loaded):
    """Settlements and slopes at the nodes of a strip of so many elements under a load of 1 on one node."""
    size = 2 * (count + 1)
    band, right = [[0.0] * 4 for _ in range(size)], [0.0] * size
    right[2 * loaded] = 1.0
    element = strip_element(h, s, nu)
    for at in range(count):
        for i in range(4):
            for j in range(i, 4):
                band[2 * at + i][j - i] += element[i][j]
    for i in range(size):
        for k in range(1, min(4, size - i)):
            share = band[i][k] / band[i][0]
            for j in range(k, 4):
                band[i + k][j - k] -= share * band[i][j]
            right[i + k] -= share * right[i]
    for i in range(size - 1, -1, -1):
        for k in range(1, min(4, size - i)):
            right[i] -= band[i][k] * right[i + k]
        right[i] /= band[i][0]
    return right


def curvature(bent, node, h):
    sides = []
    if 2 * node + 3 < len(bent):
        w0, t0, w1, t1 = bent[2 * node:2 * node + 4]
        sides.append((6 * (w1 - w0) - h * (4 * t0 + 2 * t1)) / h ** 2)
    if node > 0:
        w0, t0, w1, t1 = bent[2 * node - 2:2 * node + 2]
        sides.append((6 * (w0 - w1) + h * (2 * t0 + 4 * t1)) / h ** 2)
    return sum(sides) / len(sides)


def edge_moments(x, y, eta, nu, h, far=12.0, half_period=20.0):
    """What an edge adds at (x, y) to the moments of a load of 1 at (0, eta): with the edge less without it."""
    count, here, there = round(far / h), round(y / h), round(eta / h)
    m_x = m_y = m_xy = 0.0
    k = 0
    while k * pi / half_period * (y + eta) < 16:
        s, share = k * pi / half_period, (0.5 if k == 0 else 1.0) / half_period
        edged, whole = strip(count, h, s, nu, there), strip(2 * count, h, s, nu, count)
        middle = count + here - there
        w, slope = edged[2 * here] - whole[2 * middle], edged[2 * here + 1] - whole[2 * middle + 1]
        bend = curvature(edged, here, h) - curvature(whole, middle, h)
        m_x += share * (s * s * w - nu * bend) * cos(s * x)
        m_y -= share * (bend - nu * s * s * w) * cos(s * x)
        m_xy += share * (1 - nu) * s * slope * sin(s * x)
        k += 1
    return m_x, m_y, m_xy


for x, y, eta in ((1.0, 0.5, 0.5), (0.8, 0.3, 0.6), (0.0, 0.2, 0.9), (-1.5, 1.0, 0.2)):
    coarse, fine = (edge_moments(x, y, eta, 0.2, h) for h in (0.1, 0.05))
    sent = [(4 * v - u) / 3 for u, v in zip(coarse, fine)]
    r = hypot(x, eta - y)
    c, s = -x / r, (eta - y) / r
    ker, kei, slope = kelvin(r)
    mr, mt = (ker - 0.8 * slope / r) / (2 * pi), (0.2 * ker + 0.8 * slope / r) / (2 * pi)
    moments_there = (mr * c * c + mt * s * s + sent[0], mr * s * s + mt * c * c + sent[1], (mr - mt) * c * s + sent[2])
    block(f"free edge at {y}, load at {eta}, {x} along it", "Finite strips with and without an edge, elements of 0.1 and 0.05 extrapolated; Kelvin functions for the plate without one; Poisson's ratio 0.2, under 1 N",
          dict(GIVEN, ask="neighbours", area=1e4, load=1.0, from_edge=y * l, away=[[-x * l, (eta - y) * l]]),
          [value(name, moment, 5, unit) for name, moment, unit in zip(("e_x", "e_y", "e_xy", "m_x", "m_y", "m_xy"), sent + list(moments_there), ("", "", "", "N", "N", "N"))])
for position, k in (("interior", 8 * 0.05 * l * l),
                    ("edge", sqrt(33000 * 200 ** 3 * 0.05) / sqrt(2.24) / (1 - 0.84 * a / l)),
                    ("corner", 0.05 * l * l / (1.205 - 0.69 * 1.772 * a / l))):
    block(f"stiffness of the slab, {position}", "The published deflections turned round: 200 mm, 33 GPa, 0.05 N/mm3, 100 mm by 100 mm",
          dict(GIVEN, ask="stiffness", area=1e4, position=position), [value("k_slab", k / 1e3, 3, "MN/m")])
p = 20e3
ln_term = log(33000 * 200 ** 3 / (100 * 0.05 * a ** 4))
block("edge of 1948, circle", "Westergaard 1948, written out", dict(GIVEN, ask="westergaard", position="edge", area=1e4, load=p),
      [value("sigma", 3 * 1.2 * p / (pi * 3.2 * 4e4) * (ln_term + 1.84 - 0.8 / 3 + 0.4 + 1.18 * 1.4 * a / l), 4, "MPa"),
       value("w", sqrt(2.24) * p / sqrt(33000 * 8e6 * 0.05) * (1 - 0.84 * a / l), 5, "mm")])
a_half = sqrt(2e4 / pi)
ln_half = log(33000 * 200 ** 3 / (100 * 0.05 * a_half ** 4))
block("edge of 1948, semicircle", "Westergaard 1948, written out", dict(GIVEN, ask="westergaard", position="edge", form="semicircle", area=1e4, load=p),
      [value("sigma", 3 * 1.2 * p / (pi * 3.2 * 4e4) * (ln_half + 3.84 - 0.8 / 3 + 1.4 * a_half / (2 * l)), 4, "MPa"),
       value("w", sqrt(2.24) * p / sqrt(33000 * 8e6 * 0.05) * (1 - 0.357 * a_half / l), 5, "mm")])
block("EX-18, 1948", "The data of EX-18 with the form of 1948, which gives a third more",
      {"ask": "westergaard", "position": "edge", "modulus": "4600000 psi", "poisson": 0.15, "thickness": "10 in", "subgrade": "160 lbf/in3", "contact_radius": "3 in",
       "load": "800 lbf"}, [value("sigma", 28.9, 1, "psi")])
block("EX-20, 1948", "The data of EX-20 with the form of 1948",
      {"ask": "westergaard", "position": "edge", "modulus": "300000 kgf/cm2", "poisson": 0.15, "thickness": "18 cm", "subgrade": "6 kgf/cm3",
       "contact_radius": "15 cm", "load": "5100 kgf"}, [value("sigma", 35.36, 2, "kgf/cm2")])
block("early edge with another Poisson's ratio", "The early form is printed for 0.15 only",
      dict(GIVEN, ask="westergaard", position="edge", form="early", area=1e4, load=p, reason="0.15 only"), [value("reason", 0, 0)])
block("interior, deflection", "Westergaard interior, written out", dict(GIVEN, ask="westergaard", area=1e4, load=p),
      [value("w", p / (8 * 0.05 * l * l) * (1 + (log(a / (2 * l)) - 0.673) / (2 * pi) * (a / l) ** 2), 5, "mm")])
wide = 4 * 200.0 ** 2 * pi
block("interior, wide contact", "A contact wider than 1.724 of the thickness keeps its radius", dict(GIVEN, ask="westergaard", area=wide, load=p),
      [value("b", 400, 1, "mm"), value("sigma", 3 * 1.2 * p / (2 * pi * 4e4) * (log(l / 400) + 0.6159), 4, "MPa")])
block("corner, Ioannides", "Ioannides 1985, written out", dict(GIVEN, ask="ioannides", area=1e4, load=p),
      [value("sigma", 3 * p / 4e4 * (1 - (1.772 * a / l) ** 0.72), 4, "MPa"), value("w", p / (0.05 * l * l) * (1.205 - 0.69 * 1.772 * a / l), 4, "mm")])
block("corner, Westergaard", "Westergaard 1926, written out", dict(GIVEN, ask="westergaard", position="corner", area=1e4, load=p),
      [value("sigma", 3 * p / 4e4 * (1 - (a * sqrt(2) / l) ** 0.6), 4, "MPa"), value("w", p / (0.05 * l * l) * (1.1 - 0.88 * a * sqrt(2) / l), 4, "mm"),
       value("x_c", 2.38 * sqrt(a * l), 2, "mm")])
OUT = {"poisson": ((0.09, 0.26), "Poisson"), "thickness": ((74.0, 1001.0), "thinner than 75"), "subgrade": ((0.0029, 0.31), "subgrade reaction lies outside"),
       "modulus": ((4.9e3, 60.1e3), "modulus of elasticity of the slab lies outside")}
for field, (outside, words) in OUT.items():
    for number in outside:
        block(f"slab on the ground, {field} {number}", "Outside the range that is said", dict(GIVEN, ask="westergaard", area=1e4, load=p, reason=words, **{field: number}),
              [value("reason", 0, 0)])
for field, inside in (("poisson", (0.10, 0.25)), ("thickness", (75.0, 1000.0)), ("subgrade", (0.003, 0.3)), ("modulus", (5e3, 60e3))):
    for number in inside:
        given = dict(GIVEN, **{field: number})
        block(f"slab on the ground, {field} {number}, just within", "Radius of relative stiffness, written out", dict(given, ask="westergaard", area=100.0, load=p),
              [value("l", radius(given["modulus"], given["thickness"], given["poisson"], given["subgrade"]), 2, "mm")])
block("contact too large", "A contact of more than half the radius of relative stiffness", dict(GIVEN, ask="westergaard", contact_radius=0.51 * l, load=p, reason="smaller contacts"),
      [value("reason", 0, 0)])
block("modulus of concrete", "4700 sqrt(f'c) of ACI 318-19 19.2.2.1(b), recalled", {"ask": "modulus", "strength": 28.0}, [value("E", 4700 * sqrt(28), 1, "MPa")])

# Plastic forms.

TENSILE = 1.9
for h in (200.0, 700.0):
    factor = max(1, 1.6 - h / 1000)
    mn = TENSILE * factor / 1.5 * h * h / 6
    given = dict(GIVEN, thickness=h, tensile=TENSILE, residual=9000.0)
    lh = radius(33000, h, 0.2, 0.05)
    for ratio in (0.05, 0.3):
        contact = ratio * lh
        both = 9000 + mn
        at = {"interior": (2 * pi * both, lambda r: 4 * pi * both / (1 - r / 3)),
              "edge": (pi * both / 2 + 2 * mn, lambda r: (pi * both + 4 * mn) / (1 - 2 * r / 3)),
              "corner": (2 * mn, lambda r: 4 * mn / (1 - r))}
        for position, (point, wide) in at.items():
            load = wide(ratio) if ratio >= 0.2 else point + (wide(0.2) - point) * ratio / 0.2
            block(f"yield lines, {position}, h {h:.0f}, a/l {ratio}", "TR34 as recalled, written out",
                  dict(given, ask="yield-line", position=position, contact_radius=contact), [value("M_n", mn / 1e3, 4, "kN"), value("P_u", load / 1e3, 3, "kN")])
        for x, y, n in ((900.0, 0.0, 2), (600.0, 500.0, 4)):
            if h > 250:
                continue
            point = (2 * pi + 1.8 * (x + y) / lh) * both
            wide = lambda r: (4 * pi / (1 - r / 3) + 1.8 * (x + y) / (lh - r * lh / 2)) * both
            load = wide(ratio) if ratio >= 0.2 else point + (wide(0.2) - point) * ratio / 0.2
            one = at["interior"][1](ratio) if ratio >= 0.2 else at["interior"][0] + (at["interior"][1](0.2) - at["interior"][0]) * ratio / 0.2
            block(f"yield lines, {n} legs, a/l {ratio}", "TR34 as recalled, written out; not above the legs one by one",
                  dict(given, ask="yield-line-group", contact_radius=contact, x=x, y=y), [value("P_g", min(load, n * one) / 1e3, 3, "kN")])
    lam = (3 * 0.05 / (33000 * h ** 3)) ** 0.25
    block(f"line load and strips, h {h:.0f}", "TR34 as recalled, written out", dict(given, ask="line-load", area=1e4),
          [value("P_lin", 4 * lam * mn, 3, "N/mm"), value("w_u", 5.95 * lam ** 2 * mn * 1e3, 3, "kPa")])
block("yield lines, legs too near", "Nearer than twice the thickness", dict(GIVEN, ask="yield-line-group", tensile=TENSILE, residual=9000.0, area=1e4, x=399.0, y=0.0, reason="one load"),
      [value("reason", 0, 0)])
block("yield lines, legs far apart", "At nine metres the group is no stronger than its legs one by one",
      dict(GIVEN, ask="yield-line-group", tensile=TENSILE, residual=9000.0, contact_radius=0.25 * l, x=9000.0, y=9000.0),
      [value("P_g", 4 * 4 * pi * (9000 + TENSILE * 1.4 / 1.5 * 4e4 / 6) / (1 - 0.25 / 3) / 1e3, 3, "kN")])
block("yield lines, fabric", "A_s f_yd 0.9 d: 0.393 mm2/mm at 130 mm", dict(GIVEN, ask="yield-line", tensile=TENSILE, steel=0.393, depth=130.0, area=1e4, **{"yield": 435.0}),
      [value("M_p", 0.393 * 435 * 0.9 * 130 / 1e3, 4, "kN")])
us = {"modulus": "4000000 psi", "poisson": 0.15, "thickness": "8 in", "subgrade": "150 lbf/in3", "area": "25 in2", "flexural": "550 psi"}
l_us = radius(4e6, 8, 0.15, 150)
a_us = sqrt(25 / pi)
m0 = 550 * 64 / 6
for position, load in (("interior", 6 * (1 + 2 * a_us / l_us) * m0), ("edge", 3.5 * (1 + 3 * a_us / l_us) * m0), ("corner", 2 * (1 + 4 * a_us / l_us) * m0)):
    block(f"EX-24, {position}", "Meyerhof's loads as ACI 360R gives them, recalled: h 8 in, f_r 550 psi, k 150 pci", dict(us, ask="meyerhof", position=position),
          [value("l", l_us, 3, "in"), value("M_0", m0, 1, "lbf"), value("P_u", load, 0, "lbf")])
block("wall at a free edge", "The formula of the Army manual with 9.93 for 12.8", {"ask": "army", "table": "formula", "system": "us", "flexural": "600 psi", "thickness": "6 in",
      "subgrade": "100 lbf/in3"}, [value("P_w", 12.8 * (600 / 9) * 36 * (100 / (19000 * (600 / 9) * 216)) ** 0.25, 1, "lbf/ft")])
for field, number in (("thickness", "3.9 in"), ("thickness", "10.1 in"), ("flexural", "540 psi"), ("flexural", "710 psi"), ("subgrade", "24 lbf/in3"), ("subgrade", "301 lbf/in3")):
    given = {"ask": "army", "table": "wall", "system": "us", "flexural": "600 psi", "thickness": "6 in", "subgrade": "100 lbf/in3"}
    block(f"wall table, {field} {number}", "Outside the table", dict(given, reason="wall loads reaches", **{field: number}), [value("reason", 0, 0)])
for field, number in (("thickness", "5.9 in"), ("subgrade", "24 lbf/in3")):
    given = {"ask": "army", "table": "stationary", "system": "us", "flexural": "600 psi", "thickness": "6 in", "subgrade": "100 lbf/in3"}
    block(f"stationary table, {field} {number}", "Outside the table", dict(given, reason="stationary loads reaches", **{field: number}), [value("reason", 0, 0)])
block("wall table, between rows", "Linear between thickness and strength", {"ask": "army", "table": "wall", "system": "us", "flexural": "575 psi", "thickness": "6.5 in",
      "subgrade": "150 lbf/in3"}, [value("P_100", ((710 + 755) / 2 + (860 + 920) / 2) / 2, 2, "lbf/ft"), value("c_k", 0.95, 2)])
for percent in (6.0, 35.0):
    rows = [(5, 42), (7, 48)] if percent == 6 else [(20, 69), (50, 140)]
    between = rows[0][1] + (percent - rows[0][0]) / (rows[1][0] - rows[0][0]) * (rows[1][1] - rows[0][1])
    block(f"bearing ratio {percent:.0f}", "Linear between rows; the correlations of FAA and PCA beside it", {"ask": "bearing-ratio", "percent": percent},
          [value("k_s", between, 3, "MPa/m"), value("k_FAA", (1500 * percent / 26) ** 0.7788, 2, "lbf/in3"), value("k_PCA", 53.438 * percent ** 0.5719, 2, "lbf/in3")])
for percent in (1.9, 101):
    block(f"bearing ratio {percent}", "Outside the table", {"ask": "bearing-ratio", "percent": percent, "reason": "2 to 100"}, [value("reason", 0, 0)])
block("class of soil", "The lower end of clean sand, 200 lbf/in3", {"ask": "soil", "class": 3}, [value("k_s", 200, 0, "lbf/in3")])

# Punching.

block("EX-26c, ACI", "ACI 318-19 22.6.5.2 as recalled, written out: 4 in by 4 in, d 5 in, 4000 psi",
      {"ask": "punching-aci", "system": "us", "size": ["4 in", "4 in"], "depth": "5 in", "strength": "4000 psi"},
      [value("b_o", 36, 0, "in"), value("lambda_s", 1, 0), value("V_d", 0.75 * 4 * sqrt(4000) * 36 * 5 / 1e3, 2, "kip")])
lam_s = sqrt(2 / (1 + 28 / 10))
block("EX-26a with the size effect", "ACI 318-19 22.5.5.1.3 as recalled", {"ask": "punching-aci", "system": "us", "size": ["18 in", "18 in"], "depth": "28 in", "strength": "3000 psi"},
      [value("lambda_s", lam_s, 4), value("V_d", 0.75 * 4 * lam_s * sqrt(3000) * 184 * 28 / 1e3, 1, "kip")])
d, c1, c2, fc = 150.0, 100.0, 400.0, 28.0
for name, edges, length, alpha in (("inside", [None] * 4, 2 * (c1 + d) + 2 * (c2 + d), 40),
                                   ("at an edge", [100.0, None, None, None], 2 * (100 + c1 + d / 2) + (c2 + d), 30),
                                   ("at a corner", [100.0, None, 120.0, None], (100 + c1 + d / 2) + (120 + c2 + d / 2), 20)):
    beta = 4.0
    stress = min(0.33, 0.17 * (1 + 2 / beta), 0.083 * (2 + alpha * d / length)) * sqrt(2 / (1 + d / 250)) ** (d > 250) * sqrt(fc)
    block(f"punching, ACI, {name}", "ACI 318-19 22.6.5.2 as recalled, in MPa, with the perimeter cut at the edges",
          {"ask": "punching-aci", "size": [c1, c2], "depth": d, "strength": fc, "edges": edges},
          [value("b_o", length, 1, "mm"), value("alpha_s", alpha, 0), value("V_d", 0.75 * stress * length * d / 1e3, 2, "kN")])
length = 4 * 1150.0
block("punching, ACI, wide load", "The perimeter is long beside the depth: the third limit governs", {"ask": "punching-aci", "size": [1000.0, 1000.0], "depth": 150.0, "strength": 28.0},
      [value("V_d", 0.75 * 0.083 * (2 + 40 * 150 / length) * sqrt(28) * length * 150 / 1e3, 2, "kN")])
block("punching, ACI, strong concrete", "The root of the strength is cut at 8.3 MPa", {"ask": "punching-aci", "size": [100.0, 100.0], "depth": 300.0, "strength": 90.0},
      [value("V_d", 0.75 * 0.33 * sqrt(2 / (1 + 300 / 250)) * 8.3 * 1600 * 300 / 1e3, 2, "kN")])
block("punching, ACI, small slab", "Edges on all sides nearer than the perimeter", {"ask": "punching-aci", "size": [100.0, 100.0], "depth": 300.0, "strength": 28.0,
      "edges": [10.0, 10.0, 10.0, 10.0], "reason": "nothing is left to punch"}, [value("reason", 0, 0)])
for system, h, cut, coefficient, most in (("us", 8.0, 2.0, 4 / 3, 2.66), ("si", 200.0, 50.0, 0.11, 0.22)):
    c_x, c_y, fc = (4.0, 10.0, 4000.0) if system == "us" else (100.0, 250.0, 28.0)
    h_p = h - cut
    length = 2 * (c_x + h_p) + 2 * (c_y + h_p)
    factor = min(most, coefficient * (1 + 2 / 2.5))
    given = {"ask": "punching-plain", "system": system, "size": [f"{c_x} in", f"{c_y} in"], "thickness": f"{h} in", "strength": f"{fc} psi"}
    if system == "si":
        given = {"ask": "punching-plain", "size": [c_x, c_y], "thickness": h, "strength": fc}
    unit = ("in", "kip") if system == "us" else ("mm", "kN")
    block(f"punching of a plain slab, {system}", "ACI 318-19 14.5.5 as recalled, the thickness on soil reduced", given,
          [value("h_p", h_p, 0, unit[0]), value("b_o", length, 0, unit[0]), value("V_d", 0.6 * factor * sqrt(fc) * length * h_p / 1e3, 3, unit[1])])
block("punching of a plain slab, square foot", "ACI 318-19 14.5.5: the upper limit governs", {"ask": "punching-plain", "size": [100.0, 100.0], "thickness": 200.0, "strength": 28.0},
      [value("V_d", 0.6 * 0.22 * sqrt(28) * 1000 * 150 / 1e3, 3, "kN")])
block("plain slab thinner than what is left out", "Nothing is left", {"ask": "punching-plain", "size": [100.0, 100.0], "thickness": 50.0, "strength": 28.0, "reason": "nothing is left of the slab"},
      [value("reason", 0, 0)])


def en(c, d, fck, rho, edges=None):
    k = min(2, 1 + sqrt(200 / d))
    v = max(0.035 * k ** 1.5 * sqrt(fck), 0.12 * k * (100 * min(0.02, rho) * fck) ** (1 / 3))
    u = 4 * c + 2 * pi * 2 * d if edges is None else edges
    face = 0.5 * 0.6 * (1 - fck / 250) * fck / 1.5 * 4 * c * d
    return v, u, v * u * d, face


v, u, punch, face = en(100, 120, 30, 0.005)
block("EX-26c, EN", "EN 1992-1-1 6.4 as recalled, written out: 100 mm by 100 mm, d 120 mm, C30, 0.5 %",
      {"ask": "punching-en", "size": [100.0, 100.0], "depth": 120.0, "strength": 30.0, "ratio": 0.005},
      [value("k", 2, 0), value("u_1", u, 2, "mm"), value("v_Rd", v, 4, "MPa"), value("V_Rd", punch / 1e3, 2, "kN"), value("V_max", face / 1e3, 2, "kN")])
v, u, punch, face = en(200, 400, 30, 0.025)
block("punching, EN, much steel", "The ratio is cut at 0.02", {"ask": "punching-en", "size": [200.0, 200.0], "depth": 400.0, "strength": 30.0, "ratio": 0.025},
      [value("rho_l", 0.02, 2), value("k", 1 + sqrt(0.5), 5), value("V_Rd", punch / 1e3, 2, "kN")])
v, u, punch, face = en(100, 150, 30, 0)
block("punching, EN, fibres", "TR34: 0.75 of the thickness, no ratio", {"ask": "punching-en", "size": [100.0, 100.0], "thickness": 200.0, "strength": 30.0},
      [value("d", 150, 0, "mm"), value("v_Rd", v, 4, "MPa"), value("V_Rd", punch / 1e3, 2, "kN")])
u = 2 * (50 + 100) + 100 + 2 * (pi / 2) * 240
block("punching, EN, at an edge", "EN 1992-1-1 Figure 6.15: two lines run out to the edge", {"ask": "punching-en", "size": [100.0, 100.0], "depth": 120.0, "strength": 30.0,
      "ratio": 0.005, "edges": [50.0, None, None, None]}, [value("u_1", u, 2, "mm")])
u = 50 + 100 + 60 + 100 + (pi / 2) * 240
block("punching, EN, at a corner", "EN 1992-1-1 Figure 6.15: the lines run out to both edges", {"ask": "punching-en", "size": [100.0, 100.0], "depth": 120.0, "strength": 30.0,
      "ratio": 0.005, "edges": [50.0, None, 60.0, None]}, [value("u_1", u, 2, "mm")])

# Suspended slabs.

block("EX-31", "A load spread at 45 degrees to the middle of the slab", {"ask": "dispersed", "load": 9807.0, "foot": 100.0, "thickness": 200.0}, [value("q_d", 9807 / 9e4 * 1e3, 2, "kPa")])
area_ft2 = 1.2 * 1.2 / 0.3048 ** 2
for name, clear_m in (("none", 0.0), ("0.75 m", 0.75), ("1.2 m", 1.2)):
    total = 1.2 * (1.2 + 2 * clear_m) / 0.3048 ** 2
    q = (8818 + 7.5 * (total - area_ft2) + 10 * total) / total
    block(f"EX-30, clear area {name}", "Formula of a maker of computers, read; numbers our own: 8818 lb on 1.2 m by 1.2 m",
          {"ask": "vendor", "system": "us", "load": "8818 lbf", "footprint": f"{area_ft2} ft2", "total": f"{total} ft2"}, [value("q", q, 1, "psf")])
block("EX-30, own pitch", "Weight over pitch", {"ask": "area", "load": W, "width": 1200.0, "depth": 1200.0, "pitch_x": 1200.0, "pitch_y": 2250.0, "aisle": 0.0},
      [value("q_f", W / 1.44e6 * 1e3, 2, "kPa"), value("q_p", W / (1.2 * 2.25) / 1e3, 2, "kPa")])
block("pitch with a live load on the aisles", "Weight and live load over the pitch", {"ask": "area", "load": W, "width": 800.0, "depth": 1200.0, "pitch_x": 900.0, "pitch_y": 2400.0,
      "aisle": 0.0024}, [value("q_p", (W / (0.9 * 2.4) + 2400 * (1 - 0.96 / 2.16)) / 1e3, 3, "kPa")])
block("pitch smaller than the cabinet", "Cabinets cannot overlap", {"ask": "area", "load": W, "width": 800.0, "depth": 1200.0, "pitch_x": 790.0, "pitch_y": 2400.0, "aisle": 0.0,
      "reason": "smaller than the cabinet"}, [value("reason", 0, 0)])
for name, s, x, legs_mm, across, edge in (("point at midspan", 6000.0, 3000.0, 0.0, 800.0, None), ("two rows at midspan", 6000.0, 3000.0, 1100.0, 800.0, None),
                                          ("near the support", 6000.0, 800.0, 1100.0, 800.0, None), ("near an edge", 6000.0, 3000.0, 1100.0, 800.0, 500.0),
                                          ("an edge that is far enough", 6000.0, 1500.0, 1100.0, 800.0, 5000.0)):
    r = W * (s - x) / s
    m = max(r * (x - legs_mm / 2), r * (x + legs_mm / 2) - W / 2 * legs_mm)
    strip = across + 2.4 * x * (1 - x / s)
    if edge is not None:
        strip = min(strip, across / 2 + 1.2 * x * (1 - x / s) + edge)
    given = {"ask": "span", "load": W, "span": s, "middle": x, "legs": legs_mm, "across": across}
    if edge is not None:
        given["edge"] = edge
    block(f"equivalent uniform load, {name}", "Simply supported span, strip of BS 8110 3.5.2.2 (recalled)", given,
          [value("b_e", strip, 2, "mm"), value("q_M", 8 * m / (s * s * strip) * 1e3, 4, "kPa"), value("q_V", 2 * r / (s * strip) * 1e3, 4, "kPa")])
assert abs(8 * (W / 2 * 3000) / (6000 ** 2 * 800) - 2 * W / (800 * 6000)) < 1e-12, "a point at midspan: 2 P / (b S)"
block("legs beside the span", "The rows of legs do not both stand on the span", {"ask": "span", "load": W, "span": 6000.0, "middle": 400.0, "legs": 1100.0, "across": 800.0,
      "reason": "within the span"}, [value("reason", 0, 0)])

# Raised floors and wheels.

block("EX-29, four legs", "4000 kg on four legs against class 6: above every working load", {"ask": "panel", "class": 6, "safety": 2, "load": W / 4, "legs": 1},
      [value("N", W / 4e3, 3, "kN"), value("u", W / 4 / 6000, 4)])
block("EX-29, three legs", "One of four legs bears nothing: above the ultimate load of class 6, 12 kN", {"ask": "three-legs", "load": W}, [value("N_3", W / 3e3, 2, "kN")])
block("panel with two legs and a given pedestal", "Two legs of 2 kN on a panel of 4.5 kN, a pedestal of 22 kN", {"ask": "panel", "working": 4500.0, "load": 2000.0, "legs": 2, "pedestal": 22e3},
      [value("F_p", 4, 0, "kN"), value("F_w", 4.5, 1, "kN"), value("u", 4 / 4.5, 4), value("F_d", 22, 0, "kN")])
block("panel by half of its ultimate load", "A leg of 4 kN on a panel that broke at 12 kN, its pedestal given with 9 kN", {"ask": "panel", "ultimate": 12e3, "load": 4000.0, "legs": 1, "pedestal": 9e3},
      [value("F_u", 12, 0, "kN"), value("F_w", 6, 0, "kN")])
block("pedestal by four working loads", "EN 12825: four times the working load", {"ask": "panel", "class": 5, "safety": 2, "load": 2000.0, "legs": 2}, [value("F_d", 20, 0, "kN")])
for wheels, bear in ((4, 3), (3, 3), (6, 5)):
    block(f"{wheels} wheels on the way in", "One wheel counted out, a factor of 1.25", {"ask": "rolled", "load": W, "wheels": wheels, "dynamic": 1.25, "rolling": 4500.0},
          [value("F", 1.25 * W / bear / 1e3, 3, "kN"), value("u", 1.25 * W / bear / 4500, 4)])
block("uniform load of panels", "Footprint against 12 kPa", {"ask": "panel-uniform", "load": 10e3, "width": 800.0, "depth": 1200.0, "uniform": 0.012}, [value("u", 10e3 / 0.96e6 / 0.012, 4)])
for name, e1, n1, e2, n2 in (("steel on concrete", 200e3, 0.3, 33e3, 0.2), ("nylon on concrete", 2500.0, 0.39, 33e3, 0.2), ("steel on steel", 200e3, 0.3, 200e3, 0.3)):
    star = 1 / ((1 - n1 ** 2) / e1 + (1 - n2 ** 2) / e2)
    b = sqrt(4 * 1e4 * 75 / (pi * 50 * star))
    p0 = 2e4 / (pi * b * 50)
    block(f"EX-27d, {name}", "Hertz, written out: 10 kN, radius 75 mm, width 50 mm", {"ask": "wheel", "load": 1e4, "radius": 75.0, "width": 50.0, "tread_modulus": e1,
          "tread_poisson": n1, "floor_modulus": e2, "floor_poisson": n2}, [value("b", b, 4, "mm"), value("p_0", p0, 2, "MPa"), value("p_m", pi * p0 / 4, 2, "MPa"),
          value("tau_m", 0.304 * p0, 2, "MPa"), value("z", 0.786 * b, 4, "mm")])
star = 1 / ((1 - 0.49 ** 2) / 50 + 0.96 / 33e3)
b = sqrt(4 * 1e4 * 75 / (pi * 50 * star))
block("EX-27d, polyurethane", "Hertz gives the patch; it is more than a fifth of the radius, so only the mean pressure is told. Hertz's peak would be 7.466 MPa",
      {"ask": "wheel", "load": 1e4, "radius": 75.0, "width": 50.0, "tread_modulus": 50.0, "tread_poisson": 0.49, "floor_modulus": 33e3, "floor_poisson": 0.2,
       "reason": "more than a fifth"}, [value("b", b, 2, "mm"), value("p_m", 1e4 / (2 * b * 50), 3, "MPa")])
a_ball = (3 * 1e4 * 75 / (4 * 1 / ((1 - 0.09) / 200e3 + 0.96 / 33e3))) ** (1 / 3)
block("ball contact", "Hertz for a ball, written out", {"ask": "ball", "load": 1e4, "radius": 75.0, "width": 50.0, "tread_modulus": 200e3, "tread_poisson": 0.3,
      "floor_modulus": 33e3, "floor_poisson": 0.2}, [value("a", a_ball, 4, "mm"), value("p_0", 3e4 / (2 * pi * a_ball ** 2), 2, "MPa")])
block("concrete under a wheel", "phi 0.85 f'c 2, practice: 4420 psi for 4000 psi", {"ask": "wheel-allowed", "strength": "4000 psi"}, [value("p_a", 4420, 0, "psi")])
for name, lever, push in (("smooth concrete", 2.2, W * 2.2 / 75), ("carpet", 4.5, W * 4.5 / 75)):
    block(f"EX-28b, {name}", "Lever of Al-Eisawi 1999 (read): 4000 kg on wheels of 75 mm radius", {"ask": "level", "load": W, "radius": 75.0, "lever": lever}, [value("F", push, 1, "N")])
for name, slope in (("1 in 12", 1 / 12), ("1 in 20", 1 / 20), ("2 per cent", 0.02)):
    angle = atan(slope)
    up, hold = W * (sin(angle) + 0.03 * cos(angle)), max(0, W * (sin(angle) - 0.03 * cos(angle)))
    block(f"EX-28c, {name}", "Forces along a ramp, resistance 0.03", {"ask": "ramp", "load": W, "resistance": 0.03, "slope": slope},
          [value("F_up", up, 1, "N"), value("F_hold", hold, 1, "N")])


def printed(made):
    lines = []
    for key, content in made.items():
        if key == "expect":
            rows = ",\n".join("      " + json.dumps(one) for one in content)
            lines.append(f'    "expect": [\n{rows}\n    ]')
        else:
            lines.append(f'    "{key}": ' + json.dumps(content))
    return "  {\n" + ",\n".join(lines) + "\n  }"


print("[\n" + ",\n".join(printed(made) for made in BLOCKS) + "\n]")
