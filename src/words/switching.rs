//! Switching sizes: what must be sold, what it takes, and why there is no answer.

use super::{Speaker, offer_error, overflow, price_error};
use crate::book::{Book, ContainerId, DrinkId, Key};
use crate::foundation::measure::{Exact, Money, Overflow, Share};
use crate::say;
use crate::sizes::switching::{
    BreakEven, Earnings, FirstOrder, Losing, NoEarnings, Payback, PriceFrom, Sales, SwitchError, Together,
};

/// Why there is no answer at all.
pub fn switch_error(error: &SwitchError, book: &Book) -> String {
    let name = |id: ContainerId| book.name(Key::Container(id));
    match error {
        SwitchError::SameContainer(id) => say!(decide::both_sizes_same, size = name(*id)),
        SwitchError::NotSold(id) => say!(decide::none_sold_in_size, size = name(*id)),
        SwitchError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a drink brings nothing that can be computed in a size.
pub fn no_earnings(why: &NoEarnings, drink: DrinkId, container: ContainerId, book: &Book) -> String {
    let reason = match why {
        NoEarnings::Offer(why) => offer_error(why, book),
        NoEarnings::NoPrice => say!(decide::no_price_to_switch).to_string(),
        NoEarnings::NoPriceReaches(error) => [price_error(error).as_str(), say!(decide::or_type_a_price)].join(" "),
    };
    let (drink, size) = (book.name(Key::Drink(drink)), book.name(Key::Container(container)));
    say!(decide::drink_in_size, drink = drink, size = size, reason = reason)
}

/// Where the price in the new size comes from.
pub fn price_from(from: PriceFrom) -> &'static str {
    match from {
        PriceFrom::Typed => say!(decide::price_typed_here),
        PriceFrom::Asked => say!(decide::price_on_menu),
        PriceFrom::Suggested => say!(decide::price_suggested),
    }
}

/// On which side nothing is left, and what to mend. `what` is a drink, or all of them together.
pub fn losing(
    losing: Losing,
    what: &str,
    sides: (Earnings, Earnings),
    containers: (ContainerId, ContainerId),
    (book, speaker): (&Book, &Speaker),
) -> String {
    let loses = |earnings: Earnings, container| {
        let (size, price) = (book.name(Key::Container(container)), speaker.money(earnings.price));
        if earnings.contribution.is_zero() {
            say!(decide::no_profit_in_size, what = what, size = size, price = price)
        } else {
            let loss = speaker.money(without_sign(earnings.contribution));
            say!(decide::loss_in_size, what = what, size = size, price = price, loss = loss)
        }
    };
    let (now, then) = (|| loses(sides.0, containers.0), || loses(sides.1, containers.1));
    match losing {
        Losing::Now => [now().as_str(), say!(decide::losing_now)].join(" "),
        Losing::Then => [then().as_str(), say!(decide::losing_then)].join(" "),
        Losing::Both => [now().as_str(), then().as_str(), say!(decide::losing_both)].join(" "),
    }
}

/// What is counted with where weekly sales are not entered for all. Returns an empty text if they
/// are.
pub fn counted_with(sales: Sales) -> String {
    match sales {
        Sales::Entered { without: 0 } => String::new(),
        Sales::Entered { without } => say!(decide::drinks_without_sales, drinks = without),
        Sales::NotEntered => say!(decide::no_sales_entered).to_string(),
        Sales::NothingSold => say!(decide::sales_all_zero).to_string(),
    }
}

/// "Sell 113 instead of 100 per week (+13.0 %)".
pub fn sell_instead(units: Exact, answer: &BreakEven, sales: Sales, speaker: &Speaker) -> String {
    let units = shown_units(units, sales);
    let (now, then) = (speaker.number(units), whole(answer, units, speaker));
    let change = change(answer, speaker);
    match sales {
        Sales::Entered { .. } => say!(decide::sell_instead, now = now, then = then, change = change),
        Sales::NotEntered | Sales::NothingSold => {
            say!(decide::sell_per_hundred, now = now, then = then, change = change)
        }
    }
}

/// What is sold in a week, or a hundred where that is not known.
fn shown_units(units: Exact, sales: Sales) -> Exact {
    match sales {
        Sales::Entered { .. } => units,
        Sales::NotEntered | Sales::NothingSold => Exact::new(100, 0),
    }
}

/// How many to sell in whole drinks, rounded up.
pub fn whole(answer: &BreakEven, units: Exact, speaker: &Speaker) -> String {
    answer.whole_units(units).map_or_else(overflow, |units| speaker.number(units))
}

/// The change in what must be sold: "+13.0 %".
pub fn change(answer: &BreakEven, speaker: &Speaker) -> String {
    answer.change().map_or_else(overflow, |change| signed(change, speaker))
}

/// How the number to sell came about.
pub fn sell_formula(together: &Together, answer: &BreakEven, sales: Sales, speaker: &Speaker) -> String {
    let each = |earnings: Earnings| match earnings.contribution.over(together.units) {
        Ok(each) => speaker.money(each),
        Err(error) => overflow(error),
    };
    let units = shown_units(together.units, sales);
    let drinks = answer.units(units).map_or_else(overflow, |units| speaker.number(units.rounded(2)));
    let sold = speaker.number(units);
    say!(decide::sell_math, sold = sold, now = each(together.now), then = each(together.then), drinks = drinks)
}

/// At which price elasticity it breaks even, in plain words with the number.
pub fn elasticity(answer: &BreakEven, speaker: &Speaker) -> String {
    let Some(elasticity) = answer.elasticity else { return say!(decide::break_even_same_price).to_string() };
    let size = |share: Share| speaker.percent(Share::from_fraction(share.fraction().abs()));
    let units = answer.change().unwrap_or(Share::ZERO);
    let (price, customers) = (size(answer.price_change), size(units));
    let each = || {
        let each = elasticity.abs().over(Exact::new(100, 0)).map(Share::from_fraction);
        each.map_or_else(overflow, |each| speaker.short_percent(each, 2))
    };
    let plain = match (answer.price_change.is_negative(), units.is_positive(), units.is_negative()) {
        (true, true, _) => vec![
            say!(decide::break_even_cheaper, price = price, customers = customers),
            say!(decide::break_even_cheaper_rate, each = each()),
        ],
        (false, _, true) => vec![
            say!(decide::break_even_higher, price = price, customers = customers),
            say!(decide::break_even_higher_rate, each = each()),
        ],
        (true, _, true) => vec![say!(decide::break_even_cheaper_earns_more, price = price, customers = customers)],
        (false, true, _) => vec![
            say!(decide::break_even_higher_earns_less, price = price, customers = customers),
            say!(decide::higher_price_seldom_helps).to_string(),
        ],
        (_, false, false) => vec![say!(decide::break_even_equal).to_string()],
    };
    let sign = if elasticity.rounded(2).is_positive() { "+" } else { "" };
    let number = say!(decide::elasticity, elasticity = format!("{sign}{}", speaker.rounded(elasticity, 2)));
    plain.into_iter().chain([number]).collect::<Vec<_>>().join(" ")
}

/// What a week brings with a share of today's customers, against today.
pub fn with_kept(together: &Together, kept: Share, sales: Sales, speaker: &Speaker) -> String {
    let (Ok(then), Ok(gain)) = (together.with_kept(kept), together.gain(kept)) else {
        return overflow(Overflow::TooLarge);
    };
    let (share, profit) = (speaker.short_percent(kept, 1), speaker.money(then));
    let earns = match sales {
        Sales::Entered { .. } => say!(decide::stay_earns_per_week, share = share, profit = profit),
        Sales::NotEntered | Sales::NothingSold => {
            say!(decide::stay_earns_per_hundred, share = share, profit = profit)
        }
    };
    let (difference, today) = (speaker.money(without_sign(gain)), speaker.money(together.now.contribution));
    let against = match (gain.is_positive(), gain.is_negative()) {
        (true, _) => say!(decide::stay_more, profit = difference, today = today),
        (_, true) => say!(decide::stay_less, profit = difference, today = today),
        _ => say!(decide::stay_same).to_string(),
    };
    [earns, against].join(" ")
}

/// Where the curve crosses today's line.
pub fn crossing(together: &Together, speaker: &Speaker) -> String {
    let today = speaker.money(together.now.contribution);
    match &together.answer {
        Ok(answer) => {
            let share = speaker.percent(Share::from_fraction(answer.ratio));
            say!(decide::curve_crosses, today = today, share = share)
        }
        Err(Losing::Now) => say!(decide::curve_all_above, today = today),
        Err(Losing::Then | Losing::Both) => say!(decide::curve_no_profit, today = today),
    }
}

/// What the curve and its table show.
pub fn basis(sales: Sales) -> &'static str {
    match sales {
        Sales::Entered { .. } => say!(common::profit_per_week),
        Sales::NotEntered | Sales::NothingSold => say!(decide::profit_per_hundred),
    }
}

