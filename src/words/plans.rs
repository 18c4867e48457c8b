//! What is said of plans of sizes and of scenarios.

use super::{Speaker, offer_error, overflow, price_error};
use crate::book::{Book, ContainerId, Key, Offer, OfferId};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::sizes::plan::{Change, Further, LeftOut, PaidBack, PaysFrom, Plan, Stock, Totals, Why, contribution};

/// How many sizes most bars run well: advice, never enforced.
pub const HOW_MANY_SIZES: &str = "Common practice, no source: one size is the simplest to run, two work well, three are many. Your own numbers go first.";

/// What the figures of plans do not know.
pub const SAME_NUMBER_OF_DRINKS: &str = "Each plan counts with as many drinks as you sell today, whatever their size. Where people would not take another size, type fewer sales kept below.";

/// A plan by its sizes: "12 oz + 16 oz".
pub fn plan_name(sizes: &[ContainerId], book: &Book) -> String {
    let names: Vec<String> = sizes.iter().map(|id| book.name(Key::Container(*id))).collect();
    names.join(" + ")
}

/// How many sizes: "Two sizes".
pub fn sizes(count: usize) -> String {
    match count {
        1 => "One size".to_string(),
        2 => "Two sizes".to_string(),
        3 => "Three sizes".to_string(),
        _ => format!("{count} sizes"),
    }
}

/// The same within a sentence: "two sizes".
pub fn sizes_within(count: usize) -> String {
    format!("{} {}", how_many(count), if count == 1 { "size" } else { "sizes" })
}

