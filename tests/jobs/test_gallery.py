"""The gallery: its page is current, and one model's worth of it is made afresh."""

from __future__ import annotations

from pathlib import Path

import pytest
from PIL import Image

from rodwright.checks import check_parts, check_solids
from rodwright.checks.findings import Severity
from rodwright.checks.rules import Rule
from rodwright.jobs import gallery
from rodwright.jobs.new import model_names, model_path
from rodwright.photo.tracing import Quality
from rodwright.setout import set_out
from rodwright.wishes import read_spec

PAGE = Path(__file__).parents[2] / "gallery" / "README.md"


def test_the_page_is_current() -> None:
    """If not: rodwright gallery."""
    assert PAGE.read_text(encoding="utf-8") == gallery.gallery_page()


def test_a_gallery_of_one(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(gallery, "model_names", lambda: ("niche-shelf",))
    told: list[str] = []
    page = gallery.write_gallery(tmp_path / "shown", told.append, Quality(40, 2))
    assert told == ["pictures of niche-shelf"]
    assert "niche-shelf/exploded.png" in page.read_text(encoding="utf-8")
    for kind in ("exploded", "loaded", "views", "opening"):
        with Image.open(page.parent / "niche-shelf" / f"{kind}.png") as picture:
            assert min(picture.size) > 500
        assert (page.parent / "niche-shelf" / f"{kind}.svg").stat().st_size > 1000
    with Image.open(page.parent / "niche-shelf" / "closed.jpg") as photograph:
        assert max(photograph.size) == 40


@pytest.mark.parametrize("name", model_names())
def test_every_ready_model_is_clean(name: str) -> None:
    """No error, and no warning but that a tall freestanding piece can tip."""
    unit = set_out(read_spec(model_path(name)))
    found = [
        finding
        for finding in check_parts(unit)
        if finding.severity in (Severity.ERROR, Severity.WARNING)
    ]
    assert {finding.rule for finding in found} <= {
        Rule.TALL_AND_FREESTANDING,
        Rule.TIPS_WITH_DRAWERS_OUT,
    }
    assert check_solids(unit) == ()
