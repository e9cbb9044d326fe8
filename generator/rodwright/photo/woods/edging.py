"""Veneer and tape glued on edges."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field
from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.chips import even
from rodwright.photo.woods.colours import colour_of
from rodwright.photo.woods.figures import figure_of
from rodwright.photo.woods.timber import timber
from rodwright.pictures.colours import linear
from rodwright.trade.materials import MATERIALS, name_of
from rodwright.unit import Part
from rodwright.unit.stock import Edging, Stock

_FACING = 0.9
"""Cosine of the angle within which a surface looks out of an edge."""
_WORDS = ("veneer", "edging", "tape", "lipping", "strip", "solid", "real", "edge", "banding")
_SHADES = {
    "white": "#f2f1ec",
    "cream": "#efe6d0",
    "grey": "#9a9a98",
    "gray": "#9a9a98",
    "black": "#262626",
}
"""Colours of our own that tapes are ordered in."""


def edged(part: Part, bare: Field, key: tuple[object, ...]) -> Field:
    """The field of a part with what is glued on its edges, in the part frame."""
    bands = [(each, _band(part, each, key)) for each in part.edged]

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        found = bare(points, normals, texel)
        for each, band in bands:
            here = _upon(part, each, points, normals)
            if here.any():
                found[here] = band(points[here], normals[here], texel)
        return found

    return field if bands else bare


def _upon(part: Part, edging: Edging, points: Numbers, normals: Numbers) -> Numbers:
    axis, high = edging.surface.axis, edging.surface.at_high
    level = part.blank.size[axis] if high else 0.0
    outward = normals[:, axis] if high else -normals[:, axis]
    near = np.abs(points[:, axis] - level) < edging.thickness + 0.01
    there: Numbers = near & (outward > _FACING)
    return there


def _band(part: Part, edging: Edging, key: tuple[object, ...]) -> Field:
    """The field of one edging, in the part frame: wood runs along the edge."""
    wood = wood_of(edging)
    if not wood:
        return even(tape_colour(edging, part.blank.stock))
    along = 1 if edging.surface.axis == 0 else 0
    thickness = part.blank.thickness
    leaf = timber(
        figure_of(wood),
        colour_of(wood, MATERIALS[wood].colour),
        (thickness, 30.0),
        "flat",
        *key,
        edging.surface.value,
    )

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        across = points[:, 2] - np.float32(thickness / 2)
        placed = np.column_stack([points[:, along], across, np.full_like(across, 15.0)])
        flat = np.zeros_like(normals)
        flat[:, 2] = 1.0
        return leaf.reflectance(placed.astype(np.float32), flat, texel)

    return field


def wood_of(edging: Edging) -> str:
    """The wood that is glued on, as ``MATERIALS`` calls it; empty where it isn't one."""
    return wood_in(edging.material.lower().split())


def tape_colour(edging: Edging, upon: Stock) -> Colour:
    """The colour of tape that isn't wood: the one it is ordered in, else that of what it is on."""
    stated = edging.colour.lower()
    code = next((code for shade, code in _SHADES.items() if shade in stated), stated)
    if len(code) != 7 or not code.startswith("#"):
        return colour_of(upon.material, upon.colour)
    return linear(code)


def wood_in(words: Iterable[str]) -> str:
    """The wood that words name, as ``MATERIALS`` calls it; empty where they name none."""
    known = name_of(" ".join(each for each in words if each not in _WORDS))
    return known if known is not None and MATERIALS[known].grained else ""
