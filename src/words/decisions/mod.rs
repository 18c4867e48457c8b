//! Decisions on sizes: what would have to be true, what customers see, and what a change does to the menu.

mod findings;
mod menu;
mod plans;

use super::texts::Number;
use super::{Speaker, number, overflow};
use crate::book::{Book, ContainerId, Key, OfferId};
use crate::foundation::measure::{Exact, Money, Overflow, Share, Volume};
use crate::say;
use crate::sizes::decision::{Basis, Customer, Decision, Line, NoAnswer, Pays, Question, Swing, Tipping, Verdict};

/// A hundred.
const HUNDRED: Exact = Exact::new(100, 0);

/// Words about decisions on the sizes of a book.
pub struct Decisions<'a> {
    /// The book, for names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Decisions<'_> {
    /// The name of a size.
    pub fn size(&self, id: ContainerId) -> String {
        self.book.name(Key::Container(id))
    }

    fn offer(&self, id: OfferId) -> String {
        self.book.name(Key::Offer(id))
    }

    fn money(&self, money: Money) -> String {
        self.speaker.money(money)
    }

    fn without_sign(&self, money: Money) -> String {
        self.speaker.money(Money::from_major(money.major().abs()))
    }

    /// A number of drinks a week, to one decimal.
    fn drinks(&self, number: Exact) -> Number {
        self.speaker.counted(number.rounded(1))
    }

    /// What is asked, as the heading of its page.
    pub fn heading(&self, goes: Option<ContainerId>, comes: Option<ContainerId>, stays: Option<ContainerId>) -> String {
        match (goes, comes) {
            _ if stays.is_some() => {
                say!(decide::decide_only, size = stays.map(|size| self.size(size)).unwrap_or_default())
            }
            (Some(from), Some(to)) => say!(decide::decide_switch, from = self.size(from), to = self.size(to)),
            (Some(size), None) => say!(decide::decide_drop, size = self.size(size)),
            (None, Some(size)) => say!(decide::decide_add, size = self.size(size)),
            (None, None) => say!(decide::decide_sizes).to_string(),
        }
    }

    /// What must be true for it to pay, in one sentence.
    pub fn verdict(&self, decision: &Decision) -> String {
        let switch = matches!(decision.question, Question::Switch { .. });
        match decision.verdict {
            Verdict::EvenIfAllLeave => say!(decide::pays_if_all_leave).to_string(),
            Verdict::AtLeast { .. } if switch => match decision.may_lose() {
                Ok(Some(buyers)) if buyers.is_positive() => {
                    say!(decide::switch_may_lose, buyers = self.speaker.counted(buyers))
                }
                Ok(_) => say!(decide::switch_may_lose_none).to_string(),
                Err(error) => overflow(error),
            },
            Verdict::AtLeast { at } => match turns_to(decision) {
                Some(size) => say!(decide::drop_pays_to, stay = self.at_least(at), size = self.size(size)),
                None => say!(decide::drop_pays_from, stay = self.at_least(at)),
            },
            Verdict::NeedsNew { buyers, .. } => {
                say!(decide::switch_needs_new, buyers = self.speaker.counted(buyers))
            }
            Verdict::CannotPay { .. } | Verdict::CannotPayNew { .. } => say!(decide::drop_cannot_pay).to_string(),
            Verdict::AtMost { at } => say!(decide::add_pays_until, taken = self.at_most(at)),
            Verdict::EvenIfAllTaken => say!(decide::add_pays_always).to_string(),
        }
    }

    /// What a week brings against today if all buyers stay, or if all are new.
    pub fn at_best(&self, decision: &Decision) -> String {
        let new = matches!(decision.question, Question::Add { .. });
        let gain = match decision.gain(if new { Share::ZERO } else { Share::WHOLE }) {
            Ok(gain) => gain,
            Err(error) => return overflow(error),
        };
        let (buyers, profit) = (self.drinks(decision.buyers), self.without_sign(gain));
        let less = gain.is_negative();
        match (turns_to(decision), new) {
            _ if gain.is_zero() => say!(decide::stays_same).to_string(),
            (_, true) if less => say!(decide::all_new_less, buyers = buyers, profit = profit),
            (_, true) => say!(decide::all_new_more, buyers = buyers, profit = profit),
            (Some(size), _) if less => {
                say!(decide::all_take_less, buyers = buyers, profit = profit, size = self.size(size))
            }
            (Some(size), _) => say!(decide::all_take_more, buyers = buyers, profit = profit, size = self.size(size)),
            (None, _) if less => say!(decide::all_stay_less, buyers = buyers, profit = profit),
            (None, _) => say!(decide::all_stay_more, buyers = buyers, profit = profit),
        }
    }

    /// Of a hundred buyers, up: so many are enough.
    pub fn at_least(&self, share: Share) -> Number {
        self.speaker.counted(of_hundred(share).ceiling())
    }

    /// Of a hundred buyers, down: so many are not too many.
    pub fn at_most(&self, share: Share) -> Number {
        self.speaker.counted(of_hundred(share).floor())
    }

    /// Of a hundred buyers, as near as it gets.
    fn about(&self, share: Share) -> Number {
        self.speaker.counted(of_hundred(share).rounded(0))
    }

    /// Profit a week now, then, and the difference, with its sign: in whole units of the currency from a thousand on.
    /// The difference is that of the two figures beside it.
    pub fn now_and_then(&self, now: Money, then: Money) -> [String; 3] {
        let thousand = Exact::new(1000, 0);
        let whole = now.major().abs() >= thousand || then.major().abs() >= thousand;
        let step = if whole { Money::from_major(Exact::ONE) } else { self.speaker.currency().minor_unit() };
        let rounded = |money: Money| step.times(money.ratio_to(step)?.rounded(0));
        let said = |money: Money| {
            if whole { self.speaker.money_of(money.major(), 0) } else { self.money(money) }
        };
        let all = || {
            let (now, then) = (rounded(now)?, rounded(then)?);
            let gain = then.minus(now)?;
            let sign = if gain.is_positive() { "+" } else { "" };
            Ok::<_, Overflow>([said(now), said(then), [sign, &said(gain)].concat()])
        };
        all().unwrap_or_else(|error| [overflow(error), String::new(), String::new()])
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
        let (price, volume) =
            (self.without_sign(customer.more), self.speaker.volume(without_sign(customer.more_volume)));
        let (dearer, larger) = (customer.more.is_positive(), customer.more_volume > Volume::ZERO);
        let smaller = customer.more_volume < Volume::ZERO;
        match (dearer, customer.more.is_negative()) {
            (true, _) if larger => say!(decide::buyers_pay_more, price = price, volume = volume),
            (_, true) if smaller => say!(decide::buyers_pay_less, price = price, volume = volume),
            _ => say!(decide::buyers_pay_else, now = self.money(customer.now), then = self.money(customer.then)),
        }
    }

    /// At which answer of buyers to a price it stops paying, or begins to.
    pub fn tipping(&self, tipping: &Tipping) -> String {
        let lost = self.about(tipping.loses);
        match tipping.pays {
            Pays::IfFewerLeave => say!(decide::tips_if_fewer, lost = lost),
            Pays::IfMoreLeave => say!(decide::tips_if_more, lost = lost),
        }
    }

    /// How the break-even came about.
    pub fn math(&self, decision: &Decision, at: Share) -> String {
        let Line { intercept, slope } = decision.line;
        let (now, rest, share) = (self.money(decision.now), self.money(intercept), self.speaker.percent(at));
        if matches!(decision.question, Question::Add { .. }) {
            say!(decide::math_add, all = rest, now = now, taken = self.without_sign(slope), share = share)
        } else {
            say!(decide::math_drop, now = now, kept = rest, all = self.money(slope), share = share)
        }
    }

    /// Where the weekly sales of a decision come from.
    pub fn sales_basis(&self, decision: &Decision) -> String {
        match decision.rows.iter().map(|row| row.weekly.basis).find(|basis| matches!(basis, Basis::Weeks(_))) {
            Some(Basis::Weeks(weeks)) => {
                say!(decide::sales_from_weeks, weeks = self.speaker.counted(Exact::from(weeks)))
            }
            _ => say!(decide::sales_as_typed).to_string(),
        }
    }

    /// How far weeks swing, and whether a difference can be seen in one of them.
    pub fn swing(&self, swing: &Swing, gain: Money) -> String {
        let weeks = self.speaker.counted(Exact::from(swing.weeks));
        let said = say!(decide::weeks_swing, weeks = weeks, swing = self.money(swing.deviation));
        let hidden = (gain.major().abs() < swing.deviation.major())
            .then(|| say!(decide::hidden_in_swing, gain = self.without_sign(gain)));
        [said].into_iter().chain(hidden).collect::<Vec<_>>().join(" ")
    }

    /// Why there is no answer, and what to type.
    pub fn no_answer(&self, why: &NoAnswer) -> String {
        let first = |offers: &[OfferId]| offers.first().map(|id| self.offer(*id)).unwrap_or_default();
        match why {
            NoAnswer::NoSales(_) => say!(decide::no_answer_sales).to_string(),
            NoAnswer::NoWeeks | NoAnswer::OneWeek => say!(decide::swing_needs_weeks).to_string(),
            NoAnswer::OneSize(size) => say!(decide::no_answer_one_size, size = self.size(*size)),
            NoAnswer::NotSold(size) => say!(decide::no_answer_not_sold, size = self.size(*size)),
            NoAnswer::SameSize(size) => say!(decide::no_answer_same, size = self.size(*size)),
            NoAnswer::NothingLeft(offers) => say!(decide::no_answer_nothing_left, drink = first(offers)),
            NoAnswer::NobodyCanStay { .. } => say!(decide::no_answer_nobody).to_string(),
            NoAnswer::NoPrice(_) => say!(decide::no_answer_price).to_string(),
            NoAnswer::Arithmetic(error) => overflow(*error),
        }
    }
}

