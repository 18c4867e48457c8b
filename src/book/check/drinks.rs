//! Checks of drinks, their recipes, and what they are offered in.

use super::values::{Checked, a_share, distinct, hold, id, id_of_offer, keeps, name, not_negative, positive, volume};
use crate::book::{Drink, Entered, Field, Filling, FlatCost, Line, Offer, Problem, Scaling, Scenario};
use crate::foundation::measure::{Dimension, Exact, Share, WARMEST};

/// The end of the pH scale.
const STRONGEST_BASE: Exact = Exact::new(14, 0);

/// The most days that a drink keeps: two years. Our own choice without a source; more is a slip of a key.
const LONGEST_KEEPING: Exact = Exact::new(730, 0);

pub(super) fn drink(record: &Drink) -> Checked {
    name(&record.name)?;
    volume(record.reference, Field::Reference)?;
    for line in &record.lines {
        self::line(line)?;
    }
    let top_ups = record.lines.iter().filter(|line| line.scaling == Scaling::TopUp).count();
    hold(top_ups <= 1, Field::TopUp, Problem::MoreThanOne)?;
    not_negative(record.air.fraction(), Field::Air)?;
    distinct(record.lines.iter().map(|line| id(line.id.number())), Field::LineAmount)?;
    a_share(record.process_loss, Field::ProcessLoss)?;
    not_negative(record.labour.per_drink.seconds(), Field::PerDrink)?;
    not_negative(record.labour.per_litre.seconds(), Field::PerLitre)?;
    not_negative(record.labour.per_batch.seconds(), Field::PerBatch)?;
    if let Some(batch) = record.labour.batch_volume {
        volume(batch, Field::BatchVolume)?;
    }
    hold(record.labour.batch >= Exact::ONE, Field::Batch, Problem::LessThanOne)?;
    keeps(record.labour.batch, Field::Batch)?;
    for cost in FlatCost::ALL {
        if let Entered::AtDrink(read) = cost.entered() {
            not_negative(read(record).major(), Field::FlatCost(*cost))?;
        }
    }
    record.unsold.map_or(Ok(()), |share| a_share(share, Field::Unsold))?;
    record.target.map_or(Ok(()), |share| a_share(share, Field::Target))?;
    record.tax_rate.map_or(Ok(()), |rate| not_negative(rate.fraction(), Field::TaxRate))?;
    if let Some(ph) = record.ph {
        hold(ph >= Exact::ONE && ph <= STRONGEST_BASE, Field::Ph, Problem::NotAPh)?;
        keeps(ph, Field::Ph)?;
    }
    if let Some(days) = record.keeps_days {
        not_negative(days, Field::KeepsDays)?;
        hold(days.ceiling() == days, Field::KeepsDays, Problem::NotWhole)?;
        hold(days <= LONGEST_KEEPING, Field::KeepsDays, Problem::TooManyDays)?;
    }
    Ok(())
}

fn line(line: &Line) -> Checked {
    positive(line.amount.number, Field::LineAmount)?;
    if let Scaling::Stepped(step) = line.scaling {
        positive(step.number, Field::Step)?;
        hold(step.unit.dimension() == line.amount.unit.dimension(), Field::Step, Problem::AnotherKind)?;
    }
    if let Some(ice) = line.ice {
        let packing = ice.packing;
        hold(packing.is_positive() && packing <= Share::WHOLE, Field::Packing, Problem::NotAPacking)?;
        keeps(packing.fraction(), Field::Packing)?;
        let melted = ice.melted;
        hold(!melted.is_negative() && melted <= Share::WHOLE, Field::Melted, Problem::NotAPart)?;
        keeps(melted.fraction(), Field::Melted)?;
    }
    Ok(())
}

pub(super) fn offer(record: &Offer) -> Checked {
    record.price.map_or(Ok(()), |price| positive(price.major(), Field::Price))?;
    record.weekly.map_or(Ok(()), |weekly| not_negative(weekly, Field::Weekly))?;
    record.filling.as_ref().map_or(Ok(()), filling)
}

fn filling(filling: &Filling) -> Checked {
    if let Some(allowed) = filling.allowed {
        volume(allowed, Field::Allowed)?;
    }
    if let Some(least) = filling.least_headspace {
        not_negative(least.number, Field::LeastHeadspace)?;
        hold(least.unit.dimension() == Dimension::Volume, Field::LeastHeadspace, Problem::NotAVolume)?;
    }
    if let Some(batch) = filling.batch {
        hold(batch >= Exact::ONE, Field::BatchSize, Problem::LessThanOne)?;
        hold(batch.ceiling() == batch, Field::BatchSize, Problem::NotWhole)?;
        keeps(batch, Field::BatchSize)?;
    }
    if let Some(temperature) = filling.measured_at {
        let celsius = temperature.celsius().map_err(|_| (Field::MeasuredAt, Problem::TooLarge))?;
        let known = !celsius.is_negative() && celsius <= WARMEST;
        hold(known, Field::MeasuredAt, Problem::NotMeasuredThere)?;
        keeps(temperature.degrees, Field::MeasuredAt)?;
    }
    for net in &filling.nets {
        positive(net.number, Field::Net)?;
        hold(net.unit.dimension() != Dimension::Count, Field::Net, Problem::NeitherWeightNorVolume)?;
    }
    Ok(())
}

pub(super) fn scenario(record: &Scenario) -> Checked {
    name(&record.name)?;
    for offered in &record.offers {
        offer(offered)?;
    }
    distinct(record.offers.iter().map(|offer| id_of_offer(offer.id())), Field::Offers)
}
