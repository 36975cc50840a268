//! The overall composition along one temperature: everything that depends on temperature is computed once.
//!
//! A search for a density evaluates the same powers of τ over and over; here each term keeps its own, and what remains
//! is a polynomial in δ with a handful of exponentials. Used where only density changes: densities at a pressure and the
//! saturation of pure fluids.

use super::mixture::Mixture;
use super::term::{Derivatives, Powers, Residual, Term};
use crate::math;

/// Most coefficients of a pure fluid's terms.
pub(super) const OF_PURE: usize = 64;
/// Most coefficients of a mixture's terms and departure functions.
pub(super) const OF_MIXTURE: usize = 384;

/// An isotherm with room for a number of coefficients.
pub(super) struct Isotherm<'a, const MOST: usize> {
    mixture: &'a Mixture,
    /// RT, J/mol.
    pub rt: f64,
    tau: f64,
    /// Reducing molar volume, m³/mol.
    volume: f64,
    coefficients: [f64; MOST],
}

/// αʳ along the isotherm with its derivatives in ln δ, and what follows from them.
#[derive(Debug, Clone, Copy)]
pub(super) struct Along {
    /// mol/m³.
    pub density: f64,
    pub a: f64,
    pub d: f64,
    pub dd: f64,
}

impl Along {
    /// p/RT, mol/m³.
    pub fn pressure(&self) -> f64 {
        self.density * (1.0 + self.d)
    }

    /// ∂(p/RT)/∂ρ.
    pub fn slope(&self) -> f64 {
        1.0 + 2.0 * self.d + self.dd
    }

    /// ln f of a pure fluid, but for what depends on temperature alone.
    pub fn ln_fugacity(&self) -> f64 {
        math::ln(self.density) + self.a + self.d
    }
}

/// The sum so far and the exponentials of δ that terms share.
struct Sum<'p> {
    powers: &'p Powers,
    a: f64,
    d: f64,
    dd: f64,
    /// δ^l and exp(−δ^l) by l, where already needed.
    exponentials: [Option<(f64, f64)>; 8],
}

impl Sum<'_> {
    fn exponential(&mut self, l: u8, g: f64) -> (f64, f64) {
        let compute = |powers: &Powers| {
            let exponent = g * powers.delta_to(l);
            (exponent, math::exp(-exponent))
        };
        match self.exponentials.get_mut(usize::from(l)) {
            Some(place) if g == 1.0 => *place.get_or_insert_with(|| compute(self.powers)),
            _ => compute(self.powers),
        }
    }

    fn terms(&mut self, terms: &[Term], coefficients: &mut core::slice::Iter<'_, f64>) {
        let (mut last, mut in_last, mut of_last) = ((0, 1.0), 0.0, 1.0);
        for (term, coefficient) in terms.iter().zip(coefficients) {
            if (term.l, term.g) != last {
                last = (term.l, term.g);
                (in_last, of_last) = if term.l > 0 { self.exponential(term.l, term.g) } else { (0.0, 1.0) };
            }
            let l = f64::from(term.l);
            let value = coefficient * self.powers.delta_to(term.d) * of_last;
            self.add(value, f64::from(term.d) - l * in_last, -l * l * in_last);
        }
    }

    /// A term by its value, its logarithmic slope in δ and the slope of that.
    fn add(&mut self, value: f64, slope: f64, bend: f64) {
        self.a += value;
        self.d += value * slope;
        self.dd += value * (slope * (slope - 1.0) + bend);
    }

    fn bell(&mut self, coefficient: f64, d: u8, eta: f64, epsilon: f64) {
        let delta = self.powers.delta;
        let from = delta - epsilon;
        let value = coefficient * self.powers.delta_to(d) * math::exp(-eta * from * from);
        self.add(value, f64::from(d) - 2.0 * eta * delta * from, -2.0 * eta * delta * (delta + from));
    }
}

impl<'a, const MOST: usize> Isotherm<'a, MOST> {
    /// The isotherm of the overall composition; `None` if it has more terms than there is room for.
    pub fn of(mixture: &'a Mixture, temperature: f64) -> Option<Self> {
        let (reducing_temperature, volume) = mixture.reducing_values();
        let tau = reducing_temperature / temperature;
        let mut isotherm =
            Self { mixture, rt: mixture.gas_constant * temperature, tau, volume, coefficients: [0.0; MOST] };
        let powers = Powers::at(tau, 1.0);
        let mut places = isotherm.coefficients.iter_mut();
        let mut put = |value: f64| places.next().map(|place| *place = value);
        let of_term = |term: &Term| {
            let value = term.n * powers.tau_to(term.t);
            if term.m > 0.0 { value * math::exp(-powers.tau_to(term.m)) } else { value }
        };
        for (fluid, fraction) in mixture.model().fluids.iter().zip(mixture.mole_fractions) {
            let Residual { terms, bells, steep, .. } = fluid.residual;
            for term in terms {
                put(fraction * of_term(term))?;
            }
            for bell in bells {
                let from = tau - bell.gamma;
                put(fraction * bell.n * powers.tau_to(bell.t) * math::exp(-bell.beta * from * from))?;
            }
            for steep in steep {
                let from = tau - steep.gamma;
                let exponent = 1.0 / (steep.beta * from * from + steep.b);
                put(fraction * steep.n * powers.tau_to(steep.t) * math::exp(exponent))?;
            }
        }
        for (pair, factor) in mixture.departure_factors() {
            for term in pair.departure {
                put(factor * of_term(term))?;
            }
        }
        Some(isotherm)
    }

    /// A density near the critical one, mol/m³.
    pub fn typical_density(&self) -> f64 {
        1.0 / self.volume
    }

    /// At a density in mol/m³.
    pub fn at(&self, density: f64) -> Along {
        let powers = Powers::with_delta(self.tau, density * self.volume);
        let mut sum = Sum { powers: &powers, a: 0.0, d: 0.0, dd: 0.0, exponentials: [None; 8] };
        let mut coefficients = self.coefficients.iter();
        for (fluid, fraction) in self.mixture.model().fluids.iter().zip(self.mixture.mole_fractions) {
            sum.terms(fluid.residual.terms, &mut coefficients);
            for (bell, coefficient) in fluid.residual.bells.iter().zip(&mut coefficients) {
                sum.bell(*coefficient, bell.d, bell.eta, bell.epsilon);
            }
            for (steep, coefficient) in fluid.residual.steep.iter().zip(&mut coefficients) {
                sum.bell(*coefficient, steep.d, steep.eta, steep.epsilon);
            }
            for critical in fluid.residual.critical {
                let mut own = Derivatives::default();
                critical.add_to(&mut own, &powers);
                sum.a += fraction * own.a;
                sum.d += fraction * own.d;
                sum.dd += fraction * own.dd;
            }
        }
        for pair in self.mixture.model().pairs {
            sum.terms(pair.departure, &mut coefficients);
        }
        Along { density, a: sum.a, d: sum.d, dd: sum.dd }
    }
}
