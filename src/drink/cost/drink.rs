//! The full cost of a drink at a size, part by part. The parts sum to the total exactly.

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
    let mut sums = Vec::new();
    for basis in CostBasis::ALL.iter().copied() {
        let mut made = Money::ZERO;
        for part in Part::ALL.into_iter().filter(|part| part.basis() == Some(basis)) {
            let money = money_of(part);
            sums.push(Sum { part, basis, money });
            if is_made(part, settings) {
                made = made.plus(money)?;
            }
        }
        let wasted = not_paid(made, unsold)?;
        let free = not_paid(made.plus(wasted)?, settings.reductions.free)?;
        sums.push(Sum { part: Part::Unsold, basis, money: wasted });
        sums.push(Sum { part: Part::Free, basis, money: free });
    }
    Ok(Cost { lines, packaging, time, sums })
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
/// the drinks sold in a week, to the currency's smallest unit, or that of a week over them, to six decimals. Returns
/// `None` if nobody knows how many are sold.
///
/// # Errors
/// [`Overflow`].
pub fn overhead_for(book: &Book, per: OverheadPer) -> Result<Option<Money>, Overflow> {
    let (typed, sold) = (book.settings().overhead, book.sold_weekly());
    let [now, then] = [book.settings().overhead_per, per].map(|it| it == OverheadPer::Week);
    if now == then || typed.is_zero() {
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{
        Edit, Ice, Ingredient, Line, Offer, Pack, PackagingSet, PackagingSetId, Record, Reductions, Scaling, Settings,
    };
    use crate::drink::fill::scale;
    use crate::drink::ledger::price_offer;
    use crate::drink::price::Hands;
    use crate::support::{
        amount, book, book_of_one_drink, container, density, drink, exact, ingredient, ingredient_id, line,
        millilitres, money, offer, offer_id, pack, packaging_id, seconds, settings, share, use_of, vessel,
    };

    #[test]
    fn overhead_follows_what_it_is_typed_for() {
        // 1,240.00 over 939 drinks are 1.3205537..., and those times 939 are 1,240.000206. By hand.
        let typed = |overhead: &str, per: OverheadPer, weekly: Option<&str>, then: OverheadPer| {
            let settings = Settings { overhead: money(overhead), overhead_per: per, ..settings() };
            let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, Some("5")) };
            let records = [Record::Container(container(1, "500 mL")), Record::Offer(sold)];
            let records = [Record::Drink(drink(1, "500 mL", []))].into_iter().chain(records);
            overhead_for(&book(settings, records), then).unwrap()
        };
        let (week, each) = (OverheadPer::Week, OverheadPer::DrinkSold);
        assert_eq!(typed("1240", week, Some("939"), each), Some(money("1.320554")));
        assert_eq!(typed("1.320554", each, Some("939"), week), Some(money("1240")));
        assert_eq!(typed("1240", week, None, each), None, "nobody knows how many are sold");
        assert_eq!(typed("0", week, None, each), Some(Money::ZERO));
        assert_eq!(typed("0.85", OverheadPer::DrinkMade, None, each), Some(money("0.85")), "both of a drink");
    }

    /// A drink of 500 mL from this pack, in a bottle from these packs.
    fn costed(base: Vec<Pack>, bottles: Vec<Pack>, change: impl FnOnce(&mut Drink)) -> Result<Cost, CostError> {
        costed_of(ingredient(1, base), bottles, change)
    }

    /// The same from this ingredient.
    fn costed_of(base: Ingredient, bottles: Vec<Pack>, change: impl FnOnce(&mut Drink)) -> Result<Cost, CostError> {
        let container = Container { set: vec![use_of(1, "2")], ..container(1, "500 mL") };
        let mut drink = drink(1, "500 mL", [line(1, 1, "250 mL")]);
        change(&mut drink);
        let settings = Settings {
            wage: money("18"),
            overhead: money("0.25"),
            overhead_per: OverheadPer::DrinkMade,
            unsold: share("0.5"),
            ..settings()
        };
        let book = book(
            settings,
            [
                Record::Ingredient(base),
                Record::Packaging(vessel(1, bottles)),
                Record::Container(container.clone()),
                Record::Drink(drink.clone()),
            ],
        );
        let fill = millilitres("500");
        let scaled = scale(&book, &drink, fill).unwrap();
        cost(&book, &drink, &container, &scaled, fill, overhead(&book).unwrap())
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
            batch_volume: None,
        };
        let cost = costed(vec![base], vec![pack(1, "10 ea", "2.50")], |drink| {
            drink.labour = labour;
            drink.treatment_fee = money("0.40");
            drink.unsold = Some(share("0.2"));
        })
        .unwrap();
        let parts = Part::ALL.map(|part| cost.part(part).unwrap());
        assert_eq!(parts, ["2", "0.5", "0.675", "0.4", "0.25", "0.95625", "0"].map(money));
        assert_eq!(cost.total(), Ok(money("4.78125")));
        assert_eq!(cost.time, seconds("135"));
        assert_eq!(cost.covered(CostBasis::Goods), Ok(money("3.625")));
        assert_eq!(cost.covered(CostBasis::GoodsAndLabour), Ok(money("4.46875")));
        assert_eq!(cost.covered(CostBasis::Everything), Ok(money("4.78125")));
    }

    #[test]
    fn a_batch_by_volume_gives_each_drink_its_share() {
        // By hand: 600 s for 20 L, and 500 mL of it: 15 s. With 8 L of ten drinks in between 24 s, not 60.
        let time = |per_batch, batch_volume: Option<&str>| {
            let labour = Labour {
                per_batch: seconds(per_batch),
                batch: exact("10"),
                batch_volume: batch_volume.map(amount),
                ..Labour::default()
            };
            let (base, bottle) = (vec![pack(1, "1 L", "4")], vec![pack(1, "1 ea", "0")]);
            costed(base, bottle, |drink| drink.labour = labour).unwrap().time
        };
        assert_eq!(time("600", Some("20 L")), seconds("15"));
        assert_eq!(time("384", Some("8 L")), seconds("24"));
        assert_eq!(time("600", None), seconds("60"));
    }

    #[test]
    fn ice_in_the_glass_takes_no_time_in_the_jug() {
        // By hand: 91.7 g of ice held under take 100 mL at 0.917 g/mL, so that 400 of 500 mL are poured:
        // 30 s a litre are 12 s, and of 600 s for 20 L 12 s. Blended in it counts: 15 s and 15 s.
        let time = |place| {
            let ice = Line { ice: Some(Ice::in_a_scoop(place)), scaling: Scaling::Fixed, ..line(2, 1, "91.7 g") };
            let labour = Labour {
                per_litre: seconds("30"),
                per_batch: seconds("600"),
                batch_volume: Some(amount("20 L")),
                ..Labour::default()
            };
            let frozen = |drink: &mut Drink| {
                drink.lines.push(ice);
                drink.labour = labour;
            };
            let base = pack(1, "1 kg", "4");
            let juice = Ingredient { density: Some(density("1")), ..ingredient(1, [base]) };
            costed_of(juice, vec![pack(1, "1 ea", "0")], frozen).unwrap().time
        };
        assert_eq!(time(IcePlace::HeldUnder), seconds("24"));
        assert_eq!(time(IcePlace::BlendedIn), seconds("30"));
    }

    #[test]
    fn overhead_is_per_drink_made_sold_or_by_the_week() {
        // A drink of 2.00, a fifth thrown away and half of what is handed out free: 2.50, then 5.00. Overhead of
        // 0.40 per drink made is 1.00 with both, and 0.40 per drink sold; 120.00 a week over 300 drinks is 0.40.
        // Of 10.00, 5.00 change with the number of drinks.
        let of = |overhead_per, overhead: &str, weekly: Option<&str>| {
            let settings = Settings {
                overhead: money(overhead),
                overhead_per,
                unsold: share("0.2"),
                reductions: Reductions { free: share("0.5"), ..Reductions::default() },
                cost_basis: CostBasis::Everything,
                ..settings()
            };
            let mut book = book_of_one_drink(settings, "2", Some("10"));
            let sold = Offer { weekly: weekly.map(exact), ..offer(1, 1, Some("10")) };
            let other = Offer { weekly: Some(exact("0")), ..offer(1, 2, None) };
            for record in [Record::Container(container(2, "1 L")), Record::Offer(sold), Record::Offer(other)] {
                book.apply(&Edit::Put(record)).unwrap();
            }
            let priced = price_offer(&book, book.offer(offer_id(1, 1)).unwrap()).unwrap();
            let parts =
                [Part::Flat(FlatCost::Overhead), Part::Unsold, Part::Free].map(|it| priced.cost.part(it).unwrap());
            let changes = priced.profit_that_changes(Hands::Counted).unwrap().unwrap();
            assert_eq!(changes, money("5"), "{overhead_per:?}");
            (parts.map(|it| it.major().to_string()).join(" "), priced.cost.total().unwrap())
        };
        let is = |parts: &str, total| (parts.to_string(), money(total));
        assert_eq!(of(OverheadPer::DrinkMade, "0.4", None), is("0.4 0.6 3", "6"));
        assert_eq!(of(OverheadPer::DrinkSold, "0.4", None), is("0.4 0.5 2.5", "5.4"));
        assert_eq!(of(OverheadPer::Week, "120", Some("300")), is("0.4 0.5 2.5", "5.4"));
        assert_eq!(of(OverheadPer::Week, "120", None), is("0 0.5 2.5", "5"));
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
        let scaled = scale(&book, &drink, fill).unwrap();
        let cost = cost(&book, &drink, &container, &scaled, fill, Money::ZERO).unwrap();
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
