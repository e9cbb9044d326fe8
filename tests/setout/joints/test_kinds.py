"""Every kind of joint, with its figures worked out by hand for 18 mm on 18 mm, 300 mm deep.

Where no source is named, the figures are common practice, no source.
"""

from __future__ import annotations

import math

import pytest

from kit.joint_pairs import Pair, wish_of
from rodwright.checks import check_solids
from rodwright.geometry import TOUCH
from rodwright.trade.wood_left import BETWEEN
from rodwright.unit import (
    Fixing,
    Hole,
    Housing,
    JointKind,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Surface,
)


def the_joint(pair: Pair) -> tuple[JointKind, tuple[Fixing, ...]]:
    assert pair.said() == []
    assert check_solids(pair.unit()) == ()
    (joint,) = pair.bench.joints
    assert (joint.first, joint.second) == ("SD1", "SH1")
    return joint.kind, joint.fixings


def test_butted_cuts_nothing() -> None:
    pair = Pair(wish_of("butted"))
    assert the_joint(pair) == (JointKind.BUTT, ())
    assert pair.workings("SD1") == pair.workings("SH1") == ()


def test_screwed() -> None:
    """4 mm screws: 18 through and 28 (7 diameters) in make 46, so 50; pilots 0.6 of 4, 2.5."""
    pair = Pair(wish_of("screwed"))
    screws = Fixing("wood screw", 2, "4 x 50 mm", "clearance 4.5 mm, pilot 2.5 mm")
    assert the_joint(pair) == (JointKind.SCREWED, (screws,))
    assert set(pair.workings("SD1")) == {
        Hole(Surface.FACE, (209.0, 50.0), 4.5),
        Hole(Surface.FACE, (209.0, 250.0), 4.5),
    }
    # 32 mm of the screw are in the second, two thirds of it drilled.
    assert set(pair.workings("SH1")) == {
        Hole(Surface.NEAR_END, (50.0, 9.0), 2.5, 21.333333),
        Hole(Surface.NEAR_END, (250.0, 9.0), 2.5, 21.333333),
    }


@pytest.mark.parametrize("material", ["mdf", "Chipboard", "moisture resistant MDF"])
def test_boards_that_split_get_full_pilots(material: str) -> None:
    pair = Pair(wish_of("screwed"), material=material)
    the_joint(pair)
    holes = [each for each in pair.workings("SH1") if isinstance(each, Hole)]
    assert {(hole.diameter, hole.depth) for hole in holes} == {(3.0, 32.0)}


def test_housed_through() -> None:
    pair = Pair(wish_of("housed"))
    assert the_joint(pair) == (JointKind.HOUSING, ())
    assert pair.workings("SD1") == (Housing(Surface.REVERSE, 200.0, 18.0, 6.0),)
    assert pair.workings("SH1") == ()


def test_housed_stopped_notches_what_goes_in() -> None:
    pair = Pair(wish_of("housed", stopped=12, depth=8))
    the_joint(pair)
    assert pair.workings("SD1") == (Housing(Surface.REVERSE, 200.0, 18.0, 8.0, start=12.0),)
    assert pair.workings("SH1") == (Notch(0.0, 0.0, 8.0, 12.0),)


def test_housed_with_a_shoulder() -> None:
    pair = Pair(wish_of("housed", shoulder=5))
    the_joint(pair)
    assert pair.workings("SD1") == (Housing(Surface.REVERSE, 200.0, 13.0, 6.0),)
    assert pair.workings("SH1") == (Rebate(Surface.FACE, Surface.NEAR_END, 6.0, 5.0),)


def test_rebated_corner() -> None:
    pair = Pair(wish_of("rebated"), z="end")
    assert the_joint(pair) == (JointKind.REBATE, ())
    assert pair.workings("SD1") == (Rebate(Surface.REVERSE, Surface.FAR_END, 18.0, 9.0),)


