//! What a change makes of the menu, and what it costs once.

use super::Decisions;
use crate::book::{Key, Offer, OfferId};
use crate::drink::sales::Unknown;
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::sizes::decision::{FirstOrder, LeftOver, Payback};
use crate::words::offer_error;

impl Decisions<'_> {
    /// What the new size orders first, of one packaging.
    pub fn first_order(&self, order: &FirstOrder) -> String {
        let name = self.book.name(Key::Packaging(order.packaging));
        match (order.in_use, order.cost) {
            (true, _) => say!(decide::first_order_in_use, name = name),
            (false, Some(cost)) => {
                let packs = self.speaker.counted(order.packs);
                say!(decide::first_order, name = name, packs = packs, cost = self.money(cost))
            }
            (false, None) => say!(decide::first_order_no_price, name = name),
        }
    }

    /// What is left over of one packaging that nothing uses any more.
    pub fn left_over(&self, left: &LeftOver) -> String {
        let name = self.book.name(Key::Packaging(left.packaging));
        match left.cost {
            Some(cost) => say!(decide::leftover_of, name = name, cost = self.money(cost)),
            None => say!(decide::first_order_no_price, name = name),
        }
    }

    /// How long opening stock lasts, also where nothing of it is used.
    pub fn lasts(&self, weeks: Option<Exact>) -> String {
        match weeks {
            Some(weeks) => say!(decide::weeks, weeks = self.speaker.counted(weeks.rounded(1))),
            None => say!(decide::no_sales_yet).to_string(),
        }
    }

    /// When what is paid once is back.
    pub fn payback(&self, payback: &Payback) -> String {
        match payback {
            Payback::Weeks(weeks) => say!(decide::payback_in, weeks = self.speaker.counted(weeks.rounded(1))),
            Payback::AtOnce => say!(decide::payback_now).to_string(),
            Payback::Never => say!(decide::payback_none).to_string(),
        }
    }

    /// What becomes of one drink in a size when the menu is changed. Returns `None` if it stays as it is.
    pub fn becomes(&self, was: Option<&Offer>, then: Option<&Offer>) -> Vec<String> {
        match (was, then) {
            (Some(was), None) => vec![say!(decide::use_removes, offer = self.offer(was.id()))],
            (None, Some(then)) => {
                let (offer, price) = (self.offer(then.id()), self.money(then.price.unwrap_or_default()));
                vec![match then.weekly {
                    Some(sold) => {
                        say!(decide::use_adds, offer = offer, price = price, sold = self.speaker.number(sold))
                    }
                    None => say!(decide::use_adds_unsold, offer = offer, price = price),
                }]
            }
            (Some(was), Some(then)) => {
                let offer = self.offer(then.id());
                let none = || say!(common::none).to_string();
                let money = |price: Option<Money>| price.map_or_else(none, |price| self.money(price));
                let number = |sold: Option<Exact>| sold.map_or_else(none, |sold| self.speaker.number(sold));
                let price = (was.price != then.price)
                    .then(|| say!(decide::use_price, offer = offer, now = money(was.price), then = money(then.price)));
                let sold = (was.weekly != then.weekly).then(|| {
                    say!(decide::use_sells, offer = offer, now = number(was.weekly), then = number(then.weekly))
                });
                price.into_iter().chain(sold).collect()
            }
            (None, None) => Vec::new(),
        }
    }

    /// A drink in a size that does not count, and why.
    pub fn not_counted(&self, offer: OfferId, why: Unknown) -> String {
        let reason = match why {
            Unknown::Stuck(error) => offer_error(&error, self.book),
            Unknown::NoPrice | Unknown::NotOffered => say!(decide::not_counted_price).to_string(),
            Unknown::NoWeekly => say!(decide::not_counted_sales).to_string(),
        };
        say!(decide::not_counted, offer = self.offer(offer), reason = reason)
    }
}
