//! Conformance vectors: one file of arguments and results, to the bit, for every language.
//!
//! The file is made by `cargo run -p satline-tests --bin vectors`. It says nothing of whether the numbers are right
//! (other tests do); it says that Rust, C, Python and a microcontroller give the same ones.

use satline::charge::{Target, target_split, target_superheat};
use satline::quantity::{AirTemperature, Atmosphere, GaugePressure, Pressure, Temperature};
use satline::refrigerant::{self, Refrigerant};
use satline::saturation::SaturationCurves;
use satline::{Error, error::code};

/// One line of the file.
#[derive(Debug, Clone, PartialEq)]
pub struct Vector {
    /// The C function without its prefix; Python's method or function has the same name.
    pub function: String,
    /// Designation; empty for functions without a refrigerant.
    pub refrigerant: String,
    /// The arguments in the order of the C function.
    pub arguments: Vec<f64>,
    /// Status number; 0 is ok.
    pub status: i32,
    /// The result; none unless the status is ok.
    pub result: Option<f64>,
}

/// What the file's first lines say to who writes a reader.
pub const HEADER: &str = "\
# Conformance vectors. Regenerate: cargo run -p satline-tests --bin vectors (with `-- --check` to compare only).
# Columns, separated by commas:
#   function       name of the C function without satline_, and of the Python method or function
#   refrigerant    ASHRAE 34 designation, or empty where the function takes none
#   argument_1, argument_2   IEEE 754 binary64, sixteen hexadecimal digits, most significant first; the second is empty
#                  where there is one argument only. Order as in C: superheat_k(temperature_k, pressure_pa),
#                  pressure_from_gauge_pa(gauge_pa, ambient_pa), target_superheat_k(return_wet_bulb_k, outdoor_dry_bulb_k),
#                  target_split_k(return_dry_bulb_k, return_wet_bulb_k)
#   status         decimal, 0 for ok (the numbers of core/src/error.rs; 100 = the protocol has no valid test)
#   result         as the arguments; empty unless status is 0
";

/// The column names, the line after the comments.
pub const COLUMNS: &str = "function,refrigerant,argument_1,argument_2,status,result";

impl Vector {
    /// The line in the file.
    #[must_use]
    pub fn line(&self) -> String {
        let argument = |index: usize| self.arguments.get(index).copied().map(bits).unwrap_or_default();
        let (first, second, result) = (argument(0), argument(1), self.result.map(bits).unwrap_or_default());
        format!("{},{},{first},{second},{},{result}", self.function, self.refrigerant, self.status)
    }

    /// From a line of the file.
    ///
    /// # Errors
    /// The line, where it is not one.
    pub fn parse(line: &str) -> Result<Self, String> {
        let wrong = || format!("not a vector: {line}");
        let [function, refrigerant, first, second, status, result] =
            <[&str; 6]>::try_from(line.split(',').collect::<Vec<_>>()).map_err(|_| wrong())?;
        let number = |text: &str| u64::from_str_radix(text, 16).map(f64::from_bits).map_err(|_| wrong());
        let filled = [first, second].into_iter().filter(|text| !text.is_empty());
        Ok(Self {
            function: function.into(),
            refrigerant: refrigerant.into(),
            arguments: filled.map(number).collect::<Result<_, _>>()?,
            status: status.parse().map_err(|_| wrong())?,
            result: if result.is_empty() { None } else { Some(number(result)?) },
        })
    }

    /// What the library answers to a function and its arguments.
    ///
    /// # Panics
    /// On a function or a number of arguments that the interface does not have.
    #[must_use]
    pub fn compute(function: &str, refrigerant: &str, arguments: &[f64]) -> Self {
        let (status, result) = match answer(function, refrigerant, arguments) {
            Ok(Some(value)) => (code::OK, Some(value)),
            Ok(None) => (code::NO_VALID_TEST, None),
            Err(error) => (error.code(), None),
        };
        Self { function: function.into(), refrigerant: refrigerant.into(), arguments: arguments.into(), status, result }
    }
}

fn bits(value: f64) -> String {
    format!("{:016x}", value.to_bits())
}

