use super::values::all_different;
use crate::book::{
    Accepted, Allergen, Brimful, Container, CostBasis, Drink, Field, FillRule, Filling, FlatCost, Goods, Headspace,
    Ice, IcePlace, Ingredient, Labour, Line, Offer, Pack, PackagingSet, PackagingSetId, PaymentFee, Problem, Reading,
    Record, Refusal, Scaling, Scenario, SeenPrice, Settings, Tapered, Tax, TaxPlace, Tier, TillColumns, Trial, Week,
};
use crate::foundation::measure::{Amount, Currency, Exact, Money, Scale, Share, Temperature, Unit};
use crate::support::{
    amount, container as a_container, density, drink as a_drink, exact, grams, ingredient as an_ingredient, length,
    line, money, offer as an_offer, pack, seconds, settings as some_settings, share, use_of, vessel,
};
use crate::support::{day, scenario as a_scenario, seen_price as a_seen_price, trial as a_trial, week as a_week};

/// What is wrong with a record.
fn wrong(record: Record) -> Option<(Field, Problem)> {
    match super::record(&record) {
        Ok(()) => None,
        Err(Refusal::Field { key, field, problem }) if key == record.key() => Some((field, problem)),
        Err(other) => panic!("{other:?}"),
    }
}

fn ingredient_with(change: impl FnOnce(&mut Ingredient)) -> Option<(Field, Problem)> {
    let mut record = an_ingredient(1, [pack(1, "1 kg", "1")]);
    change(&mut record);
    wrong(Record::Ingredient(record))
}

fn container_with(change: impl FnOnce(&mut Container)) -> Option<(Field, Problem)> {
    let mut record = a_container(1, "500 mL");
    change(&mut record);
    wrong(Record::Container(record))
}

fn drink_with(change: impl FnOnce(&mut Drink)) -> Option<(Field, Problem)> {
    let mut record = a_drink(1, "500 mL", [line(1, 1, "1 mL"), line(2, 1, "1 mL")]);
    change(&mut record);
    wrong(Record::Drink(record))
}

fn settings_with(change: impl FnOnce(&mut Settings)) -> Option<(Field, Problem)> {
    let mut record = some_settings();
    change(&mut record);
    wrong(Record::Settings(Box::new(record)))
}

fn is(field: Field, problem: Problem) -> Option<(Field, Problem)> {
    Some((field, problem))
}

#[test]
fn plain_records_hold() {
    assert_eq!(ingredient_with(|_| ()), None);
    assert_eq!(container_with(|_| ()), None);
    assert_eq!(drink_with(|_| ()), None);
    assert_eq!(settings_with(|_| ()), None);
}

#[test]
fn names() {
    assert_eq!(ingredient_with(|record| record.name = "  ".into()), is(Field::Name, Problem::Empty));
    // Zero-width, bidi mark, soft hyphen, Hangul filler, Braille blank, no-break space, control.
    for unseen in ["\u{200b}", "\u{202e}", "\u{ad}", "\u{3164}", "\u{2800}", "\u{a0}\u{2060} ", "\u{7}"] {
        let empty = is(Field::Name, Problem::Empty);
        assert_eq!(drink_with(|record| record.name = unseen.into()), empty, "{unseen:?}");
        assert_eq!(ingredient_with(|record| record.name = unseen.repeat(3)), empty, "{unseen:?}");
        assert_eq!(settings_with(|record| record.name = unseen.into()), empty, "{unseen:?}");
    }
    assert_eq!(container_with(|record| record.name = "é".repeat(81)), is(Field::Name, Problem::TooLong));
    assert_eq!(drink_with(|record| record.name = "é".repeat(80)), None);
    assert_eq!(settings_with(|record| record.name = String::new()), is(Field::Name, Problem::Empty));
}

#[test]
fn yields_are_above_0_and_at_most_100_percent() {
    for bad in ["0", "-0.1", "1.4"].map(share) {
        assert_eq!(ingredient_with(|record| record.trim_yield = bad), is(Field::TrimYield, Problem::NotAYield));
        let press = ingredient_with(|record| record.press_yield = Some(bad));
        assert_eq!(press, is(Field::PressYield, Problem::NotAYield));
    }
    assert_eq!(ingredient_with(|record| record.trim_yield = share("1")), None);
    // What takes up water may weigh more than before, but not nothing.
    assert_eq!(ingredient_with(|record| record.soak_yield = Some(share("2.47"))), None);
    let soak = ingredient_with(|record| record.soak_yield = Some(share("0")));
    assert_eq!(soak, is(Field::SoakYield, Problem::NotPositive));
}

