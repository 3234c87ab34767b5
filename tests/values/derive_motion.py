"""Check values of rocking, sliding and standing free, by an integration of their own.

The angle is signed and the whole equation of motion is integrated by steps of a thousandth of a second, with sines and
cosines as they are; impacts are found by halving the step. Prints motion-derived.json. Plain Python, and nothing of the
engine is read.
"""

import json
from math import acosh, atan, atan2, cos, degrees, exp, log, pi, sin, sqrt, tan

G = 9.81
STEP = 1e-3


class Body:
    """x to the right edge, x to the left edge, height of the centre, radius of gyration squared; in m."""

    def __init__(self, right, left, height, gyration_squared):
        self.x, self.h, self.k2 = {1: right, -1: left}, height, gyration_squared

    def radius(self, side=1):
        return sqrt(self.x[side] ** 2 + self.h ** 2)

    def alpha(self, side=1):
        return atan2(self.x[side], self.h)

    def p(self, side=1):
        return sqrt(G * self.radius(side) / (self.k2 + self.radius(side) ** 2))

    def e(self, onto=1, kappa=1.0):
        new, old = self.x[onto], self.x[-onto]
        return (self.k2 + self.h ** 2 - kappa * new * old) / (self.k2 + self.h ** 2 + kappa * new ** 2)

    def acceleration(self, angle, side, push):
        lean = self.alpha(side) * side - angle
        return -self.p(side) ** 2 * (sin(lean) + push * cos(lean))


def rectangle(b, h):
    return Body(b, b, h, (b * b + h * h) / 3)


def rk4(body, angle, speed, side, push, at, step):
    def f(a, v, t):
        return v, body.acceleration(a, side, push(t))
    k1 = f(angle, speed, at)
    k2 = f(angle + step / 2 * k1[0], speed + step / 2 * k1[1], at + step / 2)
    k3 = f(angle + step / 2 * k2[0], speed + step / 2 * k2[1], at + step / 2)
    k4 = f(angle + step * k3[0], speed + step * k3[1], at + step)
    return (angle + step / 6 * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]),
            speed + step / 6 * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]))


def follow(body, push, length, until, kappa=1.0, angle=0.0, kinks=()):
    """Falls or not, the largest angle over alpha with its angle and time, impacts."""
    at, speed, side = 0.0, 0.0, 1 if angle >= 0 else -1
    resting = angle == 0.0
    best, impacts = (abs(angle) / body.alpha(side), angle, 0.0), []
    while at < until:
        step = STEP
        for kink in list(kinks) + [length]:
            if at < kink - 1e-12 < at + step:
                step = kink - at
        now = (lambda t: push(min(t, length - 1e-12))) if at < length - 1e-12 else (lambda t: 0.0)
        if resting:
            sides = [s for s in (1, -1) if -s * now(at + step) > body.x[s] / body.h]
            if not sides:
                at += step
                continue
            side = sides[0]
            low, high = 0.0, step
            for _ in range(45):
                middle = (low + high) / 2
                low, high = (low, middle) if -side * now(at + middle) > body.x[side] / body.h else (middle, high)
            at, speed, angle, resting = at + high, 0.0, 0.0, False
            continue
        a, v = rk4(body, angle, speed, side, now, at, step)
        if a * side <= 0:
            if speed * side <= 0 and angle == 0.0:
                resting, at = True, at + step
                continue
            low, high = 0.0, step
            for _ in range(45):
                middle = (low + high) / 2
                a, v = rk4(body, angle, speed, side, now, at, middle)
                low, high = (middle, high) if a * side > 0 else (low, middle)
            at += high
            impacts.append(at)
            side = -side
            angle, speed = 0.0, rk4(body, angle, speed, -side, now, at - high, high)[1] * body.e(side, kappa)
            if abs(speed) < 1e-5:
                resting = True
            continue
        if speed * v < 0:
            # The top inside the step, by a parabola through both speeds.
            share = speed / (speed - v)
            top = angle + step * share * speed / 2 if share > 0 else a
            top, when = max((abs(top), at + share * step), (abs(a), at + step))
        else:
            top, when = abs(a), at + step
        if top / body.alpha(side) > best[0]:
            best = (top / body.alpha(side), top * side, when)
        angle, speed, at = a, v, at + step
        if abs(angle) >= pi / 2:
            return True, best, impacts, at
    return False, best, impacts, at


