//! What is said of batches and of what is here.

use super::allergens::allergens;
use super::dates::day;
use super::labels::{KEEPING_NOT_ENTERED, keeping};
use super::offer_errors::{offer_error, yield_error};
use super::{Speaker, overflow};
use crate::book::{Batch, Book, Drink, DrinkId, Goods, Key, Make, OfferId};
use crate::counter::batch::{Station, Weighed, made, planned};
use crate::counter::on_hand::{BestUse, Makes, NotMade, Reach, Scarce, Stopped, Used};
use crate::drink::label::allergens_of;
use crate::drink::make::Unmade;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Date, Exact, Overflow, Unit};
use crate::say;

/// What the best use goes by.
pub const BEST_USE: &str = "Best use goes by what is left of each drink's price in the book. A drink without a price, or with nothing left of it, is made of what the others leave over. Only what was counted can run out.";

/// What deducting from stock does.
pub const DEDUCT: &str = "Deducts what the filled drinks used, as bought, from what was counted. Each drink counts once, also after its batch is deleted and started again.";

/// Decimals of what is left or lacking.
const LEFT_PLACES: u32 = 2;

/// A station on the way of an ingredient.
pub const fn station(station: Station) -> &'static str {
    match station {
        Station::Out => "Take",
        Station::Trimmed => "After trimming",
        Station::Juice => "Juice",
        Station::Soaked => "Soaked or brewed",
    }
}

/// How long ago something was counted.
pub fn counted(on: Date, today: Date) -> String {
    match today.days_since(on) {
        0 => "Counted today.".to_string(),
        1 => "Counted yesterday.".to_string(),
        days @ 2..=60 => format!("Counted {days} days ago."),
        _ => format!("Counted on {}.", day(on)),
    }
}

/// What the number to make of a drink and size is called.
pub fn number_of(offer: OfferId, book: &Book) -> String {
    format!("Number of {}", book.name(Key::Offer(offer)))
}

/// For how many of a drink what they took was deducted. Returns an empty text if for no drink.
pub fn deducted(make: &Make, speaker: &Speaker) -> String {
    if make.off_shelf.is_zero() {
        return String::new();
    }
    say!(counter::deducted, drinks = speaker.counted(make.off_shelf))
}

/// That a number that is typed is not in the plan, since it cannot be read.
pub fn not_planned(field: &str, text: &str) -> String {
    format!("Not in this plan yet: “{text}” as {field}. Fix it in the batch.")
}

/// That a batch was deleted, and what became of what it had used.
pub fn batch_deleted(batch: &Batch) -> String {
    let off = batch.makes.iter().any(|make| make.off_shelf.is_positive());
    let stays = if off { " What it used stays deducted from stock." } else { "" };
    format!("Deleted: {}.{stays} Undo brings it back.", super::batch(batch.day))
}

/// How many are to be made and filled: "2 drinks and sizes, 30 to make, 12 filled."
///
/// # Errors
/// [`Overflow`].
pub fn batch_stands(batch: &Batch, speaker: &Speaker) -> Result<String, Overflow> {
    let add = |sum: Exact, (_, units): (OfferId, Exact)| sum.plus(units);
    let shown = |sum: Exact| speaker.number(sum);
    let (count, sum) = (planned(batch).count(), planned(batch).try_fold(Exact::ZERO, add)?);
    let (planned, made) = (shown(sum), shown(made(batch).try_fold(Exact::ZERO, add)?));
    Ok(match count {
        0 => "Nothing is planned yet.".to_string(),
        1 => format!("1 drink and size, {planned} to make, {made} filled."),
        count => format!("{count} drinks and sizes, {planned} to make, {made} filled."),
    })
}

/// Numbers and names as they are shown.
pub struct Batches<'a> {
    /// The book, for names and units.
    pub book: &'a Book,
    /// Says its numbers.
    pub speaker: &'a Speaker,
}

