use super::*;
use crate::book::{Bought, Conditions, Filled, KeptConditions};
use crate::support::{container_id, ingredient_id, pack_id};

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
    let ice = |packing| Some(Ice { packing: share(packing), ..Ice::in_a_scoop(IcePlace::Floating) });
    let packed = |packing| drink_with(|record| record.lines[0].ice = ice(packing));
    assert_eq!([packed("0"), packed("1.01")], [is(Field::Packing, Problem::NotAPacking); 2]);
    assert_eq!(packed("1"), None);
    let melted = |melted| Some(Ice { melted: share(melted), ..Ice::in_a_scoop(IcePlace::BlendedIn) });
    let melts = |part| drink_with(|record| record.lines[0].ice = melted(part));
    assert_eq!([melts("-0.01"), melts("1.01")], [is(Field::Melted, Problem::NotAPart); 2]);
    assert_eq!([melts("0"), melts("1")], [None; 2]);
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
fn conditions_of_a_scenario() {
    let is_wrong = |conditions: Conditions| {
        let scenario = Scenario { conditions: KeptConditions::of(&conditions), ..a_scenario(1, []) };
        assert_eq!(scenario.conditions(), conditions, "they are kept");
        assert_eq!(wrong(Record::Scenario(scenario.clone())), None, "the book does not read them");
        match scenario.check_conditions() {
            Err(Refusal::Field { field, problem, .. }) => Some((field, problem)),
            other => other.map(|()| None).unwrap(),
        }
    };
    let with = |change: fn(&mut Conditions)| {
        let mut conditions = Conditions::default();
        change(&mut conditions);
        is_wrong(conditions)
    };
    assert_eq!(with(|it| it.ingredients = share("-1")), None);
    assert_eq!(with(|it| it.ingredients = share("-1.01")), is(Field::PackPrice, Problem::Negative));
    assert_eq!(with(|it| it.target = Some(Share::WHOLE)), is(Field::Target, Problem::NotAShare));
    assert_eq!(with(|it| it.waste = Some(share("-0.1"))), is(Field::Unsold, Problem::NotAShare));
    assert_eq!(with(|it| it.wage = Some(money("-1"))), is(Field::Wage, Problem::Negative));
    assert_eq!(with(|it| it.card_fee = Some(Share::WHOLE)), is(Field::FeeShare, Problem::NotAShare));
    assert_eq!(with(|it| it.commission = Some(Share::WHOLE)), is(Field::Commission, Problem::NotAShare));
    let filled = |fill| Filled { container: container_id(1), fill: amount(fill) };
    let fills = |fills: Vec<Filled>| is_wrong(Conditions { fills, ..Conditions::default() });
    assert_eq!(fills(vec![filled("300 mL")]), None);
    assert_eq!(fills(vec![filled("0 mL")]), is(Field::Allowed, Problem::NotPositive));
    assert_eq!(fills(vec![filled("3 g")]), is(Field::Allowed, Problem::NotAVolume));
    assert_eq!(fills(vec![filled("300 mL"), filled("200 mL")]), is(Field::Allowed, Problem::Twice));
    let bought = |id| Bought { goods: Goods::Ingredient(ingredient_id(id)), pack: pack_id(1), price: None };
    let buys = |bought: Vec<Bought>| is_wrong(Conditions { bought, ..Conditions::default() });
    assert_eq!(buys(vec![bought(1), bought(2)]), None);
    assert_eq!(buys(vec![bought(1), bought(1)]), is(Field::PackPrice, Problem::Twice));
    let dearer = Bought { price: Some(money("-1")), ..bought(1) };
    assert_eq!(buys(vec![dearer]), is(Field::PackPrice, Problem::Negative));
}

#[test]
fn a_price_is_above_zero_or_none() {
    let price = |price| wrong(Record::Offer(an_offer(1, 1, price)));
    assert_eq!(price(Some("0")), is(Field::Price, Problem::NotPositive));
    assert_eq!(price(Some("0.01")), None);
    assert_eq!(price(None), None);
}

#[test]
fn sales_are_not_negative() {
    let weekly = |weekly| wrong(Record::Offer(Offer { weekly: Some(exact(weekly)), ..an_offer(1, 1, None) }));
    assert_eq!(weekly("-1"), is(Field::Weekly, Problem::Negative));
    assert_eq!(weekly("0"), None);
}
