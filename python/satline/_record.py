"""The record of a visit, as bytes that can be hashed, signed and kept."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any

from . import _native
from ._finding import Finding
from ._native import Refrigerant, refrigerant as _find
from ._reading import Reading, to_text

_ARRAYS = ("probes", "steps", "amounts")


class VisitRecord:
    """What was read, found and done at one visit to one unit.

    VisitRecord.from_json reads a record; the constructor makes a new one, with this library's version and a fingerprint of
    the refrigerant's saturation tables. Times are ISO 8601 in UTC, such as "2026-07-14T15:02:00Z". A record that is not
    right raises an exception that names the place. Two records are equal when their bytes are.
    """

    __slots__ = ("_bytes", "_tables_are_these")
    _bytes: bytes
    _tables_are_these: bool

    def __init__(
        self,
        *,
        label: str = "",
        started: str,
        ended: str | None = None,
        refrigerant: str | Refrigerant | None = None,
        before: tuple[str, Reading | Mapping[str, Any] | str, Finding] | None = None,
        after: tuple[str, Reading | Mapping[str, Any] | str, Finding] | None = None,
        probes: Sequence[Mapping[str, Any]] = (),
        steps: Sequence[Mapping[str, Any]] = (),
        amounts: Sequence[Mapping[str, Any]] = (),
        demo: bool = False,
    ) -> None:
        """before and after are (time, reading, finding): the reading is kept as it is given, units and all.

        probes are mappings with fields (names of reading fields), name, zeroed, calibrated (date or time) and accuracy (as
        in a reading's uncertainty); steps with time, step (see VisitRecord.step_words) and note; amounts with time,
        direction ("added" or "recovered"), mass_kg and standard_uncertainty_kg.
        """
        parts: dict[str, Any] = {
            "format": _native.VISIT_FORMAT,
            "label": label,
            "demo": demo,
            "started": started,
            "ended": ended,
            "library_version": _native.__version__,
            "before": _evaluated(before),
            "after": _evaluated(after),
            "probes": [dict(one) for one in probes],
            "steps": [dict(one) for one in steps],
            "amounts": [dict(one) for one in amounts],
        }
        if refrigerant is not None:
            found = refrigerant if isinstance(refrigerant, Refrigerant) else _find(refrigerant)
            fingerprint = _native.refrigerant_fingerprint(found)
            parts["tables"] = {"refrigerant": found.designation, "fingerprint": fingerprint}
        self._take(json.dumps({name: value for name, value in parts.items() if value is not None}), False)

    @classmethod
    def from_json(cls, text: str | bytes) -> VisitRecord:
        """Reads a record, canonical or not. An unknown version, an unknown name or a wrong value raises."""
        record = cls.__new__(cls)
        record._take(text.decode("utf-8") if isinstance(text, bytes) else text, True)
        return record

    def _take(self, text: str, has_lines: bool) -> None:
        made, tables_are_these = _native.visit_record_parts(text, has_lines)
        object.__setattr__(self, "_bytes", made)
        object.__setattr__(self, "_tables_are_these", tables_are_these)

    def __setattr__(self, name: str, value: object) -> None:
        raise AttributeError("a record does not change: make a new one")

    def to_canonical_bytes(self) -> bytes:
        """Canonical JSON by the rules of RFC 8785, UTF-8: the same record gives the same bytes."""
        return self._bytes

    def to_mapping(self) -> dict[str, Any]:
        """The record as plain Python values; what is empty or not known is left out, but lists are always there."""
        parts: dict[str, Any] = json.loads(self._bytes)
        for name in _ARRAYS:
            parts.setdefault(name, [])
        return parts

    @property
    def tables_are_these(self) -> bool:
        """Whether this library holds the same saturation tables as the one that wrote the record."""
        return self._tables_are_these

    @staticmethod
    def step_words() -> tuple[str, ...]:
        """The words for a step."""
        return tuple(_native.visit_steps())

    def __eq__(self, other: object) -> bool:
        return self._bytes == other._bytes if isinstance(other, VisitRecord) else NotImplemented

    def __hash__(self) -> int:
        return hash(self._bytes)

    def __repr__(self) -> str:
        return f"satline.VisitRecord.from_json({self._bytes.decode('utf-8')!r})"

    def __reduce__(self) -> tuple[Any, ...]:
        return VisitRecord.from_json, (self._bytes,)


def _evaluated(given: tuple[str, Reading | Mapping[str, Any] | str, Finding] | None) -> dict[str, Any] | None:
    if given is None:
        return None
    time, reading, finding = given
    return {"time": time, "reading": json.loads(to_text(reading)[0]), "finding": json.loads(finding.to_json())}


VisitRecord.__module__ = "satline"