def test_tongued_in_the_middle() -> None:
    pair = Pair(wish_of("tongued"))
    assert the_joint(pair) == (JointKind.TONGUE, ())
    assert pair.workings("SD1") == (Housing(Surface.REVERSE, 206.0, 6.0, 6.0),)
    assert pair.workings("SH1") == (
        Rebate(Surface.FACE, Surface.NEAR_END, 6.0, 6.0),
        Rebate(Surface.REVERSE, Surface.NEAR_END, 6.0, 6.0),
    )


def test_a_barefaced_tongue_at_a_corner_keeps_off_the_end() -> None:
    """Flush with the face that is farther from the end: 12 mm of wood stay beyond the groove."""
    pair = Pair(wish_of("tongued", tongue="barefaced"), z="end")
    the_joint(pair)
    assert pair.workings("SD1") == (Housing(Surface.REVERSE, 582.0, 6.0, 6.0),)
    assert pair.workings("SH1") == (Rebate(Surface.FACE, Surface.NEAR_END, 6.0, 12.0),)


def test_dowelled() -> None:
    """8 x 40: two thirds of 18 in the first, the other 28 in the second, each hole 1 mm deeper."""
    pair = Pair(wish_of("dowelled"))
    dowels = Fixing("dowel", 4, "8 x 40 mm", "8 mm, 13 and 29 mm deep")
    assert the_joint(pair) == (JointKind.DOWEL, (dowels,))
    # 236 mm between the outer ones takes two more, none more than 100 mm from the next.
    places = [32.0, 110.666667, 189.333333, 268.0]
    assert set(pair.workings("SD1")) == {
        Hole(Surface.REVERSE, (209.0, y), 8.0, 13.0) for y in places
    }
    assert {each.position for each in pair.workings("SH1") if isinstance(each, Hole)} == {
        (y, 9.0) for y in places
    }


@pytest.mark.parametrize(
    ("edge", "diameter"), [(12.0, 6.0), (15.0, 6.0), (16.0, 8.0), (22.0, 8.0), (25.0, 10.0)]
)
def test_dowels_are_a_third_to_half_of_the_edge(edge: float, diameter: float) -> None:
    pair = Pair(wish_of("dowelled"), first=25.0, second=edge)
    the_joint(pair)
    assert edge / 3 <= diameter <= edge / 2
    assert {each.diameter for each in pair.workings("SH1") if isinstance(each, Hole)} == {diameter}


def test_biscuited() -> None:
    """Size 20 is 56 x 23 mm (from memory); the slot's chord is that of a 100 mm cutter."""
    pair = Pair(wish_of("biscuited"))
    kind, (biscuits,) = the_joint(pair)
    assert kind is JointKind.BISCUIT
    assert (biscuits.count, biscuits.size) == (3, "size 20, 56 x 23 mm")
    chord = 2 * math.sqrt(50.0**2 - (50.0 - 12.5) ** 2)
    for ref in ("SD1", "SH1"):
        for slot in pair.workings(ref):
            assert isinstance(slot, Mortise)
            assert sorted(slot.extent) == pytest.approx([4.0, chord], abs=1e-6)
            assert slot.depth == 12.5


def test_loose_tenoned() -> None:
    pair = Pair(wish_of("loose-tenoned"))
    kind, (tenons,) = the_joint(pair)
    assert kind is JointKind.LOOSE_TENON
    # 14 mm in the first, which leaves 3 under a mortise 15 deep; 25 in the second.
    assert (tenons.count, tenons.size) == (3, "39 mm long, 40 x 6 mm")
    assert set(pair.workings("SD1")) == {
        Mortise(Surface.REVERSE, (206.0, y), (6.0, 40.0), 15.0, True) for y in (30.0, 130.0, 230.0)
    }
    assert {each.position for each in pair.workings("SH1") if isinstance(each, Mortise)} == {
        (30.0, 6.0),
        (130.0, 6.0),
        (230.0, 6.0),
    }


