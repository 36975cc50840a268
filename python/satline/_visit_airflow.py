"""Airflow by static pressure, and return leakage."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import TYPE_CHECKING, Literal

from . import _native
from ._uncertain import Measured, Uncertain, each, maybe, one

if TYPE_CHECKING:
    _Outcome = Literal["within", "above", "cannot-tell", "contradicts"]


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class FanPoint:
    """What a fan does at a state of operation."""

    airflow_m3_s: Uncertain
    """Airflow."""
    pressure_pa: Uncertain
    """Pressure rise."""
    power_w: Uncertain
    """Shaft power; electric power follows only as far as the motor's efficiency stays."""

    def __str__(self) -> str:
        return f"{self.airflow_m3_s} m3/s at {self.pressure_pa} Pa, {self.power_w} W"


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class FanPower:
    """Fan power for the air it moves, against a limit. str() says it in plain words."""

    watts_per_m3_s: Uncertain
    """Watts for each cubic metre a second."""
    watts_per_cfm: Uncertain
    """Watts for each cubic foot a minute."""
    limit_watts_per_cfm: float
    """The limit."""
    outcome: _Outcome
    """How it compares, uncertainty allowed for."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        lines = [f"fan power {self.watts_per_cfm} W/cfm, limit {self.limit_watts_per_cfm:g}: {self.outcome}"]
        return "\n".join([*lines, *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class AirResistance:
    """The resistance of a filter or coil against what it was when clean. str() says it in plain words."""

    resistance_ratio: Uncertain
    """Pressure drop over the airflow's square, over the same when clean."""
    airflow_ratio: Uncertain
    """Airflow that the part passes at the same pressure drop, over that when clean; the system loses less."""
    outcome: _Outcome
    """"above" means dirty."""
    airflow_assumed: bool
    """Whether the airflow was taken to be the same as when clean: the resistance is then at least what is said."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        words = {"above": "dirty: clean or change it", "within": "not yet due", "cannot-tell": "too near the limit to tell"}
        least = "at least " if self.airflow_assumed else ""
        lines = [f"resistance {least}{self.resistance_ratio} times that when clean: {words[self.outcome]}"]
        return "\n".join([*lines, *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class ReturnLeakage:
    """The share of the air at the unit that leaked into the return. str() says it in plain words."""

    fraction: Uncertain
    """Leaked over all air, by mass."""
    outcome: _Outcome
    """Against the limit; "contradicts" where the mixed air lies outside the two others."""
    cautions: tuple[str, ...]
    """What can hurt, or mislead."""

    def __str__(self) -> str:
        percent = Uncertain(100 * self.fraction.value, 100 * self.fraction.standard_uncertainty)
        return "\n".join([f"return leakage {percent} % of the airflow: {self.outcome}", *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True, init=False)
class BlowerTable:
    """A maker's blower table: airflow in m3/s, or power in W, by external static pressure and speed tap.

    statics_pa: rows, ascending. taps: columns, ascending numbers. cells: one list for each row; None or NaN where the maker
    prints nothing.

    >>> import satline
    >>> table = satline.visit.BlowerTable([25, 50, 75], [1, 2], [[0.45, 0.55], [0.43, 0.53], [None, 0.50]])
    >>> print(table.at((60, 2), 2))
    0.5180 ± 0.0024
    >>> table.at(60, 1) is None
    True
    """

    statics_pa: tuple[float, ...]
    taps: tuple[float, ...]
    cells: tuple[float, ...]
    gives: Literal["airflow", "power"]

    def __init__(
        self,
        statics_pa: Sequence[float],
        taps: Sequence[float],
        cells: Sequence[Sequence[float | None]],
        *,
        gives: Literal["airflow", "power"] = "airflow",
    ) -> None:
        if gives not in ("airflow", "power"):
            raise ValueError("gives is 'airflow' or 'power'")
        flat = [float("nan") if cell is None else float(cell) for row in cells for cell in row]
        object.__setattr__(self, "statics_pa", tuple(float(value) for value in statics_pa))
        object.__setattr__(self, "taps", tuple(float(value) for value in taps))
        object.__setattr__(self, "cells", tuple(flat))
        object.__setattr__(self, "gives", gives)
        if any(len(row) != len(self.taps) for row in cells):
            raise ValueError("give one cell for each tap in every row, None where the table is blank")
        _native.blower_table(list(self.statics_pa), list(self.taps), flat, gives == "power", None)

    def at(self, static_pa: Measured, tap: float) -> Uncertain | None:
        """The table's value between the rows of a tap; None from a blank cell, beyond the table and between taps."""
        return self._look_up(static_pa, tap)[0]

    def why_not(self, static_pa: Measured, tap: float) -> str | None:
        """Why there is no value there, in plain words; None where there is one."""
        return self._look_up(static_pa, tap)[1]

    def _look_up(self, static_pa: Measured, tap: float) -> tuple[Uncertain | None, str | None]:
        statics, taps, cells = list(self.statics_pa), list(self.taps), list(self.cells)
        found, gap = _native.blower_table(statics, taps, cells, self.gives == "power", (one(static_pa), float(tap)))
        return None if found is None else Uncertain(*found), None if gap is None else gap[1]


