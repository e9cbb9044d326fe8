"""The job book: all that the bench needs, as one PDF, with files of its parts beside it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from datetime import datetime
from functools import cached_property
from pathlib import Path
from typing import TYPE_CHECKING

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding
from rodwright.cutting.rack import Rack
from rodwright.cutting.whole import Cutting
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.handover.stamp import time_stamp
from rodwright.jobs.cut import cut
from rodwright.jobs.survey import survey
from rodwright.opening.sheet import SurveySheet
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile

if TYPE_CHECKING:
    from rodwright.making.steps import Order
    from rodwright.paper.drawings.layout import DrawnSheet
    from rodwright.paper.sections import Section
    from rodwright.trade.label_sheets import LabelSheet, Paper

__all__ = ["Book", "book"]


@dataclass(frozen=True, slots=True)
class Book:
    """What was made: the unit, the folder, the files in it (relative, sorted), what the checks
    found, why there is no cutting plan (empty where there is one), and what the fonts lack."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]
    findings: tuple[Finding, ...]
    no_plan: tuple[str, ...] = ()
    lacking: str = ""


@dataclass(frozen=True)
class _Content:
    """What sections are made of."""

    unit: Unit
    findings: tuple[Finding, ...]
    cutting: Cutting | None
    no_plan: tuple[str, ...]
    paper: Paper
    labels: LabelSheet
    when: datetime
    progress: Callable[[str], object]
    survey: SurveySheet | None

    @cached_property
    def order(self) -> Order:
        """The order in which the unit goes together."""
        from rodwright.making.order import order_of

        return order_of(self.unit)

    @cached_property
    def assembly(self) -> tuple[Section, ...]:
        """The steps at the bench, fitting and finishing."""
        from rodwright.paper.steps.files import assembly_sections

        return assembly_sections(self.unit, self.order, self.survey)

    @cached_property
    def drawn(self) -> tuple[DrawnSheet, ...]:
        """The drawings, on the book's paper."""
        from rodwright.paper.book.whole import drawing_papers
        from rodwright.paper.drawings.layout import drawn_sheets

        return drawn_sheets(self.unit, drawing_papers(self.paper))


