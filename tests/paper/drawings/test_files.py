"""Drawings as DXF, by readers that aren't ours: what is cut has the area of the parts."""

from __future__ import annotations

import os
import shutil
import subprocess
from io import StringIO
from pathlib import Path

import ezdxf
import pytest
from shapely import Polygon

from kit.cut_areas import by_arithmetic
from rodwright import read_spec, set_out
from rodwright.lengths import parse_length
from rodwright.paper.drawings.choice import cutting_planes
from rodwright.paper.drawings.layout import drawn_sheets
from rodwright.paper.drawings.section import drawing_files
from rodwright.pictures.drafting.bands import is_square
from rodwright.pictures.drafting.figures import PAPERS
from rodwright.unit import Unit

MODELS = Path(__file__).parents[3] / "models"


@pytest.fixture(scope="module", params=["hallway-bookcase", "linen-cupboard"])
def made(request: pytest.FixtureRequest) -> tuple[Unit, dict[str, bytes], dict[str, list[str]]]:
    """A model, its files, and the names of the views on each sheet."""
    unit = set_out(read_spec(MODELS / f"{request.param}.yaml"))
    drawn = drawn_sheets(unit, PAPERS[unit.display_unit][:1])
    views = {
        f"book/drawings/{each.name}.dxf": [view.view.name for view in each.sheet.views]
        for each in drawn
    }
    return unit, drawing_files(unit, drawn), views


def test_every_sheet_is_there_as_svg_and_dxf(
    made: tuple[Unit, dict[str, bytes], dict[str, list[str]]],
) -> None:
    _, files, views = made
    assert set(views) == {name for name in files if name.endswith(".dxf")}
    assert {name.replace(".dxf", ".svg") for name in views} == {
        name for name in files if name.endswith(".svg")
    }


def test_what_is_cut_in_the_dxf_has_the_area_of_the_parts(
    made: tuple[Unit, dict[str, bytes], dict[str, list[str]]],
) -> None:
    unit, files, views = made
    planes = {f"Section {each.letter}-{each.letter}": each for each in cutting_planes(unit)}
    held = 0
    for name, shown in views.items():
        document = ezdxf.read(StringIO(files[name].decode()))
        auditor = document.audit()
        assert not auditor.errors
        rings = document.modelspace().query('LWPOLYLINE[layer=="cut edges"]')
        found = [Polygon([(x, y) for x, y, *_ in ring.get_points()]).area for ring in rings]
        for plane in (planes[each] for each in shown if each in planes):
            for part in unit.parts:
                low, high = part.bounds().low[plane.axis], part.bounds().high[plane.axis]
                if low < plane.at < high and is_square(part):
                    area = by_arithmetic(part, plane)
                    if area is not None:
                        held += 1
                        assert pytest.approx(area, rel=1e-6) in found, part.ref
    assert held >= 8


def test_refs_and_figures_are_texts_in_the_dxf(
    made: tuple[Unit, dict[str, bytes], dict[str, list[str]]],
) -> None:
    unit, files, views = made
    texts = set()
    for name in views:
        space = ezdxf.read(StringIO(files[name].decode())).modelspace()
        texts |= {each.dxf.text for each in space.query("TEXT")}
        for each in space.query("DIMENSION"):
            # What it says is what it measures, to the last figure that is shown.
            said = each.dxf.text
            step = 0.11 if unit.display_unit == "mm" else 25.4 / 64 * 1.1
            assert each.get_measurement() == pytest.approx(
                parse_length(said, unit.display_unit), abs=step
            )
    assert {part.ref for part in unit.parts if part.ref[:2] in ("SD", "SH", "BT")} <= texts


@pytest.mark.skipif(not shutil.which("librecad"), reason="LibreCAD isn't installed")
def test_librecad_draws_a_section(
    made: tuple[Unit, dict[str, bytes], dict[str, list[str]]], tmp_path: Path
) -> None:
    _, files, views = made
    name = next(name for name, shown in views.items() if "Section A-A" in shown)
    (tmp_path / "a.dxf").write_bytes(files[name])
    surroundings = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "HOME": str(tmp_path)}
    command = ["librecad", "dxf2pdf", "-a", "-k", "a.dxf"]
    subprocess.run(command, cwd=tmp_path, env=surroundings, check=True, capture_output=True)
    # An empty page is 1.5 kB.
    assert (tmp_path / "a.pdf").stat().st_size > 10_000
