//! One drink at one size: what it brings, then how to reach the target, where its price goes, and on
//! folds what it is made of.

mod answer;
mod cost;
mod ladder;
mod price;

use leptos::prelude::*;

use super::amounts::amounts;
use super::back::BackFromPrice;
use super::drink::not_checked;
use super::gap::Gap;
use crate::app::route::Route;
use crate::book::{Edit, Key, OfferId, Scope};
use crate::drink::fill::Fill;
use crate::drink::label::allergens_of;
use crate::say;
use crate::ui::address::go;
use crate::ui::fields::Hangs;
use crate::ui::glass::{glass, layers};
use crate::ui::live::{live, press, text, when};
use crate::ui::mend::stuck;
use crate::ui::parts::{Back, Fold, is_wide, page_of};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{OfOffer, Shown};
pub use answer::answer;
use cost::CostFold;
use ladder::LadderOf;
pub use ladder::lacks;
use price::Price;

/// One drink at one size.
#[component]
pub fn OfferPage(
    /// The offer.
    id: OfferId,
) -> impl IntoView {
    page_of(Key::Offer(id), Route::Drink(id.drink), say!(drinks::back_to_drink), move || {
        view! { <Page id /> }.into_any()
    })
}

#[component]
fn Page(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let drink = text(move || state.book.with(|book| book.name(Key::Drink(id.drink))));
    let container = text(move || state.book.with(|book| book.name(Key::Container(id.container))));
    let hangs = Hangs::new();
    let computed =
        move |view: fn(OfferId) -> AnyView| when(move || state.priced(id, |_| Some(())).is_some(), move || view(id));
    view! {
        <Back to=Route::Drink(id.drink) name=say!(drinks::back_to_drink) />
        <h1>{drink} " " <span class="h1-size">{container}</span></h1>
        <div class="answer-bar offer-answer">{hangs.answer(move || answer(state, id))}</div>
        {stuck(state, id)}
        <div class="panes-three offer-panes">
            <div class="pane">
                <Price id hangs />
                {hangs.while_read(move || view! { <Gap id /> }.into_any())}
            </div>
            <div class="pane">
                {hangs.while_read(move || computed(|id| view! { <LadderOf id /> }.into_any()))}
                <div class="folds">{computed(|id| view! { <CostFold id /> }.into_any())}</div>
            </div>
            <div class="pane">
                <div class="folds">
                    {computed(|id| {
                        view! {
                            <RecipeFold id />
                            <FillFold id />
                        }
                            .into_any()
                    })} <LabelFold id /> {computed(|id| view! { <BackFromPrice id /> }.into_any())}
                </div>
                <Actions id />
            </div>
        </div>
    }
}

#[component]
fn Actions(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let remove = move || {
        if state.apply(say!(drinks::remove_size), Edit::Remove(Key::Offer(id))).is_ok() {
            go(Route::Drink(id.drink));
        }
    };
    view! {
        <p class="actions">
            <a class="button" href=Route::Card(id).address()>
                {say!(drinks::recipe_card)}
            </a>
            <a class="button" href=Route::Working(id).address()>
                {say!(common::show_the_math)}
            </a>
            <a class="button" href=Route::SideBySide(Scope::Drink(id.drink)).address()>
                {say!(drinks::compare_sizes)}
            </a>
            <button class="quiet" on:click=press(remove)>
                {say!(drinks::remove_size)}
            </button>
        </p>
    }
}

#[component]
fn RecipeFold(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let lines = text(move || {
        let lines = state.priced(id, |it| Some(it.scaled.lines.len()));
        lines.map(|lines| say!(drinks::recipe_lines, lines = lines)).unwrap_or_default()
    });
    let what = live(move || match state.priced(id, |it| Some((it.fill, it.scaled.clone()))) {
        Some((fill, scaled)) => {
            let container = state.book.with(|book| book.container(id.container).cloned());
            let picture = container.map(|container| glass(&container, &fill, layers(&scaled)));
            let how = |line| Some(Shown::Offer(id, OfOffer::ToUse(line)));
            view! { <div class="in-glass">{picture} {amounts(state, &scaled, &how)}</div> }.into_any()
        }
        None => ().into_any(),
    });
    view! {
        <Fold name=say!(drinks::recipe) figure=lines open=is_wide()>
            {what}
            <p>
                <a class="button" href=Route::Drink(id.drink).address()>
                    {say!(drinks::edit_recipe)}
                </a>
            </p>
        </Fold>
    }
}

#[component]
fn FillFold(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let volume = text(move || {
        let volume = state.priced(id, |it| Some(it.fill.volume));
        volume.map(|volume| state.volume(volume)).unwrap_or_default()
    });
    let said = text(move || {
        let said = |fill: Fill| {
            let (volume, brimful) = (state.volume(fill.volume), state.volume(fill.brimful));
            let headspace = state.volume(fill.headspace);
            let from = say!(drinks::fill_from, fill = volume, brimful = brimful, headspace = headspace);
            match fill.short_of_declared {
                Some(short) => [from, say!(drinks::under_labeled_size, short = state.volume(short))].join(" "),
                None => from,
            }
        };
        state.priced(id, |it| Some(it.fill)).map(said).unwrap_or_default()
    });
    view! {
        <Fold name=say!(common::fill) figure=volume open=is_wide()>
            <p>{said}</p>
            <p>
                <a class="button" href=Route::Container(id.container).address()>
                    {say!(drinks::edit_fill)}
                </a>
            </p>
        </Fold>
    }
}

#[component]
fn LabelFold(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let allergens = move |said: fn(&crate::drink::label::Allergens, &crate::book::Book) -> String| {
        text(move || {
            state.book.with(|book| {
                book.drink(id.drink).map(|drink| said(&allergens_of(book, drink), book)).unwrap_or_default()
            })
        })
    };
    view! {
        <Fold
            name=say!(drinks::label)
            figure=allergens(|found, _| words::allergens_marked(found))
            open=is_wide()
        >
            <p>{allergens(words::allergens)}</p>
            {not_checked(state, id.drink)}
            <p>
                <a class="button" href=Route::Packaged(id).address()>
                    {say!(drinks::label_and_fill)}
                </a>
            </p>
        </Fold>
    }
}
