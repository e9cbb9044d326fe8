"""Joints of any thickness and depth: what is made keeps its promises, what isn't says so."""

from __future__ import annotations

from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.joint_pairs import Pair, axes_of, wish_of
from kit.specs import of_role, unit_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Severity
from rodwright.lengths import parse_length
from rodwright.mass import mass_of
from rodwright.problems import ProblemsError
from rodwright.solids import solid_of
from rodwright.unit import Hole, JointKind, Mortise, Role

WISHES: list[tuple[str, dict[str, Any]]] = [
    ("butted", {}),
    ("screwed", {}),
    ("housed", {}),
    ("housed", {"shoulder": 4, "stopped": 15}),
    ("rebated", {}),
    ("tongued", {}),
    ("tongued", {"tongue": "barefaced", "stopped": 10}),
    ("dowelled", {}),
    ("biscuited", {}),
    ("loose-tenoned", {}),
    ("pocket-screwed", {}),
    ("knock-down", {}),
    ("knock-down", {"fitting": "barrel_nut"}),
    ("mitred", {"reinforced": "dowels"}),
]
COAXIAL = {"dowelled": Hole, "biscuited": Mortise, "loose-tenoned": Mortise}
THICK = st.integers(20, 90).map(lambda half: half / 2)


@pytest.mark.parametrize(("joint", "figures"), WISHES)
@settings(max_examples=8)
@given(first=THICK, second=THICK, depth=st.integers(40, 700), high=st.booleans())
def test_made_joints_fit_and_others_are_refused(
    joint: str, figures: dict[str, Any], first: float, second: float, depth: int, high: bool
) -> None:
    corner = joint in ("rebated", "mitred") or high
    pair = Pair(wish_of(joint, **figures), first, second, float(depth), "end" if corner else 200.0)
    if pair.said():
        assert pair.bench.joints == ()
        return
    unit = pair.unit()
    assert check_solids(unit) == ()
    assert not [each for each in check_parts(unit) if each.severity is Severity.ERROR]
    for part in unit.parts:
        assert solid_of(part.shape).Volume() == pytest.approx(mass_of(part.shape).volume, rel=1e-5)
    if kind := COAXIAL.get(joint):
        one, other = (axes_of(part, kind) for part in unit.parts)
        assert len(one) == unit.joints[0].fixings[0].count
        for a, b in zip(one, other, strict=True):
            assert a == pytest.approx(b, abs=1e-6)
    for fixing in unit.joints[0].fixings:
        assert fixing.count >= 1


@pytest.mark.parametrize("joint", ["dowelled", "loose-tenoned", "knock-down"])
def test_fixings_on_the_two_faces_of_a_divider_dont_meet(joint: str) -> None:
    """The second row moves along, or stands between the first: 3 mm of wood stay at least."""
    pair = Pair(wish_of(joint))
    pair.neighbour(wish_of(joint), 200.0)
    assert pair.said() == []
    unit = pair.unit()
    assert check_solids(unit) == ()
    cut = [each for each in pair.workings("SD1") if isinstance(each, Hole | Mortise)]
    runs = sorted(
        (each.position[1], each.position[1] + each.extent[1])
        if isinstance(each, Mortise)
        else (each.position[1] - each.diameter / 2, each.position[1] + each.diameter / 2)
        for each in cut
    )
    assert len({each.surface for each in cut}) == 2
    assert all(b[0] - a[1] >= 3.0 - 1e-6 for a, b in pairwise(runs))


def test_rows_are_symmetric_and_no_farther_apart_than_asked() -> None:
    pair = Pair(wish_of("dowelled", spacing=64, edge=25), depth=400.0)
    places = [y for _, y, _ in axes_of(pair.unit().part("SH1"), Hole)]
    assert (places[0], places[-1]) == (25.0, 375.0)
    assert [400.0 - y for y in reversed(places)] == pytest.approx(places)
    assert max(b - a for a, b in pairwise(places)) <= 64.0


