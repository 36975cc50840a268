"""The charge for a line set; users find it in satline.lineset."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import Any, Literal, overload

from . import _native
from ._native import Refrigerant, Tube
from ._typing import Array, Floats, Number
from ._uncertain import Uncertain, maybe, one

__all__ = ["LineCharge", "LineSetCharge", "Tube", "charge_per_length_kg_m", "line_set_charge"]

_OUNCE = 0.028349523125
_OUNCES_PER_FOOT = _OUNCE / 0.3048


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class LineCharge:
    """What one line holds. Each value stands with its standard uncertainty."""

    tube: Tube
    """Its tube."""
    length_m: float
    """Its length."""
    density_kg_m3: float
    """Mean density of what is in it."""
    density_uncertainty_kg_m3: float
    quality: float | None
    """Quality of the flow behind an outdoor metering device; None in a line of one phase."""
    charge_per_length_kg_m: float
    """Mass per length."""
    charge_per_length_uncertainty_kg_m: float
    holds_kg: float
    """Mass in the whole line."""
    holds_uncertainty_kg: float
    beyond_kg: float
    """Mass beyond what the factory charge covers; negative where it covers more."""
    beyond_uncertainty_kg: float

    def __str__(self) -> str:
        mix = "" if self.quality is None else f", liquid and vapor, quality {self.quality:.2f}"
        return (
            f"{self.tube.name}, {self.length_m:.1f} m ({self.length_m / 0.3048:.0f} ft) holds {_mass(self.holds_kg)}: "
            f"{1e3 * self.charge_per_length_kg_m:.1f} g/m "
            f"({self.charge_per_length_kg_m / _OUNCES_PER_FOOT:.3f} oz/ft){mix}"
        )


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class LineSetCharge:
    """The charge for a line set. str() says it in plain words."""

    refrigerant: Refrigerant
    """What is in it."""
    mass_kg: float
    """What to add to the factory charge; negative: what to recover."""
    standard_uncertainty_kg: float
    """One standard uncertainty of it."""
    action: Literal["add", "recover", "nothing"]
    """What to do."""
    instruction: str
    """The same in a sentence."""
    advice: str
    """What to check of the figures."""
    cautions: tuple[str, ...]
    """What can hurt."""
    liquid: LineCharge
    """The small line."""
    vapor: LineCharge
    """The large line."""
    charge_per_length_kg_m: float
    """Both lines per length, computed."""
    charge_per_length_uncertainty_kg_m: float
    """One standard uncertainty of it."""
    computed_kg: float
    """Both lines beyond what is covered, computed whether the maker's figure was given or not."""
    computed_uncertainty_kg: float
    """One standard uncertainty of it."""
    accessories_kg: float
    """Drier and accessories."""
    accessories_uncertainty_kg: float
    """One standard uncertainty of it."""
    covered_length_m: float
    """The length of line set that the factory charge covers."""
    by_makers_figure: bool
    """Whether the mass follows from the maker's figure per length."""

    @property
    def mass(self) -> Uncertain:
        """What to add, with its uncertainty, kilograms: satline.visit.expected_charge takes it."""
        return Uncertain(self.mass_kg, self.standard_uncertainty_kg)

    def __str__(self) -> str:
        word = {"add": "ADD", "recover": "RECOVER", "nothing": "LEAVE; wanted"}[self.action]
        mass = _mass(abs(self.mass_kg) if self.action == "recover" else self.mass_kg, self.standard_uncertainty_kg)
        lines = [
            f"{self.refrigerant.designation} line set: {word} {mass}",
            self.instruction,
            f"small line: {self.liquid}",
            f"large line: {self.vapor}",
            f"covered by the factory charge: {self.covered_length_m:.1f} m ({self.covered_length_m / 0.3048:.0f} ft)",
        ]
        if self.accessories_kg > 0.0:
            lines.append(f"drier and accessories: {_mass(self.accessories_kg, self.accessories_uncertainty_kg)}")
        if self.by_makers_figure:
            lines.append(
                f"by the maker's figure; computed, both lines: {_mass(self.computed_kg, self.computed_uncertainty_kg)}"
            )
        lines.append(self.advice)
        lines.extend(self.cautions)
        lines.append("Every ± is one standard uncertainty.")
        return "\n".join(lines)


def _mass(kilograms: float, uncertainty: float | None = None) -> str:
    ounces = kilograms / _OUNCE
    if uncertainty is None:
        return f"{kilograms:.3f} kg ({ounces:.1f} oz)"
    return f"{kilograms:.3f} ± {uncertainty:.3f} kg ({ounces:.1f} ± {uncertainty / _OUNCE:.1f} oz)"


def _known(refrigerant: Refrigerant | str) -> Refrigerant:
    return refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)


def _tube(tube: Tube | str) -> Tube:
    return tube if isinstance(tube, Tube) else Tube(tube)


@overload
def charge_per_length_kg_m(
    refrigerant: Refrigerant | str,
    tube: Tube | str,
    temperature_k: Number,
    phase: Literal["liquid", "vapor"] = "liquid",
    pressure_pa: Number | None = None,
) -> float: ...
@overload
def charge_per_length_kg_m(
    refrigerant: Refrigerant | str,
    tube: Tube | str,
    temperature_k: Array,
    phase: Literal["liquid", "vapor"] = "liquid",
    pressure_pa: Number | Array | None = None,
) -> Floats: ...
@overload
def charge_per_length_kg_m(
    refrigerant: Refrigerant | str,
    tube: Tube | str,
    temperature_k: Number,
    phase: Literal["liquid", "vapor"] = "liquid",
    *,
    pressure_pa: Array,
) -> Floats: ...
def charge_per_length_kg_m(
    refrigerant: Refrigerant | str,
    tube: Tube | str,
    temperature_k: Number | Array,
    phase: Literal["liquid", "vapor"] = "liquid",
    pressure_pa: Number | Array | None = None,
) -> float | Floats:
    """Mass of refrigerant per metre of a line: the bore's area times the density, from the equation of state.

    Saturated unless a pressure is given. A liquid line above its bubble temperature at that pressure, or a vapour line
    below its dew temperature, raises OutOfRangeError with that temperature as its limit.

    >>> import satline
    >>> round(satline.lineset.charge_per_length_kg_m("R-454B", "3/8", 308.15, pressure_pa=2_514_490.0), 4)
    0.0464
    """
    result: float | Floats = _native.charge_per_length(_known(refrigerant), _tube(tube), temperature_k, phase, pressure_pa)
    return result


