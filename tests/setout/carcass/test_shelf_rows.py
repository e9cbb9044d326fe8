"""Rows of holes for adjustable shelves.

5 mm holes 32 mm apart, the front row 37 mm behind the front of the panel: "What all modular
32mm systems have in common", davelers.com/32mm.  Other figures: common practice, no source.
"""

from __future__ import annotations

from itertools import combinations
from typing import Any

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_solids
from rodwright.checks.workings import workings as check_workings
from rodwright.handover.lists import parts_list
from rodwright.problems import ProblemsError
from rodwright.setout.carcass.shelf_rows import best_datum
from rodwright.unit import Groove, Hole, Housing, JointKind, Part, Rebate, Role, Surface, Unit

SIZE = "size: {width: 800, height: 1000, depth: 300}\n"
THIN = """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 18}
  slim: {kind: sheet, material: birch plywood, thickness: 8}
"""


def loose(**more: Any) -> dict[str, Any]:
    return {"count": 3, "fixed": False} | more


def holes(part: Part) -> list[Hole]:
    return [working for working in part.workings if isinstance(working, Hole)]


def places(part: Part, surface: Surface | None = None) -> list[tuple[float, float]]:
    """The y and z of the holes of a part, unit frame."""
    found = []
    for hole in holes(part):
        if surface in (None, hole.surface):
            _, y, z = part.placement.to_unit((*hole.position, 0.0))
            found.append((round(y, 3), round(z, 3)))
    return sorted(found)


def test_a_whole_row_by_hand() -> None:
    """Clear height 964 above a floor at 18.  The shelf at 400 rests on a hole at 397.5; its row
    has rest 13.5, so from 64 to 900 it has 2 x 32 + 13.5 = 77.5 up to 27 x 32 + 13.5 = 877.5."""
    unit = unit_from(SIZE, interior={"shelves": loose(count=None, at=[400])})
    expected = [(y, 18 + 77.5 + 32 * step) for y in (37.0, 263.0) for step in range(26)]
    for side in of_role(unit, Role.SIDE):
        assert places(side) == expected
        assert {(hole.diameter, hole.depth) for hole in holes(side)} == {(5.0, 10.0)}
    (shelf,) = of_role(unit, Role.SHELF)
    assert shelf.bounds().low[2] == 418.0
    assert check_solids(unit) == ()
    assert list(check_workings(unit)) == []


def test_the_row_is_told_by_its_ends_and_its_pitch() -> None:
    unit = unit_from(SIZE, interior={"shelves": loose(count=None, at=[400])})
    sides = parts_list(unit)[0]
    assert sides.refs == ("SD1", "SD2")
    assert sides.workings == (
        "2 rows of 26 holes 5 dia., 10 deep, on the face, 37, 263 from the face edge, 32 apart, "
        "first at 95.5 from the bottom end, last at 895.5",
    )


@given(
    st.lists(st.floats(0, 2000), min_size=1, max_size=6),
    st.sampled_from([25.0, 25.4, 32.0, 50.0]),
)
def test_no_datum_is_nearer_than_the_best(heights: list[float], pitch: float) -> None:
    """Against trying every datum in steps of a fortieth of the pitch."""

    def farthest(datum: float) -> float:
        rests = [(height - datum) % pitch for height in heights]
        return max(min(rest, pitch - rest) for rest in rests)

    best = farthest(best_datum(heights, pitch))
    assert best <= pitch / 2 + 1e-9
    assert all(best <= farthest(step * pitch / 40) + 1e-9 for step in range(40))


@pytest.mark.parametrize(("count", "moved"), [(1, 0.0), (2, 11 / 3)])
def test_equal_shelves_move_as_little_as_the_pitch_allows(count: int, moved: float) -> None:
    """Two shelves in 964 are (964 - 36) / 3 + 18 = 327.33 apart, 7.33 more than ten pitches of
    32; each gives half of that."""
    unit = unit_from(SIZE, interior={"shelves": loose(count=count)})
    clear = (964 - 18 * count) / (count + 1)
    wished = [18 + clear + number * (clear + 18) for number in range(count)]
    laid = [shelf.bounds().low[2] for shelf in of_role(unit, Role.SHELF)]
    by = [abs(a - b) for a, b in zip(laid, wished, strict=True)]
    assert by == pytest.approx([moved] * count, abs=1e-5)


