//! One size in place of another: what must be sold, what it takes, and why there is no answer.

use super::{Speaker, offer_error, overflow, price_error};
use crate::book::{Book, ContainerId, DrinkId, Key};
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::switching::{
    BreakEven, Earnings, Losing, NoEarnings, Payback, PriceFrom, Sales, SwitchError, Together,
};

/// Why there is no answer at all.
pub fn switch_error(error: &SwitchError, book: &Book) -> String {
    match error {
        SwitchError::SameContainer(id) => {
            format!("Both sizes are {}. Choose another one to go to.", book.name(Key::Container(*id)))
        }
        SwitchError::NotSold(id) => {
            format!(
                "None of these drinks is sold in {}. Choose a size that they are in.",
                book.name(Key::Container(*id))
            )
        }
        SwitchError::Arithmetic(error) => overflow(*error),
    }
}

/// Why a drink brings nothing that can be computed in a size.
pub fn no_earnings(why: &NoEarnings, drink: DrinkId, container: ContainerId, book: &Book) -> String {
    let (drink, container) = (book.name(Key::Drink(drink)), book.name(Key::Container(container)));
    let said = match why {
        NoEarnings::Offer(why) => offer_error(why, book),
        NoEarnings::NoPrice => "No price is asked. Enter one on its page.".to_string(),
        NoEarnings::NoPriceReaches(error) => format!("{} Or type a price here.", price_error(error)),
    };
    format!("{drink} in {container}: {said}")
}

/// Where the price in the new size comes from.
pub const fn price_from(from: PriceFrom) -> &'static str {
    match from {
        PriceFrom::Typed => "typed here",
        PriceFrom::Asked => "asked there already",
        PriceFrom::Suggested => "suggested for the target",
    }
}

/// On which side nothing is left, and what to mend. `what` is a drink, or all of them together.
pub fn losing(
    losing: Losing,
    what: &str,
    sides: (Earnings, Earnings),
    containers: (ContainerId, ContainerId),
    shown: (&Book, &Speaker),
) -> String {
    let (book, speaker) = shown;
    let loses = |earnings: Earnings, container| {
        let (left, price) = (speaker.money(earnings.contribution), speaker.money(earnings.price));
        let container = book.name(Key::Container(container));
        if earnings.contribution.is_zero() {
            format!("nothing is left of {price} in {container}")
        } else {
            format!("{left} is left of {price} in {container}, a loss")
        }
    };
    let (now, then) = (loses(sides.0, containers.0), loses(sides.1, containers.1));
    match losing {
        Losing::Now => format!(
            "{what}: {now}. There is nothing to earn again, and each one not sold is a gain. First mend its price or cost there."
        ),
        Losing::Then => format!(
            "{what}: {then}. However many are sold, it does not earn what it earns now. Ask more in the new size, or make it for less."
        ),
        Losing::Both => format!(
            "{what}: {now}; {then}. No number of them earns anything. Mend price or cost in both sizes, or take it off the menu."
        ),
    }
}

/// What is counted with where weekly sales are not entered for all. Returns an empty text if they
/// are.
pub fn counted_with(sales: Sales) -> String {
    match sales {
        Sales::Entered { without: 0 } => String::new(),
        Sales::Entered { without: 1 } => "1 drink has no weekly sales entered and is left out of the sums.".to_string(),
        Sales::Entered { without } => {
            format!("{without} drinks have no weekly sales entered and are left out of the sums.")
        }
        Sales::NotEntered => {
            "No weekly sales are entered, so 100 of each drink are counted with, all in equal shares.".to_string()
        }
        Sales::NothingSold => {
            "By the weekly sales entered none is sold, so 100 of each drink are counted with, all in equal shares."
                .to_string()
        }
    }
}

