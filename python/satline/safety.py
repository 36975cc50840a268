"""What keeps people from harm: room limits, cylinders, recovery levels and cautions.

Every answer states its rule and what it takes for granted; where a rule is not for the case it says so instead of giving
a number. All of it defers to local codes and licensed practice: editions differ, and the authority on the spot decides.
"""

from __future__ import annotations

import dataclasses
from collections.abc import Sequence
from typing import Literal, overload

from . import _native
from ._native import Refrigerant
from ._typing import Array, Floats, Number

__all__ = [
    "CylinderFill",
    "RecoveryLevel",
    "RoomLimit",
    "cautions",
    "cylinder_fill",
    "largest_charge_kg",
    "recovery_level",
    "room_limit",
    "smallest_area_m2",
]


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class RoomLimit:
    """How much a room may hold, with its rule. str() says it in plain words."""

    refrigerant: Refrigerant
    """The refrigerant."""
    outcome: Literal["room-limit", "no-room-limit", "not-applicable"]
    """Whether the rule gives a limit."""
    reason: str
    """Why."""
    clause: str
    """Where the rule stands."""
    assumptions: tuple[str, ...]
    """What the answer takes for granted: where one of these fails, so does the answer."""
    lower_flammability_limit_kg_m3: float | None
    """The lower flammability limit used."""
    height_m: float
    """The height above the floor at which refrigerant would come out."""
    m1_kg: float | None
    """Up to it no room is too small by this clause. None where the standard's bands are not for the refrigerant."""
    m2_kg: float | None
    """Up to it the formula for unventilated rooms applies."""
    m3_kg: float | None
    """Above it not indoors."""
    area_m2: float | None
    """The area given."""
    charge_kg: float | None
    """The charge given."""
    largest_charge_kg: float | None
    """The most that this room may hold by the formula."""
    smallest_area_m2: float | None
    """The smallest room for this charge by the formula."""
    within_limit: bool | None
    """Whether the charge is within the limit of the room, where both are given and the clause judges them."""
    concentration_kg_m3: float | None
    """The charge spread evenly over the room, for information: not a rule of the clause."""
    share_of_flammability_limit: float | None
    """That over the lower flammability limit."""
    exceeds_quarter: bool | None
    """Whether that is more than a quarter."""
    concentration_height_m: float | None
    """The height to which it is spread."""

    def __str__(self) -> str:
        lines = [f"{self.refrigerant.designation}, unit at {self.height_m:g} m: {self.outcome}", self.reason]
        if self.largest_charge_kg is not None and self.area_m2 is not None:
            lines.append(f"largest charge for {self.area_m2:g} m2: {self.largest_charge_kg:.2f} kg")
        if self.smallest_area_m2 is not None and self.charge_kg is not None:
            lines.append(f"smallest room for {self.charge_kg:g} kg: {self.smallest_area_m2:.1f} m2")
        if self.within_limit is not None:
            lines.append("the charge is within this limit" if self.within_limit else "the charge is too much for this room")
        if self.m1_kg is not None and self.m2_kg is not None and self.m3_kg is not None:
            lines.append(f"m1 {self.m1_kg:.3f} kg, m2 {self.m2_kg:.2f} kg, m3 {self.m3_kg:.1f} kg")
        if self.share_of_flammability_limit is not None:
            lines.append(
                f"spread evenly up to {self.concentration_height_m:g} m: {100 * self.share_of_flammability_limit:.0f} % "
                "of the lower flammability limit" + (", more than a quarter" if self.exceeds_quarter else "")
            )
        lines.append(self.clause)
        lines.extend(self.assumptions)
        return "\n".join(lines)


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class CylinderFill:
    """How much a cylinder may hold. str() says it in plain words."""

    candidates: tuple[Refrigerant, ...]
    """What is, or may be, inside; the lightest liquid among them decides."""
    volume_m3: float
    """Volume inside."""
    eighty_percent_kg: float
    """The most by the rule of 80 % of the water capacity times the specific gravity at 77 degF (AHRI Guideline K)."""
    liquid_full_kg: float
    """The mass whose liquid fills the cylinder at the highest temperature."""
    limit_kg: float
    """The lesser of the two: the limit."""
    rule: str
    """Which of the two it is."""
    scale_limit_kg: float | None
    """What a scale shows at the limit, where the tare is given."""
    highest_temperature_k: float
    """The highest temperature that the cylinder may meet."""
    full_at_limit_k: float
    """Temperature at which a cylinder filled to the limit is full of liquid."""
    full_at_limit_is_at_least: bool
    """The density curve ends there, near the critical point: full at this temperature at the earliest."""
    margin_at_limit_k: float
    """That temperature less the highest."""
    contents_kg: float | None
    """The mass inside."""
    verdict: Literal["room-left", "overfilled", "full-of-liquid"] | None
    """How the contents compare with the limit, where they are given."""
    advice: str | None
    """What to do."""
    room_left_kg: float | None
    """Limit less contents: negative where it is overfilled."""
    full_k: float | None
    """Temperature at which the present contents fill the cylinder with liquid."""
    full_is_at_least: bool | None
    """As full_at_limit_is_at_least."""
    margin_k: float | None
    """That less the highest temperature: negative where the cylinder would burst before."""
    margin_now_k: float | None
    """That less the cylinder's temperature now, where it is given."""
    cautions: tuple[str, ...]
    """What can hurt."""

    def __str__(self) -> str:
        names = " or ".join(refrigerant.designation for refrigerant in self.candidates)
        lines = [f"{names}: at most {self.limit_kg:.2f} kg", self.rule]
        if self.scale_limit_kg is not None:
            lines.append(f"stop when the scale shows {self.scale_limit_kg:.2f} kg")
        at_least = "at least " if self.full_at_limit_is_at_least else ""
        lines.append(
            f"filled to that, full of liquid at {at_least}{self.full_at_limit_k - 273.15:.1f} degC, "
            f"{self.margin_at_limit_k:.1f} K above the highest temperature of {self.highest_temperature_k - 273.15:.1f} degC"
        )
        if self.verdict is not None and self.room_left_kg is not None and self.full_k is not None:
            at_least = "at least " if self.full_is_at_least else ""
            lines.append(f"{self.contents_kg:.2f} kg inside: {self.verdict}, {self.room_left_kg:+.2f} kg to the limit")
            lines.append(f"with that, full of liquid at {at_least}{self.full_k - 273.15:.1f} degC")
        if self.advice is not None:
            lines.append(self.advice)
        lines.extend(self.cautions)
        return "\n".join(lines)


