"""Dimensions and the marks of findings over the unit, in a real browser."""

from __future__ import annotations

from dataclasses import asdict
from itertools import combinations

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, DRAWN, PHONE, until
from kit.live import live
from kit.pages_of import label_texts, on_screen, settle, unit_page, written
from rodwright.lengths import format_length
from rodwright.page import document as told
from rodwright.page.model import model_of
from rodwright.page.telling.dimensions import dimensions_of
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def address(bookcase: Unit, tmp_path_factory: pytest.TempPathFactory) -> str:
    sections = told.Sections(dimensions=dimensions_of(bookcase))
    return written(bookcase, sections, tmp_path_factory.mktemp("words"))


def _dimensioned(page: Page) -> list[str]:
    page.get_by_role("button", name="Dimensions").click()
    until(page, "stage.resting")
    return label_texts(page, "dimension")


@pytest.mark.parametrize("size", [DESKTOP, PHONE])
def test_dimensions_tell_the_units_size_and_none_lies_on_another(
    browser: Browser, bookcase: Unit, address: str, size: dict[str, int]
) -> None:
    with unit_page(browser, address, size) as page:
        texts = _dimensioned(page)
        assert {format_length(each, "in") for each in bookcase.size} <= set(texts)
        assert set(texts) <= {each.text for each in dimensions_of(bookcase)}
        assert page.locator(".dimensioned").inner_text() == (
            "In inches: overall, and clear between the boards"
        )
        canvas = page.locator("canvas").bounding_box()
        assert canvas is not None
        labels = [each.bounding_box() for each in page.locator(".label:visible").all()]
        boxes = [
            (box["x"], box["y"], box["x"] + box["width"], box["y"] + box["height"])
            for box in labels
            if box is not None
        ]
        for left, top, right, bottom in boxes:
            assert canvas["x"] <= left and right <= canvas["x"] + canvas["width"]
            assert canvas["y"] <= top and bottom <= canvas["y"] + canvas["height"]
        for one, other in combinations(boxes, 2):
            apart_across = one[2] <= other[0] or other[2] <= one[0]
            assert apart_across or one[3] <= other[1] or other[3] <= one[1]
        page.get_by_role("button", name="Dimensions").click()
        settle(page)
        assert label_texts(page, "dimension") == []


def test_a_cut_leaves_the_overall_dimensions(
    browser: Browser, bookcase: Unit, address: str
) -> None:
    sizes = {format_length(each, "in") for each in bookcase.size}
    with unit_page(browser, address) as page:
        _dimensioned(page)
        page.locator("summary", has_text="Cut").click()
        page.get_by_label("Width", exact=True).check()
        page.locator("summary", has_text="Cut").click()
        for key in ("ArrowRight", "ArrowLeft"):
            page.locator("canvas").press(key)
            until(page, "stage.resting")
            assert sizes <= set(label_texts(page, "dimension"))


def test_the_chosen_part_has_its_own_dimensions(
    browser: Browser, bookcase: Unit, address: str
) -> None:
    with unit_page(browser, address) as page:
        _dimensioned(page)
        length, width, thickness = bookcase.part("SH2").blank.size
        page.mouse.click(*on_screen(page, "SH2", (length / 2, 0.0, thickness / 2)))
        settle(page)
        assert page.locator(".heard").inner_text().startswith("SH2,")
        texts = set(label_texts(page, "dimension"))
        assert {format_length(length, "in"), format_length(width, "in")} <= texts
        # The unit's own stay.
        assert format_length(bookcase.size[1], "in") in texts
        own = {format_length(each, "in") for each in (length, width, thickness)}
        assert texts <= own | {each.text for each in dimensions_of(bookcase)}


def test_on_a_phone_words_stand_by_their_own_lines_and_the_overall_sizes_are_there(
    browser: Browser, bookcase: Unit, address: str
) -> None:
    with unit_page(browser, address, PHONE) as page:
        page.emulate_media(reduced_motion="reduce")
        page.get_by_role("button", name="Front", exact=True).click()
        texts = _dimensioned(page)
        assert {format_length(each, "in") for each in bookcase.size[:2]} <= set(texts)
        # Those of the height stand one below the other, each within reach of its own line.
        for each in dimensions_of(bookcase):
            if each.text not in texts or each.start[0] != each.end[0]:
                continue
            ends = (
                on_screen(page, None, tuple(map(sum, zip(at, each.offset, strict=True))))  # type: ignore[arg-type]
                for at in (each.start, each.end)
            )
            (x, one), (_, other) = ends
            box = page.locator(f".label.dimension:text-is('{each.text}'):visible").bounding_box()
            assert box is not None
            # Words on or clear of a line stand closer than those beside one too short for them.
            reach = 16 if abs(one - other) < 34 else 10
            assert box["x"] - reach <= x <= box["x"] + box["width"] + reach
            assert min(one, other) <= box["y"] + box["height"] / 2 <= max(one, other)


