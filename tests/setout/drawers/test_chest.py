"""Drawers: figures worked out by hand, and solids that clear each other."""

from __future__ import annotations

from itertools import pairwise, product
from typing import Any, get_args

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.cross_grain import cross_grain
from rodwright.checks.findings import Severity
from rodwright.checks.motions import motions
from rodwright.checks.phrases import named
from rodwright.checks.rules import Rule
from rodwright.handover.lists import parts_list
from rodwright.unit import Fixing, Groove, Hole, JointKind, Mortise, Part, Role, Slide, Unit
from rodwright.wishes.joints import JointWord

SIZE = "size: {width: 536, height: 736, depth: 506}\n"
"""Clear inside in 18 mm stock, before a back of 6: 500 x 700 x 500."""
BACK = {"stock": "thin"}
FRAME = {"stock": "ash", "width": 45, "corners": "butted"}
THIN = (
    "size: {width: 524, height: 724, depth: 506}\n"
    + """
stock:
  ply: {kind: sheet, material: birch plywood, thickness: 12}
  thin: {kind: sheet, material: birch plywood, thickness: 6}
"""
)
"""The same clear inside in 12 mm stock."""


def _unit(text: str = SIZE, frame: bool = False, **drawers: Any) -> Unit:
    more: dict[str, Any] = {"face_frame": FRAME} if frame else {}
    more["carcass"] = {"stock": "ply"}
    return unit_from(text, interior={"drawers": {"count": 1} | drawers}, back=BACK, **more)


def _told(text: str = SIZE, frame: bool = False, **drawers: Any) -> list[str]:
    more = {"face_frame": FRAME} if frame else {}
    wish = drawers if "fronts" in drawers else {"count": 1} | drawers
    return problems_of(text, interior={"drawers": wish}, back=BACK, **more)


def _sides(unit: Unit) -> list[Part]:
    return of_role(unit, Role.DRAWER_SIDE)


def _box_width(unit: Unit) -> float:
    left, right = _sides(unit)[:2]
    return right.bounds().high[0] - left.bounds().low[0]


def _fixings(unit: Unit) -> list[Fixing]:
    return [fixing for joint in unit.joints for fixing in joint.fixings]


def test_side_slides_take_half_an_inch_a_side() -> None:
    """Makers of ball-bearing slides publish 12.7 mm a side: 500 - 2 x 12.7 = 474.6."""
    unit = _unit()
    assert _box_width(unit) == pytest.approx(474.6)
    assert _sides(unit)[0].bounds().low[0] == pytest.approx(18 + 12.7)
    assert _box_width(_unit(slides={"clearance": 13})) == pytest.approx(474.0)


def test_under_slides_take_their_deduction_off_the_inside() -> None:
    """Inside width = opening less 42 mm, with sides up to 16 mm, is what makers publish (from
    memory)."""
    unit = _unit(THIN, slides={"kind": "under"})
    assert _box_width(unit) - 2 * 12 == pytest.approx(500 - 42)
    assert _box_width(_unit(slides={"kind": "under", "deduction": 45})) - 36 == pytest.approx(455)
    (groove,) = {each.position for each in _sides(unit)[0].workings if isinstance(each, Groove)}
    assert groove == 13.0


def test_slides_come_in_steps_of_50_mm_or_2_in() -> None:
    """From the rear of an 18 mm inset front to the back are 482: less 10 behind, 450 go in."""
    unit = _unit()
    assert {part.blank.length for part in _sides(unit)} == {450.0}
    pair = Fixing("pair of side-mounted drawer slides", 1, "450 mm", on="DRS1 and DRS2")
    assert pair in _fixings(unit)
    # An overlay front stands before the carcass: 490 of 500 are left.
    assert _sides(_unit(hung="overlay", slides={"rear": 0}))[0].blank.length == 500.0
    inches = unit_from(
        "unit: in\nsize: {width: 21, height: 29, depth: 20}\n"
        "stock:\n  ply: {kind: sheet, material: birch plywood, thickness: 3/4}\n",
        interior={"drawers": {"count": 1}},
    )
    # 20 in less 3/4 in of front and 10 mm are 18.86 in: 18 in slides.
    assert _sides(inches)[0].blank.length == pytest.approx(18 * 25.4)


