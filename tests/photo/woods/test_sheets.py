"""Sheet goods: plies, veneers, what is glued on, and fronts through which the grain runs on."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise
from typing import Literal

import numpy as np
import pytest

from photo.woods.samples import lab, part_of, seen
from rodwright.photo.woods import looks_of
from rodwright.photo.woods.figures import figure_of
from rodwright.photo.woods.leaves import laying_of, leaves
from rodwright.photo.woods.plies import ply_edges
from rodwright.trade.materials import MATERIALS
from rodwright.trade.wood_colours import WOOD_COLOURS
from rodwright.unit import Part, Placement, Surface
from rodwright.unit.stock import Edging

BIRCH_PLIES = {4: 3, 6.5: 5, 9: 7, 12: 9, 15: 11, 18: 13, 21: 15, 24: 17, 27: 19, 30: 21}
"""Thickness, mm, and plies of birch plywood: Handbook of Finnish Plywood, from memory."""


@pytest.mark.parametrize(("thickness", "plies"), BIRCH_PLIES.items())
def test_birch_plywood_has_as_many_plies_as_it_is_made_of(thickness: float, plies: int) -> None:
    edges = ply_edges(thickness, 1.45)
    assert len(edges) - 1 == plies
    assert edges[0] == 0.0
    assert edges[-1] == pytest.approx(thickness)
    assert np.diff(edges).min() > 0.7


@pytest.mark.parametrize("face", ["face edge", "near end"])
@pytest.mark.parametrize("thickness", [12.0, 18.0])
def test_the_plies_can_be_counted_at_an_edge(face: str, thickness: float) -> None:
    part = part_of("birch plywood", (200.0, 200.0, thickness), kind="sheet")
    rows = seen(part, face, texel=0.1)[..., 1].mean(axis=1)  # type: ignore[arg-type]
    edges = ply_edges(thickness, 1.45)
    middles = [(low + high) / 2 for low, high in pairwise(edges)]
    shades = np.array([rows[int(middle / 0.1)] for middle in middles])
    rises = np.sign(np.diff(shades))
    assert len(shades) == BIRCH_PLIES[thickness]
    # Light and dark by turns; at the end the face's own plies are the dark ones.
    assert np.all(rises[:-1] == -rises[1:])
    assert (rises[0] > 0) == (face == "near end")


def test_cross_plies_are_seen_the_other_way_at_the_ends() -> None:
    part = part_of("birch plywood", (200.0, 200.0, 18.0), kind="sheet")
    edge, end = (
        seen(part, face, texel=0.1)[..., 1].mean(axis=1)  # type: ignore[arg-type]
        for face in ("face edge", "near end")
    )
    inner = slice(15, -15)
    assert np.corrcoef(edge[inner], end[inner])[0, 1] < 0.5


def test_the_two_faces_of_a_sheet_differ() -> None:
    part = part_of("birch plywood", (400.0, 300.0, 18.0), kind="sheet")
    face, reverse = (seen(part, each)[..., 1] for each in ("face", "reverse"))  # type: ignore[arg-type]
    assert abs(np.corrcoef(face.ravel(), reverse.ravel())[0, 1]) < 0.6


def front(
    ref: str,
    material: str,
    kind: Literal["board", "sheet"],
    low: float,
    high: float,
    *,
    turned: bool,
) -> Part:
    """A drawer front 400 wide between two heights, its grain upright or turned over with it."""
    tall = high - low
    if turned:
        placement = Placement((400.0, 0.0, high), (0, 0, -1), (-1, 0, 0))
    else:
        placement = Placement((0.0, 0.0, low), (0, 0, 1), (1, 0, 0))
    return part_of(
        material, (tall, 400.0, 19.0), kind=kind, ref=ref, placement=placement, grain_run="run"
    )


@pytest.mark.parametrize("material", ["oak-veneered mdf", "birch plywood", "oak"])
def test_the_figure_runs_on_from_front_to_front(material: str) -> None:
    kind: Literal["board", "sheet"] = "board" if material == "oak" else "sheet"
    one = front("D1", material, kind, 0.0, 180.0, turned=False)
    other = front("D2", material, kind, 183.0, 450.0, turned=True)
    x = np.linspace(5, 395, 200)
    shown = []
    for part in (one, other):
        # The same points of the unit, as each part has them.
        points = np.array([part.placement.to_part((at, 0.0, 181.5)) for at in x])
        outer = part.placement.turned_to_part((0.0, 1.0, 0.0))
        points[:, 2] = part.blank.thickness if outer[2] > 0 else 0.0
        normals = np.tile(outer, (len(x), 1))
        shown.append(looks_of(part, 3).reflectance(points, normals))
    assert np.allclose(shown[0], shown[1], atol=1e-4)
    assert shown[0].std() > 0.003


@pytest.mark.parametrize("number", range(6))
def test_leaves_lie_side_by_side(number: int) -> None:
    """Slip or book matched, a leaf looks as the one before but a little deeper in the flitch."""
    key = (number,)
    laid = laying_of(key)
    field = leaves(figure_of("larch"), (0.4, 0.3, 0.2), "quarter", key)
    across = np.arange(1, laid.width, 2.0)
    shown = []
    for leaf in (2, 3, 9):
        turned = laid.book and leaf % 2 == 1
        own = laid.width - across if turned else across
        x, y = np.meshgrid(np.arange(0, 500, 2.0), leaf * laid.width + own - laid.start)
        points = np.column_stack([x.ravel(), y.ravel(), np.zeros(x.size)]).astype(np.float32)
        shown.append(field(points, np.zeros_like(points), 2.0)[:, 1])
    next_, later = (np.corrcoef(shown[0], each)[0, 1] for each in shown[1:])
    assert next_ > 0.5
    assert next_ > later


def test_leaves_are_slip_or_book_matched() -> None:
    laid = [laying_of((number,)) for number in range(30)]
    assert {each.book for each in laid} == {True, False}
    assert all(150 <= each.width <= 280 for each in laid)


def test_edging_covers_the_edge_that_it_is_glued_on() -> None:
    edging = (Edging(Surface.FACE_EDGE, "oak veneer", 0.6),)
    part = part_of("oak-veneered mdf", (600.0, 400.0, 19.0), kind="sheet", edged=edging)
    bare = part_of("oak-veneered mdf", (600.0, 400.0, 19.0), kind="sheet")
    covered = lab(seen(part, "face edge").mean(axis=(0, 1)))
    assert WOOD_COLOURS["oak"].difference(*covered) < 7
    assert np.array_equal(seen(part, "near end"), seen(bare, "near end"))
    assert not np.allclose(seen(part, "face edge"), seen(bare, "face edge"))


def test_tape_has_the_colour_that_is_ordered() -> None:
    edging = (Edging(Surface.FACE_EDGE, "ABS", 1.0, "black"),)
    part = part_of("melamine-faced chipboard", kind="sheet", edged=edging)
    assert lab(seen(part, "face edge").mean(axis=(0, 1)))[0] < 25
    assert lab(seen(part).mean(axis=(0, 1)))[0] > 90


def test_melamine_is_even_and_its_core_shows() -> None:
    part = part_of("melamine-faced chipboard", kind="sheet")
    assert seen(part).std(axis=(0, 1)).max() < 1e-6
    assert lab(seen(part, "near end").mean(axis=(0, 1)))[0] < 75


def test_glass_is_clear() -> None:
    looks = looks_of(part_of("glass", kind="sheet"), 1)
    assert looks.clear
    assert looks.even is not None
    assert looks_of(part_of("oak"), 1).even is None


@pytest.mark.parametrize("material", sorted(MATERIALS))
def test_every_material_has_a_look(material: str) -> None:
    sheet = any(mark in material for mark in ("ply", "board", "mdf", "hb.", "osb", "hdf", "glass"))
    part = part_of(material, (500.0, 260.0, 18.0), kind="sheet" if sheet else "board")
    rng = np.random.default_rng(1)
    points = rng.uniform(0, part.blank.size, (400, 3))
    normals = rng.normal(size=(400, 3))
    normals /= np.linalg.norm(normals, axis=1, keepdims=True)
    found = looks_of(part, 1).reflectance(points, normals)
    assert found.shape == (400, 3)
    assert np.all((found > 0.01) & (found <= 1.0))


@pytest.mark.parametrize("kind", ["board", "sheet"])
@pytest.mark.parametrize("name", ["quebracho", "stone pine", "C24", "oddply", ""])
def test_a_wood_that_nobody_knows_has_a_look(name: str, kind: Literal["board", "sheet"]) -> None:
    part = part_of("oak", kind=kind)
    stock = replace(part.blank.stock, material=name)
    found = seen(replace(part, blank=replace(part.blank, stock=stock)))
    assert np.all((found > 0.01) & (found < 1.0))
