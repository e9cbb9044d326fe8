"""Cornices against sizes worked out by hand; how one is made is common practice, no source."""

from __future__ import annotations

from itertools import product
from math import ceil
from typing import Any

import pytest

from kit.specs import STOCK, of_role, problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.unit import Joint, JointKind, Mitre, Role, Surface, Unit

SIZE = "size: {width: 800, height: 2000, depth: 400}\n"
FRAME = {"stock": "ash", "width": 60}
ALCOVE = "opening: {width: 860, height: 2100, depth: 420}\n"
LAPPED = {"stock": "ash", "height": 80}


def test_a_lapped_cornice_goes_round_the_front_and_both_ends() -> None:
    """Boards 22 thick on 800 x 400: 844 over the long points in front, 422 at the ends; 30 of
    80 stand above a carcass of 1970."""
    unit = unit_from(SIZE, cornice=LAPPED | {"rise": 30})
    front, *returns = of_role(unit, Role.CORNICE)
    assert {part.blank.length for part in of_role(unit, Role.SIDE)} == {1970.0}
    assert front.blank.size == (844.0, 80.0, 22.0)
    assert front.bounds().low == (-22.0, -22.0, 1920.0)
    assert front.workings == (
        Mitre(Surface.FAR_END, 45.0, Surface.FACE),
        Mitre(Surface.NEAR_END, 45.0, Surface.FACE),
    )
    assert {part.blank.size for part in returns} == {(422.0, 80.0, 22.0)}
    assert returns[0].shape == returns[1].shape
    assert [part.bounds().low[0] for part in returns] == [-22.0, 800.0]
    mitres = [joint for joint in unit.joints if joint.kind is JointKind.MITRE]
    assert len(mitres) == 2
    assert unit.size == pytest.approx((844.0, 2000.0, 422.0))


def test_it_stands_in_front_of_a_face_frame_and_reaches_behind_an_applied_back() -> None:
    unit = unit_from(SIZE, cornice=LAPPED, face_frame=FRAME, back={"stock": "thin"})
    front, left, _ = of_role(unit, Role.CORNICE)
    assert (front.bounds().low[1], front.bounds().high[1]) == (-44.0, -22.0)
    assert left.blank.length == 22.0 + 400.0
    assert left.bounds().high[1] == max(part.bounds().high[1] for part in unit.parts)


def test_a_standing_cornice_takes_its_height_from_the_carcass() -> None:
    wish = LAPPED | {"place": "standing", "projection": 10, "returns": "left"}
    unit = unit_from(SIZE, cornice=wish)
    assert {part.blank.length for part in of_role(unit, Role.SIDE)} == {1920.0}
    front, left = of_role(unit, Role.CORNICE)
    assert front.bounds().low == (-10.0, -10.0, 1920.0)
    assert front.bounds().high == (800.0, 12.0, 2000.0)
    assert left.bounds().high == (12.0, 400.0, 2000.0)


def test_in_an_opening_there_are_no_returns_unless_asked_for() -> None:
    unit = unit_from(ALCOVE, cornice=LAPPED)
    (front,) = of_role(unit, Role.CORNICE)
    assert front.workings == ()
    assert front.blank.length == 860 - 7
    both = unit_from(ALCOVE, cornice=LAPPED | {"returns": "both"}, fit={"sides": 25})
    assert len(of_role(both, Role.CORNICE)) == 3
    assert Rule.LARGER_THAN_OPENING not in {each.rule for each in check_parts(both)}
    assert check_solids(both) == ()


@pytest.mark.parametrize("place", ["lapped", "standing"])
def test_it_reaches_to_walls_that_are_scribed(place: str) -> None:
    """In an opening of 860, 25 from the wall at its left; at the right it ends with the side."""
    unit = unit_from(
        ALCOVE + "fit: {sides: 25}\n",
        cornice=LAPPED | {"place": place},
        scribes={"stock": "ash", "edges": ["left"]},
    )
    (front,) = of_role(unit, Role.CORNICE)
    assert front.blank.length == pytest.approx(810 + 25)
    assert front.bounds().low[0] == pytest.approx(-25.0)
    assert check_solids(unit) == ()


