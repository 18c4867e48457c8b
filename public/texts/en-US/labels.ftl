# Labels, packages, containers, allergens: what a label says and what a package must hold.
# Words that a law demands stand word for word; the law is named before them.

## Net contents

# The form of 21 CFR 101.7(m): Net, ounces, the largest whole units, and the metric figure.
net-contents-in-ounces = Net { $ounces } ({ $metric })
net-contents-in-larger-units = Net { $ounces } ({ $larger }) { $metric }
net-contents-in-gallons = Net { $larger } ({ $metric })
net-contents-in-metric = { $metric } ({ $ounces })
net-from-labeled-size = { $net } (labeled size)
net-from-fill = { $net } (fill, no labeled size)

## Juice

# 21 CFR 101.30: these two statements stand word for word.
percent-juice = Contains { $percent }% juice.
less-than-one-percent-juice = Contains less than 1% juice.
no-juice = No juice
juice-not-said = Needs: ingredient type for { $names }, such as raw fruit. Set this in Buying.
name-with-juice = Under 100% juice, a name with “juice” also needs “drink” or “beverage” (21 CFR 102.33).
how-juice-is-counted = Percent juice is by volume, rounded down (21 CFR 101.30). Purées count. Enter concentrate mixed: the juice made from it counts.

## Facts for a label

label-facts = Label facts
label-facts-about = Facts for your label. Only the warning is ready to print.
label-facts-about-european = Facts to copy to your label.
how-sold = How sold
has-a-fill-target = This size has a fill target, so it is packaged ahead. Remove the fill target first.
by-the-glass = Sold by the glass, so no label is needed. Use these facts for the menu and for questions.
size-includes-ice = Includes the ice
thick = Thick, or eaten with a spoon? In the United States, state the weight, not the volume (21 CFR 101.7(a)).
print-warnings = Print warnings
in-the-united-states = In the United States
in-the-eu-and-uk = In the EU and UK
by-weight = By weight
also-needed = Also needed
net-contents = Net contents
ingredients-heaviest-first = Ingredients, heaviest first
ingredients-by-weight = Ingredients by weight
juice = Juice
storage = Storage
storage-not-entered = Not entered. Follow your food-safety plan.
unit-price = Unit price
unit-price-per = { $price } per { $unit } of net contents

# The list of ingredients, as a label has it (21 CFR 101.4).
water = water
fruit-juice = { $fruit } juice
juice-of = juice of { $name }

## What else a label needs

label-needs-name = The name of the food, on the principal display panel (21 CFR 101.3).
label-needs-address = Your business name and address (21 CFR 101.5).
label-needs-nutrition = Nutrition facts: none are made here. Some small businesses are exempt.
label-exempt-retailers = Exempt: retailers that sell up to ${ $sales } a year, or ${ $food } of food (21 CFR 101.9(j)(1)).
label-exempt-by-notice = Also exempt: under { $employees } employees and { $units } units a year. FDA needs a yearly notice (101.9(j)(18)).
label-claim-ends-exemption = A nutrition or health claim ends the exemption.
label-needs-date = The date, and how to store the drink. Follow your food-safety plan and your state.
label-needs-deposit-mark = The deposit mark, if your state takes deposits.
label-needs-type-size = Type sizes and places: at least 1/16 inch (21 CFR 101.2(c), 101.7).
label-needs-name-european = The name of the food (Regulation 1169/2011, Art. 17).
label-needs-address-european = Your business name and address (Art. 9(1)(h)).
label-needs-nutrition-european = Nutrition declaration: none is made here (Art. 30).
label-exempt-european = Exempt: small amounts, sold directly or to local shops (Annex V, 19).
label-needs-date-european = The date, and how to store the drink. Follow your food-safety plan.
label-needs-deposit-mark-european = The deposit mark, if your country takes deposits.
label-needs-type-size-european = Type size: letters at least { $height } tall, measured as an x (Art. 13(2)).

## Cautions

