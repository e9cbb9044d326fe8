"""The unit in space, in a real browser: taken apart, opened, hidden, changed and kept."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import asdict, replace
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Browser, Page

from kit.browser import DESKTOP, DRAWN, opened_anywhere, until
from kit.pages_of import settle, unit_page, written
from kit.specs import ready_unit
from rodwright.geometry import Vector
from rodwright.page import document as told
from rodwright.page.model import model_of
from rodwright.pictures.explode import explode
from rodwright.pictures.opened import opened
from rodwright.unit import Swing, Unit

pytestmark = pytest.mark.xdist_group("browser")

_NEAR = 0.01
"""mm: matrices are of single precision on the way to the screen, but not here."""


@pytest.fixture(scope="module")
def moves(cupboard: Unit) -> dict[str, Vector]:
    return explode(cupboard)


@pytest.fixture(scope="module")
def address(
    cupboard: Unit, moves: dict[str, Vector], tmp_path_factory: pytest.TempPathFactory
) -> str:
    return written(cupboard, told.Sections(apart=moves), tmp_path_factory.mktemp("cupboard"))


@pytest.fixture
def page(loaded: Page) -> Page:
    """The page with the unit whole and closed, and nothing hidden or lit."""
    _slide(loaded, 0)
    loaded.evaluate(
        """stage.show(JSON.parse(document.getElementById("told").textContent).model);
        stage.pull(null, 0);
        stage.swing(new Set());
        stage.hide(new Set(), new Set());
        stage.light([], null);
        stage.view("corner");"""
    )
    _rest(loaded)
    return loaded


def _stands(page: Page, ref: str) -> list[list[float]]:
    """Where a part's frame stands: its matrix by rows."""
    columns = page.evaluate("ref => stage.pieces.get(ref).group.matrix.elements", ref)
    return [[columns[4 * column + row] for column in range(4)] for row in range(4)]


def _origin(page: Page, ref: str) -> tuple[float, ...]:
    return tuple(row[3] for row in _stands(page, ref)[:3])


def _rest(page: Page) -> None:
    """Wait until nothing moves."""
    until(page, "stage.resting")


def _slide(page: Page, share: float) -> None:
    page.locator(".apart input").evaluate(
        "(slider, share) => { slider.value = share; "
        "slider.dispatchEvent(new Event('input', { bubbles: true })); }",
        share,
    )
    settle(page)


def _open(page: Page, *refs: str) -> None:
    """Open the doors and drawers that these parts are of."""
    page.evaluate(
        """refs => {
          const { motions } = JSON.parse(document.getElementById("told").textContent).model;
          const meant = motions.filter(each => each.refs.some(ref => refs.includes(ref)));
          stage.swing(new Set(meant.map(each => each.label)));
        }""",
        refs,
    )


def test_the_slider_takes_the_unit_apart(
    page: Page, cupboard: Unit, moves: dict[str, Vector]
) -> None:
    for share in (1.0, 0.5, 0.0):
        _slide(page, share)
        for part in cupboard.parts:
            away = [share * each for each in moves[part.ref]]
            expected = [a + b for a, b in zip(part.placement.origin, away, strict=True)]
            assert _origin(page, part.ref) == pytest.approx(expected, abs=_NEAR)


def test_doors_open_as_in_all_pictures(page: Page, cupboard: Unit) -> None:
    swings = [each for each in cupboard.motions if isinstance(each, Swing)]
    _open(page, swings[0].refs[0])
    _rest(page)
    ajar = opened(cupboard)
    for part in cupboard.parts:
        seen = ajar.part(part.ref) if part.ref in swings[0].refs else part
        assert np.allclose(_stands(page, part.ref), seen.placement.matrix(), atol=_NEAR)


def test_a_door_taken_apart_turns_as_one(
    page: Page, cupboard: Unit, moves: dict[str, Vector]
) -> None:
    """Its stiles stay as far from each other as they were pulled, whatever way it faces."""
    swing = next(each for each in cupboard.motions if isinstance(each, Swing))
    first, second = swing.refs[:2]
    page.evaluate("moves => stage.pull(moves, 1)", moves)
    apart = math.dist(_origin(page, first), _origin(page, second))
    _open(page, first)
    _rest(page)
    assert math.dist(_origin(page, first), _origin(page, second)) == pytest.approx(apart)
    assert (
        abs(apart - math.dist(*(cupboard.part(ref).placement.origin for ref in (first, second))))
        > 1
    )


