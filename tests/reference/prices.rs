//! Margin, food cost, tax and fees against worked examples; the source of each is named in
//! `data/worked_examples.csv` and beside the check.

use brimwright::book::{CostBasis, PaymentFee, Settings, Tax, TaxPlace};
use brimwright::drink::ledger::{Ledger, Priced};
use brimwright::drink::price::{Ceiling, Suggestion, Terms, ceiling, suggest};
use brimwright::foundation::measure::{Currency, Exact, Money, Share};

use crate::example;
use crate::support::{book_of_one_drink, container_id, drink_id, exact, money, offer_id, settings, share};

/// The one drink of a book, costing this much, at this price.
fn priced(settings: Settings, cost: &str, price: Option<&str>) -> Priced {
    let book = book_of_one_drink(settings, cost, price);
    Ledger::of(&book).get(offer_id(1, 1)).expect("it is offered").clone().expect("it can be computed")
}

fn suggested(settings: Settings, cost: &str) -> Suggestion {
    priced(settings, cost, None).suggestion.expect("a price reaches the target")
}

/// A target margin is what the food-cost share leaves.
fn food_cost_target(food_cost: &str) -> Settings {
    Settings { target: share(food_cost).rest().unwrap(), ..settings() }
}

/// The food-cost share in percent at a price.
fn food_cost(cost: &str, price: &str) -> Exact {
    let margin = priced(settings(), cost, Some(price)).margin().expect("a price is asked");
    margin.rest().unwrap().percent().unwrap()
}

#[test]
fn food_cost_is_what_the_margin_leaves() {
    // MTH 81 ch. 11: 1.15 at 3.66; the source's rule is to round the percentage up.
    assert_eq!(example("W7").1, "31.4208 % -> 31.43 % or 32 %");
    assert_eq!(food_cost("1.15", "3.66").rounded(4), exact("31.4208"));
    // G. Wall, Trade Calculations Objective 8: 2.13 at 5.95.
    assert_eq!(example("W12").1, "35.798 %");
    assert_eq!(food_cost("2.13", "5.95").rounded(3), exact("35.798"));
}

#[test]
fn a_price_allows_a_food_cost() {
    // ckbk, Food Cost Percentages: a price of 6.75 at 35 % leaves 2.36.
    assert_eq!(example("W10"), ("$2.36".into(), "2.3625".into()));
    let book = book_of_one_drink(food_cost_target("0.35"), "1", Some("6.75"));
    let ledger = Ledger::of(&book);
    let priced = ledger.get(offer_id(1, 1)).unwrap().as_ref().unwrap();
    let drink = book.drink(drink_id(1)).unwrap();
    let back = ceiling(&book, drink, &priced.cost, &priced.terms, money("6.75"));
    let all = money("2.3625");
    assert_eq!(back, Ok(Ceiling { without_tax: money("6.75"), cost: all, ingredients: all }));
    assert_eq!(Currency::USD.rounded(all), money("2.36"));
}

#[test]
fn a_food_cost_gives_a_price() {
    // The same page: 1.60 at 40 %.
    assert_eq!(example("W11").1, "4.00");
    assert_eq!(suggested(food_cost_target("0.40"), "1.60").exact, money("4"));
}

#[test]
fn contribution_is_price_less_cost() {
    // PSU Pressbooks ACCTG 211, 7.2: price 400, variable cost 250.
    assert_eq!(example("W17"), ("$150".into(), "150".into()));
    assert_eq!(priced(settings(), "250", Some("400")).asked.unwrap().contribution, money("150"));
}

#[test]
fn margin_is_not_mark_up() {
    // Algebra: price = cost / (1 - m), mark-up = m / (1 - m); a margin of 65 % is a mark-up of
    // 185.7 %.
    let price = suggested(Settings { target: share("0.65"), ..settings() }, "1").exact;
    let mark_up = price.minus(money("1")).unwrap().ratio_to(money("1")).unwrap();
    assert_eq!(Share::from_fraction(mark_up).percent().unwrap().rounded(1), exact("185.7"));
}

/// Terms with nothing but this tax inside the price.
fn taxed(rate: &str) -> Terms {
    let book = book_of_one_drink(
        Settings { tax: Tax { rate: share(rate), place: TaxPlace::InThePrice }, ..settings() },
        "1",
        None,
    );
    Terms::of(book.settings(), book.drink(drink_id(1)).unwrap(), book.container(container_id(1)).unwrap()).unwrap()
}

fn tax_within(menu: &str, rate: &str) -> Money {
    let menu = money(menu);
    menu.minus(taxed(rate).without_tax(menu).unwrap()).unwrap()
}

#[test]
fn tax_is_added() {
    // HMRC, Calculating VAT for VAT-inclusive and VAT-exclusive prices.
    assert_eq!((example("W20").0.as_str(), example("W21").0.as_str()), ("120", "105"));
    assert_eq!(taxed("0.2").menu(money("100")), Ok(money("120")));
    assert_eq!(taxed("0.05").menu(money("100")), Ok(money("105")));
}

#[test]
fn tax_is_taken_out() {
    // Accounting Services for Business, citing HMRC: the VAT fraction 3/23 of 115, 1/6 of 120.
    assert_eq!((example("W22").0.as_str(), example("W24").0.as_str()), ("15.00", "20.00"));
    assert_eq!(tax_within("115", "0.15"), money("15"));
    assert_eq!(tax_within("120", "0.2"), money("20"));
    // itsrelative.co.uk: 1/21 of 80.
    assert_eq!(example("W25"), ("3.81".into(), "3.8095238".into()));
    let tax = tax_within("80", "0.05");
    assert_eq!(tax.major().rounded(7), exact("3.8095238"));
    let pounds = Currency::from_code("GBP").unwrap();
    assert_eq!(pounds.rounded(tax), money("3.81"));
}

#[test]
fn the_payment_fee_is_on_top() {
    // Algebra: to keep 10.00 after 2.9 % of the payment and 0.30, charge (10 + 0.30) / (1 - 0.029).
    let fee = PaymentFee { share: share("0.029"), fixed: money("0.30"), ..PaymentFee::default() };
    let bar = Settings { payment_fee: fee, cost_basis: CostBasis::Everything, target: Share::ZERO, ..settings() };
    let suggestion = suggested(bar.clone(), "10");
    assert_eq!(suggestion.exact.major().rounded(4), exact("10.6076"));

    // And what it takes at that price, back from the price: 10.00 is left.
    let book = book_of_one_drink(bar, "10", None);
    let container = book.container(container_id(1)).unwrap();
    let terms = Terms::of(book.settings(), book.drink(drink_id(1)).unwrap(), container).unwrap();
    let cost = priced(book.settings().clone(), "10", None).cost;
    assert_eq!(suggest(&cost, &terms, book.settings()), Ok(suggestion));
    let back = ceiling(&book, book.drink(drink_id(1)).unwrap(), &cost, &terms, suggestion.exact).unwrap();
    assert_eq!(back.cost.major().rounded(11), exact("10"));
}
