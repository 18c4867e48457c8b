//! Shares of the buyers that take a size.

use leptos::prelude::*;

use super::{Trying, percent, share};
use crate::book::{ContainerId, Key};
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{Entry, Hangs, Take, tried_number};
use crate::ui::live::{rows, text};
use crate::ui::parts::Fold;
use crate::ui::state::AppState;
use crate::words::Example;

/// The fold of shares.
#[component]
pub fn Mix(trying: Trying) -> impl IntoView {
    let hangs = trying.hangs.within();
    let figure = text(move || match trying.shares_tried() {
        _ if hangs.is_unread() => hangs.waits_for(),
        0 => say!(sales::as_in_book).to_string(),
        count => say!(sales::count_changed, count = count),
    });
    let keys = Memo::new(move |_| trying.chosen.get().into_iter().map(Key::Container).collect::<Vec<Key>>());
    let field = move |key| match key {
        Key::Container(id) => of(trying, hangs, id),
        _ => ().into_any(),
    };
    view! {
        <Fold name=say!(sales::shares_of_sizes) figure late=trying.is_all_read()>
            <div class="pair">{rows(keys, field)}</div>
            <p class="soft">{say!(sales::blank_takes_rest)}</p>
        </Fold>
    }
}

fn of(trying: Trying, hangs: Hangs, id: ContainerId) -> AnyView {
    let state = AppState::here();
    let name = state.book.with_untracked(|book| book.name(Key::Container(id)));
    let take: Take<Exact> =
        Box::new(move |read, visit| trying.take(read, Some(visit), |number| trying.set_share(id, number.map(share))));
    let value = text(move || trying.share(id).map(|share| state.number(percent(share))).unwrap_or_default());
    let today = text(move || {
        let share = trying.share_today(id).map(|share| state.percent(share));
        share.map(|share| say!(sales::named_figure, name = say!(common::today), figure = share)).unwrap_or_default()
    });
    view! {
        <Entry
            label=say!(sales::share_of_buyers, size = &name)
            unit="%"
            hangs
            value
            note=today
            commit=tried_number(Example::TargetMargin, take)
        />
    }
    .into_any()
}
