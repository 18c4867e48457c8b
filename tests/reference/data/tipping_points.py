"""Writes tipping_points.csv: `python3 tipping_points.py > tipping_points.csv`, with the standard library alone."""

import math
import sys

# Invented menus of one or two drinks, each from one size to another: buyers a week, what one leaves before and
# after, the price before and after, the size in millilitres before and after.
MENUS = [
    ("30 2 4 4 8 250 500",),
    ("22 2.5 3.75 4.95 6.95 236.6 354.9",),
    ("140 5.1 4.15 8.5 6.95 473.2 354.9",),
    ("10 1 3 5 7.5 300 450", "25 2 2.5 4 4.5 300 450"),
    ("5 8.97 4.98 15.5 8.5 946.4 473.2", "6 9 5 14.95 8.5 946.4 473.2"),
    ("40 3 3.1 6 6 350 300", "12 2.25 4 5 8 350 700"),
]


def bring(turns, elasticity):
    """What those who turn bring, with a fourth of the answer to a price for a size."""
    total = 0.0
    for buyers, _, after, price, price_after, size, size_after in turns:
        stay = (price_after / price) ** elasticity * (size_after / size) ** (-elasticity / 4)
        total += buyers * after * stay
    return total


def tip(turns):
    """The elasticity at which they bring what they brought: in closed form for one drink, else by bisection."""
    needed = sum(turn[0] * turn[1] for turn in turns)
    if len(turns) == 1:
        _, before, after, price, price_after, size, size_after = turns[0]
        return math.log(before / after) / (math.log(price_after / price) - math.log(size_after / size) / 4)
    near, far = 0.0, -12.0
    above = bring(turns, near) > needed
    if (bring(turns, far) > needed) == above:
        sys.exit("no tipping point")
    for _ in range(200):
        middle = (near + far) / 2
        if (bring(turns, middle) > needed) == above:
            near = middle
        else:
            far = middle
    return near


print("# source: Python's math.log, and bisection with its powers, by tipping_points.py; the menus are invented")
print("menu,elasticity,loses")
for menu in MENUS:
    turns = [tuple(float(number) for number in turn.split()) for turn in menu]
    elasticity = tip(turns)
    print(f"{' + '.join(menu)},{elasticity:.9f},{1 - 1.1**elasticity:.9f}")
