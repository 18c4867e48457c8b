"""Writes samples.csv: `python3 samples.py > samples.csv`, with scipy (BSD licence)."""

import scipy
from scipy.stats import binom, norm

# Sample sizes of NIST Handbook 133 are 12, 24 and 48 (second-hand); the others are invented.
SAMPLES = [1, 2, 12, 24, 48, 125]

print("# source: risk that a sample holds at least one package of a share, scipy.stats.binom.sf(0, sample, share)")
print(f"# {scipy.__version__}, by samples.py; the last share is scipy.stats.norm.sf(3)")
print("share,sample,risk")
for share in ["0", "0.001", "0.01", "0.02", "0.025", "0.05", f"{norm.sf(3):.9f}"]:
    for sample in SAMPLES:
        print(f"{share},{sample},{binom.sf(0, sample, float(share)):.12f}")
