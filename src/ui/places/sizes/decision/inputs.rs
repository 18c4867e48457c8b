//! What an owner says for a decision: sizes, prices, numbers, what it costs once.

use std::sync::Arc;

use leptos::prelude::*;

use super::asking::{Asking, at};
use crate::app::route::{self, Route, scope_from_text, scope_text};
use crate::book::{ContainerId, Key, OfferId};
use crate::drink::price::Hands;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Exact, Money};
use crate::say;
use crate::sizes::decision::NoAnswer;
use crate::sizes::side_by_side::sold_in;
use crate::ui::address::go;
use crate::ui::fields::{Choice, Choose, Commit, Entry, Tick, asks, tried_number};
use crate::ui::live::{flag, live, rows, text};
use crate::ui::parts::Fold;
use crate::ui::places::sizes::asked;
use crate::ui::places::sizes::reaction::ReactionField;
use crate::words::{self, Example};

/// What stands for no size, or for nowhere, in a list of sizes.
const NONE: &str = "-";
/// What stands for the nearest size.
const NEAREST: &str = "";

/// Which field an offer needs for an answer.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Needs {
    /// A number a week.
    Number,
    /// A price.
    Price,
}

/// What is said for it.
#[component]
pub fn Inputs(asking: Asking, open: bool) -> impl IntoView {
    view! {
        <Fold name=say!(decide::what_changes) figure=text(move || asking.hangs.waits_for()) open=Signal::stored(open)>
            <Sizes asking />
            <Needed asking />
            <Prices asking />
            <Costs asking />
            {(!asking.adds()).then(|| view! { <ReactionField reaction=asking.reaction hangs=asking.hangs /> })}
        </Fold>
    }
}

/// The part of the menu, the size that goes, and the one that comes.
#[component]
fn Sizes(asking: Asking) -> impl IntoView {
    let (state, of) = (asking.state, asking.of);
    let scopes = Signal::derive(move || state.book.with(asked::all_scope_options));
    let with_none = move |read: fn(&crate::book::Book, route::Decision) -> Vec<ContainerId>| {
        Signal::derive(move || {
            let none = (NONE.to_string(), say!(decide::no_size).to_string());
            let sizes = state.book.with(|book| asked::container_options(book, read(book, of)));
            [none].into_iter().chain(sizes).collect::<Vec<_>>()
        })
    };
    let goes = with_none(|book, of| {
        let mut sold = sold_in(book, of.scope);
        if let Some(goes) = of.goes.filter(|goes| !sold.contains(goes)) {
            sold.push(goes);
        }
        sold
    });
    let comes = with_none(|book, of| {
        let mut all = asked::containers(book);
        all.retain(|size| of.goes != Some(*size));
        all
    });
    let value = |size: Option<ContainerId>| Signal::stored(size.map_or(NONE.to_string(), |size| size.to_string()));
    let choose = |change: fn(route::Decision, &str) -> Option<route::Decision>| -> Choose {
        let gone = || say!(decide::gone_choose_another).to_string();
        Arc::new(move |value| {
            go(Route::Decision(change(of, value).ok_or_else(gone)?));
            Ok(())
        })
    };
    let to_scope = choose(|of, value| Some(route::Decision { scope: scope_from_text(value)?, ..of }));
    let to_goes = choose(|of, value| Some(route::Decision { goes: ContainerId::from_text(value), stays: None, ..of }));
    let to_comes =
        choose(|of, value| Some(route::Decision { comes: ContainerId::from_text(value), stays: None, ..of }));
    view! {
        <Choice label=say!(decide::which_drinks) options=scopes value=Signal::stored(scope_text(of.scope)) choose=to_scope />
        <div class="fields sizes-asked">
            <Choice label=say!(decide::goes) options=goes value=value(of.goes) choose=to_goes />
            <Choice label=say!(decide::comes) options=comes value=value(of.comes) choose=to_comes />
        </div>
    }
}

/// Fields without which there is no answer. A field once needed stays while something is typed into it.
#[component]
fn Needed(asking: Asking) -> impl IntoView {
    let needed = Memo::new(move |before: Option<&Vec<(OfferId, Needs)>>| {
        let mut all = before.cloned().unwrap_or_default();
        let more = asking.answer.with(|answer| match answer {
            Err(NoAnswer::NoSales(offers)) => offers.iter().map(|offer| (*offer, Needs::Number)).collect(),
            Err(NoAnswer::NoPrice(offers) | NoAnswer::NothingLeft(offers)) => {
                offers.iter().map(|offer| (*offer, Needs::Price)).collect()
            }
            _ => Vec::new(),
        });
        all.extend(more.into_iter().filter(|one| !before.is_some_and(|before| before.contains(one))));
        all
    });
    let fields = live(move || {
        let field = |(offer, needs): (OfferId, Needs)| match needs {
            Needs::Number => number(asking, offer),
            Needs::Price => price(asking, offer),
        };
        // Where prices or numbers are asked for anyway, they stand below.
        let below = |(offer, needs): &(OfferId, Needs)| {
            asking.of.comes == Some(offer.container) && (asking.adds() || *needs == Needs::Price)
        };
        needed.get().into_iter().filter(|one| !below(one)).map(field).collect_view().into_any()
    });
    view! { <div class="fields">{fields}</div> }
}

/// Prices in the size that comes, and how many are expected of it.
#[component]
fn Prices(asking: Asking) -> impl IntoView {
    let Some(size) = asking.of.comes else { return ().into_any() };
    let keys = Memo::new(move |_| asking.drinks().into_iter().map(Key::Drink).collect::<Vec<_>>());
    let row = move |key| {
        let Key::Drink(drink) = key else { return ().into_any() };
        let offer = at(drink, size);
        let expected = asking.adds().then(|| number(asking, offer));
        view! { <div class="fields">{expected} {price(asking, offer)}</div> }.into_any()
    };
    view! { <div class="decision-prices">{rows(keys, row)}</div> }.into_any()
}

