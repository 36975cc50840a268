//! Prints how well the diagnosis does on a fleet of simulated units, beside other ways to judge the same readings.
//!
//! `cargo run --release -p satline-tests --bin scorecard -- [--fleet tune|develop] [--units N]`

use satline_tests::trial::fleet::{maps, rows};
use satline_tests::trial::recipe::Fleet;

fn main() {
    let fleet = Fleet::Develop;
    let made = rows(fleet, fleet.seed().unwrap_or_default(), 120, &maps());
    println!("{} rows, {} did not settle", made.rows.len(), made.skipped.len());
}
