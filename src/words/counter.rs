//! What is said at the counter: how an amount is added, where to fill to, and the lock.

use super::keeping::listed;
use super::labels::keeping;
use super::{Speaker, ice_place, overflow, stage};
use crate::book::{Book, Drink, IngredientId, Key, Scaling, Service, Settings, Stage};
use crate::drink::fill::{Scaled, ScaledLine};
use crate::drink::label::{Caution, Law};
use crate::drink::make::{Card, MOST_DRINKS, Taken};
use crate::foundation::lock::{FEWEST_DIGITS, MOST_DIGITS, PinError};
use crate::foundation::measure::{Amount, Date, Dimension, Exact, Share, Volume, nearest_step};
use crate::say;

/// What is taken: an ingredient, or what was brewed from it, which is poured and not weighed.
pub fn taken(line: &ScaledLine, book: &Book) -> String {
    let name = book.name(Key::Ingredient(line.ingredient));
    if is_brewed(line) { say!(counter::brewed_from, name = name) } else { name }
}

fn is_brewed(line: &ScaledLine) -> bool {
    line.stage == Stage::SoakedOrBrewed && line.to_use.dimension() == Dimension::Volume
}

/// How an ingredient is added: at which stage, or where the ice is, and that it tops up. Returns an empty text
/// where there is one way only: what nobody trims is taken as it was purchased. Where air is beaten in after it, what
/// tops up is measured: filled to the line, the drink would rise over it.
pub fn how_added(line: &ScaledLine, beaten: bool, book: &Book) -> String {
    let uncut = book.ingredient_now(line.ingredient).is_none_or(|it| it.trim_yield == Share::WHOLE);
    let state = match (line.ice, line.stage) {
        (Some(ice), _) if line.to_use.dimension() == Dimension::Volume => {
            say!(counter::scooped, place = ice_place(ice.place))
        }
        (Some(ice), _) => ice_place(ice.place).to_string(),
        (None, Stage::AsBought | Stage::Trimmed) if uncut => String::new(),
        (None, _) if is_brewed(line) => String::new(),
        (None, prep) => stage(prep).to_string(),
    };
    match line.scaling {
        Scaling::InProportion | Scaling::Fixed | Scaling::Stepped(_) => state,
        Scaling::TopUp if beaten && line.mixed => state,
        Scaling::TopUp if state.is_empty() => say!(counter::fill_to_the_line_alone).to_string(),
        Scaling::TopUp => say!(counter::fill_to_the_line, prep = state),
    }
}

/// That an ingredient is reckoned by the yields of its season. Returns an empty text where it is by those of the
/// rest of the year.
pub fn by_season(book: &Book, ingredient: IngredientId) -> &'static str {
    let season = book.ingredient(ingredient).and_then(|it| it.season_in(book.month()));
    if season.is_some() { say!(counter::seasons_yields) } else { "" }
}

/// Which ingredients take up what whole pieces leave. Returns an empty text where nothing is left.
pub fn takes_up(scaled: &Scaled, book: &Book) -> String {
    let names: Vec<String> = scaled.takes_up().map(|line| book.name(Key::Ingredient(line.ingredient))).collect();
    match names.as_slice() {
        [] => String::new(),
        [one] => say!(drinks::takes_up_rest, names = one.clone()),
        [_, _] | [_, _, _] => say!(drinks::take_up_rest, names = listed(&names)),
        _ => say!(drinks::all_take_up_rest).to_string(),
    }
}

/// What else is to be known of an amount that is shown. Returns an empty text if it is simply the
/// amount.
pub fn of_the_amount(taken: &Taken) -> &'static str {
    if taken.under_a_step { say!(counter::too_little_to_measure) } else { "" }
}

/// What a scoop of ice weighs, for so many drinks. Returns an empty text for all else, which shows its own weight.
pub fn scoop(line: &ScaledLine, drinks: Exact, speaker: &Speaker) -> String {
    if line.ice.is_none() || line.to_use.dimension() != Dimension::Volume {
        return String::new();
    }
    let weight = line.bought_as().and_then(|mass| mass.times(drinks));
    weight.map_or_else(overflow, |weight| say!(counter::scoop_weighs, weight = speaker.measure(weight)))
}

