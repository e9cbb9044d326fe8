"""Areas to finish, against the faces of the solids that Open CASCADE makes."""

from __future__ import annotations

from math import pi
from pathlib import Path
from typing import get_args

import pytest

from kit.specs import unit_from
from rodwright import read_spec, set_out, solid_of
from rodwright.making.finishing import finish_areas, finished_areas, surface_areas
from rodwright.making.unseen import unseen_surfaces
from rodwright.trade.finishes import FINISHES, OF_KIND, TINS, takes_finish
from rodwright.unit import Bore, Part, Role, Surface, Unit
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


def test_all_that_is_seen_of_plain_boards_is_counted() -> None:
    """A box of 1000 x 500 x 300 of 18 mm, butted: 964 between its sides.  Unseen are its underside,
    the lower ends of its sides, the ends of what is between them, and what is at the wall."""
    unit = unit_from(BOARD)
    (row,) = finish_areas(unit)
    assert row.faces == pytest.approx((4 * 0.5 * 0.3 + 3 * 0.964 * 0.3), rel=1e-6)
    assert row.edges == pytest.approx(0.018 * (2 * 0.5 + 2 * 0.3 + 2 * 0.964), rel=1e-6)
    unseen = 0.964 * 0.3 + 0.018 * (2 * 0.3 + 4 * 0.3 + 2 * 0.5 + 2 * 0.964)
    assert row.unseen == pytest.approx(unseen, rel=1e-6)
    assert 0 < row.shows <= row.whole


def test_only_what_stands_free_has_finished_sides() -> None:
    """Outer faces of sides and top are at walls and ceiling in an opening that they fill."""
    case = "title: Box\nunit: mm\n"
    free = unit_from(case + "size: {width: 800, height: 2000, depth: 300}\n")
    built_in = unit_from(case + "opening: {width: 806, height: 2010, depth: 300}\n")
    low = unit_from(
        case + "opening: {width: 806, height: 2400, depth: 300}\nsize: {height: 2000}\n"
    )

    def hidden(unit: Unit) -> list[Role]:
        found = unseen_surfaces(unit)
        return [
            part.role
            for part in unit.parts
            if any((part.ref, face) in found for face in (Surface.FACE, Surface.REVERSE))
        ]

    assert hidden(free) == [Role.BOTTOM]
    assert hidden(built_in) == [Role.SIDE, Role.SIDE, Role.BOTTOM, Role.TOP]
    assert hidden(low) == [Role.SIDE, Role.SIDE, Role.BOTTOM]


def test_solid_wood_is_finished_all_round() -> None:
    """But where it is glued on: a strip's face that lies on the edge of its shelf."""
    unit = unit_from(
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 18}\n"
        "  oak: {kind: board, material: european oak, thickness: 20}\n"
        "carcass: {stock: oak}\nopening: {width: 806, height: 2010, depth: 300}\n"
        "interior: {shelves: {count: 1, stock: ply}}\n"
        "lipping: {stock: oak, thickness: 8, edges: [shelves]}\n"
    )
    found = unseen_surfaces(unit)
    faces = {
        (part.role, face)
        for part in unit.parts
        for face in (Surface.FACE, Surface.REVERSE)
        if (part.ref, face) in found
    }
    assert faces == {(Role.LIPPING, Surface.REVERSE)}


def test_areas_by_what_was_chosen() -> None:
    """The back is a plain board laid on the rear: one face and three edges are seen."""
    unit = unit_from(BOARD + "back: {stock: thin}\nfinish: {back: oil, ply: lacquer}\n")
    areas = finished_areas(unit)
    assert list(areas) == [Finish("lacquer"), Finish("oil", "", "matt")]
    (oiled,) = areas[Finish("oil", "", "matt")]
    assert (oiled.stock, oiled.finish) == ("thin", Finish("oil", "", "matt"))
    length, width, thick = 1000.0, 500.0, 6.0
    assert oiled.faces == pytest.approx(length * width / 1e6, rel=0.01)
    assert oiled.unseen == pytest.approx(oiled.faces + length * thick / 1e6)
    assert oiled.edges == pytest.approx((length + 2 * width) * thick / 1e6, rel=0.01)
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
