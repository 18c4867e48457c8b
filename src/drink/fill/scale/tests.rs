use super::*;
use crate::book::{IcePlace, Ingredient, Line, Record};
use crate::support::{
    amount, book, density, drink, drink_id, exact, grams, ingredient, ingredient_id, line, measure, millilitres,
    settings, share,
};

/// The recipe scaled to a volume; its ingredients are 1 (as water) and 2 (0.8 g/mL).
fn scaled(drink: Drink, volume: &str) -> Result<Scaled, ScaleError> {
    let light = Ingredient { density: Some(density("0.8")), ..ingredient(2, []) };
    let records = [Record::Ingredient(ingredient(1, [])), Record::Ingredient(light), Record::Drink(drink.clone())];
    scale(&book(settings(), records), &drink, millilitres(volume))
}

fn fixed(id: u64, ingredient: u64, takes: &str) -> Line {
    Line { scaling: Scaling::Fixed, ..line(id, ingredient, takes) }
}

#[test]
fn lines_in_proportion_take_what_fixed_ones_leave() {
    // 40 g at 0.8 g/mL take 50 mL; of 450 mL the other 400 are twice the 200 written.
    let scaled = scaled(drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]), "450").unwrap();
    assert_eq!((scaled.factor, scaled.fixed), (exact("2"), millilitres("50")));
    let amounts: Vec<_> = scaled.lines.iter().map(|line| (line.in_drink, line.to_use, line.volume)).collect();
    let (base, dressing) = (measure("400 mL"), measure("40 g"));
    assert_eq!(amounts, [(base, base, millilitres("400")), (dressing, dressing, millilitres("50"))]);
}

fn stepped(id: u64, ingredient: u64, takes: &str, step: &str) -> Line {
    Line { scaling: Scaling::Stepped(amount(step)), ..line(id, ingredient, takes) }
}

fn in_drink(scaled: &Scaled) -> Vec<Measure> {
    scaled.lines.iter().map(|line| line.in_drink).collect()
}

#[test]
fn steps_are_whole_and_the_rest_follows() {
    // At 1.5 times the recipe, 60 mL would be 90: the nearest step of 40 is 80. The other
    // line then takes 450 - 80 = 370, 1.5416.. times its 240, at which 60 mL would be 92.5.
    let recipe = drink(1, "300 mL", [line(1, 1, "240 mL"), stepped(2, 1, "60 mL", "40 mL")]);
    let scaled = scaled(recipe, "450").unwrap();
    assert_eq!(in_drink(&scaled)[1], measure("80 mL"));
    assert_eq!(scaled.lines[0].volume.as_part(), millilitres("370"));
}

#[test]
fn half_a_step_is_taken_upwards() {
    // 50 mL at 1.2 times are 60, half way between one step of 40 and two.
    let recipe = drink(1, "1 L", [line(1, 1, "100 mL"), stepped(2, 1, "50 mL", "40 mL")]);
    let two = scaled(recipe.clone(), "200").unwrap();
    assert_eq!((two.factor, in_drink(&two)[1]), (exact("1.2"), measure("80 mL")));
    // Just under it one step is taken: 119.999 + 40.
    let one = scaled(recipe.clone(), "159.999").unwrap();
    assert_eq!(in_drink(&one)[1], measure("40 mL"));
    assert_eq!(one.takes_up().map(|line| line.line.number()).collect::<Vec<_>>(), [1]);
    // Between the two, 180 mL are 1.2 times the written 150: two steps leave 100 mL for the other line.
    let between = scaled(recipe.clone(), "180").unwrap();
    assert_eq!(in_drink(&between), [measure("100 mL"), measure("80 mL")]);
    // A little less is nearer to one step, and the other line takes 139.999.
    assert_eq!(in_drink(&scaled(recipe.clone(), "179.999").unwrap()), [measure("139.999 mL"), measure("40 mL")]);
    // Where nothing is rounded, nothing is taken up: 120 mL are 0.8 times the recipe, and 0.8 * 50 = 40.
    assert_eq!(scaled(recipe, "120").unwrap().takes_up().count(), 0);
}

