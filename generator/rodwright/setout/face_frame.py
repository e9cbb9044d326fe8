"""The face frame: stiles and rails, mitred or butted, with eased inner edges."""

from __future__ import annotations

from rodwright.parts import (
    Blank,
    Easing,
    Grain,
    JointKind,
    Mitre,
    Part,
    Placement,
    Role,
    Surface,
    Working,
)
from rodwright.setout.bench import DOWN, FORWARD, LEFT, Bench, X, Z, meeting
from rodwright.setout.carcass import Carcass
from rodwright.setout.interior import Interior
from rodwright.setout.lines import FrameLines
from rodwright.setout.rod import Rod
from rodwright.spec.models import FaceFrameSpec

_MITRE = 45.0


def set_out_face_frame(
    wish: FaceFrameSpec, rod: Rod, carcass: Carcass, interior: Interior, bench: Bench
) -> None:
    """Lay stiles and rails on the bench.

    The frame is square, so each mitre is half of a right angle.  Lengths are over the long
    points.  Where frame members butt, the easing stops at the joint.
    """
    lines = rod.frame
    assert lines is not None
    mitred = wish.corners == "mitred"
    mid = _mid_stile_spans(wish, lines, rod, interior)
    stile_refs = [
        _stile(bench, wish, lines, "Left stile"),
        _stile(bench, wish, lines, "Right stile"),
    ]
    rail_refs = []
    if lines.has_bottom_rail:
        rail_refs.append(_rail(bench, wish, lines, "Bottom rail", mid))
    if lines.has_top_rail:
        rail_refs.append(_rail(bench, wish, lines, "Top rail", mid))
    for rail in rail_refs:
        for stile in stile_refs:
            _meet(bench, JointKind.MITRE if mitred else JointKind.BUTT, stile, rail)
    for left, right in mid:
        rail_refs_met = tuple(rail_refs)
        stile = _mid_stile(bench, wish, lines, left, right)
        for rail in rail_refs_met:
            _meet(bench, JointKind.BUTT, rail, stile)
        stile_refs.append(stile)
    behind = [carcass.left.ref, carcass.right.ref]
    behind += [level.ref for level in (carcass.bottom, carcass.top) if level]
    behind += [upright.ref for upright, _ in interior.dividers]
    for ref in behind:
        for member in (*stile_refs, *rail_refs):
            _meet(bench, JointKind.BUTT, ref, member)


def _blank(wish: FaceFrameSpec, lines: FrameLines, length: float, width: float) -> Blank:
    return Blank(
        length,
        width,
        lines.thickness,
        lines.stock,
        Grain.LENGTHWISE if lines.stock.grain is not Grain.NONE else Grain.NONE,
        trim_length=wish.trim,
    )


def _stile(bench: Bench, wish: FaceFrameSpec, lines: FrameLines, name: str) -> str:
    """A stile, its inner edge the face edge and its face forward.

    The right one is the left one turned end for end, so that in an even frame they are the
    same piece.
    """
    turned = name == "Right stile"
    below, above = lines.has_bottom_rail, lines.has_top_rail
    gaps = (lines.inner_bottom, lines.top - lines.inner_top)
    near, far = (above, below) if turned else (below, above)
    near_gap, far_gap = gaps[::-1] if turned else gaps
    workings: list[Working] = []
    start, stop = 0.0, None
    if wish.corners == "mitred":
        ends = [end for end, cut in ((Surface.NEAR_END, near), (Surface.FAR_END, far)) if cut]
        workings += [Mitre(end, _MITRE, Surface.BACK_EDGE) for end in ends]
    else:
        start, stop = near_gap, (lines.top - far_gap if far_gap else None)
    if wish.eased:
        workings.append(Easing(Surface.FACE, Surface.FACE_EDGE, wish.eased, start, stop))
    placement = Placement((lines.inner_left, 0.0, 0.0), Z, LEFT)
    if turned:
        placement = Placement((lines.inner_right, 0.0, lines.top), DOWN, X)
    part = Part(
        bench.next_ref(Role.STILE),
        name,
        Role.STILE,
        "Face frame",
        _blank(wish, lines, lines.top, lines.stile_width),
        placement,
        tuple(workings),
        withdraw=FORWARD,
    )
    return bench.add(part).ref


def _rail(
    bench: Bench, wish: FaceFrameSpec, lines: FrameLines, name: str, mid: list[tuple[float, float]]
) -> str:
    """A rail, its inner edge the back edge and its face forward.

    The top one is the bottom one turned end for end; where a mid stile butts against it,
    its easing stops.
    """
    turned = name == "Top rail"
    workings: list[Working] = []
    left, right = lines.left, lines.right
    if wish.corners == "mitred":
        ends = (Surface.NEAR_END, Surface.FAR_END)
        workings += [Mitre(end, _MITRE, Surface.FACE_EDGE) for end in ends]
    else:
        left, right = lines.inner_left, lines.inner_right
    length = right - left
    if wish.eased:
        met = [x for span in mid for x in span]
        along = sorted(right - x if turned else x - left for x in met)
        edges = [0.0, *along, length]
        for start, stop in zip(edges[::2], edges[1::2], strict=True):
            until = None if stop == length else stop
            workings.append(Easing(Surface.FACE, Surface.BACK_EDGE, wish.eased, start, until))
    placement = Placement((left, 0.0, 0.0), X, Z)
    if turned:
        placement = Placement((right, 0.0, lines.top), LEFT, DOWN)
    part = Part(
        bench.next_ref(Role.RAIL),
        name,
        Role.RAIL,
        "Face frame",
        _blank(wish, lines, length, lines.rail_width),
        placement,
        tuple(workings),
        withdraw=FORWARD,
    )
    return bench.add(part).ref


def _mid_stile(
    bench: Bench, wish: FaceFrameSpec, lines: FrameLines, left: float, right: float
) -> str:
    eased = [Surface.FACE_EDGE, Surface.BACK_EDGE] if wish.eased else []
    part = Part(
        bench.next_ref(Role.STILE),
        "Mid stile",
        Role.STILE,
        "Face frame",
        _blank(wish, lines, lines.inner_top - lines.inner_bottom, right - left),
        Placement((right, 0.0, lines.inner_bottom), Z, LEFT),
        tuple(Easing(Surface.FACE, edge, wish.eased) for edge in eased),
        withdraw=FORWARD,
    )
    return bench.add(part).ref


def _mid_stile_spans(
    wish: FaceFrameSpec, lines: FrameLines, rod: Rod, interior: Interior
) -> list[tuple[float, float]]:
    """Left and right edges (x) of the mid stiles, one before each full-height divider."""
    if wish.mid_stiles is None:
        return []
    spans = []
    for upright, space in interior.dividers:
        if (space.low, space.high) == (rod.floor, rod.ceiling):
            middle = (upright.left + upright.right) / 2
            spans.append((middle - wish.mid_stiles / 2, middle + wish.mid_stiles / 2))
    return [
        span for span in sorted(spans) if span[0] > lines.inner_left and span[1] < lines.inner_right
    ]


def _meet(bench: Bench, kind: JointKind, first: str, second: str) -> None:
    at = meeting(bench.parts[first].bounds(), bench.parts[second].bounds())
    if at is not None:
        bench.join(kind, first, second, at)
