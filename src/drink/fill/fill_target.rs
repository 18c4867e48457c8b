//! What to set a filling line to, so that packages hold what they say.
//!
//! A help beside the work: what counts is the local code and the inspector's own weighing.

use crate::foundation::measure::{Exact, Overflow, PART_PLACES, Volume};

/// A packaged drink: what is asked of its fill, and how evenly it is filled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Packaged {
    /// Declared size, N.
    pub nominal: Volume,
    /// What is asked of the average of a batch. It is `None` if nobody said how large a batch is.
    pub batch: Option<BatchRisk>,
    /// What is asked of single packages. It is `None` if only the average counts.
    pub single: Option<Single>,
    /// Standard deviation of the fill, s.
    pub deviation: Volume,
    /// The most that may be in the container: brimful less the least headspace.
    pub room: Volume,
}

/// How surely the average of a batch must reach the declared size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct BatchRisk {
    /// Packages in a batch, n, 1 or more.
    pub packages: Exact,
    /// How many standard deviations of the average lie between the target and N, called z: so many
    /// that only the accepted share of batches is short on average.
    pub quantile: Exact,
}

/// What is asked of single packages.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Single {
    /// What a package may be short by, T.
    pub tolerance: Volume,
    /// The least number of standard deviations between the target and N - T, called z'.
    pub spreads: Exact,
    /// Whether no package may be short by twice that.
    pub none_twice: bool,
}

/// How many standard deviations over the target the fullest package to expect is: in a normal
/// distribution about one package in 740 holds more.
pub const FULLEST_SPREADS: Exact = Exact::new(3, 0);

/// The least number of standard deviations between the target and what no package may be under: in
/// a normal distribution about one package in 740 holds less.
pub const LEAST_SPREADS: Exact = Exact::new(3, 0);

/// A fill is cautioned of if fewer standard deviations than this lie between the target and N - 2 *
/// T: in a normal distribution one package in 10,000 holds less (scipy.stats.norm.isf(0.0001)
/// 1.17.1: 3.719016).
pub const SPREADS_TO_DOUBLE: Exact = Exact::new(372, 2);

/// What to fill on average, and what follows from it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct FillTarget {
    /// The mean to fill to, never under it by rounding: N + z * s / sqrt(n), or N - T + z' * s
    /// where that is more.
    pub target: Volume,
    /// So much more than N, for the average of a batch: z * s / sqrt(n), rounded up to twelve
    /// decimals; zero if the size of a batch is not known.
    pub for_batch: Volume,
    /// So much more than N - T, for single packages: z' * s; zero if only the average counts.
    pub for_single: Volume,
    /// What is given away per package: target less N.
    pub giveaway: Volume,
    /// The fullest package to expect: target + 3 * s.
    pub highest: Volume,
    /// How much more that is than there is room for, if it is more: the container is too small
    /// for the declared size.
    pub over: Option<Volume>,
    /// How many standard deviations lie between the target and N - 2 * T, under which no package
    /// may be. It is `None` if no rule says so, or if there is no spread.
    pub spreads_to_double: Option<Exact>,
}

impl BatchRisk {
    /// The root of the number of packages, down to twelve decimals.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn root(&self) -> Result<Exact, Overflow> {
        Ok(self.packages.square_root()?.negated().rounded_up(PART_PLACES)?.negated())
    }
}

