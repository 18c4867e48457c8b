//! The way to the first price of a drink: ordinary edits, made where a person who is new here picks and types.

use crate::book::{
    Book, Brimful, Container, ContainerId, Drink, DrinkId, DrinkKind, Edit, Headspace, Ingredient, IngredientId, Key,
    Line, LineId, Offer, OfferId, Pack, PackId, Packaging, PackagingId, PackagingUse, Record, Scaling, Stage,
};
use crate::drink::fill::{fill, written_volume};
use crate::foundation::measure::{Amount, Exact, Money, Share, Unit, Volume};

/// The most characters of a name that is made of the names of what goes in.
const NAME_LENGTH: usize = 60;

/// What stands between the names of what goes in.
const BETWEEN: &str = ", ";

/// Sets the ids of what this way makes apart from all that a book may hold: their bits have no meaning.
const APART: u64 = 0x9e37_79b9_7f4a_7c15;

/// The container that the way makes for a drink: one for each, so that another choice takes its place.
pub const fn own_container(drink: DrinkId) -> ContainerId {
    ContainerId::from_random(drink.number() ^ APART)
}

/// The packaging that the way makes for a container.
pub const fn own_packaging(container: ContainerId) -> PackagingId {
    PackagingId::from_random(container.number() ^ APART.rotate_left(32))
}

/// The size of the drink on this way: the container that was made for it, else the first that it is sold in.
pub fn size(book: &Book, drink: DrinkId) -> Option<OfferId> {
    let own = OfferId { drink, container: own_container(drink) };
    book.offer(own).map(|_| own).or_else(|| book.offers_of(drink).next().map(Offer::id))
}

/// What is in the glass so far, and how much a full one holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Filled {
    /// What the lines of the recipe make.
    pub so_far: Volume,
    /// What is poured into the container.
    pub whole: Volume,
}

impl Filled {
    /// What is left to be filled; zero where nothing is.
    pub fn left(self) -> Volume {
        self.whole.minus(self.so_far).ok().filter(|left| left.is_positive()).unwrap_or(Volume::ZERO)
    }

    /// What is too much; zero where nothing is.
    pub fn over(self) -> Volume {
        Filled { so_far: self.whole, whole: self.so_far }.left()
    }
}

/// What is poured into the drink's size. Returns `None` before it has one.
pub fn poured(book: &Book, drink: DrinkId) -> Option<Volume> {
    Some(fill(book.container(size(book, drink)?.container)?).ok()?.volume)
}

/// How full the drink's size is. Returns `None` before it has one, and while a line lacks what its volume takes.
pub fn filled(book: &Book, drink: DrinkId) -> Option<Filled> {
    let whole = poured(book, drink)?;
    Some(Filled { so_far: written_volume(book, book.drink(drink)?).ok()?, whole })
}

/// A share of a full glass as an amount in a unit.
pub fn share_of(whole: Volume, share: Share, unit: Unit) -> Option<Amount> {
    let millilitres = whole.times(share.fraction()).ok()?.millilitres();
    let one = Amount::new(Exact::ONE, unit).volume().ok()??;
    Some(Amount::new(millilitres.over(one.millilitres()).ok()?, unit))
}

/// What is left to be filled as an amount in a unit.
pub fn rest_of(filled: Filled, unit: Unit) -> Option<Amount> {
    let one = Amount::new(Exact::ONE, unit).volume().ok()??;
    let rest = filled.left().millilitres().over(one.millilitres()).ok()?;
    rest.is_positive().then(|| Amount::new(rest, unit))
}

/// A name made of those of what goes in, up to the length of a menu's line. Returns `None` if nothing goes in.
pub fn name_of<'a>(names: impl Iterator<Item = &'a str>) -> Option<String> {
    let mut joined = String::new();
    for name in names {
        let more = if joined.is_empty() { name.to_string() } else { [&joined, BETWEEN, name].concat() };
        if more.chars().count() > NAME_LENGTH && !joined.is_empty() {
            break;
        }
        joined = more;
    }
    (!joined.is_empty()).then_some(joined)
}

/// Whether a drink is called by nothing but the names of ingredients: then nobody named it yet.
pub fn is_unnamed(book: &Book, name: &str) -> bool {
    name.split(BETWEEN).all(|piece| book.ingredients().any(|it| it.name == piece))
}

/// The name of a drink by its lines.
fn name_by_lines(book: &Book, drink: &Drink) -> Option<String> {
    let names = drink.lines.iter().filter_map(|line| book.ingredient(line.ingredient));
    name_of(names.map(|ingredient| ingredient.name.as_str()))
}

