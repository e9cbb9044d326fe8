"""Refs of parts where a view shows them; mm, in the view's frame."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from shapely import Polygon
from shapely.ops import unary_union

from rodwright.pictures.drafting.bands import Rectangle, rectangle
from rodwright.pictures.drafting.seen import AXES, ViewName
from rodwright.pictures.drafting.views import Cut, Note, Point
from rodwright.unit import Part, Role

_APART = 2.0
"""Levels of one shelf whose faces lie this near share a note."""


def part_notes(parts: Iterable[Part], view: ViewName) -> tuple[Note, ...]:
    """The ref of each part in the middle of what it covers of a view."""
    return tuple(
        Note(_middle(rectangle(part.bounds(), *AXES[view])), part.ref)
        for part in parts
        if part.role is not Role.LIPPING
    )


def panel_note(part: Part, taken: Sequence[Rectangle], view: ViewName) -> Note:
    """The ref of a panel that other parts stand before, in the largest field between them."""
    own = rectangle(part.bounds(), *AXES[view])
    field = _box(own).difference(unary_union([_box(each) for each in taken]))
    pieces = list(getattr(field, "geoms", [field]))
    largest = max(pieces, key=lambda each: each.area, default=field)
    at = largest.representative_point() if not largest.is_empty else _box(own).centroid
    return Note((at.x, at.y), part.ref)


def cut_notes(cuts: Iterable[Cut]) -> tuple[Note, ...]:
    """The refs of what a section cuts, each once, on its largest area."""
    largest: dict[str, tuple[float, Point]] = {}
    for cut in cuts:
        shape = Polygon(cut.rings[0], cut.rings[1:])
        if shape.area > largest.get(cut.ref, (0.0, (0.0, 0.0)))[0]:
            at = shape.representative_point()
            largest[cut.ref] = (shape.area, (at.x, at.y))
    return tuple(Note(at, ref) for ref, (_, at) in largest.items())


def _middle(box: Rectangle) -> Point:
    return (sum(box[0]) / 2, sum(box[1]) / 2)


def _box(each: Rectangle) -> Polygon:
    (a, b), (c, d) = each
    return Polygon([(a, c), (b, c), (b, d), (a, d)])
