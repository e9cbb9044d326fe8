"""Check list of tools' set-ups: each cutter, depth stop and angle once, with all that it makes."""

from __future__ import annotations

import math
from collections import Counter
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.handover.lists import like_parts
from rodwright.handover.words import degrees
from rodwright.lengths import LengthUnit, format_length, ware_size
from rodwright.unit import (
    Bevel,
    Easing,
    FingerPull,
    Groove,
    Hole,
    Housing,
    Mitre,
    Mortise,
    Notch,
    PocketHole,
    Rebate,
    Surface,
    Unit,
    Working,
)
from rodwright.unit.shop_part import ShopPart, shop_part

_TOOLS: tuple[tuple[type, str, str], ...] = (
    (Mitre, "Saw, angled", "cut a pair of offcuts and hold them to a square"),
    (Bevel, "Saw, angled", "cut an offcut and hold it to a bevel gauge"),
    (Rebate, "Router or saw, rebates", "cut an offcut and measure both ways"),
    (Groove, "Router or saw, grooves", "what goes in must slide by hand: try it in an offcut"),
    (Housing, "Router or saw, housings", "what goes in must slide by hand: try it in an offcut"),
    (Hole, "Drill", "set the stop, bore an offcut, measure the depth"),
    (PocketHole, "Drill, aslant", "bore an offcut of the same thickness, drive one screw"),
    (Mortise, "Router or chisel", "cut an offcut and try what goes in"),
    (FingerPull, "Router, finger pulls", "cut an offcut and feel it"),
    (Easing, "Router or plane, arrises", "run along an offcut"),
    (Notch, "Jigsaw or handsaw", "cut on the waste side of the line"),
)  # fmt: skip
"""What makes each kind of working, and how its set-up is tried (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class SetUp:
    """One setting of a tool: what it is, in words, how often it is used, on which parts.

    ``first`` is what to try before the work itself.
    """

    tool: str
    setting: str
    times: int
    refs: tuple[str, ...]
    first: str


def set_ups(unit: Unit) -> tuple[SetUp, ...]:
    """Every set-up that a unit's parts need, tool by tool, the settings that make most first."""
    counted: dict[tuple[int, str], Counter[str]] = {}
    for parts in like_parts(unit):
        shop = shop_part(parts, "cut", unit.display_unit)
        for each in (*shop.part.workings, *shop.later):
            key = (_kind(each), _setting(each, shop, unit.display_unit))
            refs = counted.setdefault(key, Counter())
            refs.update(part.ref for part in parts)
    ordered = sorted(counted, key=lambda key: (key[0], -counted[key].total(), key[1]))
    return tuple(
        SetUp(
            _TOOLS[kind][1],
            setting,
            counted[kind, setting].total(),
            tuple(counted[kind, setting]),
            _TOOLS[kind][2],
        )
        for kind, setting in ordered
    )


def set_ups_data(rows: Sequence[SetUp]) -> list[dict[str, object]]:
    """The list as plain data for its template."""
    return [
        {
            "tool": each.tool,
            "setting": each.setting,
            "times": each.times,
            "refs": ", ".join(each.refs),
            "first": each.first,
        }
        for each in rows
    ]


def _kind(working: Working) -> int:
    return next(at for at, (kind, _, _) in enumerate(_TOOLS) if isinstance(working, kind))


def _setting(working: Working, shop: ShopPart, unit: LengthUnit) -> str:
    """What the tool is set to; figures told alike are one set-up."""
    size = shop.part.blank.size
    return ", ".join(_figures(working, size, unit)) + _fence(working, shop, unit)


def _figures(working: Working, size: tuple[float, float, float], unit: LengthUnit) -> Iterator[str]:
    figures = working.figures(size)
    if figures.drill is not None:
        yield f"drill {ware_size(figures.drill, unit)}"
    if isinstance(working, Notch):
        # Each is marked out for itself; there is nothing to set.
        yield working.called
        return
    if figures.across:
        sides = " x ".join(format_length(each, unit) for each in figures.across)
        yield (
            f"{working.called} {sides} wide"
            if len(figures.across) == 1
            else (f"{working.called} {sides}")
        )
    elif figures.drill is None:
        yield working.called
    if figures.angle is not None:
        yield f"{degrees(figures.angle)} {'off the surface' if figures.drill else 'off square'}"
    if figures.depth is not None:
        through = figures.depth == math.inf or _through(working, size, figures.depth)
        yield "right through" if through else f"{format_length(figures.depth, unit)} deep"
    if figures.radius is not None:
        yield f"radius {format_length(figures.radius, unit)}"


def _through(working: Working, size: tuple[float, float, float], depth: float) -> bool:
    surface = getattr(working, "surface", None)
    return isinstance(surface, Surface) and depth >= size[surface.axis]


def _fence(working: Working, shop: ShopPart, unit: LengthUnit) -> str:
    """How far a groove is from the nearer edge of its surface, which the fence runs along."""
    if not isinstance(working, Groove):
        return ""
    extent = shop.part.blank.size[working.across]
    near = min(working.position, extent - working.position - working.width)
    return f", {format_length(near, unit)} from the edge"
