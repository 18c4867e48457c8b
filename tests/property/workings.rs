//! Every number that can be opened: each step of its working follows from those before it, and
//! the working ends in the engine's own figure.

use brimwright::book::{
    Accepted, Book, Brimful, Container, Edit, Filling, Goods, Headspace, Key, Offer, OfferId, Part, Reading, Record,
    Scope, Stage,
};
use brimwright::drink::cost::{bought_cost, usable_cost};
use brimwright::drink::fill::{Rule as Metrology, fill as filled, tolerance, written_volume};
use brimwright::drink::ledger::{Ledger, Priced};
use brimwright::drink::packaged::{density_of, packaged_fill};
use brimwright::drink::price::{asked, ceiling, round_up};
use brimwright::foundation::measure::{
    Amount, Exact, LengthUnit, Money, NumberStyle, Share, TypedLength, Unit, Volume,
};
use brimwright::sizes::side_by_side::{side_by_side, sold_in};
use brimwright::words::{Speaker, Working};
use brimwright::working::{
    AtPrice, Fact, Figure, Name, OfGoods, OfOffer, OfPackaged, OfPrice, OfSize, Rule, Shown, Step, of, opened,
};
use proptest::option;
use proptest::prelude::*;

use crate::books::{fill, filling, money};
use crate::cases::cases;
use crate::menus::menu;
use crate::rules::{follows, shaped};
use crate::support::{self, amount, container_id, exact, offer_id};

fn computed(ledger: &Ledger) -> impl Iterator<Item = (OfferId, &Priced)> {
    ledger.offers().filter_map(|(id, priced)| Some((id, priced.as_ref().ok()?)))
}

/// The numbers of an offer.
fn of_offer(priced: &Priced) -> Vec<OfOffer> {
    let mut all = vec![
        OfOffer::Factor,
        OfOffer::Liquid,
        OfOffer::Density,
        OfOffer::Time,
        OfOffer::Cost,
        OfOffer::Covered,
        OfOffer::TargetWithoutTax,
        OfOffer::Exact,
        OfOffer::Suggested,
    ];
    for line in &priced.scaled.lines {
        all.extend([OfOffer::InDrink(line.line), OfOffer::ToUse(line.line), OfOffer::LineCost(line.line)]);
    }
    all.extend((0..priced.cost.packaging.len()).map(OfOffer::PackagingCost));
    all.extend(Part::ALL.map(OfOffer::Part));
    for at in [AtPrice::Asked, AtPrice::Suggested, AtPrice::Point(support::money("7.77"))] {
        let of = [
            OfPrice::WithoutTax,
            OfPrice::CustomerPays,
            OfPrice::Revenue,
            OfPrice::Fees,
            OfPrice::Margin,
            OfPrice::Contribution,
            OfPrice::MayCost,
            OfPrice::IngredientsMayCost,
        ];
        all.extend(of.map(|of| OfOffer::At(at, of)));
    }
    all
}

const OF_SIZE: [OfSize; 8] = [
    OfSize::PricePerVolume,
    OfSize::CostPerVolume,
    OfSize::ContributionPerVolume,
    OfSize::ContributionPerMinute,
    OfSize::AgainstSmallest,
    OfSize::ExtraPrice,
    OfSize::ExtraCost,
    OfSize::Kept,
];

const OF_PACKAGED: [OfPackaged; 8] = [
    OfPackaged::Target,
    OfPackaged::Giveaway,
    OfPackaged::Highest,
    OfPackaged::Room,
    OfPackaged::GiveawayCost,
    OfPackaged::GiveawayCostInAYear,
    OfPackaged::Mean,
    OfPackaged::Spread,
];

