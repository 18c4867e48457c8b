//! Workings of costs that vary, by hand.

use brimwright::book::{
    Book, CommissionBase, Container, Edit, FlatCost, Offer, OverheadPer, Part, PaymentFee, Record, Reductions, Settings,
};
use brimwright::drink::ledger::Ledger;
use brimwright::drink::price::not_counted;
use brimwright::words;
use brimwright::working::{AtPrice, OfOffer, OfPrice};

use crate::bars::juice_bar;
use crate::support::{amount, container_id, exact, money, offer, offer_id, share};
use crate::working::{first, large, text};

/// The same bar with what varies: a batch of 5 gallons, overhead by the week, discounts, drinks marked down and
/// free, commission on the price with tax, 2.5 drinks in a payment, and a taxed deposit of 0.25.
fn varied_bar() -> Book {
    let mut book = juice_bar();
    let mut drink = book.drinks().next().unwrap().clone();
    drink.labour.batch_volume = Some(amount("5 gal"));
    let bottle = Container { deposit: money("0.25"), ..book.container(container_id(1)).unwrap().clone() };
    let old = book.settings().clone();
    let settings = Settings {
        payment_fee: PaymentFee { drinks: exact("2.5"), ..old.payment_fee },
        commission_on: CommissionBase::WithTax,
        deposit_taxed: true,
        overhead: money("60"),
        overhead_per: OverheadPer::Week,
        reductions: Reductions {
            discounts: share("0.05"),
            free: share("0.1"),
            marked_down: share("0.2"),
            marked_down_to: share("0.5"),
        },
        ..old
    };
    let offer = |container, price, weekly| Offer { weekly: Some(exact(weekly)), ..offer(1, container, Some(price)) };
    let records = [
        Record::Drink(drink),
        Record::Container(bottle),
        Record::Settings(Box::new(settings)),
        Record::Offer(offer(1, "8", "150")),
        Record::Offer(offer(2, "6.50", "90")),
    ];
    for record in records {
        book.apply(&Edit::Put(record)).unwrap();
    }
    book
}

#[test]
fn what_varies_in_a_cost() {
    let book = varied_bar();
    // 600 s * 15.2 / 640 fl oz: 14.25 s, of 86.22 s in all. At 18.00 an hour 0.4311: 2.882 for what is made, and
    // 4 / 96 of it, and 10 / 90 of both.
    let time = text(&book, large(OfOffer::Time));
    assert!(
        time.contains("\n  Batch labor share: 0:14.3. 10:00 × 15.2 fl oz ÷ 5 gal per batch = 0:14.3 each.\n"),
        "{time}"
    );
    assert!(time.contains("\n    Batch volume: 5 gal. Entered in Apple ginger.\n"), "{time}");
    let said = |of| first(&book, large(of));
    assert_eq!(said(OfOffer::Part(Part::Unsold)), "Waste: $0.12. $2.882 per drink made × 4% waste ÷ 96% sold = $0.12.");
    assert_eq!(
        said(OfOffer::Part(Part::Free)),
        "Free drinks: $0.334. $3.002 per drink × 10% given away ÷ 90% paid = $0.334."
    );
    assert_eq!(
        text(&book, large(OfOffer::Part(Part::Flat(FlatCost::Overhead)))),
        "Overhead: $0.25. $60.00 per week ÷ 240 drinks sold = $0.25 each.
  Overhead per week: $60.00. Entered in Book.
  Drinks sold per week: 240. Usual weekly sales of all sizes, added up: 240.
    Drinks sold per week: 150. Entered in Apple ginger, Large.
    Drinks sold per week: 90. Entered in Apple ginger, Small.
"
    );
}

#[test]
fn without_weekly_sales_overhead_of_a_week_is_not_counted() {
    let mut book = varied_bar();
    for container in [1, 2] {
        book.apply(&Edit::Put(Record::Offer(offer(1, container, Some("8"))))).unwrap();
    }
    let overhead = text(&book, large(OfOffer::Part(Part::Flat(FlatCost::Overhead))));
    assert_eq!(overhead, "Overhead: $0.00. Nothing entered: $0.00.\n");
    let offer = book.offer(offer_id(1, 1)).unwrap();
    let ledger = Ledger::of(&book);
    let lacks = not_counted(&book, offer, ledger.get(offer.id()).unwrap().as_ref().unwrap());
    let lacks: Vec<&str> = lacks.into_iter().map(words::not_counted_yet).collect();
    assert_eq!(lacks, ["Overhead is not counted yet: no weekly sales."]);
}

