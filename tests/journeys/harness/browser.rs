//! The one place that starts browsers: by their drivers, the size of a phone, each with a profile of its own.

use std::cell::RefCell;
use std::fs;
use std::path::{Path, PathBuf};

use fantoccini::wd::WindowHandle;
use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::{Value, json};

use super::Engine;
use super::driver::Driver;

/// The folder in a profile where downloads go, as desktops call it.
const DOWNLOADS: &str = "Downloads";

/// The size of the page in CSS pixels.
const WIDTH: u32 = 360;
const HEIGHT: u32 = 740;

/// A running browser; dropping it kills it by SIGKILL.
pub struct Browser {
    client: Client,
    /// Its tabs in the order in which they were opened; the driver gives them in any order.
    tabs: RefCell<Vec<WindowHandle>>,
    profile: PathBuf,
    _driver: Driver,
}

impl Browser {
    /// Starts an engine's browser on the profile called `name`, emptied before when `fresh`.
    pub async fn start(engine: Engine, name: &str, fresh: bool) -> Browser {
        let profile = Path::new(env!("CARGO_TARGET_TMPDIR")).join("profiles").join(name);
        if fresh {
            fs::remove_dir_all(&profile).ok();
        }
        fs::create_dir_all(profile.join(DOWNLOADS)).expect("a folder for the profile and its downloads");
        let driver = Driver::start(engine, &profile);
        let mut builder = ClientBuilder::new(HttpConnector::new());
        let capabilities = match engine {
            Engine::Chromium => chromium(&profile),
            Engine::Firefox => firefox(&profile),
            Engine::WebKit => webkit(&profile),
        };
        builder.capabilities(serde_json::from_value(capabilities).expect("capabilities are an object"));
        let client = builder.connect(&format!("http://localhost:{}", driver.port)).await;
        let client = client.unwrap_or_else(|error| panic!("{engine} does not start: {error}"));
        let tabs = RefCell::new(vec![client.window().await.expect("the first tab")]);
        let browser = Browser { client, tabs, profile, _driver: driver };
        if engine != Engine::Chromium {
            browser.resize(WIDTH, HEIGHT).await;
        }
        browser
    }

    /// The WebDriver session.
    pub fn client(&self) -> &Client {
        &self.client
    }

    /// Opens a tab, which becomes the one that is used.
    pub async fn open_tab(&self) {
        let tab = self.client.new_window(true).await.expect("a new tab").handle;
        self.client.switch_to_window(tab.clone()).await.expect("the tab is used");
        self.tabs.borrow_mut().push(tab);
    }

    /// Uses the tab that was opened so many after the first of those that are open.
    pub async fn use_tab(&self, index: usize) {
        let tab = self.tabs.borrow().get(index).expect("a tab of this number").clone();
        self.client.switch_to_window(tab).await.expect("the tab is used");
    }

    /// Closes the tab that is used, and uses the first.
    pub async fn close_tab(&self) {
        let closed = self.client.window().await.expect("the tab that is used");
        self.client.close_window().await.expect("the tab closes");
        self.tabs.borrow_mut().retain(|tab| *tab != closed);
        self.use_tab(0).await;
    }

    /// Where files go that a page offers to save.
    pub fn downloads(&self) -> PathBuf {
        self.profile.join(DOWNLOADS)
    }

    /// Gives the window the size in which its page has this one, in CSS pixels.
    pub async fn resize(&self, width: u32, height: u32) {
        let around = "return [outerWidth - innerWidth, outerHeight - innerHeight]";
        let around = self.client.execute(around, Vec::new()).await.expect("the window can be measured");
        let (wider, higher): (u32, u32) = serde_json::from_value(around).expect("two numbers");
        self.client.set_window_size(width + wider, height + higher).await.expect("the window takes a size");
    }
}

fn chromium(profile: &Path) -> Value {
    json!({
        "goog:chromeOptions": {
            "args": [
                "--headless=new",
                "--no-sandbox",
                "--disable-gpu",
                "--disable-dev-shm-usage",
                "--disable-background-networking",
                "--disable-component-update",
                // Else the 201st screen within ten seconds is not gone to.
                "--disable-ipc-flooding-protection",
                "--no-first-run",
                format!("--window-size={WIDTH},{HEIGHT}"),
                format!("--user-data-dir={}", profile.display()),
            ],
            "mobileEmulation": {
                "deviceMetrics": {
                    "width": WIDTH, "height": HEIGHT, "pixelRatio": 2.0, "touch": true, "mobile": true
                }
            },
            "prefs": {
                "download.default_directory": profile.join(DOWNLOADS),
                "download.prompt_for_download": false
            }
        },
        "goog:loggingPrefs": { "browser": "ALL" }
    })
}

fn firefox(profile: &Path) -> Value {
    // Else a window is never as narrow as a phone.
    let style = profile.join("chrome");
    fs::create_dir_all(&style).expect("a folder for the style");
    fs::write(style.join("userChrome.css"), ":root { min-width: 0 !important; }\n").expect("the style is written");
    json!({
        "moz:firefoxOptions": {
            "binary": "/usr/bin/firefox-esr",
            "args": ["-headless", "--profile", profile],
            "prefs": {
                "browser.download.folderList": 2,
                "browser.download.dir": profile.join(DOWNLOADS),
                "browser.download.alwaysOpenPanel": false,
                "browser.helperApps.neverAsk.saveToDisk": "application/json,text/csv,text/plain",
                "toolkit.legacyUserProfileCustomizations.stylesheets": true,
                // As on a phone, nothing of the page's width goes to what scrolls it.
                "ui.useOverlayScrollbars": 1
            }
        }
    })
}

fn webkit(profile: &Path) -> Value {
    // Else what stands around the page is wider than a phone.
    let style = profile.join(".config/gtk-3.0");
    fs::create_dir_all(&style).expect("a folder for the style");
    let narrow = "window * { padding: 0; margin: 0; border-width: 0; min-width: 0; }\n";
    fs::write(style.join("gtk.css"), narrow).expect("the style is written");
    let folders = format!("XDG_DOWNLOAD_DIR=\"$HOME/{DOWNLOADS}\"\n");
    fs::write(profile.join(".config/user-dirs.dirs"), folders).expect("the folder of downloads is named");
    json!({})
}
