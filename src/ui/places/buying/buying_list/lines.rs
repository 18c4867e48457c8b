//! The lines of the list, by supplier.

use leptos::prelude::*;

use super::{changed, said};
use crate::book::{Book, Edit, Goods, Key, PackId, ToBuy};
use crate::buying::buying_list::{Group, Listed, Totals, group};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, Tick, asks};
use crate::ui::live::{flag, live, text};
use crate::ui::parts::{TakeOut, figures};
use crate::ui::state::AppState;
use crate::words::buying_list::supplier;
use crate::words::texts::{HOLE, around};

/// A line of the list.
type Line = (Goods, PackId);

/// The groups with their lines: as long as these are the same, nothing is drawn anew.
type Shape = Vec<(String, Vec<Line>)>;

/// The lines of the list, by supplier.
#[component]
pub fn Lines() -> impl IntoView {
    let state = AppState::here();
    let shape = Memo::new(move |_| {
        let line = |listed: &Listed| (listed.line.goods, listed.line.pack);
        let of = |group: &Group| (group.supplier.clone(), group.lines.iter().map(line).collect());
        groups(state).map(|(groups, _)| groups.iter().map(of).collect::<Shape>()).unwrap_or_default()
    });
    let totals = move || groups(state).map(|(_, totals)| totals);
    let hangs = Hangs::new();
    let money = move || {
        let Some(totals) = totals() else { return Vec::new() };
        let left = totals.left().unwrap_or_default();
        let money =
            [(say!(market::to_buy), left), (say!(market::bought), totals.bought), (say!(market::total), totals.all)];
        money.map(|(name, money)| (name.to_string(), state.money(money), None)).to_vec()
    };
    let progress = text(move || {
        let Some(totals) = totals() else { return String::new() };
        match totals.lines {
            0 => say!(market::list_is_empty).to_string(),
            _ => said(state, |words| words.progress(&totals)),
        }
    });
    view! {
        <div class="answer-bar buy-answer">
            {hangs.answer(move || {
                view! {
                    <dl class="figures">{figures(money)}</dl>
                    <p class="hollow" role="status">
                        {progress}
                    </p>
                }
                .into_any()
            })}
        </div>
        {live(move || shape.get().into_iter().map(|group| of_supplier(group, hangs)).collect_view().into_any())}
    }
}

fn groups(state: AppState) -> Option<(Vec<Group>, Totals)> {
    state.book.with(|book| group(book, book.buying_list()?).ok())
}

fn of_supplier((name, lines): (String, Vec<Line>), hangs: Hangs) -> AnyView {
    let state = AppState::here();
    let group = move |name: &str| groups(state)?.0.into_iter().find(|group| group.supplier == name);
    let heading = {
        let name = name.clone();
        text(move || group(&name).map(|group| supplier(&group).to_string()).unwrap_or_default())
    };
    let totals =
        text(move || group(&name).map(|group| said(state, |words| words.totals(&group.totals))).unwrap_or_default());
    view! {
        <section class="section">
            <h2>{heading}</h2>
            <p class="buy-head" aria-hidden="true">{say!(market::paid_per_pack_head)}</p>
            <ul class="buy">{lines.into_iter().map(|line| row(line, hangs.within())).collect_view()}</ul>
            {hangs.while_read(move || view! { <p class="buy-totals">{totals}</p> }.into_any())}
        </section>
    }
    .into_any()
}

/// One line of the book's list.
fn line_of(book: &Book, (goods, pack): Line) -> Option<ToBuy> {
    book.buying_list()?.lines.iter().find(|line| (line.goods, line.pack) == (goods, pack)).copied()
}

/// The edit that changes one line.
fn line_changed(book: &Book, (goods, pack): Line, change: impl FnOnce(&mut ToBuy)) -> Option<Edit> {
    changed(book, |list| {
        if let Some(line) = list.lines.iter_mut().find(|line| (line.goods, line.pack) == (goods, pack)) {
            change(line);
        }
    })
}

