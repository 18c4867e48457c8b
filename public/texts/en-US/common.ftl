# Words that many screens share, and the first one does not need.

name = Name
cost = Cost
margin = Margin
done = Done
none = none
none-yet = none yet
price = Price
size = Size
fill = Fill
packaging = Packaging
sales-tax = Sales tax
tax-european = VAT or tax
recipe-cards = Recipe cards
target-margin = Target margin
suggested-price = Suggested price
full-cost = Full cost
profit-per-drink = Profit per drink
profit-per-week = Profit per week
drinks-sold-per-week = Drinks sold per week
fee-per-transaction = Fee per transaction
today = Today
choose = Choose
show-the-math = Show the math
yesterday-at = Yesterday { $time }
book-holds-drinks = { $drinks ->
    [one] 1 drink
   *[other] { $drinks } drinks
}
book-last-changed = Last change: { $when }
present = Present
stop-presenting = Stop presenting
no-page-here = Nothing is at this address. Here are your drinks.

## Units, where a language has its own sign for one

unit-piece = ea
unit-inch = in
