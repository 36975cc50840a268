"""Pressure drop, lift, oil return and heat gain of lines. Users find it in satline.lineset."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any, Final, Literal, Protocol, TypeAlias, overload

import numpy as np

from . import _native
from ._native import Refrigerant
from ._typing import Array, Floats, Number
from .air import Measured, Uncertain, pair

__all__ = [
    "FITTINGS",
    "LiquidLine",
    "SuctionHeatGain",
    "VaporLine",
    "discharge_line",
    "friction_factor",
    "lift_pressure_pa",
    "liquid_line",
    "mass_flow_kg_s",
    "suction_heat_gain",
    "suction_line",
]

_ADVICE, _CAUTIONS, _FITTINGS = _native.line_words()

FITTINGS: Final[dict[str, str]] = {name: sentence for _, name, sentence in _FITTINGS}
"""The fittings that a line may have, and what each is."""

PSI: Final = 6894.757293168361
"""Pascals in a psi, for what str() says."""


class Bore(Protocol):
    """A tube: anything that has an inside diameter in metres, and an outside diameter or None."""

    @property
    def inside_diameter_m(self) -> float: ...
    @property
    def outside_diameter_m(self) -> float | None: ...


AnyTube: TypeAlias = Bore | str
"""A tube, or the name of its size: '3/8', '10x1'."""


@dataclass(frozen=True, kw_only=True, eq=False)
class LiquidLine:
    """What a liquid line does. str() says it in plain words. In arrays, advice and cautions are arrays of tuples."""

    friction_pa: Uncertain
    """Loss by friction, fittings included."""
    lift_pa: Uncertain
    """Loss by height; negative where the liquid flows down."""
    drop_pa: Uncertain
    """The whole loss, drier included: at least this where flash gas begins on the way."""
    outlet_pressure_pa: Uncertain
    """At the metering device, absolute."""
    outlet_temperature_k: Uncertain
    """At the metering device, as liquid."""
    subcooling_k: Uncertain
    """At the liquid port."""
    subcooling_left_k: Uncertain
    """At the metering device. Negative: so much is missing for liquid to arrive."""
    subcooling_needed_k: Uncertain
    """What the line takes: at least so much is needed at the port."""
    velocity_m_s: Uncertain
    """At the port."""
    friction_k: Any
    """Friction as a loss of bubble temperature."""
    lift_k: Any
    """Lift as a loss of bubble temperature."""
    reynolds: Any
    """Reynolds number at the port."""
    flash_begins_m: Any
    """Where flash gas begins, metres along the tube; None (masked) where liquid arrives."""
    flash_vapor_share: Any
    """The vapour's share of the mass at the metering device, at least; None (masked) where liquid arrives."""
    advice: Any
    """Names of what to do, or to look at."""
    cautions: Any
    """Sentences on what can hurt or mislead."""

    @property
    def at_least(self) -> Any:
        """Whether the loss is more than computed, since flash gas begins on the way."""
        if np.ndim(self.friction_k) == 0:
            return self.flash_begins_m is not None
        return ~np.ma.getmaskarray(self.flash_begins_m)

    def __str__(self) -> str:
        if np.ndim(self.friction_k) > 0:
            return f"{np.size(self.friction_k)} liquid lines"
        at_least = "at least " if self.at_least else ""
        lines = [
            f"liquid line loses {at_least}{_pressure(self.drop_pa)}: friction {_pressure(self.friction_pa)}, "
            f"lift {_pressure(self.lift_pa)}",
            f"subcooling {_kelvin(self.subcooling_k)} at the port, {_kelvin(self.subcooling_left_k)} left at the metering "
            f"device; the line takes {at_least}{_kelvin(self.subcooling_needed_k)}",
            f"velocity {self.velocity_m_s.value:.2f} m/s ({self.velocity_m_s.value / 0.3048 * 60:.0f} ft/min)",
        ]
        if self.flash_begins_m is not None:
            lines.append(f"flash gas begins {self.flash_begins_m:.1f} m ({self.flash_begins_m / 0.3048:.0f} ft) along the line")
        return "\n".join(lines + _sentences(self.advice) + list(self.cautions))


