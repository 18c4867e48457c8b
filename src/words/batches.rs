//! What is said of batches and of what is here.

use super::allergens::allergens;
use super::counter::counter_caution;
use super::dates::day;
use super::labels::keeping;
use super::offer_errors::{offer_error, yield_error};
use super::{Speaker, overflow, unit};
use crate::book::{Batch, Book, Drink, DrinkId, Goods, Key, Make, OfferId};
use crate::counter::batch::{Station, made, planned};
use crate::counter::on_hand::{BestUse, Makes, NotMade, Reach, Reached, Scarce, Stopped, Used};
use crate::drink::fill::fill;
use crate::drink::label::{Caution, allergens_of};
use crate::drink::make::Unmade;
use crate::drink::yields::YieldError;
use crate::foundation::measure::{Amount, Date, Exact, Overflow, Unit};
use crate::say;

/// Decimals of what is left or lacking.
const LEFT_PLACES: u32 = 2;

/// A station on the way of an ingredient.
pub fn station(station: Station) -> &'static str {
    match station {
        Station::Out => say!(counter::start_with),
        Station::Trimmed => say!(counter::trimmed),
        Station::Juice => say!(counter::juice),
        Station::Soaked => say!(counter::soaked_or_brewed),
    }
}

/// How long ago something was counted.
pub fn counted(on: Date, today: Date) -> String {
    match today.days_since(on) {
        0 => say!(counter::counted_today).to_string(),
        1 => say!(counter::counted_yesterday).to_string(),
        days @ 2..=60 => say!(counter::counted_days_ago, days = usize::try_from(days).unwrap_or_default()),
        _ => say!(counter::counted_on, day = day(on)),
    }
}

/// What the number to make of a drink and size is called.
pub fn number_of(offer: OfferId, book: &Book) -> String {
    say!(counter::number_of, drink = book.name(Key::Offer(offer)))
}

/// What a change of that number is called, as a step.
pub fn change_number_of(offer: OfferId, book: &Book) -> String {
    say!(counter::change_number_of, drink = book.name(Key::Offer(offer)))
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
    say!(counter::not_in_plan, text = text, field = field)
}

/// That a batch was deleted, and what became of what it had used.
pub fn batch_deleted(batch: &Batch) -> String {
    if batch.makes.iter().any(|make| make.off_shelf.is_positive()) {
        say!(counter::deducted_batch_deleted, day = day(batch.day))
    } else {
        say!(counter::batch_deleted, day = day(batch.day))
    }
}

