"""What a unit is cut out round: skirtings, pipes, sockets.  mm, unit frame."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry.boxes import Box
from rodwright.photo.planes import faces, sides_of
from rodwright.photo.recess import Recess
from rodwright.photo.scene import Body, Surface
from rodwright.photo.turned import turned_body
from rodwright.unit import Obstacle, Unit

PAINTED = Surface((0.74, 0.73, 0.70), 0.35, 0.45)
"""Skirtings and pipes painted white (a choice)."""
PLASTIC = Surface((0.78, 0.78, 0.77), 0.25, 0.5)
"""A socket's plate (a choice)."""
_SLOT = Surface((0.04, 0.04, 0.04), 0.5, 0.3)


def obstacle_bodies(unit: Unit, room: Box, recess: Recess | None) -> Iterator[Body]:
    """What the unit is cut out round; what runs on does so to the walls of its opening, or of the
    ``room``, and up to the ceiling or its slope."""
    for number, each in enumerate(unit.surroundings.obstacles):
        name, box = f"{each.kind} {number}", each.box
        if each.runs == 0:
            ends = recess.reach if recess else (room.low[0], room.high[0])
            box = box.spanning(0, *ends)
        elif each.runs == 2:
            box = box.spanning(2, room.low[2], _head(unit, room, box))
        if each.kind == "pipe":
            yield _pipe(name, box, each)
        else:
            body = faces(name, sides_of(box), PLASTIC if each.kind == "socket" else PAINTED)
            if body is not None:
                yield body


def _head(unit: Unit, room: Box, box: Box) -> float:
    slope = unit.surroundings.ceiling
    if slope is None:
        return room.high[2]
    (px, py, pz), (nx, ny, nz) = slope
    x, y, _ = box.centre
    return min(room.high[2], pz - ((x - px) * nx + (y - py) * ny) / nz)


def _pipe(name: str, box: Box, pipe: Obstacle) -> Body:
    assert pipe.runs is not None
    radius = box.size[(pipe.runs + 1) % 3] / 2
    foot = list(box.centre)
    foot[pipe.runs] = box.low[pipe.runs]
    profile = ((radius, 0.0), (radius, box.size[pipe.runs]))
    return turned_body(name, profile, (foot[0], foot[1], foot[2]), PAINTED, axis=pipe.runs)
