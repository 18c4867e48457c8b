# The open book: its settings, files, copies and restore points; what fields say; what is not saved.

# Something new that is typed in and lacks something.
new-ingredient-unsaved = The new ingredient is not in your book yet.
new-packaging-unsaved = The new packaging is not in your book yet.
new-kit-unsaved = The new packaging kit is not in your book yet.
new-container-unsaved = The new container is not in your book yet.
new-drink-unsaved = The new drink is not in your book yet.
new-trial-unsaved = The new trial is not in your book yet.
new-local-price-unsaved = The new local price is not in your book yet.
new-scenario-unsaved = The new scenario is not in your book yet.
new-pack-unsaved = The new pack of { $of } is not in your book yet.
new-volume-price-unsaved = The new volume price for { $of } is not in your book yet.
new-headspace-unsaved = The new headspace of { $of } is not in your book yet.
new-capacity-unsaved = The new brimful capacity of { $of } is not in your book yet.
new-kit-item-unsaved = The new packaging for { $of } is not in your book yet.
new-recipe-line-unsaved = The new ingredient in { $of } is not in your book yet.
new-piece-size-unsaved = The new piece size in { $of } is not in your book yet.
still-needs = { $fields ->
    [one] Needs: { $needs }.
   *[other] Needs: { $needs }.
}
more-cases-wait = { $cases ->
    [one] 1 more is not finished.
   *[other] { $cases } more are not finished.
}
needs-name = name
needs-pack-size = pack size
needs-case-price = case price
needs-surcharge = delivery or deposit
needs-supplier = supplier
needs-headspace = headspace
needs-number-per-drink = amount per drink
needs-base-width = inside base width
needs-rim-width = inside rim width
needs-inside-height = inside height
needs-brimful-capacity = brimful capacity
needs-height-1 = height 1
needs-volume-1 = volume 1
needs-height-2 = height 2
needs-volume-2 = volume 2
needs-number-of-packs = minimum packs
needs-recipe-makes = what the recipe makes
needs-piece-size = piece size
needs-ingredient = ingredient
needs-ingredient-name = ingredient name
needs-amount = recipe amount
discard-draft = Discard draft
finish-now = Finish now
fix-field-to-see = Fix “{ $field }” to see this.
fix-field-first = Fix “{ $field }” first.

## What is not saved

keep-mine = Keep mine
take-theirs = Take theirs
save-as-new-book = Save new book
save-copy = Save a copy
still-saving = Your changes are still being saved. If you leave now, you may lose them.
on-this-screen-only = This book is on this screen only. If you leave now, you lose the book.
changes-not-saved = Your changes are not saved. If you leave now, you lose them.
delete-anyway = Delete anyway
update-anyway = Update anyway
switch-anyway = Switch anyway
close-anyway = Close anyway
stay-here = Stay here

## Things in a book, by kind

kind-settings = settings
kind-ingredient = ingredient
kind-packaging = packaging
kind-kit = packaging kit
kind-container = container
kind-drink = drink
kind-size = size
kind-week = week
kind-local-price = local price
kind-trial = trial
kind-scenario = scenario
kind-batch = batch
kind-buying-list = buying list
kind-named = { $kind } “{ $name }”
kind-numbered = { $kind } { $number }
kind-week-of = week of { $day }
kind-batch-of = batch of { $day }

## Reading a book file

