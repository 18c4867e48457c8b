# The counter: recipe cards, batches, what is on hand, the lock, and sheets to print.

## Places at the counter

cards = Cards
batches = Batches
batch = Batch
on-hand = On hand
can-make = Can make
all-cards = All cards

## Choosing a card

no-cards-yet = No cards yet
no-cards-about = Each drink size gets its own recipe card. Add sizes to your drinks in Drinks.
no-matches = No matches.
print-cards = Print cards

## A recipe card

sizes = Sizes
drinks-at-once = Drinks at once
how-many-drinks = How many
for-drinks = { $drinks ->
    [one] For 1 drink
   *[other] For { $drinks } drinks
}
whole-number-of-drinks = Type a whole number from 1 to { $most }, such as 12.
volume-each = { $volume } each
fill-to-the-line = { $prep }, fill to the line
fill-to-the-line-alone = fill to the line
brewed-from = Brewed from { $name }
scooped = { $place }, scooped
scoop-weighs = (weighs { $weight })
too-little-to-measure = too little for your scale or cup: make several
rounded-on-both = Amounts round to { $scale } on your scale and { $cup } in your measuring cup.
rounded-on-scale = Amounts round to { $scale } on your scale.
rounded-in-cup = Amounts round to { $cup } in your measuring cup.
rounded-finer = Small amounts are measured finer.
rounded-together = Together, they reach the fill line.
rounded-near = Together, they come within { $volume } of the fill line.
loss-included = These amounts include { $volume } of press or pour loss.
air-beaten-in = Air from blending: { $volume }
fill-to-line = Fill to the line. Headspace: { $headspace }.
fill-to-line-below-rim = Fill to the line, { $below } below the rim. Headspace: { $headspace }.
fill-to-volume = Fill to { $volume }. Headspace: { $headspace }.
fill-to-volume-below-rim = Fill to { $volume }, { $below } below the rim. Headspace: { $headspace }.
rounded-too-low = These rounded amounts stop { $volume } below the fill line. The exact amounts reach it.
rounded-too-high = These rounded amounts go { $volume } past the fill line. Stop at the line.
made-today = Made today.
other-cards = Other cards
previous = Previous
next = Next

## Cautions at the counter

untreated-packaged-ahead = Untreated juice: each package must carry the warning label (United States).
untreated-by-the-glass = Untreated juice by the glass: ask your local inspector what to tell customers.
untreated-either = Untreated juice: if packaged ahead, each package must carry the warning label (United States).
untreated-european = Untreated juice: keep cold and follow the food-safety plan. Ask your manager what to tell customers.
raw-produce-not-checked = Raw fruit or vegetables: not checked yet. Treat this drink as untreated juice. Tell your manager.
low-acid = Low-acid juice: refrigerate at all times. If kept warm, this juice can cause botulism.
may-be-low-acid = This juice may be low-acid: refrigerate at all times. Low-acid juice kept warm can cause botulism.
acidity-not-checked = Acidity not checked: refrigerate at all times. Low-acid juice kept warm can cause botulism.
under-labeled-size = This fill is { $short } under the labeled size. Tell your manager.
allergens-as-entered = Allergens are only as right as what you entered. Check every label, and what shares the blender or press.

## Batches

first-batch = Your first batch
first-batch-about = Enter how many of each drink you make. The batch lists what to weigh, trim and press.
todays-date = Today, { $day }
nothing-planned = Nothing is planned yet.
batch-totals = { $sizes ->
    [one] 1 drink size: { $planned } to make, { $made } filled.
   *[other] { $sizes } drink sizes: { $planned } to make, { $made } filled.
}
make-a-batch = Make a batch
usual-day-about = A typical day is your weekly sales divided by 7, rounded up. Drinks made to order are left out.
batch-day = Batch day
choose-a-day = Choose a day on the calendar.
copy-batch = Copy batch of { $day }
plan-usual-day = Plan typical day
start-empty-batch = Start empty batch
start-batch-of = Start batch of { $day }
open-that-batch = Open that batch

## The plan of a batch

