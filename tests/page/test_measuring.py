"""Measuring at the unit, in a real browser, against sizes known from the set-out."""

from __future__ import annotations

import math
import re
from pathlib import Path
from typing import Literal

import pytest
from playwright.sync_api import Browser, Page

import rodwright
from kit.browser import DRAWN, PHONE, until
from kit.live import live
from kit.pages_of import label_texts, on_screen, put_together, settle, unit_page, written
from rodwright.geometry import Vector
from rodwright.jobs.new import model_path
from rodwright.lengths import format_length
from rodwright.page.document import Sections
from rodwright.page.model import model_of
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def address(cupboard: Unit, tmp_path_factory: pytest.TempPathFactory) -> str:
    apart = {part.ref: (0.0, -300.0 * at, 0.0) for at, part in enumerate(cupboard.parts)}
    return written(cupboard, Sections(apart=apart), tmp_path_factory.mktemp("measuring"))


@pytest.fixture
def page(loaded: Page) -> Page:
    """The page, measuring, with nothing measured, and the unit put together."""
    measure = loaded.get_by_role("button", name="Measure", exact=True)
    if measure.get_attribute("aria-pressed") != "true":
        measure.click()
    clear = loaded.get_by_role("button", name="Clear")
    if clear.count():
        clear.click()
    put_together(loaded)
    return loaded


def _measured(page: Page) -> float:
    settle(page)
    value = page.locator(".measured data").last.get_attribute("value")
    assert value is not None
    return float(value)


def _front(unit: Unit) -> tuple[Vector, Vector, Vector]:
    """Corners of the envelope's front: upper left, upper right, lower left."""
    (left, front, low), (right, _, high) = unit.envelope.low, unit.envelope.high
    return (left, front, high), (right, front, high), (left, front, low)


def test_between_corners_it_tells_the_units_width_to_a_hundredth(
    page: Page, cupboard: Unit
) -> None:
    left, right, _ = _front(cupboard)
    for corner in (left, right):
        x, y = on_screen(page, None, corner)
        page.mouse.click(x + 5, y + 4)
    assert _measured(page) == pytest.approx(cupboard.size[0], abs=0.01)
    assert label_texts(page, "measure") == ["1022 mm\nwidth 1022, depth 0, height 0"]


def test_a_slanting_distance_comes_with_its_width_depth_and_height(
    page: Page, cupboard: Unit
) -> None:
    _, right, low = _front(cupboard)
    for corner in (right, low):
        page.mouse.click(*on_screen(page, None, corner))
    width, height, _ = cupboard.size
    assert _measured(page) == pytest.approx(math.hypot(width, height), abs=0.01)
    text = format_length(math.hypot(width, height), "mm")
    assert label_texts(page, "measure") == [f"{text} mm\nwidth 1022, depth 0, height 2036"]


def test_of_the_first_measure_it_says_which_point_is_awaited(page: Page, cupboard: Unit) -> None:
    left, right, _ = _front(cupboard)
    asked = page.locator(".measured p")
    assert asked.inner_text() == "Touch two points: corners, edges or faces."
    page.mouse.click(*on_screen(page, None, left))
    settle(page)
    assert re.fullmatch(r"From corner of \w+: touch the second point\.", asked.inner_text())
    page.keyboard.press("Escape")
    settle(page)
    assert asked.inner_text() == "Touch two points: corners, edges or faces."
    for corner in (left, right):
        page.mouse.click(*on_screen(page, None, corner))
    settle(page)
    assert asked.count() == 0


def test_pointing_tells_what_is_snapped_to(page: Page, cupboard: Unit) -> None:
    length, width, thickness = cupboard.part("DOP1").blank.size
    page.mouse.move(*on_screen(page, "DOP1", (length / 2, width / 2, thickness)))
    settle(page)
    assert label_texts(page, "measure") == ["face of DOP1"]
    length, width, thickness = cupboard.part("DOS1").blank.size
    for along, what in (
        (0.0, "corner"),
        (length / 2, "middle of an edge"),
        (0.45 * length, "edge"),
    ):
        page.mouse.move(*on_screen(page, "DOS1", (along, width, thickness)))
        settle(page)
        (told,) = label_texts(page, "measure")
        assert told.startswith(f"{what} of "), told


