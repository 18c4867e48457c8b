//! A large generated book: 500 drinks of 300 ingredients in 3 sizes, with a year of monthly prices
//! and of weeks, three scenarios and a month of batches, the same at every run. All of it is
//! invented by rule.

use brimwright::book::{
    Batch, Book, Brimful, Container, ContainerId, CostBasis, Drink, DrinkId, DrinkKind, Edit, Headspace, Ingredient,
    IngredientId, KeptConditions, Labour, Line, LineId, Make, Offer, OfferId, Pack, PackId, Packaging, PackagingId,
    PackagingPart, PackagingUse, PaymentFee, Quoted, Record, Scaling, Scenario, ScenarioId, Settings, Sold, Stage, Tax,
    TaxPlace, Week,
};
use brimwright::foundation::measure::{Amount, Date, Density, Exact, Mass, Money, Share, Time, Unit};

/// Drinks in the book, if no other number is asked for.
pub const DRINKS: u64 = 500;
/// Ingredients in it. A book of more drinks has as many more, so that one ingredient goes into about
/// as many drinks.
pub const INGREDIENTS: u64 = 300;
/// Sizes that every drink is offered in, in US fluid ounces.
pub const SIZES: [i64; 3] = [12, 16, 24];
/// Weeks that were written down, each of a third of the menu.
pub const WEEKS: i32 = 52;
/// Scenarios, each of the whole menu.
pub const SCENARIOS: u64 = 3;
/// Days that two dozen drinks are made on.
pub const BATCHES: i32 = 30;
/// The month of the first price in a history, as months since the year 0. Each history has the twelve
/// months from then on.
const FIRST_MONTH: i64 = 2025 * 12 + 11;

/// A linear congruential generator (D. Knuth's MMIX constants), so that the book never changes.
struct Numbers(u64);

impl Numbers {
    /// A number from `low` up to, and not at, `high`.
    fn between(&mut self, low: i64, high: i64) -> i64 {
        self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
        low + (self.0 >> 33) as i64 % (high - low)
    }

    /// So many hundredths.
    fn hundredths(&mut self, low: i64, high: i64) -> Exact {
        Exact::new(self.between(low, high), 2)
    }

    fn one_of<T: Copy>(&mut self, all: &[T]) -> T {
        all[self.between(0, all.len() as i64) as usize]
    }
}

/// The book, made edit by edit.
pub fn book() -> Book {
    let mut book = menu(DRINKS);
    past_and_plans(&mut book);
    book
}

/// The book with a usual week for every offer.
pub fn with_a_usual_week(mut book: Book) -> Book {
    let offers: Vec<Offer> = book.offers().cloned().collect();
    for (weekly, offer) in (1..).zip(offers) {
        let sold = Offer { weekly: Some(Exact::new(weekly % 40 + 1, 0)), ..offer };
        book.apply(&Edit::Put(Record::Offer(sold))).expect("a weekly number");
    }
    book
}

/// The ingredients in a book of so many drinks.
pub fn ingredients_of(drinks: u64) -> u64 {
    drinks * INGREDIENTS / DRINKS
}

/// A book of so many drinks in every size: what is sold now, without weeks, scenarios and batches.
pub fn menu(drinks: u64) -> Book {
    let mut numbers = Numbers(1);
    // Histories are drawn from numbers of their own, so that they move no other value.
    let mut histories = Numbers(2);
    let ingredients = ingredients_of(drinks);
    let mut book = Book::new(settings());
    let mut put = |record: Record| {
        book.apply(&Edit::Put(record)).expect("generated records hold");
    };
    for id in 1..=ingredients {
        let mut ingredient = ingredient(id, &mut numbers);
        ingredient.packs.iter_mut().for_each(|pack| remember(pack, &mut histories));
        put(Record::Ingredient(ingredient));
    }
    for (id, ounces) in (1..).zip(SIZES) {
        for (id, part) in [(2 * id - 1, PackagingPart::Vessel), (2 * id, PackagingPart::Closure)] {
            let mut packaging = packaging(id, part, &mut numbers);
            packaging.packs.iter_mut().for_each(|pack| remember(pack, &mut histories));
            put(Record::Packaging(packaging));
        }
        put(Record::Container(container(id, ounces)));
    }
    for id in 1..=drinks {
        put(Record::Drink(drink(id, ingredients, &mut numbers)));
        for (size, ounces) in (1..).zip(SIZES) {
            // About 40 cents an ounce: some on target, some under it.
            let price = Some(Money::from_major(numbers.hundredths(40 * ounces, 60 * ounces)));
            let (drink, container) = (DrinkId::from_random(id), ContainerId::from_random(size));
            put(Record::Offer(Offer { price, ..Offer::new(OfferId { drink, container }) }));
        }
    }
    book
}

