//! Capacity from the refrigerant's side in C.

use crate::answer::{Answer, answer, given, status};
use crate::full::{RefrigerantFull, record};
use crate::generated::codes::{
    SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_OK, SATLINE_STATUS_UNKNOWN_CHOICE,
};
use satline::Error;
use satline::capacity::{self, Probe, USUAL_WORK_SHARE};
use satline::eos::{Properties, Reference};
use satline::uncertain::Uncertain;

/// Bit of satline_circuit.given: the discharge is given.
pub const SATLINE_CIRCUIT_GIVEN_DISCHARGE: u32 = 1;
/// Bit of satline_circuit.given: the coil's outlet is given.
pub const SATLINE_CIRCUIT_GIVEN_COIL_OUTLET: u32 = 2;
/// Bit of satline_circuit.given: the mass flow is given.
pub const SATLINE_CIRCUIT_GIVEN_MASS_FLOW: u32 = 4;
/// Bit of satline_circuit.given: the compressor's power is given.
pub const SATLINE_CIRCUIT_GIVEN_COMPRESSOR_POWER: u32 = 8;

/// Bit of satline_circuit_capacity.defined: line_gain_w is set.
pub const SATLINE_CIRCUIT_DEFINED_LINE_GAIN_W: u32 = 1;
/// Bit of satline_circuit_capacity.defined: condenser_w is set.
pub const SATLINE_CIRCUIT_DEFINED_CONDENSER_W: u32 = 2;
/// Bit of satline_circuit_capacity.defined: gas_work_w is set.
pub const SATLINE_CIRCUIT_DEFINED_GAS_WORK_W: u32 = 4;
/// Bit of satline_circuit_capacity.defined: work_share is set.
pub const SATLINE_CIRCUIT_DEFINED_WORK_SHARE: u32 = 8;
/// Bit of satline_circuit_capacity.defined: pressure_ratio is set.
pub const SATLINE_CIRCUIT_DEFINED_PRESSURE_RATIO: u32 = 16;
/// Bit of satline_circuit_capacity.defined: isentropic_efficiency is set.
pub const SATLINE_CIRCUIT_DEFINED_ISENTROPIC_EFFICIENCY: u32 = 32;
/// Bit of satline_circuit_capacity.defined: overall_efficiency is set.
pub const SATLINE_CIRCUIT_DEFINED_OVERALL_EFFICIENCY: u32 = 64;
/// Bit of satline_circuit_capacity.defined: cop is set.
pub const SATLINE_CIRCUIT_DEFINED_COP: u32 = 128;
/// Bit of satline_circuit_capacity.defined: eer_btu_wh is set.
pub const SATLINE_CIRCUIT_DEFINED_EER_BTU_WH: u32 = 256;

/// What was measured at the circuit in cooling: suction and liquid, and a mass flow or the compressor's power with the
/// discharge. Start with satline_circuit_init. Every ..._uncertainty is one standard uncertainty of the member above it.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct Circuit {
    /// sizeof(satline_circuit), set by satline_circuit_init.
    pub struct_size: u32,
    /// SATLINE_CIRCUIT_GIVEN_... bits.
    pub given: u32,
    /// At the suction (vapour) port: pascals, absolute.
    pub suction_pressure_pa: f64,
    pub suction_pressure_pa_uncertainty: f64,
    /// Kelvin.
    pub suction_temperature_k: f64,
    pub suction_temperature_k_uncertainty: f64,
    /// At the liquid port: pascals, absolute.
    pub liquid_pressure_pa: f64,
    pub liquid_pressure_pa_uncertainty: f64,
    /// Kelvin.
    pub liquid_temperature_k: f64,
    pub liquid_temperature_k_uncertainty: f64,
    /// At the compressor's outlet: pascals, absolute.
    pub discharge_pressure_pa: f64,
    pub discharge_pressure_pa_uncertainty: f64,
    /// Kelvin.
    pub discharge_temperature_k: f64,
    pub discharge_temperature_k_uncertainty: f64,
    /// At the indoor coil's outlet: pascals, absolute.
    pub coil_outlet_pressure_pa: f64,
    pub coil_outlet_pressure_pa_uncertainty: f64,
    /// Kelvin.
    pub coil_outlet_temperature_k: f64,
    pub coil_outlet_temperature_k_uncertainty: f64,
    /// Mass flow of refrigerant, kilograms a second.
    pub mass_flow_kg_s: f64,
    pub mass_flow_kg_s_uncertainty: f64,
    /// Electric power of the compressor, watts.
    pub compressor_power_w: f64,
    pub compressor_power_w_uncertainty: f64,
    /// Electric power of blower, fan and controls, watts: counted in COP and EER.
    pub other_power_w: f64,
    pub other_power_w_uncertainty: f64,
    /// The share of the compressor's power that stays in the gas, used without a mass flow; 0.9 with an uncertainty of 0.058
    /// by satline_circuit_init.
    pub work_share: f64,
    pub work_share_uncertainty: f64,
}

