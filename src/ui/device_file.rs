//! A file on the device that is kept up to date, where the browser has such a thing (File System
//! Access, WICG draft). The person chooses it once, and can take it back.

use js_sys::{Array, Object, Reflect};
use leptos::prelude::*;
use leptos::task::spawn_local;
use wasm_bindgen::JsValue;
use wasm_bindgen_futures::JsFuture;

use super::call::call;
use super::files::file_name;
use super::library::Library;
use super::state::AppState;
use super::today::now;
use crate::backup::copies::{DEVICE_FILE, DeviceFile, no_device_file};
use crate::book::{Book, BookId};
use crate::exchange;
use crate::store::Backing;

/// How a browser that has such files asks for one.
const PICK: &str = "showSaveFilePicker";

/// How it stands with the file of a book.
pub async fn look_up(library: Library, book: BookId) -> DeviceFile {
    if !Reflect::has(&window(), &PICK.into()).unwrap_or_default() {
        return DeviceFile::None;
    }
    let Some(handle) = kept(library, book).await else { return DeviceFile::Off };
    let name = name_of(&handle);
    match answer(&handle, "queryPermission", &to_write()).await {
        Ok(granted) if granted == "granted" => DeviceFile::On { name, written: None },
        _ => DeviceFile::AskAgain(name),
    }
}

/// Has the person choose a file, and writes to it from now on.
pub fn choose(library: Library, state: AppState) {
    let options = state.book.with_untracked(picking);
    spawn_local(async move {
        let (Some(shelf), Some(id)) = (library.shelf(), library.open_book()) else { return };
        match answer(&window(), PICK, &options).await {
            Ok(handle) => {
                let name = name_of(&handle);
                match shelf.backing().keep_handle(id, DEVICE_FILE, &handle).await {
                    Ok(()) => {
                        stands(library, id, DeviceFile::On { name, written: None });
                        write(library, state);
                    }
                    Err(_) => stands(library, id, DeviceFile::Failed { name, kind: String::new() }),
                }
            }
            // The person chose none.
            Err(error) if kind(&error) == "AbortError" => {}
            Err(error) => {
                let name = state.book.try_with_untracked(copy_name).unwrap_or_default();
                stands(library, id, DeviceFile::Failed { name, kind: kind(&error) });
            }
        }
    });
}

/// Asks the browser again whether the file may be written.
pub fn allow(library: Library, state: AppState) {
    spawn_local(async move {
        let Some(id) = library.open_book() else { return };
        let Some(handle) = kept(library, id).await else { return };
        if let Ok(granted) = answer(&handle, "requestPermission", &to_write()).await
            && granted == "granted"
        {
            stands(library, id, DeviceFile::On { name: name_of(&handle), written: None });
            write(library, state);
        }
    });
}

/// Writes to the file no more. The file stays as it is.
pub fn stop(library: Library) {
    let (Some(shelf), Some(id)) = (library.shelf(), library.open_book()) else { return };
    stands(library, id, DeviceFile::Off);
    spawn_local(async move {
        // Where that fails the file is asked about when the book is opened again.
        let _ = shelf.backing().file(&[no_device_file(id)]).await;
    });
}

/// Writes the open book to the file, where there is one.
pub fn write(library: Library, state: AppState) {
    let name = match library.copies.with_untracked(|copies| copies.file.clone()) {
        DeviceFile::On { name, .. } | DeviceFile::Failed { name, .. } => name,
        DeviceFile::None | DeviceFile::Off | DeviceFile::AskAgain(_) => return,
    };
    let Some(id) = library.open_book() else { return };
    let Some(text) = state.book.try_with_untracked(exchange::write) else { return };
    spawn_local(async move {
        let Some(handle) = kept(library, id).await else { return };
        let written = write_to(&handle, &text).await;
        if written.is_ok() {
            library.note_copy_of(id);
        }
        // It may have been stopped meanwhile.
        let off = library.copies.with_untracked(|copies| copies.file == DeviceFile::Off);
        if !off {
            stands(
                library,
                id,
                match written {
                    Ok(()) => DeviceFile::On { name, written: Some(now()) },
                    Err(error) => DeviceFile::Failed { name, kind: kind(&error) },
                },
            );
        }
    });
}

/// The file takes the place of the one before only when all of it is written.
async fn write_to(handle: &JsValue, text: &str) -> Result<(), JsValue> {
    let stream = answer(handle, "createWritable", &JsValue::UNDEFINED).await?;
    let written = answer(&stream, "write", &text.into()).await;
    match written {
        Ok(_) => answer(&stream, "close", &JsValue::UNDEFINED).await.map(|_| ()),
        Err(error) => {
            let _ = answer(&stream, "abort", &JsValue::UNDEFINED).await;
            Err(error)
        }
    }
}

async fn kept(library: Library, book: BookId) -> Option<JsValue> {
    library.shelf()?.backing().handle(book, DEVICE_FILE).await.ok().flatten()
}

/// How it stands with the file of a book, while that is the open one.
fn stands(library: Library, book: BookId, file: DeviceFile) {
    if library.open_book() == Some(book) {
        library.copies.update(|copies| copies.file = file);
    }
}

async fn answer(of: &JsValue, name: &str, with: &JsValue) -> Result<JsValue, JsValue> {
    JsFuture::from(call(of, name, with)?).await
}

fn copy_name(book: &Book) -> String {
    format!("{}.brimwright.json", file_name(book))
}

/// What the browser is asked for: a new file of this name.
fn picking(book: &Book) -> JsValue {
    let (options, kind, accept) = (Object::new(), Object::new(), Object::new());
    let set = |of: &Object, name: &str, value: &JsValue| Reflect::set(of, &name.into(), value);
    // A new object takes any field.
    let _ = set(&accept, "application/json", &Array::of1(&".json".into()))
        .and_then(|_| set(&kind, "accept", &accept))
        .and_then(|_| set(&options, "types", &Array::of1(&kind)))
        .and_then(|_| set(&options, "suggestedName", &copy_name(book).into()));
    options.into()
}

fn to_write() -> JsValue {
    let options = Object::new();
    // A new object takes any field.
    let _ = Reflect::set(&options, &"mode".into(), &"readwrite".into());
    options.into()
}

fn text_field(of: &JsValue, name: &str) -> String {
    Reflect::get(of, &name.into()).ok().and_then(|value| value.as_string()).unwrap_or_default()
}

fn name_of(handle: &JsValue) -> String {
    text_field(handle, "name")
}

fn kind(error: &JsValue) -> String {
    text_field(error, "name")
}
