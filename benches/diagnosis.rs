//! One finding with everything measured that a technician may measure, without and with a baseline, beside one of the dew
//! temperatures that it needs, in one run: read the ratios.
#![allow(missing_docs)] // criterion's macros make undocumented functions

use criterion::{Criterion, criterion_group, criterion_main};
use satline::Reading;
use satline::diagnosis::{Options, diagnose_with};
use satline::quantity::Pressure;
use satline::reading::{Field, Metering};
use satline::saturation::R410A;
use std::hint::black_box;

/// Demo: a valve unit with everything measured, its lines so much warmer than when it was healthy, K.
fn full(warmer: f64) -> Reading {
    let mut reading =
        Reading { refrigerant: Some(&R410A), metering: Some(Metering::ThermostaticValve), ..Reading::default() };
    for (field, value) in [
        (Field::OutdoorDryBulb, 305.4),
        (Field::CondenserLeavingDryBulb, 315.2),
        (Field::ReturnDryBulb, 297.0),
        (Field::ReturnWetBulb, 290.9),
        (Field::SupplyDryBulb, 286.0),
        (Field::SupplyWetBulb, 284.9),
        (Field::AmbientPressure, 100_500.0),
        (Field::SuctionPressure, 930_000.0),
        (Field::SuctionLineTemperature, 283.9 + warmer),
        (Field::LiquidPressure, 2_450_000.0),
        (Field::LiquidLineTemperature, 307.9 + warmer),
        (Field::DischargePressure, 2_490_000.0),
        (Field::DischargeLineTemperature, 340.0),
        (Field::CoilOutletTemperature, 283.4),
        (Field::CondensingSurfaceTemperature, 313.0),
        (Field::SumpTemperature, 320.0),
        (Field::AirflowOverCoil, 0.55),
        (Field::NominalCapacity, 10_550.0),
        (Field::CompressorPower, 2500.0),
        (Field::ExpectedCharge, 3.2),
        (Field::MinutesSinceChange, 25.0),
        (Field::TargetSubcooling, 5.5),
    ] {
        reading.set(field, value).expect("inside the bound");
    }
    reading
}

fn diagnosis(criterion: &mut Criterion) {
    let (reading, baseline) = (full(4.0), [full(0.0)]);
    let plain = Options::default();
    let compared = Options { baseline: &baseline, ..Options::default() };
    let pressure = Pressure::from_pascals(9.3e5).expect("inside the bound");
    let mut group = criterion.benchmark_group("one finding");
    group.bench_function("dew temperature, curve", |bencher| {
        bencher.iter(|| R410A.dew_temperature(black_box(pressure)));
    });
    group.bench_function("everything measured", |bencher| {
        bencher.iter(|| diagnose_with(black_box(&reading), black_box(&plain)));
    });
    group.bench_function("everything measured, and a baseline", |bencher| {
        bencher.iter(|| diagnose_with(black_box(&reading), black_box(&compared)));
    });
    group.finish();
}

criterion_group!(benches, diagnosis);
criterion_main!(benches);
