"""Boxes whose sides lie along the axes."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry.vectors import Vector


@dataclass(frozen=True, slots=True)
class Box:
    """An axis-aligned box between two opposite corners, in whatever frame its user names."""

    low: Vector
    high: Vector

    @property
    def size(self) -> Vector:
        """Extents along x, y and z."""
        return (
            self.high[0] - self.low[0],
            self.high[1] - self.low[1],
            self.high[2] - self.low[2],
        )

    @property
    def centre(self) -> Vector:
        """The box's middle point."""
        return (
            (self.low[0] + self.high[0]) / 2,
            (self.low[1] + self.high[1]) / 2,
            (self.low[2] + self.high[2]) / 2,
        )
