"""Cuts across a bar of which some ends are slanted: mitred, head to tail where that was planned.

An end is a pair of places along the bar, at its face edge and at its back.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from math import atan2, degrees, hypot

from rodwright.cutting.plans import Placed
from rodwright.cutting.steps.bench import Bench, Hand, Run, Task, rounded
from rodwright.cutting.steps.cuts import CutKind, Edge, Result, Step
from rodwright.cutting.steps.panels import NOISE, Panel, Rectangle

End = tuple[float, float]


@dataclass(frozen=True)
class _Member:
    """A piece on the bar, with its ends."""

    placed: Placed
    near: End
    far: End

    @property
    def length(self) -> float:
        """Over its long points."""
        return max(self.far) - min(self.near)


def bar_run(bench: Bench, hand: Hand, parts: Sequence[Panel]) -> Run:
    """The cuts that part what is in hand across, from the near end on."""
    return tuple(_Bar(bench, hand, parts).tasks())


def after_mitre(far: End, kerf: float, wide: float) -> End:
    """Where a bar begins once a piece with this end is cut off: beyond the kerf, measured along
    the bar."""
    slant = far[1] - far[0]
    reach = kerf * hypot(wide, slant) / wide if wide else kerf
    return far[0] + reach, far[1] + reach


def ends_of(placed: Placed, slants: tuple[float, float]) -> tuple[End, End]:
    """A piece's near and far end as it lies: ``flipped`` is turned by half a turn."""
    x, stop = placed.x, placed.x + placed.length
    if placed.flipped:
        return (x + slants[1], x), (stop - slants[0], stop)
    return (x, x + slants[0]), (stop, stop - slants[1])


class _Bar:
    """A bar while it is cut: ``end`` is its near end as it is now."""

    def __init__(self, bench: Bench, hand: Hand, parts: Sequence[Panel]) -> None:
        self.bench, self.hand = bench, hand
        placed = sorted((each for part in parts for each in part.placed), key=lambda one: one.x)
        pieces = bench.pieces
        self.members = [_Member(each, *ends_of(each, pieces[each.piece].slants)) for each in placed]
        slants = (slant for each in placed for slant in pieces[each.piece].slants)
        self.wide = hand.area.width or bench.lot.section or max(slants)
        self.stop = hand.area.x + hand.area.length
        self.end: End = (hand.area.x, hand.area.x)
        self.rest = next((part.area for part in reversed(parts) if part.is_rest), None)

    def tasks(self) -> Iterator[Task]:
        """All cuts, in their order."""
        for number, member in enumerate(self.members):
            later = self.members[number + 1 :]
            if not _alike(self.end, member.near):
                yield Task(self._end_cut(member))
                self.end = member.near
            beyond = after_mitre(member.far, self.bench.kerf, self.wide)
            if not later or _clear(beyond, later[0].near):
                yield Task(self._cut_off(member, beyond, later))
                self.end = beyond
            else:
                yield self._blank(member, later[0])

    def _end_cut(self, member: _Member) -> Step:
        """The near end made as the next piece's is wanted; what stays is measured from the far
        end."""
        slant = member.near[1] - member.near[0]
        before = after_mitre(member.near, -self.bench.kerf, self.wide)
        after = self._hand(member.near)
        kind: CutKind = "mitre" if abs(slant) > NOISE else "trim"
        return self._step(
            kind, slant, ("far", after.area.length), self.bench.panel(after),
            self._waste(min(self.end), max(before)),
        )  # fmt: skip

    def _cut_off(self, member: _Member, beyond: End, later: Sequence[_Member]) -> Step:
        """A piece cut off at its far end."""
        rest: Result | None
        if later:
            rest = self.bench.panel(self._hand(beyond))
        else:
            area = self.hand.area
            left = Rectangle(max(beyond), area.y, self.stop - max(beyond), area.width)
            rest = self.bench.rest(left, "across")
            if rest is None:
                rest = self._waste(min(beyond), self.stop)
        slant = member.far[0] - member.far[1]
        kind: CutKind = "mitre" if abs(slant) > NOISE else "crosscut"
        step = self._step(
            kind, slant, ("near", member.length), self.bench.piece(member.placed), rest
        )
        return replace(step, nested=bool(later) and _alike(beyond, later[0].near))

    def _blank(self, member: _Member, following: _Member) -> Task:
        """A piece cut off longer than it is, where its own end would go into the next; then its
        own end."""
        kerf, hand = self.bench.kerf, self.hand
        before = after_mitre(following.near, -kerf, self.wide)
        if not _clear(member.far, before):
            square = min(following.near) - kerf
            before = square, square
        blank = replace(self._hand(self.end), name=self.bench.part_name(hand.name))
        long = max(before) - min(self.end)
        blank = replace(blank, area=blank.area._replace(length=long))
        beyond = after_mitre(before, kerf, self.wide)
        slant = before[0] - before[1]
        kind: CutKind = "mitre" if abs(slant) > NOISE else "crosscut"
        rest = self.bench.panel(self._hand(beyond))
        step = self._step(kind, slant, ("near", long), self.bench.panel(blank), rest)
        self_end = self.end
        inner = _Bar(self.bench, blank, ())
        inner.end, inner.wide, inner.stop = self_end, self.wide, max(before)
        own = inner._cut_off(member, after_mitre(member.far, kerf, self.wide), ())
        self.end = beyond
        return Task(step, ((Task(own),),))

    def _hand(self, end: End) -> Hand:
        """The bar from an end on."""
        area = self.hand.area
        return self.hand.left(
            Rectangle(min(end), area.y, self.stop - min(end), area.width), "near", "sawn"
        )

    def _waste(self, start: float, stop: float) -> Result | None:
        if stop - start < NOISE:
            return None
        return Result("waste", "", rounded(stop - start), rounded(self.hand.area.width))

    def _step(
        self,
        kind: CutKind,
        slant: float,
        measure: tuple[Edge, float],
        measured: Result | None,
        rest: Result | None,
    ) -> Step:
        """A cut of what is in hand now; ``slant`` is by how much what is measured is longer at the
        face edge than at the back."""
        hand, (edge, setting) = self._hand(self.end), measure
        if _alike(self.end, (self.hand.area.x, self.hand.area.x)):
            hand = replace(hand, edges=self.hand.edges)
        reach = self.bench.kerf * hypot(self.wide, slant) / self.wide
        long_point: Edge | None = None
        if abs(slant) > NOISE:
            long_point = "face" if slant > 0 else "back"
        step = Step(
            stage=hand.stage,
            kind=kind,
            held=self.bench.held(hand),
            setting=rounded(setting),
            edge=edge,
            state=getattr(hand.edges, edge),
            rest_setting=rounded(hand.area.length - setting - reach),
            measured=measured,
            rest=rest,
            angle=round(degrees(atan2(abs(slant), self.wide)), 4),
            long_point=long_point,
        )
        return self.bench.guided(step, hand, "across")


def _alike(one: End, other: End) -> bool:
    return all(abs(a - b) < NOISE for a, b in zip(one, other, strict=True))


def _clear(end: End, later: End) -> bool:
    """Whether one end lies wholly before another."""
    return all(a < b + NOISE for a, b in zip(end, later, strict=True))
