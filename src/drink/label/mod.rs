//! What a label says of a drink in a container: net contents, ingredients by mass, allergens,
//! unit price, and what to be careful of. Data for a label, no legal advice.
//!
//! - [Net contents](NetContents): the declared size, or the fill if none is declared, rounded down to 0.01 fl oz
//!   and to 1 mL, from one litre on to 0.01 L (21 CFR 101.7, from memory).
//! - [Ingredients](by_mass) by their mass in the drink, the heaviest first; ice is water (21 CFR 101.4(a)(1), text).
//! - [Percent juice](PercentJuice): volume of juice over the volume of all but air, rounded down to the whole
//!   percent (21 CFR 101.30, text).
//! - [Unit price](UnitPrice): price over net contents, for 1 fl oz (NIST Handbook 130, second-hand) or 1 L
//!   (Directive 98/6/EC, read in German).
//! - Low-acid is a pH above 4.6 ([`LOW_ACID_ABOVE`]).
//!
//! ```
//! use brimwright::drink::label::{NetContents, NetSource};
//! use brimwright::foundation::measure::{Exact, Volume};
//!
//! // By hand: 500 / 29.5735295625 = 16.907..., a pint of 16 and 0.9.
//! let half_litre = Volume::from_millilitres(Exact::from(500));
//! let net = NetContents::of(half_litre, NetSource::Declared)?;
//! assert_eq!(net.fluid_ounces.to_string(), "16.9");
//! let in_largest_units: Vec<String> = net.largest_units.iter().map(|part| part.to_string()).collect();
//! assert_eq!(in_largest_units, ["1 pt", "0.9 fl oz"]);
//! assert_eq!(net.metric.to_string(), "500 mL");
//! # Ok::<(), brimwright::foundation::measure::Overflow>(())
//! ```

mod acidity;
mod allergens;
mod caution;
mod ingredients;
mod juice;
mod law;
mod names;
mod net_contents;
mod nouns;
mod percent_juice;
mod unit_price;

pub use acidity::{LOW_ACID_ABOVE, PhSource, PublishedPh, published_ph};
pub use allergens::{Allergens, UsedAround, allergens_of};
pub use caution::Caution;
pub use ingredients::{Listed, ListedAs, by_mass};
pub use juice::{Acidity, Juice, served};
pub use law::Law;
pub(crate) use names::{names_it, places_of, says_juice};
pub use net_contents::{NetContents, NetSource};
pub(crate) use nouns::nouns;
pub use percent_juice::PercentJuice;
pub use unit_price::UnitPrice;

use crate::book::{Book, Container, Drink, IcePlace, Key, Line, Offer, Service};
use crate::drink::fill::{FillError, ScaleError, fill, scale};
use crate::drink::ledger::OfferError;
use crate::drink::price::Terms;
use crate::drink::yields::YieldError;
use crate::foundation::measure::Overflow;

/// What is known of a drink in a container for whoever buys it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Facts {
    /// What the label of a package says, or why that cannot be computed. It is `None` for what is
    /// sold by the glass, which has no label.
    pub package: Option<Result<Package, LabelError>>,
    /// Whether the size has ice in it that stands in the glass.
    pub size_includes_ice: bool,
    /// What is in it that must be named.
    pub allergens: Allergens,
    /// What it costs per volume, where a price is asked.
    pub unit_price: Option<UnitPrice>,
    /// What to be careful of.
    pub cautions: Vec<Caution>,
}

/// What the label of a package says besides.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Package {
    /// How much is in it.
    pub net: NetContents,
    /// What is in it, by mass in falling order.
    pub ingredients: Vec<Listed>,
    /// How much of it is juice.
    pub juice: PercentJuice,
}

/// Why there are no facts for a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabelError {
    /// The container has no fill, the recipe does not make it, or a record is missing.
    Offer(OfferError),
    /// An ingredient lacks what its mass in the drink is computed from.
    Mass(YieldError),
}

impl From<FillError> for LabelError {
    fn from(error: FillError) -> LabelError {
        LabelError::Offer(OfferError::Fill(error))
    }
}

impl From<ScaleError> for LabelError {
    fn from(error: ScaleError) -> LabelError {
        LabelError::Offer(OfferError::Scale(error))
    }
}

impl From<YieldError> for LabelError {
    fn from(error: YieldError) -> LabelError {
        LabelError::Mass(error)
    }
}

impl From<Overflow> for LabelError {
    fn from(overflow: Overflow) -> LabelError {
        LabelError::Offer(OfferError::Arithmetic(overflow))
    }
}

