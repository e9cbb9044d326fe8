"""Pages whose picture in space can't be drawn, or is taken away and comes back."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from playwright.sync_api import Browser, Page, expect

from kit.axe import faults_of
from kit.browser import DESKTOP, PHONE, opened_anywhere, until
from kit.live import live
from kit.pages_of import settle
from kit.sent_pages import sent_page
from rodwright.page import document as told

pytestmark = pytest.mark.xdist_group("browser")
_DRAWN = "window.stage && stage.pieces.size > 0 && stage.resting"
_LOSE = """window.context = stage.renderer.getContext().getExtension("WEBGL_lose_context");
context.loseContext()"""
_NONE = "HTMLCanvasElement.prototype.getContext = () => null"
HOLDS = "Everything else on this page holds."


@pytest.fixture(scope="module")
def sent(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return sent_page("record-cabinet", tmp_path_factory.mktemp("unseen"))


@contextmanager
def _sent(browser: Browser, sent: Path, size: dict[str, int], script: str = "") -> Iterator[Page]:
    with opened_anywhere(browser, size) as page:
        page.emulate_media(reduced_motion="reduce")
        page.add_init_script(script)
        page.goto(sent.as_uri())
        yield page


def _seen(page: Page, folder: Path) -> np.ndarray:
    """What is seen where the unit is, as light from 0 to 255."""
    settle(page)
    page.locator(".space").screenshot(path=folder / "seen.png")
    return np.asarray(Image.open(folder / "seen.png").convert("L"), dtype=float)


def _rested(page: Page, folder: Path) -> np.ndarray:
    """What is seen once woods are there and nothing is coarse any more."""
    last = _seen(page, folder)
    for _ in range(60):
        page.wait_for_timeout(400)
        now = _seen(page, folder)
        if (now == last).all():
            break
        last = now
    return now


def _is_taken_and_comes_back(page: Page, folder: Path) -> None:
    before = _rested(page, folder)
    page.evaluate(_LOSE)
    words = page.get_by_role("status").filter(has_text="taken the picture in space away")
    expect(words).to_be_visible()
    expect(words).to_contain_text(HOLDS)
    # They hide what is left of it, and nothing hides them.
    corner = words.bounding_box()
    assert corner is not None
    at = [corner["x"] + 30, corner["y"] + corner["height"] / 2]
    there = "([x, y]) => document.elementFromPoint(x, y).closest('.unseen') !== null"
    assert page.evaluate(there, at)
    assert faults_of(page) == []
    page.evaluate("context.restoreContext()")
    expect(words).to_be_hidden()
    assert np.abs(_rested(page, folder) - before).mean() < 0.5


@pytest.mark.parametrize("size", [DESKTOP, PHONE], ids=["desktop", "phone"])
def test_a_sent_page_says_that_its_picture_was_taken_and_draws_it_again(
    browser: Browser, sent: Path, tmp_path: Path, size: dict[str, int]
) -> None:
    with _sent(browser, sent, size) as page:
        until(page, _DRAWN)
        _is_taken_and_comes_back(page, tmp_path)


def test_the_live_page_says_so_too_and_goes_on_following(
    browser: Browser, dresser: told.Model, tmp_path: Path
) -> None:
    with live(browser, {"width": 900, "height": 640}) as server:
        server.page.emulate_media(reduced_motion="reduce")
        server.model(dresser)
        until(server.page, _DRAWN)
        _is_taken_and_comes_back(server.page, tmp_path)
        # What is told meanwhile is drawn when it comes back.
        server.page.evaluate(_LOSE)
        fewer = replace(dresser, parts=dresser.parts[:9], fittings=(), motions=())
        server.model(fewer, 2)
        until(server.page, "stage.pieces.size === 9")
        server.page.evaluate("context.restoreContext()")
        until(server.page, "document.querySelector('.unseen') === null && stage.resting")
        light = _seen(server.page, tmp_path)
        assert light.std() > 10


def test_nothing_is_printed_in_the_place_of_what_was_taken(browser: Browser, sent: Path) -> None:
    with _sent(browser, sent, DESKTOP) as page:
        until(page, _DRAWN)
        page.evaluate("dispatchEvent(new Event('beforeprint'))")
        assert page.locator("#printed-picture canvas").count() == 1
        page.evaluate("dispatchEvent(new Event('afterprint'))")
        page.evaluate(_LOSE)
        settle(page)
        page.evaluate("dispatchEvent(new Event('beforeprint'))")
        assert page.locator("#printed-picture canvas").count() == 0


def test_without_webgl_both_pages_say_the_same(
    browser: Browser, sent: Path, dresser: told.Model
) -> None:
    said = []
    with _sent(browser, sent, PHONE, _NONE) as page:
        said.append(page.locator(".unseen p").inner_text())
        assert page.locator(".unseen .instead").evaluate("each => each.naturalWidth > 100")
        assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
        assert faults_of(page) == []
    with live(browser, before=_NONE) as server:
        server.model(dresser)
        said.append(server.page.locator(".unseen p").inner_text())
        assert faults_of(server.page) == []
    assert said[0] == said[1]
    assert "no WebGL 2" in said[0]
    assert HOLDS in said[0]
