"""Measuring snaps to corners that are seen and to no others, whatever hides or bares them: in a
real browser, held to arithmetic with boxes."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from contextlib import contextmanager

import pytest
from playwright.sync_api import Browser, Page

from kit.boxes_in_sight import is_corner_seen
from kit.pages_of import label_texts, on_screen, settle, unit_page, written
from rodwright.geometry import Box, Vector
from rodwright.lengths import format_length
from rodwright.page.document import Sections
from rodwright.setout import set_out
from rodwright.unit import Unit
from rodwright.wishes.reading.files import parse_spec

pytestmark = pytest.mark.xdist_group("browser")
SMALL = {"width": 760, "height": 560}
SPEC = """\
title: Case
unit: mm
size: {width: 600, height: 900, depth: 300}
stock: {case: {kind: sheet, material: mdf, thickness: 18}}
carcass: {stock: case}
interior:
  rows:
    - {height: 1 share, doors: {count: 1}, shelves: {count: 1, fixed: false}}
    - {height: 400, shelves: {count: 1, fixed: false}}
"""
BEHIND_DOOR, OPEN_SHELF, DOOR, TOP = REFS = "SH2", "SH3", "DO1", "TP1"
"""Parts whose corners are those of their boxes: nothing is let into them."""
DRAWN = {BEHIND_DOOR: (0.0, -1000.0, 0.0), DOOR: (0.0, 0.0, 700.0)}
"""Where parts are taken apart to: the shelf hides what it didn't, the door nothing any more."""
_EYE = "stage.camera.position.toArray()"
_ALL = Box((-1e5,) * 3, (1e5,) * 3)
Boxes = dict[str, Box]


@pytest.fixture(scope="module")
def unit() -> Unit:
    return set_out(parse_spec(SPEC, "case.yaml"))


