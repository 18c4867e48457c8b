//! The unit beside a number: a number alone takes it, a unit that is typed moves it, picking
//! another keeps the number. What is typed is kept as it was typed. From an empty book; everything
//! is invented, every figure worked out by hand.

use fantoccini::key::Key;

use brimwright::say;

use crate::entering;
use crate::harness::{By, Engine, Journey, in_each_engine};

in_each_engine!(a_number_takes_the_unit_beside_it);
in_each_engine!(an_empty_field_begins_with_the_unit_of_the_book);
in_each_engine!(a_unit_that_is_refused_is_none_for_the_next_number);
in_each_engine!(lists_look_like_the_fields_beside_them);

/// The label of the unit beside a field.
fn unit_of(field: &str) -> String {
    say!(book::unit_of_field, field = field)
}

/// Goes into a field, types, and leaves it by Tab.
async fn typed(journey: &Journey, field: By<'_>, text: &str) {
    journey.click(field).await;
    journey.type_on(text).await;
    journey.type_on_key(Key::Tab).await;
}

async fn a_number_takes_the_unit_beside_it(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked").await;
    let unit_label = unit_of(say!(goods::pack_size));
    let (size, unit) = (By::Label(say!(goods::pack_size)), By::Label(&unit_label));
    let figures = say!(common::cost);
    let per_pound = say!(goods::per_as_purchased, amount = "lb");
    entering::ingredient(&journey, "Plums", "10", "20").await;
    // A US book: a bare weight of a pack is pounds.
    journey.expect_value(unit, "lb").await;
    journey.expect_value(size, "10 lb").await;
    journey.expect_figures(figures, &[(&per_pound, "$2.000")]).await;

    // Picking ounces keeps the number: 20 / 10 oz is 32.00 a lb; Undo takes it back.
    journey.choose(unit, "oz").await;
    journey.expect_value(size, "10 oz").await;
    journey.expect_figures(figures, &[(&per_pound, "$32.000")]).await;
    journey.click(By::Label(&say!(book::keep_value, value = "10 oz"))).await;
    journey.click(By::Text(say!(first::undo))).await;
    journey.expect_value(size, "10 lb").await;

    // A unit that is typed moves the picker, and a number alone stays in it.
    typed(&journey, size, "3 lb 4 oz").await;
    journey.expect_value(size, "3.25 lb").await;
    journey.click(size).await;
    journey.type_on("6 oz").await;
    journey.expect_value(unit, "oz").await;
    journey.type_on_key(Key::Tab).await;
    journey.expect_value(size, "6 oz").await;
    typed(&journey, size, "8").await;
    journey.expect_value(size, "8 oz").await;
    typed(&journey, size, "50#").await;
    journey.expect_value(size, "50 lb").await;
    // What cannot be read stays, with its sentence, and the unit with the value in force.
    journey.click(size).await;
    journey.type_on("50 lb50").await;
    let unread = say!(book::not_one_amount, text = "50 lb50", example = "12 lb");
    journey.expect_sentence(size, &unread).await;
    journey.expect_value(unit, "lb").await;
    journey.type_on_key(Key::Escape).await;
    journey.expect_value(size, "50 lb").await;

    // The units of the book stand first; every other is there too.
    let options = "return [...document.querySelector('select.entry-picker').options].slice(0, 5).map((it) => it.text)
        .join() === 'oz,lb,fl oz,tsp,tbsp'";
    journey.wait_until("the units of a US book", options).await;
    let all = "return document.querySelector('select.entry-picker').options.length === 21";
    journey.wait_until("all units", all).await;
}

async fn an_empty_field_begins_with_the_unit_of_the_book(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked_empty").await;
    entering::book_part(&journey, say!(first::counter)).await;
    let unit_label = unit_of(say!(book::scale_rounds_to));
    let (step, unit) = (By::Label(say!(book::scale_rounds_to)), By::Label(&unit_label));
    journey.expect_value(unit, "oz").await;
    journey.choose(unit, "g").await;
    typed(&journey, step, "5").await;
    journey.expect_value(step, "5 g").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    entering::drink(&journey, "Plum Shade", say!(first::type_over_ice), "16").await;
    // A weight in a field that takes volumes first stays a weight.
    entering::line(&journey, "Plums", "8").await;
    let label = say!(drinks::amount_of, name = "Plums");
    let unit_label = unit_of(&label);
    let (amount, unit) = (By::Label(&label), By::Label(&unit_label));
    journey.expect_value(amount, "8 fl oz").await;
    journey.choose(unit, "oz").await;
    journey.expect_value(amount, "8 oz").await;
    typed(&journey, amount, "6").await;
    journey.expect_value(amount, "6 oz").await;
    journey.expect_value(unit, "oz").await;
    // In such a field an ounce that is typed is a fluid one, also before the line is in the book.
    journey.choose(By::Label(say!(drinks::add_ingredient)), say!(drinks::new_ingredient)).await;
    let unit_label = unit_of(say!(drinks::amount_of_new));
    let (amount, unit) = (By::Label(say!(drinks::amount_of_new)), By::Label(&unit_label));
    typed(&journey, amount, "6 oz").await;
    journey.expect_value(unit, "fl oz").await;
    journey.expect_value(amount, "6 fl oz").await;
    typed(&journey, By::Label(say!(drinks::name_of_new)), "Pears").await;
    journey.expect_count(".needs", 0).await;
    journey.expect_value(amount, "6 fl oz").await;
    // Keypads: digits where the unit stands beside them, letters where fractions are typed.
    entering::container(&journey, "Large cup", "16", "1").await;
    let keyboard = async |label: &str, keyboard: &str| {
        let script = format!(
            "return [...document.querySelectorAll('input')]
                 .find((it) => it.labels?.[0]?.innerText === {label:?}).inputMode === '{keyboard}'"
        );
        journey.wait_until(&format!("the keyboard of {label:?}"), &script).await;
    };
    keyboard(say!(goods::brimful_capacity), "decimal").await;
    keyboard(say!(labels::menu_name), "text").await;
    journey.choose(By::Label(say!(goods::how_measured)), say!(drinks::by_measures)).await;
    keyboard(say!(goods::base_width), "text").await;
    journey.choose(By::Label(&unit_of(say!(goods::base_width))), "mm").await;
    keyboard(say!(goods::base_width), "decimal").await;
}

async fn a_unit_that_is_refused_is_none_for_the_next_number(engine: Engine) {
    let journey = entering::empty_book_in(engine, "picked_refused").await;
    entering::ingredient(&journey, "Plums", "10", "20").await;
    entering::drink(&journey, "Plum Shade", say!(first::type_over_ice), "16").await;
    entering::line(&journey, "Plums", "16").await;
    entering::unfold(&journey, say!(drinks::try_a_size)).await;
    let unit_label = unit_of(say!(drinks::try_a_size));
    let (size, unit) = (By::Label(say!(drinks::try_a_size)), By::Label(&unit_label));
    typed(&journey, size, "1 ea").await;
    let (is, needed) = (say!(book::unit_of_count, unit = "ea"), say!(book::type_a_volume, example = "12 fl oz"));
    journey.expect_error(size, &[is, needed].join(" ")).await;
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
    const lists = [...document.querySelectorAll(':is(.section, .fold) select')];
    const fields = [...document.querySelectorAll(':is(.section, .fold) input[type=text]')];
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
    journey.click(By::Text(say!(first::look_around))).await;
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
