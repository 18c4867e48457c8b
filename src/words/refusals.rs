//! Why an edit was refused.

use super::kinds::kind;
use super::{Example, Speaker, batch, measures, sales_tax, week};
use crate::book::{Book, Field, Key, Problem, Refusal};
use crate::drink::label::Law;
use crate::foundation::measure::System;
use crate::say;

/// The sentence for a refused edit.
pub fn refusal(refusal: &Refusal, book: &Book) -> String {
    match refusal {
        Refusal::Missing { key, needed_by: None } => say!(refusals::no_longer_in_the_book, kind = kind(*key)),
        Refusal::Missing { key, needed_by: Some(user) } => {
            let called = called(book, *user);
            let user = if called.trim_matches([',', ' ']).is_empty() { kind(*user) } else { &called };
            say!(refusals::needs_first, user = user, needed = kind(*key))
        }
        Refusal::InUse { key, by } => {
            let users: Vec<String> = by.iter().take(3).map(|user| called(book, *user)).collect();
            let more = by.len().saturating_sub(users.len());
            let (name, users) = (book.name(*key), users.join("; "));
            match more {
                0 => say!(refusals::in_use, name = name, users = users),
                more => say!(refusals::in_use_and_more, name = name, users = users, more = super::number(more)),
            }
        }
        Refusal::Field { field, problem, .. } => {
            problem_at(*field, *problem, book.settings().units, Law::of(book.settings()))
        }
    }
}

/// What stands at `key`, as a person would call it.
pub fn called(book: &Book, key: Key) -> String {
    match key {
        Key::Week(monday) => week(monday),
        Key::Batch(day) => batch(day),
        Key::BuyingList => say!(refusals::the_buying_list).to_string(),
        key => book.name(key),
    }
}

/// The same at the beginning of a sentence, or where it stands alone.
pub fn called_first(book: &Book, key: Key) -> String {
    match key {
        Key::BuyingList => say!(refusals::buying_list).to_string(),
        key => called(book, key),
    }
}

/// What is wrong with a field, and how to mend it.
pub(super) fn problem_at(field: Field, problem: Problem, units: System, law: Law) -> String {
    let field = name(field, units, law);
    let example = |example: Example| example.said(&Speaker::plain_in(units));
    match problem {
        Problem::Empty => say!(refusals::blank, field = field),
        Problem::TooLong => say!(refusals::too_long, field = field),
        Problem::NotPositive => say!(refusals::not_positive, field = field),
        Problem::Negative => say!(refusals::negative, field = field),
        Problem::NotAYield => say!(refusals::not_a_yield, field = field),
        Problem::NotAPart => say!(refusals::not_a_part, field = field),
        Problem::TwoRates => say!(refusals::two_rates, field = field),
        Problem::NotAShare => say!(refusals::not_a_share, field = field),
        Problem::NotAVolume => say!(refusals::not_a_volume, field = field),
        Problem::NotACount => say!(refusals::not_a_count, field = field),
        Problem::NothingFits => say!(refusals::nothing_fits, field = field),
        Problem::MoreThanBrimful => say!(refusals::more_than_brimful, field = field),
        Problem::LessThanOne => say!(refusals::less_than_one, field = field),
        Problem::NotAnEnding => {
            say!(refusals::not_an_ending, field = field, example = example(Example::PriceEndings))
        }
        Problem::TooLarge => say!(refusals::too_large, field = field),
        Problem::NoHeights => say!(refusals::no_heights, field = field),
        Problem::TooFew => say!(refusals::too_few, field = field),
        Problem::Falls(place) => say!(refusals::falls, field = field, number = place.to_string()),
        Problem::NotAboveOne => say!(refusals::not_above_one, field = field),
        Problem::AnotherKind => say!(refusals::another_kind, field = field),
        Problem::MoreThanOne => say!(refusals::more_than_one, field = field),
        Problem::NeitherWeightNorVolume => {
            let [volume, weight] = [Example::NetVolume, Example::NetWeight].map(example);
            say!(refusals::neither_weight_nor_volume, field = field, volume = volume, weight = weight)
        }
        Problem::NotAPacking => say!(refusals::not_a_packing, field = field),
        Problem::NotAMonday => say!(refusals::not_a_monday, field = field),
        Problem::NotAfter => say!(refusals::not_after, field = field),
        Problem::NotAWeight => say!(refusals::not_a_weight, field = field),
        Problem::MoreThanBefore => say!(refusals::more_than_before, field = field),
        Problem::NotWhole => say!(refusals::not_whole, field = field),
        Problem::LongerThanALabel => say!(refusals::too_long_for_label, field = field),
        Problem::NotAPh => say!(refusals::not_a_ph, field = field, example = example(Example::Ph)),
        Problem::NotMeasuredThere => say!(refusals::not_measured_there, field = field),
        Problem::TooManyDays => say!(refusals::too_many_days, field = field),
        Problem::Twice => say!(refusals::listed_twice, field = field),
    }
}

