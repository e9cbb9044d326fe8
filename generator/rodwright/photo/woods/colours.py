"""The mean colour that a material is shown in."""

from __future__ import annotations

from rodwright.photo.scene import Colour
from rodwright.photo.woods.colour import linear_of_lab
from rodwright.pictures.colours import linear
from rodwright.trade.materials import MATERIALS, name_of
from rodwright.trade.wood_colours import WOOD_COLOURS, WoodColour

_CHIPS = ("chipboard", "osb")


def colour_of(material: str, said: str) -> Colour:
    """The reflectance of a material: ``said`` (``#rrggbb``) where the maker chose it, that is,
    where it isn't what drawings show the material in; else as it is measured."""
    known = name_of(material)
    measured = _measured(known) if known else None
    if known is None or measured is None or said.lower() != MATERIALS[known].colour:
        return linear(said)
    return linear_of_lab(measured.lightness, measured.red, measured.yellow)


def _measured(name: str) -> WoodColour | None:
    if name in WOOD_COLOURS:
        return WOOD_COLOURS[name]
    for board in _CHIPS:
        if board in name and "-" not in name:
            return WOOD_COLOURS[board]
    return WOOD_COLOURS.get(veneer_of(name))


def veneer_of(name: str) -> str:
    """The wood that a sheet's faces are of, as its name says; empty where it says none."""
    for mark in ("-veneered", " plywood", " veneer"):
        if mark in name:
            return name.split(mark)[0]
    return ""
