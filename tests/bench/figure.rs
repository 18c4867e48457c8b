//! Figures as they are printed: what was timed, the bar, and whether it was met.

use std::hint::black_box;
use std::time::{Duration, Instant};

/// How long `run` takes.
pub fn timed<T>(run: impl FnOnce() -> T) -> Duration {
    let start = Instant::now();
    black_box(run());
    start.elapsed()
}

/// Milliseconds.
pub fn millis(time: Duration) -> f64 {
    time.as_secs_f64() * 1000.0
}

/// The middle and the least of some figures.
pub fn middle_and_least<T: Copy>(figures: &mut [T], order: impl FnMut(&T, &T) -> std::cmp::Ordering) -> (T, T) {
    figures.sort_by(order);
    (figures[figures.len() / 2], figures[0])
}

/// The middle of the times is held against the bar; the shortest tells what a busy machine hides.
pub fn figure(name: &str, mut times: Vec<Duration>, bar: Duration) {
    let (middle, shortest) = middle_and_least(&mut times, Duration::cmp);
    let verdict = if middle <= bar { "met" } else { "missed" };
    println!(
        "{name}: {:.3} ms (shortest {:.3} ms), bar {:.2} ms, {verdict}",
        millis(middle),
        millis(shortest),
        millis(bar)
    );
}

/// How many times the first figure is the second, in the middle and at the least, against a bar.
pub fn ratio(name: &str, first: (f64, f64), second: (f64, f64), unit: &str, bar: f64) {
    let of_middles = first.0 / second.0;
    let verdict = if of_middles <= bar { "met" } else { "missed" };
    println!(
        "{name}: {of_middles:.2}x ({:.2} to {:.2} {unit}; at the shortest {:.2}x), bar {bar:.2}x, {verdict}",
        first.0,
        second.0,
        first.1 / second.1
    );
}

/// What we take beside a spreadsheet engine, in milliseconds: the middle of each, and the shortest.
pub fn beside(name: &str, mut ours: Vec<f64>, mut theirs: Vec<f64>) {
    let (ours, theirs) = (middle_and_least(&mut ours, f64::total_cmp), middle_and_least(&mut theirs, f64::total_cmp));
    println!(
        "{name}: ours {:.3} ms, spreadsheet engine {:.3} ms, ratio {:.3} (shortest {:.3} ms, {:.3} ms, ratio {:.3})",
        ours.0,
        theirs.0,
        ours.0 / theirs.0,
        ours.1,
        theirs.1,
        ours.1 / theirs.1
    );
}