#[test]
fn steps_that_do_not_fit_are_left_out() {
    // 66 mL are 0.6 times 110: 60 of 100 mL are nearest to one step of 100, which does not fit.
    let recipe = drink(1, "1 L", [line(1, 1, "10 mL"), stepped(2, 1, "100 mL", "100 mL")]);
    assert_eq!(in_drink(&scaled(recipe.clone(), "66").unwrap()), [measure("66 mL"), measure("0 mL")]);
    // From 100 mL on it does: 99.999, and 100 with nothing of the other line.
    assert_eq!(in_drink(&scaled(recipe.clone(), "99.999").unwrap())[1], measure("0 mL"));
    assert_eq!(in_drink(&scaled(recipe, "100").unwrap()), [measure("0 mL"), measure("100 mL")]);
    // Two lines half way to a step of 60 mL each, of which one fits: the one that is written first.
    let lines = [line(1, 1, "10 mL"), stepped(2, 1, "30 mL", "60 mL"), stepped(3, 1, "30 mL", "60 mL")];
    let both = scaled(drink(1, "1 L", lines), "70").unwrap();
    assert_eq!(in_drink(&both), [measure("10 mL"), measure("60 mL"), measure("0 mL")]);
}

#[test]
fn half_a_step_is_half_a_step_whatever_the_factor() {
    // 36 mL are 6/13 of the written 78: of 26 mL 12, a step and a half of 8, so two. The
    // other line takes 60/13 mL. In decimals 6/13 has no end.
    let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "42 mL") };
    let recipe = drink(1, "78 mL", [top_up, line(2, 1, "10 mL"), stepped(3, 1, "26 mL", "8 mL")]);
    assert_eq!(in_drink(&scaled(recipe, "36").unwrap())[2], measure("16 mL"));
    // Without a top-up: 15 mL are a step of 10 and 1/14 of 70, and 1/14 of the other 70 is half
    // a step.
    let recipe = drink(1, "77 mL", [line(1, 1, "70 mL"), stepped(2, 1, "70 mL", "10 mL")]);
    assert_eq!(in_drink(&scaled(recipe, "15").unwrap())[1], measure("10 mL"));
}

#[test]
fn a_top_up_takes_what_steps_leave() {
    // 180 mL are 1.2 times the written 150: 60 mL are a step and a half, so two; the top-up
    // has 100 mL left where it would have had 120.
    let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "100 mL") };
    let recipe = drink(1, "1 L", [top_up, stepped(2, 1, "50 mL", "40 mL")]);
    let scaled = scaled(recipe, "180").unwrap();
    assert_eq!(in_drink(&scaled), [measure("100 mL"), measure("80 mL")]);
    assert_eq!(scaled.lines[0].volume, millilitres("100"));
}

#[test]
fn without_steps_a_top_up_follows_in_proportion() {
    let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "100 mL") };
    let scaled = scaled(drink(1, "1 L", [top_up, line(2, 1, "50 mL")]), "300").unwrap();
    assert_eq!(in_drink(&scaled), [measure("200 mL"), measure("100 mL")]);
}

#[test]
fn a_top_up_is_never_less_than_nothing() {
    // 66 mL are 0.6 times 110: 60 mL of 100 round to one step of 100, which does not fit.
    let top_up = Line { scaling: Scaling::TopUp, ..line(1, 1, "10 mL") };
    let recipe = drink(1, "1 L", [top_up, stepped(2, 1, "100 mL", "100 mL")]);
    assert_eq!(in_drink(&scaled(recipe.clone(), "66").unwrap()), [measure("66 mL"), measure("0 mL")]);
    assert_eq!(in_drink(&scaled(recipe, "100").unwrap()), [measure("0 mL"), measure("100 mL")]);
}

#[test]
fn steps_alone_fill_some_sizes_only() {
    let recipe = drink(1, "1 L", [fixed(1, 1, "20 mL"), stepped(2, 1, "50 mL", "25 mL")]);
    assert_eq!(scaled(recipe.clone(), "95").map(|scaled| in_drink(&scaled)[1]), Ok(measure("75 mL")));
    let between = ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("10"), over: millilitres("15") };
    assert_eq!(scaled(recipe, "105"), Err(between));
}

#[test]
fn lines_take_a_step_together() {
    // At the recipe as written each line stands half way: 14, 0 and 2 mL before, 16, 22 and 4
    // from there on. No other line takes what is left.
    let lines = [stepped(1, 1, "15 mL", "2 mL"), stepped(2, 1, "11 mL", "22 mL"), stepped(3, 1, "3 mL", "2 mL")];
    let between = ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("1"), over: millilitres("25") };
    assert_eq!(scaled(drink(1, "1 L", lines), "17"), Err(between));
}

