//! Every accepted range, in one place.
//!
//! A value outside its bound is an error that names quantity, value and limits; nothing is clamped or extrapolated.
//! Ranges that depend on the refrigerant stand in its saturation table and are reported in the same way.

use crate::error::Error;

/// The accepted range of one quantity, limits included.
#[derive(Debug, Clone, Copy, PartialEq)]
pub struct Bound {
    /// The quantity, in words.
    pub quantity: &'static str,
    /// The unit of the limits.
    pub unit: &'static str,
    /// The lowest accepted value.
    pub lower: f64,
    /// The highest accepted value.
    pub upper: f64,
    /// What to do when a value lies outside.
    pub advice: &'static str,
}

impl Bound {
    /// Gives the value back if it is finite and within the bound.
    ///
    /// # Errors
    /// [`Error::NotFinite`] for NaN and infinities, [`Error::OutOfRange`] outside the limits.
    #[inline]
    pub fn check(&self, value: f64) -> Result<f64, Error> {
        // Written so that NaN fails the first comparison and takes the slow path.
        if value >= self.lower && value <= self.upper {
            Ok(value)
        } else {
            Err(refuse(self.quantity, self.unit, value, self.lower, self.upper, self.advice))
        }
    }
}

/// The error for a value that failed its check.
#[cold]
pub(crate) fn refuse(
    quantity: &'static str,
    unit: &'static str,
    value: f64,
    lower: f64,
    upper: f64,
    advice: &'static str,
) -> Error {
    if value.is_finite() {
        Error::OutOfRange { quantity, unit, value, lower, upper, advice }
    } else {
        Error::NotFinite { quantity, unit, lower, upper }
    }
}

/// Checks a value against limits that depend on the refrigerant or the state.
///
/// # Errors
/// As [`Bound::check`].
pub fn within(
    quantity: &'static str,
    unit: &'static str,
    value: f64,
    lower: f64,
    upper: f64,
    advice: &'static str,
) -> Result<f64, Error> {
    Bound { quantity, unit, lower, upper, advice }.check(value)
}

/// How near to its critical temperature, relatively, an equation of state gives bubble and dew points. Nearer, the
/// rounding of the published coefficients leaves less than eight digits of the densities.
pub const NEAREST_TO_CRITICAL: f64 = 1e-4;

