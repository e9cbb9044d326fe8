"""What the nodes of a unit carry: its own weight, and what stands on it.

Forces in N and moments in N mm, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from itertools import pairwise

from rodwright.amounts import GRAVITY
from rodwright.geometry import Vector
from rodwright.mass import mass_of, weight
from rodwright.strength.model.mesh import Grid, Mesh
from rodwright.strength.model.pieces import Board
from rodwright.unit import Load, Lump, Part, Stretch, Unit

GAUSS = ((-(0.6**0.5), 5 / 9), (0.0, 8 / 9), (0.6**0.5, 5 / 9))
"""Gauss's rule of three places: exact up to the fifth power, and a cubic times an evenly changing
load is of the fourth."""
Forces = dict[int, list[float]]
"""By node: force along x, y and z, moment about them."""


def forces_of(unit: Unit, mesh: Mesh) -> Forces:
    """All that pulls a unit down.

    A part that is no piece of the model (a door, a drawer) hangs with what is on it where it is
    jointed to those that are; one that is jointed to none, on the nearest.
    """
    forces: Forces = {}
    for part in unit.parts:
        grid = mesh.grids.get(part.ref)
        force = weight(part) * GRAVITY
        if grid is None:
            _hang(unit, mesh, part, force, forces)
        elif _is_level(grid):
            low, high = part.bounds().low[0], part.bounds().high[0]
            per_metre = weight(part) / (high - low) * 1000
            _spread(grid, Stretch(low, high, per_metre, per_metre), forces)
        else:
            _all_over(grid, force, forces)
    for load in unit.loading.loads:
        _put(unit, mesh, load, forces)
    return forces


def total(forces: Forces) -> Vector:
    """The sum of forces along each axis, N."""
    x, y, z = (sum(each[axis] for each in forces.values()) for axis in range(3))
    return (x, y, z)


def pushed(grid: Grid, force: float, axis: int) -> Forces:
    """A force on a whole piece, along an axis."""
    forces: Forces = {}
    for place, node in grid.numbers.items():
        _add(forces, node, axis, force * grid.share(place))
    return forces


def _is_level(grid: Grid) -> bool:
    return isinstance(grid.piece, Board) and grid.piece.normal == 2


def _put(unit: Unit, mesh: Mesh, load: Load, forces: Forces) -> None:
    grid = mesh.grids.get(load.ref)
    if grid is None:
        _hang(unit, mesh, unit.part(load.ref), load.mass * GRAVITY, forces)
        return
    for stretch in load.stretches:
        if _is_level(grid):
            _spread(grid, stretch, forces)
        else:
            _all_over(grid, stretch.mass * GRAVITY, forces)
    for lump in load.lumps:
        _lump(grid, lump, forces)


def _add(forces: Forces, node: int, freedom: int, value: float) -> None:
    forces.setdefault(node, [0.0] * 6)[freedom] += value


def _all_over(grid: Grid, force: float, forces: Forces) -> None:
    for place, node in grid.numbers.items():
        _add(forces, node, 2, -force * grid.share(place))


def _lump(grid: Grid, lump: Lump, forces: Forces) -> None:
    if _is_level(grid) and lump.up is None:
        _at(grid, lump.at, lump.mass * GRAVITY, forces)
        return
    height = grid.middle[2] if lump.up is None else lump.up
    row = {grid.nearest((lump.at, y, height)) for y in grid.along(1)}
    for node in row:
        _add(forces, node, 2, -lump.mass * GRAVITY / len(row))


def _spread(grid: Grid, stretch: Stretch, forces: Forces) -> None:
    """A load along a level, as its nodes take it in a beam that bends by cubics."""
    for start, stop in _cut(stretch, grid.ticks[0]):
        for place, part in GAUSS:
            at = (start + stop) / 2 + place * (stop - start) / 2
            run = (at - stretch.start) / (stretch.stop - stretch.start)
            per_mm = (stretch.at_start + run * (stretch.at_stop - stretch.at_start)) / 1000
            _at(grid, at, per_mm * GRAVITY * part * (stop - start) / 2, forces)


def _cut(stretch: Stretch, ticks: Sequence[float]) -> Iterable[tuple[float, float]]:
    inside = [at for at in ticks if stretch.start < at < stretch.stop]
    return pairwise([stretch.start, *inside, stretch.stop])


def _at(grid: Grid, at: float, force: float, forces: Forces) -> None:
    """A force across a level at one place along it: Hermite's cubics, evenly over its depth."""
    ticks = grid.ticks[0]
    at = min(max(at, ticks[0]), ticks[-1])
    left = max(number for number, tick in enumerate(ticks[:-1]) if tick <= at)
    length = ticks[left + 1] - ticks[left]
    s = (at - ticks[left]) / length
    lifts = (1 - 3 * s**2 + 2 * s**3, 3 * s**2 - 2 * s**3)
    turns = (length * (s - 2 * s**2 + s**3), length * (s**3 - s**2))
    deep = grid.ticks[1]
    for row in range(len(deep)):
        share = force * _share(deep, row)
        for end in (0, 1):
            node = grid.numbers[left + end, row]
            _add(forces, node, 2, -share * lifts[end])
            # A turn about y lowers what lies further along x.
            _add(forces, node, 4, share * turns[end])


def _share(ticks: Sequence[float], number: int) -> float:
    low, high = ticks[max(number - 1, 0)], ticks[min(number + 1, len(ticks) - 1)]
    return (high - low) / 2 / (ticks[-1] - ticks[0])


def _hang(unit: Unit, mesh: Mesh, part: Part, force: float, forces: Forces) -> None:
    """What is no piece of the model hangs on those that its joints lead to."""
    places = _holders(unit, mesh, part.ref) or _nearest(mesh, part)
    for grid, at in places:
        _add(forces, grid.nearest(at), 2, -force / len(places))


def _holders(unit: Unit, mesh: Mesh, ref: str) -> list[tuple[Grid, Vector]]:
    seen, waiting, found = {ref}, [ref], []
    while waiting:
        here = waiting.pop(0)
        for joint in unit.joints:
            if here not in {joint.first, joint.second}:
                continue
            other = joint.second if joint.first == here else joint.first
            grid = mesh.grids.get(other)
            if grid is not None:
                found.append((grid, joint.at))
            elif other not in seen:
                seen.add(other)
                waiting.append(other)
    return found


def _nearest(mesh: Mesh, part: Part) -> list[tuple[Grid, Vector]]:
    at = part.placement.to_unit(mass_of(part.shape).centroid)

    def away(grid: Grid) -> float:
        box = grid.piece.box
        return sum(
            max(low - place, 0.0, place - high) ** 2
            for low, place, high in zip(box.low, at, box.high, strict=True)
        )

    return [(min(mesh.grids.values(), key=away), at)]
