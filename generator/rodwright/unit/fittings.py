"""How bought-in pieces look."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Annotated, Literal

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.unit.kinds import ByKind
from rodwright.unit.parts import Placement


@dataclass(frozen=True, slots=True)
class Rod:
    """A round bar of ``diameter`` mm from ``start`` to ``end``."""

    kind: Literal["rod"] = field(default="rod", init=False, repr=False, compare=False)
    start: Vector
    end: Vector
    diameter: float


@dataclass(frozen=True, slots=True)
class Block:
    """A piece with flat sides that lie along the axes, between two opposite corners; mm."""

    kind: Literal["box"] = field(default="box", init=False, repr=False, compare=False)
    low: Vector
    high: Vector

    @classmethod
    def between(cls, one: Vector, other: Vector) -> Block:
        """The one between any two opposite corners."""
        box = Box.from_corners(one, other)
        return cls(box.low, box.high)


@dataclass(frozen=True, slots=True)
class Fitting:
    """How a bought-in piece looks: ``shapes`` in the frame of the part (``ref``) it is fixed to.

    It is there for pictures alone: no part, weighed, checked and exported nowhere.  ``inner``
    pieces are seen only where doors and drawers stand open.
    """

    ref: str
    shapes: tuple[Annotated[Block | Rod, ByKind()], ...]
    inner: bool = False

    def moved(self, before: Placement | None, after: Placement) -> Fitting:
        """The same where it stands, its part's frame (None: the unit frame) being another one.

        Blocks need frames that are square to each other.
        """

        def turned(point: Vector) -> Vector:
            return after.to_part(before.to_unit(point) if before else point)

        shapes = (
            Rod(turned(shape.start), turned(shape.end), shape.diameter)
            if isinstance(shape, Rod)
            else Block.between(turned(shape.low), turned(shape.high))
            for shape in self.shapes
        )
        return Fitting(self.ref, tuple(shapes), self.inner)
