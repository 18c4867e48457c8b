//! The tables of texts: how easily they read, and which words they do not use.

use brimwright::words::texts::TABLES;

/// Words of which plainer ones took the place, with what to say instead. They stand in no text.
/// Source: the project's own guide.
const SAY_INSTEAD: &[(&str, &str)] = &[
    ("left after everything", "profit per drink"),
    ("left a week", "profit per week"),
    ("left per minute of hands", "profit per labor minute"),
    ("hands' time", "labor"),
    ("what every drink bears", "shop costs"),
    ("made but not sold", "waste"),
    ("unsold share", "waste"),
    ("treatment toll", "processing fee"),
    ("stays in the press", "press or pour loss"),
    ("goods", "ingredients and packaging"),
    ("it must cover", "margin is figured on"),
    ("what is left of it", "yield"),
    ("left after trimming", "trim yield"),
    ("lower prices for more", "volume pricing"),
    ("bought now", "current pack"),
    ("as bought", "as purchased"),
    ("fl oz pressed", "fl oz of juice"),
    ("heard on", "quoted"),
    ("heard today", "checked today"),
    ("still so", "no change"),
    ("prices heard", "price history"),
    ("no day noted", "no date"),
    ("no day", "no date"),
    ("what the menu hangs on", "biggest cost drivers"),
    ("dearer", "costs more"),
    ("worst is", "lowest"),
    ("you ask", "your price"),
    ("the target alone asks", "exact target price"),
    ("prices may end in", "round prices to"),
    ("your endings", "price endings"),
    ("payment fee", "card fee"),
    ("how it came about", "show the math"),
    ("common practice, no source", "rule of thumb (no published source)"),
    ("in place of another", "switch sizes"),
    ("back from a price point", "work back from a price"),
    ("would have to give something up", "does not fit"),
    ("prices seen elsewhere", "local prices"),
    ("sales kept", "customers who stay"),
    ("opening stock written off", "leftover stock"),
    ("left empty", "headspace"),
    ("volume to the rim", "brimful capacity"),
    ("size it is declared as", "labeled size"),
    ("what belongs to it", "packaging"),
    ("weighed with water", "weigh it full of water"),
    ("written for", "recipe makes"),
    ("name on the menu", "menu name"),
    ("take out", "remove"),
    ("leave it", "cancel"),
    ("keep it", "cancel"),
    ("write down this week", "enter this week"),
    ("enough here", "enough on hand"),
    ("off the shelf", "deduct from stock"),
    ("step of the scale", "scale rounds to"),
    ("step of the jugs", "measuring cup marks"),
    ("sheet to print", "print sheet"),
    ("where nobody knows", "leave blank if unsure"),
    ("cannot be computed", "needs: ..."),
    ("nothing like that", "no matches"),
    ("not yet looked", "not checked"),
    ("invented data", "sample data"),
    ("it lasts", "weeks of stock"),
    ("guests", "customers"),
    ("so many", "a number"),
    ("altogether", "total"),
    ("tolerance", "allowed variation"),
    ("kind of ingredient", "ingredient type"),
    ("drinks affected", "sizes affected"),
    ("drinks would be affected", "sizes would be affected"),
    ("highest drink cost", "drink cost limit"),
    ("highest ingredient cost", "ingredient cost limit"),
    ("base diameter", "inside base width"),
    ("rim diameter", "inside rim width"),
    ("plus per transaction", "fee per transaction"),
    ("usual day", "typical day"),
    ("labour", "labor"),
    ("litre", "liter"),
    ("litres", "liters"),
    ("millilitre", "milliliter"),
    ("millilitres", "milliliters"),
    ("colour", "color"),
    ("sulphites", "sulfites"),
    ("molluscs", "mollusks"),
    ("programme", "program"),
    ("grey", "gray"),
    ("whilst", "while"),
];

/// Words of laws, which stand as they are there: the warning of untreated juice (21 CFR 101.17(g)),
/// and names of allergens (Regulation (EU) No 1169/2011, Annex II).
const OF_LAWS: [&str; 3] = ["WARNING: This product", "ulphites", "olluscs"];

