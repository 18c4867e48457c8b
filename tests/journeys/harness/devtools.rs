//! What only the browser's own tools can do, in Chromium: a slower processor, what the console heard; and screens of
//! other sizes, in every engine.

use fantoccini::error::CmdError;
use fantoccini::wd::WebDriverCompatibleCommand;
use http::Method;
use serde_json::{Value, json};
use url::{ParseError, Url};

use super::{By, Engine, Journey};

/// Notes how long the next key takes: a message sent in the frame after it comes once that frame
/// is painted.
const LISTEN: &str = "
window.painted = null;
let pressed;
addEventListener('keydown', (key) => { pressed = key.timeStamp }, { capture: true, once: true });
addEventListener('input', () => requestAnimationFrame(() => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => { window.painted = performance.now() - pressed };
    port2.postMessage(null);
}), { capture: true, once: true });
";

/// A command of the driver beyond those of WebDriver.
#[derive(Debug)]
struct Command {
    path: &'static str,
    body: Value,
}

impl WebDriverCompatibleCommand for Command {
    fn endpoint(&self, base: &Url, session: Option<&str>) -> Result<Url, ParseError> {
        base.join(&format!("session/{}/{}", session.unwrap_or_default(), self.path))
    }

    fn method_and_body(&self, _: &Url) -> (Method, Option<String>) {
        (Method::POST, Some(self.body.to_string()))
    }
}

impl Journey {
    /// Gives the screen another size, in CSS pixels.
    pub async fn resize(&self, width: u32, height: u32) {
        if self.engine == Engine::Chromium {
            let parameters = json!({ "width": width, "height": height, "deviceScaleFactor": 1, "mobile": true });
            self.devtools("Emulation.setDeviceMetricsOverride", parameters).await;
        } else {
            self.browser().resize(width, height).await;
        }
        let script = format!(
            "const {{ clientWidth, clientHeight }} = document.documentElement;
             return clientWidth === {width} && clientHeight === {height}"
        );
        self.wait_until(&format!("a screen of {width} by {height}"), &script).await;
    }

    /// Slows the page's processor down so many times.
    #[allow(dead_code, reason = "for the figures of the bench")]
    pub async fn slow_down(&self, times: u32) {
        let body = json!({ "cmd": "Emulation.setCPUThrottlingRate", "params": { "rate": times } });
        self.command("goog/cdp/execute", body).await.expect("the processor slows down");
    }

    /// Types over what is in a field, key by key; how long each took, in milliseconds, from the
    /// key to the painted page.
    #[allow(dead_code, reason = "for the figures of the bench")]
    pub async fn painted(&self, by: By<'_>, text: &str) -> Vec<f64> {
        self.type_into(by, "").await;
        self.painted_by_keys(by, text.chars().map(String::from)).await
    }

    /// Presses keys in a field or on a slider; how long each took, in milliseconds, from the key to the painted page.
    #[allow(dead_code, reason = "for the figures of the bench")]
    pub async fn painted_by_keys(&self, by: By<'_>, keys: impl IntoIterator<Item = String>) -> Vec<f64> {
        let field = self.until(&by.to_string(), async || self.find(by).await).await;
        let mut times = Vec::new();
        for key in keys {
            self.client().execute(LISTEN, Vec::new()).await.expect("the page listens");
            field.send_keys(&key).await.expect("the key is typed");
            self.wait_until("the page to be painted", "return window.painted !== null").await;
            let took = self.client().execute("return window.painted", Vec::new()).await.expect("a time");
            times.push(took.as_f64().expect("a number"));
        }
        times
    }

    /// The errors that the console heard since it was last asked.
    pub async fn console_errors(&self) -> Vec<String> {
        let heard = self.command("se/log", json!({ "type": "browser" })).await.expect("the console's log");
        let severe = |entry: &&Value| entry.get("level").is_some_and(|level| level == "SEVERE");
        heard.as_array().expect("a list").iter().filter(severe).map(Value::to_string).collect()
    }

    /// Does a command of the browser's own tools, and gives what it answers.
    pub(super) async fn devtools(&self, command: &str, parameters: Value) -> Value {
        let body = json!({ "cmd": command, "params": parameters });
        let answer = self.command("goog/cdp/execute", body).await;
        answer.unwrap_or_else(|error| panic!("{}: {command}: {error}", self.name))
    }

    async fn command(&self, path: &'static str, body: Value) -> Result<Value, CmdError> {
        self.client().issue_cmd(Command { path, body }).await
    }
}
