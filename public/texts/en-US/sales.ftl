# What sold: weeks, the register’s file, trials of a change, scenarios, sizes side by side.

## Days and weeks

week-of = Week of { $day }
batch-of = Batch of { $day }
monday-to-sunday = Mon to Sun

## Sales of a typical week

sales = Sales
about-sales = Enter weekly sales of each drink and size. Every comparison uses them.
what-sells = What do you sell each week?
add-sizes-first = Add a size to a drink in Drinks first. Then enter weekly sales here.
typical-week = Typical week
about-typical-week = Type sales of each size below, or use the average of your weeks.
no-sales-yet = No sales yet. Type weekly sales below, or import them from your register.
typical-by-size = Typical sales
about-typical-by-size = How many of each do you sell in a typical week? Leave blank if unsure.
use-average = Use 4-week average
average-over = { $count ->
    [one] The average covers the week of { $weeks }.
   *[other] The average covers { $count } weeks: { $weeks }.
}
average-changes = { $sizes ->
    [one] 1 size gets a new number.
   *[other] { $sizes } sizes get a new number.
}
average-of-none-sold = A size missing from one week counts as zero that week. A size missing from every week keeps its number.
average-skips = { $count ->
    [one] The week of { $weeks } has no entries, so the average skips that week.
   *[other] The weeks of { $weeks } have no entries, so the average skips them.
}

## How the figures of sales come about

week-in-math = Drinks sold × profit per drink, added up: { $sum }.
entered-week-in-math = Drinks sold × profit per drink at the time of entry, added up: { $sum }.
more-terms = { $count } more
nothing-counted = No drinks counted yet.
nothing-entered = No sales entered yet.
not-counted = Not counted: { $sizes }.
not-counted-and-more = Not counted: { $sizes }; and { $more } more.
size-not-on-menu = { $size } (not on the menu)
size-without-price = { $size } (no price yet)
size-without-sales = { $size } (no weekly sales)
size-stuck = { $size } (needs details)
not-on-menu = This size is not on the menu. Add the size to the drink first.
no-price-yet = This size has no price yet. Set a menu price first.
no-weekly-sales = This size has no weekly sales. Type how many you sell, such as 24.
profit-not-known = Profit per drink is not known yet.

## Weeks that were entered

sales-by-week = Sales by week
about-sales-by-week = Each week keeps the profit per drink from when you entered the sales.
no-weeks-yet = No weeks yet. Enter a week, or import sales from your register below.
enter-this-week = Enter this week
update-this-week = Update this week
drinks-in-week = { $drinks ->
    [one] 1 drink sold
   *[other] { $drinks } drinks sold
}
about-week = Type how many of each you sold. A new entry uses today’s profit per drink. A corrected entry keeps its first profit. Clear a field to remove the entry.
week-not-over = This week is not over. Add sales as you go.
other-weeks = Other weeks
previous-week = Previous week
next-week = Next week
drinks-sold = Drinks sold
profit = Profit
sales-by-drink = Sales by drink
no-matches = No matches. Try another name.
more-drinks = { $drinks ->
    [one] 1 more drink. Search by name to see more.
   *[other] { $drinks } more drinks. Search by name to see more.
}

## Sales from the register’s file

register-sales = Register sales
about-register-sales = Export sales as CSV from your register or a spreadsheet, one row per drink and size. Choose the file here. You check the rows before you import.
sales-file = Sales file (CSV)
match-columns = Match columns
choose-columns = Choose the columns for drink and quantity.
choose-column = Choose a column
choose-date-order = Choose an order
column-number = Column { $number }
column-drink = Drink
column-size = Size
size-in-drink-column = Same as drink
column-quantity = Quantity
column-date = Date
one-week-only = No dates: one week only
which-week = Week
date-order = Date order
day-first = Day first: 23/11/2026
month-first = Month first: 11/23/2026
import-sales = Import sales
week-to-import = { $drinks ->
    [one] Week of { $day }: 1 drink sold, profit { $profit }
   *[other] Week of { $day }: { $drinks } drinks sold, profit { $profit }
}
week-to-replace = { $drinks ->
    [one] Week of { $day }: 1 drink sold, profit { $profit }. This replaces your entries for these sizes.
   *[other] Week of { $day }: { $drinks } drinks sold, profit { $profit }. This replaces your entries for these sizes.
}
more-not-shown = { $count } more not shown
rows-ready = { $rows ->
    [0] No row can be imported.
    [one] 1 row is ready to import.
   *[other] { $rows } rows are ready to import.
}
rows-to-skip = { $rows ->
    [one] 1 row will be skipped:
   *[other] { $rows } rows will be skipped:
}
rows-imported = { $rows ->
    [one] 1 row imported.
   *[other] { $rows } rows imported.
}
rows-skipped = { $rows ->
    [one] 1 row skipped.
   *[other] { $rows } rows skipped.
}
undo-import = Undo removes these sales again.

