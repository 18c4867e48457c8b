use super::*;
use crate::book::{Container, Drink, FlatCost, Labour, PaymentFee, Record, Reductions, Settings, Tax};
use crate::drink::ledger::price_offer;
use crate::support::{
    book, container, drink, ingredient, line, money, offer, offer_id, pack, seconds, settings, share, use_of, vessel,
};

/// Ingredients 2.00, packaging 0.40, processing 0.60, labor 60 s at 60.00 an hour 1.00, overhead
/// 0.50, and a fifth thrown away: a quarter more of each. At 10.00 without tax and 12.50 with it the
/// card takes 2 % of 12.50 and 0.10, the app 3 % of 10.00.
fn bar(basis: CostBasis, place: TaxPlace) -> Book {
    let settings = Settings {
        wage: money("60"),
        overhead: money("0.50"),
        overhead_per: OverheadPer::DrinkMade,
        unsold: share("0.2"),
        tax: Tax { rate: share("0.25"), place },
        payment_fee: PaymentFee { share: share("0.02"), fixed: money("0.10"), ..PaymentFee::default() },
        commission: share("0.03"),
        cost_basis: basis,
        ..settings()
    };
    let price = if place == TaxPlace::InThePrice { "12.50" } else { "10" };
    book(
        settings,
        [
            Record::Ingredient(ingredient(1, [pack(1, "250 mL", "2")])),
            Record::Packaging(vessel(1, [pack(1, "1 ea", "0.40")])),
            Record::Container(Container { set: vec![use_of(1, "1")], ..container(1, "250 mL") }),
            Record::Drink(Drink {
                labour: Labour { per_drink: seconds("60"), ..Labour::default() },
                treatment_fee: money("0.60"),
                ..drink(1, "250 mL", [line(1, 1, "250 mL")])
            }),
            Record::Offer(offer(1, 1, Some(price))),
        ],
    )
}

fn priced(book: &Book) -> Priced {
    price_offer(book, book.offer(offer_id(1, 1)).unwrap()).unwrap()
}

fn of(book: &Book) -> Ladder {
    let priced = priced(book);
    ladder(&priced.cost, &priced.terms, priced.asked.unwrap().menu).unwrap()
}

fn takes(takes: Takes, amount: &str) -> Rung {
    Rung::Takes(takes, money(amount))
}

fn leaves(leaves: Leaves, amount: &str) -> Rung {
    Rung::Leaves(leaves, money(amount))
}

fn goods() -> [Rung; 3] {
    [
        takes(Takes::Part(Part::Ingredients), "2"),
        takes(Takes::Part(Part::ContainerSet), "0.40"),
        takes(Takes::Part(Part::Flat(FlatCost::TreatmentFee)), "0.60"),
    ]
}

fn fees() -> [Rung; 2] {
    [takes(Takes::CardFee, "0.35"), takes(Takes::Commission, "0.30")]
}

fn overhead() -> [Rung; 3] {
    let waste = Takes::Waste(CostBasis::Everything, CostBasis::Everything);
    let part = Part::Flat(FlatCost::Overhead);
    [takes(Takes::Part(part), "0.50"), takes(waste, "0.125"), leaves(Leaves::Profit, "3.725")]
}

