"""Operations of finishing, and the coats that they are of: from the areas of parts."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.making.finishing import finished_areas
from rodwright.quote.tally import Count
from rodwright.trade.finishes import OF_KIND, Coat
from rodwright.unit import Unit
from rodwright.unit.finish import Finish


@dataclass(frozen=True, slots=True)
class Coated:
    """So many m2 of one finish, on all that is ever seen, and its coats in their order."""

    finish: Finish
    area: float
    coats: tuple[Coat, ...]


def coated(unit: Unit) -> tuple[Coated, ...]:
    """What is finished, by the finish that was chosen.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    return tuple(
        Coated(finish, sum(each.whole for each in areas), OF_KIND[finish.kind].coats)
        for finish, areas in finished_areas(unit).items()
    )


def finished(unit: Unit) -> Iterator[Count]:
    """Sanding of all that gets a finish, and every coat of it; what stays bare isn't sanded."""
    finishes = coated(unit)
    yield "sanding", sum(each.area for each in finishes)
    for each in finishes:
        for coat in each.coats:
            yield coat.what, each.area * coat.coats
