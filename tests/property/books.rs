//! Generated records and edits. Ids come from a small range, so that edits meet; now and then a
//! value does not hold, so that edits are refused.

use brimwright::book::{
    Accepted, Allergen, Basis, Batch, Book, Bought, BuyingList, CommissionBase, Conditions, CostBasis, DrinkKind, Edit,
    Figure, FillRule, Filled, Filling, Goods, Ingredient, KeptConditions, Key, KindRate, Make, Offer, OnHand,
    OverheadPer, Pack, PaymentFee, Produce, Quoted, Ready, Record, Reductions, Scenario, ScenarioId, Scope, Season,
    SeenPrice, SeenPriceId, Service, Settings, Sold, Stage, Starting, StartingFigure, Tax, TaxPlace, Tier, TillColumns,
    ToBuy, Trial, TrialId, Week, Weighing,
};
use brimwright::foundation::measure::{
    Amount, Currency, Date, Density, Dimension, Exact, Mass, Money, Month, Scale, Share, System, Temperature, Unit,
    Volume,
};
use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::{select, subsequence};

use crate::drinks::drink;
use crate::number;
use crate::support::{container_id, day, drink_id, ingredient_id, offer_id, pack_id, packaging_id};
use crate::vessels::{PACKAGING_SETS, PACKAGINGS, container, packaging, packaging_set, packaging_set_id};

const INGREDIENTS: u64 = 4;
const CONTAINERS: u64 = 3;
const DRINKS: u64 = 3;
/// Prices seen, trials and scenarios, of each.
const OTHERS: u64 = 2;

pub fn money(below: i64) -> impl Strategy<Value = Money> {
    number(below, 3).prop_map(Money::from_major)
}

/// A share in [0, `hundredths` %).
pub fn share(hundredths: u32) -> impl Strategy<Value = Share> {
    (0..hundredths * 100).prop_map(|steps| Share::from_fraction(Exact::new(i64::from(steps), 4)))
}

/// A yield from 1 % to 100 %.
fn a_yield() -> impl Strategy<Value = Share> {
    (100..=10_000_i64).prop_map(|steps| Share::from_fraction(Exact::new(steps, 4)))
}

fn density() -> impl Strategy<Value = Density> {
    (500..1500_i64).prop_map(|steps| Density::from_grams_per_millilitre(Exact::new(steps, 3)))
}

pub fn name() -> impl Strategy<Value = String> {
    prop_oneof![40 => "[A-Z][a-zé ]{0,12}", 1 => Just(" ".to_string())]
}

pub fn units_of(units: &'static [Unit]) -> impl Strategy<Value = Amount> {
    (1..200_000_i64, select(units)).prop_map(|(steps, unit)| Amount::new(Exact::new(steps, 3), unit))
}

/// Money that may be below zero or have endless digits.
pub fn any_money() -> impl Strategy<Value = Money> {
    let third = Exact::ONE.over(Exact::from(3)).unwrap();
    prop_oneof![60 => money(80), 1 => Just(Money::from_major(Exact::new(-1, 2))), 1 => Just(Money::from_major(third))]
}

/// Prices for more at a time, no number twice.
fn tiers() -> impl Strategy<Value = Vec<Tier>> {
    let tier = (3..40_i64, money(80)).prop_map(|(halves, price)| Tier { from: Exact::new(5 * halves, 1), price });
    vec(tier, 0..4).prop_map(|mut tiers| {
        tiers.sort_by_key(|tier| tier.from);
        tiers.dedup_by_key(|tier| tier.from);
        tiers
    })
}

/// A day of a few weeks.
pub fn a_day() -> impl Strategy<Value = Date> {
    (0..60_i32).prop_map(|days| day("2026-10-26").plus_days(days))
}

/// Prices heard so many days before each other and the last; none of a price without a day.
fn earlier(last: Option<Date>, before: Vec<(i32, Money)>) -> Vec<Quoted> {
    let mut earlier = Vec::new();
    let Some(mut day) = last else { return earlier };
    for (days, price) in before {
        day = day.plus_days(-days);
        earlier.insert(0, Quoted { day, price });
    }
    earlier
}

