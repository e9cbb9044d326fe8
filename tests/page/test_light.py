"""How the unit is lit in space."""

from __future__ import annotations

import base64
import io
from pathlib import Path

import numpy as np
import pytest
from PIL import Image
from playwright.sync_api import Browser

from kit.browser import until
from kit.pages_of import unit_page, written
from kit.specs import unit_from
from rodwright.page.document import Sections

pytestmark = pytest.mark.xdist_group("browser")

_SHELVES = """size: {width: 900, height: 1200, depth: 320}
interior: {shelves: 3}
back: {stock: ply, fixing: rebated}
finish: {kind: paint, colour: "#c0c0c0"}"""
_SEEN = """points => points.map(each => {
  const seen = stage.camera.position.clone().set(...each).project(stage.camera);
  return [(seen.x + 1) / 2, (1 - seen.y) / 2];
})"""


def test_no_strip_of_sun_lies_on_the_back_above_a_shelf(browser: Browser, tmp_path: Path) -> None:
    """Three shelves leave 277 mm each; the back is all in their shade, from shelf to shelf."""
    unit = unit_from(_SHELVES)
    shelves = sorted(part.bounds().high[2] for part in unit.parts if part.name == "Shelf")
    middle, rear = unit.size[0] / 2, unit.envelope.high[1]
    heights = np.linspace(shelves[0] + 12, shelves[1] - 30, 40).tolist()
    with unit_page(browser, written(unit, Sections(), tmp_path)) as page:
        page.evaluate("stage.view('front')")
        until(page, "stage.resting")
        places = np.array(page.evaluate(_SEEN, [[middle, rear, each] for each in heights]))
        data = base64.b64decode(page.evaluate("stage.picture()").partition(",")[2])
    picture = np.asarray(Image.open(io.BytesIO(data)).convert("L"), dtype=float)
    high, wide = picture.shape
    across, down = (places * (wide, high)).astype(int).T
    shades = picture[down, across]
    assert 60 < shades.mean() < 200
    assert np.ptp(shades) < 8
