//! Two refrigerants in the same unit, in C.

use crate::answer::{Answer, answer, given, status};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use crate::uncertain::{Uncertain, taken};
use satline::quantity::{Pressure, Temperature, TemperatureDifference};
use satline::visit::retrofit::{self, Comparison, CondensingAt, Conditions, compare_refrigerants};

/// Conditions at which two refrigerants are compared. Start with satline_retrofit_init, then set the first four.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Retrofit {
    /// sizeof(satline_retrofit), set by satline_retrofit_init.
    pub struct_size: u32,
    /// SATLINE_RETROFIT_CONDENSING_AT_...: what the condensing temperature of a blend is; bubble by satline_retrofit_init.
    pub condensing_at: i32,
    /// Evaporating temperature, kelvin: the dew temperature at the evaporating pressure.
    pub evaporating_k: f64,
    /// Condensing temperature, kelvin.
    pub condensing_k: f64,
    /// Superheat at the compressor's inlet, kelvin.
    pub superheat_k: f64,
    /// Subcooling before the metering device, kelvin.
    pub subcooling_k: f64,
    /// Share of the superheat that counts as cooling, 0 to 1; 0 by satline_retrofit_init.
    pub useful_superheat: f64,
    /// Isentropic efficiency of the compressor; 0.7 (common practice) by satline_retrofit_init.
    pub isentropic_efficiency: f64,
    /// The hottest that the unit stands at rest, kelvin; 125 degrees Fahrenheit by satline_retrofit_init.
    pub standstill_k: f64,
    /// The hottest that the low side stands at rest, kelvin; 80 degrees Fahrenheit by satline_retrofit_init.
    pub low_side_standstill_k: f64,
    /// Design pressure of the high side from the unit's plate, pascals, absolute; -1 (by satline_retrofit_init) where it
    /// is not known.
    pub high_side_design_pressure_pa: f64,
    /// Design pressure of the low side, likewise.
    pub low_side_design_pressure_pa: f64,
    /// Discharge temperature beyond which there is a caution, kelvin; 225 degrees Fahrenheit by satline_retrofit_init.
    pub highest_discharge_k: f64,
}

/// A refrigerant in the plain cycle at stated conditions. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Cycle {
    /// Pascals, absolute, as are the other pressures.
    pub evaporating_pressure_pa: f64,
    pub condensing_pressure_pa: f64,
    /// Condensing over evaporating pressure.
    pub pressure_ratio: f64,
    /// Dew minus bubble temperature at the evaporating pressure.
    pub evaporating_glide_k: f64,
    /// Dew minus bubble temperature at the condensing pressure.
    pub condensing_glide_k: f64,
    pub suction_temperature_k: f64,
    pub suction_density_kg_m3: f64,
    pub discharge_temperature_k: f64,
    pub discharge_density_kg_m3: f64,
    /// Before the metering device.
    pub liquid_temperature_k: f64,
    pub liquid_density_kg_m3: f64,
    /// Saturated liquid at the condensing pressure.
    pub bubble_density_kg_m3: f64,
    pub refrigerating_effect_j_kg: f64,
    /// Suction density times refrigerating effect.
    pub volumetric_capacity_j_m3: f64,
    pub coefficient_of_performance: f64,
    /// Bubble pressure at the standstill temperature; -1 above the critical temperature.
    pub standstill_pressure_pa: f64,
    /// Bubble pressure at the low side's standstill temperature; -1 above the critical temperature.
    pub low_side_standstill_pressure_pa: f64,
}

/// How flows change, new over old. This structure never changes.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct FlowRatios {
    pub mass_flow: f64,
    /// For the same flow coefficient: area as mass flow over the root of liquid density times pressure difference.
    pub orifice_area: f64,
    pub suction_velocity: f64,
    pub discharge_velocity: f64,
    pub liquid_velocity: f64,
}

/// The answer: ratios are new over old. Start with satline_retrofit_comparison_init.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct RetrofitComparison {
    /// sizeof(satline_retrofit_comparison), set by satline_retrofit_comparison_init.
    pub struct_size: u32,
    /// SATLINE_RETROFIT_OUTCOME_...; 0 before a comparison.
    pub outcome: i32,
    /// Bit n is set for reason n (SATLINE_RETROFIT_REASON_...).
    pub reasons: u32,
    /// Bit n is set for caution n (SATLINE_RETROFIT_CAUTION_...).
    pub cautions: u32,
    /// SATLINE_OIL_...: what the old refrigerant commonly has.
    pub old_oil: i32,
    /// SATLINE_OIL_...: what the new refrigerant commonly needs.
    pub new_oil: i32,
    /// The old refrigerant at the conditions.
    pub old_cycle: Cycle,
    /// The new refrigerant at the conditions.
    pub new_cycle: Cycle,
    /// Cooling of the same compressor.
    pub volumetric_capacity_ratio: f64,
    pub coefficient_of_performance_ratio: f64,
    /// New less old discharge temperature, kelvin.
    pub discharge_temperature_rise_k: f64,
    /// Charge of the same volumes, by the density of saturated liquid at the condensing pressure.
    pub charge_ratio: f64,
    /// Flows with the compressor's displacement as it is.
    pub at_equal_displacement: FlowRatios,
    /// Flows for the same cooling.
    pub at_equal_capacity: FlowRatios,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Retrofit>() == 96 && size_of::<RetrofitComparison>() == 24 + 48 * 8);
