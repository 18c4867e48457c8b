//! Checks of the settings.

use super::values::{Checked, a_share, a_yield, all_different, hold, keeps, mass, name, not_negative, volume};
use crate::book::{Entered, Field, FlatCost, Problem, Reductions, Settings, TillColumns};
use crate::foundation::measure::{Exact, is_seen};

pub(super) fn settings(record: &Settings) -> Checked {
    name(&record.name)?;
    not_negative(record.tax.rate.fraction(), Field::TaxRate)?;
    for of_kind in &record.tax_by_kind {
        not_negative(of_kind.rate.fraction(), Field::TaxByKind)?;
    }
    let mut kinds = record.tax_by_kind.iter().map(|of_kind| of_kind.kind);
    hold(all_different(&mut kinds), Field::TaxByKind, Problem::TwoRates)?;
    a_share(record.payment_fee.share, Field::FeeShare)?;
    not_negative(record.payment_fee.fixed.major(), Field::FeeFixed)?;
    hold(record.payment_fee.drinks >= Exact::ONE, Field::FeeDrinks, Problem::LessThanOne)?;
    keeps(record.payment_fee.drinks, Field::FeeDrinks)?;
    a_share(record.commission, Field::Commission)?;
    not_negative(record.wage.major(), Field::Wage)?;
    for cost in FlatCost::ALL {
        if let Entered::InSettings(read) = cost.entered() {
            not_negative(read(record).major(), Field::FlatCost(*cost))?;
        }
    }
    a_share(record.unsold, Field::Unsold)?;
    reductions(&record.reductions)?;
    a_share(record.target, Field::Target)?;
    record.till.as_ref().map_or(Ok(()), till)?;
    if let Some(days) = record.price_days {
        hold(days >= Exact::ONE, Field::PriceDays, Problem::LessThanOne)?;
        hold(days.ceiling() == days, Field::PriceDays, Problem::NotWhole)?;
        keeps(days, Field::PriceDays)?;
    }
    if let Some(step) = record.scale_step {
        mass(step, Field::ScaleStep)?;
    }
    if let Some(step) = record.jug_step {
        volume(step, Field::JugStep)?;
    }
    for ending in &record.endings {
        let fits = !ending.is_negative() && *ending < record.ending_period();
        hold(fits, Field::Endings, Problem::NotAnEnding)?;
        hold(record.currency.rounded(*ending) == *ending, Field::Endings, Problem::NotAnEnding)?;
    }
    Ok(())
}

fn reductions(record: &Reductions) -> Checked {
    a_share(record.discounts, Field::Discounts)?;
    a_share(record.free, Field::FreeDrinks)?;
    a_share(record.marked_down, Field::MarkedDown)?;
    a_yield(record.marked_down_to, Field::MarkedDownTo)
}

fn till(columns: &TillColumns) -> Checked {
    for column in [Some(&columns.item), columns.size.as_ref(), Some(&columns.units), columns.day.as_ref()] {
        hold(column.is_none_or(|column| is_seen(column)), Field::TillColumn, Problem::Empty)?;
    }
    Ok(())
}
