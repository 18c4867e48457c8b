//! What a whole number of things comes to where parts of them are allowed: a linear program, by
//! the simplex method with bounds on the variables. What comes out are estimates: hints where to
//! look for the whole numbers, and a price for each thing that is scarce.

/// Below this a number counts as nothing.
const NOTHING: f64 = 1e-9;
/// Steps after which what was found so far is handed over: it is a hint at any time.
const MOST_STEPS: usize = 400;

/// What to find hints for: the most of the sum of values, each at least 0 and at most its bound,
/// with what is taken of each row within what is there.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Relaxed {
    /// What one of each is worth, 0 or more.
    pub values: Vec<f64>,
    /// How many of each at most, 0 or more.
    pub most: Vec<f64>,
    /// What one of each takes of a row, 0 or more, in the order of the values; and what is there.
    pub rows: Vec<(Vec<f64>, f64)>,
}

/// The hints.
#[derive(Clone, Debug, PartialEq)]
pub struct Hints {
    /// How many of each, in parts.
    pub units: Vec<f64>,
    /// What a little more of each row would be worth, 0 or more.
    pub prices: Vec<f64>,
}

/// The simplex table: a row for each thing that is scarce, a column for each variable, then one
/// for what is left over of each row.
struct Table {
    rows: Vec<Row>,
    /// What one more of each column would bring.
    gains: Vec<f64>,
    /// The upper bound of each column.
    most: Vec<f64>,
    /// Whether a column is counted from its upper bound downwards.
    turned: Vec<bool>,
}

struct Row {
    takes: Vec<f64>,
    /// The value of the variable that this row stands for.
    here: f64,
    /// Which column that is.
    of: usize,
}

impl Relaxed {
    /// The hints; of what has no finite numbers, none.
    pub fn hints(&self) -> Option<Hints> {
        let all = self.values.iter().chain(&self.most).chain(self.rows.iter().flat_map(|(takes, _)| takes));
        if !all.chain(self.rows.iter().map(|(_, here)| here)).all(|number| number.is_finite()) {
            return None;
        }
        let mut table = Table::of(self);
        for _ in 0..MOST_STEPS {
            table.step()?;
            if table.best().is_none() {
                break;
            }
        }
        Some(table.read(self.values.len()))
    }
}

impl Table {
    fn of(program: &Relaxed) -> Table {
        let (count, scarce) = (program.values.len(), program.rows.len());
        let left = |own: usize| (0..scarce).map(move |row| if row == own { 1.0 } else { 0.0 });
        let rows = program.rows.iter().enumerate().map(|(row, (takes, here))| Row {
            takes: takes.iter().copied().chain(left(row)).collect(),
            here: *here,
            of: count.saturating_add(row),
        });
        let none = || std::iter::repeat_n(0.0, scarce);
        Table {
            rows: rows.collect(),
            gains: program.values.iter().copied().chain(none()).collect(),
            most: program.most.iter().copied().chain(std::iter::repeat_n(f64::INFINITY, scarce)).collect(),
            turned: vec![false; count.saturating_add(scarce)],
        }
    }

    /// The column that gains most.
    fn best(&self) -> Option<usize> {
        let gaining = self.gains.iter().enumerate().filter(|(_, gain)| **gain > NOTHING);
        gaining.max_by(|(_, one), (_, other)| one.total_cmp(other)).map(|(column, _)| column)
    }

    /// Lets the column that gains most grow until something stops it: its own bound, or a row's
    /// variable that reaches zero or its bound.
    fn step(&mut self) -> Option<()> {
        let Some(entering) = self.best() else { return Some(()) };
        let mut stop = (*self.most.get(entering)?, None);
        for (place, line) in self.rows.iter().enumerate() {
            let (takes, bound) = (*line.takes.get(entering)?, *self.most.get(line.of)?);
            let (until, at_bound) = match takes {
                takes if takes > NOTHING => (line.here / takes, false),
                takes if takes < -NOTHING && bound.is_finite() => ((bound - line.here) / -takes, true),
                _ => continue,
            };
            if until < stop.0 {
                stop = (until.max(0.0), Some((place, at_bound)));
            }
        }
        match stop {
            (_, Some((place, at_bound))) => {
                if at_bound {
                    self.turn_basic(place)?;
                }
                self.pivot(place, entering)
            }
            (until, None) if until.is_finite() => self.turn(entering),
            _ => None,
        }
    }

