//! Sizes side by side: what is compared, what a step brings, what cannot be tried.

use super::{Speaker, drink_kind, number, overflow, part, refusal, to_cent};
use crate::book::{Book, ContainerId, DrinkId, Key, OfferId, Part, Scope};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Share};
use crate::say;
use crate::sizes::side_by_side::{LeftOut, MixError, SideBySide, SizeRow, Step, Weights, WhatIfError};

/// How many drinks are written out in a sum.
const WRITTEN_OUT: usize = 3;

/// A part of the menu.
pub fn scope(scope: Scope, book: &Book) -> String {
    match scope {
        Scope::Menu => say!(sales::whole_menu).to_string(),
        Scope::Kind(kind) => drink_kind(kind).to_string(),
        Scope::Drink(drink) => book.name(Key::Drink(drink)),
    }
}

/// How many drinks are compared, and how each counts.
pub fn compared(side: &SideBySide) -> String {
    match (side.drinks.len(), side.weights) {
        (0, _) => say!(sales::no_drink_in_all).to_string(),
        (1, _) => say!(sales::one_drink_in_all).to_string(),
        (count, Weights::WeeklySales) => say!(sales::drinks_in_all_by_sales, drinks = count),
        (count, Weights::Equal) => say!(sales::drinks_in_all_alike, drinks = count),
    }
}

/// A drink that is not compared, and why.
pub fn left_out(drink: DrinkId, why: LeftOut, book: &Book) -> String {
    let drink = book.name(Key::Drink(drink));
    let size = |container| book.name(Key::Container(container));
    match why {
        LeftOut::NotSoldIn(container) => say!(sales::left_out_not_sold, drink = drink, size = size(container)),
        LeftOut::CannotCompute(container) => say!(sales::left_out_stuck, drink = drink, size = size(container)),
        LeftOut::WithoutPrice(container) => {
            say!(sales::left_out_without_price, drink = drink, size = size(container))
        }
        LeftOut::WithoutSales => say!(sales::left_out_without_sales, drink = drink),
    }
}

/// How the mean price of a size came about, in this comparison's own numbers. Returns an empty text
/// for one drink.
pub fn mean_price(side: &SideBySide, row: &SizeRow, book: &Book, ledger: &Ledger, speaker: &Speaker) -> String {
    let (Some(sold), 2..) = (&row.sold, side.drinks.len()) else { return String::new() };
    let money = |money| speaker.money(money);
    let price = |drink| {
        let offer = OfferId { drink, container: row.container };
        ledger.get(offer)?.as_ref().ok()?.asked.map(|asked| asked.menu)
    };
    let term = |(drink, weight): &(_, Exact)| {
        let price = money(price(*drink).unwrap_or_default());
        match side.weights {
            Weights::WeeklySales => format!("{} × {price}", speaker.number(*weight)),
            Weights::Equal => price,
        }
    };
    let mut terms: Vec<String> = side.drinks.iter().take(WRITTEN_OUT).map(term).collect();
    let more = side.drinks.len().saturating_sub(WRITTEN_OUT);
    if more > 0 {
        terms.push(say!(sales::more_terms, count = number(more)));
    }
    let weights = side.drinks.iter().try_fold(Exact::ZERO, |sum, (_, weight)| sum.plus(*weight)).unwrap_or_default();
    say!(
        sales::average_price_in_math,
        size = book.name(Key::Container(row.container)),
        sum = terms.join(" + "),
        weight = speaker.number(weights),
        average = money(sold.price)
    )
}

/// A step from one size to a larger one: "From 12 fl oz to 16 fl oz, the price goes up $1.50. The
/// cost goes up $0.92. You keep $0.58: 38.7% of the extra price before tax."
pub fn size_step(from: ContainerId, to: ContainerId, step: &Step, book: &Book, speaker: &Speaker) -> String {
    let name = |container| book.name(Key::Container(container));
    let (small, large) = (name(from), name(to));
    let by = |money: Money| speaker.money(Money::from_major(money.major().abs()));
    let turn = |by: Money| (by.is_positive(), by.is_zero());
    let (price, cost) = (step.extra_price, step.extra_cost);
    let said = [
        match turn(price) {
            (true, _) => say!(sales::price_rises, small = small, large = large, by = by(price)),
            (_, true) => say!(sales::price_stays, small = small, large = large),
            _ => say!(sales::price_falls, small = small, large = large, by = by(price)),
        },
        match turn(cost) {
            (true, _) => say!(sales::cost_rises, by = by(cost)),
            (_, true) => say!(sales::cost_stays).to_string(),
            _ => say!(sales::cost_falls, by = by(cost)),
        },
    ];
    let kept = step.kept.map(|kept| {
        if kept.is_positive() {
            say!(sales::you_keep, kept = speaker.money(step.extra_left), share = speaker.percent(kept))
        } else {
            say!(sales::you_keep_nothing).to_string()
        }
    });
    said.into_iter().chain(extra_fees(step, speaker)).chain(kept).collect::<Vec<_>>().join(" ")
}

