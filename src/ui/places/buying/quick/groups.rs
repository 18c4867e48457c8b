//! The prices in groups that open: by supplier, or by whether they need a new one.

use leptos::prelude::*;
use web_sys::Element;

use super::names::{Names, Row, pack_of};
use super::row::PriceRow;
use crate::book::Book;
use crate::buying::quotes::{Age, age};
use crate::foundation::in_order;
use crate::foundation::measure::Date;
use crate::say;
use crate::ui::fields::Hangs;
use crate::ui::live::{live, press, text, when};
use crate::ui::state::AppState;
use crate::ui::today::today;

/// How many rows of a group are shown before the rest is asked for.
const FIRST: usize = 16;

/// How the prices are grouped.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(super) enum Grouping {
    Supplier,
    Age,
}

impl Grouping {
    /// What a choice of it is kept as.
    pub(super) const fn id(self) -> &'static str {
        match self {
            Grouping::Supplier => "by-supplier",
            Grouping::Age => "by-age",
        }
    }

    /// The one that was kept as this.
    pub(super) fn from_id(id: &str) -> Option<Grouping> {
        [Grouping::Supplier, Grouping::Age].into_iter().find(|it| it.id() == id)
    }
}

/// What the rows of a group have in common.
#[derive(Clone, PartialEq, Eq, Hash)]
enum Common {
    Supplier(String),
    Old,
    Undated,
    Checked,
}

impl Common {
    fn of(book: &Book, row: Row, today: Date) -> Common {
        match pack_of(book, row).map(|pack| age(&pack, book.settings(), today)) {
            Some(Age::Old(_)) => Common::Old,
            Some(Age::Fresh(_)) => Common::Checked,
            Some(Age::Undated) | None => Common::Undated,
        }
    }

    fn name(&self) -> String {
        match self {
            Common::Supplier(name) if name.is_empty() => say!(market::no_supplier).to_string(),
            Common::Supplier(name) => name.clone(),
            Common::Old => say!(market::needs_new_price).to_string(),
            Common::Undated => say!(market::no_date).to_string(),
            Common::Checked => say!(market::recently_checked).to_string(),
        }
    }
}

/// A group of prices: of the packs that are bought now, and of others.
#[derive(Clone, PartialEq, Eq)]
pub(super) struct Group {
    common: Common,
    current: Vec<Row>,
    others: Vec<Row>,
}

impl Group {
    /// What its rows have in common, in words.
    pub(super) fn name(&self) -> String {
        self.common.name()
    }
}

/// The prices in groups, each in its order; those of one that has none are left out.
pub(super) fn grouped(book: &Book, names: &[Names], grouping: Grouping) -> Vec<Group> {
    match grouping {
        Grouping::Supplier => by_supplier(book, names),
        Grouping::Age => by_age(book, names),
    }
}

/// The supplier whose prices are checked most stands first, nobody last.
fn by_supplier(book: &Book, names: &[Names]) -> Vec<Group> {
    let mut groups: Vec<Group> = Vec::new();
    for it in names {
        let common = Common::Supplier(it.supplier.clone());
        put(&mut groups, common, it);
    }
    let rank = |group: &Group| {
        let is_dated = |row: &&Row| pack_of(book, **row).is_some_and(|pack| pack.day.is_some());
        let dated = group.current.iter().filter(is_dated).count();
        let rows = group.current.len().saturating_add(group.others.len());
        (group.common != Common::Supplier(String::new()), dated, rows)
    };
    let mut ordered: Vec<Group> = Vec::new();
    for group in groups {
        in_order::insert(&mut ordered, group, |other, group| rank(other) >= rank(group));
    }
    ordered
}

fn by_age(book: &Book, names: &[Names]) -> Vec<Group> {
    let today = today();
    let none = |common| Group { common, current: Vec::new(), others: Vec::new() };
    let mut groups = vec![none(Common::Old), none(Common::Undated), none(Common::Checked)];
    for it in names.iter().filter(|it| it.is_current) {
        put(&mut groups, Common::of(book, it.row, today), it);
    }
    groups.retain(|group| !group.current.is_empty());
    groups
}

fn put(groups: &mut Vec<Group>, common: Common, names: &Names) {
    let place = groups.iter().position(|group| group.common == common).unwrap_or_else(|| {
        groups.push(Group { common, current: Vec::new(), others: Vec::new() });
        groups.len().saturating_sub(1)
    });
    if let Some(group) = groups.get_mut(place) {
        let rows = if names.is_current { &mut group.current } else { &mut group.others };
        rows.push(names.row);
    }
}

