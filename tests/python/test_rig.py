"""The rig from Python: what the binding must not lose of the core's rig, and how it meets the rest of the package."""

import doctest
import math
import threading

import numpy as np
import pytest

import satline
from satline import rig
from test_gil import stands_still

# Rating point A of AHRI 210/240: 95 degF outdoors, 80/67 degF indoors.
OUTDOOR, DRY, WET = satline.units.kelvin_from_fahrenheit(np.array([95.0, 80.0, 67.0])).tolist()
RATED = (OUTDOOR, DRY, WET)
CAPACITY = 10_550.0
METERINGS = ("fixed-orifice", "thermostatic-valve")
FAULTS = (
    "undercharge", "overcharge", "low_indoor_airflow", "restricted_condenser_air", "liquid_line_restriction",
    "compressor_leakage", "non_condensables", "metering_overfeeding", "metering_underfeeding", "suction_line_heat_gain",
)  # fmt: skip


@pytest.fixture(scope="module")
def orifice() -> rig.Unit:
    return rig.Unit("R-410A", "fixed-orifice", CAPACITY)


@pytest.fixture(scope="module")
def valve() -> rig.Unit:
    return rig.Unit("R-410A", "thermostatic-valve", CAPACITY)


@pytest.fixture(params=METERINGS)
def unit(request, orifice, valve) -> rig.Unit:
    return orifice if request.param == "fixed-orifice" else valve


def sign(value: float, dead: float) -> int:
    return 0 if abs(value) < dead else int(math.copysign(1, value))


def test_examples_of_the_documentation():
    found = doctest.testmod(rig)
    assert found.failed == 0 and found.attempted >= 10


@pytest.mark.parametrize("law", ["short-tube", "square-root", "tapered", "linear"])
@pytest.mark.parametrize("efficiency_class", ["basic", "standard", "high"])
def test_a_unit_meets_its_rating_with_its_nameplate_charge(law, efficiency_class):
    metering = METERINGS[law in {"tapered", "linear"}]
    unit = rig.Unit("R-32", metering, 7_000.0, efficiency_class=efficiency_class, law=law)
    state = unit.solve(*RATED)
    assert state.capacity_w == pytest.approx(7_000.0, rel=1e-3)
    assert state.charge_kg == pytest.approx(unit.nameplate_charge_kg, rel=1e-6)
    assert state.balance_miss < 1e-6
    assert (state.valve_lift is None) == (metering == "fixed-orifice")
    if unit.target_subcooling_k is not None:
        assert state.subcooling_k == pytest.approx(unit.target_subcooling_k, abs=0.01)


def test_a_better_class_needs_less_power():
    powers = [
        rig.Unit("R-410A", "thermostatic-valve", CAPACITY, efficiency_class=name).solve(*RATED).compressor_power_w
        for name in ("basic", "standard", "high")
    ]
    assert powers[0] > powers[1] > powers[2]


def test_superheat_and_subcooling_are_those_of_the_saturation_curves(unit, r410a):
    """The rig's map is its own; the package's curves, made otherwise, must say nearly the same."""
    state = unit.solve(*RATED)
    superheat = r410a.superheat_k(state.suction_line_temperature_k, state.suction_pressure_pa)
    subcooling = r410a.subcooling_k(state.liquid_line_temperature_k, state.liquid_pressure_pa)
    assert state.superheat_k == pytest.approx(superheat, abs=0.02)
    assert state.subcooling_k == pytest.approx(subcooling, abs=0.02)


def test_the_cycle_closes_on_the_equation_of_state(unit, r410a):
    """Heat from mass flow and enthalpies; a corner's enthalpy is that of the equation of state by the same reference."""
    state = unit.solve(*RATED)
    at = {point.place: point for point in state.cycle}
    taken = at["evaporator-outlet"].enthalpy_j_kg - at["evaporator-inlet"].enthalpy_j_kg
    assert state.mass_flow_kg_s * taken == pytest.approx(state.capacity_w, rel=1e-6)
    gas = r410a.state(state.suction_line_temperature_k, state.suction_pressure_pa)
    liquid = r410a.state(state.liquid_line_temperature_k, state.liquid_pressure_pa)
    assert at["vapor-port"].enthalpy_j_kg == pytest.approx(gas.enthalpy_j_kg, abs=100.0)
    assert at["liquid-port"].enthalpy_j_kg == pytest.approx(liquid.enthalpy_j_kg, abs=100.0)
    assert state.cycle[0] == state.cycle[-1]