/// What tax, fees and discounts take more or less from size to size, where it comes to a cent.
pub fn extra_fees(step: &Step, speaker: &Speaker) -> Vec<String> {
    let said = |more: Money, rise: fn(String) -> String, fall: fn(String) -> String| {
        let seen = to_cent(more, speaker);
        let by = speaker.money(Money::from_major(more.major().abs()));
        (!seen.is_empty()).then(|| if more.is_positive() { rise(by) } else { fall(by) })
    };
    let tax = said(step.extra_tax, |by| say!(sales::tax_rises, by = by), |by| say!(sales::tax_falls, by = by));
    let fees = said(step.extra_fees, |by| say!(sales::fees_rise, by = by), |by| say!(sales::fees_fall, by = by));
    let reductions = said(
        step.extra_reductions,
        |by| say!(sales::reductions_rise, by = by),
        |by| say!(sales::reductions_fall, by = by),
    );
    tax.into_iter().chain(fees).chain(reductions).collect()
}

/// The largest part of the cost of the smallest size and of the largest, and its share there:
/// "Biggest cost: Ingredients, 61.0% in 12 fl oz and 66.2% in 24 fl oz."
pub fn largest_part(sizes: &[SizeRow], book: &Book, speaker: &Speaker) -> String {
    let (Some(smallest), Some(largest)) = (sizes.first(), sizes.last()) else { return String::new() };
    let biggest = |row: &SizeRow| {
        let (mut place, mut most) = (0, Money::ZERO);
        for (at, cost) in row.parts.iter().enumerate() {
            if *cost > most {
                (place, most) = (at, *cost);
            }
        }
        Some(place).filter(|_| most.is_positive())
    };
    let Some((in_largest, in_smallest)) = biggest(largest).zip(biggest(smallest)) else {
        return say!(sales::no_costs_yet).to_string();
    };
    let share_of = |row: &SizeRow, place: usize| {
        let cost = row.parts.get(place).copied().unwrap_or_default();
        speaker.percent(cost.ratio_to(row.cost).map(Share::from_fraction).unwrap_or_default())
    };
    let size = |row: &SizeRow| book.name(Key::Container(row.container));
    let name = |place: usize| Part::ALL.get(place).copied().map(part).unwrap_or_default();
    let alone =
        |row, place| say!(sales::biggest_cost, part = name(place), share = share_of(row, place), size = size(row));
    if sizes.len() == 1 {
        return alone(smallest, in_smallest);
    }
    if in_smallest != in_largest {
        return [alone(smallest, in_smallest), alone(largest, in_largest)].join(" ");
    }
    let (part, share) = (name(in_largest), |row| share_of(row, in_largest));
    say!(
        sales::biggest_cost_in_two,
        part = part,
        share = share(smallest),
        size = size(smallest),
        other_share = share(largest),
        other = size(largest)
    )
}

/// Why something cannot be tried.
pub fn what_if_error(error: &WhatIfError, book: &Book, speaker: &Speaker) -> String {
    match error {
        WhatIfError::Refused(refused) => refusal(refused, book),
        WhatIfError::OverTheRim(brimful) => {
            say!(sales::over_brimful, brimful = speaker.volume(*brimful))
        }
        WhatIfError::NothingPoured => say!(sales::nothing_filled).to_string(),
        WhatIfError::Mix(error) => mix_error(*error).to_string(),
        WhatIfError::Arithmetic(error) => overflow(*error),
    }
}

/// Why sizes cannot be sold in these shares.
fn mix_error(error: MixError) -> &'static str {
    match error {
        MixError::OverTheWhole => say!(sales::mix_over),
        MixError::UnderTheWhole => say!(sales::mix_under),
        MixError::NoSales => say!(sales::mix_without_sales),
    }
}
