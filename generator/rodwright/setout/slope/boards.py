"""What is laid in along a slope: the sloping board, its lipping, and the frame's sloping rail."""

from __future__ import annotations

import math

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.geometry.halfspaces import Plane, patch, turned, vertices
from rodwright.geometry.spacing import count_along
from rodwright.problems import Problem, ProblemsError
from rodwright.setout.bench import Bench
from rodwright.setout.carcass.back import pins_along
from rodwright.setout.carcass.box import BOTH_FACES, blank
from rodwright.setout.edges.lipping import strip_blank
from rodwright.setout.fixings import screws_through
from rodwright.setout.frame.fixing import carcass_joint, member_joint
from rodwright.setout.recut import Workpiece
from rodwright.setout.rod.lines import Rod
from rodwright.setout.rod.slope_lines import SlopeLines, height_at
from rodwright.setout.setting import Setting
from rodwright.setout.slope.clipping import cut_back, planes_of
from rodwright.trade.screws import SPACING
from rodwright.unit import (
    FACE_FRAME,
    PANELS,
    Blank,
    Easing,
    Groove,
    JointKind,
    Part,
    Placement,
    Rebate,
    Role,
    Surface,
)
from rodwright.unit.directions import FORWARD, LEFT, X, Y, Z

_SCREWED = tuple(role for role in PANELS if role is not Role.BOTTOM)


def lay_slope(setting: Setting) -> None:
    """Lay what follows the slope on the bench; everything else there is cut to it already."""
    rod, bench, lines = setting.rod, setting.bench, setting.slope
    assert lines is not None
    board = _board(rod, lines, bench) if rod.inside.has_top else None
    if board is not None:
        if rod.back is not None and rod.back.reach:
            _let_back_in(rod, lines, board, bench)
        _join_board(rod, board, bench)
        if rod.front.behind_lipping("top"):
            _lip(rod, lines, board, bench)
    if lines.frame_inner is not None and lines.frame_inner != lines.frame_outer:
        _rail(setting, lines)


def _board(rod: Rod, lines: SlopeLines, bench: Bench) -> Part:
    """The sloping board, its underside in the inner plane.

    Its ends (or edges) are plumb where the carcass ends, and level with the top's upper face.
    """
    front, depth, width, t = (
        rod.front.behind_lipping("top"),
        rod.outside.depth,
        rod.outside.width,
        rod.thickness,
    )
    shows = BOTH_FACES if rod.opening is None else (Surface.REVERSE,)
    past = 2 * t * (1 + lines.rise)
    reach = (width if lines.sideways else depth - front) + 2 * past
    along = reach * math.hypot(1.0, lines.rise)
    up = lines.inner[1]
    if lines.sideways:
        at = (-past, front, height_at(lines.inner, -past, front))
        placement = Placement(at, (up[2], 0.0, -up[0]), Y)
        body = blank(along, depth - front, rod.stock, shows)
    else:
        at = (0.0, front - past, height_at(lines.inner, 0.0, front - past))
        placement = Placement(at, X, (0.0, up[2], -up[1]))
        body = blank(width, along, rod.stock, shows)
    raw = Part(
        bench.next_ref(Role.TOP), "Sloping top", Role.TOP, "Carcass", body, placement, withdraw=up
    )
    ends: list[Plane] = [((0.0, 0.0, rod.outside.height), Z)]
    if lines.sideways:
        ends += [((0.0, 0.0, 0.0), LEFT), ((width, 0.0, 0.0), X)]
    else:
        ends += [((0.0, front, 0.0), FORWARD), ((0.0, depth, 0.0), Y)]
    return _lay(bench, raw, ends)


def _lay(bench: Bench, raw: Part, ends: list[Plane]) -> Part:
    left = cut_back(Workpiece(raw), ends)
    if left is None:
        raise ProblemsError(
            [
                Problem(
                    f"nothing is left of {raw.name.lower()} {raw.ref} along the slope",
                    "Make the slope begin farther in, or what follows it wider.",
                    ("slope",),
                )
            ]
        )
    part = bench.add(left.part)
    for working in left.workings:
        bench.work(part.ref, working)
    return part


