//! The air side of the coil in C.

use crate::answer::{Answer, answer, given, status};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use satline::Error;
use satline::air::{self, AirflowPlace, Humidity, KnownHeat, MeasuredAir};
use satline::charge::target_split;
use satline::uncertain::Uncertain;

/// Measure of humidity: none. For air leaving: as much water as entering, over a dry coil or in heating.
pub const SATLINE_HUMIDITY_NONE: i32 = 0;
/// Measure of humidity: wet bulb temperature, kelvin.
pub const SATLINE_HUMIDITY_WET_BULB: i32 = 1;
/// Measure of humidity: relative humidity, 0 to 1.
pub const SATLINE_HUMIDITY_RELATIVE: i32 = 2;
/// Measure of humidity: dew point temperature, kelvin.
pub const SATLINE_HUMIDITY_DEW_POINT: i32 = 3;
/// Measure of humidity: humidity ratio, kilograms of water to a kilogram of dry air.
pub const SATLINE_HUMIDITY_RATIO: i32 = 4;

/// Where an airflow's volume counts: in the air entering the coil.
pub const SATLINE_AIRFLOW_ENTERING: i32 = 1;
/// Where an airflow's volume counts: in the air leaving the coil.
pub const SATLINE_AIRFLOW_LEAVING: i32 = 2;
/// Where an airflow's volume counts: at standard air, 0.075 lb/ft3 (SCFM).
pub const SATLINE_AIRFLOW_STANDARD: i32 = 3;

/// Known heat: given to the air by strips (volts times amperes of all that are on) or a furnace (its output), compressor
/// off.
pub const SATLINE_HEAT_HEATING: i32 = 1;
/// Known heat: sensible heat taken from the air between the probes.
pub const SATLINE_HEAT_SENSIBLE: i32 = 2;
/// Known heat: total heat taken from the air between the probes.
pub const SATLINE_HEAT_TOTAL: i32 = 3;
/// Known heat: taken up by the refrigerant in the indoor coil.
pub const SATLINE_HEAT_REFRIGERANT: i32 = 4;

/// Bit of satline_coil_capacity.defined: sensible_heat_ratio is set; the air was cooled.
pub const SATLINE_DEFINED_SENSIBLE_HEAT_RATIO: u32 = 1;
/// Bit of satline_split.defined: target and deviation are set; the table has a target for this return air.
pub const SATLINE_DEFINED_SPLIT_TARGET: u32 = 1;

/// What was measured of the air before and after the indoor coil. Start with satline_coil_air_init. Every
/// ..._uncertainty is one standard uncertainty, 0 for a value taken as known.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CoilAir {
    /// sizeof(satline_coil_air), set by satline_coil_air_init.
    pub struct_size: u32,
    /// SATLINE_HUMIDITY_...: what entering_humidity is.
    pub entering_measure: i32,
    /// SATLINE_HUMIDITY_...: what leaving_humidity is; SATLINE_HUMIDITY_NONE (by satline_coil_air_init) for as much water
    /// as entering.
    pub leaving_measure: i32,
    /// Always 0.
    pub reserved: i32,
    /// Dry bulb of the air entering (return), kelvin.
    pub entering_dry_bulb_k: f64,
    pub entering_dry_bulb_uncertainty: f64,
    /// In the unit of its measure.
    pub entering_humidity: f64,
    pub entering_humidity_uncertainty: f64,
    /// Dry bulb of the air leaving (supply), kelvin.
    pub leaving_dry_bulb_k: f64,
    pub leaving_dry_bulb_uncertainty: f64,
    /// In the unit of its measure.
    pub leaving_humidity: f64,
    pub leaving_humidity_uncertainty: f64,
    /// Station pressure, pascals; 101325 by satline_coil_air_init.
    pub pressure_pa: f64,
    pub pressure_uncertainty: f64,
    /// One standard uncertainty of a bias that all temperatures share, kelvin.
    pub shared_bias_k: f64,
}

// Its layout is part of the binary interface.
const _: () = assert!(size_of::<CoilAir>() == 16 + 11 * 8);

