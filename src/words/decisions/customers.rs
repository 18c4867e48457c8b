//! What customers face of a decision.

use super::{Decisions, people};
use crate::foundation::measure::{Exact, Money, Share, Volume};
use crate::say;
use crate::sizes::decision::{Customer, Decision, Question};

impl Decisions<'_> {
    /// How many of its buyers would have to turn far. Returns `None` if none would.
    pub fn far(&self, decision: &Decision) -> Option<String> {
        let far = decision.far_buyers().ok().map(people).filter(|far| far.is_positive())?;
        Some(say!(decide::turns_far, buyers = self.speaker.counted(far)))
    }

    /// What those bring more who buy the size that comes already: they pay its new price too. Returns `None` where
    /// that is nothing.
    pub fn others(&self, decision: &Decision) -> Option<String> {
        let (Question::Switch { to: size, .. } | Question::Add { size, .. }) = decision.question else { return None };
        let profit = self.difference(Money::ZERO, decision.others);
        let size = self.size(size);
        match self.gain_shown(Money::ZERO, decision.others) {
            none if none.is_zero() => None,
            less if less.is_negative() => Some(say!(decide::others_pay_less, size = size, profit = profit)),
            _ => Some(say!(decide::others_pay_more, size = size, profit = profit)),
        }
    }

    /// From what to what the prices change that its buyers face. Returns `None` if all face the same.
    pub fn pay_range(&self, decision: &Decision) -> Option<String> {
        let (least, most) = self.apart_in(decision, |customer| customer.change)?;
        Some(say!(decide::pay_range, least = least, most = most))
    }

    /// What its buyers face, by something read of it: "16% more to 76% more".
    pub fn faced_range(&self, decision: &Decision, of: fn(&Customer) -> Share) -> Option<String> {
        let (least, most) = self.apart_in(decision, of)?;
        Some(say!(decide::change_range, least = least, most = most))
    }

    fn apart_in(&self, decision: &Decision, of: fn(&Customer) -> Share) -> Option<(String, String)> {
        let (least, most) = decision.faced(of)?;
        let (least, most) = (self.seen_change(least), self.seen_change(most));
        (least != most).then_some((least, most))
    }

    /// A change of a price as customers see it: "18% less".
    pub fn seen_change(&self, change: Share) -> String {
        let share = self.speaker.short_percent(Share::from_fraction(change.fraction().abs()), 0);
        match change.fraction().rounded(2) {
            none if none.is_zero() => say!(decide::price_same).to_string(),
            less if less.is_negative() => say!(decide::price_less, share = share),
            _ => say!(decide::price_more, share = share),
        }
    }

    /// What buyers who turn to another size pay more or less, for how much.
    pub fn faced(&self, customer: &Customer) -> String {
        let (price, volume) = self.apart(customer);
        match Faced::of(customer) {
            Faced::MoreForMore => say!(decide::buyers_pay_more, price = price, volume = volume),
            Faced::LessForLess => say!(decide::buyers_pay_less, price = price, volume = volume),
            Faced::Else => {
                say!(decide::buyers_pay_else, now = self.money(customer.now), then = self.money(customer.then))
            }
        }
    }

    /// What some of the buyers who turn face, and how many these are.
    pub(super) fn some_face(&self, buyers: Exact, customer: &Customer) -> String {
        let buyers = self.speaker.counted(buyers);
        let (price, volume) = self.apart(customer);
        match Faced::of(customer) {
            Faced::MoreForMore => say!(decide::some_pay_more, buyers = buyers, price = price, volume = volume),
            Faced::LessForLess => say!(decide::some_pay_less, buyers = buyers, price = price, volume = volume),
            Faced::Else => {
                let (now, then) = (self.money(customer.now), self.money(customer.then));
                say!(decide::some_pay_else, buyers = buyers, now = now, then = then)
            }
        }
    }

    /// How far price and volume are apart, without their signs.
    fn apart(&self, customer: &Customer) -> (String, String) {
        (self.without_sign(customer.more), self.speaker.volume(without_sign(customer.more_volume)))
    }
}

/// How what buyers face is told.
#[derive(Clone, Copy)]
enum Faced {
    /// They pay more for more.
    MoreForMore,
    /// They pay less for less.
    LessForLess,
    /// Another price, whatever the size.
    Else,
}

impl Faced {
    fn of(customer: &Customer) -> Faced {
        let (larger, smaller) = (customer.more_volume > Volume::ZERO, customer.more_volume < Volume::ZERO);
        match (customer.more.is_positive(), customer.more.is_negative()) {
            (true, _) if larger => Faced::MoreForMore,
            (_, true) if smaller => Faced::LessForLess,
            _ => Faced::Else,
        }
    }
}

fn without_sign(volume: Volume) -> Volume {
    Volume::from_millilitres(volume.millilitres().abs())
}
