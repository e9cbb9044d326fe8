"""Shelves and panels held on several edges: thin rectangular orthotropic plates, by Ritz's method.

Millimetres and newtons.  x runs along the span from the left end, y from the front edge to the
back; loads and deflection are positive downwards.  The deflection is a sum of Legendre's
polynomials in x and y that makes the energy least::

    U = 1/2 integral of Dx wxx^2 + 2 D1 wxx wyy + Dy wyy^2 + 4 Dxy wxy^2  - integral of q w
        + edges' springs 1/2 (k w^2 + S wn^2) + lippings 1/2 (EI wxx^2 + GJ wxy^2)

(S. Timoshenko & S. Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., articles 79 and 86,
from memory).  Edges meet what holds them, free edges their natural conditions, as the sum grows.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from math import inf

import numpy as np

from rodwright.strength.legendre import Array, Axis
from rodwright.trade.mechanics import Mechanics

__all__ = [
    "CLAMPED",
    "Edge",
    "FREE",
    "HELD",
    "Lipping",
    "Patch",
    "Plate",
    "PlateNotHeldError",
    "Stiffness",
    "bend_plate",
    "stiffness_of",
]

_ALONG, _ACROSS = 17, 13
"""Polynomials along and across."""
_RIGID = 1e8
"""How stiff what doesn't give is, against the plate."""
_LEAST = 1e-13
_GRID, _CLOSER = 33, 3


class PlateNotHeldError(ValueError):
    """Nothing holds a plate where it is."""


@dataclass(frozen=True, slots=True)
class Stiffness:
    """Of a plate, N mm: bending along x and across, what couples the two (Poisson's effect), and
    twisting (``G t^3 / 12``)."""

    along: float
    across: float
    coupling: float
    twisting: float

    @classmethod
    def isotropic(cls, modulus: float, thickness: float, poisson: float) -> Stiffness:
        """Of a sheet that is the same every way."""
        stiff = modulus * thickness**3 / 12 / (1 - poisson**2)
        return cls(stiff, stiff, poisson * stiff, stiff * (1 - poisson) / 2)


def stiffness_of(mechanics: Mechanics, thickness: float, *, along: bool = True) -> Stiffness | None:
    """A board's stiffness as a plate, its grain along the span or across; None where it isn't
    known across or in its own plane.

    ``E t^3 / 12`` each way and ``G t^3 / 12`` by the shear modulus in its own plane; Poisson's
    effect isn't published for boards and is left out, which is on the safe side.
    """
    if mechanics.across is None or mechanics.panel_shear is None:
        return None
    share = thickness**3 / 12
    grain, across = mechanics.along.value * share, mechanics.across.value * share
    twisting = mechanics.panel_shear.value * share
    if along:
        return Stiffness(grain, across, 0.0, twisting)
    return Stiffness(across, grain, 0.0, twisting)


@dataclass(frozen=True, slots=True)
class Edge:
    """What holds an edge, per mm of it: ``sinking`` (N/mm per mm) and ``turning`` (N mm/rad per
    mm); inf is rigid."""

    sinking: float
    turning: float = 0.0


FREE, HELD, CLAMPED = Edge(0.0), Edge(inf), Edge(inf, inf)


@dataclass(frozen=True, slots=True)
class Lipping:
    """What stiffens an edge: the EI (N mm2) that it adds, so of the joined section less the
    board's own, and GJ (N mm2)."""

    bending: float
    torsion: float


@dataclass(frozen=True, slots=True)
class Patch:
    """A load (N/mm2) spread over a rectangle of the plate (mm)."""

    pressure: float
    left: float
    right: float
    front: float
    back: float


@dataclass(frozen=True, slots=True)
class Plate:
    """A plate of a span and depth (mm), what holds each edge, what stiffens front and back, and a
    load (N/mm2) over the whole of it and on patches."""

    span: float
    depth: float
    stiffness: Stiffness
    left: Edge = HELD
    right: Edge = HELD
    front: Edge = FREE
    back: Edge = FREE
    front_lipping: Lipping | None = None
    back_lipping: Lipping | None = None
    pressure: float = 0.0
    patches: tuple[Patch, ...] = ()


