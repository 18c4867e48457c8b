//! A price changed at the supplier: what moved, before and after, and taken back on the spot.

use crate::harness::{By, Journey};

const APPLES: By<'_> = By::Label("Price of Apples");
const TWELVE: By<'_> = By::Item("Orchard Walk, 12 fl oz");
const SIXTEEN: By<'_> = By::Item("Orchard Walk, 16 fl oz");

pub async fn dearer_apples_and_back(journey: &Journey) {
    journey.click(By::Text("Buying")).await;
    journey.type_into(APPLES, "55").await;
    journey.wait_for_text("Price of Apples: 2 sizes moved, 1 fell under target.").await;
    // A fl oz of apple juice is now 55 / 38 * 0.110960 = 0.160600. In 12 fl oz 7.07948 fl oz are
    // used, 0.351426 more, / 0.97 = 0.362294: cost 3.362366, left 2.367653 / R 6.018519 = 0.39340.
    // Asked to keep 40 %: (3.362366 + 0.10) / 0.56868 * 1.08 = 6.57550, up to 6.95.
    let twelve = [
        "Orchard Walk, 12 fl oz",
        "under target",
        "Cost",
        "before",
        "$3.00",
        "now",
        "$3.36",
        "Margin",
        "before",
        "45.4 %",
        "now",
        "39.3 %",
        "Suggested",
        "before",
        "$5.95",
        "now",
        "$6.95",
    ];
    journey.expect_lines(TWELVE, &twelve).await;
    // In 16.15: 9.69102 fl oz, 0.481062 more, / 0.97 = 0.495940: cost 4.012760, left 3.017801 / R
    // 7.361111 = 0.40997. (4.012760 + 0.10) / 0.56868 * 1.08 = 7.81062, up to 7.95.
    let sixteen = [
        "Orchard Walk, 16 fl oz",
        "on target",
        "Cost",
        "before",
        "$3.52",
        "now",
        "$4.01",
        "Margin",
        "before",
        "47.7 %",
        "now",
        "41.0 %",
        "Suggested",
        "before",
        "$6.95",
        "now",
        "$7.95",
    ];
    journey.expect_lines(SIXTEEN, &sixteen).await;
    journey.expect_each(".moved-row a", &["Orchard Walk, 12 fl oz", "Orchard Walk, 16 fl oz"]).await;
    journey.screenshot("moved").await;

    // The Undo beside what moved, not the one of the head.
    let beside = "document.querySelector('.moved-undo').click(); return true";
    journey.wait_until("the Undo beside what moved", beside).await;
    journey.wait_for_text("Taken back: Price of Apples: 2 sizes moved, none fell under target.").await;
    journey.expect_value(APPLES, "38.00").await;
    // The caret is still in the field: what is typed now takes the place of what was put back.
    let selected = "const { selectionStart, selectionEnd } = document.activeElement;
        return selectionStart === 0 && selectionEnd === 5";
    journey.wait_until("the price to be selected", selected).await;
    let twelve = [
        "Orchard Walk, 12 fl oz",
        "on target",
        "Cost",
        "before",
        "$3.36",
        "now",
        "$3.00",
        "Margin",
        "before",
        "39.3 %",
        "now",
        "45.4 %",
        "Suggested",
        "before",
        "$6.95",
        "now",
        "$5.95",
    ];
    journey.expect_lines(TWELVE, &twelve).await;
    journey.wait_until_saved().await;
}
