"""Units on a page, opened in a browser: what tests of the page stand on."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import asdict
from pathlib import Path

from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, DRAWN, opened_anywhere, until
from rodwright.page import document as told
from rodwright.page.model import model_of
from rodwright.page.shell import page_html
from rodwright.unit import Unit


def written(unit: Unit, sections: told.Sections, folder: Path) -> str:
    """The address of a file with a unit's page in it, told nothing but this."""
    page = folder / "page.html"
    start = {"model": asdict(model_of(unit)), "sections": asdict(sections)}
    page.write_text(page_html(unit.title, start), encoding="utf-8")
    return page.as_uri()


@contextmanager
def unit_page(
    browser: Browser, address: str, size: dict[str, int] = DESKTOP, *, touch: bool = False
) -> Iterator[Page]:
    """A page whose unit is drawn."""
    with opened_anywhere(browser, size, has_touch=touch, is_mobile=touch) as page:
        page.goto(address)
        until(page, DRAWN)
        settle(page)
        yield page


def settle(page: Page) -> None:
    """Let two frames pass: what was asked for is drawn then."""
    page.evaluate(
        "new Promise(on => requestAnimationFrame(() => requestAnimationFrame(() => on(null))))"
    )


def put_together(page: Page) -> None:
    """Close what is open, and take nothing apart, whatever was done before."""
    close, apart = page.get_by_role("button", name="Close all"), page.get_by_label("Apart")
    if close.count():
        close.click()
    if apart.count():
        apart.fill("0")
    until(page, "stage.resting")
    settle(page)


_ON_SCREEN = """([ref, point]) => {
  const at = stage.camera.position.clone().set(...point);
  if (ref) at.applyMatrix4(stage.pieces.get(ref).mesh.matrixWorld);
  at.project(stage.camera);
  const box = stage.canvas.getBoundingClientRect();
  return [box.left + (at.x + 1) / 2 * box.width, box.top + (1 - at.y) / 2 * box.height];
}"""


def on_screen(
    page: Page, ref: str | None, point: tuple[float, float, float]
) -> tuple[float, float]:
    """Where a point of a part (part frame, mm), or else of the unit frame, is in the window, in
    pixels."""
    x, y = page.evaluate(_ON_SCREEN, [ref, list(point)])
    return x, y


def label_texts(page: Page, kind: str = "label") -> list[str]:
    """The words over the canvas that are shown."""
    shown = page.locator(f".labels span.{kind}:visible")
    return [each.strip() for each in shown.all_inner_texts()]
