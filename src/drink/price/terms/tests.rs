use super::*;
use crate::book::{Container, Record, Reductions};
use crate::drink::ledger::price_offer;
use crate::support::{
    book, book_of_one_drink, container, drink, ingredient, line, money, offer, pack, settings, share,
};

fn suggested(settings: &Settings, cost: &str) -> Result<Suggestion, PriceError> {
    price_offer(&book_of_one_drink(settings.clone(), cost, None), &offer(1, 1, None)).unwrap().suggestion
}

#[test]
fn an_even_price_with_tax_inside_stays_even() {
    // 0.875 / 0.65 * 1.3 = 1.75 to the last digit, though 0.875 / 0.65 has endless digits
    // whose 28th rounds up: not 2.00.
    let tax = Tax { rate: share("0.3"), place: TaxPlace::InThePrice };
    let quarters = ["0", "0.25", "0.50", "0.75"].map(money).to_vec();
    let bar = Settings { tax, target: share("0.35"), endings: quarters, ..settings() };
    let suggestion = suggested(&bar, "0.875").unwrap();
    let even = (money("1.75"), money("1.75"), share("0.35"));
    assert_eq!((suggestion.exact, suggestion.menu, suggestion.margin), even);
    assert_eq!(suggestion.without_tax, money("1.346153846154"));
}

/// 400 menu prices with an ending, each with the cost that the formula allows at it, by hand
/// from right to left: cost = R * p * (1 - m - c - f * (1 + t)) - k - f * D. The cost is that of three
/// lines, each a third of a pack, so that its parts have endless digits and their sum is up to
/// a twelfth decimal more or less than what the formula allows.
#[test]
fn a_price_that_hits_its_ending_is_suggested_and_on_target() {
    // c = 0.05, f * (1 + t) = 0.02 * 1.25, k = 0.10.
    hits_its_endings(|bar| bar, "0", ("0.925", "1", "0.1"));
}

/// The same with all that varies: a tenth discounted and half of the drinks sold at 0.80 of their price, so
/// p = 0.9 * 0.9; commission on the price with tax, 0.05 * 1.25; 0.10 for 2.5 drinks; and 0.02 of a deposit of
/// 0.50 with tax on it: 0.04 + 0.0125.
#[test]
fn with_all_that_varies_too() {
    let less = Reductions {
        discounts: share("0.1"),
        marked_down: share("0.5"),
        marked_down_to: share("0.8"),
        ..Reductions::default()
    };
    let varying = |bar: Settings| Settings {
        payment_fee: PaymentFee { drinks: crate::support::exact("2.5"), ..bar.payment_fee },
        commission_on: CommissionBase::WithTax,
        deposit_taxed: true,
        reductions: less,
        ..bar
    };
    hits_its_endings(varying, "0.50", ("0.9125", "0.81", "0.0525"));
}

/// `kept` is 1 - c - f * (1 + t), `paid` p, and `fixed` what fees take at any price.
fn hits_its_endings(varying: impl Fn(Settings) -> Settings, deposit: &str, (kept, paid, fixed): (&str, &str, &str)) {
    let [kept, paid] = [kept, paid].map(crate::support::exact);
    for number in 0..400_i64 {
        let menu = Money::from_major(Exact::new(400 + number * 25, 2));
        let bar = Settings {
            tax: Tax { rate: share("0.25"), place: TaxPlace::AddedAtTheTill },
            payment_fee: PaymentFee { share: share("0.02"), fixed: money("0.1"), ..PaymentFee::default() },
            commission: share("0.05"),
            cost_basis: CostBasis::Everything,
            target: Share::from_fraction(Exact::new(30 + number % 30, 2)),
            endings: ["0", "0.25", "0.50", "0.75"].map(money).to_vec(),
            ..settings()
        };
        let kept = kept.minus(bar.target.fraction()).unwrap().times(paid).unwrap();
        let cost = menu.times(kept).unwrap().minus(money(fixed)).unwrap();
        let bar = varying(bar);
        let pack_of = crate::book::Pack { price: cost, ..pack(1, "3 L", "1") };
        let lines = (1..=3).map(|id| line(id, 1, "1 L"));
        let priced = book(
            bar,
            [
                Record::Ingredient(ingredient(1, [pack_of])),
                Record::Container(Container { deposit: money(deposit), ..container(1, "3 L") }),
                Record::Drink(drink(1, "3 L", lines)),
                Record::Offer(crate::book::Offer { price: Some(menu), ..offer(1, 1, None) }),
            ],
        );
        let priced = price_offer(&priced, priced.offers().next().unwrap()).unwrap();
        assert_eq!(priced.suggestion.map(|it| it.menu), Ok(menu), "{number}: {:?}", priced.cost.total());
        assert_eq!(priced.status(), crate::drink::ledger::OfferStatus::OnTarget, "{number}");
    }
}

