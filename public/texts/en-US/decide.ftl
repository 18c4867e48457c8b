# Deciding on sizes: the front page of Sizes, how many sizes, switching sizes, a price limit, local prices.

## The front page

your-data = Your data
nothing-sold-yet = No sizes for sale yet
nothing-sold-yet-about = Give a drink two or more sizes with prices. Then compare them here.
open-drinks = Open Drinks
## What several questions ask

which-drinks = Which drinks
sizes-to-compare = Sizes to compare
drinks-and-sizes = Drinks and sizes
named-reason = { $name }: { $reason }
drinks-left-out = { $drinks ->
    [one] 1 drink is left out
   *[other] { $drinks } drinks are left out
}
and-more = { $more ->
    [one] and 1 more
   *[other] and { $more } more
}
gone-choose-another = This is no longer in your book. Choose another.
most-to-type = Type { $most } or less, such as { $example }.
use-what-if = Use what-if changes

## How many sizes

how-many-sizes = How many sizes
rule-of-thumb-sizes = Rule of thumb (no published source): one size is simplest, two work well, three are many. Your own numbers come first.
weeks-to-stock = Weeks to stock
upkeep-per-size = Weekly upkeep per size
container-types = Container types
lid-types = Lid types
opening-stock = Opening stock
weeks-of-stock = Weeks of stock
count-of-sizes = { $sizes ->
    [1] One size
    [2] Two sizes
    [3] Three sizes
   *[other] { $sizes } sizes
}
weeks = { $weeks ->
    [one] { $weeks } week
   *[other] { $weeks } weeks
}
weeks-of-kinds = { $weeks ->
    [one] { $weeks } week: { $kinds }
   *[other] { $weeks } weeks: { $kinds }
}
no-sales-yet = no sales yet

save-plan = Save plan as scenario
no-sales-uncounted = { $sizes ->
    [one] 1 drink size has no weekly sales and is not counted.
   *[other] { $sizes } drink sizes have no weekly sales and are not counted.
}
no-price-uncounted = { $sizes ->
    [one] 1 drink size has no price and is not counted.
   *[other] { $sizes } drink sizes have no price and are not counted.
}
incomplete-uncounted = { $sizes ->
    [one] 1 drink size needs details and is not counted.
   *[other] { $sizes } drink sizes need details and are not counted.
}
## A scenario beside today’s menu

scenario-earns-more = { $profit } more per week than today.
scenario-earns-less = { $profit } less per week than today.
scenario-earns-same = As much per week as today.
size-as-today = { $size }: { $facts }, same as today.
size-changed = { $size }: { $facts }. Today: { $today }.
size-added = { $size }: { $facts }. Not sold today.
size-dropped = { $size }: not sold in this scenario. Today: { $today }.
size-not-sold = { $size }: not sold.
fact-no-price = no price
fact-sold = { $drinks } per week
fact-no-sales = no weekly sales
fact-profit = { $profit } profit
fact-incomplete = needs details

## Switching sizes

by-drink = By drink
profit-now = Profit now
one-time-costs = One-time costs
labels-and-printing = Labels and printing
leftover-stock = Leftover stock
no-new-packaging = The new size needs no new packaging.
first-order = { $packs ->
    [one] { $name }: 1 pack to start, { $cost }.
   *[other] { $name }: { $packs } packs to start, { $cost }.
}
first-order-in-use = { $name }: another size on your menu uses this already, so no cost here.
first-order-no-price = { $name }: no case price yet, so not counted. Enter one in Buying.
## A price limit