# Signs of suction pressure, superheat, subcooling, liquid pressure of an orifice unit: common practice of the trade.
SIGNS = {
    "undercharge": (-1, +1, -1, -1),
    "overcharge": (+1, -1, +1, +1),
    "low_indoor_airflow": (-1, -1, None, -1),
    "restricted_condenser_air": (+1, -1, None, +1),
    "liquid_line_restriction": (-1, +1, +1, None),
    "compressor_leakage": (+1, None, None, -1),
}


@pytest.mark.parametrize("fault", SIGNS)
def test_an_orifice_unit_shows_a_fault_as_the_trade_knows_it(orifice, fault):
    healthy, ill = orifice.solve(*RATED), orifice.solve(*RATED, faults={fault: 0.15})
    names = ("suction_pressure_pa", "superheat_k", "subcooling_k", "liquid_pressure_pa")
    for name, expected in zip(names, SIGNS[fault], strict=True):
        change = getattr(ill, name) - getattr(healthy, name)
        if expected is not None:
            assert sign(change, 0.2 if name.endswith("_k") else 2e3) == expected, (name, change)


def test_less_air_cools_it_more(orifice):
    split = [
        DRY - orifice.solve(*RATED, faults={"low_indoor_airflow": severity}).supply_dry_bulb_k
        for severity in (0.0, 0.2, 0.4)
    ]
    assert split[0] < split[1] < split[2]


def test_exact_instruments_show_the_state(unit):
    state = unit.solve(*RATED)
    reading = state.reading("exact")
    assert (reading.refrigerant, reading.metering, reading.nominal_capacity_w) == ("R-410A", unit.metering, CAPACITY)
    shown = {name for name in reading.to_mapping() if name in reading.uncertainty}
    assert len(shown) == 17
    for name in shown:
        assert getattr(reading, name) == getattr(state, name), name


def test_the_seed_decides_what_is_wrong_with_the_instruments(unit):
    state = unit.solve(*RATED)
    assert state.reading(seed=4) == state.reading("usual", 4) != state.reading("usual", 5)
    again = rig.Unit("r410a", unit.metering, CAPACITY).solve(*RATED)
    assert again == state and again.reading(seed=4) == state.reading(seed=4)


@pytest.mark.parametrize("seed", range(8))
def test_diagnosis_of_usual_readings(unit, seed):
    def found(**faults) -> str:
        return satline.diagnose(unit.solve(*RATED, faults=faults).reading("usual", seed)).charge

    assert found() not in {"low", "high"}
    assert found(undercharge=0.25) == "low"
    # Little air is no lack of refrigerant.
    assert found(low_indoor_airflow=0.4) == "not-judged"


def test_an_undercharged_unit_with_a_valve_is_found_by_its_subcooling(valve):
    low = valve.solve(*RATED, faults={"undercharge": 0.2})
    assert low.subcooling_k < valve.target_subcooling_k - 3.0
    assert abs(low.superheat_k - valve.solve(*RATED).superheat_k) < 2.0
    finding = satline.diagnose(low.reading("exact"))
    assert (finding.charge, finding.reason) == ("low", "judged-by-subcooling")


def test_non_condensables_show_on_the_gauge(valve, r410a):
    state = valve.solve(*RATED, faults={"non_condensables": 0.5})
    assert state.non_condensable_pressure_pa > 1e4
    shown = r410a.subcooling_k(state.liquid_line_temperature_k, state.liquid_pressure_pa)
    own = state.liquid_pressure_pa - state.non_condensable_pressure_pa
    assert state.subcooling_k == pytest.approx(r410a.subcooling_k(state.liquid_line_temperature_k, own), abs=0.02)
    assert shown > state.subcooling_k + 1.0


def test_arrays_are_their_elements(unit):
    outdoor = np.array([[298.0], [308.0], [314.0]])
    severities = np.array([0.0, 0.1, 0.3, 0.4])
    states = unit.solve(outdoor, DRY, WET, faults={"undercharge": severities, "low_indoor_airflow": 0.1})
    assert states.shape == (3, 4) and len(states) == 3 and states.reason.shape == (3, 4)
    assert not np.ma.getmaskarray(states.capacity_w).any() and set(states.reason.ravel()) == {""}
    for place in np.ndindex(3, 4):
        faults = {"undercharge": float(severities[place[1]]), "low_indoor_airflow": 0.1}
        one = unit.solve(float(outdoor[place[0], 0]), DRY, WET, faults)
        for name in ("capacity_w", "superheat_k", "supply_wet_bulb_k", "charge_kg", "outdoor_dry_bulb_k"):
            assert getattr(states, name)[place] == getattr(one, name)
    assert np.ma.getmaskarray(states.valve_lift).all() == (unit.metering == "fixed-orifice")


