"""A unit and its mirror image are the same piece of work: sizes, hardware, weights, findings."""

from __future__ import annotations

import re
from collections import Counter
from typing import Any

import pytest
from hypothesis import HealthCheck, assume, example, given, settings
from hypothesis import strategies as st

from kit.mirrors import mirrored
from kit.specs import problems_of, unit_from
from kit.wishes import Wish, wishes
from rodwright.checks import check_parts
from rodwright.handover.lists import hardware_list
from rodwright.mass import weight
from rodwright.problems import ProblemsError
from rodwright.unit import JointKind, Role, Unit

_REF = re.compile(r"\b[A-Z]{2,3}\d+[a-d]?\b")
_SIDES = re.compile(r"\b(left|right)\b", re.IGNORECASE)


def _plain(text: str) -> str:
    """A text without what a mirror changes: refs and numbers of pieces, left and right."""
    text = re.sub(r"; likewise .*", "", text)
    text = re.sub(r"\b(door|drawer|column) \d+", r"\1 N", text)
    return _SIDES.sub("SIDE", _REF.sub("REF", text))


def _told(wish: Wish) -> Counter[tuple[str, ...]]:
    """What is said against a wish, with the numbers of columns taken out of its places."""
    try:
        unit_from("unit: mm\n", **wish)
    except ProblemsError as error:
        return Counter(
            (
                *("#" if isinstance(step, int) else str(step) for step in problem.where),
                _plain(problem.message),
            )
            for problem in error.problems
        )
    return Counter()


def _pieces(unit: Unit) -> Counter[Any]:
    return Counter(
        (
            part.role,
            _plain(part.name),
            part.blank.stock.name,
            tuple(round(size, 4) for size in part.rough_size),
            tuple(round(size, 4) for size in part.blank.size),
            round(weight(part), 5),
        )
        for part in unit.parts
    )


def _hardware(unit: Unit) -> Counter[Any]:
    return Counter({(row.name, row.size): row.quantity for row in hardware_list(unit)})


def _findings(unit: Unit) -> set[Any]:
    """What is found; how many likewise are said in one breath hangs on their names.

    In an opening, the least that the readings allow is reckoned from its left corner and may
    differ by a tenth of a millimetre, so that there only what is found counts.
    """
    if unit.opening is not None:
        return {(each.severity, each.rule) for each in check_parts(unit)}
    return {
        (
            each.severity,
            each.rule,
            _plain(each.message),
            _plain(each.remedy),
            None if each.figure is None else round(each.figure, 3),
            None if each.limit is None else round(each.limit, 3),
        )
        for each in check_parts(unit)
    }


def _same(wish: Wish) -> None:
    unit, image = (unit_from("unit: mm\n", **each) for each in (wish, mirrored(wish)))
    assert image.size == pytest.approx(unit.size, abs=1e-6)
    assert _pieces(image) == _pieces(unit)
    assert _hardware(image) == _hardware(unit)
    assert _findings(image) == _findings(unit)
    assert _places(image, False) == _places(unit, True)


def _places(unit: Unit, flipped: bool) -> Counter[Any]:
    """Where its parts stand; ``flipped``, seen in a mirror behind which the carcass stands.

    The block of a middle leg stands at one side of it, whichever.
    """
    boxes = [(part, part.bounds()) for part in unit.parts if part.name != "Leg block"]
    width = max(box.high[0] for part, box in boxes if part.role is Role.SIDE)
    return Counter(
        (part.role, *(round(value, 3) + 0.0 for value in (*across, *box.low[1:], *box.high[1:])))
        for part, box in boxes
        for ends in ((box.low[0], box.high[0]),)
        for across in ((width - ends[1], width - ends[0]) if flipped else ends,)
    )


SIZE: Wish = {"size": {"width": 900, "height": 900, "depth": 300}}


