//! What payments by card cost, and what others keep of a price.

use leptos::prelude::*;

use super::{Setting, choice, field, money, percent, small_share};
use crate::book::CommissionBase;
use crate::drink::label::Law;
use crate::say;
use crate::ui::fields::{self, Example};
use crate::ui::live::{text, trouble};
use crate::ui::parts::Section;
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
    view! {
        <Section heading=say!(drinks::fees)>
            <div class="fields">
                {small_share(say!(book::card_fee), "card-fee", say!(book::card_fee_about), fee)}
                {field(say!(common::fee_per_transaction), "", fixed)}
                {drinks_per_payment(state)}
                {small_share(say!(book::app_commission), "commission", say!(book::app_commission_about), commission)}
                {choice(
                    state,
                    say!(book::commission_on),
                    bases,
                    |it, _| words::commission_base(it.commission_on).to_string(),
                    |it, base| it.commission_on = base,
                )}
            </div>
            {trouble(resold)}
        </Section>
    }
    .into_any()
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