def _let_back_in(rod: Rod, lines: SlopeLines, board: Part, bench: Bench) -> None:
    """Rebate or plough the board for a back that falls with it, as far as the back reaches."""
    back = rod.back
    assert back is not None
    panels = bench.refs_of(Role.BACK)
    if not lines.sideways or not panels:
        return
    at, (x, y, z) = lines.inner
    into: Plane = (at, (-x, -y, -z))
    inside = [
        board.placement.to_part(corner)[0]
        for ref in panels
        for corner in vertices([*planes_of(bench.workpiece(ref)), into])
    ]
    start = max(0.0, min(inside) - back.clearance)
    far = max(inside) + back.clearance
    stop = None if far > board.blank.length - TOUCH else far
    near = back.front - board.placement.origin[1]
    thick = back.rear - back.front
    if back.rear > rod.outside.depth - TOUCH:
        bench.work(
            board.ref,
            Rebate(Surface.REVERSE, Surface.BACK_EDGE, thick, back.reach, start, stop, "back"),
        )
    else:
        bench.work(board.ref, Groove(Surface.REVERSE, near, thick, back.reach, start, stop, "back"))


def _touching(bench: Bench, part: Part) -> list[tuple[str, Vector, float]]:
    """The parts that one meets: their refs, the middle of the meeting and its greatest extent."""
    own = planes_of(bench.workpiece(part.ref))
    box = part.bounds()
    found = []
    for ref, other in bench.parts.items():
        near = other.bounds()
        if ref == part.ref or near.penetration(box) < -TOUCH:
            continue
        shared = vertices([*own, *planes_of(bench.workpiece(ref))])
        middle = patch(shared)
        if middle is not None:
            found.append((ref, middle, max(Box.of_points(shared).size)))
    return found


def _join_board(rod: Rod, board: Part, bench: Bench) -> None:
    """Screw the board to what it lies on; frame and back meet it as they meet the level top."""
    let_in = any(isinstance(each, Rebate) for each in bench.workings_of(board.ref))
    grooved = any(isinstance(each, Groove) for each in bench.workings_of(board.ref))
    loose = bench.resting()
    for ref, at, extent in _touching(bench, board):
        role = bench.parts[ref].role
        if role in _SCREWED and ref not in loose:
            count = count_along(extent, 0.0, SPACING)
            held = bench.parts[ref].blank.stock.grip
            screws = screws_through(bench.sizes, rod.thickness, 2 * rod.thickness, count, held)
            bench.join(JointKind.SCREWED, board.ref, ref, at, screws)
        elif role is Role.BACK:
            kind = JointKind.REBATE if let_in else JointKind.GROOVE if grooved else JointKind.BUTT
            fixed = let_in and bench.parts[ref].blank.stock.kind == "sheet"
            pins = pins_along(bench, ref, extent, _ledge(rod, bench, board)) if fixed else None
            bench.join(kind, board.ref, ref, at, *([pins] if pins else []))
        elif role in FACE_FRAME:
            bench.join(JointKind.BUTT, board.ref, ref, at)


def _ledge(rod: Rod, bench: Bench, board: Part) -> float:
    """How wide (mm) the strip of the board's rebate is on which the back lies."""
    assert rod.back is not None
    rebates = [each for each in bench.workings_of(board.ref) if isinstance(each, Rebate)]
    deep = min(each.depth if each.surface.axis == 2 else each.width for each in rebates)
    return deep - rod.back.clearance


def _lip(rod: Rod, lines: SlopeLines, board: Part, bench: Bench) -> None:
    """A lipping on the front edge of the board."""
    lipping = rod.front.lipping
    assert lipping is not None
    up = lines.inner[1]
    ref = bench.next_ref(Role.LIPPING)
    ends: list[Plane] = [((0.0, 0.0, rod.outside.height), Z)]
    if lines.sideways:
        at, way = board.placement.origin, board.placement.length
        body = strip_blank(lipping, board.blank.length, rod.thickness)
        placement = Placement((at[0], board.placement.origin[1], at[2]), way, up)
        ends += [((0.0, 0.0, 0.0), LEFT), ((rod.outside.width, 0.0, 0.0), X)]
    else:
        corners = vertices(planes_of(bench.workpiece(board.ref)))
        y = min(corner[1] for corner in corners)
        at_edge = [corner[2] for corner in corners if corner[1] < y + TOUCH]
        low = min(at_edge) - lipping.thickness * lines.rise
        high = max(at_edge) + lipping.thickness * lines.rise
        body = strip_blank(lipping, rod.outside.width, high - low)
        placement = Placement((0.0, y, low), X, Z)
        ends += [lines.outer, turned(lines.inner)]
    strip = Part(ref, "Lipping", Role.LIPPING, "Lippings", body, placement, withdraw=FORWARD)
    if cut_back(Workpiece(strip), ends) is None:
        # The board begins behind the level top, whose own lipping is all that shows.
        return
    strip = _lay(bench, strip, ends)
    for other, middle, _ in _touching(bench, strip):
        if other == board.ref:
            bench.join(JointKind.EDGE_GLUED, board.ref, strip.ref, middle)
            bench.mark_lipped(board.ref, "front")


