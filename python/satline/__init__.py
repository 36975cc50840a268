"""Refrigerant properties and charge diagnostics for air conditioning.

Temperatures are in kelvin and pressures in pascals, absolute, unless a name says otherwise; satline.units converts.
Every numeric function takes one number and gives a float, or takes arrays (anything array-like) and gives a float64
array of the broadcast shape. A value outside its accepted range raises OutOfRangeError (NotFiniteError for NaN and
infinities), which names the quantity, the value and the limits and, in an array, the element: nothing is clamped,
extrapolated or returned as NaN.

Work on refrigerant circuits needs a licence and follows local codes. Pressure and, for class 2L, 2 and 3
refrigerants, fire are hazards; the unit's own charging label comes first.
"""

from . import (  # fmt: skip
    air,
    capacity,
    lineset,
    rig,
    safety,
    units,
    visit,
)
from ._component import Component
from ._errors import (
    BadCompositionError,
    MalformedTextError,
    NotAvailableError,
    NotConvergedError,
    NotFiniteError,
    OutOfRangeError,
    SatlineError,
    UnknownChoiceError,
    UnknownFieldError,
    UnknownRefrigerantError,
    UnknownUnitError,
)
from ._evidence import ChargeAmount, Feature, Hypothesis, Precondition
from ._finding import Finding, MissingField, ProtocolVerdict, Value, diagnose
from ._frame import diagnose_frame
from ._native import AfterLeak, Refrigerant, __version__, refrigerant, refrigerants, target_split_k, target_superheat_k
from ._reading import Reading
from ._record import VisitRecord
from ._state import State, States
from ._uncertain import Uncertain

__all__ = [
    "AfterLeak",
    "BadCompositionError",
    "ChargeAmount",
    "Component",
    "Feature",
    "Finding",
    "Hypothesis",
    "MalformedTextError",
    "MissingField",
    "NotAvailableError",
    "NotConvergedError",
    "NotFiniteError",
    "OutOfRangeError",
    "Precondition",
    "ProtocolVerdict",
    "Reading",
    "Refrigerant",
    "SatlineError",
    "State",
    "States",
    "Uncertain",
    "UnknownChoiceError",
    "UnknownFieldError",
    "UnknownRefrigerantError",
    "UnknownUnitError",
    "Value",
    "VisitRecord",
    "__version__",
    "air",
    "capacity",
    "diagnose",
    "diagnose_frame",
    "lineset",
    "refrigerant",
    "refrigerants",
    "rig",
    "safety",
    "target_split_k",
    "target_superheat_k",
    "units",
    "visit",
]
