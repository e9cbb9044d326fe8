"""Figures tried in a real browser: the file is written, all pages hear of it, it is undone."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from contextlib import ExitStack
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page

from kit.browser import DRAWN, PHONE, opened, until
from kit.looking import served

pytestmark = pytest.mark.xdist_group("browser")
ALCOVE = (Path(__file__).parents[2] / "models" / "reading-alcove.yaml").read_bytes()
SMALL = {"width": 900, "height": 640}
WIDTH, SHELVES = "Column 2: width", "Column 1: shelves"


@pytest.fixture(scope="module")
def followed(tmp_path_factory: pytest.TempPathFactory) -> Iterator[tuple[Path, str]]:
    """A file, and the address of the command that follows it."""
    path = tmp_path_factory.mktemp("nudges") / "alcove.yaml"
    path.write_bytes(ALCOVE)
    with served(path) as (address, _):
        yield path, address


@pytest.fixture(scope="module")
def both(browser: Browser, followed: tuple[Path, str]) -> Iterator[list[Page]]:
    """Two pages of it, at their figures."""
    with ExitStack() as stack:
        pages = [stack.enter_context(opened(browser, followed[1], SMALL)) for _ in range(2)]
        for page in pages:
            show_figures(page)
        yield pages


@pytest.fixture
def path(followed: tuple[Path, str]) -> Path:
    """The file, as the model is."""
    followed[0].write_bytes(ALCOVE)
    return followed[0]


@pytest.fixture
def tabs(both: list[Page], path: Path) -> list[Page]:
    """The two pages, with the figures of the model.

    What a test before this one wrote may still be on its way to them: they are seen to show
    another width first, after which nothing older can come.
    """
    for width, content in (("433", with_width("433")), ("420", ALCOVE)):
        path.write_bytes(content)
        for page in both:
            until_shown(page, WIDTH, width)
    return both


def show_figures(page: Page) -> None:
    until(page, DRAWN)
    page.get_by_role("tab", name="Figures").click()
    slider(page, WIDTH).wait_for()


def slider(page: Page, name: str) -> Locator:
    return page.get_by_role("slider", name=name, exact=True)


def field(page: Page, name: str) -> Locator:
    group, label = name.split(": ")
    return page.get_by_role("group", name=group, exact=True).get_by_label(label, exact=True)


def until_shown(page: Page, name: str, figure: str) -> None:
    """Wait for a figure to be in its field."""
    for _ in range(600):
        if field(page, name).input_value() == figure:
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"{name} is {field(page, name).input_value()}, not {figure}")


def until_held(page: Page, path: Path, content: bytes) -> None:
    """Wait for the file to hold something."""
    for _ in range(600):
        if path.read_bytes() == content:
            return
        page.wait_for_timeout(50)
    assert path.read_bytes() == content


def with_width(width: str) -> bytes:
    return ALCOVE.replace(b"- width: 420\n", f"- width: {width}\n".encode())


def nudges_sent(page: Page) -> list[str]:
    """What is wished over the page's socket from its next loading on."""
    sent: list[str] = []

    def note(frame: str | bytes) -> None:
        wish = json.loads(frame)
        if wish["kind"] == "nudge":
            sent.append(wish["value"])

    page.on("websocket", lambda socket: socket.on("framesent", note))
    page.reload()
    show_figures(page)
    return sent


def drag(page: Page, to: int) -> None:
    """Take the width's slider and move it to a figure, without letting go."""
    slider(page, WIDTH).scroll_into_view_if_needed()
    box = slider(page, WIDTH).bounding_box()
    assert box is not None
    now = float(slider(page, WIDTH).input_value())
    least, most = (float(slider(page, WIDTH).get_attribute(each) or "") for each in ("min", "max"))

    def along(figure: float) -> float:
        """Where it is for a figure: its thumb, of 16 pixels, stays within its ends."""
        return box["x"] + 8 + (box["width"] - 16) * (figure - least) / (most - least)

    height = box["y"] + box["height"] / 2
    page.mouse.move(along(now), height)
    page.mouse.down()
    page.mouse.move(along(to), height, steps=6)


def matrices(page: Page) -> str:
    return str(
        page.evaluate(
            "JSON.stringify([...stage.pieces].map(([ref, p]) => p.group.matrix.elements))"
        )
    )


def test_a_drag_writes_the_file_is_seen_everywhere_and_is_undone_as_one(
    tabs: list[Page], path: Path
) -> None:
    here, there = tabs
    before = matrices(there)
    sent = nudges_sent(here)
    until_shown(here, WIDTH, "420")
    drag(here, 350)
    held = slider(here, WIDTH).input_value()
    # The file's answers don't take the slider out of the hand.
    until_shown(there, WIDTH, held)
    assert slider(here, WIDTH).input_value() == held
    here.mouse.up()
    assert 345 <= float(held) <= 355
    assert sent[-1] == held
    until_held(here, path, with_width(held))
    assert matrices(there) != before
    here.get_by_role("button", name="Undo").click()
    until_held(here, path, ALCOVE)
    for page in tabs:
        until_shown(page, WIDTH, "420")
    until(
        here,
        "![...document.querySelectorAll('button')].find((b) => b.textContent === 'Redo').disabled",
    )
    there.get_by_role("button", name="Redo").click()
    until_held(there, path, with_width(held))


