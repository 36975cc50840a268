"""The charge by the scale, leaks and recovery. Demo values; expected numbers are by hand."""

import dataclasses
import math

import pytest

import satline
from satline import Uncertain, visit


def line_set():
    return satline.lineset.line_set_charge(
        "R-454B", "3/8", "3/4", 18.288, covered_length_m=4.572, liquid_temperature_k=308.15,
        liquid_pressure_pa=2_514_490.0, vapor_temperature_k=285.93, vapor_pressure_pa=917_222.0,
        accessories_kg=[(0.05, 0.01)],
    )  # fmt: skip


def test_masses_add_and_uncertainties_add_as_squares():
    found = visit.expected_charge((2.72, 0.02), (0.73, 0.03), (0.05, 0.01))
    assert found.value == pytest.approx(3.5, abs=1e-12)
    assert found.standard_uncertainty == pytest.approx(math.sqrt(0.02**2 + 0.03**2 + 0.01**2), abs=1e-12)
    assert visit.expected_charge(2.72) == (2.72, 0.0)
    # A line set shorter than the one that the nameplate covers takes away.
    assert visit.expected_charge(2.72, -0.2).value == pytest.approx(2.52, abs=1e-12)


def test_the_charge_of_a_line_set_is_taken_as_it_is():
    line = line_set()
    found = visit.expected_charge((2.72, 0.02), line)
    assert found.value == pytest.approx(2.72 + line.mass_kg, abs=1e-12)
    assert found.standard_uncertainty == pytest.approx(math.hypot(0.02, line.standard_uncertainty_kg), abs=1e-12)
    assert found == visit.expected_charge((2.72, 0.02), line.mass)


def account(*weighings, **options):
    return visit.charge_account((2.72, 0.02), (0.73, 0.03), (0.05, 0.01), weighings_kg=weighings, **options)


@pytest.mark.parametrize(
    ("weighed", "balance"), [(3.5, "right"), (3.1, "short"), (3.9, "over"), (3.325, "too-uncertain")]
)
def test_balance(weighed, balance):
    found = account((weighed, 0.01), start_kg=0.0)
    assert found.balance == balance
    assert found.deviation_kg.value == pytest.approx(weighed - 3.5, abs=1e-12)
    assert found.deviation.value == pytest.approx(weighed / 3.5 - 1.0, abs=1e-12)
    # Limit of error of the scale 0.5 % of the mass, a rectangle's standard uncertainty, beside the weighing's own.
    assert found.inside_kg.standard_uncertainty == pytest.approx(math.hypot(0.01, 0.005 * weighed / math.sqrt(3.0)), rel=1e-12)


def test_recovered_counts_against_added_and_the_start_matters():
    assert account(0.4, -0.2, 0.3, start_kg=(3.0, 0.1)).inside_kg.value == pytest.approx(3.5, abs=1e-12)
    unknown = account(0.4)
    assert unknown.balance == "unknown" and unknown.inside_kg is None and unknown.deviation is None
    assert "Recover all of it" in unknown.advice and "should hold 3.50" in str(unknown)
    with pytest.raises(satline.OutOfRangeError, match="mass inside by the scale"):
        account(-4.0, start_kg=3.0)


def test_it_goes_into_a_reading_with_its_uncertainty():
    found = account((3.1, 0.01), start_kg=0.0)
    reading = satline.Reading(refrigerant="R-454B", metering="thermostatic-valve", **found.reading_fields())
    assert reading.expected_charge_kg == found.expected_kg.value
    assert reading.weighed_charge_kg == found.inside_kg.value
    for field, mass in (("expected_charge_kg", found.expected_kg), ("weighed_charge_kg", found.inside_kg)):
        limit = reading.uncertainty[field]["absolute"]
        # The rule of the reading: a limit of error over the square root of 3 is one standard uncertainty.
        assert limit / math.sqrt(3.0) == pytest.approx(mass.standard_uncertainty, rel=1e-12)
    # A finding is made of it as of any other reading.
    assert isinstance(satline.diagnose(reading), satline.Finding)
    # It survives with the rest of a reading, and a start that is not known gives the expected charge alone.
    more = dataclasses.replace(reading, outdoor_dry_bulb_k=308.15)
    assert more.to_mapping()["weighed_charge_kg"] == found.inside_kg.value
    assert set(account(0.4).reading_fields()) == {"expected_charge_kg", "uncertainty"}


def test_words_help_on_a_roof():
    text = str(account((3.1, 0.01), start_kg=0.0, refrigerant="R-454B"))
    assert "by the scale: short" in text and "-0.40 ± 0.04 kg (-0.88 ± 0.09 lb), -11.4 ± 1.0 %" in text
    assert "has a leak" in text
    # The cautions are the refrigerant's, which the charge of a line set brings along.
    named = account((3.1, 0.01), start_kg=0.0, refrigerant="R-454B").cautions
    assert named == satline.safety.cautions("R-454B", "charging")
    assert visit.charge_account(2.72, line_set(), weighings_kg=[3.4], start_kg=0.0).cautions == named


