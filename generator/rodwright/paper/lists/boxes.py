"""Hardware by the box: what belongs to the carcass, the doors, the drawers and so on, each in a box
of its own, and what to buy of it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import ceil

from rodwright.handover.lists import articles
from rodwright.trade.spare import SPARE, has_spares
from rodwright.unit import TRAITS, Assembly, Fixing, Joint, Unit

LOOSE = "for the whole"
"""The box of what belongs to no part."""
_ORDER = (*Assembly, LOOSE)


@dataclass(frozen=True, slots=True)
class Article:
    """One kind and size of hardware: how many go into which box, and how many to buy.

    ``counts`` are by box, in the order of :attr:`Boxes.names`; ``buy`` is their sum, and of small
    things that get lost or break some more.
    """

    name: str
    size: str
    counts: tuple[int, ...]
    buy: int

    @property
    def count(self) -> int:
        """How many the unit needs."""
        return sum(self.counts)


@dataclass(frozen=True, slots=True)
class Boxes:
    """All hardware: the boxes that there are, and the articles by name and size."""

    names: tuple[str, ...]
    articles: tuple[Article, ...]


def boxes_of(unit: Unit) -> Boxes:
    """The hardware of a unit by the box.

    What holds a joint is in the box of the part that comes to it, as it is then that it is put in:
    a door's hinges are in the doors' box, not in the carcass's.
    """
    gathered: dict[tuple[str, str], dict[str, int]] = {}
    for kind, pieces in articles(unit).items():
        counts = gathered.setdefault(kind, {})
        for fixing, joint in pieces:
            box = _box(unit, fixing, joint)
            counts[box] = counts.get(box, 0) + fixing.count
    used = tuple(box for box in _ORDER if any(box in counts for counts in gathered.values()))
    rows = (_article(*kind, [gathered[kind].get(box, 0) for box in used]) for kind in gathered)
    return Boxes(tuple(map(str, used)), tuple(rows))


def boxes_data(boxes: Boxes) -> dict[str, object]:
    """The list as plain data for its template."""
    return {
        "boxes": list(boxes.names),
        "rows": [
            {
                "name": each.name,
                "size": each.size,
                "counts": list(each.counts),
                "count": each.count,
                "buy": each.buy,
            }
            for each in boxes.articles
        ],
        "spare": round(SPARE * 100),
    }


def _box(unit: Unit, fixing: Fixing, joint: Joint | None) -> str:
    refs = {part.ref for part in unit.parts}
    for ref in (joint.second if joint is not None else "", fixing.on.split(",")[0].strip()):
        if ref in refs:
            return TRAITS[unit.part(ref).role].of
    return LOOSE


def _article(name: str, size: str, counts: Sequence[int]) -> Article:
    count = sum(counts)
    buy = count + ceil(round(SPARE * count, 6)) if has_spares(name) else count
    return Article(name, size, tuple(counts), buy)