@dataclass(frozen=True, kw_only=True, eq=False)
class VaporLine:
    """What a suction or discharge line does. str() says it in plain words. In arrays, advice and cautions are arrays of
    tuples, and cells are masked where the vapour would condense on the way.
    """

    friction_pa: Uncertain
    """Loss by friction, fittings included."""
    lift_pa: Uncertain
    """Loss by height; negative where the vapour flows down."""
    acceleration_pa: Uncertain
    """Loss by acceleration."""
    drop_pa: Uncertain
    """The whole loss."""
    dew_loss_k: Uncertain | None
    """The loss as one of dew temperature; None above the critical pressure."""
    inlet_pressure_pa: Uncertain
    """Absolute."""
    outlet_pressure_pa: Uncertain
    """Absolute."""
    inlet_temperature_k: Uncertain
    """Of a suction line the coil's outlet."""
    outlet_temperature_k: Uncertain
    """Of a suction line the compressor's inlet."""
    inlet_superheat_k: Uncertain | None
    """Of a suction line the coil's."""
    outlet_superheat_k: Uncertain | None
    """Of a suction line the compressor's."""
    superheat_rise_k: Uncertain | None
    """Outlet less inlet superheat."""
    inlet_velocity_m_s: Uncertain
    """At the inlet."""
    outlet_velocity_m_s: Uncertain
    """At the outlet."""
    heat_w: Uncertain
    """Heat taken up; negative where given off."""
    temperature_rise_k: Uncertain
    """Outlet less inlet temperature."""
    coldest_surface_k: Uncertain | None
    """Of the outer surface; None without air around."""
    flow_over_least: Uncertain | None
    """Mass flow over the least that carries oil up the riser: below 1 oil stays behind. None where none flows up."""
    capacity_loss: Uncertain | None
    """The share of the capacity that the pressure drop costs; None for a discharge line."""
    least_mass_flow_kg_s: Any
    """The least mass flow that carries oil up the riser."""
    least_velocity_m_s: Any
    """The least velocity that carries oil up the riser."""
    reynolds: Any
    """Reynolds number at the inlet."""
    sweats: Any
    """Whether the surface is colder than the air's dew point; None (masked) where that was not given."""
    advice: Any
    """Names of what to do, or to look at."""
    cautions: Any
    """Sentences on what can hurt or mislead."""

    def __str__(self) -> str:
        if np.ndim(self.reynolds) > 0:
            return f"{np.size(self.reynolds)} vapour lines"
        loss = "" if self.dew_loss_k is None else f", {_kelvin(self.dew_loss_k)} of dew temperature"
        lines = [
            f"vapour line loses {_pressure(self.drop_pa)}{loss}: friction {_pressure(self.friction_pa)}",
            f"velocity {self.inlet_velocity_m_s.value:.1f} to {self.outlet_velocity_m_s.value:.1f} m/s "
            f"({self.outlet_velocity_m_s.value / 0.3048 * 60:.0f} ft/min)",
        ]
        if self.capacity_loss is not None:
            lost = self.capacity_loss
            lines.append(f"costs {100 * lost.value:.1f} ± {100 * lost.standard_uncertainty:.1f} % of the capacity")
        if self.flow_over_least is not None:
            over = self.flow_over_least
            lines.append(
                f"riser: {over.value:.1f} ± {over.standard_uncertainty:.1f} times the least flow that carries oil "
                f"({self.least_velocity_m_s:.1f} m/s)"
            )
        if self.inlet_superheat_k is not None and self.outlet_superheat_k is not None:
            lines.append(
                f"superheat {_kelvin(self.inlet_superheat_k)} at its beginning, {_kelvin(self.outlet_superheat_k)} at its "
                f"end; heat {self.heat_w.value:.0f} ± {self.heat_w.standard_uncertainty:.0f} W"
            )
        return "\n".join(lines + _sentences(self.advice) + list(self.cautions))


