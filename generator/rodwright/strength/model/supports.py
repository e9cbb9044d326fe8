"""What a unit stands on and hangs on, as supports of its nodes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping

from rodwright.strength.bearings import Bearing
from rodwright.strength.model.mesh import Grid, Mesh
from rodwright.strength.model.pieces import Board
from rodwright.strength.model.solving import Support, UnsolvedError
from rodwright.strength.model.ties import STIFF
from rodwright.trade.feet import FOOT_INSET
from rodwright.unit import Unit
from rodwright.unit.facts import STANDS

DOWN = (2, -1)
BACKWARDS = (1, 1)
WALL = (0.0, STIFF, 0.0)


HELD = (STIFF, STIFF, STIFF)
FLOOR = 2e4
"""N/mm at a node that stands on the floor: wood and floor give a little where they press on each
other (stated estimate: 0.01 mm under 20 kg)."""


def supports_of(
    unit: Unit, mesh: Mesh, bearings: Mapping[str, Bearing]
) -> tuple[tuple[str, Support], ...]:
    """What holds the unit, each with the ref of the part it holds.

    The floor pushes what stands on it, and holds by friction what it pushes; so do feet.  What
    hangs is held at the back of the uppermost level, where its rail is, and pushes at the wall.

    Raises:
        UnsolvedError: it hangs and has no level to hang by.
    """
    if unit.hung:
        return tuple(_hung(mesh))
    found = [*_feet(bearings, mesh)]
    grids = {id(grid): grid for grid in mesh.grids.values()}
    standing = [grid for grid in grids.values() if grid.piece.box.low[2] <= STANDS]
    lying = any(grid.axes == (0, 1) for grid in standing)
    for grid in standing:
        # Beside a bottom that lies on the floor, what stands there is held by it from going to
        # either side: held by the floor too, its foot couldn't turn.
        slides = lying and grid.axes != (0, 1)
        for node in _lowest(grid):
            found += _on_floor(grid.piece.refs[0], node, 0.0 if slides else STIFF)
    return tuple(found)


def _on_floor(ref: str, node: int, sideways: float) -> tuple[tuple[str, Support], ...]:
    """The floor pushes; friction holds what stands on it, wherever on it the load comes to."""
    return (
        (ref, Support(node, (0.0, 0.0, FLOOR), DOWN)),
        (ref, Support(node, (sideways, STIFF, 0.0))),
    )


def _feet(bearings: Mapping[str, Bearing], mesh: Mesh) -> Iterator[tuple[str, Support]]:
    """Adjustable feet, in two rows under the level that they are screwed to."""
    for bearing in bearings.values():
        box = bearing.level.box
        inset = min(FOOT_INSET, box.size[1] / 4)
        for seat in bearing.seats:
            if not seat.on:
                grid = mesh.grids[bearing.level.ref]
                for y in (box.low[1] + inset, box.high[1] - inset):
                    node = grid.nearest((seat.at, y, box.low[2]))
                    yield from _on_floor(bearing.level.ref, node, STIFF)


def _hung(mesh: Mesh) -> Iterator[tuple[str, Support]]:
    """The back of the uppermost level fixed to the wall, that of the lowest held off it.

    Raises:
        UnsolvedError: there is no level.
    """
    levels = [
        grid
        for grid in mesh.grids.values()
        if isinstance(grid.piece, Board) and grid.piece.normal == 2
    ]
    if not levels:
        raise UnsolvedError("it has no top, bottom or shelf to hang by")
    levels.sort(key=lambda grid: grid.middle[2])
    for grid, moves, pushes in ((levels[-1], HELD, None), (levels[0], WALL, BACKWARDS)):
        rear = grid.along(1)[-1]
        for place, at in grid.places():
            if at[1] >= rear:
                yield grid.piece.refs[0], Support(grid.numbers[place], moves, pushes)


def _lowest(grid: Grid) -> Iterator[int]:
    """The lowest nodes of a piece: all those of a level that lies on the floor."""
    bottom = grid.along(2)[0]
    for place, at in grid.places():
        if at[2] <= bottom:
            yield grid.numbers[place]
