//! One journey: a site on a port of its own, a browser with a profile of its own, and what a
//! person does with them. Nothing here waits for a fixed time: each step waits for what it needs
//! and fails, with a picture and the page's text, when that does not come.

mod browser;
mod devtools;
mod downloads;
mod driver;
mod engine;
mod fields;
mod find;
mod layout;
mod printed;
mod processes;
pub mod pseudo;
mod publisher;
mod reading;
mod tabs;

use std::cell::RefCell;
use std::collections::BTreeSet;
use std::fmt::Debug;
use std::fs;
use std::net::Ipv4Addr;
use std::path::{Path, PathBuf};
use std::time::{Duration, Instant};

use fantoccini::elements::Element;
use fantoccini::error::CmdError;
use serde_json::Value;

use brimwright_dev::site::Site;
use browser::Browser;
pub use engine::Engine;
pub(crate) use engine::in_each_engine;
pub use find::By;
pub use layout::Screen;
pub use publisher::Publisher;

/// The file of the demo book.
pub const DEMO: &str = concat!(env!("CARGO_MANIFEST_DIR"), "/../../public/books/marrowgate-juice-hall.json");

/// How long a step may take on a slow, busy machine.
const PATIENCE: Duration = Duration::from_secs(30);
/// How long to rest between two looks at a condition.
const REST: Duration = Duration::from_millis(15);

/// Ends when what came of a click is drawn: a screen that it led to has taken the place of the one
/// before, also one that was on its way. A page that is not seen is not drawn.
const DRAWN: &str = "
const [done] = arguments;
const come = () => (document.querySelector('.coming') ? setTimeout(come, 10) : done());
document.hidden ? done() : requestAnimationFrame(() => requestAnimationFrame(come));
";

/// Goes to an address within the page. The app listens since its start, so it hears before the
/// promise does; its effects come before the next message. A screen on its way is waited for.
const GO: &str = r"
const go = (hash) => new Promise((done) => {
    if (!hash || location.hash === hash) return done();
    addEventListener('hashchange', () => {
        const { port1, port2 } = new MessageChannel();
        const come = () => (document.querySelector('.coming') ? setTimeout(come, 10) : done());
        port1.onmessage = come;
        port2.postMessage(null);
    }, { once: true });
    location.hash = hash;
});
";

/// A journey under way.
pub struct Journey {
    engine: Engine,
    /// Names its pictures, its profile and its site.
    name: String,
    /// The site, where it is the journey's own.
    own: Option<Publisher>,
    folder: PathBuf,
    site: Option<Site>,
    port: u16,
    browser: Option<Browser>,
    patience: Duration,
    /// What stands on screens without a mark, where every text of the app has one.
    unmarked: BTreeSet<String>,
}

impl Journey {
    /// Starts a journey through the app in Chromium. `name` names its pictures and its profile: no
    /// two journeys may share it.
    pub async fn start(name: &str) -> Journey {
        Journey::start_in(Engine::Chromium, name).await
    }

    /// Starts a journey through the app in an engine. No two journeys in one engine may share `name`.
    pub async fn start_in(engine: Engine, name: &str) -> Journey {
        let own = Publisher::new(&named(engine, name));
        own.publish("");
        let mut journey = Journey::start_in_on(engine, name, own.address()).await;
        journey.own = Some(own);
        journey
    }

    /// Starts a journey in Chromium through the site in another folder.
    pub async fn start_on(name: &str, folder: &str) -> Journey {
        Journey::start_in_on(Engine::Chromium, name, folder).await
    }

    /// Starts a journey in an engine through the site in another folder.
    pub async fn start_in_on(engine: Engine, name: &str, folder: &str) -> Journey {
        let (name, folder) = (named(engine, name), PathBuf::from(folder));
        let site = Site::open(&folder, Ipv4Addr::LOCALHOST, 0).expect("the site opens");
        let browser = Some(Browser::start(engine, &name, true).await);
        let port = site.port();
        Journey {
            engine,
            name,
            own: None,
            folder,
            port,
            site: Some(site),
            browser,
            patience: PATIENCE,
            unmarked: BTreeSet::new(),
        }
    }

    /// Runs a script in every page that is loaded from here on, before the page's own.
    pub fn before_each_load(&self, script: &str) {
        self.own.as_ref().expect("the built site").before_each_load(script);
    }