def test_leaks():
    rate = visit.leak_rate((3.0, 0.05), [(10, 1.0), (83, (0.3, 0.01))])
    # By hand: 0.3 kg in 73 days, a fifth of a year.
    assert rate.kg_a_year == pytest.approx((1.5, 0.05), abs=1e-12)
    assert rate.share_a_year.value == pytest.approx(0.5, abs=1e-12) and rate.last_share_a_year == pytest.approx(0.5)
    assert rate.share_a_year.standard_uncertainty == pytest.approx(math.hypot(0.05 / 3, 0.5 * 0.05 / 3), rel=1e-12)
    text = str(rate)
    assert "lost 0.30 ± 0.01 kg" in text and "50.0 ± 1.9 % of the full charge" in text and "rule" in text
    with pytest.raises(satline.NotAvailableError, match="one addition"):
        visit.leak_rate(3.0, [(0, 0.5)])
    with pytest.raises(satline.OutOfRangeError, match="day of an addition"):
        visit.leak_rate(3.0, [(9, 0.5), (2, 0.5)])
    with pytest.raises(satline.OutOfRangeError, match="full charge"):
        visit.leak_rate(0.0, [(0, 0.5), (2, 0.5)])


def recover(refrigerant="R-410A", after=None, before=(21.8, 0.01), **options):
    options = {"tare_kg": 12.7, "water_capacity_kg": 21.6, **options}
    return visit.recovery(refrigerant, (3.5, 0.04), scale_before_kg=before, scale_after_kg=after, **options)


def test_room_before():
    found = recover()
    limit = satline.safety.cylinder_fill("R-410A", 21.6).limit_kg
    assert found.room == "enough" and found.balance == "not-yet" and found.cylinder_after is None
    assert found.room_kg == pytest.approx((limit - 9.1, 0.01), abs=1e-9)
    tight = recover(before=(12.7 + limit - 1.5, 0.01))
    assert tight.room == "too-little" and tight.excess_kg == pytest.approx(2.0, abs=1e-9)
    assert "a second cylinder for 2.00 kg (4.4 lb)" in str(tight)
    assert recover(before=12.7 + limit - 3.55).room == "barely"
    assert recover(before=12.7 + limit + 0.5).room == "full"


def test_an_unknown_mixture_takes_the_lightest_liquid():
    of = {name: recover(name).room_kg.value for name in ("R-410A", "R-22", "R-290")}
    mixed = recover(["R-410A", "R-22", "R-290"])
    assert mixed.room_kg.value == min(of.values()) == of["R-290"]
    assert mixed.room == "full" and "R-410A or R-22 or R-290" in str(mixed)
    # What may burn is handled as burning.
    assert mixed.cautions == satline.safety.cautions(None, "recovering")


def test_balance_after():
    for after, balance in ((25.3, "all"), (24.8, "short"), (25.8, "more"), (25.125, "too-uncertain")):
        found = recover(after=(after, 0.01))
        assert found.balance == balance
        assert found.recovered_kg.value == pytest.approx(after - 21.8, abs=1e-9)
        assert found.recovered_kg.standard_uncertainty == pytest.approx(0.01 * math.sqrt(2.0), rel=1e-12)
        assert found.room_after_kg == pytest.approx(found.room_kg.value - found.recovered_kg.value, abs=1e-9)
        assert found.cylinder_after.verdict == "room-left"
    text = str(recover(after=(24.6, 0.01)))
    assert "came out: 2.80 ± 0.01 kg" in text and "still inside" in text and "full of liquid at" in text
    with pytest.raises(satline.OutOfRangeError, match="mass in the cylinder after"):
        recover(after=21.0)


def test_the_tare_widens_the_room_and_cancels_in_what_came_out():
    plain, wide = recover(after=(24.6, 0.01)), recover(after=(24.6, 0.01), tare_kg=(12.7, 0.3))
    assert wide.recovered_kg == plain.recovered_kg and wide.balance == plain.balance
    assert wide.room_kg.value == plain.room_kg.value
    assert wide.room_kg.standard_uncertainty == pytest.approx(math.hypot(0.01, 0.3), rel=1e-12)


@pytest.mark.parametrize("name", ["expected_charge", "charge_account", "leak_rate", "recovery"])
def test_what_is_wrong_is_said(name):
    calls = {
        "expected_charge": lambda mass: visit.expected_charge(mass),
        "charge_account": lambda mass: visit.charge_account(3.0, weighings_kg=[mass], start_kg=0.0),
        "leak_rate": lambda mass: visit.leak_rate(3.0, [(0, 0.5), (10, mass)]),
        "recovery": lambda mass: recover(after=mass),
    }
    with pytest.raises(satline.NotFiniteError):
        calls[name](math.nan)
    with pytest.raises(satline.OutOfRangeError):
        calls[name]((1.0, -0.1))
    with pytest.raises(satline.OutOfRangeError):
        calls[name](1e6)
    with pytest.raises(TypeError, match="pair"):
        calls[name]((1.0, 0.1, 0.2))


def test_one_uncertain_everywhere():
    assert satline.air.Uncertain is satline.Uncertain is satline.visit.Uncertain
    assert isinstance(visit.expected_charge(2.72), Uncertain)
    coil = {
        "return_dry_bulb_k": 299.15, "return_relative_humidity": 0.5,
        "supply_dry_bulb_k": 286.15, "supply_relative_humidity": 0.92,
    }  # fmt: skip
    # A plain pair says the same as an Uncertain, on the air's side too.
    named, plain = ({**coil, "return_dry_bulb_k": kind} for kind in (Uncertain(299.15, 0.2), (299.15, 0.2)))
    split = satline.air.CoilAir(**named).split().split_k
    assert split == satline.air.CoilAir(**plain).split().split_k and split.standard_uncertainty == pytest.approx(0.2)
    assert str(split) == "13.00 ± 0.20"
