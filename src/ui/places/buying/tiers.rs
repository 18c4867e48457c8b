//! Lower prices of a pack for more at a time.

use leptos::prelude::*;

use super::change::{pack_changed, price_set};
use crate::book::{Book, Goods, Key, PackId, Tier};
use crate::foundation::jump::Kind;
use crate::foundation::measure::Exact;
use crate::say;
use crate::ui::fields::{self, Addition, Draft, Entry, Field, Hangs, NewThing, asks};
use crate::ui::live::{flag, parts, press, text, when};
use crate::ui::parts::TakeOut;
use crate::ui::state::AppState;
use crate::ui::today::today;

/// A lower price of a pack that is not in the book yet.
fn draft(goods: Goods, pack: PackId) -> Draft {
    Draft { what: NewThing::VolumePrice, of: Some(Key::from(goods)), id: pack.number() }
}

/// How many packs are bought at a time, and the lower prices for more; a pack that is bought one
/// by one shows only a button.
#[component]
pub fn Tiers(
    /// What is bought.
    goods: Goods,
    /// In which of its packs.
    id: PackId,
    /// The fields of the pack, which its costs hang on.
    hangs: Hangs,
) -> impl IntoView {
    let state = AppState::here();
    let draft = draft(goods, id);
    let pack = move |book: &Book| book.packs(goods).iter().find(|pack| pack.id == id).cloned();
    let tiers = move || {
        let count = state.book.with(pack).map_or(0, |pack| pack.tiers.len());
        let begun = usize::from(draft.is_open(state));
        (0..(count + begun) as u64).collect::<Vec<u64>>()
    };
    let several = move || {
        draft.is_open(state)
            || state.book.with(pack).is_some_and(|pack| !pack.tiers.is_empty() || !pack.at_a_time.is_one())
    };
    let none = flag(move || tiers().is_empty());
    let at_a_time = text(move || state.book.with(pack).map(|pack| state.number(pack.at_a_time)).unwrap_or_default());
    let now = text(move || {
        let pack = state.book.with(pack);
        pack.filter(|_| several()).map_or(String::new(), |pack| {
            let packs = state.speaker.get().counted(pack.at_a_time);
            say!(goods::price_per_order, packs = packs, price = state.money(pack.price_now()))
        })
    });
    view! {
        {when(several, move || {
            view! {
                <div class="fields">
                    <Entry
                        label=say!(goods::packs_per_order)
                        value=at_a_time
                        hangs
                        note=now
                        commit=fields::count(say!(goods::packs_per_order), fields::Example::PacksPerOrder, move |book, number| {
                            pack_changed(book, goods, id, |pack| pack.at_a_time = number)
                        })
                    />
                </div>
                <div class="reading soft" aria-hidden="true" hidden=none>
                    <span>{say!(goods::minimum_packs)}</span>
                    <span>{say!(goods::price_per_pack)}</span>
                </div>
                <ol class="lines">
                    {parts(tiers, move |place| tier_row(state, goods, id, place as usize, hangs))}
                </ol>
            }
                .into_any()
        })}
        <p class="actions">
            <button class="quiet" on:click=press(move || draft.begin(state))>
                {say!(goods::add_volume_price)}
            </button>
        </p>
    }
}

fn tier_row(state: AppState, goods: Goods, id: PackId, place: usize, hangs: Hangs) -> AnyView {
    let number = Exact::new(i64::try_from(place.saturating_add(1)).unwrap_or(i64::MAX), 0);
    let number = untrack(|| state.number(number));
    let of = move |show: fn(Tier, AppState) -> String| {
        text(move || {
            let tier = state.book.with(|book| {
                let pack = book.packs(goods).iter().find(|pack| pack.id == id)?;
                pack.tiers.get(place).copied()
            });
            tier.map(|tier| show(tier, state)).unwrap_or_default()
        })
    };
    let set = move |book: &Book, change: &dyn Fn(&mut Tier)| {
        pack_changed(book, goods, id, |pack| {
            if let Some(tier) = pack.tiers.get_mut(place) {
                change(tier);
            }
        })
    };
    let remove = move || {
        let edit = state.book.with_untracked(|book| {
            pack_changed(book, goods, id, |pack| {
                if place < pack.tiers.len() {
                    pack.tiers.remove(place);
                }
            })
        });
        // Taking a lower price out is never refused.
        let _ = edit.map(|edit| state.apply(say!(goods::remove_volume_price), edit));
    };
    let there = move |book: &Book| {
        let pack = book.packs(goods).iter().find(|pack| pack.id == id);
        pack.is_some_and(|pack| place < pack.tiers.len())
    };
    let new = Addition::of(draft(goods, id), there, say!(goods::add_volume_price), move |typed, book| {
        let (from, price) = (
            typed.number(Field::NumberOfPacks, fields::Example::MinimumPacks),
            typed.money(Field::Price, fields::Example::VolumePrice),
        );
        let tier = Tier { from: from?, price: price? };
        pack_changed(book, goods, id, |pack| pack.tiers.push(tier))
    });
    let is_new = !untrack(|| new.is_there());
    view! {
        <li class="reading">
            <Entry
                label=say!(goods::minimum_packs_of, number = &number)
                label_hidden=true
                of=id.number()
                hangs
                caret=is_new
                example="5"
                value=new.value(Field::NumberOfPacks, of(|tier, state| state.number(tier.from)))
                commit=new.commit(Field::NumberOfPacks, fields::count(say!(goods::minimum_packs), fields::Example::MinimumPacks, move |book, from| {
                    set(book, &|tier| tier.from = from)
                }))
            />
            <Entry
                label=say!(goods::case_price_of, number = &number)
                asks=asks(Kind::Price, goods, format!("{id}/lower-price/{place}"))
                label_hidden=true
                of=id.number()
                hangs
                example=fields::Example::VolumePrice.said(&state.speaker.get_untracked())
                value=new.value(Field::Price, of(|tier, state| state.plain_money(tier.price)))
                commit=new.commit(Field::Price, fields::money(say!(goods::volume_price), fields::Example::VolumePrice, move |book, price| {
                    let pack = book.packs(goods).iter().find(|pack| pack.id == id)?;
                    let bought_at_it = pack.reached().is_some_and(|tier| pack.tiers.get(place) == Some(tier));
                    if bought_at_it {
                        return Some(price_set(goods, id, price, today()));
                    }
                    set(book, &|tier| tier.price = price)
                }))
            />
            <TakeOut name=Signal::stored(say!(goods::volume_price_of, number = number)) on_click=new.take_out(remove) />
            {new.needs()}
        </li>
    }
    .into_any()
}
