"""Which drawings a unit needs, and what stands on which sheet; mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from rodwright.lengths import LengthUnit
from rodwright.paper.drawings.choice import cutting_planes
from rodwright.paper.drawings.details import detail_views
from rodwright.paper.drawings.elevations import (
    carcass_view,
    front_view,
    is_closed,
    plan_view,
    side_view,
)
from rodwright.paper.drawings.opening_view import opening_view
from rodwright.paper.drawings.section_views import section_view
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit

_READABLE: Mapping[LengthUnit, int] = MappingProxyType({"mm": 20, "in": 16})
"""Large enough to tell the two faces of a board, which are some 18 mm apart."""
_CLEARER: Mapping[LengthUnit, int] = MappingProxyType({"mm": 10, "in": 8})
"""Large enough to tell the faces of a drawer's sides and of a back."""
_LARGE: Mapping[LengthUnit, int] = MappingProxyType({"mm": 2, "in": 2})


@dataclass(frozen=True, slots=True)
class SheetOfViews:
    """What stands on one sheet: ``name`` is that of its file, ``title`` what it shows.

    Three ``projected`` views are a front, one from the left and one from above, which stand to each
    other as the method of projection has it; others just stand beside each other.  ``scale`` is
    large enough to read them, in each measure.
    """

    name: str
    title: str
    views: tuple[View, ...]
    projected: bool = False
    scale: Mapping[LengthUnit, int] = field(default_factory=lambda: _READABLE)


def sheets_of(unit: Unit) -> tuple[SheetOfViews, ...]:
    """All drawings of a unit, in their order."""
    return tuple(_sheets(unit))


def _sheets(unit: Unit) -> Iterator[SheetOfViews]:
    planes = cutting_planes(unit)
    sections = {plane: section_view(unit, plane) for plane in planes}
    front = front_view(unit, () if is_closed(unit) else planes)
    general = (front, side_view(unit), plan_view(unit))
    yield SheetOfViews("general", "Front, side and plan", general, projected=True)
    upright = [view for plane, view in sections.items() if plane.axis == 0]
    level = [view for plane, view in sections.items() if plane.axis == 2]
    first = [*upright[:1], *level[:1]]
    if is_closed(unit):
        first.insert(0, carcass_view(unit, planes))
    if first:
        three = len(first) == 3
        title = "Carcass and sections" if is_closed(unit) else "Sections"
        yield SheetOfViews("sections", title, tuple(first), three, _CLEARER)
    more = (*upright[1:], *level[1:])
    if more:
        yield SheetOfViews("more-sections", "More sections", more, scale=_CLEARER)
    details = [
        view for plane, section in sections.items() if section in first
        for view in detail_views(unit, section, plane)
    ]  # fmt: skip
    if details:
        yield SheetOfViews("details", "Details", tuple(details), scale=_LARGE)
    opening = opening_view(unit, front)
    if opening is not None:
        yield SheetOfViews("opening", "In the opening", (opening,))
