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
from dataclasses import dataclass, replace

from rodwright.geometry import TOUCH, Vector
from rodwright.unit import (
    Bevel,
    Blank,
    Easing,
    Edging,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    Part,
    Placement,
    PocketHole,
    Rebate,
    Surface,
    Unit,
    Working,
)

_DIGITS = 9
"""Decimals of a millimetre that turned figures keep: sums and differences of lengths that
should be equal differ in later ones."""


@dataclass(frozen=True, slots=True)
class Turn:
    """A half turn of a part about one of its axes, or none: which axes it turns end for end.

    Two of them or none; any other number would mirror the part.
    """

    length: bool = False
    width: bool = False
    thickness: bool = False

    def __post_init__(self) -> None:
        if sum(self.axes) % 2:
            raise ValueError("a turn that leaves a part's hand alone turns two axes or none")

    @property
    def axes(self) -> tuple[bool, bool, bool]:
        """Whether x, y and z run the other way afterwards."""
        return (self.length, self.width, self.thickness)

    def surface(self, surface: Surface) -> Surface:
        """What a surface is afterwards."""
        return surface.opposite if self.axes[surface.axis] else surface

    def working(self, working: Working, size: Vector) -> Working:
        """A working of a blank of this size, in the frame of the turned part."""
        return _turned(working, size, self)

    def part(self, part: Part) -> Part:
        """The same piece at the same place in the unit, its own frame turned."""
        if self == STILL:
            return part
        size, placed = part.blank.size, part.placement
        origin = placed.to_unit(
            tuple(size[axis] if over else 0.0 for axis, over in enumerate(self.axes))  # type: ignore[arg-type]
        )
        return replace(
            part,
            blank=self._blank(part.blank),
            placement=Placement(
                (_plain(origin[0]), _plain(origin[1]), _plain(origin[2])),
                _reversed(placed.length) if self.length else placed.length,
                _reversed(placed.width) if self.width else placed.width,
            ),
            workings=tuple(self.working(each, size) for each in part.workings),
            edged=tuple(replace(each, surface=self.surface(each.surface)) for each in part.edged),
        )

    def _blank(self, blank: Blank) -> Blank:
        return replace(
            blank,
            show_surfaces=tuple(map(self.surface, blank.show_surfaces)),
            trim_at=tuple(map(self.surface, blank.trim_at)),
        )


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
    return tuple(turn.part(part) for part in parts)


def side_up(part: Part) -> Surface:
    """The face that is up: the one with the most workings, or else the one that shows."""
    size, shows = part.blank.size, part.blank.show_surfaces
    sides = [face_worked(working, size) for working in part.workings]
    face, reverse = sides.count(Surface.FACE), sides.count(Surface.REVERSE)
    if face == reverse:
        only = Surface.REVERSE in shows and Surface.FACE not in shows
        return Surface.REVERSE if only else Surface.FACE
    return Surface.FACE if face > reverse else Surface.REVERSE


def face_worked(working: Working, size: Vector) -> Surface | None:
    """The face from which a working is cut; None where it is cut from either, or from an edge.

    A slanting cut that takes a whole end or edge off is sawn, whichever face is up.
    """
    match working:
        case Hole(surface, _, _, depth):
            blind = depth is not None and depth < size[surface.axis]
            return surface if surface.axis == 2 and blind else None
        case Groove(surface) | Housing(surface) | Mortise(surface):
            blind = surface.axis == 2 and working.depth < size[2]
            return surface if blind else None
        case PocketHole(surface):
            return surface
        case Rebate(surface, edge) | Easing(surface, edge):
            return next((each for each in (surface, edge) if each.axis == 2), None)
        case Bevel(surface, edge):
            sawn = any(takes_off(working, each, size) for each in (surface, edge))
            return next((each for each in (surface, edge) if each.axis == 2 and not sawn), None)
        case Mitre() | Notch():
            return None


def takes_off(working: Working, surface: Surface, size: Vector) -> bool:
    """Whether a working is a slanting cut that takes a whole end or edge off."""
    if isinstance(working, Mitre):
        return working.end is surface
    if not isinstance(working, Bevel) or surface not in (working.surface, working.edge):
        return False
    other = working.edge if surface is working.surface else working.surface
    down = working.depth if surface is working.edge else working.width
    # Of two surfaces that it takes off whole the cut belongs to the end.
    across = size[other.axis]
    return down >= across - TOUCH and not (other.axis == 0 and takes_off(working, other, size))


def _turned(working: Working, size: Vector, turn: Turn) -> Working:
    axes, other = turn.axes, turn.surface

    def low(axis: int, at: float, extent: float = 0.0) -> float:
        return _plain(size[axis] - at - extent) if axes[axis] else at

    def span(axis: int, start: float, stop: float | None) -> tuple[float, float | None]:
        if not axes[axis]:
            return start, stop
        return (
            0.0 if stop is None else _plain(size[axis] - stop),
            None if start <= 0 else _plain(size[axis] - start),
        )

    match working:
        case Rebate(surface, edge, _, _, start, stop) | Easing(surface, edge, _, start, stop):
            start, stop = span(3 - surface.axis - edge.axis, start, stop)
            return replace(
                working, surface=other(surface), edge=other(edge), start=start, stop=stop
            )
        case Groove(surface, at, width, _, start, stop):
            at, (start, stop) = low(3 - surface.axis, at, width), span(0, start, stop)
            return replace(working, surface=other(surface), position=at, start=start, stop=stop)
        case Housing(surface, at, width, _, start, stop):
            at, (start, stop) = low(0, at, width), span(1, start, stop)
            return replace(working, surface=other(surface), position=at, start=start, stop=stop)
        case Notch(x, y, length, width):
            return replace(working, x=low(0, x, length), y=low(1, y, width))
        case Mitre(end, _, long):
            return replace(working, end=other(end), long=other(long))
        case Hole(surface, (along, across)):
            first, second = surface.across
            place = (low(first, along), low(second, across))
            return replace(working, surface=other(surface), position=place)
        case Mortise(surface, (along, across), (length, width)):
            first, second = surface.across
            place = (low(first, along, length), low(second, across, width))
            return replace(working, surface=other(surface), position=place)
        case Bevel(surface, edge):
            return replace(working, surface=other(surface), edge=other(edge))
        case PocketHole(surface, end, at):
            at = low(3 - surface.axis - end.axis, at)
            return replace(working, surface=other(surface), end=other(end), position=at)


def _plain(length: float) -> float:
    return round(length, _DIGITS) + 0.0


def _reversed(direction: Vector) -> Vector:
    x, y, z = direction
    return (0.0 - x, 0.0 - y, 0.0 - z)
