"""Lines: friction against an open fluids library, lift by hand, a worked line set, arrays and refusals."""

import math

import fluids.friction
import numpy as np
import pytest

import satline
from satline import lineset
from satline.air import Uncertain

PSI = 6894.757293168361
LIQUID = {"mass_flow_kg_s": 0.0503, "pressure_pa": 2_514_490.0, "temperature_k": 308.15}
SUCTION = {"mass_flow_kg_s": 0.0503, "pressure_pa": 917_222.0, "temperature_k": 285.93}


def test_friction_against_fluids():
    """fluids (PyPI, MIT): the same equation of Churchill, and Colebrook's, implemented by others."""
    reynolds = np.geomspace(10.0, 1e9, 400)
    for roughness in (0.0, 1e-6, 1.5e-4, 1e-3, 0.02, 0.05):
        ours = lineset.friction_factor(reynolds, roughness)
        churchill = [fluids.friction.Churchill_1977(value, roughness) for value in reynolds.tolist()]
        assert ours == pytest.approx(churchill, rel=1e-9)
        turbulent = reynolds >= 4000
        colebrook = [fluids.friction.Colebrook(value, roughness) for value in reynolds[turbulent].tolist()]
        assert np.max(np.abs(ours[turbulent] / colebrook - 1)) < 0.032
        # Their own laminar and turbulent formulas with a switch between: equal where it is laminar.
        laminar = reynolds < 1000
        assert ours[laminar] == pytest.approx([fluids.friction.friction_laminar(value) for value in reynolds[laminar].tolist()], rel=1e-5)


def test_friction_numbers_and_arrays():
    assert type(lineset.friction_factor(1e5)) is float
    assert lineset.friction_factor([1e3, 1e5], [[0.0], [1e-3]]).shape == (2, 2)
    assert lineset.friction_factor(500.0) == pytest.approx(64 / 500, rel=1e-6)
    with pytest.raises(satline.OutOfRangeError, match="Reynolds number of 0"):
        lineset.friction_factor(0.0)
    with pytest.raises(satline.OutOfRangeError, match="element"):
        lineset.friction_factor([1e5, -1.0])


def test_lift_by_hand():
    # R-134a at 30 degC, saturated: 1187.5 kg/m3 (ASHRAE Fundamentals, from memory).
    assert lineset.lift_pressure_pa("R-134a", 1.0, 303.15) == pytest.approx(9.80665 * 1187.5, rel=1e-4)
    r410a = satline.refrigerant("R-410A")
    expected = r410a.saturated_liquid(305.0).density_kg_m3 * 9.80665 * 6.0
    assert lineset.lift_pressure_pa(r410a, 6.0, 305.0) == pytest.approx(expected, rel=1e-9)
    expected = r410a.state(290.0, 9e5).density_kg_m3 * 9.80665 * -3.0
    assert lineset.lift_pressure_pa(r410a, -3.0, 290.0, 9e5) == pytest.approx(expected, rel=1e-9)
    lift = lineset.lift_pressure_pa(r410a, [[1.0], [2.0]], [300.0, 305.0, 310.0])
    assert lift.shape == (2, 3) and np.all(np.diff(lift, axis=1) < 0) and lift[1] == pytest.approx(2 * lift[0])
    # 20 ft of R-454B at 95 degF and 350 psig.
    assert lineset.lift_pressure_pa("R-454B", 6.096, 308.15, 2_514_490.0) / PSI == pytest.approx(8.2, abs=0.05)
    with pytest.raises(satline.OutOfRangeError, match="rise of the line"):
        lineset.lift_pressure_pa("R-454B", 1e3, 308.15)


def test_liquid_line():
    line = lineset.liquid_line("R-454B", "3/8", 18.288, rise_m=6.096, fittings={"long-elbow": 4}, **LIQUID)
    assert line.lift_pa.value / PSI == pytest.approx(8.2, abs=0.05)
    assert line.drop_pa.value == pytest.approx(line.friction_pa.value + line.lift_pa.value, rel=1e-3)
    assert line.advice == ("nothing",) and not line.at_least and line.flash_begins_m is None
    assert line.subcooling_left_k.value == pytest.approx(line.subcooling_k.value - line.subcooling_needed_k.value)
    text = str(line)
    assert "8.2 psi" in text and "subcooling" in text and "licensed" in text
    # Friction against the library's own formula and density and viscosity of the state.
    bore, length = 0.311 * 0.0254, 18.288 + 4 * 16 * 0.311 * 0.0254
    density = satline.refrigerant("R-454B").state(308.15, 2_514_490.0).density_kg_m3
    velocity = 0.0503 / density / (math.pi / 4 * bore**2)
    factor = fluids.friction.Colebrook(line.reynolds, 1.5e-6 / bore)
    by_hand = factor * length / bore * density * velocity**2 / 2
    assert line.friction_pa.value == pytest.approx(by_hand, rel=0.025)
    assert line.velocity_m_s.value == pytest.approx(velocity, rel=1e-6)