@dataclasses.dataclass(frozen=True, kw_only=True, slots=True)
class RecoveryLevel:
    """How far an appliance is evacuated by recovery. str() says it in plain words."""

    refrigerant: Refrigerant
    """The refrigerant."""
    appliance_class: Literal["low-pressure", "medium-pressure", "high-pressure", "very-high-pressure"]
    """Class by the pressure of the liquid at 104 degF (40 CFR 82.152; boundaries from memory)."""
    pressure_at_104_f_pa: float | None
    """That pressure; None above or next to the critical temperature."""
    is_large: bool
    """Whether the charge is 200 lb or more."""
    vacuum_in_hg: float | None
    """The level as the rule states it: inches of mercury below the standard atmosphere. None where it states an absolute
    pressure, for low-pressure appliances."""
    pressure_pa: float
    """The level, absolute."""
    gauge_pa: float
    """What a gauge shows that reads zero in the air here: negative is a vacuum."""
    notes: tuple[str, ...]
    """What to know besides, exceptions among it."""

    def __str__(self) -> str:
        stated = "25 mm Hg absolute" if self.vacuum_in_hg is None else f"{self.vacuum_in_hg:g} inHg vacuum"
        return "\n".join([
            f"{self.refrigerant.designation}, {self.appliance_class} appliance: {stated}",
            f"{self.pressure_pa / 1e3:.1f} kPa absolute, {self.gauge_pa / 1e3:+.1f} kPa on a gauge here",
            *self.notes,
        ])  # fmt: skip