/// Capacity and efficiency. Start with satline_circuit_capacity_init. What was not measured, or contradicts itself, is 0
/// and its bit of defined not set. The uncertainty of the equation of state is not in the uncertainties.
#[repr(C)]
#[derive(Clone, Copy)]
pub struct CircuitCapacity {
    /// sizeof(satline_circuit_capacity), set by satline_circuit_capacity_init.
    pub struct_size: u32,
    /// SATLINE_CIRCUIT_DEFINED_... bits.
    pub defined: u32,
    /// Mass flow of refrigerant.
    pub mass_flow_kg_s: f64,
    pub mass_flow_kg_s_uncertainty: f64,
    /// Heat taken up from the liquid port to the coil's outlet, or to the suction port where that is not given: then the heat
    /// that the suction line gains is in it.
    pub evaporator_w: f64,
    pub evaporator_w_uncertainty: f64,
    /// Heat that the suction line gained.
    pub line_gain_w: f64,
    pub line_gain_w_uncertainty: f64,
    /// Heat given up from discharge to liquid port.
    pub condenser_w: f64,
    pub condenser_w_uncertainty: f64,
    /// Work that stayed in the gas.
    pub gas_work_w: f64,
    pub gas_work_w_uncertainty: f64,
    /// Where the mass flow was measured: work that stayed in the gas over the compressor's power.
    pub work_share: f64,
    pub work_share_uncertainty: f64,
    /// Discharge over suction pressure, absolute.
    pub pressure_ratio: f64,
    pub pressure_ratio_uncertainty: f64,
    /// Enthalpy rise of an ideal compressor over the rise found.
    pub isentropic_efficiency: f64,
    pub isentropic_efficiency_uncertainty: f64,
    /// Power of an ideal compressor for this mass flow over the compressor's electric power.
    pub overall_efficiency: f64,
    pub overall_efficiency_uncertainty: f64,
    /// Evaporator capacity over electric power.
    pub cop: f64,
    pub cop_uncertainty: f64,
    /// The same in Btu an hour to a watt.
    pub eer_btu_wh: f64,
    pub eer_btu_wh_uncertainty: f64,
}

// Their layouts are part of the binary interface.
const _: () = assert!(size_of::<Circuit>() == 8 + 24 * 8 && size_of::<CircuitCapacity>() == 8 + 22 * 8);

impl Circuit {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        given: 0,
        suction_pressure_pa: 0.0,
        suction_pressure_pa_uncertainty: 0.0,
        suction_temperature_k: 0.0,
        suction_temperature_k_uncertainty: 0.0,
        liquid_pressure_pa: 0.0,
        liquid_pressure_pa_uncertainty: 0.0,
        liquid_temperature_k: 0.0,
        liquid_temperature_k_uncertainty: 0.0,
        discharge_pressure_pa: 0.0,
        discharge_pressure_pa_uncertainty: 0.0,
        discharge_temperature_k: 0.0,
        discharge_temperature_k_uncertainty: 0.0,
        coil_outlet_pressure_pa: 0.0,
        coil_outlet_pressure_pa_uncertainty: 0.0,
        coil_outlet_temperature_k: 0.0,
        coil_outlet_temperature_k_uncertainty: 0.0,
        mass_flow_kg_s: 0.0,
        mass_flow_kg_s_uncertainty: 0.0,
        compressor_power_w: 0.0,
        compressor_power_w_uncertainty: 0.0,
        other_power_w: 0.0,
        other_power_w_uncertainty: 0.0,
        work_share: 0.0,
        work_share_uncertainty: 0.0,
    };

    fn measured(&self) -> Answer<capacity::Circuit> {
        if self.struct_size != Self::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        if self.given > 15 {
            return Err(SATLINE_STATUS_UNKNOWN_CHOICE);
        }
        let has = |bit: u32| self.given & bit != 0;
        let at = |pressure: f64, pressure_uncertainty: f64, temperature: f64, temperature_uncertainty: f64| Probe {
            pressure_pa: with(pressure, pressure_uncertainty),
            temperature_k: with(temperature, temperature_uncertainty),
        };
        let suction = at(
            self.suction_pressure_pa,
            self.suction_pressure_pa_uncertainty,
            self.suction_temperature_k,
            self.suction_temperature_k_uncertainty,
        );
        let liquid = at(
            self.liquid_pressure_pa,
            self.liquid_pressure_pa_uncertainty,
            self.liquid_temperature_k,
            self.liquid_temperature_k_uncertainty,
        );
        let discharge = at(
            self.discharge_pressure_pa,
            self.discharge_pressure_pa_uncertainty,
            self.discharge_temperature_k,
            self.discharge_temperature_k_uncertainty,
        );
        let coil_outlet = at(
            self.coil_outlet_pressure_pa,
            self.coil_outlet_pressure_pa_uncertainty,
            self.coil_outlet_temperature_k,
            self.coil_outlet_temperature_k_uncertainty,
        );
        Ok(capacity::Circuit {
            suction,
            liquid,
            discharge: has(SATLINE_CIRCUIT_GIVEN_DISCHARGE).then_some(discharge),
            coil_outlet: has(SATLINE_CIRCUIT_GIVEN_COIL_OUTLET).then_some(coil_outlet),
            mass_flow_kg_s: has(SATLINE_CIRCUIT_GIVEN_MASS_FLOW)
                .then_some(with(self.mass_flow_kg_s, self.mass_flow_kg_s_uncertainty)),
            compressor_power_w: has(SATLINE_CIRCUIT_GIVEN_COMPRESSOR_POWER)
                .then_some(with(self.compressor_power_w, self.compressor_power_w_uncertainty)),
            other_power_w: with(self.other_power_w, self.other_power_w_uncertainty),
            work_share: with(self.work_share, self.work_share_uncertainty),
        })
    }
}

