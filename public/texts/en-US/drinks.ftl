# Drinks: a drink, its recipe, its sizes, what a size costs and what to charge.

## A drink

new-drink = New drink
example-drink = Orchard Green
drink-name = Drink name
drink-type = Drink type
name-and-type = Name and type
remove-drink = Remove drink
sizes-you-sell = Sizes you sell
add-size = Add a size
choose-container = Choose a container
no-containers = You have no containers yet. To sell a size, { $link } first.
add-container = add a container
allergens-about = These come from the ingredients. Edit them in Buying.
compare-sizes = Compare sizes
own-target = Target of this drink: { $own }. Your book’s target: { $book }.

## Making a drink

making = Making this drink
making-about = Labor is paid at the wage in Book. Leave blank what you do not use.
blank-uses = Leave blank to use { $share } from Book.
press-or-pour-loss = Press or pour loss
air = Air from blending
air-about = Measure the volume before and after you blend. Enter the gain.
labor-per-drink = Labor per drink
labor-per-liter = Labor per liter
labor-per-gallon = Labor per gallon
minutes-and-seconds = min:sec
time-example = such as { $time }
labor-per-batch = Labor per batch
drinks-per-batch = Drinks per batch
processing-fee = Processing fee
processing-fee-about = Per drink, for HPP or pasteurizing.
waste = Waste

## A recipe

recipe = Recipe
recipe-about = Write the recipe once, for one size. Other sizes follow from that. Use volumes, weights or pieces.
recipe-makes = Recipe makes
recipe-size = Recipe size
ingredients-make = These ingredients make { $volume }.
sizes-follow = Sizes are scaled from these { $volume }: for { $makes }, 1 becomes { $factor }.
set-recipe-size = Set recipe to { $volume }
choose-ingredient = Choose an ingredient
new-ingredient = New ingredient
add-ingredient = Add an ingredient
add-to-recipe = Add to recipe
remove-from-recipe = Remove from recipe
ingredient-name = Ingredient name
name-of-new = Name of new ingredient
example-ingredient = Kale
recipe-amount = Recipe amount
amount-of = Amount of { $name }
amount-of-new = Amount of new ingredient
prep = Ingredient prep
prep-of = Prep of { $name }
prep-of-new = Prep of new ingredient
scaling = Recipe scaling
scaling-of = { $name } in other sizes
scaling-of-new = New ingredient in other sizes
piece-size = Piece size
piece-size-of = Piece size of { $name }
ice-packing = Solid ice per scoop
ice-packing-of = Solid ice per scoop of { $name }
ice-packing-about = Loose cubes leave air gaps. About 54 to 67% of a scoop is solid (Baker and Kudrolli 2010, plastic cubes). Use this as a guide only.
ice-melted = Melted ice
ice-melted-of = Melted share of { $name }
ice-melted-about = Melted ice takes less room. With { $share } melted, this ice takes { $volume } less.
in-glass = Straight into the glass
in-glass-about = Added in the glass, such as soda or a garnish: no process loss.
peel-asked = Did you weigh { $name } with peel? Peel is not drink.
peel-asked-piece = { $name }: this counts the peel as drink.
weighed-with-peel = Weighed with peel
weighed-trimmed = Weighed trimmed
count-trimmed = Count it trimmed
density-of = Density of { $name } in drinks
cup-weight-of = Weight per cup of { $name }
juice-density-of = Juice density of { $name }
juice-cup-weight-of = Juice weight per cup of { $name }
piece-weight-of = Weight per piece of { $name }
use-starting-figure = Use { $figure } for now
use-as-water = Use water’s { $figure } for now
starting-figure-assumed = { $figure } is assumed, not weighed. Weigh yours when you can.
counts-as-puree = A volume counts as puree, { $figure }. Weigh yours when you can.
takes-up-rest = { $names } takes up what whole pieces leave.
take-up-rest = { $names } take up what whole pieces leave.
all-take-up-rest = Ingredients that scale take up what whole pieces leave.
fill-in = Fill it in

## What an amount in a recipe means

as-purchased = as purchased
trimmed = trimmed
pressed = pressed
soaked-or-brewed = soaked or brewed
ice-blended-in = blended in
ice-under-line = under the line
ice-floating = floating
use-ice-blended-in = ice, blended in
use-ice-under-line = ice, under the line
use-ice-floating = ice, floating

## How an amount follows the size

scale-with-size = scale with size
fixed-amount = fixed amount
by-the-piece = by the piece
fill-to-the-line = fill to the line