price-limit-teach = What fits your price?
price-limit-teach-about = First sell a drink in a size. Then type a price here to see what fits.
sell-for-no-more-than = Sell for no more than
limit-before-tax = Menu price, before tax.
limit-with-tax = Menu price, tax included.
sizes-shown = Sizes shown
type-a-price = Type a price to see what fits.
choose-a-size = Choose a size to see what fits.
all-sizes-fit = { $sizes ->
    [one] This drink size can sell for { $price } at your target
   *[other] All { $sizes } drink sizes can sell for { $price } at your target
}
some-sizes-fit = { $fit ->
    [one] 1 of { $sizes } drink sizes fits at { $price }
   *[other] { $fit } of { $sizes } drink sizes fit at { $price }
}
no-size-fits = None of { $sizes } drink sizes fits at { $price }
sizes-that-miss = Below your target at this price: { $sizes }.
sizes-that-miss-and-more = Below your target at this price: { $sizes }; and { $more } more.
by-size = By size
ingredient-limit = Ingredient cost limit
ingredients-now = Ingredients now
fits-exactly = This fits, with nothing to spare.
fits-with-room = This fits. You can spend { $room } more on ingredients.
nothing-for-ingredients = This price leaves nothing for ingredients. Other costs and your target are { $short } over.
raise-or-repack = Raise the price, or use a cheaper container.
save-on-ingredients = Save { $saving } on ingredients: { $share } of the { $cost } they cost now.
or-pour-less = Or pour { $less } less: { $fill } instead of { $now }.
no-smaller-fill = No smaller fill fits. Costs that stay the same in every size are too high.
cut-first = Start with { $ingredient } ({ $cost }). Use { $share } less, and let the rest of the recipe fill the size.
cut-not-enough = Start with { $ingredient } ({ $cost }). Less of this alone is not enough, as the rest fills its place.

## Local prices

local-prices = Local prices
local-prices-explained = What others charge, and where your sizes stand.
where-you-stand = Where you stand
all-types = All types
drink-type = Drink type
place = Place
recent-places = Recent places
their-price = Their price
date-seen = Date seen
add-price = Add price
choose-date-seen = Choose the date you saw the price.
year-too-early = Type the year with four digits, such as 2026.
date-ahead = { $date } is in the future. Keep this date?
add-local-price = Add local price
seen-at = { $place }, { $date }
seen-at-long-ago = { $place }, { $date } (over a year old)
price-per = { $price } per { $unit }
edit-place = Edit place
edit-size = Edit size
edit-price = Edit price
edit-type = Edit type
edit-date = Edit date
remove-price = Remove price
change-place = Change place of local price
change-size = Change size of local price
change-price = Change local price
change-type = Change type of local price
change-date = Change date of local price
remove-local-price = Remove local price

prices-from-to = { $prices ->
    [one] 1 local price, from { $smallest } to { $largest }.
   *[other] { $prices } local prices, from { $smallest } to { $largest }.
}
double-costs-more = Twice the size costs { $share } more.
double-costs-less = Twice the size costs { $share } less.
double-costs-same = Twice the size costs the same.
your-standing = Your { $size }: { $standing }.
farthest-standing = Farthest from the curve is your { $size }: { $standing }.
on-curve = on the curve
above-curve = { $share } above the curve
below-curve = { $share } below the curve
on-curve-beyond = on the curve, outside the sizes seen
above-curve-beyond = { $share } above the curve, outside the sizes seen
below-curve-beyond = { $share } below the curve, outside the sizes seen
too-far-beyond = too far outside the sizes seen
no-curve-yet = no curve yet
curve-math = Price = { $price } × (size in { $unit }) to the power of { $exponent }.
curve-math-hundreds = Price = { $price } × (size in hundreds of mL) to the power of { $exponent }.
curve-method = This is a least-squares line through the logs of sizes and prices.
curve-fit = R² is { $fit }: 1 is a perfect fit, 0 is no fit.
curve-prices-equal = Every price is the same.
no-prices-yet = No local prices yet. Add three or more in different sizes to see where yours stand.
one-price-so-far = One price so far. A curve needs three or more in different sizes.
two-prices-so-far = Two prices so far. A curve needs three or more to show how prices vary.
prices-of-one-size = These prices are all for about one size. Add a smaller or larger size.
prices-too-far-apart = These sizes or prices are too far apart to compare. Check for an extra digit.
market-caution = These are asking prices, not sales. Others have other costs, servings and customers.
market-no-advice = Your place on the curve is not advice on what to charge.
prices-over-a-year-old = { $prices ->
    [one] 1 price is over a year old and may have changed.
   *[other] { $prices } prices are over a year old and may have changed.
}
your-sizes-among-prices = Your sizes and local prices
your-price = Your price
per-unit = Per { $unit }
per-labeled = Per labeled { $unit }
local-curve = Local curve
your-position = Your position
none-of-yours-priced = None of your sizes of this type has a price yet.
your-sizes = Your sizes
size-in-unit = Size, { $unit }

## What the numbers of the book say

