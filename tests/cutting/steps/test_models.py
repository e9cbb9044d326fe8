"""The ready models and some published instances, planned, cut and replayed."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from kit.cutting_replay import check_steps, offcuts
from rodwright.cutting import Piece, Supply, plan_boards, plan_sheets
from rodwright.cutting.demand import Job, lots_of
from rodwright.cutting.offcuts import Least, kept_offcuts
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import arranged, lot_steps
from rodwright.cutting.work import Lot, LotPlan
from rodwright.setout import set_out
from rodwright.wishes.reading.files import read_spec

MODELS = sorted((Path(__file__).parents[3] / "models").glob("*.yaml"))
BINS = Path(__file__).parents[1] / "data" / "sheet_bins.json"
SAW = Saw(rip=650, crosscut=1300, lift=20)


def hold(planned: LotPlan) -> None:
    planned = arranged(planned)
    kept = kept_offcuts([planned], "ab" * 32, Least())
    steps = lot_steps(planned, SAW, kept)
    shops = check_steps(steps, [piece.name for piece in planned.plan.left])
    found = sum(len(offcuts(shop)) * len(shop.sheet.numbers) for shop in shops)
    assert found == len(kept)


@pytest.mark.parametrize("path", MODELS, ids=lambda path: path.stem)
def test_models(path: Path) -> None:
    for lot in lots_of([Job(set_out(read_spec(path)))], kerf=3.2):
        plan = plan_sheets if lot.kind == "sheet" else plan_boards
        hold(LotPlan(lot, plan(lot.pieces, lot.supplies, kerf=3.2)))


@pytest.mark.parametrize("number", [0, 2])
def test_published_bins(number: int) -> None:
    """The same instances that the planning of sheets is held to (their sources are beside them)."""
    given = json.loads(BINS.read_text())[number]
    (sheet,) = given["stock"]
    pieces = tuple(
        Piece(f"p{at}", each["length"], each["width"], each["count"], given["rotation"])
        for at, each in enumerate(given["items"])
    )
    supply = Supply("sheet", sheet["length"], sheet["width"])
    plan = plan_sheets(pieces, (supply,), turning=given["rotation"])
    assert len(plan.layouts) >= given["lower_bound"]
    hold(LotPlan(Lot("bins", "sheet", "board", 1.0, 700, pieces, {}, (supply,)), plan))


def test_gilmore_and_gomorys_rolls() -> None:
    """P. C. Gilmore, R. E. Gomory, Operations Research 9, 1961, as later textbooks use it: 453
    rolls, of few kinds."""
    asked = ((45, 97), (36, 610), (31, 395), (14, 211))
    pieces = tuple(Piece(f"p{length}", length, count=count) for length, count in asked)
    supply = Supply("roll", 100)
    plan = plan_boards(pieces, (supply,))
    planned = arranged(
        LotPlan(Lot("rolls", "length", "paper", 1.0, 700, pieces, {}, (supply,), 1.0), plan)
    )
    steps = lot_steps(planned, Saw(kerf=0.0))
    check_steps(steps)
    assert sum(len(sheet.numbers) for sheet in steps.sheets) == 453
    assert len(steps.sheets) <= 10


@pytest.mark.parametrize("kerf", [0.0, 3.2])
def test_mitred_frames_from_boards_and_bought_lengths(kerf: float) -> None:
    """Members of three frames, their mitres head to tail."""
    for width, section in ((60.0, 0.0), (0.0, 60.0)):
        pieces = tuple(
            Piece(name, length, width, 6, slants=(60.0, 60.0), section=section)
            for name, length in (("stile", 780.0), ("rail", 420.0))
        )
        supply = Supply("oak", 2400, 150 if width else 0.0)
        plan = plan_boards(pieces, (supply,), kerf=kerf)
        kind = "board" if width else "length"
        lot = Lot("frames", kind, "oak", 22, 700, pieces, {}, (supply,), section)  # type: ignore[arg-type]
        steps = lot_steps(arranged(LotPlan(lot, plan)), Saw(kerf=kerf))
        check_steps(steps)
        assert any(step.nested for sheet in steps.sheets for step in sheet.steps)
