//! One phase of a mixture: pressure, fugacities and their derivatives at a temperature and partial densities.
//!
//! The multi-fluid model: the residual Helmholtz energy of the components at the mixture's reduced
//! state, plus a departure function for each pair. A pure fluid is a mixture of one.
//!
//! Everything follows from the residual Helmholtz energy density over RT, Ψ(T, ρ₁ … ρₙ) = ρ·αʳ: its first derivatives
//! with respect to the partial molar densities give the fugacities, its second their slopes. The reduced state depends
//! on them through forms of second degree, because the mixing rules multiplied by ρ² are homogeneous of second degree:
//!
//! τ = Q_T/(ρ²T) and δ = Q_v/ρ (see [`super::reducing`]).

use super::fluid::PureFluid;
use super::model::{GAS_CONSTANT, MAX_COMPONENTS, Model};
use super::pair::Pair;
use super::reducing::{Form, Value};
use super::term::{Derivatives, Powers};
use crate::error::Error;
use crate::math;

/// A value for each component; entries past the count are unused.
pub type PerComponent = [f64; MAX_COMPONENTS];
pub(super) type Square = [PerComponent; MAX_COMPONENTS];

/// A mixture of fixed overall composition.
#[derive(Debug, Clone, Copy)]
pub struct Mixture {
    model: &'static Model,
    /// Overall mole fractions.
    pub mole_fractions: PerComponent,
    /// J/(mol·K).
    pub gas_constant: f64,
    /// kg/mol.
    pub molar_mass: f64,
    /// The reducing temperature, K.
    temperature_form: Form,
    /// The reducing molar volume, m³/mol.
    volume_form: Form,
}

/// A homogeneous phase at a temperature and partial densities.
#[derive(Debug, Clone, Copy, Default)]
pub struct Phase {
    /// Molar density, mol/m³.
    pub density: f64,
    /// Pressure, Pa.
    pub pressure: f64,
    /// ∂p/∂ln ρₖ, Pa.
    pub pressure_slopes: PerComponent,
    /// ∂p/∂ln T at constant densities, Pa.
    pub pressure_by_ln_temperature: f64,
    /// Natural logarithm of the fugacities in Pa.
    pub ln_fugacities: PerComponent,
    /// ∂ln fᵢ/∂ln ρₖ.
    pub ln_fugacity_slopes: Square,
    /// ∂ln fᵢ/∂ln T at constant densities.
    pub ln_fugacity_by_ln_temperature: PerComponent,
    /// αʳ and its scaled derivatives in the phase's own reduced variables.
    pub residual: Derivatives,
}

impl Mixture {
    /// The mixture that a refrigerant's model describes, at its nominal composition.
    ///
    /// # Errors
    /// [`Error::BadComposition`] if the model has no or too many components, a fraction is not positive, the fractions
    /// do not sum to one, or a pair has no parameters.
    pub fn of(model: &'static Model) -> Result<Self, Error> {
        let mut mass_fractions = [0.0; MAX_COMPONENTS];
        for (place, component) in mass_fractions.iter_mut().zip(model.identity.components) {
            *place = component.mass_fraction;
        }
        Self::with_mass_fractions(model, &mass_fractions)
    }

    /// The model at another composition, by mass.
    ///
    /// # Errors
    /// As [`Mixture::of`].
    pub fn with_mass_fractions(model: &'static Model, mass_fractions: &PerComponent) -> Result<Self, Error> {
        let count = model.fluids.len();
        let bad = |reason| Err(Error::BadComposition { reason });
        if count == 0 || count > MAX_COMPONENTS {
            return bad("it has no components, or too many");
        }
        let mut moles = [0.0; MAX_COMPONENTS];
        let (mut total_mass, mut total) = (0.0, 0.0);
        for ((fluid, mass), place) in model.fluids.iter().zip(mass_fractions).zip(&mut moles) {
            // Written so that NaN is refused too.
            if !(*mass > 0.0 && *mass <= 1.0) {
                return bad("every mass fraction must be above 0 and at most 1");
            }
            total_mass += mass;
            *place = mass / fluid.molar_mass;
            total += *place;
        }
        let sums_to_one = (total_mass - 1.0).abs() < 1e-9;
        if !sums_to_one || mass_fractions.iter().skip(count).any(|mass| *mass != 0.0) {
            return bad("the mass fractions of the components must sum to 1");
        }
        let mut mixture = Self {
            model,
            mole_fractions: moles.map(|mole| mole / total),
            gas_constant: match model.fluids {
                [fluid] => fluid.gas_constant,
                _ => GAS_CONSTANT,
            },
            molar_mass: total_mass / total,
            temperature_form: Form::ZERO,
            volume_form: Form::ZERO,
        };
        mixture.set_reducing_forms()?;
        Ok(mixture)
    }

