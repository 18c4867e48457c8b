//! Decisions on sizes against the book itself: the sales that a decision assumes are put into a copy of the book,
//! the whole of it is priced anew, and what it brings is added up by other means than the engine's.

use std::collections::BTreeMap;

use brimwright::book::{Book, Container, ContainerId, Drink, Edit, Labour, Offer, OfferId, Record, Scope, Settings};
use brimwright::drink::fill::fill;
use brimwright::drink::ledger::Ledger;
use brimwright::foundation::measure::{Exact, Money, Share, Volume};
use brimwright::sizes::decision::{Decision, Hands, MenuToday, NoAnswer, Question, Told, Verdict};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::cases::cases;
use crate::support::{
    book, container, container_id, day, drink, drink_id, exact, ingredient, line, offer_id, pack, seconds, settings,
    share, use_of, vessel,
};
use crate::{near, number};

const DRINKS: u64 = 3;
const CONTAINERS: u64 = 4;

/// Drinks 1 to 3 of one ingredient each in containers 1 to 4 with a bottle of their own: some offers, at a price,
/// with a weekly number; with tax, fees, labor, overhead and waste.
fn menu() -> impl Strategy<Value = Book> {
    let price = || number(20, 2).prop_map(|price| Money::from_major(price.plus(exact("6")).unwrap()));
    let offers = vec((price(), number(90, 1), 0..4_u8), (DRINKS * CONTAINERS) as usize);
    let sizes = vec(1..60_i64, CONTAINERS as usize);
    (vec(1..12_i64, DRINKS as usize), sizes, offers, 0..30_i64).prop_map(|(costs, sizes, offers, unsold)| {
        let mut records = Vec::new();
        for (id, size) in (1..).zip(sizes) {
            records.push(Record::Packaging(vessel(id, [pack(1, "10 ea", &id.to_string())])));
            let set = vec![use_of(id, "1")];
            records.push(Record::Container(Container { set, ..container(id, &format!("{} mL", size * 10)) }));
        }
        for (id, cost) in (1..).zip(costs) {
            records.push(Record::Ingredient(ingredient(id, [pack(1, "1 L", &cost.to_string())])));
            let labour = Labour { per_drink: seconds("30"), per_litre: seconds("60"), ..Labour::default() };
            records.push(Record::Drink(Drink { labour, ..drink(id, "300 mL", [line(1, id, "300 mL")]) }));
        }
        let pairs = (1..=DRINKS).flat_map(|drink| (1..=CONTAINERS).map(move |container| offer_id(drink, container)));
        for (id, (price, weekly, there)) in pairs.zip(offers) {
            if there > 0 {
                records.push(Record::Offer(Offer { price: Some(price), weekly: Some(weekly), ..Offer::new(id) }));
            }
        }
        let bar = Settings {
            wage: Money::from_major(exact("18")),
            overhead: Money::from_major(exact("0.4")),
            unsold: Share::from_fraction(Exact::new(unsold, 2)),
            commission: share("0.05"),
            ..settings()
        };
        book(bar, records)
    })
}

fn chosen() -> impl Strategy<Value = Vec<ContainerId>> {
    (1..(1_u64 << CONTAINERS))
        .prop_map(|bits| (0..CONTAINERS).filter(|at| bits >> at & 1 == 1).map(|at| container_id(at + 1)).collect())
}

/// A share from none to twice all, in hundredths.
fn any_share() -> impl Strategy<Value = Share> {
    (0..=200_i64).prop_map(|percent| Share::from_fraction(Exact::new(percent, 2)))
}

/// How many of each offer are sold in a week.
type Sales = BTreeMap<OfferId, Exact>;

fn sales(book: &Book) -> Sales {
    book.offers().map(|offer| (offer.id(), offer.weekly.unwrap())).collect()
}

