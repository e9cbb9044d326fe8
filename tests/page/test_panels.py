"""The panels round the unit, in a real browser."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, replace

import pytest
from playwright.sync_api import Browser

from kit.browser import until
from kit.live import Server, live
from kit.told import details, finding, sheet
from rodwright.page import document as page

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture
def server(browser: Browser, dresser: page.Model) -> Iterator[Server]:
    with live(browser) as there:
        there.model(dresser)
        there.page.get_by_role("heading", level=1, name=dresser.title).wait_for()
        yield there


def test_a_finding_lights_its_parts_up_and_out_again(server: Server, dresser: page.Model) -> None:
    one, two, *_ = [part.ref for part in dresser.parts]
    server.sections(findings=[finding("note", one), finding("error", two), finding("caution")])
    findings = server.page.get_by_role("tabpanel").get_by_role("listitem")
    findings.nth(2).wait_for()
    assert [text.split(":")[0] for text in findings.all_inner_texts()] == [
        "Error",
        "Note",
        "Caution",
    ]
    button = server.page.get_by_role("button", name="Error: a error")
    button.click()
    assert button.get_attribute("aria-pressed") == "true"
    button.click()
    assert button.get_attribute("aria-pressed") == "false"


def test_of_findings_about_one_part_each_is_pointed_at_by_itself(
    server: Server, dresser: page.Model
) -> None:
    told = [finding("error", dresser.parts[0].ref), finding("note", dresser.parts[0].ref)]
    server.sections(findings=told)
    error, note = (
        server.page.get_by_role("button", name=name) for name in ("Error: a error", "Note: a note")
    )
    error.click()
    note.click()
    assert [each.get_attribute("aria-pressed") for each in (error, note)] == ["false", "true"]
    server.sections(findings=told[1:])
    error.wait_for(state="detached")
    assert note.get_attribute("aria-pressed") == "true"


def test_a_findings_rule_is_explained_to_who_asks(server: Server) -> None:
    server.sections(findings=[finding("warning")])
    server.page.get_by_role("tab", name="Findings").click()
    meaning = server.page.get_by_text("What a warning means")
    assert not meaning.is_visible()
    server.page.locator("summary", has_text="Rule: warning-rule").click()
    assert meaning.is_visible()
    assert server.page.get_by_text("Source: A handbook.").is_visible()


def test_what_a_maker_types_is_set_apart_from_the_words_round_it(server: Server) -> None:
    said = "Write `hung: true`, or `<b>in</b>`; a lone ` stays."
    read = "Write hung: true, or <b>in</b>; a lone ` stays."
    told = finding("note") | {"message": said, "remedy": said, "meaning": [["", said]]}
    opening = asdict(page.Sheet((said,), (), (), (said,)))
    server.sections(findings=[told], opening=opening)
    panel = server.page.get_by_role("tabpanel")
    for name, words in (("Findings", [f"Note: {read}", read, read]), ("Opening", [read, read])):
        server.page.get_by_role("tab", name=name).click()
        panel.locator("summary").click()
        panel.locator("code").nth(2 * len(words) - 1).wait_for()
        assert panel.locator("code").all_inner_texts() == ["hung: true", "<b>in</b>"] * len(words)
        for text in words:
            assert text in panel.inner_text()
    server.tell(kind="refused", message=said)
    alert = server.page.get_by_role("alert")
    alert.get_by_text(read).wait_for()
    server.tell(kind="troubles", version=2, troubles=[asdict(page.Trouble(said, said, 4, 9))])
    alert.get_by_role("listitem").wait_for()
    assert alert.get_by_role("listitem").inner_text() == f"Line 4, column 9: {read}\n{read}"


def test_the_part_of_a_door_says_how_it_opens(server: Server, dresser: page.Model) -> None:
    server.page.get_by_role("tab", name="Parts").click()
    said = server.page.get_by_text("A second touch on it")
    for ref, there in ((dresser.motions[0].refs[0], True), (dresser.parts[0].ref, False)):
        server.page.get_by_role("tab", name="Parts").click()
        server.page.locator(f"#part-{ref}").dblclick()
        server.page.get_by_role("heading", name=ref).wait_for()
        assert said.is_visible() is there
        assert server.page.get_by_role("button", name="Open it").is_visible() is there


def test_what_is_told_beside_the_unit_moves_no_piece(server: Server, dresser: page.Model) -> None:
    shown = server.page
    until(shown, "stage.pieces.size > 0 && stage.resting")
    shown.evaluate("() => { window.moves = 0; stage.onMove(() => window.moves++); }")
    server.sections(findings=[finding("error", dresser.parts[0].ref)], lists=sheet(dresser))
    shown.get_by_role("button", name="Error: a error").wait_for()
    assert shown.evaluate("window.moves") == 0
    server.sections(apart={dresser.parts[0].ref: (0.0, 0.0, 90.0)})
    until(shown, "window.moves > 0")


def test_old_findings_are_never_shown_as_the_new_files(server: Server, dresser: page.Model) -> None:
    panel = server.page.get_by_role("tabpanel")
    panel.get_by_text("Being worked out.").wait_for()
    server.sections(findings=[finding("error")])
    panel.get_by_text("Error: a error").wait_for()
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
    assert first == "Line 4, column 9: Not a length.\nWrite 18 mm."
    assert second == "Line 12, column 3: No stock of this name."
    assert server.page.evaluate("stage.pieces.size") > 0
    server.tell(kind="troubles", version=3, troubles=[])
    alert.get_by_text("Not a length").wait_for(state="detached")


def test_what_is_being_read_is_said_and_an_old_trouble_is_never_the_new_files(
    server: Server, dresser: page.Model
) -> None:
    stand = server.page.get_by_role("banner").get_by_role("status")
    alert = server.page.get_by_role("alert")
    troubles = [asdict(page.Trouble("Not a length.", "Write 18 mm.", 4, 9))]
    server.tell(kind="reading", version=2)
    stand.get_by_text("version 2: being read").wait_for()
    server.tell(kind="troubles", version=2, troubles=troubles)
    alert.get_by_text("The file as it is now makes no unit: one thing is wrong").wait_for()
    stand.get_by_text("version 2: makes no unit").wait_for()
    server.tell(kind="reading", version=3)
    stand.get_by_text("version 3: being read").wait_for()
    before = "The file is being read. Version 2, before it, made no unit: one thing was wrong"
    alert.get_by_text(before).wait_for()
    assert "as it is now" not in alert.inner_text()
    # The model alone, before the word that it has no troubles.
    server.tell(kind="model", version=3, model=asdict(dresser))
    stand.get_by_text("version 3: being checked").wait_for()
    assert alert.inner_text() == ""


def test_a_long_title_takes_two_lines(server: Server, dresser: page.Model) -> None:
    title = "Kitchendresser" * 22
    server.model(replace(dresser, title=title), 2)
    heading = server.page.get_by_role("heading", level=1, name=title)
    for width in (1280, 390):
        server.page.set_viewport_size({"width": width, "height": 844})
        box = heading.bounding_box()
        assert box is not None
        assert box["x"] + box["width"] <= width
        assert box["height"] <= 2.6 * heading.evaluate(
            "(it) => parseFloat(getComputedStyle(it).fontSize)"
        )
    # On paper it is whole.
    server.page.emulate_media(media="print")
    printed = server.page.locator("#printed h1")
    assert printed.inner_text() == title
    cut_off = printed.evaluate("(it) => it.scrollHeight - it.clientHeight")
    assert cut_off <= 1
    assert printed.evaluate("(it) => it.scrollWidth <= it.clientWidth")


def test_a_cut_is_written_in_the_makers_unit(server: Server, dresser: page.Model) -> None:
    there = server.page
    server.model(replace(dresser, unit="in"), 2)
    there.get_by_text("The unit is being drawn.").wait_for(state="detached")
    there.locator("summary", has_text="Cut").click()
    there.get_by_label("Width", exact=True).check()
    field = there.get_by_label("Cut so far from the left, in in")
    for said, mm in (("12 3/8", 12.375 * 25.4), ("10.5", 10.5 * 25.4), ("300 mm", 300.0)):
        field.fill(said)
        field.press("Enter")
        told = there.get_by_label("Place of the cut").input_value()
        assert float(told) == pytest.approx(mm, abs=25.4 / 32)
    for wrong in ("twelve", "9999"):
        field.fill(wrong)
        field.press("Enter")
        there.get_by_text("Write 0 to").wait_for()
        assert field.get_attribute("aria-invalid") == "true"
    assert float(there.get_by_label("Place of the cut").input_value()) == pytest.approx(300, abs=1)


def test_the_page_says_when_its_server_is_gone(server: Server) -> None:
    server.gone()
    told = server.page.get_by_role("alert").get_by_text("The server of this page is gone")
    told.wait_for()
    told.wait_for(state="detached")


def test_a_chosen_part_tells_all_there_is_of_it(server: Server, dresser: page.Model) -> None:
    server.sections(details=details(dresser))
    shown = server.page
    shown.get_by_role("tab", name="Parts").click()
    part = dresser.parts[5]
    shown.locator(f"#part-{part.ref}").dblclick()
    panel = shown.get_by_role("tabpanel", name="Part", exact=True)
    panel.get_by_role("heading", name=f"{part.ref} {part.name}").wait_for()
    for text in (
        f"{part.size} mm",
        "birch plywood",
        "4.2 kg",
        "a groove 6 mm deep",
        "Line 31: - {width: 420} # the narrow one",
    ):
        assert panel.get_by_text(text).is_visible()
    panel.get_by_role("button", name=f"in a housing of {dresser.parts[0].ref}").click()
    panel.get_by_role("heading", name=dresser.parts[0].name).wait_for()


def test_figures_of_a_parts_size_come_before_those_of_its_workings(
    server: Server, dresser: page.Model
) -> None:
    ref, *others = (part.ref for part in dresser.parts[:4])
    workings = page.Nudge("a", "Shelves", "setback", "20", "mm", 20.0, 0.0, 50.0, 1.0, 3)
    size = replace(workings, key="b", group="Overall", label="height")
    moves = replace(workings, key="c", group="Base", label="toe space")
    hanging = {
        "a": page.Hanging((ref,), ()),
        "b": page.Hanging((ref, *others), (), (ref,)),
        "c": page.Hanging((), (ref,)),
    }
    nudges = [asdict(each) for each in (workings, size, moves)]
    server.tell(kind="nudges", version=1, nudges=nudges, undo=False, redo=False, overtaken=False)
    server.sections(hanging={key: asdict(each) for key, each in hanging.items()})
    shown = server.page
    shown.get_by_role("tab", name="Parts").click()
    shown.locator(f"#part-{ref}").dblclick()
    legends = shown.get_by_role("tabpanel").locator("legend")
    legends.first.wait_for()
    assert legends.all_inner_texts()[:2] == ["Overall", "Shelves"]
    assert not shown.get_by_label("toe space").first.is_visible()
    shown.get_by_text("One figure that only moves it").click()
    assert shown.get_by_label("toe space").first.is_visible()


def test_what_is_put_out_of_sight_comes_back(server: Server, dresser: page.Model) -> None:
    shown = server.page
    shown.get_by_role("tab", name="Parts").click()
    shown.locator(f"#part-{dresser.parts[0].ref}").dblclick()
    shown.get_by_role("button", name="Show only this").click()
    shown.get_by_text(f"{len(dresser.parts) - 1} parts are out of sight").wait_for()
    shown.get_by_role("button", name="Show all").click()
    shown.get_by_text("out of sight").wait_for(state="detached")


def test_the_list_of_parts_keeps_to_what_is_sought(server: Server, dresser: page.Model) -> None:
    shown = server.page
    shown.get_by_role("tab", name="Parts").click()
    shown.get_by_label("Find").fill("drawer side")
    wanted = [part.ref for part in dresser.parts if "rawer side" in part.name]
    shown.get_by_text(f"{len(wanted)} of {len(dresser.parts)} parts").wait_for()
    assert len(wanted) == shown.get_by_role("option").count() > 0
    shown.get_by_label("Find").fill("no such part")
    shown.get_by_text(f"0 of {len(dresser.parts)} parts").wait_for()


def test_a_row_lights_its_parts_and_a_drawing_opens_large(
    server: Server, dresser: page.Model
) -> None:
    server.sections(lists=sheet(dresser))
    shown = server.page
    shown.get_by_role("tab", name="Lists").click()
    row = shown.get_by_role("button", name=dresser.parts[3].ref, exact=True)
    row.click()
    assert row.get_attribute("aria-pressed") == "true"
    shown.get_by_role("button", name="Enlarge: A line").click()
    large = shown.get_by_role("dialog").get_by_role("img", name="A line")
    before = large.bounding_box()
    shown.get_by_role("button", name="Larger").click()
    after = large.bounding_box()
    assert before and after and after["width"] == pytest.approx(before["width"] * 1.5, abs=1)
    shown.keyboard.press("Escape")
    shown.get_by_role("dialog").wait_for(state="hidden")


def test_nothing_is_lost_on_reload(server: Server, dresser: page.Model) -> None:
    shown = server.page
    shown.get_by_role("tab", name="Parts").click()
    shown.get_by_label("Find").fill("door")
    shown.get_by_role("option").first.click()
    chosen = shown.get_by_role("option", selected=True).inner_text()
    shown.get_by_role("button", name="Dimensions").click()
    shown.reload()
    server.model(dresser)
    shown.get_by_role("tab", name="Parts", selected=True).wait_for()
    assert shown.get_by_role("option", selected=True).inner_text() == chosen
    assert shown.get_by_label("Find").input_value() == "door"
    assert shown.get_by_role("button", name="Dimensions").get_attribute("aria-pressed") == "true"


def test_each_tab_is_as_far_down_as_it_was_left(server: Server, dresser: page.Model) -> None:
    server.sections(lists=sheet(dresser))
    shown = server.page
    panel = shown.locator("#panel")
    shown.get_by_role("tab", name="Lists").click()
    panel.get_by_text("As they are cut.").wait_for()
    panel.evaluate("(at) => at.scrollTo(0, 700)")
    kept = "Object.entries(sessionStorage).find(([name]) => name.endsWith(' scrolled'))?.[1]"
    until(shown, f"{kept}?.includes('700')")
    shown.get_by_role("tab", name="Opening").click()
    until(shown, "document.getElementById('panel').scrollTop === 0")
    shown.get_by_role("tab", name="Lists").click()
    until(shown, "document.getElementById('panel').scrollTop === 700")
    shown.reload()
    server.model(dresser)
    server.sections(lists=sheet(dresser))
    until(shown, "document.getElementById('panel').scrollTop === 700")
