"""Bought-in pieces as bodies: closed, of the size that is bought, of what they are made of."""

from __future__ import annotations

import numpy as np
import pytest
import trimesh

from kit.specs import unit_from
from rodwright.photo import srgb
from rodwright.photo.bodies import unit_bodies
from rodwright.photo.bodies.ware import ware_body
from rodwright.photo.scene import Body
from rodwright.photo.wares import SURFACES, ware_surface
from rodwright.pictures.bodies import WARES
from rodwright.pictures.opened import opened
from rodwright.unit import Block, Knob, Rod, Shape, Ware

STEEL = SURFACES["steel"]


def closed(body: Body) -> trimesh.Trimesh:
    places = np.round(body.points, 6)
    mesh = trimesh.Trimesh(places, body.triangles, process=True)
    mesh.update_faces(mesh.nondegenerate_faces())
    assert mesh.is_watertight
    corners = body.points[body.triangles]
    out = np.cross(corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0])
    facing = (body.normals[body.triangles] * out[:, None]).sum(axis=2)
    assert facing.min() > -1e-6
    assert np.linalg.norm(body.normals, axis=1) == pytest.approx(1.0)
    return mesh


def of(shape: Shape) -> trimesh.Trimesh:
    return closed(ware_body("DO1 steel", (shape,), STEEL))


@pytest.mark.parametrize("end", [(10.0, 20.0, 130.0), (10.0, -80.0, 30.0), (-90.0, 20.0, 30.0)])
def test_a_rod_is_as_long_and_thick_as_it_says(end: tuple[float, float, float]) -> None:
    mesh = of(Rod((10.0, 20.0, 30.0), end, 12.0))
    assert sorted(mesh.extents) == pytest.approx([12.0, 12.0, 100.0], rel=0.01)
    assert mesh.volume == pytest.approx(np.pi * 6**2 * 100, rel=0.02)
    assert mesh.bounds.mean(axis=0) == pytest.approx((np.array([10, 20, 30]) + end) / 2, abs=0.05)


def test_a_block_fills_its_corners() -> None:
    mesh = of(Block((1.0, 2.0, 3.0), (11.0, 32.0, 5.0)))
    assert mesh.bounds == pytest.approx(np.array([[1, 2, 3], [11, 32, 5]]))
    assert mesh.volume == pytest.approx(10 * 30 * 2, rel=0.02)


def test_a_knob_swells_from_its_stem_to_its_head() -> None:
    mesh = of(Knob((0.0, 0.0, 0.0), (0.0, -30.0, 0.0), 32.0, 12.0))
    assert mesh.bounds[:, 1] == pytest.approx([-30.0, 0.0])
    assert mesh.extents[[0, 2]] == pytest.approx([32.0, 32.0], rel=0.02)
    wide = np.hypot(*mesh.vertices[:, [0, 2]].T)
    assert wide[mesh.vertices[:, 1] > -12].max() < 11.0
    assert wide[(mesh.vertices[:, 1] < -5) & (mesh.vertices[:, 1] > -9)].min() < 7.0


CUPBOARD = """
size: {width: 600, height: 700, depth: 350}
interior: {doors: {count: 2, hung: overlay, handle: {name: brass knob}}}
"""


def test_a_unit_has_a_body_for_each_part_and_its_ware_moves_with_its_doors() -> None:
    unit = unit_from(CUPBOARD)
    shut = {each.name: each for each in unit_bodies(unit, {}, texel=20.0)}
    wide = {each.name: each for each in unit_bodies(unit, {}, texel=20.0, stands=opened(unit))}
    assert {part.ref for part in unit.parts} < shut.keys() == wide.keys()
    knob, door, side = shut["DO1 brass"], shut["DO1"], shut["SD1 steel"]
    assert knob.surface.metal
    assert knob.points[:, 1].min() == pytest.approx(door.points[:, 1].min() - 30.0)
    # The door turns about its hinge by a right angle: its front comes to face sideways.
    assert np.ptp(wide["DO1"].points[:, 1]) == pytest.approx(np.ptp(door.points[:, 0]))
    assert np.ptp(wide["DO1 brass"].points[:, 0]) == pytest.approx(30.0)
    assert wide["SD1 steel"].points == pytest.approx(side.points)
    # What stands open is of the same wood.
    assert wide["DO1"].surface is door.surface


def test_pieces_that_are_moved_apart_keep_what_is_on_them() -> None:
    unit = unit_from(CUPBOARD)
    here = {each.name: each for each in unit_bodies(unit, {}, texel=20.0)}
    away = {each.name: each for each in unit_bodies(unit, {"DO1": (0.0, -500.0, 10.0)}, texel=20.0)}
    for name in ("DO1", "DO1 brass", "DO1 steel"):
        assert away[name].points - here[name].points == pytest.approx(
            np.tile([0.0, -500.0, 10.0], (len(here[name].points), 1))
        )
    assert away["DO2"].points == pytest.approx(here["DO2"].points)


def test_a_wooden_knob_is_of_wood_on_a_painted_door() -> None:
    unit = unit_from(
        CUPBOARD.replace("brass", "turned")
        + 'finish: {everything: {kind: paint, colour: "#336699", sheen: gloss}}'
    )
    made = {each.name: each for each in unit_bodies(unit, {}, texel=20.0)}
    knob, door = (made[name].surface for name in ("DO1 wood", "DO1"))
    assert not knob.metal
    assert isinstance(knob.colour, tuple)
    assert isinstance(door.colour, tuple)
    assert knob.colour[0] > knob.colour[2]
    assert door.colour[0] < door.colour[2]


@pytest.mark.parametrize("of", ["oak", "walnut", "white", "painted"])
def test_a_knob_is_of_what_the_spec_says(of: str) -> None:
    unit = unit_from(
        CUPBOARD.replace("name: brass knob", f"name: brass knob, material: {of}")
        + 'finish: {everything: {kind: paint, colour: "#336699", sheen: gloss}}'
    )
    made = {each.name: each.surface for each in unit_bodies(unit, {}, texel=20.0)}
    knob, door = made[f"DO1 {of}"], made["DO1"]
    assert not knob.metal
    assert isinstance(knob.colour, tuple)
    red, _, blue = knob.colour
    assert (knob.colour == door.colour) == (of == "painted")
    if of in ("oak", "walnut"):
        assert red > 1.5 * blue
    if of == "white":
        assert blue > 0.7
    assert (red < 0.2) == (of in ("walnut", "painted"))


@pytest.mark.parametrize("ware", WARES)
def test_drawings_show_what_is_bought_in_the_colours_of_photographs(ware: Ware) -> None:
    shown = ware_surface(ware, None).colour
    assert isinstance(shown, tuple)
    assert srgb.code_of(np.array(shown)) == WARES[ware]