/// What sales bring in a week without overhead: every offer of the book priced anew, in a book that has none.
fn brings(book: &Book, sales: &Sales, hands: Hands) -> Exact {
    let mut without = book.clone();
    let wage = if hands == Hands::Counted { book.settings().wage } else { Money::ZERO };
    let settings = Settings { overhead: Money::ZERO, wage, ..book.settings().clone() };
    without.apply(&Edit::Put(Record::Settings(Box::new(settings)))).unwrap();
    let ledger = Ledger::of(&without);
    sales.iter().fold(Exact::ZERO, |sum, (offer, weekly)| {
        let contribution = ledger.get(*offer).unwrap().as_ref().unwrap().asked.unwrap().contribution;
        sum.plus(contribution.major().times(*weekly).unwrap()).unwrap()
    })
}

fn poured(book: &Book, container: ContainerId) -> Volume {
    fill(book.container(container).unwrap()).unwrap().volume
}

/// The sales of these sizes only: a share of the buyers of the others in the size of their drink that is nearest in
/// what is poured, the rest gone.
fn moved(book: &Book, stays: &[ContainerId], share: Share) -> Sales {
    let mut sales = Sales::new();
    let mut add = |id: OfferId, count: Exact| {
        let so_far = sales.entry(id).or_default();
        *so_far = so_far.plus(count).unwrap();
    };
    for offer in book.offers() {
        let weekly = offer.weekly.unwrap();
        if stays.contains(&offer.container) {
            add(offer.id(), weekly);
            continue;
        }
        let others = book.offers_of(offer.drink).filter(|other| stays.contains(&other.container));
        if let Some(near) = nearest(book, poured(book, offer.container), others) {
            add(near.id(), weekly.times(share.fraction()).unwrap());
        }
    }
    sales
}

/// The offer nearest in what is poured, by the ratio of the larger to the smaller; of equal ones the smaller.
fn nearest<'a>(book: &Book, from: Volume, offers: impl Iterator<Item = &'a Offer>) -> Option<&'a Offer> {
    offers.min_by_key(|other| {
        let to = poured(book, other.container);
        (from.max(to).ratio_to(from.min(to)).unwrap(), to)
    })
}

/// The share at which the whole book, priced anew each time, brings what it brings today: by halving a span. There
/// is none where it brings the same at any share, as when the sizes that go are bought by nobody.
fn searched(book: &Book, stays: &[ContainerId]) -> Option<f64> {
    let today = brings(book, &sales(book), Hands::Counted).to_estimate();
    let over = |share: f64| {
        let share = Share::from_fraction(Exact::from_estimate(share).unwrap());
        brings(book, &moved(book, stays, share), Hands::Counted).to_estimate() - today
    };
    let (mut low, mut high) = (0.0, 16.0);
    if over(low) > 0.0 || over(high) < 0.0 || over(low) >= over(high) {
        return None;
    }
    for _ in 0..32 {
        let middle = f64::midpoint(low, high);
        if over(middle) > 0.0 { high = middle } else { low = middle }
    }
    Some(f64::midpoint(low, high))
}

fn asked(book: &Book, told: &Told, question: &Question) -> Result<Decision, NoAnswer> {
    MenuToday::of(book, &Ledger::of(book), Scope::Menu, told, day("2026-11-27")).unwrap().answer(question)
}

fn close(one: f64, other: f64) -> bool {
    (one - other).abs() <= 1e-6 * one.abs().max(1.0)
}

