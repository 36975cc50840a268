"""Refrigerant properties and charge diagnostics for air conditioning; see help(satline)."""

from typing import Final, Literal, TypeAlias, final, overload

from . import (
    air as air,
    capacity as capacity,
    lineset as lineset,
    rig as rig,
    safety as safety,
    units as units,
    visit as visit,
)
from ._component import Component as Component
from ._errors import (
    BadCompositionError as BadCompositionError,
    MalformedTextError as MalformedTextError,
    NotAvailableError as NotAvailableError,
    NotConvergedError as NotConvergedError,
    NotFiniteError as NotFiniteError,
    OutOfRangeError as OutOfRangeError,
    SatlineError as SatlineError,
    UnknownChoiceError as UnknownChoiceError,
    UnknownFieldError as UnknownFieldError,
    UnknownRefrigerantError as UnknownRefrigerantError,
    UnknownUnitError as UnknownUnitError,
)
from ._evidence import (
    ChargeAmount as ChargeAmount,
    Feature as Feature,
    Hypothesis as Hypothesis,
    Precondition as Precondition,
)
from ._finding import (
    Finding as Finding,
    MissingField as MissingField,
    ProtocolVerdict as ProtocolVerdict,
    Value as Value,
    diagnose as diagnose,
)
from ._frame import diagnose_frame as diagnose_frame
from ._reading import Reading as Reading
from ._record import VisitRecord as VisitRecord
from ._state import State as State, States as States
from ._typing import Array, Floats, MaskedFloats, Number
from ._uncertain import Uncertain as Uncertain

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
__version__: Final[str]

# Where enthalpy and entropy count from; see Refrigerant.state.
_ReferenceName: TypeAlias = Literal["IIR", "ASHRAE", "NBP"]

@final
class Refrigerant:
    @property
    def designation(self) -> str: ...
    @property
    def components(self) -> tuple[Component, ...]: ...
    @property
    def safety_class(self) -> str: ...
    @property
    def lower_flammability_limit_kg_m3(self) -> float | None: ...
    @property
    def confidence(self) -> str: ...
    @property
    def name(self) -> str: ...
    @property
    def saturation_uncertainty_k(self) -> float | None: ...
    @property
    def global_warming_potential(self) -> float | None: ...
    @property
    def global_warming_potential_source(self) -> str | None: ...
    @property
    def normal_bubble_temperature_k(self) -> float | None: ...
    @property
    def normal_dew_temperature_k(self) -> float | None: ...
    @property
    def critical_temperature_k(self) -> float: ...
    @property
    def critical_pressure_pa(self) -> float: ...
    @property
    def sources(self) -> tuple[str, ...]: ...
    @property
    def temperature_range_k(self) -> tuple[float, float]: ...
    @overload
    def bubble_pressure_pa(self, temperature_k: Number) -> float: ...
    @overload
    def bubble_pressure_pa(self, temperature_k: Array) -> Floats: ...
    @overload
    def dew_pressure_pa(self, temperature_k: Number) -> float: ...
    @overload
    def dew_pressure_pa(self, temperature_k: Array) -> Floats: ...
    @overload
    def bubble_temperature_k(self, pressure_pa: Number) -> float: ...
    @overload
    def bubble_temperature_k(self, pressure_pa: Array) -> Floats: ...
    @overload
    def dew_temperature_k(self, pressure_pa: Number) -> float: ...
    @overload
    def dew_temperature_k(self, pressure_pa: Array) -> Floats: ...
    @overload
    def superheat_k(self, temperature_k: Number, pressure_pa: Number) -> float: ...
    @overload
    def superheat_k(self, temperature_k: Array, pressure_pa: Number | Array) -> Floats: ...
    @overload
    def superheat_k(self, temperature_k: Number, pressure_pa: Array) -> Floats: ...
    @overload
    def subcooling_k(self, temperature_k: Number, pressure_pa: Number) -> float: ...
    @overload
    def subcooling_k(self, temperature_k: Array, pressure_pa: Number | Array) -> Floats: ...
    @overload
    def subcooling_k(self, temperature_k: Number, pressure_pa: Array) -> Floats: ...
    @overload
    def state(
        self,
        temperature_k: Number | None = None,
        pressure_pa: Number | None = None,
        *,
        enthalpy_j_kg: Number | None = None,
        entropy_j_kg_k: Number | None = None,
        quality: Number | None = None,
        reference: _ReferenceName = "IIR",
    ) -> State: ...
    @overload
    def state(
        self,
        temperature_k: Number | Array | None = None,
        pressure_pa: Number | Array | None = None,
        *,
        enthalpy_j_kg: Number | Array | None = None,
        entropy_j_kg_k: Number | Array | None = None,
        quality: Number | Array | None = None,
        reference: _ReferenceName = "IIR",
    ) -> States: ...
    @overload
    def saturated_liquid_density_kg_m3(self, temperature_k: Number) -> float: ...
    @overload
    def saturated_liquid_density_kg_m3(self, temperature_k: Array) -> Floats: ...
    @overload
    def saturated_vapor_density_kg_m3(self, temperature_k: Number) -> float: ...
    @overload
    def saturated_vapor_density_kg_m3(self, temperature_k: Array) -> Floats: ...
    @overload
    def saturated_liquid_enthalpy_j_kg(self, temperature_k: Number) -> float: ...
    @overload
    def saturated_liquid_enthalpy_j_kg(self, temperature_k: Array) -> Floats: ...
    @overload
    def saturated_vapor_enthalpy_j_kg(self, temperature_k: Number) -> float: ...
    @overload
    def saturated_vapor_enthalpy_j_kg(self, temperature_k: Array) -> Floats: ...
    @overload
    def saturated_liquid(self, temperature_k: Number, *, reference: _ReferenceName = "IIR") -> State: ...
    @overload
    def saturated_liquid(self, temperature_k: Array, *, reference: _ReferenceName = "IIR") -> States: ...
    @overload
    def saturated_vapor(self, temperature_k: Number, *, reference: _ReferenceName = "IIR") -> State: ...
    @overload
    def saturated_vapor(self, temperature_k: Array, *, reference: _ReferenceName = "IIR") -> States: ...
    @overload
    def viscosity_pa_s(self, temperature_k: Number, density_kg_m3: Number) -> float: ...
    @overload
    def viscosity_pa_s(self, temperature_k: Array, density_kg_m3: Number | Array) -> Floats: ...
    @overload
    def viscosity_pa_s(self, temperature_k: Number, density_kg_m3: Array) -> Floats: ...
    @property
    def viscosity_error(self) -> float: ...
    @overload
    def thermal_conductivity_w_m_k(self, temperature_k: Number, density_kg_m3: Number) -> float: ...
    @overload
    def thermal_conductivity_w_m_k(self, temperature_k: Array, density_kg_m3: Number | Array) -> Floats: ...
    @overload
    def thermal_conductivity_w_m_k(self, temperature_k: Number, density_kg_m3: Array) -> Floats: ...
    @property
    def thermal_conductivity_error(self) -> float: ...
    @overload
    def surface_tension_n_m(self, temperature_k: Number) -> float: ...
    @overload
    def surface_tension_n_m(self, temperature_k: Array) -> Floats: ...
    @property
    def surface_tension_error(self) -> float: ...
    def after_leak(
        self,
        fraction_lost: float,
        temperature_k: float,
        *,
        leaving: Literal["liquid", "vapor"] = "vapor",
        liquid_volume_fraction: float | None = None,
        filling_density_kg_m3: float | None = None,
    ) -> AfterLeak: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __hash__(self) -> int: ...