/// What is on the shelf.
pub fn on_hand(units: &'static [Unit]) -> impl Strategy<Value = Option<OnHand>> {
    let amount = prop_oneof![20 => units_of(units), 1 => Just(Amount::new(Exact::ZERO, units[0]))];
    option::weighted(0.3, (amount, a_day()).prop_map(|(amount, day)| OnHand { amount, day }))
}

/// A weighing; now and then more comes out than went in.
fn weighing() -> impl Strategy<Value = Weighing> {
    let kilograms = |share: Exact| Amount::new(share.times(Exact::new(10, 0)).unwrap(), Unit::Kilogram);
    let left = || option::of(number(1, 2).prop_map(|share| share.plus(Exact::new(1, 2)).unwrap()));
    (a_day(), left(), left()).prop_map(move |(day, trimmed, pressed)| Weighing {
        day,
        bought: kilograms(Exact::ONE),
        trimmed: trimmed.map(kilograms),
        pressed: pressed.map(kilograms),
    })
}

/// A pack at one of these prices.
pub fn pack(units: &'static [Unit], price: impl Strategy<Value = Money> + 'static) -> impl Strategy<Value = Pack> {
    let surcharge = prop_oneof![3 => Just(Money::ZERO), 1 => money(5)];
    let at_a_time = prop_oneof![1 => Just(Exact::ONE), 1 => (2..40_i64).prop_map(|halves| Exact::new(5 * halves, 1))];
    let tiers = prop_oneof![1 => Just(Vec::new()), 1 => tiers()];
    let price = (price, option::of(a_day()), vec((1..40_i32, money(80)), 0..3));
    (1..=3_u64, "[a-z]{0,6}", units_of(units), price, surcharge, at_a_time, tiers)
        .prop_map(|(id, supplier, contents, (price, day, before), surcharge, at_a_time, tiers)| Pack {
            id: pack_id(id),
            supplier,
            contents,
            price,
            day,
            earlier: earlier(day, before),
            surcharge,
            at_a_time,
            tiers,
        })
        .boxed()
}

/// An ingredient that lacks nothing a stage could need, but perhaps a pack.
pub fn complete_ingredient(id: u64) -> impl Strategy<Value = Ingredient> {
    let soak = (100..30_000_i64).prop_map(|steps| Share::from_fraction(Exact::new(steps, 4)));
    let weight = number(2000, 2).prop_map(|grams| Mass::from_grams(grams.plus(Exact::ONE).unwrap()));
    let allergens = option::of(subsequence(Allergen::ALL.to_vec(), 0..4));
    let packs = prop_oneof![9 => vec(pack(Unit::ALL, any_money()), 1..3), 1 => Just(Vec::new())];
    let stock = (
        packs,
        on_hand(Unit::ALL),
        (option::of(select(Produce::ALL)), "[a-z]{0,3}", option::of("[a-z]{0,3}"), "[a-z]{0,3}"),
    );
    (a_yield(), a_yield(), soak, density(), density(), weight, allergens, stock)
        .prop_map(
            move |(
                trim_yield,
                press,
                soak,
                density,
                juice,
                weight,
                allergens,
                (packs, on_hand, (produce, nuts, parts, sold_as)),
            )| {
                Ingredient {
                    id: ingredient_id(id),
                    name: format!("Ingredient {id}"),
                    trim_yield,
                    press_yield: Some(press),
                    soak_yield: Some(soak),
                    density: Some(density),
                    juice_density: Some(juice),
                    piece_weight: Some(weight),
                    allergens,
                    packs,
                    on_hand,
                    weighings: Vec::new(),
                    produce,
                    nuts,
                    parts,
                    sold_as,
                    season: None,
                    starting: None,
                }
            },
        )
        .prop_flat_map(|whole| {
            let brought = starting(&whole);
            (Just(whole), option::weighted(0.4, season()), option::weighted(0.4, brought))
        })
        .prop_map(|(whole, season, starting)| Ingredient { season, starting, ..whole })
        .boxed()
}

