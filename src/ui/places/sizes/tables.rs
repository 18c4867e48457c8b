//! Tables with a column for each size: as it is, and beside it as it would be.

use leptos::prelude::*;

use super::chart::{LinesBySize, PartsBySize};
use super::trying::Columns;
use crate::app::route::Route;
use crate::book::{Key, OfferId, Part};
use crate::drink::ledger::OfferStatus;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::sizes::side_by_side::{SizeRow, SoldSize};
use crate::ui::how::opens;
use crate::ui::live::{flag, live, text, when};
use crate::ui::parts::{Fold, Mark, Section, is_wide};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, OfSize, Shown};

/// Writes a figure of a size, or `None` if it has none.
type Cell = Box<dyn Fn(&SizeRow) -> Option<String> + Send + Sync>;
/// The working of a figure.
type HowOf = Box<dyn Fn(OfferId) -> Shown + Send + Sync>;

/// A line of a table.
fn line(
    columns: Memo<Columns>,
    name: &'static str,
    large: bool,
    how: Option<HowOf>,
    cell: impl Fn(AppState, &SizeRow) -> Option<String> + Send + Sync + 'static,
) -> AnyView {
    let state = AppState::here();
    line_of(columns, name, large, how, Box::new(move |row| cell(state, row)))
}

fn line_of(columns: Memo<Columns>, name: &'static str, large: bool, how: Option<HowOf>, cell: Cell) -> AnyView {
    let cells = live(move || {
        columns.with(|columns| {
            let shown = |row: &SizeRow| {
                let now = cell(row).unwrap_or_else(none);
                let figure = match (then_of(columns, row), columns.opens, &how) {
                    (Some(then), _, _) => {
                        was_and_is(now, then.map_or_else(gone, |then| cell(then).unwrap_or_else(none)))
                    }
                    (None, Some(drink), Some(how)) if cell(row).is_some() => {
                        opens(how(OfferId { drink, container: row.container }), Signal::stored(now))
                    }
                    _ => now.into_any(),
                };
                view! { <td>{figure}</td> }
            };
            columns.today().iter().map(shown).collect_view().into_any()
        })
    });
    view! {
        <tr class:table-large=large>
            <th scope="row">{name}</th>
            {cells}
        </tr>
    }
    .into_any()
}

fn none() -> String {
    say!(common::none).to_string()
}

fn gone() -> String {
    say!(sales::not_possible).to_string()
}

/// The same size with what is tried. Returns `None` if nothing is tried, and `Some(None)` if the
/// size cannot be made with what is tried.
fn then_of<'a>(columns: &'a Columns, row: &SizeRow) -> Option<Option<&'a SizeRow>> {
    let then = columns.tried()?;
    Some(then.iter().find(|then| then.container == row.container))
}

/// A figure as it is, where it differs, and as it would be.
fn was_and_is(was: String, is: String) -> AnyView {
    let struck = (was != is).then(|| {
        view! {
            <s class="was">
                <span class="unseen">{say!(sales::was_today)} " "</span>
                {was}
            </s>
            " "
            <span class="unseen">{say!(sales::is_tried)} " "</span>
        }
    });
    view! {
        {struck}
        {is}
    }
    .into_any()
}

/// A table that has a column for each size.
fn table(columns: Memo<Columns>, about: &'static str, lines: AnyView) -> AnyView {
    let state = AppState::here();
    let heads = live(move || {
        let head = |row: &SizeRow| {
            let name = state.book.with(|book| book.name(Key::Container(row.container)));
            let to = columns
                .with(|columns| columns.drink)
                .map(|drink| Route::Offer(OfferId { drink, container: row.container }));
            let name = match to {
                Some(to) => view! { <a href=to.address()>{name}</a> }.into_any(),
                None => name.into_any(),
            };
            view! { <th scope="col">{name}</th> }
        };
        columns.with(|columns| columns.today().iter().map(head).collect_view().into_any())
    });
    view! {
        <div class="wide" tabindex="0" role="region" aria-label=about>
            <table class="table">
                <thead>
                    <tr>
                        <td></td>
                        {heads}
                    </tr>
                </thead>
                <tbody>{lines}</tbody>
            </table>
        </div>
    }
    .into_any()
}

fn asked(of: OfPrice) -> Option<HowOf> {
    Some(Box::new(move |id| Shown::Offer(id, OfOffer::At(AtPrice::Asked, of))))
}

fn of_offer(of: OfOffer) -> Option<HowOf> {
    Some(Box::new(move |id| Shown::Offer(id, of)))
}

fn of_size(of: OfSize) -> Option<HowOf> {
    Some(Box::new(move |id| Shown::Size(id, of)))
}

fn sold(row: &SizeRow, show: impl FnOnce(&SoldSize) -> Option<String>) -> Option<String> {
    row.sold.as_ref().and_then(show)
}

