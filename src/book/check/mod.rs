//! Whether a record's values hold, before it is put in the book.

#[cfg(test)]
mod tests;

use std::collections::BTreeSet;

use super::{
    Batch, Brimful, BuyingList, Container, Drink, Entered, Field, Filling, FlatCost, Goods, Headspace, Ingredient,
    Line, Offer, OfferId, OnHand, Pack, Packaging, PackagingSet, PackagingUse, Problem, Reading, Record, Refusal,
    Scaling, Scenario, SeenPrice, Settings, TillColumns, ToBuy, Trial, Week, Weighing,
};
use crate::foundation::measure::{
    Amount, Date, Dimension, Exact, Measure, Share, TypedLength, Volume, WARMEST, is_seen,
};

/// Longest name, in characters.
const NAME_LENGTH: usize = 80;

/// Longest list of what a mixture is made of, in characters.
const PARTS_LENGTH: usize = 400;

/// The end of the scale of pH.
const STRONGEST_BASE: Exact = Exact::new(14, 0);

/// Most days that a drink keeps: two years. Our own choice, no source; more is a slip of a key.
const LONGEST_KEEPING: Exact = Exact::new(730, 0);

/// Decimals that a stored number keeps.
const STORED_PLACES: u32 = 8;

/// Checks the record's own values; references are the book's to check. Nothing else in the book
/// decides, so that what was in it once can always be put back.
pub(super) fn record(record: &Record) -> Result<(), Refusal> {
    let checked = match record {
        Record::Settings(record) => self::settings(record),
        Record::Ingredient(record) => ingredient(record),
        Record::Packaging(record) => packaging(record),
        Record::PackagingSet(record) => packaging_set(record),
        Record::Container(record) => container(record),
        Record::Drink(record) => drink(record),
        Record::Offer(record) => offer(record),
        Record::Week(record) => week(record),
        Record::SeenPrice(record) => seen_price(record),
        Record::Trial(record) => trial(record),
        Record::Scenario(record) => scenario(record),
        Record::Batch(record) => batch(record),
        Record::BuyingList(record) => buying_list(record),
    };
    checked.map_err(|(field, problem)| Refusal::Field { key: record.key(), field, problem })
}

type Checked = Result<(), (Field, Problem)>;

fn hold(holds: bool, field: Field, problem: Problem) -> Checked {
    if holds { Ok(()) } else { Err((field, problem)) }
}

fn name(name: &str) -> Checked {
    hold(is_seen(name), Field::Name, Problem::Empty)?;
    hold(name.chars().count() <= NAME_LENGTH, Field::Name, Problem::TooLong)
}

/// What cannot be written and read again as it is must not be taken.
fn keeps(number: Exact, field: Field) -> Checked {
    hold(number.keeps(), field, Problem::TooLarge)
}

fn not_negative(number: Exact, field: Field) -> Checked {
    hold(!number.is_negative(), field, Problem::Negative)?;
    keeps(number, field)
}

fn positive(number: Exact, field: Field) -> Checked {
    hold(number.is_positive(), field, Problem::NotPositive)?;
    keeps(number, field)
}

fn a_yield(share: Share, field: Field) -> Checked {
    hold(share.is_positive() && share <= Share::WHOLE, field, Problem::NotAYield)?;
    keeps(share.fraction(), field)
}

fn a_share(share: Share, field: Field) -> Checked {
    hold(!share.is_negative() && share < Share::WHOLE, field, Problem::NotAShare)?;
    keeps(share.fraction(), field)
}

fn volume(amount: Amount, field: Field) -> Result<Volume, (Field, Problem)> {
    let volume = amount.volume().map_err(|_| (field, Problem::TooLarge))?;
    let volume = volume.ok_or((field, Problem::NotAVolume))?;
    positive(amount.number, field)?;
    Ok(volume)
}

/// An id of any kind as numbers: a set of one kind is one piece of code to load.
type Id = [u64; 3];

fn distinct(mut ids: impl Iterator<Item = Id>, field: Field) -> Checked {
    hold(all_different(&mut ids), field, Problem::Twice)
}

/// Whether no two are the same. A file may bring hundreds of thousands.
fn all_different<T: Ord>(all: &mut dyn Iterator<Item = T>) -> bool {
    let mut met = BTreeSet::new();
    for one in all {
        if !met.insert(one) {
            return false;
        }
    }
    true
}

