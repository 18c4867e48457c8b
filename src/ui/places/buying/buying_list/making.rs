//! Making a list: from what is planned, a usual week, and what is here.

use std::sync::Arc;

use leptos::prelude::*;

use super::said;
use crate::app::route::Route;
use crate::book::{Edit, Goods, OfferId, PackId, Record};
use crate::buying::buying_list::{Here, Proposal, Proposed, Quote, makes, propose};
use crate::drink::make::Unmade;
use crate::foundation::in_order;
use crate::foundation::measure::{Date, Exact, Money, Overflow};
use crate::say;
use crate::ui::fields::{Ask, Choice, Choose, Day, Example, Hangs, Tick, asked_number};
use crate::ui::kept;
use crate::ui::live::{flag, live, press, text, trouble, when};
use crate::ui::parts::{Fold, Section, figures};
use crate::ui::state::AppState;
use crate::ui::today::today;
use crate::words;

/// The most weeks that a list is made for.
const MOST_WEEKS: i64 = 52;

/// What is asked, and the proposal that answers it. Nothing of it is kept in the book.
#[derive(Clone, Copy)]
struct Asked {
    state: AppState,
    /// Batches from this day on.
    from: RwSignal<Date>,
    /// But not those of these days.
    without: RwSignal<Vec<Date>>,
    /// And so many usual weeks.
    weeks: RwSignal<String>,
    /// In the cheapest packs rather than those bought now.
    cheapest: RwSignal<bool>,
    /// But these goods in another pack.
    taken: RwSignal<Vec<(Goods, PackId)>>,
    /// And more of these, since that costs less in all.
    more: RwSignal<Vec<Goods>>,
    /// The fields that the proposal hangs on.
    hangs: Hangs,
    number: Memo<Exact>,
    proposal: Memo<Result<Proposal, Overflow>>,
}

impl Asked {
    fn new(state: AppState) -> Asked {
        let from = kept::chosen("from", today(), |day| day.to_string(), Date::from_text);
        let without = RwSignal::new(Vec::<Date>::new());
        let weeks = kept::text("weeks", "");
        // What cannot be read leaves what stood before.
        let number = Memo::new(move |before: Option<&Exact>| match asked_weeks(state, weeks) {
            None => Exact::ZERO,
            Some(Ok(number)) => number,
            Some(Err(_)) => before.copied().unwrap_or_default(),
        });
        let proposal = Memo::new(move |_| {
            state.book.with(|book| {
                let days: Vec<Date> = planned(state, from.get())
                    .into_iter()
                    .filter(|day| without.with(|out| !out.contains(day)))
                    .collect();
                let makes = makes(book, &days, number.get())?;
                state.ledger.with(|ledger| propose(book, ledger, &makes))
            })
        });
        let (cheapest, taken) = (kept::flag("cheapest", false), RwSignal::new(Vec::new()));
        let more = RwSignal::new(Vec::new());
        let hangs = Hangs::new();
        Asked { state, from, without, weeks, cheapest, taken, more, hangs, number, proposal }
    }

    /// The pack that goods are bought in.
    fn chosen(self, proposed: &Proposed) -> Option<Quote> {
        let taken = self.taken.with(|taken| taken.iter().find(|(goods, _)| *goods == proposed.goods).copied());
        let usual = if self.cheapest.get() { proposed.cheapest() } else { proposed.now() };
        let quote = taken.and_then(|(_, pack)| proposed.in_pack(pack)).or(usual)?;
        let more = self.more.with(|more| more.contains(&proposed.goods));
        Some(self.more_for_less(proposed.goods, &quote).filter(|_| more).unwrap_or(quote))
    }

    fn more_for_less(self, goods: Goods, quote: &Quote) -> Option<Quote> {
        self.state.book.with(|book| quote.more_for_less(book, goods)).ok().flatten()
    }

    fn proposed<T: Default>(self, read: impl FnOnce(&Proposal) -> T) -> T {
        self.proposal.with(|proposal| proposal.as_ref().map(read).unwrap_or_default())
    }

    /// How many lines the list would have.
    fn lines(self) -> usize {
        let buys = |line: &&Proposed| self.chosen(line).is_some_and(|quote| quote.packs.is_positive());
        self.proposed(|proposal| proposal.lines.iter().filter(buys).count())
    }

