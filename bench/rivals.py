"""SciPy's brentq point by point, and a bisection over a whole NumPy array, on the charge balance read as JSON from stdin.

Prints JSON: nanoseconds a point of each, and their pH at the last volume.
"""

import json
import sys
import time

import numpy as np
from scipy.optimize import brentq

job = json.load(sys.stdin)
V0, Kw, (strong, per_ml), acids = job["V0"], job["Kw"], job["strong"], job["acids"]


def charge(h, mL):
    x = 1 / h
    total = strong + per_ml * mL
    for acid in acids:
        sum_, weighted = 1.0, 0.0
        for k in reversed(acid["K"]):
            term = k * x
            weighted = term * (sum_ + weighted)
            sum_ = 1 + term * sum_
        total = total + acid["mmol"] * (acid["top"] - weighted / sum_)
    return h - Kw * x + total / (V0 + mL)


def point_by_point(volumes):
    return [brentq(lambda pH: charge(10**-pH, mL), -2, 16, xtol=1e-14, rtol=1e-14) for mL in volumes]


def at_once(volumes):
    low, high = np.full_like(volumes, -2.0), np.full_like(volumes, 16.0)
    for _ in range(54):  # 18 pH units down to 1e-15
        middle = 0.5 * (low + high)
        acid = charge(10**-middle, volumes) > 0
        low, high = np.where(acid, middle, low), np.where(acid, high, middle)
    return 0.5 * (low + high)


def least(call, volumes, rounds):
    best = float("inf")
    for _ in range(rounds):
        start = time.perf_counter()
        result = call(volumes)
        best = min(best, time.perf_counter() - start)
    return best / len(volumes) * 1e9, float(result[-1])


out = {}
for points in job["points"]:
    volumes = np.linspace(0, job["upTo"], points)
    row = {"bisection": least(at_once, volumes, 5 if points <= 1000 else 2)}
    if points <= 1000:
        row["brentq"] = least(point_by_point, volumes.tolist(), 3)
    out[str(points)] = row
print(json.dumps(out))
