"""Labels: on the sheet where they belong, and their codes read by a decoder that isn't ours."""

from __future__ import annotations

import io
from dataclasses import replace
from pathlib import Path

import pytest
import zxingcpp
from PIL import Image

import rodwright
from rodwright.paper.lists.labels import LabelText, label_texts, labels_data
from rodwright.paper.typesetting import typeset
from rodwright.trade.label_sheets import LABEL_SHEETS, LabelSheet, label_sheet
from rodwright.unit import Unit

PPI = 150.0


@pytest.fixture(scope="module")
def unit() -> Unit:
    models = Path("models").resolve()
    return rodwright.set_out(rodwright.read_spec(models / "tape-drawers.yaml"))


def pages(texts: tuple[LabelText, ...], sheet: LabelSheet) -> list[Image.Image]:
    made = typeset("labels", *labels_data(texts, sheet, "Tapes"), form="png", ppi=PPI)
    return [Image.open(io.BytesIO(each)) for each in made]


@pytest.mark.parametrize("sheet", LABEL_SHEETS, ids=lambda each: f"{each.paper} {each.name}")
def test_every_code_is_read_on_its_own_label(unit: Unit, sheet: LabelSheet) -> None:
    texts = label_texts(unit, "24-017")
    assert [each.ref for each in texts] == [part.ref for part in unit.parts]
    images = pages(texts, sheet)
    assert len(images) == -(-len(texts) // sheet.count)
    for number, each in enumerate(texts):
        page, at = divmod(number, sheet.count)
        row, column = divmod(at, sheet.across)
        left = sheet.left + column * sheet.pitch_across
        top = sheet.top + row * sheet.pitch_down
        corners = (left, top, left + sheet.width, top + sheet.height)
        label = images[page].crop(tuple(round(mm / 25.4 * PPI) for mm in corners))  # type: ignore[arg-type]
        (code,) = zxingcpp.read_barcodes(label)
        assert code.text == each.code
        assert code.text.split("\n")[0] == each.ref


@pytest.mark.parametrize("sheet", LABEL_SHEETS, ids=lambda each: f"{each.paper} {each.name}")
def test_sheets_are_symmetrical_on_their_paper(sheet: LabelSheet) -> None:
    """Labels lie evenly on a sheet: what is left over is shared by both edges (common practice, no
    source).  A4 is 210 x 297 mm (ISO 216), Letter 8 1/2 x 11 in."""
    wide, high = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}[sheet.paper]
    used = (sheet.across - 1) * sheet.pitch_across + sheet.width
    deep = (sheet.down - 1) * sheet.pitch_down + sheet.height
    assert sheet.left == pytest.approx((wide - used) / 2, abs=0.01)
    assert sheet.top == pytest.approx((high - deep) / 2, abs=0.01)


def test_other_alphabets_and_long_titles_are_read_back(unit: Unit) -> None:
    title = "Полка для плёнок " + "very long " * 40
    texts = label_texts(replace(unit, title=title), "№ 7")
    assert all(each.job.startswith("№ 7 Полка для плёнок") for each in texts)
    found = zxingcpp.read_barcodes(pages(texts[:10], label_sheet("a4"))[0])
    assert {each.text for each in found} == {each.code for each in texts[:10]}


def test_a_label_says_what_is_cut_where_that_differs() -> None:
    spec = rodwright.read_spec(Path("models/reading-alcove.yaml").resolve())
    texts = {
        each.ref: each for each in label_texts(rodwright.set_out(spec), "", rodwright.cut([spec]))
    }
    # A layer of a doubled shelf is cut 3 over all round; sides are cut to their size.
    assert (texts["SH1a"].size, texts["SH1a"].cut) == ("739 x 288 x 18 mm", "745 x 294 mm")
    assert (texts["SD1"].size, texts["SD1"].cut) == ("2020 x 294 x 18 mm", "")


def test_there_is_no_other_sheet() -> None:
    assert label_sheet("letter").name == "4 x 2"
    with pytest.raises(KeyError):
        label_sheet("a4", "4 x 2")
