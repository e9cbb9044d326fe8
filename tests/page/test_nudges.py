"""Figures tried on the page, whatever its server does."""

from __future__ import annotations

from dataclasses import asdict, replace

import pytest
from playwright.sync_api import Browser, expect

from kit.axe import faults_of
from kit.browser import PHONE
from kit.live import live
from rodwright.page.document import Hanging, Nudge

pytestmark = pytest.mark.xdist_group("browser")
SMALL = {"width": 900, "height": 640}


def test_the_file_is_written_at_intervals_and_last_of_all_what_was_last(browser: Browser) -> None:
    nudge = Nudge("size/width", "Overall", "width", "800", "mm", 800.0, 400.0, 1200.0, 1.0, 3)
    with live(browser, SMALL) as server:
        server.tell(kind="nudges", version=7, nudges=[asdict(nudge)], undo=False, redo=False)
        server.page.get_by_role("tab", name="Figures").click()
        server.page.get_by_role("slider", name="Overall: width").evaluate(
            """(slider) => {
                slider.dispatchEvent(new PointerEvent("pointerdown"));
                for (let at = 801; at <= 850; at++) {
                    slider.value = at;
                    slider.dispatchEvent(new Event("input", { bubbles: true }));
                }
                slider.dispatchEvent(new Event("change", { bubbles: true }));
            }"""
        )
        for _ in range(600):
            if len(server.heard) == 2:
                break
            server.page.wait_for_timeout(50)
        first, last = server.heard
        assert (first["value"], last["value"]) == ("801", "850")
        assert first["drag"] == last["drag"] != ""
        assert first["version"] == last["version"] == 7


def test_what_is_being_written_stays_while_the_file_changes(browser: Browser) -> None:
    nudge = Nudge("size/width", "Overall", "width", "800", "mm", 800.0, 400.0, 1200.0, 1.0, 3)
    with live(browser, SMALL) as server:
        server.tell(kind="nudges", version=1, nudges=[asdict(nudge)], undo=False, redo=False)
        server.page.get_by_role("tab", name="Figures").click()
        written = server.page.get_by_role("textbox")
        written.fill("75")
        now = asdict(replace(nudge, value="810", number=810.0, line=4))
        server.tell(kind="nudges", version=2, nudges=[now], undo=False, redo=False)
        server.page.get_by_text("line 4").wait_for()
        assert written.input_value() == "75"
        written.press("Escape")
        assert written.input_value() == "810"
        written.fill("750")
        written.press("Enter")
        written.blur()
        expect(written).to_have_value("750")
        server.tell(kind="refused", message="Somebody else was faster.")
        expect(written).to_have_value("810")
        assert [(each["value"], each["version"]) for each in server.heard] == [("750", 2)]


def test_an_emptied_field_goes_back_and_what_was_refused_before_is_gone(browser: Browser) -> None:
    nudge = Nudge("fit", "Fit", "left", "3", "mm", 3.0, 0.0, 20.0, 1.0, 2, written=False)
    with live(browser, SMALL) as server:
        server.tell(kind="nudges", version=1, nudges=[asdict(nudge)], undo=False, redo=False)
        server.page.get_by_role("tab", name="Figures").click()
        server.page.get_by_text("not in the file yet").wait_for()
        assert server.page.get_by_text("line 2").count() == 0
        server.tell(kind="refused", message="`abc` can't be read.")
        refused = server.page.get_by_role("alert").get_by_text("abc can't be read.")
        refused.wait_for()
        written = server.page.get_by_role("textbox")
        written.fill("")
        written.press("Enter")
        expect(written).to_have_value("3")
        refused.wait_for(state="detached")


