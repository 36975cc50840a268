"""The charge by the scale, leaks by what had to be added, and recovery; users find them in satline.visit."""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import Any, Literal

from . import _native
from ._lineset_charge import LineSetCharge
from ._native import Refrigerant
from ._uncertain import Measured, Uncertain, maybe, one
from .safety import CylinderFill, cylinder_fill

_POUND = 0.45359237


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class ChargeAccount:
    """What a unit holds by the scale against what it should hold. str() says it in plain words."""

    expected_kg: Uncertain
    """What should be inside."""
    inside_kg: Uncertain | None
    """What is inside; None where it is not known what was there before."""
    deviation_kg: Uncertain | None
    """Inside less expected."""
    deviation: Uncertain | None
    """The same as a share of the expected mass."""
    balance: Literal["unknown", "right", "short", "over", "too-uncertain"]
    """How they compare, uncertainty allowed for."""
    advice: str
    """What follows."""
    cautions: tuple[str, ...]
    """What can hurt."""

    def reading_fields(self) -> dict[str, Any]:
        """Expected and weighed charge, with their limits of error, as fields of a Reading.

        >>> import satline
        >>> account = satline.visit.charge_account((2.72, 0.02), (0.73, 0.03), start_kg=0.0, weighings_kg=[(3.1, 0.01)])
        >>> satline.Reading(refrigerant="R-454B", **account.reading_fields()).weighed_charge_kg
        3.1
        """
        known = {"expected_charge_kg": self.expected_kg, "weighed_charge_kg": self.inside_kg}
        given = {name: mass for name, mass in known.items() if mass is not None}
        # A reading holds limits of error: it divides them by the square root of 3 again.
        limits = {name: {"absolute": 3.0**0.5 * mass.standard_uncertainty} for name, mass in given.items()}
        return {**{name: mass.value for name, mass in given.items()}, "uncertainty": limits}

    def __str__(self) -> str:
        lines = [f"by the scale: {self.balance}", f"should hold {_mass(self.expected_kg)}"]
        if self.inside_kg is not None:
            lines.append(f"holds {_mass(self.inside_kg)}")
        if self.deviation_kg is not None:
            share = "" if self.deviation is None else f", {_percent(self.deviation, '+')}"
            lines.append(f"difference {_mass(self.deviation_kg, '+')}{share}")
        return "\n".join([*lines, self.advice, *self.cautions])


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class LeakRate:
    """How fast a unit leaks, by what had to be added. str() says it in plain words."""

    days: float
    """From the first to the last addition."""
    lost_kg: Uncertain
    """What was added after the first, which only made the charge right."""
    kg_a_year: Uncertain
    """Mass lost in a year at this rate."""
    share_a_year: Uncertain
    """The same as a share of the full charge."""
    last_share_a_year: float
    """The last addition alone over the days since the one before, at most a year of them, as a share of the full charge a
    year: the annualizing method of 40 CFR 82.152 (from memory: read the rule)."""

    def __str__(self) -> str:
        return "\n".join([
            f"lost {_mass(self.lost_kg)} in {self.days:.0f} days",
            f"a year: {_mass(self.kg_a_year)}, {_percent(self.share_a_year)} of the full charge",
            f"by the last addition alone: {100.0 * self.last_share_a_year:.1f} % a year",
            "Find the leak and have it repaired before adding more. Which rates oblige to repair, and how soon, is in the rule "
            "that holds where the unit stands.",
        ])  # fmt: skip


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class RecoveryAccount:
    """Whether the cylinder has room, and whether all came out. str() says it in plain words."""

    cylinder: CylinderFill
    """The cylinder before: its limit, and at which temperature it would be full of liquid."""
    cylinder_after: CylinderFill | None
    """The same after, where it was weighed again."""
    expected_kg: Uncertain
    """What the unit is expected to hold."""
    room_kg: Uncertain
    """Room in the cylinder before; negative where it is overfilled already."""
    room: Literal["enough", "barely", "too-little", "full"]
    """Whether what is expected goes in, uncertainty allowed for."""
    room_advice: str
    """What follows."""
    excess_kg: float
    """What does not go in and needs another cylinder."""
    recovered_kg: Uncertain | None
    """What came out."""
    deviation_kg: Uncertain | None
    """Recovered less expected."""
    room_after_kg: float | None
    """Room in the cylinder after; negative where it is overfilled."""
    balance: Literal["not-yet", "all", "short", "more", "too-uncertain"]
    """How recovered and expected mass compare, uncertainty allowed for."""
    advice: str
    """What follows."""
    cautions: tuple[str, ...]
    """What can hurt."""

    def __str__(self) -> str:
        names = " or ".join(refrigerant.designation for refrigerant in self.cylinder.candidates)
        lines = [
            f"{names}: expected {_mass(self.expected_kg)}, room {_mass(self.room_kg)}: {self.room}",
            self.room_advice,
        ]
        if self.cylinder.scale_limit_kg is not None:
            lines.append(
                f"stop when the scale shows {self.cylinder.scale_limit_kg:.2f} kg ({self.cylinder.scale_limit_kg / _POUND:.1f} lb)"
            )
        if self.excess_kg > 0.0:
            lines.append(f"a second cylinder for {self.excess_kg:.2f} kg ({self.excess_kg / _POUND:.1f} lb)")
        if self.recovered_kg is not None and self.deviation_kg is not None and self.room_after_kg is not None:
            lines.append(f"came out: {_mass(self.recovered_kg)}, {_mass(self.deviation_kg, '+')}: {self.balance}")
            lines.append(f"room left: {self.room_after_kg:+.2f} kg ({self.room_after_kg / _POUND:+.1f} lb)")
        after = self.cylinder_after
        if after is not None and after.full_k is not None and after.advice is not None:
            or_above = " or above" if after.full_is_at_least else ""
            full = f"{after.full_k - 273.15:.0f} degC ({1.8 * after.full_k - 459.67:.0f} degF)"
            lines.append(f"as it is now, full of liquid at {full}{or_above}: {after.verdict}")
            if after.verdict != "room-left":
                lines.append(after.advice)
        return "\n".join([*lines, self.advice, *self.cautions])


