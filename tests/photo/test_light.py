"""A room's light comes from its window and from behind the camera."""

import pytest

from rodwright.geometry.boxes import Box
from rodwright.photo.light import light_in


@pytest.mark.parametrize("side", [-1, 1])
def test_the_window_is_at_its_side_and_shines_into_the_room(side: int) -> None:
    room = Box((-2000.0, -5000.0, 0.0), (3000.0, 300.0, 2400.0))
    shown = Box((0.0, 0.0, 0.0), (1000.0, 300.0, 2000.0))
    window, fill = light_in(room, shown, side)
    (a, b, c), (x, y, z) = window.edges
    out = (b * z - c * y, c * x - a * z, a * y - b * x)
    assert out[0] * side < 0
    assert out[1] == out[2] == 0
    assert (window.corner[0] - 500) * side > 0
    assert fill.corner[1] < -4000
    for lamp in (window, fill):
        for one in (0, 1):
            for other in (0, 1):
                corner = tuple(
                    lamp.corner[i] + one * lamp.edges[0][i] + other * lamp.edges[1][i]
                    for i in range(3)
                )
                assert room.contains_point(corner)  # type: ignore[arg-type]