def test_box_height_is_the_front_less_its_clearances() -> None:
    """700 less 2 mm at either end and twice between three fronts: (700 - 8) / 3 each."""
    unit = _unit(count=3, slides={"below": 14, "above": 20})
    front = (700 - 8) / 3
    assert [part.bounds().size[2] for part in of_role(unit, Role.DRAWER_FRONT)] == pytest.approx(
        [front] * 3
    )
    assert {round(part.blank.width, 6) for part in _sides(unit)} == {round(front - 34, 6)}
    lowest = min(part.bounds().low[2] for part in _sides(unit))
    assert lowest == pytest.approx(18 + 2 + 14)


def test_fronts_are_given_from_the_top_down() -> None:
    unit = unit_from(
        SIZE, interior={"drawers": {"fronts": [120, "1 share", "2 shares"], "gap": 3}}, back=BACK
    )
    high = [part.bounds() for part in of_role(unit, Role.DRAWER_FRONT)]
    # 700 - 2 x 3 - 2 x 3 - 120 = 568, in three shares.
    assert [box.size[2] for box in high] == pytest.approx([120, 568 / 3, 2 * 568 / 3])
    assert high[0].high[2] == pytest.approx(18 + 700 - 3)


def test_overlay_fronts_leave_half_the_gap_to_their_neighbours() -> None:
    drawers = {"drawers": {"count": 2, "hung": "overlay", "gap": 4}}
    columns = {"columns": [{"width": "1 share"} | drawers, {"width": "1 share"} | drawers]}
    unit = unit_from("size: {width: 1018, height: 736, depth: 506}\n", interior=columns)
    boxes = [part.bounds() for part in of_role(unit, Role.DRAWER_FRONT)]
    # Over the sides up to 2 mm from their outer faces; over the divider 2 mm each from its middle.
    assert {(box.low[0], box.high[0]) for box in boxes} == {(2.0, 507.0), (511.0, 1016.0)}
    assert (max(box.high[2] for box in boxes), min(box.low[2] for box in boxes)) == (734.0, 2.0)
    assert {(box.low[1], box.high[1]) for box in boxes} == {(-20.0, -2.0)}
    narrow = _unit(hung="overlay", overlay=10)
    (front,) = of_role(narrow, Role.DRAWER_FRONT)
    assert (front.bounds().low[0], front.bounds().high[0]) == (8.0, 528.0)
    assert check_solids(unit) == check_solids(narrow) == ()


def test_the_bottom_slides_in_under_the_back() -> None:
    """12 mm stock has grooves of 4 mm, of which the bottom leaves 1 mm free: 3 in each side."""
    unit = _unit(THIN)
    (bottom,) = of_role(unit, Role.DRAWER_BOTTOM)
    front, back = of_role(unit, Role.DRAWER_END)
    box, side = bottom.bounds(), _sides(unit)[0].bounds()
    inside = 500 - 2 * 12.7 - 2 * 12
    assert box.size[0] == pytest.approx(inside + 6)
    assert box.high[1] == side.high[1] == back.bounds().high[1]
    assert box.low[1] == pytest.approx(side.low[1] + 12 - 3)
    assert box.low[2] == pytest.approx(side.low[2] + 10)
    assert back.bounds().low[2] == pytest.approx(box.high[2])
    assert front.bounds().low[2] == side.low[2]
    held = _unit(THIN, bottom={"held": "all_round"})
    (caught,) = of_role(held, Role.DRAWER_BOTTOM)
    assert caught.bounds().high[1] == pytest.approx(_sides(held)[0].bounds().high[1] - 12 + 3)