file-too-large = This file is larger than 10 MB. Export fewer weeks at a time.
file-empty = This file is empty. Choose another file.
file-not-text = This file is not plain text. Save the list as CSV (UTF-8), then choose the file again.
file-without-columns = This file has no columns. Save the list as CSV, such as: Drink, Size, Quantity, Date.
file-too-many-columns = This file has more than 200 columns. Keep only drink, size, quantity and date.
file-without-rows = This file has column names, but no sales below them. Choose another file.
file-open-quote = The row at line { $line } has a quotation mark that never closes. Save the list as CSV again.

row-skipped = Line { $line }: “{ $row }”. { $why }
row-too-short = This row is missing columns. Fill in the row, or delete the row.
row-without-drink = This row names no drink. Type the name on your menu.
row-of-unknown-drink = No drink on the menu is called “{ $drink }”. Use the name on your menu.
row-without-size = This row does not say which size of { $drink }. Type a size on your menu.
row-of-unknown-size = { $drink } is not sold in “{ $size }”. Use a size on your menu.
row-of-several = Two or more sizes are called “{ $name }”. Rename one of them.
row-below-zero = The quantity is below zero. Subtract returns from sales in your file.
row-not-a-number = “{ $text }” is not a number. Type digits, such as 12.
row-without-date = This row has no date. Use dates such as 2026-11-23.
row-not-a-date = “{ $text }” is not a date. Use dates such as 2026-11-23.
row-of-two-dates = “{ $text }” could be two dates. Choose the date order above.
row-too-large = The week’s total has more than nine digits. Check for an extra digit.

## Trials of a change

trials = Trials
about-trials = Did a change work? Compare the weeks before with the weeks since.
did-it-work = Did the change work?
teach-trials = Name a change and the week you made it: a new size, price or cup. See how profit per week moved, and whether that may be chance.
trials-need-weeks = A trial compares weeks of sales. You have none yet.
enter-weekly-sales = Enter weekly sales
start-trial = Start a trial
trial-since = { $drinks }, since { $day }
trial-from = { $drinks }, starts { $day }
new-trial = New trial
trial-name = Trial name
example-change = Add a 12 oz cup
delete-trial = Delete trial
day-of-week = This is not a date. Choose any day of that week, such as its Monday.
trial-setup = Trial setup
about-trial-setup = Weeks start on Monday. Any day of the week will do.
drinks-compared = Drinks compared
compare-from = Compare from
change-starts = Change starts
last-week = Last week
blank-while-running = Leave blank while the trial runs.
weekly-difference = Difference per week
likely-range = Likely range
likely-between = { $low } to { $high }
no-range = Not known: weeks alike
week-by-week = Week by week
about-week-by-week = Profit of each week before overhead, as entered at the time. The scale may not start at zero.
open-sales = Open sales
before = Before
with-change = With the change
side-averages = Side averages
trial-weeks = Trial weeks
side = Side

