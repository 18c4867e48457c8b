# Buying day by day: quick prices, today’s changes, price watch, the buying list. Also what is
# said beside a number that looks wrong, and which drinks a change affects.

## Numbers that look wrong

was-now = Was { $was }, now { $now }.
now-only = Now { $now }.
rare-tax = A tax over 50% is rare.
rare-density = Most foods and drinks weigh { $low } to { $high } g per mL.
rare-cup-weight = One cup of most foods and drinks weighs { $low } to { $high } oz.
rare-stock = More than { $most } of one item is rare.
rare-trim-yield = A trim yield under 5% is rare.
rare-wage = An hour rarely costs that much. Check the digits.
rare-labor = More than { $most } is rare. Type minutes:seconds.
rare-sold = More than { $most } a week is rare.
rare-sold-in-week = A week usually has whole drinks, up to { $most } of one size.
check-one = Check “{ $name }”. Is that what you meant?
check-several = { $more ->
    [one] Check “{ $name }” and 1 more entry. Are they what you meant?
   *[other] Check “{ $name }” and { $more } more entries. Are they what you meant?
}
check-now = Check now

## What a change affects

step-no-drinks = { $step }: no sizes affected.
step-none-dropped = { $sizes ->
    [one] { $step }: 1 size affected, none dropped below target.
   *[other] { $step }: { $sizes } sizes affected, none dropped below target.
}
step-some-dropped = { $sizes ->
    [one] { $step }: 1 size affected, { $dropped } dropped below target.
   *[other] { $step }: { $sizes } sizes affected, { $dropped } dropped below target.
}
no-drinks = No sizes affected.
none-dropped = { $sizes ->
    [one] 1 size affected, none dropped below target.
   *[other] { $sizes } sizes affected, none dropped below target.
}
some-dropped = { $sizes ->
    [one] 1 size affected, { $dropped } dropped below target.
   *[other] { $sizes } sizes affected, { $dropped } dropped below target.
}
back-on-target = { $sizes ->
    [one] 1 size is back on target.
   *[other] { $sizes } sizes are back on target.
}
# The same before the change is made.
no-drinks-yet = No sizes would be affected.
none-would-drop = { $sizes ->
    [one] 1 size would be affected, none would drop below target.
   *[other] { $sizes } sizes would be affected, none would drop below target.
}
some-would-drop = { $sizes ->
    [one] 1 size would be affected, { $dropped } would drop below target.
   *[other] { $sizes } sizes would be affected, { $dropped } would drop below target.
}
would-be-back = { $sizes ->
    [one] 1 size would be back on target.
   *[other] { $sizes } sizes would be back on target.
}
drinks-affected = Sizes affected
show-more = { $count ->
    [one] Show 1 more
   *[other] Show { $count } more
}
# A figure before the change and after, as it is read aloud.
figure-before = before { $figure }
figure-now = now { $figure }
state-before = Before: { $state }

## Quick prices

price-of = Price of { $name }
price-checked = Checked price of { $name }
needs-new-price = Needs a new price
no-date = No date
find-item = Find an item
group-prices = Group prices
by-supplier = By supplier
recently-checked = Checked
other-packs-of = Other packs: { $supplier }
items-listed = { $items ->
    [one] 1 item
   *[other] { $items } items
}
items-and-old = { $old ->
    [one] { $items }, 1 needs a new price
   *[other] { $items }, { $old } need a new price
}
needs-new-price-since = needs a new price: { $day }
more-items = { $count ->
    [one] 1 more item. Type its name or supplier to find it.
   *[other] { $count } more items. Type a name or supplier to find them.
}
no-matches = No matches. Type fewer letters, or add the item below.
first-ingredient = Your first ingredient
first-ingredient-how = Enter the pack size, case price and yields. You see what the usable part costs.
packs-per-order = { $packs } packs per order
cost-per = { $cost } { $per }
no-change = No change
no-change-of = No change: { $name }

## Today’s changes

todays-changes = Today’s changes
adding-up = Adding up…
changes-counted = { $prices ->
    [one] 1 price changed
   *[other] { $prices } prices changed
}
changes-cost-more = { $prices ->
    [one] 1 price: costs you { $money } more per week
   *[other] { $prices } prices: cost you { $money } more per week
}
changes-save = { $prices ->
    [one] 1 price: saves you { $money } per week
   *[other] { $prices } prices: save you { $money } per week
}
changes-cost-the-same = { $prices ->
    [one] 1 price: costs the same per week
   *[other] { $prices } prices: cost the same per week
}
dropped-today = { $sizes ->
    [one] 1 size dropped below target
   *[other] { $sizes } sizes dropped below target
}
see-them = See them
margin-and-price = { $margin } margin, suggested price { $price }
margin-alone = { $margin } margin
price-changed = Was { $was }, now { $now }, { $change }
price-back = Back at { $was }
price-no-longer-free = Was free, now { $now }
was-free = was free
costs-more = Costs { $money } more per week.
saves = Saves { $money } per week.
costs-the-same = Costs the same per week.
needs-sales = Needs: drinks sold per week.
needs-costs = Needs: drink costs.
needs-sales-and-costs = Needs: drinks sold per week and drink costs.
sizes-without-sales = { $sizes ->
    [one] 1 size has no weekly sales yet.
   *[other] { $sizes } sizes have no weekly sales yet.
}
sizes-without-cost = { $sizes ->
    [one] 1 size has no cost yet.
   *[other] { $sizes } sizes have no cost yet.
}
new-today = { $prices ->
    [one] 1 more price is new today. Its earlier price is unknown.
   *[other] { $prices } more prices are new today. Their earlier prices are unknown.
}