#[test]
fn what_varies_in_a_price() {
    let book = varied_bar();
    let at = |of| text(&book, large(OfOffer::At(AtPrice::Asked, of)));
    let first_of = |of| first(&book, large(OfOffer::At(AtPrice::Asked, of)));
    // 8 / 1.08 * 0.95 * 0.9 = 6.33333; with tax 6.84, and with 0.27 for the bottle 7.11.
    assert_eq!(
        at(OfPrice::Revenue),
        "Average before tax: $6.333. $7.407 before tax × 85.5% paid on average = $6.333.
  Price before tax: $7.407. See its own math.
  Paid on average: 85.5%. 95% after discounts × 90% after markdowns = 85.5%.
    After discounts: 95%. The whole 100% − Discounts 5% = 95%.
      The whole: 100%. All of the amount.
      Discounts: 5%. Entered in Book.
    After markdowns: 90%. The whole 100% − Lost to markdowns 10% = 90%.
      The whole: 100%. All of the amount.
      Lost to markdowns: 10%. 20% of drinks × 50% off = 10%.
        Marked down: 20%. Entered in Book.
        Markdown: 50%. The whole 100% − Marked-down price 50% = 50%.
          The whole: 100%. All of the amount.
          Marked-down price: 50%. Entered in Book.
"
    );
    let fees = at(OfPrice::Fees);
    for line in [
        "Fees: $0.93. Card fee $0.206 + Transaction fee share $0.04 + Delivery app commission $0.684 = $0.93.\n",
        "\n  Card fee: $0.206. 2.9% of the $7.11 the customer pays = $0.206.\n",
        "\n    Average payment: $7.11. Average with tax $6.84 + Deposit with tax $0.27 = $7.11.\n",
        "\n      Average with tax: $6.84. $6.333 before tax × 108% = $6.84 on average.\n",
        "\n      Deposit with tax: $0.27. $0.25 deposit × 108% = $0.27.\n        Deposit: $0.25. Entered in Large.\n",
        "\n  Transaction fee share: $0.04. $0.10 per payment ÷ 2.5 drinks = $0.04 each.\n",
        "\n  Delivery app commission: $0.684. 10% of the $6.84 the customer pays = $0.684.\n",
    ] {
        assert!(fees.contains(line), "{line} in {fees}");
    }
    // 6.33333 - 3.58606 - 0.93019 = 1.81708, 28.7 %.
    assert_eq!(first_of(OfPrice::Margin), "Margin: 28.7%. $1.817 margin ÷ $6.333 before tax = 28.7%.");
    assert_eq!(
        first_of(OfPrice::Contribution),
        "Profit per drink: $1.817. Average before tax $6.333 − Full cost $3.586 − Fees $0.93 = $1.817."
    );
    // 3.58606 + 0.04 + 0.00783 = 3.63389, over 1 - 0.4 - 0.108 - 0.03132 and over 0.855.
    let target = text(&book, large(OfOffer::TargetWithoutTax));
    for line in [
        "Target before tax: $9.225. $3.634 to cover ÷ 46.1% of the price ÷ 85.5% paid on average = $9.225.\n",
        "\n    Deposit card fee: $0.008. 2.9% of the $0.27 deposit = $0.008.\n",
        "\n    Taxed commission: 10.8%. 10% commission × 108% price and tax = 10.8% of the price.\n",
    ] {
        assert!(target.contains(line), "{line} in {target}");
    }
}

#[test]
fn what_varies_back_from_a_price() {
    let book = varied_bar();
    let at = |of| text(&book, large(OfOffer::At(AtPrice::Asked, of)));
    // 6.33333 * 0.46068 - 0.04783 = 2.86981; less 0.25, times 0.9 * 0.96: 2.26351; less 1.03109.
    assert!(at(OfPrice::MayCost).starts_with(
        "Drink cost limit: $2.87. Before transaction fee $2.918 − Transaction fee share $0.04 − Deposit card fee $0.008 = $2.87.\n"
    ));
    let ingredients = at(OfPrice::IngredientsMayCost);
    for line in [
        "Ingredient cost limit: $1.232. Limit before waste $2.264 − Packaging $0.50 − Labor $0.431 − Processing fee $0.10 = $1.232. Each figure is rounded.\n",
        "\n  Limit before waste: $2.264. $2.62 per drink sold × 90% paid × 96% sold = $2.264 per drink made.\n",
        "\n    Limit before overhead: $2.62. Drink cost limit $2.87 − Overhead $0.25 = $2.62.\n",
    ] {
        assert!(ingredients.contains(line), "{line} in {ingredients}");
    }
}
