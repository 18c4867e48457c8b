//! The full cost of a drink at a size, part by part. The parts sum to the total exactly.

#[cfg(test)]
mod tests;

use super::{CostError, piece_cost, usable_cost};
use crate::book::{
    Book, Container, CostBasis, Drink, FlatCost, Goods, IcePlace, IngredientId, Key, Labour, LineId, OverheadPer,
    PackagingId, Part, Settings,
};
use crate::drink::fill::Scaled;
use crate::foundation::measure::{Exact, Money, Overflow, Share, Time, Volume};

/// What a line of the recipe costs in one drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LineCost {
    /// The line.
    pub line: LineId,
    /// Its ingredient.
    pub ingredient: IngredientId,
    /// Its cost.
    pub cost: Money,
}

/// What one kind of packaging costs for one drink.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PackagingCost {
    /// The packaging.
    pub packaging: PackagingId,
    /// Its cost.
    pub cost: Money,
}

/// The full cost of one drink at one size, in the book's currency. Each part is rounded once,
/// to twelve decimals.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cost {
    /// Ingredients, line by line.
    pub lines: Vec<LineCost>,
    /// The container set, piece by piece.
    pub packaging: Vec<PackagingCost>,
    /// Time of hands for one drink.
    pub time: Time,
    /// What each part comes to, beside the narrowest cost basis that has it. What is thrown away and what
    /// is handed out free stand here once for each basis: for the parts that this basis adds.
    sums: Vec<Sum>,
    /// What each basis has in all, in the order of [`CostBasis::ALL`].
    covered: [Money; CostBasis::ALL.len()],
}

/// What a part comes to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Sum {
    part: Part,
    basis: CostBasis,
    money: Money,
}

impl Cost {
    /// One part.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn part(&self, part: Part) -> Result<Money, Overflow> {
        self.covered_part(CostBasis::Everything, part)
    }

    /// What a margin on this cost basis must cover of one part; zero where the basis has nothing
    /// of it.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered_part(&self, basis: CostBasis, part: Part) -> Result<Money, Overflow> {
        self.covered_of(basis, &|it| it == part)
    }

    /// Each part, in the order of [`Part::ALL`].
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn parts(&self) -> Result<[Money; Part::ALL.len()], Overflow> {
        let mut parts = [Money::ZERO; Part::ALL.len()];
        for (money, part) in parts.iter_mut().zip(Part::ALL) {
            for sum in self.sums.iter().filter(|sum| sum.part == part && !sum.money.is_zero()) {
                *money = money.plus(sum.money)?;
            }
        }
        Ok(parts)
    }

    /// The full cost: all parts.
    pub fn total(&self) -> Money {
        self.covered(CostBasis::Everything)
    }

    /// The cost that a margin on this cost basis must cover.
    pub fn covered(&self, basis: CostBasis) -> Money {
        let [goods, goods_and_labour, everything] = self.covered;
        match basis {
            CostBasis::Goods => goods,
            CostBasis::GoodsAndLabour => goods_and_labour,
            CostBasis::Everything => everything,
        }
    }

    /// What a margin on this cost basis must cover of some of the parts.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered_of(&self, basis: CostBasis, counts: &dyn Fn(Part) -> bool) -> Result<Money, Overflow> {
        let mut covered = self.sums.iter().filter(|sum| sum.basis <= basis && counts(sum.part));
        covered.try_fold(Money::ZERO, |sum, more| sum.plus(more.money))
    }
}

/// The full cost of `drink` in `container`, its recipe scaled to `fill`, which bears `overhead`
/// ([`overhead()`]).
///
/// # Errors
/// A [`CostError`] that names what lacks a pack, a yield or a density.
pub fn cost(
    book: &Book,
    drink: &Drink,
    container: &Container,
    scaled: &Scaled,
    fill: Volume,
    overhead: Money,
) -> Result<Cost, CostError> {
    let settings = book.settings();
    let mut lines = Vec::with_capacity(scaled.lines.len());
    let mut ingredients = Money::ZERO;
    for line in &scaled.lines {
        let missing = CostError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient_now(line.ingredient).ok_or(missing)?;
        let pack = ingredient.packs.first().ok_or(CostError::NoPack(Goods::Ingredient(ingredient.id)))?;
        let cost = usable_cost(&ingredient, pack, line.stage, line.bought_as()?)?;
        ingredients = ingredients.plus(cost)?;
        lines.push(LineCost { line: line.line, ingredient: line.ingredient, cost });
    }
    let mut packaging = Vec::with_capacity(container.set.len());
    let mut container_set = Money::ZERO;
    for used in book.set_of(container) {
        let missing = CostError::Missing(Key::Packaging(used.packaging));
        let piece = book.packaging(used.packaging).ok_or(missing)?;
        let cost = piece_cost(piece, used.count)?;
        container_set = container_set.plus(cost)?;
        packaging.push(PackagingCost { packaging: used.packaging, cost });
    }
    let time = time(&drink.labour, liquid(scaled, fill)?)?;
    let labour = time.paid_at(settings.wage)?.as_part();
    let unsold = unsold_share(book, drink);
    let money_of = |part: Part| match part {
        Part::Ingredients => ingredients,
        Part::ContainerSet => container_set,
        Part::Labour => labour,
        Part::Flat(FlatCost::Overhead) => overhead,
        Part::Flat(cost) => cost.of(drink, settings),
        // No basis adds them: they follow from those that are added.
        Part::Unsold | Part::Free => Money::ZERO,
    };
    let mut sums = Vec::with_capacity(Part::ALL.len().saturating_add(CostBasis::ALL.len().saturating_mul(2)));
    let (mut so_far, mut covered) = (Money::ZERO, [Money::ZERO; CostBasis::ALL.len()]);
    for (basis, covered) in CostBasis::ALL.iter().copied().zip(&mut covered) {
        let mut made = Money::ZERO;
        for part in Part::ALL.into_iter().filter(|part| part.basis() == Some(basis)) {
            let money = money_of(part);
            sums.push(Sum { part, basis, money });
            so_far = so_far.plus(money)?;
            if is_made(part, settings) {
                made = made.plus(money)?;
            }
        }
        let wasted = not_paid(made, unsold)?;
        let free = not_paid(made.plus(wasted)?, settings.reductions.free)?;
        sums.push(Sum { part: Part::Unsold, basis, money: wasted });
        sums.push(Sum { part: Part::Free, basis, money: free });
        so_far = so_far.plus(wasted)?.plus(free)?;
        *covered = so_far;
    }
    Ok(Cost { lines, packaging, time, sums, covered })
}