drinks-to-make = Drinks to make
drinks-to-make-about = Check off a drink once you fill it. If you change its number, check it off again.
menu-is-empty = Your menu is empty. Add a drink and its sizes in { $drinks } first.
no-drinks-planned = No drinks are planned yet. Add what you make.
add-to-batch = Add to batch
remove-drinks = Remove drinks
keep-drinks = Done removing
choose-drink-and-size = Choose a drink
number-of = Number of { $drink }
too-many-drinks = { $drinks } is too many. Type { $most } or fewer.
change-number-of = Change number of { $drink }
one-fewer = One fewer { $drink }
one-more = One more { $drink }
card-of = Card of { $drink }
add-drink-to-batch = Add { $drink } to batch
remove-drink-from-batch = Remove { $drink } from batch
check-off = Check off { $item }
uncheck = Uncheck { $item }
deducted = { $drinks ->
    [one] Deducted from stock: 1 drink. It counts once, so this row stays.
   *[other] Deducted from stock: { $drinks } drinks. Each counts once, so this row stays.
}
not-in-plan = Not in this plan yet: “{ $text }” as { $field }. Fix the number in the batch.

## What a batch needs

print-sheet = Print sheet
amounts-needed = Amounts needed
amounts-needed-about = Amounts round up to what you can measure, so you never run short. Press or pour loss is included.
prep-of = { $ingredient }, { $prep }
start-with = Start with
trimmed = Trimmed
juice = Juice
soaked-or-brewed = Soaked or brewed

## Filling and stock

after-filling = After filling
deduct-about = This deducts what your filled drinks used, as purchased. Each drink counts once, even if you delete its batch and start over.
deduct-from-stock = Deduct from stock
check-off-first = Check off the drinks you filled first.
all-deducted = All filled drinks are deducted from stock.
nothing-to-deduct = You have no stock counts for these drinks.
items-deducted = { $items ->
    [one] Deducted from stock: 1 item. Undo puts it back.
   *[other] Deducted from stock: { $items } items. Undo puts them back.
}
used-more-than-counted = You used more than you counted, so nothing is left: { $items }. Count again.
delete-batch = Delete batch
batch-deleted = You deleted the batch of { $day }. Undo brings it back.
deducted-batch-deleted = You deleted the batch of { $day }. What it used stays deducted. Undo brings the batch back.

## Not enough on hand

short-on = { $items ->
    [one] You are short on 1 item.
   *[other] You are short on { $items } items.
}
nothing-short = No counted item runs short.
count-items = Count items
used-in = Used in { $drinks }.
made-of-planned = { $made } of { $planned } drinks
best-plan = Best plan
not-enough-about = Buy more, count again or change the plan. Or use the best plan for your stock.
find-best-plan = Find best plan
use-this-plan = Use this plan
use-best-plan = Use best plan
planned-and-now = { $now } of { $planned } planned
made-as-planned = { $sizes ->
    [one] 1 drink size stays as planned.
   *[other] { $sizes } drink sizes stay as planned.
}
# What follows { $unseen } is heard by a screen reader, and not seen.
make-all-of = Make all{ $unseen } of { $drink }
best-plan-about = The best plan makes the most profit at your menu prices. Drinks without a price or profit get only what is left. Only counted items can run out.
enough-for-all = You have enough on hand for all of these drinks.
out-of-stock = You are out of { $items }, so you can make none: { $drinks }.
best-by-profit = No other plan makes more profit from your stock.
best-by-number = No other plan makes more drinks from your stock. No drink has a price, so the plan counts drinks.
best-found = This is the best plan found. Too many drinks share stock to try every plan. Another plan may make a little more.
made-from-what-is-left = Made from what is left: { $drinks }.
left-out-not-counted = Left out, because you counted nothing that they use: { $drinks }.
stock-left = { $item }: { $amount } left.
checked-need-too-much = The drinks you checked need more { $item } than you have. Uncheck one, or count again.
drink-gone-from-menu = { $drink } is no longer on the menu. Remove the drink from the batch, or add the size again.
drink-trouble = { $drink }: { $problem }

## On hand

stock-count = Stock count
stock-count-about = Count what you have, as purchased. What today’s batch is short of comes first.
search-stock = Find an item
nothing-to-count = You have no ingredients yet. Add them in Buying first.
counted-today = Counted today.
counted-yesterday = Counted yesterday.
counted-days-ago = { $days ->
    [one] Counted 1 day ago.
   *[other] Counted { $days } days ago.
}
counted-on = Counted on { $day }.
short = Short by { $amount }.
short-of-rest = Short by { $amount } for drinks not deducted yet.
units-do-not-convert = The count and the recipe use different units.
seasons-yields = By this season’s yields.
today-needs-this = Needed today. Count it.
today-short = Short today by { $amount }.
drinks-from-stock-about = Each number is for that size alone, from what you counted. Press several for the best plan for all of them.
can-make-of = { $drink }: { $number }
at-most = up to { $number }
drinks-without-counts = Not listed, since you counted nothing for them: { $drinks }.
count-to-see-drinks = Count an item first to see how many drinks you can make.
best-plan-together = Best plan together
runs-out-first = First to run out: { $item }.
runs-out-first-of-rest = Of the rest, first to run out: { $item }.
items-not-counted = { $items ->
    [one] 1 item is not counted.
   *[other] { $items } items are not counted.
}
no-counts-for-drink = You have no counts for this drink yet.
not-on-the-menu = This size is not on the menu.

