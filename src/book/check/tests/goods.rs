use super::*;

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
fn a_refused_price_names_the_goods() {
    let goods = Goods::Ingredient(an_ingredient(1, []).id);
    let bad = an_ingredient(1, [pack(1, "1 kg", "-1")]);
    let refusal = Refusal::Field { key: goods.into(), field: Field::PackPrice, problem: Problem::Negative };
    assert_eq!(crate::book::check::record(&Record::Ingredient(bad)), Err(refusal));
}
