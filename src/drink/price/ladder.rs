//! The money ladder of a price: what each thing takes of it, and what is left on the way down to
//! the profit per drink.
//!
//! What the margin covers stands above the margin, the rest below it, so that cost and margin are on
//! the same terms. Overhead stands last: what is left above it changes with the number of drinks.
//!
//! | margin on | takes | leaves | takes | leaves | takes | leaves |
//! |---|---|---|---|---|---|---|
//! | goods | discounts, tax, goods | margin | labor, fees | profit that changes | overhead | profit |
//! | goods and labor | discounts, tax, goods, labor | margin | fees | profit that changes | overhead | profit |
//! | everything | discounts, tax, fees, goods, labor | profit that changes | overhead | profit, the margin | | |
//!
//! Each has what is thrown away and what is handed out free of its own parts. Every rung is exact to twelve decimals, and the
//! price less the rungs that take is exactly each that is left.

use super::{Terms, asked};
use crate::book::{Book, CostBasis, Offer, OverheadPer, Part, TaxPlace};
use crate::drink::cost::{Cost, unsold_share};
use crate::drink::ledger::Priced;
use crate::foundation::measure::{Money, Overflow, Share};

/// What takes something of a price.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Takes {
    /// Discounts and marked-down prices.
    Discounts,
    /// The sales tax inside the price.
    SalesTax,
    /// The fee for a payment by card.
    CardFee,
    /// The commission of a delivery app.
    Commission,
    /// A part of the cost, without what is thrown away or handed out free.
    Part(Part),
    /// What is thrown away of the parts from one cost basis to another.
    Waste(CostBasis, CostBasis),
    /// What is handed out free of them.
    Free(CostBasis, CostBasis),
}

/// What is left of a price on the way down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaves {
    /// The margin, where it does not cover everything.
    Margin,
    /// What changes with the number of drinks sold: all but overhead is paid.
    ProfitThatChanges,
    /// Profit per drink. It is the margin too where that covers everything.
    Profit,
}

/// A rung of the ladder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rung {
    /// Something that is taken, above zero.
    Takes(Takes, Money),
    /// What is left, below zero where the price does not pay for what stands above.
    Leaves(Leaves, Money),
}

/// The money ladder of a menu price.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Ladder {
    /// The menu price.
    pub menu: Money,
    /// What the margin covers.
    pub basis: CostBasis,
    /// The margin.
    pub margin: Share,
    /// What the customer pays, tax included.
    pub customer_pays: Money,
    /// From the price down to the profit.
    pub rungs: Vec<Rung>,
}

impl Ladder {
    /// Whether the margin stands at this rung.
    pub fn margin_stands_at(&self, leaves: Leaves) -> bool {
        leaves == if self.basis == CostBasis::Everything { Leaves::Profit } else { Leaves::Margin }
    }

    /// What stands above the margin without discounts and tax: the cost on the margin's own terms.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered(&self) -> Result<Money, Overflow> {
        let mut covered = Money::ZERO;
        for rung in &self.rungs {
            match rung {
                Rung::Takes(Takes::Discounts | Takes::SalesTax, _) => {}
                Rung::Takes(_, money) => covered = covered.plus(*money)?,
                Rung::Leaves(leaves, _) if self.margin_stands_at(*leaves) => break,
                Rung::Leaves(..) => {}
            }
        }
        Ok(covered)
    }

    /// Whether the rungs as they are shown, each rounded by `round`, do not add up to what is shown
    /// to be left.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn is_rounded_apart(&self, round: &dyn Fn(Money) -> Money) -> Result<bool, Overflow> {
        let mut left = round(self.menu);
        for rung in &self.rungs {
            match rung {
                Rung::Takes(_, money) => left = left.minus(round(*money))?,
                Rung::Leaves(_, money) if left != round(*money) => return Ok(true),
                Rung::Leaves(..) => {}
            }
        }
        Ok(false)
    }
}

/// What is taken between two that are left: parts of the cost with their waste, then fees.
struct Flight {
    parts: Option<(CostBasis, CostBasis)>,
    fees: bool,
    leaves: Option<Leaves>,
}

/// The flights of a ladder whose margin covers this basis.
fn flights(basis: CostBasis) -> [Flight; 3] {
    use CostBasis::{Everything, Goods, GoodsAndLabour};
    use Leaves::{Margin, Profit, ProfitThatChanges};
    let flight = |parts, fees, leaves| Flight { parts, fees, leaves };
    let (margin, changes) = (Some(Margin), Some(ProfitThatChanges));
    let overhead = flight(Some((Everything, Everything)), false, Some(Profit));
    match basis {
        Goods => [
            flight(Some((Goods, Goods)), false, margin),
            flight(Some((GoodsAndLabour, GoodsAndLabour)), true, changes),
            overhead,
        ],
        GoodsAndLabour => [flight(Some((Goods, GoodsAndLabour)), false, margin), flight(None, true, changes), overhead],
        Everything => [flight(None, true, None), flight(Some((Goods, GoodsAndLabour)), false, changes), overhead],
    }
}

