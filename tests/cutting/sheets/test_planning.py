"""Plans for sheets, held to the checker that knows nothing of how they are made."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.cutting_checker import check_sheets
from rodwright.cutting import CannotCutError, Flaw, Piece, Plan, Supply, Trim, plan_sheets
from rodwright.cutting.progress import Patience

SHEET = Supply("ply", 2440, 1220, price=74)


@pytest.fixture(autouse=True, scope="module")
def _little_effort() -> Iterator[None]:
    """These plans are simple: a long search would find nothing more."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr("rodwright.cutting.sheets.planning.EFFORT", 200_000)
        patch.setattr("rodwright.cutting.sheets.planning.PAIRS", 20_000)
        yield


def _planned(pieces: list[Piece], stock: list[Supply], **rules: Any) -> Plan:
    """A plan that was checked."""
    seed, patience = rules.pop("seed", 0), rules.pop("patience", None)
    plan = plan_sheets(pieces, stock, seed=seed, patience=patience, **rules)
    check_sheets(plan, pieces, stock, **rules)
    return plan


@st.composite
def _questions(draw: st.DrawFn) -> tuple[list[Piece], list[Supply], dict[str, Any]]:
    sides = st.integers(8, 60)
    pieces = [
        Piece(
            f"p{n}",
            draw(sides),
            draw(sides),
            draw(st.integers(1, 3)),
            turning=draw(st.sampled_from([None, True, False])),
        )
        for n in range(draw(st.integers(1, 6)))
    ]
    stock = [
        Supply("full", 120, 80, price=10),
        Supply(
            "half",
            draw(st.integers(60, 70)),
            80,
            draw(st.integers(0, 3)),
            price=6,
            trim=Trim(draw(st.integers(0, 3)), 1, 2, 0),
        ),
        Supply(
            "spoilt",
            120,
            80,
            1,
            price=3,
            flaws=(
                Flaw(draw(st.integers(0, 110)), draw(st.integers(0, 70)), 10, 4),
                Flaw(draw(st.integers(0, 110)), draw(st.integers(0, 70)), 2, 6),
            ),
        ),
    ]
    rules = {
        "kerf": draw(st.sampled_from([0.0, 0.5, 3.0])),
        "turning": draw(st.booleans()),
        "stages": draw(st.sampled_from([None, None, 2, 3])),
        "first_cut": draw(st.sampled_from([None, "along", "across"])),
        "head_cuts": draw(st.booleans()),
    }
    return pieces, stock, rules


@settings(max_examples=25)
@given(_questions())
def test_every_plan_keeps_what_was_asked(
    question: tuple[list[Piece], list[Supply], dict[str, Any]],
) -> None:
    pieces, stock, rules = question
    plan = _planned(pieces, stock, **rules)
    assert not plan.left


def test_what_fits_to_a_hair_fits_with_kerfs_between() -> None:
    pieces = [Piece("a", 811.2, 608.4, 6)]
    plan = _planned(pieces, [SHEET], kerf=3.2)
    assert (plan.cost, plan.proven, len(plan.layouts)) == (74, True, 1)
    wider = [Piece("a", 811.3, 608.4, 6)]
    assert len(_planned(wider, [SHEET], kerf=3.2).layouts) == 2


def test_pieces_are_turned_only_where_they_may_be() -> None:
    pieces = [Piece("a", 1220, 600, 4)]
    assert len(_planned(pieces, [SHEET], turning=True).layouts) == 1
    assert len(_planned(pieces, [SHEET]).layouts) == 1
    pieces = [Piece("a", 1220, 610, 2), Piece("b", 610, 1220, 2)]
    assert len(_planned(pieces, [SHEET]).layouts) == 1
    pieces = [Piece("a", 1300, 550, 2), Piece("b", 1100, 1130)]
    assert len(_planned(pieces, [SHEET]).layouts) == 1


def test_the_cheapest_mixture_of_sheets_is_taken() -> None:
    stock = [SHEET, Supply("half", 1220, 1220, price=40)]
    pieces = [Piece("a", 1200, 600, 6)]
    plan = _planned(pieces, stock, kerf=3)
    assert (plan.cost, plan.used) == (114, {"ply": 1, "half": 1})
    assert plan.proven


def test_what_is_at_hand_is_used_before_what_is_bought_the_smallest_first() -> None:
    stock = [
        SHEET,
        Supply("whole", 2440, 1220, 1, price=0),
        Supply("offcut", 900, 500, 1, price=0),
    ]
    plan = _planned([Piece("a", 800, 400)], stock)
    assert (plan.cost, plan.used) == (0, {"offcut": 1})
    plan = _planned([Piece("a", 800, 400, 8)], stock)
    assert (plan.cost, plan.used) == (0, {"whole": 1})


