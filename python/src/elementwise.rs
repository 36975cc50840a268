//! One number or whole arrays: the rule that every function of the package follows.
//!
//! Numbers (Python or numpy scalars) give a `float`. Anything array-like gives a new `float64` array of the broadcast
//! shape in C order. Arrays are first copied, so the computation works in place on memory that nobody else can see and
//! can let other threads run meanwhile.

use numpy::{PyArrayDyn, PyArrayMethods, PyUntypedArray, PyUntypedArrayMethods, dtype};
use pyo3::exceptions::PyTypeError;
use pyo3::prelude::*;
use pyo3::sync::PyOnceLock;
use pyo3::types::{PyBool, PyDict, PyFloat, PyInt, PyTuple};
use satline::Error;

use crate::raise::{Place, raise};

/// What stands behind the mask where a cell has no answer: outside every accepted range, so that it cannot pass for one.
pub const MASKED: f64 = 1e20;

enum Values<'py> {
    Scalar(f64),
    Array(Bound<'py, PyUntypedArray>),
}

/// Applies `function` to every element.
pub fn one<'py>(
    argument: &Bound<'py, PyAny>,
    name: &str,
    function: impl Fn(f64) -> Result<f64, Error> + Sync,
) -> PyResult<Bound<'py, PyAny>> {
    match values(argument, name)? {
        Values::Scalar(value) => number(argument.py(), function(value)),
        Values::Array(array) => each(&array, function),
    }
}

/// Applies `function` to every pair of elements, after broadcasting.
pub fn two<'py>(
    (left, left_name): (&Bound<'py, PyAny>, &str),
    (right, right_name): (&Bound<'py, PyAny>, &str),
    function: impl Fn(f64, f64) -> Result<f64, Error> + Sync,
) -> PyResult<Bound<'py, PyAny>> {
    match (values(left, left_name)?, values(right, right_name)?) {
        (Values::Scalar(left), Values::Scalar(right_value)) => number(right.py(), function(left, right_value)),
        (Values::Array(left), Values::Scalar(right)) => each(&left, |left| function(left, right)),
        (Values::Scalar(left), Values::Array(right)) => each(&right, |right| function(left, right)),
        (Values::Array(left), Values::Array(right)) => each_pair(&left, &right, function),
    }
}

/// As [`two`], for a function that may have no answer: None for numbers, a masked cell in arrays.
pub fn two_or_none<'py>(
    (left, left_name): (&Bound<'py, PyAny>, &str),
    (right, right_name): (&Bound<'py, PyAny>, &str),
    function: impl Fn(f64, f64) -> Result<Option<f64>, Error> + Sync,
) -> PyResult<Bound<'py, PyAny>> {
    let py = left.py();
    let (left, right) = (values(left, left_name)?, values(right, right_name)?);
    if let (Values::Scalar(left), Values::Scalar(right)) = (&left, &right) {
        let result = function(*left, *right).map_err(|error| raise(py, &error, &Place::default()))?;
        return Ok(result.into_pyobject(py)?.into_any());
    }
    let (left, right) = (as_array(py, left)?, as_array(py, right)?);
    let result = each_pair(&left, &right, |left, right| Ok(function(left, right)?.unwrap_or(MASKED)))?;
    masked(result.as_any())
}

/// Masks the cells of an array that hold [`MASKED`], with a mask of the full shape even where nothing is masked.
pub fn masked<'py>(array: &Bound<'py, PyAny>) -> PyResult<Bound<'py, PyAny>> {
    let py = array.py();
    let options = PyDict::new(py);
    options.set_item("mask", numpy(py, "equal")?.call1((array, MASKED))?)?;
    options.set_item("fill_value", MASKED)?;
    numpy(py, "ma")?.getattr("MaskedArray")?.call((array,), Some(&options))
}

/// What a function of two arguments gave that is more than a number.
pub enum Outcome<T> {
    One(T),
    /// In C order of the broadcast shape.
    Many {
        shape: Vec<usize>,
        items: Vec<T>,
    },
}