@dataclass(frozen=True, kw_only=True, eq=False)
class SuctionHeatGain:
    """How the superheat at the compressor differs from that at the coil. str() says it in plain words."""

    coil_superheat_k: Uncertain
    """At the coil's outlet."""
    compressor_superheat_k: Uncertain
    """At the compressor, or the outdoor unit's vapour port."""
    superheat_rise_k: Uncertain
    """The difference: warming, and the loss of dew temperature."""
    temperature_rise_k: Uncertain
    """Warming alone."""
    heat_w: Uncertain
    """Heat gained."""
    coldest_surface_k: Uncertain
    """Temperature of the outer surface where it is coldest."""
    sweats: Any
    """Whether that lies below the air's dew point; None (masked) where that was not given."""
    line: VaporLine
    """All of the line."""

    def __str__(self) -> str:
        if np.ndim(self.line.reynolds) > 0:
            return f"{np.size(self.line.reynolds)} suction lines"
        lines = [
            f"superheat {_kelvin(self.coil_superheat_k)} at the coil, {_kelvin(self.compressor_superheat_k)} at the compressor",
            f"the line adds {_kelvin(self.superheat_rise_k)}: {self.heat_w.value:.0f} ± "
            f"{self.heat_w.standard_uncertainty:.0f} W of heat warm the vapour by {_kelvin(self.temperature_rise_k)}",
            f"its surface is at {self.coldest_surface_k.value - 273.15:.1f} degC where it is coldest",
        ]
        return "\n".join(lines + _sentences(self.line.advice) + list(self.line.cautions))


@overload
def friction_factor(reynolds: Number, relative_roughness: Number = 0.0) -> float: ...
@overload
def friction_factor(reynolds: Array, relative_roughness: Number | Array = 0.0) -> Floats: ...
@overload
def friction_factor(reynolds: Number, relative_roughness: Array) -> Floats: ...
def friction_factor(reynolds: Number | Array, relative_roughness: Number | Array = 0.0) -> float | Floats:
    """Darcy friction factor, from laminar flow (64/Re) to rough turbulent flow without a jump.

    Churchill's equation of 1977: within 3.2 % of Colebrook's from a Reynolds number of 4000 up. relative_roughness is the
    roughness over the inside diameter; that of drawn copper is 1.5e-6 m.

    >>> import satline
    >>> round(satline.lineset.friction_factor(1e5), 4)
    0.0179
    """
    factor: float | Floats = _native.line_friction_factor(reynolds, relative_roughness)
    return factor


@overload
def lift_pressure_pa(
    refrigerant: Refrigerant | str, height_m: Number, temperature_k: Number, pressure_pa: Number | None = None
) -> float: ...
@overload
def lift_pressure_pa(
    refrigerant: Refrigerant | str,
    height_m: Number | Array,
    temperature_k: Number | Array,
    pressure_pa: Number | Array | None = None,
) -> float | Floats: ...
def lift_pressure_pa(
    refrigerant: Refrigerant | str,
    height_m: Number | Array,
    temperature_k: Number | Array,
    pressure_pa: Number | Array | None = None,
) -> float | Floats:
    """Pressure that refrigerant loses over a height: density times g times height; negative where it flows down.

    Saturated liquid at temperature_k, or with an absolute pressure_pa what there is then: subcooled liquid or vapour.

    >>> import satline
    >>> round(satline.lineset.lift_pressure_pa("R-454B", 6.096, 308.15, 2_514_490.0) / 6894.757, 1)
    8.2
    """
    loss: float | Floats = _native.line_lift(_known(refrigerant), height_m, temperature_k, pressure_pa)["loss_pa"]
    return loss


def mass_flow_kg_s(
    refrigerant: Refrigerant | str,
    capacity_w: Measured,
    *,
    liquid_temperature_k: Measured,
    liquid_pressure_pa: Measured,
    suction_temperature_k: Measured,
    suction_pressure_pa: Measured,
) -> Uncertain:
    """Mass flow behind a cooling capacity: over the enthalpy taken up between the liquid line and the coil's outlet.

    The capacity is that of the coil's refrigerant side: a nominal one, or one measured in the air less the fan's heat.

    >>> import satline
    >>> flow = satline.lineset.mass_flow_kg_s(
    ...     "R-454B", 10_550.0, liquid_temperature_k=308.15, liquid_pressure_pa=2_514_490.0,
    ...     suction_temperature_k=285.93, suction_pressure_pa=917_222.0,
    ... )
    >>> round(flow.value, 4)
    0.0503
    """
    states = (liquid_temperature_k, liquid_pressure_pa, suction_temperature_k, suction_pressure_pa)
    flow = _native.line_mass_flow(_known(refrigerant), _pairs(capacity_w, *states))["mass_flow_kg_s"]
    return Uncertain(*flow)


