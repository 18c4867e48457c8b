//! What comes out on paper.

use crate::harness::{By, Journey};

#[tokio::test]
async fn prices_come_out_on_both_papers() {
    let journey = Journey::start("printed").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    for (paper, size) in [("A4", (595, 842)), ("Letter", (612, 792))] {
        for route in ["#/print/prices", "#/print/cards"] {
        let printed = journey.printed(route, paper).await;
        println!("{} pages {:?}", printed.pages.len(), printed.pages);
        assert_eq!((printed.width, printed.height), size);
        }
    }
}
