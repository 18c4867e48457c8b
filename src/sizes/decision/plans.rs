//! How many sizes: every set of one to three of them, and what would have to be true for each to pay.

use super::NoAnswer;
use super::after::After;
use super::line::{Line, Verdict};
use super::menu::MenuToday;
use super::tipping::{self, Answered, Tipping, Turn, brought_by, buyers_by};
use crate::book::ContainerId;
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Overflow, Share};

/// Most sizes of a plan.
pub const MOST_SIZES: usize = 3;

/// Most sizes of which plans are made: those that most buyers choose.
pub const MOST_CANDIDATES: usize = 10;

/// A plan whose sizes fewer of today's buyers choose is hardly tried. A judgement of ours, no source.
pub const HARDLY: Share = Share::from_fraction(Exact::new(1, 1));

/// Plans for a part of the menu.
#[derive(Clone, Debug, PartialEq)]
pub struct Plans {
    /// The menu of today.
    pub today: PlanToday,
    /// The plans that can pay, in the order of their evidence.
    pub pays: Vec<Plan>,
    /// Those that lose even if all buyers stay, in the same order.
    pub cannot_pay: Vec<Plan>,
    /// Sizes of which no plan is made, since there are too many.
    pub left_out: Vec<ContainerId>,
}

/// The menu of today as a plan.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlanToday {
    /// Its sizes, the smallest poured first.
    pub sizes: Vec<ContainerId>,
    /// What it brings in a week, less what keeping its sizes costs.
    pub profit: Money,
    /// Its buyers in a week.
    pub buyers: Exact,
    /// Its recipe cards.
    pub cards: usize,
}

/// A set of sizes to sell.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    /// The sizes, the smallest poured first.
    pub sizes: Vec<ContainerId>,
    /// What it brings in a week, by the share of those who have to turn that stay.
    pub line: Line,
    /// The share at which it brings what today brings. It is `None` if nobody has to turn.
    pub break_even: Option<Share>,
    /// What must be true for it to pay.
    pub verdict: Verdict,
    /// The share of today's buyers who already choose its sizes.
    pub evidence: Share,
    /// The buyers in a week who have to turn.
    pub others: Exact,
    /// Those of each offer that goes, and whether they can stay.
    pub turning: Vec<Turned>,
    /// Its recipe cards to train.
    pub cards: usize,
    /// Whether any of them would turn to a size or a price that is far from theirs.
    far: bool,
    /// What the sizes that stay bring then, and what those who turn have to bring for it to pay.
    needed: Money,
    turns: Vec<Turn>,
}

/// The buyers in a week of an offer that goes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Turned {
    /// How many there are.
    pub buyers: Exact,
    /// Whether another size of their drink stays.
    pub can_stay: bool,
}

impl Plan {
    /// Whether any of its buyers would turn to a size or a price that is far from theirs.
    pub(super) const fn turns_far(&self) -> bool {
        self.far
    }

    /// Whether fewer than a tenth of today's buyers choose its sizes.
    pub fn hardly_tried(&self) -> bool {
        self.evidence < HARDLY
    }

    /// Where it stops paying, or begins to, by how much buyers mind a price; an estimate.
    pub fn tipping(&self) -> Option<Tipping> {
        tipping::tipping(&self.turns, self.needed)
    }

    /// What those who turn have to bring in a week for it to pay, and what they bring if a share of them stays.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn turned(&self, share: Share) -> Result<(Money, Money), Overflow> {
        Ok((self.needed, self.line.at(share)?.minus(self.line.intercept)?))
    }

    /// What it brings in a week by an owner's answer; an estimate on an assumption.
    pub fn by_owner(&self, answered: &Answered) -> Option<Money> {
        self.line.intercept.plus(brought_by(&self.turns, answered)?).ok()
    }

    /// It against today by an owner's answer; an estimate on an assumption.
    pub fn against(&self, today: &PlanToday, answered: &Answered) -> Option<Guess> {
        Guess::of(self.by_owner(answered)?, today.profit, &self.line, &self.turns, answered)
    }
}

/// A change of the menu by an owner's answer: an estimate on an assumption.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Guess {
    /// What it brings in a week.
    pub profit: Money,
    /// How much more than today; below zero, less.
    pub gain: Money,
    /// The share of those who turn that brings as much; over the whole where a lower price draws more buyers. It is
    /// `None` if nobody turns.
    pub stay: Option<Share>,
    /// How many turn of today's buyers in a week.
    pub buyers: Exact,
    /// How many buyers these are then.
    pub then: Exact,
}

impl Guess {
    /// What is brought in a week, against what today brings; `line` is what is brought by the share that stays, and
    /// `turns` are those of its buyers.
    pub(super) fn of(profit: Money, now: Money, line: &Line, turns: &[Turn], answered: &Answered) -> Option<Guess> {
        let (gain, stay) = (profit.minus(now).ok()?, line.share_for(profit).ok()?);
        Some(Guess { profit, gain, stay, buyers: tipping::today(turns)?, then: buyers_by(turns, answered)? })
    }

    /// Whether it earns no less than today.
    pub fn pays(&self) -> bool {
        !self.gain.is_negative()
    }
}

impl Plans {
    /// Every plan by what it brings on an owner's answer, the most first; an estimate on an assumption.
    pub fn by_owner(&self, answered: &Answered) -> Vec<(&Plan, Money)> {
        let mut ordered: Vec<(&Plan, Money)> = Vec::new();
        for plan in self.pays.iter().chain(&self.cannot_pay) {
            let Some(profit) = plan.by_owner(answered) else { continue };
            in_order::insert(&mut ordered, (plan, profit), |other, this| other.1 >= this.1);
        }
        ordered
    }
}

