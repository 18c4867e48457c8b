//! The solver of recipes in steps against a search through all numbers of steps, in whole numbers.
//!
//! The rule: a line in steps takes k times its amount, to the nearest whole number of steps, half
//! a step upwards. The search knows nothing of how the solver finds k.

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
    TopUpNegative(Fraction),
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

    /// The jump that goes past what must be filled.
    fn gap(&self) -> Found {
        let mut gaps = self.jumps().into_iter().filter_map(|(numerator, denominator)| {
            let steps = |line: &Stepped, upwards: bool| {
                let (twice, unit) = (2 * numerator * line.written, line.step * denominator);
                if upwards { (twice + unit).div_euclid(2 * unit) } else { -(unit - twice).div_euclid(2 * unit) }
            };
            let filled = |upwards: bool| {
                let in_steps: i128 = self.stepped.iter().map(|line| line.step * steps(line, upwards)).sum();
                in_steps * denominator + self.in_proportion * numerator
            };
            let (before, after, left) = (filled(false), filled(true), self.left * denominator);
            (before <= left && left < after).then_some(Found::BetweenSteps {
                short: (left - before, denominator),
                over: (after - left, denominator),
            })
        });
        gaps.next().unwrap_or_else(|| panic!("no jump goes past {self:?}"))
    }

    fn search_with_top_up(&self) -> Found {
        let written: i128 = self.stepped.iter().map(|line| line.written).sum();
        let factor = (self.left, self.in_proportion + self.top_up + written);
        let (numerator, denominator) = factor;
        // More steps than fit are steps all the same.
        let most = |line: &Stepped| numerator * line.written / (denominator * line.step) + 1;
        let nearest = |line: &Stepped| {
            let mut steps = (0..=most(line))
                .filter(|steps| Recipe { stepped: vec![*line], ..self.clone() }.follows(&[*steps], factor));
            steps.next().unwrap_or_else(|| panic!("no steps for {line:?}"))
        };
        let steps: Vec<i128> = self.stepped.iter().map(nearest).collect();
        let rest = (self.left - self.space(&steps)) * denominator - self.in_proportion * numerator;
        if rest < 0 { Found::TopUpNegative((-rest, denominator)) } else { Found::Steps(steps, (rest, denominator)) }
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
            if let Some(line) = scaled.lines.iter().find(|line| line.scaling == Scaling::TopUp) {
                let with_air = line.volume.times(recipe.in_glass((1, 1))).unwrap();
                prop_assert!(near(with_air, top_up), "{:?}", scaled);
            }
        }
        (Found::BetweenSteps { short, over }, Err(ScaleError::BetweenSteps { drink, short: less, over: more })) => {
            prop_assert_eq!(drink, drink_id(1));
            prop_assert!(near(less, short) && near(more, over), "{:?} {:?} for {:?} {:?}", less, more, short, over);
        }
        (Found::TopUpNegative(over), Err(ScaleError::TopUpNegative { drink, over: more })) => {
            prop_assert_eq!(drink, drink_id(1));
            prop_assert!(near(more, over), "{:?} for {:?}", more, over);
        }
        (found, solved) => return Err(TestCaseError::fail(format!("{found:?} by search, {solved:?} by the solver"))),
    }
    Ok(())
}

proptest! {
    #![proptest_config(cases(2000))]

    #[test]
    fn steps_are_found_if_there_are_any(recipe in recipe(Just(0))) {
        solver_agrees(&recipe)?;
    }

    #[test]
    fn a_top_up_takes_what_the_nearest_steps_leave(recipe in recipe(1..=30_i128)) {
        solver_agrees(&recipe)?;
    }
}
