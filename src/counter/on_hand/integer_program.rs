//! The integer program behind the best use, solved by branch and bound.
//!
//! With n variables and m constraints it maximizes c·x subject to A·x <= b and 0 <= x <= u, x in
//! whole numbers; all of c, A, b and u are whole numbers of 0 or more. Of optimal solutions the
//! lexicographically greatest is taken: the one with more of the first variable, then of the
//! second, and so on.
//!
//! The search is depth-first. The LP relaxation of a node is solved in binary fractions and gives
//! no more than hints: duals, a solution to round, and a variable to branch on. Pruning and
//! reduced-cost fixing rest on the dual bound, which is computed in whole numbers from those
//! duals. By weak duality it holds for any duals of 0 or more, so that a rounding error in the
//! relaxation costs time, and never the optimum.

use crate::foundation::in_order;
use crate::foundation::statistics::{LinearProgram, LpSolution};

/// Duals are whole multiples of one part in this many.
const DUAL_SCALE: i128 = 1_000_000_000_000;

/// A value of the LP relaxation that lies further from every whole number is fractional.
const INTEGRALITY_TOLERANCE: f64 = 1e-6;

/// Maximize c·x subject to A·x <= b and 0 <= x <= u, x in whole numbers.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct IntegerProgram {
    /// c: the objective coefficient of each of the n variables, 0 or more.
    pub objective: Vec<i128>,
    /// u: the upper bound of each variable, 0 or more.
    pub upper: Vec<i128>,
    /// The m constraints: the rows of A, each with its number of b.
    pub constraints: Vec<Constraint>,
}

/// One constraint: its coefficients times the variables are at most its limit.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Constraint {
    /// The coefficient of each of the n variables, 0 or more.
    pub coefficients: Vec<i128>,
    /// The right-hand side, 0 or more.
    pub limit: i128,
}

/// A feasible solution.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Solution {
    /// x: the value of each of the n variables.
    pub units: Vec<i128>,
    /// Whether it is proved optimal. If not, it is the best that was found within the node limit.
    pub proved: bool,
    /// How many nodes were explored.
    pub nodes: u32,
}

/// A node of the search tree: the bounds of each variable in its subproblem.
#[derive(Clone)]
struct Node {
    lower: Vec<i128>,
    upper: Vec<i128>,
}

/// The best feasible solution so far.
struct Incumbent {
    value: i128,
    units: Vec<i128>,
}

impl Incumbent {
    /// Whether a solution of this value is better: of the same value, the lexicographically
    /// greater one is.
    fn is_beaten_by(&self, value: i128, units: &[i128]) -> bool {
        value > self.value || (value == self.value && units > self.units.as_slice())
    }
}

impl IntegerProgram {
    /// The optimal solution, or the best that is found in `node_limit` nodes. Returns `None` if a
    /// number on the way leaves the range of `i128`.
    pub fn solve(&self, node_limit: u32) -> Option<Solution> {
        let zero = vec![0; self.objective.len()];
        let mut incumbent = Incumbent { value: 0, units: zero.clone() };
        // The value of every solution is a multiple of this.
        let grain = self.objective.iter().fold(0, |grain, value| greatest_common_divisor(grain, *value));
        let mut open = vec![Node { lower: zero, upper: self.upper.clone() }];
        let mut nodes = 0_u32;
        while let Some(node) = open.pop() {
            if nodes >= node_limit {
                return Some(Solution { units: incumbent.units, proved: false, nodes });
            }
            nodes = nodes.saturating_add(1);
            open.extend(self.explore(node, grain, &mut incumbent)?);
        }
        Some(Solution { units: incumbent.units, proved: true, nodes })
    }

    /// Bounds a node and improves the incumbent from it. Returns its children, the more promising
    /// one last, or none if the node is pruned.
    fn explore(&self, mut node: Node, grain: i128, incumbent: &mut Incumbent) -> Option<Vec<Node>> {
        let Some(slack) = self.slack(&node.lower)? else { return Some(Vec::new()) };
        self.propagate(&mut node, &slack)?;
        let relaxed = self.relaxation(&node, &slack);
        let duals = relaxed.as_ref().map(|relaxed| whole_duals(&relaxed.duals)).unwrap_or_default();
        let lower_value = self.value(&node.lower)?;
        let scaled_bound = self.dual_bound(&node, &slack, &duals)?;
        let bound = lower_value.checked_add(multiple_below(scaled_bound.checked_div(DUAL_SCALE)?, grain)?)?;
        if !incumbent.is_beaten_by(bound, &node.upper) {
            return Some(Vec::new());
        }
        let fractional = relaxed.map(|relaxed| shifted(&node.lower, &relaxed.values)).unwrap_or_default();
        let rounded = self.rounded(&node, slack, &fractional)?;
        let value = self.value(&rounded)?;
        if incumbent.is_beaten_by(value, &rounded) {
            *incumbent = Incumbent { value, units: rounded.clone() };
        }
        if rounded == node.upper || !incumbent.is_beaten_by(bound, &node.upper) {
            return Some(Vec::new());
        }
        let above_lower = incumbent.value.checked_sub(lower_value)?;
        let scaled_gap = scaled_bound.checked_sub(above_lower.checked_mul(DUAL_SCALE)?)?;
        self.fix_by_reduced_cost(&mut node, &duals, scaled_gap)?;
        branch(node, &fractional, &rounded)
    }

