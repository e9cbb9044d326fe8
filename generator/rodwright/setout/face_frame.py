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
    Vector,
    Working,
)
from rodwright.setout.bench import FORWARD, LEFT, Bench, X, Z, meeting
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
        _stile(bench, wish, lines, "Left stile", (lines.inner_left, 0.0, 0.0), Surface.FACE_EDGE),
        _stile(bench, wish, lines, "Right stile", (lines.right, 0.0, 0.0), Surface.BACK_EDGE),
    ]
    rail_refs = []
    for present, name, z, inner in (
        (lines.has_bottom_rail, "Bottom rail", 0.0, Surface.BACK_EDGE),
        (lines.has_top_rail, "Top rail", lines.inner_top, Surface.FACE_EDGE),
    ):
        if present:
            rail_refs.append(_rail(bench, wish, lines, name, z, inner, mid))
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


def _stile(
    bench: Bench,
    wish: FaceFrameSpec,
    lines: FrameLines,
    name: str,
    origin: Vector,
    inner: Surface,
) -> str:
    """A stile's part frame: length upwards, width to the left, show face forward."""
    outer = Surface.BACK_EDGE if inner is Surface.FACE_EDGE else Surface.FACE_EDGE
    workings: list[Working] = []
    if wish.corners == "mitred":
        if lines.has_bottom_rail:
            workings.append(Mitre(Surface.NEAR_END, _MITRE, outer))
        if lines.has_top_rail:
            workings.append(Mitre(Surface.FAR_END, _MITRE, outer))
        start, stop = 0.0, None
    else:
        start = lines.inner_bottom
        stop = lines.inner_top if lines.has_top_rail else None
    if wish.eased:
        workings.append(Easing(Surface.FACE, inner, wish.eased, start, stop))
    part = Part(
        bench.next_ref(Role.STILE),
        name,
        Role.STILE,
        "Face frame",
        _blank(wish, lines, lines.top, lines.stile_width),
        Placement(origin, Z, LEFT),
        tuple(workings),
        withdraw=FORWARD,
    )
    return bench.add(part).ref


def _rail(
    bench: Bench,
    wish: FaceFrameSpec,
    lines: FrameLines,
    name: str,
    z: float,
    inner: Surface,
    mid: list[tuple[float, float]],
) -> str:
    """A rail's part frame: length to the right, width upwards, show face forward."""
    outer = Surface.FACE_EDGE if inner is Surface.BACK_EDGE else Surface.BACK_EDGE
    workings: list[Working] = []
    left, right = lines.left, lines.right
    if wish.corners == "mitred":
        workings += [Mitre(end, _MITRE, outer) for end in (Surface.NEAR_END, Surface.FAR_END)]
    else:
        left, right = lines.inner_left, lines.inner_right
    length = right - left
    if wish.eased:
        edges = [0.0, *(x - left for span in mid for x in span), length]
        for start, stop in zip(edges[::2], edges[1::2], strict=True):
            until = None if stop == length else stop
            workings.append(Easing(Surface.FACE, inner, wish.eased, start, until))
    part = Part(
        bench.next_ref(Role.RAIL),
        name,
        Role.RAIL,
        "Face frame",
        _blank(wish, lines, length, lines.rail_width),
        Placement((left, 0.0, z), X, Z),
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
