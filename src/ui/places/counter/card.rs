//! A recipe card: amounts to use, in the order of adding, in figures large enough to read from
//! a metre away.

use leptos::prelude::*;

use crate::book::{Drink, Key, OfferId, Stage};
use crate::fill::{ScaledLine, fill_line};
use crate::label::allergens_of;
use crate::ledger::Priced;
use crate::ui::glass::{glass, layers};
use crate::ui::live::{live, rows, text, trouble, when};
use crate::ui::order;
use crate::ui::parts::{Back, page_of};
use crate::ui::route::Route;
use crate::ui::state::AppState;
use crate::words;

/// The recipe card of a drink at a size.
#[component]
pub fn Card(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Counter, "Counter", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let sizes = Memo::new(move |_| state.book.with(|book| order::offers(book, id.drink)));
    let size = move |key| {
        let Key::Offer(offer) = key else { return ().into_any() };
        let name = text(move || state.book.with(|book| book.name(Key::Container(offer.container))));
        let here = (offer == id).then_some("page");
        view! { <a class="chip counter-size" href=Route::Card(offer).address() aria-current=here>{name}</a> }.into_any()
    };
    let pressed = move || {
        let pressed = |drink: &Drink| drink.lines.iter().any(|line| line.stage == Stage::Pressed);
        state.book.with(|book| book.drink(id.drink).is_some_and(pressed))
    };
    let allergens = text(move || {
        state.book.with(|book| {
            let drink = book.drink(id.drink);
            drink.map(|drink| words::allergens(&allergens_of(book, drink), book)).unwrap_or_default()
        })
    });
    let amounts = move || match state.priced(id, |priced| Some(priced.clone())) {
        Some(priced) => amounts_of(state, id, priced),
        None => ().into_any(),
    };
    view! {
        <Back to=Route::Counter name="All cards" />
        <h1 class="recipe-name">{drink} <span class="h1-size">{container}</span></h1>
        <nav class="chips" aria-label="Sizes">
            {rows(sizes, size)}
        </nav>
        {trouble(move || state.stuck(id))}
        {live(amounts)}
        <div class="cautions">
            <p class="allergens">{allergens}</p>
            {when(
                pressed,
                || {
                    view! {
                        <p>
                            "Untreated juice can carry germs. Local rules may ask for a warning on the label; follow them."
                        </p>
                    }
                        .into_any()
                },
            )}
        </div>
    }
}

fn amounts_of(state: AppState, id: OfferId, priced: Priced) -> AnyView {
    let row = move |line: ScaledLine| {
        let name = state.book.with(|book| book.name(Key::Ingredient(line.ingredient)));
        let written = state.book.with(|book| {
            let lines = &book.drink(id.drink)?.lines;
            lines.iter().find(|it| it.id == line.line).map(|it| it.amount.unit)
        });
        let stage = line.ice.map_or(words::stage(line.stage), |ice| words::ice_place(ice.place));
        view! {
            <li>
                <span class="recipe-amount">{state.counter_amount(line.to_use, written)}</span>
                <span class="recipe-ingredient">{name} " " <span class="soft">{stage}</span></span>
            </li>
        }
    };
    let fill = priced.fill;
    let container = state.book.with(|book| book.container(id.container).cloned());
    let line_at = container.as_ref().and_then(|container| fill_line(container).ok()?);
    let empty = state.volume(fill.headspace);
    let fill_to = match line_at {
        Some(line) => format!("Fill to here: {} under the rim, {empty} left empty", state.length(line.below_rim)),
        None => format!("Fill to here: {empty} left empty under the rim"),
    };
    let picture = container.map(|container| glass(&container, &fill, layers(&priced.scaled)));
    view! {
        <ol class="recipe">{priced.scaled.lines.into_iter().map(row).collect_view()}</ol>
        <div class="recipe-fill">
            {picture}
            <p>
                <span class="recipe-amount">{state.volume(fill.volume)}</span>
                <span class="recipe-ingredient">{fill_to}</span>
            </p>
        </div>
    }
    .into_any()
}
