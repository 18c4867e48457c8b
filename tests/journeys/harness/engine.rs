//! The engines that journeys run in.

use std::fmt;

/// An engine, by the browser that brings it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Engine {
    /// Chromium, on a screen that passes for a phone's. Only here are the browser's own tools at hand.
    Chromium,
    /// Firefox.
    Firefox,
    /// WebKit, in the small browser that comes with WebKitGTK. It forgets everything when it ends.
    WebKit,
}

impl fmt::Display for Engine {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(match self {
            Engine::Chromium => "chromium",
            Engine::Firefox => "firefox",
            Engine::WebKit => "webkit",
        })
    }
}

/// Makes three tests of a journey that takes an [`Engine`], one for each: `journey::chromium`, `journey::firefox`
/// and `journey::webkit`. What an engine's driver cannot do is skipped, and the test list says why:
///
/// ```ignore
/// in_each_engine!(two_tabs_agree);
/// in_each_engine!(nothing_is_lost, not WebKit: "it forgets everything when it ends");
/// ```
macro_rules! in_each_engine {
    ($journey:ident) => {
        mod $journey {
            crate::harness::in_each_engine!(@ $journey chromium Chromium);
            crate::harness::in_each_engine!(@ $journey firefox Firefox);
            crate::harness::in_each_engine!(@ $journey webkit WebKit);
        }
    };
    ($journey:ident, not WebKit: $why:literal) => {
        mod $journey {
            crate::harness::in_each_engine!(@ $journey chromium Chromium);
            crate::harness::in_each_engine!(@ $journey firefox Firefox);
            crate::harness::in_each_engine!(@ #[ignore = $why] $journey webkit WebKit);
        }
    };
    (@ $(#[$skip:meta])? $journey:ident $name:ident $engine:ident) => {
        #[tokio::test]
        $(#[$skip])?
        async fn $name() {
            super::$journey(crate::harness::Engine::$engine).await;
        }
    };
}
pub(crate) use in_each_engine;