def expected_charge(
    nameplate_kg: Measured, line_set_kg: Measured | LineSetCharge = 0.0, accessories_kg: Measured = 0.0
) -> Uncertain:
    """What a unit should hold, kilograms: its nameplate, what the line set holds beyond the length that it covers (negative
    where it is shorter), driers and accessories. Each may be a tuple of value and standard uncertainty.

    line_set_kg may be what satline.lineset.line_set_charge gave: its accessories are in it then, so give each once. The
    unit's own label comes first.

    >>> import satline
    >>> print(satline.visit.expected_charge((2.72, 0.02), (0.73, 0.03)))
    3.450 ± 0.036
    """
    return Uncertain(*_native.expected_charge(_parts(nameplate_kg, line_set_kg, accessories_kg)))


def charge_account(
    nameplate_kg: Measured,
    line_set_kg: Measured | LineSetCharge = 0.0,
    accessories_kg: Measured = 0.0,
    *,
    weighings_kg: Sequence[Measured],
    start_kg: Measured | None = None,
    refrigerant: Refrigerant | str | None = None,
    scale_share: float | None = None,
    tolerance: float | None = None,
) -> ChargeAccount:
    """Compares what a unit holds by the scale with what it should hold (see expected_charge).

    weighings_kg: above zero what was added, below zero what was recovered, each with the standard uncertainty that is its
    own (the scale's step, hoses). start_kg: what was inside before, 0 after an evacuation, None where it is not known: then
    the scale cannot say what is inside. scale_share: standard uncertainty that all weighings share, as a share of the mass
    (a limit of error of 0.5 % if not given, common practice). tolerance: how far the two may be apart, as a share of the
    expected mass (0.05 if not given, common practice). With the refrigerant the cautions are its own.

    ChargeAccount.reading_fields puts the result in a Reading. Work on refrigerant is for licensed people under the local
    codes.

    >>> import satline
    >>> account = satline.visit.charge_account((2.72, 0.02), (0.73, 0.03), start_kg=0.0, weighings_kg=[(3.1, 0.01)])
    >>> account.balance, str(account.deviation_kg)
    ('short', '-0.350 ± 0.038')
    """
    parts = _native.charge_account_parts(
        _parts(nameplate_kg, line_set_kg, accessories_kg),
        maybe(start_kg),
        [one(weighing) for weighing in weighings_kg],
        (scale_share, tolerance),
    )
    if refrigerant is None and isinstance(line_set_kg, LineSetCharge):
        refrigerant = line_set_kg.refrigerant
    known = None if refrigerant is None else _known(refrigerant)
    return ChargeAccount(**_named(parts), cautions=tuple(_native.caution_sentences(known, "charging")))