#[test]
fn densities_and_weights_are_above_zero() {
    let zero = Some(density("0"));
    assert_eq!(ingredient_with(|record| record.density = zero), is(Field::Density, Problem::NotPositive));
    let juice = ingredient_with(|record| record.juice_density = zero);
    assert_eq!(juice, is(Field::JuiceDensity, Problem::NotPositive));
    let weight = ingredient_with(|record| record.piece_weight = Some(grams("-1")));
    assert_eq!(weight, is(Field::PieceWeight, Problem::NotPositive));
}

#[test]
fn packs() {
    let with = |change: fn(&mut Pack)| ingredient_with(|record| change(&mut record.packs[0]));
    assert_eq!(with(|pack| pack.contents = amount("0 lb")), is(Field::Contents, Problem::NotPositive));
    assert_eq!(with(|pack| pack.price = money("-1")), is(Field::PackPrice, Problem::Negative));
    assert_eq!(with(|pack| pack.price = Money::ZERO), None);
    assert_eq!(with(|pack| pack.surcharge = money("-0.01")), is(Field::Surcharge, Problem::Negative));
    assert_eq!(with(|pack| pack.supplier = "s".repeat(81)), is(Field::Supplier, Problem::TooLong));
    let twice = ingredient_with(|record| record.packs.push(record.packs[0].clone()));
    assert_eq!(twice, is(Field::Contents, Problem::Twice));
    let by_weight = Record::Packaging(vessel(1, [pack(1, "1 kg", "1")]));
    assert_eq!(wrong(by_weight), is(Field::Contents, Problem::NotACount));
    assert_eq!(wrong(Record::Packaging(vessel(1, [pack(1, "1 ea", "1")]))), None);
}

#[test]
fn numbers_that_a_book_cannot_keep() {
    let endless = Exact::ONE.over(exact("3")).unwrap();
    let long = Exact::new(1_000_000_000, 0);
    let price = ingredient_with(|record| record.packs[0].price = Money::from_major(endless));
    assert_eq!(price, is(Field::PackPrice, Problem::TooLarge));
    let contents = ingredient_with(|record| record.packs[0].contents.number = long);
    assert_eq!(contents, is(Field::Contents, Problem::TooLarge));
    let trim = ingredient_with(|record| record.trim_yield = Share::from_fraction(endless));
    assert_eq!(trim, is(Field::TrimYield, Problem::TooLarge));
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(Amount::new(endless, Unit::Millilitre)));
    assert_eq!(brimful, is(Field::Brimful, Problem::TooLarge));
    let loss = drink_with(|record| record.process_loss = Share::from_fraction(endless));
    assert_eq!(loss, is(Field::ProcessLoss, Problem::TooLarge));
    assert_eq!(drink_with(|record| record.labour.batch = long), is(Field::Batch, Problem::TooLarge));
}

#[test]
fn containers() {
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(amount("500 g")));
    assert_eq!(brimful, is(Field::Brimful, Problem::NotAVolume));
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(amount("0 mL")));
    assert_eq!(brimful, is(Field::Brimful, Problem::NotPositive));
    let declared = container_with(|record| record.declared = Some(amount("500.1 mL")));
    assert_eq!(declared, is(Field::Declared, Problem::MoreThanBrimful));
    assert_eq!(container_with(|record| record.declared = Some(amount("500 mL"))), None);
    let headspace = |headspace| container_with(|record| record.headspace = headspace);
    assert_eq!(headspace(Headspace::Share(share("1"))), is(Field::Headspace, Problem::NotAShare));
    assert_eq!(headspace(Headspace::Volume(amount("1 g"))), is(Field::Headspace, Problem::NotAVolume));
    assert_eq!(headspace(Headspace::Volume(amount("-1 mL"))), is(Field::Headspace, Problem::Negative));
    assert_eq!(headspace(Headspace::Volume(amount("500 mL"))), is(Field::Headspace, Problem::NothingFits));
    assert_eq!(headspace(Headspace::Volume(amount("499.9 mL"))), None);
    let set = |set| container_with(|record| record.set = set);
    assert_eq!(set(vec![use_of(1, "0")]), is(Field::SetCount, Problem::NotPositive));
    assert_eq!(set(vec![use_of(1, "1"), use_of(1, "2")]), is(Field::SetCount, Problem::Twice));
    assert_eq!(set(vec![use_of(1, "1"), use_of(2, "2")]), None);
}

