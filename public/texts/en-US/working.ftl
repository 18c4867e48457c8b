# The math behind a number: what each step is, and how its figure follows from those before.

## Around the math

the-math = The math
back = Back
print = Print
this-size = This size
about = See the math behind each number, step by step. Steps with their own math follow further down.
no-number-yet = This number is not ready yet.

## Where a figure is from

entered-in-book = Entered in Book.
entered-in = Entered in { $name }.
starting-figure-of = Starting figure of { $name }.
own-math = See its own math.
whole-amount = All of the amount.
minutes-in-an-hour = An hour has 60 minutes.
seconds-in-a-minute = A minute has 60 seconds.
milliliters-in-a-liter = A liter has 1000 milliliters.
ounces-in-a-gallon = A gallon has 128 fl oz.
weeks-in-a-year = A year has 52 weeks.
ice-by-source = Ice at 0 °C weighs { $density } (IAPWS R10-06).
melted-by-source = Water at 20 °C weighs { $density } (IAPWS R6-95).
shown-per-this = The cost or price is shown for this amount.
typed-here = Typed here only. Your book does not keep this price.
tolerable-error = The tolerable negative error for this size (76/211/EEC, Annex I, 2.4).
least-spreads = At least three spreads. About 1 package in 740 would be lower.
water-by-source = Water at that temperature (Tanaka and others, Metrologia 38, 2001).
quantile = In a normal distribution, { $share } lie more than this many spreads below the average.
up-to-fullest = In a normal distribution, about 1 package in 740 is fuller.

## Sums

named-figure = { $name } { $figure }
equation = { $terms } = { $result }.
equation-rounded = { $terms } = { $result }. Each figure is rounded.
only = { $name } only: { $result }.
nothing-entered = Nothing entered: { $result }.

## What is bought

stage-of = { $name }, { $stage }
in-the-recipe = { $goods }, in the recipe
in-the-drink = { $goods }, in the drink
amount-needed = { $goods }, amount needed
piece-size = { $goods }, piece size
weight = { $goods }, weight
volume = { $goods }, volume
volume-with-air = { $goods }, volume with air
cost-of = { $goods }, cost
per-drink = { $goods }, per drink
whole-pieces = { $goods }, whole pieces
pieces-before-rounding = { $goods }, pieces before rounding
as-purchased = { $goods }, as purchased
as-purchased-by-weight = { $goods }, as purchased, by weight
trim-yield = { $goods }, trim yield
juice-yield = { $goods }, juice yield
season-trim-yield = { $goods }, trim yield this season
season-juice-yield = { $goods }, juice yield this season
frozen-share = { $goods }, still frozen
melted-share = { $goods }, melted
frozen-volume = { $goods }, volume still frozen
melted-volume = { $goods }, volume melted
soaked-or-brewed-weight = { $goods }, soaked or brewed weight
density = { $goods }, density
juice-density = { $goods }, juice density
cup-weight = { $goods }, weight per cup
juice-cup-weight = { $goods }, juice weight per cup
piece-weight = { $goods }, weight per piece
solid-ice-per-scoop = { $goods }, solid ice per scoop
pack-size = { $goods }, pack size
case-price = { $goods }, case price
case-price-from = { $goods }, case price from { $packs } at a time
packs-per-order = { $goods }, packs per order
delivery-or-deposit = { $goods }, delivery or deposit
paid-per-pack = { $goods }, paid per pack
piece-cost = { $goods }, cost per piece

## A container and its fill

brimful-capacity = Brimful capacity
headspace = Headspace
headspace-share = Headspace share
headspace-height = Headspace height
base-diameter = Inside base width
rim-diameter = Inside rim width
inside-height = Inside height
reading-height = Reading height
reading-volume = Reading volume
recipe-multiple = Recipe multiple
multiple-before-whole = Recipe multiple before whole pieces
fixed-amounts = Fixed amounts
left-to-fill = Left to fill
recipe-volume = Recipe volume
air = Air from blending
with-air = Volume with air
liquid-density = Liquid density
liquid-cup-weight = Liquid weight per cup
liquid-weight = Liquid weight
liquid-volume = Liquid volume
press-or-pour-loss = Press or pour loss
kept-after-loss = Kept after loss