@pytest.mark.parametrize("place", ["lapped", "standing"])
def test_parts_meet_whatever_is_under_it(place: str) -> None:
    for returns, top, frame, back in product(
        ("both", "right", "none"), ("between", "over", "none"), (None, FRAME), (None, "applied")
    ):
        more: dict[str, Any] = {
            "carcass": {"stock": "ply", "top": top},
            "cornice": LAPPED | {"place": place, "returns": returns},
        }
        more["cornice"]["rise" if place == "lapped" else "projection"] = 15
        if frame:
            more["face_frame"] = frame
        else:
            more["lipping"] = {"stock": "ash", "thickness": 8, "edges": ["sides"]}
        if back:
            more["back"] = {"stock": "thin", "fixing": back}
        unit = unit_from(SIZE, **more)
        assert check_solids(unit) == ()
        fixed = {joint.second for joint in unit.joints}
        assert {part.ref for part in of_role(unit, Role.CORNICE)} <= fixed


def _holding(unit: Unit, ref: str) -> list[Joint]:
    """What holds a board: joints with fixings, but for its mitres."""
    return [
        joint
        for joint in unit.joints
        if ref in (joint.first, joint.second)
        and joint.fixings
        and joint.kind is not JointKind.MITRE
    ]


@pytest.mark.parametrize(
    ("depth", "blocks"), [(190, 1), (239, 1), (303, 1), (304, 2), (404, 2), (600, 3)]
)
def test_blocks_behind_a_short_return_keep_a_block_apart(depth: int, blocks: int) -> None:
    """Between the front's 22, a block's own 22 behind it and the rear, 80 of inset and a block of
    60 leave 120, room for a second block and as much between them, from a depth of 304 on."""
    standing = {"stock": "ash", "height": 30, "place": "standing", "returns": "both"}
    size = f"size: {{width: 400, height: 500, depth: {depth}}}\n"
    unit = unit_from(size, cornice=standing | {"projection": 0})
    along = [part for part in of_role(unit, Role.CORNICE) if part.name == "Cornice block"]
    assert len(along) == 2 * blocks
    assert check_solids(unit) == ()


@pytest.mark.parametrize("top", ["between", "over"])
@pytest.mark.parametrize("projection", [0, 9, 11, 21])
def test_boards_that_stand_on_too_little_are_held_by_blocks(projection: int, top: str) -> None:
    """Screws up through the top want 12 of a board 22 thick to stand on it; what stands further
    out gets blocks behind it, of which 30 lie on the top."""
    wish = LAPPED | {"place": "standing"} | ({"projection": projection} if projection else {})
    unit = unit_from(SIZE, cornice=wish, carcass={"stock": "ply", "top": top})
    boards = [part for part in of_role(unit, Role.CORNICE) if part.name != "Cornice block"]
    (panel,) = of_role(unit, Role.TOP)
    front = boards[0].bounds()
    direct = {
        joint.second
        for joint in unit.joints
        if joint.first == panel.ref and joint.kind is JointKind.SCREWED
    }
    assert (boards[0].ref in direct) == (22 - projection >= 12)
    for board in boards:
        assert _holding(unit, board.ref)
    for block in (part for part in of_role(unit, Role.CORNICE) if part not in boards):
        assert block.ref in direct
        low, high = block.bounds().low, panel.bounds().high
        across = [
            min(block.bounds().high[i], high[i]) - max(low[i], panel.bounds().low[i])
            for i in (0, 1)
        ]
        assert min(across) >= 30 - 1e-6
        assert low[2] == front.low[2]
    assert check_solids(unit) == ()
    assert Rule.NOTHING_HOLDS_IT not in {each.rule for each in check_parts(unit)}