#[test]
fn drinks() {
    let reference = drink_with(|record| record.reference = amount("1 lb"));
    assert_eq!(reference, is(Field::Reference, Problem::NotAVolume));
    let line = drink_with(|record| record.lines[1].amount = amount("0 g"));
    assert_eq!(line, is(Field::LineAmount, Problem::NotPositive));
    let twice = drink_with(|record| record.lines[1].id = record.lines[0].id);
    assert_eq!(twice, is(Field::LineAmount, Problem::Twice));
    let loss = drink_with(|record| record.process_loss = share("1"));
    assert_eq!(loss, is(Field::ProcessLoss, Problem::NotAShare));
    let labour = |change: fn(&mut Labour)| drink_with(|record| change(&mut record.labour));
    assert_eq!(labour(|time| time.per_drink = seconds("-1")), is(Field::PerDrink, Problem::Negative));
    assert_eq!(labour(|time| time.per_litre = seconds("-1")), is(Field::PerLitre, Problem::Negative));
    assert_eq!(labour(|time| time.per_batch = seconds("-1")), is(Field::PerBatch, Problem::Negative));
    assert_eq!(labour(|time| time.batch = exact("0.99")), is(Field::Batch, Problem::LessThanOne));
    assert_eq!(
        drink_with(|record| record.treatment_fee = money("-1")),
        is(Field::FlatCost(FlatCost::TreatmentFee), Problem::Negative)
    );
    let unsold = drink_with(|record| record.unsold = Some(share("1")));
    assert_eq!(unsold, is(Field::Unsold, Problem::NotAShare));
    let target = drink_with(|record| record.target = Some(share("-0.1")));
    assert_eq!(target, is(Field::Target, Problem::NotAShare));
}

fn tapered(base: &str, rim: &str, height: &str) -> Brimful {
    Brimful::Tapered(Tapered { base: length(base), rim: length(rim), height: length(height) })
}

fn poured(readings: &[(&str, &str)]) -> Brimful {
    let reading = |(height, volume): &(&str, &str)| Reading { height: length(height), volume: amount(volume) };
    Brimful::Poured(readings.iter().map(reading).collect())
}

#[test]
fn shapes() {
    let shape = |brimful| container_with(|record| record.brimful = brimful);
    assert_eq!(shape(tapered("6 cm", "9 cm", "120 mm")), None);
    assert_eq!(shape(tapered("0 cm", "9 cm", "120 mm")), is(Field::Base, Problem::NotPositive));
    assert_eq!(shape(tapered("6 cm", "-9 cm", "120 mm")), is(Field::Rim, Problem::NotPositive));
    assert_eq!(shape(tapered("6 cm", "9 cm", "0 in")), is(Field::Height, Problem::NotPositive));
    assert_eq!(shape(poured(&[("2 in", "100 mL"), ("4 in", "250 mL")])), None);
    assert_eq!(shape(poured(&[("2 in", "100 mL")])), is(Field::Readings, Problem::TooFew));
    let rising = [("2 in", "100 mL"), ("50.8 mm", "250 mL"), ("4 in", "300 mL")];
    assert_eq!(shape(poured(&rising)), is(Field::Readings, Problem::Falls(2)));
    let falling = [("2 in", "100 mL"), ("3 in", "250 mL"), ("4 in", "250 mL")];
    assert_eq!(shape(poured(&falling)), is(Field::Readings, Problem::Falls(3)));
    assert_eq!(shape(poured(&[("2 in", "100 g"), ("4 in", "250 mL")])), is(Field::Readings, Problem::NotAVolume));
}

#[test]
fn shared_sets() {
    let set = |name: &str, uses| {
        wrong(Record::PackagingSet(PackagingSet { id: PackagingSetId::from_random(1), name: name.into(), uses }))
    };
    assert_eq!(set("Invented set", vec![use_of(1, "1"), use_of(2, "2")]), None);
    assert_eq!(set(" ", Vec::new()), is(Field::Name, Problem::Empty));
    assert_eq!(set("Invented set", vec![use_of(1, "0")]), is(Field::SetCount, Problem::NotPositive));
    let twice = container_with(|record| record.shared = vec![PackagingSetId::from_random(1); 2]);
    assert_eq!(twice, is(Field::SetCount, Problem::Twice));
}

