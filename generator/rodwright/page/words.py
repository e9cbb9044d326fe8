"""What a client is told beside the unit: who made it, what it is of, and what the maker says.

Neither prices nor findings, nothing of the bench, and no address: a page is passed on.
`generator/viewer/src/document.ts` mirrors these words too.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace

from rodwright.page.document import Model, Sections
from rodwright.quote.conditions import at_the_wall
from rodwright.quote.described import facts_of
from rodwright.unit import Unit

_DRAFT = "Draft: this design isn't settled yet."


@dataclass(frozen=True, slots=True)
class Fact:
    """What is told of the unit under one word (size, materials, finish): lines, each with the
    colour (``#rrggbb``) that is shown beside it, or none."""

    word: str
    lines: tuple[tuple[str, str], ...]


@dataclass(frozen=True, slots=True)
class Words:
    """What stands round the unit on a page to send: in the maker's words.

    ``draft`` says that the design isn't settled yet (empty: it is); ``beside`` names the files that
    lie beside the page (GLB, USDZ).  Pictures stand in the page's own markup, for who runs no
    script, and the script takes them from there.
    """

    maker: str = ""
    draft: str = ""
    paragraphs: tuple[str, ...] = ()
    facts: tuple[Fact, ...] = ()
    beside: tuple[str, ...] = ()


def words_of(
    unit: Unit,
    *,
    paragraphs: Sequence[str] = (),
    included: Sequence[str] = (),
    not_included: Sequence[str] = (),
    draft: bool = False,
    beside: Sequence[str] = (),
) -> Words:
    """The words of a page: those of the quote as far as they tell what the piece is, and those of
    the maker as they are (``paragraphs``, and what is ``included`` and what isn't).

    ``beside`` are the names of the files that lie beside the page.
    """
    return Words(
        maker=", ".join(dict.fromkeys(each for each in (unit.author, unit.organisation) if each)),
        draft=_DRAFT if draft else "",
        paragraphs=tuple(paragraphs),
        facts=tuple(_facts(unit, included, not_included)),
        beside=tuple(beside),
    )


def _facts(unit: Unit, included: Sequence[str], not_included: Sequence[str]) -> Iterator[Fact]:
    for fact in facts_of(unit):
        yield Fact(fact.word, tuple((line.said, line.colour) for line in fact.lines))
    to_know = tuple(at_the_wall(unit))
    told = (("Safety", to_know), ("Included", included), ("Not included", not_included))
    for word, lines in told:
        if lines:
            yield Fact(word, tuple((line, "") for line in lines))


def for_client(model: Model, unit: Unit) -> Model:
    """A model without what is for the maker alone: what stocks are called in the workshop, and
    which parts nobody sees, so that they aren't listed."""
    inner = frozenset(part.ref for part in unit.parts if not part.blank.show_surfaces)
    parts = (replace(part, stock="", told=part.ref not in inner) for part in model.parts)
    return replace(model, parts=tuple(parts))


def sections_for_client(sections: Sections) -> Sections:
    """How it comes apart and its dimensions; of each part what it is of and how it is finished, and
    not how it is made or where in the spec it was wished; and nothing else."""
    details = {
        ref: replace(each, edges="", laid=(), workings=(), joined=(), place=None)
        for ref, each in (sections.details or {}).items()
    }
    return Sections(apart=sections.apart, details=details, dimensions=sections.dimensions)