impl CoilAir {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        entering_measure: SATLINE_HUMIDITY_NONE,
        leaving_measure: SATLINE_HUMIDITY_NONE,
        reserved: 0,
        entering_dry_bulb_k: 0.0,
        entering_dry_bulb_uncertainty: 0.0,
        entering_humidity: 0.0,
        entering_humidity_uncertainty: 0.0,
        leaving_dry_bulb_k: 0.0,
        leaving_dry_bulb_uncertainty: 0.0,
        leaving_humidity: 0.0,
        leaving_humidity_uncertainty: 0.0,
        pressure_pa: 101_325.0,
        pressure_uncertainty: 0.0,
        shared_bias_k: 0.0,
    };

    fn measured(&self) -> Answer<air::CoilAir> {
        if self.struct_size != Self::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let entering = measure(self.entering_measure, self.entering_humidity, self.entering_humidity_uncertainty)?;
        Ok(air::CoilAir {
            entering: MeasuredAir {
                dry_bulb_k: with(self.entering_dry_bulb_k, self.entering_dry_bulb_uncertainty),
                humidity: entering.ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            },
            leaving_dry_bulb_k: with(self.leaving_dry_bulb_k, self.leaving_dry_bulb_uncertainty),
            leaving_humidity: measure(self.leaving_measure, self.leaving_humidity, self.leaving_humidity_uncertainty)?,
            pressure_pa: with(self.pressure_pa, self.pressure_uncertainty),
            shared_bias_k: self.shared_bias_k,
        })
    }
}

/// A value with its uncertainty as given; the core checks both.
const fn with(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain { value, standard_uncertainty }
}

fn measure(kind: i32, value: f64, uncertainty: f64) -> Answer<Option<Humidity>> {
    let input = with(value, uncertainty);
    Ok(Some(match kind {
        SATLINE_HUMIDITY_NONE => return Ok(None),
        SATLINE_HUMIDITY_WET_BULB => Humidity::WetBulb(input),
        SATLINE_HUMIDITY_RELATIVE => Humidity::Relative(input),
        SATLINE_HUMIDITY_DEW_POINT => Humidity::DewPoint(input),
        SATLINE_HUMIDITY_RATIO => Humidity::Ratio(input),
        _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
    }))
}

/// What is available, else 0.
fn known(value: &Result<Uncertain, Error>) -> Uncertain {
    value.unwrap_or(Uncertain::exact(0.0))
}

/// Heat taken from the air, positive in cooling. Start with satline_coil_capacity_init. Every ..._uncertainty is one standard
/// uncertainty of the member above it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CoilCapacity {
    /// sizeof(satline_coil_capacity), set by satline_coil_capacity_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits of what is set besides; what is not is 0.
    pub defined: u32,
    /// Mass flow of dry air.
    pub dry_air_kg_s: f64,
    pub dry_air_kg_s_uncertainty: f64,
    /// Heat of cooling the air, at the humidity at which it leaves.
    pub sensible_w: f64,
    pub sensible_w_uncertainty: f64,
    /// Heat of the water taken out, as vapour at the entering dry bulb; negative where the air left with more.
    pub latent_w: f64,
    pub latent_w_uncertainty: f64,
    /// Sensible and latent together: mass flow of dry air times the difference of enthalpy, that of the condensate still in
    /// it.
    pub total_w: f64,
    pub total_w_uncertainty: f64,
    /// Enthalpy that leaves with the condensate.
    pub condensate_w: f64,
    pub condensate_w_uncertainty: f64,
    /// Total less condensate: what the refrigerant takes up, where no blower stands between the probes.
    pub coil_w: f64,
    pub coil_w_uncertainty: f64,
    /// Water taken out.
    pub condensate_kg_s: f64,
    pub condensate_kg_s_uncertainty: f64,
    /// Sensible over total heat, where defined.
    pub sensible_heat_ratio: f64,
    pub sensible_heat_ratio_uncertainty: f64,
}

const _: () = assert!(size_of::<CoilCapacity>() == 8 + 16 * 8);

impl CoilCapacity {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        dry_air_kg_s: 0.0,
        dry_air_kg_s_uncertainty: 0.0,
        sensible_w: 0.0,
        sensible_w_uncertainty: 0.0,
        latent_w: 0.0,
        latent_w_uncertainty: 0.0,
        total_w: 0.0,
        total_w_uncertainty: 0.0,
        condensate_w: 0.0,
        condensate_w_uncertainty: 0.0,
        coil_w: 0.0,
        coil_w_uncertainty: 0.0,
        condensate_kg_s: 0.0,
        condensate_kg_s_uncertainty: 0.0,
        sensible_heat_ratio: 0.0,
        sensible_heat_ratio_uncertainty: 0.0,
    };
}

