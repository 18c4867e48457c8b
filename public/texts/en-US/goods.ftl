# Ingredients and packaging: packs and their prices, yields, kits, and what a container holds.

## The sides of Buying

quick-price = Prices
price-watch = Price watch
buying-list = Buying list

## An ingredient

ingredient = Ingredient
add-ingredient = Add an ingredient
new-ingredient = New ingredient
remove-ingredient = Remove ingredient
ingredient-name = Ingredient name
ingredient-example = Kale
yields = Yields
yields-about = Weigh your own yields. Published ones are only a start.
trim-is = trim { $share }
juice-is = juice { $share }
soaked-is = soaked { $share }
name-and-label = Name and label
name-and-type = Name and type
used-in-drinks = { $drinks ->
    [one] 1 drink
   *[other] { $drinks } drinks
}
used-in-sizes = { $sizes ->
    [one] 1 size
   *[other] { $sizes } sizes
}
used-in-places = { $places ->
    [one] 1 place
   *[other] { $places } places
}
prices-known = { $prices ->
    [one] 1 price
   *[other] { $prices } prices
}
pack-bought-now = { $pack }: { $price }
trim-yield = Trim yield
trim-yield-example = no trimming
juice-yield = Juice yield
juice-yield-example = not pressed
soaked-weight = Soaked or brewed weight
soaked-weight-example = not soaked
soaked-weight-note = Often over { $whole }.
yield-log = Yield log
start-yield-log = Start yield log
yield-log-of = Yield log: { $weighings ->
    [one] 1 weighing
   *[other] { $weighings } weighings
}
weight-and-volume = Weight and volume
weight-and-volume-about = Needed when you buy by weight and use by volume, or the reverse.
juice-density = Juice density
juice-density-note = Most juices: { $low } to { $high }.
drink-density = Density in drinks
juice-cup-weight = Juice weight per cup
juice-cup-weight-note = One cup of most juices weighs { $low } to { $high } oz. You can also type g/mL.
drink-cup-weight = Weight per cup
drink-cup-weight-note = As liquid or purée, not whole pieces. One cup of most fruit weighs { $low } to { $high } oz.
# Of one US cup: “8.75 oz per cup”.
weight-per-cup = { $weight } per cup
drink-density-note = As liquid or purée, not whole pieces. Most fruit: { $low } to { $high }.
piece-weight = Weight per piece
piece-weight-note = As purchased, before trimming.

## What a label says of an ingredient

on-labels-about = Packages with raw juice, purée, fruit or vegetables need a warning. Frozen counts as raw.
on-labels-about-european = Raw juice, purée, fruit or vegetables in a drink bring cautions. Frozen counts as raw.
kind-of-ingredient = Ingredient type
name-on-labels = Name on labels
name-on-labels-example = apple
name-on-labels-note = Use the common name. Pressed apple is listed as apple juice.

## Packaging

add-packaging = Add packaging
new-packaging = New packaging
remove-packaging = Remove packaging
packaging-name = Packaging name
packaging-example = Paper straw
packaging-type = Packaging type
choose-packaging = Choose packaging
name-of-new-packaging = New packaging name
per-drink = { $name } per drink
new-packaging-per-drink = New packaging per drink
amount-per-drink = Amount per drink

## Packaging kits

packaging-kits = Packaging kits
kits-of-container = One lid, straw and sleeve for every cup: add them once, as a kit.
all-kits = Change a kit once. Every container that uses the kit changes too.
choose-kit = Choose a kit
new-kit = New kit
add-kit = Add a kit
remove-kit = Remove kit
kit-name = Kit name
kit-example = All cups
in-this-kit = In this kit
in-this-kit-about = Amounts are for one drink.
cost-per-drink = Cost per drink
items-and-cost = { $items ->
    [one] 1 item, { $cost }
   *[other] { $items } items, { $cost }
}
no-pack-yet = no pack yet

## Packs

packs = Packs
add-pack = Add a pack
add-case-price = Add case price
add-case-price-of = Add case price of { $name }
remove-pack = Remove pack
new-pack = New pack
pack-size = Pack size
case-price = Case price
delivery-or-deposit = Delivery or deposit
supplier = Supplier
counts-as-free = At this price, the pack counts as free.
own-ice = Your own ice: no cost
own-water = Tap water: no cost
current-pack = Current pack
buy-this-pack = Buy this pack
switch-packs = Switch packs
if-you-switch = If you switch
volume-price = Volume price
add-volume-price = Add volume pricing
remove-volume-price = Remove volume price
packs-per-order = Packs per order
price-per-order = At { $packs ->
    [one] 1 pack per order, you pay { $price } per pack.
   *[other] { $packs } packs per order, you pay { $price } per pack.
}
minimum-packs = Minimum packs
minimum-packs-of = Volume price { $number }: minimum packs
case-price-of = Volume price { $number }: price per pack
price-per-pack = Price per pack
volume-price-of = volume price { $number }

