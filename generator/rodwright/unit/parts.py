"""Parts: what each is, what is cut into it, and where it stands."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from typing import Annotated

from rodwright.geometry.boxes import Box
from rodwright.geometry.halfspaces import box_planes, vertices
from rodwright.geometry.vectors import Matrix, Vector, cross, dot, minus, vector
from rodwright.unit.finish import Finish
from rodwright.unit.kinds import ByKind
from rodwright.unit.roles import Role
from rodwright.unit.stock import Blank, Edging
from rodwright.unit.workings import Working


@dataclass(frozen=True, slots=True)
class Placement:
    """Where a part stands: its frame's origin and the unit vectors of its length and width.

    All in the unit frame.  The thickness direction is the vector product of the two, so a
    placement never mirrors a part.
    """

    origin: Vector
    length: Vector
    width: Vector

    @property
    def thickness(self) -> Vector:
        """Unit vector of the part's thickness (towards the face), unit frame."""
        return cross(self.length, self.width)

    @property
    def axes(self) -> tuple[Vector, Vector, Vector]:
        """Unit vectors of the part's length, width and thickness, unit frame."""
        return (self.length, self.width, self.thickness)

    def matrix(self) -> Matrix:
        """The 4 x 4 homogeneous transform from part frame to unit frame, by rows."""
        u, v, w, o = self.length, self.width, self.thickness, self.origin
        return (*((u[i], v[i], w[i], o[i]) for i in range(3)), (0.0, 0.0, 0.0, 1.0))

    def to_part(self, point: Vector) -> Vector:
        """A point of the unit frame in the part frame."""
        return self.turned_to_part(minus(point, self.origin))

    def turned_to_part(self, direction: Vector) -> Vector:
        """A direction of the unit frame in the part frame."""
        u, v, w = self.axes
        return (dot(direction, u), dot(direction, v), dot(direction, w))

    def to_unit(self, point: Vector) -> Vector:
        """A point of the part frame in the unit frame."""
        u, v, w, o = self.length, self.width, self.thickness, self.origin
        x, y, z = (o[i] + point[0] * u[i] + point[1] * v[i] + point[2] * w[i] for i in range(3))
        return (x, y, z)

    def box_to_part(self, box: Box) -> Box:
        """A box of the unit frame in the part frame; the two have to be square to each other."""
        return Box.from_corners(self.to_part(box.low), self.to_part(box.high))

    def box_to_unit(self, box: Box) -> Box:
        """A box of the part frame in the unit frame; the two have to be square to each other."""
        return Box.from_corners(self.to_unit(box.low), self.to_unit(box.high))


ShapeKey = tuple[Vector, tuple[Working, ...]]


@dataclass(frozen=True, slots=True)
class Part:
    """One piece of the unit.

    ``ref`` is unique in the unit and short enough to pencil on the piece.  ``group`` is
    the sub-assembly it belongs to.  ``lipped`` names the edges that carry a lipping, in
    the maker's words; ``edged`` is what is glued on others.  ``withdraw`` is the direction
    (unit frame) in which the piece comes off the unit when it is taken apart, the reverse of
    how it goes on; a zero vector for pieces that everything else is taken off.  Fronts with the
    same ``grain_run`` are cut in their order from one piece: the grain runs on through them.
    ``finish`` is None where nothing was said of it.
    """

    ref: str
    name: str
    role: Role
    group: str
    blank: Blank
    placement: Placement
    workings: tuple[Annotated[Working, ByKind()], ...] = ()
    lipped: tuple[str, ...] = ()
    withdraw: Vector = (0.0, 0.0, 0.0)
    edged: tuple[Edging, ...] = ()
    grain_run: str = ""
    finish: Finish | None = None

    @property
    def rough_size(self) -> Vector:
        """Length, width and thickness to cut: what is trimmed later more, edging less."""
        size = list(self.blank.rough_size)
        for each in self.edged:
            size[each.surface.axis] -= each.thickness
        return (size[0], size[1], size[2])

    @property
    def shape(self) -> ShapeKey:
        """What decides the solid: parts with equal shapes are the same piece of wood."""
        return (self.blank.size, self.workings)

    def bounds(self) -> Box:
        """The box round the placed blank, unit frame; round what bevels leave if it lies askew."""
        placed, blank = self.placement, self.blank
        u, v = placed.length, placed.width
        if max(map(abs, u)) < 1 - 1e-9 or max(map(abs, v)) < 1 - 1e-9:
            cuts = [plane for each in self.workings for plane in each.planes(blank.size)]
            planes = [*box_planes(Box.of_size(blank.size)), *cuts]
            return Box.of_points(map(placed.to_unit, vertices(planes)))
        return _placed_box(blank.size, placed)


@lru_cache(maxsize=8192)
def _placed_box(size: Vector, placed: Placement) -> Box:
    """The box of a blank that stands square to the unit; asked for again and again."""
    u, v, w = placed.length, placed.width, placed.thickness
    reaches = [(size[0] * u[i], size[1] * v[i], size[2] * w[i]) for i in range(3)]
    low = [at + sum(min(0.0, reach) for reach in reaches[i]) for i, at in enumerate(placed.origin)]
    high = [at + sum(max(0.0, reach) for reach in reaches[i]) for i, at in enumerate(placed.origin)]
    return Box(vector(low), vector(high))
