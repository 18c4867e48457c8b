//! What the new size brings when fewer or more are sold of it.

use std::sync::Arc;

use leptos::prelude::*;

use super::asking::Asking;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::sizes::switching::{Sales, Together};
use crate::ui::chart::{Axis, Look, Series, chart};
use crate::ui::fields::{Hangs, Slider, Try};
use crate::ui::live::live;
use crate::ui::parts::{Section, wide_table};
use crate::ui::state::AppState;
use crate::words;

/// The curve runs from half to one and a half times the sales.
const RANGE: (i32, i32) = (50, 150);

/// What is expected to be sold of the new size.
#[component]
pub fn Kept(asking: Asking) -> impl IntoView {
    let state = AppState::here();
    let put: Try = Arc::new(move |read: Result<Option<Exact>, String>, _| {
        let percent = read?.unwrap_or(Exact::new(100, 0));
        if percent.is_negative() {
            return Err(say!(decide::stay_below_zero).to_string());
        }
        let kept = percent.over(Exact::new(100, 0)).map_err(words::overflow)?;
        asking.kept.set(Share::from_fraction(kept));
        Ok(())
    });
    let value = Signal::derive(move || asking.kept.get().percent().unwrap_or_default());
    let hangs = Hangs::new();
    let curve = move || match asking.together() {
        Some((together, sales)) => shown(state, &together, sales, asking.kept.get()),
        None => view! { <p class="hollow">{say!(decide::no_drink_in_both)}</p> }.into_any(),
    };
    view! {
        <Section heading=say!(decide::if_sales_change) about=say!(decide::if_sales_change_about)>
            <Slider label=say!(decide::customers_who_stay) ends=RANGE value=value put=put note=say!(decide::customers_who_stay_whole) hangs />
            {asking.hangs.answer(move || hangs.answer(move || live(curve)))}
        </Section>
    }
}

fn shown(state: AppState, together: &Together, sales: Sales, kept: Share) -> AnyView {
    let Ok(curve) = together.curve() else {
        return view! { <p class="trouble">{words::overflow(crate::foundation::measure::Overflow::TooLarge)}</p> }
            .into_any();
    };
    let percent = |share: Share| share.percent().unwrap_or_default();
    let today = together.now.contribution;
    let across = Axis {
        name: say!(decide::customers_who_stay).to_string(),
        from_zero: false,
        mark: Box::new(move |number| state.percentage(number)),
    };
    let up = Axis {
        name: words::switching::basis(sales).to_string(),
        from_zero: true,
        mark: Box::new(move |number| state.money_mark(number)),
    };
    let line = |name: &str, look, read: &dyn Fn(Money) -> Money| Series {
        name: name.to_string(),
        look,
        points: curve.iter().map(|(share, money)| (percent(*share), read(*money).major())).collect(),
    };
    let series =
        [line(say!(decide::new_size), Look::First, &|money| money), line(say!(common::today), Look::Guide, &|_| today)];
    let row = |(share, left): &(Share, Money)| {
        let sold = together.units.times(share.fraction()).map(|units| state.number(units)).unwrap_or_default();
        let gain = left.minus(today).map(|gain| state.money(gain)).unwrap_or_default();
        view! {
            <tr>
                <th scope="row">{say!(decide::share_stays, share = state.speaker.get().short_percent(*share, 1))}</th>
                <td>{sold}</td>
                <td>{state.money(*left)}</td>
                <td>{gain}</td>
            </tr>
        }
    };
    // The drawing goes further than the table.
    let (least, most) = (Exact::new(7, 1), Exact::new(13, 1));
    let near = curve.iter().filter(|(share, _)| share.fraction() >= least && share.fraction() <= most);
    let speaker = &state.speaker.get();
    let expected = words::switching::with_kept(together, kept, sales, speaker);
    let crossing = words::switching::crossing(together, speaker);
    let heads = [say!(decide::sold), say!(decide::profit), say!(decide::versus_today)];
    let rows = near.map(row).collect_view().into_any();
    view! {
        <p>{expected}</p>
        <p class="about">{crossing}</p>
        {chart(&across, &up, &series)}
        {wide_table(say!(decide::profit_by_customers), "table whole-numbers", &heads, rows)}
    }
    .into_any()
}
