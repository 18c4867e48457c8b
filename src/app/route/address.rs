//! The table of the screens: to which place each belongs, and its address. It is read in both
//! directions.

use super::{Decision, FirstPrice, OfBatch, Place, Route, Sheet, Stays, Step, scope_from_text, scope_text};
use crate::book::{
    ContainerId, DrinkId, IngredientId, OfferId, PackagingId, PackagingSetId, ScenarioId, Scope, TrialId,
};
use crate::foundation::measure::Date;

/// A row is a screen, its place, and its address: words, and what stands in the address between
/// or behind them. Where several rows take an address, the first does.
macro_rules! screens {
    ($($screen:ident $(($($of:tt)*))? in $place:ident at $before:literal
        $($value:ident: $kind:ident $($after:literal)?)?;)*) => {
        impl Route {
            /// The address after the hash.
            pub fn address(self) -> String {
                match self {
                    $(Route::$screen $(($($of)*))? => {
                        ["#/", $before, $(&<$kind as InAddress>::text($value), $($after)?)?].concat()
                    })*
                }
            }

            /// The screen at an address; the list of drinks if no screen has that address.
            pub fn from_address(address: &str) -> Route {
                let address = address.trim_start_matches(['#', '/']);
                $(if let Some(rest) = address.strip_prefix($before) {
                    screens!(@read rest, Route::$screen $(($($of)*))?, $($value $kind $($after)?)?);
                })*
                Route::Drinks
            }

            /// Whether it is the address of a screen, or none, which is that of the first.
            pub fn is_address(address: &str) -> bool {
                let address = address.trim_start_matches(['#', '/']);
                address.is_empty() || Route::from_address(address) != Route::Drinks || address == "drinks"
            }

            /// The place that the screen belongs to.
            #[allow(unused_variables, reason = "rows name what stands in their address")]
            pub const fn place(self) -> Place {
                match self {
                    $(Route::$screen $(($($of)*))? => Place::$place,)*
                }
            }

            /// One of each screen, with what stands in its address invented from a number.
            #[cfg(test)]
            pub(super) fn one_of_each(number: u64) -> Vec<Route> {
                vec![$({
                    $(let $value = <$kind as InAddress>::invented(number);)?
                    Route::$screen $(($($of)*))?
                }),*]
            }
        }
    };
    (@read $rest:ident, $route:expr,) => {
        if $rest.is_empty() {
            return $route;
        }
    };
    (@read $rest:ident, $route:expr, $value:ident $kind:ident $($after:literal)?) => {
        if let Some($value) = $rest.strip_suffix(concat!($($after)?)).and_then(<$kind as InAddress>::read) {
            return $route;
        }
    };
}

