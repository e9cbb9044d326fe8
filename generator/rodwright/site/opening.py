"""From readings to the size that an opening has to give, and to where the unit stands in it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import floor, inf

from rodwright.lengths import LengthUnit
from rodwright.parts import Opening, OpeningShape, Quadrilateral
from rodwright.problems import KeyPath, Problems
from rodwright.site.fit import (
    SPLAY_ASSUMED,
    Limits,
    Rectangle,
    edge_at,
    largest_rectangle,
    least_spans,
)
from rodwright.site.readings import (
    EDGES,
    TAPE_ERROR,
    PlaneReadings,
    Reading,
    assumed_alike,
    front_readings,
    rear_readings,
)
from rodwright.site.survey import (
    Doubt,
    Plane,
    UnsolvableError,
    find_doubts,
    solve_plane,
    with_assumptions,
)
from rodwright.spec.fields import SpecModel
from rodwright.spec.opening import FitSpec, OpeningSpec

_TAPE: dict[LengthUnit, float] = {"mm": 0.5, "in": 25.4 / 32}
"""A worked-out size is rounded down to this (mm): no tape reads finer."""
_SAME = 0.1
"""A worked-out size this near the tightest reading (mm) is that reading."""
_DEPTH_ASSUMED = 500.0
"""How deep an opening is taken to be, mm, where only its splay asks for it."""


@dataclass(frozen=True, slots=True)
class Survey:
    """An opening's planes as the readings have them, and what goes in.

    ``planes`` (front, and rear where it was read) each in its own frame; ``shapes`` are their
    corners in the front's frame.  ``rectangle`` is the largest level-and-plumb one in the
    likeliest shape, ``least`` the width and height that surely go in.  mm.
    """

    planes: tuple[Plane, ...]
    shapes: tuple[Quadrilateral, ...]
    limits: Limits
    rectangle: Rectangle
    least: tuple[float, float]
    depth: float | None


def measure(spec: OpeningSpec, problems: Problems) -> Survey | None:
    """The survey of an opening; None where the readings make none, which is noted."""
    depths = _depths(spec, problems)
    found = solved_planes(spec, problems)
    if found is None:
        return None
    planes, doubts, limits = found
    for doubt in doubts:
        _note(doubt, problems)
    if doubts:
        return None
    shapes = _in_one_frame(planes)
    rectangle = largest_rectangle(shapes, limits)
    if rectangle is None or min(rectangle.width, rectangle.height) <= 0:
        problems.add(
            ("opening",),
            "no level and plumb unit at all goes into an opening of this shape",
            "Measure it again, plumb and level readings above all.",
        )
        return None
    depth = min(depths) if depths else None
    found_survey = Survey(planes, shapes, limits, rectangle, (0.0, 0.0), depth)
    return replace(found_survey, least=_least(found_survey, planes))


def _least(survey: Survey, planes: tuple[Plane, ...]) -> tuple[float, float]:
    splay = SPLAY_ASSUMED * (survey.depth or _DEPTH_ASSUMED) / 1000.0
    return least_spans(planes, survey.shapes, survey.limits, survey.rectangle, splay)


def least_with(survey: Survey, more: Reading) -> tuple[float, float]:
    """The width and height that would surely go in with one more reading of the front, mm.

    The reading has to agree with the shape, so that only the errors change.
    """
    front = solve_plane("front", [more, *survey.planes[0].readings])
    return _least(survey, (front, *survey.planes[1:]))


def solved_planes(
    spec: OpeningSpec, problems: Problems
) -> tuple[tuple[Plane, ...], tuple[Doubt, ...], Limits] | None:
    """Each plane as its readings have it, good or bad, and the readings that can't be right.

    None where there is nothing to work with; that is noted in ``problems``.
    """
    before = len(problems)
    front = front_readings(spec, problems)
    rear = rear_readings(spec.back, problems) if spec.back is not None else None
    if len(problems) > before:
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


def usable(survey: Survey, fit: FitSpec, unit: LengthUnit = "mm") -> Opening:
    """The width and height an opening has to give: what is left of them once the gaps asked
    for are taken off goes in even in the worst case; mm."""
    rectangle, limits = survey.rectangle, survey.limits
    width = _handy(rectangle.width, limits.width, survey.least[0] + 2 * fit.sides, _TAPE[unit])
    height = _handy(rectangle.height, limits.height, survey.least[1] + fit.top, _TAPE[unit])
    return Opening(width, height, survey.depth)


def _handy(likely: float, reading: float, sure: float, step: float) -> float:
    """The likely size, but no more than what is sure, rounded down to what a tape reads."""
    size = reading if reading - likely < _SAME else likely
    if size == reading and reading <= sure:
        return reading
    return floor(min(size, sure) / step + 1e-9) * step


def standing(
    opening: Opening, survey: Survey, fit: FitSpec, width: float, height: float
) -> Opening:
    """The opening with its shape round a unit of this size, which stands on the floor's high
    spot and midway between the walls."""
    left, bottom = place_in(survey.shapes, width, height)

    def moved(corners: Quadrilateral) -> Quadrilateral:
        a, b, c, d = ((round(x - left, 3), round(z - bottom, 3)) for x, z in corners)
        return (a, b, c, d)

    shapes = [moved(corners) for corners in survey.shapes]
    rear = shapes[1] if len(shapes) > 1 else None
    least_width, least_height = (round(each, 3) for each in survey.least)
    return replace(
        opening, shape=OpeningShape(shapes[0], rear, least_width, least_height, fit.overlap)
    )


def place_in(shapes: tuple[Quadrilateral, ...], width: float, height: float) -> tuple[float, float]:
    """Left and bottom of a unit of this size as it stands in the opening; mm."""
    middle = sum(x for corners in shapes for x, _ in corners) / (4 * len(shapes))
    left = middle - width / 2
    bottom = 0.0
    # Where it stands and how high hang on each other, but only through small slopes.
    for _ in range(4):
        heights = [edge_at(corners, "floor", x) for corners in shapes for x in (left, left + width)]
        bottom = max(heights)
        ends = (bottom, bottom + height)
        lefts = [edge_at(corners, "left wall", z) for corners in shapes for z in ends]
        rights = [edge_at(corners, "right wall", z) for corners in shapes for z in ends]
        left = (max(lefts) + min(rights) - width) / 2
    return left, bottom


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
            f"the {doubt.plane} readings contradict each other, and no single one explains it",
            "Measure them all again.",
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
    again = ", or ".join([reading.name, *(rival.name for rival in doubt.rivals)])
    remedy = f"Measure again: {again}."
    if reading.error > TAPE_ERROR and reading.value < expected:
        remedy += " If it stands, the wall bows: give this reading alone, as the tightest."
    problems.add(reading.where, message, remedy)


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