/// The one size that all buyers turn to. Returns `None` if they turn to several, or to none.
fn turns_to(decision: &Decision) -> Option<ContainerId> {
    let mut sizes = decision.rows.iter().map(|row| row.then.map(|then| then.offer.container));
    let first = sizes.next()??;
    sizes.all(|size| size == Some(first)).then_some(first)
}

/// A share up to the next whole hundredth.
fn up_to_one(share: Share) -> Share {
    of_hundred(share).ceiling().over(HUNDRED).map_or(share, Share::from_fraction)
}

fn of_hundred(share: Share) -> Exact {
    share.fraction().times(HUNDRED).unwrap_or_default().rounded(6)
}

fn without_sign(volume: Volume) -> Volume {
    Volume::from_millilitres(volume.millilitres().abs())
}

/// How many sizes: "Two sizes".
pub fn sizes(count: usize) -> String {
    say!(decide::count_of_sizes, sizes = count)
}

/// Money to the currency's smallest unit, as a field shows it. Returns an empty text if it is none.
pub fn to_cent(money: Money, speaker: &Speaker) -> String {
    let cent = speaker.currency().minor_unit();
    let rounded = || cent.times(money.ratio_to(cent)?.rounded(0));
    let money = rounded().unwrap_or(money);
    if money.is_zero() { String::new() } else { speaker.plain_money(money) }
}

/// How many things there are.
pub fn count(things: usize) -> String {
    number(things)
}

/// Where it breaks even, on a scale of buyers of a hundred: up to a whole one of those who must stay, down to a whole
/// one of those who may come from other sizes.
pub fn even_at(at: Share, question: &Question, speaker: &Speaker) -> String {
    let hundred = of_hundred(at);
    let whole = if matches!(question, Question::Add { .. }) { hundred.floor() } else { hundred.ceiling() };
    say!(decide::breaks_even_at, buyers = speaker.number(whole))
}

/// A share that a slider stands at, in buyers of a hundred.
pub fn of_100(share: Share, speaker: &Speaker) -> String {
    speaker.number(of_hundred(share).rounded(1))
}
