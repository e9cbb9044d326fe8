"""Lists of the panel are in sight as wide as they are."""

from __future__ import annotations

from dataclasses import asdict

import pytest
from playwright.sync_api import Browser

import rodwright
from kit.axe import faults_of
from kit.browser import DESKTOP, PHONE, until
from kit.live import live
from rodwright.jobs.new import model_path
from rodwright.page.model import model_of
from rodwright.page.telling.lists import lists_told
from rodwright.page.telling.strength import strength_told

pytestmark = pytest.mark.xdist_group("browser")


@pytest.mark.parametrize("size", [DESKTOP, PHONE], ids=["desktop", "phone"])
@pytest.mark.parametrize("name", ["pottery-dresser", "hallway-bookcase"])
def test_no_figure_lies_beyond_the_panels_edge(
    browser: Browser, name: str, size: dict[str, int]
) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path(name)))
    with live(browser, size) as server:
        server.model(model_of(unit))
        server.sections(lists=asdict(lists_told(unit)), strength=asdict(strength_told(unit)))
        for tab in ("Lists", "Strength"):
            server.page.get_by_role("tab", name=tab).click()
            server.page.get_by_role("table").first.wait_for()
            assert server.page.evaluate(_BEYOND) == []


_BEYOND = """() => {
  const panel = document.getElementById("panel");
  const { left } = panel.getBoundingClientRect();
  return [...panel.querySelectorAll("td, td button")]
    .map((each) => [each, each.getBoundingClientRect(), each.scrollWidth > each.clientWidth])
    .filter(([, box, cut]) => box.left < left || box.right > left + panel.clientWidth || cut)
    .map(([each]) => each.innerText);
}"""


def test_a_folded_row_says_what_each_figure_is(browser: Browser) -> None:
    unit = rodwright.set_out(rodwright.read_spec(model_path("pottery-dresser")))
    told = asdict(lists_told(unit))
    with live(browser, PHONE) as server:
        server.model(model_of(unit))
        server.sections(lists=told)
        shown = server.page
        shown.get_by_role("tab", name="Lists").click()
        row = shown.get_by_role("table").first.get_by_role("row").nth(1)
        row.wait_for()
        said = row.get_by_role("cell").evaluate_all(
            "(all) => all.map((it) => [getComputedStyle(it, '::before').content, it.innerText])"
        )
        parts = told["tables"][0]
        assert [text for _, text in said] == list(parts["rows"][0])
        assert [of for of, _ in said][1:] == [f'"{each}"' for each in parts["columns"][1:]]
        assert not faults_of(shown)
        # Where there is room it is a list again, its headings over its figures.
        shown.set_viewport_size({"width": 1920, "height": 1080})
        heading = shown.get_by_role("columnheader", name="size (mm)").first
        until(shown, "!document.querySelector('.folded')")
        head, cell = heading.bounding_box(), row.get_by_role("cell").nth(3).bounding_box()
        assert head and cell
        assert head["x"] == pytest.approx(cell["x"], abs=1)
