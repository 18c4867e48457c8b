//! What is said of plans of sizes and of scenarios.

use super::texts::Number;
use super::{Speaker, offer_error, overflow, price_error};
use crate::book::{Book, ContainerId, Key, Offer, OfferId};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::say;
use crate::sizes::plan::{Change, Further, LeftOut, PaidBack, PaysFrom, Plan, Stock, Totals, Why, contribution};

/// A plan by its sizes: "12 oz + 16 oz".
pub fn plan_name(sizes: &[ContainerId], book: &Book) -> String {
    let names: Vec<String> = sizes.iter().map(|id| book.name(Key::Container(*id))).collect();
    names.join(" + ")
}

/// How many sizes: "Two sizes".
pub fn sizes(count: usize) -> String {
    say!(decide::count_of_sizes, sizes = count)
}

/// Sentences one after the other; what is not said is left out.
fn sentences(said: impl IntoIterator<Item = Option<String>>) -> String {
    said.into_iter().flatten().collect::<Vec<_>>().join(" ")
}

/// Numbers, money and names as they are shown.
pub struct Plans<'a> {
    /// The book, for names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Plans<'_> {
    /// Money without its sign.
    fn size_of(&self, money: Money) -> String {
        self.speaker.money(Money::from_major(money.major().abs()))
    }

    /// Weeks to one decimal: "9.2 weeks".
    pub fn weeks(&self, weeks: Exact) -> String {
        say!(decide::weeks, weeks = self.speaker.counted(weeks.rounded(1)))
    }

    /// How long opening stock lasts, also where nothing of it is used.
    pub fn cover(&self, weeks: Option<Exact>) -> String {
        weeks.map_or(say!(decide::no_sales_yet).to_string(), |weeks| self.weeks(weeks))
    }

    /// Which plan earns most, and what today's sizes earn; `ranked` has the best first.
    pub fn best(&self, ranked: &[Plan], today: &[ContainerId]) -> String {
        let Some(best) = ranked.first() else { return String::new() };
        let earned = |plan: &Plan| self.speaker.money(plan.totals.contribution);
        let first = say!(decide::best_plan, plan = plan_name(&best.sizes, self.book), profit = earned(best));
        let beside = ranked.iter().find(|plan| plan.sizes == today).map(|plan| {
            if best.sizes == today {
                say!(decide::best_plan_today).to_string()
            } else {
                say!(decide::best_plan_beside, profit = earned(plan))
            }
        });
        sentences([Some(first), beside])
    }

    /// What is gained or lost from one plan to another, and when it is paid back.
    pub fn change(&self, from: &Plan, to: &Plan, change: &Change) -> String {
        let paid_back = match change.paid_back {
            PaidBack::After(weeks) => Some(say!(decide::stock_pays_back, weeks = self.weeks(weeks))),
            PaidBack::Never => Some(say!(decide::stock_never_pays_back).to_string()),
            PaidBack::Nothing => None,
        };
        sentences([
            Some(self.earned(from, to, change.more)),
            self.kept(change),
            Some(self.tied_up(change.stock)),
            paid_back,
            change.further.as_ref().map(|further| self.further(further)),
        ])
    }

    /// How much more or less one plan earns than another.
    fn earned(&self, from: &Plan, to: &Plan, more: Money) -> String {
        let (plan, other) = (plan_name(&to.sizes, self.book), plan_name(&from.sizes, self.book));
        let profit = self.size_of(more);
        match (more.is_positive(), more.is_negative()) {
            (true, _) => say!(decide::plan_earns_more, plan = plan, other = other, profit = profit),
            (_, true) => say!(decide::plan_earns_less, plan = plan, other = other, profit = profit),
            _ => say!(decide::plan_earns_same, plan = plan, other = other),
        }
    }

    /// What is gained or lost with what more or fewer sizes cost to keep.
    fn kept(&self, change: &Change) -> Option<String> {
        if change.keeping.is_zero() {
            return None;
        }
        let (upkeep, profit) = (self.size_of(change.keeping), self.size_of(change.gain));
        Some(match (change.keeping.is_positive(), change.gain.is_negative()) {
            (true, false) => say!(decide::upkeep_then_more, upkeep = upkeep, profit = profit),
            (true, true) => say!(decide::upkeep_then_less, upkeep = upkeep, profit = profit),
            (false, false) => say!(decide::upkeep_saved_then_more, upkeep = upkeep, profit = profit),
            (false, true) => say!(decide::upkeep_saved_then_less, upkeep = upkeep, profit = profit),
        })
    }

    /// How much more or less opening stock is needed.
    fn tied_up(&self, stock: Money) -> String {
        match (stock.is_positive(), stock.is_negative()) {
            (true, _) => say!(decide::stock_more, cash = self.size_of(stock)),
            (_, true) => say!(decide::stock_less, cash = self.size_of(stock)),
            _ => say!(decide::stock_same).to_string(),
        }
    }

    /// From how many extra sales a further size pays for itself.
    fn further(&self, further: &Further) -> String {
        let size = self.book.name(Key::Container(further.size));
        let Some(each) = further.each else { return say!(decide::size_without_price, size = size) };
        let profit = self.speaker.money(each);
        match further.pays {
            PaysFrom::Already => say!(decide::size_pays_already, size = size),
            PaysFrom::Drinks(drinks) => {
                let drinks = self.speaker.counted(drinks.ceiling());
                let lost = self.speaker.money(further.lost);
                sentences([
                    Some(say!(decide::size_pays_from, size = size, drinks = drinks)),
                    Some(say!(decide::size_pays_why, lost = lost, profit = profit)),
                ])
            }
            PaysFrom::Never => say!(decide::size_never_pays, size = size, profit = profit),
        }
    }

    /// A drink in a size that a plan cannot have, and why.
    pub fn left_out(&self, left_out: &LeftOut) -> String {
        let why = match &left_out.why {
            Why::NotMade(reason) => offer_error(reason, self.book),
            Why::NoPrice(error) => price_error(error),
        };
        say!(decide::named_reason, name = self.book.name(Key::Offer(left_out.offer)), reason = why)
    }

    /// That a plan cannot have some drinks in some of its sizes.
    pub fn left_out_count(&self, sizes: &[ContainerId], count: usize) -> String {
        say!(decide::plan_leaves_out, plan = plan_name(sizes, self.book), sizes = count)
    }

    /// What one offer leaves in a week, as its own sum.
    pub fn offer(&self, ledger: &Ledger, offer: &Offer) -> String {
        let drink = self.book.name(Key::Offer(offer.id()));
        let asked = ledger.get(offer.id()).and_then(|result| result.as_ref().ok()).and_then(|priced| priced.asked);
        let Some(asked) = asked else { return say!(decide::week_without_price, drink = drink) };
        let (price, each) = (self.speaker.money(asked.menu), self.speaker.money(asked.contribution));
        let today = self.book.offer(offer.id()).and_then(|today| today.price);
        match (offer.weekly, contribution(ledger, offer)) {
            (Some(weekly), Ok(Some(all))) => {
                let (sold, profit) = (self.speaker.number(weekly), self.speaker.money(all));
                if today.is_none() {
                    say!(
                        decide::week_math_suggested,
                        drink = drink,
                        sold = sold,
                        each = each,
                        profit = profit,
                        price = price
                    )
                } else {
                    say!(decide::week_math, drink = drink, sold = sold, each = each, profit = profit, price = price)
                }
            }
            _ if today.is_none() => {
                say!(decide::week_without_sales_suggested, drink = drink, each = each, price = price)
            }
            _ => say!(decide::week_without_sales, drink = drink, each = each, price = price),
        }
    }

    /// One offer of a scenario beside today's, either of them perhaps not there.
    pub fn offer_beside(
        &self,
        id: OfferId,
        (today, was): (&Ledger, Option<&Offer>),
        (then, is): (&Ledger, Option<&Offer>),
    ) -> String {
        let size = self.book.name(Key::Container(id.container));
        match (was, is) {
            (Some(was), Some(is)) if was == is => {
                say!(decide::size_as_today, size = size, facts = self.facts(then, is))
            }
            (Some(was), Some(is)) => {
                let (facts, today) = (self.facts(then, is), self.facts(today, was));
                say!(decide::size_changed, size = size, facts = facts, today = today)
            }
            (None, Some(is)) => say!(decide::size_added, size = size, facts = self.facts(then, is)),
            (Some(was), None) => say!(decide::size_dropped, size = size, today = self.facts(today, was)),
            (None, None) => say!(decide::size_not_sold, size = size),
        }
    }

    /// An offer's price, weekly number and what it leaves in a week: "$5.00, 30 per week, $87.00
    /// profit".
    fn facts(&self, ledger: &Ledger, offer: &Offer) -> String {
        let price = offer.price.map_or(say!(decide::fact_no_price).to_string(), |price| self.speaker.money(price));
        let sold = offer.weekly.map_or(say!(decide::fact_no_sales).to_string(), |weekly| {
            say!(decide::fact_sold, drinks = self.speaker.number(weekly))
        });
        let profit = match (ledger.get(offer.id()), contribution(ledger, offer)) {
            (Some(Err(_)), _) => Some(say!(decide::fact_incomplete).to_string()),
            (_, Ok(Some(profit))) if offer.weekly.is_some() => {
                Some(say!(decide::fact_profit, profit = self.speaker.money(profit)))
            }
            _ => None,
        };
        [price, sold].into_iter().chain(profit).collect::<Vec<_>>().join(", ")
    }

    /// What a scenario brings against today's menu.
    pub fn against_today(&self, today: &Totals, then: &Totals) -> String {
        match then.contribution.minus(today.contribution) {
            Ok(more) if more.is_positive() => say!(decide::scenario_earns_more, profit = self.size_of(more)),
            Ok(more) if more.is_negative() => say!(decide::scenario_earns_less, profit = self.size_of(more)),
            Ok(_) => say!(decide::scenario_earns_same).to_string(),
            Err(error) => overflow(error),
        }
    }

    /// What one kind of packaging takes to begin with, as its own sum.
    pub fn stock(&self, stock: &Stock) -> String {
        let name = self.book.name(Key::Packaging(stock.packaging));
        let (packs, pieces) = (self.speaker.counted(stock.packs), self.speaker.number(stock.pieces.rounded(2)));
        let cost = self.speaker.money(stock.cash);
        match stock.weeks {
            Some(weeks) => {
                let (used, weeks) = (self.speaker.number(stock.a_week.rounded(1)), self.weeks(weeks));
                say!(
                    decide::stock_math,
                    name = name,
                    packs = packs,
                    pieces = pieces,
                    cost = cost,
                    used = used,
                    weeks = weeks
                )
            }
            None => say!(decide::stock_math_unused, name = name, packs = packs, pieces = pieces, cost = cost),
        }
    }

    /// What does not count in the figures of a menu. Returns an empty text if all of it does.
    pub fn uncounted(&self, totals: &Totals) -> String {
        let some = |count: usize| (count > 0).then(|| Number::from(count));
        sentences([
            some(totals.without_number).map(|sizes| say!(decide::no_sales_uncounted, sizes = sizes)),
            some(totals.without_price).map(|sizes| say!(decide::no_price_uncounted, sizes = sizes)),
            some(totals.stuck).map(|sizes| say!(decide::incomplete_uncounted, sizes = sizes)),
        ])
    }

    /// What to know of shares that do not sum to the whole. Returns an empty text if they do.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn shares(&self, shares: &[Share]) -> Result<String, Overflow> {
        let sum = shares.iter().copied().try_fold(Share::ZERO, Share::plus)?;
        if sum.fraction().rounded(4).is_one() {
            return Ok(String::new());
        }
        Ok(say!(decide::shares_not_whole, sum = self.speaker.percent(sum)))
    }
}
