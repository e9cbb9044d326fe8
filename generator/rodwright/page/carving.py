"""What is left of a blank when its workings are cut out, as facets for a picture.

Workings are taken away piece by piece, in the pieces that their mass is reckoned from
(:mod:`rodwright.mass.pieces`), by Manifold's exact booleans, but for holes that are clear of all
else (:mod:`rodwright.page.boring`): that takes a tenth of the time of a solid for STEP, to which
the tests hold it.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass, replace

import manifold3d as m3
import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.mass.pieces import pieces
from rodwright.mass.rounds import Round
from rodwright.page.boring import Facets, bore, bored, clear
from rodwright.unit import PocketHole, ShapeKey, Working

_BEYOND = 1.0
"""How far (mm) what is taken away reaches past a surface it breaks, so that no faces coincide."""
_OFF_ROUND = 0.05
"""How far (mm) a facet may stand off a round: unseen, as rounds are shaded as such."""
_FEWEST = 16
"""Facets all round, at the least."""

Array = NDArray[np.float64]
Indices = NDArray[np.int64]


@dataclass(frozen=True, eq=False, slots=True)
class Carved:
    """What is left: ``points`` (n, 3), mm, part frame; ``triangles`` (t, 3), anticlockwise seen
    from outside; ``round_of`` (t,) counts the ``rounds`` that left each, -1 where it is flat."""

    points: Array
    triangles: Indices
    round_of: Indices
    rounds: tuple[Round, ...]


def carved(shape: ShapeKey) -> Carved:
    """The one closed body that a shape's workings leave.

    Raises:
        ValueError: they leave nothing, or several pieces.
    """
    size, workings = shape
    taken = tuple(
        _Taken(piece, working, number)
        for working in workings
        for number, piece in enumerate(pieces(working, size))
    )
    if taken and not any(tuple(working.planes(size)) for working in workings):
        apart = clear([each.piece for each in taken], size).tolist()
        if any(apart):
            rest = tuple(each for each, bore in zip(taken, apart, strict=True) if not bore)
            holes = [each.piece for each, bore in zip(taken, apart, strict=True) if bore]
            found = _with_holes(_cut(shape, rest), holes, size)
            if found is not None:
                return found
    return _cut(shape, taken)


@dataclass(frozen=True, slots=True)
class _Taken:
    """A piece that is taken away, the one of this ``number`` of a working."""

    piece: Box | Round
    working: Working
    number: int


def _with_holes(body: Carved, holes: Iterable[Box | Round], size: Vector) -> Carved | None:
    rounds, bores = [*body.rounds], []
    for each in holes:
        assert isinstance(each, Round)
        bores.append(bore(each, size, _facets(each.radius), len(rounds)))
        rounds.append(each)
    found = bored(Facets(body.points, body.triangles, body.round_of), bores, size)
    if found is None:
        return None
    return Carved(found.points, found.triangles, found.round_of, tuple(rounds))


def _cut(shape: ShapeKey, pieces_taken: Iterable[_Taken]) -> Carved:
    """What is left of a blank without these pieces and what lies beyond its workings' planes."""
    size, workings = shape
    taken: list[m3.Manifold] = []
    rounds: list[Round] = []
    numbers: dict[int, int] = {}
    for each in pieces_taken:
        piece = _reaching(each, size)
        body = _box(piece) if isinstance(piece, Box) else _bar(piece).as_original()
        taken.append(body)
        if isinstance(piece, Round):
            numbers[body.original_id()] = len(rounds)
            rounds.append(piece)
    left = m3.Manifold.batch_boolean([m3.Manifold.cube(size), *taken], m3.OpType.Subtract)
    for working in workings:
        for point, normal in working.planes(size):
            left = left.trim_by_plane([-each for each in normal], -float(np.dot(point, normal)))
    if len(left.decompose()) != 1:
        shown = " x ".join(f"{length:g}" for length in size)
        pieces_left = "nothing" if left.is_empty() else f"{len(left.decompose())} pieces"
        raise ValueError(f"the workings of a {shown} blank leave {pieces_left}")
    mesh = left.to_mesh64()
    counts = np.diff(np.asarray(mesh.run_index)) // 3
    run = [numbers.get(number, -1) for number in mesh.run_original_id]
    return Carved(
        np.asarray(mesh.vert_properties),
        np.asarray(mesh.tri_verts, dtype=np.int64),
        np.repeat(np.array(run, dtype=np.int64), counts),
        tuple(rounds),
    )


def _reaching(taken: _Taken, size: Vector) -> Box | Round:
    """A piece, reaching past what it breaks."""
    piece = taken.piece
    if isinstance(piece, Box):
        low = [-_BEYOND if at <= TOUCH else at for at in piece.low]
        high = [
            each + _BEYOND if at >= each - TOUCH else at
            for at, each in zip(piece.high, size, strict=True)
        ]
        return Box((low[0], low[1], low[2]), (high[0], high[1], high[2]))
    start, stop = piece.start, piece.stop
    if isinstance(taken.working, PocketHole):
        stop += abs(piece.slope) * piece.radius + _BEYOND
        start -= _BEYOND if taken.number else 0.0  # the screw's hole begins in the pocket's floor
    elif piece.section != "half ball":
        axis = int(np.argmax(np.abs(piece.frame[2])))
        start -= _BEYOND if start <= TOUCH else 0.0
        stop += _BEYOND if stop >= size[axis] - TOUCH else 0.0
    return replace(piece, start=start, stop=stop)


def _box(box: Box) -> m3.Manifold:
    return m3.Manifold.cube(box.size).translate(box.low)


def _bar(piece: Round) -> m3.Manifold:
    """A round where it lies; of halves the whole, as what they end takes the other half too."""
    count = _facets(piece.radius)
    if piece.section == "half ball":
        turns = np.linspace(-math.pi / 2, math.pi / 2, count // 2 + 1)
        half = piece.radius * np.column_stack([np.cos(turns), np.sin(turns)])
        half[[0, -1], 0] = 0.0
        body = m3.Manifold.revolve(m3.CrossSection([half]), count)
        return _placed(body, piece.frame, piece.centre)
    if piece.section == "corner":
        body = m3.Manifold.extrude(_corner(piece.radius, count // 4), piece.stop - piece.start)
    else:
        body = m3.Manifold.cylinder(piece.stop - piece.start, piece.radius, -1.0, count)
    return _placed(body, piece.frame, piece.centre + piece.start * piece.frame[2])


def _facets(radius: float) -> int:
    """Facets all round: a multiple of eight, so that each quarter has one edge in its middle."""
    if radius <= _OFF_ROUND:
        return _FEWEST
    return max(_FEWEST, 8 * math.ceil(math.pi / math.acos(1.0 - _OFF_ROUND / radius) / 8))


def _corner(radius: float, count: int) -> m3.CrossSection:
    """What lies between a quarter circle and its tangents, and past those."""
    turns = np.linspace(math.pi, 1.5 * math.pi, count + 1)
    arc = radius * np.column_stack([np.cos(turns), np.sin(turns)])
    arc[0, 1] = arc[-1, 0] = 0.0
    past = -radius - _BEYOND
    return m3.CrossSection([[[past, 0.0], [past, past], [0.0, past], *arc[::-1].tolist()]])


def _placed(body: m3.Manifold, frame: Array, at: Array) -> m3.Manifold:
    """A body whose axes are the rows of a frame, moved."""
    return body.transform(np.column_stack([frame.T, at]))