/// The facts of an offer. Net contents are what the container is declared to hold, or the fill
/// where nothing is declared.
///
/// # Errors
/// A [`LabelError`] where a record is missing. What an ingredient weighs is needed for the label of a
/// package alone: allergens and cautions stand without it.
pub fn facts(book: &Book, offer: &Offer) -> Result<Facts, LabelError> {
    let missing = |key| LabelError::Offer(OfferError::Missing(key));
    let drink = book.drink(offer.drink).ok_or(missing(Key::Drink(offer.drink)))?;
    let container = book.container(offer.container).ok_or(missing(Key::Container(offer.container)))?;
    // What can hurt is said whatever is missing.
    let fill = fill(container).ok();
    let package = match served(drink, Some(offer)) {
        Some(Service::ByTheGlass) => None,
        Some(Service::PackagedAhead) | None => Some(package(book, drink, container)),
    };
    Ok(Facts {
        package,
        size_includes_ice: size_includes_ice(drink),
        allergens: allergens_of(book, drink),
        unit_price: unit_price(book, offer).ok().flatten(),
        cautions: Caution::of(book, drink, Some(offer), fill.as_ref()),
    })
}

fn package(book: &Book, drink: &Drink, container: &Container) -> Result<Package, LabelError> {
    let scaled = scale(book, drink, fill(container)?.volume)?;
    Ok(Package {
        net: net_contents(container)?,
        ingredients: by_mass(book, &scaled)?,
        juice: PercentJuice::of(book, drink, &scaled)?,
    })
}

/// Whether the sizes of a drink have ice in them that stands in the glass.
pub fn size_includes_ice(drink: &Drink) -> bool {
    let stands_in_the_glass =
        |line: &Line| line.ice.is_some_and(|ice| matches!(ice.place, IcePlace::HeldUnder | IcePlace::Floating));
    drink.lines.iter().any(stands_in_the_glass)
}

/// What an offer costs per volume of its net contents. Returns `None` if no price is asked.
///
/// # Errors
/// A [`LabelError`] that names what to mend: the container's, or an overflow. The recipe is not
/// needed.
pub fn unit_price(book: &Book, offer: &Offer) -> Result<Option<UnitPrice>, LabelError> {
    let missing = |key| LabelError::Offer(OfferError::Missing(key));
    let Some(price) = offer.price else { return Ok(None) };
    let drink = book.drink(offer.drink).ok_or(missing(Key::Drink(offer.drink)))?;
    let container = book.container(offer.container).ok_or(missing(Key::Container(offer.container)))?;
    let terms = Terms::of(book.settings(), drink, container)?;
    Ok(Some(UnitPrice::of(price, &terms, book.settings().units, net_contents(container)?.volume)?))
}

