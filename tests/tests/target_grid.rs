//! Charts of targets with blanks, delivered performance and the cost of a wrong charge.

use approx::assert_relative_eq;
use proptest::prelude::*;
use satline::Error;
use satline::quantity::kelvin_from_fahrenheit;
use satline::uncertain::Uncertain;
use satline::visit::charge_fault::charge_fault_effect;
use satline::visit::grid::{Axis, Grid, GridGap, Lookup};
use satline::visit::performance::{CapacityShape, GainOutcome, RATING_WET_BULB_K, delivered, expected_capacity, gain};
use satline::visit::target_grid::{GridAxis, GridTarget, TargetGrid, TargetOutcome, approach};

fn known(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain::new(value, standard_uncertainty).unwrap()
}

fn exact(value: f64) -> Uncertain {
    Uncertain::exact(value)
}

proptest! {
    /// A bilinear function is returned exactly between uneven lines, with its slopes as uncertainty.
    #[test]
    fn a_bilinear_surface_is_itself(row in 0.0..10.0_f64, column in -3.0..7.0_f64, a in -5.0..5.0_f64, b in -5.0..5.0_f64) {
        let (rows, columns) = ([0.0, 1.0, 1.5, 6.0, 10.0], [-3.0, -2.5, 4.0, 7.0]);
        let surface = |row: f64, column: f64| 2.0 + a * row + b * column;
        let cells: Vec<f64> =
            rows.iter().flat_map(|row| columns.iter().map(move |column| surface(*row, *column))).collect();
        let grid = Grid::new(Axis::along(&rows), Axis::along(&columns), &cells).unwrap();
        let found = grid.at(known(row, 0.1), known(column, 0.2)).unwrap().value().unwrap();
        prop_assert!((found.value - surface(row, column)).abs() < 1e-9);
        let expected = ((0.1 * a).powi(2) + (0.2 * b).powi(2)).sqrt();
        prop_assert!((found.standard_uncertainty - expected).abs() < 1e-9);
    }

    /// With any cells blank there is a value exactly where all cells that carry weight are known, and it lies between them.
    #[test]
    fn blanks_swallow_what_they_touch(
        blanks in proptest::collection::vec(any::<bool>(), 12), row in 0.0..2.0_f64, column in 0.0..3.0_f64,
    ) {
        let (rows, columns) = ([0.0, 1.0, 2.0], [0.0, 1.0, 2.0, 3.0]);
        let cells: Vec<Option<f64>> =
            blanks.iter().enumerate().map(|(place, blank)| (!blank).then_some(place as f64)).collect();
        prop_assume!(cells.iter().any(Option::is_some));
        let grid = Grid::new(Axis::along(&rows), Axis::along(&columns), &cells).unwrap();
        let (r, c) = (row as usize, column as usize);
        prop_assume!(row.fract() > 1e-5 && row.fract() < 1.0 - 1e-5 && column.fract() > 1e-5 && column.fract() < 1.0 - 1e-5);
        let corners = [cells[4 * r + c], cells[4 * r + c + 1], cells[4 * (r + 1) + c], cells[4 * (r + 1) + c + 1]];
        match grid.at(exact(row), exact(column)).unwrap() {
            Lookup::At(found) => {
                let corners: Vec<f64> = corners.into_iter().map(Option::unwrap).collect();
                let lowest = corners.iter().copied().fold(f64::INFINITY, f64::min);
                let highest = corners.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                prop_assert!(lowest - 1e-9 <= found.value && found.value <= highest + 1e-9);
            }
            Lookup::NoValidTest(gap) => {
                prop_assert_eq!(gap, GridGap::Blank);
                prop_assert!(corners.iter().any(Option::is_none));
            }
        }
    }
}

