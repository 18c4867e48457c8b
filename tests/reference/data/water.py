"""Writes water.csv: `python3 water.py > water.csv`, with CoolProp (MIT licence)."""

import CoolProp
from CoolProp.CoolProp import PropsSI

print("# source: density of water at 101325 Pa by IAPWS-95 (Wagner and Pruss, J. Phys. Chem. Ref. Data 31, 387,")
print(f"# 2002), as CoolProp {CoolProp.__version__} computes it, by water.py")
print("celsius,grams_per_millilitre")
for tenths in [1, 10, 20, 30, 40, 44, 50, 70, 100, 120, 150, 180, 200, 215, 250, 280, 300, 330, 350, 380, 400]:
    kilograms = PropsSI("D", "T", 273.15 + tenths / 10, "P", 101325, "Water")
    print(f"{tenths / 10},{kilograms / 1000:.8f}")
