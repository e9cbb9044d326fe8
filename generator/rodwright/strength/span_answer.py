"""The answer to a question about one plain shelf: its span, its load or its thickness."""

from __future__ import annotations

from dataclasses import dataclass

from rodwright.amounts import GRAVITY
from rodwright.strength.plain_board import UnanswerableError
from rodwright.strength.results import Result
from rodwright.strength.span import (
    LONGEST,
    SHORTEST,
    THICKEST,
    Carried,
    greatest_load,
    greatest_span,
    least_thickness,
    trial,
)
from rodwright.strength.span_question import Question, carried_by
from rodwright.strength.span_results import span_results
from rodwright.trade.sources import Source

__all__ = ["SpanAnswer", "answer"]


@dataclass(frozen=True)
class SpanAnswer:
    """The question with what was asked for filled in: span and thickness (mm), what it carries
    (``row`` kg/m, ``total`` kg), which limit governs, and the figures.

    ``endless``: it still holds over the longest span that is looked for.
    """

    question: Question
    thickness: float
    span: float
    row: float
    total: float
    governs: str
    endless: bool
    results: tuple[Result, ...]

    @property
    def holds(self) -> bool:
        """Whether it is within every limit."""
        return all(each.holds for each in self.results)

    @property
    def from_memory(self) -> tuple[Source, ...]:
        """The sources in it that were not looked up."""
        found = (source for each in self.results for source in each.from_memory)
        return tuple(dict.fromkeys(found))


def answer(question: Question) -> SpanAnswer:
    """The greatest span or load, the least thickness, or whether it holds.

    Raises:
        UnanswerableError: no shelf does, or its stiffness isn't known.
    """
    carried = carried_by(question.burden) if question.burden else Carried()
    thickness = question.thickness or _thickness(question, carried)
    plank = question.plank(thickness)
    if plank is None:
        raise UnanswerableError(
            f"it isn't known how stiff {question.board} is {thickness:g} mm thick",
            'Give its modulus of elasticity: `--e "9300 N/mm2"`.',
        )
    found = question.span or greatest_span(plank, carried, question.limit)
    if found == 0:
        raise UnanswerableError(
            f"it doesn't hold over as little as {SHORTEST:g} mm",
            "Take a thicker board or less load.",
        )
    span = LONGEST if found is None else found
    if question.burden is None:
        row = greatest_load(plank, span, question.limit)
        if row is None:
            raise UnanswerableError(
                "it doesn't hold under its own weight", "Take a shorter span or a thicker board."
            )
        carried = Carried(row=row)
    tried = trial(plank, carried, span, question.limit)
    total = tried.carried / GRAVITY
    return SpanAnswer(
        question,
        thickness,
        span,
        total / span * 1000,
        total,
        tried.governs,
        found is None,
        span_results(question, plank, carried, tried),
    )


def _thickness(question: Question, carried: Carried) -> float:
    assert question.span is not None
    found = least_thickness(question.plank, carried, question.span, question.limit)
    if found is None:
        raise UnanswerableError(
            f"no thickness up to {THICKEST:g} mm holds",
            "Take a shorter span, or a divider half-way.",
        )
    return found