@final
class AfterLeak:
    @property
    def fraction_lost(self) -> float: ...
    @property
    def leaving(self) -> str: ...
    @property
    def temperature_k(self) -> float: ...
    @property
    def pressure_pa(self) -> float: ...
    @property
    def components(self) -> tuple[Component, ...]: ...
    @property
    def liquid_components(self) -> tuple[Component, ...]: ...
    @property
    def vapor_components(self) -> tuple[Component, ...]: ...
    @property
    def liquid_volume_fraction(self) -> float: ...
    @property
    def liquid_mass_fraction(self) -> float: ...
    @property
    def filling_density_kg_m3(self) -> float: ...
    @property
    def liquid_density_kg_m3(self) -> float: ...
    @property
    def vapor_density_kg_m3(self) -> float: ...
    @property
    def flammable_mass_fraction(self) -> float: ...
    @property
    def vapor_flammable_mass_fraction(self) -> float: ...
    @property
    def cautions(self) -> tuple[str, ...]: ...
    @overload
    def bubble_pressure_pa(self, temperature_k: Number) -> float: ...
    @overload
    def bubble_pressure_pa(self, temperature_k: Array) -> Floats: ...
    @overload
    def dew_pressure_pa(self, temperature_k: Number) -> float: ...
    @overload
    def dew_pressure_pa(self, temperature_k: Array) -> Floats: ...
    @overload
    def bubble_temperature_k(self, pressure_pa: Number) -> float: ...
    @overload
    def bubble_temperature_k(self, pressure_pa: Array) -> Floats: ...
    @overload
    def dew_temperature_k(self, pressure_pa: Number) -> float: ...
    @overload
    def dew_temperature_k(self, pressure_pa: Array) -> Floats: ...

def refrigerant(name: str) -> Refrigerant: ...
def refrigerants() -> list[Refrigerant]: ...
@overload
def target_superheat_k(return_wet_bulb_k: Number, outdoor_dry_bulb_k: Number) -> float | None: ...
@overload
def target_superheat_k(return_wet_bulb_k: Array, outdoor_dry_bulb_k: Number | Array) -> MaskedFloats: ...
@overload
def target_superheat_k(return_wet_bulb_k: Number, outdoor_dry_bulb_k: Array) -> MaskedFloats: ...
@overload
def target_split_k(return_dry_bulb_k: Number, return_wet_bulb_k: Number) -> float | None: ...
@overload
def target_split_k(return_dry_bulb_k: Array, return_wet_bulb_k: Number | Array) -> MaskedFloats: ...
@overload
def target_split_k(return_dry_bulb_k: Number, return_wet_bulb_k: Array) -> MaskedFloats: ...
