//! `cargo dev serve`: the app on this machine and its network.

use std::net::{IpAddr, Ipv4Addr, UdpSocket};

use crate::run::{Outcome, in_project, say};
use crate::site::Site;
use crate::tools::Tools;

/// Builds the app and serves it until interrupted.
pub fn serve(port: &str) -> Outcome {
    let port: u16 =
        port.parse().map_err(|_| format!("“{port}” is no port. Type 1 to 65535: cargo dev serve --port 8081."))?;
    let tools = Tools::for_building()?;
    build(&tools)?;
    let site = Site::open(&in_project("dist"), Ipv4Addr::UNSPECIFIED, port).map_err(|error| {
        format!("Port {port} cannot be used ({error}). Choose another: cargo dev serve --port 8081.")
    })?;
    let port = site.port();
    say("Serving the app until you press Ctrl+C");
    println!("    here:     http://localhost:{port}/");
    if let Some(address) = address_on_the_network() {
        println!("    a phone:  http://{address}:{port}/ (on the same network)");
        println!("              By plain http the app works on the phone, but not offline: service");
        println!("              workers, which keep it there, need https or localhost.");
    }
    loop {
        std::thread::park();
    }
}

/// Builds the release site into dist/.
pub fn build(tools: &Tools) -> Outcome {
    say("Building the app for release");
    crate::run::run(&mut tools.trunk()?, "Mend what the compiler says above, then run the same command again.")
}

/// This machine's address on its network. Connecting a datagram socket picks the way out and
/// sends nothing; the address it is pointed at is one set aside for documentation (RFC 5737).
fn address_on_the_network() -> Option<IpAddr> {
    let socket = UdpSocket::bind((Ipv4Addr::UNSPECIFIED, 0)).ok()?;
    socket.connect((Ipv4Addr::new(192, 0, 2, 1), 9)).ok()?;
    let address = socket.local_addr().ok()?.ip();
    (!address.is_loopback() && !address.is_unspecified()).then_some(address)
}