/// "Sell 113 instead of 100 a week (+13.0 %)".
pub fn sell_instead(units: Exact, answer: &BreakEven, sales: Sales, speaker: &Speaker) -> String {
    let units = shown_units(units, sales);
    let (now, then) = (speaker.number(units), whole(answer, units, speaker));
    let change = change(answer, speaker);
    match sales {
        Sales::Entered { .. } => format!("Sell {then} instead of {now} a week ({change})"),
        Sales::NotEntered | Sales::NothingSold => format!("Sell {then} for every {now} sold now ({change})"),
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
    let exact = answer.units(units).map_or_else(overflow, |units| speaker.number(units.rounded(2)));
    format!(
        "{} sold now × {} left of each ÷ {} left of each in the new size = {exact}, rounded up to whole drinks.",
        speaker.number(units),
        each(together.now),
        each(together.then),
    )
}

/// At which price elasticity it breaks even, in plain words with the number.
pub fn elasticity(answer: &BreakEven, speaker: &Speaker) -> String {
    let Some(elasticity) = answer.elasticity else {
        return "The price stays as it is, so there is no price elasticity: the size alone must hold the buyers."
            .to_string();
    };
    let size = |share: Share| speaker.percent(Share::from_fraction(share.fraction().abs()));
    let units = answer.change().unwrap_or(Share::ZERO);
    let (price, buyers) = (size(answer.price_change), size(units));
    let each = speaker.number(elasticity.abs().rounded(2));
    let plain = match (answer.price_change.is_negative(), units.is_positive(), units.is_negative()) {
        (true, true, _) => format!(
            "It breaks even if the price, {price} lower, brings {buyers} more buyers: about {each}\u{a0}% more for each 1\u{a0}% off."
        ),
        (false, _, true) => format!(
            "It breaks even if the price, {price} higher, drives away {buyers} of the buyers: about {each}\u{a0}% of them for each 1\u{a0}% more."
        ),
        (true, _, true) => {
            format!(
                "Each drink earns more although its price is {price} lower: it breaks even with {buyers} fewer buyers."
            )
        }
        (false, true, _) => format!(
            "The price is {price} higher and each drink earns less: only with {buyers} more buyers would it break even, and a higher price seldom brings them."
        ),
        (_, false, false) => "Each drink earns the same: it breaks even with as many buyers as now.".to_string(),
    };
    let sign = if elasticity.rounded(2).is_positive() { "+" } else { "" };
    format!("{plain} Price elasticity at break-even: {sign}{}.", speaker.rounded(elasticity, 2))
}

/// What a week brings with a share of the sales kept, against today.
pub fn with_kept(together: &Together, kept: Share, sales: Sales, speaker: &Speaker) -> String {
    let (Ok(then), Ok(gain)) = (together.with_kept(kept), together.gain(kept)) else {
        return overflow(crate::foundation::measure::Overflow::TooLarge);
    };
    let against = match (gain.is_positive(), gain.is_negative()) {
        (true, _) => format!("{} more", speaker.money(gain)),
        (_, true) => format!("{} less", speaker.money(Money::ZERO.minus(gain).unwrap_or(gain))),
        _ => "the same".to_string(),
    };
    format!(
        "With {} of the sales kept, {} {}, today {}: {against}.",
        speaker.short_percent(kept, 1),
        brings(sales),
        speaker.money(then),
        speaker.money(together.now.contribution),
    )
}

/// What the curve shows, and where it crosses today's line.
pub fn crossing(together: &Together, sales: Sales, speaker: &Speaker) -> String {
    let (basis, today) = (basis(sales), speaker.money(together.now.contribution));
    match &together.answer {
        Ok(answer) => {
            let at = speaker.percent(Share::from_fraction(answer.ratio));
            format!(
                "What is left of {basis} by the share of sales kept. It crosses today's {today} at {at}: above that the new size earns more."
            )
        }
        Err(Losing::Now) => format!(
            "What is left of {basis} by the share of sales kept. Today's is {today}, no gain, so every share shown lies above it."
        ),
        Err(Losing::Then | Losing::Both) => {
            format!(
                "What is left of {basis} by the share of sales kept. Nothing is left in the new size, so more sales do not help; today's is {today}."
            )
        }
    }
}

/// Of what the curve and its table show what is left.
pub const fn basis(sales: Sales) -> &'static str {
    match sales {
        Sales::Entered { .. } => "a week",
        Sales::NotEntered | Sales::NothingSold => "100 of each drink",
    }
}

/// When what is paid once is back.
pub fn payback(together: &Together, kept: Share, once: Money, sales: Sales, speaker: &Speaker) -> (String, String) {
    let (payback, gain) = match (together.payback(kept, once), together.gain(kept)) {
        (Ok(payback), Ok(gain)) => (payback, gain),
        (Err(error), _) | (_, Err(error)) => return (String::new(), overflow(error)),
    };
    let once_paid = once.is_positive();
    let (once, gained, kept) = (speaker.money(once), speaker.money(gain), speaker.short_percent(kept, 1));
    let known = matches!(sales, Sales::Entered { .. });
    match payback {
        Payback::Weeks(weeks) if known => {
            let weeks = speaker.rounded(weeks, 1);
            (format!("{weeks} weeks"), format!("{once} once ÷ {gained} more a week = {weeks} weeks."))
        }
        Payback::Weeks(_) => (
            "not known".to_string(),
            format!(
                "It brings more, {gained} on 100 of each drink. Enter what is sold a week to see how many weeks pay {once} back."
            ),
        ),
        Payback::AtOnce => ("at once".to_string(), "It costs nothing once and brings more.".to_string()),
        Payback::Never if !once_paid => (
            "does not pay back".to_string(),
            format!("With {kept} of the sales kept the new size brings no more than today."),
        ),
        Payback::Never => (
            "does not pay back".to_string(),
            format!(
                "With {kept} of the sales kept the new size brings no more than today, so {once} does not come back."
            ),
        ),
    }
}

/// What the new size orders first, of one packaging.
pub fn first_order(order: &crate::sizes::switching::FirstOrder, book: &Book, speaker: &Speaker) -> String {
    let name = book.name(Key::Packaging(order.packaging));
    let packs = speaker.number(order.packs);
    let packs = if order.packs == Exact::ONE { format!("{packs} pack") } else { format!("{packs} packs") };
    match (order.in_use, order.cost) {
        (true, _) => format!("{name}: bought already for another size on the menu, so not counted."),
        (false, Some(cost)) => format!("{name}: {packs} at first, {}.", speaker.money(cost)),
        (false, None) => format!("{name}: has no pack yet, so its first order is not counted. Enter one in Buying."),
    }
}

const fn brings(sales: Sales) -> &'static str {
    match sales {
        Sales::Entered { .. } => "a week brings",
        Sales::NotEntered | Sales::NothingSold => "100 of each drink bring",
    }
}

fn signed(share: Share, speaker: &Speaker) -> String {
    let sign = if share.fraction().rounded(3).is_positive() { "+" } else { "" };
    format!("{sign}{}", speaker.percent(share))
}
