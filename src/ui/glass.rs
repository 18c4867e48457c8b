//! A container drawn to scale, filled in layers, with its fill line.

use leptos::prelude::*;

use super::state::AppState;
use crate::book::{Container, IcePlace};
use crate::drink::fill::{Fill, Scaled, height_of, inside};
use crate::foundation::measure::{Exact, Length, Volume};
use crate::foundation::shape::outline;
use crate::say;

/// The drawing's units from base to rim, and around it.
const DEEP: u32 = 900;
const EDGE: u32 = 50;
/// The width of a container of which no measures are known.
const WIDTH: u32 = 480;
/// Bands in which the outline of a known shape is drawn.
const BANDS: u32 = 40;

/// What fills a stretch of the glass.
#[derive(Clone, Copy, PartialEq, Eq)]
pub enum Layer {
    /// The ingredient at this place of the recipe.
    Line(usize),
    /// Air beaten in.
    Air,
    /// Ice.
    Ice,
}

/// As many layers of ingredients are told apart by their colours, `layer-0` and on in `style/palette.css`.
const COLOURS: usize = 8;

impl Layer {
    /// The class of its colour.
    pub fn class(self) -> String {
        match self {
            Layer::Line(place) => format!("layer layer-{}", place % COLOURS),
            Layer::Air => "layer layer-air".into(),
            Layer::Ice => "layer layer-ice".into(),
        }
    }
}

/// The layer that each line of a recipe is, in the order of adding.
pub fn layer_of(scaled: &Scaled, place: usize) -> Layer {
    let ice = scaled.lines.get(place).and_then(|line| line.ice);
    if ice.is_some_and(|ice| ice.place != IcePlace::BlendedIn) { Layer::Ice } else { Layer::Line(place) }
}

/// What is in the glass from the base up: what is mixed, its air, ice.
pub fn layers(scaled: &Scaled) -> Vec<(Layer, Volume)> {
    let all = scaled.lines.iter().enumerate().map(|(place, line)| (layer_of(scaled, place), line.volume));
    let (ice, mixed): (Vec<_>, Vec<_>) = all.partition(|(layer, _)| *layer == Layer::Ice);
    mixed.into_iter().chain([(Layer::Air, scaled.air)]).chain(ice).collect()
}

/// One layer of what is poured.
pub fn poured(fill: &Fill) -> Vec<(Layer, Volume)> {
    vec![(Layer::Line(0), fill.volume)]
}

/// A container drawn to scale by its measures, straight where none are known.
pub fn glass(container: &Container, fill: &Fill, layers: Vec<(Layer, Volume)>) -> AnyView {
    let shape = inside(container).ok().flatten();
    let height = container.brimful.height().ok().flatten();
    let widths: Vec<u32> = match (&shape, height) {
        (Some(shape), Some(height)) => {
            let widths = outline(shape.as_ref(), BANDS).unwrap_or_default();
            widths.into_iter().map(|width| parts(width.ratio_to(height).unwrap_or_default())).collect()
        }
        _ => vec![WIDTH],
    };
    let widest = widths.iter().copied().max().unwrap_or(WIDTH);
    let middle = widest / 2 + EDGE;
    let level = |volume: Volume| {
        let share = match height_of(container, volume.min(fill.brimful)) {
            Ok(Some(stands)) => stands.ratio_to(height.unwrap_or(Length::ZERO)),
            _ => volume.ratio_to(fill.brimful),
        };
        EDGE + DEEP - parts(share.unwrap_or_default()).min(DEEP)
    };
    let mut below = Volume::ZERO;
    let mut bands = Vec::new();
    for (layer, volume) in layers {
        let bottom = level(below);
        below = below.plus(volume).unwrap_or(below);
        let top = level(below);
        if bottom > top {
            bands.push(view! {
                <rect
                    class=layer.class()
                    x="0"
                    y=top.to_string()
                    width=(2 * middle).to_string()
                    height=(bottom - top).to_string()
                />
            });
        }
    }
    let wall = wall(&widths, middle);
    let line = level(fill.volume);
    let id = format!("glass-{}", AppState::here().new_session());
    view! {
        <svg
            class="glass"
            viewBox=format!("0 0 {} {}", 2 * middle, DEEP + 2 * EDGE)
            role="img"
            aria-label=say!(drinks::glass)
        >
            <clipPath id=id.clone()>
                <path d=format!("{wall}Z") />
            </clipPath>
            <g clip-path=format!("url(#{id})")>{bands}</g>
            <path class="glass-wall" d=wall />
            <path class="glass-line" d=format!("M8 {line}H{}", 2 * middle - 8) />
        </svg>
    }
    .into_any()
}

/// A share of the height in the drawing's units.
fn parts(share: Exact) -> u32 {
    share.in_parts(DEEP).unwrap_or(0)
}

/// The wall from the rim on the left down, along the base and up again.
fn wall(widths: &[u32], middle: u32) -> String {
    let count = widths.len() as u32;
    let mut left = Vec::new();
    for (band, width) in (0..).zip(widths) {
        // Each width is that of the middle of its band; the outermost go on to base and rim.
        let place = if count == 1 { 0 } else { band * DEEP / (count - 1) };
        left.push((width / 2, EDGE + DEEP - place));
    }
    if count == 1 {
        left.push((WIDTH / 2, EDGE));
    }
    let down = left.iter().rev().map(|(half, y)| format!("{} {y}", middle - half));
    let up = left.iter().map(|(half, y)| format!("{} {y}", middle + half));
    let points: Vec<String> = down.chain(up).collect();
    format!("M{}", points.join("L"))
}