def test_the_figure_is_of_the_unit_put_together_and_counts_open_doors(
    page: Page, cupboard: Unit
) -> None:
    left, right, _ = _front(cupboard)
    for corner in (left, right):
        page.mouse.click(*on_screen(page, None, corner))
    slider = page.get_by_label("Apart")
    slider.fill("1")
    assert _measured(page) == pytest.approx(cupboard.size[0], abs=0.01)
    slider.fill("0")
    settle(page)


def test_escape_lets_go_of_one_thing_after_the_other(page: Page, cupboard: Unit) -> None:
    left, right, low = _front(cupboard)
    for corner in (left, right, low):
        page.mouse.click(*on_screen(page, None, corner))
    page.mouse.move(3, 3)
    settle(page)
    assert len(label_texts(page, "measure")) == 2  # the taken corner, and the measure
    page.keyboard.press("Escape")
    settle(page)
    assert label_texts(page, "measure") == ["1022 mm\nwidth 1022, depth 0, height 0"]
    page.keyboard.press("Escape")
    settle(page)
    assert label_texts(page, "measure") == []


def test_a_point_without_another_is_let_go_with_measuring(page: Page, cupboard: Unit) -> None:
    left, right, low = _front(cupboard)
    switch = page.get_by_role("button", name="Measure")
    page.mouse.click(*on_screen(page, None, left))
    switch.click()
    settle(page)
    assert label_texts(page, "measure") == []
    switch.click()
    page.mouse.click(*on_screen(page, None, right))
    settle(page)
    assert page.locator(".measured data").count() == 0
    page.mouse.click(*on_screen(page, None, low))
    settle(page)
    assert page.locator(".measured data").count() == 1


def test_the_chosen_parts_words_go_when_measuring_starts(page: Page) -> None:
    switch = page.get_by_role("button", name="Measure")
    switch.click()
    page.locator("canvas").press("n")
    settle(page)
    assert len(label_texts(page, "part")) == 1
    switch.click()
    settle(page)
    assert label_texts(page, "part") == []


def test_the_picture_stands_still_while_one_measures(page: Page, cupboard: Unit) -> None:
    canvas, switch = page.locator("canvas"), page.get_by_role("button", name="Measure")
    switch.click()
    settle(page)
    before = canvas.bounding_box()
    switch.click()
    for corner in _front(cupboard) * 4:
        page.mouse.click(*on_screen(page, None, corner))
        settle(page)
        assert canvas.bounding_box() == before
    assert page.locator(".measured data").count() == 6
    page.get_by_role("button", name="Clear").click()
    settle(page)
    assert canvas.bounding_box() == before


def test_what_lies_hidden_behind_an_edge_is_not_snapped_to(page: Page, cupboard: Unit) -> None:
    page.emulate_media(reduced_motion="reduce")
    page.get_by_role("button", name="Front", exact=True).click()
    settle(page)
    # Seen square on, the mortises and the groove of a stile lie in line with its edges.
    door = cupboard.part("DOS1").bounds()
    face = ((door.low[0] + door.high[0]) / 2, door.low[1], 0.6 * door.low[2] + 0.4 * door.high[2])
    for x in (door.low[0], (door.low[0] + door.high[0]) / 2, door.high[0]):
        for z in (door.low[2], door.high[2]):
            page.mouse.click(*on_screen(page, None, face))
            page.mouse.click(*on_screen(page, None, (x, door.low[1], z)))
            settle(page)
            said = page.locator(".measured li").last.inner_text()
            assert ", depth 0," in said
    page.get_by_role("button", name="Corner", exact=True).click()
    settle(page)


def test_corners_of_the_chosen_part_are_measured_by_keys_alone(page: Page, cupboard: Unit) -> None:
    page.locator("canvas").focus()
    for _ in range(3):  # what was measured, the tool, what was chosen before
        page.keyboard.press("Escape")
    page.get_by_role("button", name="Measure", exact=True).click()
    page.locator("canvas").focus()
    page.keyboard.press("n")  # the first part
    heard: dict[str, int] = {}
    while len(heard) < 200:
        page.keyboard.press("c")
        words = page.locator(".heard").inner_text()
        if words in heard:
            break
        heard[words] = len(heard)
    first = cupboard.parts[0]
    assert next(iter(heard)).startswith(f"corner of {first.ref}, 1 of {len(heard)}, ")
    # From the lowest corner it came to first, on to the first upper one.
    lower = next(words for words in heard if "lower left front" in words)
    upper = next(words for words in heard if "upper left front" in words)
    for _ in range(heard[lower]):
        page.keyboard.press("c")
    page.keyboard.press("Enter")
    page.keyboard.press("Enter")  # the same point again: nothing
    for _ in range((heard[upper] - heard[lower]) % len(heard)):
        page.keyboard.press("c")
    page.keyboard.press("Enter")
    assert _measured(page) == pytest.approx(first.blank.length, abs=0.01)


