//! The pressure rating of copper tube and the temperature drop along a line, in C.

use crate::answer::{Answer, answer, given, status, unless_unset};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::handle::{Refrigerant, curves};
use satline::quantity::{GaugePressure, Temperature};
use satline::visit::line_drop::{self, Flash, line_temperature_drop};
use satline::visit::tube_rating::{self, Joint, Temper, copper_tube_rating};

/// A copper tube and how hot it gets. Start with satline_copper_tube_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CopperTube {
    /// sizeof(satline_copper_tube), set by satline_copper_tube_init.
    pub struct_size: u32,
    /// SATLINE_TUBE_TEMPER_...: how hard it was delivered; annealed by satline_copper_tube_init.
    pub temper: i32,
    /// SATLINE_TUBE_JOINT_...: how it is joined; brazed, and so annealed, by satline_copper_tube_init.
    pub joint: i32,
    /// Always 0.
    pub reserved: u32,
    /// Nominal outside diameter, metres.
    pub outside_diameter_m: f64,
    /// Nominal wall, metres.
    pub wall_m: f64,
    /// Highest temperature of the wall, kelvin.
    pub temperature_k: f64,
    /// How much thinner the wall may be, metres; -1 (by satline_copper_tube_init) for 12 % of it.
    pub wall_tolerance_m: f64,
    /// How much larger the diameter may be, metres; -1 (by satline_copper_tube_init) for 0.002 inch.
    pub diameter_tolerance_m: f64,
    /// Design pressure, pascals above ambient, as nameplates state it; -1 (by satline_copper_tube_init) for none.
    pub design_gauge_pressure_pa: f64,
}

/// What a tube may hold. Start with satline_tube_rating_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct TubeRating {
    /// sizeof(satline_tube_rating), set by satline_tube_rating_init.
    pub struct_size: u32,
    /// SATLINE_TUBE_OUTCOME_...; 0 without a design pressure.
    pub outcome: i32,
    /// SATLINE_TUBE_TEMPER_...: the temper that counts.
    pub counted_as: i32,
    /// Bit n is set for caution n (SATLINE_TUBE_CAUTION_...).
    pub cautions: u32,
    /// The figure to work with: largest inside pressure with the least wall, pascals above ambient.
    pub rating_gauge_pressure_pa: f64,
    /// The same with nominal sizes, pascals above ambient.
    pub nominal_gauge_pressure_pa: f64,
    /// One standard uncertainty of it, from the tolerances, pascals.
    pub nominal_uncertainty_pa: f64,
    /// Allowable stress, pascals.
    pub allowable_stress_pa: f64,
    /// Rating less design pressure, pascals; 0 without a design pressure.
    pub margin_pa: f64,
}

/// What two temperatures along a liquid line show. Start with satline_line_drop_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct LineDropAnswer {
    /// sizeof(satline_line_drop), set by satline_line_drop_init.
    pub struct_size: u32,
    /// SATLINE_LINE_DROP_OUTCOME_...; 0 before an answer.
    pub outcome: i32,
    /// Bit n is set for caution n (SATLINE_LINE_DROP_CAUTION_...).
    pub cautions: u32,
    /// Always 0.
    pub reserved: u32,
    /// First less second temperature, kelvin.
    pub temperature_drop_k: f64,
    /// One standard uncertainty of it, kelvin.
    pub temperature_drop_uncertainty_k: f64,
    /// Least pressure drop where the liquid flashes, pascals.
    pub least_pressure_drop_pa: f64,
    /// One standard uncertainty of it, pascals.
    pub least_pressure_drop_uncertainty_pa: f64,
    /// A drop of temperature up to this would not have shown, kelvin.
    pub smallest_drop_k: f64,
    /// Bubble pressure at the first clamp, pascals, absolute.
    pub upstream_bubble_pressure_pa: f64,
}

// Their layouts are part of the binary interface.
const _: () =
    assert!(size_of::<CopperTube>() == 64 && size_of::<TubeRating>() == 56 && size_of::<LineDropAnswer>() == 64);

