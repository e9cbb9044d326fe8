"""A mesh under forces, solved by PyNiteFEA; floors and pins push and don't pull.

N, mm and radians, unit frame.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any

import numpy as np
from Pynite import FEModel3D

from rodwright.strength.model.elements import NO_MATERIAL, Link, Plate
from rodwright.strength.model.stiffness import (
    bar_stiffness,
    between,
    carried,
    joint_stiffness,
)

if TYPE_CHECKING:
    from numpy.typing import NDArray

    from rodwright.geometry import Vector
    from rodwright.strength.model.loads import Forces
    from rodwright.strength.model.mesh import Mesh, Tie

Known = dict[Any, Any]
"""The stiffness of plates that are alike, worked out once."""
CASE = "Combo 1"
ROUNDS = 25
"""How often contacts are tried anew before the model is given up."""
PULL = 0.05
"""What can only push comes off where it would have to pull by more than this, N."""
FEATHER = 2e-4
"""N/mm by which what has come off still holds."""
UNBALANCED = 1e-6
"""The most that reactions may be off the forces, as a share of these."""
FOLDING = 1e-3
"""The same for a push that all but folds the unit: turns are large then beside what holds it."""
DIRECTIONS = ("DX", "DY", "DZ")
NAMES = ("FX", "FY", "FZ", "MX", "MY", "MZ")


class UnsolvedError(Exception):
    """The model has no equilibrium: something in it moves freely."""


@dataclass(frozen=True, slots=True)
class Support:
    """A node held against what doesn't move: ``moves`` N/mm along x, y and z.

    Where ``pushes`` it holds only while its node presses that way along that axis (``(2, -1)``:
    down), and along the others only as long as it does.
    """

    node: int
    moves: Vector
    pushes: tuple[int, int] | None = None


@dataclass(frozen=True, slots=True)
class Moved:
    """How a mesh moves: each node's six freedoms (``moves``), what its supports give (N, by the
    place of each in the list), and which ties and supports have come off."""

    moves: NDArray[np.float64]
    reactions: tuple[Vector, ...]
    off_ties: frozenset[int]
    off_supports: frozenset[int]

    def at(self, node: int) -> Vector:
        """The displacement of a node, mm."""
        x, y, z = self.moves[node, :3].tolist()
        return (x, y, z)


def solve(mesh: Mesh, supports: Iterable[Support], forces: Forces, loose: bool = True) -> Moved:
    """How a mesh moves under forces.

    What can only push and would have to pull is taken off and the rest solved anew, until all
    that is left pushes and nothing that came off is pressed again.

    Raises:
        UnsolvedError: something moves freely, or contacts don't settle.
    """
    supports = tuple(supports)
    off_ties: frozenset[int] = frozenset()
    off_supports: frozenset[int] = frozenset()
    seen = set()
    known: Known = {}
    circling = False
    for _ in range(ROUNDS):
        seen.add((off_ties, off_supports))
        model = _model(mesh, supports, off_ties, off_supports, forces, known)
        moves = _solved(model)
        now = _opened(mesh, moves), _lifted(supports, moves)
        if circling:
            # What comes and goes by turns hardly touches: it stays off.
            now = (now[0] | off_ties, now[1] | off_supports)
        if now == (off_ties, off_supports) or not loose:
            reactions = tuple(
                _reaction(each, moves, number in off_supports)
                for number, each in enumerate(supports)
            )
            _balance(reactions, forces, UNBALANCED if loose else FOLDING)
            return Moved(moves, reactions, off_ties, off_supports)
        circling = circling or now in seen
        off_ties, off_supports = now
    raise UnsolvedError("what touches and what doesn't doesn't settle")


def _model(
    mesh: Mesh,
    supports: tuple[Support, ...],
    off_ties: frozenset[int],
    off_supports: frozenset[int],
    forces: Forces,
    known: Known,
) -> Any:
    model = FEModel3D()
    model.add_material(NO_MATERIAL, 1.0, 1.0, 0.0, 1.0)
    for number, at in enumerate(mesh.nodes):
        model.add_node(str(number), *at)
    nodes = list(model.nodes.values())
    for number, plate in enumerate(mesh.plates):
        one, two, three, four = (nodes[each] for each in plate.nodes)
        name = f"plate {number}"
        model.quads[name] = Plate(name, (one, two, three, four), plate.sheet, model, known)
    for number, bar in enumerate(mesh.bars):
        first, second = bar.nodes
        length = mesh.nodes[second][bar.axis] - mesh.nodes[first][bar.axis]
        stiff = bar_stiffness(bar.bar, bar.axis, length)
        name = f"bar {number}"
        model.springs[name] = Link(name, nodes[first], nodes[second], stiff, model)
    for number, tie in enumerate(mesh.ties):
        name = f"tie {number}"
        first, second = (nodes[each] for each in tie.nodes)
        stiff = _tie(mesh, _off(tie) if number in off_ties else tie)
        model.springs[name] = Link(name, first, second, stiff, model)
    _hold(model, supports, off_supports)
    for node, values in forces.items():
        for direction, value in zip(NAMES, values, strict=True):
            if value:
                model.add_node_load(str(node), direction, value)
    return model


def _off(tie: Tie) -> Tie:
    """A tie that has come off: a feather, so that what falls down on it does so within bounds."""
    x, y, _ = tie.moves
    return replace(tie, moves=(x, y, FEATHER), turns=(0.0, 0.0, 0.0))


def _tie(mesh: Mesh, tie: Tie) -> NDArray[np.float64]:
    first, second = (mesh.nodes[each] for each in tie.nodes)
    return between(joint_stiffness(tie.moves, tie.turns), (tie.at, tie.at), (first, second))


def tie_forces(mesh: Mesh, tie: Tie, moves: NDArray[np.float64]) -> NDArray[np.float64]:
    """What a tie does to its second piece where they meet: three forces and three moments."""
    gone = opening(mesh, tie, moves)
    result: NDArray[np.float64] = -np.array([*tie.moves, *tie.turns]) * gone
    return result


def opening(mesh: Mesh, tie: Tie, moves: NDArray[np.float64]) -> NDArray[np.float64]:
    """How far the second piece of a tie has moved and turned from the first, where they meet."""
    first, second = tie.nodes
    arms = _arms(mesh, tie)
    whole: NDArray[np.float64] = arms[6:, 6:] @ moves[second] - arms[:6, :6] @ moves[first]
    return whole


def _arms(mesh: Mesh, tie: Tie) -> NDArray[np.float64]:
    """What the freedoms of a tie's two nodes move where they meet, 12 x 12."""
    arms = np.zeros((12, 12))
    arms[:6, :6] = carried(tie.at, mesh.nodes[tie.nodes[0]])
    arms[6:, 6:] = carried(tie.at, mesh.nodes[tie.nodes[1]])
    return arms


