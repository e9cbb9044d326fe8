"""How far a model sways under a push at its top; N and mm, unit frame."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.strength.model.loads import Forces, pushed
from rodwright.strength.model.mesh import Grid
from rodwright.strength.model.solving import Moved
from rodwright.strength.model.whole import Model
from rodwright.unit import PANELS

SIDEWAYS = 0
NEAR_TOP = 60.0
"""A level this near the top of the highest panel is at the top, mm."""


@dataclass(frozen=True, slots=True)
class Sway:
    """How far a unit's top goes to the right, mm: the mean over its depth, its front and its
    back; and its lowest level (``foot``)."""

    mean: float
    front: float
    back: float
    foot: float


def sway(model: Model, push: float) -> Sway:
    """How far the uppermost panels go to the right under ``push`` N on them alone; nothing lifts
    off the floor, as whether the unit tips is another question.

    Raises:
        UnsolvedError: nothing holds the unit against it.
    """
    grids = _uppermost(model)
    forces: Forces = {}
    for grid in grids:
        for node, values in pushed(grid, push / len(grids), SIDEWAYS).items():
            forces[node] = values
    moved = model.pushed(forces)
    count = len(grids)
    return Sway(
        sum(_across(grid, moved) for grid in grids) / count,
        sum(_edge(grid, moved, 0) for grid in grids) / count,
        sum(_edge(grid, moved, -1) for grid in grids) / count,
        _foot(model, moved),
    )


def _uppermost(model: Model) -> list[Grid]:
    """The panels that reach highest, all of one height."""
    panels = [part.ref for part in model.unit.parts if part.role in PANELS]
    grids = {id(grid): grid for ref in panels if (grid := model.mesh.grids.get(ref))}
    top = max(grid.piece.box.high[2] for grid in grids.values())
    levels = [
        grid
        for grid in grids.values()
        if grid.axes == (0, 1) and grid.piece.box.high[2] > top - NEAR_TOP
    ]
    return levels or [grid for grid in grids.values() if grid.piece.box.high[2] > top - 1]


def _foot(model: Model, moved: Moved) -> float:
    levels = [grid for grid in model.mesh.grids.values() if grid.axes == (0, 1)]
    lowest = min(levels, key=lambda grid: grid.middle[2], default=None)
    return _across(lowest, moved) if lowest else 0.0


def _across(grid: Grid, moved: Moved) -> float:
    return sum(
        float(moved.moves[node, SIDEWAYS]) * grid.share(place)
        for place, node in grid.numbers.items()
    )


def _edge(grid: Grid, moved: Moved, end: int) -> float:
    """How far its front (0) or back (-1) edge goes across."""
    at = grid.along(1)[end]
    there = [
        node
        for place, node in grid.numbers.items()
        if grid.ticks[grid.axes.index(1)][place[grid.axes.index(1)]] == at
    ]
    return sum(float(moved.moves[node, SIDEWAYS]) for node in there) / len(there)
