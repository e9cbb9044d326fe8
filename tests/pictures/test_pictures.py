"""The files: made without a display, of the right size, and worth looking at."""

import os
import subprocess
import sys
from dataclasses import replace
from pathlib import Path
from xml.etree import ElementTree

import numpy as np
import pytest
from PIL import Image

from kit import samples
from rodwright.pictures.ink import Drawing, Fill, Lettering, Stroke
from rodwright.pictures.paint import to_image
from rodwright.pictures.sheet import draw_views
from rodwright.pictures.svg import to_svg
from rodwright.strength.sag_lines import sag_lines

pytestmark = pytest.mark.xdist_group("pictures")
"""What they share is made once."""

SVG = "{http://www.w3.org/2000/svg}"
NAMES = ("assembled", "exploded", "loaded", "views")
SCRIPT = """
import sys
from dataclasses import replace
from pathlib import Path
from kit import samples
from rodwright.pictures.all_views import write_pictures
unit = replace(samples.bookcase(), title='Shelves <for> "A & B"')
for path in write_pictures(unit, Path(sys.argv[1])):
    print(path.name)
"""


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    made = tmp_path_factory.mktemp("pictures")
    settings = {name: value for name, value in os.environ.items() if name != "DISPLAY"}
    paths = [str(Path(__file__).parents[1]), os.environ.get("PYTHONPATH", "")]
    settings["PYTHONPATH"] = os.pathsep.join(filter(None, paths))
    done = subprocess.run(
        [sys.executable, "-c", SCRIPT, str(made)],
        env=settings,
        capture_output=True,
        text=True,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    # No complaint about a missing display either.
    assert done.stderr == ""
    expected = {f"{name}.{kind}" for name in NAMES for kind in ("png", "svg")}
    assert set(done.stdout.split()) == expected
    return made


@pytest.mark.parametrize("name", ["assembled", "exploded"])
def test_photographs(folder: Path, name: str) -> None:
    with Image.open(folder / f"{name}.png") as picture:
        assert picture.size == (2000, 1500)
        pixels = np.asarray(picture.convert("RGB")).astype(int)
    for corner in (pixels[:20, :20], pixels[:20, -20:], pixels[-20:, :20], pixels[-20:, -20:]):
        assert (corner == 255).all()
    # Wood is red before blue; the floor's shadows are grey.
    wood = (pixels[..., 0] - pixels[..., 2]) > 25
    grey = (np.ptp(pixels, axis=2) < 4) & (pixels[..., 0] < 245) & (pixels[..., 0] > 120)
    assert 0.10 < wood.mean() < 0.60
    assert grey.mean() > 0.01
    # Light, shade and grain: many tones, not a few flat ones.
    assert len(np.unique(pixels[wood], axis=0)) > 3000


def test_parts_are_apart_in_the_exploded_picture(folder: Path) -> None:
    runs = {}
    for name in ("assembled", "exploded"):
        with Image.open(folder / f"{name}.png") as picture:
            pixels = np.asarray(picture.convert("RGB")).astype(int)
        wood = (pixels[..., 0] - pixels[..., 2]) > 25
        columns = np.flatnonzero(wood.any(axis=0))
        runs[name] = columns[-1] - columns[0]
    assert runs["exploded"] > runs["assembled"]


@pytest.mark.parametrize("name", NAMES)
def test_svg_is_vectors_with_a_title(folder: Path, name: str) -> None:
    root = ElementTree.parse(folder / f"{name}.svg").getroot()
    assert root.tag == f"{SVG}svg"
    assert root.get("viewBox") is not None
    title, description = root.find(f"{SVG}title"), root.find(f"{SVG}desc")
    assert title is not None and title.text is not None
    assert 'Shelves <for> "A & B"' in title.text
    assert description is not None and description.text
    tags = {element.tag.removeprefix(SVG) for element in root.iter()}
    assert tags <= {"svg", "title", "desc", "rect", "path"}
    assert "path" in tags


def test_every_ref_is_in_the_exploded_svg(folder: Path) -> None:
    root = ElementTree.parse(folder / "exploded.svg").getroot()
    texts = [element.get("aria-label") for element in root.iter(f"{SVG}path")]
    assert sorted(filter(None, texts)) == sorted(part.ref for part in samples.bookcase().parts)


def test_views_png_has_the_sheets_proportions(folder: Path) -> None:
    with Image.open(folder / "views.png") as picture:
        assert max(picture.size) == 2800
        assert max(picture.size) / min(picture.size) == pytest.approx(297 / 210, rel=1e-3)
        pixels = np.asarray(picture.convert("L"))
    assert pixels[0, 0] == 255
    assert 0.005 < (pixels < 128).mean() < 0.1


def test_views_png_says_how_large_it_is(folder: Path) -> None:
    with Image.open(folder / "views.png") as picture:
        across, down = picture.info["dpi"]
        sides = sorted(
            pixels / dpi * 25.4 for pixels, dpi in zip(picture.size, (across, down), strict=True)
        )
    # The sheet is A4 (ISO 216), its pixels square.
    assert across == down
    assert sides == pytest.approx([210.0, 297.0], abs=0.1)


def test_equal_units_give_equal_svg(folder: Path) -> None:
    unit = replace(samples.bookcase(), title='Shelves <for> "A & B"')
    # Made in another process, and here once more.
    assert (folder / "views.svg").read_text(encoding="utf-8") == to_svg(
        draw_views(unit, sag_lines(unit))
    )


def test_paint_lays_marks_where_they_belong() -> None:
    square = ((10.0, 10.0), (30.0, 10.0), (30.0, 30.0), (10.0, 30.0))
    hole = ((15.0, 15.0), (25.0, 15.0), (25.0, 25.0), (15.0, 25.0))
    dashed = Stroke((((0.0, 50.0), (40.0, 50.0)),), 2.0, "#0000ff", (10.0, 10.0))
    marks = (Fill((square, hole), "#ff0000"), dashed, Lettering((60.0, 40.0), "H", 20.0))
    pixels = np.asarray(to_image(Drawing(80.0, 60.0, "t", "d", marks), 1.0))
    assert pixels.shape == (60, 80, 3)
    assert pixels[12, 12].tolist() == [255, 0, 0]
    assert pixels[20, 20].tolist() == [255, 255, 255]
    blue = (pixels[50, :45, 0] < 128).tolist()
    assert blue[5] and blue[25]
    assert not blue[15] and not blue[35]
    assert (pixels[25:41, 50:70] < 100).any()