const fn id(number: u64) -> Id {
    [number, 0, 0]
}

const fn id_of_offer(id: OfferId) -> Id {
    [id.drink.number(), id.container.number(), 0]
}

fn id_to_buy(line: &ToBuy) -> Id {
    let [kind, goods] = match line.goods {
        Goods::Ingredient(id) => [0, id.number()],
        Goods::Packaging(id) => [1, id.number()],
    };
    [kind, goods, line.pack.number()]
}

/// As a whole number of parts that a stored number is made of.
fn id_of_number(number: Exact) -> Id {
    let parts = number.whole_parts(STORED_PLACES).and_then(|parts| u64::try_from(parts).ok());
    id(parts.unwrap_or_default())
}

fn packs(packs: &[Pack]) -> Checked {
    for pack in packs {
        positive(pack.contents.number, Field::Contents)?;
        not_negative(pack.price.major(), Field::PackPrice)?;
        not_negative(pack.surcharge.major(), Field::Surcharge)?;
        hold(pack.supplier.chars().count() <= NAME_LENGTH, Field::Supplier, Problem::TooLong)?;
        tiers(pack)?;
        heard(pack)?;
    }
    distinct(packs.iter().map(|pack| id(pack.id.number())), Field::Contents)
}

fn tiers(pack: &Pack) -> Checked {
    hold(pack.at_a_time >= Exact::ONE, Field::AtATime, Problem::LessThanOne)?;
    keeps(pack.at_a_time, Field::AtATime)?;
    for tier in &pack.tiers {
        hold(tier.from > Exact::ONE, Field::TierFrom, Problem::NotAboveOne)?;
        keeps(tier.from, Field::TierFrom)?;
        not_negative(tier.price.major(), Field::TierPrice)?;
    }
    distinct(pack.tiers.iter().map(|tier| id_of_number(tier.from)), Field::TierFrom)
}

/// Prices heard stand in the order of their days, the one paid now after them all.
fn heard(pack: &Pack) -> Checked {
    for quoted in &pack.earlier {
        not_negative(quoted.price.major(), Field::EarlierPrice)?;
    }
    hold(pack.earlier.is_empty() || pack.day.is_some(), Field::PriceDay, Problem::Empty)?;
    let days: Vec<Date> = pack.heard().map(|quoted| quoted.day).collect();
    hold(days.windows(2).all(|pair| pair.first() < pair.last()), Field::EarlierPrice, Problem::NotAfter)
}

fn on_hand(on_hand: Option<OnHand>, may_be: impl Fn(Dimension) -> bool) -> Checked {
    let Some(OnHand { amount, .. }) = on_hand else { return Ok(()) };
    not_negative(amount.number, Field::OnHand)?;
    hold(may_be(amount.unit.dimension()), Field::OnHand, Problem::NotACount)
}

fn mass(amount: Amount, field: Field) -> Result<Exact, (Field, Problem)> {
    positive(amount.number, field)?;
    match amount.measure() {
        Ok(Measure::Mass(mass)) => Ok(mass.grams()),
        Ok(_) => Err((field, Problem::NotAWeight)),
        Err(_) => Err((field, Problem::TooLarge)),
    }
}

/// Nothing weighs more than what it was made from.
fn weighing(weighing: &Weighing) -> Checked {
    let mut before = mass(weighing.bought, Field::WeighedBought)?;
    let steps = [(weighing.trimmed, Field::WeighedTrimmed), (weighing.pressed, Field::WeighedPressed)];
    for (amount, field) in steps {
        let Some(amount) = amount else { continue };
        let weighed = mass(amount, field)?;
        hold(weighed <= before, field, Problem::MoreThanBefore)?;
        before = weighed;
    }
    Ok(())
}

