"""A part as a machine is shown it: one drawing for each side that is worked."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shapely.geometry import Polygon

from rodwright.cnc.layers import EDGING, GRAIN, OUTLINE, TEXT, Layer, hundredths
from rodwright.cnc.outlines import outline
from rodwright.cnc.shapes import Path, Point, Shape, Text, mirrored
from rodwright.cnc.workings import by_hand, shapes_of
from rodwright.handover.products import Product
from rodwright.unit import Grain, Part, Surface
from rodwright.unit.orientation import orientation_of

_EDGES = (Surface.NEAR_END, Surface.FAR_END, Surface.FACE_EDGE, Surface.BACK_EDGE)
_TALLEST, _LEAST = 14.0, 1.5
"""Heights of text, mm."""


@dataclass(frozen=True, slots=True)
class PartShapes:
    """A part's drawings: ``cut`` is what is cut with the worked face up (outline, what comes from
    there and from the edges, what goes right through), ``reverse`` the same piece turned over about
    its length with what is cut then; empty where nothing is.  ``texts`` are refs and notes on
    the first.  ``by_hand`` is what is left for the bench, in words."""

    product: Product
    cut: tuple[Shape, ...]
    texts: tuple[Shape, ...]
    reverse: tuple[Shape, ...]
    by_hand: tuple[str, ...]


def part_shapes(product: Product) -> PartShapes:
    """The drawings of a distinct part, as cut; what is written on them is in mm like all else.

    Raises:
        ValueError: its cuts leave no single piece.
    """
    part = product.part
    size = part.blank.size
    shape, slanting = outline(part)
    face: list[Shape] = [*_rings(OUTLINE, shape)]
    back: list[Shape] = []
    for each in part.workings:
        on = back if each.worked_from(size) is Surface.REVERSE else face
        on += shapes_of(each, size)
    for angle, area in slanting:
        face += _rings(Layer(Surface.FACE, "bevel", round(angle, 2), sign="AT").name, area)
    reverse: tuple[Shape, ...] = ()
    if back:
        turned = (*_rings(OUTLINE, shape), *back)
        reverse = tuple(mirrored(each, size[1]) for each in turned)
        reverse += tuple(_texts(product, over=True))
    notes = dict.fromkeys(filter(None, map(by_hand, part.workings)))
    return PartShapes(product, tuple(face), tuple(_texts(product)), reverse, tuple(notes))


def _rings(layer: str, shape: Polygon) -> Iterator[Shape]:
    for ring in (shape.exterior, *shape.interiors):
        points = tuple((x, y) for x, y in ring.coords[:-1])
        yield Path(layer, points)


def _texts(product: Product, *, over: bool = False) -> Iterator[Shape]:
    """Refs, size and the face that is up, in the middle; grain and edged edges."""
    part, shop = product.part, product.shop
    length, width, _ = part.blank.size
    up = shop.up
    if over:
        up = orientation_of(shop.pieces).name(Surface.REVERSE)
    refs = ", ".join(each.ref for each in shop.pieces)
    sizes = " x ".join(hundredths(each) for each in part.blank.size)
    lines = (
        refs if len(refs) <= 40 else f"{shop.pieces[0].ref} and {len(shop.pieces) - 1} more",
        product.name.split(" ", 1)[-1][:40],
        f"{len(shop.pieces)} off, {sizes} mm",
        f"{up} up",
    )
    yield from _written(lines, length, width)
    if part.blank.grain is not Grain.NONE:
        yield from _grain(part, length, width)
    if not over:
        for each in shop.edged:
            yield Path(EDGING, _edge(each.surface, length, width), closed=False)


def _written(lines: Sequence[str], length: float, width: float) -> Iterator[Shape]:
    """Lines of text one below the other, as large as fits along the piece."""
    upright = width > length
    along, across = max(length, width), min(length, width)
    longest = max(map(len, lines))
    # The grain's arrow has the outermost tenth for itself.
    height = min(_TALLEST, 0.7 * across / (1.7 * len(lines)), 0.8 * along / (longest + 2))
    height = max(_LEAST, height)
    for number, line in enumerate(lines):
        off = ((len(lines) - 1) / 2 - number) * 1.7 * height
        at = (length / 2 - off, width / 2) if upright else (length / 2, width / 2 + off)
        yield Text(TEXT, at, line, height, upright)


def _grain(part: Part, length: float, width: float) -> Iterator[Shape]:
    """A double arrow along the grain, beside the edge or end that it runs along."""
    lengthwise = part.blank.grain is Grain.LENGTHWISE
    reach = min(length / 2, width) if lengthwise else min(width / 2, length)
    head = min(reach / 8, 0.06 * (width if lengthwise else length))
    middle = (0.55 * reach, 0.06 * width) if lengthwise else (0.06 * length, 0.55 * reach)
    ways: Sequence[tuple[float, float]] = ((1.0, 0.0), (0.0, 1.0))
    along, aside = ways if lengthwise else ways[::-1]

    def at(far: float, out: float) -> Point:
        return (
            middle[0] + far * along[0] + out * aside[0],
            middle[1] + far * along[1] + out * aside[1],
        )

    half = reach / 2
    yield Path(GRAIN, (at(-half, 0), at(half, 0)), closed=False)
    for end, back in ((half, half - head), (-half, head - half)):
        yield Path(GRAIN, (at(back, head / 2), at(end, 0), at(back, -head / 2)), closed=False)


def _edge(surface: Surface, length: float, width: float) -> tuple[Point, Point]:
    corners: dict[Surface, tuple[Point, Point]] = {
        Surface.NEAR_END: ((0.0, 0.0), (0.0, width)),
        Surface.FAR_END: ((length, 0.0), (length, width)),
        Surface.FACE_EDGE: ((0.0, 0.0), (length, 0.0)),
        Surface.BACK_EDGE: ((0.0, width), (length, width)),
    }
    return corners[surface]


def layers_in(shapes: Sequence[Shape]) -> tuple[str, ...]:
    """The layers of some shapes, in the order in which they first occur."""
    return tuple(dict.fromkeys(each.layer for each in shapes))
