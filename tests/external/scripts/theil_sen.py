# SPDX-License-Identifier: Apache-2.0
# Slopes of pairs by SciPy and, for several runs, by the definitions alone. One case a line: runs parted by ';', points by ' ', each week:pascals.
# One run: scipy.stats.theilslopes. Several: slopes of pairs within runs, pooled; Sen's variance of each run summed (Hirsch, Slack and
# Smith 1982); ranks rounded as in theilslopes. Answers with slope, low, high and whether the ranks exist without being moved.
import sys
import warnings
from collections import Counter
from statistics import NormalDist, median

from scipy.stats import theilslopes

warnings.simplefilter("ignore")


def variance(run):
    n = len(run)
    whole = n * (n - 1) * (2 * n + 5)
    for values in zip(*run):
        whole -= sum(k * (k - 1) * (2 * k + 5) for k in Counter(values).values())
    return whole / 18


def pooled(runs):
    slopes = sorted((b[1] - a[1]) / (b[0] - a[0]) for run in runs for a in run for b in run if b[0] > a[0])
    n, z, spread = len(slopes), NormalDist().inv_cdf(0.975), sum(map(variance, runs))
    reach = z * max(spread, 0) ** 0.5
    low, high = round((n - reach) / 2) - 1, round((n + reach) / 2)
    return median(slopes), slopes[max(low, 0)], slopes[min(high, n - 1)], spread >= 0 and low >= 0 and high <= n - 1


for line in sys.stdin:
    runs = [[tuple(float.fromhex(v) for v in point.split(":")) for point in run.split(" ")] for run in line.strip().split(";")]
    slope, low, high, exists = pooled(runs)
    if len(runs) == 1:
        theirs = theilslopes([p[1] for p in runs[0]], [p[0] for p in runs[0]])
        slope, low, high = (float(v) for v in (theirs.slope, theirs.low_slope, theirs.high_slope))
    print(slope.hex(), low.hex(), high.hex(), int(exists))
