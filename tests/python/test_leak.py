"""Leaks and standing pressures.

The equilibria of a leak are compared with CoolProp, an independent general-purpose library that computes the same
mixture models; its own integration of the same leak is a second program for the balance.
"""

import doctest
import math

import numpy as np
import pytest

import satline
from satline import visit

CP = pytest.importorskip("CoolProp.CoolProp")

NAMES = {"R-744": "CarbonDioxide"}


def fractions(components):
    return [component.mass_fraction for component in components]


class Oracle:
    """CoolProp's equations for one blend."""

    def __init__(self, components):
        names = [NAMES.get(c.designation, c.designation.replace("-", "").replace("R1234", "R1234")) for c in components]
        self.state = CP.AbstractState("HEOS", "&".join(names))
        self.masses = np.array([CP.PropsSI("M", name) for name in names])

    def phase(self, mass_fractions, density_kg_m3, temperature_k, kind):
        """Pressure, Pa, and the logarithms of the fugacities in Pa."""
        moles = np.array(mass_fractions) / self.masses
        self.state.set_mole_fractions(moles / moles.sum())
        self.state.specify_phase(kind)
        self.state.update(CP.DmolarT_INPUTS, density_kg_m3 * moles.sum(), temperature_k)
        return self.state.p(), np.log([self.state.fugacity(i) for i in range(len(moles))])


@pytest.mark.parametrize("name", ["R-407C", "R-454B", "R-448A", "R-455A", "R-410A", "R-449A"])
@pytest.mark.parametrize("leaving", ["vapor", "liquid"])
def test_liquid_and_vapour_are_in_equilibrium_by_coolprop(name, leaving):
    worst = 0.0
    for lost in (0.0, 0.3, 0.7):
        left = satline.refrigerant(name).after_leak(lost, 295.15, leaving=leaving)
        oracle = Oracle(left.components)
        liquid = oracle.phase(fractions(left.liquid_components), left.liquid_density_kg_m3, 295.15, CP.iphase_liquid)
        vapor = oracle.phase(fractions(left.vapor_components), left.vapor_density_kg_m3, 295.15, CP.iphase_gas)
        assert vapor[0] == pytest.approx(left.pressure_pa, rel=1e-9)
        # A liquid's pressure is a small difference of large terms.
        assert liquid[0] == pytest.approx(left.pressure_pa, rel=1e-7)
        worst = max(worst, np.abs(liquid[1] - vapor[1]).max())
    assert worst < 1e-12


def test_the_whole_leak_by_coolprop():
    """Half of a four-fifths filling of R-454B as vapour at 22 degC, integrated here with CoolProp's fugacities.

    Unknowns: what the vapour holds of each component, per volume, and the liquid's share of the volume; Newton's method
    with differences; Heun's steps, extrapolated from two lengths."""
    refrigerant, temperature = satline.refrigerant("R-454B"), 295.15
    start = refrigerant.after_leak(0.0, temperature)
    oracle = Oracle(start.components)

    def residual(unknown, total):
        vapor, share = unknown[:2], unknown[2]
        liquid = (total - (1 - share) * vapor) / share
        one = oracle.phase(liquid / liquid.sum(), liquid.sum(), temperature, CP.iphase_liquid)
        other = oracle.phase(vapor / vapor.sum(), vapor.sum(), temperature, CP.iphase_gas)
        return np.array([*(one[1] - other[1]), (one[0] - other[0]) / 1e7])

    def settled(unknown, total):
        for _ in range(12):
            here = residual(unknown, total)
            moves = 1e-6 * unknown
            slopes = [(residual(unknown + np.eye(3)[k] * moves[k], total) - here) / moves[k] for k in range(3)]
            step = np.linalg.solve(np.array(slopes).T, -here)
            unknown = unknown + step
            if np.abs(step / unknown).max() < 1e-10:
                return unknown
        raise AssertionError("not settled")

    def leak(steps):
        total = start.filling_density_kg_m3 * np.array(fractions(start.components))
        vapor = start.vapor_density_kg_m3 * np.array(fractions(start.vapor_components))
        unknown = settled(np.array([*vapor, start.liquid_volume_fraction]), total)
        mass = 0.5 * total.sum() / steps
        for _ in range(steps):
            first = unknown[:2] / unknown[:2].sum()
            ahead = settled(unknown, total - mass * first)
            second = ahead[:2] / ahead[:2].sum()
            total = total - 0.5 * mass * (first + second)
            unknown = settled(ahead, total)
        pressure, _ = oracle.phase(unknown[:2] / unknown[:2].sum(), unknown[:2].sum(), temperature, CP.iphase_gas)
        return np.array([*(total / total.sum()), pressure])

    coarse, fine = leak(120), leak(240)
    expected = fine + (fine - coarse) / 3
    left = refrigerant.after_leak(0.5, temperature)
    assert fractions(left.components) == pytest.approx(expected[:2], abs=2e-9)
    assert left.pressure_pa == pytest.approx(expected[2], rel=2e-9)