/// The answer; `None` when there is no valid test.
fn answer(function: &str, refrigerant: &str, arguments: &[f64]) -> Result<Option<f64>, Error> {
    let record = || refrigerant::find(refrigerant);
    let curves = || record().map(|found| found.curves);
    let kelvin = Temperature::from_kelvin;
    let pascals = Pressure::from_pascals;
    let target = |target: Target| Ok(target.difference().map(|difference| difference.kelvin()));
    match (function, arguments) {
        ("bubble_pressure_pa", &[t]) => curves()?.bubble_pressure(kelvin(t)?).map(|p| Some(p.pascals())),
        ("dew_pressure_pa", &[t]) => curves()?.dew_pressure(kelvin(t)?).map(|p| Some(p.pascals())),
        ("bubble_temperature_k", &[p]) => curves()?.bubble_temperature(pascals(p)?).map(|t| Some(t.kelvin())),
        ("dew_temperature_k", &[p]) => curves()?.dew_temperature(pascals(p)?).map(|t| Some(t.kelvin())),
        ("superheat_k", &[t, p]) => curves()?.superheat(kelvin(t)?, pascals(p)?).map(|d| Some(d.kelvin())),
        ("subcooling_k", &[t, p]) => curves()?.subcooling(kelvin(t)?, pascals(p)?).map(|d| Some(d.kelvin())),
        ("saturated_liquid_density_kg_m3", &[t]) => record()?.saturated_liquid_density_kg_m3(kelvin(t)?).map(Some),
        ("saturated_vapor_density_kg_m3", &[t]) => record()?.saturated_vapor_density_kg_m3(kelvin(t)?).map(Some),
        ("saturated_liquid_enthalpy_j_kg", &[t]) => record()?.saturated_liquid_enthalpy_j_kg(kelvin(t)?).map(Some),
        ("saturated_vapor_enthalpy_j_kg", &[t]) => record()?.saturated_vapor_enthalpy_j_kg(kelvin(t)?).map(Some),
        ("pressure_from_gauge_pa", &[gauge, ambient]) => {
            let absolute =
                Pressure::from_gauge(GaugePressure::from_pascals(gauge)?, Atmosphere::from_pascals(ambient)?)?;
            Ok(Some(absolute.pascals()))
        }
        ("target_superheat_k", &[wet, outdoor]) => {
            target(target_superheat(AirTemperature::from_kelvin(wet)?, AirTemperature::from_kelvin(outdoor)?))
        }
        ("target_split_k", &[dry, wet]) => {
            target(target_split(AirTemperature::from_kelvin(dry)?, AirTemperature::from_kelvin(wet)?))
        }
        other => panic!("no such function: {other:?}"),
    }
}

/// Every vector of the file.
#[must_use]
pub fn all() -> Vec<Vector> {
    let mut vectors = Vec::new();
    for refrigerant in refrigerant::ALL {
        saturation(&mut vectors, refrigerant.curves);
        saturated(&mut vectors, refrigerant);
    }
    let mut add = |function: &str, refrigerant: &str, arguments: &[f64]| {
        vectors.push(Vector::compute(function, refrigerant, arguments));
    };
    add("dew_temperature_k", "R-999", &[800e3]);
    for gauge in [0.0, 813_581.4, 2_068_427.2, -90e3, -101_325.0, -101_324.0, -115e3, 3e7, 3.1e7, f64::NAN] {
        for ambient in [101_325.0, 83_436.5, 49e3] {
            add("pressure_from_gauge_pa", "", &[gauge, ambient]);
        }
    }
    add("pressure_from_gauge_pa", "", &[0.0, f64::INFINITY]);
    let kelvin = satline::quantity::kelvin_from_fahrenheit;
    for outdoor in [54.9, 55.0, 71.3, 88.8, 95.0, 115.0, 115.1] {
        for wet in [49.9, 50.0, 58.7, 63.99, 67.3, 76.0, 76.1] {
            add("target_superheat_k", "", &[kelvin(wet), kelvin(outdoor)]);
        }
    }
    for dry in [69.9, 70.0, 76.4, 80.0, 84.0, 84.1] {
        for wet in [49.9, 50.0, 57.3, 66.6, 76.0, 76.1] {
            add("target_split_k", "", &[kelvin(dry), kelvin(wet)]);
        }
    }
    for wrong in [f64::NAN, f64::NEG_INFINITY, 0.0, 400.0] {
        add("target_superheat_k", "", &[wrong, 300.0]);
        add("target_split_k", "", &[300.0, wrong]);
    }
    vectors
}