/// Gives three packs of four a year of monthly prices, the price paid now the last of them.
fn remember(pack: &mut Pack, histories: &mut Numbers) {
    if histories.between(0, 4) == 0 {
        return;
    }
    let first_of = |month: i64| {
        let text = format!("{:04}-{:02}-01", month / 12, month % 12 + 1);
        Date::from_text(&text).expect("the first day of a month")
    };
    let mut price = pack.price;
    for month in (FIRST_MONTH..FIRST_MONTH + 11).rev() {
        let moved = price.times(histories.hundredths(95, 105)).expect("small");
        price = Money::from_major(moved.major().rounded(2));
        pack.earlier.insert(0, Quoted { day: first_of(month), price });
    }
    pack.day = Some(first_of(FIRST_MONTH + 11));
}

/// Adds what was sold, what might be, and what is made.
pub fn past_and_plans(book: &mut Book) {
    let offers: Vec<Offer> = book.offers().cloned().collect();
    let monday = Date::from_text("2025-11-24").expect("a Monday");
    for week in 0..WEEKS {
        let lines = offers.iter().skip(week as usize % 3).step_by(3);
        let sold = lines.map(|offer| Sold {
            drink: offer.drink,
            container: offer.container,
            units: Exact::new(i64::from(week) % 7 + 3, 0),
            contribution: Money::from_major(Exact::new(215, 2)),
            overhead: None,
        });
        let week = Week { monday: monday.plus_weeks(week), sold: sold.collect() };
        book.apply(&Edit::Put(Record::Week(week))).expect("a week of what is sold");
    }
    for id in 1..=SCENARIOS {
        let name = format!("Generated menu {id}");
        let scenario = Scenario {
            id: ScenarioId::from_random(id),
            name,
            offers: offers.clone(),
            conditions: KeptConditions::default(),
        };
        book.apply(&Edit::Put(Record::Scenario(scenario))).expect("a menu of what is there");
    }
    for batch in 0..BATCHES {
        let made = offers.iter().skip(batch as usize * 24).take(24);
        let make = |offer: &Offer| Make {
            drink: offer.drink,
            container: offer.container,
            units: Exact::new(6, 0),
            filled: true,
            off_shelf: Exact::ZERO,
        };
        let batch = Batch { day: monday.plus_weeks(batch), makes: made.map(make).collect(), ready: Vec::new() };
        book.apply(&Edit::Put(Record::Batch(batch))).expect("a batch of what is sold");
    }
}

fn settings() -> Settings {
    Settings {
        invented: true,
        tax: Tax { rate: Share::from_fraction(Exact::new(825, 4)), place: TaxPlace::AddedAtTheTill },
        payment_fee: PaymentFee {
            share: Share::from_fraction(Exact::new(29, 3)),
            fixed: Money::from_major(Exact::new(10, 2)),
            ..PaymentFee::default()
        },
        wage: Money::from_major(Exact::new(1850, 2)),
        overhead: Money::from_major(Exact::new(35, 2)),
        unsold: Share::from_fraction(Exact::new(4, 2)),
        target: Share::from_fraction(Exact::new(45, 2)),
        cost_basis: CostBasis::Everything,
        ..Settings::new("Generated book")
    }
}

