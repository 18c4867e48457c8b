//! Starts the app: mounts the screens. Natively there is nothing to mount.

fn main() {
    #[cfg(target_arch = "wasm32")]
    brimwright::ui::mount(|| Box::pin(async { later::parts().await.ok() }));
}

/// The cut between the two wasm files. It stands in the program and not in the library, whose
/// tests are linked without a second file.
#[cfg(target_arch = "wasm32")]
mod later {
    use brimwright::ui::{PARTS, Parts};
    use leptos::wasm_split::{SplitLoaderError, wasm_split};

    #[wasm_split(later, wasm_split_path = leptos::wasm_split, fallible)]
    pub fn parts() -> Result<&'static Parts, SplitLoaderError> {
        Ok(&PARTS)
    }
}
