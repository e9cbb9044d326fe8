"""How much there is to finish, by what it is made of; m2.

Counted is what is left of each blank's six surfaces once it is worked, and what slants in their
place; not the floors of housings and grooves, nor the walls of holes, nor what nobody ever sees
(:mod:`rodwright.making.unseen`).  Where boards meet without being covered, both are counted: what
is lost there is less than what a brush loses.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.geometry import TOUCH
from rodwright.making.bodies import Array, convex_pieces
from rodwright.making.unseen import unseen_surfaces
from rodwright.trade.finishes import takes_finish
from rodwright.unit import Part, Surface, Unit
from rodwright.unit.finish import Finish
from rodwright.unit.surfaces import HIGH, LOW

_MM2 = 1e-6
"""m2 in a mm2."""


@dataclass(frozen=True, slots=True)
class FinishArea:
    """What there is to finish of one stock with one finish (None: none was chosen): of its
    ``faces`` and of its ``edges`` and ends, how much of both shows, and how much more there is that
    nobody ever sees and that stays bare; m2."""

    stock: str
    material: str
    faces: float
    edges: float
    shows: float
    finish: Finish | None = None
    unseen: float = 0.0

    @property
    def whole(self) -> float:
        """Faces and edges."""
        return self.faces + self.edges


def finish_areas(unit: Unit) -> tuple[FinishArea, ...]:
    """The areas of each stock that takes a finish, by what it gets, in the order in which they
    first occur.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    found: dict[tuple[str, str, Finish | None], list[float]] = {}
    hidden = unseen_surfaces(unit)
    for part in unit.parts:
        stock = part.blank.stock
        if not takes_finish(stock.material):
            continue
        sums = found.setdefault((stock.name, stock.material, part.finish), [0.0] * 4)
        for surface, area in surface_areas(part).items():
            if (part.ref, surface) in hidden:
                sums[3] += area
                continue
            sums[0 if surface.axis == 2 else 1] += area
            if surface in part.blank.show_surfaces:
                sums[2] += area
    return tuple(
        FinishArea(name, material, faces, edges, shows, finish, unseen)
        for (name, material, finish), (faces, edges, shows, unseen) in found.items()
    )


def finished_areas(unit: Unit) -> dict[Finish, tuple[FinishArea, ...]]:
    """By each finish that was chosen the areas of the stocks that get it; raises as
    :func:`finish_areas`."""
    found: dict[Finish, list[FinishArea]] = {}
    for each in finish_areas(unit):
        if each.finish is not None:
            found.setdefault(each.finish, []).append(each)
    return {finish: tuple(areas) for finish, areas in found.items()}


def surface_areas(part: Part) -> dict[Surface, float]:
    """What is left of each surface of a part, m2; what slants counts to the surface that it most
    faces.

    Raises:
        ValueError: its workings leave nothing of it.
    """
    size = np.array(part.blank.size)
    planes = [
        (np.array(at), np.array(normal))
        for working in part.workings
        for at, normal in working.planes(part.blank.size)
    ]
    areas = dict.fromkeys((*LOW, *HIGH), 0.0)
    for piece in convex_pieces(part.shape):
        for face in piece:
            area, normal = _measured(face)
            axis = int(np.abs(normal).argmax())
            high = bool(normal[axis] > 0)
            edge = size[axis] if high else 0.0
            outer = bool((np.abs(face[:, axis] - edge) < TOUCH).all())
            if outer or any(_lies_on(face, *plane) for plane in planes):
                areas[Surface.at(axis, high)] += area * _MM2
    return areas


def _measured(face: Array) -> tuple[float, Array]:
    """Area of a flat face, and the unit vector out of it."""
    turned = np.cross(face[1:-1] - face[0], face[2:] - face[0]).sum(axis=0)
    length = float(np.linalg.norm(turned))
    return length / 2, turned / length if length else turned


def _lies_on(face: Array, at: Array, normal: Array) -> bool:
    return bool((np.abs((face - at) @ normal) < TOUCH).all())