def half_sine(amplitude, length):
    return lambda t: amplitude * sin(pi * t / length)


def one_sine(amplitude, length):
    return lambda t: amplitude * sin(2 * pi * t / length)


def least_half_sine(body, length, low, high):
    for _ in range(14):
        middle = (low + high) / 2
        falls = follow(body, half_sine(middle, length), length, length + 6.0)[0]
        low, high = (low, middle) if falls else (middle, high)
    return high


BLOCKS = []


def block(name, source, given, expect, note=""):
    one = {"block": name, "source": source, "trust": "derived", "note": note, "runs": "motion",
           "input": {**given, "free_fall": G * 1000}, "expect": expect}
    BLOCKS.append({key: value for key, value in one.items() if value != ""})


def value(at, number, digits, unit="", **more):
    one = {"at": at, "value": f"{number:.{digits}f}", "unit": unit, **more}
    return {key: text for key, text in one.items() if text != ""}


MECHANICS = "Our own integration of a rigid body on its edges (derive_motion.py), free fall 9.81 m/s2"
WIDTHS = [(0.6, 1.2), (0.3, 1.2), (0.2, 1.0), (0.2, 0.6), (0.5, 1.0)]


def box(b, h):
    return {"half_width": f"{b} m", "half_height": f"{h} m"}


# Parameters of rectangles, with three places of the impulse.
for b, h in WIDTHS:
    body = rectangle(b, h)
    block(f"rocking body {b} by {h}", "Our own example: a uniform rectangle on its edge", {"ask": "body", "body": box(b, h)},
          [value("R", body.radius(), 6, "m"), value("alpha", body.alpha(), 6, "rad"), value("p", body.p(), 5, "rad/s"),
           value("e", body.e(), 6), value("a_up", b / h, 6, "g")])
    for kappa in (0.85, 0.7, 0.5):
        block(f"rocking body {b} by {h}, impulse at {kappa}", "Our own example: momentum about the place of the impulse",
              {"ask": "body", "body": box(b, h), "impulse": kappa}, [value("e", body.e(1, kappa), 5)])

# The composite cabinet: 450 kg with 3000 kg, off the middle.
MASS = 3450.0
XC, HC = (450 * 0.6 + 3000 * 0.7) / MASS, (450 * 1.2 + 3000 * 1.5) / MASS
INERTIA = (450 * (1.2 ** 2 + 2.4 ** 2) / 12 + 3000 * (1.0 ** 2 + 1.6 ** 2) / 12
           + 450 * ((0.6 - XC) ** 2 + (1.2 - HC) ** 2) + 3000 * ((0.7 - XC) ** 2 + (1.5 - HC) ** 2))
COMPOSITE = Body(1.2 - XC, XC, HC, INERTIA / MASS)
GIVEN = {"mass": "3450 kg", "inertia": INERTIA * 1e6, "height": HC * 1e3, "right": (1.2 - XC) * 1e3, "left": XC * 1e3}
for word, side in (("right", 1), ("left", -1)):
    block(f"rocking composite cabinet, {word} edge", "Our own example: a body whose centre is not in the middle",
          {"ask": "body", "body": GIVEN, "side": word},
          [value("rho", sqrt(INERTIA / MASS), 6, "m"), value("R", COMPOSITE.radius(side), 5, "m"),
           value("alpha", COMPOSITE.alpha(side), 6, "rad"), value("alpha", degrees(COMPOSITE.alpha(side)), 4, "deg"),
           value("a_up", COMPOSITE.x[side] / HC, 5, "g"), value("p", COMPOSITE.p(side), 5, "rad/s"),
           value("e", COMPOSITE.e(side), 6)])
for kappa in (1.0, 0.85, 0.7):
    block(f"rocking composite cabinet, impulse at {kappa}", "Our own example: momentum about the place of the impulse",
          {"ask": "body", "body": GIVEN, "side": "right", "impulse": kappa}, [value("e", COMPOSITE.e(1, kappa), 5)])

# Free rocking: closed form and in time.
SLIM = rectangle(0.2, 1.0)


def period(p, ratio):
    return 4 / p * acosh(1 / (1 - ratio))


def ratios(e, first, count):
    return [1 - sqrt(1 - e ** (2 * n) * (1 - (1 - first) ** 2)) for n in range(count + 1)]


