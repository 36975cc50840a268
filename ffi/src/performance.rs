//! Delivered performance and the cost of a wrong charge, in C.

use crate::answer::{answer, given, status};
use crate::uncertain::{Uncertain, taken};
use satline::visit::charge_fault;
use satline::visit::performance::{self, CapacityShape as Shape};

/// How the capacity of a unit in cooling depends on its air. satline_capacity_shape_init gives the common one. This
/// structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CapacityShape {
    /// Relative change with the return wet bulb, 1/K.
    pub by_wet_bulb: Uncertain,
    /// Relative change with the outdoor dry bulb, 1/K.
    pub by_outdoor: Uncertain,
    /// One standard uncertainty of the nominal capacity itself, as a share of it.
    pub of_nominal: f64,
}

/// Before and after. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Gain {
    /// Delivered over expected, before.
    pub before: Uncertain,
    /// Delivered over expected, after.
    pub after: Uncertain,
    /// After over before.
    pub ratio: Uncertain,
    /// SATLINE_GAIN_...
    pub outcome: i32,
    /// Always 0.
    pub reserved: i32,
}

/// What a wrong charge does, over the same unit with the right charge. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct ChargeFaultEffect {
    pub capacity: Uncertain,
    pub power: Uncertain,
    pub coefficient_of_performance: Uncertain,
}

// Their layouts are part of the binary interface.
const _: () =
    assert!(size_of::<CapacityShape>() == 40 && size_of::<Gain>() == 56 && size_of::<ChargeFaultEffect>() == 48);

/// The common shape (common practice, between a published curve and a measured unit) for satline_expected_capacity_w.
///
/// Status: SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_capacity_shape_init(shape: *mut CapacityShape) -> i32 {
    let common = CapacityShape {
        by_wet_bulb: Uncertain::of(Shape::COMMON.by_wet_bulb),
        by_outdoor: Uncertain::of(Shape::COMMON.by_outdoor),
        of_nominal: Shape::COMMON.of_nominal,
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(shape, || Ok(common)) }
}

/// What a unit should deliver in cooling with a wet coil at nominal airflow, watts, from its nominal capacity at 95 degrees
/// Fahrenheit outdoors and a return wet bulb of 67. The maker's table is better (satline_target_grid_at).
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_expected_capacity_w(
    nominal_w: f64,
    return_wet_bulb_k: *const Uncertain,
    outdoor_dry_bulb_k: *const Uncertain,
    shape: *const CapacityShape,
    capacity_w: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values and a shape.
        let (wet, outdoor, shape) = unsafe { (taken(return_wet_bulb_k)?, taken(outdoor_dry_bulb_k)?, given(shape)?) };
        let shape = Shape {
            by_wet_bulb: shape.by_wet_bulb.checked()?,
            by_outdoor: shape.by_outdoor.checked()?,
            of_nominal: shape.of_nominal,
        };
        performance::expected_capacity(nominal_w, wet, outdoor, &shape).map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(capacity_w, compute) }
}

/// Capacity delivered over capacity expected at the same conditions, from two powers in watts. Show the cautions
/// SATLINE_PERFORMANCE_CAUTION_... with every answer on performance.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_delivered(
    capacity_w: *const Uncertain,
    expected_w: *const Uncertain,
    ratio: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (capacity, expected) = unsafe { (taken(capacity_w)?, taken(expected_w)?) };
        performance::delivered(capacity, expected).map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(ratio, compute) }
}

/// Capacity measured and expected before the work and after it, watts. shared: the share, 0 to 1, of the expected values'
/// uncertainty that both have in common; 1 where both come from one nominal capacity.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_gain(
    before_w: *const Uncertain,
    before_expected_w: *const Uncertain,
    after_w: *const Uncertain,
    after_expected_w: *const Uncertain,
    shared: f64,
    gain: *mut Gain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (before, after) =
            unsafe { ((taken(before_w)?, taken(before_expected_w)?), (taken(after_w)?, taken(after_expected_w)?)) };
        let found = performance::gain(before, after, shared).map_err(status)?;
        Ok(Gain {
            before: Uncertain::of(found.before),
            after: Uncertain::of(found.after),
            ratio: Uncertain::of(found.ratio),
            outcome: found.outcome.number(),
            reserved: 0,
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(gain, compute) }
}

/// Capacity and power of a cooling unit with a wrong charge, over those with the right one, by the NIST factors (TN 1848
/// family, valve units; from -30 to +30 % at usual air, see SATLINE_RELATIVE_DEVIATION_OF_THE_CHARGE_LOWEST_KG_KG). The
/// uncertainty holds how far units lie from the factors: 0.03, 0.05 and 0.06 as limits of error at 10, 20 and 30 %.
///
/// deviation: charge less right charge, over right charge. Temperatures are dry bulbs, kelvin.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_charge_fault_effect(
    deviation: *const Uncertain,
    indoor_dry_bulb_k: *const Uncertain,
    outdoor_dry_bulb_k: *const Uncertain,
    effect: *mut ChargeFaultEffect,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for values.
        let (deviation, indoor, outdoor) =
            unsafe { (taken(deviation)?, taken(indoor_dry_bulb_k)?, taken(outdoor_dry_bulb_k)?) };
        let found = charge_fault::charge_fault_effect(deviation, indoor, outdoor).map_err(status)?;
        Ok(ChargeFaultEffect {
            capacity: Uncertain::of(found.capacity),
            power: Uncertain::of(found.power),
            coefficient_of_performance: Uncertain::of(found.coefficient_of_performance),
        })
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(effect, compute) }
}
