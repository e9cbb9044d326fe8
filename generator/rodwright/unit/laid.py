"""How parts are laid to be worked: the side with the most workings up.

Every part is turned so that its worked side is +z, and its near end (x = 0) is the one that
lies at the bottom, left or front of the unit, so that what faces each other (two sides, top
and bottom) is measured along its length from the same end.  Of which edge y is measured then
follows: a piece is turned over, never mirrored.  Where both faces have as many workings, the
one that shows is up; where both or neither show, the piece stays as it was.

Lists, model, drawings and part files are all in this frame, so that a figure in one of them
is the same in the others.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from rodwright.geometry import Vector, vector
from rodwright.unit import Blank, Edging, Part, Placement, Surface, Unit, Working
from rodwright.unit.workings.frames import Turn, plain

STILL = Turn()
"""No turn at all."""


def laid_unit(unit: Unit) -> Unit:
    """The same unit, every part's frame as it is laid to be worked."""
    gathered: dict[tuple[Blank, tuple[Working, ...], tuple[Edging, ...]], list[Part]] = {}
    for part in unit.parts:
        gathered.setdefault((part.blank, part.workings, part.edged), []).append(part)
    by_ref = {part.ref: part for parts in gathered.values() for part in laid(parts)}
    fittings = tuple(
        each.moved(unit.part(each.ref).placement, by_ref[each.ref].placement)
        for each in unit.fittings
    )
    parts = tuple(by_ref[part.ref] for part in unit.parts)
    return replace(unit, parts=parts, fittings=fittings)


def laid(parts: Sequence[Part]) -> tuple[Part, ...]:
    """Equal pieces as they are laid to be worked, all in the same way.

    Where they lie in different ways in the unit, the first one decides which end is near.
    """
    over = side_up(parts[0]) is Surface.REVERSE
    length = parts[0].placement.length
    back = length[max(range(3), key=lambda axis: (round(abs(length[axis]), 6), axis))] < 0
    turn = Turn(length=back, width=over is not back, thickness=over)
    return tuple(turned(part, turn) for part in parts)


def turned(part: Part, turn: Turn) -> Part:
    """The same piece at the same place in the unit, its own frame turned."""
    if turn == STILL:
        return part
    size, placed, blank = part.blank.size, part.placement, part.blank
    x, y, z = (extent if over else 0.0 for extent, over in zip(size, turn.axes, strict=True))
    return replace(
        part,
        blank=replace(
            blank,
            show_surfaces=tuple(map(turn.surface, blank.show_surfaces)),
            trim_at=tuple(map(turn.surface, blank.trim_at)),
        ),
        placement=Placement(
            vector(map(plain, placed.to_unit((x, y, z)))),
            _reversed(placed.length) if turn.length else placed.length,
            _reversed(placed.width) if turn.width else placed.width,
        ),
        workings=tuple(each.turned(turn, size) for each in part.workings),
        edged=tuple(replace(each, surface=turn.surface(each.surface)) for each in part.edged),
    )


def side_up(part: Part) -> Surface:
    """The face that is up: the one with the most workings, or else the one that shows."""
    size, shows = part.blank.size, part.blank.show_surfaces
    sides = [working.worked_from(size) for working in part.workings]
    face, reverse = sides.count(Surface.FACE), sides.count(Surface.REVERSE)
    if face == reverse:
        only = Surface.REVERSE in shows and Surface.FACE not in shows
        return Surface.REVERSE if only else Surface.FACE
    return Surface.FACE if face > reverse else Surface.REVERSE


def _reversed(direction: Vector) -> Vector:
    x, y, z = direction
    return (0.0 - x, 0.0 - y, 0.0 - z)
