"""How a drawer's front is held to its box: screws from inside, and the handle's.

All lengths in mm, unit frame.
"""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.geometry import Box
from rodwright.geometry.spacing import count_along, spread
from rodwright.setout import looks
from rodwright.setout.fixings import screws_through, slot_for, washers
from rodwright.setout.handles import handle_fixings
from rodwright.setout.setting import Setting
from rodwright.trade.screws import SPACING, STILL
from rodwright.trade.sizes import TradeSizes
from rodwright.unit import JointKind, Part
from rodwright.unit.directions import Y
from rodwright.wishes.drawers import DrawerHandleSpec

_FROM_END = 70.0
"""From the ends of a box's front end to the first screws, mm: past the joints at its corners
(common practice, no source)."""
_FROM_EDGE = 15.0
"""From the bottom's groove, and from the upper edge, to the nearest screws, mm (common practice, no
source)."""
_TWO_ROWS = 50.0
"""Rows of screws stand at least so far apart (mm), or there is one (common practice, no source)."""
_BESIDE_HANDLE = 20.0
"""Screws keep so far (mm) from a handle's, which hold as well (common practice, no source)."""
_BESIDE_SLOT = 8.0
"""Wood left above a slot, mm (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class FrontFixing:
    """What holds the front of a drawer (``front``, its ref) to the front end of its box (``end``).

    ``box`` is the x of the box's left and right, ``side`` how thick its sides are, ``above`` how
    much its bottom takes of its height.  The setting is at the wish for the handle.
    """

    setting: Setting
    handle: DrawerHandleSpec | None
    box: tuple[float, float]
    side: float
    above: float
    front: str
    end: str

    def fix(self) -> None:
        """Drill front and box end for screws and handle, and join them.

        Where front and box don't move alike across the grain, the lowest row of screws holds
        the front and everything above goes through slots or larger holes.  What doesn't go
        into the front is noted.
        """
        bench, front, end = self.setting.bench, self.front, self.end
        handles = self._handles(bench.parts[front], bench.parts[end])
        box = bench.bounds(end)
        rows = self._rows(bench.parts[front], bench.parts[end], bench.sizes)
        slots = count = 0
        sizes = bench.sizes
        hole = sizes.clearance(sizes.screw)
        for number, z in enumerate(rows):
            for x in _places(box.low[0], box.high[0], sizes):
                if any(
                    abs(x - a) < _BESIDE_HANDLE and abs(z - b) < _BESIDE_HANDLE for a, b in handles
                ):
                    continue
                count += 1
                moves = self._moves(bench.parts[front], bench.parts[end], z - rows[0])
                if number == 0 or moves <= STILL:
                    bench.drill(end, (x, box.low[1], z), Y, hole, None, "screw")
                    continue
                slots += 1
                half = slot_for(sizes, hole, moves) / 2
                slot = Box(
                    (x - hole / 2, box.low[1], z - half), (x + hole / 2, box.high[1], z + half)
                )
                bench.mortise(end, slot, Y, round_ends=True, use="screw")
        if self.handle is not None:
            holes = 1 if self.handle.spacing == 0 else 2
            face, out = bench.bounds(front).low[1], self.handle.projection
            for first in range(0, len(handles), holes):
                over = tuple(handles[first : first + holes])
                shapes = looks.handle(self.handle.name, over, face, out)
                ware = self.handle.material or looks.ware_of(self.handle.name)
                bench.show(front, *shapes, ware=ware)
        for x, z in handles:
            self._drill_for_handle(x, z, abs(z - rows[0]))
        through, into = (bench.parts[ref].blank.thickness for ref in (end, front))
        held = bench.parts[front].blank.stock.grip
        fixings = [screws_through(sizes, through, into, count, held)]
        if slots:
            fixings.append(washers(sizes, slots))
        if self.handle is not None:
            wish = self.handle
            play = self._play(abs(handles[0][1] - rows[0])) if handles else None
            woods = [into + (through if self._inside(x) else 0.0) for x, _ in handles]
            for fixing in handle_fixings(sizes, wish, woods, front, play):
                bench.buy(fixing)
        patch = bench.contact(end, front)
        assert patch is not None
        kind, at = JointKind.SCREWED, patch.centre
        if slots:
            # It swells from the row that holds it.
            kind, at = JointKind.BUTTONED, (at[0], at[1], rows[0])
        bench.join(kind, end, front, at, *fixings)

    def _rows(self, front: Part, end: Part, sizes: TradeSizes) -> list[float]:
        """Heights of the rows of screws, from the lowest up; slots end below the upper edge."""
        box = end.bounds()
        edge = sizes.usual(_FROM_EDGE)
        low, high = box.low[2] + self.above + edge, box.high[2] - edge
        if (moves := self._moves(front, end, high - low)) > STILL:
            slot = slot_for(sizes, sizes.clearance(sizes.screw), moves)
            high = min(high, box.high[2] - slot / 2 - sizes.usual(_BESIDE_SLOT))
        if high - low >= _TWO_ROWS:
            return [low, high]
        return [(box.low[2] + self.above + box.high[2]) / 2]

    def _moves(self, front: Part, end: Part, apart: float) -> float:
        """How much more the front or the box moves than the other between two heights so far
        apart."""
        one, other = (
            part.blank.stock.swelling(apart, self.setting.moisture) for part in (front, end)
        )
        return abs(one - other)

    def _handles(self, front: Part, end: Part) -> list[tuple[float, float]]:
        """x and z of the holes for handles: in the middle of the front, or as near it as the box's
        bottom and upper edge let them."""
        wish, say = self.handle, self.setting.say
        if wish is None:
            return []
        bounds, box = front.bounds(), end.bounds()
        width, d = bounds.size[0], wish.hole
        half = wish.spacing / 2
        low, high = box.low[2] + self.above + d, box.high[2] - d
        if half + d > width / wish.count / 2 or low > high:
            self.setting.refuse(
                f"holes of {say(d)} for it don't go into a front {say(width)} x "
                f"{say(bounds.size[2])}",
                "Choose a smaller one, or leave it out.",
            )
            return []
        z = min(max(bounds.centre[2], low), high)
        middles = [bounds.low[0] + width * (i + 0.5) / wish.count for i in range(wish.count)]
        xs = [x for middle in middles for x in sorted({middle - half, middle + half})]
        if any(not self._inside(x) and self.box[0] - d < x < self.box[1] + d for x in xs):
            self.setting.refuse(
                "a hole for it comes where the side of the box stands behind the front",
                "Choose another `spacing` or `count`.",
            )
            return []
        return [(x, z) for x in xs]

    def _inside(self, x: float) -> bool:
        """Whether a hole for the handle at this x comes out inside the box."""
        assert self.handle is not None
        inset = self.side + self.handle.hole
        return self.box[0] + inset <= x <= self.box[1] - inset

    def _drill_for_handle(self, x: float, z: float, apart: float) -> None:
        assert self.handle is not None
        bench, front, end = self.setting.bench, self.front, self.end
        d = self.handle.hole
        box = bench.bounds(end)
        bench.drill(front, (x, bench.bounds(front).low[1], z), Y, d, None, "handle")
        if self._inside(x):
            wide = self._play(apart) or d
            bench.drill(end, (x, box.low[1], z), Y, wide, None, "handle")

    def _play(self, apart: float) -> float | None:
        """How wide a handle's hole is in the box, if front and box have to move past each other."""
        assert self.handle is not None
        bench = self.setting.bench
        moves = self._moves(bench.parts[self.front], bench.parts[self.end], apart)
        return None if moves <= STILL else bench.sizes.round_up(self.handle.hole + 2 * moves)


def _places(low: float, high: float, sizes: TradeSizes) -> tuple[float, ...]:
    """Where the screws of a row stand: one near each end, and what is needed between."""
    inset = min(sizes.usual(_FROM_END), (high - low) / 4)
    return spread(low, high, inset, count_along(high - low, inset, SPACING))
