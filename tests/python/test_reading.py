"""The Reading class: the fields of the core, in SI, checked when it is made."""

import copy
import dataclasses
import math
import pickle

import numpy as np
import pytest

import satline
from satline import _native

NUMERIC = {name: (lower, upper) for name, lower, upper in _native.reading_fields()}
WORDS = {
    "metering": ["fixed-orifice", "thermostatic-valve", "electronic-valve"],
    "metering_place": ["indoor", "outdoor"],
    "mode": ["cooling", "heating"],
    "compressor": ["single-speed", "two-stage", "variable"],
    "stage": ["low", "high", "maker-charging-mode"],
    "operation": ["steady", "pull-down", "defrost", "fan-cycling", "head-pressure-control"],
    "refrigerant_condition": ["as-labelled", "unknown", "mixed", "leak-shifted"],
}
BESIDES = {"label", "refrigerant", "uncertainty"}


def test_the_fields_are_those_of_the_core():
    names = [field.name for field in dataclasses.fields(satline.Reading)]
    assert set(names) == set(NUMERIC) | set(WORDS) | BESIDES
    assert [name for name in names if name in NUMERIC] == list(NUMERIC), "in the core's order"
    assert all(field.kw_only and field.default is None for field in dataclasses.fields(satline.Reading))


@pytest.mark.parametrize("name", NUMERIC)
def test_numeric_fields(name):
    lower, upper = NUMERIC[name]
    middle = (lower + upper) / 2
    for value in [lower, upper, middle, np.float64(middle), np.float32(upper / 2 + lower / 2), int(upper)]:
        reading = satline.Reading(**{name: value})
        assert type(getattr(reading, name)) is float and getattr(reading, name) == float(value)
        assert reading.to_mapping() == {name: float(value)}
    for value in [math.nextafter(lower, -math.inf), math.nextafter(upper, math.inf)]:
        with pytest.raises(satline.OutOfRangeError) as caught:
            satline.Reading(**{name: value})
        assert caught.value.field == name and name in str(caught.value)
        assert caught.value.line is None, "nobody wrote a line"
    for value in [math.nan, math.inf, -math.inf, 10**400]:
        with pytest.raises(satline.NotFiniteError) as caught:
            satline.Reading(**{name: value})
        assert caught.value.field == name
    for value in ["118 psig", True, [1.0], {}]:
        with pytest.raises(satline.MalformedTextError if name != "minutes_since_change" else satline.SatlineError):
            satline.Reading(**{name: value})
    with pytest.raises(TypeError, match="a reading holds numbers and words, not ndarray"):
        satline.Reading(**{name: np.array([middle, middle])})


@pytest.mark.parametrize("name", WORDS)
def test_words(name):
    for word in WORDS[name]:
        assert getattr(satline.Reading(**{name: word}), name) == word
    with pytest.raises(satline.UnknownChoiceError) as caught:
        satline.Reading(**{name: WORDS[name][0][:-1]})
    assert caught.value.field == name
    assert f"the nearest is {WORDS[name][0]}" in str(caught.value)


def test_refrigerant_by_name_or_object(r410a):
    assert satline.Reading(refrigerant="r410a").refrigerant == "R-410A"
    assert satline.Reading(refrigerant=r410a).refrigerant == "R-410A"
    with pytest.raises(satline.UnknownRefrigerantError, match="the nearest name in the catalogue is R-410A"):
        satline.Reading(refrigerant="R-410")


def test_uncertainty():
    limits = {"suction_pressure_pa": {"absolute": 3000.0, "resolution": 689.5}, "return_wet_bulb_k": {"of_reading": 0.01}}
    reading = satline.Reading(uncertainty=limits)
    assert reading.uncertainty == limits
    limits["suction_pressure_pa"]["absolute"] = -1.0
    assert reading.uncertainty["suction_pressure_pa"]["absolute"] == 3000.0, "the caller's mapping is not shared"
    for bad, error in [
        ({"suction_presure_pa": {"absolute": 1.0}}, satline.UnknownFieldError),
        ({"suction_pressure_pa": {"absolut": 1.0}}, satline.UnknownFieldError),
        ({"suction_pressure_pa": {"absolute": -1.0}}, satline.OutOfRangeError),
        ({"suction_pressure_pa": {"absolute": math.nan}}, satline.NotFiniteError),
        ({"suction_pressure_pa": 1.0}, satline.MalformedTextError),
    ]:
        with pytest.raises(error):
            satline.Reading(uncertainty=bad)