def _hold(model: Any, supports: tuple[Support, ...], off: frozenset[int]) -> None:
    held: dict[tuple[int, str], float] = {}
    for number, support in enumerate(supports):
        if number not in off:
            for direction, stiff in zip(DIRECTIONS, support.moves, strict=True):
                if stiff:
                    at = (support.node, direction)
                    held[at] = held.get(at, 0.0) + stiff
    for (node, direction), stiff in held.items():
        model.def_support_spring(str(node), direction, stiff)


def _solved(model: Any) -> NDArray[np.float64]:
    model.analyze_linear(check_stability=False)
    moves: NDArray[np.float64] = np.asarray(model.D(CASE), dtype=float).reshape(-1, 6)
    if not np.isfinite(moves).all():
        raise UnsolvedError("something moves freely")
    return moves


def _opened(mesh: Mesh, moves: NDArray[np.float64]) -> frozenset[int]:
    """Which ties that only push have come apart: what rests is lifted off."""
    return frozenset(
        number
        for number, tie in enumerate(mesh.ties)
        if tie.pushes and opening(mesh, tie, moves)[2] * tie.moves[2] * tie.pushes > PULL
    )


def _lifted(supports: tuple[Support, ...], moves: NDArray[np.float64]) -> frozenset[int]:
    return frozenset(
        number
        for number, each in enumerate(supports)
        if each.pushes and _pressed(each, moves) < -PULL
    )


def _pressed(support: Support, moves: NDArray[np.float64]) -> float:
    axis, way = support.pushes or (2, -1)
    return float(moves[support.node, axis]) * way * support.moves[axis]


def _reaction(support: Support, moves: NDArray[np.float64], off: bool) -> Vector:
    if off:
        return (0.0, 0.0, 0.0)
    x, y, z = (
        float(-stiff * moves[support.node, axis]) for axis, stiff in enumerate(support.moves)
    )
    return (x, y, z)


def _balance(reactions: tuple[Vector, ...], forces: Forces, most: float) -> None:
    size = sum(abs(value) for values in forces.values() for value in values[:3])
    for axis in range(3):
        given = sum(each[axis] for each in reactions)
        asked = sum(values[axis] for values in forces.values())
        if abs(given + asked) > most * size:
            raise UnsolvedError("reactions don't balance the forces: something moves freely")
