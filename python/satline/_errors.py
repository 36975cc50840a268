"""The exceptions. Their numbers and names are those of the error table that every language shares."""

from __future__ import annotations

from typing import ClassVar


class SatlineError(Exception):
    """Base of every failure that satline reports.

    What is known of the failure stands in the attributes; those that do not apply are None.
    """

    code: ClassVar[int | None] = None
    """Fixed number of the failure in the shared error table; None where it exists in Python only."""
    name: ClassVar[str | None] = None
    """Name of the failure in the shared error table."""

    quantity: str | None
    """The quantity concerned, in words."""
    unit: str | None
    """The unit of value, lower and upper."""
    value: float | str | None
    """The value given."""
    lower: float | None
    """The lowest accepted value."""
    upper: float | None
    """The highest accepted value."""
    nearest: str | None
    """The nearest known name."""
    field: str | None
    """The reading's field."""
    line: int | None
    """The line of the text, from 1."""
    index: tuple[int, ...] | None
    """Where in the (broadcast) array the value stands."""

    def __init__(
        self,
        message: str = "",
        *,
        quantity: str | None = None,
        unit: str | None = None,
        value: float | str | None = None,
        lower: float | None = None,
        upper: float | None = None,
        nearest: str | None = None,
        field: str | None = None,
        line: int | None = None,
        index: tuple[int, ...] | None = None,
    ) -> None:
        super().__init__(message)
        self.quantity = quantity
        self.unit = unit
        self.value = value
        self.lower = lower
        self.upper = upper
        self.nearest = nearest
        self.field = field
        self.line = line
        self.index = index


class OutOfRangeError(SatlineError, ValueError):
    """A value lies outside the accepted range."""

    code = 1
    name = "out-of-range"


class NotFiniteError(OutOfRangeError):
    """A value is not a number, or infinite."""

    code = 2
    name = "not-finite"


class UnknownRefrigerantError(SatlineError, LookupError):
    """No refrigerant of that name is in the catalogue; the nearest is named."""

    code = 3
    name = "unknown-refrigerant"


class UnknownFieldError(SatlineError, LookupError):
    """No reading field of that name exists; the nearest is named."""

    code = 4
    name = "unknown-field"


class UnknownChoiceError(SatlineError, ValueError):
    """A word is not one of the choices of a field."""

    code = 5
    name = "unknown-choice"


class NotConvergedError(SatlineError, ArithmeticError):
    """An iterative solution of an equation of state did not converge."""

    code = 6
    name = "not-converged"


class BadCompositionError(SatlineError, ValueError):
    """A composition is not usable."""

    code = 7
    name = "bad-composition"


class UnknownUnitError(SatlineError, ValueError):
    """A unit is not known for that quantity."""

    code = 8
    name = "unknown-unit"


class MalformedTextError(SatlineError, ValueError):
    """A text is not a reading in JSON."""

    code = 9
    name = "malformed-text"


class NotAvailableError(SatlineError, NotImplementedError):
    """No trustworthy answer is known: nothing is published, a rule does not apply, or this version cannot do it yet."""

    code = 101
    name = "not-available"


for _class in [SatlineError, *SatlineError.__subclasses__(), NotFiniteError]:
    # Tracebacks then show the name under which users know and catch it.
    _class.__module__ = "satline"
del _class
