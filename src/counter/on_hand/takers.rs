//! Which drinks take something of what is here.

use super::goods_of;
use crate::book::{Book, DrinkId, Goods, OfferId};
use crate::drink::ledger::Ledger;
use crate::drink::make::needs;
use crate::foundation::measure::{Exact, Overflow};

/// The drinks among these that take some of the goods, each once and in their order.
///
/// # Errors
/// [`Overflow`] if an amount leaves the range of [`Exact`].
pub fn takers(book: &Book, ledger: &Ledger, offers: &[OfferId], goods: Goods) -> Result<Vec<DrinkId>, Overflow> {
    let mut found: Vec<DrinkId> = Vec::new();
    for offer in offers.iter().filter(|offer| book.offer(**offer).is_some()) {
        let one = needs(book, ledger, &mut std::iter::once((*offer, Exact::ONE)))?;
        if !found.contains(&offer.drink) && goods_of(&one).any(|it| it == goods) {
            found.push(offer.drink);
        }
    }
    Ok(found)
}
