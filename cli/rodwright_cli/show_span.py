"""How a span, a load or a thickness is shown: the answer in a few lines, and with formulas all that
it was worked out from."""

from __future__ import annotations

from collections.abc import Iterator

from rich.markup import escape

from rodwright.amounts import AREA_WEIGHTS, RUN_WEIGHTS, format_weight
from rodwright.handover.strength_list import (
    NO_ENGINEER,
    StrengthRow,
    figure_text,
    limit_text,
    remedy_text,
    works_of,
)
from rodwright.lengths import at_least, at_most, format_length
from rodwright.strength.results import Result
from rodwright.strength.span_answer import SpanAnswer
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_strength import whole


def span(answer: SpanAnswer, *, formulas: bool = False) -> None:
    """The answer, what governs it, how far it sags, what was taken for granted; with ``formulas``
    every figure with its inputs and sources."""
    console = PlainConsole()
    question, unit = answer.question, answer.question.unit
    for line in (*_answer(answer), _figures(answer), *_remedies(answer)):
        console.print(line)
    if formulas:
        console.print()
        for result in answer.results:
            whole(console, StrengthRow(f"shelf of {question.board}", result), unit)
    else:
        console.print(_granted(answer))
    console.print(_rests_on(answer, formulas=formulas))
    console.print(NO_ENGINEER)


def _figures(answer: SpanAnswer) -> str:
    """Each figure, with its limit where it has one, in a line."""
    unit = answer.question.unit

    def told(result: Result) -> str:
        limit = limit_text(result, unit)
        said = f"{result.what} {figure_text(result.figure, result.measure, unit)}"
        return f"{said} ({limit})" if limit else said

    line = "; ".join(map(told, answer.results))
    return escape(f"{line[0].upper()}{line[1:]}.")


def _granted(answer: SpanAnswer) -> str:
    """What was taken for granted, in a line."""
    notes = dict.fromkeys(note for each in answer.results for note in each.notes)
    return escape(f"Taken for granted: {'; '.join(notes)}.")


def _rests_on(answer: SpanAnswer, *, formulas: bool) -> str:
    """How many works it rests on, how many of them are from memory, and where to see them."""
    works = works_of([StrengthRow("", each) for each in answer.results])
    remembered = sum(told != work for work, told in works.items())
    told = f"Sources: {len(works)}, {remembered} of them from memory, in whole or in part"
    if formulas:
        return f"{told}: look those up where it matters."
    return f"{told}; --formulas gives formula, inputs and source of each figure."


def _remedies(answer: SpanAnswer) -> Iterator[str]:
    """What would do, by the result that fails most."""
    failing = [each for each in answer.results if not each.holds]
    if not failing:
        return
    worst = min(failing, key=lambda each: each.spare or 0.0)
    for remedy in worst.remedies:
        told = remedy_text(remedy, worst.measure, answer.question.unit)
        yield escape(f"  would do: {told} ({worst.what})")


def _answer(answer: SpanAnswer) -> tuple[str, str]:
    question, unit = answer.question, answer.question.unit

    def length(mm: float) -> str:
        return f"{format_length(mm, unit)} {unit}"

    carries = (
        f"{format_weight(answer.total, unit)} ({RUN_WEIGHTS[unit].said(answer.row)}, "
        f"{AREA_WEIGHTS[unit].said(answer.row / question.depth * 1000)})"
    )
    # What is said to be enough has to be enough.
    thick = length(
        at_least(answer.thickness, unit) if question.wanted == "thickness" else answer.thickness
    )
    shelf = (
        f"{escape(question.board)}, {thick} thick, "
        f"{length(question.depth)} deep, ends {question.ends}"
    )
    match question.wanted:
        case "span" if answer.endless:
            found = f"Greatest span: more than {length(at_most(answer.span, unit))}"
        case "span":
            found = f"Greatest span: {length(at_most(answer.span, unit))}"
        case "load":
            found = f"Greatest load: {carries}"
        case "thickness":
            found = f"Least thickness: {thick}"
        case _:
            found = "It holds" if answer.holds else "[red]It doesn't hold[/red]"
    over = "" if question.wanted == "span" else f" over {length(answer.span)}"
    under = "" if question.wanted == "load" else f", under {carries}"
    limits = f" {answer.governs.capitalize()} limits it."
    return (f"[bold]{found}[/bold]", f"{shelf}{over}{under}.{limits}")