def _rail(setting: Setting, lines: SlopeLines) -> None:
    """The frame's sloping rail, between the frame's outer and inner planes.

    Its ends are plumb where the frame ends, and level with the top rail's upper edge.  Where
    other members butt against it, the easing stops.
    """
    rod, bench = setting.rod, setting.bench
    frame, wish, inner = rod.front.frame, setting.spec.face_frame, lines.frame_inner
    assert frame is not None and wish is not None and inner is not None
    past = 2 * frame.rail_width * (1 + lines.rise)
    x = frame.left - past
    up = inner[1]
    length = (frame.right - frame.left + 2 * past) * math.hypot(1.0, lines.rise)
    grain = frame.stock.lengthwise
    body = Blank(
        length, frame.rail_width, frame.thickness, frame.stock, grain, trim_length=wish.trim
    )
    placement = Placement((x, 0.0, height_at(inner, x, 0.0)), (up[2], 0.0, -up[0]), up)
    raw = Part(
        bench.next_ref(Role.RAIL),
        "Sloping rail",
        Role.RAIL,
        "Face frame",
        body,
        placement,
        withdraw=FORWARD,
    )
    ends: list[Plane] = [
        ((0.0, 0.0, frame.top), Z),
        ((frame.left, 0.0, 0.0), LEFT),
        ((frame.right, 0.0, 0.0), X),
    ]
    rail = _lay(bench, raw, ends)
    met = []
    loose = bench.resting()
    for ref, at, extent in _touching(bench, rail):
        role = bench.parts[ref].role
        if role in FACE_FRAME:
            held = member_joint(wish, bench.sizes, frame.rail_width, frame.thickness, False)
            kind, fixings = held or (JointKind.BUTT, ())
            bench.join(kind, rail.ref, ref, at, *fixings)
        elif role in _SCREWED and ref not in loose:
            kind, fixings = carcass_joint(
                wish,
                bench.sizes,
                extent,
                rod.thickness,
                frame.thickness,
                rod.outside.depth,
                bench.parts[ref].blank.stock.grip,
            )
            bench.join(kind, rail.ref, ref, at, *fixings)
        elif role in (*_SCREWED, Role.BACK) or (
            role is Role.LIPPING and bench.bounds(ref).low[1] < -TOUCH
        ):
            bench.join(JointKind.BUTT, rail.ref, ref, at)
        if role in FACE_FRAME:
            shared = _corners_met(bench, rail, ref)
            met.append((min(shared), max(shared)))
    if wish.eased:
        for start, stop in _free(met, rail.blank.length):
            end = None if stop > rail.blank.length - TOUCH else stop
            bench.work(rail.ref, Easing(Surface.FACE, Surface.FACE_EDGE, wish.eased, start, end))


def _corners_met(bench: Bench, rail: Part, ref: str) -> list[float]:
    """Where along a rail another part meets it."""
    both = [
        *planes_of(bench.workpiece(rail.ref)),
        *planes_of(bench.workpiece(ref)),
    ]
    return [rail.placement.to_part(corner)[0] for corner in vertices(both)]


def _free(met: list[tuple[float, float]], length: float) -> list[tuple[float, float]]:
    """The stretches of a rail's inner edge between the members that butt against it."""
    found = [
        (stop, start)
        for (_, stop), (start, _) in zip(sorted(met), sorted(met)[1:], strict=False)
        if start - stop > TOUCH
    ]
    return [(max(0.0, a), min(length, b)) for a, b in found]
