//! The coil's surface as the air sees it: apparatus dew point and bypass factor.
//!
//! Air leaving is thought of as a mixture of air that the coil made saturated at the temperature of its surface, the
//! apparatus dew point, and of air that passed by untouched, the bypass factor being its share. So on a chart of humidity
//! ratio over dry bulb, entering, leaving and apparatus dew point lie on one line.

use super::coil::{CoilAir, INPUTS};
use super::moist::MoistAir;
use super::solve::rising_root;
use super::water::{LOWEST_K, saturated};
use crate::error::Error;
use crate::uncertain::{Uncertain, propagate, propagate_all};

/// The effective surface of a coil that takes out water.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct ApparatusDewPoint {
    /// Apparatus dew point, K.
    pub temperature_k: Uncertain,
    /// Bypass factor, 0 to 1: the share of the air that passes untouched.
    pub bypass_factor: Uncertain,
}

/// How many of its standard uncertainties the water taken out must have: less, and the coil may be dry.
const LEAST_WATER: f64 = 2.0;

impl CoilAir {
    /// Apparatus dew point and bypass factor.
    ///
    /// Air leaving a wet coil is close to saturation, where a small error of its humidity moves the point a good deal:
    /// look at its uncertainty.
    ///
    /// # Errors
    /// [`Error::NotAvailable`] with its reason where the air was not cooled, where the coil is dry or may be (less water
    /// taken out than two standard uncertainties), or where the line through the two states does not meet saturation;
    /// those of [`CoilAir::air`].
    pub fn apparatus_dew_point(&self) -> Result<ApparatusDewPoint, Error> {
        let inputs = self.inputs([Uncertain::exact(0.0); 2])?;
        if self.leaving_humidity.is_none() {
            return Err(refused(DRY));
        }
        let split = self.split_k()?;
        if !(split.value > 0.0) {
            return Err(refused("the air leaving is not colder than the air entering"));
        }
        let water = propagate(inputs, |moved| {
            let (entering, leaving) = self.states(moved)?;
            Ok(entering.humidity_ratio() - leaving.humidity_ratio())
        })?;
        if !(water.value > 0.0 && water.value > LEAST_WATER * water.standard_uncertainty) {
            return Err(refused(DRY));
        }
        let [temperature_k, bypass_factor] = propagate_all(inputs, |moved: [f64; INPUTS + 2]| {
            let (entering, leaving) = self.states(moved)?;
            let surface = surface_k(&entering, &leaving)?;
            let (warm, cold) = (entering.dry_bulb().kelvin(), leaving.dry_bulb().kelvin());
            Ok([surface, (cold - surface) / (warm - surface)])
        })?;
        Ok(ApparatusDewPoint { temperature_k, bypass_factor })
    }
}

/// Where the line from entering through leaving air first meets saturation.
fn surface_k(entering: &MoistAir, leaving: &MoistAir) -> Result<f64, Error> {
    let (warm, cold) = (entering.dry_bulb().kelvin(), leaving.dry_bulb().kelvin());
    let (pressure, end) = (leaving.pressure().pascals(), leaving.humidity_ratio());
    if !(warm > cold) {
        return Err(refused("the air leaving is not colder than the air entering"));
    }
    let slope = (entering.humidity_ratio() - end) / (warm - cold);
    if !(slope > 0.0) {
        return Err(refused(DRY));
    }
    // Saturation less the line: it curves upwards, so it falls to a lowest point and rises from there.
    let above = |kelvin: f64| {
        let (there, rise) = saturated(kelvin, pressure);
        (there - (end + slope * (kelvin - cold)), rise - slope)
    };
    let (at_leaving, rising) = above(cold);
    if at_leaving <= 0.0 {
        return Ok(cold);
    }
    if rising <= 0.0 {
        return Err(refused(MISSED));
    }
    let (mut low, mut high) = (LOWEST_K, cold);
    // The lowest point need not be sharp: any place below zero serves as the lower end of the root.
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        let (value, rising) = above(middle);
        if value <= 0.0 {
            return Ok(rising_root(middle, cold, above));
        }
        if rising > 0.0 {
            high = middle;
        } else {
            low = middle;
        }
    }
    Err(refused(MISSED))
}

const DRY: &str = "no water was taken out that the probes could tell: the coil is dry and its surface above the dew point \
    of the air";
const MISSED: &str = "the line through the two states does not meet saturation: the air was reheated after the coil, or a \
    humidity is wrong; measure close to the coil, upstream of reheat and blower";

const fn refused(reason: &'static str) -> Error {
    Error::NotAvailable { quantity: "apparatus dew point", reason }
}
