"""What functions accept and give, for type checkers."""

from collections.abc import Sequence
from typing import Any, Protocol, TypeAlias

import numpy as np
import numpy.typing as npt


class SupportsArray(Protocol):
    """Anything numpy can make an array of, such as a column of a data frame."""

    def __array__(self) -> npt.NDArray[Any]: ...


Number: TypeAlias = float | np.floating[Any] | np.integer[Any]
"""One number: gives a float."""

Array: TypeAlias = npt.NDArray[Any] | Sequence[float] | Sequence[Sequence[float]] | SupportsArray
"""Anything array-like: gives an array."""

Floats: TypeAlias = npt.NDArray[np.float64]
"""What arrays give."""

MaskedFloats: TypeAlias = np.ma.MaskedArray[Any, np.dtype[np.float64]]
"""What arrays give where some cells may have no answer."""
