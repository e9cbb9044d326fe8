"""Hinge plates and rows of holes share one grid of 32 mm, as the trade bores them (common
practice, no source): plate holes fall together with holes of the row, or keep well clear."""

from __future__ import annotations

from math import hypot
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from kit.specs import of_role, unit_from
from rodwright.checks import check_solids
from rodwright.problems import ProblemsError
from rodwright.setout.carcass.shelf_rows import PIN_USE, PLATE_USE
from rodwright.trade.hinges import PLATE_CLEAR
from rodwright.unit import Hole, Part, PocketHole, Role, Unit

Point = tuple[float, float]


def _unit(doors: dict[str, Any], shelves: dict[str, Any], **more: Any) -> Unit:
    size = more.pop("size", {"width": 600, "height": 900, "depth": 400})
    interior = {"doors": doors, "shelves": {"fixed": False} | shelves}
    return unit_from("unit: mm\n", size=size, interior=interior, **more)


def _holes(part: Part, use: str) -> set[Point]:
    """y and z, in the unit frame, of an upright's holes for one use."""
    found = set()
    for hole in part.workings:
        if isinstance(hole, Hole) and hole.use == use:
            thick = part.blank.thickness if hole.surface.at_high else 0.0
            _, y, z = part.placement.to_unit((*hole.position, thick))
            found.add((round(y, 6), round(z, 6)))
    return found


def _plates(part: Part) -> set[Point]:
    return _holes(part, PLATE_USE)


def _pins(part: Part) -> set[Point]:
    return _holes(part, PIN_USE)


@pytest.mark.parametrize(
    ("doors", "line"),
    [({"hung": "overlay"}, 37.0), ({}, 18.0 + 37), ({"hung": "overlay", "bumper": 3}, 37.0)],
)
@pytest.mark.parametrize("shelves", [{"count": 2}, {"count": 3}, {"at": [200, 415]}])
@pytest.mark.parametrize("sides", ["left", "right"])
def test_plates_take_two_holes_of_the_row(
    doors: dict[str, Any], line: float, shelves: dict[str, Any], sides: str
) -> None:
    """Row and plates lie on one line, 37 behind the carcass's front or the rear of an inset door,
    and everything on it is a multiple of 32 from everything else."""
    unit = _unit(doors | {"hinges": sides, "hinge": {"count": 2}}, shelves)
    hung = of_role(unit, Role.SIDE)[0 if sides == "left" else 1]
    plates, pins = _plates(hung), {pin for pin in _pins(hung) if pin[0] < 200}
    assert len(plates) == 4
    assert {y for y, _ in plates | pins} == {line}
    low = min(z for _, z in plates)
    for _, z in plates | pins:
        assert (z - low) / 32 == pytest.approx(round((z - low) / 32))
    assert not plates & pins
    heights = sorted(z for _, z in plates)
    # The row goes on from plate to plate.
    assert {(line, heights[1] + 32), (line, heights[2] - 32)} <= pins
    (door,) = of_role(unit, Role.DOOR)
    outline = door.bounds()
    # Not more than half a pitch from the usual 100 of the ends, but for shelves in the way.
    if shelves != {"count": 3}:
        assert abs((heights[0] + heights[1]) / 2 - outline.low[2] - 100) <= 16 + 1e-6
        assert abs(outline.high[2] - (heights[2] + heights[3]) / 2 - 100) <= 16 + 1e-6
    assert check_solids(unit) == ()


def test_rows_without_hinges_are_as_they_were() -> None:
    """The side without hinges has the same line and the whole row; without doors, 37 and no gap."""
    unit = _unit({"hung": "overlay"}, {"count": 2})
    hung, other = of_role(unit, Role.SIDE)
    assert _plates(other) == set()
    assert _pins(hung) == _pins(other) - _plates(hung) != _pins(other)
    plain = unit_from(
        "size: {width: 600, height: 900, depth: 400}\ninterior: {shelves: {count: 2, fixed: false}}"
    )
    left, right = of_role(plain, Role.SIDE)
    assert _pins(left) == _pins(right) == _pins(other)


def test_the_makers_ends_stand_and_the_row_gives_way() -> None:
    """Hinges 90 from the ends, whatever the row is laid to: what is near their plates is left
    out."""
    unit = _unit({"hung": "overlay", "hinge": {"ends": 90, "count": 2}}, {"at": [200, 415]})
    hung, other = of_role(unit, Role.SIDE)
    assert {z for _, z in _plates(hung)} == {91 - 16, 91 + 16, 809 - 16, 809 + 16}
    assert _pins(hung) < _pins(other)
    _keep_apart(unit)


