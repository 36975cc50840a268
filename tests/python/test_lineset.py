"""Tubes and the charge for a line set, as Python sees them; tests/tests/lineset.rs holds the numbers."""

import numpy as np
import pytest
import satline
from satline import lineset

OUNCES_PER_FOOT = 0.028349523125 / 0.3048
LIQUID = {"liquid_temperature_k": 308.15, "liquid_pressure_pa": 2_514_490.0}
VAPOR = {"vapor_temperature_k": 285.928, "vapor_pressure_pa": 917_222.0}


def demo(length_m=18.288, **more):
    given = {"covered_length_m": 4.572, **LIQUID, **VAPOR, **more}
    return lineset.line_set_charge("R-454B", "3/8", "3/4", length_m, **given)


def test_tubes_by_name_and_by_diameter():
    # ASTM B280 (published).
    assert lineset.Tube("3/8").inside_diameter_m == pytest.approx(0.311 * 0.0254, rel=1e-12)
    assert lineset.Tube("3/8", temper="drawn").inside_diameter_m == pytest.approx(0.315 * 0.0254, rel=1e-12)
    assert lineset.Tube("10 mm").inside_diameter_m == pytest.approx(0.008)
    assert lineset.Tube(inside_diameter_m=0.0079).outside_diameter_m is None
    tube = lineset.Tube(outside_diameter_m=0.01, wall_m=0.001, inside_diameter_uncertainty_m=1e-5)
    assert (tube.wall_m, tube.inside_diameter_uncertainty_m) == (0.001, 1e-5)
    assert "3/8 in" in repr(lineset.Tube("3/8"))


def test_tubes_that_are_none():
    with pytest.raises(satline.UnknownChoiceError, match="1-1/8"):
        lineset.Tube("3/7")
    with pytest.raises(satline.UnknownChoiceError, match="annealed, drawn"):
        lineset.Tube("3/8", temper="soft")
    with pytest.raises(satline.OutOfRangeError, match="radius") as refused:
        lineset.Tube(outside_diameter_m=0.01, wall_m=0.005)
    assert refused.value.upper == pytest.approx(0.00475)
    for wrong in ({}, {"outside_diameter_m": 0.01}, {"inside_diameter_m": 0.01, "wall_m": 0.001}):
        with pytest.raises(TypeError):
            lineset.Tube(**wrong)


def test_charge_per_length_takes_numbers_and_arrays():
    # Computed apart from this library: 0.498 and 0.072 oz/ft.
    one = lineset.charge_per_length_kg_m("R-454B", "3/8", 308.15, pressure_pa=2_514_490.0)
    assert isinstance(one, float) and one / OUNCES_PER_FOOT == pytest.approx(0.498, abs=0.0015)
    vapor = lineset.charge_per_length_kg_m("R-454B", lineset.Tube("3/4"), [285.928], "vapor", [[917_222.0]])
    assert vapor.shape == (1, 1) and vapor[0, 0] / OUNCES_PER_FOOT == pytest.approx(0.072, abs=0.0005)
    refrigerant = satline.refrigerant("R-410A")
    temperatures = np.array([290.0, 300.0, 310.0])
    many = lineset.charge_per_length_kg_m(refrigerant, "1/2", temperatures)
    expected = refrigerant.saturated_liquid(temperatures).density_kg_m3 * lineset.Tube("1/2").bore_area_m2
    np.testing.assert_allclose(many, expected, rtol=1e-12)
    with pytest.raises(satline.OutOfRangeError, match="liquid line") as refused:
        lineset.charge_per_length_kg_m(refrigerant, "1/2", np.array([300.0, 330.0]), pressure_pa=2.0e6)
    assert refused.value.index == (1,)
    with pytest.raises(satline.UnknownChoiceError):
        lineset.charge_per_length_kg_m(refrigerant, "1/2", 300.0, "gas")


def test_a_line_set_by_hand():
    charge = demo(accessories_kg=[0.02, (0.05, 0.01)])
    by_hand = 45 * 0.570 * 0.028349523125
    assert charge.computed_kg == pytest.approx(by_hand, rel=4e-3)
    assert charge.mass_kg == pytest.approx(charge.computed_kg + 0.07)
    assert charge.liquid.beyond_kg + charge.vapor.beyond_kg == pytest.approx(charge.computed_kg)
    assert charge.accessories_uncertainty_kg == pytest.approx(0.01)
    assert 0.01 < charge.standard_uncertainty_kg < 0.05
    text = str(charge)
    for part in ("R-454B line set: ADD 0.79", "0.498 oz/ft", "15 ft", "drier", "can burn", "±", "licensed"):
        assert part in text, part
    compact = demo(compact=True)
    assert abs(compact.mass_kg - charge.computed_kg) < compact.standard_uncertainty_kg
    assert compact.mass_kg != charge.computed_kg


def test_recover_and_the_makers_figure():
    short = demo(3.0)
    assert short.action == "recover" and short.mass_kg < 0
    assert "RECOVER 0." in str(short) and "vent" in str(short) and "remove" not in str(short).lower()
    assert demo(4.572).action == "nothing"
    makers = demo(makers_charge_per_length_kg_m=(0.25 * OUNCES_PER_FOOT, 0.0))
    assert makers.mass_kg == pytest.approx(0.25 * 45 * 0.028349523125) and "differ" in makers.advice
    assert "maker's figure" in str(makers)


def test_a_device_outdoors():
    indoors, outdoors = demo(), demo(metering_place="outdoor", downstream_temperature_k=281.15)
    assert 0.28 < outdoors.liquid.holds_kg / indoors.liquid.holds_kg < 0.42
    assert indoors.liquid.quality is None and 0.1 < outdoors.liquid.quality < 0.3
    assert "quality" in str(outdoors)
    assert demo(metering_place="outdoor", downstream_pressure_pa=1.0e6).liquid.quality > 0.1
    for wrong in ({"metering_place": "outdoor"}, {"downstream_temperature_k": 281.15}):
        with pytest.raises(TypeError, match="downstream"):
            demo(**wrong)
    with pytest.raises(satline.UnknownChoiceError):
        demo(metering_place="roof")


@pytest.mark.parametrize(
    ("more", "quantity"),
    [
        ({"length_m": -1.0}, "length of the line set"),
        ({"covered_length_m": -1.0}, "length that the factory charge covers"),
        ({"liquid_temperature_k": 330.0}, "temperature of the liquid line"),
        ({"vapor_temperature_k": 270.0}, "temperature of the vapour line"),
        ({"accessories_kg": [-0.1]}, None),
        ({"length_uncertainty_m": -0.1}, "uncertainty of the length"),
        ({"metering_place": "outdoor", "downstream_pressure_pa": 2.6e6}, "pressure behind the metering device"),
    ],
)
def test_bad_input_is_named(more, quantity):
    with pytest.raises(satline.OutOfRangeError) as refused:
        demo(**more)
    assert quantity is None or refused.value.quantity == quantity
