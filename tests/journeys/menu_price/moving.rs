//! A price changed at the supplier: what moved, before and after, and taken back on the spot.

use brimwright::say;
use brimwright::words::texts::{HOLE, around};

use crate::harness::{By, Journey};

const TWELVE: &str = "Orchard Walk, 12 fl oz";
const SIXTEEN: &str = "Orchard Walk, 16 fl oz";

pub async fn dearer_apples_and_back(journey: &Journey) {
    let step = say!(market::price_of, name = "Apples");
    let apples = By::Label(&step);
    journey.click(By::Text(say!(first::buying))).await;
    journey.type_into(apples, "55").await;
    journey.wait_for_text(&say!(market::step_some_dropped, step = &step, sizes = 2, dropped = "1")).await;
    // The caret stays in the field.
    let show = format!(
        "const show = [...document.querySelectorAll('button')].find((it) => it.innerText === '{}');
         show?.click();
         return show !== undefined",
        say!(market::show_drinks_affected)
    );
    journey.wait_until("the sizes affected to be shown", &show).await;
    // A fl oz of apple juice is now 55 / 38 * 0.110960 = 0.160600. In 12 fl oz 7.07948 fl oz are
    // used, 0.351426 more, / 0.97 = 0.362294: cost 3.349995, left 2.380024 / R 6.018519 = 0.39545.
    // The margin covers the fees, so the cost beside it has them: 0.029 * 6.5 + 0.10, and 0.029 * 7.95 + 0.10.
    // Asked to keep 40%: (3.349995 + 0.10) / 0.56868 * 1.08 = 6.55201, up to 6.95.
    let figures = [["$3.28", "$3.64"], ["45.6%", "39.5%"], ["$5.95", "$6.95"]];
    moved(journey, TWELVE, say!(first::below_target), figures).await;
    // In 16.15: 9.69102 fl oz, 0.481062 more, / 0.97 = 0.495940: cost 4.000389, left 3.030172 / R
    // 7.361111 = 0.41165. (4.000389 + 0.10) / 0.56868 * 1.08 = 7.78719, up to 7.95.
    let figures = [["$3.83", "$4.33"], ["47.9%", "41.2%"], ["$6.95", "$7.95"]];
    moved(journey, SIXTEEN, say!(first::on_target), figures).await;
    journey.expect_each(".moved-row a", &[TWELVE, SIXTEEN]).await;
    journey.screenshot("moved").await;

    // The Undo beside what moved, not the one of the head.
    let beside = "document.querySelector('.moved-undo').click(); return true";
    journey.wait_until("the Undo beside what moved", beside).await;
    let undone = say!(book::undone_change, change = &step);
    journey.wait_for_text(&say!(market::step_none_dropped, step = undone, sizes = 2)).await;
    journey.expect_value(apples, "38.00").await;
    // The caret is still in the field: what is typed now takes the place of what was put back.
    let selected = "const { selectionStart, selectionEnd } = document.activeElement;
        return selectionStart === 0 && selectionEnd === 5";
    journey.wait_until("the price to be selected", selected).await;
    let figures = [["$3.64", "$3.28"], ["39.5%", "45.6%"], ["$6.95", "$5.95"]];
    moved(journey, TWELVE, say!(first::on_target), figures).await;
    journey.wait_until_saved().await;
}

/// The cost, margin and suggested price of a size, each before and now, beside where it stands.
async fn moved(journey: &Journey, size: &str, state: &str, figures: [[&str; 2]; 3]) {
    let [before, now] = [say!(market::figure_before, figure = HOLE), say!(market::figure_now, figure = HOLE)];
    let [before, now] = [around(&before).0, around(&now).0];
    let mut lines = vec![size, state];
    let names = [say!(common::cost), say!(common::margin), say!(common::suggested_price)];
    for (name, [was, is]) in names.into_iter().zip(figures) {
        lines.extend([name, before.trim(), was, now.trim(), is]);
    }
    journey.expect_lines(By::Item(size), &lines).await;
}