    fn value(&self, units: &[i128]) -> Option<i128> {
        dot(&self.objective, units)
    }

    /// The slack of each constraint, or an inner `None` if `units` violates one.
    fn slack(&self, units: &[i128]) -> Option<Option<Vec<i128>>> {
        let mut slack = Vec::with_capacity(self.constraints.len());
        for constraint in &self.constraints {
            let rest = constraint.limit.checked_sub(dot(&constraint.coefficients, units)?)?;
            if rest < 0 {
                return Some(None);
            }
            slack.push(rest);
        }
        Some(Some(slack))
    }

    /// Constraint propagation: lowers the upper bound of each variable to what the slack at the
    /// lower bounds leaves for it alone.
    fn propagate(&self, node: &mut Node, slack: &[i128]) -> Option<()> {
        for (constraint, rest) in self.constraints.iter().zip(slack) {
            for ((upper, lower), takes) in node.upper.iter_mut().zip(&node.lower).zip(&constraint.coefficients) {
                if let Some(more) = rest.checked_div(*takes) {
                    *upper = (*upper).min(lower.checked_add(more)?);
                }
            }
        }
        Some(())
    }

    /// The LP relaxation of a node, in variables counted from their lower bounds.
    fn relaxation(&self, node: &Node, slack: &[i128]) -> Option<LpSolution> {
        let range = |(upper, lower): (&i128, &i128)| upper.saturating_sub(*lower) as f64;
        let constraint = |(row, rest): (&Constraint, &i128)| {
            (row.coefficients.iter().map(|takes| *takes as f64).collect(), *rest as f64)
        };
        let program = LinearProgram {
            objective: self.objective.iter().map(|value| *value as f64).collect(),
            upper: node.upper.iter().zip(&node.lower).map(range).collect(),
            constraints: self.constraints.iter().zip(slack).map(constraint).collect(),
        };
        program.solve()
    }

    /// The reduced cost of a variable: its objective coefficient less what it takes of the
    /// constraints at their duals, times [`DUAL_SCALE`].
    fn reduced_cost(&self, variable: usize, duals: &[i128]) -> Option<i128> {
        let mut cost = self.objective.get(variable)?.checked_mul(DUAL_SCALE)?;
        for (constraint, dual) in self.constraints.iter().zip(duals) {
            cost = cost.checked_sub(constraint.coefficients.get(variable)?.checked_mul(*dual)?)?;
        }
        Some(cost)
    }

    /// The dual bound: no solution of the node has a value more than this above that of its lower
    /// bounds, times [`DUAL_SCALE`].
    fn dual_bound(&self, node: &Node, slack: &[i128], duals: &[i128]) -> Option<i128> {
        let mut bound = dot(slack, duals)?;
        for (variable, (lower, upper)) in node.lower.iter().zip(&node.upper).enumerate() {
            let gain = self.reduced_cost(variable, duals)?.max(0);
            bound = bound.checked_add(gain.checked_mul(upper.checked_sub(*lower)?)?)?;
        }
        Some(bound)
    }

    /// Reduced-cost fixing: cuts off the values of each variable that would lower the dual bound by
    /// more than the gap between it and the incumbent.
    fn fix_by_reduced_cost(&self, node: &mut Node, duals: &[i128], scaled_gap: i128) -> Option<()> {
        for (variable, (lower, upper)) in node.lower.iter_mut().zip(node.upper.iter_mut()).enumerate() {
            let cost = self.reduced_cost(variable, duals)?;
            let Some(away) = scaled_gap.checked_div(cost.checked_abs()?) else { continue };
            if cost > 0 {
                *lower = (*lower).max(upper.checked_sub(away)?);
            } else {
                *upper = (*upper).min(lower.checked_add(away)?);
            }
        }
        Some(())
    }

