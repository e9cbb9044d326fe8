"""Edging: thin strips glued on the edges of sheet parts."""

from __future__ import annotations

from collections.abc import Iterable

from rodwright.setout.bench import Bench
from rodwright.setout.rod.front_and_back import covered_fronts, hidden_by_frame
from rodwright.setout.setting import Setting
from rodwright.unit import FACE_FRAME, UPRIGHTS, Edging, Part, Role, Surface
from rodwright.wishes.edging import EdgingSpec

THICKEST = 3.0
"""Edging thicker than this (mm) is a lipping, with a solid of its own (common practice, no
source)."""
_ROLES = {
    "shelves": Role.SHELF,
    "dividers": Role.DIVIDER,
    "sides": Role.SIDE,
    "top": Role.TOP,
    "bottom": Role.BOTTOM,
    "doors": Role.DOOR,
    "drawers": Role.DRAWER_FRONT,
}
_ALL_ROUND = ("doors", "drawers")
_EDGES = (Surface.FACE_EDGE, Surface.BACK_EDGE, Surface.NEAR_END, Surface.FAR_END)


def set_out_edging(setting: Setting) -> None:
    """Note the edging on the parts that get it; what gets none, though named, is a problem."""
    spec, bench, wish, say = setting.spec, setting.bench, setting.spec.edging, setting.say
    assert wish is not None
    # Of a unit that is refused already, parts may be missing for that alone.
    refused = setting.problems.noted_since()
    if wish.thickness > THICKEST:
        setting.at("thickness").refuse(
            f"edging is {say(THICKEST)} thick at the most, not {say(wish.thickness)}",
            "Make it thinner, or have a solid strip under `lipping`.",
        )
    covered = covered_fronts(spec)
    lipped = spec.lipping.edges if spec.lipping is not None else ()
    for number, name in enumerate(wish.edges):
        like = bench.parts_of(_ROLES[name])
        parts = [part for part in like if part.blank.stock.kind == "sheet"]
        if name in lipped:
            told = f"the {name} have a lipping, so there is no edge left for edging"
        elif name in covered:
            told = f"the face frame covers the front of the {name}: nothing shows to be edged"
        elif not parts and refused:
            continue
        elif not parts:
            told = f"there are no {name} of sheet material to be edged"
        else:
            hidden = [part.ref for part in parts if name not in _ALL_ROUND and _hidden(bench, part)]
            if len(hidden) < len(parts):
                _edge(
                    bench,
                    wish,
                    [part for part in parts if part.ref not in hidden],
                    name in _ALL_ROUND,
                )
                continue
            told = f"the face frame covers the front of the {name}: nothing shows to be edged"
        setting.at("edges", number).refuse(told, f"Take `{name}` out of the list.")


def _edge(bench: Bench, wish: EdgingSpec, parts: Iterable[Part], all_round: bool) -> None:
    for part in parts:
        surfaces = _EDGES if all_round else (_front_edge(part),)
        edged = tuple(
            Edging(surface, wish.material, wish.thickness, wish.colour or "")
            for surface in surfaces
        )
        bench.edge(part.ref, edged)


def _hidden(bench: Bench, part: Part) -> bool:
    """Whether the front edge of a part lies wholly behind members of the face frame."""
    return hidden_by_frame(
        part.bounds(),
        [other.bounds() for other in bench.parts_of(*FACE_FRAME)],
        [other.bounds() for other in bench.parts_of(*UPRIGHTS)],
    )


def _front_edge(part: Part) -> Surface:
    """The edge that looks forward."""
    return Surface.FACE_EDGE if part.placement.width[1] > 0 else Surface.BACK_EDGE
