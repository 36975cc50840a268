//! Every number that heating is judged by. "Common practice" marks a figure of the trade without a source that could be
//! named.

/// Lower end of the rise of suction gas through the reversing valve that is read as a leak, °F: the trade says 3 to 5
/// (common practice).
pub(super) const VALVE_RISE_LOWEST_F: f64 = 3.0;
/// Upper end of it, °F (common practice).
pub(super) const VALVE_RISE_HIGHEST_F: f64 = 5.0;
/// How much colder the gas may seem behind the valve than before it, °F, before the probes contradict: two clamps in cold
/// air, and what the pressure drop cools (common practice).
pub(super) const VALVE_FALL_F: f64 = 2.0;

/// How far the outdoor coil's surface stands above the evaporating (dew) temperature at the compressor's suction, K: from
/// none to twice this. Common practice; the rig's heat pumps of ten refrigerants have −0.3 to 4.0 K
/// (`tests/tests/heating.rs`).
pub(super) const SURFACE_OVER_DEW_K: f64 = 2.0;
/// The same above a clamp on a return bend, K (common practice).
pub(super) const SURFACE_OVER_BEND_K: f64 = 1.0;
/// How far the outdoor air must stand above the coil for frost to be called possible where its humidity is not known, K
/// (common practice: nearer than that only nearly saturated air gives water).
pub(super) const FROST_DIFFERENCE_K: f64 = 3.0;
/// Standard uncertainties by which the coil must be clear of 0 °C and of the dew point.
pub(super) const FROST_STANDARDS: f64 = 1.0;
/// Limit of error of an outdoor dew point, K (common practice for a hygrometer or a weather station nearby).
pub(super) const DEW_POINT_LIMIT_K: f64 = 1.0;
/// Share of its Celsius value by which a dew point below 0 °C may lie below the frost point, where it is not known whether
/// it counts over water or ice: −10 °C over water is −8.9 °C over ice (computed from Hyland and Wexler's equations).
pub(super) const WATER_OR_ICE_SHARE: f64 = 0.12;
/// Warmest outdoor air for which a suction pressure is taken as one where no outdoor air was measured, °C (common practice:
/// heat pumps heat up to some 75 °F outdoors and evaporate below the air).
pub(super) const WARMEST_EVAPORATING_C: f64 = 20.0;

/// Delivered over nominal capacity below which it is very low, at 47 °F outdoors and above (common practice: a sound unit
/// delivers 0.8 to 1.2 there).
pub(super) const VERY_LOW_AT_47_F: f64 = 0.5;
/// The same at 17 °F, straight between the two (common practice: a sound single-speed unit delivers some 0.6 there).
pub(super) const VERY_LOW_AT_17_F: f64 = 0.3;
/// Standard uncertainties by which the ratio must lie clear of that.
pub(super) const CAPACITY_STANDARDS: f64 = 2.0;

/// Limit of error of a given ambient pressure, Pa: the weather about a standard atmosphere's (common practice).
pub(super) const AMBIENT_LIMIT_PA: f64 = 1e3;
/// Limit of error of the sea-level pressure where none is given, Pa: some 900 m of altitude.
pub(super) const ASSUMED_AMBIENT_LIMIT_PA: f64 = 10e3;
/// Relative humidity of a heated room where no wet bulb is given, and the limit of error of it. Over the whole of that range
/// it moves the delivered heat by 0.3 %.
pub(super) const ASSUMED_HUMIDITY: (f64, f64) = (0.4, 0.3);
/// Limit of error of an electric power without a stated accuracy, share of its value (common practice for a clamp meter).
pub(super) const POWER_LIMIT_SHARE: f64 = 0.05;
