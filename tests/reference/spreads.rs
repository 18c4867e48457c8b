//! How evenly packages are filled, against other people's statistics.

use brimwright::book::Accepted;
use brimwright::foundation::measure::Exact;
use brimwright::foundation::statistics::Spread;

use crate::csv::rows;
use crate::support::exact;

#[test]
fn weighings_scatter_as_in_the_library() {
    let rows = rows(include_str!("data/spreads.csv"));
    for row in &rows {
        let weighings: Vec<_> = row["weighings"].split(' ').map(exact).collect();
        let spread = Spread::of(&weighings).unwrap().unwrap();
        assert_eq!(spread.mean.as_part(), exact(&row["mean"]));
        assert_eq!(spread.deviation.as_part(), exact(&row["deviation"]));
        assert_eq!(Exact::from(spread.count), exact(&weighings.len().to_string()));
    }
    assert_eq!(rows.len(), 5);
}

#[test]
fn small_scatter_of_large_numbers_is_exact() {
    // NIST Statistical Reference Datasets, univariate: NumAcc1 to NumAcc4 with their certified
    // means and standard deviations (second-hand, from test suites that quote them).
    let first = Spread::of(&["10000001", "10000003", "10000002"].map(exact)).unwrap().unwrap();
    assert_eq!((first.mean, first.deviation), (exact("10000002"), Exact::ONE));
    for (mean, under, over) in
        [("1.2", "1.1", "1.3"), ("1000000.2", "1000000.1", "1000000.3"), ("10000000.2", "10000000.1", "10000000.3")]
    {
        let mut values = vec![exact(mean)];
        for _ in 0..500 {
            values.extend([exact(under), exact(over)]);
        }
        let spread = Spread::of(&values).unwrap();
        assert_eq!(spread, Some(Spread { count: 1001, mean: exact(mean), deviation: exact("0.1") }));
    }
}

#[test]
fn quantiles_are_those_of_the_normal_distribution() {
    // Upper quantiles of the standard normal distribution, as scipy.stats.norm.isf 1.17.1 gives
    // them; NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1, has the table (from memory).
    let published = [
        ("0.001", "3.090232"),
        ("0.01", "2.326348"),
        ("0.02", "2.053749"),
        ("0.025", "1.959964"),
        ("0.05", "1.644854"),
    ];
    let ours = Accepted::ALL.iter().map(|accepted| (accepted.share().fraction(), accepted.quantile()));
    assert!(ours.eq(published.map(|(share, quantile)| (exact(share), exact(quantile)))));
}