def test_where_an_edge_is_rounded_a_corner_says_that_no_sharp_one_is_there(
    browser: Browser, tmp_path: Path
) -> None:
    """A face frame eased by 4 mm: its flat faces end 4 mm before their sharp edges would be."""
    unit = rodwright.set_out(rodwright.read_spec(model_path("reading-alcove")))
    with unit_page(browser, written(unit, Sections(), tmp_path)) as page:
        for ref, rounded in (("ST1", True), ("SD1", False)):
            page.keyboard.press("Escape")
            page.get_by_role("tab", name="Parts").click()
            page.get_by_role("option").filter(has_text=ref).first.click()
            measure = page.get_by_role("button", name="Measure", exact=True)
            if measure.get_attribute("aria-pressed") != "true":
                measure.click()
            page.locator("canvas").focus()
            heard: set[str] = set()
            for _ in range(40):
                page.keyboard.press("c")
                words = page.locator(".heard").inner_text()
                assert words.startswith(f"corner of {ref}")
                heard.add(words)
            begins = [words for words in heard if " (where its rounding begins), " in words]
            assert bool(begins) is rounded, heard


@pytest.mark.parametrize("unit", ["mm", "in"])
def test_the_page_words_lengths_as_the_lists_do(page: Page, unit: Literal["mm", "in"]) -> None:
    step = {"mm": 0.05, "in": 25.4 / 128}[unit]
    halves = [step * number for number in range(-400, 4000)]
    near = [each + off for each in halves for off in (-2e-6, -1e-7, 1e-7)]
    odd = [number**1.7 / 3 for number in range(1500)]
    lengths = [*halves, *near, *odd]
    told = page.evaluate(
        "([lengths, unit]) => lengths.map((each) => formatLength(each, unit))", [lengths, unit]
    )
    assert told == [format_length(each, unit) for each in lengths]


def test_what_was_measured_follows_the_file(browser: Browser, tmp_path: Path) -> None:
    spec = model_path("hallway-bookcase").read_text(encoding="utf-8")
    wider = tmp_path / "wider.yaml"
    wider.write_text(spec.replace("width: 34 3/4,", "width: 36 3/4,"), encoding="utf-8")
    units = [
        rodwright.set_out(rodwright.read_spec(path))
        for path in (model_path("hallway-bookcase"), wider)
    ]
    with live(browser) as server:
        page = server.page
        server.model(model_of(units[0]), 1)
        until(page, DRAWN)
        page.get_by_role("button", name="Measure").click()
        settle(page)
        top = units[0].part("TP1").bounds()
        for x in (top.low[0], top.high[0]):
            page.mouse.click(*on_screen(page, None, (x, top.low[1], top.high[2])))
        assert _measured(page) == pytest.approx(units[0].part("TP1").blank.length, abs=0.01)
        server.model(model_of(units[1]), 2)
        until(page, "document.querySelector('.measured').textContent.includes('36 3/4')")
        assert _measured(page) == pytest.approx(units[1].part("TP1").blank.length, abs=0.01)


def test_touches_of_a_finger_measure_in_inches(
    browser: Browser, bookcase: Unit, tmp_path_factory: pytest.TempPathFactory
) -> None:
    address = written(bookcase, Sections(), tmp_path_factory.mktemp("inches"))
    with unit_page(browser, address, PHONE, touch=True) as phone:
        phone.get_by_role("button", name="Measure").tap()
        settle(phone)
        # Its upper corners lie under the views' buttons.
        left, right = (bookcase.part(ref).bounds() for ref in ("SD1", "SD2"))
        width = right.high[0] - left.low[0]
        for corner, off in ((left.low, -6), ((right.high[0], *right.low[1:]), 6)):
            x, y = on_screen(phone, None, corner)
            phone.touchscreen.tap(x + off, y + 7)
        assert _measured(phone) == pytest.approx(width, abs=0.01)
        text = format_length(width, "in")
        words = f"{text} in\nwidth {text}, depth 0, height 0"
        assert label_texts(phone, "measure") == [words]
        # Seen from the side there is no room beside the line: the words are pushed in.
        phone.get_by_role("button", name="Left", exact=True).tap()
        until(phone, "stage.resting")
        settle(phone)
        assert label_texts(phone, "measure") == [words]
