//! The compact curves beside the equations of state that they stand for, in one run: read the ratios.
#![allow(missing_docs)] // criterion's macros make undocumented functions

use criterion::{Criterion, criterion_group, criterion_main};
use satline::eos::{End, Mixture, model};
use satline::quantity::{Pressure, Temperature};
use satline::reading::{Metering, Reading};
use satline::saturation::R410A;
use std::hint::black_box;

fn saturation(criterion: &mut Criterion) {
    let pressure = Pressure::from_pascals(9.149e5).expect("inside the bound");
    let line = Temperature::from_kelvin(290.0).expect("inside the bound");
    let mixture = Mixture::of(&model::R410A).expect("a complete model");
    let reading = Reading {
        refrigerant: Some(&R410A),
        metering: Some(Metering::FixedOrifice),
        suction_pressure: Some(pressure),
        suction_line_temperature: Some(line),
        ..Reading::default()
    };
    let mut group = criterion.benchmark_group("R-410A");
    group.bench_function("dew temperature, curve", |bencher| {
        bencher.iter(|| R410A.dew_temperature(black_box(pressure)));
    });
    group.bench_function("dew temperature, equation of state", |bencher| {
        bencher.iter(|| mixture.at_pressure(End::Dew, black_box(pressure.pascals())));
    });
    group.bench_function("superheat, curve", |bencher| {
        bencher.iter(|| R410A.superheat(black_box(line), black_box(pressure)));
    });
    group.bench_function("finding", |bencher| bencher.iter(|| satline::diagnose(black_box(&reading))));
    group.finish();
}

criterion_group!(benches, saturation);
criterion_main!(benches);
