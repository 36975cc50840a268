"""Values with one standard uncertainty."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any, NamedTuple, TypeAlias, cast

import numpy as np

from ._typing import Array, Floats, Number

Pair: TypeAlias = tuple[float, float]
Measured: TypeAlias = Number | Array | tuple[Number | Array, Number | Array]
"""A number or an array taken as known, or a tuple of values and their standard uncertainty."""


class Uncertain(NamedTuple):
    """A value with one standard uncertainty, both in the unit that its name states. str() shows both.

    Where a measured value is wanted, give one of these, a plain tuple of the two, or the value alone: then it is taken as
    known. A list or an array is values, each taken as known.
    """

    value: Any
    """The value: a float, or an array where arrays were given."""
    standard_uncertainty: Any = 0.0
    """One standard uncertainty: an instrument's limit of error divided by the square root of 3."""

    def __str__(self) -> str:
        if not isinstance(self.value, (int, float)):
            return f"{self.value} ± {self.standard_uncertainty}"
        if self.standard_uncertainty == 0.0:
            return f"{self.value:g}"
        # Two digits of the uncertainty, and the value to the same place.
        places = max(0, 1 - math.floor(math.log10(self.standard_uncertainty)))
        return f"{self.value:.{places}f} ± {self.standard_uncertainty:.{places}f}"


def pair(measured: Measured) -> tuple[Any, Any]:
    """Value and standard uncertainty of what was given; a tuple is such a pair, a number or an array is exact."""
    if isinstance(measured, tuple):
        if len(measured) != 2:
            raise TypeError("give a number, or a pair of a value and one standard uncertainty")
        return measured
    return measured, 0.0


def one(measured: Measured) -> Pair:
    """The pair of one number."""
    value, uncertainty = pair(measured)
    return float(value), float(uncertainty)


def maybe(measured: Measured | None) -> Pair | None:
    """The pair of one number, or None."""
    return None if measured is None else one(measured)


def each(function: Callable[..., Any], *measured: Measured) -> Any:
    """Applies a function of pairs that gives a pair, or a tuple of pairs, to every element after broadcasting."""
    flat = [part for given in measured for part in pair(given)]
    if all(np.ndim(part) == 0 and not isinstance(part, np.ndarray) for part in flat):
        return _named(function(*(one(given) for given in measured)))
    arrays = [np.asarray(part, dtype=np.float64) for part in flat]
    shape = np.broadcast_shapes(*(array.shape for array in arrays))
    arrays = [np.broadcast_to(array, shape) for array in arrays]
    rows = []
    for index in np.ndindex(shape):
        numbers = [float(array[index]) for array in arrays]
        try:
            rows.append(function(*zip(numbers[::2], numbers[1::2], strict=True)))
        except Exception as error:
            error.add_note(f"at element {index}")
            raise
    cells: Floats = np.array(rows, dtype=np.float64).reshape(shape + (np.shape(rows[0]) if rows else (2,)))
    if cells.ndim == len(shape) + 1:
        return Uncertain(cells[..., 0], cells[..., 1])
    return tuple(Uncertain(cells[..., place, 0], cells[..., place, 1]) for place in range(cells.shape[-2]))


def _named(found: Any) -> Any:
    if isinstance(found[0], tuple):
        return tuple(Uncertain(*part) for part in cast("tuple[Pair, ...]", found))
    return Uncertain(*found)


Uncertain.__module__ = "satline"
