"""Meshes put together."""

from __future__ import annotations

import numpy as np
import pytest

from rodwright.pictures.triangles import Mesh, merged


def _triangle(along: float) -> Mesh:
    points = np.array([[along, 0.0, 0.0], [along + 1, 0.0, 0.0], [along, 1.0, 0.0]])
    return Mesh(points, np.tile([0.0, 0.0, 1.0], (3, 1)), np.array([[0, 1, 2]]))


def test_triangles_keep_their_corners() -> None:
    one, other, third = (_triangle(along) for along in (0.0, 5.0, 9.0))
    both = merged(iter((one, other, third)))
    assert both.triangles.tolist() == [[0, 1, 2], [3, 4, 5], [6, 7, 8]]
    for number, each in enumerate((one, other, third)):
        assert (both.points[both.triangles[number]] == each.points).all()
    assert both.normals.shape == (9, 3)


def test_there_is_nothing_of_nothing() -> None:
    with pytest.raises(ValueError, match="concatenate"):
        merged(())