/// A value with its uncertainty as given; the core checks both.
const fn with(value: f64, standard_uncertainty: f64) -> Uncertain {
    Uncertain { value, standard_uncertainty }
}

/// What is available, else 0.
fn known(value: &Result<Uncertain, Error>) -> Uncertain {
    value.unwrap_or(Uncertain::exact(0.0))
}

impl CircuitCapacity {
    const SIZE: u32 = size_of::<Self>() as u32;

    const EMPTY: Self = Self {
        struct_size: Self::SIZE,
        defined: 0,
        mass_flow_kg_s: 0.0,
        mass_flow_kg_s_uncertainty: 0.0,
        evaporator_w: 0.0,
        evaporator_w_uncertainty: 0.0,
        line_gain_w: 0.0,
        line_gain_w_uncertainty: 0.0,
        condenser_w: 0.0,
        condenser_w_uncertainty: 0.0,
        gas_work_w: 0.0,
        gas_work_w_uncertainty: 0.0,
        work_share: 0.0,
        work_share_uncertainty: 0.0,
        pressure_ratio: 0.0,
        pressure_ratio_uncertainty: 0.0,
        isentropic_efficiency: 0.0,
        isentropic_efficiency_uncertainty: 0.0,
        overall_efficiency: 0.0,
        overall_efficiency_uncertainty: 0.0,
        cop: 0.0,
        cop_uncertainty: 0.0,
        eer_btu_wh: 0.0,
        eer_btu_wh_uncertainty: 0.0,
    };

