use super::*;
use crate::book::{Accepted, Drink, Ingredient, Scaling};
use crate::drink::yields::YieldError;
use crate::foundation::measure::Scale;
use crate::support::{
    amount, book, container, container_id, density, drink, exact, ingredient, ingredient_id, line, millilitres, offer,
    pack, settings,
};

/// Five bottles declared as 330 mL: 329, 331, 333, 335, 337; mean 333, deviation the root of 10.
const NETS: [&str; 5] = ["329 mL", "331 mL", "333 mL", "335 mL", "337 mL"];

fn filling(rule: FillRule, nets: &[&str]) -> Filling {
    Filling {
        least_headspace: Some(amount("5 mL")),
        nets: nets.iter().map(|net| amount(net)).collect(),
        ..Filling::new(rule, Accepted::TwoPercent)
    }
}

/// A drink at 2.00 a litre, half of it 0.9 and half 1.1 g/mL, in a bottle of 350 mL poured to
/// 340 and declared as this.
fn bottled(declared: Option<&str>, filling: Option<Filling>) -> Result<PackagedFill, PackagedError> {
    let liquid = |id, at| Ingredient { density: Some(density(at)), ..ingredient(id, [pack(1, "1 L", "2")]) };
    let bottle = Container {
        declared: declared.map(amount),
        headspace: Headspace::Volume(amount("10 mL")),
        ..container(1, "350 mL")
    };
    let half = drink(1, "1 L", [line(1, 1, "100 mL"), line(2, 2, "100 mL")]);
    let offer = Offer { filling, weekly: Some(exact("200")), ..offer(1, 1, None) };
    let records = [
        Record::Ingredient(liquid(1, "0.9")),
        Record::Ingredient(liquid(2, "1.1")),
        Record::Container(bottle),
        Record::Drink(half),
        Record::Offer(offer.clone()),
    ];
    packaged_fill(&book(settings(), records), &offer)
}

#[test]
fn the_directive_by_hand() {
    // TNE of 330 mL: 3 %, 9.9. z * s = 2.053749 * 3.16227766 = 6.4945..; 330 - 9.9 + 6.49 is less
    // than 330, so 330 is the target.
    let fill = bottled(Some("330 mL"), Some(filling(FillRule::EuropeanOrBritish, &NETS))).unwrap();
    assert_eq!((fill.spread.count, fill.spread.mean), (5, exact("333")));
    assert_eq!(fill.spread.deviation.rounded(8), exact("3.16227766"));
    let single = Single { tolerance: millilitres("9.9"), spreads: exact("2.053749"), none_twice: true };
    assert_eq!((fill.single, fill.batch, fill.measured), (Some(single), None, None));
    assert_eq!((fill.target.target, fill.target.giveaway), (millilitres("330"), Volume::ZERO));
    assert_eq!((fill.room, fill.target.over), (millilitres("345"), None));
    assert_eq!(fill.giveaway_cost_in_a_year, Money::ZERO);
}

#[test]
fn a_wide_spread_gives_away() {
    // Twice ten: deviation of 310 and 350 is the root of 800, 28.284271; the target is
    // 330 - 9.9 + 2.053749 * 28.284271 = 378.188794; 48.188794 too many in each, at 0.002 a mL.
    let wide = filling(FillRule::EuropeanOrBritish, &["310 mL", "350 mL"]);
    let fill = bottled(Some("330 mL"), Some(wide)).unwrap();
    assert_eq!(fill.target.giveaway.millilitres().rounded(4), exact("48.1888"));
    assert_eq!(fill.giveaway_cost.major().rounded(6), exact("0.096378"));
    // 200 a week for 52 weeks.
    assert_eq!(fill.giveaway_in_a_year.millilitres().rounded(0), exact("501163"));
    assert_eq!(fill.giveaway_cost_in_a_year.major().rounded(2), exact("1002.33"));
    // 378.19 + 3 * 28.28 = 463.04, and there is room for 345.
    assert_eq!(fill.target.over.unwrap().millilitres().rounded(2), exact("118.04"));
}

#[test]
fn the_average_alone_asks_for_what_is_declared() {
    let fill = bottled(Some("330 mL"), Some(filling(FillRule::Average, &["310 mL", "350 mL"]))).unwrap();
    assert_eq!((fill.single, fill.target.target, fill.too_short), (None, millilitres("330"), 0));
}

