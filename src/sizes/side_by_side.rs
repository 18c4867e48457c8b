//! Sizes side by side: one drink, or the drinks of a kind or of the whole menu that are sold in all
//! of the sizes, so that a step from size to size compares the same drinks.

use crate::book::{Book, ContainerId, DrinkId, OfferId, Scope};
use crate::cost::Part;
use crate::fill::fill;
use crate::ledger::{Ledger, Priced, Standing};
use crate::measure::{Exact, Money, Overflow, Share, Time, Volume};
use crate::price::Asked;

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
    /// The menu price suggested for the target; none where no price reaches it.
    pub suggested: Option<Money>,
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
    /// The price without tax.
    pub without_tax: Money,
    /// Menu price per price volume.
    pub price_per_volume: Money,
    /// Contribution of one drink.
    pub contribution: Money,
    /// Contribution per price volume.
    pub contribution_per_volume: Money,
    /// Contribution per minute of hands' time; none where the drink takes none.
    pub contribution_per_minute: Option<Money>,
    /// Margin on the covered terms: what they leave of all prices without tax, over these.
    pub margin: Share,
    /// What the customer pays per volume, over what the smallest priced size asks; 1 for that
    /// size itself.
    pub against_smallest: Share,
    /// How many of the drinks compared are on target.
    pub on_target: usize,
}

/// From one size to a larger one.
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

impl Step {
    /// The step between two sizes; none where one of them has no price.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn between(smaller: &SizeRow, larger: &SizeRow) -> Result<Option<Step>, Overflow> {
        let (Some(small), Some(large)) = (&smaller.sold, &larger.sold) else { return Ok(None) };
        let more_without_tax = large.without_tax.minus(small.without_tax)?;
        let kept = if more_without_tax.is_positive() {
            let more = large.contribution.minus(small.contribution)?;
            Some(Share::from_fraction(more.ratio_to(more_without_tax)?.as_part()))
        } else {
            None
        };
        Ok(Some(Step {
            extra_price: large.price.minus(small.price)?,
            extra_cost: larger.cost.minus(smaller.cost)?,
            kept,
        }))
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
            let place = found.partition_point(|before| *before < item);
            found.insert(place, item);
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
            let place = sizes.partition_point(|before| before.fill <= means.fill);
            sizes.insert(place, means);
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
    suggested: Option<Money>,
    asked: Option<MeansAsked>,
}

/// The same of the prices asked.
struct MeansAsked {
    price: Money,
    without_tax: Money,
    contribution: Money,
    /// What the covered terms leave, in the major unit and not rounded.
    left: Exact,
    on_target: usize,
}

impl Means {
    /// None without a drink.
    fn of(container: ContainerId, drinks: &[(&Priced, Exact)]) -> Result<Option<Means>, Overflow> {
        let Some((first, _)) = drinks.first() else { return Ok(None) };
        let mut parts = [Money::ZERO; Part::ALL.len()];
        for (sum, part) in parts.iter_mut().zip(Part::ALL) {
            *sum = money(drinks, &|it| it.cost.part(part))?;
        }
        let time = mean(drinks, &|it| Ok(it.cost.time.seconds()))?;
        let suggested = if drinks.iter().all(|(it, _)| it.suggestion.is_ok()) {
            Some(money(drinks, &|it| Ok(it.suggestion.map(|suggestion| suggestion.menu).unwrap_or_default()))?)
        } else {
            None
        };
        let asked = match drinks.iter().all(|(it, _)| it.asked.is_some()) {
            true => Some(MeansAsked::of(drinks)?),
            false => None,
        };
        let fill = first.fill.volume;
        Ok(Some(Means { container, fill, parts, time: Time::from_seconds(time), suggested, asked }))
    }
}