def test_flash_gas():
    line = lineset.liquid_line("R-454B", "3/8", 18.288, rise_m=6.096, **{**LIQUID, "temperature_k": 316.0})
    assert line.at_least and 0 < line.flash_begins_m < 18.288 and line.subcooling_left_k.value < 0
    assert line.advice[0] == "flash-gas-expected" and line.flash_vapor_share > 0
    assert "at least" in str(line) and "flash gas begins" in str(line) and "recover the refrigerant" in str(line)


def test_liquid_lines_in_arrays():
    temperatures = np.array([300.0, 308.15, 316.0])
    many = lineset.liquid_line("R-454B", "3/8", [[10.0], [18.288]], rise_m=6.096, **{**LIQUID, "temperature_k": temperatures})
    assert many.drop_pa.value.shape == (2, 3) and many.flash_begins_m.mask.tolist() == [[True, True, False]] * 2
    for row, length in enumerate([10.0, 18.288]):
        for column, kelvin in enumerate(temperatures):
            one = lineset.liquid_line("R-454B", "3/8", length, rise_m=6.096, **{**LIQUID, "temperature_k": float(kelvin)})
            assert many.drop_pa.value[row, column] == one.drop_pa.value
            assert many.drop_pa.standard_uncertainty[row, column] == one.drop_pa.standard_uncertainty
            assert many.advice[row, column] == one.advice
    assert many.at_least.tolist() == [[False, False, True]] * 2 and "6 liquid lines" in str(many)


def test_uncertainty():
    line = lineset.liquid_line("R-454B", "3/8", 18.288, rise_m=Uncertain(6.0, 0.3), **LIQUID)
    assert line.lift_pa.standard_uncertainty / line.lift_pa.value == pytest.approx(0.05, rel=0.01)
    flow = lineset.mass_flow_kg_s(
        "R-454B",
        Uncertain(10_550.0, 527.5),
        liquid_temperature_k=308.15,
        liquid_pressure_pa=2_514_490.0,
        suction_temperature_k=285.93,
        suction_pressure_pa=917_222.0,
    )
    assert flow.value == pytest.approx(0.0503, abs=1e-4) and flow.standard_uncertainty == pytest.approx(0.05 * flow.value)


def test_suction_line():
    line = lineset.suction_line("R-454B", "3/4", 18.288, rise_m=6.096, discharge_pressure_pa=2.6e6, **SUCTION)
    assert line.flow_over_least.value > 2 and line.least_velocity_m_s < line.inlet_velocity_m_s.value
    assert 0.005 < line.capacity_loss.value < 0.05 and line.coldest_surface_k is None and line.sweats is None
    assert "of the capacity" in str(line) and "carries oil" in str(line)
    slow = lineset.suction_line("R-454B", "7/8", 18.288, rise_m=6.096, **{**SUCTION, "mass_flow_kg_s": 0.01})
    assert "riser-too-slow" in slow.advice and "vapor-too-slow" in slow.advice
    hot = lineset.discharge_line("R-454B", "1/2", 18.0, mass_flow_kg_s=0.05, pressure_pa=2.6e6, temperature_k=345.0)
    assert hot.capacity_loss is None and hot.dew_loss_k.value > 0 and hot.flow_over_least is None


