use super::*;
use crate::book::{Field, Problem, Refusal};
use crate::drink::ledger::{Ledger, Tried};
use crate::support::{amount, book, day, density, exact, ingredient, ingredient_id, pack, settings, share};

fn weighing(on: &str, bought: &str, trimmed: Option<&str>, pressed: Option<&str>) -> Weighing {
    Weighing { day: day(on), bought: amount(bought), trimmed: trimmed.map(amount), pressed: pressed.map(amount) }
}

fn carrots(trim: &str, weighings: impl IntoIterator<Item = Weighing>) -> Ingredient {
    let weighings = weighings.into_iter().collect();
    Ingredient { trim_yield: share(trim), weighings, ..ingredient(1, [pack(1, "50 lb", "34")]) }
}

fn two() -> [Weighing; 2] {
    [
        weighing("2026-11-02", "10 kg", Some("9 kg"), Some("4.5 kg")),
        weighing("2026-11-09", "1 kg", Some("800 g"), Some("480 g")),
    ]
}

#[test]
fn each_weighing_counts_alike_in_the_mean() {
    let log = carrots("0.5", two());
    let trim = summary(&log, Step::Trim).unwrap().unwrap();
    // 90 % and 80 %; 9.8 of 11 kg together.
    assert_eq!((trim.mean, trim.together.fraction().rounded(6)), (share("0.85"), exact("0.890909")));
    let press = summary(&log, Step::Press).unwrap().unwrap();
    // 50 % and 60 %; 4.98 of 9.8 kg.
    assert_eq!((press.mean, press.together.fraction().rounded(6)), (share("0.55"), exact("0.508163")));
    // t with 1 degree of freedom, 12.7062 (NIST/SEMATECH e-Handbook, 1.3.6.7.2: 12.706), times
    // 0.0707107 over the root of 2, is 12.7062 * 0.05.
    let (low, high) = press.interval.unwrap();
    assert_eq!((low.fraction().rounded(4), high.fraction().rounded(4)), (exact("-0.0853"), exact("1.1853")));
    assert_eq!((press.farthest, press.outlier()), (None, None));
}

#[test]
fn one_weighing_has_no_interval() {
    let log = carrots("1", [weighing("2026-11-02", "3 kg", Some("2 kg"), None)]);
    let trim = summary(&log, Step::Trim).unwrap().unwrap();
    assert_eq!((trim.mean.fraction(), trim.spread, trim.interval), (exact("0.666666666667"), None, None));
    assert_eq!(trim.adopted(), Some(share("0.667")));
    assert_eq!(summary(&log, Step::Press), Ok(None));
    assert_eq!(summary(&carrots("1", []), Step::Trim), Ok(None));
}

#[test]
fn what_goes_into_the_press_is_what_was_weighed_or_bought() {
    let unweighed = weighing("2026-11-02", "4 kg", None, Some("2 kg"));
    // Nothing is cut away: all that was bought is pressed.
    assert_eq!(yield_of(&carrots("1", []), &unweighed, Step::Press), Ok(Some(share("0.5"))));
    // Something is, and nobody weighed how much.
    assert_eq!(yield_of(&carrots("0.9", []), &unweighed, Step::Press), Ok(None));
    assert_eq!(yield_of(&carrots("0.9", []), &unweighed, Step::Trim), Ok(None));
    let whole = weighing("2026-11-02", "4 kg", Some("3 kg"), Some("1.5 kg"));
    assert_eq!(yield_of(&carrots("1", []), &whole, Step::Press), Ok(Some(share("0.5"))));
}

#[test]
fn an_outlier_is_named_and_counts() {
    let yields = ["0.9", "0.91", "0.89", "0.9", "0.9", "0.3"];
    let weighings = yields.map(|share| weighing("2026-11-02", "1 kg", Some(&format!("{share} kg")), None));
    let trim = summary(&carrots("1", weighings), Step::Trim).unwrap().unwrap();
    assert_eq!(trim.outlier(), Some(Single { place: 5, day: day("2026-11-02"), share: share("0.3") }));
    assert_eq!((trim.mean, trim.singles.len()), (share("0.8"), 6), "4.8 / 6");
}

