"""Tight and dry: pressure test, decay of a vacuum, strength of a tube, temperature drop of a line."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import Literal, overload

import numpy as np

from . import _native
from ._native import Refrigerant
from ._typing import Array, Floats, Number

_PSI = 6894.757293168361
_MICRON = 0.1333224


@overload
def nitrogen_density_kg_m3(pressure_pa: Number, temperature_k: Number) -> float: ...
@overload
def nitrogen_density_kg_m3(pressure_pa: Array, temperature_k: Number | Array) -> Floats: ...
@overload
def nitrogen_density_kg_m3(pressure_pa: Number, temperature_k: Array) -> Floats: ...
def nitrogen_density_kg_m3(pressure_pa: Number | Array, temperature_k: Number | Array) -> float | Floats:
    """Density of nitrogen in kg/m3, by the equation of Span and others (2000), 200 to 400 K and up to 15 MPa.

    >>> import satline
    >>> round(satline.visit.nitrogen_density_kg_m3(1e6, 280.0), 3)
    12.075
    """
    result: float | Floats = _native.nitrogen_density_kg_m3(pressure_pa, temperature_k)
    return result


@overload
def expected_nitrogen_pressure_pa(pressure_pa: Number, temperature_k: Number, later_temperature_k: Number) -> float: ...
@overload
def expected_nitrogen_pressure_pa(
    pressure_pa: Array, temperature_k: Number | Array, later_temperature_k: Number | Array
) -> Floats: ...
@overload
def expected_nitrogen_pressure_pa(
    pressure_pa: Number, temperature_k: Array, later_temperature_k: Number | Array
) -> Floats: ...
@overload
def expected_nitrogen_pressure_pa(pressure_pa: Number, temperature_k: Number, later_temperature_k: Array) -> Floats: ...
def expected_nitrogen_pressure_pa(
    pressure_pa: Number | Array, temperature_k: Number | Array, later_temperature_k: Number | Array
) -> float | Floats:
    """Absolute pressure that nitrogen shut in at one pressure and temperature has at a later temperature.

    Real nitrogen at constant density. The metal's own expansion is left out: copper that cools by 14 K shrinks by
    0.07 %, which at 35 bar raises the pressure by 2.4 kPa. To fill so that the sun does not bring a unit above its
    design pressure, ask for the design pressure at the warmest and the filling temperature as the later one.

    >>> import satline
    >>> from satline import units
    >>> evening = units.pascal_from_psig(500.0, 101325.0)
    >>> hot, cool = units.kelvin_from_fahrenheit(95.0), units.kelvin_from_fahrenheit(70.0)
    >>> morning = satline.visit.expected_nitrogen_pressure_pa(evening, hot, cool)
    >>> round(units.psig_from_pascal(morning, 101325.0), 1)
    475.0
    """
    result: float | Floats = _native.expected_nitrogen_pressure_pa(pressure_pa, temperature_k, later_temperature_k)
    return result


@overload
def water_saturation_pressure_pa(temperature_k: Number) -> float: ...
@overload
def water_saturation_pressure_pa(temperature_k: Array) -> Floats: ...
def water_saturation_pressure_pa(temperature_k: Number | Array) -> float | Floats:
    """Saturation pressure of water: over ice up to 273.16 K, over liquid above (Hyland and Wexler 1983).

    >>> import satline
    >>> round(satline.visit.water_saturation_pressure_pa(263.15), 1)
    259.9
    """
    result: float | Floats = _native.water_saturation_pressure_pa(temperature_k)
    return result


@overload
def frost_point_k(pressure_pa: Number) -> float: ...
@overload
def frost_point_k(pressure_pa: Array) -> Floats: ...
def frost_point_k(pressure_pa: Number | Array) -> float | Floats:
    """Temperature at which water vapour of that pressure is saturated: below 273.16 K a frost point.

    Ice colder than that gives off less vapour than the pressure: a vacuum that holds does not show that it is dry.

    >>> import satline
    >>> from satline import units
    >>> round(units.fahrenheit_from_kelvin(satline.visit.frost_point_k(500 * 0.1333224)), 1)
    -12.1
    """
    result: float | Floats = _native.frost_point_k(pressure_pa)
    return result


def _list(values: float | Sequence[float] | Array) -> list[float]:
    """Numbers as a list: one number, or anything array-like in one dimension."""
    array = np.asarray(values, dtype=np.float64)
    if array.ndim > 1:
        raise TypeError("one number or a row of numbers is needed, not a table")
    return [float(value) for value in np.atleast_1d(array)]


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class PressureTest:
    """The answer to a nitrogen pressure test. str() says it in plain words."""

    outcome: Literal["pass", "fail", "cannot-tell"]
    """Whether the pressure fell by more than temperature and uncertainty explain; "cannot-tell" where a leak that counts
    could have hidden."""
    reason: str
    """Why."""
    advice: str
    """What to do."""
    cautions: tuple[str, ...]
    """What can hurt."""
    first_temperature_k: float
    """Mean of the probes at the first reading."""
    first_temperature_uncertainty_k: float
    """One standard uncertainty of it, half the spread of the probes as a limit of error included."""
    last_temperature_k: float
    """Mean of the probes at the last reading."""
    last_temperature_uncertainty_k: float
    """One standard uncertainty of it."""
    expected_pressure_pa: float
    """Last pressure expected without a leak, absolute."""
    expected_pressure_uncertainty_pa: float
    """One standard uncertainty of it."""
    residual_pa: float
    """Last pressure less expected: negative for a drop."""
    residual_uncertainty_pa: float
    """One standard uncertainty of it: gauge and thermometer at both readings, and the metal."""
    metal_expansion_pa: float
    """What the expansion of copper would add to the expected pressure: counted in the uncertainty only."""
    allowed_drop_pa: float
    """The drop allowed."""
    smallest_drop_pa: float
    """The smallest drop that this test would have shown: two standard uncertainties."""
    drop_rate_pa_h: float
    """Rate of the drop, pascals an hour, at the last temperature."""
    drop_rate_uncertainty_pa_h: float
    """One standard uncertainty of it."""
    smallest_rate_pa_h: float
    """The smallest rate that this test would have shown."""
    density_kg_m3: float
    """Density of the nitrogen at the first reading."""
    leak_pa_m3_s: float | None
    """Volume times rate of the drop; None without a volume."""
    leak_uncertainty_pa_m3_s: float | None
    """One standard uncertainty of it."""
    leak_g_yr: float | None
    """Nitrogen lost, grams a year. A leak of refrigerant is another; nothing here converts one to the other."""
    leak_uncertainty_g_yr: float | None
    """One standard uncertainty of it."""
    smallest_leak_g_yr: float | None
    """The smallest loss of nitrogen that this test would have shown."""

    def __str__(self) -> str:
        lines = [f"pressure test: {self.outcome}", self.reason]
        lines.append(
            f"last pressure less expected {self.residual_pa / 1e3:.2f} ± {self.residual_uncertainty_pa / 1e3:.2f} kPa "
            f"({self.residual_pa / _PSI:.2f} ± {self.residual_uncertainty_pa / _PSI:.2f} psi); "
            f"expected {self.expected_pressure_pa / 1e3:.1f} kPa absolute"
        )
        lines.append(
            f"a drop of {self.smallest_drop_pa / 1e3:.2f} kPa ({self.smallest_drop_pa / _PSI:.2f} psi) would have shown; "
            f"allowed {self.allowed_drop_pa / 1e3:.2f} kPa ({self.allowed_drop_pa / _PSI:.2f} psi)"
        )
        if self.leak_g_yr is not None and self.leak_uncertainty_g_yr is not None and self.outcome == "fail":
            lines.append(f"nitrogen lost: {self.leak_g_yr:.0f} ± {self.leak_uncertainty_g_yr:.0f} g a year at this pressure")
        return "\n".join([*lines, self.advice, *self.cautions])


def pressure_test(
    first_pressure_pa: float,
    first_temperatures_k: float | Sequence[float],
    last_pressure_pa: float,
    last_temperatures_k: float | Sequence[float],
    duration_s: float,
    *,
    low_side_design_pressure_pa: float,
    pressure_uncertainty_pa: float | None = None,
    temperature_uncertainty_k: float | None = None,
    volume_m3: float | None = None,
    allowed_drop_pa: float | None = None,
    least_time_s: float | None = None,
) -> PressureTest:
    """Whether a unit under nitrogen is tight, temperature allowed for with real nitrogen.

    Pressures are absolute: gauge and the station pressure of that time (units.pascal_from_psig). Temperatures are those
    of the tubes, at one place or several. A pressure above low_side_design_pressure_pa, the nameplate's low-side design
    pressure (absolute too), is refused. Uncertainties are standard ones; without them, those of a gauge with a limit of
    error of 3.5 psi and a thermometer with one of 0.1 % and 1.3 degF, which seldom suffice: where one gauge stays on for
    both readings, give what does not repeat, such as its resolution. Without allowed_drop_pa, 1 % of the first pressure
    (our own allowance); without least_time_s, an hour (common practice; codes and makers may ask for a day). With
    volume_m3 the leak is also a flow of nitrogen.

    Only dry nitrogen, through a regulator and with a relief valve; never oxygen or compressed air. Test pressure and
    time follow local codes and the maker, and belong to licensed practice.

    >>> import satline
    >>> from satline import units
    >>> gauge = lambda psi: units.pascal_from_psig(psi, 101325.0)
    >>> found = satline.visit.pressure_test(
    ...     gauge(400.0), units.kelvin_from_fahrenheit(95.0), gauge(379.9), units.kelvin_from_fahrenheit(70.0), 43200.0,
    ...     low_side_design_pressure_pa=gauge(450.0), pressure_uncertainty_pa=1e3, temperature_uncertainty_k=0.3,
    ... )
    >>> found.outcome
    'pass'
    """
    parts = _native.pressure_test_parts(
        (first_pressure_pa, _list(first_temperatures_k)),
        (last_pressure_pa, _list(last_temperatures_k)),
        duration_s,
        low_side_design_pressure_pa,
        (pressure_uncertainty_pa, temperature_uncertainty_k, volume_m3, allowed_drop_pa, least_time_s),
    )
    return PressureTest(cautions=tuple(parts.pop("cautions")), **parts)


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class DecayTest:
    """The answer to a decay test of a vacuum. str() says it in plain words."""

    outcome: Literal["pass", "fail", "cannot-tell"]
    """Whether the vacuum held."""
    reason: str
    """Why."""
    behaviour: Literal["steady", "straight", "levelling-off", "both", "undecided", "falling"]
    """How the pressure went."""
    causes: tuple[str, ...]
    """What could be behind a rise, most likely first: leak, moisture, outgassing, slow-moisture."""
    advice: str
    """What to do."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""
    watched_s: float
    """First to last time."""
    least_time_s: float
    """The least time to watch: what was asked for, or what the gauge needs if that is longer."""
    first_pa: float
    """Pressure at the first time by the shape found."""
    first_uncertainty_pa: float
    """One standard uncertainty of it: scatter, and the gauge's scale."""
    last_pa: float
    """Pressure at the last time by the shape found."""
    last_uncertainty_pa: float
    """One standard uncertainty of it."""
    rate_pa_s: float
    """Rate of the straight part of the rise: a leak is at most that."""
    rate_uncertainty_pa_s: float
    """One standard uncertainty of it."""
    smallest_rate_pa_s: float
    """The smallest rate that would have shown."""
    plateau_pa: float | None
    """Where the pressure levels off; None for a straight or undecided rise."""
    plateau_uncertainty_pa: float | None
    """One standard uncertainty of it."""
    time_constant_s: float | None
    """Time constant of levelling off."""
    reaches_limit_s: float | None
    """When, from isolation, the rise reaches the limit; None where it does not."""
    water_pressure_pa: float
    """Saturation pressure of water or ice at the coldest tube."""
    water_pressure_uncertainty_pa: float
    """One standard uncertainty of it."""
    frost_point_k: float | None
    """Temperature at which water vapour of the last pressure is saturated."""
    noise_pa: float
    """Scatter of one reading: as given, or as found where that is more."""
    evidence_for_curve: float | None
    """Akaike's criterion of a straight line less that of a curve: above 6 the curve is shown, below -6 the line."""

    def __str__(self) -> str:
        lines = [f"vacuum: {self.outcome}", self.reason]
        lines.append(
            f"{self.first_pa / _MICRON:.0f} to {self.last_pa / _MICRON:.0f} ± {self.last_uncertainty_pa / _MICRON:.0f} "
            f"microns in {self.watched_s / 60:.1f} min, {self.behaviour.replace('-', ' ')}; "
            f"straight part {60 * self.rate_pa_s / _MICRON:.1f} ± {60 * self.rate_uncertainty_pa_s / _MICRON:.1f} "
            "microns a minute"
        )
        if self.time_constant_s is not None and self.plateau_pa is not None and self.plateau_uncertainty_pa is not None:
            lines.append(
                f"levels off at {self.plateau_pa / _MICRON:.0f} ± {self.plateau_uncertainty_pa / _MICRON:.0f} microns"
            )
        if self.reaches_limit_s is not None and self.outcome != "fail":
            lines.append(f"reaches the limit {self.reaches_limit_s / 60:.0f} min after isolation")
        lines.append(
            f"water at the coldest tube {self.water_pressure_pa / _MICRON:.0f} microns; "
            f"watch for {self.least_time_s / 60:.0f} min at least"
        )
        if self.causes:
            lines.append("could be: " + ", ".join(self.causes))
        return "\n".join([*lines, self.advice, *self.cautions])


