"""Every place told in a list is looked for at that coordinate of the part's solid."""

from __future__ import annotations

from dataclasses import replace

import pytest
from cadquery import Location
from hypothesis import HealthCheck, assume, example, given, settings

from kit.specs import unit_from
from kit.told_places import EDGED, misplaced
from kit.wishes import Wish, wishes
from rodwright.checks import check_parts
from rodwright.handover.lists import like_parts, parts_list
from rodwright.jobs.new import model_names, model_path
from rodwright.problems import ProblemsError
from rodwright.setout import set_out
from rodwright.solids import solid_of
from rodwright.unit import Groove, Hole, Unit
from rodwright.unit.laid import laid_unit
from rodwright.unit.shop_part import PartsKind, shop_part
from rodwright.wishes import read_spec


def unit_called(name: str) -> Unit:
    unit = unit_from(EDGED) if name == "edged" else set_out(read_spec(model_path(name)))
    return replace(unit, display_unit="mm")


@pytest.mark.parametrize("kind", ["cut", "finished"])
@pytest.mark.parametrize("name", ["edged", *model_names()])
def test_every_place_in_the_list_is_at_that_coordinate_of_the_solid(
    name: str, kind: PartsKind
) -> None:
    unit = unit_called(name)
    for row, parts in zip(parts_list(unit, kind), like_parts(unit), strict=True):
        part = shop_part(parts, kind).part
        assert list(misplaced(row, solid_of(part.shape))) == []


@pytest.mark.parametrize("wrong", [1.0, -1.0])
def test_a_list_a_millimetre_out_would_be_found(wrong: float) -> None:
    unit = unit_called("edged")
    for row, parts in zip(parts_list(unit), like_parts(unit), strict=True):
        if any(isinstance(each, Hole | Groove) for each in parts[0].workings):
            shape = shop_part(parts).part.shape
            moved = solid_of(shape).moved(Location((0.0, wrong, 0.0)))
            assert list(misplaced(row, moved)) != []


@settings(
    max_examples=40,
    suppress_health_check=[HealthCheck.filter_too_much, HealthCheck.too_slow],
)
@given(wishes())
@example(
    {
        "size": {"width": 700, "height": 700, "depth": 269},
        "carcass": {"stock": "ply", "top": "between", "bottom": "between"},
        "interior": {},
        "slope": {"falls": "front", "low": 500, "pitch": 53},
    }
)
def test_random_units_are_listed_as_they_are_made(wish: Wish) -> None:
    """However they are laid, the checks find the same."""
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError:
        assume(False)
        raise
    lying = laid_unit(unit)
    found, expected = (
        sorted((each.rule, each.message, each.parts) for each in check_parts(either))
        for either in (lying, unit)
    )
    assert found == expected
    for row, parts in zip(parts_list(lying), like_parts(lying), strict=True):
        assert list(misplaced(row, solid_of(shop_part(parts).part.shape))) == []
