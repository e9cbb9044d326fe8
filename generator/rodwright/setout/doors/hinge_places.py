"""Where hinges stand on a door, clear of what is beside it."""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, floor, hypot
from typing import Literal

from rodwright.geometry import TOUCH, Box, Vector, along, minus, plus
from rodwright.geometry.halfspaces import Plane
from rodwright.geometry.nearby import Nearby
from rodwright.lengths import LengthUnit
from rodwright.setout.bench import Bench
from rodwright.setout.carcass.shelf_rows import hole_diameter
from rodwright.setout.doors.panel import Outline
from rodwright.setout.inside import Space, Upright
from rodwright.setout.notes import ShelfRows
from rodwright.setout.rod.slope_lines import height_at
from rodwright.setout.setting import Setting
from rodwright.trade.hinges import (
    ENDS,
    FLUSH,
    HALF_HINGE,
    HALF_PACKER,
    HINGE_DEPTH,
    PLATE_CLEAR,
    PLATE_DEPTH,
    PLATE_HOLE,
    PLATE_PITCH,
)
from rodwright.trade.wood_left import LEAST_FLOOR, LEAST_RIM
from rodwright.unit import (
    CARRIES_HINGES,
    LEVELS,
    Fixing,
    Slant,
)
from rodwright.wishes.doors import DoorsSpec

Made = tuple[str, tuple[float, float], Vector, tuple[Fixing, ...]]
"""Carrier, axis (x, y), middle of the joint, and fixings."""


@dataclass(frozen=True, slots=True)
class Hung:
    """A door to be hung: its outline, the side of its hinges, refs, and the width of wood (mm)
    that a boring may have from either edge.

    ``near`` is the piece that carries the hinges, ``far`` the one at the other edge; ``refs``
    are all that turn.  A sloping ceiling will cut the door at ``slope``, if there is one.
    """

    outline: Outline
    hinges: Literal["left", "right"]
    near: str
    far: str
    refs: tuple[str, ...]
    clear: float
    slope: Plane | None = None

    def top(self, x: float) -> float:
        """The height (z) at which the door ends at this x, once it is cut to a slope."""
        outline = self.outline
        if self.slope is None:
            return outline.high
        ends = (height_at(self.slope, x, y) for y in (outline.front, outline.rear))
        return max(outline.low, min(outline.high, *ends))


@dataclass(frozen=True, slots=True)
class Around:
    """Refs of all that carries hinges or is in their way, by where it stands; and the rows of holes
    that will be drilled."""

    parts: Nearby[str]
    rows: tuple[ShelfRows, ...]


def surroundings(setting: Setting) -> Around:
    """What stands round doors that are still to be hung."""
    there = setting.bench.parts_of(*CARRIES_HINGES, *LEVELS)
    parts = Nearby((part.bounds(), part.ref) for part in there)
    return Around(parts, tuple(setting.notes.rows))