def test_shifts_and_what_is_told():
    r407c = satline.refrigerant("R-407C")
    left = r407c.after_leak(0.5, 295.15)
    assert [c.designation for c in left.components] == ["R-32", "R-125", "R-134a"]
    assert sum(fractions(left.components)) == pytest.approx(1.0, abs=1e-12)
    assert left.components[2].mass_fraction > 0.60 > r407c.components[2].mass_fraction
    assert left.vapor_components[0].mass_fraction > left.components[0].mass_fraction
    # Common practice: a blend that lost vapour runs at other pressures; here 3 K and more.
    assert left.dew_temperature_k(6e5) - r407c.dew_temperature_k(6e5) > 3
    pressures = left.bubble_pressure_pa([280.0, 300.0])
    assert pressures.shape == (2,) and (pressures < r407c.bubble_pressure_pa([280.0, 300.0])).all()
    assert left.bubble_temperature_k(float(pressures[0])) == pytest.approx(280.0, abs=1e-6)
    assert left.dew_pressure_pa(300.0) < left.bubble_pressure_pa(300.0)
    assert (left.fraction_lost, left.leaving, left.temperature_k) == (0.5, "vapor", 295.15)
    assert 0 < left.liquid_volume_fraction < 0.8 and 0.9 < left.liquid_mass_fraction < 1
    assert any("no longer the blend" in caution for caution in left.cautions)
    assert "R-134a" in repr(left)
    assert any("can burn" in caution for caution in satline.refrigerant("R-454B").after_leak(0.1, 295.15).cautions)
    assert left.vapor_flammable_mass_fraction == pytest.approx(left.vapor_components[0].mass_fraction)
    # As liquid, next to nothing changes.
    drained = r407c.after_leak(0.5, 295.15, leaving="liquid")
    assert fractions(drained.components) == pytest.approx(fractions(r407c.components), abs=5e-3)


def test_the_filling():
    r407c = satline.refrigerant("R-407C")
    by_share = r407c.after_leak(0.2, 300.0, liquid_volume_fraction=0.3)
    full = r407c.after_leak(0.0, 300.0, liquid_volume_fraction=0.3)
    by_mass = r407c.after_leak(0.2, 300.0, filling_density_kg_m3=full.filling_density_kg_m3)
    assert fractions(by_mass.components) == pytest.approx(fractions(by_share.components), abs=1e-9)
    default, four_fifths = r407c.after_leak(0.2, 300.0), r407c.after_leak(0.2, 300.0, liquid_volume_fraction=0.8)
    assert fractions(default.components) == fractions(four_fifths.components)
    with pytest.raises(satline.UnknownChoiceError, match="given twice"):
        r407c.after_leak(0.2, 300.0, liquid_volume_fraction=0.3, filling_density_kg_m3=300.0)


def test_bad_leaks_are_refused():
    r407c = satline.refrigerant("R-407C")
    for bad in (-0.1, 1.5, math.inf, math.nan):
        with pytest.raises(satline.OutOfRangeError, match="fraction of the mass lost"):
            r407c.after_leak(bad, 295.15)
        with pytest.raises(satline.OutOfRangeError, match="liquid volume fraction"):
            r407c.after_leak(0.1, 295.15, liquid_volume_fraction=bad)
    with pytest.raises(satline.OutOfRangeError, match="temperature"):
        r407c.after_leak(0.1, 380.0)
    with pytest.raises(satline.OutOfRangeError, match="kg/m3"):
        r407c.after_leak(0.1, 295.15, filling_density_kg_m3=2000.0)
    with pytest.raises(satline.UnknownChoiceError, match="liquid, vapor"):
        r407c.after_leak(0.1, 295.15, leaving="gas")
    with pytest.raises(satline.OutOfRangeError, match="all is vapour") as caught:
        r407c.after_leak(0.999, 295.15)
    last = r407c.after_leak(caught.value.upper, 295.15)
    assert last.liquid_volume_fraction < 1e-9