def test_all_of_it_by_keyboard(tabs: list[Page], path: Path) -> None:
    page = tabs[0]
    slider(page, WIDTH).focus()
    page.keyboard.press("ArrowRight")
    page.keyboard.press("ArrowRight")
    until_held(page, path, with_width("422"))
    until_shown(page, WIDTH, "422")
    page.keyboard.press("Control+z")
    until_held(page, path, with_width("421"))
    until_shown(page, WIDTH, "421")
    page.keyboard.press("Control+z")
    until_held(page, path, ALCOVE)
    until_shown(page, WIDTH, "420")
    page.keyboard.press("Control+Shift+Z")
    until_held(page, path, with_width("421"))
    until_shown(page, WIDTH, "421")
    # In a field the keys are its own.
    field(page, SHELVES).focus()
    page.keyboard.press("Control+z")
    slider(page, WIDTH).focus()
    page.keyboard.press("ArrowRight")
    until_held(page, path, with_width("422"))
    until_shown(page, WIDTH, "422")
    # Had anything been undone, this would lead further back.
    page.get_by_role("button", name="Undo").click()
    until_held(page, path, with_width("421"))


def test_a_field_takes_what_a_maker_writes(tabs: list[Page], path: Path) -> None:
    here, there = tabs
    field(here, WIDTH).fill("16 1/2 in")
    field(here, WIDTH).press("Enter")
    until_held(here, path, with_width("16 1/2 in"))
    until_shown(there, WIDTH, "16 1/2")
    assert slider(there, WIDTH).get_attribute("aria-valuetext") == "16 1/2 in"
    slider(there, WIDTH).focus()
    there.keyboard.press("ArrowRight")
    until_held(there, path, with_width("16 9/16 in"))
    field(there, WIDTH).fill("410 mm")
    field(there, WIDTH).blur()
    until_held(there, path, with_width("410 mm"))


def test_what_makes_no_spec_is_told_and_the_figure_goes_back(tabs: list[Page], path: Path) -> None:
    page = tabs[0]
    field(page, WIDTH).fill("wide")
    field(page, WIDTH).press("Enter")
    page.get_by_text("can't be read as a length").wait_for()
    until_shown(page, WIDTH, "420")
    assert path.read_bytes() == ALCOVE


def test_what_makes_no_unit_is_told_and_can_be_mended_there(tabs: list[Page], path: Path) -> None:
    page = tabs[0]
    field(page, WIDTH).fill("1300")
    field(page, WIDTH).press("Enter")
    until_held(page, path, with_width("1300"))
    page.get_by_role("alert").get_by_text("Line").first.wait_for()
    until_shown(page, WIDTH, "1300")
    field(page, WIDTH).fill("420")
    field(page, WIDTH).press("Enter")
    until_held(page, path, ALCOVE)
    until(page, "!document.querySelector('[role=alert]').textContent.includes('Line')")


def test_what_an_editor_wrote_meanwhile_is_never_lost(tabs: list[Page], path: Path) -> None:
    page = tabs[0]
    field(page, SHELVES).fill("5")
    field(page, SHELVES).press("Enter")
    until(page, "document.querySelector('.nudges button').disabled === false")
    edited = path.read_bytes().replace(b"- width: 420\n", b"- width: 430  # wider\n")
    path.write_bytes(edited)
    until_shown(page, WIDTH, "430")
    until(page, "document.querySelector('.nudges button').disabled")
    slider(page, WIDTH).focus()
    page.keyboard.press("ArrowRight")
    until_held(page, path, edited.replace(b"430", b"431"))
    until_shown(page, WIDTH, "431")
    page.get_by_role("button", name="Undo").click()
    until_held(page, path, edited)


def test_a_chosen_part_has_the_figures_that_change_it(both: list[Page]) -> None:
    page = both[0]
    page.get_by_role("tab", name=re.compile("^Parts")).click()
    page.get_by_role("option", name=re.compile("Lipping|lipping")).first.click()
    page.get_by_role("tab", name="Part", exact=True).click()
    page.get_by_role("heading", name="Figures that change it").wait_for()
    page.get_by_role("slider", name="Lipping: thickness").wait_for()


def test_it_fits_a_phone(browser: Browser, followed: tuple[Path, str]) -> None:
    with opened(browser, followed[1], PHONE) as page:
        show_figures(page)
        assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
        panel = page.locator("#panel")
        assert panel.evaluate("(each) => each.scrollWidth <= each.clientWidth")
