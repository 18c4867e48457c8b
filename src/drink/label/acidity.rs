//! How acid fruit and vegetables are, as published.

use super::names::{is, words};
use crate::foundation::measure::Exact;

/// What is more than this is low-acid: pH 4.6, at and under which spores of Clostridium botulinum
/// do not grow (21 CFR 114.3(b) and (d), from memory; FDA, Guidance for Industry: Refrigerated
/// Carrot Juice and Other Refrigerated Low-Acid Juices, June 2007).
pub const LOW_ACID_ABOVE: Exact = Exact::new(46, 1);

/// Where a pH was published.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PhSource {
    /// FDA/CFSAN, Approximate pH of Foods and Food Products; second-hand, read in copies of it.
    FdaList,
    /// FDA/CFSAN, Foodborne Pathogenic Microorganisms and Natural Toxins Handbook, pH Values of
    /// Various Foods; second-hand, read in copies of it.
    FdaHandbook,
    /// One of the two, from memory.
    FromMemory,
}

/// The published pH of a fruit or vegetable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PublishedPh {
    /// The least that was published.
    pub least: Exact,
    /// The most that was published.
    pub most: Exact,
    /// Where.
    pub source: PhSource,
    /// What it is called, in the singular, in small letters: each is a whole name by itself.
    names: &'static [&'static str],
}

impl PublishedPh {
    /// Whether some of it is low-acid.
    pub fn may_be_low_acid(&self) -> bool {
        self.most > LOW_ACID_ABOVE
    }
}

/// The published pH of what an ingredient's name says. Returns `None` if no name in the list is a
/// word of it. What comes first in the list is found first: "Cucumbers" before "Lime" in "Cucumber
/// lime". Low-acid ones come first, so that a name with two words errs to the careful side.
pub fn published_ph(name: &str) -> Option<&'static PublishedPh> {
    let words = words(name);
    PUBLISHED.iter().find(|published| published.names.iter().any(|name| words.iter().any(|(_, word)| is(word, name))))
}

/// Hundredths of a pH.
const fn ph(names: &'static [&'static str], least: i64, most: i64, source: PhSource) -> PublishedPh {
    PublishedPh { least: Exact::new(least, 2), most: Exact::new(most, 2), source, names }
}

/// English names, and German, Spanish and French ones of what is low-acid (names from memory).
const PUBLISHED: &[PublishedPh] = {
    use PhSource::{FdaHandbook, FdaList, FromMemory};
    &[
        ph(&["carrot", "karotte", "karotten", "möhre", "möhren", "zanahoria", "carotte"], 588, 640, FdaList),
        ph(&["beet", "beetroot", "bete", "remolacha", "betterave"], 530, 660, FdaList),
        ph(&["celery", "sellerie", "apio", "céleri"], 570, 600, FdaList),
        ph(&["cucumber", "gurke", "gurken", "pepino", "concombre"], 512, 578, FdaList),
        ph(&["spinach", "spinat", "espinaca", "épinard"], 550, 680, FdaHandbook),
        ph(&["kale", "grünkohl"], 640, 680, FdaHandbook),
        ph(&["lettuce", "romaine", "salat", "lechuga", "laitue"], 580, 600, FdaHandbook),
        ph(&["parsley", "petersilie", "perejil", "persil"], 570, 600, FdaHandbook),
        ph(&["broccoli", "brokkoli"], 630, 685, FdaList),
        ph(&["cabbage", "kohl", "repollo", "chou"], 520, 680, FdaList),
        ph(&["fennel", "fenchel", "hinojo", "fenouil"], 548, 588, FromMemory),
        ph(&["ginger", "ingwer", "jengibre", "gingembre"], 560, 590, FromMemory),
        ph(&["watermelon", "wassermelone", "sandía", "pastèque"], 518, 560, FdaList),
        ph(&["cantaloupe", "melon", "melone", "melón"], 613, 658, FdaList),
        ph(&["honeydew"], 600, 667, FdaList),
        ph(&["papaya", "papaye"], 520, 600, FromMemory),
        ph(&["avocado", "aguacate", "avocat"], 627, 658, FdaList),
        ph(&["banana", "banane", "bananen", "plátano"], 450, 520, FdaList),
        ph(&["mango", "mangue"], 340, 600, FdaList),
        ph(&["fig", "feige", "feigen", "higo", "figue"], 505, 598, FdaList),
        ph(&["date", "dattel", "datteln", "dátil", "datte"], 414, 488, FromMemory),
        ph(&["coconut", "kokos", "kokosnuss", "coco"], 550, 780, FromMemory),
        ph(&["aloe"], 600, 680, FdaList),
        ph(&["pumpkin", "kürbis", "calabaza", "citrouille"], 480, 550, FdaHandbook),
        ph(&["tomato", "tomate", "tomaten"], 430, 490, FdaList),
        ph(&["apricot"], 330, 480, FdaList),
        ph(&["apple"], 330, 400, FdaList),
        ph(&["orange"], 369, 434, FdaList),
        ph(&["lemon"], 200, 260, FdaList),
        ph(&["lime"], 200, 280, FdaList),
        ph(&["grapefruit"], 300, 375, FdaList),
        ph(&["pineapple"], 320, 400, FdaList),
        ph(&["strawberry", "strawberries"], 300, 390, FdaList),
        ph(&["blueberry", "blueberries"], 311, 333, FdaList),
        ph(&["blackberry", "blackberries"], 385, 450, FdaList),
        ph(&["raspberry", "raspberries"], 322, 395, FromMemory),
        ph(&["cranberry", "cranberries"], 230, 252, FromMemory),
        ph(&["cherry", "cherries"], 325, 454, FdaList),
        ph(&["grape"], 280, 382, FdaList),
        ph(&["peach"], 330, 405, FdaList),
        ph(&["pear"], 350, 460, FromMemory),
        ph(&["plum"], 280, 340, FdaList),
        ph(&["pomegranate"], 293, 320, FdaList),
    ]
};

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::exact;

    #[test]
    fn each_range_is_a_range_of_ph() {
        for published in PUBLISHED {
            assert!(!published.least.is_negative() && published.most <= exact("14"), "{published:?}");
            assert!(published.least <= published.most && !published.names.is_empty(), "{published:?}");
        }
    }

    #[test]
    fn a_name_is_found_by_its_words() {
        let least = |name| published_ph(name).map(|published| published.least);
        for carrots in ["Carrots", "carrot", "Rainbow CARROTS, 25 lb", "Bio-Karotten"] {
            assert_eq!(least(carrots), Some(exact("5.88")), "{carrots}");
        }
        assert_eq!(least("Spinach, washed"), Some(exact("5.5")));
        assert_eq!(least("Mangoes"), Some(exact("3.4")));
        for unknown in ["", "Carrotene", "Wheatgrass", "Whole milk", "Möhr", "é"] {
            assert_eq!(least(unknown), None, "{unknown}");
        }
    }

    #[test]
    fn of_two_the_less_acid_is_taken() {
        assert_eq!(published_ph("Lemon and ginger").unwrap().least, exact("5.6"));
        assert_eq!(published_ph("Apple carrot").unwrap().least, exact("5.88"));
    }

    #[test]
    fn what_is_at_most_4_6_is_acid() {
        for (name, low) in
            [("Carrots", true), ("Bananas", true), ("Pears", false), ("Apples", false), ("Lemons", false)]
        {
            assert_eq!(published_ph(name).unwrap().may_be_low_acid(), low, "{name}");
        }
    }
}
