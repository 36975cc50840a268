//! Density of the overall composition at a temperature and pressure.

use super::envelope::Envelope;
use super::equilibrium::End;
use super::estimate;
use super::isotherm::{Along, Isotherm, OF_MIXTURE, OF_PURE};
use super::mixture::Mixture;
use crate::bounds;
use crate::error::Error;
use crate::math;

const ADVICE: &str = "use a state inside the range of the equation of state";

/// How far from its published critical temperature, relatively, a pure fluid is taken with care: the equation's own may
/// differ by some tenths of a per cent.
const NEAR_CRITICAL: f64 = 0.01;
/// Densities surely below and above those of saturation so near to the critical temperature, in critical densities.
const THINNER: f64 = 0.2;
const DENSER: f64 = 2.2;
/// By how much, relatively, a pressure must differ from an estimated vapour pressure for that to decide.
const CLEAR_DIFFERENCE: f64 = 0.05;
/// By what factor a pressure must differ from a pure fluid's roughly estimated vapour pressure for that to decide; a test
/// compares every pure fluid. Towards the triple point the estimates fail.
const SURE_FACTOR: f64 = 1.4;
/// Lowest reduced temperature at which it may decide.
const SURE_ABOVE: f64 = 0.5;
/// How far off an estimated bubble or dew pressure of a blend may be, as a factor; a test compares every blend.
const ESTIMATE_FACTOR: f64 = 8.0;

/// What a pressure meets at a temperature.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Kind {
    /// Liquid, at or above the bubble pressure.
    Liquid,
    /// Vapour, at or below the dew pressure.
    Vapor,
    /// Neither, or not told apart by the search: above the critical temperature or close to it.
    Fluid,
}

impl Mixture {
    /// Molar density in mol/m³ of the single phase at a temperature in K and a pressure in Pa.
    ///
    /// # Errors
    /// [`Error::OutOfRange`] outside the components' common range of temperature and pressure, and between the bubble
    /// and dew pressures, where temperature and pressure do not fix the state (the limits in the error are those two).
    /// [`Error::NotConverged`] if no density was found, or so near to the critical point of a blend that it is not
    /// known whether two phases stand there.
    pub fn density(&self, temperature: f64, pressure: f64) -> Result<f64, Error> {
        self.density_and_kind(None, temperature, pressure).map(|(_, density)| density)
    }

    /// The same with what it is the density of; the end of the two-phase region may be known already.
    pub(super) fn density_and_kind(
        &self,
        envelope: Option<&Envelope>,
        temperature: f64,
        pressure: f64,
    ) -> Result<(Kind, f64), Error> {
        self.check_temperature_range(temperature)?;
        self.check_pressure_range(pressure)?;
        if self.count() == 1 {
            return self.pure_density(temperature, pressure);
        }
        let (kind, liquid) = self.kind(envelope, temperature, pressure)?;
        Ok((kind, self.density_of(kind, temperature, pressure, liquid)?))
    }

    /// The highest temperature and pressure at which every component's equation holds, K and Pa.
    #[must_use]
    pub fn highest_temperature_and_pressure(&self) -> (f64, f64) {
        let fluids = self.model().fluids;
        let lowest = |values: fn(&super::PureFluid) -> f64| {
            fluids.iter().map(|fluid| values(fluid)).fold(f64::INFINITY, f64::min)
        };
        (lowest(|fluid| fluid.highest_temperature), lowest(|fluid| fluid.highest_pressure))
    }

    pub(super) fn check_temperature_range(&self, temperature: f64) -> Result<f64, Error> {
        let (highest, _) = self.highest_temperature_and_pressure();
        bounds::within("temperature", "K", temperature, self.lowest_temperature(), highest, ADVICE)
    }

    pub(super) fn check_pressure_range(&self, pressure: f64) -> Result<f64, Error> {
        let (_, highest) = self.highest_temperature_and_pressure();
        bounds::within("absolute pressure", "Pa", pressure, bounds::ABSOLUTE_PRESSURE.lower, highest, ADVICE)
    }

    /// The density of a phase whose kind is known, in mol/m³.
    pub(super) fn density_of(
        &self,
        kind: Kind,
        temperature: f64,
        pressure: f64,
        liquid: Option<f64>,
    ) -> Result<f64, Error> {
        // Above every component's critical temperature nothing condenses.
        let kind = if temperature > self.hottest_critical_temperature() { Kind::Fluid } else { kind };
        // A liquid's hint may come from a higher temperature, where it is thinner.
        let liquid = estimate::liquid_density(self, temperature).max(liquid.unwrap_or(0.0));
        let found = if self.count() == 1 {
            Isotherm::<OF_PURE>::of(self, temperature).and_then(|isotherm| isotherm.of_kind(kind, pressure, liquid))
        } else {
            Isotherm::<OF_MIXTURE>::of(self, temperature).and_then(|isotherm| isotherm.of_kind(kind, pressure, liquid))
        };
        found.map(|found| found.density).ok_or(Self::no_density(pressure))
    }