impl Packaged {
    /// The fill target. Rounding on the way never lowers it.
    ///
    /// # Errors
    /// [`Overflow`].
    pub fn target(&self) -> Result<FillTarget, Overflow> {
        let deviation = self.deviation.rounded_up()?;
        let for_batch = match &self.batch {
            Some(batch) => deviation.times(batch.quantile)?.over(batch.root()?)?.rounded_up()?,
            None => Volume::ZERO,
        };
        let average = self.nominal.plus(for_batch)?;
        let (for_single, target) = match self.single {
            Some(single) => {
                let more = deviation.times(single.spreads)?;
                (more, self.nominal.minus(single.tolerance)?.plus(more)?.max(average))
            }
            None => (Volume::ZERO, average),
        };
        let highest = target.plus(deviation.times(FULLEST_SPREADS)?)?;
        let spreads_to_double = match self.single {
            Some(Single { tolerance, none_twice: true, .. }) if deviation.is_positive() => {
                let lowest = self.nominal.minus(tolerance)?.minus(tolerance)?;
                Some(target.minus(lowest)?.ratio_to(deviation)?)
            }
            _ => None,
        };
        Ok(FillTarget {
            target,
            for_batch,
            for_single,
            giveaway: target.minus(self.nominal)?,
            highest,
            over: Some(highest.minus(self.room)?).filter(|over| over.is_positive()),
            spreads_to_double,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::support::{exact, millilitres};

    fn single(tolerance: &str, spreads: &str) -> Single {
        Single { tolerance: millilitres(tolerance), spreads: exact(spreads), none_twice: true }
    }

    /// A bottle of 355 mL by the European rule, filled with a spread; it has room for 375 mL.
    fn bottle(deviation: &str) -> Packaged {
        Packaged {
            nominal: millilitres("355"),
            batch: None,
            single: Some(single("10.7", "1.959964")),
            deviation: millilitres(deviation),
            room: millilitres("375"),
        }
    }

    /// The same in batches of so many, 2.5 % of which may be short on average.
    fn batch(packages: &str, bottle: Packaged) -> Packaged {
        Packaged { batch: Some(BatchRisk { packages: exact(packages), quantile: exact("1.959964") }), ..bottle }
    }

    #[test]
    fn an_even_filler_is_set_to_what_is_declared() {
        // 355 - 10.7 + 1.959964 * 4 = 352.139856 is less than 355.
        let expected = FillTarget {
            target: millilitres("355"),
            for_batch: Volume::ZERO,
            for_single: millilitres("7.839856"),
            giveaway: Volume::ZERO,
            highest: millilitres("367"),
            over: None,
            spreads_to_double: Some(exact("5.35")),
        };
        assert_eq!(bottle("4").target(), Ok(expected));
    }

    #[test]
    fn an_uneven_filler_gives_away() {
        // 355 - 10.7 + 1.959964 * 10 = 363.89964; up to 393.89964; (363.89964 - 333.6) / 10.
        let expected = FillTarget {
            target: millilitres("363.89964"),
            for_batch: Volume::ZERO,
            for_single: millilitres("19.59964"),
            giveaway: millilitres("8.89964"),
            highest: millilitres("393.89964"),
            over: Some(millilitres("18.89964")),
            spreads_to_double: Some(exact("3.029964")),
        };
        assert_eq!(bottle("10").target(), Ok(expected));
    }

    #[test]
    fn a_small_batch_needs_more_on_average() {
        // 1.959964 * 4 = 7.839856, over the root of so many: by Python's decimal with 40 digits, cut
        // off at twelve decimals and one added to the last; ours may be ten of the last place more.
        for (packages, more) in [
            ("1", "7.839856"),
            ("12", "2.263171486004"),
            ("99", "0.787935174619"),
            ("100", "0.7839856"),
            ("1000", "0.247918014878"),
        ] {
            let target = batch(packages, bottle("4")).target().unwrap();
            let off = target.for_batch.minus(millilitres(more)).unwrap().millilitres();
            assert!(!off.is_negative() && off < exact("0.00000000001"), "{packages}: {off}");
            assert_eq!(target.giveaway, target.for_batch);
            assert_eq!(target.target, millilitres("355").plus(target.for_batch).unwrap());
        }
        // The larger of both counts: at a spread of 10 single packages ask for 8.89964 more, a
        // batch of 4 for 9.79982, one of 5 for 8.765.
        let giveaway = |packages| batch(packages, bottle("10")).target().unwrap().giveaway;
        assert_eq!((giveaway("4"), giveaway("5")), (millilitres("9.79982"), millilitres("8.89964")));
    }

    #[test]
    fn no_rounding_leaves_the_target_too_low() {
        // (target - N)^2 * n is at least (z * s)^2, and not by more than the twelfth decimal explains.
        for packages in (1..=1000_u32).map(Exact::from) {
            for deviation in [exact("4"), exact("0.1"), exact("10").square_root().unwrap(), exact("0.333333")] {
                let bottle = Packaged { deviation: Volume::from_millilitres(deviation), ..bottle("1") };
                let asked = batch(&packages.to_string(), bottle).target().unwrap().for_batch.millilitres();
                let needed = exact("1.959964").times(deviation).unwrap();
                let enough = asked.times(asked).unwrap().times(packages).unwrap();
                let over = enough.minus(needed.times(needed).unwrap()).unwrap();
                assert!(!over.is_negative(), "{packages} at {deviation}: {over}");
                assert!(over < exact("0.000000001"), "{packages} at {deviation}: {over}");
            }
        }
    }

    #[test]
    fn the_target_leaves_the_declared_size_where_z_spreads_are_the_tolerance() {
        let just = |deviation: &str| {
            Packaged { single: Some(single("10.7", "2")), ..bottle(deviation) }.target().unwrap().giveaway
        };
        assert_eq!(just("5.35"), Volume::ZERO);
        assert_eq!(just("5.36"), millilitres("0.02"));
    }

    #[test]
    fn by_the_average_alone_it_is_what_is_declared() {
        let alone = Packaged { single: None, ..bottle("10") };
        let average = alone.target().unwrap();
        assert_eq!((average.target, average.giveaway), (millilitres("355"), Volume::ZERO));
        assert_eq!((average.highest, average.over), (millilitres("385"), Some(millilitres("10"))));
        assert_eq!(average.spreads_to_double, None);
        assert_eq!(batch("100", alone).target().unwrap().target, millilitres("356.959964"));
    }

    #[test]
    fn where_twice_the_tolerance_is_no_limit_nothing_is_counted_to_it() {
        let single = Some(Single { none_twice: false, ..single("10.7", "3") });
        let target = Packaged { single, ..bottle("10") }.target().unwrap();
        // 355 - 10.7 + 30.
        assert_eq!((target.target, target.spreads_to_double), (millilitres("374.3"), None));
    }

    #[test]
    fn without_spread_every_package_is_the_target() {
        let even = batch("12", bottle("0")).target().unwrap();
        assert_eq!((even.target, even.highest), (millilitres("355"), millilitres("355")));
        assert_eq!((even.over, even.spreads_to_double), (None, None));
    }

    #[test]
    fn a_container_that_is_just_large_enough_is_not_too_small() {
        let over = |room| Packaged { room: millilitres(room), ..bottle("4") }.target().unwrap().over;
        assert_eq!(over("367"), None);
        assert_eq!(over("366.999999"), Some(millilitres("0.000001")));
    }
}
