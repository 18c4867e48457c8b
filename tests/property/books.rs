//! Generated records and edits. Ids come from a small range, so that edits meet; now and then a
//! value does not hold, so that edits are refused.

use brimwright::book::{
    Book, Container, Covers, Drink, DrinkKind, Edit, Goods, Headspace, Ingredient, Key, Labour, Line, LineId, Offer,
    Pack, Packaging, PackagingPart, PackagingUse, PaymentFee, Record, Scaling, Settings, Stage, Tax, TaxPlace,
};
use brimwright::measure::{Amount, Currency, Density, Exact, Mass, Money, Share, System, Time, Unit, Volume};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::number;
use crate::support::{container_id, drink_id, ingredient_id, offer_id, pack_id, packaging_id};

const INGREDIENTS: u64 = 4;
const PACKAGINGS: u64 = 2;
const CONTAINERS: u64 = 3;
const DRINKS: u64 = 3;

pub fn money(below: i64) -> impl Strategy<Value = Money> {
    number(below, 3).prop_map(Money::from_major)
}

/// A share in [0, `hundredths` %).
pub fn share(hundredths: u32) -> impl Strategy<Value = Share> {
    (0..hundredths * 100).prop_map(|steps| Share::from_fraction(Exact::new(i64::from(steps), 4)))
}

/// A yield from 1 % to 100 %.
fn a_yield() -> impl Strategy<Value = Share> {
    (100..=10_000_i64).prop_map(|steps| Share::from_fraction(Exact::new(steps, 4)))
}

fn density() -> impl Strategy<Value = Density> {
    (500..1500_i64).prop_map(|steps| Density::from_grams_per_millilitre(Exact::new(steps, 3)))
}

fn name() -> impl Strategy<Value = String> {
    prop_oneof![20 => "[A-Z][a-zé ]{0,12}", 1 => Just(" ".to_string())]
}

fn units_of(units: &'static [Unit]) -> impl Strategy<Value = Amount> {
    (1..200_000_i64, select(units)).prop_map(|(steps, unit)| Amount::new(Exact::new(steps, 3), unit))
}

/// Money that may be below zero or have endless digits.
fn any_money() -> impl Strategy<Value = Money> {
    let third = Exact::ONE.over(Exact::from(3)).unwrap();
    prop_oneof![20 => money(80), 1 => Just(Money::from_major(Exact::new(-1, 2))), 1 => Just(Money::from_major(third))]
}

/// A pack at one of these prices.
pub fn pack(units: &'static [Unit], price: impl Strategy<Value = Money>) -> impl Strategy<Value = Pack> {
    let surcharge = prop_oneof![3 => Just(Money::ZERO), 1 => money(5)];
    (1..=3_u64, "[a-z]{0,6}", units_of(units), price, surcharge).prop_map(
        |(id, supplier, contents, price, surcharge)| Pack { id: pack_id(id), supplier, contents, price, surcharge },
    )
}

/// An ingredient that lacks nothing a stage could need, but perhaps a pack.
pub fn complete_ingredient(id: u64) -> impl Strategy<Value = Ingredient> {
    let soak = (100..30_000_i64).prop_map(|steps| Share::from_fraction(Exact::new(steps, 4)));
    let weight = number(2000, 2).prop_map(|grams| Mass::from_grams(grams.plus(Exact::ONE).unwrap()));
    (a_yield(), a_yield(), soak, density(), density(), weight, vec(pack(Unit::ALL, any_money()), 0..3)).prop_map(
        move |(trim_yield, press, soak, density, juice, weight, packs)| Ingredient {
            id: ingredient_id(id),
            name: format!("Ingredient {id}"),
            trim_yield,
            press_yield: Some(press),
            soak_yield: Some(soak),
            density: Some(density),
            juice_density: Some(juice),
            piece_weight: Some(weight),
            packs,
        },
    )
}

fn ingredient(id: u64) -> impl Strategy<Value = Ingredient> {
    let too_much = Share::from_fraction(Exact::new(14, 1));
    let trim = prop_oneof![20 => a_yield(), 1 => Just(too_much), 1 => Just(Share::ZERO)];
    let lacks = || prop::bool::weighted(0.1);
    (complete_ingredient(id), name(), trim, lacks(), lacks(), lacks()).prop_map(
        |(whole, name, trim_yield, no_press, no_density, no_weight)| Ingredient {
            name,
            trim_yield,
            press_yield: whole.press_yield.filter(|_| !no_press),
            density: whole.density.filter(|_| !no_density),
            piece_weight: whole.piece_weight.filter(|_| !no_weight),
            ..whole
        },
    )
}

