"""Pressure test, decay of a vacuum, tube rating and temperature drop of a line.

Nitrogen and water are compared with CoolProp, an independent general-purpose library.
"""

import doctest
import math
import pathlib

import numpy as np
import pytest

import satline
from satline import _visit_gas, units, visit

CP = pytest.importorskip("CoolProp.CoolProp")

PSI = 6894.757293168361
MICRON = 0.1333224


def gauge(psi):
    return units.pascal_from_psig(psi, 101325.0)


def fahrenheit(value):
    return units.kelvin_from_fahrenheit(value)


def test_examples_say_what_they_give():
    assert doctest.testmod(_visit_gas).failed == 0


def test_the_worked_examples_of_the_docs():
    page = pathlib.Path(__file__).parents[2] / "core" / "docs" / "visit_gas.md"
    result = doctest.testfile(str(page), module_relative=False)
    assert result.failed == 0 and result.attempted > 25


def test_nitrogen_densities_against_an_independent_library():
    pressures, temperatures = np.meshgrid(np.geomspace(1e3, 1.5e7, 40), np.linspace(200.0, 400.0, 41))
    ours = visit.nitrogen_density_kg_m3(pressures, temperatures)
    theirs = CP.PropsSI("D", "P", pressures.ravel(), "T", temperatures.ravel(), "Nitrogen").reshape(ours.shape)
    worst = np.abs(ours / theirs - 1).max()
    print(f"worst relative deviation of density: {worst:.1e}")
    assert worst <= 1e-9


def test_expected_pressures_against_an_independent_library():
    rng = np.random.default_rng(5)
    pressure, first, later = rng.uniform(1e5, 1e7, 300), rng.uniform(220, 380, 300), rng.uniform(220, 380, 300)
    ours = visit.expected_nitrogen_pressure_pa(pressure, first, later)
    density = CP.PropsSI("D", "P", pressure, "T", first, "Nitrogen")
    theirs = CP.PropsSI("P", "D", density, "T", later, "Nitrogen")
    worst = np.abs(ours / theirs - 1).max()
    print(f"worst relative deviation of pressure: {worst:.1e}")
    assert worst <= 1e-9


def test_numbers_and_arrays():
    one = visit.expected_nitrogen_pressure_pa(3.5e6, 308.0, 294.0)
    assert isinstance(one, float)
    table = visit.expected_nitrogen_pressure_pa([[3.5e6], [1e6]], np.float32(308.0), [294.0, 300.0, 308.0])
    assert table.shape == (2, 3) and table.dtype == np.float64
    assert table[0, 0] == one and table[0, 2] == pytest.approx(3.5e6, rel=1e-12)
    assert visit.expected_nitrogen_pressure_pa(np.array(3.5e6), 308, 294)[()] == one
    assert visit.expected_nitrogen_pressure_pa([], 308.0, 294.0).shape == (0,)
    with pytest.raises(satline.OutOfRangeError) as error:
        visit.expected_nitrogen_pressure_pa([1e6, 1e6], [300.0, 300.0], [290.0, 500.0])
    assert error.value.index == (1,) and "nitrogen" in error.value.quantity
    with pytest.raises(satline.NotFiniteError):
        visit.expected_nitrogen_pressure_pa(1e6, 300.0, math.nan)
    with pytest.raises(ValueError, match="broadcast"):
        visit.expected_nitrogen_pressure_pa([1e6, 1e6], [300.0, 300.0, 300.0], 290.0)
    with pytest.raises(TypeError, match="later_temperature_k"):
        visit.expected_nitrogen_pressure_pa(1e6, 300.0, "290")


def test_nitrogen_is_not_in_the_catalogue():
    assert "R-728" not in {r.designation for r in satline.refrigerants()}
    with pytest.raises(satline.UnknownRefrigerantError):
        satline.refrigerant("R-728")


