//! A new 60 ft line set for R-454B in 3/8 and 3/4 in (demo: invented), from numbers to answer; `docs/line_set.md` explains
//! it.
//!
//! ```text
//! cargo run --release --example line_set
//! ```

use satline::Error;
use satline::eos::{Properties, Reference, model};
use satline::lineset::{Behind, Covered, Line, LineCharge, LineSet, OutdoorDevice, Tube, line_set_charge};
use satline::quantity::{Atmosphere, Pressure, Temperature};
use satline::saturation::R454B;
use satline::uncertain::Uncertain;

const METRES_PER_FOOT: f64 = 0.3048;
const KG_PER_OUNCE: f64 = 0.028_349_523_125;

fn main() -> Result<(), Error> {
    let properties = Properties::of(&model::R454B, Reference::Iir)?;
    let length = 60.0 * METRES_PER_FOOT;
    let liquid_temperature = Temperature::from_fahrenheit(95.0)?;
    let liquid_pressure = Pressure::from_psi_gauge(350.0, Atmosphere::STANDARD)?;
    let vapor_temperature = Temperature::from_fahrenheit(55.0)?;
    let vapor_pressure = R454B.dew_pressure(Temperature::from_fahrenheit(45.0)?)?;
    let drier = [Uncertain::new(0.06, 0.01)?];
    let set = LineSet {
        liquid: Line::new(Tube::named("3/8")?, length, liquid_temperature.kelvin(), Some(liquid_pressure.pascals())),
        vapor: Line::new(Tube::named("3/4")?, length, vapor_temperature.kelvin(), Some(vapor_pressure.pascals())),
        outdoor_device: None,
        covered: Covered::length_m(15.0 * METRES_PER_FOOT),
        accessories_kg: &drier,
        makers_charge_per_length_kg_m: None,
    };

    println!("Demo: 60 ft line set, R-454B, 3/8 and 3/4 in, 15 ft covered by the factory charge, a drier of 60 g.");
    let charge = line_set_charge(&properties, &set)?;
    show("small line", &charge.liquid);
    show("large line", &charge.vapor);
    println!("beyond the covered length: {}", mass(charge.computed_kg));
    println!("with the drier: {}", mass(charge.mass_kg));
    println!("{}", charge.action.sentence());
    println!("{}", charge.advice.sentence());
    for caution in charge.cautions() {
        println!("- {}", caution.sentence());
    }

    // The same set with the metering device in the outdoor unit: the small line is two-phase.
    let behind = Behind::Temperature(Temperature::from_fahrenheit(47.0)?.kelvin());
    let device = OutdoorDevice { behind, standard_uncertainty: 0.5 };
    let outdoors = line_set_charge(&properties, &LineSet { outdoor_device: Some(device), ..set })?;
    println!("\nWith the metering device outdoors, 47 °F behind it:");
    show("small line", &outdoors.liquid);
    println!("with the drier: {}", mass(outdoors.mass_kg));
    println!("\nEvery ± is one standard uncertainty.");
    Ok(())
}

fn show(name: &str, line: &LineCharge) {
    let per_length = line.charge_per_length_kg_m.value;
    println!(
        "{name}: {:.1} kg/m³, {:.2} g/m = {:.3} oz/ft, holds {}{}",
        line.density_kg_m3.value,
        1e3 * per_length,
        per_length * METRES_PER_FOOT / KG_PER_OUNCE,
        mass(line.holds_kg),
        line.quality.map_or(String::new(), |quality| format!(", quality {quality:.3}"))
    );
}

fn mass(mass: Uncertain) -> String {
    format!(
        "{:.3} ± {:.3} kg = {:.1} ± {:.1} oz",
        mass.value,
        mass.standard_uncertainty,
        mass.value / KG_PER_OUNCE,
        mass.standard_uncertainty / KG_PER_OUNCE
    )
}
