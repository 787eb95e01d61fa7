"""Critical values of Dixon's r10 = (x2 - x1)/(xn - x1), both ends suspect, for normal samples of 3 to 10.

By the joint density of the extremes (W. J. Dixon, Ann. Math. Stat. 22, 68-78 (1951)), with y = xn:

  P(r10 > q) = n(n-1) * double integral over x and w = y - x > 0 of
               phi(x) phi(x + w) [Phi(x + w) - Phi(x + q w)]^(n-2)

and q where that is half of the significance, since either end may be the suspect. Needs numpy and scipy:
python3 tests/reference/dixon.py > tests/reference/dixon.json
"""

import json

import numpy as np
from scipy import optimize, stats

nodes, weights = np.polynomial.legendre.leggauss(200)
x, x_weights = 9 * nodes, 9 * weights
w, w_weights = 9 * (nodes + 1), 9 * weights
X, W = np.meshgrid(x, w, indexing="ij")
density = stats.norm.pdf(X) * stats.norm.pdf(X + W)


def tail(n, q):
    inside = stats.norm.cdf(X + W) - stats.norm.cdf(X + q * W)
    return n * (n - 1) * (x_weights @ (density * inside ** (n - 2)) @ w_weights)


print(
    json.dumps(
        [
            {"n": n, **{level: round(optimize.brentq(lambda q: tail(n, q) - (1 - float(level)) / 2, 0.01, 0.9999, xtol=1e-9), 5) for level in ("0.90", "0.95", "0.99")}}
            for n in range(3, 11)
        ],
        indent=1,
    )
)