def test_without_motion_a_door_is_open_at_once(
    browser: Browser, address: str, cupboard: Unit
) -> None:
    with opened_anywhere(browser, DESKTOP, reduced_motion="reduce") as page:
        page.goto(address)
        until(page, DRAWN)
        ref = cupboard.motions[0].refs[0]
        _open(page, ref)
        assert _origin(page, ref) != pytest.approx(cupboard.part(ref).placement.origin, abs=1)


@pytest.fixture(scope="module")
def drawers(
    browser: Browser, tmp_path_factory: pytest.TempPathFactory
) -> Iterator[tuple[Page, Unit]]:
    unit = ready_unit("tape-drawers")
    address = written(unit, told.Sections(), tmp_path_factory.mktemp("drawers"))
    with unit_page(browser, address) as shown:
        yield shown, unit


def test_one_drawer_comes_out_by_all_of_its_travel(drawers: tuple[Page, Unit]) -> None:
    page, unit = drawers
    slide = unit.motions[0]
    assert not isinstance(slide, Swing)
    _open(page, slide.refs[0])
    _rest(page)
    for ref in slide.refs:
        origin = unit.part(ref).placement.origin
        expected = [a + b for a, b in zip(origin, slide.travel, strict=True)]
        assert _origin(page, ref) == pytest.approx(expected, abs=_NEAR)


def test_of_a_stack_of_open_drawers_the_lower_come_out_farther(drawers: tuple[Page, Unit]) -> None:
    page, unit = drawers
    slides = [each for each in unit.motions if not isinstance(each, Swing)]
    _open(page, *(each.refs[0] for each in slides))
    _rest(page)
    stacks: dict[int, list[tuple[float, float]]] = {}
    for slide in slides:
        x, y, z = unit.part(slide.refs[0]).placement.origin
        out = y - _origin(page, slide.refs[0])[1]
        stacks.setdefault(round(x), []).append((z, out))
    assert max(map(len, stacks.values())) > 1
    for stack in stacks.values():
        ranked = [out for _, out in sorted(stack, reverse=True)]
        assert ranked == sorted(ranked)
        assert len(set(ranked)) == len(ranked)
        assert min(ranked) > 0


def test_layers_hide(page: Page, cupboard: Unit) -> None:
    visible = (
        "Object.fromEntries([...stage.pieces].map(([ref, each]) => [ref, each.group.visible]))"
    )
    assert all(page.evaluate(visible).values())
    page.evaluate("stage.hide(new Set(['doors', 'back']), new Set(['SH1']))")
    shown = page.evaluate(visible)
    layers = {part.ref: part.layer for part in model_of(cupboard).parts}
    for ref, seen in shown.items():
        assert seen == (layers[ref] not in {"doors", "back"} and ref != "SH1")
    assert not shown["SH1"]


def test_what_is_hidden_is_not_touched(page: Page) -> None:
    page.evaluate("stage.view('front')")
    _rest(page)
    middle = "sight.hit({ x: sight.width / 2 - 40, y: sight.height / 2 })?.ref"
    before = page.evaluate(middle)
    page.evaluate("ref => stage.hide(new Set(), new Set([ref]))", before)
    assert before
    assert page.evaluate(middle) != before


def _changed(unit: Unit, ref: str) -> dict[str, Any]:
    """The unit's model, with one part in the shape of another."""
    model = model_of(unit)
    other = next(each for each in model.parts if each.ref == "SH1")
    parts = tuple(
        replace(each, shape=other.shape) if each.ref == ref else each for each in model.parts
    )
    return asdict(replace(model, parts=parts))


def test_unchanged_pieces_are_kept(page: Page, cupboard: Unit) -> None:
    kept = page.evaluate(
        """([model, ref]) => {
          const before = new Map(stage.pieces);
          stage.show(model);
          return [...stage.pieces].map(([each, piece]) => [each, piece === before.get(each)]);
        }""",
        [_changed(cupboard, "SD1"), "SD1"],
    )
    assert {ref for ref, same in kept if not same} == {"SD1"}
    assert len(kept) == len(cupboard.parts)


def test_parts_stay_apart_and_open_while_the_model_changes(page: Page, cupboard: Unit) -> None:
    door = cupboard.motions[0].refs[0]
    _slide(page, 0.7)
    _open(page, door)
    _rest(page)
    stood = {part.ref: _stands(page, part.ref) for part in cupboard.parts}
    page.evaluate("model => stage.show(model)", _changed(cupboard, "SD1"))
    _rest(page)
    assert {part.ref: _stands(page, part.ref) for part in cupboard.parts} == stood