def test_cells_that_would_not_run_are_masked_and_say_why(orifice):
    conditions = (np.array([308.0, 322.0]), DRY, WET)
    states = orifice.solve(*conditions, faults={"restricted_condenser_air": np.array([[0.0], [0.9]])})
    assert np.ma.getmaskarray(states.capacity_w).tolist() == [[False, False], [True, True]]
    assert (states.reason != "").tolist() == [[False, False], [True, True]]
    with pytest.raises(satline.NotAvailableError) as caught:
        orifice.solve(322.0, DRY, WET, {"restricted_condenser_air": 0.9})
    assert states.reason[1, 1] in str(caught.value) and caught.value.quantity == "steady state"


def test_a_batch_lets_other_threads_run(valve):
    severities = np.linspace(0.0, 0.5, 600)
    assert not stands_still(lambda: valve.solve(*RATED, faults={"undercharge": severities}))
    assert not stands_still(lambda: valve.run(600.0))


@pytest.mark.parametrize("name", FAULTS)
def test_every_fault_is_known_and_bounded(orifice, name):
    assert orifice.solve(*RATED, faults={name: 0.05}) != orifice.solve(*RATED)
    with pytest.raises(satline.OutOfRangeError) as caught:
        orifice.solve(*RATED, faults={name: -0.1})
    assert caught.value.unit == "severity" and caught.value.value == -0.1
    with pytest.raises(satline.NotFiniteError):
        orifice.solve(*RATED, faults={name: np.array([0.0, np.nan])})


def test_unknown_words_name_the_choices(orifice):
    with pytest.raises(satline.UnknownChoiceError, match="undercharge, overcharge") as caught:
        orifice.solve(*RATED, faults={"under_charge": 0.1})
    assert (caught.value.field, caught.value.value) == ("faults", "under_charge")
    for words in ({"efficiency_class": "best"}, {"condenser": "x"}, {"void_fraction": "x"}, {"law": "tapered"}):
        with pytest.raises(satline.UnknownChoiceError) as caught:
            rig.Unit("R-410A", "fixed-orifice", CAPACITY, **words)
        assert caught.value.field == next(iter(words))
    with pytest.raises(satline.UnknownChoiceError, match="fixed-orifice, thermostatic-valve"):
        rig.Unit("R-410A", "electronic-valve", CAPACITY)
    with pytest.raises(satline.UnknownRefrigerantError):
        rig.Unit("R-411Z", "fixed-orifice", CAPACITY)
    with pytest.raises(satline.UnknownChoiceError, match="usual, exact"):
        orifice.solve(*RATED).reading("good")
    with pytest.raises(satline.UnknownChoiceError, match="rest or settled"):
        orifice.run(10.0, start="cold")


@pytest.mark.parametrize(
    ("numbers", "quantity"),
    [
        ({"nominal_capacity_w": 3.0}, "nominal capacity"),
        ({"nominal_capacity_w": 30_000.0}, "nominal capacity"),
        ({"line_length_m": 0.0}, "length of the line set"),
        ({"lift_m": 25.0}, "lift of the line set"),
        ({"air_imbalance": 1.0}, "imbalance of the evaporator's air"),
        ({"accumulator_volume_m3": 1.0}, "volume of the accumulator"),
        ({"return_leak": 0.6}, "return leak"),
    ],
)
def test_units_that_nobody_builds(numbers, quantity):
    with pytest.raises(satline.OutOfRangeError) as caught:
        rig.Unit("R-410A", "fixed-orifice", **{"nominal_capacity_w": CAPACITY, **numbers})
    assert caught.value.quantity == quantity
    assert not caught.value.lower <= caught.value.value <= caught.value.upper


def test_conditions_that_cannot_be(orifice):
    with pytest.raises(satline.OutOfRangeError) as caught:
        orifice.solve(OUTDOOR, DRY, DRY + 1.0)
    assert caught.value.quantity == "return wet bulb" and caught.value.upper == DRY
    with pytest.raises(satline.OutOfRangeError) as caught:
        orifice.solve([OUTDOOR, 95.0], DRY, WET)
    assert caught.value.index == (1,)
    with pytest.raises(TypeError):
        orifice.solve("308", DRY, WET)