proptest! {
    #![proptest_config(cases(24))]

    /// Every plan's share is what a search finds that prices the whole book, and its verdict holds there.
    #[test]
    fn every_plan_needs_what_a_search_finds(book in menu()) {
        let ledger = Ledger::of(&book);
        let menu = MenuToday::of(&book, &ledger, Scope::Menu, &Told::default(), day("2026-11-27")).unwrap();
        let Ok(plans) = menu.plans() else { return Ok(()) };
        let today = brings(&book, &sales(&book), Hands::Counted);
        prop_assert!(near(plans.today.profit.major(), today, "0.000001"));
        for plan in plans.pays.iter().chain(&plans.cannot_pay) {
            for percent in [100, 75, 50] {
                let share = Share::from_fraction(Exact::new(percent, 2));
                let then = brings(&book, &moved(&book, &plan.sizes, share), Hands::Counted);
                prop_assert!(near(plan.line.at(share).unwrap().major(), then, "0.000001"), "{:?}", plan.sizes);
            }
            if let Some(found) = searched(&book, &plan.sizes) {
                let at = plan.break_even.expect("a search finds one").fraction().to_estimate();
                prop_assert!(plan.line.slope.is_positive() && close(at, found), "{at} and {found}");
            }
            let all = brings(&book, &moved(&book, &plan.sizes, Share::WHOLE), Hands::Counted);
            // A tie may fall to either side by the last decimal.
            if !near(all, today, "0.000001") {
                prop_assert_eq!(plan.verdict.can_pay(), all > today, "{:?}", plan.verdict);
            }
        }
        let evidence = |list: &[brimwright::sizes::decision::Plan]| list.iter().map(|plan| plan.evidence).collect::<Vec<_>>();
        for list in [&plans.pays, &plans.cannot_pay] {
            let mut ordered = evidence(list);
            ordered.sort_by(|one, other| other.cmp(one));
            prop_assert_eq!(evidence(list), ordered);
        }
    }
}

