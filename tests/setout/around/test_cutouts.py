"""Cut-outs round a skirting, a pipe and a socket, against figures by hand."""

from __future__ import annotations

from typing import Any

import pytest

from kit.specs import of_role, problems_of, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.rules import Rule
from rodwright.handover.unit_json import read_unit, unit_json
from rodwright.unit import Hole, JointKind, Notch, Role, Unit

TEXT = """
size: {width: 900, height: 1800, depth: 320}
interior:
  columns:
    - {width: 1 share, shelves: {count: 3, fixed: false}}
    - {width: 1 share, shelves: {count: 4}}
"""
CARCASS = {"stock": "ply", "corners": "housed", "bottom_height": 60}


def _unit(*cutouts: dict[str, Any], fixing: str = "rebated") -> Unit:
    back = {"stock": "thin", "fixing": fixing}
    return unit_from(TEXT, carcass=CARCASS, back=back, cutouts=list(cutouts))


def _notches(unit: Unit, ref: str) -> list[Notch]:
    return [each for each in unit.part(ref).workings if isinstance(each, Notch)]


SKIRTING = {"kind": "skirting", "height": 120, "depth": 18}


@pytest.mark.parametrize("fixing", ["applied", "rebated", "grooved"])
def test_a_skirting_is_cut_out_of_all_that_stands_before_it(fixing: str) -> None:
    unit = _unit(SKIRTING, fixing=fixing)
    # 18 deep and 120 high with 3 mm round it; an applied back takes 6 of the depth.
    deep = 21 - (6 if fixing == "applied" else 0)
    for side in of_role(unit, Role.SIDE):
        (notch,) = _notches(unit, side.ref)
        assert (notch.length, notch.width) == (123.0, deep)
    (bottom,), (back,) = of_role(unit, Role.BOTTOM), of_role(unit, Role.BACK)
    # In front of a groove 10 mm from the rear, the back passes the skirting's top.
    assert bottom.bounds().high[1] == min(320 - 21.0, bottom.bounds().high[1])
    assert back.bounds().low[2] == 123.0
    assert check_solids(unit) == ()


def test_an_upright_pipe_is_drilled_or_notched_by_its_place() -> None:
    clear = {"kind": "pipe", "at": [120, 60], "diameter": 28}
    unit = _unit(clear)
    (bottom,) = of_role(unit, Role.BOTTOM)
    (hole,) = [each for each in bottom.workings if isinstance(each, Hole)]
    # 28 and 5 mm round it; the bottom begins at 12, its width runs from front to rear.
    assert (hole.diameter, hole.position) == (38.0, (108.0, 260.0))
    near = {"kind": "pipe", "at": [120, 30], "diameter": 28}
    assert [each.width for each in _notches(_unit(near), "SH2")] == [pytest.approx(313 - 271.0)]
    assert check_solids(unit) == () == check_solids(_unit(near))


def test_a_socket_is_a_window_in_the_back() -> None:
    unit = _unit({"kind": "socket", "at": [500, 700], "width": 146, "height": 86})
    (back,) = of_role(unit, Role.BACK)
    (window,) = _notches(unit, back.ref)
    low = back.placement.to_unit((window.x, window.y, 0.0))
    high = back.placement.to_unit((window.x + window.length, window.y + window.width, 0.0))
    assert sorted((low[0], high[0])) == pytest.approx([495, 651])
    assert sorted((low[2], high[2])) == pytest.approx([695, 791])
    assert unit.services == ("socket",)
    found = {each.rule: each for each in check_parts(unit)}
    assert "electrician" in found[Rule.SERVICES_IN_CUT_OUT].remedy
    assert check_solids(unit) == ()


@pytest.mark.parametrize(("runs", "at"), [("across", [40, 1500]), ("back", [700, 300])])
def test_pipes_that_lie_flat(runs: str, at: list[int]) -> None:
    unit = _unit({"kind": "pipe", "runs": runs, "at": at, "diameter": 22})
    cut = {Role.SIDE, Role.DIVIDER} if runs == "across" else {Role.BACK}
    drilled = {
        part.role
        for part in unit.parts
        for each in part.workings
        if isinstance(each, Hole) and each.diameter == 32.0
    }
    assert drilled == cut
    assert check_solids(unit) == ()


def _pins(unit: Unit, ref: str) -> set[tuple[float, float]]:
    """Where the holes for adjustable shelves lie in an upright: y and z, unit frame."""
    part = unit.part(ref)
    at = [
        part.placement.to_unit((*each.position, 0.0))
        for each in part.workings
        if isinstance(each, Hole) and each.use == "adjustable shelves"
    ]
    return {(round(y, 1), round(z, 1)) for _, y, z in at}


def test_row_holes_keep_clear_of_a_cut_out() -> None:
    unit = _unit({"kind": "pipe", "runs": "across", "at": [45, 620], "diameter": 40})
    assert check_solids(unit) == ()
    # The way through is 50 wide, about y = 275 and z = 620: one hole lies in it, and one has less
    # than 3 mm of wood beside it.
    for ref in ("SD1", "DV1"):
        assert _pins(_unit(), ref) - _pins(unit, ref) == {(277.0, 589.8), (277.0, 621.8)}
        assert _pins(unit, ref) < _pins(_unit(), ref)


def test_joints_whose_meeting_is_cut_away_go() -> None:
    whole, cut = (
        {(joint.first, joint.second, joint.kind) for joint in unit.joints}
        for unit in (_unit(), _unit(SKIRTING))
    )
    assert whole - cut == {("BT1", "BK1", JointKind.REBATE)}
    assert cut < whole


@pytest.mark.parametrize(
    ("cutout", "says"),
    [
        ({"kind": "socket", "at": [2000, 100], "width": 86, "height": 86}, "meets no part"),
        (SKIRTING | {"depth": 310}, "falls apart"),
        ({"kind": "pipe", "at": [450, 5], "diameter": 30}, "falls apart"),
        ({"kind": "pipe", "runs": "across", "at": [160, 900], "diameter": 290}, "no sound strip"),
    ],
)
def test_what_cannot_be_cut_out_is_told_with_its_place(cutout: dict[str, Any], says: str) -> None:
    said = problems_of(TEXT, carcass=CARCASS, back={"stock": "thin"}, cutouts=[cutout])
    assert said and all(each.startswith("cutouts.0") for each in said)
    assert any(says in each for each in said)


def test_fronts_and_fixings_are_not_cut() -> None:
    pipe = {"kind": "pipe", "runs": "across", "at": [330, 900], "diameter": 30}
    frame = {"stock": "ash", "width": 50, "thickness": 22}
    said = problems_of(TEXT, carcass=CARCASS, face_frame=frame, cutouts=[pipe])
    assert any("can't be cut out" in each for each in said)
    low = {"kind": "pipe", "runs": "across", "at": [30, 69], "diameter": 30}
    dowelled = problems_of(TEXT, carcass=CARCASS | {"corners": "dowelled"}, cutouts=[low])
    assert any("takes away fixings" in each for each in dowelled)


def test_services_come_back_from_the_document(tmp_path: Any) -> None:
    unit = _unit({"kind": "pipe", "at": [120, 60], "diameter": 28})
    path = tmp_path / "unit.json"
    path.write_bytes(unit_json(unit))
    assert read_unit(path) == unit
