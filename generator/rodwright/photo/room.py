"""A plain room round a unit: floor, walls, the opening it stands in, and a window's light.

Lengths in mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import Plane
from rodwright.photo.floors import boards, carpet
from rodwright.photo.framing import Side
from rodwright.photo.light import light_in
from rodwright.photo.obstacles import obstacle_bodies
from rodwright.photo.planes import Polygon, cut_off, faces, level, upright
from rodwright.photo.recess import Recess, recess_of
from rodwright.photo.scene import Body, Camera, Colour, Lamp, Surface
from rodwright.unit import Unit

PLASTER = Surface((0.585, 0.565, 0.525), 0.9, 0.2)
"""Emulsion on walls: a pale, warm grey that both oak and white paint stand out from (a choice)."""
CEILING = Surface((0.78, 0.77, 0.75), 0.9, 0.2)
"""White emulsion (a choice)."""
WOODWORK = Surface((0.74, 0.73, 0.70), 0.35, 0.45)
"""Skirtings in a white satin paint (a choice)."""
USUAL_CEILING = 2450.0
"""Height of a room where nothing says it, mm (common practice, no source)."""
UP_TO_CEILING = 2200.0
"""An opening at least this high (mm) goes up to the ceiling (common practice, no source)."""
HUNG_AT, HUNG_TOP, LEAST_BELOW = 1350.0, 2150.0, 300.0
"""A hung unit's underside is this far above the floor, mm, or as far as puts its top at
``HUNG_TOP``, which is in reach, if that is lower; but no less than ``LEAST_BELOW`` (common
practice, no source)."""
SKIRTING_HEIGHT, SKIRTING_DEPTH = 120.0, 16.0
"""mm (common practice, no source)."""
_EASED = 5.0
_BESIDE, _BEHIND_CAMERA, _AHEAD = 2100.0, 900.0, 4200.0
"""Room at either side of the unit, behind the camera and, at least, before the unit, mm (a
choice)."""
_TIGHT = 2.0


@dataclass(frozen=True, slots=True, eq=False)
class Room:
    """A room's bodies and lamps, and the light from where nothing stands."""

    bodies: tuple[Body, ...]
    lamps: tuple[Lamp, ...]
    sky: Colour


def floor_under(unit: Unit) -> float:
    """The z of the floor: 0, or lower where the unit hangs on the wall."""
    if not unit.hung:
        return 0.0
    return -max(min(HUNG_AT, HUNG_TOP - unit.envelope.high[2]), LEAST_BELOW)


def room_round(unit: Unit, camera: Camera, *, seed: int = 0) -> Room:
    """The room that a unit stands or hangs in, with the ``camera`` in it too.

    Its window is at the side away from the camera, but where a ceiling falls, where that is high.
    ``seed`` is of the boards of the floor.
    """
    floor = floor_under(unit)
    recess = recess_of(unit, floor)
    wall = recess.front if recess else _wall_behind(unit)
    box = _size_of(unit, recess, wall, floor, camera)
    slope = unit.surroundings.ceiling
    side = _side_of(camera)
    window = -side
    if slope and abs(slope[1][0]) > abs(slope[1][1]):
        window = side
    made = [*_floor(unit, box, recess, seed), *_walls(unit, box, recess, wall)]
    made += [*_skirtings(unit, box, recess, wall), *obstacle_bodies(unit, box, recess)]
    lamps = light_in(box, unit.envelope, window)
    return Room(tuple(made), lamps, (0.0, 0.0, 0.0))


def plain_room(shown: Box, camera: Camera, *, seed: int = 0) -> Room:
    """A room with nothing but floor and walls for what is taken apart: ``shown`` is the box round
    it, which the floor lies under and the wall behind."""
    floor, wall = shown.low[2] - _TIGHT, shown.high[1] + _BESIDE / 4
    top = max(shown.high[2] + _BESIDE / 4, floor + USUAL_CEILING)
    box = _round(shown, wall, floor, top, camera)
    low, high = box.low[:2], box.high[:2]
    made = [*boards(low, high, floor, seed), *_bodies(_plain_walls(box))]
    lamps = light_in(box, shown, -_side_of(camera))
    return Room(tuple(made), lamps, (0.0, 0.0, 0.0))


def _wall_behind(unit: Unit) -> float:
    """The y of the wall that a unit without an opening stands against: it keeps off it by the
    skirting, unless it is cut out round that or fixed to the wall."""
    rear = unit.envelope.high[1]
    if unit.surroundings.obstacles:
        return max(rear, *(each.box.high[1] for each in unit.surroundings.obstacles))
    return rear if _is_fixed(unit) else rear + SKIRTING_DEPTH + _TIGHT


def _is_fixed(unit: Unit) -> bool:
    return unit.hung or unit.loading.wall is not None


def _size_of(unit: Unit, recess: Recess | None, wall: float, floor: float, camera: Camera) -> Box:
    """The box of the room before the wall."""
    top = unit.envelope.high[2]
    ceiling = floor + USUAL_CEILING
    if unit.way_in is not None and unit.way_in.ceiling is not None:
        ceiling = floor + unit.way_in.ceiling
    if recess is not None and (recess.highest >= UP_TO_CEILING or recess.highest >= ceiling):
        ceiling = recess.highest
    elif top > ceiling - _TIGHT:
        ceiling = top + SKIRTING_HEIGHT
    return _round(unit.envelope, wall, floor, ceiling, camera)


