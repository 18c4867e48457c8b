//! Recipes at a size, and what they cost.

use brimwright::book::{CostBasis, Edit, FlatCost, Goods, Line, OverheadPer, Part, Scaling};
use brimwright::drink::fill::{Scaled, fill as poured, mass_of_ice};
use brimwright::drink::yields::mass_at;
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

    /// Air is the drink's share of what is mixed: of all lines but those that go straight into the glass.
    #[test]
    fn air_is_beaten_into_what_is_mixed(menu in menu()) {
        let scaled = menu.priced().scaled;
        let lines = scaled.lines.iter().filter(|line| line.mixed);
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
                    prop_assert!(!steps.is_negative());
                    // Alone in steps, it is half a step off at most, within what division leaves; fewer steps are
                    // taken only where one more would not fit (tests/property/steps.rs has the rule for several).
                    let in_steps = |line: &Line| matches!(line.scaling, Scaling::Stepped(_));
                    let alone = menu.drink().lines.iter().filter(|line| in_steps(line)).count() == 1;
                    // Where ice floats, steps are counted as if it floated in the recipe as written.
                    let alone = alone && !menu.has_floating_ice();
                    let off = amount.times(scaled.unrounded).unwrap().base().minus(line.in_drink.base()).unwrap();
                    let most = step.over(Exact::from(2)).unwrap().plus(Exact::new(1, 12)).unwrap();
                    prop_assert!(!alone || off >= most.negated(), "{} of steps of {}", off, step);
                    if alone && off > most && steps.is_positive() {
                        // A top-up alone makes room; the lines in proportion keep their share then.
                        let tops_up = scaled.lines.iter().any(|it| it.scaling == Scaling::TopUp);
                        let yields = if tops_up { Scaling::TopUp } else { Scaling::InProportion };
                        let others = scaled.lines.iter().filter(|it| it.scaling == yields);
                        let room = others.map(|it| it.volume).try_fold(Volume::ZERO, Volume::plus).unwrap();
                        let one = line.volume.over(steps).unwrap();
                        let airy = Exact::ONE.plus(menu.drink().air.fraction()).unwrap();
                        prop_assert!(room.millilitres() < one.times(airy).unwrap().millilitres(), "{} steps", steps);
                    }
                }
            }
        }
    }

    /// Ice floats in the liquid that is poured with it: the density that its room was figured with is that of the
    /// other lines at this size, by their own masses and volumes.
    #[test]
    fn ice_floats_in_what_is_poured(menu in menu(), other in fill()) {
        let Some(scaled) = menu.scaled_to(other) else { return Ok(()) };
        prop_assert_eq!(scaled.liquid.is_some(), menu.has_floating_ice());
        let Some(liquid) = scaled.liquid else { return Ok(()) };
        let (mut mass, mut space) = (Exact::ZERO, Exact::ZERO);
        let airy = Exact::ONE.plus(menu.drink().air.fraction()).unwrap();
        for (line, written) in scaled.lines.iter().zip(&menu.drink().lines) {
            let ingredient = menu.book.ingredient(line.ingredient).unwrap();
            match written.ice {
                Some(ice) if ice.place != brimwright::book::IcePlace::BlendedIn => continue,
                Some(ice) => mass = mass.plus(mass_of_ice(ingredient, ice, line.in_drink).unwrap().grams()).unwrap(),
                None => mass = mass.plus(mass_at(ingredient, line.stage, line.in_drink).unwrap().grams()).unwrap(),
            }
            let by = if line.mixed { airy } else { Exact::ONE };
            space = space.plus(line.volume.millilitres().times(by).unwrap()).unwrap();
        }
        if space.is_positive() {
            let poured = mass.over(space).unwrap();
            prop_assert!(near(poured, liquid.grams_per_millilitre(), "0.00000001"), "{} and {:?}", poured, liquid);
        }
    }

    #[test]
    fn what_is_used_less_the_loss_is_in_the_drink(menu in menu()) {
        let kept = menu.drink().process_loss.rest().unwrap().fraction();
        for (line, written) in menu.priced().scaled.lines.iter().zip(&menu.drink().lines) {
            prop_assert_eq!(line.to_use.dimension(), line.in_drink.dimension());
            // What is put into the glass was never in the press or jug.
            let ice_in_glass = written.ice.is_some_and(|ice| ice.place != brimwright::book::IcePlace::BlendedIn);
            prop_assert_eq!(line.mixed, !written.in_glass && !ice_in_glass);
            let kept = if line.mixed { kept } else { Exact::ONE };
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
        let total = cost.total();
        prop_assert_eq!(sum(parts), total);
        prop_assert_eq!(cost.covered(CostBasis::Everything), total);
        for amount in parts.into_iter().chain(cost.lines.iter().map(|line| line.cost)) {
            prop_assert!(amount.major().places() <= 12, "{}", amount.major());
        }
    }

    /// What is handed out free is its share of all that is handed out, and what is thrown away the share of all
    /// that is made; overhead figured on drinks sold is raised by neither. Each of the three groups is rounded at
    /// the twelfth decimal.
    #[test]
    fn the_parts_that_nobody_pays_for_are_their_shares_of_the_cost(menu in menu()) {
        let settings = menu.book.settings();
        let unsold = menu.drink().unsold.unwrap_or(settings.unsold).fraction();
        let cost = menu.priced().cost;
        let [overhead, wasted, free] = [Part::Flat(FlatCost::Overhead), Part::Unsold, Part::Free]
            .map(|part| cost.part(part).unwrap());
        let mut handed_out = cost.total();
        if settings.overhead_per != OverheadPer::DrinkMade {
            handed_out = handed_out.minus(overhead).unwrap();
        }
        let of_free = handed_out.times(settings.reductions.free.fraction()).unwrap();
        prop_assert!(near(free.major(), of_free.major(), "0.000000000004"));
        let of_made = handed_out.minus(free).unwrap().times(unsold).unwrap();
        prop_assert!(near(wasted.major(), of_made.major(), "0.000000000004"));
    }

    #[test]
    fn a_dearer_pack_never_makes_a_cheaper_drink(mut menu in menu(), which in 0..3_usize, more in money(50)) {
        let before = menu.priced().cost.total();
        let ingredient = menu.book.ingredients().nth(which).unwrap();
        let (goods, pack) = (Goods::Ingredient(ingredient.id), ingredient.packs[0].clone());
        let price = pack.price_now().plus(more).unwrap();
        menu.book.apply(&Edit::SetPackPrice { goods, pack: pack.id, price, day: None }).unwrap();
        prop_assert!(menu.priced().cost.total() >= before);
    }

    /// Where another line makes room for a step, the drink may become cheaper, and where floating ice makes room for
    /// a denser liquid; else it never does.
    #[test]
    fn a_larger_fill_never_costs_less(menu in menu(), fill in fill(), factor in times()) {
        prop_assume!(!menu.has_steps() && !menu.has_floating_ice());
        let larger = fill.times(factor.plus(Exact::ONE).unwrap()).unwrap();
        let (Some(small), Some(large)) = (menu.cost_at(fill), menu.cost_at(larger)) else { return Ok(()) };
        prop_assert!(large.total() >= small.total());
    }
}
