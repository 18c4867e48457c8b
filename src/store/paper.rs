//! The size of paper that this device prints on.

use super::first_paint::{get, set};
use crate::foundation::measure::System;

const PAPER: &str = "brimwright.paper";

/// A size of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Paper {
    /// 210 by 297 mm (ISO 216).
    A4,
    /// 8.5 by 11 in.
    Letter,
}

impl Paper {
    /// Every size.
    pub const ALL: [Paper; 2] = [Paper::A4, Paper::Letter];

    /// Its name.
    pub const fn name(self) -> &'static str {
        match self {
            Paper::A4 => "A4",
            Paper::Letter => "Letter",
        }
    }

    /// The paper of a name.
    pub fn of_name(name: &str) -> Option<Paper> {
        Paper::ALL.into_iter().find(|paper| paper.name() == name)
    }

    /// The paper that was chosen on this device, or else the usual one where people use these units.
    pub fn here(units: System) -> Paper {
        let text: Option<String> = get(PAPER);
        let usual = match units {
            System::UsCustomary => Paper::Letter,
            System::Metric | System::Imperial => Paper::A4,
        };
        text.as_deref().and_then(Paper::of_name).unwrap_or(usual)
    }

    /// Remembers it as the choice of this device.
    pub fn note(self) {
        set(PAPER, self.name().to_string());
    }
}