numbers-say = What your numbers say
no-findings = Nothing to say yet. Sell a drink in two sizes, with prices and weekly sales. Sizes or prices over twice apart are left out.
ask = Ask
switch-a-size = Switch a size
drop-a-size = Drop a size
add-a-size = Add a size
sell-under = Sell under a price
compare-sizes = Compare sizes
newest-price = { $prices ->
    [one] 1, seen { $day }
   *[other] { $prices }, newest { $day }
}
trials-running = { $trials ->
    [one] 1 running
   *[other] { $trials } running
}
drink-types = Drink types

finding-cannot-drop = Dropping the { $size } cannot pay with today’s buyers
finding-drop = { $stay ->
    [one] Dropping the { $size } pays if 1 of 100 buyers takes another size
   *[other] Dropping the { $size } pays if { $stay } of 100 buyers take another size
}
finding-drop-can = { $stay ->
    [one] Dropping the { $size } pays if 1 of 100 who can take another size does
   *[other] Dropping the { $size } pays if { $stay } of 100 who can take another size do
}
finding-drop-to = { $stay ->
    [one] Dropping the { $size } pays if 1 of 100 buyers takes the { $other }
   *[other] Dropping the { $size } pays if { $stay } of 100 buyers take the { $other }
}
finding-drop-always = Dropping the { $size } pays even if all its buyers leave
finding-guess-drop-yes = By your guess, dropping the { $size } pays
finding-guess-drop-no = By your guess, dropping the { $size } does not pay
finding-guess-only-no = By your guess, selling only the { $size } does not pay
finding-only = { $stay ->
    [one] Only the { $size } pays if 1 of 100 others stays
   *[other] Only the { $size } pays if { $stay } of 100 others stay
}
finding-only-can = { $stay ->
    [one] Only the { $size } pays if 1 of 100 others who can stay does
   *[other] Only the { $size } pays if { $stay } of 100 others who can stay do
}
finding-only-always = Only the { $size } pays even if all other buyers leave
finding-only-about = { $share } of buyers choose this already. Recipe cards: { $now } now, { $then } then.
only-more = { $buyers ->
    [one] If the 1 other buyer stays, you earn { $profit } more a week.
   *[other] If all { $buyers } other buyers stay, you earn { $profit } more a week.
}
finding-turns = { $lost ->
    [one] If a price 10% higher loses over 1 of 100 buyers, smaller sizes earn more
   *[other] If a price 10% higher loses over { $lost } of 100 buyers, smaller sizes earn more
}
finding-turns-unknown = You have not said how your customers react.
finding-turns-larger = By your own answer, larger sizes earn more.
finding-turns-smaller = By your own answer, smaller sizes earn more.
finding-not-under = { $cannot ->
    [one] 1 of { $drinks } drinks misses your target at { $price } in every size
   *[other] { $cannot } of { $drinks } drinks miss your target at { $price } in every size
}
nearest-needs = { $drink } needs { $price } to reach your target.
some-pay-more = { $buyers ->
    [one] 1 of those who stay pays { $price } more for { $volume } more.
   *[other] { $buyers } of those who stay pay { $price } more for { $volume } more.
}
some-pay-less = { $buyers ->
    [one] 1 of those who stay pays { $price } less for { $volume } less.
   *[other] { $buyers } of those who stay pay { $price } less for { $volume } less.
}
some-pay-else = { $buyers ->
    [one] 1 of those who stay pays { $then } instead of { $now }.
   *[other] { $buyers } of those who stay pay { $then } instead of { $now }.
}
buyers-pay-more = They pay { $price } more for { $volume } more.
buyers-pay-less = They pay { $price } less for { $volume } less.
buyers-pay-else = They pay { $then } instead of { $now }.
pay-range = Across drinks, they pay { $least } to { $most }.

## One decision on sizes

decide-sizes = Decide on sizes
decide-switch = Switch { $from } to { $to }
decide-drop = Drop the { $size }
decide-add = Add the { $size }
decide-only = Sell only the { $size }
decide-none = Which size would you change?
decide-none-about = Choose a size that goes, a size that comes, or both.
goes = Size that goes
comes = Size that comes
no-size = No size

