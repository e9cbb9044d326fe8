"""Where the figures of a part sheet are, and the tools that go there; with manifold3d.

It knows what the words of docs/part-sheets.md mean and nothing of workings, blanks or the kernel
that cuts them.  Every figure is looked up by name, so that a sheet without it makes nothing.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from manifold3d import Manifold

from rodwright.lengths import LengthUnit, parse_length

Sheet = dict[str, Any]
Figures = dict[str, Any]
Ends = tuple[float, float]
STEP: dict[LengthUnit, float] = {"mm": 0.1, "in": 25.4 / 64}
"""mm: to so much figures are rounded when they are printed."""
AXES = {"x": 0, "y": 1, "z": 2}
FAR = 50.0
"""mm: how far a tool reaches past the piece where it runs out."""
SEGMENTS = 48


class SheetFrame:
    """The piece that a sheet tells, from its datum: x from the end, y from the edge, z from the
    face; ``slack`` (mm) is how much more every tool takes, and how much less the blank is: below
    zero it is the most wood that the figures may mean."""

    def __init__(self, sheet: Sheet, slack: float = 0.0) -> None:
        self.sheet, self.slack = sheet, slack
        self.unit: LengthUnit = sheet["unit"]
        finished, lies = sheet["finished"], sheet["lies"]
        self.size = tuple(self.length(finished[each]) for each in ("length", "width", "thickness"))
        self.low = (lies["end"], lies["edge"], lies["face"])
        self.high = tuple(lies["opposite"][name] for name in self.low)
        assert len({*self.low, *self.high}) == 6

    def length(self, text: str) -> float:
        """A printed figure, mm; of ware that is told in both measures the one it is sold in."""
        return parse_length(text.split(" (")[0], self.unit)

    def axis(self, name: str) -> int:
        return (self.low if name in self.low else self.high).index(name)

    def is_far(self, name: str) -> bool:
        return name not in self.low

    def _stretch(self, axis: int, told: dict[str, str]) -> Ends:
        """Where a tool begins and ends, past the piece where it runs out."""
        start, stop = told["start"], told["stop"]
        return (
            -FAR if start == self.low[axis] else self.length(start) - self.slack,
            self.size[axis] + FAR if stop == self.high[axis] else self.length(stop) + self.slack,
        )

    def _extent(self, axis: int, told: dict[str, str]) -> float:
        """How long a stretch is within the piece."""
        start = 0.0 if told["start"] == self.low[axis] else self.length(told["start"])
        stop = self.size[axis] if told["stop"] == self.high[axis] else self.length(told["stop"])
        return stop - start

    def _depth(self, surface: str, told: str) -> Ends:
        """From outside a surface to the floor below it."""
        axis = self.axis(surface)
        deep = self.size[axis] + FAR if told == "through" else self.length(told) + self.slack
        return self._below(surface, -FAR, deep)

    def _below(self, surface: str, high: float, low: float) -> Ends:
        axis = self.axis(surface)
        if self.is_far(surface):
            return self.size[axis] - low, self.size[axis] - high
        return high, low

    def _box(self, spans: dict[int, Ends]) -> Manifold:
        low, high = zip(*(spans[axis] for axis in range(3)), strict=True)
        if min(b - a for a, b in spans.values()) <= 0:
            return Manifold()
        return Manifold.cube(np.subtract(high, low)).translate(low)

    def _agree(self, told: str, found: float) -> None:
        assert abs(self.length(told) - found) <= 1.01 * STEP[self.unit] + 0.01, (told, found)

    def places(self, told: list[Any]) -> Iterator[float]:
        """Places along an axis, stepped off where they are told as a row."""
        for each in told:
            if isinstance(each, str):
                yield self.length(each)
                continue
            first, pitch, last = (self.length(each[key]) for key in ("first", "pitch", "last"))
            assert abs(first + pitch * (each["count"] - 1) - last) <= 0.21 + STEP[self.unit]
            yield from (first + pitch * number for number in range(each["count"]))

    def round_bar(self, axis: int, middle: dict[int, float], ends: Ends, radius: float) -> Manifold:
        """A bar along an axis."""
        if ends[1] <= ends[0] or radius <= 0:
            return Manifold()
        bar = Manifold.cylinder(ends[1] - ends[0], radius, circular_segments=SEGMENTS)
        turned = {0: (0, 90, 0), 1: (-90, 0, 0), 2: (0, 0, 0)}[axis]
        at = [middle.get(each, ends[0]) for each in range(3)]
        return bar.rotate(turned).translate(at)

    def _aslant(self, start: Any, way: Any, length: float, diameter: str) -> Manifold:
        radius = self.length(diameter) / 2 + self.slack
        side = np.cross(way, [0.0, 0.0, 1.0])
        if np.linalg.norm(side) < 1e-9:
            side = np.array([1.0, 0.0, 0.0])
        side /= np.linalg.norm(side)
        bar = Manifold.cylinder(length, radius, circular_segments=SEGMENTS)
        return bar.transform(np.column_stack([side, np.cross(way, side), way, start]))
