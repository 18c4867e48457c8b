//! The sizes of one drink side by side.

use leptos::prelude::*;

use super::chart::PerVolume;
use crate::book::{DrinkId, Key, OfferId, Scope};
use crate::measure::{Money, Share};
use crate::sizes::{SizeRow, SoldSize, Step, side_by_side};
use crate::ui::how::opens;
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Back, Mark, Section, page_of};
use crate::ui::route::Route;
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, OfSize, Shown};

/// One drink's sizes side by side.
#[component]
pub fn SideBySide(
    /// The part of the menu.
    scope: Scope,
) -> impl IntoView {
    let Scope::Drink(id) = scope else { return super::choose::Choose().into_any() };
    page_of(Key::Drink(id), Route::Sizes, "Sizes", move || view! { <Page id /> }.into_any()).into_any()
}

#[component]
fn Page(id: DrinkId) -> impl IntoView {
    let state = AppState::here();
    let rows = Memo::new(move |_| state.book.with(|book| state.ledger.with(|ledger| side_by_side(book, ledger, id))));
    let shown = Signal::derive(move || rows.get().unwrap_or_default());
    let overflow = move || rows.get().err().map(words::overflow);
    let left_out = move || {
        let all = state.book.with(|book| book.offers_of(id).count());
        all.saturating_sub(shown.with(Vec::len))
    };
    let incomplete = move || {
        let words = text(move || format!("{} of its sizes cannot be computed and are left out. ", left_out()));
        view! {
            <p class="trouble">{words} <a href=Route::Drink(id).address()>"Open the drink to see why"</a></p>
        }
        .into_any()
    };
    let unsold = move || {
        view! {
            <p class="hollow">
                "It is not sold in any size yet. " <a href=Route::Drink(id).address()>"Add one"</a>
            </p>
        }
        .into_any()
    };
    let tables = move || {
        view! {
            <Section heading="Per drink">
                <PerDrink rows=shown />
            </Section>
            <PerOunce rows=shown />
            <Steps rows=shown />
        }
        .into_any()
    };
    let name = text(move || state.book.with(|book| book.name(Key::Drink(id))));
    view! {
        <Back to=Route::Sizes name="Sizes" />
        <h1>{name} <span class="h1-size">"side by side"</span></h1>
        {trouble(overflow)}
        {when(move || left_out() > 0, incomplete)}
        {when(move || shown.with(Vec::is_empty) && left_out() == 0, unsold)}
        {when(move || !shown.with(Vec::is_empty), tables)}
        <p class="actions">
            <a class="button" href=Route::Drink(id).address()>
                "Open the drink"
            </a>
        </p>
    }
}

/// A line of a table that has a column for each size.
#[component]
fn Line(
    name: &'static str,
    rows: Signal<Vec<SizeRow>>,
    cell: fn(AppState, &SizeRow) -> Option<String>,
    #[prop(optional)] how: Option<fn(OfferId) -> Shown>,
    #[prop(optional)] large: bool,
) -> impl IntoView {
    let state = AppState::here();
    let cells = live(move || {
        let shown = |row: &SizeRow| {
            let figure = match (cell(state, row), how) {
                (Some(figure), Some(how)) => opens(how(row.offer), Signal::stored(figure)),
                (figure, _) => figure.unwrap_or_else(|| "none".into()).into_any(),
            };
            view! { <td>{figure}</td> }
        };
        rows.with(|rows| rows.iter().map(shown).collect_view().into_any())
    });
    view! {
        <tr class:table-large=large>
            <th scope="row">{name}</th>
            {cells}
        </tr>
    }
}

/// The head of a table that has a column for each size.
#[component]
fn Head(rows: Signal<Vec<SizeRow>>) -> impl IntoView {
    let state = AppState::here();
    let cells = live(move || {
        let cell = |row: &SizeRow| {
            let name = state.book.with(|book| book.name(Key::Container(row.offer.container)));
            view! {
                <th scope="col">
                    <a href=Route::Offer(row.offer).address()>{name}</a>
                </th>
            }
        };
        rows.with(|rows| rows.iter().map(cell).collect_view().into_any())
    });
    view! {
        <thead>
            <tr>
                <td></td>
                {cells}
            </tr>
        </thead>
    }
}

fn asked(id: OfferId, of: OfPrice) -> Shown {
    Shown::Offer(id, OfOffer::At(AtPrice::Asked, of))
}

fn sold(row: &SizeRow, show: impl FnOnce(&SoldSize) -> Option<String>) -> Option<String> {
    row.sold.as_ref().and_then(show)
}

