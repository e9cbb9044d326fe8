"""The checker finds every way in which a plan can be wrong."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from typing import Any

import pytest

from kit.cutting_checker import FirstCut, check_boards, check_sheets
from rodwright.cutting import Flaw, Inner, Layout, Offcut, Piece, Placed, Plan, Supply, Trim

SHEET = Supply("sheet", 1000, 600, count=2, price=40, trim=Trim(10, 10, 5, 5))
SHELF = Piece("shelf", 500, 200, count=3)
DOOR = Piece(
    "door", 300, 480, inner=(Inner("low", 0, 0, 140, 480), Inner("high", 144, 0, 156, 480))
)
LAYOUTS = (
    Layout(
        "sheet",
        (
            Placed("shelf", 10, 5, 500, 200),
            Placed("shelf", 10, 209, 500, 200),
            Placed("door", 514, 5, 300, 480),
        ),
        (Offcut(818, 5, 172, 590), Offcut(10, 413, 500, 182), Offcut(514, 489, 300, 106)),
    ),
    Layout("sheet", (Placed("shelf", 10, 5, 500, 200),)),
)
PLAN = Plan(LAYOUTS, cost=80, bound=80, proven=True, kerf=4)


def moved(layout: int, number: int, /, **changes: Any) -> Plan:
    """The plan with a piece that lies otherwise."""
    placed = list(PLAN.layouts[layout].placed)
    placed[number] = replace(placed[number], **changes)
    layouts = list(PLAN.layouts)
    layouts[layout] = replace(layouts[layout], placed=tuple(placed))
    return replace(PLAN, layouts=tuple(layouts))


def with_offcuts(*offcuts: Offcut) -> Plan:
    return replace(PLAN, layouts=(replace(LAYOUTS[0], offcuts=offcuts), LAYOUTS[1]))


def check(
    plan: Plan, *, pieces: tuple[Piece, ...] = (SHELF, DOOR), sheet: Supply = SHEET, **rules: Any
) -> None:
    check_sheets(plan, pieces, [sheet], **{"kerf": 4, **rules})


def test_a_sound_plan_passes() -> None:
    check(PLAN)


@pytest.mark.parametrize(
    ("plan", "wrong"),
    [
        (moved(0, 0, x=9.9), "shelf .* isn't inside"),
        (moved(0, 2, y=116), "door .* isn't inside"),
        (moved(0, 1, y=150), "shelf and shelf overlap"),
        (moved(0, 1, y=208), "shelf and shelf are 3.0 apart"),
        (moved(0, 2, x=513), "shelf and door are 3.0 apart"),
        (moved(0, 0, length=499), "lies 499 x 200, not 500 x 200"),
        (moved(1, 0, length=200, width=500, turned=True), "turned across its grain"),
        (moved(1, 0, length=200, width=500), "lies 200 x 500"),
        (moved(1, 0, flipped=True), "flipped for nothing"),
        (moved(1, 0, piece="drawer"), "drawer wasn't asked for"),
        (moved(1, 0, piece="door"), "shelf: 2 of 3"),
        (replace(PLAN, layouts=LAYOUTS[:1], cost=40, bound=40), "shelf: 2 of 3"),
        (replace(PLAN, layouts=(*LAYOUTS, Layout("sheet", ())), cost=120), "nothing is cut"),
        (replace(PLAN, layouts=(LAYOUTS[0], replace(LAYOUTS[1], stock="half"))), "no half"),
        (replace(PLAN, cost=79), "cost 79, but the stock costs 80"),
        (replace(PLAN, bound=81, proven=False), "bound 81 above the cost"),
        (replace(PLAN, bound=40), "proven at 80 with bound 40"),
        (replace(PLAN, kerf=3), "kerf is 3"),
        (replace(PLAN, left=(replace(SHELF, count=1),)), "shelf: 4 of 3"),
        (with_offcuts(Offcut(818, 5, 173, 590)), "offcut 1 .* isn't inside"),
        (with_offcuts(Offcut(700, 5, 200, 590)), "door and offcut 1 overlap"),
        (with_offcuts(Offcut(817, 5, 173, 590)), "door and offcut 1 are 3.0 apart"),
        (with_offcuts(Offcut(818, 5, 172, 590), Offcut(830, 9, 20, 20)), "offcuts? .* overlap"),
        (with_offcuts(Offcut(10, 413, 500, 182), Offcut(818, 5, 172, 590)), "isn't named first"),
    ],
)
def test_a_plan_that_is_wrong_is_refused(plan: Plan, wrong: str) -> None:
    with pytest.raises(AssertionError, match=wrong):
        check(plan)


def test_more_stock_than_there_is() -> None:
    with pytest.raises(AssertionError, match="2 sheet of 1"):
        check(PLAN, sheet=replace(SHEET, count=1))


def test_what_is_left_counts_and_is_never_proven() -> None:
    less = Plan(LAYOUTS[:1], 40, 80, proven=False, kerf=4, left=(replace(SHELF, count=1),))
    check(less, sheet=replace(SHEET, count=1))
    with pytest.raises(AssertionError, match="proven, though pieces are left"):
        check(replace(less, proven=True))


def test_a_flaw_in_a_piece() -> None:
    check(PLAN, sheet=replace(SHEET, flaws=(Flaw(510, 0, 4, 600),)))
    with pytest.raises(AssertionError, match=r"a flaw at .* is in shelf"):
        check(PLAN, sheet=replace(SHEET, flaws=(Flaw(509, 0, 4, 600),)))


def test_turned_where_it_may_be() -> None:
    turned = moved(1, 0, length=200, width=500, turned=True)
    check(turned, turning=True)
    check(turned, pieces=(replace(SHELF, turning=True), DOOR))
    with pytest.raises(AssertionError, match="turned across its grain"):
        check(turned, pieces=(replace(SHELF, turning=False), DOOR), turning=True)


@pytest.mark.parametrize(
    ("inner", "wrong"),
    [
        ((Inner("low", 200, 0, 140, 480),), "low .* isn't inside door"),
        ((Inner("low", 0, 0, 140, 480), Inner("high", 100, 0, 156, 480)), "low and high overlap"),
        ((Inner("low", 0, 0, 140, 480), Inner("high", 143, 0, 156, 480)), "3.0 apart"),
    ],
)
def test_what_is_cut_from_a_piece(inner: tuple[Inner, ...], wrong: str) -> None:
    with pytest.raises(AssertionError, match=wrong):
        check(PLAN, pieces=(SHELF, replace(DOOR, inner=inner)))


def plan_of(*boxes: tuple[float, float, float, float], kerf: float = 0.0) -> tuple[Any, ...]:
    """A plan of one sheet, 100 x 100, with pieces where these boxes (x, y, length, width) are."""
    pieces = [Piece(f"p{n}", each[2], each[3]) for n, each in enumerate(boxes)]
    placed = tuple(Placed(f"p{n}", *each) for n, each in enumerate(boxes))
    plan = Plan((Layout("s", placed),), 1, 1, proven=True, kerf=kerf)
    return plan, pieces, [Supply("s", 100, 100)]


PINWHEEL = (0, 0, 60, 40), (60, 0, 40, 60), (40, 60, 60, 40), (0, 40, 40, 60)
"""The least arrangement that edge-to-edge cuts don't part."""
TWO_STAGES = (0, 0, 30, 40), (30, 0, 70, 35), (0, 40, 80, 60)
"""Ripped to two strips, these cut to length, one piece trimmed."""
THREE_STAGES = (0, 0, 30, 40), (30, 0, 70, 20), (30, 20, 70, 20), (0, 40, 80, 60)
HEADED = (0, 0, 30, 100), (30, 0, 70, 35), (30, 35, 40, 65), (70, 35, 30, 65)
"""A strip across the sheet, and the rest in two stages."""


