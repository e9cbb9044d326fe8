"""The pack for a CNC shop: parts, nested sheets and a page for the shop in one zip."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TYPE_CHECKING

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Finding
from rodwright.cutting.rack import Rack
from rodwright.handover.output import look_before, whole_or_nothing
from rodwright.handover.stamp import time_stamp
from rodwright.jobs.cut import Asked, cut
from rodwright.lengths import format_length, parse_length
from rodwright.problems import Problem, ProblemsError
from rodwright.setout import set_out
from rodwright.trade.machining import LEAST_TOOL, MOST_TOOL
from rodwright.unit import Unit
from rodwright.unit.laid import laid_unit
from rodwright.wishes import SpecFile

if TYPE_CHECKING:
    from rodwright.cnc.nested import NestedSheet
    from rodwright.cnc.part_shapes import PartShapes

__all__ = ["CncPack", "cnc"]

ZIP = "cnc.zip"


@dataclass(frozen=True, slots=True)
class CncPack:
    """What was made: the unit, the folder that holds ``cnc.zip``, the names of the files in that,
    how many sheets are nested, what the checks found, and why no sheets could be nested (empty
    where they are)."""

    unit: Unit
    folder: Path
    files: tuple[str, ...]
    sheets: int
    findings: tuple[Finding, ...]
    no_plan: tuple[str, ...] = ()


def cnc(
    spec: SpecFile,
    folder: Path | str,
    *,
    rack: Rack | None = None,
    tool: str | None = None,
    progress: Callable[[str], object] = lambda _: None,
) -> CncPack:
    """Check a unit and write ``cnc.zip`` for a CNC shop into a folder.

    ``rack`` is what is at hand, as for :func:`rodwright.cut`; ``tool`` the diameter of the cutter
    that sheets are nested for, as makers write it (None: the rack's router, else a usual one).
    Findings stop nothing: the page for the shop says that a unit with errors isn't to be cut.
    Where no plan can be made the pack has no sheets, and says why.

    Raises:
        ProblemsError: the spec makes no unit, ``tool`` is no diameter, Typst isn't installed, the
            folder can't be written, or something of the user's is in the way; nothing is written
            then.
        ValueError: the workings of a part leave no single solid.
    """
    from rodwright.cnc.pack import MANIFEST, manifest, pack_files, zipped
    from rodwright.cnc.part_shapes import part_shapes
    from rodwright.cnc.shop_page import Contents
    from rodwright.handover.families import CNC_FILES, beside
    from rodwright.handover.products import products
    from rodwright.paper.typesetting import refuse_without_typst

    target, others = Path(folder), beside(CNC_FILES)
    # Refuse before the work rather than after it.
    refuse_without_typst()
    unit = set_out(spec)
    _refuse_tool(tool, unit)
    when = datetime.fromisoformat(time_stamp(unit))
    look_before(target, ours=CNC_FILES, beside=others, again=CNC_FILES.fullmatch)
    laid = laid_unit(unit)
    progress("building solids and looking for collisions")
    findings = (*check_parts(unit), *check_solids(laid))
    progress("drawing parts")
    drawn = tuple(part_shapes(each) for each in products(laid, "cut"))
    progress("nesting sheets")
    sheets, cutter, no_plan = _nested(spec, rack, tool, drawn)
    progress("writing the pack")
    files = pack_files(Contents(laid, drawn, sheets, cutter, no_plan, findings), when)
    files[MANIFEST] = manifest(laid, files)
    with whole_or_nothing(
        target, ours=CNC_FILES, beside=others, again=CNC_FILES.fullmatch
    ) as staging:
        (staging / ZIP).write_bytes(zipped(files, when))
    return CncPack(laid, target, tuple(sorted(files)), len(sheets), findings, no_plan)


def _nested(
    spec: SpecFile, rack: Rack | None, tool: str | None, drawn: tuple[PartShapes, ...]
) -> tuple[tuple[NestedSheet, ...], float, tuple[str, ...]]:
    """Nested sheets and the tool that they are nested for, or why there are none."""
    from rodwright.cnc.nested import nested_sheets
    from rodwright.handover.cut_sequence import steps_of

    try:
        plan = cut([spec], rack=rack, asked=Asked(free=True, kerf=tool))
    except ProblemsError as error:
        return (), 0.0, tuple(each.message for each in error.problems)
    by_ref = {piece.ref: each for each in drawn for piece in each.product.shop.pieces}
    return nested_sheets(steps_of(plan), by_ref), plan.rules.between, ()


def _refuse_tool(tool: str | None, unit: Unit) -> None:
    """Refuse what is no diameter of a cutter.

    Raises:
        ProblemsError: it can't be read, or sheets aren't cut with such a one.
    """
    if tool is None:
        return
    measure = unit.display_unit
    plain, other = ("1/4", "6 mm") if measure == "in" else ("6", "1/4 in")
    remedy = f'Write it like `--tool {plain}`, or with its unit: `--tool "{other}"`.'
    try:
        diameter = parse_length(tool, measure)
    except ValueError as error:
        raise ProblemsError([Problem(f"--tool: {error}", remedy)]) from None
    if not LEAST_TOOL <= diameter <= MOST_TOOL:
        least, most = (
            f"{format_length(each, measure)} {measure}" for each in (LEAST_TOOL, MOST_TOOL)
        )
        raise ProblemsError(
            [Problem(f"--tool: sheets are cut with tools from {least} to {most}", remedy)]
        )