/// Empties the question. struct_size: sizeof(satline_copper_tube).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_copper_tube_init(tube: *mut CopperTube, struct_size: u32) -> i32 {
    let own = size_of::<CopperTube>() as u32;
    let empty = CopperTube {
        struct_size: own,
        temper: Temper::Annealed.number(),
        joint: Joint::Brazed.number(),
        reserved: 0,
        outside_diameter_m: 0.0,
        wall_m: 0.0,
        temperature_k: 0.0,
        wall_tolerance_m: -1.0,
        diameter_tolerance_m: -1.0,
        design_gauge_pressure_pa: -1.0,
    };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(tube, || if struct_size == own { Ok(empty) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Empties the answer. struct_size: sizeof(satline_tube_rating).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_tube_rating_init(rating: *mut TubeRating, struct_size: u32) -> i32 {
    let own = size_of::<TubeRating>() as u32;
    let empty = TubeRating {
        struct_size: own,
        outcome: 0,
        counted_as: 0,
        cautions: 0,
        rating_gauge_pressure_pa: 0.0,
        nominal_gauge_pressure_pa: 0.0,
        nominal_uncertainty_pa: 0.0,
        allowable_stress_pa: 0.0,
        margin_pa: 0.0,
    };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(rating, || if struct_size == own { Ok(empty) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// The pressure that a copper tube may hold, 2St/(D - 0.8t) with the allowable stresses of the Copper Tube Handbook, and
/// whether that covers the design pressure. Brazed drawn tube counts as annealed. In heating, the vapour line of a heat
/// pump is its discharge line.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE (temper, joint),
/// SATLINE_STATUS_BAD_STRUCT_SIZE (question or answer not initialised), SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_copper_tube_rate(tube: *const CopperTube, rating: *mut TubeRating) -> i32 {
    let rate = || -> Answer<()> {
        // SAFETY: the header asks for a question.
        let tube = unsafe { given(tube) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let rating = unsafe { rating.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if tube.struct_size != size_of::<CopperTube>() as u32 || rating.struct_size != size_of::<TubeRating>() as u32 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let design = match unless_unset(tube.design_gauge_pressure_pa) {
            Some(pascals) => Some(GaugePressure::from_pascals(pascals).map_err(status)?),
            None => None,
        };
        let asked = tube_rating::CopperTube {
            outside_diameter_m: tube.outside_diameter_m,
            wall_m: tube.wall_m,
            temper: Temper::from_number(tube.temper).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            joint: Joint::from_number(tube.joint).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            temperature: Temperature::from_kelvin(tube.temperature_k).map_err(status)?,
            wall_tolerance_m: unless_unset(tube.wall_tolerance_m),
            diameter_tolerance_m: unless_unset(tube.diameter_tolerance_m),
        };
        let found = copper_tube_rating(&asked, design).map_err(status)?;
        *rating = TubeRating {
            struct_size: rating.struct_size,
            outcome: found.outcome.map_or(0, tube_rating::Outcome::number),
            counted_as: found.counted_as.number(),
            cautions: found.cautions().fold(0, |bits, caution| bits | 1_u32.wrapping_shl(caution.number() as u32)),
            rating_gauge_pressure_pa: found.rating.pascals(),
            nominal_gauge_pressure_pa: found.nominal_pa.value,
            nominal_uncertainty_pa: found.nominal_pa.standard_uncertainty,
            allowable_stress_pa: found.allowable_stress_pa,
            margin_pa: found.margin_pa.unwrap_or(0.0),
        };
        Ok(())
    };
    rate().err().unwrap_or(SATLINE_STATUS_OK)
}

/// Empties the answer. struct_size: sizeof(satline_line_drop).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_line_drop_init(drop: *mut LineDropAnswer, struct_size: u32) -> i32 {
    let own = size_of::<LineDropAnswer>() as u32;
    let empty = LineDropAnswer {
        struct_size: own,
        outcome: 0,
        cautions: 0,
        reserved: 0,
        temperature_drop_k: 0.0,
        temperature_drop_uncertainty_k: 0.0,
        least_pressure_drop_pa: 0.0,
        least_pressure_drop_uncertainty_pa: 0.0,
        smallest_drop_k: 0.0,
        upstream_bubble_pressure_pa: 0.0,
    };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(drop, || if struct_size == own { Ok(empty) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// The least pressure drop that a drop of temperature along a liquid line means: only where the liquid flashes. No drop
/// does not prove that nothing restricts the line.
///
/// upstream_k, downstream_k: kelvin, two clamps in the direction of the flow, liquid at the first. flash:
/// SATLINE_LINE_FLASH_... at the second. difference_uncertainty_k: one standard uncertainty of their difference, kelvin;
/// -1 for that of two usual thermometers. drop: initialised by satline_line_drop_init.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_UNKNOWN_CHOICE (flash),
/// SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_line_temperature_drop(
    refrigerant: *const Refrigerant,
    upstream_k: f64,
    downstream_k: f64,
    flash: i32,
    difference_uncertainty_k: f64,
    drop: *mut LineDropAnswer,
) -> i32 {
    let judge = || -> Answer<()> {
        // SAFETY: the header asks for a handle.
        let refrigerant = unsafe { curves(refrigerant) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let drop = unsafe { drop.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if drop.struct_size != size_of::<LineDropAnswer>() as u32 {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let found = line_temperature_drop(&line_drop::LineDrop {
            refrigerant,
            upstream: Temperature::from_kelvin(upstream_k).map_err(status)?,
            downstream: Temperature::from_kelvin(downstream_k).map_err(status)?,
            flash: Flash::from_number(flash).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            difference_uncertainty_k: unless_unset(difference_uncertainty_k),
        })
        .map_err(status)?;
        *drop = LineDropAnswer {
            struct_size: drop.struct_size,
            outcome: found.outcome.number(),
            cautions: found.caution_bits(),
            reserved: 0,
            temperature_drop_k: found.temperature_drop_k.value,
            temperature_drop_uncertainty_k: found.temperature_drop_k.standard_uncertainty,
            least_pressure_drop_pa: found.least_pressure_drop_pa.value,
            least_pressure_drop_uncertainty_pa: found.least_pressure_drop_pa.standard_uncertainty,
            smallest_drop_k: found.smallest_drop_k,
            upstream_bubble_pressure_pa: found.upstream_bubble.pascals(),
        };
        Ok(())
    };
    judge().err().unwrap_or(SATLINE_STATUS_OK)
}