def test_a_pinwheel_is_for_a_router_alone() -> None:
    check_sheets(*plan_of(*PINWHEEL), guillotine=False)
    with pytest.raises(AssertionError, match="edge-to-edge cuts don't part"):
        check_sheets(*plan_of(*PINWHEEL))


def test_an_offcut_has_to_come_out_by_edge_to_edge_cuts() -> None:
    plan, pieces, stock = plan_of(*PINWHEEL[:3])
    check_sheets(plan, pieces, stock)
    layout = replace(plan.layouts[0], offcuts=(Offcut(*PINWHEEL[3]),))
    with pytest.raises(AssertionError, match="edge-to-edge cuts don't part"):
        check_sheets(replace(plan, layouts=(layout,)), pieces, stock)


def test_cuts_need_the_kerf_in_guillotine_plans() -> None:
    spread = (0, 0, 50, 50), (53, 0, 20, 20), (53, 23, 20, 20)
    check_sheets(*plan_of(*spread, kerf=3), kerf=3)
    with pytest.raises(AssertionError, match="apart"):
        check_sheets(*plan_of(*spread, kerf=4), kerf=4)


@pytest.mark.parametrize(
    ("boxes", "stages", "first", "head", "good"),
    [
        (TWO_STAGES, 2, "along", False, True),
        (TWO_STAGES, 2, "across", False, False),
        (TWO_STAGES, 2, None, False, True),
        (TWO_STAGES, 1, None, False, False),
        (THREE_STAGES, 2, "along", False, False),
        (THREE_STAGES, 3, "along", False, True),
        (HEADED, 2, "along", False, False),
        (HEADED, 2, "along", True, True),
        (HEADED, 1, "along", True, False),
        (HEADED, 3, "across", False, True),
        (HEADED, None, "across", False, True),
        (HEADED, None, "along", False, False),
        (TWO_STAGES, None, "along", False, True),
        (TWO_STAGES[:2], None, "along", False, True),
        (PINWHEEL, 9, None, True, False),
    ],
)
def test_stages_and_first_cuts(
    boxes: tuple[Any, ...],
    stages: int | None,
    first: FirstCut | None,
    head: bool,
    good: bool,
) -> None:
    plan, pieces, stock = plan_of(*boxes)

    def run() -> None:
        check_sheets(plan, pieces, stock, stages=stages, first_cut=first, head_cuts=head)

    if good:
        run()
    else:
        with pytest.raises(AssertionError, match=r"don't part|the first cut"):
            run()


