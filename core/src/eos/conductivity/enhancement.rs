//! What nearness to the critical point adds to the thermal conductivity.

use crate::bounds;
use crate::eos::mixture::Mixture;
use crate::error::Error;
use crate::math;

/// Boltzmann's constant, J/K (2019 SI; exact).
const BOLTZMANN: f64 = 1.380_649e-23;
/// Universal critical exponents ν and γ.
const NU: f64 = 0.63;
/// How near to ammonia's critical temperature, relatively, its correlation is not asked: 2 K.
const AMMONIA_TOO_NEAR: f64 = 0.005;

/// How a paper writes the enhancement.
#[derive(Debug)]
pub(super) enum Enhancement {
    /// The simplified crossover model of Olchowy and Sengers, Int. J. Thermophys. 10 (1989) 417-426, doi
    /// 10.1007/BF01133538.
    Crossover(Crossover),
    /// A bell in the equation of state's reduced variables: n·exp(−a·(τ − 1)⁴ − b·(δ − 1)²).
    Bell { n: f64, a: f64, b: f64 },
    /// R-717's own: a power law along the critical isochore, damped away from it.
    Ammonia,
}

/// Constants of the crossover model.
#[derive(Debug)]
pub(super) struct Crossover {
    /// Amplitude of the susceptibility, Γ.
    pub gamma_amplitude: f64,
    /// Exponent of the susceptibility, γ.
    pub gamma: f64,
    /// Universal amplitude, R₀.
    pub amplitude: f64,
    /// Amplitude of the correlation length ξ₀, m.
    pub length: f64,
    /// Inverse of the cutoff, 1/q_D, m.
    pub cutoff: f64,
    /// The temperature far above the critical one at which the enhancement is taken as zero, K.
    pub reference_temperature: f64,
}

impl Enhancement {
    /// W/(m·K) of a pure fluid at a temperature in K and a molar density in mol/m³.
    pub(super) fn at(&self, mixture: &Mixture, temperature: f64, density: f64) -> Result<f64, Error> {
        let [fluid] = mixture.model().fluids else { return Ok(0.0) };
        match self {
            Self::Crossover(constants) => constants.at(mixture, temperature, density),
            Self::Bell { n, a, b } => {
                let by_temperature = fluid.reducing_temperature / temperature - 1.0;
                let by_density = density / fluid.reducing_density - 1.0;
                let fourth = by_temperature * by_temperature * by_temperature * by_temperature;
                Ok(n * math::exp(-a * fourth - b * by_density * by_density))
            }
            Self::Ammonia => ammonia(temperature, density * fluid.molar_mass),
        }
    }
}

impl Crossover {
    fn at(&self, mixture: &Mixture, temperature: f64, density: f64) -> Result<f64, Error> {
        let [fluid] = mixture.model().fluids else { return Ok(0.0) };
        if density == 0.0 {
            return Ok(0.0);
        }
        let rt = mixture.gas_constant * temperature;
        let here = mixture.bulk_phase(temperature, density).residual;
        let reference = mixture.bulk_phase(self.reference_temperature, density).residual;
        // ρ·∂ρ/∂p, at the temperature and, scaled to it, at the reference temperature: the reference's RT cancels.
        let compressible = |by_density: f64| density / (rt * by_density);
        let excess = compressible(1.0 + 2.0 * here.d + here.dd) - compressible(1.0 + 2.0 * reference.d + reference.dd);
        let reduced_density = density / fluid.reducing_density;
        let susceptibility =
            fluid.critical_pressure / (fluid.reducing_density * fluid.reducing_density) * excess / self.gamma_amplitude;
        // Far from the critical point, and where the phase is not stable, there is nothing to add.
        if !(susceptibility * self.gamma_amplitude > 10.0 * f64::EPSILON) {
            return Ok(0.0);
        }
        let length = self.length * math::exp(NU / self.gamma * math::ln(susceptibility));
        let caloric = mixture.caloric(temperature, density, &mixture.mole_fractions, &here);
        let isobaric = caloric.isobaric_heat_capacity * mixture.molar_mass;
        let ratio = caloric.isochoric_heat_capacity / caloric.isobaric_heat_capacity;
        let viscosity = mixture.viscosity(temperature, density)?;

        let x = length / self.cutoff;
        let two_by_pi = core::f64::consts::FRAC_2_PI;
        let crossover = two_by_pi * ((1.0 - ratio) * math::atan(x) + ratio * x);
        let far = 1.0 / x + x * x / (3.0 * reduced_density * reduced_density);
        let background = two_by_pi * (1.0 - math::exp(-1.0 / far));
        let diffusion = self.amplitude * BOLTZMANN * temperature / (6.0 * core::f64::consts::PI * viscosity * length);
        Ok(density * isobaric * diffusion * (crossover - background))
    }
}

/// Tufeu, Ivanov, Garrabos and Le Neindre's enhancement of ammonia at a temperature in K and a density in kg/m³. It grows
/// without limit at the critical temperature, whatever the density; there it is refused.
fn ammonia(temperature: f64, density: f64) -> Result<f64, Error> {
    const CRITICAL_TEMPERATURE: f64 = 405.4;
    const CRITICAL_DENSITY: f64 = 235.0;
    let t = (temperature / CRITICAL_TEMPERATURE - 1.0).abs();
    if t < AMMONIA_TOO_NEAR {
        let advice = "the correlation has no bound at ammonia's critical temperature, 405.4 K: stay 2 K away from it";
        let (lower, upper) = if temperature < CRITICAL_TEMPERATURE {
            (195.495, CRITICAL_TEMPERATURE * (1.0 - AMMONIA_TOO_NEAR))
        } else {
            (CRITICAL_TEMPERATURE * (1.0 + AMMONIA_TOO_NEAR), 500.0)
        };
        return Err(bounds::refuse("temperature for a thermal conductivity", "K", temperature, lower, upper, advice));
    }
    let ln_t = math::ln(t);
    let root = math::sqrt(t);
    let slope = 1e5 * (2.18 - 0.12 * math::exp(-17.8 * t));
    let viscosity = 1e-5 * (2.6 + 1.6 * t);
    let length = 1.34e-10 * math::exp(-NU * ln_t) * (1.0 + root);
    let susceptibility = 0.423e-8 * math::exp(-1.24 * ln_t) * (1.0 + root / 0.7);
    let isochore = 1.2 * BOLTZMANN * temperature * temperature / (6.0 * core::f64::consts::PI * viscosity * length)
        * (slope * slope * susceptibility);
    let width = 0.61 * CRITICAL_DENSITY + 16.5 * ln_t;
    let thin = 0.6 * CRITICAL_DENSITY;
    let away = density.max(thin) - 0.96 * CRITICAL_DENSITY;
    let share = width * width / (width * width + away * away);
    let thinner = (density / thin).min(1.0);
    Ok(isochore * math::exp(-36.0 * t * t) * share * (thinner * thinner))
}