#[test]
fn headspace_by_height_needs_heights() {
    let headspace = |brimful: Brimful, height| {
        container_with(|record| {
            record.brimful = brimful;
            record.headspace = Headspace::Height(length(height));
        })
    };
    let weighed = Brimful::Weighed(amount("500 mL"));
    assert_eq!(headspace(weighed, "1 cm"), is(Field::Headspace, Problem::NoHeights));
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "1 cm"), None);
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "120 mm"), is(Field::Headspace, Problem::NothingFits));
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "-1 mm"), is(Field::Headspace, Problem::Negative));
}

#[test]
fn lines_of_a_recipe() {
    let line = |change: fn(&mut Line)| drink_with(|record| change(&mut record.lines[0]));
    assert_eq!(line(|line| line.scaling = Scaling::Stepped(amount("5 mL"))), None);
    let step = line(|line| line.scaling = Scaling::Stepped(amount("0 mL")));
    assert_eq!(step, is(Field::Step, Problem::NotPositive));
    let step = line(|line| line.scaling = Scaling::Stepped(amount("1 ea")));
    assert_eq!(step, is(Field::Step, Problem::AnotherKind));
    let top_ups = drink_with(|record| record.lines.iter_mut().for_each(|line| line.scaling = Scaling::TopUp));
    assert_eq!(top_ups, is(Field::TopUp, Problem::MoreThanOne));
    assert_eq!(line(|line| line.scaling = Scaling::TopUp), None);
    let ice = |packing| Some(Ice { place: IcePlace::Floating, packing: share(packing) });
    let packed = |packing| drink_with(|record| record.lines[0].ice = ice(packing));
    assert_eq!([packed("0"), packed("1.01")], [is(Field::Packing, Problem::NotAPacking); 2]);
    assert_eq!(packed("1"), None);
    assert_eq!(drink_with(|record| record.air = share("-0.01")), is(Field::Air, Problem::Negative));
    assert_eq!(drink_with(|record| record.air = share("1.5")), None);
    let letters = |nuts: usize, parts: usize| {
        let (nuts, parts) = ("é".repeat(nuts), Some("é".repeat(parts)));
        wrong(Record::Ingredient(Ingredient { nuts, parts, ..an_ingredient(1, []) }))
    };
    let sold_as =
        |letters| wrong(Record::Ingredient(Ingredient { sold_as: "é".repeat(letters), ..an_ingredient(1, []) }));
    assert_eq!([sold_as(0), sold_as(80)], [None, None]);
    assert_eq!(sold_as(81), is(Field::SoldAs, Problem::TooLong));
    assert_eq!(letters(80, 400), None);
    assert_eq!(letters(81, 0), is(Field::Nuts, Problem::TooLong));
    assert_eq!(letters(0, 401), is(Field::Parts, Problem::LongerThanALabel));
    let ph = |ph| drink_with(|record| record.ph = Some(exact(ph)));
    for (outside, holds) in
        [("-0.01", false), ("0", false), ("0.99", false), ("1", true), ("14", true), ("14.01", false)]
    {
        assert_eq!(ph(outside), if holds { None } else { is(Field::Ph, Problem::NotAPh) }, "{outside}");
    }
    let days = |days| drink_with(|record| record.keeps_days = Some(exact(days)));
    assert_eq!((days("0"), days("730")), (None, None));
    assert_eq!(days("-1"), is(Field::KeepsDays, Problem::Negative));
    assert_eq!(days("2.5"), is(Field::KeepsDays, Problem::NotWhole));
    assert_eq!(days("731"), is(Field::KeepsDays, Problem::TooManyDays));
}

#[test]
fn tiers_of_a_pack() {
    let with = |change: fn(&mut Pack)| ingredient_with(|record| change(&mut record.packs[0]));
    assert_eq!(with(|pack| pack.at_a_time = exact("0.5")), is(Field::AtATime, Problem::LessThanOne));
    let tier = |from: &str, price: &str| Tier { from: exact(from), price: money(price) };
    let tiers = |tiers: Vec<Tier>| ingredient_with(|record| record.packs[0].tiers = tiers);
    assert_eq!(tiers(vec![tier("1", "3")]), is(Field::TierFrom, Problem::NotAboveOne));
    assert_eq!(tiers(vec![tier("2", "-3")]), is(Field::TierPrice, Problem::Negative));
    assert_eq!(tiers(vec![tier("2", "3"), tier("2", "2")]), is(Field::TierFrom, Problem::Twice));
    assert_eq!(tiers(vec![tier("5", "2"), tier("2", "3")]), None);
}

