//! The starting figures that still stand, by what they move on the menu.
//!
//! Each figure is tried a tenth lower beside the book, as [`Tried`] does it, and what that changes is counted over
//! the offers that it moves:
//!
//! ```text
//! per week  = sum of weekly drinks * (profit per drink now - then)
//! per drink = the largest, without its sign, of profit per drink now - then
//! ```
//!
//! Where no price is asked, it is the cost that changes. Per week counts where any of these drinks is sold in a
//! usual week; the others are told per drink, behind those. A drink that a lower figure leaves without a cost is
//! not counted. By hand: of 100 g of juice a week at 10.00 a kilogram bought and a juice yield of 0.5, 200 g are
//! bought for 2.00. A tenth lower the yield is 0.45, and 222.22 g cost 2.2222: it costs 0.2222 more a week.

use crate::book::{Book, Brimful, ContainerId, Edit, Figure, IngredientId, Key, Offer, Record, StartingFigure};
use crate::buying::starter::put;
use crate::drink::ledger::{Ledger, Tried};
use crate::foundation::in_order;
use crate::foundation::measure::{Amount, Exact, Money, Overflow, Share};

/// What is left of a figure that is a tenth lower.
const LOWER: Exact = Exact::new(9, 1);

/// By how much a figure is lowered to see what it moves.
pub const BY: Share = Share::from_fraction(Exact::new(1, 1));

/// A starting figure that nobody confirmed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unchecked {
    /// One of an ingredient.
    Ingredient(IngredientId, StartingFigure),
    /// What a container holds to the rim.
    Container(ContainerId, Amount),
}

/// What a figure moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Moves {
    /// So much more a usual week; below zero, less.
    PerWeek(Money),
    /// So much more a drink at the most, below zero less; how many are sold is not known.
    PerDrink(Money),
    /// Nothing.
    Nothing,
}

/// A starting figure, and what it moves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ToCheck {
    /// The figure.
    pub figure: Unchecked,
    /// What it moves where it is a tenth lower.
    pub moves: Moves,
}

impl Unchecked {
    /// The record that it is in.
    pub fn record(&self) -> Key {
        match self {
            Unchecked::Ingredient(id, _) => Key::Ingredient(*id),
            Unchecked::Container(id, _) => Key::Container(*id),
        }
    }

    /// The edit that makes it a tenth lower.
    fn lowered(&self, book: &Book) -> Option<Edit> {
        match *self {
            Unchecked::Ingredient(id, starting) => {
                let mut ingredient = book.ingredient(id)?.clone();
                let places = if starting.figure == Figure::PieceWeight { 3 } else { 6 };
                let value = starting.value.times(LOWER).ok()?.rounded(places);
                put(&mut ingredient, StartingFigure { value, ..starting });
                Some(Edit::Put(Record::Ingredient(ingredient)))
            }
            Unchecked::Container(id, brimful) => {
                let mut container = book.container(id)?.clone();
                let number = brimful.number.times(LOWER).ok()?;
                container.brimful = Brimful::Weighed(Amount { number, ..brimful });
                Some(Edit::Put(Record::Container(container)))
            }
        }
    }
}

/// The starting figures that still stand, without what they move: those of ingredients before those of containers.
pub fn unchecked(book: &Book) -> impl Iterator<Item = Unchecked> {
    let of_ingredients =
        book.ingredients().flat_map(|it| it.starting_figures().map(|figure| Unchecked::Ingredient(it.id, figure)));
    let of_container = |(id, brought): (ContainerId, Option<Amount>)| Some(Unchecked::Container(id, brought?));
    let starting = book.containers().filter(|it| it.is_starting()).map(|it| (it.id, it.starting));
    of_ingredients.chain(starting.filter_map(of_container))
}