def test_no_piece_has_a_flaw() -> None:
    knotty = Supply("ply", 2440, 1220, price=74, flaws=(Flaw(1200, 590, 30, 30),))
    pieces = [Piece("a", 1190, 1200), Piece("b", 1200, 590), Piece("c", 1200, 590)]
    plan = _planned(pieces, [knotty], kerf=3)
    assert len(plan.layouts) == 1


def test_too_little_stock_is_told() -> None:
    with pytest.raises(CannotCutError) as told:
        _planned([Piece("a", 1200, 600, 9)], [Supply("ply", 2440, 1220, 2)])
    assert told.value.reason == "not enough"
    assert told.value.pieces == ("a",)


def test_pieces_that_no_cuts_from_edge_to_edge_part_are_proven_to_be_too_many() -> None:
    windmill = [Piece("a", 60, 40, 2), Piece("b", 40, 60, 2), Piece("c", 20, 20)]
    with pytest.raises(CannotCutError, match="not enough"):
        _planned(windmill, [Supply("ply", 100, 100, 1)])


def test_stages_that_part_too_few_are_proven_to_be_too_few() -> None:
    pieces = [Piece("a", 50, 50, 4)]
    stock = [Supply("ply", 100, 100, 1)]
    assert not _planned(pieces, stock, stages=2).left
    with pytest.raises(CannotCutError, match="not enough"):
        _planned(pieces, stock, stages=1)


@pytest.mark.parametrize("guillotine", [True, False])
def test_fewest_of_what_costs_as_little(guillotine: bool) -> None:
    """Five squares of 600 take two sheets of 1200 (by hand), since one has the area of four."""
    free = [Supply("free", 1200, 1200, 4, price=0)]
    plan = plan_sheets([Piece("P", 600, 600, 5)], free, guillotine=guillotine)
    assert (plan.cost, len(plan.layouts), plan.proven, plan.fewest) == (0, 2, True, True)


def test_what_finds_no_place_is_left_and_nothing_is_called_proven() -> None:
    split = Supply("ply", 100, 100, 1, flaws=(Flaw(49, 0, 2, 100),))
    plan = _planned([Piece("a", 20, 100, 5)], [split])
    assert [(piece.name, piece.count) for piece in plan.left] == [("a", 1)]
    assert not plan.proven


def test_nothing_is_cut_of_nothing() -> None:
    plan = plan_sheets([], [SHEET])
    assert (plan.layouts, plan.cost, plan.proven) == ((), 0, True)


def test_the_same_question_has_the_same_answer() -> None:
    pieces = [Piece(f"p{n}", 200 + 37 * n, 640 - 23 * n, 2) for n in range(8)]
    plans = [_planned(pieces, [SHEET], kerf=3.2, turning=True, seed=5) for _ in range(2)]
    assert plans[0] == plans[1]


def test_it_stops_when_the_maker_does() -> None:
    pieces = [Piece(f"p{n}", 300 + 31 * n, 610 - 17 * n, 3) for n in range(20)]
    told: list[tuple[float, float]] = []

    def interrupt(cost: float, bound: float) -> None:
        told.append((cost, bound))
        raise KeyboardInterrupt

    plan = _planned(pieces, [SHEET], kerf=3.2, patience=Patience(told=interrupt))
    assert plan.stopped
    assert not plan.left
    assert len(told) == 1
    assert plan.cost == told[0][0]


def test_it_stops_when_its_time_is_over() -> None:
    pieces = [Piece(f"p{n}", 300 + 31 * n, 610 - 17 * n, 30) for n in range(20)]
    plan = _planned(pieces, [SHEET], kerf=3.2, patience=Patience(seconds=0))
    assert plan.stopped
    assert not plan.left


def test_the_largest_offcut_is_left() -> None:
    (layout,) = _planned([Piece("a", 400, 300, 6)], [SHEET]).layouts
    assert (layout.offcuts[0].length, layout.offcuts[0].width) == (2440, 920)


def test_what_goes_elsewhere_is_no_longer_on_the_sheet_that_leaves_the_offcut() -> None:
    pieces = [Piece("large", 1400, 1000, 2), Piece("small", 900, 300, 4), Piece("strip", 2400, 200)]
    first, second = _planned(pieces, [SHEET]).layouts
    assert max(each.offcuts[0].area for each in (first, second)) == 1040 * 920


def test_stock_that_costs_nothing_is_counted_too() -> None:
    stock = [Supply("offcut", 1000, 500, price=0), Supply("large", 1000, 1000, 1, price=0)]
    plan = _planned([Piece("a", 480, 480, 4)], stock)
    assert (plan.cost, plan.bound, plan.used, plan.proven) == (0, 0, {"large": 1}, True)
    assert plan.fewest
    plan = _planned([Piece("a", 480, 480, 4), Piece("b", 700, 400)], stock)
    assert (plan.cost, len(plan.layouts), plan.proven) == (0, 2, True)
