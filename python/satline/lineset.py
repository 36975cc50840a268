"""The line set: tubes, what they hold, and what their length and height cost.

>>> import satline
>>> round(satline.lineset.Tube("3/8").inside_diameter_m / 0.0254, 3)
0.311
"""

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
from ._lineset_charge import LineCharge, LineSetCharge, Tube, charge_per_length_kg_m, line_set_charge

__all__ = [
    "FITTINGS",
    "LineCharge",
    "LineSetCharge",
    "LiquidLine",
    "SuctionHeatGain",
    "Tube",
    "VaporLine",
    "charge_per_length_kg_m",
    "discharge_line",
    "friction_factor",
    "lift_pressure_pa",
    "line_set_charge",
    "liquid_line",
    "mass_flow_kg_s",
    "suction_heat_gain",
    "suction_line",
]
