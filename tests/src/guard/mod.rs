//! What the diagnosis must never say: readings to try it on, and the rules that every finding is held against.

pub mod by_hand;
pub mod pool;
pub mod rules;

use proptest::test_runner::Config;

/// So many cases, or as many as `PROPTEST_CASES` asks for.
#[must_use]
pub fn cases(few: u32) -> Config {
    let cases = std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(few);
    Config { cases, failure_persistence: None, ..Config::default() }
}