fn row(of: Line, hangs: Hangs) -> AnyView {
    let state = AppState::here();
    let listed = Memo::new(move |_| state.book.with(|book| Listed::of(book, line_of(book, of)?).ok()));
    // Not followed: the row would be drawn anew, and its field lose the caret, with every edit.
    let name = state.book.with_untracked(|book| book.name(Key::from(of.0)));
    let bought = flag(move || listed.with(|it| it.as_ref().is_some_and(|it| it.line.bought)));
    let packs = text(move || {
        let of = |it: &Listed| said(state, |words| words.packs(it.line.packs, it.pack.as_ref()));
        listed.with(|it| it.as_ref().map(of).unwrap_or_default())
    });
    let cost = text(move || {
        // What one pack was quoted at stands in the field for what is paid.
        let more = |it: &&Listed| it.line.paid.is_some() || !it.line.packs.is_one() || it.each.is_none();
        let of = |it: &Listed| said(state, |words| words.line_cost(it));
        listed.with(|it| it.as_ref().filter(more).map(of).unwrap_or_default())
    });
    let quoted = untrack(|| listed.with(|it| it.as_ref().and_then(|it| it.pack.as_ref().map(|pack| pack.price_now()))));
    let quoted = quoted.map(|price| state.plain_money(price)).unwrap_or_default();
    let paid = text(move || {
        let paid = listed.with(|it| it.as_ref().and_then(|it| it.line.paid));
        paid.map(|paid| state.plain_money(paid)).unwrap_or_default()
    });
    // Far from what was quoted, it is asked about.
    let asked = asks(Kind::Price, of.0, format!("{}/paid", of.1)).about(text(move || {
        let price = |it: &Listed| it.line.paid.or_else(|| it.pack.as_ref().map(|pack| pack.price_now()));
        let price = listed.with(|it| it.as_ref().and_then(price));
        price.map(|price| state.plain_money(price)).unwrap_or_default()
    }));
    let number = text(move || listed.with(|it| it.as_ref().map(|it| state.number(it.line.packs)).unwrap_or_default()));
    let step = say!(market::list_step, name = &name);
    let tick = {
        let step = step.clone();
        move |bought| {
            let edit = state.book.with_untracked(|book| line_changed(book, of, |line| line.bought = bought));
            // A tick on a line that is there is never refused.
            let _ = edit.map(|edit| state.apply(&step, edit));
        }
    };
    let take_out = {
        let step = step.clone();
        move || {
            let out = |it: &ToBuy| (it.goods, it.pack) != of;
            let edit = state.book.with_untracked(|book| changed(book, |list| list.lines.retain(out)));
            let _ = edit.map(|edit| state.apply(&step, edit));
        }
    };
    let set_paid = move |book: &Book, paid| line_changed(book, of, |line| line.paid = paid);
    let set_packs = move |book: &Book, packs: Exact| line_changed(book, of, |line| line.packs = packs);
    let entry_packs = view! {
        <Entry
            label=say!(market::packs_of, name = &name)
            label_hidden=true
            hangs
            value=number
            commit=fields::count(step.clone(), fields::Example::PacksPerOrder, set_packs)
        />
    };
    let shown = name.clone();
    let change = say!(market::change_item, name = HOLE);
    let (change, after) = around(&change);
    let rest = [name.clone(), after].concat();
    view! {
        <li class="buy-line">
            <Tick done=bought set=tick>
                {shown} " "
                <span class="soft">{packs}</span>
            </Tick>
            <Entry
                label=say!(market::paid_per_pack, name = &name)
                label_hidden=true
                example=quoted
                asks=asked
                hangs
                value=paid
                commit=fields::optional_money(step, fields::Example::CasePrice, set_paid)
            />
            {hangs.while_read(move || view! { <p class="soft">{cost}</p> }.into_any())}
            <details class="more">
                <summary>{change} <span class="unseen">{rest}</span></summary>
                <div class="buy-change">
                    <span>{say!(goods::packs)}</span>
                    {entry_packs}
                    <TakeOut name=Signal::stored(name) on_click=take_out />
                </div>
            </details>
        </li>
    }
    .into_any()
}
