"""The catalogue and the Refrigerant class."""

import copy
import pickle

import numpy as np
import pytest

import satline

# ANSI/ASHRAE Standard 34: designations, compositions by mass and safety classes (from memory).
ASHRAE_34 = {
    "R-22": ({"R-22": 1.0}, "A1"),
    "R-32": ({"R-32": 1.0}, "A2L"),
    "R-125": ({"R-125": 1.0}, "A1"),
    "R-134a": ({"R-134a": 1.0}, "A1"),
    "R-407C": ({"R-32": 0.23, "R-125": 0.25, "R-134a": 0.52}, "A1"),
    "R-410A": ({"R-32": 0.5, "R-125": 0.5}, "A1"),
}


@pytest.mark.parametrize("name", ASHRAE_34)
def test_identity(name):
    composition, safety_class = ASHRAE_34[name]
    refrigerant = satline.refrigerant(name)
    assert refrigerant.designation == name
    assert {part.designation: part.mass_fraction for part in refrigerant.components} == composition
    assert dict(refrigerant.components) == composition
    assert refrigerant.safety_class == safety_class
    assert refrigerant.confidence == "published"
    assert len(refrigerant.sources) >= 2 and all("19" in s or "20" in s or "ASHRAE" in s for s in refrigerant.sources)
    assert refrigerant in satline.refrigerants()


def test_record(r410a):
    # ASHRAE Fundamentals, R-410A table, from memory: normal bubble and dew points -51.44 and -51.36 degC; ASHRAE 34, from
    # memory: critical temperature 71.4 degC; IPCC AR4, weighted by mass: 2088.
    assert r410a.normal_bubble_temperature_k == pytest.approx(273.15 - 51.44, abs=0.03)
    assert r410a.normal_dew_temperature_k == pytest.approx(273.15 - 51.36, abs=0.03)
    assert r410a.critical_temperature_k == pytest.approx(273.15 + 71.4, abs=0.2)
    assert r410a.global_warming_potential == pytest.approx(2088, abs=1) and r410a.global_warming_potential_source
    assert r410a.saturation_uncertainty_k is None
    # Carbon dioxide is solid at 101 325 Pa.
    assert satline.refrigerant("R-744").normal_bubble_temperature_k is None


def test_an_estimated_blend_says_so_and_widens_its_findings():
    estimated = satline.refrigerant("R-401A")
    assert estimated.confidence == "estimated" and estimated.saturation_uncertainty_k > 0.4
    reading = {"metering": "fixed-orifice", "suction_pressure": "60 psig", "suction_line_temperature": "55 degF"}
    values = [satline.diagnose(reading | {"refrigerant": name}).values["superheat_k"] for name in ("R-401A", "R-22")]
    assert values[0].standard_uncertainty > estimated.saturation_uncertainty_k > values[1].standard_uncertainty


def test_flammability_limit():
    # ISO 817 and ASHRAE 34: 0.307 kg/m3 for R-32.
    assert satline.refrigerant("R-32").lower_flammability_limit_kg_m3 == 0.307
    assert satline.refrigerant("R-410A").lower_flammability_limit_kg_m3 is None


def test_the_list_has_no_repeats():
    names = [refrigerant.designation for refrigerant in satline.refrigerants()]
    assert len(names) == len(set(names)) >= len(ASHRAE_34)
    assert len(set(satline.refrigerants())) == len(names)


@pytest.mark.parametrize("spelling", ["R-410A", "r410a", "R410A", "R 410a"])
def test_spelling(spelling):
    assert satline.refrigerant(spelling) == satline.refrigerant("R-410A")


def test_equality_hash_copy_and_pickle(each_refrigerant):
    for twin in [
        satline.refrigerant(each_refrigerant.designation),
        copy.copy(each_refrigerant),
        copy.deepcopy(each_refrigerant),
        pickle.loads(pickle.dumps(each_refrigerant)),
    ]:
        assert twin == each_refrigerant and hash(twin) == hash(each_refrigerant)
    others = [other for other in satline.refrigerants() if other != each_refrigerant]
    assert len(others) == len(satline.refrigerants()) - 1
    assert each_refrigerant != each_refrigerant.designation
    assert eval(repr(each_refrigerant), {"satline": satline}) == each_refrigerant


def test_it_cannot_be_made_or_changed(each_refrigerant):
    with pytest.raises(TypeError):
        satline.Refrigerant()
    with pytest.raises(AttributeError):
        each_refrigerant.designation = "R-0"
    with pytest.raises(AttributeError):
        each_refrigerant.nickname = "x"


def test_the_ends_of_the_range_answer(each_refrigerant):
    lowest, highest = each_refrigerant.temperature_range_k
    assert 213.0 < lowest < highest < 500.0
    for pressure, temperature in [
        (each_refrigerant.bubble_pressure_pa, each_refrigerant.bubble_temperature_k),
        (each_refrigerant.dew_pressure_pa, each_refrigerant.dew_temperature_k),
    ]:
        for end in (lowest, highest):
            assert temperature(pressure(end)) == pytest.approx(end, abs=4e-5)
        for beyond in (np.nextafter(lowest, 0.0), np.nextafter(highest, 1e3)):
            with pytest.raises(satline.OutOfRangeError):
                pressure(beyond)


def test_bubble_and_dew_in_order(each_refrigerant):
    lowest, highest = each_refrigerant.temperature_range_k
    temperatures = np.linspace(lowest, highest, 500)
    bubble, dew = each_refrigerant.bubble_pressure_pa(temperatures), each_refrigerant.dew_pressure_pa(temperatures)
    assert (np.diff(bubble) > 0).all() and (np.diff(dew) > 0).all()
    if len(each_refrigerant.components) > 1:
        assert (bubble > dew).all()
    else:
        assert np.allclose(bubble, dew, rtol=3e-6, atol=0.0)


def test_superheat_and_subcooling_are_what_they_say(each_refrigerant):
    middle = sum(each_refrigerant.temperature_range_k) / 2
    pressure = each_refrigerant.dew_pressure_pa(middle)
    warmer, colder = middle + 5.0, middle - 5.0
    assert each_refrigerant.superheat_k(warmer, pressure) == warmer - each_refrigerant.dew_temperature_k(pressure)
    assert each_refrigerant.subcooling_k(colder, pressure) == each_refrigerant.bubble_temperature_k(pressure) - colder


def test_superheat_depends_on_the_altitude(r410a):
    # Computed with the published mixture model (Lemmon and Jacobsen 2004) in an independent program: 22.2 degF at sea
    # level and 23.3 degF at 5280 ft for 118 psig and 62.0 degF; the printed digit decides.
    units = satline.units
    line = units.kelvin_from_fahrenheit(62.0)
    mile_high = 101_325.0 * (1.0 - 2.25577e-5 * 5280 * 0.3048) ** 5.2559  # ASHRAE Fundamentals 2017 ch. 1 eq. 3
    for ambient, superheat_f in [(101_325.0, 22.2), (mile_high, 23.3)]:
        superheat = r410a.superheat_k(line, units.pascal_from_psig(118.0, ambient))
        assert units.fahrenheit_difference_from_kelvin(superheat) == pytest.approx(superheat_f, abs=0.05)