#[test]
fn a_digit_too_small_to_show_still_rounds_the_price_up() {
    // By hand: fees take 0.00000001 * 1.0123 of the price, so 0.01 may cost
    // 0.01 * 0.999999989877 = 0.00999999989877. It costs 0.009999999899, so 0.01 is too
    // little, in the 13th decimal.
    let book = book(
        Settings {
            tax: Tax { rate: share("0.0123"), place: TaxPlace::AddedAtTheTill },
            payment_fee: PaymentFee { share: share("0.00000001"), fixed: Money::ZERO, ..PaymentFee::default() },
            cost_basis: CostBasis::Everything,
            target: Share::ZERO,
            ..settings()
        },
        [
            Record::Ingredient(ingredient(1, [pack(1, "2500000 mL", "99.99999899")])),
            Record::Container(container(1, "250 mL")),
            Record::Drink(drink(1, "250 mL", [line(1, 1, "250 mL")])),
            Record::Offer(offer(1, 1, None)),
        ],
    );
    let priced = price_offer(&book, &offer(1, 1, None)).unwrap();
    assert_eq!(priced.cost.total(), money("0.009999999899"));
    let suggestion = priced.suggestion.unwrap();
    assert_eq!((suggestion.exact, suggestion.menu), (money("0.01"), money("0.02")));
    assert!(asked(&priced.cost, &priced.terms, money("0.01")).unwrap().margin < Share::ZERO);
}

#[test]
fn where_fees_leave_less_than_the_target_the_highest_margin_is_said() {
    // By hand: 1 - 0.20 - 0.029 * 1.10 = 0.7681.
    let bar = Settings {
        tax: Tax { rate: share("0.1"), place: TaxPlace::InThePrice },
        payment_fee: PaymentFee { share: share("0.029"), fixed: money("0.30"), ..PaymentFee::default() },
        commission: share("0.2"),
        cost_basis: CostBasis::Everything,
        target: share("0.8"),
        ..settings()
    };
    let highest = share("0.7681");
    assert_eq!(suggested(&bar, "1"), Err(PriceError::NoPriceReaches { target: share("0.8"), highest }));
    let at_the_limit = Settings { target: highest, ..bar.clone() };
    assert_eq!(suggested(&at_the_limit, "1"), Err(PriceError::NoPriceReaches { target: highest, highest }));
    // Fees that the margin need not cover stand in no price's way: 1 / 0.2 * 1.1.
    let goods = Settings { cost_basis: CostBasis::Goods, ..bar };
    assert_eq!(suggested(&goods, "1").unwrap().menu, money("5.50"));
}

#[test]
fn tax_inside_or_at_the_till() {
    // By hand: of 11.00 with 10 % tax 10.00 are ours; fees 0.029 * 11 + 0.30 + 0.05 * 10 =
    // 1.119; 10 - 1.119 - 4 = 4.881.
    let bar = |place, basis| Settings {
        tax: Tax { rate: share("0.1"), place },
        payment_fee: PaymentFee { share: share("0.029"), fixed: money("0.30"), ..PaymentFee::default() },
        commission: share("0.05"),
        cost_basis: basis,
        ..settings()
    };
    let asked = |place, basis, menu| {
        let offer = offer(1, 1, Some(menu));
        price_offer(&book_of_one_drink(bar(place, basis), "4", Some(menu)), &offer).unwrap().asked.unwrap()
    };
    let inside = asked(TaxPlace::InThePrice, CostBasis::Everything, "11");
    let expected = Asked {
        menu: money("11"),
        without_tax: money("10"),
        revenue: money("10"),
        customer_pays: money("11"),
        fees: money("1.119"),
        margin: share("0.4881"),
        contribution: money("4.881"),
    };
    assert_eq!(inside, expected);
    let at_the_till = asked(TaxPlace::AddedAtTheTill, CostBasis::Everything, "10");
    assert_eq!(at_the_till, Asked { menu: money("10"), ..expected });
    let goods = asked(TaxPlace::AddedAtTheTill, CostBasis::Goods, "10");
    assert_eq!(goods, Asked { menu: money("10"), margin: share("0.6"), ..expected });
}

#[test]
fn a_fixed_fee_is_shared_by_the_drinks_of_a_payment() {
    // By hand: 0.30 for 2.5 drinks is 0.12 each; of 10.00, 9.88 less 4.00 are left.
    let fee = |drinks| PaymentFee { share: Share::ZERO, fixed: money("0.30"), drinks };
    let bar = Settings { payment_fee: fee(crate::support::exact("2.5")), ..settings() };
    let found = price_offer(&book_of_one_drink(bar, "4", Some("10")), &offer(1, 1, Some("10"))).unwrap();
    let asked = found.asked.unwrap();
    assert_eq!((asked.fees, asked.contribution), (money("0.12"), money("5.88")));
}

/// A drink of this kind and rate that costs 4.00, in a bottle with this deposit, at 10.00 before tax.
fn at_ten(bar: Settings, deposit: &str, drink: impl FnOnce(&mut Drink)) -> crate::drink::ledger::Priced {
    let mut book = book_of_one_drink(bar, "4", Some("10"));
    let mut own = book.drink(crate::support::drink_id(1)).unwrap().clone();
    drink(&mut own);
    let bottle = Container { deposit: money(deposit), ..container(1, "250 mL") };
    for record in [Record::Drink(own), Record::Container(bottle)] {
        book.apply(&crate::book::Edit::Put(record)).unwrap();
    }
    price_offer(&book, &offer(1, 1, Some("10"))).unwrap()
}