/// When what is paid once is back.
pub fn payback(together: &Together, kept: Share, once: Money, sales: Sales, speaker: &Speaker) -> (String, String) {
    let (payback, gain) = match (together.payback(kept, once), together.gain(kept)) {
        (Ok(payback), Ok(gain)) => (payback, gain),
        (Err(error), _) | (_, Err(error)) => return (String::new(), overflow(error)),
    };
    let (cost, gain) = (speaker.money(once), speaker.money(gain));
    match payback {
        Payback::Weeks(weeks) if matches!(sales, Sales::Entered { .. }) => {
            let weeks = speaker.rounded(weeks, 1);
            (
                say!(decide::payback_weeks, weeks = &weeks),
                say!(decide::payback_math, cost = cost, gain = gain, weeks = &weeks),
            )
        }
        Payback::Weeks(_) => {
            (say!(decide::payback_unknown).to_string(), say!(decide::payback_unknown_about, cost = cost, gain = gain))
        }
        Payback::AtOnce => (say!(decide::payback_at_once).to_string(), say!(decide::payback_at_once_about).to_string()),
        Payback::Never => {
            let never = say!(decide::payback_never_about, share = speaker.short_percent(kept, 1));
            let lost = once.is_positive().then(|| say!(decide::payback_never_cost, cost = cost));
            let about = [never].into_iter().chain(lost).collect::<Vec<_>>().join(" ");
            (say!(decide::payback_never).to_string(), about)
        }
    }
}

/// What the new size orders first, of one packaging.
pub fn first_order(order: &FirstOrder, book: &Book, speaker: &Speaker) -> String {
    let name = book.name(Key::Packaging(order.packaging));
    match (order.in_use, order.cost) {
        (true, _) => say!(decide::first_order_in_use, name = name),
        (false, Some(cost)) => {
            let packs = speaker.counted(order.packs);
            say!(decide::first_order, name = name, packs = packs, cost = speaker.money(cost))
        }
        (false, None) => say!(decide::first_order_no_price, name = name),
    }
}

fn without_sign(money: Money) -> Money {
    Money::from_major(money.major().abs())
}

fn signed(share: Share, speaker: &Speaker) -> String {
    let sign = if share.fraction().rounded(3).is_positive() { "+" } else { "" };
    format!("{sign}{}", speaker.percent(share))
}
