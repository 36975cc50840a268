"""A heat pump that heats: what can be judged, and what cannot."""

from __future__ import annotations

import dataclasses
import json
from collections.abc import Mapping
from typing import Any, Literal

from . import _native
from ._errors import UnknownChoiceError
from ._finding import Value
from ._reading import Reading, to_text
from ._visit_target_grid import TargetGrid


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class HeatingChartFinding:
    """A measurement against the maker's chart for heating."""

    feature: str
    """What the chart gives; a chart of temperature split is compared with the rise of the supply air."""
    outcome: Literal[
        "within", "above", "below", "cannot-tell", "no-target", "not-measured", "not-for-heating", "not-comparable"
    ]
    """How it compares, tolerance and uncertainty allowed for."""
    measured: Value | None = None
    """What was measured, with target and deviation where the chart has one, in the target's SI unit."""
    gap: str | None = None
    """Why the chart has no target, where it has none."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class HeatingMissingField:
    """A measurement that was not taken."""

    field: str
    """A field of the reading, or an argument of satline.judge_heating."""
    needed_for: Literal["capacity", "ratio", "frost", "reversing-valve", "chart"]
    """What it is needed for."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class HeatingFinding:
    """The answer for heating: satline.judge_heating gives one. str(finding) says it in plain words.

    No charge is judged: in heating superheat and subcooling have no target, so the charge is judged by weight only.
    """

    capacity: Literal["very-low", "not-very-low", "cannot-tell", "not-compared"]
    """What the delivered heat says. Nothing but "very low" is concluded from it."""
    outdoor_dry_bulb_k: float | None = None
    """The outdoor temperature to which the ratio of the capacity belongs."""
    frost: Literal[
        "forms", "possible", "condensation-only", "frost-free", "cannot-happen", "cannot-tell", "unknown"
    ]
    """Whether frost grows on the outdoor coil."""
    reversing_valve: Literal["tight", "suspected", "cannot-tell", "not-measured"]
    """What the suction gas before and behind the reversing valve says of a leak."""
    chart: HeatingChartFinding | None = None
    """The measurement against the maker's chart, where one was given."""
    values: Mapping[str, Value]
    """Everything computed, by name with its unit. What the reading does not allow is not there."""
    problems: tuple[str, ...]
    """What is wrong with the reading itself."""
    limits: tuple[str, ...]
    """What heating does not let one judge, and what the values leave out."""
    missing: tuple[HeatingMissingField, ...]
    """What was not measured and what for."""
    cautions: tuple[str, ...]
    """What can hurt."""
    _sentences: Mapping[str, str] = dataclasses.field(repr=False, compare=False)
    _json: str = dataclasses.field(repr=False, compare=False)
    _words: Mapping[str, str] = dataclasses.field(repr=False, compare=False)

    def sentence(self, of: str) -> str:
        """What an answer means, in plain words: of "capacity", "frost", "reversing_valve", "chart", or of a word in
        problems, limits and cautions."""
        try:
            return self._sentences[of]
        except KeyError:
            message = f"{of!r} is not in this finding: it has {', '.join(self._sentences)}"
            raise UnknownChoiceError(message, field="of", value=of) from None

    def to_json(self) -> str:
        """The finding as a JSON object; what is not known is left out."""
        return self._json

    def in_words(self, units: Literal["ip", "si"] = "ip") -> str:
        """The finding in plain words, in degF and Btu/h ("ip") or degC and kW ("si"); ± is one standard uncertainty."""
        try:
            return self._words[units]
        except KeyError:
            message = f"units of {units!r} are not a choice: use ip or si"
            raise UnknownChoiceError(message, field="units", value=units) from None

    def __str__(self) -> str:
        return self.in_words()


def judge_heating(
    reading: Reading | Mapping[str, Any] | str,
    *,
    outdoor_dew_point_k: float | None = None,
    valve_suction_inlet_temperature_k: float | None = None,
    valve_suction_outlet_temperature_k: float | None = None,
    valve_probe_limit_k: float | None = None,
    chart: TargetGrid | None = None,
    chart_tolerance: float | None = None,
) -> HeatingFinding:
    """What a reading of a heat pump in heating says: heat delivered, frost, reversing valve, the maker's chart.

    The reading is given as to satline.diagnose, with mode "heating". In heating suction_pressure_pa is the pressure at the
    compressor's suction, not at the vapour port, which carries hot gas then; suction_line_temperature_k is that of the
    vapour line, and condensing_surface_temperature_k that of a return bend of the outdoor coil.

    outdoor_dew_point_k: dew point of the outdoor air, 173.15 to 373.15 K; below 0 degC the frost point.
    valve_suction_inlet_temperature_k, valve_suction_outlet_temperature_k: suction gas before and behind the reversing
    valve, K. valve_probe_limit_k: limit of error of those two probes against each other, 0 to 10 K.
    chart with chart_tolerance: the maker's chart for heating, and the tolerance in its target's SI unit.

    There is always a finding for a reading that can be understood. A value outside its range raises OutOfRangeError or
    NotFiniteError.

    >>> import satline
    >>> finding = satline.judge_heating(
    ...     {"refrigerant": "R-410A", "mode": "heating", "outdoor_dry_bulb": "35 degF", "suction_pressure": "85 psig",
    ...      "return_dry_bulb": "70 degF", "supply_dry_bulb": "95 degF", "airflow": "1150 cfm", "altitude": "1000 ft"},
    ...     outdoor_dew_point_k=satline.units.kelvin_from_fahrenheit(33))
    >>> finding.frost
    'forms'
    >>> round(finding.values["delivered_capacity_w"].value / 1000, 1)
    8.8
    """
    if (chart is None) != (chart_tolerance is None):
        raise ValueError("give chart and chart_tolerance together: a chart without the maker's tolerance decides nothing")
    text, has_lines = to_text(reading)

    def number(value: float | None) -> float | None:
        return None if value is None else float(value)

    extras = (
        number(outdoor_dew_point_k),
        number(valve_suction_inlet_temperature_k),
        number(valve_suction_outlet_temperature_k),
        number(valve_probe_limit_k),
    )
    given = None if chart is None or chart_tolerance is None else (chart._parts(), float(chart_tolerance))
    written, ip, si, sentences = _native.judge_heating_text(text, has_lines, extras, given)
    parts = json.loads(written)
    compared = parts.pop("chart", None)
    if compared is not None:
        measured = compared.pop("measured", None)
        compared = HeatingChartFinding(measured=None if measured is None else Value(**measured), **compared)
    return HeatingFinding(
        chart=compared,
        values={name: Value(**value) for name, value in parts.pop("values").items()},
        problems=tuple(parts.pop("problems")),
        limits=tuple(parts.pop("limits")),
        missing=tuple(HeatingMissingField(**field) for field in parts.pop("missing")),
        cautions=tuple(parts.pop("cautions")),
        _sentences=dict(sentences),
        _json=written,
        _words={"ip": ip, "si": si},
        **parts,
    )


for _class in (HeatingChartFinding, HeatingFinding, HeatingMissingField):
    _class.__module__ = "satline"
del _class
