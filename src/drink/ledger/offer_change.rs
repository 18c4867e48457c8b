//! What an edit moved: each offer before and after.

use super::{OfferError, OfferStatus, Priced};
use crate::book::OfferId;
use crate::foundation::measure::{Exact, Money, Share};

/// An offer on one side of an edit.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Snapshot {
    /// Where it stands.
    pub status: OfferStatus,
    /// Its full cost.
    pub cost: Option<Money>,
    /// Its cost on the terms of its margin.
    pub covered: Option<Money>,
    /// Its margin at the price asked.
    pub margin: Option<Share>,
    /// The margin that it is to reach.
    pub target: Option<Share>,
    /// The menu price suggested.
    pub suggested: Option<Money>,
    /// The menu price asked.
    pub price: Option<Money>,
}

/// An offer that an edit moved.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OfferChange {
    /// The offer.
    pub offer: OfferId,
    /// The offer before the edit, or `None` if there was none.
    pub before: Option<Snapshot>,
    /// The offer after the edit, or `None` if there is none any more.
    pub after: Option<Snapshot>,
}

impl Snapshot {
    fn of(result: &Result<Priced, OfferError>) -> Snapshot {
        let priced = result.as_ref().ok();
        Snapshot {
            status: OfferStatus::from(result),
            cost: priced.map(|priced| priced.cost.total()),
            covered: priced.and_then(|priced| priced.covered().ok()),
            margin: priced.and_then(Priced::margin),
            target: priced.map(|priced| priced.terms.target),
            suggested: priced.and_then(|priced| priced.suggestion.ok()).map(|suggestion| suggestion.menu),
            price: priced.and_then(|priced| priced.asked).map(|asked| asked.menu),
        }
    }
}

impl OfferChange {
    pub(super) fn new(
        offer: OfferId,
        before: Option<&Result<Priced, OfferError>>,
        after: Option<&Result<Priced, OfferError>>,
    ) -> OfferChange {
        OfferChange { offer, before: before.map(Snapshot::of), after: after.map(Snapshot::of) }
    }

    /// Whether it fell under target with this edit.
    pub fn fell(&self) -> bool {
        let under =
            |snapshot: &Option<Snapshot>| snapshot.is_some_and(|snapshot| snapshot.status == OfferStatus::UnderTarget);
        under(&self.after) && !under(&self.before)
    }

    /// Whether it was under target and came back to it with this edit.
    pub fn rose(&self) -> bool {
        let stands = |snapshot: &Option<Snapshot>| snapshot.map(|snapshot| snapshot.status);
        (stands(&self.before), stands(&self.after)) == (Some(OfferStatus::UnderTarget), Some(OfferStatus::OnTarget))
    }

    /// Those that fell under target first, then those under target before and after, then the
    /// rest; within each the lowest margin first.
    pub fn worst_first(mut moves: Vec<OfferChange>) -> Vec<OfferChange> {
        moves.sort_unstable_by_key(|moved| {
            let after = moved.after;
            let under = after.is_some_and(|snapshot| snapshot.status == OfferStatus::UnderTarget);
            let margin = after.and_then(|snapshot| snapshot.margin).map_or(Exact::ONE, Share::fraction);
            (!moved.fell(), !under, margin, moved.offer)
        });
        moves
    }
}

#[cfg(test)]
mod tests {
    use crate::book::{Book, Edit, Goods, Key, OfferId, Record};
    use crate::drink::ledger::{Ledger, OfferChange, OfferStatus};
    use crate::support::{
        book, container, container_id, drink, ingredient, ingredient_id, line, money, offer, offer_id, pack, pack_id,
        settings,
    };

