//! Sizes of one drink side by side (calculations, 7).

use crate::book::{Book, DrinkId, OfferId};
use crate::ledger::{Ledger, Priced};
use crate::measure::{Exact, Money, Overflow, Share, Volume};

/// One size of a drink among its others.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SizeRow {
    /// The offer.
    pub offer: OfferId,
    /// What is poured.
    pub fill: Volume,
    /// Full cost of one drink.
    pub cost: Money,
    /// Full cost per price volume (1 fl oz or 100 mL).
    pub cost_per_volume: Money,
    /// What the price asked brings; none where none is asked.
    pub sold: Option<SoldSize>,
    /// The step from the next smaller size that has a price, where this one has one too.
    pub step: Option<Step>,
}

/// The figures of a size at its price asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SoldSize {
    /// Menu price.
    pub price: Money,
    /// Menu price per price volume.
    pub price_per_volume: Money,
    /// Contribution of one drink.
    pub contribution: Money,
    /// Contribution per price volume.
    pub contribution_per_volume: Money,
    /// Contribution per minute of hands' time; none where the drink takes none.
    pub contribution_per_minute: Option<Money>,
    /// Margin on the covered terms.
    pub margin: Share,
    /// What the customer pays per volume, over what the smallest priced size asks; 1 for that
    /// size itself.
    pub against_smallest: Share,
}

/// From one size to the next.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Step {
    /// What the customer pays more on the menu.
    pub extra_price: Money,
    /// What it costs more.
    pub extra_cost: Money,
    /// Share of the extra price, without tax, that is kept: extra contribution over extra price
    /// without tax; none where the price does not rise.
    pub kept: Option<Share>,
}

/// The sizes of one drink, smallest fill first. Offers that cannot be computed are left out;
/// the ledger has their reasons.
///
/// # Errors
/// [`Overflow`].
pub fn side_by_side(book: &Book, ledger: &Ledger, drink: DrinkId) -> Result<Vec<SizeRow>, Overflow> {
    let per = book.settings().units.price_volume();
    let computed = book.offers_of(drink).filter_map(|offer| {
        let priced = ledger.get(offer.id())?.as_ref().ok()?;
        Some((offer.id(), priced))
    });
    let mut computed: Vec<(OfferId, &Priced)> = computed.collect();
    computed.sort_unstable_by_key(|(offer, priced)| (priced.fill.volume, *offer));
    let mut rows = Vec::with_capacity(computed.len());
    let mut smallest = None;
    let mut smaller: Option<&Priced> = None;
    for (offer, priced) in computed {
        let fill = priced.fill.volume;
        let per_volume = |money: Money| Ok(money.times(per.ratio_to(fill)?)?.as_part());
        let cost = priced.cost.total()?;
        let sold = match &priced.asked {
            None => None,
            Some(asked) => {
                let price_per_volume = per_volume(asked.menu)?;
                let base = *smallest.get_or_insert(price_per_volume);
                Some(SoldSize {
                    price: asked.menu,
                    price_per_volume,
                    contribution: asked.contribution,
                    contribution_per_volume: per_volume(asked.contribution)?,
                    contribution_per_minute: per_minute(asked.contribution, priced)?,
                    margin: asked.margin,
                    against_smallest: Share::from_fraction(price_per_volume.ratio_to(base)?.as_part()),
                })
            }
        };
        let step = smaller.map_or(Ok(None), |smaller| step(smaller, priced))?;
        if priced.asked.is_some() {
            smaller = Some(priced);
        }
        rows.push(SizeRow { offer, fill, cost, cost_per_volume: per_volume(cost)?, sold, step });
    }
    Ok(rows)
}

fn per_minute(contribution: Money, priced: &Priced) -> Result<Option<Money>, Overflow> {
    let time = priced.cost.time;
    if !time.is_positive() {
        return Ok(None);
    }
    let minutes = time.seconds().over(Exact::new(60, 0))?;
    Ok(Some(contribution.over(minutes)?.as_part()))
}

fn step(smaller: &Priced, larger: &Priced) -> Result<Option<Step>, Overflow> {
    let (Some(small), Some(large)) = (&smaller.asked, &larger.asked) else { return Ok(None) };
    let more_without_tax = large.without_tax.minus(small.without_tax)?;
    let kept = if more_without_tax.is_positive() {
        let more = large.contribution.minus(small.contribution)?;
        Some(Share::from_fraction(more.ratio_to(more_without_tax)?.as_part()))
    } else {
        None
    };
    Ok(Some(Step {
        extra_price: large.menu.minus(small.menu)?,
        extra_cost: larger.cost.total()?.minus(smaller.cost.total()?)?,
        kept,
    }))
}
