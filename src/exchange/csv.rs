//! Rows of comma-separated values: RFC 4180, lines ended by CR LF, UTF-8 without a mark.

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
        if text.starts_with(['=', '+', '-', '@', '\t', '\r']) {
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
        self.text
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
