# SPDX-License-Identifier: Apache-2.0
"""Least-cost assignment by scipy.optimize.linear_sum_assignment. Standard input: a question starts with "heads helmets", then one line a
head with its costs, "-" where the pair is not feasible. Each head may go without, at more than any rearrangement can cost.
Answers, one line a question: heads served, cost of the pairs."""
import sys

import numpy
from scipy.optimize import linear_sum_assignment

lines = iter(sys.stdin.read().splitlines())
for line in lines:
    heads, helmets = map(int, line.split())
    costs = numpy.array([[float("inf") if c == "-" else float(c) for c in next(lines).split()] for _ in range(heads)]).reshape(heads, helmets)
    finite = costs[numpy.isfinite(costs)]
    none = (finite.max(initial=0) + 1) * (heads + 1)
    whole = numpy.hstack([numpy.where(numpy.isfinite(costs), costs, none * (heads + 2)), numpy.full((heads, heads), none)])
    rows, columns = linear_sum_assignment(whole)
    pairs = columns < helmets
    print(int(pairs.sum()), repr(float(whole[rows[pairs], columns[pairs]].sum())))
