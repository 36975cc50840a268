"""Capacity and efficiency from the refrigerant's side.

Numbers give floats and arrays give arrays of the broadcast shape. What a probe measures may carry its uncertainty: give
satline.Uncertain(value, standard_uncertainty) in place of the value.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from . import _native
from ._native import Refrigerant
from ._uncertain import Measured, Uncertain, pair
from .air import named

__all__ = ["CircuitCapacity", "circuit_capacity"]


@dataclass(frozen=True, kw_only=True, eq=False)
class CircuitCapacity:
    """Capacity and efficiency; None (in arrays masked) for what was not measured or contradicts itself.

    The uncertainty of the equation of state is not in the standard uncertainties.
    """

    mass_flow_kg_s: Uncertain
    """Mass flow of refrigerant."""
    evaporator_w: Uncertain
    """Heat taken up from the liquid port to evaporator_end."""
    evaporator_end: Literal["coil-outlet", "suction-port"]
    """Where that ends; at the suction port the heat that the suction line gains is in it, which cools nobody."""
    line_gain_w: Uncertain | None
    """Heat that the suction line gained."""
    condenser_w: Uncertain | None
    """Heat given up from discharge to liquid port."""
    gas_work_w: Uncertain | None
    """Work that stayed in the gas."""
    work_share: Uncertain | None
    """Where the mass flow was measured: work that stayed in the gas over the compressor's power."""
    pressure_ratio: Uncertain | None
    """Discharge over suction pressure, absolute."""
    isentropic_efficiency: Uncertain | None
    """Enthalpy rise of an ideal compressor over the rise found. Heat that the shell loses makes it look better."""
    overall_efficiency: Uncertain | None
    """Power of an ideal compressor for this mass flow over the compressor's electric power."""
    cop: Uncertain | None
    """Evaporator capacity over electric power."""
    eer_btu_wh: Uncertain | None
    """The same in Btu an hour to a watt."""


def circuit_capacity(
    refrigerant: Refrigerant | str,
    *,
    suction_pressure_pa: Measured,
    suction_temperature_k: Measured,
    liquid_pressure_pa: Measured,
    liquid_temperature_k: Measured,
    discharge_pressure_pa: Measured | None = None,
    discharge_temperature_k: Measured | None = None,
    coil_outlet_pressure_pa: Measured | None = None,
    coil_outlet_temperature_k: Measured | None = None,
    mass_flow_kg_s: Measured | None = None,
    compressor_power_w: Measured | None = None,
    other_power_w: Measured = 0.0,
    work_share: Measured | None = None,
) -> CircuitCapacity:
    """Capacity in cooling from pressures (absolute) and temperatures at the ports, and a mass flow or a power.

    Without mass_flow_kg_s it follows from compressor_power_w and the discharge: work_share of the power stays in the gas
    (0.9 with a standard uncertainty of 0.058 if not given: 0.8 to 1). other_power_w, of blower, fan and controls, counts in
    cop and eer_btu_wh.

    A wet suction line, and vapour in the liquid line, leave the enthalpies open: numbers raise NotAvailableError with the
    reason, in arrays those cells are masked. A liquid line in which there can only be vapour, a discharge colder than its
    dew temperature, or below the suction pressure, raise OutOfRangeError.

    >>> import satline
    >>> from satline import Uncertain
    >>> found = satline.capacity.circuit_capacity(
    ...     "R-410A", suction_pressure_pa=9.5e5, suction_temperature_k=288.0, liquid_pressure_pa=2.6e6,
    ...     liquid_temperature_k=310.0, discharge_pressure_pa=2.7e6, discharge_temperature_k=346.0,
    ...     compressor_power_w=Uncertain(2000.0, 20.0),
    ... )
    >>> round(found.evaporator_w.value), round(found.evaporator_w.standard_uncertainty), round(found.cop.value, 2)
    (9306, 607, 4.65)
    """
    known = refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)
    discharge = _both("discharge", discharge_pressure_pa, discharge_temperature_k)
    outlet = _both("coil_outlet", coil_outlet_pressure_pa, coil_outlet_temperature_k)
    optional = (discharge, outlet, mass_flow_kg_s, compressor_power_w, work_share)
    measured: list[Measured] = [suction_pressure_pa, suction_temperature_k, liquid_pressure_pa, liquid_temperature_k]
    measured += discharge or (0.0, 0.0)
    measured += outlet or (0.0, 0.0)
    measured += [0.0 if value is None else value for value in (mass_flow_kg_s, compressor_power_w)]
    measured += [other_power_w, 0.0 if work_share is None else work_share]
    arguments = [part for value in measured for part in pair(value)]
    parts = _native.circuit_capacity_parts(known, [value is not None for value in optional], arguments)
    return CircuitCapacity(evaporator_end="suction-port" if outlet is None else "coil-outlet", **named(parts))


def _both(place: str, pressure: Measured | None, temperature: Measured | None) -> tuple[Measured, Measured] | None:
    if pressure is None and temperature is None:
        return None
    if pressure is None or temperature is None:
        raise TypeError(f"give {place}_pressure_pa and {place}_temperature_k together")
    return (pressure, temperature)
