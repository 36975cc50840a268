//! What the diagnosis says of measured readings: healthy ones, and one that is a trap.

use super::row::name;
use satline::diagnosis::{Advice, Finding, Options, diagnose_with};
use satline::quantity::{KELVIN_PER_FAHRENHEIT, M3_S_PER_CFM, PASCALS_PER_PSI, WATTS_PER_TON, kelvin_from_fahrenheit};
use satline::reading::{Field, Metering, MeteringPlace, Reading};
use satline::saturation::R410A;
use satline::text::readings_from_json;
use std::fmt::Write;

/// NISTIR 7350, appendix D: fault-free cooling tests of a 2.5 ton R-410A unit with a thermostatic valve; measured.
const HEALTHY: &str = include_str!("../../data/readings/nistir7350_fault_free.json");

fn line(finding: &Finding) -> String {
    let likely: Vec<String> = finding
        .hypotheses
        .iter()
        .take(3)
        .map(|one| format!("{} {:.0} %", name(one.causes), 100.0 * one.probability))
        .collect();
    format!(
        "charge {} ({}), {}; stands by {} ({}); likely: {}",
        finding.charge.name(),
        finding.reason.name(),
        finding.advice.name(),
        finding.conclusion.causes.map_or("cannot tell".to_string(), name),
        finding.conclusion.reason.name(),
        likely.join(", "),
    )
}

fn both(page: &mut String, reading: &Reading, baseline: &Reading) -> [Finding; 2] {
    [&[][..], std::slice::from_ref(baseline)].map(|baseline| {
        let finding = diagnose_with(reading, &Options { baseline, ..Options::default() });
        let given = if baseline.is_empty() { "alone" } else { "with a baseline" };
        let _ = writeln!(page, "    {given}: {}", line(&finding));
        finding
    })
}

/// What it says of each healthy reading, alone and with the one after it as its baseline.
///
/// # Panics
/// Where the file cannot be read, which its own tests would tell.
#[must_use]
pub fn healthy() -> String {
    let readings = readings_from_json(HEALTHY).unwrap();
    let mut page = String::new();
    let (mut stood, mut alarms) = ([0; 2], [0; 2]);
    for (place, one) in readings.iter().enumerate() {
        let _ = writeln!(page, "  {}", one.label);
        let other = &readings[(place + 1) % readings.len()];
        for (place, finding) in both(&mut page, &one.reading, &other.reading).iter().enumerate() {
            stood[place] += u32::from(finding.conclusion.causes.is_some_and(|causes| causes.is_empty()));
            alarms[place] += u32::from(finding.conclusion.causes.is_some_and(|causes| !causes.is_empty()));
        }
    }
    for (place, given) in ["alone", "with a baseline"].iter().enumerate() {
        let (stood, alarms) = (stood[place], alarms[place]);
        let _ = writeln!(page, "  {given}: {} readings, {stood} called healthy, {alarms} false alarms", readings.len());
    }
    page.push('\n');
    page
}

/// A reading of the valve unit, its air at 80/67 °F indoors; from °F and psia. All but what a caller gives is demo.
fn valve_unit(outdoor: f64, suction: (f64, f64), liquid: (f64, f64)) -> Reading {
    let mut reading = Reading {
        refrigerant: Some(&R410A),
        metering: Some(Metering::ThermostaticValve),
        metering_place: Some(MeteringPlace::Indoor),
        ..Reading::default()
    };
    let mut set = |field, value: f64| reading.set(field, value).unwrap();
    set(Field::OutdoorDryBulb, kelvin_from_fahrenheit(outdoor));
    set(Field::ReturnDryBulb, kelvin_from_fahrenheit(80.0));
    set(Field::ReturnWetBulb, kelvin_from_fahrenheit(67.0));
    set(Field::SupplyDryBulb, kelvin_from_fahrenheit(60.0));
    set(Field::AirflowOverCoil, 1200.0 * M3_S_PER_CFM);
    set(Field::NominalCapacity, 3.0 * WATTS_PER_TON);
    set(Field::TargetSubcooling, 9.7 * KELVIN_PER_FAHRENHEIT);
    set(Field::MinutesSinceChange, 20.0);
    for (pressure, line, (psia, away), of) in [
        (Field::SuctionPressure, Field::SuctionLineTemperature, suction, 1.0),
        (Field::LiquidPressure, Field::LiquidLineTemperature, liquid, -1.0),
    ] {
        set(pressure, psia * PASCALS_PER_PSI);
        let pressure = satline::quantity::Pressure::from_pascals(psia * PASCALS_PER_PSI).unwrap();
        let saturated = if of > 0.0 { R410A.dew_temperature(pressure) } else { R410A.bubble_temperature(pressure) };
        set(line, saturated.unwrap().kelvin() + of * away * KELVIN_PER_FAHRENHEIT);
    }
    reading
}

/// The trap: a unit with all its charge whose outdoor coil is blocked. Measured are its subcooling, 0.6 °F where 9.7 is
/// healthy, and its discharge pressure, 400 psia; the rest is completed by demo values, in several ways. To add
/// refrigerant would be wrong.
///
/// # Panics
/// Never: the numbers stand here.
#[must_use]
pub fn trap() -> String {
    let mut page = String::new();
    let (mut added, mut asked) = (0, 0);
    // On the hot day such a head is that of a blocked coil only where a clean one stands low over the air (demo).
    for (outdoor, clean) in [(75.0, 17.0), (82.0, 17.0), (95.0, 10.0)] {
        for (psia, suction) in [(390.0, (145.0, 12.0)), (394.0, (148.0, 10.0)), (398.0, (150.0, 8.0))] {
            let reading = valve_unit(outdoor, suction, (psia, 0.6));
            // The same unit with a clean coil.
            let clean = satline::quantity::Temperature::from_fahrenheit(outdoor + clean).unwrap();
            let clean = R410A.bubble_pressure(clean).unwrap().pascals() / PASCALS_PER_PSI;
            let baseline = valve_unit(outdoor, (144.0, 10.0), (clean, 9.7));
            let _ = writeln!(
                page,
                "  outdoors {outdoor} °F, liquid {psia} psia ({clean:.0} when clean), suction {} psia, superheat {} °F",
                suction.0, suction.1
            );
            for finding in both(&mut page, &reading, &baseline) {
                asked += 1;
                if finding.advice == Advice::AddInSteps {
                    added += 1;
                    let _ = writeln!(page, "    HARM: it tells to add refrigerant to a full unit");
                }
            }
        }
    }
    let _ = writeln!(page, "  told to add in {added} of {asked}\n");
    page
}
