"""Title blocks: all fields are there, and long titles stay inside and legible."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest
import shapely

from kit.overlaps import inked
from kit.samples import bookcase
from rodwright.pictures.drafting.letters import Written
from rodwright.pictures.drafting.sheets import Place, draw_sheet
from rodwright.pictures.drafting.title_block import (
    WIDTH,
    DraftedBlock,
    TitleBlock,
    draft_block,
    fits_supplement,
    title_block_of,
    title_height,
)
from rodwright.pictures.drafting.views import View

FULL = TitleBlock(
    "Reading alcove",
    "Long dashes: sag",
    "Elevations",
    "2026-14",
    "C",
    "2026-11-26",
    "Carr & Sons",
    "Zoë Carr",
    "Ann Lee",
    (2, 5),
)
SENTENCE = (
    "A cupboard for the landing with seven drawers of falling depth and a tall space for coats "
)
TITLES = {
    "400 characters": (SENTENCE * 5)[:400],
    "one word": "W" * 400,
    "Greek": "Βιβλιοθήκη για το δωμάτιο των ξένων " * 11,
    "Cyrillic": "Шкаф для прихожей с ящиками и полками " * 10,
    "short": "A shelf",
}


def _drafted(block: TitleBlock) -> DraftedBlock:
    return draft_block(block, (200.0, 287.0), "1:10, A4")


def _points(text: Written) -> float:
    return text.size * 72 / 25.4


def test_every_field_is_filled() -> None:
    """The mandatory data fields of ISO 7200 (from memory): legal owner, identification number,
    date of issue, sheet number, title, approval person, creator, document type; and the scale,
    the method of projection and the unit of lengths."""
    said = {text.text for text in _drafted(FULL).texts}
    assert said == {
        "Legal owner",
        "Carr & Sons",
        "Drawn by",
        "Zoë Carr",
        "Approved by",
        "Ann Lee",
        "Title",
        "Reading alcove",
        "Supplementary title",
        "Long dashes: sag",
        "Type of document",
        "Elevations",
        "Number",
        "2026-14",
        "Revision",
        "C",
        "Date of issue",
        "2026-11-26",
        "Scale",
        "1:10, A4",
        "Sheet",
        "2 of 5",
        "Lengths in mm",
        "First angle",
    }


def test_what_a_unit_says_is_on_it() -> None:
    unit = replace(
        bookcase(), author="Zoë", organisation="Carr", number="7", revision="B", approved_by="Ann"
    )
    block = title_block_of(unit, "Sections", "Detail", (3, 4))
    assert block.title == unit.title
    assert (block.author, block.owner, block.number) == ("Zoë", "Carr", "7")
    assert (block.revision, block.approved_by, block.kind) == ("B", "Ann", "Sections")
    assert (block.supplement, block.sheet) == ("Detail", (3, 4))


@pytest.mark.parametrize("name", TITLES)
def test_a_title_stays_inside_and_legible(name: str) -> None:
    block = replace(FULL, title=TITLES[name])
    drafted = _drafted(block)
    edge = shapely.box(*drafted.rect)
    boxes = [inked(text.lettering()) for text in drafted.texts]
    lines = shapely.MultiLineString([*drafted.wide, *drafted.narrow])
    for text, box in zip(drafted.texts, boxes, strict=True):
        assert edge.contains(box), text.text
        assert not box.intersects(lines), text.text
        assert _points(text) >= 8.0, text.text
    for one, two in combinations(boxes, 2):
        assert not one.intersects(two)
    # Nothing of the title is lost but the spaces where its lines end.
    whole = "".join(TITLES[name].split())
    assert whole in "".join("".join(text.text.split()) for text in drafted.texts)
    assert drafted.rect.right - drafted.rect.left == pytest.approx(WIDTH)


def test_long_fields_end_in_an_ellipsis_within_their_cells() -> None:
    long = replace(
        FULL, author="N" * 80, owner="O" * 80, approved_by="P" * 80, number="4" * 24, kind="K" * 90
    )
    drafted = _drafted(long)
    lines = shapely.MultiLineString([*drafted.wide, *drafted.narrow])
    for text in drafted.texts:
        assert not inked(text.lettering()).intersects(lines), text.text
        assert _points(text) >= 8.0
    assert sum(text.text.endswith("…") for text in drafted.texts) >= 4
    assert fits_supplement("Long dashes: sag")
    assert not fits_supplement("w" * 90)


def test_a_sheet_makes_room_for_a_long_title() -> None:
    block = replace(FULL, title=TITLES["400 characters"])
    assert title_height(block) > title_height(FULL)
    view = View("", (0.0, 0.0), (1500.0, 2000.0))
    sheet = draw_sheet((Place(view),), block)
    assert not sheet.views[0].extent.meets(sheet.block.rect)
