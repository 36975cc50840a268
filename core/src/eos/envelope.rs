//! The end of the two-phase region: critical point, and the highest temperature and pressure at which two phases stand.

use super::critical::Critical;
use super::equilibrium::{End, Equilibrium, Given};
use super::estimate;
use super::mixture::Mixture;
use super::reference::Properties;
use crate::bounds::NEAREST_TO_CRITICAL;
use crate::error::Error;
use crate::math;

/// Margins by which the highest temperature and pressure are stated too high, since they are read from points of the
/// line: a share of their rise above the critical point (between two points a parabola falls by 1 % of it), and of
/// themselves.
const OF_RISE: f64 = 0.02;
const OF_VALUE: f64 = 2e-5;

/// ln(liquid density/vapour density) of the nearest points to a critical point that are given.
const NEAREST_RATIO: f64 = 0.1;

/// Where the two-phase region of a composition ends.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Envelope {
    /// The critical point.
    pub critical: Critical,
    /// The highest temperature at which two phases stand together, K; of a pure fluid the critical one.
    pub highest_temperature: f64,
    /// The highest pressure at which two phases stand together, Pa.
    pub highest_pressure: f64,
    /// The bubble pressure at the highest temperature for which bubble and dew points are given, Pa.
    pub last_bubble_pressure: f64,
    /// The dew pressure there, Pa.
    pub last_dew_pressure: f64,
}

impl Envelope {
    /// The highest temperature for which bubble and dew points are given, K.
    #[must_use]
    pub fn highest_saturation_temperature(&self) -> f64 {
        self.critical.temperature * (1.0 - NEAREST_TO_CRITICAL)
    }
}

impl Mixture {
    /// The end of the two-phase region, from the model itself.
    ///
    /// Bubble and dew line are followed by the ratio of their densities, in which neither turns back.
    ///
    /// # Errors
    /// [`Error::NotConverged`] if a line could not be followed to its end.
    pub fn envelope(&self) -> Result<Envelope, Error> {
        let critical = self.critical_point()?;
        let mut envelope = Envelope {
            critical,
            highest_temperature: critical.temperature,
            highest_pressure: critical.pressure,
            last_bubble_pressure: critical.pressure,
            last_dew_pressure: critical.pressure,
        };
        let last = envelope.highest_saturation_temperature();
        for end in [End::Bubble, End::Dew] {
            // Of the points shown the last one that is colder, from which the last point given is not far.
            let start = self.follow(end, 0.9 * critical.temperature)?;
            let mut colder = start;
            self.towards_the_critical_point(end, &start, |point| {
                envelope.highest_temperature = envelope.highest_temperature.max(point.temperature);
                envelope.highest_pressure = envelope.highest_pressure.max(point.pressure);
                if point.temperature < last {
                    colder = *point;
                }
            })?;
            let last = match self.newton(end, Given::Temperature(last), &colder) {
                Some(found) => found,
                None => self.follow(end, last)?,
            };
            match end {
                End::Bubble => envelope.last_bubble_pressure = last.pressure,
                End::Dew => envelope.last_dew_pressure = last.pressure,
            }
        }
        if self.count() == 1 {
            (envelope.highest_temperature, envelope.highest_pressure) = (critical.temperature, critical.pressure);
        } else {
            let raised = |value: f64, critical: f64| value + OF_RISE * (value - critical) + OF_VALUE * value;
            envelope.highest_temperature = raised(envelope.highest_temperature, critical.temperature);
            envelope.highest_pressure = raised(envelope.highest_pressure, critical.pressure);
        }
        Ok(envelope)
    }

    /// A point of the line at a pressure between that of the last temperature for which points are given and its end:
    /// a blend's dew line goes on to a higher temperature before it turns back. None close to the critical point.
    pub(super) fn beyond_the_last(&self, end: End, envelope: &Envelope, pressure: f64) -> Option<Equilibrium> {
        if self.count() == 1 {
            return None;
        }
        let start = self.follow(end, envelope.highest_saturation_temperature()).ok()?;
        let found = self.newton(end, Given::Pressure(pressure), &start)?;
        (math::ln(found.bulk_density / found.incipient_density()).abs() > NEAREST_RATIO).then_some(found)
    }