file-too-large = This file is larger than 10 MB. No book is that large. Choose another file.
file-empty = This file is empty. Choose another file.
file-not-text = This file is not text. Choose a book file that Brimwright saved.
file-damaged = This file is damaged at line { $line }. Choose another copy.
file-cut-short = This file stops early, at line { $line }. Download the file again.
file-foreign = This file is not a Brimwright book. Choose a book file.
file-foreign-named = This file is a “{ $format }”, not a Brimwright book. Choose a book file.
file-no-version = This file does not say its version. Choose another copy.
file-newer = This file has version { $version }, newer than this Brimwright. Update Brimwright first.
file-not-read = Your browser could not read the file. Choose it again.
at-line = Line { $line }: { $problem }
at-place = Line { $line }, { $place }: { $problem }
file-field = field “{ $field }”
in-file-twice = Listed twice in the file. Keep one.
not-in-file = Missing from the file: { $kind }. Add that, or choose another copy.
not-imported = Not imported.
does-not-fit-file = Does not fit the rest of the file. Choose another copy.
field-unknown = “{ $field }” does not belong here. Remove that field.
field-missing = “{ $field }” is missing. Add that field, or choose another copy.
field-twice = “{ $field }” appears twice. Keep one.
list-too-long = This list has more than { $most } entries. No book needs more. Choose another copy.
part-too-large = This part is larger than { $megabytes } MB. No book needs more. Choose another copy.
value-wrong = “{ $found }” does not work here.
type-amount = Type a number and a unit, such as "40 lb" or "16 fl oz".
type-length = Type a number and a unit, such as "90 mm" or "3.5 in".
type-temperature = Type a number and F or C, such as "40 F" or "4 C".
type-day = Type the year, month and day, such as "2026-11-23".
type-currency = Type a currency code, such as "USD".
type-decimal = Type up to 9 digits, a point and up to 8 more, such as "25.80".
type-id = Type 1 to 16 characters from 0 to 9 and a to f, such as "1a".
type-choice = Type a known value, such as { $choices }.
type-in-quotes = { $bare } needs quotation marks. Type "{ $bare }".
type-text = Type text in quotation marks, such as "Apples" or "25.80".
type-list = Type a list in square brackets, such as [].
type-yes-no = Type true or false.
type-volume = Type a volume, such as "16 fl oz".
type-one-field = Type one field in braces, such as {"{"}"share": "0.05"{"}"}.
type-group = Type fields in braces, such as {"{"}"name": "Apples"{"}"}.
type-anew = This value cannot be read. Type a new value, or choose another copy.

## What an import or a restore point would change

same-as-open = Same as the open book.
import-counts = { $kind }: { $added } new, { $changed } changed, { $removed } removed
buying-list-changed = Buying list: changed
settings-changed = Settings: changed

## What of a damaged book is left out

settings-lost = Your settings are lost. Check currency, units, tax, wage and target margin under Book.
record-lost = A damaged entry has no name. Compare this book with your last copy.
entry-damaged = Damaged. Add this again.
settings-too-large = Your settings are larger than 1 MB. Check currency, units, tax, wage and target margin under Book.
record-too-large = An entry is larger than 1 MB. Compare this book with your last copy.
entry-too-large = Left out, since larger than 1 MB. Add this again.
repaired-book = Repaired book
title-damaged = The title of the book is damaged. Nothing else is lost.
entry-twice = Listed twice. The newer one is used.
entry-needs-lost = Left out. Lost: { $lost }. Add that first, then this.
entry-without-lines = { $lines ->
    [one] 1 line is left out. What the line names is lost.
   *[other] { $lines } lines are left out. What the lines name is lost.
}
left-out = Left out.
entry-does-not-fit = Left out. This does not fit the rest. Add this again.
and-more = And { $more } more.

## Restore points and deleted books

no-points-yet = No restore points yet. Your first change each day makes one.
point-gone = This restore point is gone. Choose another.
before-first-change = Before that day’s first change
before-import = Before an import
before-merge = Before changes from two tabs were joined
before-scenario = Before a scenario became the menu
before-yields = Before weighed yields were used
before-restore = Before going back to a restore point
before-deletion = Before the book was deleted
points-kept = Restore points stay for { $days } days, and the last { $points } stay longer. All books share { $megabytes } MB. The oldest points go first.
point-ingredients = { $ingredients ->
    [one] 1 ingredient
   *[other] { $ingredients } ingredients
}
point-size = { $kilobytes } kB
point-made-room = { $points ->
    [one] 1 older point was deleted to make room.
   *[other] { $points } older points were deleted to make room.
}
no-point-first-change = No restore point was made before today’s first change.
no-point-import = No restore point was made before the import.
no-point-merge = No restore point was made before changes from two tabs were joined.
no-point-scenario = No restore point was made before the scenario became the menu.
no-point-yields = No restore point was made before weighed yields were used.
no-point-restore = No restore point was made before you went back.
no-point-deletion = No restore point was made before the deletion.
no-point-no-room = This device is out of space. Your change is saved. Free up space. Your next change tries again.
no-point-browser = Your browser could not store the point. Your change is saved. Your next change tries again.
deleted-until = Deleted { $deleted }. Stays until { $until }.
deleted-gone = This book is gone. Open a saved file instead.
deleted-back = This book is back already. Open it under “Your books”.
not-back-no-room = The book is not back. This device is out of space. Free up space and try again, or save a file.
not-back-browser = The book is not back. Your browser could not store the book. Try again, or save a file.
deleted-not-whole = Parts of this book cannot be read. Check the readable parts.
book-contents = In this book: { $contents }

## Copies outside the browser

