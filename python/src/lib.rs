//! `satline._native`: the core as Python sees it. What users import stands in `satline/__init__.py`.

mod air;
mod capacity;
mod charge;
mod columns;
mod diagnosis;
mod elementwise;
mod frame;
mod frame_answers;
mod leak;
mod line_pressure;
mod lineset;
mod raise;
mod record;
mod refrigerant;
mod rig;
mod rig_motion;
mod rig_state;
mod safety;
mod state;
mod transport;
mod units;
mod visit;
mod visit_account;
mod visit_airflow;
mod visit_gas;
mod visit_retrofit;

use pyo3::prelude::*;
use satline::error::TABLE;

/// The shared error table: (code, name, message) of every status.
#[pyfunction]
fn error_table() -> Vec<(i32, &'static str, &'static str)> {
    TABLE.iter().map(|row| (row.code, row.name, row.message)).collect()
}

#[pymodule(name = "_native")]
fn native(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add("__version__", env!("CARGO_PKG_VERSION"))?;
    module.add_class::<refrigerant::Refrigerant>()?;
    module.add_class::<leak::AfterLeak>()?;
    module.add_class::<lineset::Tube>()?;
    module.add_function(wrap_pyfunction!(lineset::charge_per_length, module)?)?;
    module.add_function(wrap_pyfunction!(lineset::line_set_charge_parts, module)?)?;
    module.add_function(wrap_pyfunction!(refrigerant::refrigerant, module)?)?;
    module.add_function(wrap_pyfunction!(refrigerant::refrigerants, module)?)?;
    module.add_function(wrap_pyfunction!(charge::target_superheat_k, module)?)?;
    module.add_function(wrap_pyfunction!(charge::target_split_k, module)?)?;
    module.add_function(wrap_pyfunction!(diagnosis::diagnose_text, module)?)?;
    module.add_class::<frame::FrameJudge>()?;
    module.add_function(wrap_pyfunction!(diagnosis::causes, module)?)?;
    module.add_function(wrap_pyfunction!(diagnosis::check_reading, module)?)?;
    module.add_function(wrap_pyfunction!(diagnosis::reading_fields, module)?)?;
    module.add_function(wrap_pyfunction!(visit::standing_check_parts, module)?)?;
    module.add_function(wrap_pyfunction!(visit::matches_parts, module)?)?;
    module.add_function(wrap_pyfunction!(safety::largest_charge_kg, module)?)?;
    module.add_function(wrap_pyfunction!(safety::smallest_area_m2, module)?)?;
    module.add_function(wrap_pyfunction!(safety::installation_height_m, module)?)?;
    module.add_function(wrap_pyfunction!(safety::room_limit_parts, module)?)?;
    module.add_function(wrap_pyfunction!(safety::cylinder_fill_parts, module)?)?;
    module.add_function(wrap_pyfunction!(safety::cylinder_contents_kg, module)?)?;
    module.add_function(wrap_pyfunction!(safety::recovery_level_parts, module)?)?;
    module.add_function(wrap_pyfunction!(safety::caution_sentences, module)?)?;
    record::add(module)?;
    visit_account::add(module)?;
    visit_gas::add(module)?;
    module.add_function(wrap_pyfunction!(visit_retrofit::compare_refrigerants_parts, module)?)?;
    module.add_function(wrap_pyfunction!(visit_retrofit::starting_charge_kg, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::airflow_cautions, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::chart_cautions, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::performance_cautions, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::airflow_by_plenum_pressure, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::blower_table, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::fan_at_speed, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::watts_per_airflow, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::air_resistance, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::return_leakage, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::target_grid_check, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::target_grid_at, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::target_grid_compare, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::target_grid_from_text, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::approach, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::expected_capacity, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::delivered, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::gain, module)?)?;
    module.add_function(wrap_pyfunction!(visit_airflow::charge_fault_effect, module)?)?;
    module.add_function(wrap_pyfunction!(error_table, module)?)?;
    air::add(module)?;
    module.add_function(wrap_pyfunction!(capacity::circuit_capacity_parts, module)?)?;
    module.add_class::<rig::RigUnit>()?;
    module.add_class::<rig_state::RigState>()?;
    module.add_class::<rig_motion::RigMotion>()?;
    line_pressure::add(module)?;
    units::add(module)?;
    // What is public is decided in Python; a second list here would only have to be kept in step.
    module.delattr("__all__")
}
