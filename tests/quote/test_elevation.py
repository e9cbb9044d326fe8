"""The elevation on a quote."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.pictures.ink import Lettering
from rodwright.quote.elevation import elevation
from rodwright.unit.laid import laid_unit

PLAIN = "size: {width: 900, height: 1200, depth: 300}\ninterior: {shelves: {count: 3}}"
IN_INCHES = """
unit: in
size: {width: 36, height: 48, depth: 12}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 3/4, size: [96, 48]}
"""
DOORED = "size: {width: 900, height: 1200, depth: 300}\ninterior: {doors: 2}"


def _said(spec: str, room: tuple[float, float]) -> list[str]:
    found = elevation(laid_unit(unit_from(spec)), *room)
    drawing = found.drawing
    assert drawing.width <= room[0]
    assert drawing.height <= room[1]
    assert drawing.width > 900 / found.scale
    return [each.text for each in drawing.marks if isinstance(each, Lettering)]


def test_sizes_shelves_and_depth_are_told_and_no_refs() -> None:
    """By hand: 1200 less top, bottom and three shelves of 18 is 1110, a quarter of it 277.5; 900
    less two sides is 864."""
    said = _said(PLAIN, (170.0, 105.0))
    assert {"900", "1200", "300", "864", "277.5", "18"} == set(said)


def test_gaps_of_doors_are_for_the_bench() -> None:
    said = _said(DOORED, (170.0, 105.0))
    assert {"900", "1200"} <= set(said)
    assert "2" not in said


@pytest.mark.parametrize("room", [(60.0, 60.0), (40.0, 105.0), (25.0, 30.0)])
def test_little_room_takes_a_smaller_scale_or_fewer_figures(room: tuple[float, float]) -> None:
    _said(PLAIN, room)


def test_in_inches() -> None:
    said = _said(IN_INCHES, (170.0, 105.0))
    assert {"36", "48", "12"} <= set(said)
