//! The solver of recipes in steps against a search through all numbers of steps, in whole numbers.
//!
//! The rule: a line in steps takes k times its amount, to the nearest whole number of steps, half
//! a step upwards. Where no k fills the size, the steps of the jump that goes past it are taken if the recipe
//! without rounding stands beyond that jump, in the order of the lines, as long as they fit; lines in proportion
//! take up the rest. The search knows nothing of how the solver finds k.

use brimwright::book::{Book, Drink, Ingredient, Line, Record, Scaling};
use brimwright::drink::fill::{ScaleError, Scaled, scale};
use brimwright::foundation::measure::{Exact, Share, Volume};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;

use crate::cases::cases;
use crate::near;
use crate::support::{amount, book, drink, drink_id, grams, ingredient, line, settings, share};

/// A line in steps: what the recipe says and one step, in millilitres, typed in millilitres or in
/// pieces of 2 mL.
#[derive(Clone, Copy, Debug)]
struct Stepped {
    written: i128,
    step: i128,
    in_pieces: bool,
}

/// A small recipe in whole millilitres, and what the lines that are not fixed must fill.
#[derive(Clone, Debug)]
struct Recipe {
    fixed: i128,
    in_proportion: i128,
    top_up: i128,
    stepped: Vec<Stepped>,
    left: i128,
    /// Whether a quarter more of everything is air.
    airy: bool,
}

/// A size missed: how much is missing, or too much, as a fraction.
type Fraction = (i128, i128);

#[derive(Debug)]
enum Found {
    /// So many steps of each line, and the top-up as a fraction of a millilitre.
    Steps(Vec<i128>, Fraction),
    BetweenSteps {
        short: Fraction,
        over: Fraction,
    },
}

impl Recipe {
    fn space(&self, steps: &[i128]) -> i128 {
        self.stepped.iter().zip(steps).map(|(line, steps)| line.step * steps).sum()
    }

    /// Whether these are the nearest steps to `numerator / denominator` times the recipe.
    fn follows(&self, steps: &[i128], (numerator, denominator): Fraction) -> bool {
        self.stepped.iter().zip(steps).all(|(line, steps)| {
            // steps - 1/2 <= k * written / step < steps + 1/2
            let twice = 2 * numerator * line.written;
            let unit = line.step * denominator;
            (2 * steps - 1) * unit <= twice && twice < (2 * steps + 1) * unit
        })
    }

    /// Every vector of steps that is not too much by itself.
    fn all_steps(&self) -> Vec<Vec<i128>> {
        let mut all = vec![Vec::new()];
        for line in &self.stepped {
            let taller = |steps: &Vec<i128>| {
                let room = self.left - self.space(steps);
                let (steps, most) = (steps.clone(), room / line.step);
                (0..=most).map(move |more| steps.iter().copied().chain([more]).collect::<Vec<_>>())
            };
            all = all.iter().flat_map(taller).collect();
        }
        all
    }

    /// The factors at which a line takes a step more, up to a step beyond what fits.
    fn jumps(&self) -> Vec<Fraction> {
        let of_line = |line: &Stepped| {
            let (written, step) = (line.written, line.step);
            (0..=self.left / step + 1).map(move |steps| ((2 * steps + 1) * step, 2 * written))
        };
        self.stepped.iter().flat_map(of_line).collect()
    }

    fn search(&self) -> Found {
        if self.top_up > 0 {
            return self.search_with_top_up();
        }
        let fits = |steps: &Vec<i128>| {
            let rest = self.left - self.space(steps);
            if self.in_proportion > 0 {
                return self.follows(steps, (rest, self.in_proportion));
            }
            // Any factor will do: the steps change at the jumps, half a step upwards, so try
            // each of them, and none of the recipe.
            rest == 0 && self.jumps().into_iter().chain([(0, 1)]).any(|factor| self.follows(steps, factor))
        };
        match self.all_steps().into_iter().filter(fits).collect::<Vec<_>>().as_slice() {
            [] => self.gap(),
            [steps] => Found::Steps(steps.clone(), (0, 1)),
            several => panic!("{several:?} all fill {self:?}"),
        }
    }

    /// The steps of each line just before a factor, and from there on.
    fn around(&self, (numerator, denominator): Fraction) -> [Vec<i128>; 2] {
        [false, true].map(|upwards| {
            let steps = |line: &Stepped| {
                let (twice, unit) = (2 * numerator * line.written, line.step * denominator);
                if upwards { (twice + unit).div_euclid(2 * unit) } else { -(unit - twice).div_euclid(2 * unit) }
            };
            self.stepped.iter().map(steps).collect()
        })
    }

    /// The factor if steps need not be whole.
    fn unrounded(&self) -> Fraction {
        let written: i128 = self.stepped.iter().map(|line| line.written).sum();
        (self.left, self.in_proportion + self.top_up + written)
    }

