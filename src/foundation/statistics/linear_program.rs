//! A linear program with bounded variables, by the primal simplex method.
//!
//! It is the LP relaxation of a program of whole numbers: its solution shows where to look for
//! them, and its duals bound what they can bring. Everything here is an estimate in binary
//! fractions.

/// Numbers of at most this size count as zero.
const ZERO_TOLERANCE: f64 = 1e-9;
/// Pivots and bound flips after which the basic solution reached so far is returned: it is
/// feasible, if not optimal.
const ITERATION_LIMIT: usize = 400;

/// Maximize c·x subject to A·x <= b and 0 <= x <= u, with n variables and m constraints. All of c,
/// A, b and u are 0 or more, so that x = 0 is feasible.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct LinearProgram {
    /// c: the objective coefficient of each of the n variables, 0 or more.
    pub objective: Vec<f64>,
    /// u: the upper bound of each variable, 0 or more.
    pub upper: Vec<f64>,
    /// The m constraints: a row of A with a coefficient for each variable, 0 or more, and its
    /// number of b, 0 or more.
    pub constraints: Vec<(Vec<f64>, f64)>,
}

/// An optimal solution up to rounding, unless the iteration limit was reached.
#[derive(Clone, Debug, PartialEq)]
pub struct LpSolution {
    /// x: the value of each of the n variables.
    pub values: Vec<f64>,
    /// The dual (shadow price) of each of the m constraints, 0 or more: what one more of its
    /// right-hand side would add to the objective.
    pub duals: Vec<f64>,
}

/// The simplex tableau: a row for each constraint; a column for each variable, then one for the
/// slack of each constraint. A column outside the basis stands at zero.
struct Tableau {
    rows: Vec<Row>,
    /// The reduced cost of each column: what one more of it would add to the objective.
    reduced_costs: Vec<f64>,
    /// The upper bound of each column; slacks have none.
    upper: Vec<f64>,
    /// Whether a column is complemented: counted from its upper bound downwards.
    complemented: Vec<bool>,
}

struct Row {
    coefficients: Vec<f64>,
    /// The value of the basic variable of this row.
    value: f64,
    /// The column of that variable.
    basic: usize,
}

impl LinearProgram {
    /// Solves it. Returns `None` if one of its numbers is not finite, or if rounding leaves nothing
    /// that bounds the objective.
    pub fn solve(&self) -> Option<LpSolution> {
        let coefficients = self.constraints.iter().flat_map(|(coefficients, _)| coefficients);
        let limits = self.constraints.iter().map(|(_, limit)| limit);
        let mut numbers = self.objective.iter().chain(&self.upper).chain(coefficients).chain(limits);
        if !numbers.all(|number| number.is_finite()) {
            return None;
        }
        let mut tableau = Tableau::of(self);
        for _ in 0..ITERATION_LIMIT {
            let Some(entering) = tableau.entering() else { break };
            tableau.iterate(entering)?;
        }
        Some(tableau.solution(self.objective.len()))
    }
}

impl Tableau {
    /// The tableau whose basis is all slacks.
    fn of(program: &LinearProgram) -> Tableau {
        let (variables, constraints) = (program.objective.len(), program.constraints.len());
        let unit = |own: usize| (0..constraints).map(move |row| if row == own { 1.0 } else { 0.0 });
        let rows = program.constraints.iter().enumerate().map(|(row, (coefficients, limit))| Row {
            coefficients: coefficients.iter().copied().chain(unit(row)).collect(),
            value: *limit,
            basic: variables.saturating_add(row),
        });
        let slacks = |number: f64| std::iter::repeat_n(number, constraints);
        Tableau {
            rows: rows.collect(),
            reduced_costs: program.objective.iter().copied().chain(slacks(0.0)).collect(),
            upper: program.upper.iter().copied().chain(slacks(f64::INFINITY)).collect(),
            complemented: vec![false; variables.saturating_add(constraints)],
        }
    }

    /// Dantzig's rule: the column of the greatest reduced cost enters the basis. Returns `None` if
    /// the solution is optimal.
    fn entering(&self) -> Option<usize> {
        let gaining = self.reduced_costs.iter().enumerate().filter(|(_, cost)| **cost > ZERO_TOLERANCE);
        gaining.max_by(|(_, one), (_, other)| one.total_cmp(other)).map(|(column, _)| column)
    }

    /// The ratio test: raises the entering column until a basic variable reaches zero or its upper
    /// bound, which is a pivot, or the column reaches its own upper bound, which is a bound flip.
    /// Returns `None` if nothing stops it.
    fn iterate(&mut self, entering: usize) -> Option<()> {
        let mut limit = *self.upper.get(entering)?;
        let mut leaving = None;
        for (place, row) in self.rows.iter().enumerate() {
            let (coefficient, upper) = (*row.coefficients.get(entering)?, *self.upper.get(row.basic)?);
            let (ratio, at_upper) = match coefficient {
                falls if falls > ZERO_TOLERANCE => (row.value / falls, false),
                rises if rises < -ZERO_TOLERANCE && upper.is_finite() => ((upper - row.value) / -rises, true),
                _ => continue,
            };
            if ratio < limit {
                limit = ratio.max(0.0);
                leaving = Some((place, at_upper));
            }
        }
        match leaving {
            Some((place, at_upper)) => {
                if at_upper {
                    self.complement_basic(place)?;
                }
                self.pivot(place, entering)
            }
            None if limit.is_finite() => self.flip_bound(entering),
            None => None,
        }
    }