    fn cost(self, choose: &dyn Fn(&Proposed) -> Option<Quote>) -> Result<Money, Overflow> {
        self.proposal.with(|proposal| proposal.as_ref().map_err(|error| *error)?.cost(choose))
    }
}

/// The days from this one on that something is planned for.
fn planned(state: AppState, from: Date) -> Vec<Date> {
    state.book.with(|book| {
        book.batches().filter(|batch| batch.is_planned()).map(|batch| batch.day).filter(|day| *day >= from).collect()
    })
}

/// The number of usual weeks. Returns `None` if nothing is typed.
fn asked_weeks(state: AppState, weeks: RwSignal<String>) -> Option<Result<Exact, String>> {
    let most = Exact::new(MOST_WEEKS, 0);
    let fits = |number: Exact| {
        if number > most { Err(say!(market::too_many_weeks, weeks = state.number(most))) } else { Ok(number) }
    };
    asked_number(state, weeks, Example::Weeks).map(|read| read.and_then(fits))
}

/// Making a list.
#[component]
pub fn Making(
    /// Hears that it is made.
    made: impl Fn() + Copy + Send + Sync + 'static,
) -> impl IntoView {
    let asked = Asked::new(AppState::here());
    let overflow = move || asked.proposal.with(|proposal| proposal.as_ref().err().copied().map(words::overflow));
    let any = move || asked.proposed(|proposal| *proposal != Proposal::default());
    view! {
        <div class="panes">
            <div class="pane pane-asked"><Asking asked /> {trouble(overflow)}</div>
            <div class="pane">
                {asked.hangs.answer(move || when(any, move || view! { <Answer asked made /> }.into_any()))}
            </div>
        </div>
    }
}

/// What is to be made.
#[component]
fn Asking(asked: Asked) -> impl IntoView {
    let state = asked.state;
    let choose_day: Choose = Arc::new(move |chosen| {
        let day = Date::from_text(chosen).ok_or(say!(market::choose_day))?;
        asked.from.set(day);
        Ok(())
    });
    let days = Memo::new(move |_| planned(state, asked.from.get()));
    let tick = move |day: Date| {
        let set = move |taken: bool| {
            asked.without.update(|without| {
                without.retain(|it| *it != day);
                if !taken {
                    without.push(day);
                }
            });
        };
        view! {
            <Tick done=flag(move || asked.without.with(|without| !without.contains(&day))) set>
                {words::batch(day)}
            </Tick>
        }
    };
    let ticks = live(move || days.get().into_iter().map(tick).collect_view().into_any());
    let none =
        text(
            move || {
                if days.with(Vec::is_empty) { say!(market::no_batches_planned).to_string() } else { String::new() }
            },
        );
    let error = text(move || asked_weeks(state, asked.weeks).and_then(Result::err).unwrap_or_default());
    let unknown = text(move || {
        if !asked.number.get().is_positive() {
            return String::new();
        }
        let sizes = state.book.with(|book| book.offers().filter(|offer| offer.weekly.is_none()).count());
        said(state, |words| words.without_number(sizes))
    });
    view! {
        <Section heading=say!(counter::drinks_to_make) about=say!(market::drinks_to_make_about)>
            <Day label=say!(market::batches_from) value=text(move || asked.from.get().to_string()) choose=choose_day />
            <div role="group" aria-label=say!(market::planned_batches) class="buy-chosen">
                {ticks}
            </div>
            <p class="hollow">{none}</p>
            <Ask label=say!(market::weeks_of_sales) text=asked.weeks error hangs=asked.hangs />
            <p class="hollow">{unknown}</p>
        </Section>
    }
}