def test_full_scale_and_groups():
    gauge = {"of_full_scale": 0.005, "full_scale": 5.5e6, "resolution": 689.5, "group": "manifold"}
    limits = {"suction_pressure_pa": gauge, "liquid_pressure_pa": {**gauge, "full_scale": np.float64(5.5e6)}}
    reading = satline.Reading(uncertainty=limits)
    assert reading.uncertainty == limits
    assert satline.Reading(**reading.to_mapping()) == reading
    for changed, error, words in [
        ({"full_scale": None}, satline.OutOfRangeError, "of_full_scale without full_scale"),
        ({"of_full_scale": None}, satline.OutOfRangeError, "full_scale without of_full_scale"),
        ({"of_full_scale": 1.5}, satline.OutOfRangeError, "outside 0 to 1"),
        ({"full_scale": math.nan}, satline.NotFiniteError, "full_scale"),
        ({"group": 1}, satline.MalformedTextError, "a word"),
        ({"group": ""}, satline.MalformedTextError, "empty"),
    ]:
        merged = {name: value for name, value in {**gauge, **changed}.items() if value is not None}
        with pytest.raises(error, match=words):
            satline.Reading(uncertainty={"suction_pressure_pa": merged})


def test_accuracy_reaches_the_finding():
    def superheat(**limits):
        reading = satline.Reading(
            refrigerant="R-410A",
            suction_pressure_pa=9e5,
            suction_line_temperature_k=290.0,
            uncertainty={"suction_pressure_pa": limits, "suction_line_temperature_k": {"absolute": 0.0}},
        )
        return satline.diagnose(reading).values["superheat_k"].standard_uncertainty

    # A limit of error is read as a rectangular distribution: twice the limit, twice the standard uncertainty, which is
    # the limit over the square root of 3, times the slope of the dew temperature.
    assert superheat(absolute=2000.0) == pytest.approx(2 * superheat(absolute=1000.0), rel=1e-9)
    r410a = satline.refrigerant("R-410A")
    slope = (r410a.dew_temperature_k(9.01e5) - r410a.dew_temperature_k(8.99e5)) / 2e3
    assert superheat(absolute=1000.0) == pytest.approx(1000.0 / math.sqrt(3) * slope, rel=1e-4)
    # A share of full scale is an absolute limit, whatever the reading.
    assert superheat(of_full_scale=0.001, full_scale=1e6) == pytest.approx(superheat(absolute=1000.0), rel=1e-12)


def test_it_cannot_be_changed_but_replaced():
    reading = satline.Reading(refrigerant="R-410A", suction_pressure_pa=9e5)
    with pytest.raises(dataclasses.FrozenInstanceError):
        reading.suction_pressure_pa = 8e5
    with pytest.raises((AttributeError, TypeError)):
        reading.suction_presure_pa = 8e5
    other = dataclasses.replace(reading, suction_pressure_pa=8e5)
    assert other.suction_pressure_pa == 8e5 and other.refrigerant == "R-410A" and reading.suction_pressure_pa == 9e5
    with pytest.raises(satline.OutOfRangeError):
        dataclasses.replace(reading, suction_pressure_pa=-1.0)


def test_keywords_only_and_known_only():
    with pytest.raises(TypeError):
        satline.Reading("R-410A")
    with pytest.raises(TypeError, match="suction_presure_pa"):
        satline.Reading(suction_presure_pa=9e5)


def test_equality_hash_copy_and_pickle():
    reading = satline.Reading(refrigerant="R-410A", suction_pressure_pa=9e5, uncertainty={"sump_temperature_k": {}})
    for twin in [copy.copy(reading), copy.deepcopy(reading), pickle.loads(pickle.dumps(reading))]:
        assert twin == reading and hash(twin) == hash(reading)
    assert reading != dataclasses.replace(reading, suction_pressure_pa=9.1e5)
    assert eval(repr(reading), {"satline": satline}) == reading
    assert repr(satline.Reading(mode="cooling")) == "satline.Reading(mode='cooling')"
