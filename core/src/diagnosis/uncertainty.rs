//! One standard uncertainty of each measured field.

use super::limits::{
    AIRFLOW_LIMIT_SHARE, LIQUID_LIMIT_PSI, SQRT_3, SUCTION_LIMIT_PSI, THERMOMETER_LIMIT_F, THERMOMETER_LIMIT_SHARE,
};
use crate::quantity::{Atmosphere, KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI, fahrenheit_from_kelvin};
use crate::reading::{Field, Reading};

/// One standard uncertainty of a field, in its SI unit: the stated limits of error, or the default ones, over √3.
pub(super) fn standard(reading: &Reading, field: Field) -> f64 {
    let value = reading.get(field).unwrap_or(0.0);
    let stated = reading.accuracy.get(field as usize).copied().flatten();
    let limit = match stated {
        Some(accuracy) => {
            (accuracy.of_reading * shown(reading, field, value)).abs() + accuracy.absolute + 0.5 * accuracy.resolution
        }
        None => default_limit(field, value),
    };
    limit / SQRT_3
}

/// The value as the instrument shows it: Celsius or gauge, which its share of the reading refers to.
fn shown(reading: &Reading, field: Field, value: f64) -> f64 {
    match field.bound().unit {
        "K" if is_temperature(field) => value - 273.15,
        "Pa" if field != Field::AmbientPressure => {
            value - reading.ambient_pressure.unwrap_or(Atmosphere::STANDARD).pascals()
        }
        _ => value,
    }
}

/// Whether the field is a temperature rather than a difference.
fn is_temperature(field: Field) -> bool {
    !matches!(field, Field::TargetSuperheat | Field::TargetSubcooling | Field::TargetApproach)
}

fn default_limit(field: Field, value: f64) -> f64 {
    match field {
        Field::SuctionPressure => SUCTION_LIMIT_PSI * PASCALS_PER_PSI,
        Field::LiquidPressure | Field::DischargePressure => LIQUID_LIMIT_PSI * PASCALS_PER_PSI,
        Field::AirflowOverCoil => AIRFLOW_LIMIT_SHARE * value,
        _ if field.bound().unit == "K" && is_temperature(field) => {
            let share = (THERMOMETER_LIMIT_SHARE * fahrenheit_from_kelvin(value)).abs();
            (share + THERMOMETER_LIMIT_F) * KELVIN_PER_FAHRENHEIT
        }
        // Nameplate figures, times and masses enter no value with an uncertainty.
        _ => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reading::Accuracy;
    use approx::assert_relative_eq;

    #[test]
    fn defaults_are_the_protocols_limits_over_root_three() {
        let mut reading = Reading::default();
        reading.set(Field::SuctionPressure, 914_906.0).unwrap();
        reading.set(Field::SuctionLineTemperature, crate::quantity::kelvin_from_fahrenheit(60.0)).unwrap();
        assert_relative_eq!(
            standard(&reading, Field::SuctionPressure),
            3.5 * 6_894.757 / 3.0_f64.sqrt(),
            max_relative = 1e-6
        );
        let expected = (0.001 * 60.0 + 1.3) / 1.8 / 3.0_f64.sqrt();
        assert_relative_eq!(standard(&reading, Field::SuctionLineTemperature), expected, max_relative = 1e-9);
    }

    #[test]
    fn a_stated_accuracy_replaces_the_default() {
        let mut reading = Reading::default();
        reading.set(Field::LiquidPressure, 101_325.0 + 2e6).unwrap();
        reading.accuracy[Field::LiquidPressure as usize] =
            Some(Accuracy { of_reading: 0.005, absolute: 1000.0, resolution: 500.0 });
        // Of the gauge value, plus the absolute limit, plus half a step.
        assert_relative_eq!(standard(&reading, Field::LiquidPressure), (10_000.0 + 1000.0 + 250.0) / 3.0_f64.sqrt());
        reading.set(Field::ReturnDryBulb, 273.15 + 25.0).unwrap();
        reading.accuracy[Field::ReturnDryBulb as usize] =
            Some(Accuracy { of_reading: 0.01, absolute: 0.1, resolution: 0.0 });
        assert_relative_eq!(standard(&reading, Field::ReturnDryBulb), 0.35 / 3.0_f64.sqrt(), max_relative = 1e-9);
    }
}
