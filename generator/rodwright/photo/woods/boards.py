"""Parts of solid wood: one board, or strips glued side by side."""

from __future__ import annotations

from collections.abc import Callable
from math import ceil

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.figures import Figure
from rodwright.photo.woods.timber import Timber, timber
from rodwright.trade.gluing_up import JOINTING, OVER_WIDTH
from rodwright.trade.stock_sizes import BOARD_WIDTHS
from rodwright.unit import Stock

Field = Callable[[Numbers, Numbers, float], Numbers]
"""Reflectance (n, 3) at points and normals (n, 3), for so large a texel, mm."""


def strip_width(stock: Stock, width: float) -> float:
    """How wide (mm) each of the equal strips is that a part ``width`` mm wide is glued up of; the
    part's own width where a board gives it whole.

    The cutting plan may choose others, of what it has at hand.
    """
    sold = [piece.width for piece in stock.pieces] or [each.width for each in stock.sold]
    widest = max([*sold, stock.section or 0.0], default=0.0) or max(BOARD_WIDTHS["mm"])
    if width <= widest:
        return width
    each = widest - stock.planing - 2 * JOINTING["mm"]
    return width / ceil((width + OVER_WIDTH["mm"]) / max(each, 20.0))


def solid(
    stock: Stock,
    figure: Figure,
    colour: Colour,
    size: tuple[float, float, float],
    key: tuple[object, ...],
) -> Field:
    """The field of a board, or of strips glued up, in the grain's frame; ``size`` is along the
    grain, across and through, mm."""
    _, width, thickness = size
    strip = strip_width(stock, width)
    boards: dict[int, Timber] = {}

    def board(number: int) -> Timber:
        if number not in boards:
            boards[number] = timber(
                figure, colour, (strip, thickness), stock.sawn, *key, "strip", number
            )
        return boards[number]

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        # A hair's breadth inwards: what lies on a part's very edge is of the strip beside it.
        inside = points[:, 1] - normals[:, 1] * np.float32(0.01)
        number = np.floor(inside / strip).astype(np.int32)
        found = np.empty((len(points), 3), np.float32)
        for each in np.unique(number):
            here = number == each
            middle = np.array([0.0, (each + 0.5) * strip, thickness / 2], np.float32)
            found[here] = board(int(each)).reflectance(points[here] - middle, normals[here], texel)
        return found

    return field