/// Range ends, their neighbours outside, joints of the pieces, points between, and what is no number.
fn saturation(vectors: &mut Vec<Vector>, curves: &SaturationCurves) {
    let mut add = |function: &str, arguments: &[f64]| {
        vectors.push(Vector::compute(function, curves.designation(), arguments));
    };
    for (end, line) in [("bubble", curves.bubble), ("dew", curves.dew)] {
        let (lower, upper) = (line.pressure.lower, line.pressure.upper);
        let joint = lower + 3.0 / line.pressure.steps_per_kelvin;
        let mut temperatures = around(lower, upper, joint);
        temperatures.extend([0.13, 0.39, 0.61, 0.87].map(|share| lower + share * (upper - lower)));
        for temperature in temperatures {
            add(&format!("{end}_pressure_pa"), &[temperature]);
        }
        let (lower, upper) = (line.temperature.lower, line.temperature.upper);
        // A power of two is where an octave, and so a piece, begins.
        let mut pressures = around(lower, upper, 1_048_576.0);
        // Between the geometric mean's powers without pow, whose bits are not ours to choose.
        let middle = (lower * upper).sqrt();
        pressures.extend([(lower * middle).sqrt(), middle, 0.7 * middle, (upper * middle).sqrt()]);
        for pressure in pressures {
            add(&format!("{end}_temperature_k"), &[pressure]);
        }
        let function = if end == "dew" { "superheat_k" } else { "subcooling_k" };
        for (temperature, pressure) in
            [(289.8167, middle), (300.0, upper), (250.0, lower.next_down()), (49.0, middle), (f64::NAN, middle)]
        {
            add(function, &[temperature, pressure]);
        }
    }
}

/// The same for densities and enthalpies, with fewer points: the four curves of a refrigerant are of one kind.
fn saturated(vectors: &mut Vec<Vector>, refrigerant: &Refrigerant) {
    let curves = refrigerant.properties.all();
    let functions = [
        "saturated_liquid_density_kg_m3",
        "saturated_vapor_density_kg_m3",
        "saturated_liquid_enthalpy_j_kg",
        "saturated_vapor_enthalpy_j_kg",
    ];
    for (function, curve) in functions.into_iter().zip(curves) {
        let (lower, upper) = (curve.lower, curve.upper);
        // Sixteen kelvin from the end of the line an octave of distance begins, and so a piece.
        let joint = curve.end - 16.0;
        let inside = [lower, upper, lower + 0.37 * (upper - lower), lower + 0.83 * (upper - lower)];
        let joints = [joint.next_down(), joint, joint.next_up()].into_iter().filter(|joint| *joint > lower);
        let outside = [lower.next_down(), upper.next_up(), f64::NAN];
        for temperature in inside.into_iter().chain(joints).chain(outside) {
            vectors.push(Vector::compute(function, refrigerant.designation(), &[temperature]));
        }
    }
}

fn around(lower: f64, upper: f64, joint: f64) -> Vec<f64> {
    let outside = [lower.next_down(), upper.next_up(), 0.0, -1.0, f64::NAN, f64::INFINITY, f64::NEG_INFINITY];
    let inside = [lower, lower.next_up(), upper, upper.next_down(), joint.next_down(), joint, joint.next_up()];
    [inside, outside].concat()
}

/// The whole file.
#[must_use]
pub fn file() -> String {
    let lines: Vec<_> = all().iter().map(Vector::line).collect();
    format!("{HEADER}{COLUMNS}\n{}\n", lines.join("\n"))
}

/// Reads the file's text.
///
/// # Errors
/// The first line that is not a vector.
pub fn read(text: &str) -> Result<Vec<Vector>, String> {
    let mut lines = text.lines().filter(|line| !line.starts_with('#'));
    match lines.next() {
        Some(COLUMNS) => lines.map(Vector::parse).collect(),
        other => Err(format!("not the columns: {other:?}")),
    }
}
