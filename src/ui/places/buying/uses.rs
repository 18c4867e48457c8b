//! What one drink takes of each kind of packaging: of a container, or of a shared set.

use std::sync::Arc;

use leptos::prelude::*;

use super::first_case::first_case;
use crate::app::route::Route;
use crate::book::{Book, Edit, Goods, Key, Packaging, PackagingId, PackagingUse, Record};
use crate::drink::cost::piece_cost;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Addition, Choice, Draft, Entry, Field, Hangs, NewThing, begun};
use crate::ui::live::{rows, text, when};
use crate::ui::order;
use crate::ui::parts::{Fold, TakeOut};
use crate::ui::random::random;
use crate::ui::state::AppState;

/// What a container or a shared set takes.
fn uses(book: &Book, of: Key) -> &[PackagingUse] {
    match of {
        Key::Container(id) => book.container(id).map(|it| it.set.as_slice()),
        Key::PackagingSet(id) => book.packaging_set(id).map(|it| it.uses.as_slice()),
        _ => None,
    }
    .unwrap_or_default()
}

/// The edit that changes what a container or a shared set takes. Returns `None` if it is gone.
fn changed(book: &Book, of: Key, change: impl FnOnce(&mut Vec<PackagingUse>)) -> Option<Edit> {
    let mut record = book.record(of)?;
    match &mut record {
        Record::Container(container) => change(&mut container.set),
        Record::PackagingSet(set) => change(&mut set.uses),
        _ => return None,
    }
    Some(Edit::Put(record))
}

/// What the packaging of a container or a shared set costs for one drink. Returns `None` if
/// something has no pack yet.
pub fn cost(book: &Book, of: Key) -> Option<Money> {
    uses(book, of).iter().try_fold(Money::ZERO, |sum, used| sum.plus(cost_of(book, *used)?).ok())
}

fn cost_of(book: &Book, used: PackagingUse) -> Option<Money> {
    piece_cost(book.packaging(used.packaging)?, used.count).ok()
}

/// What one drink takes of each kind of packaging.
#[component]
pub fn Uses(
    /// The container or the shared set.
    of: Key,
    /// The heading.
    heading: &'static str,
    /// A quiet line under it.
    about: &'static str,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let used = Memo::new(move |_| {
        let keys = |book: &Book| uses(book, of).iter().map(|used| Key::Packaging(used.packaging)).collect();
        let mut keys: Vec<Key> = state.book.with(keys);
        keys.extend(
            begun(state, NewThing::KitItem, Some(of))
                .into_iter()
                .map(|id| Key::Packaging(PackagingId::from_random(id))),
        );
        keys
    });
    let options = Memo::new(move |_| {
        let taken = used.get();
        let free = |key: &Key| !taken.contains(key);
        let mut options =
            state.book.with(|book| order::options(book, order::packagings(book).into_iter().filter(free).collect()));
        options.insert(0, (String::new(), say!(goods::choose_packaging).to_string()));
        options.push(("new".to_string(), say!(goods::new_packaging).to_string()));
        options
    });
    let add = Arc::new(move |chosen: &str| match chosen {
        "" => Ok(()),
        "new" => {
            draft(of, PackagingId::from_random(random())).begin(state);
            Ok(())
        }
        chosen => {
            if let Some(Key::Packaging(packaging)) = Key::from_text(chosen) {
                draft(of, packaging).begin(state);
            }
            Ok(())
        }
    });
    let row = move |key| match key {
        Key::Packaging(packaging) => view! { <Row of packaging /> }.into_any(),
        _ => ().into_any(),
    };
    let figure = text(move || match state.book.with(|book| uses(book, of).len()) {
        0 => say!(common::none).to_string(),
        count => {
            let cost = state.book.with(|book| cost(book, of));
            let cost = cost.map_or(say!(goods::no_pack_yet).into(), |cost| state.fine_money(cost));
            say!(goods::items_and_cost, items = count, cost = cost)
        }
    });
    view! {
        <Fold name=heading figure open>
            <p class="about">{about}</p>
            <ul class="set">
                {rows(used, row)}
            </ul>
            <Choice label=say!(goods::add_packaging) options=options value=Signal::stored(String::new()) choose=add />
        </Fold>
    }
}

