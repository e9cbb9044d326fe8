"""Plans for a router: held to the checker, to published values and to trying everything."""

from __future__ import annotations

from dataclasses import replace
from functools import cache
from itertools import product
from random import Random
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from benchmarks.cutting.instances import Instance, read
from kit.cutting_checker import check_sheets
from rodwright.cutting import CannotCutError, Flaw, Piece, Plan, Supply, Trim
from rodwright.cutting.free.packing import pack
from rodwright.cutting.free.planning import plan_free
from rodwright.cutting.progress import Patience
from rodwright.cutting.sheet_problem import Rules
from rodwright.cutting.sheet_question import problem_of

PINWHEEL = [Piece("long", 60, 40, 2, turning=False), Piece("tall", 40, 60, 2, turning=False)]


def plan(
    pieces: list[Piece],
    stock: list[Supply],
    *,
    kerf: float = 0.0,
    turning: bool = False,
    seed: int = 0,
    patience: Patience | None = None,
) -> Plan:
    """A plan for a router that passed the checker."""
    problem = problem_of(pieces, stock, Rules(guillotine=False), kerf=kerf, turning=turning)
    made = plan_free(problem, pieces, stock, seed=seed, patience=patience)
    check_sheets(made, pieces, stock, kerf=kerf, turning=turning, guillotine=False)
    return made


def test_a_pinwheel_goes_on_one_sheet() -> None:
    made = plan(PINWHEEL, [Supply("s", 100, 100)])
    assert (made.cost, made.proven) == (1, True)


@pytest.mark.parametrize(("length", "cost"), [(203, 1), (202, 2)])
def test_the_tool_needs_its_room_between_pieces(length: float, cost: float) -> None:
    """Two of 100 in a row, 3 mm apart, and nothing beside the last."""
    made = plan([Piece("a", 100, 50, 2)], [Supply("s", length, 50)], kerf=3)
    assert (made.cost, made.proven) == (cost, True)


def test_pieces_lie_round_a_flaw() -> None:
    """A knot in the middle of the pinwheel is in none of its four pieces."""
    pieces = [replace(piece, length=piece.length - 1, width=piece.width - 1) for piece in PINWHEEL]
    made = plan(pieces, [Supply("s", 100, 100, flaws=(Flaw(41, 41, 18, 18),))], kerf=1)
    assert made.cost == 1
    made = plan(pieces, [Supply("s", 100, 100, flaws=(Flaw(0, 0, 18, 18),))], kerf=1)
    assert made.cost == 2


def test_what_is_there_for_nothing_is_used_first() -> None:
    pieces = [Piece("a", 50, 50, 5)]
    made = plan(pieces, [Supply("new", 100, 100, price=9), Supply("rest", 60, 60, 1, price=0)])
    assert (made.cost, made.used) == (9, {"rest": 1, "new": 1})
    assert made.proven


def test_the_cheaper_of_several_sizes() -> None:
    """Six of 50 x 50 come from one large sheet; a small one holds four."""
    pieces = [Piece("a", 50, 50, 6)]
    made = plan(pieces, [Supply("small", 100, 100, price=10), Supply("large", 150, 100, price=14)])
    assert (made.cost, made.used, made.proven) == (14, {"large": 1}, True)
    made = plan(pieces, [Supply("small", 100, 100, price=10), Supply("large", 150, 100, price=21)])
    assert (made.cost, made.used, made.proven) == (20, {"small": 2}, True)


def test_the_largest_offcut_is_left() -> None:
    """Four squares on a sheet that holds eight: half of it stays whole."""
    made = plan([Piece("a", 49, 49, 4)], [Supply("s", 199, 99)], kerf=1)
    assert made.layouts[0].offcuts[0].area == 99 * 99


def test_too_little_stock() -> None:
    with pytest.raises(CannotCutError, match="not enough: a"):
        plan([Piece("a", 60, 60, 3)], [Supply("s", 100, 100, count=2)])
    with pytest.raises(CannotCutError, match="not enough: long, tall"):
        flawed = Supply("s", 100, 100, count=1, flaws=(Flaw(10, 10, 5, 5),))
        plan(PINWHEEL, [flawed])


def test_nothing_to_cut() -> None:
    made = plan([Piece("a", 10, 10, 0)], [Supply("s", 100, 100)])
    assert (made.layouts, made.cost, made.proven) == ((), 0, True)


def published(of: str, name: str) -> Instance:
    return next(each for each in read(of) if each.name == name)