@overload
def largest_charge_kg(refrigerant: Refrigerant | str, area_m2: Number, height_m: Number) -> float: ...
@overload
def largest_charge_kg(refrigerant: Refrigerant | str, area_m2: Array, height_m: Number | Array) -> Floats: ...
@overload
def largest_charge_kg(refrigerant: Refrigerant | str, area_m2: Number, height_m: Array) -> Floats: ...
def largest_charge_kg(
    refrigerant: Refrigerant | str, area_m2: Number | Array, height_m: Number | Array
) -> float | Floats:
    """Largest charge in kilograms of a flammable refrigerant that an unventilated room may hold.

    IEC 60335-2-40, annex GG, as widely quoted: 2.5 LFL**1.25 h sqrt(area), for charges above m1 and up to m2. area_m2: the
    floor of the one room. height_m: above the floor at which refrigerant would come out: floor 0.6, window 1.0, wall 1.8,
    ceiling 2.2. Numbers give a float, arrays an array.

    Where the formula is not for the case NotAvailableError says why: the refrigerant does not burn or its limit is not
    known, or the room would hold less than m1 or more than m2. room_limit says more: clause, assumptions, bands. It is no
    permit; the unit's label and the local code decide.

    >>> import satline
    >>> round(satline.safety.largest_charge_kg("R-32", 20.0, 2.2), 2)
    5.62
    """
    return _native.largest_charge_kg(_known(refrigerant), area_m2, height_m)


@overload
def smallest_area_m2(refrigerant: Refrigerant | str, charge_kg: Number, height_m: Number) -> float: ...
@overload
def smallest_area_m2(refrigerant: Refrigerant | str, charge_kg: Array, height_m: Number | Array) -> Floats: ...
@overload
def smallest_area_m2(refrigerant: Refrigerant | str, charge_kg: Number, height_m: Array) -> Floats: ...
def smallest_area_m2(
    refrigerant: Refrigerant | str, charge_kg: Number | Array, height_m: Number | Array
) -> float | Floats:
    """Smallest floor area in square metres of an unventilated room for a charge of a flammable refrigerant.

    The same formula as largest_charge_kg, solved for the area. A charge up to m1 needs no smallest room by this clause,
    and one above m2 is for other clauses: both raise NotAvailableError, which says why.

    >>> import satline
    >>> round(satline.safety.smallest_area_m2("R-454B", 3.0, 1.8), 1)
    9.2
    """
    return _native.smallest_area_m2(_known(refrigerant), charge_kg, height_m)


def room_limit(
    refrigerant: Refrigerant | str,
    *,
    area_m2: float | None = None,
    charge_kg: float | None = None,
    height_m: float | None = None,
    installation: Literal["floor", "window", "wall", "ceiling"] | None = None,
    ceiling_height_m: float | None = None,
    ventilated: bool = False,
) -> RoomLimit:
    """How much of a flammable refrigerant a room may hold, how small it may be, and whether a charge fits.

    Give the area, the charge or both, and either the height at which refrigerant would come out or the installation
    (floor 0.6 m, window 1.0, wall 1.8, ceiling 2.2). The rule is that of IEC 60335-2-40, annex GG, for unventilated
    rooms, as widely quoted. Where it is not for the case nothing is raised: the outcome is "not-applicable", with its
    reason. With area and charge, the concentration of the charge spread evenly up to the ceiling (2.2 m if not given) is
    compared with a quarter of the lower flammability limit, for information.

    >>> import satline
    >>> found = satline.safety.room_limit("R-454B", area_m2=9.0, charge_kg=3.0, installation="wall")
    >>> found.outcome, found.within_limit, round(found.smallest_area_m2, 1)
    ('room-limit', False, 9.2)
    """
    known = _known(refrigerant)
    if (height_m is None) == (installation is None):
        raise TypeError("give height_m or installation, one of the two")
    if area_m2 is None and charge_kg is None:
        raise TypeError("give area_m2, charge_kg or both")
    if height_m is None:
        height_m = _native.installation_height_m(str(installation))
    parts = _native.room_limit_parts(known, height_m, (area_m2, charge_kg), ceiling_height_m, ventilated)
    assumptions = tuple(parts.pop("assumptions"))
    return RoomLimit(refrigerant=known, area_m2=area_m2, charge_kg=charge_kg, assumptions=assumptions, **parts)


