"""The answer to a reading."""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Iterable, Mapping
from typing import Any, Literal, TypeAlias

from . import _native
from ._errors import UnknownChoiceError
from ._evidence import ChargeAmount, Feature, Hypothesis, Precondition
from ._reading import Reading, to_text

AnyReading: TypeAlias = Reading | Mapping[str, Any] | str
"""A Reading, a mapping with the same fields, or the JSON text of one."""


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
    preconditions: tuple[Precondition, ...]
    """What must hold before a diagnosis, and whether it does."""
    features: Mapping[str, Feature]
    """What each feature was expected to be, by name with its unit. What the reading does not allow is not there."""
    hypotheses: tuple[Hypothesis, ...]
    """What may be wrong, most likely first; empty when nothing could be weighed."""
    conclusion: tuple[str, ...] | Literal["cannot-tell"]
    """The causes that the finding stands by, none of them for a healthy unit, or that it cannot tell."""
    conclusion_reason: str
    """Why it concludes so: stands, precondition-not-met, too-little-measured, too-close, nothing-fits."""
    fits: bool
    """Whether what is most likely also fits: False means that no known fault explains the readings."""
    amount: ChargeAmount | None = None
    """How much to add or recover, where the charge is off by the evidence."""
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

    def probability(self, cause: str) -> float | None:
        """The probability, 0 to 1, that a cause is among what is wrong; of "healthy", that nothing is.

        None when nothing could be weighed. A name that is no cause raises UnknownChoiceError.
        """
        names = ["healthy", *_native.causes()]
        if cause not in names:
            message = f"{cause!r} is not a cause: use {', '.join(names)}"
            raise UnknownChoiceError(message, field="cause", value=cause)
        if not self.hypotheses:
            return None
        total = 0.0
        for one in self.hypotheses:
            if cause in one.causes or (cause == "healthy" and not one.causes):
                total += one.probability
        return total

    def __str__(self) -> str:
        return self.in_words()


def diagnose(
    reading: AnyReading,
    baseline: AnyReading | Iterable[AnyReading] | None = None,
    *,
    edition: Literal["title-24-ra3.2-2008", "title-24-ra3.2-2013"] | None = None,
    role: Literal["installer", "verifier"] | None = None,
    priors: Mapping[str, float] | None = None,
) -> Finding:
    """What a reading says of the unit: of its charge, and of what else may be wrong.

    The reading is a Reading, a mapping with the same fields, or the JSON text of one. In mappings and text a field may
    be a string with its unit, under the name without the unit: "suction_pressure": "118 psig". There is always a
    finding for a reading that can be understood: what cannot be judged is said, with the measurement that would allow
    it. A reading that cannot be understood raises an exception that names the field and, in a text, the line.

    baseline: one or more readings of the same unit, taken when it was known to be healthy; a text may hold an array of
    them. edition and role: the protocol that is quoted (the 2013 edition and the installer's tolerances where none is
    given). priors: how likely each cause is before anything is measured, for those that are to be replaced: "healthy",
    "undercharge" and the other causes, "unmodelled", each above 0 and at most 1, of which only the ratios matter; and
    "pairs", 0 to 100, a factor on two faults at once (1 when they meet by chance alone).

    >>> import satline
    >>> finding = satline.diagnose({"refrigerant": "R-410A", "suction_pressure": "118 psig"}, priors={"overcharge": 0.2})
    >>> finding.charge, finding.conclusion
    ('not-judged', 'cannot-tell')
    """
    text, has_lines = to_text(reading)
    answer = _native.diagnose_text(text, has_lines, _baseline(baseline), told(edition, role, priors))
    (label, note, demo, atmosphere_assumed), written, ip, si = answer
    parts = json.loads(written)
    del parts["format"]
    conclusion, amount = parts.pop("conclusion"), parts.pop("amount", None)
    return Finding(
        protocol=ProtocolVerdict(**parts.pop("protocol")),
        values={name: Value(**value) for name, value in parts.pop("values").items()},
        missing=tuple(MissingField(**field) for field in parts.pop("missing")),
        cautions=tuple(parts.pop("cautions")),
        preconditions=tuple(Precondition(**one) for one in parts.pop("preconditions")),
        features={name: Feature(**feature) for name, feature in parts.pop("features").items()},
        hypotheses=tuple(
            Hypothesis(causes=tuple(one["causes"]), probability=one["probability"]) for one in parts.pop("hypotheses")
        ),
        conclusion="cannot-tell" if conclusion == "cannot-tell" else tuple(conclusion),
        amount=None if amount is None else ChargeAmount(**amount),
        label=label,
        note=note,
        demo=demo,
        atmosphere_assumed=atmosphere_assumed,
        _json=written,
        _words={"ip": ip, "si": si},
        **parts,
    )


def told(
    edition: str | None, role: str | None, priors: Mapping[str, float] | None
) -> tuple[str | None, str | None, list[tuple[str, float]]]:
    """What a diagnosis is told besides readings, as the core takes it."""
    if priors is not None and not isinstance(priors, Mapping):
        raise TypeError(f"priors: a mapping from name to weight is needed, not {type(priors).__name__}")
    return edition, role, [(str(name), float(weight)) for name, weight in (priors or {}).items()]


def _baseline(baseline: AnyReading | Iterable[AnyReading] | None) -> list[tuple[str, bool]]:
    if baseline is None:
        return []
    if isinstance(baseline, (Reading, Mapping, str)):
        return [to_text(baseline)]
    if not isinstance(baseline, Iterable):
        raise TypeError(f"baseline: readings are needed, not {type(baseline).__name__}")
    return [to_text(reading) for reading in baseline]


for _class in (Finding, MissingField, ProtocolVerdict, Value):
    _class.__module__ = "satline"
del _class
