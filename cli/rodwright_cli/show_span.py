"""How a span, a load or a thickness is shown: the answer, then all that it was worked out from."""

from __future__ import annotations

from collections.abc import Iterator

from rich.markup import escape

from rodwright.amounts import AREA_WEIGHTS, RUN_WEIGHTS, format_weight
from rodwright.handover.strength_list import StrengthRow, remedy_text
from rodwright.lengths import at_least, at_most, format_length
from rodwright.strength.span_answer import SpanAnswer
from rodwright_cli.console import PlainConsole
from rodwright_cli.show_strength import NO_ENGINEER, whole


def span(answer: SpanAnswer) -> None:
    """The answer in a line or two, then every figure with formula, inputs and sources."""
    console = PlainConsole()
    question, unit = answer.question, answer.question.unit
    for line in (*_answer(answer), *_remedies(answer)):
        console.print(line)
    console.print()
    for result in answer.results:
        whole(console, StrengthRow(f"shelf of {question.board}", result), unit)
    if answer.from_memory:
        console.print("\nFigures that are from memory say so: look them up where it matters.")
    console.print(f"\n{NO_ENGINEER}")


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
