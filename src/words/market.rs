//! What local prices say.

use super::Speaker;
use super::dates::day;
use crate::book::{Book, Key};
use crate::foundation::measure::{Date, Exact, Money, Share};
use crate::say;
use crate::sizes::market::{Against, Curve, Market, NoCurve};

/// What prices elsewhere do not say.
pub fn market_caution() -> String {
    [say!(decide::market_caution), say!(decide::market_no_advice)].join(" ")
}

/// The first year that a day is taken of.
const FIRST_YEAR: i32 = 1900;

/// Why a day is not taken that lies before all that a book could tell of. Returns `None` for any
/// other.
pub fn day_too_early(day: Date) -> Option<String> {
    let (year, _, _) = day.parts();
    (year < FIRST_YEAR).then(|| say!(decide::year_too_early).to_string())
}

/// What a day that lies ahead is told; two buttons answer it.
pub fn day_ahead(ahead: Date) -> String {
    say!(decide::date_ahead, date = day(ahead))
}

/// What the prices seen show, in sentences.
pub fn market(market: &Market, book: &Book, speaker: &Speaker) -> String {
    let curve = match &market.curve {
        Ok(curve) => curve,
        Err(why) => return no_curve(*why).to_string(),
    };
    let (smallest, largest) = (speaker.volume(curve.smallest), speaker.volume(curve.largest));
    let seen = say!(decide::prices_from_to, prices = market.seen.len(), smallest = smallest, largest = largest);
    let doubling = curve.doubling.fraction().rounded(3);
    let share = speaker.percent(Share::from_fraction(doubling.abs()));
    let doubling = match doubling {
        none if none.is_zero() => say!(decide::double_costs_same).to_string(),
        less if less.is_negative() => say!(decide::double_costs_less, share = share),
        _ => say!(decide::double_costs_more, share = share),
    };
    let distance = |against: &Against| against.on_curve().map(|on| on.above.fraction().abs());
    let farthest = market.ours.iter().filter_map(|ours| Some((distance(&ours.against?)?, ours))).max_by_key(|it| it.0);
    let standing = farthest.and_then(|(_, ours)| {
        let (size, standing) = (book.name(Key::Offer(ours.offer)), against_curve(&ours.against?, speaker));
        Some(if market.ours.len() == 1 {
            say!(decide::your_standing, size = size, standing = standing)
        } else {
            say!(decide::farthest_standing, size = size, standing = standing)
        })
    });
    [seen, doubling].into_iter().chain(standing).collect::<Vec<_>>().join(" ")
}

/// Where a size of ours stands: "4.0 % above the curve".
pub fn against_curve(against: &Against, speaker: &Speaker) -> String {
    let Some(on) = against.on_curve() else { return say!(decide::too_far_beyond).to_string() };
    let above = on.above.fraction().rounded(3);
    let share = speaker.percent(Share::from_fraction(above.abs()));
    let beyond = matches!(against, Against::Beyond(_));
    match (above.is_zero(), above.is_negative(), beyond) {
        (true, _, false) => say!(decide::on_curve).to_string(),
        (true, _, true) => say!(decide::on_curve_beyond).to_string(),
        (_, true, false) => say!(decide::below_curve, share = share),
        (_, true, true) => say!(decide::below_curve_beyond, share = share),
        (_, _, false) => say!(decide::above_curve, share = share),
        (_, _, true) => say!(decide::above_curve_beyond, share = share),
    }
}

/// How the curve came about, with its own numbers.
pub fn curve(curve: &Curve, book: &Book, speaker: &Speaker) -> String {
    let units = book.settings().units;
    let at_one = curve.price_at(units.price_volume()).unwrap_or(Money::ZERO);
    let (price, exponent) = (speaker.money(at_one), speaker.rounded(curve.exponent, 2));
    let formula = match units.price_volume_name() {
        "100 mL" => say!(decide::curve_math_hundreds, price = price, exponent = exponent),
        unit => say!(decide::curve_math, price = price, exponent = exponent, unit = unit),
    };
    let fit = curve.explained.map_or(say!(decide::curve_prices_equal).to_string(), |explained| {
        say!(decide::curve_fit, fit = speaker.rounded(explained.fraction(), 2))
    });
    [formula.as_str(), say!(decide::curve_method), fit.as_str()].join(" ")
}

/// Why there is no curve, and what would give one.
pub fn no_curve(why: NoCurve) -> &'static str {
    match why {
        NoCurve::TooFew(0) => say!(decide::no_prices_yet),
        NoCurve::TooFew(1) => say!(decide::one_price_so_far),
        NoCurve::TooFew(_) => say!(decide::two_prices_so_far),
        NoCurve::OneSize => say!(decide::prices_of_one_size),
        NoCurve::OutOfRange => say!(decide::prices_too_far_apart),
    }
}

/// Money a customer pays more or less, with its sign: "+$4.20".
pub(super) fn signed_money(money: Money, speaker: &Speaker) -> String {
    let shown = speaker.money(money);
    if money.major() > Exact::ZERO { format!("+{shown}") } else { shown }
}
