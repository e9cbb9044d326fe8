"""The elevation on a quote."""

from __future__ import annotations

import pytest

from kit.specs import unit_from
from rodwright.pictures.ink import Lettering
from rodwright.quote.elevation import elevation
from rodwright.quote.seen_sizes import seen_chains
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


FRAMED = """
size: {width: 900, height: 1200, depth: 300}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  oak: {kind: board, material: european oak, thickness: 22}
carcass: {stock: ply}
base: {kind: plinth, height: 80}
face_frame: {stock: oak, width: 45, mid_rails: 45, corners: butted}
interior:
  rows:
    - {height: 1 share, shelves: 1}
    - {height: 400, doors: {count: 2, hung: inset}}
"""


def _chains(spec: str) -> dict[str, list[float]]:
    return {
        chain.dimensions[0].side: [float(each.text) for each in chain.dimensions]
        for chain in seen_chains(unit_from(spec))
    }


def test_openings_are_told_as_the_face_frame_leaves_them() -> None:
    """By hand: 900 less two stiles of 45 is 810; all heights make up 1200, base and door included.
    The shelf over the doors lies behind a rail of 45."""
    told = _chains(FRAMED)
    assert told["below"] == [45, 810, 45]
    assert told["left"][0] == 80
    assert sum(told["left"]) == pytest.approx(1200, abs=8)  # gaps round doors have no figure
    assert told["left"].count(45) == 3
    assert 18 in told["left"]


def test_drawers_that_cover_the_carcass_are_told_by_themselves() -> None:
    """By hand: two equal drawers leave no more than the gaps round them."""
    told = _chains(
        """size: {width: 900, height: 600, depth: 400}
interior: {drawers: {count: 2, hung: overlay}}"""
    )
    high, low = told["left"]
    assert high == low
    assert 580 < high + low < 600
    assert 18 not in told["left"]


def test_columns_that_differ_are_told_at_either_side() -> None:
    told = _chains(
        """size: {width: 1200, height: 900, depth: 300}
interior: {columns: [{width: 1 share, shelves: 1}, {width: 1 share, shelves: 3}]}"""
    )
    assert sum(told["left"]) == sum(told["right"]) == 900
    assert (len(told["left"]), len(told["right"])) == (5, 9)


SCRIBED = """
opening: {width: 910, height: 1207, depth: 300}
fit: {sides: 5, top: 7, overlap: 2}
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18, size: [2440, 1220]}
  oak: {kind: board, material: european oak, thickness: 22}
carcass: {stock: ply}
face_frame: {stock: oak, width: 45, corners: butted, overhang: {sides: 14, top: 14}}
"""


def test_a_scribed_frame_is_told_as_it_stands_between_the_walls() -> None:
    """By hand: stiles of 45, 14 past a carcass of 900, are 36 at walls 5 away from it; between
    them 928 less 90 stays."""
    said = _said(SCRIBED, (170.0, 105.0))
    assert {"910", "1207"} <= set(said)
    assert not {"928", "1214"} & set(said)
    told = _chains(SCRIBED)
    assert told["below"] == [36, 838, 36]