better = Better
worse = Worse
not-clear-yet = Not clear yet
too-close = Too close to tell
needs-more-weeks = Needs more weeks
nothing-sold = No sales in any of these weeks, so you have nothing to compare.
weeks-earned-more = The weeks since the change earned more than the weeks before.
weeks-earned-less = The weeks since the change earned less than the weeks before.
chance-is-unlikely = Chance alone would rarely do that.
weeks-all-alike = But all weeks on each side are the same, and real weeks never are. Check your entries.
no-difference = The weeks before and since earned the same on average.
may-be-chance = { $weeks ->
    [one] The difference may still be chance. If sales go on like this, 1 more week would likely settle the question.
   *[other] The difference may still be chance. If sales go on like this, { $weeks } more weeks would likely settle the question.
}
too-small-to-tell = The difference may be chance. Normal ups and downs are bigger, and you have few weeks before the change. Even { $weeks } more weeks, two years, would likely not settle the question. Earlier weeks may, if you have them.
two-weeks-each-side = A trial needs two weeks on each side, to see how weeks go up and down.
weeks-needed-before = { $weeks ->
    [one] Add 1 more week before the change.
   *[other] Add { $weeks } more weeks before the change.
}
weeks-needed-since = { $weeks ->
    [one] Add 1 more week with the change.
   *[other] Add { $weeks } more weeks with the change.
}
average-before = Average before: { $money } a week over { $weeks } weeks.
average-since = Average with the change: { $money } a week over { $weeks } weeks.
more-per-week = Difference: { $money } more a week.
less-per-week = Difference: { $money } less a week.
no-range-in-math = All weeks on each side are the same, so a range cannot be figured.
range-in-math = Weeks differ from their average by about { $before } before and { $since } with the change (standard deviation). Welch’s t-test with { $degrees } degrees of freedom gives a range from { $low } to { $high }. In 95 of 100 cases, such a range includes the true difference.
weeks-missing = { $count ->
    [one] No entries, so left out: the week of { $weeks }.
   *[other] No entries, so left out: the weeks of { $weeks }.
}
weeks-missing-and-more = No entries, so left out: the weeks of { $weeks } and { $more } more.
running-week = The week of { $day } is not over, so not counted yet.
trial-caution = A trial is not proof. Weather, season, holidays, a new neighbor or a price nearby move sales too. Your change then gets all the credit, or all the blame. Compare like weeks, and change one thing at a time.

## Scenarios

scenarios = Scenarios
about-scenarios = Try changes on a copy of your menu. Your real menu stays the same.
teach-scenarios = What if your menu changed?
teach-copy = Copy today’s menu. Change prices, sizes and weekly sales, then compare profit per week with today.
teach-plan = You can also save a plan here from { $screen }.
copy-menu = Copy today’s menu
scenario-line = { $sizes } · { $difference }
scenario-name = Scenario name
new-scenario = New scenario
example-scenario = Two sizes only
make-menu = Make this the menu
scenario-made-menu = Make scenario the menu
discard-scenario = Discard scenario
about-make-menu = A restore point is kept first, and the scenario stays. Undo brings today’s menu back.
scenario-assumes = Weekly sales here are those of this scenario. You have not made these sales yet.
change = Change
change-drink = Change { $drink }
close-drink = Close { $drink }
choose-container = Choose a container
add-size = Add a size
size-added = Add size to scenario
size-removed = Remove size from scenario
menu-price-of = Menu price of { $size }
weekly-sales-of = Weekly sales of { $size }
blank-if-unsure = blank if unsure
scenario-price = Scenario price
scenario-sales = Scenario sales
compared-with-today = Compared with today
in-this-scenario = In this scenario
difference = Difference
number-of-sizes = Sizes
opening-stock = Opening stock
weeks-of-stock = Weeks of stock
weeks-to-stock = Weeks to stock
scenario-leaves-out = In this scenario: { $what }
today-leaves-out = Today: { $what }
both-leave-out = Both: { $what }

## Sizes side by side

