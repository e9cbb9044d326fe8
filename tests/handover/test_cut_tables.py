"""The lists of a plan, row by row."""

from __future__ import annotations

import csv
import io
from dataclasses import replace

import pytest

from kit.cuttings import cutting, length_plan, sheet_plan
from rodwright.cutting.pieces import Inner, Piece
from rodwright.cutting.supplies import Flaw
from rodwright.handover.cut_tables import (
    Table,
    label_rows,
    labels_table,
    offcuts_table,
    pieces_table,
    shopping_table,
)
from rodwright.handover.tables import csv_bytes


def records(table: Table) -> list[dict[str, str]]:
    """A table as a reader of CSV has it."""
    text = csv_bytes(table.columns, table.rows).decode("utf-8-sig")
    return list(csv.DictReader(io.StringIO(text)))


def test_pieces_that_are_cut_alike_are_a_row() -> None:
    sides, shelf, legs = records(pieces_table(cutting()))
    assert sides == {
        "material": "birch plywood, 18 mm",
        "pieces": "SD1, SD2",
        "part": "Left side; Right side",
        "quantity": "2",
        "cut length mm": "2000",
        "cut width mm": "300",
        "thickness mm": "18",
        "grain": "along its length",
        "finished length mm": "2000",
        "finished width mm": "300",
        "then": "",
    }
    assert (shelf["cut width mm"], shelf["finished width mm"]) == ("279", "280")
    assert (shelf["grain"], shelf["then"]) == ("either way", "edge the front")
    assert (legs["cut width mm"], legs["thickness mm"], legs["quantity"]) == ("45", "45", "4")


def test_a_row_of_fronts_is_listed_by_its_fronts() -> None:
    planned = sheet_plan()
    fronts = tuple(Inner(f"FR{at}", 0.0, 203.0 * at, 500.0, 200.0) for at in (1, 2))
    row = Piece("FR1-FR2", 500.0, 403.0, 1, inner=fronts)
    label = planned.lot.labels["SH1"][0]
    labels = {f"FR{at}": (replace(label, ref=f"FR{at}"),) for at in (1, 2)}
    lot = replace(
        planned.lot, pieces=(*planned.lot.pieces, row), labels=planned.lot.labels | labels
    )
    found = records(pieces_table(cutting(replace(planned, lot=lot))))
    assert found[-1]["pieces"] == "FR1, FR2"
    names = [name for name, _ in label_rows(cutting(replace(planned, lot=lot)))]
    assert names[:5] == ["SD1", "SD2", "SH1", "FR1", "FR2"]


def test_offcuts_by_the_names_that_are_written_on_them() -> None:
    plan = cutting()
    rows = records(offcuts_table(plan))
    assert [row["name"] for row in rows] == [each.name for each in plan.kept]
    assert rows[0]["left of"] == "sheet 1, ply 2440 x 1220"
    assert (rows[-1]["length mm"], rows[-1]["width mm"]) == ("554", "45")


def test_the_shopping_list_and_its_sum() -> None:
    bought, there, lengths, total = records(shopping_table(cutting()))
    assert (bought["from"], bought["each"], bought["sum"]) == ("to buy", "74.0", "74.0")
    assert (there["from"], there["name"], there["sum"]) == ("at hand", "KD7F-3", "")
    assert there["note"] == "behind the door"
    assert (lengths["quantity"], lengths["sum"]) == ("2", "")
    assert lengths["note"] == "no price is known: not in the sum"
    assert (total["from"], total["sum"], total["name"]) == ("total", "74.0", "without tax")
    assert total["note"] == "hardware isn't in it, nor what has no price"
    assert records(shopping_table(cutting(length_plan())))[-1]["sum"] == ""


def test_inches_are_told_as_fractions() -> None:
    row = records(pieces_table(replace(cutting(), unit="in")))[0]
    assert row["cut width in as fraction"] == "11 13/16 in"
    assert row["material"] == "birch plywood, 45/64 in"


def test_a_label_for_each_piece_and_each_offcut_that_is_kept() -> None:
    plan = cutting()
    found = dict(label_rows(plan))
    assert len(found) == 2 + 1 + 4 + len(plan.kept)
    assert found["SH1"] == (
        "Shelf, Bookcase",
        "800 x 280 x 18 mm finished, birch plywood",
        "edge the front",
    )
    assert found[plan.kept[0].name] == (
        "2440 x 614 x 18 mm",
        "birch plywood",
        "offcut: length along the grain",
    )
    rows = records(labels_table(list(label_rows(plan))))
    assert [row["name"] for row in rows] == list(found)


def test_offcuts_with_flaws_say_so_in_the_list_and_on_their_labels() -> None:
    planned = sheet_plan()
    (bought, there) = planned.lot.supplies
    holes = Flaw(100.0, 900.0, 60.0, 60.0, "old screw holes"), Flaw(300.0, 900.0, 9.0, 9.0)
    lot = replace(planned.lot, supplies=(replace(bought, flaws=holes), there))
    plan = cutting(replace(planned, lot=lot))
    flawed, *others = records(offcuts_table(plan))
    assert flawed["note"] == "with 2 flaws: old screw holes"
    assert others and not any(row["note"] for row in others)
    found = dict(label_rows(plan))
    assert found[flawed["name"]][-1] == "with 2 flaws: old screw holes"
    assert "flaw" not in " ".join(found[others[0]["name"]])


@pytest.mark.parametrize("made", [pieces_table, offcuts_table, shopping_table])
def test_every_row_has_a_cell_for_each_column(made: object) -> None:
    table = made(cutting())  # type: ignore[operator]
    assert all(len(row) == len(table.columns) for row in table.rows)