def book(
    spec: SpecFile,
    folder: Path | str,
    *,
    paper: Paper | None = None,
    rack: Rack | None = None,
    labels: str | None = None,
    progress: Callable[[str], object] = lambda _: None,
) -> Book:
    """Check a unit and write its job book: ``book.pdf``, and files for single uses in ``book/``.

    ``paper`` is that of the pages; unless said A4, or for a maker in inches Letter.  ``rack`` is
    what is at hand, as for :func:`rodwright.cut`; ``labels`` names a sheet of labels.

    Findings stop nothing: they come first in the book, and the cover says that a unit with errors
    isn't to be cut; where no cutting plan can be made, its page says why.  Whole or not at all; a
    folder that holds a build or a plan keeps it.

    Raises:
        ProblemsError: the spec makes no unit, Typst isn't installed, the folder can't be written,
            or something of the user's is in the way; nothing is written then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.handover.families import BOOK_FILES, beside
    from rodwright.paper.book.whole import usual_paper
    from rodwright.paper.typesetting import refuse_without_typst

    target, others = Path(folder), beside(BOOK_FILES)
    # Refuse before the work rather than after it.
    refuse_without_typst()
    unit = set_out(spec)
    when = datetime.fromisoformat(time_stamp(unit))
    printed = paper or usual_paper(unit)
    sheet = _label_sheet(printed, labels)
    look_before(target, ours=BOOK_FILES, beside=others, again=BOOK_FILES.fullmatch)
    laid = laid_unit(unit)
    progress("building solids and looking for collisions")
    findings = (*check_parts(unit), *check_solids(laid))
    progress("planning what is cut")
    cutting, no_plan = _planned(spec, rack)
    surveyed = survey(spec) if unit.opening is not None else None
    content = _Content(laid, findings, cutting, no_plan, printed, sheet, when, progress, surveyed)
    pdf, lacking = _pages(content)
    with whole_or_nothing(
        target, ours=BOOK_FILES, beside=others, again=BOOK_FILES.fullmatch
    ) as staging:
        (staging / "book.pdf").write_bytes(pdf)
        for name, data in _files(content).items():
            path = staging / name
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(data)
        names = (path.relative_to(staging) for path in staging.rglob("*") if path.is_file())
        files = tuple(sorted(name.as_posix() for name in names))
    return Book(laid, target, files, findings, no_plan, lacking)


def _label_sheet(paper: Paper, name: str | None) -> LabelSheet:
    """The sheet that labels are printed on.

    Raises:
        ProblemsError: that paper has none of the name.
    """
    from rodwright.trade.label_sheets import LABEL_SHEETS, label_sheet

    try:
        return label_sheet(paper, name)
    except KeyError:
        known = ", ".join(f'"{each.name}"' for each in LABEL_SHEETS if each.paper == paper)
        told = Problem(f"--labels: there is no sheet of labels called `{name}`", f"Say {known}.")
        raise ProblemsError([told]) from None


def _planned(spec: SpecFile, rack: Rack | None) -> tuple[Cutting | None, tuple[str, ...]]:
    """A cutting plan, or why there is none."""
    try:
        return cut([spec], rack=rack), ()
    except ProblemsError as error:
        return None, tuple(str(each) for each in error.problems)


def _pages(content: _Content) -> tuple[bytes, str]:
    """The book, and what its fonts lack."""
    from rodwright.paper.book.cover import cover_data
    from rodwright.paper.book.letters import letters_said
    from rodwright.paper.book.whole import book_pdf
    from rodwright.paper.typesetting import without_font
    from rodwright.pictures.all_views import assembled
    from rodwright.pictures.raster import Raster

    unit = content.unit
    lacking = letters_said(without_font(_written(unit)))
    content.progress("drawing the unit assembled")
    with Raster() as raster:
        picture = assembled(unit, raster).jpeg()
    cover = cover_data(unit, content.findings, picture, [lacking] if lacking else [])
    sections = tuple(_sections(content))
    content.progress("setting the pages")
    return book_pdf(unit, cover, sections, content.paper, content.when), lacking


def _written(unit: Unit) -> str:
    """All that a maker wrote and that is printed."""
    words = (unit.title, unit.author, unit.organisation, unit.number, unit.revision)
    stocks = {part.blank.stock for part in unit.parts}
    names = (each for stock in stocks for each in (stock.name, stock.described))
    return "".join((*words, unit.approved_by, *names, *unit.services))


def _sections(content: _Content) -> Iterator[Section]:
    """The sections in the order of the work."""
    from rodwright.paper.book.buying import buying_section
    from rodwright.paper.book.cautions import cautions_section
    from rodwright.paper.book.cutting import cutting_section, no_plan_section
    from rodwright.paper.book.parts import parts_section
    from rodwright.paper.book.strength import strength_section
    from rodwright.paper.book.whole import SIZES, lying
    from rodwright.paper.drawings.section import drawings_section
    from rodwright.paper.lists.section import lists_section
    from rodwright.paper.part_sheets.section import part_sheets_section
    from rodwright.paper.rods.section import rods_section

    unit, cutting = content.unit, content.cutting
    yield cautions_section(content.findings)
    yield parts_section(unit, *_pictures(content))
    content.progress("drawing views, sections and details")
    yield drawings_section(unit, content.drawn)
    if (strength := strength_section(unit)) is not None:
        yield strength
    yield buying_section(unit, cutting)
    content.progress("drawing sheets and boards")
    if cutting is not None:
        yield cutting_section(cutting, lying(content.paper))
    else:
        yield no_plan_section(content.no_plan)
    yield lists_section(unit, cutting)
    content.progress("setting out rods")
    yield rods_section(unit)
    content.progress("drawing a sheet for each distinct part")
    yield part_sheets_section(unit, SIZES[content.paper][::-1])
    content.progress("looking for the order of assembly, and drawing its steps")
    yield from content.assembly


def _pictures(content: _Content) -> tuple[dict[str, bytes], dict[str, bytes]]:
    """Pictures of the unit as it stands, open, and of it taken apart, by what they show."""
    from rodwright.pictures.all_views import detail_apart, open_view, taken_apart
    from rodwright.pictures.details import details
    from rodwright.pictures.raster import Raster

    unit, standing, apart = content.unit, dict[str, bytes](), dict[str, bytes]()
    with Raster() as raster:
        if unit.motions:
            content.progress("drawing the unit with its doors and drawers open")
            standing["Doors and drawers open"] = open_view(unit, raster).jpeg()
        content.progress("drawing the exploded view")
        apart["Taken apart"] = taken_apart(unit, raster).jpeg()
        for detail in details(unit):
            content.progress(f"drawing {detail.about} taken apart")
            about = f"{detail.about[0].upper()}{detail.about[1:]}, taken apart"
            apart[about] = detail_apart(unit, detail, raster).jpeg()
    return standing, apart


def _files(content: _Content) -> dict[str, bytes]:
    """The files beside the book, by their names."""
    from rodwright.paper.book.whole import SIZES
    from rodwright.paper.drawings.section import drawing_files
    from rodwright.paper.lists.labels import label_texts, labels_pdf
    from rodwright.paper.part_sheets.section import part_sheet_files
    from rodwright.paper.rods.files import rod_files
    from rodwright.paper.steps.files import assembly_files

    unit = content.unit
    content.progress("setting rods")
    files = rod_files(unit, content.paper) | drawing_files(unit, content.drawn, content.when)
    content.progress("setting part sheets")
    alone = part_sheet_files(unit, content.when, SIZES[content.paper][::-1])
    files |= {f"book/{name}": data for name, data in alone.items()}
    content.progress("setting the steps of assembly")
    files |= assembly_files(unit, content.order, content.assembly, content.paper)
    content.progress("setting labels")
    texts = label_texts(unit, unit.number, content.cutting)
    files["book/labels.pdf"] = labels_pdf(texts, content.labels, unit.title, content.when)
    return files
