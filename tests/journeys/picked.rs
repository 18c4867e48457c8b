//! The unit beside a number: a number alone takes it, a unit that is typed moves it, picking
//! another keeps the number. What is typed is kept as it was typed. From an empty book; everything
//! is invented, every figure worked out by hand.

use fantoccini::key::Key;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(a_number_takes_the_unit_beside_it);
in_each_engine!(an_empty_field_begins_with_the_unit_of_the_book);
in_each_engine!(a_unit_that_is_refused_is_none_for_the_next_number);
in_each_engine!(lists_look_like_the_fields_beside_them);

const HOLDS: By<'_> = By::Label("Holds");
const UNIT: By<'_> = By::Label("Unit of Holds");

/// Goes into a field, types, and leaves it by Tab.
async fn typed(journey: &Journey, field: By<'_>, text: &str) {
    journey.click(field).await;
    journey.type_on(text).await;
    journey.type_on_key(Key::Tab).await;
}

async fn a_number_takes_the_unit_beside_it(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked").await;
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
    typed(&journey, HOLDS, "3 lb 4 oz").await;
    journey.expect_value(HOLDS, "3.25 lb").await;
    journey.click(HOLDS).await;
    journey.type_on("6 oz").await;
    journey.expect_value(UNIT, "oz").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(HOLDS, "6 oz").await;
    typed(&journey, HOLDS, "8").await;
    journey.expect_value(HOLDS, "8 oz").await;
    typed(&journey, HOLDS, "50#").await;
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

async fn an_empty_field_begins_with_the_unit_of_the_book(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked_empty").await;
    journey.click(By::Text("Book")).await;
    let (step, unit) = (By::Label("Step of the scale"), By::Label("Unit of Step of the scale"));
    journey.expect_value(unit, "oz").await;
    journey.choose(unit, "g").await;
    typed(&journey, step, "5").await;
    journey.expect_value(step, "5 g").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    entering::drink(&journey, "Plum Shade", "Over ice", "16").await;
    // A weight in a field that takes volumes first stays a weight.
    entering::line(&journey, "Plums", "8").await;
    let (amount, unit) = (By::Label("Amount of Plums"), By::Label("Unit of Amount of Plums"));
    journey.expect_value(amount, "8 fl oz").await;
    journey.choose(unit, "oz").await;
    journey.expect_value(amount, "8 oz").await;
    typed(&journey, amount, "6").await;
    journey.expect_value(amount, "6 oz").await;
    journey.expect_value(unit, "oz").await;
    // In such a field an ounce that is typed is a fluid one, also before the line is in the book.
    journey.choose(By::Label("Add to the recipe"), "Something new").await;
    let (amount, unit) = (By::Label("Amount of the new ingredient"), By::Label("Unit of Amount of the new ingredient"));
    typed(&journey, amount, "6 oz").await;
    journey.expect_value(unit, "fl oz").await;
    journey.expect_value(amount, "6 fl oz").await;
    typed(&journey, By::Label("Name of the new ingredient"), "Pears").await;
    journey.wait_for_text_gone("is not in the book yet").await;
    journey.expect_value(amount, "6 fl oz").await;
    // Keypads: digits where the unit stands beside them, letters where fractions are typed.
    entering::container(&journey, "Large cup", "16", "1").await;
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

async fn a_unit_that_is_refused_is_none_for_the_next_number(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked_refused").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    entering::drink(&journey, "Plum Shade", "Over ice", "16").await;
    entering::line(&journey, "Plums", "16").await;
    let question = "What a drink of this size takes";
    let (size, unit) = (By::Label(question), By::Label("Unit of What a drink of this size takes"));
    typed(&journey, size, "1 ea").await;
    let refused = "“ea” measures a number of pieces; here a volume is needed, such as 12 fl oz.";
    journey.expect_error(size, refused).await;
    // It stands there with its unit, which is not among those to pick.
    journey.expect_value(size, "1 ea").await;
    journey.expect_value(unit, "fl oz").await;
    typed(&journey, size, "12").await;
    journey.expect_error(size, "").await;
    journey.expect_value(size, "12 fl oz").await;
    // An ounce is a fluid one here, and picking another unit keeps the number.
    typed(&journey, size, "8 oz").await;
    journey.expect_value(size, "8 fl oz").await;
    journey.choose(unit, "cup").await;
    journey.expect_value(size, "8 cup").await;
    typed(&journey, size, "2").await;
    journey.expect_value(size, "2 cup").await;
}

/// Each list beside a field, and each field, by how it is drawn.
const LOOKS: &str = "
    const look = (it) => {
        const { fontFamily, fontSize, color, backgroundColor, borderTopWidth, borderTopStyle, borderTopColor,
            borderTopLeftRadius, appearance } = getComputedStyle(it);
        const { height } = it.getBoundingClientRect();
        return [fontFamily, fontSize, color, backgroundColor, borderTopWidth, borderTopStyle, borderTopColor,
            borderTopLeftRadius, Math.round(height)].join();
    };
    const lists = [...document.querySelectorAll('.section select')];
    const fields = [...document.querySelectorAll('.section input[type=text]')];
    return lists.length > 1 && lists.every((it) => getComputedStyle(it).appearance === 'none')
        && new Set([...lists, ...fields].map(look)).size === 1;";

async fn lists_look_like_the_fields_beside_them(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked_looks").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    journey.wait_until("lists that look like fields", LOOKS).await;
    journey.screenshot("pack").await;
    entering::container(&journey, "Large cup", "16", "1").await;
    journey.wait_until("lists that look like fields", LOOKS).await;
    journey.screenshot("container").await;
}

#[tokio::test]
async fn number_and_unit_stand_side_by_side_on_a_small_phone() {
    let journey = Journey::start("picked_narrow").await;
    journey.open().await;
    journey.click(By::Text("Look around in Marrowgate Juice Hall")).await;
    journey.wait_for_text("Orchard Green").await;
    let beside = "return [...document.querySelectorAll('.entry-picker')].every((unit) => {
        const number = unit.closest('.entry-box').querySelector('input').getBoundingClientRect();
        const { left, top, width, height } = unit.getBoundingClientRect();
        return width === 0 || (left >= number.right && Math.abs(top + height / 2 - number.top - number.height / 2) < 1
            && number.width >= 60 && number.height >= 44 && (unit.tagName !== 'SELECT' || (width >= 44 && height >= 44)));
    })";
    for width in [320, 360] {
        journey.resize(width, 740).await;
        for (address, name) in [
            ("#/buying/ingredient/1", "pack"),
            ("#/drinks/1", "line"),
            ("#/buying/container/3", "container"),
            ("#/counter/on-hand", "on_hand"),
            ("#/sizes/drink/1", "what_if"),
        ] {
            journey.go(address).await;
            journey
                .wait_until("a unit beside a number", "return document.querySelector('.entry-picker') !== null")
                .await;
            journey.wait_until(&format!("{address}: number and unit side by side"), beside).await;
            assert_eq!(journey.faults_of_layout(&[""]).await, Vec::<String>::new(), "{address} at {width}");
            journey.screenshot(&format!("{name}_{width}")).await;
        }
    }
}