/// How many are to be made and filled: "2 drink sizes: 30 to make, 12 filled."
///
/// # Errors
/// [`Overflow`].
pub fn batch_stands(batch: &Batch, speaker: &Speaker) -> Result<String, Overflow> {
    let add = |sum: Exact, (_, units): (OfferId, Exact)| sum.plus(units);
    let shown = |sum: Exact| speaker.number(sum);
    let (count, sum) = (planned(batch).count(), planned(batch).try_fold(Exact::ZERO, add)?);
    let (planned, made) = (shown(sum), shown(made(batch).try_fold(Exact::ZERO, add)?));
    Ok(match count {
        0 => say!(counter::nothing_planned).to_string(),
        sizes => say!(counter::batch_totals, sizes = sizes, planned = planned, made = made),
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
            kept if kept.is_empty() => (drink.name.clone(), say!(labels::storage_not_entered).to_string()),
            kept => (drink.name.clone(), kept),
        });
        kept.collect()
    }

    /// What each drink of a batch holds that must be named, and what is used around it.
    pub fn allergens(&self, batch: &Batch) -> Vec<(String, String)> {
        let held = |drink: &Drink| (drink.name.clone(), allergens(&allergens_of(self.book, drink), self.book));
        self.drinks(batch).into_iter().map(held).collect()
    }

    /// What to be careful of with the drinks of a batch: each sentence with those of which it holds. What holds of a
    /// size only is said with its name.
    pub fn cautions(&self, batch: &Batch) -> Vec<(String, String)> {
        let mut found: Vec<(String, Vec<String>)> = Vec::new();
        for offer in batch.planned().map(Make::offer) {
            let Some(drink) = self.book.drink(offer.drink) else { continue };
            let fill = self.book.container(offer.container).and_then(|container| fill(container).ok());
            for caution in Caution::of(self.book, drink, self.book.offer(offer), fill.as_ref()) {
                let Some(said) = counter_caution(&caution, self.book) else { continue };
                let name = match caution {
                    // It stands with the allergens.
                    Caution::AllergensAsInTheBook => continue,
                    Caution::FillShortOfDeclared(_) => self.book.name(Key::Offer(offer)),
                    _ => drink.name.clone(),
                };
                let place = found.iter().position(|(sentence, _)| *sentence == said).unwrap_or(found.len());
                if place == found.len() {
                    found.push((said, Vec::new()));
                }
                if let Some((_, names)) = found.get_mut(place).filter(|(_, names)| !names.contains(&name)) {
                    names.push(name);
                }
            }
        }
        found.into_iter().map(|(sentence, names)| (sentence, names.join(", "))).collect()
    }

    /// What is short on the shelf for a batch, by how much: names and sentences. Then what nobody counted, which may be
    /// short too.
    pub fn shortages(&self, reached: &[Reached], deducted: bool) -> Vec<(String, String)> {
        let short = reached.iter().filter(|it| matches!(it.reach, Reach::Short(_)));
        let short = short.map(|it| (self.name(it.goods), self.reach(&it.reach, deducted)));
        let uncounted = reached.iter().filter(|it| it.reach == Reach::NotCounted);
        let mut names: Vec<String> = uncounted.map(|it| self.name(it.goods)).collect();
        // Ids come by chance.
        names.sort_unstable();
        let not_counted =
            (!names.is_empty()).then(|| (say!(counter::items_not_counted, items = names.len()), names.join(", ")));
        short.chain(not_counted).collect()
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

    fn one(&self, amount: Amount) -> String {
        let called = unit(amount.unit, self.book.settings().units);
        match amount.unit {
            Unit::Piece => [&*self.speaker.pieces(amount.number), "\u{a0}", called].concat(),
            _ => self.speaker.with_unit(amount.number, 0, called),
        }
    }

    /// An amount that is left, never more than it is.
    fn left(&self, amount: Amount) -> String {
        self.in_ounces(amount, Exact::floor).unwrap_or_else(|| self.to_places(amount, Exact::floor))
    }

    /// Pounds in the same words as what is weighed out: "3 lb 1 oz" and not "3.06 lb".
    fn in_ounces(&self, amount: Amount, round: fn(Exact) -> Exact) -> Option<String> {
        let pounds = Some(amount.number.rounded(6)).filter(|_| amount.unit == Unit::Pound)?;
        let tenths = pounds.times(Exact::from(OUNCES)).and_then(|ounces| ounces.times(Exact::from(10)));
        let ounces = tenths.map(round).and_then(|tenths| tenths.over(Exact::from(10))).ok()?;
        Some(self.weighed(Amount::new(ounces, Unit::Ounce)))
    }

    /// An amount that is lacking, never less than it is; pieces are whole.
    fn lacking(&self, amount: Amount) -> String {
        match amount.unit {
            Unit::Piece => self.speaker.amount(Amount::new(amount.number.rounded(6).ceiling(), Unit::Piece)),
            _ => self.in_ounces(amount, Exact::ceiling).unwrap_or_else(|| self.to_places(amount, Exact::ceiling)),
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

    /// What is lacking: of a plan of which some is `deducted` already, for what is not. Returns an empty text where
    /// there is enough, and if nobody counted it.
    pub fn reach(&self, reach: &Reach, deducted: bool) -> String {
        match reach {
            Reach::NotCounted | Reach::Enough(_) => String::new(),
            Reach::Short(short) if deducted => say!(counter::short_of_rest, amount = self.lacking(*short)),
            Reach::Short(short) => say!(counter::short, amount = self.lacking(*short)),
            Reach::Unknown(lacks) => self.not_comparable(lacks),
        }
    }

    /// What is lacking for today's batch. Returns an empty text where there is enough.
    pub fn reach_today(&self, reach: &Reach) -> String {
        match reach {
            Reach::NotCounted => say!(counter::today_needs_this).to_string(),
            Reach::Enough(_) => String::new(),
            Reach::Short(short) => say!(counter::today_short, amount = self.lacking(*short)),
            Reach::Unknown(lacks) => self.not_comparable(lacks),
        }
    }

    /// Why what is needed cannot be put in the unit of the count or the scale.
    pub fn not_comparable(&self, lacks: &YieldError) -> String {
        [say!(counter::units_do_not_convert), &yield_error(lacks, self.book)].join(" ")
    }

    /// Why a drink is not counted.
    pub fn unmade(&self, offer: OfferId, unmade: &Unmade) -> String {
        let drink = self.book.name(Key::Offer(offer));
        match unmade {
            Unmade::NotOnTheMenu => say!(counter::drink_gone_from_menu, drink = drink),
            Unmade::Stuck(why) => say!(counter::drink_trouble, drink = drink, problem = offer_error(why, self.book)),
        }
    }

    /// What runs out first when a drink is made of what is here, in any of these sizes, and how much of what it takes
    /// nobody counted; or why it is not made.
    pub fn makes(&self, sizes: &[&Result<Makes, NotMade>]) -> String {
        let (mut first, mut said): (Vec<String>, Vec<String>) = (Vec::new(), Vec::new());
        let mut not_counted = 0;
        for size in sizes {
            let (list, text) = match size {
                Ok(makes) => {
                    not_counted = not_counted.max(makes.not_counted.len());
                    (&mut first, self.name(makes.runs_out))
                }
                Err(why) => (&mut said, self.not_made(why)),
            };
            if !list.contains(&text) {
                list.push(text);
            }
        }
        // What nobody counted may run out before.
        if !first.is_empty() {
            let item = first.join(", ");
            said.insert(
                0,
                match not_counted {
                    0 => say!(counter::runs_out_first, item = item),
                    _ => say!(counter::runs_out_first_of_rest, item = item),
                },
            );
        }
        if not_counted > 0 {
            said.insert(0, say!(counter::items_not_counted, items = not_counted));
        }
        said.join(" ")
    }

    fn not_made(&self, why: &NotMade) -> String {
        match why {
            NotMade::NothingCounted => say!(counter::no_counts_for_drink).to_string(),
            NotMade::Unmade(Unmade::NotOnTheMenu) => say!(counter::not_on_the_menu).to_string(),
            NotMade::Unmade(Unmade::Stuck(why)) => offer_error(why, self.book),
            NotMade::Unknown(lacks) => self.not_comparable(lacks),
        }
    }

    /// What was found, and how sure it is.
    pub fn best(&self, best: &BestUse) -> String {
        let found = match (best.scarce.as_slice(), best.by_number, best.proved) {
            ([], _, _) => say!(counter::enough_for_all),
            (_, false, true) => say!(counter::best_by_profit),
            (_, true, true) => say!(counter::best_by_number),
            (_, _, false) => say!(counter::best_found),
        };
        // Where something is used up, what is here is not enough for all.
        let is_told = best.out.is_empty() || !best.scarce.is_empty();
        let mut said: Vec<String> = is_told.then(|| found.to_string()).into_iter().collect();
        if !best.out.is_empty() {
            let mut goods: Vec<String> = Vec::new();
            for name in best.out.iter().map(|(_, goods)| self.name(*goods)) {
                if !goods.contains(&name) {
                    goods.push(name);
                }
            }
            let drinks: Vec<OfferId> = best.out.iter().map(|(offer, _)| *offer).collect();
            said.push(say!(counter::out_of_stock, items = goods.join(", "), drinks = self.names(&drinks)));
        }
        if !best.for_nothing.is_empty() {
            said.push(say!(counter::made_from_what_is_left, drinks = self.names(&best.for_nothing)));
        }
        if !best.endless.is_empty() {
            said.push(say!(counter::left_out_not_counted, drinks = self.names(&best.endless)));
        }
        said.join(" ")
    }

    /// What is left of something that does not reach for the whole plan.
    pub fn scarce(&self, scarce: &Scarce) -> String {
        say!(counter::stock_left, item = self.name(scarce.goods), amount = self.left(scarce.left))
    }

    /// Why there is no best use.
    pub fn stopped(&self, stopped: &Stopped) -> String {
        match stopped {
            Stopped::LeastTooMany(goods) => say!(counter::checked_need_too_much, item = self.name(*goods)),
            Stopped::Unknown(lacks) => self.not_comparable(lacks),
            Stopped::Arithmetic(error) => overflow(*error),
        }
    }

    /// What was taken off the shelf.
    pub fn taken(&self, used: &Used) -> String {
        if used.taken == 0 {
            return say!(counter::nothing_to_deduct).to_string();
        }
        let taken = say!(counter::items_deducted, items = used.taken);
        if used.below.is_empty() {
            return taken;
        }
        let items: Vec<String> = used.below.iter().map(|goods| self.name(*goods)).collect();
        [taken, say!(counter::used_more_than_counted, items = items.join("; "))].join(" ")
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
