"""The face frame: stiles and rails, mitred or butted, with eased inner edges."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import combinations

from rodwright.geometry import TOUCH, Box
from rodwright.setout.bench import Bench
from rodwright.setout.frame.fixing import carcass_joint, member_joint
from rodwright.setout.inside import Edge, Member
from rodwright.setout.rod.front_and_back import FrameLines
from rodwright.setout.setting import Setting
from rodwright.unit import (
    Blank,
    Easing,
    Fixing,
    JointKind,
    Mitre,
    Part,
    Placement,
    Role,
    Surface,
    Working,
)
from rodwright.unit.directions import DOWN, FORWARD, LEFT, X, Z
from rodwright.wishes.models import FaceFrameSpec

_MITRE = 45.0
_OPPOSITE: dict[Edge, Edge] = {"left": "right", "right": "left", "low": "high", "high": "low"}
_NAMES: dict[Edge, str] = {
    "left": "Left stile", "right": "Right stile", "low": "Bottom rail", "high": "Top rail",
}  # fmt: skip


def set_out_face_frame(setting: Setting) -> None:
    """Lay stiles and rails on the bench, joined to each other and fixed to the carcass.

    The frame is square, so each mitre is half of a right angle.  Lengths are over the long
    points.  Where frame members butt, the easing stops at the joint.  A joint that is wished
    and has no room is noted.
    """
    rod, bench, notes, carcass = setting.rod, setting.bench, setting.notes, setting.carcass
    wish, lines = setting.spec.face_frame, rod.front.frame
    assert wish is not None and lines is not None
    mitred = wish.corners == "mitred"
    outlines = _outlines(wish, lines, notes.members)
    laid = {_member(bench, wish, lines, outline, outlines): outline for outline in outlines}
    notes.frame.update(laid)
    for (ref, one), (other_ref, other) in combinations(laid.items(), 2):
        corner = mitred and one.at is not None and other.at is not None
        _join(setting, wish, (ref, other_ref), corner)
    behind = [carcass.left.ref, carcass.right.ref]
    behind += [level.ref for level in (carcass.bottom, carcass.top) if level]
    behind += [upright.ref for upright, _ in notes.dividers]
    behind += [ref for edge in notes.edges for ref in edge.refs]
    let_in = max(
        rod.joinery.reach(joint, rod.thickness)
        for joint in (rod.joinery.corners, rod.joinery.usual)
    )
    loose = bench.resting()
    loose |= {joint.second for joint in bench.joints if joint.first in loose}
    for ref in behind:
        for member, outline in laid.items():
            if not (mitred and _missed(bench.bounds(ref), outline, lines)):
                _fix(bench, None if ref in loose else wish, ref, member, let_in)


def _missed(panel: Box, member: Member, lines: FrameLines) -> bool:
    """Whether a panel lies behind what the mitres cut off an outer stile that reaches past it."""
    if member.at not in ("left", "right"):
        return False
    out = panel.low[0] - lines.left if member.at == "left" else lines.right - panel.high[0]
    # The mitre rises as fast as it goes in.
    below = lines.has_bottom_rail and panel.high[2] - lines.bottom < out - TOUCH
    above = lines.has_top_rail and lines.top - panel.low[2] < out - TOUCH
    return below or above


def _outlines(wish: FaceFrameSpec, lines: FrameLines, members: Sequence[Member]) -> list[Member]:
    """Every member's outline; over the long points where corners are mitred."""
    butted = wish.corners == "butted"
    left, right = (lines.inner_left, lines.inner_right) if butted else (lines.left, lines.right)
    bottom, top = lines.bottom, lines.top
    found = [
        Member("stile", lines.left, lines.inner_left, bottom, top, "left"),
        Member("stile", lines.inner_right, lines.right, bottom, top, "right"),
    ]
    if lines.has_bottom_rail:
        found.append(Member("rail", left, right, bottom, lines.inner_bottom, "low"))
    if lines.has_top_rail:
        found.append(Member("rail", left, right, lines.inner_top, top, "high"))
    return [*found, *members]


def _blank(wish: FaceFrameSpec, lines: FrameLines, length: float, width: float) -> Blank:
    return Blank(
        length,
        width,
        lines.thickness,
        lines.stock,
        lines.stock.lengthwise,
        trim_length=wish.trim,
    )


