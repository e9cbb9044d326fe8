"""What flat workings leave: boxes of a grid, cut off by planes."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from rodwright.geometry import Box, Vector
from rodwright.geometry.halfspaces import Plane
from rodwright.mass.polyhedra import Polyhedron, box_faces, clipped, moments_of

Array = NDArray[np.float64]

_ROUNDING = 1e-9
"""mm: rounding of lengths that were added up."""


class Wood:
    """A blank less boxes, and less what lies beyond planes; part frame, mm."""

    def __init__(self, size: Vector, boxes: Sequence[Box], planes: Sequence[Plane]) -> None:
        self.size = np.array(size)
        self.lows = np.array([box.low for box in boxes]).reshape(-1, 3)
        self.highs = np.array([box.high for box in boxes]).reshape(-1, 3)
        # What lies at normal . point > reach is cut away.
        self.normals = np.array([normal for _, normal in planes]).reshape(-1, 3)
        self.reaches = np.array([np.dot(*plane) for plane in planes])

    def moments(self) -> Array:
        """Volume and first moments about the part frame's planes."""
        edges, filled = self._grid()
        if not len(self.normals):
            return _moments_of_boxes(edges, filled)
        out, crossed = self._cut(edges)
        filled &= ~out
        total = _moments_of_boxes(edges, filled & ~crossed)
        for cell in np.argwhere(filled & crossed):
            low, high = ([edges[i][cell[i] + over] for i in range(3)] for over in (0, 1))
            piece: Polyhedron = box_faces(np.array(low), np.array(high))
            for normal, reach in zip(self.normals, self.reaches, strict=True):
                piece = clipped(piece, normal, reach)
            total += moments_of(piece)
        return total

    def whole(self, box: Box) -> bool:
        """Whether a box lies in wood that no flat working touches."""
        low, high = np.array(box.low), np.array(box.high)
        if (low < -_ROUNDING).any() or (high > self.size + _ROUNDING).any():
            return False
        if ((low < self.highs - _ROUNDING) & (self.lows < high - _ROUNDING)).all(axis=1).any():
            return False
        farthest = np.where(self.normals > 0, high, low)
        return bool(((self.normals * farthest).sum(axis=1) <= self.reaches + _ROUNDING).all())

    def near(self, box: Box) -> tuple[Array, Array, Array, Array]:
        """Boxes (lows, highs) and planes (normals, reaches) that reach into a box."""
        low, high = np.array(box.low), np.array(box.high)
        meet = ((low < self.highs) & (self.lows < high)).all(axis=1)
        farthest = np.where(self.normals > 0, high, low)
        over = (self.normals * farthest).sum(axis=1) > self.reaches
        return self.lows[meet], self.highs[meet], self.normals[over], self.reaches[over]

    def _grid(self) -> tuple[list[Array], NDArray[np.bool_]]:
        """The blank divided along every box's faces, and which of its cells are left."""
        edges = []
        for i in range(3):
            places = np.concatenate([[0.0, self.size[i]], self.lows[:, i], self.highs[:, i]])
            # numpy's own `unique` loads its masked arrays, which takes longer.
            edges.append(np.array(sorted(set(np.clip(places, 0.0, self.size[i]).tolist()))))
        middles = [(each[1:] + each[:-1]) / 2 for each in edges]
        filled = np.ones([len(each) for each in middles], dtype=bool)
        for low, high in zip(self.lows, self.highs, strict=True):
            inside = [
                (each > a) & (each < b) for each, a, b in zip(middles, low, high, strict=True)
            ]
            filled[np.ix_(*inside)] = False
        return edges, filled

    def _cut(self, edges: list[Array]) -> tuple[NDArray[np.bool_], NDArray[np.bool_]]:
        """Which cells of the grid are cut away whole by some plane, and which one crosses."""
        out = np.zeros([len(each) - 1 for each in edges], dtype=bool)
        crossed = out.copy()
        for normal, reach in zip(self.normals, self.reaches, strict=True):
            nearest, farthest = np.full(out.shape, -reach), np.full(out.shape, -reach)
            for i in range(3):
                shape = [-1 if axis == i else 1 for axis in range(3)]
                ends = np.stack([edges[i][:-1], edges[i][1:]]) * normal[i]
                nearest = nearest + ends.min(axis=0).reshape(shape)
                farthest = farthest + ends.max(axis=0).reshape(shape)
            out |= nearest >= -_ROUNDING
            crossed |= farthest > _ROUNDING
        return out, crossed


def _moments_of_boxes(edges: list[Array], filled: NDArray[np.bool_]) -> Array:
    lengths = [np.diff(each) for each in edges]
    firsts = [np.diff(each**2) / 2 for each in edges]
    weighted = [lengths] + [[*lengths[:i], firsts[i], *lengths[i + 1 :]] for i in range(3)]
    return np.array([x @ (filled @ z) @ y for x, y, z in weighted])
