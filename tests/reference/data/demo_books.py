"""What each offer of the invented books costs and leaves, by plain arithmetic from their files.

    python3 demo_books.py > demo_books.csv
    python3 demo_books.py drops

The second prints how many buyers of a bottle of the first book must stay if it is dropped. Written from the formulas alone, with Python's fractions; nothing of it is the app's code. Yields are those of
the rest of the year, not of a season.
"""

import json
import sys
from fractions import Fraction as F
from pathlib import Path

BOOKS = Path(__file__).parent / "../../../public/books"
# Exact definitions: NIST Handbook 44, appendix C.
MILLILITRES = {
    "mL": F(1), "cL": F(10), "L": F(1000), "fl oz": F("29.5735295625"), "tsp": F("29.5735295625") / 6,
    "tbsp": F("29.5735295625") / 2, "cup": F("236.5882365"), "pt": F("473.176473"), "qt": F("946.352946"),
    "gal": F("3785.411784"),
}
GRAMS = {"g": F(1), "kg": F(1000), "oz": F("28.349523125"), "lb": F("453.59237")}
MILLIMETRES = {"mm": F(1), "cm": F(10), "in": F("25.4")}
ICE = F("0.917")
MELTED = F("0.9982")
PI = F("3.14159265358979323846264338328")


def number(text):
    return F(text)


def measured(text, units):
    value, unit = text.split(" ", 1)
    return F(value) * units[unit] if unit in units else None


def volume(text):
    return measured(text, MILLILITRES)


def mass(text):
    return measured(text, GRAMS)


def pieces(text):
    return measured(text, {"ea": F(1)})