/// A field by its name.
fn name(field: Field, units: System, law: Law) -> &'static str {
    match field {
        Field::Name => say!(common::name),
        Field::TrimYield => say!(goods::trim_yield),
        Field::PressYield => say!(goods::juice_yield),
        Field::SoakYield => say!(goods::soaked_weight),
        Field::Density => measures::drink_density(units),
        Field::JuiceDensity => measures::juice_density(units),
        Field::PieceWeight => say!(goods::piece_weight),
        Field::Contents => say!(goods::pack_size),
        Field::PackPrice => say!(goods::case_price),
        Field::Surcharge => say!(goods::delivery_or_deposit),
        Field::Supplier => say!(goods::supplier),
        Field::Brimful => say!(goods::brimful_capacity),
        Field::Declared => say!(labels::labeled_size),
        Field::Headspace => say!(labels::headspace),
        Field::Base => say!(goods::base_width),
        Field::Rim => say!(goods::rim_width),
        Field::Height => say!(goods::inside_height),
        Field::Readings => say!(refusals::reading),
        Field::AtATime => say!(goods::packs_per_order),
        Field::TierFrom => say!(goods::minimum_packs),
        Field::TierPrice => say!(goods::volume_price),
        Field::Allergens => say!(labels::allergens),
        Field::Nuts => say!(labels::which_nuts),
        Field::Parts => say!(labels::parts),
        Field::SoldAs => say!(goods::name_on_labels),
        Field::Air => say!(drinks::air),
        Field::Step => say!(drinks::piece_size),
        Field::TopUp => say!(refusals::fill_to_the_line),
        Field::Packing => say!(drinks::ice_packing),
        Field::Allowed => say!(labels::allowed_variation),
        Field::LeastHeadspace => say!(labels::room_for_closure),
        Field::BatchSize => say!(labels::packages_per_batch),
        Field::MeasuredAt => say!(labels::measured_at),
        Field::Weekly => say!(common::drinks_sold_per_week),
        Field::Net => say!(labels::package_net_contents),
        Field::SetCount => say!(goods::amount_per_drink),
        Field::Reference => say!(drinks::recipe_makes),
        Field::LineAmount => say!(drinks::recipe_amount),
        Field::ProcessLoss => say!(drinks::press_or_pour_loss),
        Field::PerDrink => say!(drinks::labor_per_drink),
        Field::PerLitre => measures::labor_per_volume(units),
        Field::PerBatch => say!(drinks::labor_per_batch),
        Field::Batch => say!(drinks::drinks_per_batch),
        Field::FlatCost(cost) => super::costs::flat_cost(cost),
        Field::Unsold => say!(drinks::waste),
        Field::Target => say!(common::target_margin),
        Field::Ph => say!(labels::measured_ph),
        Field::KeepsDays => say!(labels::use_within),
        Field::Price => say!(drinks::menu_price),
        Field::TaxRate => sales_tax(law),
        Field::TaxByKind => say!(book::tax_by_kind),
        Field::FeeShare => say!(book::card_fee),
        Field::FeeFixed => say!(common::fee_per_transaction),
        Field::FeeDrinks => say!(book::drinks_per_payment),
        Field::Commission => say!(book::app_commission),
        Field::Wage => say!(book::hourly_wage),
        Field::Endings => say!(book::price_endings),
        Field::TillColumn => say!(refusals::register_column),
        Field::Monday => say!(refusals::week),
        Field::Units => say!(sales::drinks_sold),
        Field::Contribution => say!(common::profit_per_drink),
        Field::Place => say!(decide::place),
        Field::Size => say!(common::size),
        Field::Start => say!(sales::change_starts),
        Field::Last => say!(sales::last_week),
        Field::Offers => say!(counter::sizes),
        Field::PriceDay => say!(refusals::price_date),
        Field::EarlierPrice => say!(refusals::earlier_price),
        Field::OnHand => say!(counter::on_hand),
        Field::WeighedBought => say!(goods::weight_as_purchased),
        Field::WeighedTrimmed => say!(goods::trimmed_weight),
        Field::WeighedPressed => say!(goods::juice_weight),
        Field::Makes => say!(counter::drinks_to_make),
        Field::OffShelf => say!(refusals::from_the_shelf),
        Field::Ready => say!(refusals::ready),
        Field::PacksToBuy => say!(refusals::packs_to_buy),
        Field::Paid => say!(refusals::price_paid),
        Field::PriceDays => say!(book::flag_prices_older),
        Field::ScaleStep => say!(book::scale_rounds_to),
        Field::JugStep => say!(book::cup_marks),
        Field::Discounts => say!(book::discounts),
        Field::FreeDrinks => say!(book::free_drinks),
        Field::MarkedDown => say!(book::marked_down),
        Field::MarkedDownTo => say!(book::marked_down_to),
        Field::BatchVolume => say!(drinks::batch_volume),
        Field::Melted => say!(drinks::ice_melted),
        Field::Deposit => say!(goods::deposit),
        Field::SeasonTrimYield => say!(goods::season_trim_yield),
        Field::SeasonPressYield => say!(goods::season_juice_yield),
        Field::StartingFigure => say!(goods::starting_figure),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{buying_list, ingredient_id};

    #[test]
    fn the_buying_list_has_a_capital_only_where_it_stands_first() {
        let book =
            crate::support::book(crate::support::settings(), [crate::book::Record::BuyingList(buying_list(&[]))]);
        assert_eq!(called(&book, Key::BuyingList), "the buying list");
        assert_eq!(called_first(&book, Key::BuyingList), "The buying list");
        let missing = Refusal::Missing { key: Key::Ingredient(ingredient_id(1)), needed_by: Some(Key::BuyingList) };
        assert_eq!(refusal(&missing, &book), "Missing for the buying list: ingredient. Add that first.");
    }
}
