"""What can be cut from: sheets, boards, bought lengths and offcuts, as plain sizes."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Flaw:
    """A rectangle of a sheet or board that mustn't be in any piece: a knot, old screw holes.

    ``x`` and ``y`` are its near corner in the frame of the stock; a stretch of a board is as
    wide as the board.  All in mm.  ``why`` is what it is, in the maker's words.
    """

    x: float
    y: float
    length: float
    width: float
    why: str = ""


@dataclass(frozen=True, slots=True)
class Trim:
    """What is cut off a sheet or board before anything else, in mm; 0 leaves the factory edge.

    ``near`` and ``far`` are its ends, ``face`` and ``back`` its edges (y = 0 and y = width).
    It includes the saw's cut.
    """

    near: float = 0.0
    far: float = 0.0
    face: float = 0.0
    back: float = 0.0


@dataclass(frozen=True, slots=True)
class Supply:
    """Some equal sheets, boards or lengths that can be cut.

    ``length`` runs along the grain, ``width`` across it, in mm; ``width`` is 0 for lengths of a
    section that is bought as it is.  ``count`` is how many there are (None: as many as wanted).
    ``price`` is for one of them, in any unit; 0 for what is there already.  To get the least
    area, give areas as prices; with equal prices the plan takes the fewest.
    """

    name: str
    length: float
    width: float = 0.0
    count: int | None = None
    price: float = 1.0
    trim: Trim = Trim()
    flaws: tuple[Flaw, ...] = ()