PHI = ratios(SLIM.e(), 0.5, 8)
times, at = [], -period(SLIM.p(), 0.5) / 4
for phi in PHI[:5]:
    at += period(SLIM.p(), phi) / 2
    times.append(at)
block("free rocking of 0.2 by 1.0 from half of alpha", "Housner 1963 (from memory), worked out by derive_motion.py",
      {"ask": "free rocking", "body": box(0.2, 1.0), "release_over_alpha": 0.5, "impacts": 8},
      [value("T", period(SLIM.p(), 0.5), 5, "s"), value("quarter", period(SLIM.p(), 0.5) / 4, 5, "s")]
      + [value(f"phi_i {n + 1}", phi, 5) for n, phi in enumerate(PHI)]
      + [value(f"impact {n + 1}", time, 5, "s") for n, time in enumerate(times)])
_, _, impacts, _ = follow(SLIM, lambda t: 0.0, 0.0, 4.0, angle=SLIM.alpha() / 2)
block("free rocking of 0.2 by 1.0 in time", MECHANICS,
      {"ask": "rocking", "body": box(0.2, 1.0), "release_over_alpha": 0.5,
       "pulse": {"form": "rectangle", "amplitude": 0.0, "duration": 1e-6}},
      [value(f"impact {n + 1}", time, 4, "s") for n, time in enumerate(impacts[:5])] + [value("recovers", 1, 0)])
for b, h in WIDTHS[:2]:
    for ratio in (0.25, 0.5, 0.75, 0.9):
        block(f"period of {b} by {h} at {ratio} of alpha", "Housner 1963 (from memory), worked out by derive_motion.py",
              {"ask": "free rocking", "body": box(b, h), "release_over_alpha": ratio},
              [value("T", period(rectangle(b, h).p(), ratio), 5, "s")])

# Four corner masses: the same shape with twice m R^2 about its edge.
corners = Body(0.2, 0.2, 1.0, 0.2 ** 2 + 1.0 ** 2)
block("four corner masses", "Our own example: all mass in the corners",
      {"ask": "free rocking", "release_over_alpha": 0.5,
       "body": {"mass": "100 kg", "inertia": 100 * corners.k2 * 1e6, "height": "1 m", "right": "0.2 m", "left": "0.2 m"}},
      [value("p", corners.p(), 5, "rad/s"), value("quarter", acosh(2) / corners.p(), 5, "s")])

# Pulses.
for height in (1.1, 1.5, 2.0, 3.0, 5.0, 10.0):
    block(f"rectangular pulse of {height}", "Housner 1963 (from memory): p t = ln(A / (A - 1))",
          {"ask": "rectangle", "height": height}, [value("p_t", log(height / (height - 1)), 5)])


def lift_phase(w):
    low, high = 0.0, pi / 2
    for _ in range(80):
        middle = (low + high) / 2
        rest = cos(middle) - w * sin(middle) + exp(-(pi - middle) / w)
        low, high = (middle, high) if rest > 0 else (low, middle)
    return (low + high) / 2


for w in (0.5, 1.0, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0):
    psi = lift_phase(w)
    block(f"least half sine at {w} times p", "Makris and Roussos 1998 (from memory), solved by derive_motion.py",
          {"ask": "half sine", "quickness": w},
          [value("psi", psi, 6, "rad"), value("A_min", 1 / sin(psi), 5), value("A_H", sqrt(1 + w * w), 5)],
          "The value of 1963 is not the least and lies on the unsafe side.")
for (b, h), brackets in ((WIDTHS[0], ((1.0, 0.7, 0.8), (0.5, 1.0, 1.2), (0.25, 1.7, 1.9))),
                         (WIDTHS[1], ((1.0, 0.33, 0.4), (0.5, 0.5, 0.6), (0.25, 0.8, 0.9))),
                         (WIDTHS[2], ((1.0, 0.26, 0.3), (0.5, 0.36, 0.42), (0.25, 0.6, 0.66)))):
    for length, low, high in brackets:
        least = least_half_sine(rectangle(b, h), length, low, high)
        block(f"half sine of {length} s that overturns {b} by {h}", MECHANICS,
              {"ask": "least that overturns", "body": box(b, h), "from": round(b / h * 1.001, 4), "to": 3.0,
               "pulse": {"form": "half sine", "amplitude": 1.0, "duration": length}},
              [value("falls at", least, 4, tolerance=2e-4, why="both sides are found by halving to a ten-thousandth")])