/// Yields in another part of the year, which may pass its end.
fn season() -> impl Strategy<Value = Season> {
    (select(Month::ALL), select(Month::ALL), a_yield(), a_yield()).prop_map(|(from, to, trim_yield, press)| Season {
        from,
        to,
        trim_yield,
        press_yield: Some(press),
    })
}

/// What was brought of an ingredient: each figure as it is now, or as it was before it was weighed.
fn starting(of: &Ingredient) -> impl Strategy<Value = Starting> + use<> {
    let now = of.clone();
    let figures = subsequence(Figure::ALL.to_vec(), 0..=Figure::ALL.len());
    ("[a-z]{3,8}", figures, vec((option::of(1..3_000_i64), select(Basis::ALL)), Figure::ALL.len())).prop_map(
        move |(key, figures, values)| {
            let brought = |(figure, (weighed, basis)): (Figure, (Option<i64>, Basis))| {
                let before = weighed.map(|steps| Exact::new(steps, 3));
                let value = before.or(now.figure(figure)).unwrap_or(Exact::ONE);
                StartingFigure { figure, value, basis }
            };
            Starting { key, figures: figures.into_iter().zip(values).map(brought).collect() }
        },
    )
}

/// A season without a yield for pressing; a figure that was brought twice, or of nothing: both are refused.
fn oddly(whole: &mut Ingredient, odd: u32) {
    let figures = whole.starting.iter_mut().map(|starting| &mut starting.figures);
    match odd {
        0 => whole.season.iter_mut().for_each(|season| season.press_yield = None),
        1 => figures.for_each(|figures| figures.extend(figures.first().copied())),
        2 => figures.flatten().for_each(|brought| brought.value = Exact::ZERO),
        3 => whole.season.iter_mut().for_each(|season| season.trim_yield = Share::ZERO),
        _ => {}
    }
}

fn ingredient(id: u64) -> impl Strategy<Value = Ingredient> {
    let too_much = Share::from_fraction(Exact::new(14, 1));
    let trim = prop_oneof![20 => a_yield(), 1 => Just(too_much), 1 => Just(Share::ZERO)];
    let lacks = || prop::bool::weighted(0.1);
    let odd_tier = option::weighted(0.05, Just(Tier { from: Exact::ONE, price: Money::ZERO }));
    let odd = (odd_tier, vec(weighing(), 0..2), 0..30_u32);
    (complete_ingredient(id), name(), trim, lacks(), lacks(), lacks(), odd)
        .prop_map(|(mut whole, name, trim_yield, no_press, no_density, no_weight, (odd_tier, weighings, odd))| {
            oddly(&mut whole, odd);
            if let Some(pack) = whole.packs.first_mut() {
                pack.tiers.extend(odd_tier);
            }
            Ingredient {
                name,
                trim_yield,
                press_yield: whole.press_yield.filter(|_| !no_press),
                density: whole.density.filter(|_| !no_density),
                piece_weight: whole.piece_weight.filter(|_| !no_weight),
                weighings,
                ..whole
            }
        })
        .boxed()
}

/// What of a book's costs varies: rates by kind, tax on deposits, what commission and overhead go by, and what
/// brings less than the menu price; half of the books have nothing of the last.
fn varying_costs() -> impl Strategy<Value = (Vec<KindRate>, bool, CommissionBase, OverheadPer, Reductions)> {
    let kinds = subsequence(DrinkKind::ALL.to_vec(), 0..=2);
    let rates = (kinds, share(30), share(30)).prop_map(|(kinds, first, second)| {
        kinds.into_iter().zip([first, second]).map(|(kind, rate)| KindRate { kind, rate }).collect()
    });
    let some = (share(30), share(30), share(40), share(99)).prop_map(|(discounts, free, marked_down, less)| {
        Reductions { discounts, free, marked_down, marked_down_to: less.rest().unwrap() }
    });
    let reductions = prop_oneof![1 => Just(Reductions::default()), 1 => some];
    (rates, any::<bool>(), select(CommissionBase::ALL), select(OverheadPer::ALL), reductions)
}

