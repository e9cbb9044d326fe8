"""Areas to finish, against the faces of the solids that Open CASCADE makes."""

from __future__ import annotations

from math import pi
from pathlib import Path
from typing import get_args

import pytest

from kit.specs import unit_from
from rodwright import read_spec, set_out, solid_of
from rodwright.assembly.finishing import finish_areas, finished_areas, surface_areas
from rodwright.trade.finishes import FINISHES, OF_KIND, TINS, takes_finish
from rodwright.unit import Bore, Part, Surface
from rodwright.unit.finish import Finish, FinishKind

MODELS = Path(__file__).parents[2] / "models"
BOARD = """
title: Box
unit: mm
size: {width: 1000, height: 500, depth: 300}
carcass: {stock: ply, corners: butted}
"""


def _of_solid(part: Part, surface: Surface) -> float:
    """Area of a solid's flat faces in the plane of one of its blank's surfaces, m2."""
    at = part.blank.size[surface.axis] if surface.at_high else 0.0
    sign = 1.0 if surface.at_high else -1.0
    total = 0.0
    for face in solid_of(part.shape).Faces():
        if face.geomType() != "PLANE":
            continue
        normal, centre = face.normalAt().toTuple(), face.Center().toTuple()
        if normal[surface.axis] * sign > 1 - 1e-6 and abs(centre[surface.axis] - at) < 1e-6:
            total += face.Area()
    return total / 1e6


def _mouths(part: Part) -> float:
    """What bores take of all surfaces at most, m2."""
    return sum(
        2 * pi * each.diameter**2 / 4 / 1e6 for each in part.workings if isinstance(each, Bore)
    )


@pytest.mark.parametrize("name", ["reading-alcove", "tape-drawers", "niche-shelf", "boot-room"])
def test_areas_are_those_of_the_solids(name: str) -> None:
    unit = set_out(read_spec(MODELS / f"{name}.yaml"))
    exact = 0
    for parts in unit.shapes.values():
        part = parts[0]
        if not all(each.fills_bounds or isinstance(each, Bore) for each in part.workings):
            continue
        exact += 1
        ours = surface_areas(part)
        for surface, area in ours.items():
            of_solid = _of_solid(part, surface)
            assert -1e-9 <= area - of_solid <= _mouths(part) + 1e-9, (part.ref, surface)
    assert exact >= 2


def test_all_six_surfaces_of_a_plain_board_are_counted() -> None:
    unit = unit_from(BOARD)
    (row,) = finish_areas(unit)
    faces = edges = 0.0
    for part in unit.parts:
        length, width, thick = part.blank.size
        faces += 2 * length * width / 1e6
        edges += 2 * (length + width) * thick / 1e6
    assert row.faces == pytest.approx(faces, rel=0.02)
    assert row.edges == pytest.approx(edges, rel=0.02)
    assert 0 < row.shows <= row.whole


def test_areas_by_what_was_chosen() -> None:
    """The back is a plain board, so its two faces and four edges are known."""
    unit = unit_from(BOARD + "back: {stock: thin}\nfinish: {back: oil, ply: lacquer}\n")
    areas = finished_areas(unit)
    assert list(areas) == [Finish("lacquer"), Finish("oil", "", "matt")]
    (oiled,) = areas[Finish("oil", "", "matt")]
    assert (oiled.stock, oiled.finish) == ("thin", Finish("oil", "", "matt"))
    length, width, thick = 1000.0, 500.0, 6.0
    assert oiled.faces == pytest.approx(2 * length * width / 1e6, rel=0.01)
    assert oiled.edges == pytest.approx(2 * (length + width) * thick / 1e6, rel=0.01)
    everything = sum(each.whole for each in finish_areas(unit))
    assert everything == pytest.approx(
        sum(each.whole for of_it in areas.values() for each in of_it)
    )
    assert finished_areas(unit_from(BOARD)) == {}


def test_every_kind_is_done_with_something() -> None:
    assert set(OF_KIND) == set(get_args(FinishKind))
    assert [coat.what for coat in OF_KIND["stain"].coats] == ["stain", "lacquer"]


def test_glass_and_melamine_take_no_finish() -> None:
    assert takes_finish("birch plywood") and takes_finish("mdf")
    assert not takes_finish("toughened glass") and not takes_finish("Melamine-faced MDF")


def test_amounts_are_areas_over_spreading_rates() -> None:
    paint = next(each for each in FINISHES if "paint" in each.name.lower()).coats[1]
    # Two coats of 12 m2 at 10 to 14 m2 a litre.
    assert paint.litres(12.0) == pytest.approx((24 / 14, 24 / 10))
    assert TINS["mm"].buy(2.4) == 2.5
    assert TINS["mm"].buy(5.9) == 6.0
    assert TINS["mm"].buy(10.0) == 10.0
    assert TINS["in"].buy(2.4) == 4.0
