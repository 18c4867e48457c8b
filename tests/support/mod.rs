//! Small builders, so that tests read as what they check. Everything built here is invented.
#![allow(dead_code, reason = "each test crate uses some of them")]

pub mod dice;
pub mod runs;
#[cfg(not(target_arch = "wasm32"))]
pub mod shelf;

use brimwright::book::{
    Batch, Book, Brimful, BuyingList, Container, ContainerId, Drink, DrinkId, DrinkKind, Goods, Ingredient,
    IngredientId, KeptConditions, Line, LineId, Make, Offer, OfferId, Pack, PackId, Packaging, PackagingId,
    PackagingUse, Record, Scaling, Scenario, ScenarioId, Scope, SeenPrice, SeenPriceId, Settings, Sold, Stage, ToBuy,
    Trial, TrialId, Week,
};
use brimwright::foundation::measure::{
    Amount, Currency, Date, Density, Exact, Length, LengthUnit, Mass, Measure, Money, NumberStyle, Share, System, Time,
    TypedLength, Unit, Volume,
};
use brimwright::words::Speaker;

/// Says numbers in English, money in dollars and measures in `units`.
pub fn speaker(units: System) -> Speaker {
    Speaker::new(Currency::USD, units, NumberStyle::english("$"))
}

/// A number of at most twelve decimals, such as "12.5".
pub fn exact(text: &str) -> Exact {
    Exact::from_plain(text, 12).unwrap_or_else(|| panic!("{text:?} is not a plain decimal"))
}

/// Money in the major unit.
pub fn money(text: &str) -> Money {
    Money::from_major(exact(text))
}

/// A day, such as "2026-11-23".
pub fn day(text: &str) -> Date {
    Date::from_text(text).unwrap_or_else(|| panic!("{text:?} is no day"))
}

/// A share as a fraction: "0.65" is 65 %.
pub fn share(text: &str) -> Share {
    Share::from_fraction(exact(text))
}

/// A density in grams per millilitre.
pub fn density(text: &str) -> Density {
    Density::from_grams_per_millilitre(exact(text))
}

/// A mass in grams.
pub fn grams(text: &str) -> Mass {
    Mass::from_grams(exact(text))
}

/// A volume in millilitres.
pub fn millilitres(text: &str) -> Volume {
    Volume::from_millilitres(exact(text))
}

/// A length in millimetres.
pub fn millimetres(text: &str) -> Length {
    Length::from_millimetres(exact(text))
}

/// A time in seconds.
pub fn seconds(text: &str) -> Time {
    Time::from_seconds(exact(text))
}

/// An amount as the book writes it: "40 lb".
pub fn amount(text: &str) -> Amount {
    let (number, unit) = text.split_once(' ').unwrap_or_else(|| panic!("{text:?} has no unit"));
    Amount::new(exact(number), Unit::from_symbol(unit).unwrap_or_else(|| panic!("{unit:?} is no unit")))
}

/// A length as the book writes it: "90 mm".
pub fn length(text: &str) -> TypedLength {
    let (number, unit) = text.split_once(' ').unwrap_or_else(|| panic!("{text:?} has no unit"));
    TypedLength::new(exact(number), LengthUnit::from_symbol(unit).unwrap_or_else(|| panic!("{unit:?} is no unit")))
}

/// An amount in its base unit.
pub fn measure(text: &str) -> Measure {
    amount(text).measure().unwrap()
}

/// The id of an ingredient.
pub fn ingredient_id(number: u64) -> IngredientId {
    IngredientId::from_random(number)
}

/// The id of packaging.
pub fn packaging_id(number: u64) -> PackagingId {
    PackagingId::from_random(number)
}

/// The id of a container.
pub fn container_id(number: u64) -> ContainerId {
    ContainerId::from_random(number)
}

/// The id of a drink.
pub fn drink_id(number: u64) -> DrinkId {
    DrinkId::from_random(number)
}

/// The id of a pack.
pub fn pack_id(number: u64) -> PackId {
    PackId::from_random(number)
}

/// The id of an offer.
pub fn offer_id(drink: u64, container: u64) -> OfferId {
    OfferId { drink: drink_id(drink), container: container_id(container) }
}

/// An ingredient of which nothing is cut away, as dense as water, with these packs.
pub fn ingredient(id: u64, packs: impl IntoIterator<Item = Pack>) -> Ingredient {
    let named = Ingredient::named(ingredient_id(id), &format!("Invented ingredient {id}"));
    Ingredient { density: Some(density("1")), packs: packs.into_iter().collect(), ..named }
}

/// A pack without surcharge.
pub fn pack(id: u64, contents: &str, price: &str) -> Pack {
    Pack::new(pack_id(id), amount(contents), money(price))
}

/// A vessel bought in these packs.
pub fn vessel(id: u64, packs: impl IntoIterator<Item = Pack>) -> Packaging {
    let named = Packaging::named(packaging_id(id), &format!("Invented bottle {id}"));
    Packaging { packs: packs.into_iter().collect(), ..named }
}