/// Packaging that does not belong to it yet, or is not in the book at all.
fn draft(of: Key, packaging: PackagingId) -> Draft {
    Draft { what: NewThing::KitItem, of: Some(of), id: packaging.number() }
}

#[component]
fn Row(of: Key, packaging: PackagingId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Packaging(packaging))));
    let this = move |book: &Book| uses(book, of).iter().find(|used| used.packaging == packaging).copied();
    let cost = text(move || {
        let cost = state.book.with(|book| cost_of(book, this(book)?));
        cost.map_or(say!(goods::no_pack_yet).into(), |cost| state.fine_money(cost))
    });
    let shown =
        text(move || state.book.with(this).map(|used| state.speaker.get().pieces(used.count)).unwrap_or_default());
    let remove = move || {
        let edit =
            state.book.with_untracked(|book| changed(book, of, |uses| uses.retain(|used| used.packaging != packaging)));
        // Taking packaging out of a set is never refused.
        let _ = edit.map(|edit| state.apply(say!(goods::remove_packaging), edit));
    };
    let there = move |book: &Book| this(book).is_some();
    let new = Addition::of(draft(of, packaging), there, say!(goods::add_packaging), move |typed, book| {
        let named = book.packaging(packaging).is_some();
        let name = if named { None } else { Some(typed.name(Field::Name)) };
        let count = typed.number(Field::NumberPerDrink, fields::Example::PiecesPerDrink);
        let set = |count| changed(book, of, |uses| uses.push(PackagingUse { packaging, count }));
        let Some(name) = name else { return set(count?) };
        let new = Packaging::named(packaging, &name?);
        Some(Edit::Together(vec![Edit::Put(Record::Packaging(new)), set(count?)?]))
    });
    let is_named = state.book.with_untracked(|book| book.packaging(packaging).is_some());
    let is_new = !untrack(|| new.is_there());
    let name_or_link = if is_named {
        view! { <a class="line-name" href=Route::Packaging(packaging).address()>{name}</a> }.into_any()
    } else {
        let rename = fields::text(say!(goods::packaging_name), move |book, name| {
            let known = book.packaging(packaging)?.clone();
            Some(Edit::Put(Record::Packaging(Packaging { name, ..known })))
        });
        let (value, commit) = (new.value(Field::Name, name), new.commit(Field::Name, rename));
        let of = packaging.number();
        view! {
            <Entry
                label=say!(goods::name_of_new_packaging)
                letters=true
                caret=true
                of
                example=say!(goods::packaging_example)
                value
                commit
            />
        }
        .into_any()
    };
    let called = name.get_untracked();
    let amount_label = if called.is_empty() {
        say!(goods::new_packaging_per_drink).to_string()
    } else {
        say!(goods::per_drink, name = called)
    };
    let set = fields::count(say!(goods::amount_per_drink), fields::Example::PiecesPerDrink, move |book, number| {
        changed(book, of, |uses| {
            if let Some(used) = uses.iter_mut().find(|used| used.packaging == packaging) {
                used.count = number;
            }
        })
    });
    let cost = new.once_there(move || view! { <span class="set-cost">{cost}</span> }.into_any());
    let case = new.once_there(move || without_case(state, packaging));
    view! {
        <li class="set-row" class:set-naming=!is_named>
            {name_or_link}
            <Entry
                label=amount_label
                label_hidden=is_named
                letters=true
                of=packaging.number()
                caret=is_new && is_named
                example="1"
                value=new.value(Field::NumberPerDrink, shown)
                commit=new.commit(Field::NumberPerDrink, set)
            />
            {cost}
            <TakeOut name=name on_click=new.take_out(remove) />
            {new.needs()}
            {case}
        </li>
    }
}

/// The fields of the first case of packaging that has none; they stay once they stand there.
fn without_case(state: AppState, packaging: PackagingId) -> AnyView {
    let has_none = move || state.book.with(|book| book.packaging(packaging).is_some_and(|it| it.packs.is_empty()));
    let is_shown = Memo::new(move |was: Option<&bool>| was == Some(&true) || has_none());
    when(
        move || is_shown.get(),
        move || {
            let case = first_case(Goods::Packaging(packaging), Hangs::new(), false);
            view! { <div class="set-case">{case}</div> }.into_any()
        },
    )
}
