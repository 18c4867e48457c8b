# Why a change is refused, what changed in another tab, and the names of fields.

## Records

the-settings = the settings
the-buying-list = the buying list
# Alone, or at the beginning of a sentence.
buying-list = The buying list
settings = Settings
and-list = { $before } and { $last }

## Why a change is refused

no-longer-in-the-book = No longer in your book: { $kind }. Undo the removal, or go back.
needs-first = Missing for { $user }: { $needed }. Add that first.
in-use = { $name } is used in { $users }. Replace or remove { $name } there first.
in-use-and-more = { $name } is used in { $users } and { $more } more. Replace or remove { $name } there first.
choose-replacement = Choose a replacement first.

blank = { $field }: nothing typed. Type at least one letter.
too-long = { $field }: over 80 letters. Shorten the text.
too-long-for-label = { $field }: over 400 letters. Shorten the text.
not-positive = { $field }: must be more than zero. Type a number such as 12.
negative = { $field }: cannot be below zero. Leave out the minus sign.
not-a-yield = { $field }: must be above 0% and at most 100%. Type 90 if 90% is left.
not-a-share = { $field }: must be at least 0% and under 100%. Type 5 for 5%.
not-a-part = { $field }: must be at least 0% and at most 100%. Type 10 if 10% melts.
two-rates = { $field }: one kind of drink has two rates. Keep one.
not-a-volume = { $field }: must be a volume, such as 16 fl oz or 500 mL.
not-a-count = { $field }: must be a number of pieces, such as 250 ea.
nothing-fits = { $field }: leaves no room for a drink. Type a smaller one.
more-than-brimful = { $field }: more than the container holds. Check the brimful capacity.
less-than-one = { $field }: must be at least 1. Type a number such as 12.
not-an-ending = { $field }: each must be under one, such as { $example } (under 100 without cents).
too-large = { $field }: too many digits to compute with. Check for an extra digit.
no-heights = { $field }: a height needs measures. First measure the cup, or enter readings of the bottle.
too-few = { $field }: one is not enough. A bottle needs at least two, the last at the rim.
falls = { $field } { $number }: must be higher and hold more than the one before. Measure again.
not-above-one = { $field }: must be more than 1. Enter the price of one pack above.
another-kind = { $field }: measure like the amount: a weight for a weight, pieces for pieces.
more-than-one = { $field }: only one ingredient can do that. Change the other one first.
neither-weight-nor-volume = { $field }: must be a weight or a volume, such as { $volume } or { $weight }.
not-a-packing = { $field }: must be above 0% and at most 100%. Loose cubes fill 54% to 67%: type 60.
not-a-monday = { $field }: must begin on a Monday. Choose the Monday.
not-after = { $field }: must come after the weeks before. Choose a later week.
not-a-weight = { $field }: must be a weight, such as 5 lb or 2 kg.
more-than-before = { $field }: more than the weight before. Trimming and pressing add no weight: weigh again.
not-whole = { $field }: must be a whole number, such as 12.
not-a-ph = { $field }: must be between 1 and 14. Type what your meter shows, such as { $example }, or leave blank.
not-measured-there = { $field }: must be 32 to 104 °F (0 to 40 °C), where water’s density is known.
too-many-days = { $field }: 730 at most. Check for an extra digit.
listed-twice = { $field }: the same thing is listed twice. Keep one.

## Steps that can be undone

undo-step = Undo { $step }
undone = Undone: “{ $step }”.
redone = Redone: “{ $step }”.
not-undone = Not undone: “{ $step }”. { $why }
not-redone = Not redone: “{ $step }”. { $why }
step-values = { $field }: { $was } to { $now }
step-and-time = { $step }, { $when }
undo-first = Undo these first: { $steps }.
undo-first-and-more = Undo these first: { $steps }; and { $more } more.
too-large-to-keep = Too large to keep. You can undo this until you leave this page.
already-undone = Nothing left to undo for { $step }. Another tab already did that.
already-redone = Nothing left to redo for { $step }. Another tab already did that.

changed-since-gone = This is no longer in your book. A later change or another tab removed it.
changed-since-record = { $name } has changed since then. Make this change by hand.
changed-since-to = { $name }, { $field }: now { $value }, changed by a later change or in another tab.
changed-since-removed = { $name }, { $field }: removed since then.
changed-since-form = { $name }, { $field }: changed since then.
other-fields = { $fields ->
    [one] 1 other field changed too.
   *[other] { $fields } other fields changed too.
}
change-by-hand = Make this change by hand.
changes-by-hand = Make these changes by hand.

## What another tab did

take-theirs = Take theirs: { $step }
keep-mine = Keep mine: { $step }
unlock-to-decide = Unlock this device to decide.
conflict-of-several = 1 of { $count }: { $said }
conflict = “{ $step }” is not saved. { $did } { $then }
another-tab-changed = Another tab changed { $name } too.
another-tab-changed-deleted = Another tab changed { $name }, which you deleted.
another-tab-deleted = Deleted in another tab: { $names }.
another-tab-uses = Another tab uses { $name } in { $users }.
another-tab-changed-to = Another tab changed { $name }, { $field }: now { $theirs }. Yours is { $mine }.
another-tab-removed = Another tab changed { $name } too. Removed: { $field }.
another-tab-changed-field = Another tab changed { $name } too: { $field }.
keep-or-take = Keep yours, or take theirs.
keep-one-back-or-take = Keep yours to bring it back, or take theirs.
keep-several-back-or-take = Keep yours to bring them back, or take theirs.
does-not-fit = Yours does not fit with that change. Fix that first, then keep yours. Or take theirs.

## Names of fields

no-value = blank
some-field = A field
price-date = Quote date
earlier-price = Earlier price
volume-pricing = Volume pricing
weighings = Weighings
count-date = Count date
reading = Reading
fill-to-the-line = Fill to the line
register-column = Register column
register-columns = Register columns
week = Week
sales = Sales
date = Date
menu = Menu
drinks = Drinks
filled = Filled
from-the-shelf = Deducted from stock
ready = Checked off
packs-to-buy = Packs to buy
price-paid = Price paid
shopping-lines = Items
yes = yes
no = no
