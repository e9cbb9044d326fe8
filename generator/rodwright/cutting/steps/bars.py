"""Cuts across a bar of which some ends are slanted: mitred, head to tail where that was planned."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from math import atan2, degrees, hypot

from rodwright.cutting.steps.bench import Bench, Hand, Run, Task, rounded
from rodwright.cutting.steps.cuts import CutKind, Edge, Result, Step
from rodwright.cutting.steps.ends import End, beyond, ends_of, wide_of
from rodwright.cutting.steps.panels import NOISE, Panel, Rectangle

Left = Callable[[Bench, Hand, Panel], tuple[Result | None, tuple[Run, ...]]]
"""What a part that lies alone is, and the cuts that are made in it."""


@dataclass(frozen=True)
class _Member:
    """A piece on the bar, or what is ripped further once it is cut off, with its ends."""

    part: Panel
    near: End
    far: End

    @property
    def length(self) -> float:
        """Over its long points."""
        return max(self.far) - min(self.near)


def bar_run(bench: Bench, hand: Hand, parts: Sequence[Panel], left: Left) -> Run:
    """The cuts that part what is in hand across, from the near end on; ``left`` says what is done
    with what is cut off."""
    bar = _Bar(bench, hand, tuple(_members(bench, parts)), left)
    if parts[-1].trim:
        bar.usable = parts[-1].area.x - bench.kerf
    return tuple(bar.tasks())


def _members(bench: Bench, parts: Sequence[Panel]) -> Iterator[_Member]:
    for part in parts:
        for placed in part.placed:
            ends = ends_of(placed, bench.pieces[placed.piece].slants)
            yield _Member(Panel(part.area, placed=(placed,)), *ends)
        if part.axis is not None:
            low, high = part.area.span("across")
            yield _Member(part, (low, low), (high, high))


class _Bar:
    """A bar while it is cut: ``end`` is its near end as it is now."""

    def __init__(self, bench: Bench, hand: Hand, members: Sequence[_Member], left: Left) -> None:
        self.bench, self.hand, self.members, self.left = bench, hand, members, left
        pieces = (bench.pieces[each.piece] for member in members for each in member.part.placed)
        self.wide = hand.area.width or max(map(wide_of, pieces), default=0.0)
        self.stop = hand.area.x + hand.area.length
        self.usable = self.stop
        self.end: End = (hand.area.x, hand.area.x)

    def tasks(self) -> list[Task]:
        """All cuts, in their order."""
        done: list[Task] = []
        for number, member in enumerate(self.members):
            later = self.members[number + 1 :]
            opened = not _alike(self.end, member.near)
            if opened:
                done.append(Task(self._end_cut(member)))
                self.end = member.near
            if not later and min(member.far) > self.stop - NOISE:
                # What stays of the last cut is the last piece.
                last, (result, runs) = done[-1], self._left(member)
                step = replace(last.step, rest=result)
                if opened:
                    step = replace(last.step, measured=result)
                done[-1] = replace(last, step=step, then=(*last.then, *runs))
                break
            after = beyond(member.far, self.bench.kerf, self.wide)
            if later and not _clear(after, later[0].near):
                done.append(self._blank(member, later[0]))
            else:
                done.append(self._cut_off(member, after, later))
                self.end = after
                if not later and self._kept(after) is not None and self.usable < self.stop - NOISE:
                    done.append(Task(self._trim()))
        return done

    def _end_cut(self, member: _Member) -> Step:
        """The near end made as the next piece's is wanted; what stays is measured from the far
        end."""
        slant = member.near[1] - member.near[0]
        before = beyond(member.near, -self.bench.kerf, self.wide)
        after = self._hand(member.near)
        kind: CutKind = "mitre" if abs(slant) > NOISE else "trim"
        falls = not _clear(before, self.end)
        return self._step(
            kind,
            slant,
            ("far", after.area.length),
            self.bench.panel(after),
            self._waste(min(self.end), max(before)) if falls else None,
        )

    def _left(self, member: _Member) -> tuple[Result | None, tuple[Run, ...]]:
        low, high = min(member.near), max(member.far)
        area = Rectangle(low, self.hand.area.y, high - low, self.hand.area.width)
        return self.left(self.bench, self.hand.left(area, "far", "sawn"), member.part)

    def _cut_off(self, member: _Member, after: End, later: Sequence[_Member]) -> Task:
        """A piece cut off at its far end."""
        rest: Result | None
        kept = self._kept(after)
        if later or (kept is not None and self.usable < self.stop - NOISE):
            rest = self.bench.panel(self._hand(after))
        else:
            rest = kept or self._waste(max(after), self.stop) or self._waste(min(after), self.stop)
        slant = member.far[0] - member.far[1]
        kind: CutKind = "mitre" if abs(slant) > NOISE else "crosscut"
        result, runs = self._left(member)
        step = self._step(kind, slant, ("near", member.length), result, rest)
        nested = bool(later) and kind == "mitre" and _alike(after, later[0].near)
        return Task(replace(step, nested=nested), runs)

    def _kept(self, after: End) -> Result | None:
        """What is left behind the last piece, if it goes into the rack."""
        area = self.hand.area
        left = Rectangle(max(after), area.y, self.usable - max(after), area.width)
        rest = self.bench.rest(left, "across")
        return rest if rest is not None and rest.what == "offcut" else None

    def _trim(self) -> Step:
        """The far end taken off what is kept."""
        waste = self._waste(self.usable + self.bench.kerf, self.stop)
        setting = self.usable - min(self.end)
        return self._step("trim", 0.0, ("near", setting), self._kept(self.end), waste)

    def _blank(self, member: _Member, following: _Member) -> Task:
        """A piece cut off longer than it is, where its own end would go into the next; then its
        own end."""
        kerf, hand = self.bench.kerf, self.hand
        before = beyond(following.near, -kerf, self.wide)
        if not _clear(member.far, before):
            square = min(following.near) - kerf
            before = square, square
        blank = replace(self._hand(self.end), name=self.bench.part_name(hand.name))
        long = max(before) - min(self.end)
        blank = replace(blank, area=blank.area._replace(length=long))
        after = beyond(before, kerf, self.wide)
        slant = before[0] - before[1]
        kind: CutKind = "mitre" if abs(slant) > NOISE else "crosscut"
        rest = self.bench.panel(self._hand(after))
        step = self._step(kind, slant, ("near", long), self.bench.panel(blank), rest)
        self_end = self.end
        inner = _Bar(self.bench, blank, (member,), self.left)
        inner.end, inner.wide = self_end, self.wide
        inner.stop = inner.usable = max(before)
        own = inner._cut_off(member, beyond(member.far, kerf, self.wide), ())
        self.end = after
        return Task(step, ((own,),))

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
        area = hand.area
        if edge == "near":
            long, short = area.x + setting + reach / 2, area.x + setting + reach / 2 - abs(slant)
        else:
            long = area.x + area.length - setting - reach / 2
            short = long + abs(slant)
        at = (short, long) if long_point == "back" else (long, short)
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
            line=((rounded(at[0]), area.y), (rounded(at[1]), area.y + area.width)),
        )
        return self.bench.guided(step, hand, "across")


def _alike(one: End, other: End) -> bool:
    return all(abs(a - b) < NOISE for a, b in zip(one, other, strict=True))


def _clear(end: End, later: End) -> bool:
    """Whether one end lies wholly before another."""
    return all(a < b + NOISE for a, b in zip(end, later, strict=True))