/// What is to be bought for it.
#[component]
fn Answer(asked: Asked, made: impl Fn() + Copy + Send + Sync + 'static) -> impl IntoView {
    let state = asked.state;
    let refused = RwSignal::new(None::<String>);
    let make = move || {
        let list = asked.proposed(|proposal| Some(proposal.list(today(), &|line| asked.chosen(line))));
        let Some(list) = list else { return };
        match state.apply(say!(market::make_buying_list), Edit::Put(Record::BuyingList(list))) {
            Ok(()) => made(),
            Err(sentence) => refused.set(Some(sentence)),
        }
    };
    let lines = move || asked.lines();
    let all = figures(move || {
        let cost = asked.cost(&|line| asked.chosen(line)).map_or_else(words::overflow, |cost| state.money(cost));
        vec![
            (say!(market::total_cost).to_string(), cost, None),
            (say!(market::items).to_string(), lines().to_string(), None),
        ]
    });
    let packs = Signal::stored(vec![
        ("now".to_string(), say!(market::current_packs).to_string()),
        ("cheapest".to_string(), say!(market::cheapest_packs).to_string()),
    ]);
    let which = text(move || if asked.cheapest.get() { "cheapest" } else { "now" }.to_string());
    let choose: Choose = Arc::new(move |chosen| {
        asked.cheapest.set(chosen == "cheapest");
        asked.taken.set(Vec::new());
        Ok(())
    });
    let saves = text(move || {
        let costs = asked.cost(&|line| asked.chosen(line)).and_then(|now| Ok((now, asked.cost(&Proposed::cheapest)?)));
        costs.map_or_else(words::overflow, |(now, then)| said(state, |words| words.saves_in_all(now, then)))
    });
    let old = text(move || asked.proposed(|proposal| said(state, |words| words.old_counts(proposal, today()))));
    let is_old = move || !old.with(String::is_empty);
    let free = text(move || asked.proposed(|proposal| said(state, |words| words.free(&proposal.free))));
    let replaces = text(move || {
        if state.book.with(|book| book.buying_list().is_some()) {
            say!(market::replaces_list).to_string()
        } else {
            String::new()
        }
    });
    let make_button = move || {
        view! {
            <button class="main" on:click=press(make)>
                {say!(market::make_list)}
            </button>
        }
        .into_any()
    };
    let enough = text(move || {
        let all = asked.proposed(|proposal| proposal.lines.len());
        say!(market::items_listed, items = all.saturating_sub(lines()))
    });
    let count_again = move || {
        view! {
            <p class="hollow">{old} " " <a href=Route::OnHand.address()>{say!(market::count_again)}</a></p>
        }
        .into_any()
    };
    view! {
        <section class="section">
            <h2>{say!(market::what_to_buy)}</h2>
            <div class="answer-bar buy-answer">
                <dl class="figures">{all}</dl>
                {when(move || lines() > 0, make_button)}
            </div>
            {trouble(move || refused.get())}
            <p class="hollow">{replaces}</p>
            <NotListed asked />
            {when(is_old, count_again)}
            {live(move || rows_to_buy(asked))}
            {when(
                move || lines() == 0,
                || view! { <p>{say!(market::nothing_to_buy)}</p> }.into_any(),
            )}
            <p class="about">{say!(market::rows_rounded_up)} " " {say!(market::what_to_buy_about)}</p>
            <Choice label=say!(goods::packs) options=packs value=which choose />
            <p class="hollow">{saves}</p>
        </section>
        <Fold name=say!(market::enough_on_hand) figure=enough>
            <ul class="buy">{live(move || rows(asked, |_| true, false).0)}</ul>
            <p class="hollow">{free}</p>
        </Fold>
    }
}

/// What is to be bought, supplier by supplier, each with what it costs there.
fn rows_to_buy(asked: Asked) -> AnyView {
    let lines = asked.proposed(|proposal| proposal.lines.clone());
    let mut suppliers: Vec<String> = Vec::new();
    for line in &lines {
        if let Some(quote) = asked.chosen(line).filter(|quote| quote.packs.is_positive()) {
            in_order::insert_once(&mut suppliers, supplier_of(asked, line.goods, &quote));
        }
    }
    let group = |name: String| {
        let (rows, cost) = rows(asked, |seller| seller == name, true);
        view! {
            <div class="buy-group">
                <h3>{name.clone()} <span class="soft">{cost}</span></h3>
                <ul class="buy">{rows}</ul>
            </div>
        }
    };
    suppliers.into_iter().map(group).collect_view().into_any()
}

fn supplier_of(asked: Asked, goods: Goods, quote: &Quote) -> String {
    said(asked.state, |words| words.supplier_of_quote(goods, quote))
}

