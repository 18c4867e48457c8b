//! The deposit for a container, which customers pay beside the price.

use leptos::prelude::*;

use super::change::changed;
use crate::book::{ContainerId, Key};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Entry, Example, asks};
use crate::ui::live::text;
use crate::ui::parts::Fold;
use crate::ui::state::AppState;

/// The deposit, on a fold that names it.
#[component]
pub fn Deposit(
    /// The container.
    id: ContainerId,
    /// Whether it stands open at first.
    open: bool,
) -> impl IntoView {
    let state = AppState::here();
    let deposit = move || state.book.with(|book| book.container(id).map(|it| it.deposit)).unwrap_or(Money::ZERO);
    let figure = text(move || match deposit() {
        none if none.is_zero() => say!(common::none).to_string(),
        deposit => state.money(deposit),
    });
    let commit = fields::optional_money(say!(goods::deposit), Example::Deposit, move |book, deposit| {
        changed(book, id, |it| it.deposit = deposit.unwrap_or(Money::ZERO))
    });
    view! {
        <Fold name=say!(goods::deposit) figure open>
            <div class="fields">
                <Entry
                    label=say!(goods::deposit)
                    asks=asks(Kind::Price, Key::Container(id), "deposit")
                    note=say!(goods::deposit_about)
                    example=say!(common::none)
                    value=text(move || state.money_if_any(deposit()))
                    commit
                />
            </div>
        </Fold>
    }
}
