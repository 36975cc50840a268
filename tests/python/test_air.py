"""Moist air, the coil's air and capacity in Python: the same numbers for arrays as for numbers, and good errors."""

import inspect

import numpy as np
import pytest

import satline
from satline.air import CoilAir, Uncertain

MEASURES = {"wet_bulb_k": 291.0, "relative_humidity": 0.4, "dew_point_k": 280.0, "humidity_ratio": 0.008}
FIELDS = [
    "wet_bulb_k", "dew_point_k", "relative_humidity", "humidity_ratio", "enthalpy_j_kg", "density_kg_m3",
    "specific_volume_m3_kg", "degree_of_saturation", "vapor_pressure_pa", "density_ratio",
]  # fmt: skip


def test_the_fixed_names():
    assert list(inspect.signature(satline.air.moist_air).parameters) == ["dry_bulb_k", "pressure_pa", *MEASURES]
    assert list(inspect.signature(satline.air.standard_pressure_pa).parameters) == ["altitude_m"]


@pytest.mark.parametrize("module", [satline.air, satline.capacity])
def test_everything_is_documented(module):
    for name in module.__all__:
        thing = getattr(module, name)
        if callable(thing):
            assert inspect.getdoc(thing), name


@pytest.mark.parametrize("measure", MEASURES)
def test_arrays_are_as_numbers_and_broadcast(measure):
    dry = np.array([[298.15], [305.0]])
    humidity = MEASURES[measure] * np.array([0.999, 1.0])
    pressure = 90e3
    many = satline.air.moist_air(dry, pressure_pa=pressure, **{measure: humidity})
    assert many.shape == (2, 2) and len(many) == 2
    for row in range(2):
        for column in range(2):
            one = satline.air.moist_air(dry[row, 0], pressure_pa=pressure, **{measure: humidity[column]})
            for field in FIELDS:
                assert getattr(many, field)[row, column] == getattr(one, field), field
                assert type(getattr(one, field)) is float
    pressures = satline.air.moist_air(300.0, pressure_pa=[80e3, 1e5], **{measure: MEASURES[measure]})
    assert pressures.density_kg_m3[0] < pressures.density_kg_m3[1]


def test_the_handbooks_example():
    """ASHRAE Fundamentals 2017 ch. 1: 40 degC dry and 20 degC wet bulb, read off a chart."""
    air = satline.air.moist_air(313.15, wet_bulb_k=293.15)
    assert air.humidity_ratio == pytest.approx(0.0065, abs=1e-4)
    assert air.enthalpy_j_kg == pytest.approx(56.7e3, abs=300)
    assert air.specific_volume_m3_kg == pytest.approx(0.896, abs=5e-4)


def test_standard_pressures():
    """ASHRAE Fundamentals 2017 ch. 1, table 1."""
    assert satline.air.standard_pressure_pa([500, 1000, 4000]) == pytest.approx([95461, 89875, 61640], rel=2e-5)
    with pytest.raises(satline.OutOfRangeError, match="altitude"):
        satline.air.standard_pressure_pa(9000)


def test_dry_air_has_no_dew_point():
    assert satline.air.moist_air(300.0, humidity_ratio=0.0).dew_point_k is None
    points = satline.air.moist_air(300.0, humidity_ratio=[0.0, 0.008]).dew_point_k
    assert points.mask.tolist() == [True, False]


