"""A bench that makes parts of their sheets' words and figures alone, with manifold3d.

What is told twice has to agree.  The bench: x to the right from the end at the left, y away from
the maker, z up, mm.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from typing import Any

import numpy as np
from manifold3d import Manifold, OpType

from kit.sheet_frame import AXES, FAR, SEGMENTS, STEP, Figures, SheetFrame


class Bench(SheetFrame):
    """Where the piece is made."""

    def made(self) -> Manifold:
        """The finished piece, as it lies on the bench."""
        grown = [extent - 2 * self.slack for extent in self.size]
        piece = Manifold.cube(grown).translate([self.slack] * 3)
        tools: list[Manifold] = []
        for operation in self.sheet["operations"]:
            for entry in operation["entries"]:
                if entry["kind"] in ("mitre", "bevel"):
                    assert entry["count"] == 1
                    piece = piece.trim_by_plane(*self._plane(entry))
                else:
                    made = list(_TOOLS[entry["kind"]](self, entry))
                    assert len(made) == entry["count"], entry
                    tools += made
        if tools:
            piece -= Manifold.batch_boolean(tools, OpType.Add)
        lies = self.sheet["lies"]
        if {"near": False, "far": True}[lies["edge_lies"]]:
            piece = piece.mirror((0, 1, 0)).translate((0, self.size[1], 0))
        # Heights are told down from the face side.
        if lies["up"] == lies["face"]:
            return piece.mirror((0, 0, 1)).translate((0, 0, self.size[2]))
        assert lies["opposite"][lies["up"]] == lies["face"]
        return piece

    def _plane(self, entry: Figures) -> tuple[tuple[float, ...], float]:
        """The plane of a sloping cut: its normal towards the wood that stays, and its offset."""
        figures = entry["figures"]
        one, other = entry["into"]
        axes = (self.axis(one), self.axis(other))
        corner = [self.size[self.axis(each)] if self.is_far(each) else 0.0 for each in (one, other)]
        if "over" in figures:
            inward = [-1.0 if self.is_far(each) else 1.0 for each in (one, other)]
            legs = self.length(figures["over"]), self.length(figures["down"])
            points = [
                (corner[0] + inward[0] * legs[0], corner[1]),
                (corner[0], corner[1] + inward[1] * legs[1]),
            ]
        else:
            points = [self._point(figures[each], axes) for each in ("from", "to")]
        (a, b), (c, d) = points
        normal = np.array([d - b, a - c]) / math.hypot(d - b, a - c)
        offset = float(normal @ points[0])
        if normal @ np.array(corner) > offset:
            normal, offset = -normal, -offset
        self._check_angle(figures["angle"], normal, math.dist(*points))
        whole = np.zeros(3)
        whole[list(axes)] = normal
        return tuple(whole.tolist()), offset + self.slack

    def _point(self, told: dict[str, str], axes: tuple[int, int]) -> tuple[float, float]:
        """A point of the outline: the surface that it lies on, and how far along it."""
        surface = told["on"]
        place = {
            self.axis(surface): self.size[self.axis(surface)] if self.is_far(surface) else 0.0,
            AXES[told["axis"]]: self.length(told["at"]),
        }
        return place[axes[0]], place[axes[1]]

    def _check_angle(self, told: str, normal: Any, length: float) -> None:
        """The saw's angle is that of the line, as far as its points are rounded."""
        angle = math.degrees(math.atan2(abs(normal[1]), abs(normal[0])))
        near = min(abs(float(told.removesuffix("°")) - each) for each in (angle, 90 - angle))
        assert near <= 0.06 + math.degrees(STEP[self.unit] / length), (told, angle)

    def hole(self, entry: Figures) -> Iterator[Manifold]:
        (surface,), figures = entry["into"], entry["figures"]
        axis = self.axis(surface)
        first, second = (each for each in range(3) if each != axis)
        radius = self.length(figures["diameter"]) / 2 + self.slack
        for a in self.places(figures["xyz"[first]]):
            for b in self.places(figures["xyz"[second]]):
                ends = self._depth(surface, figures["depth"])
                yield self.round_bar(axis, {first: a, second: b}, ends, radius)

    def rebate(self, entry: Figures) -> Iterator[Manifold]:
        """As a groove is, open at an edge or an end."""
        surface, edge = entry["into"]
        assert edge in entry["figures"]["xyz"[self.axis(edge)]].values()
        yield from self.channel({**entry, "into": [surface]})

    def channel(self, entry: Figures) -> Iterator[Manifold]:
        """A groove or a housing: as wide as one of its stretches, so deep."""
        (surface,), figures = entry["into"], entry["figures"]
        axis = self.axis(surface)
        across = [each for each in range(3) if each != axis]
        spans = {each: self._stretch(each, figures["xyz"[each]]) for each in across}
        wide = [self._extent(each, figures["xyz"[each]]) for each in across]
        told = self.length(figures["width"])
        self._agree(figures["width"], min(wide, key=lambda each: abs(each - told)))
        yield self._box(spans | {axis: self._depth(surface, figures["depth"])})

    def notch(self, entry: Figures) -> Iterator[Manifold]:
        (surface,), figures = entry["into"], entry["figures"]
        spans = {axis: self._stretch(axis, figures["xyz"[axis]]) for axis in (0, 1)}
        for axis, name in ((0, "length"), (1, "width")):
            self._agree(figures[name], self._extent(axis, figures["xyz"[axis]]))
        yield self._box(spans | {2: self._depth(surface, figures["depth"])})

    def mortise(self, entry: Figures) -> Iterator[Manifold]:
        if "long" in entry["figures"]:
            yield from self.slot(entry)
            return
        (surface,), figures = entry["into"], entry["figures"]
        axis = self.axis(surface)
        first, second = (each for each in range(3) if each != axis)
        self._agree(figures["width"], self._extent(second, figures["xyz"[second]]))
        for told in figures["xyz"[first]]:
            self._agree(figures["length"], self._extent(first, told))
            yield self._box(
                {
                    first: self._stretch(first, told),
                    second: self._stretch(second, figures["xyz"[second]]),
                    axis: self._depth(surface, figures["depth"]),
                }
            )

    def slot(self, entry: Figures) -> Iterator[Manifold]:
        (surface,), figures = entry["into"], entry["figures"]
        axis = self.axis(surface)
        first, second = (each for each in range(3) if each != axis)
        runs = AXES[figures["runs along"]]
        long, wide = self.length(figures["long"]), self.length(figures["wide"])
        ends = self._depth(surface, figures["depth"])
        for a in self.places(figures["xyz"[first]]):
            for b in self.places(figures["xyz"[second]]):
                bars = []
                for way in (-1, 1):
                    middle = {first: a, second: b}
                    middle[runs] += way * (long - wide) / 2
                    bars.append(self.round_bar(axis, middle, ends, wide / 2 + self.slack))
                yield Manifold.batch_hull(bars)

    def easing(self, entry: Figures) -> Iterator[Manifold]:
        one, other = entry["into"]
        figures = entry["figures"]
        radius = self.length(figures["radius"])
        run = 3 - self.axis(one) - self.axis(other)
        ends = self._stretch(run, figures["xyz"[run]])
        spans = {self.axis(each): self._below(each, -FAR, radius) for each in (one, other)}
        middle = {self.axis(each): self._below(each, radius, radius)[0] for each in (one, other)}
        round_ = self.round_bar(run, middle, ends, max(radius - self.slack, 0.0))
        yield self._box(spans | {run: ends}) - round_

    def pocket_hole(self, entry: Figures) -> Iterator[Manifold]:
        surface, end = entry["into"]
        figures = entry["figures"]
        slope = math.radians(float(figures["angle"].removesuffix("°")))
        run = 3 - self.axis(surface) - self.axis(end)
        stops, leaves = self.length(figures["stops"]), self.length(figures["leaves"])
        for at in self.places(figures["xyz"[run]]):
            out = np.zeros(3)
            way = np.zeros(3)
            out[run] = at
            out[self.axis(end)] = self._below(end, 0.0, 0.0)[0]
            out[self.axis(surface)] = self._below(surface, leaves, leaves)[0]
            way[self.axis(end)] = math.cos(slope) * (-1 if self.is_far(end) else 1)
            way[self.axis(surface)] = math.sin(slope) * (1 if self.is_far(surface) else -1)
            far = 3 * math.hypot(*self.size)
            pocket = self._aslant(out + way * (stops - self.slack), way, far, figures["diameter"])
            yield pocket + self._aslant(out - way * FAR, way, stops + FAR + 1, figures["screw"])

    def finger_pull(self, entry: Figures) -> Iterator[Manifold]:
        surface, edge = entry["into"]
        figures = entry["figures"]
        radius, depth = self.length(figures["cutter"]) / 2, self.length(figures["depth"])
        run, across = 3 - self.axis(surface) - self.axis(edge), self.axis(edge)
        reach = math.sqrt(depth * (2 * radius - depth))
        (at,) = self.places(figures["xyz"[across]])
        height = self._below(surface, depth - radius, 0.0)[0]
        if self.is_far(surface):
            height = self.size[self.axis(surface)] + radius - depth
        middle = {across: at, self.axis(surface): height}
        told = figures["xyz"[run]]
        out = (told["start"] == self.low[run], told["stop"] == self.high[run])
        ends = (
            -FAR if out[0] else self.length(told["start"]) + reach,
            self.size[run] + FAR if out[1] else self.length(told["stop"]) - reach,
        )
        tool = self.round_bar(
            run, middle, (ends[0], max(ends[1], ends[0] + 1e-6)), radius + self.slack
        )
        ball = Manifold.sphere(radius + self.slack, circular_segments=SEGMENTS)
        for place, open_ in zip(ends, out, strict=True):
            if not open_:
                tool += ball.translate([middle.get(each, place) for each in range(3)])
        yield tool


_TOOLS = {
    "hole": Bench.hole,
    "groove": Bench.channel,
    "housing": Bench.channel,
    "rebate": Bench.rebate,
    "notch": Bench.notch,
    "mortise": Bench.mortise,
    "slot": Bench.mortise,
    "leaf recess": Bench.mortise,
    "eased arris": Bench.easing,
    "pocket hole": Bench.pocket_hole,
    "finger pull": Bench.finger_pull,
}
"""What each word of a sheet means."""
