"""Targets of the protocol: a number, or no valid test."""

import numpy as np
import pytest

import satline
from satline.units import fahrenheit_difference_from_kelvin, kelvin_from_fahrenheit

# California Title 24, Residential Appendix RA3.2, 2008 and 2013 editions (from memory): cells of the target superheat
# table by return wet bulb and outdoor dry bulb, degF; None where the table is blank.
SUPERHEAT_CELLS = [(65.0, 95.0, 8.1), (60.0, 95.0, None)]
# The same source: target split by return dry bulb and return wet bulb, degF.
SPLIT_CELLS = [(78.0, 65.0, 18.8)]


@pytest.mark.parametrize("wet_bulb, outdoor, target", SUPERHEAT_CELLS)
def test_superheat_cells(wet_bulb, outdoor, target):
    result = satline.target_superheat_k(kelvin_from_fahrenheit(wet_bulb), kelvin_from_fahrenheit(outdoor))
    if target is None:
        assert result is None
    else:
        assert type(result) is float
        assert fahrenheit_difference_from_kelvin(result) == pytest.approx(target, abs=1e-9)


@pytest.mark.parametrize("dry_bulb, wet_bulb, target", SPLIT_CELLS)
def test_split_cells(dry_bulb, wet_bulb, target):
    result = satline.target_split_k(kelvin_from_fahrenheit(dry_bulb), kelvin_from_fahrenheit(wet_bulb))
    assert type(result) is float
    assert fahrenheit_difference_from_kelvin(result) == pytest.approx(target, abs=1e-9)


@pytest.mark.parametrize(
    "function, first, second",
    [
        (satline.target_superheat_k, np.linspace(48.0, 78.0, 61), np.linspace(50.0, 120.0, 36)),
        (satline.target_split_k, np.linspace(68.0, 86.0, 37), np.linspace(48.0, 78.0, 31)),
    ],
)
def test_arrays_mask_what_numbers_answer_with_none(function, first, second):
    first, second = kelvin_from_fahrenheit(first)[:, None], kelvin_from_fahrenheit(second)
    result = function(first, second)
    assert isinstance(result, np.ma.MaskedArray) and result.dtype == np.float64
    assert result.shape == result.mask.shape == (first.size, second.size)
    expected = [function(float(a), float(b)) for a in first.ravel() for b in second]
    assert result.mask.ravel().tolist() == [value is None for value in expected]
    assert 0 < result.mask.sum() < result.size, "both kinds of cell must be there"
    assert result.compressed().tolist() == [value for value in expected if value is not None]
    # What stands behind the mask cannot pass for a target, not even by accident, and is not NaN.
    assert (result.data[result.mask] == 1e20).all()


def test_an_array_without_blanks_is_still_masked():
    result = satline.target_superheat_k(kelvin_from_fahrenheit([65.0, 66.0]), kelvin_from_fahrenheit(95.0))
    assert isinstance(result, np.ma.MaskedArray) and result.mask.tolist() == [False, False]
    flat = satline.target_superheat_k(np.array(kelvin_from_fahrenheit(65.0)), kelvin_from_fahrenheit(95.0))
    assert isinstance(flat, np.ma.MaskedArray) and flat.shape == ()
    empty = satline.target_split_k([], 290.0)
    assert isinstance(empty, np.ma.MaskedArray) and empty.shape == (0,)


@pytest.mark.parametrize("function", [satline.target_superheat_k, satline.target_split_k])
def test_bad_air_is_an_error_not_a_blank(function):
    with pytest.raises(satline.NotFiniteError):
        function(float("nan"), 300.0)
    with pytest.raises(satline.OutOfRangeError) as caught:
        function([291.0, 65.0], 300.0)
    assert caught.value.index == (1,) and caught.value.value == 65.0
