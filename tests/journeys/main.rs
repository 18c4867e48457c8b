//! Journeys: what a person does in the app, done by WebDriver in a phone-sized Chromium on the
//! site as built for release. `cargo dev test` builds the site and starts them.

mod harness;
mod harness_itself;
mod opening;
#[path = "../../src/bin/dev/site.rs"]
mod site;
mod updating;
