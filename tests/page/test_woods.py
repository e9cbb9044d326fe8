"""Woods on the page, measured on what Chromium draws."""

from __future__ import annotations

import io
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image
from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, DRAWN, opened_anywhere, until
from kit.pages_of import settle
from photo.woods.samples import lab
from rodwright.photo import srgb

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def page(browser: Browser, sent: Path) -> Iterator[Page]:
    with opened_anywhere(browser, DESKTOP, reduced_motion="reduce") as shown:
        shown.goto(sent.as_uri())
        until(shown, DRAWN)
        yield shown


def side(page: Page) -> NDArray[np.float64]:
    """What is drawn of the left side, from the left: its middle, rows from the top."""
    page.evaluate("stage.view('left')")
    until(page, "stage.camera.isOrthographicCamera")
    settle(page)
    box = page.locator("canvas").bounding_box()
    assert box is not None
    shown = Image.open(io.BytesIO(page.locator("canvas").screenshot())).convert("RGB")
    x, y = shown.width // 2, shown.height // 2
    assert page.evaluate("([x, y]) => sight.hit({ x, y })?.ref", [x, y]) == "SD1"
    return np.asarray(shown.crop((x - 40, y - 100, x + 40, y + 100))) / 255


def test_grain_runs_up_the_side_and_leaves_its_colour_as_it_is(page: Page) -> None:
    until(page, "[...stage.woods.woods.values()].filter((each) => each.there.value).length >= 2")
    page.evaluate("stage.draw()")
    grained = side(page)
    across, up = (np.abs(np.diff(grained, axis=axis)).mean() for axis in (1, 0))
    assert across > 1.5 * up
    page.evaluate("stage.woods.keep(new Set()); stage.draw()")
    plain = side(page)
    assert plain.std(axis=(0, 1)).max() < 0.5 * grained.std(axis=(0, 1)).max()
    means = [lab(srgb.decoded(each).mean(axis=(0, 1))) for each in (grained, plain)]
    assert np.linalg.norm(means[0] - means[1]) < 3.0  # CIE 1976, of a part of the board
