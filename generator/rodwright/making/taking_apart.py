"""The search: a unit is taken apart, piece by piece, and put together the other way round.

In each direction, who stands in whose way is a directed graph (Wilson and Latombe, Geometric
reasoning about mechanical assembly, Artificial Intelligence 71, 1994: the non-directional blocking
graph); what can leave in it is what nobody else stands in the way of: a piece, or pieces that hold
each other (a strongly connected part of the graph) and so leave as one.  Whatever has left is never
in the way again, so no choice leads into a dead end, and which of the pieces that can leave does
so first may go by what suits the maker.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from itertools import combinations

import numpy as np

from rodwright.geometry import Vector, vector
from rodwright.making.bodies import Array
from rodwright.making.graphs import closed_cycles
from rodwright.making.hindrances import Hindrances
from rodwright.making.sub_assemblies import Piece
from rodwright.unit.directions import NOWHERE


@dataclass(frozen=True, slots=True)
class Leaving:
    """Pieces that leave together along ``away``; ``blocked`` says which others are in the way all
    the same, where no way is free.  Where all are drawn apart at once ``moves`` says how far each
    of them goes (mm), and ``away`` is zero."""

    pieces: tuple[Piece, ...]
    away: Vector
    blocked: tuple[Piece, ...] = ()
    moves: tuple[Vector, ...] = ()


Prefer = Callable[["Standing", Sequence[Leaving]], Leaving]
"""Which of several that can leave does so first."""


class Standing:
    """Pieces that stand together, and what keeps each from leaving along each of some ``ways``."""

    def __init__(
        self, hindrances: Hindrances, pieces: Sequence[Piece], ways: Sequence[Vector]
    ) -> None:
        self.hindrances = hindrances
        self.pieces = list(pieces)
        self.ways = tuple(ways)
        self._of = {ref: piece for piece in pieces for ref in piece.refs}
        self._runs_into: list[dict[Piece, set[Piece]]] = [{} for _ in ways]
        self._drags: list[dict[Piece, set[Piece]]] = [{} for _ in ways]
        for piece in pieces:
            self._look(piece)

    def piece_of(self, ref: str) -> Piece:
        """The piece that a part is in.

        Raises:
            KeyError: it doesn't stand.
        """
        return self._of[ref]

    def beside(self) -> dict[Piece, list[Piece]]:
        """Which pieces are joined."""
        return {piece: self.joined_to(piece) for piece in self.pieces}

    def joined_to(self, piece: Piece) -> list[Piece]:
        """The other pieces that a piece is joined to, each once."""
        found: dict[Piece, None] = {}
        for ref in piece.refs:
            for joint in self.hindrances.joints[ref]:
                for other in (joint.first, joint.second):
                    if self._of.get(other, piece) is not piece:
                        found[self._of[other]] = None
        return list(found)

    def alone(self, *, dragging: bool = False) -> list[Leaving]:
        """Every single piece that can leave, along each way that is free for it."""
        return [
            Leaving((piece,), away)
            for piece in self.pieces
            for away, into, drags in zip(self.ways, self._runs_into, self._drags, strict=True)
            if not into[piece] and (dragging or not drags[piece])
        ]

    def together(self, *, dragging: bool = False) -> list[Leaving]:
        """The fewest pieces that can leave as one, along each way, where none can alone."""
        found = []
        for away, into, drags in zip(self.ways, self._runs_into, self._drags, strict=True):
            after = {
                piece: into[piece] if dragging else into[piece] | drags[piece]
                for piece in self.pieces
            }
            found += [
                Leaving(group, away)
                for group in closed_cycles(after)
                if len(group) < len(self.pieces)
            ]
        return found

    def held(self) -> list[Leaving]:
        """Every piece along every way, with what is in its way."""
        return [
            Leaving((piece,), away, tuple(each for each in self.pieces if each in into[piece]))
            for piece in self.pieces
            for away, into in zip(self.ways, self._runs_into, strict=True)
        ]

    def take(self, pieces: Sequence[Piece]) -> None:
        """Take pieces away."""
        for piece in pieces:
            self.pieces.remove(piece)
            for ref in piece.refs:
                del self._of[ref]
            for blockers in (*self._runs_into, *self._drags):
                del blockers[piece]
                for others in blockers.values():
                    others.discard(piece)

    def part(self, piece: Piece) -> None:
        """Let what a piece is made of stand for it."""
        at = self.pieces.index(piece)
        self.take([piece])
        self.pieces[at:at] = piece.members
        self._of.update((ref, each) for each in piece.members for ref in each.refs)
        for each in piece.members:
            self._look(each)
        for other in self.pieces:
            if other not in piece.members:
                self._look(other, among=piece.refs)

    def free_between(self, one: Piece, other: Piece) -> list[Vector]:
        """The ways along which a piece leaves another, were there no more."""
        return [way for way in self.ways if not self.hindrances.of(one.refs, other.refs, way)]

    def _look(self, piece: Piece, among: Sequence[str] | None = None) -> None:
        """See what keeps a piece from leaving."""
        others = [ref for ref in among or self._of if self._of[ref] is not piece]
        for away, into, drags in zip(self.ways, self._runs_into, self._drags, strict=True):
            into.setdefault(piece, set()).update(
                self._of[each] for each in self.hindrances.of(piece.refs, others, away)
            )
            drags.setdefault(piece, set()).update(
                self._of[each] for each in self._dragged_past(piece, set(others), away)
            )

    def _dragged_past(self, piece: Piece, others: set[str], away: Vector) -> Iterator[str]:
        for ref in piece.refs:
            for joint in self.hindrances.joints[ref]:
                other = joint.second if joint.first == ref else joint.first
                if other in others and self.hindrances.drags(joint, away):
                    yield other


def taken_apart(standing: Standing, prefer: Prefer) -> Iterator[Leaving]:
    """What leaves, one after the other, until one piece is left; what stands is ``standing``
    meanwhile.

    Where nothing can leave alone, pieces that needn't come as one are looked at as what they are
    made of, then pieces leave together; where that doesn't help either, a glued tongue goes far
    along its channel.  Then all are drawn apart at once, if they can be; in the end a piece leaves
    past what blocks it.
    """
    while len(standing.pieces) > 1:
        found = standing.alone()
        if not found and _parted(standing):
            continue
        found = (
            found
            or standing.together()
            or standing.alone(dragging=True)
            or standing.together(dragging=True)
        )
        if not found and (drawn := drawn_apart(standing)) is not None:
            yield drawn
            standing.take(drawn.pieces)
            return
        if not found:
            last = [piece for piece in standing.pieces if piece.members]
            if last:
                standing.part(last[0])
                continue
            fewest = min(len(each.blocked) for each in standing.held())
            found = [each for each in standing.held() if len(each.blocked) == fewest]
        leaving = prefer(standing, found)
        yield leaving
        standing.take(leaving.pieces)


def drawn_apart(standing: Standing) -> Leaving | None:
    """All the pieces that stand, drawn apart at once, each straight along a way of its own.

    So a frame is drawn together whose corners are mitred and dowelled: none of its members can be
    the last.  Two joined pieces may leave each other along certain lines only, or within a plane;
    of all velocities that respect that, those are taken that are nearest to drawing every piece
    straight away from the middle.  None where they don't clear each other.
    """
    pieces = standing.pieces
    centres = np.array([standing.hindrances.centre(piece.refs) for piece in pieces])
    rows = []
    for one, other in combinations(range(len(pieces)), 2):
        if pieces[other] not in standing.joined_to(pieces[one]):
            continue
        free = standing.free_between(pieces[one], pieces[other])
        for normal in _never_along(free):
            row = np.zeros((len(pieces), 3))
            row[one], row[other] = normal, -normal
            rows.append(row.ravel())
    out = (centres - centres.mean(axis=0)).ravel()
    if rows:
        _, sizes, lines = np.linalg.svd(np.array(rows))
        held = lines[: int((sizes > 1e-9).sum())]
        out = out - held.T @ (held @ out)
    speeds = out.reshape(-1, 3)
    if np.abs(speeds).max() < 1.0:
        return None
    for one, other in combinations(range(len(pieces)), 2):
        apart = speeds[one] - speeds[other]
        length = float(np.linalg.norm(apart))
        if length > 1e-6:
            way = vector((apart / length).tolist())
            if standing.hindrances.of(pieces[one].refs, pieces[other].refs, way):
                return None
    moves = tuple(vector(np.round(each, 6).tolist()) for each in speeds)
    return Leaving(tuple(pieces), NOWHERE, moves=moves)


def _never_along(free: Sequence[Vector]) -> Array:
    """The directions square to all that are free (n, 3): none may be in a relative velocity."""
    if not free:
        return np.eye(3)
    _, sizes, lines = np.linalg.svd(np.array(free))
    return lines[int((sizes > 1e-9).sum()) :]


def _parted(standing: Standing) -> bool:
    """Whether there was a piece that needn't come as one; the first such is parted then."""
    for piece in standing.pieces:
        if piece.members and not piece.needed:
            standing.part(piece)
            return True
    return False
