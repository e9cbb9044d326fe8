"""A cut through the unit, in a real browser: its faces against arithmetic and another slicer."""

from __future__ import annotations

from base64 import b64decode
from io import BytesIO

import manifold3d
import numpy as np
import pytest
import trimesh
from PIL import Image
from playwright.sync_api import Page

from kit.browser import until
from kit.pages_of import on_screen, put_together, settle, written
from rodwright.geometry import Vector
from rodwright.page.document import Sections
from rodwright.solids.meshes import placed_mesh
from rodwright.unit import Unit

pytestmark = pytest.mark.xdist_group("browser")
_AXES = ("Width", "Depth", "Height")
_LOW = "JSON.parse(document.getElementById('told').textContent).model.low"
_CAPS = """() => {
  const caps = {};
  stage.scene.traverse((each) => {
    if (!each.geometry?.getAttribute("place") || each.userData.fitting) return;
    const at = each.geometry.getAttribute("position");
    const corner = (n) => each.position.clone().fromBufferAttribute(at, n);
    const empty = { area: 0, low: [9e9, 9e9, 9e9], high: [-9e9, -9e9, -9e9] };
    const cap = caps[each.userData.ref] ??= empty;
    for (let n = 0; n < at.count; n += 3) {
      const [a, b, c] = [corner(n), corner(n + 1), corner(n + 2)];
      cap.area += b.clone().sub(a).cross(c.clone().sub(a)).length() / 2;
      for (const each of [a, b, c]) each.toArray().forEach((value, axis) => {
        cap.low[axis] = Math.min(cap.low[axis], value);
        cap.high[axis] = Math.max(cap.high[axis], value);
      });
    }
  });
  return caps;
}"""


@pytest.fixture(scope="module")
def address(cupboard: Unit, tmp_path_factory: pytest.TempPathFactory) -> str:
    apart = {"SD1": (-300.0, 0.0, 0.0)}
    return written(cupboard, Sections(apart=apart), tmp_path_factory.mktemp("cut"))


@pytest.fixture
def page(loaded: Page) -> Page:
    """The page with the unit whole and closed, not cut, and where cuts are set in sight."""
    put_together(loaded)
    if not loaded.get_by_label("No cut").is_visible():
        loaded.locator("summary", has_text="Cut").click()
    loaded.get_by_label("No cut").check()
    settle(loaded)
    assert loaded.evaluate(_CAPS) == {}
    return loaded


def _section(mesh: trimesh.Trimesh, axis: int, at: float) -> float:
    """The area (mm2) in which a plane cuts a mesh, by Manifold."""
    # Axes in turn, so that the one that is cut across comes last.
    points = np.roll(mesh.vertices, 2 - axis, axis=1)
    body = manifold3d.Manifold(
        manifold3d.Mesh64(points.astype(np.float64), mesh.faces.astype(np.uint64))
    )
    return float(body.slice(at).area())


def _cut(page: Page, axis: int, at: float) -> dict[str, dict[str, list[float]]]:
    page.get_by_label(_AXES[axis], exact=True).check()
    slider = page.get_by_label("Place of the cut")
    slider.fill(str(at - page.evaluate(_LOW)[axis]))
    settle(page)
    caps: dict[str, dict[str, list[float]]] = page.evaluate(_CAPS)
    return caps


def test_a_cut_through_a_side_shows_its_section(page: Page, cupboard: Unit) -> None:
    caps = _cut(page, 2, 150)
    side = cupboard.part("SD1").blank
    # The back stands in a groove 6 wide and 6 deep; no shelf's pin is at this height.
    groove = 6.0 * 6.0
    assert caps["SD1"]["area"] == pytest.approx(side.width * side.thickness - groove, abs=0.05)
    back = cupboard.part("BK1").blank
    assert caps["BK1"]["area"] == pytest.approx(back.width * back.thickness, abs=0.05)
    assert caps["SD1"]["low"][2] == caps["SD1"]["high"][2] == pytest.approx(150)


@pytest.mark.parametrize(("axis", "at"), [(0, 17), (0, 400), (1, 60), (1, 230), (2, 1000)])
def test_all_cut_faces_agree_with_another_slicer(
    page: Page, cupboard: Unit, axis: int, at: float
) -> None:
    caps = _cut(page, axis, at)
    areas = {part.ref: _section(placed_mesh(part), axis, at) for part in cupboard.parts}
    areas = {ref: area for ref, area in areas.items() if area}
    parts = {ref: cap["area"] for ref, cap in caps.items()}
    assert parts.keys() == areas.keys()
    # Rounds are drawn with other facets there.
    assert parts == pytest.approx(areas, rel=4e-3, abs=1.0)


def test_what_is_before_a_cut_cant_be_touched(page: Page, cupboard: Unit) -> None:
    length, width, thickness = cupboard.part("DOP1").blank.size
    middle: Vector = (length / 2, width / 2, thickness)
    _cut(page, 1, 230)
    page.mouse.click(*on_screen(page, "DOP1", middle))
    chosen = page.locator(".heard").inner_text().partition(",")[0]
    assert chosen in {"BK1", "SH1", "SH2", "SH3", "SH4", "SH5"}
    page.locator("canvas").press("Escape")


def test_what_is_chosen_is_outlined_thinly_where_it_is_cut_away(page: Page) -> None:
    page.evaluate("stage.light([], 'SD1')")
    whole = _thick(page)
    _cut(page, 0, 400)
    page.evaluate("stage.light([], 'SD1')")
    cut = _thick(page)
    page.evaluate("stage.light([], null)")
    assert whole > 500
    assert cut < whole / 10


def _thick(page: Page) -> int:
    """How many pixels are wholly of the colour of what is chosen, as amid thick lines."""
    picture: str = page.evaluate("stage.picture()")
    pixels = np.asarray(Image.open(BytesIO(b64decode(picture.partition(",")[2]))).convert("RGB"))
    return int((np.abs(pixels.astype(int) - (0x0B, 0x3D, 0x91)).max(axis=2) < 8).sum())


def test_a_cut_follows_parts_that_are_taken_apart(page: Page) -> None:
    before = _cut(page, 2, 150)["SD1"]
    page.get_by_label("Apart").fill("1")
    settle(page)
    after = page.evaluate(_CAPS)["SD1"]
    assert after["low"][0] == pytest.approx(before["low"][0] - 300, abs=0.01)
    assert after["area"] == pytest.approx(before["area"], rel=1e-6)


def test_a_cut_follows_a_door_that_opens(page: Page, cupboard: Unit) -> None:
    before = _cut(page, 2, 1000)["DOP1"]
    page.get_by_role("button", name="Open all").click()
    until(page, "stage.resting")
    settle(page)
    after = page.evaluate(_CAPS)["DOP1"]
    panel = cupboard.part("DOP1").blank
    assert before["high"][0] - before["low"][0] == pytest.approx(panel.width, abs=0.1)
    # It opens wide, to the left.
    assert after["high"][0] < before["low"][0]
    assert after["area"] == pytest.approx(before["area"], rel=1e-4)
