//! Recipes at a size, and what they cost.

use brimwright::book::{CostBasis, Edit, Goods, IcePlace, Part, Scaling};
use brimwright::drink::fill::{Scaled, fill as poured};
use brimwright::foundation::measure::{Exact, Money, Volume};
use proptest::prelude::*;

use crate::books::{fill, money};
use crate::menus::{menu, times};
use crate::near;

fn sum(amounts: impl IntoIterator<Item = Money>) -> Money {
    amounts.into_iter().try_fold(Money::ZERO, Money::plus).unwrap()
}

/// What the lines take, and the air in them.
fn together(scaled: &Scaled) -> Volume {
    scaled.lines.iter().map(|line| line.volume).try_fold(scaled.air, Volume::plus).unwrap()
}

proptest! {
    #[test]
    fn the_lines_and_their_air_fill_the_drink(menu in menu(), other in fill()) {
        let whole = poured(menu.container()).unwrap().volume;
        let at_whole = menu.scaled_to(whole).expect("a menu's drink can be made");
        prop_assert!(near(together(&at_whole).millilitres(), whole.millilitres(), "0.000000001"));
        if let Some(scaled) = menu.scaled_to(other) {
            prop_assert!(near(together(&scaled).millilitres(), other.millilitres(), "0.000000001"));
        }
    }

    /// Air is the drink's share of what is mixed: of all lines but ice that stays in the glass.
    #[test]
    fn air_is_beaten_into_what_is_mixed(menu in menu()) {
        let scaled = menu.priced().scaled;
        let mixed = |place: IcePlace| place == IcePlace::BlendedIn;
        let lines = scaled.lines.iter().filter(|line| line.ice.is_none_or(|ice| mixed(ice.place)));
        let volume = lines.map(|line| line.volume).try_fold(Volume::ZERO, Volume::plus).unwrap();
        let air = volume.times(menu.drink().air.fraction()).unwrap();
        prop_assert!(near(air.millilitres(), scaled.air.millilitres(), "0.000000001"));
    }

    #[test]
    fn lines_follow_the_size_as_they_should(menu in menu()) {
        let scaled = menu.priced().scaled;
        for (line, written) in scaled.lines.iter().zip(&menu.drink().lines) {
            let amount = written.amount.measure().unwrap();
            match written.scaling {
                Scaling::Fixed => prop_assert_eq!(line.in_drink, amount),
                Scaling::InProportion => prop_assert_eq!(line.in_drink, amount.times(scaled.factor).unwrap()),
                Scaling::TopUp => prop_assert!(!line.in_drink.base().is_negative()),
                Scaling::Stepped(step) => {
                    let step = step.measure().unwrap().base();
                    let steps = line.in_drink.base().over(step).unwrap().rounded(0);
                    prop_assert_eq!(line.in_drink.base(), step.times(steps).unwrap(), "whole steps");
                    // Half a step off at most, within what division leaves.
                    let off = amount.times(scaled.factor).unwrap().base().minus(line.in_drink.base()).unwrap();
                    let most = step.over(Exact::from(2)).unwrap().plus(Exact::new(1, 12)).unwrap();
                    prop_assert!(off.abs() <= most, "{} of steps of {}", off, step);
                }
            }
        }
    }

    #[test]
    fn what_is_used_less_the_loss_is_in_the_drink(menu in menu()) {
        let kept = menu.drink().process_loss.rest().unwrap().fraction();
        for line in menu.priced().scaled.lines {
            prop_assert_eq!(line.to_use.dimension(), line.in_drink.dimension());
            // Ice that is put into the glass was never in the press or jug.
            let mixed = line.ice.is_none_or(|ice| ice.place == IcePlace::BlendedIn);
            let kept = if mixed { kept } else { Exact::ONE };
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
        prop_assert_eq!(cost.covered(CostBasis::Everything).unwrap(), total);
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
        let price = pack.price_now().plus(more).unwrap();
        menu.book.apply(&Edit::SetPackPrice { goods, pack: pack.id, price, day: None }).unwrap();
        prop_assert!(menu.priced().cost.total().unwrap() >= before);
    }

    /// Where a top-up makes room for a step, the drink may become cheaper; else it never does.
    #[test]
    fn a_larger_fill_never_costs_less(menu in menu(), fill in fill(), factor in times()) {
        prop_assume!(!(menu.has_steps() && menu.has_top_up()));
        let larger = fill.times(factor.plus(Exact::ONE).unwrap()).unwrap();
        let (Some(small), Some(large)) = (menu.cost_at(fill), menu.cost_at(larger)) else { return Ok(()) };
        prop_assert!(large.total().unwrap() >= small.total().unwrap());
    }
}
