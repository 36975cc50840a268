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
    /// Inside diameter of a tube: from a capillary to more than any line set has.
    INSIDE_DIAMETER = "inside diameter of the tube" ["m"] 5e-4 .. 0.3,
        "give metres, not millimetres or inches";
    /// Outside diameter of a tube.
    OUTSIDE_DIAMETER = "outside diameter of the tube" ["m"] 1e-3 .. 0.31,
        "give metres, not millimetres or inches";
    /// Wall thickness of a tube; it must also stay below the radius.
    WALL = "wall thickness of the tube" ["m"] 1e-5 .. 0.02,
        "give metres, not millimetres or inches";
    /// Reynolds number of a flow in a tube.
    REYNOLDS = "Reynolds number" ["1"] 1e-3 .. 1e10,
        "give density times velocity times inside diameter over viscosity, more than zero";
    /// Roughness of a tube's wall over its inside diameter.
    RELATIVE_ROUGHNESS = "relative roughness" ["m/m"] 0.0 .. 0.05,
        "give the roughness over the inside diameter, both in metres";
    /// How many fittings of one kind a line has.
    FITTING_COUNT = "number of fittings" ["fittings"] 0.0 .. 1000.0,
        "count the fittings of this kind";
    /// Straight length that fittings stand for.
    EQUIVALENT_LENGTH = "equivalent length of the fittings" ["m"] 0.0 .. 500.0,
        "give the straight length in metres that the fittings stand for";
    /// Length of a line along the tube.
    LINE_LENGTH = "length of the line" ["m"] 0.01 .. 500.0,
        "give metres along the tube, more than zero";
    /// Height between the ends of a line; it cannot exceed the line's length either.
    RISE = "rise of the line" ["m"] -200.0 .. 200.0,
        "give metres, positive where the refrigerant flows upwards";
    /// Mass flow of refrigerant.
    MASS_FLOW = "mass flow" ["kg/s"] 1e-6 .. 50.0,
        "give kilograms a second, more than zero: the capacity over the enthalpy that the refrigerant takes up";
    /// Heat that a line takes up on its whole length, negative where it gives heat off.
    LINE_HEAT = "heat gain of the line" ["W"] -1e5 .. 1e5,
        "give watts over the whole line, positive into the refrigerant";
    /// Pressure drop of a drier or another accessory.
    ACCESSORY_DROP = "pressure drop of the drier" ["Pa"] 0.0 .. 1e6,
        "give pascals, by its maker at this flow";
    /// Heat transfer coefficient outside a line.
    OUTSIDE_COEFFICIENT = "outside heat transfer coefficient" ["W/(m2 K)"] 0.1 .. 500.0,
        "give watts a square metre and kelvin: 8 to 10 in still air, 20 to 40 in wind";
    /// Thickness of a line's insulation.
    INSULATION_THICKNESS = "thickness of the insulation" ["m"] 0.0 .. 0.3,
        "give metres, 0 for a bare line";
    /// Thermal conductivity of insulation.
    CONDUCTIVITY = "conductivity of the insulation" ["W/(m K)"] 0.005 .. 2.0,
        "give watts a metre and kelvin: 0.036 to 0.042 for closed-cell foam";
    /// Density of the oil-rich liquid that creeps along the wall.
    OIL_DENSITY = "density of the oil" ["kg/m3"] 600.0 .. 1600.0,
        "give kilograms a cubic metre: 900 to 1000 for the usual oils";
    /// Clearance volume of a compressor over its displacement.
    CLEARANCE = "clearance of the compressor" ["m3/m3"] 0.0 .. 0.2,
        "give the clearance volume over the displacement: 0.04 is usual for pistons, near 0 for scrolls";
    /// Length of each line of a line set.
    LINE_SET_LENGTH = "length of the line set" ["m"] 0.0 .. 300.0,
        "give metres of tube, bends included; it cannot be negative";
    /// Length of line set that a factory charge covers.
    COVERED_LENGTH = "length that the factory charge covers" ["m"] 0.0 .. 100.0,
        "give metres, from the unit's label: often 4.6 m (15 ft); 0 where it covers none";
    /// One standard uncertainty of a length.
    LENGTH_UNCERTAINTY = "uncertainty of the length" ["m"] 0.0 .. 30.0,
        "give one standard uncertainty in metres: a limit of error divided by 1.73";
    /// Mass of refrigerant per length of line set.
    CHARGE_PER_LENGTH = "charge per length of line set" ["kg/m"] 0.0 .. 30.0,
        "give kilograms per metre: 1 oz/ft is 0.0930 kg/m, and 100 g/m is 0.1";
    /// Time since the last change to the unit.
    MINUTES = "time since the last change" ["min"] 0.0 .. 1e6,
        "give minutes since start, or since charge or airflow were last changed";
    /// Relative humidity of air.
    RELATIVE_HUMIDITY = "relative humidity" ["Pa/Pa"] 0.0 .. 1.0,
        "give a fraction of one, not a percentage";
    /// Humidity ratio of air; that of saturated air, which ends the range, is mostly lower.
    HUMIDITY_RATIO = "humidity ratio" ["kg/kg"] 0.0 .. 1.2,
        "give kilograms of water to a kilogram of dry air (7000 grains to a pound)";
    /// Dew point of air; the dry bulb, which ends the range, is mostly lower.
    DEW_POINT = "dew point temperature" ["K"] 173.15 .. 373.15,
        "check the unit: kelvin is needed here";
    /// Electric power of a blower, which ends as heat in the air.
    BLOWER_POWER = "blower power" ["W"] 0.0 .. 1e5,
        "give the electric power of the blower in watts, 0 where it is outside the two probes";
    /// Airflow to a capacity: 400 cfm a ton is 5.4e-5 cubic metres a second to a watt.
    AIRFLOW_PER_CAPACITY = "airflow per capacity" ["m3/(s W)"] 1e-6 .. 1e-3,
        "give cubic metres a second to a watt: cfm a ton times 1.342e-7";
    /// Mass flow of refrigerant.
    REFRIGERANT_FLOW = "mass flow of refrigerant" ["kg/s"] 1e-5 .. 20.0,
        "give kilograms a second";
    /// Share of the compressor's power that the refrigerant carries away.
    WORK_SHARE = "share of the work that stays in the gas" ["W/W"] 0.3 .. 1.0,
        "give a fraction of one: what the shell does not give to the ambient air";
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
