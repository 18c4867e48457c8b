"""Writes welch.csv: `python3 welch.py > welch.csv`, with scipy (BSD licence)."""

import scipy
from scipy.stats import ttest_ind

# Invented weekly contributions before and after a change.
TRIALS = [
    ("812.4 790.1 835.25 801 822.6", "861.3 840.75 879.9 858.2"),
    ("100 102 98", "100 140 60 120 80 100"),
    ("5 7", "9 8"),
    ("0 0 0 12.5", "0 30 25"),
    ("410.5 398 402.25 415 420.75 399.5 405 411", "402 399.75"),
    ("-20 -35.5 -28", "-12 -40 -31.25 -22"),
    ("10000.1 10000.3 10000.2", "10000.2 10000.5 10000.1"),
    ("250 250 250", "240 262 251.5"),
    ("812.4 790.1 835.25 801 822.6 811.9 799", "640 655.5 610.25 671 648.8 630"),
    ("1 2 3 4 5 6 7 8 9 10 11 12", "1.5 2.5 3.5"),
]

print("# source: scipy.stats.ttest_ind(after, before, equal_var=False) and its confidence_interval(0.95)")
print(f"# {scipy.__version__}, by welch.py; the numbers are invented")
print("before,after,difference,degrees,low,high,p_value")
for before, after in TRIALS:
    first = [float(number) for number in before.split()]
    second = [float(number) for number in after.split()]
    found = ttest_ind(second, first, equal_var=False)
    interval = found.confidence_interval(0.95)
    difference = sum(second) / len(second) - sum(first) / len(first)
    print(f"{before},{after},{difference:.6f},{found.df:.6f},{interval.low:.6f},{interval.high:.6f},{found.pvalue:.6g}")
