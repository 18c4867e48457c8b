//! Bars: of parts one after the other, and of one length.

use std::fmt::Write;

use leptos::prelude::*;

use super::drawing::{WHOLE, percent};
use crate::foundation::measure::Exact;

/// A bar made of parts, one after the other.
pub struct Pile {
    /// What it is of.
    pub name: String,
    /// Its whole length, as it is written.
    pub figure: String,
    /// Its parts, none below zero.
    pub parts: Vec<Exact>,
}

/// The least share of a drawing's length that has room for a number, in hundredths of a percent.
const NUMBERED: u32 = 600;

/// Draws bars of parts, with a key: each part has a number beside its colour. Parts that no bar
/// has are left out.
pub fn piles(piles: &[Pile], names: &[&str]) -> AnyView {
    let whole = |pile: &Pile| pile.parts.iter().try_fold(Exact::ZERO, |sum, part| sum.plus(*part)).unwrap_or_default();
    let longest = piles.iter().map(whole).max().unwrap_or_default();
    let there = |place: usize| piles.iter().any(|pile| pile.parts.get(place).is_some_and(|part| part.is_positive()));
    let shown: Vec<usize> = (0..names.len()).filter(|place| there(*place)).collect();
    let bar = |pile: &Pile| {
        let mut drawing = "<svg>".to_string();
        let mut from = Exact::ZERO;
        let at = |sum: Exact| sum.over(longest).ok().and_then(|share| share.in_parts(WHOLE)).unwrap_or(0);
        for (number, place) in (1..).zip(&shown) {
            let to = from.plus(pile.parts.get(*place).copied().unwrap_or_default()).unwrap_or(from);
            let (left, right) = (at(from), at(to));
            from = to;
            let (x, width) = (percent(left), percent(right - left));
            let _ = write!(drawing, "<rect class=\"part part-{place}\" x=\"{x}\" width=\"{width}\" height=\"100%\"/>");
            if right - left >= NUMBERED {
                let middle = percent((left + right) / 2);
                let _ = write!(drawing, "<circle cx=\"{middle}\" cy=\"50%\" r=\"0.625em\"/>");
                let _ = write!(drawing, "<text x=\"{middle}\" y=\"50%\" dy=\".35em\">{number}</text>");
            }
        }
        drawing.push_str("</svg>");
        view! {
            <li>
                <span>{pile.name.clone()}</span>
                <strong>{pile.figure.clone()}</strong>
                <div class="pile" aria-hidden="true" inner_html=drawing></div>
            </li>
        }
    };
    let key = |(number, place): (usize, &usize)| {
        let name = names.get(*place).copied().unwrap_or_default();
        view! {
            <li>
                <span class=format!("swatch part-{place}") aria-hidden="true"></span>
                {format!("{number} {name}")}
            </li>
        }
    };
    view! {
        <figure class="chart">
            <ul class="piles">{piles.iter().map(bar).collect_view()}</ul>
            <ul class="chart-key">{(1..).zip(&shown).map(key).collect_view()}</ul>
        </figure>
    }
    .into_any()
}

/// A bar of one length.
pub struct Bar {
    /// What it is of.
    pub name: String,
    /// Its length, as it is written.
    pub figure: String,
    /// Its length, not below zero.
    pub length: Exact,
}

/// Draws bars, each under its name and figure; the longest is as wide as there is room.
pub fn bars(bars: &[Bar]) -> AnyView {
    let longest = bars.iter().map(|bar| bar.length).max().unwrap_or_default();
    let bar = |bar: &Bar| {
        let width = bar.length.over(longest).ok().and_then(|share| share.in_parts(WHOLE)).unwrap_or(0);
        let width = percent(width);
        let drawing = format!("<svg><rect class=\"part part-0\" width=\"{width}\" height=\"100%\"/></svg>");
        view! {
            <li>
                <span>{bar.name.clone()}</span>
                <strong>{bar.figure.clone()}</strong>
                <div class="pile pile-thin" aria-hidden="true" inner_html=drawing></div>
            </li>
        }
    };
    view! { <ul class="piles">{bars.iter().map(bar).collect_view()}</ul> }.into_any()
}
