//! The end of the saturation line: the point at which liquid and vapour become one.

use super::equilibrium::{End, Given};
use super::estimate;
use super::mixture::Mixture;
use crate::error::Error;

/// A critical point.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Critical {
    /// Temperature, K.
    pub temperature: f64,
    /// Pressure, Pa.
    pub pressure: f64,
    /// Molar density, mol/m³.
    pub density: f64,
}

impl Mixture {
    /// The critical point of the overall composition, from the model itself.
    ///
    /// The bubble line is followed by the ratio of its densities, s = ln(ρ liquid/ρ vapour), which falls to zero there
    /// without any turn of the line; temperature and pressure are even functions of s and are extrapolated from the
    /// last points.
    ///
    /// # Errors
    /// [`Error::NotConverged`] if the line could not be followed to its end.
    pub fn critical_point(&self) -> Result<Critical, Error> {
        let guess = estimate::critical_temperature(self);
        let failed = Error::NotConverged { calculation: "critical point", value: guess, unit: "K" };
        let mut here = self.follow(End::Bubble, 0.8 * guess)?;
        let mut ratio = crate::math::ln(here.bulk_density / here.incipient_density());
        let last = 0.04;
        let mut factor = 0.8;
        while ratio > last {
            let next = (ratio * factor).max(last);
            match self.newton(End::Bubble, Given::DensityRatio(next), &here) {
                Some(found) => (here, ratio) = (found, next),
                None if factor < 0.98 => factor = 0.5 * (1.0 + factor),
                None => return Err(failed),
            }
        }
        let double = self.newton(End::Bubble, Given::DensityRatio(2.0 * last), &here).ok_or(failed)?;
        let even = |near: f64, far: f64| near + (near - far) / 3.0;
        let middle = |point: &super::Equilibrium| 0.5 * (point.bulk_density + point.incipient_density());
        Ok(Critical {
            temperature: even(here.temperature, double.temperature),
            pressure: even(here.pressure, double.pressure),
            density: even(middle(&here), middle(&double)),
        })
    }
}