whole-menu = Whole menu
side-by-side = side by side
no-size-chosen = No size chosen. Choose at least one.
no-sizes-yet = This drink has no sizes yet.
which-sizes-pay = Which sizes are worth selling?
teach-side-by-side = Add two or more sizes to a drink in Drinks. Then compare cost, profit and price by volume here.
sizes-left-out = { $sizes ->
    [one] 1 size needs details and is left out.
   *[other] { $sizes } sizes need details and are left out.
}
add-details = Add details
open-drink = Open drink
no-drink-in-all = No drink comes in every size shown. Leave a size out.
one-drink-in-all = 1 drink comes in every size shown. The figures are for that drink.
drinks-in-all-by-sales = { $drinks ->
    [one] 1 drink comes in every size shown. Figures are averages, weighted by weekly sales.
   *[other] { $drinks } drinks come in every size shown. Figures are averages, weighted by weekly sales.
}
drinks-in-all-alike = { $drinks ->
    [one] 1 drink comes in every size shown. Figures are plain averages until you enter weekly sales.
   *[other] { $drinks } drinks come in every size shown. Figures are plain averages until you enter weekly sales.
}
left-out-not-sold = { $drink }: not sold in { $size }
left-out-stuck = { $drink }: needs details in { $size }
left-out-without-price = { $drink }: no price yet in { $size }
left-out-without-sales = { $drink }: no weekly sales
average-price-in-math = Average price in { $size }: ({ $sum }) ÷ { $weight } = { $average }. Costs and profit average the same way. Margin is figured on the totals of all these drinks, before tax.
per-drink = Per drink
reductions-taken = Discounts
sizes-per-drink = Sizes per drink
profit-per-labor-minute = Profit per labor minute
target = Target
on-target-of = { $on } of { $drinks }
not-possible = not possible
was-today = today
is-tried = tried
cost-breakdown = Cost breakdown
costs-by-size = Costs by size
per-volume = Per { $volume } poured
sizes-by-volume = Sizes by volume
price-against-smallest = Versus smallest size
smallest = smallest
pays-most-and-least = By volume, customers pay most in { $most } ({ $high }) and least in { $least } ({ $low }).
pays-alike = By volume, customers pay the same in every size.
no-size-has-price = No size has a price yet.
next-size-up = Next size up
from-to = { $small } to { $large }:
price-up = Price up { $by }.
price-down = Price down { $by }.
cost-up = Cost up { $by }.
cost-down = Cost down { $by }.
you-keep = You keep { $kept }: { $share } of the extra price before tax.
price-rises = From { $small } to { $large }, the price goes up { $by }.
price-stays = From { $small } to { $large }, the price stays the same.
price-falls = From { $small } to { $large }, the price goes down { $by }.
cost-rises = The cost goes up { $by }.
cost-stays = The cost stays the same.
cost-falls = The cost goes down { $by }.
tax-rises = Tax takes { $by } more.
tax-falls = Tax takes { $by } less.
fees-rise = Fees take { $by } more.
fees-fall = Fees take { $by } less.
reductions-rise = Discounts take { $by } more.
reductions-fall = Discounts take { $by } less.
you-keep-nothing = You keep nothing of the extra price.
biggest-cost = Biggest cost: { $part }, { $share } in { $size }.
biggest-cost-in-two = Biggest cost: { $part }, { $share } in { $size } and { $other_share } in { $other }.
no-costs-yet = No costs yet.
profit-today = Profit today
price-today = Price today
axis-fill = Fill, { $unit }

## What if

what-if = What if
use-changes = Use these changes
clear-changes = Clear changes
ingredient-cost-change = Ingredient cost change
about-ingredient-cost = Type a minus for lower costs. Enter real case prices in Buying.
change-too-far = Type a number from { $least } to { $most }, such as 20 for a fifth more.
target-of-book = Your book’s target. Drinks with their own target keep theirs.
target-of-kind = For every drink of this type.
target-of-drink = For this drink.
price-of = { $size }: price
raise-of = { $size }: raise prices by
fill-of = { $size }: fill
over-brimful = Brimful capacity is { $brimful }. Type a smaller fill.
nothing-filled = The fill is zero. Type more than zero, such as 12.

## The file of offers: heads of its columns

csv-drink = Drink
csv-container = Container
csv-fill = Fill (mL)
csv-money = { $what } ({ $currency })
csv-your-price = Your price
csv-price-before-tax = Price before tax
csv-average-price = Average price before tax
csv-tax-rate = Tax rate (fraction)
csv-fees = Card fee and commission
csv-margin = Margin (fraction)
csv-target-margin = Target margin (fraction)
csv-status = Status
csv-reason = Reason

## Charts

chart-of = { $what }: chart. Arrow keys read each value.
chart-figures = Figures
chart-values = { $values ->
    [one] 1 value
   *[other] { $values } values
}
named-figure = { $name }: { $figure }

