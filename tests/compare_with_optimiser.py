"""The same envelope of base reactions twice: by Steadfoot, and by the general-purpose optimiser of SciPy.

    python3 tests/compare_with_optimiser.py [FILE] [--profile dev]

Needs Python 3 with numpy and scipy (Debian: python3-scipy) and a Rust toolchain. FILE is a project, by default the full
cabinet of the examples. Both get the same supports and the same loads: every state, load case and 24 directions. Both
find how the base settles, w = a + b x + c y, where feet push back only where they are pressed and anchors pull back only
where they are lifted. Steadfoot takes each foot as the rectangle that it is; for the optimiser it is a field of points.
Printed are how far the two agree, the times, and their ratio.
"""

import json
import subprocess
import sys
import time
from pathlib import Path

import numpy as np
from scipy.optimize import minimize

ROOT = Path(__file__).resolve().parent.parent
# Points along each side of a foot.
POINTS = 16


def engine(file, profile):
    command = ["cargo", "run", "--quiet", "--profile", profile, "-p", "steadfoot-tests", "--example", "envelope", "--", str(file)]
    return json.loads(subprocess.run(command, cwd=ROOT, check=True, stdout=subprocess.PIPE).stdout)


def points_of(feet):
    """Every foot as springs at points: places, stiffnesses, and which foot each belongs to."""
    along = (np.arange(POINTS) + 0.5) / POINTS * 2 - 1
    places, stiffnesses, owners = [], [], []
    for number, (x, y, half_x, half_y, stiffness) in enumerate(feet):
        for u in along:
            for v in along:
                places.append((x + u * half_x, y + v * half_y))
                stiffnesses.append(stiffness / POINTS ** 2)
                owners.append(number)
    return np.array(places), np.array(stiffnesses), np.array(owners)


def optimised(problem):
    """Largest pulls and forces over all loads."""
    places, springs, owners = points_of(problem["feet"])
    anchors = np.array(problem["anchors"]).reshape(-1, 3)
    # Unknowns in mm at one metre from the middle, so that all three are alike.
    size = 1000.0
    of_feet = np.column_stack([np.ones(len(places)), places / size])
    of_anchors = np.column_stack([np.ones(len(anchors)), anchors[:, :2] / size])
    stiffest = anchors[:, 2]
    pulls, forces = np.zeros(len(anchors)), np.zeros(len(problem["feet"]))
    for down, moment_x, moment_y in problem["loads"]:
        load = np.array([down, moment_x / size, moment_y / size])
        unit = abs(load).max()

        def energy(plane):
            pressed = np.maximum(of_feet @ plane, 0.0)
            lifted = np.maximum(-(of_anchors @ plane), 0.0)
            value = (springs @ pressed ** 2 + stiffest @ lifted ** 2) / 2 - load @ plane
            slope = of_feet.T @ (springs * pressed) - of_anchors.T @ (stiffest * lifted) - load
            return value / unit, slope / unit

        found = minimize(energy, np.zeros(3), jac=True, method="BFGS", options={"gtol": 1e-7})
        plane = found.x
        pulls = np.maximum(pulls, stiffest * np.maximum(-(of_anchors @ plane), 0.0))
        force = np.bincount(owners, springs * np.maximum(of_feet @ plane, 0.0), minlength=len(forces))
        forces = np.maximum(forces, force)
    return pulls, forces


def main():
    words = sys.argv[1:]
    profile = "release"
    if "--profile" in words:
        at = words.index("--profile")
        profile = words[at + 1]
        del words[at:at + 2]
    file = Path(words[0]).resolve() if words else ROOT / "demo-configs" / "02-full.json"
    problem = engine(file, profile)
    begin = time.perf_counter()
    pulls, forces = optimised(problem)
    seconds = time.perf_counter() - begin
    apart = max(abs(pulls / np.array(problem["pulls_n"]) - 1).max(initial=0.0), abs(forces / np.array(problem["forces_n"]) - 1).max())
    print(f"{file.name}: {len(problem['feet'])} feet, {len(problem['anchors'])} anchors, {len(problem['loads'])} loads")
    print(f"largest pull {max(problem['pulls_n'], default=0.0):.0f} N by Steadfoot, {max(pulls, default=0.0):.0f} N by the optimiser; "
          f"nowhere farther apart than {100 * apart:.2f} %")
    print(f"one envelope takes Steadfoot {1e6 * problem['seconds']:.0f} microseconds ({profile}), the optimiser {1e3 * seconds:.0f} milliseconds")
    print(f"ratio {seconds / problem['seconds']:.0f}")
    # The optimiser's feet are points, so the two can only agree roughly.
    return 0 if apart < 0.02 else 1


if __name__ == "__main__":
    sys.exit(main())
