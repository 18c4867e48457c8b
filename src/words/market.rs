//! What prices seen elsewhere say.

use super::Speaker;
use super::dates::day;
use crate::book::{Book, Key};
use crate::foundation::measure::{Date, Exact, Money, Share};
use crate::sizes::market::{Against, Curve, Market, NoCurve};

/// What prices elsewhere do not say.
pub const MARKET_CAUTION: &str = "This is what others ask, not what they sell at it. Their costs, servings and guests are not yours, and a place on the curve is no advice on what to ask.";

/// The first year that a day is taken of.
const FIRST_YEAR: i32 = 1900;

/// Why a day is not taken that lies before all that a book could tell of. Returns `None` for any
/// other.
pub fn day_too_early(day: Date) -> Option<String> {
    let (year, _, _) = day.parts();
    (year < FIRST_YEAR).then(|| format!("The year is before {FIRST_YEAR}. Type all four digits, such as 2026."))
}

/// What a day that lies ahead is told; two buttons answer it.
pub fn day_ahead(ahead: Date) -> String {
    format!("{} is in the future. Keep it, or go back?", day(ahead))
}

/// What the prices seen show, in sentences.
pub fn market(market: &Market, book: &Book, speaker: &Speaker) -> String {
    let curve = match &market.curve {
        Ok(curve) => curve,
        Err(why) => return no_curve(*why).to_string(),
    };
    let volume = |size| speaker.volume(size);
    let percent = |share| speaker.percent(share);
    let doubling = match curve.doubling.fraction().rounded(3) {
        none if none.is_zero() => "doubling the size leaves the price as it is".to_string(),
        less if less.is_negative() => {
            format!("doubling the size lowers the price by {}", percent(Share::from_fraction(less.abs())))
        }
        more => format!("doubling the size raises the price by {}", percent(Share::from_fraction(more))),
    };
    let explained = curve.explained.map_or("every price is the same".to_string(), |explained| {
        format!("R² {}", speaker.rounded(explained.fraction(), 2))
    });
    let (count, smallest, largest) = (market.seen.len(), volume(curve.smallest), volume(curve.largest));
    let mut said = format!("Of {count} prices seen, from {smallest} to {largest}: {doubling} ({explained}).");
    let distance = |against: &Against| against.on_curve().map(|on| on.above.fraction().abs());
    let farthest = market.ours.iter().filter_map(|ours| Some((distance(&ours.against?)?, ours))).max_by_key(|it| it.0);
    if let Some((_, ours)) = farthest {
        let lead = if market.ours.len() == 1 { "Your" } else { "Farthest from the curve: your" };
        let name = book.name(Key::Offer(ours.offer));
        let said_of = ours.against.map(|against| asks(&against, speaker)).unwrap_or_default();
        said.push_str(&format!(" {lead} {name} {said_of}."));
    }
    said
}

/// "asks 4.0 % more than the curve", or on it, or less.
fn asks(against: &Against, speaker: &Speaker) -> String {
    let Some(on) = against.on_curve() else { return "lies too far beyond the sizes seen".to_string() };
    let above = on.above.fraction().rounded(3);
    let percent = speaker.percent(Share::from_fraction(above.abs()));
    let beyond = if matches!(against, Against::Beyond(_)) { ", and lies beyond the sizes seen" } else { "" };
    match above {
        none if none.is_zero() => format!("asks what the curve does{beyond}"),
        less if less.is_negative() => format!("asks {percent} less than the curve{beyond}"),
        _ => format!("asks {percent} more than the curve{beyond}"),
    }
}

/// Where a size of ours stands, for a table: "4.0 % above".
pub fn against_curve(against: &Against, speaker: &Speaker) -> String {
    let Some(on) = against.on_curve() else { return "too far beyond the sizes seen".to_string() };
    let above = on.above.fraction().rounded(3);
    let percent = speaker.percent(Share::from_fraction(above.abs()));
    let beyond = if matches!(against, Against::Beyond(_)) { ", beyond the sizes seen" } else { "" };
    match above {
        none if none.is_zero() => format!("on the curve{beyond}"),
        less if less.is_negative() => format!("{percent} below{beyond}"),
        _ => format!("{percent} above{beyond}"),
    }
}

/// How the curve came about, with its own numbers.
pub fn curve(curve: &Curve, book: &Book, speaker: &Speaker) -> String {
    let units = book.settings().units;
    let at_one = curve.price_at(units.price_volume()).unwrap_or(Money::ZERO);
    let factor = speaker.money(at_one);
    let exponent = speaker.rounded(curve.exponent, 2);
    let size = match units.price_volume_name() {
        "100 mL" => "hundreds of mL",
        unit => unit,
    };
    format!(
        "The curve is price = {factor} × (size in {size}) to the power of {exponent}: a straight line through the logarithms of sizes and prices, by least squares. R² says how closely the prices follow it: 1 is exactly, 0 not at all."
    )
}

/// Why there is no curve, and what would give one.
pub const fn no_curve(why: NoCurve) -> &'static str {
    match why {
        NoCurve::TooFew(0) => {
            "No price is written down here yet. With three or more, of different sizes, you see how prices grow with the size, and where yours stand."
        }
        NoCurve::TooFew(1) => {
            "One price is seen so far. A curve needs three or more: any line runs through one point, and says nothing."
        }
        NoCurve::TooFew(_) => {
            "Two prices are seen so far. A curve needs three or more: through two it always runs exactly, and hides how prices scatter."
        }
        NoCurve::OneSize => {
            "All these prices are of one size, or nearly, so they cannot say how a price grows with the size. Write down a smaller or a larger one too."
        }
        NoCurve::OutOfRange => "These sizes and prices lie too far apart to compute with. Check for a digit too many.",
    }
}

/// What is said beside a price that was seen long ago.
pub const OLD_PRICE: &str = "seen over a year ago";

/// Money a customer pays more or less, with its sign: "+$4.20".
pub(super) fn signed_money(money: Money, speaker: &Speaker) -> String {
    let shown = speaker.money(money);
    if money.major() > Exact::ZERO { format!("+{shown}") } else { shown }
}
