"""Two refrigerants in one unit, recomputed with CoolProp, an independent general-purpose library; airflow, charts and
performance, by hand."""

import doctest
import math

import numpy as np
import pytest

import satline
from satline import _visit_airflow, _visit_performance, _visit_retrofit, _visit_target_grid, visit

CP = pytest.importorskip("CoolProp.CoolProp")


def fahrenheit(value):
    return (value + 459.67) / 1.8


EVAPORATING, CONDENSING = fahrenheit(45), fahrenheit(110)


class Oracle:
    """The plain cycle by CoolProp's high-level interface: of pure fluids by their equation, of blends by the same mixture
    models as here."""

    def __init__(self, name):
        self.name = name

    def prop(self, wanted, *inputs):
        return CP.PropsSI(wanted, *inputs, self.name)

    def cycle(self, evaporating, condensing, superheat, subcooling, efficiency, end=0):
        low = self.prop("P", "T", evaporating, "Q", 1)
        high = self.prop("P", "T", condensing, "Q", end)
        bubble = self.prop("T", "P", high, "Q", 0)
        suction = evaporating + superheat
        liquid = bubble - subcooling
        h1, s1 = self.prop("H", "P", low, "T", suction), self.prop("S", "P", low, "T", suction)
        effect = self.prop("H", "P", low, "Q", 1) - self.prop("H", "P", high, "T", liquid)
        h2 = h1 + (self.prop("H", "P", high, "S", s1) - h1) / efficiency
        density = self.prop("D", "P", low, "T", suction)
        return {
            "evaporating_pressure_pa": low,
            "condensing_pressure_pa": high,
            "pressure_ratio": high / low,
            "suction_density_kg_m3": density,
            "discharge_temperature_k": self.prop("T", "P", high, "H", h2),
            "discharge_density_kg_m3": self.prop("D", "P", high, "H", h2),
            "liquid_density_kg_m3": self.prop("D", "P", high, "T", liquid),
            "bubble_density_kg_m3": self.prop("D", "P", high, "Q", 0),
            "refrigerating_effect_j_kg": effect,
            "volumetric_capacity_j_m3": density * effect,
            "coefficient_of_performance": effect / (h2 - h1),
        }


def compared(cycle, theirs, tolerance):
    for name, value in theirs.items():
        assert getattr(cycle, name) == pytest.approx(value, rel=tolerance), name


@pytest.mark.parametrize("new", ["R-134a", "R-290", "R-1234yf", "R-32", "R-152a", "R-125"])
def test_pure_refrigerants_by_coolprop(new):
    found = visit.compare_refrigerants("R-22", new, EVAPORATING, CONDENSING, 8.0, 6.0)
    names = {"R-22": "R22", "R-290": "Propane", "R-1234yf": "R1234yf", "R-134a": "R134a", "R-152a": "R152A"}
    for cycle, designation in ((found.old_cycle, "R-22"), (found.new_cycle, new)):
        oracle = Oracle(names.get(designation, designation.replace("-", "")))
        compared(cycle, oracle.cycle(EVAPORATING, CONDENSING, 8.0, 6.0, 0.7), 1e-6)


@pytest.mark.parametrize("end", [0, 1])
def test_r407c_for_r22_by_coolprop(end):
    """The blend by CoolProp's pseudo-pure R-407C, an equation of its own: what it may differ by is what the two equations
    differ by: 0.024 % in bubble and dew pressure, less than 0.1 % in all of the cycle."""
    at = "dew" if end else "bubble"
    found = visit.compare_refrigerants("R-22", "R-407C", EVAPORATING, CONDENSING, 10.0, 10.0, condensing_at=at)
    theirs = Oracle("R407C").cycle(EVAPORATING, CONDENSING, 10.0, 10.0, 0.7, end)
    compared(found.new_cycle, theirs, 1e-3)
    old = Oracle("R22").cycle(EVAPORATING, CONDENSING, 10.0, 10.0, 0.7)
    expected = theirs["volumetric_capacity_j_m3"] / old["volumetric_capacity_j_m3"]
    assert found.volumetric_capacity_ratio == pytest.approx(expected, abs=2e-3)
    if not end:
        # "About 0.92" at 45/110 degF and 10/10 K, computed by others: dew for evaporating, bubble for condensing.
        assert found.volumetric_capacity_ratio == pytest.approx(0.92, abs=5e-3)