impl MeansAsked {
    fn of(drinks: &[(&Priced, Exact)]) -> Result<MeansAsked, Overflow> {
        let of = |read: &dyn Fn(&Asked) -> Result<Money, Overflow>| {
            money(drinks, &|it| it.asked.as_ref().map_or(Ok(Money::ZERO), read))
        };
        Ok(MeansAsked {
            price: of(&|it| Ok(it.menu))?,
            without_tax: of(&|it| Ok(it.without_tax))?,
            contribution: of(&|it| Ok(it.contribution))?,
            left: mean(drinks, &|it| {
                let left = |it: &Asked| it.without_tax.major().times(it.margin.fraction());
                it.asked.as_ref().map_or(Ok(Exact::ZERO), left)
            })?,
            on_target: drinks.iter().filter(|(it, _)| it.standing() == Standing::OnTarget).count(),
        })
    }
}

/// The sum of each drink's number times its weight, over the sum of the weights.
fn mean(drinks: &[(&Priced, Exact)], of: &dyn Fn(&Priced) -> Result<Exact, Overflow>) -> Result<Exact, Overflow> {
    let (mut sum, mut weights) = (Exact::ZERO, Exact::ZERO);
    for (priced, weight) in drinks {
        sum = sum.plus(of(priced)?.times(*weight)?)?;
        weights = weights.plus(*weight)?;
    }
    sum.over(weights)
}

fn money(drinks: &[(&Priced, Exact)], of: &dyn Fn(&Priced) -> Result<Money, Overflow>) -> Result<Money, Overflow> {
    Ok(Money::from_major(mean(drinks, &|it| of(it).map(Money::major))?.as_part()))
}