    /// Bound flip: moves a column outside the basis to its other bound and complements it.
    fn flip_bound(&mut self, column: usize) -> Option<()> {
        let upper = *self.upper.get(column)?;
        for row in &mut self.rows {
            let coefficient = row.coefficients.get_mut(column)?;
            row.value -= *coefficient * upper;
            *coefficient = -*coefficient;
        }
        let cost = self.reduced_costs.get_mut(column)?;
        *cost = -*cost;
        let complemented = self.complemented.get_mut(column)?;
        *complemented = !*complemented;
        Some(())
    }

    /// Complements the basic variable of a row, so that it leaves the basis at zero.
    fn complement_basic(&mut self, place: usize) -> Option<()> {
        let row = self.rows.get_mut(place)?;
        row.value = self.upper.get(row.basic)? - row.value;
        for coefficient in &mut row.coefficients {
            *coefficient = -*coefficient;
        }
        *row.coefficients.get_mut(row.basic)? = 1.0;
        let complemented = self.complemented.get_mut(row.basic)?;
        *complemented = !*complemented;
        Some(())
    }

    /// Puts a column into the basis, in place of the basic variable of a row.
    fn pivot(&mut self, place: usize, entering: usize) -> Option<()> {
        let row = self.rows.get_mut(place)?;
        let pivot = *row.coefficients.get(entering)?;
        for coefficient in &mut row.coefficients {
            *coefficient /= pivot;
        }
        row.value /= pivot;
        row.basic = entering;
        let (pivot_row, value) = (row.coefficients.clone(), row.value);
        for (_, row) in self.rows.iter_mut().enumerate().filter(|(other, _)| *other != place) {
            let times = *row.coefficients.get(entering)?;
            subtract(&mut row.coefficients, &pivot_row, times);
            row.value = (row.value - value * times).max(0.0);
        }
        let times = *self.reduced_costs.get(entering)?;
        subtract(&mut self.reduced_costs, &pivot_row, times);
        Some(())
    }

    /// The solution that the basis stands for, without the slacks.
    fn solution(&self, variables: usize) -> LpSolution {
        let mut values = vec![0.0; self.complemented.len()];
        for row in &self.rows {
            if let Some(value) = values.get_mut(row.basic) {
                *value = row.value;
            }
        }
        for ((value, complemented), upper) in values.iter_mut().zip(&self.complemented).zip(&self.upper) {
            if *complemented {
                *value = upper - *value;
            }
        }
        values.truncate(variables);
        LpSolution { values, duals: self.reduced_costs.iter().skip(variables).map(|cost| (-cost).max(0.0)).collect() }
    }
}

/// Subtracts a row from another, so many times.
fn subtract(from: &mut [f64], row: &[f64], times: f64) {
    for (number, other) in from.iter_mut().zip(row) {
        *number -= other * times;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn near(found: &[f64], expected: &[f64]) {
        let off = |(one, other): (&f64, &f64)| (one - other).abs() < 1e-7;
        assert!(found.len() == expected.len() && found.iter().zip(expected).all(off), "{found:?}, not {expected:?}");
    }

    #[test]
    fn a_textbook_program() {
        // Hillier and Lieberman, Introduction to Operations Research, the Wyndor Glass example
        // (from memory): 3x + 5y, x <= 4, 2y <= 12, 3x + 2y <= 18. Best (2, 6); duals 0, 3/2, 1.
        let constraints = vec![(vec![1.0, 0.0], 4.0), (vec![0.0, 2.0], 12.0), (vec![3.0, 2.0], 18.0)];
        let solution =
            LinearProgram { objective: vec![3.0, 5.0], upper: vec![100.0, 100.0], constraints }.solve().unwrap();
        near(&solution.values, &[2.0, 6.0]);
        near(&solution.duals, &[0.0, 1.5, 1.0]);
        // The first two rows as bounds.
        let constraints = vec![(vec![3.0, 2.0], 18.0)];
        let solution = LinearProgram { objective: vec![3.0, 5.0], upper: vec![4.0, 6.0], constraints }.solve().unwrap();
        near(&solution.values, &[2.0, 6.0]);
        near(&solution.duals, &[1.0]);
    }

    #[test]
    fn nothing_is_scarce_or_everything() {
        let all = LinearProgram { objective: vec![1.0, 0.0], upper: vec![7.0, 3.0], constraints: Vec::new() }
            .solve()
            .unwrap();
        near(&all.values, &[7.0, 0.0]);
        let constraints = vec![(vec![1.0, 1.0], 0.0)];
        let none = LinearProgram { objective: vec![1.0, 2.0], upper: vec![7.0, 3.0], constraints }.solve().unwrap();
        near(&none.values, &[0.0, 0.0]);
        near(&none.duals, &[2.0]);
        let odd = LinearProgram { objective: vec![f64::NAN], upper: vec![1.0], constraints: Vec::new() };
        assert_eq!(odd.solve(), None);
    }
}
