"""Delivered performance, before and after, and the cost of a wrong charge."""

from __future__ import annotations

import dataclasses
from typing import Literal

from . import _native
from ._uncertain import Measured, Uncertain, each, one


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class CapacityShape:
    """How the capacity of a unit in cooling depends on its air, where its maker's data are not at hand.

    As it stands: common practice for split units with a wet coil at nominal airflow, between a published general curve
    (from memory) and the measured unit of NISTIR 7350.
    """

    by_wet_bulb_per_k: tuple[float, float] = (0.029, 0.004)
    """Relative change with the return wet bulb, and its standard uncertainty."""
    by_outdoor_per_k: tuple[float, float] = (-0.010, 0.002)
    """Relative change with the outdoor dry bulb, and its standard uncertainty."""
    of_nominal: float = 0.029
    """One standard uncertainty of the nominal capacity, as a share of it: 5 % as a limit of error."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Gain:
    """Delivered performance before and after. str() says it in plain words."""

    before: Uncertain
    """Delivered over expected, before."""
    after: Uncertain
    """Delivered over expected, after."""
    ratio: Uncertain
    """After over before: what the work gained at equal conditions."""
    outcome: Literal["better", "worse", "cannot-tell"]
    """What it says, uncertainty allowed for."""
    explanation: str
    """The same in plain words."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        said = f"before {self.before}, after {self.after} of what it should: x {self.ratio}. {self.explanation}"
        return "\n".join([said, *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class ChargeFaultEffect:
    """What a wrong charge does, over the same unit with the right charge. str() says it in plain words."""

    capacity: Uncertain
    """Cooling capacity."""
    power: Uncertain
    """Electric power."""
    coefficient_of_performance: Uncertain
    """Capacity over power."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        said = (
            f"capacity x {self.capacity}, power x {self.power}, "
            f"coefficient of performance x {self.coefficient_of_performance}"
        )
        return "\n".join([said, *self.cautions])


def expected_capacity_w(
    nominal_w: float,
    return_wet_bulb_k: Measured,
    outdoor_dry_bulb_k: Measured,
    *,
    shape: CapacityShape | None = None,
) -> Uncertain:
    """What a unit should deliver in cooling at its air, from its nominal capacity at 95 degF outdoors and a return wet bulb
    of 67 degF. The maker's table (TargetGrid of "capacity") is better. For a wet coil at nominal airflow. Arrays are
    broadcast.

    >>> import satline
    >>> print(satline.visit.expected_capacity_w(10_500, (290.15, 0.5), (313.15, 0.5)))
    9304 ± 332
    """
    parts = None if shape is None else (shape.by_wet_bulb_per_k, shape.by_outdoor_per_k, shape.of_nominal)
    found: Uncertain = each(
        lambda wet, outdoor: _native.expected_capacity(float(nominal_w), wet, outdoor, parts),
        return_wet_bulb_k,
        outdoor_dry_bulb_k,
    )
    return found


def delivered(capacity_w: Measured, expected_w: Measured) -> Uncertain:
    """Capacity delivered over capacity expected at the same conditions. Arrays are broadcast.

    >>> import satline
    >>> print(satline.visit.delivered((8000, 400), (10_000, 300)))
    0.800 ± 0.047
    """
    found: Uncertain = each(_native.delivered, capacity_w, expected_w)
    return found


def gain(
    before_w: Measured,
    before_expected_w: Measured,
    after_w: Measured,
    after_expected_w: Measured,
    *,
    shared: float = 1.0,
) -> Gain:
    """Capacity measured and expected before the work and after it.

    shared: the share, 0 to 1, of the expected values' uncertainty that both have in common and that so cancels in the
    gain: 1 where both come from one nominal capacity or one table at like conditions.

    >>> import satline
    >>> satline.visit.gain((7600, 228), (10_000, 400), (9400, 282), (10_200, 408)).outcome
    'better'
    """
    first, last, ratio, outcome, explanation = _native.gain(
        (one(before_w), one(before_expected_w)), (one(after_w), one(after_expected_w)), shared
    )
    return Gain(
        before=Uncertain(*first),
        after=Uncertain(*last),
        ratio=Uncertain(*ratio),
        outcome=outcome,
        explanation=explanation,
        cautions=tuple(_native.performance_cautions()),
    )


def charge_fault_effect(
    deviation: Measured, indoor_dry_bulb_k: Measured, outdoor_dry_bulb_k: Measured
) -> ChargeFaultEffect:
    """Capacity and power with a wrong charge, over those with the right one, by the NIST factors (TN 1848 family).

    deviation: charge less right charge, over right charge, -0.3 to 0.3; 20 to 28 degC indoors, 20 to 40 degC outdoors. The
    uncertainty holds how far units with a valve lie from the factors: 0.03, 0.05 and 0.06 as limits of error at 10, 20 and
    30 %. A unit with a fixed orifice loses more below about 90 % of its charge. Arrays are broadcast.

    >>> import satline
    >>> print(satline.visit.charge_fault_effect(-0.2, 299.85, 308.15).capacity)
    0.888 ± 0.029
    """
    capacity, power, coefficient = each(
        _native.charge_fault_effect, deviation, indoor_dry_bulb_k, outdoor_dry_bulb_k
    )
    return ChargeFaultEffect(
        capacity=capacity,
        power=power,
        coefficient_of_performance=coefficient,
        cautions=tuple(_native.performance_cautions()),
    )
