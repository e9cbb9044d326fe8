"""The cuts in their order, in words."""

from __future__ import annotations

import csv
import io
import re
from dataclasses import replace

from kit.cuttings import cutting, offer, sheet_lot, sheet_plan
from rodwright.cutting.plans import Layout, Placed, Plan
from rodwright.cutting.saws import Saw
from rodwright.cutting.steps import LotSteps, Step
from rodwright.cutting.whole import Cutting, Rules
from rodwright.cutting.work import LotPlan
from rodwright.handover.cut_sequence import (
    crosscut_table,
    cuts_table,
    rip_table,
    sequence_text,
    steps_of,
)
from rodwright.handover.cut_tables import Table
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
    lines = [line for line in _page(plan).splitlines() if re.match(r"[0-9]+\. ", line)]
    assert len(lines) == len(_steps(steps)) == len(cuts_table(steps, "mm").rows)


def test_rips_and_crosscuts_are_counted_by_their_settings() -> None:
    steps = steps_of(cutting())
    rips, crosscuts = (_rows(each(steps, "mm")) for each in (rip_table, crosscut_table))
    cuts = sum(len(sheet.steps) * len(sheet.numbers) for each in steps for sheet in each.sheets)
    assert sum(int(row["times"]) for row in (*rips, *crosscuts)) == cuts
    assert {row["cut"] for row in rips} == {"rip", "rip, carried"}
    assert {row["setting mm"] for row in crosscuts} == {"2000", "800", "720"}
    # Numbers in the workbook, so that they sort.
    cells = [row[1] for row in crosscut_table(steps_of(cutting()), "mm").rows]
    assert all(isinstance(each, int | float) for each in cells if each != "")
    assert all(row["what is cut"] for row in (*rips, *crosscuts))


def test_a_cut_says_what_is_set_and_what_it_leaves() -> None:
    plan = cutting()
    page, kept = _page(plan), plan.kept[0].name
    assert (
        "1. sheet 1, 2440 x 1220, 36.4 kg: rip **603** (face edge, factory; 614 from the back "
        "edge). 1, 2440 x 603; "
        f"offcut {kept}, 2440 x 614: to the rack. Heavy: 3 people; carried: a saw is brought "
        "to it.\n"
    ) in page
    assert (
        "3. 1.1, 2440 x 300: crosscut **2000** (near end, factory). 2000 x 300: done, "
        "write SD1; offcut"
    ) in page


def test_equal_boards_are_told_once() -> None:
    page = _page(cutting())
    assert "### Length 1-2: beech 45, 2000 (2 lengths like this)" in page
    assert page.count("### Length") == 1
    assert "### Sheet 1: ply 2440 x 1220\n" in page
    assert "none can take less than 3.9 m; fence and stop are set once in all." in page
    assert "720: done, write LG1 and LG2" in page


def test_the_page_begins_with_what_to_take_care_of() -> None:
    page = _page(cutting())
    assert page.count("riving knife") == 1
    assert page.index("riving knife") < page.index("## birch plywood, 18 mm")
    assert "Table saw, kerf 3 mm; measured from the edge that is named" in page


def test_a_router_gets_contours_and_no_settings() -> None:
    router = Rules(Saw(kerf=3.0), Saw("router", kerf=3.0), spacing=5.0)
    plan = cutting(sheet_plan(), rules=router)
    page, steps = _page(plan), steps_of(plan)
    assert "Sheets by a router, tool 3 mm, 5 mm between pieces" in page
    assert "fence and stop" not in page and "saw, kerf" not in page
    assert page.count("write S") == 3
    for sheet in steps[0].sheets:
        for _, names in sheet.kept:
            assert all(name in page for name in names)
    assert rip_table(steps, "mm").rows == crosscut_table(steps, "mm").rows == ()


def test_what_needs_no_cut_says_so() -> None:
    lot = sheet_lot(offer("just", 800.0, 279.0, price=1.0))
    lot = replace(lot, pieces=lot.pieces[1:])
    whole = Layout("just", (Placed("SH1", 0.0, 0.0, 800.0, 279.0),))
    plan = cutting(LotPlan(lot, Plan((whole,), 1.0, 1.0, proven=True, kerf=3.0)))
    assert "No cut: it is SH1 as it stands." in _page(plan)


def test_refs_keep_their_capitals() -> None:
    plan = replace(cutting(), unit="in")
    assert "78 47/64 x 11 13/16: done, write SD1" in _page(plan)
