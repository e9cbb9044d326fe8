"""Solid wood: rings as the board was sawn, grain along it, no two alike."""

from __future__ import annotations

import os
import subprocess
import sys

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.typing import NDArray

from photo.woods.samples import lab, part_of, seen
from rodwright.photo.woods.boards import strip_width
from rodwright.photo.woods.chance import chance
from rodwright.photo.woods.colours import colour_of
from rodwright.photo.woods.figures import figure_of
from rodwright.photo.woods.logs import log_of
from rodwright.photo.woods.rings import rings_of
from rodwright.photo.woods.timber import Timber, timber
from rodwright.unit import Grain, Stock
from rodwright.unit.stock import Piece

SPECIES = ["oak", "ash", "beech", "birch", "maple", "cherry", "walnut", "pine", "spruce"]
SAME = """
from hashlib import sha256
from photo.woods.samples import part_of, seen
print(sha256(seen(part_of("oak")).tobytes()).hexdigest())
"""


def correlation(values: NDArray[np.float64], lag: int, axis: int) -> float:
    """How alike points a lag apart are."""
    near = np.take(values, range(values.shape[axis] - lag), axis)
    far = np.take(values, range(lag, values.shape[axis]), axis)
    return float(np.corrcoef(near.ravel(), far.ravel())[0, 1])


def test_every_run_makes_the_same_board() -> None:
    digests = {
        subprocess.run(
            [sys.executable, "-c", SAME],
            capture_output=True,
            text=True,
            check=True,
            env={**os.environ, "PYTHONHASHSEED": salt, "PYTHONPATH": os.pathsep.join(sys.path)},
        ).stdout
        for salt in ("1", "2")
    }
    assert len(digests) == 1


@pytest.mark.parametrize("species", SPECIES)
def test_no_two_boards_are_alike(species: str) -> None:
    one, other = (seen(part_of(species, ref=ref))[..., 1] for ref in ("A1", "A2"))
    again = seen(part_of(species, ref="A1"), seed=2)[..., 1]
    for different in (other, again):
        assert abs(np.corrcoef(one.ravel(), different.ravel())[0, 1]) < 0.5
    assert np.array_equal(one, seen(part_of(species, ref="A1"))[..., 1])


@pytest.mark.parametrize("species", SPECIES)
@pytest.mark.parametrize("sawn", ["flat", "quarter"])
def test_the_grain_runs_along_the_board(species: str, sawn: str) -> None:
    faces = [
        seen(part_of(species, (600.0, 120.0, 20.0), sawn=sawn, ref=f"P{n}"), texel=1.0)[..., 1]  # type: ignore[arg-type]
        for n in range(3)
    ]
    along, across = (np.mean([correlation(face, 12, axis) for face in faces]) for axis in (1, 0))
    assert along > 0.45
    assert along > across + 0.3
    turned = seen(
        part_of(species, (120.0, 600.0, 20.0), sawn=sawn, grain=Grain.CROSSWISE, ref="P0"),  # type: ignore[arg-type]
        texel=1.0,
    )[..., 1]
    assert np.allclose(turned.T, faces[0])


def board(sawn: str, number: int) -> Timber:
    """A board of larch: its rings are the plainest."""
    plain = figure_of("larch")
    return timber(plain, (0.4, 0.3, 0.2), (120.0, 25.0), sawn, number)  # type: ignore[arg-type]


@pytest.mark.parametrize("number", range(6))
@pytest.mark.parametrize("sawn", ["flat", "quarter"])
def test_rings_on_an_end_are_arcs_about_the_pith(sawn: str, number: int) -> None:
    """The figure of the end changes towards the pith and not around it (the mean square of the
    slope, both ways)."""
    made = board(sawn, number)
    step = 0.25
    y, z = np.meshgrid(np.arange(-50, 50, step), np.arange(-11, 11, step))
    points = np.column_stack([np.full(y.size, 0.0), y.ravel(), z.ravel()]).astype(np.float32)
    normals = np.tile(np.array([-1.0, 0.0, 0.0], np.float32), (len(points), 1))
    dark = made.rings.dark.mean(made.log.at(points).radius, np.full(len(points), step))
    assert np.std(made.depths(points, normals, step)) >= 0.8 * np.std(dark)
    slope_z, slope_y = np.gradient(dark.reshape(y.shape), step)
    to_pith = np.stack([made.log.pith[0] - y, made.log.pith[1] - z])
    to_pith /= np.hypot(*to_pith)
    towards = slope_y * to_pith[0] + slope_z * to_pith[1]
    around = slope_y * to_pith[1] - slope_z * to_pith[0]
    assert np.mean(around**2) < 0.12 * np.mean(towards**2)


@given(
    st.floats(20, 300), st.floats(6, 60), st.sampled_from(["flat", "quarter"]), st.integers(0, 9999)
)
@settings(max_examples=60)
def test_a_board_is_sawn_clear_of_the_pith(
    width: float, thickness: float, sawn: str, number: int
) -> None:
    log = log_of(width, thickness, sawn, 2.5, chance(number))  # type: ignore[arg-type]
    aside, above = log.pith
    assert abs(aside) > width / 2 or abs(above) > thickness / 2
    lean = np.degrees(np.arctan2(abs(aside), abs(above)))
    assert lean <= 34.5 if sawn == "flat" else lean >= 81.5


