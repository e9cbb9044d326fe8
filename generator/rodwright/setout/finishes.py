"""What each part is finished with: the most particular of what is said."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from difflib import get_close_matches
from types import MappingProxyType

from rodwright.setout.setting import Setting
from rodwright.trade.finishes import takes_finish
from rodwright.unit import Part, Role
from rodwright.unit.finish import Finish, FinishKind, Sheen
from rodwright.unit.roles import BASE, DOORS, DRAWERS, FACE_FRAME, PANELS
from rodwright.wishes.finish import CoatSpec, ColourSpec, FinishSpec

_BOXES = (Role.DRAWER_SIDE, Role.DRAWER_END, Role.DRAWER_BOTTOM)
PLACES: Mapping[str, tuple[Role, ...]] = MappingProxyType(
    {
        "carcass": (*PANELS, Role.BACK, Role.PACKER),
        "shelves": (Role.SHELF,),
        "back": (Role.BACK,),
        "lipping": (Role.LIPPING,),
        "face_frame": FACE_FRAME,
        "doors": DOORS,
        "door_panels": (Role.DOOR_PANEL,),
        "drawers": DRAWERS,
        "drawer_fronts": (Role.DRAWER_FRONT,),
        "drawer_boxes": _BOXES,
        "base": BASE,
        "worktop": (Role.WORKTOP,),
        "cornice": (Role.CORNICE,),
        "scribes": (Role.SCRIBE,),
    }
)
"""The roles of each place, wider places before those that lie in them: the last that has a part's
role is the most particular."""
BARE = (Role.RUNNER,)
"""What is in no place: what slides on a finish sticks (common practice, no source)."""
PAINT, STAIN = "#f3f0e6", "#5f4026"
"""Colours of paint and stain where none is said: off-white and mid-brown, our own choice."""
_SHEENS: Mapping[FinishKind, Sheen] = MappingProxyType(
    {"oil": "matt", "lacquer": "satin", "paint": "satin", "stain": "satin"}
)
_COLOURS: Mapping[FinishKind, str] = MappingProxyType({"paint": PAINT, "stain": STAIN})


def with_finishes(parts: Iterable[Part], setting: Setting) -> tuple[Part, ...]:
    """The parts with what they are finished with.

    What is said of a place or a stock that the unit doesn't have, or that takes no finish, is noted
    in the setting's problems.
    """
    wish, parts = setting.spec.finish, tuple(parts)
    if wish is None:
        return parts
    said = dict(wish.said())
    _refuse_unknown(said, parts, setting.at("finish"))
    return tuple(replace(part, finish=_finish_of(part, said)) for part in parts)


def _finish_of(part: Part, said: Mapping[str, CoatSpec]) -> Finish | None:
    stock = part.blank.stock
    if part.role in BARE or not takes_finish(stock.material):
        return None
    names = ["everything"]
    if stock.name not in FinishSpec.model_fields:
        names.append(stock.name)
    names += [name for name, roles in PLACES.items() if part.role in roles]
    return next((_finish(said[name]) for name in reversed(names) if name in said), None)


def _finish(coat: CoatSpec) -> Finish | None:
    if coat.kind == "none":
        return None
    sheen = coat.sheen or _SHEENS[coat.kind]
    if isinstance(coat.colour, ColourSpec):
        return Finish(coat.kind, coat.colour.shown, sheen, coat.colour.name)
    return Finish(coat.kind, coat.colour or _COLOURS.get(coat.kind, ""), sheen)


def _refuse_unknown(said: Mapping[str, CoatSpec], parts: tuple[Part, ...], here: Setting) -> None:
    """Note what is said of something that isn't there, or that takes no finish."""
    places = {
        name: own
        for name, roles in PLACES.items()
        if (own := [part for part in parts if part.role in roles])
    }
    stocks: dict[str, list[Part]] = {}
    for part in parts:
        if part.role not in BARE and part.blank.stock.name not in FinishSpec.model_fields:
            stocks.setdefault(part.blank.stock.name, []).append(part)
    named = {"everything": list(parts), **places, **stocks}
    words = f"The places are `everything`, {_listed(places)}; the stocks {_listed(stocks)}."
    for name, coat in said.items():
        if name in named:
            if coat.kind != "none" and not _takes_any(named[name]):
                materials = dict.fromkeys(part.blank.stock.material for part in named[name])
                here.at(name).refuse(
                    f"`{name}` is of {' and '.join(materials)}, which takes no finish",
                    "Take it out, or write `none`.",
                )
            continue
        near = get_close_matches(name, named, n=1)
        hint = f"Did you mean `{near[0]}`? " if near else ""
        here.at(name).refuse(_missing(name, here), f"{hint}{words}")


def _takes_any(parts: Iterable[Part]) -> bool:
    return any(takes_finish(part.blank.stock.material) for part in parts)


def _missing(name: str, setting: Setting) -> str:
    if name in PLACES:
        return f"this unit has no {name.replace('_', ' ')} to be finished"
    if name in setting.spec.stock:
        return f"nothing that is finished is cut from `{name}`"
    return f"`{name}` is neither a place of a unit nor a stock"


def _listed(names: Iterable[str]) -> str:
    return ", ".join(f"`{name}`" for name in names)
