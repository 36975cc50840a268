//! Readings of simulated units to draw from.

use crate::trial::fleet::{maps, rows};
use crate::trial::recipe::Fleet;
use crate::trial::row::Row;
use proptest::prelude::*;
use satline::reading::Field;
use std::sync::OnceLock;

/// Units of each fleet.
const UNITS: u64 = 8;

/// Rows of a few units of two fleets, which differ in their models: every fault at each severity, and pairs.
///
/// # Panics
/// Never: both fleets have a seed.
pub fn pool() -> &'static [Row] {
    static POOL: OnceLock<Vec<Row>> = OnceLock::new();
    POOL.get_or_init(|| {
        let maps = maps();
        let of = |fleet: Fleet| rows(fleet, fleet.seed().unwrap(), UNITS, &maps).rows;
        [Fleet::Develop, Fleet::Tune].into_iter().flat_map(of).collect()
    })
}

/// One of the rows.
pub fn any_row() -> impl Strategy<Value = Row> {
    (0..pool().len()).prop_map(|place| pool()[place])
}

/// Which fields are kept, each with a chance drawn for all: from nearly none to all of them.
pub fn any_fields() -> impl Strategy<Value = Vec<bool>> {
    (0.2..1.3_f64)
        .prop_flat_map(|chance| prop::collection::vec(prop::bool::weighted(chance.min(1.0)), Field::ALL.len()))
}
