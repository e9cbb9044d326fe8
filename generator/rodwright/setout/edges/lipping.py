"""Lippings: solid strips on front edges."""

from __future__ import annotations

from rodwright.setout.inside import Front
from rodwright.setout.rod.front_and_back import LippingLines, hidden_by_frame
from rodwright.setout.setting import Setting
from rodwright.trade.gaps import TRIM_LENGTH, TRIM_WIDTH
from rodwright.unit import FACE_FRAME, UPRIGHTS, Blank, Grain, JointKind, Part, Placement, Role
from rodwright.unit.directions import FORWARD, LEFT, X, Z


def set_out_lippings(setting: Setting) -> None:
    """Lay the lippings on the bench, glued to their edges.

    Behind a face frame they stand in front of the carcass, between the members of the
    frame; without one they end flush with its front.  What a rail hides gets none.
    """
    rod, bench, notes, carcass = setting.rod, setting.bench, setting.notes, setting.carcass
    lines = rod.front.lipping
    assert lines is not None
    strip = _Strips(setting, lines)
    if "sides" in lines.edges:
        for side in (carcass.left, carcass.right):
            bounds = bench.bounds(side.ref)
            bottom, top = carcass.bottom, carcass.top
            low = bottom.high if bottom and bottom.over else max(bounds.low[2], rod.outside.foot)
            high = top.low if top and top.over else bounds.high[2]
            strip.upright((side.ref,), side.left, side.right, low, high)
    for name, level in (("bottom", carcass.bottom), ("top", carcass.top)):
        if name in lines.edges and level is not None:
            inside = (carcass.left.right, carcass.right.left)
            span = (0.0, rod.outside.width) if level.over else inside
            strip.level((level.ref,), span)
    if "dividers" in lines.edges:
        for divider, space in notes.dividers:
            low, high = space.low, space.high
            if rod.front.frame is not None:
                low, high = max(low, space.front.low), min(high, space.front.high)
            strip.upright((divider.ref,), divider.left, divider.right, low, high)
    if "shelves" in lines.edges:
        for edge in notes.edges:
            left, right = edge.between
            gap = max(0.0, bench.bounds(edge.refs[0]).low[0] - left.right)
            strip.level(edge.refs, (left.right, right.left), gap, edge.front)


LEAST_STRIP = 3.0
"""A strip narrower than this (mm) isn't worth ripping; what shows is left bare."""


def strip_blank(lines: LippingLines, length: float, width: float) -> Blank:
    """A strip's blank: it is cut longer and wider, and trimmed on the panel."""
    return Blank(
        length,
        width,
        lines.thickness,
        lines.stock,
        Grain.LENGTHWISE,
        trim_length=TRIM_LENGTH,
        trim_width=TRIM_WIDTH,
    )


class _Strips:
    """Makes strips of one stock and thickness."""

    def __init__(self, setting: Setting, lines: LippingLines) -> None:
        self._setting, self._lines = setting, lines
        self._frame = [(part, part.bounds()) for part in setting.bench.parts_of(*FACE_FRAME)]

    def level(
        self,
        refs: tuple[str, ...],
        span: tuple[float, float],
        gap: float = 0.0,
        front: Front | None = None,
    ) -> None:
        """A strip on the front of level parts that lie on each other, between two x.

        It stays ``gap`` mm away from what bounds it at either end, and where it reaches into
        a face frame it keeps to the opening that its parts show in.
        """
        boxes = [self._setting.bench.bounds(ref) for ref in refs]
        low, high = boxes[0].low[2], boxes[-1].high[2]
        y = boxes[0].low[1]
        whole = boxes[0].spanning(2, low, high)
        uprights = [part.bounds() for part in self._setting.bench.parts_of(*UPRIGHTS)]
        if hidden_by_frame(whole, [bounds for _, bounds in self._frame], uprights):
            return
        frame, left, right = self._setting.rod.front.frame, *span
        if frame is not None and y < self._lines.thickness:
            left, right = max(left, frame.inner_left), min(right, frame.inner_right)
            low, high = max(low, frame.inner_bottom), min(high, frame.inner_top)
            if front is not None:
                left, right = max(left, front.left), min(right, front.right)
                low, high = max(low, front.low), min(high, front.high)
            if high - low < LEAST_STRIP:
                return
        placement = Placement((left + gap, y, low), X, Z)
        self._lay(refs, right - left - 2 * gap, high - low, placement)

    def upright(
        self, refs: tuple[str, ...], left: float, right: float, low: float, high: float
    ) -> None:
        """A strip on the front of an upright, between two z."""
        y = self._setting.bench.bounds(refs[0]).low[1]
        frame = self._setting.rod.front.frame
        if frame is not None and y < self._lines.thickness:
            low, high = max(low, frame.inner_bottom), min(high, frame.inner_top)
        self._lay(refs, high - low, right - left, Placement((right, y, low), Z, LEFT))

    def _lay(
        self, refs: tuple[str, ...], length: float, width: float, placement: Placement
    ) -> None:
        if length < LEAST_STRIP:
            return
        setting, lines, bench = self._setting, self._lines, self._setting.bench
        say = setting.say
        if min(width, lines.thickness) > lines.stock.thickness:
            here = setting.at("thickness")
            if not setting.problems.noted_at(here.where):
                here.refuse(
                    f"a strip {say(width)} x {say(lines.thickness)} can't come out of "
                    f"`{lines.stock.name}`, which is {say(lines.stock.thickness)} thick",
                    "Make the lipping thinner or name thicker stock.",
                )
            return
        strip = Part(
            bench.next_ref(Role.LIPPING),
            "Lipping",
            Role.LIPPING,
            "Lippings",
            strip_blank(lines, length, width),
            placement,
            withdraw=FORWARD,
        )
        bench.add(strip)
        for ref in refs:
            if bench.meet(JointKind.EDGE_GLUED, ref, strip.ref):
                bench.mark_lipped(ref, "front")
        self._meet_frame(strip)

    def _meet_frame(self, strip: Part) -> None:
        for part, bounds in self._frame:
            patch = bounds.contact(strip.bounds())
            if patch is not None:
                self._setting.bench.join(JointKind.BUTT, part.ref, strip.ref, patch.centre)