def test_at_lays_the_row_from_the_first_shelf() -> None:
    """300 is kept; 520 is 6.875 pitches higher and goes to 7, 4 mm up."""
    unit = unit_from(SIZE, interior={"shelves": loose(count=None, at=[520, 300])})
    assert [shelf.bounds().low[2] for shelf in of_role(unit, Role.SHELF)] == [318.0, 542.0]


def test_the_maker_says_where_the_row_goes() -> None:
    """From 100, every 25 to 850: 31 holes.  A shelf wished at 402 rests on the one at 400."""
    row = {"from": 100, "to": 850, "pitch": 25, "setback": 50, "diameter": 6, "depth": 9}
    unit = unit_from(SIZE, interior={"shelves": loose(count=None, at=[402], holes=row)})
    left = of_role(unit, Role.SIDE)[0]
    assert places(left) == [(y, 118.0 + 25 * step) for y in (50.0, 250.0) for step in range(31)]
    assert {(hole.diameter, hole.depth) for hole in holes(left)} == {(6.0, 9.0)}
    assert of_role(unit, Role.SHELF)[0].bounds().low[2] == 18 + 400 + 3


def test_some_holes_near_each_shelf() -> None:
    row = {"near": 2}
    unit = unit_from(SIZE, interior={"shelves": loose(count=None, at=[300], holes=row)})
    heights = [z for y, z in places(of_role(unit, Role.SIDE)[0]) if y == 37.0]
    assert heights == [318 - 2.5 + 32 * step for step in (-2, -1, 0, 1, 2)]


def test_a_space_too_low_for_a_row_keeps_the_shelfs_own_holes() -> None:
    """In 80 mm only the shelf's own four holes are left."""
    unit = unit_from(
        "size: {width: 600, height: 116, depth: 300}\ninterior: {shelves: {count: 1, fixed: false}}"
    )
    assert [len(places(side)) for side in of_role(unit, Role.SIDE)] == [2, 2]


def test_sleeves_have_wider_holes_and_are_counted() -> None:
    unit = unit_from(SIZE, interior={"shelves": loose(holes={"near": 1, "sleeves": True})})
    drilled = [hole for side in of_role(unit, Role.SIDE) for hole in holes(side)]
    assert {hole.diameter for hole in drilled} == {7.0}
    (sleeve,) = unit.fixings
    assert sleeve.count == len(drilled) == 3 * 3 * 4
    assert sum(fixing.count for joint in unit.joints for fixing in joint.fixings) == 3 * 4
    assert check_solids(unit) == ()


def test_sides_stay_alike_behind_lipped_shelves() -> None:
    """Rows are measured from the uprights, so that one side can be the other, turned round."""
    unit = unit_from(SIZE, interior={"shelves": loose()}, lipping={"stock": "ash", "thickness": 10})
    assert parts_list(unit)[0].refs == ("SD1", "SD2")


def two_columns(left: dict[str, Any], right: dict[str, Any]) -> dict[str, Any]:
    return {
        "columns": [
            {"width": "1 share", "shelves": left},
            {"width": "1 share", "shelves": right},
        ]
    }


def test_a_divider_keeps_wood_between_its_two_rows() -> None:
    """18 less 3 left between them is 7.5 for either."""
    unit = unit_from(SIZE, interior=two_columns(loose(), loose()))
    (divider,) = of_role(unit, Role.DIVIDER)
    face, reverse = (places(divider, each) for each in (Surface.FACE, Surface.REVERSE))
    assert face == reverse
    assert {hole.depth for hole in holes(divider)} == {7.5}
    assert check_solids(unit) == ()