/// What stands with a point or comma between digits in any language, and why. All other numbers are put in as the
/// person writes them.
const WRITTEN_SO: &[(&str, &str)] = &[
    ("21 CFR 101.2(c), 101.7", "a citation"),
    ("21 CFR 101.30", "a citation"),
    ("21 CFR 101.3", "a citation"),
    ("21 CFR 101.5", "a citation"),
    ("21 CFR 101.7", "a citation"),
    ("21 CFR 101.9", "a citation"),
    ("(101.9(j)(18))", "a citation"),
    ("21 CFR 101.17(g)", "a citation"),
    ("21 CFR 101.100(a)(4)", "a citation"),
    ("21 CFR 102.33", "a citation"),
    ("21 CFR 120.3(l), 120.24", "a citation"),
    ("2017/C 428, 3.5", "a citation"),
    ("SI 2006/659, Schedule 2, 4.7", "a citation"),
    ("76/211/EEC, Annex I, 2.4", "a citation"),
    ("OIML R 138, 5.1.1", "a citation"),
    ("\"3.5 in\"", "a book file has points in every language"),
    ("\"25.80\"", "a book file has points in every language"),
    ("\"0.05\"", "a book file has points in every language"),
];

/// The longest sentence, in words.
const LONGEST: usize = 18;

/// The texts of a language as they are read: a placeholder is one short word, and of a choice the
/// way that is taken when no other is meant.
fn texts(language: &str) -> Vec<String> {
    let parts = TABLES.iter().filter(|(tag, ..)| *tag == language);
    let lines = parts.flat_map(|(.., table)| table.lines().skip(1));
    lines.map(read).collect()
}

fn read(line: &str) -> String {
    let mut text = String::new();
    for (place, piece) in line.split('\u{1}').enumerate() {
        match (place % 2 == 1, piece.rsplit_once('\u{3}')) {
            (true, Some((_, way))) => {
                let way = way.split('\u{4}').enumerate();
                text.extend(way.map(|(place, piece)| if place % 2 == 1 { "5" } else { piece }));
            }
            (true, None) => text.push('5'),
            (false, _) => text.push_str(piece),
        }
    }
    text
}

fn of_a_law(text: &str) -> bool {
    OF_LAWS.iter().any(|words| text.contains(words))
}

/// The sentences of a text, without those that are labels of fewer than five words.
fn sentences(text: &str) -> Vec<&str> {
    let mut sentences = Vec::new();
    let mut begin = 0;
    for (at, sign) in text.char_indices() {
        let end = at + sign.len_utf8();
        let ends =
            matches!(sign, '.' | '?' | '!' | ':' | ';') && text[end..].chars().next().is_none_or(char::is_whitespace);
        if ends {
            sentences.push(&text[begin..end]);
            begin = end;
        }
    }
    sentences.push(&text[begin..]);
    sentences.into_iter().map(str::trim).filter(|sentence| words(sentence).len() >= 5).collect()
}

/// The words of a sentence. What stands in parentheses, such as the name of a law, does not count.
fn words(sentence: &str) -> Vec<&str> {
    let (before, rest) = sentence.split_once('(').unwrap_or((sentence, ""));
    let after = rest.rsplit_once(')').map_or("", |(_, after)| after);
    [before, after].into_iter().flat_map(words_of).collect()
}

fn words_of(sentence: &str) -> Vec<&str> {
    let words = sentence.split(|sign: char| sign.is_whitespace() || matches!(sign, '-' | '/' | '–' | '—'));
    words.filter(|word| word.chars().any(char::is_alphanumeric)).collect()
}

/// Syllables by the usual count: groups of vowels, without a silent e at the end, at least one. A
/// number counts as one.
fn syllables(word: &str) -> usize {
    let word: String = word.to_lowercase().chars().filter(|sign| sign.is_ascii_alphabetic()).collect();
    let vowel = |sign: char| "aeiouy".contains(sign);
    let mut groups = 0;
    let mut before = false;
    for sign in word.chars() {
        groups += usize::from(vowel(sign) && !before);
        before = vowel(sign);
    }
    let silent = (word.ends_with('e') && !word.ends_with("le"))
        || (word.ends_with("ed") && !word.ends_with("ted") && !word.ends_with("ded"))
        || (word.ends_with("es")
            && !["ses", "zes", "xes", "ces", "ges", "ches", "shes", "les"].iter().any(|end| word.ends_with(end)));
    groups.saturating_sub(usize::from(silent)).max(1)
}

