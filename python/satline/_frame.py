"""Whole frames of readings: one row in, one row out."""

from __future__ import annotations

import dataclasses
import sys
from collections.abc import Iterable, Mapping
from typing import Any, Literal, TypeAlias, overload

import numpy as np
import numpy.typing as npt

from . import _native
from ._errors import MalformedTextError, UnknownFieldError
from ._finding import told
from ._frame_columns import Odd, Table, Texts
from ._reading import Reading, to_json

Codes: TypeAlias = npt.NDArray[np.uintp]

# Rows judged at a time: what is computed on the way then stays small beside the answers, however long the frame.
_CHUNK = 65_536
_NUMBERS = frozenset(name for name, _, _ in _native.reading_fields()) | {"altitude_m"}
_WORDS = frozenset(field.name for field in dataclasses.fields(Reading)) - _NUMBERS - {"label", "uncertainty"}
_CARRIED = ("unit", "label", "note", "demo")
_NO_BASELINE = np.iinfo(np.uintp).max


@overload
def diagnose_frame(
    frame: Mapping[str, Any],
    baseline: Mapping[str, Any] | Any | None = None,
    *,
    common: Reading | Mapping[str, Any] | None = None,
    keep: Iterable[str] = (),
    edition: Literal["title-24-ra3.2-2008", "title-24-ra3.2-2013"] | None = None,
    role: Literal["installer", "verifier"] | None = None,
    priors: Mapping[str, float] | None = None,
) -> dict[str, npt.NDArray[Any]]: ...
@overload
def diagnose_frame(
    frame: Any,
    baseline: Mapping[str, Any] | Any | None = None,
    *,
    common: Reading | Mapping[str, Any] | None = None,
    keep: Iterable[str] = (),
    edition: Literal["title-24-ra3.2-2008", "title-24-ra3.2-2013"] | None = None,
    role: Literal["installer", "verifier"] | None = None,
    priors: Mapping[str, float] | None = None,
) -> Any: ...
def diagnose_frame(
    frame: Any,
    baseline: Any = None,
    *,
    common: Reading | Mapping[str, Any] | None = None,
    keep: Iterable[str] = (),
    edition: Literal["title-24-ra3.2-2008", "title-24-ra3.2-2013"] | None = None,
    role: Literal["installer", "verifier"] | None = None,
    priors: Mapping[str, float] | None = None,
) -> Any:
    """What every reading of a frame says of its unit: satline.diagnose for whole columns, in the order of the rows.

    frame: a mapping from column name to array, list or one value for all rows, or a data frame (an object with columns
    and []). A pandas DataFrame gives a DataFrame with the same index; anything else gives a dict of arrays.

    Columns in: the fields of satline.Reading, in SI by their full names, and altitude_m in place of ambient_pressure_pa.
    A number that is NaN or None, and a word that is None or empty, was not measured. unit, label, note and demo are
    carried over, as is what keep names; any other name raises UnknownFieldError with the nearest known one. common: a
    partial reading that holds for every row, in which strings with units, altitude and uncertainty (the accuracy of the
    instruments) may stand.

    baseline: a frame with the same columns, readings of the same units when they were known to be healthy. The column
    unit, in both, says whose they are; without it in either, all rows are of one unit. edition, role and priors are those
    of satline.diagnose.

    Columns out, besides those carried over:

    - charge, charge_status, reason, next_check, advice, protocol_action, protocol_reason, protocol_split: words, as in a
      Finding; protocol_reason is empty where the protocol has a valid test.
    - conclusion: the causes joined by "+", "healthy", or "cannot-tell"; conclusion_reason; fits (bool);
      preconditions_not_met and cautions: names joined by "+", or empty.
    - p_healthy, and p_undercharge and so on for every cause: the probability that it is among what is wrong. NaN where
      nothing could be weighed.
    - superheat_k, superheat_uncertainty_k and all other values of a Finding, each with one standard uncertainty; NaN where
      the reading does not allow it. superheat_bound and subcooling_bound: "exact" or "at-least".
    - amount_share, amount_share_uncertainty, amount_lowest_share, amount_highest_share (90 % between them),
      amount_mass_kg, amount_bound: as Finding.amount; NaN and empty where there is none.
    - error: empty, or why the row is no reading, with the field, the value and its limits. Such a row keeps its place:
      its words are empty, its numbers NaN, fits False. A baseline row that is no reading is the error of its unit's rows.

    >>> import satline
    >>> found = satline.diagnose_frame({"refrigerant": "R-410A", "suction_pressure_pa": [9.1e5, 9.1e9]})
    >>> found["charge"].tolist(), found["dew_temperature_k"].round(1).tolist()
    (['not-judged', ''], [277.0, nan])
    >>> print(found["error"][1][:62])
    field suction_pressure_pa: absolute pressure of 9100000000 Pa 
    """
    judge = _native.FrameJudge(told(edition, role, priors))
    shared = _shared(common)
    carried = [*_CARRIED, *keep]
    table = Table(frame, "frame")
    for name in keep:
        if name not in table.names:
            raise UnknownFieldError(f"keep: the frame has no column {name}", field=name, nearest=table.nearest(name))
    given = _Given(judge, table, shared, carried)
    units = _baseline(judge, table, baseline, shared, carried)

    answers: dict[str, npt.NDArray[Any]] = {}
    errors = np.full(table.count, "", dtype=object)
    for start in range(0, max(table.count, 1), _CHUNK):
        part = slice(start, min(start + _CHUNK, table.count))
        numbers, bases, faults = given.chunk(part)
        columns, bad = judge.judge(numbers, bases, units(part), faults)
        for name, column in columns:
            cells = np.array(column[1] or [""], dtype=object)[column[0]] if isinstance(column, tuple) else column
            if name not in answers:
                answers[name] = np.empty(table.count, dtype=cells.dtype)
            answers[name][part] = cells
        for row, error in bad:
            errors[start + row] = error
    answers["error"] = errors

    wanted = [name for name in dict.fromkeys(carried) if name in table.names]
    for name in wanted:
        if name in answers:
            raise MalformedTextError(f"keep: {name} is the name of an answer too; rename the column", field=name)
    return _like(frame, {**{name: table.whole(name) for name in wanted}, **answers})


