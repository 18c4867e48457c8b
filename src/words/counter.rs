//! What is said at the counter: how an amount is added, where to fill to, and the lock.

use super::labels::{AT_RISK, keeping};
use super::{Speaker, ice_place, stage};
use crate::book::{Book, Drink, Scaling, Service, Settings};
use crate::drink::fill::ScaledLine;
use crate::drink::label::Caution;
use crate::drink::make::{Card, MOST_DRINKS, Taken};
use crate::foundation::lock::{FEWEST_DIGITS, MOST_DIGITS, PinError, WITHOUT_PIN};
use crate::foundation::measure::{Amount, Date, Exact, Volume};

/// How an ingredient is added: at which stage, or where the ice is; and when it does not follow
/// the size in proportion.
pub fn how_added(line: &ScaledLine, speaker: &Speaker) -> String {
    let state = line.ice.map_or(stage(line.stage), |ice| ice_place(ice.place));
    match line.scaling {
        Scaling::InProportion | Scaling::Fixed => state.to_string(),
        Scaling::Stepped(step) => format!("{state}, in steps of {}", speaker.amount(step)),
        Scaling::TopUp => format!("{state}, top-up: more or less of it meets the line"),
    }
}

/// What else is to be known of an amount that is shown. Returns an empty text if it is simply the
/// amount.
pub fn of_the_amount(taken: &Taken, speaker: &Speaker) -> String {
    match taken.exactly {
        Some(exactly) => format!("exactly {}", speaker.amount(exactly)),
        None if taken.under_a_step => {
            "too little for scale or jug: use a small measure, or make several at once".into()
        }
        None => String::new(),
    }
}

/// What amounts are rounded to. Returns an empty text if they are not.
pub fn rounded_to(settings: &Settings, speaker: &Speaker) -> String {
    let said = |step: Option<Amount>, shows| step.map(|step| format!("{} that {shows}", speaker.amount(step)));
    let steps = [said(settings.scale_step, "the scale shows"), said(settings.jug_step, "the jugs show")];
    let steps: Vec<String> = steps.into_iter().flatten().collect();
    if steps.is_empty() { String::new() } else { format!("Amounts are rounded to the {}.", steps.join(" and the ")) }
}

/// Where one drink is filled to, beside a picture that shows it.
pub fn fill_to(card: &Card, speaker: &Speaker) -> String {
    format!("Fill to here: {}", left_empty(card, speaker))
}

/// Where one drink is filled to, without a picture.
pub fn fill_on_paper(card: &Card, speaker: &Speaker) -> String {
    let volume = speaker.volume(card.fill.volume);
    format!("Fill to {volume}: {}.", left_empty(card, speaker))
}

fn left_empty(card: &Card, speaker: &Speaker) -> String {
    let empty = speaker.volume(card.fill.headspace);
    match card.fill_line {
        Some(line) => {
            let below = speaker.length(line.below_rim);
            format!("{below} under the rim, {empty} left empty")
        }
        None => format!("{empty} left empty under the rim"),
    }
}

/// By how much a drink misses its fill line with amounts that are rounded.
pub fn missed_fill(missed: Volume, speaker: &Speaker) -> String {
    let size = Volume::from_millilitres(missed.millilitres().abs());
    let size = speaker.volume(size);
    if missed.is_negative() {
        format!("Rounded like this, a drink ends {size} short of its fill line. The exact amounts reach it.")
    } else {
        format!("Rounded like this, a drink has {size} more than reaches its fill line: stop at the line.")
    }
}

/// For how many drinks the amounts are.
pub fn for_drinks(drinks: Exact, speaker: &Speaker) -> String {
    if drinks == Exact::ONE { "for 1 drink".to_string() } else { format!("for {} drinks", speaker.number(drinks)) }
}

/// Why a number of drinks is not taken.
pub fn number_of_drinks() -> String {
    format!("Type a whole number of drinks from 1 to {MOST_DRINKS}, such as 12.")
}

/// How a drink is kept that is made today. Returns an empty text if nothing was entered.
pub fn made_today(drink: &Drink, today: Date) -> String {
    match (keeping(drink, Some(today)), drink.keeps_days) {
        (kept, Some(_)) => format!("Made today: {kept}"),
        (kept, None) => kept,
    }
}