def test_rows_too_deep_for_one_place_stand_apart() -> None:
    deep = loose(holes={"depth": 12})
    unit = unit_from(SIZE, interior=two_columns(deep, deep))
    (divider,) = of_role(unit, Role.DIVIDER)
    face, reverse = ({y for y, _ in places(divider, s)} for s in (Surface.FACE, Surface.REVERSE))
    # Two holes of 5 with 3 between them are 8 apart.
    assert sorted(reverse) == [37.0, 263.0] or sorted(face) == [37.0, 263.0]
    assert sorted(face | reverse) == [37.0, 45.0, 255.0, 263.0]
    left, right = of_role(unit, Role.SIDE)
    assert places(left) == places(right)
    assert check_solids(unit) == ()


def test_a_housing_in_the_far_face_leaves_less_depth() -> None:
    """18 less a housing of 6 and 3 of wood."""
    fixed = {"at": [400], "ends": "housed"}
    unit = unit_from(SIZE, interior=two_columns(loose(count=None, at=[405]), fixed))
    (divider,) = of_role(unit, Role.DIVIDER)
    assert {hole.depth for hole in holes(divider)} == {9.0}
    assert check_solids(unit) == ()


def test_only_an_upright_drilled_from_both_sides_has_shallow_holes() -> None:
    """18 thick with 3 left between opposite holes: 7.5 each in the divider, 10 in the sides."""
    unit = unit_from(SIZE, interior=two_columns(loose(), loose()))
    (divider,) = of_role(unit, Role.DIVIDER)
    assert {hole.depth for hole in holes(divider)} == {7.5}
    for side in of_role(unit, Role.SIDE):
        assert {hole.depth for hole in holes(side)} == {10.0}


def test_rows_at_different_heights_of_a_divider_go_to_full_depth() -> None:
    low = {"near": 1, "to": 400}
    high = {"near": 1, "from": 600}
    unit = unit_from(
        SIZE,
        interior=two_columns(
            loose(count=None, at=[200], holes=low), loose(count=None, at=[700], holes=high)
        ),
    )
    (divider,) = of_role(unit, Role.DIVIDER)
    assert {hole.depth for hole in holes(divider)} == {10.0}


def test_holes_in_the_way_of_a_far_housing_are_left_out() -> None:
    """With 10 asked for there is no room behind the housing from 400 to 418; the shelf stands
    elsewhere.  A hole at 421.5 would leave 1 of wood beside it, one at 389.5 leaves 8."""
    fixed = {"at": [400], "ends": "housed"}
    row = loose(count=None, at=[200], holes={"depth": 10})
    unit = unit_from(SIZE, interior=two_columns(row, fixed))
    (divider,) = of_role(unit, Role.DIVIDER)
    drilled = {z - 18 for _, z in places(divider)}
    assert drilled == {197.5 + 32 * step for step in range(-4, 22)} - {421.5}
    assert len(places(of_role(unit, Role.SIDE)[0])) == 2 * 26


def test_the_rear_row_keeps_clear_of_a_back_groove() -> None:
    """Groove from 284 on: a hole of 5 with 3 of wood beside it is at 278.5 at the most."""
    unit = unit_from(
        SIZE,
        interior={"shelves": loose(holes={"setback": 4, "near": 0})},
        back={"stock": "thin", "fixing": "grooved"},
    )
    for side in of_role(unit, Role.SIDE):
        assert max(y for y, _ in places(side)) == 278.0
    assert check_solids(unit) == ()


def test_rows_behind_a_door_keep_clear_of_its_hinges() -> None:
    """Hinge plates are screwed into holes 37 behind the door; the front row stands beside them."""
    unit = unit_from(SIZE, interior={"doors": {"stock": "ply"}, "shelves": loose()})
    left, right = of_role(unit, Role.SIDE)
    assert len(holes(left)) > len([y for y, _ in places(right) if y == 263.0]) + 6
    for side in (left, right):
        _apart(side)
    _carried(unit)
    assert check_solids(unit) == ()


