//! Enthalpy, entropy, heat capacities and speed of sound of a homogeneous phase.
//!
//! All follow from the Helmholtz energy a/RT = α⁰ + αʳ and its derivatives. The ideal part of a mixture is
//! Σ xᵢ[(Rᵢ/R)·α⁰ᵢ(τᵢ) + ln(ρ/ρᵢ) + ln xᵢ], with every component at its own reduced temperature τᵢ = Tᵢ/T. The ratio
//! of its paper's gas constant to the mixture's keeps its ideal-gas heat capacity as published.

use super::ideal::IdealDerivatives;
use super::mixture::{Mixture, PerComponent};
use super::term::Derivatives;
use crate::math;

/// Caloric properties of a phase; enthalpy and entropy from the zero that the equations themselves have.
#[derive(Debug, Clone, Copy, Default, PartialEq)]
pub(super) struct Caloric {
    /// Pressure, Pa.
    pub pressure: f64,
    /// J/kg.
    pub enthalpy: f64,
    /// J/(kg·K).
    pub entropy: f64,
    /// J/kg.
    pub internal_energy: f64,
    /// J/(kg·K).
    pub isochoric_heat_capacity: f64,
    /// J/(kg·K).
    pub isobaric_heat_capacity: f64,
    /// Square of the speed of sound, m²/s²; negative in a mechanically unstable state.
    pub speed_of_sound_squared: f64,
    /// ∂p/∂ρ at constant temperature with ρ in mol/m³.
    pub pressure_by_density: f64,
    /// ∂p/∂T at constant density, Pa/K.
    pub pressure_by_temperature: f64,
}

impl Mixture {
    /// The ideal part without its ln ρ: value and derivatives in the scaled reciprocal temperature.
    fn ideal(&self, temperature: f64, fractions: &PerComponent) -> IdealDerivatives {
        let mut sum = IdealDerivatives::default();
        for (fluid, fraction) in self.model().fluids.iter().zip(fractions) {
            let own = fluid.ideal.at(fluid.reducing_temperature / temperature);
            let share = fraction * fluid.gas_constant / self.gas_constant;
            sum.a += share * own.a + fraction * math::ln(fraction / fluid.reducing_density);
            sum.t += share * own.t;
            sum.tt += share * own.tt;
        }
        sum
    }

    /// Mass of a mole of other mole fractions than the overall ones, kg/mol.
    pub(super) fn molar_mass_at(&self, fractions: &PerComponent) -> f64 {
        self.model().fluids.iter().zip(fractions).map(|(fluid, fraction)| fraction * fluid.molar_mass).sum()
    }

    /// Caloric properties from a phase's residual part at its temperature in K, density in mol/m³ and mole fractions.
    pub(super) fn caloric(
        &self,
        temperature: f64,
        density: f64,
        fractions: &PerComponent,
        residual: &Derivatives,
    ) -> Caloric {
        let ideal = self.ideal(temperature, fractions);
        let mass = self.molar_mass_at(fractions);
        let specific_gas_constant = self.gas_constant / mass;
        let rt = specific_gas_constant * temperature;
        let internal_energy = rt * (ideal.t + residual.t);
        let by_temperature = 1.0 + residual.d - residual.dt;
        let by_density = 1.0 + 2.0 * residual.d + residual.dd;
        let isochoric = -(ideal.tt + residual.tt);
        let expansion = by_temperature * by_temperature;
        Caloric {
            pressure: density * self.gas_constant * temperature * (1.0 + residual.d),
            enthalpy: internal_energy + rt * (1.0 + residual.d),
            entropy: specific_gas_constant * (ideal.t + residual.t - ideal.a - residual.a - math::ln(density)),
            internal_energy,
            isochoric_heat_capacity: specific_gas_constant * isochoric,
            isobaric_heat_capacity: specific_gas_constant * (isochoric + expansion / by_density),
            speed_of_sound_squared: rt * (by_density + expansion / isochoric),
            pressure_by_density: self.gas_constant * temperature * by_density,
            pressure_by_temperature: density * self.gas_constant * by_temperature,
        }
    }
}