def test_superheat_at_both_ends():
    common = {"mass_flow_kg_s": 0.05, "ambient_k": 308.0, "insulation_thickness_m": 0.013, "dew_point_k": 296.0}
    at_port = lineset.suction_heat_gain("R-410A", "3/4", 15.0, pressure_pa=950e3, superheat_k=Uncertain(8.0, 0.6), **common)
    assert at_port.compressor_superheat_k.value == pytest.approx(8.0, abs=1e-4)
    assert 0.55 < at_port.compressor_superheat_k.standard_uncertainty < 0.65
    assert at_port.coil_superheat_k.value < 8.0 and at_port.sweats is False
    inlet = at_port.line.inlet_pressure_pa.value
    back = lineset.suction_heat_gain(
        "R-410A", "3/4", 15.0, pressure_pa=inlet, superheat_k=at_port.coil_superheat_k.value, known_at="coil", **common
    )
    assert back.compressor_superheat_k.value == pytest.approx(8.0, abs=1e-3)
    # Energy: what it gains is the refrigerant's.
    r410a = satline.refrigerant("R-410A")
    ends = [(at_port.line.inlet_temperature_k, at_port.line.inlet_pressure_pa)]
    ends.append((at_port.line.outlet_temperature_k, at_port.line.outlet_pressure_pa))
    before, after = (r410a.state(kelvin.value, pressure.value).enthalpy_j_kg for kelvin, pressure in ends)
    assert 0.05 * (after - before) == pytest.approx(at_port.heat_w.value, rel=1e-8)
    bare = lineset.suction_heat_gain("R-410A", "3/4", 15.0, pressure_pa=950e3, superheat_k=8.0, mass_flow_kg_s=0.05, ambient_k=308.0)
    assert bare.heat_w.value > 1.5 * at_port.heat_w.value and "insulate-line" not in bare.line.advice
    assert "at the coil" in str(at_port)
    with pytest.raises(satline.NotAvailableError, match="liquid"):
        lineset.suction_heat_gain("R-410A", "3/4", 15.0, pressure_pa=950e3, superheat_k=1.0, mass_flow_kg_s=0.02, ambient_k=308.0)
    flows = [0.02, 0.05]
    some = lineset.suction_heat_gain("R-410A", "3/4", 15.0, pressure_pa=950e3, superheat_k=5.0, mass_flow_kg_s=flows, ambient_k=308.0)
    assert some.coil_superheat_k.value.mask.tolist() == [True, False] and some.line.advice[1] == ("nothing",)


class Bore:
    """A tube as any program may have it."""

    inside_diameter_m = 0.0079
    outside_diameter_m = None


def test_tubes():
    by_bore = lineset.liquid_line("R-454B", Bore(), 18.288, **LIQUID)
    by_name = lineset.liquid_line("R-454B", "3/8", 18.288, **LIQUID)
    assert by_bore.drop_pa.value == pytest.approx(by_name.drop_pa.value, rel=0.01)
    with pytest.raises(satline.UnknownChoiceError):
        lineset.liquid_line("R-454B", "4/9", 18.288, **LIQUID)
    with pytest.raises(satline.NotAvailableError, match="outside diameter"):
        lineset.suction_line("R-454B", Bore(), 18.288, ambient_k=308.0, **SUCTION)


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"rise_m": 19.0}, "rise of the line, by its length of 19 m is outside -18.288 to 18.288"),
        ({"temperature_k": 330.0}, "liquid line temperature of 330 K"),
        ({"mass_flow_kg_s": 0.0}, "mass flow of 0 kg/s"),
        ({"length_m": -3.0}, "length of the line of -3 m"),
        ({"drier_drop_pa": -1.0}, "pressure drop of the drier"),
        ({"mass_flow_kg_s": 3.0}, "pressure drop of the line"),
        ({"pressure_pa": Uncertain(2.5e6, -1.0)}, "standard uncertainty"),
        ({"heat_gain_w": math.nan}, "heat gain of the line|value with an uncertainty"),
    ],
)
def test_bad_liquid_lines(changed, words):
    arguments = {"length_m": 18.288, **LIQUID, **changed}
    length = arguments.pop("length_m")
    with pytest.raises(satline.OutOfRangeError, match=words):
        lineset.liquid_line("R-454B", "3/8", length, **arguments)


def test_bad_vapor_lines():
    with pytest.raises(satline.OutOfRangeError, match="vapour line temperature"):
        lineset.suction_line("R-454B", "3/4", 18.0, **{**SUCTION, "temperature_k": 275.0})
    with pytest.raises(ValueError, match="known_at"):
        lineset.suction_line("R-454B", "3/4", 18.0, known_at="middle", **SUCTION)
    with pytest.raises(ValueError, match="fittings"):
        lineset.suction_line("R-454B", "3/4", 18.0, fittings={"knot": 1}, **SUCTION)
    with pytest.raises(satline.UnknownRefrigerantError):
        lineset.suction_line("R-9999", "3/4", 18.0, **SUCTION)


def test_examples_in_the_docstrings():
    import doctest

    from satline import _line_pressure

    assert doctest.testmod(_line_pressure, extraglobs={"satline": satline}).failed == 0