impl MenuToday<'_> {
    /// Every plan of one to [`MOST_SIZES`] of the sizes sold today and of those in which sales are expected,
    /// but today's own set.
    ///
    /// # Errors
    /// A [`NoAnswer`] that names what to fill in.
    pub fn plans(&self) -> Result<Plans, NoAnswer> {
        let (sizes, left_out) = self.candidates()?;
        let buyers = self.buyers()?;
        if !buyers.is_positive() {
            return Err(NoAnswer::NoSales(self.sold().iter().map(super::SoldToday::offer).collect()));
        }
        if let [only] = sizes.as_slice() {
            return Err(NoAnswer::OneSize(*only));
        }
        let today = PlanToday {
            sizes: self.sizes().to_vec(),
            profit: self.profit()?.minus(self.kept(self.sizes().len())?)?,
            buyers,
            cards: self.book.offers().filter(|offer| self.book.belongs(offer.drink, self.scope)).count(),
        };
        let mut plans = Plans { today, pays: Vec::new(), cannot_pay: Vec::new(), left_out };
        for set in sets(&sizes) {
            if set == plans.today.sizes {
                continue;
            }
            let plan = self.plan(&set, &plans.today)?;
            let list = if plan.verdict.can_pay() { &mut plans.pays } else { &mut plans.cannot_pay };
            in_order::insert(list, plan, |other, this| {
                let order = |plan: &Plan| (std::cmp::Reverse(plan.evidence), plan.sizes.len());
                order(other) <= order(this)
            });
        }
        Ok(plans)
    }

    /// The plan of these sizes.
    fn plan(&self, sizes: &[ContainerId], today: &PlanToday) -> Result<Plan, Overflow> {
        let After { mut line, turns, .. } = self.after(sizes)?;
        // Both it and today, less what keeping their sizes costs.
        line.intercept = line.intercept.minus(self.kept(today.sizes.len())?)?;
        let verdict = Verdict::of_staying(today.profit, &line)?;
        let mut others = Exact::ZERO;
        let (mut moving, mut turning, mut far) = (Vec::new(), Vec::with_capacity(turns.len()), false);
        for turn in &turns {
            others = others.plus(turn.sold.weekly.count())?;
            turning.push(Turned { buyers: turn.sold.weekly.count(), can_stay: turn.to.is_some() });
            if let Some(to) = turn.to {
                far |= turn.sold.earns.is_far_from(&to)?;
            }
            moving.extend(turn.to.and_then(|to| Turn::between(&turn.sold.earns, &to, turn.count)));
        }
        let evidence = today.buyers.minus(others)?.over(today.buyers)?.as_part();
        let stays = |container| sizes.contains(&container);
        let on_the_menu =
            self.book.offers().filter(|it| self.book.belongs(it.drink, self.scope) && stays(it.container));
        let new = self
            .arrivals()
            .iter()
            .map(|arrival| arrival.earns.offer)
            .filter(|offer| stays(offer.container) && self.book.offer(*offer).is_none());
        Ok(Plan {
            sizes: sizes.to_vec(),
            break_even: line.share_for(today.profit)?,
            verdict,
            evidence: Share::from_fraction(evidence),
            others,
            turning,
            far,
            cards: on_the_menu.count().saturating_add(new.count()),
            needed: today.profit.minus(line.intercept)?,
            turns: moving,
            line,
        })
    }

    /// The sizes of which plans are made, the smallest poured first, and those that are too many.
    fn candidates(&self) -> Result<(Vec<ContainerId>, Vec<ContainerId>), Overflow> {
        let mut sizes = Vec::new();
        for earns in self.sold().iter().map(|sold| sold.earns).chain(self.arrivals().iter().map(|it| it.earns)) {
            in_order::insert_once(&mut sizes, (earns.poured, earns.offer.container));
        }
        let mut most: Vec<(Exact, ContainerId)> = Vec::new();
        for (_, size) in &sizes {
            let mut here = self.sold().iter().filter(|sold| sold.offer().container == *size);
            let bought = here.try_fold(Exact::ZERO, |sum, sold| sum.plus(sold.weekly.count()))?;
            let mut expected = self.arrivals().iter().filter(|it| it.earns.offer.container == *size);
            let all = expected.try_fold(bought, |sum, arrival| sum.plus(arrival.expected))?;
            in_order::insert(&mut most, (all, *size), |other, this| other.0 >= this.0);
        }
        let tried: Vec<ContainerId> = most.iter().take(MOST_CANDIDATES).map(|(_, size)| *size).collect();
        let sizes = sizes.into_iter().map(|(_, size)| size);
        Ok(sizes.partition(|size| tried.contains(size)))
    }
}

/// Every set of one to [`MOST_SIZES`] of these sizes, each in their order.
fn sets(sizes: &[ContainerId]) -> Vec<Vec<ContainerId>> {
    let mut sets: Vec<Vec<ContainerId>> = vec![Vec::new()];
    for size in sizes {
        let with_it = |set: &Vec<ContainerId>| set.iter().copied().chain([*size]).collect();
        let grown: Vec<_> = sets.iter().filter(|set| set.len() < MOST_SIZES).map(with_it).collect();
        sets.extend(grown);
    }
    sets.retain(|set| !set.is_empty());
    sets
}
