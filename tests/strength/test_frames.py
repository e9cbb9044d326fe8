"""Plane frames, held to closed forms and to anastruct and PyNite."""

from __future__ import annotations

import math
from random import Random

import pytest
from anastruct import SystemElements
from Pynite import FEModel3D

from rodwright.strength.frames import Bar, Frame, Spring, sway

EI, EA = 2.4e9, 4.0e7


def portal(
    width: float, height: float, spring: float, foot: float = 0.0, beam: float = EI
) -> Frame:
    """Two posts held at the foot and turned against springs ``foot`` there, and a beam whose ends
    turn against ``spring``."""
    places = ((0.0, 0.0), (0.0, height), (width, height), (width, 0.0))
    bars = (Bar(0, 1, 0, 1, EI, EA), Bar(1, 2, 2, 3, beam, EA), Bar(3, 2, 5, 4, EI, EA))
    springs = [Spring(1, 2, spring), Spring(3, 4, spring)]
    if foot:
        springs += [Spring(0, None, foot), Spring(5, None, foot)]
    held = frozenset({0, 3})
    return Frame(places, 6, bars, tuple(springs), held, held)


def swayed(frame: Frame, push: float = 100.0) -> float:
    moved = sway(frame, {1: (push, 0.0)})
    assert moved is not None
    return moved.moves[1][0]


@pytest.mark.parametrize(("width", "height"), [(900.0, 2000.0), (1800.0, 700.0)])
def test_a_portal_by_hand(width: float, height: float) -> None:
    """Posts pinned at their feet, stiff corners: F h^2 (2 h + b)/(12 E I) for members all
    alike (any handbook of rigid frames); what they stretch left out."""
    frame = portal(width, height, 1e15)
    stiff = Frame(
        frame.places,
        6,
        tuple(Bar(*(getattr(bar, name) for name in _FIELDS), 1e10) for bar in frame.bars),
        frame.springs,
        frame.held_across,
        frame.held_up,
    )
    by_hand = 100 * height**2 / (12 * EI) * (2 * height + width)
    assert swayed(stiff) == pytest.approx(by_hand, rel=1e-4)


_FIELDS = ("start", "stop", "start_turn", "stop_turn", "bending")


@pytest.mark.parametrize("spring", [1e6, 1e7, 1e9])
def test_springs_between_posts_and_beam_by_hand(spring: float) -> None:
    """Each corner turns by F h/2 x (b/(6 E I) + 1/S): F h3/(6 E I) + F h2/2 (b/(6 E I) + 1/S)."""
    width, height = 1000.0, 2000.0
    by_hand = 100 * height**3 / (6 * EI) + 50 * height**2 * (width / (6 * EI) + 1 / spring)
    assert swayed(portal(width, height, spring)) == pytest.approx(by_hand, rel=1e-3)


def test_four_equal_springs_and_stiff_panels() -> None:
    """K = 4 S/h2."""
    spring, height = 2.0e7, 800.0
    stiff = tuple(Bar(*each, 1e16, 1e12) for each in ((0, 1, 0, 1), (1, 2, 2, 3), (3, 2, 5, 4)))
    frame = portal(1000.0, height, spring, foot=spring)
    frame = Frame(frame.places, 6, stiff, frame.springs, frame.held_across, frame.held_up)
    assert 100 / swayed(frame) == pytest.approx(4 * spring / height**2, rel=1e-5)


def test_hinged_posts_move_freely() -> None:
    assert sway(portal(900.0, 2000.0, 0.0), {1: (100.0, 0.0)}) is None


@pytest.mark.filterwarnings("ignore:Polyfit")
@pytest.mark.parametrize("seed", range(20))
def test_portals_as_anastruct_has_them(seed: int) -> None:
    dice = Random(seed)
    width, height = dice.uniform(400, 3000), dice.uniform(400, 2600)
    beam, spring = EI * dice.uniform(0.2, 5), 10 ** dice.uniform(6, 9)
    other = SystemElements()
    other.add_element([[0, 0], [0, height]], EA=EA, EI=EI)
    other.add_element([[0, height], [width, height]], EA=EA, EI=beam)
    other.add_element([[width, height], [width, 0]], EA=EA, EI=EI)
    other.add_support_hinged([1, 4])
    other.add_support_spring(1, 3, spring)
    other.add_support_spring(4, 3, spring)
    other.point_load(2, Fx=100)
    other.solve()
    there = abs(other.get_node_results_system(2)["ux"])
    assert swayed(portal(width, height, 1e15, spring, beam)) == pytest.approx(there, rel=5e-3)


@pytest.mark.parametrize("seed", range(5))
def test_stiff_portals_as_pynite_has_them(seed: int) -> None:
    dice = Random(100 + seed)
    width, height = dice.uniform(400, 3000), dice.uniform(400, 2600)
    model = FEModel3D()
    model.add_material("wood", 10000.0, 625.0, 0.3, 5e-9)
    model.add_section("panel", EA / 10000, EI / 10000, EI / 10000, 1e6)
    places = [(0.0, 0.0), (0.0, height), (width, height), (width, 0.0)]
    for i, (x, z) in enumerate(places):
        model.add_node(f"N{i}", x, z, 0.0)
        at_foot = i in {0, 3}
        model.def_support(f"N{i}", at_foot, at_foot, True, True, True, False)
    for i in range(3):
        model.add_member(f"M{i}", f"N{i}", f"N{i + 1}", "wood", "panel")
    model.add_node_load("N1", "FX", 100.0)
    model.analyze()
    there = model.nodes["N1"].DX["Combo 1"]
    assert swayed(portal(width, height, 1e15)) == pytest.approx(there, rel=1e-4)


def test_a_leaning_bar_is_as_stiff_as_a_level_one() -> None:
    """A cantilever at any slope gives F L3/(3 E I) square to itself."""
    length, slope = 1200.0, math.radians(37)
    end = (length * math.cos(slope), length * math.sin(slope))
    frame = Frame(
        ((0.0, 0.0), end),
        2,
        (Bar(0, 1, 0, 1, EI, EA),),
        (Spring(0, None, 1e16),),
        frozenset({0}),
        frozenset({0}),
    )
    moved = sway(frame, {1: (-math.sin(slope), math.cos(slope))})
    assert moved is not None
    square = -moved.moves[1][0] * math.sin(slope) + moved.moves[1][1] * math.cos(slope)
    assert square == pytest.approx(length**3 / (3 * EI), rel=1e-5)