allow-again = Your browser needs your permission again to save copies to the file.
last-copy = Last copy: { $day }.
changes-since-copy = { $changes ->
    [0] No changes since.
    [one] 1 change since.
   *[other] { $changes } changes since.
}
no-copy-yet = No copy saved yet.
changes-so-far = { $changes ->
    [0] No changes so far.
    [one] 1 change so far.
   *[other] { $changes } changes so far.
}
no-copy-for-days = No copy of this book for { $days } days.
no-copy-for-changes = { $changes } changes without a copy of this book.
browser-keeps = Your browser agreed to keep your books until you delete them.
browser-may-remove = Your browser may remove your books when the device runs low on space. Save copies.
browser-silent = Your browser does not say how long your books stay. Save copies.
copies-go-to = Copies go to { $file }.
copies-go-to-saved = Copies go to { $file }. Last saved: { $when }.
copy-not-saved = No copy was saved to { $file }.
copy-file-gone = The file or its folder is gone. Choose a file again.
copy-not-allowed = Your browser did not allow this. Allow saving again.
copy-disk-full = The disk is full. Free up space. Your next change tries again.
copy-file-held = Another program has the file open. Close that program. Your next change tries again.
copy-failed = Your browser could not save the file. Choose a file again.
copy-later = Save later
allow-saving = Allow saving
stop-copies = Stop saving copies
choose-file = Choose a file
copies = Copies
copy-to-file = Save to a file

## Sharing a text

share-sent = Sent where you chose.
share-closed = Not shared. You closed the list of apps.
share-copied = Copied. Paste the text into a message.
share-by-hand = Your browser cannot share or copy. Select the text below and copy it.

## What was typed and does not read

typed-nothing = This field is empty. Type a number, such as { $example }.
not-a-number = “{ $text }” is not a number. Type digits, such as { $example }.
two-numbers = “{ $text }” could mean two numbers. Type { $one } or { $other }.
did-you-mean = { $typed }? Did you mean { $other }?
unknown-unit = “{ $unit }” is not a known unit. Use fl oz, mL, cup, lb, oz, g or ea, such as { $example }.
not-a-length = “{ $unit }” is not a unit of length. Use mm, cm or in, such as { $example }.
not-a-time = “{ $text }” is not a time. Type minutes and seconds, such as { $example }.
not-a-temperature = “{ $unit }” is not a temperature scale. Use °F or °C, such as { $example }.
unit-of-volume = “{ $unit }” is a volume.
unit-of-weight = “{ $unit }” is a weight.
unit-of-count = “{ $unit }” counts pieces.
type-a-volume = Type a volume, such as { $example }.
type-a-weight = Type a weight, such as { $example }.
type-pieces = Type a number of pieces, such as { $example }.
type-volume-or-weight = Type a volume or a weight, such as { $example }.
type-an-amount = Type an amount, such as { $example }.
not-one-amount = “{ $text }” is not one amount. Type a number and its unit, such as { $example }.
not-an-ending = “{ $text }” is not a price ending. Type endings with spaces between, such as { $example }.
no-minus = This cannot be below zero. Leave out the minus sign: { $example }.
too-many-digits = This number has more than nine digits. Check for an extra digit.
too-many-decimals = This number has more than six decimals. Round to six.
price-above-zero = The price must be more than zero. Type a price, such as { $example }.
gone-from-book = This is no longer in your book. Undo the removal, or go back.
use-reading = Use { $reading }
unit-of-field = Unit of { $field }
slider-of-field = Slider: { $field }
check-this = Check this
keep-value = Keep { $value }
back-to-value = Back to { $value }
back-to-blank = Back to blank
keep = Keep
back = Back

## Changes, and undoing them

no-changes-yet = No changes yet. Your changes show up here.
changes-about = Newest first. Undo any change by itself, unless a later one depends on it.
undone = Undone
undo-change-at = Undo { $change }, { $when }
undone-change = Undone: { $change }
redone-change = Redone: { $change }
another-tab = Another tab

## Pieces of many screens

remove-named = Remove { $name }
not-in-book = Not found
not-in-book-about = If you removed this here, press Undo. If another tab removed this, undo it there.
used-in = Used in
not-used = No drink uses this yet.
replace-with = Replace with
replace-and-remove = Replace and remove

## Settings

