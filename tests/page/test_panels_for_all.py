"""The page for those who use no mouse, a phone or a screen reader."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

from kit.axe import faults_of
from kit.browser import DESKTOP, PHONE, opened, until
from kit.live import Server, live
from kit.told import details, finding, sheet
from rodwright.page import document as page

pytestmark = pytest.mark.xdist_group("browser")

LANDSCAPE, LARGE = {"width": 844, "height": 390}, {"width": 3840, "height": 2160}


@pytest.fixture
def server(browser: Browser, dresser: page.Model) -> Iterator[Server]:
    with _told(browser, dresser, DESKTOP) as there:
        yield there


def test_all_is_done_by_keyboard_alone(server: Server, dresser: page.Model) -> None:
    shown, press = server.page, server.page.keyboard.press
    # Read a finding, and light its part up.
    _tab_to(shown, "Findings")
    _tab_to(shown, "Error: a error")
    press("Enter")
    until(shown, "document.activeElement.getAttribute('aria-pressed') === 'true'")
    # Choose a part of a door, and read its size.
    _tab_to(shown, "Findings", backwards=True)
    press("ArrowRight")
    press("ArrowRight")
    _tab_to(shown, "Find")
    shown.keyboard.type("door")
    _tab_to(shown, "Parts", role="listbox")
    press("ArrowDown")
    chosen = shown.get_by_role("option", selected=True).inner_text().split("\n")[0]
    press("Enter")
    part = next(each for each in dresser.parts if each.ref == chosen)
    shown.get_by_role("tabpanel").get_by_text(f"{part.size} mm").wait_for()
    # Open the door it is of.
    _tab_to(shown, "Open it")
    press("Enter")
    shown.get_by_role("button", name="Close it").wait_for()
    # Take the unit apart.
    before = shown.evaluate("stage.pieces.get('BT1').group.matrix.elements[14]")
    server.sections(apart={each.ref: (0.0, 0.0, -300.0) for each in dresser.parts})
    _tab_to(shown, "Apart", backwards=True)
    press("End")
    until(
        shown,
        f"Math.abs(stage.pieces.get('BT1').group.matrix.elements[14] - {before} + 300) < 1",
    )


def _tab_to(shown: Page, name: str, *, role: str = "", backwards: bool = False) -> None:
    """Press the Tab key until something of this name has the focus."""
    for _ in range(60):
        if shown.evaluate(_FOCUSED, [name, role]):
            return
        shown.keyboard.press("Shift+Tab" if backwards else "Tab")
    raise AssertionError(f"the Tab key never comes to {name}")


_FOCUSED = """([name, role]) => {
  const at = document.activeElement;
  if (at.id === "panel") return false;
  const said = at.getAttribute("aria-label") ?? at.labels?.[0]?.innerText ?? at.innerText ?? "";
  return said.startsWith(name) && (!role || at.getAttribute("role") === role);
}"""


def test_the_skip_link_leads_to_the_panel(server: Server) -> None:
    server.page.keyboard.press("Tab")
    server.page.keyboard.press("Enter")
    until(server.page, "document.activeElement.id === 'panel'")


@pytest.mark.parametrize("size", [DESKTOP, PHONE], ids=["desktop", "phone"])
def test_axe_finds_nothing_wrong(
    browser: Browser, dresser: page.Model, size: dict[str, int]
) -> None:
    with _told(browser, dresser, size) as server:
        shown = server.page
        for name in ("Part", "Findings", "Parts", "Lists", "Opening", "Strength", "Cutting"):
            shown.get_by_role("tab", name=name, exact=name == "Part").click()
            assert not faults_of(shown), name
        shown.get_by_role("tab", name="Parts").click()
        shown.get_by_role("option").nth(3).click()
        assert not faults_of(shown)
        shown.get_by_text("Cut", exact=True).click()
        shown.get_by_label("Width").check()
        trouble = page.Trouble("Not a length.", "Write 18 mm.", 4, 9)
        server.tell(kind="troubles", version=2, troubles=[asdict(trouble)])
        shown.get_by_role("alert").get_by_text("Not a length").wait_for()
        assert not faults_of(shown)


def test_axe_finds_nothing_wrong_with_the_page_to_send(browser: Browser, sent: Path) -> None:
    with opened(browser, sent.as_uri(), PHONE) as shown:
        for tab in shown.get_by_role("tab").all():
            tab.click()
            assert not faults_of(shown), tab.inner_text()


@pytest.mark.parametrize(
    "size", [PHONE, LANDSCAPE, DESKTOP, LARGE], ids=["phone", "landscape", "desktop", "large"]
)
def test_no_page_scrolls_sideways_and_the_unit_has_room(
    browser: Browser, dresser: page.Model, size: dict[str, int]
) -> None:
    with _told(browser, dresser, size) as server:
        shown = server.page
        assert shown.evaluate("document.documentElement.scrollWidth") == size["width"]
        assert shown.evaluate("document.documentElement.scrollHeight") == size["height"]
        box = shown.locator("canvas").first.bounding_box()
        assert box is not None
        assert box["width"] * box["height"] > 0.3 * size["width"] * size["height"]


def test_a_phones_targets_are_large_enough_to_touch(browser: Browser, dresser: page.Model) -> None:
    with _told(browser, dresser, PHONE, has_touch=True, is_mobile=True) as server:
        shown = server.page
        for name in ("Part", "Findings", "Parts", "Lists"):
            shown.get_by_role("tab", name=name, exact=name == "Part").click()
            small = shown.evaluate(_SMALL)
            assert not small, (name, small)


# Buttons and the like (a box with its label) that are seen and are less than 44 px high or wide.
_SMALL = """() => [...document.querySelectorAll(
    "button, summary, label:not([for]), input:not(label input), [role=option]")]
  .map((each) => [each.outerHTML.slice(0, 120), each.getBoundingClientRect()])
  .filter(([, box]) => box.width > 0 && (box.width < 43.9 || box.height < 43.9))
  .map(([text, box]) => `${text} ${box.width} x ${box.height}`)"""


def test_the_drawer_gives_the_unit_the_screen_and_takes_it(
    browser: Browser, dresser: page.Model
) -> None:
    with _told(browser, dresser, PHONE, has_touch=True, is_mobile=True) as server:
        shown = server.page
        panel, canvas = shown.get_by_role("tabpanel"), shown.locator("canvas").first
        half = canvas.bounding_box()
        shown.get_by_role("button", name="Lower the panel").tap()
        panel.wait_for(state="hidden")
        lowered = canvas.bounding_box()
        assert half and lowered and lowered["height"] > half["height"] + 200
        shown.get_by_role("tab", name="Findings").tap()
        panel.wait_for(state="visible")
        shown.get_by_role("button", name="Raise the panel").tap()
        canvas.wait_for(state="hidden")


@contextmanager
def _told(
    browser: Browser, model: page.Model, size: dict[str, int], **more: bool
) -> Iterator[Server]:
    with live(browser, size, **more) as server:
        server.model(model)
        one, two = model.parts[0].ref, model.parts[1].ref
        sheets = dict.fromkeys(("lists", "opening", "strength", "cutting"), sheet(model))
        findings = [finding("error", one, two), finding("warning"), finding("note", two)]
        server.sections(details=details(model), findings=findings, **sheets)
        server.page.get_by_role("button", name="Error: a error").wait_for()
        yield server