    /// The same journey, in which a text without a mark is a fault of layout unless it is one of these.
    pub fn with_marked_texts(mut self, unmarked: BTreeSet<String>) -> Journey {
        self.unmarked = unmarked;
        self
    }

    /// The same journey, for steps that are expected to fail.
    pub fn impatient(mut self) -> Journey {
        self.patience = Duration::from_secs(2);
        self
    }

    /// The name that no other journey has.
    pub fn name(&self) -> &str {
        &self.name
    }

    /// Stops the site: from here on the journey is offline.
    pub fn close_site(&mut self) {
        self.site = None;
    }

    /// Opens the site again at the same address.
    pub fn open_site(&mut self) {
        let site = Site::open(&self.folder, Ipv4Addr::LOCALHOST, self.port);
        self.site = Some(site.expect("the site opens at the same port"));
    }

    /// Kills the browser's process by SIGKILL: it can finish nothing.
    pub fn kill_browser(&mut self) {
        self.browser = None;
    }

    /// Starts the browser again on the same profile.
    pub async fn start_browser(&mut self) {
        self.browser = Some(Browser::start(self.engine, &self.name, false).await);
    }

    /// Goes to the app's address and waits until the app has taken the place of the start page.
    pub async fn open(&self) {
        self.try_to_open().await.expect("the page loads");
        self.wait_until_started().await;
    }

    /// Waits until the app has taken the place of the start page.
    pub async fn wait_until_started(&self) {
        let script = "return !document.getElementById('start')";
        self.wait_until("the app to start", script).await;
    }

    /// Goes to the app's address.
    pub async fn try_to_open(&self) -> Result<(), CmdError> {
        self.client().goto(&self.address()).await
    }

    fn address(&self) -> String {
        format!("http://localhost:{}/", self.port)
    }

    /// Waits until the service worker has kept the whole app and serves this page.
    pub async fn wait_until_kept_offline(&self) {
        self.wait_until(
            "the service worker to take over",
            "return navigator.serviceWorker.controller?.state === 'activated'",
        )
        .await;
    }

    /// Brings an element to the middle of the screen.
    async fn to_the_middle(&self, element: &Element) -> Result<(), CmdError> {
        let middle = "arguments[0].scrollIntoView({ block: 'center', inline: 'center' })";
        let handle = serde_json::to_value(element)?;
        self.client().execute(middle, vec![handle]).await.map(|_| ())
    }

    /// Clicks an element once it is there and can be clicked, brought to the middle of the
    /// screen so that nothing fixed to an edge covers it; returns once what came of it is drawn.
    pub async fn click(&self, by: By<'_>) {
        self.until(&by.to_string(), async || {
            let element = self.find(by).await?;
            self.to_the_middle(&element).await?;
            element.click().await
        })
        .await;
        self.until("the screen to be drawn", async || self.client().execute_async(DRAWN, Vec::new()).await).await;
    }

    /// The visible text of an element once it is there.
    pub async fn text_of(&self, by: By<'_>) -> String {
        self.until(&by.to_string(), async || self.find(by).await?.text().await).await
    }

    /// Waits until the page shows `text`.
    pub async fn wait_for_text(&self, text: &str) {
        self.until(&format!("the text {text:?}"), async || {
            let shown = self.page_text().await?;
            shown.contains(text).then_some(()).ok_or_else(not_yet)
        })
        .await;
    }

    /// Waits until the page no longer shows `text`.
    pub async fn wait_for_text_gone(&self, text: &str) {
        self.until(&format!("the text {text:?} to go"), async || {
            let shown = self.page_text().await?;
            (!shown.contains(text)).then_some(()).ok_or_else(not_yet)
        })
        .await;
    }

    /// Waits until `script` returns true; `what` says in words what is waited for.
    pub async fn wait_until(&self, what: &str, script: &str) {
        self.until(what, async || {
            let value = self.client().execute(script, Vec::new()).await?;
            (value == Value::Bool(true)).then_some(()).ok_or_else(not_yet)
        })
        .await;
    }

    /// Runs a script that may await, and gives what it returns.
    pub async fn run(&self, script: &str) -> Value {
        let script = format!(
            "const [done] = arguments;
             (async () => {{ {script} }})().then((value) => done({{ value }}), (error) => done({{ error: `${{error}}` }}))"
        );
        let answer = self.client().execute_async(&script, Vec::new()).await.expect("the script ends");
        assert!(answer["error"].is_null(), "{}: a script failed: {}", self.name, answer["error"]);
        answer["value"].clone()
    }