for b, h, length, edges in ((0.3, 1.2, 1.0, ((0.3270, 0.3280), (0.7488, 0.7498), (0.7662, 0.7672))),
                            (0.3, 1.2, 0.5, ((0.7690, 0.7700), (1.7446, 1.7456), (1.9164, 1.9174))),
                            (0.6, 1.2, 1.0, ((0.7098, 0.7108), (1.4366, 1.4376), (1.6314, 1.6324)))):
    for amplitude in [edge for pair in edges for edge in pair]:
        falls = follow(rectangle(b, h), one_sine(amplitude, length), length, length + 7.0)[0]
        block(f"one sine of {amplitude} g and {length} s on {b} by {h}", MECHANICS,
              {"ask": "rocking", "body": box(b, h),
               "pulse": {"form": "one sine", "amplitude": amplitude, "duration": length}},
              [value("falls", 1 if falls else 0, 0)], "An edge between falling and standing lies within 0.0005 g.")
for b, h, amplitude, length in ((0.6, 1.2, 0.65, 1.0), (0.3, 1.2, 0.6, 0.5), (0.3, 1.2, 1.0, 0.5), (0.3, 1.2, 1.85, 0.5),
                                (0.3, 1.2, 2.0, 0.5)):
    body = rectangle(b, h)
    falls, (ratio, peak, when), impacts, _ = follow(body, one_sine(amplitude, length), length, length + 4.0)
    expect = [value("falls", 1 if falls else 0, 0)]
    if not falls:
        expect += [value("peak", peak, 5, "rad"), value("peak over alpha", ratio, 4), value("peak at", when, 3, "s")]
        expect += [value(f"impact {n + 1}", time, 3, "s") for n, time in enumerate(impacts[:3]) if time < length + 3]
    else:
        expect += [value("impacts", len(impacts), 0)]
    block(f"answer to one sine of {amplitude} g and {length} s on {b} by {h}", MECHANICS,
          {"ask": "rocking", "body": box(b, h), "pulse": {"form": "one sine", "amplitude": amplitude, "duration": length}},
          expect)

# Criteria of the literature.
for name, body, given, side in ([(f"{b} by {h}", rectangle(b, h), box(b, h), 1) for b, h in WIDTHS]
                                + [("composite, right", COMPOSITE, GIVEN, 1), ("composite, left", COMPOSITE, GIVEN, -1)]):
    R, a, h = body.radius(side), body.alpha(side), body.h
    step = sqrt(2 * G * (R - h) * (body.k2 + R * R) / h ** 2)
    expect = [value("V", step, 4, "m/s"), value("A_W", body.x[side] / h, 5, "g")]
    if given != GIVEN:
        expect += [value("V_0", 40 * sqrt(8 / 3 * G * R * (1 - cos(a)) / cos(a) ** 2), 1, "cm/s"),
                   value("V_0s", 10 * 200 * body.x[side] / sqrt(200 * h), 2, "cm/s"),
                   value("S_V", a * sqrt(G * R) * sqrt((body.k2 + R * R) / R ** 2), 4, "m/s"),
                   value("A_0", body.x[side] / h, 3, "g")]
    block(f"criteria for {name}", "West, Housner 1963, Ishiyama 1982 (from memory), worked out by derive_motion.py",
          {"ask": "criteria", "body": given, "side": "left" if side < 0 else "right"}, expect)
for b, h in WIDTHS[:2]:
    B, H = 200 * b, 200 * h
    f_b = 15.6 / sqrt(H) * (1 + B / H) ** -1.5
    slow = B / H * (1 + B / H)
    quick = 10 * B / sqrt(H) * (1 + B / H) ** 2.5 * 2 * pi * 2 * f_b
    block(f"Kaneko and Hayashi for {b} by {h}", "Kaneko and Hayashi (from memory), worked out by derive_motion.py",
          {"ask": "criteria", "body": box(b, h)},
          [value("F_b", f_b, 4, "Hz"), value("A_50", slow * 980, 2, "g", times=980)],
          "The source takes 980 cm/s2 for free fall.")
    block(f"Kaneko and Hayashi for {b} by {h}, a quick floor", "Kaneko and Hayashi (from memory), worked out by derive_motion.py",
          {"ask": "criteria", "body": box(b, h), "floor_hz": 2 * f_b}, [value("A_50", quick, 1, "g", times=981)])