## The lock

lock-this-device = Lock this device
lock-about = While locked, this device shows recipe cards, batches and stock only. Prices stay hidden. Undo works for batches and counts only.
new-pin = PIN (4–8 digits)
repeat-pin = Repeat PIN
lock-to-counter = Lock to Counter
lock-caution = A PIN keeps curious hands off, but is no real security. “Forgot PIN?” shows a sentence that opens the device. Browser tools or another browser get past the lock too. The PIN is stored as typed, so never use the PIN of a card or phone.
lock-not-kept = This browser does not save settings, so the lock ends when you close the page. Allow storage for this page, or use another browser.
unlock = Unlock
pin = PIN
unlock-device = Unlock device
forgot-pin = Forgot PIN?
unlock-sentence = Unlock sentence
unlock-by-sentence = Unlock without PIN
# What a person types to unlock a device without the PIN; upper and lower case do not matter.
sentence-without-pin = open without the PIN
type-sentence = Type “{ $sentence }” to unlock this device. The lock is no real security.
other-sentence = That is a different sentence. Type “{ $sentence }”, word for word.
wrong-pin = That is not the PIN of this device. Try again as often as you like.
choose-digits = Choose { $fewest } to { $most } digits, such as 4207.
pin-empty = No PIN typed yet.
pin-not-digits = A PIN has digits only, from 0 to 9.
pin-too-short = { $digits ->
    [one] 1 digit is too few.
   *[other] { $digits } digits are too few.
}
pin-too-long = { $digits ->
    [one] 1 digit is too many.
   *[other] { $digits } digits are too many.
}
pins-differ = The two PINs do not match. Type the same digits twice.
screen-may-go-dark = This browser cannot keep the screen on. In your device settings, set the longest screen timeout. Keep the device on its charger.

## Sheets to print

paper = Paper
letter-paper = Letter
print = Print
print-preview = Print preview
printed-on = Printed { $day }
cards-for = Drinks to print
ingredient = Ingredient
fill = Fill
below-rim = { $below } below rim
size-says = { $size }: { $said }
planned = Planned
made = Made
lot = Lot
initials = Initials
use-by-date = Use by
cost-of = cost { $cost }
no-prices-yet = No drink has a price yet. Set prices in Drinks.
owner-terms = Cost and margin: { $terms }.
no-cards-to-print = No cards to print yet. Add sizes to your drinks in Drinks.
batch-sheet = Batch sheet
no-batch = This day has no batch. Go back and start one.
to-fill = To fill
to-weigh = To weigh
short-on-hand = Short on hand
cautions = Cautions
storage = Storage
allergens = Allergens
done = done
warning-labels = Warning labels
buying-list = Buying list
price-sheet = Price sheet
prices = Prices
unit-price = Unit price
cost-and-margin = Cost and margin
no-drinks-to-print = You have no drinks yet. Add drinks in Drinks to print their prices.
drink = Drink
owner-copy = Owner copy: shows what drinks cost. Not for customers.
iced-sizes-include-ice = Sizes of iced drinks include the ice.
no-sales-tax = Your book has no sales tax. Check your local rules.
tax-included = Prices include { $rate } sales tax.
tax-added = Sales tax of { $rate } is added at the register.
no-tax-european = Your book has no VAT or tax. Check your local rules.
tax-included-european = Prices include { $rate } VAT or tax.
tax-added-european = VAT or tax of { $rate } is added at the register.
per-unit = per { $unit }
unit-price-of-menu-price = Unit price is menu price divided by labeled size. Where no size is labeled, the fill counts.
unit-price-of-customer-price = Unit price is what the customer pays, divided by labeled size. Where no size is labeled, the fill counts.
several-tax-rates-included = Prices include sales tax, at the rate of each drink.
several-tax-rates-added = Sales tax is added at the register, at the rate of each drink.
deposits-come-back = Deposits are paid back for empty containers.
several-tax-rates-included-european = Prices include VAT or tax, at the rate of each drink.
several-tax-rates-added-european = VAT or tax is added at the register, at the rate of each drink.
