//! From a supplier's price to a menu price, offline from the first step: buying, pouring, mixing,
//! pricing, the card for the counter, and what a dearer case of apples does.
//!
//! Everything is invented. Each expected figure was worked out by hand or with fractions of whole
//! numbers, from the formulas that stand beside it; none comes from the engine. With every figure
//! of a size: F is what is poured, k how many times the recipe, R the price without tax.

mod buying;
mod mixing;
mod moving;
mod pouring;
mod pricing;
mod serving;

use brimwright::say;

use crate::harness::{By, Journey};

#[tokio::test]
async fn from_a_suppliers_price_to_a_menu_price() {
    let mut journey = Journey::start("menu_price").await;
    journey.open().await;
    journey.wait_until_kept_offline().await;
    journey.close_site();
    journey.open().await;
    journey.click(By::Text(say!(first::start_book))).await;
    journey.wait_for_text(say!(first::first_price_steps)).await;

    buying::ingredients(&journey).await;
    buying::packaging(&journey).await;
    pouring::containers(&journey).await;
    mixing::a_drink(&journey).await;
    pricing::with_tax_at_the_till(&journey).await;
    pricing::with_tax_inside(&journey).await;
    pricing::covering_everything(&journey).await;
    serving::sizes_side_by_side(&journey).await;
    serving::a_card_without_prices(&journey).await;
    moving::dearer_apples_and_back(&journey).await;

    // Still offline: all of it is on the device.
    journey.open().await;
    pricing::open_size(&journey, "12 fl oz").await;
    journey.expect_value(By::Label(say!(drinks::menu_price)), "6.50").await;
    journey.wait_for_text(&pricing::lowest("$5.95", "40.8%", "$5.864")).await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
