"""Pictures of materials: their colour, their seams, their scale."""

from __future__ import annotations

import base64
import io
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image

from kit import samples
from photo.woods.samples import lab, part_of
from rodwright.page.surfaces import look_of, surface_of
from rodwright.page.tiles import LONG, WIDE, Tiles, jpeg, textures_of, tiles_of
from rodwright.photo import srgb
from rodwright.photo.woods.plies import PLY, ply_edges
from rodwright.pictures.colours import linear
from rodwright.unit import Part
from rodwright.unit.finish import Finish

OAK = part_of("european oak", finish=Finish("oil", "", "matt"))
PLY_18 = part_of("birch plywood", (600.0, 300.0, 18.0), kind="sheet")
VENEERED = part_of("oak-veneered mdf", (600.0, 300.0, 19.0), kind="sheet")


def tiles(part: Part) -> Tiles:
    found = tiles_of(look_of(part))
    assert found is not None
    return found


def read(data: bytes) -> NDArray[np.float64]:
    return np.asarray(Image.open(io.BytesIO(data)).convert("RGB")) / 255


@pytest.mark.parametrize("part", [OAK, PLY_18, VENEERED])
def test_the_mean_of_a_face_is_the_colour_of_its_surface(part: Part) -> None:
    mean = srgb.decoded(read(jpeg(tiles(part).face))).mean(axis=(0, 1))
    colour = np.array(linear(surface_of(part)[1].colour))
    assert np.linalg.norm(lab(mean) - lab(colour)) < 1.0  # CIE 1976 colour difference


@pytest.mark.parametrize("part", [OAK, PLY_18, VENEERED])
def test_opposite_sides_go_on_into_each_other(part: Part) -> None:
    found = tiles(part)
    for picture, axes in ((found.face, (0, 1)), (found.edge, (1,)), (found.end, (1,))):
        for axis in axes:
            lines = np.moveaxis(picture, axis, 0).astype(float)
            steps = np.abs(np.diff(lines, axis=0)).mean(axis=(1, 2))
            seam = np.abs(lines[0] - lines[-1]).mean()
            assert seam <= steps.max()
            assert lines[0].std() > 0.5 * lines.std(axis=(1, 2)).mean()  # nor is it pale there


def test_a_seam_that_isnt_joined_would_be_found() -> None:
    face = tiles(OAK).face.astype(float)[:, 100:-100]
    steps = np.abs(np.diff(face, axis=1)).mean(axis=(0, 2))
    assert np.abs(face[:, 0] - face[:, -1]).mean() > steps.max()


def test_the_edge_of_plywood_shows_every_ply_at_its_height() -> None:
    found = tiles(PLY_18)
    assert found.size == (LONG, WIDE, 18.0)
    levels = ply_edges(18.0, PLY["birch"])
    assert len(levels) - 1 == 13  # plies: what 18 mm birch plywood is sold with
    rows = found.edge[::-1].mean(axis=(1, 2))  # from the reverse up
    at = (np.arange(len(rows)) + 0.5) * 18.0 / len(rows)
    plies = [
        rows[(at > low + 0.3) & (at < high - 0.3)].mean()
        for low, high in pairwise(levels)
        if high - low > 1.2
    ]
    # Long grain and end grain by turns: each inner ply differs from both beside it, the same way.
    steps = np.diff(plies)
    assert np.all(steps[:-1] * steps[1:] < 0)
    ends = found.end[::-1].mean(axis=(1, 2))
    assert np.corrcoef(rows, ends)[0, 1] < 0  # and at an end the other way about


def test_grain_runs_to_the_right() -> None:
    face = tiles(OAK).face.astype(float)
    across, along = (np.abs(np.diff(face, axis=axis)).mean() for axis in (0, 1))
    assert across > 1.5 * along


def test_what_has_one_colour_has_no_pictures() -> None:
    painted = replace(OAK, finish=Finish("paint", "#305848", "satin"))
    for part in (painted, part_of("mdf", kind="sheet"), part_of("glass", kind="sheet")):
        assert tiles_of(look_of(part)) is None


def test_textures_of_a_unit_are_told_once_and_small() -> None:
    unit = samples.bookcase()
    found = textures_of(unit)
    assert found
    assert found.keys() <= {surface_of(part)[0] for part in unit.parts}
    assert textures_of(unit, found) == {}
    for texture in found.values():
        kind, _, text = texture.face.partition(",")
        assert kind == "data:image/jpeg;base64"
        assert read(base64.b64decode(text)).shape == (512, 1024, 3)
        assert sum(map(len, (texture.face, texture.edge, texture.end))) < 110_000