def test_mass_lost_against_an_independent_library():
    """What left a cylinder of 12 litres, by the library's densities before and after."""
    hours, volume, first, last = 10.0, 0.012, fahrenheit(90.0), fahrenheit(75.0)
    found = visit.pressure_test(
        gauge(400.0), first, gauge(370.0), [last], 3600 * hours, volume_m3=volume,
        low_side_design_pressure_pa=gauge(450.0), pressure_uncertainty_pa=1e3, temperature_uncertainty_k=0.2,
    )  # fmt: skip
    before = CP.PropsSI("D", "P", gauge(400.0), "T", first, "Nitrogen")
    after = CP.PropsSI("D", "P", gauge(370.0), "T", last, "Nitrogen")
    grams = 1e3 * volume * (before - after) / hours * 24 * 365.25
    assert found.outcome == "fail"
    assert found.leak_g_yr == pytest.approx(grams, rel=1e-6)
    assert found.density_kg_m3 == pytest.approx(before, rel=1e-9)
    assert found.leak_pa_m3_s == pytest.approx(-volume * found.residual_pa / (3600 * hours), rel=1e-12)
    assert found.smallest_leak_g_yr == pytest.approx(2 * found.leak_uncertainty_g_yr, rel=1e-12)


def test_uncertainty_by_simulation():
    """Readings scattered as stated give residuals scattered as stated, without the share of the metal."""
    rng = np.random.default_rng(11)
    count, u_p, u_t = 20000, 2e3, 0.4
    p1, t1, t2 = gauge(400.0), 300.0, 300.0
    noise = lambda scale: rng.normal(0.0, scale, count)  # noqa: E731
    first, last = p1 + noise(u_p), p1 + noise(u_p)
    residual = last - visit.expected_nitrogen_pressure_pa(first, t1 + noise(u_t), t2 + noise(u_t))
    found = visit.pressure_test(
        p1, t1, p1, t2, 86400.0, low_side_design_pressure_pa=gauge(450.0), pressure_uncertainty_pa=u_p,
        temperature_uncertainty_k=u_t,
    )  # fmt: skip
    assert found.residual_uncertainty_pa == pytest.approx(residual.std(), rel=0.02)


def test_a_pressure_above_the_design_is_refused():
    with pytest.raises(satline.OutOfRangeError, match="low-side design pressure") as error:
        visit.pressure_test(gauge(500.0), 300.0, gauge(499.0), 300.0, 86400.0, low_side_design_pressure_pa=gauge(450.0))
    assert error.value.quantity == "test pressure" and error.value.upper == gauge(450.0)
    for wrong in ({"volume_m3": 0.0}, {"least_time_s": -1.0}, {"allowed_drop_pa": -1.0}):
        with pytest.raises(satline.OutOfRangeError):
            visit.pressure_test(gauge(400.0), 300.0, gauge(399.0), 300.0, 86400.0,
                                low_side_design_pressure_pa=gauge(450.0), **wrong)  # fmt: skip
    with pytest.raises(satline.OutOfRangeError, match="last must be later"):
        visit.pressure_test(gauge(400.0), 300.0, gauge(399.0), 300.0, -5.0, low_side_design_pressure_pa=gauge(450.0))


def test_it_reads_well_on_a_roof():
    found = visit.pressure_test(gauge(400.0), 300.0, gauge(390.0), 300.0, 86400.0, volume_m3=0.01,
                                low_side_design_pressure_pa=gauge(450.0), pressure_uncertainty_pa=1e3,
                                temperature_uncertainty_k=0.2)  # fmt: skip
    said = str(found)
    assert said.startswith("pressure test: fail") and "-10.00 ± " in said and "g a year" in said
    assert "never use oxygen" in said.lower() and "relief valve" in said


def test_water_against_an_independent_library():
    """Liquid by IAPWS-95, ice by the library's own function; both newer than Hyland and Wexler."""
    kelvins = np.linspace(274.0, 370.0, 30)
    theirs = CP.PropsSI("P", "T", kelvins, "Q", np.zeros(30), "Water")
    assert np.abs(visit.water_saturation_pressure_pa(kelvins) / theirs - 1).max() < 1e-3
    back = visit.frost_point_k(visit.water_saturation_pressure_pa(np.linspace(180.0, 320.0, 50)))
    assert np.abs(back - np.linspace(180.0, 320.0, 50)).max() < 1e-9


