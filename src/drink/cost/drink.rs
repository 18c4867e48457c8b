//! The full cost of a drink at a size, part by part. The parts sum to the total exactly.

use super::{CostError, piece_cost, usable_cost};
use crate::book::{Book, Container, CostBasis, Drink, Goods, IngredientId, Key, Labour, LineId, PackagingId, Part};
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
    /// What each part comes to, beside the narrowest cost basis that has it. What is thrown away
    /// stands here once for each basis: for the parts that this basis adds.
    sums: Vec<Sum>,
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

    /// The full cost: all parts.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn total(&self) -> Result<Money, Overflow> {
        self.covered(CostBasis::Everything)
    }

    /// The cost that a margin on this cost basis must cover.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn covered(&self, basis: CostBasis) -> Result<Money, Overflow> {
        self.covered_of(basis, &|_| true)
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

/// The full cost of `drink` in `container`, its recipe scaled to `fill`.
///
/// # Errors
/// A [`CostError`] that names what lacks a pack, a yield or a density.
pub fn cost(
    book: &Book,
    drink: &Drink,
    container: &Container,
    scaled: &Scaled,
    fill: Volume,
) -> Result<Cost, CostError> {
    let settings = book.settings();
    let mut lines = Vec::with_capacity(scaled.lines.len());
    let mut ingredients = Money::ZERO;
    for line in &scaled.lines {
        let missing = CostError::Missing(Key::Ingredient(line.ingredient));
        let ingredient = book.ingredient(line.ingredient).ok_or(missing)?;
        let pack = ingredient.packs.first().ok_or(CostError::NoPack(Goods::Ingredient(ingredient.id)))?;
        let cost = usable_cost(ingredient, pack, line.stage, line.bought_as()?)?;
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
    let time = time(&drink.labour, fill)?;
    let labour = time.paid_at(settings.wage)?.as_part();
    let unsold = unsold_share(book, drink);
    let made = |part: Part| match part {
        Part::Ingredients => ingredients,
        Part::ContainerSet => container_set,
        Part::Labour => labour,
        Part::Flat(cost) => cost.of(drink, settings),
        // No basis adds it: it follows from those that are added.
        Part::Unsold => Money::ZERO,
    };
    let mut sums = Vec::new();
    for basis in CostBasis::ALL.iter().copied() {
        let mut all = Money::ZERO;
        for part in Part::ALL.into_iter().filter(|part| part.basis() == Some(basis)) {
            let money = made(part);
            sums.push(Sum { part, basis, money });
            all = all.plus(money)?;
        }
        sums.push(Sum { part: Part::Unsold, basis, money: thrown_away(all, unsold)? });
    }
    Ok(Cost { lines, packaging, time, sums })
}

/// The share of what is made of a drink that is thrown away.
pub fn unsold_share(book: &Book, drink: &Drink) -> Share {
    drink.unsold.unwrap_or(book.settings().unsold)
}

/// What a cost grows by if this share of what is made is thrown away: cost / (1 - share) less cost.
///
/// # Errors
/// [`Overflow`], also where all of it is thrown away.
pub fn thrown_away(cost: Money, unsold: Share) -> Result<Money, Overflow> {
    Ok(cost.times(unsold.fraction())?.over(unsold.rest()?.fraction())?.as_part())
}

/// Hands' time for one drink of this volume.
fn time(labour: &Labour, fill: Volume) -> Result<Time, Overflow> {
    let litres = fill.millilitres().over(Exact::new(1000, 0))?;
    labour.per_drink.plus(labour.per_litre.times(litres)?)?.plus(labour.per_batch.over(labour.batch)?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Pack, PackagingSet, PackagingSetId, Record, Settings};
    use crate::drink::fill::scale;
    use crate::support::{
        book, container, drink, exact, ingredient, ingredient_id, line, millilitres, money, pack, packaging_id,
        seconds, settings, share, use_of, vessel,
    };

    /// A drink of 500 mL from this pack, in a bottle from these packs.
    fn costed(base: Vec<Pack>, bottles: Vec<Pack>, change: impl FnOnce(&mut Drink)) -> Result<Cost, CostError> {
        let container = Container { set: vec![use_of(1, "2")], ..container(1, "500 mL") };
        let mut drink = drink(1, "500 mL", [line(1, 1, "250 mL")]);
        change(&mut drink);
        let settings = Settings { wage: money("18"), overhead: money("0.25"), unsold: share("0.5"), ..settings() };
        let book = book(
            settings,
            [
                Record::Ingredient(ingredient(1, base)),
                Record::Packaging(vessel(1, bottles)),
                Record::Container(container.clone()),
                Record::Drink(drink.clone()),
            ],
        );
        let fill = millilitres("500");
        let scaled = scale(&book, &drink, fill).unwrap();
        cost(&book, &drink, &container, &scaled, fill)
    }

    #[test]
    fn every_part_by_hand() {
        // Half a litre at 3.50 and 0.50 delivery a litre: 2.00. Two of ten for 2.50: 0.50.
        // 60 s, 30 s/L and 600 s for ten: 135 s at 18.00 an hour, 0.675. A fifth unsold adds a
        // quarter: (2 + 0.5 + 0.4) / 4, 0.675 / 4, 0.25 / 4.
        let base = Pack { surcharge: money("0.50"), ..pack(1, "1 L", "3.50") };
        let labour = Labour {
            per_drink: seconds("60"),
            per_litre: seconds("30"),
            per_batch: seconds("600"),
            batch: exact("10"),
        };
        let cost = costed(vec![base], vec![pack(1, "10 ea", "2.50")], |drink| {
            drink.labour = labour;
            drink.treatment_fee = money("0.40");
            drink.unsold = Some(share("0.2"));
        })
        .unwrap();
        let parts = Part::ALL.map(|part| cost.part(part).unwrap());
        assert_eq!(parts, ["2", "0.5", "0.675", "0.4", "0.25", "0.95625"].map(money));
        assert_eq!(cost.total(), Ok(money("4.78125")));
        assert_eq!(cost.time, seconds("135"));
        assert_eq!(cost.covered(CostBasis::Goods), Ok(money("3.625")));
        assert_eq!(cost.covered(CostBasis::GoodsAndLabour), Ok(money("4.46875")));
        assert_eq!(cost.covered(CostBasis::Everything), Ok(money("4.78125")));
    }

    #[test]
    fn the_books_unsold_share_holds_where_a_drink_has_none() {
        let cost = costed(vec![pack(1, "1 L", "4")], vec![pack(1, "10 ea", "2.50")], |_| ()).unwrap();
        assert_eq!(cost.part(Part::Unsold), Ok(money("2.75")));
    }

    #[test]
    fn what_stays_in_the_press_is_paid_for() {
        // A fifth stays behind: of 4.00 a litre, 625 mL for 500.
        let lossy = |drink: &mut Drink| drink.process_loss = share("0.2");
        let cost = costed(vec![pack(1, "1 L", "4")], vec![pack(1, "1 ea", "0")], lossy).unwrap();
        assert_eq!(cost.part(Part::Ingredients), Ok(money("2.5")));
    }

    #[test]
    fn a_shared_set_is_paid_for_with_the_containers_own() {
        // A bottle at 0.50 of its own, two straws at 0.02 with the set.
        let straws =
            PackagingSet { id: PackagingSetId::from_random(1), name: "Invented".into(), uses: vec![use_of(2, "2")] };
        let shared = vec![straws.id];
        let container = Container { set: vec![use_of(1, "1")], shared, ..container(1, "500 mL") };
        let drink = drink(1, "500 mL", [line(1, 1, "500 mL")]);
        let records = [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
            Record::Packaging(vessel(1, [pack(1, "1 ea", "0.5")])),
            Record::Packaging(vessel(2, [pack(1, "100 ea", "2")])),
            Record::PackagingSet(straws),
        ];
        let book = book(settings(), records);
        let fill = millilitres("500");
        let cost = cost(&book, &drink, &container, &scale(&book, &drink, fill).unwrap(), fill).unwrap();
        assert_eq!(cost.part(Part::ContainerSet), Ok(money("0.54")));
        assert_eq!(cost.packaging.len(), 2);
    }

    #[test]
    fn the_first_pack_is_the_one_bought() {
        let cost = costed(vec![pack(2, "1 L", "4"), pack(1, "1 L", "1")], vec![pack(1, "1 ea", "0")], |_| ()).unwrap();
        assert_eq!(cost.part(Part::Ingredients), Ok(money("2")));
    }

    #[test]
    fn what_has_no_pack_is_named() {
        let no_base = costed(vec![], vec![pack(1, "1 ea", "1")], |_| ());
        assert_eq!(no_base, Err(CostError::NoPack(Goods::Ingredient(ingredient_id(1)))));
        let no_bottle = costed(vec![pack(1, "1 L", "4")], vec![], |_| ());
        assert_eq!(no_bottle, Err(CostError::NoPack(Goods::Packaging(packaging_id(1)))));
    }
}
