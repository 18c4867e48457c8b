//! The one place that starts browsers: Chromium by its driver, the size of a phone, with a
//! profile of its own.

use std::fs;
use std::io::{BufRead, BufReader};
use std::path::{Path, PathBuf};
use std::process::{Child, Command, Stdio};
use std::time::{Duration, Instant};

use fantoccini::{Client, ClientBuilder};
use hyper_util::client::legacy::connect::HttpConnector;
use serde_json::json;

/// How long the death of a process may take.
const DEATH: Duration = Duration::from_secs(10);

/// The folder in a profile where downloads go.
const DOWNLOADS: &str = "downloads";

/// A running browser; dropping it kills it by SIGKILL.
pub struct Browser {
    driver: Child,
    client: Client,
    profile: PathBuf,
}

impl Browser {
    /// Starts Chromium on the profile called `name`, emptied before when `fresh`.
    pub async fn start(name: &str, fresh: bool) -> Browser {
        let profile = Path::new(env!("CARGO_TARGET_TMPDIR")).join("profiles").join(name);
        if fresh {
            fs::remove_dir_all(&profile).ok();
        }
        fs::create_dir_all(profile.join(DOWNLOADS)).expect("a folder for the profile and its downloads");
        let (driver, port) = start_driver();
        let mut builder = ClientBuilder::new(HttpConnector::new());
        builder.capabilities(capabilities(&profile));
        let client = builder.connect(&format!("http://localhost:{port}")).await;
        Browser { driver, client: client.expect("Chromium starts"), profile }
    }

    /// The WebDriver session.
    pub fn client(&self) -> &Client {
        &self.client
    }

    /// Where files go that a page offers to save.
    pub fn downloads(&self) -> PathBuf {
        self.profile.join(DOWNLOADS)
    }
}

impl Drop for Browser {
    fn drop(&mut self) {
        let browser = processes_on(&self.profile);
        for id in &browser {
            // The shell's own `kill`: a bare system has no other.
            Command::new("sh").args(["-c", &format!("kill -9 {id}")]).status().ok();
        }
        self.driver.kill().ok();
        self.driver.wait().ok();
        let deadline = Instant::now() + DEATH;
        while !processes_on(&self.profile).is_empty() && Instant::now() < deadline {
            std::thread::yield_now();
        }
    }
}

/// Starts chromedriver on a free port, which it says itself.
fn start_driver() -> (Child, u16) {
    let path = std::env::var("CHROMEDRIVER").unwrap_or("chromedriver".to_owned());
    let mut driver = Command::new(path)
        .arg("--port=0")
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .spawn()
        .expect("chromedriver starts: `cargo dev test` installs it");
    let said = driver.stdout.take().expect("chromedriver's output");
    let port = BufReader::new(said).lines().find_map(|line| {
        let line = line.ok()?;
        let (_, port) = line.split_once("started successfully on port ")?;
        port.trim_end_matches('.').parse().ok()
    });
    (driver, port.expect("chromedriver says its port"))
}

fn capabilities(profile: &Path) -> serde_json::Map<String, serde_json::Value> {
    let capabilities = json!({
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
                "--window-size=360,740",
                user_data(profile),
            ],
            "mobileEmulation": {
                "deviceMetrics": {
                    "width": 360, "height": 740, "pixelRatio": 2.0, "touch": true, "mobile": true
                }
            },
            "prefs": {
                "download.default_directory": profile.join(DOWNLOADS),
                "download.prompt_for_download": false
            }
        },
        "goog:loggingPrefs": { "browser": "ALL" }
    });
    serde_json::from_value(capabilities).expect("capabilities are an object")
}

fn user_data(profile: &Path) -> String {
    format!("--user-data-dir={}", profile.display())
}

/// The ids of the running processes that work on a profile.
fn processes_on(profile: &Path) -> Vec<String> {
    let mark = user_data(profile);
    let runs_on_it = |id: &String| {
        fs::read(format!("/proc/{id}/cmdline"))
            .is_ok_and(|line| line.split(|byte| *byte == 0).any(|word| word == mark.as_bytes()))
    };
    fs::read_dir("/proc")
        .into_iter()
        .flatten()
        .flatten()
        .filter_map(|entry| entry.file_name().into_string().ok())
        .filter(|name| name.bytes().all(|byte| byte.is_ascii_digit()))
        .filter(runs_on_it)
        .collect()
}