#[test]
fn air_is_beaten_into_what_is_mixed() {
    // 25 % of air: of 500 mL, 100 are air; the rest is twice the 200 written.
    let smoothie = Drink { air: share("0.25"), ..drink(1, "1 L", [line(1, 1, "150 mL"), line(2, 2, "40 g")]) };
    let scaled = scaled(smoothie, "500").unwrap();
    assert_eq!((scaled.factor, scaled.air), (exact("2"), millilitres("100")));
    assert_eq!(in_drink(&scaled), [measure("300 mL"), measure("80 g")]);
}

fn ice(id: u64, takes: &str, place: IcePlace) -> Line {
    let ice = Ice { place, packing: share("0.6"), melted: share("0") };
    Line { ice: Some(ice), scaling: Scaling::Fixed, ..line(id, 1, takes) }
}

#[test]
fn ice_under_the_line_takes_its_own_volume() {
    // 183.4 g at 0.917 g/mL take 200 of 500 mL; air is beaten into the liquid alone.
    let cooler =
        Drink { air: share("0.25"), ..drink(1, "1 L", [line(1, 1, "120 mL"), ice(2, "183.4 g", IcePlace::HeldUnder)]) };
    let scaled = scaled(cooler, "500").unwrap();
    assert_eq!((scaled.air, scaled.lines[1].volume), (millilitres("60"), millilitres("200")));
    assert_eq!(in_drink(&scaled)[0], measure("240 mL"));
}

#[test]
fn blended_ice_takes_air_as_well() {
    let slush =
        Drink { air: share("0.25"), ..drink(1, "1 L", [line(1, 1, "100 mL"), ice(2, "183.4 g", IcePlace::BlendedIn)]) };
    let scaled = scaled(slush, "500").unwrap();
    assert_eq!((scaled.air, in_drink(&scaled)[0]), (millilitres("100"), measure("200 mL")));
}

#[test]
fn floating_ice_takes_the_volume_of_its_mass_in_liquid() {
    // A liquid of 80 g in 100 mL carries 160 g of ice by 200 mL.
    let cooler = drink(1, "1 L", [line(1, 2, "100 mL"), ice(2, "160 g", IcePlace::Floating)]);
    let scaled = scaled(cooler, "500").unwrap();
    assert_eq!(scaled.lines[1].volume, millilitres("200"));
    assert_eq!(in_drink(&scaled)[0], measure("300 mL"));
    let alone = drink(1, "1 L", [ice(2, "160 g", IcePlace::Floating)]);
    assert_eq!(super::tests::scaled(alone, "500"), Err(ScaleError::NothingToFloatIn(drink_id(1))));
}

#[test]
fn ice_floats_in_the_drink_as_it_is_poured() {
    // By hand: 40 g of a liquid of 0.8 g/mL are fixed at 50 mL, water takes the rest. With 150 mL of water the
    // drink is (150 + 40) / 200 = 0.95 g/mL, and 95 g of ice take 100 of the 300 mL. As written it would be
    // (50 + 40) / 100 = 0.9 g/mL, and the ice would take 105.6 mL.
    let cooler = drink(1, "1 L", [line(1, 1, "50 mL"), fixed(2, 2, "40 g"), ice(3, "95 g", IcePlace::Floating)]);
    let scaled = scaled(cooler, "300").unwrap();
    let near = |volume: Volume, text| volume.minus(millilitres(text)).unwrap().millilitres().abs() < exact("0.0000001");
    assert!(near(scaled.lines[0].volume, "150") && near(scaled.lines[2].volume, "100"), "{scaled:?}");
    assert_eq!(scaled.liquid.map(|liquid| liquid.grams_per_millilitre().rounded(9)), Some(exact("0.95")));
    let sum = scaled.lines.iter().try_fold(Volume::ZERO, |sum, line| sum.plus(line.volume)).unwrap();
    assert!(near(sum, "300"));
}

#[test]
fn steps_alone_fill_what_floating_ice_leaves() {
    // By hand: 40 g of ice in a liquid of 0.8 g/mL take 50 mL, and two steps of 50 mL the rest of 150.
    let tea = |size| {
        let lines = [stepped(1, 2, "50 mL", "50 mL"), ice(2, "40 g", IcePlace::Floating)];
        scaled(drink(1, "1 L", lines), size)
    };
    assert_eq!(tea("150").map(|scaled| in_drink(&scaled)[0]), Ok(measure("100 mL")));
    let between = ScaleError::BetweenSteps { drink: drink_id(1), short: millilitres("20"), over: millilitres("30") };
    assert_eq!(tea("170"), Err(between));
    // With 40 g of syrup beside it the density hangs on the size, and no size is filled by luck.
    let lines = [stepped(1, 1, "50 mL", "50 mL"), fixed(3, 2, "40 g"), ice(2, "40 g", IcePlace::Floating)];
    let full = scaled(drink(1, "1 L", lines), "150");
    assert!(matches!(full, Err(ScaleError::BetweenSteps { .. })), "{full:?}");
}

