//! A line set as it is asked about.

use super::density::Behind;
use super::tube::Tube;
use crate::bounds::{self, Bound};
use crate::error::Error;
use crate::quantity::{KELVIN_PER_FAHRENHEIT, PASCALS_PER_PSI};
use crate::uncertain::Uncertain;

/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Standard uncertainty of a length where none is stated, m: a tape along bends, within a foot. Our own allowance.
pub const DEFAULT_LENGTH_UNCERTAINTY_M: f64 = 0.3048 / SQRT_3;
/// Standard uncertainty of a line's temperature where none is stated, K: a thermometer with a limit of error of 1.4 °F
/// (0.1 % of its Fahrenheit value and 1.3 °F at 100 °F: California Title 24, RA3.2, 2008, from memory).
pub const DEFAULT_TEMPERATURE_UNCERTAINTY_K: f64 = 1.4 * KELVIN_PER_FAHRENHEIT / SQRT_3;
/// Limit of error of a gauge, Pa (7 psi: RA3.2, 2013, liquid side; from memory), and as a share of the pressure, since a
/// gauge suits its refrigerant (our own allowance); the smaller of the two counts.
const GAUGE_LIMIT: (f64, f64) = (7.0 * PASCALS_PER_PSI, 0.05);

/// Standard uncertainty of a line's pressure where none is stated, Pa: a gauge with a limit of error of 7 psi, or of a
/// twentieth of the pressure where that is less.
#[must_use]
pub const fn default_pressure_uncertainty_pa(pressure: f64) -> f64 {
    let (limit, share) = GAUGE_LIMIT;
    limit.min(share * pressure) / SQRT_3
}

/// One of the two lines.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Line {
    /// Its tube.
    pub tube: Tube,
    /// Its length, m. Both lines are measured by one tape, so the errors of their lengths are taken as one.
    pub length_m: Uncertain,
    /// The temperature of what it carries, K.
    pub temperature_k: Uncertain,
    /// The pressure in it, Pa, absolute; without one the refrigerant is saturated.
    pub pressure_pa: Option<Uncertain>,
}

impl Line {
    /// A line with the default uncertainties of its length, temperature and pressure.
    #[must_use]
    pub fn new(tube: Tube, length_m: f64, temperature_k: f64, pressure_pa: Option<f64>) -> Self {
        let of = |value, standard_uncertainty| Uncertain { value, standard_uncertainty };
        Self {
            tube,
            length_m: of(length_m, DEFAULT_LENGTH_UNCERTAINTY_M),
            temperature_k: of(temperature_k, DEFAULT_TEMPERATURE_UNCERTAINTY_K),
            pressure_pa: pressure_pa.map(|pressure| of(pressure, default_pressure_uncertainty_pa(pressure))),
        }
    }

    /// The same line with every value inside its bound.
    pub(super) fn checked(&self) -> Result<Self, Error> {
        uncertain(&bounds::LINE_SET_LENGTH, self.length_m, &bounds::LENGTH_UNCERTAINTY)?;
        uncertain(&bounds::TEMPERATURE, self.temperature_k, &bounds::TEMPERATURE_UNCERTAINTY)?;
        if let Some(pressure) = self.pressure_pa {
            uncertain(&bounds::ABSOLUTE_PRESSURE, pressure, &bounds::PRESSURE_UNCERTAINTY)?;
        }
        Ok(*self)
    }
}

/// The small line where the metering device stands outdoors: what is known of it behind the device.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct OutdoorDevice {
    /// The temperature or the pressure.
    pub behind: Behind,
    /// One standard uncertainty of it, in its unit.
    pub standard_uncertainty: f64,
}

/// What the factory charge covers.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Covered {
    /// The length of line set, m: often 15 ft, sometimes 25 (common practice); the unit's label says.
    pub length_m: Uncertain,
    /// The tube of the small line that the maker counts on; that of the line set where none is given.
    pub liquid_tube: Option<Tube>,
    /// The tube of the large line that the maker counts on.
    pub vapor_tube: Option<Tube>,
}

impl Covered {
    /// A known length of the line set's own tubes.
    #[must_use]
    pub const fn length_m(length: f64) -> Self {
        Self { length_m: Uncertain::exact(length), liquid_tube: None, vapor_tube: None }
    }
}

/// A line set and what is to be known of it.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct LineSet<'a> {
    /// The small line, with the liquid before the metering device.
    pub liquid: Line,
    /// The large line, with the vapour in it.
    pub vapor: Line,
    /// Where the metering device stands outdoors, so that the small line carries liquid and vapour behind it; none where it
    /// stands at the indoor coil, so that the small line is all liquid.
    pub outdoor_device: Option<OutdoorDevice>,
    /// What the factory charge covers.
    pub covered: Covered,
    /// The mass that a drier and other accessories take, kg each.
    pub accessories_kg: &'a [Uncertain],
    /// The maker's own figure per length of line set beyond what is covered, kg/m, if there is one. It rules over the
    /// computed one.
    pub makers_charge_per_length_kg_m: Option<Uncertain>,
}

/// A value and its uncertainty inside their bounds.
pub(super) fn uncertain(bound: &Bound, given: Uncertain, of_uncertainty: &Bound) -> Result<Uncertain, Error> {
    bound.check(given.value)?;
    of_uncertainty.check(given.standard_uncertainty)?;
    Ok(given)
}
