//! What is said of the buying list: before it is made, at the supplier's, and as a text to send.

use super::offer_errors::yield_error;
use super::{Speaker, day, number, offer_error, overflow, watch};
use crate::book::{Book, BuyingList, Goods, Key, OfferId, Pack, PackId};
use crate::buying::buying_list::{Carried, Finished, Group, Here, Listed, PricePaid, Proposal, Quote, Totals, group};
use crate::drink::ledger::OfferChange;
use crate::drink::make::Unmade;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Date, Dimension, Exact, Measure, Money, Overflow};
use crate::say;

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

    /// How many packs, and of what size: "2 × 40 lb"; "2 packs, no longer in your book".
    pub fn packs(&self, packs: Exact, pack: Option<&Pack>) -> String {
        match pack {
            Some(pack) => format!("{} × {}", self.speaker.number(packs), self.speaker.amount(pack.contents)),
            None => say!(market::packs_no_longer_in_book, packs = self.speaker.counted(packs)),
        }
    }

    /// A pack of goods to choose: "Carrots, 50 lb from Tansywold".
    pub fn choice(&self, goods: Goods, pack: PackId) -> String {
        let name = self.goods(goods);
        let Some(pack) = self.pack(goods, pack) else { return name };
        let holds = self.speaker.amount(pack.contents);
        match supplier_of(pack) {
            Some(supplier) => say!(market::item_in_pack_from, name = name, pack = holds, supplier = supplier),
            None => say!(market::item_in_pack, name = name, pack = holds),
        }
    }

    /// An amount to have: nobody buys a part of a bottle.
    fn whole(&self, amount: Measure, round: fn(Exact) -> Exact) -> String {
        match amount {
            Measure::Count(_) => self.speaker.measure(Dimension::Count.measure(round(amount.base().rounded(6)))),
            other => self.speaker.measure(other),
        }
    }

    /// What is needed of goods, what is here of it, and what is bought: the sum with its numbers.
    pub fn proposed(&self, goods: Goods, quote: &Quote, today: Date) -> String {
        let mut said = vec![say!(market::amount_needed, amount = self.whole(quote.needed, Exact::ceiling))];
        let mut unused = None;
        match quote.here {
            Here::NotCounted => said.push(say!(market::on_hand_not_counted).to_string()),
            Here::Counted { amount, day: on } => {
                let amount = self.speaker.measure(amount);
                said.push(if on < today {
                    say!(market::on_hand_since, amount = amount, day = day(on))
                } else {
                    say!(market::on_hand_today, amount = amount)
                });
            }
            Here::Unusable { lacks, day: on } => {
                let why = yield_error(&lacks, self.book);
                unused = Some(if on < today {
                    [say!(market::count_unused, day = day(on)), why].join(" ")
                } else {
                    [say!(market::count_of_today_unused), &why].join(" ")
                });
            }
        }
        if quote.packs.is_zero() {
            said.push(say!(market::enough).to_string());
        } else {
            said.extend(self.bought(goods, quote));
        }
        said.push(say!(market::left_over, amount = self.whole(quote.left_over, Exact::floor)));
        said.extend(unused);
        said.join(" ")
    }

    /// The packs that are bought and why so many, in a row: "3 × 1,000 ea, 203 ea needed, 30 ea on hand, 3 packs per
    /// order".
    pub fn row(&self, goods: Goods, quote: &Quote) -> String {
        let amount = self.whole(quote.needed, Exact::ceiling);
        if quote.packs.is_zero() {
            return say!(market::amount_needed, amount = amount);
        }
        let pack = self.pack(goods, quote.pack);
        let packs = self.packs(quote.packs, pack);
        let mut said = vec![say!(market::packs_for_need, packs = packs, amount = amount)];
        if let Here::Counted { amount, .. } = quote.here
            && amount.base().is_positive()
        {
            said.push(say!(market::on_hand_of, amount = self.speaker.measure(amount)));
        }
        let at_least =
            pack.map(|pack| pack.at_a_time.ceiling()).filter(|least| !least.is_one() && *least == quote.packs);
        said.extend(at_least.map(|least| say!(market::packs_per_order, packs = self.speaker.number(least))));
        said.join(", ")
    }

    /// The packs of a quote: "4 × 50 lb".
    pub fn packs_of(&self, goods: Goods, quote: &Quote) -> String {
        self.packs(quote.packs, self.pack(goods, quote.pack))
    }

    /// That more of the same packs cost less in all: "Buy 4 instead of 3: $6.00 less in all."
    pub fn more_for_less(&self, quote: &Quote, more: &Quote) -> String {
        let saved = quote.cost.minus(more.cost).map_or_else(overflow, |saved| self.speaker.money(saved));
        let number = |quote: &Quote| self.speaker.number(quote.packs);
        say!(market::more_for_less, more = number(more), packs = number(quote), money = saved)
    }

    /// Who sells the pack of a quote, or that there is nobody.
    pub fn supplier_of_quote(&self, goods: Goods, quote: &Quote) -> String {
        let supplier = self.pack(goods, quote.pack).and_then(supplier_of);
        supplier.unwrap_or(say!(market::no_supplier)).to_string()
    }

    /// What is bought, and how many packs an order has at least where that is more than one.
    fn bought(&self, goods: Goods, quote: &Quote) -> Vec<String> {
        let pack = self.pack(goods, quote.pack);
        let packs = self.packs(quote.packs, pack);
        let buy = match pack.and_then(supplier_of) {
            Some(supplier) => say!(market::buy_packs_from, packs = packs, supplier = supplier),
            None => say!(market::buy_packs, packs = packs),
        };
        let at_least = pack.map(|pack| pack.at_a_time.ceiling()).filter(|number| !number.is_one());
        let at_least = at_least.map(|number| say!(market::order_at_least, packs = self.speaker.number(number)));
        [Some(buy), at_least].into_iter().flatten().collect()
    }

    /// What another pack would save. Returns `None` if it saves nothing.
    pub fn saves(&self, goods: Goods, taken: &Quote, other: &Quote) -> Option<String> {
        let saved = taken.cost.minus(other.cost).ok().filter(|saved| saved.is_positive())?;
        let pack = self.pack(goods, other.pack);
        let (packs, money) = (self.packs(other.packs, pack), self.speaker.money(saved));
        Some(match pack.and_then(supplier_of) {
            Some(supplier) => {
                say!(market::packs_would_save_from, packs = packs, supplier = supplier, money = money)
            }
            None => say!(market::packs_would_save, packs = packs, money = money),
        })
    }

    /// What all of the cheapest packs would save together.
    pub fn saves_in_all(&self, taken: Money, cheapest: Money) -> String {
        match taken.minus(cheapest) {
            Ok(saved) if saved.is_positive() => {
                say!(market::cheapest_would_save, money = self.speaker.money(saved))
            }
            Ok(_) => say!(market::no_cheaper_packs).to_string(),
            Err(error) => overflow(error),
        }
    }

    /// Why goods cannot be put on the list.
    pub fn without_pack(&self, goods: Goods, lacks: Option<YieldError>) -> String {
        match lacks {
            Some(lacks) => yield_error(&lacks, self.book),
            None => say!(drinks::needs_case_price, name = self.goods(goods)),
        }
    }

    /// A drink that is not counted, and why.
    pub fn left_out(&self, offer: OfferId, why: Unmade) -> String {
        let why = match why {
            Unmade::NotOnTheMenu => say!(market::size_not_on_menu).to_string(),
            Unmade::Stuck(reason) => offer_error(&reason, self.book),
        };
        say!(market::left_out_because, name = self.book.name(Key::Offer(offer)), why = why)
    }

    /// Goods that cost nothing. Returns an empty text if there are none.
    pub fn free(&self, goods: &[Goods]) -> String {
        if goods.is_empty() {
            return String::new();
        }
        let names: Vec<String> = goods.iter().map(|goods| self.goods(*goods)).collect();
        say!(market::free_items, names = names.join(", "))
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
        say!(market::counts_are_old, counts = old.len(), day = day(*oldest))
    }

    /// Sizes without a weekly number. Returns an empty text if there are none.
    pub fn without_number(&self, sizes: usize) -> String {
        if sizes == 0 { String::new() } else { say!(market::sizes_not_on_list, sizes = sizes) }
    }

    /// What a line is bought at: "Quoted $34.00 each, $68.00 total".
    pub fn line_cost(&self, listed: &Listed) -> String {
        let Some((each, cost)) = listed.each.zip(listed.cost) else {
            return say!(market::no_price_paid).to_string();
        };
        let surcharge = listed.pack.as_ref().map(|pack| pack.surcharge).filter(|it| !it.is_zero());
        let surcharge = surcharge.map(|it| format!(" + {}", self.speaker.money(it))).unwrap_or_default();
        let (price, total) = (format!("{}{surcharge}", self.speaker.money(each)), self.speaker.money(cost));
        match (listed.line.paid.is_some(), listed.line.packs.is_one()) {
            (true, true) => say!(market::paid_one, price = price),
            (true, false) => say!(market::paid_each, price = price, total = total),
            (false, true) => say!(market::quoted_one, price = price),
            (false, false) => say!(market::quoted_each, price = price, total = total),
        }
    }

    /// What lines cost together: "Total $120.00: $34.00 bought, $86.00 to buy."
    pub fn totals(&self, totals: &Totals) -> String {
        let money = |money| self.speaker.money(money);
        let left = totals.left().map_or_else(overflow, money);
        let said = say!(market::supplier_totals, total = money(totals.all), bought = money(totals.bought), left = left);
        match totals.unpriced {
            0 => said,
            unpriced => [said, say!(market::items_without_price, items = unpriced)].join(" "),
        }
    }

    /// How far the list is: "3 of 7 items bought".
    pub fn progress(&self, totals: &Totals) -> String {
        say!(market::items_bought, bought = number(totals.ticked), items = totals.lines)
    }

    /// One quote that a price paid changes.
    pub fn price_paid(&self, paid: &PricePaid) -> String {
        let PricePaid { goods, pack, was, now } = *paid;
        let money = |money| self.speaker.money(money);
        say!(market::paid_instead_of, item = self.choice(goods, pack), paid = money(now), quoted = money(was))
    }

    /// What carrying the prices does, before it is done.
    pub fn carried(&self, carried: &Carried, moves: &[OfferChange]) -> String {
        let prices = match carried.prices.len() {
            0 => say!(market::prices_as_quoted).to_string(),
            count => say!(market::prices_change, prices = count),
        };
        let mut said = vec![prices, watch::moves(moves, false)];
        let gone = carried.not_quoted.iter();
        said.extend(gone.map(|goods| say!(market::price_not_saved, name = self.goods(*goods))));
        said.join(" ")
    }

    /// What finishing the list does, before it is done.
    pub fn finished(&self, finished: &Finished) -> String {
        let mut said = vec![match finished.added {
            0 => say!(market::nothing_bought).to_string(),
            count => say!(market::bought_added, items = count),
        }];
        if !finished.prices.is_empty() {
            said.push(say!(market::prices_saved, prices = finished.prices.len()));
        }
        said.push(match finished.not_bought {
            0 => say!(market::list_deleted).to_string(),
            count => say!(market::list_deleted_with, items = count),
        });
        said.push(say!(market::undo_brings_back).to_string());
        for (goods, lacks) in &finished.started_anew {
            said.push(say!(market::count_starts_anew, name = self.goods(*goods)));
            said.push(yield_error(lacks, self.book));
        }
        let gone = finished.not_quoted.iter();
        said.extend(gone.map(|goods| say!(market::pack_not_added, name = self.goods(*goods))));
        said.join(" ")
    }

    /// The list as a text to send, with or without prices.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn text(&self, list: &BuyingList, prices: bool) -> Result<String, Overflow> {
        let (groups, totals) = group(self.book, list)?;
        let mut lines = vec![say!(market::list_of, day = day(list.day))];
        for group in &groups {
            lines.push(String::new());
            lines.push(if prices {
                let total = self.speaker.money(group.totals.all);
                say!(market::supplier_total, supplier = supplier(group), total = total)
            } else {
                supplier(group).to_string()
            });
            lines.extend(group.lines.iter().map(|listed| self.line(listed, prices)));
        }
        if prices && groups.len() > 1 {
            lines.push(String::new());
            lines.push(say!(market::list_total, total = self.speaker.money(totals.all)));
        }
        Ok(lines.join("\n"))
    }

    fn line(&self, listed: &Listed, prices: bool) -> String {
        let box_ = if listed.line.bought { "[x]" } else { "[ ]" };
        let name = self.goods(listed.line.goods);
        let packs = self.packs(listed.line.packs, listed.pack.as_ref());
        let what = match listed.cost.filter(|_| prices) {
            Some(cost) => say!(market::list_line_cost, name = name, packs = packs, cost = self.speaker.money(cost)),
            None => say!(market::list_line, name = name, packs = packs),
        };
        format!("{box_} {what}")
    }
}

/// The supplier of a group, or that there is none.
pub fn supplier(group: &Group) -> &str {
    if group.supplier.is_empty() { say!(market::no_supplier) } else { &group.supplier }
}

/// Who sells a pack. Returns `None` if the pack names nobody.
fn supplier_of(pack: &Pack) -> Option<&str> {
    Some(pack.supplier.as_str()).filter(|supplier| !supplier.is_empty())
}