    /// The jump that goes past what must be filled.
    fn gap(&self) -> Found {
        for (numerator, denominator) in self.jumps() {
            let [before, after] = self.around((numerator, denominator));
            let filled = |steps: &[i128]| self.space(steps) * denominator + self.in_proportion * numerator;
            let left = self.left * denominator;
            if filled(&before) > left || left >= filled(&after) {
                continue;
            }
            if self.in_proportion == 0 {
                let (short, over) = (left - filled(&before), filled(&after) - left);
                return Found::BetweenSteps { short: (short, denominator), over: (over, denominator) };
            }
            let (of_all, all) = self.unrounded();
            let is_beyond = of_all * denominator >= numerator * all;
            let steps = if is_beyond { self.as_fit(before, &after, (self.left, 1)) } else { before };
            return Found::Steps(steps, (0, 1));
        }
        panic!("no jump goes past {self:?}")
    }

    /// The steps of a jump, line after line up to the first that does not fit.
    fn as_fit(&self, before: Vec<i128>, after: &[i128], (room, denominator): Fraction) -> Vec<i128> {
        let mut steps = before;
        for place in 0..steps.len() {
            let mut then = steps.clone();
            then[place] = after[place];
            if self.space(&then) * denominator > room {
                break;
            }
            steps = then;
        }
        steps
    }

    /// With a top-up: every step up to the unrounded factor, one jump after another as long as they fit.
    fn search_with_top_up(&self) -> Found {
        let (numerator, denominator) = self.unrounded();
        let room = self.left * denominator - self.in_proportion * numerator;
        let mut jumps = self.jumps();
        jumps.retain(|(of, all)| of * denominator <= numerator * all);
        jumps.sort_by(|(a, b), (c, d)| (a * d).cmp(&(c * b)));
        let mut steps = vec![0; self.stepped.len()];
        for jump in jumps {
            let [_, after] = self.around(jump);
            steps = self.as_fit(steps, &after, (room, denominator));
            if steps != after {
                break;
            }
        }
        Found::Steps(steps.clone(), (room - self.space(&steps) * denominator, denominator))
    }

    /// One fixed line and one in proportion where there is some of it, the lines in steps, the
    /// top-up.
    fn drink(&self) -> Drink {
        let millilitres = |number: i128| format!("{number} mL");
        let mut lines = vec![];
        if self.fixed > 0 {
            lines.push(Line { scaling: Scaling::Fixed, ..line(1, 1, &millilitres(self.fixed)) });
        }
        if self.in_proportion > 0 {
            lines.push(line(2, 1, &millilitres(self.in_proportion)));
        }
        for (id, stepped) in (3..).zip(&self.stepped) {
            let typed = |number: i128| {
                if stepped.in_pieces { format!("{}.{} ea", number / 2, 5 * (number % 2)) } else { millilitres(number) }
            };
            let scaling = Scaling::Stepped(amount(&typed(stepped.step)));
            lines.push(Line { scaling, ..line(id, 1, &typed(stepped.written)) });
        }
        if self.top_up > 0 {
            lines.push(Line { scaling: Scaling::TopUp, ..line(9, 1, &millilitres(self.top_up)) });
        }
        let air = if self.airy { share("0.25") } else { Share::ZERO };
        Drink { air, ..drink(1, "500 mL", lines) }
    }

    /// Millilitres of the glass, with their air.
    fn in_glass(&self, (numerator, denominator): Fraction) -> Exact {
        let whole = |number: i128| Exact::new(i64::try_from(number).unwrap(), 0);
        let with_air = if self.airy { Exact::new(125, 2) } else { Exact::ONE };
        whole(numerator).times(with_air).unwrap().over(whole(denominator)).unwrap()
    }

    fn solved(&self) -> Result<Scaled, ScaleError> {
        let two_each = Ingredient { piece_weight: Some(grams("2")), ..ingredient(1, []) };
        let drink = self.drink();
        let book: Book = book(settings(), [Record::Ingredient(two_each), Record::Drink(drink.clone())]);
        scale(&book, &drink, Volume::from_millilitres(self.in_glass((self.fixed + self.left, 1))))
    }
}

fn recipe(top_up: impl Strategy<Value = i128>) -> impl Strategy<Value = Recipe> {
    let stepped = (1..=30_i128, 2..=30_i128, any::<bool>()).prop_map(|(written, step, in_pieces)| Stepped {
        written,
        step,
        in_pieces,
    });
    let in_proportion = option::weighted(0.8, 1..=30_i128).prop_map(Option::unwrap_or_default);
    (0..=20_i128, in_proportion, top_up, vec(stepped, 1..=3), 1..=80_i128, any::<bool>()).prop_map(
        |(fixed, in_proportion, top_up, stepped, left, airy)| Recipe {
            fixed,
            in_proportion,
            top_up,
            stepped,
            left,
            airy,
        },
    )
}

