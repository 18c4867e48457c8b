//! Questions answered: drop, switch, add, keep.

use super::NoAnswer;
use super::answer::{Customer, Decision, Question, Row};
use super::line::{Line, Verdict};
use super::menu::{Earns, MenuToday, SoldToday, nearest, times};
use super::weekly::WeeklySales;
use crate::book::{ContainerId, OfferId};
use crate::drink::sales::Unknown;
use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// What is summed while the rows of an answer are made.
#[derive(Default)]
struct Sums {
    rows: Vec<Row>,
    unknown: Vec<(OfferId, Unknown)>,
    buyers: Exact,
    movers: Exact,
    now: Money,
    brings: Money,
    others: Money,
}

impl Sums {
    fn add(&mut self, row: Row) -> Result<(), Overflow> {
        let count = row.weekly.count();
        self.buyers = self.buyers.plus(count)?;
        self.now = self.now.plus(row.brought()?)?;
        if row.then.is_some() {
            self.movers = self.movers.plus(count)?;
            self.brings = self.brings.plus(row.brings()?)?;
        }
        self.rows.push(row);
        Ok(())
    }

    /// Without one buyer there is nothing to answer by.
    fn with_sales(&self) -> Result<(), NoAnswer> {
        if self.buyers.is_positive() {
            return Ok(());
        }
        Err(NoAnswer::NoSales(self.rows.iter().filter_map(|row| Some(row.now?.offer)).collect()))
    }
}

