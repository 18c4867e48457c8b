"""Writes batch_averages.csv: `python3 batch_averages.py > batch_averages.csv`, with scipy (BSD licence).

So much more than the declared size keeps the average of a batch from being short but for the risk: the upper
quantile of a normal distribution whose deviation is that of an average. 20,000 batches of random packages must agree.
"""

from decimal import Decimal, getcontext

import numpy
import scipy
from scipy.stats import norm

getcontext().prec = 40
numbers = numpy.random.default_rng(11)

print(f"# source: scipy.stats.norm.isf(risk, scale=deviation / sqrt(batch)) {scipy.__version__}, by batch_averages.py;")
print("# deviations and batches are invented")
print("risk,deviation,batch,more")
for risk in ["0.001", "0.01", "0.02", "0.025", "0.05"]:
    for deviation in ["0.5", "4", "10.25"]:
        for batch in [1, 12, 99, 100, 1000]:
            scale = float(Decimal(deviation) / Decimal(batch).sqrt())
            more = norm.isf(float(risk), scale=scale)
            if batch <= 100:
                batches = numbers.normal(more, float(deviation), (20_000, batch))
                short = (batches.mean(axis=1) < 0).mean()
                assert abs(short - float(risk)) < 0.008, (risk, short)
            print(f"{risk},{deviation},{batch},{more:.9f}")
