"""Formulas and model beside each other as a table, with why they differ in words."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from rodwright.handover.strength_list import figure_text, number_text, subjects_text
from rodwright.lengths import LengthUnit
from rodwright.strength.model.beside import BACK, LEGS, TOO_LITTLE, Beside, Row
from rodwright.strength.model.causes import Cause, Does

NEAR = 0.05
"""A ratio this near 1 asks for no word."""


@dataclass(frozen=True, slots=True)
class ModelRow:
    """One row as it is read; rows that read alike are one."""

    subject: str
    what: str
    formula: str
    model: str
    ratio: str
    agrees: bool
    why: tuple[str, ...]


def model_rows(rows: Sequence[Row], unit: LengthUnit) -> tuple[ModelRow, ...]:
    """Rows by what they are of, those that differ first in each."""
    order = list(dict.fromkeys(row.what for row in rows))
    gathered: dict[tuple[object, ...], list[str]] = {}
    for row in sorted(rows, key=lambda row: (order.index(row.what), row.agrees)):
        told = (
            row.what,
            figure_text(row.formula, row.measure, unit),
            figure_text(row.model, row.measure, unit),
            "" if row.ratio is None else number_text(row.ratio),
            row.agrees,
            _why(row, unit),
        )
        gathered.setdefault(told, []).append(row.subject)
    return tuple(
        ModelRow(subjects_text(subjects), *told)  # type: ignore[arg-type]
        for told, subjects in gathered.items()
    )


def _why(row: Row, unit: LengthUnit) -> tuple[str, ...]:
    if not row.agrees:
        return tuple(cause_text(cause, row.measure, unit) for cause in row.causes)
    if row.formula and abs(row.model / row.formula - 1) > NEAR:
        return (f"less than {figure_text(row.within, row.measure, unit)} apart",)
    return ()


def cause_text(cause: Cause, measure: str, unit: LengthUnit) -> str:
    """Why model and formula differ: what does it, and by how much."""
    said = _CAUSES[cause.does](cause, unit)
    if cause.does in {Does.BRINGS, Does.STIFFENS}:
        return said
    sign = "+" if cause.effect > 0 else "-"
    return f"{said} ({sign}{figure_text(abs(cause.effect), measure, unit)})"


def _carries(cause: Cause, unit: LengthUnit) -> str:
    now, before = (figure_text(abs(each), "N", unit) for each in (cause.model, cause.formula))
    who = cause.ref or "the floor or the wall"
    word = "brings it" if cause.model + cause.formula < 0 else "carries"
    of = "" if word == "brings it" else " of it"
    if not cause.formula:
        return f"{who} {word} {now}{of}, which the formula doesn't count"
    said = f"{who} {word} {now}{of} and not {before}"
    if word == "carries" and cause.gives_way and cause.gives_way > TOO_LITTLE:
        said += f", as it gives way by {figure_text(cause.gives_way, 'mm', unit)}"
    if word == "brings it" and cause.instead and abs(cause.model) < abs(cause.formula):
        most = figure_text(cause.instead_force, "N", unit)
        said += f": {cause.instead} carries {most} of {cause.ref}"
    return said


def _turns(cause: Cause, unit: LengthUnit) -> str:  # noqa: ARG001
    return f"the end at {cause.ref} turns with it, or is held by it, otherwise than in the formula"


def _loads(cause: Cause, unit: LengthUnit) -> str:
    more = figure_text(abs(cause.model), "N", unit)
    word = "more" if cause.model < 0 else "less"
    return f"{more} {word} is fixed to it or hangs on it than the formula counts"


def _warps(cause: Cause, unit: LengthUnit) -> str:
    front, back = (figure_text(each, "mm", unit) for each in (cause.formula, cause.model))
    if front == back:
        return "it gives way as a plate does, between its front and its back"
    return f"it bends from front to back too: its front edge sags by {front}, its back by {back}"


def _brings(cause: Cause, unit: LengthUnit) -> str:
    now, before = (figure_text(each, "N", unit) for each in (cause.model, cause.formula))
    return f"{cause.ref} brings {now} there, not {before}"


def _stiffens(cause: Cause, unit: LengthUnit) -> str:
    now, before = (figure_text(each, "N/mm", unit) for each in (cause.model, cause.formula))
    said = f"{cause.ref}: as stiff as {now}, not {before}"
    if cause.ref == LEGS and cause.model > cause.formula:
        said += (
            "; the weight on them keeps their heads pressed to the bottom, which the formula "
            "doesn't count on"
        )
    if cause.ref == BACK and not cause.formula:
        said += "; the formula counts no panel that isn't held at all four edges"
    return said


_CAUSES = {
    Does.CARRIES: _carries,
    Does.TURNS: _turns,
    Does.LOADS: _loads,
    Does.WARPS: _warps,
    Does.BRINGS: _brings,
    Does.STIFFENS: _stiffens,
}


def model_summary(found: Beside, unit: LengthUnit) -> tuple[str, ...]:
    """What else a model says, a line each."""
    lines = [
        f"All that it weighs and carries, {figure_text(found.weight, 'N', unit)}, comes to what "
        f"holds it: {figure_text(found.reaction, 'N', unit)}.",
    ]
    if found.joint is not None:
        moment = figure_text(found.moment, "N mm", unit)
        lines.append(
            f"The greatest moment in a joint: {moment}, {found.joint.first} and "
            f"{found.joint.second} ({found.joint.kind.value})."
        )
    if found.sway is not None:
        front, back = (figure_text(e, "mm", unit) for e in (found.sway.front, found.sway.back))
        push = figure_text(found.push, "N", unit)
        lines.append(
            f"Pushed sideways by {push} at the top, its front goes {front}, its back {back}."
        )
    if found.weights_only:
        lines.append(
            f"Only weights in the model: {len(found.weights_only)} parts of doors, drawers"
            " and what is fitted round it."
        )
    agree = sum(row.agrees for row in found.rows)
    lines.append(f"{agree} of {len(found.rows)} figures agree; {found.nodes} nodes.")
    return tuple(lines)