/// The edit that sells a drink in this container, which may be new; the drink is made where it is not there yet,
/// of this name. The size chosen before goes, unless it is another that has a price already; what was made for it
/// goes too, or is taken over by the next choice. Returns `None` if nothing fits into the container.
pub fn sell_in(book: &Book, id: DrinkId, container: Container, name: &str) -> Option<Edit> {
    let chosen = OfferId { drink: id, container: container.id };
    let own = own_container(id);
    let poured = fill(&container).ok()?.volume;
    let reference = match container.declared {
        Some(declared) => declared,
        None => share_of(poured, Share::WHOLE, book.settings().units.drink_unit())?,
    };
    let drink = match book.drink(id) {
        Some(drink) => Drink { reference, ..drink.clone() },
        None => Drink::new(id, name.to_string(), kind_of(book), reference),
    };
    let offer = book.offer(chosen).cloned().unwrap_or_else(|| Offer::new(chosen));
    let mut edits = Vec::new();
    let kept = book.container(own).filter(|_| container.id == own);
    let container = match kept {
        Some(before) => {
            let packaging = book.packaging(own_packaging(own)).cloned();
            let renamed = packaging.map(|it| Packaging { name: container.name.clone(), ..it });
            edits.extend(renamed.map(|it| Edit::Put(Record::Packaging(it))));
            let Container { set, shared, deposit, .. } = before.clone();
            Container { set, shared, deposit, ..container }
        }
        None => container,
    };
    edits.extend([Record::Container(container), Record::Drink(drink), Record::Offer(offer)].map(Edit::Put));
    let before = size(book, id).filter(|before| *before != chosen);
    let is_priced = |id: OfferId| book.offer(id).is_some_and(|offer| offer.price.is_some());
    if let Some(before) = before.filter(|before| before.container == own || !is_priced(*before)) {
        edits.push(Edit::Remove(Key::Offer(before)));
        if before.container == own && book.needed_by(Key::Container(own)).len() == 1 {
            edits.push(Edit::Remove(Key::Container(own)));
            let packaging = Key::Packaging(own_packaging(own));
            if book.contains(packaging) && book.needed_by(packaging).len() == 1 {
                edits.push(Edit::Remove(packaging));
            }
        }
    }
    Some(Edit::Together(edits))
}

/// Pressed where anything in the book is pressed, else blended. It can be changed on the drink's own screen.
fn kind_of(book: &Book) -> DrinkKind {
    let pressed = book.ingredients().any(|ingredient| ingredient.press_yield.is_some());
    if pressed { DrinkKind::Pressed } else { DrinkKind::Blended }
}

/// A container filled to the size that its label says. Its brimful capacity is that size until it is weighed.
pub fn filled_to_its_label(id: ContainerId, name: String, size: Amount) -> Container {
    let container = Container::new(id, name, Brimful::Weighed(size));
    Container { declared: Some(size), headspace: Headspace::Share(Share::ZERO), starting: Some(size), ..container }
}

/// The edit that writes how much of an ingredient goes into a drink, or that nothing does. A drink that nobody
/// named is called by what goes in. Returns `None` if the drink or the ingredient is gone.
pub fn put_amount(
    book: &Book,
    id: DrinkId,
    ingredient: &Ingredient,
    amount: Option<Amount>,
    line: LineId,
    stage: Stage,
) -> Option<Edit> {
    let mut drink = book.drink(id)?.clone();
    let here = drink.lines.iter_mut().find(|line| line.ingredient == ingredient.id);
    match (here, amount) {
        (Some(here), Some(amount)) => here.amount = amount,
        (None, Some(amount)) => drink.lines.push(Line {
            id: line,
            ingredient: ingredient.id,
            stage,
            amount,
            scaling: Scaling::InProportion,
            ice: None,
            in_glass: false,
        }),
        (_, None) => drink.lines.retain(|line| line.ingredient != ingredient.id),
    }
    if is_unnamed(book, &drink.name)
        && let Some(name) = name_by_lines(book, &drink)
    {
        drink.name = name;
    }
    Some(Edit::Put(Record::Drink(drink)))
}

/// How much of an ingredient goes into a drink.
pub fn amount_of(book: &Book, drink: DrinkId, ingredient: IngredientId) -> Option<Amount> {
    let line = book.drink(drink)?.lines.iter().find(|line| line.ingredient == ingredient)?;
    Some(line.amount)
}

/// What packaging costs for one drink in a container, where it is typed as one sum.
pub fn packaging_cost(book: &Book, container: ContainerId) -> Option<Money> {
    let own = own_packaging(container);
    let is_used = book.container(container)?.set.iter().any(|part| part.packaging == own);
    book.packaging(own).filter(|_| is_used)?.packs.first().map(|pack| pack.price)
}

/// The edit that writes what packaging costs for one drink in a container, as one piece of packaging of its
/// name. Without a cost it goes. Returns `None` if the container is gone.
pub fn put_packaging_cost(book: &Book, id: ContainerId, cost: Option<Money>) -> Option<Edit> {
    let own = own_packaging(id);
    let mut container = book.container(id)?.clone();
    container.set.retain(|part| part.packaging != own);
    let Some(cost) = cost else {
        let mut edits = vec![Edit::Put(Record::Container(container))];
        edits.extend(book.packaging(own).map(|_| Edit::Remove(Key::Packaging(own))));
        return Some(Edit::Together(edits));
    };
    let piece = Amount::new(Exact::ONE, Unit::Piece);
    let pack = Pack::new(PackId::from_random(own.number()), piece, cost);
    let packaging = Packaging { packs: vec![pack], ..Packaging::named(own, &container.name) };
    container.set.push(PackagingUse { packaging: own, count: Exact::ONE });
    let edits = [Record::Packaging(packaging), Record::Container(container)].map(Edit::Put);
    Some(Edit::Together(edits.into()))
}

#[cfg(test)]
mod tests;
