//! How the figure of a step follows from those before it.

use super::Working;
use crate::book::{FlatCost, Part};
use crate::foundation::measure::System;
use crate::say;
use crate::working::{Name, OfGoods, Rule, Step};

impl Working<'_> {
    /// How a step follows, in a sentence of its own. Returns `None` for a row of names and figures.
    pub(super) fn by_rule(&self, step: &Step) -> Option<String> {
        match step.name {
            Name::Of(_, of) => self.of_goods_by_rule(of, step),
            _ => self.of_drink_by_rule(step).or_else(|| self.of_packages_by_rule(step)),
        }
    }

    /// The figure of the step at a place before it.
    fn at(&self, step: &Step, place: usize) -> String {
        step.from.get(place).map(|before| self.figure(before)).unwrap_or_default()
    }

    fn of_goods_by_rule(&self, of: OfGoods, step: &Step) -> Option<String> {
        let (at, result) = (|place| self.at(step, place), self.figure(step));
        let by = match step.from.get(1).map(|before| before.name) {
            // A season's yield is a yield like another.
            Some(Name::Of(_, OfGoods::SeasonTrimYield)) => Some(OfGoods::TrimYield),
            Some(Name::Of(_, OfGoods::SeasonPressYield)) => Some(OfGoods::PressYield),
            Some(Name::Of(_, by)) => Some(by),
            _ => None,
        };
        Some(match (of, step.rule) {
            (OfGoods::Cost | OfGoods::UsableCost(_), _) => {
                say!(working::cost_from_pack, bought = at(0), pack = at(2), price = at(1), result = result)
            }
            (OfGoods::PieceCost, _) => say!(working::paid_by_piece, paid = at(0), pack = at(1), result = result),
            (OfGoods::Price, _) => say!(working::price_by_order, packs = at(0), result = result),
            (OfGoods::Bought | OfGoods::BoughtMass, _) => self.bought(by, step),
            (OfGoods::Mass(_), _) => self.mass(by, step),
            (OfGoods::Volume(_), Rule::Sum) => return None,
            (OfGoods::MeltedVolume | OfGoods::FrozenVolume, _) => {
                say!(working::share_at_density, weight = at(0), share = at(1), density = at(2), result = result)
            }
            (OfGoods::Volume(_), _) => say!(working::at_density, amount = at(0), density = at(1), result = result),
            (OfGoods::Space(_), _) => say!(working::with_air_blended_in, volume = at(0), air = at(1), result = result),
            (OfGoods::InDrink(_) | OfGoods::ToUse(_), Rule::Solved) => {
                say!(working::whole_pieces_that_fill, result = result)
            }
            (OfGoods::InDrink(_) | OfGoods::ToUse(_), Rule::Proportion) => {
                say!(working::fills_the_rest, recipe = at(0), fills = at(2), left = at(1), result = result)
            }
            (OfGoods::ToUse(_), Rule::Quotient) => {
                say!(working::before_loss, drink = at(0), kept = at(1), result = result)
            }
            (OfGoods::InDrink(_) | OfGoods::ToUse(_), _) if by == Some(OfGoods::Steps) => {
                say!(working::pieces_times_size, pieces = at(1), size = at(0), result = result)
            }
            (OfGoods::InDrink(_) | OfGoods::ToUse(_), _) => {
                say!(working::recipe_times, recipe = at(0), times = at(1), result = result)
            }
            (OfGoods::Steps, _) => say!(working::nearest_whole, pieces = at(0), result = result),
            (OfGoods::StepsBeforeRounding, _) => {
                say!(working::pieces_in_size, recipe = at(0), times = at(1), size = at(2), result = result)
            }
            _ => return None,
        })
    }

    /// How what must be bought follows; `by` is what it is divided by first.
    fn bought(&self, by: Option<OfGoods>, step: &Step) -> String {
        let (at, result) = (|place| self.at(step, place), self.figure(step));
        match (by, step.from.len()) {
            (Some(OfGoods::PressYield), 2) => {
                say!(working::by_juice_yield, juice = at(0), share = at(1), result = result)
            }
            (Some(OfGoods::PressYield), _) => {
                let (juice, trim) = (at(0), at(2));
                say!(working::by_juice_and_trim_yield, juice = juice, share = at(1), trim = trim, result = result)
            }
            (Some(OfGoods::SoakYield), 2) => {
                say!(working::by_soaked_weight, weight = at(0), share = at(1), result = result)
            }
            (Some(OfGoods::SoakYield), _) => {
                let (soaked, share) = (at(0), at(1));
                say!(
                    working::by_soaked_weight_and_trim_yield,
                    weight = soaked,
                    share = share,
                    trim = at(2),
                    result = result
                )
            }
            (Some(OfGoods::TrimYield), _) => {
                say!(working::by_trim_yield, trimmed = at(0), trim = at(1), result = result)
            }
            (Some(OfGoods::PieceWeight), _) => {
                say!(working::purchased_by_piece, amount = at(0), piece = at(1), result = result)
            }
            _ => say!(working::purchased_by_density, amount = at(0), density = at(1), result = result),
        }
    }

    /// How a mass follows; `by` is what comes second.
    fn mass(&self, by: Option<OfGoods>, step: &Step) -> String {
        let (at, result) = (|place| self.at(step, place), self.figure(step));
        match (by, step.from.len()) {
            (Some(OfGoods::JuiceDensity), _) => {
                say!(working::juice_at_density, juice = at(0), density = at(1), result = result)
            }
            (Some(OfGoods::PieceWeight), 2) => {
                say!(working::pieces_by_weight, pieces = at(0), piece = at(1), result = result)
            }
            (Some(OfGoods::PieceWeight), 3) => {
                let (pieces, piece) = (at(0), at(1));
                say!(
                    working::pieces_by_weight_and_yield,
                    pieces = pieces,
                    piece = piece,
                    share = at(2),
                    result = result
                )
            }
            (Some(OfGoods::PieceWeight), _) => say!(
                working::pieces_by_weight_and_yields,
                pieces = at(0),
                piece = at(1),
                trim = at(3),
                share = at(2),
                result = result
            ),
            (Some(OfGoods::Packing), _) => {
                say!(working::scoop_of_ice, scoop = at(0), solid = at(1), density = at(2), result = result)
            }
            _ => say!(working::at_density, amount = at(0), density = at(1), result = result),
        }
    }

    #[expect(clippy::too_many_lines, reason = "a table of sentences")]
    fn of_drink_by_rule(&self, step: &Step) -> Option<String> {
        let (at, result) = (|place| self.at(step, place), self.figure(step));
        let taxed = [Name::CustomerPays, Name::RevenueWithTax];
        let is_taxed = step.from.first().is_some_and(|first| taxed.contains(&first.name));
        Some(match (step.name, step.rule) {
            (Name::Poured, _) => {
                say!(working::brimful_less_headspace, brimful = at(0), headspace = at(1), result = result)
            }
            (Name::Brimful, _) if step.from.len() == 3 => {
                say!(working::cup_by_measures, base = at(0), rim = at(1), height = at(2), result = result)
            }
            (Name::Brimful, _) => say!(working::last_pour, result = result),
            (Name::Headspace, Rule::Product) => {
                say!(working::share_of_brimful, brimful = at(0), share = at(1), result = result)
            }
            (Name::Headspace, _) => say!(working::top_of_container, height = at(0), result = result),
            (Name::Factor | Name::FactorBeforeWhole, Rule::Quotient) => {
                say!(working::fill_by_recipe, left = at(0), recipe = at(1), result = result)
            }
            (Name::Factor | Name::FactorBeforeWhole, _) => {
                say!(working::recipe_that_fills, fill = at(0), result = result)
            }
            (Name::WithAir, _) => say!(working::whole_and_air, whole = at(0), air = at(1), result = result),
            (Name::Liquid | Name::DrinkDensity, _) => {
                say!(working::weight_by_volume, weight = at(0), volume = at(1), result = result)
            }
            (Name::Part(Part::Labour), _) => say!(working::time_at_wage, time = at(0), wage = at(1), result = result),
            (Name::TimeForVolume, _) if self.speaker.units() == System::UsCustomary => {
                say!(working::time_for_fill_by_gallon, time = at(0), fill = at(1), result = result)
            }
            (Name::TimeForVolume, _) => say!(working::time_for_fill, time = at(0), fill = at(1), result = result),
            (Name::TimeOfBatch, Rule::Proportion) => {
                say!(working::time_of_batch_by_volume, time = at(0), fill = at(1), batch = at(2), result = result)
            }
            (Name::TimeOfBatch, _) => say!(working::time_of_batch, time = at(0), drinks = at(1), result = result),
            (Name::Part(Part::Flat(FlatCost::Overhead)), Rule::Quotient) => {
                say!(working::overhead_of_week, overhead = at(0), drinks = at(1), result = result)
            }
            (Name::SoldInWeek, _) => say!(working::sold_in_week, result = result),
            (Name::Unsold(_) | Name::Part(Part::Unsold), _) => {
                say!(working::waste_per_drink, cost = at(0), waste = at(1), sold = at(2), result = result)
            }
            (Name::Free(_) | Name::Part(Part::Free), _) => {
                say!(working::free_per_drink, cost = at(0), free = at(1), paid = at(2), result = result)
            }
            (Name::FeeOfPrice, _) => say!(working::fee_on_price_and_tax, fee = at(0), taxed = at(1), result = result),
            (Name::Fee, _) => say!(working::share_of_customer_pays, share = at(1), pays = at(0), result = result),
            (Name::Commission, _) if is_taxed => {
                say!(working::share_of_customer_pays, share = at(1), pays = at(0), result = result)
            }
            (Name::Commission, _) => say!(working::share_of_price, share = at(1), price = at(0), result = result),
            (Name::CommissionOfPrice, _) => {
                say!(working::commission_on_price_and_tax, share = at(0), taxed = at(1), result = result)
            }
            (Name::FixedFeeOfDrink, _) => say!(working::fee_of_drink, fee = at(0), drinks = at(1), result = result),
            (Name::DepositFee, _) => say!(working::fee_on_deposit, deposit = at(0), share = at(1), result = result),
            (Name::DepositWithTax, _) => {
                say!(working::deposit_times_tax, deposit = at(0), taxed = at(1), result = result)
            }
            (Name::RevenueWithTax, _) => {
                say!(working::average_times_tax, price = at(0), taxed = at(1), result = result)
            }
            (Name::Revenue, _) => say!(working::price_times_paid, price = at(0), paid = at(1), result = result),
            (Name::PaidOfPrice, Rule::Product) => {
                say!(working::discounts_and_markdowns, discounts = at(0), markdowns = at(1), result = result)
            }
            (Name::LostToMarkdowns, _) => {
                say!(working::markdowns_of_drinks, drinks = at(0), cut = at(1), result = result)
            }
            (Name::WithTax, _) => say!(working::price_plus_tax, whole = at(0), tax = at(1), result = result),
            (Name::TargetWithoutTax, _) if step.from.len() > 2 => {
                say!(working::costs_by_share_and_paid, costs = at(0), share = at(1), paid = at(2), result = result)
            }
            (Name::TargetWithoutTax, _) => {
                say!(working::costs_by_share, costs = at(0), share = at(1), result = result)
            }
            (Name::Exact, Rule::Product) => {
                say!(working::target_times_tax, price = at(0), taxed = at(1), result = result)
            }
            (Name::WithoutTax, Rule::Quotient) => {
                say!(working::menu_price_without_tax, price = at(0), taxed = at(1), result = result)
            }
            (Name::Exact | Name::WithoutTax, _) => say!(working::no_tax_inside, result = result),
            (Name::Suggested, _) => say!(working::rounded_up, price = at(0), result = result),
            (Name::CustomerPays, Rule::Product) => {
                say!(working::menu_price_times_tax, price = at(0), taxed = at(1), result = result)
            }
            (Name::CustomerPays, _) => say!(working::nothing_added, result = result),
            (Name::Margin, _) => say!(working::margin_by_price, margin = at(0), price = at(1), result = result),
            (Name::PricePerVolume | Name::CostPerVolume | Name::ContributionPerVolume, _) => {
                say!(working::per_volume, money = at(0), fill = at(2), unit = at(1), result = result)
            }
            (Name::ContributionPerMinute, _) => {
                say!(working::per_labor_minute, profit = at(0), time = at(2), result = result)
            }
            (Name::AgainstSmallest, _) => {
                say!(working::against_smallest, price = at(0), smallest = at(1), result = result)
            }
            (Name::ExtraPrice | Name::ExtraCost | Name::ExtraContribution | Name::ExtraWithoutTax, _) => {
                say!(working::more_than_smaller, large = at(0), small = at(1), result = result)
            }
            (Name::CanBear | Name::MayCost, Rule::Product) => {
                say!(working::share_of_price_for_costs, price = at(0), share = at(1), result = result)
            }
            (Name::MadeMayCost, _) if step.from.len() > 2 => {
                let (paid, sold) = (at(1), at(2));
                say!(working::cost_per_drink_made_and_paid, cost = at(0), paid = paid, sold = sold, result = result)
            }
            (Name::MadeMayCost, _) if step.from.get(1).is_some_and(|it| it.name == Name::PaidShare) => {
                say!(working::cost_per_drink_paid, cost = at(0), paid = at(1), result = result)
            }
            (Name::MadeMayCost, _) => {
                say!(working::cost_per_drink_made, cost = at(0), sold = at(1), result = result)
            }
            (Name::KeptOfExtra, _) => say!(working::extra_kept, profit = at(0), price = at(1), result = result),
            _ => return None,
        })
    }

    fn of_packages_by_rule(&self, step: &Step) -> Option<String> {
        let (at, result, count) = (|place| self.at(step, place), self.figure(step), step.from.len());
        let by_average = step.from.first().is_some_and(|first| first.name == Name::ForAverage);
        Some(match (step.name, step.rule) {
            (Name::FillTarget, Rule::Larger) if by_average => {
                say!(working::larger_of_averages, average = at(0), single = at(1), result = result)
            }
            (Name::FillTarget, Rule::Larger) => {
                say!(working::larger_of_size, size = at(0), single = at(1), result = result)
            }
            (Name::FillTarget | Name::ForAverage, _) if count > 1 => {
                say!(working::size_plus_average, size = at(0), more = at(1), result = result)
            }
            (Name::FillTarget, _) => say!(working::labeled_size_only, result = result),
            (Name::DeclaredMeasured | Name::ToleratedMeasured, _) => {
                say!(working::by_water, size = at(0), law = at(1), measured = at(2), result = result)
            }
            (Name::ForBatch, _) => say!(working::single_by_root, single = at(0), root = at(1), result = result),
            (Name::BatchRoot, _) => say!(working::root_of, packages = at(0), result = result),
            (Name::LeastInPackage, _) => {
                say!(working::size_less_tolerance, size = at(0), tolerance = at(1), result = result)
            }
            (Name::WithSpread, _) => say!(working::least_plus_spread, least = at(0), more = at(1), result = result),
            (Name::ForSpread | Name::OverTarget, _) => {
                say!(working::spreads_times, times = at(1), spread = at(0), result = result)
            }
            (Name::GiveawayCost, _) => {
                say!(working::giveaway_in_ingredients, cost = at(0), fill = at(2), giveaway = at(1), result = result)
            }
            (Name::GiveawayCostInAYear, _) => {
                say!(working::giveaway_in_a_year, cost = at(0), packages = at(1), result = result)
            }
            (Name::Yearly, _) => say!(working::weeks_times, drinks = at(0), weeks = at(1), result = result),
            (Name::NetVolume, _) => say!(working::at_density, amount = at(0), density = at(1), result = result),
            (Name::Mean, _) => say!(working::average_of, weighings = count, result = result),
            (Name::Spread, _) => say!(working::spread_of, weighings = count, result = result),
            _ => return None,
        })
    }
}