/// The grade of Flesch and Kincaid (1975): 0.39 words to a sentence + 11.8 syllables to a word -
/// 15.59, over all sentences of five words and more. The formula is from memory.
#[test]
fn the_english_table_reads_at_grade_seven_or_below() {
    let texts = texts("en-US");
    let sentences: Vec<&str> = texts.iter().flat_map(|text| sentences(text)).collect();
    let words: Vec<&str> = sentences.iter().flat_map(|sentence| words(sentence)).collect();
    let syllables: usize = words.iter().map(|word| syllables(word)).sum();
    let (count, all) = (sentences.len() as f64, words.len() as f64);
    let grade = 0.39 * all / count + 11.8 * syllables as f64 / all - 15.59;
    println!("{count} sentences, {all} words, {syllables} syllables: grade {grade:.2}");
    assert!(count > 500.0, "there are only {count} sentences");
    assert!(grade <= 7.0, "grade {grade:.2}");
}

#[test]
fn no_sentence_is_longer_than_eighteen_words() {
    for text in texts("en-US").into_iter().filter(|text| !of_a_law(text)) {
        for sentence in sentences(&text) {
            assert!(words(sentence).len() <= LONGEST, "{} words: {sentence}", words(sentence).len());
        }
    }
}

#[test]
fn words_that_have_plainer_ones_stand_in_no_text() {
    let mut found = Vec::new();
    for text in texts("en-US").into_iter().filter(|text| !of_a_law(text)) {
        let bare = |text: &str| -> String {
            let plain = text.to_lowercase().replace('’', "'");
            let signs = plain.chars().map(|sign| if sign.is_alphanumeric() || sign == '\'' { sign } else { ' ' });
            format!(" {} ", signs.collect::<String>().split_whitespace().collect::<Vec<_>>().join(" "))
        };
        for (word, instead) in SAY_INSTEAD {
            if bare(&text).contains(&bare(word)) {
                found.push(format!("{text:?}: not {word:?} but {instead:?}"));
            }
        }
    }
    assert!(found.is_empty(), "{}", found.join("\n"));
}

/// Whether a point or comma stands between digits.
fn has_decimals(text: &str) -> bool {
    let signs: Vec<char> = text.chars().collect();
    signs.windows(3).any(|three| matches!(three, [a, '.' | ',', b] if a.is_ascii_digit() && b.is_ascii_digit()))
        || signs.windows(2).any(|two| matches!(two, ['.', b] if b.is_ascii_digit()))
}

#[test]
fn no_number_with_a_point_or_comma_stands_in_a_text() {
    let mut used = std::collections::BTreeSet::new();
    for (language, part, _, table) in TABLES {
        for line in table.lines().skip(1) {
            let mut rest = line.to_string();
            for (written, _) in WRITTEN_SO {
                if rest.contains(written) {
                    used.insert(*written);
                    rest = rest.replace(written, "");
                }
            }
            assert!(!has_decimals(&rest), "{language} {part}: a number stands in {line:?}");
        }
    }
    let needless: Vec<_> = WRITTEN_SO.iter().map(|(written, _)| written).filter(|it| !used.contains(*it)).collect();
    assert!(needless.is_empty(), "no text has {needless:?}");
}

#[test]
fn apostrophes_have_one_form() {
    for text in texts("en-US") {
        assert!(!text.contains('\''), "not ' but ’: {text}");
    }
}

#[test]
fn syllables_are_counted_as_they_are_spoken() {
    let counts = [("price", 1), ("bottle", 2), ("margin", 2), ("ounces", 2), ("prices", 2), ("typed", 1), ("added", 2)];
    for (word, count) in counts {
        assert_eq!(syllables(word), count, "{word}");
    }
}
