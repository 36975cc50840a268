"""The line set: pressure drop, lift, oil return and heat gain of its lines."""

from __future__ import annotations

from ._line_pressure import (
    FITTINGS,
    LiquidLine,
    SuctionHeatGain,
    VaporLine,
    discharge_line,
    friction_factor,
    lift_pressure_pa,
    liquid_line,
    mass_flow_kg_s,
    suction_heat_gain,
    suction_line,
)

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
