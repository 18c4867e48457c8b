//! Every lever that closes a gap is put into the book, and closes it there, and not a step
//! before; every lever that cannot is put as far as it goes, and does not.

use brimwright::book::{
    Book, CommissionBase, Container, ContainerId, CostBasis, Drink, DrinkId, Edit, Headspace, Ingredient, IngredientId,
    Labour, Offer, OfferId, Pack, Packaging, Record,
};
use brimwright::drink::gap::{Closing, Figure, Lever, WhyNot, ways};
use brimwright::drink::ledger::{OfferStatus, price_offer};
use brimwright::foundation::measure::{Amount, Exact, Money, Share, Time};
use proptest::prelude::*;

use crate::cases::cases;
use crate::menus::{Menu, menu};
use crate::near;
use crate::support::{container_id, drink_id, exact, pack, use_of};

const OFFER: OfferId = OfferId { drink: DrinkId::from_random(1), container: ContainerId::from_random(1) };

/// A menu whose one offer asks less than it should, often only a little.
fn under_target() -> impl Strategy<Value = Menu> {
    let share = prop_oneof![900_000..1_000_000_i64, 100_000..1_000_000_i64];
    (menu(), share).prop_filter_map("no price, or none too low", |(mut menu, millionths)| {
        let enough = menu.priced().suggestion.map_or(Money::from_major(Exact::new(20, 0)), |it| it.exact);
        let price = enough.times(Exact::new(millionths, 6)).ok()?.major().rounded(8);
        let offer = Offer { price: Some(Money::from_major(price)), ..Offer::new(OFFER) };
        menu.book.apply(&Edit::Put(Record::Offer(offer))).ok()?;
        (status(&menu.book) == OfferStatus::UnderTarget).then_some(menu)
    })
}

fn status(book: &Book) -> OfferStatus {
    OfferStatus::from(&price_offer(book, book.offer(OFFER).unwrap()))
}

/// Where the offer stands once this is done.
fn standing_after(book: &Book, edit: &Edit) -> OfferStatus {
    let mut book = book.clone();
    book.apply(edit).unwrap_or_else(|refusal| panic!("{refusal:?} of {edit:?}"));
    status(&book)
}

/// The lever set to this number by the test's own hand.
fn set(book: &Book, lever: Lever, number: Exact) -> Edit {
    let share = Share::from_fraction(number);
    let ingredient = |id: IngredientId, change: fn(&mut Ingredient, Share)| {
        let mut ingredient = book.ingredient(id).unwrap().clone();
        change(&mut ingredient, share);
        Edit::Put(Record::Ingredient(ingredient))
    };
    let drink = || book.drink(drink_id(1)).unwrap().clone();
    let container = || book.container(container_id(1)).unwrap().clone();
    match lever {
        Lever::MenuPrice(offer) => Edit::SetPrice { offer, price: Some(Money::from_major(number)) },
        Lever::Fill(_) => {
            let headspace = Headspace::Volume(Amount::new(number, book.settings().units.drink_unit()));
            Edit::Put(Record::Container(Container { headspace, ..container() }))
        }
        Lever::PackPrice(goods) => {
            let pack = book.packs(goods)[0].id;
            Edit::SetPackPrice { goods, pack, price: Money::from_major(number), day: None }
        }
        Lever::TrimYield(id) => ingredient(id, |ingredient, share| ingredient.trim_yield = share),
        Lever::PressYield(id) => ingredient(id, |ingredient, share| ingredient.press_yield = Some(share)),
        Lever::SoakYield(id) => ingredient(id, |ingredient, share| ingredient.soak_yield = Some(share)),
        Lever::ContainerSet(_) => {
            // Whatever the set was: one bottle, bought singly.
            let bottle = book.packagings().next().unwrap().clone();
            let packs = vec![Pack { price: Money::from_major(number), ..pack(1, "1 ea", "1") }];
            let single = Container { set: vec![use_of(1, "1")], shared: Vec::new(), ..container() };
            let bottle = Record::Packaging(Packaging { packs, ..bottle });
            Edit::Together(vec![Edit::Put(bottle), Edit::Put(Record::Container(single))])
        }
        Lever::Unsold(_) => Edit::Put(Record::Drink(Drink { unsold: Some(share), ..drink() })),
        Lever::HandsTime(_) => {
            let per_drink = Time::from_seconds(number);
            let labour = Labour { per_drink, ..drink().labour };
            Edit::Put(Record::Drink(Drink { labour, ..drink() }))
        }
    }
}

