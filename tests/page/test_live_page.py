"""The live page with its own server, in a real browser: from a save to what is seen."""

from __future__ import annotations

import signal
from collections.abc import Iterator
from pathlib import Path
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import DRAWN, opened, tab, until
from kit.looking import SHELF, served

pytestmark = pytest.mark.xdist_group("browser")

HOSTILE = "</script><img src=x onerror=document.body.dataset.run=1>"
SHOWN = f"{DRAWN} && stage.resting"


@pytest.fixture
def spec(tmp_path: Path) -> Path:
    path = tmp_path / "Schrank für Zoë.yaml"
    path.write_text(SHELF, encoding="utf-8")
    return path


@pytest.fixture
def tab_that_may_complain(browser: Browser) -> Iterator[Page]:
    """A page whose browser tells its console that nobody answers."""
    with tab(browser) as page:
        yield page


def save(path: Path, text: str) -> None:
    path.write_text(text, encoding="utf-8")


def refs(page: Page) -> set[str]:
    return set(page.evaluate("[...stage.pieces.keys()]"))


def test_a_save_is_seen_in_all_tabs_and_what_stays_as_it_was_is_kept(
    browser: Browser, spec: Path
) -> None:
    with served(spec) as (address, _), opened(browser, address) as page:
        until(page, SHOWN)
        with opened(browser, address) as other:
            until(other, SHOWN)
            assert refs(other) == refs(page)
            before = page.locator("canvas").screenshot()
            page.evaluate("window.before = new Map(stage.pieces)")
            save(spec, SHELF.replace("height: 900", "height: 950"))
            for each in (page, other):
                each.locator("header").get_by_text("600 x 950 x 300 mm").wait_for()
            kept = set(
                page.evaluate(
                    "[...before].filter(([ref, each]) => stage.pieces.get(ref) === each)"
                    ".map(([ref]) => ref)"
                )
            )
            shelves = set(
                page.evaluate(
                    "[...stage.pieces.values()].filter((each) => each.layer === 'shelves')"
                    ".map((each) => each.ref)"
                )
            )
            # A taller unit has taller sides; what lies between them only stands elsewhere.
            assert shelves
            assert shelves < kept < refs(page)
            until(page, "stage.resting")
            assert page.locator("canvas").screenshot() != before
            assert refs(other) == refs(page)
            more = len(refs(page)) + 1
            save(spec, SHELF.replace("count: 2", "count: 3"))
            for each in (page, other):
                until(each, f"stage.pieces.size === {more}")
            assert refs(other) == refs(page)


def test_what_is_wrong_stands_over_the_last_picture_until_it_is_mended(
    browser: Browser, spec: Path
) -> None:
    with served(spec) as (address, _), opened(browser, address) as page:
        until(page, SHOWN)
        page.evaluate("window.before = new Map(stage.pieces)")
        save(spec, SHELF.replace("count: 2", "count: many"))
        told = page.get_by_role("alert")
        told.get_by_text("Line 8, column 20:").wait_for()
        assert "last file that made a unit" in told.inner_text()
        same = "[...before].every(([ref, each]) => stage.pieces.get(ref) === each)"
        assert page.evaluate(f"stage.pieces.size === before.size && {same}")
        with opened(browser, address) as late:
            late.get_by_text("Line 8, column 20:").wait_for()
            until(late, SHOWN)
            assert refs(late) == refs(page)
        save(spec, SHELF)
        told.get_by_text("Line 8").wait_for(state="hidden")
        assert page.evaluate(f"stage.pieces.size === before.size && {same}")


def test_nothing_that_a_spec_says_is_run(browser: Browser, tmp_path: Path) -> None:
    spec = tmp_path / "<img src=x onerror=document.body.dataset.run=1>.yaml"
    title = f'title: "{HOSTILE}"  # {HOSTILE}'
    hostile = SHELF.replace("title: Shelf", title).replace("# two", f"# {HOSTILE}")
    save(spec, hostile)
    with served(spec) as (address, _), opened(browser, address) as page:
        until(page, SHOWN)
        assert page.locator("#page h1").inner_text() == HOSTILE
        # The line of the spec, comment and all, is shown with each part that it wished.
        ref = page.evaluate(
            "[...stage.pieces.values()].find((each) => each.layer === 'shelves').ref"
        )
        page.get_by_role("tab", name="Parts").click()
        page.get_by_role("option", name=ref).first.dblclick()
        page.get_by_text(f"# {HOSTILE}").first.wait_for()
        save(spec, hostile.replace("count: 2", f'count: "{HOSTILE}"'))
        page.get_by_role("alert").get_by_text(HOSTILE[:30]).wait_for()
        assert page.locator("img[src=x]").count() == 0
        assert page.evaluate("document.body.dataset.run") is None


def test_the_page_says_when_its_server_is_gone(tab_that_may_complain: Page, spec: Path) -> None:
    page = tab_that_may_complain
    alert = page.get_by_role("alert")
    with served(spec) as (address, server):
        page.goto(address)
        until(page, SHOWN)
        server.kill()
        alert.get_by_text("The server of this page is gone").wait_for()
        page.locator("header").get_by_text("not followed any more").wait_for()
        assert page.evaluate("stage.pieces.size") > 0
    port = urlsplit(address).port
    with served(spec, "--port", str(port)) as (newer, _):
        assert newer != address
        alert.get_by_text("Another server has taken its place").wait_for()


@pytest.mark.skipif(not hasattr(signal, "SIGSTOP"), reason="signals of POSIX")
def test_a_server_that_falls_silent_is_missed_and_followed_when_it_speaks_again(
    tab_that_may_complain: Page, spec: Path
) -> None:
    page = tab_that_may_complain
    with served(spec) as (address, server):
        with page.expect_websocket() as met:
            page.goto(address)
        met.value.wait_for_event("framereceived", lambda said: '"alive"' in said)
        until(page, SHOWN)
        server.send_signal(signal.SIGSTOP)
        gone = page.get_by_role("alert").get_by_text("The server of this page is gone")
        gone.wait_for()
        save(spec, SHELF.replace("height: 900", "height: 950"))
        server.send_signal(signal.SIGCONT)
        gone.wait_for(state="hidden")
        page.locator("header").get_by_text("600 x 950 x 300 mm").wait_for()
