# Starting figures: what the app brings before anything is weighed, and how the owner makes it theirs.

## While a name is typed

suggestions = Suggestions
suggestions-found = { $rows ->
    [one] 1 suggestion
   *[other] { $rows } suggestions
}
missing = Suggestions did not load. Type everything yourself, or try again later.
trim-left = trim yield { $share }
juice-left = juice yield { $share }
piece-weighs = { $weight } per piece
weighs = { $density }
juice-weighs = juice { $density }
name-only = name only
fill-from = Starting figures: { $name }
fill-about = Fills only what is still empty: { $figures }.
use-figures = Use these figures

## Beside a figure

confirm = Confirm
undo = Undo
unconfirm-step = Undo confirm
undo-confirm = Undo: { $figure }
confirmed = Confirmed
confirm-named = Confirm { $figure }
confirm-step = Confirm starting figure
from-sr28 = From USDA SR28 (2015).
from-sr28-item = From USDA SR28 (2015), food { $number }.
assumed = Assumed: usual for ingredients like this.
rule-of-thumb = Rule of thumb, no published source. Weigh your own.
usual-capacity = Usual for this size. Weigh yours full of water.
confirmed-by = Confirm a figure, or open its item and type your own.

## What is offered beside the figures

usually-contains = Usually contains: { $allergens }. Read the label.
can-contain = Can contain: { $allergens }. Read the label.
contains-it = Contains: { $allergens }
spoon-weight = Measured by the spoon: { $density }. In a drink, powder takes less room.
use-spoon-weight = Use for volume
other-trim-yield = This piece weight goes with a trim yield of { $list }. Yours is { $own }. Weigh a few pieces.
trimmed-piece = A piece usually weighs { $list } as purchased. Did you weigh { $own } after trimming?
usual-case = Usual US case: { $size }. Check yours.

## Usual bottles and cups

usual-sizes = Usual sizes
usual-sizes-about = Capacities are usual ones. Weigh yours full of water.
bottle-of = { $size } bottle
cup-of = { $size } cup
holds = holds { $capacity }
other-units = Other units

## Figures to check

figures-to-check = Figures to check
figures-of = Figures to check: { $figures }
most-first = Biggest effect first, if a figure is { $share } lower.
figure-and-value = { $figure }: { $value }
costs-more-per-week = costs { $money } more per week
costs-less-per-week = costs { $money } less per week
costs-more-per-drink = costs { $money } more per drink
costs-less-per-drink = costs { $money } less per drink
moves-nothing = no effect yet
no-effect-yet = { $figures ->
    [one] 1 has no effect yet
   *[other] { $figures } have no effect yet
}
none-left = All figures are yours. Nothing to check.
figure-of = { $figure } of { $name }
