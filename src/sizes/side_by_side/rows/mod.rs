//! Sizes side by side: one drink, or the drinks of a kind or of the whole menu that are sold in all
//! of the sizes, so that a step from size to size compares the same drinks.

#[cfg(test)]
mod tests;

mod step;

use crate::book::{Book, ContainerId, DrinkId, OfferId, Part, Scope};
use crate::drink::fill::fill;
use crate::drink::ledger::{Ledger, OfferStatus, Priced};
use crate::drink::price::Asked;
use crate::foundation::in_order;
use crate::foundation::measure::{Exact, Money, Overflow, Share, Time, Volume};

pub use step::Step;

/// A part of the menu in several sizes.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct SideBySide {
    /// The sizes, smallest fill first.
    pub sizes: Vec<SizeRow>,
    /// The drinks compared, each with its weight in every mean.
    pub drinks: Vec<(DrinkId, Exact)>,
    /// What the weights are.
    pub weights: Weights,
    /// Drinks of this part of the menu that are not compared, and the first reason found.
    pub left_out: Vec<(DrinkId, LeftOut)>,
}

/// What a drink's weight is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Weights {
    /// What is sold of it in a week, in all sizes compared.
    WeeklySales,
    /// One for every drink: no sales are known of any.
    #[default]
    Equal,
}

/// Why a drink is not compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LeftOut {
    /// It is not sold in this container.
    NotSoldIn(ContainerId),
    /// It cannot be computed in this container.
    CannotCompute(ContainerId),
    /// It has no price in this container.
    WithoutPrice(ContainerId),
    /// Others have weekly sales, and it has none.
    WithoutSales,
}

/// One size among the others: the drink's figures, or the means over the drinks compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SizeRow {
    /// What it is sold in.
    pub container: ContainerId,
    /// What is poured.
    pub fill: Volume,
    /// The parts of the cost, in the order of [`Part::ALL`].
    pub parts: [Money; Part::ALL.len()],
    /// Full cost of one drink: the sum of its parts.
    pub cost: Money,
    /// Full cost per price volume (1 fl oz or 100 mL).
    pub cost_per_volume: Money,
    /// The menu prices suggested for the targets of the drinks, the lowest and the highest: a mean of them would end
    /// as no price does. It is `None` if no price reaches a target.
    pub suggested: Option<(Money, Money)>,
    /// What the price asked brings. It is `None` if none is asked.
    pub sold: Option<SoldSize>,
    /// The step from the next smaller size that has a price, where this one has one too.
    pub step: Option<Step>,
}

/// The figures of a size at its price asked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SoldSize {
    /// Menu price.
    pub price: Money,
    /// The price without tax.
    pub without_tax: Money,
    /// Menu price per price volume.
    pub price_per_volume: Money,
    /// Payment fee and commission.
    pub fees: Money,
    /// What discounts and marked down drinks take: with it and the fees, price without tax and cost differ
    /// by the contribution.
    pub reductions: Money,
    /// Contribution of one drink.
    pub contribution: Money,
    /// Contribution per price volume.
    pub contribution_per_volume: Money,
    /// Contribution per minute of hands' time. It is `None` if the drink takes none.
    pub contribution_per_minute: Option<Money>,
    /// Margin on the covered terms: what they leave of the revenue, over it.
    pub margin: Share,
    /// What the customer pays per volume, over what the smallest priced size asks; 1 for that
    /// size itself.
    pub against_smallest: Share,
    /// How many of the drinks compared are on target.
    pub on_target: usize,
}

impl SideBySide {
    /// The prices asked in a container by the drinks compared, each higher by so much.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn raised(&self, book: &Book, container: ContainerId, by: Money) -> Result<Vec<(OfferId, Money)>, Overflow> {
        let mut raised = Vec::with_capacity(self.drinks.len());
        for (drink, _) in &self.drinks {
            let offer = OfferId { drink: *drink, container };
            if let Some(price) = book.offer(offer).and_then(|offer| offer.price) {
                raised.push((offer, price.plus(by)?));
            }
        }
        Ok(raised)
    }

    /// From the smallest size that has a price to the largest.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn whole_step(&self) -> Result<Option<(ContainerId, ContainerId, Step)>, Overflow> {
        let mut priced = self.sizes.iter().filter(|row| row.sold.is_some());
        let (Some(smallest), Some(largest)) = (priced.next(), priced.next_back()) else { return Ok(None) };
        let step = Step::between(smallest, largest)?;
        Ok(step.map(|step| (smallest.container, largest.container, step)))
    }
}

