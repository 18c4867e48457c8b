# Deciding on sizes: the front page of Sizes, how many sizes, switching sizes, a price limit, local prices.

## The front page

sizes-question = Which sizes are worth selling?
choose-sizes = Choose sizes
your-data = Your data
nothing-sold-yet = No sizes for sale yet
nothing-sold-yet-about = Give a drink two or more sizes with prices. Then compare them here.
open-drinks = Open Drinks
side-by-side = Side by side
side-by-side-about = Cost, price and profit of each size.
switch-sizes-about = How many to sell to earn the same.
how-many-sizes-about = What one, two or three sizes earn.
price-limit-about = What fits when a price is set.
sales-about = Drinks sold per week, by size.
local-prices-about = What others charge, and where you stand.
trials-about = Did a change work?
scenarios-about = Another menu beside today’s.

## What several questions ask

which-drinks = Which drinks
sizes-to-compare = Sizes to compare
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
how-many-sizes-explained = A plan is a set of sizes. See what each one earns and needs.
rule-of-thumb-sizes = Rule of thumb (no published source): one size is simplest, two work well, three are many. Your own numbers come first.
no-containers-yet = No containers yet. Plans need a container and a drink with a price.
add-a-container = Add a container
what-to-compare = What to compare
most-sizes-chosen = { $most ->
    [one] You can compare 1 size at once. Turn one off to add another.
   *[other] You can compare { $most } sizes at once. Turn one off to add another.
}
weeks-to-stock = Weeks to stock
upkeep-per-size = Weekly upkeep per size
assumed-sales = Assumed weekly sales
assumed-sales-for = No weekly sales for: { $drinks }.
assumed-sales-zero = These drinks count as 0 until you type a number here or on the drink.
size-mix = Size mix
size-mix-about = Your guess of each size’s share of sales. Leave blank to keep today’s shares.
size-share = { $size }, % (today { $share })
shares-not-whole = The shares add up to { $sum }, not 100%. Each plan scales its own shares to 100%.

plans-by-profit = Plans by profit
best-plan = { $plan } earns the most: { $profit } per week.
best-plan-today = You sell these sizes today.
best-plan-beside = Today’s sizes earn { $profit } with every drink in each size.
plan-bars-explained = Bars show profit per week. Each drink is sold in each size, at your price or the suggested price.
same-number-of-drinks = Each plan counts as many drinks as you sell today. If some customers would leave, lower “Customers who stay” below.
plan = Plan
container-types = Container types
lid-types = Lid types
opening-stock = Opening stock
weeks-of-stock = Weeks of stock
show-all-plans = { $plans ->
    [one] Show 1 plan
   *[other] Show all { $plans } plans
}
best-of-one-size = best of one size
best-of-two-sizes = best of two sizes
best-of-three-sizes = best of three sizes
todays-sizes = today’s sizes
your-plan = your plan
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
no-sales-yet = no sales yet

two-plans = Two plans
first-plan = First plan
second-plan = Second plan
stay-with-first = Customers who stay, first plan, %
stay-with-second = Customers who stay, second plan, %
choose-two-plans = Choose two different plans to see what changes.
save-first-plan = Save first as scenario
save-second-plan = Save second as scenario
save-plan = Save plan as scenario
scenario-name = { $sizes }: { $plan }
two-plans-explained = A size pays for itself once its extra sales make up for what other sizes lose. Payback is extra opening stock divided by extra profit per week.
own-plan = Your own plan
own-plan-about = Pick any sizes. Your plan joins the list as the second plan.
own-plan-sizes = Your plan’s sizes

plan-earns-more = { $plan } earns { $profit } more per week than { $other }.
plan-earns-less = { $plan } earns { $profit } less per week than { $other }.
plan-earns-same = { $plan } earns as much per week as { $other }.
upkeep-then-more = After { $upkeep } per week for more sizes, you earn { $profit } more.
upkeep-then-less = After { $upkeep } per week for more sizes, you earn { $profit } less.
upkeep-saved-then-more = Fewer sizes also save { $upkeep } per week, so you earn { $profit } more.
upkeep-saved-then-less = Fewer sizes also save { $upkeep } per week, so you earn { $profit } less.
stock-more = You need { $cash } more opening stock.
stock-less = You need { $cash } less opening stock.
stock-same = Opening stock stays the same.
stock-pays-back = The extra stock pays back in { $weeks }.
stock-never-pays-back = No extra profit pays this back.
size-without-price = No drink has a price in { $size }, so nothing sells in this size.
size-pays-already = { $size } needs no extra sales to pay for itself.
size-pays-from = { $drinks ->
    [one] { $size } pays for itself with 1 extra drink sold per week.
   *[other] { $size } pays for itself with { $drinks } extra drinks sold per week.
}
size-pays-why = Adding the size costs { $lost } per week, and profit per drink is { $profit }.
size-never-pays = More sales cannot pay for { $size }. Profit per drink is { $profit }.