# 21 CFR 101.17(g)(2), word for word.
untreated-juice-warning = WARNING: This product has not been pasteurized and, therefore, may contain harmful bacteria that can cause serious illness in children, the elderly, and persons with weakened immune systems.
warning-sheet = For packages of untreated juice in the United States (21 CFR 101.17(g)). Put the box on the information panel or the principal display panel. Local codes may ask for more.
untreated-packaged = Untreated juice, packaged ahead. In the United States, the label must carry the warning in the box (21 CFR 101.17(g)). Purées and raw fruit or vegetables blended in count as juice. Put the box on the information panel or the principal display panel. Keep WARNING in bold capitals, with hairlines around the statement. Several states ask the same of juice packaged in a shop.
untreated-by-the-glass = Untreated juice by the glass. The federal label rule is for packages only. Your state or county may have its own rule: ask your local inspector.
untreated-not-said = Untreated juice. If packaged ahead, the label must carry the warning in the box (United States, 21 CFR 101.17(g)). Purées and raw fruit or vegetables blended in count as juice. Put the box on the information panel or the principal display panel. Keep WARNING in bold capitals, with hairlines around the statement. By the glass, the federal label rule does not apply: ask your local inspector. Choose how the drink is sold above.
# No law is named in the European ones: hygiene rules ask for cold and a plan (Regulation (EC) No
# 852/2004, from memory).
untreated-european = Untreated juice. Keep the juice cold and follow your food-safety plan. Your local authority decides what you must tell customers.
no-warning-to-print = Your book has no warning to print. Your local authority decides what your label must say.
fruit-not-said-packaged = Needs: ingredient type for { $names }. If raw fruit or vegetable, the package must carry the warning in the box (US, 21 CFR 101.17(g)). Set this in Buying.
fruit-not-said-by-the-glass = Needs: ingredient type for { $names }. If raw fruit or vegetable, the drink counts as untreated juice. Set this in Buying.
at-risk = Untreated juice can make children, older or pregnant people and people with weak immune systems seriously ill.
at-risk-places = Packaged untreated juice is not for places that serve them, such as schools, hospitals and care homes.
at-risk-places-european = Schools, hospitals and care homes serve such people: ask your local authority before you sell there.
sold-to-a-business = In the United States, selling juice to another business makes you a processor. All of your juice then needs a HACCP plan and a 5-log treatment (21 CFR 120.3(l), 120.24). The warning on the label does not replace them. Some states ask for both at any amount.
sold-to-a-business-european = Selling juice to another business? More rules may apply: ask your local authority first.
low-acid-measured = Low-acid juice: the pH is { $ph }, above { $limit }.
low-acid-published = This juice may be low-acid, by published pH: { $published }. Above { $limit } is low-acid: measure the drink.
acidity-not-known = No pH is known for { $names }. Measure the drink: above { $limit } is low-acid.
keep-cold = Low-acid juice must be kept refrigerated, treated or not. Kept warm, the juice can cause botulism, which can kill (FDA guidance for processors, June 2007).
keep-cold-european = Low-acid juice must be kept refrigerated, treated or not. Kept warm, the juice can cause botulism, which can kill.
ph-fda-list = { $name } { $least } to { $most } (FDA list of pH)
ph-fda-handbook = { $name } { $least } to { $most } (FDA handbook)
# The same two sources, for books under European law.
ph-american-list = { $name } { $least } to { $most } (American list of pH)
ph-american-handbook = { $name } { $least } to { $most } (American handbook)
ph-source-not-checked = { $name } { $least } to { $most } (source not checked)
fill-below-labeled-size = The fill is { $short } below the labeled size. Fill more, or label less: a label may not state more than the package holds.
name-the-nut = Name the kind of nut, such as almonds or cashews.
name-the-fish = Name the kind of fish, such as cod.
name-the-crustacean = Name the kind of crustacean, such as shrimp.
name-the-grain = Name the grain with gluten, such as rye, barley or oats.
name-the-source = Name the food that the allergen comes from.
allergens-as-entered = Allergens are only as right as what you entered for each ingredient. Check every label, and what shares the blender or press.
no-legal-advice = These numbers are not legal advice. Local codes and licensed professionals decide.

## Why facts for a label are missing

no-density = Labels list ingredients by weight. Needs: density of { $name } in the drink, in grams per mL.
no-cup-weight = Labels list ingredients by weight. Needs: weight of one cup of { $name } in the drink.
no-juice-cup-weight = Labels list ingredients by weight. Needs: weight of one cup of { $name } juice.
no-juice-density = Labels list ingredients by weight. Needs: density of the juice of { $name }, in grams per mL.

## Safety and storage of a drink

