//! The app's front door: mounts the screens. Natively there is nothing to mount.

fn main() {
    #[cfg(target_arch = "wasm32")]
    brimwright::ui::mount();
}