proptest! {
    #![proptest_config(cases(96))]

    /// What is kept of a decision, at any share: the line, the menu it would have, and the verdict.
    #[test]
    fn a_kept_menu_brings_what_its_line_says(book in menu(), stays in chosen(), share in any_share(), counted: bool) {
        let hands = if counted { Hands::Counted } else { Hands::LeftOut };
        let told = Told { hands, ..Told::default() };
        let Ok(decision) = asked(&book, &told, &Question::Keep { sizes: stays.clone() }) else { return Ok(()) };
        let then = brings(&book, &moved(&book, &stays, share), hands);
        let gain = then.minus(brings(&book, &sales(&book), hands)).unwrap();
        prop_assert!(near(decision.gain(share).unwrap().major(), gain, "0.000001"), "{gain:?}");
        let verdict = match decision.verdict {
            Verdict::EvenIfAllLeave => brings(&book, &moved(&book, &stays, Share::ZERO), hands),
            Verdict::AtLeast { at } => {
                let more = at.plus(Share::from_fraction(exact("0.000001"))).unwrap();
                brings(&book, &moved(&book, &stays, more), hands)
            }
            Verdict::CannotPay { loss_if_all_stay, .. } => {
                let all = brings(&book, &moved(&book, &stays, Share::WHOLE), hands);
                prop_assert!(near(loss_if_all_stay.major(), brings(&book, &sales(&book), hands).minus(all).unwrap(), "0.000001"));
                return Ok(());
            }
            other => return Err(TestCaseError::fail(format!("{other:?}"))),
        };
        prop_assert!(verdict.plus(exact("0.000001")).unwrap() >= brings(&book, &sales(&book), hands));
    }

    /// Dropping a size and switching every drink of it are the same question where each drink's nearest is the other.
    #[test]
    fn a_switch_to_the_nearest_size_asks_what_dropping_asks(book in menu(), from in 1..=CONTAINERS, to in 1..=CONTAINERS) {
        let (from, to) = (container_id(from), container_id(to));
        let drop = asked(&book, &Told::default(), &Question::Drop { size: from });
        let Ok(drop) = drop else { return Ok(()) };
        if drop.rows.iter().any(|row| row.then.is_none_or(|then| then.offer.container != to)) {
            return Ok(());
        }
        let switch = asked(&book, &Told::default(), &Question::Switch { from, to }).unwrap();
        prop_assert_eq!((switch.line, switch.now, &switch.rows), (drop.line, drop.now, &drop.rows));
        if let Some(new) = switch.needs_new() {
            // One buyer fewer would not do.
            let with = |buyers: Exact| {
                let share = Share::WHOLE.plus(Share::from_fraction(buyers.over(switch.movers).unwrap())).unwrap();
                switch.gain(share).unwrap()
            };
            prop_assert!(with(new).plus(Money::from_major(exact("0.000001"))).unwrap() >= Money::ZERO);
            prop_assert!(with(new.minus(Exact::ONE).unwrap()).is_negative());
        }
    }

    /// Adding a size: the sales that are expected put into the book, some of them taken from the other size.
    #[test]
    fn an_added_size_brings_what_its_line_says(
        book in menu(),
        size in 1..=CONTAINERS,
        expected in vec(option::of(1..40_i64), DRINKS as usize),
        price in 6..20_i64,
        percent in 0..=100_i64,
    ) {
        let size = container_id(size);
        let price = Money::from_major(Exact::from(u32::try_from(price).unwrap()));
        let share = Share::from_fraction(Exact::new(percent, 2));
        let mut told = Told::default();
        for (id, expected) in (1..).zip(&expected) {
            let offer = OfferId { drink: drink_id(id), container: size };
            if let Some(expected) = expected.filter(|_| book.offer(offer).is_none()) {
                told.weekly.push((offer, Exact::new(expected, 0)));
                told.prices.push((offer, price));
            }
        }
        let Ok(decision) = asked(&book, &told, &Question::Add { size, taken_from: None }) else { return Ok(()) };
        let mut then = book.clone();
        let mut sold = sales(&book);
        for (offer, count) in &told.weekly {
            let other = nearest(&book, poured(&book, size), book.offers_of(offer.drink));
            let taken = count.times(share.fraction()).unwrap();
            if let Some(left) = other.map(|other| sold.get_mut(&other.id()).unwrap()) {
                *left = left.minus(taken).unwrap();
            }
            sold.insert(*offer, *count);
            then.apply(&Edit::Put(Record::Offer(Offer { price: Some(price), ..Offer::new(*offer) }))).unwrap();
        }
        let gain = brings(&then, &sold, Hands::Counted).minus(brings(&book, &sales(&book), Hands::Counted)).unwrap();
        prop_assert!(near(decision.gain(share).unwrap().major(), gain, "0.000001"), "{gain:?} {decision:?}");
        let at_none = decision.gain(Share::ZERO).unwrap();
        match decision.verdict {
            Verdict::CannotPayNew { loss_if_none_taken } => prop_assert_eq!(Money::ZERO.minus(at_none), Ok(loss_if_none_taken)),
            Verdict::EvenIfAllTaken => prop_assert!(!decision.gain(Share::WHOLE).unwrap().is_negative()),
            Verdict::AtMost { at } => {
                let off = decision.gain(at).unwrap().major().abs();
                prop_assert!(off < exact("0.000001") && at < Share::WHOLE && !at.is_negative());
            }
            other => return Err(TestCaseError::fail(format!("{other:?}"))),
        }
    }

    /// The one edit makes the menu that the decision has, of whole drinks: what it then brings is within half a drink
    /// an offer of what the line says.
    #[test]
    fn one_edit_makes_it_so(book in menu(), stays in chosen(), share in any_share()) {
        let ledger = Ledger::of(&book);
        let menu = MenuToday::of(&book, &ledger, Scope::Menu, &Told::default(), day("2026-11-27")).unwrap();
        let Ok(decision) = menu.answer(&Question::Keep { sizes: stays.clone() }) else { return Ok(()) };
        let mut then = book.clone();
        then.apply(&menu.edit(&decision, share).unwrap()).unwrap();
        let offers: Vec<Offer> = then.offers().cloned().collect();
        // Another number than before is expected from the next Monday on, 30 November.
        let expected = menu.offers_then(&decision, share).unwrap().into_iter();
        let expected = expected.map(|offer| offer.expected_from(book.offer(offer.id()), day("2026-11-30")));
        prop_assert_eq!(&expected.collect::<Vec<_>>(), &offers);
        prop_assert!(offers.iter().all(|offer| stays.contains(&offer.container)));
        let exact_sales = moved(&book, &stays, share);
        for offer in &offers {
            let (kept, counted) = (offer.weekly.unwrap(), exact_sales[&offer.id()]);
            prop_assert!(kept.minus(counted).unwrap().abs() <= exact("0.5"), "{kept:?} {counted:?}");
        }
    }
}