fn solver_agrees(recipe: &Recipe) -> Result<(), TestCaseError> {
    let near = |volume: Volume, fraction| near(volume.millilitres(), recipe.in_glass(fraction), "0.000000001");
    match (recipe.search(), recipe.solved()) {
        (Found::Steps(steps, top_up), Ok(scaled)) => {
            let stepped = scaled.lines.iter().filter(|line| matches!(line.scaling, Scaling::Stepped(_)));
            for ((line, written), steps) in stepped.zip(&recipe.stepped).zip(steps) {
                let taken = recipe.in_glass((written.step * steps, 1));
                let whole = if recipe.airy { Exact::new(125, 2) } else { Exact::ONE };
                prop_assert_eq!(
                    line.volume.millilitres().times(whole).unwrap(),
                    taken,
                    "{} steps in {:?}",
                    steps,
                    scaled
                );
            }
            let sum = scaled.lines.iter().map(|line| line.volume).try_fold(scaled.air, Volume::plus).unwrap();
            prop_assert!(near(sum, (recipe.fixed + recipe.left, 1)), "{:?} fills {:?}", scaled, sum);
            if let Some(line) = scaled.lines.iter().find(|line| line.scaling == Scaling::TopUp) {
                let with_air = line.volume.times(recipe.in_glass((1, 1))).unwrap();
                prop_assert!(near(with_air, top_up), "{:?}", scaled);
            }
        }
        (Found::BetweenSteps { short, over }, Err(ScaleError::BetweenSteps { drink, short: less, over: more })) => {
            prop_assert_eq!(drink, drink_id(1));
            prop_assert!(near(less, short) && near(more, over), "{:?} {:?} for {:?} {:?}", less, more, short, over);
        }
        (found, solved) => return Err(TestCaseError::fail(format!("{found:?} by search, {solved:?} by the solver"))),
    }
    Ok(())
}

/// The steps taken of each line; none where the size cannot be made.
fn taken(recipe: &Recipe, left: i128) -> Option<Vec<Exact>> {
    let scaled = Recipe { left, ..recipe.clone() }.solved().ok()?;
    let stepped = scaled.lines.iter().filter(|line| matches!(line.scaling, Scaling::Stepped(_)));
    Some(stepped.map(|line| line.in_drink.base()).collect())
}

/// Every whole ounce from 8 to 64 of milk in proportion and a banana in halves: 57 sizes, each of which a step
/// of half a banana alone would miss. The amounts are invented; a piece weighs 118 g (USDA SR28, medium, without
/// peel).
#[test]
fn all_sizes_of_a_smoothie_with_half_bananas_are_made() {
    for banana in ["0.5 ea", "1 ea", "1.5 ea", "2 ea"] {
        let halves = Line { scaling: Scaling::Stepped(amount("0.5 ea")), ..line(2, 2, banana) };
        let smoothie = drink(1, "16 fl oz", [line(1, 1, "12 fl oz"), halves]);
        let bananas = Ingredient { piece_weight: Some(grams("118")), ..ingredient(2, []) };
        let book = book(settings(), [Record::Ingredient(ingredient(1, [])), Record::Ingredient(bananas)]);
        let mut before = Exact::ZERO;
        for ounces in 8..=64_u32 {
            let size = amount(&format!("{ounces} fl oz")).volume().unwrap().unwrap();
            let scaled = scale(&book, &smoothie, size).unwrap_or_else(|error| panic!("{ounces} oz: {error:?}"));
            let sum = scaled.lines.iter().map(|line| line.volume).try_fold(Volume::ZERO, Volume::plus).unwrap();
            assert!(near(sum.millilitres(), size.millilitres(), "0.000000001"), "{ounces} oz: {sum:?}");
            let pieces = scaled.lines[1].in_drink.base();
            let halves = pieces.times(Exact::from(2_u32)).unwrap();
            assert_eq!(halves, halves.rounded(0), "{ounces} oz");
            assert!(pieces >= before && scaled.lines[0].volume.is_positive(), "{ounces} oz: {scaled:?}");
            // The nearest half to the recipe without rounding.
            let wanted = amount(banana).measure().unwrap().times(scaled.unrounded).unwrap().base();
            assert!(wanted.minus(pieces).unwrap().abs() <= Exact::new(25, 2), "{ounces} oz: {pieces} for {wanted}");
            before = pieces;
        }
    }
}

proptest! {
    #![proptest_config(cases(2000))]

    /// Also where another line tops up, and where several lines jump at once.
    #[test]
    fn a_larger_fill_never_takes_fewer_steps(recipe in recipe(prop_oneof![Just(0), 1..=30_i128]), more in 1..=30_i128) {
        let (Some(small), Some(large)) = (taken(&recipe, recipe.left), taken(&recipe, recipe.left + more)) else {
            return Ok(());
        };
        for (small, large) in small.iter().zip(&large) {
            prop_assert!(small <= large, "{:?} to {} mL more", recipe, more);
        }
    }

    #[test]
    fn only_steps_alone_can_miss_a_size(recipe in recipe(prop_oneof![Just(0), 1..=30_i128])) {
        prop_assume!(recipe.in_proportion > 0 || recipe.top_up > 0);
        prop_assert!(recipe.solved().is_ok(), "{:?}", recipe.solved());
    }

    #[test]
    fn steps_are_found_if_there_are_any(recipe in recipe(Just(0))) {
        solver_agrees(&recipe)?;
    }

    #[test]
    fn a_top_up_takes_what_the_nearest_steps_leave(recipe in recipe(1..=30_i128)) {
        solver_agrees(&recipe)?;
    }
}
