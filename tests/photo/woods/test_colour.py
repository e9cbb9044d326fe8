"""Colours as reflectance, and the mean of what is generated against the table."""

import numpy as np
import pytest

from photo.woods.samples import lab, part_of, seen
from rodwright.photo.woods.colour import linear_of_lab
from rodwright.photo.woods.colours import colour_of
from rodwright.pictures.colours import linear
from rodwright.trade.materials import MATERIALS
from rodwright.trade.wood_colours import WOOD_COLOURS

BOARDS = 8
WOODS = sorted(set(WOOD_COLOURS) & {name for name in MATERIALS if MATERIALS[name].grained})
PANELS = ["mdf", "mr mdf", "chipboard", "hardboard", "osb", "melamine-faced chipboard"]


def test_the_tone_curve_is_that_of_srgb() -> None:
    assert linear("#ff8000") == pytest.approx((1.0, 0.2158605, 0.0))
    assert linear("#0a0a0a")[0] == pytest.approx(10 / 255 / 12.92)


@pytest.mark.parametrize("colour", [(67.5, 6.5, 20.5), (45.0, 7.0, 16.5), (5.0, 0.5, 1.0)])
def test_cielab_there_and_back(colour: tuple[float, float, float]) -> None:
    assert lab(np.array(linear_of_lab(*colour))) == pytest.approx(colour, abs=0.05)


def test_white_is_white() -> None:
    assert linear_of_lab(100.0, 0.0, 0.0) == pytest.approx((1.0, 1.0, 1.0), abs=1e-3)


@pytest.mark.parametrize("material", WOODS + PANELS)
def test_the_mean_of_many_faces_is_the_colour_that_was_measured(material: str) -> None:
    kind = "sheet" if material in PANELS or "ply" in material or "board" in material else "board"
    faces = [
        seen(part_of(material, (800.0, 150.0, 20.0), kind=kind, ref=f"P{number}"), texel=5.0)
        for number in range(BOARDS)
    ]
    mean = lab(np.mean(faces, axis=(0, 1, 2)))
    assert WOOD_COLOURS[material].difference(*mean) < 3.0


@pytest.mark.parametrize("material", ["oak-veneered mdf", "walnut plywood", "beech plywood"])
def test_a_veneer_has_the_colour_of_its_wood(material: str) -> None:
    wood = material.split("-")[0].split()[0]
    faces = [seen(part_of(material, kind="sheet", ref=f"P{n}"), texel=5.0) for n in range(BOARDS)]
    assert WOOD_COLOURS[wood].difference(*lab(np.mean(faces, axis=(0, 1, 2)))) < 3.0


def test_a_colour_that_the_maker_chose_is_kept() -> None:
    assert colour_of("melamine-faced mdf", "#203040") == linear("#203040")
    assert colour_of("oak", MATERIALS["oak"].colour) != linear(MATERIALS["oak"].colour)
    assert colour_of("some fantasy wood", "#803010") == linear("#803010")
