from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.specs import setting_from
from rodwright.problems import Problems, ProblemsError
from rodwright.setout.carcass.division import divide, shelf_heights
from rodwright.wishes.fields import Share
from rodwright.wishes.models import ShelvesSpec

NAMES = ("columns", "dividers")
SETTING = setting_from("size: {width: 600, height: 800, depth: 300}")


def _divide(whole: float, between: float, *wishes: float | Share) -> tuple[float, ...]:
    problems = Problems()
    sizes = divide(replace(SETTING, problems=problems), whole, between, wishes, NAMES)
    problems.raise_if_any()
    return sizes


def _heights(clear: float, thickness: float, **wish: object) -> tuple[float, ...]:
    problems = Problems()
    setting = replace(SETTING, problems=problems)
    heights = shelf_heights(setting, clear, thickness, ShelvesSpec.model_validate(wish))
    problems.raise_if_any()
    return heights


def test_shares_take_what_given_lengths_leave() -> None:
    assert _divide(1000.0, 20.0, Share(1), 300.0, Share(2)) == pytest.approx((220, 300, 440))


@settings(max_examples=200)
@given(
    st.floats(500, 5000),
    st.floats(0, 30),
    st.lists(
        st.one_of(st.floats(1, 50), st.builds(Share, st.integers(1, 9))), min_size=2, max_size=8
    ),
)
def test_the_parts_make_the_whole(
    whole: float, between: float, wishes: list[float | Share]
) -> None:
    wishes = [*wishes, Share(1)]
    sizes = _divide(whole, between, *wishes)
    assert sum(sizes) + between * (len(wishes) - 1) == pytest.approx(whole, abs=1e-6)
    assert min(sizes) > 0


@pytest.mark.parametrize(
    ("wishes", "said"),
    [
        ((400.0, 400.0), "the columns add up to 800 mm, with 20 mm of dividers between them: "
                         "820 mm in a space of 1000 mm, 180 mm too little"),
        ((600.0, 500.0), "120 mm too much"),
        ((600.0, 380.1), "0.1 mm too much"),
        ((990.0, Share(1)), "of 1000 mm nothing is left to share"),
    ],
)  # fmt: skip
def test_a_sum_that_does_not_fit_is_named(wishes: tuple[float | Share, ...], said: str) -> None:
    with pytest.raises(ProblemsError, match=said):
        _divide(1000.0, 20.0, *wishes)


def test_rounding_of_inches_is_no_problem() -> None:
    assert _divide(1000.0, 20.0, 600.0, 380.04) == (600.0, 380.04)


def test_equal_centres() -> None:
    """Common practice, no source: 141 units over three spaces gives 47."""
    first, second = (height + 5.0 for height in _heights(141.0, 10.0, count=2, spacing="centres"))
    assert (first, second) == pytest.approx((47.0, 94.0))


@settings(max_examples=100)
@given(st.integers(1, 20), st.floats(5, 40), st.floats(900, 3000))
def test_equal_openings_are_equal(count: int, thickness: float, clear: float) -> None:
    heights = _heights(clear, thickness, count=count)
    edges = [0.0, *(edge for height in heights for edge in (height, height + thickness)), clear]
    openings = [high - low for low, high in zip(edges[::2], edges[1::2], strict=True)]
    assert openings == pytest.approx([openings[0]] * (count + 1))


def test_openings_are_read_from_the_top_down() -> None:
    assert _heights(1000.0, 20.0, openings=[300, "1 share", 400]) == pytest.approx((400, 680))


def test_heights_are_undersides_in_any_order() -> None:
    assert _heights(1000.0, 20.0, at=[600, 200]) == (200.0, 600.0)


@pytest.mark.parametrize(
    "wish", [{"count": 40}, {"at": [990]}, {"at": [100, 115]}, {"count": 1, "at": [100]}, {}]
)
def test_shelves_that_do_not_fit_are_refused(wish: dict[str, object]) -> None:
    with pytest.raises(ProblemsError):
        _heights(1000.0, 25.0, **wish)
