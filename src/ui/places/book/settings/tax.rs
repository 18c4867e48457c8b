//! Tax: its rate, others by kind of drink, and whether deposits are taxed.

use leptos::prelude::*;

use super::{changed, choice, part, percent};
use crate::book::{DrinkKind, Key, KindRate, Settings, TaxPlace};
use crate::drink::label::Law;
use crate::foundation::in_order;
use crate::foundation::jump::Kind;
use crate::foundation::measure::Share;
use crate::say;
use crate::ui::fields::{self, Entry, Example, Tick, asks};
use crate::ui::live::{flag, text, when};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words;

/// The rate for all drinks and where it is added, then what differs from it.
pub(super) fn tax(state: AppState, law: Law) -> AnyView {
    let places = [TaxPlace::AddedAtTheTill, TaxPlace::InThePrice];
    let places = places.map(|place| (words::tax_place(place).to_string(), place)).to_vec();
    let rate = percent(
        state,
        words::sales_tax_rate(law),
        Example::SalesTax,
        |it| it.tax.rate,
        |it, share| it.tax.rate = share,
    );
    let kinds = DrinkKind::ALL.iter().map(|kind| of_kind(state, *kind)).collect_view();
    let inside = view! {
            {when(
                move || state.book.with(|book| book.settings().invented),
                || view! { <p class="about">{say!(book::tax_of_sample)}</p> }.into_any(),
            )}
            <div class="fields">
                <Entry
                    label=words::sales_tax_rate(law)
                    asks=asks(Kind::Tax, Key::Settings, "tax")
                    unit="%"
                    value=rate.value
                    commit=rate.commit
                />
                {choice(
                    state,
                    words::sales_tax(law),
                    places,
                    |it, _| words::tax_place(it.tax.place).to_string(),
                    |it, place| it.tax.place = place,
                )}
            </div>
            {on_deposits(state)}
            <Fold name=say!(book::tax_by_kind) figure=text(move || own_rates(state))>
                <div class="fields">{kinds}</div>
            </Fold>
    };
    let figure = move || said_rate(state, state.book.with(|book| book.settings().tax.rate));
    part(words::sales_tax(law), say!(book::tax_about), figure, inside.into_any())
}

/// The rates of kinds that have one: "Pressed 0%, Shot 4%".
fn own_rates(state: AppState) -> String {
    let said = |of_kind: &KindRate| [words::drink_kind(of_kind.kind), &said_rate(state, of_kind.rate)].join(" ");
    let all: Vec<String> = state.book.with(|book| book.settings().tax_by_kind.iter().map(said).collect());
    if all.is_empty() { say!(common::none).to_string() } else { all.join(", ") }
}

/// The rate of one kind; the book's while the field is empty.
fn of_kind(state: AppState, kind: DrinkKind) -> AnyView {
    let value = text(move || {
        let rate = state.book.with(|book| rate_of(book.settings(), kind));
        rate.map(|rate| state.plain_percent(rate)).unwrap_or_default()
    });
    let note = text(move || {
        say!(book::blank_uses_rate, rate = said_rate(state, state.book.with(|book| book.settings().tax.rate)))
    });
    let name = words::drink_kind(kind);
    let commit =
        fields::optional_percent(say!(book::tax_of_kind, kind = name), Example::SalesTax, move |book, rate| {
            changed(book, |settings| put_rate(settings, kind, rate))
        });
    let asks = asks(Kind::Tax, Key::Settings, format!("tax/{}", kind.stored_name()));
    view! { <Entry label=name asks unit="%" note value commit /> }.into_any()
}

fn said_rate(state: AppState, rate: Share) -> String {
    words::tax_rate(rate, &state.speaker.get())
}

fn rate_of(settings: &Settings, kind: DrinkKind) -> Option<Share> {
    settings.tax_by_kind.iter().find(|it| it.kind == kind).map(|it| it.rate)
}

/// Gives a kind this rate alone, among the others in their order.
fn put_rate(settings: &mut Settings, kind: DrinkKind, rate: Option<Share>) {
    settings.tax_by_kind.retain(|it| it.kind != kind);
    if let Some(rate) = rate {
        in_order::insert(&mut settings.tax_by_kind, KindRate { kind, rate }, |other, new| other.kind < new.kind);
    }
}

fn on_deposits(state: AppState) -> AnyView {
    let is_taxed = flag(move || state.book.with(|book| book.settings().deposit_taxed));
    let set = move |taxed| {
        let edit = state.book.with_untracked(|book| changed(book, |it| it.deposit_taxed = taxed));
        // A tick is valid either way.
        let _ = edit.map(|edit| state.apply(say!(book::deposit_taxed), edit));
    };
    view! {
        <Tick done=is_taxed set>
            {say!(book::deposit_taxed)}
        </Tick>
        <p class="about">{say!(book::deposit_taxed_about)}</p>
    }
    .into_any()
}