/// Settings in one of three currencies, with endings of that currency.
pub fn settings() -> impl Strategy<Value = Settings> {
    let currency = select(vec!["USD", "JPY", "KWD"]).prop_map(|code| Currency::from_code(code).unwrap());
    let place = select(vec![TaxPlace::InThePrice, TaxPlace::AddedAtTheTill]);
    let tax = (share(30), place).prop_map(|(rate, place)| Tax { rate, place });
    let drinks = prop_oneof![2 => Just(Exact::ONE), 1 => (11..50_i64).prop_map(|tenths| Exact::new(tenths, 1))];
    let fee = (share(10), money(1), drinks).prop_map(|(share, fixed, drinks)| PaymentFee { share, fixed, drinks });
    let units = select(vec![System::UsCustomary, System::Metric, System::Imperial]);
    let endings = subsequence(vec![0, 25, 50, 75, 95, 99], 0..=6);
    let shares = (share(20), share(20), share(95));
    (currency, tax, fee, units, money(40), money(1), shares, select(CostBasis::ALL), endings, varying_costs())
        .prop_map(
            |(
                currency,
                tax,
                payment_fee,
                units,
                wage,
                overhead,
                (commission, unsold, target),
                cost_basis,
                endings,
                (tax_by_kind, deposit_taxed, commission_on, overhead_per, reductions),
            )| {
                let ending = |part| Money::from_major(Exact::new(part, if currency.digits() == 0 { 0 } else { 2 }));
                Settings {
                    currency,
                    units,
                    tax,
                    payment_fee,
                    commission,
                    wage,
                    overhead,
                    unsold,
                    target,
                    cost_basis,
                    endings: endings.into_iter().map(ending).collect(),
                    tax_by_kind,
                    deposit_taxed,
                    commission_on,
                    overhead_per,
                    reductions,
                    ..Settings::new("Generated test bar")
                }
            },
        )
        .boxed()
}

fn goods() -> impl Strategy<Value = Goods> {
    prop_oneof![
        3 => (1..=INGREDIENTS).prop_map(|id| Goods::Ingredient(ingredient_id(id))),
        1 => (1..=PACKAGINGS).prop_map(|id| Goods::Packaging(packaging_id(id))),
    ]
}

/// What was weighed, now and then counted by mistake.
pub fn filling() -> impl Strategy<Value = Filling> {
    let of = |dimension| move |unit: &Unit| unit.dimension() == dimension;
    let volumes: Vec<Unit> = Unit::ALL.iter().copied().filter(of(Dimension::Volume)).collect();
    let masses: Vec<Unit> = Unit::ALL.iter().copied().filter(of(Dimension::Mass)).collect();
    let volume = || (number(50, 3), select(volumes.clone())).prop_map(|(number, unit)| Amount::new(number, unit));
    let unit = prop_oneof![20 => select([volumes.clone(), masses].concat()), 1 => Just(Unit::Piece)];
    let net = (1..900_000_i64, unit).prop_map(|(steps, unit)| Amount::new(Exact::new(steps, 3), unit));
    let limits = (option::of(volume()), option::of(volume()));
    let celsius = (0..=400_i64).prop_map(|tenths| Temperature::new(Exact::new(tenths, 1), Scale::Celsius));
    let fahrenheit = (320..=1040_i64).prop_map(|tenths| Temperature::new(Exact::new(tenths, 1), Scale::Fahrenheit));
    let batch = (option::of((1..=2000_u32).prop_map(Exact::from)), option::of(select(Accepted::ALL)));
    let rule = (select(FillRule::ALL), select(Accepted::ALL));
    (rule, limits, batch, option::of(prop_oneof![celsius, fahrenheit]), vec(net, 0..6))
        .prop_map(|((rule, accepted), (allowed, least_headspace), (batch, batch_risk), measured_at, nets)| Filling {
            allowed,
            least_headspace,
            batch,
            batch_risk,
            measured_at,
            nets,
            ..Filling::new(rule, accepted)
        })
        .boxed()
}