def _member(
    bench: Bench,
    wish: FaceFrameSpec,
    lines: FrameLines,
    outline: Member,
    outlines: list[Member],
) -> str:
    """A stile or rail, its face forward.

    A stile's face edge is its right one, a rail's its lower one.  The right stile and the top
    rail are the left and the bottom one turned end for end, so that in an even frame they are
    the same piece.  Where another member butts against an edge, its easing stops.
    """
    upright, at = outline.upright, outline.at
    turned = at in ("right", "high")
    low, high = (outline.low, outline.high) if upright else (outline.left, outline.right)
    width = outline.right - outline.left if upright else outline.high - outline.low
    workings: list[Working] = []
    if wish.corners == "mitred" and at is not None:
        ends = [Surface.NEAR_END, Surface.FAR_END]
        if upright:
            there = [lines.has_bottom_rail, lines.has_top_rail]
            there = there[::-1] if turned else there
            ends = [end for end, cut in zip(ends, there, strict=True) if cut]
        long = Surface.BACK_EDGE if upright else Surface.FACE_EDGE
        workings += [Mitre(end, _MITRE, long) for end in ends]
    if wish.eased:
        for side in _inner_sides(outline):
            # On a turned piece the sides change places as well as the ends.
            near = (side in ("right", "low")) is not turned
            edge = Surface.FACE_EDGE if near else Surface.BACK_EDGE
            for start, stop in _free(outline, side, outlines):
                if turned:
                    start, stop = low + high - stop, low + high - start
                until = None if stop >= high - TOUCH else stop - low
                workings.append(Easing(Surface.FACE, edge, wish.eased, start - low, until))
    if upright:
        placement = Placement((outline.right, 0.0, outline.low), Z, LEFT)
        if turned:
            placement = Placement((outline.left, 0.0, outline.high), DOWN, X)
    else:
        placement = Placement((outline.left, 0.0, outline.low), X, Z)
        if turned:
            placement = Placement((outline.right, 0.0, outline.high), LEFT, DOWN)
    role = Role.STILE if upright else Role.RAIL
    part = Part(
        bench.next_ref(role),
        f"Mid {outline.kind}" if at is None else _NAMES[at],
        role,
        "Face frame",
        _blank(wish, lines, high - low, width),
        placement,
        tuple(workings),
        withdraw=FORWARD,
    )
    return bench.add(part).ref


def _inner_sides(member: Member) -> tuple[Edge, ...]:
    """The sides of a member that face an opening."""
    if member.at is not None:
        return (_OPPOSITE[member.at],)
    return ("right", "left") if member.upright else ("low", "high")


def _free(outline: Member, side: Edge, outlines: list[Member]) -> list[tuple[float, float]]:
    """The stretches of a member's side at which no other member butts, along the member."""
    upright, at = outline.upright, getattr(outline, side)
    met = sorted(
        (other.low, other.high) if upright else (other.left, other.right)
        for other in outlines
        if other is not outline and abs(getattr(other, _OPPOSITE[side]) - at) < TOUCH
    )
    start, end = (outline.low, outline.high) if upright else (outline.left, outline.right)
    free = []
    for low, high in met:
        if high < start + TOUCH or low > end - TOUCH:
            continue
        if low > start + TOUCH:
            free.append((start, low))
        start = max(start, high)
    if start < end - TOUCH:
        free.append((start, end))
    return free


def _join(setting: Setting, wish: FaceFrameSpec, refs: tuple[str, str], mitred: bool) -> None:
    """Join two members where they meet, if they do."""
    bench = setting.bench
    one, other = (bench.parts[ref] for ref in refs)
    patch = one.bounds().contact(other.bounds())
    if patch is None:
        return
    # Mitred members overlap by a square; the end of a butted one is as long as it is wide.
    width, thickness = (
        max(patch.size[0], patch.size[2]),
        min(one.blank.thickness, other.blank.thickness),
    )
    held = member_joint(wish, bench.sizes, width, thickness, mitred)
    if held is None:
        held = (JointKind.MITRE if mitred else JointKind.BUTT), ()
        if wish.joint is not None:
            say = setting.say
            told = (
                f"members {say(width)} wide and {say(thickness)} thick have no room for "
                f"{wish.joint.replace('_', ' ')} where they {'are mitred' if mitred else 'meet'}"
            )
            remedy = "Leave `joint` out, or make them wider."
            here = setting.at("joint")
            here.problems.add_once(here.where, told, remedy)
    bench.join(held[0], refs[0], refs[1], patch.centre, *held[1])


def _fix(bench: Bench, wish: FaceFrameSpec | None, panel: str, member: str, let_in: float) -> None:
    """Fix a member to the panel behind it, where they meet; without a ``wish`` it is left loose.

    They don't where they overlap by no more than ``let_in`` mm, the depth to which the panel's
    edge may be housed out there.
    """
    one, other = bench.bounds(panel), bench.bounds(member)
    patch = one.contact(other)
    if patch is None:
        return
    narrow, length = sorted((patch.size[0], patch.size[2]))
    if narrow <= let_in:
        return
    kind: JointKind = JointKind.BUTT
    fixings: tuple[Fixing, ...] = ()
    if wish is not None:
        held = bench.parts[panel].blank.stock.grip
        kind, fixings = carcass_joint(
            wish, bench.sizes, length, narrow, other.size[1], one.size[1], held
        )
    bench.join(kind, panel, member, patch.centre, *fixings)
