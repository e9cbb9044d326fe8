"""The main lines of a unit under a sloping ceiling.

Planes are as :mod:`rodwright.geometry.halfspaces` has them: what lies above is cut away.
Unit frame, mm.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Literal

from rodwright.geometry import TOUCH, Vector
from rodwright.geometry.halfspaces import Plane, moved
from rodwright.problems import Problems
from rodwright.setout.rod.lines import Rod
from rodwright.wishes.models import UnitSpec
from rodwright.wishes.slope import SlopeSpec

LEAST_LOW = 50.0
"""Clear height, mm, that must be left at the low side (common practice, no source)."""

_LEAST_PITCH, _MOST_PITCH = 3.0, 87.0


@dataclass(frozen=True, slots=True)
class SlopeLines:
    """The planes that a unit is cut to.

    ``ceiling`` is the ceiling itself, ``outer`` the upper face of the sloping board and
    ``inner`` its underside, at which what stands below is cut; without a top there is no
    board, and the two are one.  ``frame_outer`` and ``frame_inner`` are the edges of the
    face frame's sloping rail (the same plane where it has no top rail), None where no frame
    reaches the slope.  ``pitch`` is in degrees from level.
    """

    falls: Literal["left", "right", "front", "rear"]
    pitch: float
    ceiling: Plane
    outer: Plane
    inner: Plane
    frame_outer: Plane | None
    frame_inner: Plane | None

    @property
    def sideways(self) -> bool:
        """Whether it falls to the left or the right."""
        return self.falls in ("left", "right")

    @property
    def rise(self) -> float:
        """Height gained on a level run of 1."""
        return math.tan(math.radians(self.pitch))


def height_at(plane: Plane, x: float, y: float) -> float:
    """Height (z) of a plane over a point of the floor."""
    (px, py, pz), (nx, ny, nz) = plane
    return pz - ((x - px) * nx + (y - py) * ny) / nz


def door_plane(lines: SlopeLines, rod: Rod, rear: float, gap: float) -> Plane:
    """The plane that a door with its rear at this y may reach: a gap below what is round it, or
    below what it covers where it stands in front."""
    in_front = rear <= rod.front.face + TOUCH
    framed, bare = (
        (lines.frame_outer, lines.outer) if in_front else (lines.frame_inner, lines.inner)
    )
    return moved(framed or bare, -gap)


def slope_lines(spec: UnitSpec, rod: Rod, problems: Problems) -> SlopeLines | None:
    """The lines of a unit's sloping ceiling; None where it makes none, which is noted."""
    wish = spec.slope
    assert wish is not None
    pitch = _pitch(wish, rod, problems)
    if pitch is None:
        return None
    turn = math.radians(pitch)
    sine, cosine = math.sin(turn), math.cos(turn)
    normals: dict[str, Vector] = {
        "left": (-sine, 0.0, cosine), "right": (sine, 0.0, cosine),
        "front": (0.0, -sine, cosine), "rear": (0.0, sine, cosine),
    }  # fmt: skip
    low = _low_end(spec, rod, wish.falls)
    ceiling: Plane = ((low[0], low[1], wish.low), normals[wish.falls])
    outer = moved(ceiling, -wish.clearance)
    inner = moved(outer, -rod.thickness) if rod.inside.has_top else outer
    frame_outer = frame_inner = None
    if (
        spec.face_frame is not None
        and rod.front.frame is not None
        and wish.falls in ("left", "right")
    ):
        frame_outer = moved(outer, spec.face_frame.overhang.top)
        frame_inner = frame_outer
        if rod.front.frame.has_top_rail:
            frame_inner = moved(frame_outer, -rod.front.frame.rail_width)
    lines = SlopeLines(wish.falls, pitch, ceiling, outer, inner, frame_outer, frame_inner)
    return lines if _passes(lines, rod, problems) else None


def under_slope(spec: UnitSpec, rod: Rod, lines: SlopeLines, problems: Problems) -> Rod:
    """The rod with a face frame that ends under a slope which falls to the front or the rear."""
    frame = rod.front.frame
    if frame is None or spec.face_frame is None or lines.sideways:
        return rod
    top = height_at(lines.outer, 0.0, -frame.thickness if lines.falls == "front" else 0.0)
    top += spec.face_frame.overhang.top
    if top >= frame.top:
        return rod
    if top - frame.bottom <= 2 * frame.rail_width:
        say = problems.length
        problems.add(
            ("slope", "low"),
            f"under the slope the face frame is {say(top - frame.bottom)} high: its rails leave "
            f"no opening",
            f"Measure again, or make the rails narrower: together less than "
            f"{say(top - frame.bottom)}.",
        )
    return replace(rod, front=replace(rod.front, frame=replace(frame, top=top)))