fn ingredient(record: &Ingredient) -> Checked {
    name(&record.name)?;
    a_yield(record.trim_yield, Field::TrimYield)?;
    record.press_yield.map_or(Ok(()), |share| a_yield(share, Field::PressYield))?;
    record.soak_yield.map_or(Ok(()), |share| positive(share.fraction(), Field::SoakYield))?;
    record.density.map_or(Ok(()), |density| positive(density.grams_per_millilitre(), Field::Density))?;
    record.juice_density.map_or(Ok(()), |density| positive(density.grams_per_millilitre(), Field::JuiceDensity))?;
    record.piece_weight.map_or(Ok(()), |weight| positive(weight.grams(), Field::PieceWeight))?;
    record.allergens.as_ref().map_or(Ok(()), |allergens| {
        distinct(allergens.iter().map(|allergen| id(*allergen as u64)), Field::Allergens)
    })?;
    hold(record.nuts.chars().count() <= NAME_LENGTH, Field::Nuts, Problem::TooLong)?;
    hold(record.sold_as.chars().count() <= NAME_LENGTH, Field::SoldAs, Problem::TooLong)?;
    let parts = record.parts.as_deref().unwrap_or_default();
    hold(parts.chars().count() <= PARTS_LENGTH, Field::Parts, Problem::LongerThanALabel)?;
    on_hand(record.on_hand, |_| true)?;
    for weighed in &record.weighings {
        weighing(weighed)?;
    }
    packs(&record.packs)
}

fn packaging(record: &Packaging) -> Checked {
    name(&record.name)?;
    for pack in &record.packs {
        hold(pack.contents.unit.dimension() == Dimension::Count, Field::Contents, Problem::NotACount)?;
    }
    on_hand(record.on_hand, |dimension| dimension == Dimension::Count)?;
    packs(&record.packs)
}

fn container(record: &Container) -> Checked {
    name(&record.name)?;
    let brimful = brimful(&record.brimful)?;
    if let Some(declared) = record.declared {
        let declared = volume(declared, Field::Declared)?;
        hold(declared <= brimful, Field::Declared, Problem::MoreThanBrimful)?;
    }
    match record.headspace {
        Headspace::Share(share) => a_share(share, Field::Headspace)?,
        Headspace::Volume(amount) => {
            not_negative(amount.number, Field::Headspace)?;
            let empty = amount.volume().map_err(|_| (Field::Headspace, Problem::TooLarge))?;
            let empty = empty.ok_or((Field::Headspace, Problem::NotAVolume))?;
            hold(empty < brimful, Field::Headspace, Problem::NothingFits)?;
        }
        Headspace::Height(empty) => {
            not_negative(empty.number, Field::Headspace)?;
            let too_large = (Field::Headspace, Problem::TooLarge);
            let height = record.brimful.height().map_err(|_| too_large)?;
            let height = height.ok_or((Field::Headspace, Problem::NoHeights))?;
            let empty = empty.length().map_err(|_| too_large)?;
            hold(empty < height, Field::Headspace, Problem::NothingFits)?;
        }
    }
    uses(&record.set)?;
    distinct(record.shared.iter().map(|set| id(set.number())), Field::SetCount)
}

fn brimful(brimful: &Brimful) -> Result<Volume, (Field, Problem)> {
    match brimful {
        Brimful::Weighed(amount) => return volume(*amount, Field::Brimful),
        Brimful::Tapered(tapered) => {
            length(tapered.base, Field::Base)?;
            length(tapered.rim, Field::Rim)?;
            length(tapered.height, Field::Height)?;
        }
        Brimful::Poured(readings) => self::readings(readings)?,
    }
    let volume = brimful.volume().map_err(|_| (Field::Brimful, Problem::TooLarge))?;
    volume.ok_or((Field::Brimful, Problem::NotAVolume))
}

fn length(length: TypedLength, field: Field) -> Checked {
    positive(length.number, field)
}

/// Readings rise, both in height and in volume.
fn readings(readings: &[Reading]) -> Checked {
    hold(readings.len() >= 2, Field::Readings, Problem::TooFew)?;
    let mut below = None;
    for (place, reading) in (1..).zip(readings) {
        length(reading.height, Field::Readings)?;
        let volume = volume(reading.volume, Field::Readings)?;
        let height = reading.height.length().map_err(|_| (Field::Readings, Problem::TooLarge))?;
        let rises = below.is_none_or(|(low, less)| height > low && volume > less);
        hold(rises, Field::Readings, Problem::Falls(place))?;
        below = Some((height, volume));
    }
    Ok(())
}

fn uses(uses: &[PackagingUse]) -> Checked {
    for used in uses {
        positive(used.count, Field::SetCount)?;
    }
    distinct(uses.iter().map(|used| id(used.packaging.number())), Field::SetCount)
}