#[test]
fn allergens_stand_once() {
    let twice = ingredient_with(|record| record.allergens = Some(vec![Allergen::Milk, Allergen::Milk]));
    assert_eq!(twice, is(Field::Allergens, Problem::Twice));
    assert_eq!(ingredient_with(|record| record.allergens = Some(Vec::new())), None);
}

#[test]
fn fillings() {
    let with = |change: fn(&mut Filling)| {
        let mut filling = Filling {
            allowed: Some(amount("15 mL")),
            least_headspace: Some(amount("0 mL")),
            batch: Some(exact("12")),
            batch_risk: Some(Accepted::OnePercent),
            measured_at: Some(Temperature::new(exact("40"), Scale::Fahrenheit)),
            nets: vec![amount("355 mL"), amount("12.5 oz")],
            ..Filling::new(FillRule::UnitedStates, Accepted::TwoPercent)
        };
        change(&mut filling);
        wrong(Record::Offer(Offer { filling: Some(filling), ..an_offer(1, 1, None) }))
    };
    assert_eq!(with(|_| ()), None);
    assert_eq!(with(|it| it.allowed = Some(amount("15 g"))), is(Field::Allowed, Problem::NotAVolume));
    let room = with(|it| it.least_headspace = Some(amount("-1 mL")));
    assert_eq!(room, is(Field::LeastHeadspace, Problem::Negative));
    let batch = |number: &str| {
        let mut filling = Filling::new(FillRule::Average, Accepted::TwoPercent);
        filling.batch = Some(exact(number));
        wrong(Record::Offer(Offer { filling: Some(filling), ..an_offer(1, 1, None) }))
    };
    assert_eq!(["1", "99", "1000"].map(batch), [None, None, None]);
    assert_eq!(["0", "-3", "0.5"].map(batch), [(); 3].map(|_| is(Field::BatchSize, Problem::LessThanOne)));
    assert_eq!(batch("12.5"), is(Field::BatchSize, Problem::NotWhole));
    let at = |degrees: &str, scale| {
        let mut filling = Filling::new(FillRule::Average, Accepted::TwoPercent);
        filling.measured_at = Some(Temperature::new(exact(degrees), scale));
        wrong(Record::Offer(Offer { filling: Some(filling), ..an_offer(1, 1, None) }))
    };
    for (degrees, scale) in
        [("0", Scale::Celsius), ("40", Scale::Celsius), ("32", Scale::Fahrenheit), ("104", Scale::Fahrenheit)]
    {
        assert_eq!(at(degrees, scale), None);
    }
    for (degrees, scale) in
        [("-0.1", Scale::Celsius), ("40.1", Scale::Celsius), ("31.9", Scale::Fahrenheit), ("104.1", Scale::Fahrenheit)]
    {
        assert_eq!(at(degrees, scale), is(Field::MeasuredAt, Problem::NotMeasuredThere));
    }
    assert_eq!(with(|it| it.nets.push(amount("0 mL"))), is(Field::Net, Problem::NotPositive));
    assert_eq!(with(|it| it.nets.push(amount("1 ea"))), is(Field::Net, Problem::NeitherWeightNorVolume));
}

#[test]
fn sales_are_not_negative() {
    let weekly = |weekly| wrong(Record::Offer(Offer { weekly: Some(exact(weekly)), ..an_offer(1, 1, None) }));
    assert_eq!(weekly("-1"), is(Field::Weekly, Problem::Negative));
    assert_eq!(weekly("0"), None);
}