def wishes_nobody_can_make() -> list[Any]:
    where = "interior.shelves.holes"
    return [
        ({"pitch": 7}, f"{where}.pitch: holes of 5 mm that are 7 mm apart"),
        ({"setback": 148}, f"{where}.setback: rows set back by 148 mm"),
        ({"depth": 16}, f"{where}.depth: holes 16 mm deep don't go into SD1"),
        ({"from": 1}, f"{where}.from: a hole at 1 mm isn't in its space"),
        ({"from": 3}, f"{where}.from: the hole at 3 mm above the floor of the space meets a reba"),
        ({"to": 963}, f"{where}.to: a hole at 963 mm isn't in its space"),
        ({"from": 500, "to": 400}, f"{where}.to: a row can't begin at 500 mm and end at 400 mm"),
        ({"from": 700}, "interior.shelves: the shelf at 227.5 mm has no hole near it"),
        (
            {"pitch": 500},
            "interior.shelves: with holes 500 mm apart, the shelf at 718.5 mm comes on",
        ),
    ]


@pytest.mark.parametrize(("row", "told"), wishes_nobody_can_make())
def test_what_nobody_can_drill_is_told_with_its_place(row: dict[str, Any], told: str) -> None:
    said = problems_of(
        SIZE, interior={"shelves": loose(holes=row)}, carcass={"stock": "ply", "corners": "housed"}
    )
    assert len(said) == 1
    assert said[0].startswith(told)


def test_more_that_is_told() -> None:
    said = problems_of(SIZE, interior={"shelves": {"count": 2, "holes": {"near": 1}}})
    assert said == ["interior.shelves.holes: fixed shelves rest in no holes"]
    said = problems_of(SIZE + THIN, carcass={"stock": "slim"}, interior={"shelves": loose()})
    assert said == [
        "interior.shelves.holes.depth: holes 6 mm deep don't go into SD1, which is 8 mm thick: "
        "3 mm of wood must be left"
    ]


rows = st.fixed_dictionaries(
    {
        "pitch": st.sampled_from([20, 25, 32]),
        "diameter": st.sampled_from([5, 6]),
        "depth": st.sampled_from([None, 8, 12]),
        "near": st.sampled_from([None, 0, 2]),
        "setback": st.sampled_from([None, 5, 20, 60]),
        "sleeves": st.booleans(),
    }
)
contents = st.one_of(
    st.builds(lambda row, count: loose(count=count, holes=row), rows, st.integers(1, 4)),
    st.builds(lambda count: {"count": count, "ends": "housed"}, st.integers(1, 4)),
)


@st.composite
def units(draw: st.DrawFn) -> dict[str, Any]:
    columns = [
        {"width": "1 share", "shelves": each}
        if each
        else {
            "width": "1 share",
            "rows": [{"height": "1 share", "shelves": draw(contents)} for _ in range(2)],
        }
        for each in draw(st.lists(st.one_of(st.none(), contents), min_size=2, max_size=3))
    ]
    back = draw(st.sampled_from([None, "rebated", "grooved"]))
    return {
        "size": {
            "width": 1500,
            "height": draw(st.integers(900, 2000)),
            "depth": draw(st.integers(180, 400)),
        },
        "carcass": {"stock": "ply", "corners": draw(st.sampled_from(["butted", "housed"]))},
        "interior": {"columns": columns},
        "back": back and {"stock": "thin", "fixing": back},
    }


@settings(max_examples=60)
@given(units())
def test_holes_keep_clear_of_each_other_and_of_everything_else(wish: dict[str, Any]) -> None:
    """Discs and rectangles by shapely; depths overlap where less than 3 is left between them."""
    try:
        unit = unit_from("unit: mm\n", **wish)
    except ProblemsError as error:
        assert all(problem.where and problem.remedy for problem in error.problems)
        return
    for part in unit.parts:
        if part.role in (Role.SIDE, Role.DIVIDER):
            _apart(part)
    _carried(unit)