#[test]
fn on_a_line_only_its_own_cells_count() {
    let (rows, columns) = ([10.0, 20.0], [5.0, 6.0]);
    let cells = [1.0, 2.0, f64::NAN, f64::NAN];
    let grid = Grid::new(Axis::along(&rows), Axis::along(&columns), &cells).unwrap();
    let at = |row, column| grid.at(exact(row), exact(column)).unwrap();
    assert_eq!(at(10.0, 5.5), Lookup::At(exact(1.5)));
    // Rounding in a conversion does not leave the line.
    assert!((at(10.0 + 1e-12, 5.5).value().unwrap().value - 1.5).abs() < 1e-9);
    assert_eq!(at(10.1, 5.5), Lookup::NoValidTest(GridGap::Blank));
    assert_eq!(at(9.9, 5.5), Lookup::NoValidTest(GridGap::BelowFirstRow));
    assert_eq!(at(20.0, 5.0), Lookup::NoValidTest(GridGap::Blank));
    // An uncertain input at a lone known line: on both sides nothing is known.
    let lone = grid.at(known(10.0, 0.5), exact(5.5)).unwrap();
    assert_eq!(lone, Lookup::NoValidTest(GridGap::Uncertain));
    for infinite in [f64::INFINITY, f64::NEG_INFINITY] {
        assert!(Grid::new(Axis::along(&rows), Axis::along(&columns), &[1.0, 2.0, 3.0, infinite]).is_err());
    }
    let many: Vec<f64> = (0..257).map(f64::from).collect();
    assert!(Grid::new(Axis::along(&many), Axis::NONE, &many).is_err());
    assert!(Grid::new(Axis::along(&many[..256]), Axis::NONE, &many[..256]).is_ok());
}

/// A heating pressure chart (demo): liquid pressure in Pa by outdoor and return dry bulb.
#[test]
fn a_chart_of_two_axes() {
    let outdoor = [263.15, 273.15, 283.15];
    let inside = [289.15, 294.15];
    let cells = [Some(2.1e6), Some(2.3e6), Some(2.3e6), Some(2.5e6), None, Some(2.8e6)];
    let chart = TargetGrid::new(
        GridTarget::LiquidPressure,
        (GridAxis::OutdoorDryBulb, &outdoor),
        Some((GridAxis::ReturnDryBulb, &inside)),
        &cells,
    )
    .unwrap();
    let compare = |pressure, row, column| {
        chart.compare(known(pressure, 10e3), known(row, 0.2), Some(known(column, 0.2)), 100e3).unwrap()
    };
    let found = compare(2.31e6, 268.15, 291.65);
    assert_eq!(found.outcome, TargetOutcome::OnTarget);
    assert_relative_eq!(found.deviation.unwrap().value, 10e3, max_relative = 1e-9);
    // 20 kPa/K outdoors, 40 kPa/K inside, each ±0.2 K, and the gauge.
    let expected = (10e3_f64.powi(2) + (0.2 * 20e3_f64).powi(2) + (0.2 * 40e3_f64).powi(2)).sqrt();
    assert_relative_eq!(found.deviation.unwrap().standard_uncertainty, expected, max_relative = 1e-9);
    assert_eq!(compare(2.6e6, 268.15, 291.65).outcome, TargetOutcome::Above);
    assert_eq!(compare(2.0e6, 268.15, 291.65).outcome, TargetOutcome::Below);
    assert_eq!(compare(2.39e6, 268.15, 291.65).outcome, TargetOutcome::CannotTell);
    let blank = compare(2.5e6, 280.0, 292.0);
    assert_eq!((blank.outcome, blank.target), (TargetOutcome::NoValidTest, Lookup::NoValidTest(GridGap::Blank)));
    assert_eq!(compare(2.5e6, 290.0, 292.0).target, Lookup::NoValidTest(GridGap::AboveLastRow));
    assert!(matches!(chart.at(exact(270.0), None), Err(Error::NotAvailable { .. })));
    assert!(matches!(chart.at(exact(20.0), Some(exact(290.0))), Err(Error::OutOfRange { .. })));
    assert!(matches!(chart.compare(exact(2e6), exact(270.0), Some(exact(290.0)), -1.0), Err(Error::OutOfRange { .. })));
    // The chart in the wrong unit is refused.
    let psi = [Some(300.0), Some(310.0)];
    assert!(TargetGrid::new(GridTarget::Superheat, (GridAxis::OutdoorDryBulb, &inside), None, &psi).is_err());
    let fahrenheit = [65.0, 75.0];
    let cells = [Some(5.0), Some(6.0)];
    assert!(TargetGrid::new(GridTarget::Superheat, (GridAxis::OutdoorDryBulb, &fahrenheit), None, &cells).is_err());
    assert!(approach(exact(310.0), exact(35.0)).is_err());
    assert_relative_eq!(approach(exact(305.0), exact(308.0)).unwrap().value, -3.0, max_relative = 1e-12);
}

