"""Writes best_use.csv: `python3 best_use.py > best_use.csv`, with scipy (BSD licence) and numpy."""

import numpy
import scipy
from scipy.optimize import LinearConstraint, Bounds, linprog, milp

print("# source: scipy.optimize.milp with mip_rel_gap 0, and linprog for the same with parts allowed")
print(f"# {scipy.__version__}, by best_use.py; the numbers are generated, seed 8")
print("values,most,rows,best,relaxed")
numbers = numpy.random.default_rng(8)


def spaced(row):
    return " ".join(str(int(number)) for number in row)


for drinks, scarce in [(6, 1), (8, 2), (10, 2), (12, 3), (14, 3), (16, 4), (18, 4), (20, 5), (22, 3), (24, 2)] * 2:
    takes = numbers.integers(20, 400, (scarce, drinks)) * (numbers.random((scarce, drinks)) < 0.6)
    most = numbers.integers(2, 30, drinks)
    values = takes.sum(axis=0) + numbers.integers(50, 400, drinks)
    here = (takes @ most * numbers.uniform(0.3, 0.9, scarce)).astype(int)
    found = milp(
        -values,
        constraints=LinearConstraint(takes, ub=here),
        integrality=numpy.ones(drinks),
        bounds=Bounds(0, most),
        options={"mip_rel_gap": 0},
    )
    assert found.status == 0, found.message
    relaxed = linprog(-values, takes, here, bounds=[(0, bound) for bound in most])
    rows = ";".join(f"{spaced(row)} <= {bound}" for row, bound in zip(takes, here))
    print(f"{spaced(values)},{spaced(most)},{rows},{round(-found.fun)},{-relaxed.fun:.6f}")
