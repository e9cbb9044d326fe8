"""The panels round the unit, in a real browser."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict

import pytest
from playwright.sync_api import Browser

import rodwright
from kit.browser import chromium
from kit.live import Server, live
from rodwright.jobs.new import model_path
from rodwright.page import document as page
from rodwright.page.model import model_of

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with chromium() as started:
        yield started


@pytest.fixture(scope="module")
def dresser() -> page.Model:
    return model_of(rodwright.set_out(rodwright.read_spec(model_path("pottery-dresser"))))


@pytest.fixture
def server(browser: Browser, dresser: page.Model) -> Iterator[Server]:
    with live(browser) as there:
        there.model(dresser)
        there.page.get_by_role("heading", level=1, name=dresser.title).wait_for()
        yield there


def _finding(severity: str, *parts: str) -> dict[str, object]:
    return asdict(page.Told(severity, f"{severity} rule", f"A {severity}.", "Mend it.", parts, ""))


def test_a_finding_lights_its_parts_up_and_out_again(server: Server, dresser: page.Model) -> None:
    one, two, *_ = [part.ref for part in dresser.parts]
    server.sections(findings=[_finding("note", one), _finding("error", two), _finding("caution")])
    findings = server.page.get_by_role("tabpanel").get_by_role("listitem")
    findings.nth(2).wait_for()
    assert [text.split(":")[0] for text in findings.all_inner_texts()] == [
        "Error",
        "Note",
        "Caution",
    ]
    button = server.page.get_by_role("button", name="Error: A error.")
    button.click()
    assert button.get_attribute("aria-pressed") == "true"
    button.click()
    assert button.get_attribute("aria-pressed") == "false"


def test_old_findings_are_never_shown_as_the_new_files(server: Server, dresser: page.Model) -> None:
    panel = server.page.get_by_role("tabpanel")
    panel.get_by_text("Being worked out.").wait_for()
    server.sections(findings=[_finding("error")])
    panel.get_by_text("A error.").wait_for()
    assert panel.locator(".ageing").inner_text() == ""
    server.model(dresser, 2)
    panel.get_by_text("Of the file before; being worked out anew.").wait_for()
    server.sections(2, findings=[])
    panel.get_by_text("None: nothing is wrong that the checks can see.").wait_for()


def test_a_broken_file_tells_all_that_is_wrong_over_the_last_picture(server: Server) -> None:
    troubles = [
        asdict(page.Trouble("Not a length.", "Write 18 mm.", 4, 9)),
        asdict(page.Trouble("No stock of this name.", "", 12, 3)),
    ]
    server.tell(kind="troubles", version=2, troubles=troubles)
    alert = server.page.get_by_role("alert")
    alert.get_by_text("Line 4, column 9: Not a length.").wait_for()
    first, second = alert.get_by_role("listitem").all_inner_texts()
    assert first.split() == "Line 4, column 9: Not a length. Write 18 mm.".split()
    assert second == "Line 12, column 3: No stock of this name."
    assert server.page.evaluate("stage.pieces.size") > 0
    server.tell(kind="troubles", version=3, troubles=[])
    alert.get_by_text("Not a length").wait_for(state="detached")


def test_the_page_says_when_its_server_is_gone(server: Server) -> None:
    server.gone()
    told = server.page.get_by_role("alert").get_by_text("The server of this page is gone")
    told.wait_for()
    told.wait_for(state="detached")
