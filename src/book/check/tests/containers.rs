use super::*;

fn tapered(base: &str, rim: &str, height: &str) -> Brimful {
    Brimful::Tapered(Tapered { base: length(base), rim: length(rim), height: length(height) })
}

fn poured(readings: &[(&str, &str)]) -> Brimful {
    let reading = |(height, volume): &(&str, &str)| Reading { height: length(height), volume: amount(volume) };
    Brimful::Poured(readings.iter().map(reading).collect())
}

#[test]
fn containers() {
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(amount("500 g")));
    assert_eq!(brimful, is(Field::Brimful, Problem::NotAVolume));
    let brimful = container_with(|record| record.brimful = Brimful::Weighed(amount("0 mL")));
    assert_eq!(brimful, is(Field::Brimful, Problem::NotPositive));
    let declared = container_with(|record| record.declared = Some(amount("500.1 mL")));
    assert_eq!(declared, is(Field::Declared, Problem::MoreThanBrimful));
    assert_eq!(container_with(|record| record.declared = Some(amount("500 mL"))), None);
    let headspace = |headspace| container_with(|record| record.headspace = headspace);
    assert_eq!(headspace(Headspace::Share(share("1"))), is(Field::Headspace, Problem::NotAShare));
    assert_eq!(headspace(Headspace::Volume(amount("1 g"))), is(Field::Headspace, Problem::NotAVolume));
    assert_eq!(headspace(Headspace::Volume(amount("-1 mL"))), is(Field::Headspace, Problem::Negative));
    assert_eq!(headspace(Headspace::Volume(amount("500 mL"))), is(Field::Headspace, Problem::NothingFits));
    assert_eq!(headspace(Headspace::Volume(amount("499.9 mL"))), None);
    let set = |set| container_with(|record| record.set = set);
    assert_eq!(set(vec![use_of(1, "0")]), is(Field::SetCount, Problem::NotPositive));
    assert_eq!(set(vec![use_of(1, "1"), use_of(1, "2")]), is(Field::SetCount, Problem::Twice));
    assert_eq!(set(vec![use_of(1, "1"), use_of(2, "2")]), None);
}

#[test]
fn shapes() {
    let shape = |brimful| container_with(|record| record.brimful = brimful);
    assert_eq!(shape(tapered("6 cm", "9 cm", "120 mm")), None);
    assert_eq!(shape(tapered("0 cm", "9 cm", "120 mm")), is(Field::Base, Problem::NotPositive));
    assert_eq!(shape(tapered("6 cm", "-9 cm", "120 mm")), is(Field::Rim, Problem::NotPositive));
    assert_eq!(shape(tapered("6 cm", "9 cm", "0 in")), is(Field::Height, Problem::NotPositive));
    assert_eq!(shape(poured(&[("2 in", "100 mL"), ("4 in", "250 mL")])), None);
    assert_eq!(shape(poured(&[("2 in", "100 mL")])), is(Field::Readings, Problem::TooFew));
    let rising = [("2 in", "100 mL"), ("50.8 mm", "250 mL"), ("4 in", "300 mL")];
    assert_eq!(shape(poured(&rising)), is(Field::Readings, Problem::Falls(2)));
    let falling = [("2 in", "100 mL"), ("3 in", "250 mL"), ("4 in", "250 mL")];
    assert_eq!(shape(poured(&falling)), is(Field::Readings, Problem::Falls(3)));
    assert_eq!(shape(poured(&[("2 in", "100 g"), ("4 in", "250 mL")])), is(Field::Readings, Problem::NotAVolume));
}

#[test]
fn shared_sets() {
    let set = |name: &str, uses| {
        wrong(Record::PackagingSet(PackagingSet { id: PackagingSetId::from_random(1), name: name.into(), uses }))
    };
    assert_eq!(set("Invented set", vec![use_of(1, "1"), use_of(2, "2")]), None);
    assert_eq!(set(" ", Vec::new()), is(Field::Name, Problem::Empty));
    assert_eq!(set("Invented set", vec![use_of(1, "0")]), is(Field::SetCount, Problem::NotPositive));
    let twice = container_with(|record| record.shared = vec![PackagingSetId::from_random(1); 2]);
    assert_eq!(twice, is(Field::SetCount, Problem::Twice));
}

#[test]
fn headspace_by_height_needs_heights() {
    let headspace = |brimful: Brimful, height| {
        container_with(|record| {
            record.brimful = brimful;
            record.headspace = Headspace::Height(length(height));
        })
    };
    let weighed = Brimful::Weighed(amount("500 mL"));
    assert_eq!(headspace(weighed, "1 cm"), is(Field::Headspace, Problem::NoHeights));
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "1 cm"), None);
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "120 mm"), is(Field::Headspace, Problem::NothingFits));
    assert_eq!(headspace(tapered("6 cm", "9 cm", "12 cm"), "-1 mm"), is(Field::Headspace, Problem::Negative));
}