@pytest.mark.parametrize("screwed_first", [True, False])
def test_screws_through_a_divider_do_not_depend_on_the_order_of_columns(
    screwed_first: bool,
) -> None:
    """A housed shelf stands where the screws of its neighbour would go in: told both ways."""
    columns = [
        {"width": "1 share", "shelves": {"at": [400], "ends": "screwed"}},
        {"width": "1 share", "shelves": {"at": [400], "ends": "housed"}},
    ]
    interior = {"columns": columns if screwed_first else columns[::-1]}
    said = problems_of("unit: mm\n", **SIZE, interior=interior)
    assert len(said) == 1
    assert "screws through divider DV1 into SH" in said[0]
    assert "stands on its other side" in said[0]


@pytest.mark.parametrize("screwed_first", [True, False])
def test_screws_past_a_neighbour_pass_both_ways(screwed_first: bool) -> None:
    columns = [
        {"width": "1 share", "shelves": {"at": [400], "ends": "screwed"}},
        {"width": "1 share", "shelves": {"at": [450], "ends": "housed"}},
    ]
    interior = {"columns": columns if screwed_first else columns[::-1]}
    unit = unit_from("unit: mm\n", **SIZE, interior=interior)
    screwed = [joint for joint in unit.joints if joint.kind is JointKind.SCREWED]
    assert len(screwed) == 2
    _same({**SIZE, "interior": interior})


openings = st.fixed_dictionaries(
    {
        "width": st.fixed_dictionaries(
            {"bottom": st.integers(900, 920), "top": st.integers(900, 920)}
        ),
        "height": st.fixed_dictionaries(
            {"left": st.integers(2000, 2010), "right": st.integers(2000, 2010)}
        ),
        "depth": st.fixed_dictionaries(
            {"left": st.integers(400, 410), "right": st.integers(400, 410)}
        ),
    },
    optional={
        "plumb": st.fixed_dictionaries(
            {
                "left": st.fixed_dictionaries(
                    {
                        "out": st.integers(0, 8),
                        "over": st.just(1800),
                        "leans": st.sampled_from(["in", "out"]),
                    }
                )
            }
        ),
        "level": st.fixed_dictionaries(
            {
                "floor": st.fixed_dictionaries(
                    {
                        "out": st.integers(0, 6),
                        "over": st.just(800),
                        "rises": st.sampled_from(["left", "right"]),
                    }
                )
            }
        ),
    },
)


@st.composite
def any_wish(draw: st.DrawFn) -> Wish:
    """A random unit, freestanding or in an opening, with strips at some of its walls."""
    wish = draw(wishes())
    if draw(st.booleans()) and "slope" not in wish and "cutouts" not in wish:
        del wish["size"]
        wish["opening"] = draw(openings)
        wish["fit"] = {"sides": draw(st.sampled_from([4, 15])), "top": 10}
        edges = draw(st.sampled_from([None, ["left"], ["left", "right"], ["right", "top"]]))
        if edges:
            wish["scribes"] = {"stock": "ash", "edges": edges}
    if "cornice" in wish:
        returns = draw(st.sampled_from([None, "left", "both", "none"]))
        if returns:
            wish["cornice"] = wish["cornice"] | {"returns": returns}
    return wish


ON_RUNNERS: Wish = {
    "size": {"width": 700, "height": 867, "depth": 250},
    "carcass": {"stock": "ply", "corners": "housed", "top": "between", "bottom": "none"},
    "interior": {
        "columns": [
            {"width": "1 share"},
            {
                "width": "1 share",
                "drawers": {
                    "count": 1,
                    "stock": "ply",
                    "bottom": {"stock": "thin"},
                    "hung": "inset",
                    "slides": {"kind": "runners"},
                    "corners": "rebated",
                },
            },
        ],
        "dividers": {},
    },
    "face_frame": {"stock": "ash", "width": 30, "corners": "mitred", "mid_stiles": 40},
}
"""One runner of its drawer bears more than the other."""


@settings(
    max_examples=60,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(any_wish())
@example(ON_RUNNERS)
def test_a_unit_and_its_mirror_image_are_alike(wish: Wish) -> None:
    told = _told(wish)
    assert _told(mirrored(wish)) == told
    assume(not told)
    _same(wish)
