# Makes scipy-fits.json, reference values from SciPy and NumPy (general-purpose libraries), once:
#   python3 tests/numbers/scipy-fits.py > tests/numbers/scipy-fits.json
# The numbers are invented.
import json

import numpy as np
import scipy
from scipy import optimize, special, stats

P = [0.001, 0.025, 0.1, 0.5, 0.9, 0.95, 0.975, 0.999]
X = [0.01, 0.3, 1, 2.5, 7, 40]
PAIRS = [(1, 1), (1, 5), (2, 7), (3, 40), (9, 40), (4.5, 2.5), (30, 30), (200, 150)]
DF = [1, 2, 3, 7.5, 30, 200]
out = {"made with": f"SciPy {scipy.__version__}, NumPy {np.__version__}"}
out["f cumulative"] = [[x, a, b, float(stats.f.cdf(x, a, b))] for x in X for a, b in PAIRS]
out["f quantile"] = [[p, a, b, float(stats.f.ppf(p, a, b))] for p in P for a, b in PAIRS]
out["log gamma"] = [[z, float(special.gammaln(z))] for z in [1e-6, 0.1, 0.5, 1, 1.5, 2, 3.3, 10, 14.9, 15, 40.5, 1e3, 1e6]]

rng = np.random.default_rng(20240607)
fits = []
for rows, size in [(8, 3), (12, 5), (20, 4)]:
    X0 = np.column_stack([np.ones(rows), rng.uniform(2, 5, (rows, size - 1))]).round(3)
    y = (X0 @ rng.normal(0, 2, size) + rng.normal(0, 0.3, rows)).round(3)
    w = rng.uniform(0.5, 4, rows).round(2)
    W = np.diag(w)
    inverse = np.linalg.inv(X0.T @ W @ X0)
    b = np.linalg.lstsq(np.sqrt(w)[:, None] * X0, np.sqrt(w) * y, rcond=None)[0]
    r = y - X0 @ b
    s2 = float(r @ W @ r) / (rows - size)
    at = [1.0, *[3.5] * (size - 1)]
    fits.append({
        "design": X0.tolist(), "y": y.tolist(), "weights": w.tolist(), "at": at,
        "coefficients": b.tolist(), "covariance": (s2 * inverse).tolist(), "residual sd": float(np.sqrt(s2)),
        "leverages": np.diag(np.sqrt(W) @ X0 @ inverse @ X0.T @ np.sqrt(W)).tolist(),
        "value": float(np.array(at) @ b), "mean se": float(np.sqrt(s2 * np.array(at) @ inverse @ np.array(at))),
    })
out["weighted fits"] = fits

blends = []
for rows, size in [(6, 3), (11, 5), (9, 9), (4, 7)]:
    A = rng.normal(0, 1, (rows, size)).round(4)
    b = rng.normal(0, 1, rows).round(4)
    x, norm = optimize.nnls(A, b)
    blends.append({"A": A.tolist(), "b": b.tolist(), "x": x.tolist(), "norm": float(norm), "one answer": size <= rows})
out["non-negative"] = blends

out["welch"] = []
for a, b in [([3.1, 3.4, 2.9], [3.6, 3.8, 3.5, 4.4]), ([70, 71, 70.5, 69, 72, 75], [71, 71]), ([5, 5, 5], [4, 6, 7])]:
    r = stats.ttest_ind(a, b, equal_var=False)
    ci = r.confidence_interval(0.9)
    out["welch"].append({"a": a, "b": b, "t": float(r.statistic), "df": float(r.df), "p": float(r.pvalue), "low90": float(ci.low), "high90": float(ci.high)})

x = np.array([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12.0])
z = np.array([3, 1, 4, 4, 5, 9, 2, 6, 5, 12, 5, 8.0])
r = stats.spearmanr(x, z)
out["spearman ties"] = {"x": x.tolist(), "y": z.tolist(), "rho": float(r.statistic), "p": float(r.pvalue)}
# Exact p with ties: SciPy's own permutation test, every order counted.
x, z = [3.0, 3.0, 3.4, 3.4, 3.8, 4.2, 4.2], [60, 66, 71, 70, 70, 64, 69]
r = stats.permutation_test((x,), lambda v: stats.spearmanr(v, z).statistic, permutation_type="pairings", n_resamples=np.inf)
extreme = np.mean(np.abs(r.null_distribution) >= abs(r.statistic) - 1e-12)
out["spearman counted"] = {"x": x, "y": z, "rho": float(r.statistic), "p": float(extreme)}
print(json.dumps(out))
