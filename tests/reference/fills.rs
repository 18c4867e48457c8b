//! Fill targets of batches and the risk of samples, against another library's distributions.

use brimwright::book::Accepted;
use brimwright::drink::fill::{
    BatchRisk, LEAST_SPREADS, Packaged, SPREADS_TO_DOUBLE, UNDER_THREE_SPREADS, sample_risk,
};
use brimwright::foundation::measure::{Exact, Share, Volume};

use crate::csv::rows;
use crate::support::{exact, millilitres};

fn near(one: Exact, other: &str, allowed: &str) -> bool {
    one.minus(exact(other)).unwrap().abs() <= exact(allowed)
}

#[test]
fn the_risk_of_a_sample_is_that_of_the_binomial_distribution() {
    let rows = rows(include_str!("data/samples.csv"));
    for row in &rows {
        let risk = sample_risk(Share::from_fraction(exact(&row["share"])), row["sample"].parse().unwrap()).unwrap();
        assert!(near(risk.fraction(), &row["risk"], "0.000000000001"), "{row:?}: {risk:?}");
    }
    assert_eq!(rows.len(), 7 * 6);
    // The last share is what lies under three deviations.
    assert_eq!(UNDER_THREE_SPREADS.fraction(), exact(&rows[41]["share"]));
    assert_eq!(LEAST_SPREADS, exact("3"));
    // One in 10,000: scipy.stats.norm.isf(0.0001) 1.17.1 is 3.719016485.
    assert!(near(SPREADS_TO_DOUBLE, "3.719016485", "0.001"));
}

#[test]
fn a_sample_often_finds_what_one_package_in_forty_is() {
    // 2.5 % over: a sample of 12 fails 26 %, of 24 46 % (scipy.stats.binom, in the data too).
    let risk = |sample| sample_risk(Share::from_fraction(exact("0.025")), sample).unwrap().percent().unwrap();
    assert_eq!([0, 12, 24].map(|sample| risk(sample).rounded(0)), ["0", "26", "46"].map(exact));
}

#[test]
fn the_average_of_a_batch_is_short_as_seldom_as_is_accepted() {
    let rows = rows(include_str!("data/batch_averages.csv"));
    for row in &rows {
        let accepted = Accepted::ALL.iter().find(|it| it.share().fraction() == exact(&row["risk"])).unwrap();
        let packaged = Packaged {
            nominal: millilitres("355"),
            batch: Some(BatchRisk { packages: exact(&row["batch"]), quantile: accepted.quantile() }),
            single: None,
            deviation: millilitres(&row["deviation"]),
            room: millilitres("500"),
        };
        let target = packaged.target().unwrap();
        // The quantiles have six decimals.
        let allowed = exact("0.0000005").times(exact(&row["deviation"])).unwrap().plus(exact("0.000000001")).unwrap();
        let off = target.giveaway.minus(millilitres(&row["more"])).unwrap().millilitres().abs();
        assert!(off <= allowed, "{row:?}: {off}");
        assert_eq!(target.target, millilitres("355").plus(target.giveaway).unwrap());
        assert_eq!(target.over, None::<Volume>);
    }
    assert_eq!(rows.len(), 5 * 3 * 5);
}
