//! What is said of the buying list: before it is made, at the supplier's, and as a text to send.

use super::offer_errors::yield_error;
use super::{Speaker, day, offer_error, overflow};
use crate::book::{Book, BuyingList, Goods, Key, OfferId, Pack, PackId};
use crate::buying::buying_list::{Carried, Finished, Group, Here, Listed, PricePaid, Proposal, Quote, Totals, group};
use crate::drink::ledger::OfferChange;
use crate::drink::make::Unmade;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Date, Exact, Money, Overflow};

/// The name of a group without a supplier.
pub const NO_SUPPLIER: &str = "No supplier";

/// How a proposal comes about.
pub const HOW_PROPOSED: &str = "What is needed less what is here, rounded up to whole packs and to no fewer than are bought at a time; the price is that for so many, with surcharges.";

/// Numbers, money and names as they are shown.
pub struct Buying<'a> {
    /// The book, for names.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Buying<'_> {
    /// The name of goods.
    pub fn goods(&self, goods: Goods) -> String {
        self.book.name(Key::from(goods))
    }

    fn pack(&self, goods: Goods, pack: PackId) -> Option<&Pack> {
        self.book.packs(goods).iter().find(|quoted| quoted.id == pack)
    }

    /// So many packs: "2 × 40 lb"; "2 packs that nobody quotes any more".
    pub fn packs(&self, packs: Exact, pack: Option<&Pack>) -> String {
        match pack {
            Some(pack) => format!("{} × {}", self.speaker.number(packs), self.speaker.amount(pack.contents)),
            None => format!("{}, not quoted any more", self.whole(packs, "pack", "packs")),
        }
    }

    fn whole(&self, number: Exact, one: &str, more: &str) -> String {
        format!("{} {}", self.speaker.number(number), if number.is_one() { one } else { more })
    }

    /// A pack of goods to choose: "Carrots, 50 lb from Tansywold".
    pub fn choice(&self, goods: Goods, pack: PackId) -> String {
        let holds =
            self.pack(goods, pack).map(|pack| format!(", {}{}", self.speaker.amount(pack.contents), from(pack)));
        format!("{}{}", self.goods(goods), holds.unwrap_or_default())
    }

    /// What is needed of goods, what is here of it, and what is bought: the sum with its numbers.
    pub fn proposed(&self, goods: Goods, quote: &Quote, today: Date) -> String {
        let needed = self.speaker.measure(quote.needed);
        let left_over = self.speaker.measure(quote.left_over);
        let (here, unusable) = match quote.here {
            Here::NotCounted => (", none counted here".to_string(), String::new()),
            Here::Counted { amount, day } => {
                (format!(", {} here, {}", self.speaker.measure(amount), counted(day, today)), String::new())
            }
            Here::Unusable { lacks, day } => {
                let why = yield_error(&lacks, self.book);
                (String::new(), format!(" What is here, {}, is not taken off: {why}", counted(day, today)))
            }
        };
        if quote.packs.is_zero() {
            return format!("{needed} needed{here}: enough, {left_over} left over.{unusable}");
        }
        let pack = self.pack(goods, quote.pack);
        let at_a_time = pack.map(|pack| pack.at_a_time.ceiling()).filter(|number| !number.is_one());
        let least = at_a_time.map(|number| format!(" (at least {} at a time)", self.speaker.number(number)));
        let packs = self.packs(quote.packs, pack);
        let (supplier, least) = (pack.map(from).unwrap_or_default(), least.unwrap_or_default());
        format!("{needed} needed{here}: {packs}{supplier}{least}, {left_over} left over.{unusable}")
    }

    /// What another pack would save. Returns `None` if it saves nothing.
    pub fn saves(&self, goods: Goods, taken: &Quote, other: &Quote) -> Option<String> {
        let saved = taken.cost.minus(other.cost).ok().filter(|saved| saved.is_positive())?;
        let pack = self.pack(goods, other.pack);
        let packs = self.packs(other.packs, pack);
        let supplier = pack.map(from).unwrap_or_default();
        Some(format!("{packs}{supplier} would cost {} less.", self.speaker.money(saved)))
    }

    /// What all of the cheapest packs would save together.
    pub fn saves_in_all(&self, taken: Money, cheapest: Money) -> String {
        match taken.minus(cheapest) {
            Ok(saved) if saved.is_positive() => {
                format!("The cheapest packs for so much would cost {} less in all.", self.speaker.money(saved))
            }
            Ok(_) => "No other packs would cost less for so much.".to_string(),
            Err(error) => overflow(error),
        }
    }

    /// Why goods cannot be put on the list.
    pub fn without_pack(&self, goods: Goods, lacks: Option<YieldError>) -> String {
        match lacks {
            Some(lacks) => yield_error(&lacks, self.book),
            None => format!("{} has no pack. Enter what a pack holds and costs.", self.goods(goods)),
        }
    }

    /// A drink that is not counted, and why.
    pub fn left_out(&self, offer: OfferId, why: Unmade) -> String {
        let why = match why {
            Unmade::NotOnTheMenu => "It is not on the menu in this size any more.".to_string(),
            Unmade::Stuck(reason) => offer_error(&reason, self.book),
        };
        format!("{}: {why}", self.book.name(Key::Offer(offer)))
    }

    /// Goods that cost nothing. Returns an empty text if there are none.
    pub fn free(&self, goods: &[Goods]) -> String {
        if goods.is_empty() {
            return String::new();
        }
        let names: Vec<String> = goods.iter().map(|goods| self.goods(*goods)).collect();
        format!("Not on the list, since it costs nothing: {}.", names.join(", "))
    }

    /// Counts that are older than today. Returns an empty text if there are none.
    pub fn old_counts(&self, proposal: &Proposal, today: Date) -> String {
        let here = proposal.lines.iter().filter_map(|line| line.now().map(|quote| quote.here));
        let days = here.filter_map(|here| match here {
            Here::Counted { day, .. } | Here::Unusable { day, .. } => Some(day),
            Here::NotCounted => None,
        });
        let old: Vec<Date> = days.filter(|day| *day < today).collect();
        let Some(oldest) = old.iter().min() else { return String::new() };
        let count = if old.len() == 1 { "1 count is".to_string() } else { format!("{} counts are", old.len()) };
        format!("{count} from before today, the oldest of {}. What was used since is not taken off.", day(*oldest))
    }

    /// Sizes without a weekly number. Returns an empty text if there are none.
    pub fn without_number(&self, sizes: usize) -> String {
        match sizes {
            0 => String::new(),
            1 => "1 size has no weekly number and counts for nothing.".to_string(),
            more => format!("{more} sizes have no weekly number and count for nothing."),
        }
    }

    /// What a line is bought at: "$34.00 each, $68.00 in all".
    pub fn line_cost(&self, listed: &Listed) -> String {
        let Some((each, cost)) = listed.each.zip(listed.cost) else {
            return "No price: type what you pay for one.".to_string();
        };
        let paid = if listed.line.paid.is_some() { "paid" } else { "asked" };
        let surcharge = listed.pack.as_ref().map(|pack| pack.surcharge).filter(|it| !it.is_zero());
        let surcharge = surcharge.map(|it| format!(" + {}", self.speaker.money(it))).unwrap_or_default();
        let each = format!("{paid} {}{surcharge}", self.speaker.money(each));
        if listed.line.packs.is_one() { each } else { format!("{each} each, {} in all", self.speaker.money(cost)) }
    }

    /// What lines cost together: "$120.00: $34.00 ticked, $86.00 left."
    pub fn totals(&self, totals: &Totals) -> String {
        let left = totals.left().map_or_else(overflow, |left| self.speaker.money(left));
        let unpriced = match totals.unpriced {
            0 => String::new(),
            1 => " 1 line has no price.".to_string(),
            more => format!(" {more} lines have no price."),
        };
        format!(
            "{}: {} ticked, {left} left.{unpriced}",
            self.speaker.money(totals.all),
            self.speaker.money(totals.bought)
        )
    }

    /// How far the list is: "3 of 7 ticked".
    pub fn progress(&self, totals: &Totals) -> String {
        format!("{} of {} ticked", totals.ticked, totals.lines)
    }

    /// One quote that a price paid changes.
    pub fn price_paid(&self, paid: &PricePaid) -> String {
        let PricePaid { goods, pack, was, now } = *paid;
        format!("{}: {} instead of {}", self.choice(goods, pack), self.speaker.money(now), self.speaker.money(was))
    }

    /// What carrying the prices does, before it is done.
    pub fn carried(&self, carried: &Carried, moves: &[OfferChange]) -> String {
        let prices = match carried.prices.len() {
            0 => "No price differs from its quote; the quotes are dated today.".to_string(),
            1 => "1 price changes.".to_string(),
            more => format!("{more} prices change."),
        };
        let fell = moves.iter().filter(|moved| moved.fell()).count();
        let fall = match fell {
            0 => "none falls under target".to_string(),
            1 => "1 falls under target".to_string(),
            more => format!("{more} fall under target"),
        };
        let moved = match moves.len() {
            0 => "No size moves.".to_string(),
            1 => format!("1 size moves, {fall}."),
            more => format!("{more} sizes move, {fall}."),
        };
        format!("{prices} {moved}{}", self.not_quoted(&carried.not_quoted, "its price goes nowhere"))
    }

    /// What finishing the list does, before it is done.
    pub fn finished(&self, finished: &Finished) -> String {
        let added = match finished.added {
            0 => "Nothing is ticked, so nothing is added to what is here".to_string(),
            1 => "What is ticked, 1 line, is added to what is here".to_string(),
            more => format!("What is ticked, {more} lines, is added to what is here"),
        };
        let prices = match finished.prices.len() {
            0 => String::new(),
            1 => "; 1 price paid goes into its quote".to_string(),
            more => format!("; {more} prices paid go into their quotes"),
        };
        let list = match finished.not_bought {
            0 => "; then the list is gone".to_string(),
            1 => "; then the list is gone, with 1 line that is not ticked".to_string(),
            more => format!("; then the list is gone, with {more} lines that are not ticked"),
        };
        let anew = finished.started_anew.iter().map(|(goods, lacks)| {
            format!(
                " {}: the count before cannot be added to, a new one starts with what was bought. {}",
                self.goods(*goods),
                yield_error(lacks, self.book)
            )
        });
        let anew: String = anew.collect();
        let gone = self.not_quoted(&finished.not_quoted, "nobody knows how much was bought");
        format!("{added}{prices}{list}. Undo takes all of it back.{anew}{gone}")
    }

    fn not_quoted(&self, goods: &[Goods], so: &str) -> String {
        goods
            .iter()
            .map(|goods| format!(" {} is not quoted in that pack any more: {so}.", self.goods(*goods)))
            .collect()
    }

    /// The list as a text to send, with or without prices.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn text(&self, list: &BuyingList, prices: bool) -> Result<String, Overflow> {
        let (groups, totals) = group(self.book, list)?;
        let mut lines = vec![format!("Buying list, {}", day(list.day))];
        for group in &groups {
            lines.push(String::new());
            lines.push(self.of_group(supplier(group), &group.totals, prices));
            lines.extend(group.lines.iter().map(|listed| self.line(listed, prices)));
        }
        if prices && groups.len() > 1 {
            lines.push(String::new());
            lines.push(self.of_group("Altogether", &totals, prices));
        }
        Ok(lines.join("\n"))
    }

    fn of_group(&self, name: &str, totals: &Totals, prices: bool) -> String {
        if prices { format!("{name}: {}", self.speaker.money(totals.all)) } else { name.to_string() }
    }

    fn line(&self, listed: &Listed, prices: bool) -> String {
        let box_ = if listed.line.bought { "[x]" } else { "[ ]" };
        let what = format!(
            "{box_} {}, {}",
            self.goods(listed.line.goods),
            self.packs(listed.line.packs, listed.pack.as_ref())
        );
        match listed.cost.filter(|_| prices) {
            Some(cost) => format!("{what}: {}", self.speaker.money(cost)),
            None => what,
        }
    }
}

/// The supplier of a group, or that there is none.
pub fn supplier(group: &Group) -> &str {
    if group.supplier.is_empty() { NO_SUPPLIER } else { &group.supplier }
}

/// " from Tansywold". Returns an empty text if the pack names nobody.
fn from(pack: &Pack) -> String {
    if pack.supplier.is_empty() { String::new() } else { format!(" from {}", pack.supplier) }
}

fn counted(on: Date, today: Date) -> String {
    if on < today { format!("counted {}", day(on)) } else { "counted today".to_string() }
}
