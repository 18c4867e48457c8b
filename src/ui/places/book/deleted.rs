//! Books that were deleted and are still kept: bringing them back, whole or as a file.

use leptos::prelude::*;
use leptos::task::spawn_local;

use super::incoming::Incoming;
use super::points::text_of;
use crate::backup::restore_points::{self, BringBackError, Point};
use crate::book::BookId;
use crate::exchange::{self, TakenIn};
use crate::say;
use crate::store::Fault;
use crate::ui::files::save_text;
use crate::ui::library::{Library, Way};
use crate::ui::live::{flag, live, press, trouble};
use crate::ui::lock::Lock;
use crate::ui::today::{now, today};
use crate::words;

/// The deleted books. Draws nothing if there are none.
#[component]
pub fn DeletedBooks() -> impl IntoView {
    let library = Library::here();
    // A file has prices in it.
    let lock = Lock::here();
    let locked = flag(move || lock.is_on());
    let deleted = RwSignal::new(Vec::<Point>::new());
    let asked = RwSignal::new(None::<BookId>);
    let refused = RwSignal::new(None::<String>);
    let taken = RwSignal::new(None::<TakenIn>);
    let read = move || {
        spawn_local(async move {
            if let Some(Ok(read)) = read(library).await {
                deleted.set(read);
            }
        });
    };
    Effect::new(move |_| {
        library.books.track();
        library.kept.track();
        read();
    });
    let bring_back = move |point: Point| {
        spawn_local(async move {
            let Err(error) = bring_back(library, &point).await else { return };
            refused.set(Some(words::restore_points::bring_back_error(&error).to_string()));
            if let BringBackError::NotWhole(_) = error
                && let Ok(text) = text_of(library, &point).await
            {
                taken.set(exchange::take_in(text).ok().map(|taken| taken.or_named(say!(book::repaired_book))));
            }
        });
    };
    let save = move |point: Point| {
        spawn_local(async move {
            match text_of(library, &point).await {
                Ok(text) => save_text("brimwright-deleted-book.brimwright.json", "application/json", &text),
                Err(sentence) => refused.set(Some(sentence)),
            }
        });
    };
    let forget = move |id: BookId| {
        asked.set(None);
        library.go(Way::DeleteForGood(id));
    };
    let row = move |point: Point| {
        let (back, file, id) = (point.clone(), point.clone(), point.book);
        let sure = live(move || sure(id, asked, forget));
        view! {
            <li class="kept">
                <p>
                    <strong>{words::restore_points::deleted_name(&point).to_string()}</strong>
                </p>
                <p class="soft">
                    {words::restore_points::deleted(&point)} " " {words::restore_points::holds(&point)}
                </p>
                <div class="actions">
                    <button class="button" on:click=press(move || bring_back(back.clone()))>
                        {say!(book::bring_back)}
                    </button>
                    <button class="quiet" hidden=locked on:click=press(move || save(file.clone()))>
                        {say!(book::save_file)}
                    </button>
                    <span hidden=locked>{sure}</span>
                </div>
            </li>
        }
    };
    view! {
        {trouble(move || refused.get())}
        <Incoming taken />
        {live(move || match deleted.get() {
            points if points.is_empty() => ().into_any(),
            points => view! {
                <h2>{say!(book::deleted_books)}</h2>
                <ul class="kept-list">{points.into_iter().map(row).collect_view()}</ul>
            }
            .into_any(),
        })}
    }
}

/// Brings a deleted book back and opens it.
async fn bring_back(library: Library, point: &Point) -> Result<(), BringBackError> {
    if let Some(shelf) = library.shelf() {
        restore_points::bring_back(&shelf, point, now()).await?;
        library.go(Way::Open(point.book));
    }
    Ok(())
}

/// Asks again before a book is deleted for good.
fn sure(id: BookId, asked: RwSignal<Option<BookId>>, forget: impl Fn(BookId) + 'static) -> AnyView {
    if asked.get() == Some(id) {
        view! {
            <p class="trouble" role="status">{say!(book::delete_for_good_caution)}</p>
            <p class="actions">
                <button class="button" on:click=press(move || forget(id))>
                    {say!(book::delete_for_good)}
                </button>
                <button class="main" on:click=press(move || asked.set(None))>
                    {say!(first::cancel)}
                </button>
            </p>
        }
        .into_any()
    } else {
        view! {
            <button class="quiet" on:click=press(move || asked.set(Some(id)))>
                {say!(book::delete_for_good_ask)}
            </button>
        }
        .into_any()
    }
}

async fn read(library: Library) -> Option<Result<Vec<Point>, Fault>> {
    let shelf = library.shelf()?;
    Some(restore_points::deleted_books(&shelf, today()).await)
}
