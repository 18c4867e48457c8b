//! Questions to begin with, for who has not asked one yet.

use super::menu::MenuToday;
use crate::book::{Container, ContainerId};
use crate::drink::fill::fill;
use crate::foundation::measure::{Exact, Overflow, Volume};

/// A size nearer to another than this ratio is the same to a buyer. A judgement of ours, no source.
const NEAR: Exact = Exact::new(11, 1);

impl MenuToday<'_> {
    /// The sizes of which some are sold, with their number, the smallest poured first. Where nothing is sold, all that
    /// have a price.
    fn bought(&self) -> Result<Vec<(ContainerId, Exact)>, Overflow> {
        let mut all = Vec::new();
        for size in self.sizes() {
            let here = self.sold().iter().filter(|sold| sold.offer().container == *size);
            let number = here.map(|sold| sold.weekly.count()).try_fold(Exact::ZERO, Exact::plus)?;
            all.push((*size, number));
        }
        if all.iter().any(|(_, number)| number.is_positive()) {
            all.retain(|(_, number)| number.is_positive());
        }
        Ok(all)
    }

    /// The size that most buy.
    fn foremost(&self) -> Result<Option<ContainerId>, Overflow> {
        Ok(self.bought()?.into_iter().max_by_key(|(_, number)| *number).map(|(size, _)| size))
    }

    /// The size whose going is asked about first: of those with a price and with sales the one that fewest buy, but
    /// not the only one.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn first_to_go(&self) -> Result<Option<ContainerId>, Overflow> {
        let bought = self.bought()?;
        let least = bought.iter().min_by_key(|(_, number)| *number).map(|(size, _)| *size);
        Ok(least.filter(|_| bought.len() > 1))
    }

    /// The switch that is asked about first: the size that most buy, and the next smaller one sold, or else the next
    /// larger; where none is, one in which nothing is sold.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn first_to_switch(&self) -> Result<Option<(ContainerId, ContainerId)>, Overflow> {
        let Some(most) = self.foremost()? else { return Ok(None) };
        let sizes: Vec<ContainerId> = self.bought()?.into_iter().map(|(size, _)| size).collect();
        let place = sizes.iter().position(|size| *size == most).unwrap_or_default();
        let smaller = place.checked_sub(1).and_then(|place| sizes.get(place));
        let beside = smaller.or_else(|| sizes.get(place.saturating_add(1))).copied();
        let beside = beside.map_or_else(|| self.first_to_come(), |beside| Ok(Some(beside)))?;
        Ok(beside.map(|beside| (most, beside)))
    }

    /// The size whose coming is asked about first: of the containers in which nothing of it is sold and that are no
    /// near double of a size, the nearest to the size that most buy; a near double where there is no other.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn first_to_come(&self) -> Result<Option<ContainerId>, Overflow> {
        let poured = |container: &Container| fill(container).ok().map(|fill| fill.volume);
        let of = |size: ContainerId| self.book.container(size).and_then(poured);
        let Some(most) = self.foremost()?.and_then(of) else { return Ok(None) };
        let sold: Vec<Volume> = self.sizes().iter().filter_map(|size| of(*size)).collect();
        let ratio = |one: Volume, other: Volume| one.max(other).ratio_to(one.min(other));
        let mut first: Option<((bool, Exact), ContainerId)> = None;
        for container in self.book.containers() {
            let here =
                self.book.offers().any(|it| it.container == container.id && self.book.belongs(it.drink, self.scope));
            let Some(volume) = poured(container).filter(|_| !here) else { continue };
            let mut double = false;
            for size in &sold {
                double |= ratio(volume, *size)? < NEAR;
            }
            let rank = (double, ratio(volume, most)?);
            if first.is_none_or(|(before, _)| rank < before) {
                first = Some((rank, container.id));
            }
        }
        Ok(first.map(|(_, size)| size))
    }
}