@pytest.mark.parametrize("species", SPECIES)
def test_rings_are_as_wide_as_the_wood_grows_them(species: str) -> None:
    figure = figure_of(species)
    widths = [np.diff(rings_of(figure, chance("rings", n)).edges)[20:120].mean() for n in range(12)]
    assert np.mean(widths) == pytest.approx(figure.anatomy.ring, rel=0.2)
    assert min(widths) < 0.95 * max(widths)


@pytest.mark.parametrize("species", SPECIES)
def test_end_grain_is_darker(species: str) -> None:
    part = part_of(species)
    face, end = (lab(seen(part, each).mean(axis=(0, 1)))[0] for each in ("face", "near end"))  # type: ignore[arg-type]
    assert 4 < face - end < 14


@pytest.mark.parametrize("species", SPECIES)
def test_the_figure_is_quiet(species: str) -> None:
    """Real boards have little contrast: at arm's length (2 mm) a few per cent."""
    faces = [seen(part_of(species, ref=f"P{n}"))[..., 1] for n in range(6)]
    contrast = np.mean([face.std() / face.mean() for face in faces])
    assert 0.012 < contrast < 0.16


def test_edges_continue_the_face() -> None:
    part = part_of("pine")
    face, edge = (seen(part, each, texel=0.5)[..., 1] for each in ("face", "face edge"))  # type: ignore[arg-type]
    # The last row of the edge and the first of the face lie on the two sides of one arris.
    assert np.corrcoef(face[0], edge[-1])[0, 1] > 0.8


def test_a_wide_panel_is_glued_up_of_boards() -> None:
    part = part_of("oak", (300.0, 480.0, 25.0))
    strip = strip_width(part.blank.stock, 480.0)
    assert strip == pytest.approx(160.0)
    # Were it one board, the first strip's would go on past the joint.
    first = timber(
        figure_of("oak"),
        colour_of("oak", "#c8a271"),
        (160.0, 25.0),
        "flat",
        1,
        "part",
        "P1",
        "strip",
        0,
    )
    x, y = np.meshgrid(np.arange(1, 300, 2.0), np.arange(1, 480, 2.0))
    points = np.column_stack([x.ravel(), y.ravel() - 80.0, np.full(x.size, 12.5)])
    normals = np.tile(np.array([0.0, 0.0, 1.0], np.float32), (len(points), 1))
    on = first.reflectance(points.astype(np.float32), normals, 2.0).reshape(*x.shape, 3)
    face = seen(part)
    assert np.allclose(face[:80], on[:80], atol=1e-5)
    for strip in (slice(80, 160), slice(160, 240)):
        alike = np.corrcoef(face[strip, :, 1].ravel(), on[strip, :, 1].ravel())[0, 1]
        assert abs(alike) < 0.5


def test_strips_are_no_wider_than_the_boards_at_hand() -> None:
    stock = part_of("oak").blank.stock
    assert strip_width(stock, 200.0) == 200.0
    narrow = Stock(
        "s",
        "board",
        "oak",
        20.0,
        Grain.LENGTHWISE,
        600.0,
        "",
        "#c8a271",
        pieces=(Piece(2400.0, 100.0, 4),),
    )
    assert strip_width(narrow, 100.0) == 100.0
    assert strip_width(narrow, 200.0) < 98.0


@pytest.mark.parametrize("species", ["oak", "beech", "pine"])
def test_what_is_finer_than_a_texel_is_told_by_its_mean(species: str) -> None:
    part = part_of(species, (600.0, 120.0, 20.0))
    fine, coarse = (seen(part, texel=texel)[..., 1] for texel in (0.5, 4.0))
    blocks = fine.reshape(30, 8, 150, 8).mean(axis=(1, 3))
    assert coarse.mean() == pytest.approx(blocks.mean(), rel=0.01)
    assert coarse.std() < 1.35 * blocks.std()


def test_oak_has_flecks_where_it_is_quarter_sawn() -> None:
    def lighter(sawn: str) -> float:
        shares = []
        for number in range(6):
            made = timber(figure_of("oak"), (0.4, 0.3, 0.2), (120.0, 20.0), sawn, number)  # type: ignore[arg-type]
            x, y = np.meshgrid(np.arange(0, 300, 0.7), np.arange(-55, 55, 0.7))
            points = np.column_stack([x.ravel(), y.ravel(), np.full(x.size, 10.0)])
            normals = np.tile(np.array([0.0, 0.0, 1.0], np.float32), (len(points), 1))
            place = made.log.at(points.astype(np.float32))
            shares.append(np.mean(made._rays(place, normals, 0.7) < -0.05))  # noqa: SLF001
        return float(np.mean(shares))

    assert lighter("quarter") > 0.03
    assert lighter("flat") < 0.005