# ASCE 43, rocking capacity.
body = rectangle(0.3, 1.2)
a, c_i = 0.25, (body.k2 + body.radius() ** 2) / 1.2 ** 2
c_r = 1 - 2 * a * a / c_i
gamma = -2 * log(c_r)
for ratio in (0.1, 0.25, 0.5, 0.75, 1.0):
    theta = ratio * body.alpha()
    b_of = cos(theta) + a * sin(theta) - 1
    block(f"approximate rocking to {ratio} of alpha", "ASCE/SEI 43-05 appendix A (partly from memory), worked out by derive_motion.py",
          {"ask": "approximate rocking", "body": box(0.3, 1.2), "angle_over_alpha": ratio},
          [value("C_I", c_i, 6), value("C_R", c_r, 6), value("gamma", gamma, 6),
           value("beta_e", gamma / sqrt(4 * pi * pi + gamma * gamma), 6), value("theta_0", theta, 6, "rad"),
           value("B", b_of, 6), value("f_e", sqrt(2 * G * b_of / (c_i * theta ** 2 * 1.2)) / (2 * pi), 4, "Hz"),
           value("S_cap", 2 * b_of / theta, 5, "g")])

# Sliding.
for amplitude, length, mu in ((0.5, 0.3, 0.2), (0.5, 0.3, 0.1), (1.0, 0.2, 0.2)):
    v = amplitude * G * length
    d = v * v / (2 * G * mu) * (1 - mu / amplitude)
    block(f"sliding under {amplitude} g for {length} s with {mu}", "Newmark 1965 (from memory), worked out by derive_motion.py",
          {"ask": "sliding", "friction": mu, "pulse": {"form": "rectangle", "amplitude": amplitude, "duration": length}},
          [value("V", v, 4, "m/s"), value("d", d, 6, "m"), value("peak", d, 6, "m"), value("residual", -d, 6, "m")])

# Standing on a slope, and pushed at a height.
x, h = 1.2 - XC, HC
ramp = atan(1 / 12)
weight = MASS * 9.80665
for vertical, slope, mu in ((0.0, 0.0, 0.2), (0.2, 0.0, 0.6), (0.0, ramp, 0.2)):
    block(f"thresholds with {vertical} g down, slope {degrees(slope):.2f}, friction {mu}", "Our own example: a block on its edge",
          {"ask": "thresholds", "mass": "3450 kg", "height": h * 1e3, "reach": x * 1e3, "friction": mu, "vertical": vertical,
           "slope": slope, "push_height": "1.5 m"},
          [value("a_tip", (1 - vertical) * (x * cos(slope) - h * sin(slope)) / h, 5, "g"),
           value("a_slide", (1 - vertical) * (mu * cos(slope) - sin(slope)), 5, "g"),
           value("theta_tip", degrees(atan(x / h)), 4, "deg"), value("theta_slide", degrees(atan(mu)), 4, "deg"),
           value("F_tip", weight * x / 1.5, 1, "N"), value("F_slide", mu * weight, 1, "N"), value("z_tip", x / mu, 4, "m")])

# The stability test of an empty frame.
weight = 450 * 9.80665
push = min(0.13 * weight, 250.0)
block("stability test of the empty frame", "IEC 62368-1:2018 8.6.2.2 (read in a discussion of it), worked out by derive_motion.py",
      {"ask": "stability test", "mass": "450 kg", "width": "1.2 m", "depth": "1.2 m", "height": "2.4 m", "centre": "1.2 m"},
      [value("s", 1200 * tan(pi / 18), 2, "mm"), value("t", 600, 1, "mm"), value("F", push, 1, "N"),
       value("M_o", push * 1.5 / 1e3, 4, "kN-m"), value("M_r", weight * 0.6 / 1e3, 4, "kN-m")])

for mass, push in ((450, 250.0), (100, 0.2 * 100 * 9.80665)):
    weight = mass * 9.80665
    block(f"other stability tests of a frame of {mass} kg", "IEC 60950-1 4.1 and IEC 62368-1 8.6.5 (from memory), worked out by derive_motion.py",
          {"ask": "stability test", "mass": f"{mass} kg", "width": "1.2 m", "depth": "1.2 m", "height": "2.4 m", "centre": "1.2 m"},
          [value("u_1", 1200 * tan(pi / 12) / 600, 4), value("u_2", push * 2000 / (weight * 600), 4), value("u_3", 0, 1)])

