"""The unit as a body to be put in, its opening as the walls round it, and sliding straight in.

Opening frame: x to the right, 0 at the opening's left side; y from the opening's front to
its rear; z up from the floor.  Millimetres.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from rodwright.geometry import Box
from rodwright.lengths import LengthUnit, format_length
from rodwright.unit import FACE_FRAME, STANDS_OUT, Opening, Part, Role, Unit
from rodwright.unit.way import WayIn
from rodwright.way.carry import Load, Step, StepKind, said


@dataclass(frozen=True, slots=True)
class Body:
    """A carcass and, before it, a face frame that may reach past it; a frame 0 thick is none.

    ``width``, ``height`` and ``depth`` are the carcass's; ``proud`` is what of the overall depth
    stands before an opening by design, as doors do.
    """

    width: float
    height: float
    depth: float
    frame_thickness: float = 0.0
    frame_sides: float = 0.0
    frame_top: float = 0.0
    proud: float = 0.0

    @property
    def overall_depth(self) -> float:
        """From the front of the frame to the rear."""
        return self.depth + self.frame_thickness

    @property
    def depth_inside(self) -> float:
        """What of that stands in the opening."""
        return self.overall_depth - self.proud

    def load(self, name: str) -> Load:
        """The box round all of it."""
        return Load(
            name,
            self.width + 2 * self.frame_sides,
            self.height + self.frame_top,
            self.overall_depth,
        )


@dataclass(frozen=True, slots=True)
class Niche:
    """An opening with all that stands in the way of putting something in.

    ``mouth_width`` and ``mouth_height`` are clear over the first ``mouth_thickness``;
    ``skirting`` is how far it stands off the walls inside, as high as ``skirting_height``.
    ``read`` are the least width and height on the tape, None where only sizes are known.
    """

    width: float
    height: float
    depth: float
    mouth_width: float
    mouth_height: float
    mouth_thickness: float
    skirting: float
    skirting_height: float
    front: float | None
    ceiling: float | None
    read: tuple[float, float] | None = None


def body_of(unit: Unit, without: Iterable[Role] = ()) -> Body:
    """The unit's carcass and face frame, some roles left off; scribes are fitted in place.

    It stands on the floor, or without its plinth on its underside.
    """
    left_off = {*without, Role.SCRIBE}
    frame = [part for part in unit.parts if part.role in FACE_FRAME and part.role not in left_off]
    case = [
        part for part in unit.parts if part.role not in FACE_FRAME and part.role not in left_off
    ]
    around = _around(case)
    width, depth, _ = around.size
    # Adjustable feet are no parts, and yet are under it.
    foot = around.low[2] if Role.PLINTH in left_off else 0.0
    body = Body(width, around.high[2] - foot, depth, proud=_proud([*case, *frame]))
    if not frame:
        return body
    box = _around(frame)
    return replace(
        body,
        frame_thickness=max(0.0, around.low[1] - box.low[1]),
        frame_sides=max(0.0, around.low[0] - box.low[0], box.high[0] - around.high[0]),
        frame_top=max(0.0, box.high[2] - around.high[2]),
    )


def _proud(parts: list[Part]) -> float:
    """How far what stands out of an opening reaches before what is set into it, mm."""
    inside = [part for part in parts if part.role not in STANDS_OUT]
    return _around(inside).low[1] - _around(parts).low[1] if inside else 0.0


def _around(parts: list[Part]) -> Box:
    return Box.of_boxes(part.bounds() for part in parts)


def niche_of(opening: Opening, way: WayIn, body: Body) -> Niche:
    """The opening as an obstacle; one whose depth wasn't measured is as deep as the unit."""
    skirting, mouth = way.skirting, way.mouth
    inside = skirting.thickness if skirting else 0.0
    depth = opening.depth if opening.depth is not None else body.depth_inside + inside
    return Niche(
        opening.width,
        opening.height,
        depth,
        mouth.width if mouth and mouth.width is not None else opening.width,
        mouth.height if mouth and mouth.height is not None else opening.height,
        mouth.thickness if mouth else 0.0,
        inside,
        skirting.height if skirting else 0.0,
        way.front,
        way.ceiling,
        (opening.readings.width, opening.readings.height) if opening.readings else None,
    )


def rest(body: Body, niche: Niche) -> float:
    """Where the unit's front comes to stand (y): flush with the opening's but for what stands
    proud, behind its mouth where it is larger than that, or as far in as the skirting at the
    rear lets it."""
    return min(_seat(body, niche), niche.depth - niche.skirting - body.overall_depth)


def _seat(body: Body, niche: Niche) -> float:
    whole = body.load("")
    larger = whole.width > niche.mouth_width or whole.height > niche.mouth_height
    return niche.mouth_thickness if larger else -body.proud


@dataclass(frozen=True, slots=True)
class Straight:
    """What sliding upright and straight in leaves to spare, in mm, and where it is tight.

    ``width`` and ``height`` are the tightest over what is passed, ``depth`` is what is left
    behind or before it; ``inside`` is the least that is left once it stands there.
    """

    width: tuple[float, str]
    height: tuple[float, str]
    depth: tuple[float, str]
    inside: float

    @property
    def tightest(self) -> tuple[float, str]:
        """What is left at the tightest of all, and where; the depth counts only where the width
        and the height go."""
        least = min(self.width, self.height)
        return least if least[0] < 0 else min(least, self.depth)


def slide(body: Body, niche: Niche) -> Straight:
    """The tightest width, height and depth on the way straight in."""
    carcass_front = rest(body, niche) + body.frame_thickness
    wide, high = body.width + 2 * body.frame_sides, body.height + body.frame_top
    inside = niche.width - 2 * niche.skirting
    between = ", between the skirtings" if niche.skirting else ""
    widths = [(inside - body.width, f"the width inside{between}")]
    heights = [(niche.height - body.height, "the height inside")]
    if niche.mouth_thickness:
        widths.append((niche.mouth_width - body.width, "the width of its mouth"))
        heights.append((niche.mouth_height - body.height, "the height of its mouth"))
    if body.frame_thickness and carcass_front > 0:
        widths.append((min(niche.mouth_width, niche.width) - wide, "the face frame's width"))
        heights.append((min(niche.mouth_height, niche.height) - high, "the face frame's height"))
        if carcass_front > niche.mouth_thickness:
            widths.append((inside - wide, f"the face frame's width{between}"))
    elif body.frame_thickness and carcass_front > -niche.skirting:
        widths.append((niche.width - wide, "the skirting beside it, under the face frame"))
    behind = niche.depth - niche.skirting
    depths = [(behind - body.depth_inside, "the depth")]
    if niche.front is not None:
        depths.append((niche.front - body.overall_depth, "the floor before it"))
    seated = behind - body.overall_depth - _seat(body, niche)
    standing = min(widths[0][0], heights[0][0], seated)
    return Straight(min(widths), min(heights), min(depths), standing)


def straight_in(body: Body, niche: Niche, unit: LengthUnit) -> Step:
    """Sliding upright and straight in, judged by its tightest spot."""
    return opening_step(niche, unit, "upright, straight in", *slide(body, niche).tightest)


def opening_step(niche: Niche, unit: LengthUnit, held: str, spare: float, tight: str) -> Step:
    """The step into the opening, named by what was read of it, as `check` does."""
    width, height = niche.read or (niche.width, niche.height)
    as_read = " as read at its tightest" if niche.read else ""
    place = f"the opening ({format_length(width, unit)} x {said(height, unit)}{as_read})"
    return Step(StepKind.OPENING, 1, place, held, spare, tight)