# Mass fractions of ASHRAE 34.
BLENDS = {
    "R-407C": (("R32", 0.23), ("R125", 0.25), ("R134a", 0.52)),
    "R-454B": (("R32", 0.689), ("R1234yf", 0.311)),
    "R-448A": (("R32", 0.26), ("R125", 0.26), ("R1234yf", 0.20), ("R134a", 0.21), ("R1234ze(E)", 0.07)),
}


class Mixture:
    """Pressure, enthalpy difference and entropy of a mixture at a temperature and density by CoolProp, the phase imposed:
    its own flash fails at scattered points, its equations do not."""

    def __init__(self, parts):
        names = "&".join(name for name, _ in parts)
        self.state = CP.AbstractState("HEOS", names)
        moles = [share / CP.PropsSI("M", name) for name, share in parts]
        self.state.set_mole_fractions([mole / sum(moles) for mole in moles])

    def pressure(self, temperature, density, kind):
        self.state.specify_phase(kind)
        self.state.update(CP.DmassT_INPUTS, density, temperature)
        return self.state.p(), self.state.hmass()


@pytest.mark.parametrize("name", BLENDS)
def test_blends_at_their_own_states_by_coolprop(name):
    """What does not need a flash: at each state's temperature and density CoolProp has the pressure, and the enthalpies
    between the states differ as the refrigerating effect says."""
    found = visit.compare_refrigerants("R-22", name, EVAPORATING, CONDENSING, 10.0, 10.0, useful_superheat=1.0)
    cycle, oracle = found.new_cycle, Mixture(BLENDS[name])
    gas, liquid = CP.iphase_gas, CP.iphase_liquid
    low, suction = oracle.pressure(cycle.suction_temperature_k, cycle.suction_density_kg_m3, gas)
    high, subcooled = oracle.pressure(cycle.liquid_temperature_k, cycle.liquid_density_kg_m3, liquid)
    out, discharge = oracle.pressure(cycle.discharge_temperature_k, cycle.discharge_density_kg_m3, gas)
    assert low == pytest.approx(cycle.evaporating_pressure_pa, rel=1e-8)
    # A liquid's pressure is a small difference of large terms.
    assert high == pytest.approx(cycle.condensing_pressure_pa, rel=1e-6)
    assert out == pytest.approx(cycle.condensing_pressure_pa, rel=1e-8)
    # CoolProp's ideal parts of a mixture take critical for reducing temperatures (see oracle_states.py): 1e-6 and more.
    assert suction - subcooled == pytest.approx(cycle.refrigerating_effect_j_kg, rel=2e-4)
    work = cycle.refrigerating_effect_j_kg / cycle.coefficient_of_performance
    assert discharge - suction == pytest.approx(work, rel=2e-4)


def test_what_is_told():
    found = visit.compare_refrigerants(satline.refrigerant("R-22"), "R-407C", EVAPORATING, CONDENSING, 10.0, 10.0)
    assert found.old.designation == "R-22" and found.new.designation == "R-407C"
    assert found.mass_flow_ratio == found.at_equal_displacement.mass_flow_ratio
    assert found.orifice_area_ratio == found.at_equal_capacity.orifice_area_ratio
    assert (found.old_oil, found.new_oil) == ("mineral-or-alkylbenzene", "polyolester")
    assert found.new_cycle.condensing_glide_k == pytest.approx(4.7, abs=0.5)
    assert any("licensed" in caution for caution in found.cautions)
    said = str(found)
    for part in ("R-407C in place of R-22: cannot-tell", "plate", "psia", "orifice", "Label"):
        assert part in said, said
    mass, uncertainty = found.starting_charge_kg(3.2, 0.05)
    assert mass == pytest.approx(3.2 * 0.9 * found.charge_ratio) and uncertainty == pytest.approx(mass * 0.05 / 3.2)
    assert found.starting_charge_kg(3.2, share=1.0)[0] == pytest.approx(3.2 * found.charge_ratio)
    plate = visit.compare_refrigerants(
        "R-22", "R-407C", EVAPORATING, CONDENSING, 10.0, 10.0, high_side_design_pressure_pa=2.9e6
    )
    assert (plate.outcome, plate.reasons) == ("possible", ("within-design",))
    weak = visit.compare_refrigerants(
        "R-22", "R-410A", EVAPORATING, CONDENSING, 10.0, 10.0,
        high_side_design_pressure_pa=2.2e6, low_side_design_pressure_pa=1.2e6,
    )  # fmt: skip
    assert weak.outcome == "blocked" and "condensing-above-design" in weak.reasons
    assert visit.compare_refrigerants("R-22", "R-32", EVAPORATING, CONDENSING, 10.0, 10.0).outcome == "blocked"