drop-pays-from = { $stay ->
    [one] It pays if 1 of 100 buyers stays
   *[other] It pays if { $stay } of 100 buyers stay
}
drop-pays-can = { $stay ->
    [one] It pays if 1 of 100 buyers who can stay does
   *[other] It pays if { $stay } of 100 buyers who can stay do
}
drop-pays-to = { $stay ->
    [one] It pays if 1 of 100 buyers takes the { $size }
   *[other] It pays if { $stay } of 100 buyers take the { $size }
}
pays-if-all-leave = It pays even if every buyer leaves
drop-cannot-pay = With today’s buyers, it cannot pay
guess-pays = By your guess, it pays
guess-pays-not = By your guess, it does not pay
guess-aside = Without your guess: { $verdict }.
add-cannot-pay = It cannot pay
switch-needs-new = { $buyers ->
    [one] You need 1 more buyer a week, or you earn less
   *[other] You need { $buyers } more buyers a week, or you earn less
}
switch-may-lose = { $buyers ->
    [one] It pays if you lose no more than 1 buyer a week
   *[other] It pays if you lose no more than { $buyers } buyers a week
}
switch-may-lose-none = It pays only if every buyer stays
add-pays-until = { $taken ->
    [one] It pays if at most 1 of 100 buyers comes from another size
   *[other] It pays if at most { $taken } of 100 buyers come from another size
}
add-pays-always = It pays even if every buyer comes from another size
all-stay-more = { $buyers ->
    [one] If the 1 buyer stays, you earn { $profit } more a week.
   *[other] If all { $buyers } buyers stay, you earn { $profit } more a week.
}
all-stay-less = { $buyers ->
    [one] Even if the 1 buyer stays, you lose { $profit } a week.
   *[other] Even if all { $buyers } buyers stay, you lose { $profit } a week.
}
all-take-less = { $buyers ->
    [one] Even if the 1 buyer takes the { $size }, you lose { $profit } a week.
   *[other] Even if all { $buyers } buyers take the { $size }, you lose { $profit } a week.
}
all-take-more = { $buyers ->
    [one] If the 1 buyer takes the { $size }, you earn { $profit } more a week.
   *[other] If all { $buyers } buyers take the { $size }, you earn { $profit } more a week.
}
all-new-more = { $buyers ->
    [one] If the 1 buyer is new, you earn { $profit } more a week.
   *[other] If all { $buyers } buyers are new, you earn { $profit } more a week.
}
all-new-less = { $buyers ->
    [one] Even if the 1 buyer is new, you lose { $profit } a week.
   *[other] Even if all { $buyers } buyers are new, you lose { $profit } a week.
}
can-stay-more = { $buyers ->
    [one] If the 1 buyer who can stay does, you earn { $profit } more a week.
   *[other] If all { $buyers } buyers who can stay do, you earn { $profit } more a week.
}
can-stay-less = { $buyers ->
    [one] Even if the 1 buyer who can stay does, you lose { $profit } a week.
   *[other] Even if all { $buyers } buyers who can stay do, you lose { $profit } a week.
}
all-leave-more = Nobody can stay, and you still earn { $profit } more a week.
must-leave = { $buyers ->
    [one] 1 buyer leaves.
   *[other] { $buyers } buyers leave.
}
stays-same = You earn the same as today.

profit-week-now = Profit a week now
profit-with = With { $buyers } of 100
profit-per-100 = With { $buyers } per 100 today
profit-taken = With { $buyers } of 100 from other sizes
buyers-who-stay = Buyers who stay
buyers-per-100 = Buyers per 100
buyers-taken = From other sizes
of-100-today = For each 100 who buy today: { $buyers }
of-100-expected = Of each 100 you expect, from other sizes: { $buyers }
breaks-even-at = even at { $buyers }
overhead-left-out = Rent and power stay the same, so they are left out.
others-pay-more = Those who already buy { $size } pay a price you changed too: { $profit } more per week, counted here.
others-pay-less = Those who already buy { $size } pay a price you changed too: { $profit } less per week, counted here.
turns-far = { $buyers ->
    [one] 1 of these buyers would face over twice, or under half, the volume or price. Few buyers do that.
   *[other] { $buyers } of these buyers would face over twice, or under half, the volume or price. Few buyers do that.
}

