//! A small HTTP server for one folder of files, on this machine or its network.
//!
//! `cargo dev serve` and the journeys share it. Every answer closes its connection, so a closed
//! site is gone at once: nothing a browser kept open can still be answered.

use std::fs;
use std::io::{self, BufRead, BufReader, Read, Write};
use std::net::{Ipv4Addr, SocketAddrV4, TcpListener, TcpStream};
use std::path::{Component, Path, PathBuf};
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::thread::{self, JoinHandle};
use std::time::Duration;

/// The longest request head that is read, in bytes.
const LONGEST_HEAD: u64 = 16 * 1024;
/// A page that answers for every file that is not there, with the status of success, as some hosts do; where it is
/// not there either, the answer is 404.
const FOR_MISSING: &str = "200.html";
/// How long a silent connection may hold its thread.
const PATIENCE: Duration = Duration::from_secs(10);

/// A folder being served; closed when dropped: from then on connections are refused.
pub struct Site {
    address: SocketAddrV4,
    closing: Arc<AtomicBool>,
    door: Option<JoinHandle<()>>,
}

impl Site {
    /// Serves `folder` at `ip` and `port`; port 0 takes a free one.
    ///
    /// # Errors
    ///
    /// The port is taken, or may not be used.
    pub fn open(folder: &Path, ip: Ipv4Addr, port: u16) -> io::Result<Site> {
        let listener = TcpListener::bind((ip, port))?;
        let address = SocketAddrV4::new(ip, listener.local_addr()?.port());
        let closing = Arc::new(AtomicBool::new(false));
        let closed = Arc::clone(&closing);
        let folder = folder.to_owned();
        let door = thread::spawn(move || {
            for connection in listener.incoming() {
                if closed.load(Ordering::SeqCst) {
                    break;
                }
                let Ok(connection) = connection else { continue };
                let folder = folder.clone();
                thread::spawn(move || answer(&connection, &folder));
            }
        });
        Ok(Site { address, closing, door: Some(door) })
    }

    /// The port being served.
    pub fn port(&self) -> u16 {
        self.address.port()
    }
}

impl Drop for Site {
    fn drop(&mut self) {
        let Some(door) = self.door.take() else { return };
        self.closing.store(true, Ordering::SeqCst);
        // The door waits for a visitor; this is the last one.
        TcpStream::connect((Ipv4Addr::LOCALHOST, self.port())).ok();
        door.join().ok();
    }
}

/// Answers the one request of a connection. A visitor who leaves early is no error.
fn answer(connection: &TcpStream, folder: &Path) {
    connection.set_read_timeout(Some(PATIENCE)).ok();
    connection.set_write_timeout(Some(PATIENCE)).ok();
    let Some(request) = Request::read(connection) else {
        return;
    };
    Reply::to(&request, folder).send(connection, request.method == "HEAD");
}

/// What is asked for.
struct Request {
    method: String,
    target: String,
    takes_brotli: bool,
}

impl Request {
    fn read(connection: impl Read) -> Option<Request> {
        let mut lines = BufReader::new(connection.take(LONGEST_HEAD)).lines();
        let first = lines.next()?.ok()?;
        let mut words = first.split(' ');
        let (method, target) = (words.next()?.to_owned(), words.next()?.to_owned());
        let mut takes_brotli = false;
        for line in lines {
            let line = line.ok()?;
            if line.is_empty() {
                return Some(Request { method, target, takes_brotli });
            }
            if let Some((name, value)) = line.split_once(':')
                && name.eq_ignore_ascii_case("accept-encoding")
            {
                takes_brotli = value.split(',').any(|coding| coding.split(';').next().unwrap_or("").trim() == "br");
            }
        }
        None
    }
}

/// What is answered.
struct Reply {
    status: &'static str,
    content_type: &'static str,
    brotli: bool,
    body: Vec<u8>,
}

impl Reply {
    fn to(request: &Request, folder: &Path) -> Reply {
        if request.method != "GET" && request.method != "HEAD" {
            return Reply::text("405 Method Not Allowed", "Only GET and HEAD are answered.\n");
        }
        let Some(file) = file_asked_for(&request.target) else {
            return Reply::text("404 Not Found", "There is no such file here.\n");
        };
        let path = folder.join(&file);
        let content_type = content_type(&file);
        if request.takes_brotli
            && let Ok(body) = fs::read(with_suffix(&path, ".br"))
        {
            return Reply { status: "200 OK", content_type, brotli: true, body };
        }
        match (fs::read(&path), fs::read(folder.join(FOR_MISSING))) {
            (Ok(body), _) => Reply { status: "200 OK", content_type, brotli: false, body },
            (Err(_), Ok(body)) => {
                Reply { status: "200 OK", content_type: "text/html; charset=utf-8", brotli: false, body }
            }
            (Err(_), Err(_)) => Reply::text("404 Not Found", "There is no such file here.\n"),
        }
    }

    fn text(status: &'static str, text: &str) -> Reply {
        Reply { status, content_type: "text/plain; charset=utf-8", brotli: false, body: text.as_bytes().to_vec() }
    }

