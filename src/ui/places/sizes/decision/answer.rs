//! The answer: what must be true, profit now and then, and a slider over the buyers.

use std::sync::Arc;

use leptos::prelude::*;

use super::asking::Asking;
use crate::foundation::measure::{Exact, Share};
use crate::say;
use crate::sizes::decision::Decision;
use crate::ui::fields::{Range, Slid};
use crate::ui::live::{live, text};
use crate::ui::parts::{Says, verdict};
use crate::words::{even_at, even_whole, of_100, overflow};

/// The answer.
#[component]
pub fn Answer(asking: Asking) -> impl IntoView {
    let state = asking.state;
    let said = move || {
        asking.decided().map_or((Says::Open, String::new()), |decision| {
            let says = if asking.pays(&decision) { Says::Yes } else { Says::No };
            (says, asking.said(|words| words.verdict_by(&decision, asking.guess.get().as_ref())))
        })
    };
    let lines = move || {
        let Some(decision) = asking.decided() else { return ().into_any() };
        let guess = asking.guess.get();
        let said = asking.said(|words| words.under_verdict(&decision, guess.as_ref()));
        said.into_iter().map(|line| view! { <p>{line}</p> }).collect_view().into_any()
    };
    // The line is all that the slider needs: nothing is priced anew.
    let line = Memo::new(move |_| asking.decided().map(|decision| (decision.line, decision.now)));
    let figures = Memo::new(move |_| {
        let (line, now) = line.get()?;
        Some(match line.at(asking.share()) {
            Ok(then) => asking.said(|words| words.now_and_then(now, then)),
            Err(error) => [overflow(error), String::new(), String::new()],
        })
    });
    let figure = move |place: usize| {
        text(move || figures.with(|all| all.as_ref().and_then(|all| all.get(place)).cloned().unwrap_or_default()))
    };
    let (now, then, difference) = (figure(0), figure(1), figure(2));
    let gain = move || line.get().map(|(line, now)| line.at(asking.share())?.minus(now));
    let better = move || gain().and_then(Result::ok).is_some_and(|gain| !gain.is_negative());
    let at = move || of_100(asking.share(), &state.speaker.get());
    let with = text(move || match (asking.adds(), asking.switches()) {
        (true, _) => say!(decide::profit_taken, buyers = at()),
        (_, true) => say!(decide::profit_per_100, buyers = at()),
        _ => say!(decide::profit_with, buyers = at()),
    });
    view! {
        <section class="section">
            {asking.hangs.answer(move || view! {
                {verdict(said)}
                {live(lines)}
                <dl class="answer-figures" aria-live="polite">
                    <div>
                        <dt>{say!(decide::profit_week_now)}</dt>
                        <dd>{now}</dd>
                    </div>
                    <div>
                        <dt>{with}</dt>
                        <dd>{then}</dd>
                    </div>
                    <div>
                        <dt>{say!(sales::difference)}</dt>
                        <dd class:better=better class:worse=move || !better()>{difference}</dd>
                    </div>
                </dl>
                <Buyers asking />
            }.into_any())}
            <p class="soft">{say!(decide::overhead_left_out)}</p>
        </section>
    }
}

/// The slider over the buyers, with the break-even marked on it.
#[component]
fn Buyers(asking: Asking) -> impl IntoView {
    let state = asking.state;
    let label = slider_label(asking);
    let value = Signal::derive(move || asking.share().percent().unwrap_or_default());
    let slid: Slid = Arc::new(move |number: Exact| {
        if let Ok(share) = number.over(Exact::new(100, 0)) {
            asking.slid.set(Some(Share::from_fraction(share)));
        }
    });
    let said = text(move || {
        let buyers = of_100(asking.share(), &state.speaker.get());
        if asking.adds() {
            say!(decide::of_100_expected, buyers = buyers)
        } else {
            say!(decide::of_100_today, buyers = buyers)
        }
    });
    let ends = Memo::new(move |_| asking.ends());
    let bar = live(move || {
        let slid = slid.clone();
        view! { <Range label=label.to_string() ends=ends.get() step=Exact::ONE value slid /> }.into_any()
    });
    let mark = live(move || {
        let marked = || {
            let decision = asking.decided()?;
            marked(asking, &decision, decision.break_even().ok()??, ends.get())
        };
        marked().unwrap_or_else(|| ().into_any())
    });
    view! {
        <div class="buyers">
            <p>{said}</p>
            <div class="buyers-bar">
                {mark}
                {bar}
            </div>
        </div>
    }
}

/// The break-even on the slider, where it lies between the ends.
fn marked(asking: Asking, decision: &Decision, at: Share, (least, most): (Exact, Exact)) -> Option<AnyView> {
    let percent = even_whole(at, &decision.question);
    if percent < least || percent > most {
        return None;
    }
    let place = percent.minus(least).ok()?.over(most.minus(least).ok()?).ok()?.rounded(4);
    let label = even_at(at, &decision.question, &asking.state.speaker.get());
    let class = match place {
        start if start < Exact::new(25, 2) => "break-even break-even-start",
        end if end > Exact::new(75, 2) => "break-even break-even-end",
        _ => "break-even",
    };
    Some(view! { <span class=class style=("--at", place.to_string())>{label}</span> }.into_any())
}

/// What the slider is over.
pub fn slider_label(asking: Asking) -> &'static str {
    match (asking.adds(), asking.switches()) {
        (true, _) => say!(decide::buyers_taken),
        (_, true) => say!(decide::buyers_per_100),
        _ => say!(decide::buyers_who_stay),
    }
}
