//! What making a drink loses and takes, its tax and its target.

use leptos::prelude::*;

use super::change::changed;
use super::labor::{labor, labor_by_size};
use crate::book::{Book, Drink, DrinkId, Key};
use crate::drink::label::Law;
use crate::foundation::jump::Kind;
use crate::foundation::measure::{Money, Share, System};
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::live::{live, text};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// What making it loses and takes, its tax and its target.
#[component]
pub fn Making(id: DrinkId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let (units, law) = (Memo::new(move |_| state.units()), Memo::new(move |_| state.speaker.get().law()));
    live(move || {
        let (units, law) = (units.get(), law.get());
        untrack(|| making(id, hangs, units, law))
    })
}

fn making(id: DrinkId, hangs: Hangs, units: System, law: Law) -> AnyView {
    let state = AppState::here();
    let of = move |show: fn(&Drink, AppState) -> String| {
        text(move || state.book.with(|book| book.drink(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let book_share = move |share: fn(&Book) -> Share| {
        text(move || say!(drinks::blank_uses, share = state.percent(state.book.with(share))))
    };
    view! {
        <Fold name=say!(drinks::making) figure=of(|it, state| state.time_if_any(it.labour.per_drink))>
            <p class="about">{say!(drinks::making_about)}</p>
            <div class="fields">
                <Entry
                    hangs
                    label=say!(drinks::press_or_pour_loss)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "loss")
                    unit="%"
                    example=say!(common::none)
                    value=of(|it, state| state.percent_if_any(it.process_loss))
                    commit=fields::optional_percent(say!(drinks::press_or_pour_loss), fields::Example::ProcessLoss, move |book, loss| {
                        changed(book, id, |it| it.process_loss = loss.unwrap_or(Share::ZERO))
                    })
                />
                <Entry
                    hangs
                    label=say!(drinks::air)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "air")
                    unit="%"
                    note=say!(drinks::air_about)
                    example=say!(common::none)
                    value=of(|it, state| state.percent_if_any(it.air))
                    commit=fields::optional_percent(say!(drinks::air), fields::Example::Air, move |book, air| {
                        changed(book, id, |it| it.air = air.unwrap_or(Share::ZERO))
                    })
                />
                {labor(state, id, hangs, units)}
                <Entry
                    hangs
                    label=say!(drinks::processing_fee)
                    note=say!(drinks::processing_fee_about)
                    asks=asks(Kind::Price, Key::Drink(id), "toll")
                    example=say!(common::none)
                    value=of(|it, state| state.money_if_any(it.treatment_fee))
                    commit=fields::optional_money(say!(drinks::processing_fee), fields::Example::CostPerDrink, move |book, fee| {
                        changed(book, id, |it| it.treatment_fee = fee.unwrap_or(Money::ZERO))
                    })
                />
                <Entry
                    hangs
                    label=say!(drinks::waste)
                    asks=asks(Kind::SmallShare, Key::Drink(id), "waste")
                    unit="%"
                    note=book_share(|book| book.settings().unsold)
                    value=of(|it, state| it.unsold.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent(say!(drinks::waste), fields::Example::Waste, move |book, unsold| {
                        changed(book, id, |it| it.unsold = unsold)
                    })
                />
                {own_tax_rate(state, id, hangs, law)}
                <Entry
                    hangs
                    label=say!(common::target_margin)
                    asks=asks(Kind::Margin, Key::Drink(id), "target")
                    unit="%"
                    note=book_share(|book| book.settings().target)
                    value=of(|it, state| it.target.map(|share| state.plain_percent(share)).unwrap_or_default())
                    commit=fields::optional_percent(say!(common::target_margin), fields::Example::TargetMargin, move |book, target| {
                        changed(book, id, |it| it.target = target)
                    })
                />
            </div>
            {labor_by_size(state, id, hangs)}
        </Fold>
    }
    .into_any()
}

/// The tax rate of this drink alone; what holds while the field is empty stands under it.
fn own_tax_rate(state: AppState, id: DrinkId, hangs: Hangs, law: Law) -> AnyView {
    let label = words::sales_tax_rate(law);
    let value = text(move || {
        let rate = state.book.with(|book| book.drink(id)?.tax_rate);
        rate.map(|rate| state.plain_percent(rate)).unwrap_or_default()
    });
    let note = text(move || {
        let blank = |book: &Book| {
            let drink = Drink { tax_rate: None, ..book.drink(id)?.clone() };
            let rate = words::tax_rate(book.settings().tax_of(&drink).rate, &state.speaker.get());
            let of_kind = book.settings().tax_by_kind.iter().any(|it| it.kind == drink.kind);
            Some(if of_kind {
                say!(drinks::tax_rate_of_kind, rate = rate, kind = words::drink_kind(drink.kind))
            } else {
                say!(drinks::blank_uses, share = rate)
            })
        };
        state.book.with(blank).unwrap_or_default()
    });
    let commit = fields::optional_percent(label, fields::Example::SalesTax, move |book, rate| {
        changed(book, id, |it| it.tax_rate = rate)
    });
    let asks = asks(Kind::Tax, Key::Drink(id), "tax");
    view! { <Entry hangs label asks unit="%" note value commit /> }.into_any()
}
