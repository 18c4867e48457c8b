//! What is poured into: two sizes with their sets.

use crate::entering;
use crate::harness::{By, Journey};

pub async fn containers(journey: &Journey) {
    journey.click(By::Text("Containers")).await;
    journey.wait_for_text("What do you pour into?").await;
    journey.click(By::Text("Add a container")).await;
    journey.enter(By::Label("Name on the menu"), "12 fl oz").await;
    journey.enter(By::Label("Volume to the rim"), "12.8").await;
    journey.expect_value(By::Label("Left empty"), "as a volume").await;
    journey.enter(By::Label("Volume left empty"), "0.8").await;
    journey.enter(By::Label("Size it is declared as"), "12").await;
    // 12.8 - 0.8.
    journey.expect_figures("How full it is poured", &[("Poured", "12.0 fl oz")]).await;
    journey.wait_for_text_gone("less than its declared size").await;
    set(journey, "Bottle, 12 fl oz", "$0.525").await;

    journey.click(By::Text("Containers")).await;
    journey.click(By::Text("Add a container")).await;
    journey.enter(By::Label("Name on the menu"), "16 fl oz").await;
    journey.enter(By::Label("Volume to the rim"), "17").await;
    journey.enter(By::Label("Volume left empty"), "1").await;
    journey.choose(By::Label("Left empty"), "as a share of the brim").await;
    // What is left empty in the new way is not guessed; until it is typed, the old way is in force.
    journey.expect_value(By::Label("Share left empty"), "").await;
    let needs = "The new headspace for 16 fl oz is not in the book yet. It still needs what is left empty.";
    journey.wait_for_text(needs).await;
    journey.expect_figures("How full it is poured", &[("Poured", "16.0 fl oz")]).await;
    journey.enter(By::Label("Share left empty"), "5").await;
    // 17 * 0.95 = 16.15, half away from zero.
    journey.expect_figures("How full it is poured", &[("Poured", "16.2 fl oz")]).await;
    set(journey, "Bottle, 16 fl oz", "$0.540").await;

    journey.click(By::Text("Containers")).await;
    let twelve = ["12 fl oz", "poured 12.0 fl oz, 12.8 fl oz to the rim", "not used yet"];
    journey.expect_lines(By::Item("12 fl oz"), &twelve).await;
    let sixteen = ["16 fl oz", "poured 16.2 fl oz, 17.0 fl oz to the rim", "not used yet"];
    journey.expect_lines(By::Item("16 fl oz"), &sixteen).await;
}

/// A bottle and a cap for one drink.
async fn set(journey: &Journey, bottle: &str, cost: &str) {
    for piece in [bottle, "Cap, 38 mm"] {
        entering::belongs(journey, piece, "1").await;
        journey.expect_value(By::Label("Add to it"), "Choose packaging").await;
    }
    journey.wait_for_text(cost).await;
    journey.wait_for_text("$0.085").await;
}
