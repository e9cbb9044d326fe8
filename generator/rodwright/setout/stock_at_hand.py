"""Sheets and boards at hand and for sale: from the maker's words to plain sizes.

Used for the stocks of a spec and for the entries of a rack file alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.problems import KeyPath, Problems
from rodwright.trade.stock_sizes import PLANED_OFF_WIDTH
from rodwright.unit.stock import Edges, Flaw, Piece, Sold
from rodwright.wishes.prices import Price
from rodwright.wishes.stock import (
    BadEndsSpec,
    Boards,
    BoardSold,
    BoardSpec,
    FlawSpec,
    SheetPiece,
    SheetSpec,
    TrimSpec,
)


@dataclass(frozen=True, slots=True)
class Lying:
    """What a piece lies there as: ``what`` it is called in messages, length and width (mm; 0:
    of one section), what comes off its edges and what planing takes off its width."""

    what: str
    length: float
    width: float
    edges: Edges
    planing: float = 0.0


def edges_of(spec: TrimSpec | BadEndsSpec) -> Edges:
    """What comes off ends and edges, as plain data."""
    if isinstance(spec, BadEndsSpec):
        return Edges(spec.near, spec.far)
    return Edges(spec.near, spec.far, spec.face, spec.back)


def planing_off(given: float | None, sawn_thickness: float | None, problems: Problems) -> float:
    """What planing takes off the width of a board, mm: as it is said, or usual for sawn ones."""
    if given is not None:
        return given
    return 0.0 if sawn_thickness is None else PLANED_OFF_WIDTH[problems.unit]


def flaws_of(
    lying: Lying, specs: Sequence[FlawSpec], where: KeyPath, problems: Problems
) -> tuple[Flaw, ...]:
    """The flaws of a piece, those that lie outside it noted; and whether anything of it is left."""
    edges, found = lying.edges, []
    for size, off, key in (
        (lying.length, edges.near + edges.far, "length"),
        (lying.width, edges.face + edges.back + lying.planing, "width"),
    ):
        if off and size and off >= size:
            problems.add(
                (*where, key),
                f"nothing is left of {lying.what}: it is {problems.length(size)} in {key}, and "
                f"{problems.length(off)} comes off it",
                "Check what is trimmed and planed off, and its bad ends.",
            )
    for number, spec in enumerate(specs):
        place = (*where, "flaws", number)
        width = lying.width - spec.y if spec.width is None else spec.width
        stop = spec.x + spec.length
        if stop > lying.length + _HAIR:
            problems.add(
                (*place, "length"),
                f"the flaw ends {problems.length(stop)} from the near end; {lying.what} is "
                f"{problems.length(lying.length)} long",
                "Measure `x` from the near end, and give the flaw's own `length`.",
            )
        elif lying.width and (width <= 0 or spec.y + width > lying.width + _HAIR):
            side = spec.y if width <= 0 else spec.y + width
            problems.add(
                (*place, "y" if width <= 0 else "width"),
                f"the flaw reaches {problems.length(side)} from the face edge; {lying.what} is "
                f"{problems.length(lying.width)} wide",
                "Measure `y` from the face edge, and give the flaw's own `width`.",
            )
        found.append(Flaw(spec.x, spec.y, spec.length, max(0.0, width), spec.why or ""))
    return tuple(found)


_HAIR = 0.01
"""mm."""


# --- sheets ----------------------------------------------------------------------------


def sheets_at_hand(spec: SheetSpec, where: KeyPath, problems: Problems) -> tuple[Piece, ...]:
    """The sheets and offcuts of a spec's stock."""
    return tuple(
        _sheet(spec, piece, (*where, "pieces", number), problems)
        for number, piece in enumerate(spec.pieces)
    )


def _sheet(spec: SheetSpec, piece: SheetPiece, where: KeyPath, problems: Problems) -> Piece:
    edges = edges_of(piece.trim or spec.trim)
    lying = Lying("the sheet", piece.length, piece.width, edges)
    flaws = flaws_of(lying, piece.flaws, where, problems)
    faces = piece.show_faces or spec.show_faces
    return Piece(piece.length, piece.width, piece.count, edges, flaws, faces)


