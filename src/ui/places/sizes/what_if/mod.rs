//! What if: what is tried of prices, fills, suppliers, costs, fees and shares.

mod costs;
mod goods;
mod mix;
mod size;
mod uses;

use leptos::prelude::*;

use super::trying::Trying;
use crate::foundation::measure::{Exact, Share};
use crate::say;
use crate::ui::live::live;

use costs::Costs;
use goods::GoodsTried;
use mix::Mix;
use size::Size;
use uses::UseIt;
pub use uses::{left_out, said};

fn share(percent: Exact) -> Share {
    percent.over(Exact::new(100, 0)).map(Share::from_fraction).unwrap_or_default()
}

fn percent(share: Share) -> Exact {
    share.percent().unwrap_or_default()
}

/// What can be tried, and what comes of it in the book.
#[component]
pub fn WhatIf(
    /// What is compared.
    trying: Trying,
) -> impl IntoView {
    view! {
        <h2 class="unseen">{say!(sales::what_if)}</h2>
        {live(move || {
                trying.begun.track();
                view! {
                    <Size trying />
                    <GoodsTried trying />
                    <div class="folds">
                        <Costs trying />
                        <Mix trying />
                    </div>
                }
                    .into_any()
            })}
        <UseIt trying />
    }
}
