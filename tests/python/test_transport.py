"""Viscosity, thermal conductivity and surface tension: numbers, arrays, and what is not available."""

import doctest

import numpy as np
import pytest

import satline

PURE_WITH_CONDUCTIVITY = 19
PURE_WITH_SURFACE_TENSION = 42


def test_published_values():
    """Values of tests/data with their sources: viscosity.csv, thermal_conductivity.csv, surface_tension.csv."""
    r = satline.refrigerant("R-134a")
    liquid, vapor = r.saturated_liquid(303.07), r.saturated_vapor(303.07)
    assert r.viscosity_pa_s(303.07, liquid.density_kg_m3) == pytest.approx(183.31e-6, rel=r.viscosity_error)
    assert r.viscosity_pa_s(303.07, vapor.density_kg_m3) == pytest.approx(11.903e-6, rel=r.viscosity_error)
    liquid = r.saturated_liquid(293.15)
    assert r.thermal_conductivity_w_m_k(293.15, liquid.density_kg_m3) == pytest.approx(83.3e-3, rel=0.03)
    assert satline.refrigerant("R-744").thermal_conductivity_w_m_k(250.0, 0.0) == pytest.approx(12.99e-3, rel=4e-4)
    assert r.surface_tension_n_m(298.15) == pytest.approx(8.1e-3, abs=0.3e-3)
    assert r.surface_tension_n_m(374.21) == 0.0


def test_arrays_are_their_elements():
    r = satline.refrigerant("R-290")
    temperature = np.linspace(250.0, 330.0, 5)
    density = r.saturated_liquid(temperature).density_kg_m3
    for function in (r.viscosity_pa_s, r.thermal_conductivity_w_m_k):
        result = function(temperature, density)
        assert result.dtype == np.float64
        assert result.tolist() == [function(float(t), float(d)) for t, d in zip(temperature, density)]
        gas = function(temperature[:, None], [0.0, 1.0])
        assert gas.shape == (5, 2) and gas[3, 1] == function(float(temperature[3]), 1.0)
        assert function(300.0, [0.0, 1.0]).shape == (2,)
    tension = r.surface_tension_n_m(temperature)
    assert tension.tolist() == [r.surface_tension_n_m(float(t)) for t in temperature]
    assert (np.diff(tension) < 0).all()


def test_every_refrigerant_has_a_viscosity(each_refrigerant):
    low, high = each_refrigerant.temperature_range_k
    gas = each_refrigerant.viscosity_pa_s(min(max(0.5 * (low + high), 215.0), 450.0), 0.0)
    assert 5e-6 < gas < 3e-5 and 0.0 < each_refrigerant.viscosity_error <= 0.3


def test_what_is_not_published_is_not_available():
    def answers(function):
        try:
            return function() is not None
        except satline.NotAvailableError as error:
            assert error.quantity in {"thermal conductivity", "surface tension"}
            return False

    conductivity = tension = 0
    for r in satline.refrigerants():
        has_conductivity = answers(lambda: r.thermal_conductivity_error)
        has_tension = answers(lambda: r.surface_tension_error)
        assert len(r.components) == 1 or not (has_conductivity or has_tension)
        conductivity += has_conductivity
        tension += has_tension
        if not has_conductivity:
            with pytest.raises(satline.NotAvailableError):
                r.thermal_conductivity_w_m_k([300.0], 0.0)
        if not has_tension:
            with pytest.raises(satline.NotAvailableError):
                r.surface_tension_n_m(300.0)
    assert (conductivity, tension) == (PURE_WITH_CONDUCTIVITY, PURE_WITH_SURFACE_TENSION)


def test_bad_input():
    r = satline.refrigerant("R-134a")
    for function in (r.viscosity_pa_s, r.thermal_conductivity_w_m_k):
        with pytest.raises(satline.OutOfRangeError) as caught:
            function([300.0, 300.0], [1.0, 500.0])  # the second is liquid and vapour together
        assert caught.value.unit == "kg/m3" and caught.value.index == (1,) and caught.value.value == pytest.approx(500.0)
        with pytest.raises(satline.OutOfRangeError):
            function(100.0, 1.0)
        with pytest.raises(satline.NotFiniteError):
            function(300.0, float("nan"))
        with pytest.raises(TypeError):
            function("300", 1.0)
    with pytest.raises(satline.OutOfRangeError) as caught:
        r.surface_tension_n_m(375.0)
    assert caught.value.upper == 374.21


def test_the_examples_of_the_documentation():
    finder = doctest.DocTestFinder()
    names = ("viscosity_pa_s", "thermal_conductivity_w_m_k", "surface_tension_n_m")
    for name in names:
        for test in finder.find(getattr(satline.Refrigerant, name), name, globs={"satline": satline}):
            assert test.examples
            assert doctest.DocTestRunner().run(test).failed == 0
