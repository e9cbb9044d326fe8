"""Figures moved while an editor saves the same file: refused, shown as the file has them, and then
moved again at once; in a real browser with the command itself behind it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, WebSocketRoute, expect

from kit.browser import opened_anywhere, until
from kit.looking import served

pytestmark = pytest.mark.xdist_group("browser")
SMALL = {"width": 900, "height": 640}
SPEC = b"""\
title: Shelf
unit: mm
size: {width: 800, height: 900, depth: 300}  # of the wall
stock: {case: {kind: sheet, material: mdf, thickness: 18}}
carcass: {stock: case}
interior: {shelves: 2}
"""
TOLD = "shelf.yaml was changed by someone else meanwhile"


@dataclass
class Late:
    """A page that can be kept from hearing of its file, as over a slow line."""

    page: Page
    line: WebSocketRoute | None = None
    is_held: bool = False
    waiting: list[str | bytes] = field(default_factory=list)

    def meet(self, line: WebSocketRoute) -> None:
        self.line = line
        server = line.connect_to_server()
        server.on_message(self.hear)

    def hear(self, message: str | bytes) -> None:
        self.waiting.append(message)
        if not self.is_held:
            self.let_go()

    def let_go(self) -> None:
        self.is_held = False
        assert self.line is not None
        while self.waiting:
            self.line.send(self.waiting.pop(0))

    @property
    def slider(self) -> Locator:
        return self.page.get_by_role("slider", name="Overall: width", exact=True)

    @property
    def field(self) -> Locator:
        group = self.page.get_by_role("group", name="Overall", exact=True)
        return group.get_by_label("width", exact=True)

    @property
    def told(self) -> Locator:
        return self.page.get_by_role("alert").get_by_text(TOLD)

    def until_refused(self) -> None:
        """Let some time pass until the server has answered."""
        for _ in range(600):
            if any('"refused"' in str(each) for each in self.waiting):
                return
            self.page.wait_for_timeout(50)
        raise AssertionError("it was never refused")


@pytest.fixture(scope="module")
def path(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("refused") / "shelf.yaml"
    made.write_bytes(SPEC)
    return made


@pytest.fixture(scope="module")
def address(path: Path) -> Iterator[str]:
    with served(path) as (said, _):
        yield said


@pytest.fixture
def late(browser: Browser, address: str, path: Path) -> Iterator[Late]:
    """The page of the file as it was, at its figures, hearing of nothing from now on."""
    path.write_bytes(SPEC)
    with opened_anywhere(browser, SMALL) as page:
        late = Late(page)
        page.route_web_socket("**/socket", late.meet)
        page.goto(address)
        until(page, "window.stage && stage.pieces.size > 0")
        page.get_by_role("tab", name="Figures").click()
        expect(late.field).to_have_value("800")
        late.is_held = True
        yield late


def _with(width: str) -> bytes:
    return SPEC.replace(b"width: 800", f"width: {width}".encode())


def _until_held(page: Page, path: Path, content: bytes) -> None:
    for _ in range(600):
        if path.read_bytes() == content:
            return
        page.wait_for_timeout(50)
    assert path.read_bytes() == content


def _is_as_edited(late: Late, path: Path) -> None:
    expect(late.told).to_be_visible()
    expect(late.field).to_have_value("750")
    assert late.slider.input_value() == "750"
    assert path.read_bytes() == _with("750")


def test_by_keys(late: Late, path: Path) -> None:
    late.slider.focus()
    path.write_bytes(_with("750"))
    late.page.keyboard.press("ArrowRight")
    late.until_refused()
    late.let_go()
    _is_as_edited(late, path)
    late.page.keyboard.press("ArrowRight")
    _until_held(late.page, path, _with("751"))
    expect(late.field).to_have_value("751")
    expect(late.told).to_be_hidden()


def test_in_a_field(late: Late, path: Path) -> None:
    path.write_bytes(_with("750"))
    late.field.fill("810")
    late.field.press("Enter")
    late.until_refused()
    late.let_go()
    _is_as_edited(late, path)
    late.field.fill("810")
    late.field.press("Enter")
    _until_held(late.page, path, _with("810"))
    expect(late.told).to_be_hidden()


def test_by_a_drag_which_goes_on(late: Late, path: Path) -> None:
    late.slider.scroll_into_view_if_needed()
    mouse = late.page.mouse

    def across(share: float) -> tuple[float, float]:
        """A place along the slider, wherever the page has it by now."""
        box = late.slider.bounding_box()
        assert box is not None
        return box["x"] + box["width"] * share, box["y"] + box["height"] / 2

    path.write_bytes(_with("750"))
    mouse.move(*across(0.5))
    mouse.down()
    mouse.move(*across(0.6), steps=3)
    late.until_refused()
    late.let_go()
    _is_as_edited(late, path)
    # The hand is still on it: that is of the figure before, and writes nothing any more.
    mouse.move(*across(0.8), steps=4)
    late.page.wait_for_timeout(400)
    _is_as_edited(late, path)
    mouse.up()
    late.page.wait_for_timeout(400)
    _is_as_edited(late, path)
    mouse.move(*across(0.3))
    mouse.down()
    mouse.move(*across(0.4), steps=3)
    mouse.up()
    now = late.slider.input_value()
    assert now != "750"
    _until_held(late.page, path, _with(now))
    expect(late.told).to_be_hidden()
