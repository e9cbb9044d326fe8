"""A quote, written whole or not at all."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding, Severity
from rodwright.cutting.rack import Rack
from rodwright.handover.json_text import json_text
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.handover.stamp import time_stamp
from rodwright.jobs.quote.pictures import Pictures, shown
from rodwright.jobs.quote.ways import Way, letter_of, ways_of, without_plan
from rodwright.jobs.rates import refuse_other_currency
from rodwright.jobs.way_in import way_in
from rodwright.quote.costing import Costing, cost
from rodwright.quote.levers import Lever, levers_of
from rodwright.quote.rates import Rates
from rodwright.unit import Unit
from rodwright.way.answer import WayInAnswer
from rodwright.wishes import SpecFile
from rodwright.wishes.reading.options import option_specs

if TYPE_CHECKING:
    from rodwright.trade.label_sheets import Paper

_PDF, _XLSX, _JSON = "quote.pdf", "costing.xlsx", "quote.json"


@dataclass(frozen=True, slots=True)
class Quoted:
    """What was made: the unit, the folder, the files in it (relative, sorted), what the checks
    found, the costing of the unit and of each of its options, and by option what changes its price
    most.  ``no_plan`` says why stock is counted by area (empty where there is a cutting
    plan), ``no_photograph`` why the unit is drawn although a photograph is wanted."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]
    costings: tuple[Costing, ...]
    levers: Mapping[str, tuple[Lever, ...]]
    rates: Rates
    no_plan: tuple[str, ...] = ()
    no_photograph: str = ""

    @property
    def missing(self) -> tuple[str, ...]:
        """Every price that nobody gave, each once."""
        return tuple(dict.fromkeys(each for one in self.costings for each in one.missing))


def quote(
    spec: SpecFile,
    rates: Rates,
    folder: Path | str,
    *,
    rack: Rack | None = None,
    pictures: Pictures = "photographs",
    paper: Paper | None = None,
    progress: Callable[[str], object] = lambda _: None,
) -> Quoted:
    """Cost a unit and each of its options; write ``quote.pdf`` for the client, and for the maker
    ``costing.xlsx`` and ``quote.json``.  Whole or not at all.

    ``rack`` is what is at hand, as for :func:`rodwright.cut`; ``paper`` that of the pages (unless
    said A4, or for a maker in inches Letter).  A photograph in the folder that shows the unit as it
    is now is taken; where there is none it is made, unless ``pictures`` are to be drawings.  While
    a price is missing or the unit has errors the quote says that it is a draft; without all prices
    it has no total.

    Raises:
        ProblemsError: the spec or an option makes no unit, its prices are in another currency than
            the rates, Typst isn't installed, the folder can't be written, or something of the
            user's is in the way; nothing is written then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.handover.families import QUOTE_FILES, beside
    from rodwright.paper.book.whole import usual_paper
    from rodwright.paper.typesetting import refuse_without_typst
    from rodwright.quote.page import Offered, Quotation, quote_pdf
    from rodwright.quote.quote_json import quote_document
    from rodwright.quote.workbook import costing_workbook

    target, others = Path(folder), beside(QUOTE_FILES)
    # Refuse before the work rather than after it.
    refuse_without_typst()
    for _, each in option_specs(spec):
        refuse_other_currency(each, rack, rates)
    look_before(target, ours=QUOTE_FILES, beside=others, again=QUOTE_FILES.fullmatch)
    progress("planning what is cut, and counting what is done")
    ways = ways_of(spec, rates, rack)
    unit = ways[0].unit
    when = datetime.fromisoformat(time_stamp(unit))
    costings = tuple(cost(each.takings, rates, each.name) for each in ways)
    levers = {each.name: levers_of(each.takings, rates) for each in ways}
    progress("building solids and looking for collisions")
    findings = _findings(ways)
    images, no_photograph = shown([each.unit for each in ways], target, pictures, progress)
    progress("setting the pages")
    quotation = Quotation(
        tuple(
            Offered(way.unit, costing, image, way.note)
            for way, costing, image in zip(ways, costings, images, strict=True)
        ),
        letter_of(spec),
        rates,
        errors=sum(each.severity is Severity.ERROR for each in findings),
        way=_way_in(unit),
        photograph=pictures == "photographs" and not no_photograph,
    )
    with whole_or_nothing(
        target, ours=QUOTE_FILES, beside=others, again=QUOTE_FILES.fullmatch
    ) as staging:
        pdf = quote_pdf(quotation, paper or usual_paper(unit), when)
        (staging / _PDF).write_bytes(pdf)
        book = costing_workbook(unit.title, costings, levers, rates, unit.display_unit)
        (staging / _XLSX).write_bytes(book)
        document = quote_document(unit.title, costings, levers, rates)
        (staging / _JSON).write_bytes(json_text(document))
    return Quoted(
        unit,
        target,
        (_XLSX, _JSON, _PDF),
        findings,
        costings,
        levers,
        rates,
        without_plan(ways),
        no_photograph,
    )


def _findings(ways: Iterable[Way]) -> tuple[Finding, ...]:
    """What the checks find in the unit and its options, each once."""
    found = (
        finding for way in ways for finding in (*check_parts(way.unit), *check_solids(way.unit))
    )
    return tuple({(each.rule, each.message): each for each in found}.values())


def _way_in(unit: Unit) -> WayInAnswer | None:
    return way_in(unit) if unit.way_in is not None else None
