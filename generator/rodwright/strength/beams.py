"""Beams on any supports, bent by any loads: sag, moments, shear and reactions.

Millimetres, newtons, radians; x from the beam's left end.  Loads and sag are positive downwards,
moments where the beam sags, shear where what is left of the cut pushes up, reactions upwards.
Between breaks (supports, loads' ends, changes of section, hinges) each piece is an exact element
of Timoshenko's beam: plane sections that turn by the bending moment and slide by the shear,
``M' = V``, ``V' = -w``, slope ``f' = -M/EI``, sag ``v' = f + V/GA'`` (S. Timoshenko, Philosophical
Magazine 41, 1921, from memory; any text of structural mechanics).
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import pairwise
from math import inf, isfinite, isinf

from rodwright.strength.beam_system import BeamNotHeldError, solve
from rodwright.strength.curves import SAME, Peak, Piece, Polynomial, peak, value

_SLACK = 1e-9
"""A support pulls if it does so by more than this share of all reactions."""

_FEATHER = 1e-7
"""How stiffly a feather holds, as a share of EI/L3."""

__all__ = [
    "Beam",
    "BeamNotHeldError",
    "Bent",
    "Peak",
    "Point",
    "Sag",
    "Segment",
    "Stretch",
    "Support",
    "bend",
]


@dataclass(frozen=True, slots=True)
class Stretch:
    """A load spread from ``start`` to ``stop`` (mm), from ``at_start`` to ``at_stop`` N/mm."""

    start: float
    stop: float
    at_start: float
    at_stop: float


@dataclass(frozen=True, slots=True)
class Point:
    """A force (N, downwards) at one place (mm)."""

    at: float
    force: float


@dataclass(frozen=True, slots=True)
class Support:
    """What holds a beam at one place (mm).

    ``turning`` is its rotational stiffness (N mm per rad; 0: a pin, inf: fixed), ``sinking`` how
    stiffly it holds up (N per mm; inf: it doesn't sink).  One that ``lifts`` can only push, and
    turns nothing: the beam lifts off it where the loads would have it pull.
    """

    at: float
    turning: float = 0.0
    sinking: float = inf
    lifts: bool = False


@dataclass(frozen=True, slots=True)
class Segment:
    """A part of a beam up to ``stop`` (mm) of one section: bending stiffness EI (N mm2) and shear
    stiffness GA' (N; inf: it doesn't give to shear)."""

    stop: float
    bending: float
    shear: float = inf


@dataclass(frozen=True, slots=True)
class Beam:
    """A beam of a length (mm), with its segments from left to right, its supports, its loads, and
    hinges within it (mm; no moment passes there)."""

    length: float
    segments: tuple[Segment, ...]
    supports: tuple[Support, ...]
    stretches: tuple[Stretch, ...] = ()
    points: tuple[Point, ...] = ()
    hinges: tuple[float, ...] = ()

    def __post_init__(self) -> None:
        for problem in _problems(self):
            raise ValueError(problem)


@dataclass(frozen=True, slots=True)
class Sag:
    """The greatest sag (mm) within a span, and its place (mm).

    Between two supports it is counted from the straight line between them; past the last support
    (``overhang``) from the level of that support.
    """

    start: float
    stop: float
    at: float
    sag: float
    overhang: bool = False


@dataclass(frozen=True, slots=True)
class Bent:
    """A beam under its loads.

    ``reactions`` (N) and ``turnings`` (N mm, positive clockwise seen from the front: what the
    beam does to the support) are of the supports in the beam's order; one that the beam lifted
    off has neither and is False in ``touching``.
    """

    beam: Beam
    pieces: tuple[Piece, ...]
    reactions: tuple[float, ...]
    turnings: tuple[float, ...]
    touching: tuple[bool, ...]

    def deflection(self, x: float) -> float:
        """How far the beam has gone down (mm) at a place (mm), against where it lay unloaded."""
        piece = self._piece(x)
        return value(piece.sag, piece.along(x))

    def slope(self, x: float) -> float:
        """How far the section has turned (rad, clockwise seen from the front) at a place (mm)."""
        piece = self._piece(x)
        return value(piece.slope, piece.along(x))

    def moment(self, x: float) -> float:
        """The bending moment (N mm) at a place (mm); where it jumps, just right of it."""
        piece = self._piece(x)
        return value(piece.moment, piece.along(x))

    def shear(self, x: float) -> float:
        """The shear force (N) at a place (mm); where it jumps, just right of it."""
        piece = self._piece(x)
        return value(piece.shear, piece.along(x))

    def greatest_deflection(self, start: float = 0.0, stop: float = inf) -> Peak:
        """The greatest deflection (mm) between two places, against the unloaded beam."""
        return self._peak(tuple(piece.sag for piece in self.pieces), start, stop)

    def greatest_moment(self, start: float = 0.0, stop: float = inf) -> Peak:
        """The greatest moment (N mm) between two places, by its size."""
        return self._peak(tuple(piece.moment for piece in self.pieces), start, stop)

    def greatest_shear(self, start: float = 0.0, stop: float = inf) -> Peak:
        """The greatest shear force (N) between two places, by its size."""
        return self._peak(tuple(piece.shear for piece in self.pieces), start, stop)

    def sags(self, *, down: bool = False) -> tuple[Sag, ...]:
        """The greatest sag of each span and overhang by its size, from left to right; with ``down``
        that which goes down farthest: 0 where it only rises."""
        size = float if down else abs
        held = sorted(
            support.at
            for support, touches in zip(self.beam.supports, self.touching, strict=True)
            if touches and support.sinking > 0
        )
        first, last, end = held[0], held[-1], self.beam.length
        left, right = self.deflection(first), self.deflection(last)
        between = [(a, b, self.deflection(a), self.deflection(b)) for a, b in pairwise(held)]
        before = [(0.0, first, left, left)] if first > 0 else []
        after = [(last, end, right, right)] if last < end else []
        return tuple(
            replace(self._sag(*each, size), overhang=each[1] <= first or each[0] >= last)
            for each in (*before, *between, *after)
        )

    def greatest_sag(self) -> Sag:
        """The greatest of its sags, by size; of equal ones the leftmost."""
        sags = self.sags()
        most = max(abs(each.sag) for each in sags)
        return next(each for each in sags if abs(each.sag) >= most * (1 - SAME))

    def _sag(
        self, start: float, stop: float, left: float, right: float, size: Callable[[float], float]
    ) -> Sag:
        """The greatest sag between two places from the line through two depths (mm) there."""

        def from_line(piece: Piece) -> Polynomial:
            rise = (right - left) / (stop - start)
            line = piece.sag.copy()
            line[0] -= left + rise * (piece.start - start)
            line[1] -= rise * (piece.stop - piece.start)
            return line

        found = self._peak(tuple(from_line(piece) for piece in self.pieces), start, stop, size)
        return Sag(start, stop, found.at, found.value)

    def _piece(self, x: float) -> Piece:
        number = bisect_right(self.pieces, x, key=lambda piece: piece.start)
        return self.pieces[max(0, number - 1)]

    def _peak(
        self,
        lines: tuple[Polynomial, ...],
        start: float,
        stop: float,
        size: Callable[[float], float] = abs,
    ) -> Peak:
        return peak(self.pieces, lines, start, min(stop, self.beam.length), size)


def bend(beam: Beam) -> Bent:
    """A beam under its loads.

    Supports that only push are let go and taken up again, always the first that is wrong, until
    each either pushes or is clear of the beam (K. G. Murty, Linear Algebra and its Applications 7,
    1974, from memory: this ends after finitely many steps).  While that is sought, feathers hold
    the beam's ends, so that it is never adrift.

    Raises:
        BeamNotHeldError: nothing holds the beam, or part of it, or it tips off its supports.
    """
    touching = [True] * len(beam.supports)
    if not any(support.lifts for support in beam.supports):
        return _bent(beam, touching)
    while True:
        wrong = _first_wrong(beam, touching)
        if wrong is None:
            return _bent(beam, touching)
        touching[wrong] = not touching[wrong]


def _bent(beam: Beam, touching: Sequence[bool]) -> Bent:
    """A beam on those of its supports that it touches."""
    held = [each for each, touches in zip(beam.supports, touching, strict=True) if touches]
    found = solve(beam, held)
    reactions, turnings = iter(found.reactions), iter(found.turnings)
    return Bent(
        beam,
        found.pieces,
        tuple(next(reactions) if touches else 0.0 for touches in touching),
        tuple(next(turnings) if touches else 0.0 for touches in touching),
        tuple(touching),
    )


def _first_wrong(beam: Beam, touching: Sequence[bool]) -> int | None:
    """The first support that pulls at the beam, or that the beam has gone down through."""
    stiffest = max(segment.bending for segment in beam.segments)
    feather = _FEATHER * stiffest / beam.length**3
    held = {each.at: each for each, touches in zip(beam.supports, touching, strict=True) if touches}
    for end in (0.0, beam.length):
        held.setdefault(end, Support(end, sinking=feather))
    found = solve(beam, tuple(held.values()))
    bent = Bent(beam, found.pieces, found.reactions, found.turnings, (True,) * len(held))
    forces = dict(zip(held, found.reactions, strict=True))
    slack = _SLACK * sum(map(abs, found.reactions))
    for number, (support, touches) in enumerate(zip(beam.supports, touching, strict=True)):
        pulls = touches and forces[support.at] < -slack
        sinks = not touches and bent.deflection(support.at) > slack * beam.length**3 / stiffest
        if support.lifts and (pulls or sinks):
            return number
    return None


def _problems(beam: Beam) -> Iterator[str]:
    """What makes no beam of it."""
    stops = [segment.stop for segment in beam.segments]
    if not (isfinite(beam.length) and beam.length > 0):
        yield f"a beam's length is more than nothing, not {beam.length}"
    if not stops or stops[-1] != beam.length or stops != sorted({0.0, *stops})[1:]:
        yield f"segments end one after another, the last at {beam.length}; they end at {stops}"
    if any(
        not each.bending > 0 or not each.shear > 0 or isinf(each.bending) for each in beam.segments
    ):
        yield "a segment's stiffness is more than nothing, and its EI finite"
    places = [support.at for support in beam.supports]
    if len(set(places)) < len(places):
        yield f"two supports stand at one place: {sorted(places)}"
    if any(each.turning < 0 or each.sinking < 0 for each in beam.supports):
        yield "a support's stiffness is nothing at least"
    if any(each.lifts and each.turning > 0 for each in beam.supports):
        yield "a support that only pushes turns no beam"
    if any(not load.start < load.stop for load in beam.stretches):
        yield "a stretch of load ends right of its start"
    if any(not 0 < hinge < beam.length for hinge in beam.hinges):
        yield "a hinge lies within the beam"
    ends = (end for load in beam.stretches for end in (load.start, load.stop))
    for at in (*places, *ends, *(point.at for point in beam.points)):
        if not 0 <= at <= beam.length:
            yield f"{at} lies beyond the beam, which is {beam.length} long"