@dataclass(frozen=True)
class BentPlate:
    """A plate under its load."""

    plate: Plate
    _x: Axis
    _y: Axis
    _shares: Array

    def deflection(self, x: float, y: float) -> float:
        """How far a place (mm) has gone down, mm."""
        return self._derivative(x, y, 0, 0)

    def moments(self, x: float, y: float) -> tuple[float, float, float]:
        """Bending moment along x and along y, and twisting moment, N mm per mm; sagging is
        positive."""
        stiff = self.plate.stiffness
        xx, yy = self._derivative(x, y, 2, 0), self._derivative(x, y, 0, 2)
        return (
            -(stiff.along * xx + stiff.coupling * yy),
            -(stiff.across * yy + stiff.coupling * xx),
            2 * stiff.twisting * self._derivative(x, y, 1, 1),
        )

    @cached_property
    def greatest_deflection(self) -> tuple[float, float, float]:
        """Where (x, y, mm) it has gone down furthest, and how far (mm)."""
        low, high = np.zeros(2), np.array([self.plate.span, self.plate.depth])
        ends = high.copy()
        for _ in range(_CLOSER):
            xs, ys = (np.linspace(low[n], high[n], _GRID) for n in (0, 1))
            along = np.array([self._x.at(float(x)) for x in xs])
            across = np.array([self._y.at(float(y)) for y in ys])
            found = along @ self._shares @ across.T
            i, j = np.unravel_index(int(np.argmax(found)), found.shape)
            best = np.array([xs[i], ys[j]])
            step = (high - low) / (_GRID - 1)
            low, high = np.maximum(0, best - step), np.minimum(ends, best + step)
        return (float(best[0]), float(best[1]), float(found[i, j]))

    def reactions(self) -> dict[str, float]:
        """What each edge bears of the load, N, by its name (`left`, `right`, `front`, `back`)."""
        over_x = self._x.integrals(0, self.plate.span)
        over_y = self._y.integrals(0, self.plate.depth)
        sides = {
            "left": (self._x.at(0), over_y),
            "right": (self._x.at(self.plate.span), over_y),
            "front": (over_x, self._y.at(0)),
            "back": (over_x, self._y.at(self.plate.depth)),
        }
        rigid = _rigid(self.plate)
        return {
            name: min(getattr(self.plate, name).sinking, rigid[0]) * float(x @ self._shares @ y)
            for name, (x, y) in sides.items()
        }

    def _derivative(self, x: float, y: float, by_x: int, by_y: int) -> float:
        return float(self._x.at(x, by_x) @ self._shares @ self._y.at(y, by_y))


def bend_plate(plate: Plate) -> BentPlate:
    """A plate under its load.

    Raises:
        PlateNotHeldError: its edges don't hold it.
    """
    x, y = Axis(plate.span, _ALONG), Axis(plate.depth, _ACROSS)
    energy = _plate_energy(plate, x, y) + _edge_energy(plate, x, y)
    load = plate.pressure * np.kron(x.integrals(0, plate.span), y.integrals(0, plate.depth))
    for patch in plate.patches:
        load = load + patch.pressure * np.kron(
            x.integrals(patch.left, patch.right), y.integrals(patch.front, patch.back)
        )
    # Scaled to ones on the diagonal, a plate that nothing holds has a direction without stiffness,
    # and no factors by Cholesky (quicker than its least eigenvalue).
    scale = 1 / np.sqrt(np.maximum(np.diag(energy), _LEAST * np.diag(energy).max()))
    scaled = energy * np.outer(scale, scale)
    try:
        np.linalg.cholesky(scaled - _LEAST * np.eye(len(scaled)))
    except np.linalg.LinAlgError:
        raise PlateNotHeldError("nothing holds the plate where it is") from None
    shares = scale * np.linalg.solve(scaled, scale * load)
    return BentPlate(plate, x, y, shares.reshape(_ALONG, _ACROSS))


def _plate_energy(plate: Plate, x: Axis, y: Axis) -> Array:
    """The stiffness of the plate itself."""
    stiff = plate.stiffness
    coupled = np.kron(x.products(2, 0), y.products(0, 2))
    return np.asarray(
        stiff.along * np.kron(x.products(2, 2), y.products(0, 0))
        + stiff.across * np.kron(x.products(0, 0), y.products(2, 2))
        + stiff.coupling * (coupled + coupled.T)
        + 4 * stiff.twisting * np.kron(x.products(1, 1), y.products(1, 1))
    )


def _edge_energy(plate: Plate, x: Axis, y: Axis) -> Array:
    """The stiffness of what holds and stiffens its edges."""
    rigid = _rigid(plate)
    energy = np.zeros((x.count * y.count,) * 2)
    for edge, at in ((plate.left, 0.0), (plate.right, plate.span)):
        for order, stiff in enumerate((edge.sinking, edge.turning)):
            line = x.at(at, order)
            energy += min(stiff, rigid[order]) * np.kron(np.outer(line, line), y.products(0, 0))
    sides = (
        (plate.front, plate.front_lipping, 0.0),
        (plate.back, plate.back_lipping, plate.depth),
    )
    for edge, lipping, at in sides:
        value, slope = (np.outer(y.at(at, n), y.at(at, n)) for n in (0, 1))
        energy += min(edge.sinking, rigid[0]) * np.kron(x.products(0, 0), value)
        energy += min(edge.turning, rigid[1]) * np.kron(x.products(0, 0), slope)
        if lipping is not None:
            energy += lipping.bending * np.kron(x.products(2, 2), value)
            energy += lipping.torsion * np.kron(x.products(1, 1), slope)
    return energy


def _rigid(plate: Plate) -> tuple[float, float]:
    """The springs that stand for an edge that neither sinks nor turns."""
    stiffest = max(plate.stiffness.along, plate.stiffness.across)
    short = min(plate.span, plate.depth)
    return (_RIGID * stiffest / short**3, _RIGID * stiffest / short)
