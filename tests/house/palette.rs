//! The colours of what is drawn part by part.

use brimwright::book::Part;

#[test]
fn each_part_of_a_cost_has_its_colour() {
    let palette = include_str!("../../style/palette.css");
    for place in 0..Part::ALL.len() {
        let colours = palette.matches(&format!("--part-{place}: #")).count();
        assert_eq!(colours, 2, "part {place} needs a light and a dark colour in style/palette.css");
        assert!(palette.contains(&format!(".part-{place}")), "part {place} needs its class in style/palette.css");
    }
}

#[test]
fn each_layer_of_a_glass_has_its_colour() {
    let palette = include_str!("../../style/palette.css");
    let glass = include_str!("../../src/ui/glass.rs");
    let (_, colours) = glass.split_once("const COLOURS: usize = ").expect("how many colours there are");
    let (colours, _) = colours.split_once(';').expect("a number");
    // The first is the colour of what is poured as one.
    for place in 1..colours.parse().expect("a number") {
        assert!(palette.contains(&format!(".layer-{place} {{")), "layer {place} needs its class in style/palette.css");
    }
}