def _pitch(wish: SlopeSpec, rod: Rod, problems: Problems) -> float | None:
    """Degrees from level; None where the spec gives none, which is noted."""
    say = problems.length
    if (wish.run is None) == (wish.pitch is None):
        given = "both" if wish.run is not None else "neither"
        problems.add(
            ("slope", "pitch") if wish.run is not None else ("slope",),
            f"a slope has a `run` or a `pitch`; this one has {given}",
            "Give one of them.",
        )
        return None
    if wish.pitch is not None:
        if wish.high is not None:
            problems.add(
                ("slope", "high"),
                "`high` goes with `run`; with a `pitch` it says nothing",
                "Leave one of them out.",
            )
            return None
        pitch = wish.pitch
    else:
        assert wish.run is not None
        high = wish.high
        if high is None:
            high = rod.opening.height if rod.opening else rod.outside.overall
        if high <= wish.low:
            problems.add(
                ("slope", "low"),
                f"the ceiling is {say(wish.low)} at its low side and {say(high)} after its run: "
                f"it doesn't rise",
                "Measure again, or give `high`.",
            )
            return None
        pitch = math.degrees(math.atan2(high - wish.low, wish.run))
    if not _LEAST_PITCH <= pitch <= _MOST_PITCH:
        problems.add(
            ("slope", "pitch") if wish.pitch is not None else ("slope", "run"),
            f"a pitch of {pitch:.3g} degrees is as good as "
            f"{'level' if pitch < _LEAST_PITCH else 'plumb'}: a slope is cut from "
            f"{_LEAST_PITCH:g} to {_MOST_PITCH:g} degrees",
            "Measure again, or leave the slope out and make the unit smaller.",
        )
        return None
    return pitch


def _low_end(spec: UnitSpec, rod: Rod, falls: str) -> tuple[float, float]:
    """Where the ceiling is measured at its low side: x and y."""
    shape = rod.opening.shape if rod.opening else None
    if falls == "left":
        return (shape.front.corners[0][0] if shape else 0.0), 0.0
    if falls == "right":
        return (shape.front.corners[1][0] if shape else rod.outside.width), 0.0
    if falls == "front":
        setback = spec.face_frame.setback if spec.face_frame else 0.0
        return 0.0, -(rod.front.frame.thickness if rod.front.frame else 0.0) - setback
    rear = max(rod.outside.depth, rod.back.rear) if rod.back else rod.outside.depth
    return 0.0, rear + (spec.fit.back if rod.opening else 0.0)


def _passes(lines: SlopeLines, rod: Rod, problems: Problems) -> bool:
    """Whether the slope cuts the unit, deep enough for a board, and leaves a low side."""
    say = problems.length
    t = rod.thickness
    end, inside = {
        "left": ((0.0, 0.0), (t, 0.0)),
        "right": ((rod.outside.width, 0.0), (rod.outside.width - t, 0.0)),
        "front": ((0.0, 0.0), (0.0, 0.0)),
        "rear": ((0.0, rod.outside.depth), (0.0, rod.outside.depth)),
    }[lines.falls]
    over = height_at(lines.outer, *end)
    under = height_at(lines.inner, *inside)
    if over >= rod.outside.height:
        problems.add(
            ("slope",),
            f"the slope passes over the unit: less its clearance it is {say(over)} up at the "
            f"{lines.falls}, and the unit {say(rod.outside.height)} high",
            "Leave `slope` out, or measure it again.",
        )
        return False
    if under > rod.inside.ceiling:
        problems.add(
            ("slope",),
            f"the slope takes so little off the unit's {lines.falls} that no sloping board fits "
            f"there: its underside would be {say(under)} up, the top's {say(rod.inside.ceiling)}",
            f"Make the unit {say(math.floor(over))} high (`size.height`), and leave `slope` out.",
        )
        return False
    if height_at(lines.inner, *end) < rod.inside.floor + LEAST_LOW:
        problems.add(
            ("slope", "low"),
            f"under the slope the unit's {lines.falls} has only "
            f"{say(height_at(lines.inner, *end) - rod.inside.floor)} of clear height",
            f"Make the unit smaller so that it ends where the slope is higher; "
            f"{say(LEAST_LOW)} are needed.",
        )
        return False
    return True
