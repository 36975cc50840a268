"""Two refrigerants in the same unit."""

from __future__ import annotations

import dataclasses
from typing import Any, Literal

from . import _native
from ._native import Refrigerant

PASCALS_PER_PSI = 6894.757293168361


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class Cycle:
    """A refrigerant in the plain vapour-compression cycle at stated conditions. Pressures are absolute."""

    evaporating_pressure_pa: float
    """Dew pressure at the evaporating temperature."""
    condensing_pressure_pa: float
    """Condensing pressure by the convention in use."""
    pressure_ratio: float
    """Condensing over evaporating pressure."""
    evaporating_glide_k: float
    """Dew minus bubble temperature at the evaporating pressure."""
    condensing_glide_k: float
    """Dew minus bubble temperature at the condensing pressure."""
    suction_temperature_k: float
    """At the compressor's inlet."""
    suction_density_kg_m3: float
    """At the compressor's inlet."""
    discharge_temperature_k: float
    """After compression with the stated isentropic efficiency."""
    discharge_density_kg_m3: float
    """After compression."""
    liquid_temperature_k: float
    """Before the metering device."""
    liquid_density_kg_m3: float
    """Before the metering device."""
    bubble_density_kg_m3: float
    """Saturated liquid at the condensing pressure: what fills most of the charged volume."""
    refrigerating_effect_j_kg: float
    """What each kilogram cools."""
    volumetric_capacity_j_m3: float
    """What each cubic metre that the compressor takes in cools."""
    coefficient_of_performance: float
    """Refrigerating effect over the work of compression."""
    standstill_pressure_pa: float | None
    """Bubble pressure at the standstill temperature; None above the critical temperature."""
    low_side_standstill_pressure_pa: float | None
    """Bubble pressure at the low side's standstill temperature; None above the critical temperature."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class FlowRatios:
    """How flows change, new over old."""

    mass_flow_ratio: float
    """Mass flow."""
    orifice_area_ratio: float
    """Area of the orifice for the same flow coefficient: mass flow over the root of liquid density times pressure
    difference. Real orifices choke as the liquid flashes: a first size, not the last."""
    suction_velocity_ratio: float
    """Velocity in the suction line."""
    discharge_velocity_ratio: float
    """Velocity in the discharge line."""
    liquid_velocity_ratio: float
    """Velocity in the liquid line."""


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class RefrigerantComparison:
    """The answer to a comparison of two refrigerants; ratios are new over old. str() says it in plain words."""

    old: Refrigerant
    """The refrigerant that the unit was made for."""
    new: Refrigerant
    """The refrigerant thought of."""
    outcome: Literal["possible", "blocked", "cannot-tell"]
    """Whether anything forbids it."""
    reasons: tuple[str, ...]
    """Why: flammable-in-class-1-unit, more-flammable, class-unknown, more-toxic, condensing-above-design,
    standstill-above-design, low-side-above-design, no-liquid-at-standstill, design-pressure-needed, pressures-no-higher,
    within-design, may-draw-air."""
    explanations: tuple[str, ...]
    """The reasons in plain words."""
    cautions: tuple[str, ...]
    """What can hurt, or go wrong."""
    old_cycle: Cycle
    """The old refrigerant at the conditions."""
    new_cycle: Cycle
    """The new refrigerant at the conditions."""
    volumetric_capacity_ratio: float
    """Cooling of the same compressor, its volumetric efficiency taken as the same."""
    coefficient_of_performance_ratio: float
    """Coefficient of performance, the isentropic efficiency taken as the same."""
    discharge_temperature_rise_k: float
    """New less old discharge temperature."""
    charge_ratio: float
    """Charge of the same volumes, by the density of saturated liquid at the condensing pressure."""
    at_equal_displacement: FlowRatios
    """Flows with the compressor's displacement as it is."""
    at_equal_capacity: FlowRatios
    """Flows for the same cooling."""
    old_oil: str
    """Oil that the old refrigerant commonly has (common practice)."""
    new_oil: str
    """Oil that the new refrigerant commonly needs (common practice; the compressor's maker decides)."""
    new_oil_advice: str
    """The same in plain words."""

    @property
    def mass_flow_ratio(self) -> float:
        """Mass flow of the same compressor: at equal displacement."""
        return self.at_equal_displacement.mass_flow_ratio

    @property
    def orifice_area_ratio(self) -> float:
        """Area of the orifice for the same cooling: at equal capacity."""
        return self.at_equal_capacity.orifice_area_ratio

    def starting_charge_kg(
        self, old_charge_kg: float, old_charge_uncertainty_kg: float = 0.0, *, share: float | None = None
    ) -> tuple[float, float]:
        """The mass of the new refrigerant with which to start, and one standard uncertainty of it.

        Old charge times charge_ratio times share (0.9 if not given, common practice); the rest is added by superheat or
        subcooling.
        """
        return _native.starting_charge_kg(old_charge_kg, old_charge_uncertainty_kg, self.charge_ratio, share)

    def __str__(self) -> str:
        def pressures(of: Cycle) -> str:
            low, high = of.evaporating_pressure_pa, of.condensing_pressure_pa
            return (
                f"{low / 1e3:.0f} and {high / 1e3:.0f} kPa absolute "
                f"({low / PASCALS_PER_PSI:.0f} and {high / PASCALS_PER_PSI:.0f} psia), "
                f"discharge {of.discharge_temperature_k - 273.15:.0f} degC "
                f"({of.discharge_temperature_k * 1.8 - 459.67:.0f} degF)"
            )

        old, new = self.old.designation, self.new.designation
        lines = [f"{new} in place of {old}: {self.outcome}", *self.explanations]
        lines.append(f"{old}: {pressures(self.old_cycle)}")
        lines.append(f"{new}: {pressures(self.new_cycle)}, glide {self.new_cycle.condensing_glide_k:.1f} K condensing")
        lines.append(
            f"same compressor: capacity x {self.volumetric_capacity_ratio:.2f}, mass flow x {self.mass_flow_ratio:.2f}, "
            f"coefficient of performance x {self.coefficient_of_performance_ratio:.2f}, charge x {self.charge_ratio:.2f}"
        )
        lines.append(f"same capacity: orifice area x {self.orifice_area_ratio:.2f}")
        lines.append(f"oil: {self.new_oil_advice}")
        lines.extend(self.cautions)
        return "\n".join(lines)