/// An airflow over the indoor coil. Start with satline_coil_airflow_init. Every ..._uncertainty is one standard
/// uncertainty of the member above it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CoilAirflow {
    /// sizeof(satline_coil_airflow), set by satline_coil_airflow_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits of what is set besides; what is not is 0.
    pub defined: u32,
    /// Mass flow of dry air.
    pub dry_air_kg_s: f64,
    pub dry_air_kg_s_uncertainty: f64,
    /// Volume flow of the air entering.
    pub entering_m3_s: f64,
    pub entering_m3_s_uncertainty: f64,
    /// Volume flow of the air leaving.
    pub leaving_m3_s: f64,
    pub leaving_m3_s_uncertainty: f64,
    /// Flow at standard air of 0.075 lb/ft3 (SCFM).
    pub standard_m3_s: f64,
    pub standard_m3_s_uncertainty: f64,
}

const _: () = assert!(size_of::<CoilAirflow>() == 8 + 8 * 8);

impl CoilAirflow {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        dry_air_kg_s: 0.0,
        dry_air_kg_s_uncertainty: 0.0,
        entering_m3_s: 0.0,
        entering_m3_s_uncertainty: 0.0,
        leaving_m3_s: 0.0,
        leaving_m3_s_uncertainty: 0.0,
        standard_m3_s: 0.0,
        standard_m3_s_uncertainty: 0.0,
    };
}

/// The effective surface of a coil that takes out water. Start with satline_apparatus_dew_point_init. Every ..._uncertainty is one standard
/// uncertainty of the member above it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct ApparatusDewPoint {
    /// sizeof(satline_apparatus_dew_point), set by satline_apparatus_dew_point_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits of what is set besides; what is not is 0.
    pub defined: u32,
    /// Apparatus dew point, kelvin.
    pub temperature_k: f64,
    pub temperature_k_uncertainty: f64,
    /// The share of the air that passes untouched, 0 to 1.
    pub bypass_factor: f64,
    pub bypass_factor_uncertainty: f64,
}

const _: () = assert!(size_of::<ApparatusDewPoint>() == 8 + 4 * 8);

impl ApparatusDewPoint {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        temperature_k: 0.0,
        temperature_k_uncertainty: 0.0,
        bypass_factor: 0.0,
        bypass_factor_uncertainty: 0.0,
    };
}

/// Temperature split with its target. Start with satline_split_init. Every ..._uncertainty is one standard
/// uncertainty of the member above it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Split {
    /// sizeof(satline_split), set by satline_split_init.
    pub struct_size: u32,
    /// SATLINE_DEFINED_... bits of what is set besides; what is not is 0.
    pub defined: u32,
    /// Return minus supply dry bulb, kelvin of difference.
    pub split_k: f64,
    pub split_k_uncertainty: f64,
    /// What the table asks for, where defined.
    pub target_k: f64,
    pub target_k_uncertainty: f64,
    /// Split minus target, where defined.
    pub deviation_k: f64,
    pub deviation_k_uncertainty: f64,
}

const _: () = assert!(size_of::<Split>() == 8 + 6 * 8);

impl Split {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        split_k: 0.0,
        split_k_uncertainty: 0.0,
        target_k: 0.0,
        target_k_uncertainty: 0.0,
        deviation_k: 0.0,
        deviation_k_uncertainty: 0.0,
    };
}

