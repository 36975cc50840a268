"""States of the rig's unit: one, or as many as arrays were given."""

from __future__ import annotations

import dataclasses
from typing import Any, Literal, NamedTuple

import numpy as np
import numpy.typing as npt

from . import _native
from ._reading import Reading
from ._typing import MaskedFloats


class CyclePoint(NamedTuple):
    """A corner of the cycle."""

    place: str
    """Where, such as 'compressor-inlet'."""
    pressure_pa: float
    """The refrigerant's own pressure, absolute, without that of non-condensables."""
    enthalpy_j_kg: float
    """Enthalpy by the reference state IIR, as of Refrigerant.state."""


class Nameplate(NamedTuple):
    """What a reading takes from the unit's label."""

    refrigerant: str
    metering: Literal["fixed-orifice", "thermostatic-valve"]
    nominal_capacity_w: float
    target_subcooling_k: float | None


@dataclasses.dataclass(frozen=True, kw_only=True)
class Steady:
    """A unit that has settled, in true values: what instruments make of them, reading() says.

    Names that a Reading has too mean the same place. Superheat and subcooling count from the refrigerant's own pressure;
    where there are non-condensables a gauge in the liquid line shows their pressure too, and so more subcooling.
    """

    outdoor_dry_bulb_k: float
    """Dry bulb of the air entering the outdoor coil."""
    condenser_leaving_dry_bulb_k: float
    """Dry bulb of the air leaving the outdoor coil."""
    return_dry_bulb_k: float
    """Dry bulb of the return air."""
    return_wet_bulb_k: float
    """Wet bulb of the return air."""
    supply_dry_bulb_k: float
    """Dry bulb of the supply air, behind the fan."""
    supply_wet_bulb_k: float
    """Wet bulb of the supply air."""
    ambient_pressure_pa: float
    """Ambient (station) pressure."""
    suction_pressure_pa: float
    """Absolute pressure at the vapour port of the outdoor unit."""
    suction_line_temperature_k: float
    """Temperature of the refrigerant there."""
    liquid_pressure_pa: float
    """Absolute pressure at the liquid port of the outdoor unit."""
    liquid_line_temperature_k: float
    """Temperature of the refrigerant there."""
    discharge_pressure_pa: float
    """Absolute pressure at the compressor's discharge."""
    discharge_line_temperature_k: float
    """Temperature of the discharge gas."""
    coil_outlet_temperature_k: float
    """Temperature of the refrigerant that leaves the indoor coil."""
    condensing_surface_temperature_k: float
    """Temperature of the refrigerant in the middle of the condensing zone."""
    airflow_m3_s: float
    """Airflow over the indoor coil."""
    compressor_power_w: float
    """Electric power of the compressor."""
    fan_power_w: float
    """Electric power of both fans."""
    capacity_w: float
    """What the indoor coil takes from the air; the fan's heat is not taken off."""
    sensible_capacity_w: float
    """The part of it that cools the air."""
    mass_flow_kg_s: float
    """Refrigerant flow."""
    charge_kg: float
    """Refrigerant inside."""
    low_side_charge_kg: float
    """The part of it between the metering device and the compressor's cylinders."""
    superheat_k: float
    """Temperature above dew at the vapour port of the outdoor unit."""
    subcooling_k: float
    """Temperature below bubble at the liquid port; 0 or less where vapour comes with the liquid."""
    coil_superheat_k: float
    """Superheat at the outlet of the indoor coil."""
    non_condensable_pressure_pa: float
    """What non-condensables add to the pressures of the high side."""
    valve_lift: float | None
    """Lift of a thermostatic valve's needle, 0 to 1; None with a fixed orifice."""
    balance_miss: float
    """Largest relative miss of the balances of mass flow, enthalpy and charge."""
    cycle: tuple[CyclePoint, ...]
    """The corners of the cycle in the order of the flow, the first once more at the end."""
    _state: _native.RigState = dataclasses.field(repr=False, compare=False)
    _nameplate: Nameplate = dataclasses.field(repr=False, compare=False)

    def reading(self, sensors: Literal["usual", "exact"] = "usual", seed: int = 0) -> Reading:
        """What instruments show of this state, ready for satline.diagnose.

        "usual" instruments err within the limits that the 2013 edition of California Title 24 (RA3.2) sets for
        thermometers and gauges, the rest by common practice; "exact" ones do not err. The seed, a whole number from 0,
        decides what is wrong with them on this visit: the same seed, the same reading. Refrigerant, metering device,
        nominal capacity and, of a unit with a valve, target subcooling are those of the label. What a display cannot
        show is left out.
        """
        return make_reading(self._nameplate, *self._state.reading(sensors, seed))


