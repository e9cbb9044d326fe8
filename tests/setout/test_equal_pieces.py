"""Pieces that are the same at the bench are the same in the model, whatever floats make of them."""

from __future__ import annotations

import pytest

from kit.specs import of_role, unit_from
from rodwright.unit import Role

BENCH = """
unit: in
size: {width: 60, height: 34, depth: 22}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 23/32, size: [96, 48]}
  thin: {kind: sheet, material: birch plywood, thickness: 15/64, size: [96, 48]}
"""


@pytest.mark.parametrize("count", [2, 3, 4, 5, 7])
def test_equal_drawers_in_inches_are_cut_alike(count: int) -> None:
    """A share of an opening in 64ths ends in halves of the millionth that sizes are kept to."""
    drawers = {"count": count, "bottom": {"stock": "thin"}}
    unit = unit_from(BENCH, base={"kind": "plinth", "height": 4}, interior={"drawers": drawers})
    for role in (Role.DRAWER_FRONT, Role.DRAWER_SIDE, Role.DRAWER_BOTTOM):
        assert len({part.blank for part in of_role(unit, role)}) == 1