def test_what_hangs_on_a_figure_is_told_and_lights_up(browser: Browser) -> None:
    width = Nudge("size/width", "Overall", "width", "800", "mm", 800.0, 400.0, 1200.0, 1.0, 3)
    share = replace(width, key="a", group="Column 1", value="1 share", unit="share", number=None)
    with live(browser, SMALL) as server:
        nudges = [asdict(width), asdict(share)]
        server.tell(kind="nudges", version=1, nudges=nudges, undo=False, redo=False)
        server.page.get_by_role("tab", name="Figures").click()
        server.page.get_by_text("Being worked out.").wait_for()
        hanging = {
            "size/width": Hanging(("SH1", "SH2"), ("SD2",)),
            "a": Hanging((), (), nothing=True),
        }
        server.tell(
            kind="sections",
            version=0,
            sections={"hanging": {key: asdict(each) for key, each in hanging.items()}},
        )
        server.page.get_by_text("changes nothing as it is").wait_for()
        assert server.page.get_by_text("Being worked out.").count() == 0
        for text in ("changes 2 parts", "moves 1 part"):
            lights = server.page.get_by_role("button", name=f"Overall: width {text}")
            lights.click()
            assert lights.get_attribute("aria-pressed") == "true"
        units = server.page.locator(".unit").all_inner_texts()
        assert units == ["mm", "share"]
        server.page.get_by_label("width", exact=True).last.fill("2")
        server.page.locator(".unit", has_text="shares").wait_for()


@pytest.mark.parametrize("size", [SMALL, PHONE])
def test_undo_stays_in_sight_and_says_why_it_cant(browser: Browser, size: dict[str, int]) -> None:
    many = [
        asdict(Nudge(f"k{at}", f"Column {at}", "width", "800", "mm", 800.0, 400.0, 1200.0, 1.0, 3))
        for at in range(30)
    ]
    with live(browser, size) as server:
        page = server.page
        server.tell(kind="nudges", version=1, nudges=many, undo=True, redo=False, overtaken=False)
        page.get_by_role("tab", name="Figures").click()
        last = page.get_by_role("slider", name="Column 29: width")
        last.scroll_into_view_if_needed()
        undo = page.get_by_role("button", name="Undo")
        expect(undo).to_be_in_viewport(ratio=1)
        expect(undo).to_be_enabled()
        # Gone to by keys, a figure isn't under what stays.
        first = page.get_by_role("textbox", name="width").nth(9)
        first.focus()
        stays, field = page.locator(".back").bounding_box(), first.bounding_box()
        assert stays is not None and field is not None
        assert field["y"] >= stays["y"] + stays["height"]
        server.tell(kind="nudges", version=2, nudges=many, undo=False, redo=False, overtaken=True)
        page.get_by_text("The file was saved from elsewhere since").wait_for()
        expect(undo).to_be_disabled()


def test_axe_finds_nothing_wrong_with_figures(browser: Browser) -> None:
    plain = Nudge("size/width", "Overall", "width", "800", "mm", 800.0, 400.0, 1200.0, 1.0, 3)
    told = [
        plain,
        replace(plain, key="a", label="height", value="1 share", unit="share", number=None),
        replace(plain, key="b", group="Column 1", written=False, also=("column 2",)),
        replace(plain, key="c", group="Column 1", also=("column 2", "column 3")),
    ]
    for size in (SMALL, PHONE):
        with live(browser, size) as server:
            nudges = [asdict(each) for each in told]
            server.tell(kind="nudges", version=1, nudges=nudges, undo=True, redo=False)
            server.page.get_by_role("tab", name="Figures").click()
            server.page.get_by_role("slider", name="Column 1: width").first.wait_for()
            assert faults_of(server.page) == []


def test_a_figure_written_in_another_unit_goes_by_that_units_steps(browser: Browser) -> None:
    inches = Nudge("size/width", "Overall", "width", "32", "in", 32.0, 16.0, 48.0, 0.0625, 3)
    millimetres = replace(inches, value="40", unit="mm", number=40.0, least=20, most=60, step=1.0)
    with live(browser, SMALL) as server:
        server.tell(kind="nudges", version=1, nudges=[asdict(inches)], undo=False, redo=False)
        server.page.get_by_role("tab", name="Figures").click()
        slider = server.page.get_by_role("slider", name="Overall: width")
        expect(slider).to_have_attribute("step", "0.0625")
        server.tell(kind="nudges", version=2, nudges=[asdict(millimetres)], undo=False, redo=False)
        expect(slider).to_have_attribute("step", "1")
        assert [slider.get_attribute(each) for each in ("min", "max")] == ["20", "60"]
