//! Densities in a line from the equations of state.

use super::answers::LinePhase;
use super::density::{
    Behind, Flashed, LineDensities, check_behind, plausible, published_uncertainty, refuse_liquid, refuse_vapor,
};
use crate::eos::{End, Fixed, PerComponent, PhaseKind, Properties, State, StateInput, TwoPhase};
use crate::error::Error;
use crate::refrigerant::identity::Identity;

/// How near to bubble or dew, relatively, a temperature counts as being there: solver's rounding.
const AT_THE_END: f64 = 1e-9;
/// How near, as a share of the way across the two-phase region, an enthalpy must be met.
const QUALITY_TOLERANCE: f64 = 1e-10;
/// Most steps of the search for a quality.
const MOST_STEPS: usize = 60;

impl Properties {
    /// The state in a line at a pressure, on the side of `end`.
    fn in_line(&self, end: End, temperature: f64, pressure: f64) -> Result<State, Error> {
        let mixture = self.mixture();
        // Above the critical pressure there is no such end; what is there then follows from temperature and pressure.
        if let Ok(found) = mixture.at_pressure(end, pressure) {
            let margin = match end {
                End::Bubble => found.temperature - temperature,
                End::Dew => temperature - found.temperature,
            };
            if margin.abs() <= AT_THE_END * found.temperature {
                let quality = if end == End::Bubble { 0.0 } else { 1.0 };
                return self.state(StateInput::PressureQuality { pressure, quality });
            }
            if margin < 0.0 {
                return Err(match end {
                    End::Bubble => refuse_vapor(temperature, mixture.lowest_temperature(), found.temperature),
                    End::Dew => {
                        let (highest, _) = mixture.highest_temperature_and_pressure();
                        refuse_liquid(temperature, found.temperature, highest)
                    }
                });
            }
        }
        let state = self.state(StateInput::TemperaturePressure { temperature, pressure })?;
        match (end, state.phase) {
            (_, PhaseKind::Supercritical) | (End::Bubble, PhaseKind::Liquid) | (End::Dew, PhaseKind::Vapor) => {
                Ok(state)
            }
            (End::Bubble, _) => {
                Err(refuse_vapor(temperature, mixture.lowest_temperature(), mixture.critical_point()?.temperature))
            }
            (End::Dew, _) => {
                let (highest, _) = mixture.highest_temperature_and_pressure();
                Err(refuse_liquid(temperature, mixture.critical_point()?.temperature, highest))
            }
        }
    }

    fn liquid_in_line(&self, temperature: f64, pressure: Option<f64>) -> Result<State, Error> {
        plausible(temperature, pressure)?;
        match pressure {
            Some(pressure) => self.in_line(End::Bubble, temperature, pressure),
            None => self.saturated_liquid(temperature),
        }
    }

    fn mass_density(&self, densities: &PerComponent) -> f64 {
        self.mixture().model().fluids.iter().zip(densities).map(|(fluid, density)| fluid.molar_mass * density).sum()
    }

    fn shared(&self, point: &TwoPhase) -> Flashed {
        let (liquid, vapor) = (self.mass_density(&point.liquid_densities), self.mass_density(&point.vapor_densities));
        Flashed::shared(point.quality, liquid, vapor, self.relative_uncertainty(LinePhase::Liquid))
    }

    /// Two phases of an enthalpy at a temperature, by false position in the quality with the end that stays halved
    /// (Illinois): enthalpy rises with quality, for a blend not quite in proportion.
    fn flashed_at_temperature(&self, temperature: f64, enthalpy: f64) -> Result<Flashed, Error> {
        let (liquid, vapor) = (self.saturated_liquid(temperature)?, self.saturated_vapor(temperature)?);
        if enthalpy <= liquid.enthalpy {
            return Ok(Flashed::liquid(liquid.density, self.relative_uncertainty(LinePhase::Liquid)));
        }
        let span = vapor.enthalpy - liquid.enthalpy;
        let (mut low, mut high) = ((0.0, liquid.enthalpy - enthalpy), (1.0, vapor.enthalpy - enthalpy));
        let mut quality = -low.1 / span;
        for _ in 0..MOST_STEPS {
            if !(quality > 0.0 && quality < 1.0) {
                break;
            }
            let state = self.state(StateInput::TemperatureQuality { temperature, quality })?;
            let off = state.enthalpy - enthalpy;
            if off.abs() <= QUALITY_TOLERANCE * span {
                return Ok(self.shared(&self.mixture().two_phase(Fixed::Temperature(temperature), quality)?));
            }
            if off < 0.0 {
                low = (quality, off);
                high.1 *= 0.5;
            } else {
                high = (quality, off);
                low.1 *= 0.5;
            }
            quality = low.0 - low.1 * (high.0 - low.0) / (high.1 - low.1);
        }
        Err(Error::NotConverged { calculation: "quality behind the metering device", value: temperature, unit: "K" })
    }
}

/// ```
/// use satline::eos::{Properties, Reference, model};
/// use satline::lineset::{LineDensities, LinePhase, Tube};
/// // R-454B liquid at 95 °F and 350 psig in 3/8 in tube: half an ounce per foot.
/// let r454b = Properties::of(&model::R454B, Reference::Iir)?;
/// let charge = r454b.charge_per_length(&Tube::named("3/8")?, LinePhase::Liquid, 308.15, Some(2.5145e6))?;
/// assert!((charge / 0.0283495 * 0.3048 - 0.498).abs() < 0.001);
/// # Ok::<(), satline::Error>(())
/// ```
impl LineDensities for Properties {
    fn identity(&self) -> &'static Identity {
        self.mixture().model().identity
    }

    fn liquid_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error> {
        Ok(self.liquid_in_line(temperature, pressure)?.density)
    }

    fn vapor_density(&self, temperature: f64, pressure: Option<f64>) -> Result<f64, Error> {
        plausible(temperature, pressure)?;
        let state = match pressure {
            Some(pressure) => self.in_line(End::Dew, temperature, pressure),
            None => self.saturated_vapor(temperature),
        };
        Ok(state?.density)
    }

    fn behind_device(&self, temperature: f64, pressure: Option<f64>, behind: Behind) -> Result<Flashed, Error> {
        let liquid = self.liquid_in_line(temperature, pressure)?;
        check_behind(temperature, liquid.pressure, self.mixture().lowest_temperature(), behind)?;
        match behind {
            Behind::Temperature(temperature) => self.flashed_at_temperature(temperature, liquid.enthalpy),
            Behind::Pressure(pressure) => {
                let state = self.state(StateInput::PressureEnthalpy { pressure, enthalpy: liquid.enthalpy })?;
                match state.quality {
                    Some(quality) => Ok(self.shared(&self.mixture().two_phase(Fixed::Pressure(pressure), quality)?)),
                    None => Ok(Flashed::liquid(state.density, self.relative_uncertainty(LinePhase::Liquid))),
                }
            }
        }
    }

    fn relative_uncertainty(&self, phase: LinePhase) -> f64 {
        published_uncertainty(self.identity(), phase)
    }
}