/// The containers that a part of the menu is sold in, smallest fill first; those without a fill
/// before them.
pub fn sold_in(book: &Book, scope: Scope) -> Vec<ContainerId> {
    let drinks = in_scope(book, scope);
    let mut found: Vec<(Option<Volume>, ContainerId)> = Vec::new();
    for container in book.containers() {
        let sells = |drink: &DrinkId| book.offer(OfferId { drink: *drink, container: container.id }).is_some();
        if drinks.iter().any(sells) {
            let item = (fill(container).map(|fill| fill.volume).ok(), container.id);
            in_order::insert(&mut found, item, |other, item| other < item);
        }
    }
    found.into_iter().map(|(_, id)| id).collect()
}

/// The containers to begin with, smallest fill first: every size of one drink; of a kind or the
/// menu those sizes of one drink that most steps can be compared in, drink by drink.
pub fn sold_together(book: &Book, ledger: &Ledger, scope: Scope) -> Vec<ContainerId> {
    let all = sold_in(book, scope);
    if let Scope::Drink(_) = scope {
        return all;
    }
    let mut sets: Vec<(Vec<ContainerId>, usize)> = Vec::new();
    for drink in in_scope(book, scope) {
        let priced = |id: &ContainerId| computed(ledger, drink, *id).is_some_and(|it| it.asked.is_some());
        let set: Vec<ContainerId> = all.iter().copied().filter(priced).collect();
        match sets.iter_mut().find(|(known, _)| *known == set) {
            Some((_, count)) => *count = count.saturating_add(1),
            None => sets.push((set, 1)),
        }
    }
    let steps = |set: &[ContainerId]| {
        let holds = |(other, _): &&(Vec<ContainerId>, usize)| set.iter().all(|id| other.contains(id));
        let drinks = sets.iter().filter(holds).fold(0_usize, |sum, (_, count)| sum.saturating_add(*count));
        (drinks.saturating_mul(set.len().saturating_sub(1)), drinks.min(set.len()))
    };
    let mut best: &[ContainerId] = &[];
    for (set, _) in &sets {
        if steps(set) > steps(best) {
            best = set;
        }
    }
    best.to_vec()
}

/// A part of the menu in these containers. One drink is shown in those that it can be computed
/// in, with a price or without. Of a kind or the menu, the drinks compared are those that are
/// sold, computed and priced in every one of the containers: each figure is their mean, weighed by
/// what is sold of each in a week, in all these containers together; where no weekly sales are
/// known of any, all drinks count alike.
///
/// # Errors
/// [`Overflow`].
pub fn side_by_side(
    book: &Book,
    ledger: &Ledger,
    scope: Scope,
    containers: &[ContainerId],
) -> Result<SideBySide, Overflow> {
    let (drinks, weights, left_out) = match scope {
        Scope::Drink(drink) => (vec![(drink, Exact::ONE)], Weights::Equal, Vec::new()),
        Scope::Menu | Scope::Kind(_) => compared(book, ledger, scope, containers)?,
    };
    let mut sizes: Vec<Means> = Vec::new();
    for container in containers {
        let weighed = |(drink, weight): &(DrinkId, Exact)| Some((computed(ledger, *drink, *container)?, *weight));
        let weighed: Vec<(&Priced, Exact)> = drinks.iter().filter_map(weighed).collect();
        if let Some(means) = Means::of(*container, &weighed)? {
            in_order::insert(&mut sizes, means, |other, means| other.fill <= means.fill);
        }
    }
    Ok(SideBySide { sizes: rows(&sizes, book.settings().units.price_volume())?, drinks, weights, left_out })
}