def test_without_a_top_a_board_set_out_too_far_is_told() -> None:
    wish = LAPPED | {"place": "standing", "projection": 15}
    carcass = {"stock": "ply", "top": "none"}
    found = [
        each
        for each in check_parts(unit_from(SIZE, cornice=wish, carcass=carcass))
        if each.rule is Rule.NOTHING_HOLDS_IT
    ]
    assert {ref for each in found for ref in each.parts} == {"CN1", "CN2", "CN3"}
    assert "`cornice.projection`" in found[0].remedy


@pytest.mark.parametrize("lipping", [None, {"stock": "ash", "thickness": 8, "edges": ["top"]}])
def test_a_lapped_front_takes_biscuits_in_edges(lipping: dict[str, Any] | None) -> None:
    """No screw is driven from behind a lipping, or along a panel: edges take biscuits."""
    more = {"lipping": lipping} if lipping else {}
    unit = unit_from(SIZE, cornice=LAPPED, carcass={"stock": "ply"}, **more)
    front, *returns = of_role(unit, Role.CORNICE)
    assert {joint.kind for joint in _holding(unit, front.ref)} == {JointKind.BISCUIT}
    for each in returns:
        screwed = [joint for joint in _holding(unit, each.ref) if joint.kind is JointKind.SCREWED]
        assert [unit.part(joint.first).role for joint in screwed] == [Role.SIDE]


def test_a_return_on_a_solid_side_is_screwed_through_slots() -> None:
    """380 of oak across the grain, 380 x 0.00365 x 6 = 8.3 mm, beside a board along it: slots of
    4.5 and twice that."""
    text = SIZE + "stock:\n  oak: {kind: board, material: european oak, thickness: 22}\n"
    unit = unit_from(text, carcass={"stock": "oak"}, cornice={"stock": "oak", "height": 80})
    left = of_role(unit, Role.CORNICE)[1]
    (joint,) = [each for each in _holding(unit, left.ref) if each.first == "SD1"]
    assert joint.kind is JointKind.BUTTONED
    meet = 400 - 0
    assert f"slots 4.5 x {ceil(4.5 + 2 * meet * 0.00365 * 6):g} mm" in joint.fixings[0].pilot
    assert not [
        each
        for each in check_parts(unit)
        if each.rule is Rule.HELD_ACROSS_GRAIN and left.ref in each.parts
    ]


@pytest.mark.parametrize(
    ("text", "cornice", "more", "where"),
    [
        (SIZE, {"stock": "elm"}, {}, "cornice.stock"),
        (SIZE, {"thickness": 25}, {}, "cornice.thickness"),
        (SIZE, {"projection": 5}, {}, "cornice.projection"),
        (SIZE, {"place": "standing", "rise": 5}, {}, "cornice.rise"),
        (SIZE, {"place": "standing", "projection": 22}, {}, "cornice.projection"),
        (SIZE, {"rise": 80}, {}, "cornice.rise"),
        (SIZE, {"height": 1990}, {"base": {"kind": "plinth", "height": 100}}, "cornice.height"),
        (SIZE, {"height": 2000, "place": "standing"}, {}, "cornice.height"),
        (
            SIZE,
            {},
            {"face_frame": FRAME | {"overhang": {"sides": 5}}},
            "cornice.returns",
        ),
        (
            SIZE,
            {"place": "standing"},
            {"face_frame": FRAME | {"overhang": {"top": 5}}},
            "face_frame.overhang.top",
        ),
        (ALCOVE, {"returns": "left"}, {}, "cornice.returns"),
        (ALCOVE + "size: {height: 2110}\n", {}, {}, "cornice.rise"),
        (ALCOVE + "size: {height: 2110}\n", {"place": "standing"}, {}, "cornice.height"),
    ],
)
def test_what_nobody_can_make(
    text: str, cornice: dict[str, Any], more: dict[str, Any], where: str
) -> None:
    found = problems_of(text + STOCK, cornice=LAPPED | cornice, **more)
    assert [each.split(":")[0] for each in found] == [where]


def test_a_worktop_and_a_cornice_are_not_both_a_head() -> None:
    found = problems_of(SIZE, cornice=LAPPED, worktop={"stock": "ash"})
    assert [each.split(":")[0] for each in found] == ["cornice"]
