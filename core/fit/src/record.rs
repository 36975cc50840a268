//! What the full record of a refrigerant holds besides its curves of pressure and temperature.

use crate::property::{self, DENSITY_BUDGET, ENTHALPY_BUDGET, Fitted};
use satline::Error;
use satline::eos::{Critical, End, Mixture, Properties, Reference};
use satline::saturation::Points;

/// The saturated properties, in the order in which they are written.
pub struct Saturated {
    pub liquid_density: Fitted,
    pub vapor_density: Fitted,
    pub liquid_enthalpy: Fitted,
    pub vapor_enthalpy: Fitted,
}

impl Saturated {
    /// Each with the name of its field.
    pub fn named(&self) -> [(&'static str, &Fitted); 4] {
        [
            ("liquid_density", &self.liquid_density),
            ("vapor_density", &self.vapor_density),
            ("liquid_enthalpy", &self.liquid_enthalpy),
            ("vapor_enthalpy", &self.vapor_enthalpy),
        ]
    }
}

/// The reference state of a refrigerant's enthalpy: 200 kJ/kg for saturated liquid at 0 °C, or, where 0 °C is above the
/// critical temperature, zero for saturated liquid at 101 325 Pa.
fn reference(mixture: &Mixture) -> Result<Properties, Error> {
    Properties::of(mixture.model(), Reference::Iir)
        .or_else(|_| Properties::of(mixture.model(), Reference::NormalBoiling))
}

/// Fitted over a range of temperatures: lowest, highest, and the critical one.
pub fn properties(mixture: &Mixture, range: (f64, f64, f64)) -> Result<Saturated, Error> {
    let density = |end| {
        property::fit(range, true, DENSITY_BUDGET, |temperature| {
            Ok(mixture.at_temperature(end, temperature)?.bulk_density * mixture.molar_mass)
        })
    };
    let reference = reference(mixture)?;
    let enthalpy = |end| {
        property::fit(range, false, ENTHALPY_BUDGET, |temperature| {
            let point = mixture.at_temperature(end, temperature)?;
            reference.enthalpy_at(temperature, point.bulk_density)
        })
    };
    Ok(Saturated {
        liquid_density: density(End::Bubble)?,
        vapor_density: density(End::Dew)?,
        liquid_enthalpy: enthalpy(End::Bubble)?,
        vapor_enthalpy: enthalpy(End::Dew)?,
    })
}

pub fn points(mixture: &Mixture, critical: Critical) -> Result<Points, Error> {
    let normal = |end| match mixture.at_pressure(end, 101_325.0) {
        Ok(point) => Ok(Some(point.temperature)),
        // Solid at that pressure, as carbon dioxide is.
        Err(Error::OutOfRange { .. }) => Ok(None),
        Err(error) => Err(error),
    };
    Ok(Points {
        normal_bubble_temperature_k: normal(End::Bubble)?,
        normal_dew_temperature_k: normal(End::Dew)?,
        critical_temperature_k: critical.temperature,
        critical_pressure_pa: critical.pressure,
        critical_density_kg_m3: critical.density * mixture.molar_mass,
        molar_mass_kg_mol: mixture.molar_mass,
    })
}
