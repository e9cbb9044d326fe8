"""How pieces lie in the unit, and what their surfaces are called for it."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest

from kit.samples import MINUS_X, MINUS_Y, X, Y, Z, bookcase, worked_part
from rodwright.geometry import cross
from rodwright.unit import Part, Placement, Surface
from rodwright.unit.orientation import describe_orientation, describe_shows, orientation_of

DIRECTIONS = (X, Y, Z, MINUS_X, MINUS_Y, (0.0, 0.0, -1.0))
PLACEMENTS = [
    Placement((5.0, 7.0, 11.0), length, width)
    for length, width in itertools.product(DIRECTIONS, DIRECTIONS)
    if cross(length, width) != (0.0, 0.0, 0.0)
]


def placed(placement: Placement) -> Part:
    return replace(worked_part(), placement=placement)


def test_there_are_24_ways_to_lie_square() -> None:
    assert len(PLACEMENTS) == 24


@pytest.mark.parametrize("placement", PLACEMENTS)
@pytest.mark.parametrize("surface", Surface)
def test_a_surface_is_named_by_where_it_points(placement: Placement, surface: Surface) -> None:
    part = placed(placement)
    direction = (placement.length, placement.width, placement.thickness)[surface.axis]
    points = [component if surface.at_high else -component for component in direction]
    words = {
        (0, -1): "left", (0, 1): "right", (1, -1): "front", (1, 1): "rear",
    }  # fmt: skip
    upright = {
        -1: ("bottom end", "lower edge", "underside"),
        1: ("top end", "upper edge", "upper face"),
    }
    axis = next(axis for axis, component in enumerate(points) if component)
    towards = round(points[axis])
    expected = (
        upright[towards][surface.axis]
        if axis == 2
        else f"{words[axis, towards]} {('end', 'edge', 'face')[surface.axis]}"
    )
    assert orientation_of([part]).name(surface) == expected


def test_how_a_part_lies() -> None:
    assert describe_orientation([placed(Placement((0, 0, 0), Z, Y))]) == (
        "length bottom to top, width front to rear, thickness right to left",
    )
    slanted = Placement((0, 0, 0), (0.6, 0.0, 0.8), MINUS_Y)
    assert describe_orientation([placed(slanted)]) == (
        "width rear to front",
        "X1: near end bottom and left, face right and bottom",
    )
    assert orientation_of([placed(slanted)]).name(Surface.NEAR_END) == "near end"


def test_pieces_turned_end_for_end_say_where_their_own_ends_go() -> None:
    upright, turned = (
        replace(placed(Placement((0, 0, 0), length, width)), ref=ref)
        for ref, length, width in (("ST1", Z, MINUS_X), ("ST2", (0.0, 0.0, -1.0), X))
    )
    assert describe_orientation([upright, turned]) == (
        "thickness rear to front",
        "ST1: near end bottom, face edge right",
        "ST2: near end top, face edge left",
    )
    assert describe_shows([upright, turned]) == ("front face",)


def test_the_show_face_of_every_side_looks_outwards() -> None:
    unit = bookcase()
    left, right = unit.part("SD1"), unit.part("SD2")
    assert describe_shows([left]) == ("left face",)
    assert describe_shows([right]) == ("right face",)
    assert describe_shows([left, right]) == ("face",)
