//! Programs of whole numbers too large to try every choice, against another library's answers.

use brimwright::counter::on_hand::program::{Program, Scarce};
use brimwright::foundation::statistics::Relaxed;

use crate::csv::{Row, rows};

/// Boxes that each of them takes fewer of.
const BOXES: u32 = 200_000;

fn numbers(text: &str) -> Vec<i128> {
    text.split(' ').map(|number| number.parse().expect("a whole number")).collect()
}

fn program(row: &Row) -> Program {
    let scarce = |text: &str| {
        let (takes, here) = text.split_once(" <= ").expect("a row");
        Scarce { takes: numbers(takes), here: here.parse().expect("a whole number") }
    };
    Program {
        values: numbers(&row["values"]),
        most: numbers(&row["most"]),
        rows: row["rows"].split(';').map(scarce).collect(),
    }
}

fn sum_of_products(one: &[i128], other: &[i128]) -> i128 {
    one.iter().zip(other).map(|(one, other)| one * other).sum()
}

#[test]
fn whole_numbers_bring_what_the_library_finds() {
    let rows = rows(include_str!("data/best_use.csv"));
    assert_eq!(rows.len(), 20);
    for row in &rows {
        let program = program(row);
        let choice = program.solve(BOXES).expect("small numbers");
        assert!(choice.proved, "{} drinks, {} scarce", program.values.len(), program.rows.len());
        assert_eq!(sum_of_products(&program.values, &choice.units).to_string(), row["best"], "{row:?}");
        assert!(choice.units.iter().zip(&program.most).all(|(units, most)| (0..=*most).contains(units)));
        assert!(program.rows.iter().all(|row| sum_of_products(&row.takes, &choice.units) <= row.here));
    }
}

#[test]
fn parts_bring_what_the_library_finds() {
    for row in rows(include_str!("data/best_use.csv")) {
        let program = program(&row);
        let binary = |numbers: &[i128]| numbers.iter().map(|number| *number as f64).collect::<Vec<f64>>();
        let scarce = program.rows.iter().map(|row| (binary(&row.takes), row.here as f64)).collect();
        let relaxed = Relaxed { values: binary(&program.values), most: binary(&program.most), rows: scarce };
        let hints = relaxed.hints().expect("numbers");
        let worth: f64 = hints.units.iter().zip(&relaxed.values).map(|(units, value)| units * value).sum();
        let recorded: f64 = row["relaxed"].parse().expect("a number");
        assert!((worth - recorded).abs() < 1e-5, "{worth}, not {recorded}");
    }
}