this-book = This book
book-name = Book name
units = Units
currency = Currency
change-country = Change country
units-about = Units change how amounts are shown and typed. A currency changes the sign and digits, not the amounts.
margin-figured-on = Margin is figured on
price-endings = Price endings
any-ending = any
price-endings-about = Such as { $example }. Suggested prices round up to the next ending.
tax-about = Ask your tax adviser which rate applies, and to which drinks.
tax-of-sample = Rates in this sample book are examples.
sales-tax-rate = Sales tax rate
tax-rate-european = VAT rate
card-fee = Card fee
card-fee-about = Share of what the customer pays.
share-and-fixed = { $share } + { $fixed }
app-commission = Delivery app commission
app-commission-about = Taken off the price of every drink. Type the average over all sales: { $share } on a fifth of them is { $average }.
counter-about = The smallest marks on your scale and measuring cups. Batches round up to them. Cards round to the nearest. If blank, batches round to { $weight } and { $volume }. Cards then show exact amounts.
scale-rounds-to = Scale rounds to
cup-marks = Measuring cup marks
supplier-prices = Supplier prices
supplier-prices-about = Buying flags prices that nobody has checked for this long.
flag-prices-older = Flag prices older than
days = days
after-days = { $days ->
    [one] after 1 day
   *[other] after { $days } days
}
never = never
shop-costs = Shop costs
wage-and-overhead = { $wage } an hour, { $overhead } overhead
hourly-wage = Hourly wage
hourly-wage-about = With payroll taxes and benefits.
overhead-about = Rent, power and other bills, split across the drinks you sell.
waste-about = Share of drinks you make and throw away.

## The screen of the book

sample-book-about = This is a sample book. Town, shop, suppliers, drinks and prices are made up. Change what you like.
all-books = All books
open-sample-book = Open sample book
close-book = Close book
cautions = Cautions
caution-untreated = In the United States, untreated juice packaged ahead must carry a warning on its label. Sold to another business, such juice must be treated under a HACCP plan. Low-acid juice must be kept refrigerated.
caution-untreated-european = Keep untreated juice cold and follow your food-safety plan. Your local authority decides what its label must say. Low-acid juice must be kept refrigerated.
caution-allergens = Allergens are only as right as what you enter.
caution-advice = Nothing here is legal, tax or food-safety advice. Local codes and licensed professionals decide.
files = Files
files-about = A book file has everything in it. Keep one outside this browser, which may clear its storage.
save-book-file = Save book file
save-sizes-csv = Save sizes (CSV)
import-book = Import book
import-book-file = Import book file
book-unchanged = Your book did not change.
replace-with-book = Replace this book with “{ $book }”?
replace-book = Replace this book
add-as-new-book = Add new book
import-about = You can undo this. Today’s book becomes a restore point.
reading-file = Reading the file
missing-or-damaged = Missing or damaged
open-book-file = Open book file
restore-points = Restore points
restore-points-about = Your whole book, saved before big changes and before each day’s first change.
show-changes = Show changes
save-file = Save a file
go-back-to = Go back to { $when }
restore-point = Restore this point
deleted-books = Deleted books
bring-back = Bring book back
delete-for-good = Delete for good
delete-for-good-ask = Delete for good…
delete-for-good-caution = This deletes the book for good. You cannot bring it back.

## Costs that vary
tax-by-kind = Tax by drink
drinks-per-payment = Drinks per payment
discounts = Discounts
free-drinks = Free drinks
marked-down = Marked down
marked-down-to = Marked-down price
blank-uses-rate = Leave blank to use { $rate }.
tax-of-kind = Tax on { $kind }
deposit-taxed = Tax on deposits
deposit-taxed-about = Check this if your state taxes bottle deposits.
drinks-per-payment-about = Drinks in one payment on average, such as { $example }. They share the fee per transaction.
commission-on = Commission on
price-without-tax = price before tax
price-with-tax = price with tax
overhead-per = Overhead per
drink-sold = drink sold
drink-made = drink made
each-week = week
overhead-needs-sales = Enter drinks sold per week first, or set overhead to 0. Only sales tell one amount from the other.
overhead-of-week = { $drinks ->
    [one] { $each } per drink: { $money } a week for 1 drink sold.
   *[other] { $each } per drink: { $money } a week over { $drinks } drinks sold.
}
overhead-over-week = { $drinks ->
    [one] { $each } per drink comes to { $money } a week with 1 drink sold.
   *[other] { $each } per drink comes to { $money } a week with { $drinks } drinks sold.
}
overhead-of-made = Wasted and free drinks bear { $each } too.
below-menu-price = Below menu price
below-menu-price-about = Leave blank what your shop does not do.
discounts-about = Share of sales at menu prices, such as { $example }.
free-drinks-about = Share of all drinks you hand out, such as { $example }.
marked-down-about = Share of drinks sold cheaper late in the day, such as { $example }.
marked-down-to-about = Share of the menu price, such as { $example }.