# ASHRAE Handbook Fundamentals, from memory: R-134a at 20 degC 571.71 kPa, R-22 at 25 degC 1044 kPa.
def test_standing_pressure():
    good = visit.standing_check("R-134a", 571.71e3, 293.15, pressure_uncertainty_pa=3e3, temperature_uncertainty_k=0.2)
    assert (good.outcome, good.causes, good.non_condensables_pa) == ("consistent", (), None)
    assert 0 < good.unseen_at_most_pa < 20e3
    assert good.matches[0].fits and "R-134a" in [match.designation for match in good.matches if match.fits]
    assert good.fitting >= sum(match.fits for match in good.matches)
    air = visit.standing_check(satline.refrigerant("R-134a"), 671.71e3, [293.15, 293.65], liquid="most")
    assert (air.outcome, air.causes[0]) == ("excess", "non-condensables")
    assert air.non_condensables_pa == pytest.approx(100e3, abs=1e3)
    assert air.non_condensables_at_most_pa >= air.non_condensables_pa - 1
    assert air.spread_k == pytest.approx(0.5) and air.temperature_k == 293.15
    assert "never purge" in air.advice and any("mixed" in caution for caution in air.cautions)
    said = str(air)
    assert "non-condensables" in said and "excess" in said and "never purge" in said
    low = visit.standing_check("R-134a", 3e5, 293.15)
    assert (low.outcome, low.causes[0]) == ("too-low", "no-liquid")
    apart = visit.standing_check("R-134a", 571.71e3, [293.15, 303.15])
    assert (apart.outcome, apart.matches, apart.fitting) == ("not-judged", (), 0)
    assert visit.standing_check("R-134a", 571.71e3, np.array([293.15, 295.15]), largest_spread_k=3).outcome == "consistent"


def test_what_is_in_this_bottle():
    found = visit.matching_refrigerants(1.044e6, 298.15, pressure_uncertainty_pa=5e3, temperature_uncertainty_k=0.2)
    assert found[0].designation == "R-22" and found[0].fits and abs(found[0].distance_k) < 0.05
    assert "R-410A" not in [match.designation for match in found if match.fits]
    for match in found:
        assert match.fits == (abs(match.distance_k) <= 2 * match.standard_uncertainty_k)
        refrigerant = satline.refrigerant(match.designation)
        assert match.bubble_temperature_k == refrigerant.bubble_temperature_k(1.044e6)


def test_bad_standing_checks_are_refused():
    with pytest.raises(satline.UnknownRefrigerantError):
        visit.standing_check("R-9999", 6e5, 293.15)
    with pytest.raises(satline.OutOfRangeError, match="number of temperatures"):
        visit.standing_check("R-134a", 6e5, [])
    with pytest.raises(satline.UnknownChoiceError, match="unknown, present, most"):
        visit.standing_check("R-134a", 6e5, 293.15, liquid="some")
    with pytest.raises(satline.OutOfRangeError, match="critical"):
        visit.standing_check("R-744", 7e6, 320.0)
    for bad in (math.nan, math.inf, -1.0):
        with pytest.raises(satline.OutOfRangeError):
            visit.standing_check("R-134a", bad, 293.15)
        with pytest.raises(satline.OutOfRangeError):
            visit.standing_check("R-134a", 6e5, [293.15, bad])
        with pytest.raises(satline.OutOfRangeError):
            visit.standing_check("R-134a", 6e5, 293.15, pressure_uncertainty_pa=bad)
        with pytest.raises(satline.OutOfRangeError):
            visit.matching_refrigerants(6e5, 293.15, temperature_uncertainty_k=bad)


def test_the_examples():
    assert doctest.testmod(visit).failed == 0 and doctest.testmod(visit).attempted >= 5
