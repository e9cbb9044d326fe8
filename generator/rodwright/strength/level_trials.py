"""A level as it would be otherwise: of other stock, in layers, lipped, propped, loaded less.

Each makes other parts of it in a unit that is else the same, and works that out anew.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import replace
from itertools import pairwise

from rodwright.strength.level_changes import (
    cut_off,
    grown,
    laid_as,
    load_between,
    loaded_less,
    raised,
)
from rodwright.strength.level_parts import joints_of, levels_of
from rodwright.strength.level_states import LevelState, trial_state
from rodwright.strength.seats import Line, Lying, Seat
from rodwright.strength.turning import turning_of
from rodwright.unit import (
    Blank,
    Bore,
    Joint,
    JointKind,
    Part,
    Placement,
    Role,
    Stock,
    Unit,
)

LIPPING_WIDTH = 20.0
"""How wide a lipping is that is put on, front to back, mm (common practice, no source)."""
_LIPPING = "a lipping"

Trial = tuple[Unit, LevelState]
"""A unit in which a level is otherwise, and the level's state in it."""


class Trials:
    """What can be tried with one level of a unit, whose levels are ``like`` this."""

    def __init__(self, unit: Unit, like: Mapping[str, LevelState], state: LevelState) -> None:
        self._unit, self._state, self._level = unit, state, state.level
        self._like = like
        # Others change with it only where dividers carry it or stand on it.
        self._alone = not state.now.standing and all(seat.how == "end" for seat in state.now.seats)

    @property
    def one_span(self) -> bool:
        """Whether it lies on its two ends alone."""
        return self._alone and len(self._state.now.seats) == 2

    def of_stock(self, stock: Stock) -> Trial:
        """All its panels of another stock, as thick as that is, from the same underside up; strips
        that close an edge grow with it."""
        return self._stacked(stock, len(self._level.panels))

    def layered(self, layers: int) -> Trial:
        """So many layers of its own stock, glued face to face."""
        return self._stacked(self._level.main.blank.stock, layers)

    def lipped(self, stock: Stock, deep: float) -> Trial:
        """A strip ``deep`` mm high glued along its front, flush with its top, in place of a lipping
        that is there."""
        box, main = self._level.box, self._level.main
        there = {
            strip.ref: strip.bounds()
            for ply in self._level.plies
            for strip in ply.strips
            if strip.role is Role.LIPPING and strip.bounds().centre[1] < box.centre[1]
        }
        start, stop = self._clear()
        blank = Blank(stop - start, deep, LIPPING_WIDTH, stock, stock.lengthwise)
        place = Placement((start, box.low[1], box.high[2] - deep), (1.0, 0.0, 0.0), (0.0, 0.0, 1.0))
        lipping = Part(_LIPPING, "Lipping", Role.LIPPING, main.group, blank, place)
        glued = Joint(JointKind.EDGE_GLUED, main.ref, _LIPPING, place.origin)
        return self._tried(
            replace(
                self._unit,
                parts=(*(p for p in self._unit.parts if p.ref not in there), lipping),
                joints=(
                    *(j for j in self._unit.joints if not {j.first, j.second} & set(there)),
                    glued,
                ),
                fittings=(),
            )
        )

    def halved(self) -> tuple[Trial, Trial]:
        """Two in its place, left and right of a divider half-way that stands firm and is as thick
        as what its left end lies on; by joints with it as each end has now."""
        first, last = self._state.now.seats
        between = self._unit.part(first.on) if first.on else self._level.main
        middle, half = (first.at + last.at) / 2, between.blank.thickness / 2
        left, right = middle - half, middle + half
        return (
            self._part_of(first.at, left, (first, replace(last, at=left))),
            self._part_of(right, last.at, (replace(first, at=right), last)),
        )

    def _part_of(self, start: float, stop: float, seats: tuple[Seat, ...]) -> Trial:
        """What there is of the level between two x, its ends reaching past them as they do now."""
        begins, ends = self._clear()
        parts = tuple(
            cut_off(part, start - begins, ends - stop) if part in self._level.parts else part
            for part in self._unit.parts
        )
        refs = {part.ref for part in self._level.parts}
        loads = tuple(
            load_between(load, start, stop) if load.ref in refs else load
            for load in self._unit.loading.loads
        )
        loading = replace(self._unit.loading, loads=loads)
        unit = replace(self._unit, parts=parts, loading=loading, fittings=())
        return self._tried(unit, lambda lie: _with_seats(lie, seats))

    def propped(self) -> Trial:
        """Something that stands firm below the middle of its widest span, over which it runs on."""
        start, stop = max(self._state.now.spans, key=lambda span: span[1] - span[0])
        post = Seat((start + stop) / 2, "", None, "under", lifts=True)
        return self._tried(self._unit, lambda lie: _with_seats(lie, (*lie.seats, post)))

    def held_at_back(self) -> Trial:
        """Screwed along its back edge to something that doesn't give."""
        line = Line("back", self._level.box.high[1], ())
        return self._tried(self._unit, lambda lie: replace(lie, lines=(*lie.lines, line)))

    def spanning(self, span: float) -> Trial:
        """Its ends no more than ``span`` mm apart: cut off at its right."""
        start, stop = self._clear()
        shorter = stop - start - span
        parts = tuple(
            replace(part, blank=replace(part.blank, length=part.blank.length - shorter))
            if part in self._level.parts
            else part
            for part in self._unit.parts
        )

        def moved(lie: Lying) -> Lying:
            last = self._state.now.seats[-1]
            return _with_seats(lie, (lie.seats[0], replace(last, at=last.at - shorter)))

        return self._tried(replace(self._unit, parts=parts, fittings=()), moved)

    @property
    def narrows(self) -> bool:
        """Whether its panels are plain enough to be made less deep: with bores in them alone."""
        return all(isinstance(each, Bore) for part in self._level.panels for each in part.workings)

    def shallower(self, depth: float) -> Trial:
        """Only ``depth`` mm deep, its front edge farther back, and strips along that with it; what
        lies on each square metre of it stays, or else what lies on each metre."""
        box = self._level.box
        cut, panels = box.size[1] - depth, {part.ref for part in self._level.panels}
        front = {
            part.ref
            for part in self._level.parts
            if part.ref not in panels and part.bounds().centre[1] < box.centre[1]
        }

        def narrower(part: Part) -> Part:
            if part.ref in panels:
                part = replace(part, blank=replace(part.blank, width=part.blank.width - cut))
                if part.placement.width[1] < 0:
                    return part
            elif part.ref not in front:
                return part
            x, y, z = part.placement.origin
            return replace(part, placement=replace(part.placement, origin=(x, y + cut, z)))

        parts = tuple(map(narrower, self._unit.parts))
        made = replace(self._unit, parts=parts, fittings=())
        return self._tried(loaded_less(made, self._level.refs, depth / box.size[1], by_area=True))

    def loaded(self, share: float) -> Trial:
        """What lies on it times ``share``."""
        return self._tried(loaded_less(self._unit, self._level.refs, share))

    def _clear(self) -> tuple[float, float]:
        seats = self._state.now.seats
        return seats[0].at, seats[-1].at

    def _stacked(self, stock: Stock, layers: int) -> Trial:
        """Layers of a stock from its underside up, where its own panels were."""
        panels = self._level.plies[0].layers
        low, old = panels[0].bounds().low[2], panels[-1].bounds().high[2]
        new: dict[str, tuple[Part, ...]] = {part.ref: () for part in panels[1:]}
        made = []
        for number in range(layers):
            like = panels[min(number, len(panels) - 1)]
            ref = like.ref if number < len(panels) else f"{like.ref}+{number}"
            made.append(laid_as(like, ref, stock, low + number * stock.thickness))
        new[panels[0].ref] = tuple(made)
        rise = low + layers * stock.thickness - old
        closing = {
            strip.ref: (grown(strip, rise),)
            for strip in self._level.parts
            if strip.role is Role.LIPPING and abs(strip.bounds().high[2] - old) < 1e-6
        }
        above = {
            part.ref: (raised(part, rise),) for ply in self._level.plies[1:] for part in ply.parts
        }
        otherwise = new | closing | above
        parts = tuple(
            each for part in self._unit.parts for each in otherwise.get(part.ref, (part,))
        )
        glued = tuple(
            Joint(JointKind.FACE_GLUED, one.ref, other.ref, one.placement.origin)
            for one, other in pairwise(made)
            if other.ref not in new
        )
        joints = (*self._unit.joints, *glued)
        return self._tried(replace(self._unit, parts=parts, joints=joints, fittings=()))

    def _tried(self, unit: Unit, change: Callable[[Lying], Lying] | None = None) -> Trial:
        """The level in a unit, lying as it does now unless that is changed."""
        ref = self._level.ref
        levels = [
            (level, self._lies(unit, level.ref))
            for level in levels_of(unit, joints_of(unit))
            if level.ref == ref or not self._alone
        ]
        if change is not None:
            levels = [(level, change(lie) if level.ref == ref else lie) for level, lie in levels]
        return unit, trial_state(unit, levels, self._like, ref)

    def _lies(self, unit: Unit, ref: str) -> Lying:
        """How a level lies: on what it does now, by joints as stiff as they are in the unit."""
        now = self._like[ref].now
        seats = tuple(
            replace(seat, stiffness=turning_of(unit, seat.joint))
            if seat.joint is not None and seat.stiffness is not None
            else seat
            for seat in now.seats
        )
        return Lying(seats, now.lines, now.standing, now.grounded)


def _with_seats(lie: Lying, seats: tuple[Seat, ...]) -> Lying:
    return replace(lie, seats=tuple(sorted(seats, key=lambda seat: seat.at)))
