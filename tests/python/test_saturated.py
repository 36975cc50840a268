"""Saturated densities and enthalpies from the compact curves: against the equation of state, and against tables."""

import doctest

import numpy as np
import pytest

import satline

NAMES = [
    "saturated_liquid_density_kg_m3",
    "saturated_vapor_density_kg_m3",
    "saturated_liquid_enthalpy_j_kg",
    "saturated_vapor_enthalpy_j_kg",
]


def test_against_the_equation_of_state(each_refrigerant):
    """Densities within 1 ppm. Enthalpies within 2 J/kg and 1e-5 of the latent heat: an enthalpy counts from anywhere, so its
    error means something only beside a difference."""
    lowest, highest = each_refrigerant.temperature_range_k
    # Denser towards the critical point, and not where the fit looked.
    temperatures = highest - (highest - lowest) * np.linspace(0.0, 1.0, 41) ** 1.7
    temperatures[-1] = lowest
    # R-14 has no liquid at 0 degC to count from.
    reference = "NBP" if highest < 273.15 else "IIR"
    assert (reference == "NBP") == (each_refrigerant.designation == "R-14")
    liquid = each_refrigerant.saturated_liquid(temperatures, reference=reference)
    vapor = each_refrigerant.saturated_vapor(temperatures, reference=reference)
    latent = vapor.enthalpy_j_kg - liquid.enthalpy_j_kg
    assert (latent > 0).all()
    for name, state in zip(NAMES[:2], (liquid, vapor), strict=True):
        found = getattr(each_refrigerant, name)(temperatures)
        assert np.abs(found / state.density_kg_m3 - 1.0).max() <= 1e-6, name
    for name, state in zip(NAMES[2:], (liquid, vapor), strict=True):
        error = np.abs(getattr(each_refrigerant, name)(temperatures) - state.enthalpy_j_kg)
        assert error.max() <= 2.0 and (error / latent).max() <= 1e-5, name


def test_published():
    # ASHRAE Handbook Fundamentals, R-134a at 0 degC (from memory): 1294.8 kg/m3, 0.0693 m3/kg, 200.00 and 398.60 kJ/kg;
    # half of the last digit, and 2 J/kg for the curve.
    r134a = satline.refrigerant("R-134a")
    assert r134a.saturated_liquid_density_kg_m3(273.15) == pytest.approx(1294.8, abs=0.06)
    assert 1.0 / r134a.saturated_vapor_density_kg_m3(273.15) == pytest.approx(0.0693, abs=5e-5)
    assert r134a.saturated_liquid_enthalpy_j_kg(273.15) == pytest.approx(200e3, abs=2.0)
    assert r134a.saturated_vapor_enthalpy_j_kg(273.15) == pytest.approx(398.60e3, abs=7.0)


@pytest.mark.parametrize("name", NAMES)
def test_numbers_arrays_and_errors(name, r410a):
    function = getattr(r410a, name)
    lowest, highest = r410a.temperature_range_k
    one = function(300.0)
    assert type(one) is float
    many = function([[lowest, 300.0], [highest, 250.0]])
    assert many.shape == (2, 2) and many.dtype == np.float64 and many[0, 1] == one
    assert function(np.array([])).shape == (0,)
    for beyond in (np.nextafter(lowest, 0.0), np.nextafter(highest, 1e3)):
        with pytest.raises(satline.OutOfRangeError) as caught:
            function(np.array([300.0, beyond]))
        assert caught.value.index == (1,) and (caught.value.lower, caught.value.upper) == (lowest, highest)
    with pytest.raises(satline.NotFiniteError):
        function(float("nan"))
    with pytest.raises(TypeError, match="temperature_k"):
        function("300")


def test_the_example():
    text = satline.Refrigerant.saturated_liquid_density_kg_m3.__doc__
    example = doctest.DocTestParser().get_doctest(text, {"satline": satline}, "example", None, None)
    assert len(example.examples) == 2 and doctest.DocTestRunner().run(example).failed == 0
