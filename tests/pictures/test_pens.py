"""Lines close beside each other keep white between them."""

import numpy as np
import pytest
from PIL import Image

from rodwright.pictures.ink import Drawing, Stroke
from rodwright.pictures.paint import to_image
from rodwright.pictures.pens import thinned


def _level(y: float, start: float = 0.0, stop: float = 100.0) -> list[list[float]]:
    return [[start, y], [stop, y]]


def _by_pen(found: dict[float, np.ndarray]) -> dict[float, float]:
    return {pen: float(np.abs(each[:, 1, 0] - each[:, 0, 0]).sum()) for pen, each in found.items()}


def test_a_line_on_its_own_keeps_its_pen() -> None:
    ends = np.array([_level(0.0), _level(10.0), [[0.0, 0.0], [0.0, 10.0]]])
    (pen,) = thinned(ends, 2.0, 0.5)
    assert pen == 2.0


def test_two_lines_half_a_pen_apart_are_thinned_only_where_they_run_together() -> None:
    found = _by_pen(thinned(np.array([_level(0.0), _level(2.0, 40.0, 100.0)]), 2.0, 0.5))
    assert found == {1.0: pytest.approx(120.0), 2.0: pytest.approx(40.0)}


def test_no_pen_is_finer_than_the_least_and_the_same_line_twice_stays_strong() -> None:
    assert min(thinned(np.array([_level(0.0), _level(0.3)]), 2.0, 0.6)) == pytest.approx(0.6)
    assert list(thinned(np.array([_level(0.0), _level(0.0)]), 2.0, 0.6)) == [2.0]


def test_lines_among_others_are_thinned_beside_these() -> None:
    found = thinned(np.array([_level(0.0)]), 2.0, 0.5, among=np.array([_level(1.5)]))
    assert list(found) == [pytest.approx(0.8)]


def test_what_was_a_bar_shows_its_lines() -> None:
    ends = np.array([_level(20.0 + 2.6 * number) for number in range(4)])
    plain = Stroke(tuple(((a, b), (c, d)) for (a, b), (c, d) in ends.tolist()), 2.6)
    fine = [
        Stroke(tuple(((a, b), (c, d)) for (a, b), (c, d) in pieces.tolist()), pen)
        for pen, pieces in thinned(ends, 2.6, 0.8).items()
    ]

    def column(*marks: Stroke) -> list[int]:
        image = to_image(Drawing(100.0, 50.0, "t", "d", marks), 2.0)
        assert isinstance(image, Image.Image)
        return np.asarray(image.convert("L"))[:, 100].tolist()

    # Between the first line and the last there was no light pixel, and now there are.
    assert max(column(plain)[41:54]) < 100
    assert max(column(*fine)[41:54]) > 180


def test_lines_with_nothing_beside_them_stay_as_they_are_and_points_are_left_out() -> None:
    ends = np.array([_level(0.0), [[7.0, 7.0], [7.0, 7.0]], _level(50.0), _level(51.0)])
    found = {pen: each.tolist() for pen, each in thinned(ends, 2.0, 0.25).items()}
    assert found == {0.4: [_level(50.0), _level(51.0)], 2.0: [_level(0.0)]}