/// Goods of these suppliers that are to be bought, or of which enough is here, and what they cost
/// together.
fn rows(asked: Asked, of: impl Fn(&str) -> bool, missing: bool) -> (AnyView, String) {
    let lines = asked.proposed(|proposal| proposal.lines.clone());
    let mut cost = Ok(Money::ZERO);
    let mut rows = Vec::new();
    for line in lines {
        let quote = asked.chosen(&line).filter(|quote| quote.packs.is_positive() == missing);
        if let Some(quote) = quote.filter(|quote| of(&supplier_of(asked, line.goods, quote))) {
            cost = cost.and_then(|sum: Money| sum.plus(quote.cost));
            rows.push(row(asked, &line, quote));
        }
    }
    (rows.into_any(), cost.map_or_else(words::overflow, |cost| asked.state.money(cost)))
}

fn row(asked: Asked, line: &Proposed, quote: Quote) -> AnyView {
    let (state, goods) = (asked.state, line.goods);
    let name = said(state, |words| words.goods(goods));
    let sentence = said(state, |words| words.proposed(goods, &quote, today()));
    let cost = if quote.packs.is_positive() { state.money(quote.cost) } else { String::new() };
    let less =
        line.cheapest().and_then(|other| Some((other.pack, said(state, |words| words.saves(goods, &quote, &other))?)));
    let take = move |pack: PackId| {
        asked.taken.update(|taken| {
            taken.retain(|(other, _)| *other != goods);
            taken.push((goods, pack));
        });
    };
    let less = less.map(|(pack, sentence)| {
        view! {
            <p class="soft">
                {sentence} " "
                <button
                    class="quiet"
                    aria-label=say!(market::use_these_packs_for, name = &name)
                    on:click=press(move || take(pack))
                >
                    {say!(market::use_these_packs)}
                </button>
            </p>
        }
    });
    let more = asked.more_for_less(goods, &quote).map(|more| {
        let packs = said(state, |words| words.packs_of(goods, &more));
        view! {
            <p class="buy-more">
                {said(state, |words| words.more_for_less(&quote, &more))} " "
                <button
                    class="button"
                    aria-label=say!(market::buy_packs_instead_for, packs = packs.clone(), name = &name)
                    on:click=press(move || asked.more.update(|more| more.push(goods)))
                >
                    {say!(market::buy_packs_instead, packs = packs)}
                </button>
            </p>
        }
    });
    // A count that cannot be used is mended where the goods are described.
    let unusable = matches!(quote.here, Here::Unusable { .. }).then_some("trouble");
    view! {
        <li>
            <details class="buy-need" open=unusable.is_some()>
                <summary>
                    <strong>{name.clone()}</strong>
                    <span class="soft">{said(state, |words| words.row(goods, &quote))}</span>
                    <span class="buy-cost">{cost}</span>
                </summary>
                <p class=unusable.unwrap_or("soft")>{sentence}</p>
                {less}
                <a class="line-name" href=Route::of_goods(goods).address()>
                    {name.clone()}
                </a>
            </details>
            {more}
        </li>
    }
    .into_any()
}

/// What the list cannot have, each with the way to where it is mended.
#[component]
fn NotListed(asked: Asked) -> impl IntoView {
    let state = asked.state;
    let line = |address: String, sentence: String| view! { <li><a href=address>{sentence}</a></li> };
    let drink = move |(offer, why): (OfferId, Unmade)| {
        let to = if why == Unmade::NotOnTheMenu { Route::Drink(offer.drink) } else { Route::Offer(offer) };
        line(to.address(), said(state, |words| words.left_out(offer, why)))
    };
    let goods = move |(goods, lacks)| {
        line(Route::of_goods(goods).address(), said(state, |words| words.without_pack(goods, lacks)))
    };
    let list = move || {
        let (without, left_out) = asked.proposed(|it| (it.without_pack.clone(), it.left_out.clone()));
        view! {
            <div class="trouble">
                <p>{say!(market::left_out)}</p>
                <ul class="users">
                    {left_out.into_iter().map(drink).collect_view()}
                    {without.into_iter().map(goods).collect_view()}
                </ul>
            </div>
        }
        .into_any()
    };
    let any = move || asked.proposed(|it| !it.without_pack.is_empty() || !it.left_out.is_empty());
    live(move || if any() { list() } else { ().into_any() })
}