@pytest.mark.parametrize(
    ("of", "name"),
    [
        ("2d_bp_berkey_martello", "Class_01_20_1_O"),
        ("2d_bp_berkey_martello", "Class_03_20_2_R"),
        ("2d_bp_berkey_martello", "Class_07_20_10_O"),
        ("2d_bp_other", "BENG1_R"),
        ("kerf_twins", "Class_01_20_1_O_kerf4"),
    ],
)
def test_published_instances(of: str, name: str) -> None:
    """Sources: tests/benchmarks/cutting/data/README.md."""
    instance = published(of, name)
    made = plan(list(instance.pieces), list(instance.stock), **instance.rules)
    assert made.cost <= instance.published.get("published_non_guillotine", instance.best)


def test_the_same_seed_gives_the_same_plan() -> None:
    instance = published("2d_bp_berkey_martello", "Class_05_20_7_O")
    plans = [plan(list(instance.pieces), list(instance.stock), seed=5) for _ in range(2)]
    assert plans[0] == plans[1]


def test_ctrl_c_ends_it_with_the_best_so_far() -> None:
    instance = published("2d_bp_berkey_martello", "Class_05_20_7_O")
    told = []

    def interrupt(cost: float, bound: float) -> None:
        told.append((cost, bound))
        raise KeyboardInterrupt

    made = plan(list(instance.pieces), list(instance.stock), patience=Patience(told=interrupt))
    assert made.stopped
    assert told == [(made.cost, made.bound)]
    assert not made.left


sizes = st.integers(5, 60)
turning = st.none() | st.booleans()


@st.composite
def questions(draw: st.DrawFn) -> tuple[list[Piece], list[Supply], dict[str, Any]]:
    pieces = [
        Piece(
            f"p{n}",
            draw(sizes),
            draw(sizes),
            draw(st.integers(1, 3)),
            draw(st.none() | st.booleans()),
        )
        for n in range(draw(st.integers(1, 5)))
    ]
    trim = Trim(*draw(st.tuples(*[st.integers(0, 3)] * 4)))
    flaws = draw(
        st.lists(st.builds(Flaw, sizes, sizes, st.integers(1, 20), st.integers(1, 20)), max_size=2)
    )
    stock = [Supply("whole", 100.5, 80, price=draw(st.integers(1, 5)), trim=trim)]
    stock += [
        Supply(f"s{n}", draw(sizes) + 40, draw(sizes), draw(st.integers(1, 2)), flaws=tuple(flaws))
        for n in range(draw(st.integers(0, 2)))
    ]
    return (
        pieces,
        stock,
        {"kerf": draw(st.sampled_from([0, 1, 3.175])), "turning": draw(st.booleans())},
    )


@settings(max_examples=25)
@given(questions())
def test_every_plan_passes_the_checker(
    question: tuple[list[Piece], list[Supply], dict[str, Any]],
) -> None:
    pieces, stock, rules = question
    try:
        made = plan(pieces, stock, **rules)
    except CannotCutError as error:
        assert error.reason in {"grain", "too large"}
        return
    assert not made.left


def goes_on(pieces: list[tuple[int, int]], length: int, width: int) -> bool:
    """Whether pieces go on a sheet, by trying every whole position of each."""

    @cache
    def rest(number: int, taken: frozenset[tuple[int, int]]) -> bool:
        if number == len(pieces):
            return True
        long, wide = pieces[number]
        for x, y in product(range(length - long + 1), range(width - wide + 1)):
            here = frozenset(product(range(x, x + long), range(y, y + wide)))
            if not here & taken and rest(number + 1, taken | here):
                return True
        return False

    return rest(0, frozenset())


def test_the_solver_says_what_trying_everything_says() -> None:
    random = Random(1)
    seen = {True: 0, False: 0}
    for _ in range(120):
        length, width = random.randint(3, 5), random.randint(3, 5)
        pieces: list[tuple[int, int]] = []
        while sum(x * y for x, y in pieces) < length * width - 2:
            pieces.append((random.randint(1, length), random.randint(1, width)))
        if sum(x * y for x, y in pieces) > length * width:
            continue
        wanted = [Piece(f"p{n}", *size) for n, size in enumerate(pieces)]
        problem = problem_of(wanted, [Supply("s", length, width)], Rules(guillotine=False))
        counts = [size.count for size in problem.sizes]
        packed = pack(problem, [0], counts, 5.0, Patience())
        possible = goes_on(pieces, length, width)
        assert isinstance(packed, list) if possible else packed == "impossible"
        seen[possible] += 1
    assert min(seen.values()) > 10, seen