def liquid_line(
    refrigerant: Refrigerant | str,
    tube: AnyTube,
    length_m: Measured,
    *,
    mass_flow_kg_s: Measured,
    pressure_pa: Measured,
    temperature_k: Measured,
    rise_m: Measured = 0.0,
    fittings: Mapping[str, int] | None = None,
    equivalent_length_m: Number | Array = 0.0,
    drier_drop_pa: Measured = 0.0,
    heat_gain_w: Measured = 0.0,
) -> LiquidLine:
    """Follows the liquid from the outdoor unit's liquid port to the metering device.

    Pressure (absolute) and temperature are those at the port; rise_m is the lift where the evaporator is above, negative
    where below, and cannot exceed the length. fittings counts them by name (see FITTINGS); equivalent_length_m is the
    straight length that others stand for. Give Uncertain(value, standard_uncertainty) for what is not exact. The bore's
    tolerance, 5 % of the friction factor and the viscosity's stated error are added.

    Where flash gas begins on the way, the loss is at least drop_pa. A state that is no liquid, no flow, a lift greater than
    the length and a drop of more than half of the pressure raise OutOfRangeError.

    >>> import satline
    >>> line = satline.lineset.liquid_line(
    ...     "R-454B", "3/8", 18.288, mass_flow_kg_s=0.0503, pressure_pa=2_514_490.0, temperature_k=308.15, rise_m=6.096)
    >>> round(line.lift_pa.value / 6894.757, 1), line.flash_begins_m, line.advice
    (8.2, None, ('nothing',))
    """
    arguments = _pairs(
        length_m, rise_m, mass_flow_kg_s, pressure_pa, temperature_k, drier_drop_pa, heat_gain_w, equivalent_length_m
    )
    return LiquidLine(**_parts(_native.liquid_line_parts(_known(refrigerant), _way(tube, fittings), arguments)))


def suction_line(
    refrigerant: Refrigerant | str,
    tube: AnyTube,
    length_m: Measured,
    *,
    mass_flow_kg_s: Measured,
    pressure_pa: Measured,
    temperature_k: Measured,
    known_at: Literal["coil", "compressor"] = "coil",
    rise_m: Measured = 0.0,
    fittings: Mapping[str, int] | None = None,
    equivalent_length_m: Number | Array = 0.0,
    heat_gain_w: Measured = 0.0,
    ambient_k: Measured | None = None,
    dew_point_k: Number | Array | None = None,
    insulation_thickness_m: Number | Array = 0.0,
    insulation_conductivity_w_m_k: Measured = Uncertain(0.038, 0.003),
    outside_coefficient_w_m2_k: Measured = Uncertain(9.0, 1.0),
    oil_density_kg_m3: Measured = Uncertain(950.0, 29.0),
    discharge_pressure_pa: Number | Array | None = None,
    clearance: float = 0.04,
) -> VaporLine:
    """Follows the vapour from the coil to the compressor: loss, oil return in a riser, capacity lost, heat gained.

    Pressure (absolute) and temperature are those at known_at; rise_m is positive where the vapour flows upwards. With
    ambient_k the air warms the line, through insulation_thickness_m (0 is bare), else heat_gain_w. dew_point_k is that air's,
    for whether the line sweats. With discharge_pressure_pa the compressor's clearance counts in capacity_loss. Ask at the
    lowest flow of the unit whether oil returns.

    A state that is no vapour, no flow, a rise greater than the length and a drop of more than half of the pressure raise
    OutOfRangeError; vapour that would condense on the way raises NotAvailableError.

    >>> import satline
    >>> line = satline.lineset.suction_line(
    ...     "R-454B", "3/4", 18.288, mass_flow_kg_s=0.0503, pressure_pa=917_222.0, temperature_k=285.93)
    >>> round(line.dew_loss_k.value, 1), round(100 * line.capacity_loss.value)
    (0.5, 2)
    """
    return _vapor(
        "suction",
        known_at == "coil" if known_at in ("coil", "compressor") else None,
        refrigerant,
        tube,
        fittings,
        (length_m, rise_m, mass_flow_kg_s, pressure_pa, temperature_k, heat_gain_w),
        (ambient_k, outside_coefficient_w_m2_k, insulation_conductivity_w_m_k, oil_density_kg_m3, equivalent_length_m),
        insulation_thickness_m,
        dew_point_k,
        discharge_pressure_pa,
        clearance,
    )


