"""Steps of sheets and boards cut up at random, replayed: exactly the pieces and the offcuts."""

from __future__ import annotations

import re
from dataclasses import replace
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from kit.cut_sheets import sheets
from kit.cutting_checker import check_boards, check_sheets
from kit.cutting_replay import check_steps, offcuts
from rodwright.cutting import Layout, Offcut, Piece, Placed, Plan, Supply, Trim
from rodwright.cutting.offcuts import Least, kept_offcuts
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import (
    LotSteps,
    arranged,
    lot_steps,
    rip_settings,
    stop_settings,
    that_come_off,
)
from rodwright.cutting.steps.words import step_words
from rodwright.cutting.work import Lot, LotPlan


@settings(max_examples=60)
@given(sheets())
def test_any_sheets(case: tuple[LotPlan, Saw]) -> None:
    planned, saw = case
    check_steps(lot_steps(planned, saw))
    best = arranged(planned)
    check_sheets(
        best.plan, planned.lot.pieces, planned.lot.supplies, kerf=planned.plan.kerf, turning=True
    )
    kept = kept_offcuts([best], "ab" * 32, Least(200, 80))
    steps = lot_steps(best, saw, kept)
    _say_lengths(steps)
    shops = check_steps(steps)
    for shop, sheet in zip(shops, steps.sheets, strict=True):
        wanted = [each.offcut for each in kept if each.layout + 1 == sheet.numbers[0]]
        _same(offcuts(shop), wanted)
    names = [name for sheet in steps.sheets for _, those in sheet.kept for name in those]
    assert sorted(names) == sorted(each.name for each in kept)
    for listed, along in ((rip_settings(steps), True), (stop_settings(steps), False)):
        places = [place for each in listed for place in each.steps]
        assert len(places) == sum(
            step.along is along for sheet in steps.sheets for step in sheet.steps
        )


@settings(max_examples=40)
@given(st.integers(0, 10**9), st.sampled_from(["board", "length"]))
def test_any_boards(seed: int, kind: str) -> None:
    random = Random(seed)
    kerf = random.choice([0.0, 3.2])
    trim = Trim(
        random.choice([0.0, 3.0, 15.0]),
        random.choice([0.0, 3.0, 15.0]),
        *((random.choice([0.0, 3.0, 4.0]) for _ in range(2)) if kind == "board" else ()),
    )
    widths = [40.0, 60.0] if kind == "board" else [0.0]
    supply = Supply(
        "ash", 2400, random.choice([114, 130, 170]) if kind == "board" else 0, trim=trim
    )
    pieces: dict[tuple[float, ...], Piece] = {}
    placed, y = [], trim.face
    for width in widths:
        end, slanted = trim.near, False
        for _ in range(random.randint(1, 6)):
            slants = (random.choice([0.0, 0.0, 40.0]), random.choice([0.0, 40.0, 18.0]))
            length = float(random.randint(200, 500))
            if end + length > 2400 - trim.far:
                break
            key = (length, width, *slants)
            piece = pieces.get(key) or Piece(
                f"P{len(pieces)}",
                length,
                width,
                0,
                slants=slants,
                section=44.0 if not width else 0.0,
            )
            pieces[key] = replace(piece, count=piece.count + 1)
            flipped = bool(any(slants)) and random.random() < 0.5
            placed.append(Placed(piece.name, end, y, length, width, flipped=flipped))
            end += length + kerf
            slanted = slanted or any(slants)
        y += width + kerf
    layout = Layout("ash", tuple(placed))
    lot = Lot("lot", kind, "ash", 22, 700, tuple(pieces.values()), {}, (supply,), 44.0)  # type: ignore[arg-type]
    planned = arranged(LotPlan(lot, Plan((layout,), 1, 0, False, kerf)))
    check_boards(planned.plan, lot.pieces, lot.supplies, kerf=kerf)
    kept = kept_offcuts([planned], "ab" * 32, Least())
    steps = lot_steps(planned, Saw(random.choice(["table saw", "track saw"]), kerf), kept)
    _say_lengths(steps)
    (shop,) = check_steps(steps)
    if kind == "board":
        fallen = that_come_off(kept, [steps])
        _same(offcuts(shop), [each.offcut for each in fallen])
        if not any(any(piece.slants) for piece in lot.pieces):
            assert fallen == kept


def _say_lengths(steps: LotSteps) -> None:
    """That nothing is set to, or measured from, what isn't there."""
    for sheet in steps.sheets:
        for step in sheet.steps:
            words = step_words(steps, sheet, step, "mm")
            said = " ".join((words.cut, words.setting, words.against, *words.leaves))
            assert not re.search(r"(^| )(-|0 )", said), said


def _same(got: list[tuple[float, ...]], wanted: list[Offcut]) -> None:
    said = sorted((each.x, each.y, each.length, each.width) for each in wanted)
    assert len(got) == len(said)
    for one, other in zip(got, said, strict=True):
        assert all(abs(a - b) < 1e-3 for a, b in zip(one, other, strict=True)), (got, said)