/// An offer at one of these prices.
fn offer(price: impl Strategy<Value = Money> + 'static) -> impl Strategy<Value = Record> {
    let served = (option::weighted(0.4, filling()), option::of(select(Service::ALL)));
    let weekly = (option::of(number(900, 0)), option::weighted(0.3, monday()));
    (1..=DRINKS, 1..=CONTAINERS, option::of(price), weekly, served)
        .prop_map(|(drink, container, price, (weekly, weekly_from), (filling, service))| {
            let offer = Offer::new(offer_id(drink, container));
            Record::Offer(Offer { price, weekly, weekly_from, filling, service, ..offer })
        })
        .boxed()
}

/// A day of a few weeks; mostly a Monday.
fn monday() -> impl Strategy<Value = Date> {
    prop_oneof![
        40 => (0..6_i32).prop_map(|week| day("2026-10-26").plus_weeks(week)),
        1 => Just(day("2026-11-25")),
    ]
}

/// What one brings, below zero too.
fn contribution() -> impl Strategy<Value = Money> {
    (-900_i64..9_000).prop_map(|steps| Money::from_major(Exact::new(steps, 3)))
}

fn week() -> impl Strategy<Value = Record> {
    let units = prop_oneof![20 => number(900, 1), 1 => Just(Exact::new(-1, 0))];
    let brings = (contribution(), option::of(contribution()));
    let sold =
        (1..=DRINKS, 1..=CONTAINERS, units, brings).prop_map(|(drink, container, units, (contribution, overhead))| {
            let (drink, container) = (drink_id(drink), container_id(container));
            Sold { drink, container, units, contribution, overhead }
        });
    (monday(), vec(sold, 0..5))
        .prop_map(|(monday, mut sold)| {
            sold.dedup_by_key(|sold| sold.offer());
            Record::Week(Week { monday, sold })
        })
        .boxed()
}

fn seen_price() -> impl Strategy<Value = Record> {
    (1..=OTHERS, name(), select(DrinkKind::ALL), units_of(Unit::ALL), money(40), monday(), -6..=6_i32)
        .prop_map(|(id, place, kind, size, price, monday, days)| {
            let id = SeenPriceId::from_random(id);
            Record::SeenPrice(SeenPrice { id, place, kind, size, price, day: monday.plus_days(days) })
        })
        .boxed()
}

fn scope() -> impl Strategy<Value = Scope> {
    prop_oneof![
        Just(Scope::Menu),
        select(DrinkKind::ALL).prop_map(Scope::Kind),
        (1..=DRINKS).prop_map(|id| Scope::Drink(drink_id(id))),
    ]
}

fn trial() -> impl Strategy<Value = Record> {
    (1..=OTHERS, name(), scope(), monday(), 0..5_i32, option::of(-1..5_i32))
        .prop_map(|(id, name, scope, first, before, since)| {
            let start = first.plus_weeks(before);
            let last = since.map(|weeks| start.plus_weeks(weeks));
            Record::Trial(Trial { id: TrialId::from_random(id), name, scope, first, start, last })
        })
        .boxed()
}

/// Conditions of goods, packs and containers that are there or not.
fn conditions() -> impl Strategy<Value = Conditions> {
    let goods = prop_oneof![
        (1..=INGREDIENTS).prop_map(|id| Goods::Ingredient(ingredient_id(id))),
        (1..=OTHERS).prop_map(|id| Goods::Packaging(packaging_id(id))),
    ];
    let bought = (goods, 1..=3_u64, option::of(money(80))).prop_map(|(goods, pack, price)| Bought {
        goods,
        pack: pack_id(pack),
        price,
    });
    let filled = (1..=CONTAINERS, units_of(&[Unit::Millilitre, Unit::UsFluidOunce]))
        .prop_map(|(container, fill)| Filled { container: container_id(container), fill });
    let part = || option::of(share(100));
    let shares = (part(), part(), part(), part());
    (scope(), share(100), option::of(bought), shares, option::of(money(80)), option::of(filled)).prop_map(
        |(part, ingredients, bought, (target, waste, card_fee, commission), wage, fills)| Conditions {
            part,
            ingredients,
            bought: bought.into_iter().collect(),
            target,
            waste,
            wage,
            card_fee,
            commission,
            fills: fills.into_iter().collect(),
        },
    )
}

