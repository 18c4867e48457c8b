//! The unit beside a number: a number alone takes it, a unit that is typed moves it, picking
//! another keeps the number. What is typed is kept as it was typed.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::By;

const HOLDS: By<'_> = By::Label("Holds");
const UNIT: By<'_> = By::Label("Unit of Holds");

#[tokio::test]
async fn a_number_takes_the_unit_beside_it() {
    let journey = entering::empty_book("picked").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    // A US book: a bare weight of a pack is pounds.
    journey.expect_value(UNIT, "lb").await;
    journey.expect_value(HOLDS, "10 lb").await;
    journey.expect_figures("Packs", &[("Per lb as bought", "$2.000")]).await;

    // Picking ounces keeps the number: 20 / 10 oz is 32.00 a lb; Undo takes it back.
    journey.choose(UNIT, "oz").await;
    journey.expect_value(HOLDS, "10 oz").await;
    journey.expect_figures("Packs", &[("Per lb as bought", "$32.000")]).await;
    journey.click(By::Label("Keep 10 oz")).await;
    journey.click(By::Text("Undo")).await;
    journey.expect_value(HOLDS, "10 lb").await;

    // A unit that is typed moves the picker, and a number alone stays in it.
    journey.click(HOLDS).await;
    journey.type_on("3 lb 4 oz").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(HOLDS, "3.25 lb").await;
    journey.click(HOLDS).await;
    journey.type_on("6 oz").await;
    journey.expect_value(UNIT, "oz").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(HOLDS, "6 oz").await;
    journey.click(HOLDS).await;
    journey.type_on("8").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(HOLDS, "8 oz").await;
    journey.click(HOLDS).await;
    journey.type_on("50#").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(HOLDS, "50 lb").await;
    // What cannot be read stays, with its sentence, and the unit with the value in force.
    journey.click(HOLDS).await;
    journey.type_on("50 lb50").await;
    journey.expect_sentence(HOLDS, "“50 lb50” is not one amount. Type a number and its unit, such as 12 lb.").await;
    journey.expect_value(UNIT, "lb").await;
    journey.type_on_key(Key::Escape).await;
    journey.expect_value(HOLDS, "50 lb").await;

    // The units of the book stand first; every other is there too.
    let options = "return [...document.querySelector('select.entry-picker').options].slice(0, 5).map((it) => it.text)
        .join() === 'oz,lb,fl oz,tsp,tbsp'";
    journey.wait_until("the units of a US book", options).await;
    let all = "return document.querySelector('select.entry-picker').options.length === 21";
    journey.wait_until("all units", all).await;
}

#[tokio::test]
async fn an_empty_field_begins_with_the_unit_of_the_book() {
    let journey = entering::empty_book("picked_empty").await;
    journey.click(By::Text("Book")).await;
    let (step, unit) = (By::Label("Step of the scale"), By::Label("Unit of Step of the scale"));
    journey.expect_value(unit, "oz").await;
    journey.choose(unit, "g").await;
    journey.click(step).await;
    journey.type_on("5").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(step, "5 g").await;
    // A weight in a field that takes volumes too stays a weight.
    entering::ingredient(&journey, "Plums", "10", "20").await;
    entering::drink(&journey, "Plum Shade", "Over ice", "16").await;
    entering::line(&journey, "Plums", "8").await;
    let (amount, unit) = (By::Label("Amount of Plums"), By::Label("Unit of Amount of Plums"));
    journey.expect_value(amount, "8 fl oz").await;
    journey.choose(unit, "oz").await;
    journey.expect_value(amount, "8 oz").await;
    journey.click(amount).await;
    journey.type_on("6").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(amount, "6 oz").await;
    journey.expect_value(unit, "oz").await;
    for width in [320, 360] {
        journey.resize(width, 740).await;
        assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new());
        journey.screenshot(&format!("recipe_{width}")).await;
    }
    // Keypads: digits where the unit stands beside them, letters where fractions are typed.
    entering::container(&journey, "Large cup").await;
    let keyboard = async |label: &str, keyboard: &str| {
        let script = format!(
            "return [...document.querySelectorAll('input')]
                 .find((it) => it.labels?.[0]?.innerText === '{label}').inputMode === '{keyboard}'"
        );
        journey.wait_until(&format!("the keyboard of {label:?}"), &script).await;
    };
    keyboard("Volume to the rim", "decimal").await;
    keyboard("Name on the menu", "text").await;
    journey.choose(By::Label("How you know what it holds"), "by its measures").await;
    keyboard("Inside, across the base", "text").await;
    journey.choose(By::Label("Unit of Inside, across the base"), "mm").await;
    keyboard("Inside, across the base", "decimal").await;
}
