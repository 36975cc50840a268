"""States from the equations of state: numbers and arrays, reference states, phases and refusals."""

import dataclasses
import inspect

import numpy as np
import pytest

import satline

FIELDS = [
    "temperature_k",
    "pressure_pa",
    "density_kg_m3",
    "enthalpy_j_kg",
    "entropy_j_kg_k",
    "internal_energy_j_kg",
    "specific_heat_j_kg_k",
    "isochoric_specific_heat_j_kg_k",
    "speed_of_sound_m_s",
    "quality",
    "phase",
    "liquid_mass_fractions",
    "vapor_mass_fractions",
]
IN_ONE_PHASE = ["specific_heat_j_kg_k", "isochoric_specific_heat_j_kg_k", "speed_of_sound_m_s"]
IN_TWO = ["quality", "liquid_mass_fractions", "vapor_mass_fractions"]


@pytest.fixture
def r448a():
    return satline.refrigerant("R-448A")


def test_fields():
    for which in (satline.State, satline.States):
        assert [field.name for field in dataclasses.fields(which)] == FIELDS
        assert which.__module__ == "satline"
    parameters = inspect.signature(satline.refrigerant("R-22").state).parameters
    assert list(parameters) == ["temperature_k", "pressure_pa", "enthalpy_j_kg", "entropy_j_kg_k", "quality", "reference"]


def test_published_values():
    # ASHRAE Fundamentals, R-134a at 0 degC (from memory): 200.00 and 398.60 kJ/kg, 1.0000 and 1.7271 kJ/(kg K), 292.80
    # kPa, 1294.8 kg/m3; half of the last digit decides.
    r134a = satline.refrigerant("R-134a")
    liquid, vapor = r134a.saturated_liquid(273.15), r134a.saturated_vapor(273.15)
    assert liquid.enthalpy_j_kg == pytest.approx(200e3, abs=1e-6)
    assert liquid.entropy_j_kg_k == pytest.approx(1e3, abs=1e-9)
    assert vapor.enthalpy_j_kg == pytest.approx(398.60e3, abs=11)
    assert vapor.entropy_j_kg_k == pytest.approx(1727.1, abs=0.11)
    assert vapor.pressure_pa == pytest.approx(292.80e3, abs=6)
    assert liquid.density_kg_m3 == pytest.approx(1294.8, abs=0.06)


def test_a_number_gives_a_state(r448a):
    state = r448a.state(300.0, 5e5)
    assert type(state) is satline.State
    assert (state.temperature_k, state.pressure_pa, state.phase, state.quality) == (300.0, 5e5, "vapor", None)
    assert all(type(getattr(state, name)) is float for name in FIELDS[:9])
    assert state.liquid_mass_fractions is None and state.vapor_mass_fractions is None
    assert state == r448a.state(pressure_pa=5e5, temperature_k=np.float64(300))
    with pytest.raises(dataclasses.FrozenInstanceError):
        state.temperature_k = 1.0


def test_two_phases(r448a):
    state = r448a.state(280.0, quality=0.3)
    assert (state.phase, state.quality) == ("two-phase", 0.3)
    assert [getattr(state, name) for name in IN_ONE_PHASE] == [None] * 3
    composition = [part.mass_fraction for part in r448a.components]
    liquid, vapor = state.liquid_mass_fractions, state.vapor_mass_fractions
    assert len(liquid) == len(vapor) == 5
    # The mass of every component adds up.
    assert [0.7 * x + 0.3 * y for x, y in zip(liquid, vapor)] == pytest.approx(composition, abs=1e-9)
    assert vapor[0] > composition[0] > liquid[0]
    assert r448a.dew_pressure_pa(280.0) < state.pressure_pa < r448a.bubble_pressure_pa(280.0)
    assert r448a.saturated_liquid(280.0) == r448a.state(280.0, quality=0)
    assert r448a.saturated_vapor(280.0) == r448a.state(280.0, quality=1)
    assert r448a.saturated_liquid(280.0).specific_heat_j_kg_k > 1000.0


@pytest.mark.parametrize("pair", [("enthalpy_j_kg",), ("entropy_j_kg_k",)], ids=lambda pair: pair[0])
def test_back_from_two_others(each_refrigerant, pair):
    """Through liquid, two phases and vapour at one pressure, for every refrigerant."""
    lowest, highest = each_refrigerant.temperature_range_k
    middle = lowest + 0.6 * (highest - lowest)
    try:
        each_refrigerant.saturated_liquid(middle)
        reference = "IIR"
    except satline.OutOfRangeError:
        reference = "NBP"
    pressure = each_refrigerant.bubble_pressure_pa(middle)
    there = each_refrigerant.state(pressure_pa=pressure, quality=[0.0, 0.25, 0.9], reference=reference)
    beside = each_refrigerant.state(middle + np.array([-3.0, 40.0]), pressure, reference=reference)
    for states in (there, beside):
        found = each_refrigerant.state(pressure_pa=pressure, reference=reference, **{pair[0]: getattr(states, pair[0])})
        assert np.allclose(found.temperature_k, states.temperature_k, rtol=0, atol=1e-6)
        assert np.allclose(found.density_kg_m3, states.density_kg_m3, rtol=1e-7)
    assert list(beside.phase) == ["liquid", "vapor"]


