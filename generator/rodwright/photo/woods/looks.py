"""The look of a part's bare material at any point of it."""

from __future__ import annotations

from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from os import cpu_count

import numpy as np
from numpy.typing import NDArray

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field, solid
from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.chips import even
from rodwright.photo.woods.colours import colour_of
from rodwright.photo.woods.edging import edged
from rodwright.photo.woods.figures import figure_of
from rodwright.photo.woods.grain import grain_frame, key_of
from rodwright.photo.woods.sheets import sheet
from rodwright.trade.materials import is_glass
from rodwright.unit import Part

_AT_ONCE = 32_768
"""Points that are worked out together: what a processor's cache holds."""


@dataclass(frozen=True, slots=True, eq=False)
class Looks:
    """The look of a part: ``even`` is its one colour where nothing varies (None: it does), and
    ``clear`` says that light passes through it, as through a pane."""

    field: Field
    even: Colour | None = None
    clear: bool = False

    def reflectance(
        self,
        points: NDArray[np.floating],
        normals: NDArray[np.floating],
        texel: float = 1.0,
    ) -> Numbers:
        """The reflectance of the bare material, (n, 3), linear with the primaries of sRGB.

        ``points`` (n, 3) are mm in the part frame, ``normals`` (n, 3) the outward unit normals
        there; what is finer than a ``texel`` (mm) is told by its mean.
        """
        near, outward = points.astype(np.float32), normals.astype(np.float32)
        found = np.empty((len(near), 3), np.float32)

        def work(start: int) -> None:
            here = slice(start, start + _AT_ONCE)
            found[here] = np.clip(self.field(near[here], outward[here], texel), 0.0, 1.0)

        starts = range(0, len(near), _AT_ONCE)
        if len(starts) == 1:
            work(0)
            return found
        # numpy lets go of the interpreter, so that threads do share the work.
        with ThreadPoolExecutor(cpu_count()) as pool:
            list(pool.map(work, starts))
        return found


def looks_of(part: Part, seed: int) -> Looks:
    """How a part looks: the same for one ``seed`` and ref on every run, and for no two refs but
    fronts through which the grain runs on."""
    stock = part.blank.stock
    colour = colour_of(stock.material, stock.colour)
    if is_glass(stock.material):
        return Looks(even(colour), colour, clear=True)
    frame, key = grain_frame(part), key_of(part, seed)
    if stock.kind == "board":
        inner = solid(stock, figure_of(stock.material), colour, frame.size, key)
    else:
        inner = sheet(stock, part.blank.thickness, key)

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        return inner(frame.places(points), frame.directions(normals), texel)

    return Looks(edged(part, field, (seed, part.ref)))
