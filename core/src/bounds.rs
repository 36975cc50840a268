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
    /// A pressure difference across a part of an air system, or between a plenum and the room.
    STATIC_PRESSURE = "static pressure difference of air" ["Pa"] 1.0 .. 2500.0,
        "give pascals (one inch of water is 249), as a positive difference";
    /// External static pressure of a blower's table.
    EXTERNAL_STATIC = "external static pressure" ["Pa"] 0.0 .. 2500.0,
        "give pascals: one inch of water is 249";
    /// A blower's speed tap, by its number.
    SPEED_TAP = "speed tap" ["number"] 0.0 .. 64.0,
        "give the tap's number, from the lowest speed up";
    /// A fan's speed over its speed before.
    SPEED_RATIO = "fan speed ratio" ["1"] 0.2 .. 5.0,
        "give new over old speed";
    /// Air density over the density before.
    AIR_DENSITY_RATIO = "air density ratio" ["1"] 0.5 .. 2.0,
        "give new over old density";
    /// Fan power for each unit of airflow.
    WATTS_PER_CFM = "limit of fan power" ["W/cfm"] 0.05 .. 5.0,
        "give watts for each cubic foot a minute: 1 W/cfm is 2119 W for each cubic metre a second";
    /// A part's resistance to air over that when clean.
    RESISTANCE_RATIO = "resistance over that when clean" ["1"] 1.0 .. 20.0,
        "give a ratio from 1 up";
    /// Humidity ratio of the return, mixed or leaking air.
    LEAKAGE_HUMIDITY_RATIO = "humidity ratio of leaking return air" ["kg/kg"] 0.0 .. 0.2,
        "give all three as kilograms of water for each kilogram of dry air, or all three as kelvin";
    /// Return leakage above which there is something to mend.
    LEAKAGE_LIMIT = "limit of return leakage" ["kg/kg"] 0.0 .. 1.0,
        "give a share of one, not a percentage";
    /// An instrument's limit of error as a share of its reading.
    ACCURACY_SHARE = "share of the reading in a limit of error" ["1"] 0.0 .. 1.0,
        "give a share of one: 0.5 % is 0.005";
    /// An instrument's limit of error as a share of its full scale.
    FULL_SCALE_SHARE = "share of full scale in a limit of error" ["1"] 1e-9 .. 1.0,
        "give a share of one beside the full scale, 0.5 % is 0.005, or leave both out";
    /// The span of an instrument's range, in the field's unit.
    FULL_SCALE = "full scale of the instrument" ["of the field"] 1e-6 .. 1e9,
        "give the span of its range in the field's unit beside its share of full scale, or leave both out";
    /// An absolute limit of error, or the step of a display, in the field's unit.
    ACCURACY_LIMIT = "limit of error" ["of the field"] 0.0 .. 1e9,
        "give a limit that is not negative, in the field's unit";
    /// Tolerance of a target, in the target's unit.
    TARGET_TOLERANCE = "tolerance of a target" ["of the target"] 0.0 .. 1e6,
        "give a difference that is not negative";
    /// Return wet bulb for which the common shape of a unit's capacity holds.
    CORRECTED_WET_BULB = "return wet bulb of an expected capacity" ["K"] 285.15 .. 297.15,
        "from 12 to 24 degC the common correction holds; beyond it only the maker's data do";
    /// Outdoor dry bulb for which the common shape of a unit's capacity holds.
    CORRECTED_OUTDOOR = "outdoor dry bulb of an expected capacity" ["K"] 291.15 .. 319.15,
        "from 18 to 46 degC the common correction holds; beyond it only the maker's data do";
    /// Relative change of a unit's capacity with a temperature.
    CAPACITY_SLOPE = "relative change of capacity" ["1/K"] -0.1 .. 0.1,
        "give a share for each kelvin: 1 % is 0.01";
    /// Share of two uncertainties that they have in common.
    SHARED_UNCERTAINTY = "shared part of an uncertainty" ["1"] 0.0 .. 1.0,
        "give 1 where both come from one source, 0 where they have nothing in common";
    /// Relative deviation of a charge for which its effect is published.
    CHARGE_DEVIATION = "relative deviation of the charge" ["kg/kg"] -0.3 .. 0.3,
        "give deviation over right charge as a share of one; beyond 30 % nothing is published";
    /// Indoor dry bulb for which the effect of a wrong charge is used (about the tests behind it; from memory).
    FAULT_INDOOR = "indoor dry bulb of a charge fault" ["K"] 293.15 .. 301.15,
        "the published factors hold for 20 to 28 degC indoors";
    /// Outdoor dry bulb for which the effect of a wrong charge is used (about the tests behind it; from memory).
    FAULT_OUTDOOR = "outdoor dry bulb of a charge fault" ["K"] 293.15 .. 313.15,
        "the published factors hold for 20 to 40 degC outdoors";
    /// Lines of a table's axis.
    GRID_LINES = "lines of a table axis" ["lines"] 1.0 .. 256.0,
        "give at least one and at most 256 values for each axis";
    /// Superheat or subcooling at which refrigerants are compared.
    CYCLE_DIFFERENCE = "superheat or subcooling of a cycle" ["K"] 0.0 .. 60.0,
        "give a difference, not a temperature";
    /// Isentropic efficiency of a compressor.
    ISENTROPIC_EFFICIENCY = "isentropic efficiency" ["W/W"] 0.2 .. 1.0,
        "give a share of one: about 0.7 for a small hermetic compressor";
    /// Share of the superheat that counts as cooling.
    USEFUL_SUPERHEAT = "useful share of the superheat" ["K/K"] 0.0 .. 1.0,
        "give 0 where the line picks the superheat up, 1 where the evaporator does";
    /// Charge of a new refrigerant over that of the old in the same volumes.
    CHARGE_RATIO = "charge ratio" ["kg/kg"] 0.1 .. 10.0,
        "take it from the comparison of the two refrigerants";
    /// Share of a computed charge with which to start.
    STARTING_SHARE = "starting share of the charge" ["kg/kg"] 0.1 .. 1.0,
        "give a share of one, such as 0.9";
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
    /// Length of one step of the rig's time.
    TIME_STEP = "time step" ["s"] 1e-3 .. 10.0,
        "give the time since the last step; the rig is made for steps of about 1 s";
    /// Refrigerant that the rig's unit gains, or, negative, loses.
    CHARGING_RATE = "charging rate" ["kg/s"] -0.1 .. 0.1,
        "give what goes in each second, negative for what is taken out: a hose passes less than 0.1 kg/s";
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
    /// Pressure of nitrogen in a test, absolute.
    NITROGEN_PRESSURE = "absolute pressure of nitrogen" ["Pa"] 1e3 .. 1.5e7,
        "check the unit, and that a gauge reading was given as gauge";
    /// Temperature of nitrogen in a test.
    NITROGEN_TEMPERATURE = "temperature of nitrogen" ["K"] 200.0 .. 400.0,
        "give the temperature of the tubes; kelvin is needed here";
    /// How many tube temperatures a pressure test has at one time.
    PROBE_COUNT = "number of tube temperatures" ["places"] 1.0 .. 16.0,
        "give the temperature of the tubes at each reading, from one to sixteen places";
    /// Time between the readings of a pressure test.
    TEST_DURATION = "duration of the pressure test" ["s"] 60.0 .. 2.6e6,
        "give seconds from the first to the last reading; the last must be later than the first";
    /// Drop of pressure that a pressure test allows.
    ALLOWED_DROP = "drop allowed in a pressure test" ["Pa"] 0.0 .. 1e6,
        "give the largest drop that counts as tight, in pascals";
    /// Internal volume of what is under test.
    INTERNAL_VOLUME = "internal volume" ["m3"] 1e-5 .. 10.0,
        "give cubic metres above zero (a litre is 0.001), or leave it out";
    /// A pressure of a vacuum gauge, absolute.
    VACUUM_PRESSURE = "absolute pressure of an evacuated unit" ["Pa"] 0.0 .. 110e3,
        "no absolute pressure is below zero; give pascals (a micron of mercury is 0.1333 Pa)";
    /// How many pressures a decay test has.
    DECAY_COUNT = "number of pressures after isolation" ["readings"] 5.0 .. 10000.0,
        "give the pressure at five times at least, best some dozens evenly spaced";
    /// Time of a pressure after isolation.
    DECAY_TIME = "time of a pressure after isolation" ["s"] 0.0 .. 1e6,
        "give seconds since the valve to the pump was closed, each later than the one before";
    /// Limits and uncertainties of a vacuum.
    VACUUM_LIMIT = "limit of a vacuum" ["Pa"] 1.0 .. 5000.0,
        "give pascals: 500 microns of mercury are 66.7 Pa";
    /// Resolution or noise of a vacuum gauge.
    VACUUM_NOISE = "noise of the vacuum gauge" ["Pa"] 1e-3 .. 1000.0,
        "give pascals above zero: a micron of mercury is 0.1333 Pa";
    /// Accuracy of a vacuum gauge as a share of its reading.
    VACUUM_SHARE = "uncertainty of the vacuum gauge as a share of its reading" ["Pa/Pa"] 0.0 .. 0.5,
        "give a fraction of one: a limit of error of ten per cent is 0.058";
    /// Temperature of water or ice whose vapour pressure is asked for.
    WATER_TEMPERATURE = "temperature of water or ice" ["K"] 173.15 .. 473.15,
        "give the temperature of the coldest tube; kelvin is needed here";
    /// Temperature of a copper tube under pressure: from -20 to 400 degrees Fahrenheit.
    TUBE_TEMPERATURE = "temperature of the tube" ["K"] 244.26 .. 477.6,
        "allowable stresses are known from 244.3 to 477.6 K (-20 to 400 degrees Fahrenheit)";
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
