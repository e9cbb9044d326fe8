"""What parts are cut from: stock, blanks, and what is glued on their edges."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal

from rodwright.geometry.vectors import Vector
from rodwright.trade.mechanics import Mechanics
from rodwright.trade.movement import Rings, swelling
from rodwright.trade.screws import Grip, grip_of
from rodwright.unit.surfaces import Grain, Surface


@dataclass(frozen=True, slots=True)
class Edges:
    """How much is cut off the ends and edges of a sheet or board before anything else, in mm.

    ``near`` and ``far`` are the ends of its length (the first of a sheet's two sizes), ``face`` and
    ``back`` its edges: from the near end, and from the face edge, flaws are measured.
    """

    near: float = 0.0
    far: float = 0.0
    face: float = 0.0
    back: float = 0.0


@dataclass(frozen=True, slots=True)
class Flaw:
    """A rectangle that no part may be cut from, and what it is: a knot, old screw holes.

    ``x`` is measured from the near end, ``y`` from the face edge, in mm; a stretch of a board is as
    wide as the board.
    """

    x: float
    y: float
    length: float
    width: float
    why: str = ""


@dataclass(frozen=True, slots=True)
class Piece:
    """Some equal sheets, boards or lengths at hand: length and width in mm, and how many.

    A sheet's length and width are its first and second size, whichever way its grain runs.
    ``trim`` has bad ends in it.  ``show_faces`` are how many faces are good.
    """

    length: float
    width: float
    count: int
    trim: Edges = Edges()
    flaws: tuple[Flaw, ...] = ()
    show_faces: int = 2


@dataclass(frozen=True, slots=True)
class Sold:
    """A size that can be bought: length and width in mm, and the price of one (None: not known)."""

    length: float
    width: float
    price: float | None = None


@dataclass(frozen=True, slots=True)
class Stock:
    """A sheet or board material that parts are cut from.

    ``thickness`` is the real thickness in mm, ``density`` in kg/m3 (``density_source``
    says where it comes from), ``colour`` is ``#rrggbb``.  ``size`` is one sheet's length
    and width; ``pieces`` are what is at hand; ``price`` is for one sheet, or for one
    metre of board, in the spec's currency.  ``sawn`` says how the rings of boards lie: along
    their width (flat) or square to it (quarter).  ``mechanics`` is how stiff and strong it is, as
    far as that is known.

    ``sold`` are the other sizes that it can be bought in, ``trim`` what is cut off each sheet or
    board that is bought (bad ends are in it), ``show_faces`` how many of its faces are good.
    Boards are bought ``sawn_thickness`` thick and planed to ``thickness`` (None: bought planed);
    ``planing`` is what straightening and planing takes off their width in all.  ``section`` is the
    width of what is bought in its section and only cut to length (None: ripped to width).
    """

    name: str
    kind: Literal["sheet", "board"]
    material: str
    thickness: float
    grain: Grain
    density: float
    density_source: str
    colour: str
    size: tuple[float, float] | None = None
    pieces: tuple[Piece, ...] = ()
    price: float | None = None
    sawn: Literal["flat", "quarter"] = "flat"
    mechanics: Mechanics | None = None
    sold: tuple[Sold, ...] = ()
    trim: Edges = Edges()
    show_faces: int = 2
    sawn_thickness: float | None = None
    planing: float = 0.0
    section: float | None = None

    @property
    def lengthwise(self) -> Grain:
        """The grain of a piece that is cut along it: none where the stock has none."""
        return Grain.NONE if self.grain is Grain.NONE else Grain.LENGTHWISE

    @property
    def grip(self) -> Grip:
        """How it takes screws."""
        return grip_of(self.kind, self.material)

    @property
    def quarter_sawn(self) -> Stock | None:
        """The same boards quarter-sawn; None for sheets, and for boards that are so already."""
        if self.kind != "board" or self.sawn == "quarter":
            return None
        return replace(self, sawn="quarter")

    def swelling(self, width: float, moisture: tuple[float, float]) -> float:
        """By how much ``width`` mm, across the grain, swells between two moisture contents, %.

        Quarter-sawn boards move by their radial coefficient, others by their tangential one.
        Sheet goods count as still: their crossed veneers or fibres hold them, and what is left is
        small beside the saw's own error (common practice, no source).

        Raises:
            ValueError: as :func:`rodwright.trade.movement.swelling`.
        """
        if self.kind != "board":
            return 0.0
        rings: Rings = "radial" if self.sawn == "quarter" else "tangential"
        return swelling(self.material, width, *moisture, rings)

    @property
    def described(self) -> str:
        """The material as it is asked for: quarter-sawn where it has to be."""
        said = self.sawn == "flat" or "quarter" in self.material.lower()
        return self.material if said else f"{self.material}, quarter-sawn"


@dataclass(frozen=True, slots=True)
class Blank:
    """The box a part is worked from, at its finished length, width and thickness in mm.

    ``trim_length`` and ``trim_width`` are what is left on when the blank is first cut, to
    be trimmed away later; they are no part of the solid.  ``trim_at`` are the ends and edges
    at which it is, where that isn't a matter of course.
    """

    length: float
    width: float
    thickness: float
    stock: Stock
    grain: Grain
    show_surfaces: tuple[Surface, ...] = (Surface.FACE,)
    trim_length: float = 0.0
    trim_width: float = 0.0
    trim_at: tuple[Surface, ...] = ()

    @property
    def size(self) -> Vector:
        """Finished length, width and thickness."""
        return (self.length, self.width, self.thickness)

    @property
    def rough_size(self) -> Vector:
        """Length, width and thickness to cut before trimming."""
        return (self.length + self.trim_length, self.width + self.trim_width, self.thickness)


@dataclass(frozen=True, slots=True)
class Edging:
    """Veneer or tape glued on an edge or end after cutting, ``thickness`` in mm.

    It is no solid of its own: a part's finished size includes it.  ``colour`` is what to
    order it in, empty where the material says it all.
    """

    surface: Surface
    material: str
    thickness: float
    colour: str = ""

    @property
    def called(self) -> str:
        """Material and colour."""
        return f"{self.material}, {self.colour}" if self.colour else self.material
