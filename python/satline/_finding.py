"""The answer to a reading."""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Mapping
from typing import Any, Literal

from . import _native
from ._errors import NotAvailableError, UnknownChoiceError
from ._reading import Reading, to_text


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Value:
    """A value of a finding, in the SI unit of its name."""

    value: float
    """The value."""
    standard_uncertainty: float
    """One standard uncertainty of the value."""
    target: float | None = None
    """What a standard, a table or the maker asks for."""
    deviation: float | None = None
    """Value minus target."""
    deviation_uncertainty: float | None = None
    """One standard uncertainty of the deviation."""
    bound: Literal["exact", "at-least"] = "exact"
    """Whether the value is one-sided: at saturation it says at least how far off the charge is, not the amount."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class ProtocolVerdict:
    """The verdict of a named protocol. A regional one, and an action rather than a cause."""

    action: str
    """What the protocol says to do: pass, add, remove, or no valid test."""
    reason: str | None = None
    """Why there is no valid test."""
    edition: str
    """The edition applied."""
    role: str
    """Whose tolerances were applied."""
    split: str
    """What its test of the temperature split says."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class MissingField:
    """A field that the reading does not have."""

    field: str
    """The field."""
    needed_for: Literal["verdict", "confirmation", "protocol"]
    """What it is needed for."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Finding:
    """The answer to a reading: satline.diagnose gives one. str(finding) says it in plain words."""

    charge: Literal["low", "correct", "high", "not-judged"]
    """What the evidence says of the charge."""
    charge_status: Literal["confirmed", "provisional"]
    """How firmly that stands."""
    reason: str
    """Why the charge was judged as it was, or not at all."""
    protocol: ProtocolVerdict
    """The named protocol's own verdict, kept apart from the evidence."""
    values: Mapping[str, Value]
    """Everything computed, by name with its unit. What the reading does not allow is not there."""
    missing: tuple[MissingField, ...]
    """What was not measured and what for, most needed first."""
    next_check: str
    """The measurement or action that would settle most."""
    advice: str
    """What to do about the charge."""
    cautions: tuple[str, ...]
    """What can hurt."""
    label: str = ""
    """The label of the reading."""
    note: str = ""
    """The note of the reading."""
    demo: bool = False
    """Whether the reading is marked as invented."""
    atmosphere_assumed: bool = False
    """Whether a gauge pressure was made absolute with the standard sea-level atmosphere."""
    _json: str = dataclasses.field(repr=False, compare=False)
    _words: Mapping[str, str] = dataclasses.field(repr=False, compare=False)

    def to_json(self) -> str:
        """The finding as a JSON object; what is not known is left out."""
        return self._json

    def in_words(self, units: Literal["ip", "si"] = "ip") -> str:
        """The finding in plain words, with temperatures in degF ("ip") or degC ("si"); ± is one standard uncertainty."""
        try:
            return self._words[units]
        except KeyError:
            message = f"units of {units!r} are not a choice: use ip or si"
            raise UnknownChoiceError(message, field="units", value=units) from None

    def __str__(self) -> str:
        return self.in_words()


def diagnose(reading: Reading | Mapping[str, Any] | str, baseline: object = None) -> Finding:
    """What a reading says of the unit's charge.

    The reading is a Reading, a mapping with the same fields, or the JSON text of one. In mappings and text a field may
    be a string with its unit, under the name without the unit: "suction_pressure": "118 psig". There is always a
    finding for a reading that can be understood: what cannot be judged is said, with the measurement that would allow
    it. A reading that cannot be understood raises an exception that names the field and, in a text, the line.
    """
    if baseline is not None:
        raise NotAvailableError(
            "a baseline is not used yet: it comes with the causes engine; call diagnose(reading) without one"
        )
    text, has_lines = to_text(reading)
    (label, note, demo, atmosphere_assumed), written, ip, si = _native.diagnose_text(text, has_lines)
    parts = json.loads(written)
    return Finding(
        protocol=ProtocolVerdict(**parts.pop("protocol")),
        values={name: Value(**value) for name, value in parts.pop("values").items()},
        missing=tuple(MissingField(**field) for field in parts.pop("missing")),
        cautions=tuple(parts.pop("cautions")),
        label=label,
        note=note,
        demo=demo,
        atmosphere_assumed=atmosphere_assumed,
        _json=written,
        _words={"ip": ip, "si": si},
        **parts,
    )


for _class in (Finding, MissingField, ProtocolVerdict, Value):
    _class.__module__ = "satline"
del _class