/// NIST factors at 26.7 °C indoors and 35 °C outdoors: capacity .956, .888 and .798 at −10, −20 and −30 % (computed from
/// the published coefficients; TN 1848 family).
#[test]
fn the_cost_of_a_wrong_charge() {
    let (indoor, outdoor) = (exact(26.7 + 273.15), exact(308.15));
    for (deviation, capacity, limit) in [(-0.1, 0.956, 0.03), (-0.2, 0.888, 0.05), (-0.3, 0.798, 0.06)] {
        let found = charge_fault_effect(exact(deviation), indoor, outdoor).unwrap();
        assert!((found.capacity.value - capacity).abs() < 5e-4, "{deviation} {found:?}");
        assert_relative_eq!(found.capacity.standard_uncertainty, limit / 3.0_f64.sqrt(), max_relative = 1e-9);
        assert!(found.coefficient_of_performance.value < 1.0);
        let ratio = found.capacity.value / found.power.value;
        assert_relative_eq!(found.coefficient_of_performance.value, ratio, max_relative = 1e-12);
    }
    // By hand, overcharge of 20 %: capacity 1 + (−.163 + .0114·26.7 − .00021·35 − .028)·.2, power likewise.
    let over = charge_fault_effect(exact(0.2), indoor, outdoor).unwrap();
    let (capacity, power) =
        (-0.163 + 0.0114 * 26.7 - 0.00021 * 35.0 - 0.14 * 0.2, 0.219 - 0.00501 * 26.7 + 0.000989 * 35.0 + 0.284 * 0.2);
    assert_relative_eq!(over.capacity.value, 1.0 + 0.2 * capacity, max_relative = 1e-9);
    assert_relative_eq!(over.power.value, 1.0 + 0.2 * power, max_relative = 1e-9);
    // Right charge: no effect and nothing to doubt; the two halves meet there.
    let right = charge_fault_effect(exact(0.0), indoor, outdoor).unwrap();
    assert_eq!((right.capacity, right.power), (exact(1.0), exact(1.0)));
    // An uncertain charge: the slope at −10 % is about 0.56 by differences of the two published values' formula.
    let loose = charge_fault_effect(known(-0.1, 0.02), indoor, outdoor).unwrap();
    let slope: f64 = 0.329 + 2.0 * 1.15 * 0.1;
    let expected = ((0.02 * slope).powi(2) + 0.03_f64.powi(2) / 3.0).sqrt();
    assert_relative_eq!(loose.capacity.standard_uncertainty, expected, max_relative = 1e-2);
    for (deviation, indoor_k, outdoor_k) in [
        (-0.31, 300.0, 308.0),
        (0.31, 300.0, 308.0),
        (-0.1, 310.0, 308.0),
        (-0.1, 300.0, 320.0),
        (f64::NAN, 300.0, 308.0),
    ] {
        assert!(charge_fault_effect(exact(deviation), exact(indoor_k), exact(outdoor_k)).is_err());
    }
}

/// The wet-coil rows of NISTIR 7350, appendix D (R-410A, 2.5 ton, valve; measured): return dry bulb, dew point and outdoor
/// dry bulb in °F, refrigerant-side capacity in Btu/h. Wet bulbs computed here by the psychrometer equation.
const MEASURED: [(f64, f64, f64, f64); 6] = [
    (70.29, 50.27, 69.69, 29633.9),
    (69.87, 50.47, 81.73, 27602.0),
    (80.0, 60.38, 81.76, 32257.1),
    (69.84, 50.29, 90.03, 26132.9),
    (69.96, 50.4, 99.92, 24305.6),
    (79.99, 60.58, 99.97, 28544.8),
];