def test_the_same_refrigerant_twice(each_refrigerant):
    critical = each_refrigerant.critical_temperature_k
    low, high = 0.75 * critical, 0.87 * critical
    try:
        found = visit.compare_refrigerants(
            each_refrigerant, each_refrigerant, low, high, 5.0, 3.0, standstill_k=low, low_side_standstill_k=low
        )
    except satline.OutOfRangeError as error:
        # Colder than its equations reach.
        assert "evaporating" in str(error)
        return
    assert (found.volumetric_capacity_ratio, found.mass_flow_ratio, found.orifice_area_ratio) == (1.0, 1.0, 1.0)
    assert (found.outcome, found.charge_ratio, found.coefficient_of_performance_ratio) == ("possible", 1.0, 1.0)


def test_bad_conditions_are_refused():
    def compare(*conditions, **options):
        return visit.compare_refrigerants("R-22", "R-407C", *(conditions or (EVAPORATING, CONDENSING, 5.0, 5.0)), **options)

    with pytest.raises(satline.UnknownRefrigerantError):
        visit.compare_refrigerants("R-22", "R-9999", EVAPORATING, CONDENSING, 5.0, 5.0)
    with pytest.raises(satline.OutOfRangeError, match="condensing state of the new refrigerant"):
        visit.compare_refrigerants("R-22", "R-744", EVAPORATING, CONDENSING, 5.0, 5.0)
    with pytest.raises(satline.OutOfRangeError, match="condensing state"):
        compare(CONDENSING, EVAPORATING, 5.0, 5.0)
    with pytest.raises(satline.UnknownChoiceError, match="bubble, mean, dew"):
        compare(condensing_at="middle")
    with pytest.raises(satline.OutOfRangeError, match="isentropic efficiency"):
        compare(isentropic_efficiency=70)
    with pytest.raises(satline.OutOfRangeError, match="useful share"):
        compare(useful_superheat=2)
    with pytest.raises(satline.OutOfRangeError, match="starting share"):
        compare().starting_charge_kg(3.0, share=90)
    for bad in (math.nan, math.inf, -5.0):
        with pytest.raises(satline.OutOfRangeError):
            compare(bad, CONDENSING, 5.0, 5.0)
        with pytest.raises(satline.OutOfRangeError):
            compare(EVAPORATING, bad, 5.0, 5.0)
        with pytest.raises(satline.OutOfRangeError):
            compare(EVAPORATING, CONDENSING, bad, 5.0)
        with pytest.raises(satline.OutOfRangeError):
            compare(EVAPORATING, CONDENSING, 5.0, bad)
        with pytest.raises(satline.OutOfRangeError):
            compare(high_side_design_pressure_pa=bad)
        with pytest.raises(satline.OutOfRangeError):
            compare().starting_charge_kg(bad)


def test_the_examples():
    result = doctest.testmod(_visit_retrofit)
    assert result.failed == 0 and result.attempted >= 4


# Airflow, charts and performance: the numbers are computed by hand here; their sources are in tests/tests/airflow.rs and
# tests/tests/target_grid.rs.


def test_airflow_by_plenum_pressure():
    found = visit.airflow_by_plenum_pressure_m3_s((0.5, 0.01), (40.0, 0.8), (32.0, 0.8))
    assert found.value == pytest.approx(0.5 * math.sqrt(40 / 32))
    relative = math.sqrt(0.02**2 + 0.01**2 + 0.0125**2)
    assert found.standard_uncertainty == pytest.approx(found.value * relative, rel=1e-3)
    assert isinstance(found.value, float) and "±" in str(found)
    many = visit.airflow_by_plenum_pressure_m3_s(0.5, (np.array([20.0, 40.0, 80.0]), 0.5), 20.0)
    assert many.value == pytest.approx([0.5, 0.5 * math.sqrt(2), 1.0]) and many.standard_uncertainty.shape == (3,)
    with pytest.raises(satline.OutOfRangeError, match="static pressure") as caught:
        visit.airflow_by_plenum_pressure_m3_s(0.5, np.array([20.0, 0.0]), 20.0)
    assert caught.value.__notes__ == ["at element (1,)"]
    with pytest.raises(satline.OutOfRangeError, match="standard uncertainty"):
        visit.airflow_by_plenum_pressure_m3_s((0.5, -0.1), 30.0, 20.0)
    with pytest.raises(TypeError):
        visit.airflow_by_plenum_pressure_m3_s((0.5, 0.1, 0.2), 30.0, 20.0)