def decay_test(
    times_s: Sequence[float] | Array,
    pressures_pa: Sequence[float] | Array,
    coldest_temperature_k: float,
    *,
    temperature_uncertainty_k: float | None = None,
    resolution_pa: float | None = None,
    noise_pa: float | None = None,
    share: float | None = None,
    target_pa: float | None = None,
    limit_pa: float | None = None,
    least_time_s: float | None = None,
) -> DecayTest:
    """Whether a vacuum holds after the pump is shut off, and what its rise looks like.

    times_s counts from isolation, pressures_pa are absolute (a micron of mercury is 0.1333224 Pa), and
    coldest_temperature_k is that of the coldest tube, where water would be. A leak rises in a straight line; moisture
    levels off at its vapour pressure there; gas out of oil levels off elsewhere. Defaults, all common practice:
    evacuated to 500 microns, below 1000 microns for ten minutes, a gauge with a resolution of one micron and a limit of
    error of 10 % (share, 0.058 as a standard uncertainty).

    An error about one reading has its place in index. Never start a compressor, nor test its windings, in a vacuum.

    >>> import satline
    >>> micron = 0.1333224
    >>> times = [15.0 * step for step in range(61)]
    >>> found = satline.visit.decay_test(times, [(450 + 0.5 * time) * micron for time in times], 293.15)
    >>> found.outcome, found.behaviour, found.causes[0], round(found.reaches_limit_s)
    ('cannot-tell', 'straight', 'leak', 1100)
    """
    times, pressures = _list(times_s), _list(pressures_pa)
    if len(times) != len(pressures):
        raise ValueError(f"{len(times)} times and {len(pressures)} pressures: give one pressure for each time")
    parts = _native.decay_parts(
        times,
        pressures,
        coldest_temperature_k,
        (temperature_uncertainty_k, resolution_pa, noise_pa, share, target_pa, limit_pa, least_time_s),
    )
    return DecayTest(causes=tuple(parts.pop("causes")), cautions=tuple(parts.pop("cautions")), **parts)


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class CopperTubeRating:
    """What pressure a copper tube may hold. str() says it in plain words."""

    rating_gauge_pressure_pa: float
    """Largest inside pressure above ambient, with the least wall and the largest diameter: the figure to work with."""
    nominal_gauge_pressure_pa: float
    """The same with nominal sizes."""
    nominal_gauge_pressure_uncertainty_pa: float
    """One standard uncertainty of it, from the tolerances."""
    allowable_stress_pa: float
    """Allowable stress."""
    counted_as: Literal["annealed", "drawn"]
    """The temper that counts: annealed for every brazed tube."""
    outcome: Literal["sufficient", "insufficient", "marginal"] | None
    """Against the design pressure; None without one. Marginal: with the nominal wall only."""
    says: str | None
    """The same in words."""
    margin_pa: float | None
    """Rating less design pressure."""
    cautions: tuple[str, ...]
    """What can hurt."""

    def __str__(self) -> str:
        lines = [
            f"copper tube, counted as {self.counted_as}: {self.rating_gauge_pressure_pa / 1e3:.0f} kPa gauge "
            f"({self.rating_gauge_pressure_pa / _PSI:.0f} psig); with nominal sizes "
            f"{self.nominal_gauge_pressure_pa / _PSI:.0f} ± {self.nominal_gauge_pressure_uncertainty_pa / _PSI:.0f} psig"
        ]
        if self.says is not None and self.margin_pa is not None:
            lines.append(f"{self.says} Margin {self.margin_pa / _PSI:.0f} psi.")
        return "\n".join([*lines, *self.cautions])