# Spectra of the ground by the codes, on each part and at the corners.
def code(scale, rigid, top, corners, period):
    t_b, t_c, t_d = corners
    if period <= t_b:
        return scale * (rigid + (top - rigid) * period / t_b)
    if period <= t_c:
        return scale * top
    return scale * top * t_c / period if period <= t_d else scale * top * t_c * t_d / period ** 2


def code_block(name, source, site, given, scale, rigid, top, corners):
    t_b, t_c, t_d = corners
    periods = [0.0, t_b / 2, t_b, (t_b + t_c) / 2, t_c, 1.5 * t_c] + ([t_d, 1.25 * t_d] if t_d < 9 else [])
    periods = [round(period, 4) for period in periods]
    block(name, source, {"ask": "code spectrum", "site": site, **given, "periods": periods},
          [value("S_m", scale * top, 4, "g"), value("S_0", scale * rigid, 4, "g")]
          + [value(f"at {period:g} s", code(scale, rigid, top, corners, period), 4, "g") for period in dict.fromkeys(periods)])


EN = "EN 1998-1:2004 3.2.2.2 and the recommended Tables 3.2 and 3.3 (from memory), worked out by derive_motion.py"
S = ((1.0, 1.2, 1.15, 1.35, 1.4), (1.0, 1.35, 1.5, 1.8, 1.6))
CORNERS = (((0.15, 0.4, 2.0), (0.15, 0.5, 2.0), (0.2, 0.6, 2.0), (0.2, 0.8, 2.0), (0.15, 0.5, 2.0)),
           ((0.05, 0.25, 1.2), (0.05, 0.25, 1.2), (0.1, 0.25, 1.2), (0.1, 0.3, 1.2), (0.05, 0.25, 1.2)))
for kind in (0, 1):
    for ground, s, corners in zip("ABCDE", S[kind], CORNERS[kind]):
        damping = {"A": 0.05, "B": 0.02, "C": 0.1, "D": 0.05, "E": 0.3}[ground]
        eta = max(0.55, sqrt(10 / (5 + 100 * damping)))
        site = {"rule": "en-1998-1", "reference_acceleration": 0.25, "building_class": "III", "spectrum": str(kind + 1),
                "ground_type": ground, "component_importance": 1.0, "component": "cabinet", "attachment_height_m": 0}
        code_block(f"elastic spectrum of type {kind + 1} on ground {ground}", EN, site, {"damping": damping}, 0.25 * 1.2 * s, 1.0,
                   2.5 * eta, corners)
code_block("spectrum of ASCE 7-22 with S_DS 1.0 and S_D1 0.6", "ASCE 7-22 11.4.5.2 (from memory), worked out by derive_motion.py",
           {"rule": "asce-7-22", "s_ds": 1.0, "importance_factor": 1.0, "component": "communication", "attachment_height_m": 0},
           {"damping": 0.05, "corner": 0.6}, 1.0, 0.4, 1.0, (0.12, 0.6, 99.0))
code_block("spectrum of ASCE 7-16 with S_S 1.5 on class D", "ASCE 7-16 11.4 (from memory), worked out by derive_motion.py",
           {"rule": "asce-7-16", "s_s": 1.5, "site_class": "D", "importance_factor": 1.0, "component": "communication",
            "attachment_height_m": 0}, {"damping": 0.05, "corner": 0.5}, 1.0, 0.4, 1.0, (0.1, 0.5, 99.0))
code_block("spectrum of UBC 1997 with C_a 0.44 and C_v 0.64", "UBC 1997 figure 16-3 (from memory), worked out by derive_motion.py",
           {"rule": "ubc-1997", "seismic_coefficient": 0.44, "equation": "32-2", "importance_factor": 1.0, "component": "cabinet",
            "anchor_type": "deep", "attachment_height_m": 0},
           {"damping": 0.05, "corner": 0.64 / 1.1}, 0.44, 1.0, 2.5, (0.2 * 0.64 / 1.1, 0.64 / 1.1, 99.0))

print(json.dumps(BLOCKS, indent=1))
