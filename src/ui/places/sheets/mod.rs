//! Sheets to print.
//!
//! A sheet is a [`Frame`](frame::Frame): what is chosen about it, the button that prints, and the
//! papers as they come out. Only the papers are printed. A [`Leaf`](frame::Leaf) is a paper, or
//! several in a row where its content is longer; its head and foot stand on each of them, and the
//! browser breaks it where it may: before and between what is marked so.
//!
//! What a sheet's content says of itself:
//!
//! | class | meaning |
//! |---|---|
//! | `paper-table` | a table over the whole width; its `thead` stands again on each paper, its rows are [`bodies`](frame::bodies) |
//! | `paper-whole` | is not torn: a card, a row of a table, a `tbody` that belongs together |
//! | `paper-figure` | a cell with a figure, to the right |
//! | `soft` | said besides, smaller |
//!
//! Sizes within are in `em`: on the screen the whole paper is drawn larger or smaller with its
//! letters.

mod batch;
mod buying_list;
mod cards;
mod decision;
mod frame;
mod prices;
mod report;
mod warning;

pub use batch::needed;
pub use buying_list::{prices_choice, with_prices};

use leptos::prelude::*;

use crate::app::route::{Place, Route, Sheet};
use crate::drink::label::Law;
use crate::say;
use crate::ui::kept;
use crate::ui::parts::Back;
use crate::ui::state::AppState;
use crate::words;
use frame::{Frame, Leaf};

/// A sheet to print.
pub fn sheet(sheet: Sheet) -> AnyView {
    match sheet {
        Sheet::Prices => prices::Prices().into_any(),
        Sheet::Cards => cards::Cards().into_any(),
        Sheet::Batch(day) => view! {
            <Frame heading=say!(counter::batch_sheet) back=Route::Batch(day) name=say!(counter::batch)>
                <Leaf title=words::batch(day)>
                    <batch::BatchSheet day />
                </Leaf>
            </Frame>
        }
        .into_any(),
        Sheet::Warning => warnings(),
        Sheet::Report => report::Report().into_any(),
        Sheet::Decision(decision) => view! { <decision::DecisionSheet decision /> }.into_any(),
        Sheet::BuyingList => {
            let prices = buying_list::with_prices();
            view! {
                <Frame
                    heading=say!(counter::buying_list)
                    back=Route::BuyingList
                    name=say!(counter::buying_list)
                    choices=buying_list::prices_choice(prices)
                >
                    <Leaf title=say!(counter::buying_list)>
                        <buying_list::BuyingListSheet prices />
                    </Leaf>
                </Frame>
            }
            .into_any()
        }
    }
}

/// The warnings to cut out. Under a law that asks for none there is nothing to print.
fn warnings() -> AnyView {
    let law = AppState::here().book.with_untracked(|book| Law::of(book.settings()));
    let said = words::warning_sheet(law);
    // Back to the size whose label asked for them.
    let (back, name) = match kept::from().map(|address| Route::from_address(&address)) {
        Some(size @ (Route::Packaged(_) | Route::Offer(_))) => (size, say!(labels::this_size)),
        _ => (Route::Drinks, Place::Drinks.name()),
    };
    match law {
        Law::UnitedStates => view! {
            <Frame heading=say!(counter::warning_labels) back name>
                <Leaf title=say!(counter::warning_labels) foot=vec![said.to_string()]>
                    <warning::Warnings />
                </Leaf>
            </Frame>
        }
        .into_any(),
        Law::European => view! {
            <Back to=back name />
            <h1>{say!(counter::warning_labels)}</h1>
            <p class="hollow">{said}</p>
        }
        .into_any(),
    }
}
