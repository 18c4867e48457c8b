//! The price of a size, how many are sold, and the price that is suggested.

use leptos::prelude::*;

use crate::book::{Edit, Key, OfferId};
use crate::drink::ledger::OfferStatus;
use crate::drink::price::Suggestion;
use crate::foundation::jump::Kind;
use crate::foundation::measure::Money;
use crate::say;
use crate::ui::fields::{self, Entry, Hangs, asks};
use crate::ui::how::opens;
use crate::ui::live::{flag, press, text, trouble, when};
use crate::ui::parts::Fold;
use crate::ui::places::drinks::weekly::Weekly;
use crate::ui::state::AppState;
use crate::words;
use crate::words::texts::{HOLE, around};
use crate::working::{OfOffer, Shown};

/// The price, on a fold that stands open.
#[component]
pub fn Price(id: OfferId, hangs: Hangs) -> impl IntoView {
    let state = AppState::here();
    let asked = move || state.book.with(|book| book.offer(id)?.price);
    let price = text(move || asked().map(|price| state.plain_money(price)).unwrap_or_default());
    let shown = text(move || asked().map_or_else(|| say!(common::none_yet).into(), |price| state.money(price)));
    let deposit =
        move || state.book.with(|book| book.container(id.container).map(|it| it.deposit)).unwrap_or(Money::ZERO);
    let beside = text(move || say!(drinks::deposit_beside, deposit = state.money(deposit())));
    view! {
        <Fold name=say!(common::price) figure=shown open=flag(|| true)>
            <div class="price">
                <Entry
                    label=say!(drinks::menu_price)
                    asks=asks(Kind::Price, Key::Offer(id), "price")
                    large=true
                    hangs
                    example=say!(common::none_yet)
                    value=price
                    commit=fields::optional_money(say!(drinks::menu_price), fields::Example::MenuPrice, move |_, price| {
                        Some(Edit::SetPrice { offer: id, price })
                    })
                />
                <Weekly id hangs />
            </div>
            {when(move || deposit().is_positive(), move || view! { <p class="soft">{beside}</p> }.into_any())}
            {hangs.while_read(move || suggestion(state, id))}
        </Fold>
    }
}

/// The price suggested for the target, the lowest on it where the price asked reaches it; and, where none is asked,
/// the press that asks it. Under the target that press stands among the ways to it.
fn suggestion(state: AppState, id: OfferId) -> AnyView {
    let no_price = move || state.priced(id, |it| it.suggestion.err()).map(|error| words::price_error(&error));
    let suggested = move || state.priced(id, |it| it.suggestion.ok());
    let ask_suggested = move || {
        if let Some(suggestion) = suggested() {
            // A suggested price is above zero, so it is not refused.
            let step = say!(drinks::set_price, price = state.money(suggestion.menu));
            let _ = state.apply(&step, Edit::SetPrice { offer: id, price: Some(suggestion.menu) });
        }
    };
    let status = state.status(id);
    let offered = move || {
        let asked = state.priced(id, |it| it.asked.map(|asked| asked.menu));
        status.get() == OfferStatus::WithoutPrice && suggested().is_some_and(|it| asked != Some(it.menu))
    };
    let menu = text(move || suggested().map(|suggestion| state.money(suggestion.menu)).unwrap_or_default());
    let set = text(move || say!(drinks::set_price, price = menu.get()));
    let said = move || {
        let said = |suggestion: Suggestion| {
            let (exact, margin) = (state.fine_money(suggestion.exact), state.percent(suggestion.margin));
            if status.get() == OfferStatus::OnTarget {
                say!(drinks::lowest_on_target, price = HOLE, margin = margin, exact = exact)
            } else {
                say!(drinks::suggested, price = HOLE, margin = margin, exact = exact)
            }
        };
        around(&suggested().map(said).unwrap_or_default())
    };
    let (before, after) = (text(move || said().0), text(move || said().1));
    view! {
        {trouble(no_price)}
        {when(
            move || suggested().is_some(),
            move || {
                let menu = opens(Shown::Offer(id, OfOffer::Suggested), menu);
                view! { <p class="suggested soft">{before} <strong>{menu}</strong> {after}</p> }.into_any()
            },
        )}
        {when(
            offered,
            move || {
                view! {
                    <p>
                        <button class="button" on:click=press(ask_suggested)>
                            {set}
                        </button>
                    </p>
                }
                .into_any()
            },
        )}
    }
    .into_any()
}
