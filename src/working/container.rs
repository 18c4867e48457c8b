//! What a container holds to the rim, and what is poured into it.

use super::{Figure, Name, Rule, Shown, Step};
use crate::book::{Brimful, Container, Headspace, Key};
use crate::drink::fill::fill;
use crate::drink::ledger::OfferError;

/// Volume to the rim.
pub fn brimful(container: &Container) -> Result<Step, OfferError> {
    let figure = Figure::Volume(fill(container)?.brimful);
    Ok(match container.brimful {
        Brimful::Weighed(amount) => Step::given(Name::Brimful, Figure::Amount(amount), Key::Container(container.id)),
        Brimful::Tapered(_) | Brimful::Poured(_) => Step::new(Name::Brimful, figure, Rule::Shape, shape(container)),
    })
}

/// What is poured.
pub fn poured(container: &Container) -> Result<Step, OfferError> {
    let fill = fill(container)?;
    let brimful = Step::opens(Name::Brimful, Figure::Volume(fill.brimful), Shown::Brimful(container.id));
    let key = Key::Container(container.id);
    let headspace = match container.headspace {
        Headspace::Volume(amount) => Step::given(Name::Headspace, Figure::Amount(amount), key),
        Headspace::Share(share) => {
            let share = Step::given(Name::HeadspaceShare, Figure::Share(share), key);
            Step::new(Name::Headspace, Figure::Volume(fill.headspace), Rule::Product, vec![brimful.clone(), share])
        }
        Headspace::Height(height) => {
            let mut from = vec![Step::given(Name::HeadspaceHeight, Figure::Length(height), key)];
            from.extend(shape(container));
            Step::new(Name::Headspace, Figure::Volume(fill.headspace), Rule::Shape, from)
        }
    };
    Ok(Step::new(Name::Poured, Figure::Volume(fill.volume), Rule::Difference, vec![brimful, headspace]))
}

/// The measures of a cup, or the readings of a bottle; a weighed container has none.
fn shape(container: &Container) -> Vec<Step> {
    let given = |name, figure| Step::given(name, figure, Key::Container(container.id));
    let length = |name, length| given(name, Figure::Length(length));
    match &container.brimful {
        Brimful::Weighed(_) => Vec::new(),
        Brimful::Tapered(cup) => {
            vec![length(Name::Base, cup.base), length(Name::Rim, cup.rim), length(Name::Height, cup.height)]
        }
        Brimful::Poured(readings) => {
            let reading = |it: &crate::book::Reading| {
                [length(Name::ReadingHeight, it.height), given(Name::ReadingVolume, Figure::Amount(it.volume))]
            };
            readings.iter().flat_map(reading).collect()
        }
    }
}