## Tried from a decision

try-it = Try it
try-it-for = { $weeks ->
    [one] Try it for 1 week
   *[other] Try it for { $weeks } weeks
}
set-up-trial = Set up trial
trial-length = { $weeks ->
    [one] About 1 week can tell this change from the usual ups and downs.
   *[other] About { $weeks } weeks can tell this change from the usual ups and downs.
}
trial-length-unknown = Enter weekly sales first, and the trial says how many weeks you need.
trial-length-elsewhere = Your weeks have no sales of these drinks. Enter some, and the trial says how many weeks you need.
trial-cannot-tell = { $weeks ->
    [one] A trial cannot tell this. It would take about 1 week.
   *[other] A trial cannot tell this. It would take about { $weeks } weeks.
}
trial-never-tells = A trial cannot tell this. The difference is too small.
trial-sets-up = This sets up a trial
trial-runs = { $weeks ->
    [one] It runs 1 week: { $first } to { $last }.
   *[other] It runs { $weeks } weeks: { $first } to { $last }.
}
trial-compares = It compares these weeks with the weeks before. Make the change on the first day.
trial-planned = Planned
trial-not-begun = The change has not begun. Enter each week of sales as it ends.
trial-plan-from = Trial planned: { $first } to { $last }
trial-began = Trial since { $day }
trial-begins = Trial starts { $day }
trial-ended = Trial { $first } to { $last }
open-trial = Open trial

## What if: shares, suppliers, fees

mix-over = The shares come to more than 100%. Lower one.
mix-under = The shares come to less than 100%. Leave one size blank to take the rest.
mix-without-sales = You have no weekly sales yet. Enter them in Weekly sales, then try shares.
week-earned = These sizes bring { $profit } a week
earns-more-a-week = You earn { $profit } more a week
earns-less-a-week = You earn { $profit } less a week
earns-same-a-week = You earn the same a week
no-week-known = No weekly sales yet
enter-week-first = Enter weekly sales to see profit per week.
same-sales = { $drinks ->
    [one] Counts 1 sold a week, as today. Overhead stays the same, so it is left out.
   *[other] Counts { $drinks } sold a week, as today. Overhead stays the same, so it is left out.
}
week-covers = { $compared ->
    [one] { $drinks } drinks count. The table compares the 1 sold in every size shown.
   *[other] { $drinks } drinks count. The table compares the { $compared } sold in every size shown.
}
week-of-drinks = { $counted ->
    [one] This counts 1 of { $all } drinks: the one sold in these sizes.
   *[other] This counts { $counted } of { $all } drinks: those sold in these sizes.
}
new-prices-count = { $drinks ->
    [one] New prices count for the 1 drink in every size shown. { $all } drinks are sold.
   *[other] New prices count for the { $drinks } drinks in every size shown. { $all } drinks are sold.
}
even-at = You earn today’s profit with { $buyers } of 100 buyers.
even-over = { $buyers ->
    [one] You need 1 more buyer for each 100 to earn today’s profit.
   *[other] You need { $buyers } more buyers for each 100 to earn today’s profit.
}
with-changes = With changes
size-to-change = Size to change
goods-to-change = Ingredient or packaging
choose-goods = Choose one
pack-of = { $goods }: pack
pack-price-of = { $goods }: case price
costs-and-fees = Costs and fees
shares-of-sizes = Shares of sizes
share-of-buyers = { $size }: share of buyers
blank-takes-rest = Blank sizes share the rest as today.
as-in-book = as today
count-changed = { $count ->
    [one] 1 changed
   *[other] { $count } changed
}
tried-wage-too-low = An hourly wage is zero or more, such as 18.
what-it-changes = What this changes
what-it-leaves = What stays out
nothing-to-use = Nothing here can go into your book.
use-price = { $offer }: price { $to } instead of { $from }.
use-first-price = { $offer }: price { $to }. It has none today.
prices-rise = { $size }: { $drinks } prices, each { $by } more.
prices-fall = { $size }: { $drinks } prices, each { $by } less.
each-new-price = Each new price
use-fill = { $drinks ->
    [one] { $size }: fill { $to } instead of { $from }, in 1 drink.
   *[other] { $size }: fill { $to } instead of { $from }, in { $drinks } drinks.
}
use-pack = { $goods }: buy { $to } instead of { $from }.
use-target = { $drinks ->
    [0] Target margin: { $to } instead of { $from }, for your book.
    [one] Target margin: { $to } instead of { $from }, for 1 drink.
   *[other] Target margin: { $to } instead of { $from }, for { $drinks } drinks.
}
use-waste = { $drinks ->
    [0] Waste: { $to } instead of { $from }, for your book.
    [one] Waste: { $to } instead of { $from }, for 1 drink.
   *[other] Waste: { $to } instead of { $from }, for { $drinks } drinks.
}
use-wage = Hourly wage: { $to } instead of { $from }.
use-card-fee = Card fee: { $to } instead of { $from }.
use-commission = Delivery app commission: { $to } instead of { $from }.
leave-ingredients = All ingredients { $change }: suppliers set their prices. Enter real quotes in Buying.
leave-pack-price = { $goods } at { $price }: your supplier sets that price. Enter a real quote in Buying.
leave-share = { $share } of buyers take { $size }: customers choose. Your weekly sales stay as entered.
undo-brings-back = Undo brings today’s figures back.
these-sizes-more = Drinks sold in these sizes earn { $profit } more a week.
menu-too-more = Other drinks change too. Your whole menu earns { $profit } more a week.
menu-too-less = Other drinks change too. Your whole menu earns { $profit } less a week.
menu-too-same = Other drinks change too. Your whole menu earns the same a week.
alone-more = The answer above counts these too. Without them, you earn { $profit } more a week.
alone-less = The answer above counts these too. Without them, you earn { $profit } less a week.
alone-same = The answer above counts these too. Without them, you earn the same a week.
beside-drink = Beside another drink
beside-as-in-book = These figures are as in your book, without what you try here.
choose-drink = Choose a drink
what-if-of = What if: { $drinks }
margin-counts = Margin is figured on: { $what }.
adds-up = Price before tax, less fees, discounts and full cost, leaves profit per drink.
how-figures-add-up = How figures add up
price-and-cost = Price and cost by size
rows-rounded = Rows are rounded one by one, so they may not add up to the cent.
by-volume = By volume
scenario-terms = Both sides show profit of the whole menu before overhead. Sizes sold as today count your last weeks.
scenario-is-menu = This is today’s menu already.
make-these-changes = Make these changes
drinks-that-change = What differs
drinks-as-today = Same as today
count-drinks = { $drinks ->
    [one] 1 drink
   *[other] { $drinks } drinks
}
scenarios-compared = Side by side

