"""The edge between the unit and the panel beside it, and what fits into the panel."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Browser

from kit.browser import PHONE, until
from kit.live import Server, live
from rodwright.page import document as page

pytestmark = pytest.mark.xdist_group("browser")

WIDE = {"width": 1920, "height": 1080}


@pytest.fixture
def server(browser: Browser, dresser: page.Model) -> Iterator[Server]:
    with live(browser, WIDE) as there:
        there.model(dresser)
        there.page.get_by_role("heading", level=1, name=dresser.title).wait_for()
        yield there


def _width(server: Server) -> float:
    box = server.page.get_by_role("complementary").bounding_box()
    assert box is not None
    return box["width"]


def test_the_panel_has_more_room_on_a_wide_screen(server: Server) -> None:
    assert _width(server) == pytest.approx(0.38 * WIDE["width"], abs=1)


def test_the_edge_is_dragged_and_stays_there_over_a_reload(
    server: Server, dresser: page.Model
) -> None:
    shown = server.page
    edge = shown.get_by_role("separator", name="How wide the panel is")
    box = edge.bounding_box()
    assert box is not None
    shown.mouse.move(box["x"] + box["width"] / 2, 500)
    shown.mouse.down()
    shown.mouse.move(960, 400, steps=3)
    shown.mouse.up()
    assert _width(server) == pytest.approx(960, abs=1)
    assert edge.get_attribute("aria-valuenow") == "50"
    assert shown.evaluate("getSelection().toString()") == ""
    shown.mouse.move(300, 400)
    assert _width(server) == pytest.approx(960, abs=1)
    shown.reload()
    server.model(dresser)
    until(shown, "document.querySelector('[role=separator]')?.ariaValueNow === '50'")
    assert _width(server) == pytest.approx(960, abs=1)
    edge.dblclick()
    assert edge.get_attribute("aria-valuenow") == "38"


def test_keys_move_the_edge_the_way_their_arrows_point(server: Server) -> None:
    """WAI-ARIA Authoring Practices, Window Splitter: arrows, Home and End; its value is told."""
    edge = server.page.get_by_role("separator", name="How wide the panel is")
    edge.focus()
    for key, per_cent in (("ArrowLeft", 40), ("ArrowRight", 38), ("End", 60), ("ArrowLeft", 60)):
        server.page.keyboard.press(key)
        until(server.page, f"document.activeElement.ariaValueNow === '{per_cent}'")
        assert _width(server) == pytest.approx(per_cent / 100 * WIDE["width"], abs=1)
    server.page.keyboard.press("Home")
    until(server.page, "document.activeElement.ariaValueNow === '20'")


def test_a_phone_has_no_such_edge(browser: Browser, dresser: page.Model) -> None:
    with live(browser, PHONE) as there:
        there.model(dresser)
        there.page.get_by_role("button", name="Raise the panel").wait_for()
        assert not there.page.get_by_role("separator").is_visible()
