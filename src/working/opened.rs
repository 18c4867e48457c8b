//! Opening a number to its working.

use super::shown::Offered;
use super::{OfOffer, Rule, Shown, Step, container, cost, packages, price, purchase, recipe, sizes};
use crate::book::{Book, Key};
use crate::drink::ledger::{Ledger, OfferError};

/// How a number came about. Returns `None` if there is no such number, as the margin of a drink
/// that has no price, or the fill target of one that has too few weighings.
///
/// # Errors
/// The [`OfferError`] for which it cannot be computed.
pub fn of(book: &Book, ledger: &Ledger, shown: Shown) -> Result<Option<Step>, OfferError> {
    match shown {
        Shown::Brimful(id) => container::brimful(at(book.container(id), Key::Container(id))?).map(Some),
        Shown::Poured(id) => container::poured(at(book.container(id), Key::Container(id))?).map(Some),
        Shown::Usable { ingredient, pack, stage, amount } => {
            let ingredient = at(book.ingredient(ingredient), Key::Ingredient(ingredient))?;
            let pack = ingredient.packs.iter().find(|it| it.id == pack);
            pack.map(|pack| purchase::usable(book, ingredient, pack, stage, amount)).transpose()
        }
        Shown::Piece(goods, pack) => {
            let pack = book.packs(goods).iter().find(|it| it.id == pack);
            pack.map(|pack| purchase::piece(goods, pack)).transpose()
        }
        Shown::Offer(id, of) => {
            let offered = Offered::new(book, ledger, id)?;
            match of {
                OfOffer::Factor => recipe::factor(&offered).map(Some),
                OfOffer::Written(line) => recipe::written(&offered, line),
                OfOffer::Liquid => recipe::liquid(&offered),
                OfOffer::Density => packages::density(&offered),
                OfOffer::InDrink(line) => recipe::in_drink(&offered, line),
                OfOffer::ToUse(line) => recipe::to_use(&offered, line),
                OfOffer::LineCost(line) => purchase::line_cost(&offered, line),
                OfOffer::PackagingCost(place) => purchase::packaging_cost(&offered, place),
                OfOffer::Time => cost::time(&offered).map(Some),
                OfOffer::Part(part) => cost::part(&offered, part).map(Some),
                OfOffer::Cost => cost::total(&offered).map(Some),
                OfOffer::Covered => cost::covered(&offered).map(Some),
                OfOffer::TargetWithoutTax => price::target_without_tax(&offered),
                OfOffer::Exact => price::exact(&offered),
                OfOffer::Suggested => Ok(price::suggested(&offered)),
                OfOffer::At(which, of) => price::at(&offered, which, of),
            }
        }
        Shown::Size(id, of) => sizes::size(book, ledger, id, of),
        Shown::Packaged(id, of) => packages::packaged(&Offered::new(book, ledger, id)?, of),
    }
}

/// A number's working, and after it those of all numbers that it refers to, each once.
///
/// # Errors
/// As [`of`].
pub fn opened(book: &Book, ledger: &Ledger, shown: Shown) -> Result<Vec<(Shown, Step)>, OfferError> {
    let mut wanted = vec![shown];
    let mut opened = Vec::new();
    let mut next = 0;
    while let Some(shown) = wanted.get(next).copied() {
        next = next.saturating_add(1);
        let Some(step) = of(book, ledger, shown)? else { continue };
        refers(&step, &mut wanted);
        opened.push((shown, step));
    }
    Ok(opened)
}

fn refers(step: &Step, wanted: &mut Vec<Shown>) {
    if let Rule::Opens(shown) = step.rule
        && !wanted.contains(&shown)
    {
        wanted.push(shown);
    }
    for before in &step.from {
        refers(before, wanted);
    }
}

fn at<T>(found: Option<T>, key: Key) -> Result<T, OfferError> {
    found.ok_or(OfferError::Missing(key))
}
