//! One container: how much it holds, how full it is poured, what belongs to it.

use std::sync::Arc;

use leptos::prelude::*;

use crate::book::{
    Book, Brimful, Container, ContainerId, Edit, Headspace, Key, Packaging, PackagingId, PackagingUse, Record,
};
use crate::cost::piece_cost;
use crate::fill::fill;
use crate::measure::{Amount, Dimension, Exact, Share, Wanted};
use crate::ui::fields::{self, Choice, Entry};
use crate::ui::live::{live, rows, text, trouble};
use crate::ui::order;
use crate::ui::parts::{Back, Figure, Section, TakeOut, page_of};
use crate::ui::places::users::Users;
use crate::ui::random::random;
use crate::ui::route::{Route, go};
use crate::ui::state::AppState;

fn changed(book: &Book, id: ContainerId, change: impl FnOnce(&mut Container)) -> Option<Edit> {
    let mut container = book.container(id)?.clone();
    change(&mut container);
    Some(Edit::Put(Record::Container(container)))
}

/// One container.
#[component]
pub fn ContainerPage(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    page_of(Key::Container(id), Route::Containers, "Containers", move || view! { <Page id /> }.into_any())
}

#[component]
fn Page(id: ContainerId) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Container, AppState) -> String| {
        text(move || state.book.with(|book| book.container(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let size = |book: &Book| Wanted { dimensions: &[Dimension::Volume], unit: book.settings().units.drink_unit() };
    let by_share = Memo::new(move |_| {
        let headspace = state.book.with(|book| book.container(id).map(|it| it.headspace));
        matches!(headspace, Some(Headspace::Share(_)))
    });
    let ways: Vec<(String, String)> = [("volume", "as a volume"), ("share", "as a share of the brim")]
        .map(|(key, words)| (key.to_string(), words.to_string()))
        .to_vec();
    let way = text(move || if by_share.get() { "share".to_string() } else { "volume".to_string() });
    let choose_way = Arc::new(move |chosen: &str| {
        let edit = state.book.with_untracked(|book| {
            let unit = book.settings().units.drink_unit();
            let headspace = match chosen {
                "share" => Headspace::Share(Share::from_fraction(Exact::new(5, 2))),
                _ => Headspace::Volume(Amount::new(Exact::ONE, unit)),
            };
            changed(book, id, |it| it.headspace = headspace)
        });
        edit.map_or(Ok(()), |edit| state.apply("How headspace is given", edit))
    });
    let filled = move || state.book.with(|book| book.container(id).and_then(|it| fill(it).ok()));
    let poured = text(move || {
        let fill = filled();
        fill.map_or("none".into(), |fill| state.volume(fill.volume))
    });
    let short = move || {
        let fill = filled()?;
        fill.short_of_declared.map(|short| {
            format!(
                "It is poured {} less than its declared size. Local rules say what a declared size must hold.",
                state.volume(short)
            )
        })
    };
    view! {
        <Back to=Route::Containers name="Containers" />
        <h1>{of(|it, _| it.name.clone())}</h1>
        <Entry
            label="Name on the menu"
            letters=true
            value=of(|it, _| it.name.clone())
            commit=fields::text("Name of a container", move |book, name| changed(book, id, |it| it.name = name))
        />
        <Section
            heading="How full it is poured"
            about="Fill it with water to the rim and weigh it: a gram is a millilitre, and that is its brimful volume."
        >
            <div class="fields">
                <Entry
                    label="Volume to the rim"
                    value=of(|it, state| match it.brimful {
                        Brimful::Weighed(amount) => state.amount(amount),
                        _ => String::new(),
                    })
                    commit=fields::amount("Brimful volume", size, move |book, amount| {
                        changed(book, id, |it| it.brimful = Brimful::Weighed(amount))
                    })
                />
                <Choice label="Left empty" options=ways value=way choose=choose_way />
                {live(move || match by_share.get() {
                    true => {
                        view! {
                            <Entry
                                label="Share left empty"
                                unit="%"
                                value=of(|it, state| match it.headspace {
                                    Headspace::Share(share) => state.plain_percent(share),
                                    _ => String::new(),
                                })
                                commit=fields::percent("Headspace", move |book, share| {
                                    changed(book, id, |it| it.headspace = Headspace::Share(share))
                                })
                            />
                        }
                            .into_any()
                    }
                    false => {
                        view! {
                            <Entry
                                label="Volume left empty"
                                value=of(|it, state| match it.headspace {
                                    Headspace::Volume(amount) => state.amount(amount),
                                    _ => String::new(),
                                })
                                commit=fields::amount("Headspace", size, move |book, amount| {
                                    changed(book, id, |it| it.headspace = Headspace::Volume(amount))
                                })
                            />
                        }
                            .into_any()
                    }
                })}
                <Entry
                    label="Size it is declared as"
                    example="none"
                    note="What the menu or label says, if it says one."
                    value=of(|it, state| it.declared.map(|amount| state.amount(amount)).unwrap_or_default())
                    commit=fields::optional_amount("Declared size", size, move |book, amount| {
                        changed(book, id, |it| it.declared = amount)
                    })
                />
            </div>
            <dl class="figures">
                <Figure name="Poured" large=true value=poured />
            </dl>
            {trouble(short)}
        </Section>
        <Set id />
        <Users of=Key::Container(id) back=Route::Containers what="Remove this container" />
    }
}

#[component]
fn Set(id: ContainerId) -> impl IntoView {
    let state = AppState::here();
    let used = Memo::new(move |_| {
        let ids = |it: &Container| it.set.iter().map(|used| Key::Packaging(used.packaging)).collect::<Vec<Key>>();
        state.book.with(|book| book.container(id).map(ids).unwrap_or_default())
    });
    let options = Memo::new(move |_| {
        let taken = used.get();
        let free = |key: &Key| !taken.contains(key);
        let mut options =
            state.book.with(|book| order::options(book, order::packagings(book).into_iter().filter(free).collect()));
        options.insert(0, (String::new(), "Choose packaging".to_string()));
        options.push(("new".to_string(), "Something new".to_string()));
        options
    });
    let add = Arc::new(move |chosen: &str| match chosen {
        "" => Ok(()),
        "new" => add_new(state, id),
        chosen => {
            let Some(Key::Packaging(packaging)) = Key::from_text(chosen) else { return Ok(()) };
            let use_one = PackagingUse { packaging, count: Exact::ONE };
            let edit = state.book.with_untracked(|book| changed(book, id, |it| it.set.push(use_one)));
            edit.map_or(Ok(()), |edit| state.apply("Add to a container set", edit))
        }
    });
    let row = move |key| match key {
        Key::Packaging(packaging) => view! { <SetRow container=id packaging /> }.into_any(),
        _ => ().into_any(),
    };
    view! {
        <Section heading="What belongs to it" about="For one drink: the vessel, what closes it, label, straw.">
            <ul class="set">
                {rows(used, row)}
            </ul>
            <Choice label="Add to it" options=options value=Signal::stored(String::new()) choose=add />
        </Section>
    }
}

fn add_new(state: AppState, container: ContainerId) -> Result<(), String> {
    let id = PackagingId::from_random(random());
    let packaging = Packaging::named(id, "New packaging");
    let use_one = PackagingUse { packaging: id, count: Exact::ONE };
    let edit = state.book.with_untracked(|book| {
        let set = changed(book, container, |it| it.set.push(use_one))?;
        Some(Edit::Together(vec![Edit::Put(Record::Packaging(packaging)), set]))
    });
    if let Some(edit) = edit {
        state.apply("Add something new to a container set", edit)?;
        go(Route::Packaging(id));
    }
    Ok(())
}

#[component]
fn SetRow(container: ContainerId, packaging: PackagingId) -> impl IntoView {
    let state = AppState::here();
    let name = text(move || state.book.with(|book| book.name(Key::Packaging(packaging))));
    let count = move || {
        state.book.with(|book| {
            let used = book.container(container)?.set.iter().find(|used| used.packaging == packaging)?;
            Some(used.count)
        })
    };
    let cost = text(move || {
        let cost = state.book.with(|book| piece_cost(book.packaging(packaging)?, count()?).ok());
        cost.map_or("no pack yet".into(), |cost| state.fine_money(cost))
    });
    let shown = text(move || count().map(|count| state.number(count)).unwrap_or_default());
    let remove = move || {
        let edit = state
            .book
            .with_untracked(|book| changed(book, container, |it| it.set.retain(|used| used.packaging != packaging)));
        // Taking packaging out of a set is never refused.
        let _ = edit.map(|edit| state.apply("Take out of a container set", edit));
    };
    view! {
        <li class="set-row">
            <a class="line-name" href=Route::Packaging(packaging).address()>{name}</a>
            <Entry
                label=format!("How many of {}", name.get_untracked())
                label_hidden=true
                value=shown
                commit=fields::count("Number in a container set", move |book, number| {
                    changed(book, container, |it| {
                        if let Some(used) = it.set.iter_mut().find(|used| used.packaging == packaging) {
                            used.count = number;
                        }
                    })
                })
            />
            <span class="set-cost">{cost}</span>
            <TakeOut name=name on_click=remove />
        </li>
    }
}