    fn of(found: &capacity::CircuitCapacity) -> Self {
        let optional = [
            (&found.line_gain_w, SATLINE_CIRCUIT_DEFINED_LINE_GAIN_W),
            (&found.condenser_w, SATLINE_CIRCUIT_DEFINED_CONDENSER_W),
            (&found.gas_work_w, SATLINE_CIRCUIT_DEFINED_GAS_WORK_W),
            (&found.work_share, SATLINE_CIRCUIT_DEFINED_WORK_SHARE),
            (&found.pressure_ratio, SATLINE_CIRCUIT_DEFINED_PRESSURE_RATIO),
            (&found.isentropic_efficiency, SATLINE_CIRCUIT_DEFINED_ISENTROPIC_EFFICIENCY),
            (&found.overall_efficiency, SATLINE_CIRCUIT_DEFINED_OVERALL_EFFICIENCY),
            (&found.cop, SATLINE_CIRCUIT_DEFINED_COP),
            (&found.eer_btu_wh, SATLINE_CIRCUIT_DEFINED_EER_BTU_WH),
        ];
        let defined = optional.iter().filter(|(value, _)| value.is_ok()).fold(0, |bits, (_, bit)| bits | bit);
        Self {
            struct_size: Self::SIZE,
            defined,
            mass_flow_kg_s: found.mass_flow_kg_s.value,
            mass_flow_kg_s_uncertainty: found.mass_flow_kg_s.standard_uncertainty,
            evaporator_w: found.evaporator_w.value,
            evaporator_w_uncertainty: found.evaporator_w.standard_uncertainty,
            line_gain_w: known(&found.line_gain_w).value,
            line_gain_w_uncertainty: known(&found.line_gain_w).standard_uncertainty,
            condenser_w: known(&found.condenser_w).value,
            condenser_w_uncertainty: known(&found.condenser_w).standard_uncertainty,
            gas_work_w: known(&found.gas_work_w).value,
            gas_work_w_uncertainty: known(&found.gas_work_w).standard_uncertainty,
            work_share: known(&found.work_share).value,
            work_share_uncertainty: known(&found.work_share).standard_uncertainty,
            pressure_ratio: known(&found.pressure_ratio).value,
            pressure_ratio_uncertainty: known(&found.pressure_ratio).standard_uncertainty,
            isentropic_efficiency: known(&found.isentropic_efficiency).value,
            isentropic_efficiency_uncertainty: known(&found.isentropic_efficiency).standard_uncertainty,
            overall_efficiency: known(&found.overall_efficiency).value,
            overall_efficiency_uncertainty: known(&found.overall_efficiency).standard_uncertainty,
            cop: known(&found.cop).value,
            cop_uncertainty: known(&found.cop).standard_uncertainty,
            eer_btu_wh: known(&found.eer_btu_wh).value,
            eer_btu_wh_uncertainty: known(&found.eer_btu_wh).standard_uncertainty,
        }
    }
}

/// Empties what was measured, with the usual share of work. struct_size: sizeof(satline_circuit). Not in the library for
/// microcontrollers, nor are the functions below.
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_circuit_init(circuit: *mut Circuit, struct_size: u32) -> i32 {
    let usual = Circuit {
        work_share: USUAL_WORK_SHARE.value,
        work_share_uncertainty: USUAL_WORK_SHARE.standard_uncertainty,
        ..Circuit::EMPTY
    };
    let empty = || if struct_size == Circuit::SIZE { Ok(usual) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(circuit, empty) }
}

/// Empties a capacity. struct_size: sizeof(satline_circuit_capacity).
///
/// Status: SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_circuit_capacity_init(capacity: *mut CircuitCapacity, struct_size: u32) -> i32 {
    let right = struct_size == CircuitCapacity::SIZE;
    let empty = || if right { Ok(CircuitCapacity::EMPTY) } else { Err(SATLINE_STATUS_BAD_STRUCT_SIZE) };
    // SAFETY: the header asks for a pointer that may be written for struct_size bytes.
    unsafe { answer(capacity, empty) }
}

/// Capacity and efficiency in cooling from pressures and temperatures at the ports, and a mass flow or the compressor's
/// power with the discharge.
///
/// Not available: neither mass flow nor power with discharge; a suction line not warmer than its dew temperature (liquid
/// comes back); a liquid line with vapour in it; discharge gas that contradicts the suction gas. Out of range: a liquid line
/// in which there can only be vapour, a discharge colder than its dew temperature or not above the suction pressure.
///
/// Status: SATLINE_STATUS_OUT_OF_RANGE, SATLINE_STATUS_NOT_FINITE, SATLINE_STATUS_NOT_AVAILABLE,
/// SATLINE_STATUS_NOT_CONVERGED, SATLINE_STATUS_UNKNOWN_CHOICE (a bit of given that is none),
/// SATLINE_STATUS_BAD_STRUCT_SIZE, SATLINE_STATUS_NULL_POINTER, SATLINE_STATUS_VERSION_MISMATCH.
#[unsafe(no_mangle)]
pub unsafe extern "C" fn satline_circuit_capacity_of(
    refrigerant: *const RefrigerantFull,
    circuit: *const Circuit,
    capacity: *mut CircuitCapacity,
) -> i32 {
    let found = || -> Answer<()> {
        // SAFETY: the header asks for a handle and what was measured, and for a capacity whose first member may be read.
        let (record, circuit, place) =
            unsafe { (record(refrigerant)?, given(circuit)?, capacity.as_mut().ok_or(SATLINE_STATUS_NULL_POINTER)?) };
        if place.struct_size != CircuitCapacity::SIZE {
            return Err(SATLINE_STATUS_BAD_STRUCT_SIZE);
        }
        let properties = Properties::of(record.model, Reference::Iir).map_err(status)?;
        *place = CircuitCapacity::of(&circuit.measured()?.capacity(&properties).map_err(status)?);
        Ok(())
    };
    found().err().unwrap_or(SATLINE_STATUS_OK)
}