def _like(frame: Any, columns: dict[str, Any]) -> Any:
    # Whoever has a DataFrame has imported pandas.
    pandas = sys.modules.get("pandas")
    if pandas is not None and isinstance(frame, pandas.DataFrame):
        return pandas.DataFrame(columns, index=frame.index, copy=False)
    return columns


def _shared(common: Reading | Mapping[str, Any] | None) -> Mapping[str, Any]:
    if common is None:
        return {}
    if isinstance(common, Reading):
        return common.to_mapping()
    if isinstance(common, Mapping):
        return common
    raise TypeError(f"common: a Reading or a mapping is needed, not {type(common).__name__}")


class _Given:
    """The readings of a table, chunk by chunk."""

    def __init__(self, judge: Any, table: Table, shared: Mapping[str, Any], carried: Iterable[str]) -> None:
        self._table = table
        known = _NUMBERS | _WORDS | set(carried)
        for name in table.names:
            if name not in known:
                nearest = table.nearest(name, known)
                message = f"{table.what}: {name!r} is not a field of a reading: the nearest is {nearest}"
                raise UnknownFieldError(
                    f"{message}; name columns to be carried over in keep", field=str(name), nearest=nearest
                )
        self._numbers = [name for name in table.names if name in _NUMBERS]
        words = [name for name in table.names if name in _WORDS]
        _refuse_twice(judge, shared, self._numbers, words)
        self._bases = _Bases(judge, shared, words)

    def chunk(self, part: slice) -> tuple[list[tuple[str, Any]], Codes, list[tuple[int, str]]]:
        """The numeric columns, the base of each row, and the rows that are no readings."""
        count = part.stop - part.start
        numbers, faults = [], dict[int, str]()
        for name in self._numbers:
            cells, odd = self._table.numbers(name, part)
            numbers.append((name, cells))
            for row, cell in odd:
                problem = f"field {name}: {cell} is not a number: give a number in SI, or leave the cell empty"
                faults.setdefault(row, problem)
        words = [self._table.words(name, part) for name in self._bases.names]
        if words:
            keys = map(self._bases.__getitem__, zip(*words, strict=True))
            bases = np.fromiter(keys, dtype=np.uintp, count=count)
        else:
            bases = np.full(count, self._bases[()], dtype=np.uintp)
        return numbers, bases, sorted(faults.items())


