"""How far a carcass sways under a push: what braces it, and what would.

Millimetres, newtons.  Sideways the carcass, its face frame and its back stand side by side as
springs, less what stands on it and leans with it; front to back its sides are panels.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from rodwright.amounts import format_weight
from rodwright.strength import bracing
from rodwright.strength.back_fixings import back_fixings
from rodwright.strength.backs import Panel, panels
from rodwright.strength.bracing import Racking
from rodwright.strength.glued_in import LOW_SHEAR
from rodwright.strength.lacking import lacking
from rodwright.strength.legs import legs_sway
from rodwright.strength.paths import GRAVITY, Paths, paths
from rodwright.strength.racking_remedies import (
    at_wall,
    flatter_back,
    remedies,
    shorter_legs,
)
from rodwright.strength.results import Group, Input, Result
from rodwright.strength.side_shear import side_shear
from rodwright.strength.skeletons import carcass_skeleton, frame_skeleton, stiffness
from rodwright.strength.told_support import said
from rodwright.strength.turning import turning_of
from rodwright.trade.sources import Source
from rodwright.unit import PANELS, Joint, Role, Unit

PUSH = 100.0
"""A push at the top, N: 10 kg, as one hand gives it (common practice, no source)."""
PUSH_SOURCE = Source("a push with one hand, 10 kg: common practice, no source")
OUT_OF_PLUMB = 1 / 200
"""Of all that stands in it, what pushes sideways because nothing stands quite plumb."""
PLUMB_SOURCE = Source("EN 1993-1-1:2005, 5.3.2: 1/200 out of plumb", seen=False)
SWAY_LIMIT = 200.0
"""A carcass may sway by its height over this."""
SWAY_SOURCE = Source("common practice, no source: height over 200")
SIDEWAYS = "sway sideways under a push at the top"
FRONT_TO_BACK = "sway from front to back under a push at the top"
BUCKLES = "shear stress in the back under that push"
_FORMULA = "d = (F + Kb p)/(Kf + Kb - W/h), F = P + W/200"


def racking(unit: Unit) -> Iterator[Result]:
    """How far a unit that stands sways, sideways and from front to back; nothing of what hangs.

    Raises:
        ValueError: the workings of a part leave nothing of it.
    """
    sides = [part for part in unit.parts if part.role is Role.SIDE]
    if unit.hung or len(sides) < 2:
        return
    unknown = _unknown(unit)
    if unknown:
        yield _lacking(unit, unknown)
        return
    down = paths(unit)
    found = measured(unit, down)
    yield _sideways(unit, found)
    yield from _buckling(unit, found)
    if unit.opening is None:
        yield _front_to_back(unit, found)


def fixed_to_wall(unit: Unit) -> bool:
    """Whether the unit is built in or fixed to a wall that holds, which braces it."""
    return unit.opening is not None or unit.loading.wall in {"masonry", "studs"}


def folds_empty(unit: Unit) -> bool:
    """Whether a unit folds by nothing but its own weight."""
    empty = replace(unit, loading=replace(unit.loading, loads=()))
    return replace(measured(empty, paths(empty)), push=0.0).sway is None


def measured(unit: Unit, down: Paths) -> Racking:
    """What stands against a push sideways on a unit."""
    height = max(part.bounds().high[2] for part in unit.parts if part.role in PANELS)
    low = min(part.bounds().low[2] for part in unit.parts)
    load = moment = 0.0
    for ref, forces in down.taken.items():
        for each in forces:
            if each.of == ref:
                load += each.force
                moment += each.force * (each.at[2] - low)
    backs = [each for each in panels(unit) if each.held and each.modulus]
    push = PUSH + OUT_OF_PLUMB * load
    return Racking(
        stiffness(carcass_skeleton(unit)),
        stiffness(frame_skeleton(unit)),
        sum(1 / each.give for each in backs),
        max((each.play for each in backs), default=0.0),
        moment / (height - low),
        height - low,
        push,
        legs_sway(unit, push, 1) or 0.0,
    )


def _unknown(unit: Unit) -> str:
    """What isn't known of the stock of the carcass; empty if all is."""
    for part in unit.parts:
        if part.role in PANELS:
            told = lacking(part.blank.stock, "along")
            if told:
                return told
    for part in unit.parts:
        if part.role is Role.BACK:
            told = lacking(part.blank.stock, "panel_shear")
            if told:
                return told
    return ""


def _lacking(unit: Unit, told: str) -> Result:
    return Result(
        Group.WHOLE,
        "carcass",
        _refs(unit),
        SIDEWAYS,
        None,
        None,
        "mm",
        _FORMULA,
        bracing.LEANING,
        lacking=told,
    )


def _refs(unit: Unit) -> tuple[str, ...]:
    return tuple(part.ref for part in unit.parts if part.role is Role.SIDE)


def _sideways(unit: Unit, found: Racking) -> Result:
    limit = found.height / SWAY_LIMIT
    held = fixed_to_wall(unit)
    result = Result(
        Group.WHOLE,
        "carcass",
        _refs(unit),
        SIDEWAYS,
        found.figure,
        None if held else limit,
        "mm",
        _FORMULA,
        bracing.LEANING,
        inputs=tuple(_inputs(unit, found)),
        limit_source=None if held else SWAY_SOURCE,
        notes=tuple(_notes(unit, found)),
    )
    if result.holds and found.sway is not None:
        return result
    return replace(result, remedies=remedies(unit, found, limit))


