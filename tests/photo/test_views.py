"""What is photographed is all in the picture, with what stands on top, and with doors open."""

from functools import cache
from pathlib import Path

import numpy as np
import pytest

from rodwright.photo.contents import things_in
from rodwright.photo.framing import MARGIN, on_picture
from rodwright.photo.views import apart, closed, open_view
from rodwright.pictures.explode import explode
from rodwright.pictures.opened import opened
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes import read_spec

MODELS = Path(__file__).parents[2] / "models"
LEAST = MARGIN - 1e-6


@cache
def unit_of(stem: str) -> Unit:
    return set_out(read_spec(MODELS / f"{stem}.yaml"))


@pytest.mark.parametrize("stem", ["hallway-bookcase", "niche-shelf"])
def test_what_stands_on_top_is_in_the_picture(stem: str) -> None:
    unit = unit_of(stem)
    camera = closed(unit, 64, contents=True).camera
    boxes = [thing.box for thing in things_in(unit, 0)]
    places = on_picture(camera, [corner for box in boxes for corner in box.corners()])
    assert places.min() >= LEAST
    assert places.max() <= 1 - LEAST


def test_open_doors_are_in_the_picture() -> None:
    unit = unit_of("linen-cupboard")
    camera = open_view(unit, 64).camera
    boxes = [part.bounds() for part in opened(unit).parts]
    places = on_picture(camera, [corner for box in boxes for corner in box.corners()])
    (left, bottom), (right, top) = places.min(axis=0), places.max(axis=0)
    assert min(left, bottom, 1 - right, 1 - top) >= LEAST
    assert max(right - left, top - bottom) == pytest.approx(1 - 2 * MARGIN, abs=1e-3)


def test_all_that_is_taken_apart_is_in_the_picture_above_the_floor() -> None:
    unit = unit_of("niche-shelf")
    scene = apart(unit, 64)
    moves = explode(unit)
    boxes = [part.bounds().moved(moves[part.ref]) for part in unit.parts]
    places = on_picture(scene.camera, [corner for box in boxes for corner in box.corners()])
    assert places.min() >= LEAST
    assert places.max() <= 1 - LEAST
    floor = next(body for body in scene.bodies if body.name == "floor")
    assert floor.points[:, 2].max() < min(box.low[2] for box in boxes)


def test_a_camera_that_is_given_takes_the_picture() -> None:
    unit = unit_of("niche-shelf")
    camera = closed(unit, 64).camera
    other = closed(unit, 64, contents=True, camera=camera)
    assert other.camera == camera
    points = np.concatenate([body.points for body in other.bodies])
    assert points[:, 1].min() < camera.eye[1]
