//! Sizes side by side: what is compared, what a step brings, what cannot be tried.

use super::{Speaker, drink_kind, overflow, part, refusal};
use crate::book::{Book, ContainerId, Key, OfferId, Part, Scope};
use crate::drink::ledger::Ledger;
use crate::foundation::measure::{Exact, Money, Share};
use crate::sizes::side_by_side::{LeftOut, SideBySide, SizeRow, Step, Weights, WhatIfError};

/// How many drinks are written out in a sum.
const WRITTEN_OUT: usize = 3;

/// A part of the menu.
pub fn scope(scope: Scope, book: &Book) -> String {
    match scope {
        Scope::Menu => "The whole menu".to_string(),
        Scope::Kind(kind) => drink_kind(kind).to_string(),
        Scope::Drink(drink) => book.name(Key::Drink(drink)),
    }
}

/// How many drinks are compared, and how each counts.
pub fn compared(side: &SideBySide) -> String {
    let weights = match side.weights {
        Weights::WeeklySales => "by what is sold of each in a week, in all these sizes together",
        Weights::Equal => "all alike: no weekly sales are entered for them",
    };
    match side.drinks.len() {
        0 => "No drink is sold in all of these sizes: leave one out.".to_string(),
        1 => "1 drink is sold in all of these sizes. The figures are its own.".to_string(),
        count => format!("{count} drinks are sold in all of these sizes. The figures are their means, {weights}."),
    }
}

/// Why a drink is not compared.
pub fn left_out(why: LeftOut, book: &Book) -> String {
    let name = |container| book.name(Key::Container(container));
    match why {
        LeftOut::NotSoldIn(container) => format!("not sold in {}", name(container)),
        LeftOut::CannotCompute(container) => format!("cannot be computed in {}", name(container)),
        LeftOut::WithoutPrice(container) => format!("no price yet in {}", name(container)),
        LeftOut::WithoutSales => "no weekly sales entered".to_string(),
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
        terms.push(format!("{more} more"));
    }
    let weights = side.drinks.iter().try_fold(Exact::ZERO, |sum, (_, weight)| sum.plus(*weight)).unwrap_or_default();
    let (sum, weights, mean) = (terms.join(" + "), speaker.number(weights), money(sold.price));
    let container = book.name(Key::Container(row.container));
    format!(
        "The price in {container}: ({sum}) / {weights} = {mean}, and so for each part of the cost and what is left. The margin is what the covered costs leave of all these prices without tax, over these."
    )
}

/// A step from one size to a larger one: "From 12 fl oz to 16 fl oz the price rises by $1.50, the
/// cost by $0.92: 38.7 % of the extra price is kept."
pub fn size_step(from: ContainerId, to: ContainerId, step: &Step, book: &Book, speaker: &Speaker) -> String {
    let name = |container| book.name(Key::Container(container));
    let money = |money: Money| speaker.money(money);
    let moves = |by: Money| match (by.is_positive(), by.is_zero()) {
        (true, _) => format!("rises by {}", money(by)),
        (_, true) => "stays the same".to_string(),
        _ => format!("falls by {}", money(Money::ZERO.minus(by).unwrap_or_default())),
    };
    let kept = match step.kept {
        Some(kept) if kept.is_positive() => {
            let share = speaker.percent(kept);
            format!("{share} of the extra price is kept")
        }
        Some(_) => "nothing of the extra price is kept".to_string(),
        None => "there is no extra price to keep".to_string(),
    };
    let (price, cost) = (moves(step.extra_price), moves(step.extra_cost));
    format!("From {} to {} the price {price}, the cost {cost}: {kept}.", name(from), name(to))
}

/// The largest part of the cost of the largest size, and its share there and in the smallest:
/// "Largest part of the cost: Ingredients, 61.0 % in 12 fl oz, 66.2 % in 24 fl oz."
pub fn largest_part(sizes: &[SizeRow], book: &Book, speaker: &Speaker) -> String {
    let (Some(smallest), Some(largest)) = (sizes.first(), sizes.last()) else { return String::new() };
    let (mut place, mut most) = (0, Money::ZERO);
    for (at, cost) in largest.parts.iter().enumerate() {
        if *cost > most {
            (place, most) = (at, *cost);
        }
    }
    let Some(name) = Part::ALL.get(place).filter(|_| most.is_positive()) else {
        return "Nothing is paid for.".to_string();
    };
    let share = |row: &SizeRow| {
        let cost = row.parts.get(place).copied().unwrap_or_default();
        let share = cost.ratio_to(row.cost).map(Share::from_fraction).unwrap_or_default();
        let share = speaker.percent(share);
        format!("{share} in {}", book.name(Key::Container(row.container)))
    };
    let mut shares = vec![share(smallest)];
    if sizes.len() > 1 {
        shares.push(share(largest));
    }
    format!("Largest part of the cost: {}, {}.", part(*name), shares.join(", "))
}

/// Why something cannot be tried.
pub fn what_if_error(error: &WhatIfError, book: &Book, speaker: &Speaker) -> String {
    match error {
        WhatIfError::Refused(refused) => refusal(refused, book),
        WhatIfError::OverTheRim(brimful) => {
            let brimful = speaker.volume(*brimful);
            format!("The container holds {brimful} to the rim. Type less.")
        }
        WhatIfError::NothingPoured => "Something must be poured. Type more than zero.".to_string(),
        WhatIfError::Arithmetic(error) => overflow(*error),
    }
}
