"""Hatching of what a section cuts through (ISO 128-50): thin lines, told apart without colour.

Cut ends of boards have single lines at 45 degrees, sheets pairs of such lines, wood cut along
its grain long dashes along the cut, all else crossed lines (common practice, no source, but for
the slant and for neighbours that differ).  Neighbours slant the other way or are spaced
otherwise.  Lengths in mm of paper.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from itertools import pairwise

import shapely
from shapely.geometry import LineString, MultiPolygon, Polygon

from rodwright.pictures.drafting.views import Cut, Line, Point

_PITCH = {"end grain": 1.3, "sheet": 2.6, "along the grain": 1.1, "other": 2.2}
"""Between lines, or pairs of them."""
_PAIR = 0.6
"""Between the two of a pair."""
_LOOKS = ((45.0, 1.0), (135.0, 1.0), (45.0, 1.5), (135.0, 1.5), (45.0, 0.7), (135.0, 0.7))
"""Slant and spacing of the first, the second ... neighbour."""
_DASH = (4.0, 1.2)
"""Of lines along the grain: dashes and gaps."""
_TOUCH = 0.3
"""Cuts nearer than this are neighbours."""


def hatched(cuts: Sequence[tuple[Cut, tuple[tuple[Point, ...], ...]]]) -> list[tuple[Line, ...]]:
    """The lines of each cut; every cut comes with its rings on the page."""
    areas = [_area(rings) for _, rings in cuts]
    looks: list[int] = []
    for number, area in enumerate(areas):
        taken = {
            looks[other]
            for other in range(number)
            if cuts[other][0].kind == cuts[number][0].kind and area.distance(areas[other]) < _TOUCH
        }
        free = [look for look in range(len(_LOOKS)) if look not in taken]
        looks.append(free[0] if free else number % len(_LOOKS))
    return [
        tuple(_lines(area, cut.kind, *_LOOKS[look]))
        for (cut, _), area, look in zip(cuts, areas, looks, strict=True)
    ]


def _area(rings: Sequence[tuple[Point, ...]]) -> Polygon | MultiPolygon:
    """The area between rings, by the even-odd rule."""
    area: Polygon | MultiPolygon = Polygon()
    for ring in rings:
        if len(ring) >= 3:
            area = area.symmetric_difference(shapely.make_valid(Polygon(ring)))
    return area


def _lines(area: Polygon | MultiPolygon, kind: str, slant: float, spread: float) -> Iterator[Line]:
    if area.is_empty:
        return
    pitch = _PITCH[kind] * spread
    if kind == "along the grain":
        # Lines of dashes along the longer side, the gaps of one beside the dashes of the next.
        yield from _dashes(area, pitch)
        return
    yield from _parallel(area, slant, pitch, 0.0)
    if kind == "sheet":
        yield from _parallel(area, slant, pitch, _PAIR)
    elif kind == "other":
        yield from _parallel(area, slant + 90.0, pitch, 0.0)


def _dashes(area: Polygon | MultiPolygon, pitch: float) -> Iterator[Line]:
    box = area.minimum_rotated_rectangle
    corners = list(box.exterior.coords) if isinstance(box, Polygon) else []
    sides = list(pairwise(corners))
    (ax, ay), (bx, by) = max(sides, key=lambda side: math.dist(*side))
    angle = math.degrees(math.atan2(by - ay, bx - ax)) % 180.0
    whole, on = sum(_DASH), _DASH[0]
    for number, ((sx, sy), (ex, ey)) in enumerate(_parallel(area, angle, pitch, pitch / 2)):
        length = math.dist((sx, sy), (ex, ey))
        x, y = (ex - sx) / length, (ey - sy) / length
        at = -whole / 2 * (number % 2)
        while at < length:
            low, high = max(at, 0.0), min(at + on, length)
            if high - low > 0.2:
                yield (sx + x * low, sy + y * low), (sx + x * high, sy + y * high)
            at += whole


def _parallel(
    area: Polygon | MultiPolygon, angle: float, pitch: float, shift: float
) -> Iterator[Line]:
    """Parallel lines within an area, a ``pitch`` apart from one through the page's origin."""
    x, y = math.cos(math.radians(angle)), math.sin(math.radians(angle))
    low_x, low_y, high_x, high_y = area.bounds
    corners = [(low_x, low_y), (high_x, low_y), (low_x, high_y), (high_x, high_y)]
    off = [-y * a + x * b for a, b in corners]
    along = [x * a + y * b for a, b in corners]
    first, last = math.ceil((min(off) - shift) / pitch), math.floor((max(off) - shift) / pitch)
    ends = [
        LineString([(x * at - y * away, y * at + x * away) for at in (min(along), max(along))])
        for away in (number * pitch + shift for number in range(first, last + 1))
    ]
    for piece in shapely.get_parts(shapely.intersection(ends, area)):
        if isinstance(piece, LineString) and piece.length > 0.15:
            (ax, ay), *_, (bx, by) = piece.coords
            yield (ax, ay), (bx, by)
