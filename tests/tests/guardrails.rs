//! Whatever is read, and however little of it: no finding breaks a rule that keeps people and compressors whole. The rules
//! stand in `tests/src/guard/rules.rs`; the readings are simulated, whole and in part, changed, contradictory, or drawn at
//! random. `PROPTEST_CASES` asks for more.

use proptest::prelude::*;
use satline::diagnosis::{Options, diagnose_with};
use satline::reading::{
    Accuracy, Compressor, Field, Metering, MeteringPlace, Mode, Operation, Reading, RefrigerantCondition, Stage,
};
use satline::refrigerant;
use satline_tests::guard::by_hand::keeping;
use satline_tests::guard::pool::{any_fields, any_row};
use satline_tests::guard::{cases, rules::violated};
use satline_tests::trial::row::Row;

fn holds(reading: &Reading, baseline: &[Reading]) -> Result<(), TestCaseError> {
    let finding = diagnose_with(reading, &Options { baseline, ..Options::default() });
    let violated = violated(reading, &finding);
    prop_assert!(violated.is_empty(), "{violated:?}\n{:?} {:?} {:?}", finding.charge, finding.reason, finding.advice);
    Ok(())
}

/// Alone, beside the baseline of its unit, and beside itself.
fn holds_all_ways(row: &Row, reading: &Reading) -> Result<(), TestCaseError> {
    holds(reading, &[])?;
    holds(reading, &[row.baseline])?;
    holds(reading, &[*reading, row.baseline, *reading])
}

/// What is not measured: which fields are left, and what is known of the unit.
fn in_part(row: &Row, kept: &[bool], known: (bool, bool, bool)) -> Reading {
    let mut reading = keeping(&row.reading, |field| kept[field as usize]);
    let (refrigerant, metering, place) = known;
    reading.refrigerant = reading.refrigerant.filter(|_| refrigerant);
    reading.metering = reading.metering.filter(|_| metering);
    reading.metering_place = reading.metering_place.filter(|_| place);
    reading
}

/// Something else about the unit or its day.
fn around() -> impl Strategy<Value = Reading> {
    let choice = |count: usize| 0..count + 4;
    (choice(5), choice(4), choice(3), choice(3), choice(2)).prop_map(
        |(operation, condition, compressor, stage, mode)| Reading {
            operation: Operation::ALL.get(operation).copied(),
            refrigerant_condition: RefrigerantCondition::ALL.get(condition).copied(),
            compressor: Compressor::ALL.get(compressor).copied(),
            stage: Stage::ALL.get(stage).copied(),
            mode: Mode::ALL.get(mode).copied(),
            ..Reading::default()
        },
    )
}

fn within(reading: &mut Reading, field: Field, value: f64) {
    let bound = field.bound();
    reading.set(field, value.clamp(bound.lower, bound.upper)).unwrap();
}

/// Any field anywhere it may be, most often where a unit may show it; any refrigerant of the catalogue.
fn any_reading() -> impl Strategy<Value = Reading> {
    let words = (0..refrigerant::ALL.len() + 4, 0..4_usize, 0..3_usize);
    let fields = prop::collection::vec(prop::option::weighted(0.7, 0.0..=1.0_f64), Field::ALL.len());
    (words, fields, around()).prop_map(|((record, metering, place), fields, around)| {
        let mut reading = Reading {
            refrigerant: refrigerant::ALL.get(record).map(|record| record.curves),
            metering: Metering::ALL.get(metering).copied(),
            metering_place: MeteringPlace::ALL.get(place).copied(),
            ..around
        };
        for (field, share) in Field::ALL.iter().zip(fields) {
            let Some(share) = share else { continue };
            let (lower, upper) = match field {
                Field::SuctionPressure => (3e5, 14e5),
                Field::LiquidPressure | Field::DischargePressure => (10e5, 40e5),
                Field::MinutesSinceChange => (0.0, 60.0),
                _ if field.bound().unit == "K" && field.bound().upper > 100.0 => (275.0, 325.0),
                _ => (field.bound().lower, field.bound().upper),
            };
            within(&mut reading, *field, if share < 0.05 { 1e9 } else { lower + share * (upper - lower) });
        }
        reading
    })
}

proptest! {
    #![proptest_config(cases(600))]

    #[test]
    fn any_part_of_a_simulated_reading(
        row in any_row(),
        kept in any_fields(),
        known in (prop::bool::weighted(0.95), prop::bool::weighted(0.95), prop::bool::weighted(0.9)),
    ) {
        holds_all_ways(&row, &in_part(&row, &kept, known))?;
    }

    #[test]
    fn any_field_changed(
        row in any_row(),
        kept in any_fields(),
        moves in prop::collection::vec((0..Field::ALL.len(), -1.0..1.0_f64), 1..4),
        around in around(),
    ) {
        let mut reading = in_part(&row, &kept, (true, true, true));
        for (place, share) in moves {
            let field = Field::ALL[place];
            if let Some(value) = reading.get(field) {
                let step = match field.bound().unit {
                    "K" => 15.0,
                    _ => 0.5 * value,
                };
                within(&mut reading, field, value + share * step);
            }
        }
        let reading = Reading {
            operation: around.operation,
            refrigerant_condition: around.refrigerant_condition,
            compressor: around.compressor,
            stage: around.stage,
            ..reading
        };
        holds_all_ways(&row, &reading)?;
    }

    #[test]
    fn probes_without_error_or_with_a_huge_one(row in any_row(), exact in any::<bool>(), limit in 0.0..20.0_f64) {
        let mut reading = row.reading;
        for field in Field::ALL {
            let unit = if field.bound().unit == "Pa" { 7e3 } else { 0.5 };
            let absolute = if exact { 0.0 } else { limit * unit };
            reading.accuracy[*field as usize] = Some(Accuracy { absolute, ..Accuracy::EXACT });
        }
        holds_all_ways(&row, &reading)?;
    }
}

proptest! {
    #![proptest_config(cases(3000))]

    #[test]
    fn any_reading_at_all(reading in any_reading(), baseline in prop::collection::vec(any_reading(), 0..3)) {
        holds(&reading, &baseline)?;
    }
}
