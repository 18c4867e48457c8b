//! The levers of an offer: what each reads, how far it goes, and the edit that sets it.

use super::nearest::Range;
use crate::book::{
    Book, Container, ContainerId, CostBasis, Drink, DrinkId, Edit, Goods, Headspace, Ingredient, IngredientId, Labour,
    Offer, OfferId, Pack, Packaging, PackagingUse, Part, Record, Stage,
};
use crate::drink::cost::unsold_share;
use crate::drink::ledger::Priced;
use crate::foundation::measure::{Amount, Exact, Money, Overflow, Share, TYPED_PLACES, Time, Unit, Volume};

/// Decimals that a book keeps of a number.
const KEPT_PLACES: u32 = 8;

/// The highest number that a book keeps.
const HIGHEST: Exact = Exact::new(99_999_999_999_999_999, KEPT_PLACES);

/// One thing that moves the margin of an offer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lever {
    /// The menu price.
    MenuPrice(OfferId),
    /// How full the container is poured.
    Fill(ContainerId),
    /// What the pack bought now costs, without its surcharge.
    PackPrice(Goods),
    /// What trimming leaves.
    TrimYield(IngredientId),
    /// What pressing gives.
    PressYield(IngredientId),
    /// What soaking, cooking or brewing gives.
    SoakYield(IngredientId),
    /// What the container costs with all that belongs to it, for one drink.
    ContainerSet(ContainerId),
    /// What is made and thrown away.
    Unsold(DrinkId),
    /// Hands' time for one drink of this size.
    HandsTime(DrinkId),
}

/// Where a lever stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Figure {
    /// A price or a cost.
    Money(Money),
    /// A fill.
    Volume(Volume),
    /// A yield or the unsold share.
    Share(Share),
    /// Hands' time.
    Time(Time),
}

impl Figure {
    /// The number in the base unit of its kind.
    pub(super) const fn number(self) -> Exact {
        match self {
            Figure::Money(money) => money.major(),
            Figure::Volume(volume) => volume.millilitres(),
            Figure::Share(share) => share.fraction(),
            Figure::Time(time) => time.seconds(),
        }
    }
}

impl Lever {
    /// The levers of an offer, in the order in which one would think of them.
    pub(super) fn all(book: &Book, offer: &Offer) -> Vec<Lever> {
        let mut levers = vec![Lever::MenuPrice(offer.id()), Lever::Fill(offer.container)];
        let lines = book.drink(offer.drink).map(|drink| drink.lines.as_slice()).unwrap_or_default();
        for (place, line) in lines.iter().enumerate() {
            let id = line.ingredient;
            if lines.iter().take(place).any(|before| before.ingredient == id) {
                continue;
            }
            let taken = |stage| lines.iter().any(|line| line.ingredient == id && line.stage == stage);
            levers.push(Lever::PackPrice(Goods::Ingredient(id)));
            if [Stage::Trimmed, Stage::Pressed, Stage::SoakedOrBrewed].into_iter().any(taken) {
                levers.push(Lever::TrimYield(id));
            }
            if taken(Stage::Pressed) {
                levers.push(Lever::PressYield(id));
            }
            if taken(Stage::SoakedOrBrewed) {
                levers.push(Lever::SoakYield(id));
            }
        }
        levers.push(Lever::ContainerSet(offer.container));
        if let Some(container) = book.container(offer.container) {
            for used in book.set_of(container) {
                let lever = Lever::PackPrice(Goods::Packaging(used.packaging));
                if !levers.contains(&lever) {
                    levers.push(lever);
                }
            }
        }
        levers.extend([Lever::Unsold(offer.drink), Lever::HandsTime(offer.drink)]);
        levers
    }

    /// Whether it moves a margin on this cost basis.
    pub(super) fn counts(self, basis: CostBasis) -> bool {
        !matches!(self, Lever::HandsTime(_)) || Part::Labour.basis().is_some_and(|labour| labour <= basis)
    }

    /// Whether it is the owner's to set. Suppliers' prices and containers are asked for, yields
    /// weighed.
    pub(super) const fn is_ours(self) -> bool {
        matches!(self, Lever::MenuPrice(_) | Lever::Fill(_) | Lever::Unsold(_) | Lever::HandsTime(_))
    }

    /// Where it stands in a book whose offer is computed as `priced`.
    pub(super) fn reading(self, book: &Book, priced: &Priced) -> Option<Figure> {
        Some(match self {
            Lever::MenuPrice(_) => Figure::Money(priced.asked?.menu),
            Lever::Fill(_) => Figure::Volume(priced.fill.volume.as_part()),
            Lever::PackPrice(goods) => Figure::Money(book.packs(goods).first()?.price_now()),
            Lever::TrimYield(id) => Figure::Share(book.ingredient_now(id)?.trim_yield),
            Lever::PressYield(id) => Figure::Share(book.ingredient_now(id)?.press_yield?),
            Lever::SoakYield(id) => Figure::Share(book.ingredient(id)?.soak_yield?),
            Lever::ContainerSet(_) => Figure::Money(priced.cost.part(Part::ContainerSet).ok()?),
            Lever::Unsold(id) => Figure::Share(unsold_share(book, book.drink(id)?)),
            Lever::HandsTime(_) => Figure::Time(priced.cost.time.as_part()),
        })
    }

