//! States: what a refrigerant is like where two of its properties are known.

use super::caloric::Caloric;
use super::density::Kind;
use super::flash::{Fixed, TwoPhase};
use super::mixture::PerComponent;
use super::reference::Properties;
use crate::error::Error;
use crate::math;

/// What is known of a state: temperature in K, absolute pressure in Pa, specific enthalpy in J/kg and entropy in
/// J/(kg·K) by the reference state in use, quality as the vapour's share of the mass, 0 to 1.
#[derive(Debug, Clone, Copy, PartialEq)]
#[allow(missing_docs)] // the fields are named for what they are
pub enum StateInput {
    TemperaturePressure { temperature: f64, pressure: f64 },
    PressureEnthalpy { pressure: f64, enthalpy: f64 },
    PressureEntropy { pressure: f64, entropy: f64 },
    TemperatureQuality { temperature: f64, quality: f64 },
    PressureQuality { pressure: f64, quality: f64 },
}

/// Which phase or phases a state consists of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PhaseKind {
    /// Below the critical temperature, at or above the bubble pressure.
    Liquid,
    /// At or below the dew pressure, or above the critical temperature but below the critical pressure.
    Vapor,
    /// Liquid and vapour together.
    TwoPhase,
    /// At or above the critical temperature and pressure.
    Supercritical,
}

impl PhaseKind {
    /// The name in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Liquid => "liquid",
            Self::Vapor => "vapor",
            Self::TwoPhase => "two-phase",
            Self::Supercritical => "supercritical",
        }
    }
}

/// A state with its properties, all by mass.
///
/// Heat capacities and speed of sound belong to one phase. They are none in two phases; at a quality of exactly 0 or 1
/// they are those of the saturated liquid or vapour.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct State {
    /// Temperature, K.
    pub temperature: f64,
    /// Absolute pressure, Pa.
    pub pressure: f64,
    /// Density, kg/m³; of two phases the mass of both over their volume.
    pub density: f64,
    /// Enthalpy, J/kg.
    pub enthalpy: f64,
    /// Entropy, J/(kg·K).
    pub entropy: f64,
    /// Internal energy, J/kg.
    pub internal_energy: f64,
    /// Heat capacity at constant volume, J/(kg·K).
    pub isochoric_heat_capacity: Option<f64>,
    /// Heat capacity at constant pressure, J/(kg·K).
    pub isobaric_heat_capacity: Option<f64>,
    /// Speed of sound, m/s.
    pub speed_of_sound: Option<f64>,
    /// The vapour's share of the mass; none in one phase.
    pub quality: Option<f64>,
    /// Liquid, vapour, both or neither; at a quality of exactly 0 liquid, of exactly 1 vapour.
    pub phase: PhaseKind,
    /// Mass fractions of the components in the liquid of two phases, in the order of the refrigerant's components.
    pub liquid_mass_fractions: Option<PerComponent>,
    /// Mass fractions of the components in the vapour of two phases.
    pub vapor_mass_fractions: Option<PerComponent>,
}

impl Properties {
    /// The state at two known properties.
    ///
    /// Temperatures reach from the highest of the components' lowest (freezing) temperatures to the lowest of their
    /// highest; pressures to the lowest of their highest. At a pressure whose bubble point lies below the lowest temperature,
    /// two phases are given from there up to the dew point.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] naming quantity and limits: a value outside the equations' range; a temperature and
    /// pressure between dew and bubble pressure, which do not fix a state; a quality where there are no two phases; an
    /// enthalpy or entropy that the pressure does not reach. [`Error::NotFinite`] for a value that is not a number.
    /// [`Error::NotConverged`] if no solution was found, as may be close to a critical point.
    ///
    /// ```
    /// use satline::eos::{Properties, Reference, StateInput, model};
    /// let r410a = Properties::of(&model::R410A, Reference::Iir)?;
    /// let discharge = r410a.state(StateInput::TemperaturePressure { temperature: 343.15, pressure: 2.7e6 })?;
    /// let valve_outlet = r410a.state(StateInput::PressureEnthalpy { pressure: 9e5, enthalpy: 265e3 })?;
    /// assert!(discharge.enthalpy > valve_outlet.enthalpy && valve_outlet.quality.is_some());
    /// # Ok::<(), satline::Error>(())
    /// ```
    pub fn state(&self, input: StateInput) -> Result<State, Error> {
        match input {
            StateInput::TemperaturePressure { temperature, pressure } => self.at_both(temperature, pressure),
            StateInput::PressureEnthalpy { pressure, enthalpy } => self.at_enthalpy(pressure, enthalpy),
            StateInput::PressureEntropy { pressure, entropy } => self.at_entropy(pressure, entropy),
            StateInput::TemperatureQuality { temperature, quality } => {
                self.at_quality(Fixed::Temperature(temperature), quality)
            }
            StateInput::PressureQuality { pressure, quality } => self.at_quality(Fixed::Pressure(pressure), quality),
        }
    }

    /// Saturated liquid of the overall composition at a temperature in K.
    ///
    /// # Errors
    /// As [`super::Mixture::at_temperature`].
    pub fn saturated_liquid(&self, temperature: f64) -> Result<State, Error> {
        self.at_quality(Fixed::Temperature(temperature), 0.0)
    }

