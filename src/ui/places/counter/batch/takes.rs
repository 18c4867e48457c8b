//! What a batch takes: weighed out, trimmed, pressed, to tick off.

use leptos::prelude::*;

use super::{Takes, some_deducted};
use crate::app::route::Route;
use crate::book::{Goods, IngredientId, Key, PackagingId, Ready, Stage};
use crate::counter::batch::{Portion, Weighed, ready};
use crate::counter::on_hand::Reach;
use crate::foundation::measure::{Amount, Date, Overflow, Unit};
use crate::say;
use crate::ui::fields::Tick;
use crate::ui::live::{flag, live, parts, rows, text, when};
use crate::ui::mend::fill_in;
use crate::ui::order;
use crate::ui::parts::{Fold, is_wide};
use crate::ui::places::counter::is_tablet;
use crate::ui::places::counter::said::said;
use crate::ui::state::AppState;
use crate::words;

/// What it takes, following the book.
type Taken = Memo<Result<Takes, Overflow>>;

/// The stages, by their place in a list.
const STAGES: [Stage; 4] = [Stage::AsBought, Stage::Trimmed, Stage::Pressed, Stage::SoakedOrBrewed];

fn portions<T>(takes: Taken, read: impl Fn(&[Portion]) -> T) -> T {
    takes.with(|takes| read(takes.as_ref().map(|takes| takes.sheet.portions.as_slice()).unwrap_or_default()))
}

/// What a batch takes, ingredient by ingredient, then packaging.
#[component]
pub fn TakesList(
    /// The day.
    day: Date,
    /// What it takes.
    takes: Taken,
) -> impl IntoView {
    let state = AppState::here();
    // By name: ids come by chance.
    let ingredients = Memo::new(move |_| -> Vec<Key> {
        let used = |key: &Key| portions(takes, |all| all.iter().any(|it| Key::Ingredient(it.ingredient) == *key));
        state.book.with(|book| order::ingredients(book).into_iter().filter(used).collect())
    });
    let packaging = Memo::new(move |_| -> Vec<Key> {
        let used = |key: &Key| {
            takes.with(|takes| {
                let list = takes.as_ref().map(|takes| takes.sheet.packaging.as_slice()).unwrap_or_default();
                list.iter().any(|(id, _)| Key::Packaging(*id) == *key)
            })
        };
        state.book.with(|book| order::packagings(book).into_iter().filter(used).collect())
    });
    let ingredient = move |key| match key {
        Key::Ingredient(id) => view! { <OfIngredient day id takes /> }.into_any(),
        _ => ().into_any(),
    };
    let pieces = move |key| match key {
        Key::Packaging(id) => of_packaging(day, id, takes),
        _ => ().into_any(),
    };
    let any = move || !ingredients.with(Vec::is_empty);
    let items = |list: Memo<Vec<Key>>| text(move || say!(market::items_listed, items = list.with(Vec::len)));
    let (open, wide) = (Signal::stored(is_tablet()), Signal::stored(is_wide()));
    view! {
        {when(any, move || view! {
            <Fold name=say!(counter::amounts_needed) figure=items(ingredients) open=open>
                <p class="about">{say!(counter::amounts_needed_about)}</p>
                <ul class="takes">{rows(ingredients, ingredient)}</ul>
            </Fold>
            <Fold name=say!(common::packaging) figure=items(packaging) open=wide>
                <ul class="takes">{rows(packaging, pieces)}</ul>
            </Fold>
        }.into_any())}
    }
}

/// What is lacking of goods, by word and shape. What there is enough of says nothing.
fn reach(day: Date, takes: Taken, goods: Goods) -> AnyView {
    let state = AppState::here();
    live(move || {
        let reach =
            takes.with(|takes| takes.as_ref().ok()?.reach.iter().find(|it| it.goods == goods).map(|it| it.reach));
        let (class, shape) = match reach {
            Some(Reach::Short(_)) => ("mark mark-under", "M1.5 3h13L8 14.5ZM8 5.5v4"),
            Some(Reach::Unknown(_)) => ("mark mark-stuck", "M2 2h12v12H2ZM8 4.5v4.5M8 11v.8"),
            Some(Reach::Enough(_) | Reach::NotCounted) | None => return ().into_any(),
        };
        let deducted = some_deducted(state, day);
        let sentence = reach.map(|reach| said(state, |words| words.reach(&reach, deducted)));
        view! {
            <p class=class>
                <svg viewBox="0 0 16 16" aria-hidden="true">
                    <path d=shape />
                </svg>
                <span>{sentence}</span>
            </p>
        }
        .into_any()
    })
}

