//! The yield log of an ingredient: what was weighed, what it says, and adopting it.

mod adopting;
mod drawn;
mod form;
mod told;

use leptos::prelude::*;

use crate::app::route::Route;
use crate::book::{Ingredient, IngredientId, Key, Weighing};
use crate::buying::yield_log::{Step, Summary, summary, yield_of};
use crate::say;
use crate::ui::live::{live, press, text, when};
use crate::ui::parts::{Back, page_of, wide_table};
use crate::ui::state::AppState;
use crate::words;
use form::Form;

/// The yield log of an ingredient.
#[component]
pub fn YieldLog(
    /// The ingredient.
    id: IngredientId,
) -> impl IntoView {
    page_of(Key::Ingredient(id), Route::Buying, say!(first::buying), move || view! { <Page id /> }.into_any())
}

/// What the log says of both steps. A step that no weighing tells is left out.
type Told = Memo<Vec<Summary>>;

#[component]
fn Page(id: IngredientId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Ingredient(id))));
    let told: Told = Memo::new(move |_| {
        let all = state.book.with(|book| {
            let ingredient = book.ingredient(id)?;
            Some(Step::ALL.map(|step| summary(ingredient, step).ok().flatten()))
        });
        all.into_iter().flatten().flatten().collect()
    });
    let form = Form::new(id);
    let any = move || state.book.with(|book| book.ingredient(id).is_some_and(|it| !it.weighings.is_empty()));
    let teach = || {
        view! {
            <div class="teach">
                <h2>{say!(goods::weigh_your_own)}</h2>
                <p>
                    {say!(goods::weigh_your_own_about)}
                </p>
            </div>
        }
        .into_any()
    };
    view! {
        <Back to=Route::Ingredient(id) name=say!(goods::ingredient) />
        <h1>{name} <span class="h1-size">{say!(goods::yield_log)}</span></h1>
        {when(move || !any(), teach)}
        {form.fields()}
        {when(
            any,
            move || {
                view! {
                    {told::told(state, told)}
                    {adopting::adopting(state, id, told)}
                    {weighings(state, id, told, form)}
                }
                    .into_any()
            },
        )}
    }
}

/// The yields over their days, drawn and as a table with all that was weighed.
fn weighings(state: AppState, id: IngredientId, told: Told, form: Form) -> AnyView {
    let table = live(move || {
        let Some(ingredient) = state.book.with(|book| book.ingredient(id).cloned()) else { return ().into_any() };
        let rows: Vec<AnyView> = ingredient
            .weighings
            .iter()
            .enumerate()
            .rev()
            .map(|(place, weighing)| row(state, &ingredient, (place, weighing), told, form))
            .collect();
        let heads = &[say!(goods::trim_yield), say!(goods::juice_yield)];
        wide_table(say!(goods::weighings_newest_first), "table", heads, rows.into_any())
    });
    view! {
        <section class="section">
            <h2>{say!(goods::all_weighings)}</h2>
            {live(move || told.with(|told| drawn::drawn(state, told)))}
            {table}
        </section>
    }
    .into_any()
}

fn row(
    state: AppState,
    ingredient: &Ingredient,
    (place, weighing): (usize, &Weighing),
    told: Told,
    form: Form,
) -> AnyView {
    let share = |step| match yield_of(ingredient, weighing, step) {
        Ok(Some(share)) => state.percent(share),
        _ => String::new(),
    };
    let weights = words::yield_log::weights(weighing, &state.speaker.get());
    let apart = told.with(|told| told.iter().any(|it| it.outlier().is_some_and(|outlier| outlier.place == place)));
    let mark = apart.then(|| {
        view! {
            <span class="mark mark-stuck">
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d="M8 1.5 14.5 8 8 14.5 1.5 8Z" />
                </svg>
                {say!(goods::unusual)}
            </span>
        }
    });
    let (day, weighing) = (words::day(weighing.day), *weighing);
    let named = say!(goods::correct_day, day = &day);
    view! {
        <tr>
            <th scope="row">
                <span class="weighing-day">
                    {day} {mark} <span class="soft">{words::yield_log::not_told(ingredient, &weighing)}</span>
                    <button class="quiet" aria-label=named on:click=press(move || form.correct(place, weighing))>
                        {say!(goods::correct)}
                    </button>
                </span>
                {weights}
            </th>
            <td>{share(Step::Trim)}</td>
            <td>{share(Step::Press)}</td>
        </tr>
    }
    .into_any()
}