def leak_rate(full_charge_kg: Measured, additions: Sequence[tuple[float, Measured]]) -> LeakRate:
    """How fast a unit leaks, by what had to be added from time to time.

    additions: pairs of day and mass in kilograms, in the order of time; days count from any beginning. Each addition is
    taken to have made the charge right, and the first begins the account: one alone raises NotAvailableError.

    >>> import satline
    >>> rate = satline.visit.leak_rate(3.45, [(0, 0.5), (200, (0.40, 0.02)), (365, (0.35, 0.02))])
    >>> print(rate.kg_a_year, "kg a year;", rate.share_a_year)
    0.750 ± 0.028 kg a year; 0.2174 ± 0.0082
    """
    parts = _native.leak_rate_parts(one(full_charge_kg), [(float(day), one(mass)) for day, mass in additions])
    return LeakRate(**_named(parts))


def recovery(
    refrigerant: Refrigerant | str | Sequence[Refrigerant | str],
    expected_kg: Measured,
    *,
    water_capacity_kg: float,
    tare_kg: Measured,
    scale_before_kg: Measured,
    scale_after_kg: Measured | None = None,
    temperature_k: float | None = None,
    highest_temperature_k: float | None = None,
    tolerance: float | None = None,
) -> RecoveryAccount:
    """Whether a cylinder has room for what is expected, and, once weighed again, whether all of it came out.

    Where it is not known what will be in the cylinder, as with a mixture, give every refrigerant that it may be: the
    lightest liquid decides how much may go in (see satline.safety.cylinder_fill, which also explains water_capacity_kg and
    the temperatures). A tuple is a value with its standard uncertainty; what the tare may be off cancels in what came out,
    but not in the room. tolerance: how far expected and recovered mass may be apart, as a share of the expected (0.05 if
    not given, common practice).

    Recovery is for certified people under the local codes; a cylinder full of liquid bursts.

    >>> import satline
    >>> found = satline.visit.recovery(
    ...     "R-410A", (3.5, 0.04), water_capacity_kg=21.6, tare_kg=12.7, scale_before_kg=(21.8, 0.01),
    ...     scale_after_kg=(24.6, 0.01))
    >>> found.room, found.balance, str(found.recovered_kg)
    ('enough', 'short', '2.800 ± 0.014')
    """
    expected, tare, before = one(expected_kg), one(tare_kg), one(scale_before_kg)
    after = maybe(scale_after_kg)

    def cylinder(scale: float) -> CylinderFill:
        return cylinder_fill(
            refrigerant,
            water_capacity_kg,
            tare_kg=tare[0],
            scale_kg=scale,
            temperature_k=temperature_k,
            highest_temperature_k=highest_temperature_k,
        )

    first = cylinder(before[0])
    last = None if after is None else cylinder(after[0])
    contents = [None if fill is None else fill.contents_kg for fill in (first, last)]
    inside = (float(contents[0] or 0.0), before[1])
    finally_inside = None if after is None else (float(contents[1] or 0.0), after[1])
    parts = _native.recovery_parts(expected, first.limit_kg, (inside, finally_inside), tolerance)
    if tare[1] > 0.0:
        # Only the room depends on the tare: judged once more with it.
        wide = (inside[0], (before[1] ** 2 + tare[1] ** 2) ** 0.5)
        room = _native.recovery_parts(expected, first.limit_kg, (wide, None), tolerance)
        parts.update({name: room[name] for name in ("room_kg", "room", "room_advice")})
    inside_of_it = first.candidates[0] if len(first.candidates) == 1 else None
    return RecoveryAccount(
        cylinder=first,
        cylinder_after=last,
        expected_kg=Uncertain(*expected),
        cautions=tuple(_native.caution_sentences(inside_of_it, "recovering")),
        **_named(parts),
    )


def _parts(
    nameplate: Measured, line_set: Measured | LineSetCharge, accessories: Measured
) -> tuple[tuple[float, float], tuple[float, float], tuple[float, float]]:
    line = line_set.mass if isinstance(line_set, LineSetCharge) else line_set
    return one(nameplate), one(line), one(accessories)


def _named(parts: dict[str, Any]) -> dict[str, Any]:
    return {name: Uncertain(*value) if isinstance(value, tuple) else value for name, value in parts.items()}


def _known(refrigerant: Refrigerant | str) -> Refrigerant:
    return refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)


def _mass(mass: Uncertain, sign: str = "") -> str:
    pounds, uncertainty = mass.value / _POUND, mass.standard_uncertainty / _POUND
    return f"{mass.value:{sign}.2f} ± {mass.standard_uncertainty:.2f} kg ({pounds:{sign}.2f} ± {uncertainty:.2f} lb)"


def _percent(share: Uncertain, sign: str = "") -> str:
    return f"{100.0 * share.value:{sign}.1f} ± {100.0 * share.standard_uncertainty:.1f} %"
