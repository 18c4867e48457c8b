//! Recipes at a size, and what they cost.

use brimwright::book::{Covers, Edit, Goods};
use brimwright::cost::Part;
use brimwright::measure::{Exact, Money, Volume};
use proptest::prelude::*;

use crate::books::{fill, money};
use crate::menus::{menu, times};
use crate::near;

fn sum(amounts: impl IntoIterator<Item = Money>) -> Money {
    amounts.into_iter().try_fold(Money::ZERO, Money::plus).unwrap()
}

proptest! {
    #[test]
    fn the_lines_fill_the_drink(menu in menu(), fill in fill()) {
        let scaled = menu.scaled_to(fill);
        let volumes = scaled.lines.iter().map(|line| line.volume);
        let together = volumes.into_iter().try_fold(Volume::ZERO, Volume::plus).unwrap();
        prop_assert!(near(together.millilitres(), fill.millilitres(), "0.000000001"));
        prop_assert_eq!(scaled.in_proportion.plus(scaled.fixed), Ok(fill));
    }

    #[test]
    fn what_is_used_less_the_loss_is_in_the_drink(menu in menu(), fill in fill()) {
        let kept = menu.drink().process_loss.rest().unwrap().fraction();
        for line in menu.scaled_to(fill).lines {
            prop_assert_eq!(line.to_use.dimension(), line.in_drink.dimension());
            prop_assert!(near(line.to_use.times(kept).unwrap().base(), line.in_drink.base(), "0.000000001"));
        }
    }

    #[test]
    fn the_breakdown_sums_to_the_cost_exactly(menu in menu()) {
        let priced = menu.priced();
        let cost = &priced.cost;
        prop_assert_eq!(sum(cost.lines.iter().map(|line| line.cost)), cost.part(Part::Ingredients).unwrap());
        prop_assert_eq!(sum(cost.packaging.iter().map(|piece| piece.cost)), cost.part(Part::ContainerSet).unwrap());
        let parts = Part::ALL.map(|part| cost.part(part).unwrap());
        let total = cost.total().unwrap();
        prop_assert_eq!(sum(parts), total);
        prop_assert_eq!(cost.covered(Covers::Everything).unwrap(), total);
        for amount in parts.into_iter().chain(cost.lines.iter().map(|line| line.cost)) {
            prop_assert!(amount.major().places() <= 12, "{}", amount.major());
        }
    }

    /// What is thrown away is the book's share of all that is made; each of its three groups is
    /// rounded at the twelfth decimal.
    #[test]
    fn the_unsold_part_is_its_share_of_the_cost(menu in menu()) {
        let unsold = menu.drink().unsold.unwrap_or(menu.book.settings().unsold).fraction();
        let cost = menu.priced().cost;
        let share_of_all = cost.total().unwrap().times(unsold).unwrap();
        prop_assert!(near(cost.part(Part::Unsold).unwrap().major(), share_of_all.major(), "0.000000000002"));
    }

    #[test]
    fn a_dearer_pack_never_makes_a_cheaper_drink(mut menu in menu(), which in 0..3_usize, more in money(50)) {
        let before = menu.priced().cost.total().unwrap();
        let ingredient = menu.book.ingredients().nth(which).unwrap();
        let (goods, pack) = (Goods::Ingredient(ingredient.id), ingredient.packs[0].clone());
        let price = pack.price.plus(more).unwrap();
        menu.book.apply(&Edit::SetPackPrice { goods, pack: pack.id, price }).unwrap();
        prop_assert!(menu.priced().cost.total().unwrap() >= before);
    }

    #[test]
    fn a_larger_fill_never_costs_less(menu in menu(), fill in fill(), factor in times()) {
        let larger = fill.times(factor.plus(Exact::ONE).unwrap()).unwrap();
        prop_assert!(menu.cost_at(larger).total().unwrap() >= menu.cost_at(fill).total().unwrap());
    }
}
