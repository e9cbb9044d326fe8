"""The page of materials is what the tables say."""

from __future__ import annotations

from pathlib import Path

from kit.materials_page import page
from rodwright.trade.materials import MATERIALS

PAGE = (Path(__file__).parents[2] / "docs" / "materials.md").read_text(encoding="utf-8")


def test_the_page_is_current() -> None:
    """If not: python tests/kit/materials_page.py docs/materials.md."""
    assert page() == PAGE


def test_every_material_has_a_row_or_the_figures_of_its_core() -> None:
    for name, material in MATERIALS.items():
        assert f"\n| {name}" in PAGE or material.stiff_because == "its core", name


def test_rows_by_hand() -> None:
    """Ash and C24 as EN 338 and the Wood Handbook have them; `?` is from memory."""
    assert "| ash | 672 | 12000 | 960? | 1308? | 924? | 103 m | 13.2 m | 8? m | 0.6 |" in PAGE
    assert "| c24 | 420 | 11000 | 370 | 690 | 690 | 24 | 4 | 2.5? | 0.6 |" in PAGE
    assert "| birch plywood, 18 mm | 680 | 10048? | 7452? | 206? | 620? |" in PAGE
