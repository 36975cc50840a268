"""The rig: a simulated air conditioner, to test diagnosis with, to stand in for hardware, and to teach.

A unit is built from what is on its label and sized so that it meets its rating point; its parts are models from
published sources, and its refrigerant is that of the equations of state alone. Same inputs, same numbers, to the last
bit. A simulated unit is no substitute for the maker's data: what it shows is how such units behave.

>>> import satline
>>> unit = satline.rig.Unit("R-410A", "fixed-orifice", 10_550.0)
>>> healthy = unit.solve(308.15, 299.8, 292.59)
>>> low = unit.solve(308.15, 299.8, 292.59, faults={"undercharge": 0.2})
>>> low.superheat_k > healthy.superheat_k, low.subcooling_k < healthy.subcooling_k
(True, True)
>>> satline.diagnose(low.reading("exact")).charge
'low'
"""

from ._rig_motion import Stepper
from ._rig_state import CyclePoint, Moment, Steady, SteadyStates
from ._rig_unit import Unit

__all__ = ["CyclePoint", "Moment", "Steady", "SteadyStates", "Stepper", "Unit"]
