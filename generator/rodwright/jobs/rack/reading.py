"""A rack file, read and checked, as the plain data that plans are made from."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from rodwright.cutting.rack import Entry, Rack
from rodwright.cutting.saws import Saw
from rodwright.problems import KeyPath, Problems
from rodwright.setout.stock_at_hand import (
    Lying,
    each_costs,
    edges_of,
    flaws_of,
    note_sawn,
    planing_off,
)
from rodwright.trade.materials import Material, known_materials, material_called, near_materials
from rodwright.trade.stock_sizes import planed
from rodwright.unit import Grain
from rodwright.unit.stock import Piece
from rodwright.wishes.limits import THICKEST, THINNEST
from rodwright.wishes.rack import RackBoard, RackEntry, RackLength, RackSheet, RackSpec
from rodwright.wishes.reading.documents import read_text
from rodwright.wishes.reading.file_kinds import RACK
from rodwright.wishes.reading.files import located, parse
from rodwright.wishes.reading.places import Places

WIDEST_KERF = 12.0
"""mm.  No blade of a saw for wood cuts wider (common practice, no source)."""
WIDEST_TOOL = 40.0
"""mm.  No router's tool that cuts sheets to pieces is wider (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class RackFile:
    """A rack, and the place of every value in its file."""

    rack: Rack
    places: Places


def read_rack(path: str | Path) -> Rack:
    """Reads a rack file.

    Raises:
        ProblemsError: it can't be opened, read as YAML or understood as a rack, or something in it
            can't be (a flaw outside its sheet, two entries of one name ...); with every problem
            found, each with its place.
    """
    return parse_rack(read_text(Path(path), RACK), path).rack


def parse_rack(text: str, path: str | Path) -> RackFile:
    """Reads a rack from text; ``path`` is the file that problems name.

    Raises:
        ProblemsError: as for :func:`read_rack`.
    """
    spec, places = parse(RackSpec, text, Path(path), RACK, lambda _: ())
    problems = Problems(spec.unit)
    with located(Path(path), places):
        _names_apart(spec, places, problems)
        saws = tuple(_saws(spec, problems))
        kerf = min(each.kerf for each in saws)
        entries = tuple(_entry(name, spec.stock[name], kerf, problems) for name in spec.stock)
        problems.raise_if_any()
    rack = Rack(
        str(path),
        text,
        spec.unit,
        entries,
        saws,
        (spec.keep.length, spec.keep.width),
        (spec.keep.board_length, spec.keep.board_width),
        spec.first_cut,
        spec.router.spacing if spec.router else None,
        spec.taken,
        spec.currency or "",
    )
    return RackFile(rack, places)


def _names_apart(spec: RackSpec, places: Places, problems: Problems) -> None:
    """Note names that are one and the same to whoever reads them on a board."""
    seen: dict[str, str] = {}
    for name in spec.stock:
        plain = "".join(name.casefold().split())
        other = seen.setdefault(plain, name)
        if other != name:
            line, column = places.of_key(("stock", other))
            problems.add(
                ("stock", name),
                f"`{name}` is named twice: here and, as `{other}`, in line {line}, column {column}",
                "Give one of them another name, or if they are equal, count them together.",
            )


def _saws(spec: RackSpec, problems: Problems) -> Iterator[Saw]:
    for number, saw in enumerate(spec.saws):
        _note_wide(saw.kerf, WIDEST_KERF, ("saws", number, "kerf"), "a saw's cut", problems)
        yield Saw(saw.kind, saw.kerf, saw.rip, saw.crosscut, saw.lift)
    if not spec.saws:
        yield Saw() if spec.unit == "mm" else Saw(kerf=_EIGHTH)
    if spec.router is not None:
        _note_wide(spec.router.tool, WIDEST_TOOL, ("router", "tool"), "a router's tool", problems)
        yield Saw("router", spec.router.tool, lift=spec.router.lift)


_EIGHTH = 25.4 / 8


def _note_wide(width: float, most: float, where: KeyPath, what: str, problems: Problems) -> None:
    if width > most:
        problems.add(
            where,
            f"{what} is at most {problems.at_most(most)} wide; this is {problems.length(width)}",
            "Check the figure and its unit.",
        )


# --- entries ---------------------------------------------------------------------------


