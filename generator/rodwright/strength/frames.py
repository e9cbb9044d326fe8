"""Plane frames with springs in their joints: how far they sway under forces.

Lengths in mm, forces in N, moments in N mm, turns in radians; x to the right, z up, turns from x
to z.  Small displacements, members that stay elastic: the direct stiffness method (any text on
the matrix analysis of structures), members of Euler and Bernoulli.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]
SOFTEST = 1e-9
"""A frame with less than this share of its greatest stiffness, scaled, moves freely."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A straight member from place ``start`` to place ``stop``, stiff in bending by ``bending``
    (E I, N mm2) and along itself by ``axial`` (E A, N).

    Its ends turn with the turns ``start_turn`` and ``stop_turn``: bars with the same turn at a
    place are stiffly joined there.
    """

    start: int
    stop: int
    start_turn: int
    stop_turn: int
    bending: float
    axial: float


@dataclass(frozen=True, slots=True)
class Spring:
    """What ties two turns together (None: to what stands still), N mm per radian."""

    one: int
    other: int | None
    stiffness: float


@dataclass(frozen=True, slots=True)
class Frame:
    """Bars between ``places`` (x, z), joined by springs, held at some places against moving to
    either side (``held_across``) or up and down (``held_up``); ``turns`` is how many turns there
    are."""

    places: tuple[tuple[float, float], ...]
    turns: int
    bars: tuple[Bar, ...]
    springs: tuple[Spring, ...]
    held_across: frozenset[int]
    held_up: frozenset[int]


@dataclass(frozen=True, slots=True)
class Swayed:
    """How a frame moves: each place across and up, mm, and each turn, radians."""

    moves: tuple[tuple[float, float], ...]
    turned: tuple[float, ...]


def sway(frame: Frame, pushes: dict[int, tuple[float, float]]) -> Swayed | None:
    """How a frame moves under forces (N, across and up) at places; None where it moves freely:
    nothing in it resists."""
    stiffness = _stiffness(frame)
    forces = np.zeros(len(stiffness))
    for place, (across, up) in pushes.items():
        forces[2 * place] += across
        forces[2 * place + 1] += up
    held = {2 * place for place in frame.held_across} | {2 * at + 1 for at in frame.held_up}
    free = np.array([each for each in range(len(stiffness)) if each not in held], dtype=int)
    kept = stiffness[np.ix_(free, free)]
    scale = np.sqrt(np.where(np.diag(kept) > 0, np.diag(kept), 1.0))
    scaled = kept / np.outer(scale, scale)
    if not _firm(scaled):
        return None
    moved = np.zeros(len(stiffness))
    moved[free] = np.linalg.solve(scaled, forces[free] / scale) / scale
    places = len(frame.places)
    return Swayed(
        tuple((float(moved[2 * i]), float(moved[2 * i + 1])) for i in range(places)),
        tuple(float(each) for each in moved[2 * places :]),
    )


def _firm(scaled: Array) -> bool:
    """Whether a stiffness matrix with ones on its diagonal holds against any move: no pivot of its
    Cholesky factors is next to nothing."""
    try:
        pivots = np.diag(np.linalg.cholesky(scaled)) ** 2
    except np.linalg.LinAlgError:
        return False
    return float(pivots.min()) > SOFTEST


def _stiffness(frame: Frame) -> Array:
    """The stiffness of the whole frame: two moves of each place, then the turns."""
    places = len(frame.places)
    whole = np.zeros((2 * places + frame.turns,) * 2)
    for bar in frame.bars:
        at = [
            2 * bar.start, 2 * bar.start + 1, 2 * places + bar.start_turn,
            2 * bar.stop, 2 * bar.stop + 1, 2 * places + bar.stop_turn,
        ]  # fmt: skip
        whole[np.ix_(at, at)] += _of_bar(bar, frame.places[bar.start], frame.places[bar.stop])
    for spring in frame.springs:
        one = 2 * places + spring.one
        whole[one, one] += spring.stiffness
        if spring.other is not None:
            other = 2 * places + spring.other
            whole[other, other] += spring.stiffness
            whole[one, other] -= spring.stiffness
            whole[other, one] -= spring.stiffness
    return whole


def _of_bar(bar: Bar, start: tuple[float, float], stop: tuple[float, float]) -> Array:
    """The stiffness of one bar at its own six moves, in the frame's axes."""
    run = np.array(stop) - np.array(start)
    length = float(np.hypot(*run))
    cos, sin = run / length
    along, bends = bar.axial / length, bar.bending / length**3
    six, two, four = 6 * bends * length, 2 * bends * length**2, 4 * bends * length**2
    own = np.array([
        [along, 0, 0, -along, 0, 0],
        [0, 12 * bends, six, 0, -12 * bends, six],
        [0, six, four, 0, -six, two],
        [-along, 0, 0, along, 0, 0],
        [0, -12 * bends, -six, 0, 12 * bends, -six],
        [0, six, two, 0, -six, four],
    ])  # fmt: skip
    turn = np.array([[cos, sin, 0], [-sin, cos, 0], [0, 0, 1]])
    turned = np.zeros((6, 6))
    turned[:3, :3] = turned[3:, 3:] = turn
    result: Array = turned.T @ own @ turned
    return result
