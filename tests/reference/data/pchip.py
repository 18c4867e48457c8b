"""Writes pchip.csv: `python3 pchip.py > pchip.csv` with scipy at hand (BSD licence)."""

import numpy
import scipy
from scipy.interpolate import PchipInterpolator

# Invented bottles: readings of height in mm and volume in mL, the empty base first.
SHAPES = {
    "shoulder": [(0, 0), (20, 61.5), (60, 199), (90, 301), (110, 352.5), (130, 374), (170, 402)],
    "waist": [(0, 0), (15, 80), (45, 170), (60, 200), (100, 425), (112.5, 510)],
    "two readings": [(0, 0), (80, 240), (100, 250)],
    "steep, then flat": [(0, 0), (1, 200), (90, 201), (91, 480)],
    "flat base": [(0, 0), (30, 3), (40, 90), (75.25, 333.3)],
}

print(f"# source: scipy.interpolate.PchipInterpolator {scipy.__version__} by pchip.py; the shapes are invented")
print("shape,readings,height_mm,volume_ml")
for shape, points in SHAPES.items():
    heights, volumes = zip(*points)
    curve = PchipInterpolator(heights, volumes)
    readings = " ".join(f"{height}:{volume}" for height, volume in points[1:])
    inside = numpy.linspace(0, heights[-1], 24)[1:-1].round(3)
    for height in sorted({*inside.tolist(), *heights[1:]}):
        print(f'"{shape}",{readings},{height},{curve(height):.10f}')
