"""Which way parts are cut from their sheets and boards, on parts made by hand."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from kit.panels import unit_of
from kit.samples import ASH, PLYWOOD, X, Y
from rodwright.cutting.demand import DemandError, Job, lots_of
from rodwright.cutting.pieces import Piece
from rodwright.cutting.rack import Entry, Rack
from rodwright.cutting.work import Label, Lot
from rodwright.unit import (
    Bevel,
    Blank,
    Edging,
    Grain,
    Mitre,
    Part,
    Placement,
    Role,
    Stock,
    Surface,
    Working,
)
from rodwright.unit import Piece as Boards
from rodwright.unit.stock import Sold

NEAR, FAR = Surface.NEAR_END, Surface.FAR_END
FACES = Surface.FACE, Surface.REVERSE
FRONT, REAR = Surface.FACE_EDGE, Surface.BACK_EDGE
PLAIN = replace(PLYWOOD, material="mdf", grain=Grain.NONE)
RACK = replace(ASH, pieces=(Boards(3000.0, 150.0, 20),))


def part(
    length: float, width: float, thickness: float, stock: Stock, *workings: Working, **more: Any
) -> Part:
    """A part; ``more`` are fields of it or its blank."""
    own = {key: more.pop(key) for key in ("ref", "edged") if key in more}
    blank = Blank(length, width, thickness, stock, more.pop("grain", stock.lengthwise), (), **more)
    placed = Placement((0.0, 0.0, 0.0), X, Y)
    made = Part("P1", "Piece", Role.PACKER, "Test", blank, placed, workings)
    return replace(made, **own)


def showing(made: Part, *faces: Surface) -> Part:
    return replace(made, blank=replace(made.blank, show_surfaces=faces))


def cut(*parts: Part, rack: Rack | None = None) -> tuple[Piece, Label]:
    """The one piece of some parts, and the label of the first."""
    (lot,) = lots_of([Job(unit_of(*parts))], rack, kerf=3.2)
    (piece,) = lot.pieces
    return piece, lot.labels[piece.name][0]


def test_a_sheet_part_lies_along_the_grain() -> None:
    piece, label = cut(part(700.0, 300.0, 18.0, PLYWOOD))
    assert (piece.length, piece.width, piece.turning) == (700.0, 300.0, False)
    assert label.notes == ()


def test_a_part_with_its_grain_across() -> None:
    piece, label = cut(part(700.0, 300.0, 18.0, PLYWOOD, grain=Grain.CROSSWISE))
    assert (piece.length, piece.width, piece.turning) == (300.0, 700.0, False)
    assert label.finished == (700.0, 300.0, 18.0)
    assert label.notes == ("the grain runs across it",)


@pytest.mark.parametrize(
    "free", [part(700.0, 300.0, 18.0, PLAIN), part(700.0, 300.0, 18.0, PLYWOOD, grain=Grain.NONE)]
)
def test_what_has_no_grain_may_be_turned(free: Part) -> None:
    piece, _ = cut(free)
    assert (piece.length, piece.width, piece.turning) == (700.0, 300.0, True)


def test_trims_are_on_and_edging_is_off() -> None:
    """300 and 4 to trim, less 2 mm of edging at the front edge."""
    edged = (Edging(FRONT, "oak", 2.0),)
    piece, label = cut(
        part(700.0, 300.0, 18.0, PLYWOOD, trim_length=6.0, trim_width=4.0, edged=edged)
    )
    assert (piece.length, piece.width) == (706.0, 302.0)
    assert label.finished == (700.0, 300.0, 18.0)


def test_sizes_are_those_that_are_read() -> None:
    """Nobody sets a fence to thousandths; and 19 mm boards stay 19 mm, though 3/4 in is read."""
    piece, label = cut(part(700.04, 299.96, 18.0, PLYWOOD))
    assert (piece.length, piece.width) == (700.0, 300.0)
    assert label.finished == (700.04, 299.96, 18.0)
    inches = replace(
        unit_of(part(609.5, 88.8, 19.0, replace(RACK, thickness=19.0))), display_unit="in"
    )
    (lot,) = lots_of([Job(inches)])
    assert lot.pieces == (Piece("P1", 609.6, 88.9, turning=False),)
    assert lot.labels["P1"][0].notes == ()


def test_equal_pieces_are_gathered_whatever_they_are_for() -> None:
    one, other = part(700.0, 300.0, 18.0, PLYWOOD), part(704.0, 300.0, 18.0, PLYWOOD, ref="P2")
    more = part(700.0, 300.0, 18.0, PLYWOOD, ref="P3", trim_length=4.0)
    (lot,) = lots_of([Job(unit_of(one, other, more))])
    assert [(piece.name, piece.count) for piece in lot.pieces] == [("P1", 1), ("P2", 2)]
    assert [label.ref for label in lot.labels["P2"]] == ["P2", "P3"]


def test_a_strip_is_ripped_off_the_edge_of_its_board_where_that_takes_less() -> None:
    """8 thick and 20 wide comes out of a 22 board flat as a strip of 20, planed from 22 to 8; off
    its edge as one of 8."""
    piece, label = cut(part(700.0, 20.0, 8.0, RACK))
    assert (piece.length, piece.width) == (700.0, 8.0)
    assert label.notes == (
        "ripped 8 mm off the edge of the board and turned on its side: 22 becomes its width",
        "plane that to 20 mm",
    )
    flat, label = cut(part(700.0, 24.0, 9.0, RACK))
    assert (flat.length, flat.width) == (700.0, 24.0)
    assert label.notes == ("plane it from 22 to 9 mm thick",)
    _, label = cut(part(700.0, 24.0, 8.0, RACK))
    assert label.notes == ("plane it from 22 to 8 mm thick, or resaw it: two come out of it",)


def test_what_stands_on_edge_can_be_thicker_than_its_board() -> None:
    piece, _ = cut(part(700.0, 20.0, 40.0, RACK))
    assert (piece.length, piece.width) == (700.0, 40.0)


@pytest.mark.parametrize(
    ("workings", "slants"),
    [
        ((Mitre(NEAR, 45.0, FRONT), Mitre(FAR, 45.0, FRONT)), (60.0, 60.0)),
        ((Mitre(NEAR, 45.0, REAR), Mitre(FAR, 45.0, REAR)), (60.0, 60.0)),
        ((Mitre(NEAR, 45.0, FRONT),), (60.0, 0.0)),
        # With its long point at the back, the piece is laid the other way round.
        ((Mitre(NEAR, 45.0, REAR),), (0.0, 60.0)),
        # Long points on both edges, or through the thickness: told as square.
        ((Mitre(NEAR, 45.0, FRONT), Mitre(FAR, 45.0, REAR)), (0.0, 0.0)),
        ((Mitre(NEAR, 45.0, Surface.FACE), Mitre(FAR, 45.0, Surface.FACE)), (0.0, 0.0)),
        # A bevel that takes the end off over 20 of the length, long at the face edge.
        ((Bevel(FAR, REAR, 60.0, 20.0),), (0.0, 20.0)),
        # Only a corner off.
        ((Bevel(FAR, REAR, 30.0, 20.0),), (0.0, 0.0)),
    ],
)
def test_slants_of_mitred_ends(workings: tuple[Working, ...], slants: tuple[float, float]) -> None:
    piece, _ = cut(part(700.0, 60.0, 22.0, RACK, *workings))
    assert piece.slants == pytest.approx(slants)
    assert piece.length == 700.0


def test_mitres_are_cut_a_little_long() -> None:
    mitres = (Mitre(NEAR, 45.0, FRONT), Mitre(FAR, 45.0, FRONT))
    piece, label = cut(part(700.0, 60.0, 22.0, RACK, *mitres, trim_length=4.0))
    assert (piece.length, piece.slants) == (704.0, (60.0, 60.0))
    assert label.notes[:2] == (
        "mitre 45° at both ends: 704 mm over the long points, 584 over the short",
        "cut 2 over at both ends",
    )


def test_members_of_a_bought_section_are_just_cut_to_length() -> None:
    section = replace(ASH, section=60.0)
    mitres = (Mitre(NEAR, 45.0, FRONT), Mitre(FAR, 45.0, FRONT))
    (lot,) = lots_of([Job(unit_of(part(700.0, 58.0, 20.0, section, *mitres)))])
    assert (lot.kind, lot.section, lot.thickness) == ("length", 60.0, 22.0)
    assert lot.pieces == (Piece("P1", 700.0, turning=False, slants=(60.0, 60.0), section=60.0),)
    assert lot.labels["P1"][0].notes[:3] == (
        "mitre 45° at both ends: 700 mm over the long points, 580 over the short",
        "rip it to 58 mm wide, from the edge of its short points",
        "plane it from 22 to 20 mm thick",
    )


def test_a_wide_part_is_glued_up_of_strips_and_labelled_so() -> None:
    """1690 x 425 of boards 150 wide: 431 and two joints of 3 are three strips of 145.7."""
    (lot,) = lots_of([Job(unit_of(part(1690.0, 425.0, 20.0, RACK, ref="WT1")))], kerf=3.2)
    (piece,) = lot.pieces
    assert lot.glued_up
    assert (piece.name, piece.count, piece.length) == ("WT1-1", 3, 1702.0)
    assert piece.width == pytest.approx(145.7)
    labels = lot.labels["WT1-1"]
    assert [label.ref for label in labels] == ["WT1-1", "WT1-2", "WT1-3"]
    assert labels[1].part == "Piece, strip 2 of 3"
    assert labels[1].finished == pytest.approx((1702.0, 142.7, 20.0))
    assert labels[1].notes == (
        "joint the edges (1.5 mm each) and glue up WT1-1 to WT1-3 to 1702 x 431 mm, rings "
        "alternate",
        "then cut to 1690 x 425 mm",
        "plane it from 22 to 20 mm thick",
    )


def test_panels_share_the_boards_at_hand() -> None:
    """Two panels 250 wide, two boards of 140 and two of 126 at hand: of all four the first would
    take both of 140, ripped to 129.5, and the second find none; each takes one of either."""
    rack = replace(RACK, pieces=(Boards(1000.0, 140.0, 2), Boards(1000.0, 126.0, 2)))
    unit = unit_of(*(part(900.0, 250.0, 22.0, rack, ref=ref) for ref in ("P1", "P2")))
    (lot,) = lots_of([Job(unit)], kerf=3.2)
    assert [(piece.name, piece.count, piece.width) for piece in lot.pieces] == [
        ("P1-1", 2, 140.0),
        ("P1-2", 2, pytest.approx(119.0)),
    ]


def test_quarter_sawn_boards_lie_as_they_come() -> None:
    quarter = replace(RACK, sawn="quarter")
    (lot,) = lots_of([Job(unit_of(part(1690.0, 425.0, 22.0, quarter)))], kerf=3.2)
    assert "rings" not in lot.labels["P1-1"][0].notes[0]


def test_good_faces_are_told_of_only_where_some_sheets_lack_them() -> None:
    def lot_from(*good: int) -> Lot:
        entries = (
            Entry(f"E{n}", "sheet", "birch plywood", 18.0, Boards(2440.0, 1220.0, 3, show_faces=n))
            for n in good
        )
        (lot,) = lots_of([Job(unit)], Rack("rack.yaml", "", "mm", tuple(entries)))
        return lot

    unit = unit_of(
        showing(part(600.0, 300.0, 18.0, PLYWOOD, ref="P1"), Surface.FACE),
        showing(part(600.0, 300.0, 18.0, PLYWOOD, ref="P2"), *FACES),
        showing(part(600.0, 300.0, 18.0, PLYWOOD, ref="P3"), Surface.REVERSE),
    )
    lot = lot_from(1, 2)
    assert [(piece.name, piece.count) for piece in lot.pieces] == [("P1", 2), ("P2", 1)]
    assert lot.faces == {"P1": 1, "P2": 2}
    assert {"E1", "E2"} <= {supply.name for supply in lot.supplies}
    lot = lot_from(2)
    assert [(piece.name, piece.count) for piece in lot.pieces] == [("P1", 3)]
    assert lot.faces == {}


@pytest.mark.parametrize(
    ("wrong", "message", "remedy"),
    [
        (
            part(700.0, 300.0, 15.0, PLYWOOD),
            "Piece (P1) is 15 mm thick; `case` is 18 mm",
            "Name stock 15 mm thick, or change the part's.",
        ),
        (
            part(700.0, 300.0, 25.0, RACK),
            "Piece (P1) is 25 mm thick; `ash` is 22 mm",
            "Name stock 25 mm thick, or change the part's.",
        ),
        (
            part(700.0, 70.0, 22.0, replace(ASH, section=60.0)),
            "Piece (P1) is 70 mm wide as cut; `ash` is 60 mm",
            "Name stock at least 70 mm wide, or change the part's.",
        ),
        (
            part(1000.0, 2000.0, 18.0, PLYWOOD),
            "Piece (P1) needs 1000 x 2000 mm, its length along the grain; the largest sheet of "
            "`case` has 2440 x 1220 mm",
            "It takes a sheet of at least 1000 x 2000 mm once trimmed, or `grain: none` for "
            "`case`, so that it may lie across, or make it in two.",
        ),
        (
            part(2500.0, 300.0, 18.0, PLAIN),
            "Piece (P1) needs 2500 x 300 mm; the largest sheet of `case` has 2440 x 1220 mm",
            "It takes a sheet of at least 2500 x 300 mm once trimmed, or make it in two.",
        ),
        (
            part(5000.0, 100.0, 22.0, RACK),
            "Piece (P1) needs 5000 mm of length; the longest board of `ash` has 4150 mm",
            "Get boards of at least 5000 mm, or make it in two.",
        ),
        (
            part(4145.0, 300.0, 22.0, RACK),
            "Piece (P1) needs 4157 mm of length; the longest board of `ash` has 4150 mm",
            "Get boards of at least 4157 mm, or make it in two.",
        ),
        (
            part(700.0, 1300.0, 22.0, replace(ASH, sold=(Sold(2400.0, 50.0),))),
            "Piece (P1) has to be glued up to 700 x 1300 mm, and the boards of `ash` are too "
            "narrow or too few",
            "Get wider ones or more of them (`pieces`, `sold`).",
        ),
        (
            showing(part(700.0, 300.0, 18.0, replace(PLYWOOD, show_faces=1)), *FACES),
            "Piece (P1) shows both its faces; no `case` has as many good ones",
            "Name stock for it that has, or `show_faces` for its stock if it has.",
        ),
    ],
)
def test_what_cant_be_cut_is_told_with_what_helps(wrong: Part, message: str, remedy: str) -> None:
    with pytest.raises(DemandError) as caught:
        lots_of([Job(unit_of(wrong))])
    (refusal,) = caught.value.refusals
    assert (refusal.message, refusal.remedy) == (message, remedy)
    assert refusal.problem.where == ("stock", wrong.blank.stock.name)


def test_all_that_is_wrong_is_told_at_once() -> None:
    wrong = part(700.0, 300.0, 15.0, PLYWOOD), part(2500.0, 300.0, 18.0, PLAIN, ref="P2")
    with pytest.raises(DemandError, match=r"(?s)15 mm thick.*2500 x 300") as caught:
        lots_of([Job(unit_of(*wrong))])
    assert [each.refs for each in caught.value.refusals] == [("P1",), ("P2",)]
