//! What is lost when an instrument stays in the van.

use super::harm::tally;
use super::judge::{Judge, Judged};
use super::outcome::{Outcome, clear_fault, rate};
use super::row::Row;
use satline::reading::{Field, Reading};
use std::fmt::Write;

/// What is left out, from the reading and from the baseline.
const LEFT_OUT: [(&str, &[Field]); 6] = [
    ("nothing", &[]),
    ("airflow", &[Field::AirflowOverCoil]),
    ("discharge line", &[Field::DischargeLineTemperature]),
    ("return wet bulb", &[Field::ReturnWetBulb]),
    ("compressor power", &[Field::CompressorPower]),
    ("surface of the outdoor coil", &[Field::CondensingSurfaceTemperature]),
];

fn without(reading: &Reading, fields: &[Field]) -> Reading {
    let mut less = Reading {
        refrigerant: reading.refrigerant,
        metering: reading.metering,
        metering_place: reading.metering_place,
        mode: reading.mode,
        compressor: reading.compressor,
        stage: reading.stage,
        accuracy: reading.accuracy,
        ..Reading::default()
    };
    for field in Field::ALL.iter().filter(|field| !fields.contains(field)) {
        // What was accepted once is accepted again.
        let _ = reading.get(*field).map(|value| less.set(*field, value));
    }
    less
}

/// How many units it is tried on: each instrument is a whole trial more.
const UNITS: u64 = 120;

/// How some judges do without each.
#[must_use]
pub fn ablations(rows: &[Row], judges: &[&dyn Judge]) -> String {
    let mut page = format!(
        "  {:<24}{:<30}{:>22}{:>22}{:>22}{:>22}\n",
        "judge", "without", "clear faults right", "no response there", "false alarms", "harmful rows"
    );
    for (title, fields) in LEFT_OUT {
        let less: Vec<Row> = rows
            .iter()
            .filter(|row| row.unit < UNITS)
            .map(|row| Row { reading: without(&row.reading, fields), baseline: without(&row.baseline, fields), ..*row })
            .collect();
        for judge in judges {
            for with_baseline in [false, true] {
                let judged = Judged::of(*judge, &less, with_baseline);
                let _ = writeln!(
                    page,
                    "  {:<24}{title:<30}{:>22}{:>22}{:>22}{:>22}",
                    judged.title(),
                    rate(&less, &judged, clear_fault, Outcome::Correct),
                    rate(&less, &judged, clear_fault, Outcome::NoResponse),
                    rate(&less, &judged, |row| row.truth.is_empty(), Outcome::FalseAlarm),
                    tally(&less, &judged).share(),
                );
            }
        }
    }
    page.push('\n');
    page
}
