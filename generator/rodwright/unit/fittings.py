"""How bought-in pieces look."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.unit.parts import Placement


@dataclass(frozen=True, slots=True)
class Rod:
    """A round bar of ``diameter`` mm from ``start`` to ``end``."""

    start: Vector
    end: Vector
    diameter: float


@dataclass(frozen=True, slots=True)
class Fitting:
    """How a bought-in piece looks: ``shapes`` in the frame of the part (``ref``) it is fixed to.

    It is there for pictures alone: no part, weighed, checked and exported nowhere.  ``inner``
    pieces are seen only where doors and drawers stand open.
    """

    ref: str
    shapes: tuple[Box | Rod, ...]
    inner: bool = False

    def moved(self, before: Placement | None, after: Placement) -> Fitting:
        """The same where it stands, its part's frame (None: the unit frame) being another one.

        Boxes need frames that are square to each other.
        """

        def turned(point: Vector) -> Vector:
            return after.to_part(before.to_unit(point) if before else point)

        shapes = (
            Rod(turned(shape.start), turned(shape.end), shape.diameter)
            if isinstance(shape, Rod)
            else Box.from_corners(turned(shape.low), turned(shape.high))
            for shape in self.shapes
        )
        return Fitting(self.ref, tuple(shapes), self.inner)
