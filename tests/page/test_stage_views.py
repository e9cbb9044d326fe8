"""How the unit is looked at: whole in the picture, square on, by keys and by hand."""

from __future__ import annotations

import base64
import io
from collections.abc import Iterator

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image
from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, PHONE, until
from kit.pages_of import unit_page, written
from kit.specs import ready_unit
from rodwright.page.document import Sections
from rodwright.pictures.explode import explode

pytestmark = pytest.mark.xdist_group("browser")

_VIEWS = ("corner", "front", "back", "left", "right", "above", "below")
_PAPER = np.array([0xF3, 0xF0, 0xEA])
_EYE = "stage.camera.position.toArray().concat(stage.controls.target.toArray())"


@pytest.fixture(scope="module", params=["hostel-eaves", "pottery-dresser", "hallway-bookcase"])
def address(request: pytest.FixtureRequest, tmp_path_factory: pytest.TempPathFactory) -> str:
    unit = ready_unit(request.param)
    folder = tmp_path_factory.mktemp(request.param)
    return written(unit, Sections(apart=explode(unit)), folder)


@pytest.fixture(scope="module", params=["desktop", "phone"])
def page(request: pytest.FixtureRequest, browser: Browser, address: str) -> Iterator[Page]:
    phone = request.param == "phone"
    with unit_page(browser, address, PHONE if phone else DESKTOP, touch=phone) as shown:
        shown.emulate_media(reduced_motion="reduce")
        yield shown


def _look(page: Page, wished: str) -> None:
    page.evaluate(wished)
    until(page, "stage.resting")


def _drawn(page: Page) -> NDArray[np.bool_]:
    """Where the picture isn't paper; shadows on the floor are paper."""
    data = base64.b64decode(page.evaluate("stage.picture()").partition(",")[2])
    picture = np.asarray(Image.open(io.BytesIO(data)).convert("RGB"), dtype=int)
    return np.abs(picture - _PAPER).max(axis=2) > 45


def _in_the_middle(drawn: NDArray[np.bool_]) -> None:
    """Nothing at the border; as much free at both sides, and above as below."""
    high, wide = drawn.shape
    rows, columns = np.flatnonzero(drawn.any(axis=1)), np.flatnonzero(drawn.any(axis=0))
    left, right = columns[0], wide - 1 - columns[-1]
    above, below = rows[0], high - 1 - rows[-1]
    assert min(left, right, above, below) > 0.02 * min(wide, high)
    assert abs(left - right) < 0.04 * wide
    assert abs(above - below) < 0.04 * high
    # It fills what is free, one way or the other.
    assert min(left, right) < 0.1 * wide or min(above, below) < 0.1 * high


def test_all_views_show_the_unit_whole(page: Page) -> None:
    for view in _VIEWS:
        _look(page, f"stage.view('{view}')")
        _in_the_middle(_drawn(page))


def test_taken_apart_it_is_still_in_the_picture(page: Page) -> None:
    _look(page, "stage.view('corner')")
    _look(
        page,
        "stage.pull(JSON.parse(document.getElementById('told').textContent).sections.apart, 1)",
    )
    apart = _drawn(page)
    _look(page, "stage.pull(null, 0)")
    _in_the_middle(apart)


@pytest.fixture(scope="module")
def niche(browser: Browser, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    unit = ready_unit("niche-shelf")
    with unit_page(browser, written(unit, Sections(), tmp_path_factory.mktemp("niche"))) as shown:
        yield shown


def test_square_on_there_is_no_perspective(niche: Page) -> None:
    """Ends that lie behind each other fall together in the picture."""
    seen = """[...stage.pieces.values()].flatMap(({ mesh }) => {
      const { min, max } = mesh.geometry.boundingBox;
      return [min, max].map(each => each.clone().applyMatrix4(mesh.matrixWorld));
    }).map(each => [each.clone().project(stage.camera).x, each.x])"""
    _look(niche, "stage.view('front')")
    scales = np.array(niche.evaluate(seen))
    slope, offset = np.polyfit(scales[:, 1], scales[:, 0], 1)
    assert np.allclose(scales[:, 0], slope * scales[:, 1] + offset, atol=1e-5)
    _look(niche, "stage.view('corner')")
    scales = np.array(niche.evaluate(seen))
    slope, offset = np.polyfit(scales[:, 1], scales[:, 0], 1)
    assert not np.allclose(scales[:, 0], slope * scales[:, 1] + offset, atol=1e-3)


def test_turned_away_from_a_square_view_it_is_in_perspective(niche: Page) -> None:
    _look(niche, "stage.view('front')")
    assert niche.evaluate("stage.camera.isOrthographicCamera") is True
    box = niche.locator("canvas").bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    niche.mouse.move(x, y)
    niche.mouse.down()
    niche.mouse.move(x + 60, y + 20, steps=4)
    niche.mouse.up()
    until(niche, "stage.resting")
    assert niche.evaluate("stage.camera.isPerspectiveCamera") is True
    assert niche.evaluate("stage.camera.position.x - stage.controls.target.x") < -10


def test_keys_turn_move_and_zoom_it(niche: Page) -> None:
    _look(niche, "stage.view('corner')")
    canvas = niche.locator("canvas")
    whole = niche.evaluate(_EYE)
    canvas.press("ArrowRight")
    turned = niche.evaluate(_EYE)
    assert turned[:2] != pytest.approx(whole[:2])
    assert turned[3:] == pytest.approx(whole[3:])
    canvas.press("Shift+ArrowUp")
    moved = niche.evaluate(_EYE)
    assert moved[5] < turned[5]
    away = "stage.camera.position.distanceTo(stage.controls.target)"
    far = niche.evaluate(away)
    canvas.press("+")
    assert niche.evaluate(away) == pytest.approx(far / 1.15)
    canvas.press("-")
    assert niche.evaluate(away) == pytest.approx(far)
    canvas.press("0")
    until(niche, "stage.resting")
    assert niche.evaluate(_EYE)[3:] == pytest.approx(whole[3:], rel=0.1)


def test_keys_elsewhere_leave_it_be(niche: Page) -> None:
    _look(niche, "stage.view('corner')")
    before = niche.evaluate(_EYE)
    niche.locator(".apart input").press("ArrowRight")
    until(niche, "stage.resting")
    assert niche.evaluate("stage.controls.getAzimuthalAngle()") == pytest.approx(
        np.arctan2(before[0] - before[3], -(before[1] - before[4])), abs=1e-6
    )


def test_the_eye_stays_where_it_is_when_the_model_changes(niche: Page) -> None:
    """Near, it isn't moved at all; where all is seen, all is still seen."""
    model = "JSON.parse(document.getElementById('told').textContent).model"
    _look(niche, "stage.view('corner')")
    niche.locator("canvas").press("+")
    near = niche.evaluate(_EYE)
    _look(niche, f"(() => {{ const m = {model}; m.parts.pop(); stage.show(m); }})()")
    assert niche.evaluate(_EYE) == near
    _look(niche, f"stage.show({model})")
    assert niche.evaluate(_EYE) == near


def test_a_wheel_zooms_and_two_fingers_are_left_to_the_canvas(niche: Page) -> None:
    _look(niche, "stage.view('corner')")
    away = "stage.camera.position.distanceTo(stage.controls.target)"
    far = niche.evaluate(away)
    box = niche.locator("canvas").bounding_box()
    assert box is not None
    niche.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    niche.mouse.wheel(0, -240)
    until(niche, "stage.resting")
    assert niche.evaluate(away) < 0.95 * far
    assert niche.evaluate("getComputedStyle(stage.canvas).touchAction") == "none"
