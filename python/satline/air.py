"""Moist air, and the air side of the indoor coil.

Numbers give floats and arrays give arrays of the broadcast shape, as everywhere. Equations are those of the ASHRAE
Handbook Fundamentals 2017, chapter 1; saturation, dew point and wet bulb are over ice below 0 degrees Celsius.

What a probe measures may carry its uncertainty: give satline.Uncertain(value, standard_uncertainty) in place of the value.
Results of the coil are Uncertain. Where nothing trustworthy can be said, numbers raise NotAvailableError with the reason,
and in arrays those cells are masked.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Literal, overload

from . import _native
from ._typing import Array, Floats, MaskedFloats, Number
from ._uncertain import Measured as Measured, Uncertain as Uncertain, pair as pair

__all__ = [
    "STANDARD_AIR_KG_M3",
    "AirSplit",
    "ApparatusDewPoint",
    "CoilAir",
    "CoilAirflow",
    "CoilCapacity",
    "MoistAir",
    "MoistAirs",
    "Uncertain",
    "actual_airflow_m3_s",
    "moist_air",
    "saturation_pressure_pa",
    "standard_airflow_m3_s",
    "standard_pressure_pa",
]

STANDARD_AIR_KG_M3 = 1.2013846
"""Density of standard air: 0.075 lb/ft3."""


@dataclass(frozen=True, kw_only=True)
class MoistAir:
    """Air at a dry bulb temperature and a pressure, with the water it holds."""

    dry_bulb_k: float
    """Dry bulb temperature in kelvin."""
    pressure_pa: float
    """Ambient (station) pressure in pascals."""
    wet_bulb_k: float
    """Thermodynamic wet bulb temperature in kelvin."""
    dew_point_k: float | None
    """Dew point in kelvin, frost point below 0 degrees Celsius; None below -100 degrees Celsius: dry air has none."""
    relative_humidity: float
    """Vapour pressure over saturation pressure, 0 to 1."""
    humidity_ratio: float
    """Kilograms of water to a kilogram of dry air."""
    degree_of_saturation: float
    """Humidity ratio over that of saturated air, 0 to 1."""
    vapor_pressure_pa: float
    """Partial pressure of the water in pascals."""
    enthalpy_j_kg: float
    """Enthalpy in joules to a kilogram of dry air, from dry air and liquid water at 0 degrees Celsius."""
    density_kg_m3: float
    """Kilograms of air and water to a cubic metre."""
    specific_volume_m3_kg: float
    """Cubic metres to a kilogram of dry air."""
    density_ratio: float
    """Density over that of standard air."""


@dataclass(frozen=True, kw_only=True, eq=False)
class MoistAirs:
    """The fields of MoistAir as arrays of one shape; dew_point_k is masked where there is none."""

    dry_bulb_k: Floats
    """Dry bulb temperature in kelvin."""
    pressure_pa: Floats
    """Ambient (station) pressure in pascals."""
    wet_bulb_k: Floats
    """Thermodynamic wet bulb temperature in kelvin."""
    dew_point_k: MaskedFloats
    """Dew point in kelvin, frost point below 0 degrees Celsius; masked below -100 degrees Celsius."""
    relative_humidity: Floats
    """Vapour pressure over saturation pressure, 0 to 1."""
    humidity_ratio: Floats
    """Kilograms of water to a kilogram of dry air."""
    degree_of_saturation: Floats
    """Humidity ratio over that of saturated air, 0 to 1."""
    vapor_pressure_pa: Floats
    """Partial pressure of the water in pascals."""
    enthalpy_j_kg: Floats
    """Enthalpy in joules to a kilogram of dry air."""
    density_kg_m3: Floats
    """Kilograms of air and water to a cubic metre."""
    specific_volume_m3_kg: Floats
    """Cubic metres to a kilogram of dry air."""
    density_ratio: Floats
    """Density over that of standard air."""

    @property
    def shape(self) -> tuple[int, ...]:
        """The shape of the arrays."""
        return self.dry_bulb_k.shape

    def __len__(self) -> int:
        return len(self.dry_bulb_k)


@overload
def moist_air(  # type: ignore[overload-overlap]  # numbers are the narrower case
    dry_bulb_k: Number,
    *,
    pressure_pa: Number = 101325,
    wet_bulb_k: Number | None = None,
    relative_humidity: Number | None = None,
    dew_point_k: Number | None = None,
    humidity_ratio: Number | None = None,
) -> MoistAir: ...
@overload
def moist_air(
    dry_bulb_k: Number | Array,
    *,
    pressure_pa: Number | Array = 101325,
    wet_bulb_k: Number | Array | None = None,
    relative_humidity: Number | Array | None = None,
    dew_point_k: Number | Array | None = None,
    humidity_ratio: Number | Array | None = None,
) -> MoistAirs: ...
def moist_air(
    dry_bulb_k: Number | Array,
    *,
    pressure_pa: Number | Array = 101325,
    wet_bulb_k: Number | Array | None = None,
    relative_humidity: Number | Array | None = None,
    dew_point_k: Number | Array | None = None,
    humidity_ratio: Number | Array | None = None,
) -> MoistAir | MoistAirs:
    """Moist air from its dry bulb and one measure of its humidity.

    Dry bulb and wet bulb from -60 to 70 degrees Celsius, pressure from 50 to 110 kPa: the station's, not the one reduced
    to sea level (standard_pressure_pa gives the usual one of an altitude). A wet bulb above the dry bulb or below that of
    dry air, a humidity outside 0 to 1, a dew point above the dry bulb and a humidity ratio above saturation raise
    OutOfRangeError with the limits.

    >>> import satline
    >>> air = satline.air.moist_air(310.93, wet_bulb_k=291.48, pressure_pa=satline.air.standard_pressure_pa(1609.3))
    >>> round(air.relative_humidity, 3), round(air.density_kg_m3, 3)
    (0.163, 0.93)
    """
    given = _one_of(
        {
            "wet_bulb_k": wet_bulb_k,
            "relative_humidity": relative_humidity,
            "dew_point_k": dew_point_k,
            "humidity_ratio": humidity_ratio,
        }
    )
    if given is None:
        raise TypeError("give one of wet_bulb_k, relative_humidity, dew_point_k and humidity_ratio")
    measure, humidity = given
    parts = _native.moist_air_parts(dry_bulb_k, humidity, pressure_pa, measure)
    return MoistAir(**parts) if isinstance(parts["dry_bulb_k"], float) else MoistAirs(**parts)


@overload
def standard_pressure_pa(altitude_m: Number) -> float: ...
@overload
def standard_pressure_pa(altitude_m: Array) -> Floats: ...
def standard_pressure_pa(altitude_m: Number | Array) -> float | Floats:
    """Pressure of the standard atmosphere in pascals at an altitude of -500 to 5500 m.

    A barometer at the unit is better: weather moves the pressure by some 2 %.

    >>> import satline
    >>> round(satline.air.standard_pressure_pa(1000.0))
    89875
    """
    pressure: float | Floats = _native.air_pressure(altitude_m, True)
    return pressure


@overload
def saturation_pressure_pa(temperature_k: Number) -> float: ...
@overload
def saturation_pressure_pa(temperature_k: Array) -> Floats: ...
def saturation_pressure_pa(temperature_k: Number | Array) -> float | Floats:
    """Saturation pressure of water in pascals, -100 to 100 degrees Celsius, over ice up to 0.01 degrees Celsius.

    >>> import satline
    >>> round(satline.air.saturation_pressure_pa(298.15))
    3169
    """
    pressure: float | Floats = _native.air_pressure(temperature_k, False)
    return pressure


def standard_airflow_m3_s(airflow_m3_s: Number | Array, air: MoistAir | MoistAirs) -> Any:
    """The flow at standard air (SCFM) in m3/s of a volume flow (ACFM) in air of this state: its dry air at 0.075 lb/ft3.

    >>> import satline
    >>> denver = satline.air.moist_air(297.0, relative_humidity=0.4, pressure_pa=83_400.0)
    >>> round(satline.air.standard_airflow_m3_s(0.6, denver), 3)
    0.482
    """
    return _native.standard_airflow(airflow_m3_s, air.dry_bulb_k, air.humidity_ratio, air.pressure_pa, False)["airflow_m3_s"]


def actual_airflow_m3_s(standard_m3_s: Number | Array, air: MoistAir | MoistAirs) -> Any:
    """The volume flow (ACFM) in m3/s in air of this state of a flow at standard air (SCFM).

    >>> import satline
    >>> denver = satline.air.moist_air(297.0, relative_humidity=0.4, pressure_pa=83_400.0)
    >>> round(satline.air.actual_airflow_m3_s(0.482, denver), 3)
    0.6
    """
    return _native.standard_airflow(standard_m3_s, air.dry_bulb_k, air.humidity_ratio, air.pressure_pa, True)["airflow_m3_s"]


@dataclass(frozen=True, kw_only=True, eq=False)
class AirSplit:
    """Temperature split with its target."""

    split_k: Uncertain
    """Return minus supply dry bulb."""
    target_k: Uncertain | None
    """What the table asks for; None (masked) where it is blank or ends."""
    deviation_k: Uncertain | None
    """Split minus target."""


@dataclass(frozen=True, kw_only=True, eq=False)
class CoilCapacity:
    """Heat taken from the air, positive in cooling; negative sensible heat was given to it."""

    dry_air_kg_s: Uncertain
    """Mass flow of dry air."""
    sensible_w: Uncertain
    """Heat of cooling the air, at the humidity at which it leaves."""
    latent_w: Uncertain
    """Heat of the water taken out, as vapour at the entering dry bulb."""
    total_w: Uncertain
    """Both together: mass flow of dry air times the difference of enthalpy, the condensate's still in it (ASHRAE 37)."""
    condensate_w: Uncertain
    """Enthalpy that leaves with the condensate."""
    coil_w: Uncertain
    """Total less condensate: what the refrigerant takes up, where no blower stands between the probes."""
    condensate_kg_s: Uncertain
    """Water taken out; negative where the air left with more."""
    sensible_heat_ratio: Uncertain | None
    """Sensible over total heat; None (masked) where the air was not cooled."""