def test_arrays(r448a):
    temperatures, pressures = np.array([[280.0], [320.0]]), np.array([1e5, 4e5, 6e6])
    states = r448a.state(temperatures, pressures)
    assert type(states) is satline.States
    assert states.shape == (2, 3) and len(states) == 2
    for name in FIELDS:
        column = getattr(states, name)
        shape = (2, 3, 5) if name.endswith("fractions") else (2, 3)
        assert column.shape == shape, name
        assert isinstance(column, np.ma.MaskedArray) == (name in IN_ONE_PHASE + IN_TWO), name
    assert states.phase.tolist() == [["vapor", "vapor", "liquid"]] * 2
    for row, column in np.ndindex(2, 3):
        alone = r448a.state(temperatures[row, 0], pressures[column])
        for name in FIELDS[:9] + ["phase"]:
            assert getattr(states, name)[row, column] == getattr(alone, name), name
    assert np.ma.getmaskarray(states.quality).all() and np.ma.getmaskarray(states.vapor_mass_fractions).all()
    assert not np.ma.getmaskarray(states.specific_heat_j_kg_k).any()


def test_masked_where_undefined(r448a):
    states = r448a.state(pressure_pa=9e5, enthalpy_j_kg=[200e3, 300e3, 450e3])
    assert states.phase.tolist() == ["liquid", "two-phase", "vapor"]
    for name in IN_ONE_PHASE:
        assert np.ma.getmaskarray(getattr(states, name)).tolist() == [False, True, False]
    assert np.ma.getmaskarray(states.quality).tolist() == [True, False, True]
    assert np.ma.getmaskarray(states.liquid_mass_fractions)[:, 0].tolist() == [True, False, True]
    assert 0.0 < states.quality[1] < 1.0


def test_empty_and_zero_axes(r448a):
    assert r448a.state(np.zeros((0, 3)), 1e5).density_kg_m3.shape == (0, 3)
    assert r448a.state(np.array(300.0), 1e5).density_kg_m3.shape == ()


def test_reference_states():
    r410a = satline.refrigerant("R-410A")
    at = {name: r410a.state(300.0, 5e5, reference=name) for name in ("IIR", "ASHRAE", "NBP")}
    assert len({state.enthalpy_j_kg for state in at.values()}) == 3
    assert len({state.density_kg_m3 for state in at.values()}) == 1
    assert r410a.state(300.0, 5e5) == at["IIR"]
    assert r410a.saturated_liquid(233.15, reference="ASHRAE").enthalpy_j_kg == pytest.approx(0.0, abs=1e-6)
    assert r410a.state(pressure_pa=101325, quality=0, reference="NBP").entropy_j_kg_k == pytest.approx(0.0, abs=1e-9)
    with pytest.raises(satline.UnknownChoiceError, match="IIR, ASHRAE, NBP"):
        r410a.state(300.0, 5e5, reference="iso")
    # R-14 is above its critical temperature at 0 degC; carbon dioxide is frozen at one atmosphere.
    with pytest.raises(satline.OutOfRangeError, match="reference state") as caught:
        satline.refrigerant("R-14").state(300.0, 1e5)
    assert caught.value.upper < 273.15 == caught.value.value
    with pytest.raises(satline.OutOfRangeError, match="reference state"):
        satline.refrigerant("R-744").state(300.0, 1e5, reference="NBP")


@pytest.mark.parametrize(
    "known",
    [
        {},
        {"temperature_k": 300.0},
        {"quality": 0.5},
        {"temperature_k": 300.0, "enthalpy_j_kg": 3e5},
        {"enthalpy_j_kg": 3e5, "entropy_j_kg_k": 1e3},
        {"temperature_k": 300.0, "pressure_pa": 1e5, "quality": 0.5},
    ],
    ids=lambda known: "+".join(known) or "none",
)
def test_exactly_two_of_those_that_fix_a_state(r448a, known):
    with pytest.raises(TypeError, match="give two"):
        r448a.state(**known)


def test_refusals_name_limits_and_element(r448a):
    bubble, dew = r448a.saturated_liquid(280.0).pressure_pa, r448a.saturated_vapor(280.0).pressure_pa
    with pytest.raises(satline.OutOfRangeError, match="give a quality") as caught:
        r448a.state([280.0, 280.0], [1e5, 0.5 * (bubble + dew)])
    assert caught.value.index == (1,)
    assert caught.value.lower == dew and caught.value.upper == bubble
    with pytest.raises(satline.OutOfRangeError, match="enthalpy") as caught:
        r448a.state(pressure_pa=1e6, enthalpy_j_kg=5e6)
    assert caught.value.unit == "J/kg" and caught.value.upper < 1e6
    with pytest.raises(satline.OutOfRangeError) as caught:
        r448a.state(100.0, 1e5)
    assert caught.value.quantity == "temperature" and caught.value.lower == pytest.approx(172.52)
    for quality in (-0.01, 1.01):
        with pytest.raises(satline.OutOfRangeError, match="quality"):
            r448a.state(280.0, quality=quality)
    for bad in (np.nan, np.inf):
        with pytest.raises(satline.NotFiniteError):
            r448a.state(bad, 1e5)
        with pytest.raises(satline.NotFiniteError):
            r448a.state(pressure_pa=1e5, enthalpy_j_kg=bad)
    with pytest.raises(TypeError):
        r448a.state("300", 1e5)
    with pytest.raises(ValueError):
        r448a.state([300.0, 310.0], [1e5, 2e5, 3e5])