fn packaging_set(record: &PackagingSet) -> Checked {
    name(&record.name)?;
    uses(&record.uses)
}

fn drink(record: &Drink) -> Checked {
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
    hold(record.labour.batch >= Exact::ONE, Field::Batch, Problem::LessThanOne)?;
    keeps(record.labour.batch, Field::Batch)?;
    for cost in FlatCost::ALL {
        if let Entered::AtDrink(read) = cost.entered() {
            not_negative(read(record).major(), Field::FlatCost(*cost))?;
        }
    }
    record.unsold.map_or(Ok(()), |share| a_share(share, Field::Unsold))?;
    record.target.map_or(Ok(()), |share| a_share(share, Field::Target))?;
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
    }
    Ok(())
}

fn offer(record: &Offer) -> Checked {
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

fn week(record: &Week) -> Checked {
    hold(record.monday.is_monday(), Field::Monday, Problem::NotAMonday)?;
    for sold in &record.sold {
        not_negative(sold.units, Field::Units)?;
        keeps(sold.contribution.major(), Field::Contribution)?;
    }
    distinct(record.sold.iter().map(|sold| id_of_offer(sold.offer())), Field::Units)
}

fn seen_price(record: &SeenPrice) -> Checked {
    hold(is_seen(&record.place), Field::Place, Problem::Empty)?;
    hold(record.place.chars().count() <= NAME_LENGTH, Field::Place, Problem::TooLong)?;
    volume(record.size, Field::Size)?;
    positive(record.price.major(), Field::Price)
}

fn trial(record: &Trial) -> Checked {
    name(&record.name)?;
    for monday in [Some(record.first), Some(record.start), record.last].into_iter().flatten() {
        hold(monday.is_monday(), Field::Monday, Problem::NotAMonday)?;
    }
    hold(record.first < record.start, Field::Start, Problem::NotAfter)?;
    hold(record.last.is_none_or(|last| record.start <= last), Field::Last, Problem::NotAfter)
}

fn scenario(record: &Scenario) -> Checked {
    name(&record.name)?;
    for offered in &record.offers {
        offer(offered)?;
    }
    distinct(record.offers.iter().map(|offer| id_of_offer(offer.id())), Field::Offers)
}

fn batch(record: &Batch) -> Checked {
    for make in &record.makes {
        not_negative(make.units, Field::Makes)?;
        hold(make.units.ceiling() == make.units, Field::Makes, Problem::NotWhole)?;
        not_negative(make.off_shelf, Field::OffShelf)?;
        hold(make.off_shelf.ceiling() == make.off_shelf, Field::OffShelf, Problem::NotWhole)?;
    }
    distinct(record.makes.iter().map(|make| id_of_offer(make.offer())), Field::Makes)?;
    distinct(record.ready.iter().map(|ready| [ready.ingredient.number(), ready.stage as u64, 0]), Field::Ready)
}

fn buying_list(record: &BuyingList) -> Checked {
    for line in &record.lines {
        positive(line.packs, Field::PacksToBuy)?;
        line.paid.map_or(Ok(()), |paid| not_negative(paid.major(), Field::Paid))?;
    }
    distinct(record.lines.iter().map(id_to_buy), Field::PacksToBuy)
}

fn till(columns: &TillColumns) -> Checked {
    for column in [Some(&columns.item), columns.size.as_ref(), Some(&columns.units), columns.day.as_ref()] {
        hold(column.is_none_or(|column| is_seen(column)), Field::TillColumn, Problem::Empty)?;
    }
    Ok(())
}

fn settings(record: &Settings) -> Checked {
    name(&record.name)?;
    not_negative(record.tax.rate.fraction(), Field::TaxRate)?;
    a_share(record.payment_fee.share, Field::FeeShare)?;
    not_negative(record.payment_fee.fixed.major(), Field::FeeFixed)?;
    a_share(record.commission, Field::Commission)?;
    not_negative(record.wage.major(), Field::Wage)?;
    for cost in FlatCost::ALL {
        if let Entered::InSettings(read) = cost.entered() {
            not_negative(read(record).major(), Field::FlatCost(*cost))?;
        }
    }
    a_share(record.unsold, Field::Unsold)?;
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
