//! Questions that nobody has answered yet, and the text that they are kept as.

use super::Figure;

/// A question about a value that was typed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Question {
    /// What the field held before, if anything.
    pub was: Option<Figure>,
    /// What it holds now. If it holds something else, the question is void.
    pub now: Figure,
    /// The ids of the steps that put it there, the earliest first; empty if no step did.
    pub steps: Vec<String>,
}

/// The open questions of a book, each at the place of its field.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Questions(Vec<(String, Question)>);

impl Questions {
    /// How many are kept. Beyond that the oldest is dropped.
    const MOST: usize = 200;

    /// The question at a place.
    pub fn at(&self, place: &str) -> Option<Question> {
        self.0.iter().find(|(at, _)| at == place).map(|(_, question)| question.clone())
    }

    /// Every open question with its place, the oldest first.
    pub fn all(&self) -> &[(String, Question)] {
        &self.0
    }

    /// Replaces the question at a place, or removes it.
    pub fn put(&mut self, place: &str, question: Option<Question>) {
        self.0.retain(|(at, _)| at != place);
        self.0.extend(question.map(|question| (place.to_string(), question)));
        if self.0.len() > Questions::MOST {
            self.0.remove(0);
        }
    }

    /// The questions as text: one line each, its parts separated by tabs.
    pub fn to_text(&self) -> String {
        let line = |(place, question): &(String, Question)| {
            let was = question.was.map(|was| was.to_string()).unwrap_or_default();
            format!("{place}\t{was}\t{}\t{}\n", question.now, question.steps.join(" "))
        };
        self.0.iter().map(line).collect()
    }

    /// Reads what [`Questions::to_text`] writes. A line that does not read is left out.
    pub fn from_text(text: &str) -> Questions {
        let question = |line: &str| {
            let [place, was, now, steps] = *line.split('\t').collect::<Vec<_>>().as_slice() else { return None };
            let was = if was.is_empty() { None } else { Some(Figure::from_text(was)?) };
            let steps = steps.split_whitespace().map(str::to_string).collect();
            Some((place.to_string(), Question { was, now: Figure::from_text(now)?, steps }))
        };
        Questions(text.lines().filter_map(question).collect())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn question(was: &str, now: &str) -> Question {
        Question {
            was: Figure::from_text(was),
            now: Figure::from_text(now).unwrap(),
            steps: vec!["5a".into(), "5b".into()],
        }
    }

    #[test]
    fn a_place_has_one_question() {
        let mut questions = Questions::default();
        questions.put("a", Some(question("87", "8917")));
        questions.put("b", Some(question("", "4 lb")));
        questions.put("a", Some(question("87", "8")));
        assert_eq!(questions.at("a"), Some(question("87", "8")));
        questions.put("a", None);
        assert_eq!((questions.at("a"), questions.at("b")), (None, Some(question("", "4 lb"))));
    }

    #[test]
    fn they_are_kept_as_lines() {
        let mut questions = Questions::default();
        questions.put("ingredient:1/2/price", Some(question("87", "8917")));
        questions.put("settings/tax", Some(question("", "65")));
        let text = questions.to_text();
        assert_eq!(text, "ingredient:1/2/price\t87\t8917\t5a 5b\nsettings/tax\t\t65\t5a 5b\n");
        assert_eq!(Questions::from_text(&text), questions);
        // What is spoilt is left out; the rest stays.
        assert_eq!(Questions::from_text(&format!("x\nx\t1\nx\ta\t1\t\nx\t1\t\t\n{text}y\t1\t2\t3\t4")), questions);
        assert_eq!(Questions::from_text(""), Questions::default());
    }

    #[test]
    fn the_oldest_goes_where_there_are_too_many() {
        let mut questions = Questions::default();
        for place in 0..=Questions::MOST {
            questions.put(&place.to_string(), Some(question("1", "9")));
        }
        assert_eq!(questions.0.len(), Questions::MOST);
        assert_eq!((questions.at("0"), questions.at("1")), (None, Some(question("1", "9"))));
    }
}