    fn set_reducing_forms(&mut self) -> Result<(), Error> {
        for (i, first) in self.model.fluids.iter().enumerate() {
            self.temperature_form.strengths[i][i] = first.reducing_temperature;
            self.volume_form.strengths[i][i] = 1.0 / first.reducing_density;
            for (j, second) in self.model.fluids.iter().enumerate().skip(i + 1) {
                let Some(pair) = self.model.pairs.iter().find(|pair| pair.joins(first, second)) else {
                    return Err(Error::BadComposition { reason: "a pair of components has no mixture parameters" });
                };
                let reversed = !core::ptr::eq(pair.components[0], *first);
                let means = Pair::means(first, second);
                for (form, rule, sums) in [
                    (&mut self.temperature_form, &pair.temperature, means.temperature),
                    (&mut self.volume_form, &pair.volume, means.volume),
                ] {
                    let (strength, skew) = rule.strength_and_skew(sums, reversed);
                    form.strengths[i][j] = strength;
                    form.skews[i][j] = skew;
                }
            }
        }
        Ok(())
    }

    /// Reducing temperature in K and molar volume in m³/mol of the overall composition.
    pub(super) fn reducing_values(&self) -> (f64, f64) {
        let form = |form: &Form, degree| form.at(&self.mole_fractions, self.count(), degree).value();
        (form(&self.temperature_form, 2.0), form(&self.volume_form, 1.0))
    }

    /// Every pair with the factor of its departure function at the overall composition.
    pub(super) fn departure_factors(&self) -> impl Iterator<Item = (&'static Pair, f64)> {
        let fraction = |wanted: &PureFluid| -> f64 {
            let fluids = self.model.fluids.iter().zip(self.mole_fractions);
            fluids.filter(|(fluid, _)| core::ptr::eq(**fluid, wanted)).map(|(_, fraction)| fraction).sum()
        };
        self.model.pairs.iter().map(move |pair| {
            let [first, second] = pair.components;
            (*pair, pair.departure_factor * fraction(first) * fraction(second))
        })
    }

