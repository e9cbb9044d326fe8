"""What stays round the unit in its room: a sloping ceiling, and what it is cut out round."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector


@dataclass(frozen=True, slots=True)
class Obstacle:
    """Something that stays where it is, as measured: the box round it, mm, unit frame.

    A skirting and a pipe run on past the unit; ``runs`` is the axis along which (0 for x, 1 for y,
    2 for z), None of what runs nowhere, as a socket.
    """

    kind: Literal["skirting", "pipe", "socket"]
    box: Box
    runs: Literal[0, 1, 2] | None = None


@dataclass(frozen=True, slots=True)
class Surroundings:
    """``ceiling`` is the plane of a sloping ceiling, a point of it and its unit normal upwards
    (unit frame, mm; None: it is level, or isn't near); ``obstacles`` are what the unit is cut out
    round."""

    ceiling: tuple[Vector, Vector] | None = None
    obstacles: tuple[Obstacle, ...] = ()
