"""One figure of how a unit stands: the trials that it comes from, of which the worst counts."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from rodwright.geometry import Vector
from rodwright.strength.balance import Asked, Held, Stand, Tips
from rodwright.strength.results import Group, Input, Result
from rodwright.strength.steadying import Means
from rodwright.trade.sources import Source
from rodwright.trade.stability import CARPET, STATICS

PRESSED = "F = W (x cos a - z sin a) / f"
"""The load on an edge under which it falls."""


@dataclass(frozen=True, slots=True)
class Row:
    """A figure to be worked out: trials, of which the worst counts, and what it has to reach."""

    what: str
    asked: Asked
    measure: str = "kg"
    formula: str = PRESSED
    subject: str = ""
    parts: tuple[str, ...] = ()
    source: Source | None = None
    edges: tuple[Vector, ...] = ()
    given: tuple[Input, ...] = ()
    notes: tuple[str, ...] = ()
    alone: Asked | None = None

    def result(self, unit: str, means: Means, on_carpet: Stand) -> Result:
        """The figure, with what would help where it falls short; ``unit`` is what the whole is
        called."""
        asked, feet = self.asked, self.asked.stand.feet
        tips = asked.worst()
        figure, notes = asked.told(tips)
        return Result(
            Group.STABILITY,
            self.subject or unit,
            self.parts,
            self.what,
            figure,
            None if figure is None else asked.limit,
            self.measure,
            self.formula,
            STATICS,
            (
                *_inputs(tips, asked.stand, on_carpet),
                *_out(tips, asked.stand, self.edges),
                *self.given,
            ),
            at_least=True,
            limit_source=self.source,
            lacking=notes[0] if figure is None else "",
            notes=(
                *self.notes,
                *notes,
                f"it stands on {feet.what}, and would fall {tips.line.way}",
            ),
            remedies=() if asked.stands else tuple(means.remedies(asked, self.alone)),
        )


def by_filling(states: Sequence[Held], loaded: str) -> Iterator[tuple[str, list[Held]]]:
    """States that are empty, and those that aren't, each with what that is called."""
    for filled, is_loaded in (("empty", False), (loaded, True)):
        if some := [each for each in states if each.loaded is is_loaded]:
            yield filled, some


def _inputs(tips: Tips, stand: Stand, on_carpet: Stand) -> Iterator[Input]:
    lot, line = tips.lot, tips.line
    carpet = CARPET.source if stand == on_carpet else None
    yield Input("W", "weight of it all", lot.mass, "kg")
    yield Input("x", "from the line it falls over to its centre", line.inside(lot.centre), "mm")
    yield Input("z", "height of its centre", lot.centre[2], "mm")
    yield Input("a", "lean of the floor to the front", stand.lean, "degrees", carpet)


def _out(tips: Tips, stand: Stand, edges: Sequence[Vector]) -> Iterator[Input]:
    """How far the edge that is pressed stands out from the line that it falls over."""
    if edges:
        out = max(-tips.line.arm(edge, stand.lean) for edge in edges)
        yield Input("f", "from that line out to the edge that is pressed", out, "mm")
