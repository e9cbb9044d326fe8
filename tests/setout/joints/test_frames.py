"""Joints in frames: the end of a rail meets the edge of a stile, both lying in one plane."""

from __future__ import annotations

from typing import Any

import pytest

from kit.joint_pairs import axes_of, board, wish_of
from kit.specs import setting_from
from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Severity
from rodwright.geometry import Box
from rodwright.setout.joints import make_joint
from rodwright.setout.rod.reach import reach
from rodwright.unit import Blank, Grain, Groove, Hole, Mortise, Part, Placement, Role, Surface, Unit
from rodwright.unit.directions import X, Z
from rodwright.wishes.joints import JointSpec


def frame_of(wish: JointSpec, width: float = 70.0) -> Unit:
    """A stile 22 thick and 60 wide, and a rail of the same stock that comes to its right edge."""
    setting, stock = setting_from("size: {width: 600, height: 800, depth: 300}"), board(22.0)
    bench = setting.bench
    into = reach(wish, 60.0, "mm")
    stile = Part(
        "ST1",
        "Stile",
        Role.DOOR_STILE,
        "Doors",
        Blank(700.0, 60.0, 22.0, stock, Grain.LENGTHWISE),
        Placement((60.0, 0.0, 0.0), Z, (-1.0, 0.0, 0.0)),
    )
    rail = Part(
        "RL1",
        "Rail",
        Role.DOOR_RAIL,
        "Doors",
        Blank(300.0 + into, width, 22.0, stock, Grain.LENGTHWISE),
        Placement((60.0 - into, 0.0, 400.0), X, Z),
    )
    with bench.wished_at(("doors",)):
        bench.add(stile)
        bench.add(rail)
    make_joint(setting.at("doors", "corners"), wish, "ST1", "RL1")
    setting.problems.raise_if_any()
    box = Box((0.0, -22.0, 0.0), (360.0, 22.0, 700.0))
    return Unit("Frame", box, bench.finished(), tuple(bench.joints))


@pytest.mark.parametrize(
    ("joint", "figures", "kind"),
    [
        ("dowelled", {}, Hole),
        ("loose-tenoned", {}, Mortise),
        ("biscuited", {"size": "0"}, Mortise),
        ("pocket-screwed", {}, None),
        ("tongued", {"depth": 12}, None),
        ("knock-down", {"fitting": "barrel_nut"}, None),
        ("screwed", {"length": 100}, None),
    ],
)
def test_rails_meet_stiles(joint: str, figures: dict[str, Any], kind: type[Hole] | None) -> None:
    width = 120.0 if joint == "knock-down" else 70.0
    unit = frame_of(wish_of(joint, **figures), width)
    assert check_solids(unit) == ()
    assert not [each for each in check_parts(unit) if each.severity is Severity.ERROR]
    if kind is not None:
        one, other = (axes_of(part, kind) for part in unit.parts)
        assert len(one) == unit.joints[0].fixings[0].count
        for a, b in zip(one, other, strict=True):
            assert a == pytest.approx(b, abs=1e-6)


def test_a_rail_as_narrow_as_two_dowels_take() -> None:
    """Two 8 mm dowels a quarter of the width from the rail's edges, half of their length in each
    part: 40 / 2 = 20 mm, and 1 mm for glue."""
    unit = frame_of(wish_of("dowelled"), width=60.0)
    places = [z for _, _, z in axes_of(unit.part("RL1"), Hole)]
    assert places == pytest.approx([415.0, 445.0])
    for part in unit.parts:
        assert {each.depth for each in part.workings if isinstance(each, Hole)} == {21.0}


def test_a_tongue_goes_into_a_groove_in_the_edge() -> None:
    unit = frame_of(wish_of("tongued", depth=12))
    (groove,) = unit.part("ST1").workings
    assert isinstance(groove, Groove)
    assert groove.surface is Surface.FACE_EDGE
    # A third of 22, rounded: 7 thick, in the middle, as long as the rail is wide.
    assert (groove.position, groove.width, groove.depth) == (7.5, 7.0, 12.0)
    assert (groove.start, groove.stop) == (400.0, 470.0)