## The decision sheet

print-report = Print client report
client-report = Client report
decision-sheet = Decision sheet
must-be-true = What has to be true
one-time-and-payback = One-time costs
trial-plan = Trial plan
assumptions = What this counts on
labor-counted = Labor is counted: fewer drinks take fewer paid hours.
labor-left-out = Labor is left out: paid hours stay the same.
sheet-caution = Nobody can know what people will buy. This sheet says what has to be true for the change to pay. It is not legal, tax or food-safety advice.
plan-of-weeks = { $weeks ->
    [one] Try the change for about 1 week, and compare with the weeks before.
   *[other] Try the change for about { $weeks } weeks, and compare with the weeks before.
}
plan-unknown = Enter weekly sales before you start. Then the app says how many weeks can tell.
even-share = { $buyers ->
    [one] It pays as much as today with 1 buyer for every 100 today.
   *[other] It pays as much as today with { $buyers } buyers for every 100 today.
}
drinks-not-listed = { $drinks ->
    [one] 1 more drink is counted.
   *[other] { $drinks } more drinks are counted.
}

## Charts of weeks

over-time = Profit over time
week-beginning = Week of
same-terms = Typical and entered weeks count the same profit, overhead included. Decisions leave overhead out.
change-at = { $change } starts
likely-range-line = Likely range
count-weeks = { $weeks ->
    [one] 1 week
   *[other] { $weeks } weeks
}
count-sizes = { $sizes ->
    [one] 1 size
   *[other] { $sizes } sizes
}
newest-seen = newest { $day }