def test_blower_table():
    table = visit.BlowerTable([25, 50, 75], [1, 2], [[0.45, 0.55], [0.43, 0.53], [None, 0.50]])
    assert table.at((60, 2), 2).value == pytest.approx(0.53 - 0.4 * 0.03)
    assert table.at((60, 2), 2).standard_uncertainty == pytest.approx(2 * 0.03 / 25)
    assert table.at(60, 1) is None and "blank" in table.why_not(60, 1)
    assert table.at(100, 2) is None and "beyond" in table.why_not(100, 2)
    assert table.at(60, 1.5) is None and table.why_not(60, 2) is None
    with pytest.raises(satline.OutOfRangeError, match="axis"):
        visit.BlowerTable([50, 25], [1], [[0.4], [0.5]])
    with pytest.raises(satline.OutOfRangeError, match="airflow"):
        visit.BlowerTable([25], [1], [[900]])
    with pytest.raises(ValueError, match="each tap"):
        visit.BlowerTable([25], [1, 2], [[0.5]])
    with pytest.raises(satline.NotFiniteError):
        table.at(math.nan, 1)


def test_fans_and_filters():
    then = visit.fan_at_speed(0.6, 150.0, 450.0, (1.1, 0.0), 0.9)
    assert then.airflow_m3_s.value == pytest.approx(0.66)
    assert then.pressure_pa.value == pytest.approx(150 * 1.21 * 0.9)
    assert then.power_w.value == pytest.approx(450 * 1.331 * 0.9)
    assert visit.fan_at_speed(0.6, 150.0, 450.0, [0.5, 1.0]).power_w.value == pytest.approx([56.25, 450])
    airflow = 1200 * 0.3048**3 / 60
    power = visit.fan_power_per_airflow((800, 10), (airflow, 0))
    assert power.watts_per_cfm.value == pytest.approx(800 / 1200) and power.outcome == "above"
    assert visit.fan_power_per_airflow(700, (airflow, 0.02)).outcome == "cannot-tell"
    assert "lock the power out" in str(power)
    dirt = visit.air_resistance(80, 20)
    assert (dirt.resistance_ratio.value, dirt.airflow_ratio.value, dirt.outcome) == (4.0, 0.5, "above")
    assert "at least" in str(dirt) and "dirty" in str(dirt)
    fair = visit.air_resistance(30, 20, airflow_m3_s=0.4, clean_airflow_m3_s=0.5)
    assert fair.resistance_ratio.value == pytest.approx(1.5 / 0.64) and not fair.airflow_assumed
    with pytest.raises(TypeError, match="both"):
        visit.air_resistance(30, 20, airflow_m3_s=0.4)
    with pytest.raises(satline.OutOfRangeError, match="speed"):
        visit.fan_at_speed(0.6, 150.0, 450.0, 0)


def test_return_leakage():
    found = visit.return_leakage((297.0, 0.2), (303.0, 0.2), (325.0, 0.2))
    assert found.fraction.value == pytest.approx(6 / 28) and found.outcome == "above"
    assert "21.43" in str(found) and "carbon monoxide" in str(found)
    assert visit.return_leakage(0.009, 0.0095, 0.018, limit=0.2).fraction.value == pytest.approx(0.5 / 9)
    assert visit.return_leakage((297.0, 0.2), (294.0, 0.2), (325.0, 0.2)).outcome == "contradicts"
    with pytest.raises(satline.NotAvailableError, match="too like"):
        visit.return_leakage((297.0, 0.3), (297.2, 0.3), (297.5, 0.3))
    with pytest.raises(satline.OutOfRangeError, match="humidity ratio"):
        visit.return_leakage(0.009, 300.0, 0.018)


