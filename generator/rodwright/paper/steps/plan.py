"""The steps of a unit numbered for paper: each move once, with all that goes with it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from rodwright.making.hardware import fixings_by_step
from rodwright.making.stages import Making, Stage, moves, stages_of
from rodwright.making.steps import Order, Step
from rodwright.unit import Fixing, Unit


@dataclass(frozen=True, slots=True)
class Move:
    """Equal pieces that come one after the other: its ``number``, the steps, what they come to
    first (``begun``, where nothing stands yet), and the hardware of all of them."""

    number: int
    steps: tuple[Step, ...]
    begun: tuple[Step, ...]
    fixings: tuple[Fixing, ...]

    @property
    def refs(self) -> tuple[str, ...]:
        """All that comes."""
        return tuple(ref for step in self.steps for ref in step.refs)


@dataclass(frozen=True, slots=True)
class PlannedStage:
    """A stage, the moves of the first that is made in it, and those of all others that are made
    alike under the same numbers."""

    stage: Stage
    moves: tuple[Move, ...]

    @property
    def shown(self) -> Making:
        """The one whose moves they are."""
        return self.stage.makings[0]


@dataclass(frozen=True, slots=True)
class Plan:
    """All stages, and the hardware that belongs to no step."""

    stages: tuple[PlannedStage, ...]
    rest: tuple[Fixing, ...]

    @property
    def bench(self) -> tuple[PlannedStage, ...]:
        """What is done at the bench."""
        return tuple(each for each in self.stages if each.stage.where == "bench")

    @property
    def site(self) -> tuple[PlannedStage, ...]:
        """What is done on site."""
        return tuple(each for each in self.stages if each.stage.where == "site")


def plan_of(unit: Unit, order: Order) -> Plan:
    """An order as it is told on paper."""
    *found, rest = fixings_by_step(unit, order)
    fixings = {id(step): each for step, each in zip(order.steps, found, strict=True)}
    planned: list[PlannedStage] = []
    number = 1
    for stage in stages_of(unit, order):
        told = list(_moves(unit, stage, number, fixings))
        number += len(told)
        planned.append(PlannedStage(stage, tuple(told)))
    return Plan(tuple(planned), rest)


def _moves(
    unit: Unit, stage: Stage, number: int, fixings: dict[int, tuple[Fixing, ...]]
) -> Iterator[Move]:
    """The moves of what is made first, with the hardware of all that is made alike."""
    ranks = [
        [fixings[id(step)] for making in stage.makings for step in (making.steps[rank],)]
        for rank in range(len(stage.makings[0].steps))
    ]
    begun: tuple[Step, ...] = ()
    at = 0
    held: list[Fixing] = []
    grouped = moves(unit, stage.makings[0])
    for last, steps in zip([False] * (len(grouped) - 1) + [True], grouped, strict=True):
        for rank in range(at, at + len(steps)):
            held += [fixing for each in ranks[rank] for fixing in each]
        at += len(steps)
        if not steps[0].standing and not any(steps[0].towards) and not last:
            begun = steps
            continue
        yield Move(number, steps, begun, tuple(held))
        number, begun, held = number + 1, (), []
