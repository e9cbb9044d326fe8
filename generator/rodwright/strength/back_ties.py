"""What ties a back to the case that hangs by it: screws drawn out at the top, and pressed aside.

Newtons, millimetres.
"""

from __future__ import annotations

from collections.abc import Iterator

from rodwright.strength.lacking import lacking
from rodwright.strength.results import Group, Input, Remedy, Result
from rodwright.trade.fastenings import Bears, Entered, Into, screw_aside, screw_drawn
from rodwright.trade.screws import BACK_SPACING, WOOD_SCREW
from rodwright.trade.sources import Source
from rodwright.unit import CASE, Fixing, Joint, JointKind, Part, Role, Unit

TIED = "screws that tie the back to the case: share of what they may carry"
_BOTH = Source("pull and weight added, as shares of what each may be: common practice, no source")


def ties(unit: Unit, back: Part, pull: float, weight: float) -> Iterator[Result]:
    """How far the screws are used that hold a back in its rebates, or on: its top row is drawn by
    ``pull``, and all carry ``weight`` (N).  Nothing of one that is glued into grooves."""
    joints = [
        joint
        for joint in unit.joints
        if joint.second == back.ref and unit.part(joint.first).role in CASE
    ]
    screwed = [
        (joint, fixing)
        for joint in joints
        for fixing in joint.fixings
        if fixing.name == WOOD_SCREW and fixing.diameter and fixing.length
    ]
    if not screwed or all(joint.kind is JointKind.GROOVE for joint in joints):
        return
    told = lacking(back.blank.stock, "gravity") or lacking(
        unit.part(screwed[0][0].first).blank.stock, "gravity"
    )
    if told:
        yield _result(back, None, lacking=told)
        return
    top = [each for each in screwed if unit.part(each[0].first).role is Role.TOP] or screwed
    drawn, aside = _bears(unit, back, top[0])
    count, in_top = (sum(fixing.count for _, fixing in some) for some in (screwed, top))

    figure = pull / (in_top * drawn.allowed) + weight / (count * aside.allowed)
    yield _result(
        back,
        figure,
        inputs=(
            Input("T", "pull at the top", pull, "N"),
            Input("W", "weight and all that is in it", weight, "N"),
            Input("n", "screws in the top", in_top, ""),
            Input("N", "screws in all", count, ""),
            Input("R", "what one may be drawn by", drawn.allowed, "N", drawn.source),
            Input("Q", "what one may carry aside", aside.allowed, "N", aside.source),
        ),
        remedies=tuple(
            Remedy(
                f"screws {BACK_SPACING / times:.0f} mm apart all round instead of {BACK_SPACING:g}",
                figure / times,
                figure <= times,
            )
            for times in (2, 3)
        )
        if figure > 1
        else (),
    )


def _result(
    back: Part,
    figure: float | None,
    inputs: tuple[Input, ...] = (),
    lacking: str = "",
    remedies: tuple[Remedy, ...] = (),
) -> Result:
    return Result(
        Group.HANGING,
        "back",
        (back.ref,),
        TIED,
        figure,
        1.0,
        "",
        "T/(n R) + W/(N Q)",
        _BOTH,
        inputs,
        limit_source=_BOTH,
        lacking=lacking,
        remedies=remedies,
    )


def _bears(unit: Unit, back: Part, screwed: tuple[Joint, Fixing]) -> tuple[Bears, Bears]:
    """What one screw through the back into the edge of the case bears."""
    joint, fixing = screwed
    diameter, length = fixing.diameter or 0.0, fixing.length or 0.0
    thick = back.blank.thickness
    case, panel = _into(unit.part(joint.first), "edge"), _into(back, "face")
    deep = max(length - thick, 1.0)
    return screw_drawn(case, diameter, deep), screw_aside(diameter, (case, deep), (panel, thick))


def _into(part: Part, entered: Entered) -> Into:
    mechanics = part.blank.stock.mechanics
    if mechanics is None or mechanics.gravity is None:
        raise ValueError(f"nothing is known of how {part.ref} holds screws")
    return Into(mechanics.family, mechanics.gravity.value, part.blank.thickness, entered)
