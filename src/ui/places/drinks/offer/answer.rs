//! What a size brings, always in view: price, margin and profit, and where it stands.

use leptos::prelude::*;

use crate::book::OfferId;
use crate::drink::ledger::{OfferStatus, Priced};
use crate::drink::price::{Asked, not_counted};
use crate::say;
use crate::ui::how::opens;
use crate::ui::live::{live, text, trouble};
use crate::ui::parts::Mark;
use crate::ui::state::AppState;
use crate::words;
use crate::working::{AtPrice, OfOffer, OfPrice, Shown};

/// Price, margin and profit of a size with its verdict.
pub fn answer(state: AppState, id: OfferId) -> AnyView {
    let figure = move |show: fn(&Priced, AppState) -> Option<String>| {
        text(move || state.priced(id, |it| show(it, state)).unwrap_or_else(|| say!(common::none).into()))
    };
    let opened = move |price, show| opens(Shown::Offer(id, OfOffer::At(AtPrice::Asked, price)), figure(show));
    let menu = text(move || {
        let menu = state.book.with(|book| book.offer(id)?.price);
        menu.map_or_else(|| say!(common::none_yet).into(), |menu| state.money(menu))
    });
    let deposit = Memo::new(move |_| state.book.with(|book| book.container(id.container).map(|it| it.deposit)));
    let deposit = live(move || {
        let deposit = deposit.get().filter(|deposit| deposit.is_positive());
        let said = |deposit| say!(drinks::plus_deposit, deposit = state.money(deposit));
        deposit.map(|deposit| view! { " " <small class="answer-deposit">{said(deposit)}</small> }).into_any()
    });
    let margin_on = live(move || words::margin_on(state.book.with(|book| book.settings().cost_basis)).into_any());
    let verdict = text(move || state.priced(id, |it| Some(verdict(it, state))).unwrap_or_default());
    let lacks = text(move || {
        let lacks = state.book.with(|book| {
            let offer = book.offer(id)?;
            state.priced(id, |priced| not_counted(book, offer, priced).into_iter().next())
        });
        lacks.map(words::not_counted_yet).unwrap_or_default().to_string()
    });
    let loses = move || state.priced(id, |it| Some(it.asked?.contribution.is_negative())) == Some(true);
    // With discounts, profit over the menu price is another share than the margin.
    let figured_on = text(move || {
        let said = |asked: Asked| {
            let price = state.money(asked.revenue);
            if asked.menu == asked.without_tax {
                say!(drinks::margin_after_discounts, price = price)
            } else {
                say!(drinks::margin_after_tax, price = price)
            }
        };
        let reduced = state.priced(id, |it| it.asked.filter(|asked| asked.revenue != asked.without_tax));
        reduced.map(said).unwrap_or_default()
    });
    view! {
        <dl class="answer-figures">
            <div>
                <dt>{say!(common::price)}</dt>
                <dd>{menu} {deposit}</dd>
            </div>
            <div>
                <dt>{margin_on}</dt>
                <dd>{opened(OfPrice::Margin, |it, state| Some(state.margin(it.margin()?, it.terms.target)))}</dd>
            </div>
            <div>
                <dt>{say!(common::profit_per_drink)}</dt>
                <dd>
                    {opened(OfPrice::Contribution, |it, state| it.asked.map(|asked| state.money(asked.contribution)))}
                </dd>
            </div>
        </dl>
        <p class="offer-verdict"><Mark status=state.status(id) /> " " <span class="soft">{verdict}</span></p>
        {trouble(move || loses().then(|| say!(drinks::loses_money).to_string()))}
        <p class="hollow offer-lacks">{figured_on} " " {lacks}</p>
    }
    .into_any()
}

/// The target, and the price that reaches it where the price asked does not.
fn verdict(priced: &Priced, state: AppState) -> String {
    let target = state.percent(priced.terms.target);
    match priced.suggestion {
        Ok(suggestion) if priced.status() != OfferStatus::OnTarget => {
            let (price, margin) = (state.money(suggestion.menu), state.percent(suggestion.margin));
            say!(drinks::target_and_suggested, target = target, price = price, margin = margin)
        }
        _ => say!(drinks::target_is, target = target),
    }
}
