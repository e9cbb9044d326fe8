"""Refs of parts where a view shows them; mm, in the view's frame."""

from __future__ import annotations

import string
from collections.abc import Iterable, Mapping, Sequence

from shapely import Polygon
from shapely.ops import unary_union

from rodwright.geometry import Box
from rodwright.pictures.drafting.bands import Rectangle, rectangle
from rodwright.pictures.drafting.seen import AXES, ViewName
from rodwright.pictures.drafting.views import Cut, Note, Point
from rodwright.unit import Part, Role, Unit


def part_notes(parts: Iterable[Part], view: ViewName, within: Box) -> tuple[Note, ...]:
    """The ref of each part in the middle of what it covers of a view within a box (unit frame);
    layers of one shelf share theirs."""
    boxes = {
        part.ref: rectangle(part.bounds().intersection(within), *AXES[view])
        for part in parts
        if part.role is not Role.LIPPING
    }
    return tuple(
        Note(_middle(around([boxes[ref] for ref in refs])), _said(refs)) for refs in _shared(boxes)
    )


def group_notes(parts: Iterable[Part], view: ViewName) -> tuple[Note, ...]:
    """The names of what parts belong to (``Door 1``), each once in the middle of its parts."""
    groups: dict[str, list[Rectangle]] = {}
    for part in parts:
        groups.setdefault(part.group, []).append(rectangle(part.bounds(), *AXES[view]))
    return tuple(Note(_middle(around(boxes)), name) for name, boxes in groups.items())


def panel_note(part: Part, taken: Sequence[Rectangle], view: ViewName, within: Box) -> Note:
    """The ref of a panel that other parts stand before, in the largest field between them."""
    own = rectangle(part.bounds().intersection(within), *AXES[view])
    field = _box(own).difference(unary_union([_box(each) for each in taken]))
    pieces = list(getattr(field, "geoms", [field]))
    largest = max(pieces, key=lambda each: each.area, default=field)
    at = largest.representative_point() if not largest.is_empty else _box(own).centroid
    return Note((at.x, at.y), part.ref)


def cut_notes(cuts: Iterable[Cut], unit: Unit) -> tuple[Note, ...]:
    """The refs of what a section cuts, each once, on its largest area; without lippings, which go
    with what they are on, and layers of one shelf together."""
    largest: dict[str, tuple[float, Point]] = {}
    boxes: dict[str, Rectangle] = {}
    for cut in cuts:
        shape = Polygon(cut.rings[0], cut.rings[1:])
        if unit.part(cut.ref).role is Role.LIPPING:
            continue
        if shape.area > largest.get(cut.ref, (0.0, (0.0, 0.0)))[0]:
            at = shape.representative_point()
            largest[cut.ref] = (shape.area, (at.x, at.y))
            a, c, b, d = shape.bounds
            boxes[cut.ref] = ((a, b), (c, d))
    return tuple(Note(largest[refs[0]][1], _said(refs)) for refs in _shared(boxes))


def around(boxes: Sequence[Rectangle]) -> Rectangle:
    """The box round some rectangles.

    Raises:
        ValueError: there are none.
    """
    return (
        (min(a for (a, _), _ in boxes), max(b for (_, b), _ in boxes)),
        (min(a for _, (a, _) in boxes), max(b for _, (_, b) in boxes)),
    )


def _said(refs: Sequence[str]) -> str:
    """Refs of layers as one: ``SH1a/b``."""
    stem = refs[0].rstrip(string.ascii_lowercase)
    return "/".join([refs[0], *(ref.removeprefix(stem) for ref in refs[1:])])


def _shared(boxes: Mapping[str, Rectangle]) -> list[list[str]]:
    """Refs that share a note: layers (``SH1a``, ``SH1b``) that lie on each other."""
    found: dict[tuple[object, ...], list[str]] = {}
    for ref in boxes:
        stem = ref.rstrip(string.ascii_lowercase)
        layers = any(
            other != ref and other.rstrip(string.ascii_lowercase) == stem for other in boxes
        )
        found.setdefault((stem,) if layers else (ref,), []).append(ref)
    return list(found.values())


def _middle(box: Rectangle) -> Point:
    return (sum(box[0]) / 2, sum(box[1]) / 2)


def _box(each: Rectangle) -> Polygon:
    (a, b), (c, d) = each
    return Polygon([(a, c), (b, c), (b, d), (a, d)])
