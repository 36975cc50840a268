"""One number gives a float; arrays give float64 arrays of the broadcast shape, whatever they look like."""

import decimal
import fractions

import numpy as np
import pytest

PRESSURES = [4.1e5, 6.3e5, 9.149064e5, 1.4e6, 2.2e6, 3.1e6]


def element_by_element(function, array):
    return np.array([function(float(value)) for value in np.asarray(array).ravel()])


@pytest.mark.parametrize(
    "number", [900_000, 900_000.0, np.float64(9e5), np.float32(9e5), np.int64(900_000), np.uint32(900_000), np.longdouble(9e5)]
)
def test_a_number_gives_a_float(r410a, number):
    result = r410a.dew_temperature_k(number)
    assert type(result) is float
    assert result == r410a.dew_temperature_k(9e5)


@pytest.mark.parametrize(
    "layout",
    {
        "list": lambda a: a.tolist(),
        "tuple": lambda a: tuple(a.tolist()),
        "contiguous": lambda a: a,
        "reversed": lambda a: a[::-1],
        "strided": lambda a: np.repeat(a, 3)[::3],
        "two rows": lambda a: a.reshape(2, 3),
        "Fortran order": lambda a: np.asfortranarray(a.reshape(2, 3)),
        "transposed": lambda a: a.reshape(2, 3).T,
        "big-endian": lambda a: a.astype(">f8"),
        "integers": lambda a: a.astype(np.int64),
        "unsigned": lambda a: a.astype(np.uint32),
        "single precision": lambda a: a.astype(np.float32),
        "read-only": lambda a: np.broadcast_to(a, (4, 6)),
        "unaligned": lambda a: np.frombuffer(b"x" + a.tobytes(), np.uint8)[1:].view(np.float64),
        "empty": lambda a: a[:0],
        "empty, two axes": lambda a: np.zeros((0, 3)),
        "no axes": lambda a: np.array(a[0]),
        "masked, nothing masked": lambda a: np.ma.masked_array(a),
    }.items(),
    ids=lambda item: item[0],
)
def test_any_array(r410a, layout):
    given = layout[1](np.array(PRESSURES))
    before = np.array(given, copy=True)
    result = r410a.dew_temperature_k(given)
    assert type(result) is np.ndarray
    assert result.dtype == np.float64 and result.dtype.isnative
    assert result.shape == np.shape(given)
    assert result.flags.c_contiguous and result.flags.writeable
    assert np.array_equal(result.ravel(), element_by_element(r410a.dew_temperature_k, given))
    assert np.array_equal(before, given), "the input was changed"


@pytest.mark.parametrize(
    "left, right, shape",
    [
        ((), (3,), (3,)),
        ((3,), (), (3,)),
        ((3,), (3,), (3,)),
        ((2, 1), (3,), (2, 3)),
        ((1, 3), (2, 1), (2, 3)),
        ((4, 1, 3), (2, 1), (4, 2, 3)),
        ((0, 1), (3,), (0, 3)),
        ((), (), ()),
    ],
)
@pytest.mark.parametrize("name", ["superheat_k", "subcooling_k"])
def test_broadcasting(r410a, name, left, right, shape):
    random = np.random.default_rng(410)
    temperature = random.uniform(270.0, 330.0, left)
    pressure = random.uniform(4e5, 3e6, right)
    function = getattr(r410a, name)
    result = function(np.asarray(temperature), np.asarray(pressure))
    assert result.shape == shape and result.dtype == np.float64 and result.flags.c_contiguous
    lines, pressures = np.broadcast_arrays(temperature, pressure)
    expected = [function(float(t), float(p)) for t, p in zip(lines.ravel(), pressures.ravel(), strict=True)]
    assert np.array_equal(result.ravel(), expected)


def test_a_number_with_an_array_is_the_same_either_way(r410a):
    pressures = np.array(PRESSURES)
    assert np.array_equal(r410a.superheat_k(285.0, pressures), r410a.superheat_k(np.full(6, 285.0), pressures))
    lines = np.linspace(280.0, 300.0, 5)
    assert np.array_equal(r410a.superheat_k(lines, 9e5), r410a.superheat_k(lines, np.full(5, 9e5)))


def test_shapes_that_do_not_fit(r410a):
    with pytest.raises(ValueError, match="broadcast"):
        r410a.superheat_k([280.0, 281.0, 282.0], [9e5, 9e5])


@pytest.mark.parametrize(
    "given",
    [
        None,
        "900000",
        b"900000",
        True,
        9e5 + 0j,
        ["900000"],
        [9e5, None],
        [True, False],
        [9e5 + 0j],
        np.array(["2026-01-01"], dtype="datetime64[D]"),
        decimal.Decimal(900_000),
        fractions.Fraction(900_000),
        {"pressure": 9e5},
        object(),
        np.ma.masked_array([9e5, 8e5], mask=[False, True]),
    ],
    ids=repr,
)
def test_what_is_not_a_number_is_refused(r410a, given):
    with pytest.raises(TypeError, match="pressure_pa: a number or an array of numbers is needed"):
        r410a.dew_temperature_k(given)


def test_a_ragged_list_is_refused(r410a):
    with pytest.raises(ValueError, match="inhomogeneous"):
        r410a.dew_temperature_k([[9e5, 8e5], [9e5]])


def test_arguments_by_name(r410a):
    assert r410a.superheat_k(pressure_pa=9e5, temperature_k=285.0) == r410a.superheat_k(285.0, 9e5)
    assert r410a.bubble_pressure_pa(temperature_k=280.0) == r410a.bubble_pressure_pa(280.0)
