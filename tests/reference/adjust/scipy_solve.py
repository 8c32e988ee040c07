"""Independent solution of distance networks with scipy: reads problems as JSON on stdin, writes solutions as JSON.

A problem: {dimension, known: [[x, y, z]...], start: [[x, y, z]...], rows: [[i, j, value, sigma]...]} with points
numbered known first. The answer holds cost (sum of squares), coordinates, covariance (J^T J)^-1 and, when `repeat` is
given, the best of that many timed runs in milliseconds (solution and covariance).
"""

import json
import sys
import time

import numpy as np
from scipy.optimize import least_squares


def solve(problem):
    n = problem["dimension"]
    known = np.array([p[:n] for p in problem["known"]], dtype=float).reshape(-1, n)
    start = np.array([p[:n] for p in problem["start"]], dtype=float)
    rows = np.array(problem["rows"], dtype=float)
    i, j = rows[:, 0].astype(int), rows[:, 1].astype(int)
    value, sigma = rows[:, 2], rows[:, 3]
    k = len(known)

    def points(x):
        return np.vstack([known, x.reshape(-1, n)])

    def residual(x):
        p = points(x)
        return (np.linalg.norm(p[j] - p[i], axis=1) - value) / sigma

    def jacobian(x):
        p = points(x)
        d = p[j] - p[i]
        u = d / np.linalg.norm(d, axis=1)[:, None] / sigma[:, None]
        full = np.zeros((len(rows), len(p), n))
        r = np.arange(len(rows))
        full[r, j] += u
        full[r, i] -= u
        return full[:, k:, :].reshape(len(rows), -1)

    def run():
        fit = least_squares(residual, start.ravel(), jac=jacobian, method="trf", xtol=1e-12, ftol=1e-12, gtol=1e-12)
        return fit, np.linalg.inv(fit.jac.T @ fit.jac)

    fit, covariance = run()
    times = []
    for _ in range(problem.get("repeat", 0)):
        begin = time.perf_counter()
        run()
        times.append(1000 * (time.perf_counter() - begin))
    answer = {"square": 2 * float(fit.cost), "x": fit.x.tolist()}
    if times:
        answer["ms"] = min(times)
    else:
        answer["covariance"] = covariance.tolist()
    return answer


json.dump([solve(p) for p in json.load(sys.stdin)], sys.stdout)