def _refuse_twice(judge: Any, shared: Mapping[str, Any], numbers: list[str], words: list[str]) -> None:
    """A field that stands both in common and in a column would have two values."""
    fields, atmosphere_assumed = judge.given(to_json(shared)) if shared else ([], False)
    ambient = {"altitude_m", "ambient_pressure_pa"}
    twice = [name for name in [*numbers, *words] if name in fields or (name in words and shared.get(name) is not None)]
    twice += [name for name in numbers if name in ambient and ambient & set(fields)]
    if twice:
        raise MalformedTextError(f"field {twice[0]}: given in a column and in common; keep one", field=twice[0])
    if ambient <= set(numbers):
        raise MalformedTextError("field altitude_m: stands in for ambient_pressure_pa; keep one", field="altitude_m")
    if atmosphere_assumed and ambient & set(numbers):
        raise MalformedTextError(
            "common: a gauge pressure needs the ambient pressure in common too, not in a column; give it absolute instead"
        )


class _Bases(dict[tuple[Any, ...], int]):
    """The base of each combination of words, read once when it first comes up."""

    def __init__(self, judge: Any, shared: Mapping[str, Any], names: list[str]) -> None:
        super().__init__()
        self.names = names
        self._judge, self._shared = judge, shared

    def __missing__(self, words: tuple[Any, ...]) -> int:
        given = {name: word for name, word in zip(self.names, words, strict=True) if word is not None}
        odd = next(((name, word) for name, word in given.items() if isinstance(word, Odd)), None)
        if odd is None:
            base = self._judge.base(to_json({**self._shared, **given}))
        else:
            name, word = odd
            base = self._judge.faulty_base(f"field {name}: {word} is not a word: give a word, or leave the cell empty")
        self[words] = int(base)
        return int(base)


class _Units:
    """The number of each row's unit in the baseline."""

    def __init__(self, cells: Texts | None, numbers: Mapping[Any, int], alone: int) -> None:
        self._cells, self._numbers, self._alone = cells, numbers, alone

    def __call__(self, part: slice) -> Codes:
        count = part.stop - part.start
        if self._cells is None:
            return np.full(count, self._alone, dtype=np.uintp)
        units = (self._numbers.get(unit, _NO_BASELINE) for unit in self._cells[part])
        return np.fromiter(units, dtype=np.uintp, count=count)


def _baseline(judge: Any, table: Table, baseline: Any, shared: Mapping[str, Any], carried: list[str]) -> _Units:
    if baseline is None:
        return _Units(None, {}, _NO_BASELINE)
    healthy = Table(baseline, "baseline")
    if ("unit" in healthy.names) != ("unit" in table.names):
        without = "frame" if "unit" in healthy.names else "baseline"
        raise UnknownFieldError(
            f"the {without} has no column unit: it says whose baseline is whose, and is needed in both or in neither",
            field="unit",
        )
    given = _Given(judge, healthy, shared, carried)
    own, rows = (healthy.cells("unit"), table.cells("unit")) if "unit" in healthy.names else (None, None)
    numbers: dict[Any, int] = {}
    for row, unit in enumerate(own or ()):
        if unit is None or unit == "" or unit != unit:
            raise MalformedTextError(f"baseline row {row}, column unit: the unit is missing", field="unit")
        numbers.setdefault(unit, len(numbers))
    units = _Units(own, numbers, 0)
    for start in range(0, healthy.count, _CHUNK):
        part = slice(start, min(start + _CHUNK, healthy.count))
        columns, bases, faults = given.chunk(part)
        judge.healthy(start, columns, bases, units(part), faults)
    return _Units(rows, numbers, 0)


diagnose_frame.__module__ = "satline"