/// Every number of a book that can be opened.
fn all(book: &Book, ledger: &Ledger) -> Vec<Shown> {
    let mut all = Vec::new();
    for container in book.containers() {
        all.extend([Shown::Brimful(container.id), Shown::Poured(container.id)]);
    }
    for ingredient in book.ingredients() {
        for pack in &ingredient.packs {
            all.push(Shown::Piece(Goods::Ingredient(ingredient.id), pack.id));
            for stage in Stage::ALL {
                for unit in [Unit::Millilitre, Unit::UsFluidOunce, Unit::Pound, Unit::Piece] {
                    let amount = Amount::new(Exact::ONE, unit);
                    all.push(Shown::Usable { ingredient: ingredient.id, pack: pack.id, stage: *stage, amount });
                }
            }
        }
    }
    for packaging in book.packagings() {
        all.extend(packaging.packs.iter().map(|pack| Shown::Piece(Goods::Packaging(packaging.id), pack.id)));
    }
    for (id, priced) in computed(ledger) {
        all.extend(of_offer(priced).into_iter().map(|of| Shown::Offer(id, of)));
        all.extend(OF_SIZE.map(|of| Shown::Size(id, of)));
        all.extend(OF_PACKAGED.map(|of| Shown::Packaged(id, of)));
    }
    all
}

/// What the engine says; none where there is no such number.
fn engine(book: &Book, ledger: &Ledger, shown: Shown) -> Option<Exact> {
    let of_container = |id| filled(book.container(id).unwrap()).unwrap();
    match shown {
        Shown::Brimful(id) => Some(of_container(id).brimful.millilitres()),
        Shown::Poured(id) => Some(of_container(id).volume.millilitres()),
        Shown::Usable { ingredient, pack, stage, amount } => {
            let ingredient = book.ingredient(ingredient).unwrap();
            let pack = ingredient.packs.iter().find(|it| it.id == pack).unwrap();
            Some(usable_cost(ingredient, pack, stage, amount.measure().unwrap()).unwrap().major())
        }
        Shown::Piece(goods, pack) => {
            let pack = book.packs(goods).iter().find(|it| it.id == pack).unwrap();
            Some(bought_cost(pack, Exact::ONE).unwrap().major())
        }
        Shown::Offer(id, of) => offer(book, id, ledger.get(id).unwrap().as_ref().unwrap(), of),
        Shown::Packaged(id, of) => {
            let fill = packaged_fill(book, book.offer(id).unwrap()).ok()?;
            Some(match of {
                OfPackaged::Target => fill.target.target.millilitres(),
                OfPackaged::Giveaway => fill.target.giveaway.millilitres(),
                OfPackaged::Highest => fill.target.highest.millilitres(),
                OfPackaged::Room => fill.room.millilitres(),
                OfPackaged::GiveawayCost => fill.giveaway_cost.major(),
                OfPackaged::GiveawayCostInAYear => fill.giveaway_cost_in_a_year.major(),
                OfPackaged::Mean => fill.spread.mean,
                OfPackaged::Spread => fill.spread.deviation,
            })
        }
        Shown::Size(id, of) => {
            let drink = Scope::Drink(id.drink);
            let rows = side_by_side(book, ledger, drink, &sold_in(book, drink)).unwrap().sizes;
            let row = rows.into_iter().find(|row| row.container == id.container).unwrap();
            let money = |money: Money| Some(money.major());
            match of {
                OfSize::CostPerVolume => money(row.cost_per_volume),
                OfSize::PricePerVolume => money(row.sold?.price_per_volume),
                OfSize::ContributionPerVolume => money(row.sold?.contribution_per_volume),
                OfSize::ContributionPerMinute => money(row.sold?.contribution_per_minute?),
                OfSize::AgainstSmallest => Some(row.sold?.against_smallest.fraction()),
                OfSize::ExtraPrice => money(row.step?.extra_price),
                OfSize::ExtraCost => money(row.step?.extra_cost),
                OfSize::Kept => row.step?.kept.map(Share::fraction),
            }
        }
    }
}

