//! What the reading says of the airflow over the indoor coil.

use super::finding::Values;
use super::limits::*;
use crate::charge::protocol::side;
use crate::quantity::{M3_S_PER_CFM, WATTS_PER_TON};

/// The airflow, as far as a charge test is concerned.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Airflow {
    /// Neither measured nor seen in the temperature split.
    Unknown,
    /// Usual for the capacity, or a split within its band.
    Good,
    /// Outside the usual range, or a split below its band: a verdict stays provisional.
    Doubtful,
    /// Too low for a charge test.
    Low,
}

/// The worst of what a measured airflow and the temperature split say.
pub(super) fn airflow(values: &Values) -> Airflow {
    let by_split = match values.temperature_split.and_then(|split| split.deviation) {
        Some(deviation) => match side(deviation, SPLIT_BAND_F) {
            1 => Airflow::Low,
            -1 => Airflow::Doubtful,
            _ => Airflow::Good,
        },
        None => Airflow::Unknown,
    };
    let measured = match values.airflow_per_capacity {
        Some(value) => by_measurement(value.value * WATTS_PER_TON / M3_S_PER_CFM),
        None => Airflow::Unknown,
    };
    worse(by_split, measured)
}

fn by_measurement(cfm_per_ton: f64) -> Airflow {
    if cfm_per_ton < AIRFLOW_LOWEST_CFM_TON {
        Airflow::Low
    } else if (AIRFLOW_USUAL_LOWEST_CFM_TON..=AIRFLOW_USUAL_HIGHEST_CFM_TON).contains(&cfm_per_ton) {
        Airflow::Good
    } else {
        Airflow::Doubtful
    }
}

fn worse(left: Airflow, right: Airflow) -> Airflow {
    let rank = |airflow: Airflow| match airflow {
        Airflow::Unknown => 0,
        Airflow::Good => 1,
        Airflow::Doubtful => 2,
        Airflow::Low => 3,
    };
    if rank(left) >= rank(right) { left } else { right }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_usual_range_is_good_and_its_edges_count() {
        for (cfm_per_ton, expected) in [
            (299.9, Airflow::Low),
            (300.0, Airflow::Doubtful),
            (349.9, Airflow::Doubtful),
            (350.0, Airflow::Good),
            (450.0, Airflow::Good),
            (450.1, Airflow::Doubtful),
        ] {
            assert_eq!(by_measurement(cfm_per_ton), expected, "{cfm_per_ton}");
        }
    }

    #[test]
    fn the_worse_of_two_indications_counts() {
        assert_eq!(worse(Airflow::Good, Airflow::Low), Airflow::Low);
        assert_eq!(worse(Airflow::Doubtful, Airflow::Good), Airflow::Doubtful);
        assert_eq!(worse(Airflow::Unknown, Airflow::Good), Airflow::Good);
        assert_eq!(worse(Airflow::Unknown, Airflow::Unknown), Airflow::Unknown);
    }
}
