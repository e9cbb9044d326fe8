"""Pages that have little or nothing to show, and go on."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import until
from kit.live import Server, live
from kit.told import finding, sheet
from rodwright.page import document as page

pytestmark = pytest.mark.xdist_group("browser")

_EYE = "[...stage.eye.pose.target, stage.eye.pose.height]"


@pytest.fixture
def server(browser: Browser) -> Iterator[Server]:
    with live(browser) as there:
        yield there


def _drawn(server: Server, model: page.Model, version: int = 1) -> Page:
    server.model(model, version)
    until(server.page, f"window.stage?.pieces.size === {len(model.parts)} && stage.resting")
    return server.page


def _middle_is_of_the_unit(shown: Page) -> Any:
    """What is touched in the middle of the picture, as soon as the eye rests."""
    until(shown, "stage.resting")
    return shown.evaluate("sight.hit({ x: sight.width / 2, y: sight.height / 2 })?.ref")


def test_where_nothing_is_seen_the_eye_keeps_its_place(server: Server, dresser: page.Model) -> None:
    shown = _drawn(server, dresser)
    shown.locator("summary", has_text="Layers").click()
    boxes = shown.locator(".leaf input[type=checkbox]").all()
    on = [each for each in boxes if each.is_checked()]
    for each in on:
        each.uncheck()
    shown.get_by_role("button", name="Front", exact=True).click()
    until(shown, "stage.resting")
    assert all(each is not None for each in shown.evaluate(f"JSON.parse(JSON.stringify({_EYE}))"))
    for each in on:
        each.check()
    assert _middle_is_of_the_unit(shown)


def test_a_cut_that_was_kept_waits_for_its_unit(server: Server, dresser: page.Model) -> None:
    shown = _drawn(server, dresser)
    shown.locator("summary", has_text="Cut").click()
    shown.get_by_label("Width", exact=True).check()
    shown.reload()
    until(shown, "window.stage?.resting")
    shown.evaluate("new Promise((drawn) => { stage.onDraw(drawn); stage.draw(); })")
    _drawn(server, dresser)
    assert shown.evaluate("stage.clipping.length") == 1


def test_only_parts_that_are_there_are_counted_as_out_of_sight(
    server: Server, dresser: page.Model
) -> None:
    shown = _drawn(server, dresser)
    last = dresser.parts[-1]
    shown.get_by_role("tab", name="Parts").click()
    shown.locator(f"#part-{last.ref}").dblclick()
    shown.get_by_role("button", name="Hide this part").click()
    shown.get_by_text("1 part is out of sight").wait_for()
    _drawn(server, _of(dresser, dresser.parts[:-1]), 2)
    shown.get_by_text("out of sight").wait_for(state="detached")


def test_a_row_of_no_parts_leaves_what_is_lit(server: Server, dresser: page.Model) -> None:
    told = sheet(dresser)
    table = told["tables"][0]
    table["refs"] = [*table["refs"][:1], (), *table["refs"][2:]]
    server.sections(lists=told)
    shown = _drawn(server, dresser)
    server.sections(lists=told)
    shown.get_by_role("tab", name="Lists").click()
    row = shown.get_by_role("row").nth(1).get_by_role("button")
    row.click()
    shown.get_by_role("row").nth(2).click()
    assert row.get_attribute("aria-pressed") == "true"


def test_a_unit_of_no_parts_is_followed_by_a_whole_one(server: Server, dresser: page.Model) -> None:
    shown = _drawn(server, _of(dresser, ()))
    for name in ("Front", "Dimensions", "Measure"):
        shown.get_by_role("button", name=name, exact=True).click()
    for tab in shown.get_by_role("tab").all():
        tab.click()
    shown.locator("summary", has_text="Cut").click()
    shown.get_by_label("Depth", exact=True).check()
    shown.get_by_label("No cut").check()
    shown.locator("canvas").focus()
    for key in "npoc":
        shown.keyboard.press(key)
    _drawn(server, dresser, 2)
    assert _middle_is_of_the_unit(shown)


def test_one_part_alone_fills_the_picture(server: Server, dresser: page.Model) -> None:
    shown = _drawn(server, _of(dresser, dresser.parts[:1]))
    assert _middle_is_of_the_unit(shown) == dresser.parts[0].ref


def test_a_part_without_a_shape_takes_nothing_with_it(server: Server, dresser: page.Model) -> None:
    bare, *others = dresser.parts
    shape = page.Shape(points="", normals="", triangles="", edges="")
    model = _of(dresser, (replace(bare, shape="bare"), *others))
    model = replace(model, shapes={**model.shapes, "bare": shape})
    server.sections(findings=[finding("note", bare.ref)])
    shown = _drawn(server, model)
    server.sections(findings=[finding("note", bare.ref)])
    shown.get_by_role("button", name="Note: a note").click()
    shown.locator("canvas").focus()
    shown.keyboard.press("n")
    shown.locator("summary", has_text="Cut").click()
    shown.get_by_label("Depth", exact=True).check()
    assert _middle_is_of_the_unit(shown)


def _of(model: page.Model, parts: tuple[page.Part, ...]) -> page.Model:
    """The model with these parts alone, and what goes with them."""
    refs = {each.ref for each in parts}
    motions = tuple(each for each in model.motions if refs.issuperset(each.refs))
    fittings = tuple(each for each in model.fittings if each.ref in refs)
    return replace(model, parts=parts, motions=motions, fittings=fittings)
