"""The line set: tubes, and what they hold.

>>> import satline
>>> round(satline.lineset.Tube("3/8").inside_diameter_m / 0.0254, 3)
0.311
"""

from ._lineset_charge import LineCharge, LineSetCharge, Tube, charge_per_length_kg_m, line_set_charge

__all__ = ["LineCharge", "LineSetCharge", "Tube", "charge_per_length_kg_m", "line_set_charge"]
