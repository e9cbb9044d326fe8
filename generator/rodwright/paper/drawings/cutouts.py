"""Where a unit is cut out round what stays in the room: sockets, pipes, skirtings; mm."""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.geometry import TOUCH
from rodwright.pictures.drafting.bands import Rectangle, is_square, rectangle
from rodwright.pictures.drafting.chains import Chain, chain
from rodwright.pictures.drafting.seen import AXES, ViewName
from rodwright.pictures.drafting.views import Note
from rodwright.unit import Unit

_STAYS = ("socket", "pipe", "skirting")
"""What workings are for that are cut round something in the room."""
_SIGHT: dict[ViewName, int] = {"side": 0, "front": 1, "plan": 2}
"""The axis along which each view looks."""


def cutouts(unit: Unit, kind: ViewName) -> dict[Rectangle, str]:
    """Cut-outs that a view looks straight into, each once: what they cover of it, and what they
    are for."""
    found: dict[Rectangle, str] = {}
    for part in unit.parts:
        for each in part.workings:
            use = getattr(each, "use", "")
            if use not in _STAYS or not is_square(part):
                continue
            if abs(part.placement.thickness[_SIGHT[kind]]) > 1 - TOUCH:
                box = part.placement.box_to_unit(each.bounds(part.blank.size))
                (a, b), (c, d) = rectangle(box, *AXES[kind])
                found[(round(a, 3), round(b, 3)), (round(c, 3), round(d, 3))] = use
    return found


def cutout_chains(unit: Unit, kind: ViewName, box: Rectangle) -> Iterator[Chain]:
    """Each cut-out from the left and the floor (from the front), from the left and the rear (from
    above), from the rear and the floor (from the left)."""
    say = unit.display_unit
    for across, up in cutouts(unit, kind):
        (left, _), (foot, head) = box
        whole = (up[0], head) if kind == "plan" else (foot, up[1])
        yield chain("cut-out", [across], (left, across[1]), ("x", "inside", sum(up) / 2), say)
        yield chain("cut-out", [up], whole, ("y", "inside", sum(across) / 2), say)


def cutout_notes(unit: Unit, kind: ViewName) -> tuple[Note, ...]:
    """What each cut-out is for."""
    return tuple(
        Note((sum(across) / 2, sum(up) / 2), use)
        for (across, up), use in cutouts(unit, kind).items()
    )