def test_bad_input_says_which_and_why():
    with pytest.raises(satline.OutOfRangeError, match="exchanged") as caught:
        satline.air.moist_air(300.0, wet_bulb_k=301.0)
    assert caught.value.quantity == "wet bulb temperature" and caught.value.upper == 300.0
    assert 280 < caught.value.lower < 290
    with pytest.raises(satline.OutOfRangeError) as caught:
        satline.air.moist_air(300.0, wet_bulb_k=[290.0, 270.0])
    assert caught.value.index == (1,) and caught.value.value == 270.0
    with pytest.raises(satline.OutOfRangeError, match="not a percentage") as caught:
        satline.air.moist_air([[300.0], [301.0]], relative_humidity=[0.5, 0.6, 55.0])
    assert caught.value.index == (0, 2)
    with pytest.raises(satline.OutOfRangeError, match="dew point"):
        satline.air.moist_air(300.0, dew_point_k=300.5)
    with pytest.raises(satline.OutOfRangeError, match="humidity ratio"):
        satline.air.moist_air(300.0, humidity_ratio=0.1)
    with pytest.raises(satline.NotFiniteError):
        satline.air.moist_air(300.0, relative_humidity=float("nan"))
    with pytest.raises(satline.OutOfRangeError, match="station"):
        satline.air.moist_air(300.0, relative_humidity=0.5, pressure_pa=101.325)
    with pytest.raises(TypeError, match="give one of"):
        satline.air.moist_air(300.0)
    with pytest.raises(TypeError, match="only one"):
        satline.air.moist_air(300.0, wet_bulb_k=290.0, relative_humidity=0.5)
    with pytest.raises(TypeError, match="a number or an array"):
        satline.air.moist_air("300", wet_bulb_k=290.0)
    with pytest.raises(ValueError):
        satline.air.moist_air([300.0, 301.0], relative_humidity=[0.1, 0.2, 0.3])


def coil(**changes):
    measured = {
        "return_dry_bulb_k": Uncertain(299.15, 0.2),
        "return_relative_humidity": Uncertain(0.5, 0.02),
        "supply_dry_bulb_k": Uncertain(286.15, 0.2),
        "supply_relative_humidity": Uncertain(0.92, 0.02),
    }
    return CoilAir(**{**measured, **changes})


def test_capacity_and_airflow_are_each_others_inverse():
    found = coil().capacity(0.6)
    assert found.total_w.value == found.sensible_w.value + found.latent_w.value
    assert 0 < found.sensible_heat_ratio.value < 1 and found.sensible_heat_ratio.standard_uncertainty > 0
    assert coil().airflow(total_w=found.total_w).entering_m3_s.value == pytest.approx(0.6, rel=1e-12)
    flow = coil().airflow(evaporator_w=found.coil_w.value + 400, blower_w=400)
    assert flow.entering_m3_s.value == pytest.approx(0.6, rel=1e-12)
    again = coil().capacity(flow.standard_m3_s, "standard")
    assert again.total_w.value == pytest.approx(found.total_w.value, rel=1e-12)


def test_the_coils_answers_are_arrays_for_arrays():
    supplies = np.array([285.0, 286.0, 299.0])
    many = coil(supply_dry_bulb_k=Uncertain(supplies, 0.2)).capacity(Uncertain(0.6, 0.02))
    for place, supply in enumerate(supplies):
        one = coil(supply_dry_bulb_k=Uncertain(float(supply), 0.2)).capacity(Uncertain(0.6, 0.02))
        assert many.total_w.value[place] == one.total_w.value
        assert many.total_w.standard_uncertainty[place] == one.total_w.standard_uncertainty
    # The last one did not cool: no ratio of heats.
    assert many.sensible_heat_ratio.value.mask.tolist() == [False, False, True]
    surface = coil(supply_dry_bulb_k=supplies).apparatus_dew_point()
    assert surface.temperature_k.value.mask.tolist() == [False, False, True]
    assert (surface.temperature_k.value[:2] < supplies[:2]).all()


def test_what_is_not_available_says_why():
    with pytest.raises(satline.NotAvailableError, match="dry"):
        coil(supply_relative_humidity=None).apparatus_dew_point()
    with pytest.raises(satline.NotAvailableError, match="coil is wet"):
        coil(supply_relative_humidity=None).capacity(0.6)
    with pytest.raises(satline.NotAvailableError, match="wrong way"):
        coil().airflow(heating_w=9600)
    with pytest.raises(satline.OutOfRangeError, match="airflow") as caught:
        coil().capacity([0.6, 60.0])
    assert caught.value.index == (1,)
    with pytest.raises(TypeError, match="return air"):
        CoilAir(return_dry_bulb_k=299.0, supply_dry_bulb_k=286.0)
    with pytest.raises(ValueError, match="place"):
        coil().capacity(0.6, "outside")
    with pytest.raises(satline.OutOfRangeError, match="uncertainty"):
        coil(return_dry_bulb_k=Uncertain(299.0, -0.1)).capacity(0.6)


