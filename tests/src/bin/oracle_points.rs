//! Prints points of the equations of state as comma-separated values for comparison with an outside library.
//!
//! A refrigerant begins with a row `components`: its designation and those of its components. Then, in columns: kind,
//! designation, temperature K, and by kind:
//! `density` (pure fluids): pressure Pa, density mol/m³;
//! `bubble` and `dew`: liquid density, vapour density, liquid pressure, vapour pressure, then for each component its mole
//! fractions in liquid and vapour and ln(fugacity in Pa) in liquid and vapour.

use satline::bounds::NEAREST_TO_CRITICAL;
use satline::eos::{End, Mixture};

type Failure = Box<dyn std::error::Error>;

fn main() -> Result<(), Failure> {
    // The outside library has no parameters for the estimated pairs.
    for model in satline_tests::published() {
        let mixture = Mixture::of(model)?;
        let components: Vec<_> = model.fluids.iter().map(|fluid| fluid.designation).collect();
        println!("components,{},{}", model.identity.designation, components.join(","));
        saturation(&mixture)?;
        if mixture.count() == 1 {
            densities(&mixture)?;
        }
    }
    Ok(())
}

/// From the lowest temperature evenly to 0.99 of the critical one, then ever closer to it.
fn saturation(mixture: &Mixture) -> Result<(), Failure> {
    let designation = mixture.model().identity.designation;
    let (lowest, critical) = (mixture.lowest_temperature(), mixture.critical_point()?.temperature);
    let even = (0..=40).map(|step| lowest + (0.99 * critical - lowest) * f64::from(step) / 40.0);
    let near = (5..16).map(|step| 10_f64.powf(-f64::from(step) / 4.0)).chain([1.000_001 * NEAREST_TO_CRITICAL]);
    for temperature in even.chain(near.map(|distance| critical * (1.0 - distance))) {
        for end in [End::Bubble, End::Dew] {
            // R-431A splits into two liquids at its lowest temperatures: no dew point there (tests/tests/eos.rs).
            let Ok(found) = mixture.at_temperature(end, temperature) else {
                assert!(designation == "R-431A" && temperature < 200.0, "{designation} {temperature}");
                continue;
            };
            let bulk = mixture.bulk_phase(temperature, found.bulk_density);
            let incipient = mixture.phase(temperature, &found.incipient_densities);
            let fractions = found.incipient_fractions();
            let ((kind, liquid, x), (vapor, y)) = match end {
                End::Bubble => (("bubble", bulk, mixture.mole_fractions), (incipient, fractions)),
                End::Dew => (("dew", incipient, fractions), (bulk, mixture.mole_fractions)),
            };
            print!("{kind},{designation},{temperature:?},{:?},{:?}", liquid.density, vapor.density);
            print!(",{:?},{:?}", liquid.pressure, vapor.pressure);
            for k in 0..mixture.count() {
                print!(",{:?},{:?},{:?},{:?}", x[k], y[k], liquid.ln_fugacities[k], vapor.ln_fugacities[k]);
            }
            println!();
        }
    }
    Ok(())
}

/// Liquid, vapour and supercritical states over the whole range of a pure fluid's equation.
fn densities(mixture: &Mixture) -> Result<(), Failure> {
    let fluid = mixture.model().fluids[0];
    for row in 0..=30 {
        let share = f64::from(row) / 30.0;
        let temperature = fluid.lowest_temperature + share * (fluid.highest_temperature - fluid.lowest_temperature);
        for column in 0..=24 {
            let pressure = fluid.highest_pressure * 10_f64.powf(-f64::from(column) / 4.0);
            let density = mixture.density(temperature, pressure)?;
            println!("density,{},{temperature:?},{pressure:?},{density:?}", fluid.designation);
        }
    }
    Ok(())
}
