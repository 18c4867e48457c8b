//! Questions to begin with, for who has not asked one yet.

use super::menu::{FAR, MenuToday};
use crate::book::{Container, ContainerId, DrinkId, PackagingId};
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

    /// How many of the drinks that are sold are sold in other containers only. Returns `None` if nothing of it is on the
    /// menu in this one.
    fn lacks(&self, size: ContainerId) -> Option<usize> {
        let mine = || self.book.offers().filter(|it| self.book.belongs(it.drink, self.scope));
        mine().find(|it| it.container == size)?;
        let mut drinks: Vec<DrinkId> = self.sold().iter().map(|sold| sold.offer().drink).collect();
        drinks.dedup();
        let there = |drink: &DrinkId| mine().any(|it| it.container == size && it.drink == *drink);
        Some(drinks.iter().filter(|drink| !there(drink)).count())
    }

    /// Whether a container shares packaging, such as its label or its lid, with a size that is sold.
    fn is_packaged_alike(&self, container: &Container) -> bool {
        let uses = |container: &Container| -> Vec<PackagingId> {
            self.book.set_of(container).map(|uses| uses.packaging).collect()
        };
        let own = uses(container);
        let sold = self.sizes().iter().filter_map(|size| self.book.container(*size));
        sold.flat_map(uses).any(|packaging| own.contains(&packaging))
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

    /// The size whose coming is asked about first. Of the containers in which nothing of it is sold, the nearest to the
    /// size that most buy: one that is packaged like a size sold, and not too far from one, before any other; next to
    /// those, one in which only some of its drinks are sold. A near double of a size comes last.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn first_to_come(&self) -> Result<Option<ContainerId>, Overflow> {
        let poured = |container: &Container| fill(container).ok().map(|fill| fill.volume);
        let of = |size: ContainerId| self.book.container(size).and_then(poured);
        let Some(most) = self.foremost()?.and_then(of) else { return Ok(None) };
        let sold: Vec<Volume> = self.sizes().iter().filter_map(|size| of(*size)).collect();
        let ratio = |one: Volume, other: Volume| one.max(other).ratio_to(one.min(other));
        let mut first: Option<((u8, bool, Exact), ContainerId)> = None;
        for container in self.book.containers() {
            let here = self.lacks(container.id);
            let Some(volume) = poured(container).filter(|_| here != Some(0)) else { continue };
            let (mut double, mut near) = (false, false);
            for size in &sold {
                let apart = ratio(volume, *size)?;
                double |= apart < NEAR;
                near |= apart <= FAR;
            }
            let rank = match here {
                None if near && !double && self.is_packaged_alike(container) => 0,
                Some(_) => 1,
                None => 2,
            };
            let rank = (rank, double && here.is_none(), ratio(volume, most)?);
            if first.is_none_or(|(before, _)| rank < before) {
                first = Some((rank, container.id));
            }
        }
        Ok(first.map(|(_, size)| size))
    }
}