const _: () = assert!(size_of::<Cycle>() == 17 * 8 && size_of::<FlowRatios>() == 5 * 8);

impl Retrofit {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        condensing_at: CondensingAt::Bubble.number(),
        evaporating_k: 0.0,
        condensing_k: 0.0,
        superheat_k: 0.0,
        subcooling_k: 0.0,
        useful_superheat: 0.0,
        isentropic_efficiency: retrofit::DEFAULT_ISENTROPIC_EFFICIENCY,
        standstill_k: retrofit::DEFAULT_STANDSTILL_K,
        low_side_standstill_k: retrofit::DEFAULT_LOW_SIDE_STANDSTILL_K,
        high_side_design_pressure_pa: -1.0,
        low_side_design_pressure_pa: -1.0,
        highest_discharge_k: retrofit::DEFAULT_HIGHEST_DISCHARGE_K,
    };

    fn conditions(&self) -> Answer<Conditions> {
        let kelvin = |value| Temperature::from_kelvin(value).map_err(status);
        let difference = |value| TemperatureDifference::from_kelvin(value).map_err(status);
        let design = |value: f64| match value {
            -1.0 => Ok(None),
            _ => Pressure::from_pascals(value).map(Some).map_err(status),
        };
        Ok(Conditions {
            evaporating: kelvin(self.evaporating_k)?,
            condensing: kelvin(self.condensing_k)?,
            condensing_at: CondensingAt::from_number(self.condensing_at).ok_or(SATLINE_STATUS_UNKNOWN_CHOICE)?,
            superheat: difference(self.superheat_k)?,
            subcooling: difference(self.subcooling_k)?,
            useful_superheat: self.useful_superheat,
            isentropic_efficiency: self.isentropic_efficiency,
            standstill: kelvin(self.standstill_k)?,
            low_side_standstill: kelvin(self.low_side_standstill_k)?,
            high_side_design_pressure: design(self.high_side_design_pressure_pa)?,
            low_side_design_pressure: design(self.low_side_design_pressure_pa)?,
            highest_discharge: kelvin(self.highest_discharge_k)?,
        })
    }
}

impl Cycle {
    const EMPTY: Self = Self {
        evaporating_pressure_pa: 0.0,
        condensing_pressure_pa: 0.0,
        pressure_ratio: 0.0,
        evaporating_glide_k: 0.0,
        condensing_glide_k: 0.0,
        suction_temperature_k: 0.0,
        suction_density_kg_m3: 0.0,
        discharge_temperature_k: 0.0,
        discharge_density_kg_m3: 0.0,
        liquid_temperature_k: 0.0,
        liquid_density_kg_m3: 0.0,
        bubble_density_kg_m3: 0.0,
        refrigerating_effect_j_kg: 0.0,
        volumetric_capacity_j_m3: 0.0,
        coefficient_of_performance: 0.0,
        standstill_pressure_pa: 0.0,
        low_side_standstill_pressure_pa: 0.0,
    };

    fn of(cycle: &retrofit::Cycle) -> Self {
        Self {
            evaporating_pressure_pa: cycle.evaporating_pressure_pa,
            condensing_pressure_pa: cycle.condensing_pressure_pa,
            pressure_ratio: cycle.pressure_ratio,
            evaporating_glide_k: cycle.evaporating_glide_k,
            condensing_glide_k: cycle.condensing_glide_k,
            suction_temperature_k: cycle.suction_temperature_k,
            suction_density_kg_m3: cycle.suction_density_kg_m3,
            discharge_temperature_k: cycle.discharge_temperature_k,
            discharge_density_kg_m3: cycle.discharge_density_kg_m3,
            liquid_temperature_k: cycle.liquid_temperature_k,
            liquid_density_kg_m3: cycle.liquid_density_kg_m3,
            bubble_density_kg_m3: cycle.bubble_density_kg_m3,
            refrigerating_effect_j_kg: cycle.refrigerating_effect_j_kg,
            volumetric_capacity_j_m3: cycle.volumetric_capacity_j_m3,
            coefficient_of_performance: cycle.coefficient_of_performance,
            standstill_pressure_pa: cycle.standstill_pressure_pa.unwrap_or(-1.0),
            low_side_standstill_pressure_pa: cycle.low_side_standstill_pressure_pa.unwrap_or(-1.0),
        }
    }
}

impl FlowRatios {
    const EMPTY: Self = Self {
        mass_flow: 0.0,
        orifice_area: 0.0,
        suction_velocity: 0.0,
        discharge_velocity: 0.0,
        liquid_velocity: 0.0,
    };