/// All starting figures that still stand, those that move most first.
pub fn figures_to_check(book: &Book, ledger: &Ledger) -> Vec<ToCheck> {
    let mut all: Vec<ToCheck> = Vec::new();
    for figure in unchecked(book) {
        // What leaves the range that can be computed moves nothing that could be told.
        let moves = moves(book, ledger, figure).unwrap_or(Moves::Nothing);
        in_order::insert(&mut all, ToCheck { figure, moves }, |other, this| rank(other.moves) >= rank(this.moves));
    }
    all
}

/// What is told per week before what is told per drink, the larger first.
fn rank(moves: Moves) -> (u8, Money) {
    match moves {
        Moves::PerWeek(money) => (2, without_sign(money)),
        Moves::PerDrink(money) => (1, without_sign(money)),
        Moves::Nothing => (0, Money::ZERO),
    }
}

fn without_sign(money: Money) -> Money {
    Money::from_major(money.major().abs())
}

fn moves(book: &Book, ledger: &Ledger, figure: Unchecked) -> Result<Moves, Overflow> {
    let Some(Ok(tried)) = figure.lowered(book).map(|edit| Tried::of(book, ledger, &edit)) else {
        return Ok(Moves::Nothing);
    };
    let (mut in_a_week, mut sold, mut in_a_drink) = (Money::ZERO, false, Money::ZERO);
    for offer in tried.moves.iter().filter_map(|moved| book.offer(moved.offer)) {
        let (Some(now), Some(then)) = (profit(ledger, offer)?, profit(&tried.ledger, offer)?) else { continue };
        let change = now.minus(then)?;
        let weekly = offer.weekly.filter(|units| units.is_positive());
        if let Some(units) = weekly {
            in_a_week = in_a_week.plus(change.times(units)?.as_part())?;
            sold = true;
        }
        if without_sign(change) > without_sign(in_a_drink) {
            in_a_drink = change;
        }
    }
    Ok(match () {
        () if sold && !in_a_week.is_zero() => Moves::PerWeek(in_a_week),
        () if !sold && !in_a_drink.is_zero() => Moves::PerDrink(in_a_drink),
        () => Moves::Nothing,
    })
}

