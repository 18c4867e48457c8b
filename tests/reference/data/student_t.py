"""Writes student_t.csv: `python3 student_t.py > student_t.csv`, with scipy (BSD licence)."""

import scipy
from scipy.stats import t

DEGREES = "1 1.01 1.37 1.5 2 2.3 3 3.75 4 4.9 5 6.02 7 8.5 10 12.6 15 20 27.3 40 63.9 100 206 1000 9999"

print(f"# source: scipy.stats.t.ppf(0.975, degrees) {scipy.__version__}, by student_t.py")
print("degrees,quantile")
for degrees in DEGREES.split():
    print(f"{degrees},{t.ppf(0.975, float(degrees)):.9f}")