def airflow_by_plenum_pressure_m3_s(
    measured_m3_s: Measured, operating_pressure_pa: Measured, measured_pressure_pa: Measured
) -> Uncertain:
    """Airflow in operation by plenum matching: Q measured times the root of operating over measured plenum pressure.

    Everything downstream of the supply plenum must be the same both times. Give each as a number, or as a tuple of value
    and standard uncertainty; arrays are broadcast.

    >>> import satline
    >>> print(satline.visit.airflow_by_plenum_pressure_m3_s((0.50, 0.015), (36.0, 0.5), (30.0, 0.5)))
    0.548 ± 0.017
    """
    found: Uncertain = each(
        _native.airflow_by_plenum_pressure, measured_m3_s, operating_pressure_pa, measured_pressure_pa
    )
    return found


def fan_at_speed(
    airflow_m3_s: Measured,
    pressure_pa: Measured,
    power_w: Measured,
    speed_ratio: Measured,
    density_ratio: Measured = 1.0,
) -> FanPoint:
    """The same fan in the same duct at another speed and air density (ratios, new over old), by the fan laws: airflow with
    the speed, pressure with its square and the density, power with its cube and the density.

    >>> import satline
    >>> satline.visit.fan_at_speed(0.5, 125.0, 400.0, 0.8).power_w.value
    204.8
    """
    airflow, pressure, power = each(
        _native.fan_at_speed, airflow_m3_s, pressure_pa, power_w, speed_ratio, density_ratio
    )
    return FanPoint(airflow_m3_s=airflow, pressure_pa=pressure, power_w=power)


def fan_power_per_airflow(
    power_w: Measured, airflow_m3_s: Measured, *, limit_watts_per_cfm: float | None = None
) -> FanPower:
    """Fan power for each unit of airflow, against a limit in W/cfm: 0.58 if not given (California Title 24, 2008 and 2013;
    from memory). Other editions and places have other limits.

    >>> import satline
    >>> satline.visit.fan_power_per_airflow((500, 8), (0.52, 0.02)).outcome
    'within'
    """
    specific, per_cfm, limit, outcome = _native.watts_per_airflow(one(power_w), one(airflow_m3_s), limit_watts_per_cfm)
    return FanPower(
        watts_per_m3_s=Uncertain(*specific),
        watts_per_cfm=Uncertain(*per_cfm),
        limit_watts_per_cfm=limit,
        outcome=outcome,
        cautions=tuple(_native.airflow_cautions()),
    )


def air_resistance(
    drop_pa: Measured,
    clean_drop_pa: Measured,
    *,
    airflow_m3_s: Measured | None = None,
    clean_airflow_m3_s: Measured | None = None,
    limit: float | None = None,
) -> AirResistance:
    """The pressure drop of a filter or coil against the drop when clean.

    With both airflows the comparison is fair; without them the airflow is taken to be the same. limit: resistance over that
    when clean from which the part counts as dirty, 2 if not given (common practice).

    >>> import satline
    >>> found = satline.visit.air_resistance((75, 1.5), (30, 1))
    >>> found.outcome, round(found.airflow_ratio.value, 3)
    ('above', 0.632)
    """
    if (airflow_m3_s is None) != (clean_airflow_m3_s is None):
        raise TypeError("give both airflows, now and when clean, or neither")
    now, clean = maybe(airflow_m3_s), maybe(clean_airflow_m3_s)
    airflows = None if now is None or clean is None else (now, clean)
    ratio, airflow, outcome, assumed = _native.air_resistance(one(drop_pa), one(clean_drop_pa), airflows, limit)
    return AirResistance(
        resistance_ratio=Uncertain(*ratio),
        airflow_ratio=Uncertain(*airflow),
        outcome=outcome,
        airflow_assumed=assumed,
        cautions=tuple(_native.airflow_cautions()),
    )


def return_leakage(
    return_air: Measured, mixed_air: Measured, leaking_air: Measured, *, limit: float | None = None
) -> ReturnLeakage:
    """Return leakage: (mixed - return)/(leaking - return), all three temperatures in kelvin or all three humidity ratios.

    return_air at the grilles, mixed_air at the unit's inlet, leaking_air where the leak draws from. A duct through a hot
    attic also warms its air; humidity ratios see only what leaked. limit: leakage above which there is something to mend,
    0.1 if not given (common practice). Raises NotAvailableError where the leaking air is too like the return air to tell.

    >>> import satline
    >>> print(satline.visit.return_leakage((297.15, 0.3), (300.65, 0.3), (321.15, 0.3)).fraction)
    0.146 ± 0.017
    """
    fraction, outcome = _native.return_leakage(one(return_air), one(mixed_air), one(leaking_air), limit)
    return ReturnLeakage(
        fraction=Uncertain(*fraction), outcome=outcome, cautions=tuple(_native.airflow_cautions())
    )
