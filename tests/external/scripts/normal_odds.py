# SPDX-License-Identifier: Apache-2.0
# Size odds by SciPy's normal distribution. One case a line: technical error; readings; bands as low:high; all in mm.
# Answers with the standard error, the odds of each band after splitting overlaps, and those of no band.
import math
import statistics
import sys

from scipy.stats import norm

for line in sys.stdin:
    tem, readings, bands = line.strip().split(";")
    readings = [float(x) for x in readings.split(",")]
    bands = [[float(x) for x in band.split(":")] for band in bands.split(",")]
    middle = statistics.fmean(readings) if len(readings) < 3 else statistics.median(readings)
    error = float(tem) / math.sqrt(len(readings))
    for below, above in zip(bands, bands[1:]):
        if above[0] < below[1]:
            below[1] = above[0] = (above[0] + below[1]) / 2
    head = norm(loc=middle, scale=error)
    odds = [head.cdf(high) - head.cdf(low) for low, high in bands]
    print(repr(error), *(repr(float(o)) for o in odds), repr(float(1 - sum(odds))))
