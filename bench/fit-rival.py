# The same fit by SciPy: readings on standard input as JSON; amount, offset and second pKa of 2 mmol sodium carbonate in
# 50 mL by 0.1 mol/L hydrochloric acid. Each reading's volume is a parameter too, as for orthogonal distances: the residuals
# are (pH - f(V))/u_pH and (mL - V)/u_mL, and the Jacobian's pattern is given, its numbers by differences.
import json
import sys
import time

import numpy as np
from scipy.optimize import brentq, least_squares

readings = json.load(sys.stdin)
mL, pH = np.array(readings["mL"]), np.array(readings["pH"])
K1, KW = 10 ** -readings["pKa"][0], 10**-13.995
U_PH, U_ML = 0.01, 0.02


def ph_at(volume, mmol, pka2):
    total = 50 + volume
    k2 = 10**-pka2

    def charge(p):
        h = 10**-p
        first, second = K1 / h, K1 * k2 / h**2
        lost = (first + 2 * second) / (1 + first + second)
        return total * (h - KW / h) + 2 * mmol - 0.1 * volume - mmol * lost

    return brentq(charge, 0, 14, xtol=1e-11)


def residuals(parameters):
    mmol, offset, pka2 = parameters[:3]
    volumes = np.concatenate(([0.0], parameters[3:]))
    curve = np.array([ph_at(max(v, 0.0), mmol, pka2) for v in volumes])
    return np.concatenate(((pH - curve - offset) / U_PH, (mL[1:] - volumes[1:]) / U_ML))


n = len(mL)
pattern = np.zeros((2 * n - 1, n + 2))
pattern[:n, :3] = 1
for k in range(1, n):
    pattern[k, k + 2] = 1
    pattern[n + k - 1, k + 2] = 1
start = np.concatenate(([2, 0, readings["pKa"][1]], mL[1:]))
before = time.process_time()
found = least_squares(residuals, start, jac_sparsity=pattern, x_scale="jac", xtol=1e-10, ftol=1e-12)
print(json.dumps({"ms": 1000 * (time.process_time() - before), "values": list(found.x[:3])}))
