"""Scenes: a doorway, a corner from above, standing up, an opening in plan and side section.

A plan is seen from above: x to the right, y away from the room into the opening.  A side
section is seen from the right: x away from the room, y up.  Millimetres.
"""

from __future__ import annotations

from math import hypot, pi

from shapely import Polygon, box

from rodwright.unit.way import Doorway
from rodwright.way.body import Body, Niche, rest
from rodwright.way.search import Pose, Ring, Scene, Wall

_FAR = 150.0
"""How thick walls are drawn, and how far before the opening a body begins, at least."""
NOWHERE = Polygon()


def _block(name: str, x0: float, y0: float, x1: float, y1: float) -> Wall:
    return Wall(name, _rectangle(x0, y0, x1, y1))


def _rectangle(x0: float, y0: float, x1: float, y1: float) -> Ring:
    return ((x0, y0), (x1, y0), (x1, y1), (x0, y1))


def _centred(long: float, high: float) -> Ring:
    return _rectangle(-long / 2, -high / 2, long / 2, high / 2)


def corner_scene(long: float, short: float, before: float, after: float) -> Scene:
    """A rectangle that comes down a corridor and leaves to the right, seen from above."""
    size = hypot(long, short)
    x1, y1 = before + 2 * size, after + 2 * size
    walls = (
        _block("the left wall", -_FAR, -_FAR, 0, y1 + size),
        _block("the wall ahead", -_FAR, -_FAR, x1 + size, 0),
        _block("the inner corner", before, after, x1 + size, y1 + size),
    )
    return Scene(
        (_centred(long, short),),
        walls,
        (0, 0, x1, y1),
        lambda _right, _above: box(0, after + size / 2, before, y1),
        box(before + size / 2, 0, x1, after),
    )


def standing_scene(height: float, depth: float, ceiling: float) -> Scene:
    """A box that lies on its back and is to stand, in side section."""
    size = hypot(height, depth)
    walls = (
        _block("the floor", -3 * size, -_FAR, 3 * size, 0),
        _block("the ceiling", -3 * size, ceiling, 3 * size, ceiling + _FAR),
    )
    room = box(-2 * size, 0, 2 * size, ceiling)
    lying = depth / 2 + 1e-3
    return Scene(
        (_centred(depth, height),),
        walls,
        room.bounds,
        lambda _right, above: room if above <= lying else NOWHERE,
        Pose(0.0, height / 2, 0.0),
        (-pi / 2, 0.0),
    )


def doorway_scene(step_outline: tuple[float, float], door: Doorway, up: Pose) -> Scene:
    """A doorway seen from before it, with what the load shows of itself in it."""
    w, h = door.width, door.height
    walls = (
        _block("the left jamb", -2 * _FAR, 0, 0, h + 2 * _FAR),
        _block("the right jamb", w, 0, w + 2 * _FAR, h + 2 * _FAR),
        _block("the head", 0, h, w, h + 2 * _FAR),
        _block("the floor", -2 * _FAR, -_FAR, w + 2 * _FAR, 0),
    )
    return Scene(
        (_centred(*step_outline),),
        walls,
        (0, 0, w, h),
        lambda _right, _above: NOWHERE,
        up,
    )


def plan_scene(body: Body, niche: Niche) -> Scene:
    """The opening from above: the unit stands upright and is shifted and turned on the floor."""
    size = hypot(body.width + 2 * body.frame_sides, body.overall_depth)
    before = niche.front if niche.front is not None else 2 * size
    left, right = -2 * size, niche.width + 2 * size
    rear = niche.depth + _FAR
    skirting = niche.skirting
    walls = [
        _block("the left wall", left, 0, 0, rear),
        _block("the right wall", niche.width, 0, right, rear),
        _block("the rear wall", 0, niche.depth, niche.width, rear),
    ]
    if niche.front is not None:
        walls.append(_block("the wall opposite", left, -before - _FAR, right, -before))
    nib = (niche.width - niche.mouth_width) / 2
    if nib > 0:
        walls += [
            _block("the left side of its mouth", 0, 0, nib, niche.mouth_thickness),
            _block(
                "the right side of its mouth",
                niche.width - nib,
                0,
                niche.width,
                niche.mouth_thickness,
            ),
        ]
    if skirting:
        walls += [
            _block("the skirting at the left", 0, 0, skirting, niche.depth),
            _block("the skirting at the right", niche.width-skirting, 0, niche.width, niche.depth),
            _block("the skirting at the rear", 0, niche.depth - skirting, niche.width, niche.depth),
            _block("the skirting left of it", left, -skirting, 0, 0),
            _block("the skirting right of it", niche.width, -skirting, right, 0),
        ]  # fmt: skip
    middle = body.overall_depth / 2
    frame = body.frame_thickness
    pieces = [_rectangle(-body.width / 2, frame - middle, body.width / 2, middle)]
    if frame:
        wide = body.width / 2 + body.frame_sides
        pieces.append(_rectangle(-wide, -middle, wide, frame - middle))
    return Scene(
        tuple(pieces),
        tuple(walls),
        (left, -before, right, rear),
        lambda _right, above: _strip(left, -before, right, -above - skirting - 1),
        Pose(niche.width / 2, rest(body, niche) + middle, 0.0),
    )


def section_scene(body: Body, niche: Niche) -> Scene:
    """The opening from the side: the unit is shifted, lifted and tilted to front or rear."""
    high = body.height + body.frame_top
    size = hypot(high, body.overall_depth)
    before = niche.front if niche.front is not None else 2 * size
    top = (niche.ceiling if niche.ceiling is not None else niche.height + 2 * size) + _FAR
    rear = niche.depth + _FAR
    walls = [
        _block("the floor", -before - _FAR, -_FAR, rear, 0),
        _block("the top of the opening", 0, niche.height, rear, max(top, niche.height + _FAR)),
        _block("the rear wall", niche.depth, 0, rear, niche.height),
    ]
    if niche.ceiling is not None:
        walls.append(_block("the ceiling", -before - _FAR, niche.ceiling, 0, top))
    if niche.front is not None:
        walls.append(_block("the wall opposite", -before - _FAR, 0, -before, top))
    if niche.mouth_height < niche.height:
        walls.append(
            _block(
                "the top of its mouth", 0, niche.mouth_height, niche.mouth_thickness, niche.height
            )
        )
    if niche.skirting:
        walls.append(
            _block(
                "the skirting at the rear",
                niche.depth - niche.skirting,
                0,
                niche.depth,
                niche.skirting_height,
            )
        )
    middle, frame = body.overall_depth / 2, body.frame_thickness
    pieces = [_rectangle(frame - middle, -body.height / 2, middle, body.height / 2)]
    if frame:
        pieces.append(
            _rectangle(-middle, -body.height / 2, frame - middle, body.height / 2 + body.frame_top)
        )
    return Scene(
        tuple(pieces),
        tuple(walls),
        (-before, 0, rear, top),
        lambda right, _above: _strip(-before, 0, -right - 1, top),
        Pose(rest(body, niche) + middle, body.height / 2, 0.0),
    )


def _strip(x0: float, y0: float, x1: float, y1: float) -> Polygon:
    return box(x0, y0, x1, y1) if x1 > x0 and y1 > y0 else NOWHERE
