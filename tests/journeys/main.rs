//! Journeys: what a person does in the app, done by WebDriver in a phone-sized Chromium on the
//! site as built for release. `cargo dev test` builds the site and starts them.

mod blended;
mod book_files;
mod bottle;
mod cup;
mod entering;
mod first_start;
mod harness;
mod harness_itself;
mod killed;
mod later;
mod menu_price;
mod missed_target;
mod mistyped;
mod opening;
mod screens;
#[path = "../../src/bin/dev/site.rs"]
mod site;
mod two_tabs;
mod typing;
mod updating;
