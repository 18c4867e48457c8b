//! Rows of comma-separated values: RFC 4180, lines ended by CR LF, UTF-8 with its mark, without
//! which spreadsheets take letters beyond ASCII for others.

use crate::foundation::measure::is_unseen;

/// The byte order mark that says UTF-8.
const MARK: &str = "\u{feff}";

/// How a cell begins that a spreadsheet would run: the signs of OWASP's page "CSV Injection"
/// (from memory), and those that a spreadsheet folds into them, the full-width and small forms of
/// Unicode's blocks FF00 and FE50.
const RUN: [char; 12] = ['=', '+', '-', '@', '＝', '＋', '－', '＠', '﹦', '﹢', '﹣', '﹫'];

/// Rows being written.
#[derive(Default)]
pub(super) struct Csv {
    text: String,
    row_begun: bool,
}

impl Csv {
    /// A cell that holds a number, or nothing.
    pub(super) fn number(&mut self, number: Option<impl ToString>) {
        self.cell(&number.map(|number| number.to_string()).unwrap_or_default());
    }

    /// A cell of text that somebody typed: made harmless where a spreadsheet would run it.
    pub(super) fn text(&mut self, text: &str) {
        // Blanks, line ends and signs that nobody sees may stand before what is run.
        let first = text.trim_start_matches(|sign: char| sign.is_whitespace() || is_unseen(sign));
        if first.starts_with(RUN) || text.starts_with(['\t', '\r', '\n']) {
            self.cell(&format!("'{text}"));
        } else {
            self.cell(text);
        }
    }

    /// Ends the row.
    pub(super) fn end_row(&mut self) {
        self.text.push_str("\r\n");
        self.row_begun = false;
    }

    /// Everything written.
    pub(super) fn into_text(self) -> String {
        format!("{MARK}{}", self.text)
    }

    fn cell(&mut self, text: &str) {
        if self.row_begun {
            self.text.push(',');
        }
        self.row_begun = true;
        if text.contains([',', '"', '\r', '\n']) {
            self.text.push('"');
            self.text.push_str(&text.replace('"', "\"\""));
            self.text.push('"');
        } else {
            self.text.push_str(text);
        }
    }
}
