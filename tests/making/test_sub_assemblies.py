"""What is made apart and comes as one."""

from __future__ import annotations

from kit.specs import unit_from
from rodwright.making.sub_assemblies import Piece, pieces_of


def _names(pieces: tuple[Piece, ...]) -> dict[str, int]:
    return {piece.name: len(piece.refs) for piece in pieces if piece.name}


def test_doors_drawers_frame_and_what_is_glued_up() -> None:
    unit = unit_from("""
size: {width: 1200, height: 900, depth: 300}
carcass: {stock: ply, corners: housed}
interior:
  columns:
    - {width: 1 share, drawers: {count: 2, bottom: {stock: thin}, hung: inset}}
    - {width: 1 share, doors: {count: 1, stock: ash, kind: framed, panel: {stock: thin}}}
face_frame: {stock: ash, width: 45, thickness: 22, corners: butted, mid_stiles: 45}
worktop: {stock: oak, layers: 2}
""")
    pieces = pieces_of(unit)
    names = _names(pieces)
    assert names["drawer 1"] == names["drawer 2"] == 6
    assert names["door 1"] == 5
    assert names["face frame"] == 5
    assert names["worktop WT1a"] == 2
    # Nothing is left out, and nothing is in two of them.
    refs = [ref for piece in pieces for ref in piece.refs]
    assert sorted(refs) == sorted(part.ref for part in unit.parts)


def test_a_carcass_stands_alone_and_is_one_piece_on_a_base_or_for_an_opening() -> None:
    plain = "interior: {shelves: {count: 1}}\ncarcass: {stock: ply, corners: housed}\n"
    size, opening = "{width: 800, height: 900, depth: 300}", "{width: 808, height: 910, depth: 300}"
    assert _names(pieces_of(unit_from(f"{plain}size: {size}"))) == {}
    base = unit_from(f"{plain}size: {size}\nbase: {{kind: plinth, height: 80}}")
    assert _names(pieces_of(base)) == {"base": 5, "carcass": 5}
    assert _names(pieces_of(unit_from(f"{plain}opening: {opening}"))) == {"carcass": 5}


def test_what_only_rests_is_no_part_of_the_carcass_and_takes_its_lipping_along() -> None:
    unit = unit_from("""
opening: {width: 808, height: 910, depth: 300}
carcass: {stock: ply, corners: housed}
interior: {shelves: {count: 1, fixed: false}}
lipping: {stock: oak, thickness: 8, edges: [shelves]}
""")
    assert _names(pieces_of(unit)) == {"carcass": 4, "shelf SH1": 2}
    (shelf,) = (piece for piece in pieces_of(unit) if piece.name == "shelf SH1")
    assert not shelf.needed
    assert [member.refs for member in shelf.members] == [("SH1",), ("LP1",)]
