"""The columns of a frame, whatever it is: numbers as float64, words as lists, one value for all rows."""

from __future__ import annotations

import difflib
from collections.abc import Iterable, Mapping, Sequence
from typing import Any, TypeAlias

import numpy as np
import numpy.typing as npt

from ._errors import MalformedTextError
from ._native import Refrigerant
from ._typing import Floats

Texts: TypeAlias = Sequence[Any]


class Odd(str):
    """A cell that is no word, as it is shown in an error."""

    __slots__ = ()


class Table:
    """A mapping of columns, or a data frame."""

    def __init__(self, frame: Any, what: str) -> None:
        if not isinstance(frame, Mapping) and not (hasattr(frame, "columns") and hasattr(frame, "__getitem__")):
            raise TypeError(f"{what}: a mapping of columns or a data frame is needed, not {type(frame).__name__}")
        self.what = what
        self.names = list(frame) if isinstance(frame, Mapping) else list(frame.columns)
        for name in self.names:
            if self.names.count(name) > 1:
                raise MalformedTextError(f"{what}: the column {name} stands twice; keep one", field=str(name))
        self._columns = {name: frame[name] for name in self.names}
        self.count = self._rows(frame)
        self._arrays: dict[str, npt.NDArray[Any]] = {}

    def _rows(self, frame: Any) -> int:
        lengths: dict[str, int] = {}
        for name, column in self._columns.items():
            if _is_one(column):
                continue
            if not hasattr(column, "__len__") or isinstance(column, Mapping):
                kind = type(column).__name__
                raise TypeError(f"{self.what}, column {name}: an array, a list or one value is needed, not {kind}")
            if getattr(column, "ndim", 1) != 1:
                raise ValueError(f"{self.what}, column {name}: one cell a row is needed, not {column.ndim} axes")
            lengths[name] = len(column)
        if not lengths:
            return len(frame) if not isinstance(frame, Mapping) and hasattr(frame, "__len__") else min(len(self.names), 1)
        first = next(iter(lengths))
        for name, length in lengths.items():
            if length != lengths[first]:
                raise ValueError(f"{self.what}: {name} has {length} rows and {first} has {lengths[first]}")
        return lengths[first]

    def nearest(self, name: object, names: Iterable[str] | None = None) -> str | None:
        """The nearest of the table's own columns, or of other names."""
        among = [str(known) for known in (self.names if names is None else sorted(names))]
        return next(iter(difflib.get_close_matches(str(name), among, n=1, cutoff=0.0)), None)

    def whole(self, name: str) -> Any:
        """A column as it is, one value as an array of it."""
        column = self._columns[name]
        if _is_one(column):
            return np.full(self.count, column, dtype=object if isinstance(column, str) or column is None else None)
        return np.asarray(column) if isinstance(column, (list, tuple)) else column

    def numbers(self, name: str, part: slice) -> tuple[Floats, list[tuple[int, str]]]:
        """Cells as float64 in memory of their own, NaN where nothing stands, and those that are no numbers."""
        array = self._array(name)
        one = array.ndim == 0
        cells = array[np.newaxis] if one else array[part]
        if cells.dtype.kind in "fiu":
            values, odd = np.array(cells, dtype=np.float64), list[tuple[int, str]]()
        else:
            values, odd = _each(cells)
        if one:
            count = part.stop - part.start
            return np.full(count, values[0]), [(row, odd[0][1]) for row in range(count)] if odd else []
        return values, odd

    def words(self, name: str, part: slice) -> list[str | None]:
        """Cells as words, None where nothing stands."""
        array = self._array(name)
        if array.ndim == 0:
            return [_word(array[()])] * (part.stop - part.start)
        return [cell if type(cell) is str and cell else _word(cell) for cell in array[part].tolist()]

    def cells(self, name: str) -> Texts:
        """Cells as they are, one a row."""
        array = self._array(name)
        return [array[()]] * self.count if array.ndim == 0 else array.tolist()

    def _array(self, name: str) -> npt.NDArray[Any]:
        if name not in self._arrays:
            self._arrays[name] = _array(self._columns[name])
        return self._arrays[name]


def _is_one(column: object) -> bool:
    if column is None or isinstance(column, (str, bytes, bool, int, float, np.generic, Refrigerant)):
        return True
    return getattr(column, "ndim", None) == 0


def _array(column: Any) -> npt.NDArray[Any]:
    """A column as an array in which None stands for cells that were not measured, unless they are NaN."""
    if isinstance(column, Refrigerant):
        column = column.designation
    if isinstance(column, (list, tuple)):
        array = np.asarray(column) if all(type(cell) is float for cell in column) else None
        # Otherwise numpy would make text of a column with one word in it.
        return np.fromiter(column, dtype=object, count=len(column)) if array is None else array
    if isinstance(column, np.ma.MaskedArray):
        array, missing = np.asarray(column.data), np.ma.getmaskarray(column)
    elif hasattr(column, "isna"):
        array, missing = np.asarray(column), np.asarray(column.isna(), dtype=bool)
    else:
        return np.asarray(column, dtype=object if isinstance(column, (str, bytes)) else None)
    if missing.any():
        array = array.astype(array.dtype if array.dtype.kind == "f" else object)
        array[missing] = np.nan if array.dtype.kind == "f" else None
    return array


def _each(cells: npt.NDArray[Any]) -> tuple[Floats, list[tuple[int, str]]]:
    values, odd = np.full(len(cells), np.nan), []
    for row, cell in enumerate(cells.tolist()):
        try:
            if isinstance(cell, (float, int, np.floating, np.integer)) and not isinstance(cell, bool):
                values[row] = cell
            elif cell is not None and not (isinstance(cell, str) and cell == ""):
                odd.append((row, _shown(cell)))
        except OverflowError:
            odd.append((row, _shown(cell)))
    return values, odd


def _word(cell: Any) -> str | None:
    if cell is None or (isinstance(cell, (float, np.floating)) and cell != cell):
        return None
    if isinstance(cell, str):
        return str(cell) or None
    return cell.designation if isinstance(cell, Refrigerant) else Odd(_shown(cell))


def _shown(cell: object) -> str:
    """A cell as an error shows it."""
    shown = repr(cell)
    return shown if len(shown) <= 60 else f"{shown[:60]}..."
