"""Heating: what can be judged, and that what cannot is said."""

import json
import math

import numpy as np
import psychrolib
import pytest

import satline

psychrolib.SetUnitSystem(psychrolib.SI)

# Demo: 35 °F outdoors, 70 °F air warmed to 95 °F.
SOUND = {
    "refrigerant": "R-410A",
    "mode": "heating",
    "outdoor_dry_bulb": "35 degF",
    "return_dry_bulb": "70 degF",
    "supply_dry_bulb": "95 degF",
    "airflow": "1150 cfm",
    "altitude": "0 ft",
    "nominal_capacity": "3 ton",
    "suction_pressure": "85 psig",
    "liquid_pressure": "340 psig",
}
fahrenheit = satline.units.kelvin_from_fahrenheit


@pytest.mark.parametrize("pressure_pa", [101_325.0, 83_000.0, 95_000.0])
@pytest.mark.parametrize("dry_c, wet_c, supply_c", [(21.0, 13.0, 36.0), (18.0, 10.0, 40.0), (22.5, 15.5, 31.0)])
def test_the_heat_against_psychrolib(dry_c, wet_c, supply_c, pressure_pa):
    ratio = psychrolib.GetHumRatioFromTWetBulb(dry_c, wet_c, pressure_pa)
    rise = psychrolib.GetMoistAirEnthalpy(supply_c, ratio) - psychrolib.GetMoistAirEnthalpy(dry_c, ratio)
    expected = 0.5 / psychrolib.GetMoistAirVolume(dry_c, ratio, pressure_pa) * rise
    found = satline.judge_heating(
        satline.Reading(
            mode="heating",
            return_dry_bulb_k=dry_c + 273.15,
            return_wet_bulb_k=wet_c + 273.15,
            supply_dry_bulb_k=supply_c + 273.15,
            airflow_m3_s=0.5,
            ambient_pressure_pa=pressure_pa,
        )
    )
    assert found.values["delivered_capacity_w"].value == pytest.approx(expected, rel=1e-6)


def test_a_sound_reading():
    chart = satline.visit.TargetGrid(
        "liquid-pressure",
        ("outdoor-dry-bulb", [fahrenheit(17), fahrenheit(47)]),
        None,
        [satline.units.pascal_from_psig(300.0), satline.units.pascal_from_psig(360.0)],
    )
    finding = satline.judge_heating(
        SOUND,
        outdoor_dew_point_k=fahrenheit(33),
        valve_suction_inlet_temperature_k=fahrenheit(27),
        valve_suction_outlet_temperature_k=fahrenheit(40),
        valve_probe_limit_k=0.3,
        chart=chart,
        chart_tolerance=100e3,
    )
    assert finding.frost == "forms" and finding.reversing_valve == "suspected" and finding.problems == ()
    assert finding.capacity == "not-very-low"
    assert finding.values["valve_suction_rise_k"].standard_uncertainty == pytest.approx(0.3 * math.sqrt(2 / 3))
    # 300 + 18/30·60 psig.
    deviation = finding.chart.measured.deviation
    assert finding.chart.outcome == "within" and deviation == pytest.approx(4 * 6894.757, rel=1e-5)
    assert "charge-by-weight" in finding.limits and "hot-gas" in finding.cautions
    assert "weight" in finding.sentence("charge-by-weight") and finding.sentence("frost").startswith("Frost forms")
    assert "Heat delivered" in str(finding) and "Btu/h" in str(finding) and "kW" in finding.in_words("si")
    written = json.loads(finding.to_json())
    for name in ("capacity", "frost", "reversing_valve"):
        assert written[name] == getattr(finding, name)
    assert set(written["values"]) == set(finding.values)


def test_what_is_not_heating_and_what_contradicts_itself():
    found = satline.judge_heating({**SOUND, "mode": "cooling"})
    assert found.problems == ("not-heating",) and found.values == {}
    found = satline.judge_heating({**SOUND, "supply_dry_bulb": "60 degF"})
    assert "supply-not-warmer" in found.problems and "delivered_capacity_w" not in found.values
    empty = satline.judge_heating({"mode": "heating"})
    assert empty.frost == "unknown" and empty.reversing_valve == "not-measured" and empty.chart is None
    assert {"suction_pressure_pa", "outdoor_dew_point_k"} <= {missing.field for missing in empty.missing}


def test_bad_arguments():
    chart = satline.visit.TargetGrid("power", ("outdoor-dry-bulb", [270.0, 280.0]), None, [2000.0, 2500.0])
    with pytest.raises(ValueError, match="together"):
        satline.judge_heating(SOUND, chart=chart)
    with pytest.raises(ValueError, match="together"):
        satline.judge_heating(SOUND, chart_tolerance=5.0)
    for arguments in (
        {"outdoor_dew_point_k": 20.0},
        {"valve_suction_inlet_temperature_k": 5e3},
        {"valve_probe_limit_k": -0.1},
        {"chart": chart, "chart_tolerance": -1.0},
    ):
        with pytest.raises(satline.OutOfRangeError):
            satline.judge_heating(SOUND, **arguments)
    with pytest.raises(satline.NotFiniteError):
        satline.judge_heating(SOUND, outdoor_dew_point_k=math.nan)
    with pytest.raises(satline.UnknownFieldError):
        satline.judge_heating({"suction_presure_pa": 9e5})
    with pytest.raises(satline.UnknownChoiceError):
        satline.judge_heating(SOUND).in_words("metric")
    with pytest.raises(satline.UnknownChoiceError, match="frost"):
        satline.judge_heating(SOUND).sentence("charge")


@pytest.mark.parametrize("subset", range(64))
def test_any_subset_of_fields(subset):
    random = np.random.default_rng(subset)
    fields = {name: value for name, value in SOUND.items() if name == "mode" or random.random() < 0.6}
    finding = satline.judge_heating(fields)
    assert finding.cautions and "charge-by-weight" in finding.limits
    for value in finding.values.values():
        assert math.isfinite(value.value) and value.standard_uncertainty > 0
