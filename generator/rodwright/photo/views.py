"""What is photographed: the unit closed, open, taken apart."""

from __future__ import annotations

from rodwright.geometry.boxes import Box
from rodwright.photo.bodies import unit_bodies
from rodwright.photo.framing import framed
from rodwright.photo.room import room_round
from rodwright.photo.scene import Scene
from rodwright.pictures.explode import explode
from rodwright.pictures.opened import opened
from rodwright.unit import Unit

TEXEL = 1.0
"""Size of a texture's pixel, mm."""


def closed(unit: Unit, width: int, height: int) -> Scene:
    """The unit as it stands.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    room = room_round(unit)
    bodies = (*unit_bodies(unit, {}, texel=TEXEL), *room.bodies)
    camera = framed(unit.envelope, width, height)
    return Scene(bodies, room.lamps, camera, room.sky, room.exposure)


def open_view(unit: Unit, width: int, height: int) -> Scene:
    """The unit with its doors and drawers open; as :func:`closed` otherwise."""
    return closed(opened(unit), width, height)


def apart(unit: Unit, width: int, height: int) -> Scene:
    """The parts moved apart; raises as :func:`closed`."""
    moves = explode(unit)
    points = []
    for part in unit.parts:
        box, move = part.bounds(), moves[part.ref]
        points += [
            (corner[0] + move[0], corner[1] + move[1], corner[2] + move[2])
            for corner in (box.low, box.high)
        ]
    room = room_round(unit)
    bodies = (*unit_bodies(unit, moves, texel=TEXEL), *room.bodies)
    return Scene(
        bodies, room.lamps, framed(Box.of_points(points), width, height), room.sky, room.exposure
    )
