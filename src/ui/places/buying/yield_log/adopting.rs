//! Adopting what was weighed: first what it does to each drink, then one press.

use leptos::prelude::*;

use super::Told;
use crate::backup::restore_points::Why;
use crate::book::{Edit, IngredientId};
use crate::buying::yield_log::{Step, adopt, yield_now};
use crate::drink::ledger::{OfferChange, Tried};
use crate::foundation::measure::Share;
use crate::say;
use crate::ui::library::Library;
use crate::ui::live::{live, press, text, trouble, when};
use crate::ui::moved::moved_list;
use crate::ui::state::AppState;
use crate::words;

/// What can be adopted, what it would do, and the press that does it.
pub fn adopting(state: AppState, id: IngredientId, told: Told) -> AnyView {
    let library = Library::here();
    let left_out = RwSignal::new(Vec::<Step>::new());
    let refused = RwSignal::new(None::<String>);
    // Steps whose yield would change, with the yield to adopt and the one in force.
    let offered = Memo::new(move |_| -> Vec<(Step, Share, Option<Share>)> {
        state.book.with(|book| {
            let Some(ingredient) = book.ingredient_now(id) else { return Vec::new() };
            let all = told.with(|told| told.iter().map(|it| (it.step, it.adopted())).collect::<Vec<_>>());
            let now = |step| yield_now(&ingredient, step);
            let differs = |(step, adopted): (Step, Option<Share>)| Some((step, adopted?, now(step)));
            all.into_iter().filter_map(differs).filter(|(_, adopted, now)| Some(*adopted) != *now).collect()
        })
    });
    let edit = move || -> Option<Edit> {
        let steps: Vec<Step> = Step::ALL.into_iter().filter(|step| left_out.with(|out| !out.contains(step))).collect();
        state.book.with(|book| adopt(book, id, &steps).ok().flatten())
    };
    let moves = Memo::new(move |_| -> Option<Vec<OfferChange>> {
        let edit = edit()?;
        let tried = state.book.with(|book| state.ledger.with(|ledger| Tried::of(book, ledger, &edit)));
        tried.ok().map(|tried| tried.moves)
    });
    let chip = move |(step, adopted, now): (Step, Share, Option<Share>)| {
        let said = words::yield_log::proposal(step, adopted, now, &state.speaker.get());
        let pressed = text(move || left_out.with(|out| !out.contains(&step)).to_string());
        let turn = move || {
            left_out.update(|out| match out.iter().position(|other| *other == step) {
                Some(place) => {
                    out.remove(place);
                }
                None => out.push(step),
            });
        };
        view! {
            <button class="chip" aria-pressed=pressed on:click=press(turn)>
                {said}
            </button>
        }
    };
    let any = move || !offered.with(Vec::is_empty);
    let sentence = text(move || match moves.get() {
        Some(moves) => words::yield_log::would_move(&moves),
        None => say!(goods::choose_yields).to_string(),
    });
    let take = move || {
        if let Some(edit) = untrack(edit) {
            library.before(Why::Yields);
            let refusal = state.apply(say!(goods::use_measured_yields), edit).err();
            if refusal.is_some() {
                library.not_done();
            }
            refused.set(refusal);
        }
    };
    let nothing = Signal::derive(move || moves.with(Option::is_none));
    let page = move || {
        view! {
            <p class="about">
                {say!(goods::use_yields_about)}
            </p>
            <div class="chips" role="group" aria-label=say!(goods::yields_to_choose)>
                {live(move || offered.get().into_iter().map(chip).collect_view().into_any())}
            </div>
            <p class="watch-said" role="status">{sentence}</p>
            <p class="actions">
                <button class="main" disabled=nothing on:click=press(take)>
                    {say!(goods::use_yields)}
                </button>
            </p>
            {moved_list(state, move || moves.get().unwrap_or_default())}
        }
        .into_any()
    };
    let same = || view! { <p>{say!(goods::yields_in_book)}</p> }.into_any();
    when(
        move || !told.with(Vec::is_empty),
        move || {
            view! {
                <section class="section">
                    <h2>{say!(goods::use_measured_yields)}</h2>
                    {when(move || !any(), same)}
                    {when(any, page)}
                    {trouble(move || refused.get())}
                </section>
            }
            .into_any()
        },
    )
}