/// That the amounts have the press or pour loss in them. Returns an empty text where nothing stays behind.
pub fn stays_behind(card: &Card, speaker: &Speaker) -> String {
    if !card.stays_behind.is_positive() {
        return String::new();
    }
    say!(counter::loss_included, volume = speaker.volume(card.stays_behind))
}

/// The air that is beaten in, which the picture shows above what is poured. Returns an empty text if there is none.
pub fn air(card: &Card, speaker: &Speaker) -> String {
    let air = card.scaled.air;
    if air.is_positive() { say!(counter::air_beaten_in, volume = speaker.volume(air)) } else { String::new() }
}

/// What the amounts of a card are rounded to, that some are measured finer, and where they lead together. Returns
/// an empty text if they are not rounded.
pub fn rounded(card: &Card, settings: &Settings, speaker: &Speaker) -> String {
    let to = rounded_to(settings, speaker);
    if to.is_empty() {
        return to;
    }
    let finer = card.take.iter().any(|taken| is_finer(taken.amount, settings));
    let finer = if finer { say!(counter::rounded_finer) } else { "" };
    let together = together(card, speaker);
    [&to, finer, &together].into_iter().filter(|said| !said.is_empty()).collect::<Vec<_>>().join(" ")
}

/// Whether an amount is no whole number of the steps that the book's scale or cup shows.
fn is_finer(amount: Amount, settings: &Settings) -> bool {
    let step = match amount.unit.dimension() {
        Dimension::Mass => settings.scale_step,
        Dimension::Volume => settings.jug_step,
        Dimension::Count => None,
    };
    let in_steps = |step: Amount| {
        let measured = amount.measure().ok()?;
        let steps = nearest_step(measured, step).ok()??;
        Some(steps.measure().ok()?.base().rounded(6) == measured.base().rounded(6))
    };
    step.is_some_and(|step| in_steps(step) == Some(false))
}

/// How near the rounded amounts come to the fill line, in the digits in which the card says that.
fn together(card: &Card, speaker: &Speaker) -> String {
    if let Some(missed) = card.missed() {
        return missed_fill(missed, speaker);
    }
    let fill = card.fill.volume;
    match fill.plus(card.off) {
        Ok(reached) if speaker.volume(reached) == speaker.volume(fill) => say!(counter::rounded_together).to_string(),
        Ok(_) => {
            let near = Volume::from_millilitres(card.off.millilitres().abs());
            say!(counter::rounded_near, volume = speaker.volume(near))
        }
        Err(error) => overflow(error),
    }
}

fn rounded_to(settings: &Settings, speaker: &Speaker) -> String {
    match (settings.scale_step, settings.jug_step) {
        (None, None) => String::new(),
        (Some(scale), None) => say!(counter::rounded_on_scale, scale = speaker.amount(scale)),
        (None, Some(cup)) => say!(counter::rounded_in_cup, cup = speaker.amount(cup)),
        (Some(scale), Some(cup)) => {
            say!(counter::rounded_on_both, scale = speaker.amount(scale), cup = speaker.amount(cup))
        }
    }
}

/// Where one drink is filled to, beside a picture that shows it.
pub fn fill_to(card: &Card, speaker: &Speaker) -> String {
    let headspace = speaker.volume(card.fill.headspace);
    match card.fill_line {
        Some(line) => {
            let below = speaker.length(line.below_rim);
            say!(counter::fill_to_line_below_rim, below = below, headspace = headspace)
        }
        None => say!(counter::fill_to_line, headspace = headspace),
    }
}

/// Where one drink is filled to, without a picture.
pub fn fill_on_paper(card: &Card, speaker: &Speaker) -> String {
    let (volume, headspace) = (speaker.volume(card.fill.volume), speaker.volume(card.fill.headspace));
    match card.fill_line {
        Some(line) => {
            let below = speaker.length(line.below_rim);
            say!(counter::fill_to_volume_below_rim, volume = volume, below = below, headspace = headspace)
        }
        None => say!(counter::fill_to_volume, volume = volume, headspace = headspace),
    }
}

