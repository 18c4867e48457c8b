# The first minutes of a new book: questions about the shop, then the way to the first price.

## Questions about the shop

your-shop = Your shop
shop-about = Skip what you do not know. Change any answer later in Book.
country = Country
common-figure = Common figure. Check yours.
not-sure = Not sure
not-sure-of = Not sure: { $field }
counts-as-zero = Not known yet. Your profit will say what is not counted.
field-skipped = Going on skips “{ $fields }”: Brimwright cannot read what you typed.
skip-questions = Skip for now

## The way to the first price

step-of = Step { $step } of { $steps }
finish-later = Finish later
drink-so-far = Your drink so far
no-ingredient-yet = No ingredients yet.

what-goes-in = What goes in?
what-goes-in-about = Type a few letters. Pick from the list, or add your own.
add-as-typed = Add “{ $name }”
already-in-list = { $name } is in your list already.
usual-case = Usual US case. Check yours.
case-price-missing = Type the case price now, or later.
next-size = Next: bottle or cup

which-size = Which bottle or cup?
which-size-about = Capacities are starting figures. Weigh your own full of water when you can.
your-containers = Your containers
common-sizes = Common sizes
brimful = Brimful { $volume }
other-size = Other size
chosen = Chosen
packaging-cost = Packaging cost
packaging-cost-about = Bottle, cap and label for one drink. Leave blank if unsure.
next-amounts = Next: amounts

how-much = How much of each?
how-much-about = Amounts for one { $size }. A share works too, such as { $share }.
how-much-juice = Amounts of what you press are juice.
choose-size-first = Choose a bottle or cup first.
filled-of = { $filled } of { $size }
left-to-fill = { $left } left to fill.
left-scales-up = If you go on, Brimwright scales the recipe up to fill it.
all-filled = Full.
over-filled = That is { $over } over. Brimwright scales the recipe down to fit.
use-rest = Use the remaining { $left }
share-needs-size = A share needs a size. Choose a bottle or cup first.
share-too-large = A share is at most { $whole }. Type less, such as { $example }.
next-price = Next: price

what-to-charge = What to charge
suggested-for-target = Gives a { $margin } margin. Your target is { $target }.
not-in-price = Not in this price yet: { $costs }.
for-customers = What customers read on your menu.
what-next = What next?
add-second-size = Add a second size
check-figures = { $figures ->
    [one] Check 1 starting figure
   *[other] Check { $figures } starting figures
}
add-next-drink = Add another drink
open-drink = Open this drink
another-size = Another size
