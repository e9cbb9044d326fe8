"""The page to send, in a real browser, from disk."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import chromium, opened, until
from kit.sent_pages import sent_page

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with chromium() as started:
        yield started


@pytest.fixture(scope="module")
def sent(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return sent_page("reading-alcove", tmp_path_factory.mktemp("sent"))


@pytest.fixture
def page(browser: Browser, sent: Path) -> Iterator[Page]:
    with opened(browser, sent.as_uri()) as shown:
        yield shown


def test_it_shows_the_units_parts(page: Page) -> None:
    until(page, "window.stage && stage.pieces.size > 0")
    assert page.evaluate("stage.pieces.size") == 29


def test_a_touch_names_a_part(page: Page) -> None:
    until(page, "window.stage && stage.pieces.size > 0 && stage.resting")
    box = page.locator("canvas").bounding_box()
    assert box is not None
    assert page.evaluate(
        "([x, y]) => sight.hit({ x, y })?.ref", [box["width"] / 2, box["height"] / 2]
    )
