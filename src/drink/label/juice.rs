//! Juice in a drink: whether it was treated against germs, and whether it is low-acid.
//!
//! "Juice means the aqueous liquid expressed or extracted from one or more fruits or vegetables,
//! purees of the edible portions of one or more fruits or vegetables, or any concentrate of such
//! liquid or puree" (21 CFR 101.17(g)(1)); the warning is for juice, and for any beverage
//! containing juice where neither the juice ingredient nor the beverage was treated ((g)(2)(i)
//! and (ii)). So raw fruit and vegetables that are blended in count too. Treated is what has 5 log
//! fewer germs, one of 100,000 at most ((g)(7)).

use super::acidity::{LOW_ACID_ABOVE, published_ph};
use super::names::says_juice;
use crate::book::{Book, Drink, DrinkKind, IngredientId, Line, Offer, Produce, Service, Stage};
use crate::foundation::measure::{Exact, Share};

/// What of a drink is juice.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Juice {
    /// Ingredients that bring untreated juice. It is empty if the drink itself is treated.
    pub untreated: Vec<IngredientId>,
    /// Ingredients of which nobody said whether they are fruit or vegetable. It is empty if the
    /// drink itself is treated.
    pub not_said: Vec<IngredientId>,
    /// Whether juice is made of what is raw, whatever is done to the drink afterwards: its maker
    /// is a processor where another business buys it (21 CFR 120.3(l)).
    pub made_here: bool,
    /// Whether some of it is poured as juice: pressed, or bought as juice. Fruit that is blended whole is juice by
    /// the law of packages alone.
    pub poured: bool,
    /// How acid it is.
    pub acidity: Acidity,
}

/// How acid the juice of a drink is. What is low-acid needs cold, treated or not: a 5-log
/// treatment leaves the spores of botulism (FDA guidance of June 2007).
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub enum Acidity {
    /// No juice, or juice that is acid, as measured or as published.
    #[default]
    Acid,
    /// Measured, and above 4.6.
    Measured(Exact),
    /// Not measured; these are published as low-acid.
    Published(Vec<IngredientId>),
    /// It was not measured. No pH of these ingredients is published here; none of the others is
    /// low-acid.
    NotKnown(Vec<IngredientId>),
}

/// What an ingredient is in a drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Part {
    Untreated,
    Treated,
    NotSaid,
    NoJuice,
}

impl Juice {
    /// The juice in `drink`, whatever its size.
    pub fn of(book: &Book, drink: &Drink) -> Juice {
        let mut parts: Vec<(IngredientId, Part)> = Vec::new();
        for line in &drink.lines {
            let part = part(book, drink, line);
            match parts.iter_mut().find(|(id, _)| *id == line.ingredient) {
                Some((_, before)) if part == Part::Untreated => *before = part,
                Some(_) => {}
                None => parts.push((line.ingredient, part)),
            }
        }
        let of = |wanted: Part| -> Vec<IngredientId> {
            let found = parts.iter().filter(|(_, part)| *part == wanted && !drink.treated);
            found.map(|(id, _)| *id).collect()
        };
        Juice {
            untreated: of(Part::Untreated),
            not_said: of(Part::NotSaid),
            made_here: parts.iter().any(|(_, part)| *part == Part::Untreated),
            poured: drink.lines.iter().any(|line| is_poured(book, drink, line)),
            acidity: acidity(book, drink, &parts),
        }
    }
}

/// Whether a line is juice before it is in the drink.
fn is_poured(book: &Book, drink: &Drink, line: &Line) -> bool {
    if part(book, drink, line) == Part::NoJuice {
        return false;
    }
    let by_name = || book.ingredient(line.ingredient).is_some_and(|it| says_juice(&it.name));
    line.stage == Stage::Pressed || matches!(drink.kind, DrinkKind::Pressed | DrinkKind::Shot) || by_name()
}

