//! Lines: friction, lift, what a liquid line leaves of the subcooling, what a vapour line costs.

use pyo3::prelude::*;
use pyo3::types::PyDict;
use satline::Error;
use satline::eos::{Properties, Reference};
use satline::lineset::{
    self, Fitting, Fittings, Insulation, LineAdvice, LineCaution, LineEnd, LineHeat, LiquidLine, Run, Surroundings,
    Tube, VaporDuty, VaporLine,
};
use satline::uncertain::Uncertain;

use crate::columns::{Row, columns, pairs, uncertain};
use crate::elementwise::two;
use crate::raise::{Place, raise};
use crate::refrigerant::Refrigerant;

/// Adds them to the module.
pub fn add(module: &Bound<'_, PyModule>) -> PyResult<()> {
    module.add_function(wrap_pyfunction!(line_friction_factor, module)?)?;
    module.add_function(wrap_pyfunction!(line_lift, module)?)?;
    module.add_function(wrap_pyfunction!(line_mass_flow, module)?)?;
    module.add_function(wrap_pyfunction!(line_tube, module)?)?;
    module.add_function(wrap_pyfunction!(line_words, module)?)?;
    module.add_function(wrap_pyfunction!(liquid_line_parts, module)?)?;
    module.add_function(wrap_pyfunction!(vapor_line_parts, module)?)
}

#[pyfunction]
fn line_friction_factor<'py>(
    reynolds: &Bound<'py, PyAny>,
    relative_roughness: &Bound<'py, PyAny>,
) -> PyResult<Bound<'py, PyAny>> {
    two((reynolds, "reynolds"), (relative_roughness, "relative_roughness"), lineset::friction_factor)
}

/// The loss by height; saturated liquid where there is no pressure.
#[pyfunction]
fn line_lift<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    height_m: &Bound<'py, PyAny>,
    temperature_k: &Bound<'py, PyAny>,
    pressure_pa: Option<&Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    let properties = properties(py, refrigerant)?;
    let mut arguments = vec![(height_m, "height_m"), (temperature_k, "temperature_k")];
    arguments.extend(pressure_pa.map(|pressure| (pressure, "pressure_pa")));
    columns(py, &arguments, &[("loss_pa", false)], |values| match values {
        [height, temperature] => {
            Ok(vec![Some(lineset::lift_pressure_saturated_pa(properties, *height, *temperature)?)])
        }
        [height, temperature, pressure] => {
            Ok(vec![Some(lineset::lift_pressure_pa(properties, *height, *temperature, *pressure)?)])
        }
        _ => Ok(Row::new()),
    })
}

#[pyfunction]
fn line_mass_flow<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    arguments: Vec<Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    const NAMES: [&str; 5] =
        ["capacity_w", "liquid_temperature_k", "liquid_pressure_pa", "suction_temperature_k", "suction_pressure_pa"];
    let properties = properties(py, refrigerant)?;
    pairs(py, &named(&arguments, &NAMES), &["mass_flow_kg_s"], |values| {
        let at = |place| checked(values, place);
        let flow = lineset::mass_flow_kg_s(properties, at(0)?, [at(1)?, at(2)?], [at(3)?, at(4)?])?;
        Ok(vec![Some(flow.value), Some(flow.standard_uncertainty)])
    })
}

/// Inside diameter, outside diameter and standard uncertainty of the inside diameter of a tube by name.
#[pyfunction]
fn line_tube(py: Python<'_>, name: &str) -> PyResult<(f64, Option<f64>, f64)> {
    let place = Place { given: Some(name), ..Place::default() };
    let tube = Tube::named(name).map_err(|error| raise(py, &error, &place))?;
    Ok((tube.inside_diameter_m(), tube.outside_diameter_m(), tube.inside_diameter_uncertainty_m()))
}

type Words = Vec<(i32, &'static str, &'static str)>;

/// Numbers, names and sentences of advice, cautions and fittings.
#[pyfunction]
fn line_words() -> (Words, Words, Words) {
    let advice = LineAdvice::ALL.iter().map(|word| (word.number(), word.name(), word.sentence()));
    let cautions = LineCaution::ALL.iter().map(|word| (word.number(), word.name(), word.sentence()));
    let fittings = Fitting::ALL.iter().map(|word| (word.number(), word.name(), word.sentence()));
    (advice.collect(), cautions.collect(), fittings.collect())
}

/// What the way of a line is made of: inside and outside diameter with the uncertainty of the bore, and the fittings by
/// number.
type Way = ((f64, Option<f64>, Option<f64>), Vec<(i32, u32)>);

fn tube((inside, outside, bore_uncertainty): (f64, Option<f64>, Option<f64>)) -> Result<Tube, Error> {
    let tube = match outside {
        Some(outside) => Tube::from_outside_diameter_m(outside, 0.5 * (outside - inside))?,
        None => Tube::from_inside_diameter_m(inside)?,
    };
    match bore_uncertainty {
        Some(uncertainty) => tube.with_inside_diameter_uncertainty_m(uncertainty),
        None => Ok(tube),
    }
}

