//! The texts that people read: names of choices, and errors in sentences that say what is
//! wrong, why, and how to mend it. The engine has variants; their words live here.

mod allergens;
mod batches;
mod book_files;
pub mod buying_list;
mod choices;
pub mod copies;
mod costs;
pub mod counter;
mod dates;
mod decisions;
mod examples;
mod faults;
mod ingredient_list;
mod jumps;
pub mod keeping;
mod kinds;
mod labels;
mod levers;
mod market;
mod measures;
mod offer_errors;
mod offers_csv;
mod packaged;
pub mod price_points;
pub mod quotes;
mod reading;
mod refusals;
pub mod restore_points;
mod sales;
mod salvage;
pub mod scenarios;
pub mod sharing;
mod sheets;
mod sizes;
mod speaker;
pub mod starting;
pub mod steps;
pub mod texts;
mod tolerances;
mod trials;
pub mod unfinished;
pub mod voice;
pub mod watch;
pub mod what_if;
mod working;
pub mod yield_log;

pub use allergens::{
    allergen, allergen_in_european_union, allergen_in_united_states, allergen_to_mark, allergens, allergens_by_law,
    allergens_marked, also_declare, besides_the_nine, of_law, tree_nuts, used_around,
};
pub use batches::{
    Batches, batch_deleted, batch_stands, change_number_of, counted, deducted, not_planned, number_of, station,
};
pub use book_files::{book_file_error, import_changes};
pub use choices::{
    commission_base, customer_pays_with_tax, drink_kind, fill_rule, ice_place, ice_use, keep_refrigerated, known,
    offer_status, overhead_per, packaging_part, produce, sales_tax, sales_tax_rate, scaling, service, stage, system,
    tax_place, treatment,
};
pub use costs::{cost_basis, leaves, margin_on, not_counted_yet, not_in_price, part, takes, target_margin};
pub use dates::{When, day, month, short_day, time_of_day};
pub use decisions::{Decisions, count, even_at, even_short, even_whole, of_100, people, sizes, to_cent};
pub use examples::Example;
pub use faults::fault;
pub use ingredient_list::{Run, ingredient_list, listed_name};
pub use jumps::{jump, left_doubtful};
pub use labels::{
    also_needed, book_cautions, caution, caution_by_law, how_juice_is_counted, keeping, label_error, label_facts_about,
    low_acid_above, name_with_juice, net_contents, net_contents_from, on_labels_about, percent_juice,
    sold_to_a_business, warning_sheet, weight_if_thick, where_it_holds,
};
pub use levers::{lever, lever_advice, lever_change, lever_set};
pub use market::{against_curve, curve, day_ahead, day_too_early, market, market_caution, no_curve};
pub use measures::{drink_density, juice_density, labor_per_volume, length_unit, unit};
pub use offer_errors::{fill_error, offer_error, price_error, scale_error};
pub use offers_csv::{offers_column, offers_csv};
pub use packaged::{
    accepted_share, fill_rule_means, fill_target_means, fill_to_means, measured_at, packaged_cautions, packaged_error,
};
pub use reading::{example, read_error, two_meanings};
pub use refusals::{called, called_first, refusal};
pub use sales::{
    bad_row, batch, not_counted, taken_in, till_error, to_take_in, unknown_sales, week, week_working, weekly_working,
    weeks_averaged,
};
pub use salvage::{further_not_taken, not_taken};
pub use sheets::{per_volume, per_volume_means, tax, tax_rate};
pub use sizes::{compared, extra_fees, largest_part, left_out, mean_price, scope, size_step, what_if_error};
pub use speaker::Speaker;
pub use starting::{brings, vessel};
pub use tolerances::{tolerance_rule, tolerance_rules, tolerance_source};
pub use trials::{trial_caution, trial_difference, trial_how, trial_interval, trial_left_out, verdict, verdict_means};
pub use working::Working;

use crate::foundation::measure::{Exact, Overflow, Share};
use crate::say;

/// What arithmetic refused, as a sentence.
pub fn overflow(overflow: Overflow) -> String {
    match overflow {
        Overflow::TooLarge => say!(first::numbers_too_large),
        Overflow::DivisionByZero => say!(first::zero_not_allowed),
        Overflow::RootOfNegative => say!(first::below_zero_not_allowed),
    }
    .to_string()
}

/// A count as sentences of the engine write it: "20,000".
fn number(count: usize) -> String {
    Speaker::plain().number(Exact::new(i64::try_from(count).unwrap_or(i64::MAX), 0))
}

/// A share as sentences of the engine write it, to 0.1 %.
fn percent(share: Share) -> String {
    Speaker::plain().percent(Share::from_fraction(share.fraction().rounded(3)))
}
