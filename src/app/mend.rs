//! Where that is mended for which an offer cannot be computed.

use super::route::Route;
use crate::book::{DrinkId, Goods, Key};
use crate::drink::cost::CostError;
use crate::drink::fill::FillError;
use crate::drink::ledger::OfferError;

/// The page with the field to fill: the recipe for all that a line lacks, else the container or the goods.
/// Returns `None` where no field mends it.
pub const fn mended_at(error: &OfferError, drink: DrinkId) -> Option<Route> {
    match error {
        OfferError::Fill(
            FillError::NotAVolume(id)
            | FillError::NothingFits(id)
            | FillError::NoHeights(id)
            | FillError::OverTheRim { container: id, .. },
        ) => Some(Route::Container(*id)),
        OfferError::Cost(CostError::NoPack(Goods::Ingredient(id))) => Some(Route::Ingredient(*id)),
        OfferError::Cost(CostError::NoPack(Goods::Packaging(id))) => Some(Route::Packaging(*id)),
        OfferError::Scale(_)
        | OfferError::Cost(CostError::Yield(_) | CostError::Missing(Key::Ingredient(_)))
        | OfferError::Missing(Key::Container(_)) => Some(Route::Drink(drink)),
        OfferError::Fill(FillError::Arithmetic(_))
        | OfferError::Cost(CostError::Missing(_) | CostError::Arithmetic(_))
        | OfferError::Missing(_)
        | OfferError::Arithmetic(_) => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::drink::yields::YieldError;
    use crate::support::{container_id, drink_id, ingredient_id, packaging_id};

    #[test]
    fn what_is_missing_has_a_page_with_its_field() {
        let id = drink_id(1);
        let at = |error| mended_at(&error, id);
        let dense = YieldError::NoDensity(ingredient_id(2));
        assert_eq!(at(OfferError::Scale(dense.into())), Some(Route::Drink(id)));
        assert_eq!(at(OfferError::Cost(dense.into())), Some(Route::Drink(id)));
        let pack = |goods| OfferError::Cost(CostError::NoPack(goods));
        assert_eq!(at(pack(Goods::Ingredient(ingredient_id(2)))), Some(Route::Ingredient(ingredient_id(2))));
        assert_eq!(at(pack(Goods::Packaging(packaging_id(3)))), Some(Route::Packaging(packaging_id(3))));
        let full = OfferError::Fill(FillError::NothingFits(container_id(4)));
        assert_eq!(at(full), Some(Route::Container(container_id(4))));
        assert_eq!(at(OfferError::Missing(Key::Drink(id))), None);
    }
}
