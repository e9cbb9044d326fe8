"""Strips that close the gaps beside and over a unit."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from rodwright.geometry import TOUCH, Box, Vector
from rodwright.opening.gaps import bent_at, gap_at
from rodwright.setout.boards import Board, lay_board, screw_on
from rodwright.setout.rod.lines import Rod
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import LEAST_SCRIBE
from rodwright.trade.screws import SCREWABLE
from rodwright.unit import FACE_FRAME, Bevel, JointKind, Role, Stock, Surface
from rodwright.unit.directions import DOWN, FORWARD, X, Z
from rodwright.wishes.scribes import ScribesSpec

Edge = Literal["left", "right", "top"]
GROUP = "Scribes"


@dataclass(frozen=True, slots=True)
class _Gap:
    """The gap to be closed along one edge, at its lower or left end and at the other.

    A straight strip as wide as ``start`` and ``end`` fills it wherever the wall bends;
    ``narrowest`` is what is left of it there once it is scribed.
    """

    start: float
    end: float
    narrowest: float

    @property
    def widest(self) -> float:
        return max(self.start, self.end)

    @property
    def taper(self) -> float:
        return abs(self.start - self.end)


def set_out_scribes(setting: Setting) -> None:
    """Lay the strips on the bench, at the size they have once they are scribed.

    In an opening each is as wide as the gap, tapering with it, and straight where the wall
    bellies away from it; the allowance is left on its width when it is first cut.
    """
    wish, rod = setting.spec.scribes, setting.rod
    assert wish is not None
    stock = setting.at("stock").stock(wish.stock)
    if stock is None or not _can_be_made(setting, wish, stock):
        return
    gaps = {edge: _gap(wish, rod, edge) for edge in wish.edges}
    for number, edge in enumerate(wish.edges):
        gap = gaps[edge]
        if gap.narrowest < LEAST_SCRIBE:
            place = "over the unit" if edge == "top" else f"at its {edge}"
            say = setting.say
            setting.at("edges", number).refuse(
                f"the gap {place} is down to {say(max(0.0, gap.narrowest))}: "
                f"no strip of wood closes it",
                "Make the gap wider (`fit`, or the frame's `overhang` smaller), or leave this out.",
            )
            return
    strips = _Strips(setting, wish, stock)
    top = gaps.get("top")
    for side in ("left", "right"):
        if side in gaps:
            over = (top.start if side == "left" else top.end) if top else 0.0
            strips.side(side, gaps[side], over)
    if top is not None:
        strips.top(top)


def _plane(wish: ScribesSpec, rod: Rod, stock: Stock) -> tuple[float, float]:
    """The y of the strips' faces and of their rear."""
    front = rod.front.face + wish.setback
    return front, front + (stock.thickness if wish.thickness is None else wish.thickness)


def _edges(wish: ScribesSpec, rod: Rod) -> tuple[float, float, float]:
    """Where the strips begin: x at the left and the right, z at the top.

    Beside the face frame where they reach into its thickness, else beside the carcass.
    """
    if rod.front.frame is not None and wish.setback < rod.front.frame.thickness - TOUCH:
        return rod.front.frame.left, rod.front.frame.right, rod.front.frame.top
    return 0.0, rod.outside.width, rod.outside.height


def _gap(wish: ScribesSpec, rod: Rod, edge: Edge) -> _Gap:
    if rod.opening is None or rod.opening.shape is None:
        width = wish.width or 0.0
        return _Gap(width, width, width)
    left, right, top = _edges(wish, rod)
    size = (rod.outside.width, rod.outside.overall)
    ends = (left, right) if edge == "top" else (rod.outside.foot, rod.outside.height)
    taken = {"left": -left, "right": right - rod.outside.width, "top": top - rod.outside.overall}[
        edge
    ]
    plane = rod.opening.shape.front
    places = bent_at(plane, edge, *ends)
    gaps = [gap_at(plane, size, edge, at) - taken for at in places]
    chord = [gaps[0] + (at - ends[0]) / (ends[1] - ends[0]) * (gaps[-1] - gaps[0]) for at in places]
    hollow = max(gap - straight for gap, straight in zip(gaps, chord, strict=True))
    return _Gap(gaps[0] + hollow, gaps[-1] + hollow, min(gaps))


