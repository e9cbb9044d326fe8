"""What of a flaw is in a part of a sheet, and what is clear of flaws, held to shapely."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from shapely import Polygon, box, unary_union

from rodwright.cutting.flaws import clear_of, flaws_said, flaws_within
from rodwright.cutting.supplies import Flaw


def _area(flaw: Flaw) -> Polygon:
    return box(flaw.x, flaw.y, flaw.x + flaw.length, flaw.y + flaw.width)


SPOTS = st.builds(
    Flaw, st.integers(0, 20), st.integers(0, 12), st.integers(1, 9), st.integers(1, 9)
)


@given(
    st.lists(SPOTS, max_size=5),
    st.integers(0, 15),
    st.integers(0, 9),
    st.integers(1, 12),
    st.integers(1, 9),
)
def test_flaws_of_a_part_are_what_of_them_is_in_it(
    flaws: list[Flaw], x: int, y: int, length: int, width: int
) -> None:
    part = box(x, y, x + length, y + width)
    wanted = unary_union([_area(each).intersection(part) for each in flaws])
    found = unary_union(
        [
            _area(Flaw(each.x + x, each.y + y, each.length, each.width))
            for each in flaws_within(flaws, x, y, length, width)
        ]
    )
    assert wanted.symmetric_difference(found).area < 1e-9


@given(st.lists(SPOTS, max_size=4), st.integers(1, 9), st.integers(1, 7))
def test_rectangles_clear_of_flaws_are_the_largest(
    spots: list[Flaw], length: int, width: int
) -> None:
    flaws = flaws_within(spots, 3, 2, length, width)
    clear = clear_of(flaws, length, width)
    taken = unary_union([_area(each) for each in flaws])
    for each in clear:
        sides = box(each.x, each.y, each.x + each.length, each.y + each.width)
        assert sides.intersection(taken).area < 1e-9
        assert box(0, 0, length, width).covers(sides)
    for long in range(1, length + 1):
        for wide in range(1, width + 1):
            goes = any(
                box(x, y, x + long, y + wide).intersection(taken).area < 1e-9
                for x in range(length - long + 1)
                for y in range(width - wide + 1)
            )
            assert goes == any(long <= each.length and wide <= each.width for each in clear)


def test_lengths_have_no_width() -> None:
    flaws = flaws_within([Flaw(90, 0, 20, 0, "knot"), Flaw(300, 0, 50, 0)], 100, 0, 500, 0)
    assert flaws == (Flaw(0, 0, 10, 0, "knot"), Flaw(200, 0, 50, 0))
    assert clear_of(flaws, 500, 0) == [(10, 0, 190, 0), (250, 0, 250, 0)]
    assert clear_of((), 500, 0) == [(0, 0, 500, 0)]


def test_what_is_said_of_flaws() -> None:
    assert flaws_said(()) == ""
    assert flaws_said([Flaw(0, 0, 9, 9)]) == "with a flaw"
    assert flaws_said([Flaw(0, 0, 9, 9, "old screw holes")]) == "with a flaw: old screw holes"
    three = [Flaw(at, 0, 9, 9, why) for at, why in ((0, "knot"), (20, "split"), (40, "knot"))]
    assert flaws_said(three) == "with 3 flaws: knot, split"