def sheets_sold(spec: SheetSpec, where: KeyPath, problems: Problems) -> tuple[Sold, ...]:
    """The other sizes that a spec's sheets are sold in."""
    found = []
    for number, sold in enumerate(spec.sold):
        place = (*where, "sold", number)
        length, width = sold.size
        size = (length, width, spec.thickness)
        price = each_costs(sold.price, size, (*place, "price"), problems)
        flaws_of(Lying("the sheet", length, width, edges_of(spec.trim)), (), place, problems)
        found.append(Sold(length, width, price))
    return tuple(found)


def each_costs(
    price: Price | None, size: Sequence[float], where: KeyPath, problems: Problems
) -> float | None:
    """What one sheet of this length, width and thickness costs."""
    if price is None:
        return None
    if price.power == 1:
        problems.add(
            where,
            "sheets are sold by the piece or by area, not by length",
            "Write what one costs (`74.00`), or by area: `25/m2`.",
        )
    length, width, thickness = size
    return price.each(length, width, thickness)


# --- boards ----------------------------------------------------------------------------


def boards_at_hand(spec: BoardSpec, where: KeyPath, problems: Problems) -> tuple[Piece, ...]:
    """The boards of a spec's stock."""
    return tuple(
        _board(spec, piece, (*where, "pieces", number), problems)
        for number, piece in enumerate(spec.pieces)
    )


def _board(spec: BoardSpec, piece: Boards, where: KeyPath, problems: Problems) -> Piece:
    width = _width(spec, piece.width, where, problems)
    edges = edges_of(piece.bad_ends or spec.bad_ends)
    planing = planing_off(spec.planing, spec.sawn_thickness, problems)
    lying = Lying("the board", piece.length, width, edges, planing)
    return Piece(
        piece.length, width, piece.count, edges, flaws_of(lying, piece.flaws, where, problems)
    )


def boards_sold(spec: BoardSpec, where: KeyPath, problems: Problems) -> tuple[Sold, ...]:
    """The sizes that a spec's boards are sold in: every length in every width."""
    found: dict[tuple[float, float], Sold] = {}
    edges, thick = edges_of(spec.bad_ends), spec.sawn_thickness or spec.thickness
    planing = planing_off(spec.planing, spec.sawn_thickness, problems)
    for number, sold in enumerate(spec.sold):
        place = (*where, "sold", number)
        for given in (None,) if sold.width is None else _list(sold.width):
            width = _width(spec, given, place, problems)
            for length in _list(sold.length):
                flaws_of(Lying("the board", length, width, edges, planing), (), place, problems)
                found[length, width] = Sold(
                    length, width, _costs(spec, sold, (length, width, thick))
                )
    return tuple(found.values())


def _costs(spec: BoardSpec, sold: BoardSold, size: tuple[float, float, float]) -> float | None:
    if sold.price is not None:
        return sold.price.each(*size)
    return None if spec.price is None else spec.price * size[0] / 1000


def _width(spec: BoardSpec, given: float | None, where: KeyPath, problems: Problems) -> float:
    """The width of boards: as it is said, or that of the section in which all are bought."""
    if spec.section is None:
        if given is None:
            problems.add_once(
                (*where, "width"),
                "the boards have no width",
                "Add `width:`; or where they are bought in the section of their parts, `section:` "
                "to the stock.",
            )
        return given or 1.0
    if given is not None and abs(given - spec.section) > _HAIR:
        problems.add_once(
            (*where, "width"),
            f"the boards are {problems.length(given)} wide, and their `section` is "
            f"{problems.length(spec.section)}",
            "Take `width` out, or list these boards under a stock of their own.",
        )
    return spec.section


def _list(given: float | tuple[float, ...]) -> tuple[float, ...]:
    return given if isinstance(given, tuple) else (given,)


def note_sawn(sawn: float | None, thickness: float, where: KeyPath, problems: Problems) -> None:
    """Note boards that are sawn no thicker than they are once they are planed."""
    if sawn is not None and sawn <= thickness:
        problems.add(
            where,
            f"sawn {problems.length(sawn)} thick, the boards can't be planed to "
            f"{problems.length(thickness)}",
            "`sawn_thickness` is what is bought and `thickness` what is left of it; leave it out "
            "where boards are bought planed.",
        )