/// Whether a line counts for percent juice: it does if it is pressed, or said to be fruit or
/// vegetable. Returns `None` if nobody said. Neither the kind of drink nor what is cut away tells
/// it here, as they do for the warning: a warning may come too often, a percentage must not be too
/// high.
pub(super) fn is_juice(book: &Book, line: &Line) -> Option<bool> {
    let ingredient = book.ingredient(line.ingredient)?;
    match ingredient.produce {
        _ if line.ice.is_some() => Some(false),
        Some(Produce::Neither) => Some(false),
        Some(Produce::Raw | Produce::Treated) => Some(true),
        None => (line.stage == Stage::Pressed).then_some(true),
    }
}

/// What a line brings. If nobody said it of the ingredient, three things tell that it is fruit or
/// vegetable: it is pressed, something of it is cut away, or it goes into a pressed drink.
fn part(book: &Book, drink: &Drink, line: &Line) -> Part {
    let Some(ingredient) = book.ingredient(line.ingredient) else { return Part::NotSaid };
    let is_pressed = line.stage == Stage::Pressed;
    match ingredient.produce {
        _ if line.ice.is_some() => Part::NoJuice,
        Some(Produce::Neither) => Part::NoJuice,
        Some(Produce::Raw) => Part::Untreated,
        // What is pressed here was whole before: its inside saw no treatment.
        Some(Produce::Treated) => {
            if is_pressed {
                Part::Untreated
            } else {
                Part::Treated
            }
        }
        None => {
            let of_pressed_drink = matches!(drink.kind, DrinkKind::Pressed | DrinkKind::Shot);
            let is_cut = ingredient.trim_yield < Share::WHOLE || ingredient.press_yield.is_some();
            if is_pressed || is_cut || of_pressed_drink { Part::Untreated } else { Part::NotSaid }
        }
    }
}

fn acidity(book: &Book, drink: &Drink, parts: &[(IngredientId, Part)]) -> Acidity {
    let is_juice = |part: &Part| matches!(part, Part::Untreated | Part::Treated);
    if let Some(ph) = drink.ph {
        let low_acid = ph > LOW_ACID_ABOVE && parts.iter().any(|(_, part)| is_juice(part));
        return if low_acid { Acidity::Measured(ph) } else { Acidity::Acid };
    }
    let published = |id: &IngredientId| published_ph(&book.ingredient(*id)?.name);
    let may_be = parts.iter().filter(|(_, part)| *part != Part::NoJuice).map(|(id, _)| *id);
    let low: Vec<IngredientId> = may_be.filter(|id| published(id).is_some_and(|it| it.may_be_low_acid())).collect();
    if !low.is_empty() {
        return Acidity::Published(low);
    }
    let juices = parts.iter().filter(|(_, part)| is_juice(part)).map(|(id, _)| *id);
    let unknown: Vec<IngredientId> = juices.filter(|id| published(id).is_none()).collect();
    if unknown.is_empty() { Acidity::Acid } else { Acidity::NotKnown(unknown) }
}