UNIT = """
size: {width: 900, height: 1000, depth: 320}
carcass: {stock: ply, corners: %s, top: %s}
interior:
  columns:
    - {width: 1 share, shelves: {count: 2}}
    - {width: 1 share, rows: [{height: 1 share}, {height: 1 share}]}
back: {stock: thin, fixing: %s}
"""


@pytest.mark.parametrize("top", ["between", "over"])
@pytest.mark.parametrize(
    ("corners", "kind"),
    [
        ("screwed", JointKind.SCREWED),
        ("housed", JointKind.REBATE),
        ("rebated", JointKind.REBATE),
        ("tongued", JointKind.TONGUE),
        ("{joint: tongued, tongue: barefaced}", JointKind.TONGUE),
        ("{joint: housed, shoulder: 5}", JointKind.HOUSING),
        ("dowelled", JointKind.DOWEL),
        ("biscuited", JointKind.BISCUIT),
        ("loose-tenoned", JointKind.LOOSE_TENON),
        ("pocket-screwed", JointKind.POCKET_SCREW),
        ("knock-down", JointKind.KNOCK_DOWN),
        ("{joint: knock-down, fitting: barrel_nut}", JointKind.KNOCK_DOWN),
        ("mitred", JointKind.MITRE),
    ],
)
def test_whole_units_fit_together(corners: str, kind: JointKind, top: str) -> None:
    for fixing in ("applied", "rebated"):
        unit = unit_from(UNIT % (corners, top, fixing))
        assert check_solids(unit) == ()
        assert not [each for each in check_parts(unit) if each.severity is Severity.ERROR]
        at_top = [each for each in unit.joints if {each.first, each.second} == {"SD1", "TP1"}]
        assert [each.kind for each in at_top] == [kind]
        low, high = unit.envelope.low, unit.envelope.high
        assert (high[0] - low[0], high[2]) == pytest.approx((900.0, 1000.0))


def test_left_and_right_ends_of_a_shelf_are_alike() -> None:
    """So that two shelves of one size are one piece, whichever way round."""
    unit = unit_from(
        "size: {width: 600, height: 900, depth: 300}\n"
        "carcass: {stock: ply, corners: dowelled}\ninterior: {shelves: {count: 2}}\n"
    )
    assert unit.part("SH1").shape == unit.part("SH2").shape
    near, far = (
        sorted(
            hole.position
            for hole in unit.part("SH1").workings
            if isinstance(hole, Hole) and hole.surface.at_high is at_high
        )
        for at_high in (False, True)
    )
    assert near == far


@pytest.mark.parametrize("unit_name", ["mm", "in"])
@settings(max_examples=40)
@given(thick=THICK, length=st.none() | st.integers(20, 80))
def test_mortises_leave_their_tenon_room(unit_name: str, thick: float, length: int | None) -> None:
    """Both together are deeper than the tenon is long, by room for glue at either end: 1 mm or a
    32nd each (common practice, no source)."""
    joint: dict[str, Any] = {"joint": "loose-tenoned"}
    if length is not None:
        joint["length"] = f"{length} mm"
    text = f"""unit: {unit_name}
size: {{width: 600 mm, height: 600 mm, depth: 300 mm}}
stock:
  ply: {{kind: sheet, material: birch plywood, thickness: {thick} mm}}
"""
    try:
        made = unit_from(text, carcass={"stock": "ply", "corners": joint})
    except ProblemsError:
        return
    room = 2 * (1.0 if unit_name == "mm" else 25.4 / 32)
    (side, level) = (
        next(each.depth for each in part.workings if isinstance(each, Mortise))
        for part in (of_role(made, Role.SIDE)[0], of_role(made, Role.TOP)[0])
    )
    said = made.joints[0].fixings[0].size.split(" long, ")[0]
    tenon = parse_length(said, "in" if unit_name == "in" else "mm")
    # What is said is rounded: to a tenth of a mm, or to a 64th.
    rounded = 0.05 if unit_name == "mm" else 25.4 / 128
    assert side + level >= tenon + room - rounded - 1e-6