def _can_be_made(setting: Setting, wish: ScribesSpec, stock: Stock) -> bool:
    rod, say, before = setting.rod, setting.say, setting.problems.mark()
    front, rear = _plane(wish, rod, stock)
    if rear - front > stock.thickness + TOUCH:
        setting.at("thickness").refuse(
            f"strips {say(rear - front)} thick can't come out of `{stock.name}`, which is "
            f"{say(stock.thickness)}",
            "Make them thinner or name thicker stock.",
        )
    if rod.opening is None and wish.width is None:
        setting.refuse(
            "without an opening, nothing says how wide the gap is",
            "Add `width`, or the `opening`.",
        )
    if rod.opening is not None and wish.width is not None:
        setting.at("width").refuse(
            "the opening says how wide the gaps are",
            "Leave `width` out.",
        )
    if rear > rod.outside.depth:
        setting.at("setback").refuse(
            f"set back by {say(wish.setback)}, the strips stand behind a carcass "
            f"{say(rod.outside.depth)} deep",
            "Make the setback smaller.",
        )
    above = [part.role for part in setting.bench.parts_of(Role.WORKTOP, Role.CORNICE)]
    if "top" in wish.edges and above:
        setting.at("edges", wish.edges.index("top")).refuse(
            f"the {min(above)} lies where a strip over the carcass would stand",
            "Take `top` out of the list.",
        )
    return not setting.problems.noted_since(before)


class _Strips:
    """Makes strips of one stock in one plane."""

    def __init__(self, setting: Setting, wish: ScribesSpec, stock: Stock) -> None:
        rod = setting.rod
        self._setting, self._wish, self._stock = setting, wish, stock
        self._plane = _plane(wish, rod, stock)
        self._edges = _edges(wish, rod)

    def side(self, side: str, gap: _Gap, over: float) -> None:
        """An upright strip, from the foot of the carcass to its top and ``over`` mm above."""
        rod, bench = self._setting.rod, self._setting.bench
        left, right, _ = self._edges
        x = (left - gap.widest, left) if side == "left" else (right, right + gap.widest)
        top = (self._edges[2] if over else rod.outside.height) + over
        box = Box((x[0], self._plane[0], rod.outside.foot), (x[1], self._plane[1], top))
        for ref in bench.refs_of(Role.CORNICE):
            cornice = bench.bounds(ref)
            if box.intersects(cornice):
                box = box.spanning(2, high=cornice.low[2])
        # Its back edge is at the wall; the right one is the left one turned end for end.
        along = Z if side == "left" else DOWN
        start, end = (gap.start, gap.end) if side == "left" else (gap.end, gap.start)
        self._lay(f"{side.capitalize()} scribe", box, along, start, end)

    def top(self, gap: _Gap) -> None:
        """A level strip over the carcass, between the upright ones."""
        left, right, top = self._edges
        box = Box((left, self._plane[0], top), (right, self._plane[1], top + gap.widest))
        self._lay("Top scribe", box, X, gap.start, gap.end)

    def _lay(self, name: str, box: Box, along: Vector, start: float, end: float) -> None:
        """A strip whose width goes from ``start`` at its near end to ``end`` at its far one."""
        bench, length = self._setting.bench, max(box.size[0], box.size[2])
        taper = abs(start - end)
        narrow = Surface.FAR_END if start > end else Surface.NEAR_END
        cut = (Bevel(Surface.BACK_EDGE, narrow, length, taper),) if taper > TOUCH else ()
        strip = lay_board(
            bench,
            Board(
                Role.SCRIBE,
                name,
                GROUP,
                self._stock,
                workings=cut,
                trim=(0.0, self._wish.allowance),
                trim_at=(Surface.BACK_EDGE,),
                withdraw=FORWARD,
            ),
            box,
            along,
            FORWARD,
        )
        # Screws come from inside, through a side or the top; an end is only glued.
        thin = min(start, end) < SCREWABLE
        for ref in bench.refs_of(Role.SIDE, Role.TOP):
            if thin or not screw_on(bench, ref, strip.ref, self._setting.moisture):
                bench.meet(JointKind.EDGE_GLUED, ref, strip.ref)
        for ref in bench.refs_of(*FACE_FRAME):
            bench.meet(JointKind.EDGE_GLUED, ref, strip.ref)