    /// The refrigerant's model.
    #[must_use]
    pub const fn model(&self) -> &'static Model {
        self.model
    }

    /// How many components there are.
    #[must_use]
    pub const fn count(&self) -> usize {
        self.model.fluids.len()
    }

    /// The phase of the overall composition at a temperature in K and a molar density in mol/m³.
    #[must_use]
    pub fn bulk_phase(&self, temperature: f64, density: f64) -> Phase {
        self.phase(temperature, &self.mole_fractions.map(|fraction| fraction * density))
    }

    /// The phase at a temperature in K and partial molar densities in mol/m³.
    #[must_use]
    pub fn phase(&self, temperature: f64, densities: &PerComponent) -> Phase {
        let density: f64 = densities.iter().sum();
        let fractions = densities.map(|partial| partial / density);
        let ln_temperature = self.temperature_form.at(&fractions, self.count(), 2.0);
        let ln_volume = self.volume_form.at(&fractions, self.count(), 1.0);
        let powers = Powers::at(ln_temperature.value() / temperature, density * ln_volume.value());

        // Residual energies: of each component with its share of the pairs, of the pairs alone, and of the mixture.
        let mut explicit = [Derivatives::default(); MAX_COMPONENTS];
        let mut of_pairs = Derivatives::default();
        let mut pair_energies: Square = [[0.0; MAX_COMPONENTS]; MAX_COMPONENTS];
        let mut total = Derivatives::default();
        for (index, fluid) in self.model.fluids.iter().enumerate() {
            explicit[index] = powers.residual(&fluid.residual);
            total.add(fractions[index], &explicit[index]);
        }
        for (index, first) in self.model.fluids.iter().enumerate() {
            for (other, second) in self.model.fluids.iter().enumerate().skip(index + 1) {
                let Some(pair) = self.model.pairs.iter().find(|pair| pair.joins(first, second)) else { continue };
                if pair.departure.is_empty() {
                    continue;
                }
                let sum = powers.sum(pair.departure);
                let factor = pair.departure_factor;
                of_pairs.add(factor * fractions[index] * fractions[other], &sum);
                explicit[index].add(factor * fractions[other], &sum);
                explicit[other].add(factor * fractions[index], &sum);
                pair_energies[index][other] = factor * sum.a;
                pair_energies[other][index] = factor * sum.a;
            }
        }
        total.add(1.0, &of_pairs);
        for place in explicit.iter_mut().take(self.count()) {
            place.add(-1.0, &of_pairs);
        }

        self.assemble(
            temperature,
            density,
            &fractions,
            Reduced { explicit, pair_energies, of_pairs: of_pairs.a, total, ln_temperature, ln_volume },
        )
    }

    /// Puts the pieces together. All derivatives are first taken with respect to ln ρₖ = ρₖ·∂/∂ρₖ.
    fn assemble(&self, temperature: f64, density: f64, fractions: &PerComponent, reduced: Reduced) -> Phase {
        let count = self.count();
        let rt = self.gas_constant * temperature;
        let Reduced { explicit, pair_energies, of_pairs, total, ln_temperature, ln_volume } = reduced;
        let mut phase = Phase {
            density,
            pressure: density * rt * (1.0 + total.d),
            pressure_by_ln_temperature: density * rt * (1.0 + total.d - total.dt),
            residual: total,
            ..Phase::default()
        };
        // Σⱼ xⱼFₖⱼaₖⱼ: what the pairs of one component add to its energy.
        let with_others = |index: usize| -> f64 {
            pair_energies[index].iter().zip(fractions).map(|(energy, fraction)| energy * fraction).sum()
        };
        for index in 0..count {
            // ρ·∂ln τ/∂ρₖ and ρ·∂ln δ/∂ρₖ.
            let (t_k, d_k) = (ln_temperature.slope(index), ln_volume.slope(index));
            let here = &explicit[index];
            let partial = density * fractions[index];
            phase.ln_fugacities[index] = math::ln(partial * rt) + here.a + total.t * t_k + total.d * d_k;
            phase.ln_fugacity_by_ln_temperature[index] =
                1.0 - (here.t + total.tt * t_k + total.dt * d_k + total.t * t_k);
            for other in 0..count {
                let (t_l, d_l) = (ln_temperature.slope(other), ln_volume.slope(other));
                let there = &explicit[other];
                // ρ times the explicit second derivative of Ψ, at constant τ and δ.
                let at_reduced_state =
                    pair_energies[index][other] - with_others(index) - with_others(other) + 2.0 * of_pairs;
                let second = at_reduced_state
                    + here.t * t_l
                    + here.d * d_l
                    + there.t * t_k
                    + there.d * d_k
                    + total.tt * t_k * t_l
                    + total.dt * (t_k * d_l + t_l * d_k)
                    + total.dd * d_k * d_l
                    + total.t * (ln_temperature.second(index, other) + t_k * t_l)
                    + total.d * (ln_volume.second(index, other) + d_k * d_l);
                let ideal = if index == other { 1.0 } else { 0.0 };
                let slope = ideal + second * fractions[other];
                phase.ln_fugacity_slopes[index][other] = slope;
                // Gibbs-Duhem: dp = Σ ρᵢ·d(RT ln fᵢ) at constant temperature.
                phase.pressure_slopes[other] += partial * rt * slope;
            }
        }
        phase
    }
}

/// What the reduced state of a mixture consists of.
struct Reduced {
    /// ∂Ψ/∂ρₖ at constant τ and δ, with its own derivatives.
    explicit: [Derivatives; MAX_COMPONENTS],
    /// F·a of each pair.
    pair_energies: Square,
    /// Σ xᵢxⱼF·a over the pairs.
    of_pairs: f64,
    /// αʳ of the mixture.
    total: Derivatives,
    ln_temperature: Value,
    ln_volume: Value,
}
