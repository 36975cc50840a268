"""What a refrigerant is made of."""

from typing import NamedTuple


class Component(NamedTuple):
    """A component of a refrigerant with its share of the mass."""

    designation: str
    """The ASHRAE 34 designation of the pure component."""
    mass_fraction: float
    """Its share of the mass, 0 to 1."""


Component.__module__ = "satline"
