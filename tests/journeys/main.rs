//! Journeys: what a person does in the app, done by WebDriver in a phone-sized Chromium on the
//! site as built for release. `cargo dev test` builds the site and starts them.

mod batch;
mod blended;
mod book_files;
mod bottle;
mod buying_list;
mod cup;
mod decision_sheet;
mod directions;
mod engines;
mod entering;
#[path = "../faults/in_browsers/mod.rs"]
mod faults;
mod first_price;
mod first_start;
mod harness;
mod harness_itself;
mod how_many;
mod jumped;
mod knowing;
mod later;
mod leaving;
mod locked_tablet;
mod market_morning;
mod menu_price;
mod missed_target;
mod mistyped;
mod morning_press;
mod new_things;
mod opening;
mod picked;
mod price_watch;
mod printed;
mod redated;
mod restore;
mod returning;
mod sales;
mod screens;
mod smoothie_bottle;
mod starting;
#[path = "../support/mod.rs"]
mod support;
mod switching;
mod tables;
mod two_tabs;
mod typed_over;
mod typing;
mod undo;
mod unread;
mod updating;
mod varying_costs;
mod what_if;