def test_structure_shifts_what_a_fault_shows(valve):
    other = rig.Unit("R-410A", "thermostatic-valve", CAPACITY, condenser="lumped", void_fraction="smith", law="linear")
    ill = {"overcharge": 0.15}
    assert other.solve(*RATED).capacity_w == pytest.approx(valve.solve(*RATED).capacity_w, rel=1e-3)
    assert abs(other.solve(*RATED, faults=ill).subcooling_k - valve.solve(*RATED, faults=ill).subcooling_k) > 0.05
    leaky = rig.Unit("R-410A", "thermostatic-valve", CAPACITY, return_leak=0.1, return_duct_excess_k=10.0)
    assert leaky.solve(*RATED).suction_pressure_pa > valve.solve(*RATED).suction_pressure_pa
    assert leaky.target_subcooling_k == valve.target_subcooling_k


def test_a_run_comes_to_the_steady_state(unit):
    table = unit.run(1800.0)
    state = unit.solve(*RATED)
    assert table["time_s"].tolist() == [float(second) for second in range(1801)]
    assert not table["runs"][0] and table["runs"][1:].all()
    assert table["compressor_power_w"][0] == 0.0 and table["suction_pressure_pa"][0] == pytest.approx(
        table["liquid_pressure_pa"][0], rel=1e-3
    )
    for name in ("superheat_k", "subcooling_k"):
        assert table[name][-1] == pytest.approx(getattr(state, name), abs=0.1), name
    assert table["capacity_w"][-1] == pytest.approx(state.capacity_w, rel=2e-3)
    assert np.ptp(table["charge_kg"]) < 1e-6
    assert ("valve_lift" in table) == (unit.metering == "thermostatic-valve")


def test_charge_added_raises_subcooling(valve):
    schedule = [(60.0, {"charging_kg_s": 2e-3}), (160.0, {"charging_kg_s": 0.0})]
    table = valve.run(1500.0, start="settled", schedule=schedule, faults={"undercharge": 0.1})
    before, after = table["subcooling_k"][60], table["subcooling_k"][-1]
    assert after > before + 1.0
    assert table["charge_kg"][-1] - table["charge_kg"][0] == pytest.approx(0.2, rel=1e-6)
    assert table["charging_kg_s"][60] == 0.0 and table["charging_kg_s"][61] == 2e-3 and table["charging_kg_s"][161] == 0.0
    faults = {"undercharge": 1.0 - table["charge_kg"][-1] / valve.nameplate_charge_kg}
    if faults["undercharge"] < 0.0:
        faults = {"overcharge": -faults["undercharge"]}
    assert after == pytest.approx(valve.solve(*RATED, faults=faults).subcooling_k, abs=0.1)


def test_faults_of_a_schedule_combine_and_a_stop_ends_the_flow(orifice):
    schedule = [
        (10.0, {"faults": {"low_indoor_airflow": 0.3}}),
        (20.0, {"faults": {"restricted_condenser_air": 0.3}, "outdoor_dry_bulb_k": 305.0}),
        (700.0, {"calls": False}),
    ]
    table = orifice.run(720.0, start="settled", schedule=schedule)
    both = {"low_indoor_airflow": 0.3, "restricted_condenser_air": 0.3}
    state = orifice.solve(305.0, DRY, WET, both)
    assert table["suction_pressure_pa"][700] == pytest.approx(state.suction_pressure_pa, rel=2e-3)
    assert table["mass_flow_kg_s"][700] > 0.0 and not table["mass_flow_kg_s"][701:].any()
    assert not table["runs"][-1] and table["trip"][-1] == ""


def test_instruments_lag_behind_a_run(orifice):
    true = orifice.run(120.0)
    shown, again, other = (orifice.run(120.0, sensors="usual", seed=seed) for seed in (1, 1, 2))
    line = "suction_line_temperature_k"
    assert np.array_equal(shown[line], again[line]) and not np.array_equal(shown[line], other[line])
    assert not np.array_equal(shown[line], true[line])
    assert np.array_equal(shown["capacity_w"], true["capacity_w"])
    fall = np.argmax(np.abs(np.diff(true[line])))
    assert abs(shown[line][fall + 1] - shown[line][fall]) < abs(true[line][fall + 1] - true[line][fall])


