//! Size, cost and price the drinks of a juice and smoothie bar.
//!
//! The house, from the ground up; each wing looks only at those before it:
//!
//! | wing | what is there |
//! |---|---|
//! | [`foundation`] | exact decimals and measures, shapes, estimates |
//! | [`book`] | what the owner keeps, and the one way to change it |
//! | [`drink`] | a drink at a size: what goes in, what fits, its cost, its price |
//! | [`sizes`], [`buying`], [`counter`] | which sizes to sell; suppliers' prices; what is made |
//! | [`working`] | how each number came about |
//! | [`store`], [`exchange`], [`backup`] | saving, files, going back |
//! | [`words`] | everything that is said |
//! | [`app`], `ui` | the app, without and with a browser |
//!
//! # From a pack to a menu price
//!
//! An invented drink: 4 fl oz of juice. A case of 10 lb costs $15, nothing is cut away, and 60 % of
//! the weight comes out as juice of 1 g/mL. By hand: 4 fl oz are 118.29 mL and as many grams, so
//! that 197.16 g are bought; at $15 for 4,535.92 g that is $0.652. At a target margin of 70 % the
//! price is $0.652 / 0.3 = $2.173, raised to the cent.
//!
//! ```
//! use brimwright::book::{
//!     Book, Brimful, Container, ContainerId, Drink, DrinkId, DrinkKind, Edit, Ingredient, IngredientId, Line, LineId,
//!     Offer, OfferId, Pack, PackId, Record, Scaling, Settings, Stage,
//! };
//! use brimwright::drink::ledger::Ledger;
//! use brimwright::foundation::measure::{Amount, Density, Exact, Money, Share, Unit};
//!
//! let number = |text| Exact::from_plain(text, 12).unwrap();
//! let amount = |text, unit| Amount::new(number(text), unit);
//! let money = |text| Money::from_major(number(text));
//!
//! let celery = Ingredient {
//!     press_yield: Some(Share::from_fraction(number("0.6"))),
//!     juice_density: Some(Density::from_grams_per_millilitre(number("1"))),
//!     packs: vec![Pack::new(PackId::from_random(1), amount("10", Unit::Pound), money("15"))],
//!     ..Ingredient::named(IngredientId::from_random(2), "Celery")
//! };
//! let ounces = amount("4", Unit::UsFluidOunce);
//! let bottle = Container::new(ContainerId::from_random(3), "Small bottle".into(), Brimful::Weighed(ounces));
//! let line = Line {
//!     id: LineId::from_random(4),
//!     ingredient: celery.id,
//!     stage: Stage::Pressed,
//!     amount: ounces,
//!     scaling: Scaling::InProportion,
//!     ice: None, in_glass: false,
//! };
//! let new = Drink::new(DrinkId::from_random(5), "Straight celery".into(), DrinkKind::Pressed, ounces);
//! let drink = Drink { lines: vec![line], ..new };
//! let offer = OfferId { drink: drink.id, container: bottle.id };
//!
//! let target = Share::from_fraction(number("0.7"));
//! let settings = Settings { target, endings: Vec::new(), ..Settings::new("Invented bar") };
//! let mut book = Book::new(settings);
//! for record in [
//!     Record::Ingredient(celery),
//!     Record::Container(bottle),
//!     Record::Drink(drink),
//!     Record::Offer(Offer::new(offer)),
//! ] {
//!     book.apply(&Edit::Put(record)).unwrap();
//! }
//!
//! let ledger = Ledger::of(&book);
//! let priced = ledger.get(offer).unwrap().as_ref().unwrap();
//! let cost = priced.cost.total();
//! assert_eq!(cost.major().rounded(3), number("0.652"));
//! assert_eq!(priced.suggestion.unwrap().menu, money("2.18"));
//! ```
#![cfg_attr(
    not(test),
    deny(
        clippy::unwrap_used,
        clippy::expect_used,
        clippy::panic,
        clippy::indexing_slicing,
        clippy::arithmetic_side_effects
    )
)]

// The builders of the tests, for the engine's own too.
#[cfg(test)]
extern crate self as brimwright;
#[cfg(test)]
#[path = "../tests/support/mod.rs"]
mod support;

pub mod app;
pub mod backup;
pub mod book;
pub mod buying;
pub mod counter;
pub mod drink;
pub mod exchange;
pub mod foundation;
pub mod sizes;
pub mod store;
pub mod words;
pub mod working;

#[cfg(target_arch = "wasm32")]
pub mod ui;