@dataclass(frozen=True, slots=True)
class Hinge:
    """The hinges of one door that is being hung; the setting is at their wish."""

    setting: Setting
    wish: DoorsSpec
    hung: Hung
    space: Space
    around: Around

    @property
    def bench(self) -> Bench:
        """The bench that door and carriers lie on."""
        return self.setting.bench

    @property
    def inwards(self) -> float:
        """1 where x grows from the hinges into the door, else -1."""
        return 1.0 if self.hung.hinges == "left" else -1.0

    @property
    def edge(self) -> float:
        """The x of the door's edge at its hinges."""
        outline = self.hung.outline
        return outline.left if self.hung.hinges == "left" else outline.right

    @property
    def surround(self) -> float:
        """The x of what bounds the opening at the hinges."""
        front = self.space.front
        return front.left if self.hung.hinges == "left" else front.right

    @property
    def upright(self) -> Upright:
        """The side or divider behind the hinges."""
        return self.space.left if self.hung.hinges == "left" else self.space.right

    @property
    def face(self) -> float:
        """The x of the upright's inner face."""
        upright = self.upright
        return upright.right if self.hung.hinges == "left" else upright.left

    @property
    def packing(self) -> float:
        """How thick what brings a plate out to the edge of the opening is; 0 for nothing."""
        away = self.inwards * (self.surround - self.face)
        return away if away > FLUSH else 0.0

    def heights(self, count: int, plate: float | None) -> list[float] | None:
        """Heights (z) of the hinges' middles, evenly spaced, moved clear of what is in the way."""
        wish, outline, say = self.wish.hinge, self.hung.outline, self.setting.say
        # Of the edge that the hinges are on: a slope may leave less of it than of the door.
        height = self.hung.top(self.edge) - outline.low
        half = wish.length / 2 if plate is None else wish.cup / 2
        apart = wish.length if plate is None else 2 * HALF_HINGE
        ends = wish.ends if wish.ends is not None else min(self.bench.sizes.usual(ENDS), height / 6)
        ends = ends if wish.ends is not None else max(ends, half + LEAST_RIM)
        run = height - 2 * ends
        if ends < half + LEAST_RIM - TOUCH or run < (count - 1) * apart - TOUCH:
            self.setting.at("ends" if wish.ends is not None else "count").refuse(
                f"{count} hinges, {say(ends)} from the ends, don't go on a door "
                f"{say(height)} high" + ("" if height == outline.height else " at that edge"),
                "Take fewer or smaller hinges, or a higher door.",
            )
            return None
        heights = [outline.low + ends + run * number / (count - 1) for number in range(count)]
        if plate is None:
            return heights
        step = max(0.0, min(run / (count - 1) / 2 - HALF_HINGE, 2 * ENDS))
        found = []
        for z in heights:
            place = self._nearest_free(z, step, plate)
            if place is None:
                self.setting.at("ends").refuse(
                    f"a hinge {say(z - outline.low)} up the door has no room beside the upright "
                    f"{self.upright.ref}: a shelf or joints are in the way",
                    "Move the shelf, or change `ends` or `count`.",
                )
                return None
            found.append(place)
        return found

    def _nearest_free(self, z: float, step: float, plate: float) -> float | None:
        outline = self.hung.outline
        least = self.wish.hinge.cup / 2 + LEAST_RIM
        high = outline.high - least
        if self.hung.slope is not None:
            # What is cut at the slope comes down beside the hinge.
            inside = self.edge + self.inwards * HINGE_DEPTH
            high = min(self.hung.top(self.edge), self.hung.top(inside)) - HALF_HINGE
        rows = self._rows_beside()
        steps = (z + sign * away for away in range(int(step) + 1) for sign in (1, -1))
        usual = z if self.hung.slope is None else None
        for place in (*self._on_the_grid(z, step, rows, plate), *steps):
            fits = outline.low + least <= place + TOUCH and place <= high + TOUCH
            if (
                (fits or place == usual)
                and self._free(place, plate)
                and all(_leaves_pins(row, place, plate, self.setting.unit) for row in rows)
            ):
                return place
        return None

    def _rows_beside(self) -> list[ShelfRows]:
        """The rows in the face that the plates are screwed to."""
        left = self.hung.hinges == "left"
        return [
            rows
            for rows in self.around.rows
            if (rows.space.left if left else rows.space.right).ref == self.upright.ref
        ]

    def _on_the_grid(
        self, z: float, step: float, rows: list[ShelfRows], plate: float
    ) -> list[float]:
        """Places within ``step`` of a height, the nearest first, at which both holes of a plate
        fall together with a row's; none where the maker said how far from the ends hinges are."""
        if self.wish.hinge.ends is not None:
            return []
        found = []
        for row in rows:
            pitch = row.wish.pitch
            if abs(PLATE_PITCH / pitch - round(PLATE_PITCH / pitch)) > TOUCH or all(
                abs(line - plate) > TOUCH for line in (row.front, row.rear)
            ):
                continue
            start = row.bearing[0] + PLATE_PITCH / 2
            first, last = ceil((z - step - start) / pitch), floor((z + step - start) / pitch)
            places = (start + number * pitch for number in range(first, last + 1))
            found += [each for each in places if row.space.low < each < row.space.high]
        return sorted(found, key=lambda place: abs(place - z))

    def _free(self, z: float, plate: float) -> bool:
        """Whether nothing level stands beside a hinge, and its borings meet nothing that is cut
        into the door and the upright."""
        outline, wish = self.hung.outline, self.wish.hinge
        low, high = sorted((self.face, self.face + self.inwards * HINGE_DEPTH))
        half = self.bench.sizes.usual(HALF_PACKER) if self.packing else HALF_HINGE
        room = Box((low, outline.rear, z - half), (high, plate + PLATE_PITCH / 2, z + half))
        if any(
            part.role in LEVELS and part.bounds().intersects(room)
            for part in map(self.bench.parts.__getitem__, self.around.parts.within(room))
        ):
            return False
        middle = self.edge + self.inwards * (wish.edge + wish.cup / 2)
        cup = _round((middle, outline.rear, z), wish.cup, (0.0, -wish.cup_depth, 0.0))
        if self._cut(self.hung.near, cup):
            return False
        deep = (-self.inwards * self.plate_depth, 0.0, 0.0)
        return not any(
            self._cut(self.upright.ref, _round((self.face, plate, z + half), PLATE_HOLE, deep))
            for half in (-PLATE_PITCH / 2, PLATE_PITCH / 2)
        )

    @property
    def plate_depth(self) -> float:
        """How deep a plate's holes are: two from both faces of a panel don't meet."""
        return min(PLATE_DEPTH, 0.45 * self.bench.parts[self.upright.ref].blank.thickness)

    def _cut(self, ref: str, box: Box) -> bool:
        """Whether anything is cut into a part within ``LEAST_FLOOR`` of a box (unit frame)."""
        part = self.bench.parts[ref]
        near = part.placement.box_to_part(box).grown(LEAST_FLOOR - TOUCH)
        return any(
            near.intersects(working.bounds(part.blank.size))
            for working in self.bench.workings_of(ref)
            if not isinstance(working, Slant)
        )


def _leaves_pins(row: ShelfRows, z: float, plate: float, unit: LengthUnit) -> bool:
    """Whether the holes of a plate with its middle at this height stay clear of those that shelves
    rest on."""
    clear = (PLATE_HOLE + hole_diameter(row.wish, unit)) / 2 + PLATE_CLEAR - TOUCH
    return not any(
        hypot(line - plate, height - z - half) < clear
        for line in (row.front, row.rear)
        for height in row.bearing
        for half in (-PLATE_PITCH / 2, PLATE_PITCH / 2)
    )


def _round(at: Vector, diameter: float, deep: Vector) -> Box:
    """The box round a boring from a point of a surface so deep."""
    axis = next(i for i in range(3) if deep[i])
    half = diameter / 2
    return Box.from_corners(at, plus(at, deep)).grown(minus((half, half, half), along(axis, half)))
