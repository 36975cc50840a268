//! What is in this bottle: the refrigerants whose pressure at a temperature is the one measured.
//!
//! Names every refrigerant, so a program that asks it carries them all.

use super::{ALL, Refrigerant};
use crate::error::Error;
use crate::quantity::{Pressure, Temperature};
use crate::saturation::SaturationCurves;
use crate::uncertain::root_of_squares;
use crate::visit::standing::{COVERAGE, PROPERTY_ALLOWANCE, Uncertainty};

/// How many of the nearest are named.
pub const MATCHES_MAX: usize = 24;

/// A refrigerant and how far its saturation lies from what was measured.
#[derive(Debug, Clone, Copy)]
pub struct Match {
    /// The refrigerant.
    pub refrigerant: &'static Refrigerant,
    /// Measured temperature less the nearer end of the refrigerant's band from bubble to dew temperature at the measured
    /// pressure, K: zero inside. Negative: the pressure is too high for this refrigerant; positive: too low.
    pub distance_k: f64,
    /// Bubble temperature at the measured pressure, K: the temperature to find where most is liquid.
    pub bubble_temperature_k: f64,
    /// Dew temperature at the measured pressure, K.
    pub dew_temperature_k: f64,
    /// One standard uncertainty of the distance, K.
    pub standard_uncertainty_k: f64,
}

impl Match {
    /// Whether it is near enough: within [`COVERAGE`] standard uncertainties of gauge, thermometer and properties.
    #[must_use]
    pub fn fits(&self) -> bool {
        self.distance_k.abs() <= COVERAGE * self.standard_uncertainty_k
    }

    fn of(
        refrigerant: &'static Refrigerant,
        pressure: Pressure,
        temperature: f64,
        uncertainty: Uncertainty,
    ) -> Option<Self> {
        let curves: &SaturationCurves = refrigerant.curves;
        // A refrigerant without a saturated state at that pressure is no match.
        let (bubble, dew) = (curves.bubble_temperature(pressure).ok()?, curves.dew_temperature(pressure).ok()?);
        let (bubble, dew) = (bubble.kelvin(), dew.kelvin());
        let (distance, slope) = if temperature < bubble.min(dew) {
            (temperature - bubble.min(dew), curves.bubble_temperature_slope(pressure).ok()?)
        } else {
            ((temperature - dew.max(bubble)).max(0.0), curves.dew_temperature_slope(pressure).ok()?)
        };
        Some(Self {
            refrigerant,
            distance_k: distance,
            bubble_temperature_k: bubble,
            dew_temperature_k: dew,
            standard_uncertainty_k: root_of_squares([
                uncertainty.temperature_k,
                uncertainty.pressure_pa * slope,
                PROPERTY_ALLOWANCE * pressure.pascals() * slope,
            ]),
        })
    }

    /// Those that fit first, by how near they are to the bubble end, where a bottle stands until it is nearly empty: a
    /// wide band holds many pressures, and being inside it says little. The others by how far from their band they are.
    fn is_nearer(&self, other: &Self, temperature: f64) -> bool {
        let rank = |found: &Self| {
            let fits = found.fits();
            let distance = if fits { temperature - found.bubble_temperature_k } else { found.distance_k };
            (u8::from(!fits), distance.abs())
        };
        rank(self) < rank(other)
    }
}

/// The nearest refrigerants.
#[derive(Debug, Clone, Copy)]
pub struct Matches {
    nearest: [Option<Match>; MATCHES_MAX],
    fitting: usize,
}

impl Matches {
    /// The nearest refrigerants: those that fit, nearest to their bubble temperature first, then others by distance.
    pub fn iter(&self) -> impl Iterator<Item = &Match> + '_ {
        self.nearest.iter().flatten()
    }

    /// How many refrigerants of the whole catalogue fit; more than are named where this is above [`MATCHES_MAX`].
    #[must_use]
    pub const fn fitting(&self) -> usize {
        self.fitting
    }

    fn add(&mut self, found: Match, temperature: f64) {
        self.fitting += usize::from(found.fits());
        let mut carried = found;
        for place in &mut self.nearest {
            match place {
                Some(known) if !carried.is_nearer(known, temperature) => {}
                Some(known) => core::mem::swap(known, &mut carried),
                None => {
                    *place = Some(carried);
                    return;
                }
            }
        }
    }
}

/// The refrigerants of the catalogue whose saturation is nearest to a pressure and a temperature measured at rest, with
/// liquid present.
///
/// One pressure does not identify a refrigerant. Several fit almost any pressure, mixtures of refrigerants can have
/// every pressure in between, and air adds to it: the list says what is possible, not what is inside. Uncertainties are
/// standard uncertainties, those of usual instruments where not given (see [`Uncertainty::given`]).
///
/// # Errors
/// [`Error::OutOfRange`] or [`Error::NotFinite`] for uncertainties outside their bounds.
///
/// ```
/// use satline::quantity::{Pressure, Temperature};
/// // A bottle without a label (demo): 10.4 bar absolute at 25 °C.
/// let found = satline::refrigerant::matches(
///     Pressure::from_pascals(1.044e6)?, Temperature::from_celsius(25.0)?, Some(5e3), Some(0.2),
/// )?;
/// assert!(found.iter().any(|found| found.fits() && found.refrigerant.designation() == "R-22"));
/// assert!(found.fitting() > 1);
/// # Ok::<(), satline::Error>(())
/// ```
pub fn matches(
    pressure: Pressure,
    temperature: Temperature,
    pressure_uncertainty_pa: Option<f64>,
    temperature_uncertainty_k: Option<f64>,
) -> Result<Matches, Error> {
    let uncertainty = Uncertainty::given(pressure_uncertainty_pa, temperature_uncertainty_k, temperature)?;
    let mut found = Matches { nearest: [None; MATCHES_MAX], fitting: 0 };
    let kelvin = temperature.kelvin();
    for candidate in ALL.iter().filter_map(|refrigerant| Match::of(refrigerant, pressure, kelvin, uncertainty)) {
        found.add(candidate, kelvin);
    }
    Ok(found)
}