#[test]
fn adopting_moves_the_drinks_and_can_be_taken_back() {
    let mut bar = book(settings(), [Record::Ingredient(carrots("0.5", two()))]);
    let id = ingredient_id(1);
    let both = adopt(&bar, id, &Step::ALL).unwrap().unwrap();
    let tried = Tried::of(&bar, &Ledger::of(&bar), &both).unwrap();
    let after = tried.book.ingredient(id).unwrap();
    assert_eq!((after.trim_yield, after.press_yield), (share("0.85"), Some(share("0.55"))));
    let press = adopt(&bar, id, &[Step::Press]).unwrap().unwrap();
    let before = bar.clone();
    let applied = bar.apply(&press).unwrap();
    let after = bar.ingredient(id).unwrap();
    assert_eq!((after.trim_yield, after.press_yield), (share("0.5"), Some(share("0.55"))));
    assert_eq!(adopt(&bar, id, &[Step::Press]), Ok(None), "the book has it already");
    bar.apply(&applied.inverse).unwrap();
    assert_eq!(bar, before);
    assert_eq!(adopt(&bar, id, &[]), Ok(None));
    let gone = ingredient_id(9);
    assert_eq!(adopt(&bar, gone, &Step::ALL), Err(YieldLogError::Missing(gone)));
}

#[test]
fn next_to_nothing_is_not_adopted() {
    let log = carrots("1", [weighing("2026-11-02", "10 kg", Some("4 g"), None)]);
    assert_eq!(summary(&log, Step::Trim).unwrap().unwrap().adopted(), None);
}

#[test]
fn juice_by_volume_is_weighed_by_its_density() {
    let carrots = Ingredient { juice_density: Some(density("1.05")), ..carrots("1", []) };
    let weight = |text, unit| juice_weight(&carrots, amount(text), unit);
    // 2 L * 1.05 g/mL; a US gallon is 3785.411784 mL (NIST Handbook 44): 3974.682 g, 8.7627 lb.
    assert_eq!(weight("2 L", Unit::Kilogram), Ok(amount("2.1 kg")));
    assert_eq!(weight("1 gal", Unit::Pound), Ok(amount("8.7627 lb")));
    assert_eq!(weight("5 lb", Unit::Kilogram), Ok(amount("5 lb")));
    assert_eq!(weight("5 ea", Unit::Kilogram), Err(YieldLogError::Pieces));
    let unknown = Ingredient { juice_density: None, ..carrots };
    let error = Err(YieldLogError::NoJuiceDensity(ingredient_id(1)));
    assert_eq!(juice_weight(&unknown, amount("2 L"), Unit::Kilogram), error);
}

#[test]
fn the_log_stays_in_the_order_of_its_days() {
    let id = ingredient_id(1);
    let mut bar = book(settings(), [Record::Ingredient(carrots("1", []))]);
    let days = |bar: &Book| -> Vec<(String, String)> {
        let log = &bar.ingredient(id).unwrap().weighings;
        log.iter().map(|it| (it.day.to_string(), it.bought.to_string())).collect()
    };
    let shown = |rows: &[(&str, &str)]| -> Vec<(String, String)> {
        rows.iter().map(|(day, bought)| (format!("2026-11-{day}"), format!("{bought} kg"))).collect()
    };
    for (on, bought) in [("2026-11-09", "1 kg"), ("2026-11-02", "2 kg"), ("2026-11-09", "3 kg")] {
        bar.apply(&write_down(&bar, id, None, weighing(on, bought, None, None)).unwrap()).unwrap();
    }
    assert_eq!(days(&bar), shown(&[("02", "2"), ("09", "1"), ("09", "3")]));
    let before = bar.clone();
    let corrected = write_down(&bar, id, Some(1), weighing("2026-11-09", "1.5 kg", None, None)).unwrap();
    let applied = bar.apply(&corrected).unwrap();
    assert_eq!(days(&bar), shown(&[("02", "2"), ("09", "1.5"), ("09", "3")]));
    bar.apply(&applied.inverse).unwrap();
    assert_eq!(bar, before);
    bar.apply(&write_down(&bar, id, Some(2), weighing("2026-11-01", "3 kg", None, None)).unwrap()).unwrap();
    assert_eq!(days(&bar), shown(&[("01", "3"), ("02", "2"), ("09", "1")]));
    bar.apply(&take_out(&bar, id, 1).unwrap()).unwrap();
    assert_eq!(days(&bar), shown(&[("01", "3"), ("09", "1")]));
    let grown = write_down(&bar, id, None, weighing("2026-11-10", "1 kg", Some("1.1 kg"), None)).unwrap();
    let refusal = Refusal::Field {
        key: crate::book::Key::Ingredient(id),
        field: Field::WeighedTrimmed,
        problem: Problem::MoreThanBefore,
    };
    assert_eq!(bar.apply(&grown), Err(refusal));
}
