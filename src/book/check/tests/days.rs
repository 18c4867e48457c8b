use super::*;

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
