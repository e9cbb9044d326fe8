"""The steps of an order in stages: what is made in one go, before what waits for it.

A stage is what is glued within its glue's open time, or what is screwed, hung or laid in one after
the other.  What is made alike (a shelf and its lipping, five times) is one stage.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby

from rodwright.making.glue_lines import GlueUp, glue_up
from rodwright.making.preferences import LOOSE, stage
from rodwright.making.steps import Order, Step, Where
from rodwright.making.sub_assemblies import Piece
from rodwright.unit import JointKind, Unit


@dataclass(frozen=True, slots=True)
class Making:
    """One thing that is made: its name (empty: the unit itself), its steps, and what they glue."""

    name: str
    steps: tuple[Step, ...]
    glue: GlueUp | None

    @property
    def refs(self) -> tuple[str, ...]:
        """All parts in it once it is made."""
        first = self.steps[0].standing
        return (*first, *(ref for step in self.steps for ref in step.refs))


@dataclass(frozen=True, slots=True)
class Stage:
    """Things that are made alike, one after the other: ``number`` is that of
    :mod:`rodwright.making.preferences`, ``turn`` which of how many ``turns`` a glue-up takes that
    is too long for one."""

    makings: tuple[Making, ...]
    number: int
    where: Where
    turn: int = 1
    turns: int = 1

    @property
    def name(self) -> str:
        """Of the first that is made."""
        return self.makings[0].name

    @property
    def glued(self) -> bool:
        """Whether anything is glued."""
        return any(each.glue for each in self.makings)

    @property
    def steps(self) -> tuple[Step, ...]:
        """The steps of all that is made."""
        return tuple(step for each in self.makings for step in each.steps)


def stages_of(unit: Unit, order: Order) -> tuple[Stage, ...]:
    """An order in its stages; each step is in one of them, once."""
    found: dict[object, list[Stage]] = {}
    waiting: dict[str, tuple[Step, ...]] = {}
    for (within, where), run in groupby(order.steps, lambda step: (step.within, step.where)):
        steps = (*waiting.pop(within, ()), *run)
        if len(steps) == 1 and not steps[0].joints and steps[-1] is not order.steps[-1]:
            # It stands and waits for what is made meanwhile.
            waiting[within] = steps
            continue
        stages = list(_of_run(unit, within, where, steps))
        alike = _alike(unit, steps) if within and not any(s.brings for s in steps) else object()
        if alike in found:
            stages = [
                Stage((*first.makings, *more.makings), *_kept(first))
                for first, more in zip(found[alike], stages, strict=True)
            ]
        found[alike] = stages
    return tuple(each for stages in found.values() for each in stages)


def _kept(stage: Stage) -> tuple[int, Where, int, int]:
    return stage.number, stage.where, stage.turn, stage.turns


def _alike(unit: Unit, steps: Sequence[Step]) -> tuple[object, ...]:
    """What two sub-assemblies share that are made alike."""
    return tuple(
        (
            tuple(unit.part(ref).role for ref in step.refs),
            tuple(sorted((joint.kind, len(joint.fixings)) for joint in step.joints)),
            tuple(round(each, 6) + 0.0 for each in step.towards),
        )
        for step in steps
    )


def _of_run(unit: Unit, within: str, where: Where, steps: tuple[Step, ...]) -> Iterator[Stage]:
    if where == "site":
        yield Stage((Making(within, steps, glue_up(unit, steps)),), LOOSE, where)
        return
    for number, group in _numbered(unit, steps):
        turns = list(_turns(unit, group))
        for turn, taken in enumerate(turns, 1):
            making = Making(within, tuple(taken), glue_up(unit, taken))
            yield Stage((making,), number, where, turn, len(turns))


def _numbered(unit: Unit, steps: Sequence[Step]) -> Iterator[tuple[int, list[Step]]]:
    """Steps by what they are for: a back that is caught between boards goes in with them."""
    refs = {ref for step in steps for ref in (*step.refs, *step.standing)}
    numbers: list[int] = []
    for step in reversed(steps):
        own = stage(unit, Piece(step.refs), refs)
        numbers.insert(0, min(own, numbers[0]) if numbers else min(own, LOOSE))
    groups = [
        (number, [step for _, step in pairs])
        for number, pairs in groupby(zip(numbers, steps, strict=True), lambda pair: pair[0])
    ]
    held: list[Step] = []
    for at, (number, group) in enumerate(groups):
        held += group
        if any(step.joints for step in held) or at == len(groups) - 1:
            yield number, held
            held = []


def _turns(unit: Unit, steps: Sequence[Step]) -> Iterator[list[Step]]:
    """Steps that are glued in one go, or where that takes too long in several, each within the open
    time of slow-setting glue as far as a step on its own lets it."""
    whole = glue_up(unit, steps)
    if whole is None or whole.time.slow:
        yield list(steps)
        return
    held: list[Step] = []
    for step in steps:
        glue = glue_up(unit, [*held, step])
        if any(each.joints for each in held) and glue is not None and not glue.time.slow:
            yield held
            held = []
        held.append(step)
    yield held


def moves(unit: Unit, making: Making) -> tuple[tuple[Step, ...], ...]:
    """The steps of a making, equal pieces that come one after the other as one move."""
    return tuple(
        tuple(group)
        for _, group in groupby(making.steps, lambda step: (_like(unit, step), step.free))
    )


def _like(unit: Unit, step: Step) -> tuple[object, ...]:
    """What two steps share that are one move: equal pieces, or whatever comes made."""
    loose = all(joint.kind is JointKind.RESTING for joint in step.joints) and bool(step.joints)
    pieces = tuple(
        (unit.part(ref).role, () if step.brings or loose else unit.part(ref).blank.size)
        for ref in step.refs
    )
    return (pieces, *_alike(unit, (step,)), bool(step.standing))
