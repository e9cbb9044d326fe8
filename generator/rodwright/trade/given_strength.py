"""Figures that a maker gives of a stock, over those that are known of its material."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Any, Literal, get_args

from rodwright.trade.creep import ServiceClass, kdef
from rodwright.trade.design_strength import VARIATION, Strength, lower_twentieth
from rodwright.trade.mechanics import Family, Mechanics
from rodwright.trade.mechanics.figures import stress
from rodwright.trade.mechanics.plywood import sheet_gravity
from rodwright.trade.mechanics.solid_wood import wood_gravity
from rodwright.trade.sources import Figure, Source

STRENGTHS: tuple[Strength, ...] = get_args(Strength)


@dataclass(frozen=True, slots=True)
class Given:
    """What a maker says of a stock: moduli and strengths in N/mm2 by the names they have in
    :class:`Mechanics`, whether the strengths are characteristic or means, kdef, and where all that
    comes from."""

    figures: Mapping[str, float]
    characteristic: bool
    creep: float | None
    source: Source


_PLYWOOD = (Family.PLYWOOD, "plywood")
_CHIPBOARD = (Family.CHIPBOARD, "P4")
_MDF = (Family.MDF, "MDF.LA")
_BY_WORD = {
    "plywood": _PLYWOOD,
    "ply": _PLYWOOD,
    "blockboard": (Family.BLOCKBOARD, "plywood"),
    "laminboard": (Family.BLOCKBOARD, "plywood"),
    "osb": (Family.OSB, "OSB/2"),
    "chipboard": _CHIPBOARD,
    "particleboard": _CHIPBOARD,
    "mdf": _MDF,
    "hdf": _MDF,
    "fibreboard": _MDF,
    "hardboard": (Family.HARDBOARD, "HB.LA"),
}
Counted = tuple[Family, str]
"""What a material counts as: its family, and the line of EN 1995-1-1's tables it goes by."""


def counts_as(kind: Literal["sheet", "board"], material: str) -> Counted | None:
    """What a material that isn't known counts as: boards are solid wood, and a sheet tells by a
    word of its name, or doesn't (None)."""
    if kind == "board":
        return Family.SOLID_WOOD, "solid timber"
    words = material.lower().replace("-", " ").split()
    return next((_BY_WORD[word] for word in words if word in _BY_WORD), None)


def strength_wanted(kind: Literal["sheet", "board"]) -> str:
    """What a maker writes of a stock whose stiffness isn't known."""
    like = "birch plywood" if kind == "sheet" else "pine"
    return (
        "`strength: {stiffness: 9300 N/mm2, source: its maker}` with its own figure (N/mm2 or "
        f"psi), or what it is like: `strength: {{like: {like}}}`"
    )


def unknown_but_given(
    material: str, density: float, counted: Counted, modulus: Figure, service_class: ServiceClass
) -> Mechanics:
    """A material of which no more is known than its density in kg/m3 and its modulus of elasticity,
    and what it counts as."""
    family, table = counted
    weigh = wood_gravity if family is Family.SOLID_WOOD else sheet_gravity
    return Mechanics(
        family,
        modulus,
        gravity=weigh(density),
        creep=kdef(table, service_class, material),
        table=table,
        unlisted=material,
    )


def with_given(base: Mechanics, given: Given) -> Mechanics:
    """What is known of a stock with what a maker gives of it, which goes first.

    Strengths that are means, beside others that are characteristic, become so too.
    """
    said: dict[str, Any] = {
        name: stress(value, given.source) for name, value in given.figures.items()
    }
    strengths = {name for name in STRENGTHS if name in said}
    kept = {name for name in STRENGTHS if name not in said and getattr(base, name) is not None}
    characteristic = given.characteristic if strengths else base.characteristic
    if strengths and kept and given.characteristic != base.characteristic:
        characteristic = True
        means = strengths if base.characteristic else kept
        known = {name: said.get(name) or getattr(base, name) for name in means}
        said |= {name: lower_twentieth(of, VARIATION[name]) for name, of in known.items()}
    creep = base.creep if given.creep is None else Figure(given.creep, "", given.source)
    return replace(base, characteristic=characteristic, creep=creep, **said)
