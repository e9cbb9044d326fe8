"""Stiffness matrices of bars and joints between two nodes, global axes.

Freedoms are in the order of PyNiteFEA: displacements along x, y, z, then turns about them, of
the first node and of the second.  N, mm and radians.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import numpy as np

from rodwright.geometry import Vector, minus

if TYPE_CHECKING:
    from numpy.typing import NDArray

    Array = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Bar:
    """How stiff a bar is that lies along one axis of the unit.

    ``axial`` is E A in N, ``torsion`` G J in N mm2.  ``bending`` is E I in N mm2 and ``shear`` G
    A' in N for bending along each of the two axes square to it, in the order x, y, z.
    """

    axial: float
    torsion: float
    bending: tuple[float, float]
    shear: tuple[float, float]


def bar_stiffness(bar: Bar, axis: int, length: float) -> Array:
    """The stiffness of a bar ``length`` mm long along ``axis``, 12 x 12.

    Shear counts (Timoshenko's beam: Przemieniecki, Theory of matrix structural analysis, section
    5.6; from memory).
    """
    matrix = np.zeros((12, 12))
    for freedom, stiff in ((axis, bar.axial), (3 + axis, bar.torsion)):
        _couple(matrix, freedom, stiff / length)
    others = [each for each in range(3) if each != axis]
    for along, bending, shear in zip(others, bar.bending, bar.shear, strict=True):
        about = 3 - axis - along
        # A turn about z lifts y as x goes on, one about y lowers z.
        sign = 1.0 if (axis, along, about) in {(0, 1, 2), (1, 2, 0), (2, 0, 1)} else -1.0
        _bend(matrix, (along, 3 + about, sign), bending, shear, length)
    return matrix


def _couple(matrix: Array, freedom: int, stiff: float) -> None:
    first, second = freedom, 6 + freedom
    matrix[first, first] += stiff
    matrix[second, second] += stiff
    matrix[first, second] -= stiff
    matrix[second, first] -= stiff


def _bend(
    matrix: Array, freedoms: tuple[int, int, float], bending: float, shear: float, length: float
) -> None:
    move, turn, sign = freedoms
    slack = 12 * bending / (shear * length**2)
    unit = bending / ((1 + slack) * length**3)
    half = 6 * length * sign
    near, far = (4 + slack) * length**2, (2 - slack) * length**2
    at = [move, turn, 6 + move, 6 + turn]
    matrix[np.ix_(at, at)] += unit * np.array([
        [12, half, -12, half],
        [half, near, -half, far],
        [-12, -half, 12, -half],
        [half, far, -half, near],
    ])  # fmt: skip


def carried(at: Vector, node: Vector) -> Array:
    """What a node's freedoms move at a point held stiffly to it, 6 x 6."""
    x, y, z = minus(at, node)
    matrix = np.eye(6)
    # The displacement that a turn gives: the turn x the arm.
    matrix[0:3, 3:6] = [[0, z, -y], [-z, 0, x], [y, -x, 0]]
    return matrix


def between(stiffness: Array, ends: tuple[Vector, Vector], nodes: tuple[Vector, Vector]) -> Array:
    """A 12 x 12 stiffness between two points, for the nodes that each is held stiffly to."""
    arms = np.zeros((12, 12))
    arms[0:6, 0:6] = carried(ends[0], nodes[0])
    arms[6:12, 6:12] = carried(ends[1], nodes[1])
    whole: Array = arms.T @ stiffness @ arms
    return whole


def joint_stiffness(moves: Vector, turns: Vector) -> Array:
    """What holds two points that meet, 12 x 12: ``moves`` in N/mm along x, y and z, ``turns`` in
    N mm per radian about them."""
    matrix = np.zeros((12, 12))
    for freedom, stiff in enumerate((*moves, *turns)):
        _couple(matrix, freedom, stiff)
    return matrix
