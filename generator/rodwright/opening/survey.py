"""From readings to the size that an opening has to give, and to where the unit stands in it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from math import floor, inf

from rodwright.lengths import LengthUnit
from rodwright.opening.adjustment import Plane, UnsolvableError, solve_plane, with_assumptions
from rodwright.opening.bends import Bends, bends_of
from rodwright.opening.doubts import Doubt, find_doubts
from rodwright.opening.fit import Limits, Rectangle, largest_rectangle
from rodwright.opening.outlines import Array, Outline, errors_round, outlines, place_in
from rodwright.opening.readings import (
    EDGES,
    TAPE_ERROR,
    PlaneReadings,
    Reading,
    assumed_alike,
    front_readings,
    rear_readings,
)
from rodwright.opening.spans import SPLAY_ASSUMED, least_spans
from rodwright.opening.taken import readings_taken
from rodwright.problems import KeyPath, Problems
from rodwright.unit import (
    EdgeLine,
    LinePoint,
    Opening,
    OpeningPlane,
    OpeningReadings,
    OpeningShape,
    Quadrilateral,
)
from rodwright.wishes.fields import SpecModel
from rodwright.wishes.opening import FitSpec, OpeningSpec

_TAPE: dict[LengthUnit, float] = {"mm": 0.5, "in": 25.4 / 32}
"""A worked-out size is rounded down to this (mm): no tape reads finer."""
_SAME = 0.1
"""A worked-out size this near the tightest reading (mm) is that reading."""
_FLAT = 0.2
"""Edges that bow in by less (mm) are as good as straight."""
_DEPTH_ASSUMED = 500.0
"""How deep an opening is taken to be, mm, where only its splay asks for it."""


@dataclass(frozen=True, slots=True)
class Survey:
    """An opening's planes as the readings have them, and what goes in.

    ``planes`` (front, and rear where it was read) each in its own frame; ``shapes`` are their
    corners in the front's frame, ``bends`` where their edges leave the straight lines between
    those.  ``rectangle`` is the largest level-and-plumb one in the likeliest shape, ``least``
    the width and height that surely go in.  ``read`` is what was read.  mm.
    """

    planes: tuple[Plane, ...]
    bends: tuple[Bends, ...]
    shapes: tuple[Quadrilateral, ...]
    limits: Limits
    rectangle: Rectangle
    least: tuple[float, float]
    depth: float | None
    read: OpeningReadings


Solved = tuple[tuple[Plane, ...], tuple[Doubt, ...], Limits]
"""Each plane as its readings have it, good or bad, the readings that can't be right, and the
tightest of the others."""


def measure(spec: OpeningSpec, problems: Problems, solved: Solved | None = None) -> Survey | None:
    """The survey of an opening, from its planes if they are solved already; None where the readings
    make none, which is noted."""
    depths = _depths(spec, problems)
    found = solved if solved is not None else solved_planes(spec, problems)
    if found is None:
        return None
    planes, doubts, limits = found
    for doubt in doubts:
        _note(doubt, problems)
    if doubts:
        return None
    shapes = _in_one_frame(planes)
    bends = tuple(map(bends_of, planes))
    limits = _bowed_in(limits, shapes, bends)
    rectangle = largest_rectangle(shapes, limits)
    if rectangle is None or min(rectangle.width, rectangle.height) <= 0:
        problems.add(
            ("opening",),
            "no level and plumb unit at all goes into an opening of this shape",
            "Measure it again, plumb and level readings above all.",
        )
        return None
    depth = min(depths) if depths else None
    read = readings_taken(planes, limits, depth)
    found_survey = Survey(planes, bends, shapes, limits, rectangle, (0.0, 0.0), depth, read)
    return replace(found_survey, least=_least(found_survey))


def _splay(survey: Survey) -> float:
    return SPLAY_ASSUMED * (survey.depth or _DEPTH_ASSUMED) / 1000.0


def _least(survey: Survey) -> tuple[float, float]:
    return least_spans(
        survey.planes, survey.bends, survey.shapes, survey.limits, survey.rectangle, _splay(survey)
    )


def _bowed_in(
    limits: Limits, shapes: tuple[Quadrilateral, ...], bends: tuple[Bends, ...]
) -> Limits:
    """The limits, with how far the edges bow into the opening."""
    inwards = {
        name: [
            _across(corners, name, bend.share) + (0.5 if first else -0.5) * bend.inwards
            for corners, own in zip(shapes, bends, strict=True)
            for bend in own.of(name)
            if bend.inwards > _FLAT
        ]
        for name, first in (
            ("left wall", True),
            ("right wall", False),
            ("floor", True),
            ("top", False),
        )
    }
    return replace(
        limits,
        left=max(inwards["left wall"], default=-inf),
        right=min(inwards["right wall"], default=inf),
        bottom=max(inwards["floor"], default=-inf),
        top=min(inwards["top"], default=inf),
    )


def _across(corners: Quadrilateral, name: str, share: float) -> float:
    """x of a straight wall, or z of a straight floor or top, at a share of it."""
    axis = 0 if "wall" in name else 1
    low, high = (corners[number][axis] for number in EDGES[name])
    return low + share * (high - low)


def least_with(survey: Survey, more: Reading) -> tuple[float, float]:
    """The width and height that would surely go in with one more reading of the front, mm.

    The reading has to agree with the shape, so that only the errors change.
    """
    front = solve_plane("front", [more, *survey.planes[0].readings])
    return _least(
        replace(
            survey,
            planes=(front, *survey.planes[1:]),
            bends=(bends_of(front), *survey.bends[1:]),
        )
    )


def solved_planes(spec: OpeningSpec, problems: Problems) -> Solved | None:
    """The planes of an opening; None where there is nothing to work with, which is noted."""
    before = problems.mark()
    front = front_readings(spec, problems)
    rear = rear_readings(spec.back, problems) if spec.back is not None else None
    if problems.noted_since(before):
        return None
    try:
        planes, doubts = [_solved(front)], [*find_doubts(front)]
        if rear is not None:
            rear = replace(rear, assumptions=assumed_alike(planes[0].corners))
            planes.append(_solved(rear))
            doubts += find_doubts(rear)
    except UnsolvableError as error:
        problems.add(("opening",), str(error), "Measure again; is a reading in another unit?")
        return None
    tightest = [plane.tightest for plane in (front, rear) if plane is not None]
    width, height = (
        min((sizes[axis] or inf for sizes in tightest), default=inf) for axis in (0, 1)
    )
    return tuple(planes), tuple(doubts), Limits(width, height)


def _solved(plane: PlaneReadings) -> Plane:
    return solve_plane(plane.name, with_assumptions(plane, plane.readings))


def usable_opening(survey: Survey, fit: FitSpec, unit: LengthUnit = "mm") -> Opening:
    """The width and height an opening has to give: what is left of them once the gaps asked
    for are taken off goes in even in the worst case; mm."""
    rectangle, limits = survey.rectangle, survey.limits
    width = _rounded_down(
        rectangle.width, limits.width, survey.least[0] + 2 * fit.sides, _TAPE[unit]
    )
    height = _rounded_down(rectangle.height, limits.height, survey.least[1] + fit.top, _TAPE[unit])
    return Opening(width, height, survey.depth)


def _rounded_down(likely: float, reading: float, sure: float, step: float) -> float:
    """The likely size, but no more than what is sure, rounded down to what a tape reads."""
    size = reading if reading - likely < _SAME else likely
    if size == reading and reading <= sure:
        return reading
    return floor(min(size, sure) / step + 1e-9) * step


def with_shape(
    opening: Opening,
    survey: Survey,
    fit: FitSpec,
    width: float,
    height: float,
    inset: float = 0.0,
) -> Opening:
    """The opening with its shape round a unit of this size, which stands on the floor's high
    spot and midway between the walls.

    Its base begins ``inset`` mm from its sides.
    """
    shapes = outlines(survey.planes, survey.bends, _splay(survey))
    lefts, bottoms = place_in(shapes, width, height, inset)
    errors = errors_round(shapes, lefts, bottoms)
    at = float(lefts[0]), float(bottoms[0])
    planes = [
        _round_unit(corners, shape, error, at)
        for corners, shape, error in zip(survey.shapes, shapes, errors, strict=True)
    ]
    rear = planes[1] if len(planes) > 1 else None
    least_width, least_height = (round(each, 3) for each in survey.least)
    return replace(
        opening,
        shape=OpeningShape(planes[0], rear, least_width, least_height, fit.overlap),
        readings=survey.read,
    )


def _round_unit(
    corners: Quadrilateral, shape: Outline, errors: Mapping[str, Array], at: tuple[float, float]
) -> OpeningPlane:
    """The likeliest of a plane's outlines, in the frame of the unit that stands at ``at``."""
    left, bottom = at
    a, b, c, d = ((round(x - left, 3), round(z - bottom, 3)) for x, z in corners)

    def line(side: str, points: Array) -> EdgeLine:
        along, across = (bottom, left) if side in ("left", "right") else (left, bottom)
        return tuple(
            LinePoint(round(u - along, 3), round(w - across, 3), round(error, 3))
            for (u, w), error in zip(points.tolist(), errors[side].tolist(), strict=True)
        )

    return OpeningPlane(
        (a, b, c, d),
        line("left", shape["left"][0]),
        line("right", shape["right"][0]),
        line("bottom", shape["bottom"][0]),
        line("top", shape["top"][0]),
    )


