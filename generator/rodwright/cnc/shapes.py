"""What a drawing for a machine is made of, before it is a file: plain shapes on layers; mm."""

from __future__ import annotations

from dataclasses import dataclass, replace

Point = tuple[float, float]


@dataclass(frozen=True, slots=True)
class Circle:
    """A round hole, by the axis it is bored along."""

    layer: str
    centre: Point
    diameter: float


@dataclass(frozen=True, slots=True)
class Path:
    """A line through points.  ``bulges`` are how far each stretch from a point to the next is an
    arc, as DXF has it (0 straight, 1 half a circle to the right); none where all are straight."""

    layer: str
    points: tuple[Point, ...]
    closed: bool = True
    bulges: tuple[float, ...] = ()


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text with its middle at a point; ``height`` of capitals."""

    layer: str
    at: Point
    text: str
    height: float
    upright: bool = False


Shape = Circle | Path | Text


@dataclass(frozen=True, slots=True)
class Move:
    """Where a piece of ``length`` by ``width`` (mm, as it is drawn) comes to lie: turned by so many
    ``quarters`` to the left, with the near corner of its box then at ``x``, ``y``."""

    x: float
    y: float
    length: float
    width: float
    quarters: int = 0

    def point(self, at: Point) -> Point:
        """Where a point of the piece comes to lie."""
        x, y = (
            at,
            (self.width - at[1], at[0]),
            (self.length - at[0], self.width - at[1]),
            (at[1], self.length - at[0]),
        )[self.quarters % 4]
        return self.x + x, self.y + y

    def shape(self, shape: Shape) -> Shape:
        """A shape of the piece where it comes to lie."""
        match shape:
            case Circle():
                return replace(shape, centre=self.point(shape.centre))
            case Path():
                return replace(shape, points=tuple(map(self.point, shape.points)))
            case Text():
                upright = shape.upright is not (self.quarters % 2 == 1)
                return replace(shape, at=self.point(shape.at), upright=upright)


def mirrored(shape: Shape, width: float) -> Shape:
    """A shape of a piece as it lies once the piece is turned over about its length."""

    def over(at: Point) -> Point:
        return at[0], width - at[1]

    match shape:
        case Circle():
            return replace(shape, centre=over(shape.centre))
        case Path():
            bulges = tuple(-each for each in shape.bulges)
            return replace(shape, points=tuple(map(over, shape.points)), bulges=bulges)
        case Text():
            return replace(shape, at=over(shape.at))
