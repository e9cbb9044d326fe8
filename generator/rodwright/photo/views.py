"""What is photographed: the unit closed, open, taken apart."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from rodwright.geometry.boxes import Box
from rodwright.photo.bodies import unit_bodies
from rodwright.photo.contents import bodies_of, things_in
from rodwright.photo.framing import format_for, framed, side_of
from rodwright.photo.room import Room, floor_under, plain_room, room_round
from rodwright.photo.scene import Body, Camera, Scene
from rodwright.photo.stamp import Shot
from rodwright.pictures.explode import explode
from rodwright.pictures.opened import opened
from rodwright.unit import Unit

_TEXELS = 0.75
"""Size of a texture's pixel, in pixels of the picture where the unit fills it."""
_FINEST, _COARSEST = 0.5, 4.0
"""Sizes of a texture's pixel, mm."""


def closed(
    unit: Unit,
    size: int,
    *,
    seed: int = 0,
    contents: bool = False,
    camera: Camera | None = None,
) -> Scene:
    """The unit as it stands, with what it carries if ``contents``; the picture's longer side has
    ``size`` pixels.  ``camera`` takes it, if not one that is framed for the unit.

    Raises:
        ValueError: a part's workings leave no single solid.
    """
    return _in_room(unit, unit, size, seed, contents, camera)


def open_view(unit: Unit, size: int, *, seed: int = 0, contents: bool = False) -> Scene:
    """The unit with its doors and drawers open; as :func:`closed` otherwise."""
    return _in_room(unit, opened(unit), size, seed, contents, None)


def apart(unit: Unit, size: int, *, seed: int = 0, contents: bool = False) -> Scene:
    """The parts moved apart, without contents; as :func:`closed` otherwise."""
    del contents
    moves = explode(unit)
    shown = [part.bounds().moved(moves[part.ref]) for part in unit.parts]
    box = Box.of_boxes(shown)
    width, height = format_for(box, size)
    side = side_of(unit)
    camera = framed(box, width, height, showing=shown, floor=box.low[2], side=side)
    bodies = unit_bodies(unit, moves, texel=texel_of(unit, size), seed=seed, eye=camera.eye)
    return _scene(bodies, plain_room(box, camera, seed=seed), camera)


SHOTS: dict[Shot, Callable[..., Scene]] = {"closed": closed, "open": open_view, "apart": apart}
"""By the names of their files."""


def shots_of(unit: Unit) -> tuple[Shot, ...]:
    """The names of the shots that there are of a unit: ``open`` only where something opens."""
    return tuple(name for name in SHOTS if name != "open" or unit.motions)


def camera_of(unit: Unit, shown: Sequence[Box], size: int) -> Camera:
    """The camera before a unit that shows all of some boxes (unit frame, mm)."""
    box = Box.of_boxes(shown)
    width, height = format_for(box, size)
    floor, side = floor_under(unit), side_of(unit)
    return framed(box, width, height, showing=shown, floor=floor, side=side)


def texel_of(unit: Unit, size: int) -> float:
    """How fine textures have to be, mm a pixel, for a picture of a unit of this size in pixels."""
    wanted = _TEXELS * max(unit.size) / size
    # In steps, so that pictures of nearly one size share their textures.
    return min(max(0.25 * round(wanted / 0.25), _FINEST), _COARSEST)


def _in_room(
    unit: Unit, stands: Unit, size: int, seed: int, contents: bool, camera: Camera | None
) -> Scene:
    shown = [part.bounds() for part in stands.parts]
    things = things_in(stands, seed) if contents else ()
    shown += [thing.box for thing in things]
    camera = camera or camera_of(stands, shown, size)
    texel = texel_of(unit, size)
    bodies = unit_bodies(unit, {}, texel=texel, seed=seed, stands=stands, eye=camera.eye)
    bodies += bodies_of(things)
    return _scene(bodies, room_round(stands, camera, seed=seed), camera)


def _scene(bodies: tuple[Body, ...], room: Room, camera: Camera) -> Scene:
    return Scene((*bodies, *room.bodies), room.lamps, camera, room.sky)