## Price history

price-history = Price history
price-on = the price of { $day }
change-date = Change date
change-date-of = Change date of { $price }
last-quoted = Last quoted
history-how = Remove a mistyped price, or change its date. Change the current price above.
remove-past-price = Remove past price
quoted-on = Quoted on
quoted-price = Price: { $price }
set-date = Set date
change-quote-date = Change quote date
choose-quote-date = No date yet. Choose the day of the quote, such as last Monday.
quoted-prices = Quoted prices

## Price watch

choose-view = Choose a view
price-changes = Price changes
what-if = What if
cost-drivers = Cost drivers
no-prices-yet = No prices yet
no-prices-how = Add an ingredient with its pack size and case price. Then see which drinks each price affects.
weeks-back = { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}
choose-period = Choose a period
since = Since
choose-past-day = No date yet. Choose a past day, such as last Monday.
day-ahead = { $day } is in the future. Choose today or an earlier day.
no-price-changed = No price has changed since { $day }.
prices-changed = { $prices ->
    [one] 1 price changed since { $day }.
   *[other] { $prices } prices changed since { $day }.
}
none-dropped-since = No size dropped below target since { $day }.
some-dropped-since = { $sizes ->
    [one] 1 size dropped below target since { $day }.
   *[other] { $sizes } sizes dropped below target since { $day }.
}
dropped-with = { $sizes ->
    [one] What costs more in it: { $names }.
   *[other] What costs more in them: { $names }.
}
no-size-would-drop = No size would drop below target.
sizes-would-drop = { $sizes ->
    [one] 1 size would drop below target.
   *[other] { $sizes } sizes would drop below target.
}
no-price-from = No price from { $day } for { $names }. Today’s price is used.
names-and-more = { $more ->
    [one] { $names } and 1 more
   *[other] { $names } and { $more } more
}
current-packs-only = Compares the prices of your current packs.
before = Before
now = Now
change = Change
new-price = New price
changed-prices = Changed prices
after = After
profit-sum = { $sizes ->
    [one] Drinks sold per week × profit per drink, for 1 size.
   *[other] Drinks sold per week × profit per drink, added up for { $sizes } sizes.
}
no-weekly-sales = No size has both a price and weekly sales yet.
enter-prices-and-sales = Set prices first. Then enter drinks sold per week in Sizes, under Sales.
just-a-test = Just a test: your book stays as is. Delivery and deposits stay the same.
add-item = Add an item
all-from = All from { $supplier }
percent-change = Percent change
items-to-test = Items to test
remove-all = Remove all
choose-item-to-test = Choose an item to test.
beyond-tested = Type a number from { $least } to { $most }. For 20% more, type 20. For 10% less, type -10.
profit-change = Profit change
driver-figures = All figures
cost-per-week = Cost per week
share-of-cost = Share of cost
ten-percent-up = Price up 10%
weekly-cost-is = Ingredients and packaging cost you { $cost } per week.
biggest-driver = Your biggest cost driver is { $name }, at { $share }.
driver-up = If the price of { $name } goes up 10%, your profit drops by { $less } per week.
driver-surcharge-only = A 10% price increase for { $name } changes nothing. You pay only for delivery or deposit.
all-free = Everything you use is free.
driver-cost = { $name }: drinks sold per week × its cost in each drink, plus waste and free drinks, is { $cost }.
driver-share = { $cost } ÷ { $all } is { $share }.
driver-ten-percent = 10% of { $cost } is { $less }.
driver-price-part = The price is { $price } of the { $paid } you pay per pack.
driver-ten-percent-of-price = 10% of { $cost } × { $price } ÷ { $paid } is { $less }.
other-items = { $count ->
    [one] 1 other item
   *[other] { $count } other items
}
not-in-counted-drinks = Not used in any counted drink: { $names }.

## The buying list

