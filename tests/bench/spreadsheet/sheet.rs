//! The generated book as sheets of a spreadsheet: the cells that a careful owner would write, whose
//! formulas compute what the engine computes of each offer.
//!
//! What many cells share is computed once, such as what a gram of an ingredient costs, and every
//! cell names the cells that it needs by their addresses: nothing is looked up. Both are kind to the
//! spreadsheet engine.

use std::collections::BTreeMap;

use brimwright::book::{
    Book, Brimful, ContainerId, CostBasis, Drink, Headspace, Ingredient, IngredientId, Line, Offer, Pack, PackagingId,
    PackagingUse, Scaling, Settings, Stage, TaxPlace,
};
use brimwright::foundation::measure::{Exact, Measure, Money, Share};
use serde_json::{Map, Value, json};

/// The most lines that a drink of the generated book has.
const MOST_LINES: usize = 7;
/// What prices are rounded up to a multiple of.
const ENDINGS: &str = "0.25";
/// The column of an offer's full cost, from 0.
pub const COST: usize = 15;
/// The column of its margin.
pub const MARGIN: usize = 18;
/// The column of its suggested price.
pub const SUGGESTED: usize = 20;

/// The sheets, each a list of rows of cells: numbers, and formulas as texts.
pub fn sheets(book: &Book) -> Value {
    let rows = Rows::of(book);
    let mut lines = Vec::new();
    let mut drinks = Vec::new();
    let mut offers = Vec::new();
    for (drink_row, drink) in (1..).zip(book.drinks()) {
        let first = lines.len() + 1;
        for line in &drink.lines {
            lines.push(line_cells(line, lines.len() + 1, rows.ingredients[&line.ingredient], drink_row));
        }
        drinks.push(drink_cells(drink, first));
        for offer in book.offers_of(drink.id) {
            let container = rows.containers[&offer.container];
            offers.push(offer_cells(offer, drink, drink_row, first, container, offers.len() + 1));
        }
    }
    let containers = book.containers().map(|container| {
        let Brimful::Weighed(brimful) = container.brimful else { panic!("a generated container is weighed") };
        let Headspace::Share(share) = container.headspace else { panic!("a generated headspace is a share") };
        let brimful = brimful.volume().expect("small").expect("a volume").millilitres();
        let used = |it: &PackagingUse| format!("Packaging!D{}*{}", rows.packagings[&it.packaging], it.count);
        let set: Vec<String> = container.set.iter().map(used).collect();
        let row = rows.containers[&container.id];
        vec![number(brimful), number(share.fraction()), formula(format!("A{row}*(1-B{row})")), formula(set.join("+"))]
    });
    let packagings = (1..).zip(book.packagings());
    let packagings = packagings.map(|(row, it)| pack_cells(&it.packs[0], row));
    let ingredients = (1..).zip(book.ingredients());
    let ingredients = ingredients.map(|(row, ingredient)| ingredient_cells(ingredient, row));
    let mut sheets = Map::new();
    sheets.insert("Settings".into(), settings_cells(book.settings()).into());
    sheets.insert("Ingredients".into(), ingredients.collect());
    sheets.insert("Packaging".into(), packagings.collect());
    sheets.insert("Containers".into(), containers.collect());
    sheets.insert("Lines".into(), lines.into());
    sheets.insert("Drinks".into(), drinks.into());
    sheets.insert("Offers".into(), offers.into());
    sheets.into()
}

/// The row of each record in its sheet, from 1.
struct Rows {
    ingredients: BTreeMap<IngredientId, usize>,
    packagings: BTreeMap<PackagingId, usize>,
    containers: BTreeMap<ContainerId, usize>,
}

impl Rows {
    fn of(book: &Book) -> Rows {
        Rows {
            ingredients: book.ingredients().map(|it| it.id).zip(1..).collect(),
            packagings: book.packagings().map(|it| it.id).zip(1..).collect(),
            containers: book.containers().map(|it| it.id).zip(1..).collect(),
        }
    }
}

fn number(exact: Exact) -> Value {
    json!(exact.to_string().parse::<f64>().expect("a number"))
}

fn money(money: Money) -> Value {
    number(money.major())
}

fn formula(text: String) -> Value {
    json!(format!("={text}"))
}

/// What holds for the whole book: A1 to A8 as entered, A9 the share of a price that fees take.
fn settings_cells(settings: &Settings) -> Vec<Value> {
    assert_eq!(settings.tax.place, TaxPlace::AddedAtTheTill, "a price of the sheets is without tax");
    let quarters: Vec<Money> = (0..4).map(|it| Money::from_major(Exact::new(25 * it, 2))).collect();
    assert_eq!(settings.endings, quarters, "prices of the sheets end on quarters");
    assert_eq!(settings.cost_basis, CostBasis::Everything, "a margin of the sheets covers everything");
    let cells = [
        money(settings.wage),
        money(settings.overhead),
        number(settings.unsold.fraction()),
        number(settings.target.fraction()),
        number(settings.tax.rate.fraction()),
        number(settings.payment_fee.share.fraction()),
        money(settings.payment_fee.fixed),
        number(settings.commission.fraction()),
        formula("A8+A6*(1+A5)".into()),
    ];
    cells.into_iter().map(|cell| json!([cell])).collect()
}

