"""The cuts in their order, in words."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

from kit.cuttings import cutting, sheet_plan
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import LotSteps, Step
from rodwright.cutting.whole import Cutting, Rules
from rodwright.handover.cut_sequence import (
    crosscut_table,
    cuts_table,
    rip_table,
    sequence_text,
    steps_of,
)
from rodwright.handover.cut_tables import Table
from rodwright.handover.step_words import numbers_said
from rodwright.handover.tables import csv_bytes


def _rows(table: Table) -> list[dict[str, str]]:
    text = csv_bytes(table.columns, table.rows).decode("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text)))


def _steps(steps: tuple[LotSteps, ...]) -> list[Step]:
    return [step for each in steps for sheet in each.sheets for step in sheet.steps]


def _page(plan: Cutting) -> str:
    return sequence_text(plan, steps_of(plan))


def test_every_cut_stands_in_the_page_and_in_the_table() -> None:
    plan = cutting()
    steps = steps_of(plan)
    lines = [line for line in _page(plan).splitlines() if ". **" in line]
    assert len(lines) == len(_steps(steps)) == len(cuts_table(steps, "mm").rows)


def test_rips_and_crosscuts_are_told_once_each() -> None:
    steps = steps_of(cutting())
    rips, crosscuts = rip_table(steps, "mm"), crosscut_table(steps, "mm")
    assert len(rips.rows) + len(crosscuts.rows) == len(_steps(steps))
    assert {row["cut"] for row in _rows(rips)} == {"rip"}
    assert {row["from"].split(" (")[0] for row in _rows(rips)} <= {"face edge", "back edge"}


def test_a_cut_says_what_is_set_and_what_lies_on_either_side() -> None:
    plan = cutting()
    page, kept = _page(plan), plan.kept[0].name
    assert (
        "1. **Rip 603** from the face edge (factory) of sheet 1 (2440 x 1220): sheet 1 (2440 x "
        f"603); beyond the blade keep {kept} (2440 x 614). 36 kg: bring the saw to it, along a "
        "track or a straightedge; the rest is 614 from the back edge.\n"
    ) in page
    assert "**Crosscut 2000** from the near end (factory) of 1.1 (2440 x 300): SD1 done" in page
    assert "(2000 x 300); beyond the blade keep" in page


def test_equal_boards_are_told_once() -> None:
    page = _page(cutting())
    assert "### Length 1-2: beech 45, 2000 (2 lengths like this)" in page
    assert page.count("### Length") == 1
    assert "### Sheet 1: ply 2440 x 1220\n" in page
    assert "(bound 3.9 m); fence and stop are set once in all." in page
    assert "LG1, LG3 done (720)" in page or "LG1, LG2 done (720)" in page


def test_the_page_begins_with_what_to_take_care_of() -> None:
    page = _page(cutting())
    assert page.count("Take care:") == 1
    assert page.index("Take care:") < page.index("## birch plywood, 18 mm")
    assert "Table saw, kerf 3 mm; measured from" in page


def test_a_saw_that_is_too_small_is_told() -> None:
    small = Rules(Saw(kerf=3.0, rip=250.0, lift=100.0))
    page = _page(cutting(sheet_plan(), rules=small))
    assert "Too large for this saw: bring one to it, along a track or a straightedge" in page


def test_notes_keep_their_refs() -> None:
    plan = replace(cutting(), unit="in")
    assert "SD1 done (78 47/64 x 11 13/16)" in _page(plan)


def test_numbers_in_runs() -> None:
    assert numbers_said((1,)) == "1"
    assert numbers_said((1, 2, 3, 5, 7, 8)) == "1-3, 5, 7-8"