    fn send(&self, mut connection: &TcpStream, head_only: bool) {
        let coding = if self.brotli { "Content-Encoding: br\r\n" } else { "" };
        let head = format!(
            "HTTP/1.1 {}\r\nContent-Type: {}\r\nContent-Length: {}\r\n{coding}\
             Vary: Accept-Encoding\r\nCache-Control: no-cache\r\nConnection: close\r\n\
             X-Content-Type-Options: nosniff\r\nReferrer-Policy: no-referrer\r\n\
             Content-Security-Policy: frame-ancestors 'none'\r\n\r\n",
            self.status,
            self.content_type,
            self.body.len(),
        );
        if connection.write_all(head.as_bytes()).is_ok() && !head_only {
            connection.write_all(&self.body).ok();
        }
    }
}

/// The file behind a request's target, relative to the folder; none when the target could lead
/// out of it or to a hidden file.
fn file_asked_for(target: &str) -> Option<PathBuf> {
    let path = target.split(['?', '#']).next()?.strip_prefix('/')?;
    if path.is_empty() {
        return Some(PathBuf::from("index.html"));
    }
    let path = PathBuf::from(percent_decoded(path)?);
    let plain = path.components().all(|part| match part {
        Component::Normal(name) => !name.to_string_lossy().starts_with('.'),
        _ => false,
    });
    plain.then_some(path)
}

/// Undoes percent-encoding (RFC 3986, section 2.1); none when it is malformed.
fn percent_decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::new();
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let high = char::from(rest.next()?).to_digit(16)?;
            let low = char::from(rest.next()?).to_digit(16)?;
            bytes.push(u8::try_from(high * 16 + low).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok()
}

/// The media type of a file, by its extension.
fn content_type(file: &Path) -> &'static str {
    match file.extension().and_then(|end| end.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

/// The path with `suffix` after its extension.
pub fn with_suffix(path: &Path, suffix: &str) -> PathBuf {
    let mut name = path.as_os_str().to_owned();
    name.push(suffix);
    PathBuf::from(name)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_root_is_the_page_and_queries_are_ignored() {
        assert_eq!(file_asked_for("/"), Some("index.html".into()));
        assert_eq!(file_asked_for("/?a=/b"), Some("index.html".into()));
        assert_eq!(file_asked_for("/icons/a%20b.svg?1"), Some("icons/a b.svg".into()));
    }

    #[test]
    fn nothing_outside_the_folder_or_hidden_is_served() {
        for target in ["/../Cargo.toml", "/a/../../b", "/%2e%2e/b", "//etc/passwd", "/.stage/a", "/%zz", "http://x/"] {
            assert_eq!(file_asked_for(target), None, "{target}");
        }
    }

    /// The media types browsers ask of a module, of streamed wasm and of a manifest
    /// (HTML standard; WebAssembly Web API, section 3; Web App Manifest, section 4).
    #[test]
    fn media_types_are_those_the_standards_ask_for() {
        assert_eq!(content_type(Path::new("a.wasm")), "application/wasm");
        assert_eq!(content_type(Path::new("a.js")), "text/javascript; charset=utf-8");
        assert_eq!(content_type(Path::new("a.webmanifest")), "application/manifest+json");
        assert_eq!(content_type(Path::new("a.svg")), "image/svg+xml");
    }

    #[test]
    fn brotli_is_sent_only_to_those_who_take_it() {
        let head = |coding: &str| format!("GET / HTTP/1.1\r\nAccept-Encoding: {coding}\r\n\r\n");
        let takes = |coding: &str| Request::read(head(coding).as_bytes()).is_some_and(|request| request.takes_brotli);
        assert!(takes("gzip, deflate, br"));
        assert!(takes("br;q=0.9"));
        assert!(!takes("gzip, brx"));
    }

    #[test]
    fn where_a_page_answers_for_missing_files_it_does() {
        let folder = std::env::temp_dir().join(format!("brimwright-missing-{}", std::process::id()));
        fs::create_dir_all(&folder).expect("a folder");
        fs::write(folder.join(FOR_MISSING), "<!doctype html>").expect("a page");
        let head = b"GET /gone.js HTTP/1.1\r\n\r\n";
        let request = Request::read(head.as_slice()).expect("a request");
        let reply = Reply::to(&request, &folder);
        fs::remove_dir_all(&folder).ok();
        assert_eq!((reply.status, reply.content_type), ("200 OK", "text/html; charset=utf-8"));
        assert_eq!(reply.body, b"<!doctype html>");
    }

    #[test]
    fn a_missing_file_is_a_404_in_text_and_a_closed_site_refuses() {
        let site = Site::open(Path::new(env!("CARGO_MANIFEST_DIR")), Ipv4Addr::LOCALHOST, 0).expect("opens");
        let port = site.port();
        let ask = |path: &str| {
            let mut connection = TcpStream::connect((Ipv4Addr::LOCALHOST, port)).ok()?;
            write!(connection, "GET {path} HTTP/1.1\r\n\r\n").ok()?;
            let mut reply = String::new();
            connection.read_to_string(&mut reply).ok()?;
            Some(reply)
        };
        assert!(ask("/site.rs").is_some_and(|reply| reply.starts_with("HTTP/1.1 200 OK\r\n")));
        let missing = ask("/missing.js").expect("an answer");
        assert!(missing.starts_with("HTTP/1.1 404 Not Found\r\nContent-Type: text/plain; charset=utf-8\r\n"));
        assert!(missing.ends_with("\r\n\r\nThere is no such file here.\n"));
        drop(site);
        assert_eq!(ask("/site.rs"), None);
    }
}