/// A price, B surcharge, C contents in the base unit, D what one of these costs.
fn pack_cells(pack: &Pack, row: usize) -> Vec<Value> {
    assert!(pack.tiers.is_empty(), "a pack of the sheets has one price");
    let contents = pack.contents.measure().expect("small").base();
    vec![money(pack.price), money(pack.surcharge), number(contents), formula(format!("(A{row}+B{row})/C{row}"))]
}

/// As a pack, of grams; E trim yield, F press yield, G density, H density of the juice, I weight of a
/// piece.
fn ingredient_cells(ingredient: &Ingredient, row: usize) -> Vec<Value> {
    let mut cells = pack_cells(&ingredient.packs[0], row);
    let Measure::Mass(_) = ingredient.packs[0].contents.measure().expect("small") else {
        panic!("a generated ingredient is bought by weight")
    };
    cells.extend([
        number(ingredient.trim_yield.fraction()),
        number(ingredient.press_yield.expect("generated").fraction()),
        number(ingredient.density.expect("generated").grams_per_millilitre()),
        number(ingredient.juice_density.expect("generated").grams_per_millilitre()),
        number(ingredient.piece_weight.expect("generated").grams()),
    ]);
    cells
}

/// A line as it is written: A amount in the base unit, B grams bought, C volume in the drink, D cost
/// with what is lost in making.
fn line_cells(line: &Line, row: usize, ingredient: usize, drink: usize) -> Vec<Value> {
    let of = |column: char| format!("Ingredients!{column}{ingredient}");
    let (yields, density) = match line.stage {
        Stage::Trimmed => (of('E'), of('G')),
        Stage::Pressed => (format!("({}*{})", of('E'), of('F')), of('H')),
        Stage::AsBought | Stage::SoakedOrBrewed => panic!("a generated line is trimmed or pressed"),
    };
    let (bought, volume) = match line.amount.measure().expect("small") {
        Measure::Mass(_) => (format!("A{row}/{yields}"), format!("A{row}/{density}")),
        Measure::Volume(_) => (format!("A{row}*{density}/{yields}"), format!("A{row}")),
        Measure::Count(_) => (format!("A{row}*{}", of('I')), format!("B{row}*{yields}/{density}")),
    };
    let cost = format!("B{row}*{}/(1-Drinks!A{drink})", of('D'));
    let amount = line.amount.measure().expect("small").base();
    vec![number(amount), formula(bought), formula(volume), formula(cost)]
}

/// A process loss; seconds of labour B a drink, C a litre, D a batch of E drinks; F volume of the fixed
/// lines, G of those in proportion; H treatment fee, I share unsold, J target.
fn drink_cells(drink: &Drink, first_line: usize) -> Vec<Value> {
    let volume = |fixed: bool| {
        let lines = (first_line..).zip(&drink.lines);
        let those = lines.filter(|(_, line)| (line.scaling == Scaling::Fixed) == fixed);
        let cells: Vec<String> = those.map(|(row, _)| format!("Lines!C{row}")).collect();
        if cells.is_empty() { json!(0) } else { formula(cells.join("+")) }
    };
    let own = |share: Option<Share>, book: &str| share.map_or(formula(book.into()), |it| number(it.fraction()));
    vec![
        number(drink.process_loss.fraction()),
        number(drink.labour.per_drink.seconds()),
        number(drink.labour.per_litre.seconds()),
        number(drink.labour.per_batch.seconds()),
        number(drink.labour.batch),
        volume(true),
        volume(false),
        money(drink.treatment_fee),
        own(drink.unsold, "Settings!A3"),
        own(drink.target, "Settings!A4"),
    ]
}

/// A menu price, B volume poured, C factor of the recipe, D to J cost of each line, K of all lines,
/// L container set, M labour, N all that is made with fee and overhead, O what is thrown away without
/// overhead, P full cost, Q fees, R contribution, S margin, T price for the target, U the same with its ending.
fn offer_cells(
    offer: &Offer,
    drink: &Drink,
    drink_row: usize,
    first_line: usize,
    container: usize,
    row: usize,
) -> Vec<Value> {
    let of = |column: char| format!("Drinks!{column}{drink_row}");
    let mut cells = vec![
        money(offer.price.expect("a generated offer has a price")),
        formula(format!("Containers!C{container}")),
        formula(format!("(B{row}-{})/{}", of('F'), of('G'))),
    ];
    for place in 0..MOST_LINES {
        cells.push(drink.lines.get(place).map_or(Value::Null, |line| {
            let written = format!("Lines!D{}", first_line + place);
            formula(if line.scaling == Scaling::Fixed { written } else { format!("{written}*C{row}") })
        }));
    }
    let seconds = format!("({}+{}*B{row}/1000+{}/{})", of('B'), of('C'), of('D'), of('E'));
    cells.extend([
        formula(format!("SUM(D{row}:J{row})")),
        formula(format!("Containers!D{container}")),
        formula(format!("{seconds}*Settings!A1/3600")),
        formula(format!("K{row}+L{row}+M{row}+{}+Settings!A2", of('H'))),
        formula(format!("(N{row}-Settings!A2)*{0}/(1-{0})", of('I'))),
        formula(format!("N{row}+O{row}")),
        formula(format!("A{row}*Settings!A9+Settings!A7")),
        formula(format!("A{row}-Q{row}-P{row}")),
        formula(format!("R{row}/A{row}")),
        formula(format!("(P{row}+Settings!A7)/(1-{}-Settings!A9)", of('J'))),
        formula(format!("CEILING(T{row},{ENDINGS})")),
    ]);
    cells
}