## Amounts at a size

ingredient = Ingredient
in-the-drink = In the drink
amount-needed = Amount needed
same-amount = same
air-row = Air
air-row-about = from blending
try-a-size = Try another size
size-too-small = The size must be more than zero. Type a size, such as { $example }.
glass = Container drawn to scale, with its fill line

## A size

back-to-drink = Drink
recipe-card = Recipe card
label-and-fill = Label and fill
remove-size = Remove size
menu-price = Menu price
not-known = not known
suggested = Suggested price: { $price }, for a { $margin } margin. Exact target price: { $exact }.
lowest-on-target = Lowest price on target: { $price }, for a { $margin } margin. Exact target price: { $exact }.
set-price = Set price to { $price }
target-and-suggested = Target { $target }. { $price } gives { $margin }.
target-is = Target { $target }.
loses-money = Loses money after all costs.
margin-after-discounts = Margin is on { $price }, after discounts.
margin-after-tax = Margin is on { $price }, after discounts and tax.
recipe-lines = { $lines ->
    [one] 1 line
   *[other] { $lines } lines
}
edit-recipe = Edit recipe
label = Label
fill-from = Fill { $fill }: brimful capacity { $brimful } minus { $headspace } headspace.
under-labeled-size = That is { $short } less than the labeled size.
edit-fill = Edit fill
part = Part
share = Share

## Where a price goes, from the top down

price-goes = Where the price goes
at-suggested-price = At the suggested price, { $price }.
card-fee = Card fee
fees = Fees
discounts-and-markdowns = Discounts and markdowns
app-commission = Delivery app commission
labor-waste = Labor waste
overhead-waste = Overhead waste
labor-given-away = Labor given away
overhead-given-away = Overhead given away
profit-that-changes = Profit before overhead
rows-rounded = Each row is rounded; totals are exact.
customer-pays-with-tax = The customer pays { $price } with sales tax.
customer-pays-with-tax-european = The customer pays { $price } with VAT or tax.
no-wage-yet = Labor is not counted yet: no wage.
no-time-yet = Labor counts once you enter time per drink.
no-packaging-yet = Packaging is not counted yet: none listed.
no-waste-yet = Waste is not counted yet: none entered.
no-weekly-yet = Overhead is not counted yet: no weekly sales.
no-card-fee-yet = Card fees are not counted yet: none entered.
no-tax-yet = Tax in the price is not counted yet: no rate.

## Work back from a price

work-back = Price limit
work-back-about = Work back from a price. See what the drink can cost. Your menu stays as is.
sell-for-no-more-than = Sell for no more than
retailers-cut = Retailer’s cut (%)
retailers-cut-too-high = A retailer’s cut is less than 100%. Type 30 for 30%.
retailer-charges = A retailer who pays you { $price } would charge { $shelf }.
highest-cost = Drink cost limit
highest-ingredient-cost = Ingredient cost limit
ingredients-per = Limit per { $unit }
largest-fill = Largest fill
full-fill = { $fill } (full)

## Ways to the target

reach-target = Ways to your target
other-ways = Other ways
see-quotes = See quotes
see-yield-log = See yield log
not-enough-alone = not enough alone
not-in-margin = not counted in this margin
case-price-of = Case price of { $name }
trim-yield-of = Trim yield of { $name }
juice-yield-of = Juice yield of { $name }
soaked-or-brewed-weight-of = Soaked or brewed weight of { $name }
charge-instead = Charge { $price } instead of { $now }.
fill-instead = Fill to { $fill } instead of { $now }.
pay-instead = Buy { $name } at { $price } a case instead of { $now }.
trim-instead = Keep { $share } of { $name } after trimming instead of { $now }.
press-instead = Press { $share } juice from { $name } instead of { $now }.
soak-instead = Soak or brew { $name } to { $share } of its dry weight instead of { $now }.
packaging-instead = Pay { $price } for packaging instead of { $now }.
waste-instead = Cut waste from { $now } to { $share }.
labor-instead = Cut labor per drink from { $now } to { $time }.
changes-drinks = { $drinks ->
    [one] 1 other drink in this container changes too.
   *[other] { $drinks } other drinks in this container change too.
}
changes-sizes = { $sizes ->
    [one] 1 other size of this drink changes too.
   *[other] { $sizes } other sizes of this drink change too.
}
label-first = That is less than the labeled size, { $declared }. Change the menu or label first.
set-waste = Set waste to { $share }
set-labor = Set labor to { $time }