def _inputs(unit: Unit, found: Racking) -> Iterator[Input]:
    yield Input("P", "push at the top", PUSH, "N", PUSH_SOURCE)
    yield Input("F", "push, with 1/200 of what stands in it", found.push, "N", PLUMB_SOURCE)
    yield Input("h", "height", found.height, "mm")
    yield Input("W", "all that stands in it, as if at its top", found.load / GRAVITY, "kg")
    yield Input(
        "Kf",
        "stiffness of carcass and face frame",
        found.frame + found.face,
        "N/mm",
        Source("plane frames with joints as springs: direct stiffness method"),
    )
    yield Input("Kb", "stiffness of the back", found.back, "N/mm", bracing.SHEAR_FLOW)
    yield Input("p", "play of the back in its grooves", found.play, "mm", bracing.PLAY)
    for each in panels(unit)[:1]:
        shear = each.part.blank.stock.mechanics
        if shear is not None and shear.panel_shear is not None:
            yield Input(
                "G",
                "shear modulus of the back",
                shear.panel_shear.value,
                "N/mm2",
                shear.panel_shear.source,
            )
        slip = next((edge.slip for edge in each.edges if edge.slip), None)
        if slip is not None:
            yield Input("k", "slip of a screw or pin", slip, "N/mm", bracing.KSER)


def _notes(unit: Unit, found: Racking) -> Iterator[str]:
    yield (
        "joints turn as estimated, taken low: good for a factor of two, glue between faces is not "
        "counted"
    )
    if any(_joint_low(unit, joint) for joint in unit.joints):
        yield (
            "its dowels, tenons or biscuits stand in a material whose shear modulus isn't known: a "
            "low estimate of it is used"
        )
    if found.play:
        yield (
            "the back is taken to lie loose in its grooves; glued in all round it has no play: "
            f"{said(unit, round(replace(found, play=0.0).figure, 1))}"
        )
    if any(not each.held for each in panels(unit)):
        yield "a panel of the back that isn't held at all four edges isn't counted"
    if found.legs:
        yield (
            "legs are held by their screws or dowels alone: that weight presses their heads to the "
            "bottom isn't counted on, as it is little while the unit is empty"
        )
    if fixed_to_wall(unit):
        yield (
            f"fixed to the wall it sways no further than the wall: its fixings near the top carry "
            f"{format_weight(found.push / GRAVITY, unit.display_unit, 0)} sideways together"
        )


def _joint_low(unit: Unit, joint: Joint) -> bool:
    panels_of_it = all(unit.part(ref).role in PANELS for ref in (joint.first, joint.second))
    return panels_of_it and turning_of(unit, joint).source == LOW_SHEAR


def _buckling(unit: Unit, found: Racking) -> Iterator[Result]:
    """Whether the back stays flat in shear: all panels share the push."""
    backs: list[Panel] = [each for each in panels(unit) if each.held and each.modulus]
    if not backs or found.sway is None:
        return
    width = sum(each.width for each in backs)
    each = min(backs, key=_critical)
    share = max(0.0, 1 - (found.frame + found.face) * found.figure / found.push)
    stress = share * found.push / (width * each.thickness)
    limit = _critical(each)
    yield from back_fixings(unit, tuple(backs), share * found.push)
    yield Result(
        Group.WHOLE,
        "back",
        (each.part.ref,),
        BUCKLES,
        stress,
        limit,
        "N/mm2",
        "tau = F/(B t) <= (5.34 + 4 (b/a)^2) pi^2 E/(12 (1 - nu^2)) (t/b)^2",
        bracing.SHEAR_FLOW,
        inputs=(
            Input("F", "what the back takes of the push", share * found.push, "N"),
            Input("B", "width of the back", width, "mm"),
            Input("t", "its thickness", each.thickness, "mm"),
        ),
        limit_source=bracing.BUCKLING,
        notes=("the panel counts as held at its edges alone, whatever it touches between them",),
        remedies=tuple(flatter_back(unit, each, stress, limit)) if stress > limit else (),
    )


def _critical(panel: Panel) -> float:
    """The shear stress at which a panel buckles, by the softer of its two moduli."""
    mechanics = panel.part.blank.stock.mechanics
    if mechanics is None:
        return 0.0
    moduli = [each.value for each in (mechanics.along, mechanics.across) if each is not None]
    return bracing.buckling_stress(panel.width, panel.height, panel.thickness, min(moduli))


def _front_to_back(unit: Unit, found: Racking) -> Result:
    """The sides as panels in shear, and the legs under them."""
    give, estimated = side_shear(unit)
    legs = legs_sway(unit, found.push, 0)
    bare = found.push / give if give else found.height
    sway = min(bare + (legs or 0.0), found.height)
    limit = found.height / SWAY_LIMIT
    return Result(
        Group.WHOLE,
        "carcass",
        _refs(unit),
        FRONT_TO_BACK,
        sway,
        limit,
        "mm",
        "d = F h/(sum G t B)" + (" + F/n (a^3/(3 E I) + a^2/S) of the legs" if legs else ""),
        bracing.SHEAR_FLOW,
        inputs=(
            Input("F", "push at the top", found.push, "N", PUSH_SOURCE),
            Input("sum G t B/h", "stiffness of the sides in shear", give, "N/mm", estimated),
        ),
        limit_source=SWAY_SOURCE,
        notes=(
            "whether it tips over is another question",
            *((str(estimated),) if estimated else ()),
        ),
        remedies=(*shorter_legs(unit, found, bare, limit), at_wall(unit, found.push))
        if sway > limit
        else (),
    )