    /// Drinks of one litre at these prices. Drinks 1 to 5 cost 1.00 (ingredient 1), drink 6 costs
    /// 1.00 of ingredient 2; the target is 65 %.
    fn bar(prices: [Option<&str>; 6]) -> Book {
        let start = [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "1")])),
            Record::Ingredient(ingredient(2, [pack(1, "1 L", "1")])),
            Record::Container(container(1, "1 L")),
        ];
        let drinks = (1..).zip(prices).flat_map(|(id, price)| {
            let of = if id == 6 { 2 } else { 1 };
            [Record::Drink(drink(id, "1 L", [line(1, of, "1 L")])), Record::Offer(offer(id, 1, price))]
        });
        book(settings(), start.into_iter().chain(drinks))
    }

    fn refresh(book: &mut Book, edit: Edit) -> Vec<OfferChange> {
        let mut ledger = Ledger::of(book);
        let applied = book.apply(&edit).unwrap();
        ledger.refresh(book, &applied.touched)
    }

    fn price(ingredient: u64, price: &str) -> Edit {
        Edit::SetPackPrice {
            goods: Goods::Ingredient(ingredient_id(ingredient)),
            pack: pack_id(1),
            price: money(price),
            day: None,
        }
    }

    fn order(moves: &[OfferChange]) -> Vec<OfferId> {
        moves.iter().map(|moved| moved.offer).collect()
    }

    #[test]
    fn those_that_fell_stand_first_the_worst_of_them_ahead() {
        // At a cost of 1.00 a price of 2.857... is on target; at 1.50, 4.285...: 2 was under
        // before, 3 and 4 fall, 1 and 5 hold or have no price; 6 does not move.
        let mut book = bar([Some("9"), Some("2"), Some("4"), Some("3"), None, Some("9")]);
        let moves = refresh(&mut book, price(1, "1.50"));
        assert_eq!(order(&moves), [4, 3, 2, 1, 5].map(|drink| offer_id(drink, 1)));
        assert_eq!(moves.iter().map(OfferChange::fell).collect::<Vec<_>>(), [true, true, false, false, false]);
        let (before, after) = (moves[0].before.unwrap(), moves[0].after.unwrap());
        assert_eq!((before.cost, after.cost), (Some(money("1")), Some(money("1.5"))));
        assert_eq!((before.status, after.status), (OfferStatus::OnTarget, OfferStatus::UnderTarget));
        assert_eq!((before.price, after.price), (Some(money("3")), Some(money("3"))));
        assert_eq!(after.margin.map(|margin| margin.fraction()), Some(crate::support::exact("0.5")));
        assert_eq!(after.suggested, Some(money("4.29")));
    }

    #[test]
    fn those_under_target_stand_before_those_on_it() {
        // Drink 1 wants 90 % and has 80, drink 2 wants 30 % and has 50.
        let mut book = bar([Some("7.50"), Some("3"), None, None, None, None]);
        for (id, target) in [(1, "0.9"), (2, "0.3")] {
            let own = crate::book::Drink {
                target: Some(crate::support::share(target)),
                ..drink(id, "1 L", [line(1, 1, "1 L")])
            };
            book.apply(&Edit::Put(Record::Drink(own))).unwrap();
        }
        let moves = refresh(&mut book, price(1, "1.50"));
        assert_eq!(order(&moves)[..2], [offer_id(1, 1), offer_id(2, 1)]);
        assert!(moves.iter().all(|moved| !moved.fell()));
    }

    #[test]
    fn a_fall_in_cost_lets_none_fall() {
        let mut book = bar([Some("3"), Some("2"), None, None, None, None]);
        let moves = refresh(&mut book, price(1, "0.50"));
        assert!(moves.iter().all(|moved| !moved.fell()));
        // Of 2.00 half is left, then three quarters; 3.00 was on target before.
        assert_eq!(moves.iter().map(OfferChange::rose).collect::<Vec<_>>(), [true, false, false, false, false]);
        assert_eq!(moves.len(), 5);
    }

    #[test]
    fn an_offer_taken_out_or_put_in_has_one_side() {
        let mut book = bar([Some("2"); 6]);
        let moves = refresh(&mut book, Edit::Remove(Key::Offer(offer_id(1, 1))));
        assert_eq!((order(&moves), moves[0].after), (vec![offer_id(1, 1)], None));
        assert!(!moves[0].fell());
        let moves = refresh(&mut book, Edit::Put(Record::Offer(offer(1, 1, Some("2")))));
        assert_eq!((moves[0].offer.container, moves[0].before), (container_id(1), None));
        assert!(moves[0].fell(), "an offer that comes in under target is news too");
    }

    #[test]
    fn the_settings_move_every_offer() {
        let mut book = bar([Some("3"); 6]);
        let strict = crate::book::Settings { target: crate::support::share("0.7"), ..settings() };
        let moves = refresh(&mut book, Edit::Put(Record::Settings(Box::new(strict))));
        assert_eq!(moves.len(), 6);
        assert!(moves.iter().all(OfferChange::fell));
    }
}