SLANTS = {"mitred": (30.0, 30.0), "hooked": (0.0, 30.0)}


def boards(*placed: Placed, kerf: float = 3.0, width: float = 100) -> Callable[..., None]:
    pieces = {}
    for each in placed:
        slants = SLANTS.get(each.piece.split()[0], (0.0, 0.0))
        pieces[each.piece] = Piece(each.piece, each.length, each.width, slants=slants)
    plan = Plan((Layout("board", placed),), 1, 1, proven=True, kerf=kerf)
    stock = [Supply("board", 1000, width)]
    return lambda: check_boards(plan, list(pieces.values()), stock, kerf=kerf)


def test_boards_are_ripped_to_strips_over_their_length() -> None:
    boards(Placed("a", 0, 0, 400, 50), Placed("b", 403, 0, 400, 50), Placed("c", 0, 53, 9, 40))()
    boards(Placed("a", 0, 0, 400, 50), Placed("b", 403, 0, 400, 47))()
    boards(Placed("a", 0, 0, 400, 50), Placed("b", 403, 0, 400, 47), Placed("c", 0, 53, 600, 40))()
    boards(Placed("a", 0, 0, 400, 50), Placed("b", 403, 1, 400, 50))()
    with pytest.raises(AssertionError, match="aren't cut from one strip"):
        boards(
            Placed("a", 0, 0, 400, 50), Placed("b", 403, 1, 400, 50), Placed("c", 0, 54, 600, 40)
        )()


@pytest.mark.parametrize("width", [0, 100])
def test_lengths_are_a_kerf_apart(width: float) -> None:
    boards(Placed("a", 0, 0, 400, width), Placed("b", 403, 0, 597, width), width=width)()
    with pytest.raises(AssertionError, match=r"a and b are 2.0 apart"):
        boards(Placed("a", 0, 0, 400, width), Placed("b", 402, 0, 597, width), width=width)()
    with pytest.raises(AssertionError, match=r"b .* isn't inside"):
        boards(Placed("a", 0, 0, 400, width), Placed("b", 404, 0, 597, width), width=width)()


@pytest.mark.parametrize("width", [0, 100])
def test_slanted_ends_nest_head_to_tail(width: float) -> None:
    """Over 100 mm, ends that go back by 30 mm are 3 mm apart when 3.13 mm are between them along
    the board; without a width there is nothing but the length to go by."""
    one = Placed("mitred one", 0, 0, 400, width)
    near = 3.0 if not width else 3 * (100**2 + 30**2) ** 0.5 / 100
    boards(one, Placed("mitred", 370 + near, 0, 400, width, flipped=True), width=width)()
    with pytest.raises(AssertionError, match="apart, and a cut takes 3"):
        boards(one, Placed("mitred", 369.9 + near, 0, 400, width, flipped=True), width=width)()
    with pytest.raises(AssertionError, match="overlap"):
        boards(one, Placed("mitred", 370 + near, 0, 400, width), width=width)()


def test_a_flipped_piece_is_turned_by_half_a_turn() -> None:
    """Its far end comes to lie near."""
    one = Placed("hooked one", 0, 0, 400, 100)
    boards(one, Placed("hooked", 374, 0, 400, 100, flipped=True))()
    with pytest.raises(AssertionError, match="overlap"):
        boards(one, Placed("square", 374, 0, 400, 100))()
    with pytest.raises(AssertionError, match="overlap"):
        boards(Placed("square", 0, 0, 400, 100), Placed("hooked", 374, 0, 400, 100, flipped=True))()