def test_a_chart():
    chart = visit.TargetGrid(
        "subcooling",
        ("outdoor-dry-bulb", [298.15, 308.15, 318.15]),
        ("return-dry-bulb", [289.15, 294.15]),
        [[5.0, 5.5], [6.0, 6.5], [None, 7.5]],
    )
    assert chart.at(303.15, 289.15).value == pytest.approx(5.5)
    assert chart.at((303.15, 0.5), (291.65, 0.5)).standard_uncertainty == pytest.approx(0.5 * math.hypot(0.1, 0.1))
    assert chart.at(312.0, 290.0) is None
    found = chart.compare((8.0, 0.3), 303.15, 289.15, tolerance=1.0)
    assert (found.outcome, found.deviation.value) == ("above", pytest.approx(2.5)) and "off by" in str(found)
    assert any("licensed" in caution for caution in found.cautions) and "one model" in str(found)
    blank = chart.compare(8.0, 312.0, 290.0, tolerance=1.0)
    assert (blank.outcome, blank.target, blank.deviation) == ("no-valid-test", None, None) and "blank" in str(blank)
    with pytest.raises(satline.NotAvailableError, match="two axes"):
        chart.at(303.15)
    with pytest.raises(satline.UnknownChoiceError, match="approach"):
        visit.TargetGrid("subcool", ("outdoor-dry-bulb", [300.0]), None, [5.0])
    with pytest.raises(satline.UnknownChoiceError, match="return-wet-bulb"):
        visit.TargetGrid("subcooling", ("outside", [300.0]), None, [5.0])
    with pytest.raises(satline.OutOfRangeError, match="air temperature"):
        visit.TargetGrid("subcooling", ("outdoor-dry-bulb", [75.0]), None, [5.0])
    with pytest.raises(ValueError, match="each column"):
        visit.TargetGrid("subcooling", ("outdoor-dry-bulb", [300.0]), ("airflow", [0.4, 0.5]), [[5.0]])
    with pytest.raises(satline.MalformedTextError) as caught:
        visit.TargetGrid.from_json('{\n"target": "superheat",\n"unit": "K",\n"rows": 5,\n"cells": []}')
    assert caught.value.line == 4
    text = '{"target": "approach", "unit": "degF", "label": "a", "demo": true, "rows": {"axis": "outdoor-dry-bulb", "unit": "degF", "values": [70, 90]}, "cells": [9, 18]}'
    loaded = visit.TargetGrid.from_json(text)
    assert loaded.demo and loaded.label == "a" and loaded.target == "approach" and loaded.columns is None
    assert loaded.cells == pytest.approx((5.0, 10.0))
    assert visit.approach_k([313.15, 314.15], 308.15).value == pytest.approx([5.0, 6.0])


def test_performance():
    # TN 1848 family at 26.7 and 35 degC: .956, .888 and .798 at -10, -20 and -30 % of charge.
    found = visit.charge_fault_effect(np.array([-0.1, -0.2, -0.3]), 26.7 + 273.15, 308.15)
    assert found.capacity.value == pytest.approx([0.956, 0.888, 0.798], abs=5e-4)
    assert found.capacity.standard_uncertainty == pytest.approx(np.array([0.03, 0.05, 0.06]) / math.sqrt(3))
    assert found.coefficient_of_performance.value == pytest.approx(found.capacity.value / found.power.value)
    assert "capacity x" in str(visit.charge_fault_effect(-0.1, 299.85, 308.15))
    expected = visit.expected_capacity_w(10e3, (67 + 459.67) / 1.8, 308.15)
    assert tuple(expected) == pytest.approx((10e3, 290))
    shape = visit.CapacityShape(by_wet_bulb_per_k=(0.03, 0.0), by_outdoor_per_k=(-0.01, 0.0), of_nominal=0.0)
    hot = visit.expected_capacity_w(10e3, (67 + 459.67) / 1.8, [308.15, 313.15], shape=shape)
    assert hot.value == pytest.approx([10e3, 10e3 * math.exp(-0.05)]) and hot.standard_uncertainty == pytest.approx([0, 0])
    assert visit.CapacityShape() == visit.CapacityShape(of_nominal=0.029)
    common = visit.expected_capacity_w(10e3, 290.15, 313.15, shape=visit.CapacityShape())
    assert common == visit.expected_capacity_w(10e3, 290.15, 313.15)
    gained = visit.gain((7600, 228), (10e3, 400), (9400, 282), (10.2e3, 408))
    assert gained.ratio.value == pytest.approx(0.94 / 1.02 / 0.76) and gained.outcome == "better"
    assert "delivers more" in str(gained) and "live parts" in str(gained)
    with pytest.raises(satline.OutOfRangeError, match="deviation of the charge"):
        visit.charge_fault_effect(-0.5, 299.85, 308.15)
    with pytest.raises(satline.OutOfRangeError, match="wet bulb"):
        visit.expected_capacity_w(10e3, 310.0, 308.15)


@pytest.mark.parametrize("module", [_visit_airflow, _visit_target_grid, _visit_performance])
def test_more_examples(module):
    result = doctest.testmod(module)
    assert result.failed == 0 and result.attempted >= 4