/// Where the one drink stands in a size.
fn status(row: &SizeRow) -> OfferStatus {
    match row.sold {
        None => OfferStatus::WithoutPrice,
        Some(sold) if sold.on_target == 0 => OfferStatus::UnderTarget,
        Some(_) => OfferStatus::OnTarget,
    }
}

fn target(columns: Memo<Columns>) -> AnyView {
    let state = AppState::here();
    let cells = live(move || {
        columns.with(|columns| {
            let one = columns.drink.is_some();
            let said = |row: &SizeRow| match row.sold {
                _ if one => words::offer_status(status(row)).to_string(),
                Some(sold) => {
                    let shown = |count: usize| state.number(Exact::from(u32::try_from(count).unwrap_or(u32::MAX)));
                    say!(sales::on_target_of, on = shown(sold.on_target), drinks = shown(columns.drinks()))
                }
                None => none(),
            };
            let cell = |row: &SizeRow| {
                let then = then_of(columns, row);
                let figure = match then {
                    Some(None) => gone().into_any(),
                    None if one => view! { <Mark status=status(row) /> }.into_any(),
                    Some(Some(then)) if one => {
                        let was = (status(then) != status(row)).then(|| view! { <s class="was">{said(row)}</s> " " });
                        view! {
                            {was}
                            <Mark status=status(then) />
                        }
                        .into_any()
                    }
                    Some(Some(then)) => was_and_is(said(row), said(then)),
                    None => said(row).into_any(),
                };
                view! { <td>{figure}</td> }
            };
            columns.today().iter().map(cell).collect_view().into_any()
        })
    });
    let name = move || {
        if columns.with(|columns| columns.drink.is_some()) { say!(sales::target) } else { say!(first::on_target) }
    };
    view! {
        <tr>
            <th scope="row">{text(move || name().to_string())}</th>
            {cells}
        </tr>
    }
    .into_any()
}

/// Figures of one drink, or their means.
#[component]
pub fn PerDrink(
    /// The sizes.
    columns: Memo<Columns>,
    /// How the means came about. It is empty if they are none.
    means: Signal<String>,
) -> impl IntoView {
    let state = AppState::here();
    // A row that says the same as another, or nothing, is left out.
    let any = move |differs: fn(&SoldSize) -> Money| {
        flag(move || {
            let shown = |row: &SizeRow| {
                row.sold.is_some_and(|it| !words::to_cent(differs(&it), &state.speaker.get()).is_empty())
            };
            columns.with(|columns| columns.today().iter().chain(columns.last()).any(shown))
        })
    };
    let (taxed, reduced) = (any(|it| it.price.minus(it.without_tax).unwrap_or_default()), any(|it| it.reductions));
    let charged = any(|it| it.fees);
    let fees = when(
        move || charged.get(),
        move || {
            line(columns, say!(drinks::fees), false, asked(OfPrice::Fees), |state, row| {
                sold(row, |it| Some(state.money(it.fees)))
            })
        },
    );
    let taxed = when(
        move || taxed.get(),
        move || {
            line(columns, say!(decide::before_tax), false, None, |state, row| {
                sold(row, |it| Some(state.money(it.without_tax)))
            })
        },
    );
    let reductions = when(
        move || reduced.get(),
        move || {
            line(columns, say!(sales::reductions_taken), false, None, |state, row| {
                sold(row, |it| Some(state.money(it.reductions)))
            })
        },
    );
    let lines = view! {
        {line(columns, say!(common::fill), false, Some(Box::new(|id: OfferId| Shown::Poured(id.container))), |state, row| Some(state.volume(row.fill)))}
        {line(columns, say!(common::price), true, None, |state, row| sold(row, |it| Some(state.money(it.price))))}
        {taxed}
        {fees}
        {reductions}
        {line(columns, say!(common::full_cost), false, of_offer(OfOffer::Cost), |state, row| Some(state.money(row.cost)))}
        {line(columns, say!(common::profit_per_drink), false, asked(OfPrice::Contribution), |state, row| {
            sold(row, |it| Some(state.money(it.contribution)))
        })}
        {line(columns, say!(common::margin), true, asked(OfPrice::Margin), |state, row| sold(row, |it| Some(state.percent(it.margin))))}
        {line(columns, say!(sales::profit_per_labor_minute), false, of_size(OfSize::ContributionPerMinute), |state, row| {
            sold(row, |it| it.contribution_per_minute.map(|money| state.money(money)))
        })}
        {line(columns, say!(common::suggested_price), false, of_offer(OfOffer::Suggested), |state, row| {
            row.suggested.map(|(low, high)| match (state.money(low), state.money(high)) {
                (low, high) if low == high => low,
                (low, high) => say!(decide::price_range, low = low, high = high),
            })
        })}
        {target(columns)}
    }
    .into_any();
    let terms = text(move || {
        let basis = state.book.with(|book| book.settings().cost_basis);
        say!(sales::margin_counts, what = words::cost_basis(basis))
    });
    view! {
        <Section heading=say!(sales::per_drink)>
            {table(columns, say!(sales::sizes_per_drink), lines)}
            <p class="soft">{terms}</p>
            <details class="more">
                <summary>{say!(sales::how_figures_add_up)}</summary>
                <p class="soft">{say!(sales::adds_up)}</p>
                <p class="hollow">{means}</p>
            </details>
        </Section>
    }
}