safety-and-storage = Safety and storage
safety-and-storage-about = Copy these from your food-safety plan. Nothing is filled in for you.
treatment = Treatment
measured-ph = Measured pH
not-measured = not measured
low-acid-above = Above { $limit } is low-acid.
# Demanded of juice that must be kept cold (FDA guidance of June 2007; state food codes).
keep-refrigerated = Keep refrigerated
keep-refrigerated-sentence = Keep refrigerated.
use-within = Use within
days = days
not-entered = not entered
use-within-about = Days after making. Type 0 for the same day.
use-by = Use by { $day }.
use-on-the-day = Use on the day made.
use-within-days = { $days ->
    [one] Use within 1 day of making.
   *[other] Use within { $days } days of making.
}

## Allergens

# Plain names, for the card behind the counter and the chips of an ingredient.
wheat = Wheat
other-gluten = Gluten other than wheat
gluten-grains = Gluten grains
which-grains = Which gluten grains?
crustaceans = Crustaceans
eggs = Eggs
fish = Fish
peanuts = Peanuts
soy = Soy
milk = Milk
tree-nuts = Tree nuts
celery = Celery
mustard = Mustard
sesame = Sesame
lupin = Lupin
sulfites = Sulfites
mollusks = Mollusks
sulfites-to-mark = Sulfites, 10 ppm or more
sulfites-to-mark-european = Sulfites, over 10 mg/kg

# The nine of the United States, as 21 U.S.C. 321(qq) names them.
nine-wheat = Wheat
nine-crustaceans = Crustacean shellfish
nine-eggs = Egg
nine-fish = Fish
nine-peanuts = Peanuts
nine-soybeans = Soybeans
nine-milk = Milk
nine-tree-nuts = Tree nuts
nine-sesame = Sesame

# The fourteen of the European Union, as Regulation (EU) No 1169/2011, Annex II names them.
fourteen-wheat = Cereals containing gluten (wheat)
fourteen-other-gluten = Cereals containing gluten (other than wheat)
fourteen-crustaceans = Crustaceans
fourteen-eggs = Eggs
fourteen-fish = Fish
fourteen-peanuts = Peanuts
fourteen-soybeans = Soybeans
fourteen-milk = Milk
fourteen-tree-nuts = Nuts
fourteen-celery = Celery
fourteen-mustard = Mustard
fourteen-sesame = Sesame seeds
fourteen-sulfites = Sulphur dioxide and sulphites
fourteen-lupin = Lupin
fourteen-mollusks = Molluscs

# Beside a name that does not say the allergen, in the list of ingredients (Art. 21(1)(b)).
beside-wheat = wheat
beside-other-gluten = cereal with gluten
beside-crustaceans = crustaceans
beside-eggs = egg
beside-fish = fish
beside-peanuts = peanuts
beside-soybeans = soya
beside-milk = milk
beside-tree-nuts = nuts
beside-celery = celery
beside-mustard = mustard
beside-sesame = sesame
beside-sulfites = sulphites
beside-lupin = lupin
beside-mollusks = molluscs

allergens = Allergens
allergens-nine = Allergens (US, 9)
allergens-fourteen = Allergens (EU and UK, 14)
# 21 U.S.C. 343(w)(1)(A): the word Contains stands word for word.
contains-on-label = Contains: { $allergens }
not-repeated = Shown in capitals in the ingredients. The label does not repeat them as “Contains” (2017/C 428, 3.5).
other-allergens = Other allergens
also-declare = Also declare
sulfites-to-declare = Sulfites, at 10 ppm or more in the drink (21 CFR 101.100(a)(4)): { $names }
allergen-with-nuts = { $allergen }: { $nuts }
allergen-with-nuts-on-label = { $allergen } ({ $nuts })
allergen-with-ingredients = { $allergen } ({ $names })
none = None
none-marked-so-far = None marked so far
marked-and-not-checked = { $allergens } · { $ingredients ->
    [one] 1 not checked
   *[other] { $ingredients } not checked
}
allergens-and-shared = { $allergens }. { $shared }
made-where-used = Made where these are used: { $allergens }.
others-not-checked = You also use ingredients that are not checked yet.
recipe-is-empty = The recipe is empty.
no-allergens = None of the allergens that must be named, as far as your book says.
contains = Contains { $allergens }.
contains-unlisted = Contains { $allergens } (not on the US list).
parts-not-known = Mixture not known
parts-not-known-of = May contain more: { $names }
parts-not-known-sentence = Mixture not known, so the drink may contain more: { $names }. Read the label and enter the ingredients.
allergen-not-marked = Allergen not marked
allergen-not-marked-of = Named in the ingredients of { $names }
allergen-not-marked-sentence = The ingredients of a mixture name an allergen that is not marked: { $names }. Mark the allergen.
allergens-not-checked = Allergens not checked
allergens-not-checked-of = May contain any: { $names }
allergens-not-checked-sentence = Not checked, so the drink may contain any allergen: { $names }. Check each label and mark what you find.
check-each = Open an ingredient to mark its allergens:

