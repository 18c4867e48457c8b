"""Writes trial_lengths.csv: `python3 trial_lengths.py > trial_lengths.csv`, with scipy (BSD licence)."""

import math

import scipy
from scipy.stats import nct, norm, t

LEVEL, POWER = 0.05, 0.80

# Invented: how far weeks swing, and the gain a week that a trial is to tell.
TRIALS = [
    ("74.27", "74.27"),
    ("74.27", "50"),
    ("74.27", "120.5"),
    ("210", "100"),
    ("33.3", "11.1"),
    ("500", "1800"),
    ("12.5", "3"),
    ("100", "40"),
    ("1", "0.39"),
    ("900", "1000"),
]


def power(spreads, each):
    """Of a two-sided t test of two samples of this size, the gain being so many deviations."""
    degrees = 2 * each - 2
    shift = spreads * math.sqrt(each / 2)
    limit = t.ppf(1 - LEVEL / 2, degrees)
    return nct.sf(limit, degrees, shift) + nct.cdf(-limit, degrees, shift)


print("# source: scipy.stats.norm.ppf for the normal approximation; nct, the noncentral t distribution, for the")
print(f"# exact test; scipy {scipy.__version__}, by trial_lengths.py; the numbers are invented")
print("deviation,gain,normal,exact")
for deviation, gain in TRIALS:
    spreads = float(gain) / float(deviation)
    quantiles = norm.ppf(1 - LEVEL / 2) + norm.ppf(POWER)
    normal = max(2, math.ceil(2 * (quantiles / spreads) ** 2))
    exact = next(each for each in range(2, 1000) if power(spreads, each) >= POWER)
    print(f"{deviation},{gain},{normal},{exact}")