fn net_contents(container: &Container) -> Result<NetContents, LabelError> {
    let declared = container.declared.map(|declared| declared.volume()).transpose()?.flatten();
    match declared {
        Some(volume) => Ok(NetContents::of(volume, NetSource::Declared)?),
        None => Ok(NetContents::of(fill(container)?.volume, NetSource::Fill)?),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Drink, DrinkKind, Edit, Headspace, Ice, Ingredient, Record, Service};
    use crate::support::{
        amount, book, container, container_id, drink, drink_id, exact, ingredient, ingredient_id, line, millilitres,
        money, offer, settings, share,
    };

    /// 400 mL of juice and 100 mL of syrup at 1.3 g/mL in 500 mL less a headspace of a tenth,
    /// at a price of 9.00 and without any pack.
    fn bar(declared: Option<&str>) -> Book {
        let syrup = Ingredient { density: Some(crate::support::density("1.3")), ..ingredient(2, []) };
        let bottle = Container {
            declared: declared.map(amount),
            headspace: Headspace::Share(share("0.1")),
            ..container(1, "500 mL")
        };
        let lemonade = drink(1, "500 mL", [line(1, 2, "100 mL"), line(2, 1, "400 mL")]);
        book(
            settings(),
            [
                Record::Ingredient(ingredient(1, [])),
                Record::Ingredient(syrup),
                Record::Container(bottle),
                Record::Drink(Drink { kind: DrinkKind::Blended, ..lemonade }),
                Record::Offer(offer(1, 1, Some("9"))),
            ],
        )
    }

    #[test]
    fn a_label_needs_no_costs() {
        let book = bar(None);
        let facts = facts(&book, &offer(1, 1, Some("9"))).unwrap();
        // 450 mL: 360 of juice and 90 of syrup, 117 g.
        let package = facts.package.unwrap().unwrap();
        let masses: Vec<_> = package.ingredients.iter().map(|listed| (listed.what, listed.mass.grams())).collect();
        let food = |number| ListedAs::Food(ingredient_id(number));
        assert_eq!(masses, [(food(1), exact("360")), (food(2), exact("117"))]);
        assert_eq!((package.net.volume, package.net.source), (millilitres("450"), NetSource::Fill));
        let not_said = vec![ingredient_id(2), ingredient_id(1)];
        assert_eq!((package.juice, facts.size_includes_ice), (PercentJuice::NotSaid(not_said), false));
        assert_eq!(facts.allergens.not_stated, [ingredient_id(2), ingredient_id(1)]);
        assert_eq!(facts.unit_price.map(|unit_price| unit_price.price), Some(money("9")));
        let not_said = Caution::JuiceNotSaid(None, vec![ingredient_id(2), ingredient_id(1)]);
        assert_eq!(facts.cautions, [not_said, Caution::AllergensAsInTheBook, Caution::NoLegalAdvice]);
    }

    /// By the glass there is no label, so nothing that only a label needs can stand in the way.
    #[test]
    fn a_cup_over_ice_has_allergens_and_a_unit_price() {
        let mut book = bar(None);
        let bare = Ingredient { density: None, ..ingredient(2, []) };
        book.apply(&Edit::Put(Record::Ingredient(bare))).unwrap();
        let mut lemonade = book.drink(drink_id(1)).unwrap().clone();
        lemonade.kind = DrinkKind::OverIce;
        lemonade.lines[1].ice = Some(Ice { place: IcePlace::Floating, packing: share("0.6"), melted: share("0") });
        book.apply(&Edit::Put(Record::Drink(lemonade.clone()))).unwrap();
        let over_ice = facts(&book, &offer(1, 1, Some("9"))).unwrap();
        assert_eq!((over_ice.package, over_ice.size_includes_ice), (None, true));
        assert_eq!(over_ice.allergens.not_stated, [ingredient_id(2), ingredient_id(1)]);
        assert_eq!(over_ice.unit_price.map(|unit_price| unit_price.price), Some(money("9")));
        let bottled = Offer { service: Some(Service::PackagedAhead), ..offer(1, 1, Some("9")) };
        assert!(matches!(facts(&book, &bottled).unwrap().package, Some(Err(_))));
        // Ice that is blended in is no ice any more.
        lemonade.lines[1].ice = Some(Ice { place: IcePlace::BlendedIn, packing: share("0.6"), melted: share("0") });
        book.apply(&Edit::Put(Record::Drink(lemonade))).unwrap();
        assert!(!facts(&book, &offer(1, 1, Some("9"))).unwrap().size_includes_ice);
    }

    #[test]
    fn without_a_price_there_is_no_unit_price() {
        assert_eq!(facts(&bar(None), &offer(1, 1, None)).unwrap().unit_price, None);
    }

    #[test]
    fn a_unit_price_needs_no_recipe() {
        // 9.00 for 450 mL is 0.02 times 29.5735295625 for a fluid ounce; the recipe is empty.
        let mut book = bar(None);
        book.apply(&Edit::Put(Record::Drink(drink(1, "500 mL", [])))).unwrap();
        let facts = facts(&book, &offer(1, 1, Some("9"))).unwrap();
        assert_eq!(facts.package, Some(Err(ScaleError::NoLines(drink_id(1)).into())));
        let per = |price| unit_price(&book, &offer(1, 1, price)).unwrap().map(|it| it.per_unit);
        assert_eq!(per(Some("9")), Some(money("0.59147059125")));
        assert_eq!(per(None), None);
    }

    #[test]
    fn what_is_declared_is_the_net_contents() {
        let book = bar(Some("440 mL"));
        let facts = facts(&book, &offer(1, 1, Some("9"))).unwrap();
        let net = facts.package.unwrap().unwrap().net;
        assert_eq!((net.volume, net.source), (millilitres("440"), NetSource::Declared));
        // 9.00 / 440 mL * 29.5735295625 mL, computed in fractions.
        let per_unit = facts.unit_price.unwrap().per_unit.major().rounded(9);
        assert_eq!(per_unit, exact("0.604913105"));
    }

    #[test]
    fn a_fill_short_of_what_is_declared_is_a_caution() {
        let facts = facts(&bar(Some("451 mL")), &offer(1, 1, None)).unwrap();
        assert_eq!(facts.cautions[1], Caution::FillShortOfDeclared(millilitres("1")));
    }

    #[test]
    fn what_stands_in_the_way_is_named() {
        let book = bar(None);
        let gone = facts(&book, &offer(2, 1, None));
        assert_eq!(gone, Err(LabelError::Offer(OfferError::Missing(Key::Drink(drink_id(2))))));
        let gone = facts(&book, &offer(1, 2, None));
        assert_eq!(gone, Err(LabelError::Offer(OfferError::Missing(Key::Container(container_id(2))))));
        let empty = Record::Drink(drink(1, "500 mL", []));
        let mut without_lines = book.clone();
        without_lines.apply(&crate::book::Edit::Put(empty)).unwrap();
        let no_lines = OfferError::Scale(ScaleError::NoLines(drink_id(1)));
        let facts = facts(&without_lines, &offer(1, 1, None)).unwrap();
        assert_eq!(facts.package, Some(Err(LabelError::Offer(no_lines))));
    }

    #[test]
    fn an_ingredient_without_density_has_no_place_in_the_order() {
        let mut book = bar(None);
        let bare = Ingredient { density: None, ..ingredient(2, []) };
        book.apply(&crate::book::Edit::Put(Record::Ingredient(bare))).unwrap();
        let found = facts(&book, &offer(1, 1, None)).unwrap();
        assert_eq!(found.package, Some(Err(LabelError::Mass(YieldError::NoDensity(ingredient_id(2))))));
        // What can hurt is said all the same.
        let whole = facts(&bar(None), &offer(1, 1, None)).unwrap();
        assert!(!whole.cautions.is_empty());
        assert_eq!((found.cautions, found.allergens), (whole.cautions, whole.allergens));
    }
}
