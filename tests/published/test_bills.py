"""Specs of published pieces must yield their published bills."""

from __future__ import annotations

from collections import Counter

import pytest

from kit.specs import of_role, unit_from
from rodwright.lengths import format_length, parse_length
from rodwright.unit import Role, Unit


def _bill(unit: Unit) -> Counter[tuple[str, str, str, str]]:
    """Role, thickness, width and length of every part in inches, counted."""
    return Counter(
        (part.role.value, *(format_length(size, "in") for size in reversed(part.blank.size)))
        for part in unit.parts
    )


def test_book_shelves_of_the_national_builder() -> None:
    """National Builder, Community Shop Projects, "Book Shelves": its stock bill.

    5 shelves 7/8 x 7 3/4 x 33 in and 2 sides 7/8 x 7 3/4 x 52 in.
    """
    unit = unit_from("""
title: Book shelves
unit: in
size: {width: 34 3/4, height: 52, depth: 7 3/4}
stock:
  pine: {kind: board, material: pine, thickness: 7/8}
carcass: {stock: pine, corners: butted, top: none, bottom: none}
interior: {shelves: {count: 5}}
""")
    assert _bill(unit) == Counter(
        {("shelf", "7/8", "7 3/4", "33"): 5, ("side", "7/8", "7 3/4", "52"): 2}
    )
    left, right = of_role(unit, Role.SIDE)
    assert left.shape == right.shape  # the bill says two sides: one piece, made twice


@pytest.mark.parametrize("thickness", ["5/8", "3/4"])
def test_upright_of_the_book_hunter(thickness: str) -> None:
    """P. B. M. Allan, The Book-Hunter at Home (1920): spaces, shelves, and the upright's length.

    Clear spaces 9 1/2, 10, 10, 10, 12 and 14 in, the lowest shelf 6 in off the floor, six
    shelves of 5/8 in: upright 6 ft 3 1/4 in.  With other shelves it can't come out so.
    """
    unit = unit_from(f"""
unit: in
size: {{width: 36, depth: 9}}
stock:
  deal: {{kind: board, material: pine, thickness: {thickness}}}
carcass: {{stock: deal, corners: butted, top: none, bottom: none}}
interior: {{shelves: {{openings: [9 1/2, 10, 10, 10, 12, 14, 6]}}}}
""")
    uprights = of_role(unit, Role.SIDE)
    published = parse_length("6 ft 3 1/4 in", "in")
    assert len(of_role(unit, Role.SHELF)) == 6
    agrees = [part.blank.length == pytest.approx(published, abs=1e-9) for part in uprights]
    assert agrees == [thickness == "5/8"] * 2
    lowest = min(part.bounds().low[2] for part in of_role(unit, Role.SHELF))
    assert lowest == pytest.approx(parse_length("6 in", "in"))
