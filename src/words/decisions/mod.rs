//! Decisions on sizes: what would have to be true, what customers see, and what a change does to the menu.

mod customers;
mod findings;
mod guesses;
mod menu;
mod plans;

use super::scenarios::without_sign;
use super::texts::Number;
use super::{Speaker, number, overflow};
use crate::book::{Book, ContainerId, Key, OfferId};
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::say;
use crate::sizes::decision::{Basis, Decision, Line, NoAnswer, Pays, Question, Row, Swing, Tipping, Verdict};

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

    /// What is asked, as the heading of its page.
    pub fn heading(&self, goes: Option<ContainerId>, comes: Option<ContainerId>, stays: &[ContainerId]) -> String {
        match (goes, comes) {
            _ if !stays.is_empty() => say!(decide::decide_only, size = self.plan_name(stays)),
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
                None if decision.movers < decision.buyers => {
                    say!(decide::drop_pays_can, stay = self.at_least(at))
                }
                None => say!(decide::drop_pays_from, stay = self.at_least(at)),
            },
            Verdict::NeedsNew { buyers, .. } => {
                say!(decide::switch_needs_new, buyers = self.speaker.counted(buyers))
            }
            Verdict::CannotPay { .. } => say!(decide::drop_cannot_pay).to_string(),
            Verdict::CannotPayNew { .. } => say!(decide::add_cannot_pay).to_string(),
            Verdict::AtMost { at } => say!(decide::add_pays_until, taken = self.at_most(at)),
            Verdict::EvenIfAllTaken => say!(decide::add_pays_always).to_string(),
        }
    }

    /// What a week brings against today if all buyers who can stay do, or if all are new.
    pub fn at_best(&self, decision: &Decision) -> String {
        let new = matches!(decision.question, Question::Add { .. });
        let then = match decision.line.at(if new { Share::ZERO } else { Share::WHOLE }) {
            Ok(then) => then,
            Err(error) => return overflow(error),
        };
        let gain = self.gain_shown(decision.now, then);
        let shown = |row: &Row| people(row.weekly.count());
        let buyers = self.in_all(decision.rows.iter().map(shown));
        let profit = self.difference(decision.now, then);
        let less = gain.is_negative();
        if !new && decision.movers < decision.buyers {
            let can = decision.rows.iter().filter(|row| row.then.is_some());
            let cannot = decision.rows.iter().filter(|row| row.then.is_none());
            let [can, cannot] = [can.map(shown).collect(), cannot.map(shown).collect()];
            return self.who_can_stay(can, cannot, profit, gain);
        }
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

    /// What a week brings more or less if those stay who can, and how many leave.
    fn who_can_stay(&self, can: Vec<Exact>, cannot: Vec<Exact>, profit: String, gain: Money) -> String {
        let leave = say!(decide::must_leave, buyers = self.in_all(cannot.into_iter()));
        let nobody = can.is_empty();
        let buyers = self.in_all(can.into_iter());
        let said = match () {
            () if gain.is_zero() => say!(decide::stays_same).to_string(),
            () if gain.is_negative() => say!(decide::can_stay_less, buyers = buyers, profit = profit),
            () if nobody => say!(decide::all_leave_more, profit = profit),
            () => say!(decide::can_stay_more, buyers = buyers, profit = profit),
        };
        [said, leave].join(" ")
    }

    /// Whole buyers together, so that a sum is that of the numbers shown.
    fn in_all(&self, buyers: impl Iterator<Item = Exact>) -> Number {
        self.speaker.counted(buyers.fold(Exact::ZERO, |sum, more| sum.plus(more).unwrap_or(sum)))
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
        let whole = in_whole(now, then);
        let said = |money: Money| {
            if whole { self.speaker.money_of(money.major(), 0) } else { self.money(money) }
        };
        let all = || {
            let [now, then, gain] = self.rounded(now, then)?;
            let sign = if gain.is_positive() { "+" } else { "" };
            Ok::<_, Overflow>([said(now), said(then), [sign, &said(gain)].concat()])
        };
        all().unwrap_or_else(|error| [overflow(error), String::new(), String::new()])
    }

    /// What a week of the whole menu brings against today where a change reaches other drinks than those looked at.
    pub fn whole_menu(&self, now: Money, then: Money) -> String {
        let [_, _, difference] = self.now_and_then(now, then);
        let by = without_sign(&difference);
        match self.gain_shown(now, then) {
            more if more.is_positive() => say!(sales::menu_too_more, profit = by),
            more if more.is_negative() => say!(sales::menu_too_less, profit = by),
            _ => say!(sales::menu_too_same).to_string(),
        }
    }

    /// What a week brings against today without what the answer counts and the owner does not set.
    pub fn without_these(&self, now: Money, then: Money) -> String {
        let [_, _, difference] = self.now_and_then(now, then);
        let by = without_sign(&difference);
        match self.gain_shown(now, then) {
            more if more.is_positive() => say!(sales::alone_more, profit = by),
            more if more.is_negative() => say!(sales::alone_less, profit = by),
            _ => say!(sales::alone_same).to_string(),
        }
    }

    /// Profit a week now, then, and the difference, as they are shown.
    fn rounded(&self, now: Money, then: Money) -> Result<[Money; 3], Overflow> {
        let whole = in_whole(now, then);
        let step = if whole { Money::from_major(Exact::ONE) } else { self.speaker.currency().minor_unit() };
        let rounded = |money: Money| step.times(money.ratio_to(step)?.rounded(0));
        let (now, then) = (rounded(now)?, rounded(then)?);
        Ok([now, then, then.minus(now)?])
    }

    /// How much more a week brings, as it is shown: zero where no difference is to be seen.
    pub fn gain_shown(&self, now: Money, then: Money) -> Money {
        self.rounded(now, then).map(|[_, _, gain]| gain).unwrap_or_default()
    }

    /// How much more or less a week brings, without its sign: that of the figures beside it.
    fn difference(&self, now: Money, then: Money) -> String {
        let [_, _, difference] = self.now_and_then(now, then);
        without_sign(&difference).to_string()
    }

    /// At which answer of buyers to a price it stops paying, or begins to. What cannot pay with the buyers of today
    /// needs others, whom a lower price would have to draw.
    pub fn tipping(&self, tipping: &Tipping, verdict: &Verdict) -> String {
        let (lost, draws) = (self.about(tipping.loses), self.about(tipping.draws));
        match (tipping.pays, verdict) {
            (Pays::IfMoreLeave, Verdict::CannotPay { at: Some(at), .. }) => {
                say!(decide::tips_cannot, draws = draws, buyers = self.speaker.number(of_hundred(*at).ceiling()))
            }
            (Pays::IfFewerLeave, _) => say!(decide::tips_if_fewer, lost = lost),
            (Pays::IfMoreLeave, _) => say!(decide::tips_if_more, draws = draws),
        }
    }

    /// The name of what is kept of a decision: what is asked, and the share that its sales assume.
    pub fn name_with(&self, name: &str, question: &Question, share: Share) -> String {
        let buyers = of_100(share, self.speaker);
        match question {
            Question::Add { .. } => say!(decide::named_taken, name = name, buyers = buyers),
            Question::Switch { .. } => say!(decide::named_per_100, name = name, buyers = buyers),
            Question::Drop { .. } | Question::Keep { .. } => {
                say!(decide::named_staying, name = name, buyers = buyers)
            }
        }
    }

    /// What the weekly sales of a decision assume, where it would change them.
    pub fn assumes(&self, question: &Question, share: Share) -> String {
        let buyers = of_100(share, self.speaker);
        match question {
            Question::Add { .. } => say!(decide::use_assumes_taken, buyers = buyers),
            Question::Switch { .. } => say!(decide::use_assumes_per_100, buyers = buyers),
            Question::Drop { .. } | Question::Keep { .. } => say!(decide::use_assumes, buyers = buyers),
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
    pub fn swing(&self, swing: &Swing, now: Money, then: Money) -> String {
        let gain = then.minus(now).unwrap_or_default();
        let weeks = self.speaker.counted(Exact::from(swing.weeks));
        let said = say!(decide::weeks_swing, weeks = weeks, swing = self.money(swing.deviation));
        let hidden = (gain.major().abs() < swing.deviation.major())
            .then(|| say!(decide::hidden_in_swing, gain = self.difference(now, then)));
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
            NoAnswer::NobodyCanStay { lost, .. } => say!(decide::no_answer_nobody, profit = self.money(*lost)),
            NoAnswer::NoPrice(offers) => say!(decide::no_answer_price, drink = first(offers)),
            NoAnswer::Arithmetic(error) => overflow(*error),
        }
    }
}

/// Whether profits are shown in whole units of the currency: from a thousand on.
fn in_whole(now: Money, then: Money) -> bool {
    let thousand = Exact::new(1000, 0);
    now.major().abs() >= thousand || then.major().abs() >= thousand
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

/// Where it breaks even, in whole buyers of a hundred, wherever it is said or drawn: up to a whole one of those who
/// must stay, since one fewer would not pay; down to a whole one of those who may come from other sizes.
pub fn even_whole(at: Share, question: &Question) -> Exact {
    let hundred = of_hundred(at);
    if matches!(question, Question::Add { .. }) { hundred.floor() } else { hundred.ceiling() }
}

/// Where it breaks even, on a scale of buyers of a hundred.
pub fn even_at(at: Share, question: &Question, speaker: &Speaker) -> String {
    say!(decide::breaks_even_at, buyers = speaker.number(even_whole(at, question)))
}

/// The same in a few words; no number where no share of those of today would do, or any would.
pub fn even_short(at: Share, question: &Question, speaker: &Speaker) -> String {
    let whole = even_whole(at, question);
    match question {
        Question::Switch { .. } => even_at(at, question, speaker),
        _ if !whole.is_negative() && whole <= HUNDRED => even_at(at, question, speaker),
        Question::Drop { .. } | Question::Keep { .. } if whole > HUNDRED => say!(decide::stay_over).to_string(),
        _ => String::new(),
    }
}

/// People, or what they buy, in whole ones; one where there are fewer.
pub fn people(number: Exact) -> Exact {
    let whole = number.rounded(0);
    if whole.is_zero() && number.is_positive() { Exact::ONE } else { whole }
}

/// A share that a slider stands at, in buyers of a hundred.
pub fn of_100(share: Share, speaker: &Speaker) -> String {
    speaker.number(of_hundred(share).rounded(1))
}