## Parts of a cost

ingredients = Ingredients
labor = Labor
overhead = Overhead

## What a margin is figured on

on-goods = Ingredients and packaging
on-labor = Ingredients, packaging, labor
on-all-costs = All costs
target-margin-about = The margin each drink should make. A drink can have its own. Ingredients and packaging include the processing fee (HPP or pasteurizing). All costs add labor, overhead, card fee and delivery app commission.

## Choices

rule-average = Average only
rule-europe = European Union or United Kingdom (76/211/EEC)
rule-united-states = United States (NIST Handbook 133)
not-answered = Not answered yet
produce-raw = Raw fruit, vegetable, juice or purée
produce-treated = Treated (5-log), such as pasteurized juice
produce-treated-european = Treated, such as pasteurized juice
produce-neither = Not fruit or vegetable
treated = Treated (5-log, such as HPP)
treated-european = Treated, such as HPP
not-treated = Not treated
not-entered = Not entered
packaged-ahead = Packaged ahead
by-the-glass = By the glass
piece-vessel = Bottle, cup or jar
piece-closure = Cap or lid
piece-label = Label
piece-seal = Seal
piece-straw = Straw
piece-sleeve = Sleeve
by-water-weight = weighed full of water
by-measures = by inside measures
by-pouring = by pouring
tax-included = Included in the price
tax-added = Added at the register
us-customary = US customary
metric = Metric
imperial = Imperial

## What a size needs

size-lost-drink = The drink of this size is gone. Remove the size, then add the size again.
size-lost-container = The container of this size is gone. Remove the size, then add the size again.
size-gone = This size is gone. Go back and add the size again.
no-price-reaches = No price reaches a { $target } margin. Fees and commission leave less than { $highest } of any price. Lower the target or the fees.
size-not-a-volume = The size of { $container } is not a volume. Type fl oz or mL.
headspace-too-large = The headspace of { $container } leaves no room for a drink. Make the headspace smaller.
headspace-needs-heights = Needs: heights of { $container }. Enter inside measures, or readings by pouring.
over-the-brim = That is { $over } over the brimful capacity of { $container }. Check the volume.
recipe-empty = The recipe is empty. Add an ingredient.
fixed-too-much = The fixed amounts are { $over } too much for this size. Lower them, or let them scale with size.
nothing-scales = Every amount is fixed, so this size is { $short } short. Let one ingredient scale with size.
between-pieces = No number of pieces fits this size: { $short } short, or { $over } over with one more. Let one ingredient fill to the line.
nothing-to-float-in = The ice has nothing to float in. Add a liquid.
recipe-lost-ingredient = The recipe uses an ingredient that is gone. Remove that line.
cost-lost-ingredient = The cost uses an ingredient that is gone. Remove that ingredient where you use it.
cost-lost-packaging = The cost uses packaging that is gone. Remove that packaging where you use it.
needs-case-price = Needs: case price of { $name }. Enter pack size and case price in Buying.
needs-juice-yield = Needs: juice yield of { $name }. Weigh what you press and the juice you get. Enter the share.
needs-soaked-weight = Needs: soaked or brewed weight of { $name }. Enter the weight after as a share of the weight before.
needs-density = Needs: density of { $name } in drinks. You weigh in one place and pour by volume in another. Enter grams per mL.
needs-cup-weight = Needs: weight per cup of { $name } in drinks. You weigh in one place and pour by volume in another. Enter the weight of one cup.
needs-juice-cup-weight = Needs: weight per cup of { $name } juice. You weigh in one place and pour by volume in another. Enter the weight of one cup.
needs-juice-density = Needs: juice density of { $name }. You weigh in one place and pour by volume in another. Enter grams per mL.
needs-piece-weight = Needs: weight per piece of { $name }. Weigh one as purchased.

## Batches and ice
batch-volume = Batch volume
tax-rate-of-kind = Leave blank to use { $rate } from Book ({ $kind }).
split-batch = Split batch by
by-volume = by volume
by-drinks = by drinks
batch-volume-about = Each size takes its share of this volume.
drinks-per-batch-about = Every drink takes the same share.
labor-by-size = Labor by size
labor-of-size = { $size }: { $time }, { $money }
labor-without-wage = { $size }: { $time }
plus-deposit = + { $deposit } deposit
deposit-beside = Customers also pay a { $deposit } deposit. It is no part of price or margin.
no-overhead-yet = Overhead is not counted yet: none entered.
