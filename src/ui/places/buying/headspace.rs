//! How full a container is poured: what is left empty, what it is declared as, the fill line.

use std::sync::Arc;

use leptos::prelude::*;

use super::change::{changed, size};
use super::tolerances::Allowed;
use crate::book::{Container, ContainerId, Headspace, Key};
use crate::fill::{fill, fill_line};
use crate::jump::Kind;
use crate::measure::{Amount, Exact, LengthUnit, Share, TypedLength};
use crate::ui::fields::{self, Choice, Entry, asks};
use crate::ui::glass::{glass, poured};
use crate::ui::live::{live, text, trouble, when};
use crate::ui::parts::{Figure, Section, figures};
use crate::ui::state::AppState;
use crate::working::Shown;

/// How full a container is poured.
#[component]
pub fn Poured(
    /// The container.
    id: ContainerId,
) -> impl IntoView {
    let state = AppState::here();
    let of = move |show: fn(&Container, AppState) -> String| {
        text(move || state.book.with(|book| book.container(id).map(|it| show(it, state)).unwrap_or_default()))
    };
    let has_heights = move || state.book.with(|book| book.container(id)?.brimful.height().ok()?).is_some();
    let ways = Memo::new(move |_| {
        let mut ways = vec![("volume", "as a volume"), ("share", "as a share of the brim")];
        if has_heights() {
            ways.push(("height", "as a height under the rim"));
        }
        ways.into_iter().map(|(key, words)| (key.to_string(), words.to_string())).collect::<Vec<_>>()
    });
    let way = of(|it, _| {
        match it.headspace {
            Headspace::Volume(_) => "volume",
            Headspace::Share(_) => "share",
            Headspace::Height(_) => "height",
        }
        .to_string()
    });
    let choose_way = Arc::new(move |chosen: &str| {
        let edit = state.book.with_untracked(|book| {
            let units = book.settings().units;
            let headspace = match (chosen, LengthUnit::of(units)) {
                ("share", _) => Headspace::Share(Share::from_fraction(Exact::new(5, 2))),
                ("height", LengthUnit::Inch) => Headspace::Height(TypedLength::new(Exact::new(5, 1), LengthUnit::Inch)),
                ("height", _) => Headspace::Height(TypedLength::new(Exact::from(10), LengthUnit::Millimetre)),
                _ => Headspace::Volume(Amount::new(Exact::ONE, units.drink_unit())),
            };
            changed(book, id, |it| it.headspace = headspace)
        });
        edit.map_or(Ok(()), |edit| state.apply("How headspace is given", edit))
    });
    let filled = move || state.book.with(|book| book.container(id).and_then(|it| fill(it).ok()));
    let volume = text(move || {
        let fill = filled();
        fill.map_or("none".into(), |fill| state.volume(fill.volume))
    });
    let line = move || {
        let found = filled().and_then(|fill| {
            let line = state.book.with(|book| fill_line(book.container(id)?).ok()?)?;
            Some(vec![
                ("To the rim".to_string(), state.volume(fill.brimful), Some(Shown::Brimful(id))),
                ("Fill line above the base".to_string(), state.length(line.above_base), None),
                ("Fill line under the rim".to_string(), state.length(line.below_rim), None),
            ])
        });
        found.unwrap_or_default()
    };
    let picture = live(move || {
        let container = state.book.with(|book| book.container(id).cloned());
        match (container, filled()) {
            (Some(container), Some(fill)) => glass(&container, &fill, poured(&fill)),
            _ => ().into_any(),
        }
    });
    let short = move || {
        let fill = filled()?;
        fill.short_of_declared.map(|short| {
            format!(
                "It is poured {} less than its declared size. Local rules say what a declared size must hold.",
                state.volume(short)
            )
        })
    };
    view! {
           <Section heading="How full it is poured">
               <div class="fields">
                   <Choice label="Left empty" options=ways value=way choose=choose_way />
                   {when(
                       move || way.with(|way| way == "volume"),
                       move || {
                           view! {
                               <Entry
                                   label="Volume left empty"
                                   asks=asks(Kind::Size, Key::Container(id), "headspace/volume")
                                   value=of(|it, state| match it.headspace {
                                       Headspace::Volume(amount) => state.amount(amount),
                                       _ => String::new(),
                                   })
                                   units=fields::units(size)
    commit=fields::amount("Headspace", size, move |book, amount| {
                                       changed(book, id, |it| it.headspace = Headspace::Volume(amount))
                                   })
                               />
                           }
                               .into_any()
                       },
                   )}
                   {when(
                       move || way.with(|way| way == "share"),
                       move || {
                           view! {
                               <Entry
                                   label="Share left empty"
                                   unit="%"
                                   value=of(|it, state| match it.headspace {
                                       Headspace::Share(share) => state.plain_percent(share),
                                       _ => String::new(),
                                   })
                                   commit=fields::percent("Headspace", move |book, share| {
                                       changed(book, id, |it| it.headspace = Headspace::Share(share))
                                   })
                               />
                           }
                               .into_any()
                       },
                   )}
                   {when(
                       move || way.with(|way| way == "height"),
                       move || {
                           view! {
                               <Entry
                                   label="Height left empty"
                                   asks=asks(Kind::Size, Key::Container(id), "headspace/height")
                                   value=of(|it, state| match it.headspace {
                                       Headspace::Height(length) => state.typed_length(length),
                                       _ => String::new(),
                                   })
                                   units=fields::length_units()
    commit=fields::length("Headspace", move |book, length| {
                                       changed(book, id, |it| it.headspace = Headspace::Height(length))
                                   })
                               />
                           }
                               .into_any()
                       },
                   )}
                   <Entry
                       label="Size it is declared as"
                       asks=asks(Kind::Size, Key::Container(id), "declared")
                       example="none"
                       note="What the menu or label says, if it says one."
                       value=of(|it, state| it.declared.map(|amount| state.amount(amount)).unwrap_or_default())
                       units=fields::units(size)
    commit=fields::optional_amount("Declared size", size, move |book, amount| {
                           changed(book, id, |it| it.declared = amount)
                       })
                   />
               </div>
               <div class="in-glass">
                   {picture}
                   <dl class="figures">
                       <Figure name="Poured" large=true value=volume how=Shown::Poured(id) />
                       {figures(line)}
                   </dl>
               </div>
               {trouble(short)}
               <Allowed id />
           </Section>
       }
}
