"""The outline of a unit in a plane of its opening: a rectangle, or what a sloping ceiling leaves
of one.

By plane trigonometry; lengths in mm, angles in degrees, unit frame.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from math import acos, degrees, hypot
from typing import Literal

from rodwright.geometry import TOUCH
from rodwright.geometry.halfspaces import Plane, beyond, moved
from rodwright.unit import FACE_FRAME, STANDS_OUT, Part, Unit
from rodwright.unit.corners import part_corners
from rodwright.unit.facts import carcass_size

Point = tuple[float, float]
Falls = Literal["left", "right", "front", "rear"]


@dataclass(frozen=True, slots=True)
class SlopeLine:
    """A sloping ceiling over a unit, as a plane of the opening cuts it.

    The unit's edge under it is ``start`` up at x = 0 and gains ``rise`` for each 1 to the right
    (0: the ceiling falls to the front or the rear).  ``gap`` is left under the ceiling, square to
    it; ``plumb`` is the same gap plumb.
    """

    start: float
    rise: float
    gap: float
    plumb: float

    def edge(self, x: float) -> float:
        """How high the unit reaches under it."""
        return self.start + self.rise * x

    def ceiling(self, x: float) -> float:
        """How high the ceiling is."""
        return self.edge(x) + self.plumb


@dataclass(frozen=True, slots=True)
class Silhouette:
    """A unit's outline in one plane, without its face frame."""

    width: float
    height: float
    slope: SlopeLine | None = None

    def top_at(self, x: float) -> float:
        """How high the unit reaches."""
        return self.height if self.slope is None else min(self.height, self.slope.edge(x))

    def run(self, side: str) -> tuple[float, float] | None:
        """From where to where a side runs: z of `left` and `right`, x of `bottom`, `top` (where it
        is level) and `slope`; None where the unit has no such side."""
        if side in ("left", "right"):
            return 0.0, self.top_at(0.0 if side == "left" else self.width)
        if side == "bottom":
            return 0.0, self.width
        low, high = self._under
        if side == "slope":
            return (low, high) if high - low > TOUCH else None
        level = (high, self.width) if low <= 0.0 else (0.0, low)
        return level if level[1] - level[0] > TOUCH else None

    @property
    def _under(self) -> tuple[float, float]:
        """From where to where (x) the slope cuts the unit."""
        if self.slope is None or min(self.top_at(0.0), self.top_at(self.width)) >= self.height:
            return self.width, self.width
        if not self.slope.rise:
            return 0.0, self.width
        begins = (self.height - self.slope.start) / self.slope.rise
        if self.slope.rise > 0:
            return 0.0, min(self.width, begins)
        return max(0.0, begins), self.width

    @property
    def slope_length(self) -> float:
        """How long the edge under the slope is; 0 where there is none."""
        run = self.run("slope")
        if run is None or self.slope is None:
            return 0.0
        return (run[1] - run[0]) * hypot(1.0, self.slope.rise)

    def on_slope(self, at: float) -> Point:
        """The point of the edge under the slope that lies ``at`` mm along it, from its low end, or
        from the left where it is level in this plane.

        Raises:
            ValueError: the unit has no such edge.
        """
        run = self.run("slope")
        if run is None or self.slope is None:
            raise ValueError("no slope cuts the unit in this plane")
        across = at / hypot(1.0, self.slope.rise)
        x = run[0] + across if self.slope.rise >= 0 else run[1] - across
        return x, self.slope.edge(x)

    @property
    def corners(self) -> tuple[Point, ...]:
        """Its corners against the clock, from the bottom left."""
        xs = [self.width, *(self.run("slope") or ()), *(self.run("top") or ()), 0.0]
        over = [(x, self.top_at(x)) for x in sorted(set(xs), reverse=True)]
        return ((0.0, 0.0), (self.width, 0.0), *over)


@dataclass(frozen=True, slots=True)
class Sloped:
    """A sloping ceiling over a unit in its opening: the side it ``falls`` to, its ``pitch`` from
    level, the ``gap`` left under it, square to it, and how far a face frame ``reach``es into that.
    ``planes`` are its lines in those planes of the opening in which it cuts the unit."""

    falls: Falls
    pitch: float
    gap: float
    reach: float
    planes: Mapping[str, SlopeLine]


def sloped(unit: Unit) -> Sloped | None:
    """The sloping ceiling over a unit as its parts keep clear of it; None where there is none, or
    nothing is known of the opening's shape."""
    ceiling = unit.surroundings.ceiling
    shape = unit.opening.shape if unit.opening is not None else None
    if ceiling is None or shape is None:
        return None
    fitted = [part for part in unit.parts if part.role not in (*FACE_FRAME, *STANDS_OUT)]
    gap = _clear_of(ceiling, fitted)
    frame = [part for part in unit.parts if part.role in FACE_FRAME]
    reach = max(0.0, gap - _clear_of(ceiling, frame)) if frame else 0.0
    _, (x, y, z) = ceiling
    falls: Falls = (
        ("right" if x > 0 else "left") if abs(x) > abs(y) else "rear" if y > 0 else "front"
    )
    depths = {"front": 0.0, "rear": max(part.bounds().high[1] for part in fitted)}
    size = carcass_size(unit)
    found = {}
    for name in shape.planes:
        line = SlopeLine(_height(moved(ceiling, -gap), depths[name]), -x / z + 0.0, gap, gap / z)
        if Silhouette(*size, line).run("slope") is not None:
            found[name] = line
    return Sloped(falls, degrees(acos(z)), gap, reach, found)


def slope_in_front(unit: Unit) -> SlopeLine | None:
    """The line of the sloping ceiling that cuts a unit in the plane of its front; None where none
    does."""
    over = sloped(unit)
    return over.planes.get("front") if over else None


def slope_text(sloped: Sloped, size: tuple[float, float], say: Callable[[float], str]) -> str:
    """A sloping ceiling, and how the unit goes under it; ``say`` words a length."""
    text = f"falls to the {sloped.falls} at {sloped.pitch:z.3g}°; the unit keeps {say(sloped.gap)} "
    text += "off it, measured square to it"
    front = sloped.planes.get("front")
    if front is None:
        return text
    outline = Silhouette(*size, front)
    if sloped.falls in ("left", "right"):
        x = 0.0 if sloped.falls == "left" else size[0]
        text += (
            f"; at its {sloped.falls} side it is {say(outline.top_at(x))} high, and the ceiling "
            f"{say(front.ceiling(x))} up"
        )
    else:
        text += f"; in front its carcass is {say(outline.top_at(0.0))} high"
    return text


def _clear_of(ceiling: Plane, parts: Iterable[Part]) -> float:
    return min(-beyond(ceiling, point) for part in parts for point in part_corners(part))


def _height(plane: Plane, y: float) -> float:
    """Height of a plane over x = 0 at this y."""
    (px, py, pz), (nx, ny, nz) = plane
    return pz + (px * nx - (y - py) * ny) / nz