/// The share of what is made of a drink that is thrown away.
pub fn unsold_share(book: &Book, drink: &Drink) -> Share {
    drink.unsold.unwrap_or(book.settings().unsold)
}

/// Whether a part is spent on every drink that is made: on those that are thrown away or handed out free too.
pub fn is_made(part: Part, settings: &Settings) -> bool {
    match part {
        Part::Flat(FlatCost::Overhead) => settings.overhead_per.is_drink_made(),
        Part::Unsold | Part::Free => false,
        _ => true,
    }
}

/// What one drink of a book bears of overhead: as typed, or that of a week over the drinks sold in one; zero
/// where it is not known how many are.
///
/// # Errors
/// [`Overflow`].
pub fn overhead(book: &Book) -> Result<Money, Overflow> {
    let settings = book.settings();
    if settings.overhead_per != OverheadPer::Week {
        return Ok(settings.overhead);
    }
    let sold = book.sold_weekly();
    if sold.is_positive() { Ok(settings.overhead.over(sold)?.as_part()) } else { Ok(Money::ZERO) }
}

/// What overhead would be typed as for something else, such as for a drink in place of a week: that of a drink times
/// the drinks sold in a week, to the currency's smallest unit, or that of a week over them, to six decimals. What is
/// typed for a drink and no less than the dearest drink was meant for a week, and stays as typed; so it does for a
/// week where nobody knows how many are sold. Returns `None` for a drink if nobody knows that.
///
/// # Errors
/// [`Overflow`].
pub fn overhead_for(book: &Book, per: OverheadPer) -> Result<Option<Money>, Overflow> {
    let (typed, sold) = (book.settings().overhead, book.sold_weekly());
    let [now, then] = [book.settings().overhead_per, per].map(|it| it == OverheadPer::Week);
    if now == then || typed.is_zero() {
        return Ok(Some(typed));
    }
    let dearest = book.offers().filter_map(|offer| offer.price).max();
    if then && (!sold.is_positive() || dearest.is_some_and(|dearest| typed >= dearest)) {
        return Ok(Some(typed));
    }
    if !sold.is_positive() {
        return Ok(None);
    }
    let (exact, places) =
        if then { (typed.times(sold)?, book.settings().currency.digits()) } else { (typed.over(sold)?, 6) };
    Ok(Some(Money::from_major(exact.major().rounded(places))))
}

/// What a cost grows by if this share of the drinks brings nothing, such as those that are thrown away:
/// cost / (1 - share) less cost.
///
/// # Errors
/// [`Overflow`], also where all of them bring nothing.
pub fn not_paid(cost: Money, share: Share) -> Result<Money, Overflow> {
    Ok(cost.times(share.fraction())?.over(share.rest()?.fraction())?.as_part())
}

/// What of a fill is no ice in the glass: that was never in the press or jug, and takes no time there.
///
/// # Errors
/// [`Overflow`].
pub fn liquid(scaled: &Scaled, fill: Volume) -> Result<Volume, Overflow> {
    let in_glass = scaled.lines.iter().filter(|line| line.ice.is_some_and(|ice| ice.place != IcePlace::BlendedIn));
    in_glass.map(|line| line.volume).try_fold(fill, Volume::minus)
}

/// Hands' time for one drink of this volume.
fn time(labour: &Labour, liquid: Volume) -> Result<Time, Overflow> {
    let litres = liquid.millilitres().over(Exact::new(1000, 0))?;
    labour.per_drink.plus(labour.per_litre.times(litres)?)?.plus(batch_time(labour, liquid)?)
}

/// The share of a batch's time that is one drink's: by its volume, or by the number of drinks.
///
/// # Errors
/// [`Overflow`].
pub fn batch_time(labour: &Labour, liquid: Volume) -> Result<Time, Overflow> {
    match labour.batch_volume.map(|batch| batch.volume()).transpose()?.flatten() {
        Some(batch) => labour.per_batch.times(liquid.millilitres())?.over(batch.millilitres()),
        None => labour.per_batch.over(labour.batch),
    }
}
