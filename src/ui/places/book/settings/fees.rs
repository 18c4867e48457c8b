//! What payments by card cost, and what others keep of a price.

use leptos::prelude::*;

use super::{Setting, choice, field, money, part, percent, small_share};
use crate::book::CommissionBase;
use crate::drink::label::Law;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{self, Example};
use crate::ui::live::{text, trouble};
use crate::ui::state::AppState;
use crate::words;

/// The card fee with the drinks that share its fixed part, and commission.
pub(super) fn fees(state: AppState, law: Law) -> AnyView {
    // Whoever has others sell the juice is told what that asks for.
    let resold = move || {
        let commission = state.book.with(|book| book.settings().commission);
        (!commission.is_zero()).then(|| words::sold_to_a_business(law).to_string())
    };
    let fee = percent(
        state,
        say!(book::card_fee),
        Example::CardFee,
        |it| it.payment_fee.share,
        |it, share| it.payment_fee.share = share,
    );
    let fixed = money(
        state,
        say!(common::fee_per_transaction),
        Example::TransactionFee,
        |it| it.payment_fee.fixed,
        |it, money| it.payment_fee.fixed = money,
    );
    let commission = percent(
        state,
        say!(book::app_commission),
        Example::Commission,
        |it| it.commission,
        |it, share| it.commission = share,
    );
    let bases = CommissionBase::ALL.iter().map(|base| (words::commission_base(*base).to_string(), *base)).collect();
    let inside = view! {
            <div class="fields">
                {small_share(say!(book::card_fee), "card-fee", say!(book::card_fee_about), fee)}
                {field(say!(common::fee_per_transaction), "", fixed)}
                {drinks_per_payment(state)}
                {small_share(say!(book::app_commission), "commission", commission_about(state), commission)}
                {choice(
                    state,
                    say!(book::commission_on),
                    bases,
                    |it, _| words::commission_base(it.commission_on).to_string(),
                    |it, base| it.commission_on = base,
                )}
            </div>
            {trouble(resold)}
    };
    part(say!(drinks::fees), "", move || taken(state), inside.into_any())
}

/// What is taken of a price: "2.9% + $0.10", and the commission.
fn taken(state: AppState) -> String {
    let (fee, commission) = state.book.with(|book| (book.settings().payment_fee, book.settings().commission));
    let percent = |share| state.speaker.get().short_percent(share, 2);
    let card = match (fee.share.is_zero(), fee.fixed.is_zero()) {
        (true, true) => None,
        (false, true) => Some(percent(fee.share)),
        _ => Some(say!(book::share_and_fixed, share = percent(fee.share), fixed = state.money(fee.fixed))),
    };
    let commission = (!commission.is_zero()).then(|| percent(commission));
    let said: Vec<String> = card.into_iter().chain(commission).collect();
    if said.is_empty() { say!(common::none).to_string() } else { said.join(", ") }
}

/// What the share is taken off, and how to type one of some sales only.
fn commission_about(state: AppState) -> Signal<String> {
    text(move || {
        let speaker = state.speaker.get();
        let [share, average] = [25, 5].map(|percent| speaker.percentage(Exact::new(percent, 0), 0));
        say!(book::app_commission_about, share = share, average = average)
    })
}

/// How many drinks share the fixed part of a fee: 1 or more.
fn drinks_per_payment(state: AppState) -> AnyView {
    let label = say!(book::drinks_per_payment);
    let value = super::shown(state, |it, state| state.number(it.payment_fee.drinks));
    let note = text(move || {
        say!(book::drinks_per_payment_about, example = Example::DrinksPerPayment.said(&state.speaker.get()))
    });
    let commit = fields::count(label, Example::DrinksPerPayment, |book, drinks| {
        super::changed(book, |it| it.payment_fee.drinks = drinks)
    });
    field(label, note, Setting { value, commit })
}
