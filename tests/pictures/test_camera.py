"""Screen coordinates."""

import numpy as np
import pytest

from rodwright.geometry import Box
from rodwright.pictures.camera import (
    BLOCK,
    FROM_LEFT,
    FRONT,
    PLAN,
    Camera,
    looking_from,
    three_quarter,
)

BOX = Box((0.0, -20.0, 0.0), (800.0, 300.0, 1000.0))


@pytest.mark.parametrize(
    ("camera", "expected"),
    [(FRONT, (1.0, 3.0, -2.0)), (FROM_LEFT, (-2.0, 3.0, -1.0)), (PLAN, (1.0, 2.0, 3.0))],
)
def test_views_show_the_right_axes(camera: Camera, expected: tuple[float, ...]) -> None:
    assert camera.screen(np.array([[1.0, 2.0, 3.0]]))[0].tolist() == pytest.approx(expected)


@pytest.mark.parametrize(
    "camera", [FRONT, PLAN, three_quarter(BOX), looking_from((0.0, 0.0, -1.0))]
)
def test_screen_and_back(camera: Camera) -> None:
    points = np.random.default_rng(1).uniform(-500, 1000, (50, 3))
    assert np.allclose(camera.unit(camera.screen(points)), points)
    assert np.linalg.det(camera.axes()) == pytest.approx(1.0)


def test_more_points_than_are_turned_at_a_time() -> None:
    points = np.random.default_rng(2).uniform(-500, 1000, (2 * BLOCK + 3, 3))
    camera = three_quarter(BOX)
    screen = camera.screen(points)
    assert np.allclose(camera.unit(screen), points)
    assert np.array_equal(camera.screen(points[[0, BLOCK, -1]]), screen[[0, BLOCK, -1]])


def test_perspective_keeps_planes_and_makes_near_things_larger() -> None:
    camera = three_quarter(BOX)
    # Nine points of one plane still lie on one.
    plane = np.array([[x, 0.3 * x + 0.5 * z, z] for x in (0, 400, 800) for z in (0, 500, 1000)])
    seen = camera.screen(plane.astype(float))
    assert np.linalg.matrix_rank(seen - seen.mean(axis=0), tol=1e-6) == 2
    front, rear = (
        camera.screen(np.array([[0.0, y, 0.0], [0.0, y, 1000.0]])) for y in (-20.0, 300.0)
    )
    heights = [np.linalg.norm(pair[1, :2] - pair[0, :2]) for pair in (front, rear)]
    assert heights[0] > heights[1]
