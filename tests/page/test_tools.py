"""Parts chosen at the unit itself, by touch, by pointing and by key, in a real browser."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import PHONE, until
from kit.pages_of import label_texts, on_screen, put_together, settle, unit_page, written
from rodwright.geometry import Vector
from rodwright.page.document import Sections
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("browser")
_CHOSEN = "document.querySelector('.heard').textContent"


@pytest.fixture(scope="module")
def address(cupboard: Unit, tmp_path_factory: pytest.TempPathFactory) -> str:
    return written(cupboard, Sections(), tmp_path_factory.mktemp("tools"))


@pytest.fixture
def page(loaded: Page) -> Page:
    """The page with nothing chosen and all closed."""
    put_together(loaded)
    loaded.mouse.move(2, 2)
    loaded.locator("canvas").press("Escape")
    assert _chosen(loaded) == ""
    return loaded


@pytest.fixture
def phone(browser: Browser, address: str) -> Iterator[Page]:
    with unit_page(browser, address, PHONE, touch=True) as shown:
        yield shown


def _middle(unit: Unit, ref: str) -> Vector:
    """The middle of a part's show face, in its frame."""
    length, width, thickness = unit.part(ref).blank.size
    return (length / 2, width / 2, thickness)


def _chosen(page: Page) -> str:
    settle(page)
    return str(page.evaluate(_CHOSEN)).partition(",")[0]


@pytest.mark.parametrize("ref", ["DOP1", "DOP2", "DOS1", "RL2"])
def test_a_click_chooses_the_part_that_is_seen_there(page: Page, cupboard: Unit, ref: str) -> None:
    page.mouse.click(*on_screen(page, ref, _middle(cupboard, ref)))
    assert _chosen(page) == ref


def test_a_click_tells_the_parts_name_and_size_beside_it(page: Page, cupboard: Unit) -> None:
    page.mouse.click(*on_screen(page, "DOP1", _middle(cupboard, "DOP1")))
    page.mouse.move(3, 3)
    settle(page)
    assert label_texts(page, "part") == ["DOP1 Door panel\n1789 x 340 x 6 mm"]


def test_a_drag_turns_the_unit_and_chooses_nothing(page: Page, cupboard: Unit) -> None:
    x, y = on_screen(page, "DOP1", _middle(cupboard, "DOP1"))
    before = page.evaluate("stage.camera.position.x")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 60, y + 10, steps=4)
    page.mouse.up()
    assert _chosen(page) == ""
    assert page.evaluate("stage.camera.position.x") != before


def test_a_click_that_slips_a_pixel_still_chooses(page: Page, cupboard: Unit) -> None:
    x, y = on_screen(page, "DOP1", _middle(cupboard, "DOP1"))
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x + 2, y + 1)
    page.mouse.up()
    assert _chosen(page) == "DOP1"


def test_pointing_tells_a_part_without_choosing_it(page: Page, cupboard: Unit) -> None:
    page.mouse.move(*on_screen(page, "DOP2", _middle(cupboard, "DOP2")))
    until(page, "document.querySelector('.label.part:not([hidden])') !== null")
    assert label_texts(page, "part") == ["DOP2 Door panel\n1789 x 340 x 6 mm"]
    assert _chosen(page) == ""
    page.mouse.move(2, 2)
    until(page, "document.querySelector('.label.part:not([hidden])') === null")


def test_a_click_beside_the_unit_and_escape_choose_nothing(page: Page, cupboard: Unit) -> None:
    at = on_screen(page, "DOP1", _middle(cupboard, "DOP1"))
    box = page.locator("canvas").bounding_box()
    assert box is not None
    page.mouse.click(*at)
    assert _chosen(page) == "DOP1"
    page.mouse.click(box["x"] + 4, box["y"] + 4)
    assert _chosen(page) == ""
    page.mouse.click(*at)
    assert _chosen(page) == "DOP1"
    page.keyboard.press("Escape")
    assert _chosen(page) == ""


def test_a_second_click_on_a_door_opens_it_and_a_key_shuts_it(page: Page, cupboard: Unit) -> None:
    page.emulate_media(reduced_motion="reduce")
    turn = "stage.pieces.get('DOP1').moved().elements[0]"  # the cosine of how far it has turned
    at = on_screen(page, "DOP1", _middle(cupboard, "DOP1"))
    page.mouse.click(*at)
    settle(page)
    assert page.evaluate(turn) == pytest.approx(1)
    page.mouse.click(*at)
    settle(page)
    assert page.evaluate(turn) < 0.2
    page.keyboard.press("o")
    settle(page)
    assert page.evaluate(turn) == pytest.approx(1)


def test_a_double_click_opens_a_door_once_chosen_or_not(page: Page, cupboard: Unit) -> None:
    page.emulate_media(reduced_motion="reduce")
    turn = "stage.pieces.get('DOP1').moved().elements[0]"
    at = on_screen(page, "DOP1", _middle(cupboard, "DOP1"))
    page.mouse.dblclick(*at)
    settle(page)
    assert page.evaluate(turn) < 0.2
    page.keyboard.press("o")
    # Chosen, its first click opens it already: the second meets a shelf behind it, or nothing.
    page.mouse.move(2, 2)
    page.wait_for_timeout(600)  # longer than between the clicks of a double click
    page.mouse.dblclick(*at)
    settle(page)
    assert page.evaluate(turn) < 0.2
    assert _chosen(page) == "DOP1"
    page.locator("canvas").press("o")


def test_keys_go_through_the_parts_in_their_order(page: Page, cupboard: Unit) -> None:
    refs = [part.ref for part in cupboard.parts]
    page.locator("canvas").focus()
    page.keyboard.press("n")
    page.keyboard.press("n")
    assert _chosen(page) == refs[1]
    page.keyboard.press("p")
    page.keyboard.press("p")
    assert _chosen(page) == refs[-1]


def test_a_touch_on_a_phone_chooses_and_its_words_stay_within_the_picture(
    phone: Page, cupboard: Unit
) -> None:
    phone.touchscreen.tap(*on_screen(phone, "DOP1", _middle(cupboard, "DOP1")))
    assert _chosen(phone) == "DOP1"
    assert label_texts(phone, "part") == ["DOP1 Door panel\n1789 x 340 x 6 mm"]
    label, canvas = (phone.locator(each).bounding_box() for each in (".labels .part", "canvas"))
    assert label is not None and canvas is not None
    assert label["x"] >= canvas["x"]
    assert label["x"] + label["width"] <= canvas["x"] + canvas["width"]
