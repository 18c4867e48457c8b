//! Whether drinks can be sold under a price.

mod drinks;

use std::sync::Arc;
use std::time::Duration;

use leptos::prelude::*;

use super::asked;
use super::remembered::{point, remember_point};
use crate::app::route::{Route, scope_from_text, scope_text};
use crate::book::{Book, ContainerId, DrinkId, Key, Offer, OfferId, Scope, TaxPlace};
use crate::foundation::measure::Money;
use crate::say;
use crate::sizes::decision::{BelowPrice, below_price};
use crate::sizes::price_point::sizes_of;
use crate::sizes::side_by_side::sold_in;
use crate::ui::address::go;
use crate::ui::fields::{Ask, Choice, Choose, Hangs, asked_price};
use crate::ui::kept;
use crate::ui::live::{live, press, text, when};
use crate::ui::parts::{Back, Fold, Says, Section, answer_figures, is_wide, verdict};
use crate::ui::state::AppState;
use crate::words::{self, price_points};
use drinks::Drinks;

/// How long after a change all sizes are worked out anew.
const PAUSE: Duration = Duration::from_millis(150);

/// What is asked. Nothing of it is kept in the book.
#[derive(Clone, Copy)]
struct Asking {
    scope: Scope,
    point: RwSignal<String>,
    /// The containers chosen, as text; those that it is sold in where none was chosen yet.
    containers: RwSignal<String>,
}

impl Asking {
    /// The containers to choose from: all for one drink, those that they are sold in for more.
    fn offered(self, book: &Book) -> Vec<ContainerId> {
        match self.scope {
            Scope::Drink(_) => asked::containers(book),
            scope => sold_in(book, scope),
        }
    }

    fn chosen(self, book: &Book) -> Vec<ContainerId> {
        let text = self.containers.get();
        if text.is_empty() {
            // What has no price is not sold yet.
            let asked = |size: &ContainerId| {
                let mut here = book.offers().filter(|it| it.container == *size && book.belongs(it.drink, self.scope));
                here.any(|offer| offer.price.is_some())
            };
            let (priced, none): (Vec<_>, Vec<_>) = sold_in(book, self.scope).into_iter().partition(asked);
            return if priced.is_empty() { none } else { priced };
        }
        text.split(' ').filter_map(ContainerId::from_text).collect()
    }

    /// The answer. Returns `None` without a price.
    fn answer(self, state: AppState, book: &Book) -> Option<Answer> {
        let menu = asked_price(state, self.point)?.ok()?;
        let offers = sizes_of(book, self.scope, &self.chosen(book));
        // With the tax in the price, less of the same price is left.
        let below = state.ledger.with(|ledger| below_price(book, ledger, &offers, menu)).unwrap_or_default();
        let without = |offer: &&Offer| offer.price.is_none() && book.belongs(offer.drink, self.scope);
        let mut uncounted: Vec<OfferId> = book.offers().filter(without).map(Offer::id).collect();
        if !self.containers.with(String::is_empty) {
            let chosen = self.chosen(book);
            uncounted.retain(|offer| chosen.contains(&offer.container) && !offers.contains(offer));
        }
        Some(Answer { menu, below, uncounted })
    }
}

/// What comes out at a price.
#[derive(Clone)]
struct Answer {
    menu: Money,
    below: BelowPrice,
    /// What has no price yet and is not looked at.
    uncounted: Vec<OfferId>,
}

/// Whether drinks can be sold under a price.
#[component]
pub fn PricePoint(
    /// The part of the menu.
    scope: Scope,
) -> impl IntoView {
    let state = AppState::here();
    let first = point(state).map(|point| state.plain_money(point)).unwrap_or_default();
    let asking = Asking { scope, point: RwSignal::new(first), containers: kept::text("sizes", "") };
    let any = move || state.book.with(|book| book.offers().any(|offer| book.belongs(offer.drink, scope)));
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(decide::price_limit_teach)}</h2>
                <p>{say!(decide::price_limit_teach_about)}</p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Sizes name=say!(first::sizes) />
        <h1>{say!(decide::sell_under)}</h1>
        {when(move || !any(), teach)}
        {when(any, move || view! { <Page asking /> }.into_any())}
    }
}

#[component]
fn Page(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let scopes = Signal::derive(move || state.book.with(asked::all_scope_options));
    let choose: Choose = Arc::new(move |value| {
        let scope = scope_from_text(value).ok_or_else(|| say!(decide::gone_choose_another).to_string())?;
        go(Route::PricePoint(scope));
        Ok(())
    });
    let error = text(move || asked_price(state, asking.point).and_then(Result::err).unwrap_or_default());
    let answer = RwSignal::new(None::<Answer>);
    let work_out = move || {
        answer.set(state.book.with_untracked(|book| untrack(|| asking.answer(state, book))));
    };
    work_out();
    // Working out a whole menu is too much for each key that is pressed.
    let mut after_typing = debounce(PAUSE, move |()| work_out());
    let many = text(move || words::count(state.book.with(|book| asking.chosen(book).len())));
    let taxed = text(move || {
        let place = state.book.with(|book| book.settings().tax.place);
        match place {
            TaxPlace::InThePrice => say!(decide::limit_with_tax),
            TaxPlace::AddedAtTheTill => say!(decide::limit_before_tax),
        }
        .to_string()
    });
    let hangs = Hangs::new();
    Effect::new(move |_| {
        state.book.track();
        asking.containers.track();
        // What does not read changes nothing.
        if let Ok(point) = asked_price(state, asking.point).transpose() {
            remember_point(state, point);
        }
        after_typing(());
    });
    view! {
        <div class="panes">
            <div class="pane-asked price-asked">
                <section class="section">
                    <div class="fields">
                        <Choice
                            label=say!(decide::which_drinks)
                            options=scopes
                            value=Signal::stored(scope_text(asking.scope))
                            choose=choose
                        />
                        <Ask label=say!(decide::sell_for_no_more_than) text=asking.point error=error hangs />
                    </div>
                    <p class="soft">{taxed}</p>
                </section>
                <Fold name=say!(decide::sizes_shown) figure=many open=Signal::stored(is_wide())>{chips(state, asking)}</Fold>
            </div>
            <div class="pane">{hangs.answer(move || shown(state, answer))}</div>
        </div>
    }
}