#[component]
fn PerDrink(rows: Signal<Vec<SizeRow>>) -> impl IntoView {
    let state = AppState::here();
    let marks = live(move || {
        let mark = |row: &SizeRow| view! { <td><Mark standing=state.standing(row.offer) /></td> };
        rows.with(|rows| rows.iter().map(mark).collect_view().into_any())
    });
    view! {
        <div class="wide" tabindex="0" role="region" aria-label="Sizes per drink">
            <table class="table">
                <Head rows />
                <tbody>
                    <Line
                        name="Poured"
                        rows
                        how=|id| Shown::Poured(id.container)
                        cell=|state, row| Some(state.volume(row.fill))
                    />
                    <Line name="Price" large=true rows cell=|state, row| sold(row, |it| Some(state.money(it.price))) />
                    <Line
                        name="Cost"
                        rows
                        how=|id| Shown::Offer(id, OfOffer::Cost)
                        cell=|state, row| Some(state.money(row.cost))
                    />
                    <Line
                        name="Left after everything"
                        rows
                        how=|id| asked(id, OfPrice::Contribution)
                        cell=|state, row| sold(row, |it| Some(state.money(it.contribution)))
                    />
                    <Line
                        name="Margin"
                        large=true
                        rows
                        how=|id| asked(id, OfPrice::Margin)
                        cell=|state, row| sold(row, |it| Some(state.percent(it.margin)))
                    />
                    <Line
                        name="Left per minute of hands"
                        rows
                        how=|id| Shown::Size(id, OfSize::ContributionPerMinute)
                        cell=|state, row| sold(row, |it| it.contribution_per_minute.map(|money| state.money(money)))
                    />
                    <tr>
                        <th scope="row">"Target"</th>
                        {marks}
                    </tr>
                </tbody>
            </table>
        </div>
    }
}

#[component]
fn PerOunce(rows: Signal<Vec<SizeRow>>) -> impl IntoView {
    let state = AppState::here();
    let heading = text(move || {
        let name = state.book.with(|book| book.settings().units.price_volume_name());
        format!("Per {name}")
    });
    let said = text(move || rows.with(|rows| sentence(state, rows)));
    view! {
        <section class="section">
            <h2>{heading}</h2>
            <p class="about">{said}</p>
            <PerVolume rows />
            <div class="wide" tabindex="0" role="region" aria-label="Sizes per volume">
                <table class="table">
                    <Head rows />
                    <tbody>
                        <Line
                            name="Price"
                            large=true
                            rows
                            how=|id| Shown::Size(id, OfSize::PricePerVolume)
                            cell=|state, row| sold(row, |it| Some(state.fine_money(it.price_per_volume)))
                        />
                        <Line
                            name="Cost"
                            rows
                            how=|id| Shown::Size(id, OfSize::CostPerVolume)
                            cell=|state, row| Some(state.fine_money(row.cost_per_volume))
                        />
                        <Line
                            name="Left after everything"
                            rows
                            how=|id| Shown::Size(id, OfSize::ContributionPerVolume)
                            cell=|state, row| sold(row, |it| Some(state.fine_money(it.contribution_per_volume)))
                        />
                        <Line
                            name="Price against the smallest"
                            rows
                            how=|id| Shown::Size(id, OfSize::AgainstSmallest)
                            cell=|state, row| {
                                sold(row, |it| {
                                    let base = it.against_smallest == Share::WHOLE;
                                    Some(if base { "the base".to_string() } else { state.percent(it.against_smallest) })
                                })
                            }
                        />
                    </tbody>
                </table>
            </div>
        </section>
    }
}

/// What the prices per volume say.
fn sentence(state: AppState, rows: &[SizeRow]) -> String {
    let name = |row: &SizeRow| state.book.with(|book| book.name(Key::Container(row.offer.container)));
    let priced: Vec<(&SizeRow, Money)> =
        rows.iter().filter_map(|row| row.sold.map(|it| (row, it.price_per_volume))).collect();
    let dearest = priced.iter().max_by_key(|(_, price)| *price);
    let cheapest = priced.iter().min_by_key(|(_, price)| *price);
    match (dearest, cheapest) {
        (Some((dear, high)), Some((cheap, low))) if high > low => {
            let (high, low) = (state.fine_money(*high), state.fine_money(*low));
            format!("By volume the customer pays most in {} ({high}) and least in {} ({low}).", name(dear), name(cheap))
        }
        (Some(_), _) => "By volume the customer pays the same in every size.".to_string(),
        _ => "No size has a price yet.".to_string(),
    }
}

#[component]
fn Steps(rows: Signal<Vec<SizeRow>>) -> impl IntoView {
    let state = AppState::here();
    let name = move |row: &SizeRow| state.book.with(|book| book.name(Key::Container(row.offer.container)));
    let step = move |from: &SizeRow, to: &SizeRow, step: Step| {
        let how = |of, figure| opens(Shown::Size(to.offer, of), Signal::stored(figure));
        let price = how(OfSize::ExtraPrice, state.money(step.extra_price));
        let cost = how(OfSize::ExtraCost, state.money(step.extra_cost));
        let kept = step.kept.map(|share| how(OfSize::Kept, state.percent(share)));
        let said = if kept.is_some() { " of it is kept." } else { "the price does not rise." };
        view! {
            <li>
                <strong>{name(from)} " to " {name(to)}</strong>
                ": asks "
                {price}
                " more, costs "
                {cost}
                " more; "
                {kept}
                {said}
            </li>
        }
    };
    let steps = move || {
        let steps = rows.with(|rows| {
            let mut before: Option<&SizeRow> = None;
            let mut steps = Vec::new();
            for row in rows.iter().filter(|row| row.sold.is_some()) {
                if let (Some(before), Some(taken)) = (before, row.step) {
                    steps.push(step(before, row, taken));
                }
                before = Some(row);
            }
            steps
        });
        steps.collect_view().into_any()
    };
    let any = move || rows.with(|rows| rows.iter().any(|row| row.step.is_some()));
    let section = move || {
        view! {
            <Section heading="From one size to the next">
                <ul class="steps">{live(steps)}</ul>
            </Section>
        }
        .into_any()
    };
    when(any, section)
}