fn ingredient(id: u64, numbers: &mut Numbers) -> Ingredient {
    let packs = (1..=2).map(|id| Pack {
        id: PackId::from_random(id),
        supplier: format!("Invented supplier {}", numbers.between(1, 6)),
        contents: Amount::new(Exact::new(numbers.between(5, 60), 0), numbers.one_of(&[Unit::Pound, Unit::Kilogram])),
        price: Money::from_major(numbers.hundredths(800, 9000)),
        surcharge: Money::from_major(numbers.hundredths(0, 200)),
        day: None,
        earlier: Vec::new(),
        at_a_time: Exact::ONE,
        tiers: Vec::new(),
    });
    let packs = packs.collect();
    Ingredient {
        trim_yield: Share::from_fraction(numbers.hundredths(60, 101)),
        press_yield: Some(Share::from_fraction(numbers.hundredths(40, 81))),
        density: Some(Density::from_grams_per_millilitre(Exact::new(numbers.between(900, 1100), 3))),
        juice_density: Some(Density::from_grams_per_millilitre(Exact::new(numbers.between(1010, 1070), 3))),
        piece_weight: Some(Mass::from_grams(Exact::new(numbers.between(40, 400), 0))),
        packs,
        ..Ingredient::named(IngredientId::from_random(id), &format!("Ingredient {id}"))
    }
}

fn packaging(id: u64, part: PackagingPart, numbers: &mut Numbers) -> Packaging {
    let pack = Pack {
        id: PackId::from_random(1),
        supplier: "Invented supplier".into(),
        contents: Amount::new(Exact::new(numbers.between(100, 500), 0), Unit::Piece),
        price: Money::from_major(numbers.hundredths(2000, 9000)),
        surcharge: Money::ZERO,
        day: None,
        earlier: Vec::new(),
        at_a_time: Exact::ONE,
        tiers: Vec::new(),
    };
    Packaging {
        id: PackagingId::from_random(id),
        name: format!("Packaging {id}"),
        part,
        packs: vec![pack],
        on_hand: None,
    }
}

fn container(id: u64, ounces: i64) -> Container {
    let used = |id| PackagingUse { packaging: PackagingId::from_random(id), count: Exact::ONE };
    Container {
        declared: Some(Amount::new(Exact::new(ounces, 0), Unit::UsFluidOunce)),
        headspace: Headspace::Share(Share::from_fraction(Exact::new(3, 2))),
        set: vec![used(2 * id - 1), used(2 * id)],
        ..Container::new(
            ContainerId::from_random(id),
            format!("{ounces} fl oz"),
            Brimful::Weighed(Amount::new(Exact::new(ounces + 1, 0), Unit::UsFluidOunce)),
        )
    }
}

/// A drink of some of so many ingredients.
fn drink(id: u64, ingredients: u64, numbers: &mut Numbers) -> Drink {
    let lines = numbers.between(4, 8) as u64;
    let kind = numbers.one_of(DrinkKind::ALL);
    let reference = Amount::new(Exact::new(16, 0), Unit::UsFluidOunce);
    Drink {
        lines: (1..=lines).map(|id| line(id, ingredients, numbers)).collect(),
        process_loss: Share::from_fraction(numbers.hundredths(0, 6)),
        labour: Labour {
            per_drink: Time::from_seconds(Exact::new(numbers.between(20, 120), 0)),
            per_litre: Time::from_seconds(Exact::new(numbers.between(0, 90), 0)),
            per_batch: Time::from_seconds(Exact::new(numbers.between(0, 600), 0)),
            batch: Exact::new(numbers.between(1, 12), 0),
            batch_volume: None,
        },
        ..Drink::new(DrinkId::from_random(id), format!("Drink {id}"), kind, reference)
    }
}

/// The first line is always in proportion, so that every size can be filled.
fn line(id: u64, ingredients: u64, numbers: &mut Numbers) -> Line {
    let fixed = id > 1 && numbers.between(0, 5) == 0;
    let (amount, unit) = match (fixed, numbers.between(0, 3)) {
        (true, _) => (numbers.hundredths(10, 100), Unit::UsFluidOunce),
        (false, 0) => (numbers.hundredths(100, 400), Unit::Ounce),
        (false, 1) => (numbers.hundredths(25, 150), Unit::Piece),
        (false, _) => (numbers.hundredths(100, 600), Unit::UsFluidOunce),
    };
    Line {
        id: LineId::from_random(id),
        ingredient: IngredientId::from_random(numbers.between(1, ingredients as i64 + 1) as u64),
        stage: numbers.one_of(&[Stage::Trimmed, Stage::Pressed]),
        amount: Amount::new(amount, unit),
        scaling: if fixed { Scaling::Fixed } else { Scaling::InProportion },
        ice: None,
        in_glass: false,
    }
}
