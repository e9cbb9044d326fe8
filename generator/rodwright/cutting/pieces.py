"""What is to be cut: pieces as plain sizes."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Inner:
    """A piece that is cut out of a larger one, which was planned as one.

    ``x`` and ``y`` are where its near corner lies in the larger piece, before that is turned;
    ``length`` and ``width`` its size there; all in mm.
    """

    name: str
    x: float
    y: float
    length: float
    width: float


@dataclass(frozen=True, slots=True)
class Piece:
    """Some equal pieces to cut.

    ``length`` runs along the grain of the stock, ``width`` across it, as cut, in mm; ``width``
    is 0 for lengths cut from a section that is bought as it is.  ``turning`` says whether a
    piece may lie across the grain (None: as the plan says for all).  ``slants`` are how far its
    near and its far end are cut back across the width, mm (0: square): the length is over the long
    points, both of which lie on one edge.  ``section`` is how wide a bought section is there, mm,
    where ``width`` is 0 (0: as wide as the slant is long, a mitre of 45 degrees).  ``inner`` are
    the pieces that are cut from this one afterwards, such as a row of fronts whose grain runs
    through.  ``value`` is what a piece is worth where not all of them can be cut.
    """

    name: str
    length: float
    width: float = 0.0
    count: int = 1
    turning: bool | None = None
    slants: tuple[float, float] = (0.0, 0.0)
    inner: tuple[Inner, ...] = ()
    value: float | None = None
    section: float = 0.0