fn packaging(id: u64) -> impl Strategy<Value = Packaging> {
    let units = prop_oneof![20 => Just(&[Unit::Piece][..]), 1 => Just(&[Unit::Gram][..])];
    let packs = units.prop_flat_map(|units| vec(pack(units, any_money()), 0..3));
    (name(), select(PackagingPart::ALL), packs).prop_map(move |(name, part, packs)| Packaging {
        id: packaging_id(id),
        name,
        part,
        packs,
    })
}

const VESSEL_UNITS: &[Unit] = &[Unit::Millilitre, Unit::Centilitre, Unit::UsFluidOunce, Unit::ImperialFluidOunce];

fn headspace() -> impl Strategy<Value = Headspace> {
    let volume = number(30, 2).prop_map(|number| Headspace::Volume(Amount::new(number, Unit::Millilitre)));
    prop_oneof![2 => share(20).prop_map(Headspace::Share), 1 => volume]
}

pub fn container(id: u64) -> impl Strategy<Value = Container> {
    let declared = option::weighted(0.3, units_of(VESSEL_UNITS));
    let used = (1..=PACKAGINGS, 0..3_u32)
        .prop_map(|(id, count)| PackagingUse { packaging: packaging_id(id), count: Exact::from(count) });
    (name(), units_of(VESSEL_UNITS), declared, headspace(), vec(used, 0..3)).prop_map(
        move |(name, brimful, declared, headspace, set)| Container {
            id: container_id(id),
            name,
            brimful,
            declared,
            headspace,
            set,
        },
    )
}

/// A line of one of the first `ingredients`, mostly in proportion; a fixed one is small.
pub fn line(ingredients: u64) -> impl Strategy<Value = Line> {
    let small = (1..2_000_i64).prop_map(|steps| Amount::new(Exact::new(steps, 2), Unit::Millilitre));
    let in_proportion = units_of(Unit::ALL).prop_map(|amount| (amount, Scaling::InProportion));
    let fixed = small.prop_map(|amount| (amount, Scaling::Fixed));
    let amount = prop_oneof![3 => in_proportion, 1 => fixed];
    (any::<u64>(), 1..=ingredients, select(Stage::ALL), amount).prop_map(
        |(id, ingredient, stage, (amount, scaling))| {
            let ingredient = ingredient_id(ingredient);
            Line { id: LineId::from_random(id), ingredient, stage, amount, scaling }
        },
    )
}

fn labour() -> impl Strategy<Value = Labour> {
    let time = || number(300, 1).prop_map(Time::from_seconds);
    let some = (time(), time(), time(), 0..20_i64).prop_map(|(per_drink, per_litre, per_batch, batch)| Labour {
        per_drink,
        per_litre,
        per_batch,
        batch: Exact::new(batch + 1, 0),
    });
    prop_oneof![1 => Just(Labour::default()), 3 => some]
}

/// A drink of lines of the first `ingredients`.
pub fn drink(id: u64, ingredients: u64) -> impl Strategy<Value = Drink> {
    let lines = vec(line(ingredients), 0..4);
    let kind = select(DrinkKind::ALL);
    let own = (option::of(share(30)), option::of(share(90)));
    (name(), kind, lines, share(40), labour(), money(2), own).prop_map(
        move |(name, kind, lines, process_loss, labour, toll, (unsold, target))| Drink {
            id: drink_id(id),
            name,
            kind,
            reference: Amount::new(Exact::from(16), Unit::UsFluidOunce),
            lines,
            process_loss,
            labour,
            toll,
            unsold,
            target,
        },
    )
}

/// Settings in one of three currencies, with endings of that currency.
pub fn settings() -> impl Strategy<Value = Settings> {
    let currency = select(vec!["USD", "JPY", "KWD"]).prop_map(|code| Currency::from_code(code).unwrap());
    let place = select(vec![TaxPlace::InThePrice, TaxPlace::AddedAtTheTill]);
    let tax = (share(30), place).prop_map(|(rate, place)| Tax { rate, place });
    let fee = (share(10), money(1)).prop_map(|(share, fixed)| PaymentFee { share, fixed });
    let units = select(vec![System::UsCustomary, System::Metric, System::Imperial]);
    let endings = subsequence(vec![0, 25, 50, 75, 95, 99], 0..=6);
    let shares = (share(20), share(20), share(95));
    (currency, tax, fee, units, money(40), money(1), shares, select(Covers::ALL), endings).prop_map(
        |(currency, tax, payment_fee, units, wage, overhead, (commission, unsold, target), covers, endings)| {
            let ending = |part| Money::from_major(Exact::new(part, if currency.digits() == 0 { 0 } else { 2 }));
            Settings {
                currency,
                units,
                tax,
                payment_fee,
                commission,
                wage,
                overhead,
                unsold,
                target,
                covers,
                endings: endings.into_iter().map(ending).collect(),
                ..Settings::new("Generated test bar")
            }
        },
    )
}