fn wet_bulb_k(dry_bulb_f: f64, dew_point_f: f64) -> f64 {
    let celsius = |fahrenheit: f64| (fahrenheit - 32.0) / 1.8;
    let saturation = |celsius: f64| 610.94 * (17.625 * celsius / (celsius + 243.04)).exp();
    let vapor = saturation(celsius(dew_point_f));
    let (mut low, mut high) = (celsius(dew_point_f), celsius(dry_bulb_f));
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        let at = saturation(middle) - 66.0 * (1.0 + 0.001_15 * middle) * (celsius(dry_bulb_f) - middle);
        if at < vapor { low = middle } else { high = middle }
    }
    0.5 * (low + high) + 273.15
}

/// Each measured capacity predicted from each other one lies within two stated standard uncertainties of their ratio.
#[test]
fn expected_capacity_against_a_measured_unit() {
    let mut worst: f64 = 0.0;
    for first in MEASURED {
        for second in MEASURED {
            let at = |row: (f64, f64, f64, f64)| {
                let (wet, outdoor) = (exact(wet_bulb_k(row.0, row.1)), exact(kelvin_from_fahrenheit(row.2)));
                expected_capacity(10e3, wet, outdoor, &CapacityShape { of_nominal: 0.0, ..CapacityShape::COMMON })
                    .unwrap()
            };
            let (one, other) = (at(first), at(second));
            let ratio = (first.3 / second.3) / (one.value / other.value);
            let relative = |of: Uncertain| of.standard_uncertainty / of.value;
            let allowed = 2.0 * (relative(one).powi(2) + relative(other).powi(2)).sqrt();
            worst = worst.max((ratio - 1.0).abs());
            assert!((ratio - 1.0).abs() <= allowed, "{first:?} {second:?}: {ratio} {allowed}");
        }
    }
    println!("worst ratio of measured to expected changes: {worst:.4} off one");
    assert!(worst > 0.005, "nothing was compared");
}

#[test]
fn before_and_after() {
    let rated = expected_capacity(10.5e3, exact(RATING_WET_BULB_K), exact(308.15), &CapacityShape::COMMON).unwrap();
    assert_relative_eq!(rated.value, 10.5e3, max_relative = 1e-12);
    assert_relative_eq!(rated.standard_uncertainty, 0.029 * 10.5e3, max_relative = 1e-9);
    // Demo: 7.6 of 10 kW before, 9.4 of 10.2 after, each measured to 3 %, one nominal capacity behind both.
    let (before, after) = ((known(7600.0, 228.0), known(10e3, 400.0)), (known(9400.0, 282.0), known(10.2e3, 408.0)));
    let found = gain(before, after, 1.0).unwrap();
    assert_relative_eq!(found.before.value, 0.76, max_relative = 1e-12);
    assert_eq!(found.before, delivered(before.0, before.1).unwrap());
    assert_relative_eq!(found.ratio.value, 0.94 / 1.02 / 0.76, max_relative = 1e-12);
    assert_eq!(found.outcome, GainOutcome::Better);
    // The common four per cent cancel; apart they would not.
    let measured = 0.03 * 2.0_f64.sqrt() * found.ratio.value;
    assert_relative_eq!(found.ratio.standard_uncertainty, measured, max_relative = 2e-3);
    let apart = gain(before, after, 0.0).unwrap();
    assert_relative_eq!(
        apart.ratio.standard_uncertainty,
        0.05 * 2.0_f64.sqrt() * apart.ratio.value,
        max_relative = 5e-3
    );
    assert_eq!(gain(after, before, 1.0).unwrap().outcome, GainOutcome::Worse);
    assert_eq!(gain(before, before, 1.0).unwrap().outcome, GainOutcome::CannotTell);
    assert!(gain(before, after, 1.5).is_err());
    assert!(delivered(exact(f64::NAN), exact(1e4)).is_err() && delivered(exact(8e3), exact(0.0)).is_err());
    for (wet, outdoor) in [(280.0, 308.0), (300.0, 308.0), (292.0, 288.0), (292.0, 330.0)] {
        assert!(expected_capacity(10e3, exact(wet), exact(outdoor), &CapacityShape::COMMON).is_err());
    }
}
