"""The rig's unit: built from a nominal rating, solved, and followed in time."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any, Literal, TypeAlias, overload

import numpy as np
import numpy.typing as npt

from . import _native
from ._errors import UnknownChoiceError
from ._native import Refrigerant
from ._rig_motion import Changes, Inputs, Stepper, changes_in_time, check_duration
from ._rig_state import Nameplate, Steady, SteadyStates, make_steady
from ._typing import Array, Number

_STANDARD_PA = 101_325.0
_RATING_K = (308.15, 299.816_666_666_666_7, 292.594_444_444_444_4)

Table: TypeAlias = dict[str, npt.NDArray[Any]]
"""Columns by name."""


class Unit:
    """A simulated split air conditioner of 1 to 6 tons, built so that it meets its rating point.

    metering is "fixed-orifice" or "thermostatic-valve". law chooses between two laws of each: "short-tube" (Payne and
    O'Neal, taken where none is given) or "square-root" of an orifice, "tapered" (taken) or "linear" of a valve's needle.
    efficiency_class is "basic", "standard" or "high": by common practice a unit of about 10, 13 or 16 Btu/(W h) seasonal.
    line_length_m is that of each line, fittings included, lift_m how much higher the indoor unit stands.

    The rest chooses between models, so that what is tuned on one structure can be judged on another: the condenser by
    "moving-boundary" or "lumped", the void fraction by "zivi", "smith" or "homogeneous", the imbalance of the air over
    the evaporator's two circuits (0 to 0.9), an accumulator, and a return duct that leaks and warms the air through a
    space so much warmer than outdoors. The nameplate charge is what the unit holds at the rating point, before duct and
    imbalance.

    >>> import satline
    >>> unit = satline.rig.Unit("R-410A", "thermostatic-valve", 10_550.0)
    >>> state = unit.solve(308.15, 299.82, 292.59)
    >>> round(state.capacity_w / 10_550.0, 2)
    1.0
    """

    def __init__(
        self,
        refrigerant: str | Refrigerant,
        metering: Literal["fixed-orifice", "thermostatic-valve"],
        nominal_capacity_w: float,
        *,
        efficiency_class: Literal["basic", "standard", "high"] = "standard",
        line_length_m: float = 7.62,
        lift_m: float = 0.0,
        law: Literal["short-tube", "square-root", "tapered", "linear"] | None = None,
        condenser: Literal["moving-boundary", "lumped"] = "moving-boundary",
        void_fraction: Literal["zivi", "smith", "homogeneous"] = "zivi",
        air_imbalance: float = 0.0,
        accumulator_volume_m3: float = 0.0,
        accumulator_bleed: float = 0.06,
        return_leak: float = 0.0,
        return_duct_conductance_w_k: float = 0.0,
        return_duct_excess_k: float = 0.0,
    ) -> None:
        self._refrigerant = _native.refrigerant(refrigerant) if isinstance(refrigerant, str) else refrigerant
        self._unit = _native.RigUnit(
            self._refrigerant,
            nominal_capacity_w,
            (metering, law or "", efficiency_class, condenser, void_fraction),
            (line_length_m, lift_m),
            air_imbalance,
            (
                (accumulator_volume_m3, accumulator_bleed),
                (return_leak, return_duct_conductance_w_k, return_duct_excess_k),
            ),
        )
        self._nameplate = Nameplate(self._refrigerant.designation, metering, float(nominal_capacity_w), None)
        if metering == "thermostatic-valve":
            self._nameplate = self._nameplate._replace(target_subcooling_k=self._unit.rated_subcooling_k)

    @property
    def refrigerant(self) -> Refrigerant:
        """The refrigerant."""
        return self._refrigerant

    @property
    def metering(self) -> Literal["fixed-orifice", "thermostatic-valve"]:
        """The metering device."""
        return self._nameplate.metering

    @property
    def nominal_capacity_w(self) -> float:
        """Total cooling capacity at the rating point."""
        return self._nameplate.nominal_capacity_w

    @property
    def nameplate_charge_kg(self) -> float:
        """The charge that it should hold with its line set."""
        return self._unit.nameplate_charge_kg

    @property
    def target_subcooling_k(self) -> float | None:
        """What its label gives for charging a unit with a valve: subcooling at the liquid port at the rating point."""
        return self._nameplate.target_subcooling_k

    @property
    def design_airflow_m3_s(self) -> float:
        """Airflow over the indoor coil with nothing in its way."""
        return self._unit.design_airflow_m3_s

    @property
    def design_mass_flow_kg_s(self) -> float:
        """Refrigerant flow at the rating point."""
        return self._unit.design_mass_flow_kg_s

    @property
    def line_diameters_m(self) -> tuple[float, float]:
        """Inside diameters of the liquid and the suction line."""
        return self._unit.line_diameters_m

    def __repr__(self) -> str:
        name = self._nameplate
        return f"<rig.Unit {name.refrigerant}, {name.metering}, {name.nominal_capacity_w:.0f} W>"

    @overload
    def solve(
        self,
        outdoor_dry_bulb_k: Number,
        return_dry_bulb_k: Number,
        return_wet_bulb_k: Number,
        faults: Mapping[str, Number] | None = None,
        ambient_pressure_pa: Number = _STANDARD_PA,
    ) -> Steady: ...
    @overload
    def solve(
        self,
        outdoor_dry_bulb_k: Number | Array,
        return_dry_bulb_k: Number | Array,
        return_wet_bulb_k: Number | Array,
        faults: Mapping[str, Number | Array] | None = None,
        ambient_pressure_pa: Number | Array = _STANDARD_PA,
    ) -> Steady | SteadyStates: ...
    def solve(
        self,
        outdoor_dry_bulb_k: Number | Array,
        return_dry_bulb_k: Number | Array,
        return_wet_bulb_k: Number | Array,
        faults: Mapping[str, Any] | None = None,
        ambient_pressure_pa: Number | Array = _STANDARD_PA,
    ) -> Steady | SteadyStates:
        """Where the unit settles: a Steady for numbers, SteadyStates as soon as one argument or severity is an array.

        Faults combine, each with a severity from 0 (nothing): undercharge and overcharge as shares of the nameplate
        charge; low_indoor_airflow and restricted_condenser_air as the share of the air that is missing;
        liquid_line_restriction as its pressure drop at the design flow by that over the metering device;
        compressor_leakage as the share of the flow that leaks back; non_condensables as nitrogen by what fills the whole
        unit at 101 325 Pa; metering_overfeeding as the share by which an orifice is too wide, or 15 K of superheat that a
        loose bulb feels too much; metering_underfeeding as the share of the device's flow that is missing;
        suction_line_heat_gain as how many times more heat the line takes up than it should.

        Where such a unit would not run (its low pressure, its high pressure, liquid in the compressor, ...) numbers raise
        NotAvailableError with the reason; in arrays the cells are masked and the reason stands in .reason. What is out
        of range raises in both. Arrays let other threads run meanwhile.
        """
        air = [outdoor_dry_bulb_k, return_dry_bulb_k, return_wet_bulb_k, ambient_pressure_pa]
        found = self._unit.solve(air, dict(faults or {}))
        if isinstance(found, _native.RigState):
            return make_steady(found, self._nameplate)
        reasons, shape = found.pop("reason")
        return SteadyStates(**found, reason=np.asarray(reasons, dtype=np.str_).reshape(shape))

    def run(
        self,
        seconds: float,
        step_s: float = 1.0,
        start: Literal["rest", "settled"] = "rest",
        schedule: Sequence[tuple[float, Changes]] = (),
        *,
        outdoor_dry_bulb_k: float = _RATING_K[0],
        return_dry_bulb_k: float = _RATING_K[1],
        return_wet_bulb_k: float = _RATING_K[2],
        ambient_pressure_pa: float = _STANDARD_PA,
        faults: Mapping[str, float] | None = None,
        charging_kg_s: float = 0.0,
        calls: bool = True,
        sensors: Literal["usual", "exact"] | None = None,
        seed: int = 0,
    ) -> Table:
        """The unit in time, as a table: a dict of arrays with a row for the start and one for each step.

        start is "rest", after it has stood for long, or "settled", after it has run for long. The schedule is a sequence
        of (at_s, changes) in order of time; changes are inputs by their names here that hold from then on: conditions,
        faults (those not named stay), charging_kg_s (refrigerant that goes in, negative for what is taken out) and calls
        (whether the thermostat asks for cooling). Undercharge and overcharge set the charge at the start only. Where
        nothing else is given, conditions are those of the rating point A of AHRI 210/240.

        Columns: time_s, calls, runs, trip ("", "low-pressure" or "high-pressure"), charging_kg_s, gathered_kg, mixing_kg,
        shell_temperature_k, bulb_temperature_k, and the fields of Steady; valve_lift with a valve only. With sensors, the
        columns that a Reading has are what instruments show, with their lag, NaN where a display shows nothing; seed as in
        Steady.reading.

        >>> import satline
        >>> unit = satline.rig.Unit("R-410A", "fixed-orifice", 10_550.0)
        >>> table = unit.run(60.0)
        >>> len(table["time_s"]), bool(table["suction_pressure_pa"][60] < table["suction_pressure_pa"][0])
        (61, True)
        """
        first = self._inputs(
            outdoor_dry_bulb_k, return_dry_bulb_k, return_wet_bulb_k, ambient_pressure_pa, faults, charging_kg_s, calls
        )
        check_duration(seconds, step_s)
        changes = changes_in_time(first, schedule)
        instruments = ("exact" if sensors is None else sensors, seed)
        motion = _native.RigMotion(self._unit, self._settled(start), first.given(), instruments)
        columns = motion.run(seconds, step_s, first.given(), changes, sensors is not None)
        return {name: np.asarray(column) for name, column in columns.items()}

    def stepper(
        self,
        start: Literal["rest", "settled"] = "rest",
        *,
        outdoor_dry_bulb_k: float = _RATING_K[0],
        return_dry_bulb_k: float = _RATING_K[1],
        return_wet_bulb_k: float = _RATING_K[2],
        ambient_pressure_pa: float = _STANDARD_PA,
        faults: Mapping[str, float] | None = None,
        charging_kg_s: float = 0.0,
        calls: bool = True,
        sensors: Literal["usual", "exact"] = "usual",
        seed: int = 0,
    ) -> Stepper:
        """The unit step by step, for hardware in the loop; arguments as of run().

        >>> import satline
        >>> stepper = satline.rig.Unit("R-410A", "thermostatic-valve", 10_550.0).stepper()
        >>> stepper.step(1.0).runs, stepper.step(1.0, {"calls": False}).runs
        (True, False)
        """
        first = self._inputs(
            outdoor_dry_bulb_k, return_dry_bulb_k, return_wet_bulb_k, ambient_pressure_pa, faults, charging_kg_s, calls
        )
        return Stepper(self._unit, self._nameplate, first, self._settled(start), sensors, seed)

    @staticmethod
    def _inputs(
        outdoor_dry_bulb_k: float,
        return_dry_bulb_k: float,
        return_wet_bulb_k: float,
        ambient_pressure_pa: float,
        faults: Mapping[str, float] | None,
        charging_kg_s: float,
        calls: bool,
    ) -> Inputs:
        air = (outdoor_dry_bulb_k, return_dry_bulb_k, return_wet_bulb_k, ambient_pressure_pa)
        return Inputs(*air, dict(faults or {}), charging_kg_s, calls)

    @staticmethod
    def _settled(start: str) -> bool:
        if start not in ("rest", "settled"):
            raise UnknownChoiceError(f"start of {start!r} is not a choice: use rest or settled", field="start", value=start)
        return start == "settled"


Unit.__module__ = "satline.rig"