def test_the_split_has_the_protocols_target():
    """Return 78 degF dry and 65 degF wet bulb asks for 18.8 degF (published table, from memory)."""
    f = satline.units.kelvin_from_fahrenheit
    air = CoilAir(
        return_dry_bulb_k=Uncertain(f(78), 0.3), return_wet_bulb_k=Uncertain(f(65), 0.3), supply_dry_bulb_k=f(58),
        supply_relative_humidity=0.9,
    )  # fmt: skip
    split = air.split()
    assert split.target_k.value == satline.target_split_k(f(78), f(65)) == pytest.approx(18.8 * 5 / 9, abs=0.02)
    assert split.deviation_k.value == pytest.approx(split.split_k.value - split.target_k.value)
    cold = CoilAir(return_dry_bulb_k=f(60), return_wet_bulb_k=f(52), supply_dry_bulb_k=f(55))
    assert cold.split().target_k is None


def test_airflow_per_capacity():
    assert satline.units.m3_s_w_from_cfm_per_ton(400) == pytest.approx(5.3678e-5, rel=1e-4)
    assert satline.units.cfm_per_ton_from_m3_s_w([5.3678e-5]) == pytest.approx([400], rel=1e-4)


CIRCUIT = {
    "suction_pressure_pa": Uncertain(9.5e5, 7e3),
    "suction_temperature_k": Uncertain(288.0, 0.4),
    "liquid_pressure_pa": Uncertain(2.6e6, 7e3),
    "liquid_temperature_k": Uncertain(310.0, 0.4),
    "discharge_pressure_pa": 2.7e6,
    "discharge_temperature_k": Uncertain(346.0, 0.5),
    "compressor_power_w": Uncertain(2000.0, 20.0),
}


def test_circuit_capacity():
    """Enthalpies from satline's own states, which CoolProp checks."""
    found = satline.capacity.circuit_capacity("R-410A", **CIRCUIT)
    r = satline.refrigerant("R-410A")
    gas, hot = r.state(288.0, 9.5e5).enthalpy_j_kg, r.state(346.0, 2.7e6).enthalpy_j_kg
    flow = 0.9 * 2000 / (hot - gas)
    assert found.mass_flow_kg_s.value == pytest.approx(flow, rel=1e-12)
    assert found.evaporator_w.value == pytest.approx(flow * (gas - r.state(310.0, 2.6e6).enthalpy_j_kg), rel=1e-12)
    assert found.evaporator_end == "suction-port" and found.line_gain_w is None and found.work_share is None
    assert found.eer_btu_wh.value == pytest.approx(found.cop.value * 3.412142, rel=1e-6)
    many = satline.capacity.circuit_capacity(r, **{**CIRCUIT, "suction_temperature_k": [288.0, 275.0]})
    # The second suction line is wet.
    assert many.evaporator_w.value.mask.tolist() == [False, True]


def test_circuit_errors():
    def change(**changes):
        return satline.capacity.circuit_capacity("R-410A", **{**CIRCUIT, **changes})

    with pytest.raises(satline.NotAvailableError, match="liquid comes back"):
        change(suction_temperature_k=275.0)
    with pytest.raises(satline.OutOfRangeError, match="holds vapour") as caught:
        change(liquid_temperature_k=330.0)
    assert caught.value.quantity == "liquid line temperature" and 314 < caught.value.upper < 318
    with pytest.raises(satline.OutOfRangeError, match="discharge pressure"):
        change(discharge_pressure_pa=[2.7e6, 8e5])
    with pytest.raises(TypeError, match="together"):
        change(discharge_pressure_pa=None)
    with pytest.raises(satline.NotAvailableError, match="mass flow"):
        change(discharge_pressure_pa=None, discharge_temperature_k=None)
