//! The overall composition along one temperature: everything that depends on temperature is computed once.
//!
//! A search for a density evaluates the same powers of τ over and over; here each term keeps its own, and what remains
//! is a polynomial in δ with a handful of exponentials. Used where only density changes: densities at a pressure and the
//! saturation of pure fluids.

use super::mixture::Mixture;
use super::near::{Near, Value};
use super::special::Critical;
use super::term::{HIGHEST_POWER, Powers, Residual, Term};
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
#[derive(Debug, Clone, Copy, Default)]
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

/// Sums at a number of densities side by side: liquid and vapour of a saturated fluid want the same terms.
type Each<const N: usize> = [f64; N];

/// The sums so far and the exponentials of δ that terms share.
struct Sum<const N: usize> {
    delta: Each<N>,
    /// Powers of δ.
    deltas: [Each<N>; HIGHEST_POWER + 1],
    a: Each<N>,
    d: Each<N>,
    dd: Each<N>,
    /// δ^l and exp(−δ^l) by l, where already needed.
    exponentials: [Option<(Each<N>, Each<N>)>; 8],
    /// η, ε and the exponential of the last bell: neighbours often share it.
    last_bell: (f64, f64, Each<N>),
}

impl<const N: usize> Sum<N> {
    fn at(delta: Each<N>) -> Self {
        let mut deltas = [[1.0; N]; HIGHEST_POWER + 1];
        let mut powers = [1.0; N];
        for place in deltas.iter_mut().skip(1) {
            for (power, delta) in powers.iter_mut().zip(delta) {
                *power *= delta;
            }
            *place = powers;
        }
        let none = [0.0; N];
        let (a, d, dd, exponentials) = (none, none, none, [None; 8]);
        Self { delta, deltas, a, d, dd, exponentials, last_bell: (0.0, 0.0, [1.0; N]) }
    }

    /// δ to a small whole power; NaN, which no solver takes for a solution, if a table held a larger one.
    fn delta_to(&self, power: u8) -> Each<N> {
        self.deltas.get(usize::from(power)).copied().unwrap_or([f64::NAN; N])
    }

    fn exponential(&mut self, l: u8, g: f64) -> (Each<N>, Each<N>) {
        let delta_to_l = self.delta_to(l);
        let compute = || {
            let exponent = delta_to_l.map(|power| g * power);
            (exponent, exponent.map(|exponent| math::exp(-exponent)))
        };
        match self.exponentials.get_mut(usize::from(l)) {
            Some(place) if g == 1.0 => *place.get_or_insert_with(compute),
            _ => compute(),
        }
    }

    fn terms(&mut self, terms: &[Term], coefficients: &mut core::slice::Iter<'_, f64>) {
        // Sums in registers; what a run of terms with the same exponential shares is computed once.
        let (mut a, mut d, mut dd) = (self.a, self.d, self.dd);
        let (mut last, mut of_last, mut slope_of_last, mut bend) = ((0, 1.0), [1.0; N], [0.0; N], [-0.0; N]);
        for (term, coefficient) in terms.iter().zip(coefficients) {
            if (term.l, term.g) != last {
                last = (term.l, term.g);
                let (in_last, of) = if term.l > 0 { self.exponential(term.l, term.g) } else { ([0.0; N], [1.0; N]) };
                let l = f64::from(term.l);
                (of_last, slope_of_last, bend) =
                    (of, in_last.map(|inside| l * inside), in_last.map(|inside| -l * l * inside));
            }
            let (powers, exponent) = (self.delta_to(term.d), f64::from(term.d));
            for lane in 0..N {
                let value = coefficient * powers[lane] * of_last[lane];
                let slope = exponent - slope_of_last[lane];
                a[lane] += value;
                d[lane] += value * slope;
                dd[lane] += value * (slope * (slope - 1.0) + bend[lane]);
            }
        }
        (self.a, self.d, self.dd) = (a, d, dd);
    }

    /// A term by its value, its logarithmic slope in δ and the slope of that.
    fn add(&mut self, lane: usize, value: f64, slope: f64, bend: f64) {
        self.a[lane] += value;
        self.d[lane] += value * slope;
        self.dd[lane] += value * (slope * (slope - 1.0) + bend);
    }

    fn bell(&mut self, coefficient: f64, d: u8, eta: f64, epsilon: f64) {
        if (eta, epsilon) != (self.last_bell.0, self.last_bell.1) {
            let of = self.delta.map(|delta| math::exp(-eta * (delta - epsilon) * (delta - epsilon)));
            self.last_bell = (eta, epsilon, of);
        }
        let (powers, exponent) = (self.delta_to(d), f64::from(d));
        for lane in 0..N {
            let delta = self.delta[lane];
            let from = delta - epsilon;
            let value = coefficient * powers[lane] * self.last_bell.2[lane];
            self.add(lane, value, exponent - 2.0 * eta * delta * from, -2.0 * eta * delta * (delta + from));
        }
    }

    fn critical(&mut self, tau: f64, terms: &[Critical], coefficients: &mut core::slice::Iter<'_, f64>) {
        if terms.is_empty() {
            return;
        }
        let mut near = self.delta.map(|delta| Near::at(tau, delta));
        for (term, coefficient) in terms.iter().zip(coefficients) {
            for lane in 0..N {
                let Value { value, slope, bend } = near[lane].term(term, *coefficient);
                self.add(lane, value, slope, bend);
            }
        }
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
            let Residual { terms, bells, steep, critical } = fluid.residual;
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
            for critical in critical {
                put(fraction * critical.coefficient(tau))?;
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
        let [along] = self.at_each([density]);
        along
    }

    /// At several densities in mol/m³, faster than one by one and to the same bits.
    pub fn at_each<const N: usize>(&self, densities: [f64; N]) -> [Along; N] {
        let mut sum = Sum::at(densities.map(|density| density * self.volume));
        let mut coefficients = self.coefficients.iter();
        for fluid in self.mixture.model().fluids {
            sum.terms(fluid.residual.terms, &mut coefficients);
            for (bell, coefficient) in fluid.residual.bells.iter().zip(&mut coefficients) {
                sum.bell(*coefficient, bell.d, bell.eta, bell.epsilon);
            }
            for (steep, coefficient) in fluid.residual.steep.iter().zip(&mut coefficients) {
                sum.bell(*coefficient, steep.d, steep.eta, steep.epsilon);
            }
            sum.critical(self.tau, fluid.residual.critical, &mut coefficients);
        }
        for pair in self.mixture.model().pairs {
            sum.terms(pair.departure, &mut coefficients);
        }
        let mut along = [Along::default(); N];
        for lane in 0..N {
            along[lane] = Along { density: densities[lane], a: sum.a[lane], d: sum.d[lane], dd: sum.dd[lane] };
        }
        along
    }
}