no-list-yet = No list yet
no-list-how = Choose what you plan to make. You get a list of what to buy, by supplier. Or add items by hand.
replace-list = Replace this list
made-stays = Made { $day }. New plans and new quotes do not change this list.
share-or-print = Share or print
include-prices = Include prices
share-as-text = Share as text
add-by-hand = Add by hand
add-to-list = Add to list
item-in-pack = { $name }, { $pack }
item-in-pack-from = { $name }, { $pack } from { $supplier }
packs-no-longer-in-book = { $packs ->
    [one] 1 pack, no longer in your book
   *[other] { $packs } packs, no longer in your book
}
drinks-to-make-about = Planned batches, plus weeks of your typical sales.
batches-from = Batches from
choose-day = No date yet. Choose a day, such as today.
planned-batches = Planned batches
no-batches-planned = No batches from this day on. Plan one in Counter, choose an earlier day, or type weeks.
weeks-of-sales = Weeks of sales
too-many-weeks = A list covers at most { $weeks } weeks. Type a smaller number, such as 2.
sizes-not-on-list = { $sizes ->
    [one] 1 size has no weekly sales, so the list leaves it out.
   *[other] { $sizes } sizes have no weekly sales, so the list leaves them out.
}
what-to-buy = What to buy
what-to-buy-about = What you need, minus stock on hand. Costs include volume pricing, delivery and deposits.
total-cost = Total cost
items = Items
current-packs = Current packs
cheapest-packs = Cheapest packs
cheapest-would-save = The cheapest packs would save you { $money }.
no-cheaper-packs = No other packs cost less.
counts-are-old = { $counts ->
    [one] 1 count on hand is from { $day }. What you used since is not deducted.
   *[other] { $counts } counts on hand are from before today, the oldest from { $day }. What you used since is not deducted.
}
count-again = Count again
nothing-to-buy = You have all you need on hand.
enough-on-hand = Enough on hand
free-items = Free, so not on the list: { $names }.
make-list = Make the list
make-buying-list = Make buying list
replaces-list = This replaces your current list. Undo brings that one back.
use-these-packs = Use these packs
more-for-less = Buy { $more } instead of { $packs }: { $money } less in all.
buy-packs-instead = Buy { $packs }
buy-packs-instead-for = Buy { $packs } of { $name }
use-these-packs-for = Use these packs for { $name }
left-out = Not on the list:
left-out-because = { $name }. { $why }
size-not-on-menu = This size is no longer on the menu.
amount-needed = Amount needed: { $amount }.
on-hand-today = On hand: { $amount }, counted today.
on-hand-since = On hand: { $amount }, counted { $day }.
on-hand-not-counted = On hand: not counted.
count-of-today-unused = Today’s count on hand is not used.
count-unused = The count on hand from { $day } is not used.
buy-packs = Buy { $packs }.
buy-packs-from = Buy { $packs } from { $supplier }.
order-at-least = At least { $packs } packs per order.
left-over = Left over: { $amount }.
enough = Enough on hand.
packs-would-save = { $packs } would save you { $money }.
packs-would-save-from = { $packs } from { $supplier } would save you { $money }.
to-buy = To buy
bought = Bought
total = Total
list-is-empty = The list is empty.
items-bought = { $items ->
    [one] { $bought } of 1 item bought
   *[other] { $bought } of { $items } items bought
}
no-supplier = No supplier
supplier-totals = Total { $total }: { $bought } bought, { $left } to buy.
items-without-price = { $items ->
    [one] 1 item has no price.
   *[other] { $items } items have no price.
}
list-step = Change { $name } on buying list
change-item = Change { $name }
packs-of = Packs of { $name }
paid-per-pack = Paid per pack of { $name }
on-hand-of = { $amount } on hand
packs-for-need = { $packs }, { $amount } needed
rows-rounded-up = Each row is rounded up to whole packs.
paid-per-pack-head = Paid per pack
no-price-paid = No price yet. Type what you pay per pack.
quoted-one = Quoted { $price }
quoted-each = Quoted { $price } each, { $total } total
paid-one = Paid { $price }
paid-each = Paid { $price } each, { $total } total
prices-paid = Prices paid
prices-paid-about = Save them to cost your drinks with the new prices.
paid-instead-of = { $item }: { $paid } instead of { $quoted }
show-drinks-affected = Show sizes affected
save-prices-paid = Save prices paid
prices-as-quoted = You paid the quoted prices. They get today’s date.
prices-change = { $prices ->
    [one] 1 price changes.
   *[other] { $prices } prices change.
}
price-not-saved = { $name }: this pack is no longer in your book. Add the pack again, then enter its price.
after-shopping = After shopping
finish-list = Finish this list
finish-buying-list = Finish buying list
nothing-bought = You checked off no items, so your stock stays the same.
bought-added = { $items ->
    [one] 1 item you bought is added to your stock.
   *[other] { $items } items you bought are added to your stock.
}
prices-saved = { $prices ->
    [one] 1 price you paid is saved.
   *[other] { $prices } prices you paid are saved.
}
list-deleted = Then the list is deleted.
list-deleted-with = { $items ->
    [one] Then the list is deleted, with 1 item you did not buy.
   *[other] Then the list is deleted, with { $items } items you did not buy.
}
undo-brings-back = Undo brings everything back.
count-starts-anew = { $name }: the old count cannot be used. A new count starts with what you bought.
pack-not-added = { $name }: this pack is no longer in your book, so your stock stays the same.
list-of = Buying list, { $day }
supplier-total = { $supplier }: { $total }
list-total = Total: { $total }
list-line = { $name }, { $packs }
list-line-cost = { $name }, { $packs }: { $cost }
no-list-to-print = No list yet. Make one in Buying.
made-on = Made { $day }
quoted = Quoted
paid = Paid
