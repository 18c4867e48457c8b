//! What the new size brings when fewer or more are sold of it.

use std::sync::Arc;

use leptos::prelude::*;

use super::asking::Asking;
use crate::foundation::measure::{Exact, Money, Share};
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
            return Err("The sales kept cannot be below zero. Type 90 for 90 %.".to_string());
        }
        let kept = percent.over(Exact::new(100, 0)).map_err(words::overflow)?;
        asking.kept.set(Share::from_fraction(kept));
        Ok(())
    });
    let value = Signal::derive(move || asking.kept.get().percent().unwrap_or_default());
    let hangs = Hangs::new();
    let curve = move || match asking.together() {
        Some((together, sales)) => shown(state, &together, sales, asking.kept.get()),
        None => view! { <p class="hollow">"No drink can be worked out in both sizes yet."</p> }.into_any(),
    };
    view! {
        <Section heading="If fewer or more are sold" about="The sales that you expect to keep in the new size, in percent of today's.">
            <Slider label="Sales kept" ends=RANGE value=value put=put note="100 % is as many as today." hangs />
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
        name: "Sales kept".to_string(),
        from_zero: false,
        mark: Box::new(move |number| format!("{}\u{a0}%", state.number(number))),
    };
    let up = Axis {
        name: format!("Left of {}", words::switching::basis(sales)),
        from_zero: true,
        mark: Box::new(move |number| state.money_mark(number)),
    };
    let line = |name: &str, look, read: &dyn Fn(Money) -> Money| Series {
        name: name.to_string(),
        look,
        points: curve.iter().map(|(share, money)| (percent(*share), read(*money).major())).collect(),
    };
    let series = [line("In the new size", Look::First, &|money| money), line("Today", Look::Guide, &|_| today)];
    let row = |(share, left): &(Share, Money)| {
        let sold = together.units.times(share.fraction()).map(|units| state.number(units)).unwrap_or_default();
        let gain = left.minus(today).map(|gain| state.money(gain)).unwrap_or_default();
        view! {
            <tr>
                <th scope="row">{state.plain_percent(*share)} "\u{a0}% kept"</th>
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
    let crossing = words::switching::crossing(together, sales, speaker);
    let rows = near.map(row).collect_view().into_any();
    view! {
        <p>{expected}</p>
        <p class="about">{crossing}</p>
        {chart(&across, &up, &series)}
        {wide_table("By sales kept", "table whole-numbers", &["Sold", "Left", "More than today"], rows)}
    }
    .into_any()
}
