"""Parts of sheet goods: faces of one kind, edges of another."""

from __future__ import annotations

import numpy as np

from rodwright.photo.scene import Colour
from rodwright.photo.woods.boards import Field
from rodwright.photo.woods.chance import Numbers
from rodwright.photo.woods.chips import chips, even, fibres, strands
from rodwright.photo.woods.colours import colour_of, veneer_of
from rodwright.photo.woods.figures import figure_of
from rodwright.photo.woods.leaves import THICKNESS, leaves
from rodwright.photo.woods.plies import OTHER_PLY, PLY, peeled, plies
from rodwright.trade.materials import MATERIALS, name_of
from rodwright.unit import Stock

_DECORATIVE = ("oak", "ash", "cherry", "maple", "walnut", "sapele", "red oak", "white oak", "teak")
"""Woods whose plywood has sliced leaves on its faces, not peeled sheets (common practice, no
source)."""
_FOIL = 0.3
"""Thickness of a melamine face, mm."""
_EVEN = ("hardboard", "hb.", "hdf")


def sheet(stock: Stock, thickness: float, key: tuple[object, ...]) -> Field:
    """The field of a part of sheet goods, in the grain's frame; ``thickness`` in mm."""
    name = name_of(stock.material) or stock.material.lower()
    colour = colour_of(stock.material, stock.colour)
    if "osb" in name:
        return strands(colour, key)
    if "melamine" in name:
        return _faced(even(colour), even(colour), _core(name, thickness, key), thickness, _FOIL)
    if "chipboard" in name and "-" not in name:
        return chips(colour, thickness, key)
    if any(each in name for each in _EVEN):
        return fibres(colour, key, 0.018)
    wood = veneer_of(name)
    if "-veneered" in name or wood in _DECORATIVE:
        face, back = (
            leaves(figure_of(wood), colour, stock.sawn, (*key, side)) for side in ("face", "back")
        )
        return _faced(face, back, _core(name, thickness, key), thickness, THICKNESS)
    if "mdf" in name or (name in MATERIALS and not MATERIALS[name].grained):
        return fibres(colour, key, 0.012)
    return _plywood(name, wood, colour, thickness, key)


def _plywood(
    name: str, wood: str, colour: Colour, thickness: float, key: tuple[object, ...]
) -> Field:
    soft = name.startswith(("softwood", "douglas", "fir", "spruce", "pine"))
    figure = figure_of("douglas fir" if name.startswith("douglas") else "pine" if soft else wood)
    ply = PLY.get(wood, OTHER_PLY)
    face, back = (
        peeled(figure, colour, (*key, side), hardwood=not soft) for side in ("face", "back")
    )
    return _faced(face, back, plies(colour, thickness, ply, key), thickness, 0.25 * ply)


def _core(name: str, thickness: float, key: tuple[object, ...]) -> Field:
    """What a veneered or faced sheet shows at its edges."""
    core = next((each for each in ("chipboard", "mdf") if each in name), "birch plywood")
    colour = colour_of(core, MATERIALS[core].colour)
    if core == "chipboard":
        return chips(colour, thickness, key)
    if core == "mdf":
        return fibres(colour, key, 0.012)
    return plies(colour, thickness, PLY["birch"], key)


def _faced(face: Field, back: Field, core: Field, thickness: float, deep: float) -> Field:
    """Two faces so many mm deep, and a core."""

    def field(points: Numbers, normals: Numbers, texel: float) -> Numbers:
        found = np.empty((len(points), 3), np.float32)
        level = points[:, 2]
        at_face = level > thickness - deep
        at_back = ~at_face & (level < deep)
        for here, each in ((at_face, face), (at_back, back), (~at_face & ~at_back, core)):
            if here.any():
                found[here] = each(points[here], normals[here], texel)
        return found

    return field
