//! What is typed and not in the book: texts that cannot be read yet, and new things that still
//! lack something.

#[cfg(test)]
mod tests;

/// A text that is typed and not in the book: it cannot be read yet, or belongs to a question.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    /// Its field: the address of the screen, a blank, and what sets the field apart there.
    pub field: String,
    /// What is typed.
    pub text: String,
    /// What is wrong with it, as a sentence. It is empty if nothing is.
    pub error: String,
}

impl Unread {
    /// The label of its field, where that is on the screen at an address.
    fn label_on(&self, address: &str) -> Option<&str> {
        self.field.strip_prefix(address)?.strip_prefix(' ')?.split_once(' ').map(|(_, label)| label)
    }
}

/// What the name of a field begins with where its text is given, not typed.
pub const GIVEN: char = '@';

/// A new thing that was begun.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Begun {
    /// Which one: what it is, of what, and its id.
    pub thing: String,
    /// The address of the screen that it is typed on.
    pub address: String,
    /// What it is and still needs, as a sentence.
    pub needs: String,
    /// Its texts, by their fields.
    pub texts: Vec<(String, String)>,
    /// Whether it lacked nothing, and was put into the book.
    pub is_put: bool,
}

impl Begun {
    /// The text of a field. Returns an empty text if nothing is typed.
    pub fn text(&self, field: &str) -> &str {
        self.texts.iter().find(|(name, _)| name == field).map_or("", |(_, text)| text)
    }

    /// Writes the text of a field.
    pub fn set(&mut self, field: &str, text: &str) {
        self.texts.retain(|(name, _)| name != field);
        if !text.trim().is_empty() {
            self.texts.push((field.to_string(), text.to_string()));
        }
    }

    /// Whether something of it is typed that is not in the book. What is given with its beginning
    /// is not typed: the names of such fields begin with [`GIVEN`].
    pub fn waits(&self) -> bool {
        !self.is_put && self.texts.iter().any(|(field, _)| !field.starts_with(GIVEN))
    }
}

/// What is typed and not in the book.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Unfinished {
    unread: Vec<Unread>,
    begun: Vec<Begun>,
}

impl Unfinished {
    /// What cannot be read yet in a field.
    pub fn unread(&self, field: &str) -> Option<&Unread> {
        self.unread.iter().find(|it| it.field == field)
    }

    /// Notes what cannot be read in a field, or that all can; whether that is new.
    pub fn note(&mut self, field: &str, unread: Option<Unread>) -> bool {
        if self.unread(field) == unread.as_ref() {
            return false;
        }
        self.unread.retain(|it| it.field != field);
        self.unread.extend(unread);
        true
    }

    /// What cannot be read on the screen at an address: the label of each field, and its text.
    pub fn unread_on(&self, address: &str) -> Vec<(String, String)> {
        let on = |it: &Unread| Some((it.label_on(address)?.to_string(), it.text.clone()));
        self.unread.iter().filter_map(on).collect()
    }

    /// Forgets what cannot be read in the fields of a label on the screen at an address.
    pub fn forget_unread_of(&mut self, address: &str, label: &str) {
        self.unread.retain(|it| it.label_on(address) != Some(label));
    }

    /// Forgets what cannot be read on the screen at an address.
    pub fn forget_unread(&mut self, address: &str) {
        self.unread.retain(|it| it.field.split_once(' ').is_none_or(|(on, _)| on != address));
    }

    /// A thing that was begun.
    pub fn begun(&self, thing: &str) -> Option<&Begun> {
        self.begun.iter().find(|it| it.thing == thing)
    }

    /// Every thing that was begun, in the order of their beginnings.
    pub fn all_begun(&self) -> &[Begun] {
        &self.begun
    }

    /// Begins a thing, unless it was begun.
    pub fn begin(&mut self, thing: &str, address: &str) {
        if self.begun(thing).is_none() {
            self.begun.push(Begun { thing: thing.to_string(), address: address.to_string(), ..Begun::default() });
        }
    }

    /// A thing that was begun, to be changed.
    pub fn begun_mut(&mut self, thing: &str) -> Option<&mut Begun> {
        self.begun.iter_mut().find(|it| it.thing == thing)
    }

    /// Drops a thing that was begun.
    pub fn drop_begun(&mut self, thing: &str) {
        self.begun.retain(|it| it.thing != thing);
    }

    /// As a list of texts, to be kept while the page is loaded anew. What is in the book already
    /// is not in it.
    pub fn to_texts(&self) -> Vec<String> {
        let mut texts = Vec::new();
        for it in &self.unread {
            texts.extend([UNREAD, &it.field, &it.text, &it.error].map(String::from));
        }
        for it in self.begun.iter().filter(|it| it.waits()) {
            texts.extend([BEGUN, &it.thing, &it.address, &it.needs].map(String::from));
            for (field, text) in &it.texts {
                texts.extend([TEXT, field, text, ""].map(String::from));
            }
        }
        texts
    }

    /// Reads what [`Unfinished::to_texts`] writes; leaves out what is none of it.
    pub fn from_texts(texts: &[String]) -> Unfinished {
        let mut read = Unfinished::default();
        for four in texts.chunks_exact(4) {
            let [kind, first, second, third] = four else { continue };
            match kind.as_str() {
                UNREAD => {
                    let unread = Unread { field: first.clone(), text: second.clone(), error: third.clone() };
                    read.note(first, Some(unread));
                }
                BEGUN => {
                    read.begin(first, second);
                    if let Some(begun) = read.begun_mut(first) {
                        begun.needs.clone_from(third);
                    }
                }
                TEXT => {
                    if let Some(begun) = read.begun.last_mut() {
                        begun.set(first, second);
                    }
                }
                _ => {}
            }
        }
        read
    }
}

/// What four texts in a row are: a text that cannot be read, a thing that was begun, or one of its
/// texts.
const UNREAD: &str = "unread";
const BEGUN: &str = "begun";
const TEXT: &str = "text";
