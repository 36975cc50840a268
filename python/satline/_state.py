"""What Refrigerant.state gives: one state, or as many as arrays were given."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
import numpy.typing as npt

from ._typing import Floats, MaskedFloats


@dataclass(frozen=True, kw_only=True)
class State:
    """A state of a refrigerant, from its equation of state; all properties are by mass.

    Heat capacities and speed of sound belong to one phase: they are None in two. At a quality of exactly 0 or 1 they
    are those of the saturated liquid or vapour, and the phase is 'liquid' or 'vapor'.
    """

    temperature_k: float
    """Temperature in kelvin."""
    pressure_pa: float
    """Absolute pressure in pascals."""
    density_kg_m3: float
    """Density in kg/m3; of two phases the mass of both over their volume."""
    enthalpy_j_kg: float
    """Enthalpy in J/kg, by the reference state."""
    entropy_j_kg_k: float
    """Entropy in J/(kg K), by the reference state."""
    internal_energy_j_kg: float
    """Internal energy in J/kg, by the reference state."""
    specific_heat_j_kg_k: float | None
    """Heat capacity at constant pressure in J/(kg K)."""
    isochoric_specific_heat_j_kg_k: float | None
    """Heat capacity at constant volume in J/(kg K)."""
    speed_of_sound_m_s: float | None
    """Speed of sound in m/s."""
    quality: float | None
    """The vapour's share of the mass, 0 to 1; None in one phase."""
    phase: str
    """'liquid', 'vapor', 'two-phase' or 'supercritical'."""
    liquid_mass_fractions: tuple[float, ...] | None
    """Of the components in the liquid of two phases, in the order of Refrigerant.components; None in one phase."""
    vapor_mass_fractions: tuple[float, ...] | None
    """Of the components in the vapour of two phases; None in one phase."""


@dataclass(frozen=True, kw_only=True, eq=False)
class States:
    """States of a refrigerant: the fields of State as arrays of one shape.

    What is None in a State is masked here: heat capacities and speed of sound in two phases, quality in one.
    """

    temperature_k: Floats
    """Temperature in kelvin."""
    pressure_pa: Floats
    """Absolute pressure in pascals."""
    density_kg_m3: Floats
    """Density in kg/m3."""
    enthalpy_j_kg: Floats
    """Enthalpy in J/kg, by the reference state."""
    entropy_j_kg_k: Floats
    """Entropy in J/(kg K), by the reference state."""
    internal_energy_j_kg: Floats
    """Internal energy in J/kg, by the reference state."""
    specific_heat_j_kg_k: MaskedFloats
    """Heat capacity at constant pressure in J/(kg K); masked in two phases."""
    isochoric_specific_heat_j_kg_k: MaskedFloats
    """Heat capacity at constant volume in J/(kg K); masked in two phases."""
    speed_of_sound_m_s: MaskedFloats
    """Speed of sound in m/s; masked in two phases."""
    quality: MaskedFloats
    """The vapour's share of the mass, 0 to 1; masked in one phase."""
    phase: npt.NDArray[np.str_]
    """'liquid', 'vapor', 'two-phase' or 'supercritical'."""
    liquid_mass_fractions: MaskedFloats
    """Of the components in the liquid, along one more axis; masked in one phase."""
    vapor_mass_fractions: MaskedFloats
    """Of the components in the vapour, along one more axis; masked in one phase."""

    @property
    def shape(self) -> tuple[int, ...]:
        """The shape of the arrays."""
        return self.temperature_k.shape

    def __len__(self) -> int:
        return len(self.temperature_k)


for _class in (State, States):
    _class.__module__ = "satline"
del _class
