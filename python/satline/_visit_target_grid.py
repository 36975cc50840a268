"""The maker's own method: a chart of targets, blanks kept."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import TYPE_CHECKING, Literal

from . import _native
from ._uncertain import Measured, Uncertain, each, maybe, one

if TYPE_CHECKING:
    _Target = Literal[
        "superheat", "subcooling", "approach", "liquid-pressure", "discharge-pressure", "suction-pressure",
        "discharge-temperature", "temperature-split", "capacity", "power",
    ]  # fmt: skip
    _Axis = Literal[
        "outdoor-dry-bulb", "return-dry-bulb", "return-wet-bulb", "suction-pressure", "liquid-pressure", "airflow"
    ]


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class TargetDeviation:
    """A reading against the target of a chart. str() says it in plain words."""

    outcome: Literal["on-target", "below", "above", "cannot-tell", "no-valid-test"]
    """How it compares, tolerance and uncertainty allowed for."""
    explanation: str
    """The same in plain words."""
    target: Uncertain | None
    """What the chart says; None where it has no target."""
    deviation: Uncertain | None
    """Measured minus target; None where the chart has no target."""
    reason: str | None
    """Why the chart has no target, in plain words."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        if self.deviation is None:
            said = f"{self.outcome}: {self.reason}"
        else:
            said = f"{self.outcome}: target {self.target}, off by {self.deviation}. {self.explanation}"
        return "\n".join([said, *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True, init=False)
class TargetGrid:
    """A maker's chart of targets with one or two axes, in SI, on which nothing is read from blanks or beyond the ends.

    rows and columns: name of the axis and its ascending values; no columns for a chart with one axis. cells: one list for
    each row, or one number for each row of a chart with one axis; None or NaN where the chart is blank.

    >>> import satline
    >>> chart = satline.visit.TargetGrid(
    ...     "subcooling", ("outdoor-dry-bulb", [298.15, 308.15, 318.15]), None, [5.0, 6.0, None])
    >>> print(chart.at((303.15, 0.5)))
    5.500 ± 0.050
    >>> chart.compare((8.0, 0.6), 303.15, tolerance=1.0).outcome
    'above'
    >>> chart.compare((8.0, 0.6), 312.0, tolerance=1.0).outcome
    'no-valid-test'
    """

    target: _Target
    """What the chart gives."""
    rows: tuple[str, tuple[float, ...]]
    """What its rows are, and their values."""
    columns: tuple[str, tuple[float, ...]] | None
    """What its columns are, and their values."""
    cells: tuple[float, ...]
    """The cells, row by row; NaN where the chart is blank."""
    label: str
    """The name of the chart."""
    note: str
    """A remark, such as where the chart was copied from."""
    demo: bool
    """Whether the chart is invented."""
    atmosphere_assumed: bool
    """Whether gauge pressures of its text were made absolute with the standard sea-level atmosphere."""

    def __init__(
        self,
        target: _Target,
        rows: tuple[_Axis, Sequence[float]],
        columns: tuple[_Axis, Sequence[float]] | None,
        cells: Sequence[float | None] | Sequence[Sequence[float | None]],
        *,
        label: str = "",
        note: str = "",
        demo: bool = False,
    ) -> None:
        flat: list[float] = []
        for row in cells:
            line = [row] if row is None or isinstance(row, (int, float)) else list(row)
            if len(line) != (1 if columns is None else len(columns[1])):
                raise ValueError("give one cell for each column in every row, None where the chart is blank")
            flat.extend(float("nan") if cell is None else float(cell) for cell in line)
        self._set(target, rows, columns, flat, (label, note, demo, False))
        _native.target_grid_check(self._parts())

    def _set(
        self,
        target: str,
        rows: tuple[str, Sequence[float]],
        columns: tuple[str, Sequence[float]] | None,
        cells: list[float],
        said: tuple[str, str, bool, bool],
    ) -> None:
        def axis(given: tuple[str, Sequence[float]]) -> tuple[str, tuple[float, ...]]:
            return given[0], tuple(float(value) for value in given[1])

        values = (target, axis(rows), None if columns is None else axis(columns), tuple(cells), *said)
        names = ("target", "rows", "columns", "cells", "label", "note", "demo", "atmosphere_assumed")
        for name, value in zip(names, values, strict=True):
            object.__setattr__(self, name, value)

    def _parts(self) -> tuple[str, tuple[str, list[float]], tuple[str, list[float]] | None, list[float]]:
        columns = None if self.columns is None else (self.columns[0], list(self.columns[1]))
        return self.target, (self.rows[0], list(self.rows[1])), columns, list(self.cells)

    @classmethod
    def from_json(cls, text: str) -> TargetGrid:
        """A chart from JSON text, in the units of the trade; an error names the line and the field.

        >>> import satline
        >>> chart = satline.visit.TargetGrid.from_json('''{
        ...     "target": "subcooling", "unit": "degF", "demo": true,
        ...     "rows": {"axis": "outdoor-dry-bulb", "unit": "degF", "values": [75, 95, 115]},
        ...     "cells": [9, 10, null]}''')
        >>> round(chart.at(satline.units.kelvin_from_fahrenheit(85)).value * 1.8, 3)
        9.5
        """
        (target, rows, columns, cells), said = _native.target_grid_from_text(text)
        made = object.__new__(cls)
        made._set(target, rows, columns, cells, said)
        return made

    def at(self, row: Measured, column: Measured | None = None) -> Uncertain | None:
        """The chart's target where its axes have these values; None where it is blank or ends."""
        found, _ = _native.target_grid_at(self._parts(), one(row), maybe(column))
        return None if found is None else Uncertain(*found)

    def compare(
        self, measured: Measured, row: Measured, column: Measured | None = None, *, tolerance: float
    ) -> TargetDeviation:
        """A reading against the chart, with a tolerance in the target's unit: the maker's, or the protocol's."""
        outcome, explanation, deviation, (target, gap) = _native.target_grid_compare(
            self._parts(), one(measured), one(row), maybe(column), float(tolerance)
        )
        return TargetDeviation(
            outcome=outcome,
            explanation=explanation,
            target=None if target is None else Uncertain(*target),
            deviation=None if deviation is None else Uncertain(*deviation),
            reason=None if gap is None else gap[1],
            cautions=tuple(_native.chart_cautions()),
        )


def approach_k(liquid_line_k: Measured, outdoor_dry_bulb_k: Measured) -> Uncertain:
    """Approach: liquid line minus outdoor dry bulb temperature. Arrays are broadcast.

    >>> import satline
    >>> print(satline.visit.approach_k((313.15, 0.4), (308.15, 0.3)))
    5.00 ± 0.50
    """
    found: Uncertain = each(_native.approach, liquid_line_k, outdoor_dry_bulb_k)
    return found
