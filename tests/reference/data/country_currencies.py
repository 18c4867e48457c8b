"""Which money each country uses in 2026 (Unicode CLDR as packaged in babel), for the currencies of
iso4217_minor_units.csv: python country_currencies.py > country_currencies.csv"""
import csv, datetime, sys
import babel
from babel.numbers import get_territory_currencies
from babel.core import get_global

known = {row[0] for row in csv.reader(open("iso4217_minor_units.csv")) if row and not row[0].startswith("#")}
print(f"# source: Unicode CLDR in PyPI babel {babel.__version__}, tender on 2026-11-27; recorded by country_currencies.py")
print("country,currency")
for country in sorted(get_global("territory_currencies")):
    if len(country) != 2 or not country.isalpha():
        continue
    money = get_territory_currencies(country, datetime.date(2026, 11, 27))
    if money and money[0] in known:
        print(f"{country},{money[0]}")
