//! How often a fault is tried, and how often what must hold did.

/// The variable that says how often; without it a few times.
const COUNT: &str = "BRIMWRIGHT_COUNT";

/// The runs of one fault. What is said of them when they end is read by `cargo dev faults`.
pub struct Runs {
    fault: &'static str,
    begun: u32,
    held: u32,
}

impl Runs {
    /// No run yet of a fault, such as "T1".
    pub fn of(fault: &'static str) -> Runs {
        Runs { fault, begun: 0, held: 0 }
    }

    /// How many runs are asked for: `few`, unless somebody asks for more.
    pub fn asked_for(few: u32) -> u32 {
        match std::env::var(COUNT) {
            Ok(count) => count.parse().unwrap_or_else(|_| panic!("{COUNT} is {count:?}, not a number")),
            Err(_) => few,
        }
    }

    /// One more run begins.
    pub fn begin(&mut self) {
        self.begun += 1;
    }

    /// What must hold did, in the run that began last.
    pub fn held(&mut self) {
        self.held += 1;
    }
}

impl Drop for Runs {
    fn drop(&mut self) {
        println!("{}: {} of {} runs held", self.fault, self.held, self.begun);
    }
}