/// The verdict, the tightest, and every drink in every size.
fn shown(state: AppState, answer: RwSignal<Option<Answer>>) -> AnyView {
    let said = move || {
        answer.with(|answer| match answer {
            None => (Says::Open, say!(decide::type_a_price).to_string()),
            Some(Answer { menu, below, .. }) => {
                let (can, cannot) = (below.can(), below.cannot());
                let (all, price) = (can.saturating_add(cannot), state.money(*menu));
                match (cannot, all) {
                    (_, 0) => (Says::Open, say!(decide::choose_a_size).to_string()),
                    (0, _) => (Says::Yes, say!(decide::all_sizes_fit, price = price, sizes = all)),
                    _ if can == 0 => (Says::No, say!(decide::no_size_fits, price = price, sizes = words::count(all))),
                    _ => {
                        let all = words::count(all);
                        (Says::Open, say!(decide::some_sizes_fit, price = price, fit = can, sizes = all))
                    }
                }
            }
        })
    };
    let some = move || answer.with(|answer| answer.as_ref().is_some_and(|answer| !answer.below.rows.is_empty()));
    let lines = live(move || {
        let said = answer.with(|answer| {
            let Some(Answer { below, uncounted, .. }) = answer else { return Vec::new() };
            state.book.with(|book| price_points::said(below, uncounted, book, &state.speaker.get()))
        });
        said.into_iter().map(|line| view! { <p>{line}</p> }).collect_view().into_any()
    });
    let taxed = move || {
        let found = answer.with(|answer| Some((answer.as_ref()?.menu, answer.as_ref()?.below.tightest()?.offer.drink)));
        let Some((menu, drink)) = found else { return Vec::new() };
        let (without, with) = before_and_after(state, menu, drink);
        vec![(say!(decide::before_tax).to_string(), without), (say!(decide::after_tax).to_string(), with)]
    };
    let drinks = move || view! { <Drinks answer /> }.into_any();
    view! {
        <section class="section">
            {verdict(said)}
            {lines}
            {when(some, move || answer_figures(taxed))}
        </section>
        {when(some, move || view! { <Section heading=say!(decide::by_size)>{drinks()}</Section> }.into_any())}
    }
    .into_any()
}

/// A menu price of a drink without the tax in it, and with the tax on it.
fn before_and_after(state: AppState, menu: Money, drink: DrinkId) -> (String, String) {
    state.book.with(|book| {
        let settings = book.settings();
        let tax = book.drink(drink).map_or(settings.tax, |drink| settings.tax_of(drink));
        let rate = || crate::foundation::measure::Exact::ONE.plus(tax.rate.fraction());
        let (without, with) = match tax.place {
            TaxPlace::InThePrice => (rate().and_then(|rate| menu.over(rate)), Ok(menu)),
            TaxPlace::AddedAtTheTill => (Ok(menu), rate().and_then(|rate| menu.times(rate))),
        };
        let said = |money: Result<Money, _>| money.map_or_else(words::overflow, |money| state.money(money));
        (said(without), said(with))
    })
}

/// The containers, each to be taken in or left out.
fn chips(state: AppState, asking: Asking) -> AnyView {
    let chip = move |id: ContainerId| {
        let name = state.book.with(|book| book.name(Key::Container(id)));
        let pressed = text(move || state.book.with(|book| asking.chosen(book).contains(&id)).to_string());
        let toggle = move || {
            let mut chosen = state.book.with_untracked(|book| untrack(|| asking.chosen(book)));
            match chosen.iter().position(|other| *other == id) {
                Some(place) => drop(chosen.remove(place)),
                None => chosen.push(id),
            }
            // In their own order, smallest fill first.
            let all = state.book.with_untracked(asked::containers);
            let chosen = all.into_iter().filter(|id| chosen.contains(id)).map(|id| id.to_string());
            let chosen = chosen.collect::<Vec<_>>().join(" ");
            // None chosen is not the same as nothing chosen yet.
            asking.containers.set(if chosen.is_empty() { "-".to_string() } else { chosen });
        };
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(toggle)>
                {name}
            </button>
        }
    };
    let offered = Memo::new(move |_| state.book.with(|book| asking.offered(book)));
    let chips = live(move || offered.get().into_iter().map(chip).collect_view().into_any());
    view! {
        <div class="chips" role="group" aria-label=say!(decide::sizes_shown)>
            {chips}
        </div>
    }
    .into_any()
}