#[component]
fn OfIngredient(day: Date, id: IngredientId, takes: Taken) -> impl IntoView {
    let stages = move || -> Vec<u64> {
        portions(takes, |all| {
            let of = |stage: &Stage| all.iter().any(|it| it.ingredient == id && it.stage == *stage);
            (0..).zip(STAGES).filter(|(_, stage)| of(stage)).map(|(place, _)| place).collect()
        })
    };
    let portion = move |place: u64| {
        let stage = usize::try_from(place).ok().and_then(|place| STAGES.get(place)).copied();
        stage.map_or_else(|| ().into_any(), |stage| view! { <OfStage day id stage takes /> }.into_any())
    };
    let state = AppState::here();
    let season = live(move || {
        let said = state.book.with(|book| words::counter::by_season(book, id));
        (!said.is_empty()).then(|| view! { <p class="hollow">{said}</p> }).into_any()
    });
    view! { <li class="take">{parts(stages, portion)} {season} {reach(day, takes, Goods::Ingredient(id))}</li> }
}

#[component]
fn OfStage(day: Date, id: IngredientId, stage: Stage, takes: Taken) -> impl IntoView {
    let state = AppState::here();
    let done = flag(move || {
        let tick = Ready { ingredient: id, stage };
        state.book.with(|book| book.batch(day).is_some_and(|batch| batch.ready.contains(&tick)))
    });
    let name = text(move || {
        let name = state.book.with(|book| book.name(Key::Ingredient(id)));
        say!(counter::prep_of, ingredient = name, prep = words::stage(stage))
    });
    let set = move |done: bool| {
        let edit = state.book.with_untracked(|book| ready(book, day, id, stage, done));
        let item = name.get_untracked();
        let step = if done { say!(counter::check_off, item = item) } else { say!(counter::uncheck, item = item) };
        let _ = edit.map(|edit| state.apply(&step, edit));
    };
    let amounts = live(move || {
        let portion = portions(takes, |all| all.iter().find(|it| it.ingredient == id && it.stage == stage).cloned());
        portion.map_or_else(|| ().into_any(), |portion| weighed(state, &portion))
    });
    view! {
        <div class="take-prep">
            <Tick done=done set=set>
                {name}
            </Tick>
            {amounts}
        </div>
    }
}

/// What to weigh on the way, as bought first.
fn weighed(state: AppState, portion: &Portion) -> AnyView {
    let stations = match &portion.weighed {
        Ok(stations) => stations,
        Err(lacks) => {
            let sentence = said(state, |words| words.not_comparable(lacks));
            let way = fill_in(Route::Ingredient(portion.ingredient));
            return view! { <p class="hollow">{sentence}</p> {way} }.into_any();
        }
    };
    let amount = |it: &Weighed| said(state, |words| words.weighed(it.amount));
    let one =
        |it: &Weighed| view! { <span><span class="soft">{words::station(it.station)}</span> " " {amount(it)}</span> };
    let first = stations.iter().take(1).map(one).collect_view();
    let then = stations.iter().skip(1).map(one).collect_view();
    view! {
        <p class="take-first">{first}</p>
        <p class="take-then">{then}</p>
    }
    .into_any()
}

fn of_packaging(day: Date, id: PackagingId, takes: Taken) -> AnyView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Packaging(id))));
    let pieces = text(move || {
        let pieces = takes.with(|takes| {
            takes.as_ref().ok()?.sheet.packaging.iter().find(|(of, _)| *of == id).map(|(_, pieces)| *pieces)
        });
        let pieces = pieces.unwrap_or_default();
        said(state, |words| words.weighed(Amount::new(pieces, Unit::Piece)))
    });
    view! {
        <li class="take take-pieces">
            <span>{name}</span>
            <b class="take-piece">{pieces}</b>
            {reach(day, takes, Goods::Packaging(id))}
        </li>
    }
    .into_any()
}