def test_decay_of_a_vacuum():
    times = np.arange(0.0, 901.0, 15.0)
    tight = visit.decay_test(times, np.full(times.shape, 400 * MICRON), 293.15)
    assert (tight.outcome, tight.behaviour, tight.causes) == ("pass", "steady", ())
    assert tight.least_time_s == 600.0 and tight.reaches_limit_s is None
    oil = visit.decay_test(times, (600 - 200 * np.exp(-times / 150)) * MICRON, 293.15)
    assert (oil.outcome, oil.behaviour, oil.causes[0]) == ("pass", "levelling-off", "outgassing")
    assert oil.time_constant_s == pytest.approx(150.0, rel=1e-2) and oil.plateau_pa == pytest.approx(600 * MICRON, rel=1e-3)
    said = str(oil)
    assert said.startswith("vacuum: pass") and "levels off at 600" in said and "compressor" in said


def test_an_error_says_which_reading():
    times = [60.0 * step for step in range(16)]
    pressures = [400 * MICRON] * 16
    swapped = [*times[:5], times[6], times[5], *times[7:]]
    with pytest.raises(satline.OutOfRangeError, match="times must increase") as error:
        visit.decay_test(swapped, pressures, 293.15)
    assert error.value.index == (6,) and error.value.value == times[5] and error.value.lower == times[6]
    with pytest.raises(satline.OutOfRangeError, match="below zero") as error:
        visit.decay_test(times, [*pressures[:9], -1.0, *pressures[10:]], 293.15)
    assert error.value.index == (9,)
    with pytest.raises(satline.OutOfRangeError, match="five") as error:
        visit.decay_test(times[:4], pressures[:4], 293.15)
    assert error.value.index is None
    with pytest.raises(ValueError, match="16 times and 4 pressures"):
        visit.decay_test(times, pressures[:4], 293.15)
    with pytest.raises(satline.OutOfRangeError, match="above the target"):
        visit.decay_test(times, pressures, 293.15, limit_pa=20.0)


def test_tube_rating():
    inch = 0.0254
    # Copper Tube Handbook, table 3c: 1/2 inch type M tube (0.625 by 0.028 in), 494 psi annealed and 850 drawn at 100 degF.
    sizes = (0.625 * inch, 0.028 * inch, fahrenheit(100.0))
    soft = visit.copper_tube_rating(*sizes, wall_tolerance_m=0.003 * inch, diameter_tolerance_m=0.0025 * inch)
    assert soft.rating_gauge_pressure_pa / PSI == pytest.approx(494.0, abs=1.0)
    hard = visit.copper_tube_rating(*sizes, temper="drawn", joint="unheated", wall_tolerance_m=0.003 * inch,
                                    diameter_tolerance_m=0.001 * inch, design_gauge_pressure_pa=900 * PSI)  # fmt: skip
    assert hard.rating_gauge_pressure_pa / PSI == pytest.approx(850.0, abs=1.0)
    assert hard.outcome == "marginal" and "heat pump" in str(hard)
    with pytest.raises(satline.UnknownChoiceError, match="annealed, drawn"):
        visit.copper_tube_rating(*sizes, temper="half-hard")
    with pytest.raises(satline.UnknownChoiceError, match="brazed, unheated"):
        visit.copper_tube_rating(*sizes, joint="glued")
    with pytest.raises(satline.OutOfRangeError):
        visit.copper_tube_rating(0.0, 0.028 * inch, 300.0)


def test_temperature_drop_of_a_line():
    r410a = satline.refrigerant("R-410A")
    found = visit.line_temperature_drop(r410a, 308.0, 304.0, difference_uncertainty_k=0.3)
    assert found.outcome == "drop-if-flashing"
    assert found.least_pressure_drop_pa == r410a.bubble_pressure_pa(308.0) - r410a.bubble_pressure_pa(304.0)
    assert "at least" in str(found)
    nothing = visit.line_temperature_drop("R-410A", 308.0, 308.0)
    assert nothing.outcome == "no-evidence" and "does not prove" in str(nothing)
    with pytest.raises(satline.UnknownChoiceError, match="flashing"):
        visit.line_temperature_drop("R-410A", 308.0, 304.0, flash="maybe")