def _in_one_frame(planes: tuple[Plane, ...]) -> tuple[Quadrilateral, ...]:
    """Corners in the front's frame; planes are taken to share the middle of their floor lines."""
    (ax, az), (bx, bz) = (planes[0].corners[number] for number in EDGES["floor"])
    shapes = []
    for plane in planes:
        (cx, cz), (dx, dz) = (plane.corners[number] for number in EDGES["floor"])
        across, up = (ax + bx - cx - dx) / 2, (az + bz - cz - dz) / 2
        a, b, c, d = ((x + across, z + up) for x, z in plane.corners)
        shapes.append((a, b, c, d))
    return tuple(shapes)


def _note(doubt: Doubt, problems: Problems) -> None:
    say = problems.length
    if doubt.reading is None:
        problems.add(
            ("opening",) if doubt.plane == "front" else ("opening", "back"),
            f"the {doubt.plane} readings contradict each other, and no single one explains it"
            + (_EXCHANGED if doubt.exchanged else ""),
            _WHICH_IS_WHICH if doubt.exchanged else "Measure them all again.",
        )
        return
    reading = doubt.reading
    expected = round(doubt.expected, 1)
    if reading.kind == "distance":
        message = (
            f"{reading.name} of {say(reading.value)} contradicts the other readings; by them it "
            f"is about {say(expected)}"
        )
    else:
        message = (
            f"{reading.name} of {say(abs(reading.value))} over {say(reading.over)} contradicts "
            f"the other readings; by them it is about {say(abs(expected))}"
        )
        if expected * reading.value < 0:
            message += " the other way"
    if doubt.exchanged:
        message += _EXCHANGED
    again = ", or ".join([reading.name, *(rival.name for rival in doubt.rivals)])
    remedy = f"Measure again: {again}."
    if reading.error > TAPE_ERROR and reading.value < expected:
        remedy += " If it stands, the wall bellies: read it above and below as well."
    if doubt.exchanged:
        remedy = f"{_WHICH_IS_WHICH} {remedy}"
    problems.add(reading.where, message, remedy)


_EXCHANGED = ", or the diagonals are exchanged"
_WHICH_IS_WHICH = (
    "`rising` goes up from the bottom left corner: exchange the two if they were read so."
)


def _depths(spec: OpeningSpec, problems: Problems) -> list[float]:
    where: KeyPath = ("opening", "depth")
    if not isinstance(spec.depth, SpecModel):
        return [] if spec.depth is None else [spec.depth]
    found = [value for value in dict(spec.depth).values() if value is not None]
    say = problems.length
    if not found:
        problems.add(
            where, "no reading is given here", "Give at least one of `left`, `middle`, `right`."
        )
    elif max(found) > 1.5 * min(found):
        problems.add(
            where,
            f"readings of {say(min(found))} and {say(max(found))} can't be of one opening",
            "Measure again; is one of them in another unit?",
        )
    return found
