//! The restore points of the open book: what each holds, and going back to one.

use leptos::html;
use leptos::prelude::*;
use leptos::task::spawn_local;

use crate::backup::restore_points::{self, Point, Why};
use crate::book::Book;
use crate::exchange::{self, Preview, preview};
use crate::say;
use crate::store::Fault;
use crate::ui::files::save_text;
use crate::ui::library::{Library, Phase};
use crate::ui::live::{live, press, text, trouble};
use crate::ui::parts::{Fold, is_wide};
use crate::ui::state::AppState;
use crate::ui::today::{day_and_time, moment};
use crate::words;

/// A point that was chosen and waits for the person's word.
#[derive(Clone)]
struct Chosen {
    when: String,
    book: Book,
    preview: Preview,
}

/// The restore points of the open book.
#[component]
pub fn RestorePoints() -> impl IntoView {
    let (library, state) = (Library::here(), AppState::here());
    let points = RwSignal::new(None::<Vec<Point>>);
    let chosen = RwSignal::new(None::<Chosen>);
    let refused = RwSignal::new(None::<String>);
    let tried = Memo::new(move |_| library.kept.with(|kept| kept.points_tried));
    Effect::new(move |_| {
        tried.get();
        spawn_local(async move {
            match read(library).await {
                Ok(read) => points.set(Some(read)),
                Err(fault) => refused.set(Some(words::fault(&fault))),
            }
        });
    });
    let choose = move |point: Point| {
        spawn_local(async move {
            let copy = held(library, &point).await;
            refused.set(copy.as_ref().err().cloned());
            chosen.set(copy.ok().map(|book| {
                let preview = state.book.with_untracked(|open| preview(open, &book));
                Chosen { when: day_and_time(point.at.millis), book, preview }
            }));
        });
    };
    let save = move |point: Point| {
        spawn_local(async move {
            match text_of(library, &point).await {
                Ok(text) => save_text("brimwright-restore-point.brimwright.json", "application/json", &text),
                Err(sentence) => refused.set(Some(sentence)),
            }
        });
    };
    let restore = move || {
        if let Some(wanted) = chosen.get_untracked() {
            chosen.set(None);
            // What changed here since the preview counts too: the edit is made anew.
            let now = state.book.with_untracked(|open| preview(open, &wanted.book));
            if !now.changes_nothing() {
                library.before(Why::Restore);
            }
            let done = state.apply_whole(&say!(book::go_back_to, when = wanted.when), &now.edit);
            if done.is_err() {
                library.not_done();
            }
            refused.set(done.err());
        }
    };
    // The question stands above the list: it comes into sight.
    let asked = NodeRef::<html::Div>::new();
    Effect::new(move |_| {
        if let Some(asked) = asked.get() {
            asked.scroll_into_view();
        }
    });
    let row = move |point: Point| point_row(point, choose, save);
    let figure = text(move || match points.with(|points| points.as_ref().map(Vec::len)) {
        Some(0) => say!(common::none_yet).to_string(),
        Some(points) => words::count(points),
        None => String::new(),
    });
    let not_made = trouble(move || {
        let why = |(why, fault): &(Why, Fault)| words::restore_points::not_made(*why, fault);
        library.kept.with(|kept| kept.no_point.as_ref().map(why))
    });
    view! {
        {not_made}
        <Fold name=say!(book::restore_points) figure open=is_wide()>
            <p>{say!(book::restore_points_about)}</p>
            {trouble(move || refused.get())}
            {live(move || match chosen.get() {
                Some(wanted) => question(&wanted, asked, restore, move || chosen.set(None)),
                None => ().into_any(),
            })}
            {live(move || match points.get() {
                Some(points) if points.is_empty() => view! { <p class="hollow">{words::restore_points::none_yet()}</p> }.into_any(),
                Some(points) => view! { <ul class="kept-list">{points.into_iter().map(row).collect_view()}</ul> }.into_any(),
                None => ().into_any(),
            })}
            <p class="soft">{words::restore_points::kept()}</p>
        </Fold>
    }
}

/// One point: when and before what it was made, and what can be done with it.
fn point_row(point: Point, choose: impl Fn(Point) + Copy + 'static, save: impl Fn(Point) + Copy + 'static) -> AnyView {
    let (shown, saved) = (point.clone(), point.clone());
    view! {
        <li class="kept">
            <p>
                <strong>{moment(point.at.millis)}</strong>
                " "
                <span>{words::restore_points::made_before(point.why)}</span>
            </p>
            <p class="soft">{words::restore_points::holds(&point)}</p>
            {words::restore_points::made_room(&point).map(|line| view! { <p class="soft">{line}</p> })}
            <p class="actions">
                <button class="button" on:click=press(move || choose(shown.clone()))>
                    {say!(book::show_changes)}
                </button>
                <button class="quiet" on:click=press(move || save(saved.clone()))>
                    {say!(book::save_file)}
                </button>
            </p>
        </li>
    }
    .into_any()
}

/// What going back would change, and whether to.
fn question(
    wanted: &Chosen,
    place: NodeRef<html::Div>,
    restore: impl Fn() + 'static,
    cancel: impl Fn() + 'static,
) -> AnyView {
    let lines = words::import_changes(&wanted.preview).into_iter().map(|line| view! { <li>{line}</li> });
    view! {
        <div class="teach" role="status" node_ref=place>
            <h3>{say!(book::go_back_to, when = &wanted.when)}</h3>
            <ul>{lines.collect_view()}</ul>
            <p class="actions">
                <button class="main" on:click=press(restore)>
                    {say!(book::restore_point)}
                </button>
                <button class="quiet" on:click=press(cancel)>
                    {say!(first::cancel)}
                </button>
            </p>
            <p class="soft">{say!(book::import_about)}</p>
        </div>
    }
    .into_any()
}

async fn read(library: Library) -> Result<Vec<Point>, Fault> {
    match (library.shelf(), library.phase.get_untracked()) {
        (Some(shelf), Phase::Open(id)) => restore_points::of_book(shelf.backing(), id).await,
        _ => Ok(Vec::new()),
    }
}

/// The text that a point holds.
///
/// # Errors
/// Why it cannot be had, as a sentence.
pub async fn text_of(library: Library, point: &Point) -> Result<String, String> {
    let Some(shelf) = library.shelf() else { return Err(words::fault(&Fault::NoStorage)) };
    restore_points::copy_of(shelf.backing(), point).await.map_err(|fault| match fault {
        Fault::Gone => words::restore_points::went().to_string(),
        fault => words::fault(&fault),
    })
}

async fn held(library: Library, point: &Point) -> Result<Book, String> {
    let text = text_of(library, point).await?;
    exchange::read(text).map_err(|error| words::book_file_error(&error))
}
