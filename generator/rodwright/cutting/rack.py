"""The maker's own rack as plain data: what stands there, what is bought, what it is cut with."""

from __future__ import annotations

import hashlib
from dataclasses import astuple, dataclass
from typing import Literal

from rodwright.cutting.saws import Saw
from rodwright.unit import Grain
from rodwright.unit.stock import Piece

RackKind = Literal["sheet", "board", "length"]


@dataclass(frozen=True, slots=True)
class Entry:
    """Some equal sheets, boards or lengths of the rack, by the name that is written on them.

    ``piece`` is its size, with how many are at hand (0: it is only bought), and what can't be used
    of it; its width is 0 for lengths of a section bought as it is, whose other side is ``section``.
    ``thickness`` is what parts get (planed); ``sawn_thickness`` what it is now, where it has still
    to be planed, and ``planing`` what straightening and planing takes off the width in all.
    ``price`` is what another one costs (None: not to be bought).  ``grain`` says how the grain runs
    to the length.  ``where`` it stands and a ``note`` are the maker's words.  All in mm.
    """

    name: str
    kind: RackKind
    material: str
    thickness: float
    piece: Piece
    price: float | None = None
    grain: Grain = Grain.LENGTHWISE
    section: float = 0.0
    sawn_thickness: float | None = None
    planing: float = 0.0
    where: str = ""
    note: str = ""

    @property
    def fingerprint(self) -> str:
        """Alike for entries that a plan can't tell apart: all but name, count, price and where it
        stands."""
        piece = self.piece
        figures = (
            self.kind,
            " ".join(self.material.lower().split()),
            *(self.thickness, self.sawn_thickness, self.section, self.planing),
            *(piece.length, piece.width, piece.show_faces, str(self.grain)),
            tuple(astuple(piece.trim)),
            tuple(astuple(flaw)[:4] for flaw in piece.flaws),
        )
        plain = [round(each, 6) if isinstance(each, float) else each for each in figures]
        return hashlib.sha256(repr(plain).encode()).hexdigest()[:16]


@dataclass(frozen=True, slots=True)
class Rack:
    """A rack file, read.

    ``file`` is its path as it was given and ``text`` what it holds.  ``saws`` are what pieces are
    cut with, the first where nothing else is said.  ``keep`` is the smallest offcut worth keeping
    (longer and shorter side), ``keep_board`` that of boards and bought lengths (length and width),
    in mm.  ``first_cut`` is how sheets are cut first (None: as it comes).  ``spacing`` is the least
    distance between pieces that a router cuts, mm (None: its tool).  ``taken`` are the plans that
    were taken out of it already.  ``currency`` is what its prices are in, by its code in ISO 4217
    (empty: nobody said).
    """

    file: str
    text: str
    unit: Literal["mm", "in"]
    entries: tuple[Entry, ...]
    saws: tuple[Saw, ...] = ()
    keep: tuple[float, float] = (0.0, 0.0)
    keep_board: tuple[float, float] = (0.0, 0.0)
    first_cut: Literal["along", "across"] | None = None
    spacing: float | None = None
    taken: tuple[str, ...] = ()
    currency: str = ""

    def entry(self, name: str) -> Entry | None:
        """The entry of this name."""
        return next((each for each in self.entries if each.name == name), None)