    fn hottest_critical_temperature(&self) -> f64 {
        self.model().fluids.iter().map(|fluid| fluid.critical_temperature).fold(0.0, f64::max)
    }

    const fn no_density(pressure: f64) -> Error {
        Error::NotConverged { calculation: "density at a pressure", value: pressure, unit: "Pa" }
    }

    /// Of a pure fluid the phase with the lower fugacity is the stable one.
    fn pure_density(&self, temperature: f64, pressure: f64) -> Result<(Kind, f64), Error> {
        let failed = Self::no_density(pressure);
        let isotherm = Isotherm::<OF_PURE>::of(self, temperature).ok_or(failed)?;
        let [fluid] = self.model().fluids else { return Err(failed) };
        let reduced = temperature / fluid.critical_temperature;
        if reduced > 1.0 + NEAR_CRITICAL {
            return isotherm.only(pressure).map(|found| (Kind::Fluid, found.density)).ok_or(failed);
        }
        if reduced > 1.0 - NEAR_CRITICAL {
            let typical = isotherm.typical_density();
            let thin = isotherm.thin(pressure, THINNER * typical);
            let dense = isotherm.dense(pressure, isotherm.at(DENSER * typical));
            let found = more_stable(thin, dense).map(|(_, found)| found).or_else(|| isotherm.only(pressure));
            return found.map(|found| (Kind::Fluid, found.density)).ok_or(failed);
        }
        let rough = estimate::pure_saturation(self, temperature).ok_or(failed)?;
        // Far from saturation an estimate of the vapour pressure decides.
        let sure = reduced > SURE_ABOVE;
        if sure && pressure > SURE_FACTOR * rough.pressure {
            let dense = isotherm.dense(pressure, isotherm.at(rough.liquid));
            return dense.map(|found| (Kind::Liquid, found.density)).ok_or(failed);
        }
        if sure && pressure < rough.pressure / SURE_FACTOR {
            let thin = isotherm.thin(pressure, rough.vapor);
            return thin.map(|found| (Kind::Vapor, found.density)).ok_or(failed);
        }
        let [liquid, vapor] = isotherm.at_each([rough.liquid, rough.vapor]);
        let wanted = pressure / isotherm.rt;
        // Only near saturation must both be found and compared.
        let saturation = vapor_pressure(&liquid, &vapor);
        let is_liquid = saturation.is_some_and(|saturation| wanted > (1.0 + CLEAR_DIFFERENCE) * saturation);
        let is_vapor = saturation.is_some_and(|saturation| wanted < (1.0 - CLEAR_DIFFERENCE) * saturation);
        let thin = if is_liquid { None } else { isotherm.thin(pressure, vapor.density) };
        let dense = if is_vapor { None } else { isotherm.dense(pressure, liquid) };
        more_stable(thin, dense).map(|(kind, found)| (kind, found.density)).ok_or(failed)
    }

    /// What a blend is at a temperature and pressure, with its saturated liquid density where that was found.
    pub(super) fn kind(
        &self,
        envelope: Option<&Envelope>,
        temperature: f64,
        pressure: f64,
    ) -> Result<(Kind, Option<f64>), Error> {
        if temperature > self.hottest_critical_temperature() {
            return Ok((Kind::Fluid, None));
        }
        let (bubble, dew) = estimate::pressures(self, temperature);
        let far = temperature < 0.9 * estimate::critical_temperature(self);
        if far && pressure > ESTIMATE_FACTOR * bubble {
            return Ok((Kind::Liquid, None));
        }
        if far && pressure < dew / ESTIMATE_FACTOR {
            return Ok((Kind::Vapor, None));
        }
        if envelope.is_some_and(|envelope| temperature > envelope.highest_saturation_temperature()) {
            return self.kind_near_the_end(envelope, temperature, pressure);
        }
        // The nearer end first: often it decides.
        let liquid_first = pressure * pressure > bubble * dew;
        let ends = if liquid_first { [End::Bubble, End::Dew] } else { [End::Dew, End::Bubble] };
        let mut limits = [0.0; 2];
        for (end, limit) in ends.into_iter().zip(&mut limits) {
            match (end, self.at_temperature(end, temperature)) {
                (End::Bubble, Ok(point)) if pressure >= point.pressure => {
                    return Ok((Kind::Liquid, Some(point.bulk_density)));
                }
                (End::Dew, Ok(point)) if pressure <= point.pressure => return Ok((Kind::Vapor, None)),
                (_, Ok(point)) => *limit = point.pressure,
                // Above the line's end, which is as good as known now.
                (_, Err(Error::OutOfRange { .. })) => return self.kind_near_the_end(envelope, temperature, pressure),
                (_, Err(other)) => return Err(other),
            }
        }
        let [one, other] = limits;
        Err(Error::OutOfRange {
            quantity: "absolute pressure of a single phase at this temperature",
            unit: "Pa",
            value: pressure,
            lower: one.min(other),
            upper: one.max(other),
            advice: "between these two liquid and vapour stand together: give a quality instead of a pressure",
        })
    }

