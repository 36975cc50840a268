"""What a unit of the rig is given while it is followed in time."""

from __future__ import annotations

import dataclasses
from collections.abc import Mapping, Sequence
from typing import Any, Literal, TypeAlias

from . import _native
from ._errors import NotFiniteError, OutOfRangeError, UnknownChoiceError
from ._reading import Reading
from ._rig_state import Moment, Nameplate, make_reading, make_steady

MOST_ROWS = 1_000_000

Changes: TypeAlias = Mapping[str, Any]
"""Inputs by name that hold from some time on: see Unit.run."""

_Given: TypeAlias = tuple[list[float], dict[str, float], float, bool]


@dataclasses.dataclass(frozen=True)
class Inputs:
    """Everything that a unit is given in one step."""

    outdoor_dry_bulb_k: float
    return_dry_bulb_k: float
    return_wet_bulb_k: float
    ambient_pressure_pa: float
    faults: Mapping[str, float]
    charging_kg_s: float
    calls: bool

    def changed(self, changes: Changes) -> Inputs:
        """With changes; faults that are not named stay as they are."""
        names = [field.name for field in dataclasses.fields(self)]
        for name in changes:
            if name not in names:
                message = f"{name!r} is not an input: use {', '.join(names)}"
                raise UnknownChoiceError(message, field="inputs", value=str(name))
        faults = dict(changes.get("faults") or {})
        for name in ("undercharge", "overcharge"):
            if name in faults:
                message = f"{name!r} cannot change with time: give charging_kg_s, negative for what is taken out"
                raise UnknownChoiceError(message, field="faults", value=name)
        return dataclasses.replace(self, **{**changes, "faults": {**self.faults, **faults}})

    def given(self) -> _Given:
        """For the compiled core."""
        if not isinstance(self.calls, bool):
            raise TypeError(f"calls: True or False is needed, not {type(self.calls).__name__}")
        air = [self.outdoor_dry_bulb_k, self.return_dry_bulb_k, self.return_wet_bulb_k, self.ambient_pressure_pa]
        severities = {name: float(value) for name, value in self.faults.items()}
        return [float(value) for value in air], severities, float(self.charging_kg_s), self.calls


def changes_in_time(first: Inputs, schedule: Sequence[tuple[float, Changes]]) -> list[tuple[float, _Given]]:
    """The inputs from each time of a schedule on."""
    now, made = first, []
    before = 0.0
    for at_s, changes in schedule:
        # Not before the last one, which refuses what is no number too.
        if not at_s >= before:
            message = f"schedule: a change at {at_s} s is not after the one before, at {before} s: sort it by time"
            raise OutOfRangeError(message, quantity="time of a change", unit="s", value=float(at_s), lower=before)
        before, now = float(at_s), now.changed(changes)
        made.append((before, now.given()))
    return made


def check_duration(seconds: float, step_s: float) -> None:
    """Refuses runs that are no time, or more rows than a table should have."""
    quantity, unit, lower, upper = "duration of the run", "s", step_s, MOST_ROWS * step_s
    if seconds != seconds or seconds in (float("inf"), float("-inf")):
        message = f"{quantity} is not a finite number: give seconds from {lower} to {upper}"
        raise NotFiniteError(message, quantity=quantity, unit=unit, lower=lower, upper=upper)
    if step_s > 0.0 and not lower <= seconds <= upper:
        message = f"{quantity} of {seconds} s is outside {lower} to {upper} s: give at least a step, at most a million"
        raise OutOfRangeError(message, quantity=quantity, unit=unit, value=float(seconds), lower=lower, upper=upper)


class Stepper:
    """A unit that is followed step by step, as hardware in the loop needs it; Unit.stepper makes one."""

    def __init__(
        self,
        unit: _native.RigUnit,
        nameplate: Nameplate,
        first: Inputs,
        settled: bool,
        sensors: Literal["usual", "exact"],
        seed: int,
    ) -> None:
        self._nameplate = nameplate
        self._inputs = first
        self._motion = _native.RigMotion(unit, settled, first.given(), (sensors, seed))

    def step(self, dt_s: float, inputs: Changes | None = None) -> Moment:
        """Goes on by a time of 1 ms to 10 s; inputs, as in the schedule of Unit.run, hold from now on.

        A step that raises leaves the unit, and the inputs, as they were.
        """
        next_inputs = self._inputs.changed(inputs or {})
        moment = self._made(self._motion.step(dt_s, next_inputs.given()))
        self._inputs = next_inputs
        return moment

    def moment(self) -> Moment:
        """The unit as it is now."""
        return self._made(self._motion.now())

    def reading(self) -> Reading:
        """What the instruments show now: they lag behind the unit."""
        return make_reading(self._nameplate, *self._motion.reading())

    def _made(self, parts: dict[str, Any]) -> Moment:
        return Moment(**{**parts, "state": make_steady(parts["state"], self._nameplate)})


Stepper.__module__ = "satline.rig"
