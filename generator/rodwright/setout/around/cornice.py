"""A cornice round the head of a unit: a front board, and returns mitred to it."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import replace

from rodwright.geometry import TOUCH, Box
from rodwright.geometry.spacing import spread, steps_of
from rodwright.setout.bench import Bench
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.edges.biscuits import edge_biscuits
from rodwright.setout.rod.lines import Rod
from rodwright.setout.rod.walls import gap_over, side_gap
from rodwright.setout.setting import Setting
from rodwright.trade.screws import SCREWABLE, SPACING
from rodwright.unit import FACE_FRAME, FRONTS, JointKind, Mitre, Part, Role, Stock, Surface
from rodwright.unit.directions import FORWARD, LEFT, X, Y, Z
from rodwright.wishes.cornice import CorniceSpec

GROUP = "Cornice"
_MITRE = 45.0
_BISCUIT_ROOM = 60.0
"""A meeting shorter than this (mm) has no room for a biscuit (common practice, no source)."""
_BLOCK, _BLOCK_BEARING, _BLOCK_INSET = 60.0, 30.0, 40.0
"""Length of a block behind a standing cornice, how much of it lies on the top at the least, and
its distance from a corner, mm (common practice, no source)."""


def set_out_cornice(setting: Setting) -> None:
    """Lay the cornice on the bench, fixed to what it touches; what can't be made is noted.

    Without a return it ends with the front, or at the wall on a side that is scribed.
    """
    wish, rod, bench = setting.spec.cornice, setting.rod, setting.bench
    assert wish is not None
    stock = setting.at("stock").stock(wish.stock)
    if stock is None:
        return
    scribed = setting.spec.scribes.edges if setting.spec.scribes else ()
    lines = _Lines(wish, rod, scribed, stock)
    if not _can_be_made(setting, wish, lines, stock):
        return
    t, low, high = lines.thickness, lines.low, rod.outside.overall
    mitres = {
        end: Mitre(surface, _MITRE, Surface.FACE)
        for end, surface in (("left", Surface.NEAR_END), ("right", Surface.FAR_END))
        if end in lines.returns
    }
    front = lay_board(
        bench,
        Board(
            Role.CORNICE,
            "Cornice front",
            GROUP,
            stock,
            workings=tuple(mitres.values()),
            withdraw=FORWARD if lines.lapped else Z,
        ),
        Box((lines.left, lines.front, low), (lines.right, lines.front + t, high)),
        X,
        FORWARD,
    )
    boards = [front.ref]
    for end in lines.returns:
        x = lines.left if end == "left" else lines.right - t
        outward = LEFT if end == "left" else X
        board = lay_board(
            bench,
            Board(
                Role.CORNICE,
                f"Cornice {end} return",
                GROUP,
                stock,
                workings=(Mitre(Surface.NEAR_END, _MITRE, Surface.FACE),),
                withdraw=outward if lines.lapped else Z,
            ),
            Box((x, lines.front, low), (x + t, rod.outside.rear, high)),
            Y,
            outward,
        )
        bench.meet(JointKind.MITRE, front.ref, board.ref)
        boards.append(board.ref)
    for ref in boards:
        if not _fix(setting, ref, lines.lapped) and not lines.lapped:
            _block(bench, bench.parts[ref], stock)


class _Lines:
    """Where the cornice lies; mm, unit frame."""

    def __init__(self, wish: CorniceSpec, rod: Rod, scribed: Collection[str], stock: Stock) -> None:
        returns = wish.returns or ("both" if rod.opening is None else "none")
        self.returns = {"both": ("left", "right"), "none": ()}.get(returns, (returns,))
        self.thickness = stock.thickness if wish.thickness is None else wish.thickness
        self.lapped = wish.place == "lapped"
        self.low = rod.outside.overall - wish.height
        out = self.thickness if self.lapped else wish.projection
        self.front = rod.front.face - out
        self.left, self.right = (
            (rod.front.frame.left, rod.front.frame.right)
            if rod.front.frame
            else (0.0, rod.outside.width)
        )
        gaps = {side: side_gap(rod, self.low, rod.outside.overall, side) for side in scribed}
        self.left = min(self.left, -(gaps.get("left") or 0.0))
        self.right = max(self.right, rod.outside.width + (gaps.get("right") or 0.0))
        if "left" in self.returns:
            self.left = -out
        if "right" in self.returns:
            self.right = rod.outside.width + out


def _can_be_made(setting: Setting, wish: CorniceSpec, lines: _Lines, stock: Stock) -> bool:
    rod, say = setting.rod, setting.say
    before = setting.problems.mark()
    if setting.bench.parts_of(Role.WORKTOP):
        setting.refuse(
            "a unit has a worktop or a cornice on top, not both",
            "Leave one of them out.",
        )
        return False
    if lines.thickness > stock.thickness + TOUCH:
        setting.at("thickness").refuse(
            f"a cornice {say(lines.thickness)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Make it thinner or name thicker stock.",
        )
    if lines.lapped and wish.projection:
        setting.at("projection").refuse(
            "a lapped cornice stands out by its own thickness",
            "Leave `projection` out, or write `place: standing`.",
        )
    if not lines.lapped and wish.rise:
        setting.at("rise").refuse(
            "a standing cornice rises above the carcass by its whole height",
            "Leave `rise` out, or write `place: lapped`.",
        )
    if lines.lapped and wish.rise >= wish.height:
        setting.at("rise").refuse(
            f"with {say(wish.rise)} above the carcass, nothing of a cornice {say(wish.height)} "
            f"high laps it",
            "Make `rise` smaller, or write `place: standing`.",
        )
    if lines.low < rod.outside.foot:
        setting.at("height").refuse(
            f"a cornice {say(wish.height)} high is higher than the carcass's front",
            "Make it lower.",
        )
    if not lines.lapped and wish.projection >= lines.thickness:
        setting.at("projection").refuse(
            f"standing {say(wish.projection)} proud, boards {say(lines.thickness)} thick have "
            f"nothing under them",
            "Make `projection` smaller than the thickness, or write `place: lapped`.",
        )
    if (
        not lines.lapped
        and rod.front.frame is not None
        and rod.front.frame.top > rod.outside.height + TOUCH
    ):
        setting.moved_to(("face_frame", "overhang", "top")).refuse(
            "a face frame can't reach above the carcass where a cornice stands on it",
            "Leave `overhang.top` out, or write `place: lapped`.",
        )
    if lines.returns and rod.front.frame is not None and rod.front.frame.left < -TOUCH:
        setting.at("returns").refuse(
            "beside a face frame that reaches past the sides, returns don't lie against them",
            "Write `returns: none`, or leave `face_frame.overhang.sides` out.",
        )
    _tell_what_is_met(setting, wish, lines)
    return not setting.problems.noted_since(before)


def _tell_what_is_met(setting: Setting, wish: CorniceSpec, lines: _Lines) -> None:
    """Walls, the top of the opening and the fronts: what a cornice runs into."""
    rod, bench, say = setting.rod, setting.bench, setting.say
    for end in lines.returns:
        gap, out = side_gap(rod, lines.low, rod.outside.overall, end), rod.front.face - lines.front
        if gap is not None and out > gap + TOUCH:
            setting.at("returns").refuse(
                f"a return standing {say(out)} out from the {end} side runs into the wall: the gap "
                f"is down to {say(gap)} there",
                "Write `returns: none`, or make `fit.sides` larger.",
            )
    over = gap_over(rod, lines.left, lines.right)
    if over is not None and over < -TOUCH:
        key = "height" if wish.place == "standing" else "rise"
        setting.at(key).refuse(
            f"the cornice runs {say(-over)} into the top of the opening",
            "Make the unit's height (`size.height`) smaller.",
        )
    hidden = Box(
        (lines.left, lines.front, lines.low), (lines.right, rod.front.face, rod.outside.overall)
    )
    for ref in bench.refs_of(*FRONTS):
        if lines.lapped and hidden.contact(bench.bounds(ref)) is not None:
            setting.at("height").refuse(
                f"a cornice that laps {say(wish.height - wish.rise)} of the front runs into "
                f"{bench.parts[ref].name.lower()} {ref}",
                "Make it lower, let it rise more, or put a wider rail or more room over the doors.",
            )
            break


def _between_mitres(part: Part) -> Box:
    """The box (unit frame) of what is left of a board between its mitres."""
    blank, place = part.blank, part.placement
    ends = {each.end for each in part.workings if isinstance(each, Mitre)}
    start = blank.thickness if Surface.NEAR_END in ends else 0.0
    stop = blank.length - (blank.thickness if Surface.FAR_END in ends else 0.0)
    origin = place.to_unit((start, 0.0, 0.0))
    return replace(
        part,
        blank=replace(blank, length=stop - start),
        placement=replace(place, origin=origin),
    ).bounds()


def _fix(setting: Setting, board: str, lapped: bool) -> bool:
    """Fix a board to what it touches, from inside or with what is let in; whether that holds it.

    Screws go through a face behind or below it, where enough of both lies on each other and
    the heads can be reached; edges take biscuits.
    """
    rod, bench = setting.rod, setting.bench
    box, held = _between_mitres(bench.parts[board]), False
    roles = [Role.SIDE, Role.TOP, Role.RAIL, Role.STILE, Role.LIPPING]
    if not lapped and any(
        bench.bounds(ref).contact(box) is not None for ref in bench.refs_of(Role.TOP)
    ):
        # Beside a top that it stands on, sides may be cut away.
        roles.remove(Role.SIDE)
    for ref in bench.refs_of(*roles):
        part = bench.parts[ref]
        other = part.bounds()
        patch = other.contact(box)
        if patch is None:
            continue
        shared = patch.size
        thin = min(range(3), key=lambda i: shared[i])
        narrow, long = sorted(shared[i] for i in range(3) if i != thin)
        # A panel's face takes screws through it; its edge doesn't.
        through_face = abs(part.placement.thickness[thin]) > 0.5
        behind = part.role in (Role.SIDE, Role.TOP) or (
            part.role in FACE_FRAME and _reached(rod, part, other, box) >= SCREWABLE
        )
        if (
            through_face
            and behind
            and (lapped or part.role is Role.TOP)
            and narrow >= SCREWABLE - TOUCH
        ):
            held |= screw_on(bench, ref, board, setting.moisture)
        elif narrow >= SCREWABLE - TOUCH and long >= _BISCUIT_ROOM:
            # Through a lipping they go on into the panel behind it.
            deep = box.size[thin]
            if part.role is not Role.LIPPING:
                deep = min(deep, other.size[thin])
            at, biscuits = patch.centre, edge_biscuits(bench.sizes, long, deep)
            bench.join(JointKind.BISCUIT, ref, board, at, biscuits)
            held = True
        else:
            bench.meet(JointKind.BUTT, ref, board)
    return held


def _reached(rod: Rod, part: Part, member: Box, board: Box) -> float:
    """How much (mm) of the rear of a frame member, behind the board, lies open to the inside."""
    if part.role is Role.STILE:
        inside = (rod.thickness, rod.outside.width - rod.thickness)
        return min(member.high[0], inside[1]) - max(member.low[0], inside[0])
    low, high = max(member.low[2], board.low[2]), min(member.high[2], board.high[2])
    return min(high, rod.inside.ceiling) - low


def _block(bench: Bench, board: Part, stock: Stock) -> None:
    """Blocks in the corner between a standing board and the top, screwed to both."""
    box = _between_mitres(board)
    tops = [bench.bounds(ref) for ref in bench.refs_of(Role.TOP)]
    if not tops:
        return
    t, across = board.blank.thickness, abs(board.placement.thickness[1]) > 0.5
    run = 0 if across else 1
    low = max(box.low[run], tops[0].low[run]) + t
    high = min(box.high[run], tops[0].high[run]) - (t if across else 0.0)
    if high - low < _BLOCK:
        return
    # Behind a front, to the inner side of a return: out to where enough of it lies on the top.
    if across:
        near, edge, sign = box.high[1], tops[0].low[1], 1.0
    elif board.placement.thickness[0] < 0:
        near, edge, sign = box.high[0], tops[0].low[0], 1.0
    else:
        near, edge, sign = box.low[0], tops[0].high[0], -1.0
    far = sign * (max(sign * near, sign * edge) + _BLOCK_BEARING)
    depth = (min(near, far), max(near, far))
    tall = min(t, box.size[2])
    spare = high - low - _BLOCK - 2 * _BLOCK_INSET
    starts = spread(low, high - _BLOCK, _BLOCK_INSET, steps_of(spare, SPACING) + 1)
    if spare < 2 * _BLOCK:
        # Two wouldn't leave a block's length between them.
        starts = ((low + high - _BLOCK) / 2,)
    for start in starts:
        along = (start, start + _BLOCK)
        (x, y) = (along, depth) if across else (depth, along)
        block = lay_board(
            bench,
            Board(Role.CORNICE, "Cornice block", GROUP, stock, shows=(), withdraw=Z),
            Box((x[0], y[0], box.low[2]), (x[1], y[1], box.low[2] + tall)),
            X if across else Y,
            Z,
        )
        screw_on(bench, block.ref, board.ref)
        for ref in bench.refs_of(Role.TOP):
            screw_on(bench, ref, block.ref)