fn taxed(rate: &str) -> Settings {
    let tax = Tax { rate: share(rate), place: TaxPlace::AddedAtTheTill };
    let payment_fee = PaymentFee { share: share("0.02"), ..PaymentFee::default() };
    Settings { tax, payment_fee, cost_basis: CostBasis::Everything, target: share("0.5"), ..settings() }
}

#[test]
fn a_deposit_costs_its_fee_and_nothing_else() {
    // By hand: 10.00 and 10 % tax are 11.00, and 0.25 for the bottle: 2 % of 11.25 are 0.225; with tax on
    // the deposit too, of 11.275, 0.2255. The price for a half: (4 + 0.005) / (0.5 - 0.022) = 8.3786...
    let none = at_ten(taxed("0.1"), "0", |_| ());
    let plain = at_ten(taxed("0.1"), "0.25", |_| ());
    let too = at_ten(Settings { deposit_taxed: true, ..taxed("0.1") }, "0.25", |_| ());
    assert_eq!([&none, &plain, &too].map(|it| it.asked.unwrap().fees), ["0.22", "0.225", "0.2255"].map(money));
    for priced in [&none, &plain, &too] {
        let asked = priced.asked.unwrap();
        assert_eq!((asked.without_tax, asked.customer_pays), (money("10"), money("11")));
        assert_eq!(asked.margin.fraction().times(Exact::new(10, 0)), Ok(asked.contribution.major()));
    }
    assert_eq!(plain.suggestion.unwrap().exact, money("8.378661087866"));
    assert_eq!(too.terms.deposit_paid(), Ok(money("0.275")));
}

#[test]
fn tax_is_at_the_rate_of_the_drink_or_its_kind() {
    let kind = |kind, rate| crate::book::KindRate { kind, rate: share(rate) };
    let by_kind = vec![kind(crate::book::DrinkKind::Shot, "0.05"), kind(crate::book::DrinkKind::Pressed, "0.2")];
    let bar = || Settings { tax_by_kind: by_kind.clone(), ..taxed("0.1") };
    let pays = |change: fn(&mut Drink)| at_ten(bar(), "0", change).asked.unwrap().customer_pays;
    assert_eq!(pays(|drink| drink.kind = crate::book::DrinkKind::Blended), money("11"));
    assert_eq!(pays(|drink| drink.kind = crate::book::DrinkKind::Pressed), money("12"));
    assert_eq!(pays(|drink| drink.kind = crate::book::DrinkKind::Shot), money("10.5"));
    let own = |drink: &mut Drink| {
        (drink.kind, drink.tax_rate) = (crate::book::DrinkKind::Pressed, Some(Share::ZERO));
    };
    assert_eq!(pays(own), money("10"));
}

#[test]
fn commission_may_be_one_of_the_price_with_tax() {
    // By hand: 30 % of 10.00 are 3.00, of 12.00 with tax 3.60.
    let fees = |commission_on| {
        let bar = Settings { commission: share("0.3"), commission_on, ..taxed("0.2") };
        at_ten(Settings { payment_fee: PaymentFee::default(), ..bar }, "0", |_| ()).asked.unwrap().fees
    };
    assert_eq!(fees(CommissionBase::WithoutTax), money("3"));
    assert_eq!(fees(CommissionBase::WithTax), money("3.6"));
}

#[test]
fn what_is_paid_on_average_bears_tax_fees_and_commission() {
    // By hand: a tenth goes to discounts, and a fifth of the drinks sells at half its price, a tenth of
    // what is left: 10.00 * 0.9 * 0.9 = 8.10. With 25 % tax 10.125, of which 2 % are 0.2025; commission
    // 0.81; 8.10 - 1.0125 - 4.00 = 3.0875, of 8.10 38.1 %. The price for a half: 4 / (0.5 - 0.125) / 0.81.
    let reductions = Reductions {
        discounts: share("0.1"),
        marked_down: share("0.2"),
        marked_down_to: share("0.5"),
        ..Reductions::default()
    };
    let bar = Settings { reductions, commission: share("0.1"), ..taxed("0.25") };
    let priced = at_ten(bar, "0", |_| ());
    let expected = Asked {
        menu: money("10"),
        without_tax: money("10"),
        revenue: money("8.1"),
        customer_pays: money("12.5"),
        fees: money("1.0125"),
        margin: share("0.381172839506"),
        contribution: money("3.0875"),
    };
    assert_eq!(priced.asked, Some(expected));
    assert_eq!(priced.suggestion.unwrap().exact, money("13.168724279835"));
}

#[test]
fn a_drinks_own_target_goes_first() {
    let settings = settings();
    let own = Drink { target: Some(share("0.8")), ..drink(1, "1 L", []) };
    let of = |drink: &Drink| Terms::of(&settings, drink, &container(1, "1 L")).unwrap();
    assert_eq!(of(&own).target, share("0.8"));
    assert_eq!(of(&drink(1, "1 L", [])).target, settings.target);
}