/// By how much a drink misses its fill line with amounts that are rounded.
pub fn missed_fill(missed: Volume, speaker: &Speaker) -> String {
    let size = Volume::from_millilitres(missed.millilitres().abs());
    let size = speaker.volume(size);
    if missed.is_negative() {
        say!(counter::rounded_too_low, volume = size)
    } else {
        say!(counter::rounded_too_high, volume = size)
    }
}

/// For how many drinks the amounts are.
pub fn for_drinks(drinks: Exact, speaker: &Speaker) -> String {
    say!(counter::for_drinks, drinks = speaker.counted(drinks))
}

/// Why a number of drinks is not taken.
pub fn number_of_drinks() -> String {
    say!(counter::whole_number_of_drinks, most = MOST_DRINKS.to_string())
}

/// How a drink is kept that is made today. Returns an empty text if nothing was entered.
pub fn made_today(drink: &Drink, today: Date) -> String {
    match (keeping(drink, Some(today)), drink.keeps_days) {
        (kept, Some(_)) => [say!(counter::made_today), &kept].join(" "),
        (kept, None) => kept,
    }
}

/// What staff must be careful of. Returns `None` for what only a label needs.
pub fn counter_caution(caution: &Caution, book: &Book) -> Option<String> {
    let said = match caution {
        Caution::UntreatedJuice(_) if Law::of(book.settings()) == Law::European => say!(counter::untreated_european),
        Caution::UntreatedJuice(Some(Service::PackagedAhead)) => say!(counter::untreated_packaged_ahead),
        Caution::UntreatedJuice(Some(Service::ByTheGlass)) => say!(counter::untreated_by_the_glass),
        Caution::UntreatedJuice(None) => say!(counter::untreated_either),
        Caution::JuiceNotSaid(..) => say!(counter::raw_produce_not_checked),
        Caution::AtRisk(_) => say!(labels::at_risk),
        Caution::MeasuredLowAcid(_) => say!(counter::low_acid),
        // What is published is of each ingredient, and of the drink nobody knows it.
        Caution::PublishedLowAcid(_) => say!(counter::may_be_low_acid),
        Caution::FillShortOfDeclared(short) => {
            let short = Speaker::plain_of(book).volume(*short);
            return Some(say!(counter::under_labeled_size, short = short));
        }
        Caution::AllergensAsInTheBook => say!(counter::allergens_as_entered),
        Caution::AcidityNotKnown(_) => say!(counter::acidity_not_checked),
        Caution::SoldToABusiness | Caution::NameTheKind(_) | Caution::NoLegalAdvice => return None,
    };
    Some(said.to_string())
}

/// Why a batch does not take so many of a drink: no card could be for them.
pub fn too_many_drinks(drinks: Exact, speaker: &Speaker) -> String {
    say!(counter::too_many_drinks, drinks = speaker.number(drinks), most = MOST_DRINKS.to_string())
}

/// The way in where the PIN is forgotten.
pub fn without_pin() -> String {
    say!(counter::type_sentence, sentence = say!(counter::sentence_without_pin))
}

/// Said of another sentence than that.
pub fn not_without_pin() -> String {
    say!(counter::other_sentence, sentence = say!(counter::sentence_without_pin))
}

/// Why a PIN is not taken.
pub fn pin_error(error: PinError) -> String {
    let wrong = match error {
        PinError::Empty => say!(counter::pin_empty).to_string(),
        PinError::NotDigits => say!(counter::pin_not_digits).to_string(),
        PinError::TooShort(digits) => say!(counter::pin_too_short, digits = digits),
        PinError::TooLong(digits) => say!(counter::pin_too_long, digits = digits),
        PinError::NotTheSame => return say!(counter::pins_differ).to_string(),
    };
    let (fewest, most) = (FEWEST_DIGITS.to_string(), MOST_DIGITS.to_string());
    [wrong, say!(counter::choose_digits, fewest = fewest, most = most)].join(" ")
}