#[test]
fn a_batch_adds_to_the_declared_size() {
    // 330 + z * 3.16227766 / sqrt(12): z 1.959964 where no risk was chosen, 2.326348 for 1 %.
    let of_twelve = Filling { batch: Some(exact("12")), ..filling(FillRule::EuropeanOrBritish, &NETS) };
    let fill = bottled(Some("330 mL"), Some(of_twelve.clone())).unwrap();
    assert_eq!(fill.target.target.millilitres().rounded(6), exact("331.789194"));
    assert_eq!(fill.batch.unwrap().packages, exact("12"));
    let careful = Filling { batch_risk: Some(Accepted::OnePercent), ..of_twelve };
    let fill = bottled(Some("330 mL"), Some(careful)).unwrap();
    assert_eq!(fill.target.target.millilitres().rounded(6), exact("332.123655"));
}

#[test]
fn a_fill_is_never_lowered_to_the_declared_size() {
    // Poured to 340. Nobody said how large a batch is, so the target is the declared size.
    let fill = |filling| bottled(Some("330 mL"), Some(filling)).unwrap();
    let open = fill(filling(FillRule::EuropeanOrBritish, &NETS));
    assert_eq!((open.target.target, open.poured, open.to_pour()), (millilitres("330"), millilitres("340"), None));
    let of_twelve = fill(Filling { batch: Some(exact("12")), ..filling(FillRule::EuropeanOrBritish, &NETS) });
    assert_eq!(of_twelve.to_pour(), Some(of_twelve.target.target));
    // A batch of even packages asks for no more either.
    let even = fill(Filling { batch: Some(exact("12")), ..filling(FillRule::Average, &["331 mL", "331 mL"]) });
    assert_eq!((even.target.giveaway, even.to_pour()), (Volume::ZERO, None));
    // Where less is poured than is declared, it is raised.
    let low = bottled(Some("345 mL"), Some(filling(FillRule::Average, &NETS))).unwrap();
    assert_eq!(low.to_pour(), Some(millilitres("345")));
}

#[test]
fn packages_that_no_rule_allows_are_counted() {
    // Under 330 - 2 * 9.9 = 310.2, and under 330 - 15.
    let nets = ["310.1 mL", "310.2 mL", "314.9 mL", "315 mL", "340 mL"];
    let count = |rule| {
        let filling = Filling { allowed: Some(amount("15 mL")), ..filling(rule, &nets) };
        bottled(Some("330 mL"), Some(filling)).unwrap().too_short
    };
    assert_eq!([FillRule::EuropeanOrBritish, FillRule::UnitedStates, FillRule::Average].map(count), [1, 3, 0]);
}

#[test]
fn contents_count_at_the_temperature_of_the_law() {
    // 21 CFR 101.7(b)(2): 40 °F refrigerated, 68 °F others (text). Directive 76/211/EEC: 20 °C (text).
    let at = |degrees: &str, scale| Temperature::new(exact(degrees), scale);
    for (rule, refrigerated, expected) in [
        (FillRule::UnitedStates, true, at("40", Scale::Fahrenheit)),
        (FillRule::UnitedStates, false, at("68", Scale::Fahrenheit)),
        (FillRule::EuropeanOrBritish, true, at("20", Scale::Celsius)),
        (FillRule::EuropeanOrBritish, false, at("20", Scale::Celsius)),
    ] {
        for law in [Law::UnitedStates, Law::European] {
            assert_eq!(counted_at(rule, law, refrigerated), expected);
        }
    }
    assert_eq!(counted_at(FillRule::Average, Law::European, true), at("20", Scale::Celsius));
    assert_eq!(counted_at(FillRule::Average, Law::UnitedStates, true), at("40", Scale::Fahrenheit));
}