def _apart(part: Part) -> None:
    thickness = part.blank.thickness
    taken = []
    for working in part.workings:
        if isinstance(working, Hole):
            assert working.depth is not None
            disc = shapely.Point(working.position).buffer(working.diameter / 2)
            face = working.surface is Surface.FACE
            span = (thickness - working.depth, thickness) if face else (0.0, working.depth)
            taken.append((disc, span))
            assert thickness - working.depth >= 3.0 - 1e-6
        elif isinstance(working, Groove | Housing | Rebate):
            box = working.bounds(part.blank.size)
            taken.append((shapely.box(*box.low[:2], *box.high[:2]), (box.low[2], box.high[2])))
    for (one, span), (other, reach) in combinations(taken, 2):
        if _round(one) or _round(other):
            near = one.distance(other) < 3.0 - 1e-2
            deep = min(span[1], reach[1]) - max(span[0], reach[0]) > -3.0 + 1e-6
            assert not (near and deep)


def _round(shape: shapely.Polygon) -> bool:
    return len(shape.exterior.coords) > 5


def _carried(unit: Unit) -> None:
    """Every adjustable shelf has four holes half a pin below its underside, under its length."""
    resting = {joint.second for joint in unit.joints if joint.kind == "resting on pins"}
    for ref in resting:
        bounds = unit.part(ref).bounds()
        for joint in unit.joints:
            if joint.second == ref and joint.fixings:
                radius = float(joint.fixings[0].size.split()[0]) / 2
                under = [
                    y
                    for y, z in places(unit.part(joint.first))
                    if abs(z + radius - bounds.low[2]) < 1e-3 and bounds.low[1] < y < bounds.high[1]
                ]
                assert len(under) >= 2


@pytest.mark.parametrize(("unit_of", "play"), [("mm", 1.0), ("in", 25.4 / 32)])
def test_a_loose_shelf_has_play_all_round(unit_of: str, play: float) -> None:
    """Between a face frame and a back let in a shelf as deep as the clear space binds: it has as
    much play to both as at its ends, and no joint with the frame (common practice, no source)."""
    unit = unit_from(
        "size: {width: 800 mm, height: 1000 mm, depth: 300 mm}\n",
        unit=unit_of,
        stock={
            "ply": {"kind": "sheet", "material": "birch plywood", "thickness": "18 mm"},
            "thin": {"kind": "sheet", "material": "birch plywood", "thickness": "6 mm"},
            "ash": {"kind": "board", "material": "ash", "thickness": "22 mm"},
        },
        back={"stock": "thin", "fixing": "rebated"},
        face_frame={"stock": "ash", "width": "40 mm"},
        interior={"shelves": {"count": 2, "fixed": False}},
    )
    (back,) = of_role(unit, Role.BACK)
    for shelf in of_role(unit, Role.SHELF):
        box = shelf.bounds()
        assert box.low[1] == pytest.approx(play)
        assert box.high[1] == pytest.approx(back.bounds().low[1] - play)
        assert {each.kind for each in unit.joints if shelf.ref in (each.first, each.second)} == {
            JointKind.RESTING
        }
        kept = {c.first: c.least for c in unit.clearances if c.second == shelf.ref}
        assert {back.ref, *(each.ref for each in of_role(unit, Role.STILE))} <= set(kept)
        assert all(least == pytest.approx(play) for least in kept.values())
    assert check_solids(unit) == ()


def test_a_loose_shelf_without_a_frame_begins_at_the_front() -> None:
    unit = unit_from(
        SIZE,
        back={"stock": "thin", "fixing": "applied"},
        interior={"shelves": loose(clearance=2)},
    )
    (back,) = of_role(unit, Role.BACK)
    for shelf in of_role(unit, Role.SHELF):
        assert (shelf.bounds().low[1], shelf.bounds().high[1]) == (0.0, back.bounds().low[1] - 2)