def test_a_face_frame_inside_the_carcass_is_packed_out() -> None:
    """Stiles of 45 reach 27 past the faces of 18 mm sides."""
    unit = _unit(frame=True)
    packers = of_role(unit, Role.PACKER)
    assert {part.bounds().size[0] for part in packers} == {27.0}
    assert len(packers) == 6
    assert _box_width(unit) == pytest.approx(536 - 90 - 25.4)
    assert {(a.first, a.least) for a in unit.clearances} == {(p.ref, 12.7) for p in packers}


def test_drawers_on_runners_stand_on_the_floor_or_on_strips() -> None:
    unit = _unit(count=2, slides={"kind": "runners"})
    runners = of_role(unit, Role.RUNNER)
    assert [part.name for part in runners] == ["Drawer runner"] * 2
    assert _box_width(unit) == pytest.approx(498.0)
    upper, lower = _sides(unit)[0].bounds(), _sides(unit)[2].bounds()
    assert lower.low[2] == 18.0
    assert {part.bounds().high[2] for part in runners} == {upper.low[2]}
    assert check_solids(unit) == ()


def test_under_a_rail_kickers_and_on_it_runners() -> None:
    rows = {
        "rows": [
            {"height": "1 share", "shelves": {"count": 1}},
            {"height": 150, "drawers": {"count": 1, "slides": {"kind": "runners"}}},
            {"height": 150, "drawers": {"count": 1, "slides": {"kind": "runners"}}},
        ],
        "between": {"kind": "rail"},
    }
    unit = unit_from(SIZE, interior=rows, back=BACK)
    rails = of_role(unit, Role.CARCASS_RAIL)
    strips = [part.bounds() for part in of_role(unit, Role.RUNNER)]
    # Kickers behind the upper rail, runners behind the lower one, flush with them.
    assert {(box.low[2], box.high[2]) for box in strips} == {
        (rail.bounds().low[2], rail.bounds().high[2]) for rail in rails
    }
    assert {box.low[1] for box in strips} == {rails[0].bounds().high[1]}
    assert len(strips) == 4
    assert check_solids(unit) == ()


@pytest.mark.parametrize(
    ("frame", "hung", "kind", "held"),
    list(
        product(
            (False, True),
            ("inset", "overlay"),
            ("side", "under", "runners"),
            ("from_rear", "all_round"),
        )
    ),
)
def test_solids_are_clean_and_drawers_come_out(
    frame: bool, hung: str, kind: str, held: str
) -> None:
    handle = {"name": "bow handle", "spacing": 96}
    unit = _unit(
        frame=frame,
        count=2,
        hung=hung,
        slides={"kind": kind},
        bottom={"held": held},
        handle=handle,
        front_stock="ash",
    )
    assert check_solids(unit) == ()
    grave = (Severity.ERROR, Severity.WARNING)
    said = {each.rule for each in check_parts(unit) if each.severity in grave}
    # The fronts are of solid ash, some 350 high; overlay ones hang just over the floor.
    low = {Rule.NEAR_FLOOR} if hung == "overlay" else set()
    assert said == {Rule.TIPS_WITH_DRAWERS_OUT, Rule.FRONT_SWELLS_SHUT, *low}
    slides = [each for each in unit.motions if isinstance(each, Slide)]
    assert [len(slide.refs) for slide in slides] == [6, 6]
    assert {unit.part(ref).group for ref in slides[1].refs} == {"Drawer 2"}


@pytest.mark.parametrize("corners", get_args(JointWord))
def test_every_corner_joint(corners: str) -> None:
    """Boxes are put together before they go in, so a side close by hinders no screw."""
    slides = {"kind": "runners", "clearance": 1}
    unit = _unit(corners=corners, bottom={"held": "all_round"}, slides=slides)
    assert check_solids(unit) == ()


