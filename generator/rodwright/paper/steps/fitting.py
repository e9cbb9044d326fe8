"""The pages of fitting on site, in the order of the work.

Figures are those of the survey, the way in and the strength; the order and what is said beside them
are common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from itertools import groupby
from typing import Any

from rodwright.making.preferences import (
    BASE,
    CARCASS,
    DOORS,
    DRAWERS,
    FRAME,
    FRONT,
    LOOSE,
    SURROUND,
    stage,
)
from rodwright.making.steps import Order
from rodwright.making.sub_assemblies import Piece
from rodwright.opening.cautions import CAUTIONS
from rodwright.opening.sheet import SurveySheet
from rodwright.paper.sections import Section
from rodwright.paper.steps.adjusting import (
    closing_lines,
    door_lines,
    drawer_lines,
    frame_lines,
    last_lines,
)
from rodwright.paper.steps.on_site import carrying, fixing, floor, packing_rows, safety
from rodwright.paper.steps.plan import Move, PlannedStage, plan_of
from rodwright.paper.steps.section import move_data, pictures
from rodwright.unit import Slide, Swing, Unit

_TITLES = {
    BASE: "Base",
    CARCASS: "Stand it in its place",
    FRAME: "Face frame",
    FRONT: "What clips on in front",
    SURROUND: "Worktop, cornice, scribes",
    DRAWERS: "Drawers",
    DOORS: "Doors",
    LOOSE: "Loose shelves",
}


@dataclass(frozen=True, slots=True)
class Block:
    """One stage of the work: what to do, line by line, a table of packers, and moves with their
    pictures."""

    title: str
    lines: tuple[str, ...] = ()
    rows: tuple[dict[str, str], ...] = ()
    moves: tuple[dict[str, Any], ...] = field(default=())


def fitting_section(unit: Unit, order: Order, survey: SurveySheet | None = None) -> Section:
    """The work on site, from the door of the house to the last shelf; ``survey`` is that of the
    opening, where there is one."""
    site = plan_of(unit, order).site
    files = {name: content for each in site for name, content in pictures(unit, each)}
    blocks = [
        {
            "title": each.title,
            "lines": list(each.lines),
            "rows": list(each.rows),
            "moves": list(each.moves),
        }
        for each in _blocks(unit, site, survey)
        if each.lines or each.rows or each.moves
    ]
    return Section("fitting", "Fitting on site", {"blocks": blocks}, files)


def _blocks(
    unit: Unit, site: Sequence[PlannedStage], survey: SurveySheet | None
) -> Iterator[Block]:
    fit = survey.fit if survey is not None else None
    built_in = unit.opening is not None
    at_wall = [f"{each.danger.capitalize()}. {each.remedy}" for each in CAUTIONS]
    yield Block(
        "Before anything is drilled", (*(at_wall if built_in else at_wall[1:]), *safety(unit))
    )
    yield Block("Carry it in", tuple(carrying(unit)))
    yield Block("The floor", tuple(floor(unit, fit)), tuple(packing_rows(unit, fit, ("bottom",))))
    moves = [(move, each) for each in site for move in each.moves]
    fixed = False
    groups = [
        (number, list(group))
        for number, group in groupby(moves, lambda pair: _number(unit, pair[0]))
    ]
    for at, (number, group) in enumerate(groups):
        if number > CARCASS and not fixed:
            yield from _fixed(unit, survey)
            fixed = True
        told = tuple(move_data(unit, move, planned.stage) for move, planned in group)
        lines = tuple(_lines(unit, number, len(told), survey))
        if number == LOOSE and at < len(groups) - 1:
            lines = ("They go in now: what comes next closes their straight way in.",)
        yield Block(_TITLES.get(number, "What else is fitted"), lines, moves=told)
    if not fixed:
        if not moves:
            yield Block(_TITLES[CARCASS], tuple(_lines(unit, CARCASS, 0, survey)))
        yield from _fixed(unit, survey)
    told_numbers = {_number(unit, move) for move, _ in moves}
    for kind, number in ((Slide, DRAWERS), (Swing, DOORS)):
        if number not in told_numbers and any(isinstance(each, kind) for each in unit.motions):
            yield Block(_TITLES[number], tuple(_lines(unit, number, 0, survey)))
    yield Block("Close the gaps", tuple(closing_lines(unit, fit)))
    yield Block("Before you leave", tuple(last_lines(unit)))


def _number(unit: Unit, move: Move) -> int:
    step = move.steps[0]
    return stage(unit, Piece(step.refs), {*step.refs, *step.standing})


def _fixed(unit: Unit, survey: SurveySheet | None) -> Iterator[Block]:
    fit = survey.fit if survey is not None else None
    rows = tuple(packing_rows(unit, fit, ("left", "right")))
    yield Block("Pack it and fix it to the wall", tuple(fixing(unit, bool(rows))), rows)


def _lines(unit: Unit, number: int, count: int, survey: SurveySheet | None) -> Iterator[str]:
    if number == BASE:
        yield (
            "Level it by itself, along and across, before anything stands on it; then pack it, and "
            "try it again."
        )
    elif number == CARCASS:
        yield (
            "Level from left to right and from front to back, plumb at both sides and at the "
            "front; then the two diagonals once more: a floor out of level twists what was square."
        )
    elif number == FRAME:
        yield from frame_lines(survey, count)
    elif number == SURROUND:
        yield (
            "Scribe each piece to the wall as it really is: hold it level or plumb, run a pencil "
            "along the wall on a block as thick as the widest gap, plane to the line, undercut."
        )
    elif number == DRAWERS:
        yield from drawer_lines()
    elif number == DOORS:
        yield from door_lines(unit)