class Book:
    def __init__(self, path):
        self.data = json.loads(path.read_text())
        self.name = path.stem
        self.settings = self.data["settings"]
        self.by_id = {
            kind: {record["id"]: record for record in self.data[kind]}
            for kind in ["ingredients", "packagings", "packaging-sets", "containers", "drinks"]
        }

    def setting(self, name, default="0"):
        return F(self.settings.get(name, default))

    # What is poured.

    def fill(self, container):
        brimful = container["brimful"]
        radii = None
        if isinstance(brimful, str):
            full = volume(brimful)
        elif "poured" in brimful:
            full = volume(brimful["poured"][-1]["volume"])
        else:
            base, rim, height = (measured(brimful["tapered"][it], MILLIMETRES) for it in ["base", "rim", "height"])
            radii = (base / 2, rim / 2, height)
            full = frustum(*radii) / 1000
        headspace = container["headspace"]
        if "volume" in headspace:
            return full - volume(headspace["volume"])
        if "share" in headspace:
            return full * (1 - F(headspace["share"]))
        base, rim, height = radii
        left = height - measured(headspace["height"], MILLIMETRES)
        return frustum(base, base + (rim - base) * left / height, left) / 1000

    # A line as written: its volume in the drink and its mass there.

    def written(self, line):
        amount, ingredient = line["amount"], self.by_id["ingredients"][line["ingredient"]]
        ice = line.get("ice")
        density = F(ingredient["juice-density"] if line["stage"] == "pressed" else ingredient.get("density", 0))
        if ice:
            scoop = volume(amount)
            weight = scoop * F(ice.get("packing", "0.6")) * ICE if scoop is not None else mass(amount)
            melted = F(ice.get("melted", 0)) if ice["place"] == "blended-in" else F(0)
            return weight * (melted / MELTED + (1 - melted) / ICE), weight
        if volume(amount) is not None:
            return volume(amount), volume(amount) * density
        weight = mass(amount)
        if weight is None:
            weight = pieces(amount) * F(ingredient["piece-weight"])
            if line["stage"] == "trimmed":
                weight *= F(ingredient["trim-yield"])
        return weight / density, weight

    # How many times each line is taken at a fill.

    def times(self, drink, fill):
        lines = drink["lines"]
        air = 1 + F(drink.get("air", 0))
        whole = [self.written(line) for line in lines]
        in_glass = [is_in_glass(line) for line in lines]
        taken = [F(1)] * len(lines)
        room = [space * (1 if glass else air) for (space, _), glass in zip(whole, in_glass)]
        floating = [place for place, line in enumerate(lines) if line.get("ice", {}).get("place") == "floating"]
        for _ in range(60 if floating else 1):
            taken = solve(lines, room, fill)
            poured = [at for at in range(len(lines)) if not (lines[at].get("ice") and in_glass[at])]
            weight = sum(taken[at] * whole[at][1] for at in poured)
            density = weight / sum(taken[at] * room[at] for at in poured)
            density = round(density, 20)
            for at in floating:
                room[at] = whole[at][1] / density
        of_ice = sum(taken[at] * room[at] for at in range(len(lines)) if lines[at].get("ice") and in_glass[at])
        return taken, in_glass, fill - of_ice

    # What it costs.

    def price_of(self, pack):
        at_a_time = F(pack.get("at-a-time", 1))
        reached = [tier for tier in pack.get("tiers", []) if F(tier["from"]) <= at_a_time]
        price = max(reached, key=lambda tier: F(tier["from"]))["price"] if reached else pack["price"]
        return F(price) + F(pack.get("surcharge", 0))

    def ingredient_cost(self, line):
        """Of the line as written."""
        ingredient = self.by_id["ingredients"][line["ingredient"]]
        pack = ingredient["packs"][0]
        contents, price = pack["contents"], self.price_of(pack)
        trim = F(ingredient["trim-yield"])
        if pieces(line["amount"]) is not None:
            bought = pieces(line["amount"]) * F(ingredient["piece-weight"])
        else:
            _, bought = self.written(line)
            if line["stage"] == "pressed":
                bought /= F(ingredient["press-yield"]) * trim
            elif line["stage"] == "trimmed":
                bought /= trim
            elif line["stage"] == "soaked-or-brewed":
                bought /= F(ingredient["soak-yield"]) * trim
        if mass(contents) is not None:
            return price * bought / mass(contents)
        if pieces(contents) is not None:
            return price * bought / (pieces(contents) * F(ingredient["piece-weight"]))
        return price * bought / (volume(contents) * F(ingredient["density"]))

    def packaging_cost(self, container):
        uses = list(container["set"])
        for shared in container.get("shared", []):
            uses += self.by_id["packaging-sets"][shared]["uses"]
        total = F(0)
        for use in uses:
            pack = self.by_id["packagings"][use["packaging"]]["packs"][0]
            total += F(use["count"]) * self.price_of(pack) / pieces(pack["contents"])
        return total

    def sold_weekly(self):
        return sum(F(offer.get("weekly", 0)) for offer in self.data["offers"])

    def paid(self):
        reductions = self.settings.get("reductions", {})
        marked_down = F(reductions.get("marked-down", 0)) * (1 - F(reductions.get("marked-down-to", 1)))
        return (1 - F(reductions.get("discounts", 0))) * (1 - marked_down)

    def offer(self, offer, price=None):
        """What it takes and leaves, of one drink."""
        drink = self.by_id["drinks"][offer["drink"]]
        container = self.by_id["containers"][offer["container"]]
        settings = self.settings
        taken, in_glass, liquid = self.times(drink, self.fill(container))
        loss = 1 - F(drink.get("process-loss", 0))
        ingredients = sum(
            self.ingredient_cost(line) * times / (1 if glass else loss)
            for line, times, glass in zip(drink["lines"], taken, in_glass)
        )
        goods = ingredients + self.packaging_cost(container) + F(drink.get("toll", 0))
        work = drink.get("labour", {})
        batch = F(work.get("per-batch", 0))
        share = liquid / volume(work["batch-volume"]) if "batch-volume" in work else 1 / F(work.get("batch", 1))
        seconds = F(work.get("per-drink", 0)) + F(work.get("per-litre", 0)) * liquid / 1000 + batch * share
        labour = seconds * self.setting("wage") / 3600
        wasted = (1 - F(drink.get("unsold", settings.get("unsold", 0)))) * (
            1 - F(settings.get("reductions", {}).get("free", 0))
        )
        assert settings["overhead-per"] == "week"
        overhead = self.setting("overhead") / self.sold_weekly()
        price = F(offer["price"]) if price is None else price
        by_kind = {rate["kind"]: rate["rate"] for rate in settings.get("tax-by-kind", [])}
        tax = 1 + F(drink.get("tax-rate", by_kind.get(drink["kind"], settings["tax"]["rate"])))
        without_tax = price / tax if settings["tax"]["place"] == "in-the-price" else price
        revenue = without_tax * self.paid()
        fee = settings["payment-fee"]
        deposit = F(container.get("deposit", 0)) * (tax if settings.get("deposit-taxed") else 1)
        fees = F(fee.get("share", 0)) * (revenue * tax + deposit) + F(fee.get("fixed", 0)) / F(fee.get("drinks", 1))
        commission = tax if settings.get("commission-on") == "with-tax" else 1
        fees += self.setting("commission") * revenue * commission
        covered = goods + (labour if settings["covers"] == "goods-and-labour" else 0)
        changes = revenue - fees - (goods + labour) / wasted
        return {
            "seconds": seconds,
            "cost": (goods + labour) / wasted + overhead,
            "margin": (revenue - covered / wasted) / revenue,
            "changes": changes,
            "contribution": changes - overhead,
            "revenue": revenue,
            "labour": labour,
            "goods": goods,
            "overhead": overhead,
            "target": F(drink.get("target", settings["target"])),
        }


