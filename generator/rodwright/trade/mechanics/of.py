"""The one door: what is known of a material by its name."""

from __future__ import annotations

from dataclasses import replace

from rodwright.trade.creep import ServiceClass, kdef
from rodwright.trade.materials import MATERIALS, name_of
from rodwright.trade.mechanics.boards import board, glass
from rodwright.trade.mechanics.figures import Mechanics
from rodwright.trade.mechanics.plywood import blockboard, plywood
from rodwright.trade.mechanics.solid_wood import solid_wood


def mechanics_of(
    material: str, thickness: float, service_class: ServiceClass = 1, density: float | None = None
) -> Mechanics | None:
    """How stiff and strong a material is, by the name that a spec calls it, ``thickness`` mm thick;
    None where it isn't known.

    ``density`` in kg/m3 where the piece at hand was weighed.  What stands in for something else
    (its core's figures) is told in ``borrowed``.
    """
    name = name_of(material)
    if name is None:
        return None
    known = MATERIALS[name]
    weight = density or known.density
    found = _found(known.stiff_as or name, thickness, weight)
    if found is None:
        return None
    borrowed = found.borrowed
    if known.stiff_as:
        borrowed = f"{known.stiff_because}, {known.stiff_as}" + (
            f": {borrowed}" if borrowed else ""
        )
    creep = kdef(found.table, service_class, found.unlisted)
    return replace(found, creep=creep, borrowed=borrowed)


def _found(name: str, thickness: float, density: float) -> Mechanics | None:
    if name == "glass":
        return glass()
    if name == "blockboard":
        return blockboard(density)
    if name.endswith("plywood"):
        return plywood(name, thickness, density)
    return board(name, thickness, density) or solid_wood(name, density)