/// What an offer is sold at then.
pub fn price(asking: Asking, offer: OfferId) -> AnyView {
    let state = asking.state;
    let drink = state.book.with_untracked(|book| book.name(Key::Drink(offer.drink)));
    let value = text(move || asking.price_of(offer).map(|price| state.plain_money(price)).unwrap_or_default());
    let commit = tried_number(
        Example::MenuPrice,
        Box::new(move |read: Result<Option<Exact>, String>, _| {
            let number = read?;
            if number.is_some_and(|number| number.is_zero()) {
                let example = Example::MenuPrice.said(&state.speaker.get_untracked());
                return Err(say!(book::price_above_zero, example = example));
            }
            asking.price(offer, number.map(Money::from_major));
            Ok(())
        }),
    );
    let label = say!(decide::new_price_for, drink = drink);
    let asks = asks(Kind::Price, Key::Offer(offer), "decided/price").while_tried();
    view! { <Entry label asks hangs=asking.hangs example=say!(common::none_yet) value commit /> }.into_any()
}

/// How many of an offer are sold in a week.
pub fn number(asking: Asking, offer: OfferId) -> AnyView {
    let state = asking.state;
    // The heading says the size of what comes.
    let of = if asking.adds() { Key::Drink(offer.drink) } else { Key::Offer(offer) };
    let drink = state.book.with_untracked(|book| book.name(of));
    let value = text(move || {
        let typed = asking.told.with(|told| told.weekly(offer));
        typed.map(|number| state.number(number)).unwrap_or_default()
    });
    let commit = tried_number(
        Example::WeeklySales,
        Box::new(move |read: Result<Option<Exact>, String>, _| {
            asking.weekly(offer, asked::a_week(state, read?)?);
            Ok(())
        }),
    );
    let label = say!(decide::expected_of, drink = drink);
    view! { <Entry label hangs=asking.hangs example=say!(common::none_yet) value commit /> }.into_any()
}

/// What a size costs to keep, where buyers turn, what it costs once, and whether labor counts.
#[component]
fn Costs(asking: Asking) -> impl IntoView {
    let state = asking.state;
    let money = move |read: fn(Asking) -> Money| text(move || state.money_if_any(read(asking)));
    let keeping = typed(asking, |asking, money| asking.told.update(|told| told.keeping = money.unwrap_or_default()));
    let labels = typed(asking, |asking, money| asking.labels.set(money.unwrap_or_default()));
    let left_over = typed(asking, |asking, money| asking.left_over.set(money));
    let left = text(move || {
        let found = || {
            let costs = asking.once().ok()?.0.left_over;
            costs.iter().filter_map(|left| left.cost).try_fold(Money::ZERO, Money::plus).ok()
        };
        let typed = asking.left_over.get().map(|typed| state.plain_money(typed));
        typed.or_else(|| Some(words::to_cent(found()?, &state.speaker.get()))).unwrap_or_default()
    });
    let counts = flag(move || asking.told.with(|told| told.hands == Hands::Counted));
    let one = !asking.switches();
    let upkeep = one.then(|| {
        view! {
            <Entry
                label=say!(decide::upkeep_per_size)
                hangs=asking.hangs
                example=say!(common::none)
                value=money(|asking| asking.told.with(|told| told.keeping))
                commit=keeping
            />
        }
    });
    view! {
        <div class="fields">
            {asking.of.goes.is_some().then(|| view! { <Turns asking /> })}
            {upkeep}
            <Entry
                label=say!(decide::labels_and_printing)
                hangs=asking.hangs
                example=say!(common::none)
                value=money(|asking| asking.labels.get())
                commit=labels
            />
            {(!asking.adds()).then(|| view! {
                <Entry label=say!(decide::leftover_stock) hangs=asking.hangs example=say!(common::none) value=left commit=left_over />
            })}
        </div>
        <div class="counted">
            <Tick done=counts set=move |counted| asking.count_labor(counted)>{say!(decide::count_labor)}</Tick>
        </div>
    }
}

/// Money that is typed for it.
fn typed(asking: Asking, take: fn(Asking, Option<Money>)) -> Commit {
    tried_number(
        Example::OneTimeCost,
        Box::new(move |read: Result<Option<Exact>, String>, _| {
            take(asking, read?.map(Money::from_major));
            Ok(())
        }),
    )
}

/// Where the buyers of a size that goes turn.
#[component]
fn Turns(asking: Asking) -> impl IntoView {
    let state = asking.state;
    let of = asking.of;
    if of.comes.is_some() {
        return ().into_any();
    }
    let options = Signal::derive(move || {
        let nearest = (NEAREST.to_string(), say!(decide::nearest_size).to_string());
        let leave = (NONE.to_string(), say!(decide::they_leave).to_string());
        let sizes = state.book.with(|book| {
            let mut sold = sold_in(book, of.scope);
            sold.retain(|size| of.goes != Some(*size));
            asked::container_options(book, sold)
        });
        [nearest].into_iter().chain(sizes).chain([leave]).collect::<Vec<_>>()
    });
    let value = text(move || {
        asking.told.with(|told| match told.turns.first() {
            None => NEAREST.to_string(),
            Some((_, None)) => NONE.to_string(),
            Some((_, Some(size))) => size.to_string(),
        })
    });
    let choose: Choose = Arc::new(move |value| {
        asking.turn(match value {
            NEAREST => None,
            NONE => Some(None),
            size => Some(ContainerId::from_text(size)),
        });
        Ok(())
    });
    view! { <Choice label=say!(decide::buyers_turn_to) options value choose /> }.into_any()
}
