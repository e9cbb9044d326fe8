"""Whatever a slider of the page writes, the file's language reads as what the slider shows."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict
from fractions import Fraction
from itertools import count

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from playwright.sync_api import Browser

from kit.browser import until
from kit.live import Server, live
from rodwright.jobs.look.figures import nudges_of
from rodwright.jobs.look.spans import spelt
from rodwright.lengths import parse_length
from rodwright.page.document import Nudge
from rodwright.problems import ProblemsError
from rodwright.wishes.fields import Share
from rodwright.wishes.reading.editing import value_at, with_value
from rodwright.wishes.reading.files import parse_spec

pytestmark = pytest.mark.xdist_group("browser")
SPEC = """\
title: A
unit: {unit}
size: {{width: 30 in, height: {height}, depth: 12 in}}
stock: {{case: {{kind: sheet, material: mdf, thickness: 3/4 in}}}}
carcass: {{stock: case}}
interior: {{shelves: {{openings: [{share}, 10 in, 1 share]}}}}
"""
HEIGHT, SHARE = ("size", "height"), ("interior", "shelves", "openings", 0)
_MM_PER = {"mm": 1, "cm": 10, "m": 1000, "in": 25.4, "ft": 25.4}
_MOVE = """async (slider, shares) => {
  const row = slider.closest(".nudge");
  const seen = [];
  slider.dispatchEvent(new PointerEvent("pointerdown"));
  for (const share of shares) {
    slider.value = Number(slider.min) + share * (slider.max - slider.min);
    slider.dispatchEvent(new Event("input", { bubbles: true }));
    await new Promise((on) => setTimeout(on, 20));
    const field = row.querySelector("input[type=text]");
    const read = slider.getAttribute("aria-valuetext");
    const beside = row.querySelector(".unit")?.textContent ?? "";
    seen.push([slider.valueAsNumber, field.value, beside, read]);
  }
  slider.dispatchEvent(new Event("change", { bubbles: true }));
  return seen;
}"""
_SLIDER = ".nudge input[type=range]"
_numbers = count()
_SLOW = [HealthCheck.too_slow, HealthCheck.function_scoped_fixture]


@pytest.fixture(scope="module")
def server(browser: Browser) -> Iterator[Server]:
    with live(browser, {"width": 900, "height": 640}) as started:
        started.tell(kind="nudges", version=1, nudges=[], undo=False, redo=False)
        started.page.get_by_role("tab", name="Figures").click()
        yield started


def _inches(draw: st.DrawFn, least: int, most: int) -> str:
    whole = draw(st.integers(least, most))
    part = Fraction(draw(st.integers(0, 63)), draw(st.sampled_from([1, 16, 64]))) % 1
    if not part:
        return f"{whole}"
    return f"{whole} {part}" if whole else f"{part}"


@st.composite
def _in_feet(draw: st.DrawFn) -> str:
    feet = draw(st.integers(1, 7))
    foot, inch = draw(
        st.sampled_from(
            [
                (" ft", " in"),
                ("ft", "in"),
                (" FT", " inches"),
                (" feet", " in"),
                ("'", '"'),
                ("′", "″"),
                ("’", "”"),
                ("'", "''"),
            ]
        )
    )
    if draw(st.booleans()):
        return f"{feet}{foot}"
    between = draw(st.sampled_from([" ", "-", " - ", ""]))
    return f"{feet}{foot}{between}{_inches(draw, 0, 11)}{inch}"


@st.composite
def _in_inches(draw: st.DrawFn) -> str:
    return f"{_inches(draw, 12, 40)} in"


_metric = st.one_of(
    st.integers(300, 2400).map(lambda mm: f"{mm} mm"),
    st.integers(3000, 24000).map(lambda tenths: f"{tenths / 10:g}"),
    st.integers(300, 2400).map(lambda mm: f"{mm / 10:g} cm"),
    st.integers(300, 2400).map(lambda mm: f"{mm / 1000:g} m"),
)
_lengths = st.one_of(_in_feet(), _in_feet(), _in_inches(), _metric)
_shares = st.integers(1, 4000).map(lambda n: f"{n / 100:g} share{'' if n == 100 else 's'}")
_places = st.lists(st.floats(0, 1), min_size=1, max_size=4)


def _moved(server: Server, nudge: Nudge, shares: list[float]) -> list[tuple[float, str, str, str]]:
    told = asdict(nudge) | {"key": f"{next(_numbers)}"}
    server.tell(kind="nudges", version=1, nudges=[told], undo=False, redo=False)
    field = server.page.locator(f'[id="nudge-{told["key"]}"]')
    field.wait_for()
    seen: list[tuple[float, str, str, str]] = server.page.locator(_SLIDER).evaluate(_MOVE, shares)
    written = [(told["key"], seen[-1][1])]
    for _ in range(200):
        heard = [(each["key"], each["value"]) for each in server.heard[-1:]]
        if heard == written:
            break
        server.page.wait_for_timeout(10)
    assert heard == written
    return seen


def _nudge(text: str, path: tuple[str | int, ...]) -> Nudge:
    spec = parse_spec(text, "a.yaml")
    key = "/".join(map(str, path))
    return next(each for each in nudges_of(spec) if each.key == key)


@settings(
    max_examples=40,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(
    st.one_of(_in_feet(), _in_feet(), _in_inches(), _metric), st.sampled_from(["mm", "in"]), _places
)
def test_lengths(server: Server, height: str, unit: str, shares: list[float]) -> None:
    if unit == "in" and height[-1].isdigit():
        height += " mm"
    quoted = "'" + height.replace("'", "''") + "'"
    text = SPEC.format(unit=unit, height=quoted, share="1 share")
    nudge = _nudge(text, HEIGHT)
    for number, figure, beside, read in _moved(server, nudge, shares):
        standing = value_at(parse_spec(text, "a.yaml").data, HEIGHT)
        after = with_value(text, HEIGHT, spelt(figure, standing), "a.yaml")
        height_now = parse_spec(after, "a.yaml").spec.size.height
        assert height_now == pytest.approx(number * _MM_PER[nudge.unit], abs=1e-6)
        assert read == f"{figure} {beside}".strip()
        assert parse_length(read, "mm") == pytest.approx(height_now, abs=1e-6)
        if nudge.feet and number >= 12:
            feet = int(number // 12)
            assert figure.startswith(f"{feet}{nudge.feet[0][0]}")


@settings(
    max_examples=20,
    suppress_health_check=[HealthCheck.function_scoped_fixture, HealthCheck.too_slow],
)
@given(_shares, _places)
def test_shares(server: Server, share: str, shares: list[float]) -> None:
    text = SPEC.format(unit="mm", height="2 m", share=share)
    nudge = _nudge(text, SHARE)
    for number, figure, beside, read in _moved(server, nudge, shares):
        after = with_value(text, SHARE, spelt(figure, share), "a.yaml")
        shelves = parse_spec(after, "a.yaml").spec.interior.shelves
        assert shelves is not None and shelves.openings is not None
        opening = shelves.openings[0]
        assert isinstance(opening, Share)
        assert opening.count == pytest.approx(number, abs=1e-9)
        assert read == f"{figure} {beside}" == f"{number:g} share{'' if number == 1 else 's'}"


def test_feet_come_back_after_a_slider_went_below_one(server: Server) -> None:
    text = SPEC.format(unit="in", height='"1 ft"', share="1 share")
    nudge = _nudge(text, HEIGHT)
    (low, high) = (_moved(server, nudge, [share]) for share in (0.3, 0.9))
    assert (low[0][1], high[0][1]) == ("10 in", "1 ft 7 in")
    told = asdict(nudge) | {"key": "came back"}
    page = server.page
    server.tell(kind="nudges", version=2, nudges=[told], undo=False, redo=False)
    page.locator('[id="nudge-came back"]').wait_for()
    page.locator(_SLIDER).evaluate(_MOVE, [0.3])
    now = _nudge(SPEC.format(unit="in", height="10 in", share="1 share"), HEIGHT)
    written = asdict(now) | {"key": "came back"}
    server.tell(kind="nudges", version=3, nudges=[written], undo=False, redo=False)
    page.locator(_SLIDER).evaluate(_MOVE, [0.9])
    assert page.locator(".nudge .figure").input_value() == "1 ft 7 in"


def test_a_slider_in_millimetres_is_so_again_after_inches_were_tried(server: Server) -> None:
    page = server.page
    field = "document.querySelector('[id=\"nudge-tried\"]')"

    def told(height: str) -> None:
        nudge = _nudge(SPEC.format(unit="mm", height=height, share="1 share"), HEIGHT)
        nudges = [asdict(nudge) | {"key": "tried"}]
        server.tell(kind="nudges", version=6, nudges=nudges, undo=False, redo=False)
        until(page, f"{field}?.value === '{height.removesuffix(' in')}'")

    told("720")
    (moved,) = page.locator(_SLIDER).evaluate(_MOVE, [0.5])
    for height in (moved[1], "28 in", moved[1]):
        told(height)
    assert page.locator(_SLIDER).get_attribute("step") == "1"


@pytest.mark.parametrize(
    "height", ["6 feet 11 63/64 inches", "18 feet 11 63/64 inches", "183 63/64"]
)
def test_the_longest_figures_are_seen_whole(server: Server, height: str) -> None:
    text = SPEC.format(unit="in", height=f"'{height}'", share="1 share")
    told = asdict(_nudge(text, HEIGHT)) | {"key": height}
    server.tell(kind="nudges", version=5, nudges=[told], undo=False, redo=False)
    field = server.page.locator(f'[id="nudge-{height}"]')
    field.wait_for()
    assert field.evaluate("each => each.scrollWidth <= each.clientWidth")


def test_a_bare_figure_where_feet_and_inches_stand_is_asked_about() -> None:
    assert spelt("7", "6 ft") == "7 ft"
    with pytest.raises(ProblemsError, match="Write `7 ft` or `7 in`"):
        spelt("7", "6 ft 2 in")


def test_a_share_with_lengths_alone_beside_it_says_that_it_takes_the_rest(server: Server) -> None:
    text = SPEC.format(unit="in", height="40", share="10")
    told = asdict(_nudge(text, (*SHARE[:-1], 2)))
    server.tell(kind="nudges", version=4, nudges=[told], undo=False, redo=False)
    server.page.get_by_text("it takes all that is left").wait_for()
    assert server.page.locator(_SLIDER).count() == 0