/// The chart of price and cost.
#[component]
pub fn PriceAndCost(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let sizes = text(move || columns.with(|columns| words::sizes(columns.today().len())));
    view! {
        <Fold name=say!(sales::price_and_cost) figure=sizes open=Signal::stored(is_wide()) late=true>
            <LinesBySize columns />
        </Fold>
    }
}

/// What each part of the cost is.
#[component]
pub fn PerPart(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let part_lines = live(move || {
        let of = |(place, part): (usize, Part)| {
            let cost = move |row: &SizeRow| row.parts.get(place).copied().unwrap_or_default();
            let any = columns.with(|columns| {
                let all = columns.today().iter().chain(columns.last());
                all.map(cost).any(Money::is_positive)
            });
            let how = of_offer(OfOffer::Part(part));
            any.then(|| {
                line(columns, words::part(part), false, how, move |state, row| Some(state.fine_money(cost(row))))
            })
        };
        Part::ALL.into_iter().enumerate().filter_map(of).collect_view().into_any()
    });
    let lines = view! {
        {part_lines}
        {line(columns, say!(common::cost), false, of_offer(OfOffer::Cost), |state, row| Some(state.fine_money(row.cost)))}
    }
    .into_any();
    let state = AppState::here();
    let figure = text(move || {
        let costs = columns.with(|columns| columns.last().iter().map(|row| row.cost).collect::<Vec<Money>>());
        range(costs.into_iter().map(|cost| state.money(cost)))
    });
    view! {
        <Fold name=say!(sales::cost_breakdown) figure late=true>
            <PartsBySize columns />
            {table(columns, say!(sales::costs_by_size), lines)}
            <p class="soft">{say!(sales::rows_rounded)}</p>
        </Fold>
    }
}

/// Figures for the volume that prices are quoted for.
#[component]
pub fn PerVolume(
    /// The sizes.
    columns: Memo<Columns>,
) -> impl IntoView {
    let state = AppState::here();
    let heading = text(move || {
        let name = state.book.with(|book| book.settings().units.price_volume_name());
        say!(sales::per_volume, volume = name)
    });
    let said = text(move || columns.with(|columns| sentence(state, columns.last())));
    let lines = view! {
        {line(columns, say!(common::price), true, of_size(OfSize::PricePerVolume), |state, row| {
            sold(row, |it| Some(state.fine_money(it.price_per_volume)))
        })}
        {line(columns, say!(common::cost), false, of_size(OfSize::CostPerVolume), |state, row| {
            Some(state.fine_money(row.cost_per_volume))
        })}
        {line(columns, say!(sales::profit), false, of_size(OfSize::ContributionPerVolume), |state, row| {
            sold(row, |it| Some(state.fine_money(it.contribution_per_volume)))
        })}
        {line(columns, say!(sales::price_against_smallest), false, of_size(OfSize::AgainstSmallest), |state, row| {
            sold(row, |it| {
                let base = it.against_smallest == Share::WHOLE;
                Some(if base { say!(sales::smallest).to_string() } else { state.percent(it.against_smallest) })
            })
        })}
    }
    .into_any();
    view! {
        <Fold name=say!(sales::by_volume) figure=heading late=true>
            <p class="about">{said}</p>
            {table(columns, say!(sales::sizes_by_volume), lines)}
        </Fold>
    }
}

/// The first and the last of some figures.
pub fn range(mut figures: impl Iterator<Item = String>) -> String {
    match (figures.next(), figures.last()) {
        (Some(first), Some(last)) => say!(sales::likely_between, low = first, high = last),
        (Some(only), None) => only,
        _ => String::new(),
    }
}

/// What the prices per volume say.
fn sentence(state: AppState, rows: &[SizeRow]) -> String {
    let name = |row: &SizeRow| state.book.with(|book| book.name(Key::Container(row.container)));
    let priced: Vec<(&SizeRow, Money)> =
        rows.iter().filter_map(|row| row.sold.map(|it| (row, it.price_per_volume))).collect();
    let dearest = priced.iter().max_by_key(|(_, price)| *price);
    let cheapest = priced.iter().min_by_key(|(_, price)| *price);
    match (dearest, cheapest) {
        (Some((dear, high)), Some((cheap, low))) if high > low => {
            let (high, low) = (state.fine_money(*high), state.fine_money(*low));
            let (most, least) = (name(dear), name(cheap));
            say!(sales::pays_most_and_least, most = most, high = high, least = least, low = low)
        }
        (Some(_), _) => say!(sales::pays_alike).to_string(),
        _ => say!(sales::no_size_has_price).to_string(),
    }
}
