//! Two invented bars whose numbers are opened.

use brimwright::book::{
    Book, Brimful, Container, CostBasis, Drink, Headspace, Ice, IcePlace, Ingredient, Labour, Line, OverheadPer, Pack,
    PaymentFee, Reading, Record, Scaling, Settings, Stage, Tapered, Tax, TaxPlace, Tier,
};
use brimwright::foundation::measure::{Exact, LengthUnit, System, TypedLength};

use crate::support::{
    amount, book, container, density, drink, exact, grams, ingredient, line, money, offer, pack, seconds, settings,
    share, use_of, vessel,
};

/// Pressed apples and a fixed bit of ginger, in two bottles.
pub fn juice_bar() -> Book {
    let apples = Ingredient {
        name: "Apples".into(),
        trim_yield: share("0.9"),
        press_yield: Some(share("0.65")),
        juice_density: Some(density("1.048")),
        ..ingredient(1, [pack(1, "40 lb", "38")])
    };
    let ginger = Ingredient { name: "Ginger".into(), ..ingredient(2, [pack(1, "1 lb", "4")]) };
    let labour = Labour {
        per_drink: seconds("45"),
        per_litre: seconds("60"),
        per_batch: seconds("600"),
        batch: exact("10"),
        batch_volume: None,
    };
    let juice = Drink {
        name: "Apple ginger".into(),
        process_loss: share("0.05"),
        labour,
        treatment_fee: money("0.10"),
        ..drink(
            1,
            "8 fl oz",
            [
                Line { stage: Stage::Pressed, ..line(1, 1, "8 fl oz") },
                Line { scaling: Scaling::Fixed, ..line(2, 2, "0.5 oz") },
            ],
        )
    };
    let bottle = |id, name: &str, brimful| Container {
        name: name.into(),
        set: vec![use_of(1, "1")],
        headspace: Headspace::Share(share("0.05")),
        ..container(id, brimful)
    };
    let settings = Settings {
        wage: money("18"),
        overhead: money("0.25"),
        overhead_per: OverheadPer::DrinkMade,
        unsold: share("0.04"),
        tax: Tax { rate: share("0.08"), place: TaxPlace::InThePrice },
        payment_fee: PaymentFee { share: share("0.029"), fixed: money("0.10"), ..PaymentFee::default() },
        commission: share("0.1"),
        cost_basis: CostBasis::Everything,
        target: share("0.4"),
        endings: vec![money("0"), money("0.50")],
        ..settings()
    };
    let records = [
        Record::Ingredient(apples),
        Record::Ingredient(ginger),
        Record::Packaging(vessel(1, [pack(1, "120 ea", "60")])),
        Record::Container(bottle(1, "Large", "16 fl oz")),
        Record::Container(bottle(2, "Small", "12 fl oz")),
        Record::Drink(juice),
        Record::Offer(offer(1, 1, Some("8"))),
        Record::Offer(offer(1, 2, Some("6.50"))),
    ];
    book(settings, records)
}

/// A smoothie of bananas in steps of half a piece, oats soaked, ice blended in and floating, and
/// milk as the top-up; a tenth of air; in a tapered cup and a bottle known by pourings.
pub fn smoothie_bar() -> Book {
    let tiers = vec![Tier { from: exact("5"), price: money("18") }, Tier { from: exact("20"), price: money("15") }];
    let case = Pack { surcharge: money("2"), at_a_time: exact("6"), tiers, ..pack(1, "100 ea", "20") };
    let bananas = Ingredient {
        name: "Bananas".into(),
        trim_yield: share("0.64"),
        density: Some(density("0.95")),
        piece_weight: Some(grams("180")),
        ..ingredient(1, [case])
    };
    let oats =
        Ingredient { name: "Oats".into(), soak_yield: Some(share("2.5")), ..ingredient(2, [pack(1, "5 kg", "12")]) };
    let ice = Ingredient { name: "Ice".into(), ..ingredient(3, [pack(1, "10 kg", "3")]) };
    let milk =
        Ingredient { name: "Milk".into(), density: Some(density("1.03")), ..ingredient(4, [pack(1, "1 L", "1.10")]) };
    let scoop = |place| Some(Ice { place, packing: share("0.6"), melted: share("0") });
    let smoothie = Drink {
        name: "Banana oat".into(),
        air: share("0.1"),
        ..drink(
            1,
            "400 mL",
            [
                Line { stage: Stage::Trimmed, scaling: Scaling::Stepped(amount("0.5 ea")), ..line(1, 1, "1 ea") },
                Line { stage: Stage::SoakedOrBrewed, ..line(2, 2, "40 g") },
                Line { ice: scoop(IcePlace::BlendedIn), ..line(3, 3, "50 mL") },
                Line { ice: scoop(IcePlace::Floating), scaling: Scaling::Fixed, ..line(4, 3, "60 mL") },
                Line { scaling: Scaling::TopUp, ..line(5, 4, "150 mL") },
            ],
        )
    };
    let mm = |number| TypedLength::new(Exact::from(number), LengthUnit::Millimetre);
    let cup = Container {
        name: "Cup".into(),
        brimful: Brimful::Tapered(Tapered { base: mm(60), rim: mm(90), height: mm(120) }),
        headspace: Headspace::Height(mm(10)),
        ..container(1, "1 L")
    };
    let reading = |height, volume| Reading { height: mm(height), volume: amount(volume) };
    let bottle = Container {
        name: "Bottle".into(),
        brimful: Brimful::Poured(vec![reading(100, "400 mL"), reading(140, "500 mL")]),
        headspace: Headspace::Volume(amount("20 mL")),
        ..container(2, "1 L")
    };
    let records = [
        Record::Ingredient(bananas),
        Record::Ingredient(oats),
        Record::Ingredient(ice),
        Record::Ingredient(milk),
        Record::Container(cup),
        Record::Container(bottle),
        Record::Drink(smoothie),
        Record::Offer(offer(1, 1, Some("6"))),
        Record::Offer(offer(1, 2, None)),
    ];
    book(Settings { units: System::Metric, ..settings() }, records)
}