/// The number within a sentence, where it is clear of what: "two".
fn how_many(count: usize) -> String {
    match count {
        1 => "one".to_string(),
        2 => "two".to_string(),
        3 => "three".to_string(),
        _ => count.to_string(),
    }
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
        let weeks = weeks.rounded(1);
        let unit = if weeks.is_one() { "week" } else { "weeks" };
        self.speaker.with_unit(weeks, 0, unit)
    }

    /// How long opening stock lasts, also where nothing of it is used.
    pub fn cover(&self, weeks: Option<Exact>) -> String {
        weeks.map_or("no sales yet".to_string(), |weeks| self.weeks(weeks))
    }

    /// Which plan earns most, and what today's sizes earn; `ranked` has the best first.
    pub fn best(&self, ranked: &[Plan], today: &[ContainerId]) -> String {
        let Some(best) = ranked.first() else { return String::new() };
        let earned = |plan: &Plan| self.speaker.money(plan.totals.contribution);
        let name = plan_name(&best.sizes, self.book);
        let first = format!("{name} brings the most: {} a week", earned(best));
        match ranked.iter().find(|plan| plan.sizes == today) {
            Some(_) if best.sizes == today => format!("{first}. These are today's sizes."),
            Some(plan) => format!("{first}; today's sizes, with every drink in each of them, {}.", earned(plan)),
            None => format!("{first}."),
        }
    }

    /// What is gained or lost from one plan to another, and when it is paid back.
    pub fn change(&self, from: &Plan, to: &Plan, change: &Change) -> String {
        let name = |plan: &Plan| plan_name(&plan.sizes, self.book);
        let (this, other) = match (from.sizes.len(), to.sizes.len()) {
            (less, more) if less != more => (sizes(more), how_many(less)),
            _ => (name(to), name(from)),
        };
        let one = to.sizes.len() == 1;
        let (earn, tie, free, need) =
            if one { ("earns", "ties", "frees", "needs") } else { ("earn", "tie", "free", "need") };
        let mut said = format!("{this} {earn} ");
        said.push_str(&match (change.more.is_positive(), change.more.is_negative()) {
            (true, _) => format!("{} a week more than {other}", self.speaker.money(change.more)),
            (_, true) => format!("{} a week less than {other}", self.size_of(change.more)),
            _ => format!("as much a week as {other}"),
        });
        if !change.keeping.is_zero() {
            let kept = if change.keeping.is_positive() { "for keeping more sizes" } else { "saved by keeping fewer" };
            let turn = if change.gain.is_negative() { "less" } else { "more" };
            let (gain, keeping) = (self.size_of(change.gain), self.size_of(change.keeping));
            said.push_str(&format!(" ({gain} {turn} after {keeping} a week {kept})"));
        }
        said.push_str(&match (change.stock.is_positive(), change.stock.is_negative()) {
            (true, _) => format!(" and {tie} up {} more in opening stock", self.speaker.money(change.stock)),
            (_, true) => format!(" and {free} {} of opening stock", self.size_of(change.stock)),
            _ => format!(" and {need} no more opening stock"),
        });
        said.push_str(&match change.paid_back {
            PaidBack::After(weeks) => format!(": paid back in {}.", self.weeks(weeks)),
            PaidBack::Never => ". Nothing is gained to pay that back.".to_string(),
            PaidBack::Nothing => ".".to_string(),
        });
        if let Some(further) = &change.further {
            said.push(' ');
            said.push_str(&self.further(further));
        }
        said
    }

    /// From how many extra sales a further size pays for itself.
    fn further(&self, further: &Further) -> String {
        let size = self.book.name(Key::Container(further.size));
        let each = further.each.map(|each| self.speaker.money(each));
        match (further.pays, each) {
            (_, None) => format!("Nothing can be sold in {size}: no drink has a price there."),
            (PaysFrom::Already, Some(_)) => {
                format!("{size} needs no extra sales to pay for itself: nothing is lost by having it.")
            }
            (PaysFrom::Drinks(drinks), Some(each)) => {
                let (drinks, lost) = (self.speaker.number(drinks.ceiling()), self.speaker.money(further.lost));
                format!(
                    "{size} pays for itself from {drinks} extra sold in it a week: {lost} is lost by it, and {each} is left of each."
                )
            }
            (PaysFrom::Never, Some(each)) => {
                format!("{size} cannot pay for itself by more sales: {each} is left of each sold in it.")
            }
        }
    }

    /// A drink in a size that a plan cannot have, and why.
    pub fn left_out(&self, left_out: &LeftOut) -> String {
        let why = match &left_out.why {
            Why::NotMade(reason) => offer_error(reason, self.book),
            Why::NoPrice(error) => price_error(error),
        };
        format!("{}: {why}", self.book.name(Key::Offer(left_out.offer)))
    }

    /// That a plan cannot have some drinks in some of its sizes.
    pub fn left_out_count(&self, sizes: &[ContainerId], count: usize) -> String {
        let name = plan_name(sizes, self.book);
        let drinks =
            if count == 1 { "1 drink in a size is".to_string() } else { format!("{count} drinks in their sizes are") };
        format!("Of {name}, {drinks} left out; open how it came about to see why.")
    }

    /// What one offer leaves in a week, as its own sum.
    pub fn offer(&self, ledger: &Ledger, offer: &Offer) -> String {
        let name = self.book.name(Key::Offer(offer.id()));
        let asked = ledger.get(offer.id()).and_then(|result| result.as_ref().ok()).and_then(|priced| priced.asked);
        let Some(asked) = asked else { return format!("{name}: no price.") };
        let (price, each) = (self.speaker.money(asked.menu), self.speaker.money(asked.contribution));
        let today = self.book.offer(offer.id()).and_then(|today| today.price);
        let suggested = if today.is_none() { " (suggested)" } else { "" };
        match (offer.weekly, contribution(ledger, offer)) {
            (Some(weekly), Ok(Some(all))) => {
                let (weekly, all) = (self.speaker.number(weekly), self.speaker.money(all));
                format!("{name}: {weekly} a week at {price}{suggested}, {each} left of each: {all}.")
            }
            _ => format!("{name}: no weekly number; {each} left of each at {price}{suggested}."),
        }
    }

    /// One offer of a scenario beside today's, either of them perhaps not there.
    pub fn offer_beside(
        &self,
        id: OfferId,
        (today, was): (&Ledger, Option<&Offer>),
        (then, is): (&Ledger, Option<&Offer>),
    ) -> String {
        let name = self.book.name(Key::Container(id.container));
        match (was, is) {
            (Some(was), Some(is)) if was == is => format!("{name}: {}, as today.", self.side(then, is)),
            (Some(was), Some(is)) => format!("{name}: {}; today {}.", self.side(then, is), self.side(today, was)),
            (None, Some(is)) => format!("{name}: {}; not sold today.", self.side(then, is)),
            (Some(was), None) => format!("{name}: not sold here; today {}.", self.side(today, was)),
            (None, None) => format!("{name}: not sold."),
        }
    }

    /// An offer's price, weekly number and what it leaves in a week: "$5.00, 30 a week, $87.00 left".
    fn side(&self, ledger: &Ledger, offer: &Offer) -> String {
        let price = offer.price.map_or("no price".to_string(), |price| self.speaker.money(price));
        let weekly =
            offer.weekly.map_or("no weekly number".to_string(), |it| format!("{} a week", self.speaker.number(it)));
        let left = match (ledger.get(offer.id()), contribution(ledger, offer)) {
            (Some(Err(_)), _) => ", cannot be computed".to_string(),
            (_, Ok(Some(left))) if offer.weekly.is_some() => format!(", {} left", self.speaker.money(left)),
            _ => String::new(),
        };
        format!("{price}, {weekly}{left}")
    }

    /// What a scenario brings against today's menu.
    pub fn against_today(&self, today: &Totals, then: &Totals) -> String {
        match then.contribution.minus(today.contribution) {
            Ok(more) if more.is_positive() => format!("{} a week more than today.", self.speaker.money(more)),
            Ok(more) if more.is_negative() => format!("{} a week less than today.", self.size_of(more)),
            Ok(_) => "As much a week as today.".to_string(),
            Err(error) => overflow(error),
        }
    }

    /// What one kind of packaging takes to begin with, as its own sum.
    pub fn stock(&self, stock: &Stock) -> String {
        let name = self.book.name(Key::Packaging(stock.packaging));
        let (packs, pieces) = (self.speaker.number(stock.packs), self.speaker.number(stock.pieces.rounded(2)));
        let unit = if stock.packs.is_one() { "pack" } else { "packs" };
        let cash = self.speaker.money(stock.cash);
        match stock.weeks {
            Some(weeks) => {
                let (a_week, weeks) = (self.speaker.number(stock.a_week.rounded(1)), self.weeks(weeks));
                format!("{name}: {packs} {unit} of {pieces} pieces in all, {cash}; {a_week} used a week, so {weeks}.")
            }
            None => format!("{name}: {packs} {unit} of {pieces} pieces in all, {cash}; none used as yet."),
        }
    }

    /// What does not count in the figures of a menu. Returns an empty text if all of it does.
    pub fn uncounted(&self, totals: &Totals) -> String {
        let said = [
            (totals.without_number, "has no weekly number", "have no weekly number"),
            (totals.without_price, "has no price", "have no price"),
            (totals.stuck, "cannot be computed", "cannot be computed"),
        ];
        let mut parts = Vec::new();
        for (count, one, more) in said {
            match count {
                0 => {}
                1 => parts.push(format!("1 {one}")),
                count => parts.push(format!("{count} {more}")),
            }
        }
        if parts.is_empty() {
            return String::new();
        }
        format!("of {} drinks in their sizes, {}; they count for nothing.", totals.cards, parts.join(", "))
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
        let sum = self.speaker.percent(sum);
        Ok(format!(
            "The shares add up to {sum}, not 100\u{a0}%. In each plan what its sizes have of them is taken as the whole."
        ))
    }
}