/// Applies `function` to every pair of elements, after broadcasting, whatever it gives.
pub fn two_to<T: Send>(
    (left, left_name): (&Bound<'_, PyAny>, &str),
    (right, right_name): (&Bound<'_, PyAny>, &str),
    function: impl Fn(f64, f64) -> Result<T, Error> + Sync,
) -> PyResult<Outcome<T>> {
    let py = left.py();
    let (left, right) = (values(left, left_name)?, values(right, right_name)?);
    if let (Values::Scalar(left), Values::Scalar(right)) = (&left, &right) {
        let result = function(*left, *right).map_err(|error| raise(py, &error, &Place::default()))?;
        return Ok(Outcome::One(result));
    }
    let (left, right) = (as_array(py, left)?, as_array(py, right)?);
    let shape = broadcast_shape(&left, &right)?;
    let (left, right) = (private_copy(&left, &shape)?.readonly(), private_copy(&right, &shape)?.readonly());
    let (left, right) = (left.as_slice()?, right.as_slice()?);
    let items = py.detach(|| {
        let pairs = left.iter().zip(right).enumerate();
        pairs.map(|(position, (left, right))| function(*left, *right).map_err(|error| (position, error))).collect()
    });
    match items {
        Ok(items) => Ok(Outcome::Many { shape, items }),
        Err((position, error)) => {
            Err(raise(py, &error, &Place { index: Some(unravel(position, &shape)), ..Place::default() }))
        }
    }
}

/// Applies `function` to all arguments together, however many, element by element after broadcasting.
pub fn all_to<T: Send>(
    arguments: &[(&Bound<'_, PyAny>, &str)],
    function: impl Fn(&[f64]) -> Result<T, Error> + Sync,
) -> PyResult<Outcome<T>> {
    let Some((first, _)) = arguments.first() else { return Err(PyTypeError::new_err("no argument is given")) };
    let py = first.py();
    let given = arguments.iter().map(|(argument, name)| values(argument, name)).collect::<PyResult<Vec<_>>>()?;
    let numbers: Option<Vec<f64>> =
        given.iter().map(|value| if let Values::Scalar(value) = value { Some(*value) } else { None }).collect();
    if let Some(numbers) = numbers {
        let result = function(&numbers).map_err(|error| raise(py, &error, &Place::default()))?;
        return Ok(Outcome::One(result));
    }
    let arrays = given.into_iter().map(|value| as_array(py, value)).collect::<PyResult<Vec<_>>>()?;
    let shapes = arrays.iter().map(|array| PyTuple::new(py, array.shape())).collect::<PyResult<Vec<_>>>()?;
    let shape: Vec<usize> = numpy(py, "broadcast_shapes")?.call1(PyTuple::new(py, shapes)?)?.extract()?;
    let copies =
        arrays.iter().map(|array| Ok(private_copy(array, &shape)?.readonly())).collect::<PyResult<Vec<_>>>()?;
    let columns = copies.iter().map(|copy| Ok(copy.as_slice()?)).collect::<PyResult<Vec<&[f64]>>>()?;
    let count = shape.iter().product();
    let items = py.detach(|| {
        let mut row = Vec::with_capacity(columns.len());
        let mut items = Vec::with_capacity(count);
        for position in 0..count {
            row.clear();
            row.extend(columns.iter().filter_map(|column| column.get(position)));
            items.push(function(&row).map_err(|error| (position, error))?);
        }
        Ok(items)
    });
    match items {
        Ok(items) => Ok(Outcome::Many { shape, items }),
        Err((position, error)) => {
            Err(raise(py, &error, &Place { index: Some(unravel(position, &shape)), ..Place::default() }))
        }
    }
}

fn number(py: Python<'_>, result: Result<f64, Error>) -> PyResult<Bound<'_, PyAny>> {
    match result {
        Ok(value) => Ok(PyFloat::new(py, value).into_any()),
        Err(error) => Err(raise(py, &error, &Place::default())),
    }
}

fn each<'py>(
    array: &Bound<'py, PyUntypedArray>,
    function: impl Fn(f64) -> Result<f64, Error> + Sync,
) -> PyResult<Bound<'py, PyAny>> {
    let result = private_copy(array, array.shape())?;
    in_place(&result, |cells| {
        for (position, cell) in cells.iter_mut().enumerate() {
            *cell = function(*cell).map_err(|error| (position, error))?;
        }
        Ok(())
    })?;
    Ok(result.into_any())
}

fn each_pair<'py>(
    left: &Bound<'py, PyUntypedArray>,
    right: &Bound<'py, PyUntypedArray>,
    function: impl Fn(f64, f64) -> Result<f64, Error> + Sync,
) -> PyResult<Bound<'py, PyAny>> {
    let shape = broadcast_shape(left, right)?;
    let result = private_copy(left, &shape)?;
    let right = private_copy(right, &shape)?.readonly();
    let right = right.as_slice()?;
    in_place(&result, |cells| {
        for (position, (cell, right)) in cells.iter_mut().zip(right).enumerate() {
            *cell = function(*cell, *right).map_err(|error| (position, error))?;
        }
        Ok(())
    })?;
    Ok(result.into_any())
}

/// Runs `work` on the cells of an array of our own, with other Python threads running meanwhile; an error comes with
/// the position of its element.
fn in_place<'py>(
    array: &Bound<'py, PyArrayDyn<f64>>,
    work: impl FnOnce(&mut [f64]) -> Result<(), (usize, Error)> + Send,
) -> PyResult<()> {
    let py = array.py();
    let mut cells = array.readwrite();
    let cells = cells.as_slice_mut()?;
    py.detach(|| work(cells)).map_err(|(position, error)| {
        let index = Some(unravel(position, array.shape()));
        raise(py, &error, &Place { index, ..Place::default() })
    })
}