screens! {
    Drinks in Drinks at "drinks";
    Shop in Drinks at "shop";
    FirstPrice(first) in Drinks at "first-price/" first: FirstPrice;
    Drink(id) in Drinks at "drinks/" id: DrinkId;
    Offer(id) in Drinks at "drinks/" id: OfferId;
    Packaged(id) in Drinks at "drinks/" id: OfferId "/label";
    Working(id) in Drinks at "drinks/" id: OfferId "/working";
    Buying in Buying at "buying";
    PriceWatch in Buying at "buying/watch";
    BuyingList in Buying at "buying/list";
    FiguresToCheck in Buying at "buying/check";
    Ingredient(id) in Buying at "buying/ingredient/" id: IngredientId;
    YieldLog(id) in Buying at "buying/ingredient/" id: IngredientId "/yields";
    Packaging(id) in Buying at "buying/packaging/" id: PackagingId;
    PackagingSet(id) in Buying at "buying/set/" id: PackagingSetId;
    Containers in Buying at "buying/containers";
    Container(id) in Buying at "buying/container/" id: ContainerId;
    Sizes in Sizes at "sizes";
    Decision(decision) in Sizes at "sizes/decide/" decision: Decision;
    HowMany(scope) in Sizes at "sizes/how-many/" scope: Scope;
    PricePoint(scope) in Sizes at "sizes/price-point/" scope: Scope;
    SeenPrices in Sizes at "sizes/seen";
    Sales in Sizes at "sizes/sales";
    SalesWeek(monday) in Sizes at "sizes/sales/" monday: Monday;
    Trials in Sizes at "sizes/trials";
    Trial(id) in Sizes at "sizes/trials/" id: TrialId;
    Scenarios in Sizes at "sizes/scenarios";
    Scenario(id) in Sizes at "sizes/scenarios/" id: ScenarioId;
    SideBySide(scope) in Sizes at "sizes/" scope: Scope;
    Counter in Counter at "counter";
    Batches in Counter at "counter/batches";
    Batch(day) in Counter at "counter/batches/" day: Date;
    BatchCard(of) in Counter at "counter/batches/" of: OfBatch;
    OnHand in Counter at "counter/on-hand";
    CanMake in Counter at "counter/can-make";
    Card(id) in Counter at "counter/" id: OfferId;
    Sheet(Sheet::Prices) in Drinks at "print/prices";
    Sheet(Sheet::Cards) in Counter at "print/cards";
    Sheet(Sheet::Batch(day)) in Counter at "print/batch/" day: Date;
    Sheet(Sheet::BuyingList) in Buying at "print/list";
    Sheet(Sheet::Warning) in Drinks at "print/warning";
    Sheet(Sheet::Decision(decision)) in Sizes at "print/decision/" decision: Decision;
    Sheet(Sheet::Report) in Sizes at "print/report";
    Book in Book at "book";
}

/// What can stand in an address.
trait InAddress {
    /// What it is to the screen.
    type Value;

    fn text(value: Self::Value) -> String;

    /// Reads what [`InAddress::text`] writes; `None` for any other text.
    fn read(text: &str) -> Option<Self::Value>;

    #[cfg(test)]
    fn invented(number: u64) -> Self::Value;
}

macro_rules! ids {
    ($($id:ident),*) => {
        $(impl InAddress for $id {
            type Value = $id;

            fn text(id: $id) -> String {
                id.to_string()
            }

            fn read(text: &str) -> Option<$id> {
                $id::from_text(text)
            }

            #[cfg(test)]
            fn invented(number: u64) -> $id {
                $id::from_random(number)
            }
        })*
    };
}

ids!(ContainerId, DrinkId, IngredientId, PackagingId, PackagingSetId, ScenarioId, TrialId);

impl InAddress for OfferId {
    type Value = OfferId;

    fn text(id: OfferId) -> String {
        [id.drink.to_string(), id.container.to_string()].join("/")
    }

    fn read(text: &str) -> Option<OfferId> {
        let (drink, container) = text.split_once('/')?;
        Some(OfferId { drink: DrinkId::from_text(drink)?, container: ContainerId::from_text(container)? })
    }

    #[cfg(test)]
    fn invented(number: u64) -> OfferId {
        OfferId { drink: DrinkId::from_random(number), container: ContainerId::from_random(number) }
    }
}

impl InAddress for Date {
    type Value = Date;

    fn text(day: Date) -> String {
        day.to_string()
    }

    fn read(text: &str) -> Option<Date> {
        Date::from_text(text)
    }

    #[cfg(test)]
    fn invented(_: u64) -> Date {
        crate::support::day("2026-11-23")
    }
}

impl InAddress for OfBatch {
    type Value = OfBatch;

    /// The day, then the drink and its size: `2026-11-23/1/4`.
    fn text(of: OfBatch) -> String {
        [Date::text(of.day), OfferId::text(of.offer)].join("/")
    }

    fn read(text: &str) -> Option<OfBatch> {
        let (day, offer) = text.split_once('/')?;
        Some(OfBatch { day: Date::read(day)?, offer: OfferId::read(offer)? })
    }

    #[cfg(test)]
    fn invented(number: u64) -> OfBatch {
        OfBatch { day: Date::invented(number), offer: OfferId::invented(number) }
    }
}

/// A day that is a Monday.
struct Monday;

impl InAddress for Monday {
    type Value = Date;

    fn text(day: Date) -> String {
        Date::text(day)
    }

