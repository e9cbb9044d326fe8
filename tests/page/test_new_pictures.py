"""What a save costs: what is made again for the first picture of a new model, and what waits."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import asdict, replace

import pytest
from playwright.sync_api import Browser, Page

from kit.browser import until
from kit.pages_of import settle, unit_page, written
from kit.specs import ready_unit
from rodwright.page import document as told
from rodwright.page import shapes
from rodwright.page.model import model_of
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("browser")


@pytest.fixture(scope="module")
def unit() -> Unit:
    return ready_unit("record-cabinet")


@pytest.fixture(scope="module")
def page(browser: Browser, unit: Unit, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Page]:
    address = written(unit, told.Sections(), tmp_path_factory.mktemp("cabinet"))
    with unit_page(browser, address) as shown:
        yield shown


def _all_new(unit: Unit) -> dict[str, object]:
    """A model each part of which was cut elsewhere in its wood, so that all are drawn anew."""
    model = model_of(unit)
    parts = tuple(replace(each, lie=(1.0, each.lie[1] + 7, 1.0, 0.0)) for each in model.parts)
    return asdict(replace(model, parts=parts))


_FRAMES = """model => {
  stage.pace.slow = true;
  window.frames = [];
  const render = stage.renderer.render;
  const thick = () => [...stage.pieces.values()].filter(
    (piece) => piece.group.children.some((each) => each.isLineSegments2)).length;
  stage.renderer.render = (...what) => {
    const samples = stage.renderer.getRenderTarget() ? 4 : 0;
    frames.push({
      ratio: stage.renderer.getPixelRatio(),
      samples,
      outlined: thick(),
      shadow: stage.lamps.sun.shadow.needsUpdate,
    });
    render.apply(stage.renderer, what);
    if (samples) stage.renderer.render = render;
  };
  stage.show(model);
}"""


def test_where_drawing_is_slow_the_first_picture_is_plain_and_the_next_fine(
    page: Page, unit: Unit
) -> None:
    """All parts at once, and a moment later smooth edges, the shadow and what has changed."""
    page.evaluate(_FRAMES, _all_new(unit))
    until(page, "frames.some(each => each.samples)")
    frames = page.evaluate("frames")
    assert frames[0] == {"ratio": 0.5, "samples": 0, "outlined": 0, "shadow": False}
    assert frames[-1] == {
        "ratio": 1,
        "samples": 4,
        "outlined": len(unit.parts),
        "shadow": True,
    }


def test_no_shader_is_made_again_though_all_parts_are(page: Page, unit: Unit) -> None:
    programs = "stage.renderer.info.programs.map(each => each.id).sort()"
    page.evaluate("model => stage.show(model)", asdict(model_of(unit)))
    until(page, "stage.resting")
    before = page.evaluate(programs)
    page.evaluate("void (window.made = [...stage.pieces.values()])")
    page.evaluate("model => { stage.show(model); stage.draw(); }", _all_new(unit))
    settle(page)
    assert page.evaluate("made.every(each => ![...stage.pieces.values()].includes(each))")
    assert set(page.evaluate(programs)) >= set(before)


_OTHERWISE = """() => {
  const drawn = (fine) => {
    stage.frame.draw(fine, () => stage.renderer.render(stage.scene, stage.camera));
    const { width, height } = stage.canvas;
    const paper = new OffscreenCanvas(width, height).getContext("2d");
    paper.drawImage(stage.canvas, 0, 0);
    return new Uint32Array(paper.getImageData(0, 0, width, height).data.buffer);
  };
  stage.pace.finely();
  const [plain, fine] = [drawn(false), drawn(true)];
  return plain.filter((colour, at) => colour !== fine[at]).length / plain.length;
}"""


def test_a_fine_picture_is_the_plain_one_with_smooth_edges(page: Page) -> None:
    """A few pixels differ, those at edges; whatever surfaces and shadows cover is as it was."""
    assert 0.005 < page.evaluate(_OTHERWISE) < 0.2
    assert page.evaluate("stage.renderer.getContext().getError()") == 0


def test_only_what_has_another_shape_is_carved_again(
    unit: Unit, monkeypatch: pytest.MonkeyPatch
) -> None:
    model_of(unit)
    carved: list[object] = []
    work = shapes.carved
    monkeypatch.setattr(shapes, "carved", lambda key: carved.append(key) or work(key))
    first, *others = unit.parts
    longer = replace(first, blank=replace(first.blank, length=first.blank.length + 0.123))
    model_of(replace(unit, parts=(longer, *others)))
    assert carved == [longer.shape]