/// What one drink leaves at the price asked, or below zero what it costs where none is asked. Returns `None` if that
/// cannot be computed.
fn profit(ledger: &Ledger, offer: &Offer) -> Result<Option<Money>, Overflow> {
    let Some(Ok(priced)) = ledger.get(offer.id()) else { return Ok(None) };
    match priced.asked {
        Some(asked) => Ok(Some(asked.contribution)),
        None => Ok(Some(Money::ZERO.minus(priced.cost.total())?)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Basis, Container, Ingredient, Line, Stage, Starting};
    use crate::support::{
        amount, book, container, container_id, density, drink, exact, grams, ingredient, ingredient_id, line, money,
        offer, pack, settings, share,
    };

    fn brought(figure: Figure, value: &str) -> StartingFigure {
        StartingFigure { figure, value: exact(value), basis: Basis::Memory }
    }

    fn starting(figures: &[StartingFigure]) -> Option<Starting> {
        Some(Starting { key: "carrot".into(), figures: figures.to_vec() })
    }

    /// Juice of carrots: 100 mL in drink 1 of which 20 are sold a week; bought at 10.00 a kilogram; trim 0.8,
    /// juice 0.5, 1 g/mL. Drink 2 is 100 mL of milk that nobody sells yet. Each in a bottle of 200 mL, half full.
    fn bar() -> Book {
        let carrots = Ingredient {
            trim_yield: share("0.8"),
            press_yield: Some(share("0.5")),
            juice_density: Some(density("1")),
            piece_weight: Some(grams("70")),
            starting: starting(&[
                brought(Figure::TrimYield, "0.8"),
                brought(Figure::PressYield, "0.5"),
                brought(Figure::JuiceDensity, "1"),
                brought(Figure::PieceWeight, "70"),
            ]),
            ..ingredient(1, [pack(1, "1 kg", "10")])
        };
        let milk = Ingredient {
            density: Some(density("1.03")),
            starting: starting(&[brought(Figure::Density, "1.03")]),
            ..ingredient(2, [pack(1, "1 kg", "2")])
        };
        let half = |id| {
            let bottle = container(id, "200 mL");
            let headspace = crate::book::Headspace::Share(share("0.5"));
            Container { headspace, starting: Some(amount("200 mL")), ..bottle }
        };
        let pressed = Line { stage: Stage::Pressed, ..line(1, 1, "100 mL") };
        book(
            settings(),
            [
                Record::Ingredient(carrots),
                Record::Ingredient(milk),
                Record::Container(half(1)),
                Record::Container(Container { starting: None, ..half(2) }),
                Record::Drink(drink(1, "100 mL", [pressed])),
                Record::Drink(drink(2, "100 mL", [line(1, 2, "100 mL")])),
                Record::Offer(Offer { weekly: Some(exact("20")), ..offer(1, 1, Some("8")) }),
                Record::Offer(offer(2, 2, Some("5"))),
            ],
        )
    }

    fn said(found: &[ToCheck]) -> Vec<(Unchecked, Moves)> {
        found.iter().map(|it| (it.figure, it.moves)).collect()
    }

    /// By hand: 100 g of juice take 100 / 0.5 / 0.8 = 250 g, 2.50; 20 of them 50.00 a week. Either yield a tenth
    /// lower takes 2.50 / 0.9 = 2.7777..., 0.2777... more, 5.5555... a week. A bottle of 180 mL is filled with 90 mL
    /// and takes 2.25: 0.25 less, 5.00 a week. Juice of 0.9 g/mL weighs 90 g: the same 5.00; it is found
    /// before the bottle. Milk of 0.927 g/mL weighs 10.3 g less, 0.0206 a drink. Nobody counts pieces.
    #[test]
    fn what_moves_most_comes_first() {
        let book = bar();
        let found = figures_to_check(&book, &Ledger::of(&book));
        let carrots = |figure, value| Unchecked::Ingredient(ingredient_id(1), brought(figure, value));
        let week = |text: &str| Moves::PerWeek(money(text));
        assert_eq!(
            said(&found),
            [
                (carrots(Figure::TrimYield, "0.8"), week("5.55555555556")),
                (carrots(Figure::PressYield, "0.5"), week("5.55555555556")),
                (carrots(Figure::JuiceDensity, "1"), week("-5")),
                (Unchecked::Container(container_id(1), amount("200 mL")), week("-5")),
                (
                    Unchecked::Ingredient(ingredient_id(2), brought(Figure::Density, "1.03")),
                    Moves::PerDrink(money("-0.0206"))
                ),
                (carrots(Figure::PieceWeight, "70"), Moves::Nothing),
            ]
        );
    }

    #[test]
    fn what_was_typed_or_confirmed_is_not_to_be_checked() {
        let mut book = bar();
        let mut carrots = book.ingredient(ingredient_id(1)).unwrap().clone();
        carrots.press_yield = Some(share("0.55"));
        let carrots = crate::buying::starter::confirmed(&carrots, Figure::TrimYield);
        book.apply(&Edit::Put(Record::Ingredient(carrots))).unwrap();
        let weighed = Container {
            brimful: Brimful::Weighed(amount("205 mL")),
            ..book.container(container_id(1)).unwrap().clone()
        };
        book.apply(&Edit::Put(Record::Container(weighed))).unwrap();
        let left: Vec<Unchecked> = unchecked(&book).collect();
        assert_eq!(left.len(), 3, "{left:?}");
        assert!(left.iter().all(|it| it.record() != Key::Container(container_id(1))));
    }

    #[test]
    fn without_a_price_asked_it_is_the_cost_that_moves() {
        let mut book = bar();
        book.apply(&Edit::Put(Record::Offer(Offer { weekly: Some(exact("20")), ..offer(1, 1, None) }))).unwrap();
        let found = figures_to_check(&book, &Ledger::of(&book));
        assert_eq!(found.first().map(|it| it.moves), Some(Moves::PerWeek(money("5.55555555556"))));
    }
}
