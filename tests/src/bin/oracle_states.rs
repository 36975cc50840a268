//! Prints states of the equations of state as comma-separated values for comparison with an outside library.
//!
//! A refrigerant begins with a row `components`: its designation and those of its components. Then, in columns: kind,
//! designation, and by kind, all by mass:
//! `fractions`: the mole fractions of the components;
//! `reference`: temperature K, density kg/m³, enthalpy J/kg and entropy J/(kg·K) of the saturated liquid at the
//! reference state from which all further enthalpies and entropies count;
//! `phase`: temperature K, pressure Pa, density kg/m³, enthalpy J/kg, entropy J/(kg·K), isochoric and isobaric heat
//! capacity J/(kg·K), speed of sound m/s.

use satline::eos::{Mixture, Properties, Reference, State, StateInput};

type Failure = Box<dyn std::error::Error>;

fn main() -> Result<(), Failure> {
    // The outside library has no parameters for the estimated pairs.
    for model in satline_tests::published() {
        let mixture = Mixture::of(model)?;
        let designation = model.identity.designation;
        let components: Vec<_> = model.fluids.iter().map(|fluid| fluid.designation).collect();
        println!("components,{designation},{}", components.join(","));
        let fractions = mixture.mole_fractions.iter().take(mixture.count());
        println!("fractions,{designation},{}", fractions.map(f64::to_string).collect::<Vec<_>>().join(","));
        // A refrigerant whose critical temperature is below the reference state's, or which freezes above it, has none.
        let properties =
            Reference::ALL.into_iter().find_map(|reference| Properties::of_mixture(&mixture, reference).ok());
        let properties = properties.ok_or("a refrigerant has no reference state")?.with_envelope()?;
        let State { temperature, density, enthalpy, entropy, .. } = match properties.reference() {
            Reference::Iir => properties.saturated_liquid(273.15),
            Reference::Ashrae => properties.saturated_liquid(233.15),
            Reference::NormalBoiling => {
                properties.state(StateInput::PressureQuality { pressure: 101_325.0, quality: 0.0 })
            }
        }?;
        println!("reference,{designation},{temperature:?},{density:?},{enthalpy:?},{entropy:?}");
        let (lowest, (highest, densest)) = (mixture.lowest_temperature(), mixture.highest_temperature_and_pressure());
        let critical = mixture.critical_point()?;
        for row in 0..=24 {
            let temperature = lowest + (highest - lowest) * f64::from(row) / 24.0;
            for ratio in [0.003, 0.1, 0.4, 0.9, 1.3, 4.0] {
                let pressure: f64 = ratio * critical.pressure;
                if pressure > densest || (ratio > 0.5 && (temperature / critical.temperature - 1.0).abs() < 0.01) {
                    continue;
                }
                let Ok(state) = properties.state(StateInput::TemperaturePressure { temperature, pressure }) else {
                    continue; // between dew and bubble pressure
                };
                print!("phase,{designation},{temperature:?},{pressure:?},{:?}", state.density);
                print!(",{:?},{:?}", state.enthalpy, state.entropy);
                for value in [state.isochoric_heat_capacity, state.isobaric_heat_capacity, state.speed_of_sound] {
                    print!(",{:?}", value.ok_or("one phase without a heat capacity or speed of sound")?);
                }
                println!();
            }
        }
    }
    Ok(())
}