#[test]
fn weeks() {
    let with = |change: fn(&mut Week)| {
        let mut record = a_week("2026-11-23", &[(1, "12", "2.5"), (2, "0", "-0.4")]);
        change(&mut record);
        wrong(Record::Week(record))
    };
    assert_eq!(with(|_| ()), None, "one may lose money, and none may be sold");
    assert_eq!(with(|week| week.sold.clear()), None);
    assert_eq!(with(|week| week.monday = day("2026-11-24")), is(Field::Monday, Problem::NotAMonday));
    assert_eq!(with(|week| week.sold[0].units = exact("-1")), is(Field::Units, Problem::Negative));
    let endless = |week: &mut Week| week.sold[0].units = Exact::ONE.over(exact("3")).unwrap();
    assert_eq!(with(endless), is(Field::Units, Problem::TooLarge));
    let fine = |week: &mut Week| week.sold[0].contribution = money("1.234567891");
    assert_eq!(with(fine), is(Field::Contribution, Problem::TooLarge));
    let twice = |week: &mut Week| week.sold[1].container = week.sold[0].container;
    assert_eq!(with(twice), is(Field::Units, Problem::Twice));
}

#[test]
fn prices_seen() {
    let with = |change: fn(&mut SeenPrice)| {
        let mut record = a_seen_price(1, "16 fl oz", "7");
        change(&mut record);
        wrong(Record::SeenPrice(record))
    };
    assert_eq!(with(|_| ()), None);
    assert_eq!(with(|seen| seen.place = " ".into()), is(Field::Place, Problem::Empty));
    assert_eq!(with(|seen| seen.place = "\u{200b}".into()), is(Field::Place, Problem::Empty));
    assert_eq!(with(|seen| seen.place = "é".repeat(81)), is(Field::Place, Problem::TooLong));
    assert_eq!(with(|seen| seen.size = amount("1 lb")), is(Field::Size, Problem::NotAVolume));
    assert_eq!(with(|seen| seen.size = amount("0 mL")), is(Field::Size, Problem::NotPositive));
    assert_eq!(with(|seen| seen.price = Money::ZERO), is(Field::Price, Problem::NotPositive));
}

#[test]
fn trials() {
    let with = |change: fn(&mut Trial)| {
        let mut record = a_trial(1, crate::book::Scope::Menu);
        change(&mut record);
        wrong(Record::Trial(record))
    };
    assert_eq!(with(|_| ()), None);
    assert_eq!(with(|trial| trial.name.clear()), is(Field::Name, Problem::Empty));
    for spoil in [
        |trial: &mut Trial| trial.first = day("2026-10-11"),
        |trial: &mut Trial| trial.start = day("2026-11-25"),
        |trial: &mut Trial| trial.last = Some(day("2026-11-29")),
    ] {
        assert_eq!(with(spoil), is(Field::Monday, Problem::NotAMonday));
    }
    assert_eq!(with(|trial| trial.start = trial.first), is(Field::Start, Problem::NotAfter));
    assert_eq!(with(|trial| trial.last = Some(trial.first)), is(Field::Last, Problem::NotAfter));
    assert_eq!(with(|trial| trial.last = Some(trial.start)), None, "it may last a week");
}

#[test]
fn scenarios() {
    let with = |offers: Vec<Offer>| wrong(Record::Scenario(a_scenario(1, offers)));
    assert_eq!(with(Vec::new()), None);
    assert_eq!(with(vec![an_offer(1, 1, None), an_offer(1, 2, Some("3"))]), None);
    assert_eq!(with(vec![an_offer(1, 1, None), an_offer(1, 1, Some("3"))]), is(Field::Offers, Problem::Twice));
    assert_eq!(with(vec![an_offer(1, 1, Some("0"))]), is(Field::Price, Problem::NotPositive));
    let sold = Offer { weekly: Some(exact("-1")), ..an_offer(1, 1, None) };
    assert_eq!(with(vec![sold]), is(Field::Weekly, Problem::Negative));
    let nameless = Scenario { name: " ".into(), ..a_scenario(1, []) };
    assert_eq!(wrong(Record::Scenario(nameless)), is(Field::Name, Problem::Empty));
}

#[test]
fn columns_of_a_till_have_names() {
    let with = |change: fn(&mut TillColumns)| {
        let text = |text: &str| Some(text.to_string());
        let mut till = TillColumns { item: "Item".into(), size: text("Size"), units: "Sold".into(), day: text("Day") };
        change(&mut till);
        settings_with(|record| record.till = Some(till))
    };
    assert_eq!(with(|_| ()), None);
    assert_eq!(with(|till| (till.size, till.day) = (None, None)), None);
    for spoil in [
        |till: &mut TillColumns| till.item.clear(),
        |till: &mut TillColumns| till.units = " ".into(),
        |till: &mut TillColumns| till.size = Some(String::new()),
        |till: &mut TillColumns| till.day = Some(String::new()),
    ] {
        assert_eq!(with(spoil), is(Field::TillColumn, Problem::Empty));
    }
}

