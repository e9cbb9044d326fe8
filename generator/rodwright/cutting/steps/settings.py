"""Lists for the rip fence and for the stop of the chop saw: cuts of one setting together."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby

from rodwright.cutting.steps.cuts import Edge, How, LotSteps, SheetSteps, Step


@dataclass(frozen=True, slots=True)
class Setting:
    """Cuts that are made one after another at one setting.

    ``setting`` in mm, over the long points of what is mitred; ``angle`` in degrees off square.
    ``opening`` says that the end of something is squared or mitred before it is measured.
    ``steps`` are places in :class:`LotSteps`, as in its order; ``times`` counts the cuts, of
    equal sheets too.
    """

    stage: int
    setting: float
    angle: float
    how: How
    opening: bool
    steps: tuple[tuple[int, int], ...]
    times: int


def rip_settings(steps: LotSteps) -> tuple[Setting, ...]:
    """Every cut along sheets, boards and strips, in an order in which they can be made."""
    return tuple(_listed(steps, along=True))


def stop_settings(steps: LotSteps) -> tuple[Setting, ...]:
    """Every cut across, mitres too, in an order in which they can be made."""
    return tuple(_listed(steps, along=False))


def times_set(steps: LotSteps) -> int:
    """How often fence and stop are set, or the measure of a line changes, for all of a lot's cuts
    in their order; not counted are those that are made with a saw carried to them."""
    lists = (rip_settings(steps), stop_settings(steps))
    set_to = [
        [(each.setting, each.angle) for each in listed if each.how != "carried"] for listed in lists
    ]
    return sum(len(list(groupby(each))) for each in set_to)


def is_opening(step: Step) -> bool:
    """Whether it makes the end of what is in hand square or slanted, and parts nothing of it."""
    goes_on = step.measured is not None and step.measured.what in ("panel", "piece", "outer")
    nothing = step.rest is None or step.rest.what == "waste"
    opposite: tuple[Edge, ...] = ("far", "back")
    return goes_on and nothing and step.edge in opposite


def step_at(steps: LotSteps, place: tuple[int, int]) -> tuple[SheetSteps, Step]:
    """A step by its place, and the sheet that it is cut from."""
    sheet = steps.sheets[place[0]]
    return sheet, sheet.steps[place[1]]


def _listed(steps: LotSteps, *, along: bool) -> Iterator[Setting]:
    places = [place for place in steps.order if step_at(steps, place)[1].along is along]

    def key(place: tuple[int, int]) -> tuple[int, float, float, How, bool]:
        step = step_at(steps, place)[1]
        opening = is_opening(step)
        # An end is made square wherever it is: how long the rest is doesn't matter.
        setting = 0.0 if opening and not along else round(step.setting, 3)
        return step.stage, setting, round(step.angle, 2), step.how, opening

    for (stage, setting, angle, how, opening), group in groupby(places, key):
        those = tuple(group)
        times = sum(len(steps.sheets[sheet].numbers) for sheet, _ in those)
        yield Setting(stage, setting, angle, how, opening, those, times)
