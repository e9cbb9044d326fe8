"""What the ready models are cut from: every part once, and as much as the stock list says."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest

from rodwright.cutting.demand import DemandError, Job, lots_of
from rodwright.cutting.offers import lot_kind
from rodwright.cutting.rack import Entry, Rack
from rodwright.cutting.work import Lot
from rodwright.handover.totals import stock_totals
from rodwright.lengths import format_length, parse_length
from rodwright.setout import set_out
from rodwright.unit import Piece, Stock, Unit
from rodwright.wishes.reading.files import read_spec

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))


def rack_of(*units: Unit, length: float = 6000.0, width: float = 4000.0) -> Rack:
    """A rack that has one size of all that some units are made of."""
    stocks = dict.fromkeys(part.blank.stock for unit in units for part in unit.parts)
    size = Piece(length, width, 100)
    entries = [
        Entry(
            f"{number}", lot_kind(stock), stock.material, stock.thickness, size, None, stock.grain
        )
        for number, stock in enumerate(stocks)
    ]
    return Rack("rack.yaml", "", "mm", tuple(entries))


def unit_of(name: str) -> Unit:
    return set_out(read_spec(next(path for path in MODELS if path.stem == name)))


def with_stock(unit: Unit, name: str, stock: Stock) -> Unit:
    """The same unit, one of its stocks another."""
    parts = tuple(
        replace(part, blank=replace(part.blank, stock=stock))
        if part.blank.stock.name == name
        else part
        for part in unit.parts
    )
    return replace(unit, parts=parts)


def refs(lot: Lot) -> list[str]:
    """The refs of all parts that a lot gives: of pieces that others are cut from, of those."""
    names = [name for piece in lot.pieces for name in [i.name for i in piece.inner] or [piece.name]]
    return [label.ref for name in names for label in lot.labels[name]]


def sizes(lot: Lot) -> list[tuple[float, float]]:
    """Length and width of all pieces, of those that others are cut from of these."""
    return [
        (each.length, each.width)
        for piece in lot.pieces
        for each in piece.inner or (piece,) * piece.count
    ]


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_every_part_is_cut_once_and_nothing_else(path: Path) -> None:
    unit = set_out(read_spec(path))
    lots = lots_of([Job(unit)], rack_of(unit))
    assert sorted(ref for lot in lots for ref in refs(lot)) == sorted(p.ref for p in unit.parts)
    for lot in lots:
        inner = {each.name for piece in lot.pieces for each in piece.inner}
        assert {piece.name for piece in lot.pieces} | inner == set(lot.labels)
        for piece in lot.pieces:
            assert len(lot.labels[piece.name]) == piece.count
            assert lot.labels[piece.name][0].ref == piece.name
        stocks = {unit.part(ref).blank.stock for ref in refs(lot)}
        assert {(s.material, s.thickness, s.kind) for s in stocks} == {
            (lot.material, lot.thickness, lot.kind)
        }


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_pieces_take_what_the_stock_list_says(path: Path) -> None:
    """Sheets in area and boards in length: to the last, of sizes as the parts list says them, and
    to half a step of those of each as they are worked out."""
    unit = set_out(read_spec(path))
    lots = {lot.name: lot for lot in lots_of([Job(unit)], rack_of(unit))}
    half = {"mm": 0.05, "in": 25.4 / 128}[unit.display_unit] + 1e-6
    for total in stock_totals(unit):
        pieces = sizes(lots[total.stock.name])
        rough = [each.rough_size for each in unit.parts if each.blank.stock == total.stock]
        read = [[as_read(side, unit) for side in size] for size in rough]
        length = sum(long for long, _ in pieces)
        assert length == pytest.approx(sum(size[0] for size in read), rel=1e-12)
        assert length / 1e3 == pytest.approx(total.metres, abs=half * len(rough) / 1e3)
        if total.stock.kind == "sheet":
            area = sum(long * wide for long, wide in pieces)
            assert area == pytest.approx(sum(size[0] * size[1] for size in read), rel=1e-12)
            off = sum(half * (size[0] + size[1] + half) for size in rough)
            assert area / 1e6 == pytest.approx(total.area, abs=off / 1e6)


def as_read(length: float, unit: Unit) -> float:
    """A length as whoever reads it in the parts list sets it."""
    shown = unit.display_unit
    return parse_length(f"{format_length(length, shown)} {shown}", shown)


def test_the_reading_alcove_by_hand() -> None:
    """Its parts list: shelves of two layers 739 x 288 with 6 to trim both ways; mitred stiles and
    rails 45 wide with 4 to trim; lippings 18 thick, of which those that are 18 (and 2 to trim)
    wide come off the edge of the 22 mm board."""
    lots = lots_of([Job(unit_of("reading-alcove"))])
    assert [(lot.name, lot.kind, lot.thickness) for lot in lots] == [
        ("case", "sheet", 18.0),
        ("back", "sheet", 6.0),
        ("ash", "board", 22.0),
    ]
    assert [
        [(each.name, each.count, each.length, each.width, each.turning) for each in lot.pieces]
        for lot in lots
    ] == [
        [
            ("SD1", 2, 2020.0, 294.0, False),
            ("BT1", 2, 1177.0, 294.0, False),
            ("DV1", 1, 1996.0, 288.0, False),
            ("SH1a", 8, 745.0, 294.0, False),
            ("SH5", 1, 432.0, 288.0, False),
            ("SH6", 2, 418.0, 286.0, False),
        ],
        [("BK1", 1, 2000.0, 1181.0, False)],
        [
            ("ST1", 2, 2024.0, 45.0, False),
            ("RL1", 2, 1205.0, 45.0, False),
            ("LP1", 1, 1936.0, 18.0, False),
            ("LP2", 4, 706.0, 38.0, False),
            ("LP6", 1, 399.0, 18.0, False),
            ("LP7", 2, 397.0, 18.0, False),
        ],
    ]
    ash = lots[2]
    assert [each.slants for each in ash.pieces[:2]] == [(45.0, 45.0), (45.0, 45.0)]
    assert ash.labels["ST1"][1].notes == (
        "mitre 45° at both ends: 2024 mm over the long points, 1934 over the short",
        "cut 2 over at both ends",
        "trim it to 2020 long when it is fitted",
        "the better side is the front face",
    )
    layer = lots[0].labels["SH1a"][1]
    assert (layer.ref, layer.job, layer.part) == ("SH1b", "Reading alcove", "Upper shelf layer")
    assert layer.finished == (739.0, 288.0, 18.0)
    assert layer.notes[:3] == (
        "a layer: glue up with SH1a",
        "cut 3 over at both ends and both edges",
        "glue the layers up first, then trim them together to 739 x 288",
    )


def test_two_jobs_share_what_is_the_same_wood_by_another_name() -> None:
    alcove, niche = unit_of("reading-alcove"), unit_of("market-shelves")
    lots = lots_of([Job(alcove, "A"), Job(niche, "B")])
    assert [(lot.name, lot.material, lot.thickness) for lot in lots] == [
        ("case", "birch plywood", 18.0),
        ("back", "birch plywood", 6.0),
        ("ash", "european ash", 22.0),
    ]
    every = [ref for lot in lots for ref in refs(lot)]
    assert sorted(every) == sorted(
        [f"A {part.ref}" for part in alcove.parts] + [f"B {part.ref}" for part in niche.parts]
    )
    assert {label.job for label in lots[0].labels["B SD1"]} == {"Market shelves"}


def test_two_jobs_need_marks() -> None:
    unit = unit_of("niche-shelf")
    with pytest.raises(ValueError, match="same mark"):
        lots_of([Job(unit), Job(unit)])


def test_what_goes_on_no_sheet_is_named_with_what_helps() -> None:
    niche, alcove = unit_of("niche-shelf"), unit_of("reading-alcove")
    half = replace(alcove.part("SD1").blank.stock, size=(1220.0, 1220.0))
    halves = with_stock(alcove, "case", half)
    with pytest.raises(DemandError) as caught:
        lots_of([Job(niche), Job(halves, "A")])
    said = {
        (each.job, each.refs): (each.problem.where, each.message, each.remedy)
        for each in caught.value.refusals
    }
    assert said == {
        (1, ("SD1", "SD2")): (
            ("stock", "case"),
            "Left side (SD1, SD2) needs 2020 x 294 mm, its length along the grain; the largest "
            "sheet of `case` has 1220 x 1220 mm",
            "It takes a sheet of at least 2020 x 294 mm once trimmed, or make it in two.",
        ),
        (1, ("DV1",)): (
            ("stock", "case"),
            "Divider (DV1) needs 1996 x 288 mm, its length along the grain; the largest sheet of "
            "`case` has 1220 x 1220 mm",
            "It takes a sheet of at least 1996 x 288 mm once trimmed, or make it in two.",
        ),
    }