def copper_tube_rating(
    outside_diameter_m: float,
    wall_m: float,
    temperature_k: float,
    *,
    temper: Literal["annealed", "drawn"] = "annealed",
    joint: Literal["brazed", "unheated"] = "brazed",
    design_gauge_pressure_pa: float | None = None,
    wall_tolerance_m: float | None = None,
    diameter_tolerance_m: float | None = None,
) -> CopperTubeRating:
    """What pressure a copper tube may hold: 2St/(D - 0.8t), S the allowable stress of the Copper Tube Handbook.

    Sizes are nominal; without tolerances the wall may be 12 % thinner and the diameter 0.002 inch larger. A brazed drawn
    tube counts as annealed. temperature_k is the hottest the wall gets: in heating the vapour line of a heat pump is its
    discharge line. design_gauge_pressure_pa is the design pressure of refrigerant and unit, above ambient.

    >>> import satline
    >>> inch, psi = 0.0254, 6894.757
    >>> found = satline.visit.copper_tube_rating(
    ...     0.875 * inch, 0.045 * inch, 338.7, design_gauge_pressure_pa=400 * psi
    ... )
    >>> found.outcome, round(found.rating_gauge_pressure_pa / psi)
    ('sufficient', 478)
    """
    parts = _native.copper_tube_parts(
        (outside_diameter_m, wall_m),
        temperature_k,
        temper,
        joint,
        design_gauge_pressure_pa,
        (wall_tolerance_m, diameter_tolerance_m),
    )
    nominal, uncertainty = parts.pop("nominal_gauge_pressure_pa"), parts.pop("nominal_gauge_pressure_uncertainty_pa")
    return CopperTubeRating(
        nominal_gauge_pressure_pa=nominal,
        nominal_gauge_pressure_uncertainty_pa=uncertainty,
        cautions=tuple(parts.pop("cautions")),
        **parts,
    )


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class LineTemperatureDrop:
    """What two temperatures along a liquid line show. str() says it in plain words."""

    outcome: Literal["pressure-drop", "drop-if-flashing", "heat-exchange", "no-evidence", "warmed"]
    """What they show."""
    says: str
    """The same in words."""
    temperature_drop_k: float
    """First less second temperature."""
    temperature_drop_uncertainty_k: float
    """One standard uncertainty of it."""
    least_pressure_drop_pa: float
    """Least pressure drop where the liquid flashes: the difference of the bubble pressures."""
    least_pressure_drop_uncertainty_pa: float
    """One standard uncertainty of it."""
    smallest_drop_k: float
    """A drop of temperature up to this would not have shown."""
    upstream_bubble_pressure_pa: float
    """Bubble pressure at the first clamp: the least pressure of the liquid there."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        lines = [self.says]
        lines.append(
            f"temperature drop {self.temperature_drop_k:.2f} ± {self.temperature_drop_uncertainty_k:.2f} K "
            f"({1.8 * self.temperature_drop_k:.1f} degF); {self.smallest_drop_k:.2f} K would not have shown"
        )
        if self.outcome in {"pressure-drop", "drop-if-flashing"}:
            lines.append(
                f"at least {self.least_pressure_drop_pa / 1e3:.0f} ± {self.least_pressure_drop_uncertainty_pa / 1e3:.0f} "
                f"kPa ({self.least_pressure_drop_pa / _PSI:.0f} psi)"
            )
        return "\n".join([*lines, *self.cautions])


def line_temperature_drop(
    refrigerant: Refrigerant | str,
    upstream_temperature_k: float,
    downstream_temperature_k: float,
    *,
    flash: Literal["unknown", "flashing", "subcooled"] = "unknown",
    difference_uncertainty_k: float | None = None,
) -> LineTemperatureDrop:
    """The least pressure drop that a drop of temperature along a liquid line means: only where the liquid flashes.

    Two clamps in the direction of the flow, liquid at the first; flash says what is known at the second. No drop does
    not prove that nothing restricts the line: a liquid that stays subcooled loses pressure with hardly any cooling, and
    cools or warms by heat exchange. difference_uncertainty_k is one standard uncertainty of the difference; two clamps
    compared on one tube beforehand are far better than the default of two usual thermometers.

    >>> import satline
    >>> found = satline.visit.line_temperature_drop(
    ...     "R-410A", 308.15, 304.82, flash="flashing", difference_uncertainty_k=0.28
    ... )
    >>> found.outcome, round(found.least_pressure_drop_pa / 1e3)
    ('pressure-drop', 173)
    """
    known = refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)
    parts = _native.line_drop_parts(
        known, upstream_temperature_k, downstream_temperature_k, flash, difference_uncertainty_k
    )
    return LineTemperatureDrop(cautions=tuple(parts.pop("cautions")), **parts)