def _side_of(camera: Camera) -> Side:
    """The side that a camera stands at, by where it looks."""
    return 1 if camera.turn <= 0 else -1


def _round(shown: Box, wall: float, floor: float, top: float, camera: Camera) -> Box:
    """A room round what is shown, with a camera before it."""
    x, y, z = camera.eye
    near = min(y - _BEHIND_CAMERA, shown.low[1] - _AHEAD)
    left = min(shown.low[0] - _BESIDE, x - _BEHIND_CAMERA)
    right = max(shown.high[0] + _BESIDE, x + _BEHIND_CAMERA)
    return Box((left, near, floor), (right, wall, max(top, z + SKIRTING_HEIGHT)))


def _floor(unit: Unit, box: Box, recess: Recess | None, seed: int) -> Iterator[Body]:
    """The floor; it runs on into the opening, where it shows before a plinth that is set back."""
    low, high = box.low[:2], (box.high[0], recess.rear if recess else box.high[1])
    at = box.low[2]
    if unit.loading.floor == "carpet":
        yield from carpet(low, high, at)
    else:
        yield from boards(low, high, at, seed)


def _walls(unit: Unit, box: Box, recess: Recess | None, wall: float) -> Iterator[Body]:
    """Walls and ceiling; all of them cut off at a sloping ceiling."""
    slope = unit.surroundings.ceiling
    polygons = list(_sides(box))
    ceilings: list[Polygon] = [level(box.low[:2], box.high[:2], box.high[2], down=True)]
    if recess is None:
        polygons.append(upright((box.low[0], wall), (box.high[0], wall), box.low[2], box.high[2]))
    else:
        polygons += recess.wall_round(box.low[0], box.high[0], box.high[2])
        polygons += recess.inside()
    if slope is not None:
        polygons = [cut_off(each, slope) for each in polygons]
        # What lies in the slope itself isn't cut at it: rounding would take some of its corners.
        sloping = _sloping(box, slope, recess.rear if recess else wall)
        ceilings = [*(cut_off(each, slope) for each in ceilings), *sloping]
    yield from _bodies((polygons, ceilings))


def _sloping(box: Box, slope: Plane, rear: float) -> Iterator[Polygon]:
    """The sloping ceiling over room and opening; one that falls to the front ends before the unit,
    at a face down to it."""
    (px, py, pz), (nx, ny, nz) = slope
    front = box.low[1] if ny >= 0 else py

    def over(x: float, y: float) -> float:
        return pz - ((x - px) * nx + (y - py) * ny) / nz

    places = ((box.low[0], front), (box.low[0], rear), (box.high[0], rear), (box.high[0], front))
    under: list[Polygon] = [[(x, y, over(x, y)) for x, y in places]]
    lid: Plane = ((0.0, 0.0, box.high[2]), (0.0, 0.0, 1.0))
    for polygon in under:
        yield cut_off(polygon, lid)


def _sides(box: Box) -> Iterator[Polygon]:
    (a, b, c), (x, y, z) = box.low, box.high
    yield upright((a, b), (a, y), c, z)
    yield upright((x, y), (x, b), c, z)


def _plain_walls(box: Box) -> tuple[list[Polygon], list[Polygon]]:
    wall = upright((box.low[0], box.high[1]), (box.high[0], box.high[1]), box.low[2], box.high[2])
    lid = level(box.low[:2], box.high[:2], box.high[2], down=True)
    return [*_sides(box), wall], [lid]


def _bodies(made: tuple[list[Polygon], list[Polygon]]) -> Iterator[Body]:
    for name, polygons, surface in zip(("walls", "ceiling"), made, (PLASTER, CEILING), strict=True):
        body = faces(name, polygons, surface)
        if body is not None:
            yield body


def _skirtings(unit: Unit, box: Box, recess: Recess | None, wall: float) -> Iterator[Body]:
    """Skirtings along the wall: up to the opening, up to a unit that is fixed to the wall, or
    behind one that stands before it."""
    if any(each.kind == "skirting" for each in unit.surroundings.obstacles) and recess is None:
        return
    left, right = box.low[0], box.high[0]
    if recess is not None:
        stop, start = recess.reach
    elif _is_fixed(unit) and not unit.hung:
        stop, start = unit.envelope.low[0] - _TIGHT, unit.envelope.high[0] + _TIGHT
    else:
        stop = start = right
    polygons = [
        polygon
        for a, x in ((left, stop), (start, right))
        if x - a > _TIGHT
        for polygon in moulded(
            Box((a, wall - SKIRTING_DEPTH, box.low[2]), (x, wall, box.low[2] + SKIRTING_HEIGHT))
        )
    ]
    body = faces("skirtings", polygons, WOODWORK)
    if body is not None:
        yield body


def moulded(box: Box) -> Iterator[Polygon]:
    """A skirting: a board along x whose upper front edge is bevelled."""
    (a, b, c), (x, y, z) = box.low, box.high
    eased = min(_EASED, (y - b) / 2)
    profile = [(b, c), (y, c), (y, z), (b + eased, z), (b, z - eased)]
    for number, (near, foot) in enumerate(profile):
        far, top = profile[number - 1]
        yield ((a, near, foot), (x, near, foot), (x, far, top), (a, far, top))
    yield [(x, *point) for point in profile]
    yield [(a, *point) for point in reversed(profile)]
