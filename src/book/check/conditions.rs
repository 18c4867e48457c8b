//! Checks of what a scenario takes to be other than in the book.

use super::goods::id_of_goods;
use super::values::{Checked, a_share, distinct, id, keeps, not_negative, volume};
use crate::book::{Conditions, Field};
use crate::foundation::measure::Exact;

/// Checks conditions. They are not read with the book, so whoever reads them from outside asks this.
///
/// # Errors
/// The first field that does not hold, and what is wrong with it.
pub(crate) fn conditions(record: &Conditions) -> Checked {
    // Ingredients cost nothing at the least.
    not_negative(Exact::ONE.plus(record.ingredients.fraction()).unwrap_or(Exact::ONE), Field::PackPrice)?;
    keeps(record.ingredients.fraction(), Field::PackPrice)?;
    for bought in &record.bought {
        bought.price.map_or(Ok(()), |price| not_negative(price.major(), Field::PackPrice))?;
    }
    distinct(record.bought.iter().map(|bought| id_of_goods(bought.goods, None)), Field::PackPrice)?;
    record.target.map_or(Ok(()), |share| a_share(share, Field::Target))?;
    record.waste.map_or(Ok(()), |share| a_share(share, Field::Unsold))?;
    record.wage.map_or(Ok(()), |wage| not_negative(wage.major(), Field::Wage))?;
    record.card_fee.map_or(Ok(()), |share| a_share(share, Field::FeeShare))?;
    record.commission.map_or(Ok(()), |share| a_share(share, Field::Commission))?;
    for filled in &record.fills {
        volume(filled.fill, Field::Allowed)?;
    }
    distinct(record.fills.iter().map(|filled| id(filled.container.number())), Field::Allowed)
}
