"""The page to send, in a real browser, from disk."""

from __future__ import annotations

from collections.abc import Iterator
from io import BytesIO
from pathlib import Path

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from kit.browser import DRAWN, opened, until
from kit.sent_pages import sent_page
from kit.specs import ready_unit
from rodwright.page.standing import Picture

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


def test_its_photographs_have_a_tab(browser: Browser, tmp_path: Path) -> None:
    file = BytesIO()
    Image.new("RGB", (60, 40), "#778899").save(file, "JPEG")
    taken = Picture("Niche shelf, open", file.getvalue(), "image/jpeg")
    sent = sent_page("niche-shelf", tmp_path, photographs=[taken])
    with opened(browser, sent.as_uri()) as shown:
        shown.get_by_role("tab", name="Photographs").click()
        image = shown.get_by_role("button", name="Enlarge: Niche shelf, open").locator("img")
        image.wait_for()
        assert image.evaluate("each => each.decode().then(() => each.naturalWidth)") == 60


def test_parts_are_listed_by_name_and_sized_at_a_touch(page: Page) -> None:
    page.get_by_role("tab", name="Parts").click()
    listed = page.locator(".parts [role=option]")
    assert listed.count() == len(ready_unit("record-cabinet").parts)
    assert page.locator(".parts .size").count() == 0
    listed.first.click()
    page.get_by_role("tab", name="Part", exact=True).click()
    assert page.locator("dd.size").inner_text().endswith(" mm")