def test_many_changes_leave_nothing_behind(page: Page, cupboard: Unit) -> None:
    """Geometries, textures and programs as the renderer itself counts them."""
    models = [asdict(model_of(cupboard)), _changed(cupboard, "SD1"), _changed(cupboard, "TP1")]
    page.emulate_media(reduced_motion="reduce")
    held = page.evaluate(
        """async models => {
          const frame = () => new Promise(on => requestAnimationFrame(on));
          const held = [];
          for (let save = 0; save < 500; save += 1) {
            stage.show(models[save % models.length]);
            stage.light(save % 2 ? ["SD1", "TP1"] : [], null);
            if (save % 420 >= 60 && save % 420 < 66) {
              await frame();
              await frame();
              const { memory, programs } = stage.renderer.info;
              held.push([memory.geometries, memory.textures, programs.length,
                stage.scene.children.length]);
            }
          }
          return held;
        }""",
        models,
    )
    page.emulate_media(reduced_motion="no-preference")
    assert len(held) == 12
    # The first frames may still have shaders to make.
    assert held[8:] == held[2:6]


def test_equal_parts_share_what_they_are_drawn_with(page: Page, cupboard: Unit) -> None:
    drawn = page.evaluate("new Set([...stage.pieces.values()].map(p => p.mesh.geometry)).size")
    parts = model_of(cupboard).parts
    assert drawn == len({part.shape for part in parts}) < len(parts)


def test_a_lit_part_stands_out_without_colour(page: Page) -> None:
    """Thick lines round it, and all others pale."""
    thick = "[...stage.pieces].filter(([, p]) => p.group.children.some(c => c.isLineSegments2))"
    # What has changed is outlined for a moment, from the first fine picture on.
    page.evaluate("void stage.picture()")
    until(page, f"{thick}.length === 0")
    page.evaluate("stage.light(['DOS1', 'DOP1'], null)")
    assert page.evaluate(f"{thick}.map(([ref]) => ref).sort()") == ["DOP1", "DOS1"]
    light = page.evaluate(_LIGHTNESS)
    page.evaluate("stage.light([], null)")
    assert page.evaluate(f"{thick}.length") == 0
    assert light > page.evaluate(_LIGHTNESS) + 5


_LIGHTNESS = """(async () => {
  const picture = new Image();
  picture.src = stage.picture();
  await picture.decode();
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const paper = canvas.getContext('2d');
  paper.drawImage(picture, 0, 0);
  const { data } = paper.getImageData(0, 0, canvas.width, canvas.height);
  let sum = 0;
  for (let at = 1; at < data.length; at += 4) sum += data[at];
  return sum / (data.length / 4);
})()"""


def test_a_lost_context_comes_back(page: Page) -> None:
    light = page.evaluate(_LIGHTNESS)
    page.evaluate(
        """window.lost = stage.renderer.getContext().getExtension('WEBGL_lose_context');
        lost.loseContext()"""
    )
    settle(page)
    page.evaluate("lost.restoreContext()")
    settle(page)
    assert page.evaluate(_LIGHTNESS) == pytest.approx(light, abs=0.5)


def test_without_webgl_the_page_says_so_and_goes_on(browser: Browser, address: str) -> None:
    with opened_anywhere(browser, DESKTOP) as page:
        page.add_init_script("HTMLCanvasElement.prototype.getContext = () => null;")
        page.goto(address)
        page.get_by_text("can't draw in space").wait_for()
        page.get_by_role("tab", name="Parts").click()
        page.get_by_text("Left side").first.wait_for()
        assert page.locator("canvas").count() == 0


def test_a_reload_keeps_all_as_it_was(browser: Browser, address: str, cupboard: Unit) -> None:
    with unit_page(browser, address) as page:
        _reload(page, cupboard)


def _reload(page: Page, unit: Unit) -> None:
    _slide(page, 0.4)
    page.get_by_role("button", name="Open all").click()
    _rest(page)
    page.locator("canvas").focus()
    for key in ("ArrowRight", "ArrowRight", "ArrowUp", "+"):
        page.keyboard.press(key)
    _rest(page)
    stood = {part.ref: _stands(page, part.ref) for part in unit.parts}
    eye = page.evaluate("stage.camera.position.toArray().concat(stage.controls.target.toArray())")
    page.reload()
    until(page, DRAWN)
    _rest(page)
    assert {part.ref: _stands(page, part.ref) for part in unit.parts} == stood
    again = page.evaluate("stage.camera.position.toArray().concat(stage.controls.target.toArray())")
    assert again == pytest.approx(eye, rel=1e-6, abs=1e-3)
