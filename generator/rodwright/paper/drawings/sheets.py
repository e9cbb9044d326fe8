"""Which drawings a unit needs, and what stands on which sheet; mm, unit frame."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field
from functools import partial
from math import ceil
from types import MappingProxyType

from rodwright.lengths import LengthUnit
from rodwright.paper.drawings.bays import Bay, bays
from rodwright.paper.drawings.choice import cutting_planes
from rodwright.paper.drawings.cutting_planes import CuttingPlane
from rodwright.paper.drawings.details import detail_views
from rodwright.paper.drawings.elevations import (
    carcass_view,
    front_view,
    is_closed,
    overview,
    plan_view,
    side_view,
)
from rodwright.paper.drawings.opening_view import opening_view
from rodwright.paper.drawings.section_views import section_view
from rodwright.pictures.drafting.views import View
from rodwright.unit import Unit

READABLE: Mapping[LengthUnit, int] = MappingProxyType({"mm": 20, "in": 16})
"""Large enough to tell the two faces of a board, which are some 18 mm apart."""
_OVERVIEW: Mapping[LengthUnit, int] = MappingProxyType({"mm": 50, "in": 48})
"""Large enough for main sizes alone."""
_CLEARER: Mapping[LengthUnit, int] = MappingProxyType({"mm": 10, "in": 8})
"""Large enough to tell the faces of a drawer's sides and of a back."""
_LARGE: Mapping[LengthUnit, int] = MappingProxyType({"mm": 2, "in": 2})

_LONGEST_FRONT, _LONGEST_PLAN = 3000.0, 5000.0
"""No page holds longer stretches (mm) at a scale at which they can be read: standing, and lying."""
_MORE = 4
"""So many divisions are tried before what doesn't fit is drawn smaller."""


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
    scale: Mapping[LengthUnit, int] = field(default_factory=lambda: READABLE)


Fits = Callable[[View], bool]
"""Whether a view comes on paper at a scale at which it can be read."""


def sheets_of(unit: Unit, fits: Fits = lambda _: True) -> tuple[SheetOfViews, ...]:
    """All drawings of a unit, in their order; views that don't fit are made in stretches."""
    return tuple(_sheets(unit, fits))


def _sheets(unit: Unit, fits: Fits) -> Iterator[SheetOfViews]:
    planes = cutting_planes(unit)
    closed = is_closed(unit)
    fronts = _in_stretches(
        unit, lambda bay: front_view(unit, () if closed else planes, bay), fits, _LONGEST_FRONT
    )
    front, scale = (fronts[0], READABLE) if len(fronts) == 1 else (overview(unit), _OVERVIEW)
    general = (front, side_view(unit), plan_view(unit))
    yield SheetOfViews("general", "Front, side and plan", general, projected=True, scale=scale)
    if len(fronts) > 1:
        yield SheetOfViews("front", "Front", fronts)
    first_of = {plane.axis: plane for plane in reversed(planes)}
    sections = {
        plane: section_view(unit, plane, cut_round=first_of[plane.axis] is plane)
        for plane in planes
    }
    upright = [view for plane, view in sections.items() if plane.axis == 0]
    level = [
        _level(unit, plane, section, fits) for plane, section in sections.items() if plane.axis == 2
    ]
    first = [*upright[:1], *(level[0] if level else ())]
    if closed:
        make = partial(carcass_view, unit, planes)
        first[:0] = _in_stretches(unit, make, fits, _LONGEST_FRONT)
    if first:
        three = closed and len(first) == 3
        title = "Carcass and sections" if closed else "Sections"
        yield SheetOfViews("sections", title, tuple(first), three, _CLEARER)
    more = (*upright[1:], *(view for views in level[1:] for view in views))
    if more:
        yield SheetOfViews("more-sections", "More sections", more, scale=_CLEARER)
    yield from _details(unit, sections)
    opening = opening_view(unit, front)
    if opening is not None:
        yield SheetOfViews("opening", "In the opening", (opening,))


def _level(unit: Unit, plane: CuttingPlane, whole: View, fits: Fits) -> tuple[View, ...]:
    """A level section, whole or in stretches; what is cut out is told in the whole one alone."""

    def make(bay: Bay) -> View:
        return whole if bay.count == 1 else section_view(unit, plane, bay)

    return _in_stretches(unit, make, fits, _LONGEST_PLAN)


def _details(unit: Unit, sections: Mapping[CuttingPlane, View]) -> Iterator[SheetOfViews]:
    """Corners of the first upright section and of the first level one."""
    first: dict[int, tuple[CuttingPlane, View]] = {}
    for plane, section in sections.items():
        first.setdefault(plane.axis, (plane, section))
    details = [
        view for plane, section in first.values() for view in detail_views(unit, section, plane)
    ]
    if details:
        yield SheetOfViews("details", "Details", tuple(details), scale=_LARGE)


def _in_stretches(
    unit: Unit, make: Callable[[Bay], View], fits: Fits, longest: float
) -> tuple[View, ...]:
    """A view of the whole unit, or of as few stretches as fit."""
    fewest = max(1, ceil(unit.envelope.size[0] / longest))
    for count in range(fewest, fewest + _MORE):
        stretches = bays(unit, count)
        views = tuple(make(bay) for bay in stretches)
        if len(stretches) < count or all(fits(view) for view in views):
            break
    return views