#[test]
fn a_price_is_above_zero_or_none() {
    let price = |price| wrong(Record::Offer(an_offer(1, 1, price)));
    assert_eq!(price(Some("0")), is(Field::Price, Problem::NotPositive));
    assert_eq!(price(Some("0.01")), None);
    assert_eq!(price(None), None);
}

#[test]
fn settings() {
    let rate = |rate| Tax { rate: share(rate), place: TaxPlace::InThePrice };
    assert_eq!(settings_with(|record| record.tax = rate("-0.1")), is(Field::TaxRate, Problem::Negative));
    assert_eq!(settings_with(|record| record.tax = rate("1.5")), None);
    let fee = |share_of, fixed| PaymentFee { share: share(share_of), fixed: money(fixed) };
    assert_eq!(settings_with(|record| record.payment_fee = fee("1", "0")), is(Field::FeeShare, Problem::NotAShare));
    assert_eq!(settings_with(|record| record.payment_fee = fee("0", "-1")), is(Field::FeeFixed, Problem::Negative));
    assert_eq!(settings_with(|record| record.commission = share("1")), is(Field::Commission, Problem::NotAShare));
    assert_eq!(settings_with(|record| record.wage = money("-1")), is(Field::Wage, Problem::Negative));
    assert_eq!(
        settings_with(|record| record.overhead = money("-1")),
        is(Field::FlatCost(FlatCost::Overhead), Problem::Negative)
    );
    assert_eq!(settings_with(|record| record.unsold = share("1")), is(Field::Unsold, Problem::NotAShare));
    assert_eq!(settings_with(|record| record.target = share("1")), is(Field::Target, Problem::NotAShare));
    assert_eq!(settings_with(|record| record.cost_basis = CostBasis::Everything), None);
}

#[test]
fn price_endings_fit_the_currency() {
    let with = |code: &str, ending: &str| {
        settings_with(|record| {
            record.currency = Currency::from_code(code).unwrap();
            record.endings = vec![Money::ZERO, money(ending)];
        })
    };
    for (code, ending) in [("USD", "0.99"), ("KWD", "0.995"), ("JPY", "99")] {
        assert_eq!(with(code, ending), None, "{ending} in {code}");
    }
    for (code, ending) in [("USD", "1"), ("USD", "-0.01"), ("USD", "0.995"), ("JPY", "100"), ("JPY", "0.5")] {
        assert_eq!(with(code, ending), is(Field::Endings, Problem::NotAnEnding), "{ending} in {code}");
    }
}

#[test]
fn a_refused_price_names_the_goods() {
    let goods = Goods::Ingredient(an_ingredient(1, []).id);
    let bad = an_ingredient(1, [pack(1, "1 kg", "-1")]);
    let refusal = Refusal::Field { key: goods.into(), field: Field::PackPrice, problem: Problem::Negative };
    assert_eq!(super::record(&Record::Ingredient(bad)), Err(refusal));
}

/// Counts how often it is compared.
#[derive(PartialEq, Eq)]
struct Counted<'a>(u64, &'a std::cell::Cell<usize>);

impl PartialOrd for Counted<'_> {
    fn partial_cmp(&self, other: &Self) -> Option<std::cmp::Ordering> {
        Some(self.cmp(other))
    }
}

impl Ord for Counted<'_> {
    fn cmp(&self, other: &Self) -> std::cmp::Ordering {
        self.1.set(self.1.get() + 1);
        self.0.cmp(&other.0)
    }
}

#[test]
fn ten_times_as_long_a_list_is_little_more_than_ten_times_the_work() {
    let compared = |length: u64| {
        let count = std::cell::Cell::new(0);
        let mut scattered = (0..length).map(|number| Counted(number.wrapping_mul(0x9e37_79b9_7f4a_7c15), &count));
        assert!(all_different(&mut scattered));
        count.get()
    };
    let (short, long) = (compared(3_000), compared(30_000));
    assert!(long < 20 * short, "{short} and {long} comparisons");
    let count = std::cell::Cell::new(0);
    assert!(!all_different(&mut [1, 2, 3, 2].into_iter().map(|number| Counted(number, &count))));
}