/// What staff must be careful of. Returns `None` for what only a label needs.
pub fn counter_caution(caution: &Caution, book: &Book) -> Option<String> {
    match caution {
        Caution::UntreatedJuice(Some(Service::PackagedAhead)) => Some(
            "Untreated juice: each package must carry the warning label (United States).".to_string(),
        ),
        Caution::UntreatedJuice(Some(Service::ByTheGlass)) => {
            Some("Untreated juice by the glass: ask your local inspector what to tell customers.".to_string())
        }
        Caution::UntreatedJuice(None) => Some(
            "Untreated juice: packaged ahead, each package must carry the warning label (United States)."
                .to_string(),
        ),
        Caution::JuiceNotSaid(..) => Some(
            "Nobody said yet whether raw fruit or vegetables are in it. Treat it as untreated juice, and tell whoever keeps the book."
                .to_string(),
        ),
        Caution::AtRisk(_) => Some(AT_RISK.to_string()),
        Caution::MeasuredLowAcid(_) | Caution::PublishedLowAcid(_) => Some(
            "Low-acid juice: refrigerate at all times. Kept warm, it can cause botulism."
                .to_string(),
        ),
        Caution::FillShortOfDeclared(short) => {
            let short = Speaker::plain_of(book).volume(*short);
            Some(format!("This fill is {short} less than the size declared. Tell whoever keeps the book."))
        }
        Caution::AllergensAsInTheBook => Some(
            "Allergens are only as right as what was entered. Check every label, and what shares the blender or press."
                .to_string(),
        ),
        Caution::AcidityNotKnown(_) => Some(
            "Nobody knows how acid this juice is: refrigerate at all times. Low-acid juice kept warm can cause botulism."
                .to_string(),
        ),
        Caution::SoldToABusiness | Caution::NameTheKind(_) | Caution::NoLegalAdvice => None,
    }
}

/// What a lock to the Counter is, and is not.
pub const LOCK_CAUTION: &str = "A PIN keeps curious hands off. It is no security boundary: whoever can open the browser's tools, another browser or the device's storage gets past it. It is kept on this device as you type it, so do not use the PIN of a card or phone.";

/// What is there while a device is locked.
pub const LOCK_HIDES: &str = "While it is locked, only recipe cards, batches and what is on hand are shown. Prices are hidden. Undo takes back what was done to batches and counts, and nothing else.";

/// Said where the browser keeps nothing.
pub const LOCK_NOT_KEPT: &str = "This browser keeps no settings for this page, so a lock would be gone after the next start. Allow storage for this page, or use another browser.";

/// Said after a PIN that does not open.
pub const WRONG_PIN: &str = "That is not the PIN of this device. Nothing is lost: try again as often as you like.";

/// The way in where the PIN is forgotten.
pub fn without_pin() -> String {
    format!("Type “{WITHOUT_PIN}”. It opens the device, since the lock is no security boundary anyway.")
}

/// Said of another sentence than that.
pub fn not_without_pin() -> String {
    format!("That is another sentence. Type “{WITHOUT_PIN}”, word by word.")
}

/// Why a PIN is not taken.
pub fn pin_error(error: PinError) -> String {
    let asked = format!("Choose {FEWEST_DIGITS} to {MOST_DIGITS} digits, such as 4207.");
    match error {
        PinError::Empty => format!("There is no PIN yet. {asked}"),
        PinError::NotDigits => format!("A PIN has only the digits 0 to 9. {asked}"),
        PinError::TooShort(1) => format!("1 digit is too few. {asked}"),
        PinError::TooShort(digits) => format!("{digits} digits are too few. {asked}"),
        PinError::TooLong(digits) => format!("{digits} digits are too many. {asked}"),
        PinError::NotTheSame => "The second PIN is not the first. Type the same digits twice.".to_string(),
    }
}

/// Said where the browser does not keep the screen on.
pub const SCREEN_MAY_GO_DARK: &str = "The screen may go dark here: this browser does not keep it on. Let the device do it: set its screen timeout to the longest, in its settings under Display, and keep it on its charger.";