/// Steps of blended ice and of floating ice that stop fitting as the drink becomes lighter: the density is still that
/// of what is poured. A generated recipe for which counting anew four times was not enough.
#[test]
fn steps_that_do_not_fit_are_taken_away_until_the_density_holds() {
    let in_steps = |line: Line, step: &str| Line { scaling: Scaling::Stepped(amount(step)), ..line };
    let packed = |line: Line, packing| Line { ice: line.ice.map(|ice| Ice { packing: share(packing), ..ice }), ..line };
    let lines = [
        line(1, 3, "1582.49 mL"),
        in_steps(packed(ice(2, "53.562 oz", IcePlace::BlendedIn), "0.73"), "5.3562 oz"),
        in_steps(packed(ice(3, "191.372 fl oz", IcePlace::Floating), "0.63"), "19.1372 fl oz"),
    ];
    let syrup = Ingredient { density: Some(density("1.461")), ..ingredient(3, []) };
    let records = [ingredient(1, []), ingredient(2, []), syrup].map(Record::Ingredient);
    let drink = drink(1, "1 L", lines);
    let book = book(settings(), records.into_iter().chain([Record::Drink(drink.clone())]));
    for size in ["516.5", "517", "520", "600", "1033", "1034", "1040.5", "1300"] {
        let scaled = scale(&book, &drink, millilitres(size)).unwrap();
        let [syrup, blended, floating] = scaled.lines.as_slice() else { panic!("{scaled:?}") };
        let mass = syrup.volume.millilitres().times(exact("1.461")).unwrap().plus(blended.in_drink.base()).unwrap();
        let space = syrup.volume.plus(blended.volume).unwrap();
        let off = mass.over(space.millilitres()).unwrap().minus(scaled.liquid.unwrap().grams_per_millilitre());
        assert!(off.unwrap().abs() < exact("0.00000001"), "{size}: {off:?} {scaled:?}");
        assert_eq!(space.plus(floating.volume).unwrap().millilitres().rounded(8), exact(size));
    }
}

#[test]
fn what_goes_into_the_glass_is_liquid_that_ice_floats_in() {
    // By hand: 25 % of air in 100 g of juice, 125 mL; 100 mL of soda on top has none, and nothing of it stays in
    // the jug: 200 g in 225 mL are 8/9 g/mL, and 80 g of ice take 90 mL.
    let soda = Line { in_glass: true, ..line(2, 1, "100 mL") };
    let lines = [line(1, 1, "100 mL"), soda, ice(3, "80 g", IcePlace::Floating)];
    let fizz = Drink { air: share("0.25"), process_loss: share("0.2"), ..drink(1, "1 L", lines) };
    let scaled = scaled(fizz, "315").unwrap();
    assert_eq!((scaled.factor.rounded(9), scaled.lines[2].volume.as_part()), (exact("1"), millilitres("90")));
    let used: Vec<_> = scaled.lines.iter().map(|line| line.to_use.base().rounded(9)).collect();
    assert_eq!(used, [exact("125"), exact("100"), exact("80")]);
    assert_eq!(scaled.air.as_part(), millilitres("25"));
}

#[test]
fn blended_ice_that_melts_takes_the_volume_of_water() {
    // By hand: of 915.3494 g, 10 % melt to 91.53494 g of water, 91.7 mL; the rest is 823.81446 g of ice,
    // 898.38 mL. All of it as ice would take 998.2 mL.
    let melting = |place, melted| {
        let ice = Ice { place, packing: share("0.6"), melted: share(melted) };
        Line { ice: Some(ice), scaling: Scaling::Fixed, ..line(2, 1, "915.3494 g") }
    };
    let taken =
        |line: Line| scaled(drink(1, "1 L", [self::line(1, 1, "100 mL"), line]), "2000").unwrap().lines[1].volume;
    assert_eq!(taken(melting(IcePlace::BlendedIn, "0.1")).as_part(), millilitres("990.08"));
    assert_eq!(taken(melting(IcePlace::BlendedIn, "0")), millilitres("998.2"));
    // Ice in the glass does not melt before the drink is poured.
    assert_eq!(taken(melting(IcePlace::HeldUnder, "0.1")), millilitres("998.2"));
    // Of the same to four digits: Tanaka and others at 20 °C.
    let water = crate::foundation::measure::water_density(exact("20")).unwrap().unwrap();
    assert_eq!(crate::drink::fill::MELTED_DENSITY.grams_per_millilitre(), water.grams_per_millilitre().rounded(4));
}

