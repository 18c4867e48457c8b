"""Writes yield_log.csv: `python3 yield_log.py > yield_log.csv`, with scipy (BSD licence)."""

from math import sqrt

import scipy
from scipy.stats import t, tmean, tstd, zscore

# Invented weighings, what went in and what came out in grams.
LOGS = [
    "10000:8900 10000:9100",
    "1000:1000 1000:1000 1000:999",
    "2500:2200 2500:2225.5 5000:4460 2500:2190",
    "22680:20230 22680:20003 11340:10161 22680:20367 22680:20094 22680:20185",
    "20230:11022 20003:11158 10161:5489 20367:11113 20094:8709 20185:11068",
    "500:300 480:290 505:110 510:310 490:300 500:305 495:301",
    "1000:640 1000:655 1000:630 1000:648 1000:652 1000:639 1000:661 1000:644 1000:650 1000:900",
    "40:31 41:36 39:22 44:39 42:29",
    "1000:5 1000:9 1000:4",
    " ".join(f"1000:{850 + 7 * (number * number % 11)}" for number in range(24)),
]

print("# source: mean, standard deviation, interval and test statistic by scipy.stats.tmean, tstd, t.interval, zscore(ddof=1);")
print("# the critical value of Grubbs' two-sided test at 5 % by the formula of the NIST/SEMATECH e-Handbook, 1.3.5.17.1, with")
print(f"# scipy.stats.t.isf; scipy {scipy.__version__}, by yield_log.py; the weighings are invented")
print("weighings,mean,deviation,low,high,place,statistic,critical")
for log in LOGS:
    pairs = [pair.split(":") for pair in log.split()]
    yields = [float(out) / float(into) for into, out in pairs]
    count = len(yields)
    mean, deviation = tmean(yields), tstd(yields)
    low, high = t.interval(0.95, count - 1, loc=mean, scale=deviation / sqrt(count))
    tested = ",,"
    if count > 2:
        scores = [abs(score) for score in zscore(yields, ddof=1)]
        square = t.isf(0.05 / (2 * count), count - 2) ** 2
        critical = (count - 1) / sqrt(count) * sqrt(square / (count - 2 + square))
        tested = f"{scores.index(max(scores))},{max(scores):.9f},{critical:.9f}"
    print(f"{log},{mean:.9f},{deviation:.9f},{low:.9f},{high:.9f},{tested}")
