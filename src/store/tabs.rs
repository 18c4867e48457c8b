//! The broadcast channel between tabs.

use std::rc::Rc;

use wasm_bindgen::prelude::Closure;
use wasm_bindgen::{JsCast, JsValue};
use web_sys::{BroadcastChannel, MessageEvent};

use super::Notice;

/// The broadcast channel to the other tabs. If the browser has none, a tab learns of the others'
/// saves when it next saves itself.
pub(super) struct Tabs {
    channel: Option<BroadcastChannel>,
    _hear: Closure<dyn Fn(MessageEvent)>,
}

impl Tabs {
    pub(super) fn new(name: &str, on_notice: Rc<dyn Fn(Notice)>) -> Tabs {
        let hear = Closure::<dyn Fn(MessageEvent)>::new(move |event: MessageEvent| {
            let text = event.data().as_string();
            if let Some(notice) = text.as_deref().and_then(Notice::from_message) {
                on_notice(notice);
            }
        });
        let channel = BroadcastChannel::new(name).ok();
        if let Some(channel) = &channel {
            channel.set_onmessage(Some(hear.as_ref().unchecked_ref()));
        }
        Tabs { channel, _hear: hear }
    }

    pub(super) fn broadcast(&self, notice: Notice) {
        if let Some((channel, message)) = self.channel.as_ref().zip(notice.message()) {
            channel.post_message(&JsValue::from_str(&message)).ok();
        }
    }
}

impl Drop for Tabs {
    fn drop(&mut self) {
        if let Some(channel) = &self.channel {
            channel.close();
        }
    }
}