@pytest.fixture(scope="module")
def loaded(
    browser: Browser, unit: Unit, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[Page]:
    address = written(unit, Sections(apart=DRAWN), tmp_path_factory.mktemp("hidden"))
    with unit_page(browser, address, SMALL) as page:
        page.emulate_media(reduced_motion="reduce")
        # Hinges are no boxes.
        _check(page, "Layers", "Fittings", on=False)
        page.get_by_role("button", name="Measure", exact=True).click()
        yield page


@pytest.fixture
def page(loaded: Page) -> Page:
    """The page, measuring, with nothing measured."""
    settle(loaded)
    if loaded.get_by_role("button", name="Clear").count():
        loaded.get_by_role("button", name="Clear").click()
    return loaded


@pytest.fixture
def boxes(unit: Unit) -> Boxes:
    return {part.ref: part.bounds() for part in unit.parts}


def _check(page: Page, menu: str, label: str, *, on: bool = True) -> None:
    summary = page.locator("summary", has_text=menu)
    summary.click()
    page.get_by_label(label, exact=True).set_checked(on)
    summary.click()


@contextmanager
def _cut(page: Page, axis: str, at: float) -> Iterator[None]:
    _check(page, "Cut", axis)
    page.get_by_label("Place of the cut").fill(str(at), force=True)
    try:
        yield
    finally:
        _check(page, "Cut", "No cut")


@contextmanager
def _open(page: Page) -> Iterator[None]:
    page.get_by_role("button", name="Open all").click()
    try:
        yield
    finally:
        page.get_by_role("button", name="Close all").click()


@contextmanager
def _without_doors(page: Page) -> Iterator[None]:
    _check(page, "Layers", "Doors", on=False)
    try:
        yield
    finally:
        _check(page, "Layers", "Doors")


@contextmanager
def _apart(page: Page) -> Iterator[None]:
    page.get_by_label("Apart").fill("1")
    try:
        yield
    finally:
        page.get_by_label("Apart").fill("0")


def _measured(page: Page, base: Vector, place: Vector) -> str:
    """What is measured from a corner that is seen to whatever is snapped to at a place."""
    for each in (base, place):
        page.mouse.click(*on_screen(page, None, each))
    settle(page)
    measured = page.locator(".measured li").all_inner_texts()
    return measured[-1] if measured else ""


def _words(base: Vector, place: Vector) -> str:
    width, depth, height = (
        format_length(abs(one - other), "mm") for one, other in zip(base, place, strict=True)
    )
    return f": width {width}, depth {depth}, height {height}"


def _hold(
    page: Page, boxes: Boxes, pulled: Mapping[str, Vector] | None = None, left: Box = _ALL
) -> set[tuple[str, Vector]]:
    """Hold what is snapped to at all corners of some parts to arithmetic; those that are seen.

    ``boxes`` is where the parts stand, ``pulled`` how far from where they are measured, ``left``
    what of the room a cut has left.
    """
    settle(page)
    x, y, z = page.evaluate(_EYE)
    whole = {ref: box.intersection(left) for ref, box in boxes.items()}
    standing = {ref: box for ref, box in whole.items() if not box.is_empty}
    seen = {
        (ref, each)
        for ref, box in boxes.items()
        for each in box.corners()
        if left.contains_point(each) and is_corner_seen(each, standing[ref], standing, (x, y, z))
    }
    # On the outside, sides have the corners of their boxes.
    base = min(each for ref, each in seen if ref in ("SD1", "SD2") and each[0] in (0.0, 600.0))
    for ref in REFS:
        for corner in boxes[ref].corners() if ref in boxes else ():
            away = (pulled or {}).get(ref, (0.0, 0.0, 0.0))
            stands = (corner[0] - away[0], corner[1] - away[1], corner[2] - away[2])
            told = _measured(page, base, corner)
            expected = any((other, corner) in seen for other in boxes)
            assert told.endswith(_words(base, stands)) == expected, (ref, corner, told)
            assert not expected or " to corner of " in told
    page.get_by_role("button", name="Clear").click()
    return {(ref, corner) for ref, corner in seen if ref in REFS}


def _seen_of(seen: set[tuple[str, Vector]], ref: str) -> set[Vector]:
    return {corner for each, corner in seen if each == ref}


def test_what_other_parts_or_the_part_itself_hide(page: Page, boxes: Boxes) -> None:
    seen = _hold(page, boxes)
    assert not _seen_of(seen, BEHIND_DOOR)
    # Before the door's other four stands the door itself.
    assert _seen_of(seen, DOOR) == {each for each in boxes[DOOR].corners() if each[1] == 0}
    # Through the gap between shelves a corner far behind is seen.
    assert (581.0, 300.0, 227.0) in _seen_of(seen, OPEN_SHELF)


def test_what_an_open_door_bares_and_hides(page: Page, boxes: Boxes) -> None:
    (x, y, low), (_, _, high) = boxes[DOOR].low, boxes[DOOR].high
    wide, thick, _ = boxes[DOOR].size
    # A right angle round its hinge, at its left edge in front.
    opened = Box((x, y - wide, low), (x + thick, y, high))
    with _open(page):
        seen = _hold(page, boxes | {DOOR: opened})
    right = {each for each in boxes[BEHIND_DOOR].corners() if each[0] == 581}
    assert _seen_of(seen, BEHIND_DOOR) == right - {(581.0, 300.0, 650.0)}


def test_a_layer_that_is_off_hides_nothing(page: Page, boxes: Boxes) -> None:
    del boxes[DOOR]
    with _without_doors(page):
        seen = _hold(page, boxes)
    assert (581.0, 20.0, 668.0) in _seen_of(seen, BEHIND_DOOR)


def test_what_is_hidden_when_it_is_taken_apart(page: Page, boxes: Boxes) -> None:
    with _apart(page):
        seen = _hold(page, boxes | {ref: boxes[ref].moved(by) for ref, by in DRAWN.items()}, DRAWN)
    # One looks down on it; before, the door hid it wholly.
    assert len(_seen_of(seen, BEHIND_DOOR)) == 7
    assert (581.0, 300.0, 227.0) not in _seen_of(seen, OPEN_SHELF)


@pytest.mark.parametrize(("axis", "at"), [("Width", 300.0), ("Depth", 100.0)])
def test_what_a_cut_took_hides_nothing_and_is_not_snapped_to(
    page: Page, boxes: Boxes, axis: str, at: float
) -> None:
    with _cut(page, axis, at):
        seen = _hold(page, boxes, left=_ALL.spanning(("Width", "Depth").index(axis), low=at))
    behind = (581.0, 300.0, 668.0) in _seen_of(seen, BEHIND_DOOR)
    assert behind == (axis == "Depth")  # across the width, the rest of the door still hides it


def test_where_a_cut_crosses_edges_there_is_no_corner(page: Page) -> None:
    with _cut(page, "Depth", 100):
        for place in ((0.0, 100.0, 900.0), (18.0, 100.0, 668.0), (581.0, 100.0, 668.0)):
            page.mouse.move(*on_screen(page, None, place))
            settle(page)
            (told,) = label_texts(page, "measure")
            assert not told.startswith("corner")


def test_keys_say_of_a_corner_that_it_is_hidden_and_leave_out_what_is_cut_away(
    page: Page,
) -> None:
    canvas = page.locator("canvas")
    canvas.focus()
    page.keyboard.press("p")  # the last part
    assert page.locator(".heard").inner_text().startswith(DOOR)
    heard = []
    for _ in range(8):
        page.keyboard.press("c")
        heard.append(page.locator(".heard").inner_text())
    assert len(heard) == len(set(heard))
    front = [each for each in heard if " front" in each]
    assert front and not any(each.endswith(", hidden") for each in front)
    assert any(each.endswith("back, hidden") for each in heard)
    with _cut(page, "Depth", 100):
        canvas.press("c")
        assert page.locator(".heard").inner_text() == f"no corner of {DOOR} is left by the cut"
    canvas.press("Escape")