plan-math = Show the math: { $plan }
not-included = Not included
plan-leaves-out = { $sizes ->
    [one] { $plan }: 1 drink size is left out. Show the math to see why.
   *[other] { $plan }: { $sizes } drink sizes are left out. Show the math to see why.
}
plan-note = { $plan }: { $note }
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
week-math = { $drink }: { $sold } per week × { $each } profit per drink = { $profit }, at { $price }.
week-math-suggested = { $drink }: { $sold } per week × { $each } profit per drink = { $profit }, at { $price } (suggested price).
week-without-sales = { $drink }: no weekly sales. Profit per drink is { $each } at { $price }.
week-without-sales-suggested = { $drink }: no weekly sales. Profit per drink is { $each } at { $price } (suggested price).
week-without-price = { $drink }: no price.
stock-math = { $packs ->
    [one] { $name }: 1 pack ({ $pieces } pieces) for { $cost }. At { $used } per week, this lasts { $weeks }.
   *[other] { $name }: { $packs } packs ({ $pieces } pieces) for { $cost }. At { $used } per week, this lasts { $weeks }.
}
stock-math-unused = { $packs ->
    [one] { $name }: 1 pack ({ $pieces } pieces) for { $cost }. No sales use any yet.
   *[other] { $name }: { $packs } packs ({ $pieces } pieces) for { $cost }. No sales use any yet.
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

switch-sizes = Switch sizes
switch-sizes-explained = One size goes, another comes. See how many to sell to earn the same.
switch-teach = Would another size earn as much?
switch-teach-about = First sell a drink in a size, with a price. Then see what a switch takes and costs.
sizes-to-switch = Sizes to switch
current-size = Current size
new-size = New size
both-sizes-same = Both sizes are { $size }. Choose a different new size.
none-sold-in-size = None of these drinks is sold in { $size }. Choose a size you sell.
switch-to = Switch to { $size }
now-sold-in = Now sold in { $size }. Undo reverses this.
switch-explained = The new size replaces the old one, with the prices and sales above. Past sales stay recorded.

new-prices = New prices
new-prices-about = Try other prices. Nothing is saved until you switch.
new-price-of = New price for { $drink }
price-now = Now { $price }.
price-typed-here = Typed here.
price-on-menu = Your price in this size.
price-suggested = Suggested for your target.

break-even-sales = Break-even sales
no-break-even = No break-even point
no-drink-in-both = No drink has numbers for both sizes yet.
sell-instead = Sell { $then } instead of { $now } per week ({ $change })
sell-per-hundred = Sell { $then } for every { $now } sold now ({ $change })
sell-math = { $sold } sold now × { $now } profit per drink ÷ { $then } profit in the new size = { $drinks }. Round up to whole drinks.
break-even-same-price = The price stays the same. The size alone must keep your customers.
break-even-cheaper = Break-even: a price { $price } lower must bring { $customers } more customers.
break-even-cheaper-rate = That is about { $each } more for each 1% off.
break-even-higher = Break-even: a price { $price } higher can lose { $customers } of your customers.
break-even-higher-rate = That is about { $each } of them for each 1% more.
break-even-cheaper-earns-more = Each drink earns more, even at a price { $price } lower. You break even with { $customers } fewer customers.
break-even-higher-earns-less = The price is { $price } higher, yet each drink earns less. You break even only with { $customers } more customers.
higher-price-seldom-helps = A higher price seldom brings customers.
break-even-equal = Each drink earns the same. You break even with as many customers as now.
elasticity = Price elasticity at break-even: { $elasticity }.
drinks-without-sales = { $drinks ->
    [one] 1 drink has no weekly sales and is left out.
   *[other] { $drinks } drinks have no weekly sales and are left out.
}
no-sales-entered = No weekly sales are entered. The math uses 100 of each drink.
sales-all-zero = Your weekly sales are all zero. The math uses 100 of each drink.
all-drinks = All drinks
loss-in-size = { $what }, { $size }: a loss of { $loss } at a price of { $price }.
no-profit-in-size = { $what }, { $size }: no profit at a price of { $price }.
losing-now = Each one you do not sell saves money. Fix the price or cost of this size first.
losing-then = No number of sales earns what you earn now. Raise the new price or cut the cost.
losing-both = No number of sales earns a profit. Fix price or cost in both sizes, or take the drink off the menu.
drink-in-size = { $drink } in { $size }: { $reason }
no-price-to-switch = No price yet. Set one on the drink’s page.
or-type-a-price = Or type a price here.
by-drink = By drink
profit-now = Profit now
new-size-profit = New size profit
must-sell = Must sell
sell-for = { $then } for { $now }

if-sales-change = If sales change
if-sales-change-about = Your guess for the new size, as a percent of today’s customers.
customers-who-stay = Customers who stay
customers-who-stay-whole = 100% means as many as today.
stay-below-zero = “Customers who stay” cannot be below zero. Type 90 for 90%.
stay-earns-per-week = At { $share } of today’s customers, you earn { $profit } per week.
stay-earns-per-hundred = At { $share } of today’s customers, 100 of each drink earn { $profit }.
stay-more = That is { $profit } more than today’s { $today }.
stay-less = That is { $profit } less than today’s { $today }.
stay-same = That is the same as today.
curve-crosses = The new size matches today’s { $today } at { $share } of customers. Above that, it earns more.
curve-all-above = Today’s profit is { $today }. The new size earns more at every point shown.
curve-no-profit = The new size makes no profit, so more sales do not help. Today’s profit is { $today }.
profit-per-hundred = Profit per 100 of each drink
profit-by-customers = Profit by customers who stay
share-stays = { $share } stay
sold = Sold
profit = Profit
versus-today = Versus today

one-time-costs = One-time costs
one-time-costs-about = First packaging orders, plus what you enter.
labels-and-printing = Labels and printing
leftover-stock = Leftover stock
one-time-total = One-time total
payback = Payback
no-new-packaging = The new size needs no new packaging.
first-order = { $packs ->
    [one] { $name }: 1 pack to start, { $cost }.
   *[other] { $name }: { $packs } packs to start, { $cost }.
}
first-order-in-use = { $name }: another size on your menu uses this already, so no cost here.
first-order-no-price = { $name }: no case price yet, so not counted. Enter one in Buying.
payback-weeks = { $weeks } weeks
payback-math = { $cost } one-time ÷ { $gain } more per week = { $weeks } weeks.
payback-unknown = not known yet
payback-unknown-about = You earn { $gain } more on 100 of each drink. Enter weekly sales to see when { $cost } is paid back.
payback-at-once = right away
payback-at-once-about = No one-time cost, and you earn more.
payback-never = no payback
payback-never-about = At { $share } of today’s customers, the new size earns no more than today.
payback-never-cost = So { $cost } is not paid back.

## A price limit

price-limit = Price limit
price-limit-explained = Work back from a price: what fits, and what ingredients may cost. Your book stays as it is.
price-limit-teach = What fits your price?
price-limit-teach-about = First sell a drink in a size. Then type a price here to see what fits.
your-limit = Your limit
sell-for-no-more-than = Sell for no more than
sizes-shown = Sizes shown
type-a-price = Type a price to see what fits.
choose-a-size = Choose a size to see what fits.
all-sizes-fit = { $sizes ->
    [one] At { $price }, this size fits.
   *[other] At { $price }, all { $sizes } sizes fit.
}
sizes-do-not-fit = { $over ->
    [one] At { $price }, 1 of { $sizes } sizes does not fit.
   *[other] At { $price }, { $over } of { $sizes } sizes do not fit. The worst comes first.
}
by-size = By size
what-to-change = What to change
no-figures-for-sizes = These sizes need details. See what is missing below.
cost-limit = Drink cost limit
ingredient-limit = Ingredient cost limit
limit-per-unit = Limit per { $unit }
ingredients-now = Ingredients now
largest-fill = Largest fill
at-this-price = At this price
limits-explained = Limit per { $unit } is the ingredient cost limit divided by the fill. Largest fill is the most this price pays for.
whole-fill = { $fill } (full)
nothing-fits = nothing fits
not-sold-yet = (not sold yet)
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
local-curve = Local curve
your-position = Your position
none-of-yours-priced = None of your sizes of this type has a price yet.
your-sizes = Your sizes
size-in-unit = Size, { $unit }