fn offer(book: &Book, id: OfferId, priced: &Priced, of: OfOffer) -> Option<Exact> {
    let line = |id| priced.scaled.lines.iter().find(|line| line.line == id);
    let suggestion = priced.suggestion.as_ref().ok();
    Some(match of {
        OfOffer::Written(_) => unreachable!("asked of the recipe"),
        OfOffer::Liquid => priced.scaled.liquid?.grams_per_millilitre(),
        OfOffer::Factor => priced.scaled.factor,
        OfOffer::Density => density_of(book, priced).ok()?.grams_per_millilitre(),
        OfOffer::InDrink(id) => line(id)?.in_drink.base(),
        OfOffer::ToUse(id) => line(id)?.to_use.base(),
        OfOffer::LineCost(id) => priced.cost.lines.iter().find(|it| it.line == id)?.cost.major(),
        OfOffer::PackagingCost(place) => priced.cost.packaging[place].cost.major(),
        OfOffer::Time => priced.cost.time.seconds(),
        OfOffer::Part(part) => priced.cost.part(part).unwrap().major(),
        OfOffer::Cost => priced.cost.total().major(),
        OfOffer::Covered => priced.cost.covered(priced.terms.cost_basis).major(),
        OfOffer::TargetWithoutTax => suggestion?.without_tax.major(),
        OfOffer::Exact => suggestion?.exact.major(),
        OfOffer::Suggested => suggestion?.menu.major(),
        OfOffer::At(at, of) => {
            let menu = match at {
                AtPrice::Asked => priced.asked?.menu,
                AtPrice::Suggested => suggestion?.menu,
                AtPrice::Point(menu) => menu,
            };
            let asked = asked(&priced.cost, &priced.terms, menu).unwrap();
            let drink = book.drink(id.drink).unwrap();
            let ceiling = ceiling(book, drink, &priced.cost, &priced.terms, menu).unwrap();
            match of {
                OfPrice::WithoutTax => asked.without_tax.major(),
                OfPrice::CustomerPays => asked.customer_pays.major(),
                OfPrice::Revenue => asked.revenue.major(),
                OfPrice::Fees => asked.fees.major(),
                OfPrice::Margin => asked.margin.fraction(),
                OfPrice::Contribution => asked.contribution.major(),
                OfPrice::MayCost => ceiling.cost.major(),
                OfPrice::IngredientsMayCost => ceiling.ingredients.major(),
            }
        }
    })
}

/// Whether the number stands in the record: as it is stored, or as what is not stored.
fn is_typed(book: &Book, step: &Step, key: Key) -> bool {
    let stored = serde_json::to_string(&book.record(key).expect("a record")).unwrap();
    let typed = match step.figure {
        Figure::Amount(amount) => amount.to_string(),
        Figure::Length(length) => length.to_string(),
        figure => figure.base().unwrap().to_string(),
    };
    let unwritten = typed == "0" || typed == "1";
    unwritten || stored.contains(&format!("\"{typed}\""))
}

/// No place of a sentence stays empty, and what is worked out ends with its figure.
fn is_said(book: &Book, step: &Step) {
    let speaker = Speaker::of(book, NumberStyle::english("$"));
    let words = Working { book, speaker: &speaker };
    let said = words.sentence(step);
    let gap = said.starts_with(' ') || ["  ", " .", " :", " ,", "{", "}"].iter().any(|gap| said.contains(gap));
    assert!(!gap && said.ends_with('.'), "{said:?}");
    assert!(step.from.is_empty() || said.contains(&words.figure(step)), "{said:?}");
    assert!(!words.name(step).is_empty(), "{step:?}");
}

/// What all containers here are declared to hold.
fn declared(book: &Book) -> Volume {
    book.container(container_id(1)).unwrap().declared.unwrap().volume().unwrap().unwrap()
}