fn goods() -> impl Strategy<Value = Goods> {
    prop_oneof![
        3 => (1..=INGREDIENTS).prop_map(|id| Goods::Ingredient(ingredient_id(id))),
        1 => (1..=PACKAGINGS).prop_map(|id| Goods::Packaging(packaging_id(id))),
    ]
}

fn offered(drink: u64, container: u64, price: Option<Money>) -> Record {
    Record::Offer(Offer { drink: drink_id(drink), container: container_id(container), price })
}

fn record() -> impl Strategy<Value = Record> {
    let offer = (1..=DRINKS, 1..=CONTAINERS, option::of(any_money()));
    prop_oneof![
        1 => settings().prop_map(|settings| Record::Settings(Box::new(settings))),
        3 => (1..=INGREDIENTS).prop_flat_map(ingredient).prop_map(Record::Ingredient),
        1 => (1..=PACKAGINGS).prop_flat_map(packaging).prop_map(Record::Packaging),
        2 => (1..=CONTAINERS).prop_flat_map(container).prop_map(Record::Container),
        3 => (1..=DRINKS).prop_flat_map(|id| drink(id, INGREDIENTS)).prop_map(Record::Drink),
        2 => offer.prop_map(|(drink, container, price)| offered(drink, container, price)),
    ]
}

fn key() -> impl Strategy<Value = Key> {
    prop_oneof![
        Just(Key::Settings),
        (1..=INGREDIENTS).prop_map(|id| Key::Ingredient(ingredient_id(id))),
        (1..=PACKAGINGS).prop_map(|id| Key::Packaging(packaging_id(id))),
        (1..=CONTAINERS).prop_map(|id| Key::Container(container_id(id))),
        (1..=DRINKS).prop_map(|id| Key::Drink(drink_id(id))),
        (1..=DRINKS, 1..=CONTAINERS).prop_map(|(drink, container)| Key::Offer(offer_id(drink, container))),
    ]
}

fn offer_price() -> impl Strategy<Value = Edit> {
    (1..=DRINKS, 1..=CONTAINERS, option::of(any_money()))
        .prop_map(|(drink, container, price)| Edit::SetPrice { offer: offer_id(drink, container), price })
}

/// Any edit, several as one among them.
pub fn edit() -> impl Strategy<Value = Edit> {
    let pack_price = (goods(), 1..=3_u64, any_money()).prop_map(|(goods, id, price)| Edit::SetPackPrice {
        goods,
        pack: pack_id(id),
        price,
    });
    let one = prop_oneof![
        5 => record().prop_map(Edit::Put),
        2 => key().prop_map(Edit::Remove),
        3 => pack_price,
        2 => offer_price(),
    ];
    one.prop_recursive(2, 8, 4, |inner| vec(inner, 0..4).prop_map(Edit::Together))
}

/// A book with most of what the edits speak of.
pub fn book() -> impl Strategy<Value = Book> {
    let ingredients: Vec<_> =
        (1..=INGREDIENTS).map(|id| complete_ingredient(id).prop_map(Record::Ingredient)).collect();
    let packagings: Vec<_> = (1..=PACKAGINGS).map(|id| packaging(id).prop_map(Record::Packaging)).collect();
    let containers: Vec<_> = (1..=CONTAINERS).map(|id| container(id).prop_map(Record::Container)).collect();
    let drinks: Vec<_> = (1..=DRINKS).map(|id| drink(id, INGREDIENTS).prop_map(Record::Drink)).collect();
    let offer = (1..=DRINKS, 1..=CONTAINERS, option::of(money(40)));
    let offers = vec(offer.prop_map(|(drink, container, price)| offered(drink, container, price)), 0..6);
    (settings(), ingredients, packagings, containers, drinks, offers).prop_map(
        |(settings, ingredients, packagings, containers, drinks, offers)| {
            let mut book = Book::new(settings);
            for record in [ingredients, packagings, containers, drinks, offers].into_iter().flatten() {
                // What is refused is not there: edits then meet its absence.
                let _ = book.apply(&Edit::Put(record));
            }
            book
        },
    )
}

/// A volume between a shot and a jug.
pub fn fill() -> impl Strategy<Value = Volume> {
    (100_000..1_500_000_i64).prop_map(|steps| Volume::from_millilitres(Exact::new(steps, 3)))
}