/// Computes an answer from what was measured and writes it; leaves the caller's as it was on failure.
///
/// # Safety
/// As for the functions of the header; `size` gives the size that the answer states and the one it must state.
unsafe fn compute<T>(
    air: *const CoilAir,
    out: *mut T,
    size: impl FnOnce(&T) -> (u32, u32),
    from: impl FnOnce(&air::CoilAir) -> Answer<T>,
) -> i32 {
    let found = || -> Answer<()> {
        // SAFETY: the header asks for both, the answer's first member may be read.
        let (measured, place) = unsafe { (given(air)?, out.as_mut().ok_or(SATLINE_STATUS_NULL_POINTER)?) };
        let (stated, right) = size(place);
        if stated != right {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        *place = from(&measured.measured()?)?;
        Ok(())
    };
    found().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties what was measured. struct_size: sizeof(satline_coil_air).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_air_init(air: *mut CoilAir, struct_size: u32) -> i32 {
    let right = struct_size == CoilAir::SIZE;
    let empty = || if right { Ok(CoilAir::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(air, empty) }
}

/// Empties a capacity. struct_size: sizeof(satline_coil_capacity).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_capacity_init(capacity: *mut CoilCapacity, struct_size: u32) -> i32 {
    let right = struct_size == CoilCapacity::SIZE;
    let empty = || if right { Ok(CoilCapacity::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(capacity, empty) }
}

/// Empties an airflow. struct_size: sizeof(satline_coil_airflow).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_airflow_init(airflow: *mut CoilAirflow, struct_size: u32) -> i32 {
    let right = struct_size == CoilAirflow::SIZE;
    let empty = || if right { Ok(CoilAirflow::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(airflow, empty) }
}

/// Empties the surface. struct_size: sizeof(satline_apparatus_dew_point).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_apparatus_dew_point_init(surface: *mut ApparatusDewPoint, struct_size: u32) -> i32 {
    let right = struct_size == ApparatusDewPoint::SIZE;
    let empty = || if right { Ok(ApparatusDewPoint::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(surface, empty) }
}

/// Empties a split. struct_size: sizeof(satline_split).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_split_init(split: *mut Split, struct_size: u32) -> i32 {
    let right = struct_size == Split::SIZE;
    let empty = || if right { Ok(Split::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(split, empty) }
}

/// Temperature split, and its target by the table of California Title 24, appendix RA3.2 (see satline_target_split_k).
/// The target moves with the return air's probes, which the deviation's uncertainty takes into account. Not available
/// where air said to leave with as much water as it entered cannot hold it: its coil is wet.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE (see above),
/// SATLINE_STATUS_UNKNOWN_CHOICE (a number that is no choice), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_split(air: *const CoilAir, split: *mut Split) -> i32 {
    let from = |measured: &air::CoilAir| {
        let found = measured.split(|dry, wet| target_split(dry, wet).difference()).map_err(status)?;
        Ok(Split {
            struct_size: Split::SIZE,
            defined: if found.target_k.is_ok() { SATLINE_DEFINED_SPLIT_TARGET } else { 0 },
            split_k: found.split_k.value,
            split_k_uncertainty: found.split_k.standard_uncertainty,
            target_k: known(&found.target_k).value,
            target_k_uncertainty: known(&found.target_k).standard_uncertainty,
            deviation_k: known(&found.deviation_k).value,
            deviation_k_uncertainty: known(&found.deviation_k).standard_uncertainty,
        })
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(air, split, |split| (split.struct_size, Split::SIZE), from) }
}

/// Sensible, latent and total heat taken from the air. Heat of a blower between the probes is in it: what the coil did is
/// more by that power. Not available as for satline_coil_split.
///
/// airflow_m3_s: cubic metres a second, with one standard uncertainty. place: SATLINE_AIRFLOW_...: in which air its volume
/// counts.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE (see above),
/// SATLINE_STATUS_UNKNOWN_CHOICE (a number that is no choice), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_capacity_at(
    air: *const CoilAir,
    airflow_m3_s: f64,
    airflow_uncertainty: f64,
    place: i32,
    capacity: *mut CoilCapacity,
) -> i32 {
    let from = |measured: &air::CoilAir| {
        let place = match place {
            SATLINE_AIRFLOW_ENTERING => AirflowPlace::Entering,
            SATLINE_AIRFLOW_LEAVING => AirflowPlace::Leaving,
            SATLINE_AIRFLOW_STANDARD => AirflowPlace::Standard,
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let found = measured.capacity(with(airflow_m3_s, airflow_uncertainty), place).map_err(status)?;
        Ok(CoilCapacity {
            struct_size: CoilCapacity::SIZE,
            defined: if found.sensible_heat_ratio.is_ok() { SATLINE_DEFINED_SENSIBLE_HEAT_RATIO } else { 0 },
            dry_air_kg_s: found.dry_air_kg_s.value,
            dry_air_kg_s_uncertainty: found.dry_air_kg_s.standard_uncertainty,
            sensible_w: found.sensible_w.value,
            sensible_w_uncertainty: found.sensible_w.standard_uncertainty,
            latent_w: found.latent_w.value,
            latent_w_uncertainty: found.latent_w.standard_uncertainty,
            total_w: found.total_w.value,
            total_w_uncertainty: found.total_w.standard_uncertainty,
            condensate_w: found.condensate_w.value,
            condensate_w_uncertainty: found.condensate_w.standard_uncertainty,
            coil_w: found.coil_w.value,
            coil_w_uncertainty: found.coil_w.standard_uncertainty,
            condensate_kg_s: found.condensate_kg_s.value,
            condensate_kg_s_uncertainty: found.condensate_kg_s.standard_uncertainty,
            sensible_heat_ratio: known(&found.sensible_heat_ratio).value,
            sensible_heat_ratio_uncertainty: known(&found.sensible_heat_ratio).standard_uncertainty,
        })
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(air, capacity, |capacity| (capacity.struct_size, CoilCapacity::SIZE), from) }
}

/// The airflow over the coil from a heat that is known. Measure the air where it is mixed, out of sight of strips and
/// coil; mains electricity is for licensed people. Not available where the air changes the wrong way or by less than two
/// standard uncertainties, or where the blower has more power than the coil.
///
/// kind: SATLINE_HEAT_.... heat_w: watts, 1 to 1e6. blower_w: watts of a blower between the probes, else 0; not used with
/// SATLINE_HEAT_SENSIBLE and SATLINE_HEAT_TOTAL. Both with one standard uncertainty.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE (see above),
/// SATLINE_STATUS_UNKNOWN_CHOICE (a number that is no choice), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_airflow_from(
    air: *const CoilAir,
    kind: i32,
    heat_w: f64,
    heat_uncertainty: f64,
    blower_w: f64,
    blower_uncertainty: f64,
    airflow: *mut CoilAirflow,
) -> i32 {
    let from = |measured: &air::CoilAir| {
        let (heat, blower_w) = (with(heat_w, heat_uncertainty), with(blower_w, blower_uncertainty));
        let heat = match kind {
            SATLINE_HEAT_HEATING => KnownHeat::Heating { heat_w: heat, blower_w },
            SATLINE_HEAT_SENSIBLE => KnownHeat::Sensible(heat),
            SATLINE_HEAT_TOTAL => KnownHeat::Total(heat),
            SATLINE_HEAT_REFRIGERANT => KnownHeat::Refrigerant { evaporator_w: heat, blower_w },
            _ => return Err(SATLINE_STATUS_UNKNOWN_CHOICE),
        };
        let found = measured.airflow(heat).map_err(status)?;
        Ok(CoilAirflow {
            struct_size: CoilAirflow::SIZE,
            defined: 0,
            dry_air_kg_s: found.dry_air_kg_s.value,
            dry_air_kg_s_uncertainty: found.dry_air_kg_s.standard_uncertainty,
            entering_m3_s: found.entering_m3_s.value,
            entering_m3_s_uncertainty: found.entering_m3_s.standard_uncertainty,
            leaving_m3_s: found.leaving_m3_s.value,
            leaving_m3_s_uncertainty: found.leaving_m3_s.standard_uncertainty,
            standard_m3_s: found.standard_m3_s.value,
            standard_m3_s_uncertainty: found.standard_m3_s.standard_uncertainty,
        })
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(air, airflow, |airflow| (airflow.struct_size, CoilAirflow::SIZE), from) }
}

/// Apparatus dew point and bypass factor: where the line from entering through leaving air meets saturation. Not
/// available where the air was not cooled, on a coil that is dry or may be, or where the line misses saturation.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE (see above),
/// SATLINE_STATUS_UNKNOWN_CHOICE (a number that is no choice), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_coil_apparatus_dew_point(air: *const CoilAir, surface: *mut ApparatusDewPoint) -> i32 {
    let from = |measured: &air::CoilAir| {
        let found = measured.apparatus_dew_point().map_err(status)?;
        Ok(ApparatusDewPoint {
            struct_size: ApparatusDewPoint::SIZE,
            defined: 0,
            temperature_k: found.temperature_k.value,
            temperature_k_uncertainty: found.temperature_k.standard_uncertainty,
            bypass_factor: found.bypass_factor.value,
            bypass_factor_uncertainty: found.bypass_factor.standard_uncertainty,
        })
    };
    // SAFETY: the header states what the pointers must be.
    unsafe { compute(air, surface, |surface| (surface.struct_size, ApparatusDewPoint::SIZE), from) }
}
