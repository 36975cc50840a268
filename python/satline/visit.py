"""What a visit to a unit computes besides the charge.

Whether what stands in a bottle, or in a unit at rest, has the pressure that it should have, and which refrigerants
would have such a pressure; whether a unit is tight and dry, by a nitrogen pressure test and by how a vacuum holds;
what pressure a copper tube may hold, and what a temperature drop along a line means; airflow by static pressure, a
maker's own chart and delivered performance; the charge by the scale, leaks and recovery; what another refrigerant would
do in the unit.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import Literal

from . import _native
from ._native import Refrigerant
from ._uncertain import Uncertain
from ._visit_account import (
    ChargeAccount,
    LeakRate,
    RecoveryAccount,
    charge_account,
    expected_charge,
    leak_rate,
    recovery,
)
from ._visit_airflow import (
    AirResistance,
    BlowerTable,
    FanPoint,
    FanPower,
    ReturnLeakage,
    air_resistance,
    airflow_by_plenum_pressure_m3_s,
    fan_at_speed,
    fan_power_per_airflow,
    return_leakage,
)
from ._visit_gas import (
    CopperTubeRating,
    DecayTest,
    LineTemperatureDrop,
    PressureTest,
    copper_tube_rating,
    decay_test,
    expected_nitrogen_pressure_pa,
    frost_point_k,
    line_temperature_drop,
    nitrogen_density_kg_m3,
    pressure_test,
    water_saturation_pressure_pa,
)
from ._visit_performance import (
    CapacityShape,
    ChargeFaultEffect,
    Gain,
    charge_fault_effect,
    delivered,
    expected_capacity_w,
    gain,
)
from ._visit_retrofit import Cycle, FlowRatios, RefrigerantComparison, compare_refrigerants
from ._visit_target_grid import TargetDeviation, TargetGrid, approach_k

__all__ = [
    "AirResistance",
    "BlowerTable",
    "CapacityShape",
    "ChargeAccount",
    "ChargeFaultEffect",
    "CopperTubeRating",
    "Cycle",
    "DecayTest",
    "FanPoint",
    "FanPower",
    "FlowRatios",
    "Gain",
    "LeakRate",
    "LineTemperatureDrop",
    "Match",
    "PressureTest",
    "RecoveryAccount",
    "RefrigerantComparison",
    "ReturnLeakage",
    "StandingCheck",
    "TargetDeviation",
    "TargetGrid",
    "Uncertain",
    "air_resistance",
    "airflow_by_plenum_pressure_m3_s",
    "approach_k",
    "charge_account",
    "charge_fault_effect",
    "compare_refrigerants",
    "copper_tube_rating",
    "decay_test",
    "delivered",
    "expected_capacity_w",
    "expected_charge",
    "expected_nitrogen_pressure_pa",
    "fan_at_speed",
    "fan_power_per_airflow",
    "frost_point_k",
    "gain",
    "leak_rate",
    "line_temperature_drop",
    "matching_refrigerants",
    "nitrogen_density_kg_m3",
    "pressure_test",
    "recovery",
    "return_leakage",
    "standing_check",
    "water_saturation_pressure_pa",
]


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Match:
    """A refrigerant and how far its saturation lies from what was measured."""

    designation: str
    """The refrigerant."""
    distance_k: float
    """Measured temperature less the nearer end of its band from bubble to dew temperature at the measured pressure; 0
    inside. Negative: the pressure is too high for this refrigerant; positive: too low."""
    bubble_temperature_k: float
    """Its bubble temperature at the measured pressure: the temperature to find where most is liquid."""
    dew_temperature_k: float
    """Its dew temperature at the measured pressure."""
    standard_uncertainty_k: float
    """One standard uncertainty of the distance."""
    fits: bool
    """Whether the distance is within two of them."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class StandingCheck:
    """The answer to a standing-pressure check. str() says it in plain words."""

    refrigerant: Refrigerant
    """The refrigerant that should be inside."""
    pressure_pa: float
    """The pressure, absolute."""
    outcome: Literal["consistent", "excess", "too-low", "not-judged"]
    """How it compares with what the refrigerant's would be."""
    reason: str
    """Why."""
    causes: tuple[str, ...]
    """What could be behind it, most likely first: non-condensables, other-refrigerant, no-liquid, colder-part,
    warmer-part, full-of-liquid, composition-shifted. Nothing where the pressure fits."""
    advice: str
    """What to do."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""
    temperature_k: float
    """The temperature by which it is judged: that of the coldest part."""
    temperature_uncertainty_k: float
    """One standard uncertainty of it, the differences between the parts included."""
    spread_k: float
    """Warmest less coldest part."""
    bubble_pressure_pa: float
    """Bubble pressure of the refrigerant at that temperature."""
    dew_pressure_pa: float
    """Dew pressure of the refrigerant at that temperature."""
    comparison_uncertainty_pa: float
    """One standard uncertainty of measured less bubble pressure: gauge, thermometer and properties together."""
    above_bubble_k: float | None
    """Bubble temperature at the measured pressure less the temperature: how far off the pressure is, as a temperature.
    None where the pressure lies outside the refrigerant's curve."""
    non_condensables_pa: float | None
    """Where the pressure is in excess: partial pressure of non-condensables, should they be the cause and most of the
    refrigerant be liquid. What is dissolved in the liquid is not counted."""
    non_condensables_uncertainty_pa: float | None
    """One standard uncertainty of it."""
    non_condensables_at_most_pa: float | None
    """The same partial pressure where the liquid is nearly gone."""
    unseen_at_most_pa: float | None
    """Where the pressure fits: a partial pressure of non-condensables up to this would not have shown."""
    matches: tuple[Match, ...]
    """Refrigerants that would have this pressure at this temperature, and the nearest others; empty where the
    temperatures are too unequal to say. They say what is possible, not what is inside."""
    fitting: int
    """How many refrigerants of the whole catalogue fit."""

    def __str__(self) -> str:
        lines = [f"{self.refrigerant.designation}, standing at {self.pressure_pa / 1e3:.1f} kPa absolute: {self.outcome}"]
        lines.append(self.reason)
        lines.append(
            f"at {self.temperature_k - 273.15:.2f} degC bubble {self.bubble_pressure_pa / 1e3:.1f}, "
            f"dew {self.dew_pressure_pa / 1e3:.1f} kPa, comparison ± {self.comparison_uncertainty_pa / 1e3:.1f} kPa"
        )
        if self.causes:
            lines.append("could be: " + ", ".join(self.causes))
        if self.non_condensables_pa is not None and self.non_condensables_uncertainty_pa is not None:
            lines.append(
                f"non-condensables, if that is it: {self.non_condensables_pa / 1e3:.0f} "
                f"± {self.non_condensables_uncertainty_pa / 1e3:.0f} kPa"
            )
        if self.unseen_at_most_pa is not None:
            lines.append(f"non-condensables of up to {self.unseen_at_most_pa / 1e3:.0f} kPa would not have shown")
        fitting = [match.designation for match in self.matches if match.fits]
        if fitting:
            more = f" and {self.fitting - len(fitting)} more" if self.fitting > len(fitting) else ""
            lines.append("would have this pressure: " + ", ".join(fitting) + more)
        lines.append(self.advice)
        lines.extend(self.cautions)
        return "\n".join(lines)


