"""What each screw or pin of a back carries when the carcass is pushed.

Newtons, millimetres.  In even shear every mm of a panel's edge carries F/B, and each fixing what
comes to the length that it stands for: q s.
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.strength.backs import Edge, Panel
from rodwright.strength.bracing import SHEAR_FLOW
from rodwright.strength.results import Group, Input, Result
from rodwright.trade.fastenings import Bears, Entered, Into, pressed_aside, screw_aside
from rodwright.trade.screws import WOOD_SCREW
from rodwright.unit import Fixing, Joint, Part, Unit

EACH_CARRIES = "load on each screw or pin of the back under that push"


def back_fixings(unit: Unit, panels: tuple[Panel, ...], push: float) -> Iterator[Result]:
    """The most that a fixing of the panels carries of a push (N) that they share, against what it
    may; nothing of grooves, nor where it isn't known what the wood bears."""
    width = sum(panel.width for panel in panels)
    found = [
        (push / width * edge.spacing, bears, panel, edge)
        for panel in panels
        for edge in panel.edges
        if edge.slip and (bears := _bears(unit, panel, edge)) is not None
    ]
    if not found:
        return
    load, bears, panel, edge = max(found, key=lambda each: each[0] / each[1].allowed)
    yield Result(
        Group.WHOLE,
        "back",
        (panel.part.ref,),
        EACH_CARRIES,
        load,
        bears.allowed,
        "N",
        "F s/B",
        SHEAR_FLOW,
        (
            Input("F", "what the back takes of the push", push, "N"),
            Input("B", "width of the back", width, "mm"),
            Input("s", f"from one to the next along the {edge.side} edge", edge.spacing, "mm"),
        ),
        limit_source=bears.source,
        notes=(f"may carry {bears.formula}",),
    )


def _bears(unit: Unit, panel: Panel, edge: Edge) -> Bears | None:
    """What one fixing of an edge may be pressed aside by."""
    for joint in unit.joints:
        if joint.second == panel.part.ref and joint.at == edge.at and joint.fixings:
            return _aside(unit, panel.part, joint, joint.fixings[0])
    return None


def _aside(unit: Unit, back: Part, joint: Joint, fixing: Fixing) -> Bears | None:
    first = unit.part(joint.first)
    # From behind they go into the rear edge of a panel, whatever lies on it or is let in.
    holds, under = _into(first, "edge"), _into(back, "face")
    if holds is None or under is None or not fixing.diameter or not fixing.length:
        return None
    deep = fixing.length - back.blank.thickness
    if deep <= 0:
        return None
    main, side = (holds, deep), (under, back.blank.thickness)
    if fixing.name == WOOD_SCREW:
        return screw_aside(fixing.diameter, main, side)
    return pressed_aside(fixing.diameter, fixing.diameter, main, side)


def _into(part: Part, entered: Entered) -> Into | None:
    mechanics = part.blank.stock.mechanics
    if mechanics is None or mechanics.gravity is None:
        return None
    return Into(mechanics.family, mechanics.gravity.value, part.blank.thickness, entered)