    /// Whether there is nothing to gain from it: nothing is paid, cut away or thrown away.
    pub(super) fn is_spent(self, now: Figure) -> bool {
        match self {
            Lever::TrimYield(_) | Lever::PressYield(_) => now == Figure::Share(Share::WHOLE),
            _ => now.number().is_zero(),
        }
    }

    /// From where it stands to as far as it goes, as numbers for [`Lever::edit`]. A number that is
    /// set for good is one that can be typed. Returns `None` if the lever cannot be moved.
    pub(super) fn range(self, book: &Book, priced: &Priced) -> Option<Range> {
        let from = self.reading(book, priced)?.number();
        let kept = |from, to| Range { from, to, places: KEPT_PLACES };
        Some(match self {
            Lever::MenuPrice(_) => kept(from, priced.suggestion.ok()?.menu.major()),
            Lever::Fill(_) => {
                let unit = drink_unit(book).size();
                let places = TYPED_PLACES as u32;
                let number = |volume: Volume| steps(volume.millilitres().over(unit)?, places, Exact::floor);
                let from = number(priced.fill.headspace).ok()?;
                // Less than the fixed lines take is no drink, nor is nothing.
                let least = priced.scaled.fixed.max(Volume::from_millilitres(unit.times(Exact::new(1, places)).ok()?));
                let to = number(priced.fill.brimful.minus(least).ok()?).ok()?;
                Range { from, to, places }
            }
            Lever::PackPrice(_) | Lever::Unsold(_) => kept(from, Exact::ZERO),
            Lever::ContainerSet(_) => kept(steps(from, KEPT_PLACES, Exact::ceiling).ok()?, Exact::ZERO),
            Lever::TrimYield(_) | Lever::PressYield(_) => kept(from, Exact::ONE),
            Lever::SoakYield(_) => kept(from, HIGHEST),
            Lever::HandsTime(id) => {
                let places = TYPED_PLACES as u32;
                let from = steps(book.drink(id)?.labour.per_drink.seconds(), places, Exact::ceiling).ok()?;
                Range { from, to: Exact::ZERO, places }
            }
        })
    }

    /// The edit that sets it to `number`. Money is in the major unit; yields and the unsold share
    /// are fractions; time is in seconds for a drink of any size; a fill is given as the headspace
    /// above it, in the book's unit of drinks.
    pub(super) fn edit(self, book: &Book, number: Exact) -> Option<Edit> {
        let share = Share::from_fraction(number);
        let money = Money::from_major(number);
        Some(match self {
            Lever::MenuPrice(offer) => Edit::SetPrice { offer, price: Some(money) },
            Lever::Fill(id) => {
                let headspace = Headspace::Volume(Amount::new(number, drink_unit(book)));
                Edit::Put(Record::Container(Container { headspace, ..book.container(id)?.clone() }))
            }
            Lever::PackPrice(goods) => {
                Edit::SetPackPrice { goods, pack: book.packs(goods).first()?.id, price: money, day: None }
            }
            Lever::TrimYield(id) => weighed(book, id, |it| it.set_trim_yield(book.month(), share))?,
            Lever::PressYield(id) => weighed(book, id, |it| it.set_press_yield(book.month(), share))?,
            Lever::SoakYield(id) => weighed(book, id, |it| it.soak_yield = Some(share))?,
            Lever::ContainerSet(id) => container_set(book, book.container(id)?, money)?,
            Lever::Unsold(id) => Edit::Put(Record::Drink(Drink { unsold: Some(share), ..book.drink(id)?.clone() })),
            Lever::HandsTime(id) => {
                let drink = book.drink(id)?.clone();
                let labour = Labour { per_drink: Time::from_seconds(number), ..drink.labour };
                Edit::Put(Record::Drink(Drink { labour, ..drink }))
            }
        })
    }
}

fn drink_unit(book: &Book) -> Unit {
    book.settings().units.drink_unit()
}

/// A number brought to so many decimals by `round`, away from where the gap closes.
fn steps(number: Exact, places: u32, round: fn(Exact) -> Exact) -> Result<Exact, Overflow> {
    let step = Exact::new(1, places);
    round(number.over(step)?).times(step)
}

fn weighed(book: &Book, id: IngredientId, change: impl FnOnce(&mut Ingredient)) -> Option<Edit> {
    let mut ingredient = book.ingredient(id)?.clone();
    change(&mut ingredient);
    Some(Edit::Put(Record::Ingredient(ingredient)))
}

/// The container with one piece of packaging alone, which costs as much as the whole set is to.
fn container_set(book: &Book, container: &Container, cost: Money) -> Option<Edit> {
    let piece = book.packaging(book.set_of(container).next()?.packaging)?.clone();
    let pack = Pack {
        contents: Amount::new(Exact::ONE, Unit::Piece),
        price: cost,
        surcharge: Money::ZERO,
        at_a_time: Exact::ONE,
        tiers: Vec::new(),
        ..piece.packs.first()?.clone()
    };
    let set = vec![PackagingUse { packaging: piece.id, count: Exact::ONE }];
    let bare = Container { set, shared: Vec::new(), ..container.clone() };
    let piece = Packaging { packs: vec![pack], ..piece };
    Some(Edit::Together(vec![Edit::Put(Record::Packaging(piece)), Edit::Put(Record::Container(bare))]))
}
