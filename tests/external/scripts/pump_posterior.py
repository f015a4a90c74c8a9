# SPDX-License-Identifier: Apache-2.0
# Posterior of one coefficient by numerical integration, without the closed form: prior times likelihood on a fine grid, with SciPy's normal
# density. One case a line: prior mean; prior sd; noise; steps as pumps:change parted by ' '. Answers with posterior mean and sd.
import sys

import numpy as np
from scipy.integrate import simpson
from scipy.stats import norm

for line in sys.stdin:
    mean, sd, noise, steps = line.rstrip("\n").split(";")
    mean, sd, noise = float(mean), float(sd), float(noise)
    pumps, change = np.array([[float(v) for v in s.split(":")] for s in steps.split(" ")]).T

    def log_density(beta):
        return norm.logpdf(beta, mean, sd) + norm.logpdf(change[:, None], pumps[:, None] * beta, noise).sum(axis=0)

    # Twice: first over everywhere that prior and data could mean, then closely round the top.
    ends = [mean - 12 * sd, mean + 12 * sd, *(change / pumps - 12 * noise), *(change / pumps + 12 * noise)]
    beta = np.linspace(min(ends), max(ends), 200001)
    for _ in range(2):
        log = log_density(beta)
        weight = np.exp(log - log.max())
        whole = simpson(weight, beta)
        middle = simpson(weight * beta, beta) / whole
        spread = np.sqrt(simpson(weight * (beta - middle) ** 2, beta) / whole)
        beta = np.linspace(middle - 12 * spread, middle + 12 * spread, 20001)
    print(repr(float(middle)), repr(float(spread)))
