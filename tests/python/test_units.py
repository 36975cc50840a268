"""Conversions against published definitions (NIST SP 811, 2008 edition), worked by hand."""

import math

import numpy as np
import pytest

import satline
from satline import units

PAIRS = [
    # function, given, expected
    (units.kelvin_from_fahrenheit, 32.0, 273.15),
    (units.kelvin_from_fahrenheit, 212.0, 373.15),
    (units.fahrenheit_from_kelvin, 373.15, 212.0),
    (units.kelvin_from_celsius, 25.0, 298.15),
    (units.celsius_from_kelvin, 298.15, 25.0),
    (units.kelvin_difference_from_fahrenheit, 10.0, 50.0 / 9.0),
    (units.fahrenheit_difference_from_kelvin, 5.0, 9.0),
    (units.pascal_from_psia, 1.0, 6894.757293168361),
    (units.psia_from_pascal, 101_325.0, 14.695948775513),
    (units.ambient_pascal_from_inch_of_mercury, 29.921, 29.921 * 3386.389),
    (units.m3_s_from_cfm, 1200.0, 0.56633693184),
    (units.cfm_from_m3_s, 1.0, 2118.8800032893),
    (units.watt_from_ton, 3.0, 10_550.558526201),
    (units.ton_from_watt, 3516.852842067, 1.0),
    (units.watt_from_btu_h, 36_000.0, 10_550.558526192),
    (units.btu_h_from_watt, 1.0, 3.4121416331),
    (units.m3_s_w_from_cfm_per_ton, 400.0, 400.0 * (0.028316846592 / 60) / 3516.852842067),
    (units.cfm_per_ton_from_m3_s_w, 5e-5, 5e-5 * 3516.852842067 / (0.028316846592 / 60)),
    (units.kilogram_from_pound, 10.0, 4.5359237),
    (units.pound_from_kilogram, 0.45359237, 1.0),
    (units.pascal_from_psig, 118.0, 118.0 * 6894.757293168361 + 101_325.0),
    (units.psig_from_pascal, 101_325.0, 0.0),
    (units.pressure_from_gauge_pa, 813_581.0, 914_906.0),
]


@pytest.mark.parametrize("function, given, expected", PAIRS, ids=lambda item: getattr(item, "__name__", None))
def test_against_definitions(function, given, expected):
    result = function(given)
    assert type(result) is float
    assert result == pytest.approx(expected, rel=1e-11, abs=1e-9)
    array = function(np.array([[given]]))
    assert array.shape == (1, 1) and array.dtype == np.float64 and array[0, 0] == result


def test_every_function_is_checked():
    checked = {function.__name__ for function, _, _ in PAIRS}
    assert checked == set(units.__all__)


def test_gauge_takes_the_ambient_pressure():
    assert units.pascal_from_psig(0.0, 83_000.0) == 83_000.0
    assert units.pascal_from_psig(0.0, ambient_pressure_pa=83_000.0) == 83_000.0
    assert units.psig_from_pascal(83_000.0, ambient_pressure_pa=83_000.0) == 0.0
    table = units.pascal_from_psig(np.array([[100.0], [120.0]]), np.array([101_325.0, 90_000.0, 80_000.0]))
    assert table.shape == (2, 3)
    assert table[1, 2] == units.pascal_from_psig(120.0, 80_000.0)


def test_the_default_ambient_pressure_is_the_one_shown():
    for function, given in [
        (units.pascal_from_psig, 50.0),
        (units.psig_from_pascal, 2e5),
        (units.pressure_from_gauge_pa, 2e5),
    ]:
        assert "ambient_pressure_pa=101325.0" in str(function.__text_signature__)
        assert function(given) == function(given, 101_325.0) != function(given, 101_324.0)


@pytest.mark.parametrize("function", [getattr(units, name) for name in units.__all__])
@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf])
def test_what_is_not_finite_is_refused(function, value):
    with pytest.raises(satline.NotFiniteError):
        function(value)


@pytest.mark.parametrize("function", [getattr(units, name) for name in units.__all__])
def test_nonsense_is_refused(function):
    with pytest.raises(satline.OutOfRangeError):
        function(-1e9)
    with pytest.raises(satline.OutOfRangeError):
        function(1e15)