@pytest.mark.parametrize(
    "holes", [{"pitch": 25}, {"pitch": 50}, {"setback": 45}, {"sleeves": True}]
)
def test_rows_of_another_pitch_or_line_keep_clear(holes: dict[str, Any]) -> None:
    _keep_apart(_unit({"hung": "overlay"}, {"count": 2, "holes": holes}))


def test_under_lipped_sides_the_row_follows_the_plates() -> None:
    """Lippings of 8 bring the front of the carcass forward, from which the plates are measured."""
    unit = _unit(
        {"hung": "overlay"},
        {"count": 2},
        lipping={"stock": "ash", "thickness": 8, "edges": ["sides", "shelves"]},
    )
    hung = of_role(unit, Role.SIDE)[0]
    assert {y for y, _ in _plates(hung)} == {37.0} == {y for y, _ in _pins(hung) if y < 200}


def _keep_apart(unit: Unit) -> None:
    """Every hole of a row has wood to every plate's on its side, or is in its place."""
    radii = [
        hole.diameter / 2
        for part in unit.parts
        for hole in part.workings
        if isinstance(hole, Hole) and hole.use == PIN_USE
    ]
    assert radii
    clear = 2.5 + max(radii) + PLATE_CLEAR
    for part in unit.parts:
        if part.role is not Role.SIDE:
            continue
        for plate in _plates(part):
            for pin in _pins(part):
                assert hypot(plate[0] - pin[0], plate[1] - pin[1]) >= clear - 1e-6, (plate, pin)


@settings(max_examples=60)
@given(
    hung=st.sampled_from(["inset", "overlay"]),
    count=st.sampled_from([1, 2]),
    frame=st.booleans(),
    height=st.integers(450, 2000),
    depth=st.integers(220, 600),
    shelves=st.one_of(
        st.builds(lambda n: {"count": n}, st.integers(1, 5)),
        st.builds(
            lambda at: {"at": sorted(at)},
            st.lists(st.integers(60, 1800), min_size=1, max_size=3, unique=True),
        ),
    ),
    holes=st.fixed_dictionaries(
        {},
        optional={
            "pitch": st.sampled_from([16, 20, 25, 32, 40, 50, 64]),
            "near": st.integers(0, 3),
            "setback": st.integers(20, 70),
            "sleeves": st.booleans(),
        },
    ),
    hinge=st.fixed_dictionaries(
        {}, optional={"ends": st.integers(40, 140), "count": st.integers(2, 4)}
    ),
)
def test_no_plate_comes_near_a_row(
    hung: str,
    count: int,
    frame: bool,
    height: int,
    depth: int,
    shelves: dict[str, Any],
    holes: dict[str, Any],
    hinge: dict[str, Any],
) -> None:
    more = {"face_frame": {"stock": "ash", "width": 45}} if frame else {}
    try:
        unit = _unit(
            {"hung": hung, "count": count, "hinge": hinge},
            shelves | {"holes": holes},
            size={"width": 700, "height": height, "depth": depth},
            **more,
        )
    except ProblemsError:
        assume(False)
        raise
    _keep_apart(unit)
    # Each shelf still rests on four pins.
    for shelf in of_role(unit, Role.SHELF):
        under = shelf.bounds().low[2] - 2.5
        rests = [
            pin
            for side in of_role(unit, Role.SIDE)
            for pin in _pins(side)
            if abs(pin[1] - under) < 1e-6
        ]
        assert len(rests) == 4


@pytest.mark.parametrize("ends", [45, 55, 62])
@pytest.mark.parametrize("shelves", [None, {"count": 1, "fixed": False}])
def test_plates_and_rows_keep_clear_of_pocket_holes(
    ends: int, shelves: dict[str, Any] | None
) -> None:
    """The pockets at a divider's ends, 52 mm long, are where plates so near an end would be."""
    inside = {"shelves": shelves} if shelves else {}
    doors = {"hinge": {"ends": ends, "count": 2}, "hinges": "right"}
    unit = unit_from(
        "unit: mm\nsize: {width: 1200, height: 500, depth: 400}",
        interior={
            "columns": [
                {"width": "1 share", "doors": doors} | inside,
                {"width": "1 share"} | inside,
            ],
            "dividers": {"ends": "pocket-screwed"},
        },
    )
    (divider,) = of_role(unit, Role.DIVIDER)
    size = divider.blank.size
    holes = [each for each in divider.workings if isinstance(each, Hole)]
    pockets = [each for each in divider.workings if isinstance(each, PocketHole)]
    assert len(pockets) == 6
    assert {each.use for each in holes} == {PLATE_USE} | ({PIN_USE} if shelves else set())
    assert [
        (hole, pocket)
        for hole in holes
        for pocket in pockets
        if hole.bounds(size).grown(1.4).intersects(pocket.bounds(size))
    ] == []