/// How a drink reaches the customer, as far as the book tells: over ice it is by the glass, unless
/// something else is said of the offer. Returns `None` if nobody said.
pub fn served(drink: &Drink, offer: Option<&Offer>) -> Option<Service> {
    let over_ice = (drink.kind == DrinkKind::OverIce).then_some(Service::ByTheGlass);
    offer.and_then(Offer::served).or(over_ice)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Ice, IcePlace, Ingredient, Record};
    use crate::support::{book, drink, exact, ingredient, ingredient_id, line, offer, settings, share};

    /// The juice of a drink of ingredients 1, 2 ... with these names, each said to be this, at
    /// this stage.
    fn of(kind: DrinkKind, parts: &[(&str, Option<Produce>, Stage)], change: impl FnOnce(&mut Drink)) -> Juice {
        let ids = 1_u64..;
        let ingredients = ids.clone().zip(parts).map(|(id, (name, produce, _))| {
            Record::Ingredient(Ingredient { name: (*name).into(), produce: *produce, ..ingredient(id, []) })
        });
        let lines = ids.zip(parts).map(|(id, (_, _, stage))| Line { stage: *stage, ..line(id, id, "1 mL") });
        let mut drink = Drink { kind, ..drink(1, "1 L", lines) };
        change(&mut drink);
        Juice::of(&book(settings(), ingredients), &drink)
    }

    fn ids<const N: usize>(numbers: [u64; N]) -> Vec<IngredientId> {
        numbers.map(ingredient_id).to_vec()
    }

    const RAW: Option<Produce> = Some(Produce::Raw);
    const TREATED: Option<Produce> = Some(Produce::Treated);
    const NEITHER: Option<Produce> = Some(Produce::Neither);

    #[test]
    fn what_is_pressed_here_is_untreated() {
        let pressed =
            of(DrinkKind::Pressed, &[("Apples", None, Stage::Pressed), ("Apples", RAW, Stage::Pressed)], |_| ());
        assert_eq!((pressed.untreated, pressed.not_said), (ids([1, 2]), ids([])));
        // All of a pressed drink, or of a shot, unless it is said to be something else.
        for kind in [DrinkKind::Pressed, DrinkKind::Shot] {
            let bought = of(kind, &[("Lemons", None, Stage::AsBought), ("Honey", NEITHER, Stage::AsBought)], |_| ());
            assert_eq!((bought.untreated, bought.not_said), (ids([1]), ids([])));
        }
        // Whole fruit that was treated outside, and pressed here.
        let outside = of(DrinkKind::Pressed, &[("Oranges", TREATED, Stage::Pressed)], |_| ());
        assert_eq!(outside.untreated, ids([1]));
        // Milk of nuts is no juice, pressed or not.
        let milk = of(DrinkKind::Pressed, &[("Almonds, soaked", NEITHER, Stage::Pressed)], |_| ());
        assert_eq!(milk, Juice::default());
    }

    #[test]
    fn raw_produce_that_is_blended_in_is_juice() {
        let milk = ("Whole milk", NEITHER, Stage::AsBought);
        let smoothie = of(DrinkKind::Blended, &[milk, ("Strawberries, frozen", RAW, Stage::Trimmed)], |_| ());
        assert_eq!((smoothie.untreated, smoothie.not_said, smoothie.poured), (ids([2]), ids([]), false));
        let pressed = of(DrinkKind::Blended, &[milk, ("Oranges", None, Stage::Pressed)], |_| ());
        assert_eq!(pressed.untreated, ids([2]));
        let bought_raw = of(DrinkKind::Blended, &[milk, ("Orange juice", RAW, Stage::AsBought)], |_| ());
        assert_eq!((bought_raw.untreated, bought_raw.poured), (ids([2]), true));
        let without = of(DrinkKind::Blended, &[milk, ("Peanut butter", NEITHER, Stage::AsBought)], |_| ());
        assert_eq!(without, Juice::default());
    }

    #[test]
    fn juice_that_was_bought_treated_is_not_warned_of() {
        let bought = of(DrinkKind::Blended, &[("Orange juice", TREATED, Stage::AsBought)], |_| ());
        assert_eq!(bought, Juice { poured: true, ..Juice::default() });
        let mixed = [("Orange juice", TREATED, Stage::AsBought), ("Strawberries", RAW, Stage::Trimmed)];
        assert_eq!(of(DrinkKind::Blended, &mixed, |_| ()).untreated, ids([2]), "neither it nor the drink is treated");
    }

    #[test]
    fn a_treated_drink_has_no_untreated_juice() {
        let parts = [("Apples", RAW, Stage::Pressed), ("Something", None, Stage::AsBought)];
        let juice = of(DrinkKind::Pressed, &parts, |drink| drink.treated = true);
        assert_eq!((juice.untreated, juice.not_said, juice.made_here), (ids([]), ids([]), true));
    }

    #[test]
    fn what_nobody_said_is_told_by_how_it_is_made_or_not_at_all() {
        let book = |change: fn(&mut Ingredient)| {
            let mut mango = ingredient(1, []);
            change(&mut mango);
            let blended = drink(1, "1 L", [line(1, 1, "1 L")]);
            Juice::of(&book(settings(), [Record::Ingredient(mango)]), &Drink { kind: DrinkKind::Blended, ..blended })
        };
        let unsaid = book(|_| ());
        assert_eq!((unsaid.untreated, unsaid.not_said), (ids([]), ids([1])));
        assert_eq!(book(|mango| mango.trim_yield = share("0.7")).untreated, ids([1]));
        assert_eq!(book(|mango| mango.press_yield = Some(share("0.5"))).untreated, ids([1]));
    }

    #[test]
    fn ice_is_no_juice_and_a_second_line_counts_too() {
        let ice = Some(Ice { place: IcePlace::Floating, packing: Ice::usual_packing(), melted: Share::ZERO });
        let lines = [
            Line { ice, ..line(1, 1, "1 mL") },
            line(2, 2, "1 mL"),
            Line { stage: Stage::Pressed, ..line(3, 2, "1 mL") },
        ];
        let records = [1, 2].map(|id| Record::Ingredient(ingredient(id, [])));
        let juice =
            Juice::of(&book(settings(), records), &Drink { kind: DrinkKind::OverIce, ..drink(1, "1 L", lines) });
        assert_eq!((juice.untreated, juice.not_said), (ids([2]), ids([])));
    }

    #[test]
    fn low_acid_is_as_measured_or_as_published() {
        let green =
            [("Apples", RAW, Stage::Pressed), ("Carrots", RAW, Stage::Pressed), ("Wheatgrass", RAW, Stage::Pressed)];
        let acidity = |ph: Option<&str>| of(DrinkKind::Pressed, &green, |drink| drink.ph = ph.map(exact)).acidity;
        assert_eq!(acidity(None), Acidity::Published(ids([2])));
        assert_eq!(acidity(Some("4.6")), Acidity::Acid);
        assert_eq!(acidity(Some("4.61")), Acidity::Measured(exact("4.61")));
        let acid = of(DrinkKind::Pressed, &[green[0]], |_| ());
        assert_eq!(acid.acidity, Acidity::Acid);
        let unknown = of(DrinkKind::Pressed, &[green[0], green[2]], |_| ());
        assert_eq!(unknown.acidity, Acidity::NotKnown(ids([2])));
    }

    #[test]
    fn treated_juice_can_be_low_acid() {
        let bought = [("Carrot juice", TREATED, Stage::AsBought)];
        assert_eq!(of(DrinkKind::Blended, &bought, |_| ()).acidity, Acidity::Published(ids([1])));
        let here = of(DrinkKind::Pressed, &[("Carrots", RAW, Stage::Pressed)], |drink| drink.treated = true);
        assert_eq!(
            here,
            Juice { made_here: true, poured: true, acidity: Acidity::Published(ids([1])), ..Juice::default() }
        );
        // Milk is low-acid too, and no juice.
        let milk =
            of(DrinkKind::Blended, &[("Whole milk", NEITHER, Stage::AsBought)], |drink| drink.ph = Some(exact("6.7")));
        assert_eq!(milk.acidity, Acidity::Acid);
    }

    #[test]
    fn how_it_is_served_is_as_said() {
        let over_ice = Drink { kind: DrinkKind::OverIce, ..drink(1, "1 L", []) };
        let blended = Drink { kind: DrinkKind::Blended, ..over_ice.clone() };
        let said = |service| Offer { service, ..offer(1, 1, None) };
        assert_eq!(served(&over_ice, Some(&said(None))), Some(Service::ByTheGlass));
        assert_eq!(served(&over_ice, Some(&said(Some(Service::PackagedAhead)))), Some(Service::PackagedAhead));
        assert_eq!((served(&blended, Some(&said(None))), served(&blended, None)), (None, None));
        assert_eq!(served(&blended, Some(&said(Some(Service::ByTheGlass)))), Some(Service::ByTheGlass));
        let filling = crate::book::Filling::new(crate::book::FillRule::Average, crate::book::Accepted::TwoPercent);
        let filled = Offer { filling: Some(filling), ..said(Some(Service::ByTheGlass)) };
        assert_eq!(served(&over_ice, Some(&filled)), Some(Service::PackagedAhead));
    }
}