# What counts as a tree nut (FDA, January 2025; notice 2017/C 428).
tree-nuts-united-states = United States, 12 nuts (FDA, January 2025). Almond, Brazil nut, cashew, hazelnut, macadamia, pecan, pine nut, pistachio, walnut. Also black walnut, California walnut and heartnut. Coconut, chestnut and shea no longer count.
tree-nuts-european = European Union, 8 nuts and no others (2017/C 428). Almond, Brazil nut, cashew, hazelnut, macadamia, pecan, pistachio, walnut. Pine nuts do not count in the EU.

allergens-about = Read the label or ask the supplier. Your book is only as right as that label: check each delivery.
ingredient-not-checked = Not checked. Drinks with this ingredient cannot say what they contain.
ingredient-contains-none = Contains none of these.
ingredient-contains = Contains: { $allergens }.
allergens-it-contains = Allergens to mark
other-answers = Other answers
none-of-these = None of these
not-checked = Not checked
which-nuts = Which nuts
example-nuts = almonds, cashews
one-food-or-several = Single or mixture
mixture = Mixture
mixture-such-as-granola = Mixture, such as granola
parts = Ingredients in mix
parts-example = not known
parts-about = Copy the ingredients from the label, then mark their allergens above. While blank, no drink with this mixture says “none”.

## Fill target

this-size = This size
fill-target = Fill target
fill-target-about = For drinks packaged ahead, not made to order. Not legal advice: local codes and the inspector’s own weighing decide.
add-fill-target = Add a fill target
remove-fill-target = Remove fill target
fill-to = Fill to
fill-to-means = On average, with the drink at { $temperature }.
set-fill = Set fill to { $fill }
set-fill-step = Set fill
giveaway-per-package = Giveaway per package
giveaway-cost = Giveaway cost
giveaway-per-year = Giveaway per year
giveaway-cost-per-year = Yearly giveaway cost
current-fill = Current fill
labeled-size = Labeled size
labeled-size-as-measured = Adjusted labeled size
allowed-variation = Allowed variation
packages-weighed = Packages weighed
average-weighed = Average weighed
standard-deviation = Standard deviation
fullest-package = Fullest package
room-in-container = Room in container
rule = Fill rule
allowed-short-fills = Allowed short fills
packages-per-batch = Packages per batch
packages-per-batch-about = Filled in one go.
not-known = not known
short-batch-risk = Short-batch risk
room-for-closure = Room for cap
look-up-variation = Look up the maximum allowable variation for this size in NIST Handbook 133. We do not have that table.
sample-variation = Sample number, not from the handbook.
short-fills-in-germany = { $share } (Germany, FPackV section 9)
short-fills-in-uk = { $share } (UK practice)
measured-at = Drink temperature
package-net-contents = Package net contents
add-weighing = Add weighing
weighings = Weighings. Press one to remove it.
remove-weighing-of = Remove weighing { $number }, { $net }
remove-weighing = Remove weighing
counted-at = Contents count at { $counted }. Leave blank if you measured at that temperature.
counted-where-measured = Contents count at { $counted }, the temperature you measured at.
counted-and-measured = Contents count at { $counted }. Water is { $density } g/mL at that temperature, and { $other } at { $measured } (Metrologia 38, 2001). Juice swells a little more.

# What a rule asks.
rule-average = The average must reach the labeled size. We know of no law that asks only this.
rule-european = The average must reach the labeled size. Few packages may be short by the allowed variation, and none by twice that (76/211/EEC, Annex I).
rule-united-states = The average must reach the labeled size. No package may be short by more than the allowed variation (NIST Handbook 133). The target stays at least 3 spreads above that.
small-batch = In batches under 100, all packages together must average the labeled size (UK, SI 2006/659, Schedule 2, 4.7).
samples-at-share = Say { $share } of packages were short by more. A sample of 12 would fail { $few } of the time. A sample of 24: { $many }.
samples-at-three-spreads = At 3 spreads, a sample of 12 fails at most { $few } of the time. A sample of 24: at most { $many }.