def frustum(base, rim, height):
    return PI * height / 3 * (base * base + base * rim + rim * rim)


def is_in_glass(line):
    return line.get("in-glass", False) or line.get("ice", {}).get("place", "blended-in") != "blended-in"


def solve(lines, room, fill):
    """Fixed lines once, steps whole, and the top-up, or else the lines in proportion, for what is left."""
    fixed = sum(space for line, space in zip(lines, room) if line["scaling"] == "fixed")
    factor = (fill - fixed) / (sum(room) - fixed)
    taken = []
    for line in lines:
        if isinstance(line["scaling"], dict):
            written, step = F(line["amount"].split(" ")[0]), F(line["scaling"]["stepped"].split(" ")[0])
            assert line["amount"].split(" ")[1:] == line["scaling"]["stepped"].split(" ")[1:]
            taken.append((written * factor / step + F(1, 2)).__floor__() * step / written)
        else:
            taken.append(F(1) if line["scaling"] == "fixed" else factor)
    for way in ["top-up", "in-proportion"]:
        rest = [at for at, line in enumerate(lines) if line["scaling"] == way]
        if rest:
            others = sum(taken[at] * room[at] for at in range(len(lines)) if at not in rest)
            for at in rest:
                taken[at] = (fill - others) / sum(room[at] for at in rest)
            break
    return taken


def drops():
    """For the pressed drinks of the first book, in percent: how many must stay if the 8, 12, 16 or 32 oz bottle is
    dropped, and if all but the 16 oz are. Each buyer takes the nearest size in which the drink is still sold: that
    with the least ratio of volumes poured."""
    book = Book(BOOKS / "marrowgate-juice-hall.json")
    pressed = [drink["id"] for drink in book.data["drinks"] if drink["kind"] == "pressed"]
    offers = {(o["drink"], o["container"]): o for o in book.data["offers"] if o["drink"] in pressed and "price" in o}
    poured = {it: book.fill(book.by_id["containers"][it]) for it in "2345"}
    for counted in ["changes", "contribution"]:
        shares = []
        for gone in [["2"], ["3"], ["4"], ["5"], ["2", "3", "5"]]:
            lost = brought = F(0)
            for (drink, size), offer in offers.items():
                stays = [other for (it, other) in offers if it == drink and other not in gone]
                if size not in gone:
                    continue
                ratio = lambda other: max(poured[size], poured[other]) / min(poured[size], poured[other])
                nearest = offers[(drink, min(stays, key=ratio))]
                lost += F(offer["weekly"]) * book.offer(offer)[counted]
                brought += F(offer["weekly"]) * book.offer(nearest)[counted]
            shares.append(f"{float(100 * lost / brought):.4f} ({float(lost):.2f} of {float(brought):.2f})")
        print(counted, *shares, sep="\n  ")


def main():
    if sys.argv[1:] == ["drops"]:
        drops()
        return
    print("book;drink;container;cost;margin;changes;contribution")
    for path in sorted(BOOKS.glob("*.json")):
        book = Book(path)
        for offer in book.data["offers"]:
            if "price" not in offer:
                continue
            one = book.offer(offer)
            figures = ";".join(f"{float(one[it]):.9f}" for it in ["cost", "margin", "changes", "contribution"])
            print(f"{book.name};{offer['drink']};{offer['container']};{figures}")


if __name__ == "__main__":
    main()