/// A container poured to the rim, without packaging.
pub fn container(id: u64, brimful: &str) -> Container {
    Container::new(container_id(id), format!("Invented {brimful} {id}"), Brimful::Weighed(amount(brimful)))
}

/// So many of this packaging for one drink.
pub fn use_of(packaging: u64, count: &str) -> PackagingUse {
    PackagingUse { packaging: packaging_id(packaging), count: exact(count) }
}

/// A line in proportion, as bought.
pub fn line(id: u64, ingredient: u64, takes: &str) -> Line {
    Line {
        id: LineId::from_random(id),
        ingredient: ingredient_id(ingredient),
        stage: Stage::AsBought,
        amount: amount(takes),
        scaling: Scaling::InProportion,
        ice: None,
        in_glass: false,
    }
}

/// A blended drink with these lines and nothing else to pay for.
pub fn drink(id: u64, reference: &str, lines: impl IntoIterator<Item = Line>) -> Drink {
    let name = format!("Invented drink {id}");
    Drink {
        lines: lines.into_iter().collect(),
        ..Drink::new(drink_id(id), name, DrinkKind::Blended, amount(reference))
    }
}

/// An offer, with or without a price.
pub fn offer(drink: u64, container: u64, price: Option<&str>) -> Offer {
    Offer { price: price.map(money), ..Offer::new(offer_id(drink, container)) }
}

/// A week of these sales: container, number, contribution of one; each of drink 1.
pub fn week(monday: &str, sold: &[(u64, &str, &str)]) -> Week {
    let of = |(container, units, contribution): &(u64, &str, &str)| {
        let OfferId { drink, container } = offer_id(1, *container);
        Sold { drink, container, units: exact(units), contribution: money(contribution), overhead: None }
    };
    Week { monday: day(monday), sold: sold.iter().map(of).collect() }
}

/// A trial of six weeks before and on.
pub fn trial(id: u64, scope: Scope) -> Trial {
    Trial {
        id: TrialId::from_random(id),
        name: format!("Invented change {id}"),
        scope,
        first: day("2026-10-12"),
        start: day("2026-11-23"),
        last: None,
    }
}

/// A scenario of these offers.
pub fn scenario(id: u64, offers: impl IntoIterator<Item = Offer>) -> Scenario {
    Scenario {
        id: ScenarioId::from_random(id),
        name: format!("Invented menu {id}"),
        offers: offers.into_iter().collect(),
        conditions: KeptConditions::default(),
    }
}

/// So many of each drink in a container, on a day.
pub fn batch(on: &str, makes: &[(u64, u64, &str)]) -> Batch {
    let of = |(drink, container, units): &(u64, u64, &str)| {
        let OfferId { drink, container } = offer_id(*drink, *container);
        Make { drink, container, units: exact(units), filled: false, off_shelf: Exact::ZERO }
    };
    Batch { day: day(on), makes: makes.iter().map(of).collect(), ready: Vec::new() }
}

/// A buying list of packs of ingredients: ingredient, pack, how many.
pub fn buying_list(lines: &[(u64, u64, &str)]) -> BuyingList {
    let of = |(ingredient, pack, packs): &(u64, u64, &str)| ToBuy {
        goods: Goods::Ingredient(ingredient_id(*ingredient)),
        pack: pack_id(*pack),
        packs: exact(packs),
        bought: false,
        paid: None,
    };
    BuyingList { day: day("2026-11-23"), lines: lines.iter().map(of).collect() }
}

/// A price of a blended drink, seen at an invented place on 2026-11-02.
pub fn seen_price(id: u64, size: &str, price: &str) -> SeenPrice {
    SeenPrice {
        id: SeenPriceId::from_random(id),
        place: format!("Invented place {id}"),
        kind: DrinkKind::Blended,
        size: amount(size),
        price: money(price),
        day: day("2026-11-02"),
    }
}

/// So many sold of a drink in a container, each with this contribution.
pub fn sold(drink: u64, container: u64, units: &str, contribution: &str) -> Sold {
    Sold {
        drink: drink_id(drink),
        container: container_id(container),
        units: exact(units),
        contribution: money(contribution),
        overhead: None,
    }
}

/// A new book's settings with any price ending.
pub fn settings() -> Settings {
    Settings { endings: Vec::new(), ..Settings::new("Invented test bar") }
}

/// A book of these records.
pub fn book(settings: Settings, records: impl IntoIterator<Item = Record>) -> Book {
    let records = records.into_iter().chain([Record::Settings(Box::new(settings))]);
    Book::from_records(records).unwrap_or_else(|refusal| panic!("{refusal:?}"))
}

/// A book of one drink (1) in one container (1) that costs exactly this much in its one
/// ingredient (1, with one pack, 1), offered at this price.
pub fn book_of_one_drink(settings: Settings, cost: &str, price: Option<&str>) -> Book {
    book(
        settings,
        [
            Record::Ingredient(ingredient(1, [pack(1, "250 mL", cost)])),
            Record::Container(container(1, "250 mL")),
            Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
            Record::Offer(offer(1, 1, price)),
        ],
    )
}