@settings(max_examples=40, derandomize=True)
@given(
    width=st.floats(160, 1200),
    height=st.floats(200, 1200),
    depth=st.floats(150, 700),
    frame=st.booleans(),
    hung=st.sampled_from(("inset", "overlay")),
    kind=st.sampled_from(("side", "under", "runners")),
    count=st.integers(1, 4),
)
def test_boxes_stay_inside_and_clear_by_what_slides_take(
    width: float, height: float, depth: float, frame: bool, hung: str, kind: str, count: int
) -> None:
    text = f"size: {{width: {width}, height: {height}, depth: {depth}}}\n"
    wish = {"count": count, "hung": hung, "slides": {"kind": kind}}
    if _told(text, frame, **wish):
        return
    unit = _unit(text, frame, **wish)
    edge = 45.0 if frame else 18.0
    clear = {"side": 12.7, "under": 42 / 2 - 18, "runners": 1.0}[kind]
    for slide in unit.motions:
        assert isinstance(slide, Slide)
        front, *box = (unit.part(ref).bounds() for ref in slide.refs)
        assert min(each.low[0] for each in box) == pytest.approx(edge + clear)
        assert max(each.high[0] for each in box) == pytest.approx(width - edge - clear)
        assert max(each.high[1] for each in box) <= depth - 6 - 10 + 1e-6
        assert front.low[2] - 20 < min(each.low[2] for each in box)
        assert min(each.low[2] for each in box) >= edge - 1e-6
        assert max(each.high[2] for each in box) <= min(front.high[2], height - edge)
        # Drawn out, the whole box stands before what it passed through, or two thirds of it.
        out = -slide.travel[1] / (max(each.high[1] for each in box) - box[0].low[1])
        assert out == pytest.approx(2 / 3 if kind == "runners" else 1.0)
    assert {each.rule for each in motions(unit)} <= {Rule.NEAR_FLOOR}


def test_handles_are_drilled_through_front_and_box() -> None:
    unit = _unit(count=1, handle={"name": "bow handle", "spacing": 128, "hole": 6})
    (front,) = of_role(unit, Role.DRAWER_FRONT)
    end = of_role(unit, Role.DRAWER_END)[0]

    def places(part: Part) -> set[tuple[float, float]]:
        found = set()
        for hole in part.workings:
            if isinstance(hole, Hole) and hole.diameter == 6:
                x, _, z = part.placement.to_unit((hole.position[0], hole.position[1], 0.0))
                found.add((round(x, 6), round(z, 6)))
        return found

    assert places(front) == places(end) == {(268.0 - 64, 368.0), (268.0 + 64, 368.0)}
    assert unit.fixings[:2] == (
        Fixing("bow handle", 1, "2 holes 128 mm apart", "6 mm, right through", "DRF1"),
        # Through a front and a box end of 18 each, and 5 into the handle at least.
        Fixing("handle screw", 2, "M4 x 45 mm", "through 36 mm", "DRF1"),
    )


def test_solid_fronts_are_held_at_their_lower_edge_and_slide_above() -> None:
    """White ash moves 0.00274 of its width a percent, tangentially (Wood Handbook, FPL-GTR-282,
    table 13-5).  From 6 to 12 % that is 10.19 mm over the 620 mm between the rows of screws, so a
    slot for 4 mm screws has to be 4.5 + 2 x 10.19 long to let it go either way."""
    unit = _unit(front_stock="ash")
    end = of_role(unit, Role.DRAWER_END)[0]
    slots = [each for each in end.workings if isinstance(each, Mortise)]
    holes = [each for each in end.workings if isinstance(each, Hole)]
    apart = slots[0].position[1] + slots[0].extent[1] / 2 - holes[0].position[1]
    assert apart == pytest.approx(620)
    assert {each.extent for each in slots} == {(4.5, 25.0)}
    assert 24 < 4.5 + 2 * 0.00274 * 6 * apart < 25
    assert len(slots) == len(holes) == 3
    (joint,) = [each for each in unit.joints if each.kind is JointKind.BUTTONED]
    assert Fixing("washer", 3, "for 4 mm screws") in joint.fixings
    assert not list(cross_grain(unit))
    # Ends of the same wood move with the front, and need no slots.
    same = _unit(front_stock="ash", stock="ash")
    assert not any(isinstance(each, Mortise) for part in same.parts for each in part.workings)
    assert check_solids(unit) == check_solids(same) == ()