## Labor

total-labor = Total labor
labor-per-drink = Labor per drink
labor-per-liter = Labor per liter
labor-per-gallon = Labor per gallon
labor-for-fill = Labor for fill
labor-per-batch = Labor per batch
drinks-per-batch = Drinks per batch
fill-without-ice = Fill without ice
batch-labor-share = Batch labor share
hourly-wage = Hourly wage

## Costs

waste-share = Waste share
sold-share = Sold share
cost-before-waste = Cost before waste
waste = Waste
given-away-share = Given-away share
paid-share = Paid share
cost-before-free = Cost before free
overhead-per-week = Overhead per week
ingredients-and-packaging = Ingredients and packaging
ingredients-packaging-labor = Ingredients, packaging, labor
card-fee-share = Card fee share
card-fee-with-tax = Taxed card fee
transaction-fee-per-drink = Transaction fee share
drinks-per-payment = Drinks per payment
deposit-card-fee = Deposit card fee
commission-with-tax = Taxed commission
card-fee = Card fee
commission-share = Commission share
commission = Delivery app commission
fees = Fees
costs-to-cover = Costs to cover
share-for-costs = Share for costs

## Prices

price-and-tax = Price and tax
target-before-tax = Target before tax
exact-target-price = Exact target price
menu-price = Menu price
price-before-tax = Price before tax
customer-pays = Customer pays
deposit-with-tax = Deposit with tax
average-payment = Average payment
average-with-tax = Average with tax
average-price = Average before tax
paid-on-average = Paid on average
after-discounts = After discounts
after-markdowns = After markdowns
lost-to-markdowns = Lost to markdowns
markdown = Markdown
margin-amount = Margin amount
price-per-volume = Price per volume
cost-per-volume = Cost per volume
profit-per-volume = Profit per volume
profit-per-labor-minute = Profit per labor minute
versus-smallest-size = Versus smallest size
extra-price = Extra price
extra-cost = Extra cost
extra-profit = Extra profit
extra-before-tax = Extra before tax
share-of-extra-kept = Extra price kept
highest-drink-cost = Drink cost limit
before-fee-per-transaction = Before transaction fee
highest-cost-made = Limit before waste
highest-cost-before-overhead = Limit before overhead
highest-ingredient-cost = Ingredient cost limit

## Packages

labeled-size = Labeled size
labeled-size-measured = Adjusted labeled size
allowed-variation = Allowed variation
tolerance-measured = Adjusted allowed variation
water-by-law = Water by law
water-measured = Water, measured
packages-per-batch = Packages per batch
root-of-packages = Square root
added-for-average = Added for average
average-for-batch = Average for batch
lowest-allowed = Lowest allowed
added-for-spread = Added for spread
average-for-packages = Average for packages
fill-to = Fill to
giveaway = Giveaway per package
giveaway-cost = Giveaway cost
giveaway-cost-per-year = Yearly giveaway cost
packages-per-year = Packages per year
fill-variation = Fill variation
fullest-package = Fullest package
room-for-closure = Room for cap
room-in-container = Room in container
net-contents = Net contents
net-volume = Net volume
average-weighed = Average weighed
standard-deviation = Standard deviation
drink-weight = Drink weight
drink-density = Drink density
drink-cup-weight = Drink weight per cup

## What is the same everywhere

whole = The whole
hour = An hour
minute = A minute
liter = A liter
gallon = A gallon
ice-density = Ice density
melted-density = Density of melted ice
shown-for = Shown for
spreads = Number of spreads
year = Weeks per year

## How a cost of what is bought follows