def discharge_line(
    refrigerant: Refrigerant | str,
    tube: AnyTube,
    length_m: Measured,
    *,
    mass_flow_kg_s: Measured,
    pressure_pa: Measured,
    temperature_k: Measured,
    known_at: Literal["compressor", "coil"] = "compressor",
    rise_m: Measured = 0.0,
    fittings: Mapping[str, int] | None = None,
    equivalent_length_m: Number | Array = 0.0,
    heat_gain_w: Measured = 0.0,
    ambient_k: Measured | None = None,
    insulation_thickness_m: Number | Array = 0.0,
    insulation_conductivity_w_m_k: Measured = Uncertain(0.038, 0.003),
    outside_coefficient_w_m2_k: Measured = Uncertain(9.0, 1.0),
    oil_density_kg_m3: Measured = Uncertain(950.0, 29.0),
) -> VaporLine:
    """Follows hot gas from the compressor to the condensing coil: also a heat pump's vapour line in winter.

    As suction_line, with the velocities usual for hot gas (10 to 18 m/s), and allowed above the critical pressure.

    >>> import satline
    >>> line = satline.lineset.discharge_line(
    ...     "R-410A", "5/8", 12.0, mass_flow_kg_s=0.05, pressure_pa=2.6e6, temperature_k=345.0, rise_m=5.0)
    >>> line.capacity_loss is None, line.flow_over_least.value > 1
    (True, True)
    """
    return _vapor(
        "discharge",
        known_at == "compressor" if known_at in ("coil", "compressor") else None,
        refrigerant,
        tube,
        fittings,
        (length_m, rise_m, mass_flow_kg_s, pressure_pa, temperature_k, heat_gain_w),
        (ambient_k, outside_coefficient_w_m2_k, insulation_conductivity_w_m_k, oil_density_kg_m3, equivalent_length_m),
        insulation_thickness_m,
        None,
        None,
        0.0,
    )


def suction_heat_gain(
    refrigerant: Refrigerant | str,
    tube: AnyTube,
    length_m: Measured,
    *,
    mass_flow_kg_s: Measured,
    pressure_pa: Number | Array,
    superheat_k: Measured,
    ambient_k: Measured,
    known_at: Literal["coil", "compressor"] = "compressor",
    rise_m: Measured = 0.0,
    fittings: Mapping[str, int] | None = None,
    equivalent_length_m: Number | Array = 0.0,
    dew_point_k: Number | Array | None = None,
    insulation_thickness_m: Number | Array = 0.0,
    insulation_conductivity_w_m_k: Measured = Uncertain(0.038, 0.003),
    outside_coefficient_w_m2_k: Measured = Uncertain(9.0, 1.0),
) -> SuctionHeatGain:
    """The coil's superheat from that read at the compressor, or the reverse with known_at="coil".

    pressure_pa (absolute) and superheat_k are those at known_at; the superheat's uncertainty is meant to hold the gauge's
    and the thermometer's. Air of ambient_k warms the line through insulation_thickness_m (0 is bare) of
    insulation_conductivity_w_m_k, and a film of convection and radiation outside: 9 W/(m2 K) in still air, 20 to 40 in wind.
    A superheat at the compressor smaller than what the line adds raises NotAvailableError: the coil then returns liquid, or
    the flow or the insulation are not as given.

    >>> import satline
    >>> gain = satline.lineset.suction_heat_gain(
    ...     "R-410A", "3/4", 15.0, mass_flow_kg_s=0.05, pressure_pa=950e3, superheat_k=8.0, ambient_k=308.0,
    ...     insulation_thickness_m=0.013)
    >>> round(gain.coil_superheat_k.value, 1), round(gain.heat_w.value)
    (6.6, 74)
    """
    known = _known(refrigerant)
    superheat, uncertainty = pair(superheat_k)
    temperature = Uncertain(known.dew_temperature_k(pressure_pa) + np.asarray(superheat)[()], uncertainty)
    line = suction_line(
        known,
        tube,
        length_m,
        mass_flow_kg_s=mass_flow_kg_s,
        pressure_pa=pressure_pa,
        temperature_k=temperature,
        known_at=known_at,
        rise_m=rise_m,
        fittings=fittings,
        equivalent_length_m=equivalent_length_m,
        ambient_k=ambient_k,
        dew_point_k=dew_point_k,
        insulation_thickness_m=insulation_thickness_m,
        insulation_conductivity_w_m_k=insulation_conductivity_w_m_k,
        outside_coefficient_w_m2_k=outside_coefficient_w_m2_k,
    )
    missing = (line.inlet_superheat_k, line.outlet_superheat_k, line.superheat_rise_k, line.coldest_surface_k)
    assert all(value is not None for value in missing), "a suction line lies below the critical pressure"
    return SuctionHeatGain(
        coil_superheat_k=line.inlet_superheat_k,  # type: ignore[arg-type]
        compressor_superheat_k=line.outlet_superheat_k,  # type: ignore[arg-type]
        superheat_rise_k=line.superheat_rise_k,  # type: ignore[arg-type]
        temperature_rise_k=line.temperature_rise_k,
        heat_w=line.heat_w,
        coldest_surface_k=line.coldest_surface_k,  # type: ignore[arg-type]
        sweats=line.sweats,
        line=line,
    )