@dataclass(frozen=True, kw_only=True, eq=False)
class CoilAirflow:
    """An airflow over the indoor coil."""

    dry_air_kg_s: Uncertain
    """Mass flow of dry air."""
    entering_m3_s: Uncertain
    """Volume flow of the air entering."""
    leaving_m3_s: Uncertain
    """Volume flow of the air leaving."""
    standard_m3_s: Uncertain
    """Flow at standard air (SCFM)."""


@dataclass(frozen=True, kw_only=True, eq=False)
class ApparatusDewPoint:
    """The effective surface of a coil that takes out water."""

    temperature_k: Uncertain
    """Apparatus dew point."""
    bypass_factor: Uncertain
    """The share of the air that passes untouched, 0 to 1."""


class CoilAir:
    """What was measured of the air before and after the indoor coil.

    Give one measure of the return air's humidity, and one of the supply air's; without the latter the air is taken to
    leave with as much water as it entered, as over a dry coil or in heating. Each may be an Uncertain. A bias that all
    thermometers share goes in shared_bias_k, as one standard uncertainty.

    >>> import satline
    >>> from satline.air import CoilAir, Uncertain
    >>> coil = CoilAir(
    ...     return_dry_bulb_k=Uncertain(298.7, 0.2), return_wet_bulb_k=Uncertain(291.5, 0.3),
    ...     supply_dry_bulb_k=Uncertain(286.5, 0.2), supply_relative_humidity=Uncertain(0.9, 0.02),
    ... )
    >>> found = coil.capacity(Uncertain(0.55, 0.03))
    >>> round(found.total_w.value), round(found.total_w.standard_uncertainty)
    (10651, 950)
    """

    def __init__(
        self,
        *,
        return_dry_bulb_k: Measured,
        supply_dry_bulb_k: Measured,
        return_wet_bulb_k: Measured | None = None,
        return_relative_humidity: Measured | None = None,
        return_dew_point_k: Measured | None = None,
        return_humidity_ratio: Measured | None = None,
        supply_wet_bulb_k: Measured | None = None,
        supply_relative_humidity: Measured | None = None,
        supply_dew_point_k: Measured | None = None,
        supply_humidity_ratio: Measured | None = None,
        pressure_pa: Measured = 101325,
        shared_bias_k: Number | Array = 0.0,
    ) -> None:
        entering = _one_of(
            {
                "wet_bulb_k": return_wet_bulb_k,
                "relative_humidity": return_relative_humidity,
                "dew_point_k": return_dew_point_k,
                "humidity_ratio": return_humidity_ratio,
            }
        )
        leaving = _one_of(
            {
                "wet_bulb_k": supply_wet_bulb_k,
                "relative_humidity": supply_relative_humidity,
                "dew_point_k": supply_dew_point_k,
                "humidity_ratio": supply_humidity_ratio,
            }
        )
        if entering is None:
            raise TypeError("give one measure of the return air's humidity, such as return_wet_bulb_k")
        self._measures = (entering[0], leaving[0] if leaving else None)
        self._measured: list[Measured] = [
            return_dry_bulb_k,
            entering[1],
            supply_dry_bulb_k,
            leaving[1] if leaving else 0.0,
            pressure_pa,
            Uncertain(0.0, shared_bias_k),
        ]

    def _ask(self, question: str, detail: str = "", *more: Measured) -> dict[str, Any]:
        measured = [*self._measured, *more, *[0.0] * (2 - len(more))]
        arguments = [part for value in measured for part in pair(value)]
        return named(_native.coil_parts(question, self._measures, detail, arguments))

    def split(self) -> AirSplit:
        """Temperature split, and its target by the table of California Title 24, RA3.2 (see satline.target_split_k).

        The target moves with the return air's probes: the deviation's uncertainty takes that into account.
        """
        return AirSplit(**self._ask("split"))

    def capacity(
        self, airflow_m3_s: Measured, place: Literal["entering", "leaving", "standard"] = "entering"
    ) -> CoilCapacity:
        """Sensible, latent and total heat taken from the air.

        place says in which air the volume of the airflow counts: entering or leaving the coil, or standard air (SCFM).
        Heat of a blower between the probes is in it.
        """
        if place not in ("entering", "leaving", "standard"):
            raise ValueError("place is entering, leaving or standard")
        return CoilCapacity(**self._ask("capacity", place, airflow_m3_s))

    def airflow(
        self,
        *,
        heating_w: Measured | None = None,
        sensible_w: Measured | None = None,
        total_w: Measured | None = None,
        evaporator_w: Measured | None = None,
        blower_w: Measured = 0.0,
    ) -> CoilAirflow:
        """The airflow over the coil from one heat that is known.

        heating_w: electric strips (volts times amperes of all that are on) or a furnace's output, compressor off.
        sensible_w, total_w: heat taken from the air between the probes. evaporator_w: heat taken up by the refrigerant.
        blower_w: power of a blower between the probes, with heating_w and evaporator_w. Measure the air where it is
        mixed, out of sight of strips and coil. Mains electricity is for licensed people.
        """
        given = _one_of(
            {"heating_w": heating_w, "sensible_w": sensible_w, "total_w": total_w, "evaporator_w": evaporator_w}
        )
        if given is None:
            raise TypeError("give one of heating_w, sensible_w, total_w and evaporator_w")
        name, heat = given
        return CoilAirflow(**self._ask("airflow", name, heat, blower_w))

    def apparatus_dew_point(self) -> ApparatusDewPoint:
        """Apparatus dew point and bypass factor: where the line from return through supply air meets saturation.

        Not available on a dry coil, or where the line misses saturation (reheat, or a wrong humidity).
        """
        return ApparatusDewPoint(**self._ask("surface"))


def named(parts: dict[str, tuple[Any, Any]]) -> dict[str, Any]:
    """Pairs as Uncertain; None where there is no value."""
    return {name: None if value is None else Uncertain(value, uncertainty) for name, (value, uncertainty) in parts.items()}


def _one_of(choices: dict[str, Any]) -> tuple[str, Any] | None:
    """The one that is given, by name."""
    given = [(name, value) for name, value in choices.items() if value is not None]
    if len(given) > 1:
        raise TypeError("give only one of " + ", ".join(choices))
    return given[0] if given else None
