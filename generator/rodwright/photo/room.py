"""A plain room round a unit: floor, walls, the opening it stands in, and a window's light."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from rodwright.photo.scene import Body, Colour, Lamp, Surface
from rodwright.unit import Unit


@dataclass(frozen=True, slots=True, eq=False)
class Room:
    """A room's bodies and lamps, and what its light asks of the exposure."""

    bodies: tuple[Body, ...]
    lamps: tuple[Lamp, ...]
    sky: Colour
    exposure: float


def room_round(unit: Unit) -> Room:
    """The room that a unit stands in."""
    low, high = unit.envelope.low, unit.envelope.high
    left, right = low[0] - 1500, high[0] + 1500
    near, far = low[1] - 4000, high[1] + 5
    top = max(high[2] + 200, 2500.0)
    white = Surface((0.75, 0.74, 0.72), 0.9)
    floor = Surface((0.35, 0.25, 0.18), 0.5)

    def quad(name: str, points: list[tuple[float, float, float]], surface: Surface) -> Body:
        corners = np.array(points)
        normal = np.cross(corners[1] - corners[0], corners[2] - corners[0])
        normal /= np.linalg.norm(normal)
        return Body(
            name, corners, np.tile(normal, (4, 1)), np.array([[0, 1, 2], [0, 2, 3]]), surface
        )

    bodies = (
        quad("floor", [(left, near, 0), (right, near, 0), (right, far, 0), (left, far, 0)], floor),
        quad("wall", [(left, far, 0), (right, far, 0), (right, far, top), (left, far, top)], white),
        quad("left", [(left, near, 0), (left, far, 0), (left, far, top), (left, near, top)], white),
        quad(
            "right",
            [(right, far, 0), (right, near, 0), (right, near, top), (right, far, top)],
            white,
        ),
        quad(
            "ceiling",
            [(left, far, top), (right, far, top), (right, near, top), (left, near, top)],
            white,
        ),
    )
    window = Lamp(
        (left + 20, near + 1200, 900), ((0.0, 0.0, 1300.0), (0.0, -1200.0, 0.0)), (9.0, 9.5, 10.0)
    )
    return Room(bodies, (window,), (0.35, 0.36, 0.38), 1.0)
