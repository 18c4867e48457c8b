//! The names of the streams that this app does not have: nothing ever comes out of one.

use std::pin::Pin;
use std::task::{Context, Poll};

use futures_core::Stream;
use wasm_bindgen::{JsCast, JsValue};

/// A stream with nothing in it.
#[derive(Debug)]
pub struct ReadableStream(web_sys::ReadableStream);

impl ReadableStream {
    /// The stream that a browser has.
    pub fn from_raw(raw: web_sys::ReadableStream) -> ReadableStream {
        ReadableStream(raw)
    }

    /// A stream that a browser takes; none of it is ever asked for.
    pub fn from_stream(_: impl Stream<Item = Result<JsValue, JsValue>> + 'static) -> ReadableStream {
        ReadableStream(JsValue::UNDEFINED.unchecked_into())
    }

    /// What the browser has.
    pub fn into_raw(self) -> web_sys::ReadableStream {
        self.0
    }

    /// What comes out of it.
    pub fn into_stream(self) -> Nothing {
        Nothing
    }
}

/// The end of a stream.
#[derive(Debug)]
pub struct Nothing;

impl Stream for Nothing {
    type Item = Result<JsValue, JsValue>;

    fn poll_next(self: Pin<&mut Self>, _: &mut Context<'_>) -> Poll<Option<Self::Item>> {
        Poll::Ready(None)
    }
}
