"""A real browser for tests: Chromium without a screen, driven by Playwright."""

from __future__ import annotations

import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

from playwright.sync_api import Browser, Page, expect, sync_playwright

from kit.needed import need

DESKTOP, PHONE = {"width": 1280, "height": 800}, {"width": 390, "height": 844}
DRAWN = "window.stage && stage.pieces.size > 0"
"""A script's expression that is true once a unit is drawn."""
_FLAGS = (
    "--no-sandbox",
    "--use-angle=swiftshader",
    "--enable-unsafe-swiftshader",
    "--ignore-gpu-blocklist",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
)

_PATIENCE = 60_000
"""Milliseconds until what is expected of a page is given up: no machine is so slow."""


@contextmanager
def chromium() -> Iterator[Browser]:
    """Chromium as Debian has it; skipped where there is none, but never on a build server."""
    program = shutil.which("chromium") or shutil.which("google-chrome")
    need(program, "Chromium (Debian: chromium)")
    with sync_playwright() as playwright:
        browser = playwright.chromium.launch(executable_path=program, args=[*_FLAGS])
        expect.set_options(_PATIENCE)
        yield browser
        browser.close()


@contextmanager
def opened(browser: Browser, address: str, size: dict[str, int] = DESKTOP) -> Iterator[Page]:
    """A page at an address, as :func:`opened_anywhere` has it."""
    with opened_anywhere(browser, size) as page:
        page.goto(address)
        yield page


@contextmanager
def opened_anywhere(
    browser: Browser, size: dict[str, int] = DESKTOP, **more: Any
) -> Iterator[Page]:
    """An empty page, as :func:`tab` has it, that must say nothing of errors on its console."""
    with tab(browser, size, **more) as page:
        said: list[str] = []
        page.on("console", lambda each: said.append(each.text) if each.type == "error" else None)
        page.on("pageerror", lambda each: said.append(str(each)))
        yield page
        assert not said, said


@contextmanager
def tab(browser: Browser, size: dict[str, int] = DESKTOP, **more: Any) -> Iterator[Page]:
    """An empty page in a context of its own, with what Playwright has ``more`` for it."""
    viewport = {"width": size["width"], "height": size["height"]}
    context = browser.new_context(viewport=viewport, **more)
    try:
        yield context.new_page()
    finally:
        context.close()


def until(page: Page, expression: str) -> None:
    """Wait until a script's expression is true there.

    Playwright's own way of waiting evaluates text in the page, which its policy forbids.
    """
    for _ in range(1200):
        if page.evaluate(expression):
            return
        page.wait_for_timeout(50)
    raise AssertionError(f"never came true: {expression}")
