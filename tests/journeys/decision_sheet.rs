//! A decision on one printed page, A4 and Letter: what is decided at the desk goes to the client on paper.
//!
//! What has to be true, by hand on the demo's pressed drinks, without overhead (`tests/reference/decisions.rs`
//! has the count): 33 buyers of the 8 oz leave $70.40 a week, and $104.61 with the 12 oz; 70.40 / 104.61 = 0.6730,
//! so 68 of 100 must stay. The 217 buyers of the 16 oz lose so much with the 12 oz that 43 more must come.

use brimwright::say;

use crate::harness::{By, Journey};

#[tokio::test]
async fn a_decision_is_printed_on_one_page() {
    let journey = Journey::start("printed_decision").await;
    journey.open().await;
    journey.click(By::Text(say!(first::look_around))).await;
    journey.wait_for_text("Orchard Green").await;
    let pressed = say!(first::type_pressed);
    let title = |question: String| say!(sales::named_figure, name = pressed, figure = question);
    let drop = title(say!(decide::decide_drop, size = "8 oz bottle"));
    let switch = title(say!(decide::decide_switch, from = "16 oz bottle", to = "12 oz bottle"));
    let stay = say!(decide::drop_pays_to, stay = 68_usize, size = "12 oz bottle");
    let new = say!(decide::switch_needs_new, buyers = 43_usize);
    for (address, title, verdict) in
        [("#/print/decision/kind/pressed/2-", &drop, &stay), ("#/print/decision/kind/pressed/4-3", &switch, &new)]
    {
        for (paper, size) in [("A4", (595, 842)), ("Letter", (612, 792))] {
            let sheet = journey.printed(address, paper).await;
            assert_eq!((sheet.width, sheet.height, sheet.pages.len()), (size.0, size.1, 1), "{address}");
            sheet.has(&[title, verdict]);
            sheet.has(&[
                "Marrowgate Juice Hall",
                say!(first::sample_data),
                say!(decide::profit_week_now),
                say!(sales::difference),
                say!(sales::must_be_true),
                say!(decide::customers_see),
                say!(sales::one_time_and_payback),
                say!(sales::trial_plan),
                say!(sales::assumptions),
                say!(decide::overhead_left_out),
                say!(sales::sheet_caution),
                say!(sales::trial_caution),
                "Orchard Green",
            ]);
            sheet.has_not(&[say!(first::undo), say!(first::saved), say!(first::buying), say!(counter::paper)]);
        }
    }
    journey.screenshot("sheet").await;
    assert_eq!(journey.console_errors().await, Vec::<String>::new());
}
