"""An opening as it was measured, on the left of its sheet: every reading where it was taken."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.lengths import LengthUnit, format_difference, format_length
from rodwright.opening.adjustment import Plane
from rodwright.opening.frames import fit_frame
from rodwright.opening.readings import Reading
from rodwright.opening.silhouettes import SlopeLine
from rodwright.pictures.ink import Lettering, Mark, Point, Stroke
from rodwright.pictures.opening_walls import between, edges_on, wall_marks
from rodwright.pictures.paper import SMALL, THIN, Map, Window, tag_marks
from rodwright.unit import OpeningPlane, Quadrilateral

_LEFT_PANEL = Window(34.0, 48.0, 190.0, 204.0)
_READING = "#2b5f8a"
_BARE = "Heights and the top are given as if there were no slope"


def as_measured(
    plane: Plane, shape: OpeningPlane, unit: LengthUnit, slope: SlopeLine | None = None
) -> Iterator[Mark]:
    """One plane of an opening with its readings, and with what each differs from its shape; under
    the line of a ``slope``, where there is one."""
    to_paper = _LEFT_PANEL.scale_for(plane.corners)
    # The shape is in the unit's frame, the readings are in the plane's own.
    (x, z), (u, w) = plane.corners[0], shape.corners[0]
    yield Lettering(
        (_LEFT_PANEL.middle, 30.0),
        "As measured; in brackets, by how much the tape says more than between straight edges",
        SMALL,
    )

    def on_paper(at: Point) -> Point:
        return to_paper((at[0] + x - u, at[1] + z - w))

    ceiling = None
    if slope is not None:
        ends = [(at, slope.ceiling(at)) for at in (shape.corners[0][0], shape.corners[1][0])]
        ceiling = on_paper(ends[0]), on_paper(ends[1])
        yield Lettering((_LEFT_PANEL.middle, 34.5), _BARE, SMALL)
    yield from wall_marks(edges_on(shape, lambda _, at: on_paper(at)), ceiling)
    pairs = zip(plane.readings, plane.residuals, strict=True)
    read = [(reading, residual) for reading, residual in pairs if not reading.is_assumption]
    tags: list[Mark] = []
    for reading, residual in read:
        # A slope the other way is read as so much that way: more of it is a larger reading.
        more = residual if reading.value >= 0 else -residual
        text = f"{format_length(abs(reading.value), unit)} ({format_difference(more, unit)})"
        if reading.kind == "distance":
            line, at, upwards = _reading_line(plane.corners, reading)
            yield Stroke((tuple(to_paper(point) for point in line),), THIN, _READING)
            tags += tag_marks(to_paper(at), text, upwards, _READING)
        else:
            tags += _slope_marks(plane, reading, text, unit, to_paper)
    yield from tags
    for corner, own, angle, (x, y) in zip(
        plane.corners,
        shape.corners,
        _angles(plane.corners),
        ((-1, 1), (1, 1), (1, -1), (-1, -1)),
        strict=True,
    ):
        if slope is not None and own[1] > slope.ceiling(own[0]):
            continue
        px, py = to_paper(corner)
        anchor = "end" if x < 0 else "start"
        at = (px + 2.0 * x, py + (10.0 if y > 0 else -7.0))
        yield Lettering(at, f"{angle:.2f}°", SMALL, anchor)  # type: ignore[arg-type]


def _reading_line(
    corners: Quadrilateral, reading: Reading
) -> tuple[tuple[Point, Point], Point, bool]:
    """A reading's line, a little inside where it runs along an edge; its label's place, and
    whether that reads upwards."""
    ends = []
    for a, b, share in (reading.first, reading.second):
        inside = 0.06 + 0.88 * share if a != b else share
        ends.append(between(corners[a], corners[b], inside))
    (ax, az), (bx, bz) = ends
    upright = abs(bz - az) > abs(bx - ax)
    across = reading.first[0] != reading.first[1]
    if across:
        return (ends[0], ends[1]), between(ends[0], ends[1], 0.62 if upright else 0.7), upright
    return (ends[0], ends[1]), between(ends[0], ends[1], 0.24), False


def _slope_marks(
    plane: Plane, reading: Reading, text: str, unit: LengthUnit, to_paper: Map
) -> Iterator[Mark]:
    """A plumb or level reading, outside the edge it was taken of."""
    a, b = reading.first[:2]
    x, y = to_paper(between(plane.corners[a], plane.corners[b], 0.5))
    if reading.kind == "plumb":
        right = a == 1
        leans = "in" if (reading.value < 0) == right else "out"
        label = f"plumb: {leans} {text} over {format_length(reading.over, unit)}"
        yield Lettering((x + (13.0 if right else -9.0), y), label, SMALL, "middle", True, _READING)
    else:
        side = "right" if reading.value >= 0 else "left"
        label = f"level: rises {text} to the {side} over {format_length(reading.over, unit)}"
        above = a == 3
        yield Lettering((x, y + (-8.0 if above else 12.0)), label, SMALL, "middle", False, _READING)


def _angles(corners: Quadrilateral) -> list[float]:
    return list(fit_frame(corners, 1.0, 1.0, True, 0.0).angles.values())