## What a usable amount costs

per-as-purchased = Per { $amount } as purchased
per-trimmed = Per { $amount } trimmed
per-of-juice = Per { $amount } of juice
per-soaked = Per { $amount } soaked or brewed
per-piece = Per piece
cost-as-purchased = per { $amount } as purchased
cost-trimmed = per { $amount } trimmed
cost-of-juice = per { $amount } of juice
cost-soaked = per { $amount } soaked or brewed
cost-of-piece = per piece

## Packs side by side

packs-compared = Packs compared
above-lowest = Above lowest
quote-date = Quote date
current-pack-tag = current pack
packs-compared-about = Cost is case price plus delivery or deposit, divided by the usable amount.
pack-of-supplier = { $supplier }, { $size }
cannot-compare = These packs cannot be compared yet.
current-costs-least = No other pack costs less than your current pack.
current-cannot-compare = Your current pack cannot be compared with the others.
other-costs-less = { $pack } costs { $less } less than your current pack: { $lowest } instead of { $cost }.
other-is-lower = { $pack } costs less than your current pack: { $lowest } instead of { $cost }.
lowest = lowest
more-by = +{ $share }
free = free
not-free = not free

## What a price moves

below-target-now = Now below target: { $names }.
below-target-now-and = Now below target: { $names } and { $more ->
    [one] 1 more.
   *[other] { $more } more.
}
lowest-margin = The lowest of these: { $name } at { $margin }.
lowest-drink = Lowest: { $name }.
change-price = Change the price from { $price } to { $suggested } to reach the target.
no-price-reaches = No menu price alone reaches the target.
another-way = Another way: { $way }
drinks-affected = { $sizes ->
    [one] 1 size would be affected.
   *[other] { $sizes } sizes would be affected.
}
none-would-drop = None would drop below target.
would-drop = Would drop below target: { $names }.
would-drop-and = Would drop below target: { $names } and { $more ->
    [one] 1 more.
   *[other] { $more } more.
}
would-come-back = Would be back on target: { $names }.
would-come-back-and = Would be back on target: { $names } and { $more ->
    [one] 1 more.
   *[other] { $more } more.
}

## When a price was quoted

checked-today = checked today
quoted-on = quoted { $day }
needs-new-price = needs a new price: quoted { $day }
no-date = no date
day-taken = You have a price from { $day }. Choose another date, or remove that price first.
day-too-early = Your earlier price is from { $day }. Choose a later date, or remove that price first.
day-too-late = Your current price is from { $day }. Choose an earlier date.
quoted-once = Quoted once: { $price } on { $day }.
always-quoted = Always { $price }, first quoted { $first }, last { $last }.
price-moved = From { $first } on { $from } to { $last } on { $on }.
price-moved-by = From { $first } on { $from } to { $last } on { $on }, { $change }.
price-range = Lowest { $low } on { $lowday }, highest { $high } on { $highday }.
days-of-year = Day, { $year }
days-of-years = Day, { $from } to { $last }

## What a container holds, and how that is known

capacity = Capacity
how-measured = How measured
weigh-water = Fill the container to the rim with water and weigh the water. One gram is one milliliter.
measure-cup = For a round cup with straight sides. Measure inside: the base, the rim and the height.
measure-bottle = For a bottle with shoulders. Add known amounts of water and measure each height from the inside base. End at the rim.
brimful-capacity = Brimful capacity
base-width = Inside base width
rim-width = Inside rim width
inside-height = Inside height
readings-about = Height from the inside base, and the volume up to that height.
new-height = New height
new-volume = New volume
add-reading = Add a reading
remove-reading = Remove reading
reading-incomplete = Type both the height and the volume.
reading-height = Reading height
reading-volume = Reading volume
height-of-reading = Height { $number }
volume-of-reading = Volume { $number }
reading = reading { $number }
height-and-volume = Height and volume
height-and-volume-about = Try numbers here. The container stays the same.
volume = Volume
height = Height
height-of-volume = Stands { $height } high.
above-rim = That is above the rim. Brimful capacity is { $volume }.
volume-of-height = The volume is { $volume }.

