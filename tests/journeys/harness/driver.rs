//! Drivers: one process for each browser, on a port of its own.

use std::io::{BufRead, BufReader};
use std::net::{Ipv4Addr, TcpListener, TcpStream};
use std::path::Path;
use std::process::{Child, Command, Stdio};
use std::sync::atomic::{AtomicU16, Ordering};
use std::time::{Duration, Instant};

use super::{Engine, REST, processes};

/// How long a driver may take until it listens.
const PATIENCE: Duration = Duration::from_secs(30);

/// The ports to try, below those that the system gives away by itself, so that none is taken in between.
const PORTS: std::ops::Range<u16> = 10_000..30_000;

/// A driver, and the screen of a browser that cannot do without one. Dropping kills both by SIGKILL, with the browser.
pub struct Driver {
    process: Child,
    screen: Option<Child>,
    /// The port it listens on.
    pub port: u16,
}

impl Driver {
    /// Starts the driver of an engine, which keeps what it must in the folder `profile`.
    pub fn start(engine: Engine, profile: &Path) -> Driver {
        let screen = (engine == Engine::WebKit).then(screen);
        let display = screen.as_ref().map(|(_, display)| display.as_str());
        let (process, port) = listening(|port| command(engine, port, profile, display));
        Driver { process, screen: screen.map(|(process, _)| process), port }
    }
}

impl Drop for Driver {
    fn drop(&mut self) {
        processes::kill(&mut self.process);
        if let Some(screen) = &mut self.screen {
            processes::kill(screen);
        }
    }
}

fn command(engine: Engine, port: u16, profile: &Path, display: Option<&str>) -> Command {
    let program = |variable, name: &str| Command::new(std::env::var(variable).unwrap_or(name.to_owned()));
    let mut command = match engine {
        Engine::Chromium => program("CHROMEDRIVER", "chromedriver"),
        Engine::Firefox => program("GECKODRIVER", "geckodriver"),
        Engine::WebKit => program("WEBKITDRIVER", "WebKitWebDriver"),
    };
    // Numbers are written as in American English, whatever this machine speaks.
    command.arg(format!("--port={port}")).env("LANG", "en_US.UTF-8").env_remove("LC_ALL").env_remove("LANGUAGE");
    if engine == Engine::WebKit {
        // It has no profile: where it looks for folders of the person, it finds this one.
        command.env("HOME", profile).env("XDG_CONFIG_HOME", profile.join(".config"));
        command.env("DISPLAY", display.unwrap_or_default()).env("GDK_BACKEND", "x11").env("NO_AT_BRIDGE", "1");
        command.env_remove("DBUS_SESSION_BUS_ADDRESS");
    }
    command
}

/// Starts a driver on a port that is free, and waits until it listens.
fn listening(command: impl Fn(u16) -> Command) -> (Child, u16) {
    let deadline = Instant::now() + PATIENCE;
    loop {
        let port = free_port();
        let mut command = command(port);
        command.stdin(Stdio::null()).stdout(Stdio::null()).stderr(Stdio::null());
        let mut process = command.spawn().unwrap_or_else(|error| {
            panic!("{command:?} cannot be started ({error}): `cargo dev test` installs it and says where it is")
        });
        // One that ends at once has found its port taken.
        while process.try_wait().expect("the driver can be asked").is_none() {
            if TcpStream::connect((Ipv4Addr::LOCALHOST, port)).is_ok() {
                return (process, port);
            }
            assert!(Instant::now() < deadline, "{command:?} does not listen");
            std::thread::sleep(REST);
        }
        assert!(Instant::now() < deadline, "{command:?} ends at once");
    }
}

/// A port that nobody listens on and that this process did not take before.
fn free_port() -> u16 {
    static TAKEN: AtomicU16 = AtomicU16::new(0);
    // Several processes begin at several places.
    let begin = std::process::id() as usize * 50;
    let count = PORTS.len();
    (0..count)
        .map(|_| begin + usize::from(TAKEN.fetch_add(1, Ordering::Relaxed)))
        .map(|number| PORTS.start + (number % count) as u16)
        .find(|port| TcpListener::bind((Ipv4Addr::LOCALHOST, *port)).is_ok())
        .expect("a free port")
}

/// A screen in memory, and its name.
fn screen() -> (Child, String) {
    let mut screen = Command::new("Xvfb")
        .args(["-displayfd", "1", "-screen", "0", "1600x1200x24", "-nolisten", "tcp"])
        .stdin(Stdio::null())
        .stdout(Stdio::piped())
        .stderr(Stdio::null())
        .spawn()
        .unwrap_or_else(|error| panic!("Xvfb cannot be started ({error}): `cargo dev test` installs it"));
    let mut number = String::new();
    let said = screen.stdout.as_mut().expect("the output of Xvfb");
    BufReader::new(said).read_line(&mut number).expect("Xvfb says its number");
    (screen, format!(":{}", number.trim()))
}