customers-see = What customers see
price-less = { $share } less
price-more = { $share } more
price-same = The same
change-range = { $least } to { $most }
now-to-then = { $now } → { $then }
shown-for = Shown for { $drink }, which most of these buyers choose. Others differ.
nearby-at = Local price, { $size }
from-local-prices = { $prices ->
    [one] From 1 price you saw
   *[other] From { $prices } prices you saw
}
about-price = about { $price }
tips-if-fewer = { $lost ->
    [one] It pays if a price 10% higher loses fewer than 1 of 100 buyers.
   *[other] It pays if a price 10% higher loses fewer than { $lost } of 100 buyers.
}
tips-if-more = { $draws ->
    [one] It pays if a price 10% lower draws more than 1 new buyer for each 100.
   *[other] It pays if a price 10% lower draws more than { $draws } new buyers for each 100.
}
tips-cannot = { $draws ->
    [one] You would need { $buyers } buyers for each 100 today. A price 10% lower must draw more than 1 for each 100.
   *[other] You would need { $buyers } buyers for each 100 today. A price 10% lower must draw more than { $draws } for each 100.
}
studies-average = Studies of food away from home average 7 to 8. One shop among others often loses more.
size-counts-too = The change of size counts here too, not price alone.

what-to-keep = Cards and stock
stock-of-menu = Containers, lids and stock count your whole menu: other drinks use them too.
cards-now-then = { $then ->
    [one] { $now } → 1 card
   *[other] { $now } → { $then } cards
}
one-time-figure = { $cost }, { $payback }
payback-in = { $weeks ->
    [one] back in 1 week
   *[other] back in { $weeks } weeks
}
payback-none = not paid back
payback-now = nothing to pay back
leftover-of = { $name }: { $cost } of leftover stock.
drinks-counted = { $drinks ->
    [one] 1 drink
   *[other] { $drinks } drinks
}
buyers-now = Buyers a week
buyers-expected = Expected a week
turns-to = Turns to
comes-from = Comes from
profit-then = Profit then
profit-there = Profit there
profit-here = Profit here
profit-all-stay = Profit if all stay
breaks-even = Breaks even
even-always = always
they-leave = They leave
rows-rounded = Money is rounded row by row; totals are not.
now-of-sizes = Profit a week now counts all buyers of the sizes they come from.
some-sales-expected = Sizes with no week yet count the number typed on the drink.
sales-from-weeks = { $weeks ->
    [one] Weekly sales come from 1 week you entered.
   *[other] Weekly sales are the average of { $weeks } weeks you entered.
}
sales-as-typed = Weekly sales are the numbers typed on each drink.
show-the-math = Show the math
math-drop = ({ $now } today − { $kept } with no buyer left) ÷ { $all } that buyers bring if all stay = { $share }.
math-add = ({ $all } if all are new − { $now } today) ÷ { $taken } lost if all come from another size = { $share }.
math-size = Size counts a fourth as much as price, by a study of smaller packages (Çakir and Balagtas, 2014).
math-elasticity = At the tipping point, a price 1% higher loses about { $lost } of buyers (elasticity { $elasticity }).
profit-by-buyers = Profit by buyers
new-plan = Changed sizes

what-changes = What changes
expected-of = { $drink }, sold a week
new-price-for = { $drink }, new price
buyers-turn-to = Buyers turn to
nearest-size = Nearest size
count-labor = Count labor
weeks-swing = { $weeks ->
    [one] Over 1 week, profit swings by about { $swing }.
   *[other] Over { $weeks } weeks, profit swings by about { $swing } from week to week.
}
hidden-in-swing = A difference of { $gain } cannot be seen in one week.
swing-needs-weeks = Enter at least two weeks of sales to see how far weeks swing.
keep-as-scenario = Keep as scenario
print-decision = Print decision sheet
use-this = Use this
use-this-list = This changes your menu
change-menu = Change the menu
not-yet = Not yet
use-adds = { $offer }: added at { $price }, { $sold } a week.
use-adds-unsold = { $offer }: added at { $price }.
use-removes = { $offer }: no longer sold.
use-sells = { $offer }: { $then } a week instead of { $now }.
use-assumes = Weekly sales here assume { $buyers } of 100 buyers stay. You have not made these sales yet.
use-assumes-taken = Weekly sales here are what you expect, with { $buyers } of 100 from other sizes. You have not made these sales yet.
use-assumes-per-100 = Weekly sales here assume { $buyers } buyers for each 100 today. You have not made these sales yet.
named-staying = { $name }, { $buyers } of 100 stay
named-taken = { $name }, { $buyers } of 100 from other sizes
named-per-100 = { $name }, { $buyers } buyers per 100
use-price = { $offer }: { $then } instead of { $now }.
use-keeps = Past sales stay recorded. Undo brings today’s menu back.
use-cannot = What stays as it is
menu-changed = Your menu is changed. Undo reverses this.

