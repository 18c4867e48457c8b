//! Journeys: what a person does in the app, done by WebDriver in a phone-sized Chromium on the
//! site as built for release. `cargo dev test` builds the site and starts them.

mod book_files;
mod first_start;
mod harness;
mod harness_itself;
mod killed;
mod menu_price;
mod opening;
mod screens;
#[path = "../../src/bin/dev/site.rs"]
mod site;
mod two_tabs;
mod typing;
mod updating;
