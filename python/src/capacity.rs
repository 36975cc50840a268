//! Capacity and efficiency from the refrigerant's side.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::capacity::{Circuit, Probe, USUAL_WORK_SHARE};
use satline::eos::Reference;

use crate::columns::{both, pairs, uncertain};
use crate::refrigerant::Refrigerant;

const ARGUMENTS: [&str; 12] = [
    "suction_pressure_pa",
    "suction_temperature_k",
    "liquid_pressure_pa",
    "liquid_temperature_k",
    "discharge_pressure_pa",
    "discharge_temperature_k",
    "coil_outlet_pressure_pa",
    "coil_outlet_temperature_k",
    "mass_flow_kg_s",
    "compressor_power_w",
    "other_power_w",
    "work_share",
];
const NAMES: [&str; 11] = [
    "mass_flow_kg_s",
    "evaporator_w",
    "line_gain_w",
    "condenser_w",
    "gas_work_w",
    "work_share",
    "pressure_ratio",
    "isentropic_efficiency",
    "overall_efficiency",
    "cop",
    "eer_btu_wh",
];

/// The capacity as the keyword arguments of its class. `given` says of discharge, coil outlet, mass flow, power and share
/// of work whether they are; the arguments are all twelve, each with its uncertainty.
#[pyfunction]
pub fn circuit_capacity_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    given: [bool; 5],
    arguments: Vec<Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    let properties = crate::state::properties(py, refrigerant.0, Reference::Iir.name())?;
    let named: Vec<_> =
        arguments.iter().zip(ARGUMENTS.iter().flat_map(|name| [*name, "standard uncertainty"])).collect();
    let [discharge, outlet, flow, power, share] = given;
    pairs(py, &named, &NAMES, |values| {
        let probe =
            |place| Probe { pressure_pa: uncertain(values, place), temperature_k: uncertain(values, place + 1) };
        let found = Circuit {
            suction: probe(0),
            liquid: probe(2),
            discharge: discharge.then(|| probe(4)),
            coil_outlet: outlet.then(|| probe(6)),
            mass_flow_kg_s: flow.then(|| uncertain(values, 8)),
            compressor_power_w: power.then(|| uncertain(values, 9)),
            other_power_w: uncertain(values, 10),
            work_share: if share { uncertain(values, 11) } else { USUAL_WORK_SHARE },
        }
        .capacity(properties)?;
        Ok(both([
            Ok(found.mass_flow_kg_s),
            Ok(found.evaporator_w),
            found.line_gain_w,
            found.condenser_w,
            found.gas_work_w,
            found.work_share,
            found.pressure_ratio,
            found.isentropic_efficiency,
            found.overall_efficiency,
            found.cop,
            found.eer_btu_wh,
        ]))
    })
}