no-answer-sales = Weekly sales are missing. Type how many you sell, or expect to sell.
no-answer-one-size = You sell only the { $size }. Choose a size to add.
no-answer-not-sold = None of these drinks is sold in the { $size }. Choose a size you sell.
no-answer-same = Both sizes are the { $size }. Choose a different one.
no-answer-nothing-left = { $drink } earns nothing at its price. Type a higher price.
no-answer-nobody = None of these drinks is sold in another size, so no buyer can stay. You would lose { $profit } a week.
no-answer-price = { $drink } has no price. Type the price you would ask.
not-counted = { $offer }: { $reason }
not-counted-price = no price yet
not-counted-sales = no weekly sales
weekly-sales = Weekly sales
price-range = { $low } to { $high }
before-tax = Price before tax
after-tax = Customer pays
tightest-spare = Tightest is { $drink }, with { $before } to spare before tax, { $after } with tax.
tightest-lacks = Farthest off is { $drink }, { $before } short before tax, { $after } with tax.
spare = { $price } to spare
lacks = { $price } short
no-price-is-enough = { $drink }: no price reaches your target.
open-drink = Open this drink
of-ten-stay = Of 10 buyers, stay
of-ten-stay-about = Your own guess: of 10 buyers, how many stay when a price rises 10%?
of-ten-moves-down = Smaller sizes cost less, so they gain buyers: the more a price matters, the more they gain.
of-ten-above-zero = At least some buyers stay. Type a number over 0, up to 10.
no-plan-pays = No other set of sizes can pay
plan-pays-if = { $stay ->
    [one] { $plan } pays if 1 of 100 others stays
   *[other] { $plan } pays if { $stay } of 100 others stay
}
plan-pays-always = { $plan } pays even if all others leave
plan-today = Today’s { $sizes } earn { $profit } a week before rent and power.
one-size-most-tried = One size: { $plan }, chosen by { $share } today. { $needs }
two-sizes-most-tried = Two sizes: { $plan }, chosen by { $share } today. { $needs }
three-sizes-most-tried = Three sizes: { $plan }, chosen by { $share } today. { $needs }
needs-stay = { $stay ->
    [one] Pays if 1 of 100 others stays.
   *[other] Pays if { $stay } of 100 others stay.
}
needs-none = Pays even if all others leave.
needs-more = Cannot pay.
plan-chosen = { $cards ->
    [one] { $share } choose these today. 1 card.
   *[other] { $share } choose these today. { $cards } cards.
}
stay-short = { $stay } of 100
stay-none = 0 of 100
stay-over = over 100
plans-tried = Plans by evidence
plans-tried-about = Plans whose sizes most buyers choose today come first. The figure is how many must stay of those who can.
plans-by-guess = Plans by your guess
plans-counted = { $plans ->
    [one] 1 plan
   *[other] { $plans } plans
}
more-plans = More plans
hardly-tried = Hardly tried
hardly-tried-about = Fewer than 1 in 10 buyers choose these sizes today, so little is known about them.
plans-cannot-pay = Cannot pay
plans-cannot-pay-about = These earn less than today even if every buyer stays.
stay-of-100 = Profit with { $buyers } of 100
order-of-plans = Order of plans
by-evidence = By evidence
by-profit = By profit
by-profit-about = Profits here rest on your own guess, not on sales.
about-profit = about { $profit } a week
guess-stays-more = { $buyers ->
    [one] By your guess, 1 of 100 stays: about { $profit } more a week.
   *[other] By your guess, { $buyers } of 100 stay: about { $profit } more a week.
}
guess-stays-less = { $buyers ->
    [one] By your guess, 1 of 100 stays: about { $profit } less a week.
   *[other] By your guess, { $buyers } of 100 stay: about { $profit } less a week.
}
guess-becomes-more = { $buyers ->
    [one] By your guess, 1 buyer becomes { $then }: about { $profit } more a week.
   *[other] By your guess, { $buyers } buyers become { $then }: about { $profit } more a week.
}
guess-becomes-less = { $buyers ->
    [one] By your guess, 1 buyer becomes { $then }: about { $profit } less a week.
   *[other] By your guess, { $buyers } buyers become { $then }: about { $profit } less a week.
}
plan-pays-guess = By your guess, { $plan } earns about { $profit } more a week
no-plan-guess = By your guess, no other set of sizes earns more
plans-earn-less = Earn less
plans-earn-less-about = By your guess, these earn less than today.
decide-on-plan = Decide on this
size-to-try = Size to try
what-to-ask = What you say