def _vapor(
    duty: str,
    at_inlet: bool | None,
    refrigerant: Refrigerant | str,
    tube: AnyTube,
    fittings: Mapping[str, int] | None,
    flow: tuple[Measured, ...],
    around: tuple[Measured | None, ...],
    thickness: Number | Array,
    dew_point: Number | Array | None,
    discharge: Number | Array | None,
    clearance: float,
) -> VaporLine:
    if at_inlet is None:
        raise ValueError("known_at is 'coil' or 'compressor'")
    from_air = around[0] is not None
    given = (from_air, from_air and dew_point is not None, discharge is not None)
    rest = [*around, thickness, dew_point, discharge]
    arguments = _pairs(*flow, *(0.0 if value is None else value for value in rest))
    way = _way(tube, fittings)
    parts = _native.vapor_line_parts(_known(refrigerant), way, (duty, at_inlet), given, clearance, arguments)
    parts = _parts(parts)
    sweats = parts["sweats"]
    if isinstance(sweats, float):
        parts["sweats"] = bool(sweats)
    elif sweats is not None:
        parts["sweats"] = sweats.astype(bool)
    return VaporLine(**parts)


def _known(refrigerant: Refrigerant | str) -> Refrigerant:
    return refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)


def _pairs(*measured: Measured) -> list[Any]:
    return [part for value in measured for part in pair(value)]


def _way(
    tube: AnyTube, fittings: Mapping[str, int] | None
) -> tuple[tuple[float, float | None, float | None], list[tuple[int, int]]]:
    numbers = {name: number for number, name, _ in _FITTINGS}
    unknown = [name for name in fittings or {} if name not in numbers]
    if unknown:
        raise ValueError(f"fittings: {unknown[0]!r} is not one of {', '.join(numbers)}")
    counts = [(numbers[name], count) for name, count in (fittings or {}).items()]
    if isinstance(tube, str):
        return _native.line_tube(tube), counts
    bore = getattr(tube, "inside_diameter_uncertainty_m", None)
    return (float(tube.inside_diameter_m), tube.outside_diameter_m, bore), counts


def _parts(columns: dict[str, Any]) -> dict[str, Any]:
    """Columns as the fields of a class: values beside their uncertainty, advice and cautions in words."""
    parts = {}
    for name, value in columns.items():
        if name.endswith(" ±"):
            continue
        if name + " ±" in columns:
            parts[name] = None if value is None else Uncertain(value, columns[name + " ±"])
        else:
            parts[name] = value
    parts["advice"] = _words(parts["advice"], {number: name for number, name, _ in _ADVICE})
    parts["cautions"] = _words(parts["cautions"], {number: sentence for number, _, sentence in _CAUTIONS})
    return parts


def _words(bits: Any, words: dict[int, str]) -> Any:
    def of(value: float) -> tuple[str, ...]:
        return tuple(word for number, word in words.items() if int(value) >> number & 1)

    if np.ndim(bits) == 0:
        return of(float(bits))
    found = np.empty(np.shape(bits), dtype=object)
    for place, value in enumerate(np.ma.filled(bits, 0.0).ravel()):
        found.flat[place] = of(value)
    return found


def _sentences(advice: tuple[str, ...]) -> list[str]:
    return [sentence for _, name, sentence in _ADVICE if name in advice]


def _pressure(value: Uncertain) -> str:
    kilopascals = f"{value.value / 1e3:.1f} ± {value.standard_uncertainty / 1e3:.1f} kPa"
    return f"{kilopascals} ({value.value / PSI:.1f} psi)"


def _kelvin(value: Uncertain) -> str:
    return f"{value.value:.1f} ± {value.standard_uncertainty:.1f} K ({value.value * 1.8:.1f} degF)"