    /// Saturated vapour of the overall composition at a temperature in K.
    ///
    /// # Errors
    /// As [`super::Mixture::at_temperature`].
    pub fn saturated_vapor(&self, temperature: f64) -> Result<State, Error> {
        self.at_quality(Fixed::Temperature(temperature), 1.0)
    }

    fn at_both(&self, temperature: f64, pressure: f64) -> Result<State, Error> {
        let (kind, density) = self.mixture().density_and_kind(self.known_envelope(), temperature, pressure)?;
        let phase = match kind {
            Kind::Liquid => PhaseKind::Liquid,
            Kind::Vapor => PhaseKind::Vapor,
            Kind::Fluid => self.beyond(temperature, pressure, density)?,
        };
        Ok(self.one_phase(temperature, pressure, density, phase))
    }

    /// What a single phase of a density in mol/m³ is, by the critical point.
    pub(super) fn beyond(&self, temperature: f64, pressure: f64, density: f64) -> Result<PhaseKind, Error> {
        let critical = self.critical_values(temperature, pressure)?;
        Ok(match (temperature >= critical.temperature, pressure >= critical.pressure) {
            (true, true) => PhaseKind::Supercritical,
            (false, true) => PhaseKind::Liquid,
            (true, false) => PhaseKind::Vapor,
            (false, false) if density > critical.density => PhaseKind::Liquid,
            (false, false) => PhaseKind::Vapor,
        })
    }

    /// One phase of the overall composition, its density in mol/m³.
    pub(super) fn one_phase(&self, temperature: f64, pressure: f64, density: f64, phase: PhaseKind) -> State {
        self.one_phase_of(temperature, pressure, density, phase, &self.bulk(temperature, density))
    }

    /// The same where its caloric properties are known already.
    pub(super) fn one_phase_of(
        &self,
        temperature: f64,
        pressure: f64,
        density: f64,
        phase: PhaseKind,
        caloric: &Caloric,
    ) -> State {
        State {
            temperature,
            pressure,
            density: density * self.mixture().molar_mass,
            enthalpy: caloric.enthalpy,
            entropy: caloric.entropy,
            internal_energy: caloric.internal_energy,
            isochoric_heat_capacity: Some(caloric.isochoric_heat_capacity),
            isobaric_heat_capacity: Some(caloric.isobaric_heat_capacity),
            speed_of_sound: (caloric.speed_of_sound_squared > 0.0).then(|| math::sqrt(caloric.speed_of_sound_squared)),
            quality: None,
            phase,
            liquid_mass_fractions: None,
            vapor_mass_fractions: None,
        }
    }

    fn at_quality(&self, fixed: Fixed, quality: f64) -> Result<State, Error> {
        Ok(self.two_phases(&self.mixture().two_phase(fixed, quality)?))
    }

    /// Caloric properties of the liquid and of the vapour of two phases.
    pub(super) fn of_both(&self, point: &TwoPhase) -> (Caloric, Caloric) {
        (
            self.of_phase(point.temperature, &point.liquid_densities),
            self.of_phase(point.temperature, &point.vapor_densities),
        )
    }

    fn of_phase(&self, temperature: f64, densities: &PerComponent) -> Caloric {
        let mixture = self.mixture();
        let phase = mixture.phase(temperature, densities);
        let fractions = densities.map(|partial| partial / phase.density);
        self.referred(mixture.caloric(temperature, phase.density, &fractions, &phase.residual))
    }

    /// Liquid and vapour together.
    pub(super) fn two_phases(&self, point: &TwoPhase) -> State {
        let mixture = self.mixture();
        let (liquid, vapor) = self.of_both(point);
        let quality = point.quality;
        // At the ends the value of the one phase, without the rounding of a sum.
        let mean = |of_liquid: f64, of_vapor: f64| match quality {
            0.0 => of_liquid,
            1.0 => of_vapor,
            _ => of_liquid + quality * (of_vapor - of_liquid),
        };
        let specific_volume = |densities: &PerComponent| {
            let masses = densities.iter().zip(mixture.model().fluids);
            1.0 / masses.map(|(density, fluid)| density * fluid.molar_mass).sum::<f64>()
        };
        let (phase, own) = match quality {
            0.0 => (PhaseKind::Liquid, Some(&liquid)),
            1.0 => (PhaseKind::Vapor, Some(&vapor)),
            _ => (PhaseKind::TwoPhase, None),
        };
        State {
            temperature: point.temperature,
            pressure: point.pressure,
            density: 1.0 / mean(specific_volume(&point.liquid_densities), specific_volume(&point.vapor_densities)),
            enthalpy: mean(liquid.enthalpy, vapor.enthalpy),
            entropy: mean(liquid.entropy, vapor.entropy),
            internal_energy: mean(liquid.internal_energy, vapor.internal_energy),
            isochoric_heat_capacity: own.map(|own| own.isochoric_heat_capacity),
            isobaric_heat_capacity: own.map(|own| own.isobaric_heat_capacity),
            speed_of_sound: own.map(|own| math::sqrt(own.speed_of_sound_squared.max(0.0))),
            quality: Some(quality),
            phase,
            liquid_mass_fractions: Some(mixture.mass_fractions(&point.liquid_densities)),
            vapor_mass_fractions: Some(mixture.mass_fractions(&point.vapor_densities)),
        }
    }
}