def test_behind_a_door_drawers_begin_at_its_setback() -> None:
    interior = {"doors": {"hung": "inset"}, "drawers": {"count": 2, "packing": 25}}
    unit = unit_from(SIZE, interior=interior, back=BACK)
    door = of_role(unit, Role.DOOR)[0].bounds()
    fronts = [part.bounds() for part in of_role(unit, Role.DRAWER_FRONT)]
    assert {box.low[1] for box in fronts} == {door.high[1] + 2.0}
    assert {box.low[0] for box in fronts} == {18.0 + 25 + 2}
    # Behind the plates of the door's hinges, which reach 37 + 32 / 2 behind its rear.
    assert min(part.bounds().low[1] for part in of_role(unit, Role.PACKER)) > door.high[1] + 53
    assert check_solids(unit) == ()


@pytest.mark.parametrize(
    ("wish", "place", "says"),
    [
        ({"fronts": [300, 300]}, "fronts", "too little"),
        ({"fronts": [600, 300]}, "fronts", "too much"),
        ({"fronts": [696, "1 share"]}, "fronts", "nothing is left to share"),
        ({"count": 1, "fronts": ["1 share"]}, "", "`count` and `fronts`"),
        ({"count": 50, "gap": 15}, "count", "50 fronts with gaps of 15 mm don't fit"),
        ({"gap": 250}, "gap", "leave nothing of fronts in an opening of 500 mm x 700 mm"),
        ({"count": 14}, "count", "too low"),
        ({"fronts": [40, "1 share"]}, "fronts.0", "too low"),
        ({"slides": {"length": 550}}, "slides.length", "drawers 550 mm deep don't go into"),
        ({"slides": {"rear": 450}}, "slides", "too little for drawers"),
        ({"slides": {"clearance": 220}}, "", "too narrow"),
        ({"slides": {"kind": "under", "deduction": 37}}, "slides.deduction", "no room there"),
        ({"slides": {"kind": "under", "clearance": 5}}, "slides.clearance", "says nothing"),
        ({"slides": {"kind": "runners", "height": 35}}, "slides.height", "says nothing"),
        ({"slides": {"deduction": 42}}, "slides.deduction", "says nothing"),
        ({"slides": {"kind": "runners", "below": 9}}, "slides.below", "says nothing"),
        ({"bottom": {"groove": 10}}, "bottom.groove", "more than half of 18 mm"),
        ({"bottom": {"groove": 2}}, "bottom.groove", "don't hold a drawer's bottom"),
        ({"stock": "thin"}, "stock", "too shallow"),
        ({"stock": "oack"}, "stock", "no stock is called"),
        ({"bottom": {"stock": "oack"}}, "bottom.stock", "no stock is called"),
        ({"front_thickness": 12}, "front_thickness", "can't come out of `ply`"),
        ({"overlay": 10}, "overlay", "inset fronts cover nothing"),
        ({"bumper": 1}, "bumper", "inset fronts cover nothing"),
        ({"hung": "overlay", "overlay": 18}, "overlay", "there are 17 mm"),
        ({"hung": "overlay", "packing": 18}, "packing", "says nothing"),
        ({"hung": "overlay", "setback": 18}, "setback", "says nothing"),
        ({"setback": 275}, "slides", "too little for drawers"),
        ({"handle": {"spacing": 500}}, "handle", "don't go into a front"),
        ({"handle": {"spacing": 455}}, "handle", "where the side of the box stands"),
        ({"corners": "mitred"}, "corners", "no bottom goes in under it"),
    ],
)  # fmt: skip
def test_what_cannot_be_made_is_told_once_with_its_place(
    wish: dict[str, Any], place: str, says: str
) -> None:
    (told,) = _told(**wish)
    where, said = told.split(": ", 1)
    assert where == "interior.drawers" + (f".{place}" if place else "")
    assert says in said