fn rows(sizes: &[Means], per: Volume) -> Result<Vec<SizeRow>, Overflow> {
    let mut rows: Vec<SizeRow> = Vec::with_capacity(sizes.len());
    let mut smallest = None;
    for size in sizes {
        let per_volume = |money: Money| Ok(money.times(per.ratio_to(size.fill)?)?.as_part());
        let sold = match &size.asked {
            None => None,
            Some(asked) => {
                let price_per_volume = per_volume(asked.price)?;
                let base = *smallest.get_or_insert(price_per_volume);
                Some(SoldSize {
                    price: asked.price,
                    without_tax: asked.without_tax,
                    price_per_volume,
                    contribution: asked.contribution,
                    contribution_per_volume: per_volume(asked.contribution)?,
                    contribution_per_minute: per_minute(asked.contribution, size.time)?,
                    margin: Share::from_fraction(asked.left.over(asked.without_tax.major())?.as_part()),
                    against_smallest: Share::from_fraction(price_per_volume.ratio_to(base)?.as_part()),
                    on_target: asked.on_target,
                })
            }
        };
        let cost = size.parts.iter().try_fold(Money::ZERO, |sum, part| sum.plus(*part))?;
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
#[cfg(test)]
mod tests {
    use super::*;
    use crate::book::{Container, Covers, Drink, DrinkKind, Labour, Offer, Record, Settings, Tax, TaxPlace};
    use crate::measure::System;
    use crate::support::{
        book, container, container_id, drink, drink_id, exact, ingredient, line, millilitres, money, offer, offer_id,
        pack, seconds, settings, share, use_of, vessel,
    };

    /// 4.00 a litre; a bottle at 0.50; 30 s at 36.00 an hour, or none. In 500, 250 and 350 mL
    /// (ids 1, 2, 3), at these prices.
    fn priced(settings: Settings, time: &str, prices: [Option<&str>; 3]) -> (Book, Ledger) {
        let labour = Labour { per_drink: seconds(time), ..Labour::default() };
        let bottle = |id, brimful| Record::Container(Container { set: vec![use_of(1, "1")], ..container(id, brimful) });
        let records = [
            Record::Ingredient(ingredient(1, [pack(1, "1 L", "4")])),
            Record::Packaging(vessel(1, [pack(1, "1 ea", "0.50")])),
            bottle(1, "500 mL"),
            bottle(2, "250 mL"),
            bottle(3, "350 mL"),
            Record::Drink(Drink { labour, ..drink(1, "1 L", [line(1, 1, "1 L")]) }),
        ];
        let offers = (1..).zip(prices).map(|(container, price)| Record::Offer(offer(1, container, price)));
        let settings = Settings { units: System::Metric, wage: money("36"), ..settings };
        let book = book(settings, records.into_iter().chain(offers));
        let ledger = Ledger::of(&book);
        (book, ledger)
    }

    const DRINK: Scope = Scope::Drink(DrinkId::from_random(1));

    fn sizes(book: &Book, ledger: &Ledger) -> SideBySide {
        side_by_side(book, ledger, DRINK, &sold_in(book, DRINK)).unwrap()
    }

    /// The sizes in a book without tax.
    fn rows(time: &str, prices: [Option<&str>; 3]) -> Vec<SizeRow> {
        let (book, ledger) = priced(settings(), time, prices);
        sizes(&book, &ledger).sizes
    }

    #[test]
    fn sizes_by_hand() {
        let rows = rows("30", [Some("6"), Some("4"), None]);
        let [small, middle, large] = rows.as_slice() else { panic!("three sizes, smallest first: {rows:?}") };

        // 1.00 of juice, 0.50, 0.30: 1.80; per 100 mL of 250 that is 0.72. At 4.00, 2.20 are left.
        let sold = SoldSize {
            price: money("4"),
            without_tax: money("4"),
            price_per_volume: money("1.6"),
            contribution: money("2.2"),
            contribution_per_volume: money("0.88"),
            contribution_per_minute: Some(money("4.4")),
            margin: share("0.625"),
            against_smallest: share("1"),
            on_target: 0,
        };
        let expected = SizeRow {
            container: container_id(2),
            fill: millilitres("250"),
            parts: ["1", "0.5", "0.3", "0", "0", "0"].map(money),
            cost: money("1.8"),
            cost_per_volume: money("0.72"),
            // Goods at a margin of 65 %: 1.50 / 0.35 = 4.2857..., to the next cent.
            suggested: Some(money("4.29")),
            sold: Some(sold),
            step: None,
        };
        assert_eq!(*small, expected);

        // No price asked: 1.40 + 0.80, and no step to it.
        assert_eq!((middle.container, middle.cost), (container_id(3), money("2.2")));
        assert_eq!((middle.sold, middle.step), (None, None));

        // 2.00 + 0.80 at 6.00: 3.20 are left. From 250 mL it is 2.00 more, 1.00 of it cost.
        let sold = SoldSize {
            price: money("6"),
            without_tax: money("6"),
            price_per_volume: money("1.2"),
            contribution: money("3.2"),
            contribution_per_volume: money("0.64"),
            contribution_per_minute: Some(money("6.4")),
            margin: share("0.583333333333"),
            against_smallest: share("0.75"),
            on_target: 0,
        };
        let step = Step { extra_price: money("2"), extra_cost: money("1"), kept: Some(share("0.5")) };
        assert_eq!((large.sold, large.step), (Some(sold), Some(step)));
    }

    #[test]
    fn a_share_is_kept_of_the_price_without_tax() {
        // 2.20 more on the menu are 2.00 without 10 % tax; 1.00 of it cost.
        let ten_percent = Tax { rate: share("0.1"), place: TaxPlace::InThePrice };
        let (book, ledger) =
            priced(Settings { tax: ten_percent, ..settings() }, "30", [Some("6.60"), Some("4.40"), None]);
        let rows = sizes(&book, &ledger).sizes;
        let kept = Some(share("0.5"));
        let step = Step { extra_price: money("2.2"), extra_cost: money("1"), kept };
        assert_eq!(rows[2].step, Some(step));
    }

    #[test]
    fn nothing_is_kept_of_a_price_that_does_not_rise() {
        let rows = rows("0", [Some("4"), Some("4"), None]);
        let step = Step { extra_price: money("0"), extra_cost: money("1"), kept: None };
        assert_eq!(rows[2].step, Some(step));
        assert_eq!(rows[2].sold.unwrap().contribution_per_minute, None, "it takes no time");
    }

    #[test]
    fn the_smallest_priced_size_is_the_measure() {
        let rows = rows("0", [Some("6"), None, Some("4.90")]);
        // 4.90 for 350 mL is 1.40 per 100 mL; 6.00 for 500 mL is 1.20.
        let against = |row: &SizeRow| row.sold.map(|sold| sold.against_smallest);
        assert_eq!(rows.iter().map(against).collect::<Vec<_>>()[..2], [None, Some(share("1"))]);
        assert_eq!(against(&rows[2]), Some(share("0.857142857143")));
    }

    /// Litres of four drinks at 4.00, 8.00, 2.00 and 1.00, in 250 mL (container 1) and 500 mL (2)
    /// and, of the first, in 1 L (3). Nothing else is paid for; the second takes 60 s, unpaid. The
    /// fourth is a shot. Prices and weekly sales in the two sizes.
    fn menu(offers: [[(Option<&str>, Option<&str>); 2]; 4]) -> (Book, Ledger) {
        let records = ["4", "8", "2", "1"].iter().zip(1..).flat_map(|(price, id)| {
            let timed = Labour { per_drink: seconds(if id == 2 { "60" } else { "0" }), ..Labour::default() };
            let kind = if id == 4 { DrinkKind::Shot } else { DrinkKind::Pressed };
            [
                Record::Ingredient(ingredient(id, [pack(1, "1 L", price)])),
                Record::Drink(Drink { labour: timed, kind, ..drink(id, "1 L", [line(1, id, "1 L")]) }),
            ]
        });
        let containers =
            [(1, "250 mL"), (2, "500 mL"), (3, "1 L")].map(|(id, size)| Record::Container(container(id, size)));
        let sold = (1..).zip(offers).flat_map(|(drink, sizes)| {
            (1..).zip(sizes).map(move |(container, (price, weekly))| {
                Record::Offer(Offer { weekly: weekly.map(exact), ..offer(drink, container, price) })
            })
        });
        let large = Record::Offer(offer(1, 3, Some("12")));
        let settings = Settings { units: System::Metric, covers: Covers::Goods, target: share("0.5"), ..settings() };
        let book = book(settings, records.chain(containers).chain(sold).chain([large]));
        let ledger = Ledger::of(&book);
        (book, ledger)
    }

    const TWO: [ContainerId; 2] = [ContainerId::from_random(1), ContainerId::from_random(2)];

    #[test]
    fn several_drinks_are_weighed_by_what_is_sold_of_them() {
        let (book, ledger) = menu([
            [(Some("3"), Some("30")), (Some("5"), Some("30"))],
            [(Some("5"), Some("20")), (Some("7"), None)],
            [(Some("9"), None), (Some("9"), None)],
            [(Some("9"), Some("5")), (None, None)],
        ]);
        let found = side_by_side(&book, &ledger, Scope::Menu, &TWO).unwrap();
        // 60 and 20 a week: three quarters and one quarter.
        assert_eq!(found.drinks, [(drink_id(1), exact("60")), (drink_id(2), exact("20"))]);
        assert_eq!(found.weights, Weights::WeeklySales);
        let left_out = [(drink_id(4), LeftOut::WithoutPrice(container_id(2))), (drink_id(3), LeftOut::WithoutSales)];
        assert_eq!(found.left_out, left_out);
        let [small, large] = found.sizes.as_slice() else { panic!("{found:?}") };
        // 0.75 * 1.00 + 0.25 * 2.00; 0.75 * 3.00 + 0.25 * 5.00; one is on target, one is not.
        assert_eq!((small.cost, small.parts[0]), (money("1.25"), money("1.25")));
        let sold = small.sold.unwrap();
        assert_eq!((sold.price, sold.contribution, sold.on_target), (money("3.5"), money("2.25"), 2));
        // Of 3.50 asked 2.25 are left; a quarter takes a minute: 15 s on average.
        assert_eq!(sold.margin, share("0.642857142857"));
        assert_eq!(sold.contribution_per_minute, Some(money("9")));
        // 0.75 * 2.00 + 0.25 * 4.00 of 0.75 * 5.00 + 0.25 * 7.00.
        let sold = large.sold.unwrap();
        assert_eq!((large.cost, sold.price, sold.contribution), (money("2.5"), money("5.5"), money("3")));
        assert_eq!((sold.price_per_volume, sold.on_target), (money("1.1"), 1));
        let step = Step { extra_price: money("2"), extra_cost: money("1.25"), kept: Some(share("0.375")) };
        assert_eq!(large.step, Some(step));
        assert_eq!(found.whole_step(), Ok(Some((container_id(1), container_id(2), step))));
        // Suggested at 50 %: 2.00 and 4.00.
        assert_eq!(small.suggested, Some(money("2.5")));
        let raised = found.raised(&book, container_id(1), money("0.25")).unwrap();
        assert_eq!(raised, [(offer_id(1, 1), money("3.25")), (offer_id(2, 1), money("5.25"))]);
    }

    #[test]
    fn without_sales_all_drinks_count_alike() {
        let (book, ledger) = menu([[(Some("3"), None), (Some("5"), None)]; 4]);
        let found = side_by_side(&book, &ledger, Scope::Menu, &TWO).unwrap();
        assert_eq!((found.weights, found.drinks.len(), found.left_out.len()), (Weights::Equal, 4, 0));
        // (1.00 + 2.00 + 0.50 + 0.25) / 4.
        assert_eq!(found.sizes[0].cost, money("0.9375"));
        let pressed = side_by_side(&book, &ledger, Scope::Kind(DrinkKind::Pressed), &TWO).unwrap();
        assert_eq!((pressed.drinks.len(), pressed.sizes[0].cost), (3, money("1.166666666667")));
    }

    #[test]
    fn where_no_drink_is_in_all_sizes_there_is_no_row() {
        let (book, ledger) = menu([[(Some("3"), None), (None, None)]; 4]);
        let three = [1, 2, 3].map(container_id);
        let found = side_by_side(&book, &ledger, Scope::Menu, &three).unwrap();
        assert_eq!((found.sizes.len(), found.drinks.len(), found.left_out.len()), (0, 0, 4));
        assert_eq!(found.left_out[0].1, LeftOut::WithoutPrice(container_id(2)));
        assert_eq!(found.whole_step(), Ok(None));
        // The second is not sold by the litre; that it has no price in 500 mL is found first.
        let found = side_by_side(&book, &ledger, Scope::Menu, &[container_id(3)]).unwrap();
        assert_eq!(found.left_out[0], (drink_id(2), LeftOut::NotSoldIn(container_id(3))));
        assert_eq!(found.sizes.len(), 1);
    }

    #[test]
    fn a_drink_that_cannot_be_computed_is_left_out() {
        let (mut book, _) = menu([[(Some("3"), None), (Some("5"), None)]; 4]);
        let empty = Record::Drink(Drink { kind: DrinkKind::Pressed, ..drink(2, "1 L", []) });
        book.apply(&crate::book::Edit::Put(empty)).unwrap();
        let found = side_by_side(&book, &Ledger::of(&book), Scope::Menu, &TWO).unwrap();
        assert_eq!(found.left_out, [(drink_id(2), LeftOut::CannotCompute(container_id(1)))]);
    }

    #[test]
    fn one_starts_with_the_sizes_that_most_drinks_share() {
        let full = (Some("3"), None);
        let (book, ledger) = menu([[full, full], [full, full], [full, full], [full, (None, None)]]);
        // Three drinks in two sizes are three steps; one drink in three sizes would be two.
        assert_eq!(sold_together(&book, &ledger, Scope::Menu), TWO);
        assert_eq!(sold_together(&book, &ledger, Scope::Kind(DrinkKind::Shot)), TWO[..1]);
        assert_eq!(sold_together(&book, &ledger, Scope::Kind(DrinkKind::Blended)), []);
        assert_eq!(sold_in(&book, Scope::Menu), [1, 2, 3].map(container_id));
        assert_eq!(sold_together(&book, &ledger, DRINK), [1, 2, 3].map(container_id));
    }

    #[test]
    fn an_average_of_one_drink_is_that_drink() {
        let (book, ledger) = menu([[(Some("3"), None), (Some("5.55"), None)]; 4]);
        let shots = side_by_side(&book, &ledger, Scope::Kind(DrinkKind::Shot), &TWO).unwrap();
        let alone = side_by_side(&book, &ledger, Scope::Drink(drink_id(4)), &TWO).unwrap();
        assert_eq!(shots.sizes, alone.sizes);
    }
}