fn fittings(counts: &[(i32, u32)]) -> Result<Fittings, Error> {
    counts.iter().try_fold(Fittings::NONE, |sum, (number, count)| {
        let unknown = Error::UnknownChoice { field: "fitting", choices: "see satline.lineset.FITTINGS" };
        sum.with(Fitting::from_number(*number).ok_or(unknown)?, *count)
    })
}

fn properties(py: Python<'_>, refrigerant: &Refrigerant) -> PyResult<&'static Properties> {
    crate::state::properties(py, refrigerant.0, Reference::Iir.name())
}

/// The names of arguments that come as pairs of value and uncertainty.
fn named<'a, 'py>(arguments: &'a [Bound<'py, PyAny>], names: &[&'a str]) -> Vec<(&'a Bound<'py, PyAny>, &'a str)> {
    arguments.iter().zip(names.iter().flat_map(|name| [*name, "standard uncertainty"])).collect()
}

fn checked(values: &[f64], place: usize) -> Result<Uncertain, Error> {
    let given = uncertain(values, place);
    Uncertain::new(given.value, given.standard_uncertainty)
}

/// Names of columns in which a value and its uncertainty stand side by side, then of plain ones.
fn headings<'a>(uncertain: &'a [(String, bool)], plain: &[(&'a str, bool)]) -> Vec<(&'a str, bool)> {
    uncertain.iter().map(|(name, missing)| (name.as_str(), *missing)).chain(plain.iter().copied()).collect()
}

fn doubled(names: &[(&str, bool)]) -> Vec<(String, bool)> {
    names
        .iter()
        .flat_map(|(name, missing)| [((*name).to_string(), *missing), (format!("{name} ±"), *missing)])
        .collect()
}

fn both<const N: usize>(values: [Option<Uncertain>; N]) -> Row {
    let pair =
        |value: Option<Uncertain>| [value.map(|value| value.value), value.map(|value| value.standard_uncertainty)];
    values.into_iter().flat_map(pair).collect()
}

const LIQUID_ARGUMENTS: [&str; 8] = [
    "length_m",
    "rise_m",
    "mass_flow_kg_s",
    "pressure_pa",
    "temperature_k",
    "drier_drop_pa",
    "heat_gain_w",
    "equivalent_length_m",
];
const LIQUID_UNCERTAIN: [(&str, bool); 9] = [
    ("friction_pa", false),
    ("lift_pa", false),
    ("drop_pa", false),
    ("outlet_pressure_pa", false),
    ("outlet_temperature_k", false),
    ("subcooling_k", false),
    ("subcooling_left_k", false),
    ("subcooling_needed_k", false),
    ("velocity_m_s", false),
];
const LIQUID_PLAIN: [(&str, bool); 7] = [
    ("friction_k", false),
    ("lift_k", false),
    ("reynolds", false),
    ("flash_begins_m", true),
    ("flash_vapor_share", true),
    ("advice", false),
    ("cautions", false),
];

/// A liquid line as columns; values with an uncertainty have it in a column of their name and " ±".
#[pyfunction]
fn liquid_line_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    way: Way,
    arguments: Vec<Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    let properties = properties(py, refrigerant)?;
    let values = doubled(&LIQUID_UNCERTAIN);
    columns(py, &named(&arguments, &LIQUID_ARGUMENTS), &headings(&values, &LIQUID_PLAIN), |values| {
        let at = |place| checked(values, place);
        let fittings = fittings(&way.1)?.with_length_m(at(7)?.value)?;
        let run = Run { tube: tube(way.0)?, length_m: at(0)?, rise_m: at(1)?, fittings };
        let question = LiquidLine {
            drier_drop_pa: at(5)?,
            heat_gain_w: at(6)?,
            ..LiquidLine::new(properties, run, at(2)?, at(3)?, at(4)?)
        };
        let found = lineset::liquid_line(&question)?;
        let mut row = both(
            [
                found.friction_pa,
                found.lift_pa,
                found.drop_pa,
                found.outlet_pressure_pa,
                found.outlet_temperature_k,
                found.subcooling_k,
                found.subcooling_left_k,
                found.subcooling_needed_k,
                found.velocity_m_s,
            ]
            .map(Some),
        );
        row.extend([
            Some(found.friction_k),
            Some(found.lift_k),
            Some(found.reynolds),
            found.flash_begins_m,
            found.flash_vapor_share,
            Some(f64::from(found.advice_bits())),
            Some(f64::from(found.caution_bits())),
        ]);
        Ok(row)
    })
}

const VAPOR_ARGUMENTS: [&str; 14] = [
    "length_m",
    "rise_m",
    "mass_flow_kg_s",
    "pressure_pa",
    "temperature_k",
    "heat_gain_w",
    "ambient_k",
    "outside_coefficient_w_m2_k",
    "insulation_conductivity_w_m_k",
    "oil_density_kg_m3",
    "equivalent_length_m",
    "insulation_thickness_m",
    "dew_point_k",
    "discharge_pressure_pa",
];
/// Any may be missing in an array: where the vapour would condense on the way.
const VAPOR_UNCERTAIN: [(&str, bool); 19] = [
    ("friction_pa", true),
    ("lift_pa", true),
    ("acceleration_pa", true),
    ("drop_pa", true),
    ("dew_loss_k", true),
    ("inlet_pressure_pa", true),
    ("outlet_pressure_pa", true),
    ("inlet_temperature_k", true),
    ("outlet_temperature_k", true),
    ("inlet_superheat_k", true),
    ("outlet_superheat_k", true),
    ("superheat_rise_k", true),
    ("inlet_velocity_m_s", true),
    ("outlet_velocity_m_s", true),
    ("heat_w", true),
    ("temperature_rise_k", true),
    ("coldest_surface_k", true),
    ("flow_over_least", true),
    ("capacity_loss", true),
];
const VAPOR_PLAIN: [(&str, bool); 6] = [
    ("least_mass_flow_kg_s", true),
    ("least_velocity_m_s", true),
    ("reynolds", true),
    ("sweats", true),
    ("advice", true),
    ("cautions", true),
];

/// A vapour line as columns. `from_air`, `dew_point` and `discharge` say whether these arguments count.
#[pyfunction]
fn vapor_line_parts<'py>(
    py: Python<'py>,
    refrigerant: &Refrigerant,
    way: Way,
    duty: (&str, bool),
    given: (bool, bool, bool),
    clearance: f64,
    arguments: Vec<Bound<'py, PyAny>>,
) -> PyResult<Bound<'py, PyDict>> {
    let properties = properties(py, refrigerant)?;
    let (duty, at_inlet) = duty;
    let duty = VaporDuty::ALL.iter().copied().find(|known| known.name() == duty).unwrap_or(VaporDuty::Suction);
    let (from_air, dew_point, discharge) = given;
    let values = doubled(&VAPOR_UNCERTAIN);
    columns(py, &named(&arguments, &VAPOR_ARGUMENTS), &headings(&values, &VAPOR_PLAIN), |values| {
        let at = |place| checked(values, place);
        let fittings = fittings(&way.1)?.with_length_m(at(10)?.value)?;
        let run = Run { tube: tube(way.0)?, length_m: at(0)?, rise_m: at(1)?, fittings };
        let thickness_m = at(11)?.value;
        let heat = if from_air {
            LineHeat::From(Surroundings {
                ambient_k: at(6)?,
                dew_point_k: if dew_point { Some(at(12)?.value) } else { None },
                outside_coefficient_w_m2_k: at(7)?,
                insulation: if thickness_m == 0.0 {
                    None
                } else {
                    Some(Insulation { thickness_m, conductivity_w_m_k: at(8)? })
                },
            })
        } else {
            LineHeat::Power(at(5)?)
        };
        let known_at = if at_inlet { LineEnd::Inlet } else { LineEnd::Outlet };
        let question = VaporLine {
            heat,
            oil_density_kg_m3: at(9)?,
            discharge_pressure_pa: if discharge { Some(at(13)?.value) } else { None },
            clearance,
            ..VaporLine::new(properties, duty, run, at(2)?, known_at, at(3)?, at(4)?)
        };
        let found = lineset::vapor_line(&question)?;
        let mut row = both([
            Some(found.friction_pa),
            Some(found.lift_pa),
            Some(found.acceleration_pa),
            Some(found.drop_pa),
            found.dew_loss_k,
            Some(found.inlet_pressure_pa),
            Some(found.outlet_pressure_pa),
            Some(found.inlet_temperature_k),
            Some(found.outlet_temperature_k),
            found.inlet_superheat_k,
            found.outlet_superheat_k,
            found.heat.superheat_rise_k,
            Some(found.inlet_velocity_m_s),
            Some(found.outlet_velocity_m_s),
            Some(found.heat.heat_w),
            Some(found.heat.temperature_rise_k),
            found.heat.coldest_surface_k,
            found.riser.map(|riser| riser.flow_over_least),
            found.capacity_loss,
        ]);
        row.extend([
            found.riser.map(|riser| riser.least_mass_flow_kg_s),
            found.riser.map(|riser| riser.least_velocity_m_s),
            Some(found.reynolds),
            found.heat.sweats.map(|sweats| f64::from(u8::from(sweats))),
            Some(f64::from(found.advice_bits())),
            Some(f64::from(found.caution_bits())),
        ]);
        Ok(row)
    })
}