#[test]
fn a_scoop_of_cubes_is_bought_by_its_mass() {
    // 100 mL of cubes, 60 % of it ice: 60 mL, 55.02 g.
    let cooler = drink(1, "1 L", [line(1, 1, "100 mL"), ice(2, "100 mL", IcePlace::HeldUnder)]);
    let scaled = scaled(cooler, "160").unwrap();
    assert_eq!(scaled.lines[1].volume, millilitres("60"));
    assert_eq!(in_drink(&scaled), [measure("100 mL"), measure("100 mL")]);
    assert_eq!(scaled.lines[1].bought_as(), Ok(measure("55.02 g")));
}

#[test]
fn what_stays_behind_is_used_too() {
    // 20 % stay in the press: 400 mL need 500, and the fixed 40 g need 50.
    let lossy = Drink { process_loss: share("0.2"), ..drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]) };
    let scaled = scaled(lossy, "450").unwrap();
    let used: Vec<_> = scaled.lines.iter().map(|line| line.to_use).collect();
    assert_eq!(used, [measure("500 mL"), measure("50 g")]);
    assert_eq!(scaled.lines[1].in_drink, Measure::Mass(grams("40")));
}

#[test]
fn ice_put_into_the_glass_was_never_in_the_jug() {
    // 20 % stay in the jug: 400 mL need 500; what is blended with it needs more too, the ice in the glass none.
    for (place, used) in
        [(IcePlace::HeldUnder, "91.7 g"), (IcePlace::Floating, "91.7 g"), (IcePlace::BlendedIn, "114.625 g")]
    {
        let lines = [line(1, 1, "200 mL"), ice(2, "91.7 g", place)];
        let scaled = scaled(Drink { process_loss: share("0.2"), ..drink(1, "1 L", lines) }, "500").unwrap();
        assert_eq!(scaled.lines[1].to_use, measure(used), "{place:?}");
    }
}

#[test]
fn fixed_lines_that_do_not_fit_say_by_how_much() {
    let jam = drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]);
    let over = millilitres("0.5");
    assert_eq!(scaled(jam.clone(), "49.5"), Err(ScaleError::FixedLinesOverflow { drink: drink_id(1), over }));
    // Where they fit exactly, nothing of the rest goes in.
    assert_eq!(scaled(jam, "50").map(|scaled| scaled.factor), Ok(Exact::ZERO));
}

#[test]
fn fixed_lines_alone_must_fill_the_size() {
    let shot = drink(1, "50 mL", [fixed(1, 2, "40 g")]);
    let short = millilitres("10");
    assert_eq!(scaled(shot.clone(), "60"), Err(ScaleError::NothingScales { drink: drink_id(1), short }));
    assert_eq!(scaled(shot, "50").map(|scaled| scaled.fixed), Ok(millilitres("50")));
}

#[test]
fn a_recipe_needs_lines_and_what_they_need() {
    assert_eq!(scaled(drink(1, "1 L", []), "50"), Err(ScaleError::NoLines(drink_id(1))));
    let by_the_piece = scaled(drink(1, "1 L", [line(1, 1, "1 ea")]), "50");
    assert_eq!(by_the_piece, Err(ScaleError::Yield(YieldError::NoPieceWeight(ingredient_id(1)))));
    let gone = Drink { lines: vec![line(1, 9, "1 mL")], ..drink(1, "1 L", []) };
    let book = book(settings(), []);
    let missing = Err(ScaleError::Missing(Key::Ingredient(ingredient_id(9))));
    assert_eq!(scale(&book, &gone, millilitres("50")), missing);
    assert_eq!(written_volume(&book, &gone).map(|_| ()), missing.map(|_: Scaled| ()));
}

#[test]
fn the_written_volume_is_that_of_all_lines() {
    let written = drink(1, "1 L", [line(1, 1, "200 mL"), fixed(2, 2, "40 g")]);
    let light = Ingredient { density: Some(density("0.8")), ..ingredient(2, []) };
    let book = book(settings(), [Record::Ingredient(ingredient(1, [])), Record::Ingredient(light)]);
    assert_eq!(written_volume(&book, &written), Ok(millilitres("250")));
}
