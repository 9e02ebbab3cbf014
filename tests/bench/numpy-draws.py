# The peer of the draws: 1e5 plain normal draws of twelve weighings, the fineness number of each, two quantiles.
# Answers every line of its input with the milliseconds of processor time that it took.
import sys
import time

import numpy as np

rng = np.random.default_rng(20260)
masses = np.array([float(x) for x in sys.argv[1].split(",")])
multipliers = np.array([3, 5, 10, 20, 30, 40, 50, 70, 100, 140, 200, 300], dtype=float)
sd = float(sys.argv[2])

for _ in sys.stdin:
    start = time.process_time()
    drawn = masses + sd * rng.standard_normal((100_000, 12))
    numbers = (drawn @ multipliers) / drawn.sum(axis=1)
    low, high = np.quantile(numbers, [0.025, 0.975])
    took = time.process_time() - start
    print(1000 * took, numbers.mean(), low, high, np.__version__, flush=True)
