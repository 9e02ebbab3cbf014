# Makes scipy-values.json, reference values from SciPy (general-purpose library), once:
#   python3 tests/numbers/scipy-values.py > tests/numbers/scipy-values.json
# The points are invented.
import json

import numpy as np
import scipy
from scipy import stats
from scipy.interpolate import PchipInterpolator

CURVES = {
    "grading": ([0.053, 0.075, 0.106, 0.15, 0.212, 0.3, 0.425, 0.6, 0.85],
                [0.7, 2.1, 6.9, 21.4, 52.8, 80.3, 94.6, 99.2, 100.0],
                [0.053, 0.06, 0.075, 0.09, 0.12, 0.18, 0.2, 0.25, 0.35, 0.5, 0.7, 0.85]),
    "plateau and turn": ([0, 1, 2, 4, 5, 7], [0, 1, 1, 5, 2, 2.5],
                         [0, 0.25, 0.9, 1.5, 2.5, 3.9, 4.0, 4.6, 5.5, 6.5, 7]),
    "two points": ([1, 3], [2, 8], [1, 1.7, 3]),
    "three points": ([0, 1, 3], [0, 10, 11], [0.1, 0.5, 1, 2, 2.9]),
    "steep ends": ([0, 1, 2, 3], [0, 0.1, 5, 5.1], [0.2, 0.7, 1.2, 2.5, 2.9]),
    "end past a turn": ([0, 1, 2, 10], [0, 3, 2, 9], [0.2, 0.7, 1.2, 2.5, 5, 9]),
}
curves = {}
for name, (x, y, at) in CURVES.items():
    f = PchipInterpolator(np.array(x, float), np.array(y, float))
    d = f.derivative()
    curves[name] = {"x": x, "y": y, "at": [[t, float(f(t)), float(d(t))] for t in at]}

rng = np.random.default_rng(20240311)
sample = [round(float(v), 6) for v in rng.lognormal(0, 1, 41)]
SHARES = [0, 0.025, 0.1, 0.25, 1 / 3, 0.5, 0.77, 0.975, 1]
P = [1e-30, 1e-12, 1e-6, 1 / 131072, 1 / 8192, 0.001, 0.01, 0.019, 0.025, 0.1, 0.3, 0.5, 0.8, 0.9, 0.975, 0.999]
DF = [0.7, 1, 2, 3, 4.5, 10, 30, 200]


def t_quantile(p, df):
    """stats.t.ppf is off by up to 2e-9 (closed forms for df 1 and 2); two steps of Newton's on stats.t.cdf mend it."""
    x = stats.t.ppf(p, df)
    for _ in range(2):
        x -= (stats.t.cdf(x, df) - p) / stats.t.pdf(x, df)
    return float(x)


print(json.dumps({
    "made with": f"SciPy {scipy.__version__}, NumPy {np.__version__}",
    "curves": curves,
    "sample": sample,
    "quantiles": [[p, float(np.quantile(sample, p))] for p in SHARES],
    "normal quantile": [[p, float(stats.norm.ppf(p))] for p in P],
    "normal cumulative": [[x, float(stats.norm.cdf(x))] for x in [-10, -5, -2.5, -1, -0.1, 0, 0.5, 1.96, 3, 6]],
    "t quantile": [[p, v, t_quantile(p, v)] for v in DF for p in [1 / 8192, 0.025, 0.1, 0.4, 0.9, 0.995]],
    "t cumulative": [[x, v, float(stats.t.cdf(x, v))] for v in DF for x in [-8, -2, -0.3, 0, 1, 4]],
    "triangular quantile": [[p, float(stats.triang.ppf(p, 0.5, -1, 2))] for p in [0.025, 0.3, 0.5, 0.9]],
    "arcsine quantile": [[p, float(stats.arcsine.ppf(p, -1, 2))] for p in [0.025, 0.3, 0.5, 0.9]],
}, indent=1))
