//! Prints what a fleet of the rig is like: marginals and correlations of its healthy units beside common practice, how
//! superheat and subcooling answer to charge, and what a wrong charge costs beside the published factors.
//!
//! `cargo run --release -p satline-tests --bin fleet [units]`

use satline_tests::fleet::{charge_table, correlations, factors, marginals, print, sample};

fn main() {
    let count = std::env::args().nth(1).and_then(|text| text.parse().ok()).unwrap_or(600);
    let sample = sample(7, count);
    println!("{} units of {count} settle at the rating point as installed.\n", sample.len());
    print("Marginals (5 %, median, 95 %) beside common practice", &marginals(&sample));
    print("Correlations", &correlations(&sample));
    print("Response to charge, by device", &charge_table(7, count / 4));
    print("Capacity and power at a wrong charge over those at the right one, valve units", &factors(7, count / 4));
}