fn scenario() -> impl Strategy<Value = Record> {
    let offer = offer(any_money()).prop_map(|record| record.offer().cloned());
    let conditions = prop_oneof![Just(Conditions::default()), conditions()];
    (1..=OTHERS, name(), vec(offer, 0..5), conditions)
        .prop_map(|(id, name, offers, conditions)| {
            let mut offers: Vec<Offer> = offers.into_iter().flatten().collect();
            offers.dedup_by_key(|offer| offer.id());
            Record::Scenario(Scenario {
                id: ScenarioId::from_random(id),
                name,
                offers,
                conditions: KeptConditions::of(&conditions),
            })
        })
        .boxed()
}

fn batch() -> impl Strategy<Value = Record> {
    let units = prop_oneof![20 => number(90, 0), 1 => Just(Exact::new(5, 1)), 1 => Just(Exact::new(-1, 0))];
    let make = (1..=DRINKS, 1..=CONTAINERS, units, any::<bool>()).prop_map(|(drink, container, units, filled)| Make {
        drink: drink_id(drink),
        container: container_id(container),
        units,
        filled,
        off_shelf: if filled { Exact::ONE } else { Exact::ZERO },
    });
    let ready = (1..=INGREDIENTS, select(Stage::ALL))
        .prop_map(|(ingredient, stage)| Ready { ingredient: ingredient_id(ingredient), stage });
    (monday(), vec(make, 0..5), vec(ready, 0..3))
        .prop_map(|(day, mut makes, mut ready)| {
            makes.dedup_by_key(|make| make.offer());
            ready.dedup();
            Record::Batch(Batch { day, makes, ready })
        })
        .boxed()
}

fn buying_list() -> impl Strategy<Value = Record> {
    let packs = prop_oneof![20 => number(90, 1), 1 => Just(Exact::new(-1, 0))];
    let line = (goods(), 1..=3_u64, packs, any::<bool>(), option::of(money(40)))
        .prop_map(|(goods, pack, packs, bought, paid)| ToBuy { goods, pack: pack_id(pack), packs, bought, paid });
    (a_day(), vec(line, 0..4))
        .prop_map(|(day, mut lines)| {
            lines.dedup_by_key(|line| (line.goods, line.pack));
            Record::BuyingList(BuyingList { day, lines })
        })
        .boxed()
}

/// Sales and what is asked of them, and what is made and bought.
fn asked() -> impl Strategy<Value = Record> {
    prop_oneof![3 => week(), 1 => seen_price(), 1 => trial(), 2 => scenario(), 2 => batch(), 1 => buying_list()]
}

fn till() -> impl Strategy<Value = Option<TillColumns>> {
    let head = || prop_oneof![30 => "[A-Z][a-z]{0,8}", 1 => Just(String::new())];
    let columns = (head(), option::of(head()), head(), option::of(head()))
        .prop_map(|(item, size, units, day)| TillColumns { item, size, units, day });
    option::weighted(0.2, columns)
}

/// Settings with what was read of a till, and the steps and days of the counter.
fn odd_settings() -> impl Strategy<Value = Record> {
    let days = option::of(prop_oneof![9 => 1..90_i64, 1 => Just(0)]);
    let step = || option::of(units_of(&[Unit::Gram, Unit::Gram, Unit::Millilitre]));
    (settings(), till(), days, step(), step())
        .prop_map(|(settings, till, days, scale_step, jug_step)| {
            let price_days = days.map(|days| Exact::new(days, 0));
            Record::Settings(Box::new(Settings { till, price_days, scale_step, jug_step, ..settings }))
        })
        .boxed()
}