#[test]
fn a_colder_drink_must_take_up_less() {
    // Counted at 20 °C, water 0.998207; measured at 4 °C, 0.999975 (Tanaka, Metrologia 38, 2001):
    // 330 * 0.998207 / 0.999975 = 329.416545, and 9.9 of tolerance 9.882496.
    let cold = Some(Temperature::new(exact("4"), Scale::Celsius));
    let filling = |rule| Filling { measured_at: cold, ..filling(rule, &["310 mL", "350 mL"]) };
    let fill = bottled(Some("330 mL"), Some(filling(FillRule::EuropeanOrBritish))).unwrap();
    assert_eq!(fill.nominal.millilitres().rounded(6), exact("329.416545"));
    assert_eq!(fill.single.unwrap().tolerance.millilitres().rounded(6), exact("9.882496"));
    // 329.416545 - 9.882496 + 2.053749 * 28.284271 = 377.622843.
    assert_eq!(fill.target.target.millilitres().rounded(3), exact("377.623"));
    let average = bottled(Some("330 mL"), Some(filling(FillRule::Average))).unwrap();
    assert_eq!(average.target.target, average.nominal);
    // Where it is measured as the law counts, nothing changes.
    let there = Some(Temperature::new(exact("68"), Scale::Fahrenheit));
    let same = Filling { measured_at: there, ..filling(FillRule::EuropeanOrBritish) };
    assert_eq!(bottled(Some("330 mL"), Some(same)).unwrap().nominal, millilitres("330"));
}

#[test]
fn the_allowed_variation_is_the_users() {
    // No package may be short by more than 1: 330 - 1 + 3 * 3.16227766, whatever share is accepted.
    let own = Filling { allowed: Some(amount("1 mL")), ..filling(FillRule::UnitedStates, &NETS) };
    let fill = bottled(Some("330 mL"), Some(own)).unwrap();
    assert_eq!(fill.target.target.millilitres().rounded(3), exact("338.487"));
    assert_eq!(fill.target.spreads_to_double, None);
    let none = bottled(Some("330 mL"), Some(filling(FillRule::UnitedStates, &NETS)));
    assert_eq!(none, Err(PackagedError::NoAllowance));
}

#[test]
fn weights_are_volumes_by_the_drinks_density() {
    // 1.0 g/mL on average.
    let fill = bottled(Some("330 mL"), Some(filling(FillRule::Average, &["310 g", "350 mL"]))).unwrap();
    assert_eq!(fill.spread.mean, exact("330"));
}

#[test]
fn what_is_missing_is_said() {
    let with = |nets: &[&str]| bottled(Some("330 mL"), Some(filling(FillRule::Average, nets)));
    assert_eq!(with(&["330 mL"]), Err(PackagedError::TooFewWeighings(1)));
    assert_eq!(with(&[]), Err(PackagedError::TooFewWeighings(0)));
    assert_eq!(bottled(Some("330 mL"), None), Err(PackagedError::NotPackaged));
    let undeclared = bottled(None, Some(filling(FillRule::Average, &NETS)));
    assert_eq!(undeclared, Err(PackagedError::NothingDeclared));
    let tiny = bottled(Some("4 mL"), Some(filling(FillRule::EuropeanOrBritish, &NETS)));
    assert_eq!(tiny, Err(PackagedError::NoTolerance));
}

#[test]
fn a_weight_needs_densities() {
    let airy = Ingredient { density: None, ..ingredient(1, [pack(1, "1 L", "2")]) };
    let bottle = Container { declared: Some(amount("330 mL")), ..container(1, "350 mL") };
    let poured = crate::book::Line { scaling: Scaling::InProportion, ..line(1, 1, "100 mL") };
    let recipe: Drink = drink(1, "1 L", [poured]);
    let offer = Offer { filling: Some(filling(FillRule::Average, &["1 g", "2 g"])), ..offer(1, 1, None) };
    let records =
        [Record::Ingredient(airy), Record::Container(bottle), Record::Drink(recipe), Record::Offer(offer.clone())];
    let lacking = PackagedError::Density(LabelError::Mass(YieldError::NoDensity(ingredient_id(1))));
    assert_eq!(packaged_fill(&book(settings(), records), &offer), Err(lacking));
}

#[test]
fn not_less_than_the_target_is_poured() {
    let bottle = Container { declared: Some(amount("12 fl oz")), ..container(1, "13 fl oz") };
    let target = millilitres("356.123456");
    let Some(Edit::Put(Record::Container(poured))) = pour(&bottle, target, Unit::UsFluidOunce) else { panic!() };
    assert_eq!(poured.id, container_id(1));
    let volume = crate::drink::fill::fill(&poured).unwrap().volume;
    let more = volume.minus(target).unwrap();
    assert!(!more.is_negative() && more < millilitres("0.00003"), "{more:?}");
    assert_eq!(pour(&bottle, millilitres("400"), Unit::UsFluidOunce), None);
}
