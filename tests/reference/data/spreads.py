"""Writes spreads.csv: `python3 spreads.py > spreads.csv`; scipy (BSD licence) must agree."""

import platform
import statistics
from decimal import Decimal, getcontext
from fractions import Fraction

import scipy
from scipy.stats import tstd

getcontext().prec = 40

# Invented weighings of filled packages, in grams.
FILLS = [
    "355.2 356.1 354.8 355.9 357.3 354.1 355.5",
    "500 501 499.5",
    "247.913 251.4 250.02 249.777 250.6 248.31 252.009 250.25 249.9 250.001",
    "0.1 0.2",
    "1000.1 1000.1 1000.2",
]

print(f"# source: statistics.mean and variance of Python {platform.python_version()} over exact fractions, the root")
print(f"# with 40 digits; scipy.stats.tstd {scipy.__version__} agrees; the weighings are invented")
print("weighings,mean,deviation")
for fills in FILLS:
    exact = [Fraction(fill) for fill in fills.split()]
    mean, variance = statistics.mean(exact), statistics.variance(exact)
    deviation = (Decimal(variance.numerator) / variance.denominator).sqrt()
    assert abs(float(deviation) - tstd([float(fill) for fill in exact])) < 1e-9
    print(f"{fills},{Decimal(mean.numerator) / mean.denominator:.12f},{deviation:.12f}")
