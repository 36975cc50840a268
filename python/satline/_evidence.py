"""What a finding weighs and how it comes out: preconditions, features, hypotheses, the amount of refrigerant."""

from __future__ import annotations

import dataclasses
from typing import Literal


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Precondition:
    """Something that must hold before superheat, subcooling and causes are judged, and whether it does."""

    name: str
    """Which: steady, operation, compressor, outdoor-air, indoor-air, wet-bulb, airflow, pressures, ..."""
    status: Literal["met", "not-met", "unknown"]
    """Whether it holds, as far as the reading says."""
    reason: str | None = None
    """What speaks against it, where it does not hold."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Feature:
    """One feature of the reading against what was expected of this unit if healthy, in today's air.

    In kelvin where the feature's name ends in _k, a share (1 is all of it) where it ends in _share.
    """

    value: float
    """What was measured."""
    standard_uncertainty: float
    """One standard uncertainty of it, from the instruments."""
    expected: float
    """What was expected."""
    expected_uncertainty: float
    """One standard uncertainty of that: of the unit, of the baseline's instruments, of today's air."""
    deviation: float
    """Measured minus expected."""
    source: Literal["baseline", "maker", "protocol", "class"]
    """The most trusted source that the expectation rests on: the unit's own healthy readings come before the maker's figure,
    the protocol's table and units of its kind."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Hypothesis:
    """A set of causes with its probability."""

    causes: tuple[str, ...]
    """What would be wrong; empty for a healthy unit."""
    probability: float
    """0 to 1; those of a finding sum to 1."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class ChargeAmount:
    """How much refrigerant to add or recover, as far as the evidence tells."""

    share: float
    """Share of the nameplate charge: positive to add, negative to recover."""
    standard_uncertainty: float
    """One standard uncertainty of the share."""
    lowest: float
    """Lower end of the interval that holds the true share with 90 %."""
    highest: float
    """Upper end of it."""
    mass_kg: float | None = None
    """The share of the expected charge in kg, where the reading gives one."""
    bound: Literal["exact", "at-least"] = "exact"
    """at-least once subcooling or superheat is gone: then it is at least `lowest` in size, and the true amount unknown."""


for _class in (ChargeAmount, Feature, Hypothesis, Precondition):
    _class.__module__ = "satline"
del _class