    /// The value of a key in the page's localStorage.
    pub async fn local_storage(&self, key: &str) -> Option<String> {
        let script = "return localStorage.getItem(arguments[0])";
        let value = self.client().execute(script, vec![key.into()]).await;
        value.expect("localStorage can be read").as_str().map(str::to_owned)
    }

    /// Goes to an address of the app by its hash, such as "#/book", in the page that is open;
    /// returns once the app has heard of it and shown the screen.
    pub async fn go(&self, hash: &str) {
        let script = format!("const [hash, done] = arguments; {GO} go(hash).then(done)");
        self.client().execute_async(&script, vec![hash.into()]).await.expect("the address changes");
    }

    /// Width and height of the viewport in CSS pixels.
    pub async fn viewport(&self) -> (u64, u64) {
        let script = "return [innerWidth, innerHeight]";
        let size = self.client().execute(script, Vec::new()).await;
        serde_json::from_value(size.expect("the viewport has a size")).expect("two numbers")
    }

    /// Writes what the page looks like to `target/journeys/JOURNEY-name.png`.
    pub async fn screenshot(&self, name: &str) -> PathBuf {
        let path = self.picture(name);
        let picture = self.client().screenshot().await.expect("a picture");
        fs::write(&path, picture).expect("the picture is written");
        path
    }

    /// Where a picture of this name is written.
    fn picture(&self, name: &str) -> PathBuf {
        let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("../journeys");
        fs::create_dir_all(&folder).expect("the folder of pictures");
        folder.join(format!("{}-{name}.png", self.name))
    }

    fn browser(&self) -> &Browser {
        self.browser.as_ref().expect("the browser is running")
    }

    fn client(&self) -> &fantoccini::Client {
        self.browser().client()
    }

    async fn find(&self, by: By<'_>) -> Result<Element, CmdError> {
        by.find(self.client()).await
    }

    async fn page_text(&self) -> Result<String, CmdError> {
        let script = "return document.body.innerText";
        let text = self.client().execute(script, Vec::new()).await?;
        Ok(text.as_str().unwrap_or_default().replace('\u{a0}', " "))
    }

    /// Reads until what is read is what is expected; fails with the last that was read.
    async fn expect<T: Debug + PartialEq>(&self, what: &str, expected: T, read: impl AsyncFn() -> Result<T, CmdError>) {
        let last = RefCell::new(None);
        let attempt = async || {
            let value = read().await?;
            let fits = value == expected;
            last.replace(Some(value));
            fits.then_some(()).ok_or_else(not_yet)
        };
        if let Err(failure) = self.try_until(what, attempt).await {
            panic!("expected: {expected:#?}\nlast read: {:#?}\n{failure}", last.take());
        }
    }

    /// Tries until it succeeds, or fails the journey when patience is at an end.
    async fn until<T>(&self, what: &str, attempt: impl AsyncFn() -> Result<T, CmdError>) -> T {
        self.try_until(what, attempt).await.unwrap_or_else(|failure| panic!("{failure}"))
    }

    /// Tries until it succeeds; when patience is at an end, says what was waited for.
    async fn try_until<T>(&self, what: &str, attempt: impl AsyncFn() -> Result<T, CmdError>) -> Result<T, String> {
        let deadline = Instant::now() + self.patience;
        loop {
            match attempt().await {
                Ok(value) => return Ok(value),
                Err(error) if Instant::now() > deadline => {
                    let picture = self.screenshot("failed").await;
                    let text = self.page_text().await.unwrap_or_default();
                    return Err(format!(
                        "{}: waited for {what} ({error})\npicture: {}\nthe page says:\n{text}",
                        self.name,
                        picture.display()
                    ));
                }
                Err(_) => tokio::time::sleep(REST).await,
            }
        }
    }
}

/// The name of a journey in an engine.
fn named(engine: Engine, name: &str) -> String {
    match engine {
        Engine::Chromium => name.to_owned(),
        other => format!("{name}-{other}"),
    }
}

/// The error of a condition that does not hold yet.
fn not_yet() -> CmdError {
    CmdError::WaitTimeout
}