def test_pocket_screwed() -> None:
    pair = Pair(wish_of("pocket-screwed"))
    kind, (screws,) = the_joint(pair)
    assert kind is JointKind.POCKET_SCREW
    assert (screws.count, screws.size) == (3, "4 x 32 mm")
    assert pair.workings("SD1") == ()
    for pocket, y in zip(pair.workings("SH1"), (50.0, 150.0, 250.0), strict=True):
        assert isinstance(pocket, PocketHole)
        assert (pocket.surface, pocket.end) == (Surface.REVERSE, Surface.NEAR_END)
        assert (pocket.position, pocket.exit, pocket.angle) == (y, 9.0, 15.0)
        # The tip stays in the first part, the pocket's floor in the second.
        assert (32.0 - pocket.stop) * math.cos(math.radians(15)) < 18.0
        rim = pocket.exit - pocket.stop * math.sin(math.radians(15))
        assert rim >= pocket.diameter / 2 * math.cos(math.radians(15))


def test_knock_down_with_cams() -> None:
    """15 mm borings 13.5 deep, 34 mm from the end (from memory), met by borings in the end."""
    pair = Pair(wish_of("knock-down"))
    kind, fixings = the_joint(pair)
    assert kind is JointKind.KNOCK_DOWN
    assert [(each.name, each.count) for each in fixings] == [
        ("cam", 2),
        ("cam bolt", 2),
    ]
    assert set(pair.workings("SD1")) == {
        Hole(Surface.REVERSE, (209.0, 50.0), 5.0, 12.0),
        Hole(Surface.REVERSE, (209.0, 250.0), 5.0, 12.0),
    }
    assert set(pair.workings("SH1")) == {
        Hole(Surface.REVERSE, (34.0, 50.0), 15.0, 13.5),
        Hole(Surface.REVERSE, (34.0, 250.0), 15.0, 13.5),
        Hole(Surface.NEAR_END, (50.0, 9.0), 8.0, 34.0),
        Hole(Surface.NEAR_END, (250.0, 9.0), 8.0, 34.0),
    }


def test_knock_down_with_barrel_nuts() -> None:
    pair = Pair(wish_of("knock-down", fitting="barrel_nut"))
    _, fixings = the_joint(pair)
    # 18 through, 35 to the nut's middle and 5 through it make 58.
    assert (fixings[0].size, fixings[1].size) == ("M6 x 60 mm", "M6, 10 mm")
    assert Hole(Surface.FACE, (209.0, 50.0), 7.0) in pair.workings("SD1")
    assert Hole(Surface.REVERSE, (35.0, 50.0), 10.0, 14.0) in pair.workings("SH1")


@pytest.mark.parametrize(
    ("reinforced", "name"),
    [
        ("nothing", None),
        ("biscuits", "biscuit"),
        ("dowels", "dowel"),
        ("loose_tongue", "loose tongue"),
    ],
)
def test_mitred_corner(reinforced: str, name: str | None) -> None:
    pair = Pair(wish_of("mitred", reinforced=reinforced), z="end")
    kind, fixings = the_joint(pair)
    assert kind is JointKind.MITRE
    assert pair.workings("SD1") == (Mitre(Surface.FAR_END, 45.0, Surface.FACE),)
    assert pair.workings("SH1") == (Mitre(Surface.NEAR_END, 45.0, Surface.FACE),)
    assert [each.name for each in fixings] == ([name] if name else [])


def test_dowels_keep_clear_of_a_pocket_hole() -> None:
    """One from the front edge, at the height of the neighbour's first dowel, 32 mm from it."""
    wish = wish_of("dowelled")
    pair = Pair(wish)
    size = pair.bench.parts["SD1"].blank.size
    pocket = PocketHole(Surface.FACE, Surface.FACE_EDGE, 409.0, 9.0, 20.0, 9.5, 4.0)
    pair.bench.work("SD1", pocket)
    pair.neighbour(wish, 400.0)
    taken = pocket.bounds(size).grown(BETWEEN - TOUCH)
    holes = [each for each in pair.workings("SD1") if isinstance(each, Hole)]
    own = [each for each in holes if each.surface is Surface.FACE]
    assert len(own) >= 2
    assert [each for each in own if taken.intersects(each.bounds(size))] == []