/// The place of an element counted in C order.
fn unravel(position: usize, shape: &[usize]) -> Vec<usize> {
    let mut rest = position;
    let mut index: Vec<usize> = shape
        .iter()
        .rev()
        .map(|length| {
            let length = (*length).max(1);
            let place = rest % length;
            rest /= length;
            place
        })
        .collect();
    index.reverse();
    index
}

/// A number, or a numeric array of any dtype and layout.
fn values<'py>(argument: &Bound<'py, PyAny>, name: &str) -> PyResult<Values<'py>> {
    let py = argument.py();
    let refuse =
        |what: &str| PyTypeError::new_err(format!("{name}: a number or an array of numbers is needed, not {what}"));
    if argument.is_instance_of::<PyFloat>()
        || (argument.is_instance_of::<PyInt>() && !argument.is_instance_of::<PyBool>())
    {
        return argument.extract().map(Values::Scalar);
    }
    if is_masked(argument)? {
        return Err(refuse("a masked array with masked cells (take .compressed() or choose the cells first)"));
    }
    let array = numpy(py, "asarray")?.call1((argument,))?.cast_into::<PyUntypedArray>()?;
    let kind: String = array.dtype().getattr("kind")?.extract()?;
    // Text would be parsed, complex numbers cut and booleans counted: none of them is a measurement.
    if !matches!(kind.as_str(), "f" | "i" | "u") {
        let dtype = array.dtype().str()?;
        return Err(refuse(&format!("{} ({dtype})", argument.get_type().name()?)));
    }
    if array.ndim() == 0 && !argument.is_instance_of::<PyUntypedArray>() {
        return array.call_method0("__float__")?.extract().map(Values::Scalar);
    }
    Ok(Values::Array(array))
}

fn as_array<'py>(py: Python<'py>, values: Values<'py>) -> PyResult<Bound<'py, PyUntypedArray>> {
    match values {
        Values::Array(array) => Ok(array),
        Values::Scalar(value) => Ok(numpy(py, "asarray")?.call1((value,))?.cast_into()?),
    }
}

fn is_masked(argument: &Bound<'_, PyAny>) -> PyResult<bool> {
    let ma = numpy(argument.py(), "ma")?;
    if !argument.is_instance(&ma.getattr("MaskedArray")?)? {
        return Ok(false);
    }
    ma.call_method1("is_masked", (argument,))?.extract()
}

fn broadcast_shape(left: &Bound<'_, PyUntypedArray>, right: &Bound<'_, PyUntypedArray>) -> PyResult<Vec<usize>> {
    let py = left.py();
    let shapes = (PyTuple::new(py, left.shape())?, PyTuple::new(py, right.shape())?);
    numpy(py, "broadcast_shapes")?.call1(shapes)?.extract()
}

/// A new float64 array in C order of that shape.
fn private_copy<'py>(array: &Bound<'py, PyUntypedArray>, shape: &[usize]) -> PyResult<Bound<'py, PyArrayDyn<f64>>> {
    let py = array.py();
    let view = if array.shape() == shape {
        array.as_any().clone()
    } else {
        numpy(py, "broadcast_to")?.call1((array, PyTuple::new(py, shape)?))?
    };
    let options = PyDict::new(py);
    options.set_item("dtype", dtype::<f64>(py))?;
    options.set_item("order", "C")?;
    options.set_item("copy", true)?;
    Ok(numpy(py, "array")?.call((view,), Some(&options))?.cast_into()?)
}

pub fn numpy<'py>(py: Python<'py>, name: &str) -> PyResult<Bound<'py, PyAny>> {
    static NUMPY: PyOnceLock<Py<PyModule>> = PyOnceLock::new();
    NUMPY.get_or_try_init(py, || py.import("numpy").map(Bound::unbind))?.bind(py).getattr(name)
}