    fn read(text: &str) -> Option<Date> {
        Date::read(text).filter(|day| day.is_monday())
    }

    #[cfg(test)]
    fn invented(number: u64) -> Date {
        Date::invented(number)
    }
}

/// Stands before the sizes that stay, with [`AND`] between them. It is no id: those are written in hexadecimal digits.
const ONLY: &str = "only";

/// Stands between sizes that stay.
const AND: char = '.';

impl InAddress for Decision {
    type Value = Decision;

    /// The part of the menu, then the size that goes and the size that comes, or those that stay:
    /// `kind/pressed/4-3`, `kind/pressed/only-4`, `kind/pressed/only-3.4`.
    fn text(decision: Decision) -> String {
        let size = |id: Option<ContainerId>| id.map(|id| id.to_string()).unwrap_or_default();
        let (first, second) = match decision.stays {
            Some(stays) => {
                let sizes: Vec<String> = stays.sizes().map(|size| size.to_string()).collect();
                (ONLY.to_string(), sizes.join(&AND.to_string()))
            }
            None => (size(decision.goes), size(decision.comes)),
        };
        [&scope_text(decision.scope), "/", &first, "-", &second].concat()
    }

    fn read(text: &str) -> Option<Decision> {
        let (scope, sizes) = text.rsplit_once('/')?;
        let (scope, (first, second)) = (scope_from_text(scope)?, sizes.split_once('-')?);
        let size = |text: &str| match text {
            "" => Some(None),
            id => ContainerId::from_text(id).map(Some),
        };
        let all = |text: &str| {
            let sizes: Option<Vec<ContainerId>> = text.split(AND).map(ContainerId::from_text).collect();
            Stays::of(&sizes?)
        };
        let (goes, stays) = if first == ONLY { (None, Some(all(second)?)) } else { (size(first)?, None) };
        let comes = if stays.is_some() { None } else { size(second)? };
        Some(Decision { scope, goes, comes, stays })
    }

    #[cfg(test)]
    fn invented(number: u64) -> Decision {
        let size = |bit: u32| (number >> bit & 1 == 1).then(|| ContainerId::from_random(number.rotate_left(bit)));
        let sizes: Vec<ContainerId> = [size(5), size(6), size(7)].into_iter().flatten().collect();
        let (scope, stays) = (Scope::invented(number), Stays::of(&sizes));
        let unless_alone = |id: Option<ContainerId>| id.filter(|_| stays.is_none());
        Decision { scope, goes: unless_alone(size(3)), comes: unless_alone(size(4)), stays }
    }
}

impl InAddress for FirstPrice {
    type Value = FirstPrice;

    /// The step, then the drink: `amounts/4f`.
    fn text(first: FirstPrice) -> String {
        let named = Step::ALL.into_iter().find(|(step, _)| *step == first.step);
        [named.map_or("", |(_, name)| name), "/", &first.drink.to_string()].concat()
    }

    fn read(text: &str) -> Option<FirstPrice> {
        let (step, drink) = text.split_once('/')?;
        let (step, _) = Step::ALL.into_iter().find(|(_, name)| *name == step)?;
        Some(FirstPrice { drink: DrinkId::from_text(drink)?, step })
    }

    #[cfg(test)]
    fn invented(number: u64) -> FirstPrice {
        let (step, _) = Step::ALL[usize::try_from(number % 5).expect("small")];
        FirstPrice { drink: DrinkId::from_random(number), step }
    }
}

impl InAddress for Scope {
    type Value = Scope;

    fn text(scope: Scope) -> String {
        scope_text(scope)
    }

    fn read(text: &str) -> Option<Scope> {
        scope_from_text(text)
    }

    #[cfg(test)]
    fn invented(number: u64) -> Scope {
        use crate::book::DrinkKind;

        match usize::try_from(number % 6).expect("small") {
            0 => Scope::Menu,
            1 => Scope::Drink(DrinkId::from_random(number)),
            kind => Scope::Kind(DrinkKind::ALL[kind - 2]),
        }
    }
}