cost-from-pack = { $bought } from a { $pack } pack at { $price } = { $result }.
paid-by-piece = { $paid } ÷ { $pack } = { $result } each.
price-by-order = When you buy { $packs } at a time, the price is { $result } each.
by-juice-yield = { $juice } of juice ÷ { $share } juice yield = { $result } as purchased.
by-juice-and-trim-yield = { $juice } of juice ÷ { $share } juice yield ÷ { $trim } trim yield = { $result } as purchased.
by-soaked-weight = { $weight } ÷ { $share } soaked or brewed weight = { $result } as purchased.
by-soaked-weight-and-trim-yield = { $weight } ÷ { $share } soaked or brewed weight ÷ { $trim } trim yield = { $result } as purchased.
by-trim-yield = { $trimmed } ÷ { $trim } trim yield = { $result } as purchased.
purchased-by-piece = { $amount } at { $piece } per piece = { $result } as purchased.
purchased-by-density = { $amount } at { $density } = { $result } as purchased.

## How an amount of a recipe follows

juice-at-density = { $juice } of juice at { $density } = { $result }.
pieces-by-weight = { $pieces } at { $piece } per piece = { $result }.
pieces-by-weight-and-yield = { $pieces } at { $piece } per piece × { $share } yield = { $result }.
pieces-by-weight-and-yields = { $pieces } at { $piece } per piece × { $trim } trim yield × { $share } yield = { $result }.
scoop-of-ice = { $scoop } of cubes × { $solid } solid ice × { $density } = { $result }.
at-density = { $amount } at { $density } = { $result }.
share-at-density = { $weight } × { $share } at { $density } = { $result }.
with-air-blended-in = { $volume } × { $air } with air = { $result }.
whole-pieces-that-fill = Whole pieces that fill the drink with all the rest: { $result }.
fills-the-rest = The recipe’s { $recipe } fills { $fills }. With { $left } left to fill, this takes { $result }.
before-loss = { $drink } in the drink ÷ { $kept } kept after loss = { $result }.
pieces-times-size = { $pieces } × { $size } = { $result }.
recipe-times = { $recipe } in the recipe × { $times } = { $result }.
nearest-whole = { $pieces } to the nearest whole number = { $result }.
pieces-in-size = { $recipe } in the recipe × { $times } ÷ { $size } per piece = { $result }.

## How a fill follows

brimful-less-headspace = { $brimful } brimful − { $headspace } headspace = { $result }.
cup-by-measures = A cup { $base } wide at the base, { $rim } at the rim and { $height } tall = { $result }.
last-pour = The last pour reaches the rim at { $result }.
share-of-brimful = { $brimful } brimful × { $share } = { $result }.
top-of-container = The top { $height } under the rim = { $result }.
fill-by-recipe = { $left } to fill ÷ { $recipe } in the recipe = { $result }.
recipe-that-fills = The recipe × { $result } fills { $fill }.
whole-and-air = { $whole } + { $air } air = { $result }.
weight-by-volume = { $weight } ÷ { $volume } = { $result }.

## How a cost follows

time-at-wage = { $time } at { $wage } per hour = { $result }.
time-for-fill-by-gallon = { $time } per gallon × { $fill } = { $result }.
time-for-fill = { $time } per liter × { $fill } = { $result }.
time-of-batch = { $time } ÷ { $drinks } per batch = { $result } each.
time-of-batch-by-volume = { $time } × { $fill } ÷ { $batch } per batch = { $result } each.
overhead-of-week = { $overhead } per week ÷ { $drinks } drinks sold = { $result } each.
sold-in-week = Usual weekly sales of all sizes, added up: { $result }.
waste-per-drink = { $cost } per drink made × { $waste } waste ÷ { $sold } sold = { $result }.
free-per-drink = { $cost } per drink × { $free } given away ÷ { $paid } paid = { $result }.
fee-on-price-and-tax = { $fee } card fee × { $taxed } price and tax = { $result } of the price.
commission-on-price-and-tax = { $share } commission × { $taxed } price and tax = { $result } of the price.
fee-of-drink = { $fee } per payment ÷ { $drinks } drinks = { $result } each.
fee-on-deposit = { $share } of the { $deposit } deposit = { $result }.
share-of-customer-pays = { $share } of the { $pays } the customer pays = { $result }.
share-of-price = { $share } of the { $price } price before tax = { $result }.