macro_rules! bounds {
    ($($(#[$doc:meta])* $name:ident = $quantity:literal [$unit:literal] $lower:literal .. $upper:literal, $advice:literal;)*) => {
        $($(#[$doc])* pub const $name: Bound = Bound {
            quantity: $quantity, unit: $unit, lower: $lower, upper: $upper, advice: $advice,
        };)*
        /// Every bound of this page, for documentation and tests.
        pub const ALL: &[Bound] = &[$($name),*];
    };
}

bounds! {
    /// Absolute pressure: from the vapour pressure of propane at its triple point to well above any test pressure.
    ABSOLUTE_PRESSURE = "absolute pressure" ["Pa"] 1e-6 .. 3e7,
        "check the unit, and that a gauge reading was given as gauge";
    /// Gauge pressure: no gauge reads further below the ambient pressure than a vacuum.
    GAUGE_PRESSURE = "gauge pressure" ["Pa"] -110e3 .. 3e7,
        "a gauge cannot read below vacuum; check the unit";
    /// Ambient (station) pressure: from about 5800 m of altitude to a strong high at sea level.
    AMBIENT_PRESSURE = "ambient pressure" ["Pa"] 50e3 .. 110e3,
        "give the station pressure, not the one reduced to sea level";
    /// Altitude for the standard atmosphere.
    ALTITUDE = "altitude" ["m"] -500.0 .. 5500.0,
        "give the altitude in metres above sea level";
    /// Temperature of refrigerant, lines and machine parts.
    TEMPERATURE = "temperature" ["K"] 50.0 .. 700.0,
        "check the unit: kelvin is needed here";
    /// Dry and wet bulb temperature of air.
    AIR_TEMPERATURE = "air temperature" ["K"] 213.15 .. 343.15,
        "check the unit: kelvin is needed here, and the probe's place";
    /// Molar density of a phase: from a deep vacuum to beyond any liquid.
    MOLAR_DENSITY = "molar density" ["mol/m3"] 1e-9 .. 1e5,
        "give moles per cubic metre: the density in kg/m3 over the molar mass in kg/mol";
    /// Quality: the vapour's share of the mass.
    QUALITY = "quality" ["kg/kg"] 0.0 .. 1.0,
        "give the mass of the vapour over the whole mass: 0 is saturated liquid, 1 saturated vapour";
    /// Enthalpy, from any reference state; the refrigerant's own limits at a pressure are narrower.
    ENTHALPY = "enthalpy" ["J/kg"] -5e6 .. 5e6,
        "give joules per kilogram, not kilojoules";
    /// Entropy, from any reference state; the refrigerant's own limits at a pressure are narrower.
    ENTROPY = "entropy" ["J/(kg K)"] -5e4 .. 5e4,
        "give joules per kilogram and kelvin, not kilojoules";
    /// A difference between two temperatures.
    TEMPERATURE_DIFFERENCE = "temperature difference" ["K"] -650.0 .. 650.0,
        "give a difference, not a temperature";
    /// A maker's target for superheat, subcooling or approach.
    TARGET_DIFFERENCE = "target temperature difference" ["K"] 0.0 .. 50.0,
        "take the target from the unit's own charging label, as a difference";
    /// Volume flow of air.
    AIRFLOW = "airflow" ["m3/s"] 0.01 .. 10.0,
        "give the airflow over the indoor coil in cubic metres a second";
    /// Electric or cooling power.
    POWER = "power" ["W"] 1.0 .. 1e6,
        "give watts, not kilowatts or tons";
    /// Mass of refrigerant.
    MASS = "mass" ["kg"] 0.0 .. 200.0,
        "give the mass in kilograms";
    /// A mass of refrigerant added (above zero) or recovered (below zero).
    MASS_CHANGE = "change of the mass" ["kg"] -200.0 .. 200.0,
        "give kilograms: above zero what was added, below zero what was recovered";
    /// One standard uncertainty of a mass.
    MASS_UNCERTAINTY = "uncertainty of the mass" ["kg"] 0.0 .. 20.0,
        "give one standard uncertainty in kilograms: a limit of error divided by 1.73";
    /// The full charge of a unit.
    FULL_CHARGE = "full charge" ["kg"] 0.01 .. 200.0,
        "give the charge that the unit should hold, in kilograms";
    /// A share of one.
    SHARE = "share" ["1"] 0.0 .. 1.0,
        "give a share of one, not a percentage";
    /// A day of a log, from any beginning.
    DAY = "day" ["days"] -1e5 .. 1e5,
        "give days since any beginning, such as the first entry";
    /// Share of a vessel's volume that is liquid, where liquid and vapour are both there.
    LIQUID_VOLUME_FRACTION = "liquid volume fraction" ["m3/m3"] 1e-3 .. 0.999,
        "give a share of the vessel's volume: below it there is next to no liquid, above it no room for vapour";
    /// Share of the mass that a leak has taken.
    FRACTION_LOST = "fraction of the mass lost" ["kg/kg"] 0.0 .. 1.0,
        "give a fraction of one, not a percentage";
    /// One standard uncertainty of a pressure.
    PRESSURE_UNCERTAINTY = "uncertainty of the pressure" ["Pa"] 0.0 .. 5e5,
        "give one standard uncertainty in pascals: a limit of error divided by 1.73";
    /// One standard uncertainty of a temperature.
    TEMPERATURE_UNCERTAINTY = "uncertainty of the temperature" ["K"] 0.0 .. 10.0,
        "give one standard uncertainty as a difference: a limit of error divided by 1.73";
    /// Difference allowed between the temperatures of parts that stand at rest.
    TEMPERATURE_SPREAD = "difference allowed between temperatures" ["K"] 0.0 .. 20.0,
        "give a difference, not a temperature; parts further apart are not at rest";
    /// How many temperatures are given.
    TEMPERATURE_COUNT = "number of temperatures" ["places"] 1.0 .. 16.0,
        "give the temperature of every part that may hold liquid, at least one";
    /// Floor area of a room.
    ROOM_AREA = "room area" ["m2"] 0.5 .. 1e4,
        "give the floor area of the one room in square metres";
    /// Height above the floor at which refrigerant would come out of a unit.
    RELEASE_HEIGHT = "height of the unit above the floor" ["m"] 0.1 .. 10.0,
        "give metres: floor 0.6, window 1.0, wall 1.8, ceiling 2.2";
    /// Height of a room.
    CEILING_HEIGHT = "ceiling height" ["m"] 1.5 .. 20.0,
        "give the height of the room in metres";
    /// Water capacity of a cylinder.
    WATER_CAPACITY = "water capacity" ["kg"] 0.1 .. 1000.0,
        "give the mass of water stamped on the cylinder (W.C.) in kilograms";
    /// Tare, contents or total mass of a cylinder.
    CYLINDER_MASS = "mass of a cylinder" ["kg"] 0.0 .. 2000.0,
        "give the mass in kilograms: tare, contents or what the scale shows";
    /// How many refrigerants may be in a cylinder.
    CANDIDATE_COUNT = "number of possible refrigerants" ["refrigerants"] 1.0 .. 16.0,
        "name what is inside, or every refrigerant that may be";
    /// Full charge of an appliance, chillers included.
    APPLIANCE_CHARGE = "full charge of the appliance" ["kg"] 0.0 .. 2e4,
        "give the appliance's full charge in kilograms";
    /// Time since the last change to the unit.
    MINUTES = "time since the last change" ["min"] 0.0 .. 1e6,
        "give minutes since start, or since charge or airflow were last changed";
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn limits_are_inside_and_neighbours_outside() {
        for bound in ALL {
            assert!(bound.lower < bound.upper);
            assert_eq!(bound.check(bound.lower), Ok(bound.lower));
            assert_eq!(bound.check(bound.upper), Ok(bound.upper));
            assert!(matches!(bound.check(bound.lower.next_down()), Err(Error::OutOfRange { .. })));
            assert!(matches!(bound.check(bound.upper.next_up()), Err(Error::OutOfRange { .. })));
            for bad in [f64::NAN, f64::INFINITY, f64::NEG_INFINITY] {
                assert!(matches!(bound.check(bad), Err(Error::NotFinite { .. })));
            }
        }
    }
}
