"""How parts and bought-in pieces look on a page: colours, finishes and what is glued on edges."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

import numpy as np

from rodwright.page import document as page
from rodwright.photo import srgb
from rodwright.photo.finished import finished_colour, finished_surface
from rodwright.photo.scene import Colour
from rodwright.photo.scene import Surface as Shown
from rodwright.photo.wares import ware_surface as ware_shown
from rodwright.photo.woods.chance import chance
from rodwright.photo.woods.colours import colour_of
from rodwright.photo.woods.edging import tape_colour, wood_of
from rodwright.photo.woods.grain import grain_frame
from rodwright.trade.materials import MATERIALS
from rodwright.unit import Grain, Part, Unit, Ware
from rodwright.unit.finish import Finish

_FAR = 4000.0
"""mm: how far apart in their wood two parts may have been cut."""
_LEAST_ROUGH = 0.02
"""Panes and mirrors: light sources as points would vanish in anything smoother."""


@dataclass(frozen=True, slots=True)
class Look:
    """What decides how a material looks: what it is, as :class:`rodwright.unit.Stock` says it, its
    ``thickness`` (mm; 0 of boards: only sheets show it at their edges), and its finish."""

    kind: Literal["sheet", "board"]
    material: str
    colour: str
    sawn: Literal["flat", "quarter"]
    thickness: float
    grained: bool
    finish: Finish | None


def look_of(part: Part) -> Look:
    """How a part looks; equal for parts that look alike, however they are called."""
    stock = part.blank.stock
    return Look(
        stock.kind,
        stock.material,
        stock.colour,
        stock.sawn,
        part.blank.thickness if stock.kind == "sheet" else 0.0,
        part.blank.grain is not Grain.NONE,
        part.finish,
    )


def edge_looks(part: Part) -> dict[str, Look | Colour]:
    """What is glued on a part's edges, by their side: the look of a wood, or the finished colour of
    tape."""
    found: dict[str, Look | Colour] = {}
    for each in part.edged:
        side = f"{'+' if each.surface.at_high else '-'}{'xyz'[each.surface.axis]}"
        if wood := wood_of(each):
            shown = MATERIALS[wood].colour
            found[side] = Look("board", wood, shown, "flat", 0.0, True, part.finish)
        else:
            bare = np.array(tape_colour(each, part.blank.stock))
            red, green, blue = finished_colour(bare, part.finish).tolist()
            found[side] = (red, green, blue)
    return found


def looks_in(unit: Unit) -> tuple[Look, ...]:
    """Every look of a unit's parts and of what is glued on them, each once."""
    found: dict[Look, None] = {}
    for part in unit.parts:
        for look in (look_of(part), *edge_looks(part).values()):
            if isinstance(look, Look):
                found[look] = None
    return tuple(found)


@lru_cache(maxsize=1024)
def named(look: Look) -> tuple[str, page.Surface]:
    """A look's name, a digest of it, and its surface."""
    return _digest(look), _told(finished_surface(mean_colour(look), look.material, look.finish))


def surface_of(part: Part) -> tuple[str, page.Surface]:
    """The name and the surface of a part's material under its finish.

    The name is the same for parts that look alike, and never means another surface.
    """
    return named(look_of(part))


def edge_surfaces(part: Part) -> dict[str, tuple[str, page.Surface]]:
    """Names and surfaces of what is glued on a part's edges, by their side (``-x``, ``+y``)."""
    found = {}
    for side, look in edge_looks(part).items():
        if isinstance(look, Look):
            found[side] = named(look)
        else:
            shown = _told(finished_surface(look, "melamine", part.finish))
            found[side] = (_digest(shown), shown)
    return found


def ware_surface(ware: Ware, under: Finish | None) -> tuple[str, page.Surface]:
    """The name and the surface of a bought-in piece on a part that is finished so."""
    shown = _told(ware_shown(ware, under))
    return _digest(shown), shown


def mean_colour(look: Look) -> Colour:
    """The colour of a material under its finish, linear."""
    bare = np.array(colour_of(look.material, look.colour))
    red, green, blue = finished_colour(bare, look.finish).tolist()
    return red, green, blue


def lie_of(part: Part) -> tuple[float, float, float, float]:
    """Where in its wood a part was cut, as :class:`rodwright.page.document.Part` says it: somewhere
    else for each, but for fronts through which the grain runs on."""
    if not part.grain_run:
        return _drawn(part.ref)
    _, along, _, across = _drawn(part.grain_run)
    frame = grain_frame(part)
    return frame.signs[0], frame.shift[0] + along, frame.signs[1], frame.shift[1] + across


@lru_cache(maxsize=4096)
def _drawn(words: str) -> tuple[float, float, float, float]:
    """A place in the wood, and which way round, by chance."""
    rng = chance("lie", words)
    one, other = rng.choice((-1.0, 1.0), 2).tolist()
    along, across = (round(each, 1) for each in rng.uniform(0, _FAR, 2).tolist())
    return one, along, other, across


def _told(shown: Shown) -> page.Surface:
    if not isinstance(shown.colour, tuple):
        raise TypeError("a surface of one colour is wanted")
    rough = round(max(shown.roughness, _LEAST_ROUGH), 3)
    return page.Surface(srgb.code_of(np.array(shown.colour)), rough, shown.metal, shown.clear)


def _digest(told: object) -> str:
    return hashlib.sha256(repr(told).encode()).hexdigest()[:16]