def compare_refrigerants(
    old: Refrigerant | str,
    new: Refrigerant | str,
    evaporating_k: float,
    condensing_k: float,
    superheat_k: float,
    subcooling_k: float,
    *,
    condensing_at: Literal["bubble", "mean", "dew"] = "bubble",
    useful_superheat: float | None = None,
    isentropic_efficiency: float | None = None,
    standstill_k: float | None = None,
    low_side_standstill_k: float | None = None,
    high_side_design_pressure_pa: float | None = None,
    low_side_design_pressure_pa: float | None = None,
    highest_discharge_k: float | None = None,
) -> RefrigerantComparison:
    """Two refrigerants in the same unit at stated conditions: what changes, and whether anything forbids it.

    The evaporating temperature of a blend is its dew temperature; condensing_at says what its condensing temperature is.
    useful_superheat is the share of the superheat that counts as cooling (0 if not given: the line picks it up).
    isentropic_efficiency: 0.7 if not given (common practice). The design pressures are absolute, from the unit's plate;
    without that of the high side a refrigerant of higher pressure is "cannot-tell". They are held against the condensing
    pressure and the pressure at rest, at standstill_k (125 degF if not given) for the high side and low_side_standstill_k
    (80 degF) for the low side. highest_discharge_k (225 degF, common practice) only gives a caution.

    Blocked are a refrigerant that burns in a unit made for one that does not, one that burns more readily or is of higher
    toxicity, and pressures above design. Changing the refrigerant is for licensed people under the local code, which may
    forbid it.

    >>> import satline
    >>> found = satline.visit.compare_refrigerants("R-22", "R-407C", 280.37, 316.48, 10.0, 10.0)
    >>> found.outcome, found.reasons, round(found.volumetric_capacity_ratio, 2)
    ('cannot-tell', ('design-pressure-needed',), 0.92)
    >>> satline.visit.compare_refrigerants("R-22", "R-290", 280.37, 316.48, 10.0, 10.0).reasons
    ('flammable-in-class-1-unit', 'pressures-no-higher')
    """
    before, after = _known(old), _known(new)
    parts = _native.compare_refrigerants_parts(
        before,
        after,
        (evaporating_k, condensing_k, superheat_k, subcooling_k),
        condensing_at,
        (
            useful_superheat,
            isentropic_efficiency,
            standstill_k,
            low_side_standstill_k,
            high_side_design_pressure_pa,
            low_side_design_pressure_pa,
            highest_discharge_k,
        ),
    )
    reasons: list[tuple[str, str]] = parts.pop("reasons")
    made: dict[str, Any] = {
        "reasons": tuple(name for name, _ in reasons),
        "explanations": tuple(sentence for _, sentence in reasons),
        "cautions": tuple(parts.pop("cautions")),
        "old_cycle": Cycle(**parts.pop("old_cycle")),
        "new_cycle": Cycle(**parts.pop("new_cycle")),
        "at_equal_displacement": FlowRatios(**parts.pop("at_equal_displacement")),
        "at_equal_capacity": FlowRatios(**parts.pop("at_equal_capacity")),
    }
    return RefrigerantComparison(old=before, new=after, **made, **parts)


def _known(refrigerant: Refrigerant | str) -> Refrigerant:
    return refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)