/// What the test sets: the figure itself; for a fill the headspace, for hands' time the seconds
/// of every drink, as they stand in the edit.
fn number(closing: &Closing) -> Exact {
    match (closing.at, &closing.edit) {
        (Figure::Money(money), _) => money.major(),
        (Figure::Share(share), _) => share.fraction(),
        (Figure::Volume(_), Some(Edit::Put(Record::Container(container)))) => match container.headspace {
            Headspace::Volume(amount) => amount.number,
            other => panic!("{other:?}"),
        },
        (Figure::Time(_), Some(Edit::Put(Record::Drink(drink)))) => drink.labour.per_drink.seconds(),
        other => panic!("{other:?}"),
    }
}

/// One step of what is set, towards where it stands now.
fn step_back(lever: Lever) -> Exact {
    match lever {
        Lever::MenuPrice(_) | Lever::TrimYield(_) | Lever::PressYield(_) | Lever::SoakYield(_) => exact("-0.00000001"),
        Lever::Fill(_) => exact("-0.000001"),
        Lever::PackPrice(_) | Lever::ContainerSet(_) | Lever::Unsold(_) => exact("0.00000001"),
        Lever::HandsTime(_) => exact("0.000001"),
    }
}

/// As far as a lever goes; none for a menu price, which has no end.
fn bound(menu: &Menu, lever: Lever) -> Option<Exact> {
    match lever {
        Lever::MenuPrice(_) => None,
        Lever::Fill(_) => {
            // To the fixed lines alone, or to a millionth of the unit.
            let unit = menu.book.settings().units.drink_unit().size();
            let brimful = menu.container().brimful.volume().unwrap().unwrap();
            let fixed = menu.priced().scaled.fixed;
            let room = brimful.minus(fixed).unwrap().millilitres().over(unit).unwrap();
            let millionths = Exact::new(1_000_000, 0);
            let room = room.times(millionths).unwrap().floor().over(millionths).unwrap();
            Some(if fixed.is_positive() { room } else { room.minus(exact("0.000001")).unwrap() })
        }
        Lever::TrimYield(_) | Lever::PressYield(_) => Some(Exact::ONE),
        Lever::SoakYield(_) => Some(exact("999999999.99999999")),
        Lever::PackPrice(_) | Lever::ContainerSet(_) | Lever::Unsold(_) | Lever::HandsTime(_) => Some(Exact::ZERO),
    }
}