/// How many of the packs that are bought now need a new price.
pub(super) fn old_ones(book: &Book, rows: &[Row]) -> usize {
    let today = today();
    rows.iter().filter(|row| Common::of(book, **row, today) == Common::Old).count()
}

/// The groups; those named in the lines of `opened` stand open.
pub(super) fn groups(groups: Memo<Vec<Group>>, opened: RwSignal<String>, prices: Hangs) -> AnyView {
    let listed = move || groups.with(|groups| groups.iter().map(|group| group.common.clone()).collect::<Vec<Common>>());
    let draw = move |common: Common| {
        let of = common.clone();
        let group = Memo::new(move |_| groups.with(|groups| groups.iter().find(|it| it.common == of).cloned()));
        drawn(&common, group, opened, prices)
    };
    view! { <For each=listed key=|common| common.clone() children=draw /> }.into_any()
}

fn drawn(common: &Common, group: Memo<Option<Group>>, opened: RwSignal<String>, prices: Hangs) -> AnyView {
    let state = AppState::here();
    let rows = move |read: fn(&Group) -> &Vec<Row>| {
        Memo::new(move |_| group.with(|group| group.as_ref().map(|group| read(group).clone()).unwrap_or_default()))
    };
    let (current, others) = (rows(|group| &group.current), rows(|group| &group.others));
    let by_supplier = matches!(common, Common::Supplier(_));
    let figure = text(move || {
        let items = say!(market::items_listed, items = current.with(Vec::len));
        match state.book.with(|book| current.with(|current| old_ones(book, current))) {
            0 => items,
            old if by_supplier => say!(market::items_and_old, items = items, old = old),
            _ => items,
        }
    });
    let name = common.name();
    let further = text(move || say!(market::items_listed, items = others.with(Vec::len)));
    let other_packs = {
        let (title, name) = (say!(market::other_packs_of, supplier = &name), format!("{name}/"));
        when(
            move || others.with(|others| !others.is_empty()),
            move || fold(&name, &title, further, others, opened, prices),
        )
    };
    let title = name.clone();
    view! {
        {fold(&name, &title, figure, current, opened, prices)}
        {other_packs}
    }
    .into_any()
}

/// One fold with its rows, which are drawn once it stands open.
fn fold(
    name: &str,
    title: &str,
    figure: Signal<String>,
    rows: Memo<Vec<Row>>,
    opened: RwSignal<String>,
    prices: Hangs,
) -> AnyView {
    let (of, title) = (name.to_string(), title.to_string());
    let is_open = {
        let of = of.clone();
        Memo::new(move |_| opened.with(|opened| opened.lines().any(|it| it == of)))
    };
    let turned = move |event: leptos::ev::Event| {
        let open = event_target::<Element>(&event).has_attribute("open");
        if untrack(|| is_open.get()) != open {
            opened.update(|opened| {
                let others = opened.lines().filter(|it| *it != of);
                *opened = others.chain(open.then_some(of.as_str())).collect::<Vec<&str>>().join("\n");
            });
        }
    };
    view! {
        <details class="fold price-group" open=move || is_open.get() on:toggle=turned>
            <summary>
                <h2>{title}</h2>
                <span class="fold-figure">{figure}</span>
            </summary>
            {when(move || is_open.get(), move || first_rows(rows, prices))}
        </details>
    }
    .into_any()
}

/// The first rows of a group, and a way to the rest.
fn first_rows(rows: Memo<Vec<Row>>, prices: Hangs) -> AnyView {
    let all = RwSignal::new(false);
    let rest = Memo::new(move |_| rows.with(Vec::len).saturating_sub(FIRST));
    let shown = Memo::new(move |_| {
        let few = if all.get() { usize::MAX } else { FIRST };
        rows.with(|rows| rows.iter().take(few).copied().collect::<Vec<Row>>())
    });
    let more = live(move || match (rest.get(), all.get()) {
        (0, _) | (_, true) => ().into_any(),
        (rest, false) => view! {
            <button class="quiet" on:click=press(move || all.set(true))>
                {say!(market::show_more, count = rest)}
            </button>
        }
        .into_any(),
    });
    let nowhere = Signal::stored(None);
    view! {
        <div class="fold-in">
            <ul class="prices">{price_rows(shown, nowhere, false, prices)}</ul>
            {more}
        </div>
    }
    .into_any()
}

/// A row for each pack, kept as long as it is listed.
pub(super) fn price_rows(
    rows: Memo<Vec<Row>>,
    next: Signal<Option<&'static str>>,
    with_supplier: bool,
    prices: Hangs,
) -> AnyView {
    let row = move |row: Row| view! { <PriceRow row next with_supplier prices /> };
    view! { <For each=move || rows.get() key=|row| *row children=row /> }.into_any()
}
