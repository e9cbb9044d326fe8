"""Operations of finishing, and what they use: from the areas of parts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.assembly.finishing import finish_areas, surface_areas
from rodwright.quote.tally import Count
from rodwright.trade.finishes import FINISHES, Coat, takes_finish
from rodwright.unit import Unit
from rodwright.unit.finish import Finish, FinishKind

_NAMES: dict[FinishKind, str] = {
    "oil": "Hardwax oil",
    "lacquer": "Water-based lacquer",
    "paint": "Primer and paint",
}
_STAIN = Coat("stain", 1, (10.0, 15.0), "as the tin says; wiped even, dry before it is lacquered")
"""A stain under its lacquer; a litre covers 10 to 15 m2, from memory."""


@dataclass(frozen=True, slots=True)
class Coated:
    """So many m2 of one finish, and its coats in their order."""

    finish: Finish
    area: float
    coats: tuple[Coat, ...]


def coats_of(kind: FinishKind) -> tuple[Coat, ...]:
    """The coats of a finish; a stain is lacquered over."""
    if kind == "stain":
        return (_STAIN, *coats_of("lacquer"))
    return next(each.coats for each in FINISHES if each.name == _NAMES[kind])


def coated(unit: Unit) -> tuple[Coated, ...]:
    """What is finished, by the finish that was chosen: both faces and all edges of its parts.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    areas: dict[Finish, float] = {}
    for part in unit.parts:
        if part.finish is not None and takes_finish(part.blank.stock.material):
            area = sum(surface_areas(part).values())
            areas[part.finish] = areas.get(part.finish, 0.0) + area
    return tuple(Coated(each, area, coats_of(each.kind)) for each, area in areas.items())


def finished(unit: Unit) -> Iterator[Count]:
    """Sanding of all that takes a finish, and every coat of what gets one."""
    yield "sanding", sum(each.whole for each in finish_areas(unit))
    for each in coated(unit):
        for coat in each.coats:
            yield coat.what, each.area * coat.coats