def test_bad_runs(orifice):
    for bad in ({"seconds": 0.0}, {"seconds": 1e9}, {"seconds": 10.0, "step_s": 20.0}, {"seconds": 10.0, "step_s": -1.0}):
        with pytest.raises(satline.OutOfRangeError):
            orifice.run(**bad)
    with pytest.raises(satline.NotFiniteError):
        orifice.run(math.nan)
    with pytest.raises(satline.UnknownChoiceError, match="charging_kg_s"):
        orifice.run(10.0, schedule=[(1.0, {"charge": 1.0})])
    with pytest.raises(satline.UnknownChoiceError, match="charging_kg_s"):
        orifice.run(10.0, schedule=[(1.0, {"faults": {"undercharge": 0.2}})])
    with pytest.raises(satline.UnknownChoiceError, match="low_indoor_airflow"):
        orifice.run(10.0, schedule=[(1.0, {"faults": {"no_air": 0.2}})])
    with pytest.raises(satline.OutOfRangeError, match="sort"):
        orifice.run(10.0, schedule=[(5.0, {}), (1.0, {})])
    with pytest.raises(satline.OutOfRangeError) as caught:
        orifice.run(600.0, calls=False, charging_kg_s=-0.01)
    assert caught.value.quantity == "refrigerant inside" and "of the run" in caught.value.__notes__[0]


def test_steps_are_those_of_a_run(unit):
    table = unit.run(90.0, schedule=[(60.0, {"calls": False})], sensors="usual", seed=7)
    stepper = unit.stepper(sensors="usual", seed=7)
    assert stepper.moment().state.suction_pressure_pa == unit.run(1.0)["suction_pressure_pa"][0]
    for second in range(1, 91):
        moment = stepper.step(1.0, {"calls": False} if second == 61 else None)
        assert (moment.time_s, moment.runs) == (table["time_s"][second], table["runs"][second])
        assert moment.state.mass_flow_kg_s == table["mass_flow_kg_s"][second]
        assert stepper.reading().suction_pressure_pa == table["suction_pressure_pa"][second]
    assert moment == stepper.moment()


def test_a_refused_step_changes_nothing(valve):
    stepper = valve.stepper("settled")
    before = stepper.moment()
    for dt_s, inputs in ((0.0, None), (1.0, {"outdoor_dry_bulb_k": 95.0}), (1.0, {"charging_kg_s": 5.0})):
        with pytest.raises(satline.OutOfRangeError):
            stepper.step(dt_s, inputs)
    with pytest.raises(TypeError):
        stepper.step(1.0, {"calls": "no"})
    assert stepper.moment() == before
    assert stepper.step(1.0).state.subcooling_k == pytest.approx(before.state.subcooling_k, abs=1e-3)


def test_one_unit_in_many_threads(valve):
    expected = [valve.solve(*RATED, faults={"undercharge": 0.01 * place}) for place in range(20)]
    results: list[bool] = []

    def worker():
        results.extend(
            valve.solve(*RATED, faults={"undercharge": 0.01 * place}) == expected[place] for place in range(20)
        )

    threads = [threading.Thread(target=worker) for _ in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert results == [True] * 80


@pytest.mark.parametrize("name", rig.__all__)
def test_names_are_documented_and_at_home(name):
    thing = getattr(rig, name)
    assert thing.__doc__ and thing.__module__ == "satline.rig"


# What split units hold or held, with the low pressures of R-134a and the glide of R-407C among them.
FIELDED = ["R-22", "R-32", "R-134a", "R-290", "R-407C", "R-410A", "R-421A", "R-422D", "R-427A", "R-438A", "R-452B", "R-454B"]


@pytest.mark.parametrize("designation", FIELDED)
@pytest.mark.parametrize("metering", METERINGS)
def test_units_of_the_field_meet_their_rating(designation, metering):
    unit = rig.Unit(designation, metering, CAPACITY)
    state = unit.solve(*RATED)
    # Sizing leaves out what the discharge line loses, which counts more the lower the pressure: 0.14 % with R-134a.
    assert state.capacity_w == pytest.approx(CAPACITY, rel=2e-3)
    assert state.mass_flow_kg_s == pytest.approx(unit.design_mass_flow_kg_s, rel=1e-6)
    low = unit.solve(*RATED, faults={"undercharge": 0.3})
    assert low.capacity_w < state.capacity_w and low.subcooling_k < state.subcooling_k


def test_a_refrigerant_that_no_such_unit_could_hold_is_refused():
    with pytest.raises(satline.OutOfRangeError, match="the rig's units do not run there"):
        rig.Unit("R-744", "thermostatic-valve", CAPACITY)