@pytest.mark.parametrize("door", ["inset", "overlay"])
def test_a_handle_needs_room_behind_a_door(door: str) -> None:
    knob = {"name": "knob", "projection": 24}
    interior: dict[str, Any] = {"doors": {"hung": door}, "drawers": {"count": 2, "handle": knob}}
    (told,) = problems_of(SIZE, interior=interior)
    assert told.startswith("interior.drawers.handle: a knob that stands out 24 mm has no room")
    interior["drawers"]["setback"] = 24
    unit = unit_from(SIZE, interior=interior, back=BACK)
    door_rear = of_role(unit, Role.DOOR)[0].bounds().high[1]
    fronts = {part.bounds().low[1] for part in of_role(unit, Role.DRAWER_FRONT)}
    assert fronts == {max(0.0, door_rear + (2 if door == "inset" else 0)) + 24}


@pytest.mark.parametrize("door", ["inset", "overlay"])
def test_overlay_fronts_have_no_room_behind_a_door(door: str) -> None:
    interior = {"doors": {"hung": door}, "drawers": {"count": 2, "hung": "overlay"}}
    (told,) = problems_of(SIZE, interior=interior)
    assert told == "interior.drawers.hung: overlay fronts have no room behind a door"


def test_fixings_of_a_corner_keep_clear_of_the_groove() -> None:
    """A box of 94 - 24 = 70 mm has its bottom's groove from 10 to 16: 8 mm dowels at their usual
    place, a quarter of the height from the edge, would run into it."""
    unit = unit_from(
        SIZE, interior={"drawers": {"fronts": [94, "1 share"], "corners": "dowelled"}}, back=BACK
    )
    side = _sides(unit)[0]
    heights = [
        hole.position[1]
        for hole in side.workings
        if isinstance(hole, Hole) and hole.position[0] < 18
    ]
    assert side.blank.width == 70.0
    assert min(heights) - 4 >= 16 + 3
    assert check_solids(unit) == ()
    low: dict[str, Any] = {"fronts": [90, "1 share"], "corners": "dowelled"}
    (told,) = _told(**low)
    assert told.startswith("interior.drawers.corners")


def test_stock_that_is_not_there_is_told_once_without_a_back() -> None:
    (told,) = problems_of(SIZE, interior={"drawers": {"count": 1, "stock": "oack"}})
    assert told.startswith("interior.drawers.stock: ")


def test_in_a_face_frame_each_stack_needs_members_round_it() -> None:
    rows = {"rows": [{"height": 300, "drawers": {"count": 1}}, {"height": "1 share"}]}
    (told,) = problems_of(SIZE, interior=rows, face_frame=FRAME)
    assert told.startswith("interior.rows.0.drawers: ") and "no member below" in told
    assert not problems_of(SIZE, interior=rows, face_frame=FRAME | {"mid_rails": 30})


def test_marks_and_names_are_words_of_the_trade() -> None:
    """DR for drawer, then front, side, end or bottom: the words that the names end with."""
    unit = _unit(bottom={"held": "all_round"})
    marks = {part.role: part.ref.rstrip("0123456789") for part in unit.parts}
    assert marks[Role.DRAWER_FRONT] == "DRF"
    assert marks[Role.DRAWER_SIDE] == "DRS"
    assert marks[Role.DRAWER_END] == "DRE"
    assert marks[Role.DRAWER_BOTTOM] == "DRB"
    names = {row.name for row in parts_list(unit) if row.refs[0].startswith("DR")}
    assert names == {
        "Drawer front", "Drawer side", "Front drawer end", "Back drawer end", "Drawer bottom"
    }  # fmt: skip
    (front,) = of_role(unit, Role.DRAWER_FRONT)
    assert named(front) == "Drawer front of drawer 1 (DRF1)"


@pytest.mark.parametrize(
    ("more", "said"),
    [
        ({}, True),
        ({"carcass": {"stock": "ply", "bottom_height": 3.9}}, True),
        ({"carcass": {"stock": "ply", "bottom_height": 4}}, False),
        ({"base": {"kind": "plinth", "height": 60}}, False),
    ],
)
def test_fronts_just_over_the_floor_are_told(more: dict[str, Any], said: bool) -> None:
    """An overlay front covers the bottom but for half a gap of 2: its edge is 1 over the floor."""
    wish = {"drawers": {"count": 2, "hung": "overlay"}}
    unit = unit_from(SIZE, interior=wish, back=BACK, **more)
    found = [each for each in check_parts(unit) if each.rule is Rule.NEAR_FLOOR]
    assert bool(found) is said
    if not more:
        assert (found[0].figure, found[0].limit) == (pytest.approx(1.0), 5.0)
        assert "drawer 2 (DRF2)" in found[0].message
        assert "4 mm higher" in found[0].remedy and "base" in found[0].remedy