/// The drinks of a part of the menu.
fn in_scope(book: &Book, scope: Scope) -> Vec<DrinkId> {
    match scope {
        Scope::Drink(drink) => vec![drink],
        scope => book.drinks().map(|drink| drink.id).filter(|drink| book.belongs(*drink, scope)).collect(),
    }
}

fn computed(ledger: &Ledger, drink: DrinkId, container: ContainerId) -> Option<&Priced> {
    ledger.get(OfferId { drink, container })?.as_ref().ok()
}

/// The drinks that are compared with their weights, what these are, and who is left out.
type Compared = (Vec<(DrinkId, Exact)>, Weights, Vec<(DrinkId, LeftOut)>);

fn compared(book: &Book, ledger: &Ledger, scope: Scope, containers: &[ContainerId]) -> Result<Compared, Overflow> {
    let (mut drinks, mut left_out) = (Vec::new(), Vec::new());
    for drink in in_scope(book, scope) {
        match containers.iter().find_map(|container| stands_out(ledger, drink, *container)) {
            Some(why) => left_out.push((drink, why)),
            None => drinks.push((drink, weekly_sales(book, drink, containers)?)),
        }
    }
    if drinks.iter().all(|(_, sales)| sales.is_zero()) {
        for (_, weight) in &mut drinks {
            *weight = Exact::ONE;
        }
        return Ok((drinks, Weights::Equal, left_out));
    }
    left_out
        .extend(drinks.iter().filter(|(_, sales)| sales.is_zero()).map(|(drink, _)| (*drink, LeftOut::WithoutSales)));
    drinks.retain(|(_, sales)| sales.is_positive());
    Ok((drinks, Weights::WeeklySales, left_out))
}

/// Why a drink cannot be compared in a container.
fn stands_out(ledger: &Ledger, drink: DrinkId, container: ContainerId) -> Option<LeftOut> {
    match ledger.get(OfferId { drink, container }) {
        None => Some(LeftOut::NotSoldIn(container)),
        Some(Err(_)) => Some(LeftOut::CannotCompute(container)),
        Some(Ok(priced)) => priced.asked.is_none().then_some(LeftOut::WithoutPrice(container)),
    }
}

fn weekly_sales(book: &Book, drink: DrinkId, containers: &[ContainerId]) -> Result<Exact, Overflow> {
    let weekly = |container: &ContainerId| book.offer(OfferId { drink, container: *container })?.weekly;
    containers.iter().filter_map(weekly).try_fold(Exact::ZERO, Exact::plus)
}

/// What is a mean over the drinks, in one container.
struct Means {
    container: ContainerId,
    fill: Volume,
    parts: [Money; Part::ALL.len()],
    time: Time,
    suggested: Option<(Money, Money)>,
    asked: Option<MeansAsked>,
}

/// The same of the prices asked.
struct MeansAsked {
    price: Money,
    without_tax: Money,
    revenue: Money,
    fees: Money,
    contribution: Money,
    /// What the covered terms leave, in the major unit and not rounded.
    left: Exact,
    on_target: usize,
}

impl Means {
    /// The means over the drinks in a container. Returns `None` if there is no drink.
    fn of(container: ContainerId, drinks: &[(&Priced, Exact)]) -> Result<Option<Means>, Overflow> {
        let Some((first, _)) = drinks.first() else { return Ok(None) };
        let weights = drinks.iter().try_fold(Exact::ZERO, |sum, (_, weight)| sum.plus(*weight))?;
        let mut sums = [Money::ZERO; Part::ALL.len()];
        for (priced, weight) in drinks {
            for (sum, part) in sums.iter_mut().zip(priced.cost.parts()?).filter(|(_, part)| !part.is_zero()) {
                *sum = sum.plus(part.times(*weight)?)?;
            }
        }
        let mut parts = [Money::ZERO; Part::ALL.len()];
        for (part, sum) in parts.iter_mut().zip(sums) {
            *part = sum.over(weights)?.as_part();
        }
        let time = mean(drinks, weights, &|it| Ok(it.cost.time.seconds()))?;
        let all: Option<Vec<Money>> =
            drinks.iter().map(|(it, _)| it.suggestion.as_ref().ok().map(|suggestion| suggestion.menu)).collect();
        let suggested = all.and_then(|all| all.iter().min().copied().zip(all.iter().max().copied()));
        let all_asked = drinks.iter().all(|(it, _)| it.asked.is_some());
        let asked = if all_asked { Some(MeansAsked::of(drinks, weights)?) } else { None };
        let fill = first.fill.volume;
        Ok(Some(Means { container, fill, parts, time: Time::from_seconds(time), suggested, asked }))
    }
}