/// The way down: what is left so far, and the rungs.
struct Descent {
    left: Money,
    rungs: Vec<Rung>,
}

impl Descent {
    fn take(&mut self, takes: Takes, money: Money) -> Result<(), Overflow> {
        if !money.is_zero() {
            self.left = self.left.minus(money)?;
            self.rungs.push(Rung::Takes(takes, money));
        }
        Ok(())
    }
}

/// The ladder of a menu price.
///
/// # Errors
/// [`Overflow`], also for a price of zero.
pub fn ladder(cost: &Cost, terms: &Terms, menu: Money) -> Result<Ladder, Overflow> {
    let brings = asked(cost, terms, menu)?;
    let commission = terms.revenue(terms.without_tax(menu)?)?.times(terms.commission_share()?)?.as_part();
    let mut descent = Descent { left: menu, rungs: Vec::new() };
    // The last above the revenue takes what pays for nothing else, so that no rounded digit is lost.
    let revenue = brings.contribution.plus(brings.fees)?.plus(cost.total()?)?;
    match terms.tax.place {
        TaxPlace::InThePrice => {
            descent.take(Takes::Discounts, menu.minus(terms.revenue(menu)?)?.as_part())?;
            descent.take(Takes::SalesTax, descent.left.minus(revenue)?)?;
        }
        TaxPlace::AddedAtTheTill => descent.take(Takes::Discounts, menu.minus(revenue)?)?,
    }
    let (mut wasted, mut free) = (Money::ZERO, Money::ZERO);
    for flight in flights(terms.cost_basis) {
        if let Some((from, to)) = flight.parts {
            for basis in CostBasis::ALL.iter().filter(|basis| from <= **basis && **basis <= to) {
                for part in Part::ALL.into_iter().filter(|part| part.basis() == Some(*basis)) {
                    descent.take(Takes::Part(part), cost.part(part)?)?;
                }
            }
            let waste = cost.covered_part(to, Part::Unsold)?;
            descent.take(Takes::Waste(from, to), waste.minus(wasted)?)?;
            let given = cost.covered_part(to, Part::Free)?;
            descent.take(Takes::Free(from, to), given.minus(free)?)?;
            (wasted, free) = (waste, given);
        }
        if flight.fees {
            descent.take(Takes::CardFee, brings.fees.minus(commission)?)?;
            descent.take(Takes::Commission, commission)?;
        }
        if let Some(leaves) = flight.leaves {
            descent.rungs.push(Rung::Leaves(leaves, descent.left));
        }
    }
    let Descent { rungs, .. } = descent;
    Ok(Ladder { menu, basis: terms.cost_basis, margin: brings.margin, customer_pays: brings.customer_pays, rungs })
}

/// What a profit does not count because the book does not say it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotCounted {
    /// Labor: there is no wage.
    Wage,
    /// Labor: the drink takes no time.
    Time,
    /// Packaging: the container has none.
    Packaging,
    /// Waste: nothing is said to be thrown away.
    Waste,
    /// Overhead: none is entered.
    NoOverhead,
    /// Overhead of a week: it is not known how many drinks are sold in one.
    Overhead,
    /// The card fee: none is entered.
    CardFee,
    /// Tax inside the price: there is no rate.
    Tax,
}

/// What the profit of an offer does not count yet.
pub fn not_counted(book: &Book, offer: &Offer, priced: &Priced) -> Vec<NotCounted> {
    let mut not_counted = Vec::new();
    if book.settings().wage.is_zero() {
        not_counted.push(NotCounted::Wage);
    } else if priced.cost.time.is_zero() {
        not_counted.push(NotCounted::Time);
    }
    if priced.cost.packaging.is_empty() {
        not_counted.push(NotCounted::Packaging);
    }
    if book.drink(offer.drink).is_some_and(|drink| unsold_share(book, drink).is_zero()) {
        not_counted.push(NotCounted::Waste);
    }
    let settings = book.settings();
    if settings.overhead.is_zero() {
        not_counted.push(NotCounted::NoOverhead);
    } else if settings.overhead_per == OverheadPer::Week && book.sold_weekly().is_zero() {
        not_counted.push(NotCounted::Overhead);
    }
    if settings.payment_fee.share.is_zero() && settings.payment_fee.fixed.is_zero() {
        not_counted.push(NotCounted::CardFee);
    }
    if priced.terms.tax.place == TaxPlace::InThePrice && priced.terms.tax.rate.is_zero() {
        not_counted.push(NotCounted::Tax);
    }
    not_counted
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Drink, FlatCost, Labour, PaymentFee, Record, Reductions, Settings, Tax};
    use crate::drink::ledger::price_offer;
    use crate::support::{
        book, container, drink, ingredient, line, money, offer, offer_id, pack, seconds, settings, share, use_of,
        vessel,
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
        assert_eq!(
            (ladder.menu, ladder.customer_pays, ladder.covered()),
            (money("10"), money("12.50"), Ok(money("3.75")))
        );

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
}