impl Batches<'_> {
    /// How each drink that is made is kept, and until when, in the order of making: names and
    /// sentences.
    pub fn kept(&self, batch: &Batch) -> Vec<(String, String)> {
        let drinks = self.drinks(batch).into_iter();
        let kept = drinks.map(|drink| match keeping(drink, Some(batch.day)) {
            kept if kept.is_empty() => (drink.name.clone(), KEEPING_NOT_ENTERED.to_string()),
            kept => (drink.name.clone(), kept),
        });
        kept.collect()
    }

    /// What each drink of a batch holds that must be named, and what is used around it.
    pub fn allergens(&self, batch: &Batch) -> Vec<(String, String)> {
        let held = |drink: &Drink| (drink.name.clone(), allergens(&allergens_of(self.book, drink), self.book));
        self.drinks(batch).into_iter().map(held).collect()
    }

    /// The drinks of a batch, each once.
    fn drinks(&self, batch: &Batch) -> Vec<&Drink> {
        let mut ids: Vec<DrinkId> = Vec::new();
        for make in batch.planned() {
            if !ids.contains(&make.drink) {
                ids.push(make.drink);
            }
        }
        ids.into_iter().filter_map(|id| self.book.drink(id)).collect()
    }

    /// An amount as it is read off a scale or a jug: "7 lb 3.4 oz", "1.25 kg", "151.5 fl oz".
    pub fn weighed(&self, amount: Amount) -> String {
        let in_pounds = (amount.unit == Unit::Ounce).then(|| pounds_and_ounces(amount.number)).flatten();
        let Some((pounds, rest)) = in_pounds else { return self.one(thousands(amount)) };
        let pounds = self.one(Amount::new(pounds, Unit::Pound));
        if rest.is_zero() { pounds } else { format!("{pounds} {}", self.one(Amount::new(rest, Unit::Ounce))) }
    }

    /// What it takes exactly, in the unit that it is weighed in, to a thousandth.
    pub fn exactly(&self, weighed: &Weighed) -> String {
        let unit = weighed.amount.unit;
        match weighed.exact.base().over(unit.size()) {
            Ok(number) => format!("exactly {}", self.weighed(Amount::new(number.rounded(3), unit))),
            Err(error) => overflow(error),
        }
    }

    fn one(&self, amount: Amount) -> String {
        let unit = amount.unit.name_in(self.book.settings().units);
        self.speaker.with_unit(amount.number, 0, unit)
    }

    /// An amount that is left, never more than it is.
    fn left(&self, amount: Amount) -> String {
        self.to_places(amount, Exact::floor)
    }

    /// An amount that is lacking, never less than it is; pieces are whole.
    fn lacking(&self, amount: Amount) -> String {
        match amount.unit {
            Unit::Piece => self.speaker.amount(Amount::new(amount.number.rounded(6).ceiling(), Unit::Piece)),
            _ => self.to_places(amount, Exact::ceiling),
        }
    }

    fn to_places(&self, amount: Amount, round: fn(Exact) -> Exact) -> String {
        let parts = Exact::from(10_u32.pow(LEFT_PLACES));
        let number = amount.number.rounded(6).times(parts).and_then(|number| round(number).over(parts));
        number.map_or_else(overflow, |number| self.speaker.amount(Amount::new(number, amount.unit)))
    }

    fn name(&self, goods: Goods) -> String {
        self.book.name(Key::from(goods))
    }

    fn names(&self, offers: &[OfferId]) -> String {
        offers.iter().map(|offer| self.book.name(Key::Offer(*offer))).collect::<Vec<_>>().join("; ")
    }

    /// Whether what is here reaches. Returns an empty text if nobody counted it.
    pub fn reach(&self, reach: &Reach) -> String {
        match reach {
            Reach::NotCounted => String::new(),
            Reach::Enough(left) => format!("Enough here: {} to spare.", self.left(*left)),
            Reach::Short(short) => format!("Short by {}.", self.lacking(*short)),
            Reach::Unknown(lacks) => self.not_comparable(lacks),
        }
    }

    /// Why what is needed cannot be put in the unit of the count or the scale.
    pub fn not_comparable(&self, lacks: &YieldError) -> String {
        format!("Not known in the unit of the count or the scale. {}", yield_error(lacks, self.book))
    }

    /// Why a drink is not counted.
    pub fn unmade(&self, offer: OfferId, unmade: &Unmade) -> String {
        let name = self.book.name(Key::Offer(offer));
        match unmade {
            Unmade::NotOnTheMenu => {
                format!(
                    "{name}: not on the menu in this size any more. Take it out of the plan, or add the size again."
                )
            }
            Unmade::Stuck(why) => format!("{name}: {}", offer_error(why, self.book)),
        }
    }

    /// What runs out first when one drink is made of what is here.
    pub fn makes(&self, makes: &Result<Makes, NotMade>) -> String {
        match makes {
            Ok(makes) => {
                let first = format!("First to run out: {}.", self.name(makes.runs_out));
                match makes.not_counted.as_slice() {
                    [] => first,
                    [one] => format!("{first} Not counted: {}.", self.name(*one)),
                    [one, rest @ ..] => {
                        format!("{first} Not counted: {} and {} more.", self.name(*one), rest.len())
                    }
                }
            }
            Err(NotMade::NothingCounted) => "Nothing that it takes was counted.".to_string(),
            Err(NotMade::Unmade(Unmade::NotOnTheMenu)) => "Not on the menu.".to_string(),
            Err(NotMade::Unmade(Unmade::Stuck(why))) => offer_error(why, self.book),
            Err(NotMade::Unknown(lacks)) => self.not_comparable(lacks),
        }
    }

    /// What was found, and how sure it is.
    pub fn best(&self, best: &BestUse) -> String {
        let (planned, rest) = match (best.scarce.as_slice(), best.by_number, best.proved) {
            ([], _, _) => ("What was counted reaches for all of it.", ""),
            (_, false, true) => ("No other numbers bring more with what is here.", ""),
            (_, true, true) => (
                "No other numbers make more drinks with what is here.",
                " No drink has a price, so their number counts.",
            ),
            (_, _, false) => (
                "The best that was found.",
                " Too many drinks share too much here to try everything; other numbers may bring a little more.",
            ),
        };
        let nothing = match best.for_nothing.as_slice() {
            [] => String::new(),
            drinks => format!(" Made of what the others leave over: {}.", self.names(drinks)),
        };
        let endless = match best.endless.as_slice() {
            [] => String::new(),
            drinks => format!(" Left out, since nothing that they take was counted: {}.", self.names(drinks)),
        };
        format!("{planned}{rest}{nothing}{endless}")
    }

    /// What is left of something that does not reach for the whole plan.
    pub fn scarce(&self, scarce: &Scarce) -> String {
        format!("{}: {} left.", self.name(scarce.goods), self.left(scarce.left))
    }

    /// Why there is no best use.
    pub fn stopped(&self, stopped: &Stopped) -> String {
        match stopped {
            Stopped::LeastTooMany(goods) => format!(
                "What must be made in any case takes more {} than is here. Let some of it go, or count again.",
                self.name(*goods)
            ),
            Stopped::Unknown(lacks) => self.not_comparable(lacks),
            Stopped::Arithmetic(error) => overflow(*error),
        }
    }

    /// What was taken off the shelf.
    pub fn taken(&self, used: &Used) -> String {
        let below = match used.below.as_slice() {
            [] => String::new(),
            goods => {
                let names: Vec<String> = goods.iter().map(|goods| self.name(*goods)).collect();
                format!(" More was used than was counted, so nothing is left: {}. Count again.", names.join("; "))
            }
        };
        match used.taken {
            0 => "Nothing that the filled drinks took was counted.".to_string(),
            1 => format!("Taken off the shelf: 1 thing. Undo puts it back.{below}"),
            taken => format!("Taken off the shelf: {taken} things. Undo puts them back.{below}"),
        }
    }
}

/// Ounces in a pound.
const OUNCES: u32 = 16;

/// Whole pounds and the ounces beyond; none under a pound.
fn pounds_and_ounces(ounces: Exact) -> Option<(Exact, Exact)> {
    let sixteen = Exact::from(OUNCES);
    let pounds = ounces.over(sixteen).ok()?.floor();
    let rest = ounces.minus(pounds.times(sixteen).ok()?).ok()?;
    pounds.is_positive().then_some((pounds, rest))
}

/// A thousand grams or millilitres and more in kilograms and litres.
fn thousands(amount: Amount) -> Amount {
    let large = match amount.unit {
        Unit::Gram => Unit::Kilogram,
        Unit::Millilitre => Unit::Litre,
        _ => return amount,
    };
    let number = amount.number.over(Exact::from(1000)).ok().filter(|number| *number >= Exact::ONE);
    number.map_or(amount, |number| Amount::new(number, large))
}
