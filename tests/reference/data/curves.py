"""Writes curves.csv: `python3 curves.py > curves.csv`, with scipy (BSD licence)."""

from math import exp, log

import scipy
from scipy.stats import linregress

# Invented sizes in mL and prices.
PRICES = [
    "355:6.5 473:7.95 591:8.75",
    "250:4.2 250:4.5 330:5.1 500:6.4 750:8.8 1000:10.5",
    "60:3.5 60:4 118:5.75 473:9 355:8.25",
    "300:5 400:4.6 500:4.75",
    "473.176473:8 355:8 591:8.01",
    "100:1 200:9 300:2 400:7",
]

print(f"# source: scipy.stats.linregress on the logarithms {scipy.__version__}, by curves.py")
print("# (price = factor * size^exponent; at_450 is the price at 450 mL); sizes and prices are invented")
print("prices,factor,exponent,r_squared,at_450")
for prices in PRICES:
    points = [[log(float(number)) for number in point.split(":")] for point in prices.split()]
    line = linregress(*zip(*points))
    at = exp(line.intercept + line.slope * log(450))
    print(f"{prices},{exp(line.intercept):.9f},{line.slope:.9f},{line.rvalue ** 2:.9f},{at:.9f}")