    /// The rounding heuristic: the relaxed solution rounded down if that is feasible, else the lower
    /// bounds; then each variable raised as far as the slack allows, greatest objective coefficient
    /// first.
    fn rounded(&self, node: &Node, slack: Vec<i128>, fractional: &[f64]) -> Option<Vec<i128>> {
        let down = |((lower, upper), value): ((&i128, &i128), &f64)| {
            ((value + INTEGRALITY_TOLERANCE).floor() as i128).clamp(*lower, *upper)
        };
        let down: Vec<i128> = node.lower.iter().zip(&node.upper).zip(fractional).map(down).collect();
        let is_relaxed = down.len() == node.lower.len();
        let (mut units, mut slack) = match if is_relaxed { self.slack(&down)? } else { None } {
            Some(slack) => (down, slack),
            None => (node.lower.clone(), slack),
        };
        let mut order: Vec<usize> = Vec::with_capacity(units.len());
        let worth = |variable: &usize| self.objective.get(*variable);
        for variable in 0..self.objective.len() {
            in_order::insert(&mut order, variable, |other, variable| worth(other) >= worth(variable));
        }
        for variable in order {
            let (Some(units), Some(upper)) = (units.get_mut(variable), node.upper.get(variable)) else { continue };
            let mut more = upper.checked_sub(*units)?;
            for (constraint, rest) in self.constraints.iter().zip(&slack) {
                if let Some(fits) = rest.checked_div(*constraint.coefficients.get(variable)?) {
                    more = more.min(fits);
                }
            }
            *units = units.checked_add(more)?;
            for (constraint, rest) in self.constraints.iter().zip(slack.iter_mut()) {
                *rest = rest.checked_sub(constraint.coefficients.get(variable)?.checked_mul(more)?)?;
            }
        }
        Some(units)
    }
}

/// The two children of a node, branched on the most fractional variable of the relaxation, or on
/// the first variable that is not fixed if none is fractional. The child that the relaxed value is
/// nearer to comes last, so that the search dives into it first. A node whose variables are all
/// fixed is returned as it is.
fn branch(node: Node, fractional: &[f64], rounded: &[i128]) -> Option<Vec<Node>> {
    let mut most_fractional: Option<(usize, i128)> = None;
    let mut widest = INTEGRALITY_TOLERANCE;
    for (variable, ((lower, upper), value)) in node.lower.iter().zip(&node.upper).zip(fractional).enumerate() {
        let (floor, distance) = (value.floor() as i128, (value - value.floor()).min(value.ceil() - value));
        if distance > widest && *lower <= floor && floor < *upper {
            most_fractional = Some((variable, floor));
            widest = distance;
        }
    }
    let mut variables = node.lower.iter().zip(&node.upper).zip(rounded).enumerate();
    let first_unfixed = || {
        variables.find_map(|(variable, ((lower, upper), units))| {
            (lower < upper).then(|| (variable, (*units).clamp(*lower, upper.saturating_sub(1))))
        })
    };
    let Some((variable, floor)) = most_fractional.or_else(first_unfixed) else { return Some(vec![node]) };
    let (mut down, mut up) = (node.clone(), node);
    *down.upper.get_mut(variable)? = floor;
    *up.lower.get_mut(variable)? = floor.checked_add(1)?;
    let up_first = fractional.get(variable).is_some_and(|value| value - value.floor() >= 0.5);
    Some(if up_first { vec![down, up] } else { vec![up, down] })
}

/// A relaxed solution counted from zero instead of from the lower bounds.
fn shifted(lower: &[i128], relaxed: &[f64]) -> Vec<f64> {
    lower.iter().zip(relaxed).map(|(lower, value)| *lower as f64 + value).collect()
}

/// Duals as whole multiples of one part in [`DUAL_SCALE`]. One that is not a number becomes zero,
/// which is a valid dual.
fn whole_duals(duals: &[f64]) -> Vec<i128> {
    duals.iter().map(|dual| (dual * DUAL_SCALE as f64) as i128).collect()
}

/// The scalar product.
fn dot(one: &[i128], other: &[i128]) -> Option<i128> {
    one.iter().zip(other).try_fold(0_i128, |sum, (one, other)| sum.checked_add(one.checked_mul(*other)?))
}

/// That of zero and a number is the number.
fn greatest_common_divisor(one: i128, other: i128) -> i128 {
    match one.checked_rem(other) {
        None => one,
        Some(rest) => greatest_common_divisor(other, rest),
    }
}

/// The greatest multiple of `grain` that is at most `number`; `number` itself if `grain` is zero.
fn multiple_below(number: i128, grain: i128) -> Option<i128> {
    match number.checked_rem(grain) {
        None => Some(number),
        Some(rest) => number.checked_sub(rest),
    }
}
