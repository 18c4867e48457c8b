//! A recipe card: amounts to use, in the order of adding, in figures large enough to read from
//! a metre away.

use leptos::prelude::*;

use crate::book::{DrinkKind, Key, OfferId};
use crate::fill::{Fill, ScaledLine};
use crate::ledger::Priced;
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
    let pressed = move || state.book.with(|book| book.drink(id.drink).map(|it| it.kind)) == Some(DrinkKind::Pressed);
    let amounts = move || match state.priced(id, |priced| Some(priced.clone())) {
        Some(priced) => view! { <Amounts id priced /> }.into_any(),
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
            <p>"Allergens are not kept in this book yet: ask, and check every label."</p>
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

#[component]
fn Amounts(id: OfferId, priced: Priced) -> impl IntoView {
    let state = AppState::here();
    let line = move |line: ScaledLine| {
        let name = state.book.with(|book| book.name(Key::Ingredient(line.ingredient)));
        let written = state.book.with(|book| {
            let lines = &book.drink(id.drink)?.lines;
            lines.iter().find(|it| it.id == line.line).map(|it| it.amount.unit)
        });
        view! {
            <li>
                <span class="recipe-amount">{state.counter_amount(line.to_use, written)}</span>
                <span class="recipe-ingredient">{name} " " <span class="soft">{words::stage(line.stage)}</span></span>
            </li>
        }
    };
    let fill = priced.fill;
    view! {
        <ol class="recipe">{priced.scaled.lines.into_iter().map(line).collect_view()}</ol>
        <div class="recipe-fill">
            <Glass fill />
            <p>
                <span class="recipe-amount">{state.volume(fill.volume)}</span>
                <span class="recipe-ingredient">
                    {format!("Fill to here: {} left empty under the rim", state.volume(fill.headspace))}
                </span>
            </p>
        </div>
    }
}

/// Where the rim of the drawn glass is, and how deep it goes.
const RIM: u32 = 40;
const DEPTH: u32 = 880;

/// A glass with its fill line, to scale by volume.
#[component]
fn Glass(fill: Fill) -> impl IntoView {
    let empty = fill.headspace.ratio_to(fill.brimful).ok().and_then(|share| share.in_parts(DEPTH)).unwrap_or(0);
    let top = RIM + empty;
    view! {
        <svg class="glass" viewBox="0 0 600 1000" role="img" aria-label="Fill line">
            <rect class="glass-drink" x="60" y=top.to_string() width="480" height=(DEPTH - empty).to_string() />
            <path d="M60 40V920H540V40" />
            <path class="glass-line" d=format!("M20 {top}H580") />
        </svg>
    }
}