## How a price follows

price-plus-tax = { $whole } + { $tax } tax = { $result }.
costs-by-share = { $costs } to cover ÷ { $share } of the price = { $result }.
costs-by-share-and-paid = { $costs } to cover ÷ { $share } of the price ÷ { $paid } paid on average = { $result }.
target-times-tax = { $price } before tax × { $taxed } = { $result }.
no-tax-inside = No tax is inside the menu price: { $result }.
rounded-up = { $price } rounded up to your price endings = { $result }.
menu-price-without-tax = { $price } with tax ÷ { $taxed } = { $result } before tax.
menu-price-times-tax = { $price } menu price × { $taxed } = { $result }.
deposit-times-tax = { $deposit } deposit × { $taxed } = { $result }.
average-times-tax = { $price } before tax × { $taxed } = { $result } on average.
price-times-paid = { $price } before tax × { $paid } paid on average = { $result }.
discounts-and-markdowns = { $discounts } after discounts × { $markdowns } after markdowns = { $result }.
markdowns-of-drinks = { $drinks } of drinks × { $cut } off = { $result }.
nothing-added = Nothing is added to the menu price: { $result }.
margin-by-price = { $margin } margin ÷ { $price } before tax = { $result }.
per-volume = { $money } for { $fill } = { $result } for { $unit }.
per-labor-minute = { $profit } for { $time } of labor = { $result } per minute.
against-smallest = { $price } ÷ { $smallest } for the smallest size = { $result }.
more-than-smaller = { $large } − { $small } for the next smaller size = { $result }.
share-of-price-for-costs = { $price } before tax × { $share } for costs = { $result }.
cost-per-drink-made = { $cost } per drink sold × { $sold } sold = { $result } per drink made.
cost-per-drink-paid = { $cost } per drink sold × { $paid } paid = { $result } per drink made.
cost-per-drink-made-and-paid = { $cost } per drink sold × { $paid } paid × { $sold } sold = { $result } per drink made.
extra-kept = { $profit } more profit ÷ { $price } more before tax = { $result }.

## How a fill target follows

larger-of-averages = The batch needs { $average } on average, and single packages need { $single }. The larger is { $result }.
larger-of-size = The labeled size is { $size }, and single packages need { $single } on average. The larger is { $result }.
size-plus-average = { $size } labeled size + { $more } for the average = { $result }.
labeled-size-only = You entered no packages per batch, so fill to the labeled size: { $result }.
by-water = { $size } × { $law } by law ÷ { $measured } as measured = { $result }.
single-by-root = { $single } for a single package ÷ { $root } = { $result }.
root-of = The square root of { $packages } = { $result }.
size-less-tolerance = { $size } labeled size − { $tolerance } allowed = { $result }.
least-plus-spread = { $least } lowest allowed + { $more } for the spread = { $result }.
spreads-times = { $times } × { $spread } spread = { $result }.
giveaway-in-ingredients = { $cost } of ingredients ÷ { $fill } × { $giveaway } giveaway = { $result }.
giveaway-in-a-year = { $cost } per package × { $packages } per year = { $result }.
weeks-times = { $drinks } per week × { $weeks } weeks = { $result }.
average-of = { $weighings ->
    [one] The average of 1 weighing is { $result }.
   *[other] The average of { $weighings } weighings is { $result }.
}
spread-of = { $weighings ->
    [one] The standard deviation of 1 weighing is { $result }.
   *[other] The standard deviation of { $weighings } weighings is { $result }.
}
