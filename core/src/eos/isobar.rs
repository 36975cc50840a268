//! The state at a pressure and an enthalpy or entropy.
//!
//! Along an isobar both rise with temperature in one phase and with quality in two, so that every search is kept inside
//! a bracket: Newton's method in temperature by the heat capacity, the secant in quality.

use super::caloric::Caloric;
use super::density::Kind;
use super::envelope::Envelope;
use super::equilibrium::End;
use super::estimate;
use super::flash::{Fixed, TwoPhase};
use super::reference::Properties;
use super::state::{PhaseKind, State};
use crate::bounds;
use crate::error::Error;
use crate::math;

/// Most steps of a search; each at least halves the bracket once Newton's method fails.
const MOST_STEPS: usize = 200;
/// A step of temperature relatively smaller than this is the last: convergence is quadratic.
const LAST_STEP: f64 = 1e-9;
/// How nearly, as a share of the way across the two-phase region, the wanted value is met.
const QUALITY_TOLERANCE: f64 = 1e-13;
/// What rounding may take from a quality at the lowest temperature: there a blend's temperature falls by less than
/// 1e-6 K over it.
const ROUNDING_OF_QUALITY: f64 = 1e-8;

/// What is known besides the pressure.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Which {
    Enthalpy,
    Entropy,
}

impl Which {
    const fn of(self, caloric: &Caloric) -> f64 {
        match self {
            Self::Enthalpy => caloric.enthalpy,
            Self::Entropy => caloric.entropy,
        }
    }

    const fn name_and_unit(self) -> (&'static str, &'static str) {
        match self {
            Self::Enthalpy => ("enthalpy at this pressure", "J/kg"),
            Self::Entropy => ("entropy at this pressure", "J/(kg K)"),
        }
    }

    /// Temperature at which the value is wanted, from one near it, by the heat capacity at constant pressure.
    fn newton(self, temperature: f64, caloric: &Caloric, wanted: f64) -> f64 {
        let change = (wanted - self.of(caloric)) / caloric.isobaric_heat_capacity;
        match self {
            Self::Enthalpy => temperature + change,
            // ds = cp·d ln T; a step of more than e says nothing.
            Self::Entropy => temperature * math::exp(change.clamp(-1.0, 1.0)),
        }
    }
}

/// A point at which a one-phase branch of the isobar begins or ends.
#[derive(Debug, Clone, Copy)]
struct Tip {
    temperature: f64,
    /// mol/m³.
    density: f64,
    caloric: Caloric,
    /// The two phases that stand there, unless the branch ends for another reason.
    saturated: Option<TwoPhase>,
}

impl Properties {
    pub(super) fn at_enthalpy(&self, pressure: f64, enthalpy: f64) -> Result<State, Error> {
        bounds::ENTHALPY.check(enthalpy)?;
        self.on_isobar(pressure, Which::Enthalpy, enthalpy)
    }

    pub(super) fn at_entropy(&self, pressure: f64, entropy: f64) -> Result<State, Error> {
        bounds::ENTROPY.check(entropy)?;
        self.on_isobar(pressure, Which::Entropy, entropy)
    }

    fn on_isobar(&self, pressure: f64, which: Which, wanted: f64) -> Result<State, Error> {
        let mixture = self.mixture();
        mixture.check_pressure_range(pressure)?;
        let lowest = mixture.lowest_temperature();
        let (highest, _) = mixture.highest_temperature_and_pressure();
        let search = Search { properties: self, pressure, which, wanted };

        let envelope = self.envelope_if_near(pressure)?;
        let envelope = envelope.as_ref();
        if let Some(envelope) = envelope.filter(|envelope| pressure > envelope.highest_pressure) {
            return search.one_phase(lowest, highest, envelope);
        }
        // Most vapours are known for such at once, which saves the bubble point.
        let mut known = None;
        if search.is_probably_vapor() {
            if let Ok(tip) = search.tip(End::Dew, envelope) {
                if wanted >= which.of(&tip.caloric) {
                    return search.branch(Kind::Vapor, tip.temperature, highest, &tip);
                }
                known = Some(tip);
            }
        }
        // Liquid: up to the bubble point.
        let bubble = match search.tip(End::Bubble, envelope) {
            Ok(tip) if wanted <= which.of(&tip.caloric) => {
                return search.branch(Kind::Liquid, lowest, tip.temperature, &tip);
            }
            Ok(tip) => Some(tip),
            // The first bubble forms below the lowest temperature.
            Err(error) if is_below(&error) => None,
            Err(error) => return Err(error),
        };
        // Vapour: from the dew point, which of a pure fluid is the same.
        let known = known.or_else(|| bubble.and_then(|bubble| search.dew_of_pure(&bubble)));
        let dew = match known.map_or_else(|| search.tip(End::Dew, envelope), Ok) {
            Ok(tip) if wanted >= which.of(&tip.caloric) => {
                return search.branch(Kind::Vapor, tip.temperature, highest, &tip);
            }
            Ok(tip) => tip,
            // The last drop goes below the lowest temperature, too.
            Err(error) if is_below(&error) => {
                let start = search.at(lowest, Kind::Vapor, None)?;
                return search.branch(Kind::Vapor, lowest, highest, &start);
            }
            Err(error) => return search.without_dew(lowest, highest, error),
        };
        let Some(dew_point) = dew.saturated else { return Err(search.too_near()) };
        let high = search.share(&dew_point);
        match bubble {
            Some(Tip { saturated: Some(bubble_point), .. }) => search.two_phases(search.share(&bubble_point), high),
            Some(_) => Err(search.too_near()),
            None => search.above_the_coldest(lowest, highest, high),
        }
    }
}

