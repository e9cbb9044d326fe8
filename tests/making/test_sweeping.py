"""Sweeps by arithmetic, held to the meshes of solids and manifold's overlaps of those."""

from __future__ import annotations

import math

import numpy as np
import pytest
import trimesh
from hypothesis import HealthCheck, assume, given, settings
from hypothesis import strategies as st

from kit.assembly_replay import Solid, collides
from kit.blocks import block
from kit.samples import PLYWOOD
from kit.strategies import bevels, grooves, housings, lengths, mitres, placements, rebates, sizes
from rodwright.geometry import Vector
from rodwright.making.bodies import Body, body_of, turned
from rodwright.making.sweeping import Sweeps, runs_into
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import Blank, Grain, Hole, Part, Placement, Role, Surface, Working

SLOW = settings(max_examples=40, suppress_health_check=[HealthCheck.too_slow])


@st.composite
def parts(draw: st.DrawFn) -> Part:
    """A part with a few flat workings, near the origin and turned anyhow."""
    size = draw(sizes())
    kinds: list[st.SearchStrategy[Working]] = [
        kind(size) for kind in (rebates, grooves, housings, bevels, mitres)
    ]
    workings = tuple(draw(st.lists(st.one_of(kinds), max_size=2)))
    turn = draw(placements())
    at = (draw(lengths(-300, 300)), draw(lengths(-300, 300)), draw(lengths(-300, 300)))
    place = Placement(at, turn.length, turn.width)
    blank = Blank(*size, PLYWOOD, Grain.LENGTHWISE)
    return Part("SH1", "Shelf", Role.SHELF, "Test", blank, place, workings)


def _solid(part: Part) -> Solid:
    try:
        return Solid.of(placed_mesh(part))
    except ValueError:  # the workings leave several pieces, or meet along a line
        assume(False)
        raise


def _volume(body: Body) -> float:
    return sum(float(trimesh.PointCloud(piece).convex_hull.volume) for piece in body.corners)


@SLOW
@given(parts())
def test_the_pieces_of_a_body_are_all_of_the_part(part: Part) -> None:
    solid = _solid(part)
    body = body_of(part)
    assert _volume(body) == pytest.approx(float(solid.mesh.volume), rel=1e-6)
    assert np.allclose(body.bounds, solid.bounds, atol=1e-3)


@SLOW
@given(parts(), parts(), placements())
def test_what_runs_into_what_as_it_leaves(one: Part, other: Part, turn: Placement) -> None:
    first, second = _solid(one), _solid(other)
    swept = collides(first, second, np.array(turn.length) * 3000)
    assert runs_into(body_of(one), body_of(other), turn.length) == swept


def test_touching_and_sliding_along_is_no_collision() -> None:
    still, beside = (
        block("SD1", (0, 0, 0), (100, 100, 100)),
        block("SH1", (100, 0, 0), (50, 100, 50)),
    )
    one, other = body_of(beside), body_of(still)
    ways: dict[Vector, bool] = {
        (1, 0, 0): False,
        (-1, 0, 0): True,
        (0, 1, 0): False,
        (0, 0, -1): False,
        (-math.sqrt(0.5), 0, math.sqrt(0.5)): True,
        (math.sqrt(0.5), 0, math.sqrt(0.5)): False,
    }
    assert {way: runs_into(one, other, way) for way in ways} == ways


@pytest.mark.parametrize(("gap", "hits"), [(-0.009, False), (-0.011, True)])
def test_a_hundredth_of_a_millimetre_is_touching(gap: float, hits: bool) -> None:
    still, above = (
        block("SD1", (0, 0, 0), (100, 100, 100)),
        block("SH1", (0, 0, 100 + gap), (9, 9, 9)),
    )
    assert runs_into(body_of(above), body_of(still), (1.0, 0.0, 0.0)) is hits


def test_bores_are_left_out_so_that_a_sweep_is_only_too_strict() -> None:
    drilled = Hole(Surface.FACE, (50, 50), 40)
    plain = block("SD1", (0, 0, 0), (100, 100, 100))
    bored = Part(
        **{each: getattr(plain, each) for each in ("ref", "name", "role", "group")},
        blank=plain.blank,
        placement=plain.placement,
        workings=(drilled,),
    )
    assert _volume(body_of(bored)) == pytest.approx(1e6)


def test_a_body_turned_about_an_upright_line() -> None:
    door = body_of(block("DO1", (0, -20, 0), (500, 20, 700)))
    opened = turned(door, (0.0, -20.0), -90.0)
    assert opened.bounds == pytest.approx(np.array([[0, -520, 0], [20, -20, 700]]))


def test_a_pair_is_looked_at_once_whichever_of_them_leaves() -> None:
    parts = [block("SD1", (0, 0, 0), (100, 100, 100)), block("SH1", (100, 0, 50), (9, 9, 9))]
    bodies = {part.ref: body_of(part) for part in parts}
    sweeps = Sweeps({ref: turned(body, (0.0, 0.0), 30.0) for ref, body in bodies.items()})
    assert sweeps.in_the_way("SH1", ["SD1"], (-1.0, 0.0, 0.0)) == ["SD1"]
    assert sweeps.in_the_way("SD1", ["SH1"], (1.0, 0.0, 0.0)) == ["SH1"]
    assert sweeps.looked == 1
