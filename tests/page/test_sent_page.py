"""The page to send, in a real browser, from disk."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import DRAWN, opened, until
from kit.specs import ready_unit

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture
def page(browser: Browser, sent: Path) -> Iterator[Page]:
    with opened(browser, sent.as_uri()) as shown:
        until(shown, DRAWN)
        yield shown


def test_it_shows_the_units_parts(page: Page) -> None:
    assert page.evaluate("stage.pieces.size") == len(ready_unit("record-cabinet").parts)


def test_a_touch_names_a_part(page: Page) -> None:
    until(page, "stage.resting")
    box = page.locator("canvas").bounding_box()
    assert box is not None
    assert page.evaluate(
        "([x, y]) => sight.hit({ x, y })?.ref", [box["width"] / 2, box["height"] / 2]
    )
