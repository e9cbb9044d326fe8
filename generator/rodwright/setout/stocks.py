"""Stock: from the maker's description to what parts are cut from."""

from __future__ import annotations

from dataclasses import replace
from difflib import get_close_matches
from typing import Literal

from rodwright.problems import KeyPath, Problems
from rodwright.setout.stock_at_hand import (
    Lying,
    boards_at_hand,
    boards_sold,
    edges_of,
    flaws_of,
    note_sawn,
    planing_off,
    sheets_at_hand,
    sheets_sold,
)
from rodwright.trade.creep import ServiceClass
from rodwright.trade.given_strength import (
    Given,
    counts_as,
    strength_wanted,
    unknown_but_given,
    with_given,
)
from rodwright.trade.materials import known_materials, material_called, near_materials
from rodwright.trade.mechanics import Mechanics, mechanics_of
from rodwright.trade.sources import Figure, Source
from rodwright.unit import Grain, Stock
from rodwright.wishes.stock import BoardSpec, SheetSpec

_COLOURS = {"sheet": "#dcc59b", "board": "#d3b183"}


def stocks(
    specs: dict[str, SheetSpec | BoardSpec], problems: Problems, service_class: ServiceClass = 1
) -> dict[str, Stock]:
    """Every stock of a spec by its name; densities, colours, stiffness and strength filled in from
    the material, creep for the service class of the room."""
    return {name: _stock(name, spec, problems, service_class) for name, spec in specs.items()}


def _stock(
    name: str, spec: SheetSpec | BoardSpec, problems: Problems, service_class: ServiceClass
) -> Stock:
    known = material_called(spec.material)
    density, source = spec.density, "given in the spec"
    if density is None and known is not None:
        density, source = known.density, str(known.source)
    if density is None:
        near = near_materials(spec.material)
        hint = f"{near} If not, add" if near else "Add"
        problems.add(
            ("stock", name, "material"),
            f"the density of `{spec.material}` isn't known",
            f"{hint} `density: ` with its kg/m3 to this stock (weigh a piece and divide by its "
            f"volume), and how stiff it is: {strength_wanted(spec.kind)}. "
            f"Known are: {known_materials(spec.kind)}.",
        )
        density = 0.0
    grained = known.grained if known is not None else True
    grain = Grain.LENGTHWISE
    if isinstance(spec, SheetSpec):
        grain = Grain(spec.grain) if spec.grain else Grain.LENGTHWISE if grained else Grain.NONE
    colour = spec.colour or (known.colour if known else _COLOURS[spec.kind])
    bare = Stock(
        name,
        spec.kind,
        spec.material,
        spec.thickness,
        grain,
        density,
        source,
        colour,
        price=spec.price,
        sawn=_sawn(spec),
        mechanics=_mechanics(name, spec, density, problems, service_class),
    )
    if isinstance(spec, SheetSpec):
        return _with_sheets(bare, spec, problems)
    return _with_boards(bare, spec, problems)


def _with_sheets(stock: Stock, spec: SheetSpec, problems: Problems) -> Stock:
    """A stock with the sheets that are there, and those that are sold."""
    where = ("stock", stock.name)
    size = None
    if spec.size is not None:
        size = (spec.size[0], spec.size[1])
        flaws_of(Lying("the sheet", *size, edges_of(spec.trim)), (), where, problems)
    return replace(
        stock,
        size=size,
        pieces=sheets_at_hand(spec, where, problems),
        sold=sheets_sold(spec, where, problems),
        trim=edges_of(spec.trim),
        show_faces=spec.show_faces,
    )


def _with_boards(stock: Stock, spec: BoardSpec, problems: Problems) -> Stock:
    """A stock with the boards that are there, and those that are sold."""
    where = ("stock", stock.name)
    note_sawn(spec.sawn_thickness, spec.thickness, (*where, "sawn_thickness"), problems)
    return replace(
        stock,
        pieces=boards_at_hand(spec, where, problems),
        sold=boards_sold(spec, where, problems),
        trim=edges_of(spec.bad_ends),
        sawn_thickness=spec.sawn_thickness,
        planing=planing_off(spec.planing, spec.sawn_thickness, problems),
        section=spec.section,
    )


_KEYS = {
    "stiffness": "along",
    "stiffness_across": "across",
    "shear_stiffness": "shear",
    "panel_shear_stiffness": "panel_shear",
    "bending_strength": "bending",
    "bending_strength_across": "bending_across",
    "shear_strength": "shear_strength",
    "bearing_strength": "bearing",
}
"""What :class:`Mechanics` calls the keys of a stock's `strength`."""


def _mechanics(
    name: str,
    spec: SheetSpec | BoardSpec,
    density: float,
    problems: Problems,
    service_class: ServiceClass,
) -> Mechanics | None:
    """How stiff and strong a stock is: what is known of its material, under what its maker says."""
    base = mechanics_of(spec.material, spec.thickness, service_class, spec.density)
    said = spec.strength
    if said is None:
        return base
    place = ("stock", name, "strength")
    if said.like is not None:
        base = mechanics_of(said.like, spec.thickness, service_class, density)
        if base is None:
            near = near_materials(said.like)
            problems.add(
                (*place, "like"),
                f"nothing is known of how stiff `{said.like}` is",
                f"{near} Known are: {known_materials(spec.kind)}.".lstrip(),
            )
            return None
        base = replace(base, borrowed=f"{said.like}, which the spec says it is like")
    source = Source(f"given in the spec: {said.source}" if said.source else "given in the spec")
    figures = {_KEYS[key]: value for key, value in said.figures().items()}
    if base is None:
        if "along" not in figures:
            return None
        counted = counts_as(spec.kind, spec.material)
        if counted is None:
            problems.add(
                place,
                f"it isn't known what `{spec.material}` is made like, and so not how it creeps",
                "Add `like:` with the nearest of the materials that are known, such as `like: "
                "birch plywood`.",
            )
            return None
        modulus = Figure(figures["along"], "N/mm2", source)
        base = unknown_but_given(spec.material, density, counted, modulus, service_class)
    given = Given(figures, said.strengths == "characteristic", said.creep, source)
    return with_given(base, given)


def _sawn(spec: SheetSpec | BoardSpec) -> Literal["flat", "quarter"]:
    """How boards are sawn: as the spec says, or else its material's name."""
    if isinstance(spec, SheetSpec):
        return "flat"
    words = spec.material.lower().replace("-", " ").split()
    return spec.sawn or ("quarter" if "quarter" in words else "flat")


def find_stock(
    named: dict[str, Stock], name: str, where: KeyPath, problems: Problems
) -> Stock | None:
    """The stock of this name; its absence is noted with the nearest name there is."""
    if name in named:
        return named[name]
    near = get_close_matches(name, named, n=1)
    hint = f"Did you mean `{near[0]}`?" if near else f"There is: {', '.join(named)}."
    problems.add(where, f"no stock is called `{name}`", f"{hint} Or add it under `stock`.")
    return None
