//! The sheet of a batch, to work from on paper.

use leptos::prelude::*;

use super::frame::bodies;
use crate::app::route::Route;
use crate::book::{Batch, Book, Key, Make, Ready};
use crate::counter::batch::{Portion, Sheet, Weighed, on_shelf, sheet};
use crate::counter::on_hand::{Reached, reach};
use crate::drink::ledger::Ledger;
use crate::drink::make::needs;
use crate::foundation::measure::{Amount, Date, Overflow, Unit};
use crate::say;
use crate::ui::live::live;
use crate::ui::order;
use crate::ui::state::AppState;
use crate::words;

/// The sheet of a batch: what is made, weighed out and taken from the shelf, with a box to tick
/// beside each.
#[component]
pub fn BatchSheet(
    /// The day.
    day: Date,
) -> impl IntoView {
    let state = AppState::here();
    live(move || {
        state.book.with(|book| {
            let Some(batch) = book.batch(day) else {
                return view! { <p class="hollow">{say!(counter::no_batch)}</p> }.into_any();
            };
            let (sheet, reached) = match state.ledger.with(|ledger| needed(book, ledger, batch)) {
                Ok(needed) => needed,
                Err(error) => return view! { <p class="trouble">{words::overflow(error)}</p> }.into_any(),
            };
            let said = words::Batches { book, speaker: &state.speaker.get() };
            let make = |make: &Make| {
                let use_by = book.drink(make.drink).and_then(|drink| drink.use_by(day)).map(words::day);
                view! {
                    <tr class="paper-whole">
                        <th scope="row">{ticked(book.name(Key::Offer(make.offer())), make.filled)}</th>
                        <td class="paper-figure"><b>{state.number(make.units)}</b></td>
                        <td class="paper-blank"></td>
                        <td class="paper-blank"></td>
                        <td class="paper-blank"></td>
                        <td>{use_by}</td>
                    </tr>
                }
                .into_any()
            };
            let portion = |portion: &Portion| {
                let name = book.name(Key::Ingredient(portion.ingredient));
                let name = say!(counter::prep_of, ingredient = name, prep = words::stage(portion.stage));
                let done = batch.ready.contains(&Ready { ingredient: portion.ingredient, stage: portion.stage });
                let mut amounts: Vec<(String, String)> = match &portion.weighed {
                    Ok(stations) => stations
                        .iter()
                        .map(|it: &Weighed| (words::station(it.station).to_string(), said.weighed(it.amount)))
                        .collect(),
                    Err(lacks) => vec![(String::new(), said.not_comparable(lacks))],
                };
                let season = words::counter::by_season(book, portion.ingredient);
                amounts.extend((!season.is_empty()).then(|| (String::new(), season.to_string())));
                line(name, amounts, done)
            };
            let piece = |(id, pieces): &(_, _)| {
                let pieces = said.weighed(Amount::new(*pieces, Unit::Piece));
                line(book.name(Key::Packaging(*id)), vec![(String::new(), pieces)], false)
            };
            // By name: ids come by chance.
            let portions = order::ingredients(book)
                .into_iter()
                .flat_map(|key| sheet.portions.iter().filter(move |it| Key::Ingredient(it.ingredient) == key));
            let pieces = order::packagings(book)
                .into_iter()
                .flat_map(|key| sheet.packaging.iter().filter(move |(id, _)| Key::Packaging(*id) == key));
            let kept = said.kept(batch);
            let deducted = batch.makes.iter().any(|make| make.off_shelf.is_positive());
            let short = said.shortages(&reached, deducted);
            // What is typed in the batch and cannot be read is not in the plan.
            let unread = state.unfinished.with(|all| all.unread_on(&Route::Batch(day).address()));
            let unread = unread.into_iter().map(|(field, text)| words::not_planned(&field, &text));
            let left_out = |(offer, why): &(_, _)| view! { <p class="trouble">{said.unmade(*offer, why)}</p> };
            view! {
                {unread.map(|sentence| view! { <p class="trouble">{sentence}</p> }).collect_view()}
                {sheet.left_out.iter().map(left_out).collect_view()}
                {to_fill(batch.planned().map(make).collect())}
                {by_drink(say!(counter::cautions), said.cautions(batch))}
                {by_drink(say!(counter::short_on_hand), short)}
                {table(say!(counter::to_weigh), portions.map(portion).collect())}
                {table(say!(common::packaging), pieces.map(piece).collect())}
                {by_drink(say!(counter::storage), kept)}
                {by_drink(say!(counter::allergens), said.allergens(batch))}
            }
            .into_any()
        })
    })
}

/// What a batch takes, and whether what is here is enough for what of it is to come.
///
/// # Errors
/// [`Overflow`].
pub fn needed(book: &Book, ledger: &Ledger, batch: &Batch) -> Result<(Sheet, Vec<Reached>), Overflow> {
    let takes = needs(book, ledger, &mut on_shelf(batch)?.into_iter())?;
    Ok((sheet(book, ledger, batch)?, reach(book, &takes)?))
}

/// What is filled: how many, and room to write down what was made of it, its lot and who made it.
fn to_fill(rows: Vec<AnyView>) -> AnyView {
    if rows.is_empty() {
        return ().into_any();
    }
    let heads = [
        say!(counter::to_fill),
        say!(counter::planned),
        say!(counter::made),
        say!(counter::lot),
        say!(counter::initials),
        say!(counter::use_by_date),
    ];
    let heads = heads.map(|head| view! { <th scope="col">{head}</th> }).into_iter().collect_view();
    view! {
        <section>
            <table class="paper-table paper-fills">
                <thead>
                    <tr>{heads}</tr>
                </thead>
                {bodies(rows)}
            </table>
        </section>
    }
    .into_any()
}

/// What is said of each: of a drink how it is kept and until when, what it holds.
fn by_drink(heading: &'static str, said: Vec<(String, String)>) -> AnyView {
    let row = |(drink, said): (String, String)| {
        view! {
            <tr class="paper-whole">
                <th scope="row">{drink}</th>
                <td>{said}</td>
            </tr>
        }
        .into_any()
    };
    table(heading, said.into_iter().map(row).collect())
}

fn table(heading: &'static str, rows: Vec<AnyView>) -> AnyView {
    if rows.is_empty() {
        return ().into_any();
    }
    view! {
        <section>
            <h2>{heading}</h2>
            <table class="paper-table">
                {bodies(rows)}
            </table>
        </section>
    }
    .into_any()
}

/// A box to tick, a name, and amounts, each with its station.
fn line(name: String, amounts: Vec<(String, String)>, done: bool) -> AnyView {
    let one = |(station, amount): (String, String)| {
        view! { <span class="batch-amount"><span class="soft">{station}</span> " " <b>{amount}</b></span> }
    };
    view! {
        <tr class="paper-whole">
            <th scope="row">{ticked(name, done)}</th>
            <td>{amounts.into_iter().map(one).collect_view()}</td>
        </tr>
    }
    .into_any()
}

/// A box to tick, and a name.
fn ticked(name: String, done: bool) -> AnyView {
    view! {
        <span class="batch-box" class:batch-box-done=done aria-hidden="true"></span>
        {name}
        {done.then(|| view! { " " <span class="soft">{say!(counter::done)}</span> })}
    }
    .into_any()
}