impl MeansAsked {
    fn of(drinks: &[(&Priced, Exact)], weights: Exact) -> Result<MeansAsked, Overflow> {
        let of = |read: fn(&Asked) -> Money| {
            let read = |it: &Priced| Ok(it.asked.as_ref().map_or(Exact::ZERO, |asked| read(asked).major()));
            Ok::<Money, Overflow>(Money::from_major(mean(drinks, weights, &read)?.as_part()))
        };
        Ok(MeansAsked {
            price: of(|it| it.menu)?,
            without_tax: of(|it| it.without_tax)?,
            revenue: of(|it| it.revenue)?,
            fees: of(|it| it.fees)?,
            contribution: of(|it| it.contribution)?,
            left: mean(drinks, weights, &|it| {
                let left = |it: &Asked| it.revenue.major().times(it.margin.fraction());
                it.asked.as_ref().map_or(Ok(Exact::ZERO), left)
            })?,
            on_target: drinks.iter().filter(|(it, _)| it.status() == OfferStatus::OnTarget).count(),
        })
    }
}

/// The sum of each drink's number times its weight, over the sum of the weights.
fn mean(
    drinks: &[(&Priced, Exact)],
    weights: Exact,
    of: &dyn Fn(&Priced) -> Result<Exact, Overflow>,
) -> Result<Exact, Overflow> {
    let mut sum = Exact::ZERO;
    for (priced, weight) in drinks {
        sum = sum.plus(of(priced)?.times(*weight)?)?;
    }
    sum.over(weights)
}

fn rows(sizes: &[Means], per: Volume) -> Result<Vec<SizeRow>, Overflow> {
    let mut rows: Vec<SizeRow> = Vec::with_capacity(sizes.len());
    let mut smallest = None;
    for size in sizes {
        let per_volume = |money: Money| Ok(money.times(per.ratio_to(size.fill)?)?.as_part());
        let cost = size.parts.iter().try_fold(Money::ZERO, |sum, part| sum.plus(*part))?;
        let sold = match &size.asked {
            None => None,
            Some(asked) => {
                let price_per_volume = per_volume(asked.price)?;
                let base = *smallest.get_or_insert(price_per_volume);
                Some(SoldSize {
                    price: asked.price,
                    without_tax: asked.without_tax,
                    price_per_volume,
                    fees: asked.fees,
                    reductions: asked.without_tax.minus(asked.fees)?.minus(cost)?.minus(asked.contribution)?,
                    contribution: asked.contribution,
                    contribution_per_volume: per_volume(asked.contribution)?,
                    contribution_per_minute: per_minute(asked.contribution, size.time)?,
                    margin: Share::from_fraction(asked.left.over(asked.revenue.major())?.as_part()),
                    against_smallest: Share::from_fraction(price_per_volume.ratio_to(base)?.as_part()),
                    on_target: asked.on_target,
                })
            }
        };
        let mut row = SizeRow {
            container: size.container,
            fill: size.fill,
            parts: size.parts,
            cost,
            cost_per_volume: per_volume(cost)?,
            suggested: size.suggested,
            sold,
            step: None,
        };
        if let Some(smaller) = rows.iter().rfind(|row| row.sold.is_some()) {
            row.step = Step::between(smaller, &row)?;
        }
        rows.push(row);
    }
    Ok(rows)
}

fn per_minute(contribution: Money, time: Time) -> Result<Option<Money>, Overflow> {
    if !time.is_positive() {
        return Ok(None);
    }
    let minutes = time.seconds().over(Exact::new(60, 0))?;
    Ok(Some(contribution.over(minutes)?.as_part()))
}