## The yield log

weigh-your-own = Weigh your own yields
weigh-your-own-about = Weigh produce as purchased, then trimmed, then the juice. Repeat on a few days. You see your own yields and how steady they are.
new-weighing = New weighing
correct-weighing = Correct weighing
save-weighing = Save weighing
add-weighing = Add a weighing
remove-weighing = Remove weighing
weight-as-purchased = Weight as purchased
trimmed-weight = Trimmed weight
juice-weight = Juice
weighed-on = Weighed on
leave-blank = Leave blank what you did not weigh. Type juice by weight or volume.
weight-needed = Type the weight as purchased, such as { $example }.
day-needed = Choose the day you weighed.
measured-yields = Measured yields
no-yield-yet = No yield yet. Weigh the trimmed produce or the juice.
average = Average
likely-range = Likely range
use-measured-yields = Use measured yields
use-yields-about = Yields are rounded to a tenth of a percent. Nothing changes until you press the button.
yields-to-choose = Choose yields
choose-yields = Choose the yields you want.
use-yields = Use these yields
yields-in-book = Your book already has these yields.
use-trim-yield = Trim yield: { $new }, before { $old }
use-first-trim-yield = Trim yield: { $new }, none before
use-juice-yield = Juice yield: { $new }, before { $old }
use-first-juice-yield = Juice yield: { $new }, none before
all-weighings = All weighings
weighings-newest-first = Weighings, newest first
unusual = unusual
unusual-ones = Unusual
correct = Correct
correct-day = Correct { $day }
days-since = Days since { $day }
percent = Percent
yields-drawn = Each point is one weighing. The scale may not start at zero.
juice-density-needed = Type the juice by weight, or first type its density on the ingredient’s page.
juice-cup-weight-needed = Type the juice by weight, or first type its weight per cup on the ingredient’s page.
juice-is-no-piece = Type juice by weight or volume, such as 5 lb or 2 L.
average-of = { $average } from { $weighings ->
    [one] 1 weighing
   *[other] { $weighings } weighings
}
range-unknown = unknown until you weigh again
range-none = none: all weighings match
range = { $low } to { $high }
single-weighing = One weighing shows no spread. Weigh again.
average-math = Average: { $shares }, divided by { $count }, is { $average }.
average-math-and = Average: { $shares } and { $more } more, divided by { $count }, is { $average }.
as-one-batch = As one batch, where large batches count for more, the yield is { $together }.
spread-math = Weighings lie about { $spread } from the average (standard deviation).
range-math = Student’s t with { $degrees ->
    [one] 1 degree of freedom, times that over the square root of { $count }, is { $reach }.
   *[other] { $degrees } degrees of freedom, times that over the square root of { $count }, is { $reach }.
}
range-means = The likely range goes that far to each side. In 95 of 100 cases, such a range includes the true average.
range-ends = No yield is under { $none } or over { $whole }, so the range ends there. Weigh more often.
unusual-weighing = The weighing of { $day } looks unusual. Its yield of { $share } is { $distance } standard deviations from the average.
unusual-limit = For { $count } weighings, the limit is { $limit } in 95 of 100 cases (Grubbs’ test).
unusual-advice = Check for a typing slip, another press or other fruit. Weigh again, then correct the entry if needed. It counts until you change it.
weighed-bought = { $bought } as purchased
weighed-trimmed = { $bought } as purchased, { $trimmed } trimmed
weighed-juice = { $bought } as purchased, { $juice } of juice
weighed-all = { $bought } as purchased, { $trimmed } trimmed, { $juice } of juice
only-purchased = weighed as purchased only
trimmed-not-weighed = trimmed weight missing
counts-as-weight = Counts as { $weight } of juice, by density.

## Deposits, seasons and starting figures
deposit = Deposit
season-trim-yield = Seasonal trim yield
season-juice-yield = Seasonal juice yield
starting-figure = Starting figure
deposit-about = Charged beside the price and paid back with the empty container.
season = Season
season-starts = Season starts
season-ends = Season ends
no-season = no season
season-about = Yields differ for part of the year? Enter those months and their yields.
blank-uses-year = Leave blank to use { $share }, as in other months.
season-in-force = { $month } is in season. Yields in force: { $yields }.
season-not-in-force = { $month } is out of season. Yields in force: { $yields }.
season-months = { $from } to { $to }