def _entry(name: str, spec: RackEntry, kerf: float, problems: Problems) -> Entry:
    where = ("stock", name)
    known = _material(spec, where, problems)
    if spec.count is None and spec.price is None:
        problems.add(
            where,
            f"`{name}` says neither how many there are nor what one costs",
            "Add `count: 1`, or a `price:` if it is only bought.",
        )
    if isinstance(spec, RackSheet):
        entry = _sheet(name, spec, known, problems)
    elif isinstance(spec, RackBoard):
        entry = _board(name, spec, problems)
    else:
        entry = _length(name, spec, problems)
    if not THINNEST <= entry.thickness <= THICKEST:
        problems.add(
            (*where, "thickness"),
            f"`{name}` is {problems.length(entry.thickness)} thick, which can't be right",
            "Check the figure and its unit.",
        )
    for key, size in (("length", entry.piece.length), ("width", entry.piece.width)):
        if 0 < size <= kerf:
            problems.add(
                where,
                f"`{name}` is {problems.length(size)} in {key}, and a saw's cut is "
                f"{problems.length(kerf)} wide: nothing can be cut from it",
                "Check its sizes, or take it out.",
            )
    return entry


def _material(spec: RackEntry, where: KeyPath, problems: Problems) -> Material | None:
    known = material_called(spec.material)
    if known is None and spec.density is None:
        near = near_materials(spec.material)
        kind: Literal["sheet", "board"] = "sheet" if isinstance(spec, RackSheet) else "board"
        problems.add(
            (*where, "material"),
            f"`{spec.material}` isn't a material that is known",
            f"{f'{near} If not, add' if near else 'Add'} `density:` with its kg/m3, and call it "
            f"just so in the specs that use it. Known are: {known_materials(kind)}.",
        )
    return known


def _sheet(name: str, spec: RackSheet, known: Material | None, problems: Problems) -> Entry:
    where = ("stock", name)
    length, width = spec.size
    edges = edges_of(spec.trim)
    flaws = flaws_of(Lying("the sheet", length, width, edges), spec.flaws, where, problems)
    grained = known is None or known.grained
    grain = Grain(spec.grain) if spec.grain else Grain.LENGTHWISE if grained else Grain.NONE
    size = (length, width, spec.thickness)
    return Entry(
        name,
        "sheet",
        spec.material,
        spec.thickness,
        Piece(length, width, spec.count or 0, edges, flaws, spec.show_faces),
        each_costs(spec.price, size, (*where, "price"), problems),
        grain,
        where=spec.where or "",
        note=spec.note or "",
    )


def _board(name: str, spec: RackBoard, problems: Problems) -> Entry:
    where = ("stock", name)
    thickness, sawn = spec.thickness, spec.sawn_thickness
    if thickness is None and sawn is None:
        problems.add(
            (*where, "thickness"),
            f"`{name}` doesn't say how thick it is",
            "Add `thickness:`, or `sawn_thickness:` if it has still to be planed.",
        )
    if thickness is None:
        thickness = THINNEST if sawn is None else max(THINNEST, planed(sawn, problems.unit))
    note_sawn(sawn, thickness, (*where, "sawn_thickness"), problems)
    edges, planing = edges_of(spec.bad_ends), planing_off(spec.planing, sawn, problems)
    lying = Lying("the board", spec.length, spec.width, edges, planing)
    flaws = flaws_of(lying, spec.flaws, where, problems)
    size = (spec.length, spec.width, sawn or thickness)
    return Entry(
        name,
        "board",
        spec.material,
        thickness,
        Piece(spec.length, spec.width, spec.count or 0, edges, flaws),
        None if spec.price is None else spec.price.each(*size),
        sawn_thickness=sawn,
        planing=planing,
        where=spec.where or "",
        note=spec.note or "",
    )


def _length(name: str, spec: RackLength, problems: Problems) -> Entry:
    where = ("stock", name)
    edges = edges_of(spec.bad_ends)
    flaws = flaws_of(Lying("the length", spec.length, 0.0, edges), spec.flaws, where, problems)
    size = (spec.length, spec.section, spec.thickness)
    return Entry(
        name,
        "length",
        spec.material,
        spec.thickness,
        Piece(spec.length, 0.0, spec.count or 0, edges, flaws),
        None if spec.price is None else spec.price.each(*size),
        section=spec.section,
        where=spec.where or "",
        note=spec.note or "",
    )