fn check(book: &Book, ledger: &Ledger, step: &Step) {
    is_said(book, step);
    let figure = step.figure.base().unwrap();
    let from: Vec<Exact> = step.from.iter().map(|before| before.figure.base().unwrap()).collect();
    match step.rule {
        Rule::Given(key) => assert!(from.is_empty() && is_typed(book, step, key), "{step:?}"),
        Rule::Fact(fact) => {
            let expected = match fact {
                Fact::Whole => Some(exact("1")),
                Fact::Hour => Some(exact("3600")),
                Fact::Minute => Some(exact("60")),
                Fact::Litre => Some(exact("1000")),
                // IAPWS R10-06 (2009), 0 °C: 916.72 kg/m³, to three digits.
                Fact::Ice => Some(exact("0.917")),
                // IAPWS R6-95 (2018), 20 °C: 998.2 kg/m³, to four digits.
                Fact::Melted => Some(exact("0.9982")),
                // As in `tests/reference/spreads.rs`.
                Fact::Quantile(Accepted::OneInAThousand) => Some(exact("3.090232")),
                Fact::Quantile(Accepted::OnePercent) => Some(exact("2.326348")),
                Fact::Quantile(Accepted::TwoPercent) => Some(exact("2.053749")),
                Fact::Quantile(Accepted::TwoAndAHalfPercent) => Some(exact("1.959964")),
                Fact::Quantile(Accepted::FivePercent) => Some(exact("1.644854")),
                Fact::UpToFullest | Fact::LeastSpreads => Some(exact("3")),
                // Water is lightest at 40 °C, 0.992216 g/mL (`tests/reference/water.rs`).
                Fact::Water => Some(figure.clamp(exact("0.992"), Exact::ONE)),
                Fact::Year => Some(exact("52")),
                Fact::TolerableError => {
                    let below = tolerance(Metrology::Package, declared(book)).unwrap().map(|it| it.below);
                    Some(below.expect("a size that the directive knows").millilitres())
                }
                Fact::Shown | Fact::OnTheSpot => None,
            };
            assert_eq!(expected.unwrap_or(figure), figure);
        }
        Rule::Opens(shown) => {
            let opened = of(book, ledger, shown).unwrap().expect("a number that is referred to");
            assert_eq!(opened.figure.base().unwrap(), figure, "{shown:?}");
        }
        Rule::Shape => shaped(step, &from),
        Rule::Solved => {
            if let [first, rest @ ..] = &from[..] {
                assert!(follows(*first, Rule::Sum, rest), "{step:?}");
            }
        }
        Rule::ToWhole => {
            assert_eq!(figure.rounded(0), figure);
            assert!(figure.minus(from[0]).unwrap().abs() <= exact("0.500000001"), "{step:?}");
        }
        Rule::UpToEnding => {
            let settings = book.settings();
            assert_eq!(round_up(Money::from_major(figure), settings).unwrap().major(), figure);
            let more = figure.minus(from[0]).unwrap();
            assert!(more <= settings.ending_period().major(), "{step:?}");
            // Below the exact price only where its margin, as it is rounded, is on target all the same.
            if more < exact("-0.000000000001") {
                let Rule::Opens(Shown::Offer(id, _)) = step.from[0].rule else { panic!("{step:?}") };
                let priced = ledger.get(id).unwrap().as_ref().unwrap();
                let suggestion = priced.suggestion.as_ref().unwrap();
                assert_eq!(suggestion.menu.major(), figure, "{step:?}");
                assert!(priced.terms.reached_by(suggestion.margin), "{step:?}");
            }
        }
        Rule::TierReached => {
            let reached = step.from.iter().zip(&from).filter_map(|(tier, price)| match tier.name {
                Name::Of(_, OfGoods::PriceFrom(packs)) if packs <= from[0] => Some((packs, *price)),
                _ => None,
            });
            assert_eq!(reached.max().unwrap().1, figure);
        }
        Rule::Sum
        | Rule::Difference
        | Rule::Product
        | Rule::Quotient
        | Rule::Proportion
        | Rule::Larger
        | Rule::Root
        | Rule::Mean
        | Rule::Deviation => {
            assert!(follows(figure, step.rule, &from), "{step:?}");
        }
    }
    for before in &step.from {
        check(book, ledger, before);
    }
}

fn refers(step: &Step) -> Vec<Shown> {
    let own = match step.rule {
        Rule::Opens(shown) => Some(shown),
        _ => None,
    };
    own.into_iter().chain(step.from.iter().flat_map(refers)).collect()
}

/// No number stands in its own working, however far down.
fn ends(opened: &[(Shown, Step)]) -> bool {
    let mut left: Vec<(Shown, Vec<Shown>)> = opened.iter().map(|(shown, step)| (*shown, refers(step))).collect();
    loop {
        let before = left.len();
        let open: Vec<Shown> = left.iter().map(|(shown, _)| *shown).collect();
        left.retain(|(_, refers)| refers.iter().any(|shown| open.contains(shown)));
        if left.is_empty() || left.len() == before {
            return left.is_empty();
        }
    }
}

/// A filling that has a target: an allowance for the rule that needs one, and two weighings at
/// least; even ones, or those generated and therefore far apart.
fn with_target(mut filling: Filling, declared: Amount, even: bool) -> Filling {
    filling.allowed = filling.allowed.filter(|allowed| allowed.number.is_positive()).or(Some(amount("7.5 mL")));
    filling.nets.retain(|net| net.unit != Unit::Piece);
    if even {
        filling.nets.clear();
    }
    filling.nets.extend([declared, Amount::new(declared.number.plus(exact("0.5")).unwrap(), declared.unit)]);
    filling
}