impl MenuToday<'_> {
    /// The answer to a question.
    ///
    /// # Errors
    /// A [`NoAnswer`] that names what to fill in.
    pub fn answer(&self, question: &Question) -> Result<Decision, NoAnswer> {
        match question {
            Question::Drop { size } => {
                let stays: Vec<ContainerId> = self.sizes().iter().copied().filter(|other| other != size).collect();
                self.going(question, &[*size], &stays)
            }
            Question::Keep { sizes } => {
                let goes: Vec<ContainerId> = self.sizes().iter().copied().filter(|it| !sizes.contains(it)).collect();
                self.going(question, &goes, sizes)
            }
            Question::Switch { from, to } => self.switching(*from, *to),
            Question::Add { size, taken_from } => self.adding(*size, *taken_from),
        }
    }

    /// Some sizes go; their buyers turn to those that stay, or leave.
    fn going(&self, question: &Question, goes: &[ContainerId], stays: &[ContainerId]) -> Result<Decision, NoAnswer> {
        let concerned = || self.sold().iter().filter(|sold| goes.contains(&sold.offer().container));
        if concerned().next().is_none() {
            return Err(self.not_sold(goes));
        }
        if let (true, [only, ..]) = (stays.is_empty(), goes) {
            return Err(NoAnswer::OneSize(*only));
        }
        let after = self.after(stays)?;
        let mut sums = Sums::default();
        let mut taken = Money::ZERO;
        for change in &after.turns {
            let (sold, weekly) = (change.sold, change.sold.weekly);
            let left = weekly.count().minus(change.count)?;
            let weekly = if left.is_zero() { weekly } else { WeeklySales { number: Some(change.count), ..weekly } };
            let more = self.more_of(change.to)?;
            sums.add(self.row(weekly, Some(sold.earns), change.to, change.chosen, more)?)?;
            taken = taken.plus(times(sold.earns.profit, left)?)?;
        }
        sums.unknown = self.unknown_in(goes).chain(after.unknown).collect();
        sums.now = sums.now.plus(taken)?;
        let intercept = after.line.intercept.minus(after.stayed)?;
        let line = Line { intercept, ..after.line };
        sums.others = self.others(goes)?;
        self.of_staying(question, sums, line, |now, line, _| Verdict::of_staying(now, line))
    }

    /// One size in place of another, for each drink that can be had in the other.
    fn switching(&self, from: ContainerId, to: ContainerId) -> Result<Decision, NoAnswer> {
        if from == to {
            return Err(NoAnswer::SameSize(from));
        }
        let mut sums = Sums { unknown: self.unknown_in(&[from]).collect(), ..Sums::default() };
        let mut concerned = self.sold().iter().filter(|sold| sold.offer().container == from).peekable();
        if concerned.peek().is_none() {
            return Err(self.not_sold(&[from]));
        }
        for sold in concerned {
            let (to, chosen) = match self.told.turn(sold.offer()) {
                Some(turn) => (turn.filter(|to| *to != from), true),
                None => (Some(to), false),
            };
            self.turn(&mut sums, sold, to, chosen)?;
        }
        if sums.rows.is_empty() {
            return Err(NoAnswer::NoPrice(sums.unknown.iter().map(|(offer, _)| *offer).collect()));
        }
        let fewer = usize::from(self.sizes().contains(&to));
        sums.others = self.others(&[from])?;
        let line = Line { intercept: self.kept(fewer)?.plus(sums.others)?, slope: sums.brings };
        self.of_staying(&Question::Switch { from, to }, sums, line, Verdict::of_switch)
    }

    /// A size comes, for the drinks of which sales in it are expected.
    fn adding(&self, size: ContainerId, taken_from: Option<ContainerId>) -> Result<Decision, NoAnswer> {
        let mut sums = Sums::default();
        let (mut without, mut none, mut others) = (Vec::new(), Vec::new(), Vec::<OfferId>::new());
        let mut today = Money::ZERO;
        for drink in self.book.drinks().filter(|drink| self.book.belongs(drink.id, self.scope)) {
            let offer = OfferId { drink: drink.id, container: size };
            if self.sold_as(offer).is_some() {
                continue;
            }
            let Some(expected) = self.told.weekly(offer) else {
                without.push(offer);
                continue;
            };
            // None expected: it is not to be sold in it.
            if expected.is_zero() {
                none.push(offer);
                continue;
            }
            let then = match self.then(offer)? {
                Ok(then) => then,
                Err(why) => {
                    sums.unknown.push((offer, why));
                    continue;
                }
            };
            let here = self.sold_of(drink.id).iter();
            let other = match taken_from {
                Some(from) => self.sold_as(OfferId { drink: drink.id, container: from }),
                None => nearest(then.poured, here.map(|sold| &sold.earns))?.and_then(|near| self.sold_as(near.offer)),
            };
            if let Some(other) = other.filter(|other| !others.contains(&other.offer())) {
                others.push(other.offer());
                today = today.plus(other.profit()?)?;
            }
            let now = other.map(|other| other.then);
            let row = self.row(WeeklySales::told(expected), now, Some(then), taken_from.is_some(), Money::ZERO)?;
            let row = Row { break_even: now.map(|now| taken(&now, &then)).transpose()?.flatten(), ..row };
            sums.add(row)?;
        }
        if sums.rows.is_empty() && !sums.unknown.is_empty() {
            return Err(NoAnswer::NoPrice(sums.unknown.iter().map(|(offer, _)| *offer).collect()));
        }
        if sums.rows.is_empty() {
            let missing = if none.is_empty() { without } else { none };
            return Err(if missing.is_empty() { NoAnswer::SameSize(size) } else { NoAnswer::NoSales(missing) });
        }
        if !sums.brings.is_positive() {
            return Err(NoAnswer::NothingLeft(losing(&sums.rows)));
        }
        let further = usize::from(!self.sizes().contains(&size));
        sums.others = self.others(&[])?;
        let intercept = today.plus(sums.brings)?.minus(self.kept(further)?)?.plus(sums.others)?;
        let line = Line { intercept, slope: Money::ZERO.minus(sums.now)? };
        let verdict = Verdict::of_adding(today, &line)?;
        let mut counted = sums.rows.iter().filter(|row| row.now.is_some()).map(|row| row.weekly.count());
        let movers = counted.try_fold(Exact::ZERO, Exact::plus)?;
        Ok(Decision {
            question: Question::Add { size, taken_from },
            scope: self.scope,
            buyers: sums.buyers,
            movers,
            now: today,
            line,
            verdict,
            rows: sums.rows,
            unknown: sums.unknown,
            keeping: self.told.keeping,
            others: sums.others,
        })
    }

    /// The answer where buyers stay or leave.
    fn of_staying(
        &self,
        question: &Question,
        sums: Sums,
        line: Line,
        verdict: fn(Money, &Line, Exact) -> Result<Verdict, Overflow>,
    ) -> Result<Decision, NoAnswer> {
        sums.with_sales()?;
        let lost = sums.now.minus(line.intercept)?;
        if sums.movers.is_positive() && !line.slope.is_positive() {
            return Err(NoAnswer::NothingLeft(losing(&sums.rows)));
        }
        if !sums.movers.is_positive() && lost.is_positive() {
            let nowhere = sums.rows.iter().filter_map(|row| Some(row.now?.offer));
            return Err(NoAnswer::NobodyCanStay { offers: nowhere.collect(), lost });
        }
        let verdict = verdict(sums.now, &line, sums.movers)?;
        Ok(Decision {
            question: question.clone(),
            scope: self.scope,
            buyers: sums.buyers,
            movers: sums.movers,
            now: sums.now,
            line,
            verdict,
            rows: sums.rows,
            unknown: sums.unknown,
            keeping: self.told.keeping,
            others: sums.others,
        })
    }

    /// Adds the buyers of an offer who turn to another size of their drink, or leave. What cannot be computed
    /// there is not counted.
    fn turn(&self, sums: &mut Sums, sold: &SoldToday, to: Option<ContainerId>, chosen: bool) -> Result<(), Overflow> {
        let then = match to {
            None => None,
            Some(container) => match self.then(OfferId { container, ..sold.offer() })? {
                Ok(then) => Some(then),
                Err(why) => {
                    sums.unknown.push((OfferId { container, ..sold.offer() }, why));
                    return Ok(());
                }
            },
        };
        let more = self.more_of(then)?;
        sums.add(self.row(sold.weekly, Some(sold.earns), then, chosen, more)?)
    }

    /// What those who already buy an offer bring more in a week at the price typed for it.
    fn more_of(&self, then: Option<Earns>) -> Result<Money, Overflow> {
        then.and_then(|then| self.sold_as(then.offer)).map_or(Ok(Money::ZERO), SoldToday::more)
    }

    /// The buyers of one drink in one size; `more` is what others bring more in a week where these turn to.
    fn row(
        &self,
        weekly: WeeklySales,
        now: Option<Earns>,
        then: Option<Earns>,
        chosen: bool,
        more: Money,
    ) -> Result<Row, Overflow> {
        let per = self.book.settings().units.price_volume();
        let both = now.zip(then);
        let customer = both.map(|(now, then)| Customer::between(&now, &then, per)).transpose()?;
        let break_even = both.filter(|(_, then)| then.profit.is_positive());
        let alone = |(now, then): (Earns, Earns)| {
            let count = weekly.count();
            if more.is_zero() || !count.is_positive() {
                return now.profit.ratio_to(then.profit);
            }
            let needed = times(now.profit, count)?.minus(more)?;
            Ok(needed.ratio_to(times(then.profit, count)?)?.max(Exact::ZERO))
        };
        let break_even = break_even.map(alone).transpose()?;
        Ok(Row { weekly, now, then, chosen, break_even: break_even.map(Share::from_fraction), more, customer })
    }

    /// The offers in some sizes that are not counted, and why.
    fn unknown_in<'b>(&'b self, sizes: &'b [ContainerId]) -> impl Iterator<Item = (OfferId, Unknown)> + 'b {
        self.unknown().iter().copied().filter(|(offer, _)| sizes.contains(&offer.container))
    }

    /// Why nothing is sold in some sizes: no price is asked, or none of them is on the menu.
    fn not_sold(&self, sizes: &[ContainerId]) -> NoAnswer {
        let without: Vec<OfferId> = self.unknown_in(sizes).map(|(offer, _)| offer).collect();
        match sizes.first() {
            Some(size) if without.is_empty() => NoAnswer::NotSold(*size),
            _ => NoAnswer::NoPrice(without),
        }
    }

    /// What keeping so many sizes costs in a week.
    pub(super) fn kept(&self, sizes: usize) -> Result<Money, Overflow> {
        times(self.told.keeping, Exact::from(u32::try_from(sizes).map_err(|_| Overflow::TooLarge)?))
    }

    /// What the buyers of the other sizes bring more at the prices typed for them, all of them staying.
    fn others(&self, goes: &[ContainerId]) -> Result<Money, Overflow> {
        let others = self.sold().iter().filter(|sold| !goes.contains(&sold.offer().container));
        others.map(SoldToday::more).try_fold(Money::ZERO, |all, more| all.plus(more?))
    }
}

/// The share that a further size may take of a drink's own buyers: p_b / p_a.
fn taken(now: &Earns, then: &Earns) -> Result<Option<Share>, Overflow> {
    if !now.profit.is_positive() {
        return Ok(None);
    }
    then.profit.ratio_to(now.profit).map(|share| Some(Share::from_fraction(share)))
}

/// The offers of which nothing is left then.
fn losing(rows: &[Row]) -> Vec<OfferId> {
    let then = rows.iter().filter_map(|row| row.then);
    then.filter(|then| !then.profit.is_positive()).map(|then| then.offer).collect()
}
