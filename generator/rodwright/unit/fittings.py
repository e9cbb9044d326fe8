"""How bought-in pieces look."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from typing import Annotated, Literal, TypeVar

from rodwright.geometry.boxes import Box
from rodwright.geometry.vectors import Vector
from rodwright.unit.kinds import ByKind
from rodwright.unit.parts import Placement

Key = TypeVar("Key")


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
class Knob:
    """A turned knob of ``diameter`` mm from ``start``, where it is fixed, to ``end``, on a ``stem``
    of a smaller diameter."""

    kind: Literal["knob"] = field(default="knob", init=False, repr=False, compare=False)
    start: Vector
    end: Vector
    diameter: float
    stem: float

    @property
    def rods(self) -> tuple[Rod, Rod]:
        """Its stem and its head as plain round bars, as drawings have it."""
        x, y, z = (a + NECK * (b - a) for a, b in zip(self.start, self.end, strict=True))
        return Rod(self.start, (x, y, z), self.stem), Rod((x, y, z), self.end, self.diameter)


NECK = 0.45
"""How much of a knob's height its stem has."""

Shape = Block | Rod | Knob
"""What bought-in pieces are shown as."""
Ware = Literal["steel", "brass", "black", "white", "wood", "oak", "walnut", "painted", "plastic"]
"""What bought-in pieces are made of, as far as they show it: bright steel, brass, black metal,
wood, grey plastic."""


@dataclass(frozen=True, slots=True)
class Fitting:
    """How a bought-in piece looks: ``shapes`` in the frame of the part (``ref``) it is fixed to.

    It is there for pictures alone: no part, weighed, checked and exported nowhere.  ``inner``
    pieces are seen only where doors and drawers stand open, ``fine`` ones only in photographs:
    drawings do without them.
    """

    ref: str
    shapes: tuple[Annotated[Shape, ByKind()], ...]
    inner: bool = False
    fine: bool = False
    ware: Ware = "steel"

    def moved(self, before: Placement | None, after: Placement) -> Fitting:
        """The same where it stands, its part's frame (None: the unit frame) being another one.

        Blocks need frames that are square to each other.
        """

        def turned(point: Vector) -> Vector:
            return after.to_part(before.to_unit(point) if before else point)

        def placed(shape: Shape) -> Shape:
            if isinstance(shape, Block):
                return Block.between(turned(shape.low), turned(shape.high))
            return replace(shape, start=turned(shape.start), end=turned(shape.end))

        return replace(self, shapes=tuple(map(placed, self.shapes)))


def shapes_by(
    fittings: Iterable[Fitting], key: Callable[[Fitting], Key]
) -> dict[Key, tuple[Shape, ...]]:
    """The shapes of all fittings that have a key in common, keys as they first occur."""
    found: dict[Key, tuple[Shape, ...]] = {}
    for each in fittings:
        found[key(each)] = found.get(key(each), ()) + each.shapes
    return found