/// The menu's drink in a bottle too, known by three pourings and left empty so far under its rim,
/// and in a jar half as large again, all at these prices and declared as so much or, where that is
/// less, as what holds least. All are packaged ahead; a filling that does not hold is left out,
/// and the first has a target.
fn three_sizes(
    mut book: Book,
    (brimful, empty, most): (Volume, i64, Volume),
    prices: [Option<Money>; 3],
    [first, second, third]: [Filling; 3],
    even: bool,
) -> Book {
    let own = book.container(container_id(1)).unwrap().clone();
    let declared = filled(&own).unwrap().brimful.min(brimful).min(most).millilitres().floor();
    let declared = Amount::new(declared, Unit::Millilitre);
    let own = Container { declared: Some(declared), ..own };
    let reading = |height, hundredths| Reading {
        height: TypedLength::new(Exact::from(height), LengthUnit::Millimetre),
        volume: Amount::new(
            brimful.times(Exact::new(hundredths, 2)).unwrap().millilitres().rounded(6),
            Unit::Millilitre,
        ),
    };
    let bottle = Container {
        id: container_id(2),
        brimful: Brimful::Poured(vec![reading(60, 50), reading(100, 80), reading(140, 100)]),
        headspace: Headspace::Height(TypedLength::new(Exact::new(empty, 1), LengthUnit::Millimetre)),
        ..own.clone()
    };
    let jar = Container {
        id: container_id(3),
        brimful: Brimful::Weighed(reading(0, 150).volume),
        headspace: Headspace::Share(Share::ZERO),
        ..own.clone()
    };
    for container in [own, bottle, jar] {
        book.apply(&Edit::Put(Record::Container(container))).unwrap();
    }
    let ids = [1, 2, 3].map(|container| offer_id(1, container));
    let fillings = [with_target(first, declared, even), second, third];
    for ((id, price), filling) in ids.into_iter().zip(prices).zip(fillings) {
        let offer = Offer { price, weekly: price.map(|_| exact("12.5")), ..Offer::new(id) };
        book.apply(&Edit::Put(Record::Offer(offer.clone()))).unwrap();
        let _ = book.apply(&Edit::Put(Record::Offer(Offer { filling: Some(filling), ..offer })));
    }
    book
}

proptest! {
    #![proptest_config(cases(128))]
    #[test]
    fn every_step_follows_from_those_before(
        menu in menu(),
        brimful in fill(),
        empty in 0..500_i64,
        prices in [option::of(money(40)), option::of(money(40)), option::of(money(40))],
        most in fill(),
        fillings in [filling(), filling(), filling()],
        even in any::<bool>(),
    ) {
        let prices = prices.map(|price| price.filter(|price| price.is_positive()));
        let book = three_sizes(menu.book.clone(), (brimful, empty, most), prices, fillings, even);
        prop_assert!(packaged_fill(&book, book.offer(offer_id(1, 1)).unwrap()).is_ok());
        let ledger = Ledger::of(&book);
        for shown in all(&book, &ledger) {
            let working = of(&book, &ledger, shown).unwrap_or_else(|error| panic!("{error:?} for {shown:?}"));
            let figure = working.as_ref().map(|step| step.figure.base().unwrap());
            prop_assert_eq!(figure, engine(&book, &ledger, shown), "{:?}", shown);
            if let Some(step) = working {
                check(&book, &ledger, &step);
                prop_assert!(ends(&opened(&book, &ledger, shown).unwrap()), "{:?}", shown);
            }
        }
        for (id, priced) in computed(&ledger) {
            let written = priced.scaled.lines.iter().map(|line| {
                let step = of(&book, &ledger, Shown::Offer(id, OfOffer::Written(line.line))).unwrap().expect("a line");
                check(&book, &ledger, &step);
                step.figure.base().unwrap()
            });
            let written: Vec<Exact> = written.collect();
            let together = written_volume(&book, menu.drink()).unwrap().millilitres();
            // Floating ice takes its room by the drink as poured, and in the recipe as written by that one.
            prop_assert!(menu.has_floating_ice() || follows(together, Rule::Sum, &written), "{:?}", written);
        }
    }
}