    /// Shows every point of a line from a start to near the critical point.
    fn towards_the_critical_point(
        &self,
        end: End,
        start: &Equilibrium,
        mut show: impl FnMut(&Equilibrium),
    ) -> Result<(), Error> {
        let mut here = *start;
        let mut ratio = math::ln(here.bulk_density / here.incipient_density()).abs();
        let mut factor = 0.8;
        while ratio > 0.05 {
            match self.newton(end, Given::DensityRatio(ratio * factor), &here) {
                Some(found) => {
                    (here, ratio) = (found, ratio * factor);
                    show(&here);
                }
                None if factor < 0.99 => factor = 0.5 * (1.0 + factor),
                None => {
                    return Err(Error::NotConverged {
                        calculation: "end of the two-phase region",
                        value: here.temperature,
                        unit: "K",
                    });
                }
            }
        }
        Ok(())
    }
}

/// Below this share of the estimated critical pressure a blend surely has bubble and dew points; a test compares every
/// blend.
const SURELY_BELOW: f64 = 0.75;
/// Within this share of its critical pressure a pure fluid's line is looked at more closely.
const NEAR_PURE: f64 = 0.05;

impl Properties {
    /// The end of the two-phase region where a pressure is near it or above; none well below.
    pub(super) fn envelope_if_near(&self, pressure: f64) -> Result<Option<Envelope>, Error> {
        let mixture = self.mixture();
        let ratio = pressure / estimate::critical_pressure(mixture);
        let below = if mixture.count() == 1 { 1.0 - NEAR_PURE } else { SURELY_BELOW };
        if ratio < below {
            return Ok(None);
        }
        match (self.known_envelope(), mixture.model().fluids) {
            (Some(known), _) => Ok(Some(*known)),
            // Well above the critical pressure the published critical point of a pure fluid is good enough.
            (None, [fluid]) if ratio > 1.0 + NEAR_PURE => {
                let (temperature, pressure) = (fluid.critical_temperature, fluid.critical_pressure);
                Ok(Some(Envelope {
                    critical: Critical { temperature, pressure, density: fluid.reducing_density },
                    highest_temperature: temperature,
                    highest_pressure: pressure,
                    last_bubble_pressure: pressure,
                    last_dew_pressure: pressure,
                }))
            }
            (None, _) => mixture.envelope().map(Some),
        }
    }

    /// The critical point, as exactly as it takes to compare a state with it.
    pub(super) fn critical_values(&self, temperature: f64, pressure: f64) -> Result<Critical, Error> {
        let mixture = self.mixture();
        match (self.known_envelope(), mixture.model().fluids) {
            (Some(known), _) => Ok(known.critical),
            (None, [fluid]) => {
                let (published, critical_pressure) = (fluid.critical_temperature, fluid.critical_pressure);
                if (temperature / published - 1.0).abs() < NEAR_PURE
                    || (pressure / critical_pressure - 1.0).abs() < NEAR_PURE
                {
                    return mixture.critical_point();
                }
                Ok(Critical { temperature: published, pressure: critical_pressure, density: fluid.reducing_density })
            }
            (None, _) => Ok(match self.envelope_if_near(pressure)? {
                Some(envelope) => envelope.critical,
                // Surely below it in pressure, and so a vapour whatever the temperature.
                None => Critical { temperature: f64::INFINITY, pressure: f64::INFINITY, density: f64::INFINITY },
            }),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::eos::model;

    #[test]
    fn the_two_phase_region_of_every_refrigerant_has_an_end() {
        for model in model::ALL {
            let mixture = Mixture::of(model).unwrap();
            let name = model.identity.designation;
            let envelope = mixture.envelope().unwrap_or_else(|error| panic!("{name}: {error}"));
            let lower = envelope.last_bubble_pressure.min(envelope.last_dew_pressure);
            assert!(lower > 1.1 * SURELY_BELOW * estimate::critical_pressure(&mixture), "{name} {envelope:?}");
            assert!(envelope.highest_pressure >= envelope.critical.pressure);
            assert!(envelope.highest_temperature >= envelope.critical.temperature);
            // Refrigerant blends' dew lines turn back within some kelvins of the critical point.
            assert!(envelope.highest_temperature < envelope.critical.temperature + 5.0, "{name} {envelope:?}");
        }
    }
}