fn record() -> impl Strategy<Value = Record> {
    prop_oneof![
        1 => odd_settings(),
        3 => (1..=INGREDIENTS).prop_flat_map(ingredient).prop_map(Record::Ingredient),
        1 => (1..=PACKAGINGS).prop_flat_map(packaging).prop_map(Record::Packaging),
        1 => (1..=PACKAGING_SETS).prop_flat_map(packaging_set).prop_map(Record::PackagingSet),
        2 => (1..=CONTAINERS).prop_flat_map(container).prop_map(Record::Container),
        3 => (1..=DRINKS).prop_flat_map(|id| drink(id, INGREDIENTS)).prop_map(Record::Drink),
        2 => offer(any_money()),
        4 => asked(),
    ]
}

fn key() -> impl Strategy<Value = Key> {
    prop_oneof![
        Just(Key::Settings),
        (1..=INGREDIENTS).prop_map(|id| Key::Ingredient(ingredient_id(id))),
        (1..=PACKAGINGS).prop_map(|id| Key::Packaging(packaging_id(id))),
        (1..=PACKAGING_SETS).prop_map(|id| Key::PackagingSet(packaging_set_id(id))),
        (1..=CONTAINERS).prop_map(|id| Key::Container(container_id(id))),
        (1..=DRINKS).prop_map(|id| Key::Drink(drink_id(id))),
        (1..=DRINKS, 1..=CONTAINERS).prop_map(|(drink, container)| Key::Offer(offer_id(drink, container))),
        monday().prop_map(Key::Week),
        (1..=OTHERS).prop_map(|id| Key::SeenPrice(SeenPriceId::from_random(id))),
        (1..=OTHERS).prop_map(|id| Key::Trial(TrialId::from_random(id))),
        (1..=OTHERS).prop_map(|id| Key::Scenario(ScenarioId::from_random(id))),
        monday().prop_map(Key::Batch),
        Just(Key::BuyingList),
    ]
}

fn offer_price() -> impl Strategy<Value = Edit> {
    (1..=DRINKS, 1..=CONTAINERS, option::of(any_money()))
        .prop_map(|(drink, container, price)| Edit::SetPrice { offer: offer_id(drink, container), price })
}

/// Any edit, several as one among them.
pub fn edit() -> impl Strategy<Value = Edit> {
    let pack_price = (goods(), 1..=3_u64, any_money(), option::of(a_day()))
        .prop_map(|(goods, id, price, day)| Edit::SetPackPrice { goods, pack: pack_id(id), price, day });
    let one = prop_oneof![
        5 => record().prop_map(Edit::Put),
        2 => key().prop_map(Edit::Remove),
        3 => pack_price,
        2 => offer_price(),
    ];
    one.prop_recursive(2, 8, 4, |inner| vec(inner, 0..4).prop_map(Edit::Together))
}

/// A book with most of what the edits speak of.
pub fn book() -> impl Strategy<Value = Book> {
    let ingredients: Vec<_> =
        (1..=INGREDIENTS).map(|id| complete_ingredient(id).prop_map(Record::Ingredient)).collect();
    let packagings: Vec<_> = (1..=PACKAGINGS).map(|id| packaging(id).prop_map(Record::Packaging)).collect();
    let containers: Vec<_> = (1..=CONTAINERS).map(|id| container(id).prop_map(Record::Container)).collect();
    let drinks: Vec<_> = (1..=DRINKS).map(|id| drink(id, INGREDIENTS).prop_map(Record::Drink)).collect();
    let sets: Vec<_> = (1..=PACKAGING_SETS).map(|id| packaging_set(id).prop_map(Record::PackagingSet)).collect();
    let offers = vec(offer(money(40)), 0..6);
    (settings(), ingredients, packagings, sets, containers, drinks, offers, vec(asked(), 0..6)).prop_map(
        |(settings, ingredients, packagings, sets, containers, drinks, offers, asked)| {
            let mut book = Book::new(settings);
            for record in [ingredients, packagings, sets, containers, drinks, offers, asked].into_iter().flatten() {
                // What is refused is not there: edits then meet its absence.
                let _ = book.apply(&Edit::Put(record));
            }
            book
        },
    )
}

/// A volume between a shot and a jug.
pub fn fill() -> impl Strategy<Value = Volume> {
    (100_000..1_500_000_i64).prop_map(|steps| Volume::from_millilitres(Exact::new(steps, 3)))
}