/// Whether an error says that a value lies below its range.
fn is_below(error: &Error) -> bool {
    matches!(error, Error::OutOfRange { value, lower, .. } if value < lower)
}

/// Two phases with their enthalpy or entropy.
#[derive(Debug, Clone, Copy)]
struct Share {
    point: TwoPhase,
    value: f64,
}

struct Search<'a> {
    properties: &'a Properties,
    pressure: f64,
    which: Which,
    wanted: f64,
}

impl Search<'_> {
    fn too_near(&self) -> Error {
        Error::NotConverged { calculation: "state so near to the critical point", value: self.pressure, unit: "Pa" }
    }

    fn failed(&self) -> Error {
        let calculation = match self.which {
            Which::Enthalpy => "state at a pressure and an enthalpy",
            Which::Entropy => "state at a pressure and an entropy",
        };
        Error::NotConverged { calculation, value: self.wanted, unit: self.which.name_and_unit().1 }
    }

    /// The error for a value that the isobar does not reach inside the range of temperature.
    fn refuse(&self, lower: f64, upper: f64) -> Error {
        let (quantity, unit) = self.which.name_and_unit();
        let advice = "at this pressure the equations of state hold only between these; check reference state and unit";
        let bound = match self.which {
            Which::Enthalpy => bounds::ENTHALPY,
            Which::Entropy => bounds::ENTROPY,
        };
        // A limit that is not known itself is that of every refrigerant.
        let (lower, upper) = (lower.max(bound.lower), upper.min(bound.upper));
        Error::OutOfRange { quantity, unit, value: self.wanted, lower, upper, advice }
    }

    fn at(&self, temperature: f64, kind: Kind, near: Option<f64>) -> Result<Tip, Error> {
        let density = self.properties.mixture().density_of(kind, temperature, self.pressure, near)?;
        let caloric = self.properties.bulk(temperature, density);
        Ok(Tip { temperature, density, caloric, saturated: None })
    }

    /// Where the liquid branch ends or the vapour branch begins: the bubble or dew point, or, where the line is not
    /// followed so near to the critical point, the last temperature before and the first after it.
    fn tip(&self, end: End, envelope: Option<&Envelope>) -> Result<Tip, Error> {
        let mixture = self.properties.mixture();
        if let Some(envelope) = envelope {
            let (last, border, kind) = match end {
                End::Bubble => (envelope.last_bubble_pressure, envelope.highest_saturation_temperature(), Kind::Liquid),
                End::Dew => (envelope.last_dew_pressure, envelope.highest_temperature * (1.0 + LAST_STEP), Kind::Fluid),
            };
            if self.pressure > last {
                return match mixture.beyond_the_last(end, envelope, self.pressure) {
                    Some(point) => Ok(self.saturated(end, mixture.as_two_phases(end, &point))),
                    None => self.at(border, kind, None),
                };
            }
        }
        let point = mixture.saturated_end(Fixed::Pressure(self.pressure), end)?;
        Ok(self.saturated(end, point))
    }

    /// By the vapour at an estimated dew temperature, which is good to some kelvins.
    fn is_probably_vapor(&self) -> bool {
        let mixture = self.properties.mixture();
        mixture.count() > 1
            && estimate::temperature(mixture, End::Dew, self.pressure)
                .and_then(|temperature| self.at(temperature, Kind::Vapor, None).ok())
                .is_some_and(|tip| self.wanted > self.which.of(&tip.caloric))
    }

    /// The dew point that belongs to a pure fluid's bubble point.
    fn dew_of_pure(&self, bubble: &Tip) -> Option<Tip> {
        let point = bubble.saturated.filter(|_| self.properties.mixture().count() == 1)?;
        Some(self.saturated(End::Dew, TwoPhase { quality: 1.0, ..point }))
    }

    fn saturated(&self, end: End, point: TwoPhase) -> Tip {
        let (liquid, vapor) = self.properties.of_both(&point);
        let (densities, caloric) = match end {
            End::Bubble => (&point.liquid_densities, liquid),
            End::Dew => (&point.vapor_densities, vapor),
        };
        Tip { temperature: point.temperature, density: densities.iter().sum(), caloric, saturated: Some(point) }
    }

    /// One phase above the two-phase region: a liquid below the critical temperature, without a boundary beside it.
    fn one_phase(&self, lowest: f64, highest: f64, envelope: &Envelope) -> Result<State, Error> {
        let border = envelope.highest_saturation_temperature().clamp(lowest, highest);
        let start = self.at(border, Kind::Fluid, None)?;
        if self.wanted <= self.which.of(&start.caloric) {
            self.branch(Kind::Liquid, lowest, border, &start)
        } else {
            self.branch(Kind::Fluid, border, highest, &start)
        }
    }

    /// Newton's method along a one-phase branch from one of its ends.
    fn branch(&self, kind: Kind, low: f64, high: f64, start: &Tip) -> Result<State, Error> {
        let mixture = self.properties.mixture();
        let (lowest_of_all, (highest_of_all, _)) =
            (mixture.lowest_temperature(), mixture.highest_temperature_and_pressure());
        let (lowest, highest) = (low, high);
        let (mut low, mut high) = (low, high);
        let mut here = *start;
        for _ in 0..MOST_STEPS {
            let found = self.which.of(&here.caloric);
            if found < self.wanted {
                low = low.max(here.temperature);
            } else {
                high = high.min(here.temperature);
            }
            let mut next = self.which.newton(here.temperature, &here.caloric, self.wanted);
            let moved = (next - here.temperature).abs();
            if moved <= LAST_STEP * here.temperature && next >= lowest && next <= highest {
                let density = mixture.density_of(kind, next, self.pressure, Some(here.density))?;
                let phase = match kind {
                    Kind::Liquid => PhaseKind::Liquid,
                    Kind::Vapor | Kind::Fluid => self.properties.beyond(next, self.pressure, density)?,
                };
                return Ok(self.properties.one_phase(next, self.pressure, density, phase));
            }
            // At the end of the range the value there is what can be reached.
            if here.temperature == lowest && found > self.wanted {
                return Err(self.refuse(found, self.reached(highest_of_all)));
            }
            if here.temperature == highest && found < self.wanted {
                return Err(self.refuse(self.reached(lowest_of_all), found));
            }
            let inside = next > low && next < high;
            if !inside {
                next = if next <= lowest && low == lowest {
                    lowest
                } else if next >= highest && high == highest {
                    highest
                } else {
                    0.5 * (low + high)
                };
            }
            if next == here.temperature {
                return Err(self.failed());
            }
            let near = matches!(kind, Kind::Liquid).then_some(here.density);
            here = self.at(next, kind, near)?;
        }
        Err(self.failed())
    }

    /// The value in the single phase at a temperature, for the limits of an error.
    fn reached(&self, temperature: f64) -> f64 {
        let envelope = self.properties.known_envelope();
        match self.properties.mixture().density_and_kind(envelope, temperature, self.pressure) {
            Ok((_, density)) => self.which.of(&self.properties.bulk(temperature, density)),
            Err(_) => f64::NAN,
        }
    }

    /// A vapour far above a dew point that the equations do not give: where two liquids would form.
    fn without_dew(&self, lowest: f64, highest: f64, error: Error) -> Result<State, Error> {
        let start = self.at(highest, Kind::Vapor, None)?;
        let found = self.branch(Kind::Vapor, lowest, highest, &start).map_err(|_| error)?;
        let envelope = self.properties.known_envelope();
        match self.properties.mixture().kind(envelope, found.temperature, self.pressure) {
            Ok((Kind::Vapor | Kind::Fluid, _)) => Ok(found),
            _ => Err(error),
        }
    }

    fn share(&self, point: &TwoPhase) -> Share {
        let (liquid, vapor) = self.properties.of_both(point);
        let (of_liquid, of_vapor) = (self.which.of(&liquid), self.which.of(&vapor));
        Share { point: *point, value: of_liquid + point.quality * (of_vapor - of_liquid) }
    }

    /// The two phases at this pressure and the lowest temperature, between its bubble and dew pressures.
    fn coldest(&self, lowest: f64) -> Result<TwoPhase, Error> {
        let mixture = self.properties.mixture();
        let fixed = Fixed::Temperature(lowest);
        let wanted = math::ln(self.pressure);
        let above = |point: &TwoPhase| math::ln(point.pressure) - wanted;
        let (bubble, dew) = (mixture.saturated_end(fixed, End::Bubble)?, mixture.saturated_end(fixed, End::Dew)?);
        // Pressure falls as the more volatile components leave the liquid. (Quality, how far the pressure is above.)
        let (mut low, mut high) = ((0.0, above(&bubble)), (1.0, above(&dew)));
        let mut here = dew;
        for _ in 0..MOST_STEPS {
            // At its end a bracket of rounding alone: the dew point itself stands at this pressure.
            if high.1 >= 0.0 || high.0 - low.0 <= QUALITY_TOLERANCE {
                return Ok(here);
            }
            let secant = low.0 + (high.0 - low.0) * low.1 / (low.1 - high.1);
            let quality = if secant > low.0 && secant < high.0 { secant } else { 0.5 * (low.0 + high.0) };
            here = match mixture.two_phase_from(&here, fixed, quality) {
                Some(found) => found,
                None => mixture.two_phase(fixed, quality)?,
            };
            let excess = above(&here);
            if excess.abs() < QUALITY_TOLERANCE {
                return Ok(here);
            }
            // The end that stays counts half from the second time on, so that the other comes near, too.
            if excess > 0.0 {
                low = (quality, excess);
                high.1 *= 0.5;
            } else {
                high = (quality, excess);
                low.1 *= 0.5;
            }
        }
        Err(self.failed())
    }

    /// Two phases between the lowest temperature, at which some liquid is left, and the dew point.
    fn above_the_coldest(&self, lowest: f64, highest: f64, dew: Share) -> Result<State, Error> {
        let coldest = self.coldest(lowest)?;
        // The limit itself must be accepted whatever its rounding.
        let quality = (coldest.quality - ROUNDING_OF_QUALITY).max(0.0);
        let mixture = self.properties.mixture();
        let colder = mixture.two_phase_from(&coldest, Fixed::Pressure(self.pressure), quality).ok_or(self.failed())?;
        let colder = self.share(&colder);
        if self.wanted < colder.value {
            return Err(self.refuse(self.share(&coldest).value, self.reached(highest)));
        }
        self.two_phases(colder, dew)
    }

    /// Quality between two points of the isobar; of a pure fluid directly.
    fn two_phases(&self, low: Share, high: Share) -> Result<State, Error> {
        let width = high.value - low.value;
        let span = high.point.quality - low.point.quality;
        let mut quality = low.point.quality + span * (self.wanted - low.value) / width;
        let mixture = self.properties.mixture();
        let fixed = Fixed::Pressure(self.pressure);
        if mixture.count() == 1 {
            return Ok(self.properties.two_phases(&TwoPhase { quality, ..low.point }));
        }
        let mut here = low;
        // (quality, value less what is wanted) at both ends of the bracket.
        let (mut low, mut high) =
            ((low.point.quality, low.value - self.wanted), (high.point.quality, high.value - self.wanted));
        for _ in 0..MOST_STEPS {
            here = self.share(&match mixture.two_phase_from(&here.point, fixed, quality) {
                Some(found) => found,
                None => mixture.two_phase(fixed, quality)?,
            });
            let difference = here.value - self.wanted;
            if difference.abs() <= QUALITY_TOLERANCE * width.abs() || high.0 - low.0 <= f64::EPSILON {
                return Ok(self.properties.two_phases(&here.point));
            }
            // The secant through this point and the nearer of the ends.
            let nearer = if low.1.abs() < high.1.abs() { low } else { high };
            *(if difference < 0.0 { &mut low } else { &mut high }) = (quality, difference);
            let secant = quality - difference * (nearer.0 - quality) / (nearer.1 - difference);
            let next = if secant > low.0 && secant < high.0 { secant } else { 0.5 * (low.0 + high.0) };
            if next == quality {
                return Ok(self.properties.two_phases(&here.point));
            }
            quality = next;
        }
        Err(self.failed())
    }
}