def standing_check(
    refrigerant: Refrigerant | str,
    pressure_pa: float,
    temperatures_k: float | Sequence[float],
    *,
    liquid: Literal["unknown", "present", "most"] = "unknown",
    pressure_uncertainty_pa: float | None = None,
    temperature_uncertainty_k: float | None = None,
    largest_spread_k: float | None = None,
) -> StandingCheck:
    """Whether the pressure of a bottle, or of a unit at rest, is the one its refrigerant has at its temperature.

    Give the absolute pressure and the temperature of every part that may hold liquid: for a bottle its wall below the
    level, for a unit both coils, the compressor's shell and the receiver. They are judged by the coldest, whose liquid
    sets the pressure; where they differ by more than largest_spread_k (1 K if not given) nothing is judged. liquid says
    what is known of it: "unknown", "present", or "most" where most of the mass is liquid, as in a bottle that is not
    nearly empty; then the pressure must be the bubble pressure. Uncertainties are standard uncertainties; without them,
    those of a gauge with a limit of error of 3.5 psi and a thermometer with one of 0.1 % and 1.3 degF.

    A pressure does not identify a refrigerant, and a mixture of refrigerants can stand at any pressure between those of
    its parts. Non-condensables are removed by recovering, evacuating and recharging, never by purging. Work on
    refrigerant is for licensed people under the local codes.

    >>> import satline
    >>> found = satline.visit.standing_check("R-134a", 751_325.0, 297.15, liquid="most")
    >>> found.outcome, found.causes[0], round(found.non_condensables_pa / 1e3)
    ('excess', 'non-condensables', 106)
    """
    known = refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)
    temperatures = [temperatures_k] if isinstance(temperatures_k, (int, float)) else list(temperatures_k)
    parts = _native.standing_check_parts(
        known,
        pressure_pa,
        temperatures,
        liquid,
        (pressure_uncertainty_pa, temperature_uncertainty_k, largest_spread_k),
    )
    fitting: int = 0
    matches: tuple[Match, ...] = ()
    if parts["outcome"] != "not-judged":
        fitting, matches = _matches(
            pressure_pa, parts["temperature_k"], pressure_uncertainty_pa, parts["temperature_uncertainty_k"]
        )
    return StandingCheck(
        refrigerant=known,
        pressure_pa=float(pressure_pa),
        causes=tuple(parts.pop("causes")),
        cautions=tuple(parts.pop("cautions")),
        matches=matches,
        fitting=fitting,
        **parts,
    )


def matching_refrigerants(
    pressure_pa: float,
    temperature_k: float,
    *,
    pressure_uncertainty_pa: float | None = None,
    temperature_uncertainty_k: float | None = None,
) -> tuple[Match, ...]:
    """What could be in this bottle: the refrigerants nearest to a pressure and a temperature at rest, with liquid there.

    Those that fit within two standard uncertainties come first, by how near the temperature is to their bubble
    temperature; then the nearest others. The list says what is possible, not what is inside: several refrigerants fit
    almost any pressure, mixtures of refrigerants fit all in between, and air adds to it. Until it is identified by an
    analyser, treat it as flammable.

    >>> import satline
    >>> [match.designation for match in satline.visit.matching_refrigerants(1_044_000.0, 298.15)][0]
    'R-22'
    """
    return _matches(pressure_pa, temperature_k, pressure_uncertainty_pa, temperature_uncertainty_k)[1]


def _matches(
    pressure_pa: float,
    temperature_k: float,
    pressure_uncertainty_pa: float | None,
    temperature_uncertainty_k: float | None,
) -> tuple[int, tuple[Match, ...]]:
    fitting, rows = _native.matches_parts(pressure_pa, temperature_k, pressure_uncertainty_pa, temperature_uncertainty_k)
    return fitting, tuple(
        Match(
            designation=designation,
            distance_k=distance,
            bubble_temperature_k=bubble,
            dew_temperature_k=dew,
            standard_uncertainty_k=uncertainty,
            fits=fits,
        )
        for designation, distance, bubble, dew, uncertainty, fits in rows
    )