def line_set_charge(
    refrigerant: Refrigerant | str,
    liquid_tube: Tube | str,
    vapor_tube: Tube | str,
    length_m: float,
    *,
    covered_length_m: float,
    liquid_temperature_k: float,
    vapor_temperature_k: float,
    liquid_pressure_pa: float | None = None,
    vapor_pressure_pa: float | None = None,
    vapor_length_m: float | None = None,
    metering_place: Literal["indoor", "outdoor"] = "indoor",
    downstream_temperature_k: float | None = None,
    downstream_pressure_pa: float | None = None,
    covered_liquid_tube: Tube | str | None = None,
    covered_vapor_tube: Tube | str | None = None,
    accessories_kg: Sequence[float | tuple[float, float]] = (),
    makers_charge_per_length_kg_m: float | tuple[float, float] | None = None,
    length_uncertainty_m: float | None = None,
    covered_length_uncertainty_m: float = 0.0,
    temperature_uncertainty_k: float | None = None,
    pressure_uncertainty_pa: float | None = None,
    downstream_uncertainty: float | None = None,
    compact: bool = False,
) -> LineSetCharge:
    """The charge for a line set: what both lines hold beyond the length that the factory charge covers, and accessories.

    The large line is as long as the small one unless vapor_length_m says otherwise. Lines are saturated unless a
    pressure is given. covered_length_m is on the unit's label, often 4.6 m (15 ft), 0 where it covers none; the tubes
    that the maker counts on are the line set's own unless given. With the metering device outdoors the small line is
    two-phase behind it: give its temperature or pressure there; the liquid's state is then that before the device. Drier
    and accessories are given by mass, each alone or with its standard uncertainty. The maker's own figure per length, if
    given, rules, and the computed one stands beside it. Uncertainties are standard ones; without them those of a tape
    within a foot, a thermometer within 1.4 degF and a gauge within 7 psi. compact=True takes the compact curves that
    firmware has instead of the equation of state.

    A negative mass is to be recovered, never vented. Work on refrigerant is for licensed people under the local codes.

    >>> import satline
    >>> charge = satline.lineset.line_set_charge(
    ...     "R-454B", "3/8", "3/4", 18.288, covered_length_m=4.572, liquid_temperature_k=308.15,
    ...     liquid_pressure_pa=2_514_490.0, vapor_temperature_k=285.93, vapor_pressure_pa=917_222.0)
    >>> charge.action, round(charge.mass_kg, 2)
    ('add', 0.73)
    """
    known = _known(refrigerant)
    small, large = _tube(liquid_tube), _tube(vapor_tube)
    vapor_length = length_m if vapor_length_m is None else vapor_length_m
    parts = _native.line_set_charge_parts(
        known,
        (
            small,
            large,
            None if covered_liquid_tube is None else _tube(covered_liquid_tube),
            None if covered_vapor_tube is None else _tube(covered_vapor_tube),
        ),
        (length_m, vapor_length, length_uncertainty_m, covered_length_m, covered_length_uncertainty_m),
        (
            (liquid_temperature_k, liquid_pressure_pa),
            (vapor_temperature_k, vapor_pressure_pa),
            (temperature_uncertainty_k, pressure_uncertainty_pa),
        ),
        (metering_place, downstream_temperature_k, downstream_pressure_pa, downstream_uncertainty),
        (
            [one(mass) for mass in accessories_kg],
            maybe(makers_charge_per_length_kg_m),
            compact,
        ),
    )
    return LineSetCharge(
        refrigerant=known,
        mass_kg=parts["mass"][0],
        standard_uncertainty_kg=parts["mass"][1],
        action=parts["action"],
        instruction=parts["instruction"],
        advice=parts["advice"],
        cautions=tuple(parts["cautions"]),
        liquid=_line(small, length_m, parts["liquid"]),
        vapor=_line(large, vapor_length, parts["vapor"]),
        charge_per_length_kg_m=parts["charge_per_length"][0],
        charge_per_length_uncertainty_kg_m=parts["charge_per_length"][1],
        computed_kg=parts["computed"][0],
        computed_uncertainty_kg=parts["computed"][1],
        accessories_kg=parts["accessories"][0],
        accessories_uncertainty_kg=parts["accessories"][1],
        covered_length_m=float(covered_length_m),
        by_makers_figure=makers_charge_per_length_kg_m is not None,
    )


def _line(tube: Tube, length_m: float, parts: dict[str, Any]) -> LineCharge:
    return LineCharge(
        tube=tube,
        length_m=float(length_m),
        density_kg_m3=parts["density"][0],
        density_uncertainty_kg_m3=parts["density"][1],
        quality=parts["quality"],
        charge_per_length_kg_m=parts["charge_per_length"][0],
        charge_per_length_uncertainty_kg_m=parts["charge_per_length"][1],
        holds_kg=parts["holds"][0],
        holds_uncertainty_kg=parts["holds"][1],
        beyond_kg=parts["beyond"][0],
        beyond_uncertainty_kg=parts["beyond"][1],
    )