#[test]
fn each_basis_by_hand() {
    let labour = takes(Takes::Part(Part::Labour), "1");
    let changes = leaves(Leaves::ProfitThatChanges, "4.35");
    let waste = |from, to, amount| takes(Takes::Waste(from, to), amount);
    let (all, some) = (CostBasis::GoodsAndLabour, CostBasis::Goods);

    let ladder = of(&bar(some, TaxPlace::AddedAtTheTill));
    let of_goods = [waste(some, some, "0.75"), leaves(Leaves::Margin, "6.25"), labour, waste(all, all, "0.25")];
    let expected = [&goods()[..], &of_goods, &fees(), &[changes], &overhead()].concat();
    assert_eq!((ladder.rungs.clone(), ladder.margin), (expected, share("0.625")));
    assert_eq!((ladder.menu, ladder.customer_pays, ladder.covered()), (money("10"), money("12.50"), Ok(money("3.75"))));

    let ladder = of(&bar(all, TaxPlace::AddedAtTheTill));
    let of_labour = [labour, waste(some, all, "1"), leaves(Leaves::Margin, "5")];
    let expected = [&goods()[..], &of_labour, &fees(), &[changes], &overhead()].concat();
    assert_eq!((ladder.rungs.clone(), ladder.margin, ladder.covered()), (expected, share("0.5"), Ok(money("5"))));

    let ladder = of(&bar(CostBasis::Everything, TaxPlace::AddedAtTheTill));
    let expected = [&fees()[..], &goods(), &[labour, waste(some, all, "1"), changes], &overhead()].concat();
    assert_eq!((ladder.rungs.clone(), ladder.margin), (expected, share("0.3725")));
    assert_eq!(ladder.covered(), Ok(money("6.275")));
}

#[test]
fn tax_inside_the_price_is_the_first_to_go() {
    for basis in CostBasis::ALL.iter().copied() {
        let (inside, added) = (of(&bar(basis, TaxPlace::InThePrice)), of(&bar(basis, TaxPlace::AddedAtTheTill)));
        assert_eq!(inside.rungs[0], takes(Takes::SalesTax, "2.50"));
        assert_eq!(inside.rungs[1..], added.rungs[..]);
        assert_eq!((inside.menu, inside.customer_pays), (money("12.50"), money("12.50")));
        assert_eq!((inside.margin, inside.covered()), (added.margin, added.covered()));
    }
}

#[test]
fn discounts_and_free_drinks_have_their_rows() {
    // By hand: a fifth off 12.50 is 2.50, of the 10.00 left 2.00 are tax; of 10.00 added at the till 2.00. Of
    // 8.00 the card takes 2 % of 10.00 and 0.10, the app 0.24. Goods of 3.00 and 0.75 thrown away are 3.75,
    // with half of all handed out free 3.75 more; labor 1.00, 0.25 and 1.25; overhead of 0.50 per drink made
    // 0.125 and 0.625, and per drink sold nothing more.
    let (all, some, every) = (CostBasis::GoodsAndLabour, CostBasis::Goods, CostBasis::Everything);
    let reduced = |place, overhead_per| {
        let mut book = bar(some, place);
        let reductions = Reductions { discounts: share("0.2"), free: share("0.5"), ..Reductions::default() };
        let settings = Settings { reductions, overhead_per, ..book.settings().clone() };
        book.apply(&crate::book::Edit::Put(Record::Settings(Box::new(settings)))).unwrap();
        of(&book)
    };
    let waste = |of, amount| takes(Takes::Waste(of, of), amount);
    let free = |of, amount| takes(Takes::Free(of, of), amount);
    let to_margin = [waste(some, "0.75"), free(some, "3.75"), leaves(Leaves::Margin, "0.5")];
    let labour = [takes(Takes::Part(Part::Labour), "1"), waste(all, "0.25"), free(all, "1.25")];
    let fees = [takes(Takes::CardFee, "0.3"), takes(Takes::Commission, "0.24")];
    let changes = [leaves(Leaves::ProfitThatChanges, "-2.54")];
    let overhead = [takes(Takes::Part(Part::Flat(FlatCost::Overhead)), "0.5")];
    let both = [waste(every, "0.125"), free(every, "0.625"), leaves(Leaves::Profit, "-3.79")];
    let shared = [&goods()[..], &to_margin, &labour, &fees, &changes, &overhead].concat();

    let ladder = reduced(TaxPlace::AddedAtTheTill, OverheadPer::DrinkMade);
    assert_eq!(ladder.rungs, [&[takes(Takes::Discounts, "2")], &shared[..], &both].concat());
    assert_eq!((ladder.covered(), ladder.margin), (Ok(money("7.5")), share("0.0625")));
    let ladder = reduced(TaxPlace::InThePrice, OverheadPer::DrinkSold);
    let above = [takes(Takes::Discounts, "2.5"), takes(Takes::SalesTax, "2")];
    assert_eq!(ladder.rungs, [&above[..], &shared, &[leaves(Leaves::Profit, "-3.04")]].concat());
}

