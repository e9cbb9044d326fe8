"""Offcuts that hold flaws of their sheet or board: cut from, taken, and cut from again."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from random import Random

import pytest

from kit.cutting_checker import check_boards, check_sheets
from rodwright.cutting.offcuts import Kept, Least, kept_offcuts, plan_identity
from rodwright.cutting.offers import offcut_of, supplies_of, uses_of
from rodwright.cutting.pieces import Piece
from rodwright.cutting.planning import plan_of
from rodwright.cutting.plans import CannotCutError, Layout, Plan
from rodwright.cutting.pricing import offer_of
from rodwright.cutting.progress import Patience
from rodwright.cutting.rack import Rack
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import arranged
from rodwright.cutting.supplies import Flaw, Supply
from rodwright.cutting.taking import Taking, taking_record
from rodwright.cutting.whole import Rules
from rodwright.cutting.work import Lot, LotPlan
from rodwright.jobs.rack import read_rack, take_from_rack
from rodwright.unit import Grain
from rodwright.unit.stock import Stock

KERF = 3.0
LEAST = Least(length=120, width=60, board_length=120, board_width=30)
ENTRIES = {
    "sheet": "kind: sheet, material: birch plywood, thickness: 18, size: [1000, 600], trim: 4",
    "crosswise": "kind: sheet, material: birch plywood, thickness: 18, size: [600, 1000], "
    "grain: crosswise, trim: {near: 6, face: 2}",
    "board": "kind: board, material: ash, thickness: 22, length: 1500, width: 160, bad_ends: 15",
    "sawn": "kind: board, material: ash, sawn_thickness: 27, thickness: 22, length: 1500, "
    "width: 160, bad_ends: 15",
    "length": "kind: length, material: scots pine, thickness: 20, section: 44, length: 1800",
}


def _stock(kind: str) -> Stock:
    if kind in ("sheet", "crosswise"):
        return Stock("ply", "sheet", "birch plywood", 18.0, Grain.LENGTHWISE, 680.0, "", "#dcc59b")
    if kind == "length":
        return Stock(
            "pine",
            "board",
            "scots pine",
            20.0,
            Grain.LENGTHWISE,
            500.0,
            "",
            "#dcc59b",
            section=44.0,
        )
    return Stock("ash", "board", "ash", 22.0, Grain.LENGTHWISE, 680.0, "", "#dcc59b")


def _flaws(kind: str, rng: Random) -> str:
    """Some flaws in the rack's own keys; ``length`` and ``width`` are in the entry's own frame."""
    long, wide = {"sheet": (1000, 600), "crosswise": (600, 1000), "length": (1800, 0)}.get(
        kind, (1500, 160)
    )
    found = []
    for number in range(rng.randint(2, 4)):
        keys = f"x: {rng.randint(0, long - 60)}.37, length: {rng.randint(8, 50)}.5"
        if wide and rng.random() < 0.7:
            keys += f", y: {rng.randint(0, wide - 40)}, width: {rng.randint(6, 39)}"
        found.append(f"{{{keys}, why: knot {number}}}")
    return ", ".join(found)


def _pieces(kind: str, rng: Random, most: int) -> tuple[Piece, ...]:
    return tuple(
        Piece(
            f"P{number}",
            rng.randint(90, 320),
            0.0 if kind == "length" else rng.randint(40, 120),
            rng.randint(1, most),
        )
        for number in range(1, 3)
    )


def _planned(kind: str, rack: Rack, pieces: tuple[Piece, ...]) -> LotPlan | None:
    """The plan of some pieces from the rack alone, laid out for the saw; None if there is none."""
    stock = _stock(kind)
    offers = tuple(each for each in supplies_of([stock], rack) if each.at_hand)
    lot = Lot(
        "lot",
        "sheet" if kind == "crosswise" else "board" if kind == "sawn" else kind,  # type: ignore[arg-type]
        stock.material,
        stock.thickness,
        stock.density,
        pieces,
        {},
        tuple(each.supply for each in offers),
        stock.section or 0.0,
        offers,
    )
    try:
        plan = plan_of(lot, Rules(Saw(kerf=KERF)), LEAST, 0, Patience())
    except CannotCutError:
        return None
    return None if plan.left else arranged(LotPlan(lot, plan))


def _check(planned: LotPlan, stock: tuple[Supply, ...] = ()) -> None:
    check = check_sheets if planned.lot.kind == "sheet" else check_boards
    check(planned.plan, planned.lot.pieces, stock or planned.lot.supplies, kerf=KERF)


def _taken(folder: Path, rack: Rack, planned: LotPlan) -> tuple[Kept, ...]:
    """Takes a plan out of its rack file."""
    kept = kept_offcuts([planned], plan_identity([planned], rack.text), LEAST)
    comes = []
    for each in kept:
        name = planned.plan.layouts[each.layout].stock
        size = each.offcut.length, each.offcut.width
        comes.append(offcut_of(offer_of(planned.lot, name), each.name, *size, name, each.flaws))
    uses = uses_of(rack, planned.lot.offers, planned.plan.used)
    taking = Taking(rack.file, plan_identity([planned], rack.text), uses, tuple(comes))
    (folder / "cut.json").write_text(json.dumps({"rack": taking_record(taking)}))
    take_from_rack(folder / "cut.json")
    return kept


def _where_it_was(plan: LotPlan, layout: Layout, kept: Kept, supply: Supply) -> LotPlan:
    """What an offcut is cut into, as it would lie on the sheet that the offcut was cut from."""
    at = kept.offcut
    moved = tuple(replace(each, x=each.x + at.x, y=each.y + at.y) for each in layout.placed)
    counts = {each.name: 0 for each in plan.lot.pieces}
    for each in moved:
        counts[each.piece] += 1
    pieces = tuple(
        replace(each, count=counts[each.name]) for each in plan.lot.pieces if counts[each.name]
    )
    whole = Layout(supply.name, moved)
    return LotPlan(
        replace(plan.lot, pieces=pieces, supplies=(supply,)),
        Plan((whole,), supply.price, supply.price, proven=True, kerf=KERF),
    )


def _twice(kind: str, seed: int, folder: Path) -> Iterator[tuple[Flaw, ...]]:
    """A rack's piece is cut and taken, and what is left of it cut again; the flaws of each offcut
    that is."""
    rng = Random(seed)
    file = folder / "rack.yaml"
    file.write_text(
        f"stock:\n  first: {{{ENTRIES[kind]}, count: 1, flaws: [{_flaws(kind, rng)}]}}\n"
    )
    rack = read_rack(file)
    first = _planned(kind, rack, _pieces(kind, rng, 1))
    if first is None:
        return
    _check(first)
    (supply,) = first.lot.supplies
    kept = {each.name: each for each in _taken(folder, rack, first)}
    rack = read_rack(file)
    assert {each.name for each in rack.entries} == set(kept)
    if not kept:
        return
    pieces = (Piece("A", 60.0, 0.0 if kind == "length" else 32.0, rng.randint(3, 8)),)
    second = _planned(kind, rack, pieces)
    if second is None:
        return
    _check(second)
    for layout in second.plan.layouts:
        offcut = kept[layout.stock]
        _check(_where_it_was(second, layout, offcut, supply))
        yield offcut.flaws


SEEDS = {kind: (2, 3, 5, 8) if kind in ("sheet", "crosswise") else range(12) for kind in ENTRIES}
"""Of sheets those whose search is short."""


@pytest.mark.parametrize("kind", ENTRIES)
def test_nothing_is_ever_cut_from_a_flaw_of_what_an_offcut_is_of(kind: str, tmp_path: Path) -> None:
    flawed = [flaws for seed in SEEDS[kind] for flaws in _twice(kind, seed, tmp_path) if flaws]
    assert flawed, "some of these are cut from offcuts with flaws"
    assert all(each.why.startswith("knot ") for flaws in flawed for each in flaws)