# Why a fill target is missing.
not-packaged-ahead = This size is not packaged ahead.
no-labeled-size = The container has no labeled size. Enter the size on its label.
no-tolerance = The directive has no allowed variation under 5 mL or over 10 L. Choose another rule.
no-allowed-variation = Needs: allowed variation. Look up the maximum allowable variation for this size in NIST Handbook 133. No number is given here from memory.
no-weighings = Weigh or measure what is in some packages, and enter each. Two give a spread; twenty give a good one (rule of thumb, no published source).
one-weighing = One package has no spread. Weigh or measure at least one more. Twenty give a good spread (rule of thumb, no published source).

# Cautions beside a fill target.
weighings-over-the-brim = { $weighings ->
    [one] 1 weighing is more than the container holds. Correct that number: it moves the target.
   *[other] { $weighings } weighings are more than the container holds. Correct those numbers: they move the target.
}
variation-too-large = The allowed variation, { $variation }, is as large as the size itself. Correct that number.
container-too-small = The container is too small for its labeled size. The fullest packages need { $room } more room. Fill more evenly, label less, or use a larger container.
spread-too-wide = No package may be short by twice the allowed variation. At this spread, more than 1 in { $packages } would be. Fill more evenly.
short-by-twice-the-tolerance = { $packages ->
    [one] 1 package weighed is short by twice the allowed variation. No package may be.
   *[other] { $packages } packages weighed are short by twice the allowed variation. No package may be.
}
short-by-more-than-allowed = { $packages ->
    [one] 1 package weighed is short by more than the allowed variation. No package may be.
   *[other] { $packages } packages weighed are short by more than the allowed variation. No package may be.
}
average-below-labeled-size = The packages you weighed average { $short } below the labeled size. Fill more.
few-weighings = { $weighings ->
    [one] 1 weighing so far. Twenty give a good spread (rule of thumb, no published source).
   *[other] { $weighings } weighings so far. Twenty give a good spread (rule of thumb, no published source).
}
half-of-batches-short = Enter the packages per batch. Filled to the labeled size, half of all batches average short.
nothing-added-for-batch = Enter the packages per batch. Without that number, nothing is added for the batch average.

## Containers

new-container = New container
back-to-drink = Back to the drink
add-container = Add a container
add-container-step = Add container
remove-container = Remove container
menu-name = Menu name
example-container = 12 oz bottle
packaging-about = For one drink: bottle or cup, cap or lid, label, straw.
no-containers = What do you serve in?
no-containers-about = Add the bottles and cups you sell in. Each has a brimful capacity, some headspace and its packaging: cap or lid, label, straw.
container-fill = { $fill } fill, { $capacity } brimful
container-not-used = Not used yet

## Fill and headspace of a container

headspace = Headspace
headspace-by = Headspace by
by-volume = Volume
by-share = Share of capacity
by-height = Height below rim
name-and-size-first = First type the menu name, brimful capacity and headspace.
labeled-size-about = The size on your menu or label, if any.
fill-line-above-base = Line above base
fill-line-below-rim = Line below rim
container-fill-below-labeled-size = The fill is { $short } below the labeled size. Local rules say what a labeled size must hold.

# What standards allow (76/211/EEC, 75/107/EEC, OIML R 138).
standards-allow = What standards allow
standards-allow-about = At most, against the labeled size. Not legal advice: local rules decide which one holds, if any.
short-by = Short by
over-by = Over by
no-limit = no limit
nothing = nothing
single-package = Single package
measuring-bottle = Measuring container bottle, as made
pouring-measure-to-line = Pouring measure, to its line
pouring-measure-to-brim = Pouring measure, to its brim
drinking-glass-to-line = Glass or cup, to its line
drinking-glass-to-brim = Glass or cup, to its brim
source-package = Directive 76/211/EEC, Annex I, 2.4. On average, no shortage is allowed.
source-bottle = Directive 75/107/EEC, Annex I
source-measures = OIML R 138, 5.1.1
