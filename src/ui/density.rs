//! How close together things stand on the screens of a desk: chosen for this device.

use std::sync::Arc;

use leptos::prelude::*;

use super::fields::Choice;
use crate::say;
use crate::store::first_paint;

/// What the page bears; the script of the first words puts it there when the page is loaded.
const DENSITY: &str = "data-density";
const COMPACT: &str = "compact";

/// The choice of it. It counts at once.
pub fn choice() -> AnyView {
    let options = vec![
        (String::new(), say!(device::roomy).to_string()),
        (COMPACT.to_string(), say!(device::compact).to_string()),
    ];
    let choose = Arc::new(|chosen: &str| {
        let chosen = Some(chosen).filter(|chosen| !chosen.is_empty());
        first_paint::note_density(chosen);
        if let Some(page) = document().document_element() {
            // One's own page takes any attribute.
            let _ = match chosen {
                Some(density) => page.set_attribute(DENSITY, density),
                None => page.remove_attribute(DENSITY),
            };
        }
        Ok(())
    });
    let value = first_paint::density().unwrap_or_default();
    view! { <Choice label=say!(device::laptop_spacing) options value choose /> }.into_any()
}
