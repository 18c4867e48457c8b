//! What a size costs on the terms of its margin, thing by thing.

use leptos::prelude::*;

use crate::book::{CostBasis, Key, OfferId, Part};
use crate::drink::ledger::Priced;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::ui::how::opens;
use crate::ui::live::{live, text};
use crate::ui::parts::{Fold, is_wide};
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// The cost that the margin covers, on a fold with its sum.
#[component]
pub fn CostFold(id: OfferId) -> impl IntoView {
    let state = AppState::here();
    let sum = move || state.priced(id, sum).unwrap_or(Money::ZERO);
    let table = live(move || state.priced(id, |it| Some(table(state, id, it))).unwrap_or_else(|| ().into_any()));
    view! {
        <Fold name=say!(common::cost) figure=text(move || state.money(sum())) open=is_wide()>
            {table}
        </Fold>
    }
}

/// The fees of the price asked, where the margin covers them.
fn fees(priced: &Priced) -> Option<Money> {
    let asked = priced.asked.filter(|_| priced.terms.cost_basis.has_fees());
    asked.map(|asked| asked.fees).filter(|fees| fees.is_positive())
}

/// What the margin covers.
fn sum(priced: &Priced) -> Option<Money> {
    priced.covered().ok()
}

fn table(state: AppState, id: OfferId, priced: &Priced) -> AnyView {
    let basis = priced.terms.cost_basis;
    let all = sum(priced).unwrap_or(Money::ZERO);
    let share = |money: Money| state.percent(Share::from_fraction(money.ratio_to(all).unwrap_or(Exact::ZERO)));
    let figure = |of: Option<OfOffer>, money: Money| {
        let shown = state.fine_money(money);
        match of {
            Some(of) => opens(Shown::Offer(id, of), Signal::stored(shown)),
            None => shown.into_any(),
        }
    };
    let of_part = |part: Part| {
        let money = priced.cost.covered_part(basis, part).ok().filter(|money| money.is_positive())?;
        // What is thrown away or free of a part of the costs is worked out in their sum.
        let of = (!matches!(part, Part::Unsold | Part::Free) || basis == CostBasis::Everything)
            .then_some(OfOffer::Part(part));
        let class = format!("swatch part-{}", Part::ALL.iter().position(|it| *it == part).unwrap_or(0));
        Some(view! {
            <tr class="table-sum">
                <th scope="row"><span class=class aria-hidden="true"></span>{words::part(part)}</th>
                <td>{figure(of, money)}</td>
                <td>{share(money)}</td>
            </tr>
            {details(state, id, priced, part)}
        })
    };
    let fees = fees(priced).map(|fees| {
        view! {
            <tr class="table-sum">
                <th scope="row">{say!(drinks::fees)}</th>
                <td>{figure(Some(OfOffer::At(AtPrice::Asked, OfPrice::Fees)), fees)}</td>
                <td>{share(fees)}</td>
            </tr>
        }
    });
    let of_sum = if basis == CostBasis::Everything { None } else { Some(OfOffer::Covered) };
    view! {
        <table class="table">
            <thead>
                <tr>
                    <th scope="col">{say!(drinks::part)}</th>
                    <th scope="col">{say!(common::cost)}</th>
                    <th scope="col">{say!(drinks::share)}</th>
                </tr>
            </thead>
            <tbody>{Part::ALL.into_iter().filter_map(of_part).collect_view()} {fees}</tbody>
            <tfoot>
                <tr>
                    <th scope="row">{words::cost_basis(basis)}</th>
                    <td>{figure(of_sum, all)}</td>
                    <td></td>
                </tr>
            </tfoot>
        </table>
    }
    .into_any()
}

/// The lines that a part is made of.
fn details(state: AppState, id: OfferId, priced: &Priced, part: Part) -> Vec<impl IntoView + use<>> {
    let lines: Vec<(Key, OfOffer, Money)> = match part {
        Part::Ingredients => {
            let lines = priced.cost.lines.iter();
            lines.map(|it| (Key::Ingredient(it.ingredient), OfOffer::LineCost(it.line), it.cost)).collect()
        }
        Part::ContainerSet => {
            let packaging = priced.cost.packaging.iter().enumerate();
            packaging
                .map(|(place, it)| (Key::Packaging(it.packaging), OfOffer::PackagingCost(place), it.cost))
                .collect()
        }
        Part::Labour | Part::Flat(_) | Part::Unsold | Part::Free => Vec::new(),
    };
    let row = |(key, of, cost): (Key, OfOffer, Money)| {
        let name = state.book.with(|book| book.name(key));
        view! {
            <tr class="table-detail">
                <th scope="row">{name}</th>
                <td>{opens(Shown::Offer(id, of), Signal::stored(state.fine_money(cost)))}</td>
                <td></td>
            </tr>
        }
    };
    lines.into_iter().map(row).collect()
}