proptest! {
    #![proptest_config(cases(64))]

    #[test]
    fn a_lever_closes_where_it_says_and_not_a_step_before(menu in under_target()) {
        for way in ways(&menu.book, OFFER).unwrap() {
            let (lever, Ok(closing)) = (way.lever, &way.closes) else { continue };
            let number = number(closing);
            let edit = set(&menu.book, lever, number);
            prop_assert_eq!(standing_after(&menu.book, &edit), OfferStatus::OnTarget, "{:?}", way);
            let before = set(&menu.book, lever, number.plus(step_back(lever)).unwrap());
            prop_assert_ne!(standing_after(&menu.book, &before), OfferStatus::OnTarget, "{:?}", way);
            if let Some(edit) = &closing.edit {
                prop_assert_eq!(standing_after(&menu.book, edit), OfferStatus::OnTarget, "{:?}", way);
            }
        }
    }

    #[test]
    fn a_lever_that_cannot_close_alone_misses_at_its_end(menu in under_target()) {
        for way in ways(&menu.book, OFFER).unwrap() {
            match (way.closes, bound(&menu, way.lever)) {
                (Err(WhyNot::CannotCloseAlone), Some(number)) => {
                    let furthest = set(&menu.book, way.lever, number);
                    prop_assert_ne!(standing_after(&menu.book, &furthest), OfferStatus::OnTarget, "{:?}", way.lever);
                }
                (Err(WhyNot::CannotCloseAlone), None) => {
                    let kept = menu.priced().suggestion.is_ok_and(|it| it.menu.major().keeps());
                    prop_assert!(!kept, "a suggested price that a book keeps would do");
                }
                (Err(WhyNot::DoesNotCount), _) => {
                    prop_assert_eq!(way.lever, Lever::HandsTime(drink_id(1)));
                    prop_assert_eq!(menu.book.settings().cost_basis, CostBasis::Goods);
                    let idle = set(&menu.book, way.lever, Exact::ZERO);
                    prop_assert_eq!(standing_after(&menu.book, &idle), OfferStatus::UnderTarget);
                }
                (Ok(_), _) => {}
            }
        }
    }

    #[test]
    fn the_smallest_change_stands_first_and_leads_from_now_to_there(menu in under_target()) {
        let ways = ways(&menu.book, OFFER).unwrap();
        let mut closed = true;
        let mut last = Exact::ZERO;
        for way in &ways {
            prop_assert!(closed || way.closes.is_err(), "one that closes after one that does not");
            closed = way.closes.is_ok();
            let Ok(closing) = &way.closes else { continue };
            let change = closing.change.fraction();
            prop_assert!(change.abs() >= last);
            last = change.abs();
            let there = |now: Exact| now.times(Exact::ONE.plus(change).unwrap()).unwrap();
            let (now, at) = match (way.now, closing.at) {
                (Figure::Money(now), Figure::Money(at)) => (now.major(), at.major()),
                (Figure::Volume(now), Figure::Volume(at)) => (now.millilitres(), at.millilitres()),
                (Figure::Share(now), Figure::Share(at)) => (now.fraction(), at.fraction()),
                (Figure::Time(now), Figure::Time(at)) => (now.seconds(), at.seconds()),
                other => panic!("{other:?}"),
            };
            prop_assert!(near(there(now), at, "0.001"), "{:?}", way);
        }
    }

    /// The price is solved by halving here and by a formula there. A margin is rounded at its
    /// twelfth decimal, so a price may fall short of the formula's by what moves the margin by half
    /// of that: 5e-13 * P / (1 - m - c - f * (1 + t)); and it is rounded up at the eighth.
    #[test]
    fn the_menu_price_is_the_one_suggested(menu in under_target()) {
        let priced = menu.priced();
        let Ok(suggestion) = priced.suggestion else { return Ok(()) };
        prop_assume!(suggestion.menu.major().keeps());
        let ways = ways(&menu.book, OFFER).unwrap();
        let way = ways.iter().find(|way| way.lever == Lever::MenuPrice(OFFER)).unwrap();
        let closing = way.closes.as_ref().unwrap();
        let Figure::Money(at) = closing.at else { panic!("{:?}", closing.at) };
        let left = Exact::ONE.minus(priced.terms.target.fraction()).unwrap().minus(covered_fees(&menu.book)).unwrap();
        let margin_off = suggestion.exact.times(Exact::new(5, 13)).unwrap().over(left).unwrap().major();
        let off = at.minus(suggestion.exact).unwrap().major();
        let step = exact("0.00000001");
        prop_assert!(off <= step && off.plus(margin_off).unwrap().plus(exact("0.000000000001")).unwrap() >= Exact::ZERO);
        let set = Edit::SetPrice { offer: OFFER, price: Some(suggestion.menu) };
        prop_assert_eq!(closing.edit.as_ref(), Some(&set));
    }
}

/// The share of the revenue that fees take from the margin: c + f * (1 + t), or c * (1 + t) of a price with tax.
fn covered_fees(book: &Book) -> Exact {
    let settings = book.settings();
    let rate = settings.tax_of(book.drinks().next().unwrap()).rate;
    let with_tax = Exact::ONE.plus(rate.fraction()).unwrap();
    let commission = match settings.commission_on {
        CommissionBase::WithoutTax => settings.commission.fraction(),
        CommissionBase::WithTax => settings.commission.fraction().times(with_tax).unwrap(),
    };
    let fee = settings.payment_fee.share.fraction().times(with_tax).unwrap();
    match settings.cost_basis {
        CostBasis::Everything => commission.plus(fee).unwrap(),
        CostBasis::Goods | CostBasis::GoodsAndLabour => Exact::ZERO,
    }
}
