//! What comes out on paper: a sheet printed by the browser to a PDF, and the text read back.

use std::fs;

use base64::Engine;
use base64::prelude::BASE64_STANDARD;
use brimwright::say;
use lopdf::{Dictionary, Document, Object, ObjectId};
use serde_json::json;

use super::{By, Journey};

/// A sheet as it lies in the printer's tray.
pub struct Printed {
    /// Its pages: the text of each, as it was drawn. Spaces in it mean nothing.
    pub pages: Vec<String>,
    /// Width of the paper in points, 72 to an inch.
    pub width: u32,
    /// Height of the paper in points.
    pub height: u32,
}

impl Printed {
    /// Each of `texts` stands somewhere, on one page or over several.
    pub fn has(&self, texts: &[impl AsRef<str>]) {
        let all = bare(&self.pages.concat());
        none("missing", texts, |text| !all.contains(text));
    }

    /// None of `texts` stands anywhere.
    pub fn has_not(&self, texts: &[impl AsRef<str>]) {
        let all = bare(&self.pages.concat());
        none("on paper", texts, |text| all.contains(text));
    }

    /// Each of `texts` stands whole on one page.
    pub fn has_whole(&self, texts: &[impl AsRef<str>]) {
        none("torn or missing", texts, |text| !self.pages.iter().any(|page| bare(page).contains(text)));
    }

    /// No table is torn so that one of its rows stands alone on a page.
    pub fn has_no_row_alone(&self, tables: &[Vec<String>]) {
        let pages: Vec<String> = self.pages.iter().map(|page| bare(page)).collect();
        let all = pages.concat();
        let page_of = |place: usize| {
            let mut end = 0;
            pages.iter().position(|page| {
                end += page.len();
                place < end
            })
        };
        let mut from = 0;
        for rows in tables {
            let mut on = vec![0; pages.len()];
            for row in rows.iter().map(|row| bare(row)).filter(|row| !row.is_empty()) {
                // In the order of the sheet: rows of several tables may say the same.
                let place = all[from..].find(&row).map(|place| from + place).or_else(|| all.find(&row));
                let place = place.unwrap_or_else(|| panic!("a row is missing or torn: {row}"));
                from = place;
                on[page_of(place).expect("a page")] += 1;
            }
            assert!(
                rows.len() < 2 || !on.contains(&1),
                "a row alone on its page, of so many on each: {on:?}, {rows:#?}"
            );
        }
    }

    /// Each of `texts` stands on every page.
    pub fn has_on_each_page(&self, texts: &[impl AsRef<str>]) {
        none("not on each page", texts, |text| !self.pages.iter().all(|page| bare(page).contains(text)));
    }
}

/// None of `texts` is such.
fn none(what: &str, texts: &[impl AsRef<str>], is: impl Fn(&str) -> bool) {
    let found: Vec<&str> = texts.iter().map(AsRef::as_ref).filter(|text| is(&bare(text))).collect();
    assert!(found.is_empty(), "{what}: {found:#?}");
}

/// A text without its spaces: a line broken on paper has others than on the screen.
fn bare(text: &str) -> String {
    text.split_whitespace().collect()
}

/// How wide what is drawn on a screen as wide as the paper's printed part is, beyond that screen,
/// in CSS pixels: the browser would shrink the whole sheet by it.
const TOO_WIDE: &str =
    "const { scrollWidth, clientWidth } = document.documentElement; return scrollWidth - clientWidth";

/// Papers in inches, of whole points: the browser rounds parts of points up.
const A4: (f64, f64) = (595.0 / 72.0, 842.0 / 72.0);
const LETTER: (f64, f64) = (8.5, 11.0);
const A5: (f64, f64) = (420.0 / 72.0, 595.0 / 72.0);

impl Journey {
    /// Prints the sheet at an address on "A4" or "Letter" to `target/journeys/JOURNEY-*.pdf` and
    /// reads it back. Every page has the same size, nothing on it is wider than the paper, and
    /// what the preview shows is there: nothing cut, what must not be torn on one page, and no row of a table
    /// alone on one.
    pub async fn printed(&self, address: &str, paper: &str) -> Printed {
        self.go(address).await;
        self.choose(By::Label(say!(counter::paper)), paper).await;
        let name = format!("{}-{paper}", address.trim_start_matches("#/").replace('/', "-"));
        // The paper that the sheet asks for, not the one in the tray.
        let printed = self.print(&name, A5).await;
        printed.has(&self.lines_of_each(".paper :is(td, th, li, p, h2)").await);
        printed.has_whole(&self.lines_of_each(".paper .paper-whole").await);
        printed.has_no_row_alone(&self.rows_of_tables().await);
        printed
    }

