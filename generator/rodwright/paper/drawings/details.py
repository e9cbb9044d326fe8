"""Details of sections at a larger scale: corners at the front, the back's joint, the base.

Lengths in mm, in the frame of the section.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from rodwright.geometry import TOUCH
from rodwright.lengths import LengthUnit
from rodwright.paper.drawings.clipping import cuts_within, lines_within
from rodwright.paper.drawings.cutting_planes import CuttingPlane
from rodwright.paper.drawings.refs import cut_notes
from rodwright.paper.drawings.section_views import Pieces, pieces_cut
from rodwright.pictures.drafting.bands import Rectangle
from rodwright.pictures.drafting.chains import Chain, Place, chain, dimensions_of
from rodwright.pictures.drafting.seen import ViewName
from rodwright.pictures.drafting.views import Point, View
from rodwright.unit import DRAWERS, FACE_FRAME, FRONTS, PANELS, Role, Unit

SIDE = 130.0
"""A detail shows so much of the unit each way, mm."""
_IN = 45.0
"""The corner of the unit stands so far inside its detail, mm."""
_CORNERS: dict[str, tuple[tuple[str, int, int], ...]] = {
    "side": (
        ("Bottom front", 1, 0),
        ("Top front", 1, 1),
        ("Bottom rear", 0, 0),
        ("Top rear", 0, 1),
    ),
    "plan": (
        ("Left front", 0, 0),
        ("Left rear", 0, 1),
        ("Right front", 1, 0),
        ("Right rear", 1, 1),
    ),
}
"""Corners of a section, and at which end of the view each lies: across and up."""


_BOXES = tuple(role for role in DRAWERS if role is not Role.DRAWER_FRONT)
_SHELL = (*PANELS, *FACE_FRAME, *FRONTS, Role.BACK)
"""What has corners worth a detail."""


def detail_views(unit: Unit, section: View, plane: CuttingPlane) -> tuple[View, ...]:
    """The corners of a section, those that look alike once."""
    kind: ViewName = "side" if plane.axis == 0 else "plan"
    cut = pieces_cut(unit, section.cuts, kind)
    shell = [cut.boxes[part.ref] for part in cut.parts if part.role in _SHELL]
    found: list[View] = []
    shown: set[tuple[str, ...]] = set()
    for name, across, up in _CORNERS[kind] if shell else ():
        corner = _corner(shell, across, up)
        low = (_from(corner[0], across), _from(corner[1], up))
        called = f"{name}, {plane.letter}-{plane.letter}"
        view = _detail(unit, called, section, low, cut)
        alike = tuple(sorted(each.text for each in view.dimensions)) if view else ()
        if view is not None and alike not in shown:
            shown.add(alike)
            found.append(view)
    return tuple(found)


def _corner(boxes: Sequence[Rectangle], across: int, up: int) -> Point:
    """A corner of the box round some rectangles."""
    ends = [
        (max if high else min)(each[axis][high] for each in boxes)
        for axis, high in enumerate((across, up))
    ]
    return ends[0], ends[1]


def _from(corner: float, high: int) -> float:
    return corner + _IN - SIDE if high else corner - _IN


def _detail(unit: Unit, name: str, section: View, low: Point, cut: Pieces) -> View | None:
    """What a window shows of a section; None where two parts don't meet in it."""
    say = unit.display_unit
    window = (low, (low[0] + SIDE, low[1] + SIDE))
    cuts = cuts_within(section.cuts, window)
    there = {each.ref for each in cuts}
    told = {part.ref for part in cut.parts if part.ref in there and part.role not in _BOXES}
    if len(told) < 2:
        return None
    lines = lines_within(section.visible, window)
    points = [point for each in cuts for ring in each.rings for point in ring]
    points += [point for line in lines for point in line]
    (left, right), (foot, head) = ((min(each), max(each)) for each in zip(*points, strict=True))
    return View(
        name,
        (left, foot),
        (right, head),
        visible=lines,
        cuts=cuts,
        dimensions=dimensions_of(_chains([cut.boxes[ref] for ref in told], low, (left, foot), say)),
        notes=cut_notes((each for each in cuts if each.ref in told), unit),
    )


def _chains(
    boxes: Sequence[Rectangle], low: Point, corner: Point, say: LengthUnit
) -> Iterator[Chain]:
    """From face to face of all that lies in the window, across and up."""
    for along in (0, 1):
        pieces = [each[along] for each in boxes]
        within = (low[along] + TOUCH, low[along] + SIDE - TOUCH)
        faces = [end for each in pieces for end in each if within[0] < end < within[1]]
        if faces and max(faces) - min(faces) > TOUCH:
            place: Place = ("y", "left", corner[0]) if along else ("x", "below", corner[1])
            yield chain("detail", pieces, (min(faces), max(faces)), place, say)
