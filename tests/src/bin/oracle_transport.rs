//! Prints surface tensions, thermal conductivities and viscosities as comma-separated values for comparison with an
//! outside library. In columns, by kind:
//! `surface`: designation, temperature K, surface tension N/m;
//! `conductivity`: designation, temperature K, density kg/m³, thermal conductivity W/(m·K), viscosity Pa·s (empty where it
//! is not known).

use satline::eos::{End, Mixture, model};

fn main() -> Result<(), satline::Error> {
    for model in model::ALL.iter().filter(|model| model.fluids.len() == 1) {
        let mixture = Mixture::of(model)?;
        let designation = model.identity.designation;
        let (lowest, (highest, _)) = (mixture.lowest_temperature(), mixture.highest_temperature_and_pressure());
        let critical = mixture.critical_point()?;
        for step in 0..=40 {
            let temperature = lowest + (critical.temperature - lowest) * f64::from(step) / 40.0;
            if let Ok(tension) = mixture.surface_tension(temperature) {
                println!("surface,{designation},{temperature:?},{tension:?}");
            }
        }
        for step in 0..=40 {
            let temperature = lowest + (highest.min(500.0) - lowest) * f64::from(step) / 40.0;
            let mut densities: Vec<f64> = [0.001, 0.03, 0.1, 0.3, 0.6, 0.9, 1.1, 1.4, 1.8, 2.2, 2.6, 3.0]
                .map(|ratio| ratio * critical.density)
                .into();
            for end in [End::Bubble, End::Dew] {
                densities.extend(mixture.at_temperature(end, temperature).map(|point| point.bulk_density));
            }
            for density in densities {
                let Ok(conductivity) = mixture.thermal_conductivity(temperature, density) else { continue };
                let mass_density = density * mixture.molar_mass;
                let viscosity = mixture.viscosity(temperature, density).map(|value| format!("{value:?}"));
                let viscosity = viscosity.unwrap_or_default();
                println!("conductivity,{designation},{temperature:?},{mass_density:?},{conductivity:?},{viscosity}");
            }
        }
    }
    Ok(())
}
