//! Processes of a driver and its browser, and their end.

use std::collections::BTreeMap;
use std::fs;
use std::process::{Child, Command};
use std::time::{Duration, Instant};

/// How long the death of a process may take.
const DEATH: Duration = Duration::from_secs(10);

/// Kills a process and all that came of it by SIGKILL, and waits until they are gone.
pub fn kill(process: &mut Child) {
    let family = family_of(process.id());
    for id in &family {
        // The shell's own `kill`: a bare system has no other.
        Command::new("sh").args(["-c", &format!("kill -9 {id} 2>/dev/null")]).status().ok();
    }
    process.wait().ok();
    let deadline = Instant::now() + DEATH;
    while family.iter().any(|id| alive(*id)) && Instant::now() < deadline {
        std::thread::yield_now();
    }
}

/// A process and all that came of it, parents first.
fn family_of(ancestor: u32) -> Vec<u32> {
    let parents: BTreeMap<u32, u32> = fs::read_dir("/proc")
        .into_iter()
        .flatten()
        .flatten()
        .filter_map(|entry| entry.file_name().to_str()?.parse().ok())
        .filter_map(|id| Some((id, parent_of(id)?)))
        .collect();
    let mut family = vec![ancestor];
    let mut next = 0;
    while let Some(parent) = family.get(next).copied() {
        family.extend(parents.iter().filter(|(_, of)| **of == parent).map(|(id, _)| *id));
        next += 1;
    }
    family
}

/// The parent of a process, as the kernel's table of processes has it (proc(5): the fourth field of `stat`, after a
/// name in brackets).
fn parent_of(id: u32) -> Option<u32> {
    after_the_name(id)?.split(' ').nth(1)?.parse().ok()
}

/// Whether a process runs: one that has ended may stand in the table until somebody asks for it.
fn alive(id: u32) -> bool {
    after_the_name(id).is_some_and(|fields| !fields.starts_with(['Z', 'X']))
}

fn after_the_name(id: u32) -> Option<String> {
    let line = fs::read_to_string(format!("/proc/{id}/stat")).ok()?;
    line.rsplit_once(") ").map(|(_, fields)| fields.to_owned())
}