    /// Counts a column that stands at zero from its upper bound.
    fn turn(&mut self, column: usize) -> Option<()> {
        let most = *self.most.get(column)?;
        for line in &mut self.rows {
            let takes = line.takes.get_mut(column)?;
            line.here -= *takes * most;
            *takes = -*takes;
        }
        let gain = self.gains.get_mut(column)?;
        *gain = -*gain;
        let turned = self.turned.get_mut(column)?;
        *turned = !*turned;
        Some(())
    }

    /// Counts the variable of a row from its upper bound.
    fn turn_basic(&mut self, place: usize) -> Option<()> {
        let line = self.rows.get_mut(place)?;
        line.here = self.most.get(line.of)? - line.here;
        for takes in &mut line.takes {
            *takes = -*takes;
        }
        *line.takes.get_mut(line.of)? = 1.0;
        let turned = self.turned.get_mut(line.of)?;
        *turned = !*turned;
        Some(())
    }

    /// Puts a column in the place of a row's variable.
    fn pivot(&mut self, place: usize, entering: usize) -> Option<()> {
        let line = self.rows.get_mut(place)?;
        let by = *line.takes.get(entering)?;
        for takes in &mut line.takes {
            *takes /= by;
        }
        line.here /= by;
        line.of = entering;
        let (row, here) = (line.takes.clone(), line.here);
        for (_, line) in self.rows.iter_mut().enumerate().filter(|(other, _)| *other != place) {
            let by = *line.takes.get(entering)?;
            less(&mut line.takes, &row, by);
            line.here = (line.here - here * by).max(0.0);
        }
        let by = *self.gains.get(entering)?;
        less(&mut self.gains, &row, by);
        Some(())
    }

    fn read(&self, count: usize) -> Hints {
        let mut units = vec![0.0; self.turned.len()];
        for line in &self.rows {
            if let Some(value) = units.get_mut(line.of) {
                *value = line.here;
            }
        }
        for ((value, turned), most) in units.iter_mut().zip(&self.turned).zip(&self.most) {
            if *turned {
                *value = most - *value;
            }
        }
        units.truncate(count);
        Hints { units, prices: self.gains.iter().skip(count).map(|gain| (-gain).max(0.0)).collect() }
    }
}

/// Takes a row off another, so many times.
fn less(from: &mut [f64], row: &[f64], by: f64) {
    for (number, other) in from.iter_mut().zip(row) {
        *number -= other * by;
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
        // (from memory): 3x + 5y, x <= 4, 2y <= 12, 3x + 2y <= 18. Best (2, 6); prices 0, 3/2, 1.
        let rows = vec![(vec![1.0, 0.0], 4.0), (vec![0.0, 2.0], 12.0), (vec![3.0, 2.0], 18.0)];
        let hints = Relaxed { values: vec![3.0, 5.0], most: vec![100.0, 100.0], rows }.hints().unwrap();
        near(&hints.units, &[2.0, 6.0]);
        near(&hints.prices, &[0.0, 1.5, 1.0]);
        // The first two rows as bounds.
        let rows = vec![(vec![3.0, 2.0], 18.0)];
        let hints = Relaxed { values: vec![3.0, 5.0], most: vec![4.0, 6.0], rows }.hints().unwrap();
        near(&hints.units, &[2.0, 6.0]);
        near(&hints.prices, &[1.0]);
    }

    #[test]
    fn nothing_is_scarce_or_everything() {
        let all = Relaxed { values: vec![1.0, 0.0], most: vec![7.0, 3.0], rows: Vec::new() }.hints().unwrap();
        near(&all.units, &[7.0, 0.0]);
        let rows = vec![(vec![1.0, 1.0], 0.0)];
        let none = Relaxed { values: vec![1.0, 2.0], most: vec![7.0, 3.0], rows }.hints().unwrap();
        near(&none.units, &[0.0, 0.0]);
        near(&none.prices, &[2.0]);
        let odd = Relaxed { values: vec![f64::NAN], most: vec![1.0], rows: Vec::new() };
        assert_eq!(odd.hints(), None);
    }
}