    /// Prints the sheet that is open again and again, its content pushed down further each time: wherever a page ends,
    /// no row of a table stands alone on one.
    pub async fn no_row_is_left_alone(&self, name: &str) {
        let tables = self.rows_of_tables().await;
        for millimeters in (0..120).step_by(5) {
            let push =
                format!("document.querySelector('.paper-body > *').style.marginTop = '{millimeters}mm'; return true");
            self.client().execute(&push, Vec::new()).await.expect("the sheet is pushed down");
            self.print(name, A5).await.has_no_row_alone(&tables);
        }
    }

    /// The rows of each table of the preview, without its head.
    async fn rows_of_tables(&self) -> Vec<Vec<String>> {
        let script = "return [...document.querySelectorAll('.paper-table')]
            .map((table) => [...table.querySelectorAll('tbody tr')].map((row) => row.innerText));";
        let rows = self.client().execute(script, Vec::new()).await.expect("the preview can be read");
        serde_json::from_value(rows).expect("rows of tables")
    }

    /// Prints the screen that is open, of any place, on the "A4" or "Letter" in the tray; `name`
    /// names the PDF.
    pub async fn printed_as_it_is(&self, name: &str, paper: &str) -> Printed {
        self.print(&format!("{name}-{paper}"), if paper == "A4" { A4 } else { LETTER }).await
    }

    async fn print(&self, name: &str, (width, height): (f64, f64)) -> Printed {
        let parameters = json!({
            "preferCSSPageSize": true, "printBackground": false, "paperWidth": width, "paperHeight": height
        });
        let answer = self.devtools("Page.printToPDF", parameters).await;
        let data = answer["data"].as_str().expect("a PDF in base64");
        let bytes = BASE64_STANDARD.decode(data).expect("base64");
        let path = self.picture(name).with_extension("pdf");
        fs::write(path, &bytes).expect("the PDF is written");
        let printed = read(&bytes);
        let too_wide = self.too_wide_for(f64::from(printed.width)).await;
        assert!(too_wide <= 0, "{name}: {too_wide} px wider than the paper");
        printed
    }

    /// By how much the screen as it is printed is wider than a paper of so many points, with
    /// margins of 12 mm, in CSS pixels.
    async fn too_wide_for(&self, points: f64) -> i64 {
        let width = (points / 72.0 - 24.0 / 25.4) * 96.0;
        let (screen_width, screen_height) = self.viewport().await;
        let screen = json!({ "width": width as u32, "height": 1000, "deviceScaleFactor": 1, "mobile": false });
        self.devtools("Emulation.setEmulatedMedia", json!({ "media": "print" })).await;
        self.devtools("Emulation.setDeviceMetricsOverride", screen).await;
        let too_wide = self.client().execute(TOO_WIDE, Vec::new()).await.expect("the page can be measured");
        self.devtools("Emulation.setEmulatedMedia", json!({ "media": "" })).await;
        self.resize(screen_width as u32, screen_height as u32).await;
        too_wide.as_i64().expect("a number of pixels")
    }
}

fn read(bytes: &[u8]) -> Printed {
    let document = Document::load_mem(bytes).expect("a PDF");
    let pages = document.get_pages();
    let sizes: Vec<(u32, u32)> = pages.values().map(|page| size(&document, *page)).collect();
    let (width, height) = *sizes.first().expect("a page");
    assert!(sizes.iter().all(|size| *size == (width, height)), "pages of several sizes: {sizes:?}");
    let text = |number: &u32| {
        let text = document.extract_text(&[*number]).expect("the text of a page");
        // Letters that a font draws as one.
        text.replace('\u{fb01}', "fi").replace('\u{fb02}', "fl")
    };
    Printed { pages: pages.keys().map(text).collect(), width, height }
}

/// Width and height of a page in whole points. The box is the page's own or that of all.
fn size(document: &Document, page: ObjectId) -> (u32, u32) {
    let mut of = document.get_dictionary(page).expect("a page");
    let sides = loop {
        match of.get(b"MediaBox").and_then(Object::as_array) {
            Ok(sides) => break sides,
            Err(_) => of = parent(document, of),
        }
    };
    let sides: Vec<f32> = sides.iter().map(|side| side.as_float().expect("a number")).collect();
    let [left, bottom, right, top] = sides.as_slice() else { panic!("a box of {} sides", sides.len()) };
    ((right - left).round() as u32, (top - bottom).round() as u32)
}

fn parent<'a>(document: &'a Document, page: &Dictionary) -> &'a Dictionary {
    let parent = page.get(b"Parent").and_then(Object::as_reference).expect("a box of the page or above it");
    document.get_dictionary(parent).expect("what is above the page")
}