@dataclasses.dataclass(frozen=True, kw_only=True, eq=False)
class SteadyStates:
    """Units that have settled: the fields of Steady as masked arrays of one shape.

    Where a unit would not run, all its cells are masked and reason says why. valve_lift is masked with a fixed orifice.
    """

    outdoor_dry_bulb_k: MaskedFloats
    condenser_leaving_dry_bulb_k: MaskedFloats
    return_dry_bulb_k: MaskedFloats
    return_wet_bulb_k: MaskedFloats
    supply_dry_bulb_k: MaskedFloats
    supply_wet_bulb_k: MaskedFloats
    ambient_pressure_pa: MaskedFloats
    suction_pressure_pa: MaskedFloats
    suction_line_temperature_k: MaskedFloats
    liquid_pressure_pa: MaskedFloats
    liquid_line_temperature_k: MaskedFloats
    discharge_pressure_pa: MaskedFloats
    discharge_line_temperature_k: MaskedFloats
    coil_outlet_temperature_k: MaskedFloats
    condensing_surface_temperature_k: MaskedFloats
    airflow_m3_s: MaskedFloats
    compressor_power_w: MaskedFloats
    fan_power_w: MaskedFloats
    capacity_w: MaskedFloats
    sensible_capacity_w: MaskedFloats
    mass_flow_kg_s: MaskedFloats
    charge_kg: MaskedFloats
    low_side_charge_kg: MaskedFloats
    superheat_k: MaskedFloats
    subcooling_k: MaskedFloats
    coil_superheat_k: MaskedFloats
    non_condensable_pressure_pa: MaskedFloats
    valve_lift: MaskedFloats
    balance_miss: MaskedFloats
    reason: npt.NDArray[np.str_]
    """Why a unit would not run; empty where it does."""

    @property
    def shape(self) -> tuple[int, ...]:
        """The shape of the arrays."""
        return self.reason.shape

    def __len__(self) -> int:
        return len(self.reason)


@dataclasses.dataclass(frozen=True, kw_only=True)
class Moment:
    """A unit at one moment of its course."""

    time_s: float
    """Time since the course began."""
    runs: bool
    """Whether the compressor runs."""
    trip: Literal["low-pressure", "high-pressure"] | None
    """The switch that stopped it, until the call ends."""
    gathered_kg: float
    """Liquid that gathered in the low side while it stood and is not carried off yet; part of the charge."""
    mixing_kg: float
    """Refrigerant charged that has not found its place yet (negative: taken); part of the charge."""
    shell_temperature_k: float
    """Temperature of the compressor's body."""
    bulb_temperature_k: float
    """Temperature of a thermostatic valve's bulb."""
    state: Steady
    """What instruments could show; flows and powers are 0 while it stands."""


def make_reading(
    nameplate: Nameplate, fields: dict[str, float], uncertainty: dict[str, dict[str, float | str]]
) -> Reading:
    """A reading of what instruments show, with what the label says."""
    known: dict[str, Any] = {**nameplate._asdict(), **fields}
    return Reading(**known, uncertainty=uncertainty)


def make_steady(state: _native.RigState, nameplate: Nameplate) -> Steady:
    """The state with its numbers."""
    parts = state.parts()
    cycle = tuple(CyclePoint(*corner) for corner in parts.pop("cycle"))
    return Steady(**parts, cycle=cycle, _state=state, _nameplate=nameplate)


for _class in (CyclePoint, Moment, Steady, SteadyStates):
    _class.__module__ = "satline.rig"
del _class
