//! Every number that a rule of [`super::judge`] compares with, and where it comes from.
//!
//! Bands are those of California Title 24, appendix RA3.2 (a regional protocol: used here because it is the published
//! one). "Common practice" marks a figure of the trade without a source that could be named.

pub(super) use crate::charge::protocol::{LOWEST_OUTDOOR_F, SETTLING_MINUTES};

/// √3: a limit of error read as a rectangular distribution has its standard uncertainty there.
pub(super) const SQRT_3: f64 = 1.732_050_807_568_877_2;

/// Limit of error of a suction gauge, psi (RA3.2, 2013).
pub(super) const SUCTION_LIMIT_PSI: f64 = 3.5;
/// Limit of error of a liquid or discharge gauge, psi (RA3.2, 2013).
pub(super) const LIQUID_LIMIT_PSI: f64 = 7.0;
/// Limit of error of a thermometer, share of its Fahrenheit value (RA3.2, 2008).
pub(super) const THERMOMETER_LIMIT_SHARE: f64 = 0.001;
/// Limit of error of a thermometer, °F, on top of its share (RA3.2, 2008).
pub(super) const THERMOMETER_LIMIT_F: f64 = 1.3;
/// Limit of error of an airflow, share of its value (common practice for a field traverse or grid).
pub(super) const AIRFLOW_LIMIT_SHARE: f64 = 0.10;

/// Band of the superheat about its target, °F (RA3.2, installer).
pub(super) const SUPERHEAT_BAND_F: f64 = 5.0;
/// Band of the subcooling about the maker's figure, °F (RA3.2, installer).
pub(super) const SUBCOOLING_BAND_F: f64 = 3.0;
/// Band of the temperature split about its target, °F (RA3.2, installer).
pub(super) const SPLIT_BAND_F: f64 = 3.0;

/// Airflow below which nothing is judged, cfm per ton (RA3.2's lowest for an altered system, from memory).
pub(super) const AIRFLOW_LOWEST_CFM_TON: f64 = 300.0;
/// Lower end of the usual airflow, cfm per ton (common practice).
pub(super) const AIRFLOW_USUAL_LOWEST_CFM_TON: f64 = 350.0;
/// Upper end of the usual airflow, cfm per ton (common practice).
pub(super) const AIRFLOW_USUAL_HIGHEST_CFM_TON: f64 = 450.0;

/// Condensing over outdoor air above which the outdoor coil comes first, °F (common practice).
pub(super) const CONDENSING_OVER_AMBIENT_HIGHEST_F: f64 = 35.0;
/// Condensing over outdoor air above which low subcooling does not mean low charge, °F. A lack of refrigerant lowers the
/// condensing temperature (Rossi and Braun; NIST valve units), while a blocked coil raises it, and on one tested unit
/// took the subcooling from 9.7 to 0.6 °F at full charge. The number is common practice: healthy units stand 15 to 25.
pub(super) const CONDENSING_OVER_AMBIENT_FOR_LOW_F: f64 = 25.0;

/// Subcooling that counts as high on an orifice without a maker's figure, °F (common practice).
pub(super) const ORIFICE_SUBCOOLING_HIGH_F: f64 = 15.0;
/// Subcooling that counts as low on an orifice without a maker's figure, °F (common practice).
pub(super) const ORIFICE_SUBCOOLING_LOW_F: f64 = 5.0;

/// Evaporating temperature below which the coil freezes, °C.
pub(super) const FREEZING_C: f64 = 0.0;
/// Margin above it in which a coil may already freeze in places, K (common practice; it also covers the gauge).
pub(super) const FREEZING_MARGIN_K: f64 = 2.0;

/// How much a discharge pressure reads above the liquid pressure, as subcooling, °F: 1.4 to 2.5 measured on one unit.
pub(super) const DISCHARGE_DROP_HIGHEST_F: f64 = 2.5;

/// Standard uncertainties within which a superheat or subcooling cannot be told from zero.
pub(super) const ZERO_STANDARDS: f64 = 2.0;
/// Standard uncertainties beyond which two measurements contradict each other.
pub(super) const CONTRADICTION_STANDARDS: f64 = 3.0;
/// How far a vapour line at the outdoor unit may be warmer than the warmer of outdoor and return air, °F: sun and a hot
/// attic (common practice).
pub(super) const VAPOUR_LINE_OVER_AIR_F: f64 = 10.0;

/// A gauge this near to the pressure of the air shows that and nothing else, Pa: 5 psi (common practice).
pub(super) const GAUGE_AT_AIR_PA: f64 = 5.0 * crate::quantity::PASCALS_PER_PSI;
/// Least pressure ratio of a compressor that pumps (common practice: air conditioners run at 2 to 4).
pub(super) const HIGH_OVER_LOW_LEAST: f64 = 1.15;
/// Pressure drop from the discharge to the liquid port beyond which a valve is not open, as a share (common practice:
/// a coil drops some 2 %).
pub(super) const VALVE_DROP_SHARE: f64 = 0.08;
/// Wet-bulb depression of return air beyond which the wet bulb is not wet, K: drier than 5 % relative humidity at 25 °C.
pub(super) const WET_BULB_DEPRESSION_HIGHEST_K: f64 = 16.0;
/// Highest return dry bulb while charging, °F (RA3.2): above, the house is still being pulled down.
pub(super) const HIGHEST_RETURN_F: f64 = 80.0;
/// Superheat below which nothing is added, °F: near zero, whatever else is likely (common practice).
pub(super) const SUPERHEAT_NEAR_ZERO_F: f64 = 2.0;
/// By how much a weighed charge may exceed the expected one and more still be added, as a share (common practice).
pub(super) const WEIGHED_OVER_EXPECTED: f64 = 0.03;
/// Probability of too little or too much refrigerant from which the charge may be called so.
pub(super) const LIKELY: f64 = 0.5;
/// The same from which it may be acted on.
pub(super) const SURE: f64 = 0.8;
/// Probability of another fault from which the charge is not acted on.
pub(super) const OTHER_FAULT: f64 = 0.08;
/// Condensing over outdoor air up to which low charge may be acted on though neither the outdoor coil's leaving air nor a
/// baseline speaks for that coil, °F: a lack of refrigerant lowers it, and healthy units stand 15 to 25 (common practice).
pub(super) const CONDENSING_OVER_AMBIENT_ALONE_F: f64 = 15.0;
/// How much superheat must be left beyond its own uncertainty before a charge is called correct, K: what a strapped probe
/// may read towards the air: 4 % of 25 K.
pub(super) const SUPERHEAT_LEFT_K: f64 = 1.0;
/// Standard uncertainties of superheat that must be left besides: a wrong "correct" harms as a wrong "add" does.
pub(super) const LEFT_STANDARDS: f64 = 2.5;
/// Probability of a healthy unit from which its charge may be called correct, and of any fault from which it may not.
pub(super) const HEALTHY_LEAST: f64 = 0.6;
/// See [`HEALTHY_LEAST`].
pub(super) const FAULT_MOST: f64 = 0.20;
/// Share of the charge beyond which it is weighed in afresh rather than added in steps: such a unit has a leak that is
/// found and mended on an empty circuit (common practice).
pub(super) const TOP_UP_MOST: f64 = 0.14;
/// The same where no target of superheat or subcooling tells when to stop.
pub(super) const TOP_UP_WITHOUT_TARGET_MOST: f64 = 0.10;
/// Discharge line temperature above which oil suffers, °F (common practice).
pub(super) const DISCHARGE_HIGHEST_F: f64 = 225.0;