    /// The same close below the critical temperature and above it, where a blend may still have a dew point.
    fn kind_near_the_end(
        &self,
        envelope: Option<&Envelope>,
        temperature: f64,
        pressure: f64,
    ) -> Result<(Kind, Option<f64>), Error> {
        let found;
        let envelope = match envelope {
            Some(envelope) => envelope,
            None => {
                found = self.envelope()?;
                &found
            }
        };
        if temperature > envelope.highest_temperature {
            Ok((Kind::Fluid, None))
        } else if pressure > envelope.highest_pressure {
            Ok((if temperature < envelope.critical.temperature { Kind::Liquid } else { Kind::Fluid }, None))
        } else if pressure < envelope.last_dew_pressure {
            Ok((Kind::Vapor, None))
        } else {
            Err(Error::NotConverged { calculation: "phase so near to the critical point", value: pressure, unit: "Pa" })
        }
    }
}

/// Of two states at one pressure the one with the lower fugacity.
fn more_stable(thin: Option<Along>, dense: Option<Along>) -> Option<(Kind, Along)> {
    match (thin, dense) {
        (Some(thin), Some(dense)) if thin.ln_fugacity() < dense.ln_fugacity() => Some((Kind::Vapor, thin)),
        (_, Some(dense)) => Some((Kind::Liquid, dense)),
        (thin, None) => thin.map(|thin| (Kind::Vapor, thin)),
    }
}

/// Vapour pressure over RT from one state near each saturated phase, by expanding both ln f in the pressure; none where
/// the states are too far off. Good to about 1e-3 from densities within some per cent.
fn vapor_pressure(liquid: &Along, vapor: &Along) -> Option<f64> {
    let pressure = vapor.pressure();
    let away = pressure - liquid.pressure();
    let strain = away / (liquid.density * liquid.slope());
    let ln_fugacity = liquid.ln_fugacity() + away / liquid.density * (1.0 - 0.5 * strain);
    let difference = pressure / vapor.density - pressure / liquid.density;
    let ln_ratio = (ln_fugacity - vapor.ln_fugacity()) / difference;
    // Of a nearly ideal vapour the expansion reaches far.
    let reach = if pressure > 0.97 * vapor.density { 2.0 } else { 0.3 };
    let near = liquid.slope() > 0.0 && vapor.slope() > 0.0 && strain.abs() < 0.1 && ln_ratio.abs() < reach;
    near.then(|| pressure * math::exp(ln_ratio))
}

impl<const MOST: usize> Isotherm<'_, MOST> {
    fn of_kind(&self, kind: Kind, pressure: f64, liquid: f64) -> Option<Along> {
        match kind {
            Kind::Liquid => self.dense(pressure, self.at(liquid)),
            // Every vapour is denser than an ideal gas, or nearly so thin.
            Kind::Vapor => self.thin(pressure, self.typical_density()),
            Kind::Fluid => self.only(pressure),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    /// The same for pure fluids, where one vapour pressure is at stake.
    #[test]
    fn rough_vapor_pressures_are_within_the_factor() {
        for model in model::ALL.iter().filter(|model| model.fluids.len() == 1) {
            let (name, mixture) = (model.identity.designation, Mixture::of(model).unwrap());
            let critical = model.fluids[0].critical_temperature;
            let low = mixture.lowest_temperature().max(SURE_ABOVE * critical);
            let high = (1.0 - NEAR_CRITICAL) * critical;
            for index in 0..=200 {
                let temperature = low + (high - low) * f64::from(index) / 200.0;
                let rough = estimate::pure_saturation(&mixture, temperature).unwrap();
                let factor = mixture.pure_saturation(temperature).unwrap().pressure / rough.pressure;
                assert!(factor < 0.85 * SURE_FACTOR && factor > 1.15 / SURE_FACTOR, "{name} {temperature} {factor}");
            }
        }
    }

    /// What the shortcuts rest on: the estimates stay well inside the factor, for every blend at every temperature at
    /// which they are used.
    #[test]
    fn estimated_pressures_are_within_the_factor() {
        for model in model::ALL.iter().filter(|model| model.fluids.len() > 1) {
            let mixture = Mixture::of(model).unwrap();
            let (low, high) = (mixture.lowest_temperature(), 0.9 * estimate::critical_temperature(&mixture));
            for index in 0..=40 {
                let temperature = low + (high - low) * f64::from(index) / 40.0;
                let (bubble, dew) = estimate::pressures(&mixture, temperature);
                for (end, estimate) in [(End::Bubble, bubble), (End::Dew, dew)] {
                    let Ok(found) = mixture.at_temperature(end, temperature) else { continue };
                    let factor = found.pressure / estimate;
                    let name = model.identity.designation;
                    assert!(factor < 0.7 * ESTIMATE_FACTOR, "{name} {temperature} {end:?} {factor}");
                    assert!(factor > 1.4 / ESTIMATE_FACTOR, "{name} {temperature} {end:?} {factor}");
                }
            }
            // Below the temperature to which they serve there is a saturation line.
            assert!(high < 0.99 * mixture.critical_point().unwrap().temperature, "{}", model.identity.designation);
        }
    }
}