#[test]
fn what_takes_nothing_has_no_rung() {
    let book = crate::support::book_of_one_drink(settings(), "4", Some("10"));
    let left = [Leaves::Margin, Leaves::ProfitThatChanges, Leaves::Profit].map(|it| leaves(it, "6"));
    let expected = [&[takes(Takes::Part(Part::Ingredients), "4")], &left[..]].concat();
    let goods = Settings { cost_basis: CostBasis::Goods, ..book.settings().clone() };
    assert_eq!(of(&crate::support::book_of_one_drink(goods, "4", Some("10"))).rungs, expected);
}

/// With a fifth thrown away, a quarter more than the drink costs.
#[test]
fn rows_that_are_rounded_apart_are_found() {
    let apart = |cost: &str| {
        let settings = Settings { cost_basis: CostBasis::Goods, unsold: share("0.2"), ..settings() };
        let currency = settings.currency;
        let ladder = of(&crate::support::book_of_one_drink(settings, cost, Some("10")));
        ladder.is_rounded_apart(&|money| currency.rounded(money)).unwrap()
    };
    // 2.00 and 0.50: 7.50 are left.
    assert!(!apart("2"));
    // 1.0044 and 0.2511: rows of 1.00 and 0.25 leave 8.75, and 8.7445 are left.
    assert!(apart("1.0044"));
    // 1.0012 and 0.2503: the same rows, and 8.7485 are left, shown as 8.75.
    assert!(!apart("1.0012"));
}

#[test]
fn what_the_book_does_not_say_is_not_counted() {
    let full = bar(CostBasis::Goods, TaxPlace::AddedAtTheTill);
    let found = |book: &Book| not_counted(book, book.offer(offer_id(1, 1)).unwrap(), &priced(book));
    assert_eq!(found(&full), []);
    let without = |change: &dyn Fn(&mut Settings, &mut Drink, &mut Container)| {
        let mut book = full.clone();
        let mut settings = book.settings().clone();
        let mut drink = book.drinks().next().unwrap().clone();
        let mut container = book.containers().next().unwrap().clone();
        change(&mut settings, &mut drink, &mut container);
        for record in [Record::Settings(Box::new(settings)), Record::Drink(drink), Record::Container(container)] {
            book.apply(&crate::book::Edit::Put(record)).unwrap();
        }
        found(&book)
    };
    let no_tax = |place| Tax { rate: Share::ZERO, place };
    assert_eq!(
        without(&|settings, _, _| settings.payment_fee = PaymentFee::default()),
        [NotCounted::CardFee],
        "neither a share nor a fixed one"
    );
    assert_eq!(without(&|settings, _, _| settings.tax = no_tax(TaxPlace::InThePrice)), [NotCounted::Tax]);
    assert_eq!(without(&|settings, _, _| settings.tax = no_tax(TaxPlace::AddedAtTheTill)), []);
    assert_eq!(without(&|settings, _, _| settings.wage = Money::ZERO), [NotCounted::Wage]);
    assert_eq!(without(&|_, drink, _| drink.labour = Labour::default()), [NotCounted::Time]);
    assert_eq!(without(&|_, _, container| container.set.clear()), [NotCounted::Packaging]);
    assert_eq!(without(&|_, drink, _| drink.unsold = Some(Share::ZERO)), [NotCounted::Waste]);
    assert_eq!(without(&|settings, _, _| settings.unsold = Share::ZERO), [NotCounted::Waste]);
    assert_eq!(without(&|settings, _, _| settings.overhead = Money::ZERO), [NotCounted::NoOverhead]);
    assert_eq!(without(&|settings, _, _| settings.overhead_per = OverheadPer::Week), [NotCounted::Overhead]);
}
