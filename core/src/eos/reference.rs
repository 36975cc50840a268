//! Where enthalpy and entropy are zero, and the properties measured from there.

use super::caloric::Caloric;
use super::envelope::Envelope;
use super::equilibrium::{End, Equilibrium};
use super::mixture::Mixture;
use super::model::Model;
use crate::bounds;
use crate::error::Error;

/// The state at which enthalpy and entropy have agreed values; only differences of them have a meaning of their own.
///
/// Saturated liquid means the bubble point of the overall composition, so that each blend has its own zero.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub enum Reference {
    /// International Institute of Refrigeration: 200 kJ/kg and 1 kJ/(kg·K) for saturated liquid at 0 °C.
    #[default]
    Iir,
    /// ASHRAE: zero for saturated liquid at −40 °C.
    Ashrae,
    /// Zero for saturated liquid at the standard atmosphere, 101 325 Pa.
    NormalBoiling,
}

impl Reference {
    /// Every reference state.
    pub const ALL: [Self; 3] = [Self::Iir, Self::Ashrae, Self::NormalBoiling];

    /// The name in every language: `IIR`, `ASHRAE`, `NBP`.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Iir => "IIR",
            Self::Ashrae => "ASHRAE",
            Self::NormalBoiling => "NBP",
        }
    }

    /// The reference state of that name.
    ///
    /// # Errors
    /// [`Error::UnknownChoice`] naming the choices.
    pub fn from_name(name: &str) -> Result<Self, Error> {
        Self::ALL
            .into_iter()
            .find(|reference| reference.name() == name)
            .ok_or(Error::UnknownChoice { field: "the reference state", choices: "IIR, ASHRAE, NBP" })
    }

    /// Enthalpy in J/kg and entropy in J/(kg·K) at the reference state.
    const fn values(self) -> (f64, f64) {
        match self {
            Self::Iir => (200e3, 1e3),
            Self::Ashrae | Self::NormalBoiling => (0.0, 0.0),
        }
    }

    fn point(self, mixture: &Mixture) -> Result<Equilibrium, Error> {
        let found = match self {
            Self::Iir => mixture.at_temperature(End::Bubble, 273.15),
            Self::Ashrae => mixture.at_temperature(End::Bubble, 233.15),
            Self::NormalBoiling => mixture.at_pressure(End::Bubble, 101_325.0),
        };
        found.map_err(|error| Self::explained(mixture, error))
    }

    /// A range error of the saturation line, said of the reference state.
    fn explained(mixture: &Mixture, error: Error) -> Error {
        let Error::OutOfRange { unit, value, lower, upper, .. } = error else { return error };
        // The line's own error below its range does not know where the line ends.
        let end = mixture.critical_point().ok();
        let (quantity, end) = match unit {
            "K" => ("temperature of the reference state's saturated liquid", end.map(|end| end.temperature)),
            _ => ("pressure of the reference state's saturated liquid", end.map(|end| end.pressure)),
        };
        let advice = "this refrigerant has no saturated liquid there: choose another reference state";
        Error::OutOfRange { quantity, unit, value, lower, upper: end.map_or(upper, |end| end.min(upper)), advice }
    }
}

/// Thermodynamic properties of a refrigerant, with enthalpy and entropy by a reference state.
#[derive(Debug, Clone, Copy)]
pub struct Properties {
    mixture: Mixture,
    reference: Reference,
    /// What is added to the enthalpy of the equations, J/kg.
    enthalpy_offset: f64,
    /// What is added to the entropy of the equations, J/(kg·K).
    entropy_offset: f64,
    envelope: Option<Envelope>,
}

impl Properties {
    /// Properties of a refrigerant at its nominal composition.
    ///
    /// # Errors
    /// Those of [`Mixture::of`]; [`Error::OutOfRange`] where the refrigerant has no saturated liquid at the reference
    /// state, which so must lie above its lowest and below its critical temperature.
    pub fn of(model: &'static Model, reference: Reference) -> Result<Self, Error> {
        Self::of_mixture(&Mixture::of(model)?, reference)
    }

    /// Properties of a mixture of any composition.
    ///
    /// # Errors
    /// As [`Properties::of`].
    pub fn of_mixture(mixture: &Mixture, reference: Reference) -> Result<Self, Error> {
        let point = reference.point(mixture)?;
        let raw = Self { mixture: *mixture, reference, enthalpy_offset: 0.0, entropy_offset: 0.0, envelope: None };
        let here = raw.bulk(point.temperature, point.bulk_density);
        let (enthalpy, entropy) = reference.values();
        Ok(Self { enthalpy_offset: enthalpy - here.enthalpy, entropy_offset: entropy - here.entropy, ..raw })
    }

    /// The same, with the end of the two-phase region computed now and kept. Worth its time, some tenths of a
    /// millisecond, where many states near or above the critical point of a blend are wanted.
    ///
    /// # Errors
    /// As [`Mixture::envelope`].
    pub fn with_envelope(self) -> Result<Self, Error> {
        Ok(Self { envelope: Some(self.mixture.envelope()?), ..self })
    }

    /// The end of the two-phase region, if it was computed.
    pub(super) const fn known_envelope(&self) -> Option<&Envelope> {
        self.envelope.as_ref()
    }

    /// The mixture.
    #[must_use]
    pub const fn mixture(&self) -> &Mixture {
        &self.mixture
    }

    /// The reference state.
    #[must_use]
    pub const fn reference(&self) -> Reference {
        self.reference
    }

    /// Enthalpy in J/kg of the overall composition as one phase at a temperature in K and a molar density in mol/m³.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] or [`Error::NotFinite`] for a temperature that no refrigerant has, or a density that is
    /// not positive.
    pub fn enthalpy_at(&self, temperature: f64, density: f64) -> Result<f64, Error> {
        bounds::TEMPERATURE.check(temperature)?;
        bounds::MOLAR_DENSITY.check(density)?;
        Ok(self.bulk(temperature, density).enthalpy)
    }

    /// Caloric properties of the overall composition as one phase, by the reference state.
    pub(super) fn bulk(&self, temperature: f64, density: f64) -> Caloric {
        let residual = self.mixture.bulk_phase(temperature, density).residual;
        self.referred(self.mixture.caloric(temperature, density, &self.mixture.mole_fractions, &residual))
    }

    /// The same properties from the zero of the reference state.
    pub(super) fn referred(&self, raw: Caloric) -> Caloric {
        Caloric {
            enthalpy: raw.enthalpy + self.enthalpy_offset,
            internal_energy: raw.internal_energy + self.enthalpy_offset,
            entropy: raw.entropy + self.entropy_offset,
            ..raw
        }
    }
}