@pytest.mark.parametrize("kind", ["side", "under", "runners"])
@pytest.mark.parametrize("bumper", [None, 3.5, 0])
def test_overlay_fronts_close_against_bumpers(bumper: float | None, kind: str) -> None:
    """2 mm unless said (common practice, no source): so far the front stands before the carcass,
    and its box begins behind it."""
    wish = {} if bumper is None else {"bumper": bumper}
    unit = _unit(hung="overlay", count=2, slides={"kind": kind}, **wish)
    thick = 2.0 if bumper is None else bumper
    for front in of_role(unit, Role.DRAWER_FRONT):
        assert front.bounds().high[1] == pytest.approx(-thick)
    assert {side.bounds().low[1] for side in _sides(unit)} == {-thick}
    bought = [each for each in unit.fixings if each.name == "bumper"]
    assert [each.count for each in bought] == ([2, 2] if thick else [])
    fronts = [front.ref for front in of_role(unit, Role.DRAWER_FRONT)]
    assert [each.on for each in bought] == (fronts if thick else [])
    assert check_solids(unit) == ()


SLIDE = 45.0
"""Height of ball-bearing slides at the sides of a box, mm (from memory)."""


@pytest.mark.parametrize("kind", ["side", "under"])
@pytest.mark.parametrize("count", [1, 3])
def test_packers_are_fixed_by_themselves_and_slides_go_across_them(kind: str, count: int) -> None:
    """They reach past every slide above and below, and each has two screws of its own at least;
    the slides are carried at their first hole (37 from the front, common practice), at their
    rear, and nowhere more than 300 apart."""
    unit = _unit(frame=True, count=count, slides={"kind": kind})
    packers = [part.bounds() for part in of_role(unit, Role.PACKER)]
    for side in _sides(unit):
        middle = side.bounds().centre[2]
        assert all(box.low[2] < middle - SLIDE / 2 - 15 for box in packers)
        assert all(box.high[2] > middle + SLIDE / 2 + 15 for box in packers)
    for part in of_role(unit, Role.PACKER):
        (held,) = (
            each
            for each in unit.joints
            if each.kind is JointKind.SCREWED and each.first == part.ref
        )
        assert held.second in ("SD1", "SD2")
        assert held.fixings[0].count >= 2
    ys = sorted({box.low[1] for box in packers})
    assert ys[0] < 37 < ys[0] + 18
    length = _sides(unit)[0].blank.length
    assert ys[-1] < length - 37 < ys[-1] + 18
    assert all(after - before - 18 <= 300 for before, after in pairwise(ys))
    assert check_solids(unit) == ()


@pytest.mark.parametrize(("wish", "least"), [({}, 45.0), ({"slides": {"height": 37}}, 37.0)])
def test_a_box_is_no_lower_than_the_slides_at_its_sides(wish: dict[str, Any], least: float) -> None:
    """A front loses 12 below and 12 above its box, so that boxes are that much lower."""
    fronts = [f"{least + 24} mm", "1 share"]
    assert _sides(_unit(fronts=fronts, count=None, **wish))[0].blank.width == pytest.approx(least)
    fronts = [f"{least + 23.5} mm", "1 share"]
    (told,) = _told(fronts=fronts, **wish)
    assert told.startswith(f"interior.drawers.fronts.0: behind a front {least + 23.5:g} mm high")
    assert f"a box of {least - 0.5:g} mm is lower than the slides" in told
    assert f"{least:g} mm high" in told
    if not wish:
        assert not _told(fronts=fronts, slides={"kind": "under"})
        assert not _told(fronts=fronts, slides={"kind": "runners"})