    fn of(ratios: &retrofit::FlowRatios) -> Self {
        Self {
            mass_flow: ratios.mass_flow,
            orifice_area: ratios.orifice_area,
            suction_velocity: ratios.suction_velocity,
            discharge_velocity: ratios.discharge_velocity,
            liquid_velocity: ratios.liquid_velocity,
        }
    }
}

impl RetrofitComparison {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        outcome: 0,
        reasons: 0,
        cautions: 0,
        old_oil: 0,
        new_oil: 0,
        old_cycle: Cycle::EMPTY,
        new_cycle: Cycle::EMPTY,
        volumetric_capacity_ratio: 0.0,
        coefficient_of_performance_ratio: 0.0,
        discharge_temperature_rise_k: 0.0,
        charge_ratio: 0.0,
        at_equal_displacement: FlowRatios::EMPTY,
        at_equal_capacity: FlowRatios::EMPTY,
    };

    fn of(found: &Comparison) -> Self {
        Self {
            struct_size: Self::SIZE,
            outcome: found.outcome.number(),
            reasons: found.reason_bits(),
            cautions: found.caution_bits(),
            old_oil: found.old_oil.number(),
            new_oil: found.new_oil.number(),
            old_cycle: Cycle::of(&found.old),
            new_cycle: Cycle::of(&found.new),
            volumetric_capacity_ratio: found.volumetric_capacity_ratio,
            coefficient_of_performance_ratio: found.coefficient_of_performance_ratio,
            discharge_temperature_rise_k: found.discharge_temperature_rise_k,
            charge_ratio: found.charge_ratio,
            at_equal_displacement: FlowRatios::of(&found.at_equal_displacement),
            at_equal_capacity: FlowRatios::of(&found.at_equal_capacity),
        }
    }
}

/// Fills in what is not said. struct_size: sizeof(satline_retrofit). Not in the library for microcontrollers, nor are the
/// functions below.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_retrofit_init(conditions: *mut Retrofit, struct_size: u32) -> i32 {
    let right = struct_size == Retrofit::SIZE;
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(conditions, || if right { Ok(Retrofit::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) }) }
}

/// Empties the answer. struct_size: sizeof(satline_retrofit_comparison).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_retrofit_comparison_init(
    comparison: *mut RetrofitComparison,
    struct_size: u32,
) -> i32 {
    let right = struct_size == RetrofitComparison::SIZE;
    let empty = || if right { Ok(RetrofitComparison::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(comparison, empty) }
}

/// Compares two refrigerants in the same unit at stated conditions, and says what forbids the change: a refrigerant that
/// burns, or burns more readily, or is of higher toxicity than the one the unit was made for, and pressures above the
/// unit's plate. Show the reasons and the cautions. Changing the refrigerant of a unit is for licensed people under the
/// local code, which may forbid it.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE (also where a refrigerant has no such state, such as a condensing temperature
/// above its critical one or not above the evaporating one), SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_CONVERGED
/// (near a critical point), SATLINE_STATUS_UNKNOWN_CHOICE (condensing_at), SATLINE_STATUS_BAD_STRUCT_SIZE,
/// SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_compare_refrigerants(
    old_refrigerant: *const RefrigerantFull,
    new_refrigerant: *const RefrigerantFull,
    conditions: *const Retrofit,
    comparison: *mut RetrofitComparison,
) -> i32 {
    let compare = || -> Answer<()> {
        // SAFETY: the header asks for handles and conditions.
        let (old, new) = unsafe { (record(old_refrigerant)?, record(new_refrigerant)?) };
        // SAFETY: the same.
        let conditions = unsafe { given(conditions) }?;
        // SAFETY: the header asks for an answer that may be read and written.
        let comparison = unsafe { comparison.as_mut() }.ok_or(SATLINE_STATUS_NULL_POINTER)?;
        if conditions.struct_size != Retrofit::SIZE || comparison.struct_size != RetrofitComparison::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let found = compare_refrigerants(old.model, new.model, &conditions.conditions()?).map_err(status)?;
        *comparison = RetrofitComparison::of(&found);
        Ok(())
    };
    compare().err().unwrap_or(SATLINE_STATUS_OK)
}

/// The mass of the new refrigerant with which to start: old charge times charge ratio times share. The rest is added by
/// superheat or subcooling.
///
/// old_charge_kg: kilograms. charge_ratio: from satline_compare_refrigerants. share: of one; 0.9 is common practice.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_retrofit_starting_charge_kg(
    old_charge_kg: *const Uncertain,
    charge_ratio: f64,
    share: f64,
    charge_kg: *mut Uncertain,
) -> i32 {
    let compute = || {
        // SAFETY: the header asks for a value.
        let charge = unsafe { taken(old_charge_kg) }?;
        retrofit::starting_charge(charge, charge_ratio, share).map(Uncertain::of).map_err(status)
    };
    // SAFETY: the header asks for a pointer that may be written.
    unsafe { answer(charge_kg, compute) }
}
