"""What is photographed: the unit closed, open, taken apart."""

from __future__ import annotations

from collections.abc import Callable, Mapping

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.photo.bodies import unit_bodies
from rodwright.photo.framing import framed
from rodwright.photo.room import room_round
from rodwright.photo.scene import Scene
from rodwright.pictures.explode import explode
from rodwright.pictures.opened import opened
from rodwright.unit import Unit

TEXEL = 1.0
"""Size of a texture's pixel, mm."""


def closed(unit: Unit, size: int, *, seed: int = 0, contents: bool = False) -> Scene:
    """The unit as it stands, with what it carries if ``contents``; the picture's longer side has
    ``size`` pixels.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    del seed, contents
    return _in_room(unit, {}, unit.envelope, size)


def open_view(unit: Unit, size: int, *, seed: int = 0, contents: bool = False) -> Scene:
    """The unit with its doors and drawers open; as :func:`closed` otherwise."""
    return closed(opened(unit), size, seed=seed, contents=contents)


def apart(unit: Unit, size: int, *, seed: int = 0, contents: bool = False) -> Scene:
    """The parts moved apart, without contents; as :func:`closed` otherwise."""
    del seed, contents
    moves = explode(unit)
    return _in_room(unit, moves, _moved_box(unit, moves), size)


SHOTS: dict[str, Callable[..., Scene]] = {"closed": closed, "open": open_view, "apart": apart}
"""By the names of their files."""


def shots_of(unit: Unit) -> tuple[str, ...]:
    """The names of the shots that there are of a unit: ``open`` only where something opens."""
    return tuple(name for name in SHOTS if name != "open" or unit.motions)


def _in_room(unit: Unit, moves: Mapping[str, Vector], box: Box, size: int) -> Scene:
    room = room_round(unit)
    width, height = _format(box, size)
    bodies = (*unit_bodies(unit, moves, texel=TEXEL), *room.bodies)
    return Scene(bodies, room.lamps, framed(box, width, height), room.sky, room.exposure)


def _format(box: Box, size: int) -> tuple[int, int]:
    if box.size[0] > box.size[2]:
        return size, round(size * 0.75)
    return round(size * 0.75), size


def _moved_box(unit: Unit, moves: Mapping[str, Vector]) -> Box:
    points = []
    for part in unit.parts:
        box, move = part.bounds(), moves[part.ref]
        points += [
            (corner[0] + move[0], corner[1] + move[1], corner[2] + move[2])
            for corner in (box.low, box.high)
        ]
    return Box.of_points(points)
