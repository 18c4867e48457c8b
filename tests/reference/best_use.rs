//! Integer programs too large to try every choice, against another library's answers.

use brimwright::counter::on_hand::integer_program::{Constraint, IntegerProgram};
use brimwright::foundation::statistics::LinearProgram;

use crate::csv::{Row, rows};

/// More nodes than any of them takes.
const NODE_LIMIT: u32 = 200_000;

fn numbers(text: &str) -> Vec<i128> {
    text.split(' ').map(|number| number.parse().expect("a whole number")).collect()
}

fn program(row: &Row) -> IntegerProgram {
    let constraint = |text: &str| {
        let (coefficients, limit) = text.split_once(" <= ").expect("a constraint");
        Constraint { coefficients: numbers(coefficients), limit: limit.parse().expect("a whole number") }
    };
    IntegerProgram {
        objective: numbers(&row["values"]),
        upper: numbers(&row["most"]),
        constraints: row["rows"].split(';').map(constraint).collect(),
    }
}

fn dot(one: &[i128], other: &[i128]) -> i128 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

#[test]
fn whole_numbers_bring_what_the_library_finds() {
    let rows = rows(include_str!("data/best_use.csv"));
    assert_eq!(rows.len(), 20);
    for row in &rows {
        let program = program(row);
        let solution = program.solve(NODE_LIMIT).expect("small numbers");
        assert!(solution.proved, "{row:?}");
        assert_eq!(dot(&program.objective, &solution.units).to_string(), row["best"], "{row:?}");
        assert!(solution.units.iter().zip(&program.upper).all(|(units, upper)| (0..=*upper).contains(units)));
        assert!(program.constraints.iter().all(|it| dot(&it.coefficients, &solution.units) <= it.limit));
    }
}

#[test]
fn parts_bring_what_the_library_finds() {
    for row in rows(include_str!("data/best_use.csv")) {
        let program = program(&row);
        let binary = |numbers: &[i128]| numbers.iter().map(|number| *number as f64).collect::<Vec<f64>>();
        let constraints = program.constraints.iter().map(|it| (binary(&it.coefficients), it.limit as f64)).collect();
        let relaxed =
            LinearProgram { objective: binary(&program.objective), upper: binary(&program.upper), constraints };
        let solution = relaxed.solve().expect("finite numbers");
        let value: f64 = solution.values.iter().zip(&relaxed.objective).map(|(units, value)| units * value).sum();
        let recorded: f64 = row["relaxed"].parse().expect("a number");
        assert!((value - recorded).abs() < 1e-5, "{value}, not {recorded}");
    }
}
