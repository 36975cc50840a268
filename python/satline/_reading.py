"""One set of measurements taken at a unit."""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Mapping
from typing import Any, Literal

from . import _native
from ._native import Refrigerant


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True, repr=False)
class Reading:
    """One set of measurements taken at a unit. What was not measured is left out, or None.

    Every field is given by name, in SI, with the unit in the name; all pressures are absolute. A field that cannot be
    right raises an exception that names it. A reading cannot be changed; dataclasses.replace makes a changed one.

    >>> import satline
    >>> gauge = {"of_full_scale": 0.005, "full_scale": 5.5e6, "group": "manifold"}
    >>> reading = satline.Reading(
    ...     refrigerant="r410a",
    ...     suction_pressure_pa=9e5,
    ...     operation="steady",
    ...     uncertainty={"suction_pressure_pa": gauge, "liquid_pressure_pa": gauge},
    ... )
    >>> reading.refrigerant, reading.operation
    ('R-410A', 'steady')
    """

    label: str | None = None
    """A name for the unit, to be found again in the words of the finding."""
    refrigerant: str | Refrigerant | None = None
    """The refrigerant in the unit, by name or as a Refrigerant; kept as its designation."""
    metering: Literal["fixed-orifice", "thermostatic-valve", "electronic-valve"] | None = None
    """How refrigerant is metered into the indoor coil."""
    metering_place: Literal["indoor", "outdoor"] | None = None
    """Where the metering device is."""
    mode: Literal["cooling", "heating"] | None = None
    """What the unit is doing; cooling when not given."""
    compressor: Literal["single-speed", "two-stage", "variable"] | None = None
    """The compressor's kind; single-speed when not given."""
    stage: Literal["low", "high", "maker-charging-mode"] | None = None
    """The stage or mode in which it ran."""
    operation: Literal["steady", "pull-down", "defrost", "fan-cycling", "head-pressure-control"] | None = None
    """What it was doing besides its mode; not known when not given."""
    refrigerant_condition: Literal["as-labelled", "unknown", "mixed", "leak-shifted"] | None = None
    """What is known of the refrigerant inside; a blend that leaked as vapour has shifted."""
    outdoor_dry_bulb_k: float | None = None
    """Dry bulb of the air entering the outdoor coil."""
    condenser_leaving_dry_bulb_k: float | None = None
    """Dry bulb of the air leaving the outdoor coil."""
    return_dry_bulb_k: float | None = None
    """Dry bulb of the return air at the indoor coil."""
    return_wet_bulb_k: float | None = None
    """Wet bulb of the return air at the indoor coil."""
    supply_dry_bulb_k: float | None = None
    """Dry bulb of the supply air."""
    supply_wet_bulb_k: float | None = None
    """Wet bulb of the supply air."""
    ambient_pressure_pa: float | None = None
    """Ambient (station) pressure at the unit."""
    suction_pressure_pa: float | None = None
    """Pressure at the vapour port of the outdoor unit."""
    suction_line_temperature_k: float | None = None
    """Temperature of the vapour line at the outdoor unit."""
    liquid_pressure_pa: float | None = None
    """Pressure at the liquid port of the outdoor unit."""
    liquid_line_temperature_k: float | None = None
    """Temperature of the liquid line at the outdoor unit."""
    discharge_pressure_pa: float | None = None
    """Pressure at the compressor discharge."""
    discharge_line_temperature_k: float | None = None
    """Temperature of the discharge line."""
    coil_outlet_temperature_k: float | None = None
    """Temperature of the refrigerant line leaving the indoor coil."""
    condensing_surface_temperature_k: float | None = None
    """Temperature of a two-phase surface of the outdoor coil (a return bend)."""
    sump_temperature_k: float | None = None
    """Temperature of the compressor's oil sump."""
    airflow_m3_s: float | None = None
    """Airflow over the indoor coil."""
    nominal_capacity_w: float | None = None
    """Nominal cooling capacity of the unit."""
    compressor_power_w: float | None = None
    """Electric power of the compressor."""
    expected_charge_kg: float | None = None
    """The charge the unit should hold with its line set."""
    weighed_charge_kg: float | None = None
    """The charge weighed in."""
    minutes_since_change: float | None = None
    """Minutes since start, or since charge or airflow were last changed."""
    target_superheat_k: float | None = None
    """The maker's target superheat, where there is one."""
    target_subcooling_k: float | None = None
    """The maker's target subcooling, where there is one."""
    target_approach_k: float | None = None
    """The maker's target approach (liquid line minus outdoor air), where there is one."""
    metering_inlet_temperature_k: float | None = None
    """Temperature of the liquid line before the metering device, best taken with the liquid line's own probe."""
    uncertainty: Mapping[str, Mapping[str, float | str]] | None = dataclasses.field(default=None, hash=False)
    """Limits of error by field: of_reading (a fraction), of_full_scale (a fraction) with full_scale (the span of the
    instrument's range), absolute and resolution (the step shown, half of it is added), in the field's unit.

    They add up; dividing the sum by the square root of 3 makes it one standard uncertainty. Fields without an entry take
    the accuracy that the verification protocol asks of instruments. group is any word: channels with the same word share
    one error, all but the step shown, such as both gauges of one manifold that were zeroed against the same reference.
    """

    def __post_init__(self) -> None:
        designation = _native.check_reading(to_json(self.to_mapping()))
        object.__setattr__(self, "refrigerant", designation)
        for name, _, _ in _native.reading_fields():
            value = getattr(self, name)
            if value is not None:
                object.__setattr__(self, name, float(value))
        if self.uncertainty is not None:
            object.__setattr__(self, "uncertainty", {field: dict(limits) for field, limits in self.uncertainty.items()})

    def __repr__(self) -> str:
        given = ", ".join(f"{name}={value!r}" for name, value in self.to_mapping().items())
        return f"satline.Reading({given})"

    def to_mapping(self) -> dict[str, Any]:
        """The fields that are given, by name."""
        pairs = ((field.name, getattr(self, field.name)) for field in dataclasses.fields(self))
        return {name: value for name, value in pairs if value is not None}


def to_text(reading: Reading | Mapping[str, Any] | str) -> tuple[str, bool]:
    """The reading as JSON text, and whether its lines are the caller's own."""
    if isinstance(reading, str):
        return reading, True
    if isinstance(reading, Reading):
        return to_json(reading.to_mapping()), False
    if isinstance(reading, Mapping):
        return to_json(reading), False
    raise TypeError(f"reading: a Reading, a mapping or JSON text is needed, not {type(reading).__name__}")


def to_json(fields: Mapping[str, Any]) -> str:
    """The fields of one reading as JSON text."""
    # One field a line: the text reader then knows which field holds a NaN, for which JSON has no word.
    return json.dumps(dict(fields), indent=0, default=_plain)


def _plain(value: object) -> object:
    """What json does not know: other mappings, refrigerants, and numpy scalars."""
    if isinstance(value, Refrigerant):
        return value.designation
    if isinstance(value, Mapping):
        return dict(value)
    if getattr(value, "ndim", None) == 0 and hasattr(value, "item"):
        return value.item()
    raise TypeError(f"a reading holds numbers and words, not {type(value).__name__}")


Reading.__module__ = "satline"