@pytest.mark.parametrize("view", ["Left", "Right", "Corner"])
def test_from_a_side_each_chain_of_heights_has_a_line_of_its_own_beside_the_unit(
    browser: Browser, bookcase: Unit, address: str, view: str
) -> None:
    """Seen from a side, lines that stand beside the front would all lie on its edge."""
    heights = [each for each in dimensions_of(bookcase) if each.start[2] != each.end[2]]
    overall = format_length(bookcase.size[1], "in")
    clear = [each.text for each in heights if each.text != overall]
    assert len(clear) >= 3
    with unit_page(browser, address) as page:
        page.emulate_media(reduced_motion="reduce")
        page.get_by_role("button", name=view, exact=True).click()
        texts = _dimensioned(page)
        depth = format_length(bookcase.size[2], "in")
        assert sorted(each for each in texts if each in {*clear, overall, depth}) == sorted(
            [*clear, overall, depth]
        )
        places = {text: _middle_of(page, text) for text in {*clear, overall}}
        # From a side both fronts' edges are at one place.
        low, high = bookcase.envelope.low, bookcase.envelope.high
        edge = on_screen(page, None, (low[0], low[1], (low[2] + high[2]) / 2))[0]
        assert abs(places[overall] - edge) > abs(places[clear[0]] - edge) + 20
        assert all(abs(places[each] - edge) > 10 for each in clear)
        across = [places[each] for each in clear]
        assert max(across) - min(across) < (3 if view != "Corner" else 20)


@pytest.mark.parametrize("height", [300, 420])
def test_where_there_is_no_room_a_chain_is_left_out_whole_and_overall_sizes_never(
    browser: Browser, bookcase: Unit, address: str, height: int
) -> None:
    dimensions = dimensions_of(bookcase)
    overall = {format_length(each, "in") for each in bookcase.size[:2]}
    clear = [
        each.text
        for each in dimensions
        if each.start[2] != each.end[2] and each.text not in overall
    ]
    with unit_page(browser, address, {"width": 700, "height": height}) as page:
        page.emulate_media(reduced_motion="reduce")
        page.get_by_role("button", name="Front", exact=True).click()
        texts = _dimensioned(page)
        assert overall <= set(texts)
        shown = [each for each in clear if each in texts]
        assert shown in ([], clear)


def _middle_of(page: Page, text: str) -> float:
    box = page.locator(f".label.dimension:text-is('{text}'):visible").bounding_box()
    assert box is not None
    return box["x"] + box["width"] / 2


def test_a_finding_turns_the_unit_so_that_its_part_is_seen_and_is_marked(
    browser: Browser, bookcase: Unit
) -> None:
    back = told.Told(
        severity="error",
        rule="back too thin",
        message="The back bends.",
        remedy="Take a thicker one.",
        parts=("BK1",),
        source="",
        at=(bookcase.size[0] / 2, bookcase.envelope.high[1], bookcase.size[1] / 2),
    )
    with live(browser, reduced_motion="reduce") as server:
        page = server.page
        server.model(model_of(bookcase))
        server.sections(findings=[asdict(back)])
        until(page, DRAWN)
        # From below nothing of the back is seen.
        page.get_by_role("button", name="Below").click()
        settle(page)
        before = page.evaluate("stage.camera.position.toArray()")
        page.get_by_text("The back bends.").click()
        until(page, "document.querySelector('.label.finding:not([hidden])') !== null")
        assert label_texts(page, "finding") == ["error: back too thin"]
        assert page.evaluate("stage.camera.position.toArray()") != before
        length, width, thickness = bookcase.part("BK1").blank.size
        seen = [
            _part_at(page, on_screen(page, "BK1", (length * along, width / 2, side)))
            for along in (0.2, 0.35, 0.65, 0.8)
            for side in (0.0, thickness)
        ]
        assert seen.count("BK1") >= 2
        page.get_by_text("The back bends.").click()
        settle(page)
        assert label_texts(page, "finding") == []


def test_a_finding_about_one_stile_lights_the_whole_door(browser: Browser, cupboard: Unit) -> None:
    model = model_of(cupboard)
    door = next(each for each in model.motions if "DOS1" in each.refs)
    sags = told.Told(
        severity="warning",
        rule="door sags",
        message="The door sags.",
        remedy="",
        parts=("DOS1",),
        source="",
        at=(),
    )
    with live(browser, reduced_motion="reduce") as server:
        page = server.page
        server.model(model)
        server.sections(findings=[asdict(sags)])
        until(page, DRAWN)
        page.get_by_text("The door sags.").click()
        settle(page)
        lit = page.evaluate("[...stage.outlines.drawn.keys()]")
        assert set(lit) == set(door.refs)
        assert len(lit) > 1


def _part_at(page: Page, point: tuple[float, float]) -> str | None:
    """The part that is seen at a point of the window."""
    ref: str | None = page.evaluate(
        "([x, y]) => { const box = stage.canvas.getBoundingClientRect();"
        " return sight.hit({ x: x - box.left, y: y - box.top })?.ref; }",
        list(point),
    )
    return ref
