use super::*;

#[test]
fn settings() {
    let rate = |rate| Tax { rate: share(rate), place: TaxPlace::InThePrice };
    assert_eq!(settings_with(|record| record.tax = rate("-0.1")), is(Field::TaxRate, Problem::Negative));
    assert_eq!(settings_with(|record| record.tax = rate("1.5")), None);
    let fee = |share_of, fixed| PaymentFee { share: share(share_of), fixed: money(fixed), ..PaymentFee::default() };
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
