//! What is poured into: two sizes with their sets.

use brimwright::say;
use brimwright::words::texts::{HOLE, around};

use crate::entering;
use crate::harness::{By, Journey};

pub async fn containers(journey: &Journey) {
    journey.click(By::Text(say!(first::containers))).await;
    journey.wait_for_text(say!(labels::no_containers)).await;
    journey.click(By::Text(say!(labels::add_container))).await;
    journey.enter(By::Label(say!(labels::menu_name)), "12 fl oz").await;
    journey.enter(By::Label(say!(goods::brimful_capacity)), "12.8").await;
    journey.expect_value(By::Label(say!(labels::headspace_by)), say!(labels::by_volume)).await;
    journey.enter(By::Label(say!(labels::headspace)), "0.8").await;
    journey.enter(By::Label(say!(labels::labeled_size)), "12").await;
    // 12.8 - 0.8.
    journey.expect_figures(say!(common::fill), &[(say!(common::fill), "12.0 fl oz")]).await;
    let short = say!(labels::container_fill_below_labeled_size, short = HOLE);
    journey.wait_for_text_gone(&around(&short).1).await;
    set(journey, "12 oz bottle", "$0.525").await;

    journey.click(By::Text(say!(first::containers))).await;
    journey.click(By::Text(say!(labels::add_container))).await;
    journey.enter(By::Label(say!(labels::menu_name)), "16 fl oz").await;
    journey.enter(By::Label(say!(goods::brimful_capacity)), "17").await;
    journey.enter(By::Label(say!(labels::headspace)), "1").await;
    journey.choose(By::Label(say!(labels::headspace_by)), say!(labels::by_share)).await;
    // What is left empty in the new way is not guessed; until it is typed, the old way is in force.
    journey.expect_value(By::Label(say!(labels::headspace)), "").await;
    let unsaved = say!(book::new_headspace_unsaved, of = "16 fl oz");
    let needs = say!(book::still_needs, fields = 1_usize, needs = say!(book::needs_headspace));
    journey.wait_for_text(&[unsaved, needs].join(" ")).await;
    journey.expect_figures(say!(common::fill), &[(say!(common::fill), "16.0 fl oz")]).await;
    journey.enter(By::Label(say!(labels::headspace)), "5").await;
    // 17 * 0.95 = 16.15, half away from zero.
    journey.expect_figures(say!(common::fill), &[(say!(common::fill), "16.2 fl oz")]).await;
    set(journey, "16 oz bottle", "$0.540").await;

    journey.click(By::Text(say!(first::containers))).await;
    let holds = |fill: &str, capacity: &str| say!(labels::container_fill, fill = fill, capacity = capacity);
    let (twelve, sixteen) = (holds("12.0 fl oz", "12.8 fl oz"), holds("16.2 fl oz", "17.0 fl oz"));
    let twelve = ["12 fl oz", &twelve, say!(labels::container_not_used)];
    journey.expect_lines(By::Item("12 fl oz"), &twelve).await;
    let sixteen = ["16 fl oz", &sixteen, say!(labels::container_not_used)];
    journey.expect_lines(By::Item("16 fl oz"), &sixteen).await;
}

/// A bottle and a cap for one drink.
async fn set(journey: &Journey, bottle: &str, cost: &str) {
    for piece in [bottle, "Cap, 38 mm"] {
        entering::belongs(journey, piece, "1").await;
        journey.expect_value(By::Label(say!(goods::add_packaging)), say!(goods::choose_packaging)).await;
    }
    journey.wait_for_text(cost).await;
    journey.wait_for_text("$0.085").await;
}