def cylinder_fill(
    refrigerant: Refrigerant | str | Sequence[Refrigerant | str],
    water_capacity_kg: float,
    *,
    tare_kg: float | None = None,
    contents_kg: float | None = None,
    scale_kg: float | None = None,
    temperature_k: float | None = None,
    highest_temperature_k: float | None = None,
) -> CylinderFill:
    """How much a cylinder may hold, and how its contents compare.

    Two limits stand side by side: 80 % of the water capacity times the specific gravity at 77 degF (AHRI Guideline K), and
    the mass whose liquid would fill the cylinder at the highest temperature it may meet (130 degF if not given). The
    lesser is the limit. Where it is not known what is inside, give every refrigerant that may be: the lightest liquid
    decides. Contents are given as such, or as what the scale shows together with the tare. The tolerance of scale and
    stamp is not counted: stop short by as much.

    NotAvailableError where there is no liquid, or almost none, at 130 degF, as with R-744: such cylinders are filled by
    the ratio stamped on them. A cylinder must be rated for the refrigerant; filling is for certified people.

    >>> import satline
    >>> found = satline.safety.cylinder_fill("R-410A", 21.6, tare_kg=12.7, scale_kg=25.0)
    >>> found.verdict, round(found.limit_kg, 1), round(found.room_left_kg, 1)
    ('room-left', 18.3, 6.0)
    """
    several = [refrigerant] if isinstance(refrigerant, (Refrigerant, str)) else list(refrigerant)
    known = [_known(one) for one in several]
    if scale_kg is not None:
        if tare_kg is None or contents_kg is not None:
            raise TypeError("scale_kg needs tare_kg, and stands in place of contents_kg")
        contents_kg = _native.cylinder_contents_kg(scale_kg, tare_kg)
    parts = _native.cylinder_fill_parts(
        known, water_capacity_kg, (tare_kg, contents_kg), (temperature_k, highest_temperature_k)
    )
    inside = known[0] if len(known) == 1 else None
    return CylinderFill(
        candidates=tuple(known),
        contents_kg=contents_kg,
        cautions=tuple(_native.caution_sentences(inside, "cylinder")),
        **parts,
    )


def recovery_level(
    refrigerant: Refrigerant | str, charge_kg: float, *, ambient_pressure_pa: float = 101_325.0
) -> RecoveryLevel:
    """How far an appliance is evacuated by recovery before it is opened or given up.

    40 CFR 82.156, table 1, for recovery equipment made on or after 15 November 1993, and classes of 40 CFR 82.152 (from
    memory). charge_kg: the appliance's full charge. ambient_pressure_pa: of the air at the gauge. Read the rule: it has
    exceptions, named in the notes, and local law may be stricter.

    >>> import satline
    >>> found = satline.safety.recovery_level("R-134a", 3.0)
    >>> found.appliance_class, found.vacuum_in_hg, round(found.pressure_pa)
    ('medium-pressure', 10.0, 67461)
    """
    known = _known(refrigerant)
    parts = _native.recovery_level_parts(known, charge_kg, ambient_pressure_pa)
    return RecoveryLevel(refrigerant=known, notes=tuple(parts.pop("notes")), **parts)


def cautions(
    refrigerant: Refrigerant | str | None,
    situation: Literal[
        "charging", "recovering", "pressure-test", "opening-circuit", "leak-search", "cylinder", "measuring"
    ],
) -> tuple[str, ...]:
    """What can hurt when working with a refrigerant (None where it is not known what is inside), most urgent first.

    >>> import satline
    >>> satline.safety.cautions("R-290", "leak-search")[0][:37]
    'This refrigerant burns and explodes: '
    """
    known = None if refrigerant is None else _known(refrigerant)
    return tuple(_native.caution_sentences(known, situation))


def _known(refrigerant: Refrigerant | str) -> Refrigerant:
    return refrigerant if isinstance(refrigerant, Refrigerant) else _native.refrigerant(refrigerant)
